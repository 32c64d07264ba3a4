"""The command: a short verb for each thing that it makes."""

from __future__ import annotations

import argparse
import io
import os
import re
import sys
from collections.abc import Sequence
from contextlib import redirect_stdout, suppress
from typing import Any, NoReturn, TextIO

from layouts.verbs import VERBS, module_of
from layouts.words.say import LANGUAGE, SOURCE, _, use
from tablegen.errors import BookError, meant

NAME = 'rafterbook'
ABOUT = 'Makes a pocket book of rafter tables, and looks its figures up in a terminal.'
USER_FAULT, STOPPED, READER_LEFT = 2, 130, 141
"""Exit statuses: a mistake of the user's; Ctrl-C; the reader of a pipe has gone (as shells count them)."""
MINUS_SIGN = '\u2212'


class UsageError(BookError):
    """A mistake in the words of the command itself; its place is the command."""


class Once(argparse.Action):
    """Takes a value; an option that holds one is refused the second time, never the last one taken."""

    def __call__(
        self,
        parser: argparse.ArgumentParser,
        namespace: argparse.Namespace,
        values: str | Sequence[object] | None,
        option_string: str | None = None,
    ) -> None:
        given = namespace.__dict__.setdefault('given_options', set())
        if option_string and self.dest in given:
            problem = _('{option} is given twice').format(option=option_string)
            raise UsageError(parser.prog, problem, '', _('leave one of the two out'))
        given.add(self.dest)
        setattr(namespace, self.dest, self.const if self.nargs == 0 else values)


class OnceTrue(Once):
    """A flag, which takes no value; given twice it is refused too."""

    def __init__(self, option_strings: Sequence[str], dest: str, help: str | None = None) -> None:
        super().__init__(option_strings, dest, nargs=0, const=True, default=False, help=help)


class Parser(argparse.ArgumentParser):
    """A parser that raises its complaint instead of printing its usage and leaving."""

    def __init__(
        self, *args: Any, **kwargs: Any
    ) -> None:  # handed on whole: argparse makes verbs' parsers itself
        super().__init__(*args, **kwargs)
        self.register('action', None, Once)
        self.register('action', 'store', Once)
        self.register('action', 'store_true', OnceTrue)

    def error(self, message: str) -> NoReturn:
        problem = message
        if missing := re.fullmatch(r'the following arguments are required: (.*)', message):
            names = missing[1].replace(', ', ' and ')
            problem = f'{names} {"are" if " and " in names else "is"} missing'
        elif wanting := re.fullmatch(r'argument (\S+): expected .*', message):
            problem = f'{wanting[1]} needs a value after it'
        elif unknown := re.fullmatch(r"argument (\S+): invalid choice: '(.*)' \(choose from (.*)\)", message):
            known = re.findall(r'[\w-]+', unknown[3])
            advice = meant(unknown[2], known, f'see {self.prog} --help')
            raise UsageError(self.prog, f"'{unknown[2]}' is no {unknown[1]}", ', '.join(known), advice)
        raise UsageError(self.prog, problem, '', f'see {self.prog} --help')


def main(
    argv: Sequence[str] | None = None, stdout: TextIO | None = None, stderr: TextIO | None = None
) -> int:
    """Do what the words of a command line ask.

    Given:
        argv    the words after the command's name; None for those of this process
        stdout  where data goes, None for this process's
        stderr  where remarks go, None for this process's

    Returned:
        exit status: 0 done, 1 a check that failed, 2 a mistake told in a line, 130 stopped by the user
    """
    words = list(sys.argv[1:] if argv is None else argv)
    out = stdout or _own_output()
    err = stderr or sys.stderr or io.StringIO()
    try:
        use(os.environ.get(LANGUAGE, SOURCE))
        status = _answer(words, out, err)
        out.flush()
    except BookError as fault:
        return _tell(fault.advised(_help_of(words)), err)
    except KeyboardInterrupt:
        print(f'{NAME}: stopped', file=err)
        return STOPPED
    except BrokenPipeError:
        if stdout is None:
            _let_go(out)
        return READER_LEFT
    except OSError as fault:
        if stdout is None:
            _let_go(out)
        place, problem = str(fault.filename or 'output'), fault.strerror or str(fault)
        return _tell(BookError(place, problem, '', 'mend that and give the command again'), err)
    return status


def _answer(words: list[str], out: TextIO, err: TextIO) -> int:
    verb = words[0] if words else '--help'
    if verb == '--version':
        from importlib.metadata import version  # slower than a look-up

        print(f'{NAME} {version(NAME)}', file=out)
        return 0
    if verb not in ('-h', '--help') and verb not in VERBS:
        raise UsageError(
            NAME, f"'{verb}' is no verb", ', '.join(VERBS), meant(verb, VERBS, f'see {NAME} --help')
        )
    parser = Parser(prog=NAME, description=ABOUT)
    parser.add_argument('--version', action='store_true', help='print the version and leave')
    verbs = parser.add_subparsers(title='verbs', metavar='VERB', dest='verb')
    for name in [verb] if verb in VERBS else VERBS:
        module_of(name).add(verbs)
    try:
        with redirect_stdout(out):
            args, beyond = parser.parse_known_args([_plain_minus(word) for word in words or ['--help']])
    except SystemExit:  # help has been printed
        return 0
    if beyond:
        raise _unasked(beyond, args.parser)
    try:
        status: int = args.run(args, out, err)
        return status
    except BookError as fault:
        raise _at_option(fault, args.parser, words).advised(f'see {args.parser.prog} --help') from None


def _unasked(beyond: list[str], parser: argparse.ArgumentParser) -> UsageError:
    """Return the error for words that a verb does not take."""
    see = f'see {parser.prog} --help'
    odd = next((word for word in beyond if word.startswith('-')), None)
    if odd:
        name = odd.partition('=')[0]
        known = _options(parser)
        return UsageError(parser.prog, f"'{name}' is unknown", ', '.join(known), meant(name, known, see))
    return UsageError(
        parser.prog,
        f"'{beyond[0]}' is one word too many",
        '',
        f'put quotes round what has spaces; {see}',
    )


def _at_option(fault: BookError, parser: argparse.ArgumentParser, words: list[str]) -> BookError:
    """Return a fault of what is asked by name as one of the option of that name: seat is --seat."""
    option = f'--{fault.place}'.replace('_', '-').replace(' ', '-')
    return fault.at(option) if option in _options(parser) and fault.place not in words else fault


def _options(parser: argparse.ArgumentParser) -> list[str]:
    return list(dict.fromkeys(re.findall(r'--[a-z][a-z-]*', parser.format_usage())))


def _plain_minus(word: str) -> str:
    """Return a negative value with a minus sign that no parser takes for an option's dash."""
    return MINUS_SIGN + word[1:] if re.match(r'-[\d.]', word) else word


def _help_of(words: list[str]) -> str:
    return f'see {NAME} {words[0]} --help' if words and words[0] in VERBS else f'see {NAME} --help'


def _tell(fault: BookError, err: TextIO) -> int:
    from layouts.words.error import error_lines  # only a mistake has to wait for it

    with suppress(OSError):  # remarks that nobody can hear change nothing
        for line in error_lines(fault):
            print(line if isinstance(fault, UsageError) else f'{NAME}: {line}', file=err)
    return USER_FAULT


def _own_output() -> TextIO:
    """Return this process's output, set so that every character of the book can pass."""
    own = sys.__stdout__
    if own is None or sys.stdout is not own:
        return sys.stdout or io.StringIO()
    if own.isatty():
        own.reconfigure(errors='backslashreplace')
        return own
    # Data files are UTF-8 whatever the terminal speaks, and buffered even where Python was told not to:
    # a write cut short by a full disk is told only then.
    return open(own.fileno(), 'w', encoding='utf-8', closefd=False)


def _let_go(out: TextIO) -> None:
    """Point a broken output of this process at nothing, lest leaving the interpreter complain once more."""
    if isinstance(out, io.TextIOWrapper):
        os.dup2(os.open(os.devnull, os.O_WRONLY), out.fileno())


if __name__ == '__main__':
    sys.exit(main())
