"""Documents that are kept: the next book takes what has not changed, the same bytes, and never what is another's."""

from __future__ import annotations

import os
import sys
from dataclasses import replace
from io import StringIO
from pathlib import Path

import pytest
from quick_books import FILES, QUICK, contents

from layouts.build import build
from layouts.command import main
from layouts.html.page_html import pages_html
from layouts.pages.book import plan
from layouts.pdf import kept as keeping
from layouts.pdf import typeset
from layouts.pdf.kept import Kept, name_of, user_folder
from layouts.pdf.parts import OF_THE_COPY
from layouts.pdf.progress import Progress
from tablegen.settings import EDITIONS, read_settings

BOOK = read_settings('pitches = [6]\nparts = ["values", "examples"]\nruns = {to = "12 in"}\n', '')


@pytest.fixture
def set_now(monkeypatch) -> list[str]:
    """The files of the documents that are set, and not taken."""
    names: list[str] = []

    def side_by_side(work, jobs, tell):
        for job in jobs:
            names.append(job.out.name)
            work(job, tell)

    monkeypatch.setattr(typeset, 'side_by_side', side_by_side)
    return names


def made(settings, folder: Path, kept: Kept | None = None) -> dict[str, bytes]:
    build(settings, folder, Progress(StringIO()), kept=kept)
    return contents(folder)


def test_the_next_book_takes_what_has_not_changed(set_now, tmp_path):
    """Nothing is set again for the same book; for another owner, title and paper only what says them; all bytes are as if set anew."""
    kept = Kept(tmp_path / 'kept')
    first = made(BOOK, tmp_path / 'first', kept)
    assert sorted(first) == FILES
    whole, _ = set_now.copy(), set_now.clear()
    assert made(BOOK, tmp_path / 'again', kept) == first
    assert set_now == []

    other = replace(BOOK, owner='The Garden Store', title='Sheds', paper='a4')
    changed = made(other, tmp_path / 'other', kept)
    again, _ = set_now.copy(), set_now.clear()
    assert 'instructions.pdf' in again
    assert len(again) < len(whole)
    assert made(other, tmp_path / 'anew') == changed
    assert changed != first

    finer = replace(BOOK, measure=replace(BOOK.measure, per=8))
    set_now.clear()
    assert made(finer, tmp_path / 'finer', kept) == made(finer, tmp_path / 'finer anew')
    assert len([name for name in set_now if name.startswith('part-')]) > len(again) // 2


@pytest.mark.parametrize('edition', EDITIONS)
def test_what_says_title_owner_or_paper_is_a_document_of_its_own(edition):
    """All other pages are as they are for anybody else, so that their documents are taken."""
    own = read_settings(f'edition = "{edition}"\npitches = [6]\nruns = {{to = "4 ft"}}', '')
    other = replace(own, owner='The Garden Store', title='Sheds', paper='a4')
    changed = {
        page.template
        for page, same in zip(plan(own).pages(), plan(other).pages(), strict=True)
        if pages_html([page], '') != pages_html([same], '')
    }
    assert changed
    assert changed <= OF_THE_COPY


def test_what_is_spoilt_is_set_again(set_now, tmp_path):
    """A kept file cut short, emptied or changed in one bit; a folder that is a file: the book is as it was."""
    kept = Kept(tmp_path / 'kept')
    first = made(BOOK, tmp_path / 'first', kept)
    for file in kept.folder.iterdir():
        told = file.read_bytes()
        spoilt = (told[: len(told) // 2], b'', told[:-9] + bytes([told[-9] ^ 1]) + told[-8:])
        file.write_bytes(spoilt[hash(file.name) % 3])
    whole, _ = set_now.copy(), set_now.clear()
    assert made(BOOK, tmp_path / 'again', kept) == first
    assert set_now == whole

    (tmp_path / 'file').touch()
    assert made(BOOK, tmp_path / 'nowhere', Kept(tmp_path / 'file')) == first


def test_a_making_that_is_ended_leaves_nothing_half_kept(tmp_path, monkeypatch):
    """Ended while it puts a file in place: it is not there, and the next making finds no part of it."""
    kept, file = Kept(tmp_path / 'kept'), tmp_path / 'file'
    file.write_bytes(b'pages')

    def ended(*_paths):
        raise KeyboardInterrupt

    with monkeypatch.context() as patch:
        patch.setattr(os, 'replace', ended)
        with pytest.raises(KeyboardInterrupt):
            kept.put('name', file)
    assert list(kept.folder.iterdir()) == []
    assert not kept.take('name', tmp_path / 'out')
    kept.put('name', file)
    assert kept.take('name', tmp_path / 'out')
    assert (tmp_path / 'out').read_bytes() == b'pages'


def test_what_was_taken_longest_ago_goes_first(tmp_path, monkeypatch):
    kept, file = Kept(tmp_path / 'kept'), tmp_path / 'file'
    file.write_bytes(bytes(100))
    for place, name in enumerate('abcd'):
        kept.put(name, file)
        os.utime(kept.folder / name, (place, place))
    kept.take('a', tmp_path / 'out')
    monkeypatch.setattr(keeping, 'MOST_BYTES', 300)
    kept.trim()

    assert sorted(one.name for one in kept.folder.iterdir()) == ['a', 'd']


def test_a_name_tells_all_that_a_document_is_made_of(monkeypatch):
    """Where one part ends and the next begins too, and another release of any library."""
    names = {name_of(parts) for parts in (('ab', 'c'), ('a', 'bc'), ('abc',), ('c', 'ab'), ('ab', 'c', ''))}
    assert len(names) == 5
    keeping._made_by.cache_clear()
    monkeypatch.setattr(keeping, 'version', lambda name: 'another')
    assert name_of(('ab', 'c')) not in names
    keeping._made_by.cache_clear()


@pytest.mark.skipif(sys.platform in ('win32', 'darwin'), reason='a custom of other systems')
def test_fresh_takes_and_keeps_nothing(tmp_path, monkeypatch):
    monkeypatch.setenv('XDG_CACHE_HOME', str(tmp_path / 'cache'))
    file = tmp_path / 'book.toml'
    file.write_text(QUICK, 'utf-8')
    words = ['make', str(file), '--out', str(tmp_path / 'book')]

    assert user_folder() == tmp_path / 'cache/rafterbook'
    assert main([*words, '--fresh'], StringIO(), StringIO()) == 0
    assert not user_folder().exists()
    assert main(words, StringIO(), StringIO()) == 0
    assert list(user_folder().iterdir())
