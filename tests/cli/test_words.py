"""What the program says when the words are wrong, and how it explains itself.

SPDX-License-Identifier: MIT
"""
from __future__ import annotations

import json
import os
import pathlib
import re
import shutil
import subprocess

import pytest

from program import Muslin

COMMANDS = re.compile(r"^  ([a-z-]+) +\S", re.MULTILINE)
MAN_PAGE = pathlib.Path(__file__).parents[2] / "examples" / "cli" / "muslin.1"


def commands(muslin: Muslin) -> list[str]:
    return COMMANDS.findall(muslin.text("--help"))


def test_help_lists_every_command_and_each_explains_itself_with_an_example(muslin: Muslin) -> None:
    names = commands(muslin)
    assert "plan" in names and "batch" in names and len(names) > 20
    for name in names:
        text = muslin.text(name, "--help")
        assert f"  muslin {name}" in text and "For example" in text
        assert text == muslin.text("help", name)


def test_the_examples_of_every_help_work(muslin: Muslin, tmp_path: pathlib.Path) -> None:
    samples = tmp_path / "examples" / "patterns"
    shutil.copytree(MAN_PAGE.parents[1] / "patterns", samples)
    shutil.copy(samples / "ferry-steps.json", tmp_path / "my-quilt.json")
    (tmp_path / "requests.jsonl").write_text('{"command": "cut", "finished": "6"}\n')
    for name in commands(muslin):
        text = re.sub(r"\\\n\s+", "", muslin.text(name, "--help").split("For example:")[1])
        examples = [line for line in text.splitlines() if line.startswith("  muslin ")]
        assert examples
        for example in examples:
            command = example.strip().replace("muslin", f"'{muslin.program}'", 1)
            done = subprocess.run(["sh", "-c", command], capture_output=True, text=True, timeout=60, check=False,
                                  cwd=tmp_path, env={**os.environ, "HOME": str(tmp_path)})
            assert done.returncode == 0, (example, done.stderr)


def test_no_line_of_help_is_wider_than_the_page(muslin: Muslin) -> None:
    for name in commands(muslin):
        assert all(len(line) <= 80 for line in muslin.text(name, "--help").splitlines()), name


def test_the_manual_page_names_every_command(muslin: Muslin) -> None:
    manual = MAN_PAGE.read_text(encoding="utf-8")
    for name in commands(muslin):
        assert f".It Cm {name}\n" in manual


@pytest.mark.skipif(shutil.which("mandoc") is None, reason="mandoc is not installed")
def test_the_manual_page_is_well_formed() -> None:
    done = subprocess.run(["mandoc", "-T", "lint", str(MAN_PAGE)], capture_output=True, text=True, check=False)
    assert (done.returncode, done.stdout) == (0, "")


def test_the_version_is_the_librarys(muslin: Muslin) -> None:
    assert re.fullmatch(r"muslin \d+\.\d+\.\d+\n", muslin.text("--version"))


def test_a_word_of_the_trade_leads_to_the_commands_that_speak_of_it(muslin: Muslin) -> None:
    assert "Did you mean from-stock?" in muslin.complaint(2, "from")
    assert "Did you mean from-stock?" in muslin.complaint(2, "stash")
    assert "Did you mean substitute?" in muslin.complaint(2, "yardage")
    assert "Did you mean quilting-lines?" in muslin.complaint(2, "quilting-l")


def test_a_slip_in_a_choice_gets_the_nearest_word(muslin: Muslin) -> None:
    complaint = muslin.complaint(2, "unit", "flying-gese", "3")
    assert '"flying-gese" is not known here. Did you mean flying-geese? Choose one of ' in complaint
    complaint = muslin.complaint(2, "cut", "6", "--units", "xylophone")
    assert "--units: Choose one of in, decimal, cm or mm." in complaint


def test_help_and_version_come_as_they_are_first_tried(muslin: Muslin) -> None:
    assert muslin.text("-h") == muslin.text("--help") == muslin.text("help")
    assert muslin.text("plan", "-h") == muslin.text("plan", "--help")
    assert muslin.text("version") == muslin.text("--version")
    assert muslin.complaint(2, "--hlep").startswith("muslin: ")


def test_no_command_is_wrong_input(muslin: Muslin) -> None:
    assert "muslin --help" in muslin.complaint(2)


@pytest.mark.parametrize(("written", "meant"), [("paln", "plan"), ("bating", "batting"), ("fnished", "finished")])
def test_a_slip_in_a_command_gets_a_suggestion(muslin: Muslin, written: str, meant: str) -> None:
    assert f"Did you mean {meant}?" in muslin.complaint(2, written)


def test_a_word_that_is_like_no_command_gets_none(muslin: Muslin) -> None:
    assert "Did you mean" not in muslin.complaint(2, "xylophone")


def test_a_slip_in_an_option_gets_a_suggestion(muslin: Muslin) -> None:
    assert "Did you mean --fold-clear?" in muslin.complaint(2, "plan", "42", "--foldclear", "1")


def test_an_option_may_be_shortened(muslin: Muslin) -> None:
    assert muslin.answer("yield", "--seg", "6 1/2", "--usabl", "40")["segments"] == 6


def test_an_option_without_its_value_is_wrong_input(muslin: Muslin) -> None:
    assert "--seam" in muslin.complaint(2, "cut", "2", "--seam")


def test_a_missing_option_is_named_and_explained(muslin: Muslin) -> None:
    assert "--columns: This must be given: blocks across." in muslin.complaint(2, "plan", "42", "--rows", "3")


def test_a_length_that_cannot_be_read_is_quoted_with_its_place(muslin: Muslin) -> None:
    complaint = muslin.complaint(2, "cut", "--finished", "2 1/2 fathoms")
    assert '--finished: "2 1/2 fathoms": At byte 6' in complaint


def test_the_other_decimal_sign_is_refused_with_a_hint(muslin: Muslin) -> None:
    assert "decimal-comma" in muslin.complaint(2, "cut", "2,5")
    assert "Cut 3 in to finish at 2,5 in." in muslin.text("cut", "2,5", "--decimal-comma", "--units", "decimal")


def test_a_value_out_of_range_names_option_value_and_limit(muslin: Muslin) -> None:
    complaint = muslin.complaint(2, "plan", "42", "--columns", "0", "--rows", "3")
    assert "--columns" in complaint and "0" in complaint and "1" in complaint


def test_seams_that_eat_the_piece_are_no_answer(muslin: Muslin) -> None:
    complaint = muslin.complaint(1, "finished", "1/4")
    assert "--cut: " in complaint and "1/4 in" in complaint and "1/2 in" in complaint


def test_a_block_that_is_not_square_cannot_turn_a_quarter(muslin: Muslin) -> None:
    words = ("top", "12", "--height", "10", "--columns", "3", "--rows", "3", "--turn", "quarter")
    complaint = muslin.complaint(1, *words)
    assert "--turn: " in complaint and "square" in complaint


def test_a_wrong_choice_lists_the_choices(muslin: Muslin) -> None:
    assert "none, quarter or half" in muslin.complaint(2, "top", "12", "--columns", "2", "--rows", "2", "--turn", "x")


def test_a_border_that_cannot_be_read_lists_its_words(muslin: Muslin) -> None:
    complaint = muslin.complaint(2, "border", "2 in mitered", "--width", "30", "--length", "30")
    assert "mitred" in complaint


def test_two_words_that_belong_together_want_quotes(muslin: Muslin) -> None:
    assert "quotes" in muslin.complaint(2, "strip", "6", "1/2", "--across", "3")


def test_a_negative_operand_wants_two_hyphens(muslin: Muslin) -> None:
    assert "--" in muslin.complaint(2, "length", "-1/4")
    assert "-1/4 in" in muslin.text("length", "--", "-1/4")


def test_text_that_is_not_utf8_is_refused(muslin: Muslin) -> None:
    done = subprocess.run([muslin.program.encode(), b"cut", b"2\xff"], capture_output=True, timeout=60, check=False)
    assert done.returncode == 2
    assert b"UTF-8" in done.stderr


def test_a_share_needs_its_sign(muslin: Muslin) -> None:
    assert "per cent" in muslin.complaint(2, "buy", "1 yd", "--shrinkage", "3")
    assert muslin.answer("buy", "1 yd", "--extra-share", "2.5%")["with_extra"]["ticks"] == -(-36 * 8128 * 1025 // 1000)


def test_a_complaint_in_json_has_everything_a_script_needs(muslin: Muslin) -> None:
    done = muslin.run("finished", "1/4", "--json")
    assert done.returncode == 1
    error = json.loads(done.stdout)["error"]
    assert error["status"] == 18 and error["name"] == "ERR_SEAM_TOO_WIDE" and error["option"] == "cut"
    assert (error["value"], error["limit"]) == (2032, 4064)
    assert error["sentence"] in done.stderr


def test_a_complaint_of_the_front_end_has_no_library_status(muslin: Muslin) -> None:
    error = json.loads(muslin.run("plan", "--json").stdout)["error"]
    assert (error["status"], error["name"], error["option"]) == (None, "REQUEST", "strips")


def test_units_change_the_text_and_never_the_length(muslin: Muslin) -> None:
    one = muslin.answer("cut", "6")["pieces"][0]["cut"]
    other = muslin.answer("cut", "6", "--units", "cm")["pieces"][0]["cut"]
    assert one["ticks"] == other["ticks"]
    assert (one["text"], other["text"]) == ("6 1/2 in", "16.51 cm")


def test_bare_numbers_may_be_centimetres(muslin: Muslin) -> None:
    assert muslin.text("cut", "15", "--bare-unit", "cm", "--seam", "0.75", "--units", "cm") == (
        "Cut 16.5 cm to finish at 15 cm.\n")


def test_a_text_that_is_not_the_whole_truth_says_about(muslin: Muslin) -> None:
    # 1 cm is 0.3937 in: no whole number of 64ths.
    assert muslin.text("finished", "3 cm", "--seam", "1 cm") == (
        "A piece cut about 1 3/16 in finishes at about 25/64 in.\n")


def test_what_is_spared_is_rounded_to_the_safe_side(muslin: Muslin) -> None:
    # 41 cm less 6 x 6.5 cm leaves 2 cm, which is 50.39 64ths of an inch: down to 50, 25/32 in.
    spare = muslin.answer("yield", "--segment", "6.5 cm", "--usable", "41 cm")["strip_may_be_shorter_by"]
    assert spare == {"ticks": 2 * 3200, "text": "25/32 in", "exact": False}


def completed_in_bash(muslin: Muslin, *lines: str) -> list[list[str]]:
    """What bash offers at the end of each line; "." stands for an empty word."""
    tries = "".join(f"COMP_WORDS=(muslin {line.replace('.', chr(34) * 2)}); COMP_CWORD=$((${{#COMP_WORDS[@]}}-1)); "
                    "_muslin; echo \"${COMPREPLY[*]}\"\n" for line in lines)
    done = subprocess.run(["bash", "-c", muslin.text("completion") + tries], capture_output=True, text=True, timeout=60,
                          check=False)
    assert done.stderr == ""
    return [line.split() for line in done.stdout.split("\n")[:-1]]


def test_bash_completes_commands_options_and_their_words(muslin: Muslin) -> None:
    assert completed_in_bash(muslin, "pl", "from", "help cutp", "plan --fold", "plan --turn q", "plan --turn = q",
                             "unit flyi", "completion z", "batch --progress al", "batch --res") == [
        ["plan"], ["from-stock"], ["cutplan"], ["--fold-clear"], ["quarter"], ["quarter"], ["flying-geese"], ["zsh"],
        ["always"], ["--resume"]]


def test_bash_leaves_files_to_itself_and_offers_no_options_for_a_length(muslin: Muslin) -> None:
    assert completed_in_bash(muslin, "plan --output .", "pattern .", "plan --strip .", "batch .") == [[], [], [], []]
    assert "--strip" in completed_in_bash(muslin, "plan 42 .")[0]


@pytest.mark.skipif(shutil.which("zsh") is None, reason="zsh is not installed")
def test_the_script_for_zsh_is_zsh_and_names_every_command(muslin: Muslin, tmp_path: pathlib.Path) -> None:
    script = muslin.text("completion", "zsh")
    (tmp_path / "_muslin").write_text(script)
    done = subprocess.run(["zsh", "-n", str(tmp_path / "_muslin")], capture_output=True, text=True, check=False)
    assert (done.returncode, done.stderr) == (0, "")
    assert all(f"        ({name}) _arguments" in script for name in commands(muslin))
    assert "'--turn=[" in script and ":turn:(none quarter half)'" in script and ":output:_files'" in script


def test_completion_knows_two_shells(muslin: Muslin) -> None:
    assert "bash or zsh" in muslin.complaint(2, "completion", "fish")
    assert muslin.text("completion", "bash") == muslin.text("completion")

