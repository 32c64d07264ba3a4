"""Reading how the ends of a board are sawn: square or with cheeks, by the saw's settings and by the square."""

from __future__ import annotations

from collections.abc import Sequence
from decimal import Decimal

from tablegen.proof.digits import SLACK, decimals, real, written
from tablegen.proof.roof import UP
from tablegen.proof.roof_boards import Boards
from tablegen.proof.roof_reading import Reading
from tablegen.proof.sentences import before, told
from tablegen.proof.space import Plane, dot, size
from tablegen.proof.timber import End

STEEPEST_TILT = 45
"""Degrees that a saw's blade tilts."""


class Ends:
    """How the boards of a sheet end."""

    def __init__(self, title: str, boards: Boards, marks: Sequence[str], hand: str, it: Reading):
        self.title, self.boards, self.marks, self.hand, self.it = title, boards, marks, hand, it
        self.board, self.sentences = boards.one, it.names.sentences

    def row(self, name: str) -> str:
        return f'{self.title}: {name}'

    def places(self, page: int, name: str, sentence: str, words: str) -> dict[str, str]:
        """Return what stands in the places of a sentence; it is strange where it is another one."""
        found = told(self.sentences[sentence], words)
        if found is None:
            self.it.strange(page, f'{name} {words}')
        return found or {}

    def end(self, page: int, name: str, words: str, end: End, tail: bool) -> None:
        """Read how an end is sawn."""
        board, row = self.board, self.row(name)
        if tail and end.leans and len(end.faces) == 1 and abs(board.tilt(end.faces[0])) < SLACK:
            found = self.places(page, name, 'square-tail', words)
            for place, way in (('level', board.ahead), ('plumb', UP)):
                value = abs(dot(board.top, way)) / size(board.top) * real(board.depth)
                self.it.length(
                    page, row, before(self.sentences['square-tail'], place), found.get(place, ''), value
                )
            return
        if len(end.faces) == 1 and abs(board.tilt(end.faces[0])) < SLACK:
            found = self.places(page, name, 'square', words)
            self.degrees(page, row, 'square', found, 'plumb', board.plumb_cut)
            return
        faces = end.faces
        if tail and end.leans and board.height is None:
            found = self.places(page, name, 'laid', words)
            self.degrees(page, row, 'laid', found, 'level', board.level_cut)
            self.degrees(page, row, 'laid', found, 'tilt', board.tilt(faces[0]))
            return
        if len(faces) > 2:
            found = self.places(page, name, 'blunt', words)
            self.degrees(page, row, 'square', found, 'plumb', board.plumb_cut)
            self.cheek(page, row, found.get('cheek', ''), faces[1])
            return
        if len(faces) == 2 and abs(board.cheek(faces[0]) - board.cheek(faces[1])) > SLACK:
            found = self.places(page, name, 'unlike', words)
            sides = sorted(
                faces,
                key=lambda face: board.at(End((face,)), Decimal('0.7'), not tail),
                reverse=tail and not end.hollow,
            )
            for side, face in zip(('left', 'right'), sides, strict=True):
                self.cheek(page, row, found.get(side, ''), face)
            return
        if len(faces) == 2:
            words = self.places(page, name, 'hollow' if end.hollow else 'to-a-point', words).get('cheek', '')
        self.cheek(page, row, words, faces[0])

    def cheek(self, page: int, row: str, words: str, face: Plane) -> None:
        """Read how one cheek is sawn."""
        board = self.board
        leaning, steep = abs(face.normal[2]) > SLACK, board.tilt(face) > STEEPEST_TILT + SLACK
        name = ('leaning-past' if leaning else 'past') if steep else ('leaning' if leaning else 'cheek')
        found = self.places(page, row, name, words)
        for place, value in (
            ('line' if leaning else 'plumb', board.side_line(face)),
            ('tilt', board.tilt(face)),
            ('top', board.cheek(face)),
        ):
            self.degrees(page, row, name, found, place, value)
        body, tongue = (written(one, self.it.asked.per) for one in board.held(face))
        self.it.figure(
            page, row, before(self.sentences[name], 'held'), found.get('held', ''), f'{body} & {tongue}'
        )

    def degrees(
        self, page: int, row: str, sentence: str, found: dict[str, str], place: str, value: Decimal
    ) -> None:
        head = before(self.sentences[sentence], place)
        self.it.degrees(page, row, head, found.get(place, ''), value)

    def by_hand(self, page: int, name: str, words: str) -> None:
        """Read how a cheek is sawn for which no saw tilts far enough: from the end, as much as is left, as far as the cut is deep."""
        board, sentences = self.board, self.sentences
        name_of = 'by-hand-leaning' if told(sentences['by-hand-leaning'], words) else 'by-hand'
        found = self.places(page, name, name_of, words)
        tilts, reaches = [''], []
        for end in (board.head, board.tail):
            share = {1: real(board.thick), 2: real(board.thick) / 2}.get(len(end.faces))
            crossed = share or real(board.thick - end.thick) / 2
            for face in end.faces:
                if board.tilt(face) > STEEPEST_TILT + SLACK:
                    tilts.append(f'{decimals(90 - board.tilt(face), 2)}°')
                    aside = dot(face.normal, board.left)
                    reaches += self.it.told(crossed / (1 - aside * aside).sqrt())
        for place, right in (('other', tilts[1:]), ('reach', reaches)):
            self.it.figure(page, self.row(name), before(sentences[name_of], place), found.get(place, ''), *(right or ['']))  # fmt: skip
