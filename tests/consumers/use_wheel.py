# SPDX-License-Identifier: MIT
"""What a stranger does who has installed the wheel: a plan, a quilt, an error; told where the library came from."""
from pathlib import Path

import muslin

assert muslin.seam_row_equal("2 1/2 in", 6).unfinished.inches == 12.5  # common practice
with muslin.Quilt() as quilt:
    side = quilt.measure("side", "2 in")
    patch = quilt.patch(fabric=quilt.fabric("blue"), width=side, height=side)
    with muslin.Solution(quilt, quilt.join([patch, patch, patch])) as solution:
        (cut,) = solution.cuts()
        assert (cut.count, cut.cut_width.inches) == (3, 2.5)
try:
    muslin.stripquilt_plan(strips=40, columns=4, rows=4, allowance="1 1/4 in")
except muslin.MuslinError as error:
    assert error.status == muslin.Status.ERR_SEAM_TOO_WIDE
else:
    raise AssertionError("a seam as wide as the strip was taken")

inside = Path(muslin.__file__).parent / "libmuslin.so.1"
with open("/proc/self/maps", encoding="utf-8") as maps:
    assert f"{inside.resolve()}\n" in maps.read(), "the library is not the one inside the package"
print("wheel consumer: the library inside the package")
