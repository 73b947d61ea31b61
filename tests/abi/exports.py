#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""Holds four lists equal: the functions of the headers (lib/abi/api.json), lib/exports.txt, lib/muslin.map, and what
the shared library really exports.

    exports.py LIBRARY    the built libmuslin.so.1

Also checks the soname, the version node, that only the C library is needed (by the allocator alone), and that no source
file, of the library or of the unit tests, is left out of its meson.build.
"""
import json
import re
import subprocess
import sys
from pathlib import Path
from typing import Iterable, List, Set

ROOT = Path(__file__).resolve().parent.parent.parent
SONAME = "libmuslin.so.1"
NODE = "MUSLIN_1"
MAY_NEED = {"libc.so.6"}


def run(*command: str) -> str:
    return subprocess.run(command, check=True, stdout=subprocess.PIPE, encoding="utf-8").stdout


def reviewed() -> List[str]:
    lines = (ROOT / "lib" / "exports.txt").read_text(encoding="utf-8").splitlines()
    return [line for line in lines if line and not line.startswith("#")]


def mapped() -> Set[str]:
    text = (ROOT / "lib" / "muslin.map").read_text(encoding="utf-8")
    node = re.search(r"(\w+) \{\s*global:(.*)local:\s*\*;\s*\};\s*$", text, re.S)
    assert node is not None and node.group(1) == NODE, f"lib/muslin.map is not one node {NODE} that hides the rest"
    return set(re.findall(r"(\w+);", node.group(2)))


def declared() -> Set[str]:
    api = json.loads((ROOT / "lib" / "abi" / "api.json").read_text(encoding="utf-8"))
    return {function["name"] for function in api["functions"]}


def exported(library: str) -> Set[str]:
    """Names with their version node, the node itself left out."""
    rows = [line.split() for line in run("nm", "-D", "--defined-only", library).splitlines()]
    return {row[2] for row in rows if row[1] != "A"}


def differences(what: str, found: Iterable[str], wanted: Iterable[str]) -> List[str]:
    lacking = sorted(set(wanted) - set(found))
    extra = sorted(set(found) - set(wanted))
    return [f"{what} lacks {name}" for name in lacking] + [f"{what} has {name}, which the list has not"
                                                          for name in extra]


def dynamic(library: str, tag: str) -> Set[str]:
    return set(re.findall(rf"\({tag}\).*\[(.+)\]", run("readelf", "-dW", library)))


def unlisted(build_file: str, folder: str) -> List[str]:
    path = ROOT / build_file
    listed = re.findall(rf"'({folder}/\w+\.c)'", path.read_text(encoding="utf-8"))
    return differences(build_file, listed, {f"{folder}/{file.name}" for file in (path.parent / folder).glob("*.c")})


def main(arguments: List[str]) -> int:
    library, = arguments
    names = reviewed()
    wrong = []
    if names != sorted(set(names)):
        wrong.append("lib/exports.txt is not sorted, or names something twice")
    wrong += differences("a header", declared(), names)
    wrong += differences("lib/muslin.map", mapped(), names)
    wrong += differences("the library", exported(library), {f"{name}@@{NODE}" for name in names})
    if dynamic(library, "SONAME") != {SONAME}:
        wrong.append(f"the soname is {dynamic(library, 'SONAME')}, not {SONAME}")
    wrong += differences("NEEDED", dynamic(library, "NEEDED"), MAY_NEED)
    wrong += unlisted("meson.build", "lib") + unlisted("tests/meson.build", "unit")
    print("\n".join(wrong + [f"{len(names)} exports under {NODE}, {len(wrong)} wrong"]))
    return 1 if wrong else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
