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

Suite *cutplan_left_suite(void)
{
    Suite *suite = suite_create("cutplan_left");
    TCase *tcase = tcase_create("left");
    tcase_add_test(tcase, pieces_ends_and_left_overs_are_all_of_the_cloth);
    suite_add_tcase(suite, tcase);
    return suite;
}
