"""One grammar: a list of spellings goes through every entry, settings, options and CSV, and has one answer everywhere."""

from __future__ import annotations

import io
import json
from collections.abc import Callable

import pytest

from layouts.command import main
from layouts.words.error import error_line
from tablegen.checking.square_figures import KEYS
from tablegen.checking.square_file import read_square
from tablegen.errors import BookError
from tablegen.frame.roof_file import read_roof
from tablegen.settings import read_settings

Entry = Callable[[str], str]
"""Takes a spelling and returns what came of it; a refusal is raised."""


class Refused(Exception):
    """What was told in place of an answer."""


def words(*before: str, after: tuple[str, ...] = ()) -> Entry:
    """Return the entry of a command line into which the spelling is put."""

    def entry(spelling: str) -> str:
        out, err = io.StringIO(), io.StringIO()
        status = main([*before, spelling, *after], out, err)
        if status == 2:
            raise Refused(err.getvalue())
        return out.getvalue()

    return entry


def key(line: str) -> Entry:
    """Return the entry of a line of a settings file, the spelling as a TOML string in it."""

    def entry(spelling: str) -> str:
        try:
            return str(read_settings(line.format(json.dumps(spelling, ensure_ascii=False)), ''))
        except BookError as faults:
            raise Refused('\n'.join(map(error_line, faults.each()))) from None

    return entry


def roof_key(line: str) -> Entry:
    """Return the entry of a line of a roof file."""

    def entry(spelling: str) -> str:
        try:
            return str(read_roof(line.format(json.dumps(spelling, ensure_ascii=False)), ''))
        except BookError as faults:
            raise Refused('\n'.join(map(error_line, faults.each()))) from None

    return entry


def cell(spelling: str) -> str:
    """Return what a square's CSV says that shows a spelling."""
    shown = f'"{spelling.replace(chr(34), chr(34) * 2)}"'
    try:
        return str(read_square(f'rise,{",".join(KEYS)}\n6,{shown}{"," * (len(KEYS) - 1)}\n', 'mine.csv'))
    except BookError as fault:
        raise Refused(error_line(fault)) from None


EMPTY_IS_SILENT = ('CSV',)
"""An empty cell is a figure that the square has not."""
LENGTHS: dict[str, Entry] = {
    'runs.from': key('runs.from = {}'),
    'runs.to': key('runs = {{from = "1/64", by = "1 in", to = {}}}\nsmallest_part = "1/64"'),
    'runs.by': key('runs.by = {}\nsmallest_part = "1/64"\nruns.from = "1/64"'),
    'jacks.spacings': key('jacks.spacings = [{}]'),
    'stock.ridge': key('stock.ridge = {}'),
    'stock.seat': key('stock.seat = {}'),
    'find RUN': words('find', '6'),
    'find --spacing': words('find', '6', '2 ft', '--show', 'jack', '--spacing'),
    'find --seat': words('find', '6', '2 ft', '--show', 'seat', '--stock', '2x12', '--seat'),
    'find --overhang': words('find', '6', '2 ft', '--show', 'tail', '--overhang'),
    'find --plate-length': words('find', '6', '1/64', '--show', 'ridge', '--overhang', '0', '--plate-length'),
    'find --ridge-thickness': words('find', '6', '2 ft', '--show', 'shortening', '--ridge-thickness'),
    'find --ledger-thickness': words('find', '6', '90 ft', '--shed', 'ledger', '--ledger-thickness'),
    'pitch --rise': words('pitch', '--run', '1 in', '--rise'),
    'pitch --length': words('pitch', '--run', '1/64', '--length'),
    'pitch --gap': words('pitch', '--level', '1 in', '--gap'),
    'diagonal LENGTH': words('diagonal', '9 ft'),
    'diagonal --reads': words('diagonal', '9 in', '9 in', '--reads', '9 in'),
    'brace LEG': words('brace', '9 ft'),
    'data --runs': words('data', '--pitches', '6', '--nearest', '1/64', '--runs'),
    'check --run': words('check', 'length', '--pitch', '6', '--reads', '9 in', '--run'),
    'check --reads': words('check', 'length', '--pitch', '6', '--run', '9 in', '--reads'),
    'check --spacing': words(
        'check', 'length', '--of', 'jack-difference', '--pitch', '6', '--reads', '9 in', '--spacing'
    ),
    'check --within': words(
        'check', 'length', '--pitch', '6', '--run', '9 in', '--reads', '9 in', '--within'
    ),
    'check --step': words('check', 'steps', '--pitch', '6', '--run', '9 ft', '--step'),
    'check steps --within': words('check', 'steps', '--pitch', '6', '--run', '9 ft', '--within'),
    'check --along': words('check', 'corner', '--diagonal', '9 in', '--along', '9 in'),
    'check --over': words('check', 'turn-over', '--gap', '1/64', '--over'),
    'roof width': roof_key('kind = "gable"\npitch = 6\nlength = "9 ft"\noverhang.eave = 0\nwidth = {}'),
    'roof buy.lengths': roof_key(
        'kind = "gable"\npitch = 6\nwidth = "9 ft"\nlength = "9 ft"\nbuy.lengths = [{}]'
    ),
    'CSV': cell,
}
PITCHES: dict[str, Entry] = {
    'pitches': key('pitches = {}'),
    'roof pitch': roof_key('kind = "gable"\nwidth = "9 ft"\nlength = "9 ft"\npitch = {}'),
    'roof hip.end_pitch': roof_key(
        'kind = "hip"\npitch = 6\nwidth = "9 ft"\nlength = "3600 in"\nhip = {{end_pitch = {}}}'
    ),
    'pitches, a list': key('pitches = [{}]'),
    'find PITCH': words('find', after=('2 ft',)),
    'find --with': words('find', '6', '2 ft', '--with'),
    'check --pitch': words('check', 'length', '--run', '1 ft', '--reads', '14', '--pitch'),
    'check steps --pitch': words('check', 'steps', '--run', '1 ft', '--pitch'),
    'data --pitches': words('data', '--runs', '1 ft', '--pitches'),
}
DEGREES: dict[str, Entry] = {
    'pitch --degrees': words('pitch', '--degrees'),
    'find --corner': words('find', '6', '2 ft', '--corner'),
}
VULGAR = {
    '¼': '1/4', '½': '1/2', '¾': '3/4', '⅐': '1/7', '⅑': '1/9', '⅒': '1/10', '⅓': '1/3', '⅔': '2/3', '⅕': '1/5',
    '⅖': '2/5', '⅗': '3/5', '⅘': '4/5', '⅙': '1/6', '⅚': '5/6', '⅛': '1/8', '⅜': '3/8', '⅝': '5/8', '⅞': '7/8',
}  # fmt: skip
SAME_LENGTHS = {
    '7 1/2': (
        *('7½', '7 ½', '7-1/2', '7 - 1/2', '7–1/2', '7 1⁄2', '7 1∕2', '  7   1/2 ', '7\u00a01/2', '7 ⅟2'),
        *(
            '7½″',
            '7½"',
            "7½''",
            '7½ ″',
            '7½ in',
            '7 1/2 IN',
            '7 1/2 Inches',
            '7 1/2 inch',
            '7 1/2 in.',
            '7½In',
        ),
        *("0' 7½", '0′7½″', '0\'-7 1/2"', '0 FT 7 1/2 IN', '0 ft, 7 1/2', '0 feet 7½', '0 Foot - 7½ in'),
    ),
    '8': ('8', '08', '8.', '8 in', '8"', '0 ft 8'),
    **{
        f'3 {plain}': (f'3{sign}', f'3 {sign}', f'3{sign} IN', f'0\'-3{sign}"')
        for sign, plain in VULGAR.items()
    },
    **{f'1/{below}': (f'⅟{below}', f'⅟{below} in') for below in (2, 32)},
    '200 mm': ('200 MM', '200mm', '200 millimeters', '200 Millimetres'),
    '20.0 cm': ('20.0 CM', '20.0cm', '20.0 Centimeters'),
    '0.200 m': ('0.200 M', '.200 m', '0.200 metres'),
}
"""By a plain spelling, those that are to have its answer; the finest part that a reading names is the same in all."""
NO_LENGTHS = {
    '131/2': '13 1/2', '71/2': '7 1/2', '71/2 in': '7 1/2 in', '4½5': '4 1/2', '18/12': '1 1/2', '3/2 m': '1 1/2 m',
    '2 ft 131/2 in': '3 ft 1 1/2 in', '1 ft 12 in': '2 ft', "1' 13½": '2 ft 1 1/2 in', '5/4"': '1 1/4"',
    '3 8/8': '', '1/0': '', '+4': '', '4 + 1/2': '', '7 -1/2': '', '7- 1/2': '', '1 ft -3 in': '', '4 ft in': '',
    '4 in 5': '', '4 mm 5': '', '4 m 5 cm': '', '4°': '', '4 deg': '', 'four': '', '1e1': '', '1_0': '', '0x8': '',
    '1,000': '', '٣': '', '８': '', '': '', ' ': '', '1/2/3': '', '4..5': '', '²': '',
}  # fmt: skip
"""What is refused everywhere as no length, with what was probably meant."""
BELOW_ZERO = ('-4', '−4', '–4 in', '-1/2')
SAME_PITCHES = {
    '7 1/2 in 12': (
        *(
            '7½',
            '7 ½',
            '7 1/2',
            '7-1/2',
            '7.5',
            '7½ in 12',
            '7 1/2 IN 12',
            '7½:12',
            '7.5 : 12',
            '7½/12',
            '7½ on 12',
        ),
        *('15 in 24', '15:24', '7.50', '7 1⁄2', '3¾ in 6'),
    ),
    '18 in 12': ('18', '18/12', '18:12', '3:2', '18 / 12'),
    '1/2 in 12': ('½ in 12', '½:12', '0.5', '.5', '½/12', '1/24 in 1'),
    '30 deg': ('30°', '30 °', '30 Deg', '30 DEG.', '30 degrees', '30.0 Degree'),
    '22 1/2 deg': ('22½°', '22½ deg', '22.5°', '22-1/2 degrees'),
    **{f'3 {plain} in 12': (f'3{sign}', f'3{sign}:12') for sign, plain in VULGAR.items()},
}
NO_PITCHES = {
    '71/2': '7 1/2', '131/2': '13 1/2', '71/2 deg': '7 1/2 deg', '71/2:12': '7 1/2:12', '4½5': '4 1/2',
    '30° 5': '', '2°6': '', '26 deg 5': '', '6 12': '', '6 in': '', '6 in 12 in': '', '+6': '', '7 -1/2': '',
    '6 in -12': '', '6:0': '', 'six': '', '1e1': '', '': '', '1/0': '', "6'": '',
}  # fmt: skip
TWO_WAYS = ('1/2', '½', '6/10')
SAME_DEGREES = {
    '22.5': ('22½', '22 1/2', '22-1/2', '22½°', '22.5 deg', '22½ DEGREES', '22 ½ °', '22.50'),
    '30': ('30°', '30 deg.', '30.0', '30 Degree'),
    **{f'45 {plain}': (f'45{sign}', f'45{sign}°', f'45 {sign} deg') for sign, plain in VULGAR.items()},
}
NO_DEGREES = {
    '221/2': '22 1/2', '221/2°': '22 1/2°', '45/2 deg': '22 1/2 deg', '30°5': '', '° 30': '', '-30': '', '30:12': '',
    '0': '', '180': '', 'thirty': '', '': '',
}  # fmt: skip


TYPED = {
    name
    for name in (*LENGTHS, *PITCHES, *DEGREES)
    if name.partition(' ')[0] in ('pitch', 'diagonal', 'brace', 'data', 'check')
}
"""Entries of the command line, each of which costs a parser."""


def answered(entry: Entry, spelling: str) -> str:
    """Return what an entry answers or refuses, without the spelling itself in it."""
    try:
        return entry(spelling)
    except Refused as refused:
        return str(refused).replace(f"'{spelling}'", 'IT')


def some_of(entry, listed):
    """Return what is read and its spellings: all in files, every third on the command line, and every sixth for find,
    which works out a whole roof for each; there of the fractions that are one sign as few too."""
    step = 6 if entry.startswith('find') else 3 if entry in TYPED else 1
    signs = [plain for plain in listed if plain.startswith(('3 ', '45 '))]
    return [
        (plain, spellings[::step])
        for plain, spellings in listed.items()
        if plain not in signs or signs.index(plain) % step == 0
    ]


@pytest.mark.parametrize(
    ('entry', 'read', 'listed'),
    [
        pytest.param(entry, read, listed, id=f'{entry} {what}')
        for what, entries, listed in (
            ('lengths', LENGTHS, SAME_LENGTHS),
            ('pitches', PITCHES, SAME_PITCHES),
            ('degrees', DEGREES, SAME_DEGREES),
        )
        for entry, read in entries.items()
    ],
)
def test_what_is_meant_is_one_however_it_is_written(entry, read, listed):
    for plain, spellings in some_of(entry, listed):
        expected = read(plain)
        assert {written: answered(read, written) for written in spellings} == dict.fromkeys(
            spellings, expected
        )


@pytest.mark.parametrize(
    ('entry', 'refused', 'said'),
    [
        *((entry, NO_LENGTHS, 'is no length') for entry in LENGTHS.items()),
        *((entry, NO_PITCHES, 'is no pitch') for entry in PITCHES.items()),
        *((entry, NO_DEGREES, 'is no such angle') for entry in DEGREES.items()),
        *((entry, dict.fromkeys(BELOW_ZERO, ''), 'is below zero') for entry in LENGTHS.items()),
        *((entry, dict.fromkeys(BELOW_ZERO[:2], ''), 'is below zero') for entry in PITCHES.items()),
        *(
            (entry, dict.fromkeys(TWO_WAYS, ''), 'can be read in more than one way')
            for entry in PITCHES.items()
        ),
    ],
    ids=lambda value: value if isinstance(value, str) else value[0] if isinstance(value, tuple) else '',
)
def test_what_is_refused_is_refused_everywhere_with_what_was_meant(entry, refused, said):
    name, ask = entry
    for written, meant in refused.items():
        if name in EMPTY_IS_SILENT and not written.strip():
            continue
        told = answered(ask, written)
        assert f'IT {said}' in told.replace(f"'{written.replace('-', '−', 1)}'", 'IT'), (name, written, told)
        assert ('did you mean' in told) == bool(meant), (name, written, told)
        assert not meant or f'did you mean {meant}?' in told, (name, written, told)
