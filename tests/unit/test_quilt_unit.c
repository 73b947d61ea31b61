/* test_quilt_unit.c - pieced units as parts of a quilt: what one takes, and what it refuses.
 *
 * SPDX-License-Identifier: MIT */
#include "test_quilt_pieced.h"

#include "refusals.h"

Suite *quilt_unit_suite(void);

static struct muslin_quilt_unit_spec initial_unit(void)
{
    struct muslin_quilt_unit_spec spec = MUSLIN_QUILT_UNIT_SPEC_INIT;
    return spec;
}

INIT_CALL(quilt_unit)

START_TEST(a_spec_begins_as_stated)
{
    const struct muslin_quilt_unit_spec initial = MUSLIN_QUILT_UNIT_SPEC_INIT;
    ck_init_rules(init_quilt_unit, &initial, sizeof initial);
    /* One half-square, two at a time, of the first hand. */
    ck_assert_int_eq(initial.kind, MUSLIN_UNIT_HALF_SQUARE);
    ck_assert_int_eq(initial.method, MUSLIN_UNIT_METHOD_TWO_AT_A_TIME);
    ck_assert_int_eq(initial.hand, 1);
}
END_TEST

START_TEST(equal_units_are_one_node)
{
    struct sewn s;
    begin_sewing(&s);
    /* Example: a half-square, blue below its rising seam and white above. */
    struct muslin_quilt_unit_spec spec = initial_unit();
    spec.width = s.two;
    const muslin_id below[] = { s.blue, s.white };
    const muslin_id above[] = { s.white, s.blue };
    muslin_id first = 0;
    muslin_id again = 0;
    muslin_id other = 0;
    ck_ok(muslin_quilt_unit(s.quilt, &spec, below, 2, &first, NULL));
    ck_ok(muslin_quilt_unit(s.quilt, &spec, below, 2, &again, NULL));
    ck_ok(muslin_quilt_unit(s.quilt, &spec, above, 2, &other, NULL));
    ck_assert_int_eq(first, again);
    ck_assert_int_ne(first, other);
    spec.method = MUSLIN_UNIT_METHOD_PIECES;
    ck_ok(muslin_quilt_unit(s.quilt, &spec, below, 2, &again, NULL));
    ck_assert_int_ne(first, again);
    struct muslin_node node = { .size = (uint32_t)sizeof node };
    ck_ok(muslin_quilt_node(s.quilt, first, &node, NULL));
    ck_assert_int_eq(node.kind, MUSLIN_NODE_UNIT);
    ck_assert_int_eq(node.children, 0);
    ck_assert_int_eq(node.depth, 1);
    end_sewing(&s);
}
END_TEST

/* ---- what is refused -------------------------------------------------------------------------------------------- */

/* The quilt, and how many fabrics are given. */
static struct sewn *sewing;
static size_t fabrics_given;

static muslin_status make_unit(const void *spec, void *out, struct muslin_problem *problem)
{
    const muslin_id fabrics[] = { sewing->blue, sewing->white, sewing->blue, sewing->white };
    const struct muslin_part_counts before = counts_of(sewing->quilt);
    muslin_id id = -7;
    muslin_status status = muslin_quilt_unit(sewing->quilt, spec, fabrics, fabrics_given, &id, problem);
    (void)out;
    ck_assert(status == MUSLIN_OK || id == -7);
    if (status != MUSLIN_OK)
        ck_same_parts(sewing->quilt, &before);
    return status;
}

#define NO_SUCH(member, value, status, argument) REFUSAL(muslin_quilt_unit_spec, member, value, status, argument)

START_TEST(a_unit_is_of_a_kind_method_and_hand_that_there_is)
{
    struct sewn s;
    begin_sewing(&s);
    sewing = &s;
    fabrics_given = 2;
    struct muslin_quilt_unit_spec spec = initial_unit();
    spec.width = s.two;
    const struct ruled ruled = { make_unit, &spec, sizeof spec, 8, 8, 0 };
    ck_spec_rules(&ruled);
    ck_no_flag_known(&ruled);
    const struct refusal refusals[] = {
        NO_SUCH(kind, 0, MUSLIN_ERR_CHOICE, MUSLIN_ARG_UNIT_KIND),
        NO_SUCH(kind, MUSLIN_UNIT_RECTANGLE, MUSLIN_ERR_CHOICE, MUSLIN_ARG_UNIT_KIND),
        NO_SUCH(kind, MUSLIN_UNIT_TRIANGLE_60, MUSLIN_ERR_CHOICE, MUSLIN_ARG_UNIT_KIND),
        NO_SUCH(kind, MUSLIN_UNIT_TRAPEZOID, MUSLIN_ERR_CHOICE, MUSLIN_ARG_UNIT_KIND),
        NO_SUCH(kind, MUSLIN_UNIT_SLANTED_SLICE, MUSLIN_ERR_CHOICE, MUSLIN_ARG_UNIT_KIND),
        NO_SUCH(kind, INT32_MAX, MUSLIN_ERR_CHOICE, MUSLIN_ARG_UNIT_KIND),
        NO_SUCH(method, 0, MUSLIN_ERR_CHOICE, MUSLIN_ARG_METHOD),
        NO_SUCH(method, 10, MUSLIN_ERR_CHOICE, MUSLIN_ARG_METHOD),
        NO_SUCH(method, MUSLIN_UNIT_METHOD_FLIPPED_CORNERS, MUSLIN_ERR_METHOD, MUSLIN_ARG_METHOD),
        NO_SUCH(hand, 0, MUSLIN_ERR_CHOICE, MUSLIN_ARG_HAND),
        NO_SUCH(hand, 2, MUSLIN_ERR_CHOICE, MUSLIN_ARG_HAND),
        NO_SUCH(pad, 1, MUSLIN_ERR_STRUCT_TAIL, MUSLIN_ARG_SPEC),
        NO_SUCH(width, 0, MUSLIN_ERR_FOREIGN, MUSLIN_ARG_MEASURE),
        NO_SUCH(width, s.blue, MUSLIN_ERR_FOREIGN, MUSLIN_ARG_MEASURE),
        NO_SUCH(height, s.two, MUSLIN_ERR_RANGE, MUSLIN_ARG_MEASURE),
        NO_SUCH(corner, s.two, MUSLIN_ERR_RANGE, MUSLIN_ARG_MEASURE),
    };
    ck_refusals(&ruled, refusals, COUNT_OF(refusals));
    struct muslin_quilt_unit_spec tall = MUSLIN_QUILT_UNIT_SPEC_INIT;
    struct muslin_problem problem = PROBLEM;
    const muslin_id fabrics[] = { s.blue, s.white };
    muslin_id id = 0;
    tall.width = tall.height = s.two;
    ck_status(muslin_quilt_unit(s.quilt, &tall, fabrics, 2, &id, &problem), MUSLIN_ERR_RANGE);
    ck_assert_str_eq(problem.text, "Measure is number 3, but none is taken here.");
    end_sewing(&s);
}
END_TEST

static void ck_refused_at(struct sewn *s, const struct muslin_quilt_unit_spec *spec, size_t fabrics,
                          muslin_status status, int32_t argument, int64_t at)
{
    const muslin_id ids[] = { s->blue, s->white, s->two };
    struct muslin_problem problem = PROBLEM;
    muslin_id id = -7;
    ck_status(muslin_quilt_unit(s->quilt, spec, ids, fabrics, &id, &problem), status);
    ck_assert_int_eq(problem.argument, argument);
    ck_assert_int_eq(problem.at, at);
    ck_assert_int_eq(id, -7);
}

START_TEST(each_kind_takes_its_own_measures_and_fabrics)
{
    struct sewn s;
    begin_sewing(&s);
    for (size_t i = 0; i < UNIT_CASES; i++) {
        struct muslin_quilt_unit_spec spec = unit_spec_of(&unit_cases[i], s.two, s.two, s.two);
        ck_assert_int_ne(unit_of(&s, &spec, unit_cases[i].fabrics), 0);
        ck_refused_at(&s, &spec, unit_cases[i].fabrics - 1, MUSLIN_ERR_RANGE, MUSLIN_ARG_FABRICS, 0);
        ck_refused_at(&s, &spec, unit_cases[i].fabrics + 1, MUSLIN_ERR_RANGE, MUSLIN_ARG_FABRICS, 0);
    }
    struct muslin_quilt_unit_spec spec = unit_spec_of(&unit_cases[0], s.two, 0, 0);
    ck_refused_at(&s, &spec, SIZE_MAX, MUSLIN_ERR_RANGE, MUSLIN_ARG_FABRICS, 0);
    /* the third fabric is a measure */
    const struct unit_case split = { MUSLIN_UNIT_SPLIT_QUARTER, MUSLIN_UNIT_METHOD_PIECES, 1, 3, 3, 2, 2 };
    spec = unit_spec_of(&split, s.two, 0, 0);
    ck_refused_at(&s, &spec, 3, MUSLIN_ERR_FOREIGN, MUSLIN_ARG_FABRIC, 2);
    for (size_t i = 0; i < 2; i++) {
        const muslin_id fabrics[] = { i == 0 ? s.two : s.blue, i == 1 ? s.two : s.blue, s.white };
        struct muslin_problem problem = PROBLEM;
        muslin_id id = -7;
        ck_status(muslin_quilt_unit(s.quilt, &spec, fabrics, 3, &id, &problem), MUSLIN_ERR_FOREIGN);
        ck_assert_int_eq(problem.at, (int64_t)i);
    }
    /* geese and snowballs may do without a height, a half-rectangle may not; a snowball must have its corner */
    const struct unit_case goose = { MUSLIN_UNIT_FLYING_GEESE, MUSLIN_UNIT_METHOD_PIECES, 1, 2, 3, 2, 1 };
    spec = unit_spec_of(&goose, s.two, 0, 0);
    muslin_id without = unit_of(&s, &spec, 2);
    spec.height = s.two;
    ck_assert_int_ne(unit_of(&s, &spec, 2), without);
    const struct unit_case snowball = { MUSLIN_UNIT_SNOWBALL, MUSLIN_UNIT_METHOD_FLIPPED_CORNERS, 1, 2, 5, 2, 2 };
    spec = unit_spec_of(&snowball, s.two, 0, s.two);
    ck_assert_int_ne(unit_of(&s, &spec, 2), 0);
    spec.corner = 0;
    ck_refused_at(&s, &spec, 2, MUSLIN_ERR_FOREIGN, MUSLIN_ARG_MEASURE, 2);
    const struct unit_case leaning = { MUSLIN_UNIT_HALF_RECTANGLE, MUSLIN_UNIT_METHOD_PIECES, 1, 2, 2, 1, 1 };
    spec = unit_spec_of(&leaning, s.two, 0, 0);
    ck_refused_at(&s, &spec, 2, MUSLIN_ERR_FOREIGN, MUSLIN_ARG_MEASURE, 1);
    /* only kinds with hands have a second one, and none has a third */
    spec.height = s.two;
    spec.hand = 3;
    ck_refused_at(&s, &spec, 2, MUSLIN_ERR_CHOICE, MUSLIN_ARG_HAND, 0);
    end_sewing(&s);
}
END_TEST

START_TEST(a_unit_without_quilt_fabrics_or_output_is_refused)
{
    struct sewn s;
    begin_sewing(&s);
    struct muslin_quilt_unit_spec spec = initial_unit();
    const muslin_id fabrics[] = { s.blue, s.white };
    muslin_id id = -7;
    spec.width = s.two;
    ck_status(muslin_quilt_unit(NULL, &spec, fabrics, 2, &id, NULL), MUSLIN_ERR_NULL);
    ck_status(muslin_quilt_unit(s.quilt, &spec, NULL, 2, &id, NULL), MUSLIN_ERR_NULL);
    ck_status(muslin_quilt_unit(s.quilt, &spec, fabrics, 2, NULL, NULL), MUSLIN_ERR_NULL);
    ck_assert_int_eq(id, -7);
    end_sewing(&s);
}
END_TEST

START_TEST(every_allocation_of_a_unit_may_fail)
{
    size_t round = 1;
    int failed = 1;
    for (; failed; round++) {
        struct sewn s;
        begin_sewing(&s);
        struct muslin_part_counts before = counts_of(s.quilt);
        /* a star takes more arguments than a fresh quilt has room for */
        const struct unit_case star = { MUSLIN_UNIT_EIGHT_POINTED_STAR, MUSLIN_UNIT_METHOD_PIECES, 1, 2, 16, 5, 5 };
        struct muslin_quilt_unit_spec spec = unit_spec_of(&star, s.two, 0, 0);
        const muslin_id fabrics[] = { s.blue, s.white };
        muslin_id id = -7;
        fail_at(&s, round);
        struct muslin_problem said = PROBLEM;
        muslin_status status = muslin_quilt_unit(s.quilt, &spec, fabrics, 2, &id, &said);
        failed = s.memory.has_failed;
        ck_status(status, failed ? MUSLIN_ERR_NO_MEMORY : MUSLIN_OK);
        if (failed) {
            ck_says_no_memory(&said, 0);
            ck_assert_int_eq(id, -7);
            ck_same_parts(s.quilt, &before);
        }
        fail_at(&s, 0);
        ck_ok(muslin_quilt_unit(s.quilt, &spec, fabrics, 2, &id, NULL));
        end_sewing(&s);
    }
    ck_assert_uint_gt(round, 2);
}
END_TEST

START_TEST(a_full_quilt_takes_no_more_units)
{
    struct failing_allocator memory;
    struct muslin_quilt_spec quilt_spec = MUSLIN_QUILT_SPEC_INIT;
    struct muslin_quilt *quilt = NULL;
    struct muslin_quilt_unit_spec spec = initial_unit();
    struct muslin_problem problem = PROBLEM;
    muslin_id id = -7;
    quilt_spec.most = 5; /* seam, take-up, width, fabric, one unit */
    failing_start(&memory, 0);
    ck_ok(muslin_quilt_create(&quilt_spec, &memory.allocator, &quilt, NULL));
    muslin_id blue = fabric_of(quilt, "blue");
    const muslin_id fabrics[] = { blue, blue };
    spec.width = fixed_of(quilt, WHOLE_IN(2));
    ck_ok(muslin_quilt_unit(quilt, &spec, fabrics, 2, &id, NULL));
    spec.method = MUSLIN_UNIT_METHOD_PIECES;
    ck_status(muslin_quilt_unit(quilt, &spec, fabrics, 2, &id, &problem), MUSLIN_ERR_WORK_LIMIT);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_MOST);
    muslin_quilt_free(quilt);
    ck_assert(failing_is_clean(&memory));
}
END_TEST

Suite *quilt_unit_suite(void)
{
    Suite *suite = suite_create("quilt_unit");
    TCase *tests = tcase_create("units of a quilt");
    tcase_add_test(tests, a_spec_begins_as_stated);
    tcase_add_test(tests, equal_units_are_one_node);
    tcase_add_test(tests, a_unit_is_of_a_kind_method_and_hand_that_there_is);
    tcase_add_test(tests, each_kind_takes_its_own_measures_and_fabrics);
    tcase_add_test(tests, a_unit_without_quilt_fabrics_or_output_is_refused);
    tcase_add_test(tests, every_allocation_of_a_unit_may_fail);
    tcase_add_test(tests, a_full_quilt_takes_no_more_units);
    suite_add_tcase(suite, tests);
    return suite;
}
