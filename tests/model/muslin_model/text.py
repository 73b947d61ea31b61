# SPDX-License-Identifier: MIT
"""Lengths as people write them: the grammar of length.h as one regular expression, and the way back."""

import re
from fractions import Fraction
from math import lcm

from .base import DOWN, LENGTH_MAX, NEAREST, UP, Refused, Wants, grid_point, nearest

INCH, FOOT, YARD, MM, CM, M = 1, 2, 3, 4, 5, 6
TICKS = {INCH: 8128, FOOT: 12 * 8128, YARD: 36 * 8128, MM: 320, CM: 3200, M: 320000}

VULGAR = {
    "\u00bc": (1, 4), "\u00bd": (1, 2), "\u00be": (3, 4), "\u2150": (1, 7), "\u2151": (1, 9), "\u2152": (1, 10),
    "\u2153": (1, 3), "\u2154": (2, 3), "\u2155": (1, 5), "\u2156": (2, 5), "\u2157": (3, 5), "\u2158": (4, 5),
    "\u2159": (1, 6), "\u215a": (5, 6), "\u215b": (1, 8), "\u215c": (3, 8), "\u215d": (5, 8), "\u215e": (7, 8),
    "\u2189": (0, 3),
}
UNITS = {
    INCH: ["in", "in.", "inch", "inches", '"', "\u2033", "\u201d", "\u201c",
           "''", "\u2032\u2032", "\u2019\u2019", "\u2018\u2018"],
    FOOT: ["ft", "ft.", "foot", "feet", "'", "\u2032", "\u2019", "\u2018"],
    YARD: ["yd", "yd.", "yds", "yds.", "yard", "yards"],
    MM: ["mm", "millimetre", "millimetres", "millimeter", "millimeters"],
    CM: ["cm", "centimetre", "centimetres", "centimeter", "centimeters"],
    M: ["m", "metre", "metres", "meter", "meters"],
}
UNIT_OF = {word: unit for unit, words in UNITS.items() for word in words}

BLANK = "[ \\t\\n\\r\u00a0\u202f\u2009]"
SIGN = "(?P<sign>[+\u2212-]?)"
NUMBER = (f"(?:(?:(?P<whole>[0-9]+)(?:{BLANK}+|-))?(?P<above>[0-9]+)[/\u2044\u2215](?P<below>[0-9]+)"
          f"|(?:(?P<vulgar_whole>[0-9]+)(?:{BLANK}*|-))?(?P<vulgar>[{''.join(VULGAR)}])"
          "|(?P<before>[0-9]*)DECIMAL(?P<after>[0-9]+)"
          "|(?P<plain>[0-9]+))")
UNIT = ("(?P<unit>(?:(?i:in|ft|yds?)\\.|[A-Za-z]+(?![A-Za-z])|''|\u2032\u2032|\u2019\u2019|\u2018\u2018"
        "|[\"'\u2033\u201d\u201c\u2032\u2019\u2018])?)")


def number(digits):
    if len((digits or "").lstrip("0")) > DIGITS_MAX:
        raise Refused("ERR_OVERFLOW")
    return int(digits or "0")


def value_of(match):
    if match["vulgar"]:
        return number(match["vulgar_whole"]) + Fraction(*VULGAR[match["vulgar"]])
    if match["above"]:
        whole, above, below = number(match["whole"]), number(match["above"]), number(match["below"])
        if below == 0:
            raise Refused("ERR_TEXT_ZERO_DENOMINATOR")
        return whole + Fraction(above, below)
    if match["after"]:
        after = match["after"].rstrip("0")
        if len(after) > DIGITS_MAX:
            raise Refused("ERR_OVERFLOW")
        return number(match["before"]) + Fraction(int(after or "0"), 10 ** len(after))
    return Fraction(number(match["plain"]))


DIGITS_MAX = 18
TEXT_STATUSES = ("ERR_TEXT_EMPTY", "ERR_TEXT_SYNTAX", "ERR_TEXT_TRAILING", "ERR_TEXT_UNIT", "ERR_TEXT_DECIMAL",
                 "ERR_TEXT_ZERO_DENOMINATOR", "ERR_TEXT_ENCODING", "ERR_OVERFLOW")


def in_ticks(match, unit, before):
    """One part in ticks; its fraction must have a common denominator with the parts before."""
    value = value_of(match) * TICKS[unit]
    if lcm(value.denominator, before.denominator) > LENGTH_MAX or (before + value).__floor__() > LENGTH_MAX:
        raise Refused("ERR_OVERFLOW")
    return value


def parse(data, default_unit=INCH, decimal_sign="."):
    """Value, exact, unit. A text outside the grammar is Refused with any of the text statuses: which one is best is
    for the unit tests to say."""
    try:
        text = data.decode("utf-8")
    except UnicodeDecodeError:
        raise Refused(*TEXT_STATUSES) from None
    if not text.strip(" \t\n\r\u00a0\u202f\u2009"):
        raise Refused("ERR_TEXT_EMPTY")
    sign = re.compile(f"{BLANK}*{SIGN}{BLANK}*").match(text)
    part = re.compile(f"{NUMBER}{BLANK}*{UNIT}{BLANK}*".replace("DECIMAL", re.escape(decimal_sign)))
    at, total, last_ticks, last_unit = sign.end(), Fraction(0), None, default_unit
    while at < len(text):
        match = part.match(text, at)
        if not match:
            raise Refused(*TEXT_STATUSES)
        unit = UNIT_OF.get(match["unit"].lower()) if match["unit"] else default_unit
        if unit is None or (not match["unit"] and match.end() < len(text)):
            raise Refused(*TEXT_STATUSES)
        if last_ticks is not None and TICKS[unit] >= last_ticks:
            raise Refused(*TEXT_STATUSES)
        total += in_ticks(match, unit, total)
        at, last_ticks, last_unit = match.end(), TICKS[unit], unit
    if last_ticks is None:
        raise Refused(*TEXT_STATUSES)
    total = -total if sign["sign"] in ("-", "\u2212") else total
    value = nearest(total)
    if abs(value) > LENGTH_MAX:
        raise Refused("ERR_OVERFLOW")
    return {"value": value, "exact": int(value == total), "unit": last_unit}


INCH_FRACTION, INCH_DECIMAL, YARD_FRACTION, STYLE_MM, STYLE_CM = 1, 2, 3, 4, 5
STYLE_UNIT = {INCH_FRACTION: INCH, INCH_DECIMAL: INCH, YARD_FRACTION: YARD, STYLE_MM: MM, STYLE_CM: CM}
WORD = {INCH: "in", YARD: "yd", MM: "mm", CM: "cm"}


class Grid:
    tolerance = 0

    def __init__(self, grid, direction):
        self.grid = grid
        self.direction = direction


def fraction_text(count, denominator, unicode):
    whole, above = divmod(count, denominator)
    part = Fraction(above, denominator)
    if part == 0:
        return str(whole)
    above, below = part.numerator, part.denominator
    signs = [sign for sign, pair in VULGAR.items() if pair == (above, below)]
    if unicode and signs:
        return f"{whole or ''}{signs[0]}"
    slash = "\u2044" if unicode else "/"
    return f"{whole} {above}{slash}{below}" if whole else f"{above}{slash}{below}"


def decimal_text(count, decimals, sign):
    whole, after = divmod(count, 10**decimals)
    digits = str(after).rjust(decimals, "0").rstrip("0") if decimals else ""
    return f"{whole}{sign}{digits}" if digits else str(whole)


def format_length(length, spec, unicode=False, bare=False):
    """Text and exact."""
    wants = Wants()
    wants.between(length, -LENGTH_MAX, LENGTH_MAX)
    wants.choice(spec.style, INCH_FRACTION, STYLE_CM)
    wants.between(spec.denominator, 1, 64)
    wants.between(spec.decimals, 0, 6)
    wants.that(spec.decimal_sign in (ord("."), ord(",")), "ERR_CHOICE")
    wants.choice(spec.direction, UP, NEAREST)
    wants.done()
    fraction = spec.style in (INCH_FRACTION, YARD_FRACTION)
    unit = STYLE_UNIT[spec.style]
    grid = Fraction(TICKS[unit], spec.denominator if fraction else 10**spec.decimals)
    shown = grid_point(Fraction(length), Grid(grid, spec.direction))
    count = abs(shown / grid)
    assert count.denominator == 1 and spec.direction in (UP, DOWN, NEAREST)
    number = (fraction_text(int(count), spec.denominator, unicode) if fraction
              else decimal_text(int(count), spec.decimals, chr(spec.decimal_sign)))
    minus = ("\u2212" if unicode else "-") if shown < 0 else ""
    return minus + number + ("" if bare else " " + WORD[unit]), int(shown == length)
