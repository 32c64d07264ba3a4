"""What the bench tells: each number under its name."""

from __future__ import annotations

from bench.bench import Taken, middle, told


def test_medians_are_of_what_they_are_called():
    took = middle([Taken(1.0, 20.0, 300.0), Taken(3.0, 10.0, 100.0), Taken(2.0, 30.0, 200.0)])
    other = Taken(4.0, 5.0, 1.0)

    assert (took.wall_s, took.processor_s, took.largest_mb) == (2.0, 20.0, 200.0)
    assert told(('whole',), 40, took, other).split() == [
        'whole',
        '40',
        '2.00',
        '20.00',
        '200',
        '2.0',
        '0.50',
        '4.00',
    ]
