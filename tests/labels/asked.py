"""Roofs that `find` is asked about: of odd sizes, so that no two figures agree but those that must."""

from __future__ import annotations

PITCH, RUN = '7 1/2', '10 ft 5 in'
ROOF = ('--stock', '2x8', '--seat', '3 1/2', '--overhang', '16 in')
HIPS = ('--hip-stock', '2x10', '--hip-thickness', '3 1/2', '--rafter-thickness', '1 3/4')
VALLEYS = ('--valley-stock', '2x12', '--valley-thickness', '2 1/2', '--ridge-thickness', '3/4')
ASKED = {
    'regular': (*ROOF, *HIPS, *VALLEYS, '--plate-length', '31 ft'),
    'two pitches': (*ROOF, *HIPS, *VALLEYS, '--with', '5'),
    'two pitches at 120': (*ROOF, *HIPS, *VALLEYS, '--with', '5', '--corner', '120'),
    'eight sides': (*ROOF, *HIPS, '--sides', '8'),
    'wall': (*ROOF, '--shed', 'wall'),
    'ledger': (*ROOF, '--shed', 'ledger', '--ledger-thickness', '2 1/2'),
    'face of a ledger': (*ROOF, '--shed', 'ledger', '--ledger-thickness', '2 1/2', '--run-to', 'ledger'),
}
