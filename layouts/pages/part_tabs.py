"""Thumb tabs of the parts that have no number and no letter: a word that reads up the page."""

from __future__ import annotations

from layouts.paper.page import Tab
from layouts.paper.trim import POINTS_PER_MM, Trim
from layouts.words.pages import TABS
from layouts.words.say import _

TAB_REM = 0.85
LINE_EM = 1.37
"""Of the typeface, from its lowest letters to its highest: a little more than it has."""
CLEAR = 0.9
"""How much of a tab's height its word may take."""


def part_tab(part: str, trim: Trim) -> Tab:
    """Return the tab of a part: 'front', 'square', 'glance', 'reference' or 'examples', one below the other."""
    word = _(TABS[part])
    slot_mm = (trim.height_mm - trim.top_mm - trim.foot_mm) / len(TABS)
    rem_mm = 10 * trim.unit_pt / POINTS_PER_MM
    most = min(TAB_REM, trim.tab_mm / rem_mm / LINE_EM)
    top_mm = list(TABS).index(part) * slot_mm
    return Tab(word, round(top_mm, 3), round(slot_mm, 3), most, CLEAR * slot_mm / rem_mm)
