"""Openings of the compact edition, read back from the finished pages by head and row, each figure worked out in space."""

from fractions import Fraction

import pytest
from fifty_digits import mpf
from headed import lines, read, said
from labels.expected import DEPTHS
from labels.members import _wood
from oracle import cuts, framing_square, seats, shortening, tails
from oracle.corner import common_length, corner, hip_length, hip_run, jack_difference, jack_to_points, rise
from oracle.rounding import decimal, degrees, part
from skewed import HIP, HIPS, RAFTER, RIDGE, SEAT, SPACINGS, VALLEYS

from layouts.pages.book import plan
from layouts.words.error import error_line
from tablegen.errors import BookError
from tablegen.settings import Settings, read_settings
from tablegen.tables.lookup import addends
from tablegen.written.lengths import read_length

PITCHES = {**{str(rise): Fraction(rise) for rise in range(1, 25)}, '7 1/2': Fraction(15, 2)}
FEET, INCHES = {str(feet): 12 * feet for feet in range(1, 25)}, {str(inch): inch for inch in range(1, 12)}
PARTS = {part(Fraction(n, 16)): Fraction(n, 16) for n in range(1, 16)}
OVERHANGS = (8, 12, 16, 18, 24)
SLACK_MM = 0.6
NOTE_MM = 7.3 * 25.4 / 72
"""Type is larger than that above the notes."""
PAGE_MM, TAB_MM, FOLIO_MM = 100, 6.4, 126
"""Width of a page, and of the tab at its edge; below it the page's number stands; mm."""


@pytest.fixture(scope='session')
def book(openings):
    return openings


def pages_of(book, name):
    """Return the words of both pages of a pitch: of the lengths, and of what stands beside them, line by line."""
    first = book.planned.index[f'opening:{name} in 12']
    return [parted(book.words[first - 1], 'Overhang'), parted(book.words[first], 'Jacks')]


def parted(words, named):
    words = [word for word in words if TAB_MM < word.left < PAGE_MM - TAB_MM and word.base < FOLIO_MM]
    left = next(word.left for word in words if word.text == named) - 1
    return lines([word for word in words if word.left < left]), lines(
        [word for word in words if word.left >= left]
    )


def heads_of(page):
    """Return the heads over the lengths: each with its words and its right edge."""
    line = next(line for line in page if line[0].text == 'ft')
    found, right = [], None
    for word in line:
        if found and word.left - right < 1.0 and found[-1][0] != 'ft':
            found[-1] = (f'{found[-1][0]} {word.text}', word.right)
        else:
            found.append((word.text, word.right))
        right = word.right
    return line, found


def lengths_in(page):
    """Return every length by its block ('ft', 'in'), the name of its row and its head."""
    head_line, heads = heads_of(page)
    below = [line for line in page[page.index(head_line) + 1 :] if line[0].size > NOTE_MM]
    found = {}
    for line in below:
        place, cells = 0, {}
        for word in line:
            while place < len(heads) and word.left > heads[place][1] + SLACK_MM:
                place += 1
            if place == len(heads):
                break
            if word.right > heads[place][1] + SLACK_MM + 4:
                continue
            cells.setdefault(place, []).append(word)
        block = None
        for place, words in cells.items():
            name = heads[place][0]
            if name in ('ft', 'in'):
                block = (name, said(words))
            elif block:
                found[(*block, name)] = said(words)
    return found


@pytest.mark.parametrize('name', PITCHES)
def test_lengths_stand_under_their_heads_beside_their_runs(book, name):
    at = corner(PITCHES[name])
    left, right = (lengths_in(page) for page, _beside in pages_of(book, name))
    wrong = []
    for block, runs in (('ft', FEET), ('in', INCHES), ('in', PARTS)):
        for run, inches in runs.items():
            for page, head, length in (
                (left, 'common', common_length),
                (left, 'rise', rise),
                (right, 'hip, valley', hip_length),
            ):
                expected = part(length(at, inches))
                if page.get((block, run, head)) != expected:
                    wrong.append(f'{head} {run} {block}: {page.get((block, run, head))}, expected {expected}')
    assert wrong == []


def section(told, title, rows):
    """Return the rows below a head that stands once."""
    (place,) = [place for place, line in enumerate(told) if line == title]
    return told[place + 1 : place + 1 + rows]


@pytest.mark.parametrize('name', PITCHES)
def test_the_common_rafter_has_its_cuts_its_mouths_and_its_tails(book, name):
    at = corner(PITCHES[name])
    told = [said(line) for line in pages_of(book, name)[0][1]]
    body, tongue = map(part, framing_square.arms(12, rise(at, 12)))
    level, along = map(part, shortening.common_at_ridge(at, RIDGE))
    heights = {
        size: part(seats.height_above_plate(at, depth, SEAT))
        + _wood(depth, seats.left(at, depth, SEAT)).lstrip('0123456789/ ')
        for size, depth in DEPTHS.items()
    }

    assert f'{body} body: level' in told
    assert f'{tongue} tongue: plumb' in told
    assert f'Plumb cut {degrees(cuts.plumb_cut(at))}' in told
    assert f'Level cut {degrees(cuts.level_cut(at))}' in told
    assert section(told, f'Off for a ridge {part(RIDGE)}', 2) == [f'level {level}', f'along the top {along}']
    assert section(told, f'Off for a ledger {part(RAFTER)}', 2) == [
        f'level {part(RAFTER)}',
        f'along the top {part(common_length(at, RAFTER))}',
    ]
    mouths = section(told, f'Seat {part(SEAT)} over plate', 6)
    assert mouths[-1] == f'heel {part(seats.heel(at, SEAT))}'
    for line, (size, height) in zip(mouths, heights.items(), strict=False):
        depth = DEPTHS[size]
        tabled = seats.notch(at, SEAT) * 2 <= depth and depth >= SEAT
        assert (
            line.replace(' †', '†').replace(' ‡', '‡').replace(' §', '§')
            == f'{size} {height if tabled else "—"}'
        )
    assert section(told, 'Overhang tail', 5) == [
        f'{out} {part(tails.common_tail(at, out))}' for out in OVERHANGS
    ]


@pytest.mark.parametrize('name', PITCHES)
def test_hip_valley_and_jacks_have_their_cuts_deductions_cheeks_and_mouths(book, name):
    at = corner(PITCHES[name])
    told = [said(line) for line in pages_of(book, name)[1][1]]
    body, tongue = map(part, framing_square.arms(hip_run(at, 12), rise(at, 12)))
    height = seats.height_above_plate(at, DEPTHS['2×8'], SEAT)
    hips, valleys = (at, height, DEPTHS[HIPS], HIP), (at, height, DEPTHS[VALLEYS], HIP)

    assert f'{tongue} tongue: plumb' in told
    assert any(line.startswith(f'{body} body: level') for line in told)
    assert f'Plumb cut {degrees(cuts.hip_plumb_cut(at))}' in told
    assert f'Level cut {degrees(cuts.hip_level_cut(at))}' in told
    assert f'Backing, each face {degrees(cuts.backing(at))}' in told
    assert f'Drop, plumb; hip {part(HIP)} {part(cuts.drop_plumb(at, HIP))}' in told
    off = [
        ('Hip at ridge, one cheek', shortening.hip_at_ridge(at, RIDGE)),
        ('Hip at commons, two', shortening.hip_between_commons(at, RAFTER)),
        ('Valley, one or two', shortening.hip_at_ridge(at, RIDGE)),
        ('Jack at a hip', shortening.jack_at_hip(at, HIP)),
    ]
    assert section(told, 'Comes off, center to face level along top', 4) == [
        ' '.join([name, *map(part, both)]) for name, both in off
    ]
    assert section(told, 'Cheek on top from square square 12 &', 2) == [
        f'{name} {degrees(top)} {part(framing_square.figure_against_12(top))}'
        for name, top in (('Jack', cuts.jack_cheek(at)), ('Hip, valley', cuts.hip_cheek(at)))
    ]
    seated = [
        ('Hip, dropped', seats.hip_height(at, height, HIP), seats.hip_heel(*hips), seats.hip_seat(*hips)),
        ('Valley', height, seats.valley_heel(*valleys), seats.valley_seat(*valleys)),
    ]
    marks = [
        _wood(DEPTHS[stock], DEPTHS[stock] * (1 - figures[2] / tails.hip_plumb_cut_length(at, DEPTHS[stock])))
        for stock, figures in zip((HIPS, VALLEYS), seated, strict=True)
    ]
    mouths = section(told, 'Bird’s mouth 2×10 2×12 height heel seat', 2)
    for line, (name, *figures), mark in zip(mouths, seated, marks, strict=True):
        height, heel, seat = map(part, figures)
        joined = line.replace(' †', '†').replace(' ‡', '‡').replace(' §', '§')
        assert joined == f'{name} {height}{mark.lstrip("0123456789/ ")} {heel} {seat}'
    assert f'Valley’s heel: out, level {part(seats.valley_back(at, HIP))}' in told
    apart = [(decimal(one, 1).removesuffix('.0'), jack_difference(at, one)) for one in SPACINGS.values()]
    hung = [(str(out), tails.hip_tail(at, out)) for out in (12, 16, 18, 24)]
    assert section(told, 'Jacks apart longer by overhang hip tail', len(apart)) == [
        f'{spacing} {part(longer)} {out} {part(tail)}'
        for (spacing, longer), (out, tail) in zip(apart, hung, strict=True)
    ]


@pytest.mark.parametrize('name', ['1', '5', '8', '13', '19', '24', '7 1/2'])
def test_an_opening_says_how_many_sums_are_off(book, name):
    """Counted again, sum by sum, from lengths worked out in space: of runs, less the ridge, and of the points of jacks."""
    at = corner(PITCHES[name])
    added = [12 * feet + inch for feet in range(1, 24) for inch in range(1, 12)]
    offs = {'common': shortening.common_at_ridge, 'hip': shortening.hip_at_ridge}
    first = book.planned.index[f'opening:{name} in 12']
    texts = [read(book.words[page - 1]) for page in (first, first + 1)]
    for text, length, member in zip(texts, (common_length, hip_length), offs, strict=True):
        one, (_level, along) = length(at, 1), offs[member](at, RIDGE)
        printed = [round_half_up(one * n) for n in range(24 * 192)]

        def parts_off(n, one=one, printed=printed):
            return abs(printed[n - n % 192] + printed[n % 192 - n % 16] + printed[n % 16] - printed[n])

        off = [
            sum(bool(parts_off(16 * run + n)) for run in added for n in some) for some in ((0,), range(1, 16))
        ]
        ridge = round_half_up(along * 16)
        less = [
            printed[n - n % 192]
            + printed[n % 192 - n % 16]
            + printed[n % 16]
            - ridge
            - round_half_up(one * n - along * 16)
            for n in range(24 * 192)
            if n > RIDGE / 2 * 16
        ]
        far = sum(abs(apart) > 1 for apart in less)
        assert (
            f'Feet + inches: {off[0]} of 253 sums are 1/16 off; with parts, {off[1]} of 3795. '
            f'Less the ridge, {far} of {len(less)} are 1/8 off'
        ) in text
    assert 'are 1/8 off; jack points, {} of {}.'.format(*jack_points_off(at)) in texts[1]


def jack_points_off(at):
    """Return how many points of jacks, at every inch from the corner, are over a part off, and how many there are."""
    apart, printed = [], {run: round_half_up(common_length(at, run) * 16) for run in range(288)}
    half, off = (
        round_half_up(one * 16) for one in (common_length(at, RAFTER / 2), shortening.jack_at_hip(at, HIP)[1])
    )
    for run in range(1, 288):
        short, long = jack_to_points(at, run, HIP, RAFTER)
        for point, sign in ((short, -1), (long, 1)):
            if point > 0:
                apart.append(
                    abs(
                        printed[run - run % 12]
                        + printed[run % 12]
                        - off
                        + sign * half
                        - round_half_up(point * 16)
                    )
                )
    return sum(one > 1 for one in apart), len(apart)


def round_half_up(value) -> int:
    """A length of 5 in 12 ends at a half exactly, but for the last of fifty digits."""
    return int(value + mpf(1) / 2 + mpf(10) ** -30)


def test_the_compact_edition_is_one_section_of_at_most_eighty_pages():
    planned = plan(read_settings('edition = "compact"', ''))

    assert len(planned.index.sections) == 1
    assert planned.index.total <= 80
    for pitch in Settings().pitches:
        assert planned.index[f'opening:{pitch.text}'] % 2 == 0  # opens on the left
    assert planned.figures == 24 * (3 * (24 + 11 + 15) + 19 + 28 + 4)


def test_runs_longer_than_an_opening_are_refused():
    with pytest.raises(BookError) as refused:
        plan(read_settings('edition = "compact"\nruns.to = "24 ft 1 in"', ''))
    assert error_line(refused.value) == (
        'runs.to: 24 ft 1 in is longer than the rows of an opening; allowed: up to 24 ft; next: the complete edition '
        'tables such runs: --edition complete; or take shorter ones: lengths of two runs may be added'
    )


@pytest.mark.parametrize(
    ('run', 'expected'), [('11 ft 4 5/16', [132, 4, Fraction(5, 16)]), ('7/16', [Fraction(7, 16)])]
)
def test_a_run_is_read_on_an_opening_as_feet_inches_and_a_part(run, expected):
    assert addends(read_length(run).inches, read_settings('edition = "compact"', '')) == expected
