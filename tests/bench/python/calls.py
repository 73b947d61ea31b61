# SPDX-License-Identifier: MIT
"""One call through the Python binding beside what Python itself would take, nanoseconds a call.

A Fraction is exact and has no unit; what it is not is checked to be a length.
"""
import sys
from fractions import Fraction
from pathlib import Path

import muslin

sys.path.insert(0, str(Path(__file__).parents[1]))
from timed import best, line  # noqa: E402

ROUNDS = 20_000
AIM = 1.0

a, b = muslin.length_parse("12 3/8 in").value, muslin.length_parse("1/2 in").value
x, y = Fraction(99, 8), Fraction(1, 2)

for name, to, ours, other in (
        ("length_add", "Fraction + Fraction", lambda: muslin.length_add(a, b), lambda: x + y),
        ("seam_cut_from_finished", "Fraction + Fraction", lambda: muslin.seam_cut_from_finished(a), lambda: x + y),
        ("length_parse", "Fraction of a text", lambda: muslin.length_parse("12.375"), lambda: Fraction("12.375")),
        ("length_format", "a Fraction as whole and rest", lambda: muslin.length_format(a),
         lambda: f"{int(x)} {x % 1} in")):
    line(name, to, best(ours, ROUNDS), best(other, ROUNDS), AIM)
