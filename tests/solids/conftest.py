"""Assemblies made once a session, from the pages of the skewed book."""

from functools import cache

import pytest
from assembly import Built
from every_assembly import ASSEMBLIES
from reading import Pages, Reading


@pytest.fixture(scope='session')
def pages(skewed):
    """Return the pages of a pitch."""
    return cache(lambda pitch: Pages(skewed, pitch))


@pytest.fixture(scope='session')
def built(pages):
    """Return an assembly by its name, at a pitch."""
    return cache(lambda name, pitch: Built(ASSEMBLIES[name], Reading(pages(pitch))))
