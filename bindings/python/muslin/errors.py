# SPDX-License-Identifier: MIT
"""One exception for each status. Where Python has one of the same name, it is one of those too.

Written by generate.py from lib/abi/api.json: change that, not this file.
"""
import builtins

from ._problem import CLASSES, MuslinError

__all__ = ["MuslinError", "NullError", "StructSizeError", "StructTailError", "FlagsError", "ChoiceError", "RangeError",
           "OverflowError", "DivideByZeroError", "BufferError", "IndexError", "TextEmptyError", "TextSyntaxError",
           "TextTrailingError", "TextUnitError", "TextDecimalError", "TextZeroDenominatorError", "TextEncodingError",
           "SeamTooWideError", "NotSquareError", "NoYieldError", "NotEnoughError", "NoFitError", "NoMemoryError",
           "CustomaryError", "MethodError", "ShapeError", "NotTiledError", "WorkLimitError", "ForeignError",
           "StoppedError", "TooManyError"]


class NullError(MuslinError):
    """A pointer that must be given is null."""


class StructSizeError(MuslinError):
    """A struct's size is 0, below the first published one, or above 4096."""


class StructTailError(MuslinError):
    """Bytes behind the members this library knows are not zero."""


class FlagsError(MuslinError):
    """A flag this library does not know."""


class ChoiceError(MuslinError):
    """A value that is none of the listed choices."""


class RangeError(MuslinError):
    """An argument below its least or above its greatest value."""


class OverflowError(MuslinError, builtins.OverflowError):
    """The result would lie outside the range of its type."""


class DivideByZeroError(MuslinError):
    """A divisor is zero."""


class BufferError(MuslinError, builtins.BufferError):
    """The caller's buffer or array is too small; the needed size was written."""


class IndexError(MuslinError, builtins.IndexError):
    """A row number at or past the end of a table."""


class TextEmptyError(MuslinError):
    """The text holds no number."""


class TextSyntaxError(MuslinError):
    """Something stands where a number or a unit should."""


class TextTrailingError(MuslinError):
    """A whole length, then something more."""


class TextUnitError(MuslinError):
    """A word that is no unit of length."""


class TextDecimalError(MuslinError):
    """The other decimal sign than the one asked for."""


class TextZeroDenominatorError(MuslinError):
    """A fraction over zero."""


class TextEncodingError(MuslinError):
    """Not valid UTF-8."""


class SeamTooWideError(MuslinError):
    """The seams eat the whole piece: nothing would be seen of it."""


class NotSquareError(MuslinError):
    """A quarter turn was asked of a block that is not square."""


class NoYieldError(MuslinError):
    """The stock gives not even one piece, so no amount of it is enough."""


class NotEnoughError(MuslinError):
    """The stock in hand does not suffice."""


class NoFitError(MuslinError):
    """No listed size or layout covers what is asked."""


class NoMemoryError(MuslinError):
    """An allocator returned nothing."""


class CustomaryError(MuslinError):
    """A customary addition is below what the geometry needs."""


class MethodError(MuslinError):
    """This kind of unit is not made by that method."""


class ShapeError(MuslinError):
    """No such shape: corners missing, edges that cross, an impossible angle or arc."""


class NotTiledError(MuslinError):
    """The pieces leave a gap in the outline, overlap, or stick out."""


class WorkLimitError(MuslinError):
    """The work, or what is stored, would be more than the caller allows."""


class ForeignError(MuslinError):
    """An id of another quilt, of another sort, or of nothing."""


class StoppedError(MuslinError):
    """The caller's progress call ended it before there was an answer."""


class TooManyError(MuslinError):
    """More would be needed than can be counted here; since 1.1."""


CLASSES.update({
    1: NullError,
    2: StructSizeError,
    3: StructTailError,
    4: FlagsError,
    5: ChoiceError,
    6: RangeError,
    7: OverflowError,
    8: DivideByZeroError,
    9: BufferError,
    10: IndexError,
    11: TextEmptyError,
    12: TextSyntaxError,
    13: TextTrailingError,
    14: TextUnitError,
    15: TextDecimalError,
    16: TextZeroDenominatorError,
    17: TextEncodingError,
    18: SeamTooWideError,
    19: NotSquareError,
    20: NoYieldError,
    21: NotEnoughError,
    22: NoFitError,
    23: NoMemoryError,
    24: CustomaryError,
    25: MethodError,
    26: ShapeError,
    27: NotTiledError,
    28: WorkLimitError,
    29: ForeignError,
    30: StoppedError,
    31: TooManyError,
})
