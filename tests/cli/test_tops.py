"""The six invented quilts: their list, their sheets, their drawings.

SPDX-License-Identifier: MIT

Sizes and patches are worked out by hand from what each quilt is made of, as said beside them.
"""
from __future__ import annotations

import fractions
import os
import pathlib
import re
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
    # 35.456 and 43.941 to the nearest 1/8. 12 nine-patches, 6 squares, 14 triangles, 8 borders
    "kites": ("about 35 1/2 in x 44 in", "about 36 in x 44 1/2 in", 12 * 9 + 6 + 14 + 8, 3),
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


def lines_of(name: str) -> str:
    """A sheet with its broken lines joined: a blank for every run of blanks."""
    return " ".join(text(name).split())


def part_of(sheet: str, start: str, end: str) -> str:
    return sheet[sheet.index(start):sheet.index(end)]


@pytest.mark.parametrize("name", QUILTS)
def test_a_sheet_says_how_large_and_what_to_do(name: str) -> None:
    finished, unfinished, patches, fabrics = QUILTS[name]
    sheet = text(name)
    assert f"Top, finished: {finished}\nTop, unfinished: {unfinished}\n{patches} patches" in sheet
    assert "(an invented quilt" in sheet and "CAUTION:" not in sheet and "?" not in sheet
    cut = part_of(sheet, "\nCUT\n", "\nBUY, ").splitlines()
    assert sum(line.startswith("  ") and not line.startswith("   ") for line in cut) == fabrics
    assert "\nPRESS\n" in sheet and "infant" in sheet and "The top is done." in sheet
    assert max(map(len, sheet.splitlines())) <= 100


@pytest.mark.parametrize("name", QUILTS)
def test_every_piece_and_part_is_used(name: str) -> None:
    """Numbers and letters of the cut list and the steps are those that later steps take, and all are."""
    sheet = lines_of(name)
    cut, sew = part_of(sheet, " CUT ", " BUY, "), part_of(sheet, " SEW ", " PRESS ")
    pieces = re.findall(r"\[\d+\]", cut)
    assert pieces == [f"[{number + 1}]" for number in range(len(pieces))]
    assert set(re.findall(r"\[\d+\]", sew)) == set(pieces)
    steps = re.findall(r"^ {2,3}(\d+)  ([A-Z]+) ", text(name), re.MULTILINE)
    assert [int(number) for number, _ in steps] == list(range(1, len(steps) + 1))
    made = [letter for _, letter in steps]
    for letter in made[:-1]:
        assert re.search(rf"[ :;]{letter}\*?( \(|[;.] )", sew), letter
    assert set(re.findall(r"\b([A-Z])\*? \(", sew)) <= set(made)


def test_strips_are_counted_by_the_set() -> None:
    # 20 blocks of 12 in are cut 12 1/2 in wide, three from a set of 40 in (37 1/2 and 1/2 in off both ends): seven
    # sets give 21; a strip of each of six fabrics goes into each.
    sheet = lines_of("rails")
    assert sheet.count("] Cut 7 strips, width of fabric (40 in usable) by 2 1/2 in, for A") == 6
    assert "strip set for rail block, make 7" in sheet and "segments: rail block, make 20" in sheet
    assert "A set gives 3, 7 sets give 21; 20 needed, 1 over." in sheet
    assert "The last set is sewn for only 2 of them: strips 26 in long are enough for it." in sheet


def test_a_set_is_squared_at_its_ends() -> None:
    # 2 1/2 in segments: 16 would need all of the 40 in, so that a set gives 15 and a second one is sewn.
    sheet = lines_of("hearth")
    assert "strip set for hearth block, centre and log 1, make 2" in sheet
    assert "A set gives 15, 2 sets give 30; 16 needed, 14 over." in sheet
    # One more of 2 1/2 in, and 1/2 in at either end.
    assert "The last set is sewn for only 1 of them: strips 3 1/2 in long are enough for it." in sheet
    assert "hearth block, centre and log 1" in sheet


def test_squares_are_cut_for_units_by_their_recipe() -> None:
    # 48 geese of 6 in, four from a square of 7 1/4 in; 96 corners of 3 in on 48 squares in a square, of which 12 have a
    # centre of 6 / sqrt 2 + 1/2 = 4.743 in.
    sheet = lines_of("stars")
    assert "Cut 12 squares at 7 1/4 in x 7 1/4 in, leave whole: four units come of one large and four small" in sheet
    assert "Cut 48 squares at 3 7/8 in x 3 7/8 in, leave whole" in sheet
    assert "Cut 24 squares at 3 7/8 in x 3 7/8 in, cut once on the diagonal: 48 triangles" in sheet
    assert "Cut 12 squares at 4 3/4 in x 4 3/4 in, for" in sheet
    assert "Cut 48 squares at 3 1/2 in x 3 1/2 in, for" in sheet
    assert "Trim to 6 1/2 in by 3 1/2 in unfinished" in sheet


def test_strips_longer_than_the_cloth_are_joined() -> None:
    # 48 1/2 in are 40 and 9 in less a seam of 1/2 in, 42 1/2 are 40 and 3.
    sheet = lines_of("stars")
    assert "join each of them end to end from strips 3 1/2 in wide, with straight 1/4 in seams" in sheet
    assert "Cut 2 at 48 1/2 in x 3 1/2 in" in sheet and "Cut 2 at 42 1/2 in x 3 1/2 in" in sheet
    laid = part_of(sheet, " BUY, ", " SEW ")
    assert "2 strips 3 1/2 in wide, from each: 40 in long for [1] 2 strips 3 1/2 in wide, from each: 40 in long for " \
        "[2]" in laid
    assert "2 pieces 9 in long for [1]" in laid and "2 pieces 3 in long for [2]" in laid
    # Beside two of 3 in the strip holds 16 1/2 in of binding: 40 less 22 1/2.
    assert "17 1/2 in of this strip are free: cut those for [2] longer" in laid
    assert "Only 1/2 in of this strip are free to leave those for [1] longer" in laid
    assert "join each of them" not in lines_of("kites")


def test_cloth_is_bought_by_fabric() -> None:
    # Brass: 48 and 24 squares of 3 7/8 in, ten from a strip: eight strips, 31 in, and 1/2 in to straighten; 7/8 yd are
    # 31 1/2 in. Cream: 12 squares of 4 3/4 in, eight from a strip. Binding: 2 x (42 + 54) + 12 in.
    laid = part_of(lines_of("stars"), " BUY, ", " SEW ")
    assert "brass: 31 1/2 in are needed. Buy at least 7/8 yd: that leaves nothing to spare, 1 yd is safer. Cut in " \
        "two steps like this, no plan needs less." in laid
    assert "cream: 10 in are needed. Buy 3/8 yd, 3 1/2 in to spare." in laid
    # Five joins of 2 1/2 in.
    assert "6 strips 2 1/2 in wide, 216 1/2 in together; 5 joins on the slant take 2 1/2 in each. That makes 204 in: " \
        "192 in round the quilt and 12 in" in laid
    assert "5 strips 2 1/2 in wide, from each: 40 in long for binding" in laid
    # Seven strips of each of six fabrics for the rails: 17 1/2 in and 1/2 in. Three segments of 12 1/2 in and 1/2 in at
    # either end want 38 1/2 in.
    rails = lines_of("rails")
    assert rails.count("7 strips 2 1/2 in wide, from each: 40 in long for [") == 6
    assert rails.count("18 in are needed. Buy at least 1/2 yd: that leaves nothing to spare, 5/8 yd is safer.") == 5
    assert rails.count("It works down to 38 1/2 in of usable width.") == 5
    assert "not of pieces stacked one above the other in a strip" in rails
    assert "fat quarter" not in rails
    assert "Buy 1/4 yd, 1 in to spare (off the bolt, no fat quarter)" in lines_of("sampler")


def test_a_strip_that_a_join_would_take_is_left_out() -> None:
    # Round the rails are 216 in. Six strips and five joins of 2 1/2 in make 227 1/2 in; for 228 in a seventh of 3 in
    # would lose 2 1/2 in by its join.
    laid = part_of(lines_of("rails"), " BUY, ", " SEW ")
    assert "6 strips 2 1/2 in wide, 240 in together; 5 joins on the slant take 2 1/2 in each. That makes 227 1/2 in: " \
        "216 in round the quilt and 11 1/2 in" in laid
    assert laid.count("for binding") == 1


def test_pieces_that_lie_both_ways_are_named() -> None:
    # Hearth: 4 of 16 logs of 10 in stand beside those of 11 1/2 in, 12 lie in strips.
    laid = part_of(lines_of("hearth"), " BUY, ", " SEW ")
    assert "16 of [12], turned: cross-cut at 2 in; 4 of [13], turned: cross-cut at 2 in, trimmed from 11 1/2 in to " \
        "10 in high" in laid
    assert "[13]: some lie along the cloth, some across it." in laid
    assert "some lie along" not in lines_of("stars")


@pytest.mark.parametrize("name", QUILTS)
def test_what_is_laid_out_is_what_is_cut(name: str) -> None:
    """Every number of the cut list lies in some strip, and a number that is cut so many times lies so often."""
    sheet = lines_of(name)
    laid = part_of(sheet, " BUY, ", " SEW ")
    cut = part_of(sheet, " CUT ", " BUY, ")
    assert set(re.findall(r"\[\d+\]", laid)) == set(re.findall(r"\[\d+\]", cut))
    for number, wanted in re.findall(r"\[(\d+)\] Cut (\d+) squares?", cut):
        found = 0
        for times, places in re.findall(r"(\d+) strips? [^:;]* wide[^:]*: (.*?)(?= \d+ strips? |$)", laid):
            found += int(times) * sum(int(one) for one in re.findall(rf"(\d+) squares? \[{number}\]", places))
        assert found == int(wanted), number


def test_the_cloth_is_drawn_strip_by_strip(tmp_path: pathlib.Path) -> None:
    target = tmp_path / "cloth.svg"
    assert text("stars", "--cloth", str(target)) == f"{target}\n"
    assert ElementTree.parse(target).getroot().tag.endswith("svg")
    assert "File exists" in complaint(1, "stars", "--cloth", str(target))
    assert "FOLDER" in complaint(2, "all", "--cloth", str(tmp_path))


def test_diamonds_are_cut_from_a_strip() -> None:
    # A 12 in star: sides of 12 / (2 + sqrt 2) = 3.515 in, 2.485 in between two of them, strips of 3 in (2.985). Eight
    # take 8 x 3 sqrt 2 + 3 = 36.94 in. Mitred strips: 24 + 8 + 1/2 + sqrt 2 / 2 = 33.2 in, with 2 in to hold up to 36.
    sheet = lines_of("well")
    assert "Cut 1 strip, width of fabric by 3 in, and from it 8 diamonds: cut one end off at 45 degrees, then cut " \
        "parallel to that, 3 in apart, measured square to the cut" in sheet
    assert "Cut 4 strips at 36 in x 4 1/2 in, cut generous (from point to point a strip needs about 33 1/4 in, cut)" \
        in sheet


def test_squares_on_point_are_told_row_by_row() -> None:
    # 3 x 4 blocks and 2 x 3 plain squares: diagonal rows of 1, 3, 5, 5, 3 and 1; 10 side triangles from three squares.
    sheet = lines_of("kites")
    field = part_of(sheet, "Row 1:", "Sew each row,")
    rows = field.split("Row ")[1:]
    assert [row.count("C") + row.count("[") for row in rows] == [1, 3, 5, 5, 3, 1]
    assert field.count("side triangle") == 10
    assert "12 side setting triangles, 2 of them spare" in sheet and "4 corner setting triangles" in sheet
    assert sheet.count("cut after the top is measured through the middle") == 4
    # Cut twice, a square leaves its sides on the long edge; cut once, on the two short ones.
    assert "Side triangles were cut twice: their long side, on the outside, lies on the straight grain" in sheet
    assert "Corner triangles were cut once: their two short sides, on the outside, lie on the straight grain" in sheet


def test_what_is_spare_is_told_with_the_units() -> None:
    # Five half-squares of radish and paper, two at a time.
    assert "3 times in all, which makes 1 more than needed." in lines_of("sampler")


def test_a_recipe_takes_what_is_left_by_cutting() -> None:
    # Squares cut twice give four triangles, cut once two.
    assert "For 2 at a time take 4 triangles [6] radish and 4 triangles [3] paper; 2 times in all" in \
        lines_of("sampler")
    assert "For each take 1 square [7] cream and 4 triangles [6] brass" in lines_of("stars")
    assert "take 8 diamonds [7] brick, 4 squares [6] lime wash and 4 triangles [5] lime wash" in lines_of("well")


@pytest.mark.parametrize("name", QUILTS)
def test_of_each_cloth_the_longest_are_cut_first(name: str) -> None:
    sheet = text(name)
    last = 0.0
    for line in re.sub(r"\n {6,}(?!\[)", " ", part_of(sheet, "\nCUT\n", "\nBUY, ")).splitlines():
        if not line.startswith("   "):
            last = 1000
        found = re.search(r"\[\d+\] Cut .*?(width of fabric|(\d+)( \d/\d)? in x)", line)
        if found is None:
            continue
        whole, part = found.group(2), found.group(3)
        # What comes from strips joined end to end stands below them and is longer than the cloth is wide.
        length = 40 if whole is None else int(whole) + float(fractions.Fraction(part.strip()) if part else 0)
        assert length <= last, line
        last = length


@pytest.mark.parametrize("name", QUILTS)
def test_units_are_pressed_as_their_recipes_say(name: str) -> None:
    sheet = lines_of(name)
    assert "which way." not in part_of(sheet, " SEW ", " PRESS ") and "towards fabric" not in sheet
    assert not re.search(r"\b[A-Z]\* \((flying|half|quarter|square|eight)", sheet)


def test_what_does_not_lock_is_named() -> None:
    # Hearth: the last two straw logs end at the edges where straw lies beside straw: two in each of 4 + 2 seams.
    sheet = lines_of("hearth")
    assert "at all but 12 of them" in sheet
    assert "- M (row), seam 1, seam 3: 8 places, a seam of L and one of J" in sheet
    assert "- N (row), seam 2: 4 places, a seam of L and one of J" in sheet
    # Stars: both seams of a goose and both of the square in a square go to the brass where their points meet: twice 4
    # in each of 12 blocks. Nowhere else.
    stars = lines_of("stars")
    assert "at all but 96 of them" in stars
    assert stars.count("48 places, a seam of A and one of B") == 2


def test_one_block_is_measured_before_the_rest() -> None:
    sheet = lines_of("hearth")
    assert "First cut and sew what one block needs, step by step, and measure it: hearth block L, 11 1/2 in x " \
        "11 1/2 in unfinished." in part_of(sheet, "BEFORE YOU BEGIN", " CUT ")
    assert "measure it: " not in lines_of("well")
    # Nothing is to be laid aside for a top without borders.
    assert "Lay cloth aside" not in sheet and "Lay cloth aside" in lines_of("kites")


def test_errors_add_up_both_ways() -> None:
    # Rails, 1/32 in a seam: across 3 + 2 x 5 seams, 13/32; down 4 between rows and 5 in each of five, 29/32, which no
    # one column has.
    assert "comes out off by no more than about 3/8 in across and about 7/8 in down." in lines_of("rails")


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
