# SPDX-License-Identifier: MIT
"""Counts the instructions that one call takes, which no other work of the machine changes, against a recorded budget.

    instructions.py CALLS             fails where a call takes 2 in 100 more than budget.json says
    instructions.py CALLS REASON      records what is counted, and why it changed

CALLS is the program of calls.c. The count is of the compiler and C library that the record names.
"""
import json
import re
import subprocess
import sys
from pathlib import Path

BUDGET = Path(__file__).with_name("budget.json")
VALUES = 1024
FEW, MANY = 1, 5
GROWTH = 0.02


def counted(program, rounds, name):
    run = subprocess.run(["valgrind", "--tool=callgrind", "--callgrind-out-file=/dev/null", program, str(rounds), name],
                         stdout=subprocess.DEVNULL, stderr=subprocess.PIPE, text=True, check=True)
    return int(re.search(r"Collected : (\d+)", run.stderr)[1])


def per_call(program, name):
    """What more rounds take more: without the start of the program."""
    return round((counted(program, MANY, name) - counted(program, FEW, name)) / (MANY - FEW) / VALUES, 1)


def compiler():
    return subprocess.run(["gcc", "--version"], capture_output=True, text=True, check=True).stdout.splitlines()[0]


def names(program):
    run = subprocess.run([program, "1"], capture_output=True, text=True, check=True)
    return [json.loads(line)["name"] for line in run.stdout.splitlines()]


def record(counts, reason):
    BUDGET.write_text(json.dumps({"compiler": compiler(), "reason": reason, "instructions": counts}, indent=1) + "\n",
                      encoding="utf-8")


def complaints(counts, budget):
    for name in sorted(counts.keys() ^ budget.keys()):
        yield f"{name} is only in {'calls.c' if name in counts else 'budget.json'}"
    for name in counts.keys() & budget.keys():
        if counts[name] > budget[name] * (1 + GROWTH):
            yield f"{name} takes {counts[name]} instructions a call, and {budget[name]} are recorded"


def main(program, reason=None):
    counts = {name: per_call(program, name) for name in names(program)}
    if reason:
        record(counts, reason)
        print(f"{len(counts)} recorded: {reason}")
        return 0
    recorded = json.loads(BUDGET.read_text(encoding="utf-8"))
    if recorded["compiler"] != compiler():
        print(f"nothing compared: recorded with {recorded['compiler']}, and this is {compiler()}")
        return 0
    print(json.dumps(counts, indent=1))
    found = list(complaints(counts, recorded["instructions"]))
    print("\n".join(found))
    if found:
        print("If it must be so: sh tests/bench/arithmetic/run instructions 'why it takes more'")
    else:
        print(f"{len(counts)} calls, none above its budget")
    return 1 if found else 0


if __name__ == "__main__":
    sys.exit(main(*sys.argv[1:]))
