"""Findings of a shed: what comes off at a wall or a ledger, and what is not there."""

from fractions import Fraction

import pytest
from fifty_digits import mp, mpf
from msgspec.structs import replace

from layouts.told.objects import as_data
from tablegen.roof.answer import answer
from tablegen.roof.names import Against
from tablegen.roof.question import RoofQuestion, Shed
from tablegen.written.pitches import pitch

RISE, RUN, LEDGER = mpf('4.5'), mpf(100), Fraction(7, 4)
ASK = RoofQuestion(pitch('4 1/2'), Fraction(100))
NEAR = mpf('0.51e-9')


def found(against, run_to='wall', ledger=LEDGER):
    shed = Shed(Against(against), ledger if against == 'ledger' else Fraction(0), Against(run_to))
    return as_data(answer(replace(ASK, roof=shed)))


def near(told, model):
    return abs(mpf(told) - model) <= NEAR


@pytest.mark.parametrize(
    ('against', 'run_to', 'off'),
    [('wall', 'wall', mpf(0)), ('ledger', 'wall', mpf('1.75')), ('ledger', 'ledger', mpf(0))],
)
def test_the_whole_ledger_comes_off_a_run_to_the_wall_and_nothing_else_ever(against, run_to, off):
    """A rafter in the plane y = run − off: its top edge from the plate line, and how high it is there."""
    told = found(against, run_to)
    slope = RISE / 12
    stretch = mp.sqrt(1 + slope**2)
    height = mpf('7.25') * stretch - mpf('3.5') * slope

    assert near(told['shed']['off']['level']['inches'], off)
    assert near(told['shed']['off']['along']['inches'], off * stretch)
    assert near(told['shed']['sawn']['inches'], (RUN - off) * stretch)
    assert near(told['shed']['top_at_upper_end']['inches'], height + (RUN - off) * slope)
    assert near(told['length']['rafter']['inches'], RUN * stretch)
    assert near(told['length']['rise']['inches'], RUN * slope)


def test_it_has_no_ridge_hip_valley_or_jack():
    for against in ('wall', 'ledger'):
        told = found(against)
        assert set(told) == {
            'length',
            'cut',
            'square',
            'shed',
            'seat',
            'tail',
            'gable_stud',
            'area',
            'caution',
        }
        assert not [
            word for word in ('ridge_', 'hip_', 'valley', 'jack_', 'common') if word in str(_keys(told))
        ]


def _keys(told):
    found = list(told)
    return found + [key for value in told.values() if isinstance(value, dict) for key in _keys(value)]


def test_it_says_what_it_stands_against():
    assert (found('wall')['shed']['against'], found('ledger')['shed']['against']) == ('wall', 'ledger')
    assert found('ledger')['shed']['ledger_thickness']['inches'] == '1.750000000'
    assert 'ledger_thickness' not in found('wall')['shed']
    assert "the ledger's face" in found('ledger', 'ledger')['length']['from']
    assert "the wall's face" in found('ledger')['length']['from']
