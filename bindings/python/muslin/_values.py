# SPDX-License-Identifier: MIT
"""Plain numbers on their way into the library: ctypes would cut them off without a word, so they are measured first."""
import ctypes
import operator
from enum import IntEnum
from typing import Any, Optional, SupportsIndex, Type, TypeVar

Struct = TypeVar("Struct", bound=ctypes.Structure)


Id = int
"""A fabric, a measure or a node of one quilt, as the library numbers them; 0 is none."""


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

    def __str__(self) -> str:
        """The name: Python's own answer differs from version to version."""
        return self.name

    def __format__(self, format_spec: str) -> str:
        return format(self.name, format_spec)


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


def put(struct: ctypes.Structure, member: str, value: Optional[SupportsIndex]) -> None:
    """Writes a number that is given; without one the member stays as it is."""
    if value is not None:
        field: Any = getattr(type(struct), member)
        setattr(struct, member, whole(value, member, 8 * int(field.size)))


def put_sign(struct: ctypes.Structure, member: str, value: Optional[str]) -> None:
    """The same for a decimal sign, given as the character itself."""
    if value is None:
        return
    if not isinstance(value, str) or len(value) != 1:
        raise TypeError(f"{member} must be one character, not {value!r}")
    setattr(struct, member, ord(value))


def put_flag(struct: Any, flag: int, value: Optional[bool]) -> None:
    """Sets a flag or takes it away; what is not given stays as it is."""
    if value is not None:
        struct.flags = struct.flags | flag if value else struct.flags & ~flag
