"""Roof files: what each key says, what a kind has no use for or cannot be without, and sizes that do not go together."""

from __future__ import annotations

from fractions import Fraction

import pytest
from roof_files import HOUSE, LEAVE, SEE_KEYS, SMALLEST, roof, told, told_of

from tablegen.frame import asked as records
from tablegen.frame.asked import Asked
from tablegen.frame.roof_file import read_roof
from tablegen.frame.roof_keys import FIELDS, KEYS, KINDS, MEASURE, RIDGE, readers


@pytest.mark.parametrize('kind', KINDS)
def test_a_kind_needs_no_more_than_it_must_and_has_what_is_usual(kind):
    found = roof(kind)
    usual = Asked(
        name='', kind=found.kind, pitch=found.pitch, width_in=found.width_in, length_in=found.length_in
    )

    assert found == usual
    assert type(found.kind) is KINDS[kind].record


@pytest.mark.parametrize('kind', KINDS)
def test_a_kind_names_each_key_that_it_cannot_be_without(kind):
    """Each line of the smallest file is left out in turn, and missed."""
    lines = [line for line in SMALLEST[kind].splitlines() if not line.startswith(kind)]
    for left_out in lines:
        rest = '\n'.join(line for line in SMALLEST[kind].splitlines() if line != left_out)
        key = left_out.partition(' ')[0]

        assert told(f'kind = "{kind}"\n{rest}') == [f'{key}: is missing: a {kind} roof needs it; {SEE_KEYS}']


def test_every_field_of_the_question_has_a_key_and_every_key_a_reader():
    """A kind, a ridge and a measure are made of keys of their own; what units count by is no question."""
    assert {*FIELDS.values(), 'kind', 'ridge', 'measure'} == set(Asked.__struct_fields__)
    assert set(RIDGE.values()) == set(records.RidgeBoard.__struct_fields__)
    assert {*MEASURE.values(), 'units'} == set(
        Asked(name='', kind=records.Gable(), pitch=roof('gable').pitch).measure.__struct_fields__
    )
    for kind in KINDS.values():
        assert set(kind.keys.values()) == set(kind.record.__struct_fields__)
    assert {*readers(False), 'steep'} == set(KEYS)
    assert len(set(KEYS)) == len(KEYS)


def test_every_key_says_what_it_is_called():
    found = roof(
        'wing',
        """name = "Garden store"
spacing = "24 in"
first = "0.75 in"
smallest_part = "1/8"
lengths = "feet-inches"
[ridge]
thickness = "3/4"
depth = "7 1/4 in"
top = "beveled"
[stock]
rafters = "2x10"
valleys = "2x12"
seat = "3 in"
[overhang]
eave = "1 ft 4 3/4 in"
fascia = "3/4 in"
measured_to = "fascia"
gable = "8 in"
[buy]
lengths = ["16 ft", "8 ft", "16 ft"]
kerf = "3/32"
allowance = "12.5 %"
""",
    )  # fmt: skip

    assert (found.name, found.spacing_in, found.first_in) == ('Garden store', 24, Fraction(3, 4))
    assert (found.measure.per, found.measure.style) == (8, 'feet-inches')
    assert found.ridge == records.RidgeBoard(Fraction(3, 4), Fraction(29, 4), records.RidgeTop.BEVELED)
    assert [one.name for one in (found.rafters, found.hips, found.valleys)] == ['2×10', '2×10', '2×12']
    assert (found.seat_in, found.overhang_in, found.fascia_in, found.gable_overhang_in) == (
        3,
        16,
        Fraction(3, 4),
        8,
    )
    assert (found.lengths_in, found.kerf_in, found.sheathing_allowance) == (
        (96, 192),
        Fraction(3, 32),
        Fraction(1, 8),
    )


@pytest.mark.parametrize(
    ('kind', 'more', 'expected'),
    [
        ('shed', 'shed = {upper = "over-beam", thickness = "3 1/2"}', records.Shed(records.Upper.BEAM_OVER, Fraction(7, 2))),
        ('hip', 'hip = {ends = 1}', records.Hip(1)),
        ('many-sided', 'many-sided.post = "6 in"', records.ManySided(8, Fraction(60), None, Fraction(6))),
        ('bay', 'bay.wall_through = "middles"', records.Bay(8, None, Fraction(108), 'middles')),
    ],
)  # fmt: skip
def test_a_kind_s_own_keys(kind, more, expected):
    table = more.partition(' ')[0]
    own = (
        SMALLEST[kind].replace('}', f', {more.partition(".")[2]}}}')
        if '.' in table
        else f'{SMALLEST[kind]}{more}'
    )

    assert read_roof(f'kind = "{kind}"\n{own}', '').kind == expected


def test_hips_and_a_wing_are_read_with_their_pitches():
    hip = roof(
        'hip',
        'hip = {end_pitch = 9, eaves = "equal"}\ncuts = {hips = "backed", hip_heads = "between-commons", tails = "square"}',
    )
    wing = read_roof(
        'kind = "wing"\n' + HOUSE + 'wing = {main_ends = 2, width = 100, out = 50, from_left = 0, pitch = 9, end = "hip", valleys = "blind"}', ''
    )  # fmt: skip

    assert (hip.kind.end.rise_in, hip.kind.eaves) == (9, records.Eaves.EQUAL)
    assert (hip.hip_top, hip.hip_head, hip.tail) == (
        records.HipTop.BACKED, records.HipHead.BETWEEN, records.TailCut.SQUARE,
    )  # fmt: skip
    assert (wing.kind.main_ends, wing.kind.hipped, wing.kind.valleys) == (2, True, records.Valleys.BLIND)
    assert (wing.kind.width_in, wing.kind.out_in, wing.kind.from_left_in, wing.kind.pitch.rise_in) == (
        100,
        50,
        0,
        9,
    )


def test_no_ridge_board_is_asked_for_by_name():
    assert roof('gable', 'ridge.board = false').ridge is None


def test_a_ledger_is_as_thick_as_lumber_where_none_says_so():
    """Source: PS 20: lumber of nominal 2 in is 1 1/2 in thick, dressed. A beam that rafters run over has no usual size."""
    assert roof('shed', 'shed.upper = "ledger"').kind.thickness_in == Fraction(3, 2)
    assert roof('shed', 'shed = {upper = "ledger", thickness = "3/4"}').kind.thickness_in == Fraction(3, 4)
    assert roof('shed', 'shed.upper = "against-beam"').kind.thickness_in == 0
    assert told_of('shed', 'shed.upper = "over-beam"') == [
        f'shed.thickness: is missing: a shed roof needs it; {SEE_KEYS}'
    ]


def test_gables_stand_out_as_far_as_a_flush_wing_s_eaves_where_none_says_how_far():
    """Source: eaves of one height: those of 9 in 12 are 12 · 7/9 = 9 1/3 in out where those of 7 are 12, up to the next sixteenth."""
    flush = {'wing.from_left': 0, 'wing.pitch': 9}
    assert roof('wing', **flush).gable_overhang_in == Fraction(9 * 16 + 6, 16)
    assert roof('wing', **flush, **{'wing.main_ends': 1}).gable_overhang_in == 0
    assert roof('wing', **flush, **{'overhang.gable': 10}).gable_overhang_in == 10
    assert roof('wing').gable_overhang_in == 0


def test_what_stands_over_a_file_is_read_in_its_place():
    assert roof('gable', **{'pitch': '9', 'stock.seat': '5 in'}).pitch.rise_in == 9
    assert told('kind = "gable"\n' + HOUSE, width='0') == [
        "width: '0' is out of range; allowed: above 0 and up to 3600 in"
    ]


@pytest.mark.parametrize(
    ('kind', 'more', 'keys'),
    [
        ('shed', 'ridge.board = true\nstock = {hips = "2x8", valleys = "2x8"}\ncuts = {hips = "backed", hip_heads = "single"}',
         'ridge.board stock.hips stock.valleys cuts.hips cuts.hip_heads'),
        ('shed', 'shed.thickness = "1 1/2"', 'shed.thickness'),
        ('gable', 'hip.ends = 1\nwing.end = "hip"\nstock.hips = "2x8"', 'hip.ends wing.end stock.hips'),
        ('gable', 'ridge = {board = false, depth = 9}', 'ridge.depth'),
        ('hip', 'overhang.gable = 8\nstock.valleys = "2x8"', 'overhang.gable stock.valleys'),
        ('hip', 'hip.eaves = "equal"', 'hip.eaves'),
        ('wing', 'stock.hips = "2x8"', 'stock.hips'),
        ('many-sided', 'width = 100\nlength = 100\ncuts.hip_heads = "single"\nridge.top = "flush"',
         'width length cuts.hip_heads ridge.top'),
        ('bay', 'overhang.gable = 8', 'overhang.gable'),
    ],
)  # fmt: skip
def test_a_key_that_says_nothing_of_a_roof_is_refused(kind, more, keys):
    assert told_of(kind, more) == [
        f'{key}: nothing on this {kind} roof uses it; {LEAVE}' for key in keys.split()
    ]


@pytest.mark.parametrize(
    ('kind', 'more'),
    [
        ('hip', 'hip.ends = 1\noverhang.gable = 8'),
        ('wing', 'wing.end = "hip"\nstock.hips = "2x8"\noverhang.gable = 8'),
        ('half-hip', 'overhang.gable = 8\nstock.hips = "2x8"\ncuts.hip_heads = "single"'),
    ],
)
def test_a_key_is_of_use_where_a_roof_has_such_members(kind, more):
    first, *rest = more.splitlines()
    own = SMALLEST[kind]
    if first.startswith('wing'):
        own = own.replace('}', f', {first.partition(".")[2]}}}')
    else:
        rest = [first, *rest]

    assert read_roof('\n'.join([f'kind = "{kind}"', own, *rest]), '')


def test_all_faults_of_a_file_are_told_together():
    assert told('kind = "hip"\npitch = 0\nwidth = "-4"\nlenght = "9 ft"\neave = 8\nhips = "2x8"\nhip.ends = 3\nhip.length = 9\nzebra = 1') == [
        'pitch: \'0\' is flat: a rafter needs a rise; allowed: a pitch such as 6, 6/12, 6 in 12, 6:12, 7.5, 7 1/2 or 26.565 deg, above 0 and up to 24 in 12',
        "width: '-4' is below zero; allowed: a length such as 4 ft, 4' 7 1/2\", 55.5 in, 55 1/2 (inches), 1.4 m or 1400 mm",
        'lenght: unknown key; next: did you mean length?',
        'eave: unknown key; allowed: overhang.eave; next: did you mean overhang.eave?',
        f'hips: unknown key; allowed: stock.hips, cuts.hips; {SEE_KEYS}',
        "hip.ends: '3' is out of range; allowed: 1 to 2",
        f'hip.length: unknown key; allowed: hip.ends, hip.end_pitch, hip.eaves; {SEE_KEYS}',
        f'zebra: unknown key; {SEE_KEYS}',
        f'length: is missing: a hip roof needs it; {SEE_KEYS}',
    ]  # fmt: skip


KINDS_SAID = 'shed, gable, saltbox, gambrel, hip, half-hip, wing, many-sided, bay'


@pytest.mark.parametrize(
    ('written', 'line'),
    [
        ('', f'kind: is missing: what kind of roof it is; allowed: {KINDS_SAID}'),
        ('kind = "hiped"', f"kind: 'hiped' is unknown; allowed: {KINDS_SAID}"),
        ('kind = 7', f'kind: 7 is unknown; allowed: {KINDS_SAID}'),
        ('kind = "bay"\npitch = 6\nbay = {sides = 7, side = 40}', 'bay.sides: 7 sides have no two halves alike; allowed: 6, 8, 10 or 12'),
        ('kind = "bay"\npitch = 6\nbay = {sides = 4, side = 40}', "bay.sides: '4' is out of range; allowed: 6, 8, 10 or 12"),
        ('kind = "many-sided"\npitch = 6\nmany-sided = {sides = 4, side = 40}', "many-sided.sides: '4' is out of range; allowed: 5 to 12"),
        ('kind = "many-sided"\npitch = 6\nmany-sided = {sides = 8, side = 40, across_flats = 90}',
         'many-sided.side, many-sided.across_flats: a regular roof is given by one of its two sizes; next: give one of the two'),
        ('kind = "bay"\npitch = 6\nbay.sides = 8', 'bay.side, bay.across_flats: a regular roof is given by one of its two sizes; next: give one of the two'),
    ],
)  # fmt: skip
def test_a_kind_that_is_none_and_sides_that_make_none(written, line):
    assert told(written) == [line]
