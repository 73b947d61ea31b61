"""The sample patterns with three seams at seven widths, by one process and by two, in turn.

SPDX-License-Identifier: MIT

A pattern here is one with one seam, in all its sizes at all widths. Seconds are of the clock, the least of two, with
starting the processes: compare the two within one run on a quiet machine.
"""
from __future__ import annotations

import json
import time
from pathlib import Path

from jobs import Job, all_jobs
from muslin import Length
from spread import over_processes

ROOT = Path(__file__).resolve().parents[3]


def seconds(jobs: "list[Job]", workers: int) -> "tuple[float, int]":
    began = time.monotonic()
    sizes = sum(len(answer.get("sizes", [])) for _, answer in over_processes(jobs, workers))
    return time.monotonic() - began, sizes


def main() -> None:
    seams: "list[int | None]" = [None, Length.parse("6 mm").ticks, Length.parse("3/8 in").ticks]
    widths = [Length.parse(f"{width} in").ticks for width in range(38, 45)]
    jobs = all_jobs([ROOT / "examples/patterns"], "", seams, widths, 1016)
    best = {1: float("inf"), 2: float("inf")}
    for _ in range(2):
        for workers in best:
            took, sizes = seconds(jobs, workers)
            best[workers] = min(best[workers], took)
    for workers, took in best.items():
        print(json.dumps({"bench": "catalogue", "workers": workers, "patterns": len(jobs), "sizes_at_widths": sizes,
                          "seconds": round(took, 3), "patterns_per_second": round(len(jobs) / took, 2),
                          "faster_than_one": round(best[1] / took, 2)}))


if __name__ == "__main__":
    main()
