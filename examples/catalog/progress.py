"""How far it is, with the time left, on a terminal's last line.

SPDX-License-Identifier: MIT
"""
from __future__ import annotations

import sys
import time


def in_words(seconds: float) -> str:
    if seconds < 90:
        return f"{max(1, round(seconds))} s"
    if seconds < 5400:
        return f"{round(seconds / 60)} min"
    return f"{seconds / 3600:.1f} h"


class Progress:
    """Told after each answer; writes a few times a second at most."""

    def __init__(self, wanted: int, kept: int, shown: bool) -> None:
        self.wanted = wanted
        self.kept = kept
        self.shown = shown
        self.done = 0
        self.began = time.monotonic()
        self.written = 0.0

    def line(self) -> str:
        passed = time.monotonic() - self.began
        kept = f" ({self.kept} kept from before)" if self.kept else ""
        line = f"{self.done + self.kept} of {self.wanted} worked out{kept}"
        left = self.wanted - self.kept - self.done
        if self.done > 0 and left > 0:
            line += f", about {in_words(passed / self.done * left)} left"
        return line

    def step(self) -> None:
        self.done += 1
        now = time.monotonic()
        if self.shown and (now > self.written + 0.3 or self.done + self.kept == self.wanted):
            self.written = now
            print(f"\r{self.line()}\033[K", end="", file=sys.stderr, flush=True)

    def end(self) -> None:
        if self.shown and self.written > 0:
            print(file=sys.stderr)
