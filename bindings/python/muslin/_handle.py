# SPDX-License-Identifier: MIT
"""What the handles have in common: who uses one, and when its memory is given back."""
import ctypes
from typing import Any, Callable, List, Optional, Tuple, Type, TypeVar

from . import _api
from ._library import library
from ._problem import call

Self = TypeVar("Self", bound="Handle")

ALLOCATOR = _api.muslin_allocator()
"""The C library's, from which all handles made here have their memory."""
call("muslin_allocator_libc", ctypes.byref(ALLOCATOR))


class ClosedError(ValueError):
    """A handle was used after it had been closed."""


class Memory:
    """A handle's memory. Its handle uses it, and so does every handle that reads it; the last of them frees it.

    Adding to a list and taking from it are single steps, so that no lock is needed.
    """

    def __init__(self, free: Callable[[Any], object], made: Any, reads: Optional["Memory"]) -> None:
        self.made = made
        self.free = free
        self.reads = reads
        self.other_users: List[None] = []
        if reads is not None:
            reads.other_users.append(None)

    def let_go(self) -> None:
        try:
            self.other_users.pop()
        except IndexError:
            self.free(self.made)
            if self.reads is not None:
                self.reads.let_go()


class Handle:
    """An object of the library. close() gives its memory back, and so does the end of a with statement, or of the last
    reference to it. What still reads it may be used on: its memory is freed after theirs.
    """

    _memory: Optional[Memory] = None

    def _own(self, free: str, made: Any, reads: Optional["Handle"] = None) -> None:
        """Takes over what the library has made, and what it reads."""
        self._memory = Memory(getattr(library, free), made, None if reads is None else reads._memory)

    @classmethod
    def _lent(cls: Type[Self], made: Any, owner: "Handle") -> Self:
        """A part of another handle, which frees it with itself, and not before this one is let go of."""
        lent = object.__new__(cls)
        lent._memory = Memory(lambda _: None, made, owner._memory)
        return lent

    def _open(self) -> Any:
        """The handle as the library knows it."""
        if self._memory is None:
            raise ClosedError(f"this {type(self).__name__} is closed")
        return self._memory.made

    @property
    def closed(self) -> bool:
        """Whether close() was called."""
        return self._memory is None

    def close(self) -> None:
        """Gives the memory back; a second time it does nothing."""
        memory = self.__dict__.pop("_memory", None)
        if memory is not None:
            memory.let_go()

    def __enter__(self: Self) -> Self:
        self._open()
        return self

    def __exit__(self, *exception: object) -> None:
        self.close()

    def __del__(self) -> None:
        self.close()

    def __reduce__(self) -> Any:
        raise TypeError(f"a {type(self).__name__} cannot be copied or pickled")


Progress = Callable[..., object]
"""Is told numbers, and ends what it is told about by answering true."""


class Told:
    """A callable as the library calls it. What it raises ends the call, and is raised again behind that."""

    def __init__(self, kind: Any, progress: Optional[Progress]) -> None:
        self.raised: Optional[BaseException] = None
        self.function = kind() if progress is None else kind(lambda _, *numbers: self.tell(progress, numbers))

    def tell(self, progress: Progress, numbers: Tuple[int, ...]) -> int:
        try:
            return 1 if progress(*numbers) else 0
        except BaseException as raised:  # pylint: disable=broad-except
            self.raised = raised
            return 1

    def __enter__(self) -> "Told":
        return self

    def __exit__(self, *failure: object) -> None:
        if self.raised is not None:
            raise self.raised


def opened(kind: Type[Handle], handle: Handle, name: str) -> Any:
    """A handle that another one is made of, as the library knows it."""
    if not isinstance(handle, kind):
        raise TypeError(f"{name} must be a {kind.__name__}, not {type(handle).__name__}")
    return handle._open()
