"""The parser of the command: what it refuses is raised, and told in the reader's language."""

from __future__ import annotations

import argparse
from collections.abc import Iterable, Sequence
from typing import Any, NoReturn

from layouts.words.say import _, n_
from tablegen.errors import BookError, meant


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
        assert isinstance(parser, Parser), 'every verb has one'
        if option_string and self.dest in parser.given:
            problem = _('{option} is given twice').format(option=option_string)
            raise UsageError(parser.prog, problem, '', _('leave one of the two out'))
        parser.given.add(self.dest)
        setattr(namespace, self.dest, self.const if self.nargs == 0 else values)


class OnceTrue(Once):
    """A flag, which takes no value; given twice it is refused too."""

    def __init__(self, option_strings: Sequence[str], dest: str, help: str | None = None) -> None:
        super().__init__(option_strings, dest, nargs=0, const=True, default=False, help=help)


class Formatter(argparse.RawDescriptionHelpFormatter):
    """Help as it is written, under our own word for usage."""

    def add_usage(
        self,
        usage: str | None,
        actions: Iterable[argparse.Action],
        groups: Iterable[Any],  # argparse's own kind, which has no public name
        prefix: str | None = None,
    ) -> None:
        super().add_usage(usage, actions, groups, _('usage: ') if prefix is None else prefix)


class Parser(argparse.ArgumentParser):
    """A parser that raises its complaint instead of printing its usage and leaving."""

    def __init__(
        self, *args: Any, **kwargs: Any
    ) -> None:  # handed on whole: argparse makes verbs' parsers itself
        super().__init__(*args, **{'add_help': False, 'formatter_class': Formatter, **kwargs})
        self.given: set[str] = set()
        """What has been given a value."""
        self.register('action', None, Once)
        self.register('action', 'store', Once)
        self.register('action', 'store_true', OnceTrue)
        self._positionals.title = _('positional arguments')
        self._optionals.title = _('options')
        self.add_argument('-h', '--help', action='help', help=_('show this help message and exit'))

    def options(self) -> list[str]:
        """Return the long options."""
        return [one.option_strings[-1] for one in self._actions if one.option_strings and one.dest != 'help']

    def see_help(self) -> str:
        """Return where the words of the command are told."""
        return see_help(self.prog)

    def _match_argument(self, action: argparse.Action, arg_strings_pattern: str) -> int:
        try:
            return super()._match_argument(action, arg_strings_pattern)
        except argparse.ArgumentError:
            problem = _('{option} needs a value after it').format(option=_name(action))
            raise UsageError(self.prog, problem, '', self.see_help()) from None

    def _check_value(self, action: argparse.Action, value: Any) -> None:
        if action.choices is not None and value not in action.choices:
            known = tuple(map(str, action.choices))
            problem = _("'{value}' is no {name}").format(value=value, name=_name(action))
            raise UsageError(self.prog, problem, known, meant(value, known, self.see_help()))

    def error(self, message: str) -> NoReturn:
        """Raise what argparse complains of: an argument that is missing, or in its own words."""
        missing = [_name(one) for one in self._actions if one.required and one.dest not in self.given]
        if missing:
            names = _(' and ').join(missing)
            message = n_('{names} is missing', '{names} are missing', len(missing)).format(names=names)
        raise UsageError(self.prog, message, '', self.see_help())


def see_help(command: str) -> str:
    """Return where the words of a command are told."""
    return _('see {command} --help').format(command=command)


def _name(action: argparse.Action) -> str:
    """Return what an argument is called in usage."""
    return '/'.join(action.option_strings) or str(action.metavar or action.dest)
