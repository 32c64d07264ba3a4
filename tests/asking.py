"""Giving the command a line, in this process."""

from __future__ import annotations

from io import StringIO

from layouts.command import main


def ask(*words: str) -> tuple[int, str, str]:
    """Return exit status, data and remarks of a command line."""
    out, err = StringIO(), StringIO()
    status = main(words, out, err)
    return status, out.getvalue(), err.getvalue()
