# SPDX-License-Identifier: MIT
"""From a status to an exception with the library's own sentence."""
import ctypes
from typing import Any, Dict, Optional, Type

from . import _api
from ._library import library
from .constants import Argument, Status


class MuslinError(ValueError):
    """A call failed. Its text is the library's sentence. Each status has a subclass in muslin.errors."""

    status: Status
    """The status that the call returned."""
    argument: Argument
    """The input that was at fault; Argument.NONE where the call does not say."""
    at: int
    """Byte offset in the text, or the number of the row or element, at which it was found; else 0."""
    bytes: int
    """Bytes of text concerned, else 0."""
    value: int
    """The offending value: ticks, count, parts per million or choice, as its argument is measured."""
    limit: int
    """The limit it broke, in the same unit; 0 where there is none."""

    def __init__(self, text: str, status: int, argument: int = 0, at: int = 0, bytes: int = 0, value: int = 0,
                 limit: int = 0) -> None:
        super().__init__(text)
        self.status = Status(status)
        self.argument = Argument(argument)
        self.at = at
        self.bytes = bytes
        self.value = value
        self.limit = limit

    def __reduce__(self) -> Any:
        return type(self), (str(self), int(self.status), int(self.argument), self.at, self.bytes, self.value,
                            self.limit)


CLASSES: Dict[int, Type[MuslinError]] = {}
"""Filled by muslin.errors; a status that only a newer library knows is a plain MuslinError."""


def error_of(status: int, at: int = 0, problem: Optional[_api.muslin_problem] = None) -> MuslinError:
    kind = CLASSES.get(status, MuslinError)
    if problem is None or problem.status != status:
        return kind(Status(status).sentence, status, at=at)
    return kind(problem.text.decode("utf-8"), status, problem.argument, problem.at, problem.bytes, problem.value,
                problem.limit)


def call(name: str, *arguments: object) -> None:
    """Calls a function that returns a status and takes no struct muslin_problem."""
    status = getattr(library, name)(*arguments)
    if status != 0:
        raise error_of(status)


def call_telling(name: str, *arguments: object) -> None:
    """Calls a function that returns a status and, last, takes a struct muslin_problem."""
    problem = _api.muslin_problem(size=ctypes.sizeof(_api.muslin_problem))
    status = getattr(library, name)(*arguments, ctypes.byref(problem))
    if status != 0:
        raise error_of(status, problem=problem)
