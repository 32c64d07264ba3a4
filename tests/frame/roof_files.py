"""Roof files to test with: the smallest of each kind, and the lines that a faulty one gets."""

from __future__ import annotations

import pytest

from layouts.words.error import error_lines
from tablegen.errors import BookError
from tablegen.frame.asked import Asked
from tablegen.frame.roof_file import read_roof

HOUSE = 'pitch = 7\nwidth = "24 ft"\nlength = "36 ft"\n'
SMALLEST = {
    'shed': HOUSE,
    'gable': HOUSE,
    'saltbox': HOUSE + 'saltbox.back_pitch = 4',
    'gambrel': HOUSE + 'gambrel = {upper_pitch = 4, break = "6 ft"}',
    'hip': HOUSE,
    'half-hip': HOUSE + 'half-hip.gable_rise = "3 ft"',
    'wing': HOUSE + 'wing = {width = "16 ft", out = "10 ft", from_left = "4 ft"}',
    'many-sided': 'pitch = 7\nmany-sided = {sides = 8, side = "5 ft"}',
    'bay': 'pitch = 7\nbay = {sides = 8, across_flats = "9 ft"}',
}
"""The keys that a kind cannot be without, sound."""
SEE_KEYS = 'next: rafterbook roof --starter KIND prints every key of a kind'
LEAVE = 'next: leave it out'


def roof(kind: str, more: str = '', **over: object) -> Asked:
    return read_roof(f'kind = "{kind}"\n{SMALLEST[kind]}\n{more}', 'a.toml', over)


def told(written: str, **over: object) -> list[str]:
    """Return the lines that a faulty file gets, less the file's name that begins each."""
    with pytest.raises(BookError) as caught:
        read_roof(written, 'a.toml', over)
    lines = error_lines(caught.value)
    assert all(line.startswith('a.toml: ') for line in lines)
    return [line.removeprefix('a.toml: ') for line in lines]


def told_of(kind: str, more: str) -> list[str]:
    return told(f'kind = "{kind}"\n{SMALLEST[kind]}\n{more}')
