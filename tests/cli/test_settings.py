"""Sashing and settings on point, against figures from outside the program.

SPDX-License-Identifier: MIT
"""
from __future__ import annotations

from program import Muslin, inches

SASHED = ("sashing", "12", "--columns", "4", "--rows", "5", "--sash", "4", "--frame", "--cornerstones", "--usable",
          "44")


def test_a_framed_top_of_four_by_five_blocks(muslin: Muslin) -> None:
    # How much fabric do I need for quilt sashing? (tutorial site): 68 x 84 in; 24 cut 12 1/2 x 4 1/2 in, 3 a strip.
    top = muslin.answer(*SASHED)
    assert (inches(top["finished_width"]), inches(top["finished_length"])) == (68, 84)
    assert [(piece["kind"], piece["count"], piece["strips"]) for piece in top["pieces"]] == [
        ("vertical sash", 25, 9), ("horizontal sash", 24, 8), ("cornerstone", 30, 4)]
    assert (inches(top["pieces"][1]["cut_length"]), inches(top["pieces"][1]["cut_width"])) == (12.5, 4.5)


def test_sashing_says_which_way_each_size_is_meant(muslin: Muslin) -> None:
    words = muslin.words(*SASHED)
    assert "68 in by 84 in finished (68 1/2 in by 84 1/2 in unfinished)" in words
    assert "24 horizontal sashes, above and below the rows: cut 4 1/2 in by 12 1/2 in." in words
    assert "30 cornerstones, cut 4 1/2 in by 4 1/2 in." in words


def test_long_sashes_are_joined_and_cut_to_the_rows(muslin: Muslin) -> None:
    # Geometry: 5 x 9 + 4 x 1 1/2 = 51 in; 5 x 51 1/2 = 257 1/2 in from n strips of 40 less (n - 1)/2: 7.
    words = muslin.words("sashing", "9", "--columns", "5", "--rows", "6", "--sash", "1 1/2")
    assert "5 horizontal sashes, above and below the rows: cut 2 in by 51 1/2 in." in words
    assert "Cut 7 strips 2 in wide across the cloth, 14 in of it (1/2 yd in the shop)." in words
    assert "6 straight seams, and do not cut to length yet." in words
    assert words.index("do not cut to length yet") < words.index("Measure all rows, and only now cut")
    assert words.index("Make one block first") < words.index("24 vertical sashes")
    assert "9 1/2 in by 9 1/2 in unfinished. Sashes are cut" in words and "buy more" in words
    short = muslin.words("sashing", "9", "--columns", "3", "--rows", "3", "--sash", "1")
    assert "Do not cut them to length yet." in short


def test_rows_may_have_another_sash(muslin: Muslin) -> None:
    top = muslin.answer("sashing", "9", "--height", "12", "--columns", "2", "--rows", "2", "--sash", "1",
                        "--sash-between-rows", "2")
    assert (inches(top["finished_width"]), inches(top["finished_length"])) == (19, 26)


def test_cornerstones_need_sashes_both_ways(muslin: Muslin) -> None:
    complaint = muslin.complaint(2, "sashing", "9", "--columns", "2", "--rows", "2", "--sash", "0", "--cornerstones")
    assert "--sash: Sash width (finished) is 0 in, but must be more than 0 in." in complaint


def test_six_inch_blocks_on_point(muslin: Muslin) -> None:
    # Setting and corner triangle chart (Tani): 9 3/4 and 5 1/8 in; 4 x 4 on point: 9 alternates, 12 sides, 4 corners.
    found = muslin.answer("on-point", "6", "--columns", "4", "--rows", "4", "--factor", "1.414")
    sides, corners = found["side_triangles"], found["corner_triangles"]
    assert (found["alternate_blocks"], sides["count"], corners["count"]) == (9, 12, 4)
    assert (sides["squares_cut_twice"], inches(sides["square_cut"])) == (3, 9.75)
    assert (corners["squares_cut_once"], inches(corners["square_cut"])) == (2, 5.125)


def test_on_point_teaches_which_square_is_cut_twice(muslin: Muslin) -> None:
    words = muslin.words("on-point", "6", "--columns", "4", "--rows", "4")
    assert ("12 side triangles: cut 3 squares 9 3/4 in on each side and cut each TWICE on the diagonal, into four "
            "triangles (0 to spare).") in words
    assert "4 corner triangles: cut 2 squares 5 1/8 in on each side and cut each ONCE on the diagonal" in words
    assert "Do not swap the two cuts" in words
    assert "plain ones are squares cut 6 1/2 in" in words
    assert "Trim the edges straight, 1/4 in outside the outermost tips, for the seam." in words
    assert words.index("Make one block first") < words.index("9 alternate blocks")


def test_on_point_says_what_is_there_to_trim(muslin: Muslin) -> None:
    # 6 x 1.41421 + 1.20711 = 9.6924 and 6 / 1.41421 + 0.85355 = 5.0962 in, of 9 3/4 and 5 1/8 in: 0.0576 and 0.0288,
    # of which half stands out at the edge. The printed sizes subtract: 9 3/4 - 9 45/64 = 3/64.
    words = muslin.words("on-point", "6", "--columns", "4", "--rows", "4")
    assert ("needs at least 9 45/64 in: it is about 3/64 in larger, and only half of that, about 1/64 in, is there to "
            "trim at the edge, practically nothing.") in words
    assert "needs at least 5 7/64 in: it is about 1/64 in larger, and only half" in words
    # 8 x 1.41421 + 1.20711 = 12.5208 and 8 / 1.41421 + 0.85355 = 6.5104 in
    words = muslin.words("on-point", "8", "--columns", "3", "--rows", "3", "--sash", "2", "--layout", "cut", "--policy",
                         "exact")
    assert "at least 12 17/32 in: it is about 3/32 in larger, and only half of that, about 3/64 in, is there" in words
    assert "at least 6 33/64 in: it is about 7/64 in larger, and only half of that, about 3/64 in, is there" in words
    assert "at least 4 3/64 in: it is about 5/64 in larger, and only half of that, about 1/32 in, is there" in words
    # 12 x 1.41421 + 2 + 1.20711 = 20.1777 and 12 / 1.41421 + 2 + 0.85355 = 11.3388 in, of 20 3/4 and 11 7/8 in.
    room = muslin.words("on-point", "12", "--columns", "3", "--rows", "5", "--set-off", "1", "--trim", "1/2")
    assert ("at least 20 3/16 in: it is about 9/16 in larger, and half of that, about 9/32 in, is there to trim at the "
            "edge.") in room
    assert "at least 11 11/32 in: it is about 17/32 in larger, and half of that, about 17/64 in, is there" in room
    assert "nothing is there to trim" in muslin.words("on-point", "8", "--columns", "2", "--rows", "2", "--policy",
                                                      "exact", "--to", "0.1 mm")


def test_a_guild_rounds_the_diagonal_first(muslin: Muslin) -> None:
    # Moonlight Quilters Guild, Tip - On Point Settings: 6 x 1.41 up to 8 1/2, half of it 4 1/4.
    found = muslin.answer("on-point", "6", "--columns", "3", "--rows", "3", "--factor", "1.41", "--diagonal-first")
    assert inches(found["side_triangles"]["square_cut"]) == 9.75
    assert inches(found["corner_triangles"]["square_cut"]) == 5.125


def test_room_to_trim_makes_the_squares_oversize(muslin: Muslin) -> None:
    # Quilt math made easy (teacher's blog): 10 1/2 in for blocks of 6 in: 8.485 + 1 1/4 + 3/4 = 10.485.
    found = muslin.answer("on-point", "6", "--columns", "4", "--rows", "4", "--trim", "3/4")
    assert (found["policy"], inches(found["side_triangles"]["square_cut"])) == ("oversize", 10.5)


def test_a_set_off_stays_and_is_said(muslin: Muslin) -> None:
    words = muslin.words("on-point", "12", "--columns", "3", "--rows", "5", "--set-off", "1")
    assert "Trim the edges straight, 1 1/4 in outside the outermost tips: 1 in of it stays" in words


def test_sashes_on_point_go_all_round_unless_told_otherwise(muslin: Muslin) -> None:
    # Geometry: 4 c r sashes, (c + 1) r + c (r + 1) cornerstones; the edge through their middles halves 2 c + 2 r.
    found = muslin.answer("on-point", "8", "--columns", "3", "--rows", "3", "--sash", "2")
    assert (found["layout"], found["sashes"]["count"], found["sashes"]["cornerstones"]) == ("outer", 36, 24)
    cut = muslin.answer("on-point", "8", "--columns", "3", "--rows", "3", "--sash", "2", "--layout", "cut")["sashes"]
    assert (cut["cornerstones"], cut["edge_cornerstones"], cut["edge_cornerstone_squares_cut_twice"]) == (12, 12, 3)
    words = muslin.words("on-point", "8", "--columns", "3", "--rows", "3", "--sash", "2", "--layout", "cut")
    assert "12 half cornerstones at the edge: cut 3 squares" in words
    assert "1/4 in outside the finished long edge of the half cornerstones" in words
    assert "a half cornerstone at each end: one short side against the sash, the long side outwards" in words
    assert "also before the first and after the last row of blocks, diagonal rows of sashes and cornerstones" in words
    assert "The first and the last are one sash and two half cornerstones each" in words
    assert "a sash between all of them and at both ends, then a side triangle at each end" in words
    outer = muslin.words("on-point", "8", "--columns", "3", "--rows", "3", "--sash", "2")
    assert "as long as a block and a sash together" in outer and "Press towards the sashes" in outer
    halves = muslin.words("on-point", "8", "--columns", "3", "--rows", "3", "--sash", "2", "--layout", "cut", "--edge",
                          "half-blocks")
    assert "at both ends, then a half-block at each end, except where a corner triangle will lie" in halves
    assert "the first and the last are one sash and two cornerstones each" in outer


def test_half_blocks_and_sashes_at_the_edge_are_bias(muslin: Muslin) -> None:
    halves = muslin.words("on-point", "8", "--columns", "3", "--rows", "3", "--edge", "half-blocks")
    assert "8 half-blocks at the edges, each from a whole block of its own" in halves
    assert "An outside edge lies on the bias" in halves
    inner = muslin.words("on-point", "8", "--columns", "2", "--rows", "2", "--sash", "2", "--layout", "inner")
    assert "8 sashes between a block and a side triangle" in inner
    assert "An outside edge lies on the bias" in inner


def test_a_square_rounded_too_small_is_said(muslin: Muslin) -> None:
    # Piecing a quilt on point (chart): 14 in, printed 21 in; the exact need is 21.006 in.
    words = muslin.words("on-point", "14", "--columns", "2", "--rows", "2", "--to", "1/4", "--round", "nearest")
    assert "needs at least 21 1/64 in: rounded so, it is smaller. Cut it larger." in words


def test_a_factor_that_is_too_small_is_refused(muslin: Muslin) -> None:
    # Geometry: 1.41 x 20 + 1 1/4 = 29.45 in, the exact need is 29.49 in.
    complaint = muslin.complaint(2, "on-point", "20", "--columns", "2", "--rows", "2", "--factor", "1.41")
    assert "the geometry needs at least about 29.4913 in" in complaint


def test_what_a_layout_does_not_allow_is_named(muslin: Muslin) -> None:
    assert "--set-off" in muslin.complaint(2, "on-point", "8", "--columns", "2", "--rows", "2", "--sash", "1",
                                           "--layout", "inner", "--set-off", "1")
    assert "--edge" in muslin.complaint(1, "on-point", "8", "--columns", "2", "--rows", "2", "--sash", "1", "--edge",
                                        "half-blocks")
    assert "--block" in muslin.complaint(2, "on-point", "1", "--columns", "2", "--rows", "2", "--sash", "1",
                                         "--layout", "inner")


def test_settings_answer_in_a_batch(muslin: Muslin) -> None:
    replies = muslin.batch({"command": "on-point", "block": "6", "columns": 4, "rows": 4},
                           {"command": "sashing", "block": "12", "columns": 2, "rows": 2, "sash": "2"})
    assert replies[0]["answer"]["side_triangles"]["squares_cut_twice"] == 3
    assert inches(replies[1]["answer"]["finished_width"]) == 26
