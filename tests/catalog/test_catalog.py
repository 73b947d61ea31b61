"""What muslin-catalog answers, and what it says when it cannot.

SPDX-License-Identifier: MIT
"""
from __future__ import annotations

import json
import math
import sqlite3
import sys
from fractions import Fraction
from pathlib import Path

import pytest
from cataloguing import FOLDER, ROOT, done, kept, pattern, run, table, tables, write_patterns
from muslin import Length

sys.path.insert(0, str(FOLDER))
from tables import in_yards  # noqa: E402


@pytest.fixture(scope="module")
def worked(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """One pattern whose squares are cut 3 1/2 in, one whose squares are off the ruler's grid."""
    folder = tmp_path_factory.mktemp("worked")
    patterns = write_patterns(folder / "patterns", moss=pattern("Moss"), thread=pattern("Thread", "3 1/16 in"))
    done(patterns, "--output", folder / "out", "--price", "11.50", "--workers", "1")
    return folder / "out"


def test_edges_by_hand(worked: Path) -> None:
    """12 squares of 3 1/2 in need 42 in, 11 need 38 1/2; the small size has 18 of each fabric, the large 36."""
    edges = [(row["size"], row["of"], row["narrowest usable width"], row["in a strip or set at that width"],
              row["below it"], row["strips at that width"], row["strips below it"])
             for row in table(worked, "edges") if row["pattern"] == "moss" and row["what"] == "piece"]
    wanted = []
    for size, strips in (("large", ("3", "4", "4", "4")), ("small", ("2", "2", "2", "2"))):
        for fabric in "[1] moss", "[2] chalk":
            wanted.append((size, fabric, "42 in", "12", "11", strips[0], strips[1]))
            wanted.append((size, fabric, "38 1/2 in", "11", "10", strips[2], strips[3]))
    assert sorted(edges) == sorted(wanted)


def test_cloth_and_cost_by_hand(worked: Path) -> None:
    """Large, 36 squares of each fabric: 3 strips at 42 in, 10 1/2 in and so 3/8 yd of each; 4 strips at 41 in, 14 in
    and so 1/2 yd of each."""
    rows = {row["usable width (in)"]: row for row in table(worked, "sizes")
            if (row["pattern"], row["size"]) == ("moss", "large")}
    assert set(rows) == {"38", "39", "40", "41", "42", "43", "44"}
    assert rows["42"]["finished"] == "36 in x 18 in"
    assert (rows["42"]["cloth to buy for the top (yd)"], rows["42"]["cost of cloth for the top"]) == ("3/4", "8.63")
    assert (rows["41"]["cloth to buy for the top (yd)"], rows["41"]["cost of cloth for the top"]) == ("1", "11.50")


def test_off_the_grid_by_hand(worked: Path) -> None:
    """3 1/16 in squares: cut 3 9/16 in; six of them are 18 3/8 in, on the grid, and twelve 36 3/4 in."""
    rows = table(worked, "off-grid")
    assert {row["pattern"] for row in rows} == {"thread"}
    assert {(row["what"], row["length"]) for row in rows} == \
        {(f"cut {side} of [{piece}] {fabric}", "3 9/16 in") for side in ("width", "height")
         for piece, fabric in ((1, "moss"), (2, "chalk"))}


def test_strips_for_sets_off_the_grid_by_hand(tmp_path: Path) -> None:
    """Three strips of 2 in finished, seams of 6 mm: strips are cut 50.8 + 12 = 62.8 mm, and the segments, 6 in tall
    when finished, 152.4 + 12 = 164.4 mm; the borders, 2 in wide, are cut 62.8 mm too. The top is 24 in wide without
    them: the sides are cut 609.6 + 12 mm long, the others 4 in longer. Moss and chalk have strips, chalk has the
    borders."""
    rail = [{"patch": fabric, "width": "2 in", "height": "6 in"} for fabric in ("moss", "chalk", "moss")]
    rails = {**pattern("Rails"), "seam": {"allowance": "6 mm"}, "cutting": {}, "parts": {"rail": {"across": rail}},
             "top": {"repeat": "rail", "columns": 4, "rows": 4}, "measures": {}, "counts": {},
             "borders": [{"fabric": "chalk", "width": "2 in"}], "sizes": [{"name": "one"}]}
    done(write_patterns(tmp_path / "patterns", rails=rails), "--output", tmp_path, "--picture", "none")
    rows = {(row["what"].split(" [")[0], row["length"]) for row in table(tmp_path, "off-grid")}
    assert rows == {("cut width of strips", "62.8 mm"), ("cut width of segments of set A", "164.4 mm"),
                    ("cut height of", "62.8 mm"), ("cut width of", "621.6 mm"), ("cut width of", "723.2 mm")}
    strips = [row for row in table(tmp_path, "off-grid") if row["what"].startswith("cut width of strips")]
    assert {row["what"].split("] ")[1] for row in strips} == {"moss", "chalk"}
    assert {row["nearest on the grid"] for row in strips} == {"2 1/2 in"}  # 63.5 mm


def test_yards_to_buy_are_rounded_up(tmp_path: Path) -> None:
    """24 squares of 3 1/2 in of each fabric from 42 in: two strips of 12, 7 in, sold in steps of 10 cm: 20 cm of each,
    40 cm in all, 0.4374 yd: 28/64 yd is 40.005 cm, enough, and of eighths 1/2."""
    metric = {**pattern("Metric", "3 in", 6), "buying": {"step": "10 cm"}, "backing": {"fabric": "chalk"},
              "sizes": [{"name": "one", "counts": {"across": 8}}]}
    done(write_patterns(tmp_path / "patterns", metric=metric), "--output", tmp_path, "--from", "42 in", "--to", "42 in",
         "--picture", "shown.svg")
    row, = table(tmp_path, "sizes")
    assert row["cloth to buy for the top (in)"] == "15.748031"
    assert row["cloth to buy for the top (yd)"] == "7/16"
    assert in_yards(Length.parse("40 cm").ticks, 8) == "1/2"
    inches = Fraction(row["backing to buy (in)"])
    assert Fraction(row["backing to buy (yd)"]) == Fraction(math.ceil(inches * 64 / 36), 64)


def test_finished_sizes_off_the_ruler_are_about(tmp_path: Path) -> None:
    """Six squares of 19.3 mm are 115.8 mm, which is on no mark of a ruler in inches."""
    third = pattern("Third", "19.3 mm")
    done(write_patterns(tmp_path / "patterns", third=third), "--output", tmp_path, "--picture", "none")
    small, = {row["finished"] for row in table(tmp_path, "sizes") if row["size"] == "small"}
    assert small.startswith("about ") and " x about " in small and "mm" not in small
    assert {row["finished width (in)"] for row in table(tmp_path, "sizes")} == {"4.559055", "9.11811"}  # 115.8 mm


def test_a_file_that_is_no_text(tmp_path: Path) -> None:
    patterns = write_patterns(tmp_path / "patterns", moss=pattern("Moss"))
    (patterns / "bin.json").write_bytes(b"\xff\xfe\x00")
    (patterns / "late.json").write_bytes(b'{"title": "\xe9"}')
    finished = run(patterns, "--output", tmp_path / "out", "--picture", "none")
    assert finished.returncode == 1
    assert "bin.json: this is no text in UTF-8, from byte 0 on" in finished.stderr
    assert "late.json: this is no text in UTF-8, from byte 11 on" in finished.stderr
    assert {row["pattern"] for row in table(tmp_path / "out", "sizes")} == {"moss"}


def test_pictures_of_an_earlier_run_go(tmp_path: Path) -> None:
    patterns = write_patterns(tmp_path / "patterns", **{f"moss{i}": pattern("Moss", "1 in", 2) for i in range(16)})
    words = (patterns, "--output", tmp_path, "--picture", "shown.svg", "--from", "42 in", "--to", "42 in")
    done(*words)
    assert (tmp_path / "shown-2.svg").exists()
    (patterns / "moss0.json").unlink()
    done(*words)
    assert (tmp_path / "shown.svg").exists() and not (tmp_path / "shown-2.svg").exists()


def test_seams_are_tried(tmp_path: Path) -> None:
    patterns = write_patterns(tmp_path / "patterns", moss=pattern("Moss"))
    done(patterns, "--output", tmp_path, "--seams", "1/4 in,1/2 in,6 mm", "--from", "42 in", "--to", "42 in",
         "--picture", "none")
    rows = {row["seam allowance"]: row for row in table(tmp_path, "sizes") if row["size"] == "large"}
    assert set(rows) == {"1/4 in", "1/2 in", "6 mm"}
    # 4 in squares: 10 a strip of 42 in, 4 strips, 16 in, 1/2 yd of each
    assert rows["1/2 in"]["cloth to buy for the top (yd)"] == "1"
    assert rows["1/4 in"]["cloth to buy for the top (yd)"] == "3/4"
    assert all(row["finished"] == "36 in x 18 in" for row in rows.values())


def test_picture(worked: Path, tmp_path: Path) -> None:
    image = (worked / "catalogue.png").read_bytes()
    assert image.startswith(b"\x89PNG") and len(image) > 20000
    patterns = write_patterns(tmp_path / "patterns", **{f"moss{i}": pattern("Moss", "1 in", 2) for i in range(16)})
    done(patterns, "--output", tmp_path, "--picture", "shown.svg", "--from", "42 in", "--to", "43 in")
    assert "a piece less from each strip" in (tmp_path / "shown.svg").read_text(encoding="utf-8") or \
        (tmp_path / "shown.svg").stat().st_size > 20000
    assert (tmp_path / "shown-2.svg").exists() and not (tmp_path / "shown-3.svg").exists()


def test_sources(tmp_path: Path, worked: Path) -> None:
    """The same from a database, as from a folder."""
    database = sqlite3.connect(tmp_path / "shop.db")
    database.execute("CREATE TABLE book (title TEXT, design TEXT)")
    database.executemany("INSERT INTO book VALUES (?, ?)", [("moss", json.dumps(pattern("Moss"))),
                                                           ("thread", json.dumps(pattern("Thread", "3 1/16 in")))])
    database.commit()
    database.close()
    done(tmp_path / "shop.db", "--query", "SELECT title, design FROM book", "--output", tmp_path / "out", "--price",
         "11.50", "--workers", "1", "--picture", "none")
    assert tables(tmp_path / "out") == tables(worked)


def test_what_is_kept_is_not_done_again(tmp_path: Path) -> None:
    patterns = write_patterns(tmp_path / "patterns", **{f"moss{i}": pattern("Moss", f"{i} in", 2) for i in range(1, 6)})
    words = (patterns, "--output", tmp_path, "--to", "40 in", "--progress", "always", "--picture", "none")
    assert "5 of 5 worked out" in done(*words)
    first = tables(tmp_path)
    assert "worked out" not in done(*words)
    assert tables(tmp_path) == first
    places = sorted((tmp_path / "kept").glob("*/*.json"))
    places[0].unlink()
    places[1].write_text('{"half', encoding="utf-8")
    assert "5 of 5 worked out (3 kept from before)" in done(*words)
    assert tables(tmp_path) == first
    write_patterns(patterns, moss3=pattern("Moss", "3 in", 4))
    assert "5 of 5 worked out (4 kept from before)" in done(*words)
    assert tables(tmp_path) != first and kept(tmp_path) == 6


def test_complaints(tmp_path: Path) -> None:
    broken = pattern("Broken")
    broken["parts"]["dark"]["patch"] = "mos"
    patterns = write_patterns(tmp_path / "patterns", moss=pattern("Moss"), broken=broken, none="[1, 2", list="[]")
    finished = run(patterns, "--output", tmp_path / "out", "--picture", "none")
    assert finished.returncode == 1
    lines = finished.stderr.splitlines()
    assert len(lines) == 3 and all(line.startswith("muslin-catalog: ") for line in lines), lines
    assert any("/parts/dark/patch" in line and 'did you mean "moss"' in line for line in lines)
    assert {row["pattern"] for row in table(tmp_path / "out", "sizes")} == {"moss"}


def test_what_fits_some_widths_only(tmp_path: Path) -> None:
    """Triangles of 41 in are cut from squares of 41 7/8 in, which cloth of 41 in does not give."""
    wide = pattern("Wide", "41 in", 2)
    wide["parts"]["dark"] = {"unit": "half-square", "method": "pieces", "size": "square", "fabrics": ["moss", "chalk"]}
    patterns = write_patterns(tmp_path / "patterns", wide=wide, moss=pattern("Moss"))
    words = (patterns, "--output", tmp_path / "out", "--from", "41 in", "--to", "43 in")
    for finished in run(*words), run(*words):  # told again when nothing is left to do
        assert finished.returncode == 1, finished.stderr
        assert "wide, usable width 41 in" in finished.stderr and "Traceback" not in finished.stderr
    widths = {row["usable width (in)"] for row in table(tmp_path / "out", "sizes") if row["pattern"] == "wide"}
    assert "43" in widths and "41" not in widths


@pytest.mark.parametrize("words, says", [
    (["nowhere"], "there is nothing of this name"), ([str(ROOT / "include")], "no pattern file"),
    ([str(ROOT / "README.md")], "nor a database to ask"), (["x", "--from", "40"], '"40" has no unit'),
    (["x", "--from", "44 in", "--to", "40 in"], "--to no less than it"), (["x", "--price", "1.234"], "two decimals"),
    (["x", "--workers", "0"], "no number from 1"), (["x", "--picture", "../a.png"], "must be a name"),
    (["x", "--seams", "1/4 in,a"], "--seams"), (["x", "--step", "0 in"], "--step"),
])
def test_what_cannot_be(tmp_path: Path, words: "list[str]", says: str) -> None:
    finished = run(*words, "--output", tmp_path)
    assert finished.returncode == 2 and says in finished.stderr, finished.stderr
    assert "Traceback" not in finished.stderr


def test_help_and_no_extension(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    assert "--cluster" in run("--help").stdout
    monkeypatch.setenv("MUSLIN_SQL", str(tmp_path / "nothing"))
    finished = run(ROOT / "examples/patterns", "--output", tmp_path)
    assert finished.returncode == 2 and "MUSLIN_SQL must name the extension" in finished.stderr
