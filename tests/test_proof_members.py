"""The lists of all members of a reader's own roofs as the proof-reader reads them: worked out anew from what was asked for."""

from __future__ import annotations

import random

import pytest
from own_roofs import GAMBREL, SALTBOX, STORE
from planted_errors import change_digit_of, forget, put, with_planted

from layouts.html.page_html import pages_html, style
from layouts.pages.book import plan
from layouts.pdf.read_back import pages_of
from layouts.pdf.typeset import Job, set_document
from layouts.verbs.settings_file import settings_from
from layouts.words.pages import heading
from layouts.words.proof import names
from tablegen.proof.page import Page
from tablegen.proof.proof import proof
from tablegen.proof.word import Word

ROOFS = {'store': STORE, 'saltbox': SALTBOX, 'gambrel': GAMBREL + 'overhang.gable = "16 in"\n'}
BOOK = f'pitches = [4, 7]\nparts = ["opening", "examples"]\nroofs = {[f"{name}.toml" for name in ROOFS]}\n'.replace(
    "'", '"'
)
SET = {'own_members', 'made', 'closing_made'}


@pytest.fixture(scope='module')
def read(tmp_path_factory):
    """These pages, and the settings; of all others no words."""
    folder = tmp_path_factory.mktemp('roofs')
    for name, written in {**ROOFS, 'book': BOOK}.items():
        (folder / f'{name}.toml').write_text(written)
    planned = plan(settings_from(str(folder / 'book.toml')))
    numbers = [n for n, draft in enumerate(planned.drafts, 1) if draft.template in SET]
    html = pages_html([planned.pages()[number - 1] for number in numbers], '')
    set_document(Job(html, style(planned.trim), len(numbers), folder / 'pages.pdf'))
    words = {number: page.words for number, page in zip(numbers, pages_of(folder / 'pages.pdf'), strict=True)}
    return [Page(number, words.get(number, [])) for number in range(1, len(planned.drafts) + 1)]


def lists(pages: list[Page]) -> list[Page]:
    return [page for page in pages if page.phrases and page.phrases[0].text == heading('all-members')]


def test_every_list_is_read_and_nothing_differs(read):
    found, pages = proof(read, names), {page.number for page in lists(read)}
    assert [fault for fault in found.faults if fault.page in pages] == []
    assert pages <= found.read
    assert [words for _page, words in found.strange] == [
        'Garden store, number: C, E, HJ1, HJ2, HJ3, HJ4, HJ5, HJ6, HJ7, HJ8'
    ]


def planted(what: str, seed: int):
    """Plant an error in a row, in its head, or in what is said of the cuts."""

    def plant(pages: list[Page]) -> int:
        chosen = random.Random(seed)
        page = chosen.choice(lists(pages))
        rows = [
            line
            for line in page.lines
            if line[0].bold and any(map(str.isdigit, line[-1].text)) and line[0].size > 1.1 * page.notes_size
        ]
        rows = [line for line in rows if line[0].size < 1.3 * page.notes_size]
        if what == 'a row missing':
            gone = set(map(id, chosen.choice(rows[:-1] or rows)))
            page.words[:] = [word for word in page.words if id(word) not in gone]
            forget(page)
        elif what == 'two marks swapped':
            one, other = apart(chosen.choice([line for line in rows if apart(line)]))
            put(page, {one: other.text, other: one.text})
        else:
            said = [
                line
                for line in page.lines[2:]
                if not line[0].bold and '°' in ''.join(word.text for word in line)
            ]
            lines = said if what == 'a cut' and said else rows
            words = [
                word
                for line in lines
                for word in line[1:]
                if any(map(str.isdigit, word.text)) and ':' not in word.text
            ]
            change_digit_of(page, chosen.choice([word for word in words if '/' not in word.text]), chosen)
        return page.number

    return plant


def apart(line: list[Word]) -> list[Word]:
    """Return two whole numbers of a row that differ by more than 2."""
    whole = [word for word in line[2:] if word.text.isdigit()]
    pairs = ([a, b] for a in whole for b in whole if abs(int(a.text) - int(b.text)) > 2)
    return next(pairs, [])


@pytest.mark.parametrize('seed', range(4))
@pytest.mark.parametrize('what', ['a digit', 'a cut', 'a row missing', 'two marks swapped'])
def test_an_error_planted_in_a_list_is_found_on_its_page(read, what, seed):
    found, page = with_planted(read, planted(what, seed))
    title = {one.number for one in lists(read)}
    assert {fault.page for fault in found.faults} & ({page} if what != 'a row missing' else title)
