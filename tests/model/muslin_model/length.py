# SPDX-License-Identifier: MIT
"""Exact arithmetic and the irrational sizes."""

from fractions import Fraction

from .base import LENGTH_MAX, SIZE_MAX, Refused, Wants, rounded, rounded_root


def in_lengths(*values):
    wants = Wants()
    for value in values:
        wants.between(value, -LENGTH_MAX, LENGTH_MAX)
    wants.done()


def fitting(value):
    if abs(value) > LENGTH_MAX:
        raise Refused("ERR_OVERFLOW")
    return value


def add(a, b):
    in_lengths(a, b)
    return fitting(a + b)


def subtract(a, b):
    in_lengths(a, b)
    return fitting(a - b)


def multiply(a, factor):
    in_lengths(a)
    return fitting(a * factor)


def total(values):
    in_lengths(*values)
    return fitting(sum(values))


def dot(lengths, counts):
    in_lengths(*lengths)
    return fitting(sum(a * n for a, n in zip(lengths, counts)))


def divide(a, divisor, rounding):
    wants = Wants()
    wants.between(a, -LENGTH_MAX, LENGTH_MAX)
    wants.that(divisor != 0, "ERR_DIVIDE_BY_ZERO")
    wants.rounding(rounding)
    wants.done()
    return rounded(Fraction(a, divisor), rounding)


def scale(a, numerator, denominator, rounding):
    wants = Wants()
    wants.between(a, -LENGTH_MAX, LENGTH_MAX)
    wants.that(denominator != 0, "ERR_DIVIDE_BY_ZERO")
    wants.that(denominator >= 0, "ERR_RANGE")
    wants.rounding(rounding)
    wants.done()
    return rounded(Fraction(a * numerator, denominator), rounding)


def snap(a, rounding):
    return divide(a, 1, rounding)


def root(square_of, sides, divisor, rounding):
    """sqrt(square_of) / divisor, for sides in range."""
    wants = Wants()
    wants.size(*sides)
    wants.rounding(rounding)
    wants.done()
    return rounded_root(square_of, divisor, rounding)


def times_root2(a, rounding):
    return root(2 * a * a, [a], 1, rounding)


def over_root2(a, rounding):
    return root(2 * a * a, [a], 2, rounding)


def equilateral_height(a, rounding):
    return root(3 * a * a, [a], 2, rounding)


def equilateral_side(a, rounding):
    """2 a / sqrt 3 = sqrt(12 a a) / 3."""
    return root(12 * a * a, [a], 3, rounding)


def hypotenuse(a, b, rounding):
    return root(a * a + b * b, [a, b], 1, rounding)


def root_of_area(area, rounding):
    """An area is in doubled square ticks: sqrt(area / 2) = sqrt(2 area) / 2."""
    wants = Wants()
    wants.between(area, 0, 2 * SIZE_MAX * SIZE_MAX)
    wants.rounding(rounding)
    wants.done()
    return rounded_root(2 * area, 2, rounding)
