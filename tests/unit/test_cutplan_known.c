/* test_cutplan_known.c - plans whose least is known.
 *
 * SPDX-License-Identifier: MIT */
#include "test_cutplan_made.h"

static struct planned p;

static void start_three_squares(void)
{
    start(&p, WHOLE_IN(40));
    p.spec.work_limit = 400000000;
    want(&p, 32, IN(5, 1, 2), IN(5, 1, 2));
    want(&p, 16, WHOLE_IN(6), WHOLE_IN(6));
    want(&p, 8, IN(9, 1, 2), IN(9, 1, 2));
}

static int64_t strips_as_high(muslin_len height)
{
    int64_t strips = 0;
    for (size_t i = 0; i < p.strip_count; i++)
        strips += p.strips[i].height == height ? p.strips[i].times : 0;
    return strips;
}

START_TEST(three_sizes_of_squares_take_sixty_inches)
{
    /* Example: 32 squares of 5 1/2 in, 16 of 6 and 8 of 9 1/2 at 40 in usable: 60 in, proven. */
    /* Example: proven = 1: no plan of two stages is shorter. */
    /* Example: of three square sizes three. */
    /* Example: two strips of 9 1/2 in, then five of 6 in, then two of 5 1/2. */
    size_t count = 0;
    start_three_squares();
    make_plan(&p);
    ck_assert_int_eq(p.totals.cloth_length, WHOLE_IN(60));
    ck_assert_int_eq(p.totals.proven, 1);
    ck_ok(muslin_cutplan_ways(p.plan, NULL, 0, 0, &count, NULL));
    ck_assert_uint_eq(count, 3);
    ck_assert_int_eq(strips_as_high(IN(9, 1, 2)), 2);
    ck_assert_int_eq(strips_as_high(WHOLE_IN(6)), 5);
    ck_assert_int_eq(strips_as_high(IN(5, 1, 2)), 2);
    muslin_cutplan_free(p.plan);
}
END_TEST

START_TEST(the_proof_can_be_read)
{
    /* Example: the whole, then at most 8 strips of any height, then at least 9. */
    /* Example: a square of 5 1/2 in is worth 11/14 in of cloth at most, when seven fit. */
    /* Example: fault = 0 of every plan that muslin_cutplan_create() makes. */
    static struct muslin_cutplan_case cases[1000];
    struct muslin_cutplan_checked checked = { .size = (uint32_t)sizeof checked };
    struct muslin_cutplan_worth worths[40];
    int64_t scale = 0;
    size_t n = 0;
    size_t count = 0;
    start_three_squares();
    make_plan(&p);
    ck_ok(muslin_cutplan_check(p.plan, NULL, NULL, &checked, NULL));
    ck_assert_int_eq(checked.fault, 0);
    ck_ok(muslin_cutplan_cases(p.plan, cases, sizeof cases[0], 1000, &n, NULL));
    ck_assert_int_eq(cases[0].parent, -1);
    for (size_t i = 0; i < n; i++) {
        const struct muslin_cutplan_case *parts = &cases[cases[i].split];
        if (cases[i].split != 0) {
            ck_assert_int_eq(parts[0].parent, (int64_t)i);
            ck_assert_int_eq(parts[1].parent, (int64_t)i);
            ck_assert_int_eq(parts[0].at_least + parts[1].at_least, 1);
            ck_assert_int_eq(parts[parts[1].at_least].wanted, parts[parts[0].at_least].wanted + 1);
        } else {
            ck_assert(cases[i].least >= p.totals.least || cases[i].packed_way >= 0);
        }
        if (cases[i].worths != (int64_t)i)
            continue;
        ck_ok(muslin_cutplan_worths(p.plan, (int64_t)i, worths, sizeof worths[0], 40, &count, &scale, NULL));
        ck_assert_int_eq(worths[0].plan_size, 0);
        ck_assert_int_eq(worths[2].plan_size, 2);
        if (i == 0)
            ck_assert(worths[2].worth <= scale / 7 * IN(5, 1, 2) + scale);
        else
            ck_assert_int_eq(worths[count - 1].of_case, (int64_t)i);
    }
    muslin_cutplan_free(p.plan);
    ck_status(muslin_cutplan_check(NULL, NULL, NULL, &checked, NULL), MUSLIN_ERR_NULL);
}
END_TEST

START_TEST(the_proof_may_lack_memory)
{
    struct failing_allocator failing;
    start(&p, WHOLE_IN(40));
    want(&p, 32, IN(5, 1, 2), IN(5, 1, 2));
    EVERY_ALLOCATION_FAILS_ONCE(failing) {
        struct muslin_cutplan_checked checked = { .size = (uint32_t)sizeof checked };
        const size_t round = failing.round;
        failing.round = 0;
        ck_ok(plan_with(&p, &failing.allocator, NULL));
        failing.calls = 0;
        failing.round = round;
        ck_status(muslin_cutplan_check(p.plan, NULL, NULL, &checked,
                                       NULL), failing.has_failed ? MUSLIN_ERR_NO_MEMORY : MUSLIN_OK);
        muslin_cutplan_free(p.plan);
        ck_assert(failing_is_clean(&failing));
    }
}
END_TEST

START_TEST(places_lie_from_the_left)
{
    /* Example: a strip of 6 in: three pieces of 6 in, then four of 5 1/2 in, trimmed. */
    start(&p, WHOLE_IN(40));
    want(&p, 4, IN(5, 1, 2), IN(5, 1, 2));
    want(&p, 3, WHOLE_IN(6), WHOLE_IN(6));
    make_plan(&p);
    ck_assert_uint_eq(p.strip_count, 1);
    ck_assert_uint_eq(p.place_count, 2);
    ck_assert_int_eq(p.places[0].count, 3);
    ck_assert_int_eq(p.places[0].trimmed, 0);
    ck_assert_int_eq(p.places[1].count, 4);
    ck_assert_int_eq(p.places[1].trimmed, 1);
    ck_assert_int_eq(p.places[1].x, WHOLE_IN(18));
    ck_assert_int_eq(p.totals.cuts, 1 + 6 + 4); /* the last edge is the strip's */
    muslin_cutplan_free(p.plan);
}
END_TEST

START_TEST(ends_of_strips_are_left_over)
{
    /* Example: five squares of 5 1/2 in at 40 in leave 12 1/2 x 5 1/2 in. */
    struct muslin_cutplan_left_over left = { .size = (uint32_t)sizeof left };
    size_t count = 0;
    start(&p, WHOLE_IN(40));
    want(&p, 5, IN(5, 1, 2), IN(5, 1, 2));
    make_plan(&p);
    ck_ok(muslin_cutplan_left_overs(p.plan, WHOLE_IN(1), &left, sizeof left, 1, &count, NULL));
    ck_assert_uint_eq(count, 1);
    ck_assert_int_eq(left.width, IN(12, 1, 2));
    ck_assert_int_eq(left.height, IN(5, 1, 2));
    muslin_cutplan_free(p.plan);
}
END_TEST

/* A length joined from strips of 40 in, or of 60: so many, nothing lost in joins. */
static void ck_joined(muslin_len usable, muslin_len length, muslin_len height, int64_t strips)
{
    start(&p, usable);
    want_kind(&p, MUSLIN_BLANK_JOINED, 1, length, height);
    make_plan(&p);
    ck_assert_int_eq(p.totals.strips, strips);
    ck_assert_int_eq(p.totals.cloth_length, strips * height);
    ck_assert_int_eq(p.totals.proven, 1);
    muslin_cutplan_free(p.plan);
}

START_TEST(printed_counts_of_strips_come_out)
{
    /* "Applying borders to your quilt", n.d.: borders of 4 in round 60 x 80, butted, are 2 x 80 and 2 x 67 in: 8 strips
     * of 40 in, where the perimeter alone says 7. */
    ck_joined(WHOLE_IN(40), WHOLE_IN(294), WHOLE_IN(4), 8);
    /* "Binding math", n.d.: 96 x 110 and 12 in more, 424 in: 11 strips. */
    ck_joined(WHOLE_IN(40), WHOLE_IN(424), IN(2, 1, 2), 11);
    /* "Quick rail fence from 2.5 inch strips", n.d.: round 60 x 70: 7 strips. */
    ck_joined(WHOLE_IN(40), WHOLE_IN(260), IN(2, 1, 2), 7);
    /* "Math is my nemesis", 2019: four of 6 1/2 x 72 from cloth 60 in wide: 5 strips, 32 1/2 in. */
    ck_joined(WHOLE_IN(60), WHOLE_IN(4 * 72), IN(6, 1, 2), 5);
}
END_TEST

START_TEST(a_backing_of_two_lengths_has_its_sides_from_the_second)
{
    /* "Calculating yardage for backing", 2011: 60 x 85 in from cloth of 42: two lengths, 170 in; one is split into
     * strips of 9 in: 42 + 9 + 9 = 60. */
    start(&p, WHOLE_IN(42));
    want_kind(&p, MUSLIN_BLANK_LENGTHWISE, 1, WHOLE_IN(42), WHOLE_IN(85));
    want_kind(&p, MUSLIN_BLANK_LENGTHWISE, 2, WHOLE_IN(9), WHOLE_IN(85));
    make_plan(&p);
    ck_assert_int_eq(p.totals.cloth_length, WHOLE_IN(170));
    ck_assert_int_eq(p.totals.panels, 2);
    ck_assert_int_eq(p.totals.proven, 1);
    muslin_cutplan_free(p.plan);
}
END_TEST

/* Certified bounds and verified plans of other programs, in eighths of an inch. */
struct known {
    int64_t width;
    int64_t least; /* certified */
    int64_t length;
    size_t n;
    int64_t pieces[6][4]; /* width, length, count, 1: may turn */
};

static const struct known known_plans[] = {
    { 320, 480, 480, 3,
      { { 44, 44, 32, 1 }, { 48, 48, 16, 1 }, { 76, 76, 8, 1 } } },
    { 328, 913, 913, 5,
      { { 32, 116, 54, 1 }, { 35, 35, 27, 1 }, { 44, 44, 5, 1 }, { 68, 68, 2, 1 }, { 328, 18, 5, 0 } } },
    { 336, 628, 628, 6,
      { { 16, 28, 15, 1 }, { 20, 20, 61, 1 }, { 28, 40, 30, 1 }, { 36, 36, 8, 1 }, { 52, 52, 15, 1 },
        { 336, 52, 5, 0 } } },
    { 320, 1232, 1232, 4,
      { { 12, 12, 144, 1 }, { 28, 100, 36, 1 }, { 32, 32, 216, 1 }, { 320, 20, 7, 0 } } },
    { 328, 920, 920, 4,
      { { 16, 28, 141, 1 }, { 16, 40, 24, 1 }, { 76, 76, 29, 1 }, { 328, 28, 4, 0 } } },
    { 336, 1478, 1478, 3,
      { { 32, 32, 336, 1 }, { 36, 36, 56, 1 }, { 336, 17, 10, 0 } } },
    { 320, 3536, 3536, 4,
      { { 24, 44, 351, 1 }, { 28, 76, 176, 1 }, { 40, 40, 176, 1 }, { 320, 28, 9, 0 } } },
    { 320, 900, 900, 6,
      { { 16, 22, 80, 0 }, { 20, 20, 159, 0 }, { 28, 28, 80, 0 }, { 32, 32, 80, 0 }, { 35, 35, 10, 0 },
        { 320, 18, 5, 0 } } }
};

START_TEST(known_plans_come_out_as_short)
{
    for (size_t i = 0; i < COUNT_OF(known_plans); i++) {
        const struct known *known = &known_plans[i];
        start(&p, known->width * IN(0, 1, 8));
        p.spec.work_limit = 100000000;
        for (size_t k = 0; k < known->n; k++)
            want(&p, known->pieces[k][2], known->pieces[k][0] * IN(0, 1, 8), known->pieces[k][1] * IN(0, 1, 8))->flags =
                (uint32_t)known->pieces[k][3];
        make_plan(&p);
        ck_assert_int_le(p.totals.cost, known->length * IN(0, 1, 8));
        ck_assert_int_ge(p.totals.cost, known->least * IN(0, 1, 8));
        ck_assert_int_le(p.totals.least, known->length * IN(0, 1, 8));
        muslin_cutplan_free(p.plan);
    }
}
END_TEST

void add_cutplan_known(Suite *suite)
{
    TCase *known = tcase_create("known");
    tcase_set_timeout(known, 120);
    tcase_add_test(known, three_sizes_of_squares_take_sixty_inches);
    tcase_add_test(known, the_proof_can_be_read);
    tcase_add_test(known, the_proof_may_lack_memory);
    tcase_add_test(known, places_lie_from_the_left);
    tcase_add_test(known, ends_of_strips_are_left_over);
    tcase_add_test(known, printed_counts_of_strips_come_out);
    tcase_add_test(known, a_backing_of_two_lengths_has_its_sides_from_the_second);
    tcase_add_test(known, known_plans_come_out_as_short);
    suite_add_tcase(suite, known);
}
