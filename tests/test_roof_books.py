"""A book of one's own roof: its members worked through on the opening of its pitch, and all of them in a list."""

from __future__ import annotations

from fractions import Fraction
from pathlib import Path

import mpmath as mp
import pytest
from asking import ask
from headed import lines, said
from made_books import Booklet, MadeBook
from opening_places import cited_wrongly
from oracle import hip_ends, seats, shortening, tails
from oracle.corner import common_length, corner, hip_length, jack_length, jack_to_points
from oracle.rounding import part
from own_roofs import PORCH, SALTBOX, STORE
from skewed import SkewedBook
from test_colophon import printed_lines
from worked_books import examples_of
from worked_pages import jack_rows

from layouts.html.page_html import pages_html, style
from layouts.pages.book import plan
from layouts.pdf.documents import Job
from layouts.pdf.read_back import pages_of
from layouts.pdf.typeset import set_document
from layouts.verbs.settings_file import settings_from
from layouts.words.proof import names
from tablegen.examples.own_roof import own_roof
from tablegen.frame.frame import frame
from tablegen.frame.roof_file import read_roof
from tablegen.proof.proof import proof
from tablegen.roof.member import Line

BOOK = 'pitches = [1, 4, 7]\nparts = ["opening", "examples"]\nroofs = ["store.toml", "porch.toml", "saltbox.toml"]\n'
AT, RUN, OUT, THICK = corner(Fraction(7)), Fraction(144), Fraction(16), Fraction(3, 2)
RAFTER_DEPTH, HIP_DEPTH, SEAT = Fraction(29, 4), Fraction(37, 4), Fraction(7, 2)
"""Dry dressed 2×8 and 2×10 (PS 20), and the usual seat."""
HEADS = {
    'long': Line.LONG, 'cut': Line.CUT, 'short': Line.SHORT, 'point': Line.POINT, 'side': Line.SIDE,
    'plate': Line.PLATE, 'tail side': Line.TAIL_SIDE, 'tail': Line.TAIL,
}  # fmt: skip


@pytest.fixture(scope='module')
def folder(tmp_path_factory) -> Path:
    folder = tmp_path_factory.mktemp('roofs')
    for name, written in (('store', STORE), ('porch', PORCH), ('saltbox', SALTBOX), ('book', BOOK)):
        (folder / f'{name}.toml').write_text(written)
    return folder


@pytest.fixture(scope='module')
def book(folder) -> SkewedBook:
    planned = plan(settings_from(str(folder / 'book.toml')))
    out = folder / 'booklet.pdf'
    set_document(Job(pages_html(planned.pages(), ''), style(planned.trim), planned.index.total, out))
    return SkewedBook(MadeBook(planned, Booklet(out)))


@pytest.fixture(scope='module')
def pages(book):
    return examples_of(book)


@pytest.fixture(scope='module')
def framed(folder):
    return frame(read_roof(STORE, ''))


def test_the_members_are_those_of_the_roofs_and_each_place_has_its_figure(book, pages):
    wrong, seen = cited_wrongly(book.made, pages)

    assert wrong == []
    assert seen > 40
    assert list(pages) == [
        'Common rafter C', 'Common rafter C: marks', 'Hip H', 'Hip H: marks', 'Hip jacks', 'Hip jack HJ5: marks',
        'Rafter C', 'Rafter C: marks', 'Saltbox: C1 and C2', 'Rafter C1: marks', 'Rafter C2: marks',
    ]  # fmt: skip


def test_the_proof_reads_every_page_of_an_example_in_a_book_of_ones_own_roofs(book, pages):
    found = proof(pages_of(book.made.built.booklet), names)
    assert found.faults == []
    assert all(
        ', number: ' in words for _page, words in found.strange
    )  # rafters that no plate line tells how many there are
    assert {page.number for page in pages.values()} <= found.read


def test_figures_are_those_of_the_roof_in_space(pages):
    """The common, the hip between the last side common and the end common, and the shed's rafter, by planes and vectors."""
    hip, height = pages['Hip H'], seats.height_above_plate(AT, RAFTER_DEPTH, SEAT)
    assert pages['Common rafter C'].step('Line length').figure == part(common_length(AT, RUN))
    assert pages['Common rafter C'].step('To the tail').figure == part(common_length(AT, RUN + OUT))
    assert hip.step('corner of plates, by').figure == part(hip_length(AT, RUN))
    assert hip.step('To the tail').figure == part(hip_length(AT, RUN + OUT))
    level, along = shortening.hip_between_commons(AT, THICK)
    off = hip.step(f'the end common, level; {part(along)} along the top edge')
    assert (off.figure, {place.row for place in off.places}) == (part(level), {'Hip at commons, two'})
    assert hip.step('Height above plate').figure == part(seats.hip_height(AT, height, THICK))
    assert hip.step('Seat: level').figure == part(seats.hip_seat(AT, height, HIP_DEPTH, THICK))
    porch = corner(Fraction(4))
    assert pages['Rafter C'].step('Line length').figure == part(common_length(porch, 84))
    assert pages['Rafter C'].step('Off at the ledger').figure == part(hip_ends.shed_on_ledger(porch, THICK))


def test_jacks_stand_at_their_own_stations(book, pages):
    (number,) = book.numbers('example_jacks_table')
    rows = jack_rows(book.words(number))

    assert list(rows) == [f'HJ{one}' for one in range(1, 6)]
    for one, row in enumerate(rows.values(), 1):
        short, long = jack_to_points(AT, 16 * one, THICK, THICK)
        whole = part(long + tails.common_tail(AT, OUT))
        assert row == [part(jack_length(AT, 16 * one)), part(long), part(short), whole]


def test_jacks_of_hips_with_one_cheek_are_worked_through(folder):
    """Source: in plan a hip's side comes to the ridge's side half the ridge short of its end, less half the hip, askew; the first
    common stands beside it, at the next sixteenth, and every jack whole spaces from that one.
    """
    asked = read_roof(STORE + 'cuts = {hip_heads = "single"}', '')
    made = own_roof('store.toml', asked, settings_from(str(folder / 'book.toml')))
    beside = RUN - THICK / 2 + mp.sqrt(2) * THICK / 2 + THICK / 2
    first = Fraction(int(mp.ceil(beside * 16)), 16) % 16

    assert made.building.hip
    assert made.building.jacks
    assert [run for _mark, run in made.building.jacks.marks] == [first + 16 * n for n in range(1, 9)]


def test_boards_and_list_have_the_marks_of_the_frame(book, pages, framed):
    """Each found by its mark and the head over it; a mark of both hands has one row, left before right."""
    members = {one.member.name: one.member for one in framed.members}
    for title, mark in (('Common rafter C', 'C'), ('Hip H', 'H'), ('Hip jack HJ5', 'HJ5')):
        assert sorted(pages[f'{title}: marks'].marks.values()) == sorted(
            mark.at.text for mark in members[mark].marks
        )
    first, *_others = book.numbers('own_members')
    assert first == book.made.planned.index['all-members']
    next_roof = book.made.planned.index['all-members:2']
    found = dict(
        row
        for number in book.numbers('own_members')
        if number < next_roof
        for row in _rows(book.words(number))
    )
    numbers = {name: [one.count for one in framed.members if one.member.name == name] for name in members}
    for name, member in members.items():
        at = {mark.line: mark.at.text for mark in member.marks}
        heads, cells = found.pop(name)
        counts = ' + '.join(map(str, numbers[name]))
        assert cells == ' '.join((name, counts, *(at.pop(HEADS[head]) for head in heads)))
        assert set(at) <= {Line.CENTER}
    assert set(found) == {'R', 'F1', 'F2'}
    told = [said(line) for number in book.numbers('own_members') for line in lines(book.words(number))]
    assert 'F1, F2 both outside corner 0.00° 45.00° outer face' in told  # plumb fascias at square corners


def _rows(words):
    """Yield the rows of a page of all members: mark, the heads over it, and the whole row."""
    heads: list[str] = []
    for line in lines(words):
        told = said(line)
        if told.startswith(('number ', 'left + right ')):
            told = told.removeprefix('number ').removeprefix('left + right ')
            heads = [one.replace('_', ' ') for one in told.replace('tail side', 'tail_side').split()]
        elif heads and line[0].text.isalnum() and line[0].text.isupper() and line[1].text.isdigit():
            yield line[0].text, (heads, told)


def test_its_colophon_and_file_make_the_same_book(book, folder, tmp_path):
    planned = book.made.planned
    (folder / 'again.toml').write_text('\n'.join(printed_lines(planned, tmp_path)))
    again = plan(settings_from(str(folder / 'again.toml')))

    assert pages_html(again.pages(), 'book') == pages_html(planned.pages(), 'book')


@pytest.mark.parametrize(
    ('written', 'line'),
    {
        'roofs = ["none.toml"]': 'none.toml: there is no such file; next: rafterbook roof --starter KIND prints one',
        'roofs = ["store.toml"]\npitches = [6]': 'pitches: store.toml has a roof of 7 in 12, which is not in the book; next: add it to pitches',
        'roofs = ["store.toml"]\njacks.spacings = [24]': 'jacks.spacings: store.toml has jacks 1 ft 4 in on center',
        'roofs = ["store.toml", "other.toml"]': 'stock.rafters: other.toml has 2×6, a roof before it 2×8',
        'roofs = [7]': 'roofs[1]: 7 is no name of a file; allowed: a roof file',
    }.items(),
)
def test_what_does_not_go_is_told_in_a_line(written, line, folder):
    (folder / 'other.toml').write_text(PORCH + 'stock.rafters = "2x6"')
    (folder / 'odd.toml').write_text(written)
    status, out, err = ask('make', str(folder / 'odd.toml'), '--plan')

    assert (status, out, err.count('\n')) == (2, '', 1)
    assert line in err


def test_an_option_names_a_roof_file_from_where_the_command_runs(folder, monkeypatch):
    monkeypatch.chdir(folder)
    (folder / 'both.toml').write_text('roofs = ["store.toml", "porch.toml"]')
    given = ask('make', '--roof', 'store.toml', '--roof', 'porch.toml', '--edition', 'complete', '--plan')

    assert given == ask('make', 'both.toml', '--edition', 'complete', '--plan')
    assert given[1] != ask('make', '--edition', 'complete', '--plan')[1]
