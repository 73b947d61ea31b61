/* test_rounds_frame.c - mitred frames: by hand, against borders, and by the geometry of their outlines.
 *
 * SPDX-License-Identifier: MIT */
#include "test_rounds.h"

INIT_CALL(frame)

START_TEST(init_call_gives_the_macros_bytes)
{
    const struct muslin_frame_spec spec = MUSLIN_FRAME_SPEC_INIT;
    ck_init_rules(init_frame, &spec, sizeof spec);
}
END_TEST

static struct muslin_frame_spec frame_of(muslin_len width, muslin_len height, muslin_len frame)
{
    struct muslin_frame_spec spec = MUSLIN_FRAME_SPEC_INIT;
    spec.opening_width = width;
    spec.opening_height = height;
    spec.frame_width = frame;
    return spec;
}

static struct muslin_frame pieces_of(const struct muslin_frame_spec *spec, muslin_len grid, int32_t direction)
{
    struct muslin_rounding_spec rounding = to_grid(grid, direction);
    struct muslin_frame frame = { .size = (uint32_t)sizeof frame };
    ck_ok(muslin_frame_pieces(spec, &rounding, &frame, NULL));
    return frame;
}

/* Long is 10 + 1.2071 in, short 6 + 0.2071 in. */
/* Example: a 6 in square opening, frame 2 in, 1/4 in seams, up to 1/8 in: strips cut 2 1/2 in, long 11 1/4 in, short
 * 6 1/4 in, and one strip of 37 1/2 in holds all four. */
START_TEST(a_two_inch_frame_round_six_inches)
{
    struct muslin_frame_spec spec = frame_of(WHOLE_IN(6), WHOLE_IN(6), WHOLE_IN(2));
    struct muslin_frame frame = pieces_of(&spec, IN(0, 1, 8), MUSLIN_DIRECTION_UP);
    ck_assert_int_eq(frame.cut_width, IN(2, 1, 2));
    ck_assert_int_eq(frame.top_long, IN(11, 1, 4));
    ck_assert_int_eq(frame.top_short, IN(6, 1, 4));
    ck_assert_int_eq(frame.side_long, IN(11, 1, 4));
    ck_assert_int_eq(frame.side_short, IN(6, 1, 4));
    ck_assert_int_eq(frame.finished_width, WHOLE_IN(10));
    ck_assert_int_eq(frame.finished_height, WHOLE_IN(10));
    ck_assert_int_eq(frame.unfinished_width, IN(10, 1, 2));
    ck_assert_int_eq(frame.unfinished_height, IN(10, 1, 2));
    /* 11 1/4 in less 11.207107 in is 348.64 ticks, down 348; 6 1/4 less 6.207107 is the same */
    ck_assert_int_eq(frame.top_long_error, 348);
    /* as cut: middles of 8 3/4 in, four of them, and 2 1/2 in for the slant; 40 in hold them */
    ck_assert_int_eq(frame.strip_length, IN(37, 1, 2));
    ck_assert_int_eq(frame.strips, 1);
    ck_assert_int_eq(frame.cloth_length, IN(2, 1, 2));
}
END_TEST

/* 8 x 12 in, frame 1 1/2 in, up to 1/16 in: long edges of 12.207 and 16.207 in, cut 12 1/4 and 16 1/4 in. Middles of
 * 10 1/4 and 14 1/4 in: 49 in for all, and 2 in more. 38 in beside the slant hold one of each. */
START_TEST(no_strip_across_holds_fifty_one_inches)
{
    struct muslin_frame_spec spec = frame_of(WHOLE_IN(8), WHOLE_IN(12), IN(1, 1, 2));
    struct muslin_frame frame = pieces_of(&spec, IN(0, 1, 16), MUSLIN_DIRECTION_UP);
    ck_assert_int_eq(frame.top_long, IN(12, 1, 4));
    ck_assert_int_eq(frame.side_long, IN(16, 1, 4));
    ck_assert_int_eq(frame.strip_length, WHOLE_IN(51));
    ck_assert_int_eq(frame.strips, 2);
    ck_assert_int_eq(frame.cloth_length, WHOLE_IN(4));
}
END_TEST

/* Without seams, round 6 x 10 in and 2 in wide: middles of 8 and 12 in, the strip 2 in longer than what lies on it. At
 * each usable width just what is needed, and a tick less; the same with the opening turned. */
START_TEST(strips_are_the_fewest_that_hold_the_pieces)
{
    const struct { muslin_len usable; int64_t strips; } steps[] = {
        { WHOLE_IN(42), 1 }, { WHOLE_IN(42) - 1, 2 }, /* all four: 40 and 2 in */
        { WHOLE_IN(22), 2 }, { WHOLE_IN(22) - 1, 3 }, /* a longer and a shorter: 20 and 2 */
        { WHOLE_IN(18), 3 }, { WHOLE_IN(18) - 1, 4 }, /* two shorter: 16 and 2 */
        { WHOLE_IN(14), 4 }, { WHOLE_IN(14) - 1, 0 }, /* a longer one: its long edge */
        { 0, 0 }
    };
    struct muslin_frame_spec spec = frame_of(WHOLE_IN(6), WHOLE_IN(10), WHOLE_IN(2));
    struct muslin_frame_spec turned = frame_of(WHOLE_IN(10), WHOLE_IN(6), WHOLE_IN(2));
    spec.allowance = turned.allowance = 0;
    for (size_t i = 0; i < COUNT_OF(steps); i++) {
        spec.usable_width = turned.usable_width = steps[i].usable;
        ck_assert_int_eq(pieces_of(&spec, 1, MUSLIN_DIRECTION_UP).strips, steps[i].strips);
        ck_assert_int_eq(pieces_of(&turned, 1, MUSLIN_DIRECTION_UP).strips, steps[i].strips);
        ck_assert_int_eq(pieces_of(&spec, 1, MUSLIN_DIRECTION_UP).cloth_length, steps[i].strips * WHOLE_IN(2));
    }
}
END_TEST

/* The sums of the mean widths: 2 (8 + 12) + 4 x 2 + 4 x 0.70711 + 2 1/2 = 53.3284 in. */
START_TEST(four_pieces_nest_in_one_strip)
{
    struct muslin_frame_spec spec = frame_of(WHOLE_IN(8), WHOLE_IN(12), WHOLE_IN(2));
    struct muslin_frame frame = pieces_of(&spec, 1, MUSLIN_DIRECTION_DOWN);
    /* 53.3284271 x 8128 = 433453.46; four long edges, each rounded down by less than a tick */
    ck_assert_int_le(frame.strip_length, 433453);
    ck_assert_int_gt(frame.strip_length, 433453 - 4);
    ck_assert_int_eq(frame.side_long - frame.top_long, WHOLE_IN(4));
    ck_assert_int_eq(frame.finished_height, WHOLE_IN(16));
    /* half of both edges of two tops and two sides, and the slant once */
    muslin_len middles = frame.top_long + frame.top_short + frame.side_long + frame.side_short;
    ck_assert_int_eq(frame.strip_length, middles + frame.cut_width);
}
END_TEST

/* A long edge is as long as a border's mitred piece on the raw edge of the opening, for every allowance and no take-up;
 * and its short edge is shorter by twice the cut width, for the ends are at 45 degrees. */
START_TEST(long_edges_agree_with_mitred_borders)
{
    uint64_t state = 5;
    for (int i = 0; i < 500; i++) {
        struct muslin_frame_spec spec = frame_of(draw_from(&state, 1, 900000), draw_from(&state, 1, 900000),
                                                 draw_from(&state, 1, 90000));
        spec.allowance = draw_from(&state, 0, 5000);
        struct muslin_frame frame = pieces_of(&spec, 1, MUSLIN_DIRECTION_UP);
        struct muslin_border_spec border_spec = MUSLIN_BORDER_SPEC_INIT;
        struct muslin_border border = { .size = (uint32_t)sizeof border };
        border_spec.unfinished_width = spec.opening_width + 2 * spec.allowance;
        border_spec.unfinished_length = spec.opening_height + 2 * spec.allowance;
        border_spec.finished_border = spec.frame_width;
        border_spec.allowance = spec.allowance;
        border_spec.style = MUSLIN_BORDER_STYLE_MITRED;
        ck_ok(muslin_border_plan(&border_spec, &border, NULL));
        ck_assert_int_eq(frame.top_long, border.top_cut_length);
        ck_assert_int_eq(frame.side_long, border.side_cut_length);
        ck_assert_int_eq(frame.cut_width, border.cut_width);
        ck_assert_int_eq(frame.unfinished_width, border.unfinished_width);
        ck_assert_int_eq(frame.top_long - frame.top_short, 2 * frame.cut_width);
    }
}
END_TEST

/* Without seams nothing is irrational: a 45 degree frame as one draws it. */
START_TEST(without_seams_the_pieces_are_the_drawing)
{
    struct muslin_frame_spec spec = frame_of(WHOLE_IN(6), WHOLE_IN(9), WHOLE_IN(2));
    spec.allowance = 0;
    struct muslin_frame frame = pieces_of(&spec, 1, MUSLIN_DIRECTION_UP);
    ck_assert_int_eq(frame.top_long, WHOLE_IN(10));
    ck_assert_int_eq(frame.top_short, WHOLE_IN(6));
    ck_assert_int_eq(frame.side_long, WHOLE_IN(13));
    ck_assert_int_eq(frame.side_short, WHOLE_IN(9));
    ck_assert_int_eq(frame.top_long_error, 0);
}
END_TEST

/* ---- outlines ---------------------------------------------------------------------------------------------------- */

enum { CORNERS = 16 };

static void outline_of(const struct muslin_frame_spec *spec, muslin_len grid, int32_t direction,
                       struct muslin_frame_corner *rows)
{
    struct muslin_rounding_spec rounding = to_grid(grid, direction);
    size_t count = 0;
    ck_ok(muslin_frame_outline(spec, &rounding, rows, sizeof *rows, CORNERS, &count, NULL));
    ck_assert_uint_eq(count, CORNERS);
}

/* Example: a 6 in square opening, frame 2 in, 1/4 in seams: the cut outline goes from 0, 0 over about 11.207, 0 and
 * 8.707, 2 1/2 to 2 1/2, 2 1/2. */
START_TEST(an_outline_goes_round_from_the_left_tip)
{
    struct muslin_frame_spec spec = frame_of(WHOLE_IN(6), WHOLE_IN(6), WHOLE_IN(2));
    struct muslin_frame_corner rows[CORNERS];
    /* thousandths of an inch, nearest: 8128 / 1000 is no whole number of ticks, so compare with the ticks */
    const muslin_len xs[] = { 0, 91091, 70771, 20320 }; /* 11.2071068 and 8.7071068 x 8128 = 91091.36 and 70771.36 */
    const muslin_len ys[] = { 0, 0, 20320, 20320 };
    outline_of(&spec, 1, MUSLIN_DIRECTION_NEAREST, rows);
    for (int i = 0; i < 4; i++) {
        ck_assert_int_eq(rows[i].piece, MUSLIN_FRAME_PIECE_TOP);
        ck_assert_int_eq(rows[i].line, MUSLIN_FRAME_LINE_CUT);
        ck_assert_int_eq(rows[i].x, xs[i]);
        ck_assert_int_eq(rows[i].y, ys[i]);
    }
    /* the finished line begins a quarter inch in, (1 + sqrt 2) / 4 in along: 0.6035534 x 8128 = 4905.68 */
    ck_assert_int_eq(rows[4].line, MUSLIN_FRAME_LINE_FINISHED);
    ck_assert_int_eq(rows[4].x, 4906);
    ck_assert_int_eq(rows[4].x_error, 0);
    ck_assert_int_eq(rows[4].y, 2032);
    ck_assert_int_eq(rows[5].x, 4906 + WHOLE_IN(10));
    ck_assert_int_eq(rows[6].x, 4906 + WHOLE_IN(8));
    ck_assert_int_eq(rows[6].y, 2032 + WHOLE_IN(2));
    ck_assert_int_eq(rows[7].x, 4906 + WHOLE_IN(2));
    for (int i = 8; i < 16; i++) {
        ck_assert_int_eq(rows[i].piece, MUSLIN_FRAME_PIECE_SIDE);
        ck_assert_int_eq(rows[i].line, rows[i - 8].line);
        ck_assert_int_eq(rows[i].x, rows[i - 8].x);
        ck_assert_int_eq(rows[i].y, rows[i - 8].y);
    }
}
END_TEST

/* Twice the distance of the finished end line from the raw one, squared: for a 45 degree line the distance along the
 * edge over sqrt 2. With m even it must be m / 2 within what rounding to a tick allows. */
static void ck_end_allowance(const struct muslin_frame_corner *cut, const struct muslin_frame_corner *finished,
                             muslin_len seam)
{
    int64_t along = (finished->x - finished->y) - (cut->x - cut->y);
    int64_t twice = 2 * along * along;
    ck_assert_int_ge(twice, (seam - 3) * (seam - 3));
    ck_assert_int_le(twice, (seam + 3) * (seam + 3));
}

START_TEST(finished_lines_lie_half_a_seam_inside_the_cut_ones)
{
    struct muslin_frame_spec spec = frame_of(WHOLE_IN(7), IN(9, 1, 2), IN(1, 3, 4));
    struct muslin_frame_corner rows[CORNERS];
    spec.take_up = 100;
    muslin_len seam = 2 * 2032 + 100;
    outline_of(&spec, 1, MUSLIN_DIRECTION_NEAREST, rows);
    for (int i = 0; i < CORNERS; i += 8) {
        muslin_len opening = i == 0 ? spec.opening_width : spec.opening_height;
        ck_end_allowance(&rows[i], &rows[i + 4], seam);
        ck_end_allowance(&rows[i + 3], &rows[i + 7], seam);
        /* the other end mirrors it */
        for (int at = 0; at < 8; at += 4) {
            ck_assert_int_le(llabs(rows[i + at].x + rows[i + at + 1].x - rows[i + 1].x), 1);
            ck_assert_int_le(llabs(rows[i + at + 2].x + rows[i + at + 3].x - rows[i + 1].x), 1);
        }
        ck_assert_int_eq(rows[i + 4].y, seam / 2);
        ck_assert_int_eq(rows[i + 5].y, seam / 2);
        ck_assert_int_eq(rows[i + 7].y, spec.frame_width + seam / 2);
        ck_assert_int_eq(rows[i + 6].x - rows[i + 7].x, opening);
        ck_assert_int_eq(rows[i + 5].x - rows[i + 4].x, opening + 2 * spec.frame_width);
        ck_assert_int_eq(rows[i + 3].y, spec.frame_width + seam);
        ck_assert_int_eq(rows[i + 3].x, spec.frame_width + seam);
    }
}
END_TEST

/* Half a tick of y: m is odd. */
START_TEST(half_ticks_of_an_outline_are_rounded_too)
{
    struct muslin_frame_spec spec = frame_of(100, 100, 10);
    struct muslin_frame_corner rows[CORNERS];
    spec.allowance = 3;
    spec.take_up = 1;
    outline_of(&spec, 1, MUSLIN_DIRECTION_UP, rows);
    ck_assert_int_eq(rows[4].y, 4);
    ck_assert_int_eq(rows[4].y_error, 0);
    ck_assert_int_eq(rows[7].y, 14);
    outline_of(&spec, 1, MUSLIN_DIRECTION_DOWN, rows);
    ck_assert_int_eq(rows[4].y, 3);
    ck_assert_int_eq(rows[4].y_error, -1);
}
END_TEST

/* ---- refusals ---------------------------------------------------------------------------------------------------- */

static const struct muslin_rounding_spec eighths = { (uint32_t)sizeof eighths, 0, 1016, 0, MUSLIN_DIRECTION_UP, 0 };
static muslin_status call_pieces(const void *spec, void *out, struct muslin_problem *problem)
{
    return muslin_frame_pieces(spec, &eighths, out, problem);
}
static muslin_status call_outline(const void *spec, void *out, struct muslin_problem *problem)
{
    size_t count = 99;
    (void)out;
    muslin_status status = muslin_frame_outline(spec, &eighths, NULL, 0, 0, &count, problem);
    ck_assert(status == MUSLIN_OK || count == 99);
    return status;
}
static const struct muslin_frame_spec good_frame = {
    (uint32_t)sizeof good_frame, 0, WHOLE_IN(6), WHOLE_IN(8), WHOLE_IN(2), 2032, 10, WHOLE_IN(40)
};
static const struct ruled pieces = RULED(call_pieces, good_frame, muslin_frame);
static const struct ruled outline = RULED(call_outline, good_frame, muslin_frame);

START_TEST(frame_checks_its_structs)
{
    ck_struct_rules(&pieces);
    ck_no_flag_known(&pieces);
    ck_spec_rules(&outline);
    ck_problem_rules(&outline);
}
END_TEST

START_TEST(frame_refuses_what_lies_outside_its_ranges)
{
    const struct refusal refusals[] = {
        OUTSIDE(muslin_frame_spec, opening_width, 1, MUSLIN_SIZE_MAX, MUSLIN_ARG_CENTRE_WIDTH),
        OUTSIDE(muslin_frame_spec, opening_height, 1, MUSLIN_SIZE_MAX, MUSLIN_ARG_CENTRE_HEIGHT),
        OUTSIDE(muslin_frame_spec, frame_width, 1, MUSLIN_SIZE_MAX, MUSLIN_ARG_BORDER_WIDTH),
        OUTSIDE(muslin_frame_spec, allowance, 0, MUSLIN_SIZE_MAX / 8, MUSLIN_ARG_SEAM_ALLOWANCE),
        OUTSIDE(muslin_frame_spec, take_up, 0, MUSLIN_SIZE_MAX / 8, MUSLIN_ARG_TAKE_UP),
        OUTSIDE(muslin_frame_spec, usable_width, 0, MUSLIN_SIZE_MAX, MUSLIN_ARG_USABLE_WIDTH),
    };
    struct muslin_rounding_spec wrong = to_grid(1, 4);
    struct muslin_frame out = { .size = (uint32_t)sizeof out };
    struct muslin_problem problem = PROBLEM;
    size_t count = 99;
    ck_refusals(&pieces, refusals, COUNT_OF(refusals));
    ck_refusals(&outline, refusals, COUNT_OF(refusals));
    ck_status(muslin_frame_pieces(&good_frame, &wrong, &out, &problem), MUSLIN_ERR_CHOICE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_DIRECTION);
    ck_status(muslin_frame_outline(&good_frame, NULL, NULL, 0, 0, &count, &problem), MUSLIN_ERR_NULL);
    ck_assert_uint_eq(count, 99);
}
END_TEST

/* 6 + 2 x 2 in without seams: down to a multiple of 4 in, 8 in are left, the short edge 4; of 12 in, nothing. The other
 * side of 24 in would do both times; and the other way round. 2 1/2 + 4 in down to 4 in leave a short edge of 0. */
START_TEST(a_short_edge_may_be_rounded_away)
{
    struct muslin_rounding_spec rounding = to_grid(WHOLE_IN(12), MUSLIN_DIRECTION_DOWN);
    struct muslin_frame_spec spec = frame_of(WHOLE_IN(6), WHOLE_IN(20), WHOLE_IN(2));
    struct muslin_frame out = { .size = (uint32_t)sizeof out, .top_long = 77 };
    struct muslin_problem problem = PROBLEM;
    spec.allowance = 0;
    ck_assert_int_eq(pieces_of(&spec, WHOLE_IN(4), MUSLIN_DIRECTION_DOWN).top_short, WHOLE_IN(4));
    ck_status(muslin_frame_pieces(&spec, &rounding, &out, &problem), MUSLIN_ERR_NO_FIT);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_GRID);
    ck_assert_int_eq(problem.value, WHOLE_IN(12));
    ck_assert_int_eq(problem.limit, 0);
    spec.opening_width = WHOLE_IN(20);
    spec.opening_height = WHOLE_IN(6);
    ck_status(muslin_frame_pieces(&spec, &rounding, &out, &problem), MUSLIN_ERR_NO_FIT);
    rounding.grid = WHOLE_IN(4);
    spec.opening_height = IN(2, 1, 2);
    ck_assert_int_eq(pieces_of(&spec, WHOLE_IN(1), MUSLIN_DIRECTION_DOWN).side_short, WHOLE_IN(2));
    ck_status(muslin_frame_pieces(&spec, &rounding, &out, &problem), MUSLIN_ERR_NO_FIT);
    ck_assert_int_eq(out.top_long, 77);
    spec.opening_width = IN(2, 1, 2);
    spec.opening_height = WHOLE_IN(20);
    ck_status(muslin_frame_pieces(&spec, &rounding, &out, &problem), MUSLIN_ERR_NO_FIT);
    ck_assert_int_eq(out.top_long, 77);
    /* without seams a short edge is as long as its opening: a tick is enough */
    spec = frame_of(1, WHOLE_IN(20), WHOLE_IN(2));
    spec.allowance = 0;
    ck_assert_int_eq(pieces_of(&spec, 1, MUSLIN_DIRECTION_DOWN).top_short, 1);
    spec = frame_of(WHOLE_IN(20), 1, WHOLE_IN(2));
    spec.allowance = 0;
    ck_assert_int_eq(pieces_of(&spec, 1, MUSLIN_DIRECTION_DOWN).side_short, 1);
}
END_TEST

/* L + 2 W + (1 + sqrt 2) m with L and W 2^30 and m = 3 x 2^27, up to the largest grid: 3 + 0.375 + 0.5303. A cut width
 * is 1.375; 4 x 4 less 3 of them are in the strip. */
START_TEST(the_largest_frame_is_rounded)
{
    struct muslin_frame_spec spec = frame_of(MUSLIN_SIZE_MAX, MUSLIN_SIZE_MAX, MUSLIN_SIZE_MAX);
    spec.allowance = MUSLIN_SIZE_MAX / 8;
    spec.take_up = MUSLIN_SIZE_MAX / 8;
    struct muslin_frame frame = pieces_of(&spec, MUSLIN_SIZE_MAX, MUSLIN_DIRECTION_UP);
    ck_assert_int_eq(frame.top_long, 4 * MUSLIN_SIZE_MAX);
    ck_assert_int_eq(frame.top_short, 5 * MUSLIN_SIZE_MAX / 4);
    ck_assert_int_eq(frame.strip_length, 95 * (MUSLIN_SIZE_MAX / 8));
    ck_assert_int_eq(frame.strips, 0);
}
END_TEST

static muslin_status call_rows(void *rows, size_t row_size, size_t capacity, size_t *count,
                               struct muslin_problem *problem)
{
    return muslin_frame_outline(&good_frame, &eighths, rows, row_size, capacity, count, problem);
}

START_TEST(outlines_are_asked_for_then_filled)
{
    ck_rows_rules(call_rows, sizeof(struct muslin_frame_corner), CORNERS);
}
END_TEST

void add_rounds_frame(Suite *suite)
{
    TCase *tests = tcase_create("mitred frames");
    tcase_add_test(tests, init_call_gives_the_macros_bytes);
    tcase_add_test(tests, a_two_inch_frame_round_six_inches);
    tcase_add_test(tests, no_strip_across_holds_fifty_one_inches);
    tcase_add_test(tests, strips_are_the_fewest_that_hold_the_pieces);
    tcase_add_test(tests, four_pieces_nest_in_one_strip);
    tcase_add_test(tests, long_edges_agree_with_mitred_borders);
    tcase_add_test(tests, without_seams_the_pieces_are_the_drawing);
    tcase_add_test(tests, an_outline_goes_round_from_the_left_tip);
    tcase_add_test(tests, finished_lines_lie_half_a_seam_inside_the_cut_ones);
    tcase_add_test(tests, half_ticks_of_an_outline_are_rounded_too);
    tcase_add_test(tests, frame_checks_its_structs);
    tcase_add_test(tests, frame_refuses_what_lies_outside_its_ranges);
    tcase_add_test(tests, a_short_edge_may_be_rounded_away);
    tcase_add_test(tests, the_largest_frame_is_rounded);
    tcase_add_test(tests, outlines_are_asked_for_then_filled);
    suite_add_tcase(suite, tests);
}
