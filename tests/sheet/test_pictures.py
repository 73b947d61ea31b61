"""Pictures: each kind is drawn, says what it must, has its true size where it has one, and comes out alike every time.

SPDX-License-Identifier: MIT
"""
from __future__ import annotations

import json
import math
import pathlib
import re
import xml.etree.ElementTree as ElementTree
from typing import Any

import pytest
from conftest import Maker
from sheets import asked, needs_sheet, pattern, written

pytestmark = needs_sheet
INCH = 72.0
SVG = "{http://www.w3.org/2000/svg}"

# A row of every kind of unit, and a shape of one's own with its mirror image: two triangles of 4 in.
CORNERS = [["0 in", "0 in"], ["4 in", "0 in"], ["4 in", "4 in"], ["0 in", "4 in"]]
UNITS: list[dict[str, Any]] = [
    {"unit": "half-square", "size": "4 in", "fabrics": ["ink", "milk"]},
    {"unit": "quarter-square", "method": "pieces", "size": "4 in", "fabrics": ["ink", "milk"]},
    {"unit": "split-quarter", "method": "pieces", "size": "4 in", "fabrics": ["ink", "milk", "rose"]},
    {"unit": "square-in-square", "method": "pieces", "size": "4 in", "fabrics": ["ink", "milk"]},
    {"unit": "snowball", "method": "flipped-corners", "size": "4 in", "corner": "1 in", "fabrics": ["ink", "milk"]},
    {"unit": "octagon", "method": "pieces", "size": "4 in", "fabrics": ["ink", "milk"]},
    {"unit": "eight-pointed-star", "method": "pieces", "size": "4 in", "fabrics": ["ink", "milk"]},
    {"unit": "kaleidoscope", "method": "pieces", "size": "4 in", "fabrics": ["ink", "milk", "rose"]},
]
PATTERN: dict[str, Any] = {
    "muslin_pattern": 1, "title": "Every unit", "invented": True,
    "fabrics": {"ink": {"name": "ink", "color": "#203040", "darkness": 90},
                "milk": {"name": "milk", "color": "#f0ece0", "darkness": 10},
                "rose": {"name": "rose", "color": "#c06070", "darkness": 50}},
    "parts": {"kite": {"called": "kite", "block": True, "shape": CORNERS, "pieces": [
        {"fabric": "ink", "corners": [CORNERS[0], CORNERS[1], CORNERS[2]]},
        {"fabric": "milk", "corners": [CORNERS[0], CORNERS[2], CORNERS[3]]}]}},
    "top": {"across": [*UNITS, "kite", {"mirror": "kite"}, {"turn": "kite", "quarters": 1}]},
    "borders": [{"fabric": "rose", "width": "2 in", "corners": "mitred"}],
    "binding": {"fabric": "ink"}, "backing": {}, "batting": {},
}


@pytest.fixture(scope="module")
def drawn(tmp_path_factory: pytest.TempPathFactory) -> dict[str, pathlib.Path]:
    """All pictures of that pattern by the names of their files, without the size's."""
    folder = tmp_path_factory.mktemp("pictures")
    source = folder / "units.json"
    source.write_text(json.dumps(PATTERN))
    files = [pathlib.Path(name) for name in written(str(source), "--pictures", str(folder / "all"))]
    return {re.sub(r"^as given-|^as-given-", "", file.stem): file for file in files}


def points(file: pathlib.Path) -> list[list[tuple[float, float]]]:
    """The corners of every path that is drawn, without the letters, which are symbols."""
    root = ElementTree.parse(file).getroot()
    paths = [path for group in root.findall(f"{SVG}g") for path in group.iter(f"{SVG}path")]
    numbers = [[float(number) for number in re.findall(r"-?\d+\.?\d*", path.attrib["d"])] for path in paths]
    return [list(zip(found[::2], found[1::2])) for found in numbers]


def extent(corners: list[tuple[float, float]]) -> tuple[float, float]:
    across = [x for x, _ in corners]
    down = [y for _, y in corners]
    return max(across) - min(across), max(down) - min(down)


def of_kind(drawn: dict[str, pathlib.Path], kind: str) -> list[pathlib.Path]:
    return [file for name, file in drawn.items() if re.fullmatch(rf"(?:.*-)?{kind}-\d+", name)]


@pytest.mark.parametrize("kind", ["top", "blank", "key", "block", "step", "cloth", "borders", "backing", "checks",
                                  "template"])
def test_each_kind_is_drawn(drawn: dict[str, pathlib.Path], kind: str) -> None:
    files = of_kind(drawn, kind)
    assert files, sorted(drawn)
    for file in files:
        root = ElementTree.parse(file).getroot()
        width, height = (float(root.attrib[name].removesuffix("pt")) for name in ("width", "height"))
        assert width > 30 and height > 20 and len(points(file)) > 0


def test_every_fabric_has_a_cutting_plan(drawn: dict[str, pathlib.Path]) -> None:
    assert len(of_kind(drawn, "cloth")) == 3


def test_check_squares_have_their_true_size(drawn: dict[str, pathlib.Path]) -> None:
    squares = [extent(corners) for corners in points(of_kind(drawn, "checks")[0]) if len(corners) >= 4]
    for side in (INCH, INCH * 25 / 25.4):
        assert any(abs(width - side) < 0.01 and abs(height - side) < 0.01 for width, height in squares)


def test_templates_have_their_true_size(drawn: dict[str, pathlib.Path]) -> None:
    """Half of a 4 in square with 1/4 in allowances: its short sides are cut 4 + (2 + sqrt 2) / 4 in, raw points whole,
    and finished 4 in."""
    cut = INCH * (4 + (2 + math.sqrt(2)) / 4)
    sizes = [extent(corners) for file in of_kind(drawn, "template") for corners in points(file) if len(corners) >= 3]
    for side in (cut, 4 * INCH):
        assert any(abs(width - side) < 0.02 and abs(height - side) < 0.02 for width, height in sizes), side


def test_pictures_come_out_alike(drawn: dict[str, pathlib.Path], tmp_path: pathlib.Path) -> None:
    source = tmp_path / "units.json"
    source.write_text(json.dumps(PATTERN))
    again = [pathlib.Path(name) for name in written(str(source), "--pictures", str(tmp_path / "again"))]
    assert [file.read_bytes() for file in again] == [file.read_bytes() for file in drawn.values()]


@pytest.mark.parametrize("name,words", [
    ("allotment-notes", ["glue yours", "in unfinished", "in finished", "selvage", "40 in usable width",
                         "1/2 in straightened", "to join", "as sewn", "quilt, finished: 30 in x 30 in",
                         "after printing at 100 %"]),
    ("market-barrow", ["40 in usable width", "8 1/2 in cut", "not to scale along the strips", " fold ", "insert"]),
    ("slipway-pebbles", ["16.2 cm", "wadding, cut:", "cm as sewn", "zigzag: more of the same",
                         "parts more, not drawn"]),
    ("a-kite-each", ["fabric F1, cut", "about"]),
])
def test_words_stand_in_the_pictures(sheet_of: Maker, name: str, words: list[str]) -> None:
    text = asked("pdftotext", "-raw", str(sheet_of(name, "letter")), "-").replace("\u00a0", " ")
    text = " ".join(text.split())
    assert [word for word in words if word not in text] == []


def test_a_small_top_has_no_letters(tmp_path: pathlib.Path) -> None:
    """The cover's tops stand side by side: letters would hide them. A page's own top has them."""
    file = tmp_path / "top.svg"
    written(pattern("sixteen-hearths"), "--picture", "top", "-o", str(file))
    tops = list(tmp_path.glob("top*.svg"))
    assert tops and all("glyph" in top.read_text() for top in tops)


def long_shape(length: str) -> dict[str, Any]:
    """A rectangle, 6 in high and as long as said, that is cut on its diagonal."""
    corners = [["0 in", "0 in"], [length, "0 in"], [length, "6 in"], ["0 in", "6 in"]]
    kite = {"called": "kite", "block": True, "shape": corners, "pieces": [
        {"fabric": "ink", "corners": [corners[0], corners[1], corners[2]]},
        {"fabric": "milk", "corners": [corners[0], corners[2], corners[3]]}]}
    more = {"fabrics": PATTERN["fabrics"], "parts": {"kite": kite}, "top": {"across": ["kite", "kite"]}}
    return {"muslin_pattern": 1, "title": "Long", "invented": True, **more}


@pytest.mark.parametrize("length,parts", [("2 in", 1), ("12 in", 3)])
def test_templates_are_divided_only_where_they_do_not_fit(tmp_path: pathlib.Path, length: str, parts: int) -> None:
    """2 in by 6 in are cut 2 5/8 in by 7 3/4 in: a page holds that, and its words, and more beside it.
    What is 12 in long comes on two pages by two, one of which has nothing of the triangle."""
    source = tmp_path / "long.json"
    source.write_text(json.dumps(long_shape(length)))
    names = written(str(source), "--pictures", str(tmp_path / "all"))
    files = [file for file in map(pathlib.Path, names) if file.stem.startswith("template")]
    assert len(files) == 2 * parts
    for file in files if parts == 1 else []:
        assert float(ElementTree.parse(file).getroot().attrib["width"].removesuffix("pt")) < 3 * INCH + 24


def test_small_templates_stand_side_by_side(tmp_path: pathlib.Path) -> None:
    source = tmp_path / "long.json"
    source.write_text(json.dumps(long_shape("2 in")))
    written(str(source), "-o", str(tmp_path / "long.pdf"))
    pages = asked("pdftotext", "-layout", str(tmp_path / "long.pdf"), "-").split("\f")
    assert any("Template [1]" in page and "Template [2]" in page for page in pages)


def test_hatchings_keep_within_their_cloth(tmp_path: pathlib.Path) -> None:
    """No path of a top in its fabrics reaches farther than its outlines alone do."""
    sizes = {}
    for kind in ("blank", "top"):
        file = tmp_path / f"{kind}.svg"
        written(pattern("the-courtyard-well"), "--size", "lap", "--picture", kind, "-o", str(file))
        sizes[kind] = [extent(corners) for corners in points(file)]
    widest, highest = max(sizes["blank"])
    assert widest > 100 and len(sizes["top"]) > 4
    assert all(width < widest + 0.5 and height < highest + 0.5 for width, height in sizes["top"])
