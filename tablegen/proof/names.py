"""The printed heads and labels by which figures are found; a room that knows the words gives them."""

from __future__ import annotations

from collections.abc import Mapping

from msgspec import Struct


class Rows(Struct, frozen=True):
    """Rows under a title beside the lengths of an opening."""

    title: str
    """'' for rows that have none."""
    heads: tuple[str, ...]
    """One a column, '' for a single column without a head."""
    rows: tuple[tuple[str, tuple[str, ...]], ...]
    """Label, and the name of the figure under each head, '' for none."""
    second: str = ''
    """What begins the line that has the lower half of the heads, where they have two lines."""


class Side(Struct, frozen=True):
    """One page of an opening."""

    title: str
    lengths: tuple[tuple[str, str], ...]
    """Head of each column of lengths and the name of its figures."""
    body: str
    """What is said after the figure of the arm that lies level, where a step is a foot of run."""
    rows: tuple[Rows, ...]


class Glance(Struct, frozen=True):
    """A page with a row for each pitch."""

    title: str
    columns: tuple[tuple[str, str], ...]
    """Head, its two lines with a word space between, and the name of the figure."""
    rises: tuple[int, ...] = ()
    """Whole rises that have a row each; none where a book's pitches have."""


class Member(Struct, frozen=True):
    """A page of a pitch by member."""

    title: str
    name: str
    """What the names of how its square is held begin with."""
    held: str
    held_whole: str
    """With {body} and {tongue}; where a step is a foot of run."""
    halved: str
    divided: str
    """With {step}, and {number} of how many steps make one."""
    rows: tuple[Rows, ...]


class RunTable(Struct, frozen=True):
    """A pitch's table by feet and inches."""

    kind: str
    """What its lengths are of: 'common', 'hip', 'rise'."""
    left: str
    """Title of a left page."""
    right: str
    """Title of a right page, with {value}."""
    value: str
    """Name of the figure in it."""


class Listed(Struct, frozen=True):
    """Columns of figures, a row a run or a jack."""

    titles: tuple[str, ...]
    """Of a list of runs, and of small runs to add."""
    corner: str
    """Head of the rows' names."""
    columns: tuple[tuple[str, str], ...]
    """Head, and what its lengths are of."""


class Sheet(Struct, frozen=True):
    """A reference table."""

    key: str
    """What it is called, whatever it is of."""
    group: str
    title: str
    part: str
    """Title of a part of it, with {place} and {count}."""
    corner: str
    """Head of the rows' names."""
    span: str
    """What stands over all heads, '' for nothing."""
    columns: tuple[tuple[str, str], ...]
    """Head, and what its figures are of, whatever number or size the head says."""
    rows: tuple[str, ...]
    """Names of its rows; none where they are a book's pitches."""


class TableNames(Struct, frozen=True):
    """All of the tables."""

    inches: str
    """A number of inches as a head, with {number}."""
    members: tuple[Member, ...]
    """Pages of an opening by member, left and right."""
    run_tables: tuple[RunTable, ...]
    small: tuple[str, str]
    """What begins a line of small runs below a table, and the line of what they add."""
    run_list: Listed
    jacks: Listed
    sheets: tuple[Sheet, ...]


class Sentence(Struct, frozen=True):
    """A sentence of a worked example, with what it and the figures beside it tell."""

    words: str
    """With {places}."""
    figures: tuple[str, ...] = ()
    """Names of the figures at its right, one a column."""
    places: tuple[tuple[str, str], ...] = ()
    """Names of what stands in its places, where these are not the places' own."""
    sets: str = ''
    """How the member is framed that it is said of, '' where it does not tell."""


class Example(Struct, frozen=True):
    """What stands on the pages of one kind of member."""

    kind: str
    titles: tuple[str, ...]
    """Of its pages, with {mark}; the first ones begin it anew."""
    sentences: tuple[Sentence, ...]
    marks: tuple[tuple[str, tuple[str, str]], ...]
    """What its marks are called, and where each is: at which end or line, and where across the board."""
    heads: tuple[tuple[str, str], ...] = ()
    """Of its table's columns, and what each is of."""


class Citing(Struct, frozen=True):
    """How a place in the book is said."""

    page: str
    """With {page}."""
    pages: str
    """With {page} and {other}."""
    short: str
    """What begins a place below a figure."""
    row: str
    rows: str
    under: str
    """What follows is the rows or the columns."""
    both: str
    """What stands between the last two of several."""
    quotes: str
    """The marks round a name."""
    units: Mapping[str, str]
    """From what stands after the number of a row of lengths to what a run has there."""
    alike: Mapping[str, str]
    """From what a row is called to what it is cited by, where that is another."""
    added: str
    """What stands before a small run below a table."""
    small: str
    """What the row of these is called."""
    jack: str
    """What stands before the number of a jack's row."""
    jacks: str
    """What follows the spacing of a jack's figures, which it names."""


class ExampleNames(Struct, frozen=True):
    """All of the worked examples."""

    kinds: tuple[Example, ...]
    citing: Citing
    sum_off: str
    """What follows what is read and added, with {total} and {direct}, where the sum is a part off."""
    ways: tuple[str, str]
    """How it is told by how much a sum is too long or too short, with {part}."""
    blocks: tuple[str, ...]
    """What lengths of an opening are called by their blocks, and the drawing."""
    care: str
    """What begins cautions."""
    drawn: tuple[tuple[str, str], ...]
    """Labels of the drawn rafter, with {figure}, and the names of their figures."""
    arms: tuple[tuple[str, str], ...]
    """The same of the drawn square, whose figures stand beside them."""


Where = tuple[int, tuple[str, ...], str]
"""A side of an opening, the names of the figures that are read there, and the title of the page that has more of them, '' for none."""


class MarkingNames(Struct, frozen=True):
    """The marking sheets."""

    titles: tuple[str, str]
    lines: tuple[tuple[tuple[str, Where], ...], tuple[tuple[str, Where], ...]]
    """What each line is called, and where its figures are read; no figures of what is measured or chosen."""
    sides: tuple[str, str]
    """What begins a place on a left and on a right page."""
    counted: tuple[str, str]
    """The same where a pitch has several openings, with {opening} and {row}."""
    lengths: str
    by_run: str
    """What lengths are called on an opening, and in tables by the run."""
    drawing: str
    short: str
    """What begins the number of another page."""


class MemberListNames(Struct, frozen=True):
    """The pages of all members of a roof."""

    title: str
    asked: str
    """What stands before what was asked for."""
    kinds: Mapping[str, str]
    """From what members are called to what they are."""
    marks: Mapping[str, tuple[str, str]]
    """From what marks are called to the end or line that each is of and where it is across the board."""
    number: str
    by_hand: str
    """Heads over how many there are of a mark: of both hands, left and right."""
    hands: tuple[str, str]
    cut: str
    """With {plumb}, {level} and {square}; the next ones with {end}, {top}, {held}, {side} and {blade}, and {seat}, {heel} and {height}."""
    cheek: str
    mouth: str
    ends: tuple[str, str]
    """The upper and the lower end."""
    boards: str
    level_ends: str
    studs: str
    """Titles of what is not listed by kind."""
    heads: Mapping[str, str]
    """Of its columns, by what they are."""
    levels: Mapping[str, str]
    level_cuts: Mapping[str, str]
    """From what level boards, and ends of theirs, are called to what they are."""
    both: str
    both_told: str
    """Two in a row, with {first} and {last}."""


class SaidPage(Struct, frozen=True):
    """A page that says a few figures."""

    kind: str
    title: str
    sentences: tuple[Sentence, ...]
    """Those that say how they are framed by one word are alternatives."""
    rows: tuple[str, ...]
    """Names of its rows; none where they are not known before."""
    labels: tuple[str, ...] = ()
    """What is said in its rows."""
    columns: tuple[tuple[str, str], ...] = ()
    """What lengths are called, and what they are of."""
    drawn: tuple[tuple[str, tuple[str, ...]], ...] = ()
    """Labels of its drawing, with {figure}, and the names of their figures from left to right."""


class Names(Struct, frozen=True):
    """All of them."""

    foot: str
    inch: str
    parts: str
    exact_foot: str
    body: str
    tongue: str
    """What is said after the figures of a square's arms, where a step is less than a foot of run, or any."""
    step: str
    """With {run} for the run of a step that is not a foot."""
    sides: tuple[Side, Side]
    """Left and right page of an opening."""
    glances: tuple[Glance, ...]
    tables: TableNames
    examples: ExampleNames
    said: tuple[SaidPage, ...]
    marking: MarkingNames
    members: MemberListNames


class SheetNames(Struct, frozen=True):
    """What stands in the margin of a sheet."""

    section: str
    """With {section} and {sections}."""
    sheet: str
    """With {sheet} and {sheets}."""
    front: str
    back: str
    lower_blank: str
    between: str
