"""The six invented quilts: their list, their sheets, their drawings.

SPDX-License-Identifier: MIT

Sizes and patches are worked out by hand from what each quilt is made of, as said beside them.
"""
from __future__ import annotations

import os
import pathlib
import shutil
import stat
import subprocess
import xml.etree.ElementTree as ElementTree
from typing import Iterator

import pytest

PROGRAM = os.environ.get("MUSLIN_TOPS", "tops")
pytestmark = pytest.mark.skipif(shutil.which(PROGRAM) is None, reason="tops is not built: it needs cairo")

# name: finished size, unfinished size, patches, fabrics
QUILTS = {
    # 4 x 5 blocks of six 2 in strips, 12 in each
    "rails": ("48 in x 60 in", "48 1/2 in x 60 1/2 in", 120, 6),
    # 2 x 2 blocks of 9 in, 2 in sashes also round them; 9 + 21 + 13 + 14 patches, 12 sashes, 9 cornerstones
    "sampler": ("24 in x 24 in", "24 1/2 in x 24 1/2 in", 78, 4),
    # 3 x 4 blocks of 12 in and a 3 in border; 4 corners, 4 x 3 for the geese, 5 in the middle, 4 of the border
    "stars": ("42 in x 54 in", "42 1/2 in x 54 1/2 in", 12 * 21 + 4, 3),
    # 3 x 4 blocks of 6 in on point: 18 sqrt 2 = 25.456, 24 sqrt 2 = 33.941; 5 in of border on each side adds 10.
    # 35.456 = 35 29.2/64, 43.941 = 43 60.2/64. 12 nine-patches, 6 squares, 14 triangles, 8 borders
    "kites": ("~35 29/64 in x ~43 15/16 in", "~35 61/64 in x ~44 7/16 in", 12 * 9 + 6 + 14 + 8, 3),
    # 4 x 4 cabins: 2 in, and three logs of 1 1/2 in on each side: 11 in
    "hearth": ("44 in x 44 in", "44 1/2 in x 44 1/2 in", 16 * 13, 7),
    # a star of 12 in, 3 in, 3 in and 4 in round it; 8 + 8 patches, 4, 4 x 12 and 4, 4
    "well": ("32 in x 32 in", "32 1/2 in x 32 1/2 in", 16 + 4 + 52 + 4, 4),
}


def run(*words: str, cwd: pathlib.Path | None = None) -> "subprocess.CompletedProcess[str]":
    return subprocess.run([PROGRAM, *words], capture_output=True, text=True, timeout=60, cwd=cwd, check=False)


def text(*words: str) -> str:
    done = run(*words)
    assert done.returncode == 0 and done.stderr == "", done.stderr
    return done.stdout


def complaint(status: int, *words: str) -> str:
    done = run(*words)
    assert (done.returncode, done.stdout) == (status, ""), (done.returncode, done.stdout, done.stderr)
    assert done.stderr.startswith("tops: ") or done.stderr.startswith(PROGRAM)
    return done.stderr


# ---- words --------------------------------------------------------------------------------------------------------


def test_alone_it_lists_the_six() -> None:
    lines = text().splitlines()
    assert [line.split()[0] for line in lines[:6]] == list(QUILTS)
    assert "invented" in lines[-1] and "--help" in lines[-1]


def test_help_shows_every_way_to_ask() -> None:
    shown = text("--help")
    assert shown == text("-h")
    for words in ("tops NAME --svg FILE", "tops all --svg FOLDER", "Examples:", "Exit status:"):
        assert words in shown


def test_what_is_asked_wrongly_is_told() -> None:
    assert "called quincunx" in complaint(2, "quincunx")
    assert "FOLDER" in complaint(2, "all")
    assert "one quilt at a time" in complaint(2, "rails", "stars")
    assert "which quilt" in complaint(2, "--svg", "nowhere.svg")
    for words in (("--pdf", "x"), ("rails", "--svg")):
        done = run(*words)
        assert (done.returncode, done.stdout) == (2, "") and "tops --help" in done.stderr


@pytest.mark.skipif(not os.path.exists("/dev/full"), reason="no full device here")
@pytest.mark.parametrize("words", [(), ("--help",), ("rails",)])
def test_a_full_disk_is_told(words: tuple[str, ...]) -> None:
    with open("/dev/full", "w", encoding="utf-8") as full:
        done = subprocess.run([PROGRAM, *words], stdout=full, stderr=subprocess.PIPE, text=True, timeout=60,
                              check=False)
    assert done.returncode == 1 and "standard output" in done.stderr


# ---- sheets -------------------------------------------------------------------------------------------------------


@pytest.mark.parametrize("name", QUILTS)
def test_a_sheet_says_how_large_and_what_to_do(name: str) -> None:
    finished, unfinished, patches, fabrics = QUILTS[name]
    sheet = text(name)
    assert f"Top, finished {finished}, unfinished {unfinished}; {patches} patches, " in sheet
    assert "(an invented quilt)" in sheet and "CAUTION" not in sheet and "?" not in sheet
    cut = sheet[sheet.index("\nCut (sizes as cut"):sheet.index("\nSew (sizes unfinished)")].splitlines()
    assert sum(line.startswith("  ") and not line.startswith("   ") for line in cut) == fabrics
    assert "\nPress: seams meet at " in sheet and "infant" in sheet


def test_strips_are_counted_by_the_set() -> None:
    # 20 blocks of 12 in are cut 12 1/2 in wide, three from a set of 40 in: seven sets, a strip of each of six fabrics.
    sheet = text("rails")
    assert sheet.count("  7  40 in x 2 1/2 in, strips for strip sets") == 6
    assert "7 x sew strips into sets, 6 pieces: " in sheet


def test_squares_are_cut_for_units_by_their_recipe() -> None:
    # 48 geese of 6 in, four from a square of 7 1/4 in; 48 corners of 3 in; a 4 1/4 in square in each of 12 blocks.
    sheet = text("stars")
    assert "     12  7 1/4 in x 7 1/4 in: 48 pieces\n" in sheet
    assert "     48  3 1/2 in x 3 1/2 in\n" in sheet


# ---- drawings -----------------------------------------------------------------------------------------------------


def shapes(element: ElementTree.Element) -> Iterator[ElementTree.Element]:
    """Paths that are drawn, without those that letters are made of."""
    for child in element:
        kind = child.tag.rsplit("}", 1)[-1]
        if kind == "path":
            yield child
        elif kind not in ("defs", "symbol"):
            yield from shapes(child)


def seams_of(drawing: pathlib.Path) -> int:
    """Patches have thin seams round them, which alone are drawn half through."""
    root = ElementTree.parse(drawing).getroot()
    assert root.tag == "{http://www.w3.org/2000/svg}svg"
    return sum("0.55" in path.get("style", "") + path.get("stroke-opacity", "") for path in shapes(root))


@pytest.mark.parametrize("name", QUILTS)
def test_a_drawing_has_a_path_for_every_patch(name: str, tmp_path: pathlib.Path) -> None:
    target = tmp_path / "top.svg"
    assert text(name, "--svg", str(target)) == f"{target}\n"
    assert seams_of(target) == QUILTS[name][2]
    assert os.listdir(tmp_path) == ["top.svg"]


def test_all_are_drawn_into_a_folder(tmp_path: pathlib.Path) -> None:
    assert text("all", "--svg", str(tmp_path)) == "".join(f"{tmp_path}/{name}.svg\n" for name in QUILTS)
    assert sorted(os.listdir(tmp_path)) == sorted(f"{name}.svg" for name in QUILTS)


def test_a_drawing_is_the_same_each_time(tmp_path: pathlib.Path) -> None:
    for name in ("one.svg", "other.svg"):
        text("kites", "--svg", str(tmp_path / name))
    assert (tmp_path / "one.svg").read_bytes() == (tmp_path / "other.svg").read_bytes()


def test_a_new_drawing_has_the_usual_mode(tmp_path: pathlib.Path) -> None:
    target = tmp_path / "top.svg"
    mask = os.umask(0o027)
    try:
        text("rails", "--svg", str(target))
    finally:
        os.umask(mask)
    assert stat.S_IMODE(target.stat().st_mode) == 0o640


def test_an_existing_drawing_is_not_overwritten(tmp_path: pathlib.Path) -> None:
    target = tmp_path / "well.svg"
    target.write_text("mine")
    assert f"{target}: File exists" in complaint(1, "well", "--svg", str(target))
    assert run("all", "--svg", str(tmp_path)).returncode == 1
    assert target.read_text() == "mine"
    assert not any(name.startswith("well.svg.") for name in os.listdir(tmp_path))


def test_a_folder_that_is_not_there_is_told(tmp_path: pathlib.Path) -> None:
    assert "No such file" in complaint(1, "well", "--svg", str(tmp_path / "none" / "well.svg"))
