"""Functions of one value: figures worked out by hand or with fractions, and all that is refused.

SPDX-License-Identifier: MIT
"""
from __future__ import annotations

import random
import re
import sqlite3

import pytest
from asking import SQL, Asked, inches


@pytest.mark.parametrize("expression, ticks", [
    ("muslin_length('2 1/2 in')", inches("5/2")),
    ("muslin_length('2 1/2', 'in')", inches("5/2")),
    ("muslin_length('1 yd 4 1/2 in')", inches("81/2")),
    ("muslin_cut('6 in')", inches("13/2")),
    ("muslin_cut('6 in', '1/4 in')", inches("13/2")),
    ("muslin_cut('6 in', '1/4 in', '1/16 in')", inches("105/16")),
    ("muslin_unfinished('12 in', '1/4 in')", inches("25/2")),
    ("muslin_finished('12 1/2 in', '1/4 in')", inches(12)),
    ("muslin_row_unfinished('2 1/2 in', 6)", inches("25/2")),       # a guild's handout: 6 strips make 12 1/2 in
    ("muslin_cut_resized('6 1/2 in', 2, 3)", inches("9/2")),        # 6 in finished becomes 4 in
    ("muslin_usable_width('44 in', '1/2 in')", inches(43)),
    ("muslin_bought('112 in', '1/8 yd')", inches("225/2")),         # 25 eighths of a yard
    ("muslin_rounded('3.05 in', '1/8 in', 'up')", inches("25/8")),
    ("muslin_rounded('3.05 in', '1/8 in', 'down')", inches(3)),
    ("muslin_narrower_by('4 in', '44 in')", 0),
    ("muslin_narrower_by('4 in', '43 in')", inches(3)),
    ("muslin_shorter_by('6 1/2 in', '40 in', '1/2 in')", 0),
    # from one end: 40 in less two trims of 1/2 in are 39 in, six segments of 6 1/2 in and nothing left; three of
    # 12 1/2 in are 37 1/2 in, where both ends give one from each half
    ("muslin_shorter_by('6 1/2 in', '40 in', '1/2 in', 0, 'one end')", 0),
    ("muslin_shorter_by('12 1/2 in', '40 in', '1/2 in', 0, 'one end')", inches("3/2")),
    ("muslin_length(5, 'in')", inches(5)), ("muslin_length(2.5, 'cm')", 8000), ("muslin_length(-3, 'mm')", -960),
    ("muslin_length('5 mm', 'in')", 1600),
])
def test_lengths(sql: Asked, expression: str, ticks: int) -> None:
    assert sql.value(expression) == ticks


@pytest.mark.parametrize("expression, answer", [
    ("muslin_text(20320)", "2 1/2 in"), ("muslin_text(20320, 'mm')", "63.5 mm"),
    ("muslin_text('1.3 in', 'in', 8)", "1 1/4 in"), ("muslin_text('1 in', 'cm', 1)", "2.5 cm"),
    # 380 cm are 4.15573 yd, 4 yd and 1.25 eighths; 164.4 mm are 6.4724 in, 6 in and 30.2 sixty-fourths
    ("muslin_text('380 cm', 'yd', 8)", "4 1/8 yd"), ("muslin_text('380 cm', 'yd', 8, 'up')", "4 1/4 yd"),
    ("muslin_text('380 cm', 'yd', 8, 'down')", "4 1/8 yd"), ("muslin_text_exact('380 cm', 'yd', 8)", 0),
    ("muslin_text_exact('49 1/2 in', 'yd', 8)", 1), ("muslin_text(muslin_cut('6 in', '6 mm'))", "6 15/32 in"),
    ("muslin_text(muslin_cut('6 in', '6 mm'), 'mm')", "164.4 mm"), ("muslin_text_exact(muslin_cut('6 in', '6 mm'))", 0),
    ("muslin_text_exact(muslin_cut('6 in', '6 mm'), 'mm')", 1),
    ("muslin_narrower_by('50 in', '44 in')", None), ("muslin_shorter_by('41 in', '40 in')", None),
    ("muslin_yield('12 1/2 in', '40 in', '1/2 in')", 2),
    ("muslin_yield('12 1/2 in', '40 in', '1/2 in', 0, 'one end')", 3),
    ("muslin_text('49 1/2 in', 'yd')", "1 3/8 yd"), ("muslin_length_exact('1/3 in')", 0),
    ("muslin_length_exact('0.1 mm')", 1), ("muslin_on_grid('3 1/8 in', '1/8 in')", 1),
    ("muslin_on_grid('3.05 in', '1/8 in')", 0), ("muslin_per_strip('4 in', '44 in')", 11),
    ("muslin_per_strip('50 in', '44 in')", 0), ("muslin_strips(52, '4 in', '44 in')", 5),
    ("muslin_yield('6 1/2 in', '40 in', '1/2 in')", 6), ("muslin_yield('6 1/2 in', '40 in', '1/2 in', '1 in')", 4),
    ("muslin_cost('3/8 yd', 980)", 368), ("muslin_cost('1.5 m', 1000, '1 m')", 1500),
])
def test_texts_and_counts(sql: Asked, expression: str, answer: object) -> None:
    assert sql.value(expression) == answer


def test_ticks_and_texts_are_the_same(sql: Asked) -> None:
    chance = random.Random(7)
    for _ in range(300):
        sixty_fourths = chance.randrange(1, 64 * 60)
        whole, rest = divmod(sixty_fourths, 64)
        text = f"{whole} {rest}/64 in"
        assert sql.value("muslin_length(?)", text) == 127 * sixty_fourths
        assert sql.value("muslin_cut(?, ?)", text, "6 mm") == sql.value("muslin_cut(?, ?)", 127 * sixty_fourths, 1920)
        assert sql.value("muslin_cut(?, ?)", text, "6 mm") == 127 * sixty_fourths + 2 * 1920
        assert sql.value("muslin_length(muslin_text(?))", 127 * sixty_fourths) == 127 * sixty_fourths


def functions() -> "list[tuple[str, int, int]]":
    """Name, least and most arguments of each, as functions.c has them."""
    found = re.findall(r'\{ "(muslin_\w+)", (\d), (\d),', (SQL / "functions.c").read_text(encoding="utf-8"))
    return [(name, int(least), int(most)) for name, least, most in found]


@pytest.mark.parametrize("name, least, most", [row for row in functions() if row[2] > 0])
def test_nothing_in_nothing_out(sql: Asked, name: str, least: int, most: int) -> None:
    for given in range(least, most + 1):
        for at in range(given):
            values: "list[object]" = ["1 in"] * given
            values[at] = None
            assert sql.value(f"{name}({', '.join('?' * given)})", *values) is None


@pytest.mark.parametrize("name, least, most", [row for row in functions() if row[2] > 0])
def test_other_types_are_refused_by_name(sql: Asked, name: str, least: int, most: int) -> None:
    for odd in (2.5, float("inf"), b"", b"\x00" * 100000, "", "two", "2", "2 1/2", "1 in\x00", "\ufeff1 in"):
        complaint = sql.complaint(f"SELECT {name}({', '.join('?' * least)})", *([odd] * least))
        assert complaint.startswith(name + ": "), (odd, complaint)
        assert complaint.endswith("."), complaint


@pytest.mark.parametrize("query, says", [
    ("muslin_cut(2.5)", "The finished size is a number with a point: write whole ticks, or a text with its unit"),
    ("muslin_cut('2 1/2')", 'has no unit: write "2 1/2 in" or "2 1/2 mm"'),
    ("muslin_cut('2,5 cm')", "The finished size has a comma at byte 1: write decimals with a point, as in '2.5 in'"),
    ("muslin_length('2,5', 'cm')", "The length has a comma at byte 1"),
    ("muslin_yield('6 in', '40 in', 0, '1 in', 'one end')", "Width kept clear at the fold is 1 in, but must be"),
    ("muslin_yield('6 in', '40 in', 0, 0, 'left')", 'The end that is cut from cannot be "left": it is both ends or'),
    ("muslin_text('1 in', 'in', 8, 'sideways')", "it is up, down or nearest"),
    ("muslin_text('1 in', 'in', 0)", "The denominator is 0, but must be 1 to 64."),
    ("muslin_text('1 in', 'cm', -1)", "The number of decimals is -1, but must be 0 to 6."),
    ("muslin_finished('1/4 in')", "Cut size is 1/4 in, but its seams take 1/2 in."),
    ("muslin_strips(3, '50 in', '40 in')", "50 in"),
    ("muslin_length('2', 'inch')", 'The unit cannot be "inch": it is in, ft, yd, mm, cm or m.'),
    ("muslin_text('1 in', 'in', 65)", "The denominator is 65, but must be 1 to 64."),
    ("muslin_text('1 in', 'mm', 7)", "The number of decimals is 7, but must be 0 to 6."),
    ("muslin_cut(9223372036854775807)", "at most about 132104.0629 in"),
    ("muslin_rounded('1 in', 0)", "The grid is 0 ticks, but must be 1 to"),
    ("muslin_pattern_file('no/such/file.json')", 'The pattern file "no/such/file.json" cannot be read.'),
])
def test_sentences(sql: Asked, query: str, says: str) -> None:
    assert says in sql.complaint(f"SELECT {query}")


def test_sums_may_stand_in_the_schema(sql: Asked) -> None:
    sql.database.executescript("""
        CREATE TABLE piece (finished TEXT, cut INTEGER AS (muslin_cut(finished, '1/4 in')) STORED);
        CREATE INDEX by_ticks ON piece (muslin_length(finished));
        CREATE VIEW cuts AS SELECT finished, muslin_text(cut) AS cut FROM piece;
        PRAGMA trusted_schema = OFF;
        INSERT INTO piece (finished) VALUES ('6 in'), ('60 mm');
    """)
    assert [tuple(row) for row in sql.rows("SELECT * FROM cuts ORDER BY muslin_length(finished)")] == \
        [("60 mm", "2 55/64 in"), ("6 in", "6 1/2 in")]  # 60 + 12.7 mm are 2.862 in
    plan = sql.rows("EXPLAIN QUERY PLAN SELECT * FROM piece WHERE muslin_length(finished) = 48768")
    assert "by_ticks" in plan[0]["detail"]


def test_files_are_not_read_by_views(sql: Asked) -> None:
    sql.database.execute("CREATE VIEW trap AS SELECT muslin_pattern_file('/etc/passwd')")
    assert "unsafe use" in sql.complaint("SELECT * FROM trap")
    sql.database.execute("PRAGMA trusted_schema = OFF")
    sql.database.execute("CREATE VIEW slow AS SELECT * FROM muslin_cutplan('[]')")
    assert "unsafe use" in sql.complaint("SELECT * FROM slow")


def test_readme_names_all(sql: Asked) -> None:
    told = (SQL / "README.md").read_text(encoding="utf-8")
    rows = re.findall(r"^\| `(muslin_\w+)\((.*?)\)` \|", told, re.MULTILINE)
    tables = re.findall(r'\.name = "(muslin_\w+)"', "".join(file.read_text() for file in SQL.glob("table_*.c")))
    assert sorted(name for name, _ in rows) == sorted([name for name, _, _ in functions()] + tables)
    words = {name: words for name, words in rows}
    for name, least, most in functions():
        outside, _, inside = words[name].partition("[")
        assert len(re.findall(r"\w+", outside)) == least, name
        assert len(re.findall(r"\w+", outside + inside)) == most, name
    for table in tables:
        hidden = re.findall(r"\w+", words[table])
        columns = sql.rows(f"SELECT name FROM pragma_table_xinfo('{table}') WHERE hidden = 1")
        assert [row["name"] for row in columns] == hidden
        section = told[told.index(f"### {table}\n"):].split("\n#")[0]
        described = [name for row in re.findall(r"^\| (`\w.*?) \| \w", section, re.MULTILINE)
                     for name in re.findall(r"`(\w+)`", row)]
        columns = sql.rows(f"SELECT name FROM pragma_table_xinfo('{table}') WHERE hidden = 0")
        assert [row["name"] for row in columns] == described


def test_readme_names_all_words(sql: Asked) -> None:
    """Kinds and methods as the extension lists them when it is given another."""
    told = (SQL / "README.md").read_text(encoding="utf-8")
    paragraph = " ".join(told[told.index("`kind` is one of "):].split("\n\n")[0].split())
    for column, says, wish in (("kind", "The unit cannot be", "'x', '3 in'"),
                               ("method", "The method cannot be", "'hexagon', '3 in', 1, 'x'")):
        complaint = sql.complaint(f"SELECT * FROM muslin_unit({wish})")
        assert says in complaint
        listed = re.findall(r"[a-z0-9-]+", complaint.split(": it is ")[1].replace(" or ", ", "))
        written = re.search(rf"`{column}` is one of (.*?)[.;]", paragraph)
        assert written and re.findall(r"`([a-z0-9-]+)`", written.group(1)) == listed


def test_wrong_numbers_of_arguments(sql: Asked) -> None:
    for name, least, most in functions():
        for given in {least - 1, most + 1} - {-1}:
            assert "wrong number of arguments" in sql.complaint(f"SELECT {name}({', '.join(['1'] * given)})")
    with pytest.raises(sqlite3.Error, match="too many arguments"):
        sql.rows("SELECT * FROM muslin_pattern(1, 2, 3)")
