"""Faces laid on sheets: fronts, then their backs mirrored, with marks and a line that says what to do."""

from __future__ import annotations

from pathlib import Path

from layouts.cards.formats import Format
from layouts.cards.sheet import CardSheet, placed
from layouts.cards.sheet_marks import card_marks
from layouts.pdf.new_file import NewFile
from layouts.pdf.written import Written
from layouts.sheets.fold import POINTS_PER_MM
from layouts.sheets.marks import draw_label
from layouts.sheets.sheet_forms import add_sheet, letter_forms, page_form
from layouts.sheets.strips import upper_strip
from layouts.words.cards import CUT_SIZE
from layouts.words.say import N_, _
from layouts.words.sheets import FACES

FLIPS = {'long': N_('flip on the long edge'), 'short': N_('flip on the short edge')}


def lay_cards(faces: Path, form: Format, sheet: CardSheet, title: str, out: Path) -> int:
    """Write the sheets of some cards, ready for a two-sided printer, and return how many they are.

    Given:
        faces  PDF of the cards' sides, front and back by turns
        title  of the book
        out    PDF to write: front, back, front, back

    Notes:
        1. A sheet turns about its upright center line, so the back of a card in column c lies in column
           columns − 1 − c; the viewer is asked for that flip and for actual size.
        2. Same input, same bytes.
    """
    file = NewFile()
    forms = [
        page_form(file, page, number, sheet.card_mm, faces)
        for number, page in enumerate(Written(faces).pages, 1)
    ]
    sheets = placed(len(forms) // 2, sheet)
    for place, cards in enumerate(sheets, 1):
        for back in (False, True):
            label = card_label(form, sheet, place, len(sheets), 'back' if back else 'front')
            strip = upper_strip(sheet.sheet_mm, sheet.label_margins_mm, sheet.label_end_mm)
            words, letters = draw_label(strip, label)
            named = letter_forms(file, letters)
            lying = [
                (card, sheet.columns - 1 - column if back else column, row) for card, column, row in cards
            ]
            drawn = [card_marks(sheet, form, [(column, row) for _, column, row in lying], back), words]
            for card, column, row in lying:
                face = 2 * card + back
                x, y = (POINTS_PER_MM * length for length in sheet.corner_mm(column, row))
                drawn.append(f'q 1 0 0 1 {x:.3f} {y:.3f} cm /face-{face} Do Q\n')
                named[f'face-{face}'] = forms[face].name
            add_sheet(file, sheet.sheet_mm, ''.join(drawn).encode('ascii'), named)
    asked = {
        'Duplex': '/DuplexFlipLongEdge' if sheet.flip == 'long' else '/DuplexFlipShortEdge',
        'PrintScaling': '/None',
    }
    named_as = _('{title}: card').format(title=title)
    file.write(out, named_as, preferences=asked)
    return len(sheets)


def card_label(form: Format, sheet: CardSheet, place: int, sheets: int, face: str) -> str:
    """Return the words in the margin of a side."""
    film = ' × '.join(f'{length:g}' for length in form.film_mm)
    said = (
        _('sheet {sheet} of {sheets}').format(sheet=place, sheets=sheets),
        _(FACES[face]),
        _(FLIPS[sheet.flip]),
        _(CUT_SIZE).format(wide=f'{form.width_mm:g}', high=f'{form.height_mm:g}'),
        _('cut, round, punch on the solid lines'),
        _('laminate, {film} mm').format(film=film),
    )
    return ' · '.join(said)
