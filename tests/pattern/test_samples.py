"""The sample patterns: every size comes out as sums from the file say, fits together and is of a usual size.

SPDX-License-Identifier: MIT
"""
from __future__ import annotations

from pathlib import Path
from typing import Any

import pytest
from files import EVERYTHING, SAMPLES, Reader, load
from walker import Walker, ticks

# Finished sizes that such quilts commonly have, in inches: least and greatest width, then length.
USUAL = {"wall": (30, 42, 30, 46), "lap": (45, 54, 50, 65), "twin": (64, 72, 84, 94), "single": (58, 72, 82, 94),
         "queen": (84, 96, 84, 98)}
SIDE_LEFT, SIDE_RIGHT, SIDE_TOP, SIDE_BOTTOM = 1, 2, 3, 4


def test_there_are_eight() -> None:
    assert len(SAMPLES) == 8
    assert len({load(path)["title"] for path in SAMPLES}) == 8


def test_nothing_is_wrong_with_it(reader: Reader, sample: Path) -> None:
    assert reader.file(sample)["complaints"] == []


def test_sizes_are_the_sums_of_their_parts(reader: Reader, sample: Path) -> None:
    file = load(sample)
    shown = reader.file(sample)["sizes"]
    assert [size["name"] for size in shown] == [size["name"] for size in file["sizes"]]
    for size, got in zip(file["sizes"], shown, strict=True):
        assert (got["width"], got["height"]) == Walker(file, size).top(), size["name"]


def test_edges_meet(reader: Reader, sample: Path) -> None:
    assert all(size["misfits"] == size["eased"] == 0 for size in reader.file(sample)["sizes"])


def test_sizes_are_usual(reader: Reader, sample: Path) -> None:
    sizes = reader.file(sample)["sizes"]
    assert 2 <= len(sizes) <= 4
    for size in sizes:
        least, most, shortest, longest = USUAL[size["name"]]
        assert least <= size["width"] / 8128 <= most, size["name"]
        assert shortest <= size["height"] / 8128 <= longest, size["name"]
    areas = [size["width"] * size["height"] for size in sizes]
    assert areas == sorted(areas)


def test_it_is_finished_and_says_that_it_is_invented(sample: Path) -> None:
    file = load(sample)
    assert file["invented"] is True
    assert file["story"] and file["borders"] and file["binding"]
    assert "batting" in file and "backing" in file


def named(size: Any, name: str) -> "list[Any]":
    return [row for row in size["names"] if row["name"] == name]


def sample_size(reader: Reader, stem: str, name: str) -> Any:
    path = next(path for path in SAMPLES if path.stem == stem)
    return next(size for size in reader.file(path)["sizes"] if size["name"] == name)


def test_blocks_have_their_names(reader: Reader) -> None:
    lap = sample_size(reader, "lamplighters-round", "lap")
    (lamp,) = named(lap, "lamp block")
    assert lamp["block"] and lamp["count"] == 12 and lamp["place"] == "/parts/lamp"
    assert (lamp["width"], lamp["height"]) == (14 * 8128, 14 * 8128)
    (row,) = named(lap, "outer row")
    assert not row["block"] and row["count"] == 24


def test_strips_of_a_border_are_told_apart(reader: Reader) -> None:
    lap = sample_size(reader, "lamplighters-round", "lap")
    assert [row["side"] for row in named(lap, "border")] == [SIDE_LEFT, SIDE_RIGHT, SIDE_TOP, SIDE_BOTTOM]
    kites = sample_size(reader, "a-kite-each", "lap")
    assert [row["side"] for row in named(kites, "outer border")] == [SIDE_LEFT, SIDE_RIGHT, SIDE_TOP, SIDE_BOTTOM]
    shown = reader.value({"muslin_pattern": 1, "title": "T", "fabrics": {"a": {}},
                          "top": {"patch": "a", "size": "9 in"},
                          "borders": [{"fabric": "a", "width": "2 in", "corners": "top and bottom first"}]})
    assert [row["side"] for row in named(shown["sizes"][0], "border")] == [SIDE_TOP, SIDE_BOTTOM, SIDE_LEFT, SIDE_RIGHT]
    assert [border["name"] for border in kites["borders"]] == ["inner border", "outer border"]
    assert [border["wide"] for border in kites["borders"]] == [8128, 4 * 8128]


def test_logs_are_numbered(reader: Reader) -> None:
    hearths = named(sample_size(reader, "sixteen-hearths", "lap"), "hearth block")
    assert [row["log"] for row in hearths] == [*range(1, 12), 0]
    assert [row["block"] for row in hearths] == [False] * 11 + [True]
    assert [row["place"] for row in hearths[:2]] == ["/parts/hearth/logs/0", "/parts/hearth/logs/1"]


def test_strips_of_a_bundle(reader: Reader) -> None:
    lap = sample_size(reader, "market-barrow", "lap")
    ink = next(cloth for cloth in lap["cloths"] if cloth["key"] == "ink")
    assert ink["strip cut"] == 20320 and ink["strips"] == 10 and ink["usable width"] == 42 * 8128
    assert ink["letter"] == "F8" and ink["color"] == "#2d3f58"
    assert lap["fold clear"] == 8128 and lap["strip sets"] == 2


def test_metric_files_stay_metric(reader: Reader) -> None:
    path = next(path for path in SAMPLES if path.stem == "slipway-pebbles")
    shown = reader.file(path)
    assert (shown["units"], shown["paper"], shown["sold by"]) == (2, 2, "metre")
    for size in shown["sizes"]:
        for member in ("width", "height", "binding cut", "batting beyond", "backing width", "step", "grid"):
            assert size[member] % 320 == 0, member


def test_a_metric_file_that_says_little_gets_metric_lengths(reader: Reader) -> None:
    shown = reader.value({"muslin_pattern": 1, "title": "T", "units": "cm", "fabrics": {"a": {}},
                          "top": {"patch": "a", "size": "10 cm"}, "binding": {"fabric": "a"}, "batting": {},
                          "backing": {}, "sleeve": {"fabric": "a"}})
    (size,) = shown["sizes"]
    assert size["name"] == "as given" and shown["paper"] == 2
    for member in ("binding cut", "batting beyond", "backing width", "step", "grid"):
        assert size[member] > 0 and size[member] % 320 == 0, member
    assert size["cloths"][0]["usable width"] == 100 * 3200


def test_all_kinds_of_nodes_are_pieced(reader: Reader) -> None:
    shown = reader.file(EVERYTHING)
    assert shown["complaints"] == [] and len(shown["sizes"]) == 2
    one = shown["sizes"][0]
    wide = {row["name"]: row for row in one["names"] if "width" in row}
    assert (wide["net"]["width"], wide["net"]["block"]) == (6 * 8128, True)
    assert wide["wheel"]["width"] == wide["wheel"]["height"] == 6 * 8128
    assert wide["smaller"]["width"] == 5 * 8128
    assert wide["smaller"]["height"] == 5 * 8128 + 4064
    assert wide["sashes"]["width"] == (2 * 6 + 3) * 8128
    assert wide["teeth"]["width"] == 10 * 8128
    assert wide["own"]["width"] == 3 * 8128
    assert [border["corners"] for border in one["borders"]] == [2, 4, 3]
    assert one["shrinkage"] == 25000 and one["sleeves"] == 2 and one["bed"] == 60 * 8128


@pytest.mark.parametrize("text, expected", [("2 1/2 in", 20320), ("1 yd", 292608), ("6 mm", 1920), ("2.5 cm", 8000)])
def test_the_walker_reads_lengths(text: str, expected: int) -> None:
    assert ticks(text) == expected
