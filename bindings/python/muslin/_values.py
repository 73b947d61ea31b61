# SPDX-License-Identifier: MIT
"""Plain numbers on their way into the library: ctypes would cut them off without a word, so they are measured first."""
import ctypes
import operator
from enum import IntEnum
from typing import Any, SupportsIndex, Type, TypeVar

Struct = TypeVar("Struct", bound=ctypes.Structure)


class Choice(IntEnum):
    """An enum of the library. A number that only a newer library has a name for becomes a member UNKNOWN_<number>."""

    @classmethod
    def _missing_(cls, value: object) -> "Choice":
        if not isinstance(value, int):
            raise ValueError(f"{value!r} is not a number")
        unknown = int.__new__(cls, value)
        unknown._name_ = f"UNKNOWN_{value}"
        unknown._value_ = value
        return unknown


def whole(value: SupportsIndex, name: str, bits: int = 64, signed: bool = True) -> int:
    """A whole number that fits `bits` bits. Floats are refused."""
    try:
        number = operator.index(value)
    except TypeError:
        raise TypeError(f"{name} must be a whole number, not {type(value).__name__}") from None
    least = -(1 << (bits - 1)) if signed else 0
    if not least <= number < least + (1 << bits):
        raise OverflowError(f"{name} is {number}, which does not fit {bits} bits")
    return number


def sign(value: str, name: str) -> int:
    """A decimal sign, given as the character itself."""
    if not isinstance(value, str) or len(value) != 1:
        raise TypeError(f"{name} must be one character, not {value!r}")
    return ord(value)


def utf8(text: str) -> bytes:
    """Text for the library; what is not a character of Unicode is passed on, and the library says where it stands."""
    if not isinstance(text, str):
        raise TypeError(f"text must be a str, not {type(text).__name__}")
    return text.encode("utf-8", "surrogatepass")


def new(kind: Type[Struct]) -> Struct:
    """A zeroed struct that knows its own size."""
    struct = kind()
    setattr(struct, "size", ctypes.sizeof(kind))
    return struct


def put(struct: ctypes.Structure, member: str, value: SupportsIndex) -> None:
    field: Any = getattr(type(struct), member)
    setattr(struct, member, whole(value, member, 8 * int(field.size)))
