"""Cautions in words: what is said of a roof's numbers, and the clause that each limit is from."""

from __future__ import annotations

from layouts.words.fields import label
from layouts.words.say import N_, _, say
from tablegen.roof.called import Called
from tablegen.roof.cautions import Caution

MESSAGES = {
    'caution.defers': N_('Local code and a licensed designer decide.'),
    'caution.not_at_an_end': N_(
        'With a tail outside it, it is not at the end of the member: the stock left over it and the overhang govern.'
    ),
    'caution.low_slope': N_(
        'Under {rise} in {base} the ridge, hips and valleys are designed as beams, and some coverings leak.'
    ),
    'caution.low_shed': N_('Under {rise} in {base} some coverings leak: each has its own least slope.'),
    'caution.steep': N_(
        'Any roof is a fall. The steeper it is, the more is needed: scaffold, roof brackets, a tied-off harness.'
    ),
    'caution.past_a_quarter': N_('The notch takes more than a quarter of the depth.'),
    'caution.past_a_third': N_('The notch takes more than a third of the depth.'),
    'caution.long_tail': N_('A rafter notched at the plate overhangs by more than {most} in.'),
    'caution.thin_tail': N_('Less than {least} in of stock is left over the notch of a rafter with a tail.'),
    'caution.short_seat': N_(
        'The seat bears on less than {least} in of wood or metal; on masonry or concrete {masonry} in is the least.'
    ),
    'caution.look_at_the_seat': N_(
        'Look again where the seat bears on less than {least} in of wood or metal; on masonry or concrete {masonry} in '
        'is the least.'
    ),
    'caution.short_seat_on_masonry': N_(
        'On masonry or concrete the seat would bear on less than {masonry} in.'
    ),
    'caution.shallow_hip': N_(
        'Less deep than the cut end of the rafters, which is as long as their plumb cut.'
    ),
    'caution.source.ends': N_(
        'a quarter at the ends of a member: IRC 2006 and 2009 R802.7.1; later editions refer to R502.8.1'
    ),
    'caution.source.third': N_('a third: common practice, no source'),
    'caution.source.custom': N_('common practice, no source'),
    'caution.source.cantilevers': N_(
        'IRC 2006 and 2009 R802.7.1 exception; R802.7.1.1 in 2024, and from 2012 on from memory'
    ),
    'caution.source.with_a_tail': N_('with a tail: {source}'),
    'caution.source.ridge_as_beam': N_('IRC 2006 and 2009 R802.3; 2018 and later R802.4.4'),
    'caution.source.coverings': N_('IRC 2021 R905.2.2 to R905.15.1'),
    'caution.source.thin_tail': N_(
        'IRC 2024 R802.7.1.1, and from 2012 on from memory; 2006 and 2009 R802.7.1 exception: 4 in nominal'
    ),
    'caution.source.bearing': N_('IRC 2006 to 2024 R802.6'),
    'caution.source.hip_depth': N_('IRC 2006 and 2009 R802.3; 2018 and later R802.4.3'),
}


def caution_text(one: Caution) -> str:
    """Return what a caution says."""
    return ' '.join(map(say, one.says))


def caution_source(one: Caution) -> str:
    """Return the clauses that a caution is from."""
    return '; '.join(map(say, one.sources))


def called_text(called: Called) -> str:
    """Return a caution with those who call for it, and its clauses."""
    of = ', '.join(map(label, called.of))
    one = called.caution
    return _('Caution, {of}: {text} ({source})').format(
        of=of, text=caution_text(one), source=caution_source(one)
    )
