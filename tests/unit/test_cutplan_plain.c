/* test_cutplan_plain.c - what a plan says of requests in any order, and where refusals stand.
 *
 * SPDX-License-Identifier: MIT */
#include "test_cutplan_made.h"

static struct planned p;

/* ---- where refusals stand ---------------------------------------------------------------------------------------- */

static muslin_status refused(const struct muslin_allocator *allocator, struct muslin_cutplan **out,
                             struct muslin_problem *problem)
{
    return muslin_cutplan_create(&p.spec, p.pieces, sizeof p.pieces[0], p.n, p.stock, sizeof p.stock[0], p.stock_n,
                                 allocator, NULL, NULL, out, problem);
}

/* Of an allocator or output that is not there no row is named, however many rows were read; of a row that is. */
START_TEST(refusals_have_a_place_where_a_row_is_wrong)
{
    struct muslin_allocator allocator;
    struct muslin_cutplan *plan = NULL;
    ck_ok(muslin_allocator_libc(&allocator));
    start(&p, WHOLE_IN(40));
    for (int32_t i = 0; i < 3; i++)
        want(&p, 2, WHOLE_IN(5), WHOLE_IN(5));
    for (int32_t with_stock = 0; with_stock < 2; with_stock++) {
        struct muslin_problem problem = PROBLEM;
        ck_status(refused(NULL, &plan, &problem), MUSLIN_ERR_NULL);
        ck_assert_int_eq(problem.argument, MUSLIN_ARG_ALLOCATOR);
        ck_assert_int_eq(problem.at, 0);
        ck_status(refused(&allocator, NULL, &problem), MUSLIN_ERR_NULL);
        ck_assert_int_eq(problem.argument, MUSLIN_ARG_OUTPUT);
        ck_assert_int_eq(problem.at, 0);
        for (size_t row = 0; row < p.n; row++) {
            p.pieces[row].cut_width = 0;
            ck_status(refused(&allocator, &plan, &problem), MUSLIN_ERR_RANGE);
            ck_assert_int_eq(problem.at, (int64_t)row);
            p.pieces[row].cut_width = WHOLE_IN(5);
            p.pieces[row].kind = MUSLIN_BLANK_SLOPED;
            p.pieces[row].flags = MUSLIN_BLANK_MAY_TURN;
            ck_status(refused(&allocator, &plan, &problem), MUSLIN_ERR_FLAGS);
            ck_assert_int_eq(problem.at, (int64_t)row);
            ck_assert_int_eq(problem.value, MUSLIN_BLANK_MAY_TURN);
            ck_assert_int_eq(problem.limit, 0);
            p.pieces[row].kind = MUSLIN_BLANK_PIECE;
        }
        p.spec.usable_width = 0;
        for (size_t i = 0; i < 3; i++)
            have(&p, 2, WHOLE_IN(20), WHOLE_IN(20))->cost = 2;
        for (size_t row = 0; row < p.stock_n; row++) {
            p.stock[row].width = 0;
            ck_status(refused(&allocator, &plan, &problem), MUSLIN_ERR_RANGE);
            ck_assert_int_eq(problem.at, (int64_t)row);
            p.stock[row].width = WHOLE_IN(20);
        }
    }
    ck_assert_ptr_null(plan);
}
END_TEST

/* What is too much has no value that could be told, and no limit. */
START_TEST(what_is_too_much_has_no_limit)
{
    struct muslin_allocator allocator;
    struct muslin_cutplan *plan = NULL;
    struct muslin_problem problem = PROBLEM;
    ck_ok(muslin_allocator_libc(&allocator));
    start(&p, MUSLIN_SIZE_MAX); /* 2^21 square strips of 2^60 square ticks, of which one tick of width is waste */
    want(&p, 1000000, MUSLIN_SIZE_MAX / 2 + 1, MUSLIN_SIZE_MAX);
    ck_status(refused(&allocator, &plan, &problem), MUSLIN_ERR_OVERFLOW);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_WASTE);
    ck_assert_int_eq(problem.value, 0);
    ck_assert_int_eq(problem.limit, 0);
    p.spec.spare_pieces = MUSLIN_COUNT_MAX;
    for (int64_t i = 0; i < 3; i++)
        want(&p, 7, MUSLIN_SIZE_MAX - i, MUSLIN_SIZE_MAX);
    ck_status(refused(&allocator, &plan, &problem), MUSLIN_ERR_OVERFLOW);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_PIECES);
    ck_assert_int_eq(problem.value, 7);
    ck_assert_int_eq(problem.limit, 0);
    ck_assert_ptr_null(plan);
}
END_TEST

/* ---- rows in another order ---------------------------------------------------------------------------------------- */

enum { OF_STOCK = 4, ORDERS = 24 };

/* The numbers 0 .. 3 in one of their orders. */
static void put_in_order(int32_t order, int32_t rows[OF_STOCK])
{
    for (int32_t i = 0; i < OF_STOCK; i++) {
        int32_t at = i == 0 ? 0 : order % (i + 1);
        order /= i + 1;
        for (int32_t k = i; k > at; k--)
            rows[k] = rows[k - 1];
        rows[at] = i;
    }
}

/* Four kinds of stock that cost the same, some as wide, some as long, some of which there are as many: whatever their
 * order, the same ways in the same order, and the same strips from them. */
START_TEST(stock_in_any_order_gives_the_same_plan)
{
    static const int64_t sides[][OF_STOCK][3] = { /* width, length, count */
        { { 20, 18, 1 }, { 20, 12, 3 }, { 22, 10, 2 }, { 18, 21, 1 } },
        { { 20, 18, 1 }, { 20, 18, 3 }, { 20, 18, 2 }, { 20, 12, 9 } },
        { { 20, 10, 9 }, { 19, 11, 8 }, { 18, 12, 7 }, { 17, 13, 6 } },
        { { 11, 19, 1 }, { 12, 19, 1 }, { 11, 20, 1 }, { 11, 19, 2 } },
    };
    for (size_t kind = 0; kind < sizeof sides / sizeof sides[0]; kind++) {
        static struct muslin_cutplan_way first_ways[STRIPS], ways[STRIPS];
        static struct muslin_cutplan_strip first_strips[STRIPS];
        size_t first_count = 0, count = 0, strips = 0;
        for (int32_t order = 0; order < ORDERS; order++) {
            int32_t rows[OF_STOCK];
            put_in_order(order, rows);
            start(&p, 0);
            p.spec.work_limit = 100000;
            want(&p, 5, WHOLE_IN(6), WHOLE_IN(5))->flags = MUSLIN_BLANK_MAY_TURN;
            want(&p, 4, WHOLE_IN(4), WHOLE_IN(4));
            for (int32_t i = 0; i < OF_STOCK; i++) {
                const int64_t *side = sides[kind][rows[i]];
                struct muslin_cutplan_stock_spec *stock = have(&p, side[2], WHOLE_IN(side[0]), WHOLE_IN(side[1]));
                stock->cost = 5;
                stock->label = rows[i];
            }
            make_plan(&p);
            ck_ok(muslin_cutplan_ways(p.plan, ways, sizeof ways[0], STRIPS, &count, NULL));
            for (size_t i = 0; i < count; i++)
                ways[i].stock = p.stock[ways[i].stock].label;
            for (size_t i = 0; i < p.strip_count; i++)
                if (p.strips[i].stock >= 0)
                    p.strips[i].stock = p.stock[p.strips[i].stock].label;
            if (order == 0) {
                memcpy(first_ways, ways, sizeof ways);
                memcpy(first_strips, p.strips, sizeof first_strips);
                first_count = count;
                strips = p.strip_count;
            }
            ck_assert_uint_eq(count, first_count);
            ck_assert_uint_eq(p.strip_count, strips);
            ck_assert_mem_eq(ways, first_ways, count * sizeof ways[0]);
            ck_assert_mem_eq(p.strips, first_strips, strips * sizeof first_strips[0]);
            muslin_cutplan_free(p.plan);
        }
    }
}
END_TEST

/* ---- requests of a few ticks -------------------------------------------------------------------------------------- */

/* Any piece, down to a single tick. */
static void draw_few_ticks(uint64_t *state)
{
    const int32_t kind = (int32_t)draw_from(state, 1, 6);
    struct muslin_blank_spec *piece = want(&p, draw_from(state, 0, 6), draw_from(state, 1, 12), draw_from(state, 1, 12));
    piece->priority = (int32_t)draw_from(state, 0, 2);
    piece->kind = kind > MUSLIN_BLANK_SLOPED ? MUSLIN_BLANK_PIECE : kind;
    if (kind == MUSLIN_BLANK_LENGTHWISE) {
        piece->cut_length = draw_from(state, 8, 20);
        piece->cut_width = draw_from(state, 1, 5);
    } else if (kind == MUSLIN_BLANK_JOINED) {
        piece->cut_width = draw_from(state, 1, 150);
        piece->join_loss = draw_from(state, 0, 3);
        piece->count = draw_from(state, 1, 2);
        piece->least_part = draw_from(state, 0, 8);
    } else if (kind == MUSLIN_BLANK_SLOPED) {
        piece->run_in = draw_from(state, 0, 3);
    } else {
        piece->flags = draw_from(state, 0, 1) ? MUSLIN_BLANK_MAY_TURN : 0;
    }
}

static void draw_ticks(uint64_t *state, int from_stock)
{
    start(&p, from_stock ? 0 : draw_from(state, 18, 40));
    for (uint32_t bit = MUSLIN_CUTPLAN_NO_PANELS; bit <= MUSLIN_CUTPLAN_BY_PRIORITY; bit *= 2)
        p.spec.flags |= draw_from(state, 0, 5) == 0 ? bit : 0;
    if (from_stock)
        p.spec.flags &= ~MUSLIN_CUTPLAN_FOLDED;
    p.spec.end_loss = draw_from(state, 0, 4);
    p.spec.straightening = draw_from(state, 0, 2);
    p.spec.spare_pieces = draw_from(state, 0, 1);
    p.spec.work_limit = draw_from(state, 0, 30000);
    p.spec.print = (int32_t)(draw_from(state, 0, 3) == 0 ? MUSLIN_PRINT_ONE_WAY : MUSLIN_PRINT_NONE);
    if (draw_from(state, 0, 2) == 0) {
        p.spec.resquare_loss = draw_from(state, 1, 4);
        p.spec.resquare_every = draw_from(state, 1, 5);
    }
    for (int64_t i = draw_from(state, 1, 5); i > 0; i--)
        draw_few_ticks(state);
    for (int64_t i = draw_from(state, 0, 1); i > 0; i--) { /* some again */
        p.pieces[p.n] = p.pieces[draw_from(state, 0, (int64_t)p.n - 1)];
        p.n++;
    }
    for (int64_t i = from_stock ? draw_from(state, 1, 3) : 0; i > 0; i--)
        have(&p, draw_from(state, 0, 3) == 0 ? draw_from(state, 0, 9) : MUSLIN_COUNT_MAX, draw_from(state, 12, 30),
             draw_from(state, 12, 30))->cost = draw_from(state, 1, 9);
}

/* A square of one tick from a bolt of two, three of which are lost at its beginning. */
START_TEST(a_single_tick)
{
    start(&p, 2);
    want(&p, 1, 1, 1);
    p.spec.straightening = 3;
    make_plan(&p);
    ck_assert_int_eq(p.totals.cost, 1);
    ck_assert_int_eq(p.totals.cloth_length, 4);
    ck_assert_int_eq(p.totals.waste, 2 * (4 * 2 - 1));
    ck_assert_int_eq(p.totals.area_bound, 1);
    muslin_cutplan_free(p.plan);
}
END_TEST

/* What a plan of ticks says holds as well as of inches. */
START_TEST(few_ticks_are_cut_as_exactly)
{
    uint64_t state = 5 + (uint64_t)_i;
    int planned = 0;
    for (int round = 0; round < 250; round++) {
        struct muslin_problem problem = PROBLEM;
        draw_ticks(&state, _i);
        const muslin_status status = try_plan(&p, &problem);
        if (status != MUSLIN_OK) {
            ck_assert_msg(status == MUSLIN_ERR_NO_YIELD || status == MUSLIN_ERR_NOT_ENOUGH ||
                          status == MUSLIN_ERR_WORK_LIMIT, "%s", problem.text);
            continue;
        }
        ck_plan(&p);
        muslin_cutplan_free(p.plan);
        planned++;
    }
    ck_assert_int_ge(planned, 100);
}
END_TEST

Suite *cutplan_plain_suite(void)
{
    Suite *suite = suite_create("cutplan_plain");
    TCase *tcase = tcase_create("plain");
    tcase_set_timeout(tcase, 60);
    tcase_add_test(tcase, refusals_have_a_place_where_a_row_is_wrong);
    tcase_add_test(tcase, what_is_too_much_has_no_limit);
    tcase_add_test(tcase, a_single_tick);
    tcase_add_test(tcase, stock_in_any_order_gives_the_same_plan);
    tcase_add_loop_test(tcase, few_ticks_are_cut_as_exactly, 0, 2);
    suite_add_tcase(suite, tcase);
    return suite;
}
