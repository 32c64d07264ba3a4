"""The words of drawings: a drawing says them where it places them, no wider than their English (layouts/drawings/svg.py)."""

from __future__ import annotations

from layouts.words.messages import tables_of

_ALL = tables_of('drawing')
ENDS, SQUARE_DRAWING, TURN_OVER_DRAWING = _ALL['ends'], _ALL['square'], _ALL['turn_over']
GAUGES_DRAWING, RAFTER_DRAWING, CORNER_DRAWING = _ALL['gauges'], _ALL['rafter'], _ALL['corner']
COVER_DRAWING, RUN_DRAWING, SHED_RUN_DRAWING = _ALL['cover'], _ALL['run'], _ALL['shed_run']
ONE_RAFTER_DRAWING, RIDGE_ENDS_DRAWING = _ALL['one-rafter'], _ALL['ridge_ends']
TWO_SLOPES = _ALL['two_slopes']
ROOF_DRAWINGS = {
    name.removeprefix('roof.'): words for name, words in _ALL.items() if name.startswith('roof.')
}
"""Of the groups of reference tables."""
ROOF_PLAN, ROOF_SECTION, CUT_BOARD = _ALL['roof_plan'], _ALL['roof_section'], _ALL['cut_board']
"""Of the sheets of one roof."""
