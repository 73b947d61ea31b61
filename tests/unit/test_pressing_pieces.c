/* test_pressing_pieces.c - the seams of units and of the caller's own shapes: where they run and how long they are.
 *
 * SPDX-License-Identifier: MIT */
#include "test_quilt_pieced.h"

#include "refusals.h"

Suite *pressing_pieces_suite(void);

struct seam_wanted {
    muslin_len from_x, from_y, to_x, to_y;
};

static void ck_seams(struct sewn *s, muslin_id node, const struct seam_wanted *wanted, size_t n)
{
    struct muslin_solution *solution = solved(s->quilt, node);
    struct muslin_pressing_spec spec = MUSLIN_PRESSING_SPEC_INIT;
    struct muslin_pressing_plan *plan = NULL;
    struct muslin_pressed_seam rows[32];
    size_t count = 0;
    ck_ok(muslin_pressing_create(solution, &spec, &plan, NULL));
    ck_ok(muslin_pressing_seams(plan, rows, sizeof rows[0], COUNT_OF(rows), &count, NULL));
    ck_assert_uint_eq(count, n);
    for (size_t i = 0; i < n; i++) {
        ck_assert_int_eq(rows[i].node, node);
        ck_assert_int_eq(rows[i].seam, (int64_t)i);
        ck_assert_msg(rows[i].from_x == wanted[i].from_x && rows[i].from_y == wanted[i].from_y &&
                          rows[i].to_x == wanted[i].to_x && rows[i].to_y == wanted[i].to_y,
                      "seam %zu: %lld, %lld to %lld, %lld", i, (long long)rows[i].from_x, (long long)rows[i].from_y,
                      (long long)rows[i].to_x, (long long)rows[i].to_y);
    }
    muslin_pressing_free(plan);
    muslin_solution_free(solution);
}
#define CK_SEAMS(node, ...)                                          \
    do {                                                             \
        const struct seam_wanted wanted_[] = { __VA_ARGS__ };        \
        ck_seams(&s, node, wanted_, COUNT_OF(wanted_));              \
    } while (0)

START_TEST(seams_of_units_run_upwards_from_corner_to_corner)
{
    struct sewn s;
    begin_sewing(&s);
    CK_SEAMS(unit_case_of(&s, &unit_cases[0], 3000, 0, 0), { 0, 0, 3000, 3000 });
    CK_SEAMS(unit_case_of(&s, &unit_cases[2], 3000, 0, 0), { 3000, 0, 1500, 1500 }, { 1500, 1500, 3000, 3000 },
             { 0, 0, 1500, 1500 }, { 1500, 1500, 0, 3000 });
    /* the long line of a split quarter meets two patches: two seams; of the other hand the half comes first */
    CK_SEAMS(unit_case_of(&s, &unit_cases[3], 3000, 0, 0), { 0, 0, 1500, 1500 }, { 1500, 1500, 0, 3000 },
             { 1500, 1500, 3000, 3000 });
    CK_SEAMS(unit_case_of(&s, &unit_cases[4], 3000, 0, 0), { 3000, 0, 1500, 1500 }, { 1500, 1500, 0, 3000 },
             { 1500, 1500, 3000, 3000 });
    CK_SEAMS(unit_case_of(&s, &unit_cases[5], 3000, 0, 0), { 3000, 0, 1500, 1500 }, { 0, 0, 1500, 1500 });
    CK_SEAMS(unit_case_of(&s, &unit_cases[7], 3000, 2000, 700), { 2300, 0, 3000, 700 }, { 3000, 1300, 2300, 2000 },
             { 700, 0, 0, 700 }, { 0, 1300, 700, 2000 });
    CK_SEAMS(unit_case_of(&s, &unit_cases[9], 4000, 3000, 0), { 4000, 0, 0, 3000 });
    end_sewing(&s);
}
END_TEST

START_TEST(seams_of_shapes_keep_to_their_size)
{
    struct sewn s;
    begin_sewing(&s);
    const struct muslin_corner_spec slant[] = SLANT_CORNER;
    CK_SEAMS(shape_of(&s, slant, COUNT_OF(slant), 2, fixed_of(s.quilt, 30001), fixed_of(s.quilt, 40000)),
             { 30001, 20000, 15001, 40000 });
    const struct muslin_corner_spec bricks[] = {
        CORNER(OUTLINE, 0, 0), CORNER(OUTLINE, 900, 0), CORNER(OUTLINE, 900, 600), CORNER(OUTLINE, 0, 600),
        CORNER(0, 0, 0), CORNER(0, 900, 0), CORNER(0, 900, 300), CORNER(0, 700, 300), CORNER(0, 0, 300),
        CORNER(1, 0, 300), CORNER(1, 400, 300), CORNER(1, 400, 600), CORNER(1, 0, 600),
        CORNER(2, 600, 300), CORNER(2, 900, 300), CORNER(2, 900, 600), CORNER(2, 600, 600), CORNER(2, 400, 600),
        CORNER(2, 400, 300)
    };
    CK_SEAMS(shape_of(&s, bricks, COUNT_OF(bricks), 3, 0, 0), { 0, 300, 400, 300 }, { 400, 300, 400, 600 },
             { 400, 300, 900, 300 });
    end_sewing(&s);
}
END_TEST

/* Long side plus 1/4 in at each end: sqrt 2 x 3000 = 4242.64; 4000 and 3000 make 5000. Both recipes make two at one go,
 * and both are sewn. */
START_TEST(seams_are_as_long_as_finished_and_an_allowance_at_each_end)
{
    struct sewn s;
    begin_sewing(&s);
    const struct unit_case *cases[] = { &unit_cases[0], &unit_cases[8] };
    const muslin_len sewn[] = { 2 * (4243 + 4064), 2 * (5000 + 4064) };
    for (size_t i = 0; i < 2; i++) {
        muslin_id node = unit_case_of(&s, cases[i], i == 0 ? 3000 : 4000, 3000, 0);
        struct muslin_solution *solution = solved(s.quilt, node);
        struct muslin_sewn_totals totals = { .size = (uint32_t)sizeof totals };
        ck_ok(muslin_sewing_totals(solution, 0, 0, &totals, NULL));
        ck_assert_int_eq(totals.sewn, sewn[i]);
        muslin_solution_free(solution);
    }
    end_sewing(&s);
}
END_TEST

Suite *pressing_pieces_suite(void)
{
    Suite *suite = suite_create("pressing_pieces");
    TCase *tests = tcase_create("seams of units and own shapes");
    tcase_add_test(tests, seams_of_units_run_upwards_from_corner_to_corner);
    tcase_add_test(tests, seams_of_shapes_keep_to_their_size);
    tcase_add_test(tests, seams_are_as_long_as_finished_and_an_allowance_at_each_end);
    suite_add_tcase(suite, tests);
    return suite;
}
