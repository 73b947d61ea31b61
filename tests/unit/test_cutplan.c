/* test_cutplan.c - cutting plans of every kind of piece and cloth; figures worked by hand.
 *
 * SPDX-License-Identifier: MIT */
#include "test_cutplan_made.h"

static struct planned p;
static struct planned q;

static struct muslin_blank_spec *want_square(int64_t count, muslin_len side)
{
    return want(&p, count, side, side);
}

/* 32 squares of 5 1/2 in, 16 of 6 and 8 of 9 1/2. */
static void want_three_squares(void)
{
    start(&p, WHOLE_IN(40));
    want_square(32, IN(5, 1, 2));
    want_square(16, WHOLE_IN(6));
    want_square(8, IN(9, 1, 2));
}

START_TEST(one_size_has_as_many_strips_as_it_needs)
{
    /* 40 squares of 5 in from 42 in: eight a strip, five strips, 2 in left of each. */
    size_t count = 0;
    struct muslin_cutplan_left_over left;
    muslin_len narrowest = 0;
    start(&p, WHOLE_IN(42));
    want_square(40, WHOLE_IN(5));
    make_plan(&p);
    ck_assert_int_eq(p.totals.cloth_length, WHOLE_IN(25));
    ck_assert_int_eq(p.totals.own_strips_length, WHOLE_IN(25));
    ck_assert_int_eq(p.totals.area_bound, (25 * 40 * 8128 + 41) / 42);
    ck_assert_int_eq(p.totals.pieces, 40);
    ck_assert_int_eq(p.totals.strips, 5);
    ck_assert_int_eq(p.totals.heights, 1);
    ck_assert_int_eq(p.totals.cuts, 5 + 40);
    ck_assert_int_eq(p.totals.waste, 2 * 2 * 25 * INT64_C(8128) * 8128);
    left.size = (uint32_t)sizeof left;
    ck_ok(muslin_cutplan_left_overs(p.plan, 0, &left, sizeof left, 1, &count, NULL));
    ck_assert_uint_eq(count, 1);
    ck_assert_int_eq(left.strip, 0);
    ck_assert_int_eq(left.count, 5);
    ck_assert_int_eq(left.x, WHOLE_IN(40));
    ck_assert_int_eq(left.width, WHOLE_IN(2));
    ck_assert_int_eq(left.height, WHOLE_IN(5));
    ck_ok(muslin_cutplan_left_overs(p.plan, WHOLE_IN(2) + 1, &left, sizeof left, 1, &count, NULL));
    ck_assert_uint_eq(count, 0);
    /* Example: usable_width less the end of the fullest strip. */
    ck_ok(muslin_cutplan_narrowest(p.plan, &narrowest, NULL));
    ck_assert_int_eq(narrowest, p.spec.usable_width - left.width);
    muslin_cutplan_free(p.plan);
}
END_TEST

START_TEST(an_edge_that_is_there_is_not_cut)
{
    /* Eight squares fill 40 in: seven cuts, and one across. With 1/2 in off the ends only seven fit: the left end is
     * squared, and each right edge is cut. */
    start(&p, WHOLE_IN(40));
    want_square(8, WHOLE_IN(5));
    make_plan(&p);
    ck_assert_int_eq(p.totals.cuts, 1 + 7);
    muslin_cutplan_free(p.plan);
    p.spec.end_loss = IN(0, 1, 2);
    make_plan(&p);
    ck_assert_int_eq(p.totals.strips, 2);
    ck_assert_int_eq(p.places[0].x, IN(0, 1, 4));
    ck_assert_int_eq(p.totals.cuts, 2 + 2 + 8);
    muslin_cutplan_free(p.plan);
}
END_TEST

START_TEST(nothing_wanted_is_a_plan_of_nothing)
{
    size_t count = 7;
    muslin_len narrowest = 7;
    struct muslin_cutplan_width width = { .size = (uint32_t)sizeof width };
    start(&p, WHOLE_IN(40));
    p.spec.straightening = WHOLE_IN(1);
    make_plan(&p);
    ck_assert_int_eq(p.totals.proven, 1);
    ck_assert_int_eq(p.totals.cloth_length, 0);
    muslin_cutplan_free(p.plan);
    want_square(0, WHOLE_IN(50)); /* none is never too large */
    make_plan(&p);
    ck_assert_uint_eq(p.strip_count, 0);
    ck_assert_int_eq(p.totals.cost, 0);
    ck_ok(muslin_cutplan_sizes(p.plan, NULL, 0, 0, &count, NULL));
    ck_assert_uint_eq(count, 0);
    ck_ok(muslin_cutplan_narrowest(p.plan, &narrowest, NULL));
    ck_assert_int_eq(narrowest, 0);
    ck_ok(muslin_cutplan_widths(p.plan, 1, 1, 1, NULL, NULL, &width, sizeof width, 1, &count, NULL));
    ck_assert_int_eq(width.cloth_length, 0);
    muslin_cutplan_free(p.plan);
    /* Example: muslin_cutplan_free(plan). */
    muslin_cutplan_free(NULL);
}
END_TEST

START_TEST(spare_pieces_belong_to_sizes_not_rows)
{
    start(&p, WHOLE_IN(42));
    p.spec.spare_pieces = 2;
    want_square(3, WHOLE_IN(5));
    want_square(4, WHOLE_IN(5));
    want_square(0, WHOLE_IN(6));
    make_plan(&p);
    ck_assert_int_eq(p.totals.pieces, 9);
    ck_assert_int_eq(p.made[0].cut, 3);
    ck_assert_int_eq(p.made[1].cut, 6);
    muslin_cutplan_free(p.plan);
}
END_TEST

START_TEST(the_squaring_share_is_taken_by_each_piece)
{
    /* 1/2 in every 4 cuts: 1/8 in each; 39 in hold seven of 5 1/8 in and not eight. */
    start(&p, WHOLE_IN(40));
    p.spec.resquare_loss = IN(0, 1, 2);
    p.spec.resquare_every = 4;
    want_square(8, WHOLE_IN(5));
    make_plan(&p);
    ck_assert_int_eq(p.places[0].pitch, IN(5, 1, 8));
    ck_assert_int_eq(p.places[0].width, WHOLE_IN(5));
    ck_assert_int_eq(p.totals.strips, 2);
    muslin_cutplan_free(p.plan);
    p.spec.resquare_every = 3; /* 1354 2/3 ticks, up */
    make_plan(&p);
    ck_assert_int_eq(p.places[0].pitch, WHOLE_IN(5) + 1355);
    muslin_cutplan_free(p.plan);
}
END_TEST

START_TEST(joined_pieces_are_whole_strips_and_one_shorter)
{
    /* Binding of 250 in at 40 in, joins straight with 1/2 in: 6 strips give 237 1/2, the seventh is 13 in long. */
    struct muslin_cutplan_size sizes[3];
    size_t count = 0;
    start(&p, WHOLE_IN(40));
    want_kind(&p, MUSLIN_BLANK_JOINED, 1, WHOLE_IN(250), IN(2, 1, 2))->join_loss = IN(0, 1, 2);
    make_plan(&p);
    ck_assert_int_eq(p.totals.pieces, 7);
    ck_assert_int_eq(p.totals.cloth_length, 7 * IN(2, 1, 2));
    ck_ok(muslin_cutplan_sizes(p.plan, sizes, sizeof sizes[0], 3, &count, NULL));
    ck_assert_uint_eq(count, 2);
    ck_assert_int_eq(sizes[0].taken, WHOLE_IN(40));
    ck_assert_int_eq(sizes[0].count, 6);
    ck_assert_int_eq(sizes[1].taken, WHOLE_IN(13));
    ck_assert_int_eq(sizes[1].count, 1);
    ck_assert_int_eq(p.totals.cuts, 7 + 1); /* across, and one of the two ends of the short one is there */
    muslin_cutplan_free(p.plan);
    p.pieces[0].cut_width = WHOLE_IN(40); /* one strip, nothing to join */
    p.spec.spare_pieces = 3;
    make_plan(&p);
    ck_assert_int_eq(p.totals.pieces, 1);
    muslin_cutplan_free(p.plan);
    p.pieces[0].cut_width = WHOLE_IN(119); /* 40, 40 less a join, 40 less a join */
    p.pieces[0].count = 4;
    make_plan(&p);
    ck_assert_int_eq(p.totals.pieces, 12);
    ck_assert_int_eq(p.totals.strips, 12);
    muslin_cutplan_free(p.plan);
}
END_TEST

START_TEST(sloped_pieces_lie_one_beside_the_other_from_a_level_strip)
{
    /* 60 degree triangles, base 6 in: each takes 3 in, the first 6: 36 in of 40 hold eleven. */
    start(&p, WHOLE_IN(36));
    want_kind(&p, MUSLIN_BLANK_SLOPED, 22, WHOLE_IN(3), WHOLE_IN(5))->run_in = WHOLE_IN(3);
    want_square(3, WHOLE_IN(4));
    want_square(1, WHOLE_IN(7));
    make_plan(&p);
    int64_t strips = 0;
    for (size_t i = 0; i < p.place_count; i++)
        if (p.places[i].piece == 0) {
            ck_assert_int_eq(p.strips[p.places[i].strip].height, WHOLE_IN(5));
            ck_assert_int_eq(p.places[i].width, WHOLE_IN(6));
            ck_assert_int_eq(p.places[i].pitch, WHOLE_IN(3));
            strips += p.strips[p.places[i].strip].times;
        }
    ck_assert_int_eq(strips, 2);
    muslin_cutplan_free(p.plan);
}
END_TEST

START_TEST(sloped_pieces_cut_one_more_edge)
{
    start(&p, WHOLE_IN(36));
    want_kind(&p, MUSLIN_BLANK_SLOPED, 10, WHOLE_IN(3), WHOLE_IN(5))->run_in = WHOLE_IN(3);
    make_plan(&p);
    ck_assert_int_eq(p.totals.cuts, 1 + 1 + 10);
    ck_assert_int_eq(p.totals.waste, 2 * (36 - 30) * 5 * INT64_C(8128) * 8128);
    muslin_cutplan_free(p.plan);
}
END_TEST

START_TEST(borders_are_slit_from_a_panel)
{
    /* Four borders 4 x 60 in, and 6 in squares: beside 16 in there is room for four in each of ten strips. */
    size_t count = 0;
    struct muslin_cutplan_way ways[4];
    start(&p, WHOLE_IN(40));
    p.spec.end_loss = WHOLE_IN(0);
    want_kind(&p, MUSLIN_BLANK_LENGTHWISE, 4, WHOLE_IN(4), WHOLE_IN(60));
    want_square(40, WHOLE_IN(6));
    make_plan(&p);
    ck_assert_int_eq(p.totals.cloth_length, WHOLE_IN(60));
    ck_assert_int_eq(p.totals.panels, 1);
    ck_assert_int_eq(p.totals.strips, 11);
    ck_assert_int_eq(p.strips[0].kind, MUSLIN_CUTPLAN_STRIP_PANEL);
    ck_assert_int_eq(p.strips[1].kind, MUSLIN_CUTPLAN_STRIP_SLIT);
    ck_assert_int_eq(p.strips[2].kind, MUSLIN_CUTPLAN_STRIP_WITHIN);
    ck_assert_int_eq(p.strips[2].times, 10);
    ck_assert_int_eq(p.strips[2].x, WHOLE_IN(16));
    /* across; four slits; nine strips, the last one's edge is the panel's; of each four squares one ends at the edge */
    ck_assert_int_eq(p.totals.cuts, 1 + 4 + 9 + 10 * 3);
    ck_ok(muslin_cutplan_ways(p.plan, ways, sizeof ways[0], 4, &count, NULL));
    ck_assert_uint_eq(count, 2);
    ck_assert_int_eq(ways[0].kind, MUSLIN_CUTPLAN_STRIP_PANEL);
    ck_assert_int_eq(ways[0].cost, WHOLE_IN(60));
    ck_assert_int_eq(ways[1].kind, MUSLIN_CUTPLAN_STRIP_STRIP);
    muslin_cutplan_free(p.plan);
    p.spec.flags = MUSLIN_CUTPLAN_NO_PANELS;
    make_plan(&p);
    ck_assert_int_eq(p.totals.panels, 0);
    ck_assert_int_ge(p.totals.cloth_length, WHOLE_IN(60));
    muslin_cutplan_free(p.plan);
}
END_TEST

/* Two borders of 1 x 20 in and eleven squares of 5 in from 11 in. Both borders in one panel leave room for a column of
 * four squares, and the other seven take four strips: 40 in; a panel for each border is as much. Where the first panel
 * takes both, nothing is slit from a second one, however little the search has done. */
START_TEST(what_nobody_wants_is_not_slit)
{
    start(&p, WHOLE_IN(11));
    want_kind(&p, MUSLIN_BLANK_LENGTHWISE, 2, WHOLE_IN(1), WHOLE_IN(20));
    want_square(11, WHOLE_IN(5));
    for (p.spec.work_limit = 0; p.spec.work_limit < 50000; p.spec.work_limit += 1000) {
        make_plan(&p);
        ck_assert_int_ge(p.totals.cloth_length, WHOLE_IN(40));
        for (size_t i = 0; i < p.strip_count; i++)
            ck_assert(p.strips[i].kind != MUSLIN_CUTPLAN_STRIP_SLIT || p.strips[i].places > 0);
        muslin_cutplan_free(p.plan);
    }
    make_plan(&p);
    ck_assert_int_eq(p.totals.cloth_length, WHOLE_IN(40));
    muslin_cutplan_free(p.plan);
}
END_TEST

/* Two borders of 4 x 30 in lie beside six pieces of 5 x 40, which take two strips of 40 in from 20 in. */
START_TEST(borders_lie_in_strips_of_higher_pieces)
{
    start(&p, WHOLE_IN(20));
    want(&p, 6, WHOLE_IN(5), WHOLE_IN(40));
    want_kind(&p, MUSLIN_BLANK_LENGTHWISE, 2, WHOLE_IN(4), WHOLE_IN(30));
    make_plan(&p);
    ck_assert_int_eq(p.totals.cloth_length, WHOLE_IN(80));
    ck_assert_int_eq(p.totals.panels, 0);
    ck_assert_int_eq(p.totals.proven, 1);
    muslin_cutplan_free(p.plan);
}
END_TEST

START_TEST(a_panel_has_a_rest_beside_its_borders_and_above_its_strips)
{
    struct muslin_cutplan_left_over left[4];
    size_t count = 0;
    muslin_len narrowest = 0;
    start(&p, WHOLE_IN(41));
    p.spec.end_loss = WHOLE_IN(1);
    want_kind(&p, MUSLIN_BLANK_LENGTHWISE, 1, WHOLE_IN(4), WHOLE_IN(60));
    want_square(12, WHOLE_IN(6));
    make_plan(&p);
    /* Six squares in each strip, 36 in beside 4 1/2 of which 1/2 in is squared off: two strips, 48 in are left. */
    ck_assert_int_eq(p.totals.cloth_length, WHOLE_IN(60));
    ck_assert_int_eq(p.strips[1].width, IN(4, 1, 2));
    ck_assert_int_eq(p.strips[2].x, IN(4, 1, 2));
    ck_assert_int_eq(p.strips[2].width, IN(36, 1, 2));
    ck_assert_int_eq(p.places[1].x, 0);
    ck_ok(muslin_cutplan_left_overs(p.plan, 0, left, sizeof left[0], 4, &count, NULL));
    ck_assert_uint_eq(count, 1);
    ck_assert_int_eq(left[0].strip, 0);
    ck_assert_int_eq(left[0].x, IN(4, 1, 2));
    ck_assert_int_eq(left[0].y, WHOLE_IN(12));
    ck_assert_int_eq(left[0].width, WHOLE_IN(36));
    ck_assert_int_eq(left[0].height, WHOLE_IN(48));
    ck_ok(muslin_cutplan_narrowest(p.plan, &narrowest, NULL));
    ck_assert_int_eq(narrowest, WHOLE_IN(41));
    muslin_cutplan_free(p.plan);
}
END_TEST

/* A piece as the lists have it, in eighths of an inch. */
static void want_eighths(int64_t count, muslin_len across, muslin_len along, int turns)
{
    struct muslin_blank_spec *piece = want(&p, count, across * WHOLE_IN(1) / 8, along * WHOLE_IN(1) / 8);
    piece->flags = turns ? MUSLIN_BLANK_MAY_TURN : 0;
}

/* The prints of a throw take some hundred cases, some of which say how many pieces of a size lie in strips of a way. */
START_TEST(cases_may_be_of_pieces_in_strips_of_a_way)
{
    struct muslin_cutplan_case cases[4096];
    size_t count = 0;
    int of_pieces = 0;
    start(&p, WHOLE_IN(42));
    want_eighths(32, 20, 20, 0);
    want_eighths(18, 20, 52, 1);
    want_eighths(127, 28, 28, 0);
    want_eighths(32, 28, 40, 1);
    want_eighths(32, 36, 100, 1);
    want_eighths(32, 39, 39, 0);
    want_eighths(8, 48, 48, 0);
    want_eighths(32, 50, 50, 0);
    want_eighths(8, 55, 55, 0);
    want_eighths(7, 336, 18, 0);
    p.spec.work_limit = 20000000;
    make_plan(&p);
    ck_ok(muslin_cutplan_cases(p.plan, cases, sizeof cases[0], 4096, &count, NULL));
    for (size_t i = 0; i < count; i++)
        of_pieces += cases[i].plan_size >= 0;
    ck_assert_int_gt(of_pieces, 0);
    muslin_cutplan_free(p.plan);
}
END_TEST

/* Sheets of several patterns, some of which begin alike. */
START_TEST(pieces_of_stock_lie_in_order)
{
    start(&p, 0);
    p.spec.usable_width = 0;
    want_eighths(44, 12, 12, 0);
    want_eighths(66, 24, 24, 0);
    want_eighths(44, 24, 64, 1);
    want_eighths(44, 32, 32, 0);
    want_eighths(11, 32, 116, 1);
    want_eighths(11, 34, 34, 0);
    have(&p, MUSLIN_COUNT_MAX, WHOLE_IN(21), WHOLE_IN(18))->cost = 378;
    have(&p, MUSLIN_COUNT_MAX, WHOLE_IN(21), WHOLE_IN(9))->cost = 189;
    p.spec.work_limit = 3000000;
    make_plan(&p);
    ck_assert_int_le(p.totals.cost, 3780);
    ck_assert_int_le(p.totals.least, 3591);
    muslin_cutplan_free(p.plan);
}
END_TEST

START_TEST(folded_cloth_gives_two_of_each)
{
    /* 40 in folded: 20 in, four squares of 5 in in each layer; 33 squares are 17 blanks. */
    struct muslin_problem problem = PROBLEM;
    start(&p, WHOLE_IN(40));
    p.spec.flags = MUSLIN_CUTPLAN_FOLDED;
    want_square(33, WHOLE_IN(5));
    make_plan(&p);
    ck_assert_int_eq(p.totals.pieces, 34);
    ck_assert_int_eq(p.totals.strips, 5);
    ck_assert_int_eq(p.strips[0].width, WHOLE_IN(20));
    muslin_cutplan_free(p.plan);
    p.pieces[0].count = 10;
    want_square(5, WHOLE_IN(5)); /* 15 in all: eight blanks, the second row has a piece of the first one's last */
    make_plan(&p);
    ck_assert_int_eq(p.totals.pieces, 16);
    ck_assert_int_eq(p.made[0].cut, 10);
    ck_assert_int_eq(p.made[1].cut, 6);
    muslin_cutplan_free(p.plan);
    start(&p, WHOLE_IN(40));
    p.spec.flags = MUSLIN_CUTPLAN_FOLDED;
    want_square(1, WHOLE_IN(21));
    ck_status(try_plan(&p, &problem), MUSLIN_ERR_NO_YIELD);
    ck_assert_str_eq(problem.text, "Cut width of a piece is 21 in, but there is room for at most 20 in.");
}
END_TEST

START_TEST(joined_strips_go_round_the_fold)
{
    /* 110 in at 40: 40, 40 and 30 in, each its own; another 15 in come from one layer. */
    struct muslin_cutplan_left_over left;
    size_t count = 0;
    start(&p, WHOLE_IN(40));
    p.spec.flags = MUSLIN_CUTPLAN_FOLDED;
    want_kind(&p, MUSLIN_BLANK_JOINED, 1, WHOLE_IN(110), WHOLE_IN(2));
    make_plan(&p);
    ck_assert_int_eq(p.totals.pieces, 3);
    ck_assert_int_eq(p.totals.strips, 3);
    muslin_cutplan_free(p.plan);
    p.pieces[0].cut_width = WHOLE_IN(95);
    make_plan(&p);
    ck_assert_int_eq(p.totals.pieces, 4);
    ck_assert_int_eq(p.totals.strips, 3);
    left.size = (uint32_t)sizeof left;
    ck_ok(muslin_cutplan_left_overs(p.plan, 0, &left, sizeof left, 1, &count, NULL));
    ck_assert_int_eq(left.width, WHOLE_IN(10)); /* 5 in at the fold, unfolded */
    muslin_cutplan_free(p.plan);
}
END_TEST

START_TEST(stock_is_cut_along_either_side_where_pieces_may_turn)
{
    /* A fat quarter 21 x 18 in gives two pieces of 8 x 18 whichever way; six of 7 x 9; turned strips need both ways. */
    size_t count = 0;
    struct muslin_cutplan_way ways[4];
    start(&p, 0);
    have(&p, MUSLIN_COUNT_MAX, WHOLE_IN(21), WHOLE_IN(18))->label = 5;
    want(&p, 12, WHOLE_IN(7), WHOLE_IN(9))->flags = MUSLIN_BLANK_MAY_TURN;
    make_plan(&p);
    ck_assert_int_eq(p.totals.stock_pieces, 2);
    ck_assert_int_eq(p.totals.cloth_length, 0);
    ck_assert_int_eq(p.totals.own_strips_length, 0);
    ck_ok(muslin_cutplan_ways(p.plan, ways, sizeof ways[0], 4, &count, NULL));
    ck_assert_uint_eq(count, 2);
    ck_assert_int_eq(ways[1].turned, 1);
    ck_assert_int_eq(ways[1].width, WHOLE_IN(18));
    ck_assert_int_eq(ways[1].height, WHOLE_IN(21));
    muslin_cutplan_free(p.plan);
    p.spec.flags = MUSLIN_CUTPLAN_FIRST_CUT_ACROSS;
    make_plan(&p);
    ck_ok(muslin_cutplan_ways(p.plan, NULL, 0, 0, &count, NULL));
    ck_assert_uint_eq(count, 1);
    muslin_cutplan_free(p.plan);
    p.spec.flags = 0;
    p.pieces[0].flags = 0;
    make_plan(&p);
    ck_ok(muslin_cutplan_ways(p.plan, NULL, 0, 0, &count, NULL));
    ck_assert_uint_eq(count, 1);
    muslin_cutplan_free(p.plan);
    p.stock[0].width = WHOLE_IN(18); /* a square is the same either way */
    p.pieces[0].flags = MUSLIN_BLANK_MAY_TURN;
    make_plan(&p);
    ck_ok(muslin_cutplan_ways(p.plan, NULL, 0, 0, &count, NULL));
    ck_assert_uint_eq(count, 1);
    muslin_cutplan_free(p.plan);
    p.spec.print = MUSLIN_PRINT_ONE_WAY;
    make_plan(&p);
    ck_assert_int_eq(p.places[0].turned, 0);
    muslin_cutplan_free(p.plan);
}
END_TEST

START_TEST(stock_that_costs_different_sums_is_added_up)
{
    /* Example: 7 fat quarters at 3 cost 21. */
    struct muslin_cutplan_stock_used used;
    size_t count = 0;
    start(&p, 0);
    have(&p, 9, WHOLE_IN(20), WHOLE_IN(20))->cost = 3;
    p.stock[0].label = 11;
    want_square(28, WHOLE_IN(10));
    make_plan(&p);
    ck_ok(muslin_cutplan_stock(p.plan, &used, sizeof used, 1, &count, NULL));
    ck_assert_int_eq(used.label, 11);
    ck_assert_int_eq(used.used, 7);
    ck_assert_int_eq(used.cost, 21);
    ck_assert_int_eq(p.totals.cost, 21);
    ck_assert_int_eq(p.totals.waste, 0);
    /* one cut across each, and one in each of two strips */
    ck_assert_int_eq(p.totals.cuts, 7 * 3);
    muslin_cutplan_free(p.plan);
}
END_TEST

START_TEST(stock_that_is_square_but_for_its_losses_is_cut_both_ways)
{
    /* 11 x 10 1/2 in with 1/2 in off the ends: strips of 10 in either way, but room for 11 in of them when turned. */
    size_t count = 0;
    start(&p, 0);
    p.spec.end_loss = IN(0, 1, 2);
    have(&p, 2, WHOLE_IN(11), IN(10, 1, 2));
    have(&p, 2, WHOLE_IN(11), IN(10, 3, 4));
    have(&p, 3, WHOLE_IN(11), IN(10, 3, 4));
    want_square(110, WHOLE_IN(1));
    make_plan(&p);
    ck_assert_int_eq(p.totals.cost, 1);
    ck_assert_int_eq(p.strips[0].turned, 1);
    ck_ok(muslin_cutplan_ways(p.plan, NULL, 0, 0, &count, NULL));
    ck_assert_uint_eq(count, 6);
    muslin_cutplan_free(p.plan);
}
END_TEST

START_TEST(what_is_left_of_stock_is_left_right_across)
{
    struct muslin_cutplan_left_over left[3];
    size_t count = 0;
    start(&p, 0);
    p.spec.straightening = WHOLE_IN(1);
    p.spec.end_loss = WHOLE_IN(1);
    have(&p, 1, WHOLE_IN(20), WHOLE_IN(21));
    want_square(1, WHOLE_IN(10));
    make_plan(&p);
    ck_ok(muslin_cutplan_left_overs(p.plan, 0, left, sizeof left[0], 3, &count, NULL));
    ck_assert_uint_eq(count, 2);
    ck_assert_int_eq(left[0].strip, 0); /* 20 x 10 in above the strip, 9 x 10 beside the square */
    ck_assert_int_eq(left[0].width, WHOLE_IN(20));
    ck_assert_int_eq(left[0].height, WHOLE_IN(10));
    ck_assert_int_eq(left[1].strip, 1);
    ck_assert_int_eq(left[1].x, IN(10, 1, 2));
    ck_assert_int_eq(left[1].width, WHOLE_IN(9));
    muslin_cutplan_free(p.plan);
}
END_TEST

START_TEST(one_piece_of_stock_that_just_suffices)
{
    /* 14 x 14 in: strips of 6 and of 6 with four and one of 3 x 6; beside that one 9 x 3. */
    start(&p, 0);
    have(&p, 1, WHOLE_IN(14), WHOLE_IN(14));
    want_kind(&p, MUSLIN_BLANK_LENGTHWISE, 5, WHOLE_IN(3), WHOLE_IN(6));
    want(&p, 1, WHOLE_IN(9), WHOLE_IN(3));
    make_plan(&p);
    ck_assert_int_eq(p.totals.missing, 0);
    muslin_cutplan_free(p.plan);
    /* 11 x 13 in, two of them: strips of 13 with three of 3 x 13, and one with 5 x 5 above each other beside it */
    start(&p, 0);
    p.spec.flags = MUSLIN_CUTPLAN_FIRST_CUT_ACROSS;
    have(&p, 2, WHOLE_IN(11), WHOLE_IN(13));
    want_kind(&p, MUSLIN_BLANK_LENGTHWISE, 4, WHOLE_IN(3), WHOLE_IN(13));
    want(&p, 2, WHOLE_IN(5), WHOLE_IN(5))->flags = MUSLIN_BLANK_MAY_TURN;
    make_plan(&p);
    muslin_cutplan_free(p.plan);
}
END_TEST

START_TEST(what_is_not_shown_is_said)
{
    struct muslin_problem problem = PROBLEM;
    start(&p, 0);
    p.spec.work_limit = 0; /* 15 of 6 x 4 in from 21 x 20 in, where by area there is room for 16 */
    have(&p, 1, WHOLE_IN(21), WHOLE_IN(20));
    want(&p, 16, WHOLE_IN(6), WHOLE_IN(4));
    ck_status(try_plan(&p, &problem), MUSLIN_ERR_WORK_LIMIT);
    ck_assert_int_eq(problem.value, 16);
    ck_assert_int_eq(problem.limit, 15);
    ck_assert_str_eq(problem.text, "Number of pieces is 16, but plans were found only for 15, and it was not shown that "
                                   "there are none for more.");
    p.pieces[0].count = 17; /* more than all of its area: strips use 18 of 21 in */
    ck_status(try_plan(&p, &problem), MUSLIN_ERR_NOT_ENOUGH);
    p.pieces[0].count = 16;
    p.spec.work_limit = 10000000;
    ck_status(try_plan(&p, &problem), MUSLIN_ERR_NOT_ENOUGH);
    ck_assert_int_eq(problem.limit, 15);
}
END_TEST

START_TEST(what_stock_does_not_suffice_for_is_left_out_by_priority)
{
    /* Example: 100 squares, of which the stock gives 64. */
    struct muslin_problem problem = PROBLEM;
    start(&p, 0);
    have(&p, 4, WHOLE_IN(20), WHOLE_IN(20));
    want_square(100, WHOLE_IN(5));
    ck_status(try_plan(&p, &problem), MUSLIN_ERR_NOT_ENOUGH);
    ck_assert_str_eq(problem.text, "Number of pieces is 100, but what is in hand gives only 64.");
    p.spec.flags = MUSLIN_CUTPLAN_BY_PRIORITY;
    make_plan(&p);
    ck_assert_int_eq(p.totals.pieces, 64);
    ck_assert_int_eq(p.totals.missing, 36);
    ck_assert_int_eq(p.made[0].made, 64);
    ck_assert_int_eq(p.made[0].missing, 36);
    muslin_cutplan_free(p.plan);
    p.pieces[0].count = 30;
    p.pieces[0].priority = 7;
    want_square(40, WHOLE_IN(5));
    want_square(10, WHOLE_IN(1))->priority = 8;
    make_plan(&p);
    ck_assert_int_eq(p.made[0].made, 24);
    ck_assert_int_eq(p.made[1].made, 40);
    ck_assert_int_eq(p.made[2].made, 0);
    muslin_cutplan_free(p.plan);
    p.stock[0].count = 0;
    make_plan(&p);
    ck_assert_int_eq(p.totals.missing, 80);
    ck_assert_int_eq(p.totals.pieces, 0);
    muslin_cutplan_free(p.plan);
}
END_TEST

START_TEST(rows_of_one_size_get_its_pieces_one_after_the_other)
{
    /* Example: two rows of 5 x 5 in are one. */
    struct muslin_cutplan_size sizes[4];
    size_t count = 0;
    start(&p, WHOLE_IN(40));
    want_square(11, WHOLE_IN(5))->label = 100;
    want_square(2, WHOLE_IN(5));
    want_square(20, WHOLE_IN(5));
    want(&p, 3, WHOLE_IN(7), WHOLE_IN(4))->flags = MUSLIN_BLANK_MAY_TURN;
    want(&p, 4, WHOLE_IN(4), WHOLE_IN(7))->flags = MUSLIN_BLANK_MAY_TURN;
    make_plan(&p);
    ck_ok(muslin_cutplan_sizes(p.plan, sizes, sizeof sizes[0], 4, &count, NULL));
    ck_assert_uint_eq(count, 2);
    ck_assert_int_eq(sizes[0].count, 33);
    ck_assert_int_eq(sizes[0].piece, 0);
    ck_assert_int_eq(sizes[1].count, 7);
    ck_assert_int_eq(sizes[1].may_turn, 1);
    ck_assert_int_eq(sizes[1].taken, WHOLE_IN(7));
    ck_assert_int_eq(sizes[1].turned_taken, WHOLE_IN(4));
    ck_assert_int_eq(sizes[1].turned_height, WHOLE_IN(7));
    for (size_t i = 0; i < p.n; i++)
        ck_assert_int_eq(p.made[i].cut, p.pieces[i].count);
    muslin_cutplan_free(p.plan);
}
END_TEST

static void same_strips(void)
{
    ck_assert_uint_eq(p.strip_count, q.strip_count);
    for (size_t i = 0; i < p.strip_count; i++)
        ck_assert_int_eq(p.strips[i].height, q.strips[i].height);
}

START_TEST(rows_in_another_order_give_the_same_plan)
{
    want_three_squares();
    want(&p, 9, WHOLE_IN(3), WHOLE_IN(8))->flags = MUSLIN_BLANK_MAY_TURN;
    make_plan(&p);
    q = p;
    for (size_t i = 0; i < p.n; i++)
        q.pieces[i] = p.pieces[p.n - 1 - i];
    q.pieces[0].cut_width = WHOLE_IN(8);
    q.pieces[0].cut_length = WHOLE_IN(3);
    make_plan(&q);
    same_strips();
    for (size_t i = 0; i < p.place_count; i++) {
        ck_assert_int_eq(p.places[i].x, q.places[i].x);
        ck_assert_int_eq(p.places[i].width, q.places[i].width);
        ck_assert_int_eq(p.places[i].count, q.places[i].count);
        ck_assert_int_eq(p.places[i].piece, 3 - q.places[i].piece);
    }
    muslin_cutplan_free(p.plan);
    muslin_cutplan_free(q.plan);
}
END_TEST

START_TEST(other_widths_are_never_longer_than_narrower_ones)
{
    /* Example: 40, 41, 42, 43 and 44 in: widths = 5. */
    struct muslin_cutplan_width rows[5];
    size_t count = 0;
    want_three_squares();
    make_plan(&p);
    ck_ok(muslin_cutplan_widths(p.plan, WHOLE_IN(40), WHOLE_IN(44), 5, NULL, NULL, rows, sizeof rows[0], 5, &count,
                                NULL));
    ck_assert_uint_eq(count, 5);
    for (size_t i = 0; i < 5; i++) {
        ck_assert_int_eq(rows[i].usable_width, WHOLE_IN(40 + (int64_t)i));
        ck_assert_int_le(rows[i].least, rows[i].cloth_length);
        ck_assert_int_eq(rows[i].proven, rows[i].least == rows[i].cloth_length);
        ck_assert(i == 0 || rows[i].cloth_length <= rows[i - 1].cloth_length);
    }
    ck_assert_int_eq(rows[0].cloth_length, p.totals.cloth_length);
    /* 9 in is too narrow for one size, 10 in is not: then each has a strip of its own */
    ck_ok(muslin_cutplan_widths(p.plan, WHOLE_IN(9), WHOLE_IN(10), 2, NULL, NULL, rows, sizeof rows[0], 5, &count,
                                NULL));
    ck_assert_int_eq(rows[0].cloth_length, 0);
    ck_assert_int_eq(rows[1].cloth_length, 32 * IN(5, 1, 2) + 16 * WHOLE_IN(6) + 8 * IN(9, 1, 2));
    ck_assert_int_eq(rows[1].cloth_length, rows[1].least);
    muslin_cutplan_free(p.plan);
    start(&p, WHOLE_IN(40)); /* where a join takes a whole strip there is none */
    want_kind(&p, MUSLIN_BLANK_JOINED, 1, WHOLE_IN(45), WHOLE_IN(2))->join_loss = WHOLE_IN(20);
    make_plan(&p);
    ck_ok(muslin_cutplan_widths(p.plan, WHOLE_IN(20), WHOLE_IN(40), 2, NULL, NULL, rows, sizeof rows[0], 5, &count,
                                NULL));
    ck_assert_int_eq(rows[0].cloth_length, 0);
    ck_assert_int_eq(rows[1].cloth_length, WHOLE_IN(4));
    muslin_cutplan_free(p.plan);
}
END_TEST

/* 16 squares of 5 in: 8 from 40 in, so two strips, and one from 80 in. What is straightened is on top, once, and no
 * part of the bound. */
START_TEST(straightening_is_in_the_length_for_each_width)
{
    struct muslin_cutplan_width rows[2];
    size_t count = 0;
    start(&p, WHOLE_IN(40));
    p.spec.straightening = WHOLE_IN(1);
    want_square(16, WHOLE_IN(5));
    make_plan(&p);
    ck_ok(muslin_cutplan_widths(p.plan, WHOLE_IN(40), WHOLE_IN(80), 2, NULL, NULL, rows, sizeof rows[0], 2, &count,
                                NULL));
    for (int64_t i = 0; i < 2; i++) {
        const int64_t strips = 2 - i;
        ck_assert_int_eq(rows[i].cloth_length, strips * WHOLE_IN(5) + WHOLE_IN(1));
        ck_assert_int_eq(rows[i].least, strips * WHOLE_IN(5));
        ck_assert_int_eq(rows[i].proven, 1);
    }
    muslin_cutplan_free(p.plan);
}
END_TEST

/* Of squares alone there is one plan for a length: it holds down to its narrowest width, and not a tick below. */
START_TEST(a_tick_below_the_narrowest_width_more_is_needed)
{
    struct muslin_cutplan_width rows[2];
    size_t count = 0;
    muslin_len narrowest = 0;
    for (uint32_t folded = 0; folded < 2; folded++) {
        start(&p, WHOLE_IN(44));
        p.spec.flags = folded ? MUSLIN_CUTPLAN_FOLDED : 0;
        p.spec.end_loss = WHOLE_IN(1);
        want_square(16, WHOLE_IN(5));
        make_plan(&p);
        ck_ok(muslin_cutplan_narrowest(p.plan, &narrowest, NULL));
        ck_ok(muslin_cutplan_widths(p.plan, narrowest - 1, narrowest, 2, NULL, NULL, rows, sizeof rows[0], 2, &count,
                                    NULL));
        ck_assert_int_gt(rows[0].cloth_length, p.totals.cloth_length);
        ck_assert_int_eq(rows[1].cloth_length, p.totals.cloth_length);
        muslin_cutplan_free(p.plan);
    }
}
END_TEST

START_TEST(a_plan_of_a_narrower_bolt_is_kept_where_it_is_shorter)
{
    /* Without work, first plans are all there are: among so many some get longer on a wider bolt. */
    struct muslin_cutplan_width rows[4];
    struct muslin_cutplan_width searched[4];
    uint64_t state = 1;
    size_t count = 0;
    int32_t kept = 0;
    for (int round = 0; round < 120; round++) {
        start(&p, WHOLE_IN(22));
        p.spec.work_limit = 0;
        p.spec.straightening = WHOLE_IN(round % 2);
        for (int64_t i = draw_from(&state, 2, 4); i > 0; i--)
            want(&p, draw_from(&state, 1, 9), WHOLE_IN(draw_from(&state, 3, 12)), WHOLE_IN(draw_from(&state, 3, 12)))
                ->flags = (uint32_t)draw_from(&state, 0, 1);
        make_plan(&p);
        ck_ok(muslin_cutplan_widths(p.plan, WHOLE_IN(20), WHOLE_IN(23), 4, NULL, NULL, rows, sizeof rows[0], 4, &count,
                                    NULL));
        ck_assert_int_le(rows[2].cloth_length, p.totals.cloth_length);
        kept += rows[2].cloth_length < p.totals.cloth_length;
        muslin_cutplan_free(p.plan);
        p.spec.work_limit = 200000;
        make_plan(&p);
        ck_ok(muslin_cutplan_widths(p.plan, WHOLE_IN(20), WHOLE_IN(23), 4, NULL, NULL, searched, sizeof rows[0], 4,
                                    &count, NULL));
        for (size_t i = 0; i < 4; i++) {
            const muslin_len length = rows[i].cloth_length - p.spec.straightening;
            ck_assert(i == 0 || rows[i].cloth_length <= rows[i - 1].cloth_length);
            ck_assert_int_le(searched[i].cloth_length, rows[i].cloth_length);
            ck_assert_int_le(rows[i].least, searched[i].cloth_length - p.spec.straightening);
            ck_assert_int_eq(rows[i].proven, length == rows[i].least);
        }
        muslin_cutplan_free(p.plan);
    }
    ck_assert_int_gt(kept, 0);
}
END_TEST

static int32_t count_calls(void *context, int64_t work, int64_t best, int64_t bound)
{
    int64_t *calls = context;
    ck_assert_int_ge(work, 0);
    ck_assert_int_le(bound, best);
    ck_assert_int_ge(bound, WHOLE_IN(57)); /* the area alone */
    (*calls)++;
    return 1;
}

/* Ends at the first call that is counted from 1. */
static int32_t count_cases(void *context, int64_t work, int64_t cases, int64_t proved)
{
    int64_t *calls = context;
    ck_assert_int_ge(work, 0);
    ck_assert_int_ge(proved, 0);
    ck_assert_int_lt(proved, cases);
    return ++*calls > 0;
}

START_TEST(progress_is_told_lengths_and_ends_the_search)
{
    struct muslin_allocator allocator;
    int64_t calls = 0;
    ck_ok(muslin_allocator_libc(&allocator));
    want_three_squares();
    ck_ok(muslin_cutplan_create(&p.spec, p.pieces, sizeof p.pieces[0], p.n, NULL, 0, 0, &allocator, count_calls, &calls,
                                &p.plan, NULL));
    ck_plan(&p);
    ck_assert(p.totals.stopped == 1 || p.totals.proven);
    ck_assert_int_ge(calls, p.totals.stopped == 1);
    muslin_cutplan_free(p.plan);
}
END_TEST

struct standing {
    int64_t work; /* as told last */
    int64_t best;
    int64_t bound;
    int64_t gap;  /* the longest without a word */
    int64_t ends; /* at so much work */
};

static int32_t note_standing(void *context, int64_t work, int64_t best, int64_t bound)
{
    struct standing *standing = context;
    ck_assert_int_ge(work, standing->work);
    ck_assert_int_le(best, standing->best);
    ck_assert_int_ge(bound, standing->bound);
    ck_assert_int_le(bound, best);
    if (work - standing->work > standing->gap)
        standing->gap = work - standing->work;
    standing->work = work;
    standing->best = best;
    standing->bound = bound;
    return work >= standing->ends;
}

/* Sixty sizes, of which a case takes long: the header says every few million steps. However the search is watched, and
 * wherever it is ended, the plan is whole; and it is the same when nobody watches. */
START_TEST(progress_is_told_often_wherever_the_search_is)
{
    static const int64_t ends[] = { INT64_MAX, 1000000, 3000000, 6000000, 9000000, 12000000, 16000000, 20000000 };
    struct standing standing = { 0, INT64_MAX, 0, 0, ends[_i] };
    struct muslin_allocator allocator;
    struct muslin_cutplan *unwatched = NULL;
    struct muslin_cutplan_total totals = { .size = sizeof totals };
    ck_ok(muslin_allocator_libc(&allocator));
    start(&p, WHOLE_IN(40));
    p.spec.work_limit = 24000000;
    for (int64_t i = 0; i < 60; i++)
        want(&p, 1 + i * 7 % 40, WHOLE_IN(1) + i * i * 29 % 1200 * IN(0, 1, 64),
             WHOLE_IN(1) + i * 37 % 90 * IN(0, 1, 8));
    ck_ok(muslin_cutplan_create(&p.spec, p.pieces, sizeof p.pieces[0], p.n, NULL, 0, 0, &allocator, note_standing,
                                &standing, &p.plan, NULL));
    ck_plan(&p);
    ck_assert_int_le(standing.gap, 5000000);
    if (ends[_i] < INT64_MAX) {
        ck_assert_int_eq(p.totals.stopped, 1);
        ck_assert_int_ge(p.totals.work, ends[_i]);
        ck_assert_int_le(p.totals.work, ends[_i] + 5000000);
    } else {
        ck_ok(muslin_cutplan_create(&p.spec, p.pieces, sizeof p.pieces[0], p.n, NULL, 0, 0, &allocator, NULL, NULL,
                                    &unwatched, NULL));
        ck_ok(muslin_cutplan_totals(unwatched, &totals, NULL));
        ck_assert_int_eq(totals.cost, p.totals.cost);
        ck_assert_int_eq(totals.work, p.totals.work);
        muslin_cutplan_free(unwatched);
    }
    muslin_cutplan_free(p.plan);
}
END_TEST

START_TEST(progress_ends_widths_and_the_check)
{
    struct muslin_cutplan_width rows[3];
    struct muslin_cutplan_width whole[3];
    struct muslin_cutplan_checked checked = { .size = sizeof checked, .cases = 77 };
    struct muslin_problem problem = MUSLIN_PROBLEM_INIT;
    int64_t calls = 0;
    size_t count;
    want_three_squares();
    make_plan(&p);
    ck_ok(muslin_cutplan_widths(p.plan, WHOLE_IN(40), WHOLE_IN(42), 3, NULL, NULL, whole, sizeof whole[0], 3, &count,
                                NULL));
    ck_ok(muslin_cutplan_widths(p.plan, WHOLE_IN(40), WHOLE_IN(42), 3, count_calls, &calls, rows, sizeof rows[0], 3,
                                &count, NULL));
    ck_assert_int_le(calls, 1);
    for (size_t i = 0; i < 3; i++)
        ck_assert_int_ge(rows[i].cloth_length, whole[i].cloth_length);
    calls = 0;
    ck_status(muslin_cutplan_check(p.plan, count_cases, &calls, &checked, &problem), MUSLIN_ERR_STOPPED);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_NONE);
    ck_assert_str_eq(problem.text, "The progress call ended it before there was an answer; ask again to have one.");
    ck_assert_int_eq(calls, 1);
    ck_assert_int_eq(checked.cases, 77);
    calls = -1; /* so that it goes on */
    ck_ok(muslin_cutplan_check(p.plan, count_cases, &calls, &checked, NULL));
    ck_assert_int_ge(calls, 0);
    ck_assert_int_eq(checked.fault, MUSLIN_CUTPLAN_FAULT_NONE);
    muslin_cutplan_free(p.plan);
}
END_TEST

/* Thirty sizes keep the search busy. What it takes at first is most of it: the header says 16 MiB and 2 KiB a row. */
static void ck_memory_of(int from_stock)
{
    struct failing_allocator memory;
    failing_start(&memory, 0);
    start(&p, from_stock ? 0 : WHOLE_IN(41));
    p.spec.work_limit = 20000000;
    for (int64_t i = 0; i < 30; i++)
        want(&p, 5 + i * 7 % 40, WHOLE_IN(2) + i * IN(0, 3, 8), WHOLE_IN(3) + i * 11 % 30 * IN(0, 1, 4));
    if (from_stock)
        have(&p, MUSLIN_COUNT_MAX, WHOLE_IN(41), WHOLE_IN(36));
    else
        want_kind(&p, MUSLIN_BLANK_LENGTHWISE, 2, WHOLE_IN(5), WHOLE_IN(70));
    ck_ok(plan_with(&p, &memory.allocator, NULL));
    ck_assert_uint_le(memory.most_bytes, ((size_t)16 << 20) + p.n * 2048);
    muslin_cutplan_free(p.plan);
    ck_assert(failing_is_clean(&memory));
}

START_TEST(memory_is_bounded_as_said)
{
    ck_memory_of(0);
    ck_memory_of(1);
}
END_TEST

static void add_plans(Suite *suite)
{
    TCase *plans = tcase_create("plans");
    tcase_set_timeout(plans, 60);
    tcase_add_test(plans, one_size_has_as_many_strips_as_it_needs);
    tcase_add_test(plans, an_edge_that_is_there_is_not_cut);
    tcase_add_test(plans, nothing_wanted_is_a_plan_of_nothing);
    tcase_add_test(plans, spare_pieces_belong_to_sizes_not_rows);
    tcase_add_test(plans, the_squaring_share_is_taken_by_each_piece);
    tcase_add_test(plans, joined_pieces_are_whole_strips_and_one_shorter);
    tcase_add_test(plans, sloped_pieces_lie_one_beside_the_other_from_a_level_strip);
    tcase_add_test(plans, sloped_pieces_cut_one_more_edge);
    tcase_add_test(plans, borders_are_slit_from_a_panel);
    tcase_add_test(plans, what_nobody_wants_is_not_slit);
    tcase_add_test(plans, borders_lie_in_strips_of_higher_pieces);
    tcase_add_test(plans, a_panel_has_a_rest_beside_its_borders_and_above_its_strips);
    tcase_add_test(plans, folded_cloth_gives_two_of_each);
    tcase_add_test(plans, joined_strips_go_round_the_fold);
    tcase_add_test(plans, cases_may_be_of_pieces_in_strips_of_a_way);
    tcase_add_test(plans, pieces_of_stock_lie_in_order);
    tcase_add_test(plans, stock_is_cut_along_either_side_where_pieces_may_turn);
    tcase_add_test(plans, stock_that_costs_different_sums_is_added_up);
    tcase_add_test(plans, stock_that_is_square_but_for_its_losses_is_cut_both_ways);
    tcase_add_test(plans, what_is_left_of_stock_is_left_right_across);
    tcase_add_test(plans, what_stock_does_not_suffice_for_is_left_out_by_priority);
    tcase_add_test(plans, one_piece_of_stock_that_just_suffices);
    tcase_add_test(plans, what_is_not_shown_is_said);
    tcase_add_test(plans, rows_of_one_size_get_its_pieces_one_after_the_other);
    tcase_add_test(plans, rows_in_another_order_give_the_same_plan);
    tcase_add_test(plans, other_widths_are_never_longer_than_narrower_ones);
    tcase_add_test(plans, straightening_is_in_the_length_for_each_width);
    tcase_add_test(plans, a_tick_below_the_narrowest_width_more_is_needed);
    tcase_add_test(plans, progress_is_told_lengths_and_ends_the_search);
    tcase_add_test(plans, progress_ends_widths_and_the_check);
    suite_add_tcase(suite, plans);
}

static void add_long_plans(Suite *suite)
{
    TCase *plans = tcase_create("long plans");
    tcase_set_timeout(plans, 60);
    tcase_add_test(plans, a_plan_of_a_narrower_bolt_is_kept_where_it_is_shorter);
    tcase_add_loop_test(plans, progress_is_told_often_wherever_the_search_is, 0, 8);
    tcase_add_test(plans, memory_is_bounded_as_said);
    suite_add_tcase(suite, plans);
}

Suite *cutplan_suite(void);
Suite *cutplan_long_suite(void);

Suite *cutplan_suite(void)
{
    Suite *suite = suite_create("cutplan");
    add_plans(suite);
    add_cutplan_request(suite);
    add_cutplan_rows(suite);
    add_cutplan_blanks(suite);
    add_cutplan_known(suite);
    return suite;
}

/* What takes longer, asked apart. */
Suite *cutplan_long_suite(void)
{
    Suite *suite = suite_create("cutplan_long");
    add_long_plans(suite);
    add_long_cutplan_request(suite);
    add_long_cutplan_rows(suite);
    add_long_cutplan_blanks(suite);
    return suite;
}
