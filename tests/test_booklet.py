"""The booklet on a screen, read back by other people's reader: its title, its outline, its page numbers and its links."""

from __future__ import annotations

import re
import subprocess
from itertools import pairwise, takewhile

import pytest
from asking import ask
from msgspec import Struct
from printed_words import MM, Word, faults_of
from pypdf import PdfReader
from pypdf.generic import RectangleObject


def test_every_file_says_its_title_and_language(small_book):
    """In the window's frame too (ISO 32000-1, 12.2: DisplayDocTitle)."""
    built = small_book.built
    readers = [PdfReader(file) for file in (built.booklet, built.sheets, built.card.path)]

    assert [reader.metadata.title for reader in readers] == [
        'Three Pitches',
        'Three Pitches: sheets to print',
        'Three Pitches: card',
    ]
    assert readers[0].metadata.author == 'The Garden Store'
    assert {reader.root_object['/Lang'] for reader in readers} == {'en'}
    assert {bool(reader.viewer_preferences.display_doctitle) for reader in readers} == {True}


def test_it_opens_one_page_at_a_time_under_its_own_numbers(small_book):
    reader = PdfReader(small_book.built.booklet)

    assert reader.page_layout == '/SinglePage'
    assert reader.page_labels == [str(page.number) for page in small_book.pages]


def outlined(reader, entries, above=()) -> list[tuple[tuple[str, ...], int]]:
    """Return every entry of an outline, after the names of those above it, and its page."""
    found = []
    for entry in entries:
        if isinstance(entry, list):
            found += outlined(reader, entry, found[-1][0])
        else:
            found.append(((*above, entry.title), reader.get_destination_page_number(entry) + 1))
    return found


def test_its_outline_leads_to_every_kind_of_page(small_book):
    """Under the name that stands at the page's foot; pitches and groups of tables below one head each."""
    reader = PdfReader(small_book.built.booklet)
    entries = outlined(reader, reader.outline)
    named = {path[-1]: page for path, page in entries}
    top = [page for path, page in entries if len(path) == 1]
    firsts: dict[str, int] = {}
    for page in small_book.pages:
        firsts.setdefault(page.head, page.number)
    firsts['Once more, before the saw'] = small_book.built.pages  # every section ends with it, and the book
    del firsts['']

    assert top == sorted(top)
    assert {head: named.get(head) for head in firsts} == firsts
    assert [path for path, _ in entries if path[-1].endswith('in 12')] == [
        ('Pitches', f'{rise} in 12') for rise in (4, 6, 8)
    ]
    assert ('Reference tables', 'At the ridge') in dict(entries)
    assert entries[0] == (('Three Pitches',), 1)


@pytest.mark.parametrize(
    ('name', 'words'),
    [
        ('Cuts of the common rafter', 'Common rafter'),
        ('Cuts of hip, valley and jacks', 'Hip, valley, jacks'),
        ('Jacks', 'Jacks, from the corner'),
        ('Common rafters', 'Common rafter, inches'),
        ('Hips and valleys', 'Hip or valley, inches'),
        ('Rises', 'Rise, inches'),
    ],
)
def test_its_outline_names_the_pages_of_a_pitch(small_book, name, words):
    reader = PdfReader(small_book.built.booklet)
    for pitch in ('4', '6', '8'):
        page = dict(outlined(reader, reader.outline))['Pitches', f'{pitch} in 12', name]
        printed = [word.text for word in small_book.words[page - 1]]
        assert all(word in printed for word in [pitch, *words.split()]), (pitch, page, printed[:12])


class Link(Struct, frozen=True):
    """A link on a page: mm from the upper left corner, and the page that it leads to."""

    left: float
    top: float
    right: float
    foot: float
    leads_to: int

    def holds(self, word: Word) -> bool:
        return (
            self.left - 0.3 <= word.left <= self.right and self.top <= (word.top + word.foot) / 2 <= self.foot
        )


def links_of(reader: PdfReader) -> list[list[Link]]:
    """Return the links of every page; each leads to a whole page."""
    found = []
    for page in reader.pages:
        height = float(page.mediabox.height)
        links = []
        for annotation in page.get('/Annots', ()):
            link = annotation.get_object()
            left, low, right, high = (float(edge) for edge in RectangleObject(link['/Rect']))
            low, high = sorted((low, high))
            target, view = link['/Dest']
            assert (link['/Subtype'], view) == ('/Link', '/Fit')
            edges = (edge / MM for edge in (left, height - high, right, height - low))
            links.append(Link(*edges, reader.get_page_number(target.get_object()) + 1))
        found.append(links)
    return found


def test_every_page_that_is_cited_is_a_link_to_it(small_book):
    """Wherever a page says "page 12", or "pages 12 to 34": both."""
    links, cited = links_of(PdfReader(small_book.built.booklet)), 0
    for words, of_page in zip(small_book.words, links, strict=True):
        for place, word in enumerate(words):
            if word.text.lower() == 'pages':
                ends = [
                    *takewhile(lambda one: re.fullmatch(r'to|and|\d+[.,;]?', one.text), words[place + 1 :])
                ]
                for end in (one for one in ends if not one.text.isalpha()):
                    number = int(end.text.rstrip('.,;'))
                    assert [link.leads_to for link in of_page if link.holds(end)] == [number], end
                    cited += 1
    assert cited >= 2 * len(small_book.planned.index.sections)
    for words, of_page in zip(small_book.words, links, strict=True):
        for before, word in pairwise(words):
            number = re.match(r'\d+', word.text)
            if before.text.lower().strip('(') == 'page' and number:
                assert [link.leads_to for link in of_page if link.holds(word)] == [int(number[0])]
                cited += 1
    assert cited > 50


def test_every_entry_of_the_contents_is_a_link_by_name_and_number(small_book):
    links = links_of(PdfReader(small_book.built.booklet))
    for page in small_book.pages:
        if page.template != 'contents':
            continue
        words = small_book.words[page.number - 1]
        entries = [
            entry
            for listed in (page.content.entries, page.content.pitches, page.content.groups)
            for column in listed
            for entry in column
        ]
        assert entries
        for name, number in entries:
            leads = [
                [word for word in words if link.holds(word)]
                for link in links[page.number - 1]
                if link.leads_to == number
            ]
            said = {' '.join(word.text for word in some) for some in leads}
            assert {str(number), ' '.join(name.split())} <= said


def test_a_booklet_is_tagged_where_that_is_asked(quick):
    """As another reader of PDFs tells: heads, paragraphs and lines of figures, in the order of reading, none twice."""
    assert ask('make', 'book.toml', '--tagged', '--out', 'tagged')[0] == 0
    booklet = quick / 'tagged' / 'booklet.pdf'
    reader = PdfReader(booklet)
    told = subprocess.run(['pdfinfo', '-struct-text', booklet], capture_output=True, text=True, check=True)

    assert reader.root_object['/MarkInfo']['/Marked']
    assert 'Loop' not in told.stderr
    assert told.stdout.count('Plumb cut, on the side, from square across') == 2
    assert next(iter(outlined(reader, reader.outline)))[0] == ('Rafter Tables',)
    assert faults_of(booklet) == ''
    assert ask('make', 'book.toml', '--out', 'plain')[0] == 0
    assert '/MarkInfo' not in PdfReader(quick / 'plain' / 'booklet.pdf').root_object
