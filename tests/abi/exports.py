#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""Holds the lists of exports equal: the functions of the headers (lib/abi/api.json), lib/exports.txt, which a person
reviews, the linkers' lists, and what the shared library really exports.

    exports.py --write    writes the linkers' lists: lib/muslin.map (ELF), lib/muslin.def (Windows), lib/muslin.exp (Mach-O)
    exports.py LIBRARY    the built libmuslin.so.1

A function's version node is that of the version it came with, so that a program that asks for something newer than the
library at hand is refused when it starts and not in the middle. Also checks the soname, that only the C library is needed (by the allocator alone), and that no source
file, of the library or of the unit tests, is left out of its meson.build.
"""
import json
import re
import subprocess
import sys
from pathlib import Path
from typing import Callable, Dict, Iterable, List, Set

ROOT = Path(__file__).resolve().parent.parent.parent
SONAME = "libmuslin.so.1"
FIRST = "1.0"
LICENCE = "SPDX-License-Identifier: MIT"
MAY_NEED = {"libc.so.6"}


def run(*command: str) -> str:
    return subprocess.run(command, check=True, stdout=subprocess.PIPE, encoding="utf-8").stdout


def reviewed() -> List[str]:
    lines = (ROOT / "lib" / "exports.txt").read_text(encoding="utf-8").splitlines()
    return [line for line in lines if line and not line.startswith("#")]


def described() -> List[Dict[str, str]]:
    return json.loads((ROOT / "lib" / "abi" / "api.json").read_text(encoding="utf-8"))["functions"]


def node_of(since: str) -> str:
    """MUSLIN_1 for all of the first release."""
    return f"MUSLIN_{'1' if number(since) <= number(FIRST) else since}"


def number(version: str) -> List[int]:
    return [int(part) for part in version.split(".")]


def nodes() -> Dict[str, List[str]]:
    """Names by version node, the oldest first."""
    found: Dict[str, List[str]] = {}
    for function in sorted(described(), key=lambda one: (number(one["since"]), one["name"])):
        found.setdefault(node_of(function["since"]), []).append(function["name"])
    return {node: sorted(names) for node, names in found.items()}


# ---- the linkers' lists ----------------------------------------------------------------------------------------------

def elf() -> str:
    text = ("/* muslin.map - the linker's export list: one version node for each release that brought functions. Written by\n"
            f" * tests/abi/exports.py.\n *\n * {LICENCE} */\n")
    before = ""
    for node, names in nodes().items():
        lines = "".join(f"    {name};\n" for name in names)
        rest = "" if before else "local:\n    *;\n"
        text += f"{node} {{\nglobal:\n{lines}{rest}}}{' ' + before if before else ''};\n"
        before = node
    return text


def windows() -> str:
    return (f"; muslin.def - the same for Windows. Written by tests/abi/exports.py.\n; {LICENCE}\nEXPORTS\n" +
            "".join(f"    {name}\n" for name in reviewed()))


def mach_o() -> str:
    return (f"# muslin.exp - the same for Mach-O. Written by tests/abi/exports.py.\n# {LICENCE}\n" +
            "".join(f"_{name}\n" for name in reviewed()))


LISTS: Dict[str, Callable[[], str]] = {"muslin.map": elf, "muslin.def": windows, "muslin.exp": mach_o}


def outdated() -> List[str]:
    return [f"lib/{name} is not current: run tests/abi/exports.py --write" for name, text in LISTS.items()
            if not (ROOT / "lib" / name).exists() or (ROOT / "lib" / name).read_text(encoding="utf-8") != text()]


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
    if arguments == ["--write"]:
        for name, text in LISTS.items():
            (ROOT / "lib" / name).write_text(text(), encoding="utf-8")
        return 0
    library, = arguments
    names = reviewed()
    wrong = []
    if names != sorted(set(names)):
        wrong.append("lib/exports.txt is not sorted, or names something twice")
    wrong += differences("a header", {function["name"] for function in described()}, names)
    wrong += outdated()
    wrong += differences("the library", exported(library), {f"{name}@@{node}" for node, of in nodes().items()
                                                            for name in of})
    if dynamic(library, "SONAME") != {SONAME}:
        wrong.append(f"the soname is {dynamic(library, 'SONAME')}, not {SONAME}")
    wrong += differences("NEEDED", dynamic(library, "NEEDED"), MAY_NEED)
    wrong += unlisted("meson.build", "lib") + unlisted("tests/meson.build", "unit")
    print("\n".join(wrong + [f"{len(names)} exports under {', '.join(nodes())}, {len(wrong)} wrong"]))
    return 1 if wrong else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
