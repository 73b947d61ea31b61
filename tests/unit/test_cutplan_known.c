/* test_cutplan_known.c - plans whose least is known.
 *
 * SPDX-License-Identifier: MIT */
#include "test_cutplan_made.h"

static struct planned p;

START_TEST(three_sizes_of_squares_take_sixty_inches)
{
    /* Example: 32 squares of 5 1/2 in, 16 of 6 and 8 of 9 1/2 at 40 in usable: 60 in, proven. */
    /* Example: proven = 1: no plan of two stages is shorter. */
    /* Example: of three square sizes three. */
    size_t count = 0;
    start(&p, WHOLE_IN(40));
    p.spec.work_limit = 400000000;
    want(&p, 32, IN(5, 1, 2), IN(5, 1, 2));
    want(&p, 16, WHOLE_IN(6), WHOLE_IN(6));
    want(&p, 8, IN(9, 1, 2), IN(9, 1, 2));
    make_plan(&p);
    ck_assert_int_eq(p.totals.cloth_length, WHOLE_IN(60));
    ck_assert_int_eq(p.totals.proven, 1);
    ck_ok(muslin_cutplan_ways(p.plan, NULL, 0, 0, &count, NULL));
    ck_assert_uint_eq(count, 3);
    muslin_cutplan_free(p.plan);
}
END_TEST

void add_cutplan_known(Suite *suite)
{
    TCase *known = tcase_create("known");
    tcase_set_timeout(known, 120);
    tcase_add_test(known, three_sizes_of_squares_take_sixty_inches);
    suite_add_tcase(suite, known);
}
