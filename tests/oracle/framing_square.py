"""A framing square on a board: what its arms read at the edge when one of them lies along a line to be marked."""

from fifty_digits import mp, mpf

FULL_TONGUE = 16
"""The tongue of a framing square ends there, in."""


def figure_against_12(from_square):
    """Held with 12 of the body at the edge: the tongue's figure there that lays the body at an angle from square across.

    The body leaves the edge at its 12 and ends at the square's corner; the tongue comes back to the edge, square to it.
    """
    from_edge = mp.pi / 2 - from_square
    away = 12 * mp.sin(from_edge)  # of the square's corner from the edge
    return away / mp.cos(from_edge)


def arms(run, up):
    """Held with the body level and the tongue plumb: both arms' figures at the edge for so much up in so much run.

    Where the tongue is too short both are halved.
    """
    halved = 2 if up > FULL_TONGUE else 1
    return mpf(run) / halved, mpf(up) / halved


def fitted(body, tongue):
    """Return two figures for one line, halved until the tongue is long enough."""
    while tongue > FULL_TONGUE:
        body, tongue = mpf(body) / 2, mpf(tongue) / 2
    return mpf(body), mpf(tongue)
