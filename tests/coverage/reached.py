#!/usr/bin/env python3
"""reached.py - is every line, branch and condition of lib/ reached by tests? Says where not; fails then.

    reached.py COVERAGE.json        from llvm-cov-19 export --skip-functions

A condition is covered (MC/DC) where it alone has been seen to change its decision. Clang leaves decisions out that it
cannot follow, with no more than a warning; so every && and || of the source must be in one. What no call can reach is
excepted in the source, by a comment with UNREACHED: and the reason on the line where it begins; an exception that is
reached is a mistake too, and so is a number of them that is not the one recorded here.

SPDX-License-Identifier: MIT"""
import collections
import json
import os
import re
import sys

EXCEPTED = 2  # a person looks at each


def unreached(file):
    """(line, what) of all that is not reached."""
    for line, _column, count, has_count, is_entry, is_gap in file["segments"]:
        if has_count and is_entry and not is_gap and count == 0:
            yield line, "never run"
    # What several sources include is listed for each of them.
    branches, decisions = collections.defaultdict(list), collections.defaultdict(list)
    for *place, true, false, _file, _expansion, _kind in file["branches"]:
        branches[tuple(place)].append((true, false))
    for *place, _file, _kind, conditions in file["mcdc_records"]:
        decisions[tuple(place)].append(conditions)
    for place, counts in branches.items():
        for count, name in zip(map(sum, zip(*counts)), ("true", "false")):
            if count == 0:
                yield place[0], f"never {name}"
    for place, covered in decisions.items():
        for number, seen in enumerate(zip(*covered), 1):
            if not any(seen):
                yield place[0], f"condition {number} of {len(covered[0])} decides nothing"


def not_followed(file, source):
    """How many && and || are in no decision."""
    code = re.sub(r'/\*.*?\*/|"(?:\\.|[^"\\])*"|^#.*?$', "", source, flags=re.S | re.M)
    followed = {tuple(place): len(conditions) - 1 for *place, _file, _kind, conditions in file["mcdc_records"]}
    return len(re.findall(r"&&|\|\|", code)) - sum(followed.values())


def main():
    with open(sys.argv[1], encoding="utf-8") as export:
        data = json.load(export)["data"][0]
    problems, exceptions = [], []
    for file in data["files"]:
        name = os.path.relpath(file["filename"])
        with open(name, encoding="utf-8") as opened:
            source = opened.read()
        lines = source.split("\n")
        left = not_followed(file, source)
        problems += [f"{name}: {left} && or || in decisions that clang cannot follow"] if left else []
        excepted = {number for number, line in enumerate(lines, 1) if "UNREACHED:" in line}
        found = sorted(set(unreached(file)))
        problems += [f"{name}:{line}: {what}: {lines[line - 1].strip()}" for line, what in found if line not in excepted]
        for number in sorted(excepted):
            exceptions.append(f"{name}:{number}: {lines[number - 1].strip()}")
            if number not in {line for line, _what in found}:
                problems.append(f"{name}:{number}: excepted, but reached")
    if len(exceptions) != EXCEPTED:
        problems.append(f"{len(exceptions)} exceptions, not {EXCEPTED}")
    print("exceptions:", *exceptions, "not reached:", *problems or ["nothing"], sep="\n  ")
    counts = (f"{data['totals'][what]['covered']} of {data['totals'][what]['count']} {name}"
              for what, name in (("lines", "lines"), ("branches", "branches"), ("mcdc", "conditions")))
    print(", ".join(counts) + f", {len(exceptions)} exceptions")
    return 1 if problems else 0


if __name__ == "__main__":
    sys.exit(main())
