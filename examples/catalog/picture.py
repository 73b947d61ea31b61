"""The catalogue as a picture: a row for each size, cloth to buy at each usable width, and where a strip loses a piece.

SPDX-License-Identifier: MIT

Made to be read in black and white: shades say how much more cloth than at the best width, shapes say what happens.
"""
from __future__ import annotations

import io
import itertools
from pathlib import Path
from typing import Any, Iterable, Iterator

import matplotlib

matplotlib.use("Agg")
from matplotlib import pyplot  # noqa: E402
from matplotlib.colors import LinearSegmentedColormap  # noqa: E402
from muslin import Length  # noqa: E402

from kept import write  # noqa: E402
from tables import cost, in_yards, money, seam_of  # noqa: E402

ROWS = 30          # on a picture
INCH = 8128
SHADES = LinearSegmentedColormap.from_list("cloth", ["#ffffff", "#8f8f8f"])
MOST = 0.25        # of more cloth has the darkest shade
MARKS = {"piece": ("v", "black", "a piece less from each strip, left of it"),
         "strip set": ("s", "white", "a segment less from each strip set, left of it"),
         "plan": ("|", "black", "the cutting plan must be made anew, left of it")}


def sizes_of(answers: "Iterable[dict[str, Any]]") -> "Iterator[dict[str, Any]]":
    """Each size of each pattern and seam, with its figures at every width."""
    for answer in answers:
        for size in dict.fromkeys(row["size"] for row in answer["sizes"]):
            at = {row["width"]: row for row in answer["sizes"] if row["size"] == size}
            yield {"name": answer["name"], "size": size, "seam": answer["seam"], "seam_text": seam_of(answer), "at": at,
                   "edges": [edge for edge in answer["edges"] if edge["size"] == size],
                   "off_grid": any(row["size"] == size and row["what"].startswith("finished")
                                   for row in answer["off_grid"])}


def label(row: "dict[str, Any]") -> str:
    widest = row["at"][max(row["at"])]
    sides = [Length(widest[side]).format(denominator=8, bare=True) for side in ("finished_width", "finished_height")]
    finished = f"{sides[0]} x {sides[1]} in finished"
    seam = "" if row["seam"] is None else f", seam {row['seam_text']}"
    return f"{row['name']}, {row['size']}{seam}\n{f'about {finished}, off the grid' if row['off_grid'] else finished}"


def draw_cloth(axes: Any, rows: "list[dict[str, Any]]") -> None:
    widths = sorted({width for row in rows for width in row["at"]})
    step = (widths[1] - widths[0]) / INCH if len(widths) > 1 else 1.0
    for y, row in enumerate(rows):
        least = min(at["cloth_bought"] for at in row["at"].values())
        for width, at in row["at"].items():
            bought = at["cloth_bought"]
            more = 0 if least == 0 else (bought - least) / least
            axes.barh(y, step, left=width / INCH - step / 2, height=0.9, color=SHADES(min(1.0, more / MOST)),
                      edgecolor="#bbbbbb", linewidth=0.4, zorder=1)
            if len(widths) <= 12:
                axes.text(width / INCH, y + 0.24, in_yards(bought, 8), ha="center", va="center", fontsize=6.5, zorder=4)
    axes.set_xlim(widths[0] / INCH - step / 2, widths[-1] / INCH + step / 2)
    axes.set_xticks([width / INCH for width in widths] if len(widths) <= 20 else
                    [width / INCH for width in widths[::len(widths) // 10]])


def draw_edges(axes: Any, rows: "list[dict[str, Any]]") -> None:
    for what, (marker, face, says) in MARKS.items():
        places = sorted({(edge["edge"] / INCH, y) for y, row in enumerate(rows) for edge in row["edges"]
                         if edge["what"] == what})
        axes.plot([x for x, _ in places], [y - 0.2 for _, y in places], marker=marker, linestyle="none",
                  markersize=7 if marker == "|" else 4.5, markerfacecolor=face, markeredgecolor="black",
                  markeredgewidth=0.7, zorder=3, label=says)


def draw_cost(axes: Any, rows: "list[dict[str, Any]]", price: "int | None", per: int) -> None:
    """At the widest width: its cost, or its length where there is no price."""
    for y, row in enumerate(rows):
        widest = row["at"][max(row["at"])]
        bought = widest["cloth_bought"]
        coins = cost(bought, price, per)
        value = coins / 100 if coins is not None else bought / (36 * INCH)
        text = money(coins) if coins is not None else f"{in_yards(bought, 8)} yd"
        text += f" and {widest['strips_needed']} strips" if widest["strips_needed"] else ""
        axes.barh(y, value, height=0.6, color="#d9d9d9", edgecolor="black", linewidth=0.5)
        axes.text(value, y, f" {text}", va="center", fontsize=7)
    axes.margins(x=0.45)
    axes.set_xlabel("yd of cloth for the top" if price is None else "cost of cloth for the top", fontsize=8)


def draw(rows: "list[dict[str, Any]]", price: "int | None", per: int, which: str) -> Any:
    height = 2.2 + 0.42 * len(rows)
    figure, (cloth, right) = pyplot.subplots(1, 2, sharey=True, figsize=(11.7, height),
                                             gridspec_kw={"width_ratios": [3.4, 1]}, layout="constrained")
    figure.get_layout_engine().set(rect=(0, 0.35 / height, 1, 1 - 0.35 / height))  # below it the key
    draw_cloth(cloth, rows)
    draw_edges(cloth, rows)
    draw_cost(right, rows, price, per)
    cloth.set_yticks(range(len(rows)), [label(row) for row in rows], fontsize=7)
    cloth.set_ylim(len(rows) - 0.45, -0.55)
    cloth.set_xlabel("usable width of the cloth, in; in the boxes yd of cloth to buy for the top, darker: more than at "
                     "the best width", fontsize=8)
    cloth.set_title(f"What each size takes at each width{which}", fontsize=10, loc="left")
    right.set_title("At the widest", fontsize=10, loc="left")
    for axes in (cloth, right):
        axes.tick_params(labelsize=7)
        axes.spines[["top", "right"]].set_visible(False)
    handles, labels = cloth.get_legend_handles_labels()
    figure.legend(handles, labels, loc="lower center", ncol=3, fontsize=8, frameon=False)
    return figure


def write_pictures(place: Path, answers: "Iterable[dict[str, Any]]", price: "int | None", per: int) -> "list[Path]":
    """One, or as many as it takes; the second is `place` with -2 in its name, and so on. Those that are left of an
    earlier run with more are taken away."""
    written: "list[Path]" = []
    sizes = sizes_of(answers)
    for number in itertools.count(1):
        rows = list(itertools.islice(sizes, ROWS))
        target = place if number == 1 else place.with_stem(f"{place.stem}-{number}")
        if not rows and not target.exists():
            return written
        if not rows:
            target.unlink()
            continue
        figure = draw(rows, price, per, "" if number == 1 else f" ({number})")
        image = io.BytesIO()
        figure.savefig(image, format=target.suffix[1:], dpi=150)
        pyplot.close(figure)
        write(target, image.getvalue())
        written.append(target)
    return written
