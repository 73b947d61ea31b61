"""The program under test: run with words, answering in text or JSON.

SPDX-License-Identifier: MIT
"""
from __future__ import annotations

import json
import os
import subprocess
from typing import Any

PROGRAM = os.environ.get("MUSLIN_CLI", "muslin")
TICKS_PER_INCH = 8128


class Muslin:
    """The program, its exit status and what it wrote."""

    program = PROGRAM

    def run(self, *words: str, given: str = "", cwd: Any = None) -> "subprocess.CompletedProcess[str]":
        return subprocess.run([PROGRAM, *words], input=given, capture_output=True, text=True, timeout=60, cwd=cwd,
                              check=False)

    def text(self, *words: str) -> str:
        done = self.run(*words)
        assert done.returncode == 0, done.stderr
        return done.stdout

    def words(self, *words: str) -> str:
        """The text with its line breaks undone, for sentences that wrap."""
        return " ".join(self.text(*words).split())

    def answer(self, *words: str) -> Any:
        return json.loads(self.text(*words, "--json"))

    def complaint(self, status: int, *words: str) -> str:
        done = self.run(*words)
        assert done.returncode == status, (done.returncode, done.stdout, done.stderr)
        assert done.stdout == ""
        return done.stderr

    def batch(self, *lines: Any, options: tuple[str, ...] = (), status: int = 0) -> list[Any]:
        """Requests in, replies out; a line that is no text is sent as JSON."""
        given = "".join((line if isinstance(line, str) else json.dumps(line)) + "\n" for line in lines)
        done = self.run("batch", *options, given=given)
        assert done.returncode == status, done.stderr
        return [json.loads(line) for line in done.stdout.splitlines()]


def inches(length: Any) -> float:
    """A length of an answer; every figure used in these tests is a sum of powers of two, so a float holds it."""
    ticks: int = length["ticks"]
    return ticks / TICKS_PER_INCH
