"""Reading a roof file: the question about one whole roof, and every fault of it together."""

from __future__ import annotations

from collections.abc import Mapping
from fractions import Fraction
from typing import Any

from msgspec.structs import replace

from tablegen.errors import BookError, SettingsFaults, did_you_mean, meant
from tablegen.frame.asked import LEDGER_IN, Asked, RidgeBoard, Shed, TailCut, Upper, Wing
from tablegen.frame.roof_keys import (
    FASCIA,
    FIELDS,
    KEYS,
    KINDS,
    MEASURE,
    RIDGE,
    Values,
    needed,
    readers,
    unused,
)
from tablegen.frame.sizes import faults_of_sizes
from tablegen.frame.wings import least_gable_overhang
from tablegen.messages import Message, message
from tablegen.numbers.figure import Measure, length_rounded_up
from tablegen.written.files import read_toml
from tablegen.written.keys import given_twice, leaves, truth


def read_roof(written: str, source: str, over: Mapping[str, object] | None = None) -> Asked:
    """Return the question that a roof file asks.

    Given:
        written  the file's text, TOML; '' for none
        source   what to call it in an error
        over     values by the file's keys, which stand over its own: those of a command line

    Errors:
        SettingsFaults with every fault found, those of sizes that do not go together once each can be read;
        BookError where the text is no TOML
    """
    found = leaves(read_toml(written, source), KEYS)
    values = dict(found) | dict(over or {})
    faults = given_twice(found)
    read = _read(values, faults)
    kind = read.get('kind')
    if kind is not None:
        faults += _faults_of_kind(kind, values, read)
    elif 'kind' not in values:
        faults.append(BookError('kind', message('roof_file.no_kind'), tuple(KINDS)))
    if faults:
        raise SettingsFaults(source, faults)
    asked = _asked(str(kind), read)
    if faults := faults_of_sizes(asked):
        raise SettingsFaults(source, faults)
    return asked


def _read(values: Mapping[str, object], faults: list[BookError]) -> dict[str, Any]:
    """Return the values that can be read; the faults of the others are added to those known."""
    steep = False
    if 'steep' in values:
        try:
            steep = truth(values['steep'], 'steep')
        except BookError as fault:
            faults.append(fault)
    known, read = readers(steep), {}
    for key, value in values.items():
        try:
            if key not in KEYS:
                raise _unknown(key)
            if key in known:
                read[key] = known[key](value, key)
        except BookError as fault:
            faults += fault.each()
    return read


def _unknown(key: str) -> BookError:
    """Return the fault of a key that there is none of, with those of its table, of that name in others, or nearly called so."""
    table, _dot, name = key.rpartition('.')
    beside = tuple(known for known in KEYS if table and known.rpartition('.')[0] == table)
    see = message('roof_file.see_keys')
    if beside:
        near = meant(name, [known.rpartition('.')[2] for known in beside], see)
        return BookError(key, message('setting.unknown_key'), beside, near)
    own = tuple(known for known in KEYS if known.rpartition('.')[2] == name)
    advice = did_you_mean(own[0]) if len(own) == 1 else see
    return BookError(key, message('setting.unknown_key'), own, advice if own else meant(key, KEYS, advice))


def _faults_of_kind(kind: str, values: Mapping[str, object], read: Values) -> list[BookError]:
    """Return the faults of keys that such a roof has no use for, or cannot be without."""
    useless = unused(kind, read)
    faults = [
        BookError(key, message('roof_file.no_use', kind=kind), '', message('roof_file.leave_out'))
        for key in values
        if key in useless
    ]
    faults += [
        BookError(key, message('roof_file.missing', kind=kind), '', message('roof_file.see_keys'))
        for key in needed(kind, read)
        if key not in values
    ]
    sizes = [f'{kind}.side', f'{kind}.across_flats']
    if sizes[0] in KEYS and sum(key in values for key in sizes) != 1:
        faults.append(BookError(sizes, message('roof_file.one_of_two'), '', message('roof_file.give_one')))
    if read.get('overhang.measured_to') == FASCIA:
        wrong = {
            'roof_file.no_fascia': not read.get('overhang.fascia'),
            'roof_file.square_tails': read.get('cuts.tails') is TailCut.SQUARE,
        }
        advice = message('roof_file.to_framing')
        faults += [
            BookError('overhang.measured_to', Message(name), '', advice) for name in wrong if wrong[name]
        ]
    return faults


def _asked(kind: str, read: Values) -> Asked:
    """Return the question, what is usual standing where nothing was read."""

    def of(keys: Mapping[str, str]) -> dict[str, Any]:
        return {field: read[key] for key, field in keys.items() if key in read}

    record, said = KINDS[kind], of(FIELDS)
    if 'rafters' in said:  # hips and valleys are of their size, where the file says no other
        said = {'hips': said['rafters'], 'valleys': said['rafters'], **said}
    asked = Asked(
        **{'name': '', **said},
        kind=record.record(**of(record.keys)),
        ridge=RidgeBoard(**of(RIDGE)) if read.get('ridge.board', True) else None,
        measure=Measure(**of(MEASURE)),
    )
    if isinstance(asked.kind, Shed) and asked.kind.upper is Upper.LEDGER and not asked.kind.thickness_in:
        asked = replace(asked, kind=replace(asked.kind, thickness_in=LEDGER_IN))
    if read.get('overhang.measured_to') == FASCIA:
        asked = replace(asked, overhang_in=asked.overhang_in - asked.fascia_in)
    if isinstance(asked.kind, Wing) and 'overhang.gable' not in read:
        least = length_rounded_up(least_gable_overhang(asked, asked.kind), asked.measure)
        asked = replace(asked, gable_overhang_in=Fraction(least.count, least.per))
    return asked
