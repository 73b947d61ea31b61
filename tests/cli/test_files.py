"""Where answers go: files that appear whole or not at all.

SPDX-License-Identifier: MIT
"""
from __future__ import annotations

import os
import pathlib
import stat
import subprocess

import pytest

from program import Muslin

CUT = ("cut", "6", "--output")


def test_an_answer_goes_to_a_file_and_nothing_else_is_left(muslin: Muslin, tmp_path: pathlib.Path) -> None:
    done = muslin.run(*CUT, "answer.txt", cwd=tmp_path)
    assert (done.returncode, done.stdout) == (0, "")
    assert (tmp_path / "answer.txt").read_text() == "Cut 6 1/2 in to finish at 6 in.\n"
    assert os.listdir(tmp_path) == ["answer.txt"]


def test_a_new_file_has_the_usual_mode(muslin: Muslin, tmp_path: pathlib.Path) -> None:
    target = tmp_path / "answer.txt"
    mask = os.umask(0o027)
    try:
        muslin.text(*CUT, str(target))
    finally:
        os.umask(mask)
    assert stat.S_IMODE(target.stat().st_mode) == 0o640


def test_an_existing_file_is_not_overwritten(muslin: Muslin, tmp_path: pathlib.Path) -> None:
    target = tmp_path / "answer.txt"
    target.write_text("mine")
    assert "--force" in muslin.complaint(3, *CUT, str(target))
    assert target.read_text() == "mine"
    assert os.listdir(tmp_path) == ["answer.txt"]


def test_force_replaces_it(muslin: Muslin, tmp_path: pathlib.Path) -> None:
    target = tmp_path / "answer.txt"
    target.write_text("mine")
    muslin.text(*CUT, str(target), "--force")
    assert "6 1/2" in target.read_text()


def test_a_question_without_answer_leaves_the_file_alone(muslin: Muslin, tmp_path: pathlib.Path) -> None:
    target = tmp_path / "answer.txt"
    target.write_text("mine")
    muslin.complaint(1, "finished", "1/4", "--output", str(target), "--force")
    assert target.read_text() == "mine"


def test_what_is_no_ordinary_file_is_never_replaced(muslin: Muslin, tmp_path: pathlib.Path) -> None:
    target = tmp_path / "pipe"
    os.mkfifo(target)
    assert "no ordinary file" in muslin.complaint(3, *CUT, str(target), "--force")
    assert stat.S_ISFIFO(target.stat().st_mode)


def test_a_folder_that_is_not_there_is_file_trouble(muslin: Muslin, tmp_path: pathlib.Path) -> None:
    assert "No such file" in muslin.complaint(3, *CUT, str(tmp_path / "none" / "answer.txt"))


def test_input_that_is_not_there_is_file_trouble(muslin: Muslin, tmp_path: pathlib.Path) -> None:
    assert "Cannot read" in muslin.complaint(3, "batch", str(tmp_path / "none.jsonl"))


@pytest.mark.skipif(not os.path.exists("/dev/full"), reason="no full device here")
def test_a_full_disk_is_file_trouble(muslin: Muslin) -> None:
    with open("/dev/full", "w", encoding="utf-8") as full:
        done = subprocess.run([muslin.program, "cut", "6"], stdout=full, stderr=subprocess.PIPE, text=True,
                              timeout=60, check=False)
    assert done.returncode == 3
    assert "standard output" in done.stderr


def test_a_reader_that_leaves_is_no_drama(muslin: Muslin) -> None:
    done = subprocess.run(["bash", "-c", f"set -o pipefail; '{muslin.program}' plan --help | head -n 1 >/dev/null"],
                          capture_output=True, text=True, timeout=60, check=False)
    assert done.stderr == ""
