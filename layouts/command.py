"""The command: a short verb for each thing that it makes."""

from __future__ import annotations

import argparse
import gc
import io
import os
import re
import sys
import warnings
from collections.abc import Iterator, Sequence
from contextlib import contextmanager, redirect_stdout, suppress
from typing import Any, TextIO

from layouts.pdf.leaving import stoppable
from layouts.verbs import VERBS
from layouts.verbs.parser import Parser, UsageError, see_help
from layouts.verbs.whole import NAME, command_parser, no_verb
from layouts.words.say import LANGUAGE, SOURCE, _, n_, use
from tablegen.errors import BookError, meant
from tablegen.messages import message

USER_FAULT, STOPPED, READER_LEFT = 2, 130, 141
"""Exit statuses: a mistake of the user's; Ctrl-C; the reader of a pipe has gone (as shells count them)."""
MAKERS = ('make', 'card', 'pattern', 'settings')
"""Verbs that are done, their files made, before they say a word to a reader who may have left."""
RUBBISH = 100_000
"""New objects before rubbish is looked for among them: a command ends soon, and nearly all that it makes is of use."""
MOST_REMARKS = 3
"""Lines of what a library merely warns of; how many more there were stands on one more."""
HELD = '\ue000'
"""Stands for the dash of a negative value while the words are parsed; of no script, so that nobody types it."""


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
    err = stderr or sys.stderr or io.StringIO()
    if argv is not None:
        return _ended(words, stdout, err)
    gc.set_threshold(RUBBISH, 50, 50)
    with stoppable(lambda: _stopped(err)):
        status = _ended(words, stdout, err)
    gc.freeze()  # the process ends: nothing is looked through any more
    return status


def _ended(words: list[str], stdout: TextIO | None, err: TextIO) -> int:
    """Do what is asked, and turn every way in which it may end into a status."""
    out = stdout or io.StringIO()
    try:
        use(os.environ.get(LANGUAGE, SOURCE))
        out = stdout or _own_output()
        with _remarks_in_lines(err):
            status = _answer(words, out, err)
        out.flush()
    except BookError as fault:
        return _tell(fault.advised(_help_of(words)), err)
    except KeyboardInterrupt:
        _stopped(err)
        return STOPPED
    except MemoryError:
        out_of_memory = BookError('', message('making.no_memory'), '', message('making.more_memory'))
        return _tell(out_of_memory, err)
    except BrokenPipeError:
        if stdout is None:
            _let_go(out)
        return 0 if words[0] in MAKERS else READER_LEFT
    except OSError as fault:
        if stdout is None:
            _let_go(out)
        place, problem = str(fault.filename or _('output')), fault.strerror or str(fault)
        return _tell(BookError(place, problem, '', _('mend that and give the command again')), err)
    return status


def _answer(words: list[str], out: TextIO, err: TextIO) -> int:
    verb = words[0] if words else '--help'
    if verb == '--version':
        from importlib.metadata import version  # slower than a look-up

        print(f'{NAME} {version(NAME)}', file=out)
        return 0
    if verb not in ('-h', '--help') and verb not in VERBS:
        raise no_verb(verb)
    parser = command_parser([verb] if verb in VERBS else VERBS)
    try:
        with redirect_stdout(out):
            args, beyond = parser.parse_known_args([_plain_minus(word) for word in words or ['--help']])
    except SystemExit:  # help has been printed
        return 0
    if beyond:
        raise _unasked([_as_written(word) for word in beyond], args.parser)
    for name, value in vars(args).items():
        setattr(args, name, _as_written(value))
    try:
        status: int = args.run(args, out, err)
        return status
    except BookError as fault:
        raise _at_option(fault, args, words).advised(args.parser.see_help()) from None


def _unasked(beyond: list[str], parser: Parser) -> UsageError:
    """Return the error for words that a verb does not take."""
    odd = next((word for word in beyond if word.startswith('-')), None)
    if odd:
        name, known = odd.partition('=')[0], parser.options()
        problem = _("'{name}' is unknown").format(name=name)
        return UsageError(parser.prog, problem, known, meant(name, known, parser.see_help()))
    problem = _("'{word}' is one word too many").format(word=beyond[0])
    advice = _('put quotes round what has spaces; {see}').format(see=parser.see_help())
    return UsageError(parser.prog, problem, '', advice)


def _at_option(fault: BookError, args: argparse.Namespace, words: list[str]) -> BookError:
    """Return a fault of what is asked by name as one of the option of that name: seat is --seat.

    Notes:
        A key of a settings file stays one where no option of its name was given.
    """
    option = f'--{fault.place}'.replace('_', '-').replace(' ', '-')
    of_a_file = getattr(args, 'settings', None) is not None and fault.place not in args.parser.given
    known = option in args.parser.options() and fault.place not in words and not of_a_file
    return fault.at(option) if known else fault


def _plain_minus(word: str) -> str:
    """Return a negative value with a sign that no parser takes for an option's dash."""
    return HELD + word[1:] if re.match(r'-[\d.]', word) else word


def _as_written(value: Any) -> Any:
    """Return an argument, or a list of them, with its dash back: it may be a name."""
    if isinstance(value, list):
        return [_as_written(one) for one in value]
    return f'-{value[1:]}' if isinstance(value, str) and value.startswith(HELD) else value


def _help_of(words: list[str]) -> str:
    return see_help(f'{NAME} {words[0]}' if words and words[0] in VERBS else NAME)


def _tell(fault: BookError, err: TextIO) -> int:
    from layouts.words.error import error_lines  # only a mistake has to wait for it

    with suppress(OSError):  # remarks that nobody can hear change nothing
        for line in error_lines(fault):
            print(line if isinstance(fault, UsageError) else f'{NAME}: {line}', file=err)
    return USER_FAULT


@contextmanager
def _remarks_in_lines(err: TextIO) -> Iterator[None]:
    """Tell what libraries warn of when all else is told, a line each, and of many a few."""
    heard: list[BookError] = []

    def hear(warning: Warning | str, *where: Any) -> None:
        told = warning.args[0] if isinstance(warning, Warning) and warning.args else warning
        heard.append(told if isinstance(told, BookError) else BookError('', str(warning)))

    with warnings.catch_warnings():
        warnings.showwarning = hear  # type: ignore[assignment]  # where it was is nothing to a reader
        try:
            yield
        finally:
            for remark in heard[:MOST_REMARKS]:
                _tell(remark, err)
            if more := len(heard[MOST_REMARKS:]):
                print(
                    f'{NAME}: ' + n_('and {count} more', 'and {count} more', more).format(count=more),
                    file=err,
                )


def _stopped(err: TextIO) -> None:
    print(_('{name}: stopped').format(name=NAME), file=err, flush=True)


def _own_output() -> TextIO:
    """Return this process's output, set so that every character of the book can pass.

    Errors:
        BookError if it is closed
    """
    own = sys.__stdout__
    if sys.stdout is None:
        raise BookError(_('output'), _('is closed'), '', _('let it go to a screen, a file or a pipe'))
    if sys.stdout is not own:
        return sys.stdout
    if own.isatty():
        own.reconfigure(errors='backslashreplace')
        return own
    # Data files are UTF-8 whatever the terminal speaks, and buffered even where Python was told not to:
    # a write cut short by a full disk is told only then.
    # A file's name that is no UTF-8 passes as it came.
    return open(own.fileno(), 'w', encoding='utf-8', errors='surrogateescape', closefd=False)


def _let_go(out: TextIO) -> None:
    """Point a broken output of this process at nothing, lest leaving the interpreter complain once more."""
    with suppress(OSError):  # nothing can be opened any more
        if isinstance(out, io.TextIOWrapper):
            os.dup2(os.open(os.devnull, os.O_WRONLY), out.fileno())


if __name__ == '__main__':
    sys.exit(main())
