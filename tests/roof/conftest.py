"""Cases shared by the tests of the roof's geometry."""

from fractions import Fraction

import corners
import pytest

TOGETHER = 12
"""Corners that a test is run over in one go: each run by itself costs the runner as much as the test does."""


class Some(dict):
    """Corners by their names, each of which a test is run over."""


def pytest_generate_tests(metafunc):
    if 'case' in metafunc.fixturenames:
        named = list(zip(corners.NAMES, corners.CORNERS, strict=True))
        some = [Some(named[at : at + TOGETHER]) for at in range(0, len(named), TOGETHER)]
        metafunc.parametrize('case', some, ids=[f'{next(iter(one))} and on' for one in some])
    if 'thickness' in metafunc.fixturenames:
        metafunc.parametrize('thickness', corners.THICKNESSES, ids=str)


@pytest.hookimpl(tryfirst=True)
def pytest_pyfunc_call(pyfuncitem):
    """Run a test over each of its corners; all that fail are told together, by name."""
    given = {name: pyfuncitem.funcargs[name] for name in pyfuncitem._fixtureinfo.argnames}
    if not isinstance(given.get('case'), Some):
        return None
    wrong = []
    for name, case in given['case'].items():
        try:
            pyfuncitem.obj(**{**given, 'case': case})
        except AssertionError as fault:
            wrong.append(f'{name}: {fault}')
    assert wrong == []
    return True


@pytest.fixture(scope='session')
def run():
    """A run of plane A that is no round number of anything, in."""
    return Fraction(1591, 16)
