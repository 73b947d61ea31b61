#!/usr/bin/python3
"""The lists of the cutting bench, solved by general solvers for whole numbers: GLPK (Debian: glpk-utils) and HiGHS
(npm: highs).

    peer.py glpk|FOLDER WORK OURS [LIST ... | all]

FOLDER is that of the npm package. OURS is what tests/bench/cutting.c printed of the bolts; each line written here has
the solver's plan and bound beside those. The models and what the solver said are kept in WORK. Each list gets SECONDS
of processor time. Nothing is passed or failed by time or length; a bound of the one above a plan of the other is
`contradicted`, and the exit status 1.

The model is arc flow, one graph for each height of strip: Macedo, Alves and Valerio de Carvalho, Arc-flow model for the
two-dimensional guillotine cutting stock problem, Computers & Operations Research 37 (2010). A node is how much of the
width is used, an arc is a piece laid next, and a whole number on it says in how many strips. Strips only need heights
that pieces have; pieces come in the order of their width, the widest first; cloth may be lost at any node.

SPDX-License-Identifier: MIT
"""

import csv
import json
import math
import pathlib
import re
import resource
import statistics
import subprocess
import sys

SECONDS = 20
# Small ones, middling ones and those that are not proven yet: below five minutes in all.
USUAL = "q01 q03 q05 q06 q09 q11 q12 q14 q18 q21 q22 q23 q25 q30".split()
HERE = pathlib.Path(__file__).parent


def read_lists():
    """Name -> (width, [(across, along, count, may turn)])"""
    lists = {}
    with open(HERE / "bolts.csv", encoding="utf-8") as lines:
        for row in csv.DictReader(line for line in lines if not line.startswith("#")):
            width, pieces = lists.setdefault(row["list"], (int(row["width"]), []))
            pieces.append(tuple(int(row[key]) for key in ("cut_width", "cut_length", "count", "may_turn")))
    return lists


def taken(piece, height, width):
    """What the piece takes of a strip so high, or nothing where it does not fit."""
    across, along, _, may_turn = piece
    ways = [across] if along <= height else []
    if may_turn and across <= height:
        ways.append(along)
    ways = [way for way in ways if way <= width]
    return min(ways, default=None)


def heights_of(width, pieces):
    found = {along for across, along, _, _ in pieces if across <= width}
    found |= {across for across, along, _, may_turn in pieces if may_turn and along <= width}
    return sorted(found)


def arcs_of(width, pieces, height):
    """(from, to, piece) of one height, only such as some strip can have: what is laid is never wider than before."""
    items = [(taken(piece, height, width), number) for number, piece in enumerate(pieces)]
    items = sorted(((took, number) for took, number in items if took), reverse=True)
    arcs = set()
    reached = {0}
    for took, number in items:
        ends = set()
        for start in reached:
            at = start
            for _ in range(min(pieces[number][2], (width - start) // took)):
                arcs.add((at, at + took, number))
                at += took
                ends.add(at)
        reached |= ends
    return sorted(arcs)


def sum_of(terms):
    """Terms over several lines, as the format wants no long ones."""
    lines = [" ".join(terms[i:i + 10]) for i in range(0, len(terms), 10)]
    return "\n   ".join(lines)


def write_model(path, width, pieces):
    """In the LP format of CPLEX. Returns how many whole numbers are sought."""
    heights = heights_of(width, pieces)
    names = []
    laid = [[] for _ in pieces]
    rows = []
    for height in heights:
        into = {}
        for start, end, number in arcs_of(width, pieces, height):
            name = f"x_{height}_{start}_{end}_{number}"
            names.append(name)
            laid[number].append(f"+ {name}")
            into.setdefault(start, []).append(f"- {name}")
            into.setdefault(end, []).append(f"+ {name}")
        into.setdefault(0, []).insert(0, f"+ z_{height}")
        names.append(f"z_{height}")
        rows += [f" at_{height}_{node}: {sum_of(terms)} >= 0" for node, terms in sorted(into.items())
                 if any(term[0] == "-" for term in terms)]
    rows += [f" wanted_{number}: {sum_of(terms)} >= {pieces[number][2]}" for number, terms in enumerate(laid)]
    with open(path, "w", encoding="ascii") as model:
        model.write("Minimize\n length: " + sum_of([f"+ {height} z_{height}" for height in heights]))
        model.write("\nSubject To\n" + "\n".join(rows) + "\nGeneral\n " + "\n ".join(names) + "\nEnd\n")
    return len(names)


def run_solver(command, most_seconds):
    """What it says until the system ends it, and the milliseconds of processor time it took."""
    def limits():
        resource.setrlimit(resource.RLIMIT_CPU, (most_seconds, most_seconds))

    before = resource.getrusage(resource.RUSAGE_CHILDREN)
    run = subprocess.run(["nice", "-n", "19", *command], stdout=subprocess.PIPE, stderr=subprocess.STDOUT, text=True,
                         check=False, preexec_fn=limits)
    after = resource.getrusage(resource.RUSAGE_CHILDREN)
    seconds = after.ru_utime + after.ru_stime - before.ru_utime - before.ru_stime
    return run.stdout, round(1000 * seconds, 1)


def up(bound):
    return math.ceil(float(bound) - 1e-6)


def solve_by_glpk(model):
    """(plan, bound, milliseconds, what it said); None for what it does not have. Its cuts, off by default, do it good.
    Its own time limit is one of the clock on the wall, so the system ends it, and its last report counts: of plans at
    once, of bounds every five seconds."""
    said, took = run_solver(["glpsol", "--cuts", "--lp", str(model)], SECONDS)
    plan = bound = None
    for report in re.finditer(r"mip = +(not found yet|\S+) >= +(-inf|tree is empty|\S+)", said):
        if report[1] != "not found yet":
            plan = round(float(report[1]))
        if report[2] not in ("-inf", "tree is empty"):
            bound = up(report[2])
    if "INTEGER OPTIMAL SOLUTION FOUND" in said:
        bound = plan
    return plan, bound, took, said


def solve_by_highs(model, folder):
    """The same. It keeps to the time limit itself, but for what it must finish."""
    said, took = run_solver(["node", str(HERE / "peer.mjs"), folder, str(model), str(SECONDS)], 3 * SECONDS)
    primal = re.search(r"Primal bound +(\S+)", said)
    dual = re.search(r"Dual bound +(\S+)", said)
    plan = round(float(primal[1])) if primal and primal[1] != "inf" else None
    bound = up(dual[1]) if dual and dual[1] != "-inf" else None
    return plan, bound, took, said


def read_ours(path):
    """List -> what tests/bench/cutting.c printed of it."""
    with open(path, encoding="utf-8") as lines:
        rows = [json.loads(line) for line in lines]
    return {row["list"]: row for row in rows if row.get("set") == "bolts"}


def gap(plan, bound):
    return None if plan is None or bound is None else round(100 * (plan - bound) / bound, 3)


def mean(values):
    values = [value for value in values if value is not None]
    return round(statistics.mean(values), 4) if values else None


def compare(solver, name, width, pieces, work, ours):
    model = work / f"{name}.lp"
    size = write_model(model, width, pieces)
    plan, bound, took, said = solve_by_glpk(model) if solver == "glpk" else solve_by_highs(model, solver)
    model.with_suffix(".log").write_text(said, encoding="utf-8")
    return {"list": name, "best": ours["best"], "bound": ours["bound"], "gap_percent": ours["gap_percent"],
            "proven": ours["proven"], "ms": ours["ms"], "peer_best": plan, "peer_bound": bound,
            "peer_gap_percent": gap(plan, bound), "peer_proven": int(plan is not None and plan == bound),
            "peer_ms": took, "whole_numbers": size,
            "contradicted": int((bound or 0) > ours["best"] or (plan is not None and plan < ours["bound"]))}


def summary(solver, rows):
    both = [row for row in rows if row["peer_best"] is not None]
    return {"summary": "glpk" if solver == "glpk" else "highs", "lists": len(rows),
            "proven": sum(row["proven"] for row in rows),
            "peer_proven": sum(row["peer_proven"] for row in rows), "peer_without_plan": len(rows) - len(both),
            "mean_gap_percent": mean(row["gap_percent"] for row in rows),
            "peer_mean_gap_percent": mean(row["peer_gap_percent"] for row in both),
            "peer_mean_above_percent": mean(100 * (row["peer_best"] - row["best"]) / row["best"] for row in both),
            "peer_shorter": sum(row["peer_best"] < row["best"] for row in both),
            "median_ms": round(statistics.median(row["ms"] for row in rows), 3),
            "peer_median_ms": round(statistics.median(row["peer_ms"] for row in rows), 1),
            "contradicted": sum(row["contradicted"] for row in rows)}


def main():
    solver, work, ours, chosen = sys.argv[1], pathlib.Path(sys.argv[2]), read_ours(sys.argv[3]), sys.argv[4:]
    lists = read_lists()
    names = sorted(ours) if chosen == ["all"] else chosen or USUAL
    rows = []
    for name in names:
        rows.append(compare(solver, name, *lists[name], work, ours[name]))
        print(json.dumps(rows[-1]), flush=True)
    print(json.dumps(summary(solver, rows)))
    return int(any(row["contradicted"] for row in rows))


if __name__ == "__main__":
    sys.exit(main())
