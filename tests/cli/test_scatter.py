"""Blocks of several prints scattered over a top, from outside.

SPDX-License-Identifier: MIT

What touches is counted beside each test, in the layout that the program gives.
"""
from __future__ import annotations

from typing import Any

from program import Muslin


def touching(layout: Any) -> int:
    across = sum(a == b for row in layout for a, b in zip(row, row[1:]))
    return across + sum(a == b for row, below in zip(layout, layout[1:]) for a, b in zip(row, below))


def test_five_and_four_blocks_make_a_chessboard(muslin: Muslin) -> None:
    found = muslin.answer("scatter", "5", "4", "--columns", "3", "--rows", "3")
    assert found["layout"] == ["ABA", "BAB", "ABA"]
    assert found["touching_pairs"] == 0 and found["certainly_the_fewest"] is True
    text = muslin.text("scatter", "5", "4", "--columns", "3", "--rows", "3")
    assert " A B A\n B A B\n A B A\n" in text and "No two blocks of one print touch" in text
    assert "A: 5 of 5 blocks" in text and "9 blocks, 3 across and 3 down:" in text


def test_a_layout_keeps_to_the_blocks_there_are(muslin: Muslin) -> None:
    words = ("scatter", "20", "20", "20", "20", "25", "--columns", "9", "--rows", "11")
    found = muslin.answer(*words)
    layout = found["layout"]
    assert [len(row) for row in layout] == [9] * 11
    assert found["touching_pairs"] == touching(layout) == 0
    for print_ in found["prints"]:
        assert "".join(layout).count(print_["letter"]) == print_["used"] <= print_["in_hand"]


def test_a_seed_gives_the_same_layout_again(muslin: Muslin) -> None:
    words = ("scatter", "30", "30", "30", "--columns", "9", "--rows", "9", "--seed")
    assert muslin.text(*words, "7") == muslin.text(*words, "7")
    assert muslin.answer(*words, "7")["layout"] != muslin.answer(*words, "8")["layout"]


def test_blocks_of_one_print_touch_everywhere(muslin: Muslin) -> None:
    # 3 x 4: 2 x 4 pairs side by side and 3 x 3 one above the other.
    words = ("scatter", "12", "--columns", "3", "--rows", "4")
    assert muslin.answer(*words)["no_layout_has_fewer_than"] == 17
    assert "17 pairs of equal blocks touch; no layout has fewer." in muslin.words(*words)
    # Three of four in a row: one pair.
    assert "1 pair of equal blocks touches; no layout" in muslin.words("scatter", "4", "1", "--columns", "4", "--rows",
                                                                      "1")


def test_what_is_not_known_to_be_the_fewest_says_so(muslin: Muslin) -> None:
    words = ("scatter", "7", "5", "--columns", "4", "--rows", "3", "--work", "0")
    found = muslin.answer(*words)
    assert found["steps_of_the_search"] == 0 and found["touching_pairs"] == touching(found["layout"])
    assert 1 <= found["no_layout_has_fewer_than"] <= found["touching_pairs"]


def test_complaints_name_the_option(muslin: Muslin) -> None:
    few = muslin.complaint(1, "scatter", "5", "3", "--columns", "3", "--rows", "3")
    assert "--print" in few and "is 9" in few and "only 8" in few
    for wrong in ("x", "-1", "1.5", "9999999999", ""):
        assert "--print" in muslin.complaint(2, "scatter", "--print", wrong, "--columns", "3", "--rows", "3")
    assert "--columns" in muslin.complaint(2, "scatter", "9", "--columns", "0", "--rows", "3")
    assert "--rows" in muslin.complaint(2, "scatter", "9", "--columns", "3", "--rows", "5000")
    assert "--work" in muslin.complaint(2, "scatter", "9", "--columns", "3", "--rows", "3", "--work", "-1")
    assert "--columns" in muslin.complaint(2, "scatter", "9", "--rows", "3")
