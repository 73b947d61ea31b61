#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""Runs the programs in a Markdown file and compares what they print with what the file says they print.

usage: readme.py BUILD [FILE.md ...]     (the README when no file is named)

A ```c, ```cpp or ```python block is a whole program, a ```sh block some commands; the ```text block that follows it holds its
output, exactly. A block opened as ```json NAME is a file of that name, there for all blocks that follow. The C program
is built as the README tells a reader to, with pkg-config, against the install that tests/consumers/run has staged in
BUILD; the Python one imports the binding from the checkout and is shown the same library. Commands find the front ends
that the environment variables MUSLIN_CLI and MUSLIN_SHEET name; where one of them is not built, its blocks are skipped.
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
FENCE = re.compile(r"^```(?P<language>\w*) *(?P<name>\S*)[^\n]*\n(?P<body>.*?)^```[ \t]*$", re.MULTILINE | re.DOTALL)
LANGUAGES = ("c", "cpp", "python", "sh")
FRONT_ENDS = {"muslin": "MUSLIN_CLI", "muslin-sheet": "MUSLIN_SHEET"}
STAGE = ".stage"  # beside a program, leading to the install: blanks in its path would part the flags of pkg-config
WARNINGS = ["-Wall", "-Wextra", "-Wpedantic", "-Werror"]


class Wrong(Exception):
    """The file and its programs disagree, or cannot be compared."""


def environment(build):
    """What a program needs to find the staged library."""
    staged = sorted((build / "consumers" / "stage").rglob("muslin.pc"))
    if not staged:
        raise Wrong(f"nothing is staged in {build}: run tests/consumers/run first")
    libraries = staged[0].parent.parent
    paths = [str(pathlib.Path(os.environ[name]).parent) for name in FRONT_ENDS.values() if os.environ.get(name)]
    return dict(os.environ, PKG_CONFIG_LIBDIR=str(staged[0].parent),
                PKG_CONFIG_SYSROOT_DIR=STAGE, LD_LIBRARY_PATH=str(libraries),
                MUSLIN_LIBRARY=str(libraries / "libmuslin.so.1"), PYTHONPATH=str(ROOT / "bindings" / "python"),
                PYTHONDONTWRITEBYTECODE="1", PATH=os.pathsep.join([*paths, os.environ["PATH"]]))


def run(command, folder, env):
    done = subprocess.run(command, cwd=folder, env=env, stdin=subprocess.DEVNULL, capture_output=True, text=True,
                          timeout=60)
    if done.returncode != 0:
        raise Wrong(f"{shlex.join(command)} ended with {done.returncode}\n{done.stdout}{done.stderr}")
    return done.stdout


def run_compiled(source, folder, env, name, compiler):
    (folder / name).write_text(source, encoding="utf-8")
    flags = shlex.split(run(["pkg-config", "--cflags", "--libs", "muslin"], folder, env))
    run([*compiler, *WARNINGS, name, *flags, "-o", "program"], folder, env)
    return run(["./program"], folder, env)


def run_c(source, folder, env):
    return run_compiled(source, folder, env, "main.c", ["cc", "-std=c11"])


def run_cpp(source, folder, env):
    return run_compiled(source, folder, env, "main.cpp", ["c++", "-std=c++17"])


def run_python(source, folder, env):
    (folder / "main.py").write_text(source, encoding="utf-8")
    return run([sys.executable, "main.py"], folder, env)


def run_sh(source, folder, env):
    """What a terminal would show: complaints too."""
    return run(["sh", "-e", "-c", f"exec 2>&1\n{source}"], folder, env)


def is_there(source):
    """Whether the front ends that these commands use are built."""
    return all(os.access(os.environ.get(FRONT_ENDS[name], ""), os.X_OK)
               for name in re.findall(r"^(?:.*[|;] *)?(muslin(?:-sheet)?)\b", source, re.MULTILINE))


def blocks(text):
    for found in FENCE.finditer(text):
        yield found["language"], found["body"], text.count("\n", 0, found.start()) + 1, found["name"]


def programs(text):
    """(language, source, output, line) of every program, ("file", text, name, line) of every file; a program without
    its output is an error."""
    before = None
    for language, body, line, name in [*blocks(text), ("", "", 0, "")]:
        if before and language != "text":
            raise Wrong(f"line {before[2]}: no ```text block with the output follows this ```{before[0]} block")
        if before:
            yield before[0], before[1], body, before[2]
        before = (language, body, line) if language in LANGUAGES else None
        if language == "json" and name:
            yield "file", body, name, line


def check(path, env, stage):
    """The languages of the programs that ran as the file says, and of those that were skipped."""
    languages, skipped = [], []
    runners = {"c": run_c, "cpp": run_cpp, "python": run_python, "sh": run_sh}
    with tempfile.TemporaryDirectory() as folder:
        pathlib.Path(folder, STAGE).symlink_to(stage)
        for language, source, expected, line in programs(path.read_text(encoding="utf-8")):
            if language == "file":
                pathlib.Path(folder, expected).write_text(source, encoding="utf-8")
                continue
            if language == "sh" and not is_there(source):
                skipped.append(language)
                continue
            try:
                printed = runners[language](source, pathlib.Path(folder), env)
            except Wrong as wrong:
                raise Wrong(f"line {line}: {wrong}") from None
            if printed != expected:
                change = difflib.unified_diff(expected.splitlines(True), printed.splitlines(True), "written", "printed")
                raise Wrong(f"line {line}: the output differs\n{''.join(change)}")
            languages.append(language)
    wanted = {"cpp"} if path.parent.name == "cpp" else {"c", "python", "sh"}
    missing = wanted - set(languages) - set(skipped)
    if missing:
        raise Wrong(f"no program in {' or '.join(sorted(missing))}")
    return languages, skipped


def main():
    build = pathlib.Path(sys.argv[1]).resolve()
    files = [pathlib.Path(name) for name in sys.argv[2:]] or [ROOT / "README.md"]
    env = environment(build)
    failed = 0
    for path in files:
        try:
            ran, skipped = check(path, env, build / "consumers" / "stage")
            print(f"{path.name}: {len(ran)} programs ran and printed what it says" +
                  (f"; {len(skipped)} skipped, for the front ends are not built" if skipped else ""))
        except Wrong as wrong:
            failed += 1
            print(f"{path.name}: {wrong}", file=sys.stderr)
    if len(files) > 1 or failed:
        print(f"{len(files) - failed} passed, {failed} failed")
    return 1 if failed else 0


if __name__ == "__main__":
    sys.exit(main())
