"""settings: prints or writes a commented settings file to start from."""

from __future__ import annotations

import argparse
from typing import TextIO

from layouts.verbs.options import Subparsers, add_verb
from layouts.words.say import _
from layouts.words.starter import starter
from tablegen.errors import BookError


def add(subparsers: Subparsers) -> None:
    """Declare the verb."""
    parser = add_verb(
        subparsers,
        'settings',
        _('print a settings file to start from, every key explained'),
        run,
        ['rafterbook settings --out my-book.toml', 'rafterbook settings'],
    )
    parser.add_argument('--out', metavar='FILE', help=_('write it into this file'))
    parser.add_argument(
        '--overwrite',
        action='store_true',
        help=_('let the file be one that is there, and lose what is in it'),
    )


def run(args: argparse.Namespace, out: TextIO, err: TextIO) -> int:
    """Print the starter file, or write it where nothing is lost that was not given up."""
    if args.out is None:
        if args.overwrite:
            raise BookError('--overwrite', _('is of a file'), '', _('name it with --out'))
        out.write(starter())
        return 0
    try:
        with open(args.out, 'w' if args.overwrite else 'x', encoding='utf-8') as file:
            file.write(starter())
    except FileExistsError:
        problem = _('{file} is there already').format(file=args.out)
        raise BookError(
            '--out', problem, '', _('give another name, or --overwrite to lose what is in it')
        ) from None
    except (OSError, ValueError) as fault:  # ValueError: a zero byte in the name
        why = getattr(fault, 'strerror', None) or fault
        raise BookError('--out', f'{args.out}: {why}', '', _('give another name')) from None
    print(_('{file}: every key explained; change what you like').format(file=args.out), file=out)
    return 0
