"""Settings of the complete edition: what a test means that looks at its tables, or at its worked examples."""

from __future__ import annotations

from functools import cache

from layouts.pages.book import Plan, plan
from tablegen.settings import EDITIONS, Settings, read_settings

COMPLETE = 'edition = "complete"\n'


def complete(**changes) -> Settings:
    """Return the complete edition's settings, some of them changed."""
    return Settings(**{'parts': EDITIONS['complete'], **changes})


@cache
def complete_plan() -> Plan:
    """Return the plan of the complete edition, made once."""
    return plan(complete())


def read_complete(written: str = '') -> Settings:
    """Return the settings of a file that names the complete edition; a list of parts in it still goes over that."""
    return read_settings(COMPLETE + written, '')
