"""What is wrong with a file is told: all of it, each with its place, and in words that help.

SPDX-License-Identifier: MIT
"""
from __future__ import annotations

import copy
import json
import os
import time
from pathlib import Path
from typing import Any

import pytest
from files import EVERYTHING, Reader, load

PLAIN: "dict[str, Any]" = {
    "muslin_pattern": 1, "title": "Plain", "fabrics": {"red": {}, "white": {}},
    "measures": {"square": "3 in"}, "counts": {"columns": 2},
    "parts": {"patch": {"patch": "red", "size": "square"}},
    "top": {"repeat": "patch", "columns": "columns", "rows": 2},
}


def plain(**changes: Any) -> Any:
    return {**copy.deepcopy(PLAIN), **changes}


def with_part(**parts: Any) -> Any:
    file = plain()
    file["parts"].update(parts)
    return file


def test_nothing_is_wrong_with_it(reader: Reader) -> None:
    assert reader.told(PLAIN) == {}


def test_all_that_is_wrong_is_told_at_once(reader: Reader) -> None:
    file = plain(titel="x", seam={"allowance": "1/4"}, top={"across": ["patch", {"patch": "rde", "size": "3 in"}]},
                 binding={}, units="inches")
    del file["title"]
    told = reader.told(file)
    assert sorted(told) == ["", "/binding", "/seam/allowance", "/titel", "/top/across/1/patch", "/units"]
    assert '"title" is missing' in told[""]
    assert 'did you mean "title"?' in told["/titel"]
    assert 'did you mean "red"?' in told["/top/across/1/patch"]
    assert '"fabric" is missing: the name of a fabric' in told["/binding"]
    assert told["/units"] == '"in", "cm" or "mm" is wanted here'


@pytest.mark.parametrize("text, words", [
    ("2 1/2", ["no unit", '"2 1/2 in"', '"2 1/2 cm"']),
    ("7", ["no unit"]),
    ("3 yd 4", ["no unit"]),
    ("2 parsecs", ["no length", '"6 mm"']),
    ("2,5 cm", ["a point for the comma"]),
    ("1/0 in", ["no length"]),
    ("-1 in", ["0 or more"]),
    ("99999999999 yd", ["0 or more"]),
    ("9" * 400 + " in", ["too large", "3.3 km"]),
    ("", ["no length"]),
])
def test_lengths(reader: Reader, text: str, words: "list[str]") -> None:
    for place, file in [("/seam/ease", plain(seam={"ease": text})),
                        ("/measures/square", plain(measures={"square": text}))]:
        rows = reader.value(file)["complaints"]
        assert [row["place"] for row in rows] == [place]
        assert all(word in rows[0]["sentence"] for word in words), rows
        assert rows[0]["value"].startswith('"')


def test_a_length_cannot_always_be_named(reader: Reader) -> None:
    (told,) = reader.told(plain(seam={"ease": "square"})).values()
    assert told == "a length itself, not the name of a measure, is wanted here"


def test_some_lengths_are_more_than_nothing(reader: Reader) -> None:
    for place in ["buying/step", "batting/roll width", "backing/width", "binding/cut width", "sleeve/depth"]:
        holder, member = place.split("/")
        file = plain(**{holder: {member: "0 in", **({"fabric": "red"} if holder in ("binding", "sleeve") else {})}})
        assert reader.told(file) == {f"/{place}": "a length with its unit that is more than 0 is wanted here"}


def test_what_would_change_nothing_is_told(reader: Reader) -> None:
    assert list(reader.told(plain(cutting={"trim": "1/4 in"}))) == ["/cutting/trim"]
    assert list(reader.told(plain(cutting={"resquare loss": "1/4 in"}))) == ["/cutting/resquare loss"]
    assert not reader.told(plain(cutting={"trim": "0 in", "resquare loss": "0 in"}))
    assert list(reader.told(plain(binding={"fabric": "red", "cut width": "1/2 in"}))) == ["/binding/cut width"]


def test_words(reader: Reader) -> None:
    for value in ["stationery", 7, None, []]:
        assert reader.told(plain(paper=value)) == {"/paper": '"letter" or "a4" is wanted here'}
    assert reader.told(plain(paper="leter")) == {"/paper": 'this is no such word; did you mean "letter"?'}


def test_a_number_is_no_length(reader: Reader) -> None:
    told = reader.value(plain(seam={"allowance": 0.25}))["complaints"][0]
    assert told["sentence"] == 'a length with its unit, "2 1/2 in" is wanted here' and told["value"] == "0.25"


def test_duplicate_members(reader: Reader) -> None:
    shown = reader.texts(['{"muslin_pattern": 1, "title": "a", "title": "b"}'])[0]
    (told,) = shown["complaints"]
    assert "duplicate" in told["sentence"] and told["line"] == 1 and told["column"] > 0


def test_where_a_file_stops_being_json(reader: Reader, tmp_path: Path) -> None:
    path = tmp_path / "broken.json"
    path.write_text('{\n  "title": "x",\n  "fabrics": }\n')
    (told,) = reader.file(path)["complaints"]
    assert (told["place"], told["line"]) == ("", 3) and told["sentence"].startswith("this is not JSON: ")


def test_places_are_json_pointers(reader: Reader) -> None:
    assert "/a~1b~0c" in reader.told(plain(**{"a/b~c": 1}))


@pytest.mark.parametrize("node, place, words", [
    ({"patch": "red"}, "", 'either "size" or "width"'),
    ({"patch": "red", "size": "1 in", "width": "1 in", "height": "1 in"}, "", "not both"),
    ({"patch": "red", "width": "1 in"}, "", '"height" is missing, which goes with "width"'),
    ({"pacth": "red", "size": "1 in"}, "/pacth", 'did you mean "patch"?'),
    ({"nothing": 1}, "", "the name of a part"),
    ({"patch": "red", "size": "1 in", "across": ["patch"]}, "/across", "nothing is called so"),
    ({"grid": [["patch"], ["patch", "patch"]]}, "/grid/1", "equally long"),
    ({"across": []}, "/across", "at least 1"),
    ({"turn": "patch", "quarters": 4}, "/quarters", "from 0 to 3"),
    ({"turn": "patch", "quarters": 1.5}, "/quarters", "a whole number"),
    ({"unit": "half-squares", "size": "1 in", "fabrics": ["red", "white"]}, "/unit", 'did you mean "half-square"?'),
    ("pach", "", 'did you mean "patch"?'),
    (["patch"], "", "the name of a part"),
    ({"patch": "red", "size": {"times": 2, "of": "sqare"}}, "/size/of", 'did you mean "square"?'),
    ({"repeat": "patch", "columns": "colums", "rows": 1}, "/columns", 'did you mean "columns"?'),
    ({"repeat": "patch", "columns": 0, "rows": 1}, "/columns", "from 1 to"),
    ({"repeat": "patch", "columns": 10**18, "rows": 1}, "/columns", "from 1 to"),
])
def test_nodes(reader: Reader, node: Any, place: str, words: str) -> None:
    told = reader.told(with_part(other=node))
    assert list(told) == ["/parts/other" + place]
    assert words in told["/parts/other" + place]


def test_what_the_library_refuses_is_told_at_the_node(reader: Reader) -> None:
    file = with_part(goose={"unit": "flying-geese", "size": "3 in", "corner": "1 in", "fabrics": ["red", "white"]},
                     star={"unit": "square-in-square", "method": "two-at-a-time", "size": "3 in",
                           "fabrics": ["red", "white"]},
                     row={"across": ["goose", "patch"]})
    rows = {row["place"]: row for row in reader.value(file)["complaints"]}
    assert sorted(rows) == ["/parts/goose/corner", "/parts/star/method"]  # and nothing of the row that holds one of them
    assert all(row["status"] > 0 and row["sentence"] for row in rows.values())


def test_corners_that_go_round_the_wrong_way(reader: Reader) -> None:
    right = [["0 in", "0 in"], ["3 in", "0 in"], ["3 in", "3 in"], ["0 in", "3 in"]]
    crossed = [right[at] for at in (0, 2, 1, 3)]
    for shape, piece, place, words in [(right[::-1], right, "shape", "other order"),
                                       (right, right[::-1], "pieces/0/corners", "other order"),
                                       (right, crossed, "pieces/0/corners/2", "edges that do not cross")]:
        told = reader.told(with_part(own={"shape": shape, "pieces": [{"fabric": "red", "corners": piece}]}))
        assert list(told) == [f"/parts/own/{place}"] and words in told[f"/parts/own/{place}"]


def test_what_cannot_be_worked_out_is_told_at_the_node(reader: Reader) -> None:
    goose = {"unit": "flying-geese", "width": "6 in", "height": "4 in", "fabrics": ["red", "white"]}
    less = {"patch": "red", "width": {"sum": ["square", {"times": -1, "of": "4 in"}]}, "height": "4 in"}
    file = with_part(goose=goose, less=less)
    file["top"] = {"down": ["goose", "less", "patch"]}
    assert sorted(reader.told(file)) == ["/parts/goose", "/parts/less/width"]


def test_nothing_is_told_in_the_units_of_the_file(reader: Reader) -> None:
    file = plain(units="cm", measures={"square": "0 cm"})
    assert set(reader.told(file).values()) == {"Finished size is 0 cm, but must be more than 0 cm."}


def test_what_is_said_of_the_whole_has_its_place(reader: Reader) -> None:
    assert list(reader.told(plain(cutting={"grid": "0 in"}))) == ["/cutting/grid"]
    assert list(reader.told(plain(seam={"allowance": "500 yd"}))) == ["/seam"]
    assert list(reader.told(plain(fabrics={"red": {"usable width": "0 mm"}, "white": {}}))) == ["/fabrics/red/usable width"]


def test_every_size_is_looked_at(reader: Reader) -> None:
    file = plain(sizes=[{"name": "good"}, {"name": "bad", "counts": {"columns": 2**31 - 1}}])
    shown = reader.value(file)
    assert "width" in shown["sizes"][0] and "width" not in shown["sizes"][1]
    assert [row["place"] for row in shown["complaints"]] == ["/top"]


def test_a_size_that_fails_like_an_earlier_one_fails(reader: Reader) -> None:
    file = plain(top={"unit": "snowball", "size": "square", "fabrics": ["red", "white"]},
                 sizes=[{"name": "one"}, {"name": "two"}])
    shown = reader.value(file)
    assert len(shown["complaints"]) == 1
    assert not any("width" in size for size in shown["sizes"])


def test_sizes_name_what_there_is_and_differ(reader: Reader) -> None:
    told = reader.told(plain(sizes=[{"name": "lap", "measures": {"sqare": "2 in"}}, {"name": "lap"}]))
    assert 'did you mean "square"?' in told["/sizes/0/measures/sqare"]
    told = reader.told(plain(sizes=[{"name": "lap"}, {"name": "lap"}]))
    assert told == {"/sizes/1/name": "an earlier size has this name"}


def test_fabrics_are_told_apart_by_name(reader: Reader) -> None:
    told = reader.told(plain(fabrics={"red": {"name": "hay"}, "white": {"name": "hay"}}))
    assert told == {"/fabrics/white/name": "an earlier fabric has this name"}
    told = reader.told(plain(fabrics={"red": {"name": "white"}, "white": {}}))
    assert told == {"/fabrics/white": "an earlier fabric has this name"}
    assert reader.told(plain(fabrics={"red": {"name": "white"}, "white": {"name": "red"}})) == {}


def test_rings_are_shown(reader: Reader) -> None:
    (told,) = reader.told(with_part(a={"across": ["b"]}, b={"down": ["patch", "c"]}, c="a")).items()
    assert told == ("/parts/c", 'this goes round in a ring and never ends: "a" of "b" of "c" of "a"')
    file = plain(measures={"square": {"sum": ["side", "1 in"]}, "side": {"width of": "patch"}})
    (sentence,) = reader.told(file).values()
    assert '"square" of "side" of "patch" of "square"' in sentence
    assert list(reader.told(with_part(own={"turn": "own", "quarters": 1}))) == ["/parts/own/turn"]


def nested(levels: int) -> Any:
    node: Any = "patch"
    for _ in range(levels):
        node = {"turn": node, "quarters": 1}
    return node


def test_depth(reader: Reader) -> None:
    assert reader.told(plain(top=nested(150))) == {}
    assert "more than 200 things" in "".join(reader.told(plain(top=nested(300))).values())


@pytest.mark.parametrize("backwards", [False, True])
def test_depth_by_name(reader: Reader, backwards: bool) -> None:
    def chain(length: int) -> Any:
        rows = [(f"p{i}", {"turn": f"p{i + 1}" if i + 1 < length else "patch", "quarters": 1}) for i in range(length)]
        return with_part(**dict(reversed(rows) if backwards else rows))
    assert reader.told(chain(150)) == {}
    assert "more than 200 things" in "".join(reader.told(chain(30000)).values())
    assert len(reader.value(chain(5000))["complaints"]) == 1


def test_brackets_without_end(reader: Reader) -> None:
    (told,) = reader.texts(["[" * 1000000])[0]["complaints"]
    assert "depth" in told["sentence"]


@pytest.mark.parametrize("text", [b"", b"\xff\xfe", b'{"title": "\xff"}', b"\xed\xa0\x80", b'{"title": "a\x00b"}',
                                  b'{"title": "\\u0000"}', b"[]", b"7", b"null", b'{"muslin_pattern": 1e999}',
                                  b'{"muslin_pattern": 99999999999999999999}', b"{}{}", b"{} x", b"\xef\xbb\xbf"])
def test_bytes_that_are_no_pattern(reader: Reader, tmp_path: Path, text: bytes) -> None:
    path = tmp_path / "file.json"
    path.write_bytes(text)
    shown = reader.file(path)
    assert not shown["read"] and shown["complaints"][0]["place"] == ""
    assert shown["complaints"][0]["sentence"]


def test_an_editors_mark_is_passed_over(reader: Reader, tmp_path: Path) -> None:
    path = tmp_path / "file.json"
    path.write_bytes(b"\xef\xbb\xbf" + json.dumps(PLAIN).encode())
    assert reader.file(path)["complaints"] == []


def test_standard_input(reader: Reader) -> None:
    assert reader.file("-", json.dumps(PLAIN).encode())["title"] == "Plain"


def test_files_that_cannot_be_read(reader: Reader, tmp_path: Path) -> None:
    for path in [tmp_path / "none.json", tmp_path]:
        (told,) = reader.file(path)["complaints"]
        assert told["sentence"].startswith("this file cannot be read: ")


@pytest.mark.skipif(os.geteuid() == 0, reason="the superuser reads everything")
def test_a_file_that_may_not_be_read(reader: Reader, tmp_path: Path) -> None:
    path = tmp_path / "closed.json"
    path.write_text("{}")
    path.chmod(0)
    assert "cannot be read" in reader.file(path)["complaints"][0]["sentence"]


def test_large_files(reader: Reader, tmp_path: Path) -> None:
    path = tmp_path / "large.json"
    path.write_bytes(json.dumps(PLAIN).encode() + b" " * 10_000_000)
    (told,) = reader.file(path)["complaints"]
    assert "4 MiB" in told["sentence"]


def test_files_full_of_mistakes_are_told_in_part_and_soon(reader: Reader) -> None:
    files = [plain(**{f"x{i}": 1 for i in range(100000)}),
             plain(top={"down": [{"across": [f"p{i}" for i in range(1000)]} for _ in range(300)]},
                   parts={f"part{i}": "patch" for i in range(50000)} | {"patch": PLAIN["parts"]["patch"]}),
             plain(top={"across": [{"alternate": [["patch", {"turn": "patch", "quarters": i % 4}]], "columns": 10**5,
                                    "rows": 10**5} for i in range(1000)]})]
    start = time.monotonic()
    for file in files:
        rows = reader.value(file)["complaints"]
        assert 0 < len(rows) <= 1001
    assert time.monotonic() - start < 60


def test_values_are_shortened_between_letters(reader: Reader) -> None:
    rows = reader.value(plain(units="ü" * 1000, title="é" * 121))["complaints"]
    assert {row["place"] for row in rows} == {"/units", "/title"}
    assert all(row["value"].endswith("...") and len(row["value"].encode()) <= 60 for row in rows)


def test_a_cornerstone_belongs_to_square_corners(reader: Reader) -> None:
    border = {"fabric": "red", "width": "1 in", "cornerstone": "white", "corners": "mitred"}
    assert list(reader.told(plain(borders=[border]))) == ["/borders/0"]
    del border["corners"]
    assert reader.value(plain(borders=[border]))["sizes"][0]["borders"][0]["corners"] == 4


def test_dates(reader: Reader) -> None:
    for date, good in [("2024-02-29", True), ("2023-02-29", False), ("1900-02-29", False), ("2000-02-29", True),
                       ("2025-13-01", False), ("2025-00-10", False), ("2025-1-1", False), ("2025-04-31", False)]:
        assert (reader.told(plain(date=date)) == {}) == good, date


def test_the_file_with_everything_is_read(reader: Reader) -> None:
    assert reader.told(load(EVERYTHING)) == {}
