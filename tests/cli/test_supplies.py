"""Seams, thread, stitches, lines of quilting, weight, cost and the tables, from outside.

SPDX-License-Identifier: MIT

Published figures name their source in words; "geometry" and other sums are worked out beside the test.
"""
from __future__ import annotations

import pytest

from program import Muslin, inches


def test_seams_of_two_tops_are_added_up(muslin: Muslin) -> None:
    # 7 x 5 x 40; 18 x 12 1/2; 12 x 12 1/2; 4 x 36 1/2
    found = muslin.answer("seams", "--sets", "7", "--set", "6", "--block", "12", "--segments", "2", "--columns", "3",
                          "--rows", "3", "--tops", "2")
    assert [inches(found[name]) for name in ("in_the_sets", "within_blocks", "from_block_to_block", "from_row_to_row",
                                             "total")] == [1400, 225, 150, 146, 1921]
    assert found["seams"] == 35 + 18 + 12 + 4
    text = muslin.words("seams", "--sets", "7", "--set", "6", "--block", "12", "--segments", "2", "--columns", "3",
                        "--rows", "3", "--tops", "2")
    # 1921 / 36 = 53.36 yd
    assert "1921 in together. That is about 53 3/8 yd" in text and "7 strip sets of 6 strips, 40 in long" in text
    assert "2 tops of 3 x 3 blocks, each 12 in by 12 in finished and of 2 segments" in text
    assert "yd" not in muslin.text("seams", "--block", "6", "--units", "cm", "--columns", "2")


def test_a_block_alone_is_one_top(muslin: Muslin) -> None:
    found = muslin.answer("seams", "--block", "6", "--columns", "2", "--rows", "2")
    assert inches(found["total"]) == 2 * 6.5 + 12.5


def test_a_seam_takes_two_and_a_half_times_its_length(muslin: Muslin) -> None:
    # A question and answer page on the ratio of ISO 4915 type 301: 220 cm take 550 cm, half of it from the needle.
    found = muslin.answer("thread", "220 cm", "--waste", "0 %", "--units", "cm")
    assert (found["thread"]["text"], found["needle_thread"]["text"]) == ("550 cm", "275 cm")
    assert found["thread_per_seam"] == {"thousandths": 2500, "text": "2.5 m of thread for each metre of seam"}
    assert "bobbins" not in found and "spools" not in found


def test_waste_is_added(muslin: Muslin) -> None:
    # Measuring actual thread consumption (trade page): 540 cm and 15 % are 621 cm; 216 cm x 2.5 = 540 cm.
    assert muslin.answer("thread", "216 cm", "--units", "cm")["thread"]["text"] == "621 cm"


def test_thread_by_the_thickness_that_is_sewn(muslin: Muslin) -> None:
    # Sewing thread consumption guide (textile blog): 2 + 2 T S = 2 + 2 x 0.5 / 2.5.
    found = muslin.answer("thread", "1 m", "--thickness", "0.5 mm", "--stitch", "2.5 mm")
    assert (found["reckoned_by"], found["thread_per_seam"]["thousandths"]) == ("formula", 2400)
    words = ("thread", "40 yd", "--thickness", "0.5 mm", "--stitch", "2.5 mm")
    text = muslin.words(*words)
    assert "2.4 yd of thread for each yard of seam" in text and "stitches to the mm" in text
    # 40 x 2.4 x 1.15 = 110.4 yd, halves 55.2
    assert "about 111 yd" in text and "about 56 yd from the needle" in text and "rounded up by itself" in text


def test_spools_and_bobbins_are_whole(muslin: Muslin) -> None:
    # 100 m x 2.5 = 250 m: two spools of 200 m; 125 m: three bobbins of 50 m. Ready bobbins: 125 m, one spool.
    words = ("thread", "100 m", "--waste", "0 %", "--spool", "200 m", "--bobbin", "50 m")
    found = muslin.answer(*words)
    assert (found["bobbins"], found["spools"]) == (3, 2)
    assert found["bobbins_reach_for_so_much_more_seam"]["ticks"] == 20 * 320000
    assert muslin.answer(*words, "--ready-bobbins")["spools"] == 1
    assert "Bobbins are wound from the spools" in muslin.words(*words)
    assert "3 bobbins to wind; room on the last bobbin: " in muslin.words(*words)
    assert "the bobbins are bought wound" in muslin.words(*words, "--ready-bobbins")
    assert "3 wound bobbins; left on the last bobbin: " in muslin.words(*words, "--ready-bobbins")


def test_thread_is_said_in_whole_yards(muslin: Muslin) -> None:
    # 2345 in x 2.5 x 1.15 = 6741.9 in = 187.3 yd
    text = muslin.words("thread", "1921", "424")
    assert "For 2345 in of seam have about 188 yd of thread ready." in text
    assert "10 to 20 % for waste" in text


@pytest.mark.parametrize(("words", "says"), [
    (("thread", "1 yd", "--ratio", "2.5"), "with a colon"),
    (("thread", "1 yd", "--ratio", "5:0"), "at least 1"),
    (("thread", "1 yd", "--ratio", "5:2", "--thickness", "1 mm"), "not both"),
    (("thread", "1 yd", "--stitch", "2 mm"), "give that too"),
    (("thread", "1 yd", "--ready-bobbins"), "--bobbin"),
    (("stitches",), "one of the two"),
    (("stitches", "2.5 mm", "--per-inch", "10"), "one of the two"),
    (("stitches", "2.5"), "Write its unit"),
    (("stitches", "--per-inch", "0"), "1 to 1000"),
    (("quilting-lines", "--width", "40"), "Give width and length"),
    (("quilting-lines", "--pattern", "outline"), "go together"),
    (("quilting-lines", "--width", "40", "--length", "40", "--outline", "9"), "go together"),
    (("quilting-lines", "--width", "40", "--length", "40", "--from-corner"), "Only diagonal"),
    (("quilting-lines", "--width", "40", "--length", "40", "--pattern", "diagonal", "--from-corner", "--offset", "1"),
     "one of the two"),
    (("quilting-lines", "--width", "40", "--length", "40", "--spacing", "0"), "more than 0 in"),
    (("weight", "--width", "40", "--length", "40", "--top", "120"), "120 g"),
    (("weight", "--width", "40", "--length", "40", "--top", "1.2345 g"), "three decimals"),
    (("cost", "3 yd"), "3 1/8 yd at 11.50 the yd"),
    (("cost", "3 at 1.234"), "7 at 1.20"),
    (("cost", "3 at 1.20 each"), "7 at 1.20"),
    (("cost", "3 at 1.20 for 0"), "at least 1"),
    (("cost", "3 at 1.20 a bundle of x"), "7 at 1.20"),
    (("cost", "3 at 1.20", "--decimals", "5"), "0 to 4"),
    (("cost", "2 yd at 1.20 the ell"), "no unit"),
    (("cost", "2 ells at 1.20 the yd"), "no unit"),
    (("cost", "2 at 99999999999999999999.99"), "7 at 1.20"),
])
def test_what_makes_no_sense_is_explained(muslin: Muslin, words: tuple[str, ...], says: str) -> None:
    assert says in muslin.complaint(2, *words)


def test_stitches_to_the_inch(muslin: Muslin) -> None:
    # Convert metric stitch length to stitches per inch (blog): 2.5 mm are 10.16.
    found = muslin.answer("stitches", "2.5 mm")
    assert found["stitches_per_inch"] == {"thousandths": 10160, "text": "10.16"}
    assert found["in_whole_stitches_per_inch"]["text"] == "10"
    assert found["stitches_per_cm"]["text"] == "4"
    with_comma = muslin.answer("stitches", "2,5 mm", "--decimal-comma")
    assert with_comma["stitches_per_inch"]["text"] == "10,16"


def test_the_stitch_for_so_many_to_the_inch(muslin: Muslin) -> None:
    # The same blog: 12 to the inch are 2.117 mm.
    words = ("stitches", "--per-inch", "12", "--to", "0.1 mm")
    assert muslin.answer(*words)["stitch"]["text"] == "2.1 mm"
    assert "Wanted were 12 to the inch." in muslin.words(*words)


def test_a_grid_of_lines(muslin: Muslin) -> None:
    # lines at 2, 6, ... 46 and at 2, 6, ... 38
    found = muslin.answer("quilting-lines", "--width", "40", "--length", "48", "--spacing", "4", "--offset", "2")
    assert (found["from_side_to_side"]["lines"], found["from_top_to_bottom"]["lines"], found["lines"]) == (12, 10, 22)
    assert inches(found["length_of_all_lines"]) == 12 * 40 + 10 * 48
    text = muslin.words("quilting-lines", "--width", "40", "--length", "48", "--spacing", "4", "--offset", "2")
    assert "12 lines from side to side, 40 in long: the first lies 2 in from the edge, the last 2 in from the other " \
           "edge." in text
    assert "10 lines from top to bottom, 48 in long" in text and "26 2/3 yd" in text


def test_lines_that_do_not_come_out_even_say_how_they_would(muslin: Muslin) -> None:
    # 0, 5, ... 45: nine spaces, 3 in left; 48 / 9 = 5 1/3
    way = muslin.answer("quilting-lines", "--width", "40", "--length", "48", "--spacing", "5", "--pattern",
                        "across")["from_side_to_side"]
    assert inches(way["left_behind_the_last"]) == 3
    assert way["spaced_evenly_they_lie"]["ticks"] == 48 * 8128 // 9
    text = muslin.words("quilting-lines", "--width", "40", "--length", "48", "--spacing", "5", "--pattern", "across")
    assert "the first lies on the edge itself, the last 3 in from the other edge. Laid about 5 5/16 in apart" in text


def test_crosshatching_from_a_corner(muslin: Muslin) -> None:
    # 48 / (4 sqrt 2) = 8.5 and 40 / (4 sqrt 2) = 7.1 lines beside the first, both ways
    words = ("quilting-lines", "--width", "40", "--length", "48", "--spacing", "4", "--pattern", "crosshatch")
    found = muslin.answer(*words, "--from-corner")
    assert (found["down_to_the_right"]["lines"], found["down_to_the_left"]["lines"]) == (16, 16)
    assert "starts in a corner" in muslin.words(*words, "--from-corner")
    text = muslin.words(*words)
    assert "cuts a corner off" in text and "4 in from line to line" in text and "yd; see muslin thread" in text


def test_an_outline_is_sewn_on_both_sides(muslin: Muslin) -> None:
    found = muslin.answer("quilting-lines", "--pattern", "outline", "--outline", "500", "--outline", "21", "--passes",
                          "2")
    assert (inches(found["length_of_all_lines"]), found["lines"]) == (1042, 2)
    text = muslin.words("quilting-lines", "--pattern", "outline", "--outline", "521", "--passes", "2")
    assert "In the ditch a line is as long as the seam" in text and "edges of the area" not in text


def test_a_quilt_weighs_what_its_layers_weigh(muslin: Muslin) -> None:
    # 3 square metres: 3 x 120 x 1.1 + 3 x 150 + 3 x 120
    words = ("weight", "--width", "1.5 m", "--length", "2 m", "--top", "120 g", "--batting", "150 g", "--backing",
             "120 g", "--in-seams", "10 %")
    found = muslin.answer(*words, "--units", "cm")
    assert [(layer["layer"], layer["mass"]["text"]) for layer in found["layers"]] == [
        ("top", "396 g"), ("batting", "450 g"), ("backing", "360 g")]
    assert found["total"]["text"] == "1206 g"
    text = muslin.words(*words, "--units", "cm")
    assert "top 396 g, of 120 g a square metre and 10 % more in its seams" in text
    assert "Together 1206 g: top, batting and backing alone, without thread or binding." in text
    # 1206 / 28.3495 = 42.54
    assert muslin.answer(*words)["total"] == {"mg": 1206000, "text": "1206 g (42.5 oz)"}


def test_cloth_may_be_weighed_in_ounces_to_the_yard(muslin: Muslin) -> None:
    # a yard square of 4 oz; 4 x 28.3495 = 113.4
    found = muslin.answer("weight", "--width", "36", "--length", "36", "--top", "4 oz")
    assert found["total"]["text"] == "113 g (4 oz)"
    text = muslin.words("weight", "--width", "36", "--length", "36", "--top", "4 oz")
    assert "of 4 oz a square yard" in text
    assert "That is top alone, without thread, batting, backing or binding." in text


def test_a_bill_is_added_up(muslin: Muslin) -> None:
    # 3.125 x 11.50 = 35.9375; 45 strips are two bundles of 40; 7 x 5 / 3 = 11.667
    words = ("cost", "3 1/8 yd at 11.50 the yd", "45 at 42.00 a bundle of 40", "7 at 5 for 3")
    found = muslin.answer(*words)
    assert [thing["cost"]["text"] for thing in found["things"]] == ["35.94", "84.00", "11.67"]
    assert (found["things"][1]["bundles"], found["things"][1]["pieces_to_spare"]) == (2, 35)
    assert found["total"] == {"minor": 13161, "text": "131.61"}
    text = muslin.words(*words)
    assert "2 bundles, with 35 pieces to spare" in text and "45 pieces at 42.00 a bundle of 40: 84.00" in text
    assert "without tax or shipping" in text
    assert muslin.answer("cost", "45 pieces at 42.00 a bundle of 40")["total"]["text"] == "84.00"
    assert "1 piece at 2.80: 2.80" in muslin.words("cost", "1 piece at 2.80")


def test_money_has_the_decimals_it_is_told(muslin: Muslin) -> None:
    # 2.4 x 1200 = 2880; halves: 1 / 2 up or down
    assert muslin.answer("cost", "2.4 m at 1200 the m", "--decimals", "0")["total"]["text"] == "2880"
    assert muslin.answer("cost", "1 at 0.01 for 2", "--round", "down")["total"]["text"] == "0.00"
    assert muslin.answer("cost", "1 at 0.01 for 2")["total"]["text"] == "0.01"
    assert muslin.answer("cost", "2 at 0,05", "--decimal-comma")["total"]["text"] == "0,10"


def test_a_bill_beyond_all_money_has_no_answer(muslin: Muslin) -> None:
    assert "too large" in muslin.complaint(1, "cost", "2000000000 at 46116860184273879.03")


TABLES = ("batting", "other-batting", "precut", "fabric-width", "mattress", "crib", "pillow-tuck", "drop",
          "yard-fraction", "stitch", "caution")


def test_a_table_that_is_not_there_is_named_with_those_that_are(muslin: Muslin) -> None:
    complaint = muslin.complaint(2, "table", "mattresses")
    assert "There is no table \"mattresses\". Did you mean mattress? Choose one of " in complaint
    assert all(table in complaint for table in TABLES)
    assert "Did you mean" not in muslin.complaint(2, "table", "xyzzyplugh")


@pytest.mark.parametrize("table", TABLES)
def test_every_table_is_listed_with_its_sources(muslin: Muslin, table: str) -> None:
    rows = muslin.answer("table", table)["rows"]
    assert rows and all(row["source"] for row in rows)
    text = muslin.words("table", table)
    assert all(row["name"] in text for row in rows)


def test_lists_that_disagree_are_both_there(muslin: Muslin) -> None:
    # Mattress sizes (trade body): 38 x 75; many charts: 39 x 75.
    rows = {row["name"]: row for row in muslin.answer("table", "mattress")["rows"]}
    assert [inches(rows[name]["width"]) for name in ("twin (trade body)", "twin (many charts)")] == [38, 39]
    text = muslin.words("table", "mattress")
    assert "Note: 39 x 75 in in many charts." in text
    assert "Note: not verified (from memory), measure the mattress." in text


def test_ranges_months_and_stitches_have_their_own_words(muslin: Muslin) -> None:
    assert "mattress depth, standard: 7 in to 9 in" in muslin.words("table", "drop")
    cautions = {row["name"]: row for row in muslin.answer("table", "caution")["rows"]}
    assert cautions["no loose bedding under so many months"]["months"] == 12
    assert "piecing stitch, 2.5 mm: 2.5 mm" in muslin.words("table", "stitch")


def test_a_batch_asks_the_same(muslin: Muslin) -> None:
    replies = muslin.batch({"command": "quilting-lines", "width": 40, "length": 48, "from_corner": True,
                            "pattern": "diagonal"}, {"command": "cost", "thing": ["7 at 1.20"]})
    # 48 / (2 sqrt 2) = 16.97, 40 / (2 sqrt 2) = 14.1
    assert replies[0]["answer"]["lines"] == 1 + 16 + 14
    assert replies[1]["answer"]["total"]["text"] == "8.40"


def test_what_one_bobbin_and_spool_still_hold_is_said_once(muslin: Muslin) -> None:
    # 2345 in x 2.5 x 1.15 = 187.3 yd of 218.7 yd (200 m); the rest, 31.4 yd, is 393.9 in of seam x 2.875.
    text = muslin.words("thread", "1921", "424", "--spool", "200 m", "--bobbin", "50 m")
    assert text.count("of seam more") == 1 and "filling up that bobbin is already counted" in text
    # Where a bobbin holds so little that it ends first, both are said.
    assert muslin.words("thread", "1921", "424", "--spool", "200 m", "--bobbin", "45 m").count("of seam more") == 2


def test_a_flat_weight_is_said_to_be_one(muslin: Muslin) -> None:
    words = ("weight", "--width", "60", "--length", "72", "--top", "4 oz")
    assert "flat area only" in muslin.words(*words) and "flat area" not in muslin.words(*words, "--in-seams", "10 %")
