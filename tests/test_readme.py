"""README: its commands run, what it shows is what they print, its links lead somewhere."""

from __future__ import annotations

import re
import shlex
import shutil
import tomllib
from io import StringIO
from itertools import takewhile
from pathlib import Path

import pytest
from asking import ask
from complete import complete_plan
from msgspec import Struct
from msgspec.structs import replace
from quick_books import QUICK

from layouts import build as building
from layouts.cards.faces import TableFace
from layouts.cards.formats import FORMATS
from layouts.cards.plan import plan_cards
from layouts.cards.sheet import card_sheet
from layouts.pages.book import plan
from layouts.sheets.counted import sheet_count, sheet_layout
from layouts.verbs import VERBS
from tablegen.settings import Settings, read_settings

TOP = Path(__file__).resolve().parent.parent
README = TOP / 'README.md'
FENCE = re.compile(r'^```(?P<kind>[^\n]*)\n(?P<body>.*?)^```$', re.MULTILINE | re.DOTALL)
LINK = re.compile(r'!?\[[^\]]*\]\((?P<target>[^)\s]+)[^)]*\)|<(?:img|a)\b[^>]*?(?:src|href)="(?P<tag>[^"]+)"')
TYPED = 'python3 layouts/bootstrap.py '
"""How a reader calls the command who has done nothing yet."""
CUT_OFF = '…'
"""A shown line that stands for lines left out."""


class Shown(Struct, frozen=True):
    """A command as README shows it, with the output that it shows, if any."""

    command: str
    output: tuple[str, ...]


def text() -> str:
    return README.read_text('utf-8')


def fences() -> list[tuple[str, str]]:
    """Return kind and body of every fenced block."""
    return [(match['kind'].strip(), match['body']) for match in FENCE.finditer(text())]


def shown() -> list[Shown]:
    """Return the commands of all fenced blocks in order.

    A line is a command if it begins with one, or with a prompt of '$ '; what follows a prompted line is its output.
    """
    found: list[Shown] = []
    for _, body in fences():
        prompted = False
        for line in body.splitlines():
            command = re.sub(rf'^{TYPED}(?!test)', 'rafterbook ', line.removeprefix('$ '))
            if line.startswith('$ ') or command.split(' ')[0] == 'rafterbook':
                prompted = line.startswith('$ ')
                found.append(Shown(command, ()))
            elif prompted:
                found[-1] = replace(found[-1], output=(*found[-1].output, line))
    return [one for one in found if one.command.split(' ')[0] == 'rafterbook']


@pytest.fixture
def beside_readme(tmp_path, monkeypatch) -> Path:
    """A folder with what README speaks of: files of the project that a command names, and files it shows.

    A TOML block whose first line is a comment with a file's name is that file.
    """
    for one in shown():
        for word in shlex.split(one.command, comments=True):
            if '/' in word and (TOP / word).is_file():
                (tmp_path / word).parent.mkdir(parents=True, exist_ok=True)
                shutil.copy(TOP / word, tmp_path / word)
    for kind, body in fences():
        if name := re.match(r'# (\S+\.toml)\n', body):
            assert kind == 'toml'
            (tmp_path / name[1]).write_text(body)
    monkeypatch.chdir(tmp_path)
    return tmp_path


@pytest.fixture
def small_books(monkeypatch):
    """Plans every booklet as it is asked for, and makes one short one in place of all; shows none, asks nobody."""
    monkeypatch.setattr('layouts.verbs.make.opener', list)
    monkeypatch.setattr('layouts.verbs.make.show', lambda file: None)
    monkeypatch.setattr('sys.stdin', StringIO())
    build, built = building.build, []

    def shorter(settings, folder, progress, tagged, kept, proven, setters):
        assert plan(settings).index.total
        if not built:
            built.append(build(read_settings(QUICK, ''), folder, progress))
        elif folder != built[0].booklet.parent:
            shutil.copytree(built[0].booklet.parent, folder)
        return built[0]

    monkeypatch.setattr(building, 'build', shorter)


def test_every_command_of_ours_runs_and_prints_what_is_shown(beside_readme, small_books):
    """In README's order in one folder, so that a file which one writes is there for the next."""
    assert shown()
    for one in shown():
        command, _, written = one.command.partition(' > ')
        status, told, remarks = ask(*shlex.split(command.partition(' | ')[0], comments=True)[1:])
        assert (one.command, status, remarks.count('rafterbook: ')) == (one.command, 0, 0)
        if written:
            (beside_readme / written.split(' ')[0]).write_text(told)
        printed = [line.rstrip() for line in told.splitlines()]
        for line in (line.rstrip() for line in one.output if line.strip() != CUT_OFF):
            assert line in printed, f'{one.command} does not print: {line}'


def test_every_command_is_shown_as_it_can_be_typed():
    typed = [line for kind, body in fences() for line in body.splitlines() if kind == 'sh']

    assert len(typed) > 20
    assert [line for line in typed if not line.startswith(TYPED)] == []


def test_the_commands_shown_are_those_there_are():
    assert {shlex.split(one.command, comments=True)[1] for one in shown()} - {'--help', '--version'} <= set(
        VERBS
    )
    assert 'make' in {one.command.split(' ')[1] for one in shown()}


@pytest.mark.parametrize('verb', ['make', 'test'])
def test_one_line_sets_up_and_makes_or_tests(verb):
    """Each stands as a line of its own in a fenced block, with nothing to do before it."""
    lines = [line.strip().removeprefix('$ ') for _, body in fences() for line in body.splitlines()]
    assert any(re.fullmatch(rf'(.* && )?python3? layouts/bootstrap\.py {verb}( .*)?', line) for line in lines)


def test_the_projects_own_check_runs_the_test_command():
    (command,) = [line for line in (TOP / '.ci' / 'run').read_text().splitlines() if 'bootstrap' in line]
    assert command in text()


def test_settings_that_it_shows_can_be_read():
    for kind, body in fences():
        if kind == 'toml':
            assert tomllib.loads(body)


def targets() -> list[str]:
    return [match['target'] or match['tag'] for match in LINK.finditer(text())]


def anchors() -> set[str]:
    """Return the names by which headings are linked to: small letters, words joined by hyphens."""
    headings = re.findall(r'^#+ (.+)$', FENCE.sub('', text()), re.MULTILINE)
    return {re.sub(r'[^\w\- ]', '', heading.lower()).strip().replace(' ', '-') for heading in headings}


def test_every_link_and_picture_leads_somewhere():
    for target in targets():
        path, _, anchor = target.partition('#')
        if path.startswith(('http://', 'https://', 'mailto:')):
            continue
        assert not path or (TOP / path).exists(), f'{target} is not there'
        assert path or anchor in anchors(), f'{target} is no heading'


def test_it_shows_pages_of_the_sample_that_the_project_keeps():
    pictures = [target for target in targets() if target.endswith('.png')]

    assert pictures
    assert all(picture.startswith('output/sample/') for picture in pictures)
    for name in ('booklet.pdf', 'sheets.pdf'):
        assert name in text()
        assert (TOP / 'output' / 'sample' / name).is_file()
    ignored = (TOP / '.gitignore').read_text().splitlines()
    assert ignored.index('/output/*') < ignored.index('!/output/sample/')


def test_it_counts_the_editions_rightly():
    """Each by its plan: pages, sections, and sheets of paper beside the one of instructions."""
    standard, whole = plan(Settings()), complete_plan()
    words = ' '.join(text().split())

    assert len(standard.index.sections) == 1
    assert f'{standard.index.total} pages in one section, on {sheet_count(standard) - 1} sheets' in words
    assert f'{whole.index.total} pages in five sections, on {sheet_count(whole) - 1} sheets' in words
    assert len(whole.index.sections) == 5


def table_rows(first: str) -> list[list[str]]:
    """Return the cells of the table whose first head is given, without marks of type."""
    lines = text().splitlines()
    start = next(place for place, line in enumerate(lines) if line.startswith(f'| {first} |'))
    rows = takewhile(lambda line: line.startswith('|'), lines[start + 2 :])
    return [[cell.replace('*', '').strip(' `') for cell in line.strip('|').split('|')] for line in rows]


def test_its_sizes_of_cards_are_those_that_are_made():
    """All 24 pitches: rows on a side and columns, and how many cards a sheet of Letter paper takes."""
    rows = table_rows('size')

    assert [row[0] for row in rows] == list(FORMATS)
    for name, paper, pouch, pitches, up in rows:
        made, form = plan_cards(Settings(), name), FORMATS[name]
        tables = [face for face in made.faces if isinstance(face, TableFace)]
        where = f'{sum(map(len, tables[0].groups))} a side' if len(tables) == 2 else 'one side'
        assert tuple(map(float, paper.split(' × '))) == (form.width_mm, form.height_mm)
        assert tuple(map(float, pouch.split(' × '))) == form.film_mm
        assert pitches == f'{where}, {len(tables[0].heads) - 1} columns'
        assert int(up) == card_sheet(made.form, 'letter').up


def test_its_editions_are_turned_over_the_edge_that_the_sheets_name():
    for edition, page, on_a_side, edge in table_rows('edition'):
        trim = 'pocket' if edition == 'pocket' else 'large'
        layout = sheet_layout(plan(read_settings(f'pitches = [6]\nparts = ["values"]\ntrim = "{trim}"', '')))
        upright = 'long' if layout.sheet_mm[1] > layout.sheet_mm[0] else 'short'
        assert edge == f'{upright} edge'  # the sheet turns about its upright middle line
        assert on_a_side == {4: 'four on a side', 2: 'two on a side'}[layout.up]
        assert page in (f'{layout.trim_width_mm:g} × {layout.trim_height_mm:g} mm', 'half of the paper')


def test_nothing_in_it_waits_to_be_filled_in():
    assert re.findall(r'@[A-Z]+@|TODO|FIXME|XXX', text()) == []
