# SPDX-License-Identifier: MIT
"""Draws what the bench keeps: ratios as bars on a logarithmic axis, and what is aimed at as a mark on each.

    picture.py FOLDER      reads FOLDER/*.json, writes FOLDER/ratios.png

Rows that have a ratio are drawn as they are; of the others, the figures named below, as parts of what is aimed at.
"""
import json
import sys
from pathlib import Path

import matplotlib

matplotlib.use("Agg")
from matplotlib import pyplot  # noqa: E402

# Part, what a row must hold, the figure, what is aimed at, and its name in the picture.
AIMED = [
    ("tree", {"top": "alike", "patches": 1_000_000}, "solve_ms", 10, "10^6 patches of one block solved, to 10 ms"),
    ("tree", {"top": "different", "patches": 1_000_000}, "solve_ms", 2000, "10^6 different patches solved, to 2 s"),
    ("tree", {"top": "different", "patches": 1_000_000}, "memory_mb", 1000, "10^6 different patches held, to 1 GB"),
]
PARTS = ("arithmetic", "arrays", "python", "tree")


def rows_of(folder, part):
    kept = folder / f"{part}.json"
    return [json.loads(line) for line in kept.read_text(encoding="utf-8").splitlines()] if kept.exists() else []


def bars_of(folder, part):
    """Name, ratio, aim or None."""
    rows = rows_of(folder, part)
    for row in rows:
        if "ratio" in row:
            yield f"{row['name']}, to {row['to']}", row["ratio"], row.get("aim") or None
    for of, holds, figure, aim, name in AIMED:
        for row in rows:
            if of == part and holds.items() <= row.items():
                yield name, row[figure] / aim, 1


def colour(ratio, aim):
    if aim is None:
        return "#a0a0a0"
    return "#4a7a8c" if ratio <= aim else "#c78a4a"


def draw(bars, to):
    figure, axes = pyplot.subplots(figsize=(11, 1 + 0.34 * len(bars)))
    places = range(len(bars), 0, -1)
    axes.barh(places, [ratio for _, ratio, _ in bars], color=[colour(ratio, aim) for _, ratio, aim in bars])
    for place, (_, ratio, aim) in zip(places, bars):
        axes.text(max(ratio, aim or 0) * 1.06, place, f"{ratio:.2f}", va="center", fontsize=8)
        if aim is not None:
            axes.plot([aim, aim], [place - 0.45, place + 0.45], color="black", linewidth=2)
    axes.set_yticks(list(places), [name for name, _, _ in bars], fontsize=8)
    axes.set_xscale("log")
    axes.xaxis.set_major_formatter("{x:g}")
    axes.set_xlim(min(0.1, min(ratio for _, ratio, _ in bars) / 2), max(ratio for _, ratio, _ in bars) * 3)
    axes.axvline(1, color="grey", linewidth=0.8, linestyle=":")
    axes.set_xlabel("time of muslin to time of the other, in one run\n"
                    "black: what is aimed at; blue: reached; ochre: not reached; grey: nothing aimed at")
    figure.tight_layout()
    figure.savefig(to, dpi=110)


def main(folder):
    folder = Path(folder)
    bars = [bar for part in PARTS for bar in bars_of(folder, part)]
    if not bars:
        print("no ratios are kept: nothing drawn")
        return
    draw(bars, folder / "ratios.png")
    print(f"{len(bars)} bars drawn in ratios.png")


main(*sys.argv[1:])
