"""The model of planes and vectors against published and hand-worked numbers, and the reader against pages it must refuse."""

import subprocess
import sys
from fractions import Fraction
from pathlib import Path

import pytest
from headed import NotTold, Part, Table, reference_part
from oracle import cuts, framing_square, seats, setting_out, shortening, trim, unequal
from oracle.corner import common_length, corner, hip_length, jack_difference, many_sided
from oracle.rounding import decimal, degrees, limit, part
from printed_words import Word

HERE = Path(__file__).parent
EIGHT = corner(Fraction(8))
DEPTH, SEAT, HIP = Fraction(29, 4), Fraction(7, 2), Fraction(3, 2)


def test_the_model_knows_nothing_of_the_code_under_test():
    """In a process of its own: importing all of the model brings in nothing of the book."""
    names = [f'oracle.{path.stem}' for path in sorted(HERE.glob('oracle/[a-z]*.py'))]
    code = f'import sys, {", ".join(names)}; print([n for n in sys.modules if n.startswith(("tablegen", "layouts"))])'
    done = subprocess.run([sys.executable, '-c', code], cwd=HERE, capture_output=True, text=True, check=True)

    assert len(names) > 8
    assert done.stdout == '[]\n'


@pytest.mark.parametrize(
    ('ours', 'printed'),
    [
        (common_length(EIGHT, 12), '14.422'),  # √(12² + 8²)
        (hip_length(EIGHT, 12), '18.762'),  # √(288 + 8²)
        (jack_difference(EIGHT, 16), '19.230'),  # 16 · √208 / 12
        (framing_square.figure_against_12(cuts.jack_cheek(EIGHT)), '9.985'),  # 144 / √208
        (framing_square.figure_against_12(cuts.hip_cheek(EIGHT)), '10.854'),  # 12 √(288/352)
        (shortening.hip_at_ridge(EIGHT, HIP)[0], '1.061'),  # 1.5 / √2
        (unequal.side(many_sided(Fraction(8), 6), 12), '13.856'),  # 24 tan 30
    ],
)
def test_hand_worked(ours, printed):
    """Each by the formula beside it, worked on paper."""
    assert decimal(ours, 3) == printed


def test_hand_worked_seats():
    """8 in 12, a 2×8 on 3 1/2 in, 1 1/2 in hip: √(144 + 64)/12 · 7.25 − 3.5 · 8/12 over the plate, and what follows."""
    height = seats.height_above_plate(EIGHT, DEPTH, SEAT)

    assert decimal(height, 9) == '6.380082249'
    assert decimal(seats.hip_height(EIGHT, height, HIP), 9) == '6.026528858'
    assert decimal(seats.valley_heel(EIGHT, height, DEPTH, HIP), 9) == '1.988647718'
    assert decimal(seats.valley_seat(EIGHT, height, DEPTH, HIP), 9) == '4.218558861'


def test_known_angles():
    """12 in 12: backing 30, and a board lying in the plane is mitered atan(cos 45) = 35.26."""
    twelve = corner(Fraction(12))

    assert degrees(cuts.backing(twelve)) == '30.00°'
    assert degrees(cuts.plumb_cut(twelve)) == '45.00°'
    assert degrees(trim.miter(twelve, trim.lying(twelve))) == '35.26°'


def test_whole_triangles():
    """Euclid's, up to 29."""
    assert set(setting_out.whole_triangles(29)) == {
        (3, 4, 5), (5, 12, 13), (8, 15, 17), (7, 24, 25), (20, 21, 29),
    }  # fmt: skip


def test_a_half_goes_up_and_a_limit_down():
    assert (part(Fraction(1, 32)), part(Fraction(-1, 32)), part(Fraction(-3, 32))) == ('1/16', '0', '−1/16')
    assert (limit(Fraction(63, 32)), limit(2)) == ('1 15/16', '2')


# The reader ----------------------------------------------------------------------------------------------------


def words(*placed: tuple[str, float, float, float]) -> list[list[Word]]:
    """Return lines of words, each given by its text, left edge, base and size, a millimetre a letter."""
    found: dict[float, list[Word]] = {}
    for text, left, base, size in placed:
        found.setdefault(base, []).append(Word(text, left, base - 2, left + len(text), base, size, base))
    return list(found.values())


ROWS = (('5', 10, 30, 2.9), ('1', 20, 30, 2.9), ('1/2', 22, 30, 2.5), ('3', 40, 30, 2.9))


def read(*placed, corner='in', span='') -> Part:
    return reference_part(1, 'Trial', words(*placed), corner, span, 3.53)


def test_heads_of_two_lines_and_fractions_are_joined():
    heads = (('at', 20, 24, 2.68), ('in', 10, 27.2, 2.68), ('ridge', 20, 27.2, 2.68), ('hip', 40, 27.2, 2.68))
    table = read(*heads, *ROWS)

    assert table.heads == ('at ridge', 'hip')
    assert (table.cell('at ridge', '5'), table.cell('hip', '5')) == ('1 1/2', '3')


def test_words_over_several_heads_must_be_those_that_were_asked_for():
    placed = (
        ('thick', 20, 24, 2.68),
        ('in', 10, 27.2, 2.68),
        ('1', 20, 27.2, 2.68),
        ('2', 40, 27.2, 2.68),
        *ROWS,
    )

    assert read(*placed, span='thick').heads == ('1', '2')
    with pytest.raises(NotTold, match='"thick" stands over the heads, not "deep"'):
        read(*placed, span='deep')


def test_what_is_told_twice_or_not_at_all_is_refused():
    placed = (('in', 10, 27.2, 2.68), ('on', 20, 27.2, 2.68), ('on', 40, 27.2, 2.68), *ROWS)
    table = read(*placed)

    with pytest.raises(NotTold, match='page 1, "Trial": columns 1, 2 are all "on"'):
        table.cell('on', '5')
    with pytest.raises(NotTold, match='no column "off"'):
        table.cell('off', '5')
    with pytest.raises(NotTold, match='stands on pages'):
        Table((table,)).cell('on', '6')
    with pytest.raises(NotTold, match='no "ft" at the head of the labels'):
        read(*placed, corner='ft')
