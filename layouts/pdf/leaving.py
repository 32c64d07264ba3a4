"""Leaving: what has to be cleared up when work ends, also where a signal ends this process in the midst of it."""

from __future__ import annotations

import os
import signal
import threading
from collections.abc import Callable, Iterator
from contextlib import contextmanager, suppress
from types import FrameType

STOPS = [getattr(signal, name) for name in ('SIGINT', 'SIGTERM', 'SIGHUP') if hasattr(signal, name)]
"""Signals that end a command: Ctrl-C, one sent by a program, a terminal that was closed."""

_to_clear: list[Callable[[], None]] = []
"""What is to be done, the last first."""
_holding: list[bool] = []
"""As deep as stops are held back."""
_came: list[int] = []
"""Stops that came meanwhile."""


@contextmanager
def clearing(clear: Callable[[], None]) -> Iterator[None]:
    """Have something cleared up when a block is left, in whatever way.

    Given:
        clear  does it; may be called at any moment in the block, and twice
    """
    _to_clear.append(clear)
    try:
        yield
    finally:
        clear()
        _to_clear.remove(clear)


@contextmanager
def stoppable(tell: Callable[[], None]) -> Iterator[None]:
    """End this process at a signal, all cleared up, with the status that shells count a signal as.

    Given:
        tell  says that it was stopped

    Notes:
        For the main thread of a process that then ends: what comes after the block changes nothing any more.
        The process ends in the handler. An exception raised there could be lost in a callback of a library, or come
        while things are being cleared up. A signal that the process was started to ignore stays ignored.
    """

    def leave(number: int, frame: FrameType | None) -> None:
        if _holding:
            _came.append(number)
            return
        for stop in STOPS:
            signal.signal(stop, signal.SIG_IGN)
        for clear in reversed([*_to_clear]):
            with suppress(Exception):  # the rest is to be cleared all the same
                clear()
        with suppress(Exception):
            tell()
        os._exit(128 + number)

    heard = [stop for stop in STOPS if signal.getsignal(stop) is not signal.SIG_IGN]
    for stop in heard:
        signal.signal(stop, leave)
    try:
        yield
    finally:
        for stop in heard:
            signal.signal(stop, signal.SIG_IGN)


@contextmanager
def stops_held_back() -> Iterator[None]:
    """Let signals that end a command wait until a block is left.

    Notes:
        Blocked for this thread, and for a process that begins in the block, a signal may still be taken by a thread that a library
        has begun: it is told here all the same, in the midst of the block, and waits then.
    """
    blocks = hasattr(signal, 'pthread_sigmask')
    before = signal.pthread_sigmask(signal.SIG_BLOCK, STOPS) if blocks else set()
    _holding.append(True)
    try:
        yield
    finally:
        _holding.pop()
        if blocks:
            signal.pthread_sigmask(signal.SIG_SETMASK, before)
        if _came and not _holding:
            signal.raise_signal(_came.pop())


def leave_stops_to_parent() -> None:
    """Have a working process leave Ctrl-C, which all of a terminal's job hear, to its parent."""
    for stop in STOPS:
        signal.signal(stop, signal.SIG_IGN if stop == signal.SIGINT else signal.SIG_DFL)
    if hasattr(signal, 'pthread_sigmask'):
        signal.pthread_sigmask(signal.SIG_UNBLOCK, STOPS)


def end_with_parent() -> None:
    """Make a working process one that no parent leaves behind, however it ended; it has a thread then."""
    from multiprocessing import parent_process

    parent = parent_process()
    assert parent is not None, 'a working process has one'

    def watch() -> None:
        parent.join()
        os._exit(1)

    threading.Thread(target=watch, daemon=True).start()
