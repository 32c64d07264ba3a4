"""The verbs of the command, a module each.

A verb's module has two functions: add(subparsers) declares its arguments and sets the default run;
run(args, out, err) answers and returns the exit status. Importing it imports nothing slow.
"""

from __future__ import annotations

from importlib import import_module
from types import ModuleType

VERBS = (
    'make',
    'card',
    'pattern',
    'find',
    'roof',
    'pitch',
    'diagonal',
    'brace',
    'check',
    'proof',
    'data',
    'settings',
    'help',
    'complete',
)
"""In the order in which help lists them; each is the name of its module."""


def module_of(verb: str) -> ModuleType:
    """Return the module of a verb, imported only now."""
    return import_module(f'layouts.verbs.{verb}')
