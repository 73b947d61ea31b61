"""Many requests in, many answers out: nothing is lost, nothing is half written.

SPDX-License-Identifier: MIT
"""
from __future__ import annotations

import json
import os
import pathlib
import pty
import signal
import subprocess
import time
from typing import Any, Callable

from program import Muslin, inches

ROW = {"command": "row", "cut": "2 1/2", "pieces": 6}


def test_answers_come_in_the_order_of_the_requests(muslin: Muslin) -> None:
    replies = muslin.batch(*({"command": "cut", "finished": size} for size in (6, 2, 4)))
    assert [reply["line"] for reply in replies] == [1, 2, 3]
    assert [inches(reply["answer"]["pieces"][0]["cut"]) for reply in replies] == [6.5, 2.5, 4.5]


def test_a_line_is_answered_as_the_command_line_would(muslin: Muslin) -> None:
    assert muslin.batch(ROW)[0]["answer"] == muslin.answer("row", "2 1/2", "--pieces", "6")


def test_bad_lines_get_errors_and_lose_nothing_else(muslin: Muslin) -> None:
    replies = muslin.batch(ROW, "not json", "[1, 2]", {"command": "rwo"}, {"cut": "2"}, {**ROW, "peices": 6},
                           {**ROW, "cut": "2 1/2 ells"}, {**ROW, "cut": 2.5}, {**ROW, "seam": "2 in"}, ROW, status=1)
    assert [reply["line"] for reply in replies] == list(range(1, 11))
    assert ["answer" in reply for reply in replies] == [True] + 8 * [False] + [True]
    sentences = [reply["error"]["sentence"] for reply in replies[1:9]]
    for part, sentence in zip(("not JSON", "no object", "Did you mean row?", "names no command", "Did you mean pieces?",
                               "ells", "in quotes", "seam"), sentences):
        assert part in sentence, sentence


def test_an_error_has_status_sentence_argument_value_and_limit(muslin: Muslin) -> None:
    error = muslin.batch({"command": "finished", "cut": "1/4"}, status=1)[0]["error"]
    assert (error["status"], error["argument"], error["value"], error["limit"]) == (18, "cut size", 2032, 4064)
    assert error["option"] == "cut" and error["sentence"].endswith(".")


def test_a_line_with_one_member_twice_is_refused(muslin: Muslin) -> None:
    assert "error" in muslin.batch('{"command": "cut", "finished": "2", "finished": "3"}', status=1)[0]


def test_an_id_comes_back(muslin: Muslin) -> None:
    replies = muslin.batch({**ROW, "id": {"page": 7}}, {"id": "bad", "command": "x"}, status=1)
    assert [reply["id"] for reply in replies] == [{"page": 7}, "bad"]


def test_blank_lines_are_passed_over_and_counted(muslin: Muslin) -> None:
    assert [reply["line"] for reply in muslin.batch("", ROW, "   ", ROW)] == [2, 4]


def test_a_last_line_without_its_end_counts(muslin: Muslin) -> None:
    done = muslin.run("batch", given=json.dumps(ROW) + "\n" + json.dumps(ROW))
    assert len(done.stdout.splitlines()) == 2


def test_underscores_may_stand_for_hyphens(muslin: Muslin) -> None:
    request = {"command": "yield", "segment": "6 1/2", "usable": 40, "fold_clear": "1 in", "trim": "1/2"}
    assert muslin.batch(request)[0]["answer"]["segments"] == 4


def test_lengths_of_answers_can_be_given_back(muslin: Muslin) -> None:
    cut = muslin.batch({"command": "cut", "finished": "2.3 cm"})[0]["answer"]["pieces"][0]["cut"]
    back = muslin.batch({"command": "finished", "cut": cut})[0]["answer"]["pieces"][0]["finished"]
    assert back["ticks"] == 23 * 320


def test_counts_too_large_are_refused_not_wrapped(muslin: Muslin) -> None:
    replies = muslin.batch({**ROW, "pieces": 2**31}, {**ROW, "pieces": 2**62},
                           {**ROW, "pieces": "99999999999999999999"},
                           '{"command": "row", "cut": "2", "pieces": 99999999999999999999}', status=1)
    assert all("error" in reply for reply in replies)


def test_a_line_beyond_all_measure_is_refused_and_passed_over(muslin: Muslin) -> None:
    long = json.dumps({**ROW, "id": "x" * (1 << 21)})
    replies = muslin.batch(long, ROW, status=1)
    assert "longer" in replies[0]["error"]["sentence"]
    assert "answer" in replies[1]


def test_lines_may_differ_from_the_units_of_the_command_line(muslin: Muslin) -> None:
    replies = muslin.batch(ROW, {**ROW, "units": "in"}, options=("--units", "cm"))
    assert [reply["answer"]["unfinished"]["text"] for reply in replies] == ["31.75 cm", "12 1/2 in"]


def test_a_file_of_requests_becomes_a_file_of_answers(muslin: Muslin, tmp_path: pathlib.Path) -> None:
    (tmp_path / "in.jsonl").write_text((json.dumps(ROW) + "\n") * 50)
    done = muslin.run("batch", "in.jsonl", "--output", "out.jsonl", cwd=tmp_path)
    assert (done.returncode, done.stdout, done.stderr) == (0, "", "")
    assert len((tmp_path / "out.jsonl").read_text().splitlines()) == 50
    assert sorted(os.listdir(tmp_path)) == ["in.jsonl", "out.jsonl"]


def test_an_existing_target_is_refused_before_any_work(muslin: Muslin, tmp_path: pathlib.Path) -> None:
    (tmp_path / "out.jsonl").write_text("mine")
    assert muslin.run("batch", "--output", "out.jsonl", cwd=tmp_path, given=json.dumps(ROW)).returncode == 3
    assert (tmp_path / "out.jsonl").read_text() == "mine"


def test_the_lines_of_an_earlier_interruption_are_not_lost_either(muslin: Muslin, tmp_path: pathlib.Path) -> None:
    (tmp_path / "out.jsonl.part").write_text("kept")
    done = muslin.run("batch", "--output", "out.jsonl", cwd=tmp_path, given=json.dumps(ROW))
    assert done.returncode == 3
    assert os.listdir(tmp_path) == ["out.jsonl.part"]


# ---- Ctrl-C ---------------------------------------------------------------------------------------------------------


def wait_until(true: Callable[[], bool]) -> None:
    deadline = time.monotonic() + 30
    while not true():
        assert time.monotonic() < deadline
        time.sleep(0.01)


def interrupted(muslin: Muslin, folder: pathlib.Path, lines: int, *tail: str) -> "subprocess.Popen[str]":
    """A batch that has answered so many lines, waits for more, and gets Ctrl-C."""
    batch = subprocess.Popen([muslin.program, "batch", "--output", "out.jsonl"], cwd=folder, stdin=subprocess.PIPE,
                             stderr=subprocess.PIPE, text=True)
    assert batch.stdin is not None
    batch.stdin.write((json.dumps(ROW) + "\n") * lines + "".join(tail))
    batch.stdin.flush()

    def written() -> bool:
        return sum(name.read_text().count("\n") for name in folder.glob("out.jsonl.*")) == lines

    wait_until(written)
    batch.send_signal(signal.SIGINT)
    batch.wait(timeout=30)
    return batch


def test_ctrl_c_keeps_finished_lines_apart_and_writes_no_target(muslin: Muslin, tmp_path: pathlib.Path) -> None:
    batch = interrupted(muslin, tmp_path, 7, '{"command": "cu')
    assert batch.returncode == 130
    assert batch.stderr is not None and "out.jsonl.part" in batch.stderr.read()
    assert os.listdir(tmp_path) == ["out.jsonl.part"]
    kept = [json.loads(line) for line in (tmp_path / "out.jsonl.part").read_text().splitlines()]
    assert [reply["line"] for reply in kept] == list(range(1, 8))


def test_ctrl_c_to_standard_output_ends_after_a_whole_line(muslin: Muslin) -> None:
    batch = subprocess.Popen([muslin.program, "batch"], stdin=subprocess.PIPE, stdout=subprocess.PIPE,
                             stderr=subprocess.DEVNULL, text=True)
    assert batch.stdin is not None and batch.stdout is not None
    batch.stdin.write(json.dumps(ROW) + "\n")
    batch.stdin.flush()
    first = batch.stdout.readline()
    batch.send_signal(signal.SIGINT)
    assert batch.wait(timeout=30) == 130
    assert json.loads(first)["line"] == 1 and batch.stdout.read() == ""


def test_a_batch_told_to_ignore_ctrl_c_does(muslin: Muslin) -> None:
    batch = subprocess.Popen(["sh", "-c", f"trap '' INT; exec '{muslin.program}' batch"], stdin=subprocess.PIPE,
                             stdout=subprocess.PIPE, text=True)
    assert batch.stdin is not None and batch.stdout is not None
    batch.stdin.write(json.dumps(ROW) + "\n")
    batch.stdin.flush()
    batch.stdout.readline()
    batch.send_signal(signal.SIGINT)
    batch.stdin.write(json.dumps(ROW) + "\n")
    batch.stdin.close()
    assert json.loads(batch.stdout.read())["line"] == 2
    assert batch.wait(timeout=30) == 0


def test_a_reader_that_leaves_ends_the_batch_quietly(muslin: Muslin) -> None:
    requests = (json.dumps(ROW) + "\n") * 5000
    done = subprocess.run(["bash", "-c", f"'{muslin.program}' batch | head -n 1"], input=requests,
                          capture_output=True, text=True, timeout=60, check=False)
    assert json.loads(done.stdout)["line"] == 1
    assert done.stderr == ""


# ---- progress -------------------------------------------------------------------------------------------------------


def on_a_terminal(words: list[str]) -> str:
    """Runs with standard error on a terminal of its own and returns what it showed there."""
    master, slave = pty.openpty()
    process = subprocess.Popen(words, stdout=subprocess.DEVNULL, stderr=slave, stdin=subprocess.DEVNULL)
    os.close(slave)
    shown = b""
    while True:
        try:
            block = os.read(master, 65536)
        except OSError:
            break
        if not block:
            break
        shown += block
    os.close(master)
    assert process.wait(timeout=60) == 0
    return shown.decode()


def requests_file(folder: pathlib.Path) -> str:
    name = folder / "in.jsonl"
    name.write_text((json.dumps(ROW) + "\n") * 200)
    return str(name)


def test_a_terminal_gets_a_bar_with_the_rate(muslin: Muslin, tmp_path: pathlib.Path) -> None:
    shown = on_a_terminal([muslin.program, "batch", requests_file(tmp_path)])
    assert "########################] 100 %" in shown
    assert "200 lines, 0 failed" in shown and "/s" in shown
    assert shown.endswith("\n")


def test_a_terminal_gets_none_when_none_is_wanted(muslin: Muslin, tmp_path: pathlib.Path) -> None:
    assert on_a_terminal([muslin.program, "batch", requests_file(tmp_path), "--progress", "never"]) == ""


def test_no_terminal_gets_a_bar_only_when_it_is_wanted(muslin: Muslin, tmp_path: pathlib.Path) -> None:
    name = requests_file(tmp_path)
    assert muslin.run("batch", name).stderr == ""
    assert "100 %" in muslin.run("batch", name, "--progress", "always").stderr


def test_progress_has_three_words(muslin: Muslin) -> None:
    assert "auto, always or never" in muslin.complaint(2, "batch", "--progress", "perhaps")


def member_names(value: Any) -> set[str]:
    if isinstance(value, dict):
        return set(value).union(*map(member_names, value.values()))
    return set().union(*map(member_names, value)) if isinstance(value, list) else set()


def test_members_are_words_with_underscores(muslin: Muslin) -> None:
    names = member_names(muslin.answer("plan", "42", "--columns", "3", "--rows", "3", "--backing", "--binding"))
    assert names and all(name.replace("_", "").isalpha() and name == name.lower() for name in names)
