"""Showing a finished file in the program that this machine opens it with."""

from __future__ import annotations

import os
import shutil
import subprocess
import sys
from pathlib import Path

from layouts.words.say import _
from tablegen.errors import BookError

OPTION = '--open'
MOST_SECONDS = 5
"""An opener that is still there then has found its program, which it may wait for."""
SCREENS = ('DISPLAY', 'WAYLAND_DISPLAY')


def opener() -> list[str]:
    """Return the command that opens a file; on Windows there is none to name.

    Errors:
        BookError on a machine without one, or without a screen
    """
    if sys.platform == 'win32':
        return []
    name = 'open' if sys.platform == 'darwin' else 'xdg-open'
    if not shutil.which(name) or (name == 'xdg-open' and not any(map(os.environ.get, SCREENS))):
        problem = _('this machine has no screen, or no {program} to show a file with').format(program=name)
        raise BookError(OPTION, problem, '', _('leave it out, and open the booklet where there is one'))
    return [name]


def pdf_named(name: str, option: str) -> Path:
    """Return the path of a PDF that is to be written.

    Errors:
        BookError for another name
    """
    file = Path(name)
    if file.suffix.lower() != '.pdf':
        raise BookError(option, _("'{file}' is no PDF").format(file=file), _('a name that ends in .pdf'))
    return file


def show(file: Path) -> None:
    """Open a file.

    Errors:
        BookError if nothing opens it
    """
    failed: int | str
    try:
        if sys.platform == 'win32':
            os.startfile(file)
            return
        with open(os.devnull, 'r+b') as nothing:
            process = subprocess.Popen(
                [*opener(), str(file)], stdin=nothing, stdout=nothing, stderr=nothing, start_new_session=True
            )
        failed = process.wait(MOST_SECONDS)
    except subprocess.TimeoutExpired:
        return
    except OSError as fault:
        failed = fault.strerror or str(fault)
    if failed:
        problem = _('{file} is made, but nothing here shows it').format(file=file)
        raise BookError(OPTION, problem, '', _('open it in a program that shows PDF'))
