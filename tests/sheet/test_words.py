"""Options, what is wrong with them and with patterns, fonts that are missing, completion.

SPDX-License-Identifier: MIT
"""
from __future__ import annotations

import json
import os
import pathlib
import re
import shutil
import subprocess
from typing import Any

import pytest
from sheets import PATTERNS, PROGRAM, complaint, needs_sheet, overlapping, pages_of, pattern, run, written

pytestmark = needs_sheet
SAMPLE = pattern("market-barrow")


@pytest.mark.parametrize("words,told", [
    ((), "Say which pattern"),
    (("one.json", "two.json"), "One pattern at a time"),
    (("--pdff", SAMPLE), "no option --pdff"),
    ((SAMPLE, "--size"), "--size wants a value"),
    ((SAMPLE, "--paper", "legal"), "letter a4"),
    ((SAMPLE, "--dpi", "20"), "from 36 to 600"),
    ((SAMPLE, "--dpi", "150x"), "from 36 to 600"),
    ((SAMPLE, "--page", "0"), "no number of 1 or more"),
    ((SAMPLE, "--picture", "dog"), "strip-set"),
    ((SAMPLE, "--pdf", "--png"), "Choose one"),
    ((SAMPLE, "--picture", "top", "--pdf"), "SVG or PNG"),
    ((SAMPLE, "--pictures", "x", "--page", "2"), "leave out"),
    ((SAMPLE, "--size", "emperor"), 'no size "emperor"; it has: wall, lap, twin'),
])
def test_what_is_asked_wrongly_is_told(words: tuple[str, ...], told: str) -> None:
    assert told in complaint(2, *words)


def test_sizes_are_known_in_any_case(tmp_path: pathlib.Path) -> None:
    written(SAMPLE, "--size", "WALL", "--page", "1", "-o", str(tmp_path / "sheet.svg"))


def test_a_pattern_that_is_not_there_is_file_trouble(tmp_path: pathlib.Path) -> None:
    assert "Cannot read" in complaint(3, str(tmp_path / "none.json"))
    assert "Cannot read" in complaint(3, str(tmp_path))


def test_a_file_that_is_no_json_is_told_by_line(tmp_path: pathlib.Path) -> None:
    (tmp_path / "bad.json").write_text('{\n  "muslin_pattern": 1,\n  "title" "x"\n}\n')
    told = complaint(2, "bad.json", cwd=tmp_path)
    assert "bad.json, line 3" in told and os.listdir(tmp_path) == ["bad.json"]


def changed(tmp_path: pathlib.Path, change: dict[str, Any]) -> str:
    asked = json.loads((PATTERNS / "market-barrow.json").read_text())
    asked.update(change)
    target = tmp_path / "changed.json"
    target.write_text(json.dumps(asked))
    return str(target)


def test_all_that_is_wrong_with_a_pattern_is_told(tmp_path: pathlib.Path) -> None:
    told = complaint(2, changed(tmp_path, {"paper": "legal", "measures": {"strip": "2 elbows", "block": "8 in",
                                                                         "border": "2 in"}}))
    lines = told.splitlines()
    assert any("/paper" in line and "legal" in line for line in lines)
    assert any("/measures/strip" in line and "2 elbows" in line for line in lines)


def test_what_is_long_stays_within_its_place(tmp_path: pathlib.Path) -> None:
    """Twelve sizes with long names, a long title, an author without a blank."""
    sizes = [{"name": f"size number {number} of them all", "counts": {"columns": 4, "rows": 5}}
             for number in range(12)]
    file = changed(tmp_path, {"title": "A barrow " * 13, "by": "Unbreakable" * 10, "version": "v" * 40,
                              "date": "2024-01-01", "story": "Long. " * 300, "sizes": sizes})
    target = tmp_path / "long.pdf"
    written(file, "-o", str(target))
    for number, (width, _, words) in enumerate(pages_of(target), 1):
        assert overlapping(words) == [], number
        assert all(59 <= word.left and word.right <= width - 59 for word in words), number


# ---- fonts --------------------------------------------------------------------------------------------------------


def test_where_there_is_no_font_nothing_is_written(tmp_path: pathlib.Path) -> None:
    (tmp_path / "fonts.conf").write_text("<?xml version='1.0'?><!DOCTYPE fontconfig SYSTEM 'fonts.dtd'>"
                                         f"<fontconfig><dir>{tmp_path}/none</dir></fontconfig>")
    told = complaint(3, SAMPLE, "-o", str(tmp_path / "sheet.pdf"),
                     env={**os.environ, "FONTCONFIG_FILE": str(tmp_path / "fonts.conf")})
    assert "no font" in told and "fonts-dejavu-core" in told
    assert os.listdir(tmp_path) == ["fonts.conf"]


def test_a_character_that_no_font_has_is_told_and_no_box_printed(tmp_path: pathlib.Path) -> None:
    told = complaint(3, changed(tmp_path, {"title": "Barrow \U0010fffd"}), "-o", str(tmp_path / "sheet.pdf"))
    assert "U+10FFFD" in told and not (tmp_path / "sheet.pdf").exists()


# ---- completion ---------------------------------------------------------------------------------------------------


def completed(*typed: str) -> list[str]:
    script = subprocess.run([PROGRAM, "--completion", "bash"], capture_output=True, text=True, timeout=60,
                            check=True).stdout
    words = " ".join(f"'{word}'" for word in ("muslin-sheet", *typed))
    done = subprocess.run(["bash", "-c", f"{script}\nCOMP_WORDS=({words}); COMP_CWORD={len(typed)}; _muslin_sheet; "
                           "printf '%s\\n' \"${COMPREPLY[@]}\""],
                          capture_output=True, text=True, timeout=60, check=True, cwd=PATTERNS)
    assert done.stderr == ""
    return done.stdout.split()


@pytest.mark.skipif(shutil.which("bash") is None, reason="no bash here")
def test_bash_completes_options_and_their_words() -> None:
    assert completed("--pi") == ["--picture", "--pictures"]
    assert completed("--paper", "") == ["letter", "a4"]
    assert completed("--picture", "b") == ["blank", "block", "borders", "backing"]
    assert completed("market") == ["market-barrow.json"]


def test_zsh_completion_names_every_option() -> None:
    script = run("--completion", "zsh").stdout
    assert script.startswith("#compdef muslin-sheet")
    for option in ("--output", "--size", "--paper", "--picture", "--grey", "--force"):
        assert f"{option}[" in script
    if shutil.which("zsh"):
        done = subprocess.run(["zsh", "-n"], input=script, capture_output=True, text=True, timeout=60, check=False)
        assert (done.returncode, done.stderr) == (0, "")


@pytest.mark.skipif(shutil.which("mandoc") is None, reason="no mandoc here")
def test_the_manual_is_clean_and_tells_every_option() -> None:
    manual = PATTERNS.parent / "sheet" / "muslin-sheet.1"
    done = subprocess.run(["mandoc", "-Tlint", "-Wwarning", str(manual)], capture_output=True, text=True, timeout=60,
                          check=False)
    assert (done.returncode, done.stdout) == (0, "")
    text = manual.read_text()
    help_text = run("--help").stdout

    for option in re.findall(r"--([a-z]+)[ \n]", help_text[:help_text.index("Examples:")]):
        assert f"-{option}" in text, option
