"""Errors in words: a line each, and the sentences of what no roof can be."""

from __future__ import annotations

from layouts.words.say import _, said
from tablegen.errors import BookError, SettingsFaults

LONGEST_PROBLEM = 200
"""Characters; a longer problem keeps its two ends, so that a fault stays a line."""


def error_line(fault: BookError) -> str:
    """Return an error in one line: place, problem, what is allowed, next step."""
    place, problem, allowed, next_step = (str(said(part)) for part in fault.args)
    if len(problem) > LONGEST_PROBLEM:
        problem = f'{problem[: LONGEST_PROBLEM // 2]} … {problem[-LONGEST_PROBLEM // 4 :]}'
    parts = [
        f'{place}: {problem}' if place else problem,
        _('allowed: {words}').format(words=allowed) if allowed else '',
        _('next: {words}').format(words=next_step) if next_step else '',
    ]
    return _one_line('; '.join(part for part in parts if part))


def error_lines(fault: BookError) -> list[str]:
    """Return the lines to print, one a fault, each beginning with the file if several are told of one."""
    before = _one_line(f'{fault.source}: ') if isinstance(fault, SettingsFaults) and fault.source else ''
    return [f'{before}{error_line(one)}' for one in fault.each()]


def _one_line(words: str) -> str:
    """Return words with what cannot be printed on a line (a newline, a stray byte) written as an escape."""
    return ''.join(
        letter if letter.isprintable() else letter.encode('unicode_escape').decode() for letter in words
    )
