"""What is printed of patterns: every piece with its words, one that several members of a roof have alike but once."""

from __future__ import annotations

from collections import Counter
from collections.abc import Hashable, Sequence

from msgspec import Struct

from layouts.patterns.flat import Flat, folded_flat
from layouts.patterns.page import Shown
from layouts.words import pattern_pages as words
from layouts.words.patterns import line_names
from layouts.words.say import _
from tablegen.frame.framed import Framed
from tablegen.roof.member import Hand, Member
from tablegen.roof.pattern import Pattern, Piece, pattern_of

MICRONS = 3
"""Decimals of a millimeter in which pieces that are alike agree."""


class Shared(Struct, frozen=True):
    """A piece with the members that have it."""

    shown: Shown
    of: tuple[Framed, ...]


class _Cut(Struct, frozen=True):
    """A piece of one member."""

    framed: Framed
    whole: Pattern
    piece: Piece
    flat: Flat

    @property
    def alike(self) -> Hashable:
        """Return what is the same where pieces are: their board, every line by its name, and how they are used."""
        member, flat = self.whole.member, self.flat
        lines = (
            (*line_names(self.whole, line.name, line.face), line.face, *map(_rounded, (line.start, line.end)))
            for line in flat.lines
        )
        facts = words.facts_of(self.whole, self.piece), words.sentences_of(self.whole, self.piece, False)
        return (
            words.part_of(self.whole, self.piece), member.stock, member.thickness_in, member.pitch.text, *words.tops_of(self.whole),
            *map(tuple, facts), _rounded((flat.wide, flat.high)), frozenset(lines),
        )  # fmt: skip


def _rounded(point: tuple[float, float]) -> tuple[float, float]:
    return round(point[0], MICRONS), round(point[1], MICRONS)


def shown_of(whole: Pattern, run_known: bool, hand: Hand | None = None) -> list[Shown]:
    """Return all of one member.

    Given:
        run_known  whether lengths that the run makes are to be told
        hand       of a roof's member that has a mate cut the other way
    """
    title = words.title_of(whole.member, hand)
    return [
        _shown([whole], piece, folded_flat(whole, piece), title, words.lengths_of(whole, piece, run_known))
        for piece in whole.pieces
    ]


def shared_by(members: Sequence[Framed]) -> list[Shared]:
    """Return all of a roof's members, each kind of end or bird's mouth once, in their order."""
    found: dict[Hashable, list[_Cut]] = {}
    for framed in members:
        whole = pattern_of(framed.member)
        for piece in whole.pieces:
            cut = _Cut(framed, whole, piece, folded_flat(whole, piece))
            found.setdefault(cut.alike, []).append(cut)
    hands = Counter(framed.member.name for framed in members)
    return [_shared(cuts, hands) for cuts in found.values()]


def _shared(cuts: list[_Cut], hands: Counter[str]) -> Shared:
    first, of, wholes = cuts[0], tuple(cut.framed for cut in cuts), [cut.whole for cut in cuts]
    lengths = dict.fromkeys(tuple(words.lengths_of(cut.whole, cut.piece, True)) for cut in cuts)
    told = list(*lengths) if len(lengths) == 1 else [_(words.AS_LISTED)]
    shown = _shown(wholes, first.piece, first.flat, words.marks_of(of, hands), told, words.kinds_of(wholes))
    return Shared(shown, of)


def _shown(
    wholes: Sequence[Pattern], piece: Piece, flat: Flat, title: str, lengths: list[str], kinds: str = ''
) -> Shown:
    whole = wholes[0]
    facts = words.facts_of(whole, piece)
    if kinds:
        facts[0] = _(words.ALL_OF_THEM).format(title=kinds, facts=facts[0])
    members: list[Member] = [one.member for one in wholes]
    cautions = words.cautions_of(members)
    alone, joined = (tuple(words.sentences_of(whole, piece, several) + cautions) for several in (False, True))
    return Shown(
        whole,
        flat,
        words.head_of(title, whole, piece),
        words.part_of(whole, piece),
        tuple(facts),
        (*lengths, *words.tops_of(whole)),
        words.ends_of(wholes),
        alone,
        joined,
    )
