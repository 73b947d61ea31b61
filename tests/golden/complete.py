#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""Says which exported function the golden corpus does not call. SPEC(muslin_x_spec, ...) calls muslin_x_spec_init."""
import re
import sys
from pathlib import Path

HERE = Path(__file__).resolve().parent
EXPORTS = HERE.parent.parent / "lib" / "exports.txt"
NOT_CALLED = {"muslin_allocator_libc"}


def main() -> int:
    text = (HERE / "corpus.c").read_text(encoding="utf-8")
    code = re.sub(r"/\*.*?\*/", "", text, flags=re.S)
    called = set(re.findall(r"\b(muslin_\w+)\(", code))
    called |= {f"{name}_init" for name in re.findall(r"\bSPEC\((muslin_\w+),", code)}
    names = {line for line in EXPORTS.read_text(encoding="utf-8").split() if line.startswith("muslin_")}
    missing = sorted(names - called - NOT_CALLED)
    print("\n".join([f"tests/golden/corpus.c does not call {name}" for name in missing]
                    + [f"{len(names)} functions, {len(missing)} not called, {len(NOT_CALLED)} on purpose"]))
    return 1 if missing else 0


if __name__ == "__main__":
    sys.exit(main())
