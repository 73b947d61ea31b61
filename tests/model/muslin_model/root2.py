# SPDX-License-Identifier: MIT
"""Numbers a + b sqrt 2 with rational a and b, exact: what lengths on point are; the same with sqrt 3."""

from fractions import Fraction
from math import isqrt

from .base import grid_point

FINE = 10**80


class Root2:
    """a + b sqrt 2"""

    UNDER = 2

    def __init__(self, a, b=0):
        self.a, self.b = Fraction(a), Fraction(b)

    @classmethod
    def of(cls, value):
        return value if isinstance(value, Root2) else cls(value)

    def __add__(self, other):
        other = self.of(other)
        return type(self)(self.a + other.a, self.b + other.b)

    def __sub__(self, other):
        other = self.of(other)
        return type(self)(self.a - other.a, self.b - other.b)

    def __mul__(self, other):
        other = self.of(other)
        return type(self)(self.a * other.a + self.UNDER * self.b * other.b, self.a * other.b + self.b * other.a)

    def __truediv__(self, other):
        other = self.of(other)
        norm = other.a * other.a - self.UNDER * other.b * other.b
        return self * type(self)(other.a / norm, -other.b / norm)

    __radd__ = __add__
    __rmul__ = __mul__

    def __rsub__(self, other):
        return self.of(other) - self

    def sign(self):
        """Of two parts that pull apart, the larger square wins."""
        if self.a >= 0 and self.b >= 0 or self.a <= 0 and self.b <= 0:
            return (self.a + self.b > 0) - (self.a + self.b < 0)
        wins = self.a * self.a > self.UNDER * self.b * self.b
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
        root = Fraction(isqrt(self.UNDER * FINE * FINE), FINE)
        low, high = self.a + self.b * root, self.a + self.b * (root + Fraction(1, FINE))
        return min(low, high), max(low, high)

    def floor(self):
        low, high = self.ends()
        assert low.__floor__() == high.__floor__() or self.b == 0
        return low.__floor__()

    def ceiling(self):
        return -(0 - self).floor()

    def rounded(self, rounding):
        low, high = self.ends()
        value = grid_point(low, rounding)
        assert value == grid_point(high, rounding)
        whole = self.b == 0 and self.a.denominator == 1
        return {"value": value, "error": value - self.ceiling(), "exact": int(whole and value == self.a),
                "on_tick": int(whole)}


class Root3(Root2):
    """a + b sqrt 3"""

    UNDER = 3


ROOT = Root2(0, 1)
