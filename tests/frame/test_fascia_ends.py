"""The ends of fascias as they are printed, against the planes of their faces: miter, blade, and where the long point is."""

from __future__ import annotations

import re

import numpy as np
import pytest
from asking import ask

OVER = 'overhang = {eave = "16 in", fascia = "3/4 in"}\n'
ROW = re.compile(
    r'^  (F\S*(?:, F\S+)*) +(left|right|both) +(outside corner|inside corner|against the wall) +([\d.]+)° +([\d.]+)°  (.+)$',
    re.MULTILINE,
)


def end(own: float, other: float, turn: float, square: bool) -> tuple[str, str, str]:
    """Return the miter, the blade's tilt and the long point of a fascia along x whose mate stands at its right end.

    Given:
        own, other  rise of its slope and of its mate's, per foot
        turn        by how much the eave turns there, degrees, to the left; below 0 at an inside corner
        square      whether the fascias stand square to their slopes

    Source: both boards are as thick, so the joint's plane halves the angle between their outer faces.
    """
    rises = (own / 12, other / 12) if square else (0, 0)
    outs = np.array([0, -1, 0]), np.array([np.sin(np.radians(turn)), -np.cos(np.radians(turn)), 0])
    face, mate = (
        (out - rise * np.array([0, 0, 1])) / np.hypot(1, rise) for out, rise in zip(outs, rises, strict=True)
    )
    joint = (face - mate) / np.linalg.norm(face - mate)
    line = np.cross(face, joint)
    line *= np.sign(line[2])
    miter, blade = (
        np.degrees(np.arctan(line[0] / np.hypot(line[1], line[2]))),
        np.degrees(np.arcsin(abs(joint @ face))),
    )
    outwards = -(joint @ face) / joint[0]  # how far the cut goes on to the right on its way out of the board
    long = 'outer face' if outwards > 0 else 'back'
    edge = '' if not square else ', upper edge' if miter > 0 else ', lower edge'
    return f'{abs(miter):.2f}', f'{blade:.2f}', long + edge


def told(tmp_path, lines: str, tails: str) -> dict[tuple[str, str], tuple[str, ...]]:
    """Return each printed end by its mark, or the marks of its row, and which end it is."""
    file = tmp_path / 'roof.toml'
    file.write_text(f'{OVER}cuts.tails = "{tails}"\n{lines}')
    status, out, remarks = ask('roof', str(file), '--show', 'boards')
    assert (status, remarks) == (0, '')
    return {(row[1], row[2]): row.groups()[2:] for row in ROW.finditer(out)}


@pytest.mark.parametrize('tails', ['plumb', 'square'])
def test_corners_of_hips_and_valleys(tmp_path, tails):
    """Of a hip of 6 in 12 with ends of 9; of a wing of 8 on a main roof of 6, at each end of whose front is a hip or a valley."""
    square = tails == 'square'
    corner, inside = ('outside corner',), ('inside corner',)
    two = told(tmp_path, 'kind="hip"\npitch=6\nwidth="20 ft"\nlength="30 ft"\nhip.end_pitch=9', tails)
    hips = {
        (mark, 'both'): corner + end(*rises, 90, square) for mark, rises in (('F1', (9, 6)), ('F2', (6, 9)))
    }
    if not square:
        hips = {('F1, F2', 'both'): hips['F1', 'both']}
    assert two == hips

    wing = 'kind="wing"\npitch=6\nwidth="24 ft"\nlength="40 ft"\n[wing]\npitch=8\nwidth="12 ft"\nout="10 ft"\nfrom_left="8 ft"'
    main, own = inside + end(6, 8, -90, square), inside + end(8, 6, -90, square)
    # F1 is the front left of the wing, F4 right of it; F2 and F3 are the wing's left and right sides
    ends = {('F1', 'right'): main, ('F2', 'left'): own, ('F3', 'right'): own, ('F4', 'left'): main}
    if not square:
        ends = {('F1, F3', 'right'): main, ('F2, F4', 'left'): main}
    assert told(tmp_path, wing, tails) == ends


@pytest.mark.parametrize('tails', ['plumb', 'square'])
def test_corners_of_roofs_of_many_sides(tmp_path, tails):
    """At a wall through corners the other half of the roof would stand behind it; through middles of sides it is met square."""
    square, sides = tails == 'square', 'sides = 8\nside = "5 ft"'
    cut = end(7, 7, 45, square)
    assert told(tmp_path, f'kind="many-sided"\npitch=7\n[many-sided]\n{sides}', tails) == {
        ('F', 'both'): ('outside corner', *cut)
    }
    wall, corner = ('against the wall', *cut), ('outside corner', *cut)
    assert told(tmp_path, f'kind="bay"\npitch=7\n[bay]\n{sides}', tails) == {
        ('F1', 'left'): wall, ('F1', 'right'): corner, ('F2', 'both'): corner, ('F3', 'left'): corner, ('F3', 'right'): wall,
    }  # fmt: skip
    middles = told(tmp_path, f'kind="bay"\npitch=7\n[bay]\n{sides}\nwall_through="middles"', tails)
    assert middles == {('F1', 'right'): corner, ('F2', 'left'): corner, ('F3', 'both'): corner}
