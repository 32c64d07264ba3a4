"""What is made of the program alone is kept, and taken only where it would be made the same."""

from __future__ import annotations

import sys
from base64 import b64decode
from pathlib import Path

import jinja2
import pytest

from layouts.html import compiled, page_html
from layouts.paper import once, table_font
from layouts.paper.once import keep, take

SOURCE = Path(once.__file__)


@pytest.fixture(autouse=True)
def folder(tmp_path, monkeypatch) -> Path:
    """Where it is kept: here, in a folder of its own."""
    monkeypatch.setattr(sys, 'pycache_prefix', str(tmp_path))
    return tmp_path


def kept(folder: Path) -> list[Path]:
    return [one for one in folder.rglob('*') if one.is_file()]


def test_it_is_taken_for_what_it_is_made_of_and_whole(folder):
    assert take(SOURCE, b'ab') is None
    keep(SOURCE, b'ab', b'cd')
    assert take(SOURCE, b'ab') == b'cd'
    assert take(SOURCE, b'a') is None

    (file,) = kept(folder)
    whole = file.read_bytes()
    for spoilt in (whole[:-1], b'', whole[:-1] + b'e', b'e' + whole[1:]):
        file.write_bytes(spoilt)
        assert take(SOURCE, b'ab') is None


def test_nothing_is_kept_where_it_cannot_be(folder, monkeypatch):
    (folder / 'file').touch()
    monkeypatch.setattr(sys, 'pycache_prefix', str(folder / 'file'))
    keep(SOURCE, b'ab', b'cd')
    assert take(SOURCE, b'ab') is None


def names_compiled(monkeypatch) -> list[str]:
    """Return the templates that a new environment compiles."""
    names: list[str] = []
    environment = page_html.environment.__wrapped__()
    plain = environment.compile

    def told(source, name=None, *rest, **options):
        names.append(name)
        return plain(source, name, *rest, **options)

    monkeypatch.setattr(environment, 'compile', told)
    environment.get_template('document.html')
    return names


def test_a_template_is_compiled_once_a_release_of_the_engine(monkeypatch):
    assert names_compiled(monkeypatch) == ['document.html']
    assert names_compiled(monkeypatch) == []
    monkeypatch.setattr(jinja2, '__version__', 'another')
    assert names_compiled(monkeypatch) == ['document.html']


def test_a_template_is_compiled_anew_when_it_is_changed(tmp_path, monkeypatch):
    monkeypatch.setattr(compiled, 'TEMPLATES', tmp_path)
    for words in ('one', 'two'):
        (tmp_path / 'page.html').write_text(words)
        environment = jinja2.Environment(
            loader=jinja2.FileSystemLoader(tmp_path), bytecode_cache=compiled.Compiled(b''), autoescape=True
        )
        assert environment.get_template('page.html').render() == words
        assert environment.get_template('page.html').render() == words


def test_the_font_of_tables_is_the_one_that_would_be_made(monkeypatch):
    made = table_font.table_font_face.__wrapped__()
    monkeypatch.setattr(table_font, '_font', lambda: pytest.fail('made twice'))

    assert table_font.table_font_face.__wrapped__() == made
    assert b64decode(made.partition('base64,')[2].partition('"')[0]).startswith(b'\0\1\0\0')
