# SPDX-License-Identifier: MIT
"""Ranges, refusals and rounding, shared by the whole model."""

from fractions import Fraction
from math import isqrt

INT64_MAX = 2**63 - 1
LENGTH_MAX = 2**62 - 1
SIZE_MAX = 2**30
COUNT_MAX = 2**31 - 1
SEAM_MAX = SIZE_MAX // 8
PPM = 10**6

UP, DOWN, NEAREST = 1, 2, 3

WARN_NO_SLACK = 1 << 0
WARN_MIXED_WASH = 1 << 1
WARN_PRECUT_WASHED = 1 << 2
WARN_BINDING_UNEVEN = 1 << 4
WARN_DIAGONAL_STRETCH = 1 << 5
WARN_NEST_CONFLICT = 1 << 6
WARN_SET_REPEATS = 1 << 7
WARN_SMALL_QUILT = 1 << 8
WARN_BACK_TOO_NARROW = 1 << 9
WARN_MIXED_EDGES = 1 << 10
WARN_MIXED_WIDTHS = 1 << 11


class Refused(Exception):
    """The request must fail, with any one of these statuses (a request may be wrong in several ways at once)."""

    def __init__(self, *statuses):
        super().__init__(*statuses)
        self.statuses = frozenset(statuses)


class Wants:
    """Collects everything that is wrong with a request."""

    def __init__(self):
        self.reasons = set()

    def that(self, holds, status):
        if not holds:
            self.reasons.add(status)

    def between(self, value, least, most):
        self.that(least <= value <= most, "ERR_RANGE")

    def size(self, *values):
        for value in values:
            self.between(value, 0, SIZE_MAX)

    def some_size(self, *values):
        for value in values:
            self.between(value, 1, SIZE_MAX)

    def count(self, *values):
        for value in values:
            self.between(value, 0, COUNT_MAX)

    def some_count(self, *values):
        for value in values:
            self.between(value, 1, COUNT_MAX)

    def seam(self, *values):
        for value in values:
            self.between(value, 0, SEAM_MAX)

    def choice(self, value, first, last):
        self.that(first <= value <= last, "ERR_CHOICE")

    def rounding(self, rounding):
        self.between(rounding.grid, 1, SIZE_MAX)
        self.between(rounding.tolerance, 0, max(rounding.grid - 1, 0))
        self.choice(rounding.direction, UP, NEAREST)

    def done(self):
        if self.reasons:
            raise Refused(*self.reasons)


def largest(fits, most):
    """The largest k in 0 .. most that fits; what fits up to some k fits below it, and 0 always fits."""
    low, high = 0, 1
    while high <= most and fits(high):
        low, high = high, high * 2
    high = min(high, most + 1)
    while high - low > 1:
        middle = (low + high) // 2
        if fits(middle):
            low = middle
        else:
            high = middle
    return low


def least(fits, most):
    """The least k in 0 .. most that fits (what fits from some k on fits above it), or None."""
    if not fits(most):
        return None
    return most if most == 0 else (0 if fits(0) else largest(lambda k: not fits(k), most) + 1)


def up(exact, grid=1):
    return -(-exact // grid) * grid


def down(exact, grid=1):
    return exact // grid * grid


def nearest(exact, grid=1):
    return (Fraction(exact) / grid + Fraction(1, 2)).__floor__() * grid


def grid_point(exact, rounding):
    if rounding.direction == UP:
        return up(Fraction(exact) - rounding.tolerance, rounding.grid)
    if rounding.direction == DOWN:
        return down(Fraction(exact) + rounding.tolerance, rounding.grid)
    return nearest(exact, rounding.grid)


def rounded(exact, rounding):
    """A rational size brought to the grid."""
    exact = Fraction(exact)
    value = grid_point(exact, rounding)
    if abs(value) > LENGTH_MAX:
        raise Refused("ERR_OVERFLOW")
    return {
        "value": value,
        "error": (value - exact).__floor__(),
        "exact": int(value == exact),
        "on_tick": int(exact.denominator == 1),
    }


FINE = 10**60


def root_between(square):
    """Rationals on both sides of a whole number's square root; the same twice when it is rational."""
    root = isqrt(square)
    if root * root == square:
        return Fraction(root), Fraction(root)
    root = isqrt(square * FINE * FINE)
    return Fraction(root, FINE), Fraction(root + 1, FINE)


def rounded_root(square, divisor, rounding):
    """sqrt(square) / divisor brought to the grid. The enclosure is so narrow that both ends must agree."""
    low, high = (end / divisor for end in root_between(square))
    at_low, at_high = rounded(low, rounding), rounded(high, rounding)
    if low == high:
        return at_low
    assert at_low["value"] == at_high["value"]
    error = (at_low["value"] - high).__floor__()
    assert error == (at_low["value"] - low).__floor__()
    return {"value": at_low["value"], "error": error, "exact": 0, "on_tick": 0}


def root_up(square):
    root = isqrt(square)
    return root if root * root == square else root + 1


def share(part, whole):
    """Parts per million, nearest."""
    return nearest(Fraction(part * PPM, whole))
