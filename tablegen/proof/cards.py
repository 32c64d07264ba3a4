"""Proof-reading the sheets of a card: every figure by its row and head, and the card's own size by its ink."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from fractions import Fraction

from msgspec import Struct
from msgspec.structs import replace

from tablegen.proof.card_face import CardFace
from tablegen.proof.card_sheet import read_sheets
from tablegen.proof.digits import FOOT_IN, begin, decimals, named, read, real, written
from tablegen.proof.figures import figures, length
from tablegen.proof.found import Fault, Found
from tablegen.proof.page import Page, close
from tablegen.proof.roof import Boards, Corner, corner
from tablegen.proof.sentences import before, told, told_within
from tablegen.proof.stated import Pitch, Stated, pitch_of

PARTS = (2, 4, 8, 16, 32, 64)
"""Of an inch, to which lengths may be rounded."""
USUAL = Boards(Fraction(3, 2), Fraction(3, 2), Fraction(3, 2), '2×8', '2×8', '2×8', Fraction(7, 2))
"""Of which no figure of a card asks but the hip's thickness, which is printed."""
THOUSANDTHS = 3


class CardNames(Struct, frozen=True):
    """What is printed on cards."""

    columns: tuple[tuple[str, str], ...]
    """Each head, its lines with a word space between, and the name of its figures; of jacks with {spacing} in both."""
    drop: str
    """What says of which {hip} the drop is."""
    use: str
    """The title of the side that says how a card is used."""
    tables: tuple[tuple[str, str], ...]
    """What a table of runs by the inch is called, and its length."""
    runs: tuple[tuple[str, int], ...]
    """The head of runs in a list, and the inches of one."""
    lengths: tuple[tuple[str, str], ...]
    """The head of a column of lengths in such a list, and its length."""
    values: tuple[tuple[str, tuple[tuple[str, str], ...]], ...]
    """Sentences of a pitch's cuts, each with the names of its places and their figures."""
    sum_off: str
    parts: str
    example: str
    cut_size: str
    """What says in the margin how wide and high a card is."""


Told = Callable[[int], Sequence[str]]
"""What may be printed, where lengths are rounded to parts of so many to the inch."""


class _Figure(Struct, frozen=True):
    page: int
    row: str
    head: str
    printed: str
    right: Told

    def differs(self, per: int) -> bool:
        return self.printed.removesuffix('″') not in self.right(per)


def read_card(pages: Sequence[Page], names: CardNames) -> Found | None:
    """Read the sheets of a card; None for what is none."""
    faces = {
        piece.name: CardFace(page.number, piece.words)
        for page in reversed(pages)
        for piece in reversed(page.ink.pieces)
    }
    some = list(faces.values())
    tables = [face for face in some if _is_table(face, names)]
    if not tables or len(tables) < len([face for face in some if face.title != names.use]):
        return None
    begin()
    found = Found(pages=len(pages))
    hip = next((thick for face in some if (thick := _hip(face, names))), None)
    boards = replace(USUAL, hip=hip) if hip else USUAL
    read_all = [figure for face in tables for figure in _figures(face, names, boards, hip is not None, found)]
    read_all += [figure for face in some if face.title == names.use for figure in _words(face, names, boards)]
    per = _part_of(read_all)
    for one in read_all:
        found.figure(one.page, one.row, one.head, one.printed.removesuffix('″'), *one.right(per))
    found.read |= {face.page for face in some}
    for face in tables:
        found.faults += [Fault('gap', face.page, label, '', '', '') for label in face.skipped]
        found.faults += _ends(face)
    read_sheets(pages, names.cut_size, found)
    return found


def _is_table(face: CardFace, names: CardNames) -> bool:
    heads = [head.text for head in face.heads[1:]]
    known = [_key(head, names) for head in heads]
    by_the_foot = dict(names.lengths)
    return face.title != names.use and (
        any(known) or face.what in dict(names.tables) or any(head in by_the_foot for head in heads)
    )


def _key(head: str, names: CardNames) -> str:
    """Return the name of a column's figures, '' for a head that is not known."""
    for words, key in names.columns:
        found = told(words, head)
        if found is not None:
            return key.format(**found)
    return ''


def _part_of(some: Sequence[_Figure]) -> int:
    """Return the parts to the inch at which most of the figures are right, those of the finest of them first."""
    fractions = [Fraction(word) for one in some for word in one.printed.strip('″').split() if _is_part(word)]
    finest = max((one.denominator for one in fractions if one.denominator in PARTS), default=16)
    if not any(one.differs(finest) for one in some):
        return finest
    return min(PARTS, key=lambda per: sum(one.differs(per) for one in some))


def _is_part(word: str) -> bool:
    over, slash, under = word.partition('/')
    return bool(slash) and over.isdigit() and under.isdigit() and int(under) > 0


# Tables -----------------------------------------------------------------------------------------------------


def _figures(
    face: CardFace, names: CardNames, boards: Boards, hip_known: bool, found: Found
) -> Iterator[_Figure]:
    title = face.title
    if face.what in dict(names.tables) or face.heads[0].text in dict(names.runs):
        pitch = pitch_of(title)
        if pitch is None or not pitch.slope:
            found.faults.append(Fault('pitch', face.page, '', '', title, ''))
            return
        at = corner(pitch.slope, boards)
        yield from _by_run(face, names, at, found)
        yield from _values(face, names, at)
        return
    in_base = title.endswith(f' in {FOOT_IN}')
    for row in face.rows:
        pitch = pitch_of(row.label)
        if pitch is None or not pitch.slope:
            found.faults.append(Fault('pitch', face.page, '', '', row.label, ''))
            continue
        for head, printed in zip(face.heads[1:], row.cells, strict=True):
            key = _key(head.text, names)
            if not key or (key == 'hip-drop' and not hip_known):
                found.strange.append((face.page, f'{row.label} {head.text} {printed}'))
                continue
            label = f'{row.label} in {FOOT_IN}' if in_base else row.label
            yield _Figure(face.page, label, head.text, printed, _of_pitch(pitch, boards, key))


def _of_pitch(pitch: Pitch, boards: Boards, key: str) -> Told:
    spacing = read(key.removeprefix('jacks-')) if key.startswith('jacks-') else None
    spacings = () if spacing is None else (spacing,)

    def right(per: int) -> Sequence[str]:
        book = Stated('', per, False, (), spacings, boards)
        return (figures(corner(pitch.slope, boards), book).get(key, ''),)

    return right


def _by_run(face: CardFace, names: CardNames, at: Corner, found: Found) -> Iterator[_Figure]:
    grid = dict(names.tables).get(face.what)
    unit, lengths = dict(names.runs).get(face.heads[0].text, 0), dict(names.lengths)
    labels = [row.label for row in face.rows]
    for row in face.rows:
        value = read(row.label) if row.label != '0' else Fraction(0)
        if value is None or labels.count(row.label) > 1:
            found.faults.append(Fault('pitch', face.page, '', '', row.label, ''))
            continue
        for head, printed in zip(face.heads[1:], row.cells, strict=True):
            if grid:
                run = value * FOOT_IN + (read(head.text) or 0)
                kind, empty = grid, not run or not printed
            else:
                run, kind, empty = value * unit, lengths.get(head.text, ''), False
            if empty and not (run and any(row.cells[row.cells.index(printed) + 1 :])):
                continue  # no run, or one past the last
            if not kind:
                found.strange.append((face.page, f'{row.label} {head.text} {printed}'))
                continue
            yield _Figure(face.page, row.label, head.text, printed, _of_run(at, kind, run))


def _of_run(at: Corner, kind: str, run: Fraction) -> Told:
    value = length(at, kind, run)
    return lambda per: (written(value, per), written(value, per, True).removesuffix('″'))


def _values(face: CardFace, names: CardNames, at: Corner) -> Iterator[_Figure]:
    for sentence, places in names.values:
        printed = told_within(sentence, face.foot)
        if printed is None:
            continue
        for place, key in places:
            yield _Figure(face.page, face.title, before(sentence, place), printed[place], _constant(at, key))
        break
    off = told_within(names.sum_off, face.foot)
    if off:
        yield _Figure(face.page, names.sum_off, '', off['part'], lambda per: (f'1/{per}',))


def _constant(at: Corner, key: str) -> Told:
    return lambda per: (figures(at, Stated('', per, False, (), (), at.boards))[key],)


def _ends(face: CardFace) -> Iterator[Fault]:
    """Yield what is amiss where a title's first and last pitch are not those of its rows."""
    first, dash, last = face.title.removesuffix(f' in {FOOT_IN}').partition('–')
    if dash and face.rows and (face.rows[0].label, face.rows[-1].label) != (first, last):
        yield Fault('gap', face.page, face.title, '', '', '')


# Words ------------------------------------------------------------------------------------------------------


def _hip(face: CardFace, names: CardNames) -> Fraction | None:
    for line in face.lines:
        found = told_within(names.drop, close(line))
        if found:
            return read(found['hip'])
    return None


def _words(face: CardFace, names: CardNames, boards: Boards) -> Iterator[_Figure]:
    for line in face.under_head(names.parts):
        for name, printed in zip(line[::2], line[1::2], strict=False):
            value = read(name.text)
            right = decimals(real(value), THOUSANDTHS) if value is not None else ''
            yield _Figure(face.page, names.parts, name.text, printed.text, _always(right))
    for line in face.lines:
        found = told(names.example, close(line))
        pitch = pitch_of(found['pitch']) if found else None
        if found is None or pitch is None:
            continue
        unit = figures(corner(pitch.slope, boards), Stated('', 16, False, (), (), boards))['common-per-foot']
        feet, product = read(found['feet']) or 0, (read(found['feet']) or 0) * Fraction(unit)
        row = close(line).partition(':')[0]
        yield _Figure(face.page, row, '×', found['unit'], _always(unit))
        yield _Figure(face.page, row, '=', found['length'], _always(decimals(real(product), THOUSANDTHS)))
        yield _Figure(face.page, row, ':', found['run'], _always(_feet(feet)))
        yield _Figure(face.page, row, '≈', found['rounded'], _near(product))


def _feet(feet: Fraction | int) -> str:
    whole, inches = divmod(feet * FOOT_IN, FOOT_IN)
    return f'{whole} ft {named(Fraction(inches))} in' if inches else f'{whole} ft'


def _near(inches: Fraction) -> Told:
    return lambda per: (
        f'{written(real(inches), per)} in',
        written(real(inches), per, True).removesuffix('″'),
    )


def _always(right: str) -> Told:
    return lambda _per: (right,)
