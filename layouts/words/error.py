"""Errors in words: a line each, and the sentences of what no roof can be."""

from __future__ import annotations

from layouts.words.say import _, n_, said
from tablegen.errors import BookError, SettingsFaults

LONGEST = 200
"""Characters of a part of an error; a longer one keeps its two ends, so that a fault stays a line."""
LONGEST_ALLOWED = 2000
"""Of a list of what is allowed, which is the program's own."""
MOST_FAULTS = 20


def error_line(fault: BookError) -> str:
    """Return an error in one line: place, problem, what is allowed, next step."""
    place, problem, allowed, next_step = (str(said(part)) for part in fault.args)
    place, problem, next_step = (_shortened(part, LONGEST) for part in (place, problem, next_step))
    allowed = _shortened(allowed, LONGEST_ALLOWED)
    parts = [
        f'{place}: {problem}' if place else problem,
        _('allowed: {words}').format(words=allowed) if allowed else '',
        _('next: {words}').format(words=next_step) if next_step else '',
    ]
    return _one_line('; '.join(part for part in parts if part))


def error_lines(fault: BookError) -> list[str]:
    """Return the lines to print, one a fault, each beginning with the file if several are told of one."""
    source = _shortened(fault.source, LONGEST) if isinstance(fault, SettingsFaults) else ''
    before = _one_line(f'{source}: ') if source else ''
    told, rest = fault.each()[:MOST_FAULTS], len(fault.each()[MOST_FAULTS:])
    more = (
        [before + n_('and {count} more', 'and {count} more', rest).format(count=f'{rest:,}')] if rest else []
    )
    return [*(f'{before}{error_line(one)}' for one in told), *more]


def _shortened(words: str, longest: int) -> str:
    return words if len(words) <= longest else f'{words[: longest // 2]} … {words[-longest // 4 :]}'


def _one_line(words: str) -> str:
    """Return words with what cannot be printed on a line (a newline, a stray byte) written as an escape."""
    return ''.join(
        letter if letter.isprintable() else letter.encode('unicode_escape').decode() for letter in words
    )
