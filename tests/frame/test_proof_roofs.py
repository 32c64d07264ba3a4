"""The proof-reader on the sheets of roofs: good ones have nothing that differs, and what is planted in them is found where it is."""

from __future__ import annotations

import re
from collections.abc import Callable
from pathlib import Path

import pytest
from asking import ask
from msgspec.structs import replace
from planted_in_sheets import PLANTERS, planted_at
from test_roof_sheets import ROOFS

from layouts.pdf.read_back import pages_of
from layouts.roofs.proof_names import roof_names
from tablegen.proof.found import Found
from tablegen.proof.page import Page, close, lines_of
from tablegen.proof.roof_sheets import read_roof
from tablegen.proof.sheet_lines import FOOT_PT, sheets_of
from tablegen.proof.word import Word

HIP = ('--kind', 'hip', '--pitch', '7', '--width', '24 ft', '--length', '36 ft')
SHED = ('--kind', 'shed', '--pitch', '4', '--width', '10 ft', '--length', '20 ft')
HOUSE = 'width = "24 ft"\nlength = "36 ft"\n'
WING = 'kind = "wing"\npitch = 7\nwing.width = "16 ft"\nwing.out = "10 ft"\nwing.from_left = "8 ft"\n' + HOUSE
KINDS = {
    'two pitches': 'kind = "hip"\npitch = 7\nhip.end_pitch = 9\n' + HOUSE,
    'flatter ends, single cheeks': 'kind = "hip"\npitch = 7\nhip.end_pitch = 5\ncuts.hip_heads = "single"\n' + HOUSE,
    'single cheeks': 'kind = "hip"\npitch = 7\ncuts.hip_heads = "single"\n' + HOUSE,
    'one end, backed': 'kind = "hip"\npitch = 6\nhip.ends = 1\ncuts.hips = "backed"\n' + HOUSE,
    'degrees': 'kind = "hip"\npitch = "30 deg"\nwidth = "23 ft 5 1/2 in"\nlength = "37 ft 3 in"\nsmallest_part = "1/32"\n',
    'steep': 'kind = "hip"\npitch = 18\nwidth = "16 ft"\nlength = "30 ft"\n',
    'no ridge board': 'kind = "hip"\npitch = 7\nridge.board = false\n' + HOUSE,
    'gable overhang': 'kind = "gable"\npitch = 7\noverhang.gable = "16 in"\n' + HOUSE,
    'feet and inches': 'kind = "gable"\npitch = 7\nlengths = "feet-inches"\nspacing = "19.2 in"\n' + HOUSE,
    'feet and inches, jacks': 'kind = "hip"\npitch = 7\nlengths = "feet-inches"\nsmallest_part = "1/64"\n' + HOUSE,
    'metric': 'kind = "gable"\npitch = 7\nwidth = "7000 mm"\nlength = "9 m"\nspacing = "600 mm"\n',
    'saltbox': 'kind = "saltbox"\npitch = 9\nsaltbox.back_pitch = 5\nsaltbox.back_plate_below = 16\n' + HOUSE,
    'square tails, a fascia': 'kind = "hip"\npitch = 7\ncuts.tails = "square"\noverhang.fascia = "3/4 in"\n' + HOUSE,
    'raised ends': 'kind = "hip"\npitch = 7\nhip.end_pitch = 9\nhip.eaves = "equal"\n' + HOUSE,
    'raised ends, a wide overhang': 'kind = "hip"\npitch = 5\nhip.end_pitch = 8\nhip.eaves = "equal"\noverhang.eave = "36 in"\n' + HOUSE,
    'gambrel': 'kind = "gambrel"\npitch = 18\ngambrel.upper_pitch = 6\ngambrel.break = "5 ft"\noverhang.fascia = "3/4 in"\n' + HOUSE,
    'gambrel, barge rafters': 'kind = "gambrel"\npitch = 16\ngambrel.upper_pitch = 5\ngambrel.break = "6 ft"\noverhang.gable = "8 in"\n' + HOUSE,
    'half-hip, two pitches': 'kind = "half-hip"\npitch = 7\nhalf-hip.end_pitch = 9\nhalf-hip.gable_rise = "3 ft"\noverhang.gable = "8 in"\n' + HOUSE,
    'half-hip, single cheeks': 'kind = "half-hip"\npitch = 8\nhalf-hip.gable_rise = "4 ft"\ncuts.hip_heads = "single"\n' + HOUSE,
    'a thin ridge': 'kind = "hip"\npitch = 7\nridge.thickness = "3/4"\ncuts.hip_heads = "single"\n' + HOUSE,
    'six sides': 'kind = "many-sided"\npitch = 9\nmany-sided.sides = 6\nmany-sided.side = "7 ft"\ncuts.hips = "backed"\n',
    'twelve sides around a post': 'kind = "many-sided"\npitch = 7\nmany-sided.sides = 12\nmany-sided.across_flats = "16 ft"\nmany-sided.post = "8 in"\n',
    'a bay at corners': 'kind = "bay"\npitch = 7\nbay.sides = 8\nbay.side = "5 ft"\n',
    'a bay at middles': 'kind = "bay"\npitch = 8\nbay.sides = 6\nbay.side = "5 ft"\nbay.wall_through = "middles"\n',
    'a wing': WING,
    'a wing near the right end': WING.replace('8 ft"', '19 ft"') + 'overhang.gable = "8 in"\n',
    'a steeper wing, hipped': WING + 'wing.pitch = 9\nwing.end = "hip"\n',
    'a flatter wing, single cheeks': WING + 'wing.pitch = 6\nwing.end = "hip"\ncuts.hip_heads = "single"\nwing.main_ends = 2\n',
    'a wing of one ridge height': WING.replace('16 ft', '24 ft').replace('8 ft"', '6 ft"'),
    'a wing laid on': WING + 'wing.valleys = "blind"\n',
    'a steeper wing laid on': WING + 'wing.valleys = "blind"\nwing.pitch = 8\nridge.top = "beveled"\n',
    'a wing, square tails': WING + 'cuts.tails = "square"\nwing.pitch = 8\n',
    'an L': WING.replace('from_left = "8 ft"', 'from_left = "0"') + 'wing.main_ends = 1\n',
    'an L of two pitches, hipped': WING.replace('from_left = "8 ft"', 'from_left = "0"').replace('16 ft', '10 ft') + 'wing.main_ends = 2\nwing.pitch = 9\nwing.end = "hip"\n',
    'an L at the right, single cheeks': WING.replace('from_left = "8 ft"', 'from_left = "20 ft"') + 'wing.main_ends = 2\ncuts.hip_heads = "single"\nridge.thickness = "3/4"\n',
    'an L of one ridge height, backed': WING.replace('from_left = "8 ft"', 'from_left = "0"').replace('16 ft', '24 ft') + 'wing.main_ends = 2\ncuts.hips = "backed"\noverhang.fascia = "3/4 in"\n',
    'a wing at a gable': WING.replace('from_left = "8 ft"', 'from_left = "0"') + 'overhang.gable = "14 in"\n',
    'over a beam': 'kind = "shed"\npitch = 4\nwidth = "10 ft"\nlength = "20 ft"\nshed.upper = "over-beam"\nshed.thickness = "3 1/2"\noverhang.gable = "8 in"\n',
    'against a beam': 'kind = "shed"\npitch = 4\nwidth = "10 ft"\nlength = "20 ft"\nshed.upper = "against-beam"\nshed.thickness = "3 1/2"\n',
}  # fmt: skip
"""Roofs that are worked out, by what is unlike in each."""
Change = Callable[[list[Word]], list[Word]]


@pytest.fixture(scope='module')
def sheets(tmp_path_factory) -> dict[str, Path]:
    """The sheets of a hip roof and of a shed."""
    folder, found = tmp_path_factory.mktemp('roofs'), {}
    for name, words in (('hip', HIP), ('shed', SHED)):
        found[name] = folder / f'{name}.pdf'
        assert ask('roof', *words, '--pdf', str(found[name]))[0] == 0
    return found


@pytest.fixture(scope='module')
def pages(sheets) -> list[Page]:
    return pages_of(sheets['hip'])


def planted(pages: list[Page], title: str, change: Change) -> tuple[Found, set[int]]:
    """Return what is found where words of a sheet were changed, and the pages of that sheet."""
    sheet = next(one for one in sheets_of(pages) if one.title == title)
    copy = [
        Page(
            page.number,
            change(list(page.words)) if page.number in sheet.pages else page.words,
            [],
            lambda page=page: page.ink,
        )
        for page in pages
    ]
    assert any(one.words != other.words for one, other in zip(copy, pages, strict=True)), title
    found = read_roof(copy, roof_names())
    assert found
    return found, sheet.pages


def line_of(begins: str, words: list[Word]) -> list[Word]:
    """Return the first line that begins so, none of a page that has none."""
    found = (line for line in lines_of(words) if re.match(rf'{re.escape(begins)}( |$)', close(line)))
    return next(found, [])


def in_line(begins: str, change: dict[str, str]) -> Change:
    """Put other words in place of some of a line."""

    def plant(words: list[Word]) -> list[Word]:
        line = line_of(begins, words)
        assert not line or set(change) <= {word.text for word in line}, begins
        return [
            replace(word, text=change.get(word.text, word.text)) if word in line else word for word in words
        ]

    return plant


def without_line(begins: str) -> Change:
    def plant(words: list[Word]) -> list[Word]:
        line = line_of(begins, words)
        return [word for word in words if word not in line]

    return plant


PLANTED = {
    'a place on the plate': ('Layout of the plates', in_line('HJ2 R', {'32': '34'}), 'near side, X to its right'),
    'a near side': ('Layout of the plates', in_line('HJ2 R', {'1/4': '3/4'}), 'near side, X to its right'),
    'a hand': ('Layout of the plates', in_line('HJ2 R', {'R': 'L'}), 'mark'),
    'a mark': ('H', in_line('2 Both', {'13/16': '15/16'}), 'from the first point'),
    'columns swapped': ('H', in_line('3 Corner', {'219': '18', '18': '219'}), 'from the last point'),
    'a cheek': ('H', in_line('Both ends', {'22.42°': '22.24°'}), 'plumb on the side'),
    'a bird’s mouth': ('HJ1–HJ8', in_line('Bird’s mouth', {'2': '1'}), 'heel'),
    'a jack': ('HJ1–HJ8', in_line('HJ4', {'91': '19'}), 'cut from'),
    'steps': ('HJ1–HJ8', in_line('HJ4', {'5,': '6,'}), 'steps, then body & tongue'),
    'a plumb cut': ('C, E', in_line('Seat', {'30.26°;': '30.62°;'}), 'heel plumb'),
    'a height': ('Section and heights', in_line('top of the ridge', {'89': '98'}), 'top of the ridge'),
    'a length in the list': ('Members and boards', in_line('HJ3', {'73': '37'}), 'cut from, tip to tip'),
    'a number in the list': ('Members and boards', in_line('C common', {'20': '21'}), 'number'),
    'the ridge': ('Members and boards', in_line('R', {'145': '154'}), 'sawn length'),
    'what is left over': ('What to buy, and what to cut from each board', in_line('1 14', {'22': '20'}), 'left over'),
    'board feet': ('What to buy, and what to cut from each board', in_line('Sheathing:', {'40': '41'}), 'Sheathing'),
}  # fmt: skip
GONE = {
    'a rafter': ('Layout of the plates', 'HJ3 R'),
    'a jack': ('HJ1–HJ8', 'HJ3'),
    'a mark': ('C, E', '2 Plate line: heel'),
    'a bird’s mouth': ('H', 'Bird’s mouth'),
    'a member': ('Members and boards', 'HJ2'),
    'a height': ('Section and heights', 'upper corner'),
}
"""A sheet, and the line of it that is left out."""


def test_nothing_differs_on_good_sheets_and_every_page_is_read(sheets, pages):
    for name, pdf in sheets.items():
        status, told, remarks = ask('proof', str(pdf))
        lines = told.splitlines()
        assert (status, remarks, len(lines)) == (0, '', 2), (name, told)
        count = len(pages_of(pdf))
        assert re.fullmatch(rf'\d+ figures read on pages 1–{count}: 0 differ', lines[0])
    assert read_roof(pages, roof_names()).figures > 390


def test_the_sheets_say_what_makes_them_again(sheets, tmp_path):
    """Their own lines, as a roof file, make the same file, byte for byte."""
    lines = [word for line in pages_of(sheets['hip'])[-1:] for word in line.words]
    middle, found = 306, []
    for half in (True, False):
        some = lines_of([word for word in lines if (word.left < middle) is half and word.base > FOOT_PT])
        found += [close(line) for line in some]
    file = tmp_path / 'again.toml'
    first = next(place for place, line in enumerate(found) if line.startswith('kind = '))
    keys = [line for line in found[first:] if re.match(r'([a-z_.]+ = |")', line)]
    file.write_text('\n'.join(keys), 'utf-8')
    status, _, remarks = ask('roof', str(file), '--pdf', str(tmp_path / 'again.pdf'))

    assert (status, remarks) == (0, '')
    assert (tmp_path / 'again.pdf').read_bytes() == sheets['hip'].read_bytes()


@pytest.mark.parametrize('name', PLANTED)
def test_a_planted_error_is_found_where_it_is(pages, name):
    title, change, head = PLANTED[name]
    found, there = planted(pages, title, change)

    assert there & {fault.page for fault in found.faults if head in (fault.head, fault.row)}, found.faults


@pytest.mark.parametrize('name', GONE)
def test_a_line_that_is_gone_is_missed(pages, name):
    title, begins = GONE[name]
    found, there = planted(pages, title, without_line(begins))
    assert there & {fault.page for fault in found.faults}


@pytest.mark.parametrize('seed', range(2))
@pytest.mark.parametrize('name', PLANTERS)
def test_an_error_planted_anywhere_is_found(pages, name, seed):
    changed, what = planted_at(seed, PLANTERS[name], pages)
    assert read_roof(changed, roof_names()).faults, what


@pytest.mark.thorough
@pytest.mark.parametrize('name', KINDS)
def test_roofs_of_every_sort(name, tmp_path):
    file, pdf = tmp_path / 'roof.toml', tmp_path / 'roof.pdf'
    file.write_text(KINDS[name], 'utf-8')
    assert ask('roof', str(file), '--pdf', str(pdf))[0] == 0
    status, told, _ = ask('proof', str(pdf))

    assert (status, ': 0 differ' in told) == (0, True), told
    assert 'not read: figures of page' not in told
    _all_found(pdf, 1)


@pytest.mark.thorough
@pytest.mark.parametrize('kind', ROOFS)
def test_starters(kind, tmp_path):
    file, pdf = tmp_path / 'roof.toml', tmp_path / 'roof.pdf'
    file.write_text(ask('roof', '--starter', kind)[1], 'utf-8')
    assert ask('roof', str(file), '--pdf', str(pdf))[0] == 0
    status, told, _ = ask('proof', str(pdf))

    assert (status, ': 0 differ' in told) == (0, True), told
    assert 'not read: figures of page' not in told
    _all_found(pdf, 2)


def _all_found(pdf: Path, times: int) -> None:
    """Plant so many errors of each sort, each by itself."""
    pages = pages_of(pdf)
    for name, plant in PLANTERS.items():
        for seed in range(times):
            changed, what = planted_at(seed, plant, pages)
            assert read_roof(changed, roof_names()).faults, (name, what)
