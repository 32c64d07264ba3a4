"""Working processes: jobs side by side, none of which outlives the command that began it."""

from __future__ import annotations

import gc
import multiprocessing
import os
import sys
import traceback
import warnings
from collections.abc import Callable, Iterable
from multiprocessing.connection import Connection, wait
from multiprocessing.process import BaseProcess
from typing import TypeVar

from layouts.pdf.leaving import clearing, end_with_parent, stops_held_back
from tablegen.errors import BookError
from tablegen.messages import message

RUBBISH = 100_000
"""Objects left of what was done, most of them of no use any more, before they are looked through: it takes as long as ten pages."""
Item = TypeVar('Item')
Tell = Callable[[int], None]
Work = Callable[[Item, Tell], None]


def side_by_side(work: Work[Item], items: Iterable[Item], tell: Tell) -> None:
    """Do some work for every item, as many at a time as there are cores.

    Given:
        work   done in another process, with the item and a way to tell how far it has come; what it makes may not depend on what
               was done there before
        items  where they are made one by one, those before are being worked on meanwhile
        tell   told what the work tells

    Errors:
        what the work raises first; BookError where a process was ended from outside
        all other processes are ended then
        what a process warns of, this one does

    Notes:
        A process goes on to the next item: to begin one, and what libraries do the first time, takes a tenth of a second.
    """
    running: dict[Connection, BaseProcess] = {}
    idle: list[Connection] = []

    def end() -> None:
        for process in running.values():
            process.kill()
        for process in running.values():
            process.join()

    with clearing(end):
        for item in items:
            if not idle and len(running) < cores():
                idle.append(_start(running, work))
            while not idle:
                idle += _hear(running, tell)
            idle.pop().send(item)
            idle += _hear(running, tell, 0)
        while len(idle) < len(running):
            idle += _hear(running, tell)


def cores() -> int:
    """Return how many processes can work at once."""
    return len(os.sched_getaffinity(0)) if hasattr(os, 'sched_getaffinity') else os.cpu_count() or 1


def _start(running: dict[Connection, BaseProcess], work: Work[Item]) -> Connection:
    context = multiprocessing.get_context('fork' if sys.platform.startswith('linux') else 'spawn')
    ours, theirs = context.Pipe()
    process = context.Process(target=_work, args=(theirs, work), daemon=True)  # type: ignore[attr-defined]
    with stops_held_back():  # until the new process hears them in its own way, and this one knows of it
        process.start()
        running[ours] = process
    theirs.close()
    return ours


def _work(home: Connection, work: Work[Item]) -> None:
    """Do the work in a new process, item by item, and send home how far each has come, what it warns of, then None or what went wrong."""
    end_with_parent()
    # Rubbish is looked for between items, where little is of use, and among what this process makes.
    gc.freeze()
    gc.disable()
    while True:
        try:
            item = home.recv()
        except (EOFError, OSError):  # nobody is there who would send one
            return
        if gc.get_count()[0] > RUBBISH:
            gc.collect()
        try:
            with warnings.catch_warnings(record=True) as heard:
                work(item, home.send)
            for one in heard:
                home.send(one.message)
            home.send(None)
        except (BookError, OSError, MemoryError) as fault:
            home.send(fault)
        except Exception as fault:
            fault.add_note(traceback.format_exc())
            home.send(fault)


def _hear(
    running: dict[Connection, BaseProcess], tell: Tell, seconds: float | None = None
) -> list[Connection]:
    """Take what processes have sent, for so long waiting for the first word; return those that are done with their item."""
    done = []
    for one in wait(list(running), seconds):
        assert isinstance(one, Connection)
        try:
            word = one.recv()
        except EOFError:
            raise BookError(
                'typesetter', message('making.worker_ended'), '', message('making.more_memory')
            ) from None
        if isinstance(word, int):
            tell(word)
        elif isinstance(word, Warning):
            warnings.warn(word, stacklevel=2)
        elif word is not None:
            raise word
        else:
            done.append(one)
    return done
