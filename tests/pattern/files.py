"""Pattern files, read by the front ends' own reader and by a general-purpose validator.

SPDX-License-Identifier: MIT
"""
from __future__ import annotations

import json
import os
import shlex
import subprocess
from pathlib import Path
from typing import Any, Iterable

import jsonschema

ROOT = Path(__file__).resolve().parents[2]
PATTERN = ROOT / "examples/pattern"
SAMPLES = sorted((ROOT / "examples/patterns").glob("*.json"))
EVERYTHING = Path(__file__).with_name("everything.json")


def load(path: Path) -> Any:
    return json.loads(path.read_text(encoding="utf-8"))


class Schema:
    """pattern.schema.json, asked whether it takes a file."""

    def __init__(self) -> None:
        self.text = load(PATTERN / "pattern.schema.json")
        self.validator = jsonschema.Draft202012Validator(self.text, format_checker=jsonschema.FormatChecker())

    def takes(self, value: Any) -> bool:
        return bool(self.validator.is_valid(value))


class Reader:
    """show_design.c, built here with address and undefined-behaviour sanitizers against the installed library."""

    def __init__(self, folder: Path) -> None:
        self.program = folder / "show_design"
        asked = ["pkg-config", "--cflags", "--libs", "muslin", "jansson"]
        flags = shlex.split(subprocess.run(asked, capture_output=True, text=True, check=True).stdout)
        subprocess.run([os.environ.get("CC", "gcc"), "-std=c11", "-g", "-O1", "-fsanitize=address,undefined",
                        "-fno-sanitize-recover=undefined", "-I", str(PATTERN), "-o", str(self.program),
                        str(Path(__file__).with_name("show_design.c")),
                        *sorted(str(path) for path in PATTERN.glob("*.c")), *flags], check=True)

    def _run(self, words: Iterable[str], given: bytes = b"") -> "list[Any]":
        done = subprocess.run([self.program, *words], input=given, capture_output=True, timeout=600, check=False)
        assert done.returncode == 0, done.stderr.decode(errors="replace")[-4000:]
        return [json.loads(line) for line in done.stdout.splitlines()]

    def file(self, path: "Path | str", given: bytes = b"") -> Any:
        return self._run([str(path)], given)[0]

    def texts(self, texts: "Iterable[str]") -> "list[Any]":
        lines = [text.replace("\n", " ") for text in texts]
        return self._run(["--lines"], "".join(line + "\n" for line in lines).encode())

    def value(self, value: Any) -> Any:
        return self.texts([json.dumps(value)])[0]

    def told(self, value: Any) -> "dict[str, str]":
        """Place and sentence of each complaint: of each place the first."""
        rows = self.value(value)["complaints"]
        return {row["place"]: row["sentence"] for row in reversed(rows)}
