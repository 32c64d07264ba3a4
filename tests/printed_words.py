"""Reading finished PDFs back with tools of other people's making: words with their places, lines, fonts, faults."""

from __future__ import annotations

import subprocess
import xml.etree.ElementTree as ET
from pathlib import Path

from font_measures import ascent_and_descent_em, box_em
from msgspec import Struct

MM = 72 / 25.4
NAMESPACE = '{http://www.w3.org/1999/xhtml}'
ASCENT, DESCENT = ascent_and_descent_em()


class Word(Struct, frozen=True):
    """A word as it is printed, with the box that its ink may fill; mm from the upper left corner of the page."""

    text: str
    left: float
    top: float
    right: float
    foot: float
    size: float
    """Of its type."""
    base: float
    """Of the line it stands on, from the top."""

    def overlaps(self, other: Word) -> bool:
        """Return whether the ink of two words may meet: by more than a hair, lest kerning count."""
        across = min(self.right, other.right) - max(self.left, other.left)
        down = min(self.foot, other.foot) - max(self.top, other.top)
        return across > 0.05 and down > 0.05


def words_of(pdf: Path) -> list[list[Word]]:
    """Return the words of every page."""
    tree = ET.fromstring(told('pdftotext', '-bbox', pdf, '-'))
    return [[_word(node) for node in page.iter(f'{NAMESPACE}word')] for page in tree.iter(f'{NAMESPACE}page')]


def _word(node: ET.Element) -> Word:
    left, top, right, foot = (float(node.get(edge)) / MM for edge in ('xMin', 'yMin', 'xMax', 'yMax'))
    size = (foot - top) / (ASCENT + DESCENT)  # the box is as high as a line of the font
    base = top + ASCENT * size
    inks = [box_em(letter, 86, 500) for letter in node.text]
    return Word(
        node.text,
        left,
        base - size * max(ink[3] for ink in inks),
        right,
        base - size * min(ink[1] for ink in inks),
        size,
        base,
    )


def lines_of(pdf: Path, box_mm: tuple[float, float, float, float]) -> list[list[str]]:
    """Return the lines of every page within a box, their words as far apart as they are printed.

    Given:
        box_mm  left, top, width, height
    """
    box = (str(round(edge * MM)) for edge in box_mm)  # in points, which this tool wants whole
    clip = [word for pair in zip(('-x', '-y', '-W', '-H'), box, strict=True) for word in pair]
    pages = told('pdftotext', '-layout', *clip, pdf, '-').split('\f')[:-1]
    return [page.splitlines() for page in pages]


def fonts_of(pdf: Path) -> list[tuple[str, bool]]:
    """Return the name of every font, and whether it is embedded; a name cut off by the listing stays cut."""
    listing = told('pdffonts', pdf).splitlines()
    embedded = listing[0].index('emb')
    return [(line.split()[0].partition('+')[2], line[embedded:].split()[0] == 'yes') for line in listing[2:]]


def faults_of(pdf: Path) -> str:
    """Return what a checker of PDF syntax finds wrong, '' where it finds nothing."""
    done = subprocess.run(['qpdf', '--check', pdf], capture_output=True, text=True, check=False)
    clean = done.returncode == 0 and not done.stderr and 'No syntax or stream encoding errors' in done.stdout
    return '' if clean else done.stdout + done.stderr


def told(*command) -> str:
    """Return what a tool prints."""
    return subprocess.run(command, capture_output=True, text=True, check=True).stdout
