# SPDX-License-Identifier: MIT
"""Which shared library the package takes, and which it refuses. Each case runs in a Python of its own."""
import os
import shutil
import subprocess
import sys
from pathlib import Path
from typing import Any, Dict, List, Tuple

import pytest

from conftest import PACKAGE
from muslin import _api
from muslin._library import LibraryError, bind, compatible, file_name

LIBRARY = Path(os.environ["MUSLIN_LIBRARY"])
ASK = "import muslin; print(muslin.library._name)"

linux = pytest.mark.skipif(sys.platform != "linux", reason="places of shared libraries as on Linux")


def python(code: str, package: Path = PACKAGE, **environment: str) -> Tuple[bool, str]:
    """Whether the program ran, and the last line of what it said."""
    kept = {name: value for name, value in os.environ.items()
            if name not in ("MUSLIN_LIBRARY", "LD_LIBRARY_PATH", "PYTHONPATH")}
    done = subprocess.run([sys.executable, "-B", "-c", code], stdout=subprocess.PIPE, stderr=subprocess.STDOUT,
                          encoding="utf-8", check=False,
                          env={**kept, "PYTHONPATH": str(package), **environment})
    return done.returncode == 0, done.stdout.strip().split("\n")[-1]


@pytest.fixture
def package(tmp_path: Path) -> Path:
    """A copy of the package without a library in it."""
    shutil.copytree(PACKAGE / "muslin", tmp_path / "site" / "muslin",
                    ignore=shutil.ignore_patterns("__pycache__", "libmuslin*"))
    return tmp_path / "site"


def test_the_variable_names_the_library() -> None:
    assert python(ASK, MUSLIN_LIBRARY=str(LIBRARY)) == (True, str(LIBRARY))


def test_what_the_variable_names_is_taken_or_nothing(package: Path, tmp_path: Path) -> None:
    shutil.copy(LIBRARY, package / "muslin" / file_name(sys.platform))
    shutil.copy(LIBRARY, tmp_path / file_name(sys.platform))
    missing = str(tmp_path / "missing.so")
    worked, said = python(ASK, package, MUSLIN_LIBRARY=missing, LD_LIBRARY_PATH=str(tmp_path))
    assert not worked
    assert "LibraryError" in said and "MUSLIN_LIBRARY names it" in said and missing in said


def test_a_copy_in_the_package_is_taken_before_the_system(package: Path, tmp_path: Path) -> None:
    copy = package / "muslin" / file_name(sys.platform)
    shutil.copy(LIBRARY, copy)
    shutil.copy(LIBRARY, tmp_path / file_name(sys.platform))
    assert python(ASK, package, LD_LIBRARY_PATH=str(tmp_path)) == (True, str(copy))


def test_an_empty_variable_is_no_variable(package: Path) -> None:
    copy = package / "muslin" / file_name(sys.platform)
    shutil.copy(LIBRARY, copy)
    assert python(ASK, package, MUSLIN_LIBRARY="") == (True, str(copy))


@linux
def test_the_system_is_asked_for_the_exact_soname(package: Path, tmp_path: Path) -> None:
    shutil.copy(LIBRARY, tmp_path / "libmuslin.so.1")
    assert python(ASK, package, LD_LIBRARY_PATH=str(tmp_path)) == (True, "libmuslin.so.1")


@linux
@pytest.mark.parametrize("name", ["libmuslin.so", "libmuslin.so.2", "muslin.so"])
def test_no_other_name_is_taken(name: str, package: Path, tmp_path: Path) -> None:
    other = tmp_path / name
    other.write_bytes(LIBRARY.read_bytes().replace(b"libmuslin.so.1\0", b"libother_.so.1\0"))
    worked, said = python(ASK, package, LD_LIBRARY_PATH=str(tmp_path))
    assert not worked
    assert "MUSLIN_LIBRARY is not set" in said and "libmuslin.so.1" in said


@linux
def test_the_main_program_is_never_taken(package: Path, tmp_path: Path) -> None:
    """All of muslin's functions are in the program, under another library's name, and still it is not found."""
    other = tmp_path / "libother_.so.1"
    other.write_bytes(LIBRARY.read_bytes().replace(b"libmuslin.so.1\0", b"libother_.so.1\0"))
    preload = {"LD_PRELOAD": str(other)}
    assert python("import ctypes; print(ctypes.CDLL(None).muslin_status_count() > 0)", package, **preload) == \
        (True, "True")
    worked, said = python(ASK, package, **preload)
    assert not worked
    assert "LibraryError" in said


@linux
def test_another_library_is_refused() -> None:
    worked, said = python(ASK, MUSLIN_LIBRARY="libc.so.6")
    assert not worked
    assert "libc.so.6 is not muslin" in said


class Function:
    """Stands for a function that ctypes found."""

    restype: Any = None
    argtypes: Any = None

    def __init__(self, answer: int) -> None:
        self.answer = answer

    def __call__(self) -> int:
        return self.answer


class Loaded:
    """Stands for a loaded library with a version and some functions."""

    def __init__(self, version: int, names: List[str]) -> None:
        self.functions: Dict[str, Function] = {name: Function(version) for name in names}

    def __getattr__(self, name: str) -> Function:
        try:
            return self.functions[name]
        except KeyError:
            raise AttributeError(name) from None


def test_a_library_of_another_version_is_refused() -> None:
    loaded: Any = Loaded(2000000, list(_api.PROTOTYPES))
    with pytest.raises(LibraryError, match=f"there is version 2000000 .* version {_api.VERSION}"):
        bind(loaded, "there")


def test_a_library_that_lacks_a_function_is_refused() -> None:
    names = list(_api.PROTOTYPES)
    loaded: Any = Loaded(_api.VERSION, names[:-1])
    with pytest.raises(LibraryError, match=f"there has no function {names[-1]}: it is older"):
        bind(loaded, "there")


def test_a_library_that_lacks_many_functions_names_one_and_counts_the_rest() -> None:
    names = list(_api.PROTOTYPES)
    loaded: Any = Loaded(_api.VERSION, names[:-12])
    with pytest.raises(LibraryError, match=rf"no function {names[-12]} \(nor 11 more that this package needs\)"):
        bind(loaded, "there")


def test_every_function_is_told_its_types() -> None:
    loaded: Any = Loaded(_api.VERSION, list(_api.PROTOTYPES))
    bind(loaded, "there")
    assert {name: (function.restype, function.argtypes) for name, function in loaded.functions.items()} == \
        _api.PROTOTYPES


@pytest.mark.parametrize("built, found, fits", [
    (100, 100, True), (100, 101, True), (101, 100, True),      # the third number is never the ABI's
    (1000, 2000, False), (2000, 1000, False), (1000, 1001000, False),  # before 1.0.0 the second one is
    (1001000, 1001000, True), (1001000, 1002000, True), (1002000, 1001000, False), (1001000, 2001000, False)])
def test_versions_that_fit(built: int, found: int, fits: bool, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(_api, "VERSION", built)
    assert compatible(found) == fits


@pytest.mark.parametrize("platform, name", [("linux", "libmuslin.so.1"), ("freebsd13", "libmuslin.so.1"),
                                            ("darwin", "libmuslin.1.dylib"), ("win32", "muslin-1.dll")])
def test_the_name_carries_the_abi(platform: str, name: str) -> None:
    assert file_name(platform) == name
