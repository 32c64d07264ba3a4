"""Types and style: mypy, strict, over both packages, and ruff over everything; neither finds anything."""

from __future__ import annotations

import subprocess
import sys
from pathlib import Path

PROJECT = Path(__file__).parents[1]


def said(*words: str) -> str:
    """Return what a tool says of the project, and its exit status where that is not 0."""
    done = subprocess.run(
        [sys.executable, '-m', *words], cwd=PROJECT, capture_output=True, text=True, timeout=300
    )
    return done.stdout + done.stderr + (f'exit status {done.returncode}' if done.returncode else '')


def test_types_are_strict_and_right(tmp_path: Path):
    assert said('mypy', '--no-error-summary', '--cache-dir', str(tmp_path)) == ''


def test_style_is_one():
    assert said('ruff', 'check', '--quiet', '--no-cache', '.') == ''
