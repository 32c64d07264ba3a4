"""What find answers: the kind of roof that is asked about, its findings, and how they are told."""

from __future__ import annotations

import argparse
from collections.abc import Callable, Sequence

from layouts.told.find_data import as_json
from layouts.verbs import options
from layouts.words.find import asked, listed, regular_text
from layouts.words.find_corner import many_sides_text, shed_text, two_pitches_text
from tablegen.errors import BookError, meant
from tablegen.numbers import text
from tablegen.numbers.exact import sign
from tablegen.roof.called import Called, cautions_of, corner_cautions, shed_cautions
from tablegen.roof.corner import SQUARE_DEGREES, corner_sides, two_pitches
from tablegen.roof.question import RoofQuestion
from tablegen.roof.readings import Group
from tablegen.roof.roof import GROUPS, roof_findings
from tablegen.roof.shed import AGAINST, LEDGER, WALL, Shed, shed_findings
from tablegen.roof.side import side_a
from tablegen.roof.sides import many_sides, sided
from tablegen.settings import Settings
from tablegen.written.degrees import degrees
from tablegen.written.pitches import pitch

REGULAR, CORNER, MANY_SIDED, SHED = 'regular', 'corner', 'many-sided', 'shed'
SHOWN = tuple(key.replace('_', '-') for key in GROUPS)
"""What --show may name of a roof with regular corners: keys of its findings."""
SHED_SHOWN = ('length', 'cut', 'square', 'shed', 'seat', 'tail', 'gable-stud', 'area')
FIRST = ('length', 'cut', 'square', 'shortening', 'jack', 'seat', 'tail', 'cheek', 'backing', 'drop')
"""What the short answer is told from."""

Short = Callable[[str, RoofQuestion, Group, Sequence[Called]], str]
"""Tells a corner in short: its head, what was asked, its findings, its cautions."""


def shown_groups(given: Sequence[str] | None, kind: str, everything: bool) -> list[str]:
    """Return the groups asked for by name.

    Given:
        everything  whether --all was given
    """
    names = [name.strip() for names in given or () for name in names.split(',')]
    allowed = SHED_SHOWN if kind == SHED else SHOWN
    if names and kind in (CORNER, MANY_SIDED):
        raise BookError(
            '--show', 'picks from a square corner of one pitch', '', 'leave it out, or give --all'
        )
    if names and everything:
        raise BookError('--show', 'picks, and --all shows everything', '', 'leave one of the two out')
    for name in names:
        if name not in allowed and name in SHOWN:
            raise BookError('--show', f"a shed has no '{name}'", ', '.join(allowed))
        if name not in allowed:
            raise BookError(
                '--show',
                f"'{name}' is unknown",
                ', '.join(allowed),
                meant(name, allowed, '--all shows everything'),
            )
    return names


def answer(args: argparse.Namespace, kind: str, form: str, shown: list[str], ask: RoofQuestion) -> str:
    """Return the answer in the form that is asked for."""
    return {REGULAR: _regular, CORNER: _corner, MANY_SIDED: _many_sided, SHED: _shed}[kind](
        args, form, shown, ask
    )


def _regular(args: argparse.Namespace, form: str, shown: list[str], ask: RoofQuestion) -> str:
    brief = form != 'json' and not args.all and not shown
    keys = (
        FIRST
        if brief
        else tuple(GROUPS)
        if args.all or not shown
        else [name.replace('-', '_') for name in shown]
    )
    if ask.plate_length_in is not None and brief:
        keys = (*FIRST, 'ridge')
    groups = roof_findings(ask, keys, listed=not brief)
    caution = cautions_of(side_a(ask))
    head = f'{asked(ask)}\n{_stocks(ask, with_valley=True)}'
    if form == 'json':
        return as_json(ask, groups, caution)
    if brief:
        return regular_text(head, ask, {group.key: group for group in groups}, caution, SHOWN)
    return listed(head, groups, caution)


def _corner(args: argparse.Namespace, form: str, shown: list[str], ask: RoofQuestion) -> str:
    other = ask.pitch if args.other is None else pitch(args.other, '--with', args.steep)
    plan = SQUARE_DEGREES if args.corner is None else degrees(args.corner, '--corner', 180)
    a, b = corner_sides(ask, other, plan)
    head = (
        f'{asked(ask)}\nside A; side B {other.text}, corner {text.rational(plan)} degrees\n'
        f'{_stocks(ask, with_valley=True)}'
    )
    group = two_pitches(a, b, plan, listed=form == 'json' or args.all)
    return _told(args, form, head, ask, group, corner_cautions(a, b), two_pitches_text)


def _many_sided(args: argparse.Namespace, form: str, shown: list[str], ask: RoofQuestion) -> str:
    if not args.sides.isascii() or not args.sides.isdigit() or len(args.sides) > 4:
        raise BookError(
            '--sides', f"'{args.sides}' is no number of sides", 'a whole number such as 5, 6, 8, 12'
        )
    sides = int(args.sides)
    side = sided(ask, sides)
    head = f'{asked(ask)}, {sides} sides\n{_stocks(ask, with_valley=False)}'
    group = many_sides(side, sides, listed=form == 'json' or args.all)
    return _told(args, form, head, ask, group, cautions_of(side, False), many_sides_text)


def _told(
    args: argparse.Namespace,
    form: str,
    head: str,
    ask: RoofQuestion,
    group: Group,
    caution: Sequence[Called],
    short: Short,
) -> str:
    if form == 'json':
        return as_json(ask, (group,), caution)
    return listed(head, [group], caution) if args.all else short(head, ask, group, caution)


def _shed(args: argparse.Namespace, form: str, shown: list[str], ask: RoofQuestion) -> str:
    ledger = Settings().ridge_thickness
    if args.ledger_thickness is not None:
        ledger = options.thickness(args.ledger_thickness, '--ledger-thickness')
    run_to = WALL if args.run_to is None else args.run_to
    if run_to not in AGAINST:
        raise BookError('--run-to', f"'{run_to}' is unknown", ', '.join(AGAINST))
    shed = Shed(args.shed, ledger if args.shed == LEDGER else ask.run_in * 0, run_to)
    side = side_a(ask)
    if sign(side.run_in - shed.off_in) <= 0:
        raise BookError('--ledger-thickness', 'it is as thick as the run is long', 'less than the run')
    groups = shed_findings(side, shed)
    caution = shed_cautions(side)
    stands = 'against a wall' if args.shed == WALL else 'on a ledger'
    head = f'{asked(ask)}\nshed, {stands}; rafters {ask.stock.name}'
    if shown:
        groups = tuple(group for group in groups if group.key.replace('_', '-') in shown)
    if form == 'json':
        return as_json(ask, groups, caution)
    if args.all or shown:
        return listed(head, groups, caution)
    return shed_text(head, ask, {group.key: group for group in groups}, caution)


def _stocks(ask: RoofQuestion, with_valley: bool) -> str:
    valleys = f', valleys {ask.valleys.name}' if with_valley else ''
    return f'rafters {ask.stock.name}, hips {ask.hips.name}{valleys}'
