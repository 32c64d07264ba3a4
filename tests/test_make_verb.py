"""make: how many pages and sheets a book takes is said before anything is made."""

from __future__ import annotations

from asking import ask

from layouts.pages.book import plan
from layouts.sheets.counted import sheet_count
from tablegen.settings import EDITIONS, read_settings

SMALL = 'pitches = [6]\nparts = ["gable"]\nruns = {to = "1 ft"}'


def test_a_plan_is_told_and_nothing_is_made(tmp_path):
    file, out = tmp_path / 'book.toml', tmp_path / 'made'
    file.write_text(SMALL, 'utf-8')

    told = '12 pages in 1 section, 3 sheets of paper, folded and stapled once\n'
    assert ask('make', str(file), '--plan', '--out', str(out)) == (0, told, '')
    assert not out.exists()


def test_the_plan_of_an_edition_tells_how_to_ask_for_the_other():
    for asked, other in (EDITIONS, tuple(EDITIONS)[::-1]):
        planned = plan(read_settings(f'edition = "{asked}"\npitches = [4, 6]', ''))
        pages, sections = planned.index.total, len(planned.index.sections)
        status, told, remarks = ask('make', '--plan', '--edition', asked, '--pitches', '4,6')
        first, second = told.splitlines()

        assert (status, remarks) == (0, '')
        assert first.startswith(f'{pages} pages in {sections} section')
        assert f'{sheet_count(planned)} sheets of paper' in first
        assert first.endswith('stapled once' if sections == 1 else f'stapled {sections} times')
        assert second == f'what the {other} edition would be: --edition {other}'
        assert ask('make', '--plan', '--pitches', '4,6', *second.split()[-2:])[1] != told


def test_what_was_planned_is_what_is_made(tmp_path):
    file, out = tmp_path / 'book.toml', tmp_path / 'made'
    file.write_text(SMALL, 'utf-8')
    status, told, remarks = ask('make', str(file), '--out', str(out))

    assert status == 0
    assert remarks.startswith('made in ')
    assert '12 pages in 1 section' in told
    assert '3 sheets of paper' in told


def test_sheets_are_counted_a_section_at_a_time():
    """Four pages a side: eight a sheet, a last half sheet of a section stays blank; two a side: four."""
    pocket, large = (plan(read_settings(f'{SMALL}\ntrim = "{trim}"', '')) for trim in ('pocket', 'large'))

    assert sheet_count(pocket) == -(-pocket.index.total // 8) + 1
    assert sheet_count(large) == large.index.total // 4 + 1
