# SPDX-License-Identifier: MIT
"""What the benches in Python share: the clock, and one line of JSON for each comparison."""
import json
import time

RUNS = 7


def best(work, rounds):
    """Nanoseconds of processor time that one round takes, the best of some runs."""
    took = []
    for _ in range(RUNS):
        begin = time.process_time_ns()
        for _ in range(rounds):
            work()
        took.append((time.process_time_ns() - begin) / rounds)
    return min(took)


def line(name, to, ours, other, aim):
    """`ours` and `other` in nanoseconds; `aim` is the ratio that is aimed at."""
    print(json.dumps({"name": name, "to": to, "nanoseconds": round(ours, 3), "other_nanoseconds": round(other, 3),
                      "ratio": round(ours / other, 3), "aim": aim}), flush=True)
