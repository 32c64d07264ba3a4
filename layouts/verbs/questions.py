"""The questions of make --ask, for who would not write options: an empty line keeps what stands."""

from __future__ import annotations

from typing import TextIO

from layouts.verbs.book_options import pitches_told
from layouts.verbs.options import with_written
from layouts.verbs.settings_file import standard_input
from layouts.words.error import error_lines
from layouts.words.say import N_, _
from tablegen.errors import BookError
from tablegen.numbers.units import INCHES
from tablegen.settings import PAPERS, Settings

QUESTIONS = {
    'pitches': N_('Pitches, inches of rise in {base}, such as 6 or 4,6,8 or 4 to 12'),
    'paper': N_('Paper in the printer, {papers}'),
    'owner': N_('Name on the cover'),
}
"""What is asked, by the options that the answers stand for."""


def answered(settings: Settings, err: TextIO) -> Settings:
    """Return the settings as the answers on standard input change them; a wrong one is told and asked again."""
    standard_input()  # before anything is asked
    print(_('Press Enter to take what stands in brackets.'), file=err)
    usual = {'pitches': pitches_told(settings), 'paper': settings.paper, 'owner': settings.owner or _('none')}
    for name, question in QUESTIONS.items():
        asked = _(question).format(base=INCHES.base, papers=' / '.join(PAPERS))
        while written := _answer(f'{asked} [{usual[name]}]: ', err):
            try:
                settings = with_written(settings, {name: written})
                break
            except BookError as fault:
                print(*error_lines(fault), sep='\n', file=err)
    return settings


def _answer(asked: str, err: TextIO) -> str:
    """Return a line of standard input without the space around it; '' too where there is no more."""
    print(asked, end='', file=err, flush=True)
    return standard_input().readline().strip()
