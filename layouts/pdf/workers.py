"""Working processes: jobs side by side, none of which outlives the command that began it."""

from __future__ import annotations

import gc
import mmap
import multiprocessing
import os
import signal
import struct
import sys
import traceback
import warnings
from collections.abc import Callable, Iterable, Iterator, Sequence
from contextlib import contextmanager, suppress
from functools import partial
from io import DEFAULT_BUFFER_SIZE
from itertools import chain
from multiprocessing.connection import Connection, wait
from multiprocessing.process import BaseProcess
from typing import Any, Generic, TypeVar

from layouts.pdf.leaving import clearing, end_with_parent, leave_stops_to_parent, stops_held_back
from layouts.pdf.workplace import NO_MORE_FILES
from tablegen.errors import BookError
from tablegen.messages import message

RUBBISH = 100_000
"""Objects left of what was done, most of them of no use any more, before they are looked through: it takes as long as ten pages."""
FORKS = sys.platform.startswith('linux')
"""Whether a process can divide; elsewhere each begins by itself, when there is something for it to do."""
MOST = 8
"""Processes; no book is cut into many more documents."""
PID = struct.Struct('q')
Item = TypeVar('Item')
Tell = Callable[[int], None]
Work = Callable[[Item, Tell], None]
Prepare = Callable[[], Work[Item]]


def cores() -> int:
    """Return how many processes can work at once."""
    return len(os.sched_getaffinity(0)) if hasattr(os, 'sched_getaffinity') else os.cpu_count() or 1


@contextmanager
def crew(prepare: Prepare[Item]) -> Iterator[Crew[Item]]:
    """Have as many working processes as there are cores, which end with the block.

    Given:
        prepare  called in the first process, in which it loads what takes long while this one does other things; returns the
                 work, which is done with an item and a way to tell how far it has come. What the work makes may not depend on
                 what was done there before

    Notes:
        The first process divides when it has prepared, so that what it has loaded is loaded once. It may not have begun threads.
    """
    made = Crew(prepare)
    with clearing(made.end):
        if FORKS:
            made.begin(made.most)
        yield made
        made.dismiss()


class Crew(Generic[Item]):
    """Working processes of one kind of work."""

    def __init__(self, prepare: Prepare[Item]):
        self.most = min(cores(), MOST)
        self._prepare = prepare
        self._first: list[BaseProcess] = []
        """Those that this process began; others come of them."""
        self._homes: list[Connection] = []
        """The way to each process, also to one that does not yet hear."""
        self._ids = mmap.mmap(-1, MOST * PID.size)
        """The process at the end of each way; 0 where none is yet. Seen by all, so that it is known from the moment it divides."""
        self._idle: list[Connection] = []
        self._busy: set[Connection] = set()

    def do(self, items: Iterable[Item], tell: Tell) -> None:
        """Do the work for every item, side by side.

        Given:
            items  where they are made one by one, those before are being worked on meanwhile
            tell   told what the work tells

        Errors:
            what the work, or what prepares it, raises first; BookError where a process was ended from outside
            what a process warns of, this one does
        """
        for item in items:
            while not self._idle:
                if not FORKS and len(self._homes) < self.most:
                    self.begin(1)
                self._hear(tell)
            home = self._idle.pop()
            self._busy.add(home)
            try:
                home.send(item)
            except (BrokenPipeError, ConnectionResetError):
                raise _ended() from None
            self._hear(tell, 0)
        while self._busy:
            self._hear(tell)

    def begin(self, count: int) -> None:
        """Begin one process that divides into so many.

        Errors:
            BookError if the system begins none
        """
        context = multiprocessing.get_context('fork' if FORKS else 'spawn')
        pipes: list[tuple[Connection, Connection]] = []
        try:
            pipes += (context.Pipe() for _ in range(count))
            ours, theirs = [mine for mine, _ in pipes], [other for _, other in pipes]
            given = (theirs, ours, self._ids) if FORKS else (theirs, [], None)
            process: Any = context.Process(target=_begin, args=(*given, self._prepare), daemon=True)  # type: ignore[attr-defined]
            # Until the new process hears them in its own way, and this one knows of it.
            with stops_held_back():
                process.start()
                self._first.append(process)
                self._homes += ours
        except OSError as fault:
            for one in chain(*pipes):
                one.close()
            advice = 'making.fewer_open_files' if fault.errno in NO_MORE_FILES else 'making.more_memory'
            why = message('making.no_process', fault=fault.strerror or str(fault))
            raise BookError('typesetter', why, '', message(advice)) from None
        for one in theirs:
            one.close()

    def dismiss(self) -> None:
        """Let processes end by themselves, if all have nothing to do, so that what they took is counted as this one's."""
        if self._busy or len(self._idle) < len(self._homes):
            return
        homes, self._homes = (
            self._homes,
            [],
        )  # they are not to be killed any more: others may be given their numbers
        for home in homes:
            with suppress(BrokenPipeError, ConnectionResetError):  # one that was ended has nothing to be told
                home.send(None)
        for process in self._first:
            process.join()

    def end(self) -> None:
        """End all processes; may be called at any moment, also within itself."""
        self._end_others()
        for process in self._first:
            process.kill()
        for process in self._first:
            process.join()
        self._end_others()  # the first may have divided meanwhile

    def _end_others(self) -> None:
        """End processes that came of the first one."""
        for place, home in enumerate(self._homes):
            (process,) = PID.unpack_from(self._ids, place * PID.size)
            if process:
                PID.pack_into(self._ids, place * PID.size, 0)  # the number may be given to another then
                with suppress(ProcessLookupError):
                    os.kill(process, signal.SIGKILL)
                with suppress(OSError):
                    # Until it is gone; what it has sent is of no use any more.
                    while os.read(home.fileno(), DEFAULT_BUFFER_SIZE):
                        pass

    def _hear(self, tell: Tell, seconds: float | None = None) -> None:
        """Take what processes have sent, for so long waiting for the first word."""
        for one in wait(self._homes, seconds):
            assert isinstance(one, Connection)
            try:
                word = one.recv()
            except (EOFError, ConnectionResetError):
                raise _ended() from None
            if isinstance(word, int):
                tell(word)
            elif isinstance(word, Warning):
                warnings.warn(word, stacklevel=2)
            elif word is not None:
                raise word
            else:
                self._idle.append(one)
                self._busy.discard(one)


def _ended() -> BookError:
    return BookError('typesetter', message('making.worker_ended'), '', message('making.more_memory'))


def _begin(
    homes: Sequence[Connection], others: Sequence[Connection], ids: mmap.mmap | None, prepare: Prepare[Item]
) -> None:
    """Prepare the work in a new process, divide into as many as there are ways home, and do in each what comes from there.

    Given:
        others  the other ends of the ways, which this process has by being divided off
        ids     where each process puts its number
    """
    leave_stops_to_parent()
    for one in others:
        one.close()
    # Rubbish is looked for between items, where little is of use, and among what a process makes.
    gc.disable()
    try:
        work = prepare()
    except Exception as fault:
        for home in homes:
            _send_fault(home, fault)
        return
    gc.freeze()
    home = homes[0] if ids is None else _divided(homes, ids)
    end_with_parent()
    _work(home, work)
    with suppress(ChildProcessError):  # those that came of this one have been told to end
        while True:
            os.wait()


def _divided(homes: Sequence[Connection], ids: mmap.mmap) -> Connection:
    """Divide this process into as many as there are ways home; return the one that is left to each."""
    place = 0
    for other in range(1, len(homes)):
        process = os.fork()
        PID.pack_into(ids, other * PID.size, process or os.getpid())
        if not process:
            place = other
            break
    for other, home in enumerate(homes):
        if other != place:
            home.close()
    return homes[place]


def _work(home: Connection, work: Work[Item]) -> None:
    """Do the work, item by item until None comes, and send home how far each has come, what it warns of, then None or what went wrong."""
    tell = partial(_send, home)
    tell(None)
    while True:
        try:
            item = home.recv()
        except (EOFError, OSError):  # nobody is there who would send one
            return
        if item is None:
            return
        if gc.get_count()[0] > RUBBISH:
            gc.collect()
        try:
            with warnings.catch_warnings(record=True) as heard:
                work(item, tell)
            for one in heard:
                tell(one.message)
            tell(None)
        except Exception as fault:
            _send_fault(home, fault)


def _send_fault(home: Connection, fault: Exception) -> None:
    if not isinstance(fault, (BookError, OSError, MemoryError)):
        fault.add_note(traceback.format_exc())
    _send(home, fault)


def _send(home: Connection, word: object) -> None:
    """Send a word home; where nobody is at home any more, this process ends in silence."""
    try:
        home.send(word)
    except (BrokenPipeError, ConnectionResetError):
        os._exit(1)
