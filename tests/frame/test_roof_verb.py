"""roof: starters of every kind are roofs, options go over files, each answer is whole, and its figures are those of the roof."""

from __future__ import annotations

import csv
import json
import re
import subprocess
import sys
from importlib.resources import files
from io import StringIO

import pytest
from asking import ask
from each import some
from jsonschema import Draft202012Validator
from mpmath import mpf, sqrt

from layouts.told.roof_answer import SHOWN
from layouts.verbs.roof import KEYS as OPTION_KEYS
from layouts.words.frame import CHECKS, LEVELS, LINES, MEMBERS, in_rows
from layouts.words.starter import roof_starter
from tablegen.frame.asked import Upper, Valleys
from tablegen.frame.plan import Level
from tablegen.frame.roof_keys import KEYS, KINDS, unused
from tablegen.roof.member import Kind, Line

HIP = ('roof', '--kind', 'hip', '--pitch', '7', '--width', '24 ft', '--length', '36 ft')
SCHEMA = json.loads(files('layouts.told').joinpath('schemas/roof.json').read_text('utf-8'))
SLOPE = mpf(7) / 12
KINDS_SAID = 'shed, gable, saltbox, gambrel, hip, half-hip, wing, many-sided, bay'
FULLER = {
    'gable': ('gable = "0"', 'gable = "16 in"'),
    'half-hip': ('fascia = "0"', 'fascia = "3/4 in"'),
    'hip': ('#end_pitch = "9"', 'end_pitch = "9"'),
    'wing': ('valleys = "both"', 'valleys = "blind"'),
}
"""What makes a roof of a starter have more to tell."""


@pytest.fixture
def file(tmp_path):
    """Return what writes a starter, a line of it changed, and gives its path."""

    def written(kind: str, old: str = '', new: str = '') -> str:
        path = tmp_path / f'{kind}.toml'
        assert old in roof_starter(kind)
        path.write_text(roof_starter(kind).replace(old, new, 1), 'utf-8')
        return str(path)

    return written


def sixteenths(inches: mpf) -> str:
    """Return a length to the nearest sixteenth, a half up."""
    whole, part = divmod(int(inches * 16 + mpf(1) / 2), 16)
    share = next((f'{part // n}/{16 // n}' for n in (8, 4, 2, 1) if part % n == 0), '') if part else ''
    return ' '.join(one for one in (str(whole) if whole or not part else '', share) if one)


def rows(text: str, head: str) -> dict[str, dict[str, str]]:
    """Return a table of an answer by its rows' names, each row by the heads of its columns."""
    lines = text.splitlines()
    place = next(n for n, line in enumerate(lines) if line.startswith(head))
    _, *heads = re.split(r'\s{2,}', lines[place].strip())
    found = {}
    for line in lines[place + 1 :]:
        if not line.startswith('  '):
            break
        name, *cells = re.split(r'\s{2,}', line.strip())
        found[name] = dict(zip(heads[-len(cells) :], cells, strict=True))
    return found


@pytest.mark.parametrize('kind', some(list(KINDS)))
def test_a_starter_is_a_roof_and_its_answer_what_the_schema_says(kind, file):
    status, printed, remarks = ask('roof', '--starter', kind)
    assert (status, printed, remarks) == (0, roof_starter(kind), '')

    for change in ((), FULLER.get(kind, ())):
        status, out, remarks = ask('roof', file(kind, *change), '--format', 'json')
        assert (status, remarks) == (0, '')
        told = json.loads(out)
        assert [fault.message for fault in Draft202012Validator(SCHEMA).iter_errors(told)] == []
        assert told['roof']['kind'] == kind
        assert {one['check'] for one in told['checks']} <= set(CHECKS)


@pytest.mark.parametrize('kind', KINDS)
def test_a_starter_names_every_key_that_such_a_roof_may_use(kind):
    """A line that begins with # says a key too; what stands there is read in its place."""
    table, named, live = '', [], {}
    for line in roof_starter(kind).splitlines():
        if found := re.match(r'\[(.+)\]', line):
            table = f'{found[1]}.'
        elif found := re.match(r'(#?)([a-z_]+) = (.+?)(?:  +# .*)?$', line):
            named.append(f'{table}{found[2]}')
            live |= {} if found[1] else {named[-1]: found[3]}
    most = {'hip.ends': 1, 'hip.end_pitch': 9, 'wing.main_ends': 1, 'shed.upper': Upper.LEDGER}
    may = {
        key
        for some in ({}, most, most | {'wing.valleys': Valleys.BLIND})
        for key in set(KEYS) - set(unused(kind, some))
    }

    assert len(set(named)) == len(named)
    assert set(named) == may
    assert set(live) <= set(KEYS)


def test_what_is_called_something_is_all_there_is():
    assert set(MEMBERS) == set(Kind)
    assert set(LEVELS) == set(Level)
    assert {*LINES, Line.CENTER} == set(Line)
    assert set(OPTION_KEYS.values()) <= set(KEYS)


def test_options_say_what_a_file_says(tmp_path):
    path = tmp_path / 'a.toml'
    path.write_text(
        'kind = "hip"\npitch = 8\nwidth = "24 ft"\nlength = "36 ft"\nstock.rafters = "2x10"', 'utf-8'
    )

    assert ask(*HIP[:4], '8', *HIP[5:], '--stock', '2x10') == ask('roof', str(path))
    assert ask(*HIP, '--stock', '2x10') == ask('roof', str(path), '--pitch', '7')


@pytest.mark.parametrize(
    ('words', 'lines'),
    [
        ((), [f'--kind: is missing: what kind of roof it is; allowed: {KINDS_SAID}; next: see rafterbook roof --help']),
        (('--kind', 'gable', '--pitch', '6', '--width', '0'),
         ["--width: '0' is out of range; allowed: above 0 and up to 3600 in; next: see rafterbook roof --help",
          '--length: is missing: a gable roof needs it; next: rafterbook roof --starter KIND prints every key of a kind']),
        ((*HIP[1:], '--valley-stock', '2x8'), ['--valley-stock: nothing on this hip roof uses it; next: leave it out']),
        ((*HIP[1:], '--show', 'member'), [f"--show: 'member' is unknown; allowed: {', '.join(SHOWN)}; next: did you mean members?"]),
        ((*HIP[1:], '--show', 'buy', '--format', 'csv'), ['--show: CSV is the cut list alone; next: leave one of the two out']),
        ((*HIP[1:], '--csv', '--format', 'json'), ['--csv: is the cut list as CSV, and --format says json; next: leave one of the two out']),
        ((*HIP[1:], '--csv', '--format', 'text'), ['--csv: is the cut list as CSV, and --format says text; next: leave one of the two out']),
        ((*HIP[1:], '--csv', '--show', 'heights'), ['--show: CSV is the cut list alone; next: leave one of the two out']),
        ((*HIP[1:], '--csv', '--pdf', 'a.pdf'), ['--csv: the sheets hold everything; leave one of the two out; next: leave --csv out']),
        (('--starter', 'hipp'), [f"--starter: 'hipp' is no kind of roof; allowed: {KINDS_SAID}; next: did you mean hip?"]),
        (('--starter', 'hip', '--pitch', '6'),
         ['--starter: prints a file to start from, and reads none; next: leave the file and the other options out']),
        (('none.toml',), ['none.toml: there is no such file; next: rafterbook roof --starter KIND prints one to start from']),
        (('--kind', 'shed', '--pitch', '4', '--width', '24 ft 3 in', '--length', '24 ft'),
         ['buy.lengths: C needs 26 ft 9 13/16 in of 2×8, and the longest board is 24 ft; next: a board of 28 ft would do: '
          'add it to the lengths']),
    ],
)  # fmt: skip
def test_what_cannot_be_is_told_under_the_option_that_says_it(words, lines):
    assert ask('roof', *words) == (2, '', ''.join(f'rafterbook: {line}\n' for line in lines))


def test_a_fault_of_a_file_stays_one_and_that_of_an_option_over_it_is_the_option_s(file):
    path = file('gable', 'width = "24 ft"', 'width = "0"')
    out = ask('roof', path, '--pitch', '0')[2].splitlines()

    assert out[0].startswith(f"rafterbook: {path}: --pitch: '0' is flat")
    assert out[1].startswith(f"rafterbook: {path}: width: '0' is out of range")


def test_what_is_shown_is_what_was_picked():
    told = json.loads(ask(*HIP, '--show', 'heights, buy', '--format', 'json')[1])
    text = ask(*HIP, '--show', 'places')[1]

    assert set(told) == {'roof', 'heights', 'buy', 'defers'}
    assert '\nPlaces\n  front, back: HJ1 15 1/4, HJ2 31 1/4' in text
    assert 'Members' not in text


def test_figures_stand_under_their_heads():
    """7 in 12 over 12 ft of run, ridge and hips 1 1/2 in thick: right triangles, the hip's run √2 of the common's."""
    text = ask(*HIP)[1]
    along, own = sqrt(1 + mpf(49) / 144), sqrt(1 + mpf(49) / 288) * sqrt(2)
    off = mpf(3) / 4

    common = rows(text, 'Marks, common')['C']
    assert common == {
        'cut': sixteenths(off * along),
        'plate': sixteenths(144 * along),
        'tail': sixteenths(156 * along),
    }
    jack = rows(text, 'Marks, hip jack')['HJ3']
    middle = off * sqrt(2) * along
    assert jack == {
        'long': sixteenths(middle - off * along), 'cut': sixteenths(middle), 'short': sixteenths(middle + off * along),
        'plate': sixteenths(48 * along), 'tail': sixteenths(60 * along),
    }  # fmt: skip
    hip = rows(text, 'Marks, hip  ')['H']
    assert (hip['plate'], hip['tail']) == (sixteenths(144 * own), sixteenths(156 * own))
    assert rows(text, 'Level boards')['R']['sawn length'] == sixteenths(mpf(144) + 1.5)
    assert f'are {sixteenths(sqrt(mpf(288) ** 2 + 432**2))} in' in text


ABOVE = mpf('7.25') * sqrt(1 + SLOPE**2) - mpf('3.5') * SLOPE
"""Of 2×8 on a seat of 3 1/2 in, plumb over the plate line."""
RIDGE_DOWN = mpf(3) / 4 * SLOPE
"""What a square-topped ridge 1 1/2 in thick is set down."""
HEIGHTS = {
    # a wing of 16 ft meets at its own run of 8 ft, under the main ridge's 12 ft
    'wing': (
        'wing = {width = "16 ft", out = "10 ft", from_left = "8 ft"}',
        {
            'where the planes meet at the wing’s ridge, R2': ABOVE + 96 * SLOPE,
            'top of R2': ABOVE + 96 * SLOPE - RIDGE_DOWN,
            'underside of R2': ABOVE + 96 * SLOPE - RIDGE_DOWN - mpf('9.25'),
            'top of the ridge': ABOVE + 144 * SLOPE - RIDGE_DOWN,
        },
    ),
    # over one foot of overhang an end of 9 in 12 falls 2 in more than a side of 7
    'hip': ('hip = {end_pitch = 9, eaves = "equal"}', {'top of the ends’ plates': mpf(2)}),
    'half-hip': ('half-hip.gable_rise = "3 ft"', {'top of the ends’ plates': mpf(36)}),
    'saltbox': ('saltbox = {back_pitch = 5, back_plate_below = "6 in"}', {'top of the back’s plates': mpf(-6)}),
}  # fmt: skip


@pytest.mark.parametrize('kind', HEIGHTS)
def test_heights_of_second_ridges_and_of_other_plates(kind, tmp_path):
    more, wanted = HEIGHTS[kind]
    path = tmp_path / 'a.toml'
    path.write_text(f'kind = "{kind}"\npitch = 7\nwidth = "24 ft"\nlength = "36 ft"\n{more}', 'utf-8')
    found = rows(ask('roof', str(path), '--show', 'heights')[1], 'Heights')

    for name, height in wanted.items():
        (figure,) = found[name].values()
        assert figure == ('−' if height < 0 else '') + sixteenths(abs(height)), name


def test_the_two_cheeks_of_a_hip_are_told_by_their_sides(file):
    """Eight sides against a wall through two corners: up the left one of its hips the wall is on the left, 45 degrees in plan from
    the hip; on the right the plane half way to the next hip, 22 1/2 degrees. The blade is tilted by what is left of 90."""
    found = rows(ask('roof', file('bay'), '--show', 'members')[1].partition('  Past')[0], 'Cheeks')

    assert [found[f'H1 left, upper {side}']['blade'] for side in ('left', 'right')] == ['45.00°', '67.50°']


def test_every_member_is_cut_from_a_board_that_is_bought():
    told = json.loads(ask(*HIP, '--format', 'json')[1])
    wanted = {}
    for one in told['members']:
        wanted[one['mark']] = wanted.get(one['mark'], 0) + one['number']
    wanted |= {one['mark']: one['number'] for one in told['boards']}

    cut = {}
    for size in told['buy']['sizes']:
        for board in size['boards']:
            for piece in board['cut']:
                cut[piece['mark']] = cut.get(piece['mark'], 0) + 1
        assert sum(one['number'] for one in size['buy']) == len(size['boards'])
    assert cut == wanted


def test_the_cut_list_has_a_row_for_each_mark_and_hand(file):
    path = file('gable', *FULLER['gable'])
    written = ask('roof', path, '--csv')
    assert written == ask('roof', path, '--format', 'csv') == ask('roof', path, '--csv', '--format', 'csv')
    out = list(csv.DictReader(StringIO(written[1])))
    told = json.loads(ask('roof', path, '--format', 'json')[1])

    marks = [one['mark'] for group in ('members', 'boards', 'studs') for one in told[group]]
    assert [row['mark'] for row in out] == marks
    for row, one in zip(out, told['members'], strict=False):
        assert (row['kind'], row['number'], row['stock']) == (one['kind'], str(one['number']), one['stock'])
        assert row['cut_from_text'] == one['cut_from']['text']
        for mark in one['marks']:
            assert (row[f'{mark["line"]}_inches'], row[f'{mark["line"]}_text']) == tuple(mark['at'].values())


def test_without_buying_neither_the_solver_nor_its_numbers_are_loaded():
    code = (
        'import io, sys; from layouts.command import main; '
        'main(sys.argv[1:], io.StringIO(), sys.stderr); print(*sys.modules)'
    )
    words = [*HIP, '--show', 'members', '--format', 'json']
    done = subprocess.run([sys.executable, '-c', code, *words], capture_output=True, text=True, check=True)

    assert not {'highspy', 'numpy', 'pint', 'jinja2'} & set(done.stdout.split())


@pytest.mark.parametrize(
    ('marks', 'said'),
    [
        (['C', 'HJ1', 'HJ2', 'HJ3', 'H'], 'C, HJ1–HJ3, H'),
        (['HJ1', 'HJ2', 'HJ4'], 'HJ1, HJ2, HJ4'),
        (['HJ9', 'HJ10', 'HJ11'], 'HJ9–HJ11'),
        ([], ''),
    ],
)
def test_marks_that_follow_one_another_are_said_as_first_and_last(marks, said):
    assert in_rows(marks) == said
