"""A million rows asked through the extension, and by the same sum in plain SQL where there is one.

SPDX-License-Identifier: MIT

Seconds are the processor's, the least of three; each plain sum is measured beside the one it is compared with.
"""
from __future__ import annotations

import json
import os
import sqlite3
import sys
import time

# What is asked, and the same in plain SQL for ticks; "" where SQL cannot say it.
QUESTIONS = {
    "cut": ("sum(muslin_cut(finished, 2032))", "sum(finished + 2 * 2032)"),
    "finished": ("sum(muslin_finished(cut, 2032))", "sum(cut - 2 * 2032)"),
    "per_strip": ("sum(muslin_per_strip(cut, 325120))", "sum(325120 / cut)"),
    "strips": ("sum(muslin_strips(100, cut, 325120))", "sum((100 + 325120 / cut - 1) / (325120 / cut))"),
    "rounded": ("sum(muslin_rounded(cut, 1016, 'up'))", "sum((cut + 1015) / 1016 * 1016)"),
    "length": ("sum(muslin_length(written))", "sum(finished)"),
    "text": ("sum(length(muslin_text(finished)))", "sum(length(written))"),
}


def made(rows: int) -> sqlite3.Connection:
    database = sqlite3.connect(":memory:")
    database.enable_load_extension(True)
    database.load_extension(os.environ["MUSLIN_SQL"])
    database.execute("CREATE TABLE piece (finished INTEGER, cut INTEGER, written TEXT)")
    database.execute("WITH RECURSIVE n(i) AS (SELECT 0 UNION ALL SELECT i + 1 FROM n WHERE i < ? - 1) "
                     "INSERT INTO piece SELECT 8128 + 127 * (i * 37 % 1500), 8128 + 127 * (i * 37 % 1500) + 4064, "
                     "muslin_text(8128 + 127 * (i * 37 % 1500)) FROM n", (rows,))
    return database


def measured(database: sqlite3.Connection, expression: str) -> "tuple[float, int]":
    best = float("inf")
    for _ in range(3):
        began = time.process_time()
        answer = database.execute(f"SELECT {expression} FROM piece").fetchone()[0]
        best = min(best, time.process_time() - began)
    return best, answer


def main() -> None:
    rows = int(sys.argv[1])
    database = made(rows)
    for what, (asked, plain) in QUESTIONS.items():
        seconds, answer = measured(database, asked)
        plain_seconds, plain_answer = measured(database, plain)
        print(json.dumps({"bench": "sql", "what": what, "rows": rows, "seconds": round(seconds, 4),
                          "calls_per_second": round(rows / seconds), "plain_seconds": round(plain_seconds, 4),
                          "to_plain": round(seconds / plain_seconds, 2), "same": answer == plain_answer}))


if __name__ == "__main__":
    main()
