"""Every number on a sheet, worked out again from the pattern file: a mistake there costs somebody cloth.

The model knows the file alone. It reads the text that pdftotext finds, sentence by sentence, evaluates the steps as one
who sews them would, lays the plan of cutting out again, and demands that each number is looked at and is right.

SPDX-License-Identifier: MIT
"""
from __future__ import annotations

import json
import os
import pathlib
import random
import re
import subprocess
from typing import Any, Iterator

import pytest
from conftest import Maker
from invented import invented
from sheet_model.quilt import Quilt
from sheet_model.reading import read_sheet, read_size
from sheet_model.text import NUMBERS, Passage, SheetText, of_pdf, of_words
from sheets import PATTERNS, asked, needs_sheet, pattern, written

pytestmark = needs_sheet
SAMPLES = sorted(file.stem for file in PATTERNS.glob("*.json"))
INVENTED = range(6)
MUTANTS = 32  # of each sheet
NOTICED = 0.97


def quilts_of(file: Any) -> "dict[str, Quilt]":
    return {size["name"]: Quilt(file, size) for size in file["sizes"]}


def in_words(path: str) -> str:
    return subprocess.run([os.environ.get("MUSLIN_CLI", "muslin"), "pattern", path], capture_output=True, text=True,
                          timeout=120, check=True).stdout


def printed(path: pathlib.Path) -> str:
    return asked("pdftotext", "-raw", str(path), "-")


def check(file: Any, sheet: SheetText, pages: bool) -> None:
    faults, told = read_sheet(quilts_of(file), sheet, pages)
    assert not faults, "\n".join(faults[:20])
    assert told >= sum(len(NUMBERS.findall(passage.text)) for passage in sheet.passages()) > 500
    assert set(sheet.sizes) == {size["name"] for size in file["sizes"]}


def sample(name: str) -> Any:
    return json.loads((PATTERNS / f"{name}.json").read_text())


@pytest.mark.parametrize("name", SAMPLES)
def test_every_number_of_a_sheet_is_right(sheet_of: Maker, name: str) -> None:
    check(sample(name), of_pdf(printed(sheet_of(name, "letter")), sample(name)), True)


@pytest.mark.parametrize("name", SAMPLES)
def test_every_number_in_words_is_right(name: str) -> None:
    check(sample(name), of_words(in_words(pattern(name)), sample(name)), False)


@pytest.mark.parametrize("seed", INVENTED)
def test_every_number_of_an_invented_pattern_is_right(seed: int, tmp_path: pathlib.Path) -> None:
    path = tmp_path / "invented.json"
    path.write_text(json.dumps(invented(seed), indent=1))
    written(str(path), "--force", "-o", str(tmp_path / "invented.pdf"))
    check(invented(seed), of_pdf(printed(tmp_path / "invented.pdf"), invented(seed)), True)
    check(invented(seed), of_words(in_words(str(path)), invented(seed)), False)


# ---- would a wrong number be noticed? ------------------------------------------------------------------------------


def mutants(chance: random.Random, sheet: SheetText, count: int) -> "Iterator[tuple[Passage, str]]":
    """One digit of one number is another; gives the passage, and the words round it."""
    places = [(passage, match) for passage in sheet.passages() for match in re.finditer(r"\d", passage.text)]
    for passage, match in chance.sample(places, count):
        kept, place = passage.text, match.start()
        digit = chance.choice([digit for digit in "0123456789" if digit != match[0]])
        passage.text = kept[:place] + digit + kept[place + 1:]
        around = f"{kept[max(0, place - 60):place]}>>{match[0]} now {digit}<<{kept[place + 1:place + 30]}"
        yield passage, f"{passage.name}: {around}"
        passage.text = kept


def test_a_wrong_number_is_noticed(sheet_of: Maker, record_property: Any) -> None:
    tried, missed = 0, []
    for name in SAMPLES:
        file, quilts = sample(name), quilts_of(sample(name))
        sheet = of_pdf(printed(sheet_of(name, "letter")), file)
        for passage, words in mutants(random.Random(name), sheet, MUTANTS):
            size = [key for key, sections in sheet.sizes.items() if passage in sections.values()]
            if size:
                faults = read_size(quilts[size[0]], sheet.sizes[size[0]])[0].faults
            else:
                faults = read_sheet(quilts, sheet, True)[0]
            tried += 1
            missed += [] if faults else [f"{name}, {words}"]
    share = 1 - len(missed) / tried
    record_property("noticed", f"{tried - len(missed)} of {tried}")
    print(f"{tried - len(missed)} of {tried} wrong numbers are noticed; not:", *missed, sep="\n")
    assert share >= NOTICED, "\n".join(missed)
