"""What the pages say in words, sentence by sentence; the figures among them are worked out in space."""

from __future__ import annotations

import re
from pathlib import Path

import pytest
from claimed import claims, page_text, strange
from complete import COMPLETE
from labels.in_words import figures
from own_roofs import GAMBREL, PORCH, SALTBOX, STORE, WING
from skewed import SKEWED

from layouts.html.page_html import environment
from layouts.pages.book import Plan, plan
from layouts.sheets.instructions import instructions_job
from tablegen.frame.of_book import with_roofs
from tablegen.frame.roof_file import read_roof
from tablegen.settings import read_settings

BOOKS = {
    'skewed': SKEWED,
    'plain': f'{COMPLETE}pitches = [2, 4, 6, 8, 17]',
    'feet': f'{COMPLETE}pitches = ["30 deg"]\nlengths = "feet-inches"\ntrim = "large"\nruns = {{to = "12 ft", by = "2 1/4 in"}}',
    'cuts': 'pitches = [6]\nparts = ["values"]',
    'compact': 'edition = "compact"\npitches = [2, 6, 9, 17]',
    'store alone': 'edition = "compact"\npitches = [6]\nroofs = []',
    'deep rafters': f'{COMPLETE}pitches = [12]\nstock = {{rafters = "2x12", hips = "2x6", valleys = "2x6"}}',
    'cut through': f'{COMPLETE}pitches = [24]\nstock = {{rafters = "2x4", seat = "5 1/2"}}',
}
"""Books that together say all that a page may say."""
OWN = {
    'own roofs': ([STORE, PORCH, WING, SALTBOX, GAMBREL], 'compact'),
    'own, complete': ([STORE, WING], 'complete'),
}
"""Books of roofs of the reader's own, by their edition; their other pages are those of any book."""
OF_A_ROOF = ('example_', 'own_')
NOT_PROSE = {'grid', 'ref_table', 'contents', 'cover', 'section_cover', 'made', 'notes'}
"""Figures, and what leads to them, are proven by themselves."""


FIGURES = re.compile(
    r'<pre style=.*?</pre>|<div class="over.*?</div>|<div class="setting">.*?</div>', re.DOTALL
)
"""Lines and heads of an opening, which test_opening.py reads back, and settings, which test_colophon.py does."""
CITED = {
    'cautions': {'ref_past_scale'},
    'how_to': {'grid', 'values'},
    'how_to_opening': {'opening'},
    'one_rafter_left': {'how_to_opening'},
    'one_rafter_right': {'cautions'},
    'values': {'ref_care', 'cautions'},
    'hip_values': {'ref_care', 'cautions'},
    'opening': {'ref_care', 'cautions', 'how_to', 'how_to_opening'},
    'existing_pitch': {'glance_left', 'ref_find_pitch', 'how_to', 'how_to_opening'},
    'drift': {'step_off'},
    'arms': {'ref_past_scale'},
    'numbers': {'drift'},
    'rounded': {'drift'},
    'ref_tail': {'ref_hip_ends'},
    'ref_unequal': {'ref_past_scale'},
    'ref_many_sided': {'ref_past_scale'},
    'ref_jack_deductions': {'jacks'},
    'example_store_opening': {'one_rafter_left', 'one_rafter_right'},
    'example_saltbox_table': {'cautions'},
    'example_gambrel_table': {'cautions'},
    'example_saltbox_first': {'ref_care', 'cautions'},
    'example_gambrel_first': {'ref_care', 'cautions'},
    'example_jacks_table': {'example_store_table', 'one_rafter_right', 'ref_care', 'own_members'},
    'example_hip_opening': {'cautions', 'example_jacks_table'},
    'own_members': {'ref_care', 'cautions'},
    'example_porch_board': {'cautions'},
    'example_valley_board': {'example_hip_opening'},
    **{
        f'example_{name}': {'ref_care'}
        for name in ('store_table', 'hip_mouth', 'valley_mouth', 'porch_table')
    },
}
"""What a page that is cited in prose is; the places of an example's figures are turned to elsewhere."""


@pytest.fixture(scope='module')
def planned() -> dict[str, Plan]:
    found = {book: plan(read_settings(written, '')) for book, written in BOOKS.items()}
    for book, (roofs, edition) in OWN.items():
        settings = read_settings(f'edition = "{edition}"\npitches = [4, 7]', '')
        asked = [(f'{place}.toml', read_roof(one, '')) for place, one in enumerate(roofs)]
        found[book] = plan(with_roofs(settings, asked))
    return found


@pytest.fixture(scope='module')
def texts(planned) -> list[tuple[str, str, str]]:
    """Return the prose of every page: its book, its kind, what stands there."""
    found = []
    for book, one in planned.items():
        made = one.pages()
        for place, draft in enumerate(one.drafts):
            if draft.template not in NOT_PROSE and (book in BOOKS or draft.template.startswith(OF_A_ROOF)):
                page = made[place]
                html = environment().get_template(f'{page.template}.html').render(page=page, it=page.content)
                html = re.sub(
                    r'(?<=Garden store) \(\d\)', '', html
                )  # two of one name, told apart by their files
                found.append((book, page.template, page_text(re.sub(FIGURES, '', html))))
        if book in BOOKS:
            found.append((book, 'instructions', page_text(instructions_job(one, Path()).html)))
    return found


def test_every_page_that_is_cited_is_the_one_that_is_meant(texts, planned):
    cited = [
        (book, kind, planned[book].drafts[int(number) - 1].template)
        for book, kind, text in texts
        if kind != 'instructions'
        for number in re.findall(r'\b[Pp]age (\d+)', text)
    ]
    assert {kind for _, kind, _ in cited} == set(CITED)
    assert [one for one in cited if one[2] not in CITED[one[1]]] == []


def test_every_sentence_is_claimed_and_every_claim_is_made(texts):
    wanted, worked_out = claims('pages'), figures()
    used: dict[str, set[int]] = {kind: set() for kind in wanted}
    unknown = [
        f'{kind} ({book}): {said}'
        for book, kind, text in texts
        for said in strange(
            text,
            wanted.get(kind, ()),
            worked_out if book == 'skewed' else {},
            used.setdefault(kind, set()),
            kind != 'own_members',  # whose members follow one another as the roof has them
        )
    ]
    unsaid = [
        f'{kind}: {claim}'
        for kind, lines in wanted.items()
        for place, claim in enumerate(lines)
        if place not in used[kind]
    ]
    assert unknown == []
    assert unsaid == []
