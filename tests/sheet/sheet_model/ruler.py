"""Lengths as a sheet prints them, and what such a text can stand for.

SPDX-License-Identifier: MIT
"""
from __future__ import annotations

import re
from fractions import Fraction
from math import ceil, floor

INCH, MM, YARD = 8128, 320, 36 * 8128
PARTS = r"(?:2|4|8|16|32|64)"
NUMBER = rf"(?:\d+ \d+/{PARTS}|\d+/{PARTS}|\d+(?:\.\d+)?)"
UNIT = r"(?:in|cm|mm|yd|m)\b"
LENGTH = rf"(?:about )?{NUMBER} {UNIT}"
SIZE = rf"(?:about )?{NUMBER} {UNIT} x {NUMBER} {UNIT}"
UNITS = {"in": INCH, "cm": 10 * MM, "mm": MM, "yd": YARD, "m": 1000 * MM}
NEAR, UP, DOWN = "near", "up", "down"


def whole(value: Fraction, way: str) -> int:
    if way == UP:
        return ceil(value)
    return floor(value) if way == DOWN else floor(value + Fraction(1, 2))


def mixed(value: Fraction) -> str:
    """2 1/2, 3/8, 4."""
    count, part = divmod(value, 1)
    words = [str(count)] if count or not part else []
    return " ".join(words + ([f"{part.numerator}/{part.denominator}"] if part else []))


def decimal(value: Fraction, places: int) -> str:
    text = f"{value.numerator * 10**places // value.denominator}".rjust(places + 1, "0")
    text = f"{text[:-places]}.{text[-places:]}" if places else text
    return text.rstrip("0").rstrip(".") if "." in text else text


def value_of(text: str) -> Fraction:
    """The ticks of one length in print."""
    number, unit = re.fullmatch(rf"(?:about )?({NUMBER}) ({UNIT})", text).groups()  # type: ignore[union-attr]
    return sum((Fraction(part) for part in number.split()), Fraction(0)) * UNITS[unit]


def sides_of(text: str) -> "tuple[Fraction, Fraction]":
    wide, high = text.removeprefix("about ").split(" x ")
    return value_of(wide), value_of(high)


class Ruler:
    """Prints lengths in the units of a pattern."""

    def __init__(self, units: str, sold_by: str, step: Fraction) -> None:
        self.units, self.sold_by, self.step = units, sold_by, step
        self.usual, self.finer = {"in": (Fraction(INCH, 8), Fraction(INCH, 16)), "cm": (Fraction(MM), Fraction(MM, 10)),
                                  "mm": (Fraction(MM), Fraction(MM, 10))}[units]

    def on(self, grid: Fraction, length: Fraction, way: str) -> str:
        value = whole(length / grid, way) * grid
        if self.units == "in":
            return f"{mixed(value / INCH)} in"
        per = UNITS[self.units]
        return f"{decimal(value / per, {'cm': 2, 'mm': 1}[self.units])} {self.units}"

    def exact(self, length: Fraction) -> bool:
        fine = length % self.finer == 0 and (self.units == "in" or length <= 500 * MM)
        return length % self.usual == 0 or fine

    def plain(self, length: Fraction, way: str = NEAR) -> str:
        length = Fraction(length)
        return self.on(self.finer if self.exact(length) else self.usual, length, way)

    def measured(self, length: Fraction) -> str:
        return ("" if self.exact(Fraction(length)) else "about ") + self.plain(length)

    def fine(self, length: Fraction) -> str:
        """Something small: to 1/64 in, or to a hundredth of a millimetre."""
        grid = Fraction(INCH, 64) if self.units == "in" else Fraction(MM, 100)
        value = whole(Fraction(length) / grid, NEAR) * grid
        about = "" if value == length else "about "
        return f"{about}{mixed(value / INCH)} in" if self.units == "in" else f"{about}{decimal(value / MM, 2)} mm"

    def by(self, width: Fraction, height: Fraction) -> str:
        about = "" if self.exact(Fraction(width)) and self.exact(Fraction(height)) else "about "
        return f"{about}{self.plain(width)} x {self.plain(height)}"

    def at_least(self, length: Fraction) -> str:
        return self.plain(length, UP)

    def by_at_least(self, width: Fraction, height: Fraction) -> str:
        return f"{self.at_least(width)} x {self.at_least(height)}"

    def at_most(self, length: Fraction) -> str:
        return self.plain(length, DOWN)

    def buy(self, length: Fraction) -> str:
        bought = ceil(Fraction(length) / self.step) * self.step
        if self.sold_by == "metre":
            return f"{decimal(Fraction(ceil(bought / (10 * MM)), 100), 2)} m"
        return f"{mixed(Fraction(ceil(bought / Fraction(YARD, 8)), 8))} yd"

    def seams(self, length: Fraction) -> str:
        """In whole yards or metres."""
        if self.sold_by == "metre":
            return f"{ceil(length / (1000 * MM))} m"
        return f"{ceil(length / YARD)} yd"

    def nothing(self, length: Fraction) -> bool:
        return length < (Fraction(INCH, 8) if self.units == "in" else MM)

    def little(self, length: Fraction) -> bool:
        return length < (INCH if self.units == "in" else 25 * MM)
