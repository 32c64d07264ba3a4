"""A hip at a square corner of one pitch, and a valley between two ridges of one height."""

from __future__ import annotations

from tablegen.examples.building import Building
from tablegen.examples.rafters import height_stands
from tablegen.examples.records import HipExample, RidgeEnd, Sources, Stands, ValleyExample
from tablegen.examples.sources import Book
from tablegen.examples.steps import read_lengths, step_off, step_stands
from tablegen.geometry import backing, ridge
from tablegen.numbers.figure import Figure
from tablegen.roof.framing import hip, valley
from tablegen.roof.member import Deduction, End, Kind, Member, Stop, inches_of, known
from tablegen.roof.names import Why
from tablegen.roof.plane import Plane
from tablegen.roof.seat import Mouth, common_mouth, hip_mouths, valley_mouth
from tablegen.settings import Settings
from tablegen.tables.seat_hips import key_of


def whole_hip(building: Building, settings: Settings) -> HipExample | None:
    """Return the hip, to the ridge with one cheek or between commons with two; None where the book ends before it."""
    roof = building.hip
    if roof is None:
        return None
    plane, book = roof.plane(settings), Book(roof.pitch, settings)
    member, between = hip(roof.mark, plane, building.hip_stop), hip(roof.mark, plane, Stop.COMMONS)
    read = read_lengths(member, roof, book)
    if read is None:
        return None
    dropped, backed = hip_mouths(plane.side)
    commons, drop, bevel = common_mouth(plane.side), plane.members.drop.plumb, plane.members.backing.bevel
    ends, (stepped, odd) = _ridge_ends(plane), step_stands(member, roof, book)
    stands = {
        **stepped,
        'length': read[0].sources,
        'whole': read[1].sources,
        'height': () if plane.members.mouth.fault else height_stands(commons, book),
        'between': _off_stands(between.deductions[0], book),
        'between_sides': _side_stands(between.head, book),
        'tail_sides': _side_stands(member.tail, book),
        **_upper_end_stands(member, book),
        **_end_stands(*ends, book),
        'drop': book.stands(('drop',), ('hips', book.pitch, 'drop_plumb', drop)),
        'backing': book.stands(('backing',), ('hips', book.pitch, 'backing_bevel', bevel))
        + _in_seats('hip', 'backed_heel', backed.heel, book)
        + _in_seats('hip', 'backed_seat', backed.seat, book),
        **_mouth_stands('dropped', member.mouth, book),
    }
    return HipExample(
        roof=roof,
        member=member,
        stands=stands,
        length=read[0],
        whole=read[1],
        steps=step_off(member, roof, settings),
        odd=odd,
        between=between,
        ridge=ends[0],
        ridge_between=ends[1],
        drop=drop,
        backing=bevel,
        commons_height=commons.height_above_plate,
        backed=backed if isinstance(backed.seat, Figure) else None,
        least_depth=known(dropped.least_depth),
    )


def whole_valley(building: Building, settings: Settings) -> ValleyExample | None:
    """Return the valley, between two ridges of one height; None where the book ends before it."""
    roof = building.valley
    if roof is None:
        return None
    plane, book = roof.plane(settings), Book(roof.pitch, settings)
    member, boards = valley(roof.mark, plane), plane.side.boards
    read = read_lengths(member, roof, book)
    if read is None:
        return None
    over = backing.drop_plumb(boards.valley_thickness_in, plane.side.at)
    stepped, odd = step_stands(member, roof, book)
    stands = {
        **stepped,
        'drop': book.stands(('drop',)) if book.opened else (),
        'length': read[0].sources,
        'whole': read[1].sources,
        **_upper_end_stands(member, book),
        **_mouth_stands('valley', member.mouth, book),
    }
    return ValleyExample(
        roof=roof,
        member=member,
        stands=stands,
        length=read[0],
        whole=read[1],
        steps=step_off(member, roof, settings),
        odd=odd,
        stands_over=plane.side.length(over),
        least_depth=known(valley_mouth(plane.side).least_depth),
    )


def _ridge_ends(plane: Plane) -> tuple[RidgeEnd, RidgeEnd]:
    """Return the ridge's end with hips on the ridge, and between commons."""
    ends, thick, at = plane.members.shortening.end_common, plane.side.boards.ridge_in, plane.side.at
    assert ends  # the corner is square

    def over(past: Figure) -> Figure:
        return plane.side.length(ridge.end_over_plane(inches_of(past), thick, at))

    on_ridge, between = ends.hips_on_ridge.level, ends.between_commons.level
    return RidgeEnd(on_ridge, over(on_ridge), ends.clip), RidgeEnd(between, over(between), None)


def _off_stands(off: Deduction, book: Book, name: str = 'hip') -> Sources:
    """Return where a deduction stands, level and along; at a ridge in rows of some name."""
    if off.stop == Stop.COMMONS:
        name = 'between'
    thick = off.thickness_in
    return book.stands(
        (f'{name}_level', f'{name}_along'),
        ('shortening-level', thick, 'hip_or_jack', off.level),
        ('shortening-hip', book.pitch, 'off_along_edge', off.along, thick),
    )


def _side_stands(end: End, book: Book) -> Sources:
    """Return where it stands how far from the center's mark the sides are cut."""
    assert end.back
    cell = ('set-backs', book.pitch, 'set_back', end.back.along, book.settings.hip_thickness)
    return book.stands(('side_level', 'side_along'), cell)


def _upper_end_stands(member: Member, book: Book) -> Stands:
    cut, pitch = member.head.cut, book.pitch
    assert cut
    return {
        'off': _off_stands(member.deductions[0], book, 'valley_off' if member.kind is Kind.VALLEY else 'hip'),
        'sides': _side_stands(member.head, book),
        'side': book.stands(('hip_side',), ('cheeks', pitch, 'hip_side', cut.side_line)),
        'top': book.stands(('hip_top', 'hip_on_12'), ('cheeks', pitch, 'hip_top', cut.top_from_square)),
    }


def _end_stands(on_ridge: RidgeEnd, between: RidgeEnd, book: Book) -> Stands:
    settings = book.settings
    return {
        'past': book.in_table(
            'ridge-ends',
            settings.ridge_thickness,
            'end_common_with_hip',
            on_ridge.past,
            settings.hip_thickness,
        ),
        'between_end': book.in_table(
            'shortening-level', settings.rafter_thickness, 'end_common', between.past
        ),
    }


def _mouth_stands(way: str, mouth: Mouth | None, book: Book) -> Stands:
    """Return where height, heel, seat and wood left stand, by 'way_height' and so on; way is 'dropped' or 'valley'."""
    if mouth is None:
        return {}
    member, field = ('valley', '') if way == 'valley' else ('hip', 'dropped_')
    figures = {'height': mouth.height_above_plate, 'heel': mouth.heel, 'seat': mouth.seat}
    found = {
        f'{way}_{name}': book.stands((f'{way}_{name}',)) or _in_seats(member, field + name, figure, book)
        for name, figure in figures.items()
    }
    found[f'{way}_mouth'] = tuple(one for some in found.values() for one in some)
    found[f'{way}_left'] = book.stands((f'{way}_left',))
    if way == 'valley':
        found['valley_out'] = book.stands(('valley_out',)) or _in_seats(
            member, 'heel_out', mouth.heel_back, book
        )
    return found


def _in_seats(member: str, column: str, figure: Figure | Why | None, book: Book) -> Sources:
    """Return where a figure stands in the table of hips' or valleys' bird's mouths of the book's own stock."""
    settings = book.settings
    own = settings.valleys if member == 'valley' else settings.hips
    table = key_of(member, settings.rafters, own)
    return book.in_table(table, book.pitch, column, figure) if isinstance(figure, Figure) else ()
