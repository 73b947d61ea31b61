#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""differential.py CASES [SEED]: so many cases of arithmetic drawn by chance, each answered by the library and by the
model, which works with fractions. Values and statuses must agree. One process for each processor; MUSLIN_LIBRARY names
the library. Prints how many of the cases were answered and how many refused."""
import multiprocessing
import os
import random
import sys
from collections import Counter
from pathlib import Path
from types import SimpleNamespace

ROOT = Path(__file__).resolve().parent.parent.parent
sys.path[:0] = [str(ROOT / "bindings" / "python"), str(ROOT / "tests" / "model"), str(Path(__file__).parent)]

from asking import Failed, ask, ask_bytes  # noqa: E402
from muslin_model import length, seam, stripset, text  # noqa: E402
from muslin_model.base import LENGTH_MAX, SIZE_MAX, Refused  # noqa: E402

BATCH = 5000
EDGES = [0, 1, -1, 2, LENGTH_MAX, -LENGTH_MAX, LENGTH_MAX + 1, SIZE_MAX, SIZE_MAX + 1, 2**63 - 1, -2**63]
GRIDS = [1, 127, 254, 508, 1016, 2032, 4064, 8128, 320, 32]
SIGNS = "0123456789 /-+.,'\"inftydcm\u00bd\u2044\u2212\u2033"


def number(chance):
    """Lengths as people use them, any of any magnitude, and the edges."""
    kind = chance.randrange(8)
    if kind == 0:
        return chance.choice(EDGES)
    if kind < 4:
        return chance.randrange(-100, 4000) * 127
    return chance.choice((1, -1)) * chance.getrandbits(chance.randrange(1, 63))


def size(chance):
    return chance.getrandbits(chance.randrange(1, 31)) if chance.randrange(20) else number(chance)


def rounding(chance):
    grid = chance.choice(GRIDS) if chance.randrange(4) else size(chance)
    tolerance = chance.randrange(grid) if grid > 0 and chance.randrange(3) == 0 else 0
    return {"grid": grid, "tolerance": tolerance, "direction": chance.randint(1, 3) if chance.randrange(30) else 4}


def plain(call, model, count, draw=number):
    """A call on so many numbers."""
    def case(chance):
        numbers = [draw(chance) for _ in range(count)]
        return lambda: ask(call, *numbers), lambda: model(*numbers)
    return case


def rounded(call, model, count, draw=number):
    """A call on so many numbers and a rounding."""
    def case(chance):
        numbers, spec = [draw(chance) for _ in range(count)], rounding(chance)
        return lambda: ask(call, *numbers, spec), lambda: model(*numbers, SimpleNamespace(**spec))
    return case


def in_seam(call, model):
    def case(chance):
        a, spec = size(chance), {"allowance": chance.randrange(4064), "take_up": chance.randrange(300)}
        return lambda: ask(call, a, spec), lambda: model(a, SimpleNamespace(**spec))
    return case


def yielding(chance):
    spec = {"strip_length": size(chance), "segment_cut": size(chance), "end_trim": chance.randrange(9000),
            "resquare_loss": chance.randrange(3000), "resquare_every": chance.randrange(5),
            "fold_clear": chance.choice([0, 0, chance.randrange(20000)])}
    one_end = chance.random() < 0.3
    return (lambda: ask("stripset_yield", dict(spec, from_one_end=one_end)),
            lambda: stripset.yield_of(SimpleNamespace(**spec), one_end))


def reading(chance):
    data = "".join(chance.choice(SIGNS) for _ in range(chance.randrange(1, 9))).encode()
    unit, sign = chance.randint(1, 6), chance.choice(".,")
    return lambda: ask_bytes(data, unit, ord(sign)), lambda: text.parse(data, unit, sign)


CASES = [
    plain("length_add", length.add, 2), plain("length_subtract", length.subtract, 2),
    plain("length_multiply", length.multiply, 2),
    rounded("length_divide", length.divide, 2), rounded("length_scale", length.scale, 3),
    rounded("length_snap", length.snap, 1),
    rounded("length_times_root2", length.times_root2, 1, size), rounded("length_over_root2", length.over_root2, 1, size),
    rounded("length_equilateral_height", length.equilateral_height, 1, size),
    rounded("length_equilateral_side", length.equilateral_side, 1, size),
    rounded("length_hypotenuse", length.hypotenuse, 2, size),
    rounded("length_root_of_area", length.root_of_area, 1, lambda chance: min(abs(number(chance)), 2**63 - 1)),
    in_seam("seam_cut_from_finished", seam.cut_from_finished),
    in_seam("seam_finished_from_cut", seam.finished_from_cut),
    yielding, reading,
]


def outcome(call, refusal):
    try:
        return call(), None
    except refusal as refused:
        return None, refused


def batch(seed):
    """How many cases of a batch were answered and refused; stops at the first on which library and model differ."""
    chance, tally = random.Random(seed), Counter()
    for at in range(BATCH):
        which = chance.randrange(len(CASES))
        asked, modelled = CASES[which](chance)
        expected, refused = outcome(modelled, Refused)
        found, failed = outcome(asked, Failed)
        if refused:
            agrees = failed is not None and failed.status.name in refused.statuses
        elif isinstance(expected, dict):
            agrees = failed is None and {name: found[name] for name in expected} == expected
        else:
            agrees = failed is None and found == expected
        if not agrees:
            what = f"case {at} of batch {seed}: call {which}: library {found or failed}, model {expected or refused}"
            return what, tally
        tally["refused" if refused else "answered"] += 1
    return "", tally


def main():
    cases, seed = int(sys.argv[1]), int(sys.argv[2]) if len(sys.argv) > 2 else 1
    total = Counter()
    with multiprocessing.Pool(os.cpu_count()) as pool:
        batches = range(seed * 1000000, seed * 1000000 + -(-cases // BATCH))
        for wrong, tally in pool.imap_unordered(batch, batches):
            total += tally
            if wrong:
                print(wrong)
                return 1
    print(f"{sum(total.values())} cases: {total['answered']} answered, {total['refused']} refused, all as the model")
    return 0


if __name__ == "__main__":
    sys.exit(main())
