"""What `find` tells of cheeks, on the top edge and on the side."""

from __future__ import annotations

from fifty_digits import mp
from oracle import cuts, framing_square, hip_ends, sawn
from oracle.rounding import part
from oracle.sawn import CENTER, LEFT, RIGHT

from labels.told import HIP, OVERHANG, RAFTER, RIDGE, VALLEY, Told, inches, inside, level_and_along, turns


def cheek(top, side, blade, prefix: str = 'top') -> Told:
    """Return a cheek on the top edge and on the side."""
    figure = framing_square.figure_against_12(top)
    held = framing_square.fitted(12, figure)
    told = turns(**{f'{prefix}_from_square': top})
    told |= inches(**{f'{prefix}_figure_on_12': figure})
    told |= {
        f'{prefix}_held': ' & '.join(map(part, held)),
    }
    if side is not None:
        told |= {
            **turns(side_plumb=side, side_blade_tilt=blade),
            'within_saw_scale': not cuts.is_past_scale(blade),
        }
    return told


def past_scale(blade, reach) -> Told:
    """Return how a cheek is cut from a squared end, where its blade's tilt is past a saw's scale."""
    if not cuts.is_past_scale(blade):
        return {}
    return {**turns(end_blade_tilt=mp.pi / 2 - blade), **inches(blade_reach=reach)}


def of_jack(at) -> Told:
    """Return the cheek of a jack of A."""
    blade, (_, long, short) = cuts.jack_blade(at), sawn.hip_jack(at, 61, HIP, RAFTER)
    return {
        **cheek(cuts.jack_cheek(at), cuts.jack_saw(at), blade),
        **past_scale(blade, hip_ends.jack_reach(at, RAFTER)),
        **level_and_along(long_to_short_point=(hip_ends.jack_points_level(at, RAFTER), long - short)),
    }


def of_hip(at, thickness, sides, cut, common: bool = False) -> Told:
    """Return the cheek of a hip or valley against a plumb face: of a ridge over A, A's fascia, or a common of A."""
    top = cuts.hip_cheek_at_common(at) if common else cuts.hip_cheek(at)
    blade = cuts.hip_blade_at_common(at) if common else cuts.hip_blade(at)
    name = 'point_to_side' if CENTER in sides else 'long_to_short_point'
    return {
        **cheek(top, cuts.hip_saw(at), blade),
        **past_scale(blade, sawn.reach(at, thickness, sides, cut)),
        **level_and_along(**{name: sawn.cheek(at, thickness, sides, cut)}),
    }


def cheeks(at, run) -> Told:
    """Return the cheeks of side A of a corner."""
    ridge, common, fascia = (
        sawn.ridge_face(at, run, RIDGE), sawn.common_face(at, run, RAFTER), sawn.fascia(at, OVERHANG),
    )  # fmt: skip
    both = (LEFT, RIGHT)
    backed = {
        **cheek(cuts.backed_cheek_at_ridge(at), None, None, 'at_ridge_top'),
        **cheek(cuts.backed_cheek_at_common(at), None, None, 'at_common_top'),
    }
    return {
        **inside('jack', of_jack(at)),
        **inside('hip_at_ridge', of_hip(at, HIP, both, ridge)),
        **inside('valley_at_ridge', of_hip(at, VALLEY, both, ridge)),
        **inside('hip_between_commons', of_hip(at, HIP, (CENTER, RIGHT), common, common=True)),
        **inside('valley_between_ridges', of_hip(at, VALLEY, (CENTER, LEFT), ridge)),
        **inside('hip_tail', of_hip(at, HIP, (CENTER, RIGHT), fascia)),
        **inside('valley_tail', of_hip(at, VALLEY, (CENTER, LEFT), fascia)),
        **inside('backed_hip', backed),
    }
