#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""Says which exported function the golden corpus does not call, and which member of a spec it never sets.

SPEC(muslin_x_spec, ...) calls muslin_x_spec_init and sets `size`.
"""
import json
import re
import sys
from pathlib import Path

HERE = Path(__file__).resolve().parent
LIB = HERE.parent.parent / "lib"
NOT_CALLED = {"muslin_allocator_libc"}


def main() -> int:
    text = "".join(path.read_text(encoding="utf-8") for path in sorted(HERE.glob("corpus*.c")))
    code = re.sub(r"/\*.*?\*/", "", text, flags=re.S)
    called = set(re.findall(r"\b(muslin_\w+)\(", code))
    called |= {f"{name}_init" for name in re.findall(r"\bSPEC\((muslin_\w+),", code)}
    api = json.loads((LIB / "abi" / "api.json").read_text(encoding="utf-8"))
    names = {function["name"] for function in api["functions"]}
    members = {member["name"] for struct in api["structs"] if struct["name"].endswith("_spec")
               for member in struct["members"]} - {"size", "pad"}
    missing = [f"does not call {name}" for name in sorted(names - called - NOT_CALLED)]
    missing += [f"never sets {name}" for name in sorted(members - set(re.findall(r"\.(\w+) = ", code)))]
    print("\n".join([f"tests/golden {text}" for text in missing]
                    + [f"{len(names)} functions, {len(members)} members, {len(missing)} left out, "
                       f"{len(NOT_CALLED)} on purpose"]))
    return 1 if missing else 0


if __name__ == "__main__":
    sys.exit(main())
