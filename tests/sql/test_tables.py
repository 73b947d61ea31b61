"""Functions that give a table, and the invented catalogue with its questions.

SPDX-License-Identifier: MIT
"""
from __future__ import annotations

import json
import os
import subprocess
from pathlib import Path
from typing import Any

import pytest
from asking import EXTENSION, ROOT, SAMPLES, Asked, inches, questions

KITE = ROOT / "examples/patterns/a-kite-each.json"


def test_half_squares(sql: Asked) -> None:
    rows = sql.rows("SELECT * FROM muslin_unit('half-square', '3 in', 24)")
    assert [(row["fabric"], row["count"], row["cut_width"], row["made"]) for row in rows] == \
        [(1, 12, inches("31/8"), "two-at-a-time"), (2, 12, inches("31/8"), "two-at-a-time")]
    assert rows[0]["unfinished_width"] == inches("7/2")
    assert sql.rows("SELECT * FROM muslin_unit('half-square', '3 in') WHERE method = 'pieces'")[0]["gives"] == 2


def test_backing_needs_three_widths(sql: Asked) -> None:
    """Two panels side by side give 79 in: 80 in needs three."""
    rows = sql.rows("SELECT * FROM muslin_backing('72 in', '48 in', '40 in', '4 in', '1/2 in')")
    along = [row for row in rows if row["layout"] == "seams-along"]
    assert along[0]["panels"] == 3 and sum(row["best"] for row in rows) == 1


def test_cutplan(sql: Asked) -> None:
    pieces = [{"count": n, "width": f"{side} in", "height_ticks": inches(side), "name": side}
              for n, side in ((32, "5.5"), (16, "6"), (8, "9.5"))]
    rows = sql.rows("SELECT * FROM muslin_cutplan(?, '40 in')", json.dumps(pieces))
    assert {(row["cloth_length"], row["least"], row["proven"]) for row in rows} == {(inches(60), inches(60), 1)}
    for piece in pieces:
        laid = [row for row in rows if row["name"] == piece["name"]]
        assert sum(row["times"] * row["count"] for row in laid) == piece["count"]
        assert all(row["cut_width"] == row["cut_height"] == piece["height_ticks"] for row in laid)


def test_cloth_and_bound_of_a_cutplan_are_the_same_measure(sql: Asked) -> None:
    """Eight pieces of 5 in fill one strip of 40 in; the end of the bolt takes 1 in more."""
    row = sql.rows("""SELECT * FROM muslin_cutplan('[{"count": 8, "width": "5 in", "height": "5 in"}]', '40 in')
                      WHERE straightening = '1 in'""")[0]
    assert (row["cloth_length"], row["least"], row["proven"]) == (inches(6), inches(6), 1)


@pytest.mark.parametrize("pieces, says", [
    ("no list", "The list of pieces is no JSON"), ("{}", "must be a JSON array"), ("[1]", "Row 1 of the pieces"),
    ('[{"width": "1 in"}]', 'Row 1 of the pieces needs either a "height"'),
    ('[{"width": 1.5, "height": 1}]', '"width"'),
    ('[{"width": 5, "height": "5 in"}]', 'The "width" in row 1 of the pieces is a bare number, which does not say'),
    ('[{"width_ticks": 1, "width": "1 in", "height": "1 in"}]', 'needs either a "width", a text'),
    ('[{"width_ticks": 1.5, "height": "1 in"}]', 'needs either a "width"'),
    ('[{"width_ticks": "1", "height": "1 in"}]', 'needs either a "width"'),
    ('[{"width": "1", "height": "1 in"}]', "has no unit"),
    ('[{"width": "1 in", "height": "1 in", "wide": 1}]', '"wide"'),
    ('[{"width": "1 in", "height": "1 in"}, {"width": "41 in", "height": "1 in"}]',
     "Row 2 of the pieces: Cut width of a piece is 41"),
    ('[{"count": "2", "width": "1 in", "height": "1 in"}]', "no whole number"),
    ('[{"width": "1 in", "height": "1 in", "turn": 1, "lengthwise": 1}]', "cannot both"),
    ('[{"count": 1, "count": 2}]', "duplicate"), ("[" + "{}," * 5000 + "{}]", "at most 4096 rows"),
])
def test_lists_that_are_none(sql: Asked, pieces: str, says: str) -> None:
    complaint = sql.complaint("SELECT * FROM muslin_cutplan(?)", pieces)
    assert complaint.startswith("muslin_cutplan: ") and says in complaint


def test_arguments(sql: Asked) -> None:
    assert sql.rows("SELECT * FROM muslin_unit('half-square', NULL)") == []
    assert sql.rows("SELECT * FROM muslin_cutplan('[]')") == []
    assert "something is missing" in sql.complaint("SELECT * FROM muslin_unit")
    assert "something is missing" in sql.complaint("SELECT * FROM muslin_backing('60 in')")
    assert "pieces, two-at-a-time" in sql.complaint("SELECT * FROM muslin_unit('half-square', '3 in', 1, 'scissors')")
    rows = sql.rows("SELECT kind, size FROM (VALUES ('hexagon'), ('half-square')) AS k, muslin_unit(k.column1, '3 in')")
    assert [tuple(row) for row in rows] == [("hexagon", "3 in")] + [("half-square", "3 in")] * 2
    rows = sql.rows("SELECT DISTINCT kind FROM muslin_unit WHERE kind IN ('hexagon', 'octagon') AND size = '3 in'")
    assert {row[0] for row in rows} == {"hexagon", "octagon"}


def answer_of(sample: Path) -> Any:
    program = os.environ.get("MUSLIN_CLI", "muslin")
    done = subprocess.run([program, "pattern", str(sample), "--json"], capture_output=True, text=True, check=True)
    return json.loads(done.stdout)["sizes"]


@pytest.mark.parametrize("sample", SAMPLES, ids=lambda path: path.stem)
def test_patterns_as_the_command_line_has_them(sql: Asked, sample: Path) -> None:
    pattern = sample.read_text(encoding="utf-8")
    sizes = answer_of(sample)
    rows = sql.rows("SELECT * FROM muslin_pattern(?)", pattern)
    assert [(row["size"], row["finished_width"], row["patches"]) for row in rows] == \
        [(size["size"], size["top"]["finished"]["width"]["ticks"], size["top"]["patches"]) for size in sizes]
    facts = sql.rows("SELECT facts FROM muslin_pattern_facts(?)", pattern)
    assert [json.loads(row["facts"]) for row in facts] == sizes
    for row, size in zip(rows, sizes):
        assert row["cloth_bought"] == sum(fabric["buy"]["ticks"] for fabric in size["fabrics"] if "buy" in fabric)
        assert row["backing_bought"] == (size["backing"] and size["backing"]["buy"]["ticks"])
        fabrics = sql.rows("SELECT * FROM muslin_pattern_fabrics(?, ?)", pattern, size["size"].upper())
        assert [(fabric["fabric"], fabric["bought"], fabric["strips_needed"]) for fabric in fabrics] == \
            [(fabric["fabric"], fabric.get("buy", {}).get("ticks"), fabric.get("strips_needed"))
             for fabric in size["fabrics"]]
        sets = sql.rows("SELECT * FROM muslin_pattern_sets(?, ?)", pattern, size["size"])
        assert [(row["letter"], row["sets"], row["shorter_by"]) for row in sets] == \
            [(row["letter"], row["sets"], row["strips_may_be_shorter_by"]["ticks"]) for row in size["strip_sets"]]
        cuts = sql.rows("SELECT * FROM muslin_pattern_cuts(?) WHERE size = ?", pattern, size["size"])
        assert [(cut["piece"], cut["count"], cut["cut_width"], cut["cut_height"], cut["source"]) for cut in cuts] == \
            [(cut["piece"], cut["count"], cut["cut"]["width"]["ticks"], cut["cut"]["height"]["ticks"], cut["source"])
             for cut in size["cuts"]]


def test_patterns_that_are_none(sql: Asked) -> None:
    pattern = json.loads(KITE.read_text(encoding="utf-8"))
    assert 'has no size "tent"' in sql.complaint("SELECT * FROM muslin_pattern(?, 'tent')", json.dumps(pattern))
    pattern["parts"]["red"]["patch"] = "pink"
    pattern["borders"][0]["width"] = "3"
    pattern["borders"][1]["width"] = "a mile"
    complaint = sql.complaint("SELECT * FROM muslin_pattern_cuts(?)", json.dumps(pattern))
    assert complaint.startswith("muslin_pattern_cuts: ") and "/parts/red/patch" in complaint
    assert "wrong" in sql.complaint("SELECT * FROM muslin_pattern('')")
    assert "must be a text" in sql.complaint("SELECT * FROM muslin_pattern(17)")


def test_questions_of_the_catalogue(catalogue: Asked) -> None:
    asked = questions()
    assert len(asked) == 10
    answers = {question: [tuple(row) for row in catalogue.rows(query)] for question, query in asked.items()}
    assert all(answers.values())
    assert ("flood blue", "40 1/2 in") in answers["Usable width of each bolt"]
    pieces = answers["Cut size of each piece, and how many fit side by side in one strip of its cloth"]
    assert ("High Water", "end strip", "12 1/2 in", "2 1/2 in", 3, "3 in") in pieces
    money = answers["Cloth and money for each runner: one plan for each of its cloths"]
    # 24 squares of 3 1/2 in, 11 a strip, and two strips of 2 1/2 x 12 1/2 in beside two of the squares' third strip:
    # three strips of 3 1/2 in; 3/8 yd at 9.80 is 3.675
    assert ("High Water", "flood blue", "10 1/2 in", "3/8 yd", 368) in money


def test_the_shell_takes_it(tmp_path: Path) -> None:
    script = f".load \"{EXTENSION}\"\nSELECT muslin_text(muslin_cut('6 in', '1/4 in'));\n"
    done = subprocess.run(["sqlite3", tmp_path / "db"], input=script, capture_output=True, text=True, check=False)
    assert (done.stdout, done.stderr) == ("6 1/2 in\n", "")


def test_random_calls() -> None:
    folder = os.environ.get("MUSLIN_SQL_CHECKED")
    if folder is None:
        pytest.skip("MUSLIN_SQL_CHECKED names no build with sanitizers")
    for seed in "1", "2":
        done = subprocess.run([f"{folder}/random_calls", f"{folder}/sql/muslin_sql.so", seed, "4000", str(SAMPLES[-2])],
                              capture_output=True, text=True, check=False)
        assert done.returncode == 0, (done.stdout + done.stderr)[-4000:]
        counts = [line.split() for line in done.stdout.splitlines()]
        assert all(int(answered) > 0 for _, answered, _ in counts)
