"""Errors: one line naming place, problem, what is allowed, next step, whatever was written."""

import pickle

import pytest

from layouts.words.error import error_line, error_lines
from layouts.words.say import said
from tablegen.errors import BookError, SettingsFaults, meant
from tablegen.messages import message


@pytest.mark.parametrize(
    ('parts', 'expected'),
    [
        (('paper', "'A5' is unknown"), "paper: 'A5' is unknown"),
        (('paper', 'no', 'letter, a4'), 'paper: no; allowed: letter, a4'),
        (('paper', 'no', 'letter, a4', 'choose'), 'paper: no; allowed: letter, a4; next: choose'),
        (('paper', 'no', '', 'choose'), 'paper: no; next: choose'),
        (('', 'no'), 'no'),
    ],
)
def test_one_line(parts, expected):
    assert error_line(BookError(*parts)) == expected
    assert error_lines(BookError(*parts)) == [expected]


def test_without_a_catalogue_an_error_gives_names_and_values():
    fault = BookError('RUN', message('reader.below_zero', written='-4'), ('a', message('reader.a_length')))

    assert str(fault) == 'RUN; reader.below_zero(written=-4); a, reader.a_length'
    assert str(fault.at('seat')) == 'seat; reader.below_zero(written=-4); a, reader.a_length'


@pytest.mark.parametrize('stray', ['\n', '\r', '\x1b', '\u2028', '\x00'])
def test_what_cannot_stand_on_a_line_is_escaped(stray):
    line = error_line(BookError('run', f"'4{stray}ft' is no length"))

    assert line.isprintable()
    assert line.startswith("run: '4\\")


def test_a_long_value_keeps_its_two_ends():
    line = error_line(BookError('run', f"'{'9' * 5000}' is no length"))

    assert line.startswith("run: '999")
    assert line.endswith("999' is no length")
    assert len(line) < 250


def test_faults_are_told_one_a_line_after_the_file():
    faults = SettingsFaults('book.toml', [BookError('a', 'x'), BookError('b', 'y')])

    assert error_lines(faults) == ['book.toml: a: x', 'book.toml: b: y']
    assert [fault.place for fault in faults.each()] == ['a', 'b']


def test_an_error_crosses_from_one_process_to_another():
    faults = SettingsFaults('book.toml', [BookError('a', 'x', 'y', 'z')])

    assert error_lines(pickle.loads(pickle.dumps(faults))) == error_lines(faults)


@pytest.mark.parametrize(
    ('word', 'advice'),
    [
        ('titel', 'did you mean title?'),
        ('own', 'did you mean owner?'),
        ('runs', 'see the list'),
        ('zebra', 'see the list'),
        ('', 'see the list'),
    ],
)
def test_a_misspelt_word_is_put_right_where_one_is_near(word, advice):
    assert said(meant(word, ['title', 'owner', 'runs.from', 'runs.to'], 'see the list')) == advice
