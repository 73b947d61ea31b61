/* test_cutplan_sheet.c - the pattern worth most of a panel or a piece of stock, against all fillings.
 *
 * SPDX-License-Identifier: MIT */
#include "test_cutplan_parts.h"

enum { ROOM = 16 };

static struct parts parts;

/* The most that one strip is worth, trying all counts of what may lie in it. */
static int64_t try_strip(const int64_t *worth, const int64_t *most, int64_t height, int64_t room)
{
    int64_t counts[4] = { 0 };
    const int32_t sizes = parts.cutting.size_count;
    int64_t best = 0;
    for (int32_t at = 0; at < sizes;) {
        int64_t taken = 0;
        int64_t sum = 0;
        int32_t kinds = 0;
        for (int32_t s = 0; s < sizes; s++) {
            const int64_t each = plainly_taken(&parts.sizes[s], height);
            kinds += counts[s] > 0;
            taken += counts[s] == 0 ? 0 : each == 0 || parts.sizes[s].slit ? room + 1 : counts[s] * each;
            sum += counts[s] * worth[s];
        }
        if (taken <= room && (kinds < 2 || !parts.cutting.one_size))
            best = larger(best, sum);
        for (at = 0; at < sizes && counts[at] >= most[at]; at++)
            counts[at] = 0;
        if (at < sizes)
            counts[at]++;
    }
    return best;
}

/* Strips in so much room, each filled for itself: by length along. */
static int64_t try_rest(const int64_t *worth, const int64_t *most, int64_t along, int64_t room)
{
    int64_t best[ROOM + 1] = { 0 };
    int64_t strip[ROOM + 1];
    for (int64_t height = 1; height <= along; height++)
        strip[height] = try_strip(worth, most, height, room);
    for (int64_t a = 1; a <= along; a++)
        for (int64_t height = 1; height <= a; height++)
            best[a] = larger(best[a], best[a - height] + strip[height]);
    return best[along];
}

/* All counts of slit sizes beside the rest. */
static int64_t try_sheet(const struct msl_way *way, const int64_t *worth, const int64_t *most)
{
    int64_t counts[4] = { 0 };
    int64_t rest[ROOM + 1];
    const int32_t sizes = parts.cutting.size_count;
    int64_t best = 0;
    for (int64_t room = 0; room <= way->across; room++)
        rest[room] = try_rest(worth, most, way->along, room);
    for (int32_t at = 0; at < sizes;) {
        int64_t taken = 0;
        int64_t sum = 0;
        for (int32_t s = 0; s < sizes; s++) {
            const int64_t each = plainly_taken(&parts.sizes[s], way->along);
            taken += counts[s] == 0 ? 0 : each == 0 || !parts.sizes[s].slit || !way->panel ? ROOM + 1
                                                                                            : counts[s] * each;
            sum += counts[s] * worth[s];
        }
        if (taken <= way->across)
            best = larger(best, sum + rest[way->across - taken]);
        for (at = 0; at < sizes && counts[at] >= most[at]; at++)
            counts[at] = 0;
        if (at < sizes)
            counts[at]++;
    }
    return best;
}

/* Lays the pattern out as its rows say. Returns what it is worth. */
static int64_t lay_out(int32_t made, const int64_t *worth, int64_t *pieces)
{
    const struct msl_pattern *pattern = &parts.patterns[made];
    const struct msl_way *way = &parts.ways[pattern->way];
    int64_t room = way->across;
    int64_t along = 0;
    int64_t sum = 0;
    memset(pieces, 0, FEW_SIZES * sizeof *pieces);
    for (int32_t k = 0; k < pattern->count; k++) {
        const struct msl_strip *strip = &parts.strips[pattern->first + k];
        const int slit = strip->height == 0;
        int64_t x = 0;
        ck_assert_int_gt(strip->count, 0);
        ck_assert(slit || !parts.cutting.one_size || strip->count == 1);
        ck_assert(!slit || (k == 0 && way->panel));
        for (int32_t i = 0; i < strip->count; i++) {
            const struct msl_laid *laid = &parts.laid[strip->first + i];
            const struct msl_piece_size *size = &parts.sizes[laid->size];
            const int64_t taken = plainly_taken(size, slit ? way->along : strip->height);
            ck_assert_int_eq(size->slit, slit);
            ck_assert_int_gt(taken, 0);
            ck_assert_int_gt(laid->count, 0);
            ck_assert_int_eq(laid->above + laid->other_way, 0);
            x += laid->count * taken;
            pieces[laid->size] += laid->count;
            sum += laid->count * worth[laid->size];
        }
        ck_assert_int_le(x, room);
        room -= slit ? x : 0;
        along += strip->height;
    }
    ck_assert_int_le(along, way->along);
    return sum;
}

static void make_sheet(uint64_t *seed)
{
    const int32_t sizes = 1 + (int32_t)pick(seed, 4);
    parts_begin(&parts);
    parts.cutting.one_size = pick(seed, 4) == 0;
    for (int32_t s = 0; s < sizes; s++) {
        const int slit = pick(seed, 3) == 0;
        struct msl_piece_size *size = parts_size(&parts, 1 + pick(seed, 7), 1 + pick(seed, 9), !slit && pick(seed, 2) == 0,
                                           1 + pick(seed, 3));
        size->slit = slit;
        size->level = pick(seed, 6) == 0;
    }
    struct msl_way *way = parts_way(&parts, 1 + pick(seed, ROOM), 1 + pick(seed, ROOM));
    way->sheet = 1;
    way->panel = pick(seed, 2) == 0;
    parts.cutting.height_count = parts_heights(&parts, parts.heights);
}

/* `few`: so few states that not all can be tried. */
static void price_sheets(uint64_t seed, int rounds, int few)
{
    const struct muslin_allocator memory = parts_memory();
    int over = 0;
    int lost = 0;
    for (int round = 0; round < rounds; round++) {
        int64_t worth[FEW_SIZES];
        int64_t most[FEW_SIZES];
        int64_t positive[FEW_SIZES];
        int64_t pieces[FEW_SIZES];
        struct msl_pricing pricing;
        int32_t made;
        int64_t bound;
        make_sheet(&seed);
        for (int32_t s = 0; s < parts.cutting.size_count; s++) {
            worth[s] = pick(&seed, 40) - 4;
            most[s] = pick(&seed, 4);
            positive[s] = larger(worth[s], 0);
        }
        const int64_t best = try_sheet(&parts.ways[0], positive, most);
        const int64_t beat = pick(&seed, 2) == 0 ? pick(&seed, best + 2) : 0;
        ck_assert(msl_pricing_make(&pricing, &parts.cutting, few ? 4 + (int32_t)pick(&seed, 8) : 4096, &memory));
        ck_assert(msl_price(&pricing, 0, worth, most, beat, &parts.pool, &made, &bound));
        msl_pricing_free(&pricing, &memory);
        if (few)
            ck_assert_int_ge(bound, larger(beat, best));
        else
            ck_assert_int_eq(bound, larger(beat, best));
        ck_assert(few || (made >= 0) == (best > beat));
        ck_assert_int_eq(parts.pool.pattern_count, made >= 0);
        lost += made < 0 && bound > beat;
        if (made < 0) {
            ck_assert_int_eq(parts.pool.strip_count + parts.pool.laid_count, 0);
            continue;
        }
        const int64_t sum = lay_out(made, worth, pieces);
        ck_assert_int_gt(sum, beat);
        ck_assert_int_le(sum, bound);
        int more = 0;
        for (int32_t s = 0; s < parts.cutting.size_count; s++)
            more |= pieces[s] > most[s];
        over += more;
        if (more && !few)
            ck_assert_int_eq(sum, best);
    }
    ck_assert(few ? lost > 0 : over > 0 && lost == 0);
}

START_TEST(test_sheets)
{
    price_sheets(1, 1500, 0);
}
END_TEST

START_TEST(test_few_states)
{
    price_sheets(2, 1500, 1);
}
END_TEST

/* A panel 40 wide and 90 long: four borders 6 wide leave 16, in which strips of 8 hold two squares of 8: 11 strips. */
START_TEST(test_borders)
{
    const struct muslin_allocator memory = parts_memory();
    const int64_t worth[3] = { 1000, 900, 10 };
    const int64_t most[3] = { 2, 2, 100 };
    struct msl_pricing pricing;
    int64_t pieces[FEW_SIZES];
    int32_t made;
    int64_t bound;
    parts_begin(&parts);
    parts_size(&parts, 6, 90, 0, 2)->slit = 1;
    parts_size(&parts, 6, 80, 0, 2)->slit = 1;
    parts_size(&parts, 8, 8, 1, 100);
    parts.cutting.height_count = parts_heights(&parts, parts.heights);
    struct msl_way *way = parts_way(&parts, 40, 90);
    way->sheet = way->panel = 1;
    ck_assert(msl_pricing_make(&pricing, &parts.cutting, 4096, &memory));
    ck_assert(msl_price(&pricing, 0, worth, most, 4019, &parts.pool, &made, &bound));
    ck_assert_int_eq(bound, 2000 + 1800 + 22 * 10);
    ck_assert_int_eq(lay_out(made, worth, pieces), bound);
    ck_assert_int_eq(pieces[0], 2);
    ck_assert_int_eq(pieces[1], 2);
    ck_assert_int_eq(pieces[2], 22);
    ck_assert_int_eq(parts.patterns[made].count, 12);
    ck_assert(msl_price(&pricing, 0, worth, most, 4020, &parts.pool, &made, &bound));
    ck_assert_int_eq(made, -1);
    /* no room in the pool for the panel's strip, for its pieces, for a strip, for what is in it */
    for (int full = 0; full < 4; full++) {
        parts_begin(&parts);
        parts.pool.most_strips = full == 0 ? 0 : full == 2 ? 5 : FEW_STRIPS;
        parts.pool.most_laid = full == 1 ? 1 : full == 3 ? 5 : FEW_LAID;
        parts_size(&parts, 6, 90, 0, 2)->slit = 1;
        parts_size(&parts, 6, 80, 0, 2)->slit = 1;
        parts_size(&parts, 8, 8, 1, 100);
        parts.cutting.height_count = parts_heights(&parts, parts.heights);
        parts_way(&parts, 40, 90)->sheet = 1;
        parts.ways[0].panel = 1;
        ck_assert(!msl_price(&pricing, 0, worth, most, 0, &parts.pool, &made, &bound));
        ck_assert_int_eq(made, -1);
        ck_assert_int_eq(parts.pool.pattern_count + parts.pool.strip_count + parts.pool.laid_count, 0);
    }
    msl_pricing_free(&pricing, &memory);
}
END_TEST

/* A piece of stock 8 wide and 5 long: in one strip two stacks of two pieces 3 x 2 at 5 each, and one of 2 x 5 at 6. */
START_TEST(test_stacks)
{
    const struct muslin_allocator memory = parts_memory();
    const int64_t worth[2] = { 5, 6 };
    const int64_t most[2] = { 4, 1 };
    struct msl_pricing pricing;
    int32_t made;
    int64_t bound;
    parts_begin(&parts);
    parts_size(&parts, 3, 2, 0, 4);
    parts_size(&parts, 2, 5, 0, 1);
    parts.cutting.height_count = parts_heights(&parts, parts.heights);
    parts.cutting.stacked = 1;
    parts_way(&parts, 8, 5)->sheet = 1;
    ck_assert(msl_pricing_make(&pricing, &parts.cutting, 64, &memory));
    ck_assert(msl_price(&pricing, 0, worth, most, 25, &parts.pool, &made, &bound));
    ck_assert_int_eq(made, 0);
    ck_assert_int_eq(bound, 26);
    ck_assert_int_eq(parts.patterns[0].count, 1);
    ck_assert_int_eq(parts.strips[0].height, 5);
    ck_assert_int_eq(parts.strips[0].count, 3);
    for (int32_t i = 0; i < 3; i++) {
        ck_assert_int_eq(parts.laid[i].count, parts.laid[i].size == 0 ? 2 : 1);
        ck_assert_int_eq(parts.laid[i].above, i > 0 && parts.laid[i].size == 0 && parts.laid[i - 1].size == 0);
    }
    msl_pricing_free(&pricing, &memory);
}
END_TEST

/* 5 x 5 hold 3 x 1 on 3 x 4 beside 2 x 2 on 2 x 3, in one strip of 5, which no piece that is left needs: worth 10. Strips
 * of 4 and 1 hold the two that are worth 8, and one more. */
START_TEST(test_stacks_of_no_own_height)
{
    const struct muslin_allocator memory = parts_memory();
    const int64_t worth[5] = { 1, 5, 3, 1, 1 };
    const int64_t most[5] = { 0, 1, 1, 1, 1 };
    struct msl_pricing pricing;
    int32_t made;
    int64_t bound;
    for (int32_t stacked = 0; stacked < 2; stacked++) {
        parts_begin(&parts);
        parts_size(&parts, 2, 5, 0, 1);
        parts_size(&parts, 3, 4, 0, 1);
        parts_size(&parts, 2, 3, 0, 1);
        parts_size(&parts, 2, 2, 0, 1);
        parts_size(&parts, 3, 1, 0, 1);
        parts.cutting.height_count = parts_heights(&parts, parts.heights);
        parts.cutting.stacked = stacked;
        parts_way(&parts, 5, 5)->sheet = 1;
        ck_assert(msl_pricing_make(&pricing, &parts.cutting, 4096, &memory));
        ck_assert(msl_price(&pricing, 0, worth, most, 9, &parts.pool, &made, &bound));
        ck_assert_int_eq(made, stacked - 1);
        ck_assert_int_eq(bound, 9 + stacked);
        msl_pricing_free(&pricing, &memory);
    }
}
END_TEST

Suite *cutplan_sheet_suite(void)
{
    Suite *suite = suite_create("cutplan_sheet");
    TCase *all = tcase_create("all");
    tcase_add_test(all, test_sheets);
    tcase_add_test(all, test_few_states);
    tcase_add_test(all, test_borders);
    tcase_add_test(all, test_stacks);
    tcase_add_test(all, test_stacks_of_no_own_height);
    suite_add_tcase(suite, all);
    return suite;
}
