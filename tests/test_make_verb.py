"""make: how many pages and sheets a book takes is said before anything is made."""

from __future__ import annotations

from asking import ask

from layouts.build import sheet_count
from layouts.pages.book import plan
from tablegen.settings import EDITIONS, read_settings

SMALL = 'pitches = [6]\nparts = ["gable"]\nruns = {to = "1 ft"}'


def test_a_plan_is_told_and_nothing_is_made(tmp_path):
    file, out = tmp_path / 'book.toml', tmp_path / 'made'
    file.write_text(SMALL, 'utf-8')

    told = '12 pages in 1 section, 3 sheets of paper, folded and stapled once\n'
    assert ask('make', str(file), '--plan', '--out', str(out)) == (0, told, '')
    assert not out.exists()


def test_the_plan_of_an_edition_tells_of_the_other_too():
    """Each counted from its own plan; a section is folded and stapled by itself."""
    counted = {}
    for edition in EDITIONS:
        planned = plan(read_settings(f'edition = "{edition}"\npitches = [4, 6]', ''))
        counted[edition] = (planned.index.total, sheet_count(planned), len(planned.index.sections))
    for asked, other in (EDITIONS, tuple(EDITIONS)[::-1]):
        status, told, remarks = ask('make', '--plan', '--edition', asked, '--pitches', '4,6')
        first, second = told.splitlines()

        assert (status, remarks) == (0, '')
        assert second.startswith(f'the {other} edition: ')
        for line, (pages, sheets, sections) in ((first, counted[asked]), (second, counted[other])):
            assert f'{pages} pages in {sections} section' in line
            assert f'{sheets} sheets of paper' in line
            assert line.endswith('stapled once' if sections == 1 else f'stapled {sections} times')


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
