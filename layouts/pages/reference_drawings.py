"""The drawings of the reference tables with their figures: geometry in, pictures and finished texts out."""

from __future__ import annotations

from fractions import Fraction
from math import atan, degrees

from markupsafe import Markup

from layouts.drawings import svg
from layouts.drawings.bearing import seat_detail, tail_detail
from layouts.drawings.cheek_faces import cheek_faces
from layouts.drawings.corner_plans import polygon_plan, unequal_plan
from layouts.drawings.gable_studs import gable_studs
from layouts.drawings.hip_ends import hip_ends as draw_hip_ends
from layouts.drawings.hip_section import hip_section
from layouts.drawings.plan import PlanLabels, jack_points, shortening_plan
from layouts.drawings.ridge_end import ridge_ends
from layouts.drawings.setting_out import level_and_tape, square_layout
from layouts.drawings.trim_boards import TrimPanel, trim_boards
from layouts.drawings.valley_heel import valley_heel
from layouts.pages.drawn_figures import either, inches, inches_if_any, number, regular, told
from layouts.words.drawings import ENDS, ROOF_DRAWINGS
from layouts.words.say import _
from tablegen.geometry import cheeks as cheek
from tablegen.geometry import ridge as past_ridge
from tablegen.geometry import shortening
from tablegen.geometry.cheeks import Cheek
from tablegen.geometry.corner import square_corner
from tablegen.geometry.pitch import pitch_of_rise
from tablegen.numbers import text
from tablegen.numbers.angles import Angle, tangent_of_degrees
from tablegen.numbers.figure import degree_figure, length_figure, length_rounded_up
from tablegen.numbers.units import INCHES
from tablegen.roof.answer import RegularRoof
from tablegen.roof.question import RoofQuestion

Made = tuple[tuple[Markup, ...], dict[str, str]]
UNEQUAL = Fraction(6), Fraction(INCHES.base)
"""Rises per foot of the corner of two pitches that is drawn."""
POLYGON_SIDES = 8
SPACING_IN = INCHES.spacing
LEVEL_IN = Fraction(24)
REACHES = 50, 60, 70
"""Tilts past a saw's scale, degrees, whose reach is told."""


def set_out(ask: RoofQuestion, found: RegularRoof) -> Made:
    words = ROOF_DRAWINGS['set-out']
    return (square_layout(words, words['title']),), {}


def ridge(ask: RoofQuestion, found: RegularRoof) -> Made:
    words, off = ROOF_DRAWINGS['ridge'], found.shortening
    common, hip, jack = (
        told(one.level) for one in (off.common_at_ridge, off.hip_valley_at_ridge, off.jack_at_hip)
    )
    names = (words['common'], words['hip'], words['jack'])
    labels = PlanLabels(words['title'], names, (common, hip, jack))
    return (shortening_plan(float(ask.ridge_in), float(ask.hip_in), float(ask.rafter_in), labels),), {}


def ridge_end(ask: RoofQuestion, found: RegularRoof) -> Made:
    words, at = ROOF_DRAWINGS['ridge-end'] | ENDS, regular(ask)
    past = (
        past_ridge.end_past_commons(ask.rafter_in),
        past_ridge.end_past_hips(ask.ridge_in, ask.hip_in, at),
    )
    over = [past_ridge.end_over_plane(one, ask.ridge_in, at) for one in past]
    between, on_ridge = (inches(one, ask) for one in past)
    picture = ridge_ends(
        float(ask.ridge_in),
        float(ask.hip_in),
        float(ask.rafter_in),
        words,
        (between, on_ridge),
        words['title'],
    )
    values = {
        'ridge': f'{text.rational(ask.ridge_in)} in',
        'hip': f'{text.rational(ask.hip_in)} in',
        'common': f'{text.rational(ask.rafter_in)} in',
        'clip': inches_if_any(shortening.end_common_clip(ask.rafter_in, ask.ridge_in, at), ask),
        'over_between': inches_if_any(over[0], ask),
        'over_on_ridge': inches(over[1], ask),
    }
    return (picture,), values


def seat(ask: RoofQuestion, found: RegularRoof) -> Made:
    words, mouth = ROOF_DRAWINGS['seat'], found.seat.common
    height = number(mouth.height_above_plate)
    slope = float(ask.pitch.slope)
    picture = seat_detail(slope, float(ask.stock.depth_in), float(ask.seat_in), height, words, words['title'])
    values = {
        'stock': ask.stock.name,
        'seat': told(mouth.seat),
        'heel': told(mouth.heel),
        'notch': told(mouth.notch_depth),
        'left': told(mouth.stock_left),
        'height': told(mouth.height_above_plate),
    }
    return (picture,), values


def hip_seat(ask: RoofQuestion, found: RegularRoof) -> Made:
    words, seats = ROOF_DRAWINGS['hip-seat'], found.seat
    hip, wrong, valley = seats.hip_dropped, seats.hip_by_17_over_12, seats.valley
    at = ask.pitch.corner
    picture = seat_detail(
        float(at.hip_slope),
        float(ask.stock.depth_in),
        number(hip.seat),
        number(hip.height_above_plate),
        words,
        words['title'],
        number(found.drop.plumb),
    )
    values = {
        'hip': f'{text.rational(ask.hip_in)} in',
        'hip_seat': told(hip.seat),
        'hip_heel': told(hip.heel),
        'hip_height': told(hip.height_above_plate),
        'low_dropped': either(
            (_('{length} low'), wrong.low_if_dropped), (_('{length} high'), wrong.high_if_dropped)
        ),
        'low_backed': either(
            (_('{length} low'), wrong.low_if_backed), (_('{length} high'), wrong.high_if_backed)
        ),
        'valley_seat': told(valley.seat),
        'valley_heel': told(valley.heel),
        'valley_out': told(valley.heel_back),
    }
    names = ROOF_DRAWINGS['valley-heel']
    plan = valley_heel(float(ask.hip_in), number(valley.seat), names, names['title'])
    return (picture, plan), values


def tail(ask: RoofQuestion, found: RegularRoof) -> Made:
    words, end = ROOF_DRAWINGS['tail'], found.tail
    height = number(found.seat.common.height_above_plate)
    slope, depth = float(ask.pitch.slope), float(ask.stock.depth_in)
    out, face = float(ask.overhang_in), float(ask.tail_face_in)
    picture = tail_detail(slope, depth, height, out, face, words, words['title'])
    values = {
        'stock': ask.stock.name,
        'out': told(end.overhang),
        'tail': told(end.common_and_jack),
        'fall': told(end.fall),
        'face': told(end.soffit.face),
        'soffit': told(end.soffit.level_cut),
        'below': either(
            (_('{length} below'), end.soffit.below_plate), (_('{length} above'), end.soffit.above_plate)
        ),
    }
    return (picture,), values


def hips(ask: RoofQuestion, found: RegularRoof) -> Made:
    words = ROOF_DRAWINGS['hips']
    bevel, square = found.backing.bevel, told(found.drop.square_to_edge)
    labels = (words['backed'], bevel.text, words['dropped'], square)
    picture = hip_section(float(ask.hip_in), number(bevel), labels, words['title'])
    plumb = told(found.drop.plumb)
    return (picture,), {'hip': f'{text.rational(ask.hip_in)} in', 'plumb': plumb, 'square': square}


def jack_deductions(ask: RoofQuestion, found: RegularRoof) -> Made:
    words = ROOF_DRAWINGS['jacks']
    off = inches(shortening.jack_at_hip(ask.hip_in, regular(ask)), ask)
    labels: dict[str, svg.Words] = {**words, 'off': (words['off'], {'length': off})}
    return (jack_points(float(ask.hip_in), float(ask.rafter_in), labels, words['title']),), {}


def cheeks(ask: RoofQuestion, found: RegularRoof) -> Made:
    return _faces('cheeks', cheek.jack(regular(ask)))


def past_scale(ask: RoofQuestion, found: RegularRoof) -> Made:
    picture, _values = _faces('hip-cheeks', cheek.hip_at_ridge(regular(ask)))
    reach = {
        f'reach_{tilt}': length_rounded_up(
            ask.rafter_in / Angle(tangent_of_degrees(Fraction(tilt))).cosine(), ask.measure
        ).text
        for tilt in REACHES
    }
    return picture, {'thick': text.rational(ask.rafter_in), **reach}


def _faces(words_key: str, cut: Cheek) -> Made:
    words, ends = ROOF_DRAWINGS[words_key], ENDS
    saw, top = degree_figure(cut.saw), degree_figure(cut.top)
    labels = words | {
        'side_angle': saw.text,
        'top_angle': top.text,
        'ridge': ends['ridge'],
        'tail': ends['tail'],
    }
    return (cheek_faces(saw.count / saw.per, top.count / top.per, labels, words['title']),), {}


def hip_ends(ask: RoofQuestion, found: RegularRoof) -> Made:
    words, ends, at = ROOF_DRAWINGS['hip-ends'], ENDS, regular(ask)
    back, cut = shortening.set_back_at_ridge(ask.hip_in, at), cheek.hip_at_ridge(at)
    half = inches(back, ask)
    labels = words | {'ridge': ends['ridge'], 'tail': ends['tail']}
    values = {
        'hip': f'{text.rational(ask.hip_in)} in',
        'half': half,
        'along': inches(shortening.along(back, at.hip_slope), ask),
        'saw': degree_figure(cut.saw).text,
        'top': degree_figure(cut.top).text,
        'figure': length_figure(cut.figure(), ask.measure).text,
    }
    return (draw_hip_ends(labels, half, words['title']),), values


def trim(ask: RoofQuestion, found: RegularRoof) -> Made:
    words = ROOF_DRAWINGS['trim']
    slant = degrees(atan(float(ask.pitch.slope)))
    panels = []
    for key, cut, turn, upper_longer in (
        ('standing_plumb', found.trim.standing_plumb, 90 - slant, False),
        ('square_to_slope', found.trim.square_to_slope, 90.0, True),
        ('in_the_roof_plane', found.trim.in_the_roof_plane, 0.0, False),
    ):
        said = ((words['miter'], {'angle': cut.miter.text}), (words['bevel'], {'angle': cut.bevel.text}))
        panels.append(TrimPanel(words[key], turn, number(cut.miter), upper_longer, said))
    ends = (ENDS['ridge'], ENDS['tail'])
    return (trim_boards(float(ask.pitch.slope), tuple(panels), ends, words['title']),), {}


def gable(ask: RoofQuestion, found: RegularRoof) -> Made:
    words, slope = ROOF_DRAWINGS['gable'], ask.pitch.slope
    difference = length_figure(slope * SPACING_IN, ask.measure).text
    spacing = f'{text.rational(SPACING_IN)} in'
    labels = {
        'difference': f'{difference} in',
        'spacing': spacing,
        'cut': degree_figure(Angle(slope)).text,
        'ridge': ENDS['ridge'],
        'tail': ENDS['tail'],
    }
    picture = gable_studs(float(slope), float(SPACING_IN), labels, words['title'])
    return (picture,), {'spacing': spacing}


def unequal(ask: RoofQuestion, found: RegularRoof) -> Made:
    flat, steep = map(pitch_of_rise, UNEQUAL)
    words = ROOF_DRAWINGS['unequal']
    plan = degree_figure(square_corner(flat.slope, steep.slope).plan_a)
    picture = unequal_plan(plan.count / plan.per, words | {'plan': plan.text}, words['title'])
    return (picture,), {'a': flat.text, 'b': steep.text}


def many_sided(ask: RoofQuestion, found: RegularRoof) -> Made:
    words = ROOF_DRAWINGS['many-sided']
    return (polygon_plan(POLYGON_SIDES, words, words['title']),), {}


def find_pitch(ask: RoofQuestion, found: RegularRoof) -> Made:
    words = ROOF_DRAWINGS['find-pitch']
    gap = length_figure(ask.pitch.slope * LEVEL_IN, ask.measure).text
    labels = {'level': words['level'], 'gap': f'{gap} in', 'pitch': ask.pitch.text} | ENDS
    return (level_and_tape(float(ask.pitch.slope), float(LEVEL_IN), labels, words['title']),), {'gap': gap}


PICTURES = {
    'set_out': set_out,
    'ridge': ridge,
    'ridge_end': ridge_end,
    'seat': seat,
    'hip_seat': hip_seat,
    'tail': tail,
    'hips': hips,
    'jack_deductions': jack_deductions,
    'cheeks': cheeks,
    'hip_ends': hip_ends,
    'past_scale': past_scale,
    'trim': trim,
    'gable': gable,
    'unequal': unequal,
    'many_sided': many_sided,
    'find_pitch': find_pitch,
}
"""What is drawn on each page, by its template's name."""
