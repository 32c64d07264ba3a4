"""A square's last digits: a column that is cut off throughout is a convention, a lone figure in it a misprint."""

from check_support import changed, square

from tablegen.checking.square_judging import Fit

ROUNDED_SQUARE = """rise,common,hip_valley,jack_16,jack_24,jack_cheek,hip_cheek
7,13.89,18.36,18.52,27.78,,
9,15,19.21,20,30,,
10,15.62,19.70,20.83,31.24,,
"""
"""By hand: √337 = 18.3576, √369 = 19.2094, √388 = 19.6977: each rounds up, and would be a hundredth less cut off."""


def test_a_lone_figure_that_is_cut_off_is_a_misprint():
    whole = square(ROUNDED_SQUARE)
    lone = square(changed(ROUNDED_SQUARE, a=('19.21', '19.20')))

    assert (whole.misprints, whole.verdict) == ((), 'right')
    assert [(one.rise, one.column, one.verdict) for one in lone.misprints] == [(9, 'hip_valley', Fit.CUT_OFF)]
    assert lone.verdict == 'wrong'


def test_a_column_that_is_cut_off_is_a_convention_and_a_lone_rounded_figure_in_it_is_none():
    cut = square(changed(ROUNDED_SQUARE, a=('18.36', '18.35'), b=('19.21', '19.20'), c=('19.70', '19.69')))
    lone = square(changed(ROUNDED_SQUARE, a=('18.36', '18.35'), b=('19.21', '19.20')))

    assert (cut.misprints, cut.verdict, cut.counts[Fit.CUT_OFF]) == ((), 'right', 3)
    assert [(one.rise, one.verdict) for one in lone.misprints] == [(10, Fit.RIGHT)]


def test_as_many_cut_off_as_rounded_tell_nothing():
    drawn = square(changed(ROUNDED_SQUARE, a=('18.36,', ','), b=('19.21', '19.20')))

    assert (drawn.misprints, drawn.verdict) == ((), 'right')
