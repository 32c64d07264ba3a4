"""Making cards: from settings to one PDF of sheets, written only once it is whole."""

from __future__ import annotations

from pathlib import Path

from msgspec import Struct

from layouts.cards.formats import format_named
from layouts.cards.html import faces_job
from layouts.cards.impose import lay_cards
from layouts.cards.plan import CardPlan, plan_cards
from layouts.cards.sheet import CardSheet, card_sheet
from layouts.pdf.documents import Job
from layouts.words.say import _, n_
from tablegen.settings import Settings

CARD = 'card.pdf'


class CardWork(Struct, frozen=True):
    """Cards planned and ready to be typeset."""

    plan: CardPlan
    sheet: CardSheet
    title: str
    job: Job


def card_work(settings: Settings, size: str, folder: Path) -> CardWork:
    """Return cards planned from settings; their faces are to be typeset into the folder.

    Errors:
        BookError for a size that is none, that the paper cannot hold, or that cannot hold the pitches
    """
    card_sheet(
        format_named(size), settings.paper
    )  # a size too big for the paper is told before anything else
    plan = plan_cards(settings, size)
    title = settings.title
    return CardWork(plan, card_sheet(plan.form, settings.paper), title, faces_job(plan, title, folder))


def finish_cards(work: CardWork, out: Path) -> list[str]:
    """Write the sheets of typeset cards, and return what has been made, in lines."""
    sheets = lay_cards(work.job.out, work.plan.form, work.sheet, work.title, out)
    form, many = work.plan.form, len(work.plan.cards)
    words = (
        _('{cards}, {name}, {width} × {height} mm; {up} on a sheet, {sheets}, flip on the long edge')
        if work.sheet.flip == 'long'
        else _('{cards}, {name}, {width} × {height} mm; {up} on a sheet, {sheets}, flip on the short edge')
    )
    made = words.format(
        cards=n_('{count} card of two sides', '{count} cards of two sides', many).format(count=many),
        name=form.name,
        width=f'{form.width_mm:g}',
        height=f'{form.height_mm:g}',
        up=work.sheet.up,
        sheets=n_('{count} sheet', '{count} sheets', sheets).format(count=sheets),
    )
    return [made, *work.plan.said]
