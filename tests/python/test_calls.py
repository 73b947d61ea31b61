# SPDX-License-Identifier: MIT
"""Each call once, against a figure from elsewhere: that the package asks and reads what the library means.

What the library answers is tested in tests/unit, tests/handbook and tests/property. Figures are published ones that
tests/handbook names with their sources, or sums anyone can check; the sum stands beside each.
"""
from array import array
from typing import Any, Callable, List, Tuple

import pytest

import muslin
from muslin import (BackingLayoutKind, Direction, Edge, Join, Length, PrintRow, RoundingSpec, StockSpec, Status, Table,
                    Turning, Unit, Warning, calls)

Case = Tuple[str, Callable[[], object], object]


def inch(text: str) -> Length:
    return Length.parse(text)


def some(result: Any, *names: str) -> Tuple[Any, ...]:
    return tuple(getattr(result, name) for name in names)


def q(*texts: str) -> "array[int]":
    return array("q", [inch(text).ticks for text in texts])


EIGHTHS_UP = RoundingSpec(grid="1/8 in", direction=Direction.UP)
EIGHTHS = RoundingSpec(grid="1/8 in")
WISH = muslin.StripquiltSpec(strips=42, columns=3, rows=3, usable_length="42 in", end_trim="1/2 in",
                             segment_cut="6 1/2 in")

SHEET = [muslin.CornerSpec(piece=-1, x=x, y=y) for x, y in ("00", "30", "33", "03")]
HALVES = [muslin.CornerSpec(piece=piece, x=x, y=y) for piece, places in enumerate((("00", "30", "03"), ("30", "33", "03")))
          for x, y in places]

CASES: List[Case] = [
    ("version", lambda: muslin.version() // 10000, muslin.VERSION_MAJOR),
    ("version_text", lambda: muslin.version_text().count("."), 2),
    ("status_count", lambda: muslin.status_count() > Status.ERR_NO_MEMORY, True),
    ("status_name", lambda: muslin.status_name(Status.ERR_RANGE), "ERR_RANGE"),
    ("status_sentence", lambda: "divisor is zero" in muslin.status_sentence(Status.ERR_DIVIDE_BY_ZERO), True),
    ("argument_count", lambda: muslin.argument_count() > muslin.Argument.IN_HAND, True),
    ("argument_name", lambda: muslin.argument_name(muslin.Argument.SEAM_ALLOWANCE), "seam allowance"),
    ("warning_sentence", lambda: "sleep space" in muslin.warning_sentence(Warning.SMALL_QUILT), True),
    # 2 1/2 + 1/4; 2 1/2 - 1/4; 6 x 2 1/2
    ("length_add", lambda: muslin.length_add("2 1/2", "1/4"), inch("2 3/4")),
    ("length_subtract", lambda: muslin.length_subtract("2 1/2", "1/4"), inch("2 1/4")),
    ("length_multiply", lambda: muslin.length_multiply("2 1/2", 6), inch("15")),
    # 10 / 3 = 3.33 up to eighths; 5 x 2 / 3 = 3.33; 3.05 up
    ("length_divide", lambda: some(muslin.length_divide("10", 3, EIGHTHS_UP), "value", "exact"),
     (inch("3 3/8"), False)),
    ("length_scale", lambda: muslin.length_scale("5", 2, 3, EIGHTHS).value, inch("3 3/8")),
    ("length_snap", lambda: muslin.length_snap(Length.parse("3.05", inexact=True), EIGHTHS_UP).value, inch("3 1/8")),
    ("length_compare", lambda: muslin.length_compare("1 in", "1 cm"), 1),
    ("length_sum", lambda: muslin.length_sum(["1", "1/2", "1/4"]), inch("1 3/4")),
    ("length_dot", lambda: muslin.length_dot(["2 1/2", "1"], array("q", [2, 3])), inch("8")),
    ("length_add_n", lambda: muslin.length_add_n(q("1", "2"), q("1/2", "1/4")), q("1 1/2", "2 1/4")),
    ("length_subtract_n", lambda: muslin.length_subtract_n(q("1", "2"), q("1/2", "1/4")), q("1/2", "1 3/4")),
    ("length_multiply_n", lambda: muslin.length_multiply_n(q("1", "2"), array("q", [3, 4])), q("3", "8")),
    ("length_scale_n", lambda: muslin.length_scale_n(q("1", "2"), 3, 4), q("3/4", "1 1/2")),
    ("length_snap_n", lambda: muslin.length_snap_n(q("1/16", "3/16"), EIGHTHS_UP), q("1/8", "1/4")),
    # 6 x 1.41421 = 8.485; 12 / 1.41421 = 8.485; 4 x 0.86603 = 3.464; 2 x 6 / 1.73205 = 6.928
    ("length_times_root2", lambda: muslin.length_times_root2("6", EIGHTHS_UP).value, inch("8 1/2")),
    ("length_over_root2", lambda: muslin.length_over_root2("12", EIGHTHS_UP).value, inch("8 1/2")),
    ("length_equilateral_height", lambda: muslin.length_equilateral_height("4", EIGHTHS).value, inch("3 1/2")),
    ("length_equilateral_side", lambda: muslin.length_equilateral_side("6", EIGHTHS).value, inch("6 7/8")),
    # 3, 4, 5; a square of 5 in has 2 x (5 x 8128)^2 doubled square ticks
    ("length_hypotenuse", lambda: some(muslin.length_hypotenuse("3", "4"), "value", "exact"), (inch("5"), True)),
    ("length_root_of_area", lambda: muslin.length_root_of_area(2 * (5 * 8128)**2).value, inch("5")),
    ("unit_ticks", lambda: muslin.unit_ticks(Unit.YARD), inch("36")),
    ("unit_word", lambda: muslin.unit_word(Unit.CM), "cm"),
    ("length_parse", lambda: some(muslin.length_parse("1/3", default_unit=Unit.YARD), "value", "exact", "unit"),
     (inch("12"), True, Unit.YARD)),
    ("length_format", lambda: some(muslin.length_format("2 1/2", unicode=True), "text", "exact"), ("2½ in", True)),
    # 6 in finished: cut 6 1/2 (handbook), and back
    ("seam_cut_from_finished", lambda: muslin.seam_cut_from_finished("6"), inch("6 1/2")),
    ("seam_finished_from_cut", lambda: muslin.seam_finished_from_cut("6 1/2"), inch("6")),
    ("seam_cut_from_finished_n", lambda: muslin.seam_cut_from_finished_n(q("6", "1")), q("6 1/2", "1 1/2")),
    ("seam_finished_from_cut_n", lambda: muslin.seam_finished_from_cut_n(q("6 1/2", "1/2")), q("6", "0")),
    # 4 + 1/4 + 1/2 x 3 + 1/4 + 1/4
    ("seam_piece", lambda: some(muslin.seam_piece(finished_width="4", finished_height="3", right="1/2"), "cut_width",
                                "cut_height"), (inch("4 3/4"), inch("3 1/2"))),
    # 5 strips of 2 1/2 make 10 1/2; 9 of 3 1/4 make 25 1/4 (handbook)
    ("seam_row_equal", lambda: muslin.seam_row_equal("2 1/2", 5).unfinished, inch("10 1/2")),
    ("seam_row", lambda: muslin.seam_row(["3 1/4"] * 9).unfinished, inch("25 1/4")),
    # 6 in finished, three across: 2 1/2 (handbook); 3 1/2 doubled: 6 1/2 (handbook)
    ("seam_strip_for_finished", lambda: muslin.seam_strip_for_finished("6", 3).value, inch("2 1/2")),
    ("seam_resize_cut", lambda: muslin.seam_resize_cut("3 1/2", 2, 1).value, inch("6 1/2")),
    # four strips of 2 1/2 measure 8 3/8 and should 8 1/2: short by 1/8 over three seams (handbook)
    ("seam_calibrate", lambda: some(muslin.seam_calibrate(["2 1/2"] * 4, "8 3/8", "1/4"), "planned", "shortfall",
                                    "seams"), (inch("8 1/2"), inch("1/8"), 3)),
    # the segment that was to be as long as the set is wide is as long as it came out
    ("seam_carry_on", lambda: muslin.seam_carry_on(cut_total="10", strips=4, measured="8 3/8",
                                                   later_cut="8 1/2").value, inch("8 3/8")),
    ("seam_error_total", lambda: muslin.seam_error_total("1/32", 8), inch("1/4")),
    ("seam_error_limit", lambda: muslin.seam_error_limit("1/4", 8), inch("1/32")),
    ("seam_share", lambda: muslin.seam_share(100, 75), 250000),
    # 44 - 2 x 1/2
    ("fabric_usable_width", lambda: muslin.fabric_usable_width("44", "1/2", 0), inch("43")),
    # 112 in in eighths of 36: 24.9, so 25
    ("fabric_purchase", lambda: some(muslin.fabric_purchase(needed="112"), "steps", "bought"), (25, inch("3 1/8 yd"))),
    # 5 in squares from 22 x 18: 4 x 3
    ("fabric_pieces", lambda: some(muslin.fabric_pieces(width="22", length="18", piece_width="5", piece_length="5"),
                                   "across", "along", "pieces"), (4, 3, 12)),
    # 44 / 4 = 11 a strip, 52 / 11: 5 strips (handbook)
    ("fabric_strips", lambda: some(muslin.fabric_strips(pieces=52, piece_across="4", strip_cut="4", usable_width="44"),
                                   "per_strip", "strips", "length"), (11, 5, inch("20"))),
    ("fabric_area_bound", lambda: muslin.fabric_area_bound(2 * 40 * 10 * 8128**2, "40"), inch("10")),
    # tip to tip 2 1/2, depth 1/8: two depths less from valley to valley
    ("stock_size", lambda: muslin.stock_size(StockSpec(edge=Edge.PINKED_TIPS, pink_depth="1/8", width="40"),
                                             Edge.PINKED_VALLEYS).length, inch("2 1/4")),
    # 18 / 2 1/2: 7 a piece; 80 / 7: 12 (handbook)
    ("stock_strips_of", lambda: some(muslin.stock_strips_of(StockSpec(width="20", length="18", count=10), "2 1/2", 80),
                                     "per_piece", "pieces_needed", "pieces_missing"), (7, 12, 2)),
    ("stock_check", lambda: muslin.stock_check([StockSpec(edge=Edge.STRAIGHT), StockSpec(
        edge=Edge.PINKED_TIPS, pink_depth="1/8")]), (Warning.MIXED_EDGES,)),
    ("print_may_turn", lambda: [muslin.print_may_turn(muslin.Print.TWO_WAY, turns) for turns in range(4)],
     [True, False, True, False]),
    ("reference_count", lambda: muslin.reference_count(Table.BATTING) > 2, True),
    ("reference_row", lambda: muslin.reference_row(Table.FABRIC_WIDTH, 0).width, inch("40")),
    ("reference_name", lambda: muslin.reference_name(Table.BATTING, 5), "queen"),
    ("reference_source", lambda: muslin.reference_source(Table.BATTING, -1), ""),
    # 1/2 + 3 x 6 1/2 = 20, from both ends
    ("stripset_yield", lambda: some(muslin.stripset_yield(segment_cut="6 1/2", end_trim="1/2"), "segments",
                                    "shorter_by", "warnings"), (6, Length(0), (Warning.NO_SLACK,))),
    ("stripset_shortest", lambda: some(muslin.stripset_shortest(["42", "40", "41"]), "shortest", "index", "warnings"),
     (inch("40"), 1, (Warning.MIXED_WIDTHS,))),
    # 42 / 3 = 14 sets of 5 strips
    ("stripset_need", lambda: some(muslin.stripset_need(segments=42, segments_per_set=3, strips_per_set=5), "sets",
                                   "strips"), (14, 70)),
    # 42 / 6 = 7 sets, 42 segments, 21 blocks, 2 tops of 9: 18 blocks, 36 segments, 6 sets, 36 strips
    ("stripset_harvest", lambda: some(muslin.stripset_harvest(
        strips=42, strips_per_set=6, segments_per_set=6, segments_per_block=2, blocks_per_top=9), "tops",
        "strips_left"), (2, 6)),
    ("stripset_prints", lambda: muslin.stripset_prints([PrintRow(10, 2), PrintRow(9, 2)], 0),
     muslin.StripsetPrints((PrintRow(10, 2, 2), PrintRow(9, 2, 1)), 4, 1)),
    # two half squares of 3 in: each with two edges outside; their tips are 1/4 in x (1 + sqrt 2) = 0.6036 beyond
    ("shape_check", lambda: some(muslin.shape_check(SHEET + HALVES), "pieces", "outside_edges", "finished_width"),
     (2, 4, inch("3"))),
    ("shape_template", lambda: [some(row, "x", "y") for row in muslin.shape_template(HALVES, 0, EIGHTHS)],
     [(-inch("1/4"), -inch("1/4")), (inch("3 5/8"), -inch("1/4")), (-inch("1/4"), inch("3 5/8"))]),
    ("shape_measure", lambda: some(muslin.shape_measure(SHEET + HALVES, rounding=EIGHTHS), "cut_width", "bias_edges"),
     (inch("3 7/8"), 0)),
    # along a short edge, 1/2 in more all round
    ("shape_foundation", lambda: some(muslin.shape_foundation(HALVES, 0, "1/2", EIGHTHS), "along", "across"),
     (inch("4 7/8"), inch("4 7/8"))),
    # r + s and r - s
    ("shape_quarter", lambda: some(muslin.shape_quarter(finished="7", radius="5"), "convex_cut_radius",
                                   "concave_cut_radius"), (inch("5 1/4"), inch("4 3/4"))),
    # 5 x 3.1416
    ("arc_length", lambda: muslin.arc_length("5", 2, EIGHTHS).value, inch("15 3/4")),
    # a hexagon of 2 in (handbook)
    ("shape_regular", lambda: some(muslin.shape_regular(6, muslin.Measure.SIDE, "2"), "centre", "corners"),
     (inch("2"), inch("4"))),
    # 3 x 12 in
    ("setting_straight", lambda: some(muslin.setting_straight(block_width="12", block_height="12", columns=3, rows=3),
                                      "finished_width", "unfinished_width"), (inch("36"), inch("36 1/2"))),
    ("setting_turn", lambda: [muslin.setting_turn(Turning.QUARTER_ALTERNATE, column, 0) for column in range(3)],
     [0, 1, 0]),
    # two of 6 1/2 less one seam
    ("block_from_segments", lambda: some(muslin.block_from_segments(segment_cut="6 1/2", set_unfinished="12 1/2"),
                                         "unfinished_width", "square"), (inch("12 1/2"), True)),
    ("join_loss", lambda: muslin.join_loss(Join.DIAGONAL, "2 1/2", "1/4"), inch("2 1/2")),
    # 8 x 40 - 7 x 1/2 = 316 1/2; 7 x 40 - 6 x 1/2 = 277
    ("run_plan", lambda: some(muslin.run_plan(length="294"), "strips", "joined"), (8, inch("316 1/2"))),
    # 38 1/2 + 2 x 4 x 50 + 2 x 4 (handbook)
    ("border_plan", lambda: some(muslin.border_plan(
        unfinished_width="38 1/2", unfinished_length="50", finished_border="4", style=muslin.BorderStyle.CORNERSTONES),
        "cut_width", "unfinished_width", "unfinished_length"), (inch("4 1/2"), inch("46 1/2"), inch("58"))),
    # 2 x (1/4 + 1/4 + 1/4)
    ("binding_measure", lambda: muslin.binding_measure().cut_width, inch("1 1/2")),
    # 2 x (96 + 110) + 12 = 424; 424 / 40: 11 (handbook)
    ("binding_plan", lambda: some(muslin.binding_plan(quilt_width="96", quilt_length="110", join=Join.BUTTED), "length",
                                  "strips"), (inch("424"), 11)),
    # (10 - 1/2) / (1.414 x 2 1/2) = 2.69 rounds: two
    ("bias_tube", lambda: muslin.bias_tube(width="10", length="10").rounds, 2),
    ("bias_least_square", lambda: muslin.bias_least_square(
        wanted="55", rounding=RoundingSpec(grid="1/8", direction=Direction.UP)).square, inch("13 3/8")),
    # 10 / (1.414 x 2 1/2) = 2.83: two strips in each half
    ("bias_strips", lambda: muslin.bias_strips(width="10").rounds, 4),
    ("batting_plan", lambda: some(muslin.batting_plan(quilt_width="60", quilt_length="80"), "width", "length"),
     (inch("66"), inch("86"))),
    # 80 in need three panels: two give 2 x 40 - 1 = 79 (handbook)
    ("backing_layouts", lambda: next(some(row, "possible", "panels") for row in muslin.backing_layouts(
        quilt_width="72", quilt_length="48") if row.layout == BackingLayoutKind.SEAMS_ALONG), (True, 3)),
    ("backing_panels", lambda: [some(row, "position", "cut_length") for row in muslin.backing_panels(
        BackingLayoutKind.SEAMS_ALONG, quilt_width="72", quilt_length="48")],
     [(1, inch("56")), (2, inch("56")), (3, inch("56"))]),
    # 40 - 2 x 1 in finished, 1 in hem at each end; 2 x 4 + 1/2 + 2 x 1/4
    ("hanging_plan", lambda: some(muslin.hanging_plan(quilt_width="40"), "sleeve_finished", "sleeve_cut_length",
                                  "sleeve_cut_width"), (inch("38"), inch("40"), inch("9"))),
    # the example of the header, by common practice: 2 tops of 36 in, 6 strips left
    ("stripquilt_plan", lambda: some(muslin.stripquilt_plan(WISH), "tops", "top_finished_width", "strips_left"),
     (2, inch("36"), 6)),
    ("stripquilt_groups", lambda: sum(group.blocks for group in muslin.stripquilt_groups(WISH)), 18),
    ("stripquilt_pressing", lambda: muslin.stripquilt_pressing(1, WISH).pressing in list(muslin.Pressing), True),
]


@pytest.mark.parametrize("asked, expected", [case[1:] for case in CASES], ids=[case[0] for case in CASES])
def test_a_call_answers(asked: Callable[[], object], expected: object) -> None:
    assert asked() == expected


def test_every_call_is_asked_here() -> None:
    assert [case[0] for case in CASES] == calls.__all__
