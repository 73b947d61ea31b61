"""Where sheets go: files that appear whole or not at all; pages and pictures alone.

SPDX-License-Identifier: MIT
"""
from __future__ import annotations

import os
import pathlib
import re
import resource
import signal
import stat
import struct
import subprocess
import time
import xml.etree.ElementTree as ElementTree

import pytest
from sheets import PROGRAM, asked, complaint, needs_sheet, pattern, run, written

pytestmark = needs_sheet
SHORT = (pattern("market-barrow"), "--size", "wall")


def test_a_sheet_is_named_after_its_pattern(tmp_path: pathlib.Path) -> None:
    assert written(*SHORT, cwd=tmp_path) == ["market-barrow.pdf"]
    assert os.listdir(tmp_path) == ["market-barrow.pdf"]


def test_standard_input_and_output(tmp_path: pathlib.Path) -> None:
    with open(SHORT[0], "rb") as given:
        done = subprocess.run([PROGRAM, "-", "-o", "-", "-s", "wall"], stdin=given, capture_output=True, timeout=120,
                              check=False, cwd=tmp_path)
    assert (done.returncode, done.stderr) == (0, b"") and done.stdout.startswith(b"%PDF-1.4")
    assert os.listdir(tmp_path) == []


def test_a_new_file_has_the_usual_mode(tmp_path: pathlib.Path) -> None:
    target = tmp_path / "sheet.pdf"
    written(*SHORT, "-o", str(target), umask=0o027)
    assert stat.S_IMODE(target.stat().st_mode) == 0o640


def test_an_existing_file_is_not_overwritten(tmp_path: pathlib.Path) -> None:
    target = tmp_path / "sheet.pdf"
    target.write_text("mine")
    assert "--force" in complaint(3, *SHORT, "-o", str(target))
    assert target.read_text() == "mine" and os.listdir(tmp_path) == ["sheet.pdf"]
    written(*SHORT, "-o", str(target), "--force")
    assert target.read_bytes().startswith(b"%PDF")


def test_one_page_that_is_there_keeps_all_others_away(tmp_path: pathlib.Path) -> None:
    (tmp_path / "market-barrow-02.svg").write_text("mine")
    assert "market-barrow-02.svg" in complaint(3, *SHORT, "--svg", cwd=tmp_path)
    assert os.listdir(tmp_path) == ["market-barrow-02.svg"]


def test_a_folder_that_cannot_be_written_is_told(tmp_path: pathlib.Path) -> None:
    assert "No such file" in complaint(3, *SHORT, "-o", str(tmp_path / "none" / "sheet.pdf"))
    assert "no ordinary file" in complaint(3, *SHORT, "-o", str(tmp_path), "--pdf", "--force")
    if os.path.isdir("/proc/self"):  # nobody makes files there, not even the superuser
        assert "Cannot write /proc/self/sheet.pdf" in complaint(3, *SHORT, "-o", "/proc/self/sheet.pdf")


@pytest.mark.skipif(not os.path.exists("/dev/full"), reason="no full device here")
@pytest.mark.parametrize("words", [(*SHORT, "-o", "-"), ("--help",), ("--completion", "zsh")])
def test_a_full_disk_is_told_of_standard_output(words: tuple[str, ...]) -> None:
    with open("/dev/full", "wb") as full:
        done = subprocess.run([PROGRAM, *words], stdout=full, stderr=subprocess.PIPE, text=True, timeout=120,
                              check=False)
    assert done.returncode == 3 and "standard output" in done.stderr


def test_a_file_that_becomes_too_large_is_told_and_taken_away(tmp_path: pathlib.Path) -> None:
    def limit() -> None:
        resource.setrlimit(resource.RLIMIT_FSIZE, (20000, 20000))
    assert "File too large" in complaint(3, *SHORT, "-o", str(tmp_path / "sheet.pdf"), preexec_fn=limit)
    assert os.listdir(tmp_path) == []


def test_an_interruption_leaves_nothing(tmp_path: pathlib.Path) -> None:
    with subprocess.Popen([PROGRAM, pattern("market-barrow"), "--png", "--dpi", "300"], cwd=tmp_path,
                          stdout=subprocess.PIPE, stderr=subprocess.PIPE, text=True) as work:
        waited = time.monotonic()
        while not os.listdir(tmp_path) and time.monotonic() - waited < 60:
            time.sleep(0.005)
        work.send_signal(signal.SIGTERM)  # SIGINT is ignored where the tests run in the background
        out, told = work.communicate(timeout=60)
    assert (work.returncode, out) == (130, "") and "nothing was written" in told
    assert os.listdir(tmp_path) == []


# ---- pages and pictures -------------------------------------------------------------------------------------------


def test_pages_become_drawings_with_numbers(tmp_path: pathlib.Path) -> None:
    names = written(*SHORT, "--svg", "-o", "page.svg", cwd=tmp_path)
    assert len(names) > 9 and names[0] == "page-01.svg" and sorted(os.listdir(tmp_path)) == names
    for name in names:
        root = ElementTree.parse(tmp_path / name).getroot()
        assert root.attrib["width"] == "612pt" and root.attrib["height"] == "792pt"


def test_one_page_becomes_an_image(tmp_path: pathlib.Path) -> None:
    target = tmp_path / "first.png"
    assert written(*SHORT, "--page", "1", "--dpi", "72", "-o", str(target)) == [str(target)]
    content = target.read_bytes()
    assert content.startswith(b"\x89PNG\r\n") and struct.unpack(">II", content[16:24]) == (612, 792)
    alone = tmp_path / "first.pdf"
    written(*SHORT, "--page", "1", "-o", str(alone))
    assert "Pages:           1" in asked("pdfinfo", str(alone)) and b"/Subtype /Link" not in alone.read_bytes()
    assert "has" in complaint(2, *SHORT, "--page", "999", "-o", str(tmp_path / "none.pdf"))


def test_all_pages_are_there_when_nobody_reads_their_names(tmp_path: pathlib.Path) -> None:
    words = " ".join(f"'{word}'" for word in (PROGRAM, *SHORT, "--svg", "-o", "page.svg"))
    subprocess.run(["bash", "-c", f"{words} | true"], cwd=tmp_path, capture_output=True, timeout=120, check=True)
    made = sorted(os.listdir(tmp_path))
    assert len(made) > 3 and all(name.endswith(".svg") for name in made)


def test_a_picture_alone(tmp_path: pathlib.Path) -> None:
    assert written(*SHORT, "--picture", "blank", "-o", "top.svg", cwd=tmp_path) == ["top.svg"]
    assert ElementTree.parse(tmp_path / "top.svg").getroot().tag.endswith("svg")
    steps = written(*SHORT, "--picture", "step", "-o", "step.png", cwd=tmp_path)
    assert steps[0] in ("step-1.png", "step-01.png") and len(steps) > 1
    assert "only one goes to standard output" in complaint(2, *SHORT, "--picture", "step", "--svg", "-o", "-")
    assert "no picture of the kind" in complaint(1, *SHORT, "--picture", "template", cwd=tmp_path)


def test_all_pictures_go_into_a_folder(tmp_path: pathlib.Path) -> None:
    folder = tmp_path / "drawings"
    names = written(*SHORT, "--pictures", str(folder))
    assert sorted(str(folder / name) for name in os.listdir(folder)) == sorted(names)
    assert {"wall-top-1.svg", "wall-blank-1.svg", "wall-checks-1.svg", "wall-step-2.svg"} <= set(os.listdir(folder))
    assert "overwrite" in complaint(3, *SHORT, "--pictures", str(folder))


def test_grey_has_no_colour(tmp_path: pathlib.Path) -> None:
    written(*SHORT, "--picture", "key", "--grey", "-o", str(tmp_path / "key.svg"))

    colours = re.findall(r"rgb\(([\d.]+)%,([\d.]+)%,([\d.]+)%\)", (tmp_path / "key.svg").read_text())
    assert colours and all(red == green == blue for red, green, blue in colours)


def test_a_reader_that_leaves_is_no_drama() -> None:
    done = run("--help")
    assert done.returncode == 0 and "Examples:" in done.stdout and "Exit status:" in done.stdout
    done = subprocess.run(["bash", "-c", f"'{PROGRAM}' --help | head -n 1 >/dev/null"], capture_output=True, text=True,
                          timeout=60, check=False)
    assert done.stderr == ""
