/* test_fit.c - settings that come out at a wanted size, against laying them out one by one.
 *
 * SPDX-License-Identifier: MIT */
#include "test_fit.h"

enum { ROWS_MAX = 6000 };

static struct muslin_fit_spec wanted(muslin_len width, muslin_len length, uint32_t kinds)
{
    struct muslin_fit_spec spec = MUSLIN_FIT_SPEC_INIT;
    spec.wanted_width = width;
    spec.wanted_length = length;
    spec.flags = kinds;
    return spec;
}

static void block_of(struct muslin_fit_spec *spec, muslin_len block)
{
    spec->block_least = block;
    spec->block_most = block;
}

static void within(struct muslin_fit_spec *spec, muslin_len tolerance)
{
    spec->width_under = tolerance;
    spec->width_over = tolerance;
    spec->length_under = tolerance;
    spec->length_over = tolerance;
}

static size_t settings_of(const struct muslin_fit_spec *spec, struct muslin_fit *rows, size_t room)
{
    size_t asked = 77;
    size_t count = 78;
    ck_ok(muslin_fit_settings(spec, NULL, 0, 0, &asked, NULL));
    ck_assert_uint_le(asked, room);
    ck_ok(muslin_fit_settings(spec, rows, sizeof rows[0], room, &count, NULL));
    ck_assert_uint_eq(count, asked);
    return count;
}

static struct muslin_fit nearest_to(const struct muslin_fit_spec *spec)
{
    struct muslin_fit fit = { .size = (uint32_t)sizeof fit };
    ck_ok(muslin_fit_nearest(spec, &fit, NULL));
    return fit;
}

/* ---- examples by hand -------------------------------------------------------------------------------------------- */

START_TEST(five_by_six_blocks_of_a_foot_make_sixty_by_seventy_two)
{
    /* Example: 60 x 72 in from 12 in blocks, straight: 5 x 6 blocks. */
    struct muslin_fit_spec spec = wanted(WHOLE_IN(60), WHOLE_IN(72), MUSLIN_FIT_ALLOW_STRAIGHT);
    struct muslin_fit rows[2] = { { 0 } };
    block_of(&spec, WHOLE_IN(12));
    ck_assert_uint_eq(settings_of(&spec, rows, 2), 1);
    ck_assert(rows[0].columns == 5 && rows[0].rows == 6 && rows[0].exact == 1);
    ck_assert(rows[0].kind == MUSLIN_FIT_STRAIGHT && rows[0].sash == 0 && rows[0].border == 0);
    ck_assert(rows[0].finished_width == WHOLE_IN(60) && rows[0].finished_length == WHOLE_IN(72));
    ck_assert(rows[0].off_width == 0 && rows[0].off_length == 0 && rows[0].rank_key == 0);
    ck_assert(rows[0].blocks == 30 && rows[0].alternates == 0 && rows[0].block == WHOLE_IN(12));
    ck_assert(rows[0].size == sizeof rows[0] && rows[0].flags == 0);
}
END_TEST

START_TEST(the_nearest_setting_may_lie_outside_the_tolerance)
{
    /* Example: 61 x 72 in from 12 in blocks, straight: 5 x 6 blocks, 1 in too narrow. */
    struct muslin_fit_spec spec = wanted(WHOLE_IN(61), WHOLE_IN(72), MUSLIN_FIT_ALLOW_STRAIGHT);
    block_of(&spec, WHOLE_IN(12));
    struct muslin_fit rows[1];
    ck_assert_uint_eq(settings_of(&spec, rows, 1), 0);
    struct muslin_fit fit = nearest_to(&spec);
    ck_assert(fit.columns == 5 && fit.rows == 6);
    ck_assert(fit.off_width == -WHOLE_IN(1) && fit.off_length == 0 && fit.exact == 0);
    ck_assert_int_eq(fit.rank_key, WHOLE_IN(1));
}
END_TEST

/* "How-to article on fitting sashed squares to a quilt width": 6 blocks of 12 in, sashes of 2 in and borders of 4 in
 * are 90 in wide; by adding up, a sash round the outside makes it 94. */
START_TEST(sashes_stand_between_blocks_or_round_them_too)
{
    struct muslin_fit_spec spec = wanted(WHOLE_IN(90), WHOLE_IN(90), MUSLIN_FIT_ALLOW_SASHED);
    struct muslin_fit rows[1];
    block_of(&spec, WHOLE_IN(12));
    spec.sash_least = WHOLE_IN(2);
    spec.sash_most = WHOLE_IN(2);
    spec.border_least = WHOLE_IN(4);
    spec.border_most = WHOLE_IN(4);
    ck_assert_uint_eq(settings_of(&spec, rows, 1), 1);
    ck_assert(rows[0].columns == 6 && rows[0].rows == 6 && rows[0].sash == WHOLE_IN(2));
    ck_assert_int_eq(rows[0].border, WHOLE_IN(4));
    spec.flags = MUSLIN_FIT_ALLOW_FRAMED;
    ck_assert_uint_eq(settings_of(&spec, rows, 1), 0);
    spec.wanted_width = WHOLE_IN(94);
    spec.wanted_length = WHOLE_IN(94);
    ck_assert_uint_eq(settings_of(&spec, rows, 1), 1);
    ck_assert(rows[0].columns == 6 && rows[0].kind == MUSLIN_FIT_FRAMED && rows[0].exact == 1);
}
END_TEST

/* Geometry: a 12 in block measures 16.97 in across its points (12 sqrt 2); 4 x 5 of them, 67.88 x 84.85 in. Counted on
 * squared paper, 4 x 5 blocks enclose 3 x 4 more. */
START_TEST(on_point_a_block_counts_by_its_diagonal)
{
    struct muslin_fit_spec spec = wanted(WHOLE_IN(68), WHOLE_IN(85), MUSLIN_FIT_ALLOW_ON_POINT);
    struct muslin_fit rows[1];
    block_of(&spec, WHOLE_IN(12));
    within(&spec, IN(0, 1, 4));
    ck_assert_uint_eq(settings_of(&spec, rows, 1), 1);
    ck_assert(rows[0].columns == 4 && rows[0].rows == 5 && rows[0].blocks == 20 && rows[0].alternates == 12);
    ck_assert(rows[0].finished_width * 100 / 8128 == 6788 && rows[0].finished_length * 100 / 8128 == 8485);
    ck_assert_int_eq(rows[0].off_width, rows[0].finished_width - WHOLE_IN(68));
    ck_assert_int_eq(rows[0].exact, 0);
    spec.rank = MUSLIN_FIT_RANK_FEWEST_BLOCKS;
    settings_of(&spec, rows, 1);
    ck_assert_int_eq(rows[0].rank_key, 32);
}
END_TEST

/* A block of 5 ticks measures 7.07 across its points: 7 to the tick, and still not the 7 that are wanted. */
START_TEST(on_point_nothing_is_exact)
{
    struct muslin_fit_spec spec = wanted(7, 7, MUSLIN_FIT_ALLOW_ON_POINT);
    struct muslin_fit rows[1];
    block_of(&spec, 5);
    ck_assert_uint_eq(settings_of(&spec, rows, 1), 0);
    within(&spec, 1);
    ck_assert_uint_eq(settings_of(&spec, rows, 1), 1);
    ck_assert(rows[0].finished_width == 7 && rows[0].off_width == 0 && rows[0].off_length == 0);
    ck_assert_int_eq(rows[0].exact, 0);
}
END_TEST

/* ---- laid out one by one ----------------------------------------------------------------------------------------- */

/* Whether so many blocks are from least to most wide; on point c B sqrt 2 is compared by its square. */
static int in_reach(const struct muslin_fit *fit, int64_t count, muslin_len least, muslin_len most)
{
    muslin_len size = count * fit->block + 2 * fit->border;
    muslin_len low = least - 2 * fit->border;
    muslin_len high = most - 2 * fit->border;
    int64_t square = 2 * count * count * fit->block * fit->block;
    if (fit->kind == MUSLIN_FIT_ON_POINT)
        return (low <= 0 || square >= low * low) && high > 0 && square <= high * high;
    if (fit->kind == MUSLIN_FIT_SASHED)
        size += (count - 1) * fit->sash;
    if (fit->kind == MUSLIN_FIT_FRAMED)
        size += (count + 1) * fit->sash;
    return least <= size && size <= most;
}

static int is_of_parity(int64_t count, int32_t parity)
{
    return parity == MUSLIN_PARITY_ANY || (count % 2 == 0) == (parity == MUSLIN_PARITY_EVEN);
}

static int fits(const struct muslin_fit_spec *spec, const struct muslin_fit *fit)
{
    return is_of_parity(fit->columns, spec->columns_parity) && is_of_parity(fit->rows, spec->rows_parity) &&
           in_reach(fit, fit->columns, spec->wanted_width - spec->width_under,
                    spec->wanted_width + spec->width_over) &&
           in_reach(fit, fit->rows, spec->wanted_length - spec->length_under,
                    spec->wanted_length + spec->length_over);
}

static int is_listed(const struct muslin_fit *rows, size_t count, const struct muslin_fit *fit)
{
    int times = 0;
    for (size_t i = 0; i < count; i++)
        times += rows[i].kind == fit->kind && rows[i].block == fit->block && rows[i].sash == fit->sash &&
                 rows[i].border == fit->border && rows[i].columns == fit->columns && rows[i].rows == fit->rows;
    return times == 1;
}

/* Goes through every column and row of one combination. */
static size_t lay_out_counts(const struct muslin_fit_spec *spec, struct muslin_fit *fit, const struct muslin_fit *rows,
                             size_t count, int *good)
{
    size_t found = 0;
    for (fit->columns = spec->columns_least; fit->columns <= spec->columns_most; fit->columns++)
        for (fit->rows = spec->rows_least; fit->rows <= spec->rows_most; fit->rows++)
            if (fits(spec, fit)) {
                found++;
                *good &= is_listed(rows, count, fit);
            }
    return found;
}

static size_t lay_out_all(const struct muslin_fit_spec *spec, const struct muslin_fit *rows, size_t count, int *good)
{
    struct muslin_fit fit = { 0 };
    size_t found = 0;
    for (fit.kind = 1; fit.kind <= 4; fit.kind++) {
        int sashed = fit.kind == MUSLIN_FIT_SASHED || fit.kind == MUSLIN_FIT_FRAMED;
        if ((spec->flags >> (fit.kind - 1) & 1) == 0)
            continue;
        for (fit.block = spec->block_least; fit.block <= spec->block_most; fit.block += spec->block_step)
            for (fit.border = spec->border_least; fit.border <= spec->border_most; fit.border += spec->border_step)
                for (fit.sash = sashed ? spec->sash_least : 0; fit.sash <= (sashed ? spec->sash_most : 0);
                     fit.sash += spec->sash_step)
                    found += lay_out_counts(spec, &fit, rows, count, good);
    }
    return found;
}

static int64_t off_of(const struct muslin_fit *fit)
{
    return llabs(fit->off_width) + llabs(fit->off_length);
}

/* The order that the header states: key, off, blocks, kind, larger block, sash, border, columns. */
static int in_order(const struct muslin_fit *a, const struct muslin_fit *b)
{
    if (a->rank_key != b->rank_key)
        return a->rank_key < b->rank_key;
    if (off_of(a) != off_of(b))
        return off_of(a) < off_of(b);
    if (a->blocks + a->alternates != b->blocks + b->alternates)
        return a->blocks + a->alternates < b->blocks + b->alternates;
    if (a->kind != b->kind)
        return a->kind < b->kind;
    if (a->block != b->block)
        return a->block > b->block;
    if (a->sash != b->sash)
        return a->sash < b->sash;
    if (a->border != b->border)
        return a->border < b->border;
    return a->columns < b->columns;
}

static int is_ranked(const struct muslin_fit_spec *spec, const struct muslin_fit *rows, size_t count)
{
    int good = 1;
    for (size_t i = 0; i < count; i++) {
        int64_t key = spec->rank == MUSLIN_FIT_RANK_NEAREST         ? off_of(&rows[i])
                      : spec->rank == MUSLIN_FIT_RANK_FEWEST_BLOCKS ? rows[i].blocks + rows[i].alternates
                                                                : -rows[i].block;
        good &= rows[i].rank_key == key && (i == 0 || in_order(&rows[i - 1], &rows[i]));
    }
    return good;
}

static struct muslin_fit_spec draw_spec(uint64_t *state)
{
    struct muslin_fit_spec spec = MUSLIN_FIT_SPEC_INIT;
    spec.flags = (uint32_t)draw_from(state, 1, 15);
    spec.wanted_width = draw_from(state, 1, 90);
    spec.wanted_length = draw_from(state, 0, 3) == 0 ? spec.wanted_width : draw_from(state, 1, 90);
    spec.width_under = draw_from(state, 0, 6);
    spec.width_over = draw_from(state, 0, 6);
    spec.length_under = draw_from(state, 0, 30);
    spec.length_over = draw_from(state, 0, 6);
    spec.block_least = draw_from(state, 1, 9);
    spec.block_most = spec.block_least + draw_from(state, 0, 6);
    spec.block_step = draw_from(state, 1, 4);
    spec.sash_least = draw_from(state, 1, 3);
    spec.sash_most = spec.sash_least + draw_from(state, 0, 3);
    spec.sash_step = draw_from(state, 1, 2);
    spec.border_least = draw_from(state, 0, 6);
    spec.border_most = spec.border_least + draw_from(state, 0, 6);
    spec.border_step = draw_from(state, 1, 4);
    spec.columns_least = draw_from(state, 1, 4);
    spec.columns_most = spec.columns_least + draw_from(state, 0, 20);
    spec.rows_least = draw_from(state, 1, 4);
    spec.rows_most = spec.rows_least + draw_from(state, 0, 20);
    spec.rank = (int32_t)draw_from(state, 1, 3);
    spec.columns_parity = (int32_t)draw_from(state, 1, 3);
    spec.rows_parity = (int32_t)draw_from(state, 1, 3);
    return spec;
}

START_TEST(every_setting_within_the_tolerance_is_listed_once_and_in_order)
{
    static struct muslin_fit rows[ROWS_MAX];
    uint64_t state = 7;
    size_t most = 0;
    int good = 1;
    for (int i = 0; i < 3000; i++) {
        struct muslin_fit_spec spec = draw_spec(&state);
        size_t count = settings_of(&spec, rows, ROWS_MAX);
        good &= lay_out_all(&spec, rows, count, &good) == count && is_ranked(&spec, rows, count);
        most = count > most ? count : most;
    }
    ck_assert(good);
    ck_assert_uint_gt(most, 50);
}
END_TEST

START_TEST(the_best_so_many_are_the_first_of_all)
{
    static struct muslin_fit all[ROWS_MAX];
    static struct muslin_fit best[ROWS_MAX];
    uint64_t state = 11;
    for (int i = 0; i < 300; i++) {
        struct muslin_fit_spec spec = draw_spec(&state);
        size_t count = settings_of(&spec, all, ROWS_MAX);
        spec.best = draw_from(&state, 1, 12);
        size_t listed = settings_of(&spec, best, ROWS_MAX);
        ck_assert_uint_eq(listed, count < (size_t)spec.best ? count : (size_t)spec.best);
        ck_assert_int_eq(memcmp(all, best, listed * sizeof best[0]), 0);
    }
}
END_TEST

/* With tolerances so wide that every count fits, the first of the list by nearness is the nearest of all. */
START_TEST(the_nearest_is_the_first_of_the_widest_list)
{
    static struct muslin_fit rows[ROWS_MAX];
    uint64_t state = 13;
    int found = 0;
    for (int i = 0; i < 1500; i++) {
        struct muslin_fit_spec spec = draw_spec(&state);
        struct muslin_fit fit = { .size = (uint32_t)sizeof fit };
        spec.columns_most = spec.columns_least + draw_from(&state, 0, 4);
        spec.rows_most = spec.rows_least + draw_from(&state, 0, 4);
        spec.rank = MUSLIN_FIT_RANK_NEAREST;
        within(&spec, 1000);
        size_t count = settings_of(&spec, rows, ROWS_MAX);
        within(&spec, 0);
        spec.rank = (int32_t)draw_from(&state, 1, 3);
        spec.best = draw_from(&state, 0, 3);
        muslin_status status = muslin_fit_nearest(&spec, &fit, NULL);
        ck_assert_int_eq(status, count == 0 ? MUSLIN_ERR_NO_FIT : MUSLIN_OK);
        if (count > 0)
            ck_assert_int_eq(memcmp(&fit, &rows[0], sizeof fit), 0);
        found += count > 0;
    }
    ck_assert_int_gt(found, 1000);
}
END_TEST

/* ---- limits and refusals ----------------------------------------------------------------------------------------- */

/* By multiplying: (2 kinds without sashes + 2 with 3 sashes) x 4 blocks x 5 borders = 160. */
START_TEST(a_search_beyond_its_limit_is_not_begun)
{
    struct muslin_fit_spec spec = wanted(WHOLE_IN(60), WHOLE_IN(72), 15);
    struct muslin_problem problem = PROBLEM;
    struct muslin_fit out = { .size = (uint32_t)sizeof out };
    size_t count = 77;
    spec.block_most = spec.block_least + 3 * spec.block_step;
    spec.sash_most = spec.sash_least + 2 * spec.sash_step;
    spec.border_most = 4 * spec.border_step;
    spec.work_limit = 160;
    ck_ok(muslin_fit_settings(&spec, NULL, 0, 0, &count, NULL));
    spec.work_limit = 159;
    count = 77;
    ck_status(muslin_fit_settings(&spec, NULL, 0, 0, &count, &problem), MUSLIN_ERR_WORK_LIMIT);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_WORK_LIMIT);
    ck_assert(problem.value == 160 && problem.limit == 159 && problem.at == 0 && count == 77);
    ck_assert_str_eq(problem.text, "The search needs 160 steps, but the work limit is 159.");
    ck_status(muslin_fit_nearest(&spec, &out, NULL), MUSLIN_ERR_WORK_LIMIT);
    ck_assert_int_eq(out.columns, 0);
    spec.flags = MUSLIN_FIT_ALLOW_ON_POINT;
    ck_ok(muslin_fit_settings(&spec, NULL, 0, 0, &count, NULL));
    spec.flags = MUSLIN_FIT_ALLOW_ON_POINT | MUSLIN_FIT_ALLOW_SASHED | MUSLIN_FIT_ALLOW_FRAMED;
    spec.work_limit = 139; /* (1 kind + 2 with 3 sashes) x 4 x 5 */
    ck_status(muslin_fit_settings(&spec, NULL, 0, 0, &count, &problem), MUSLIN_ERR_WORK_LIMIT);
    ck_assert_int_eq(problem.value, 140);
}
END_TEST

/* Blocks of 1 and 2 ticks for 4 to 5 by 2: 4 or 5 of the first by 2, and 2 of the other by 1, three in all. */
START_TEST(settings_are_counted_to_the_last)
{
    struct muslin_fit_spec spec = wanted(4, 2, MUSLIN_FIT_ALLOW_STRAIGHT);
    struct muslin_problem problem = PROBLEM;
    struct muslin_fit rows[3];
    size_t count = 77;
    spec.width_under = spec.length_under = spec.length_over = 0;
    spec.width_over = 1;
    spec.block_least = 1;
    spec.block_most = 2;
    spec.block_step = 1;
    spec.border_most = spec.border_least = 0;
    spec.work_limit = 3;
    memset(rows, 0, sizeof rows);
    spec.best = 2;
    ck_assert_uint_eq(settings_of(&spec, rows, 3), 2);
    ck_assert_uint_eq(rows[2].size, 0);
    spec.best = 0;
    ck_assert_uint_eq(settings_of(&spec, rows, 3), 3);
    spec.work_limit = 2;
    ck_status(muslin_fit_settings(&spec, NULL, 0, 0, &count, &problem), MUSLIN_ERR_WORK_LIMIT);
    ck_assert(problem.at == 1 && problem.value == 3 && problem.limit == 2);
}
END_TEST

/* A block of a tick fills a quilt of one. */
START_TEST(the_smallest_block_is_a_quilt)
{
    struct muslin_fit_spec spec = wanted(1, 1, MUSLIN_FIT_ALLOW_STRAIGHT);
    struct muslin_fit rows[1];
    block_of(&spec, 1);
    spec.width_under = spec.width_over = spec.length_under = spec.length_over = 0;
    spec.border_most = spec.border_least = 0;
    memset(rows, 0, sizeof rows);
    ck_assert_uint_eq(settings_of(&spec, rows, 1), 1);
    ck_assert(rows[0].columns == 1 && rows[0].rows == 1 && rows[0].exact == 1);
}
END_TEST

/* Of blocks of 10 and of 2^30 ticks two of the larger are wider than any quilt, so that only the smaller serves, though
 * it comes out far from what is wanted; and so along it. */
START_TEST(what_no_count_serves_is_not_near)
{
    for (int is_length = 0; is_length <= 1; is_length++) {
        struct muslin_fit_spec spec = wanted(MUSLIN_SIZE_MAX / 2, MUSLIN_SIZE_MAX, MUSLIN_FIT_ALLOW_STRAIGHT);
        if (is_length)
            spec = wanted(MUSLIN_SIZE_MAX, MUSLIN_SIZE_MAX / 2, MUSLIN_FIT_ALLOW_STRAIGHT);
        spec.block_least = 10;
        spec.block_most = MUSLIN_SIZE_MAX;
        spec.block_step = MUSLIN_SIZE_MAX - 10;
        spec.border_most = spec.border_least = 0;
        spec.columns_least = spec.columns_most = is_length ? 1 : 2;
        spec.rows_least = spec.rows_most = is_length ? 2 : 1;
        const struct muslin_fit fit = nearest_to(&spec);
        ck_assert(fit.block == 10 && fit.columns == spec.columns_least && fit.rows == spec.rows_least);
    }
}
END_TEST

START_TEST(the_largest_search_there_is_is_counted_and_refused)
{
    struct muslin_fit_spec spec = wanted(1, 1, 15);
    struct muslin_problem problem = PROBLEM;
    size_t count = 77;
    spec.block_least = 1;
    spec.block_most = MUSLIN_SIZE_MAX;
    spec.block_step = 1;
    spec.sash_least = 1;
    spec.sash_most = MUSLIN_SIZE_MAX;
    spec.sash_step = 1;
    spec.work_limit = MUSLIN_COUNT_MAX;
    ck_status(muslin_fit_settings(&spec, NULL, 0, 0, &count, &problem), MUSLIN_ERR_WORK_LIMIT);
    ck_assert_int_eq(problem.value, MUSLIN_SIZE_MAX * (2 + 2 * MUSLIN_SIZE_MAX));
    spec.border_most = MUSLIN_SIZE_MAX;
    spec.border_step = 1;
    ck_status(muslin_fit_settings(&spec, NULL, 0, 0, &count, &problem), MUSLIN_ERR_WORK_LIMIT);
    ck_assert_int_eq(problem.value, INT64_MAX);
    ck_assert_uint_eq(count, 77);
}
END_TEST

/* Blocks of a tick within 1 to 100 each way: 10000 settings from one combination. */
START_TEST(more_settings_than_the_limit_are_refused_too)
{
    struct muslin_fit_spec spec = wanted(50, 50, MUSLIN_FIT_ALLOW_STRAIGHT);
    struct muslin_problem problem = PROBLEM;
    size_t count = 77;
    block_of(&spec, 1);
    within(&spec, 50);
    spec.work_limit = 10000;
    ck_ok(muslin_fit_settings(&spec, NULL, 0, 0, &count, NULL));
    ck_assert_uint_eq(count, 10000);
    spec.work_limit = 9999;
    count = 77;
    ck_status(muslin_fit_settings(&spec, NULL, 0, 0, &count, &problem), MUSLIN_ERR_WORK_LIMIT);
    ck_assert(problem.value == 10000 && problem.limit == 9999 && problem.at == 1 && count == 77);
    ck_assert_str_eq(problem.text, "The search finds at least 10000 results, but the work limit is 9999.");
    spec.best = 3;
    ck_status(muslin_fit_settings(&spec, NULL, 0, 0, &count, NULL), MUSLIN_ERR_WORK_LIMIT);
    /* blocks of two ticks give 50 x 50 more; those of one size alone are too many, and the others are not counted */
    spec.block_most = 2;
    spec.block_step = 1;
    spec.work_limit = 12500;
    spec.best = 0;
    ck_ok(muslin_fit_settings(&spec, NULL, 0, 0, &count, NULL));
    ck_assert_uint_eq(count, 10000 + 2500);
    spec.work_limit = 2000;
    ck_status(muslin_fit_settings(&spec, NULL, 0, 0, &count, &problem), MUSLIN_ERR_WORK_LIMIT);
    ck_assert(problem.value > 2000 && problem.value < 10000 + 2500 && problem.at == 1);
}
END_TEST

static muslin_status call_nearest(const void *spec, void *out, struct muslin_problem *problem)
{
    return muslin_fit_nearest(spec, out, problem);
}
static const struct muslin_fit_spec good_fit = {
    (uint32_t)sizeof good_fit, 15, WHOLE_IN(60), WHOLE_IN(72), 1, 2, 3, 4, WHOLE_IN(6), WHOLE_IN(9), WHOLE_IN(1),
    WHOLE_IN(1), WHOLE_IN(2), WHOLE_IN(1), 0, WHOLE_IN(2), WHOLE_IN(1), 2, 20, 3, 30, 5, 1000, MUSLIN_FIT_RANK_NEAREST,
    MUSLIN_PARITY_EVEN, MUSLIN_PARITY_ODD, 0
};
static const struct ruled nearest = RULED(call_nearest, good_fit, muslin_fit);

START_TEST(fit_checks_its_structs)
{
    ck_struct_rules(&nearest);
}
END_TEST

START_TEST(fit_refuses_what_lies_outside_its_ranges)
{
    const struct refusal refusals[] = {
        REFUSAL(muslin_fit_spec, flags, 16, MUSLIN_ERR_FLAGS, MUSLIN_ARG_SPEC),
        REFUSAL(muslin_fit_spec, flags, 0, MUSLIN_ERR_CHOICE, MUSLIN_ARG_SETTING_KIND),
        OUTSIDE(muslin_fit_spec, wanted_width, 1, MUSLIN_SIZE_MAX, MUSLIN_ARG_QUILT_WIDTH),
        OUTSIDE(muslin_fit_spec, wanted_length, 1, MUSLIN_SIZE_MAX, MUSLIN_ARG_QUILT_LENGTH),
        OUTSIDE(muslin_fit_spec, width_under, 0, MUSLIN_SIZE_MAX, MUSLIN_ARG_TOLERANCE),
        OUTSIDE(muslin_fit_spec, width_over, 0, MUSLIN_SIZE_MAX, MUSLIN_ARG_TOLERANCE),
        OUTSIDE(muslin_fit_spec, length_under, 0, MUSLIN_SIZE_MAX, MUSLIN_ARG_TOLERANCE),
        OUTSIDE(muslin_fit_spec, length_over, 0, MUSLIN_SIZE_MAX, MUSLIN_ARG_TOLERANCE),
        OUTSIDE(muslin_fit_spec, block_least, 1, MUSLIN_SIZE_MAX, MUSLIN_ARG_BLOCK_WIDTH),
        OUTSIDE(muslin_fit_spec, block_most, WHOLE_IN(6), MUSLIN_SIZE_MAX, MUSLIN_ARG_BLOCK_WIDTH),
        OUTSIDE(muslin_fit_spec, block_step, 1, MUSLIN_SIZE_MAX, MUSLIN_ARG_GRID),
        OUTSIDE(muslin_fit_spec, sash_least, 1, MUSLIN_SIZE_MAX, MUSLIN_ARG_SASH_WIDTH),
        OUTSIDE(muslin_fit_spec, sash_most, WHOLE_IN(1), MUSLIN_SIZE_MAX, MUSLIN_ARG_SASH_WIDTH),
        OUTSIDE(muslin_fit_spec, sash_step, 1, MUSLIN_SIZE_MAX, MUSLIN_ARG_GRID),
        OUTSIDE(muslin_fit_spec, border_least, 0, MUSLIN_SIZE_MAX, MUSLIN_ARG_BORDER_WIDTH),
        OUTSIDE(muslin_fit_spec, border_most, 0, MUSLIN_SIZE_MAX, MUSLIN_ARG_BORDER_WIDTH),
        OUTSIDE(muslin_fit_spec, border_step, 1, MUSLIN_SIZE_MAX, MUSLIN_ARG_GRID),
        OUTSIDE(muslin_fit_spec, columns_least, 1, MUSLIN_COUNT_MAX, MUSLIN_ARG_COLUMNS),
        OUTSIDE(muslin_fit_spec, columns_most, 2, MUSLIN_COUNT_MAX, MUSLIN_ARG_COLUMNS),
        OUTSIDE(muslin_fit_spec, rows_least, 1, MUSLIN_COUNT_MAX, MUSLIN_ARG_QUILT_ROWS),
        OUTSIDE(muslin_fit_spec, rows_most, 3, MUSLIN_COUNT_MAX, MUSLIN_ARG_QUILT_ROWS),
        OUTSIDE(muslin_fit_spec, best, 0, MUSLIN_COUNT_MAX, MUSLIN_ARG_BEST),
        OUTSIDE(muslin_fit_spec, work_limit, 1, MUSLIN_COUNT_MAX, MUSLIN_ARG_WORK_LIMIT),
        NOT_A_CHOICE(muslin_fit_spec, rank, 3, MUSLIN_ARG_RANK),
        NOT_A_CHOICE(muslin_fit_spec, columns_parity, 3, MUSLIN_ARG_PARITY),
        NOT_A_CHOICE(muslin_fit_spec, rows_parity, 3, MUSLIN_ARG_PARITY),
        REFUSAL(muslin_fit_spec, pad, 1, MUSLIN_ERR_STRUCT_TAIL, MUSLIN_ARG_SPEC),
    };
    ck_refusals(&nearest, refusals, COUNT_OF(refusals));
}
END_TEST

START_TEST(sashes_are_passed_over_where_none_is_allowed)
{
    struct muslin_fit_spec spec = good_fit;
    spec.flags = MUSLIN_FIT_ALLOW_STRAIGHT;
    spec.sash_least = -5;
    spec.sash_step = 0;
    ck_assert_int_eq(nearest_to(&spec).sash, 0);
}
END_TEST

START_TEST(what_is_asked_for_and_filled_follows_the_rules_of_rows)
{
    struct muslin_fit_spec spec = wanted(WHOLE_IN(60), WHOLE_IN(72), MUSLIN_FIT_ALLOW_STRAIGHT);
    struct muslin_fit rows[8];
    struct muslin_problem problem = PROBLEM;
    size_t count = 0;
    size_t all = 0;
    memset(rows, FILL, sizeof rows);
    spec.work_limit = 100;
    ck_ok(muslin_fit_settings(&spec, NULL, 0, 0, &all, NULL));
    ck_assert_uint_eq(all, 2); /* of 6, 6 1/2 ... 14 in, only 6 and 12 go into 60 and 72 */
    ck_status(muslin_fit_settings(&spec, rows, sizeof rows[0], 1, &count, &problem), MUSLIN_ERR_BUFFER);
    ck_assert(count == all && problem.limit == (int64_t)all && rows[0].size == 0xA5A5A5A5u);
    ck_status(muslin_fit_settings(&spec, NULL, sizeof rows[0], 8, &count, NULL), MUSLIN_ERR_NULL);
    ck_status(muslin_fit_settings(&spec, rows, sizeof rows[0] - 1, 8, &count, NULL), MUSLIN_ERR_STRUCT_SIZE);
    ck_status(muslin_fit_settings(&spec, rows, 4097, 8, &count, NULL), MUSLIN_ERR_STRUCT_SIZE);
    ck_status(muslin_fit_settings(&spec, rows, sizeof rows[0], 8, NULL, NULL), MUSLIN_ERR_NULL);
    ck_status(muslin_fit_settings(NULL, rows, sizeof rows[0], 8, &count, NULL), MUSLIN_ERR_NULL);
    ck_assert_uint_eq(rows[0].size, 0xA5A5A5A5u);
    ck_ok(muslin_fit_settings(&spec, rows, sizeof rows[0], 8, &count, NULL));
    ck_assert_uint_eq(rows[all].size, 0xA5A5A5A5u);
}
END_TEST

START_TEST(longer_rows_keep_their_stride_and_get_zeroes)
{
    struct {
        struct muslin_fit fit;
        int32_t newer[3];
    } rows[8];
    struct muslin_fit plain[8];
    struct muslin_fit_spec spec = wanted(WHOLE_IN(60), WHOLE_IN(72), MUSLIN_FIT_ALLOW_STRAIGHT);
    size_t count = settings_of(&spec, plain, 8);
    memset(rows, FILL, sizeof rows);
    ck_ok(muslin_fit_settings(&spec, &rows[0].fit, sizeof rows[0], 8, &count, NULL));
    for (size_t i = 0; i < count; i++) {
        ck_assert_uint_eq(rows[i].fit.size, sizeof rows[0]);
        ck_assert_int_eq(memcmp((char *)&rows[i].fit + 4, (char *)&plain[i] + 4, sizeof plain[i] - 4), 0);
        ck_assert(rows[i].newer[0] == 0 && rows[i].newer[1] == 0 && rows[i].newer[2] == 0);
    }
}
END_TEST

/* No even count lies between 3 and 3; 100 blocks of the largest size are larger than any size. */
START_TEST(where_no_count_serves_there_is_no_nearest)
{
    struct muslin_fit_spec spec = wanted(WHOLE_IN(60), WHOLE_IN(72), MUSLIN_FIT_ALLOW_STRAIGHT);
    struct muslin_fit out = { .size = (uint32_t)sizeof out };
    spec.columns_least = 3;
    spec.columns_most = 3;
    spec.columns_parity = MUSLIN_PARITY_EVEN;
    struct muslin_problem problem = PROBLEM;
    ck_status(muslin_fit_nearest(&spec, &out, &problem), MUSLIN_ERR_NO_FIT);
    ck_assert(problem.argument == MUSLIN_ARG_COLUMNS && problem.value == 3 && problem.limit == 0);
    spec.columns_parity = MUSLIN_PARITY_ODD;
    ck_assert_int_eq(nearest_to(&spec).columns, 3);
    block_of(&spec, MUSLIN_SIZE_MAX);
    ck_status(muslin_fit_nearest(&spec, &out, NULL), MUSLIN_ERR_NO_FIT);
    spec.columns_least = 1;
    spec.rows_least = 2;
    ck_status(muslin_fit_nearest(&spec, &out, NULL), MUSLIN_ERR_NO_FIT);
    ck_assert_int_eq(out.columns, 0);
    spec.rows_least = 1;
    ck_assert_int_eq(nearest_to(&spec).finished_width, MUSLIN_SIZE_MAX);
    spec.flags = MUSLIN_FIT_ALLOW_ON_POINT;
    ck_status(muslin_fit_nearest(&spec, &out, NULL), MUSLIN_ERR_NO_FIT);
}
END_TEST

START_TEST(the_largest_settings_are_still_right)
{
    struct muslin_fit_spec spec = wanted(MUSLIN_SIZE_MAX, MUSLIN_SIZE_MAX, MUSLIN_FIT_ALLOW_STRAIGHT);
    struct muslin_fit rows[1];
    block_of(&spec, 1);
    spec.columns_most = MUSLIN_COUNT_MAX;
    spec.rows_most = MUSLIN_COUNT_MAX;
    spec.width_over = MUSLIN_SIZE_MAX;
    ck_assert_uint_eq(settings_of(&spec, rows, 1), 1);
    ck_assert(rows[0].columns == MUSLIN_SIZE_MAX && rows[0].blocks == MUSLIN_SIZE_MAX * MUSLIN_SIZE_MAX);
    spec.flags = MUSLIN_FIT_ALLOW_FRAMED;
    spec.sash_least = MUSLIN_SIZE_MAX;
    spec.sash_most = MUSLIN_SIZE_MAX;
    ck_assert_uint_eq(settings_of(&spec, rows, 1), 0);
    spec.flags = MUSLIN_FIT_ALLOW_SASHED;
    spec.border_least = MUSLIN_SIZE_MAX;
    spec.border_most = MUSLIN_SIZE_MAX;
    ck_assert_uint_eq(settings_of(&spec, rows, 1), 0);
}
END_TEST

INIT_CALL(fit)

START_TEST(initial_values_are_those_of_the_macro)
{
    const struct muslin_fit_spec initial = MUSLIN_FIT_SPEC_INIT;
    ck_init_rules(init_fit, &initial, (uint32_t)sizeof initial);
}
END_TEST

static void add_settings(Suite *suite)
{
    TCase *settings = tcase_create("settings");
    tcase_set_timeout(settings, 60);
    tcase_add_test(settings, five_by_six_blocks_of_a_foot_make_sixty_by_seventy_two);
    tcase_add_test(settings, the_nearest_setting_may_lie_outside_the_tolerance);
    tcase_add_test(settings, sashes_stand_between_blocks_or_round_them_too);
    tcase_add_test(settings, on_point_a_block_counts_by_its_diagonal);
    tcase_add_test(settings, on_point_nothing_is_exact);
    tcase_add_test(settings, every_setting_within_the_tolerance_is_listed_once_and_in_order);
    tcase_add_test(settings, the_best_so_many_are_the_first_of_all);
    tcase_add_test(settings, the_nearest_is_the_first_of_the_widest_list);
    tcase_add_test(settings, a_search_beyond_its_limit_is_not_begun);
    tcase_add_test(settings, the_largest_search_there_is_is_counted_and_refused);
    tcase_add_test(settings, more_settings_than_the_limit_are_refused_too);
    tcase_add_test(settings, fit_checks_its_structs);
    tcase_add_test(settings, fit_refuses_what_lies_outside_its_ranges);
    tcase_add_test(settings, sashes_are_passed_over_where_none_is_allowed);
    tcase_add_test(settings, what_is_asked_for_and_filled_follows_the_rules_of_rows);
    tcase_add_test(settings, longer_rows_keep_their_stride_and_get_zeroes);
    tcase_add_test(settings, settings_are_counted_to_the_last);
    tcase_add_test(settings, the_smallest_block_is_a_quilt);
    tcase_add_test(settings, what_no_count_serves_is_not_near);
    tcase_add_test(settings, where_no_count_serves_there_is_no_nearest);
    tcase_add_test(settings, the_largest_settings_are_still_right);
    tcase_add_test(settings, initial_values_are_those_of_the_macro);
    suite_add_tcase(suite, settings);
}

Suite *fit_suite(void);

Suite *fit_suite(void)
{
    Suite *suite = suite_create("fit");
    add_settings(suite);
    add_fit_bed(suite);
    add_fit_across(suite);
    add_fit_rescale(suite);
    return suite;
}
