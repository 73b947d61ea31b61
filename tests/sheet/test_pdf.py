"""What readers of the PDF are told besides what is printed: the same bytes each time, fonts, title, places, words.

SPDX-License-Identifier: MIT
"""
from __future__ import annotations

import json
import os
import pathlib
import re

import pytest
from conftest import Maker
from sheets import PATTERNS, asked, needs_sheet, pattern, written

pytestmark = needs_sheet
SAMPLE = "market-barrow"


@pytest.mark.parametrize("name", [SAMPLE, "the-courtyard-well"])
def test_a_second_run_gives_the_same_bytes(sheet_of: Maker, name: str, tmp_path: pathlib.Path) -> None:
    other = tmp_path / "other.pdf"
    written(pattern(name), "-o", str(other), "--paper", "letter", cwd=tmp_path,
            env={**os.environ, "TZ": "Asia/Tokyo", "LC_ALL": "C.UTF-8"})
    assert other.read_bytes() == sheet_of(name, "letter").read_bytes()


def test_fonts_are_embedded(sheet_of: Maker) -> None:
    rows = asked("pdffonts", str(sheet_of(SAMPLE, "letter"))).splitlines()[2:]
    assert rows
    for row in rows:
        # embedded, a subset, with the letters' meaning
        assert re.search(r" yes yes yes +\d+ +\d+$", row), row


def test_the_file_says_what_it_is(sheet_of: Maker) -> None:
    told = asked("pdfinfo", "-isodates", str(sheet_of(SAMPLE, "letter")))
    told_of = dict(re.findall(r"^([A-Za-z ]+): +(.*)$", told, re.M))
    assert told_of["Title"] == "Market Barrow" and told_of["Author"] == "Tilda Farrow"
    assert told_of["Subject"] == "Quilt pattern: wall, lap, twin"
    assert told_of["Tagged"] == "yes" and told_of["PDF version"] == "1.4" and "letter" in told_of["Page size"]
    assert told_of["CreationDate"].startswith("2000-01-01")
    assert "A4" in asked("pdfinfo", str(sheet_of(SAMPLE, "a4")))


def test_the_date_is_the_patterns(tmp_path: pathlib.Path) -> None:
    asked_for = json.loads((PATTERNS / f"{SAMPLE}.json").read_text())
    asked_for.update(date="2024-02-29", version="3")
    (tmp_path / "dated.json").write_text(json.dumps(asked_for))
    assert written("dated.json", "--size", "wall", cwd=tmp_path) == ["dated.pdf"]
    assert "2024-02-29" in asked("pdfinfo", "-isodates", str(tmp_path / "dated.pdf"))
    assert "Version 3, 2024-02-29" in asked("pdftotext", "-layout", str(tmp_path / "dated.pdf"), "-")


def test_it_can_be_gone_through_by_its_outline(sheet_of: Maker) -> None:
    outline = asked("pdftohtml", "-xml", "-i", "-stdout", str(sheet_of(SAMPLE, "letter")))
    items = re.findall(r'<item page="(\d+)">(.*?)</item>', outline)
    sizes = [int(page) for page, name in items if name.startswith("Market Barrow: ")]
    assert len(sizes) == 3 and sizes == sorted(set(sizes))
    assert sum(name == "Cutting list" for _, name in items) == 3
    assert [int(page) for page, _ in items] == sorted(int(page) for page, _ in items)


def test_what_is_shown_is_said_in_reading_order(sheet_of: Maker) -> None:
    tree = asked("pdfinfo", "-struct", str(sheet_of(SAMPLE, "letter")))
    tags = re.findall(r"^( *)([A-Za-z0-9]+)", tree, re.M)
    names = [name for _, name in tags]
    assert names[:2] == ["Document", "H1"] and names.count("H1") == 1 and names.count("H2") == 3
    assert {"H3", "H4", "P", "L", "LI", "Lbl", "LBody", "Table", "TR", "TH", "TD", "Figure", "Link"} <= set(names)
    assert "/Scope /Column" in tree and "/Scope /Row" in tree
    heard = asked("pdfinfo", "-struct-text", str(sheet_of(SAMPLE, "letter")))
    order = [heard.index(f'"{words}"') for words in ("Read this first", "What to buy", "Cutting list", "Sewing",
                                                     "Finishing", "Cautions")]
    assert order == sorted(order)


def test_figures_have_words_and_every_object_is_where_it_is_said_to_be(sheet_of: Maker) -> None:
    content = sheet_of(SAMPLE, "letter").read_bytes()
    figures = re.findall(rb"/S /Figure\n   /Alt <FEFF([0-9A-F]*)>", content)
    assert len(figures) == content.count(b"/S /Figure\n") // 2
    said = [bytes.fromhex(words.decode()).decode("utf-16-be") for words in figures]
    assert all(len(words) > 10 and words[-1] == "." for words in said)
    start = int(content.rsplit(b"startxref\n", 1)[1].split()[0])
    added = content[start:].split(b"trailer")[0]
    rows = re.findall(rb"(\d+) 1\n(\d{10}) 00000 n \n", added)
    assert len(rows) > len(figures)
    for number, at in rows:
        assert content[int(at):].startswith(number + b" 0 obj\n")
    assert b"/Lang (en)" in content


def test_sizes_of_the_cover_lead_to_their_pages(sheet_of: Maker) -> None:
    content = sheet_of(SAMPLE, "letter").read_bytes()
    # names of three in the table of sizes, and their pages
    assert content.count(b"/Subtype /Link") == 6
