"""What the margin of a sheet says of it."""

from __future__ import annotations

from layouts.words.say import N_, _
from tablegen.proof.names import SheetNames

SECTION, SHEET = N_('section {section} of {sections}'), N_('sheet {sheet} of {sheets}')
FACES = {'front': N_('front'), 'back': N_('back')}
LOWER_BLANK = N_('lower half blank')
BETWEEN = ' · '


def sheet_names() -> SheetNames:
    """Return what the margins of sheets say, in the language in use."""
    return SheetNames(_(SECTION), _(SHEET), _(FACES['front']), _(FACES['back']), _(LOWER_BLANK), BETWEEN)
