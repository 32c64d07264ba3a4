"""find: the lengths and cuts of one run at one pitch, for a person or for a program."""

from __future__ import annotations

import json

from layouts.verbs import options
from layouts.verbs.columns import LEFT, MIXED, RIGHT, columns
from tablegen import findings
from tablegen.errors import BookError
from tablegen.findings import Cut, Finding, Length
from tablegen.lengths import ALLOWED, length
from tablegen.pitch import pitch
from tablegen.settings import Settings

FORMATS = ('text', 'json')
PLACES = {'text': findings.Places(length=6, degree=3), 'json': findings.Places(length=9, degree=9)}
NOTES = """\
PITCH is 6, 6/12, 6 in 12, 6:12, 7.5, 7 1/2 or 26.565 deg. RUN is the level run
of the common rafter: 4 ft, 4' 7 1/2", 55.5 in, 55 1/2 (inches), 1.4 m. Put
quotes round what has spaces."""
EXAMPLES = (
    'rafterbook find 6 "4 ft"',
    'rafterbook find "7 1/2" "13 ft 5 in" --nearest 1/8 --spacing "16 in"',
    'rafterbook find 6 "4 ft" --format json',
)
DROP_FROM = 'lowered plumb, so that the edges of an unbacked hip meet the roof planes'
FOOT = """\
Lengths run along the member, before anything is taken off for the thickness of
ridge or hip. Rounding is the measure less the exact length, in inches; a half
goes up. Held: one figure on each arm of the square, at the board's edge; mark
along the arm of the last. Geometry is not strength: local code and a licensed
designer decide."""


def add(subparsers) -> None:
    """Declare the verb."""
    parser = options.add_verb(
        subparsers, 'find', 'look up the lengths and cuts of one run at one pitch', run, EXAMPLES, NOTES
    )
    parser.add_argument('pitch', metavar='PITCH', help='rise of the roof')
    parser.add_argument('level_run', metavar='RUN', help='level run, outside of plate to centre of ridge')
    parser.add_argument('--format', metavar='FORMAT', default='text', help='text (default) or json')
    options.add_reading(parser)
    parser.add_argument(
        '--spacing', metavar='LENGTH', action='append', help='a spacing of jacks; give it once for each'
    )
    parser.add_argument(
        '--hip-thickness', metavar='LENGTH', help='for the drop of the hip (default 1 1/2 in)'
    )
    options.add_steep(parser)


def run(args, out, err) -> int:
    """Print what is known of the run."""
    form = options.choice(args.format, '--format', FORMATS)
    settings = options.with_reading(Settings(), args)
    if args.spacing:
        settings = options.changed(settings, 'jacks.spacings', args.spacing, '--spacing')
    if args.hip_thickness is not None:
        settings = options.changed(settings, 'stock.hip', args.hip_thickness, '--hip-thickness')
    roof = pitch(args.pitch, 'PITCH', settings.steep)
    run_in = length(args.level_run, 'RUN')
    if not run_in:
        raise BookError('RUN', f"'{args.level_run}' is 0, and a run of 0 has no rafter", ALLOWED)
    found = findings.find(roof, run_in, settings, PLACES[form])
    out.write(as_json(found) if form == 'json' else as_text(found))
    return 0


def as_text(found: Finding) -> str:
    """Return a finding for a terminal 80 columns wide."""
    roof = found.pitch.text
    if found.pitch.rise_in is None:
        roof += f' ({found.rise_per_foot.text} in 12)'
    asked = f'{roof}, run {found.run.text}, to the nearest {found.part_text} in'
    blocks = [[asked], lengths_block(found), cuts_block(found), FOOT.split('\n')]
    return '\n\n'.join('\n'.join(block) for block in blocks) + '\n'


def lengths_block(found: Finding) -> list[str]:
    """Return the lines of the lengths, each saying from where to where it runs."""
    named = [
        ('common, plate line to ridge centre', found.common),
        ('hip/valley, plate corner to ridge centre', found.hip_valley),
        ('rise, plumb, plate line to ridge centre', found.rise),
    ]
    named += [
        (f'jack difference, {jack.spacing.text} on centre', jack.difference)
        for jack in found.jack_differences
    ]
    named += [(f'hip drop, plumb, hip {found.hip_thickness.text} thick', found.hip_drop)]
    rows = [(name, told.part.text, told.inches.text, _signed(told)) for name, told in named]
    return columns([('Lengths', 'measure', 'exact in', 'rounding'), *rows], (LEFT, MIXED, RIGHT, RIGHT))


def cuts_block(found: Finding) -> list[str]:
    """Return the lines of the cuts, each group saying from which line on which face it is measured."""
    return columns(
        [
            ('Cuts, from square across the side', 'degrees', 'held, marked by the last'),
            _cut('common, plumb cut', found.plumb_cut),
            _cut('common, level cut', found.level_cut),
            _cut('hip/valley, plumb cut', found.hip_plumb_cut),
            _cut('hip/valley, level cut', found.hip_level_cut),
            ('Cuts, from square across the top face',),
            _cut('jack, side cut', found.jack_side_cut),
            _cut('hip, side cut, top not backed', found.hip_side_cut),
            ('Bevel, from the square top, seen from the end',),
            ('hip, backing of each side', found.backing_bevel.text, ''),
        ],
        (LEFT, RIGHT, LEFT),
    )


def as_json(found: Finding) -> str:
    """Return a finding as one JSON object, every number a decimal string."""
    return (
        json.dumps(
            {
                'pitch': found.pitch.text,
                'rise_per_foot': findings.plain(found.rise_per_foot),
                'run': {'inches': findings.plain(found.run.inches), 'text': found.run.text},
                'nearest': found.part_text,
                'lengths': lengths_object(found),
                'degrees': degrees_object(found),
                'drop': drop_object(found),
            },
            indent=2,
        )
        + '\n'
    )


def lengths_object(found: Finding) -> dict:
    """Return the lengths in inches, in decimals and as text."""
    return {
        'rise': length_object(found.rise),
        'common': length_object(found.common),
        'hip_valley': length_object(found.hip_valley),
        'jack_difference': {
            jack.spacing.text: length_object(jack.difference) for jack in found.jack_differences
        },
    }


def length_object(told: Length) -> dict:
    """Return one length in inches, in decimals and as text."""
    return {'inches': findings.plain(told.inches), 'text': told.part.text}


def degrees_object(found: Finding) -> dict:
    """Return the angles in degrees."""
    cuts = {
        'plumb_cut': found.plumb_cut.degrees,
        'level_cut': found.level_cut.degrees,
        'hip_plumb_cut': found.hip_plumb_cut.degrees,
        'hip_level_cut': found.hip_level_cut.degrees,
        'jack_side_cut_from_square': found.jack_side_cut.degrees,
        'hip_side_cut_from_square': found.hip_side_cut.degrees,
        'backing_bevel': found.backing_bevel,
    }
    return {name: findings.plain(figure) for name, figure in cuts.items()}


def drop_object(found: Finding) -> dict:
    """Return how far an unbacked hip is lowered."""
    return {
        'hip_thickness_inches': findings.plain(found.hip_thickness.inches),
        'plumb_inches': findings.plain(found.hip_drop.inches),
        'plumb_text': found.hip_drop.part.text,
        'from': DROP_FROM,
    }


def _signed(told: Length) -> str:
    """Return what rounding has added, with its sign; a length that lost nothing says so."""
    if not told.left.count:
        return 'none'
    return f'+{told.left.text}' if told.left.count > 0 else told.left.text


def _cut(name: str, cut: Cut) -> tuple[str, str, str]:
    return name, cut.degrees.text, f'{cut.other.text} and {cut.mark.text}'
