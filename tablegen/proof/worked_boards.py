"""The boards of the worked examples, each in its place between planes, from what a page says of the roof."""

from __future__ import annotations

from collections.abc import Mapping
from decimal import Decimal
from fractions import Fraction

from msgspec.structs import replace

from tablegen.proof.digits import real
from tablegen.proof.roof import DEPTHS, EAVE, IN_A, Boards, Corner
from tablegen.proof.space import Plane, Vector, meet, plane, vector
from tablegen.proof.timber import End, Timber

Given = Mapping[str, Fraction]
"""Runs, overhang and thicknesses, in."""
ZERO, MIDDLE = Decimal(0), Plane(EAVE, Decimal(0))
FOOT = vector(0, 0, 0)
COMMONS = 'commons'


def rafter(slope: Decimal, given: Given, boards: Boards) -> Timber:
    """Return a common, from a ridge's face down to its tail; one on a ledger, from the ledger's face."""
    run, out = real(given['run']), real(given['overhang'])
    off = real(given['ledger']) if 'ledger' in given else real(boards.ridge) / 2
    head, tail = End((Plane(IN_A, run - off),)), End((Plane(IN_A, -out),))
    return Timber(
        FOOT, vector(0, 1, slope), boards.rafter, DEPTHS[boards.rafters], head, tail, Plane(IN_A, run)
    )


def between(slope: Decimal, run: Decimal, offs: tuple[Decimal, Decimal], boards: Boards) -> Timber:
    """Return a rafter from one center line down to another, cut so far from both."""
    head, tail = End((Plane(IN_A, run - offs[0]),)), End((Plane(IN_A, offs[1]),))
    return Timber(
        FOOT, vector(0, 1, slope), boards.rafter, DEPTHS[boards.rafters], head, tail, Plane(IN_A, run)
    )


def hip(at: Corner, given: Given, stop: str) -> Timber:
    """Return a hip against the ridge, with one cheek, or between the last side common and the end common."""
    run, out, boards = real(given['run']), real(given['overhang']), at.boards
    half = real(boards.rafter) / 2
    faces = (
        (Plane(IN_A, run - half), Plane(EAVE, run - half))
        if stop == COMMONS
        else (Plane(IN_A, run - real(boards.ridge) / 2),)
    )
    tail = End((Plane(IN_A, -out), Plane(EAVE, -out)))
    return Timber(FOOT, at.hip, boards.hip, DEPTHS[boards.hips], End(faces), tail, Plane(IN_A, run))


def valley(at: Corner, given: Given) -> Timber:
    """Return a valley, from the corner of two ridges down to both fascias."""
    run, out, boards = real(given['run']), real(given['overhang']), at.boards
    face = run - real(boards.ridge) / 2
    head = End((Plane(IN_A, face), Plane(EAVE, face)))
    tail = End((Plane(IN_A, -out), Plane(EAVE, -out)), hollow=True)
    made = Timber(FOOT, at.hip, boards.hip, DEPTHS[boards.valleys], head, tail, Plane(IN_A, run))
    return replace(made, out=at.valley_out())


def jack(at: Corner, station: Fraction, overhang: Fraction) -> Timber:
    """Return a jack so far from the corner, up to the near face of the hip."""
    boards = at.boards
    foot: Vector = (real(station), ZERO, ZERO)
    head = End((at.center.moved(-real(boards.hip) / 2),))
    tail = End((Plane(IN_A, -real(overhang)),))
    return Timber(foot, vector(0, 1, at.slope), boards.rafter, DEPTHS[boards.rafters], head, tail, at.center)


def ridge_past(at: Corner, stop: str) -> Decimal:
    """Return how far a ridge runs past the point where the center lines meet: to the outer face of the side common, or to
    where the whole of a hip's one cheek bears on it.
    """
    if stop == COMMONS:
        return real(at.boards.rafter) / 2
    face = Plane(IN_A, -real(at.boards.ridge) / 2)
    sides = [at.center.moved(sign * real(at.boards.hip) / 2) for sign in (1, -1)]
    return max(-meet(side, face, at.across(ZERO)._replace(normal=vector(0, 0, 1)))[0] for side in sides)


def stands_over(at: Corner, past: Decimal) -> Decimal:
    """Return how far a ridge's square top, its edges in the roofs, stands over the end's plane where it ends."""
    run = Decimal(100)
    edge = at.common_at(run - real(at.boards.ridge) / 2)
    under = at.common_at(run - past)
    return max(edge[2] - under[2], ZERO)


def least_depth(at: Corner, drop: Decimal, out: Decimal) -> Decimal:
    """Return how deep a hip or valley must be that just reaches the plate at its heel, square to its edge."""
    over = vector(0, 0, at.common_mouth(at.boards.rafters)[0] - drop)
    away = at.station.normal
    heel = (-out * away[0], -out * away[1], ZERO)
    top = plane(at.top.normal, over)
    return top.offset - sum((a * b for a, b in zip(top.normal, heel, strict=True)), ZERO)
