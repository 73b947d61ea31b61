#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""Everything public is documented: each constant, type, enum and its values, struct and its members, and each function.

usage: documented.py [INCLUDE_FOLDER]      (by default include/muslin)
       documented.py --controls            takes every comment away in turn, and fails where that is not missed

A function's comment says since when it exists and has an example; whether that runs is for tests/consumers/examples.py.
Its failures, its cost and which threads may call it stand there too, or once for all at the head of its header, or
in base.h. lib/doc/comments.py says which comment speaks for what; the manual pages and the HTML are made by the same
rules, so that what passes here is what a reader finds there.
"""
import re
import sys
from pathlib import Path
from typing import Dict, Iterator, List

ROOT = Path(__file__).resolve().parent.parent.parent
sys.path.insert(0, str(ROOT / "lib" / "doc"))
import comments  # noqa: E402  # pylint: disable=wrong-import-position

Items = List[comments.Item]
SINCE = re.compile(r"\bSince \d+\.\d+")
FAILURE = re.compile(r"\bMUSLIN_ERR_|\b[Ss]tatus")
COST = re.compile(r"\b[Cc]onstant time|\bO\(|\b[Oo]ne (?:pass|step)\b|\b[Tt]ime(?: and memory)?(?::| follows| grows)")
INITIAL = "Initial"  # the entry of base.h that speaks for all ..._init() calls, by the example of one that it names


def function_faults(item: comments.Item, comment: str, once: Dict[str, str], base: Dict[str, str]) -> Iterator[str]:
    name, comment = item.name, comments.flowing(comment)
    initial = name.endswith("_init") and base.get(INITIAL, "")
    if not comment:
        yield f"{name} has no comment"
        return
    if not SINCE.search(comment):
        yield f"{name} does not say since when it exists"
    if "Example: " not in comment and not (initial and f"{name}()" not in initial and "The example of" in initial):
        yield f"{name} has no example"
    told = FAILURE.search(comment) or "Statuses" in once or (initial and FAILURE.search(initial))
    if item.text.startswith("muslin_status") and not told:
        yield f"{name} does not say how it fails"
    if not COST.search(comment) and "Cost" not in once and not (initial and COST.search(initial)):
        yield f"{name} does not say what it costs"
    if "Threads" not in base:
        yield f"{name} does not say which threads may call it"


def item_faults(items: Items) -> Iterator[str]:
    spoken = {**comments.of_structs(items), **comments.of_enums(items)}
    for item in items:
        comment = spoken.get(item.name, item.comment)
        if item.kind in ("define", "typedef", "enum", "struct", "handle") and not comment:
            yield f"{item.name} has no comment"
        for name, said in comments.of_members(item).items():
            if not said:
                yield f"{item.name}: {name} has no comment"


def handle_faults(items: Items, once: Dict[str, str]) -> Iterator[str]:
    """What base.h says of threads holds for plain calls; who hands out handles says what holds for those."""
    for item in items:
        if item.kind == "handle" and "Threads" not in once:
            yield f"{item.name} is a handle, and its header does not say which threads may use it"


def faults(text: str, base: Dict[str, str]) -> List[str]:
    """What a header does not say. base is what base.h says of everything."""
    items = comments.read(text)
    once, shared = comments.said_once(items), comments.shared(items)
    wrong = list(item_faults(items)) + list(handle_faults(items, once))
    for item in items:
        if item.kind == "function":
            wrong += function_faults(item, shared[item.name], once, base)
    return wrong


def conventions(folder: Path) -> Dict[str, str]:
    return comments.said_once(comments.read((folder / "base.h").read_text(encoding="utf-8")))


def speaking(text: str) -> Iterator["re.Match[str]"]:
    """The comments that speak for something: not those between two empty lines, nor those beside flags and pads."""
    for found in comments.COMMENT.finditer(text):
        line = text[text.rfind("\n", 0, found.start()) + 1:found.start()]
        alone = not line and text.startswith(("\n\n", "\n#ifndef"), found.end())
        if not alone and not re.search(r"\b(size|flags|pad\w*)[;,] *$", line):
            yield found


def controls(folder: Path) -> bool:
    """Takes every speaking comment away, alone, in a copy of its header. A function's must be missed; of others a few
    are not, because another one speaks for the same: a struct's functions, or the member before that is alike."""
    base = conventions(folder)
    counts = {"missed": 0, "not missed": 0, "of functions not missed": 0}
    for path in sorted(folder.glob("*.h")):
        text = path.read_text(encoding="utf-8")
        before = len(faults(text, base))
        for found in speaking(text):
            without = text[:found.start()] + re.sub(r"[^\n]", " ", found.group()) + text[found.end():]
            missed = len(faults(without, base)) > before
            counts["missed" if missed else "not missed"] += 1
            if not missed and text.startswith("\nMUSLIN_API", found.end()):
                counts["of functions not missed"] += 1
                print(f"{path.name}:{text.count(chr(10), 0, found.start()) + 1}: {found.group()}")
    print("comments taken away one by one:", ", ".join(f"{count} {what}" for what, count in counts.items()))
    return counts["of functions not missed"] == 0 and counts["missed"] > 4 * counts["not missed"]


def main(arguments: List[str]) -> int:
    if arguments == ["--controls"]:
        return 0 if controls(ROOT / "include" / "muslin") else 1
    folder = Path(arguments[0]) if arguments else ROOT / "include" / "muslin"
    base = conventions(folder)
    wrong = [f"{path.name}: {text}" for path in sorted(folder.glob("*.h"))
             for text in faults(path.read_text(encoding="utf-8"), base)]
    print("\n".join(wrong + [f"{len(list(folder.glob('*.h')))} headers, {len(wrong)} things not documented"]))
    return 1 if wrong else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
