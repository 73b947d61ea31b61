/* test_cutplan_pack.c - so many strips for so many pieces, against every packing.
 *
 * SPDX-License-Identifier: MIT */
#include "test_cutplan_brute.h"

static struct brute brute;
static struct msl_packed packed[TINY_SIZES];
static int32_t pack_counts[MSL_PACK_ROOM];
static int64_t pack_rooms[MSL_PACK_ROOM];

static struct msl_packing packing_of(int64_t most_steps)
{
    struct msl_packing packing = { packed, pack_counts, pack_rooms, 0, most_steps, 0, 0 };
    return packing;
}

static int pack_all(struct msl_packing *packing, const struct tiny *t, int64_t strips)
{
    msl_pack_begin(packing);
    for (int32_t i = 0; i < t->cutting.size_count; i++)
        msl_pack_add(packing, &t->cutting, 0, i, t->sizes[i].count);
    return msl_pack(packing, &t->cutting, 0, strips);
}

/* The packing that is told holds all, within the room. */
static void ck_packing(const struct msl_packing *packing, const struct tiny *t)
{
    int64_t left[TINY_SIZES];
    for (int32_t i = 0; i < t->cutting.size_count; i++)
        left[i] = t->sizes[i].count;
    for (int32_t strip = 0; strip < packing->used; strip++) {
        int64_t room = t->ways[0].across;
        for (int32_t i = 0; i < packing->size_count; i++) {
            const struct msl_piece_size *size = &t->sizes[packed[i].size];
            int32_t count = pack_counts[strip * packing->size_count + i];
            left[packed[i].size] -= count;
            room -= count * size->across + (count > 0 ? size->run_in : 0);
        }
        ck_assert_int_ge(room, 0);
    }
    for (int32_t i = 0; i < t->cutting.size_count; i++)
        ck_assert_int_le(left[i], 0);
}

START_TEST(packings_by_chance)
{
    struct msl_packing packing = packing_of(100000);
    for (int32_t n = 0; n < 100; n++) {
        uint64_t seed = (uint64_t)(_i * 100 + n);
        struct tiny t;
        int64_t left = 8;
        tiny_start(&t);
        while (left > 0 && t.cutting.size_count < 5) {
            int64_t count = 1 + tiny_chance(&seed, 3);
            struct msl_piece_size *size = tiny_size(&t, 2 + tiny_chance(&seed, 9), 5, count, 0);
            size->run_in = tiny_chance(&seed, 4) == 0 ? 1 + tiny_chance(&seed, 2) : 0;
            left -= count;
        }
        t.cutting.one_size = n % 10 == 0;
        tiny_bolt(&t, 12 + tiny_chance(&seed, 12));
        brute_start(&brute, &t.cutting);
        int64_t least = brute_strips(&brute, 0, brute.states - 1);
        for (int64_t strips = 0; strips <= least + 1; strips++) {
            int found = pack_all(&packing, &t, strips);
            ck_assert_int_eq(found, strips < least ? MSL_PACK_NO : MSL_PACK_YES);
            if (found == MSL_PACK_YES)
                ck_packing(&packing, &t);
        }
    }
}
END_TEST

START_TEST(nothing_needs_no_strip)
{
    struct tiny t;
    struct msl_packing packing = packing_of(100000);
    tiny_start(&t);
    tiny_size(&t, 5, 5, 1, 0);
    tiny_bolt(&t, 10);
    t.sizes[0].count = 0;
    ck_assert_int_eq(pack_all(&packing, &t, 0), MSL_PACK_YES);
    ck_assert_int_eq(packing.used, 0);
}
END_TEST

/* Pieces of 1/2 + x and 1/3 + y, whose strips are never quite full: long to look through. */
START_TEST(steps_and_room_give_out)
{
    struct tiny t;
    struct msl_packing packing = packing_of(50);
    tiny_start(&t);
    for (int32_t i = 0; i < 20; i++)
        tiny_size(&t, 260 + 7 * i, 5, 3, 0);
    tiny_bolt(&t, 1000);
    ck_assert_int_eq(pack_all(&packing, &t, 21), MSL_PACK_UNKNOWN);
    ck_assert_int_eq(pack_all(&packing, &t, MSL_PACK_ROOM / 20 + 1), MSL_PACK_UNKNOWN);
}
END_TEST

Suite *cutplan_pack_suite(void)
{
    Suite *suite = suite_create("cutplan_pack");
    TCase *tcase = tcase_create("pack");
    tcase_set_timeout(tcase, 60);
    tcase_add_loop_test(tcase, packings_by_chance, 0, 10);
    tcase_add_test(tcase, nothing_needs_no_strip);
    tcase_add_test(tcase, steps_and_room_give_out);
    suite_add_tcase(suite, tcase);
    return suite;
}
