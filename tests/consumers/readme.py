#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""Runs the programs in a Markdown file and compares what they print with what the file says they print.

usage: readme.py BUILD [FILE.md ...]     (the README when no file is named)

A ```c or ```python block is a whole program; the ```text block that follows it holds its output, exactly. The C program
is built as the README tells a reader to, with pkg-config, against the install that tests/consumers/run has staged in
BUILD; the Python one imports the binding from the checkout and is shown the same library.
"""

import difflib
import os
import pathlib
import re
import shlex
import subprocess
import sys
import tempfile

ROOT = pathlib.Path(__file__).resolve().parent.parent.parent
FENCE = re.compile(r"^```(?P<language>\w*)[^\n]*\n(?P<body>.*?)^```[ \t]*$", re.MULTILINE | re.DOTALL)
LANGUAGES = ("c", "python")
WARNINGS = ["-std=c11", "-Wall", "-Wextra", "-Wpedantic", "-Werror"]


class Wrong(Exception):
    """The file and its programs disagree, or cannot be compared."""


def environment(build):
    """What a program needs to find the staged library."""
    staged = sorted((build / "consumers" / "stage").rglob("muslin.pc"))
    if not staged:
        raise Wrong(f"nothing is staged in {build}: run tests/consumers/run first")
    libraries = staged[0].parent.parent
    return dict(os.environ, PKG_CONFIG_LIBDIR=str(staged[0].parent),
                PKG_CONFIG_SYSROOT_DIR=str(build / "consumers" / "stage"), LD_LIBRARY_PATH=str(libraries),
                MUSLIN_LIBRARY=str(libraries / "libmuslin.so.1"), PYTHONPATH=str(ROOT / "bindings" / "python"),
                PYTHONDONTWRITEBYTECODE="1")


def run(command, env):
    done = subprocess.run(command, env=env, capture_output=True, text=True, timeout=60)
    if done.returncode != 0:
        raise Wrong(f"{shlex.join(command)} ended with {done.returncode}\n{done.stdout}{done.stderr}")
    return done.stdout


def run_c(source, folder, env):
    flags = shlex.split(run(["pkg-config", "--cflags", "--libs", "muslin"], env))
    run(["cc", *WARNINGS, str(source), *flags, "-o", str(folder / "program")], env)
    return run([str(folder / "program")], env)


def run_python(source, folder, env):
    return run([sys.executable, str(source)], env)


def blocks(text):
    for found in FENCE.finditer(text):
        yield found["language"], found["body"], text.count("\n", 0, found.start()) + 1


def programs(text):
    """(language, source, output, line) of every program; one without its output is an error."""
    before = None
    for block in [*blocks(text), ("", "", 0)]:
        if before and block[0] != "text":
            raise Wrong(f"line {before[2]}: no ```text block with the output follows this ```{before[0]} block")
        if before:
            yield before[0], before[1], block[1], before[2]
        before = block if block[0] in LANGUAGES else None


def check(path, env):
    """The languages of the programs that ran as the file says."""
    languages = []
    for language, source, expected, line in programs(path.read_text(encoding="utf-8")):
        with tempfile.TemporaryDirectory() as name:
            program = pathlib.Path(name) / ("main.c" if language == "c" else "main.py")
            program.write_text(source, encoding="utf-8")
            printed = (run_c if language == "c" else run_python)(program, program.parent, env)
        if printed != expected:
            change = difflib.unified_diff(expected.splitlines(True), printed.splitlines(True), "written", "printed")
            raise Wrong(f"line {line}: the output differs\n{''.join(change)}")
        languages.append(language)
    missing = set(LANGUAGES) - set(languages)
    if missing:
        raise Wrong(f"no program in {' or '.join(sorted(missing))}")
    return languages


def main():
    build = pathlib.Path(sys.argv[1]).resolve()
    files = [pathlib.Path(name) for name in sys.argv[2:]] or [ROOT / "README.md"]
    failed = 0
    for path in files:
        try:
            languages = check(path, environment(build))
            print(f"{path.name}: {len(languages)} programs ran and printed what it says")
        except Wrong as wrong:
            failed += 1
            print(f"{path.name}: {wrong}", file=sys.stderr)
    if len(files) > 1 or failed:
        print(f"{len(files) - failed} passed, {failed} failed")
    return 1 if failed else 0


if __name__ == "__main__":
    sys.exit(main())
