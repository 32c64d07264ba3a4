"""HTML of faces: each a page of the card's size, placed by two templates."""

from __future__ import annotations

from importlib.resources import files
from pathlib import Path

from layouts.cards.faces import TableFace
from layouts.cards.formats import CLEAR_MM, HOLE_CENTER_MM, PAPER_HOLE_MM, Format
from layouts.cards.measures import LINE
from layouts.cards.plan import CardPlan
from layouts.cards.titles import figure_size
from layouts.html.page_html import document_html, environment
from layouts.paper.typeface import font_address
from layouts.pdf.documents import Job

FACES = 'card-faces.pdf'


def faces_job(plan: CardPlan, title: str, folder: Path) -> Job:
    """Return the document of all faces, front and back by turns."""
    templates = environment()
    bodies = []
    for place, face in enumerate(plan.faces):
        kind = 'card_table' if isinstance(face, TableFace) else 'card_words'
        bodies.append(
            templates.get_template(f'{kind}.html').render(
                face=face,
                side='back' if place % 2 else 'front',
                number=place + 1,
                figure_size=figure_size(plan.form, face.title),
            )
        )
    return Job(document_html(bodies, title), _style(plan.form), len(bodies), folder / FACES)


def _style(form: Format) -> str:
    hole = HOLE_CENTER_MM + PAPER_HOLE_MM / 2 + CLEAR_MM
    sizes = f"""
@font-face {{ font-family: "Open Sans"; src: url("{font_address()}"); }}
@page {{ size: {form.width_mm}mm {form.height_mm}mm; margin: 0; }}
html {{ font-size: {form.note_pt}pt; }}
.face {{ width: {form.width_mm}mm; height: {form.height_mm}mm; }}
.front .strip {{ left: {form.inset_mm}mm; right: {hole}mm; }}
.back .strip {{ left: {hole}mm; right: {form.inset_mm}mm; }}
.strip {{ top: {form.inset_mm}mm; }}
.body {{ top: {form.strip_mm}mm; left: {form.inset_mm}mm; right: {form.inset_mm}mm; }}
.foot {{ bottom: {form.inset_mm}mm; left: {form.inset_mm}mm; right: {form.inset_mm}mm; }}
.foot, .what {{ line-height: {LINE}; }}
"""
    return sizes + files('layouts.html').joinpath('styles/card.css').read_text('utf-8')
