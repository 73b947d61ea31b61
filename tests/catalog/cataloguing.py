"""muslin-catalog run by tests, on patterns that can be reckoned by hand.

SPDX-License-Identifier: MIT
"""
from __future__ import annotations

import csv
import json
import os
import subprocess
import sys
import time
from pathlib import Path
from typing import Any, Callable

ROOT = Path(__file__).resolve().parents[2]
FOLDER = ROOT / "examples/catalog"
PROGRAM = [sys.executable, str(FOLDER / "muslin-catalog")]


def pattern(title: str, square: str = "3 in", across: int = 6) -> "dict[str, Any]":
    """Squares of two fabrics, checkered, in two sizes. Every square is cut by itself."""
    return {
        "muslin_pattern": 1, "title": title, "story": "Invented for a test.", "invented": True,
        "cutting": {"strip piecing": "never"},
        "fabrics": {"moss": {"darkness": 70}, "chalk": {"darkness": 10}},
        "measures": {"square": square}, "counts": {"across": across, "down": across},
        "parts": {"dark": {"patch": "moss", "size": "square"}, "light": {"patch": "chalk", "size": "square"}},
        "top": {"alternate": [["dark", "light"], ["light", "dark"]], "columns": "across", "rows": "down"},
        "backing": {"fabric": "chalk"},
        "sizes": [{"name": "small"}, {"name": "large", "counts": {"across": 2 * across}}],
    }


def write_patterns(folder: Path, **patterns: Any) -> Path:
    folder.mkdir(parents=True, exist_ok=True)
    for name, value in patterns.items():
        text = value if isinstance(value, str) else json.dumps(value)
        (folder / f"{name}.json").write_text(text, encoding="utf-8")
    return folder


def start(*words: "str | Path", **more: Any) -> "subprocess.Popen[str]":
    return subprocess.Popen([*PROGRAM, *map(str, words)], stdout=subprocess.PIPE, stderr=subprocess.PIPE, text=True,
                            start_new_session=True, **more)


def run(*words: "str | Path") -> "subprocess.CompletedProcess[str]":
    return subprocess.run([*PROGRAM, *map(str, words)], capture_output=True, text=True, timeout=300, check=False)


def done(*words: "str | Path") -> str:
    finished = run(*words)
    assert finished.returncode == 0, finished.stderr
    return finished.stderr


def table(folder: Path, name: str) -> "list[dict[str, str]]":
    with open(folder / f"{name}.csv", newline="", encoding="utf-8") as file:
        return list(csv.DictReader(file))


def tables(folder: Path) -> "list[str]":
    return [(folder / f"{name}.csv").read_text(encoding="utf-8") for name in ("sizes", "edges", "off-grid")]


def kept(folder: Path) -> int:
    return len(list((folder / "kept").glob("*/*.json")))


def wait_until(holds: "Callable[[], Any]", seconds: float = 120) -> None:
    end = time.monotonic() + seconds
    while not holds():
        assert time.monotonic() < end, "it took too long"
        time.sleep(0.02)


def descendants(pid: int) -> "list[int]":
    """Processes that it has started, and those that they have."""
    found = []
    for task in Path(f"/proc/{pid}/task").glob("*"):
        for child in (task / "children").read_text().split():
            found += [int(child), *descendants(int(child))]
    return found


def command_of(pid: int) -> str:
    try:
        return Path(f"/proc/{pid}/cmdline").read_bytes().replace(b"\0", b" ").decode()
    except OSError:
        return ""


def environment() -> "dict[str, str]":
    return {**os.environ, "PYTHONPATH": os.pathsep.join([str(FOLDER), os.environ.get("PYTHONPATH", "")])}
