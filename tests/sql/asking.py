"""SQLite with muslin_sql loaded, asked by tests.

SPDX-License-Identifier: MIT
"""
from __future__ import annotations

import os
import re
import sqlite3
from fractions import Fraction
from pathlib import Path
from typing import Any

import pytest

ROOT = Path(__file__).resolve().parents[2]
SQL = ROOT / "examples/sql"
SAMPLES = sorted((ROOT / "examples/patterns").glob("*.json"))
EXTENSION = os.environ.get("MUSLIN_SQL", "muslin_sql")
INCH = 8128


def inches(number: "int | float | str | Fraction") -> int:
    ticks = Fraction(number) * INCH
    assert ticks.denominator == 1
    return ticks.numerator


class Asked:
    """One database in memory."""

    def __init__(self) -> None:
        self.database = sqlite3.connect(":memory:")
        self.database.enable_load_extension(True)
        self.database.load_extension(EXTENSION)
        self.database.enable_load_extension(False)
        self.database.row_factory = sqlite3.Row

    def rows(self, query: str, *values: Any) -> "list[Any]":
        return self.database.execute(query, values).fetchall()

    def value(self, expression: str, *values: Any) -> Any:
        return self.rows(f"SELECT {expression}", *values)[0][0]

    def complaint(self, query: str, *values: Any) -> str:
        with pytest.raises(sqlite3.Error) as caught:
            self.rows(query, *values)
        return str(caught.value)

    def load_catalogue(self, monkeypatch: pytest.MonkeyPatch) -> None:
        monkeypatch.chdir(ROOT)
        self.database.executescript((SQL / "catalogue.sql").read_text(encoding="utf-8"))


def questions() -> "dict[str, str]":
    """The queries of queries.sql, each by the comment above it."""
    text = (SQL / "queries.sql").read_text(encoding="utf-8")
    return {asked: query for asked, query in re.findall(r"^-- (\S.*)\n((?:[^-\n].*\n)+)", text, re.MULTILINE)}
