"""Cases shared by the tests of the roof's geometry."""

from fractions import Fraction

import corners
import pytest


def pytest_generate_tests(metafunc):
    if 'case' in metafunc.fixturenames:
        metafunc.parametrize('case', corners.CORNERS, ids=corners.NAMES)
    if 'thickness' in metafunc.fixturenames:
        metafunc.parametrize('thickness', corners.THICKNESSES, ids=str)


@pytest.fixture(scope='session')
def run():
    """A run of plane A that is no round number of anything, in."""
    return Fraction(1591, 16)
