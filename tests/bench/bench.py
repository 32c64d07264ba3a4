"""What making a book takes, as whole processes: a table by edition, and by half of its pitches, to see that time grows with pages.

    python tests/bench/bench.py
    python tests/bench/bench.py --times 5 --other COMMAND …

`--other` is any command, such as another typesetter that sets a file of the same pages: times are then also told as
multiples of its. It is no part of the tests; run it where nothing else runs.
"""

from __future__ import annotations

import argparse
import os
import sys
import tempfile
from pathlib import Path
from statistics import median
from time import perf_counter

from msgspec import Struct
from pypdf import PdfReader

TOP = Path(__file__).resolve().parents[2]
MAKE = [sys.executable, '-m', 'layouts.command', 'make']
EDITIONS = ('compact', 'complete')
PITCHES = {'half': '1 to 12', 'whole': '1 to 24'}
KIB = 1 if sys.platform == 'darwin' else 1024
"""Bytes in what the system counts the largest process in."""


class Taken(Struct, frozen=True):
    """What a command took."""

    wall_s: float
    processor_s: float
    """Of all its processes."""
    largest_mb: float
    """Of its processes."""


def taken(command: list[str], folder: Path) -> Taken:
    """Run a command and tell what it took; what it keeps lies in a folder."""
    began = perf_counter()
    process = os.posix_spawnp(
        command[0],
        command,
        {**os.environ, 'XDG_CACHE_HOME': str(folder), 'PYTHONPATH': str(TOP)},
        file_actions=[(os.POSIX_SPAWN_OPEN, file, os.devnull, os.O_WRONLY, 0) for file in (1, 2)],
    )
    _process, status, used = os.wait4(process, 0)
    if status:
        raise SystemExit(f'{" ".join(command)}: exit status {os.waitstatus_to_exitcode(status)}')
    return Taken(perf_counter() - began, used.ru_utime + used.ru_stime, used.ru_maxrss * KIB / 1e6)


def middle(runs: list[Taken]) -> Taken:
    """Return the median of each."""
    return Taken(*(median(getattr(one, name) for one in runs) for name in Taken.__struct_fields__))


def told(names: tuple[str, ...], pages: int, took: Taken, other: Taken | None) -> str:
    """Return a line of the table."""
    line = f'{" ".join(names):28} {pages:5} {took.wall_s:7.2f} {took.processor_s:9.2f} {took.largest_mb:7.0f} {pages / took.processor_s:8.1f}'
    return (
        f'{line} {took.wall_s / other.wall_s:7.2f} {took.processor_s / other.processor_s:7.2f}'
        if other
        else line
    )


def main() -> None:
    """Print the table."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument('--times', type=int, default=3, help='how often each is run; medians are told')
    parser.add_argument('--other', nargs=argparse.REMAINDER, help='a command to compare with')
    args = parser.parse_args()
    head = f'{"":28} {"pages":>5} {"wall s":>7} {"processor":>9} {"most MB":>7} {"pages/s":>8}'
    print(head + (f' {"× wall":>7} {"× proc.":>7}' if args.other else ''))  # noqa: T201
    with tempfile.TemporaryDirectory() as name:
        folder = Path(name)
        other = middle([taken(args.other, folder) for _ in range(args.times)]) if args.other else None
        for edition in EDITIONS:
            for length, pitches in PITCHES.items():
                command = [*MAKE, '--edition', edition, '--pitches', pitches, '--out', str(folder / 'book')]
                proven = [taken([*command, '--fresh'], folder) for _ in range(args.times)]
                command.append('--no-proof')
                fresh = middle([taken([*command, '--fresh'], folder) for _ in range(args.times)])
                pages = len(PdfReader(folder / 'book/booklet.pdf').pages)
                print(told((edition, length), pages, fresh, other))  # noqa: T201
                print(told((edition, length, 'proven'), pages, middle(proven), other))  # noqa: T201
            taken(command, folder)
            again = [taken([*command, '--owner', f'Owner {number}'], folder) for number in range(args.times)]
            print(told((edition, 'for another owner'), pages, middle(again), other))  # noqa: T201


if __name__ == '__main__':
    main()
