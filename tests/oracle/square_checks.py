"""Whether a square is square, and what steps set to a tape's marks add up to."""

from fifty_digits import mp, mpf

BODY = 24
TONGUE = 16


def turned_over(gap):
    """Return the angle by which a square is out, whose tongue's two lines, turned over, part so far at their ends."""
    return mp.asin(mpf(gap) / 2 / TONGUE)  # the true line lies half way between the two


def out_over(angle, long):
    """From the end of a leg so long, laid out with that square, to the true line, square to it."""
    return mpf(long) * mp.sin(angle)


def mark_to_mark(body, tongue):
    """From a mark on the body to one on the tongue, straight, when the arms are square."""
    return mp.sqrt(mpf(body) ** 2 + mpf(tongue) ** 2)


def opened(body, tongue, excess):
    """Return the angle over 90 degrees between the arms whose marks measure so much more than they should."""
    measured = mark_to_mark(body, tongue) + mpf(excess)
    cosine = (mpf(body) ** 2 + mpf(tongue) ** 2 - measured**2) / (2 * mpf(body) * tongue)
    return mp.acos(cosine) - mp.pi / 2


def drift(true_step, set_step, steps):
    """Where the last of some steps falls less where it should: above 0 too long."""
    return steps * (mpf(set_step) - true_step)
