"""Objects taken from one PDF into another, held against a general reader of PDFs: what pages draw, with what, is what it was."""

from __future__ import annotations

from itertools import chain

import pytest
from pypdf import PdfReader, PdfWriter
from pypdf.generic import (
    DictionaryObject,
    NameObject,
    NumberObject,
    StreamObject,
    TextStringObject,
)

from layouts.pdf.booklet import join
from layouts.pdf.documents import Job
from layouts.pdf.new_file import NewFile
from layouts.pdf.remark import Remark
from layouts.pdf.typeset import set_document
from layouts.pdf.written import Written, entries
from layouts.sheets.fold import SheetLayout
from layouts.sheets.sheets import impose

STYLE = """@page { size: 100mm 133mm; margin: 10mm } section { break-after: page }
section:last-child { break-after: auto } .light { opacity: 0.5 }"""
PAGES = [
    '<section id="a"><p>Rafter, see <a href="page:4">page 4</a></p></section>',
    '<section id="b"><p class="light">Rafter (5 0 R) \\ <b>bold</b></p></section>',
    '<section id="c"><p>Rafter, see <a href="page:4">page 4</a></p></section>',
    '<section id="d"><p>to saw: <a href="page:1">page 1</a>, <a href="page:1">page 1</a></p></section>',
]
PARTS = [(0, 3), (1, 2)]
"""The places of the pages of two documents."""


@pytest.fixture(scope='module')
def parts(tmp_path_factory):
    """Return two documents of four pages."""
    folder = tmp_path_factory.mktemp('parts')
    files = [folder / 'odd.pdf', folder / 'even.pdf']
    for file, places in zip(files, PARTS, strict=True):
        html = '<html lang="en"><body>' + ''.join(PAGES[place] for place in places) + '</body></html>'
        set_document(Job(html, STYLE, len(places), file))
    return files


def whole(one, but=('/Parent', '/Annots')):
    """Return all that an object says, with what it names in the place of the names."""
    one = one.get_object()
    if isinstance(one, dict):
        said = {name: whole(one[name]) for name in one if name not in but}
        return (said, one._data) if isinstance(one, StreamObject) else said
    return [whole(each) for each in one] if isinstance(one, list) else one


def links(page):
    return [
        (link['/Rect'], page.pdf.get_page_number(link['/Dest'][0].get_object()))
        for link in (one.get_object() for one in page.get('/Annots', ()))
    ]


def joined(parts, out):
    return join(list(zip(parts, PARTS, strict=True)), 'Title', 'Owner', (), out)


def test_pages_of_a_book_are_what_they_were_but_for_their_links(parts, tmp_path):
    joined(parts, tmp_path / 'book.pdf')
    before = dict(
        zip(chain(*PARTS), chain.from_iterable(PdfReader(part).pages for part in parts), strict=True)
    )
    after = PdfReader(tmp_path / 'book.pdf', strict=True).pages

    assert [whole(page) for page in after] == [whole(before[place]) for place in range(4)]
    assert {page['/Contents'].get_object()['/Filter'] for page in after} == {'/FlateDecode'}
    assert [[leads for _box, leads in links(page)] for page in after] == [[3], [], [3], [0, 0]]
    assert [[box for box, _leads in links(page)] for page in after] == [
        [one.get_object()['/Rect'] for one in before[place].get('/Annots', ())] for place in range(4)
    ]


def test_pages_on_sheets_are_what_they_were(parts, tmp_path):
    pages = joined(parts, tmp_path / 'book.pdf')
    impose(
        tmp_path / 'book.pdf', [(0, 4)], SheetLayout('a4', 100, 133, 4), tmp_path / 'sheets.pdf', pages=pages
    )
    forms = {
        name: form.get_object()
        for side in PdfReader(tmp_path / 'sheets.pdf', strict=True).pages
        for name, form in side['/Resources']['/XObject'].items()
    }
    for place, page in enumerate(PdfReader(tmp_path / 'book.pdf').pages):
        assert whole(forms[f'/page-{place}']['/Resources']) == whole(page['/Resources'])
        assert forms[f'/page-{place}']._data == page['/Contents'].get_object()._data


def test_what_another_program_has_written_is_taken_the_slow_way_and_that_is_told(parts, tmp_path):
    """In streams of objects, for instance, which have no table of places (ISO 32000-1, 7.5.7)."""
    from weasyprint import CSS, HTML

    html = ''.join(PAGES[place] for place in PARTS[0])
    sheet = CSS(string=STYLE)
    HTML(string=f'<html lang="en"><body>{html}</body></html>').write_pdf(
        tmp_path / 'streams.pdf', stylesheets=[sheet]
    )
    joined(parts, tmp_path / 'quick.pdf')
    with pytest.warns(Remark, match='other_file') as said:
        joined([tmp_path / 'streams.pdf', parts[1]], tmp_path / 'slow.pdf')
    found = [PdfReader(tmp_path / name).pages for name in ('quick.pdf', 'slow.pdf')]

    assert len(said) == 1
    assert [page['/Contents'].get_data() for page in found[0]] == [
        page['/Contents'].get_data() for page in found[1]
    ]
    assert [links(page) for page in found[0]] == [links(page) for page in found[1]]


def test_all_of_a_file_is_taken_but_what_it_is_called(tmp_path):
    writer = PdfWriter()
    writer.add_blank_page(100, 200)
    told = {NameObject('/Says'): TextStringObject('7 0 R (1 0 R) \\'), NameObject('/Me'): NumberObject(7)}
    writer.root_object[NameObject('/More')] = writer._add_object(DictionaryObject(told))
    writer.add_metadata({'/Title': 'Before', '/CreationDate': 'D:2020'})
    writer.write(tmp_path / 'before.pdf')
    NewFile.of(Written(tmp_path / 'before.pdf')).write(tmp_path / 'after.pdf', 'After')
    reader = PdfReader(tmp_path / 'after.pdf', strict=True)

    assert dict(reader.metadata) == {'/Title': 'After', '/Producer': 'rafterbook'}
    assert reader.root_object['/More'] == told
    assert [page.mediabox[2:] for page in reader.pages] == [[100, 200]]


def test_what_stands_under_names_is_told_as_it_is_written():
    """Strings with marks of all kinds in them, what names others, and what goes deeper."""
    said = b'<</A (<< \\) ])/B[1 0 R[2]]/C 12 0 R/D /E#20 /F<</G<41>>>/H <4142>/I true\n/J -1.5>>'

    assert entries(said) == {
        'A': b'(<< \\) ])',
        'B': b'[1 0 R[2]]',
        'C': b'12 0 R',
        'D': b'/E#20',
        'F': b'<</G<41>>>',
        'H': b'<4142>',
        'I': b'true',
        'J': b'-1.5',
    }
