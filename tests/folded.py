"""Sheets printed, turned, cut, stacked and folded as a person would do it, then read."""

from __future__ import annotations

LEFT, RIGHT = 0, 1


def read_folded(sides, up):
    """Fold printed sides into sections and return the pages of each as a reader turns them."""
    piles: dict[int, list] = {}
    for front, back in zip(sides[::2], sides[1::2], strict=True):
        assert (front.face, back.face, front.section, front.sheet) == (
            'front',
            'back',
            back.section,
            back.sheet,
        )
        piles.setdefault(front.section, []).append((places(front), places(back)))
    return [read_section(pile, up) for pile in piles.values()]


def places(side):
    return {(panel.column, panel.row): panel.page for panel in side.panels}


def read_section(pile, up):
    """Read a pile of sheets that came out with their fronts up, the first on top."""
    # One cut across the middle; the lower pile goes inside, which is under the upper one while fronts are up.
    halves = [(front, back, row) for row in range(up // 2) for front, back in pile]
    # The paper was turned about its upright center line: behind a front's left half is the back's right half.
    halves = [
        ((front.get((LEFT, row)), back.get((RIGHT, row))), (front.get((RIGHT, row)), back.get((LEFT, row))))
        for front, back, row in halves
    ]
    paper = [half for half in halves if half != ((None, None), (None, None))]
    # Folded with fronts outside, the right-hand leaves come first, from the outermost in; a reader sees their
    # fronts, then their backs. The left-hand leaves follow from the innermost out, backs first.
    read = [page for _, (front, back) in paper for page in (front, back)]
    return read + [page for (front, back), _ in reversed(paper) for page in (back, front)]
