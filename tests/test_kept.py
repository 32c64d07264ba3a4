"""Documents that are kept: the next book takes what has not changed, the same bytes, and never what is another's."""

from __future__ import annotations

import os
import subprocess
import sys
from io import StringIO
from pathlib import Path

import pytest
from babel.messages.catalog import Catalog
from babel.messages.mofile import write_mo
from msgspec.structs import replace
from own_roofs import PORCH
from quick_books import FILES, QUICK, contents
from weasyprint.text import ffi

from layouts.build import _documents as documents
from layouts.build import build
from layouts.command import main
from layouts.html.page_html import pages_html
from layouts.pages import book
from layouts.pages.book import plan
from layouts.pdf import kept as keeping
from layouts.pdf.documents import Unmade
from layouts.pdf.kept import Kept, name_of, user_folder
from layouts.pdf.libraries import shaper_release
from layouts.pdf.parts import OF_THE_COPY
from layouts.pdf.progress import Progress
from layouts.pdf.typeset import set_document
from layouts.pdf.workers import Crew
from layouts.verbs.settings_file import settings_from
from layouts.words import say
from tablegen.settings import EDITIONS, READERS, TRIMS, Settings, read_settings

BOOK = read_settings('pitches = [6]\nparts = ["values", "examples"]\nruns = {to = "12 in"}\n', '')


@pytest.fixture
def set_now(monkeypatch) -> list[str]:
    """The files of the documents that are set, and not taken."""
    names: list[str] = []

    def do(crew, jobs, tell):
        for job in jobs:
            names.append(job.out.name)
            set_document(job, tell)

    monkeypatch.setattr(Crew, 'do', do)
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


@pytest.mark.parametrize('trim', TRIMS)
@pytest.mark.parametrize('edition', EDITIONS)
def test_what_says_title_owner_or_paper_is_a_document_of_its_own(edition, trim, monkeypatch):
    """All other pages are made from settings that have no title and no owner, and yet are what all the settings make."""
    own = read_settings(f'edition = "{edition}"\npitches = [6]\nruns = {{to = "4 ft"}}\ntrim = "{trim}"', '')
    other = replace(own, owner='Qzx & <Vjk>', title='Wqj “Kvx”', paper='a4')
    masked = plan(other)
    told = [pages_html([page], '') for page in masked.pages()]
    copied = {draft.template for draft, html in zip(masked.drafts, told, strict=True) if says(html)}
    assert copied
    assert copied <= OF_THE_COPY
    if trim == TRIMS[0]:
        assert masked.common == plan(own).common
    monkeypatch.setattr(book, 'of_any_copy', lambda settings: settings)
    whole = plan(other)
    assert (masked.index, masked.trim, masked.figures) == (whole.index, whole.trim, whole.figures)
    assert told == [pages_html([page], '') for page in whole.pages()]


def says(html: str) -> bool:
    return any(name in html for name in ('Qzx', 'Vjk', 'Wqj', 'Kvx'))


def known_by(settings: Settings) -> set[tuple[str, ...]]:
    """Return what tells documents apart whose pages are not made to do so."""
    planned = plan(settings)
    with say.speaking(settings.language):
        jobs = list(documents(planned, [], Path(), [], False))
    return {job.made_of for job in jobs if isinstance(job, Unmade)}


OTHERS = {
    'lengths': 'lengths = "feet-inches"',
    'smallest_part': 'smallest_part = "1/8"',
    'steep': 'steep = true',
    'pitches': 'pitches = [7]',
    'runs.from': 'runs.from = "2 in"',
    'runs.to': 'runs.to = "11 in"',
    'runs.by': 'runs.by = "2 in"',
    'jacks.spacings': 'jacks.spacings = ["15 in"]',
    'stock.ridge': 'stock.ridge = "1 in"',
    'stock.hip': 'stock.hip = "1 in"',
    'stock.rafter': 'stock.rafter = "1 in"',
    'stock.rafters': 'stock.rafters = "2x6"',
    'stock.hips': 'stock.hips = "2x10"',
    'stock.valleys': 'stock.valleys = "2x10"',
    'stock.seat': 'stock.seat = "3 in"',
    'trim': 'trim = "large"',
    'parts': 'parts = ["values"]',
    'roofs': 'roofs = []',
}
"""By the key of a setting: it changed."""
OF_A_COPY = {'title': 'title = "Sheds"', 'owner': 'owner = "The Garden Store"', 'paper': 'paper = "a4"'}


def test_any_other_setting_makes_other_documents(tmp_path):
    """Each key of the settings but title, owner and paper, where every one is listed; of a roof file what it says."""
    usual = {
        'pitches': 'pitches = [6]',
        'parts': 'parts = ["values", "examples"]',
        'runs.to': 'runs.to = "12 in"',
    }

    def of(changed: dict[str, str]) -> set[tuple[str, ...]]:
        return known_by(read_settings('\n'.join((usual | changed).values()), ''))

    assert {*OTHERS, *OF_A_COPY, 'edition', 'language'} == set(READERS)
    own = of({})
    assert own
    for key, line in OTHERS.items():
        assert not own & of({key: line}), key
    assert of(OF_A_COPY) == own

    found = []
    for width in ('7 ft', '8 ft'):
        (tmp_path / 'porch.toml').write_text(PORCH.replace('7 ft', width))
        (tmp_path / 'book.toml').write_text('pitches = [4]\nroofs = ["porch.toml"]\n')
        found.append(known_by(settings_from(str(tmp_path / 'book.toml'))))
    assert not found[0] & found[1]


def test_other_words_make_other_documents(tmp_path, monkeypatch):
    """Another language, and the same in other words."""
    settings, found = replace(BOOK, language='xx'), [known_by(BOOK)]
    monkeypatch.setenv(say.CATALOGUES, str(tmp_path))
    made = tmp_path / 'xx/LC_MESSAGES' / f'{say.DOMAIN}.mo'
    made.parent.mkdir(parents=True)
    for words in ('Cautionz', 'Cautionx'):
        catalogue = Catalog('en')
        catalogue.add('Cautions', words)
        with made.open('wb') as file:
            write_mo(file, catalogue)
        found.append(known_by(settings))
    assert len(set.union(*found)) == sum(map(len, found))


def test_another_program_makes_other_documents(tmp_path):
    """A file that is there or not, called otherwise, or of other contents; what Python keeps beside it is none of it."""
    (tmp_path / 'inner/__pycache__').mkdir(parents=True)
    file, found = tmp_path / 'inner/a.html', []
    for contents_of_it in ('a', 'b'):
        file.write_text(contents_of_it)
        found.append(keeping.program([tmp_path]))
    file.rename(tmp_path / 'inner/b.html')
    found.append(keeping.program([tmp_path]))
    (tmp_path / 'c.py').touch()
    found.append(keeping.program([tmp_path]))
    assert len(set(found)) == len(found)
    (tmp_path / 'inner/__pycache__/d.pyc').touch()
    assert keeping.program([tmp_path]) == found[-1]
    inside = [room.name for room in keeping.ROOMS if (room / '__init__.py').exists()]
    assert inside == ['layouts', 'tablegen']


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


@pytest.mark.skipif(not sys.platform.startswith('linux'), reason='elsewhere a process cannot divide')
def test_the_command_itself_never_loads_the_typesetter(tmp_path):
    """It tells the releases of the typesetter's libraries all the same, which is what a kept document is known by."""
    (tmp_path / 'book.toml').write_text(QUICK)
    words = ['make', 'book.toml', '--no-proof']
    says = (
        f'import sys; from layouts.command import main; status = main({words!r}); '
        'from layouts.pdf.libraries import shaper_release, text_release; '
        'print(status, "weasyprint" in sys.modules, text_release(), shaper_release())'
    )
    top = str(Path(__file__).parent.parent)
    told = subprocess.check_output(
        [sys.executable, '-c', says], cwd=tmp_path, text=True, env={**os.environ, 'PYTHONPATH': top}
    )
    release = ffi.pango.pango_version()
    at_least = [
        ffi.harfbuzz.hb_version_atleast(*parts) for parts in (shaper_release(), (*shaper_release()[:2], 99))
    ]

    assert told.splitlines()[-1] == f'0 False {release} {shaper_release()}'
    assert at_least == [1, 0]
