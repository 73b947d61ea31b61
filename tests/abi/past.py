#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""Programs of the past and the library of today.

    past.py record BUILD    keeps the API as it is now in tests/abi/past/VERSION.tar.xz: once, when a version is released
    past.py check BUILD     today's library against each that is kept

BUILD is a meson build of today, with its tests. Kept are the headers, the corpus of calls (tests/golden) with what it
printed, the description of the API and the types as the compiler laid them out (abidw). Checked are: the description
(compare.py); the types again, by abidiff, which has never seen compare.py; and the old corpus, compiled with the old
headers, linked with today's library, whose figures must be the old ones, but for errors that were mended since
(MENDED). Words may change.

Then the checks themselves are checked: the newest that is kept is broken in each of the ways of CONTROLS, and every
one must be noticed; and what may grow is let grow, which must not be.

Needs abidiff and abidw (Debian: abigail-tools), gcc, and libclang's Python module.
"""
import io
import json
import re
import shutil
import subprocess
import sys
import tarfile
from pathlib import Path
from typing import Any, Callable, Dict, List, NamedTuple, Tuple

import compare
import describe_api

ROOT = Path(__file__).resolve().parent.parent.parent
PAST = ROOT / "tests" / "abi" / "past"
# All types of the headers, also enums of which only values are used, and nothing that hangs on where they lie.
DEBUG = ["-std=c11", "-O0", "-g", "-fno-eliminate-unused-debug-types", "-fPIC", "-shared", "-fvisibility=hidden"]
CHECKED_DIGESTS = ("arithmetic", "figures")
CHANGES = ROOT / "lib" / "CHANGES.md"


class Mended(NamedTuple):
    """Errors of a version that were mended: how the change log tells the last of them, and what the version's program
    prints since. That nothing else changed with it is seen by undoing it: then the program prints what it did before."""
    entry: str
    digests: Tuple[str, ...]


MENDED = {
    "1.0.0": Mended("- The drop of a sleeve and the height of a label that are below 0 are told to be more than 0",
                    ("arithmetic cce89336f2482770", "figures bec6633f6c2c4659")),
}

Record = Dict[str, Any]


class Failed(Exception):
    """A check that did not hold, as a sentence."""


def run(*command: Any, **more: Any) -> str:
    done = subprocess.run([str(word) for word in command], stdout=subprocess.PIPE, stderr=subprocess.STDOUT,
                          encoding="utf-8", check=False, **more)
    if done.returncode:
        raise Failed(f"{Path(str(command[0])).name} ended with {done.returncode}:\n{done.stdout}")
    return done.stdout


def fresh(folder: Path) -> Path:
    shutil.rmtree(folder, ignore_errors=True)
    folder.mkdir(parents=True)
    return folder


# ---- types, as the compiler laid them out ----------------------------------------------------------------------------

def stub_of(api: Record) -> str:
    """A library that has every function and does nothing: its types are those of the headers."""
    def of(value: Record) -> str:
        constant = "const " if value.get("const") else ""
        return constant + value["type"] + " " + "*" * value.get("pointer", 0)
    lines = ["#include <muslin/muslin.h>"]
    for function in api["functions"]:
        arguments = ", ".join(of(argument) + argument["name"] for argument in function["arguments"]) or "void"
        body = "" if of(function["returns"]) == "void " else " return 0; "
        lines.append(f"{of(function['returns'])}{function['name']}({arguments}) {{{body}}}")
    return "\n".join(lines) + "\n"


def types_of(include: Path, api: Record, folder: Path) -> Path:
    """The types of these headers as abidw tells them."""
    source, library, types = folder / "stub.c", folder / "libstub.so", folder / "stub.abi"
    source.write_text(stub_of(api), encoding="utf-8")
    run("gcc", *DEBUG, "-w", f"-I{include}", source, "-o", library)
    run("abidw", "--load-all-types", "--no-corpus-path", "--headers-dir", include, "--out-file", types, library)
    return types


def api_of(include: Path) -> Record:
    """The description of headers that lie elsewhere."""
    kept = describe_api.INCLUDE, describe_api.ARGS
    describe_api.INCLUDE = include
    describe_api.ARGS = [word for word in kept[1] if not word.startswith("-I")] + [f"-I{include}"]
    try:
        return describe_api.describe()
    finally:
        describe_api.INCLUDE, describe_api.ARGS = kept


# ---- what is kept of a version ---------------------------------------------------------------------------------------

def kept_files(build: Path, work: Path) -> List[Tuple[str, Path]]:
    include = ROOT / "include"
    files = [(f"include/muslin/{path.name}", path) for path in sorted((include / "muslin").glob("*.h"))]
    files += [(f"golden/{path.name}", path) for path in sorted((ROOT / "tests" / "golden").glob("*.[ch]"))
              if path.name != "wasm.c"]
    digest = work / "digest.txt"
    digest.write_text(run(build / "tests" / "golden"), encoding="utf-8")
    return files + [("golden/members.h", build / "tests" / "members.h"), ("digest.txt", digest),
                    ("api.json", ROOT / "lib" / "abi" / "api.json"),
                    ("types.abi", types_of(include, api_of(include), work))]


def record(build: Path, work: Path) -> int:
    """The same tree gives the same file; none is written twice."""
    version = api_of(ROOT / "include")["version"]
    target = PAST / f"{version}.tar.xz"
    if target.exists():
        raise Failed(f"{version} is recorded already; what is released does not change")
    bytes_of = io.BytesIO()
    with tarfile.open(fileobj=bytes_of, mode="w:xz", preset=9, format=tarfile.USTAR_FORMAT) as tar:
        for name, path in kept_files(build, work):
            entry = tarfile.TarInfo(name)
            entry.size = path.stat().st_size
            with path.open("rb") as file:
                tar.addfile(entry, file)
    PAST.mkdir(exist_ok=True)
    target.write_bytes(bytes_of.getvalue())
    print(f"{target.name}: {len(bytes_of.getvalue())} bytes")
    return 0


class Kept(NamedTuple):
    """A version of the past, unpacked."""
    version: str
    folder: Path

    @property
    def include(self) -> Path:
        return self.folder / "include"

    @property
    def api(self) -> Record:
        return json.loads((self.folder / "api.json").read_text(encoding="utf-8"))

    @property
    def digest(self) -> str:
        return (self.folder / "digest.txt").read_text(encoding="utf-8")


def versions(work: Path) -> List[Kept]:
    """The oldest first."""
    kept = []
    for path in PAST.glob("*.tar.xz"):
        version = path.name[:-len(".tar.xz")]
        folder = fresh(work / version)
        with tarfile.open(path) as tar:
            tar.extractall(folder)
        kept.append(Kept(version, folder))
    return sorted(kept, key=lambda one: [int(part) for part in one.version.split(".")])


# ---- the three checks ------------------------------------------------------------------------------------------------

def check_description(old: Record, new: Record) -> None:
    wrong = compare.breaks(old, new)
    if wrong:
        raise Failed("\n".join(wrong))


def may_grow(old: Record, new: Record) -> str:
    """Suppressions for abidiff. Named are the structs that have grown alone: one that names all of them would hide a
    member's new type as well, in any struct to which nothing has come."""
    before = compare.by_name(old["structs"])
    grown = [struct["name"] for struct in new["structs"]
             if struct["name"] in before and len(struct["members"]) > len(before[struct["name"]]["members"])]
    return "\n".join(f"[suppress_type]\nname = {name}\nhas_data_member_inserted_at = end\n" for name in grown)


def check_types(kept: Kept, new: Record, types: Path) -> None:
    """Any status but 0 is a break: abidiff's own grades call a member put in between harmless."""
    suppressions = types.with_suffix(".ini")
    suppressions.write_text(may_grow(kept.api, new), encoding="utf-8")
    run("abidiff", "--no-added-syms", "--non-reachable-types", "--suppressions", suppressions,
        kept.folder / "types.abi", types)


def figures_of(kept: Kept) -> List[str]:
    """What the version's program must print: what it did, or what it does since an error was mended."""
    mended = MENDED.get(kept.version)
    if mended and mended.entry not in CHANGES.read_text(encoding="utf-8"):
        raise Failed(f"{CHANGES.name} does not tell what was mended since {kept.version}: {mended.entry}")
    printed = mended.digests if mended else kept.digest.splitlines()
    return [line for line in printed if line.split()[0] in CHECKED_DIGESTS]


def check_program(kept: Kept, library: Path) -> None:
    golden = kept.folder / "golden"
    program = kept.folder / "program"
    sources = [path for path in sorted(golden.glob("*.c"))]
    run("gcc", "-std=c11", "-O1", f"-I{kept.include}", f"-I{golden}", *sources, library, "-o", program,
        f"-Wl,-rpath,{library.parent}")
    lines = run(program).splitlines()
    wanted = figures_of(kept)
    if len(wanted) != len(CHECKED_DIGESTS) or any(line not in lines for line in wanted):
        raise Failed(f"the program of {kept.version} should print {wanted} and prints {lines}")


# ---- the checks checked ----------------------------------------------------------------------------------------------

class Control(NamedTuple):
    """What is done to one header of the past, and whether anybody may notice."""
    name: str
    header: str
    change: Callable[[str], str]
    breaks: bool


def swap_rounding(text: str) -> str:
    """Two enumerators change places, or values."""
    found = re.search(r"(enum muslin_direction \{)([^}]*)(\};)", text)
    assert found is not None
    numbers = re.findall(r"= (\d+)", found.group(2))
    swapped = found.group(2).replace(f"= {numbers[0]},", "= @,", 1).replace(f"= {numbers[1]},", f"= {numbers[0]},", 1)
    return text.replace(found.group(2), swapped.replace("= @,", f"= {numbers[1]},"))


def replaced(pattern: str, by: str) -> Callable[[str], str]:
    def change(text: str) -> str:
        changed, times = re.subn(pattern, by, text, count=1, flags=re.S)
        assert times == 1, f"no {pattern} in this header"
        return changed
    return change


YIELD = r"(struct muslin_yield_spec \{.*?)"
CONTROLS = [
    Control("a member is put in between", "stripset.h", replaced(YIELD + r"(\n    muslin_len )", r"\1\n    int64_t more;\2"),
            True),
    Control("a member changes its type", "stripset.h", replaced(YIELD + r"muslin_len ", r"\1uint64_t "), True),
    Control("a member is gone", "stripset.h", replaced(YIELD + r"\n    muslin_len [^\n]*", r"\1"), True),
    Control("two enumerators change places", "length.h", swap_rounding, True),
    Control("a function is gone", "length.h", replaced(r"MUSLIN_API muslin_status muslin_length_add\([^;]*;", ""), True),
    Control("an argument changes its type", "length.h",
            replaced(r"(MUSLIN_API muslin_status muslin_length_add\()muslin_len ", r"\1int32_t "), True),
    Control("a constant changes", "base.h", replaced(r"(#define MUSLIN_TICKS_PER_MM INT64_C\()\d+", r"\g<1>321"), True),
    Control("a member at a struct's end", "stripset.h", replaced(YIELD + r"\n\};", r"\1\n    int64_t more;\n};"), False),
    Control("a function more", "length.h",
            replaced(r"(MUSLIN_API muslin_status muslin_length_add\()", r"MUSLIN_API uint32_t muslin_more(void);\n\1"),
            False),
    Control("an enumerator more", "length.h", replaced(r"(enum muslin_direction \{)", r"\1\n    MUSLIN_DIRECTION_MORE = 99,"),
            False),
]
# Initial values belong to a struct's members: a control that changes members drops the macro, and its description.
INIT = replaced(r"#define MUSLIN_YIELD_SPEC_INIT [^\n]*(\\\n[^\n]*)*\n", "")


def notices(kept: Kept, control: Control, folder: Path) -> List[str]:
    """Which checks complain of the change."""
    shutil.copytree(kept.include, folder / "include")
    header = folder / "include" / "muslin" / control.header
    text = header.read_text(encoding="utf-8")
    if control.header == "stripset.h":
        text = INIT(text)
    header.write_text(control.change(text), encoding="utf-8")
    old, new = kept.api, api_of(folder / "include")
    old["inits"] = [init for init in old["inits"] if init["name"] != "MUSLIN_YIELD_SPEC_INIT"]
    complaints = []
    for name, check in (("the description", lambda: check_description(old, new)),
                        ("the types", lambda: check_types(kept, new, types_of(folder / "include", new, folder)))):
        try:
            check()
        except Failed:
            complaints.append(name)
    return complaints


def check_controls(kept: Kept, work: Path) -> None:
    """Macros have no types: a constant is seen by the description alone."""
    for number, control in enumerate(CONTROLS):
        found = notices(kept, control, fresh(work / f"control{number}"))
        wanted = ["the description", "the types"] if control.breaks else []
        if control.name == "a constant changes":
            wanted = wanted[:1]
        if found != wanted:
            raise Failed(f"{control.name}: noticed by {found}, and should be by {wanted}")


def check(build: Path, work: Path) -> int:
    kept = versions(work)
    if not kept:
        raise Failed("no version is recorded")
    include = ROOT / "include"
    now = api_of(include)
    types = types_of(include, now, work)
    for one in kept:
        check_description(one.api, now)
        check_types(one, now, types)
        check_program(one, build / "libmuslin.so.1")
    check_controls(kept[-1], work)
    print(f"{', '.join(one.version for one in kept)} run on {now['version']}; {len(CONTROLS)} controls")
    return 0


def main(arguments: List[str]) -> int:
    what, build = arguments
    build = Path(build).resolve()
    try:
        return {"record": record, "check": check}[what](build, fresh(build / "past"))
    except Failed as failed:
        print(failed)
        return 1


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
