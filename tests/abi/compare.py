#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""What a program that was compiled against an older description of the API (lib/abi/api.json of a release) would miss or
misread in a newer one.

    compare.py OLD NEW    prints a line for each break; exits 1 when there is one

May come: functions, enums, enumerators, constants, structs, members at a struct's end, flags, a greater limit (a constant
whose name ends in _MAX). May not: everything else. A member of a struct that says its own size may also take the place
of what was called `pad`.
"""
import json
import sys
from pathlib import Path
from typing import Any, Callable, Dict, List

Record = Dict[str, Any]


def by_name(rows: List[Record]) -> Dict[str, Record]:
    return {row["name"]: row for row in rows}


def functions(old: Record, new: Record) -> List[str]:
    """Types, not names of arguments: those are not part of what is compiled."""
    def types(function: Record) -> List[Record]:
        return [function["returns"]] + [{**argument, "name": ""} for argument in function["arguments"]]
    return [] if types(old) == types(new) else ["takes or returns something else"]


def values(old: Record, new: Record) -> List[str]:
    return [f"{name} was {value} and is {new['values'].get(name, 'gone')}" for name, value in old["values"].items()
            if new["values"].get(name) != value]


def is_moved(old: Record, new: Record) -> bool:
    """What is known of a member besides may grow: a name for its values, say."""
    return any(old.get(key) != new.get(key) for key in ("name", "type", "pointer", "function", "count", "offset"))


def structs(old: Record, new: Record) -> List[str]:
    wrong = []
    for was, member in zip(old["members"], new["members"]):
        takes_pad = was["name"].startswith("pad") and was["offset"] == member["offset"] and was["type"] == member["type"]
        if is_moved(was, member) and not takes_pad:
            wrong.append(f"{was['name']} is not where or what it was")
    if len(new["members"]) < len(old["members"]):
        wrong.append("lacks members")
    if old.get("frozen") and new["members"] != old["members"]:
        wrong.append("is frozen and has changed")
    gone = set(old.get("flags", [])) - set(new.get("flags", []))
    return wrong + [f"knows {flag} no more" for flag in sorted(gone)]


def constants(old: Record, new: Record) -> List[str]:
    """The version changes with each release."""
    if old["name"].startswith("MUSLIN_VERSION") or old["value"] == new["value"]:
        return []
    if old["name"].endswith("_MAX") and old["value"] < new["value"]:
        return []
    return [f"was {old['value']} and is {new['value']}"]


def same(old: Record, new: Record) -> List[str]:
    old, new = ({key: value for key, value in row.items() if key != "header"} for row in (old, new))
    return [] if old == new else [f"was {old} and is {new}"]


PARTS: Dict[str, Callable[[Record, Record], List[str]]] = {
    "types": same, "constants": constants, "enums": values, "structs": structs, "handles": same, "inits": values,
    "functions": functions,
}


def breaks(old: Record, new: Record) -> List[str]:
    wrong = []
    for part, differ in PARTS.items():
        now = by_name(new[part])
        for name, row in by_name(old[part]).items():
            wrong += [f"{name} {what}" for what in (differ(row, now[name]) if name in now else ["is gone"])]
    return wrong


def main(arguments: List[str]) -> int:
    old, new = (json.loads(Path(name).read_text(encoding="utf-8")) for name in arguments)
    wrong = breaks(old, new)
    print("\n".join(wrong + [f"{old['version']} to {new['version']}: {len(wrong)} breaks"]))
    return 1 if wrong else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
