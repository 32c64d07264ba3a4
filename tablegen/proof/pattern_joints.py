"""Pages of a pattern that are laid on one another: what they say of it, their marks, and the lines that both of them show."""

from __future__ import annotations

from math import hypot

from tablegen.proof.found import Fault, Found
from tablegen.proof.ink import Spot
from tablegen.proof.pattern_names import PatternNames
from tablegen.proof.pattern_page import (
    DATUM,
    EDGE,
    JOINT,
    MEET_MM,
    NEAR,
    SAWN,
    Drawn,
    PatternPage,
    Piece,
    shared,
)
from tablegen.proof.sentences import told

LAP_MM, SHORT_MM = 14.0, 0.5
"""That two pages have in common; and what of it may be missing."""
LINES = (SAWN, DATUM, EDGE)


def read_joints(piece: Piece, names: PatternNames, found: Found) -> None:
    """See that pages that are joined say so to one another, share all marks, and show the same lines over their lap."""
    for place, (page, by) in enumerate(piece.pages):
        for words in page.words:
            onto = told(names.lay_on, words)
            if onto:
                there = {
                    words
                    for one, _by in piece.pages
                    if str(one.number) == onto['page']
                    for words in one.words
                }
                back = names.lies_here.format(page=page.number) in there
                row = names.lay_on.partition(' {')[0]
                found.figure(page.number, '', row, onto['page'], onto['page'] if back else '')
        for other, there_by in piece.pages[place + 1 :]:
            _marks(page, by, other, there_by, names, found)
            _laps(page, by, other, there_by, names, found)


def _marks(
    page: PatternPage, by: Spot, other: PatternPage, there: Spot, names: PatternNames, found: Found
) -> None:
    """See that marks of one letter meet."""
    for letter, at in shared(page.marks, other.marks):
        met = other.marks[letter]
        off = hypot(at[0] + by[0] - met[0] - there[0], at[1] + by[1] - met[1] - there[1])
        right = letter if off < MEET_MM else f'{letter}, {off:.1f} mm'
        found.figure(other.number, names.lies_here.format(page=page.number), '', letter, right)


def _laps(
    page: PatternPage, by: Spot, other: PatternPage, there: Spot, names: PatternNames, found: Found
) -> None:
    """See that lines that cross a joint are on both pages, and that the pages have enough in common there."""
    marks = [(at[0] + by[0], at[1] + by[1]) for _letter, at in shared(page.marks, other.marks)]
    row = names.lies_here.format(page=page.number)
    mine = [line.moved(by) for line in page.lines if line.ink in LINES]
    theirs = [line.moved(there) for line in other.lines if line.ink in LINES]
    for joint in (line.moved(by) for line in page.lines if line.ink == JOINT):
        if not any(joint.off(at)[1] < MEET_MM for at in marks):
            continue
        for some, others in ((mine, theirs), (theirs, mine)):
            for line in some:
                at = _cross(line, joint)
                if at is not None and not any(_is_same(line, one, at, joint) for one in others):
                    where = f'{at[0]:.1f}, {at[1]:.1f} mm'
                    found.faults.append(Fault('ink', other.number, row, '', line.words or line.ink, where))


def _is_same(line: Drawn, other: Drawn, at: Spot, joint: Drawn) -> bool:
    """Return whether another page's line is the one that crosses a joint; edges run on over the whole lap."""
    if other.ink != line.ink or not other.long:
        return False
    along, off = other.off(at)
    runs_on = line.ink != EDGE or _reach(other, joint) > LAP_MM / 2 - SHORT_MM
    return off < MEET_MM and -NEAR < along < other.long + NEAR and runs_on


def _cross(line: Drawn, joint: Drawn) -> Spot | None:
    """Return where a line crosses a joint; None where it does not."""
    (x, y), (u, v) = line.start, line.end
    a, b = _side(joint, line.start), _side(joint, line.end)
    if a * b >= 0:
        return None
    share = a / (a - b)
    point = x + (u - x) * share, y + (v - y) * share
    return point if 0 < joint.off(point)[0] < joint.long else None


def _side(joint: Drawn, point: Spot) -> float:
    (x, y), (u, v) = joint.start, joint.end
    return ((u - x) * (point[1] - y) - (v - y) * (point[0] - x)) / joint.long


def _reach(line: Drawn, joint: Drawn) -> float:
    """Return how far a line goes past a joint, square to it, on the side where it goes less."""
    sides = [_side(joint, line.start), _side(joint, line.end)]
    return min(max(sides), -min(sides))
