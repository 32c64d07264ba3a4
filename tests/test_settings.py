"""Settings: the starter file says the defaults, every fault is told at once, every message is pinned."""

import tomllib
from fractions import Fraction

import pytest
from hypothesis import given
from msgspec.structs import replace
from refused import refused
from strategies import parts, styles

from layouts.words.error import error_lines
from layouts.words.starter import starter
from tablegen import settings as module
from tablegen.errors import BookError, SettingsFaults
from tablegen.numbers.figure import Measure
from tablegen.settings import Runs, Settings, read_settings
from tablegen.written.keys import smallest_part

LENGTH = 'a length such as 4 ft, 4\' 7 1/2", 55.5 in, 55 1/2 (inches), 1.4 m or 1400 mm'
NO_PART = 'is not a part of an inch that a tape shows; allowed: 1/2, 1/4, 1/8, 1/16, 1/32, 1/64'
LIST = 'a list in square brackets with at least one item'
KEYS = (
    'title, owner, language, lengths, smallest_part, steep, pitches, runs.from, runs.to, runs.by, jacks.spacings, '
    'stock.ridge, stock.hip, stock.rafter, stock.rafters, stock.hips, stock.valleys, stock.seat, paper, trim, edition, parts, '
    'roofs'
)
BOOK_PARTS = (
    'how-to, words, square, glance, opening, values, jacks, common, hip-valley, rise, set-out, ridge, seat, tail, hips, '
    'jack-deductions, cheeks, trim, gable, unequal, many-sided, find-pitch, examples'
)
PITCH = 'a pitch such as 6, 6/12, 6 in 12, 6:12, 7.5, 7 1/2 or 26.565 deg, above 0 and up to 24 in 12'
SAY_SO = 'if it is meant, say so: steep = true in the settings, --steep on the command line'

SIZES = '2×4, 2×6, 2×8, 2×10, 2×12'


def told(written: str) -> list[str]:
    """Return the lines that a faulty file gets, less the file's name that begins each."""
    with pytest.raises(BookError) as caught:
        read_settings(written, 'b.toml')
    lines = error_lines(caught.value)
    assert all(line.startswith('b.toml: ') for line in lines)
    return [line.removeprefix('b.toml: ') for line in lines]


def test_the_starter_file_says_the_defaults():
    assert read_settings(starter(), '') == Settings()


def test_the_starter_file_names_every_key():
    tables = tomllib.loads(starter())
    named = [name for name in tables if not isinstance(tables[name], dict)]
    named += [
        f'{table}.{key}' for table in tables if isinstance(tables[table], dict) for key in tables[table]
    ]

    assert sorted([*named, 'parts', 'roofs']) == sorted(module.READERS)


def test_an_empty_file_gives_the_defaults():
    assert read_settings('', '') == Settings()
    assert read_settings('# nothing', 'b.toml') == replace(Settings(), source='b.toml')


def test_the_defaults():
    """As the book is sold: 24 pitches, an inch to 24 ft by the inch, sixteenths, letter, pocket."""
    book = Settings()

    assert [pitch.rise_in for pitch in book.pitches] == list(range(1, 25))
    assert list(book.runs) == list(range(1, 289))
    assert book.measure == Measure(16, 'inches')
    assert book.spacings == (12, 16, Fraction('19.2'), 24)
    assert (book.ridge_thickness, book.hip_thickness, book.rafter_thickness) == (Fraction(3, 2),) * 3
    assert (book.rafters.name, book.hips.name, book.valleys.name, book.seat) == (
        *('2×8',) * 3,
        Fraction(7, 2),
    )
    assert (book.paper, book.trim) == ('letter', 'pocket')


def test_hips_and_valleys_are_of_the_rafters_size_unless_the_file_says_more():
    book = read_settings('stock = {rafters = "2x10", hips = "2×12"}', '')

    assert (book.rafters.name, book.hips.name, book.valleys.name) == ('2×10', '2×12', '2×10')


def test_every_key_is_read():
    book = read_settings(
        """
        title = "Barn"
        owner = "The store"
        language = "pt_BR"
        lengths = "feet-inches"
        smallest_part = "1/8"
        steep = true
        pitches = ["30 deg", 36, "6/12"]
        paper = "a4"
        trim = "large"
        parts = ["rise", "glance"]
        [runs]
        from = "1 ft"
        to = "3.6 m"
        by = 0.5
        [jacks]
        spacings = ["600 mm", 16]
        [stock]
        ridge = "3/4"
        hip = 2
        rafter = "45 mm"
        """,
        'barn.toml',
    )

    assert (book.title, book.owner, book.source) == ('Barn', 'The store', 'barn.toml')
    assert book.language == 'pt_BR'
    assert book.measure == Measure(8, 'feet-inches')
    assert [pitch.text for pitch in book.pitches] == ['6 in 12', '30°', '36 in 12']
    assert (book.paper, book.trim, book.parts) == ('a4', 'large', ('glance', 'rise'))
    assert book.runs == Runs(Fraction(12), Fraction(18000, 127), Fraction(1, 2))
    assert book.spacings == (16, Fraction(3000, 127))
    assert (book.ridge_thickness, book.hip_thickness) == (Fraction(3, 4), 2)
    assert book.rafter_thickness == Fraction(225, 127)


def test_numbers_with_a_point_are_exact():
    assert read_settings('jacks.spacings = [19.2, 0.1, 0.30000000000000000001]', '').spacings == (
        Fraction(1, 10),
        Fraction('0.30000000000000000001'),
        Fraction(96, 5),
    )


@pytest.mark.parametrize('written', ['"1/32"', '"1/32 in"', '"1/32\\""', '0.03125', '" 1/32 "'])
def test_smallest_part(written):
    assert read_settings(f'smallest_part = {written}', 'b.toml').measure.per == 32


@given(parts(), styles())
def test_measures(per, style):
    book = read_settings(f'smallest_part = "1/{per}"\nlengths = "{style}"', 'b.toml')

    assert book.measure == Measure(per, style)


def test_runs_end_on_the_last_full_step():
    assert list(read_settings('[runs]\nfrom = 1\nto = 10.5\nby = 3', 'b.toml').runs) == [1, 4, 7, 10]
    assert list(read_settings('[runs]\nfrom = 5\nto = 5', 'b.toml').runs) == [5]


def test_runs_begin_with_their_step_where_nothing_else_is_said():
    assert list(read_settings('[runs]\nto = 2\nby = 0.5', 'b.toml').runs) == [
        Fraction(n, 2) for n in (1, 2, 3, 4)
    ]
    assert list(read_settings('[runs]\nto = 3', 'b.toml').runs) == [1, 2, 3]


@pytest.mark.parametrize(
    ('written', 'expected'),
    [
        ('titel = "x"', f'titel: unknown key; allowed: {KEYS}; next: did you mean title?'),
        ('runs.too = 4', f'runs.too: unknown key; allowed: {KEYS}; next: did you mean runs.to?'),
        ('runs = 4', f'runs: unknown key; allowed: {KEYS}; next: rafterbook settings prints every key'),
        (
            '[gutter]\na = 1',
            f'gutter: unknown key; allowed: {KEYS}; next: rafterbook settings prints every key',
        ),
        ('title = 7', 'title: 7 is no name; allowed: one line of up to 48 letters'),
        (r'owner = "a\nb"', r"owner: 'a\nb' is no name; allowed: one line of up to 48 letters"),
        (
            f'title = "{"a" * 49}"',
            f"title: '{'a' * 49}' is no name; allowed: one line of up to 48 letters",
        ),
        (
            'language = "German"',
            "language: 'German' is no language; allowed: its short name, such as 'en' or 'pt_BR'",
        ),
        ('lengths = "feet"', "lengths: 'feet' is unknown; allowed: inches, feet-inches"),
        ('paper = "A4"', "paper: 'A4' is unknown; allowed: letter, a4"),
        ('trim = []', 'trim: [] is unknown; allowed: pocket, large'),
        ('steep = 1', 'steep: 1 is neither; allowed: true, false'),
        ('parts = "glance"', f"parts: 'glance' is no list; allowed: {LIST}"),
        ('parts = []', f'parts: [] is no list; allowed: {LIST}'),
        ('parts = ["glance", "roof"]', f"parts[2]: 'roof' is unknown; allowed: {BOOK_PARTS}"),
        ('smallest_part = "1/10"', f"smallest_part: '1/10' {NO_PART}"),
        ('smallest_part = "0"', f"smallest_part: '0' {NO_PART}"),
        ('smallest_part = 16', f"smallest_part: '16' {NO_PART}"),
        ('smallest_part = true', f"smallest_part: 'True' {NO_PART}"),
        ('smallest_part = []', f"smallest_part: '[]' {NO_PART}"),
        ('pitches = [6, 30]', f"pitches[2]: '30' is over 24 in 12; allowed: {PITCH}; next: {SAY_SO}"),
        ('pitches = []', "pitches: no pitch is given; allowed: a list such as [4, 6, '7 1/2'] or '1 to 24'"),
        ('runs.to = "far"', f"runs.to: 'far' is no length; allowed: {LENGTH}"),
        ('runs.to = -1', f"runs.to: '-1' is below zero; allowed: {LENGTH}"),
        ('runs.by = 0', 'runs.by: a step of 0 gets nowhere; allowed: from 1/16 in up'),
        (
            'smallest_part = "1/8"\nruns.by = "1/16"',
            'runs.by: 1/16 in is below the smallest part; allowed: from 1/8 in up',
        ),
        ('runs.from = 0', 'runs.from: a run of 0 has no rafter; allowed: above 0'),
        (
            'runs.from = "10 ft"\nruns.to = "9 ft 6 in"',
            'runs.to: the runs go backwards, from 10 ft to 9 ft 6 in; allowed: 10 ft or more',
        ),
        (
            'runs.from = "1/16"\nruns.to = "600 ft"\nruns.by = "1/16"',
            'runs.by: 115,200 runs are too many; allowed: up to 100,000; next: take a longer step',
        ),
        ('jacks.spacings = 16', f'jacks.spacings: 16 is no list; allowed: {LIST}'),
        ('jacks.spacings = [0]', "jacks.spacings[1]: '0' is out of range; allowed: above 0 and up to 96 in"),
        (
            'jacks.spacings = ["16", "9 ft"]',
            "jacks.spacings[2]: '9 ft' is out of range; allowed: above 0 and up to 96 in",
        ),
        ('jacks.spacings = [1, 2, 3, 4, 5]', 'jacks.spacings: 5 spacings are too many; allowed: up to 4'),
        ('stock.hip = "0 in"', "stock.hip: '0 in' is out of range; allowed: above 0 and up to 12 in"),
        ('stock.ridge = "13 in"', "stock.ridge: '13 in' is out of range; allowed: above 0 and up to 12 in"),
        ('stock.rafter = true', f'stock.rafter: True is no length; allowed: {LENGTH}'),
        ('stock.rafters = "2x7"', f"stock.rafters: '2x7' is no size of rafter stock; allowed: {SIZES}"),
        ('stock.hips = 8', f"stock.hips: '8' is no size of rafter stock; allowed: {SIZES}"),
        ('stock.seat = "13 in"', "stock.seat: '13 in' is out of range; allowed: above 0 and up to 12 in"),
    ],
)
def test_one_fault(written, expected):
    assert told(written) == [expected]


def test_all_faults_are_told_at_once():
    """In the order in which the keys are read, unknown ones last; items of a list each by its place."""
    lines = told(
        """
        color = "red"
        trim = "huge"
        pitches = [0, 6, "many"]
        [runs]
        by = "no"
        from = 0
        [stock]
        ridge = 99
        """
    )

    assert [line.split('; ')[0] for line in lines] == [
        "pitches[1]: '0' is flat: a rafter needs a rise",
        "pitches[3]: 'many' is no pitch",
        "runs.by: 'no' is no length",
        "stock.ridge: '99' is out of range",
        "trim: 'huge' is unknown",
        'color: unknown key',
    ]


def test_faults_of_the_runs_as_a_whole_are_told_together():
    assert [line.split(';')[0] for line in told('[runs]\nfrom = 0\nto = 0\nby = 0')] == [
        'runs.by: a step of 0 gets nowhere',
        'runs.from: a run of 0 has no rafter',
    ]


@pytest.mark.parametrize(
    ('written', 'place'),
    [
        ('title = "x"\npaper = letter', 'at line 2, column 9'),
        ('title "x"', 'at line 1, column 7'),
        ('steep = true\nsteep = true\n', 'at line 2, column 13'),
        ('[runs', 'at end of document'),
    ],
)
def test_unreadable_toml_names_line_and_column(written, place):
    """What is wrong there is told in the words of the standard library, which may change."""
    (line,) = told(written)

    assert line.startswith('cannot be read as TOML: ')
    assert line.endswith(f' ({place}); next: mend that place')


@pytest.mark.parametrize('written', ['nan', 'inf', '1e999999999', '1e-999999999', '9' * 41, f'0.{"1" * 41}'])
def test_a_number_out_of_all_measure_is_refused(written):
    (line,) = told(f'[runs]\nto = {written}')

    assert line.startswith('cannot be read as TOML: ')
    assert 'measures' in line


def test_faults_are_book_errors_one_line_each():
    with pytest.raises(SettingsFaults) as caught:
        read_settings('a = 1\nb = 2', 'b.toml')

    assert [fault.place for fault in caught.value.each()] == ['a', 'b']
    assert [line.count('\n') for line in error_lines(caught.value)] == [0, 0]


def test_settings_are_frozen():
    with pytest.raises(AttributeError):
        Settings().title = 'x'


def test_smallest_part_of_a_command_line():
    with refused(r"^--nearest: '1/3' is not a part of an inch that a tape shows"):
        smallest_part('1/3', '--nearest')
