"""The program under test, and what poppler's tools read from its files.

SPDX-License-Identifier: MIT
"""
from __future__ import annotations

import dataclasses
import itertools
import os
import pathlib
import re
import shutil
import subprocess
import xml.etree.ElementTree as ElementTree
from typing import Any, Iterator

import pytest

PROGRAM = os.environ.get("MUSLIN_SHEET", "muslin-sheet")
PATTERNS = pathlib.Path(__file__).parents[2] / "examples" / "patterns"
needs_sheet = pytest.mark.skipif(shutil.which(PROGRAM) is None, reason="muslin-sheet is not built: it needs pango")

# Points: how wide and high the papers are, and what margin the text keeps from their edges.
PAPERS = {"letter": (612.0, 792.0), "a4": (595.276, 841.89)}
SIDES = 60.0


def pattern(name: str) -> str:
    return str(PATTERNS / f"{name}.json")


def run(*words: str, **more: Any) -> "subprocess.CompletedProcess[str]":
    return subprocess.run([PROGRAM, *words], capture_output=True, text=True, timeout=120, check=False, **more)


def written(*words: str, **more: Any) -> list[str]:
    """The names that a run which goes well prints."""
    done = run(*words, **more)
    assert (done.returncode, done.stderr) == (0, "")
    return done.stdout.splitlines()


def complaint(status: int, *words: str, **more: Any) -> str:
    done = run(*words, **more)
    assert (done.returncode, done.stdout) == (status, ""), (done.returncode, done.stdout, done.stderr)
    assert done.stderr.startswith("muslin-sheet: ")
    return done.stderr


def asked(tool: str, *words: str) -> str:
    """What a tool of poppler says, which has nothing to complain of."""
    done = subprocess.run([tool, *words], capture_output=True, text=True, timeout=120, check=True)
    assert done.stderr == ""
    return done.stdout


@dataclasses.dataclass(frozen=True)
class Word:
    """A word on a page and its box, from the upper left corner."""

    text: str
    left: float
    top: float
    right: float
    bottom: float


def pages_of(file: pathlib.Path) -> Iterator[tuple[float, float, list[Word]]]:
    """Of each page how wide and high it is, and its words."""
    text = re.sub(r"[\x00-\x08\x0b\x0c\x0e-\x1f]", "", asked("pdftotext", "-bbox", str(file), "-"))
    root = ElementTree.fromstring(re.sub(r"<!DOCTYPE.*?>", "", text, flags=re.S))
    for page in root.iter("{http://www.w3.org/1999/xhtml}page"):
        words = [Word(word.text or "", *(float(word.attrib[name]) for name in ("xMin", "yMin", "xMax", "yMax")))
                 for word in page]
        yield float(page.attrib["width"]), float(page.attrib["height"]), words


def shrunk(word: Word) -> Word:
    """What a word blackens at least: poppler's boxes hold the room above and below letters too."""
    high = (word.bottom - word.top) * 0.3
    return Word(word.text, word.left + 0.3, word.top + high, word.right - 0.3, word.bottom - high)


def overlapping(words: list[Word]) -> list[tuple[Word, Word]]:
    """Pairs of words that share more than a hair, found from left to right."""
    found = []
    boxes = sorted(map(shrunk, words), key=lambda word: word.left)
    for place, one in enumerate(boxes):
        for other in itertools.takewhile(lambda word, end=one.right: word.left < end, boxes[place + 1:]):
            if min(one.bottom, other.bottom) - max(one.top, other.top) > 0.3 and one.right - other.left > 0.3:
                found.append((one, other))
    return found
