# SPDX-License-Identifier: MIT
"""Finds the shared library, makes sure that it belongs to this package, and tells ctypes what each function takes."""
import ctypes
import os
import sys
from pathlib import Path
from typing import List

from . import _api

VARIABLE = "MUSLIN_LIBRARY"


class LibraryError(ImportError):
    """There is no shared library of muslin here, or it is not the one this package was written for."""


def file_name(platform: str) -> str:
    """What the library is called: the exact soname, so that another ABI is never taken by mistake."""
    if platform == "darwin":
        return "libmuslin.1.dylib"
    if platform in ("win32", "cygwin"):
        return "muslin-1.dll"
    return "libmuslin.so.1"


def places() -> List[str]:
    """Where to look. What the variable names is the only place then; a copy in the package goes before the system."""
    chosen = os.environ.get(VARIABLE)
    if chosen:
        return [chosen]
    name = file_name(sys.platform)
    copy = Path(__file__).resolve().parent / name
    return [str(copy), name] if copy.exists() else [name]


def compatible(version: int) -> bool:
    """Before 1.0.0 the second number is the ABI's; from then on the library may be newer, but not older."""
    found, wanted = (version // 1000000, version // 1000), (_api.VERSION // 1000000, _api.VERSION // 1000)
    return found == wanted or (found[0] == wanted[0] > 0 and found[1] > wanted[1])


def bind(library: ctypes.CDLL, where: str) -> None:
    """Gives every function its types, after the version has been looked at."""
    try:
        version = library.muslin_version
    except AttributeError:
        raise LibraryError(f"{where} is not muslin: it has no function muslin_version") from None
    version.restype = ctypes.c_uint32
    if not compatible(version()):
        raise LibraryError(f"{where} is version {version()} of muslin and this package was written for version "
                           f"{_api.VERSION}: install the two from the same release")
    lacking = [name for name in _api.PROTOTYPES if not hasattr(library, name)]
    if lacking:
        more = f" (nor {len(lacking) - 1} more that this package needs)" if lacking[1:] else ""
        raise LibraryError(f"{where} has no function {lacking[0]}{more}: it is older than this package")
    for name, (restype, argtypes) in _api.PROTOTYPES.items():
        function = getattr(library, name)
        function.restype = restype
        function.argtypes = argtypes


def load() -> ctypes.CDLL:
    tried = []
    for place in places():
        try:
            library = ctypes.CDLL(place)
        except OSError as error:
            tried.append(f"{place}: {error}")
            continue
        bind(library, place)
        return library
    source = f"{VARIABLE} names it" if os.environ.get(VARIABLE) else \
        f"{VARIABLE} is not set; a copy beside the package and then the system were tried"
    raise LibraryError(f"the muslin library was not found ({source}): " + "; ".join(tried))


library = load()
