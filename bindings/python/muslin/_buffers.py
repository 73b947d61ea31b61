# SPDX-License-Identifier: MIT
"""Arrays through the buffer protocol: array.array("q"), memoryview, numpy int64 and the like, used where they lie.

ctypes cannot point into a read-only buffer, so of those, and only of those, a copy is read.
"""
import ctypes
import sys
from array import array
from typing import Any, Callable, Iterable, List, Optional, SupportsIndex, Tuple, Union

from ._length import LengthLike, ticks_of
from ._library import library
from ._problem import error_of
from ._values import whole

Buffer = Any
"""An object with the buffer protocol (Python has no type for one before 3.12)."""

Lengths = Union[Iterable[LengthLike], "array[int]", memoryview]
"""A buffer of 64-bit ticks, or lengths one by one, which are gathered into one."""

Integers = Union[Iterable[SupportsIndex], "array[int]", memoryview]
"""A buffer of signed integers, or whole numbers one by one, which are gathered into one."""

PLACES_MAX = 1 << 24
"""The most places that struct muslin_scatter_spec takes."""

SIGNED = {order + code for order in ("", "@", "=", "<" if sys.byteorder == "little" else ">") for code in "bhilq"}
"""How buffers call signed integers in the machine's order of bytes."""

NUMBERS: Any = {32: ctypes.c_int32, 64: ctypes.c_int64}


class Numbers:
    """A contiguous run of signed integers of one width, and where it lies."""

    def __init__(self, buffer: Buffer, name: str, bits: int, writable: bool = False) -> None:
        try:
            view = memoryview(buffer)
        except TypeError:
            raise TypeError(f"{name} must be a buffer such as array('{'q' if bits == 64 else 'i'}'), not "
                            f"{type(buffer).__name__}") from None
        if view.format not in SIGNED or 8 * view.itemsize != bits:
            raise TypeError(f"{name} must hold signed integers of {bits} bits (typecode "
                            f"'{'q' if bits == 64 else 'i'}'), not '{view.format}' of {8 * view.itemsize}")
        if not view.c_contiguous:
            raise ValueError(f"{name} must lie in one piece: copy it, or take a slice without a step")
        if writable and view.readonly:
            raise ValueError(f"{name} must be writable")
        size = view.nbytes
        self.count = size * 8 // bits
        kind = NUMBERS[bits]  # what points to the first number points to all
        if size == 0:
            self.numbers = kind()
        elif view.readonly:
            self.numbers = (kind * self.count).from_buffer_copy(view)
        else:
            self.numbers = kind.from_buffer(view)
        self.first = ctypes.addressof(self.numbers)
        self.end = self.first + size


def gathered_by(read: Callable[[Any, str], int], values: Any, name: str, bits: int) -> Numbers:
    """A buffer where it lies, or what is read from values one by one."""
    try:
        return Numbers(values, name, bits)
    except TypeError:
        if hasattr(values, "__array_interface__") or isinstance(values, (array, memoryview, bytes, bytearray, str)):
            raise
    numbers = [read(value, f"{name}[{at}]") for at, value in enumerate(values)]
    return Numbers(array("q" if bits == 64 else "i", numbers), name, bits)


def gathered(values: Lengths, name: str) -> Numbers:
    """Lengths for a call that only reads them."""
    return gathered_by(ticks_of, values, name, 64)


def integers(values: Integers, name: str, bits: int = 64) -> Numbers:
    """Whole numbers for a call that only reads them."""
    return gathered_by(lambda value, place: whole(value, place, bits), values, name, bits)


def places_given(values: Optional[Integers], name: str, places: int) -> Any:
    """A number for each place, or none at all."""
    if values is None:
        return None
    numbers = integers(values, name)
    if numbers.count != places:
        raise ValueError(f"{name} has {numbers.count} numbers and there are {places} places")
    return numbers.numbers


def places_out(places: int) -> Any:
    """Where a call writes a number for each place. The library refuses more places before it writes any."""
    return (ctypes.c_int64 * min(max(places, 1), PLACES_MAX))()


def same_count(**arrays: Numbers) -> int:
    counts = {numbers.count for numbers in arrays.values()}
    if len(counts) > 1:
        raise ValueError("arrays of unequal length: " +
                         ", ".join(f"{name} {numbers.count}" for name, numbers in arrays.items()))
    return counts.pop()


def output(out: Optional[Buffer], inputs: List[Numbers]) -> Tuple[Any, Numbers]:
    """What a call returns, and where it is to write: an array of the caller's, or a new one."""
    given = array("q", bytes(8 * inputs[0].count)) if out is None else out
    numbers = Numbers(given, "out", 64, writable=True)
    for other in inputs:
        apart = numbers.end <= other.first or other.end <= numbers.first
        if not apart and numbers.first != other.first:
            raise ValueError("out may be one of the inputs, but must not overlap one in part")
    return given, numbers


def statuses_of(statuses: Optional[Buffer], out: Numbers) -> Any:
    if statuses is None:
        return None
    numbers = Numbers(statuses, "statuses", 32, writable=True)
    same_count(out=out, statuses=numbers)
    return numbers.numbers


def elementwise(name: str, *arguments: object) -> None:
    """Calls an array form. Without statuses it stops at the first element that fails, and the exception says where."""
    failed = ctypes.c_size_t()
    status = getattr(library, name)(*arguments, ctypes.byref(failed))
    if status != 0:
        raise error_of(status, at=failed.value)
