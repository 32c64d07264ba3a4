"""Columns of text line up."""

from __future__ import annotations

from layouts.told.columns import LEFT, MIXED, RIGHT, columns


def test_columns_line_up_under_their_headings():
    rows = [
        ('what', 'how long', 'n'),
        ('a', '53 11/16', '1'),
        ('another',),
        ('longer', '7/8', '22'),
        ('c', '2', '3'),
    ]
    assert columns(rows, (LEFT, MIXED, RIGHT)) == [
        'what      how long   n',
        '  a       53 11/16   1',
        'another',
        '  longer     7/8    22',
        '  c        2         3',
    ]


def test_feet_and_inches_line_up_at_the_inch():
    rows = [('x', ''), ('a', '4′ 5 11/16″'), ('b', '24′ 0″'), ('c', '7/8″')]
    assert columns(rows, (LEFT, MIXED)) == [
        'x',
        '  a   4′ 5 11/16″',
        '  b  24′ 0″',
        '  c        7/8″',
    ]


def test_words_among_mixed_numbers_stand_at_the_right():
    rows = [('x', ''), ('a', '3 1/2'), ('b', 'none'), ('c', '12')]
    assert columns(rows, (LEFT, MIXED)) == ['x', '  a   3 1/2', '  b    none', '  c  12']
