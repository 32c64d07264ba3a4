"""The opening by member: cautions where they are called for, halved holds, and stock that has no bird's mouth."""

import re

import pytest
from fifty_digits import mp, mpf

from layouts.html.page_html import pages_html
from layouts.pages.book import plan
from layouts.pages.member_pages import CommonPage, HipPage
from tablegen.settings import read_settings


def opening(written: str) -> list:
    """Return the pages by member of every pitch of a book, in turn."""
    pages = plan(read_settings(f'parts = ["values"]\n{written}', '')).pages()
    return [page for page in pages if isinstance(page.content, CommonPage | HipPage)]


def names(page) -> dict[str, tuple[str, ...]]:
    return {row.name: tuple(filter(None, row.cells)) for row in page.content.rows.rows}


@pytest.mark.parametrize(
    ('pitch', 'word'),
    [
        ('2', 'beams'), ('2 15/16', 'beams'), ('3', ''), ('6', ''), ('8', ''), ('8 1/16', 'harness'), ('24', 'harness'),
    ],
)  # fmt: skip
def test_a_pitch_says_its_caution_on_its_own_page(pitch, word):
    """Under 3 in 12 (IRC R802.4.4) and over 8 (common practice); it defers, and leads to the page of cautions."""
    left, right = opening(f'pitches = ["{pitch}"]\nstock.seat = "1 1/2"\nstock.rafters = "2x12"')
    printed = re.sub(r'</?a\b[^>]*>', '', pages_html([left], ''))  # a page number is a link

    assert (left.side, right.side) == ('left', 'right')
    assert [one for one in ('beams', 'harness') if one in printed] == ([word] if word else [])
    assert ('designer decide' in printed) == bool(word)
    assert (f'<nobr>Page {left.content.caution_page}.</nobr>' in printed) == bool(word)
    assert 'safe' not in printed


@pytest.mark.parametrize('pitch', range(1, 25))
@pytest.mark.parametrize('size', ['2x4', '2x6', '2x8', '2x12'])
def test_a_notch_says_what_it_passes(pitch, size):
    """A quarter, a third of the depth, under 3 1/2 in left; on the left in words, on the right by a mark with its key."""
    depth = {'2x4': 3.5, '2x6': 5.5, '2x8': 7.25, '2x12': 11.25}[size]
    left, right = opening(f'pitches = [{pitch}]\nstock.rafters = "{size}"\nstock.seat = "1 1/2"')
    notch = mpf(3) / 2 * mp.sin(mp.atan(mpf(pitch) / 12))
    words = ' '.join(left.content.notch_cautions)
    mark = '‡' if notch > depth / 3 else '†' if notch > depth / 4 else ''

    assert ('quarter' in words, 'a third' in words) == (mark == '†', mark == '‡')
    assert ('3 1/2 in of stock' in words) == (depth - notch < 3.5)
    (wood,) = names(left)['Wood left over the notch, square to the edge']
    assert wood.lstrip('0123456789/ ') == mark + '§' * (depth - notch < 3.5)
    marked = any(cell[-1:] in '†‡§' for row in right.content.rows.rows for cell in row.cells if cell)
    assert ('past a quarter' in pages_html([right], '')) == marked


def test_stock_that_is_too_shallow_is_named_with_a_dash():
    _, right = opening('pitches = [6]\nstock = {rafters = "2x12", hips = "2x8", valleys = "2x6"}')
    rows = names(right)

    assert rows['Dropped hip, 2×8: too shallow to reach the plate'] == ('—',)
    assert rows['Valley, 2×6: too shallow to reach the plate'] == ('—',)


def test_a_seat_that_cuts_the_rafter_through_gives_no_heights():
    left, right = opening('pitches = [12]\nstock = {rafters = "2x4", seat = "5 1/2"}')

    assert [
        names(left)[name] for name in names(left) if name.startswith(('Height', 'Heel', 'Notch', 'Wood'))
    ] == [('—',)] * 4
    assert 'cut a 2×4 through' in pages_html([left], '')
    assert names(right)['Dropped hip, 2×4: cut through by the seat'] == ('—',)


@pytest.mark.parametrize(
    ('pitch', 'common', 'hip', 'step'),
    [('16', '12 & 16', '17 & 16', ''), ('17', '6 & 8 1/2', '8 1/2 & 8 1/2', 'halved'), ('24', '6 & 12', '8 1/2 & 12', 'halved'),
     ('36', '3 & 9', '4 1/4 & 9', 'divided by 4')],
)  # fmt: skip
def test_a_rise_past_the_tongue_is_held_in_shorter_steps(pitch, common, hip, step):
    """The tongue is 16 in long (common practice): past that both figures are halved, and a step is less of the run."""
    for page, held, run in zip(
        opening(f'pitches = [{pitch}]\nsteep = true'), (common, hip), ('of run', 'of COMMON run'), strict=True
    ):
        body, tongue = held.split(' & ')
        rows = list(names(page).items())
        place = next(place for place, (name, _) in enumerate(rows) if name.startswith('Square'))
        name, cells = rows[place]

        assert name.replace(' (√288)', '') == f'Square: level along the {body}, plumb along the {tongue}'
        assert cells == (held,)
        below = rows[place + 1][0]
        assert (
            (step in below and below.endswith(f'{12 // {"halved": 2, "divided by 4": 4}[step]} in {run}'))
            if step
            else 'Per foot' in below
        )
