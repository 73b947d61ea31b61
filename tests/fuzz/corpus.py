#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""Inputs that are kept, one in a line of corpus/TARGET.txt, in hexadecimal digits.

    corpus.py unpack TARGET FOLDER    writes each into a file of FOLDER, as libFuzzer reads them
    corpus.py pack TARGET FOLDER      keeps what lies there, and what was kept before
"""
import hashlib
import sys
from pathlib import Path
from typing import Set

HERE = Path(__file__).resolve().parent


def kept(target: str) -> Set[bytes]:
    path = HERE / "corpus" / f"{target}.txt"
    return {bytes.fromhex(line) for line in path.read_text(encoding="ascii").splitlines()} if path.exists() else set()


def main() -> int:
    what, target, folder = sys.argv[1], sys.argv[2], Path(sys.argv[3])
    inputs = kept(target)
    if what == "pack":
        inputs |= {path.read_bytes() for path in folder.iterdir()}
        lines = [f"{one.hex()}\n" for one in sorted(inputs, key=lambda one: (len(one), one))]
        (HERE / "corpus" / f"{target}.txt").write_text("".join(lines), encoding="ascii")
        return 0
    folder.mkdir(parents=True, exist_ok=True)
    for one in inputs:
        (folder / hashlib.sha1(one).hexdigest()[:12]).write_bytes(one)
    return 0


if __name__ == "__main__":
    sys.exit(main())
