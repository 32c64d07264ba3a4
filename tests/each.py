"""A test over many things alike that is one test: each of them costs the runner as much as a test of its own."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from functools import wraps

import pytest


def over_each(things: Iterable[object]) -> Callable[[Callable[[object], None]], Callable[[], None]]:
    """Run a test over every one of some things; all that fail are told together, each with what it is."""
    listed = list(things)
    assert listed, 'there is nothing to test'

    def made(test: Callable[[object], None]) -> Callable[[], None]:
        @wraps(test)
        def run() -> None:
            wrong = []
            for thing in listed:
                try:
                    test(thing)
                except AssertionError as fault:
                    wrong.append(f'{thing}: {fault}')
            assert not wrong, '\n'.join(wrong)

        del run.__wrapped__  # else the runner asks for the argument of the test itself
        return run

    return made


def some(things: Sequence[object], each: int = 2) -> list[object]:
    """Return parameters of which the suite tries the first of every few, and `-m thorough` the others."""
    return [
        thing if place % each == 0 else pytest.param(*packed(thing), marks=pytest.mark.thorough)
        for place, thing in enumerate(things)
    ]


def packed(thing: object) -> tuple[object, ...]:
    """Return what one parameter consists of."""
    return thing if isinstance(thing, tuple) else (thing,)
