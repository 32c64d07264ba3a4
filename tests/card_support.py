"""What the tests of cards share: figures by another arithmetic, faces typeset once, PDFs read back."""

from __future__ import annotations

import re
import subprocess
from collections.abc import Callable, Sequence
from functools import cache
from pathlib import Path
from tempfile import TemporaryDirectory

from check_support import real, rounded
from headed import lines as words_in_lines
from headed import phrases, said
from mpmath import atan, degrees, mpf, sqrt
from msgspec import Struct
from printed_words import Word, words_of

from layouts.cards.make import CardWork, card_work, finish_cards
from layouts.pdf.typeset import set_document
from layouts.verbs.options import with_pitches
from tablegen.numbers import text
from tablegen.settings import Settings

SIZES = ('id-1', 'index', 'a6', 'half-letter', 'letter')
MM = 72 / 25.4
HAIR_MM, EDGE_MM = 0.02, 0.4
GAP_EM = 0.45
"""Words of a head stand closer than that, two heads further apart."""
_kept = TemporaryDirectory(prefix='cards-')


def settings_of(pitches: str, paper: str = 'letter') -> Settings:
    """Return settings with pitches as the command takes them; '' keeps the usual ones."""
    settings = Settings(paper=paper)
    return with_pitches(settings, pitches) if pitches else settings


@cache
def made(size: str, pitches: str = '') -> tuple[CardWork, Path, tuple[str, ...]]:
    """Return a card typeset and laid on its sheets: its plan, the file, what was said."""
    folder = Path(_kept.name) / f'{size} {pitches}'.replace('/', '_')
    folder.mkdir()
    work = card_work(settings_of(pitches), size, folder)
    set_document(work.job)
    return work, folder / 'card.pdf', tuple(finish_cards(work, folder / 'card.pdf'))


def lines_of(pdf: Path, page: int) -> list[str]:
    """Return the lines of a page as they lie, spaces drawn together."""
    told = subprocess.run(
        ['pdftotext', '-layout', '-f', str(page), '-l', str(page), pdf, '-'],
        capture_output=True,
        text=True,
        check=True,
    ).stdout
    return [' '.join(line.split()) for line in told.splitlines() if line.strip()]


def word_boxes(pdf: Path, page: int) -> list[tuple[float, float, float, float, str]]:
    """Return the words of a page with their boxes: left, top, right, foot in mm from the upper left."""
    told = subprocess.run(
        ['pdftotext', '-bbox', '-f', str(page), '-l', str(page), pdf, '-'],
        capture_output=True,
        text=True,
        check=True,
    ).stdout
    found = re.findall(r'<word xMin="(.*?)" yMin="(.*?)" xMax="(.*?)" yMax="(.*?)">(.*?)</word>', told)
    return [(*(float(edge) / MM for edge in edges), word) for *edges, word in found]


def ink(pdf: Path, page: int, dots_per_mm: int = 8) -> tuple[int, int, bytes]:
    """Return a page as a picture: width, height, and a byte a dot, 255 for white."""
    picture = subprocess.run(
        ['pdftoppm', '-gray', '-r', str(25.4 * dots_per_mm), '-f', str(page), '-l', str(page), pdf],
        capture_output=True,
        check=True,
    ).stdout
    header = re.match(rb'P5\s+(\d+)\s+(\d+)\s+255\s', picture)
    return int(header[1]), int(header[2]), picture[header.end() :]


def mixed(length: mpf, per: int = 16) -> str:
    """Return a length to its nearest part as it is printed."""
    return text.mixed(rounded(length, per), per)


def decimals(number: mpf, places: int) -> str:
    return text.decimal(rounded(number, 10**places), places)


def angle(tangent: mpf) -> str:
    return f'{decimals(degrees(atan(tangent)), 2)}°'


def hip_cosine(r: mpf) -> mpf:
    return sqrt(288) / sqrt(288 + r * r)


def common_cosine(r: mpf) -> mpf:
    return 12 / sqrt(144 + r * r)


class Printed(Struct, frozen=True):
    """A face's table as it is printed."""

    title: str
    what: str
    """What stands under the title."""
    corner: str
    """The head of the labels."""
    heads: tuple[str, ...]
    rows: dict[str, tuple[str, ...]]
    """Figures by the label of their row."""


def table_of(pdf: Path, page: int) -> Printed:
    """Return a face's table: heads and whole figures end at one edge, a fraction at the latest there."""
    title, what, *below = words_in_lines(words_of(pdf)[page - 1])
    largest = max(line[0].size for line in below)
    rows = [line for line in below if line[0].size > largest - HAIR_MM]
    heads = below[: below.index(rows[0])]
    edges = [phrase.right for phrase in phrases(heads[-1], GAP_EM * heads[-1][0].size)]

    def split(some: Sequence[Sequence[Word]]) -> tuple[str, ...]:
        cells: list[list[str]] = [[] for _ in edges]
        for word in (word for line in some for word in line):
            place = next(place for place, edge in enumerate(edges) if word.right < edge + EDGE_MM)
            cells[place].append(word.text)
        return tuple(' '.join(cell) for cell in cells)

    margin = min(line[0].left for line in below)
    labels = [line[:1] for line in heads if line[0].left < margin + EDGE_MM]
    corner = ' '.join(said(line) for line in labels)
    names = split([line[1:] if line[:1] in labels else line for line in heads])[1:]
    found = {}
    for row in rows:
        label = [word for word in row if word.size > largest - HAIR_MM]
        found[said(label)] = split([row[len(label) :]])[1:]
    return Printed(said(title), said(what), corner, names, found)


COLUMN: dict[str, Callable[[mpf], str]] = {
    'plumb, com. side': lambda r: angle(r / 12),
    'plumb, common side': lambda r: angle(r / 12),
    'level, common side': lambda r: angle(12 / r),
    'plumb, hip side': lambda r: angle(r / sqrt(288)),
    'com. inches per ft': lambda r: decimals(sqrt(144 + r * r), 3),
    'common inches per ft': lambda r: decimals(sqrt(144 + r * r), 3),
    'hip inches per ft': lambda r: decimals(sqrt(288 + r * r), 3),
    **{
        f'jacks inches at {spacing}': lambda r, spacing=spacing: mixed(real(spacing) * sqrt(144 + r * r) / 12)
        for spacing in ('12', '16', '19.2', '24')
    },
    'cheek, jack top': lambda r: angle(1 / common_cosine(r)),
    'cheek, hip top': lambda r: angle(1 / hip_cosine(r)),
    'back- ing tilt': lambda r: angle(r / sqrt(288 + r * r)),
    'hip drop inches': lambda r: mixed(real('0.75') * r / sqrt(288)),
}
"""The figure under each printed head for a rise in inches per foot, by mpmath: tan, √ and arctan of right triangles."""
