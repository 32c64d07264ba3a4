"""Editions: what stands for them where nothing is said, and what runs an opening cannot hold."""

from __future__ import annotations

import re

import pytest
from asking import ask
from each import over_each
from folded import read_folded

from layouts.html.page_html import pages_html
from layouts.pages.book import plan
from layouts.paper.page import MOST_IN_A_SECTION
from layouts.sheets.fold import sheet_sides
from layouts.words.starter import starter
from tablegen.settings import EDITIONS, Settings, read_settings

SUCH = 'the complete edition tables such runs: --edition complete'
PAST = 'is longer than the rows of an opening; allowed: up to 24 ft'
SHORTER = f'{SUCH}; or take shorter ones: lengths of two runs may be added'


@pytest.mark.parametrize(('place', 'edition'), list(enumerate(EDITIONS)))
def test_a_list_of_parts_that_the_starter_file_holds_ready_is_an_edition_s(place, edition):
    """The mark before it taken away, and no edition named beside it."""
    ready = re.findall(r'^#(parts = \[.*?\])$', starter(), re.M | re.S)[place].replace('\n#', '\n')

    assert read_settings(ready, '') == read_settings(f'edition = "{edition}"', '')


def test_parts_go_over_the_edition_and_the_edition_not_named_is_the_compact_one():
    usual = Settings().parts

    assert usual == EDITIONS['compact']
    assert read_settings('parts = ["rise"]', '').parts == ('rise',)
    assert read_settings('parts = ["rise"]\nedition = "complete"', '').parts == ('rise',)


def plan_of(*words: str) -> tuple[int, str]:
    """Return the exit status of a plan and the line that it says."""
    status, told, remarks = ask('make', *words, '--plan')
    return status, told or remarks


def test_runs_past_an_opening_are_told_under_the_option_that_gave_them(tmp_path, monkeypatch):
    """Or under the key of the file; with what to do, and that can be done."""
    monkeypatch.chdir(tmp_path)
    (tmp_path / 'long.toml').write_text('[runs]\nto = "30 ft"', 'utf-8')
    long = ('--runs', '1 ft to 24 ft 1 in by 1 in')

    assert plan_of(*long) == (2, f'rafterbook: --runs: 24 ft 1 in {PAST}; next: {SHORTER}\n')
    assert plan_of('long.toml') == (2, f'rafterbook: runs.to: 30 ft {PAST}; next: {SHORTER}\n')
    for words in (long, ('long.toml',)):
        assert plan_of(*words, '--edition', 'complete', '--pitches', '6')[0] == 0
    assert plan_of('--edition', 'complete', '--runs', '1 in to 24 ft by 1/16')[1].startswith(
        'rafterbook: --runs: 1/16 in over '
    )


def test_runs_that_end_within_a_foot_are_read_from_its_opening():
    assert plan_of('--runs', '1 in to 9 ft 6 in by 1 in', '--pitches', '6')[0] == 0


def test_millimeters_are_no_rows_of_an_opening():
    metric = 'is metric, and the rows of an opening are feet and inches; allowed: feet and inches'
    words = ('--runs', '100 mm to 3 m by 100 mm', '--pitches', '6')

    assert plan_of(*words) == (2, f'rafterbook: --runs: 100 mm {metric}; next: {SUCH}\n')
    assert plan_of(*words, '--edition', 'complete')[0] == 0


FEW = 'pitches = [4, "7 1/2", "22.5 deg"]'
BOOKS = (
    '', 'edition = "complete"', 'trim = "large"', 'edition = "complete"\ntrim = "large"', 'paper = "a4"',
    'pitches = "1/2 to 24 by 1/2"', 'pitches = [6]',
    *(f'{FEW}\nsmallest_part = "1/{per}"' for per in (2, 4, 8, 32, 64)),
    f'{FEW}\nlengths = "feet-inches"\nsmallest_part = "1/64"\npaper = "a4"\ntrim = "large"',
    f'{FEW}\nruns.to = "9 in"\njacks.spacings = ["2 in", "400 mm", "96 in"]',
)  # fmt: skip


@over_each(BOOKS)
def test_a_book_folds_into_sections_that_read_in_order(written):
    """As its sheets are printed, cut and folded; an opening lies on two facing pages of one section."""
    planned = plan(read_settings(written, ''))
    bounds = [(first - 1, count) for first, count in planned.index.sections]
    sections = read_folded(sheet_sides(bounds, planned.trim.up), planned.trim.up)
    openings = [number - 1 for key, number in planned.index.pages.items() if key.startswith('opening:')]

    assert [page for section in sections for page in section] == list(range(len(planned.drafts)))
    assert max(map(len, sections)) <= MOST_IN_A_SECTION
    assert len(openings) == ('complete' not in written) * len(planned.settings.pitches)
    assert all(place % 2 == 1 and any({place, place + 1} <= {*one} for one in sections) for place in openings)
    if 'complete' not in written and 'by 1/2' not in written:
        assert len(sections) == 1
    if FEW in written:
        assert pages_html(planned.pages(), '').count('<section ') == planned.index.total


def test_halves_are_the_same_pitches_however_they_are_written():
    assert read_settings('pitches = "1/2 to 24 by 1/2"', '') == read_settings(
        'pitches = "0.5 to 24 by .5"', ''
    )
