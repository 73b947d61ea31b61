# SPDX-License-Identifier: MIT
"""Asks the library through the Python binding, in plain numbers: ticks for lengths, dicts for structs."""

import ctypes
import dataclasses
import enum
import functools
import inspect
import typing
from array import array

import muslin

Failed = muslin.MuslinError


@functools.lru_cache(maxsize=None)
def hints_of(thing):
    return typing.get_type_hints(thing, localns={"array": typing.List})


def kinds_in(hint):
    """The types that a Union, an Optional or a Sequence speaks of."""
    return [kind for part in typing.get_args(hint) for kind in kinds_in(part)] or [hint]


def into(hint, value):
    """A plain value as the binding takes it."""
    kinds = kinds_in(hint)
    if isinstance(value, dict):
        kind = next(kind for kind in kinds if dataclasses.is_dataclass(kind))
        return kind(**{name: into(hints_of(kind)[name], member) for name, member in value.items()})
    if isinstance(value, list) and any(dataclasses.is_dataclass(kind) for kind in kinds):
        return [into(hint, row) for row in value]
    if isinstance(value, list):
        return array("q", value)
    if isinstance(value, bool):
        return value
    if muslin.Length in kinds:
        return muslin.Length(value)
    return chr(value) if str in kinds and isinstance(value, int) else value


def plain(result):
    """What the binding gives, in plain numbers."""
    if isinstance(result, muslin.Length):
        return result.ticks
    if isinstance(result, (bool, enum.IntEnum)):
        return int(result)
    if isinstance(result, (tuple, list)):
        if result and all(isinstance(warning, muslin.Warning) for warning in result):
            return sum(result)
        return [plain(member) for member in result]
    if dataclasses.is_dataclass(result):
        found = {field.name: plain(getattr(result, field.name)) for field in dataclasses.fields(result)}
        return dict(found, warnings=found["warnings"] or 0) if "warnings" in found else found
    return result


def ask(call, *arguments, **members):
    function = getattr(muslin, call)
    hints = hints_of(function)
    given = [into(hints[name], value) for name, value in zip(inspect.signature(function).parameters, arguments)]
    return plain(function(*given, **members))


def ask_bytes(data, default_unit, decimal_sign):
    """Reads any bytes, also such as no Python text holds, by the loaded library itself."""
    kinds = muslin.structs
    problem = kinds.muslin_problem(size=ctypes.sizeof(kinds.muslin_problem))
    parsed = kinds.muslin_parsed(size=ctypes.sizeof(kinds.muslin_parsed))
    spec = kinds.muslin_parse_spec(size=ctypes.sizeof(kinds.muslin_parse_spec), default_unit=default_unit,
                                   decimal_sign=decimal_sign)
    status = muslin.library.muslin_length_parse(data, len(data), ctypes.byref(spec), ctypes.byref(parsed),
                                                ctypes.byref(problem))
    if status != muslin.Status.OK:
        raise Failed(problem.text.decode(), status)
    return {"value": parsed.value, "exact": parsed.exact, "unit": parsed.unit}
