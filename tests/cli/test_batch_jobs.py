"""A batch answered by several workers, cut off and gone on with: always the same answers in the same order.

SPDX-License-Identifier: MIT
"""
from __future__ import annotations

import json
import os
import pathlib
import random
import resource
import signal
import subprocess
import time
from typing import Any

import pytest
from program import Muslin

ROW = {"command": "row", "cut": "2 1/2", "pieces": 6}
PLAN = {"command": "plan", "strips": 42, "columns": 3, "rows": 3, "backing": True, "binding": True}
BAD = {"command": "rwo"}
OUT, PART = "out.jsonl", "out.jsonl.part"


def mixed(count: int) -> str:
    """Lines that are quick and slow to answer, good and bad, some of them blank, the last without its end."""
    choose = random.Random(7)
    lines = [json.dumps({**choose.choice([ROW, ROW, PLAN, BAD]), "id": i}) for i in range(count)]
    for i in range(0, count, 50):
        lines[i] = choose.choice(["", "  ", "not json", "[]", '{"command": "cut", "finished": "2 ells"}'])
    return "\n".join(lines)


def batch(muslin: Muslin, folder: pathlib.Path, *words: str) -> "subprocess.CompletedProcess[str]":
    return muslin.run("batch", "in.jsonl", "--output", OUT, *words, cwd=folder)


@pytest.fixture
def whole(muslin: Muslin, tmp_path: pathlib.Path) -> bytes:
    """The requests in in.jsonl of the folder, and what an uninterrupted run makes of them."""
    (tmp_path / "in.jsonl").write_text(mixed(1000))
    assert batch(muslin, tmp_path).returncode == 1
    answers = (tmp_path / OUT).read_bytes()
    (tmp_path / OUT).unlink()
    return answers


def names(folder: pathlib.Path) -> list[str]:
    return sorted(os.listdir(folder))


# ---- workers --------------------------------------------------------------------------------------------------------


def test_however_many_jobs_the_answers_are_the_same(muslin: Muslin, tmp_path: pathlib.Path, whole: bytes) -> None:
    for jobs in ("1", "2", "4", "64"):
        assert batch(muslin, tmp_path, "--jobs", jobs, "--force").returncode == 1
        assert (tmp_path / OUT).read_bytes() == whole


def test_answers_keep_the_order_of_the_lines(whole: bytes) -> None:
    replies = [json.loads(line) for line in whole.splitlines()]
    numbers = [reply["line"] for reply in replies]
    assert numbers == sorted(set(numbers)) and numbers[-1] == 1000
    assert all(reply["id"] + 1 == reply["line"] for reply in replies if "id" in reply)


def test_a_pipe_is_answered_as_a_file_is(muslin: Muslin, whole: bytes) -> None:
    assert muslin.run("batch", "--jobs", "4", given=mixed(1000)).stdout.encode() == whole


def test_each_answer_is_there_before_the_next_request_is_written(muslin: Muslin) -> None:
    process = subprocess.Popen([muslin.program, "batch", "--jobs", "4"], stdin=subprocess.PIPE,
                               stdout=subprocess.PIPE, text=True)
    assert process.stdin is not None and process.stdout is not None
    for number in range(1, 20):
        process.stdin.write(json.dumps(ROW) + "\n")
        process.stdin.flush()
        assert json.loads(process.stdout.readline())["line"] == number
    process.stdin.close()
    assert process.wait(timeout=30) == 0


def test_nothing_asked_is_nothing_answered(muslin: Muslin, tmp_path: pathlib.Path) -> None:
    for given in ("", "\n", "  \n\n\t"):
        done = muslin.run("batch", "--output", OUT, "--force", cwd=tmp_path, given=given)
        assert done.returncode == 0 and (tmp_path / OUT).read_bytes() == b""


def test_huge_lines_do_not_make_it_larger(muslin: Muslin, tmp_path: pathlib.Path) -> None:
    with open(tmp_path / "in.jsonl", "w", encoding="utf-8") as file:
        for _ in range(2):
            file.write("x" * (60 << 20) + "\n" + json.dumps(ROW) + "\n")

    def little_memory() -> None:
        resource.setrlimit(resource.RLIMIT_DATA, (48 << 20, 48 << 20))

    done = subprocess.run([muslin.program, "batch", "in.jsonl", "--jobs", "2"], cwd=tmp_path, capture_output=True,
                          text=True, timeout=120, preexec_fn=little_memory, check=False)
    replies = [json.loads(line) for line in done.stdout.splitlines()]
    assert ["answer" in reply for reply in replies] == [False, True] * 2


def test_a_line_nested_beyond_all_measure_is_refused(muslin: Muslin) -> None:
    replies = muslin.batch('{"command": "cut", "finished": ' + "[" * 100000, ROW, options=("--jobs", "2"), status=1)
    assert "not JSON" in replies[0]["error"]["sentence"] and "answer" in replies[1]


def test_several_files_are_answered_one_after_the_other(muslin: Muslin, tmp_path: pathlib.Path) -> None:
    (tmp_path / "a").write_text(json.dumps({**ROW, "id": 1}))
    (tmp_path / "b").write_text("")
    (tmp_path / "c").write_text("\n" + json.dumps({**ROW, "id": 2}) + "\n")
    done = muslin.run("batch", "a", "b", "c", cwd=tmp_path)
    replies = [json.loads(line) for line in done.stdout.splitlines()]
    assert [(reply["file"], reply["line"], reply["id"]) for reply in replies] == [("a", 1, 1), ("c", 2, 2)]


def test_a_file_that_is_not_there_is_told_before_any_work(muslin: Muslin, tmp_path: pathlib.Path) -> None:
    (tmp_path / "a").write_text(json.dumps(ROW))
    done = muslin.run("batch", "a", "nowhere", "--output", OUT, cwd=tmp_path)
    assert done.returncode == 3 and "Cannot read nowhere" in done.stderr
    assert names(tmp_path) == ["a"]


def test_jobs_have_bounds(muslin: Muslin) -> None:
    for jobs in ("-1", "257", "many"):
        assert "--jobs" in muslin.complaint(2, "batch", f"--jobs={jobs}")


# ---- going on -------------------------------------------------------------------------------------------------------


def cut_off(muslin: Muslin, folder: pathlib.Path, lines: int, how: signal.Signals) -> int:
    """A batch that has answered the first lines of in.jsonl, waits for more, and gets a signal."""
    given = (folder / "in.jsonl").read_text().splitlines(keepends=True)[:lines]
    process = subprocess.Popen([muslin.program, "batch", "--jobs", "4", "--output", OUT], cwd=folder,
                               stdin=subprocess.PIPE, stderr=subprocess.DEVNULL, text=True)
    assert process.stdin is not None
    process.stdin.write("".join(given))
    process.stdin.flush()
    wanted = sum(line.strip() != "" for line in given)
    deadline = time.monotonic() + 30
    while not (folder / PART).exists() or (folder / PART).read_bytes().count(b"\n") < wanted:
        assert time.monotonic() < deadline
        time.sleep(0.01)
    process.send_signal(how)
    process.stdin.close()
    return process.wait(timeout=30)


@pytest.mark.parametrize("how, status", [(signal.SIGINT, 130), (signal.SIGTERM, 130), (signal.SIGKILL, -9)])
def test_what_was_cut_off_goes_on(muslin: Muslin, tmp_path: pathlib.Path, whole: bytes, how: signal.Signals,
                                  status: int) -> None:
    assert cut_off(muslin, tmp_path, 333, how) == status
    assert names(tmp_path) == ["in.jsonl", PART]
    assert whole.startswith((tmp_path / PART).read_bytes())
    assert batch(muslin, tmp_path, "--resume").returncode == 1
    assert names(tmp_path) == ["in.jsonl", OUT]
    assert (tmp_path / OUT).read_bytes() == whole


def test_cut_off_anywhere_it_goes_on(muslin: Muslin, tmp_path: pathlib.Path, whole: bytes) -> None:
    for at in (0, 1, 40, len(whole) // 2, len(whole) - 1, len(whole)):
        for name in (OUT, PART):
            (tmp_path / name).write_bytes(whole[:at])
            assert batch(muslin, tmp_path, "--resume", "--jobs", "2").returncode == 1
            assert (tmp_path / OUT).read_bytes() == whole
            (tmp_path / OUT).unlink()


def test_interrupted_in_the_middle_of_all_work_it_goes_on(muslin: Muslin, tmp_path: pathlib.Path) -> None:
    (tmp_path / "in.jsonl").write_text((json.dumps(PLAN) + "\n") * 6000)
    times = 0
    while not (tmp_path / OUT).exists():
        process = subprocess.Popen([muslin.program, "batch", "in.jsonl", "--output", OUT, "--resume", "--jobs", "4"],
                                   cwd=tmp_path, stderr=subprocess.DEVNULL)
        time.sleep(0.1)
        process.send_signal(signal.SIGINT if times % 2 == 0 else signal.SIGKILL)
        assert process.wait(timeout=30) in (0, 130, -9)
        times += 1
        if times == 3:
            assert batch(muslin, tmp_path, "--resume").returncode == 0
    replies = (tmp_path / OUT).read_text().splitlines()
    assert [json.loads(reply[: reply.index(",")] + "}")["line"] for reply in replies] == list(range(1, 6001))
    assert len({reply[reply.index('"answer"'):] for reply in replies}) == 1


def test_where_nothing_was_begun_it_begins(muslin: Muslin, tmp_path: pathlib.Path, whole: bytes) -> None:
    assert batch(muslin, tmp_path, "--resume").returncode == 1
    assert (tmp_path / OUT).read_bytes() == whole


def test_what_is_finished_stays_so(muslin: Muslin, tmp_path: pathlib.Path, whole: bytes) -> None:
    (tmp_path / OUT).write_bytes(whole)
    assert batch(muslin, tmp_path, "--resume").returncode == 1
    assert (tmp_path / OUT).read_bytes() == whole


def test_lines_added_to_the_input_are_answered(muslin: Muslin, tmp_path: pathlib.Path, whole: bytes) -> None:
    (tmp_path / OUT).write_bytes(whole)
    with open(tmp_path / "in.jsonl", "a", encoding="utf-8") as file:
        file.write("\n" + json.dumps(ROW) + "\n")
    batch(muslin, tmp_path, "--resume")
    answers = (tmp_path / OUT).read_bytes()
    assert answers.startswith(whole) and json.loads(answers[len(whole):])["line"] == 1001


def test_what_was_cut_off_beside_its_beginning_goes_on(muslin: Muslin, tmp_path: pathlib.Path, whole: bytes) -> None:
    lines = whole.splitlines(keepends=True)
    for begun, further in ((300, 700), (300, 300), (700, 300), (300, 0)):
        (tmp_path / OUT).write_bytes(b"".join(lines[:begun]))
        (tmp_path / PART).write_bytes(b"".join(lines[:further]))
        assert batch(muslin, tmp_path, "--resume").returncode == 1
        assert (tmp_path / OUT).read_bytes() == whole and names(tmp_path) == ["in.jsonl", OUT]


def refused(muslin: Muslin, folder: pathlib.Path, *words: str) -> str:
    """--resume refuses and leaves everything as it is."""
    before = {name: (folder / name).read_bytes() for name in names(folder)}
    done = batch(muslin, folder, "--resume", *words)
    assert done.returncode == 3, done.stderr
    assert {name: (folder / name).read_bytes() for name in names(folder)} == before
    return done.stderr


@pytest.mark.parametrize("name", [OUT, PART])
def test_another_input_is_refused(muslin: Muslin, tmp_path: pathlib.Path, whole: bytes, name: str) -> None:
    (tmp_path / name).write_bytes(whole[: len(whole) // 2])
    lines = (tmp_path / "in.jsonl").read_text().splitlines()
    inputs: list[list[str]] = [lines[:4] + ["{}"] + lines[5:], lines[1:], ["\n"] + lines, lines[:3], []]
    for others in inputs:
        (tmp_path / "in.jsonl").write_text("\n".join(others))
        assert "start anew" in refused(muslin, tmp_path)


def test_other_options_are_refused(muslin: Muslin, tmp_path: pathlib.Path, whole: bytes) -> None:
    (tmp_path / PART).write_bytes(whole)
    assert f"line 1 of {PART}" in refused(muslin, tmp_path, "--units", "cm")
    assert f"line 1 of {PART}" in refused(muslin, tmp_path, "--bare-unit", "cm")


def test_a_file_of_something_else_is_refused(muslin: Muslin, tmp_path: pathlib.Path, whole: bytes) -> None:
    for other in (b"my notes\n", b"{}\n", b"\0\0\0\n", whole.replace(b'"check"', b'"chuck"')):
        (tmp_path / OUT).write_bytes(other)
        assert "no answer of this program" in refused(muslin, tmp_path)


def test_a_target_beside_a_part_is_only_replaced_by_force(muslin: Muslin, tmp_path: pathlib.Path,
                                                          whole: bytes) -> None:
    (tmp_path / PART).write_bytes(whole[:5000])
    (tmp_path / OUT).write_text("mine")
    assert "--force" in refused(muslin, tmp_path)
    assert batch(muslin, tmp_path, "--resume", "--force").returncode == 1
    assert (tmp_path / OUT).read_bytes() == whole and names(tmp_path) == ["in.jsonl", OUT]


def test_going_on_needs_a_file(muslin: Muslin) -> None:
    assert "--output" in muslin.complaint(2, "batch", "--resume")


def test_two_runs_do_not_write_one_file(muslin: Muslin, tmp_path: pathlib.Path) -> None:
    first = subprocess.Popen([muslin.program, "batch", "--output", OUT], cwd=tmp_path, stdin=subprocess.PIPE)
    assert first.stdin is not None
    while not (tmp_path / PART).exists():
        time.sleep(0.01)
    for words in (("--resume",), ("--force",), ()):
        done = muslin.run("batch", "--output", OUT, *words, cwd=tmp_path)
        assert done.returncode == 3 and (not words or "another run" in done.stderr)
    first.stdin.write((json.dumps(ROW) + "\n").encode())
    first.stdin.close()
    assert first.wait(timeout=30) == 0
    assert len((tmp_path / OUT).read_text().splitlines()) == 1


# ---- trouble --------------------------------------------------------------------------------------------------------


def with_room_for(size: int, program: str, folder: pathlib.Path, *words: str) -> "subprocess.CompletedProcess[str]":
    """Files may not grow beyond a size, as if the disk were full."""

    def limit() -> None:
        signal.signal(signal.SIGXFSZ, signal.SIG_IGN)
        resource.setrlimit(resource.RLIMIT_FSIZE, (size, size))

    return subprocess.run([program, "batch", "in.jsonl", "--output", OUT, *words], cwd=folder, capture_output=True,
                          text=True, timeout=60, preexec_fn=limit, check=False)


def test_no_room_keeps_what_is_finished(muslin: Muslin, tmp_path: pathlib.Path, whole: bytes) -> None:
    (tmp_path / OUT).write_text("earlier")
    done = with_room_for(20000, muslin.program, tmp_path, "--force", "--jobs", "4")
    assert done.returncode == 3 and f"Cannot write {OUT}" in done.stderr and "--resume" in done.stderr
    assert (tmp_path / OUT).read_text() == "earlier"
    part = (tmp_path / PART).read_bytes()
    assert part.endswith(b"\n") and whole.startswith(part)
    assert batch(muslin, tmp_path, "--resume", "--force").returncode == 1
    assert (tmp_path / OUT).read_bytes() == whole


def test_a_full_device_is_a_sentence(muslin: Muslin) -> None:
    with open("/dev/full", "w", encoding="utf-8") as full:
        done = subprocess.run([muslin.program, "batch"], input=json.dumps(ROW), stdout=full, stderr=subprocess.PIPE,
                              text=True, timeout=60, check=False)
    assert done.returncode == 3 and "No space left" in done.stderr


def test_a_folder_that_is_not_there_is_a_sentence(muslin: Muslin) -> None:
    assert "nowhere/out" in muslin.complaint(3, "batch", "--output", "nowhere/out")


def test_searches_of_a_batch_draw_no_progress_of_their_own(muslin: Muslin) -> None:
    request: dict[str, Any] = {"command": "cutplan", "piece": ["20 of 2 1/2 x 4 1/2 in"], "progress": "always"}
    done = muslin.run("batch", given=json.dumps(request))
    assert done.returncode == 0 and done.stderr == ""


# ---- pattern files --------------------------------------------------------------------------------------------------

SAMPLES = pathlib.Path(__file__).parents[2] / "examples" / "patterns"


@pytest.fixture
def folder(tmp_path: pathlib.Path) -> pathlib.Path:
    """Three sample patterns, a file that is none, and one that is not looked at."""
    (tmp_path / "patterns").mkdir()
    for sample in sorted(SAMPLES.glob("*.json"))[:3]:
        (tmp_path / "patterns" / sample.name).write_bytes(sample.read_bytes())
    (tmp_path / "patterns" / "zz.json").write_text('{"fabrics": 7}')
    (tmp_path / "patterns" / "notes.txt").write_text("not this")
    return tmp_path


def test_every_pattern_of_a_folder_is_answered_in_every_size(muslin: Muslin, folder: pathlib.Path) -> None:
    done = muslin.run("batch", "--patterns", "patterns", cwd=folder)
    replies = [json.loads(line) for line in done.stdout.splitlines()]
    wanted = []
    for name in sorted(os.listdir(folder / "patterns")):
        if name.endswith(".json") and name != "zz.json":
            sizes = json.loads((folder / "patterns" / name).read_text())["sizes"]
            wanted += [(f"patterns/{name}", size["name"]) for size in sizes]
    assert done.returncode == 1 and [(reply["id"]["file"], reply["id"]["size"]) for reply in replies[:-1]] == wanted
    for reply in replies[:-1]:
        file, size = reply["id"]["file"], reply["id"]["size"]
        alone = muslin.run("pattern", file, "--size", size, "--json", cwd=folder)
        assert json.loads(alone.stdout) == reply["answer"]
    assert replies[-1]["id"] == {"file": "patterns/zz.json"} and replies[-1]["error"]["complaints"]


def test_patterns_named_one_by_one_are_answered_the_same_by_any_number_of_jobs(muslin: Muslin,
                                                                              folder: pathlib.Path) -> None:
    names = sorted(str(name.relative_to(folder)) for name in (folder / "patterns").glob("*.json"))
    one = muslin.run("batch", "--patterns", "--jobs", "1", *names, cwd=folder).stdout
    assert one == muslin.run("batch", "--patterns", "--jobs", "4", *names, cwd=folder).stdout
    assert one == muslin.run("batch", "--patterns", "patterns/", cwd=folder).stdout


def test_patterns_go_on_unless_one_has_changed(muslin: Muslin, folder: pathlib.Path) -> None:
    words = ("batch", "--patterns", "patterns", "--output", OUT)
    muslin.run(*words, cwd=folder)
    whole = (folder / OUT).read_bytes()
    (folder / OUT).write_bytes(whole[: len(whole) // 2])
    assert muslin.run(*words, "--resume", cwd=folder).returncode == 1
    assert (folder / OUT).read_bytes() == whole
    (folder / "patterns" / "zz.json").write_text('{"fabrics": 8}')
    assert "start anew" in muslin.run(*words, "--resume", cwd=folder).stderr
    assert (folder / OUT).read_bytes() == whole


def test_patterns_that_are_not_there_get_a_sentence(muslin: Muslin, tmp_path: pathlib.Path) -> None:
    assert "Cannot read nowhere" in muslin.complaint(3, "batch", "--patterns", "nowhere")
    assert "no file in it ends in .json" in muslin.complaint(3, "batch", "--patterns", str(tmp_path))
    assert "Name pattern files" in muslin.complaint(2, "batch", "--patterns")


def test_a_line_cannot_take_the_pattern_from_where_the_lines_come_from(muslin: Muslin) -> None:
    replies = muslin.batch({"command": "pattern", "file": "-"}, ROW, status=1)
    assert "standard input" in replies[0]["error"]["sentence"] and "answer" in replies[1]
