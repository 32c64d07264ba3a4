"""The sentences of the worked examples by which a proof-reader finds their figures, each with what its figures are of.

What a template says stands here with what it must mean; `tests/test_proof_examples.py` wants every sentence in a template.
"""

from __future__ import annotations

import re
from collections.abc import Iterable
from html import unescape

from layouts.words.drawings import ONE_RAFTER_DRAWING
from layouts.words.examples import MARKS, PLACES
from layouts.words.pages import heading
from layouts.words.proof_sentences import (
    COMMON,
    CORNER,
    HIP,
    JACK_COLUMNS,
    JACKS,
    ONE_RAFTER,
    PAGE,
    PAGES,
    RAFTER,
    SHED,
    SLOPES,
    STEPPING,
    SUM_OFF,
    TITLES,
    VALLEY,
    Said,
)
from layouts.words.runs import JACK
from layouts.words.say import _
from tablegen.proof.names import Citing, Example, ExampleNames, Sentence
from tablegen.roof.member import Kind, Line

PLACE, TAG, BREAK = re.compile(r'%\((\w+)\)s'), re.compile(r'<[^>]+>'), re.compile(r'<br>|\s+')
AT_LINE = {
    Line.CENTER: ('line', ''),
    Line.CUT: ('head', 'center'),
    Line.POINT: ('head', 'center'),
    Line.LONG: ('head', 'long'),
    Line.SHORT: ('head', 'short'),
    Line.SIDE: ('head', 'side'),
    Line.PLATE: ('plate', ''),
    Line.FOOT: ('plate', ''),
    Line.HEEL: ('heel', ''),
    Line.TAIL: ('tail', 'center'),
    Line.FOOT_CUT: ('tail', 'center'),
    Line.TAIL_SIDE: ('tail', 'side'),
}
"""Where on a board each mark is."""
DRAWN = {'length': 'line', 'off': 'off-level', 'tail': 'tail', 'seat': 'mouth-seat'}
ARMS = {
    'tongue': 'hold-tongue',
    'tongue_short': 'hold-tongue',
    'body': 'hold-body',
    'body_short': 'hold-body',
}
"""Figures of the drawing of one rafter, by what its labels are called."""
SAID: dict[str, tuple[tuple[Said, ...], tuple[Kind, ...]]] = {
    'common': ((COMMON, RAFTER, STEPPING), (Kind.COMMON,)),
    'hip': ((HIP, CORNER, STEPPING), (Kind.HIP,)),
    'jacks': ((JACKS,), (Kind.HIP_JACK,)),
    'valley': ((VALLEY, CORNER, STEPPING), (Kind.VALLEY,)),
    'slopes': ((SLOPES, RAFTER, STEPPING), (Kind.COMMON, Kind.LOWER_RAFTER, Kind.UPPER_RAFTER)),
    'shed': ((SHED, RAFTER, STEPPING), (Kind.SHED_RAFTER,)),
    'rafter': ((ONE_RAFTER,), ()),
}
"""What the pages of each kind say, and the members that their marks are of."""


def example_names() -> ExampleNames:
    """Return them in the language in use."""
    return ExampleNames(
        tuple(
            Example(
                kind,
                tuple(map(plain, TITLES[kind])) if kind in TITLES else (heading('one-rafter'), heading('seat-cut-try')),
                tuple(sentences(said)),
                tuple(dict.fromkeys(_marks(members))),
                tuple((plain(head), of) for head, of in JACK_COLUMNS.items()) if kind == 'jacks' else ((_('heel'), 'heel'),) if kind == 'rafter' else (),
            )
            for kind, (said, members) in SAID.items()
        ),
        Citing(
            plain(PAGE), plain(PAGES), _('p. {page}').partition('{')[0].strip(),
            _before('row'), _before('rows'), _before('column'), _(PLACES['and']), _(PLACES['title']),
            {_('ft'): 'ft', _('in'): 'in'}, {_('body: level (√288)'): _('body: level')},
            _before('add'), _('for'), _(JACK), _(PLACES['jack']).rpartition('}')[2],
        ),
        plain(SUM_OFF),
        (_('{part} long'), _('{part} short')),
        _blocks(),
        _('Look again.'),
        tuple((_(ONE_RAFTER_DRAWING[name]), figure) for name, figure in DRAWN.items()),
        tuple((_(ONE_RAFTER_DRAWING[name]), figure) for name, figure in ARMS.items()),
    )  # fmt: skip


def _blocks() -> tuple[str, ...]:
    heads = _('ft'), _('in'), _('parts of an inch')
    some = [heads[first : last + 1] for first in range(3) for last in range(first, 3)]
    return (*(_(' and ').join(one) for one in (*some, (heads[0], heads[2]))), _('drawing'))


def _before(place: str) -> str:
    return _(PLACES[place]).partition('{')[0]


def plain(words: str) -> str:
    """Return a template's words in the language in use as they stand on a page, their places in braces."""
    return unescape(
        BREAK.sub(' ', TAG.sub(lambda tag: ' ' if tag[0] == '<br>' else '', PLACE.sub(r'{\1}', _(words))))
    )


def sentences(said: Iterable[Said]) -> Iterable[Sentence]:
    """Yield sentences as they stand on a page, with what their figures are of."""
    for words, told in (one for some in said for one in some.items()):
        parts = told.split()
        yield Sentence(
            plain(words),
            tuple(one for one in parts if '=' not in one and one[0] != '!'),
            tuple((name, of) for name, _is, of in (one.partition('=') for one in parts if '=' in one)),
            next((one[1:] for one in parts if one[0] == '!'), ''),
        )


def _marks(members: Iterable[Kind]) -> Iterable[tuple[str, tuple[str, str]]]:
    return ((_(words), AT_LINE[line]) for member in members for line, words in MARKS[member].items())
