# SPDX-License-Identifier: MIT
"""Length, the number that everything here is made of."""
import ctypes
from dataclasses import dataclass
from fractions import Fraction
from typing import Optional, Union, overload

from . import _api
from ._library import library
from ._problem import call, call_telling
from ._values import new, put, put_sign, utf8, whole
from .constants import FORMAT_BARE, FORMAT_UNICODE, TICKS_PER_INCH, TICKS_PER_MM, Direction, Style, LengthUnit


class InexactError(ValueError):
    """The exact answer is no whole number of ticks, and no rounding was asked for."""


@dataclass(frozen=True)
class Formatted:
    """A length as text, and whether the text says exactly that length."""

    text: str
    exact: bool


def _in_ticks(exact: Fraction, rounding: Optional[Direction], said: str) -> int:
    """A number of ticks, rounded only when a direction is given."""
    if exact.denominator == 1:
        return exact.numerator
    if rounding is None:
        raise InexactError(f"{said} is no whole number of ticks (1/{TICKS_PER_INCH} in): say how to round")
    if rounding == Direction.UP:
        return -(-exact.numerator // exact.denominator)
    if rounding == Direction.DOWN:
        return exact.numerator // exact.denominator
    if rounding == Direction.NEAREST:
        return (2 * exact.numerator + exact.denominator) // (2 * exact.denominator)
    raise ValueError(f"{rounding!r} is no direction of rounding")


def _unit_ticks(unit: LengthUnit) -> int:
    ticks = int(library.muslin_length_unit_ticks(whole(unit, "unit", 32)))
    if ticks == 0:
        raise ValueError(f"{unit!r} is no unit of length")
    return ticks


@dataclass(frozen=True, order=True, repr=False)
class Length:
    """An exact length in ticks of 1/8128 inch, so that 1/64 inch and 1/320 mm are whole numbers.

    Lengths add, subtract, compare and hash; they multiply by and divide by whole numbers and fractions as long as the
    answer is exact, and otherwise raise InexactError (use times() with a rounding). A length over a length is a
    Fraction. Floats are refused everywhere but in from_float(), which wants to be told how to round.
    """

    ticks: int

    def __post_init__(self) -> None:
        object.__setattr__(self, "ticks", whole(self.ticks, "ticks"))

    # ---- from elsewhere ----

    @classmethod
    def parse(cls, text: str, *, unit: Optional[LengthUnit] = None, decimal_sign: Optional[str] = None,
              inexact: bool = False) -> "Length":
        """Reads a length such as "2 1/2", "1 yd 4 1/2 in" or "6.35 cm".

        unit is for a number that names none (inches unless told otherwise), decimal_sign is "." or ",". A text off the
        tick grid, such as "1/3 in", raises InexactError unless inexact is true; then the nearest tick is taken.
        """
        data = utf8(text)
        spec = new(_api.muslin_parse_spec)
        call("muslin_parse_spec_init", ctypes.byref(spec), ctypes.sizeof(spec))
        put(spec, "default_unit", unit)
        put_sign(spec, "decimal_sign", decimal_sign)
        out = new(_api.muslin_parsed)
        call_telling("muslin_length_parse", data, len(data), ctypes.byref(spec), ctypes.byref(out))
        if not (out.exact or inexact):
            raise InexactError(f"{text!r} is no whole number of ticks (1/{TICKS_PER_INCH} in): "
                               "use Length.parse(..., inexact=True) for the nearest")
        return cls(out.value)

    @classmethod
    def from_fraction(cls, value: Union[Fraction, int], *, unit: LengthUnit = LengthUnit.INCH,
                      rounding: Optional[Direction] = None) -> "Length":
        """value x unit. Without a rounding the answer must be exact."""
        if not isinstance(value, (Fraction, int)):
            raise TypeError(f"value must be a Fraction or a whole number, not {type(value).__name__}")
        return cls(_in_ticks(Fraction(value) * _unit_ticks(unit), rounding, f"{value} {unit.word}"))

    @classmethod
    def from_float(cls, value: float, *, rounding: Direction, unit: LengthUnit = LengthUnit.INCH) -> "Length":
        """value x unit, taken for exactly what the float is and rounded once, in the direction given."""
        return cls(_in_ticks(Fraction(value) * _unit_ticks(unit), rounding, f"{value} {unit.word}"))

    # ---- to elsewhere ----

    @property
    def inches(self) -> Fraction:
        """Inches, exactly."""
        return Fraction(self.ticks, TICKS_PER_INCH)

    @property
    def mm(self) -> Fraction:
        """Millimetres, exactly."""
        return Fraction(self.ticks, TICKS_PER_MM)

    def to(self, unit: LengthUnit) -> Fraction:
        """The length in any unit, exactly."""
        return Fraction(self.ticks, _unit_ticks(unit))

    def written(self, *, style: Optional[Style] = None, denominator: Optional[int] = None,
                decimals: Optional[int] = None, decimal_sign: Optional[str] = None,
                direction: Optional[Direction] = None, unicode: bool = False, bare: bool = False) -> Formatted:
        """The length as text in a style, and whether that text is exact.

        denominator (1 to 64) is for fractions, decimals (0 to 6) for decimals; direction says how a length off that
        grid is rounded. unicode takes vulgar fractions and the true minus; bare leaves the unit out.
        """
        spec = new(_api.muslin_format_spec)
        call("muslin_format_spec_init", ctypes.byref(spec), ctypes.sizeof(spec))
        spec.flags = (FORMAT_UNICODE if unicode else 0) | (FORMAT_BARE if bare else 0)
        put(spec, "style", style)
        put(spec, "denominator", denominator)
        put(spec, "decimals", decimals)
        put(spec, "direction", direction)
        put_sign(spec, "decimal_sign", decimal_sign)
        buffer = ctypes.create_string_buffer(64)
        exact = ctypes.c_int32()
        call_telling("muslin_length_format", self.ticks, ctypes.byref(spec), buffer, len(buffer), None,
                     ctypes.byref(exact))
        return Formatted(buffer.value.decode("utf-8"), bool(exact.value))

    def format(self, *, style: Optional[Style] = None, denominator: Optional[int] = None,
               decimals: Optional[int] = None, decimal_sign: Optional[str] = None,
               direction: Optional[Direction] = None, unicode: bool = False, bare: bool = False) -> str:
        """The text of written()."""
        return self.written(style=style, denominator=denominator, decimals=decimals, decimal_sign=decimal_sign,
                            direction=direction, unicode=unicode, bare=bare).text

    def __str__(self) -> str:
        """Inches with a fraction where 1/64 in suffices, else exact millimetres: Length.parse() gives it back."""
        inches = self.written()
        return inches.text if inches.exact else self.format(style=Style.MM, decimals=6)

    def __repr__(self) -> str:
        return f"Length.parse({str(self)!r})"

    def __format__(self, format_spec: str) -> str:
        """Formatted like its str(), for instance to a width: f"{length:>12}"."""
        return format(str(self), format_spec)

    # ---- arithmetic ----

    def __add__(self, other: "Length") -> "Length":
        if not isinstance(other, Length):
            return NotImplemented
        return self._from_library("muslin_length_add", other.ticks)

    def __radd__(self, other: int) -> "Length":
        """Only 0 + length, so that sum() works."""
        if not isinstance(other, int) or other != 0:
            return NotImplemented
        return self

    def __sub__(self, other: "Length") -> "Length":
        if not isinstance(other, Length):
            return NotImplemented
        return self._from_library("muslin_length_subtract", other.ticks)

    def __neg__(self) -> "Length":
        return self._from_library("muslin_length_multiply", -1)

    def __pos__(self) -> "Length":
        return self

    def __abs__(self) -> "Length":
        return -self if self.ticks < 0 else self

    def __mul__(self, factor: Union[int, Fraction]) -> "Length":
        if isinstance(factor, int):
            return self._from_library("muslin_length_multiply", whole(factor, "factor"))
        if isinstance(factor, Fraction):
            return self.times(factor)
        return NotImplemented

    __rmul__ = __mul__

    @overload
    def __truediv__(self, divisor: "Length") -> Fraction: ...

    @overload
    def __truediv__(self, divisor: Union[int, Fraction]) -> "Length": ...

    def __truediv__(self, divisor: object) -> object:
        """Over a number: the exact Length. Over a Length: a Fraction."""
        if isinstance(divisor, Length):
            return Fraction(self.ticks, divisor.ticks)
        if isinstance(divisor, (int, Fraction)):
            return self.times(1 / Fraction(divisor))
        return NotImplemented

    def __floordiv__(self, divisor: "Length") -> int:
        """How many whole times another length goes into this one."""
        if not isinstance(divisor, Length):
            return NotImplemented
        return self.ticks // divisor.ticks

    def __mod__(self, divisor: "Length") -> "Length":
        """What is left over then."""
        if not isinstance(divisor, Length):
            return NotImplemented
        return Length(self.ticks % divisor.ticks)

    def __bool__(self) -> bool:
        return self.ticks != 0

    def times(self, ratio: Union[int, Fraction], *, rounding: Optional[Direction] = None) -> "Length":
        """ratio x the length, rounded once to a tick. Without a rounding the answer must be exact."""
        if not isinstance(ratio, (int, Fraction)):
            raise TypeError(f"ratio must be a Fraction or a whole number, not {type(ratio).__name__}")
        direction = Direction.NEAREST if rounding is None else rounding
        out = self._rounded("muslin_length_scale", Length(1), direction, Length(0),
                            whole(ratio.numerator, "numerator"), whole(ratio.denominator, "denominator"))
        if rounding is None and not out.exact:
            raise InexactError(f"{self} x {ratio} is no whole number of ticks (1/{TICKS_PER_INCH} in): say how to "
                               "round, with times()")
        return Length(out.value)

    def snap(self, grid: "LengthLike", direction: Direction, tolerance: "LengthLike" = "0") -> "Length":
        """The length brought to a grid such as "1/8 in"; see RoundingSpec for the tolerance."""
        out = self._rounded("muslin_length_snap", length_of(grid, "grid"), direction, length_of(tolerance, "tolerance"))
        return Length(out.value)

    def _from_library(self, name: str, other: int) -> "Length":
        out = ctypes.c_int64()
        call(name, self.ticks, other, ctypes.byref(out))
        return Length(out.value)

    def _rounded(self, name: str, grid: "Length", direction: Direction, tolerance: "Length",
                 *others: int) -> _api.muslin_rounded:
        rounding = new(_api.muslin_rounding_spec)
        rounding.grid, rounding.tolerance = grid.ticks, tolerance.ticks
        put(rounding, "direction", direction)
        out = new(_api.muslin_rounded)
        call(name, self.ticks, *others, ctypes.byref(rounding), ctypes.byref(out))
        return out


LengthLike = Union[Length, str]
"""What is taken for a length: a Length, or text that says one exactly, such as "2 1/2 in"."""


def length_of(value: LengthLike, name: str) -> Length:
    if isinstance(value, Length):
        return value
    if isinstance(value, str):
        return Length.parse(value)
    raise TypeError(f'{name} must be a Length or text such as "2 1/2 in", not {type(value).__name__}: a bare number '
                    "does not say its unit")


def ticks_of(value: LengthLike, name: str) -> int:
    return length_of(value, name).ticks


def put_length(struct: ctypes.Structure, member: str, value: Optional[LengthLike]) -> None:
    """Writes a length that is given; without one the member stays as it is."""
    if value is not None:
        setattr(struct, member, ticks_of(value, member))
