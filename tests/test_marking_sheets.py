"""Marking sheets: every place they name is turned to, at every pitch, and has the figure that the line is for."""

from __future__ import annotations

import re
from fractions import Fraction

import pytest
from complete import COMPLETE
from headed import lines, said
from labels.expected import DEPTHS
from oracle import cuts, framing_square, seats, shortening, tails
from oracle.corner import common_length, corner, hip_length, hip_run, jack_difference, rise
from oracle.rounding import degrees, part
from printed_words import words_of

from layouts.html.page_html import pages_html, style
from layouts.pages.book import plan
from layouts.paper.page import page_side
from layouts.pdf.documents import Job
from layouts.pdf.typeset import set_document
from tablegen.settings import read_settings

RIDGE, HIP, RAFTER, SEAT = Fraction(3, 4), Fraction(7, 2), Fraction(7, 4), Fraction(7, 2)
STOCK = 'stock = {ridge = "3/4", hip = "3 1/2", rafter = "1 3/4", hips = "2x10", valleys = "2x12"}'
BOOKS = {
    'compact': f'edition = "compact"\npitches = [5, 20]\n{STOCK}',
    'complete': f'{COMPLETE}pitches = [5, 20]\n{STOCK}',
    'large': f'{COMPLETE}pitches = [5, 20]\ntrim = "large"\npaper = "a4"\n{STOCK}',
}
SPACING, OVERHANG = 16, 12
TURNED_TO = {'marking_sheet', 'opening', 'values', 'hip_values', 'grid', 'jacks'}
"""Kinds of page that are set: the sheets themselves, and all that a pitch has."""
BELOW = 12
"""Lines below a head that are its own."""
LENGTHS = ('ft, in, parts of an inch', 'ft and in', 'jack')
DISC_REM, PLACE_REM, BOXES_REM = 0.78, 0.7, 7.0
"""Type of a line's number, and of the places that it names; how wide the boxes are, without the room after a word."""


LINES = {'common': range(1, 12), 'hip': range(12, 24)}


def sided(told: str) -> list[str]:
    """Return places, each with its page: two rows of one page name it once."""
    places: list[str] = []
    for place in filter(None, told.split('; ')):
        named = re.match(r'(left|right) page|opening|p\. ', place)
        places.append(place if named else f'{places[-1].partition(": ")[0]}: {place}')
    return places


class Sheets:
    """A book of two pitches, its pages set as they are turned to."""

    def __init__(self, written: str, folder):
        self.planned = plan(read_settings(written, ''))
        first, pages = self.planned.index['marking-sheet'], self.planned.pages()
        numbers = [n for n, draft in enumerate(self.planned.drafts, 1) if draft.template in TURNED_TO]
        out = folder / 'pages.pdf'
        html = pages_html([pages[number - 1] for number in numbers], '')
        set_document(Job(html, style(self.planned.trim), len(numbers), out))
        self.words = dict(zip(numbers, words_of(out), strict=True))
        self.lines = {
            number: places for page in (first, first + 1) for number, places in self.sheet(page).items()
        }

    def read(self, number: int) -> list[str]:
        """Return a page line by line."""
        return [said(line) for line in lines(self.words[number])]

    def sheet(self, page: int) -> dict[int, list[str]]:
        """Return the places that each line of a sheet names, by its printed number."""
        rem = 10 * self.planned.trim.unit_pt * 25.4 / 72
        words = self.words[page]
        edge = min(word.left for word in words if word.size > 0.7 * rem) + 3 * rem
        discs = [word for word in words if word.text.isdigit() and abs(word.size / rem - DISC_REM) < 0.01]
        boxes = (
            max(word.right for word in words if word.size > 0.6 * rem and word.text in ('level', 'longer'))
            - BOXES_REM * rem
        )
        small = [word for word in words if abs(word.size / rem - PLACE_REM) < 0.006 and word.left < boxes]
        found: dict[int, list] = {int(disc.text): [] for disc in discs}
        for word in small:
            disc = min(discs, key=lambda one, word=word: abs(one.base - word.base))
            found[int(disc.text)].append(word)
        assert all(disc.left < edge for disc in discs)
        return {number: sided(' '.join(said(line) for line in lines(some))) for number, some in found.items()}

    def follow(self, pitch: str, place: str) -> list[str]:
        """Return the lines of the page that a place leads to, from the row that it names on, at some pitch."""
        index = self.planned.index
        side, row = place.partition(': ')[::2]
        start = min(index[key] for key in index.pages if key.endswith(f':{pitch}'))
        number = start + {'left page': 0, 'right page': 1}.get(side, 0)
        if found := re.fullmatch(r'opening (\d+), (left|right)', side):
            number = start + 2 * (int(found[1]) - 1) + (found[2] == 'right')
            assert page_side(number) == found[2]
        page = self.read(number)
        assert (
            f'{pitch.partition(" ")[0]} in 12' in ' '.join(page)
            or self.planned.drafts[number - 1].head == pitch
        )
        name = row.removesuffix(', heel')
        if name == 'drawing' or name in LENGTHS:
            return page
        begins = [nth for nth, line in enumerate(page) if re.search(rf'(^| ){re.escape(name)}', line)]
        assert begins, (place, page)
        return [line for nth in begins for line in page[nth : nth + BELOW]]


@pytest.fixture(scope='module', params=BOOKS)
def sheets(request, tmp_path_factory):
    return Sheets(BOOKS[request.param], tmp_path_factory.mktemp('sheets'))


def test_lines_are_numbered_on_and_open_together(sheets):
    index = sheets.planned.index
    assert list(sheets.lines) == [*LINES['common'], *LINES['hip']]
    assert index['marking-sheet'] % 2 == 0
    assert index['marking-sheet-right'] == index['marking-sheet'] + 1
    assert index['marking-sheet-right'] < index['made'] <= index['marking-sheet-right'] + 3


def figures_of(rise_in: int) -> dict[int, list[str]]:
    """Return what belongs into a line where it is read in one place: worked out in space for a run of 5 ft, in sixteenths."""
    at, depth = corner(Fraction(rise_in)), DEPTHS['2×8']
    height = seats.height_above_plate(at, depth, SEAT)
    hip, valley = (at, height, DEPTHS['2×10'], HIP), (at, height, DEPTHS['2×12'], HIP)
    held, slanting = framing_square.arms(12, rise(at, 12)), framing_square.arms(hip_run(at, 12), rise(at, 12))
    lengths = {
        3: [common_length(at, 60)],
        5: [tails.common_tail(at, OVERHANG)],
        6: [shortening.common_at_ridge(at, RIDGE)[0]],
        7: held,
        9: [height],
        10: [seats.heel(at, SEAT)],
        12: [hip_length(at, 60)],
        13: [tails.hip_tail(at, OVERHANG)],
        14: [shortening.hip_at_ridge(at, RIDGE)[0]],
        15: slanting,
        18: [cuts.drop_plumb(at, HIP)],
        19: [seats.hip_height(at, height, HIP), seats.hip_heel(*hip), seats.hip_seat(*hip)],
        20: [height, seats.valley_heel(*valley), seats.valley_seat(*valley)],
        21: [jack_difference(at, SPACING)],
        22: [shortening.jack_at_hip(at, HIP)[0]],
        23: [common_length(at, 60)],
    }
    angles = {
        8: [cuts.plumb_cut(at), cuts.level_cut(at)],
        16: [cuts.hip_plumb_cut(at), cuts.hip_level_cut(at)],
        17: [cuts.hip_cheek(at)],
        22: [cuts.jack_cheek(at)],
    }
    found = {number: list(map(part, some)) for number, some in lengths.items()}
    for number, some in angles.items():
        found.setdefault(number, []).extend(map(degrees, some))
    return found


def stands(figure: str, told: str) -> bool:
    """Return whether a figure stands among words, whole: no end of a longer one, no number without its fraction."""
    after = r'(?![\d/])' if '/' in figure else r'(?![\d/]| \d+/)'
    return bool(re.search(rf'(?<![\d/]){re.escape(figure)}{after}', told))


@pytest.mark.parametrize('pitch', ['5 in 12', '20 in 12'])
def test_each_place_has_what_its_line_is_for(sheets, pitch):
    wanted = figures_of(int(pitch.partition(' ')[0]))
    for number, places in sheets.lines.items():
        led = [place for place in places if not place.startswith('p. ')]
        assert bool(led) == (number in wanted), number
        told = ' '.join(' '.join(sheets.follow(pitch, place)) for place in led)
        missing = [one for one in wanted.get(number, ()) if not stands(one, told)]
        assert missing == [], (number, led)


MORE = {5: 'group-tail', 13: 'group-tail', 6: 'group-ridge', 14: 'group-ridge', 9: 'group-seat', 19: 'group-seat', 20: 'group-seat', 8: 'glance', 16: 'glance', 17: 'glance-right', 18: 'group-hips', 21: 'group-jack-deductions'}  # fmt: skip
"""What the other page of a line is."""


def test_other_pages_are_those_of_their_kind(sheets):
    index = sheets.planned.index
    for number, places in sheets.lines.items():
        pages = [int(place.removeprefix('p. ')) for place in places if place.startswith('p. ')]
        assert pages == [index[key] for key in [MORE.get(number, '')] if key in index], number


def test_without_the_ways_of_finding_there_is_no_sheet():
    assert 'marking-sheet' not in plan(read_settings('parts = ["common"]\npitches = [6]', '')).index
