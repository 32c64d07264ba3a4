"""The sheets of a roof: figures from both ends of a board under their printed heads, drawings by their ink, every kind set within its pages."""

from __future__ import annotations

import json
import re
import subprocess
from collections import Counter
from functools import cache
from itertools import count
from pathlib import Path

import pytest
from asking import ask
from claimed import claims, page_text, strange
from each import some
from inked import inked
from mpmath import mpf, sqrt
from printed_words import words_of
from pseudo import spoken
from pypdf import PdfReader
from roof_files import roof
from test_roof_verb import sixteenths

from layouts.build import build_roof
from layouts.roofs.make import SIDE_MM, roof_bodies
from layouts.sheets.fold import PAPERS_MM
from tablegen.frame.asked import Asked
from tablegen.frame.frame import frame
from tablegen.frame.pieces import to_buy

HIP = (
    'roof', '--kind', 'hip', '--pitch', '7', '--width', '24 ft', '--length', '36 ft', '--overhang', '16 in',
    '--hip-stock', '2x10',
)  # fmt: skip
SLOPE = mpf(7) / 12
STEEP, HIP_STEEP = sqrt(1 + SLOPE**2), sqrt(1 + SLOPE**2 / 2)
"""Inches along a rafter for an inch of its level run: a common's, and a hip's, which rises as much over √2."""
ROOT2, HALF = sqrt(mpf(2)), mpf(3) / 4
"""HALF of the thickness of any board here."""
ROOFS: dict[str, dict[str, object]] = {
    'shed': {'width': '16 ft', 'shed.upper': 'ledger', 'shed.thickness': '1 1/2 in'},
    'gable': {'overhang.gable': '16 in', 'length': '100 ft'},
    'saltbox': {'cuts.tails': 'square'},
    'gambrel': {},
    'hip': {'hip.end_pitch': 9, 'cuts.hip_heads': 'single'},
    'half-hip': {'overhang.fascia': '3/4 in', 'cuts.hips': 'backed'},
    'wing': {'wing.valleys': 'blind'},
    'many-sided': {'cuts.tails': 'square'},
    'bay': {},
}
CAUTION = re.compile('<b>[^<]*:</b>[^<]*\\([^<]*</p>')
"""On a marking sheet, with its clause, which stands in the lists only where the sheet is full."""
WIDE = {'overhang.eave': '16 in'}
DIGIT_EM = 0.713
"""Height of a digit of the typeface, over its size."""
MIXED = re.compile(r'\d+(?: \d+/\d+)?(?:/\d+)?')


OF_EACH_ROOF = re.compile(
    r'<h[12].*?</h[12]>|<table(?! class="facts").*?</table>|<tr><td>Stands on</td>.*?</tr>|<p>Bays.*?</p>|<p><b>[^<]*</b>: .*?</p>'
    r'|<p class="slopes">.*?</p>|<b>Marking sheets:.*?</p>|Without room.*?</p>|<b>Caution:</b>.*?</p>|<span class="whole">.*?</div>|<p class="said"><b>Buy.*?</p>|<div class="asked">.*?</div></div>',
    re.DOTALL,
)
"""Titles, tables, slopes, marks in a row, what is bought; and cautions, which are proven by their clauses."""


@cache
def bodies(kind: str) -> list[str]:
    """Return the HTML of each sheet of a small roof."""
    framed = frame(small(kind))
    return roof_bodies(framed, to_buy(framed), 'letter')


def small(kind: str) -> Asked:
    return roof(kind, **ROOFS[kind])


@pytest.fixture(scope='module')
def sheets(tmp_path_factory) -> Path:
    """Return a hip roof's sheets."""
    out = tmp_path_factory.mktemp('roof') / 'roof.pdf'
    status, said, remarks = ask(*HIP, '--pdf', str(out))
    assert (status, remarks) == (0, '')
    assert f'{out}: {len(PdfReader(out).pages)} pages, letter paper\n' in said
    return out


@pytest.fixture(scope='module')
def pages(sheets) -> list[str]:
    """Return the printed lines of each page."""
    told = subprocess.run(['pdftotext', '-layout', sheets, '-'], capture_output=True, text=True, check=True)
    return told.stdout.split('\f')[:-1]


def page_of(pages: list[str], title: str) -> str:
    """Return the page headed so, and what runs on from it."""
    (page,) = [one for one in pages if re.sub(r'\s+', ' ', one).strip().startswith(title)]
    return page


def row(page: str, name: str) -> list[str]:
    """Return the cells of the one row that a name begins."""
    (line,) = [one for one in page.splitlines() if re.match(rf'\s*([c\d]\s+)?{re.escape(name)}(\s|$)', one)]
    return re.split(r'\s{2,}', line.strip().partition(name)[2].strip())


def test_a_hip_is_marked_from_either_end(pages):
    """Source: in plan its ends stand √2 times the commons' from the corner; half a common's thickness comes off, askew."""
    page = page_of(pages, 'H hip')
    first, plate, last = (
        (at * ROOT2 - off * ROOT2) * HIP_STEEP for at, off in ((0, -HALF), (144, 0), (160, 0))
    )
    side = HALF * HIP_STEEP
    marks = {
        'The point, on the center of the top': first,
        'Both cheeks, on the sides': first + side,
        'Corner of plates: heel': plate,
        'Tail, both sides': last - side,
        'Tail’s point': last,
    }
    for name, at in marks.items():
        assert row(page, name) == [sixteenths(at - first), sixteenths(last - at)], name
    assert row(page, 'Ridge center line')[0] == f'{sixteenths(first)} in before the board begins'


def test_steps_at_the_stamped_seventeen_are_told_from_the_tape(pages):
    """Source: 17 on the body for √288, twelve times; and in plan a hip's edge stands half its thickness, askew, nearer to each eave."""
    page = page_of(pages, 'H hip')
    long = 12 * (sqrt(mpf(17**2 + 7**2)) - sqrt(mpf(288 + 7**2)))

    assert row(page, 'Steps’ error') == [
        f'{sixteenths(long)} in past mark 3, with the square held so: tape the marks'
    ]
    drop = sixteenths(HALF / ROOT2 * SLOPE)
    assert row(page, 'Top edge') == [f'dropped {drop} in, plumb, on its center: its top stays square']
    assert 'Steps’ error' not in page_of(pages, 'C, E common and end common')


def test_jacks_share_a_page_and_a_table(pages):
    """Source: a jack's center line ends half a hip's thickness, askew, short of the hip; its sides half its own more or less."""
    page = page_of(pages, 'HJ1–HJ8 hip jack')
    first = HALF * ROOT2 - HALF
    for number in range(1, 9):
        plate, last = 16 * number, 16 * number + 16
        cells = MIXED.findall(' '.join(row(page, f'HJ{number}')))
        wanted = [
            last - first,  # overall
            last - first - HALF,  # 2 from the lower end: the center
            last - first - 2 * HALF,
            plate - first,  # 4 from the upper end: the plate line
        ]
        assert cells[1:5] == [sixteenths(level * STEEP) for level in wanted], number
    assert row(page, 'Plate line: heel') == ['table below', sixteenths(16 * STEEP)]
    assert row(page, 'Long point, long side')[0] == '0'


def test_figures_to_saw_by_are_read_in_gloves(sheets):
    printed = {word.text: word.size * DIGIT_EM for page in words_of(sheets)[3:7] for word in page}

    for word in ('165', '13/16', '242', '35', '15/16', '22.42°', '147'):
        assert printed[word] >= 3, word


def test_json_tells_the_same_from_both_ends(pages):
    told = json.loads(ask(*HIP, '--format', 'json')[1])
    (hip,) = [one for one in told['members'] if one['mark'] == 'H']
    (plate,) = [one for one in hip['tape'] if one['line'] == 'plate']

    printed = row(page_of(pages, 'H hip'), 'Corner of plates: heel')
    assert [plate[way]['text'] for way in ('from_upper', 'from_lower')] == printed


def test_what_a_hip_stands_on_is_told_as_of_other_members(pages):
    """Once at each corner, between the two slopes that meet there."""
    ends = [(front, end) for end in ('left end', 'right end') for front in ('front', 'back')]
    told = re.split(
        '; ',
        re.sub(r'\s+', ' ', page_of(pages, 'H hip').partition('Stands on')[2].partition('Drawn')[0]).strip(),
    )

    assert sorted(told) == sorted(f'corner of {front} and {end}: 1' for front, end in ends)
    assert row(page_of(pages, 'C, E common and end common'), 'Stands on') == [
        'front: 10; back: 10; left end: 1; right end: 1'
    ]


def test_commons_and_end_commons_are_cut_alike(pages):
    page = page_of(pages, 'C, E common and end common')

    assert row(page, 'Plate line: heel') == [sixteenths((144 - HALF) * STEEP), sixteenths(16 * STEEP)]
    assert row(page, 'Tail cut') == [sixteenths((160 - HALF) * STEEP), '0']
    assert row(page, 'Steps') == ['from line c, the ridge center line: 12 whole, to mark 2']


def test_plates_and_ridge_are_laid_out_from_their_left_end(pages):
    """Source: the ridge is as much shorter than the plate as the roof is wide, and half a common longer at either end."""
    page = page_of(pages, 'Layout of the plates')
    front = page[page.index('front and back') : page.index('left end and right end')]
    bays = r'(HJ\d [LR]|C) +([\d /]+) X +(\d+)(?: +(16))?(?: +(\d[\d /]*) X)?(?= {2,}|\n)'
    found = re.findall(bays, front)

    jacks = [f'HJ{n} R' for n in range(1, 9)], [f'HJ{n} L' for n in range(8, 0, -1)]
    assert sorted(found, key=lambda one: mpf(one[2])) == [
        (
            mark,
            sixteenths(center - HALF),
            str(center),
            '16' if center > 16 else '',
            sixteenths(center - HALF - (144 - HALF)) if mark == 'C' else '',
        )
        for mark, center in zip([*jacks[0], *['C'] * 10, *jacks[1]], count(16, 16), strict=False)
    ]


@pytest.mark.parametrize('kind', some(list(ROOFS)))
def test_no_word_of_a_drawing_meets_a_line_or_another(kind):
    for body in bodies(kind):
        for image in re.findall('<img[^>]*>', body):
            assert inked(image).collisions() == [], body[:300]


def test_the_words_of_the_sheets():
    """Every sentence of all kinds' sheets: each held against the relations before its line was written."""
    told = claims('roof')
    wanted, used, unknown = (*told['sheets'], *told['answer']), set(), []
    for kind in ROOFS:
        for body in bodies(kind):
            unknown += strange(page_text(OF_EACH_ROOF.sub(' ', body)), wanted, {}, used, in_order=False)

    assert unknown == []
    assert [line for place, line in enumerate(told['sheets']) if place not in used] == []


def test_each_end_past_the_saw_s_scale_says_how_deep_its_cut_is():
    """Source: an L's upper hip of 6 and 8 in 12: cut at 53.13° across half of 1 1/2 in above, against two commons, across all of it below."""
    ell = {'pitch': 6, 'wing.pitch': 8, 'wing.width': '12 ft', 'wing.from_left': 0, 'wing.main_ends': 1}
    framed = frame(roof('wing', **ell))
    (sheet,) = [body for body in roof_bodies(framed, to_buy(framed), 'letter') if '<h1>UH' in body]
    found = dict(
        re.findall(r'<td>(Past 45° \w+)</td>.*?reaches ([\d /]+ in)', sheet.replace('\u00a0', ' '), re.DOTALL)
    )

    assert found == {'Past 45° above': '1 1/4 in', 'Past 45° below': '2 1/2 in'}


def test_boxes_of_both_hands_leave_room_for_the_figures(tmp_path):
    """Eight jacks of each hand, and nine figures beside them."""
    framed = frame(roof('many-sided', **{'many-sided.side': '6 ft'}))
    build_roof(framed, to_buy(framed), 'letter', tmp_path / 'roof.pdf')
    width, _height = PAPERS_MM['letter']
    assert [
        word for page in words_of(tmp_path / 'roof.pdf') for word in page if word.right > width - SIDE_MM + 1
    ] == []


def test_longer_words_stand_within_the_paper(tmp_path):
    with spoken(tmp_path):
        framed = frame(
            roof('wing', width='24 ft', length='60 ft')
        )  # many boards of one mark, many marks on a sheet
        build_roof(framed, to_buy(framed), 'a4', tmp_path / 'roof.pdf')
        found = (CAUTION.sub(' ', body) for body in roof_bodies(framed, to_buy(framed), 'a4'))
        said = ' '.join(map(page_text, found))
    width, height = PAPERS_MM['a4']
    printed = words_of(tmp_path / 'roof.pdf')
    legible = ' '.join(word.text for page in printed for word in page)
    assert not Counter(re.findall(r'\d+', said)) - Counter(re.findall(r'\d+', legible)), 'off the paper'
    for page in printed:
        for word in page:
            assert SIDE_MM - 1 < word.left < word.right < width - SIDE_MM + 1, word
            assert word.foot < height - 7, word


def test_what_the_sheets_have_no_use_for_is_refused(tmp_path):
    out = tmp_path / 'roof.pdf'
    for more, said in (
        (('--paper', 'a4'), '--paper: only the sheets that --pdf writes have a use for it'),
        (('--pdf', 'roof.txt'), "--pdf: 'roof.txt' is no PDF"),
        (('--pdf', str(out), '--format', 'json'), '--format: the sheets hold everything'),
        (('--pdf', str(out), '--paper', 'a5'), "--paper: 'a5' is unknown"),
    ):
        status, _, remarks = ask(*HIP, *more)
        assert (status, said in remarks) == (2, True), remarks
    assert not list(tmp_path.iterdir())
