"""Files that are put in place together: all of them or none, whatever fails and wherever a process is killed."""

from __future__ import annotations

import errno
import os
from itertools import count
from pathlib import Path

import pytest
from quick_books import contents, names

from layouts.pdf import workplace as places
from layouts.pdf.workplace import put_in_place, workplace
from layouts.words.error import error_line
from tablegen.errors import BookError

FILES = ('a.pdf', 'b.pdf', 'c.pdf')
OLD = {'a.pdf': b'old a.pdf', 'c.pdf': b'old c.pdf', 'notes.txt': b'mine'}
NEW = {name: f'new {name}'.encode() for name in FILES}
CHANGES = 'replace', 'rename', 'mkdir', 'unlink', 'rmdir'
"""Calls of the system by which anything changes; a process may be killed before each of them."""


class Killed(BaseException):
    """Stands in for SIGKILL: nothing that clears up is let do so."""


@pytest.fixture
def folder(tmp_path) -> Path:
    for name, content in OLD.items():
        (tmp_path / name).write_bytes(content)
    return tmp_path


def replace_all(folder: Path) -> None:
    with workplace(folder) as work:
        for name, content in NEW.items():
            (work / name).write_bytes(content)
        put_in_place(work, FILES)


def failing(monkeypatch, fault, before: int) -> None:
    """Let a change of the system, counted from 0, and every one after it fail."""
    counted = count()
    for name in CHANGES:
        real = getattr(os, name)

        def change(*args, real=real, **options):
            if next(counted) >= before:
                raise fault
            return real(*args, **options)

        monkeypatch.setattr(os, name, change)


def test_all_files_are_replaced_and_nothing_is_left(folder):
    replace_all(folder)
    assert contents(folder) == OLD | NEW


def test_killed_before_any_change_the_next_command_completes_or_undoes_it(folder, monkeypatch):
    for before in count():
        with monkeypatch.context() as patched:
            failing(patched, Killed(), before)
            try:
                replace_all(folder)
            except Killed:
                pass
            else:
                break
        with workplace(folder):
            left = [name for name in names(folder) if name.startswith('.')]
            assert len(left) == 1
            assert visible(folder) in (OLD, OLD | NEW), before
        for name in names(folder):
            (folder / name).unlink()
        for name, content in OLD.items():
            (folder / name).write_bytes(content)
    assert before > 12


def visible(folder: Path) -> dict[str, bytes]:
    return {path.name: path.read_bytes() for path in folder.iterdir() if not path.name.startswith('.')}


@pytest.mark.parametrize('stubborn', FILES)
def test_a_file_that_cannot_be_replaced_undoes_the_others(stubborn, folder, monkeypatch):
    real = os.replace

    def refuse(source, target):
        if Path(source).parent.name == places.NEW and Path(target) == folder / stubborn:
            raise PermissionError(errno.EACCES, os.strerror(errno.EACCES))
        real(source, target)

    monkeypatch.setattr(os, 'replace', refuse)
    with pytest.raises(BookError) as refusal:
        replace_all(folder)

    assert error_line(refusal.value) == (
        f'{folder}: writing failed: Permission denied; allowed: a folder that you may write in; '
        'next: give another with --out'
    )
    assert contents(folder) == OLD


def test_a_folder_in_the_place_of_a_file(folder):
    (folder / 'b.pdf').mkdir()
    with pytest.raises(BookError):
        replace_all(folder)

    assert visible(folder / 'b.pdf') == {}
    (folder / 'b.pdf').rmdir()
    assert contents(folder) == OLD


def test_a_folder_and_those_above_it_that_were_made_go_again(tmp_path):
    with pytest.raises(BookError), workplace(tmp_path / 'a' / 'b') as work:
        os.rmdir(work.parent)  # which is not empty

    assert names(tmp_path) == []


def test_two_commands_are_never_at_work_in_one_folder(tmp_path, monkeypatch):
    monkeypatch.setattr(places, 'MOST_SECONDS', 0)
    with workplace(tmp_path), pytest.raises(BookError) as refusal, workplace(tmp_path):
        pass

    assert error_line(refusal.value) == (
        f'{tmp_path}: another command is making something in it; '
        'next: wait until it is done, or give another folder with --out'
    )
    assert names(tmp_path) == []


@pytest.mark.parametrize(
    ('number', 'advice'),
    [
        (errno.ENOSPC, 'next: make room there or give another folder with --out'),
        (errno.EMFILE, 'next: close other programs, or let this one open more files (ulimit -n 256)'),
        (errno.EROFS, 'allowed: a folder that you may write in; next: give another with --out'),
    ],
)
def test_what_to_do_is_said_by_what_went_wrong(number, advice, tmp_path):
    with pytest.raises(BookError) as refusal, workplace(tmp_path):
        raise OSError(number, os.strerror(number))

    assert error_line(refusal.value) == f'{tmp_path}: writing failed: {os.strerror(number)}; {advice}'
