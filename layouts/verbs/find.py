"""find: the lengths, cuts and deductions of one run at one pitch, for a person or for a program."""

from __future__ import annotations

from fractions import Fraction

from layouts.find_data import as_json
from layouts.find_words import as_text, asked, listed, many_sides_text, two_pitches_text
from layouts.verbs import options
from layouts.verbs.options import FORMATS
from tablegen import findings, text
from tablegen.errors import BookError, meant
from tablegen.findings_corner import SQUARE_DEGREES, many_sides, two_pitches
from tablegen.findings_roof import RoofQuestion, caution_of, roof_findings
from tablegen.lumber import stock
from tablegen.pitch import Pitch
from tablegen.settings import Settings
from tablegen.written.degrees import degrees
from tablegen.written.lengths import ALLOWED, length
from tablegen.written.pitches import pitch

PLACES = {'text': findings.Places(length=6, degree=3), 'json': findings.Places(length=9, degree=9)}
GROUPS = ('shortening', 'seat', 'tail', 'cheek', 'backing', 'drop', 'trim', 'ridge', 'gable-stud', 'area')
"""What --show may name: keys of the findings of a roof."""
NOTES = """\
PITCH is 6, 6/12, 6 in 12, 6:12, 7.5, 7 1/2 or 26.565 deg. RUN is the level run
of the common rafter: 4 ft, 4' 7 1/2", 55.5 in, 55 1/2 (inches), 1.4 m. Put
quotes round what has spaces. --with and --corner answer for a corner of two
pitches, RUN being that of PITCH's side; --sides for a many-sided roof, RUN from
the middle of the plan to the middle of a side. JSON carries everything."""
EXAMPLES = (
    'rafterbook find 6 "4 ft"',
    'rafterbook find "7 1/2" "13 ft 5 in" --nearest 1/8 --spacing "16 in"',
    'rafterbook find 8 "10 ft" --stock 2x10 --seat "5 1/2" --show seat,tail',
    'rafterbook find 8 "10 ft" --with 12',
    'rafterbook find 8 "10 ft" --sides 8 --all',
    'rafterbook find 8 "10 ft" --format json',
)
PLACE_OF = {
    'seat': '--seat',
    'overhang': '--overhang',
    'plate length': '--plate-length',
    'sides': '--sides',
}
"""Which option a finding complains of."""


def add(subparsers) -> None:
    """Declare the verb."""
    parser = options.add_verb(
        subparsers, 'find', 'look up the lengths and cuts of one run at one pitch', run, EXAMPLES, NOTES
    )
    parser.add_argument('pitch', metavar='PITCH', help='rise of the roof')
    parser.add_argument('level_run', metavar='RUN', help='level run, outside of plate to center of ridge')
    parser.add_argument('--format', metavar='FORMAT', default='text', help='text (default) or json')
    parser.add_argument('--all', action='store_true', help='every value, each with its line')
    parser.add_argument('--show', metavar='NAMES', action='append', help=f'these only: {", ".join(GROUPS)}')
    options.add_reading(parser)
    parser.add_argument(
        '--spacing', metavar='LENGTH', action='append', help='a spacing of jacks; give it once for each'
    )
    parser.add_argument('--stock', metavar='SIZE', help='of rafters and hips: 2x4 to 2x12 (default 2x8)')
    parser.add_argument('--seat', metavar='LENGTH', help="level seat of the bird's mouth (default 3 1/2 in)")
    parser.add_argument('--overhang', metavar='LENGTH', help='of the tail, level (default 12 in)')
    parser.add_argument(
        '--plate-length', metavar='LENGTH', help='of a hip roof, outside to outside, for its ridge'
    )
    for part in ('ridge', 'hip', 'rafter'):
        parser.add_argument(f'--{part}-thickness', metavar='LENGTH', help=f'of the {part} (default 1 1/2 in)')
    parser.add_argument('--with', metavar='PITCH', dest='other', help="the other side's pitch at a corner")
    parser.add_argument('--corner', metavar='DEGREES', help='plan angle of that corner (default 90)')
    parser.add_argument('--sides', metavar='NUMBER', help='of a regular many-sided roof')
    options.add_steep(parser)


def run(args, out, err) -> int:
    """Print what is known of the run."""
    form = options.choice(args.format, '--format', FORMATS)
    shown = _shown(args)
    settings = options.with_reading(Settings(), args)
    if args.spacing:
        settings = options.changed(settings, 'jacks.spacings', args.spacing, '--spacing')
    for part in ('ridge', 'hip', 'rafter'):
        wanted = getattr(args, f'{part}_thickness')
        if wanted is not None:
            settings = options.changed(settings, f'stock.{part}', wanted, f'--{part}-thickness')
    roof = pitch(args.pitch, 'PITCH', settings.steep)
    run_in = length(args.level_run, 'RUN')
    if not run_in:
        raise BookError('RUN', f"'{args.level_run}' is 0, and a run of 0 has no rafter", ALLOWED)
    ask = _question(args, roof, run_in, settings)
    try:
        out.write(_answer(args, form, shown, ask, settings))
    except BookError as fault:
        place = PLACE_OF.get(fault.place, fault.place)
        if place == 'corner':
            place = '--with' if args.corner is None else '--corner'
        raise BookError(place, fault.problem, fault.allowed, fault.next_step) from None
    return 0


def _answer(args, form: str, shown: list[str], ask: RoofQuestion, settings: Settings) -> str:
    corner = _corner(args, ask, settings)
    sides = _sides(args)
    found = findings.find(ask.pitch, ask.run_in, settings, PLACES[form])
    caution = caution_of(ask)
    head = asked(found)
    if corner:
        other, plan_degrees = corner
        group = two_pitches(ask, other, plan_degrees)
        head = f'{head}\nside A; side B {other.text}, corner {text.rational(plan_degrees)} degrees'
        short = two_pitches_text
    elif sides:
        group, short = many_sides(ask, sides), many_sides_text
        head += f', {sides} sides'
    else:
        groups = roof_findings(ask)
        if form == 'json':
            return as_json(found, True, groups)
        by_key = {group.key: group for group in groups}
        if args.all or shown:
            wanted = [key for key in by_key if args.all or key.replace('_', '-') in shown]
            return listed(head, [by_key[key] for key in wanted], by_key['caution'])
        return as_text(found, by_key)
    if form == 'json':
        return as_json(found, False, (group, caution))
    return listed(head, [group], caution) if args.all else short(head, group, caution)


def _question(args, roof: Pitch, run_in: Fraction, settings: Settings) -> RoofQuestion:
    def asked_or(value: str | None, option: str, otherwise: Fraction | None) -> Fraction | None:
        return otherwise if value is None else length(value, option)

    usual = RoofQuestion(roof, run_in)
    return RoofQuestion(
        pitch=roof,
        run_in=run_in,
        stock=usual.stock if args.stock is None else stock(args.stock, '--stock'),
        seat_in=asked_or(args.seat, '--seat', usual.seat_in),
        overhang_in=asked_or(args.overhang, '--overhang', min(usual.overhang_in, run_in)),
        plate_length_in=asked_or(args.plate_length, '--plate-length', None),
        ridge_in=settings.ridge_thickness,
        hip_in=settings.hip_thickness,
        rafter_in=settings.rafter_thickness,
        spacings=settings.spacings,
        measure=settings.measure,
    )


def _shown(args) -> list[str]:
    """Return the groups asked for by name."""
    names = [name.strip() for names in args.show or () for name in names.split(',')]
    for name in names:
        if name not in GROUPS:
            raise BookError(
                '--show',
                f"'{name}' is unknown",
                ', '.join(GROUPS),
                meant(name, GROUPS, '--all shows everything'),
            )
    if names and (args.other is not None or args.corner is not None or args.sides is not None):
        raise BookError(
            '--show', 'picks from a square corner of one pitch', '', 'leave it out, or give --all'
        )
    return names


def _corner(args, ask: RoofQuestion, settings: Settings) -> tuple[Pitch, Fraction] | None:
    if args.other is None and args.corner is None:
        return None
    if args.sides is not None:
        raise BookError(
            '--sides', 'a many-sided roof has one pitch and its own corners', '', 'leave it or --with out'
        )
    other = ask.pitch if args.other is None else pitch(args.other, '--with', settings.steep)
    return other, SQUARE_DEGREES if args.corner is None else degrees(args.corner, '--corner', 180)


def _sides(args) -> int | None:
    if args.sides is None:
        return None
    if not args.sides.isascii() or not args.sides.isdigit() or len(args.sides) > 4:
        raise BookError(
            '--sides', f"'{args.sides}' is no number of sides", 'a whole number such as 5, 6, 8, 12'
        )
    return int(args.sides)
