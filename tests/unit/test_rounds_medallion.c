/* test_rounds_medallion.c - medallions: by hand, and grown round by round by adding up.
 *
 * SPDX-License-Identifier: MIT */
#include "test_rounds.h"

enum { ROUNDS = 8 };

INIT_CALL(medallion)
ROW_INIT_CALL(medallion_row)

START_TEST(init_call_gives_the_macros_bytes)
{
    const struct muslin_medallion_spec spec = MUSLIN_MEDALLION_SPEC_INIT;
    ck_init_rules(init_medallion, &spec, sizeof spec);
    const struct muslin_medallion_row row = MUSLIN_MEDALLION_ROW_INIT;
    ck_init_rules(init_medallion_row, &row, sizeof row);
    ck_assert_int_eq(row.kind, MUSLIN_ROUND_PLAIN);
    ck_assert_int_eq(row.corner, MUSLIN_ROUND_CORNER_SQUARES);
}
END_TEST

static struct muslin_medallion_spec centre_of(muslin_len width, muslin_len height)
{
    struct muslin_medallion_spec spec = MUSLIN_MEDALLION_SPEC_INIT;
    spec.centre_width = width;
    spec.centre_height = height;
    return spec;
}

static struct muslin_medallion_row round_of(int32_t kind, int32_t corner, muslin_len width, muslin_len repeat,
                                            muslin_len most)
{
    struct muslin_medallion_row row = { 0 };
    row.size = (uint32_t)sizeof row;
    row.kind = kind;
    row.corner = corner;
    row.width = width;
    row.repeat = repeat;
    row.most = most;
    return row;
}
#define PLAIN(width) round_of(MUSLIN_ROUND_PLAIN, MUSLIN_ROUND_CORNER_THROUGH, width, 0, 0)
#define PIECED(depth, repeat) round_of(MUSLIN_ROUND_PIECED, MUSLIN_ROUND_CORNER_SQUARES, depth, repeat, 0)
#define COPING(least, most) round_of(MUSLIN_ROUND_COPING, MUSLIN_ROUND_CORNER_THROUGH, least, 0, most)

static struct muslin_medallion plan_of(const struct muslin_medallion_spec *spec, struct muslin_medallion_row *rows,
                                       size_t n)
{
    struct muslin_medallion quilt = { .size = (uint32_t)sizeof quilt };
    struct muslin_problem problem = PROBLEM;
    muslin_status status = muslin_medallion_plan(spec, rows, sizeof *rows, n, &quilt, &problem);
    ck_assert_msg(status == MUSLIN_OK, "%s", problem.text);
    return quilt;
}

/* Example: centre 20 in, then coping of 1/2 to 3 in before a border of 4 in squares: coping 2 in, cut 2 1/2 in, and 6
 * squares a side, 24 and 4 in the corners; 32 in finished. */
START_TEST(a_coping_strip_makes_four_inch_squares_come_out)
{
    struct muslin_medallion_spec spec = centre_of(WHOLE_IN(20), WHOLE_IN(20));
    struct muslin_medallion_row rows[] = { COPING(IN(0, 1, 2), WHOLE_IN(3)), PIECED(WHOLE_IN(4), WHOLE_IN(4)) };
    struct muslin_medallion quilt = plan_of(&spec, rows, 2);
    ck_assert_int_eq(rows[0].side_finished, WHOLE_IN(2));
    ck_assert_int_eq(rows[0].top_finished, WHOLE_IN(2));
    ck_assert_int_eq(rows[0].side_pair, WHOLE_IN(4));
    ck_assert_int_eq(rows[0].side_cut, IN(2, 1, 2));
    ck_assert_int_eq(rows[0].side_length, IN(20, 1, 2)); /* sides first */
    ck_assert_int_eq(rows[0].top_length, IN(24, 1, 2));
    ck_assert_int_eq(rows[0].unequal, 0);
    ck_assert_int_eq(rows[0].divides, 1);
    ck_assert_int_eq(rows[0].corner_squares, 0);
    ck_assert_int_eq(rows[0].after_unfinished_width, IN(24, 1, 2));
    ck_assert_int_eq(rows[1].before_width, WHOLE_IN(24));
    /* a row of 24 1/2 in unfinished and a corner of 4 in at each end */
    ck_assert_int_eq(rows[1].after_unfinished_width, IN(32, 1, 2));
    ck_assert_int_eq(rows[1].after_unfinished_height, IN(32, 1, 2));
    ck_assert_int_eq(rows[1].side_units, 6);
    ck_assert_int_eq(rows[1].top_units, 6);
    ck_assert_int_eq(rows[1].units, 24);
    ck_assert_int_eq(rows[1].corner_squares, 4);
    ck_assert_int_eq(rows[1].unit_unfinished, IN(4, 1, 2));
    ck_assert_int_eq(rows[1].side_cut, IN(4, 1, 2));
    ck_assert_int_eq(rows[1].side_length, IN(24, 1, 2));
    ck_assert_int_eq(rows[1].top_length, IN(24, 1, 2));
    ck_assert_int_eq(rows[1].divides, 1);
    ck_assert_int_eq(quilt.finished_width, WHOLE_IN(32));
    ck_assert_int_eq(quilt.unfinished_height, IN(32, 1, 2));
    ck_assert_int_eq(quilt.units, 24);
    ck_assert_int_eq(quilt.corner_squares, 4);
    ck_assert_int_eq(quilt.undivided, 0);
}
END_TEST

/* 18 x 24 in, units of 4 in: at least 1/2 in more on each side. 19 up to 20: 1 in; 25 up to 28: 2 in. */
START_TEST(width_and_length_may_need_different_coping)
{
    struct muslin_medallion_spec spec = centre_of(WHOLE_IN(18), WHOLE_IN(24));
    struct muslin_medallion_row rows[] = { COPING(IN(0, 1, 2), WHOLE_IN(2)), PIECED(WHOLE_IN(3), WHOLE_IN(4)) };
    struct muslin_medallion quilt = plan_of(&spec, rows, 2);
    ck_assert_int_eq(rows[0].side_finished, WHOLE_IN(1));
    ck_assert_int_eq(rows[0].top_finished, WHOLE_IN(2));
    ck_assert_int_eq(rows[0].side_cut, IN(1, 1, 2));
    ck_assert_int_eq(rows[0].top_cut, IN(2, 1, 2));
    ck_assert_int_eq(rows[0].unequal, 1);
    ck_assert_int_eq(rows[1].top_units, 5);
    ck_assert_int_eq(rows[1].side_units, 7);
    ck_assert_int_eq(quilt.unequal, 1);
    ck_assert_int_eq(quilt.finished_width, WHOLE_IN(26));
    ck_assert_int_eq(quilt.finished_height, WHOLE_IN(34));
}
END_TEST

/* 18 x 20 in to 4 in: an inch at the sides, and nothing above or below, where there is no strip then, nor a corner. A
 * tick is a pair of strips, however narrow. */
START_TEST(coping_of_no_width_is_no_strip)
{
    struct muslin_medallion_row coping = COPING(0, WHOLE_IN(2));
    coping.corner = MUSLIN_ROUND_CORNER_SQUARES;
    struct muslin_medallion_row rows[] = { coping, PIECED(WHOLE_IN(4), WHOLE_IN(4)) };
    struct muslin_medallion_spec spec = centre_of(WHOLE_IN(18), WHOLE_IN(20));
    plan_of(&spec, rows, 2);
    ck_assert_int_eq(rows[0].side_pair, WHOLE_IN(2));
    ck_assert_int_eq(rows[0].side_cut, IN(1, 1, 2));
    ck_assert_int_eq(rows[0].side_length, IN(20, 1, 2));
    ck_assert_int_eq(rows[0].top_pair, 0);
    ck_assert_int_eq(rows[0].top_cut, 0);
    ck_assert_int_eq(rows[0].top_length, 0);
    ck_assert_int_eq(rows[0].corner_squares, 0);
    rows[0] = coping;
    rows[1] = PIECED(WHOLE_IN(4), WHOLE_IN(4));
    spec = centre_of(WHOLE_IN(20), WHOLE_IN(18));
    plan_of(&spec, rows, 2);
    ck_assert_int_eq(rows[0].side_pair, 0);
    ck_assert_int_eq(rows[0].side_cut, 0);
    ck_assert_int_eq(rows[0].side_length, 0);
    ck_assert_int_eq(rows[0].top_cut, IN(1, 1, 2));
    ck_assert_int_eq(rows[0].top_length, IN(20, 1, 2));
    ck_assert_int_eq(rows[0].corner_squares, 0);
    rows[0] = coping;
    rows[1] = PIECED(WHOLE_IN(4), WHOLE_IN(4));
    spec = centre_of(WHOLE_IN(20) - 1, WHOLE_IN(20) - 1);
    plan_of(&spec, rows, 2);
    ck_assert_int_eq(rows[0].side_pair, 1);
    ck_assert_int_eq(rows[0].side_length, IN(20, 1, 2) - 1);
    ck_assert_int_eq(rows[0].top_length, IN(20, 1, 2) - 1);
    ck_assert_int_eq(rows[0].corner_squares, 4);
}
END_TEST

/* Units that run through the corners: top and bottom cover both depths too. 20 + 2 x 3 = 26 in; 28 = 7 units of 4 in
 * leave 2 in, 1 in a strip; the sides: 20 = 5 units need none. */
START_TEST(units_through_the_corners_are_counted_with_them)
{
    struct muslin_medallion_spec spec = centre_of(WHOLE_IN(20), WHOLE_IN(20));
    struct muslin_medallion_row rows[] = { COPING(0, WHOLE_IN(1)), PIECED(WHOLE_IN(3), WHOLE_IN(4)) };
    rows[1].corner = MUSLIN_ROUND_CORNER_THROUGH;
    struct muslin_medallion quilt = plan_of(&spec, rows, 2);
    ck_assert_int_eq(rows[0].side_finished, WHOLE_IN(1));
    ck_assert_int_eq(rows[0].side_length, IN(20, 1, 2));
    ck_assert_int_eq(rows[0].top_finished, 0);
    ck_assert_int_eq(rows[0].top_cut, 0);
    ck_assert_int_eq(rows[0].top_length, 0);
    ck_assert_int_eq(rows[1].top_units, 7);
    ck_assert_int_eq(rows[1].side_units, 5);
    ck_assert_int_eq(rows[1].units, 24);
    ck_assert_int_eq(rows[1].corner_squares, 0);
    ck_assert_int_eq(rows[1].top_length, IN(28, 1, 2));
    ck_assert_int_eq(rows[1].divides, 1);
    ck_assert_int_eq(quilt.finished_width, WHOLE_IN(28));
    ck_assert_int_eq(quilt.finished_height, WHOLE_IN(26));
}
END_TEST

/* Plain borders as muslin_border_plan() counts them, butted and with cornerstones. */
START_TEST(plain_rounds_are_borders)
{
    struct muslin_medallion_spec spec = centre_of(WHOLE_IN(30), WHOLE_IN(42));
    struct muslin_border_spec border_spec = MUSLIN_BORDER_SPEC_INIT;
    spec.take_up = 50;
    border_spec.unfinished_width = WHOLE_IN(30) + 4064 + 50;
    border_spec.unfinished_length = WHOLE_IN(42) + 4064 + 50;
    border_spec.take_up = 50;
    border_spec.finished_border = IN(3, 1, 4);
    for (int32_t corner = MUSLIN_ROUND_CORNER_SQUARES; corner <= MUSLIN_ROUND_CORNER_THROUGH; corner++) {
        struct muslin_medallion_row row = PLAIN(IN(3, 1, 4));
        struct muslin_border border = { .size = (uint32_t)sizeof border };
        row.corner = corner;
        border_spec.style =
            corner == MUSLIN_ROUND_CORNER_SQUARES ? MUSLIN_BORDER_STYLE_CORNERSTONES : MUSLIN_BORDER_STYLE_SIDES_FIRST;
        ck_ok(muslin_border_plan(&border_spec, &border, NULL));
        struct muslin_medallion quilt = plan_of(&spec, &row, 1);
        ck_assert_int_eq(row.side_cut, border.cut_width);
        ck_assert_int_eq(row.top_cut, border.cut_width);
        ck_assert_int_eq(row.side_length, border.side_cut_length);
        ck_assert_int_eq(row.top_length, border.top_cut_length);
        ck_assert_int_eq(row.corner_squares, border.cornerstone_cut > 0 ? 4 : 0);
        ck_assert_int_eq(quilt.unfinished_width, border.unfinished_width);
        ck_assert_int_eq(quilt.unfinished_height, border.unfinished_length);
        ck_assert_int_eq(row.units, 0);
        ck_assert_int_eq(row.divides, 1);
    }
}
END_TEST

/* 25 in of 4 in units: 6, and 1 in left; 22 in: 5, and 2 in left. */
START_TEST(a_round_that_does_not_divide_says_so)
{
    struct muslin_medallion_spec spec = centre_of(WHOLE_IN(25), WHOLE_IN(22));
    struct muslin_medallion_row rows[] = { PIECED(WHOLE_IN(2), WHOLE_IN(4)), PIECED(WHOLE_IN(1), 1),
                                           PIECED(WHOLE_IN(2), WHOLE_IN(26)) };
    struct muslin_medallion quilt = plan_of(&spec, rows, 3);
    ck_assert_int_eq(rows[0].top_units, 6);
    ck_assert_int_eq(rows[0].top_rest, WHOLE_IN(1));
    ck_assert_int_eq(rows[0].side_units, 5);
    ck_assert_int_eq(rows[0].side_rest, WHOLE_IN(2));
    ck_assert_int_eq(rows[0].divides, 0);
    ck_assert_int_eq(rows[1].divides, 1);
    ck_assert_int_eq(rows[2].top_rest, WHOLE_IN(5)); /* 25 + 4 + 2 = 31 */
    ck_assert_int_eq(rows[2].side_units, 1);         /* 22 + 4 + 2 = 28 */
    ck_assert_int_eq(rows[2].side_rest, WHOLE_IN(2));
    ck_assert_int_eq(quilt.undivided, 2);
}
END_TEST

/* The side alone divides, the top does not: 24 and 26 in units of 4. */
START_TEST(one_side_that_leaves_a_rest_is_enough)
{
    struct muslin_medallion_spec spec = centre_of(WHOLE_IN(26), WHOLE_IN(24));
    struct muslin_medallion_row row = PIECED(WHOLE_IN(2), WHOLE_IN(4));
    ck_assert_int_eq(plan_of(&spec, &row, 1).undivided, 1);
    ck_assert_int_eq(row.side_rest, 0);
    ck_assert_int_eq(row.top_rest, WHOLE_IN(2));
    spec = centre_of(WHOLE_IN(24), WHOLE_IN(26));
    ck_assert_int_eq(plan_of(&spec, &row, 1).undivided, 1);
}
END_TEST

/* 5 ticks to 8: three ticks for two strips, one of them a tick wider. */
START_TEST(an_odd_pair_is_shared_to_a_tick)
{
    struct muslin_medallion_spec spec = centre_of(5, 8);
    struct muslin_medallion_row rows[] = { COPING(0, 2), PIECED(1, 8) };
    rows[0].corner = MUSLIN_ROUND_CORNER_SQUARES;
    struct muslin_medallion quilt = plan_of(&spec, rows, 2);
    ck_assert_int_eq(rows[0].side_pair, 3);
    ck_assert_int_eq(rows[0].side_finished, 1);
    ck_assert_int_eq(rows[0].after_width, 8);
    ck_assert_int_eq(rows[0].corner_squares, 0); /* there is nothing above and below */
    ck_assert_int_eq(rows[1].divides, 1);
    ck_assert_int_eq(quilt.finished_width, 10);
    spec = centre_of(8, 5);
    plan_of(&spec, rows, 2);
    ck_assert_int_eq(rows[0].top_pair, 3);
    ck_assert_int_eq(rows[0].corner_squares, 0);
    spec = centre_of(5, 5);
    plan_of(&spec, rows, 2);
    ck_assert_int_eq(rows[0].corner_squares, 4);
    rows[0].most = 1;
    struct muslin_medallion out = { .size = (uint32_t)sizeof out };
    struct muslin_problem problem = PROBLEM;
    ck_status(muslin_medallion_plan(&spec, rows, sizeof *rows, 2, &out, &problem), MUSLIN_ERR_NO_FIT);
    ck_assert_int_eq(problem.limit, 2);
}
END_TEST

/* ---- grown by adding up ------------------------------------------------------------------------------------------ */

/* Lays units until the run is full; the rest is what is left of it. */
static void lay_units(muslin_len run, muslin_len repeat, int64_t *units, muslin_len *rest)
{
    *units = 0;
    *rest = run;
    while (*rest >= repeat) {
        *rest -= repeat;
        ++*units;
    }
}

/* Widens by a tick at a time from twice the least until units fill the run. */
static muslin_len widen(muslin_len run, muslin_len least, muslin_len repeat)
{
    muslin_len pair = 2 * least;
    while ((run + pair) % repeat != 0)
        pair++;
    return pair;
}

static void ck_grown(const struct muslin_medallion_spec *spec, const struct muslin_medallion_row *rows, size_t n,
                     const struct muslin_medallion *quilt)
{
    muslin_len seam = 2 * spec->allowance + spec->take_up;
    muslin_len width = spec->centre_width;
    muslin_len height = spec->centre_height;
    int64_t units = 0;
    for (size_t i = 0; i < n; i++) {
        const struct muslin_medallion_row *row = &rows[i];
        muslin_len side_pair = 2 * row->width;
        muslin_len top_pair = 2 * row->width;
        int64_t count = 0;
        muslin_len rest = 0;
        if (row->kind == MUSLIN_ROUND_COPING) {
            muslin_len corners = row[1].corner == MUSLIN_ROUND_CORNER_THROUGH ? 2 * row[1].width : 0;
            side_pair = widen(width + corners, row->width, row[1].repeat);
            top_pair = widen(height, row->width, row[1].repeat);
        }
        ck_assert_int_eq(row->before_width, width);
        ck_assert_int_eq(row->before_height, height);
        ck_assert_int_eq(row->side_pair, side_pair);
        ck_assert_int_eq(row->top_pair, top_pair);
        ck_assert_int_eq(row->side_length, side_pair > 0 ? height + seam : 0);
        muslin_len top = row->corner == MUSLIN_ROUND_CORNER_THROUGH ? width + side_pair : width;
        ck_assert_int_eq(row->top_length, top_pair > 0 ? top + seam : 0);
        if (row->kind == MUSLIN_ROUND_PIECED) {
            lay_units(top, row->repeat, &count, &rest);
            ck_assert_int_eq(row->top_units, count);
            ck_assert_int_eq(row->top_rest, rest);
            units += 2 * count;
            lay_units(height, row->repeat, &count, &rest);
            ck_assert_int_eq(row->side_units, count);
            ck_assert_int_eq(row->side_rest, rest);
            units += 2 * count;
            if (i > 0 && row[-1].kind == MUSLIN_ROUND_COPING)
                ck_assert_int_eq(row->divides, 1);
        }
        width += side_pair;
        height += top_pair;
        ck_assert_int_eq(row->after_width, width);
        ck_assert_int_eq(row->after_height, height);
    }
    ck_assert_int_eq(quilt->finished_width, width);
    ck_assert_int_eq(quilt->finished_height, height);
    ck_assert_int_eq(quilt->unfinished_width, width + seam);
    ck_assert_int_eq(quilt->units, units);
}

START_TEST(small_medallions_grow_by_adding_up)
{
    uint64_t state = 9;
    for (int i = 0; i < 2000; i++) {
        struct muslin_medallion_spec spec = centre_of(draw_from(&state, 1, 60), draw_from(&state, 1, 60));
        struct muslin_medallion_row rows[ROUNDS];
        spec.allowance = draw_from(&state, 0, 3);
        spec.take_up = draw_from(&state, 0, 2);
        for (size_t at = 0; at < ROUNDS; at++) {
            int32_t kind = (int32_t)draw_from(&state, 1, 3);
            int32_t corner = (int32_t)draw_from(&state, 1, 2);
            if (at > 0 && rows[at - 1].kind == MUSLIN_ROUND_COPING)
                kind = MUSLIN_ROUND_PIECED;
            else if (at == ROUNDS - 1)
                kind = MUSLIN_ROUND_PLAIN;
            rows[at] = round_of(kind, corner, draw_from(&state, 1, 9), draw_from(&state, 1, 12), 1000);
        }
        struct muslin_medallion quilt = plan_of(&spec, rows, ROUNDS);
        ck_grown(&spec, rows, ROUNDS, &quilt);
    }
}
END_TEST

/* What is answered may be asked again: the coping that was found, as the least one, is found again. */
START_TEST(coping_that_was_found_is_found_again)
{
    struct muslin_medallion_spec spec = centre_of(WHOLE_IN(17), WHOLE_IN(17));
    struct muslin_medallion_row rows[] = { COPING(IN(0, 1, 4), WHOLE_IN(4)), PIECED(WHOLE_IN(3), WHOLE_IN(5)) };
    plan_of(&spec, rows, 2);
    muslin_len found = rows[0].side_finished;
    ck_assert_int_eq(found, IN(1, 1, 2)); /* 17 up to 20 */
    rows[0].width = rows[0].most = found;
    plan_of(&spec, rows, 2);
    ck_assert_int_eq(rows[0].side_finished, found);
    rows[0].width = found + 1;
    rows[0].most = WHOLE_IN(5);
    plan_of(&spec, rows, 2);
    ck_assert_int_eq(rows[0].side_finished, found + IN(2, 1, 2)); /* one unit of 5 in more, half of it a side */
}
END_TEST

/* ---- refusals ---------------------------------------------------------------------------------------------------- */

static const struct muslin_medallion_spec good_centre = {
    (uint32_t)sizeof good_centre, 0, WHOLE_IN(18), WHOLE_IN(24), 2032, 10
};
static muslin_status call_plan(const void *spec, void *out, struct muslin_problem *problem)
{
    struct muslin_medallion_row row = PLAIN(WHOLE_IN(2));
    struct muslin_medallion_row before = row;
    muslin_status status = muslin_medallion_plan(spec, &row, sizeof row, 1, out, problem);
    if (status != MUSLIN_OK)
        ck_assert_mem_eq(&row, &before, sizeof row);
    return status;
}
static const struct ruled plan = RULED(call_plan, good_centre, muslin_medallion);

START_TEST(medallion_checks_its_structs)
{
    ck_struct_rules(&plan);
}
END_TEST

START_TEST(medallion_refuses_what_lies_outside_its_ranges)
{
    const struct refusal refusals[] = {
        REFUSAL(muslin_medallion_spec, flags, 2, MUSLIN_ERR_FLAGS, MUSLIN_ARG_SPEC),
        OUTSIDE(muslin_medallion_spec, centre_width, 1, MUSLIN_SIZE_MAX, MUSLIN_ARG_CENTRE_WIDTH),
        OUTSIDE(muslin_medallion_spec, centre_height, 1, MUSLIN_SIZE_MAX, MUSLIN_ARG_CENTRE_HEIGHT),
        OUTSIDE(muslin_medallion_spec, allowance, 0, MUSLIN_SIZE_MAX / 8, MUSLIN_ARG_SEAM_ALLOWANCE),
        OUTSIDE(muslin_medallion_spec, take_up, 0, MUSLIN_SIZE_MAX / 8, MUSLIN_ARG_TAKE_UP),
    };
    ck_refusals(&plan, refusals, COUNT_OF(refusals));
}
END_TEST

/* The rows of a request that fails: none is touched, nor the output. */
static struct muslin_problem ck_rounds(const struct muslin_medallion_spec *spec, struct muslin_medallion_row *rows,
                                       size_t n, muslin_status status)
{
    struct muslin_medallion_row before[ROUNDS];
    struct muslin_medallion out = { .size = (uint32_t)sizeof out, .units = 77 };
    struct muslin_problem problem = PROBLEM;
    memcpy(before, rows, n * sizeof *rows);
    ck_status(muslin_medallion_plan(spec, rows, sizeof *rows, n, &out, &problem), status);
    ck_assert_mem_eq(rows, before, n * sizeof *rows);
    ck_assert_int_eq(out.units, 77);
    return problem;
}

START_TEST(rounds_are_refused_by_their_number)
{
    struct muslin_medallion_row good[] = { PLAIN(WHOLE_IN(1)), COPING(WHOLE_IN(1), WHOLE_IN(4)),
                                           PIECED(WHOLE_IN(2), WHOLE_IN(4)) };
    const struct wrong {
        size_t row;
        size_t offset;
        int64_t value;
        size_t width;
        muslin_status status;
        int32_t argument;
    } wrongs[] = {
#define WRONG(row, member, value, status, argument) \
    { row, offsetof(struct muslin_medallion_row, member), value, sizeof(good[0].member), status, argument }
        WRONG(0, flags, 1, MUSLIN_ERR_FLAGS, MUSLIN_ARG_ROWS),
        WRONG(1, size, 8, MUSLIN_ERR_STRUCT_SIZE, MUSLIN_ARG_ROWS),
        WRONG(1, size, sizeof(good[0]) + 8, MUSLIN_ERR_STRUCT_SIZE, MUSLIN_ARG_ROWS),
        WRONG(2, kind, 0, MUSLIN_ERR_CHOICE, MUSLIN_ARG_ROUND_KIND),
        WRONG(0, kind, 4, MUSLIN_ERR_CHOICE, MUSLIN_ARG_ROUND_KIND),
        WRONG(2, corner, 0, MUSLIN_ERR_CHOICE, MUSLIN_ARG_ROUND_CORNER),
        WRONG(1, corner, 3, MUSLIN_ERR_CHOICE, MUSLIN_ARG_ROUND_CORNER),
        WRONG(0, width, 0, MUSLIN_ERR_RANGE, MUSLIN_ARG_BORDER_WIDTH),
        WRONG(2, width, 0, MUSLIN_ERR_RANGE, MUSLIN_ARG_BORDER_WIDTH),
        WRONG(1, width, -1, MUSLIN_ERR_RANGE, MUSLIN_ARG_BORDER_WIDTH),
        WRONG(0, width, MUSLIN_SIZE_MAX + 1, MUSLIN_ERR_RANGE, MUSLIN_ARG_BORDER_WIDTH),
        WRONG(2, repeat, 0, MUSLIN_ERR_RANGE, MUSLIN_ARG_UNIT_REPEAT),
        WRONG(0, repeat, -1, MUSLIN_ERR_RANGE, MUSLIN_ARG_UNIT_REPEAT),
        WRONG(2, repeat, INT64_MAX, MUSLIN_ERR_RANGE, MUSLIN_ARG_UNIT_REPEAT),
        WRONG(1, most, WHOLE_IN(1) - 1, MUSLIN_ERR_RANGE, MUSLIN_ARG_COPING_MOST),
        WRONG(1, most, MUSLIN_SIZE_MAX + 1, MUSLIN_ERR_RANGE, MUSLIN_ARG_COPING_MOST),
        WRONG(0, most, -1, MUSLIN_ERR_RANGE, MUSLIN_ARG_COPING_MOST),
        WRONG(0, width, MUSLIN_SIZE_MAX / 2, MUSLIN_ERR_RANGE, MUSLIN_ARG_QUILT_WIDTH),
    };
    ck_assert_int_eq(plan_of(&good_centre, good, 3).undivided, 0);
    for (size_t i = 0; i < COUNT_OF(wrongs); i++) {
        struct muslin_medallion_row rows[3];
        memcpy(rows, good, sizeof rows);
        memcpy((unsigned char *)&rows[wrongs[i].row] + wrongs[i].offset, &wrongs[i].value, wrongs[i].width);
        struct muslin_problem problem = ck_rounds(&good_centre, rows, 3, wrongs[i].status);
        ck_assert_int_eq(problem.at, (int64_t)wrongs[i].row);
        ck_assert_msg(problem.argument == wrongs[i].argument, "%zu: %s", i, problem.text);
    }
}
END_TEST

START_TEST(the_length_is_bounded_too)
{
    struct muslin_medallion_spec spec = centre_of(1, MUSLIN_SIZE_MAX - 4);
    struct muslin_medallion_row row = PLAIN(2);
    ck_assert_int_eq(plan_of(&spec, &row, 1).finished_height, MUSLIN_SIZE_MAX);
    row.width = 3;
    struct muslin_problem problem = ck_rounds(&spec, &row, 1, MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_QUILT_LENGTH);
    ck_assert_int_eq(problem.value, MUSLIN_SIZE_MAX + 2);
    struct muslin_medallion_row rows[] = { COPING(MUSLIN_SIZE_MAX, MUSLIN_SIZE_MAX),
                                           PIECED(MUSLIN_SIZE_MAX, MUSLIN_SIZE_MAX) };
    rows[1].corner = MUSLIN_ROUND_CORNER_THROUGH;
    spec = centre_of(MUSLIN_SIZE_MAX, MUSLIN_SIZE_MAX);
    problem = ck_rounds(&spec, rows, 2, MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.value, 3 * MUSLIN_SIZE_MAX);
}
END_TEST

START_TEST(coping_stands_before_a_pieced_round)
{
    struct muslin_medallion_row rows[] = { COPING(0, WHOLE_IN(4)), PLAIN(WHOLE_IN(1)),
                                           PIECED(WHOLE_IN(2), WHOLE_IN(4)) };
    struct muslin_problem problem = ck_rounds(&good_centre, rows, 3, MUSLIN_ERR_CHOICE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_ROUND_KIND);
    ck_assert_int_eq(problem.at, 0);
    ck_assert_int_eq(problem.value, MUSLIN_ROUND_COPING);
    rows[1] = COPING(0, WHOLE_IN(4));
    ck_assert_int_eq(ck_rounds(&good_centre, rows, 3, MUSLIN_ERR_CHOICE).at, 0);
    rows[0] = PLAIN(WHOLE_IN(1));
    ck_assert_int_eq(ck_rounds(&good_centre, rows, 2, MUSLIN_ERR_CHOICE).at, 1);
}
END_TEST

/* 18 to 20 in takes 1 in a strip, 24 needs none. */
START_TEST(coping_that_would_be_too_wide_does_not_fit)
{
    struct muslin_medallion_row rows[] = { COPING(0, WHOLE_IN(1) - 1), PIECED(WHOLE_IN(2), WHOLE_IN(4)) };
    struct muslin_problem problem = ck_rounds(&good_centre, rows, 2, MUSLIN_ERR_NO_FIT);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_COPING_MOST);
    ck_assert_int_eq(problem.at, 0);
    ck_assert_int_eq(problem.value, WHOLE_IN(1) - 1);
    ck_assert_int_eq(problem.limit, WHOLE_IN(1));
    rows[0].most = WHOLE_IN(1);
    ck_assert_int_eq(plan_of(&good_centre, rows, 2).finished_width, WHOLE_IN(24));
    ck_assert_int_eq(rows[0].top_finished, 0);
}
END_TEST

/* 22 by 21 in before units of 4 in, 1 in deep, squares in the corners: 24 in leaves 1 in for a side strip, 24 in 1 1/2
 * in above and below. That is told whichever is too wide, and with it the round comes out. */
START_TEST(the_wider_coping_strip_is_told)
{
    struct muslin_medallion_spec spec = good_centre;
    struct muslin_medallion_row rows[] = { COPING(0, 10), PIECED(WHOLE_IN(1), WHOLE_IN(4)) };
    rows[1].corner = MUSLIN_ROUND_CORNER_SQUARES;
    spec.centre_width = WHOLE_IN(22);
    spec.centre_height = WHOLE_IN(21);
    ck_assert_int_eq(ck_rounds(&spec, rows, 2, MUSLIN_ERR_NO_FIT).limit, IN(1, 1, 2));
    spec.centre_width = WHOLE_IN(21);
    spec.centre_height = WHOLE_IN(22);
    ck_assert_int_eq(ck_rounds(&spec, rows, 2, MUSLIN_ERR_NO_FIT).limit, IN(1, 1, 2));
    spec.flags = MUSLIN_MEDALLION_EQUAL_COPING; /* no width does, however wide it may be */
    ck_assert_int_eq(ck_rounds(&spec, rows, 2, MUSLIN_ERR_NO_FIT).limit, 0);
    spec.flags = 0;
    rows[0].most = IN(1, 1, 2);
    ck_assert_int_eq(plan_of(&spec, rows, 2).undivided, 0);
}
END_TEST

/* 18 and 24 in differ by 6 in, one and a half units of 4 in: no equal strips do; by two units of 3 in, they do. */
START_TEST(equal_coping_may_be_asked_for)
{
    struct muslin_medallion_spec spec = good_centre;
    struct muslin_medallion_row rows[] = { COPING(IN(0, 1, 2), WHOLE_IN(4)), PIECED(WHOLE_IN(2), WHOLE_IN(4)) };
    spec.flags = MUSLIN_MEDALLION_EQUAL_COPING;
    struct muslin_problem problem = ck_rounds(&spec, rows, 2, MUSLIN_ERR_NO_FIT);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_COPING_MOST);
    ck_assert_int_eq(problem.limit, 0);
    rows[1].repeat = WHOLE_IN(3);
    ck_assert_int_eq(plan_of(&spec, rows, 2).unequal, 0);
    ck_assert_int_eq(rows[0].side_finished, IN(1, 1, 2));
    ck_assert_int_eq(rows[0].top_finished, IN(1, 1, 2));
}
END_TEST

START_TEST(rounds_are_counted_and_laid_out_as_the_caller_says)
{
    static struct muslin_medallion_row rows[MUSLIN_ROUNDS_MAX];
    struct muslin_medallion out = { .size = (uint32_t)sizeof out };
    struct muslin_problem problem = PROBLEM;
    for (size_t i = 0; i < MUSLIN_ROUNDS_MAX; i++)
        rows[i] = PLAIN(WHOLE_IN(1));
    ck_status(muslin_medallion_plan(&good_centre, rows, sizeof *rows, 0, &out, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_ROUNDS);
    ck_status(muslin_medallion_plan(&good_centre, rows, sizeof *rows, SIZE_MAX, &out, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.value, MUSLIN_ROUNDS_MAX + 1);
    ck_assert_int_eq(plan_of(&good_centre, rows, MUSLIN_ROUNDS_MAX).finished_width, WHOLE_IN(2018));
    ck_status(muslin_medallion_plan(&good_centre, NULL, sizeof *rows, 1, &out, &problem), MUSLIN_ERR_NULL);
    ck_assert_int_eq(problem.limit, 0);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_ROWS);
    ck_status(muslin_medallion_plan(&good_centre, rows, sizeof *rows - 8, 1, &out, &problem), MUSLIN_ERR_STRUCT_SIZE);
    ck_status(muslin_medallion_plan(&good_centre, rows, 4097, 1, &out, &problem), MUSLIN_ERR_STRUCT_SIZE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_ROW_SIZE);
}
END_TEST

/* Rows of a newer caller, larger than this library knows: their tails are zero, and zeroed. */
START_TEST(rounds_lie_at_the_callers_stride)
{
    struct wide {
        struct muslin_medallion_row row;
        int64_t more;
    } rows[2] = { { PLAIN(WHOLE_IN(1)), 0 }, { PLAIN(WHOLE_IN(2)), 0 } };
    struct muslin_medallion out = { .size = (uint32_t)sizeof out };
    rows[0].row.size = rows[1].row.size = (uint32_t)sizeof rows[0];
    ck_ok(muslin_medallion_plan(&good_centre, &rows[0].row, sizeof rows[0], 2, &out, NULL));
    ck_assert_int_eq(rows[1].row.before_width, WHOLE_IN(20));
    ck_assert_int_eq(rows[1].row.after_width, WHOLE_IN(24));
    ck_assert_uint_eq(rows[1].row.size, sizeof rows[0]);
    rows[1].more = 1;
    ck_status(muslin_medallion_plan(&good_centre, &rows[0].row, sizeof rows[0], 2, &out, NULL),
              MUSLIN_ERR_STRUCT_TAIL);
}
END_TEST

void add_rounds_medallion(Suite *suite)
{
    TCase *tests = tcase_create("medallions");
    tcase_add_test(tests, init_call_gives_the_macros_bytes);
    tcase_add_test(tests, a_coping_strip_makes_four_inch_squares_come_out);
    tcase_add_test(tests, width_and_length_may_need_different_coping);
    tcase_add_test(tests, coping_of_no_width_is_no_strip);
    tcase_add_test(tests, units_through_the_corners_are_counted_with_them);
    tcase_add_test(tests, plain_rounds_are_borders);
    tcase_add_test(tests, a_round_that_does_not_divide_says_so);
    tcase_add_test(tests, one_side_that_leaves_a_rest_is_enough);
    tcase_add_test(tests, an_odd_pair_is_shared_to_a_tick);
    tcase_add_test(tests, small_medallions_grow_by_adding_up);
    tcase_add_test(tests, coping_that_was_found_is_found_again);
    tcase_add_test(tests, medallion_checks_its_structs);
    tcase_add_test(tests, medallion_refuses_what_lies_outside_its_ranges);
    tcase_add_test(tests, rounds_are_refused_by_their_number);
    tcase_add_test(tests, the_length_is_bounded_too);
    tcase_add_test(tests, coping_stands_before_a_pieced_round);
    tcase_add_test(tests, coping_that_would_be_too_wide_does_not_fit);
    tcase_add_test(tests, the_wider_coping_strip_is_told);
    tcase_add_test(tests, equal_coping_may_be_asked_for);
    tcase_add_test(tests, rounds_are_counted_and_laid_out_as_the_caller_says);
    tcase_add_test(tests, rounds_lie_at_the_callers_stride);
    suite_add_tcase(suite, tests);
}
