#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""Looks into the library's object files.

    objects.py 64|32 OBJECT ...    what the target's word is, and all objects of the library

Nothing may be writable or need relocating at run time: .data, .bss and .data.rel.ro are empty. Outside the library
only the four memory functions that a compiler may call by itself are imported; on a 32-bit target also the compiler's
own 64-bit arithmetic; and malloc, realloc and free by the one object that holds the allocator. What objects share
begins with muslin_ or msl_, so that no name of a program meets one of a static library.
"""
import re
import subprocess
import sys
from typing import Dict, List, Set

EMPTY = re.compile(r"\.(data|bss|data\.rel\.ro|tdata|tbss)(\..*)?$")
MEMORY = {"memcpy", "memmove", "memset", "memcmp"}
ARITHMETIC = {"__divdi3", "__moddi3", "__udivdi3", "__umoddi3", "__divmoddi4", "__udivmoddi4", "__muldi3", "__ashldi3",
              "__ashrdi3", "__lshrdi3"}
LINKER = {"_GLOBAL_OFFSET_TABLE_"}
ALLOCATOR = {"malloc", "realloc", "free"}


def run(*command: str) -> str:
    return subprocess.run(command, check=True, stdout=subprocess.PIPE, encoding="utf-8").stdout


def sections(name: str) -> Dict[str, int]:
    """Names and bytes. readelf -S prints: [number] name type address offset size ..."""
    rows = re.findall(r"^\s*\[\s*\d+\]\s+(\S+)\s+[A-Z_]+\s+[0-9a-f]+\s+[0-9a-f]+\s+([0-9a-f]+)", run("readelf", "-SW", name),
                      re.M)
    return {section: int(size, 16) for section, size in rows}


def symbols(name: str, *which: str) -> Set[str]:
    return {line.split()[-1] for line in run("nm", *which, name).splitlines()}


def main(arguments: List[str]) -> int:
    word, *objects = arguments
    allowed = MEMORY | LINKER | (ARITHMETIC if word == "32" else set())
    for name in objects:
        allowed = allowed | symbols(name, "--defined-only")
    wrong = []
    for name in objects:
        found = sections(name)
        if ".text" not in found:
            wrong.append(f"{name}: no sections read")
        wrong += [f"{name}: {section} holds {size} bytes" for section, size in found.items()
                  if EMPTY.match(section) and size > 0]
        wrong += [f"{name}: {symbol} is shared and begins with neither muslin_ nor msl_"
                  for symbol in symbols(name, "--extern-only", "--defined-only")
                  if not symbol.startswith(("muslin_", "msl_", "__x86."))]  # the last are the compiler's own
        foreign = symbols(name, "--undefined-only") - allowed
        if "allocator_libc" in name:
            foreign -= ALLOCATOR
        if foreign:
            wrong.append(f"{name}: imports {', '.join(sorted(foreign))}")
    print("\n".join(wrong + [f"{len(objects)} objects, {len(wrong)} wrong"]))
    return 1 if wrong or not objects else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
