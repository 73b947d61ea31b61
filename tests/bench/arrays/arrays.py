# SPDX-License-Identifier: MIT
"""The array forms through the Python binding beside numpy's own sums on the same buffers, nanoseconds an element.

numpy checks no range and looks at no element twice. Arrays of a million do not fit the processor's caches: there both
wait for memory.
"""
import sys
from pathlib import Path

import numpy

import muslin

sys.path.insert(0, str(Path(__file__).parents[1]))
from timed import best, line  # noqa: E402

ELEMENTS = 4_000_000  # in all rounds of a run
AIM = 1.5


def compare(count):
    finished = numpy.random.default_rng(1).integers(1, muslin.length_parse("100 in").value.ticks, count)
    others = finished[::-1].copy()
    ours, theirs = numpy.zeros_like(finished), numpy.zeros_like(finished)
    pairs = [("add_n", "numpy.add", lambda: muslin.length_add_n(finished, others, ours),
              lambda: numpy.add(finished, others, out=theirs)),
             ("cut_size_n", "numpy.add of a number", lambda: muslin.seam_cut_from_finished_n(finished, out=ours),
              lambda: numpy.add(finished, 4064, out=theirs))]
    for name, to, our_work, their_work in pairs:
        rounds = max(1, ELEMENTS // count)
        our_time, their_time = best(our_work, rounds) / count, best(their_work, rounds) / count
        assert (ours == theirs).all()
        line(f"{name} {count}", to, our_time, their_time, AIM)


for count in (10_000, 1_000_000):
    compare(count)
