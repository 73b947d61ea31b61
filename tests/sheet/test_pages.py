"""What is printed: all of it, within the margins, one word beside the other, on the paper that was asked for.

SPDX-License-Identifier: MIT
"""
from __future__ import annotations

import collections
import os
import re
import subprocess

import pytest
from conftest import Maker
from sheets import PAPERS, PATTERNS, SIDES, asked, needs_sheet, overlapping, pages_of, pattern

pytestmark = needs_sheet
SAMPLES = sorted(file.stem for file in PATTERNS.glob("*.json"))
SHEETS = [(name, "letter") for name in SAMPLES] + [(name, "a4") for name in SAMPLES[1::3]]


@pytest.mark.parametrize("name,paper", SHEETS)
def test_text_keeps_the_margins(sheet_of: Maker, name: str, paper: str) -> None:
    for number, (width, height, words) in enumerate(pages_of(sheet_of(name, paper)), 1):
        assert (width, height) == pytest.approx(PAPERS[paper], abs=0.01)
        assert words
        for word in words:
            inside = (SIDES - 1 <= word.left and word.right <= width - SIDES + 1 and
                      28 <= word.top and word.bottom <= height - 28)
            assert inside, (number, word)


@pytest.mark.parametrize("name,paper", SHEETS)
def test_no_word_stands_on_another(sheet_of: Maker, name: str, paper: str) -> None:
    for number, (_, _, words) in enumerate(pages_of(sheet_of(name, paper)), 1):
        assert overlapping(words) == [], number


def words_in(text: str) -> "collections.Counter[str]":
    """Words as they are, without line breaks and with sizes' blanks that do not break as blanks."""
    return collections.Counter(re.sub(r"[\u00a0\u2013]", " ", text).split())


@pytest.mark.parametrize("name", SAMPLES)
def test_all_that_the_pattern_comes_to_is_printed(sheet_of: Maker, name: str) -> None:
    """The command line writes the same document in words, with marks of its own for tables and drawings."""
    said = subprocess.run([os.environ.get("MUSLIN_CLI", "muslin"), "pattern", pattern(name)], capture_output=True,
                          text=True, timeout=120, check=True).stdout
    said = re.sub(r"^[=-]+$|^ *(- |\(drawing\))", "", said, flags=re.M)
    printed = words_in(asked("pdftotext", "-raw", str(sheet_of(name, "letter")), "-"))
    said = said.replace("Caution:", "!")
    lacking = collections.Counter({word.strip(".:;,"): count for word, count in words_in(said).items()
                                   if len(word.strip(".:;,")) > 3})
    stripped: "collections.Counter[str]" = collections.Counter()
    for word, count in printed.items():
        stripped[word.strip(".:;,")] += count
    assert [word for word in lacking if stripped[word] == 0] == []


def test_heads_stay_with_what_follows(sheet_of: Maker) -> None:
    """Nothing in bold and large ends a page: the last words above the foot are body text or a picture's."""
    for name in SAMPLES[:3]:
        file = str(sheet_of(name, "letter"))
        text = asked("pdftotext", "-layout", file, "-")
        for page in text.split("\f")[:-1]:
            lines = [line.strip() for line in page.splitlines() if line.strip() and "Print at 100 %" not in line]
            assert lines[-1] not in ("Read this first", "What to buy", "Cutting list", "On the cloth", "Sewing",
                                     "Finishing", "Cautions", "Borders"), page


def test_the_foot_counts_pages(sheet_of: Maker) -> None:
    pages = asked("pdftotext", "-layout", str(sheet_of(SAMPLES[0], "a4")), "-").split("\f")[:-1]
    for number, page in enumerate(pages, 1):
        assert f"Page {number} of {len(pages)}" in page and "Print at 100 %; check the square." in page
