#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""reached.py FOLDER: every export is reached by a fuzz target from the kept corpus.

The targets leave in FOLDER what they called, how often, and how often the call succeeded. reached.txt lists each export
with the target that reaches it; an export whose calls all fail from the kept corpus is marked so. `reached.py FOLDER
--write` writes the list anew."""
import sys
from pathlib import Path
from typing import Dict

HERE = Path(__file__).resolve().parent
EXPORTS = HERE.parent.parent / "lib" / "exports.txt"
TARGETS = ("values", "tree")
HEAD = """# Each export, the target of tests/fuzz that calls it, and whether a call from the kept corpus succeeds ("answered")
# or all are refused ("refused"). Written by tests/fuzz/reached.py.
"""


def reached(folder: Path) -> Dict[str, str]:
    found = {}
    for target in TARGETS:
        for line in (folder / f"{target}.reached").read_text(encoding="utf-8").splitlines():
            name, _, answered = line.split()
            found[name] = f"{target} {'answered' if int(answered) else 'refused'}"
    return found


def main() -> int:
    folder = Path(sys.argv[1])
    exports = [line for line in EXPORTS.read_text(encoding="utf-8").splitlines() if line and not line.startswith("#")]
    found = reached(folder)
    missing = [name for name in exports if name not in found]
    if missing:
        print(f"no target reaches {', '.join(missing)} from the kept corpus")
        return 1
    text = HEAD + "".join(f"{name} {found[name]}\n" for name in exports)
    kept = HERE / "reached.txt"
    if sys.argv[2:] == ["--write"]:
        kept.write_text(text, encoding="utf-8")
    elif kept.read_text(encoding="utf-8") != text:
        print("tests/fuzz/reached.txt is not what the corpus reaches: python3 tests/fuzz/reached.py FOLDER --write")
        return 1
    refused = [name for name in exports if found[name].endswith("refused")]
    print(f"{len(exports)} exports reached, {len(exports) - len(refused)} answered")
    return 0


if __name__ == "__main__":
    sys.exit(main())
