"""What every figure of an opening and of a glance should read, by its name."""

from __future__ import annotations

from collections.abc import Iterator
from decimal import ROUND_FLOOR, Decimal
from fractions import Fraction
from functools import cache

from tablegen.proof.digits import FOOT_IN, SLACK, decimals, named, nearest, real, written
from tablegen.proof.roof import DEPTHS, EAVE, IN_A, UP, Corner, arms, both_written, marks
from tablegen.proof.space import level, size, vector
from tablegen.proof.stated import Stated

NOTHING, EXACT_PLACES, SQUARE = '—', 4, 16
"""What stands for no figure; decimals of the exact foot; parts of an inch on a framing square."""
OLD_RUN, STEP_COUNTS, DRIFT_PLACES = 17, (4, 8, 12, 16, 20, 24), 3
"""What old squares take for a hip's run in a foot; counts of steps; decimals of what they add up to."""
COMMON_OVERHANGS, HIP_OVERHANGS = (8, 12, 16, 18, 24), (12, 16, 18, 24)


@cache
def figures(at: Corner, book: Stated) -> dict[str, str]:
    """Return every figure of a pitch but its lengths by run."""
    makers = _holds, _cuts, _off, _mouths, _sided, _apart, _on_a_square
    return dict(one for maker in makers for one in maker(at, book))


def length(at: Corner, kind: str, run: Fraction | int) -> Decimal:
    """Return a length by run: of the common, of hip and valley, or the rise."""
    return at.an_inch[kind] * real(run)


def exactly(value: Decimal) -> str:
    """Return a length to four decimals, with fewer where it has no more."""
    scaled = value * 10**EXACT_PLACES
    whole = (scaled + Decimal('0.5')).to_integral_value(ROUND_FLOOR)
    told = decimals(value, EXACT_PLACES)
    return told.rstrip('0').rstrip('.') if abs(scaled - whole) < SLACK else told


def _two(name: str, pair: tuple[Decimal, Decimal], per: int) -> Iterator[tuple[str, str]]:
    yield from zip((f'{name}-level', f'{name}-along'), both_written(pair, per), strict=True)


def _holds(at: Corner, book: Stated) -> Iterator[tuple[str, str]]:
    up = at.rise(FOOT_IN)
    yield 'step', f'{written(FOOT_IN / (up / arms(Decimal(FOOT_IN), up)[1]), SQUARE)} in'
    for name, run in (('common', Decimal(FOOT_IN)), ('hip', size(level(at.hip_at(Decimal(FOOT_IN)))))):
        body, tongue = arms(run, up)
        yield f'{name}-body', written(body, SQUARE)
        yield f'{name}-tongue', written(tongue, SQUARE)
    for name in ('common', 'hip', 'rise'):
        yield f'{name}-exact-foot', exactly(length(at, name, FOOT_IN))
        yield f'{name}-per-foot', decimals(length(at, name, FOOT_IN), 3)
        yield f'{name}-per-foot-part', written(length(at, name, FOOT_IN), book.per)
        yield f'{name}-tail-per-foot', written(length(at, name, FOOT_IN), book.per)


def _cuts(at: Corner, book: Stated) -> Iterator[tuple[str, str]]:
    common = vector(0, 1, at.slope)
    for name, edge, ahead in (('common', common, IN_A), ('hip', at.hip, level(at.hip))):
        yield f'{name}-plumb-cut', _degrees(at.cut(edge, UP))
        yield f'{name}-level-cut', _degrees(at.cut(edge, ahead))
    cheeks = (('jack', common, at.a, at.center.normal), ('hip', at.hip, at.top, IN_A))
    for name, edge, top, face in cheeks:
        yield f'{name}-cheek-top', _degrees(at.cheek(edge, top, face))
        yield f'{name}-cheek-side', _degrees(at.cut(edge, UP))
        yield f'{name}-cheek-blade', _degrees(at.blade(edge, face))
        against = written(at.against_12(edge, top, face), book.per)
        yield f'{name}-cheek-top-12-and', against
        yield f'{name}-cheek-top-held', f'{FOOT_IN} & {against}'
    yield 'hip-backing', _degrees(at.backing())


def _off(at: Corner, book: Stated) -> Iterator[tuple[str, str]]:
    boards = at.boards
    yield from _two('common-at-ridge', at.common_off(boards.ridge), book.per)
    yield from _two('common-at-ledger', at.common_less(boards.rafter), book.per)
    yield from _two('hip-at-ridge', at.hip_off(boards.ridge), book.per)
    yield from _two('hip-between-commons', at.hip_off(boards.rafter), book.per)
    yield from _two('jack-at-hip', at.jack_off(boards.hip), book.per)
    yield 'hip-drop', written(at.drop(boards.hip), book.per)


def _mouths(at: Corner, book: Stated) -> Iterator[tuple[str, str]]:
    boards, per = at.boards, book.per
    for sold, depth in DEPTHS.items():
        height, notch = at.common_mouth(sold)
        tabled = boards.seat <= depth and 2 * notch <= real(depth) + SLACK
        yield f'height-{sold}', written(height, per) + marks(depth, notch) if tabled else NOTHING
    yield 'heel', written(at.common_heel(), per)
    depth = DEPTHS[boards.rafters]
    height, notch = at.common_mouth(boards.rafters)
    whole = notch < real(depth) - SLACK
    left = real(depth) - notch
    own = {'height': height, 'heel': at.common_heel(), 'notch': notch, 'left': left}
    for name, value in own.items():
        sign = marks(depth, notch) if name == 'left' else ''
        yield f'common-{name}', written(value, per) + sign if whole else NOTHING
    out = at.valley_out()
    members = (
        ('dropped-hip', boards.hips, at.drop(boards.hip), Decimal(0)),
        ('valley', boards.valleys, Decimal(0), out),
    )
    for name, stock, down, back in members:
        height, heel, seat, notch = at.hip_mouth(stock, down, back)
        there, depth = heel > SLACK and notch < real(DEPTHS[stock]) - SLACK and whole, DEPTHS[stock]
        yield f'{name}-height', written(height, per) if there else NOTHING
        yield f'{name}-heel', written(heel, per) if there else NOTHING
        yield f'{name}-seat', written(seat, per) if there else NOTHING
        sign = marks(depth, notch)
        yield f'{name}-height-marked', written(height, per) + sign if there else NOTHING
        yield f'{name}-left', written(real(depth) - notch, per) + sign if there else NOTHING
    yield 'valley-heel-out', written(out, per)


def _sided(at: Corner, book: Stated) -> Iterator[tuple[str, str]]:
    """Yield how far the two sides of a cheek are apart, and how far one is from the center, along the board."""
    sides = at.sides_of_hip(at.boards.hip)
    yield from _two('hip-points', sides, book.per)
    yield from _two('hip-set-back', (sides[0] / 2, sides[1] / 2), book.per)
    yield from _two('jack-points', at.sides_of_jack(), book.per)


def _apart(at: Corner, book: Stated) -> Iterator[tuple[str, str]]:
    for spacing in book.spacings:
        yield f'jacks-{named(spacing)}', written(at.jack_difference(spacing), book.per)
    for out in COMMON_OVERHANGS:
        yield f'tail-{out}', written(at.common_length(out), book.per)
    for out in HIP_OVERHANGS:
        yield f'hip-tail-{out}', written(at.hip_length(out), book.per)
        yield f'overhang-{out}', str(out)


def _on_a_square(at: Corner, book: Stated) -> Iterator[tuple[str, str]]:
    """Yield what a square should carry under a rise, and what steps of rounded length add up to."""
    up, common = at.rise(FOOT_IN), vector(0, 1, at.slope)
    lengths = {
        'common': at.common_length(FOOT_IN),
        'hip': at.hip_length(FOOT_IN),
        'by-17': (OLD_RUN**2 + up * up).sqrt(),
        **{f'jacks-{apart}': at.jack_difference(Fraction(apart)) for apart in (16, 24)},
    }
    for name, value in lengths.items():
        yield f'square-{name}', decimals(value, 2)
    yield 'square-jack', written(at.against_12(common, at.a, at.center.normal), SQUARE)
    yield 'square-hip-cheek', written(at.against_12(at.hip, at.top, EAVE), SQUARE)
    step = at.step_length(arms(Decimal(FOOT_IN), up)[0])
    rounded = Decimal(nearest(step, book.per)) / book.per
    yield 'drift-step', written(step, book.per)
    for count in STEP_COUNTS:
        off = (rounded - step) * count
        told = f'{"−+"[off > 0]}{decimals(abs(off), DRIFT_PLACES)}'
        yield f'drift-{count}', told if nearest(abs(off), 10**DRIFT_PLACES) else '0'


def _degrees(value: Decimal) -> str:
    return f'{decimals(value, 2)}°'
