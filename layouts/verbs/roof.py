"""roof: one whole roof's members with every mark, and what to buy; or a roof file to start from."""

from __future__ import annotations

import argparse
from collections.abc import Mapping
from typing import TextIO

from layouts.verbs import options
from layouts.verbs.book_options import WORDS
from layouts.verbs.opening import opener, pdf_named, show
from layouts.verbs.options import A_PITCH, Subparsers
from layouts.verbs.settings_file import A_ROOF, START_A_ROOF, written_in
from layouts.words.say import N_, _, n_
from tablegen.errors import BookError, SettingsFaults, meant
from tablegen.settings import PAPERS, Settings

TEXT, CSV = 'text', 'csv'
FORMATS = (TEXT, 'json', CSV)
NOTES = N_("""\
ROOF.toml says one whole roof; - is standard input. --starter prints such a file
of a kind, every key explained: shed, gable, saltbox, gambrel, hip, half-hip,
wing, many-sided or bay. Options go over the file; with --kind, --pitch, --width
and --length they say a shed, a gable or a hip roof without one. JSON carries
everything, --csv is the cut list. --pdf writes sheets to work from: the plan,
sections, the layout of plates, a marking sheet for each member, lists.""")
EXAMPLES = (
    'rafterbook roof --kind hip --pitch 7 --width "24 ft" --length "36 ft"',
    'rafterbook roof my-roof.toml --csv > cut-list.csv',
    'rafterbook roof my-roof.toml --pdf my-roof.pdf --paper a4',
    'rafterbook roof --starter wing > my-roof.toml',
    'rafterbook roof my-roof.toml --pitch 8 --show members,buy',
)
KEYS = {
    'kind': 'kind',
    'pitch': 'pitch',
    'width': 'width',
    'length': 'length',
    'spacing': 'spacing',
    'overhang': 'overhang.eave',
    'gable_overhang': 'overhang.gable',
    'end_pitch': 'hip.end_pitch',
    'stock': 'stock.rafters',
    'hip_stock': 'stock.hips',
    'valley_stock': 'stock.valleys',
    'seat': 'stock.seat',
    'nearest': 'smallest_part',
    'lengths': 'lengths',
    'steep': 'steep',
}
"""The key of a roof file that each option stands for."""
OPTIONS = {
    'kind': ('KIND', N_('shed, gable or hip; the others need a file')),
    'pitch': ('PITCH', A_PITCH),
    'width': ('LENGTH', N_('outside of framing, across the ridge; of a shed its run')),
    'length': ('LENGTH', N_('outside of framing, along the ridge')),
    'spacing': ('LENGTH', N_('of rafters, on center (default 16 in)')),
    'overhang': ('LENGTH', N_('of the tails, level (default 12 in)')),
    'gable-overhang': ('LENGTH', N_('to the outer face of the barge rafter (default none)')),
    'end-pitch': ('PITCH', N_('of a hip roof’s ends (default that of its sides)')),
    'stock': ('SIZE', N_('of rafters: 2x4 to 2x12 (default 2x8)')),
    'hip-stock': ('SIZE', N_('of the hips (default the rafters’)')),
    'valley-stock': ('SIZE', N_('of the valleys (default the rafters’)')),
    'seat': ('LENGTH', N_("level seat of the bird's mouth (default 3 1/2 in)")),
}
"""Options with a value, each with what it is."""


def add(subparsers: Subparsers) -> None:
    """Declare the verb."""
    summary = _('cut list, marks and lumber of one whole roof')
    parser = options.add_verb(subparsers, 'roof', summary, run, EXAMPLES, _(NOTES))
    parser.add_argument('file', nargs='?', metavar='ROOF.toml', help=_("roof file; '-' is standard input"))
    parser.add_argument(
        '--starter', metavar='KIND', help=_('print a roof file of this kind, and nothing else')
    )
    for name, (metavar, words) in OPTIONS.items():
        parser.add_argument(f'--{name}', metavar=metavar, help=_(words))
    options.add_format(parser, FORMATS)
    parser.set_defaults(format=None)  # so that --csv and another format are told from --csv alone
    parser.add_argument('--csv', action='store_true', help=_('the cut list as CSV: --format csv in a word'))
    shown = _('these only: {names}').format(names=', '.join(_shown()))
    parser.add_argument('--show', metavar='NAMES', action='append', help=shown)
    options.add_reading(parser)
    options.add_steep(parser)
    words = _('write the sheets of the roof into this file, and say no more')
    parser.add_argument('--pdf', metavar='FILE', help=words)
    paper, words = WORDS['paper']
    parser.add_argument('--paper', metavar=paper, help=_(words).format(papers=', '.join(PAPERS)))
    parser.add_argument('--open', action='store_true', help=_('show it when it is made'))


def run(args: argparse.Namespace, out: TextIO, err: TextIO) -> int:
    """Print a roof file to start from, or everything about a roof."""
    over = {key: value for name, key in KEYS.items() if (value := getattr(args, name)) not in (None, False)}
    if args.starter is not None:
        out.write(_starter(args, over))
        return 0
    if args.pdf is not None:
        return _sheets(args, over, out)
    for name in ('paper', 'open'):
        if getattr(args, name):
            problem = _('only the sheets that --pdf writes have a use for it')
            raise BookError(f'--{name}', problem, '', _('give --pdf FILE too'))
    form = _form(args)
    picked = _picked(args, form)
    written = '' if args.file is None else written_in(args.file, _(A_ROOF), _(START_A_ROOF))
    try:
        out.write(_answer(written, args.file or '', over, form, picked))
    except BookError as fault:
        raise _at_options(fault, args, over) from None
    return 0


def _sheets(args: argparse.Namespace, over: Mapping[str, object], out: TextIO) -> int:
    """Write a roof's sheets, and say how many pages they are."""
    file = pdf_named(args.pdf, '--pdf')
    for name in ('show', 'format', 'csv'):
        if getattr(args, name) not in (None, False, [], TEXT):
            problem = _('the sheets hold everything; leave one of the two out')
            raise BookError(f'--{name}', problem, '', _('leave --{name} out').format(name=name))
    paper = options.choice(args.paper or Settings().paper, '--paper', PAPERS)
    written = '' if args.file is None else written_in(args.file, _(A_ROOF), _(START_A_ROOF))
    if args.open:
        opener()
    from layouts.build import build_roof
    from layouts.told.blocks import DEFERS
    from tablegen.frame.frame import frame
    from tablegen.frame.pieces import to_buy
    from tablegen.frame.roof_file import read_roof

    try:
        framed = frame(read_roof(written, args.file or '', over))
        buy = to_buy(framed)
    except BookError as fault:
        raise _at_options(fault, args, over) from None
    pages = build_roof(framed, buy, paper, file)
    made = n_('{file}: {count} page, {paper} paper', '{file}: {count} pages, {paper} paper', pages)
    print(made.format(file=file, count=pages, paper=paper), _(DEFERS), sep='\n', file=out)
    if args.open:
        show(file)
    return 0


def _form(args: argparse.Namespace) -> str:
    """Return how the answer is written."""
    form = options.choice(args.format or (CSV if args.csv else TEXT), '--format', FORMATS)
    if args.csv and form != CSV:
        problem = _('is the cut list as CSV, and --format says {form}').format(form=form)
        raise BookError('--csv', problem, '', _('leave one of the two out'))
    return form


def _answer(written: str, source: str, over: Mapping[str, object], form: str, picked: list[str]) -> str:
    from layouts.told import (
        roof_answer,  # what is below takes a tenth of a second, which --starter and help need not wait for
    )
    from tablegen.frame.cut_list import cut_list
    from tablegen.frame.frame import frame
    from tablegen.frame.pieces import to_buy
    from tablegen.frame.roof_file import read_roof

    framed = frame(read_roof(written, source, over))
    wanted = form != CSV and (not picked or roof_answer.BUY in picked)
    found = cut_list(framed, to_buy(framed) if wanted else None)
    if form == CSV:
        return roof_answer.roof_csv(found)
    return roof_answer.roof_json(found, picked) if form == 'json' else roof_answer.roof_text(found, picked)


def _starter(args: argparse.Namespace, over: Mapping[str, object]) -> str:
    from layouts.words.starter import roof_starter
    from tablegen.frame.roof_keys import KINDS

    if args.file is not None or over:
        problem = _('prints a file to start from, and reads none')
        raise BookError('--starter', problem, '', _('leave the file and the other options out'))
    if args.starter not in KINDS:
        problem = _("'{kind}' is no kind of roof").format(kind=args.starter)
        raise BookError('--starter', problem, tuple(KINDS), meant(args.starter, tuple(KINDS), ''))
    return roof_starter(args.starter)


def _shown() -> tuple[str, ...]:
    return ('members', 'boards', 'studs', 'heights', 'checks', 'places', 'caution', 'buy')


def _picked(args: argparse.Namespace, form: str) -> list[str]:
    """Return the groups of an answer that --show names; [] for those that are usual."""
    names = [name.strip() for names in args.show or () for name in names.split(',')]
    if names and form == CSV:
        raise BookError('--show', _('CSV is the cut list alone'), '', _('leave one of the two out'))
    for name in names:
        if name not in _shown():
            problem, advice = _("'{name}' is unknown"), meant(name, _shown(), args.parser.see_help())
            raise BookError('--show', problem.format(name=name), ', '.join(_shown()), advice)
    return names


def _at_options(fault: BookError, args: argparse.Namespace, over: Mapping[str, object]) -> BookError:
    """Return faults of a roof's keys under the options that stand for them, where those were given or there is no file."""
    named = {
        key: f'--{name.replace("_", "-")}' for name, key in KEYS.items() if key in over or args.file is None
    }
    if isinstance(fault, SettingsFaults):
        faults = [one.at(named.get(str(one.place), one.place)) for one in fault.faults]
        return SettingsFaults(args.file or '', faults)
    return fault.at(named.get(str(fault.place), fault.place))
