"""The drawings of the reference tables with their figures: geometry in, pictures and finished texts out."""

from __future__ import annotations

from fractions import Fraction

from markupsafe import Markup

from layouts.drawings.bearing import seat_detail, tail_detail
from layouts.drawings.cheek_faces import cheek_faces
from layouts.drawings.corner_plans import polygon_plan, unequal_plan
from layouts.drawings.gable_studs import gable_studs
from layouts.drawings.hip_section import hip_section
from layouts.drawings.plan import PlanLabels, jack_points, shortening_plan
from layouts.drawings.setting_out import level_and_tape, square_layout
from layouts.drawings.trim_boards import TrimPanel, trim_boards
from layouts.drawings.valley_heel import valley_heel
from layouts.reading_words import group_of, pick
from layouts.words import WORDS
from tablegen import text
from tablegen.exact import Exact
from tablegen.figures import degree_figure, length_figure
from tablegen.findings.roof import RoofQuestion
from tablegen.geometry.corner import square_corner
from tablegen.pitch import pitch_of_rise
from tablegen.readings import Group, Reading

Found = dict[str, Group]
Made = tuple[tuple[Markup, ...], dict[str, str]]
UNEQUAL = Fraction(6), Fraction(12)
"""Rises per foot of the corner of two pitches that is drawn."""
POLYGON_SIDES = 8
SPACING_IN = Fraction(16)
LEVEL_IN = Fraction(24)


def set_out(ask: RoofQuestion, found: Found) -> Made:
    words = WORDS['roof_drawings']['set-out']
    return (square_layout(words, words['title']),), {}


def ridge(ask: RoofQuestion, found: Found) -> Made:
    words, off = WORDS['roof_drawings']['ridge'], found['shortening']
    keys = ('common_at_ridge', 'hip_valley_at_ridge', 'jack_at_hip')
    figures = tuple(pick(off, f'{key}_level_in').text for key in keys)
    names = tuple(words[name] for name in ('common', 'hip', 'jack'))
    labels = PlanLabels(words['title'], names, figures)
    return (shortening_plan(float(ask.ridge_in), float(ask.hip_in), float(ask.rafter_in), labels),), {}


def seat(ask: RoofQuestion, found: Found) -> Made:
    words, told = WORDS['roof_drawings']['seat'], group_of(found['seat'], 'common')
    height = _number(pick(told, 'height_above_plate_in'))
    slope = float(ask.pitch.slope)
    picture = seat_detail(slope, float(ask.stock.depth_in), float(ask.seat_in), height, words, words['title'])
    values = {
        'stock': ask.stock.name,
        'seat': pick(told, 'seat_in').text,
        'heel': pick(told, 'heel_in').text,
        'notch': pick(told, 'notch_depth_in').text,
        'left': pick(told, 'stock_left_in').text,
        'height': pick(told, 'height_above_plate_in').text,
    }
    return (picture,), values


def hip_seat(ask: RoofQuestion, found: Found) -> Made:
    words, told = WORDS['roof_drawings']['hip-seat'], found['seat']
    hip, wrong = group_of(told, 'hip_dropped'), group_of(told, 'hip_by_17_over_12')
    valley = group_of(told, 'valley')
    at = square_corner(ask.pitch.slope, ask.pitch.slope)
    picture = seat_detail(
        float(at.hip_slope),
        float(ask.stock.depth_in),
        _number(pick(hip, 'seat_in')),
        _number(pick(hip, 'height_above_plate_in')),
        words,
        words['title'],
        _number(pick(found['drop'], 'plumb_in')),
    )
    values = {
        'hip': f'{text.rational(ask.hip_in)} in',
        'hip_seat': pick(hip, 'seat_in').text,
        'hip_heel': pick(hip, 'heel_in').text,
        'hip_height': pick(hip, 'height_above_plate_in').text,
        'low_dropped': _way(wrong, 'low_if_dropped', 'high_if_dropped'),
        'low_backed': _way(wrong, 'low_if_backed', 'high_if_backed'),
        'valley_seat': pick(valley, 'seat_in').text,
        'valley_heel': pick(valley, 'heel_in').text,
        'valley_out': pick(valley, 'heel_back_in').text,
    }
    names = WORDS['roof_drawings']['valley-heel']
    plan = valley_heel(float(ask.hip_in), _number(pick(valley, 'seat_in')), names, names['title'])
    return (picture, plan), values


def tail(ask: RoofQuestion, found: Found) -> Made:
    words, told = WORDS['roof_drawings']['tail'], found['tail']
    height = _number(pick(found['seat'], 'common', 'height_above_plate_in'))
    sizes = (ask.pitch.slope, ask.stock.depth_in, height, ask.overhang_in, ask.tail_face_in)
    picture = tail_detail(*map(float, sizes), words, words['title'])
    soffit = group_of(told, 'soffit')
    values = {
        'stock': ask.stock.name,
        'out': pick(told, 'overhang_in').text,
        'tail': pick(told, 'common_and_jack_in').text,
        'fall': pick(told, 'fall_in').text,
        'face': pick(soffit, 'face_in').text,
        'soffit': pick(soffit, 'level_cut_in').text,
        'below': _way(soffit, 'below_plate', 'above_plate'),
    }
    return (picture,), values


def hips(ask: RoofQuestion, found: Found) -> Made:
    words = WORDS['roof_drawings']['hips']
    bevel, square = pick(found['backing'], 'bevel_deg'), pick(found['drop'], 'square_to_edge_in')
    labels = (words['backed'], bevel.text, words['dropped'], square.text)
    picture = hip_section(float(ask.hip_in), _number(bevel), labels, words['title'])
    plumb = pick(found['drop'], 'plumb_in').text
    return (picture,), {'hip': f'{text.rational(ask.hip_in)} in', 'plumb': plumb, 'square': square.text}


def jack_deductions(ask: RoofQuestion, found: Found) -> Made:
    words = WORDS['roof_drawings']['jacks']
    off = pick(found['shortening'], 'jack_at_hip_level_in').text
    labels = (words['long'], words['short'], f'{words["off"]} {off}', words['hip'], words['corner'])
    return (jack_points(float(ask.hip_in), float(ask.rafter_in), labels, words['title']),), {}


def cheeks(ask: RoofQuestion, found: Found) -> Made:
    words, jack = WORDS['roof_drawings']['cheeks'], group_of(found['cheek'], 'jack')
    saw, top = pick(jack, 'side_plumb_deg'), pick(jack, 'top_from_square_deg')
    labels = (top.text, saw.text, words['top'], words['side'])
    return (cheek_faces(_number(saw), _number(top), labels, words['title']),), {}


def past_scale(ask: RoofQuestion, found: Found) -> Made:
    words, hip = WORDS['roof_drawings']['hip-cheeks'], group_of(found['cheek'], 'hip_at_ridge')
    saw, top = pick(hip, 'side_plumb_deg'), pick(hip, 'top_from_square_deg')
    labels = (top.text, saw.text, words['top'], words['side'])
    return (cheek_faces(_number(saw), _number(top), labels, words['title']),), {}


def trim(ask: RoofQuestion, found: Found) -> Made:
    words = WORDS['roof_drawings']['trim']
    slant = _number(pick(found['cut'], 'common_plumb_deg'))
    panels = []
    for key, turn in (('standing_plumb', 90 - slant), ('square_to_slope', 90.0), ('in_the_roof_plane', 0.0)):
        cut = group_of(found['trim'], key)
        miter, bevel = pick(cut, 'miter_deg'), pick(cut, 'bevel_deg')
        said = (f'{words["miter"]} {miter.text}', f'{words["bevel"]} {bevel.text}')
        panels.append(TrimPanel(words[key], turn, _number(miter), said))
    return (trim_boards(float(ask.pitch.slope), tuple(panels), words['title']),), {}


def gable(ask: RoofQuestion, found: Found) -> Made:
    words, slope = WORDS['roof_drawings']['gable'], ask.pitch.slope
    difference = length_figure(slope * SPACING_IN, ask.measure).text
    spacing = f'{text.rational(SPACING_IN)} in'
    cut = pick(found['gable_stud'], 'top_cut_deg').text
    picture = gable_studs(float(slope), float(SPACING_IN), (f'{difference} in', spacing, cut), words['title'])
    return (picture,), {'spacing': spacing}


def unequal(ask: RoofQuestion, found: Found) -> Made:
    flat, steep = map(pitch_of_rise, UNEQUAL)
    words = WORDS['roof_drawings']['unequal']
    plan = degree_figure(square_corner(flat.slope, steep.slope).plan_a)
    picture = unequal_plan(plan.count / plan.per, words | {'plan': plan.text}, words['title'])
    return (picture,), {'a': flat.text, 'b': steep.text}


def many_sided(ask: RoofQuestion, found: Found) -> Made:
    words = WORDS['roof_drawings']['many-sided']
    return (polygon_plan(POLYGON_SIDES, words, words['title']),), {}


def find_pitch(ask: RoofQuestion, found: Found) -> Made:
    words = WORDS['roof_drawings']['find-pitch']
    gap = length_figure(ask.pitch.slope * LEVEL_IN, ask.measure).text
    labels = {'level': words['level'], 'gap': f'{gap} in', 'pitch': ask.pitch.text}
    return (level_and_tape(float(ask.pitch.slope), float(LEVEL_IN), labels, words['title']),), {'gap': gap}


def _way(group: Group, *keys: str) -> str:
    """Return the one of some lengths that a group has, with its way, which its name begins with: '3/8 in low'."""
    (reading,) = [value for value in group.values if value.key in [f'{key}_in' for key in keys]]
    assert isinstance(reading, Reading)
    return f'{reading.text} {reading.key.partition("_")[0]}'


def _number(reading: Reading | Exact) -> float:
    return float(reading.data)


PICTURES = {
    'set_out': set_out,
    'ridge': ridge,
    'seat': seat,
    'hip_seat': hip_seat,
    'tail': tail,
    'hips': hips,
    'jack_deductions': jack_deductions,
    'cheeks': cheeks,
    'past_scale': past_scale,
    'trim': trim,
    'gable': gable,
    'unequal': unequal,
    'many_sided': many_sided,
    'find_pitch': find_pitch,
}
"""What is drawn on each page, by its template's name."""
