#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""Rules of the source that no compiler checks, for include/ and lib/.

A module includes only earlier ones; nothing is included from outside but the two headers of plain types, and stdlib.h
by the allocator. No floating point, wide type, goto or variable argument list. Lines fit 120 columns (a table of sentences
apart), functions 60 lines. Every file carries its licence, every public function says since when it exists.
"""
import re
import sys
from pathlib import Path
from typing import Iterator, List

ROOT = Path(__file__).resolve().parent.parent.parent
MODULES = ["base", "length", "seam", "accuracy", "shrinkage", "fabric", "motif", "reference", "stripset",
           "cutlist", "shape", "unit", "setting", "rounds", "fit", "finishing", "stripquilt", "supplies",
           "quilt", "solution", "pressing", "sewing", "scatter", "cutplan", "yardage"]
INSIDE = {"inside.h", "wide.h", "root.h", "surd.h", "told.h"}
OUTSIDE = {"stddef.h", "stdint.h"}
OUTSIDE_OF = {"allocator_libc.c": OUTSIDE | {"stdlib.h"}}
FORBIDDEN = re.compile(r"\b(float|double|_Complex|__int128|__float128|goto|va_list|_Thread_local|__thread|TODO|FIXME)\b"
                       r"|\b\d+\.\d*[eE]?\d*[fFlL]?\b|\b0[xX][0-9a-fA-F.]+[pP]")
COLUMNS = 120
ONE_SENTENCE_A_LINE = {"base_texts.h"}
FUNCTION_LINES = 60


def bare(text: str) -> str:
    """The code without comments and the insides of strings and characters, line for line."""
    def blank(match: "re.Match[str]") -> str:
        return re.sub(r"[^\n]", " ", match.group())
    return re.sub(r"/\*.*?\*/|//[^\n]*|\"(?:\\.|[^\"\\\n])*\"|'(?:\\.|[^'\\\n])*'", blank, text, flags=re.S)


def module_of(path: Path) -> str:
    """The module a file belongs to: its name up to the first underscore. What all modules share may know the number
    and its rounding, and nothing later."""
    name = path.stem.split("_")[0]
    return name if name in MODULES else "length"


def order_faults(path: Path, text: str) -> Iterator[str]:
    own = len(MODULES) if path.name == "muslin.h" else MODULES.index(module_of(path))
    header = path.parent.name == "muslin"
    for bracket, name in re.findall(r'#\s*include\s+(["<])([^">]+)[">]', text):
        stem = Path(name).stem.split("_")[0]
        if bracket == "<":
            if name not in OUTSIDE_OF.get(path.name, OUTSIDE):
                yield f"includes <{name}>"
        elif stem in MODULES:
            place = MODULES.index(stem)
            if place > own or (header and place == own):
                yield f"includes {name}, which comes later"
        elif name not in INSIDE:
            yield f"includes {name}, which is no module and not shared"


def function_faults(text: str) -> Iterator[str]:
    """Functions begin and end with a brace in the first column."""
    start = None
    for number, line in enumerate(text.splitlines(), 1):
        if line == "{":
            start = number
        elif line == "}" and start is not None:
            if number - start - 1 > FUNCTION_LINES:
                yield f"line {start}: a function of {number - start - 1} lines"
            start = None


def since_faults(text: str) -> Iterator[str]:
    """A function's comment is the nearest one above it; functions that follow each other closely share one."""
    for match in re.finditer(r"^MUSLIN_API [^;]*?(muslin_\w+)\(", text, re.M):
        comments = re.findall(r"/\*.*?\*/", text[:match.start()], re.S)
        if not comments or not re.search(r"\bSince\s+(?:\*\s+)?\d+\.\d+", comments[-1]):
            yield f"{match.group(1)} does not say since when it exists"


def faults(path: Path) -> Iterator[str]:
    text = path.read_text(encoding="utf-8")
    code = bare(text)
    if "SPDX-License-Identifier: MIT" not in text[:600]:
        yield "has no licence line near its top"
    for number, line in enumerate(text.splitlines(), 1):
        if len(line) > COLUMNS and path.name not in ONE_SENTENCE_A_LINE:
            yield f"line {number}: {len(line)} columns"
    for match in FORBIDDEN.finditer(code):
        yield f"line {code.count(chr(10), 0, match.start()) + 1}: {match.group()}"
    for match in re.finditer(r"TODO|FIXME", text):
        yield f"line {text.count(chr(10), 0, match.start()) + 1}: {match.group()}"
    yield from function_faults(code)
    yield from order_faults(path, text)
    yield from since_faults(text)


def main() -> int:
    paths: List[Path] = sorted((ROOT / "include" / "muslin").glob("*.h"))
    paths += sorted((ROOT / "lib").glob("*.[ch]"))
    wrong = [f"{path.relative_to(ROOT)}: {text}" for path in paths for text in faults(path)]
    print("\n".join(wrong + [f"{len(paths)} files, {len(wrong)} wrong"]))
    return 1 if wrong else 0


if __name__ == "__main__":
    sys.exit(main())
