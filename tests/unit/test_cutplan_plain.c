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

Suite *cutplan_plain_suite(void)
{
    Suite *suite = suite_create("cutplan_plain");
    TCase *tcase = tcase_create("plain");
    tcase_set_timeout(tcase, 60);
    tcase_add_test(tcase, refusals_have_a_place_where_a_row_is_wrong);
    tcase_add_test(tcase, stock_in_any_order_gives_the_same_plan);
    suite_add_tcase(suite, tcase);
    return suite;
}
