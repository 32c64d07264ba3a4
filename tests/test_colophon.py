"""The colophon: its printed lines, put into a settings file, make the same book page by page."""

from __future__ import annotations

import re
import tomllib
from pathlib import Path

import pytest
from each import some
from printed_words import told

from layouts.html.page_html import pages_html, style
from layouts.pages.book import Plan, plan
from layouts.pdf.documents import Job
from layouts.pdf.typeset import set_document
from tablegen.geometry.pitch import pitch_of_rise
from tablegen.settings import READERS, Settings, read_settings

BOOKS = {
    'odd': r"""
        title = 'A "quoted" \ title'
        owner = "The Garden Store"
        pitches = ["0.5 to 3 by 1/2", "26.565 deg", 18, "45 deg"]
        lengths = "feet-inches"
        smallest_part = "1/32"
        runs = {from = "4 in", to = "4 ft", by = "4 in"}
        jacks.spacings = ["2 in", "19.2 in"]
        stock = {ridge = "3/4", hip = "3 1/2", rafter = "1 3/4", rafters = "2x6", hips = "2x10", seat = "3"}
        parts = ["how-to", "values", "jacks", "seat", "many-sided", "jack-deductions", "examples"]
        """,
    'metric': """
        pitches = [6]
        runs = {from = "100 mm", to = "2 m", by = "100 mm"}
        jacks.spacings = ["400 mm"]
        stock.ridge = "45 mm"
        paper = "a4"
        trim = "large"
        parts = ["common", "jacks", "ridge"]
        """,
    'too short for jacks and examples': """
        pitches = [6, 7, "22.5 deg"]
        runs = {to = "9 in"}
        parts = ["jacks", "common", "examples", "how-to"]
        """,
    'steep': 'pitches = [30, 36]\nsteep = true\nparts = ["glance", "rise"]',
    'plain': 'pitches = [4]\njacks.spacings = ["13 in"]\nstock.ridge = "2 in"\nparts = ["rise", "words", "square"]',
    'compact': 'pitches = [4]',
    'store alone': 'owner = "Somebody with a long name"\npitches = ["1 to 24"]\nroofs = []',
}  # fmt: skip


def printed_lines(planned: Plan, folder: Path) -> list[str]:
    """Return the lines of the settings as they are printed, those broken by the page joined again."""
    page = planned.pages()[planned.index['made'] - 1]
    out = folder / 'made.pdf'
    set_document(Job(pages_html([page], 'made'), style(planned.trim), 1, out))
    lines: list[str] = []
    for line in told('pdftotext', '-layout', out, '-').splitlines():
        key = re.match(r'\s*(\w+) = |\s*# ', line)
        if key and key[1] in {None, *(one.partition('.')[0] for one in READERS)}:
            lines.append(line.strip())
        elif lines and (not line.strip() or re.search(r'\d pages|One roof', line)):
            break
        elif lines:
            lines[-1] += f' {line.strip()}'
    return lines


@pytest.mark.parametrize('name', some(list(BOOKS)))
def test_its_lines_make_the_same_book(name, tmp_path):
    planned = plan(read_settings(BOOKS[name], ''))
    again = plan(read_settings('\n'.join(printed_lines(planned, tmp_path)), ''))

    assert pages_html(again.pages(), 'book') == pages_html(planned.pages(), 'book')


@pytest.mark.parametrize('name', ['odd', 'steep'])
def test_every_setting_has_its_line(name, tmp_path):
    lines = printed_lines(plan(read_settings(BOOKS[name], '')), tmp_path)
    written = tomllib.loads('\n'.join(lines))
    keys = {
        f'{key}.{inner}' if inner else key
        for key, value in written.items()
        for inner in (value if isinstance(value, dict) else [''])
    }

    assert keys == READERS.keys() - (
        {'steep', 'language', 'edition', 'roofs'} if name == 'odd' else {'language', 'edition', 'roofs'}
    )


def test_it_names_no_part_that_is_not_there(tmp_path):
    lines = printed_lines(plan(read_settings(BOOKS['too short for jacks and examples'], '')), tmp_path)

    assert lines[-1] == 'parts = ["how-to", "common"]'
    assert printed_lines(plan(read_settings(BOOKS['compact'], '')), tmp_path)[-1] == 'edition = "compact"'
    lengths = printed_lines(plan(read_settings('pitches = [4]\nparts = ["common", "rise"]', '')), tmp_path)
    assert not [line for line in lengths if line.startswith(('jacks', 'stock'))]


def test_the_counts_are_those_of_the_book(tmp_path):
    planned = plan(read_settings('pitches = "4 to 12"\nparts = ["common", "rise"]', ''))
    page = planned.pages()[planned.index['made'] - 1]
    set_document(Job(pages_html([page], 'made'), style(planned.trim), 1, tmp_path / 'made.pdf'))
    words = ' '.join(told('pdftotext', tmp_path / 'made.pdf', '-').split())

    sections = f', {len(planned.index.sections)} sections' if len(planned.index.sections) > 1 else ''
    assert (
        f'{2 * 9 * 288:,} figures in the tables of the pitches, {len(planned.drafts)} pages{sections}.'
        in words
    )


def test_hundreds_of_pitches_are_those_of_the_contents(tmp_path):
    rises = [one * one for one in range(1, 400)]
    pitches = tuple(pitch_of_rise(Settings().runs.first * rise / 8192) for rise in rises)
    planned = plan(Settings(pitches=pitches, parts=('glance',)))

    assert f'# pitches: the {len(pitches)} of the contents' in printed_lines(planned, tmp_path)
