# SPDX-License-Identifier: MIT
"""Numbers a + b sqrt 2 with rational a and b, exact: what lengths in a setting on point are."""

from fractions import Fraction
from math import isqrt

from .base import grid_point

FINE = 10**80
ROOT_LOW = Fraction(isqrt(2 * FINE * FINE), FINE)
ROOT_HIGH = ROOT_LOW + Fraction(1, FINE)


class Root2:
    """a + b sqrt 2"""

    def __init__(self, a, b=0):
        self.a, self.b = Fraction(a), Fraction(b)

    @staticmethod
    def of(value):
        return value if isinstance(value, Root2) else Root2(value)

    def __add__(self, other):
        other = Root2.of(other)
        return Root2(self.a + other.a, self.b + other.b)

    def __sub__(self, other):
        other = Root2.of(other)
        return Root2(self.a - other.a, self.b - other.b)

    def __mul__(self, other):
        other = Root2.of(other)
        return Root2(self.a * other.a + 2 * self.b * other.b, self.a * other.b + self.b * other.a)

    def __truediv__(self, other):
        other = Root2.of(other)
        norm = other.a * other.a - 2 * other.b * other.b
        return self * Root2(other.a / norm, -other.b / norm)

    __radd__ = __add__
    __rmul__ = __mul__

    def __rsub__(self, other):
        return Root2.of(other) - self

    def sign(self):
        """Of two parts that pull apart, the larger square wins."""
        if self.a >= 0 and self.b >= 0 or self.a <= 0 and self.b <= 0:
            return (self.a + self.b > 0) - (self.a + self.b < 0)
        wins = self.a * self.a > 2 * self.b * self.b
        pulls = self.a if wins else self.b
        return 1 if pulls > 0 else -1

    def __eq__(self, other):
        return (self - other).sign() == 0

    def __lt__(self, other):
        return (self - other).sign() < 0

    def __le__(self, other):
        return (self - other).sign() <= 0

    def __gt__(self, other):
        return (self - other).sign() > 0

    def __ge__(self, other):
        return (self - other).sign() >= 0

    __hash__ = None

    def ends(self):
        """Rationals on both sides."""
        low, high = self.a + self.b * ROOT_LOW, self.a + self.b * ROOT_HIGH
        return min(low, high), max(low, high)

    def floor(self):
        low, high = self.ends()
        assert low.__floor__() == high.__floor__() or self.b == 0
        return low.__floor__()

    def ceiling(self):
        return -(Root2(0) - self).floor()

    def rounded(self, rounding):
        low, high = self.ends()
        value = grid_point(low, rounding)
        assert value == grid_point(high, rounding)
        whole = self.b == 0 and self.a.denominator == 1
        return {"value": value, "error": value - self.ceiling(), "exact": int(whole and value == self.a),
                "on_tick": int(whole)}


ROOT = Root2(0, 1)
