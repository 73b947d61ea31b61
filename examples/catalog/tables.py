"""The answers as CSV: sizes, edges, and what leaves the ruler's grid. Lengths are inches, exactly, and text beside:
exact too, but for the finished size, which is in the pattern's own words and says "about" where it is rounded.

SPDX-License-Identifier: MIT
"""
from __future__ import annotations

import csv
import io
from pathlib import Path
from typing import Any, Iterable

import muslin
from muslin import CostKind, Direction, Length, Style

from kept import write


def said(ticks: "int | None") -> str:
    return "" if ticks is None else str(Length(ticks))


def in_inches(ticks: "int | None") -> str:
    """With as many decimals as it takes, at most six."""
    return "" if ticks is None else Length(ticks).format(style=Style.INCH_DECIMAL, decimals=6, bare=True)


def in_yards(ticks: "int | None", denominator: int = 64) -> str:
    """Of cloth to buy: rounded up, as less would not do."""
    return "" if ticks is None else Length(ticks).format(style=Style.YARD_FRACTION, denominator=denominator,
                                                         direction=Direction.UP, bare=True)


def cost(ticks: "int | None", price: "int | None", per: int) -> "int | None":
    """Of cloth bought, in the smallest coin, as a shop rounds it."""
    if ticks is None or price is None:
        return None
    return muslin.cost_plan(amount=ticks, price=price, per=per, sold=CostKind.LENGTH).cost


def money(coins: "int | None") -> str:
    return "" if coins is None else f"{coins // 100}.{coins % 100:02}"


def seam_of(answer: "dict[str, Any]") -> str:
    return "as given" if answer["seam"] is None else said(answer["seam"])


def size_rows(answers: "Iterable[dict[str, Any]]", price: "int | None", per: int) -> "Iterable[dict[str, Any]]":
    for answer in answers:
        for row in answer["sizes"]:
            yield {"pattern": answer["name"], "size": row["size"], "seam allowance": seam_of(answer),
                   "usable width (in)": in_inches(row["width"]),
                   "finished width (in)": in_inches(row["finished_width"]),
                   "finished height (in)": in_inches(row["finished_height"]),
                   "finished": row["finished"], "patches": row["patches"], "edges that do not meet": row["misfits"],
                   "cloth to buy for the top (yd)": in_yards(row["cloth_bought"]),
                   "cloth to buy for the top (in)": in_inches(row["cloth_bought"]),
                   "strips needed of pre-cut fabrics": row["strips_needed"],
                   "backing to buy (yd)": in_yards(row["backing_bought"]),
                   "backing to buy (in)": in_inches(row["backing_bought"]),
                   "cost of cloth for the top": money(cost(row["cloth_bought"], price, per)),
                   "cost of the backing": money(cost(row["backing_bought"], price, per))}


def edge_rows(answers: "Iterable[dict[str, Any]]") -> "Iterable[dict[str, Any]]":
    for answer in answers:
        for row in answer["edges"]:
            yield {"pattern": answer["name"], "size": row["size"], "seam allowance": seam_of(answer),
                   "what": row["what"], "of": row["of"], "cut width": said(row["cut_width"]),
                   "narrowest usable width (in)": in_inches(row["edge"]), "narrowest usable width": said(row["edge"]),
                   "in a strip or set at that width": row["above"], "below it": row["below"],
                   "strips at that width": row["strips_above"], "strips below it": row["strips_below"]}


def grid_rows(answers: "Iterable[dict[str, Any]]") -> "Iterable[dict[str, Any]]":
    for answer in answers:
        for row in answer["off_grid"]:
            yield {"pattern": answer["name"], "size": row["size"], "seam allowance": seam_of(answer),
                   "what": row["what"], "length (in)": in_inches(row["length"]), "length": said(row["length"]),
                   "nearest on the grid": said(row["nearest"]), "off by (in)": in_inches(row["off_by"])}


def write_csv(place: Path, table: "Iterable[dict[str, Any]]", heads: "list[str]") -> None:
    text = io.StringIO(newline="")
    writer = csv.DictWriter(text, heads)
    writer.writeheader()
    writer.writerows(table)
    write(place, text.getvalue())


SIZE_HEADS = ["pattern", "size", "seam allowance", "usable width (in)", "finished width (in)", "finished height (in)",
              "finished", "patches", "edges that do not meet", "cloth to buy for the top (yd)",
              "cloth to buy for the top (in)", "strips needed of pre-cut fabrics", "backing to buy (yd)",
              "backing to buy (in)", "cost of cloth for the top", "cost of the backing"]
EDGE_HEADS = ["pattern", "size", "seam allowance", "what", "of", "cut width", "narrowest usable width (in)",
              "narrowest usable width", "in a strip or set at that width", "below it", "strips at that width",
              "strips below it"]
GRID_HEADS = ["pattern", "size", "seam allowance", "what", "length (in)", "length", "nearest on the grid",
              "off by (in)"]


def write_tables(folder: Path, answers: "Iterable[dict[str, Any]]", price: "int | None", per: int) -> None:
    write_csv(folder / "sizes.csv", size_rows(answers, price, per), SIZE_HEADS)
    write_csv(folder / "edges.csv", edge_rows(answers), EDGE_HEADS)
    write_csv(folder / "off-grid.csv", grid_rows(answers), GRID_HEADS)
