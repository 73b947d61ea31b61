/* test_cutplan_left.c - what a plan leaves over: with pieces and ends it is all of the cloth, where nothing is trimmed.
 *
 * SPDX-License-Identifier: MIT */
#include "test_cutplan.h"
#include "test_cutplan_made.h"

Suite *cutplan_left_suite(void);

static struct planned p;

enum { LEVEL, LENGTHWISE, JOINED, KINDS };

/* Rows of which no piece is trimmed: all equally high, or slit from panels, or joined, of one height. */
static void draw_rows(uint64_t *seed, int kind)
{
    start(&p, 2 * (20 + tiny_chance(seed, 20)));
    p.spec.work_limit = 3000;
    p.spec.end_loss = tiny_chance(seed, 6);
    if (tiny_chance(seed, 2) == 0)
        p.spec.flags = MUSLIN_CUTPLAN_FOLDED;
    for (int64_t i = 1 + tiny_chance(seed, 5); i > 0; i--)
        if (kind == LEVEL)
            want(&p, 1 + tiny_chance(seed, 30), 2 + tiny_chance(seed, 10), 7);
        else if (kind == LENGTHWISE)
            want_kind(&p, MUSLIN_BLANK_LENGTHWISE, 1 + tiny_chance(seed, 7), 2 + tiny_chance(seed, 5),
                      30 + 5 * tiny_chance(seed, 4));
        else
            want_kind(&p, MUSLIN_BLANK_JOINED, 1 + tiny_chance(seed, 4), 5 + tiny_chance(seed, 150), 4)->join_loss =
                tiny_chance(seed, 3);
}

/* Taken off at the ends of strips: of folded cloth at the selvages, half of it in each layer; the fold is none. */
static int64_t lost_at_ends(void)
{
    const int64_t left = p.spec.end_loss / 2;
    return planned_has(&p, MUSLIN_CUTPLAN_FOLDED) ? 2 * left : p.spec.end_loss;
}

/* Those with both sides so long, or longer. */
static void ck_only_large_ones(const struct muslin_cutplan_left_over *rows, size_t count)
{
    for (muslin_len least = 1; least < 12; least++) {
        size_t large = 0;
        size_t said = 0;
        for (size_t i = 0; i < count; i++)
            large += rows[i].width >= least && rows[i].height >= least;
        ck_ok(muslin_cutplan_left_overs(p.plan, least, NULL, 0, 0, &said, NULL));
        ck_assert_uint_eq(said, large);
    }
}

START_TEST(pieces_ends_and_left_overs_are_all_of_the_cloth)
{
    static struct muslin_cutplan_left_over rows[STRIPS];
    uint64_t seed = 12;
    int32_t blocks = 0;
    for (int32_t round = 0; round < 600; round++) {
        size_t count = 0;
        draw_rows(&seed, round % KINDS);
        ck_ok(try_plan(&p, NULL));
        read_plan(&p);
        ck_ok(muslin_cutplan_left_overs(p.plan, 0, rows, sizeof rows[0], STRIPS, &count, NULL));
        int64_t area = lost_at_ends() * p.totals.cost;
        for (size_t i = 0; i < p.place_count; i++)
            area += p.places[i].width * p.places[i].height * planned_pieces(&p, &p.places[i]) *
                    planned_times(&p, &p.strips[p.places[i].strip]);
        for (size_t i = 0; i < count; i++) {
            ck_assert_uint_eq(rows[i].size, sizeof rows[i]);
            ck_assert_uint_eq(rows[i].flags, 0);
            area += rows[i].width * rows[i].height * rows[i].count;
            blocks += p.strips[rows[i].strip].kind == MUSLIN_CUTPLAN_STRIP_SLIT;
        }
        ck_assert_int_eq(area, p.spec.usable_width * p.totals.cost);
        ck_only_large_ones(rows, count);
        muslin_cutplan_free(p.plan);
    }
    ck_assert_int_gt(blocks, 100); /* above slit pieces */
}
END_TEST

/* ---- other widths ------------------------------------------------------------------------------------------------ */

/* A width too narrow for a piece, and one for all: whatever fails, the plan keeps what is its own. */
START_TEST(other_widths_leave_the_plan_alone)
{
    struct failing_allocator failing;
    struct muslin_cutplan_width rows[2];
    size_t calls = 0;
    for (size_t fails = 0;; fails++) {
        struct muslin_problem problem = { .size = (uint32_t)sizeof problem };
        size_t count = 7;
        start(&p, 40);
        want(&p, 5, 13, 5);
        want(&p, 3, 7, 9);
        failing_start(&failing, 0);
        ck_ok(plan_with(&p, &failing.allocator, NULL));
        const size_t blocks = failing.blocks;
        failing.round = fails == 0 ? 0 : failing.calls + fails;
        const muslin_status status = muslin_cutplan_widths(p.plan, 10, 40, 2, NULL, NULL, rows, sizeof rows[0], 2,
                                                           &count, &problem);
        ck_status(status, failing.has_failed ? MUSLIN_ERR_NO_MEMORY : MUSLIN_OK);
        ck_assert_uint_eq(failing.blocks, blocks);
        ck_assert_uint_eq(count, failing.has_failed ? 7 : 2);
        if (failing.has_failed)
            ck_assert_int_eq(problem.argument, MUSLIN_ARG_ALLOCATOR);
        if (fails > 1) { /* within a search */
            ck_assert_int_eq(problem.value, 0);
            ck_assert_int_eq(problem.limit, 0);
        }
        read_plan(&p);
        ck_assert_int_eq(p.totals.cost, 5 * 2 + 9);
        if (status == MUSLIN_OK) {
            ck_assert_int_eq(rows[0].cloth_length, 0);
            ck_assert_int_eq(rows[0].proven, 0);
            ck_assert_int_eq(rows[1].cloth_length, p.totals.cloth_length);
        }
        muslin_cutplan_free(p.plan);
        ck_assert(failing_is_clean(&failing));
        if (fails > 0 && !failing.has_failed)
            break;
        calls = fails;
    }
    ck_assert_uint_gt(calls, 5);
}
END_TEST

/* Nothing needs no width; a tick needs itself and what is lost. */
START_TEST(the_narrowest_width_of_next_to_nothing)
{
    for (int64_t count = 0; count < 2; count++) {
        muslin_len narrowest = -7;
        start(&p, 40);
        p.spec.end_loss = 4;
        want(&p, count, 1, 5);
        ck_ok(try_plan(&p, NULL));
        ck_ok(muslin_cutplan_narrowest(p.plan, &narrowest, NULL));
        ck_assert_int_eq(narrowest, 5 * count);
        muslin_cutplan_free(p.plan);
    }
}
END_TEST

/* Of stock there are no other widths; one width is asked for once, of a piece a tick high, too. */
START_TEST(widths_that_can_not_be)
{
    struct muslin_cutplan_width rows[2];
    struct muslin_problem problem = PROBLEM;
    muslin_len narrowest = 0;
    size_t count = 0;
    ck_status(muslin_cutplan_narrowest(NULL, &narrowest, NULL), MUSLIN_ERR_NULL);
    ck_status(muslin_cutplan_widths(NULL, 40, 40, 1, NULL, NULL, rows, sizeof rows[0], 2, &count, NULL),
              MUSLIN_ERR_NULL);
    start(&p, 40);
    want(&p, 1, 13, 1);
    ck_ok(try_plan(&p, NULL));
    for (int64_t widths = 0; widths < 3; widths++)
        ck_status(muslin_cutplan_widths(p.plan, 40, 40, widths, NULL, NULL, rows, sizeof rows[0], 2, &count, &problem),
                  widths == 1 ? MUSLIN_OK : MUSLIN_ERR_RANGE);
    ck_assert_int_eq(rows[0].proven, 1);
    for (int64_t widths = 0; widths < 3; widths++)
        ck_status(muslin_cutplan_widths(p.plan, 39, 40, widths, NULL, NULL, rows, sizeof rows[0], 2, &count, &problem),
                  widths == 2 ? MUSLIN_OK : MUSLIN_ERR_RANGE);
    muslin_cutplan_free(p.plan);
    p.spec.usable_width = 0;
    have(&p, 2, 40, 40);
    have(&p, 3, 50, 40);
    ck_ok(try_plan(&p, NULL));
    ck_status(muslin_cutplan_widths(p.plan, 40, 40, 1, NULL, NULL, rows, sizeof rows[0], 2, &count, &problem),
              MUSLIN_ERR_CHOICE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_STOCK_ROWS);
    ck_assert_int_eq(problem.value, 2);
    ck_assert_int_eq(problem.limit, 0);
    ck_status(muslin_cutplan_narrowest(p.plan, &narrowest, &problem), MUSLIN_ERR_CHOICE);
    muslin_cutplan_free(p.plan);
}
END_TEST

/* How far pieces reach in any strip, in a panel from its left edge on, and what is lost at the ends: where all that is
 * less is too narrow for just this plan. */
START_TEST(the_narrowest_width_is_how_far_pieces_reach)
{
    uint64_t seed = 15;
    for (int32_t round = 0; round < 300; round++) {
        muslin_len narrowest = 0;
        int64_t reach = 0;
        draw_rows(&seed, round % KINDS);
        if (round % 2)
            want(&p, 1 + tiny_chance(&seed, 9), 3, 7);
        if (round % KINDS == JOINED) /* which go round the fold */
            p.spec.flags = 0;
        ck_ok(try_plan(&p, NULL));
        read_plan(&p);
        for (size_t i = 0; i < p.place_count; i++) {
            const struct muslin_cutplan_place *place = &p.places[i];
            const struct muslin_cutplan_strip *strip = &p.strips[place->strip];
            const int64_t from_left = strip->x + place->x + (place->count - 1) * place->pitch + place->width;
            reach = msl_greater(reach, from_left);
        }
        const int64_t left = p.spec.end_loss / 2;
        const int64_t layers = planned_layers(&p);
        ck_ok(muslin_cutplan_narrowest(p.plan, &narrowest, NULL));
        ck_assert_int_eq(narrowest, (reach - left) * layers + p.spec.end_loss);
        muslin_cutplan_free(p.plan);
    }
}
END_TEST

Suite *cutplan_left_suite(void)
{
    Suite *suite = suite_create("cutplan_left");
    TCase *tcase = tcase_create("left");
    tcase_add_test(tcase, pieces_ends_and_left_overs_are_all_of_the_cloth);
    tcase_add_test(tcase, other_widths_leave_the_plan_alone);
    tcase_add_test(tcase, the_narrowest_width_of_next_to_nothing);
    tcase_add_test(tcase, widths_that_can_not_be);
    tcase_add_test(tcase, the_narrowest_width_is_how_far_pieces_reach);
    suite_add_tcase(suite, tcase);
    return suite;
}
