/* test_cutplan_pack.c - so many strips for so many pieces, against every packing.
 *
 * SPDX-License-Identifier: MIT */
#include "test_cutplan_brute.h"

static struct brute brute;
static struct msl_packed packed[TINY_SIZES + 2];
static int32_t pack_counts[MSL_PACK_ROOM];
static int64_t pack_rooms[MSL_PACK_ROOM];

/* The sizes lie between others that nobody asks for. */
static struct msl_packing packing_of(int64_t most_steps)
{
    static const struct msl_packed beside = { .taken = 1, .wanted = 100000 };
    struct msl_packing packing = { packed + 1, pack_counts, pack_rooms, 0, most_steps, 0, 0 };
    for (int32_t i = 0; i < TINY_SIZES + 2; i++)
        packed[i] = beside;
    return packing;
}

static int pack_all(struct msl_packing *packing, const struct tiny *t, int64_t strips)
{
    msl_pack_begin(packing);
    ck_assert_int_eq(packing->used, 0);
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
    for (int32_t i = 1; i < packing->size_count; i++)
        ck_assert_int_ge(packing->sizes[i - 1].taken, packing->sizes[i].taken);
    for (int32_t strip = 0; strip < packing->used; strip++) {
        int64_t room = t->ways[0].across;
        for (int32_t i = 0; i < packing->size_count; i++) {
            const struct msl_piece_size *size = &t->sizes[packing->sizes[i].size];
            int32_t count = pack_counts[strip * packing->size_count + i];
            left[packing->sizes[i].size] -= count;
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

/* ---- all contents, one after the other --------------------------------------------------------------------------- */

enum { KINDS = 5, ALL_STRIPS = 16 };

struct contents {
    struct msl_packed sizes[KINDS];
    int32_t count;
    int one_size;
    int64_t across;
    int64_t strips;
    int64_t looked; /* contents of strips looked at */
    int32_t laid[ALL_STRIPS][KINDS];
};

/* What a strip with these still has room for; below 0: they do not fit. */
static int64_t room_beside(const struct contents *c, const int32_t *laid)
{
    int64_t room = c->across;
    int32_t kinds = 0;
    for (int32_t i = 0; i < c->count; i++) {
        room -= laid[i] * c->sizes[i].taken + (laid[i] > 0 ? c->sizes[i].run_in : 0);
        kinds += laid[i] > 0;
    }
    return c->one_size && kinds > 1 ? -1 : room;
}

static int64_t empty_beside(const struct contents *c, const int32_t *laid)
{
    int64_t room = c->across;
    for (int32_t i = 0; i < c->count; i++)
        room -= laid[i] * c->sizes[i].taken;
    return room;
}

/* The content before this one, of those that fit, the one with more of an earlier size first. Returns 0 at the end. */
static int next_of(const struct contents *c, const int64_t *left, int32_t *laid)
{
    for (;;) {
        int32_t i = c->count - 1;
        while (i >= 0 && laid[i] == 0)
            laid[i] = (int32_t)left[i], i--;
        if (i < 0)
            return 0;
        laid[i]--;
        if (room_beside(c, laid) >= 0)
            return 1;
    }
}

static int32_t first_left(const struct contents *c, const int64_t *left)
{
    int32_t first = 0;
    while (first < c->count && left[first] == 0)
        first++;
    return first;
}

/* A piece more of the size of which there was one more in the content before would fit. */
static int would_fit_again(const struct contents *c, const int32_t *laid, const int32_t *before)
{
    int32_t more[KINDS];
    int32_t changed = 0;
    while (before[changed] == laid[changed])
        changed++;
    for (int32_t i = 0; i < c->count; i++)
        more[i] = laid[i] + (i == changed);
    return room_beside(c, more) >= 0;
}

/* Strips from this one on; returns 1 where all that is left lies in them. */
static int lay_strips(struct contents *c, const int64_t *left, int32_t strip, int64_t spare)
{
    int32_t before[KINDS];
    int is_first = 1;
    const int32_t first = first_left(c, left);
    if (first == c->count)
        return 1;
    if (strip == c->strips)
        return 0;
    int32_t *laid = c->laid[strip];
    for (int32_t i = 0; i < c->count; i++)
        laid[i] = (int32_t)left[i];
    int goes_on = room_beside(c, laid) >= 0 || next_of(c, left, laid);
    for (; goes_on && laid[first] > 0; goes_on = next_of(c, left, laid)) {
        int64_t rest[KINDS];
        int in_order = 1;
        c->looked++;
        for (int32_t i = c->count - 1; strip > 0 && i >= 0; i--)
            if (laid[i] != c->laid[strip - 1][i])
                in_order = laid[i] < c->laid[strip - 1][i];
        const int is_skipped = !is_first && would_fit_again(c, laid, before);
        const int64_t empty = empty_beside(c, laid);
        for (int32_t i = 0; i < c->count; i++) {
            rest[i] = left[i] - laid[i];
            before[i] = laid[i];
        }
        is_first = 0;
        if (!is_skipped && in_order && empty <= spare && lay_strips(c, rest, strip + 1, spare - empty))
            return 1;
    }
    return 0;
}

static void read_contents(struct contents *c, const struct msl_packing *packing, const struct tiny *t, int64_t strips)
{
    memset(c, 0, sizeof *c);
    c->count = packing->size_count;
    c->one_size = t->cutting.one_size;
    c->across = t->ways[0].across;
    c->strips = strips;
    for (int32_t i = 0; i < c->count; i++)
        c->sizes[i] = packing->sizes[i];
}

/* Of all packings it is the one whose first strips have most of the largest; and where there is none, each content that
 * fits beside what lies already is looked at once. */
START_TEST(the_earliest_packing_is_found)
{
    uint64_t seed = 9;
    for (int32_t n = 0; n < 2500; n++) {
        static struct contents c;
        struct tiny t;
        struct msl_packing packing = packing_of(100000);
        int64_t left[KINDS];
        tiny_start(&t);
        for (int64_t i = 1 + tiny_chance(&seed, 4); i > 0; i--)
            tiny_size(&t, 1 + tiny_chance(&seed, 10), 5, 1 + tiny_chance(&seed, 3), 0)->run_in =
                tiny_chance(&seed, 2) == 0 ? 1 + tiny_chance(&seed, 4) : 0;
        t.cutting.one_size = tiny_chance(&seed, 8) == 0;
        tiny_bolt(&t, 15 + tiny_chance(&seed, 8));
        const int64_t strips = tiny_chance(&seed, 6);
        msl_pack_begin(&packing);
        for (int32_t i = 0; i < t.cutting.size_count; i++)
            msl_pack_add(&packing, &t.cutting, 0, i, t.sizes[i].count);
        read_contents(&c, &packing, &t, strips);
        int64_t spare = strips * c.across;
        for (int32_t i = 0; i < c.count; i++) {
            left[i] = c.sizes[i].wanted;
            spare -= left[i] * c.sizes[i].taken;
        }
        const int found = msl_pack(&packing, &t.cutting, 0, strips);
        const int there_is = spare >= 0 && lay_strips(&c, left, 0, spare);
        ck_assert_int_eq(found, there_is ? MSL_PACK_YES : MSL_PACK_NO);
        if (found == MSL_PACK_NO) {
            ck_assert_int_eq(packing.steps, (c.count + 2) * c.looked); /* each size, and the strip before and after */
            packing.most_steps = packing.steps;
            packing.steps = 0;
            for (int32_t i = 0; i < c.count; i++)
                packing.sizes[i].wanted = left[i];
            ck_assert_int_eq(msl_pack(&packing, &t.cutting, 0, strips), MSL_PACK_NO); /* so many are enough */
            continue;
        }
        for (int32_t strip = 0; strip < packing.used; strip++)
            for (int32_t i = 0; i < c.count; i++)
                ck_assert_int_eq(pack_counts[strip * c.count + i], c.laid[strip][i]);
    }
}
END_TEST

/* None is wanted of two sizes, so one is packed; strips times sizes are as many as there is room for, or one more. */
START_TEST(what_is_not_wanted_is_not_packed)
{
    struct tiny t;
    struct msl_packing packing = packing_of(100000);
    tiny_start(&t);
    tiny_size(&t, 5, 5, 3, 0);
    tiny_bolt(&t, 10);
    for (int64_t more = 0; more < 2; more++) {
        msl_pack_begin(&packing);
        msl_pack_add(&packing, &t.cutting, 0, 0, -1);
        msl_pack_add(&packing, &t.cutting, 0, 0, 3);
        msl_pack_add(&packing, &t.cutting, 0, 0, 0);
        ck_assert_int_eq(packing.size_count, 1);
        ck_assert_int_eq(msl_pack(&packing, &t.cutting, 0, MSL_PACK_ROOM + more),
                         more ? MSL_PACK_UNKNOWN : MSL_PACK_YES);
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
    tcase_add_test(tcase, the_earliest_packing_is_found);
    tcase_add_test(tcase, what_is_not_wanted_is_not_packed);
    tcase_add_test(tcase, nothing_needs_no_strip);
    tcase_add_test(tcase, steps_and_room_give_out);
    suite_add_tcase(suite, tcase);
    return suite;
}
