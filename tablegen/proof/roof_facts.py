"""Reading what a marking sheet says of a board's cuts, its bird's mouth, its steps and what comes off it."""

from __future__ import annotations

from collections.abc import Sequence
from decimal import Decimal
from fractions import Fraction

from tablegen.proof.digits import FOOT_IN, SLACK, read, real, written
from tablegen.proof.roof import UP
from tablegen.proof.roof_boards import kind_of, run_to_step, square_of, steps_of
from tablegen.proof.roof_reading import Reading
from tablegen.proof.roof_slopes import gables
from tablegen.proof.sentences import before, told
from tablegen.proof.space import Plane, dot, size
from tablegen.proof.timber import End, Timber

Said = tuple[int, str, str]
STEEPEST_TILT = 45
"""Degrees that a saw's blade tilts."""


class _Facts:
    """The facts of one sheet."""

    def __init__(self, title: str, board: Timber, mark: str, it: Reading):
        self.title, self.board, self.mark, self.it = title, board, mark, it
        self.sentences = it.names.sentences
        self.kind = kind_of(mark, it)

    def row(self, name: str) -> str:
        return f'{self.title}: {name}'

    def places(self, page: int, name: str, sentence: str, words: str) -> dict[str, str]:
        """Return what stands in the places of a sentence; it is strange where it is another one."""
        found = told(self.sentences[sentence], words)
        if found is None:
            self.it.strange(page, f'{name} {words}')
        return found or {}

    # Ends -------------------------------------------------------------------------------------------------

    def end(self, page: int, name: str, words: str, end: End, tail: bool) -> None:
        """Read how an end is sawn."""
        board, row = self.board, self.row(name)
        if tail and self.it.asked.square and len(end.faces) == 1:
            found = self.places(page, name, 'square-tail', words)
            for place, way in (('level', board.ahead), ('plumb', UP)):
                value = abs(dot(board.top, way)) / size(board.top) * real(board.depth)
                self.it.length(
                    page, row, before(self.sentences['square-tail'], place), found.get(place, ''), value
                )
            return
        if len(end.faces) == 1 and abs(board.tilt(end.faces[0])) < SLACK:
            found = self.places(page, name, 'square', words)
            self._degrees(page, row, 'square', found, 'plumb', board.plumb_cut)
            return
        faces = end.faces
        if len(faces) == 2 and abs(board.cheek(faces[0]) - board.cheek(faces[1])) > SLACK:
            found = self.places(page, name, 'unlike', words)
            sides = sorted(
                faces, key=lambda face: board.at(End((face,)), Decimal('0.7'), not tail), reverse=tail
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
            self._degrees(page, row, name, found, place, value)
        body, tongue = (written(one, self.it.asked.per) for one in board.held(face))
        self.it.figure(
            page, row, before(self.sentences[name], 'held'), found.get('held', ''), f'{body} & {tongue}'
        )

    def _degrees(
        self, page: int, row: str, sentence: str, found: dict[str, str], place: str, value: Decimal
    ) -> None:
        head = before(self.sentences[sentence], place)
        self.it.degrees(page, row, head, found.get(place, ''), value)

    # The others -------------------------------------------------------------------------------------------

    def seat(self, page: int, name: str, words: str) -> None:
        found = self.places(page, name, 'seat', words)
        self._degrees(page, self.row(name), 'seat', found, 'level', self.board.level_cut)
        self._degrees(page, self.row(name), 'seat', found, 'plumb', self.board.plumb_cut)

    def square(self, page: int, name: str, words: str) -> None:
        """Read how the square is held."""
        _run, far = run_to_step(self.board, self.mark, self.it)
        body, tongue, step = square_of(self.board, far)
        whole = step == str(FOOT_IN)
        found = self.places(page, name, 'held' if whole else 'halved', words)
        head = self.sentences['held']
        for place, right in (('held', f'{body} & {tongue}'), ('tongue', tongue), ('body', body)):
            self.it.figure(page, self.row(name), before(head, place), found.get(place, ''), right)
        if not whole:
            self.it.figure(page, self.row(name), before(self.sentences['halved'], 'run'), found.get('run', ''), f'{step} in', step)  # fmt: skip

    def steps(self, page: int, name: str, words: str, tail: bool) -> None:
        """Read how a board or its tail is stepped off."""
        run, far = run_to_step(self.board, self.mark, self.it)
        if tail:
            run = self._overhang()
        whole, body, tongue = steps_of(self.board, run, far)
        found = self.places(page, name, 'stepped-whole' if body < SLACK else 'stepped', words)
        self.it.figure(page, self.row(name), '', found.get('count', ''), str(whole))
        if body >= SLACK:
            for place, value in (('body', body), ('tongue', tongue)):
                self.it.length(page, self.row(name), place, found.get(place, ''), value)

    def drift(self, page: int, name: str, words: str) -> None:
        """Read how far from its mark the last step ends with the square held as it is read."""
        run, far = run_to_step(self.board, self.mark, self.it)
        body, tongue, step = (read(one) or Fraction(0) for one in square_of(self.board, far))
        whole, _body, _tongue = steps_of(self.board, run, far)
        x, y, z = self.board.edge
        exact = real(step) * far * ((x * x + y * y + z * z) / (x * x + y * y)).sqrt()
        off = whole * (real(body * body + tongue * tongue).sqrt() - exact)
        found = self.places(page, name, 'drift-long' if off > 0 else 'drift-short', words)
        self.it.length(page, self.row(name), '', found.get('length', ''), abs(off))

    def _overhang(self) -> Decimal:
        """Return the level run of the tail, in feet of common run."""
        _run, far = run_to_step(self.board, self.mark, self.it)
        x, y, z = self.board.edge
        level = (x * x + y * y).sqrt() / (x * x + y * y + z * z).sqrt()
        return -self.board.at(self.board.tail, Decimal(0), False) * level / far

    def mouth(self, page: int, name: str, words: str) -> None:
        """Read the bird's mouth."""
        it = self.it
        assert it.roof
        height = it.roof.height
        if self.kind == 'hip' and it.asked.word('cuts.hips', 'dropped') == 'dropped':
            height -= it.roof.hip_drop(0)
        heel, seat, notch, left = self.board.mouth(height)
        found = self.places(page, name, 'mouth', words)
        values = {'height': height, 'heel': heel, 'seat': seat, 'notch': notch, 'left': left}
        for place, value in values.items():
            it.length(
                page, self.row(name), before(self.sentences['mouth'], place), found.get(place, ''), value
            )

    def off(self, page: int, name: str, words: str) -> None:
        """Read what comes off above: from the line of what stops it to the point of its center."""
        board, it = self.board, self.it
        assert board.center
        line = board.to(board.center)
        assert line is not None
        along = line - board.at(board.head)
        x, y, z = board.edge
        found = self.places(page, name, 'off', words)
        level = along * (x * x + y * y).sqrt() / (x * x + y * y + z * z).sqrt()
        for place, value in (('along', along), ('level', level)):
            it.length(page, self.row(name), before(self.sentences['off'], place), found.get(place, ''), value)
        thick = found.get('stop', '').rpartition(', ')[2].partition(' in ')[0]
        right = {'common': it.asked.ridge, 'shed_rafter': it.asked.inches('shed.thickness')}.get(self.kind)
        if right and read(thick) is not None:
            it.length(page, self.row(name), '', thick, real(right))

    def stands(self, page: int, name: str, words: str, marks: Sequence[str]) -> None:
        """Read how many stand on each slope."""
        it = self.it
        for one in words.split('; '):
            slope, _colon, count = one.rpartition(': ')
            key = next((key for key, told_name in it.names.slopes.items() if told_name == slope), None)
            if key is None:
                continue
            right = sum(stood.slope.name == key for mark in marks for stood in it.stood.get(mark, []))
            if self.kind == 'barge' and it.roof:
                right = gables(it.roof)
            it.figure(page, self.row(name), slope, count, str(right))


def read_facts(
    page: int,
    title: str,
    facts: Sequence[Said],
    marks: Sequence[str],
    board: Timber,
    single: bool,
    it: Reading,
) -> None:
    """Read them all."""
    one, there = _Facts(title, board, marks[-1], it), set()
    for at, name, words in facts:
        what = it.names.facts.get(name)
        there.add(what)
        match what:
            case 'both':
                one.end(at, name, words, board.head, False)
                one.end(at, name, words, board.tail, True)
            case 'head':
                one.end(at, name, words, board.head, False)
            case 'tail':
                one.end(at, name, words, board.tail, True)
            case 'seat':
                one.seat(at, name, words)
            case 'square':
                one.square(at, name, words)
            case 'steps' | 'tail-steps':
                one.steps(at, name, words, what == 'tail-steps')
            case 'drift':
                one.drift(at, name, words)
            case 'mouth':
                one.mouth(at, name, words)
            case 'off':
                one.off(at, name, words)
            case 'stands':
                one.stands(at, name, words, marks)
    wanted = {'square'} | ({'steps'} if single else set())
    if one.kind != 'barge':
        wanted |= {'seat', 'mouth'}
    if not wanted <= there or not ({'both'} <= there or {'head', 'tail'} <= there):
        it.missing(page, title)
