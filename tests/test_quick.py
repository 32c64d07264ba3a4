"""Pages set the quick way against the same pages as the typesetter sets them: the same dots, words and links."""

from __future__ import annotations

import re
import subprocess
import sys
from collections.abc import Iterator
from contextlib import nullcontext
from pathlib import Path
from shutil import copyfile

import pypdfium2
import pytest
from complete import COMPLETE
from msgspec.structs import replace
from pypdf import PdfReader

from layouts import command
from layouts.cards.html import faces_job
from layouts.cards.plan import plan_cards
from layouts.html.page_html import _style, pages_html, style
from layouts.pages.book import Plan, plan
from layouts.pdf import typeset
from layouts.pdf.documents import Job
from layouts.pdf.typeset import Remark, set_document
from layouts.quick.looks import AFTER, FAR, NUMBERED
from layouts.quick.refusal import NotPlain
from layouts.quick.words import Cut
from layouts.sheets.instructions import instructions_job
from tablegen.settings import read_settings

SOME = (1, 10, 24)
"""Pitches: least, of two digits, steepest."""
BOOKS = {
    'complete': f'{COMPLETE}pitches = {list(SOME)}',
    'compact': f'pitches = {list(SOME)}\ntrim = "large"\npaper = "a4"\nowner = "The Garden Store"',
    'feet': 'pitches = ["7 1/2"]\nlengths = "feet-inches"\nparts = ["common", "jacks", "values"]',
}
DPI = 110
BROKEN_EARLY = {('compact', 'example_porch_table')}
"""Where the typesetter ends a line after the first word of a stretch that fits but for the blank at its end; the quick way goes on."""


def one_of_each(planned: Plan) -> list[int]:
    """Return the first page, from 0, of every kind, left and right, with and without what only some have below."""
    found: dict[object, int] = {}
    for place, page in enumerate(planned.pages()):
        below = getattr(page.content, 'below', None) or getattr(page.content, 'caution', None)
        found.setdefault((page.template, page.side, bool(below), page.tab and page.tab.turned), place)
    return list(found.values())


def dots(pdf: Path) -> Iterator[bytes]:
    """Return the dots of every page."""
    document = pypdfium2.PdfDocument(pdf)
    for page in document:
        yield page.render(scale=DPI / 72, grayscale=True).to_numpy().tobytes()
    document.close()


def told(pdf: Path) -> list[tuple[str, list[object]]]:
    """Return the words of every page, in the order in which they are drawn, and where its links lead and lie.

    Notes:
        1. The typesetter has a link twice where it holds an element, such as a number that is kept whole.
    """
    document = pypdfium2.PdfDocument(pdf)
    words = [' '.join(page.get_textpage().get_text_bounded().split()) for page in document]
    links = [
        [
            (
                str(link.get('/Dest') or link['/A']['/URI']),
                tuple(round(float(edge), 2) for edge in link['/Rect']),
            )
            for link in (one.get_object() for one in page.get('/Annots', ()))
        ]
        for page in PdfReader(pdf).pages
    ]
    document.close()
    return [(said, list(dict.fromkeys(led))) for said, led in zip(words, links, strict=True)]


def refuse(*_args: object) -> None:
    raise NotPlain('everything')


def set_both_ways(job: Job, monkeypatch) -> tuple[list[Path], list[int]]:
    """Return a document set the quick way, its drawings too, and the typesetter's own, and which pages, from 0, were set quickly."""
    quickly: list[int] = []
    files = [job.out.with_name('quick.pdf'), job.out.with_name('slow.pdf')]
    with monkeypatch.context() as changed:
        changed.setattr('layouts.quick.pages.Quick.page', counted(quickly))
        changed.setattr('weasyprint.images.SVGImage.draw', refuse)
        set_document(replace(job, out=files[0]))
    with monkeypatch.context() as changed:
        changed.setattr(typeset, 'quick_document', refuse)
        set_document(replace(job, out=files[1]))
    return files, quickly


@pytest.mark.parametrize('name', BOOKS)
def test_the_quick_way_and_the_slow_way_make_the_same_dots(name, tmp_path, monkeypatch):
    planned = plan(read_settings(BOOKS[name], ''))
    places = one_of_each(planned)
    if name == 'complete':  # what both editions have is compared in the other
        shown = {draft.template for draft in plan(read_settings(BOOKS['compact'], '')).drafts}
        places = [place for place in places if planned.drafts[place].template not in shown]
    html = pages_html([planned.pages()[place] for place in places], 'pages')
    job = Job(html, style(planned.trim), len(places), tmp_path / 'pages.pdf')
    files, quickly = set_both_ways(job, monkeypatch)

    kinds = [(place + 1, planned.drafts[place].template) for place in places]
    pages = list(zip(kinds, *map(dots, files), *map(told, files), strict=True))
    same = [page for page in pages if (name, page[0][1]) not in BROKEN_EARLY]
    assert [kind for kind, a, b, *_told in same if a != b] == []
    assert [(kind, a, b) for kind, *_dots, a, b in same if a != b] == []
    assert all(a[0] == b[0] for *_rest, a, b in pages)
    assert [kind for place, kind in enumerate(kinds) if place not in quickly] == []


@pytest.mark.parametrize('name', ['instructions', 'of A4 in large print', 'id-1', 'a6', 'one pitch'])
def test_instructions_and_cards_are_set_the_quick_way_with_the_same_dots(name, tmp_path, monkeypatch):
    if name == 'instructions':
        job = instructions_job(plan(read_settings(BOOKS['feet'], '')), tmp_path)
    elif name == 'of A4 in large print':
        job = instructions_job(plan(read_settings(BOOKS['compact'], '')), tmp_path)
    elif name == 'one pitch':
        job = faces_job(plan_cards(read_settings('pitches = [6]', ''), 'half-letter'), 'Rafters', tmp_path)
    else:
        job = faces_job(plan_cards(read_settings('', ''), name), 'Rafters', tmp_path)
    files, quickly = set_both_ways(job, monkeypatch)

    assert quickly == list(range(job.pages))
    assert list(dots(files[0])) == list(dots(files[1]))
    assert told(files[0]) == told(files[1])


PATTERN = ['pattern', '12', '--stock', '2x6', '--seat', '3', '--member', 'hip', '--out']
ROOF = ['roof', '--kind', 'gable', '--pitch', '7', '--width', '8 ft', '--length', '8 ft', '--pdf']


@pytest.mark.parametrize(('room', 'asked'), [('patterns', PATTERN), ('roofs', ROOF)])
def test_patterns_and_drawings_of_a_roof_are_the_same_dots_quickly(room, asked, tmp_path, monkeypatch):
    set_so = []

    def typeset(jobs: list[Job]) -> None:
        (job,) = jobs
        files, quickly = set_both_ways(replace(job, out=tmp_path / 'pages.pdf'), monkeypatch)
        copyfile(files[0], job.out)
        set_so.append((quickly == list(range(job.pages or 0)), *files))

    monkeypatch.setattr(f'layouts.{room}.make.typeset', typeset)
    command.main([*asked, f'{tmp_path}/made.pdf'])
    ((all_quickly, *files),) = set_so

    # Patterns are upright and across; sheets of a roof run on, and the typesetter sets them.
    assert (
        len({page.mediabox.width for page in PdfReader(files[0]).pages}) == {'patterns': 2, 'roofs': 1}[room]
    )
    assert all_quickly
    assert list(dots(files[0])) == list(dots(files[1]))
    assert told(files[0]) == told(files[1])


def counted(quickly: list[int]):
    """Return what sets a page and tells which, from 0, was set the quick way."""
    from layouts.quick.pages import Quick

    page, asked = Quick.page, iter(range(1000))

    def counting(self, html):
        place = next(asked)
        made = page(self, html)
        quickly.append(place)
        return made

    return counting


def test_no_selector_asks_for_a_place_beyond_those_that_looks_tell_apart():
    sheets = ''.join(re.sub(r'"[^"]*"', '', _style(name)) for name in ('book', 'words', 'card'))

    asked = set(re.findall(r':nth-child\((.*?)\)', sheets)) - {'odd', 'even'}
    assert [number for number in asked if int(number) > FAR] == []
    assert re.findall(r':nth-(?!child)|:only|:has|~', sheets) == []
    assert set(re.findall(r'(\w+):nth-child', sheets)) <= NUMBERED
    after = {re.split(r'[.:]', each)[0] or each for each in re.findall(r'\+ ([\w.:-]+)', sheets)}
    assert after - AFTER == {'.page', '.columns'}  # a section, a div


def test_a_typesetter_that_is_built_otherwise_sets_the_slow_way_and_that_is_told(tmp_path, monkeypatch):
    def gone(self, style):
        raise AttributeError('no such layout')

    planned = plan(read_settings(BOOKS['feet'], ''))
    page = next(page for page in planned.pages() if page.template == 'grid')
    job = Job(pages_html([page], 'page'), style(planned.trim), 1, tmp_path / 'quick.pdf')
    set_document(job)
    before = list(dots(job.out))
    monkeypatch.setattr(Cut, '__init__', gone)
    with pytest.warns(Remark, match='slow_way') as said:
        set_document(job)

    assert len(said) == 1
    assert list(dots(job.out)) == before


def test_fonts_that_are_cut_quickly_are_the_same_to_the_byte(tmp_path, monkeypatch):
    planned = plan(read_settings(BOOKS['compact'], ''))
    places = one_of_each(planned)[:12]
    html = pages_html([planned.pages()[place] for place in places], 'pages')
    files = [tmp_path / 'quick.pdf', tmp_path / 'slow.pdf']
    monkeypatch.setattr(typeset, 'static_cuts', nullcontext)  # else they are cut once, one way or the other
    set_document(Job(html, style(planned.trim), len(places), files[0]))
    monkeypatch.setattr(typeset, 'quick_cuts', nullcontext)
    set_document(Job(html, style(planned.trim), len(places), files[1]))

    assert files[0].read_bytes() == files[1].read_bytes()


def test_a_document_is_the_same_to_the_byte_whatever_was_set_before_it(tmp_path, monkeypatch):
    planned = plan(read_settings(BOOKS['feet'], ''))
    html = [pages_html(planned.pages()[place : place + 2], 'pages') for place in (4, 0, 2)]
    jobs = [Job(one, style(planned.trim), 2, tmp_path / f'{n}.pdf') for n, one in enumerate(html)]
    set_document(jobs[-1])
    alone = jobs[-1].out.read_bytes()
    styles: dict[str, tuple[object, object]] = {}
    quickly: list[int] = []
    monkeypatch.setattr('layouts.quick.pages.Quick.page', counted(quickly))
    for job in jobs:
        set_document(job, styles=styles)

    assert len(styles) == 1
    assert quickly == list(range(6))
    assert jobs[-1].out.read_bytes() == alone


def test_a_style_sheet_read_in_parts_sets_the_same_to_the_byte(tmp_path, monkeypatch):
    planned = plan(read_settings(BOOKS['compact'], ''))
    places = one_of_each(planned)[::4]
    html = pages_html([planned.pages()[place] for place in places], 'pages')
    job = Job(html, style(planned.trim), len(places), tmp_path / 'pages.pdf')
    set_document(job)
    in_parts = job.out.read_bytes()
    monkeypatch.setattr(typeset, 'own_sheets', dict)
    set_document(job)

    assert len(typeset._styled(job.css)[1]) == 1
    assert job.out.read_bytes() == in_parts


@pytest.mark.skipif(not sys.platform.startswith('linux'), reason='processes divide on Linux alone')
def test_what_a_process_does_before_it_divides_begins_no_thread():
    code = 'import os; from layouts.pdf.typeset import begin_typesetter, own_sheets; begin_typesetter()'
    told = 'print(len(os.listdir("/proc/self/task")), len(own_sheets()))'
    ran = subprocess.run(
        [sys.executable, '-c', f'{code}; {told}'], capture_output=True, text=True, check=True
    )

    assert ran.stdout.split() == ['1', str(len(typeset.OWN_SHEETS))]
