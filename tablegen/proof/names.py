"""The printed heads and labels by which figures are found; a room that knows the words gives them."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Rows:
    """Rows under a title beside the lengths of an opening."""

    title: str
    """'' for rows that have none."""
    heads: tuple[str, ...]
    """One a column, '' for a single column without a head."""
    rows: tuple[tuple[str, tuple[str, ...]], ...]
    """Label, and the name of the figure under each head, '' for none."""


@dataclass(frozen=True, slots=True)
class Side:
    """One page of an opening."""

    title: str
    lengths: tuple[tuple[str, str], ...]
    """Head of each column of lengths and the name of its figures."""
    body: str
    """What is said after the figure of the arm that lies level."""
    rows: tuple[Rows, ...]


@dataclass(frozen=True, slots=True)
class Glance:
    """A page with a row for each pitch."""

    title: str
    columns: tuple[tuple[str, str], ...]
    """Head, its two lines with a word space between, and the name of the figure."""


@dataclass(frozen=True, slots=True)
class Names:
    """All of them."""

    foot: str
    inch: str
    parts: str
    exact_foot: str
    tongue: str
    step: str
    """With {run} for the run of a step that is not a foot."""
    sides: tuple[Side, Side]
    """Left and right page of an opening."""
    glances: tuple[Glance, ...]
