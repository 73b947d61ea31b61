"""The sample patterns with three seams at 13 widths, by one process and by two, in turn.

SPDX-License-Identifier: MIT

A pattern here is one with one seam, in all its sizes at all widths. Seconds are of the clock, the least of two, from the
first answer on, when the processes have started; `start` is what they took until then. Compare the two within one run
on a quiet machine.
"""
from __future__ import annotations

import json
import time
from pathlib import Path

from jobs import Job, all_jobs
from muslin import Length
from spread import over_processes

ROOT = Path(__file__).resolve().parents[3]


def seconds(jobs: "list[Job]", workers: int) -> "tuple[float, float]":
    """From the first answer to the last, and up to the first."""
    began = time.monotonic()
    answers = over_processes(jobs, workers)
    next(answers)
    first = time.monotonic()
    for _ in answers:
        last = time.monotonic()
    return last - first, first - began


def main() -> None:
    seams: "list[int | None]" = [None, Length.parse("6 mm").ticks, Length.parse("5/16 in").ticks]
    widths = [Length.parse(f"{half_inches}/2 in").ticks for half_inches in range(76, 89)]
    jobs = all_jobs([ROOT / "examples/patterns"], "", seams, widths, 1016, [])
    best = {1: (float("inf"), 0.0), 2: (float("inf"), 0.0)}
    for _ in range(2):
        for workers in best:
            best[workers] = min(best[workers], seconds(jobs, workers))
    for workers, (took, start) in best.items():
        print(json.dumps({"bench": "catalogue", "workers": workers, "patterns": len(jobs), "widths": len(widths),
                          "seconds": round(took, 3), "start": round(start, 3),
                          "patterns_per_second": round((len(jobs) - 1) / took, 2),
                          "faster_than_one": round(best[1][0] / took, 2)}))


if __name__ == "__main__":
    main()
