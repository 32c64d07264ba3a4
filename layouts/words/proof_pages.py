"""The sentences and heads by which a proof-reader finds figures on the pages before the pitches, as these say them."""

from __future__ import annotations

from collections.abc import Iterator, Mapping

from msgspec.structs import replace

from layouts.words.caution import caution_source
from layouts.words.drawings import RIDGE_ENDS_DRAWING, ROOF_DRAWINGS
from layouts.words.pages import FOUND, heading
from layouts.words.proof_examples import plain, sentences
from layouts.words.proof_tables import KINDS
from layouts.words.say import N_, _, n_, said, say
from tablegen.checking.book_rows import mark_to_mark_table, turned_over_table
from tablegen.messages import Message
from tablegen.numbers.figure import Measure
from tablegen.proof.names import SaidPage, Sentence
from tablegen.proof.said_pages import SUM
from tablegen.proof.stated import Stated
from tablegen.roof import cautions
from tablegen.tables.runs import head_of

EXISTING = {
    N_('<b>Level and rule.</b> On a rafter, not on shingles: one end of a level on it, held level. %(base)s in from there measure plumb down to it: %(rise)s in is %(pitch)s. With a 24 in level take half of what its far end tells.'): '',
    N_('<b>Degrees</b> from level, by a bevel or a digital level, are the common’s plumb cut.'): '',
    N_('<b>Lengths.</b> Between two plumb lines measure along the top edge, and level: the first × %(base)s ÷ the second is the length per foot.'): '',
    N_('<b>Read it back.</b> At that pitch the run that you measured must give the length that you measured.'): '',
    N_('The square needs no table: for %(between)s in %(base)s hold %(base)s on the body, %(between)s on the tongue. The exact foot is √(%(squared)s) = %(foot)s in; times the run in feet it is the length.'): 'foot=between-foot',
}  # fmt: skip
ARMS = {
    N_('A jack at %(pitch)s, unfolded; both angles are from square across.'): '',
    N_('<b>Mark.</b> Where the board’s center line ends, all taken off, square a line across the top edge. Through its middle draw the cheek, by its angle from that line or by the square.'): '',
    N_('<b>Sides.</b> From both ends of the cheek draw plumb lines down: the long point’s and the short point’s. Cross the waste.'): '',
    N_('<b>Saw</b> along one of these, on the waste’s side, the blade tilted to come out at the other: 45° at a regular corner, whatever the pitch. No shoe tilts past 45°: then a hand saw, to all its lines.'): '',
    N_('<b>Double cheek:</b> from both sides to the middle of the thickness.'): '',
}  # fmt: skip
STEPPING = {
    N_('<b>Set the gauges</b>, outside edges, for %(pitch)s: body %(body)s &amp; tongue %(tongue)s. <b>Along the tongue is plumb, along the body level.</b>'): '',
    N_('<b>Mark</b> with a knife where the body’s outer edge meets the top edge, the tongue’s figure on mark 0, the ridge center line. Slide on towards the tail: the tongue’s figure on that mark.'): '',
    N_('An odd rest of the run is held on the body, its rise on the tongue.'): '',
    N_('<b>Measure the whole length once</b>, from mark 0 to the last, in one pull of the tape. Where it differs from the table, the table is right.'): '',
    N_('<b>One step</b> for each foot of run.'): '!step',
    N_('<b>One step</b> for each %(run)s of run (halved: the tongue ends at 16).'): 'run=step-run !step',
    N_('Marks at %(pitch)s, and how steps of %(step)s miss them'): '',
}  # fmt: skip
READING = {
    N_('%(pitch)s, run %(run)s: turn to <b>page %(page)s</b> by the thumb tab. Left pages are the common rafter, right ones hip, valley and jacks. Read feet, inches and part of an inch, each in its own row, and add what stands under “common”:'): '!turn',
    N_('Take %(pitch)s and a run of %(run)s. Turn to <b>page %(page)s</b> by the thumb tab. Go down to the feet, across to the inches:'): 'page=tabled !turn',
}  # fmt: skip
TRUE_SQUARE = {
    N_('Lay the body, the long arm, on a straight edge and draw along the tongue. Turn the square over, bring its heel to the same point, and draw again. A true square draws one line. Where there are two, the gap between them is <b>twice</b> its error.'): '',
    N_('Inches, outside edges, from the heel. Too long a diagonal: the angle is over 90°. The last two are to the nearest %(part)s; the rest are whole inches exactly.'): 'part=fine-part',
}  # fmt: skip
COVER, COVERS = (
    '',
    (
        N_('Lengths to the nearest %(part)s in.'),
        N_('Section %(section)s of %(sections)s, pages %(first)s to %(last)s.'),
        N_('Section %(section)s of %(sections)s, pages %(first)s to %(last)s, with %(also)s.'),
        N_('Runs %(runs)s.'),
    ),
)
"""A cover's head is the book's title; what it says below."""
PAST = N_('Past whole inches, %(past)s × %(per)s is nearest to %(parts)s:')
BETWEEN_HEAD = N_('A run between the figures')
BETWEEN = N_(
    'For %(run)s, add what stands under the small run at the foot of that page or of the one facing it:'
)
EXACTLY = N_('Exact, rounded once')
FOOT = (
    N_('The length per foot of run on page %(page)s, times the run in feet:'),
    N_('The exact foot, under the column of feet, times the run in feet:'),
)
GAPS = (N_('gap at<br>16 in'), N_('out of<br>square'), N_('in<br>24 in'), N_('in<br>12 ft'))
ARMS_HEADS = (N_('at %(pitch)s'), N_('body &amp;<br>tongue'), N_('along the<br>body'), N_('along the tongue'))
DIAGONALS = (N_('body &amp;<br>tongue'), N_('must<br>measure'), N_('%(excess)s long: out<br>in 24 in'))
MARKS = (N_('step'), N_('from mark 0,<br>top edge'), N_('missed by'))
OF_ARMS = {
    N_('common, jack'): ('common', N_('level: seat'), N_('plumb: ridge, heel, tail')),
    N_('hip, valley'): ('hip', N_('level: seat'), N_('plumb: ridge, heel, tail')),
    N_('jack’s cheek, on top'): ('cheek', N_('the cheek'), ''),
}
"""Rows of the square's arms: figures, and what each arm gives."""
STEPS = 12
Pairs = tuple[tuple[str, str], ...]
Drawn = tuple[tuple[str, tuple[str, ...]], ...]
MUST_BE_SAID = (
    cautions.LOW_SLOPE,
    cautions.SHORT_SEAT,
    cautions.PAST_A_QUARTER,
    cautions.THIN_TAIL,
    cautions.LONG_TAIL,
    cautions.STEEP,
)
"""Cautions of the page of them."""


def said_pages(book: Stated) -> tuple[SaidPage, ...]:
    """Return them in the language in use."""
    return (
        _page('existing', EXISTING),
        replace(_page('arms', ARMS, *_arms()), drawn=_unfolded()),
        _page('stepping', STEPPING, *_heads(MARKS * 2), rows=tuple(map(str, sorted(range(1, STEPS + 1))))),
        _page('square', TRUE_SQUARE, *_heads(GAPS + DIAGONALS), rows=tuple(_rows(book))),
        _page('reading', READING, *_reading()),
        SaidPage(
            'cover',
            COVER,
            (),
            (),
            (*map(plain, COVERS), _('{first} to {last} by {step}'), _('{first} to {last}')),
        ),
    )


def said_more(kind: str) -> tuple[tuple[Sentence, ...], tuple[str, ...], Pairs, Drawn]:
    """Return what a page of prose says besides the sentences of its template: sentences, labels of rows, what lengths are called, and
    labels in its drawing.
    """
    if kind == 'cautions':
        return tuple(_cautions()), (), (), ()
    if kind in ('made', 'closing'):
        counted = n_('{count} page', '{count} pages', 2), n_('{count} section', '{count} sections', 2)
        return (), counted, (), ()
    if kind in ('numbers', 'rounded'):
        labels = plain(N_('%(member)s, run %(run)s')), _('sum'), _('true, rounded once')
        return (), labels, tuple((say(head_of(name)), of) for name, of in KINDS.items()), ()
    if kind == 'words-corner':
        off = _(RIDGE_ENDS_DRAWING['off']).replace('{length}', '{figure}')
        return (), (), (), ((off, ('past-commons', 'past-')),)
    return (), (), (), ()


def _cautions() -> Iterator[Sentence]:
    """Yield what the code asks for, each with its clauses, its numbers in places."""
    for one in MUST_BE_SAID:
        places = [(name, f'caution-{one.key}-{name}') for words in one.says for name, _value in words.values]
        words = ' '.join(
            say(Message(told.name, tuple((name, f'{{{name}}}') for name, _v in told.values)))
            for told in one.says
        )
        source = f' ({caution_source(one)})' if one is not cautions.STEEP else ''
        yield Sentence(words + source, places=tuple(places))


def _page(kind: str, told: Mapping[str, str], *more: Sentence, rows: tuple[str, ...] = ()) -> SaidPage:
    return SaidPage(kind, heading(kind), (*sentences([told]), *more), rows)


def _arms() -> list[Sentence]:
    rows = [
        ' '.join(filter(None, (_(name), f'{{{figure}}}', _(level), _(plumb) if plumb else '')))
        for name, (figure, level, plumb) in OF_ARMS.items()
    ]
    return [*_heads(ARMS_HEADS), *(Sentence(row) for row in rows)]


def _unfolded() -> Drawn:
    """Return the labels of the two faces that are drawn, and the angle on each."""
    return (
        (_(ROOF_DRAWINGS['cheeks']['top']), ('cheek-top',)),
        (_(ROOF_DRAWINGS['cheeks']['side']), ('plumb-cut',)),
    )


def _heads(heads: tuple[str, ...]) -> list[Sentence]:
    """Return the two lines of heads."""
    parts = [_(head).replace('&amp;', '&').split('<br>') for head in heads]
    upper = ' '.join(one[0] for one in parts if len(one) > 1)
    lines = upper, ' '.join(one[-1] for one in parts)
    return [Sentence(plain(line)) for line in lines]


def _reading() -> list[Sentence]:
    """Return what is found, and how it is had exactly, where that stands there."""
    found = [
        Sentence(plain(words), places=(('length', f'{SUM}{KINDS[table]}'),), sets='found')
        for table, words in FOUND.items()
    ]
    between = plain(BETWEEN).replace('{run}', '{odd_run}')
    found.append(Sentence(between, places=(('odd_run', 'odd-run'),), sets=_(BETWEEN_HEAD)))
    exactly = f'{{inches}} ÷ {{base}} × {{foot}} = {{product}}. {plain(PAST)}'
    return [*found, *(Sentence(f'{plain(words)} {exactly}', sets=_(EXACTLY)) for words in FOOT)]


def _rows(book: Stated) -> list[str]:
    gaps = [str(said(row.cells[0])) for row in turned_over_table().rows()]
    marks = [
        ' & '.join(str(said(cell)) for cell in row.cells[:2])
        for row in mark_to_mark_table(Measure(book.per)).rows()
    ]
    return [*gaps, *marks]
