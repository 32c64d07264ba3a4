"""A workplace: a hidden folder in the one wanted, for unfinished work, from which finished files are put there together.

Its name says how far it has come, so that what a killed command left can be taken up by the next one:

- `.rafterbook-…`: unfinished; it goes.
- `….whole`: the new files, all whole, and copies of the earlier ones are in it; the new ones are put in place.
- `….back`: one could not be; the earlier ones are put back.
- `….done`: it goes.
"""

from __future__ import annotations

import errno
import os
import shutil
import sys
import tempfile
from collections.abc import Iterator, Sequence
from contextlib import contextmanager, suppress
from pathlib import Path
from secrets import token_hex
from time import monotonic, sleep

from layouts.pdf.leaving import clearing
from tablegen.errors import BookError
from tablegen.messages import message

PREFIX = '.rafterbook-'
WHOLE, BACK, DONE = '.whole', '.back', '.done'
NEW, EARLIER, NONE_EARLIER = 'new', 'earlier', 'none-earlier'
"""Folders of a workplace: files to put in place, copies of those in their places, names of which there were none."""
MOST_SECONDS = 30
"""So long a command waits for another that makes something in the same folder."""
SECONDS_BETWEEN_LOOKS = 0.1
FILES_TO_CLEAR = 5
"""As many are held open to be let go before a workplace is cleared, which must be looked into: no more may be allowed."""
NO_ROOM = (errno.ENOSPC, errno.EDQUOT, errno.EFBIG)
NO_MORE_FILES = (errno.EMFILE, errno.ENFILE)


@contextmanager
def workplace(folder: Path) -> Iterator[Path]:
    """Give a folder for unfinished work inside the one wanted, and leave nothing behind but what was put in place.

    Given:
        folder  made if it is not there; what killed commands left in it is taken up first

    Errors:
        BookError for every OSError, and where another command is at work in the folder
    """
    work = folder / f'{PREFIX}{token_hex(4)}'
    new: list[Path] = []
    spare: list[int] = []

    def clear() -> None:
        while spare:
            os.close(spare.pop())
        _take_up(folder, work.name)

    def go() -> None:
        for one in new:
            with suppress(OSError):  # only an empty folder goes
                one.rmdir()

    problem = 'making.cannot_write'
    try:
        with clearing(go):
            new += (one for one in (folder, *folder.parents) if not one.exists())
            folder.mkdir(parents=True, exist_ok=True)
            with _alone(folder) as alone, clearing(clear):
                spare += (os.open(os.devnull, os.O_RDONLY) for _ in range(FILES_TO_CLEAR))
                if alone:
                    _take_up(folder, PREFIX)
                work.mkdir()
                problem = 'making.writing_failed'
                with passing_files_in(work):
                    yield work
    except OSError as fault:
        raise _told(folder, problem, fault) from None


def put_in_place(work: Path, names: Sequence[str]) -> None:
    """Replace the files of some names beside a workplace by those in it: all of them or none. The work is then over.

    Errors:
        OSError if one cannot be replaced; all are then as they were
    """
    for part in (NEW, EARLIER, NONE_EARLIER):
        (work / part).mkdir()
    for name in names:
        os.replace(work / name, work / NEW / name)
        try:
            shutil.copy2(work.parent / name, work / EARLIER / name, follow_symlinks=False)
        except FileNotFoundError:
            (work / NONE_EARLIER / name).touch()
    if fault := _settle(work.rename(work.with_suffix(WHOLE))):
        raise fault


@contextmanager
def passing_files_in(folder: Path) -> Iterator[None]:
    """Have libraries put their passing files in a folder, so that they go with it however the work ends."""
    before = tempfile.tempdir
    with suppress(UnicodeEncodeError):  # where its name is no text they lie where they always do
        os.path.abspath(folder).encode()
        tempfile.tempdir = str(folder)
    try:
        yield
    finally:
        tempfile.tempdir = before


def _take_up(folder: Path, begins: str) -> None:
    for one in folder.glob(f'{begins}*'):
        if one.is_dir() and not one.is_symlink():
            _settle(one)


def _settle(work: Path) -> OSError | None:
    """End what was begun in a workplace, as its name says, and return what stood in the way of the new files.

    Notes:
        Every step may be done again: a process may be killed after any.
    """
    fault = None
    if work.suffix == WHOLE:
        try:
            for new in sorted((work / NEW).iterdir()):
                os.replace(new, work.parent / new.name)
        except OSError as found:
            fault = found
            work = work.rename(work.with_suffix(BACK))
    if work.suffix == BACK:
        for earlier in (work / EARLIER).iterdir():
            os.replace(earlier, work.parent / earlier.name)
        for none in (work / NONE_EARLIER).iterdir():
            (work.parent / none.name).unlink(missing_ok=True)
    if work.suffix in (WHOLE, BACK):
        work = work.rename(work.with_suffix(DONE))
    shutil.rmtree(work, ignore_errors=True)
    return fault


@contextmanager
def _alone(folder: Path) -> Iterator[bool]:
    """Keep other commands out of a folder; say False where the system cannot, as some networks' cannot.

    Errors:
        BookError if another is there and does not end
    """
    if sys.platform == 'win32':
        yield False
        return
    from fcntl import LOCK_EX, LOCK_NB, flock

    opened = os.open(folder, os.O_RDONLY)
    try:
        alone, until = False, monotonic() + MOST_SECONDS
        with suppress(OSError):
            while not alone:
                try:
                    flock(opened, LOCK_EX | LOCK_NB)
                    alone = True
                except BlockingIOError:
                    if monotonic() > until:
                        raise BookError(
                            str(folder),
                            message('making.another_command'),
                            '',
                            message('making.wait_or_folder'),
                        ) from None
                    sleep(SECONDS_BETWEEN_LOOKS)
        yield alone
    finally:
        os.close(opened)


def _told(folder: Path, problem: str, fault: OSError) -> BookError:
    """Return an error of the system's as one with what to do about it."""
    why = message(problem, fault=fault.strerror or str(fault))
    if fault.errno in NO_MORE_FILES:
        return BookError(str(folder), why, '', message('making.fewer_open_files'))
    if fault.errno in NO_ROOM:
        return BookError(str(folder), why, '', message('making.room_or_folder'))
    return BookError(str(folder), why, message('making.writable_folder'), message('making.another_folder'))
