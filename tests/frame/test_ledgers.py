"""A shed's ledger: how long it is, how high it is fixed, where rafters stand on it; a beam's as far as they tell it."""

from __future__ import annotations

import json
import re

import pytest
from asking import ask
from claimed import page_text
from mpmath import mpf, sqrt
from roof_files import SEE_KEYS, roof, told_of
from test_roof_verb import sixteenths

from layouts.roofs.lines import Of, lines_of
from layouts.roofs.make import roof_bodies
from tablegen.frame.frame import frame
from tablegen.frame.pieces import to_buy

RISE, RUN, OUT, THICK = mpf(4) / 12, 120, 12, mpf('1.5')
HEIGHT = mpf('7.25') * sqrt(1 + RISE**2) - mpf('3.5') * RISE
"""Above plate, of a 2×8 on the usual seat."""
PORCH = {'pitch': 4, 'width': '10 ft', 'length': '16 ft', 'overhang.gable': '12 in', 'shed.upper': 'ledger'}


@pytest.fixture
def told(tmp_path) -> dict:
    lines = [f'{key} = {json.dumps(value)}' for key, value in PORCH.items()]
    (tmp_path / 'porch.toml').write_text('\n'.join(['kind = "shed"', *lines]), 'utf-8')
    status, out, _ = ask('roof', str(tmp_path / 'porch.toml'), '--format', 'json')
    assert status == 0
    return json.loads(out)


def test_a_ledger_goes_out_to_the_barge_rafters_and_is_bought(told):
    """Source: barge rafters stand against it as the others do, their outer faces 12 in outside the framing."""
    (ledger,) = [one for one in told['boards'] if one['kind'] == 'ledger']

    assert (ledger['number'], ledger['stock']) == (1, '2×10')
    assert ledger['length']['text'] == str(16 * 12 + 2 * OUT)
    (size,) = [one for one in told['buy']['sizes'] if one['stock'] == '2×10']
    assert json.dumps(size).count(f'"{ledger["mark"]}"') == 1


def test_a_ledger_is_fixed_where_the_tops_end(told):
    """Source: its outer face stands its thickness before the wall, to which the run goes."""
    heights = told['heights']

    assert heights['planes_meet']['text'] == sixteenths(HEIGHT + RUN * RISE)
    assert heights['ledger_top']['text'] == sixteenths(HEIGHT + (RUN - THICK) * RISE)


def test_rafters_are_laid_out_on_the_ledger_too():
    """Source: it begins 12 in before the plate."""
    framed = frame(roof('shed', **PORCH))
    (plates,) = [
        page_text(body) for body in roof_bodies(framed, to_buy(framed), 'letter') if 'id="plates"' in body
    ]

    assert 'near side on LG' in plates
    for center in range(32, 177, 16):
        near = center - THICK / 2
        assert f'\nC {sixteenths(near)} X {center} 16 {sixteenths(near + OUT)} X\n' in plates


def test_a_roof_ends_at_the_wall_on_its_plan():
    """Eaves and rakes go out by 12 in, the upper edge by nothing; the ledger goes out to both rakes."""
    lines = list(lines_of(frame(roof('shed', **PORCH))))
    (ledger,) = [line for line in lines if line.of is Of.WALL]

    assert max(y for line in lines if line.of is Of.EAVE for _x, y in (line.start, line.end)) == RUN
    assert sorted([ledger.start, ledger.end]) == [(-OUT, RUN), (16 * 12 + OUT, RUN)]


def test_only_a_ledger_has_a_depth():
    for upper in ('wall', 'against-beam', 'over-beam'):
        lines = told_of('shed', f'shed.upper = "{upper}"\nshed.depth = 9\n')
        assert 'shed.depth: nothing on this shed roof uses it; next: leave it out' in lines
    assert told_of('shed', 'shed.upper = "over-beam"') == [
        f'shed.thickness: is missing: a shed roof needs it; {SEE_KEYS}'
    ]


def test_a_beam_s_bird_s_mouth_is_told_with_its_sizes():
    """Source: 4 in 12, the seat 3 in: the heel a third of it, the height what is left of the plumb depth, the notch square to the edge."""
    more = {
        'pitch': 4,
        'width': '12 ft',
        'shed.upper': 'over-beam',
        'shed.thickness': '4 in',
        'stock.seat': '3 in',
    }
    framed = frame(roof('shed', **more))
    (sheet,) = [body for body in roof_bodies(framed, to_buy(framed), 'letter') if 'On the beam' in body]
    told = re.search(r'<td>On the beam</td><td>(.*?)</td>', sheet)[1]
    steep, deep = sqrt(1 + mpf(1) / 9), mpf('7.25')

    notch = 1 / steep
    wanted = [deep * steep - 1, mpf(1), mpf(3), notch, deep - notch]
    assert told == (
        'a second bird’s mouth, its heel at the face of the beam: height above the beam {}, heel {}, both plumb; seat {}, level; '
        'notch {} and wood left {}, square to the edge'
    ).format(*map(sixteenths, wanted))
