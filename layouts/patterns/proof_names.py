"""The words by which a proof-reader finds what is drawn on patterns."""

from __future__ import annotations

from layouts.words import pattern_pages, patterns
from layouts.words.frame import MEMBERS
from layouts.words.say import _
from tablegen.proof.pattern_names import PatternNames
from tablegen.roof.member import Kind
from tablegen.roof.pattern import Name

FIRST_WORDS = 30
"""Letters of a sentence that is broken over lines, by which it is known."""


def pattern_names() -> PatternNames:
    """Return them in the language in use."""
    plumb = [
        *patterns.CENTERS.values(), *patterns.HEADS.values(), *patterns.PLATES.values(), patterns.PEAK, patterns.HEAD,
        patterns.FOOT_CUT, patterns.PEAK_CUT, patterns.PLATE, patterns.RAISED_PLATE, patterns.OTHERS[Name.HEEL], patterns.OTHERS[Name.TAIL],
    ]  # fmt: skip
    level = [patterns.LEVEL_CUT, patterns.OTHERS[Name.SEAT]]
    top = [*patterns.ON_TOP.values(), patterns.BLUNT_ON_TOP, patterns.LEVEL_ON_TOP]
    edges = [patterns.OTHERS[name] for name in ('top_edge', 'bottom_edge', 'fold', 'middle', 'backing')]
    return PatternNames(
        _(pattern_pages.PRINT)[:FIRST_WORDS],
        _(patterns.PAGE),
        _(pattern_pages.TITLE),
        _(pattern_pages.SIZES),
        _(pattern_pages.SEATED),
        (_(patterns.ABOVE), _(patterns.LEVEL), _(patterns.PLUMB)),
        {
            _(words): what
            for what, some in (
                ('plumb', plumb),
                ('level', level),
                ('top', top),
                ('leaning', [patterns.SQUARE_TAIL]),
                ('edge', edges),
            )
            for words in some
        },
        (_(edges[0]), _(edges[1]), _(edges[2])),
        tuple(_(words).lower() for words in MEMBERS.values()),
        tuple(_(MEMBERS[kind]).lower() for kind in (Kind.HIP, Kind.UPPER_HIP, Kind.VALLEY)),
        _(pattern_pages.TO_TAIL),
        _(patterns.LAY_ON),
        _(patterns.LIES_HERE),
        ('100 mm', '4 in'),
    )
