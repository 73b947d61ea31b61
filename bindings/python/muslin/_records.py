# SPDX-License-Identifier: MIT
"""What the generated specs, results and calls have in common."""
import ctypes
from dataclasses import replace
from functools import lru_cache
from typing import Any, Callable, ClassVar, Iterable, Iterator, List, Optional, Sequence, Tuple, Type, TypeVar

from ._handle import Handle
from ._length import Formatted
from ._problem import call, call_telling
from ._values import new
from .constants import Warning

Record = TypeVar("Record", bound="Spec")

PAGE = 512
"""How many rows are asked for at a time."""

TEXT_MAX = 64
"""The longest text of a length is shorter, with its terminator."""


@lru_cache(maxsize=None)
def initial(kind: Type[ctypes.Structure], init: Optional[str]) -> bytes:
    """A struct with the library's own initial values, which are asked for once."""
    struct: Any = new(kind)
    if init is not None:
        call(init, ctypes.byref(struct), ctypes.sizeof(struct))
    return bytes(struct)


class Spec:
    """A request. A member left at None keeps the library's own initial value."""

    _kind: ClassVar[Type[ctypes.Structure]]
    _init: ClassVar[Optional[str]] = None

    def _put(self, struct: Any) -> None:
        """Writes the members that were given."""
        raise NotImplementedError

    def _struct(self) -> Any:
        """The request as the library reads it."""
        struct: Any = self._kind.from_buffer_copy(initial(self._kind, self._init))
        self._put(struct)
        return struct


def checked(kind: Type[Record], spec: Optional[Record], name: str) -> Record:
    """A spec of the kind that is wanted; none at all is one without members."""
    if spec is not None and not isinstance(spec, kind):
        raise TypeError(f"{name} must be a {kind.__name__}, not {type(spec).__name__}")
    return spec or kind()


def merged(kind: Type[Record], spec: Optional[Record], /, **given: object) -> Any:
    """A spec and single members over it, as the library reads them."""
    wanted = checked(kind, spec, "spec")
    members = {name: value for name, value in given.items() if value is not None}
    return (replace(wanted, **members) if members else wanted)._struct()


def struct_of(kind: Type[Record], spec: Optional[Record], name: str) -> Any:
    """A spec that stands beside other arguments."""
    return checked(kind, spec, name)._struct()


def rows_of(kind: Type[Record], rows: Iterable[Record], name: str) -> Tuple[Any, int]:
    """Rows for the library to read, and their number."""
    structs = [struct_of(kind, row, f"{name}[{at}]") for at, row in enumerate(rows)]
    filled = (kind._kind * max(len(structs), 1))(*structs)
    return filled, len(structs)


def asked(name: str, kind: Type[ctypes.Structure], read: Callable[[Any], Any], *arguments: object,
          after: Sequence[object] = ()) -> List[Any]:
    """Asks a call for the number of its rows, then has them filled in, and with them the outputs that come after."""
    count = ctypes.c_size_t()
    call_telling(name, *arguments, None, ctypes.sizeof(kind), 0, ctypes.byref(count), *after)
    if count.value == 0 and not after:
        return []
    rows = (kind * max(count.value, 1))()
    call_telling(name, *arguments, rows, ctypes.sizeof(kind), len(rows), ctypes.byref(count), *after)
    return [read(row) for row in rows[:count.value]]


def asked_numbers(name: str, kind: Any, *arguments: object) -> List[int]:
    """The same for plain numbers."""
    count = ctypes.c_size_t()
    call_telling(name, *arguments, None, 0, ctypes.byref(count))
    if count.value == 0:
        return []
    numbers = (kind * count.value)()
    call_telling(name, *arguments, numbers, count.value, ctypes.byref(count))
    return list(numbers)


def paged(name: str, kind: Type[ctypes.Structure], part: Type[ctypes.Structure], read: Callable[..., Any],
          read_part: Callable[[Any], Any], parts: str, handle: Handle, *arguments: object) -> Iterator[Any]:
    """Rows with what they are made of, a page at a time. A row says where its parts begin and how many they are."""
    start = "first_" + parts[:-1]

    def page(first: int) -> Tuple[List[Any], int]:
        """Rows from a number on, one at least where there is one, and how many come after them."""
        count, given, part_room = ctypes.c_size_t(), ctypes.c_size_t(), PAGE * 8
        rows = (kind * PAGE)()
        while True:
            filled = (part * part_room)()
            call_telling(name, handle._open(), *arguments, first, rows, ctypes.sizeof(kind), PAGE, filled,
                         ctypes.sizeof(part), part_room, ctypes.byref(count), ctypes.byref(given))
            if given.value or not count.value:
                break
            part_room *= 2  # not even one row has room for its parts
        spans = ((row, getattr(row, start), getattr(row, parts)) for row in rows[:given.value])
        return ([read(row, tuple(read_part(one) for one in filled[begin:begin + many])) for row, begin, many in spans],
                count.value - given.value)

    def pages(rows: List[Any], left: int) -> Iterator[Any]:
        first = 0
        yield from rows
        while left:
            first += len(rows)
            rows, left = page(first)
            yield from rows

    return pages(*page(0))


def warnings_in(bits: int) -> Tuple[Warning, ...]:
    """A sum of warnings, one by one."""
    return tuple(Warning(1 << bit) for bit in range(32) if bits >> bit & 1)


def text_out(name: str, *arguments: object) -> Formatted:
    """Has a length written as text, which the library promises to keep short."""
    buffer, exact = ctypes.create_string_buffer(TEXT_MAX), ctypes.c_int32()
    call_telling(name, *arguments, buffer, TEXT_MAX, None, ctypes.byref(exact))
    return Formatted(buffer.value.decode("utf-8"), bool(exact.value))


def words_out(name: str, *arguments: object) -> str:
    """Asks how long a text will be, which may hold any character, then has it written."""
    need = ctypes.c_size_t()
    call_telling(name, *arguments, None, 0, ctypes.byref(need))
    buffer = ctypes.create_string_buffer(need.value)
    call_telling(name, *arguments, buffer, need.value, ctypes.byref(need))
    return buffer.raw[:need.value - 1].decode("utf-8", "surrogatepass")
