"""Proof-reading the sheets of one roof: worked out anew, by planes and points, from the lines of what was asked for."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from tablegen.proof.digits import begin
from tablegen.proof.found import Fault, Found
from tablegen.proof.page import Page, close, lines_of
from tablegen.proof.roof_buying import read_buying
from tablegen.proof.roof_ells import ell
from tablegen.proof.roof_heights import read_plan, read_sections
from tablegen.proof.roof_kinds import gable, gambrel, half_hipped, hipped, shed
from tablegen.proof.roof_lists import members_told, read_checks, read_lists
from tablegen.proof.roof_marking import read_marking
from tablegen.proof.roof_names import ROOF_KEYS, RoofNames
from tablegen.proof.roof_plates import read_plates
from tablegen.proof.roof_reading import Reading, marks_of
from tablegen.proof.roof_round import bay, rounded
from tablegen.proof.roof_stated import Asked, Unstated, asked
from tablegen.proof.roof_whole import Roof
from tablegen.proof.roof_wings import is_flush, winged
from tablegen.proof.sentences import told as told_in
from tablegen.proof.sheet_lines import FOOT_PT, Sheet, sheets_of, tables_in

KINDS: dict[str, Callable[[Asked], Roof]] = {
    'shed': shed,
    'gable': gable,
    'saltbox': gable,
    'gambrel': gambrel,
    'hip': hipped,
    'half-hip': half_hipped,
    'many-sided': rounded,
    'bay': bay,
    'wing': winged,
}


def read_roof(pages: Sequence[Page], names: RoofNames) -> Found | None:
    """Read the sheets of a roof; None for what is none."""
    sheets = sheets_of(pages)
    titles = {sheet.title for sheet in sheets}
    if not {names.titles[key] for key in ROOF_KEYS if key != 'asked'} <= titles:
        return None
    begin()
    found = Found(pages=len(pages))
    try:
        told = asked(_asked_lines(pages, names.titles['asked']))
        roof = roof_of(told)
    except (Unstated, KeyError):
        found.strange.append((len(pages), names.titles['asked']))
        return found
    it = Reading(told, roof, names, found)
    by_title = {sheet.title: sheet for sheet in sheets}
    members_told(by_title[names.titles['members']], it)
    read_plan(sheets[0], it)
    plates = by_title[names.titles['plates']]
    read_plates(plates, it)
    found.read |= plates.pages
    if names.titles['section'] in by_title:
        read_sections(by_title[names.titles['section']], {page.number: page for page in pages}, it)
    for sheet in sheets[1:]:
        if sheet.title not in names.titles.values():
            read_marking(sheet, it)
    _all_marked(sheets, it)
    _all_heads(sheets, it)
    read_lists(by_title[names.titles['members']], it)
    buy = by_title[names.titles['buy']]
    read_buying(buy, it)
    read_checks(buy, it)
    return found


def roof_of(told: Asked) -> Roof:
    """Return the roof that was asked for.

    Errors:
        KeyError, Unstated where what was asked for tells none
    """
    return (ell if is_flush(told) else KINDS[told.word('kind')])(told)


def _all_marked(sheets: Sequence[Sheet], it: Reading) -> None:
    """See that every mark of the lists has its marking sheet."""
    there = {mark for sheet in sheets for mark in marks_of(sheet.title)}
    for mark in it.kinds:
        if mark not in there:
            it.missing(sheets[0].page, mark)


def _all_heads(sheets: Sequence[Sheet], it: Reading) -> None:
    """See that no table has a head that is not known."""
    known = {*it.names.heads.values(), *it.names.hands}
    numbered = [it.names.heads[key] for key in ('few-first', 'few-last', 'on-ridge')]
    for sheet in sheets:
        if sheet.title == it.names.titles['section']:
            continue  # what is drawn there is set as small
        for table in tables_in(sheet.lines):
            for head in {*table.heads} - known:
                if not any(told_in(one, head) for one in numbered):
                    it.found.faults.append(Fault('figure', table.rows[0].page, sheet.title, '', head, ''))


def _asked_lines(pages: Sequence[Page], title: str) -> list[str]:
    """Return the lines under a title, those of the right half of the page after those of the left."""
    found: list[str] = []
    middle = 0.0
    for page in reversed(pages):
        lines = lines_of([word for word in page.words if word.base > FOOT_PT])
        place = next((n for n, line in enumerate(lines) if close(line) == title), None)
        if place is None:
            continue
        middle = page.ink.size[0] / 2
        words = [word for line in lines[place + 1 :] for word in line]
        for half in (True, False):
            found += [
                close(line) for line in lines_of([word for word in words if (word.left < middle) is half])
            ]
        break
    return found
