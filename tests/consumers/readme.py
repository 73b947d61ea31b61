#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""Runs the programs of README.md. Each block of C or Python is followed by a block of text: what the program prints.

    readme.py BUILD    a built directory of muslin in which tests/consumers/run has staged an install
"""
import os
import re
import subprocess
import sys
from pathlib import Path
from typing import Dict, List, Tuple

ROOT = Path(__file__).resolve().parent.parent.parent
WARNINGS = ["-std=c11", "-Wall", "-Wextra", "-Wpedantic", "-Wno-unused-value", "-Werror"]


def programs() -> List[Tuple[str, str, str]]:
    """(language, program, what it prints)"""
    text = (ROOT / "README.md").read_text(encoding="utf-8")
    blocks = re.findall(r"^```(\w+)\n(.*?)^```$", text, re.S | re.M)
    return [(language, code, blocks[at + 1][1] if blocks[at + 1:] and blocks[at + 1][0] == "text" else "")
            for at, (language, code) in enumerate(blocks) if language in ("c", "python")]


def run(command: List[str], environment: Dict[str, str]) -> str:
    done = subprocess.run(command, env=environment, stdout=subprocess.PIPE, stderr=subprocess.STDOUT,
                          encoding="utf-8", check=False)
    if done.returncode != 0:
        raise SystemExit(f"{' '.join(command)}\n{done.stdout}\nfailed: {done.returncode}")
    return done.stdout


def run_c(code: str, work: Path, environment: Dict[str, str]) -> str:
    stage = work / "stage"
    pc = next(stage.rglob("muslin.pc")).parent
    environment = {**environment, "PKG_CONFIG_SYSROOT_DIR": str(stage), "PKG_CONFIG_LIBDIR": str(pc),
                   "LD_LIBRARY_PATH": str(pc.parent)}
    source, program = work / "readme.c", work / "readme"
    source.write_text(code, encoding="utf-8")
    flags = run(["pkg-config", "--cflags", "--libs", "muslin"], environment).split()
    run(["gcc", *WARNINGS, str(source), "-o", str(program), *flags], environment)
    return run([str(program)], environment)


def run_python(code: str, work: Path, environment: Dict[str, str]) -> str:
    source = work / "readme_program.py"
    source.write_text(code, encoding="utf-8")
    environment = {**environment, "PYTHONPATH": str(ROOT / "bindings" / "python"), "PYTHONDONTWRITEBYTECODE": "1",
                   "MUSLIN_LIBRARY": str(work.parent / "libmuslin.so.1")}
    return run([sys.executable, str(source)], environment)


def main(arguments: List[str]) -> int:
    work = Path(arguments[0]).resolve() / "consumers"
    found = programs()
    wrong = 0
    for language, code, wanted in found:
        printed = (run_c if language == "c" else run_python)(code, work, dict(os.environ))
        if printed != wanted or not wanted:
            wrong += 1
            print(f"The {language} program prints\n{printed}and README.md says\n{wanted}")
    if {language for language, _, _ in found} != {"c", "python"}:
        wrong += 1
        print("README.md does not hold a C program and a Python program")
    print(f"{len(found)} programs, {wrong} wrong")
    return 1 if wrong else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
