"""Cautions below a worked example: whole, or as much of each as there is room for; the page of cautions has them all."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from layouts.paper.longer import lines_in
from layouts.paper.trim import Trim
from layouts.words.caution import caution_text
from layouts.words.say import say
from tablegen.roof.cautions import Caution
from tablegen.roof.member import Member

NOTE_REM, IN_CORNER_LINES = 0.75, 2
"""Size of the cautions, and lines of them that a hip or valley on one opening has whole."""


def cautions_of(member: Member, opened: bool, trim: Trim) -> str:
    """Return a member's cautions; opened tells whether its pitch has one opening, where a hip or valley has much to say."""
    if opened and member.kind.in_corner:
        return told_in_all(member.cautions, trim, IN_CORNER_LINES)
    return ' '.join(map(caution_text, member.cautions))


def told_in_all(called: Sequence[Caution], trim: Trim, most: int) -> str:
    """Return the cautions of one member; where they take more lines, the first sentence of each."""
    whole, wide_rem = ' '.join(map(caution_text, called)), trim.text_width / 10
    if lines_in(whole, NOTE_REM, wide_rem) <= most:
        return whole
    return told_first(called, wide_rem, most)


def told_first(called: Iterable[Caution], wide_rem: float, most: int) -> str:
    """Return the first sentence of each caution, as many as have room in some lines."""
    told = list(dict.fromkeys(say(one.says[0]) for one in called))
    while len(told) > 1 and lines_in(' '.join(told), NOTE_REM, wide_rem) > most:
        told.pop()
    return ' '.join(told)
