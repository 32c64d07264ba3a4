"""The sentences of the worked examples by which a proof-reader finds their figures, each with what its figures are of.

What a template says stands here with what it must mean; `tests/test_proof_examples.py` wants every sentence in a template.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Mapping
from html import unescape

from layouts.words.examples import MARKS, PLACES
from layouts.words.say import N_, _
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
Said = Mapping[str, str]
"""From a sentence to the names of the figures at its right, then of what stands in its places; `!` before how it is framed."""
COMMON: Said = {
    N_('A garden store %(width)s wide, outside to outside of the plates, %(pitch)s, overhang %(overhang)s, ridge %(ridge)s thick; rafters %(rafters)s, seat %(seat)s; one end hipped, a wing as wide at its side. Its common, drawn on page %(page)s:'): '',
    N_('A garden store %(width)s wide, outside to outside of the plates, %(pitch)s, overhang %(overhang)s, ridge %(ridge)s thick; rafters %(rafters)s, seat %(seat)s. One end is hipped; a wing as wide stands at its side. Its common, by the table:'): '',
    N_('%(pitch)s, overhang %(overhang)s, ridge %(ridge)s thick; rafters %(rafters)s, seat %(seat)s. The common, by the table:'): '',
    N_('Run: half of %(width)s.'): 'run',
    N_('Run: level, outside of the plate to the ridge center line.'): 'run',
    N_('Line length, ridge center line to plate line.'): 'line',
    N_('Off at the ridge: half of it, <b>level</b>; %(along)s along the top edge.'): 'off-level along=off-along',
    N_('Along the top edge, all from mark %(zero)s. Cut to cut %(overall)s; from a board of %(stick)s or more.'): '',
    N_('Plumb cut, bird’s mouth: page %(page)s.'): '',
}  # fmt: skip
RAFTER: Said = {
    N_('To the tail: run and overhang, %(run)s.'): 'whole run=whole-run',
    N_('Heel, plumb, for the seat of %(seat)s, level.'): 'heel',
    N_('Height above plate: plumb, over the plate line.'): 'height',
    N_('Notch, square to the edge; wood left over it, %(left)s.'): 'notch',
    N_('That seat would cut through the stock: take deeper rafters or a shorter seat.'): '',
    N_('Along the top edge, all from mark %(zero)s, in inches.'): '',
    N_('Along the top edge, all from mark %(zero)s.'): '',
    N_('Cut to cut %(overall)s; from a board of %(stick)s or more. On the side, from square across: plumb cuts %(plumb)s, level %(level)s.'): '',
}  # fmt: skip
SHED: Said = {
    N_('A shed roof against the store’s wall, %(pitch)s, overhang %(overhang)s; rafters %(rafters)s, seat %(seat)s, on a ledger %(ledger)s thick. By the table:'): '',
    N_('a shed roof, %(pitch)s, overhang %(overhang)s; rafters %(rafters)s, seat %(seat)s, on a ledger %(ledger)s thick. By the table:'): '',
    N_('Run: level, outside of the plate to the face of the wall.'): 'run',
    N_('Line length, wall to plate line.'): 'line',
    N_('Off at the ledger: all of it, <b>level</b>, since the run goes to the wall; %(along)s along the top edge.'): 'off-level along=off-along',
    N_('%(ledger)s is read as a run.'): '',
    N_('A run to the ledger’s face, or to a bare wall, has nothing off.'): '',
}  # fmt: skip
STEPPING: Said = {
    N_('Hold the square at %(hold)s, body level, tongue plumb.'): 'steps',
    N_('Halved: a step is %(run)s of run.'): 'run=step-run',
    N_('Whole steps from mark %(zero)s:'): '',
    N_('Odd remainder, to mark %(plate)s, body &amp; tongue, of %(odd)s each way: the diagonal &amp; the rise.'): 'odd odd=odd-run',
    N_('Odd remainder, to mark %(plate)s, body &amp; tongue:'): 'odd',
    N_('No odd remainder: they end at mark %(plate)s.'): '',
    N_('Then the tail, body &amp; tongue:'): 'tail-odd',
    N_('Then the tail, %(whole)s more whole, body &amp; tongue:'): 'tail-odd whole=tail-steps',
    N_('Then the tail, %(whole)s more whole.'): 'whole=tail-steps',
    N_('Off at mark %(zero)s, along the body, level:'): 'off-level',
    N_('At mark %(plate)s off too, back towards the ridge, level:'): 'tail-off-level',
    N_('%(whole)s steps of %(set)s for %(exact)s are off by:'): 'drift whole=steps set=step-set exact=step-exact',
    N_('A plus is long.'): '',
    N_('Held at a full %(body)s the steps would end %(over)s in long.'): 'over=seventeen body=hold-body',
    N_('Check mark %(plate)s: %(length)s from mark %(zero)s in one pull of the tape.'): 'length=line',
    N_('Mark %(last)s less mark %(first)s is %(apart)s: each is rounded by itself.'): 'last=mark-last first=mark-first apart=marks-apart',
    N_('Clauses: page %(page)s.'): '',
}  # fmt: skip
CORNER: Said = {
    N_('Along the center of the top edge, all from mark %(zero)s, in inches.'): '',
    N_('Along the center of the top edge, all from mark %(zero)s.'): '',
    N_('On the <b>sides</b>, from square; blade tilted %(blade)s.'): 'side',
    N_('Upper end, on the <b>side</b>: the plumb angle from square across, blade tilted %(blade)s.'): 'side',
    N_('On the <b>top edge</b>, left square: from square across; or %(square)s on the square, marked along the %(base)s.'): 'top square=top-12',
    N_('Heel, plumb, there.'): 'heel',
    N_('Seat: level, from the heel towards the ridge.'): 'mouth-seat',
    N_('Notch, square to the edge; wood left, %(left)s.'): 'notch',
    N_('Two cheeks, to a point at that mark: on the <b>top edge</b>, or %(square)s along the %(base)s.'): 'top square=top-12',
    N_('A %(stock)s does not reach the plate, or its seat would cut it through or take half of its run. The stock that just reaches is this deep:'): 'least-depth',
    N_('A minus is towards the ridge.'): '',
}  # fmt: skip
HIP: Said = {
    N_('At the store’s hipped end, %(pitch)s, run %(run)s, overhang %(overhang)s; hips %(hips)s, %(hip)s thick, left square and dropped.'): '',
    N_('The store’s end is hipped at the store’s own pitch and run, %(pitch)s and %(run)s, overhang %(overhang)s; hips %(hips)s, %(hip)s thick.'): '',
    N_('%(pitch)s, run of the commons %(run)s, overhang %(overhang)s; hips %(hips)s, %(hip)s thick, left square and dropped.'): '',
    N_('Ridge center line to corner of plates, by the <b>common’s</b> run.'): 'line',
    N_('Line length by the <b>common</b> run, ridge center line to corner of the plates.'): 'line',
    N_('To the tail’s point: %(run)s.'): 'whole run=whole-run',
    N_('Off at the ridge, <b>level</b>; %(along)s along the top edge.'): 'off-level along=off-along',
    N_('<b>Against the ridge</b>, %(ridge)s thick: one cheek. Off, <b>level</b>; %(along)s along the top edge.'): 'off-level along=off-along',
    N_('Off between the last side common and the end common, <b>level</b>; %(along)s along the top edge.'): 'off-level along=off-along !commons',
    N_('<b>Or between</b> the last side common and the end common, %(rafter)s thick: two cheeks, to a point. Off, level; %(along)s along.'): 'between-level along=between-along',
    N_('<b>Between</b> the last side common and the end common, %(rafter)s thick: two cheeks, to a point. Off, level; %(along)s along.'): 'between-level along=between-along !commons',
    N_('From its mark on the center line the cut leaves one side so far up, the other as far down, level; %(along)s along. The long point is away from the hipped end.'): 'side-level along=side-along',
    N_('Both sides start so far from the point towards the tail, level; %(along)s along.'): 'between-side-level along=between-side-along',
    N_('One cheek through it, its long point away from the hipped end: on the <b>top edge</b>, or %(square)s along the %(base)s.'): 'top square=top-12',
    N_('Height above plate, at the corner, dropped by %(drop)s.'): 'height',
    N_('The commons’ height above plate.'): 'commons-height',
    N_('Its top is left square and <b>dropped</b>, plumb: the bird’s mouth below has the drop, take nothing more off.'): 'drop',
    N_('Its height above plate, on its center line at the corner.'): 'height',
    N_('Heel, plumb, there: its plumb depth, %(depth)s, less that height.'): 'heel',
    N_('Or <b>backed</b>: each side of the top, from square.'): 'backing',
    N_('Then it is not dropped: heel %(heel)s, seat %(seat)s.'): 'heel=backed-heel seat=backed-seat',
    N_('Tail: two cheeks, to a point, meet both fascias: %(side)s on the side, blade %(blade)s; on top %(top)s. Both sides start so far from the point towards the ridge, level; %(along)s along.'): 'tail-side-level along=tail-side-along top=top-12',
    N_('Tail: two cheeks, to a point; %(square)s, the sides as above.'): 'square=top-12',
    N_('Overall, from a board of %(stick)s or more.'): 'overall',
    N_('Overall, long point to tail’s point, %(overall)s; from a board of %(stick)s or more.'): '',
    N_('Overall, point to tail’s point, %(overall)s; from a board of %(stick)s or more.'): '',
    N_('<b>One cheek or two.</b> Here, against the ridge, one; %(past)s comes off the end common, level.'): '',
    N_('Page %(page)s adds that up.'): '',
    N_('Between the last side common and the end common two, to a point on its center line: %(level)s off, level, the sides %(side)s farther down; half a common, %(past)s, off the end common.'): 'level=between-level side=between-side-level past=between-past',
    N_('Hips against the ridge, which runs as far past its theoretical end.'): 'past',
    N_('Plane that end down by %(over)s.'): '',
    N_('Clip both sides of the common, which is thicker, %(clip)s back, with a jack’s cheek.'): '',
    N_('Hips between commons, the same.'): 'between-past',
    N_('Hips between commons; the ridge runs as far past its theoretical end.'): 'between-past',
    N_('Plane it down by %(over)s.'): 'over=between-over',
}  # fmt: skip
VALLEY: Said = {
    N_('A wing as wide as the store and of its pitch meets its side, the ridges at one height. Each valley, %(valleys)s, %(valley)s thick, runs from an inside corner to where they meet.'): '',
    N_('A wing %(width)s wide, as wide as the store and of its pitch, %(pitch)s, meets the store’s side: both ridges have one height, and each valley runs from an inside corner to where they meet. The valley is a %(valleys)s, %(valley)s thick, the ridges %(ridge)s.'): '',
    N_('%(pitch)s, run of the commons %(run)s, the ridges at one height. The valley, %(valleys)s, %(valley)s thick, runs from an inside corner to where they meet.'): '',
    N_('Ridge lines to inside corner, by the <b>common’s</b> run.'): 'line',
    N_('Line length by the <b>common</b> run, ridges’ center lines to inside corner of the plates: as a hip’s.'): 'line',
    N_('To the tail, on its center: %(run)s.'): 'whole run=whole-run',
    N_('<b>Off at the ridges</b>, level; %(along)s along the top edge.'): 'off-level along=off-along',
    N_('Two cheeks, to a point: it fits the corner of the two ridges. Both sides start so far from the point towards the tail, level; %(along)s along.'): 'side-level along=side-along',
    N_('Two cheeks, to a point: it fits the corner of the store’s ridge and the wing’s. Both sides start so far from the point towards the tail, level; %(along)s along.'): 'side-level along=side-along',
    N_('Height above plate, at the inside corner: not dropped.'): 'height',
    N_('Height above plate, over the inside corner, on its center line: the commons’. A valley is not dropped.'): 'height',
    N_('The heel stands outwards of it, level.'): 'heel-out',
    N_('The heel stands outwards of the inside corner, towards the tail, level, where the valley’s sides meet the outer faces of the plates.'): 'heel-out',
    N_('Heel there, plumb, from the seat to the underside, which falls on its way out of the corner. Plumb depth %(depth)s.'): 'heel',
    N_('Its jacks stand over its square edges by, plumb:'): 'drop',
    N_('Its jacks stand over its square edges, in line with its center, by, plumb:'): 'drop',
    N_('Tail: two cheeks, hollow, meet both fascias, the last of it by hand; %(square)s, the sides as above.'): 'square=top-12',
    N_('Tail: two cheeks, hollow, meet both fascias: %(side)s on the side, blade %(blade)s, the last of it by hand; on top %(top)s. The sides reach so far past the center’s mark, away from the ridge, level; %(along)s along.'): 'tail-side-level along=tail-side-along top=top-12',
    N_('Above, the top edge; below, its side: both sides are alike. The saw follows the heavy plumb lines. Overall, its point to the tail’s sides, %(overall)s; from a board of %(stick)s or more.'): '',
    N_('Stepped off with the square held at %(hold)s, body level: %(whole)s whole steps from mark %(zero)s, then %(level)s on the body and %(rise)s on the tongue, to mark %(plate)s.'): 'whole=steps level=odd-body rise=odd-tongue',
    N_('Stepped off with the square held at %(hold)s, body level: %(whole)s whole steps from mark %(zero)s to mark %(plate)s.'): 'whole=steps',
    N_('Stepped off as the hip, page %(page)s.'): '',
}  # fmt: skip
JACKS: Said = {
    N_('%(rafters)s, %(rafter)s thick, %(spacing)s on center from the corner, %(pitch)s, to a hip %(hip)s thick.'): '',
    N_('The first %(first)s from the corner.'): 'first=first-space',
    N_('Each rounded once: run in inches, less %(off)s (half the hip at 45°), less %(half)s (long: plus), ÷ %(base)s × exact foot. Jack %(number)s, short: %(short)s ÷ %(base)s × %(foot)s = %(along)s.'): 'off=off-by-hand half=half-by-hand short=short-by-hand foot=exact-foot along=along-by-hand',
    N_('Jack %(number)s, %(run)s from the corner: that is its own run, its line length the <b>common’s</b>.'): 'line run=last-run',
    N_('Run × the exact foot.'): '',
    N_('Plate line to hip center: the tabled length.'): '',
    N_('Off at the hip, <b>level</b>, on the jack’s center; %(along)s along.'): 'off-level along=off-along',
    N_('Half of its thickness, %(half)s, read as a run: center to either point.'): 'half-along half=half-rafter',
    N_('Three rounded figures make long %(long)s, short %(short)s.'): 'long=long-summed short=short-summed',
    N_('Short to long point along, half either side of the center.'): 'points',
    N_('Tail of every jack: plate line to tail cut.'): 'tail',
    N_('Off the end common, level: half the ridge and as off a jack.'): 'past',
    N_('Along the top edge, from mark %(zero)s; the jack with the corner at its left.'): '',
    N_('On the <b>side</b>: the plumb angle from square across, blade tilted %(blade)s.'): 'side',
    N_('On the <b>top edge</b>: from square across; or %(square)s on the square, along the %(base)s.'): 'top square=top-12',
    N_('Stepped by %(set)s for %(exact)s, jack %(number)s is off by:'): 'jack-drift set=difference exact=difference-exact',
    N_('Mouth: page %(page)s.'): '',
    N_('Every jack, how many left and how many right: page %(page)s.'): '',
}  # fmt: skip
SLOPES: Said = {
    N_('%(width)s wide, outside to outside of the plates.'): '',
    N_('Front %(first)s %(front)s, back %(second)s %(back)s.'): 'front=a-pitch back=b-pitch',
    N_('%(width)s wide. Lower %(first)s %(low)s, upper %(second)s %(high)s, on a purlin %(purlin)s thick, its center line %(run)s inside the plate line.'): 'low=a-pitch high=b-pitch run=a-run !gambrel',
    N_('Overhang %(overhang)s; ridge %(ridge)s thick; rafters %(rafters)s, seat %(seat)s.'): '',
    N_('Run: %(width)s × %(back)s ÷ (%(front)s + %(back)s); the rest.'): 'a-run b-run front=a-rise-12 back=b-rise-12',
    N_('Run: to the purlin; the rest of %(half)s.'): 'a-run b-run half=half-width',
    N_('Rise, alike: they meet.'): 'a-rise b-rise',
    N_('Rise; together %(total)s.'): 'a-rise b-rise total=rises',
    N_('Plate line.'): 'a-line b-line',
    N_('Plate line; purlin’s center line.'): 'a-line b-line',
    N_('Tail cut.'): 'a-tail-cut b-tail-cut',
    N_('Ridge cut: half of it, %(level)s <b>level</b>.'): 'a-ridge-along b-ridge-along level=ridge-level',
    N_('Purlin cut: half of it, %(level)s <b>level</b>; %(second)s’s, %(length)s less %(along)s.'): 'a-off-along b-whole level=a-off-level length=b-line along=b-tail-off-along',
    N_('Height above plate, %(first)s’s on both.'): 'a-height b-height',
    N_('Height above plate; heel %(heel)s.'): 'a-height b-height heel=a-heel',
    N_('Heel; seat %(seat)s, %(second)s’s %(other)s.'): 'a-heel b-heel other=b-mouth-seat',
    N_('Plumb cut; square %(first)s, %(second)s.'): 'a-plumb b-plumb first=a-hold second=b-hold',
    N_('Plate line and cuts along the top edge, from the ridge center line.'): '',
    N_('Lines and cuts along the top edge: %(first)s’s from the purlin’s, %(second)s’s from the ridge’s center line.'): '',
    N_('Boards of %(first)s and %(second)s or more.'): 'first=a-stick second=b-stick',
}  # fmt: skip
TITLES = {
    'common': (N_('A common rafter: the garden store'), N_('Common rafter %(mark)s'), N_('A common rafter: marks'), N_('Common rafter %(mark)s: marks')),
    'hip': (
        N_('The store’s hip'), N_('Hip %(mark)s'), N_('The store’s hip: length, upper end'), N_('Hip %(mark)s: length, upper end'), N_('The store’s hip: mouth and tail'), N_('Hip %(mark)s: mouth and tail'),
        N_('The store’s hip: marks'), N_('Hip %(mark)s: marks'), N_('The store’s hip: cuts and steps'), N_('Hip %(mark)s: cuts and steps'),
    ),
    'jacks': (N_('The store’s hip jacks'), N_('Hip jacks'), N_('Hip jack %(number)s: marks')),
    'valley': (
        N_('The wing’s valley'), N_('Valley %(mark)s'), N_('The wing’s valley: length, upper end'), N_('Valley %(mark)s: length, upper end'), N_('The wing’s valley: mouth and tail'), N_('Valley %(mark)s: mouth and tail'),
        N_('The wing’s valley: marks'), N_('Valley %(mark)s: marks'), N_('The wing’s valley: cuts and steps'), N_('Valley %(mark)s: cuts and steps'),
    ),
    'slopes': (N_('A saltbox: the woodshed'), N_('A gambrel: the workshop'), N_('Saltbox: %(first)s and %(second)s'), N_('Gambrel: %(first)s and %(second)s'), N_('A saltbox: marks of %(mark)s'), N_('A gambrel: marks of %(mark)s')),
    'shed': (N_('A shed’s rafter: the porch'), N_('Rafter %(mark)s'), N_('A shed’s rafter: marks'), N_('Rafter %(mark)s: marks')),
}  # fmt: skip
JACK_COLUMNS = {
    N_('jack'): '',
    N_('plate line to hip center'): 'line',
    N_('plate line to long point'): 'long',
    N_('plate line to short point'): 'short',
    N_('long point to tail'): 'overall',
}
SUM_OFF = N_(', in sum %(total)s; rounded once %(direct)s')
PAGE, PAGES = N_('page %(page)s,'), N_('pages %(page)s and %(other)s,')
SAID: dict[str, tuple[tuple[Said, ...], tuple[Kind, ...]]] = {
    'common': ((COMMON, RAFTER, STEPPING), (Kind.COMMON,)),
    'hip': ((HIP, CORNER, STEPPING), (Kind.HIP,)),
    'jacks': ((JACKS,), (Kind.HIP_JACK,)),
    'valley': ((VALLEY, CORNER, STEPPING), (Kind.VALLEY,)),
    'slopes': ((SLOPES, RAFTER, STEPPING), (Kind.COMMON, Kind.LOWER_RAFTER, Kind.UPPER_RAFTER)),
    'shed': ((SHED, RAFTER, STEPPING), (Kind.SHED_RAFTER,)),
}
"""What the pages of each kind say, and the members that their marks are of."""


def example_names() -> ExampleNames:
    """Return them in the language in use."""
    return ExampleNames(
        tuple(
            Example(
                kind,
                tuple(map(plain, TITLES[kind])),
                tuple(_sentences(said)),
                tuple(dict.fromkeys(_marks(members))),
                tuple((plain(head), of) for head, of in JACK_COLUMNS.items()) if kind == 'jacks' else (),
            )
            for kind, (said, members) in SAID.items()
        ),
        Citing(
            plain(PAGE), plain(PAGES),
            _before('row'), _before('rows'), _before('column'), _(PLACES['and']), _(PLACES['title']), _('in'),
        ),
        plain(SUM_OFF),
        _('Look again.'),
    )  # fmt: skip


def _before(place: str) -> str:
    return _(PLACES[place]).partition('{')[0]


def plain(words: str) -> str:
    """Return a template's words in the language in use as they stand on a page, their places in braces."""
    return unescape(
        BREAK.sub(' ', TAG.sub(lambda tag: ' ' if tag[0] == '<br>' else '', PLACE.sub(r'{\1}', _(words))))
    )


def _sentences(said: Iterable[Said]) -> Iterable[Sentence]:
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
