"""One job worked out: all sizes of a pattern at all widths, where strips lose a piece, what leaves the ruler's grid.

SPDX-License-Identifier: MIT

Patterns are read and worked out by the SQLite extension, muslin_sql, and by nothing else. Widths and seams are put into
their JSON before that. What is asked besides, the library answers.
"""
from __future__ import annotations

import functools
import json
import os
import sqlite3
from typing import Any, Iterator

import muslin
from muslin import Direction, Length

from jobs import Job, Trouble


@functools.lru_cache(maxsize=1)
def database() -> sqlite3.Connection:
    """One for each process."""
    opened = sqlite3.connect(":memory:", check_same_thread=False)
    opened.enable_load_extension(True)
    opened.load_extension(os.environ.get("MUSLIN_SQL", "muslin_sql"))
    opened.enable_load_extension(False)
    return opened


def check_extension() -> None:
    try:
        version = database().execute("SELECT muslin_version()").fetchone()[0]
    except sqlite3.Error as error:
        raise Trouble(f"{error}: MUSLIN_SQL must name the extension of SQLite, muslin_sql.so.") from None
    if version != muslin.version_text():
        raise Trouble(f"The extension of SQLite is of muslin {version}, the package of {muslin.version_text()}.")


def facts_of(pattern: str) -> "list[dict[str, Any]]":
    """Everything about each size."""
    return [json.loads(facts) for facts, in database().execute("SELECT facts FROM muslin_pattern_facts(?)", (pattern,))]


# ---- the pattern as it is to be --------------------------------------------------------------------------------------

def exactly(ticks: int) -> str:
    """A length as a pattern file takes it."""
    return str(Length(ticks))


def varied(job: Job, width: int) -> str:
    """The pattern with this seam, and all its cloth so wide; pre-cut strips, which are cut across it, so long."""
    pattern = json.loads(job.pattern)
    if job.seam is not None:
        pattern["seam"] = {**pattern.get("seam", {}), "allowance": exactly(job.seam)}
    for cloth in pattern["fabrics"].values():
        cloth["usable width"] = exactly(width)
    return json.dumps(pattern)


# ---- where strips lose a piece ---------------------------------------------------------------------------------------

def is_cut_from_strips(cut: "dict[str, Any]") -> bool:
    return not cut["joined"] and cut["source"] in ("patch", "unit", "setting")


def edges_of_cut(cut: "dict[str, Any]", least: int, most: int) -> "list[dict[str, Any]]":
    """Every width within the range below which each strip holds one piece less; and what that does to the strips."""
    edges = []
    width = most
    piece = Length(cut["cut"]["width"]["ticks"])
    while width >= least:
        across = muslin.fabric_pieces(width=Length(width), length="1 in", piece_width=piece, piece_length="1 in")
        at = width - across.narrower_by.ticks
        if across.across < 1 or at <= least:
            break
        edges.append({**edge("piece", f"[{cut['piece']}] {cut['fabric']}", at), "cut_width": piece.ticks,
                      "above": across.across, "below": across.across - 1,
                      "strips_above": strips(cut["count"], piece, at),
                      "strips_below": strips(cut["count"], piece, at - 1)})
        width = at - 1
    return edges


def strips(pieces: int, piece: Length, width: int) -> "int | None":
    """None where no piece fits."""
    if piece.ticks > width:
        return None
    return muslin.fabric_strips(pieces=pieces, piece_across=piece, strip_cut="1 in", usable_width=Length(width)).strips


def edge(what: str, of: str, width: int) -> "dict[str, Any]":
    return {"what": what, "of": of, "cut_width": None, "edge": width, "above": None, "below": None,
            "strips_above": None, "strips_below": None}


def edges_at(facts: "dict[str, Any]", width: int) -> "Iterator[dict[str, Any]]":
    """Strip sets that give fewer segments below some width, and plans that must then be made anew; not plans whose
    strips go from selvage to selvage, which hold at no narrower width."""
    for made in facts["strip_sets"]:
        if made["segments_per_set"] > 0:
            yield {**edge("strip set", f"set {made['letter']}", width - made["strips_may_be_shorter_by"]["ticks"]),
                   "cut_width": made["segment_cut"]["ticks"], "above": made["segments_per_set"]}
    for cloth in facts["fabrics"]:
        if "narrowest_width" in cloth and cloth["narrowest_width"]["ticks"] < width:
            yield edge("plan", cloth["fabric"], cloth["narrowest_width"]["ticks"])


def all_edges(worked: "dict[int, list[dict[str, Any]]]") -> "list[dict[str, Any]]":
    """The cut list is that of the widest cloth."""
    least, most = min(worked), max(worked)
    edges = [{"size": facts["size"], **found} for facts in worked[most] for cut in facts["cuts"]
             if is_cut_from_strips(cut) for found in edges_of_cut(cut, least, most)]
    edges += [{"size": facts["size"], **found} for width, sizes in worked.items() for facts in sizes
              for found in edges_at(facts, width) if least < found["edge"] <= most]
    different = {json.dumps(found, sort_keys=True): found for found in edges}
    return sorted(different.values(), key=lambda found: (found["size"], -found["edge"], found["what"], found["of"]))


# ---- what leaves the ruler's grid ------------------------------------------------------------------------------------

def lengths_of(facts: "dict[str, Any]") -> "Iterator[tuple[str, int]]":
    """All that is laid off with a ruler. A strip for sets is as long as its cloth is wide: its height is its width."""
    for side in "width", "height":
        yield f"finished {side} of the top", facts["top"]["finished"][side]["ticks"]
    for cut in facts["cuts"]:
        if cut["source"] == "strip for sets":
            yield f"cut width of strips [{cut['piece']}] {cut['fabric']}", cut["cut"]["height"]["ticks"]
            continue
        for side in "width", "height":
            yield f"cut {side} of [{cut['piece']}] {cut['fabric']}", cut["cut"][side]["ticks"]
    for made in facts["strip_sets"]:
        yield f"cut width of segments of set {made['letter']}", made["segment_cut"]["ticks"]


def off_grid(job: Job, sizes: "list[dict[str, Any]]") -> "list[dict[str, Any]]":
    found = []
    for facts in sizes:
        for what, ticks in lengths_of(facts):
            nearest = Length(ticks).snap(Length(job.grid), Direction.NEAREST).ticks
            if nearest != ticks:
                found.append({"size": facts["size"], "what": what, "length": ticks, "nearest": nearest,
                              "off_by": nearest - ticks})
    return found


# ---- what a size takes -----------------------------------------------------------------------------------------------

def size_row(width: int, facts: "dict[str, Any]") -> "dict[str, Any]":
    finished = facts["top"]["finished"]
    bought = [Length(cloth["buy"]["ticks"]) for cloth in facts["fabrics"] if "buy" in cloth]
    backing = facts["backing"]
    return {"width": width, "size": facts["size"], "patches": facts["top"]["patches"],
            "finished_width": finished["width"]["ticks"], "finished_height": finished["height"]["ticks"],
            "finished": f"{finished['width']['text']} x {finished['height']['text']}",
            "misfits": len(facts["misfits"]),
            "cloth_bought": sum(bought, Length(0)).ticks,
            "strips_needed": sum(cloth.get("strips_needed", 0) for cloth in facts["fabrics"]),
            "backing_bought": backing and backing["buy"]["ticks"]}


# ---- all of it -------------------------------------------------------------------------------------------------------

FAILURES = (sqlite3.Error, muslin.MuslinError, ValueError, KeyError, AttributeError, TypeError)


def work(job: Job) -> "dict[str, Any]":
    """The answer as JSON has it: `not_at` says why some widths have none. Or, where none has, a complaint."""
    answer: "dict[str, Any]" = {"name": job.name, "seam": job.seam}
    worked: "dict[int, list[dict[str, Any]]]" = {}
    failed: "dict[int, str]" = {}
    for width in job.widths:
        try:
            worked[width] = facts_of(varied(job, width))
        except FAILURES as error:
            failed[width] = sentence(job, error)
    if not worked:
        return {**answer, "complaint": failed[job.widths[-1]]}
    return {**answer, "not_at": [{"width": width, "why": why} for width, why in failed.items()],
            "sizes": [size_row(width, facts) for width, sizes in worked.items() for facts in sizes],
            "edges": all_edges(worked), "off_grid": off_grid(job, worked[max(worked)])}


def sentence(job: Job, error: Exception) -> str:
    """What the reader of patterns says of the pattern as it stands, where it says something."""
    try:
        facts_of(job.pattern)
    except sqlite3.Error as told:
        return str(told)
    return str(error)
