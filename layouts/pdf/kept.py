"""Typeset documents kept from one making of a book to the next, in the user's folder for what can be made again.

A document is kept under a hash of all that it is made of: its HTML and style sheet, or the settings that its pages are made from and
the words of their language; the typeface, the releases of the libraries that make and set it, and the whole program. So one that is taken is, byte for byte, what would be made. Any number
of makings may use the folder at once: a file is put there whole or not at all, and read against its own hash.
"""

from __future__ import annotations

import os
import sys
from collections.abc import Iterable
from contextlib import suppress
from functools import cache
from hashlib import sha256
from importlib.metadata import version
from pathlib import Path
from tempfile import mkstemp
from time import time

from msgspec import Struct

from layouts.paper.typeface import font_path
from layouts.pdf.libraries import shaper_release, text_release

NAME = 'rafterbook'
MADE_BY = (
    'weasyprint',
    'jinja2',
    'pydyf',
    'fonttools',
    'fontpkg-open-sans',
    'tinycss2',
    'tinyhtml5',
    'cssselect2',
    'pillow',
)
"""What makes and sets a document, beside Pango, which tells its release itself."""
ROOMS = tuple(Path(__file__).resolve().parents[2] / name for name in ('layouts', 'tablegen'))
"""The folders of the program."""
DIGEST = 32
"""Bytes before what is kept: its hash."""
MOST_BYTES = 48 * 2**20
"""What is kept in all; what was taken longest ago goes first."""
LEFT_BEHIND_S = 3600
"""A file that is being written for so long was left behind by a making that was killed."""


class Kept(Struct, frozen=True):
    """A folder of kept documents; where it cannot be used, nothing is kept."""

    folder: Path

    def take(self, name: str, out: Path) -> bool:
        """Write what is kept under a name, and return whether there is any."""
        file = self.folder / name
        try:
            told = file.read_bytes()
            if sha256(told[DIGEST:]).digest() != told[:DIGEST]:
                file.unlink()
                return False
            os.utime(file)
        except OSError:
            return False
        out.write_bytes(told[DIGEST:])
        return True

    def put(self, name: str, file: Path) -> None:
        """Keep a file under a name."""
        told = file.read_bytes()
        with suppress(OSError):
            self.folder.mkdir(parents=True, exist_ok=True)
            number, part = mkstemp('.part', dir=self.folder)
            try:
                with os.fdopen(number, 'wb') as written:
                    written.write(sha256(told).digest() + told)
                os.replace(part, self.folder / name)
            except BaseException:
                os.unlink(part)
                raise

    def trim(self) -> None:
        """Let go of what was not taken for longest, until all that is kept is small enough."""
        with suppress(OSError):
            listed = sorted((one for one in self.folder.iterdir()), key=_taken, reverse=True)
            total = 0
            for one in listed:
                total += one.stat().st_size
                stale = one.suffix == '.part' and _taken(one) < time() - LEFT_BEHIND_S
                if total > MOST_BYTES or stale:
                    one.unlink(missing_ok=True)


def user_folder() -> Path:
    """Return the user's folder for what can be made again, by the custom of the system."""
    home = Path.home()
    if sys.platform == 'win32':
        return Path(os.environ.get('LOCALAPPDATA') or home / 'AppData/Local') / NAME / 'Cache'
    if sys.platform == 'darwin':
        return home / 'Library/Caches' / NAME
    said = os.environ.get('XDG_CACHE_HOME', '')
    return (Path(said) if os.path.isabs(said) else home / '.cache') / NAME


def name_of(parts: Iterable[str]) -> str:
    """Return the name under which a document of some parts is kept."""
    told = sha256(_made_by().encode())
    for part in parts:
        told.update(f'\0{len(part)}\0{part}'.encode())
    return told.hexdigest()


@cache
def _made_by() -> str:
    """Return all that makes a document of its parts: releases of libraries, the typeface, the program."""
    told = [
        sys.version,
        *(f'{name} {version(name)}' for name in MADE_BY),
        f'{text_release()} {shaper_release()}',
        sha256(font_path().read_bytes()).hexdigest(),
        program(ROOMS),
    ]
    return '\n'.join(told)


def program(rooms: Iterable[Path]) -> str:
    """Return a hash of all files of a program, by their names and contents: code, templates, style sheets, words, roofs."""
    told = sha256()
    for room in rooms:
        for folder, inside, files in os.walk(room):
            inside[:] = sorted(name for name in inside if name != '__pycache__')
            for name in sorted(files):
                path = os.path.join(folder, name)
                with open(path, 'rb') as file:
                    contents = file.read()
                told.update(f'\0{os.path.relpath(path, room)}\0{len(contents)}\0'.encode() + contents)
    return told.hexdigest()


def _taken(file: Path) -> float:
    return file.stat().st_mtime
