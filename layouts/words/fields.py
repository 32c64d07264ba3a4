"""What the fields of an answer are called."""

from __future__ import annotations

from layouts.words.say import N_, _

# fmt: off
FIELDS = (
    N_('above plate'), N_('against'), N_('along'), N_('angle'), N_('apothem'), N_('area'), N_('aside'),
    N_('at common top figure on 12'), N_('at common top from square'), N_('at common top held'),
    N_('at ridge top figure on 12'), N_('at ridge top from square'), N_('at ridge top held'),
    N_('backed hip'), N_('backing'), N_('brace'), N_('pitch found'), N_('rectangle'), N_('rectangle check'), N_('become'), N_('below plate'), N_('between commons'), N_('bevel'),
    N_('blade reach'), N_('by'), N_('caution'), N_('center lines'), N_('cheek'), N_('clip'), N_('common'),
    N_('common and jack'), N_('common at ridge'), N_('common plumb cut'), N_('corner'), N_('cut'),
    N_('cut on leg'), N_('cut on other leg'), N_('depth'), N_('depth down side'), N_('diagonal'),
    N_('diagonals should be'), N_('difference'), N_('double cheek'), N_('drop'), N_('drop plumb'),
    N_('eaves'), N_('end blade tilt'), N_('end common'), N_('end common between commons'),
    N_('end common hips on ridge'), N_('face'), N_('fall'), N_('from eave'), N_('gable stud'),
    N_('gap on'), N_('gap plumb'), N_('heel'), N_('heel back'), N_('height above plate'), N_('held'),
    N_('high if backed'), N_('high if dropped'), N_('hip'), N_('hip at least post'), N_('hip at peak'),
    N_('hip at ridge'), N_('hip at ridge long point'), N_('hip at ridge over A'),
    N_('hip at ridge over B'), N_('hip at ridge short point'), N_('hip backed'), N_('hip between commons'),
    N_('hip between commons point'), N_('hip between commons side'), N_('hip by 17 over 12'),
    N_('hip dropped'), N_('hip jacks'), N_('hip per foot of apothem'), N_('hip plumb cut'), N_('hip roof'),
    N_('hip side'), N_('hip tail'), N_('hip thickness'), N_('hip valley'), N_('hip valley at ridge'),
    N_('hips on ridge'), N_('in the roof plane'), N_('jack'), N_('jack at hip'), N_('jack at valley'),
    N_('jacks of A'), N_('jacks of B'), N_('least depth'), N_('least post across flats'),
    N_('ledger thickness'), N_('leg'), N_('length'), N_('length per foot of run A'), N_('level'),
    N_('level cut'), N_('level on body'), N_('line length'), N_('long point'), N_('long to short point'),
    N_('longest seat for a quarter'), N_('longest seat for a third'), N_('low if backed'),
    N_('low if dropped'), N_('many sided'), N_('mark'), N_('middle to corner'), N_('miter'),
    N_('nearest half pitch'), N_('notch depth'), N_('notch share of depth'), N_('number'), N_('off'),
    N_('off by per foot'), N_('other leg'), N_('overhang'), N_('own run'), N_('past end between commons'),
    N_('past end hips on ridge'), N_('peak'), N_('pitch'), N_('plan'), N_('plan from eave A'),
    N_('plan from eave B'), N_('plate length'), N_('plate miter'), N_('plumb'), N_('plumb bevel'),
    N_('plumb depth'), N_('plumb on tongue'), N_('point'), N_('point to side'), N_('push along length'),
    N_('rafter'), N_('rafter plumb cut'), N_('raise for equal overhangs'), N_('raised'), N_('ridge'),
    N_('rise'), N_('rise per foot'), N_('rise per foot of own run'), N_('roof per plan'), N_('run'),
    N_('run of step'), N_('run to'), N_('sawn'), N_('sawn between commons'), N_('sawn hips on ridge'),
    N_('seat'), N_('sheathing'), N_('shed'), N_('short point'), N_('shortening'), N_('side'), N_('side A'),
    N_('side B'), N_('side blade tilt'), N_('side leaning'), N_('side plumb'), N_('sides'), N_('sits down'), N_('slide'),
    N_('soffit'), N_('spacing'), N_('square'), N_('square cut below'), N_('square cut inset'),
    N_('square to edge'), N_('square to slope'), N_('standing plumb'), N_('stock'), N_('stock left'),
    N_('tail'), N_('top at upper end'), N_('top cut'), N_('top figure on 12'), N_('top from square'),
    N_('top held'), N_('top of planes'), N_('top of ridge'), N_('trim'), N_('two pitches'), N_('valley'),
    N_('valley at ridge'), N_('valley at ridge long point'), N_('valley at ridge short point'),
    N_('valley between ridges'), N_('valley between ridges point'), N_('valley between ridges side'),
    N_('valley jack at ridge'), N_('valley jacks'), N_('valley side'), N_('valley tail'), N_('verdict'),
    N_('way'), N_('width'), N_('within saw scale'),
)
NAMES = (
    N_('as they were'), N_('commons'), N_('commons of A'), N_('commons of B'), N_('hips'),
    N_('hips backed'), N_('hips dropped'), N_('ledger'), N_('longer'), N_('neither plate'),
    N_('neither side'), N_('not needed'), N_('on the center line'), N_('plate A'), N_('plate B'),
    N_('rafters'), N_('roof'), N_('shorter'), N_('side A'), N_('side B'), N_('square'),
    N_('towards eave A'), N_('towards eave B'), N_('towards side A'), N_('towards side B'), N_('valleys'),
    N_('wall'),
)
# fmt: on
"""What an answer's fields are called, and what stands by name in one; the letter of a side is a capital."""
LABELS = {words.lower().replace(' ', '_'): words for words in (*FIELDS, *NAMES)}


def label(name: str) -> str:
    """Return what a field, or what stands in one by name, is called."""
    return _(LABELS[name])
