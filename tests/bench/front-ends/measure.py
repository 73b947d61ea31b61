#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""Measures the front ends; a line of JSON for each measure. See run.

usage: measure.py PROGRAMS BUILD [small]    BUILD has the programs of the bench

Times are medians over repeats in which what is compared takes turns; "cpu" is the processor's time, which other
programs on the machine change little, "wall" what one waits. All in milliseconds.
"""

import json
import os
import pathlib
import statistics
import subprocess
import sys
import tempfile
import time

import batch_model

ROOT = pathlib.Path(__file__).resolve().parent.parent.parent.parent
PATTERNS = ROOT / "examples" / "patterns"
SAMPLER = "allotment-notes"  # five kinds of blocks, nine fabrics


def spent(command, folder, source=None):
    """(wall, cpu) of one run that must go well."""
    out = os.open(folder / "out", os.O_WRONLY | os.O_CREAT | os.O_TRUNC, 0o600)
    actions = [(os.POSIX_SPAWN_DUP2, out, 1)]
    if source is not None:
        actions.append((os.POSIX_SPAWN_OPEN, 0, str(source), os.O_RDONLY, 0))
    began = time.perf_counter()
    child = os.posix_spawn(command[0], [str(word) for word in command], os.environ, file_actions=actions)
    _, status, used = os.wait4(child, 0)
    wall = time.perf_counter() - began
    os.close(out)
    if status != 0:
        raise SystemExit(f"{command} ended with {os.waitstatus_to_exitcode(status)}")
    return wall * 1e3, (used.ru_utime + used.ru_stime) * 1e3


def median(rows):
    """Of each column."""
    return [statistics.median(column) for column in zip(*rows)]


def by_turns(repeats, commands, folder):
    """Name -> (wall, cpu), each run once a round."""
    rows = {name: [] for name in commands}
    for _ in range(repeats):
        for name, command in commands.items():
            rows[name].append(spent(command, folder))
    return {name: median(found) for name, found in rows.items()}


def tell(**row):
    print(json.dumps({key: round(value, 3) if isinstance(value, float) else value for key, value in row.items()}),
          flush=True)


def start_up(programs, build, folder, repeats):
    muslin, nothing = programs / "muslin", build / "nothing"
    commands = {
        "nothing": [nothing],
        "cut": [muslin, "cut", "6 in"],
        "plan": [muslin, "plan", 42, "--columns", 3, "--rows", 3],
        "help": [muslin, "--help"],
    }
    times = by_turns(repeats, commands, folder)
    least_wall, least_cpu = times.pop("nothing")
    tell(measure="start-up", of="a C program that does nothing", wall=least_wall, cpu=least_cpu, repeats=repeats)
    for name, (wall, cpu) in times.items():
        tell(measure="start-up", of=f"muslin {name}", wall=wall, cpu=cpu, cpu_to_nothing=cpu / least_cpu, aim=10)


def patterns(small):
    """The sampler first: its queen size; then the largest size of every other one."""
    names = sorted(path.stem for path in PATTERNS.glob("*.json"))
    names.sort(key=lambda name: name != SAMPLER)
    for name in names[:1 if small else None]:
        path = PATTERNS / f"{name}.json"
        yield path, json.loads(path.read_text(encoding="utf-8"))["sizes"][-1]["name"]


STAGES = ("reading", "piecing", "working_out", "words", "letters", "laying_out", "pages", "all", "pictures_alone")


def stages(build, path, size, repeats):
    """Stage -> median; what is not a time comes from the last run."""
    command = [build / "stages", path, size]
    runs = [json.loads(subprocess.run(command, check=True, capture_output=True, text=True).stdout)
            for _ in range(repeats)]
    found = runs[-1]
    for stage in STAGES:
        found[stage] = statistics.median(run[stage] for run in runs)
    for i, row in enumerate(found["search"]):
        row["ms"] = round(statistics.median(run["search"][i]["ms"] for run in runs), 3)
    return found


def sheets(programs, build, folder, repeats, small):
    sheet, nothing = programs / "muslin-sheet", build / "nothing"
    for path, size in patterns(small):
        commands = {
            "nothing": [nothing],
            "sheet": [sheet, path, "--size", size, "--force", "--output", folder / "sheet.pdf"],
        }
        times = by_turns(repeats, commands, folder)
        wall, cpu = times["sheet"]
        found = stages(build, path, size, repeats)
        search = found["search"]
        tell(measure="sheet", of=f"{path.stem}, {size}", wall=wall, cpu=cpu, cpu_to_nothing=cpu / times["nothing"][1],
             aim=300, pages=found["page_count"], pictures=found["pictures"], kilobytes=found["bytes"] // 1000)
        shares = {stage: found[stage] / found["all"] for stage in STAGES if stage not in ("all", "pictures_alone")}
        tell(measure="sheet, stages", of=f"{path.stem}, {size}", **{stage: found[stage] for stage in STAGES},
             shares={stage: round(share, 3) for stage, share in shares.items()})
        tell(measure="sheet, search", of=f"{path.stem}, {size}", limits=search,
             share_of_working_out=max(0.0, 1 - search[0]["ms"] / search[-1]["ms"]))


def batch(programs, folder, lines, repeats):
    """Lines a second; the model answers the same lines, one in seven of them."""
    requests = [json.dumps(batch_model.request(number)) for number in range(lines)]
    muslin, source = programs / "muslin", folder / "requests"
    source.write_text("".join(f"{request}\n" for request in requests), encoding="utf-8")
    few = requests[::7]
    rates = {"model": [], 1: [], 2: []}
    for _ in range(repeats):
        began, cpu = time.perf_counter(), time.process_time()
        answers = [batch_model.answer(json.loads(line)) for line in few]
        texts = [json.dumps(answer) for answer in answers]
        rates["model"].append((len(texts) / (time.perf_counter() - began), len(texts) / (time.process_time() - cpu)))
        for jobs in (1, 2):
            wall, cpu = spent([muslin, "batch", "--jobs", jobs, "--progress", "never"], folder, source)
            rates[jobs].append((lines / wall * 1e3, lines / cpu * 1e3))
    told = [json.loads(line)["answer"] for line in (folder / "out").read_text(encoding="utf-8").splitlines()]
    wrong = [request for request, ours, theirs in zip(few, told[::7], answers) if not batch_model.agree(ours, theirs)]
    by_wall, by_cpu = median(rates["model"])
    tell(measure="batch", of="the Python model", lines_a_second=by_wall, lines_a_cpu_second=by_cpu, lines=len(few))
    for jobs in (1, 2):
        wall, cpu = median(rates[jobs])
        tell(measure="batch", of=f"muslin batch --jobs {jobs}", lines_a_second=wall, lines_a_cpu_second=cpu,
             lines=lines, to_model=wall / by_wall, cpu_to_model=cpu / by_cpu, to_one_job=wall / median(rates[1])[0])
    tell(measure="batch", of="answers compared", lines=len(few), differ=len(wrong))
    return wrong


def main():
    programs, build = map(pathlib.Path, sys.argv[1:3])
    small = "small" in sys.argv[3:]
    with tempfile.TemporaryDirectory() as name:
        folder = pathlib.Path(name)
        start_up(programs, build, folder, 5 if small else 101)
        sheets(programs, build, folder, 1 if small else 9, small)
        wrong = batch(programs, folder, 1000 if small else 50000, 1 if small else 5)
    for request in wrong[:3]:
        print(f"the batch and the model differ: {request}", file=sys.stderr)
    return 1 if wrong else 0


if __name__ == "__main__":
    sys.exit(main())
