"""A book made quickly, a folder to make it in, and what stands there before and after."""

from __future__ import annotations

import os
from io import StringIO
from pathlib import Path

from layouts.pages.book import plan
from layouts.pdf import parts
from tablegen.settings import read_settings

FILES = ['booklet.pdf', 'card.pdf', 'sheets.pdf']
QUICK = 'pitches = [6]\nparts = ["values"]\nruns = {to = "12 in"}\n'
"""The shortest book; its figures are those of one opening by member, 51 and four jack differences."""
LACKS = 'section { background: url(data:image/png;base64,AAAA) }'
"""A style that shows what cannot be had: the typesetter's fault."""
PAGES = plan(read_settings(QUICK, '')).index.total


def names(folder: Path) -> list[str]:
    """Return every file and folder, hidden ones too."""
    return sorted(path.name for path in folder.iterdir())


def contents(folder: Path) -> dict[str, bytes]:
    return {path.name: path.read_bytes() for path in folder.iterdir()}


def earlier(quick: Path) -> dict[str, bytes]:
    """Return what stands in the folder of an earlier build."""
    (quick / 'output').mkdir()
    for name in FILES:
        (quick / 'output' / name).write_text(f'an earlier {name}')
    return contents(quick / 'output')


def add_style(monkeypatch, css: str) -> None:
    """Add to the style sheet of a book; what is made so is no document of the program, and is not kept."""
    monkeypatch.setenv('XDG_CACHE_HOME', os.path.join(os.devnull, 'none'))
    style = parts.style
    monkeypatch.setattr(parts, 'style', lambda trim: style(trim) + css)


class Terminal(StringIO):
    """Takes remarks as a terminal does."""

    def isatty(self) -> bool:
        return True
