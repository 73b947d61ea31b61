/* test_fabric.c - cloth: width, purchase, pieces, strips. Stock is in test_fabric_stock.c.
 *
 * SPDX-License-Identifier: MIT */
#include "test_fabric.h"

enum { DRAWS = 20000 };

/* ---- usable width ---------------------------------------------------------------------------------------------- */

static muslin_len usable(muslin_len labelled, muslin_len selvage, int32_t shrinkage)
{
    muslin_len width = -1;
    ck_ok(muslin_fabric_usable_width(labelled, selvage, shrinkage, &width, NULL));
    return width;
}

START_TEST(both_selvages_come_off_the_label)
{
    /* by hand */
    ck_assert_int_eq(usable(WHOLE_IN(44), IN(0, 1, 2), 0), WHOLE_IN(43));
    ck_assert_int_eq(usable(WHOLE_IN(44), 0, 0), WHOLE_IN(44));
}
END_TEST

START_TEST(width_is_what_is_left_after_washing)
{
    /* Q&A: shrinkage example 20 to 17 (Q&A page): 15 per cent */
    ck_assert_int_eq(usable(WHOLE_IN(20), 0, 150000), WHOLE_IN(17));
    /* 43 in less 3 per cent is 41.71 in = 339018.88 ticks: down */
    ck_assert_int_eq(usable(WHOLE_IN(44), IN(0, 1, 2), 30000), 339018);
    ck_assert_int_eq(usable(1, 0, 999999), 0);
}
END_TEST

START_TEST(selvages_may_leave_a_single_tick_but_not_nothing)
{
    struct muslin_problem problem = PROBLEM;
    muslin_len width = 77;
    ck_assert_int_eq(usable(101, 50, 0), 1);
    ck_assert_int_eq(usable(100, 49, 0), 2);
    ck_status(muslin_fabric_usable_width(100, 50, 0, &width, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_SELVAGE);
    ck_assert_int_eq(problem.limit, 49);
    ck_status(muslin_fabric_usable_width(101, 51, 0, &width, NULL), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(width, 77);
}
END_TEST

START_TEST(widths_out_of_range_are_refused)
{
    struct muslin_problem problem = PROBLEM;
    muslin_len width = 77;
    const muslin_len outside[] = { 0, -1, MUSLIN_SIZE_MAX + 1, INT64_MIN, INT64_MAX };
    for (size_t i = 0; i < 5; i++) {
        ck_status(muslin_fabric_usable_width(outside[i], 0, 0, &width, &problem), MUSLIN_ERR_RANGE);
        ck_assert_int_eq(problem.argument, MUSLIN_ARG_LABELLED_WIDTH);
    }
    ck_status(muslin_fabric_usable_width(100, -1, 0, &width, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_SELVAGE);
    ck_status(muslin_fabric_usable_width(100, 0, -1, &width, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_SHRINKAGE);
    ck_status(muslin_fabric_usable_width(100, 0, 1000000, &width, NULL), MUSLIN_ERR_RANGE);
    ck_status(muslin_fabric_usable_width(100, 0, 0, NULL, &problem), MUSLIN_ERR_NULL);
    ck_assert_int_eq(problem.limit, 0);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_OUTPUT);
    ck_assert_int_eq(width, 77);
    ck_assert_int_eq(usable(MUSLIN_SIZE_MAX, 0, 0), MUSLIN_SIZE_MAX);
}
END_TEST

/* ---- purchase -------------------------------------------------------------------------------------------------- */

static struct muslin_purchase_spec need_of(muslin_len needed)
{
    struct muslin_purchase_spec spec = MUSLIN_PURCHASE_SPEC_INIT;
    spec.needed = needed;
    return spec;
}

static struct muslin_purchase bought_for(struct muslin_purchase_spec spec)
{
    struct muslin_purchase out = { 0 };
    out.size = (uint32_t)sizeof out;
    ck_ok(muslin_fabric_purchase(&spec, &out, NULL));
    return out;
}

START_TEST(a_hundred_and_twelve_inches_are_three_and_an_eighth_yards)
{
    /* Mathematically challenged: 80 x 56 backing (public forum, 2017): 112 in = 3.11 yd, 3 1/8 or 3 1/4 yd */
    struct muslin_purchase_spec spec = need_of(WHOLE_IN(112));
    struct muslin_purchase eighths = bought_for(spec);
    ck_assert_int_eq(eighths.needed, WHOLE_IN(112));
    ck_assert_int_eq(eighths.bought, IN(112, 1, 2));
    ck_assert_int_eq(eighths.steps, 25);
    ck_assert_int_eq(eighths.spare, IN(0, 1, 2));
    ck_assert_int_eq(eighths.less_by, WHOLE_IN(4));
    spec.step = WHOLE_IN(9);
    ck_assert_int_eq(bought_for(spec).bought, WHOLE_IN(117));
}
END_TEST

START_TEST(shrinkage_divides_by_what_is_left)
{
    /* How to make a quilt finish at a certain size (blog, 2020): a sample shrank from 20 to 18, so make 100 for 90 */
    struct muslin_purchase_spec spec = need_of(WHOLE_IN(90));
    spec.shrinkage = 100000;
    ck_assert_int_eq(bought_for(spec).unshrunk, WHOLE_IN(100));
}
END_TEST

START_TEST(what_was_bought_still_suffices_when_it_has_shrunk)
{
    uint64_t state = 20;
    int right = 1;
    for (int i = 0; i < DRAWS; i++) {
        struct muslin_purchase_spec spec = need_of(draw_from(&state, 1, MUSLIN_SIZE_MAX));
        spec.shrinkage = (int32_t)draw_from(&state, 0, 500000);
        struct muslin_purchase out = { 0 };
        out.size = (uint32_t)sizeof out;
        right = right && muslin_fabric_purchase(&spec, &out, NULL) == MUSLIN_OK;
        int64_t left_of_million = MUSLIN_PPM - spec.shrinkage;
        right = right && out.unshrunk * left_of_million >= spec.needed * MUSLIN_PPM;
        right = right && (out.unshrunk - 1) * left_of_million < spec.needed * MUSLIN_PPM;
    }
    ck_assert(right);
}
END_TEST

START_TEST(the_share_is_added_before_the_fixed_extra)
{
    /* by hand: 100 in + 10 % = 110 in, + 2 in = 112 in */
    struct muslin_purchase_spec spec = need_of(WHOLE_IN(100));
    spec.extra_share = 100000;
    spec.extra = WHOLE_IN(2);
    ck_assert_int_eq(bought_for(spec).with_extra, WHOLE_IN(112));
    /* a share of a tick is a whole tick: 7 + 0.7 + 1 */
    spec = need_of(7);
    spec.extra_share = 100000;
    spec.extra = 1;
    ck_assert_int_eq(bought_for(spec).with_extra, 9);
}
END_TEST

START_TEST(metric_and_third_yard_steps_are_whole_ticks)
{
    struct muslin_purchase_spec spec = need_of(1001 * MUSLIN_TICKS_PER_MM);
    spec.step = 100 * MUSLIN_TICKS_PER_MM;
    ck_assert_int_eq(bought_for(spec).bought, 1100 * MUSLIN_TICKS_PER_MM);
    spec.step = 250 * MUSLIN_TICKS_PER_MM;
    ck_assert_int_eq(bought_for(spec).bought, 1250 * MUSLIN_TICKS_PER_MM);
    spec = need_of(WHOLE_IN(25));
    spec.step = WHOLE_IN(12);
    ck_assert_int_eq(bought_for(spec).bought, WHOLE_IN(36));
}
END_TEST

START_TEST(nothing_needed_is_nothing_bought)
{
    struct muslin_purchase out = bought_for(need_of(0));
    ck_assert_int_eq(out.bought, 0);
    ck_assert_int_eq(out.steps, 0);
    ck_assert_int_eq(out.spare, 0);
    ck_assert_int_eq(out.less_by, 0);
}
END_TEST

START_TEST(a_step_is_saved_exactly_when_the_need_falls_by_the_slack)
{
    uint64_t state = 21;
    int right = 1;
    for (int i = 0; i < DRAWS; i++) {
        struct muslin_purchase_spec spec = need_of(draw_from(&state, 1, 400000));
        spec.step = draw_from(&state, 1, 50000);
        struct muslin_purchase out = bought_for(spec);
        struct muslin_purchase_spec less = need_of(spec.needed - out.less_by);
        struct muslin_purchase_spec not_less = need_of(spec.needed - out.less_by + 1);
        struct muslin_purchase_spec more = need_of(spec.needed + out.spare);
        struct muslin_purchase_spec too_much = need_of(spec.needed + out.spare + 1);
        less.step = not_less.step = more.step = too_much.step = spec.step;
        right = right && out.bought - spec.needed == out.spare && out.steps * spec.step == out.bought;
        right = right && bought_for(less).steps == out.steps - 1 && bought_for(not_less).steps == out.steps;
        right = right && bought_for(more).steps == out.steps && bought_for(too_much).steps == out.steps + 1;
    }
    ck_assert(right);
}
END_TEST

START_TEST(the_largest_purchase_does_not_overflow)
{
    struct muslin_purchase_spec spec = need_of(MUSLIN_SIZE_MAX);
    spec.shrinkage = 999999;
    spec.extra_share = 10000000;
    spec.extra = MUSLIN_SIZE_MAX;
    spec.step = MUSLIN_SIZE_MAX;
    struct muslin_purchase out = bought_for(spec);
    /* 2^30 x 10^6 / 1, eleven times that, and 2^30 more: a whole number of steps of 2^30 */
    ck_assert_int_eq(out.unshrunk, MUSLIN_SIZE_MAX * 1000000);
    ck_assert_int_eq(out.with_extra, MUSLIN_SIZE_MAX * 11000001);
    ck_assert_int_eq(out.steps, 11000001);
    ck_assert_int_eq(out.spare, 0);
    ck_assert_int_eq(out.less_by, MUSLIN_SIZE_MAX);
}
END_TEST

static void ck_purchase_refused(struct muslin_purchase_spec spec, int32_t argument, int64_t limit)
{
    struct muslin_problem problem = PROBLEM;
    struct muslin_purchase out = { 0 };
    out.size = (uint32_t)sizeof out;
    ck_status(muslin_fabric_purchase(&spec, &out, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.argument, argument);
    ck_assert_int_eq(problem.limit, limit);
    ck_assert_int_eq(out.bought, 0);
}

START_TEST(a_purchase_out_of_range_is_refused)
{
    ck_purchase_refused(need_of(-1), MUSLIN_ARG_CLOTH_LENGTH, 0);
    ck_purchase_refused(need_of(MUSLIN_SIZE_MAX + 1), MUSLIN_ARG_CLOTH_LENGTH, MUSLIN_SIZE_MAX);
    struct muslin_purchase_spec spec = need_of(1);
    spec.extra = -1;
    ck_purchase_refused(spec, MUSLIN_ARG_EXTRA, 0);
    spec = need_of(1);
    spec.step = 0;
    ck_purchase_refused(spec, MUSLIN_ARG_STEP, 1);
    spec = need_of(1);
    spec.shrinkage = 1000000;
    ck_purchase_refused(spec, MUSLIN_ARG_SHRINKAGE, 999999);
    spec.shrinkage = -1;
    ck_purchase_refused(spec, MUSLIN_ARG_SHRINKAGE, 0);
    spec = need_of(1);
    spec.extra_share = 10000001;
    ck_purchase_refused(spec, MUSLIN_ARG_EXTRA_SHARE, 10000000);
    spec.extra_share = -1;
    ck_purchase_refused(spec, MUSLIN_ARG_EXTRA_SHARE, 0);
}
END_TEST

/* ---- pieces from cloth ----------------------------------------------------------------------------------------- */

static struct muslin_cloth_spec cloth_of(muslin_len width, muslin_len length, muslin_len piece_width,
                                         muslin_len piece_length)
{
    struct muslin_cloth_spec spec = MUSLIN_CLOTH_SPEC_INIT;
    spec.width = width;
    spec.length = length;
    spec.piece_width = piece_width;
    spec.piece_length = piece_length;
    return spec;
}

static struct muslin_cloth_pieces pieces_from(struct muslin_cloth_spec spec)
{
    struct muslin_cloth_pieces out = { 0 };
    out.size = (uint32_t)sizeof out;
    ck_ok(muslin_fabric_pieces(&spec, &out, NULL));
    return out;
}

static int64_t squares(muslin_len width, muslin_len length, muslin_len side)
{
    return pieces_from(cloth_of(width, length, side, side)).pieces;
}

START_TEST(squares_from_a_fat_quarter_are_as_the_charts_say)
{
    /* Number of squares from a fat quarter (blog, 2011, and a handout): 18 x 22 in */
    ck_assert_int_eq(squares(WHOLE_IN(22), WHOLE_IN(18), IN(2, 1, 2)), 56);
    ck_assert_int_eq(squares(WHOLE_IN(22), WHOLE_IN(18), IN(3, 1, 2)), 30);
    ck_assert_int_eq(squares(WHOLE_IN(22), WHOLE_IN(18), WHOLE_IN(5)), 12);
    /* Fat quarter conversion (public forum): only 9 where it is 19 in wide */
    ck_assert_int_eq(squares(WHOLE_IN(19), WHOLE_IN(18), WHOLE_IN(5)), 9);
}
END_TEST

START_TEST(a_ten_inch_square_gives_four_fives_or_sixteen_two_and_a_halves)
{
    /* Cutting up a 10 inch square (teacher's blog) */
    ck_assert_int_eq(squares(WHOLE_IN(10), WHOLE_IN(10), WHOLE_IN(5)), 4);
    ck_assert_int_eq(squares(WHOLE_IN(10), WHOLE_IN(10), IN(2, 1, 2)), 16);
    ck_assert_int_eq(pieces_from(cloth_of(WHOLE_IN(10), WHOLE_IN(10), IN(2, 1, 2), WHOLE_IN(10))).pieces, 4);
}
END_TEST

START_TEST(charts_that_contradict_themselves_are_not_followed)
{
    /* Math charts page (M. Hohn, 2002) prints 35 squares of 7 in from 42 x 36 in, arithmetic gives 6 x 5; How many
     * squares in a yard?! (B. Hunter, 2005) prints 25 squares of 8 in from a yard of 45 in, arithmetic gives 5 x 4 */
    ck_assert_int_eq(squares(WHOLE_IN(42), WHOLE_IN(36), WHOLE_IN(7)), 30);
    ck_assert_int_eq(squares(WHOLE_IN(45), WHOLE_IN(36), WHOLE_IN(8)), 20);
}
END_TEST

START_TEST(a_handout_that_straightens_the_cloth_gets_one_strip_less)
{
    /* a class handout (with Number of squares from a fat quarter) prints 13 strips of 2 1/2 in from a yard, arithmetic
     * gives 14 */
    struct muslin_cloth_spec spec = cloth_of(WHOLE_IN(40), WHOLE_IN(36), WHOLE_IN(40), IN(2, 1, 2));
    ck_assert_int_eq(pieces_from(spec).along, 14);
    spec.loss_along = WHOLE_IN(2);
    ck_assert_int_eq(pieces_from(spec).along, 13);
}
END_TEST

START_TEST(losses_are_taken_off_each_side_once)
{
    struct muslin_cloth_spec spec = cloth_of(WHOLE_IN(21), WHOLE_IN(16), WHOLE_IN(5), WHOLE_IN(5));
    spec.loss_across = WHOLE_IN(1);
    spec.loss_along = IN(0, 1, 2);
    struct muslin_cloth_pieces out = pieces_from(spec);
    ck_assert_int_eq(out.across, 4);
    ck_assert_int_eq(out.along, 3);
    ck_assert_int_eq(out.left_across, 0);
    ck_assert_int_eq(out.left_along, IN(0, 1, 2));
    ck_assert_int_eq(out.warnings, MUSLIN_WARN_NO_SLACK);
}
END_TEST

/* How many pieces fit on one side, found by laying them down one after the other. */
static int64_t laid_down(muslin_len side, muslin_len loss, muslin_len piece)
{
    int64_t pieces = 0;
    for (muslin_len at = loss + piece; at <= side; at += piece)
        pieces++;
    return pieces;
}

static struct muslin_cloth_spec draw_cloth(uint64_t *state)
{
    struct muslin_cloth_spec spec = cloth_of(draw_from(state, 0, 60), draw_from(state, 0, 60),
                                             draw_from(state, 1, 25), draw_from(state, 1, 25));
    spec.loss_across = draw_from(state, 0, 9);
    spec.loss_along = draw_from(state, 0, 9);
    return spec;
}

static int64_t columns_at(struct muslin_cloth_spec spec, muslin_len change)
{
    spec.width += change;
    return pieces_from(spec).across;
}

static int64_t rows_at(struct muslin_cloth_spec spec, muslin_len change)
{
    spec.length += change;
    return pieces_from(spec).along;
}

START_TEST(pieces_are_counted_as_if_laid_down_one_by_one)
{
    uint64_t state = 22;
    int right = 1;
    for (int i = 0; i < DRAWS; i++) {
        struct muslin_cloth_spec s = draw_cloth(&state);
        struct muslin_cloth_pieces out = pieces_from(s);
        right = right && out.across == laid_down(s.width, s.loss_across, s.piece_width);
        right = right && out.along == laid_down(s.length, s.loss_along, s.piece_length);
        right = right && out.pieces == out.across * out.along && out.turned == 0;
    }
    ck_assert(right);
}
END_TEST

START_TEST(a_column_or_row_is_lost_one_tick_beyond_the_slack)
{
    uint64_t state = 23;
    int right = 1;
    int64_t tried = 0;
    for (int i = 0; i < DRAWS; i++) {
        struct muslin_cloth_spec s = draw_cloth(&state);
        struct muslin_cloth_pieces out = pieces_from(s);
        if (out.pieces == 0) {
            right = right && out.narrower_by == 0 && out.shorter_by == 0 && out.warnings == 0;
            continue;
        }
        tried++;
        right = right && columns_at(s, -out.narrower_by) == out.across;
        right = right && columns_at(s, -out.narrower_by - 1) == out.across - 1;
        right = right && rows_at(s, -out.shorter_by) == out.along && rows_at(s, -out.shorter_by - 1) == out.along - 1;
        uint32_t expected = out.narrower_by == 0 || out.shorter_by == 0 ? MUSLIN_WARN_NO_SLACK : 0;
        right = right && out.warnings == expected;
    }
    ck_assert(right);
    ck_assert_int_gt(tried, DRAWS / 2);
}
END_TEST

START_TEST(a_column_or_row_is_gained_at_exactly_the_growth_named)
{
    uint64_t state = 24;
    int right = 1;
    for (int i = 0; i < DRAWS; i++) {
        struct muslin_cloth_spec s = draw_cloth(&state);
        struct muslin_cloth_pieces out = pieces_from(s);
        right = right && columns_at(s, out.wider_for_one) == out.across + 1;
        right = right && columns_at(s, out.wider_for_one - 1) == out.across;
        right = right && rows_at(s, out.longer_for_one) == out.along + 1;
        right = right && rows_at(s, out.longer_for_one - 1) == out.along;
    }
    ck_assert(right);
}
END_TEST

START_TEST(what_is_left_over_is_cloth_without_pieces_and_loss)
{
    uint64_t state = 25;
    int right = 1;
    for (int i = 0; i < DRAWS; i++) {
        struct muslin_cloth_spec s = draw_cloth(&state);
        struct muslin_cloth_pieces out = pieces_from(s);
        muslin_len across = s.width - s.loss_across - out.across * s.piece_width;
        muslin_len along = s.length - s.loss_along - out.along * s.piece_length;
        right = right && out.left_across == (across < 0 ? 0 : across);
        right = right && out.left_along == (along < 0 ? 0 : along);
    }
    ck_assert(right);
}
END_TEST

START_TEST(pieces_that_may_turn_lie_the_better_way)
{
    uint64_t state = 26;
    int right = 1;
    int64_t turned = 0;
    for (int i = 0; i < DRAWS; i++) {
        struct muslin_cloth_spec straight = draw_cloth(&state);
        struct muslin_cloth_spec quarter = straight;
        struct muslin_cloth_spec either = straight;
        quarter.piece_width = straight.piece_length;
        quarter.piece_length = straight.piece_width;
        either.flags = MUSLIN_CLOTH_MAY_TURN;
        struct muslin_cloth_pieces one = pieces_from(straight);
        struct muslin_cloth_pieces other = pieces_from(quarter);
        struct muslin_cloth_pieces best = pieces_from(either);
        right = right && best.turned == (other.pieces > one.pieces);
        other.turned = 1;
        right = right && memcmp(&best, best.turned ? &other : &one, sizeof best) == 0;
        turned += best.turned;
    }
    ck_assert(right);
    ck_assert_int_gt(turned, DRAWS / 10);
}
END_TEST

START_TEST(turning_helps_where_it_should)
{
    /* by hand: 9 x 4 in from 10 x 18: 1 x 4 straight, 2 x 2 turned, and a tie stays; from 8 x 18: 0 against 2 x 2 */
    struct muslin_cloth_spec tie = cloth_of(WHOLE_IN(10), WHOLE_IN(18), WHOLE_IN(9), WHOLE_IN(4));
    struct muslin_cloth_spec better = cloth_of(WHOLE_IN(8), WHOLE_IN(18), WHOLE_IN(9), WHOLE_IN(4));
    tie.flags = better.flags = MUSLIN_CLOTH_MAY_TURN;
    ck_assert_int_eq(pieces_from(tie).turned, 0);
    ck_assert_int_eq(pieces_from(better).turned, 1);
    ck_assert_int_eq(pieces_from(better).pieces, 4);
    ck_assert_int_eq(pieces_from(better).across, 2);
}
END_TEST

START_TEST(the_largest_cloth_gives_pieces_of_a_tick)
{
    struct muslin_cloth_pieces out = pieces_from(cloth_of(MUSLIN_SIZE_MAX, MUSLIN_SIZE_MAX, 1, 1));
    ck_assert_int_eq(out.pieces, MUSLIN_SIZE_MAX * MUSLIN_SIZE_MAX);
    ck_assert_int_eq(out.wider_for_one, 1);
    struct muslin_cloth_spec lost = cloth_of(0, 0, MUSLIN_SIZE_MAX, MUSLIN_SIZE_MAX);
    lost.loss_across = MUSLIN_SIZE_MAX;
    ck_assert_int_eq(pieces_from(lost).pieces, 0);
    ck_assert_int_eq(pieces_from(lost).left_across, 0);
    ck_assert_int_eq(pieces_from(lost).wider_for_one, 2 * MUSLIN_SIZE_MAX);
}
END_TEST

START_TEST(a_bad_measure_of_cloth_is_named_with_its_place)
{
    const int32_t argument[] = { MUSLIN_ARG_USABLE_WIDTH, MUSLIN_ARG_CLOTH_LENGTH, MUSLIN_ARG_CUT,
                                 MUSLIN_ARG_CUT,          MUSLIN_ARG_END_LOSS,     MUSLIN_ARG_END_LOSS };
    const int64_t at[] = { 0, 0, 0, 1, 0, 1 };
    for (int member = 0; member < 6; member++) {
        struct muslin_problem problem = PROBLEM;
        struct muslin_cloth_spec s = cloth_of(100, 100, 10, 10);
        muslin_len *members[] = { &s.width,        &s.length,      &s.piece_width,
                                  &s.piece_length, &s.loss_across, &s.loss_along };
        struct muslin_cloth_pieces out = { 0 };
        out.size = (uint32_t)sizeof out;
        *members[member] = -1;
        ck_status(muslin_fabric_pieces(&s, &out, &problem), MUSLIN_ERR_RANGE);
        ck_assert_int_eq(problem.argument, argument[member]);
        ck_assert_int_eq(problem.at, at[member]);
        *members[member] = MUSLIN_SIZE_MAX + 1;
        ck_status(muslin_fabric_pieces(&s, &out, NULL), MUSLIN_ERR_RANGE);
        *members[member] = 0;
        muslin_status of_zero = muslin_fabric_pieces(&s, &out, NULL);
        ck_assert_int_eq(of_zero, argument[member] == MUSLIN_ARG_CUT ? MUSLIN_ERR_RANGE : MUSLIN_OK);
    }
}
END_TEST

/* ---- strips ---------------------------------------------------------------------------------------------------- */

static struct muslin_strips_spec strips_of(int64_t pieces, muslin_len piece_across, muslin_len strip_cut,
                                           muslin_len usable_width)
{
    struct muslin_strips_spec spec = MUSLIN_STRIPS_SPEC_INIT;
    spec.pieces = pieces;
    spec.piece_across = piece_across;
    spec.strip_cut = strip_cut;
    spec.usable_width = usable_width;
    return spec;
}

static struct muslin_strips strips_for(struct muslin_strips_spec spec)
{
    struct muslin_strips out = { 0 };
    out.size = (uint32_t)sizeof out;
    ck_ok(muslin_fabric_strips(&spec, &out, NULL));
    return out;
}

START_TEST(fifty_two_squares_of_four_take_five_strips)
{
    /* 52 4-inch and 20 3-inch squares (public forum): 44 in wide, 5 strips of 4 and 2 of 3, 26 in together; at 40 in
     * 10 and 13 a strip, 6 + 2 strips */
    struct muslin_strips fours = strips_for(strips_of(52, WHOLE_IN(4), WHOLE_IN(4), WHOLE_IN(44)));
    struct muslin_strips threes = strips_for(strips_of(20, WHOLE_IN(3), WHOLE_IN(3), WHOLE_IN(44)));
    ck_assert_int_eq(fours.per_strip, 11);
    ck_assert_int_eq(fours.strips, 5);
    ck_assert_int_eq(threes.per_strip, 14);
    ck_assert_int_eq(threes.strips, 2);
    ck_assert_int_eq(fours.length + threes.length, WHOLE_IN(26));
    ck_assert_int_eq(strips_for(strips_of(52, WHOLE_IN(4), WHOLE_IN(4), WHOLE_IN(40))).strips, 6);
    ck_assert_int_eq(strips_for(strips_of(20, WHOLE_IN(3), WHOLE_IN(3), WHOLE_IN(40))).per_strip, 13);
}
END_TEST

START_TEST(a_lesson_with_five_units_a_width_takes_twenty_three_strips)
{
    /* Start quilting, lesson two (M. Hohn): units 3 7/8 x 7 3/4 in, 112 of them, 42 in wide: 5 a width, 23 strips */
    struct muslin_strips out = strips_for(strips_of(112, IN(7, 3, 4), IN(3, 7, 8), WHOLE_IN(42)));
    ck_assert_int_eq(out.per_strip, 5);
    ck_assert_int_eq(out.strips, 23);
    ck_assert_int_eq(out.spare_pieces, 3);
}
END_TEST

START_TEST(losses_of_strips_count_once_a_strip_and_once_a_cloth)
{
    /* by hand: (40 - 1/2) / 6 1/2 = 6.08: 6 a strip, 1/2 in left; 20 / 6 is 4 strips; 4 x 2 1/2 + 3/4 = 10 3/4 in */
    struct muslin_strips_spec spec = strips_of(20, IN(6, 1, 2), IN(2, 1, 2), WHOLE_IN(40));
    spec.end_loss = IN(0, 1, 2);
    spec.straightening = IN(0, 3, 4);
    struct muslin_strips out = strips_for(spec);
    ck_assert_int_eq(out.per_strip, 6);
    ck_assert_int_eq(out.left_per_strip, IN(0, 1, 2));
    ck_assert_int_eq(out.length, IN(10, 3, 4));
    ck_assert_int_eq(out.spare_pieces, 4);
}
END_TEST

/* Cuts strip after strip until there are enough pieces. */
static int64_t strips_cut_one_by_one(int64_t pieces, int64_t per_strip)
{
    int64_t strips = 0;
    for (int64_t cut = 0; cut < pieces; cut += per_strip)
        strips++;
    return strips;
}

START_TEST(strips_slack_and_gain_are_exact_to_the_tick)
{
    uint64_t state = 27;
    int right = 1;
    for (int i = 0; i < DRAWS; i++) {
        struct muslin_strips_spec s = strips_of(draw_from(&state, 0, 300), draw_from(&state, 1, 25), 20320,
                                                draw_from(&state, 40, 90));
        s.end_loss = draw_from(&state, 0, 9);
        struct muslin_strips out = strips_for(s);
        right = right && out.per_strip == laid_down(s.usable_width, s.end_loss, s.piece_across);
        right = right && out.strips == strips_cut_one_by_one(s.pieces, out.per_strip);
        right = right && out.spare_pieces == out.strips * out.per_strip - s.pieces;
        muslin_len narrower = s.usable_width - out.narrower_by;
        muslin_len wider = s.usable_width + out.wider_for_one;
        right = right && laid_down(narrower, s.end_loss, s.piece_across) == out.per_strip;
        right = right && laid_down(narrower - 1, s.end_loss, s.piece_across) == out.per_strip - 1;
        right = right && laid_down(wider, s.end_loss, s.piece_across) == out.per_strip + 1;
        right = right && laid_down(wider - 1, s.end_loss, s.piece_across) == out.per_strip;
        right = right && out.warnings == (out.narrower_by == 0 ? MUSLIN_WARN_NO_SLACK : 0);
    }
    ck_assert(right);
}
END_TEST

START_TEST(no_pieces_wanted_are_no_strips)
{
    struct muslin_strips out = strips_for(strips_of(0, WHOLE_IN(4), WHOLE_IN(4), WHOLE_IN(40)));
    ck_assert_int_eq(out.strips, 0);
    ck_assert_int_eq(out.length, 0);
    ck_assert_int_eq(out.spare_pieces, 0);
}
END_TEST

START_TEST(a_strip_too_short_for_one_piece_has_no_yield)
{
    struct muslin_problem problem = PROBLEM;
    struct muslin_strips_spec spec = strips_of(10, WHOLE_IN(20), WHOLE_IN(4), WHOLE_IN(20));
    struct muslin_strips out = strips_for(spec);
    ck_assert_int_eq(out.per_strip, 1);
    out.strips = 77;
    spec.end_loss = 1;
    ck_status(muslin_fabric_strips(&spec, &out, &problem), MUSLIN_ERR_NO_YIELD);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_USABLE_WIDTH);
    ck_assert_int_eq(problem.limit, WHOLE_IN(20) + 1);
    ck_assert_int_eq(out.strips, 77);
    spec.usable_width = problem.limit;
    ck_ok(muslin_fabric_strips(&spec, &out, NULL));
    spec.usable_width = 0;
    ck_status(muslin_fabric_strips(&spec, &out, NULL), MUSLIN_ERR_NO_YIELD);
}
END_TEST

START_TEST(the_longest_pile_of_strips_fits)
{
    struct muslin_strips_spec spec = strips_of(MUSLIN_COUNT_MAX, MUSLIN_SIZE_MAX, MUSLIN_SIZE_MAX, MUSLIN_SIZE_MAX);
    spec.straightening = MUSLIN_SIZE_MAX;
    ck_assert_int_eq(strips_for(spec).length, (MUSLIN_COUNT_MAX + 1) * MUSLIN_SIZE_MAX);
}
END_TEST

START_TEST(a_bad_measure_of_strips_is_named_with_its_place)
{
    const int32_t argument[] = { MUSLIN_ARG_PIECES,       MUSLIN_ARG_CUT,      MUSLIN_ARG_STRIP_CUT,
                                 MUSLIN_ARG_USABLE_WIDTH, MUSLIN_ARG_END_LOSS, MUSLIN_ARG_END_LOSS };
    const int64_t at[] = { 0, 0, 0, 0, 0, 1 };
    for (int member = 0; member < 6; member++) {
        struct muslin_problem problem = PROBLEM;
        struct muslin_strips_spec s = strips_of(10, 100, 100, 1000);
        int64_t *members[] = { &s.pieces,       &s.piece_across, &s.strip_cut,
                               &s.usable_width, &s.end_loss,     &s.straightening };
        struct muslin_strips out = { 0 };
        out.size = (uint32_t)sizeof out;
        *members[member] = -1;
        ck_status(muslin_fabric_strips(&s, &out, &problem), MUSLIN_ERR_RANGE);
        ck_assert_int_eq(problem.argument, argument[member]);
        ck_assert_int_eq(problem.at, at[member]);
        *members[member] = INT64_MAX;
        ck_status(muslin_fabric_strips(&s, &out, NULL), MUSLIN_ERR_RANGE);
    }
    struct muslin_strips out = { 0 };
    out.size = (uint32_t)sizeof out;
    struct muslin_strips_spec no_cut = strips_of(10, 0, 100, 1000);
    ck_status(muslin_fabric_strips(&no_cut, &out, NULL), MUSLIN_ERR_RANGE);
    no_cut = strips_of(10, 100, 0, 1000);
    ck_status(muslin_fabric_strips(&no_cut, &out, NULL), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(out.strips, 0);
}
END_TEST

/* ---- area bound ------------------------------------------------------------------------------------------------ */

static muslin_len bound_of(int64_t area, muslin_len width)
{
    muslin_len length = -1;
    ck_ok(muslin_fabric_area_bound(area, width, &length, NULL));
    return length;
}

START_TEST(a_yard_of_36_inch_cloth_has_1296_square_inches)
{
    ck_assert_int_eq(bound_of(2 * WHOLE_IN(1296) * WHOLE_IN(1), WHOLE_IN(36)), WHOLE_IN(36));
    ck_assert_int_eq(bound_of(2 * WHOLE_IN(1296) * WHOLE_IN(1) + 1, WHOLE_IN(36)), WHOLE_IN(36) + 1);
    ck_assert_int_eq(bound_of(0, 1), 0);
    ck_assert_int_eq(bound_of(MUSLIN_LENGTH_MAX, 1), INT64_C(1) << 61);
    ck_assert_int_eq(bound_of(1, MUSLIN_SIZE_MAX), 1);
}
END_TEST

START_TEST(strips_never_take_less_cloth_than_their_area)
{
    uint64_t state = 28;
    int right = 1;
    for (int i = 0; i < 2000; i++) {
        struct muslin_strips_spec s = strips_of(draw_from(&state, 1, 300), draw_from(&state, 1, 8128 * 20),
                                                draw_from(&state, 1, 8128 * 12), draw_from(&state, 8128 * 20, 400000));
        int64_t area = 2 * s.pieces * s.piece_across * s.strip_cut;
        right = right && bound_of(area, s.usable_width) <= strips_for(s).length;
    }
    ck_assert(right);
}
END_TEST

START_TEST(an_area_bound_out_of_range_is_refused)
{
    struct muslin_problem problem = PROBLEM;
    muslin_len length = 77;
    ck_status(muslin_fabric_area_bound(-1, 1, &length, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_AREA);
    ck_status(muslin_fabric_area_bound(MUSLIN_LENGTH_MAX + 1, 1, &length, NULL), MUSLIN_ERR_RANGE);
    ck_status(muslin_fabric_area_bound(1, 0, &length, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_USABLE_WIDTH);
    ck_status(muslin_fabric_area_bound(1, MUSLIN_SIZE_MAX + 1, &length, NULL), MUSLIN_ERR_RANGE);
    ck_status(muslin_fabric_area_bound(1, 1, NULL, &problem), MUSLIN_ERR_NULL);
    ck_assert_int_eq(problem.limit, 0);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_OUTPUT);
    ck_assert_int_eq(length, 77);
}
END_TEST

/* ---- struct rules ---------------------------------------------------------------------------------------------- */

static muslin_status call_purchase(const void *spec, void *out, struct muslin_problem *problem)
{
    return muslin_fabric_purchase(spec, out, problem);
}

static muslin_status call_pieces(const void *spec, void *out, struct muslin_problem *problem)
{
    return muslin_fabric_pieces(spec, out, problem);
}

static muslin_status call_strips(const void *spec, void *out, struct muslin_problem *problem)
{
    return muslin_fabric_strips(spec, out, problem);
}

START_TEST(every_struct_of_cloth_keeps_the_rules)
{
    struct muslin_purchase_spec buy = need_of(WHOLE_IN(100));
    struct muslin_cloth_spec cloth = cloth_of(WHOLE_IN(40), WHOLE_IN(36), WHOLE_IN(5), WHOLE_IN(6));
    struct muslin_strips_spec strips = strips_of(50, WHOLE_IN(4), WHOLE_IN(4), WHOLE_IN(40));
    cloth.flags = MUSLIN_CLOTH_MAY_TURN;
    const struct ruled all[] = { RULED(call_purchase, buy, muslin_purchase),
                                 RULED(call_pieces, cloth, muslin_cloth_pieces),
                                 RULED(call_strips, strips, muslin_strips) };
    for (size_t i = 0; i < sizeof all / sizeof all[0]; i++)
        ck_struct_rules(&all[i]);
    ck_no_flag_known(&all[0]);
    ck_no_flag_known(&all[2]);
}
END_TEST

INIT_CALL(purchase)
INIT_CALL(cloth)
INIT_CALL(strips)

START_TEST(initial_values_of_cloth_are_those_of_the_macros)
{
    const struct muslin_purchase_spec buy = MUSLIN_PURCHASE_SPEC_INIT;
    const struct muslin_cloth_spec cloth = MUSLIN_CLOTH_SPEC_INIT;
    const struct muslin_strips_spec strips = MUSLIN_STRIPS_SPEC_INIT;
    ck_init_rules(init_purchase, &buy, (uint32_t)sizeof buy);
    ck_init_rules(init_cloth, &cloth, (uint32_t)sizeof cloth);
    ck_init_rules(init_strips, &strips, (uint32_t)sizeof strips);
    ck_assert_int_eq(buy.step, IN(4, 1, 2));
    ck_assert_int_eq(cloth.width, MUSLIN_USABLE_WIDTH_USUAL);
    ck_assert_int_eq(cloth.length, WHOLE_IN(36));
    ck_assert_int_eq(strips.usable_width, WHOLE_IN(40));
}
END_TEST

static TCase *tcase_buying(void)
{
    TCase *buying = tcase_create("width and purchase");
    tcase_add_test(buying, both_selvages_come_off_the_label);
    tcase_add_test(buying, width_is_what_is_left_after_washing);
    tcase_add_test(buying, selvages_may_leave_a_single_tick_but_not_nothing);
    tcase_add_test(buying, widths_out_of_range_are_refused);
    tcase_add_test(buying, a_hundred_and_twelve_inches_are_three_and_an_eighth_yards);
    tcase_add_test(buying, shrinkage_divides_by_what_is_left);
    tcase_add_test(buying, what_was_bought_still_suffices_when_it_has_shrunk);
    tcase_add_test(buying, the_share_is_added_before_the_fixed_extra);
    tcase_add_test(buying, metric_and_third_yard_steps_are_whole_ticks);
    tcase_add_test(buying, nothing_needed_is_nothing_bought);
    tcase_add_test(buying, a_step_is_saved_exactly_when_the_need_falls_by_the_slack);
    tcase_add_test(buying, the_largest_purchase_does_not_overflow);
    tcase_add_test(buying, a_purchase_out_of_range_is_refused);
    return buying;
}

static TCase *tcase_cutting(void)
{
    TCase *cutting = tcase_create("pieces from cloth");
    tcase_add_test(cutting, squares_from_a_fat_quarter_are_as_the_charts_say);
    tcase_add_test(cutting, a_ten_inch_square_gives_four_fives_or_sixteen_two_and_a_halves);
    tcase_add_test(cutting, charts_that_contradict_themselves_are_not_followed);
    tcase_add_test(cutting, a_handout_that_straightens_the_cloth_gets_one_strip_less);
    tcase_add_test(cutting, losses_are_taken_off_each_side_once);
    tcase_add_test(cutting, pieces_are_counted_as_if_laid_down_one_by_one);
    tcase_add_test(cutting, a_column_or_row_is_lost_one_tick_beyond_the_slack);
    tcase_add_test(cutting, a_column_or_row_is_gained_at_exactly_the_growth_named);
    tcase_add_test(cutting, what_is_left_over_is_cloth_without_pieces_and_loss);
    tcase_add_test(cutting, pieces_that_may_turn_lie_the_better_way);
    tcase_add_test(cutting, turning_helps_where_it_should);
    tcase_add_test(cutting, the_largest_cloth_gives_pieces_of_a_tick);
    tcase_add_test(cutting, a_bad_measure_of_cloth_is_named_with_its_place);
    return cutting;
}

static TCase *tcase_strips(void)
{
    TCase *strips = tcase_create("strips and area");
    tcase_add_test(strips, fifty_two_squares_of_four_take_five_strips);
    tcase_add_test(strips, a_lesson_with_five_units_a_width_takes_twenty_three_strips);
    tcase_add_test(strips, losses_of_strips_count_once_a_strip_and_once_a_cloth);
    tcase_add_test(strips, strips_slack_and_gain_are_exact_to_the_tick);
    tcase_add_test(strips, no_pieces_wanted_are_no_strips);
    tcase_add_test(strips, a_strip_too_short_for_one_piece_has_no_yield);
    tcase_add_test(strips, the_longest_pile_of_strips_fits);
    tcase_add_test(strips, a_bad_measure_of_strips_is_named_with_its_place);
    tcase_add_test(strips, a_yard_of_36_inch_cloth_has_1296_square_inches);
    tcase_add_test(strips, strips_never_take_less_cloth_than_their_area);
    tcase_add_test(strips, an_area_bound_out_of_range_is_refused);
    tcase_add_test(strips, every_struct_of_cloth_keeps_the_rules);
    tcase_add_test(strips, initial_values_of_cloth_are_those_of_the_macros);
    return strips;
}

Suite *fabric_suite(void)
{
    Suite *suite = suite_create("fabric");
    suite_add_tcase(suite, tcase_buying());
    suite_add_tcase(suite, tcase_cutting());
    suite_add_tcase(suite, tcase_strips());
    suite_add_tcase(suite, tcase_stock());
    return suite;
}
