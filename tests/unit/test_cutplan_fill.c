/* test_cutplan_fill.c - plans in the making: put together, filled in, tidied and kept, against plain sums.
 *
 * SPDX-License-Identifier: MIT */
#include "test_cutplan_parts.h"

#include "cutplan_first.h"

enum { ROWS = 40, BESIDE = 77, KINDS = 4 };

static struct parts parts;

/* A plan in the making, and what lies beside its arrays: before the first element and behind the last. */
struct bench {
    struct msl_making making;
    struct msl_pricing pricing;
    struct msl_plan_row rows[ROWS];
    struct msl_plan_row best[ROWS];
    struct msl_way ways[FEW_WAYS + 2];
    struct msl_piece_size sizes[FEW_SIZES + 2];
    int64_t available[4];
    int64_t longs[6][FEW_SIZES + 2];
    int32_t ints[3][FEW_SIZES + 2];
};

static struct bench bench;

/* ---- made by chance ---------------------------------------------------------------------------------------------- */

static void make_sizes(uint64_t *seed)
{
    parts_begin(&parts);
    for (int64_t left = 1 + pick(seed, KINDS); left > 0; left--) {
        const int turns = pick(seed, 2) == 0;
        struct msl_piece_size *size =
            parts_size(&parts, 1 + pick(seed, 8), 1 + pick(seed, 8), turns, 1 + pick(seed, 5));
        if (!turns && pick(seed, 3) == 0) {
            size->level = 1;
            size->run_in = pick(seed, 3);
        }
    }
    parts.cutting.one_size = pick(seed, 5) == 0;
    parts.cutting.stacked = pick(seed, 5) == 0;
    parts.cutting.height_count = parts_heights(&parts, parts.heights);
}

/* Strips of a bolt, as high as a piece; or two kinds of stock, cut along either side. */
static void make_ways(uint64_t *seed, int from_stock, int64_t least)
{
    const int64_t room = 10 + pick(seed, 10);
    for (int32_t w = 0; !from_stock && w < parts.cutting.height_count; w++)
        parts_way(&parts, room, parts.heights[w]);
    for (int32_t stock = 0; from_stock && stock < 2; stock++) {
        const int64_t sides[2] = { least + pick(seed, 8), least + pick(seed, 8) };
        const int64_t cost = 9 - 2 * stock + pick(seed, 2);
        for (int32_t turned = 0; turned < 2; turned++) {
            struct msl_way *way = parts_way(&parts, sides[turned], sides[!turned]);
            way->cost = cost;
            way->sheet = 1;
            way->stock = stock;
            way->turned = turned;
        }
        bench.available[1 + stock] = pick(seed, 3) == 0 ? INT64_MAX : pick(seed, 7);
        parts.cutting.stock_count++;
    }
}

/* Beside the arrays lies what would be taken, if it were taken for a way, a size or a stock. */
static void spoil(void)
{
    const struct msl_way cheap = { 0, 1000, 1000, 0, 0, 0, 0 };
    const struct msl_piece_size small = { 1, 1, 0, 0, 0, BESIDE, 0, 0 };
    const int32_t sizes = parts.cutting.size_count;
    const int32_t ways = parts.cutting.way_count;
    memcpy(bench.ways + 1, parts.ways, (size_t)ways * sizeof cheap);
    memcpy(bench.sizes + 1, parts.sizes, (size_t)sizes * sizeof small);
    bench.ways[0] = bench.ways[ways + 1] = cheap;
    bench.sizes[0] = bench.sizes[sizes + 1] = small;
    bench.available[0] = bench.available[parts.cutting.stock_count + 1] = BESIDE;
    for (int32_t i = 0; i < FEW_SIZES + 2; i++)
        for (int32_t array = 0; array < 6; array++) {
            bench.longs[array][i] = array;
            bench.ints[array / 2][i] = BESIDE;
        }
    parts.cutting.ways = bench.ways + 1;
    parts.cutting.sizes = bench.sizes + 1;
    parts.cutting.available = bench.available + 1;
}

static void make_bench_of(uint64_t *seed, int from_stock, int64_t least, const struct muslin_allocator *memory)
{
    make_sizes(seed);
    make_ways(seed, from_stock, least);
    spoil();
    ck_assert(msl_pricing_make(&bench.pricing, &parts.cutting, 4096, memory));
    const struct msl_making making = {
        .cutting = &parts.cutting, .pool = &parts.pool, .pricing = &bench.pricing, .wanted = bench.longs[4] + 1,
        .left = bench.longs[1] + 1, .offered = bench.longs[2] + 1, .worth = bench.longs[3] + 1,
        .in_hand = bench.longs[0] + 1, .sizes = bench.ints[0] + 1, .counts = bench.ints[1] + 1,
        .order = bench.ints[2] + 1, .plan = { bench.rows, 0, 5, ROWS }, .best = { bench.best, INT64_MAX / 2, 0, ROWS }
    };
    bench.making = making;
    for (int32_t s = 0; s < parts.cutting.size_count; s++) {
        making.wanted[s] = parts.cutting.sizes[s].count;
        making.worth[s] = 1 + pick(seed, 20) * parts.cutting.sizes[s].across;
    }
}

static void make_bench(uint64_t *seed, int from_stock, const struct muslin_allocator *memory)
{
    make_bench_of(seed, from_stock, 10, memory);
}

/* Nothing beside the arrays was written to. */
static void check_beside(void)
{
    for (int32_t array = 0; array < 6; array++) {
        const int32_t count = array == 0 ? parts.cutting.stock_count : parts.cutting.size_count;
        ck_assert(bench.longs[array][0] == array && bench.longs[array][count + 1] == array);
        ck_assert(bench.ints[array / 2][0] == BESIDE);
        ck_assert_int_eq(bench.ints[array / 2][parts.cutting.size_count + 1], BESIDE);
    }
}

/* So many new patterns, each worth much by worths of its own. */
static void make_patterns(uint64_t *seed, int32_t more)
{
    for (; more > 0; more--) {
        int64_t worth[FEW_SIZES];
        int64_t most[FEW_SIZES];
        int64_t bound;
        int32_t made;
        for (int32_t s = 0; s < parts.cutting.size_count; s++) {
            worth[s] = pick(seed, 30);
            most[s] = pick(seed, 4);
        }
        ck_assert(msl_price(&bench.pricing, (int32_t)pick(seed, parts.cutting.way_count), worth, most, 0, &parts.pool,
                            &made, &bound));
    }
}

/* ---- looked at plainly ------------------------------------------------------------------------------------------- */

static int64_t held(int32_t pattern, int32_t size)
{
    const struct msl_pattern *of = &parts.patterns[pattern];
    int64_t count = 0;
    for (int32_t s = of->first; s < of->first + of->count; s++)
        for (int32_t i = parts.strips[s].first; i < parts.strips[s].first + parts.strips[s].count; i++)
            count += parts.laid[i].size == size ? parts.laid[i].count : 0;
    return count;
}

static const struct msl_way *way_of(int32_t pattern)
{
    return &parts.ways[parts.patterns[pattern].way];
}

/* What rows cut of a size, beyond what is wanted. */
static int64_t surplus(const struct msl_plan *plan, int32_t size)
{
    int64_t cut = -bench.making.wanted[size];
    for (int32_t row = 0; row < plan->count; row++)
        cut += plan->rows[row].times * held(plan->rows[row].pattern, size);
    return cut;
}

static int64_t cost_of(const struct msl_plan *plan)
{
    int64_t cost = 0;
    for (int32_t row = 0; row < plan->count; row++)
        cost += plan->rows[row].times * way_of(plan->rows[row].pattern)->cost;
    return cost;
}

static int64_t in_hand(const struct msl_plan *plan, int32_t stock)
{
    int64_t used = 0;
    for (int32_t row = 0; row < plan->count; row++)
        used += way_of(plan->rows[row].pattern)->stock == stock ? plan->rows[row].times : 0;
    return bench.available[1 + stock] - used;
}

/* What is left and what it costs is what the rows say. */
static void check_sums(void)
{
    const struct msl_plan *plan = &bench.making.plan;
    for (int32_t s = 0; s < parts.cutting.size_count; s++)
        ck_assert_int_eq(bench.making.left[s], -surplus(plan, s));
    for (int32_t stock = 0; stock < parts.cutting.stock_count; stock++)
        ck_assert_int_eq(bench.making.in_hand[stock], in_hand(plan, stock));
    ck_assert_int_eq(plan->cost, cost_of(plan));
    check_beside();
}

/* How often a pattern can be cut, counted up. */
static int64_t plain_times(int32_t pattern)
{
    const int32_t stock = way_of(pattern)->stock;
    for (int64_t times = 1;; times++) {
        int more = stock < 0 || bench.making.in_hand[stock] > times;
        for (int32_t s = 0; s < parts.cutting.size_count; s++)
            more = more && (held(pattern, s) == 0 || (times + 1) * held(pattern, s) <= bench.making.left[s]);
        if (!more)
            return times;
    }
}

/* Whether a strip of a way, as high as it is, has room for so many of each size. */
static int has_room(const struct msl_way *way, int64_t height, const int64_t *counts)
{
    int64_t room = way->across;
    for (int32_t s = 0; s < parts.cutting.size_count; s++) {
        const int64_t taken = plainly_taken(&parts.sizes[s], height);
        if (counts[s] > 0 && taken == 0)
            return 0;
        room -= counts[s] > 0 ? parts.sizes[s].run_in + counts[s] * taken : 0;
    }
    return room >= 0;
}

/* A pattern can be cut from a thing of its way; of stacks that is not looked at. */
static void check_room(int32_t pattern)
{
    const struct msl_way *way = way_of(pattern);
    int64_t along = way->along;
    for (int32_t s = 0; !parts.cutting.stacked && s < parts.patterns[pattern].count; s++) {
        const struct msl_strip *strip = &parts.strips[parts.patterns[pattern].first + s];
        int64_t counts[FEW_SIZES] = { 0 };
        for (int32_t i = 0; i < strip->count; i++)
            counts[parts.laid[strip->first + i].size] += parts.laid[strip->first + i].count;
        ck_assert(has_room(way, strip->height, counts));
        ck_assert(way->sheet || strip->height == way->along);
        ck_assert(!parts.cutting.one_size || strip->count == 1);
        along -= strip->height;
    }
    ck_assert_int_ge(along, 0);
}

/* ---- put together ------------------------------------------------------------------------------------------------ */

static void change_by_chance(uint64_t *seed)
{
    struct msl_making *making = &bench.making;
    const int32_t count = making->plan.count;
    const int32_t pattern = (int32_t)pick(seed, parts.pool.pattern_count);
    ck_assert_int_eq(msl_plan_times(making, pattern), plain_times(pattern));
    switch (pick(seed, 4)) {
    case 0: {
        const int32_t row = (int32_t)pick(seed, count + 1);
        if (row < count && making->plan.rows[row].times > 0)
            msl_plan_take_one(making, row);
        break;
    }
    case 1:
        if (pick(seed, 3) == 0) {
            const int32_t rows = (int32_t)pick(seed, count + 1);
            msl_plan_cut_back(making, rows);
            ck_assert_int_eq(making->plan.count, rows);
        }
        break;
    default:
        ck_assert_int_eq(msl_plan_put(making, pattern, 1 + pick(seed, 3)), count < making->plan.most);
        ck_assert_int_eq(making->plan.count, count + (count < making->plan.most));
    }
}

START_TEST(test_sums)
{
    const struct muslin_allocator memory = parts_memory();
    uint64_t seed = 1;
    for (int round = 0; round < 300; round++) {
        make_bench(&seed, round % 2, &memory);
        make_patterns(&seed, 8);
        bench.making.plan.most = 3 + (int32_t)pick(&seed, 8);
        bench.making.plan.cost = 9;
        msl_plan_begin(&bench.making);
        ck_assert_int_eq(bench.making.plan.count, 0);
        check_sums();
        for (int step = 0; parts.pool.pattern_count > 0 && step < 20; step++) {
            change_by_chance(&seed);
            check_sums();
        }
        msl_pricing_free(&bench.pricing, &memory);
    }
}
END_TEST

/* ---- tidied and kept --------------------------------------------------------------------------------------------- */

/* Puts patterns by chance until all is cut, and some more. Returns 0 where they do not give it. */
static int put_all(uint64_t *seed)
{
    struct msl_making *making = &bench.making;
    int32_t missing = 1;
    while (missing > 0 && making->plan.count < ROWS / 2) {
        missing = 0;
        ck_assert(msl_plan_put(making, (int32_t)pick(seed, parts.pool.pattern_count), 1 + pick(seed, 2)));
        for (int32_t s = 0; s < parts.cutting.size_count; s++)
            missing += making->left[s] > 0;
    }
    return missing == 0;
}

/* Of a plain strip no lower one would hold what is not surplus, and no pattern is surplus in all. */
static void check_tidy(const struct msl_plan *plan, int32_t row)
{
    const int32_t pattern = plan->rows[row].pattern;
    const struct msl_way *way = way_of(pattern);
    int64_t counts[FEW_SIZES];
    int64_t needed = 0;
    for (int32_t s = 0; s < parts.cutting.size_count; s++) {
        counts[s] = larger(0, held(pattern, s) - larger(0, surplus(plan, s)));
        needed += counts[s];
    }
    ck_assert_int_gt(needed, 0);
    for (int32_t w = 0; !way->sheet && !parts.cutting.stacked && w < parts.cutting.way_count; w++)
        ck_assert(parts.ways[w].cost >= way->cost || !has_room(&parts.ways[w], parts.ways[w].along, counts));
}

static void check_kept(int64_t before)
{
    const struct msl_plan *best = &bench.making.best;
    ck_assert_int_le(best->cost, before);
    ck_assert_int_eq(best->cost, cost_of(best));
    for (int32_t s = 0; s < parts.cutting.size_count; s++)
        ck_assert_int_ge(surplus(best, s), 0);
    for (int32_t row = 0; row < best->count; row++) {
        ck_assert_int_gt(best->rows[row].times, 0);
        check_room(best->rows[row].pattern);
        check_tidy(best, row);
    }
}

static int pool_is(int32_t patterns, int32_t strips, int32_t laid)
{
    return parts.pool.pattern_count == patterns && parts.pool.strip_count == strips && parts.pool.laid_count == laid;
}

/* Only what costs less than the best plan is kept, and only whole plans are; of others no pattern is left. */
START_TEST(test_kept)
{
    const struct muslin_allocator memory = parts_memory();
    uint64_t seed = 2;
    int32_t kept = 0;
    int32_t lowered = 0;
    for (int round = 0; round < 600; round++) {
        struct msl_making *making = &bench.making;
        make_bench(&seed, round % 3 == 0, &memory);
        make_patterns(&seed, 3);
        const int32_t patterns = parts.pool.pattern_count;
        const int32_t strips = parts.pool.strip_count;
        const int32_t laid = parts.pool.laid_count;
        msl_plan_begin(making);
        make_patterns(&seed, 5);
        const int whole = parts.pool.pattern_count > 0 && put_all(&seed) && pick(&seed, 8) > 0;
        const int64_t before = making->plan.cost;
        const int64_t beat = before + 2 - pick(&seed, 8);
        making->best.cost = beat;
        making->best.count = 1;
        const int found = msl_plan_end(making, whole);
        check_beside();
        ck_assert_int_eq(found, whole && making->plan.cost < beat);
        if (found) {
            check_kept(before);
            lowered += making->best.cost < before;
        } else {
            ck_assert(pool_is(patterns, strips, laid));
            ck_assert(making->best.count == 1 && making->best.cost == beat);
            ck_assert(whole || making->plan.cost == before);
        }
        kept += found;
        msl_pricing_free(&bench.pricing, &memory);
    }
    ck_assert_int_gt(kept, 50);
    ck_assert_int_gt(lowered, 50);
}
END_TEST

/* Strips of 9 for what a lower strip of 4 holds: without room for another row, or another pattern, they stay. */
START_TEST(test_no_room_to_tidy)
{
    const int32_t sizes[2] = { 0, 1 };
    const int32_t counts[2] = { 1, 1 };
    for (int short_of = 0; short_of < 3; short_of++) {
        parts_begin(&parts);
        parts_size(&parts, 5, 9, 0, 1);
        parts_size(&parts, 5, 4, 0, 2);
        parts_way(&parts, 10, 9);
        parts_way(&parts, 10, 4);
        spoil();
        const struct msl_making making = {
            .cutting = &parts.cutting, .pool = &parts.pool, .wanted = bench.longs[4] + 1, .left = bench.longs[1] + 1,
            .in_hand = bench.longs[0] + 1, .sizes = bench.ints[0] + 1, .counts = bench.ints[1] + 1,
            .plan = { bench.rows, 0, 0, short_of == 1 ? 1 : 2 }, .best = { bench.best, 1000, 0, ROWS }
        };
        bench.making = making;
        making.wanted[0] = 1;
        making.wanted[1] = 2;
        parts.pool.most_patterns = short_of == 2 ? 1 : 2;
        msl_plan_begin(&bench.making);
        const int32_t made = msl_pool_add(&parts.pool, 0, 9, sizes, counts, 2);
        ck_assert(msl_plan_put(&bench.making, made, 2));
        ck_assert(msl_plan_end(&bench.making, 1));
        ck_assert_int_eq(bench.making.best.cost, short_of == 0 ? 9 + 4 : 18);
        ck_assert_int_eq(cost_of(&bench.making.best), bench.making.best.cost);
    }
}
END_TEST

/* ---- filled in --------------------------------------------------------------------------------------------------- */

/* The most worth of a strip of this way, of what is left, trying all counts. */
static int64_t try_strip(const struct msl_way *way, const int64_t *left)
{
    int64_t counts[FEW_SIZES] = { 0 };
    const int32_t sizes = parts.cutting.size_count;
    int64_t best = 0;
    for (int32_t at = 0; at < sizes;) {
        int64_t worth = 0;
        int32_t kinds = 0;
        for (int32_t s = 0; s < sizes; s++) {
            worth += counts[s] * bench.making.worth[s];
            kinds += counts[s] > 0;
        }
        if ((kinds < 2 || !parts.cutting.one_size) && worth > best && has_room(way, way->along, counts))
            best = worth;
        for (at = 0; at < sizes && counts[at] >= left[at]; at++)
            counts[at] = 0;
        if (at < sizes)
            counts[at]++;
    }
    return best;
}

/* No strip of what was left before a row is worth more for its cost than the row's, which is cut as often as it can. */
static void check_row(const struct msl_plan_row *row, int64_t *left)
{
    const struct msl_way *way = way_of(row->pattern);
    int64_t worth = 0;
    int64_t most = INT64_MAX;
    check_room(row->pattern);
    for (int32_t s = 0; s < parts.cutting.size_count; s++) {
        worth += held(row->pattern, s) * bench.making.worth[s];
        if (held(row->pattern, s) > 0)
            most = lesser(most, left[s] / held(row->pattern, s));
    }
    for (int32_t w = 0; !way->sheet && !parts.cutting.stacked && w < parts.cutting.way_count; w++) {
        int64_t counts[FEW_SIZES];
        for (int32_t s = 0; s < parts.cutting.size_count; s++)
            counts[s] = held(row->pattern, s);
        ck_assert(parts.ways[w].cost >= way->cost || !has_room(&parts.ways[w], parts.ways[w].along, counts));
        ck_assert_int_le(try_strip(&parts.ways[w], left) * way->cost, worth * parts.ways[w].cost);
    }
    if (!way->sheet)
        ck_assert_int_eq(row->times, larger(1, most));
    for (int32_t s = 0; s < parts.cutting.size_count; s++)
        left[s] -= row->times * held(row->pattern, s);
}

static int fill_anew(int64_t beat)
{
    bench.making.best.cost = beat;
    msl_plan_begin(&bench.making);
    const int found = msl_plan_fill(&bench.making, bench.making.worth);
    check_sums();
    return found;
}

START_TEST(test_filled)
{
    const struct muslin_allocator memory = parts_memory();
    uint64_t seed = 3;
    for (int round = 0; round < 400; round++) {
        const int from_stock = round % 3 == 0;
        int64_t left[FEW_SIZES];
        make_bench(&seed, from_stock, &memory);
        make_patterns(&seed, 2);
        const int32_t patterns = parts.pool.pattern_count;
        const struct msl_plan *plan = &bench.making.plan;
        const int found = fill_anew(INT64_MAX / 2);
        ck_assert(found || (from_stock && larger(bench.available[1], bench.available[2]) < INT64_MAX));
        ck_assert_int_eq(parts.pool.pattern_count, patterns + plan->count);
        for (int32_t s = 0; s < parts.cutting.size_count; s++)
            left[s] = bench.making.wanted[s];
        for (int32_t row = 0; row < plan->count; row++)
            check_row(&plan->rows[row], left);
        for (int32_t stock = 0; stock < parts.cutting.stock_count; stock++)
            ck_assert_int_ge(bench.making.in_hand[stock], 0);
        for (int32_t s = 0; s < parts.cutting.size_count; s++)
            ck_assert(left[s] == 0 || (left[s] > 0 && !found));
        if (found) {
            const int64_t cost = plan->cost;
            ck_assert(!fill_anew(cost));
            ck_assert(fill_anew(cost + 1));
            bench.making.plan.most = plan->count - 1;
            ck_assert(!fill_anew(cost + 1));
        }
        for (int32_t s = 0; s < parts.cutting.size_count; s++)
            bench.making.worth[s] = 0;
        ck_assert(!fill_anew(INT64_MAX / 2));
        ck_assert_int_eq(plan->count, 0);
        if (!from_stock) { /* and plainly nothing is cut from a bolt */
            bench.making.plain_from = bench.pricing.sack.steps;
            bench.making.in_hand[-1] = BESIDE;
            bench.making.best.cost = INT64_MAX / 2;
            msl_plan_begin(&bench.making);
            ck_assert(!msl_plan_fill(&bench.making, bench.making.worth));
            ck_assert_int_eq(plan->count, 0);
        }
        msl_pricing_free(&bench.pricing, &memory);
    }
}
END_TEST

/* Whether a strip of this height, of what is left of a piece of stock, holds a piece of the size. */
static int opens(const struct msl_way *way, int64_t along, int32_t size, int64_t height)
{
    const int64_t taken = height == 0 ? 0 : plainly_taken(&parts.sizes[size], height);
    return taken > 0 && height <= along && parts.sizes[size].run_in + taken <= way->across;
}

static int opens_some(const struct msl_way *way, int64_t along, int32_t size)
{
    return opens(way, along, size, parts.sizes[size].along) || opens(way, along, size, parts.sizes[size].turned_along);
}

/* The way with most room for its cost, the first of equal ones, of those in hand in which the size fits. */
static int32_t roomiest(const int64_t *have, int32_t size)
{
    int32_t best = -1;
    for (int32_t w = 0; w < parts.cutting.way_count; w++) {
        const struct msl_way *way = &parts.ways[w];
        if (have[way->stock] > 0 && opens_some(way, way->along, size) &&
            (best < 0 || way->across * way->along * parts.ways[best].cost >
                             parts.ways[best].across * parts.ways[best].along * way->cost))
            best = w;
    }
    return best;
}

/* What goes beside a strip's pieces: none of the sizes from its first one up to `end` of which some are left. */
static void check_full_strip(const struct msl_strip *strip, const struct msl_way *way, int32_t end, const int64_t *left)
{
    int64_t room = way->across;
    int64_t counts[FEW_SIZES] = { 0 };
    for (int32_t i = strip->first; i < strip->first + strip->count; i++) {
        const int32_t size = parts.laid[i].size;
        ck_assert(i == strip->first || size > parts.laid[i - 1].size);
        ck_assert_int_gt(parts.laid[i].count, 0);
        counts[size] = parts.laid[i].count;
        room -= parts.sizes[size].run_in + counts[size] * plainly_taken(&parts.sizes[size], strip->height);
    }
    for (int32_t s = parts.laid[strip->first].size; s < (parts.cutting.one_size ? 0 : end); s++) {
        const int64_t taken = plainly_taken(&parts.sizes[s], strip->height);
        ck_assert(left[s] <= 0 || taken == 0 || taken + (counts[s] > 0 ? 0 : parts.sizes[s].run_in) > room);
    }
}

/* The stock is that with most room for its cost, and nothing more of the sizes that go together goes into it: all, or
 * the first that is left alone, where there is more of it than goes in by area. */
static void check_plain_row(const struct msl_plan_row *row, int64_t *left, int64_t *have)
{
    const struct msl_way *way = way_of(row->pattern);
    const struct msl_pattern *pattern = &parts.patterns[row->pattern];
    int64_t along = way->along;
    int32_t first = 0;
    while (left[first] <= 0)
        first++;
    const struct msl_piece_size *size = &parts.sizes[first];
    const int alone = left[first] * size->across * size->along > way->across * way->along;
    const int32_t end = alone ? first + 1 : parts.cutting.size_count;
    check_room(row->pattern);
    ck_assert_int_eq(pattern->way, roomiest(have, first));
    for (int32_t s = 0; s < parts.cutting.size_count; s++) {
        left[s] -= held(row->pattern, s);
        ck_assert(held(row->pattern, s) == 0 || (s < end && left[s] >= 0));
    }
    for (int32_t s = pattern->first; s < pattern->first + pattern->count; s++) {
        check_full_strip(&parts.strips[s], way, end, left);
        along -= parts.strips[s].height;
    }
    for (int32_t s = first; s < end; s++)
        ck_assert(left[s] <= 0 || !opens_some(way, along, s));
    for (int32_t s = 0; s < parts.cutting.size_count; s++)
        left[s] -= (row->times - 1) * held(row->pattern, s);
    have[way->stock] -= row->times;
}

/* With a strip less in the pool than is needed, or room for pieces, there is no plan, and nothing is left of the
 * pattern that was begun. */
static void check_short(int of_strips)
{
    struct msl_pool *pool = &parts.pool;
    pool->most_strips = pool->strip_count - of_strips;
    pool->most_laid = pool->laid_count - !of_strips;
    pool->pattern_count = pool->strip_count = pool->laid_count = 0;
    ck_assert(!fill_anew(INT64_MAX / 2));
    ck_assert_int_eq(pool->pattern_count, bench.making.plan.count);
    int32_t laid = 0;
    int32_t strips = 0;
    for (int32_t p = 0; p < pool->pattern_count; p++)
        strips += parts.patterns[p].count;
    for (int32_t s = 0; s < strips; s++)
        laid += parts.strips[s].count;
    ck_assert(pool_is(bench.making.plan.count, strips, laid));
}

START_TEST(test_filled_plainly)
{
    const struct muslin_allocator memory = parts_memory();
    uint64_t seed = 5;
    int32_t filled = 0;
    for (int round = 0; round < 600; round++) {
        int64_t left[FEW_SIZES];
        int64_t have[2];
        make_bench_of(&seed, 1, 4, &memory);
        parts.cutting.stacked = 0;
        for (int32_t s = 0; s < parts.cutting.size_count; s++)
            left[s] = bench.making.wanted[s] = larger(1, pick(&seed, 3) * pick(&seed, 40));
        memcpy(have, bench.available + 1, sizeof have);
        bench.making.plain_from = bench.pricing.sack.steps = 1;
        const struct msl_plan *plan = &bench.making.plan;
        const int found = fill_anew(INT64_MAX / 2);
        for (int32_t row = 0; row < plan->count; row++)
            check_plain_row(&plan->rows[row], left, have);
        int32_t first = 0;
        while (first < parts.cutting.size_count && left[first] <= 0)
            first++;
        ck_assert_int_eq(found, first == parts.cutting.size_count);
        ck_assert(found || roomiest(have, first) < 0 || plan->count == ROWS);
        ck_assert_int_ge(lesser(have[0], have[1]), 0);
        ck_assert_int_eq(parts.pool.pattern_count, plan->count);
        filled += found;
        if (found)
            check_short(seed % 2 == 0);
        msl_pricing_free(&bench.pricing, &memory);
    }
    ck_assert_int_gt(filled, 100);
}
END_TEST

/* Of three sizes the first is not wanted: two ways and that one are looked at, then for the strip two sizes. */
START_TEST(test_plain_steps)
{
    const struct muslin_allocator memory = parts_memory();
    uint64_t seed = 1;
    make_bench(&seed, 1, &memory);
    while (parts.cutting.size_count != 3 || parts.cutting.one_size) {
        msl_pricing_free(&bench.pricing, &memory);
        make_bench(&seed, 1, &memory);
    }
    for (int32_t s = 0; s < 3; s++) {
        const struct msl_piece_size size = { 3, 4, 0, 0, 0, 1, 0, 0 };
        parts.sizes[s] = bench.sizes[1 + s] = size;
        bench.making.wanted[s] = s > 0;
    }
    bench.available[1] = bench.available[2] = 1;
    parts.cutting.way_count = 2;
    bench.making.plain_from = bench.pricing.sack.steps = 100;
    ck_assert(fill_anew(1000));
    ck_assert_int_eq(bench.pricing.sack.steps, 100 + 2 + 1 + 2);
    msl_pricing_free(&bench.pricing, &memory);
}
END_TEST

/* So many sizes, of two pieces each, and a plan to be filled in. */
static void make_many(int32_t count, const struct muslin_allocator *memory)
{
    static struct msl_piece_size sizes[MSL_SIZES_MAX + 1];
    static int64_t longs[5][MSL_SIZES_MAX + 1];
    static int32_t ints[3][MSL_SIZES_MAX + 1];
    parts.cutting.sizes = sizes;
    parts.cutting.size_count = count;
    for (int32_t s = 0; s < count; s++) {
        const struct msl_piece_size size = { 5, 10, 0, 0, 0, 2, 0, 0 };
        sizes[s] = size;
        longs[0][s] = longs[3][s] = 2;
        longs[2][s] = BESIDE;
    }
    ck_assert(msl_pricing_make(&bench.pricing, &parts.cutting, 4096, memory));
    const struct msl_making making = {
        .cutting = &parts.cutting, .pool = &parts.pool, .pricing = &bench.pricing, .wanted = longs[0], .left = longs[1],
        .offered = longs[2], .worth = longs[3], .in_hand = longs[4], .sizes = ints[0], .counts = ints[1],
        .order = ints[2], .plan = { bench.rows, 0, 0, ROWS }, .best = { bench.best, 1000, 0, ROWS }
    };
    bench.making = making;
}

/* Sizes of two pieces each, so many; the pool has no room, and so nothing is laid. Returns how many were offered: the
 * first of them, in full. */
static int32_t count_offered(int32_t count)
{
    const struct muslin_allocator memory = parts_memory();
    int32_t offered = 0;
    parts_begin(&parts);
    parts_way(&parts, 100, 10);
    parts.pool.most_patterns = 0;
    make_many(count, &memory);
    msl_plan_begin(&bench.making);
    bench.making.left[0] = -1;
    ck_assert(!msl_plan_fill(&bench.making, bench.making.worth));
    const int64_t *found = bench.making.offered;
    while (offered + 1 < count && found[offered + 1] == 2)
        offered++;
    for (int32_t s = 0; s < count; s++)
        ck_assert(s > 0 && s <= offered ? found[s] == 2 : found[s] <= 0);
    msl_pricing_free(&bench.pricing, &memory);
    return offered;
}

/* One piece of stock has room for two of each of sixty sizes, and is filled with them in one go. */
START_TEST(test_many_plainly)
{
    const struct muslin_allocator memory = parts_memory();
    parts_begin(&parts);
    struct msl_way *way = parts_way(&parts, 100, 100);
    way->sheet = 1;
    way->stock = 0;
    parts.cutting.stock_count = 1;
    bench.available[0] = 1;
    parts.cutting.available = bench.available;
    make_many(60, &memory);
    bench.making.plain_from = bench.pricing.sack.steps = 1;
    msl_plan_begin(&bench.making);
    ck_assert(msl_plan_fill(&bench.making, bench.making.worth));
    ck_assert_int_eq(bench.making.plan.count, 1);
    ck_assert_int_eq(bench.making.plan.rows[0].times, 1);
    msl_pricing_free(&bench.pricing, &memory);
}
END_TEST

START_TEST(test_some_at_a_time)
{
    const int32_t some = count_offered(MSL_SIZES_MAX);
    const int32_t few = count_offered(MSL_SIZES_MAX + 1);
    ck_assert(0 < few && few < some && some < MSL_SIZES_MAX - 1);
    ck_assert_int_eq(count_offered(some + 1), some);
    ck_assert_int_eq(count_offered(few + 1), few);
}
END_TEST

/* ---- rounded ----------------------------------------------------------------------------------------------------- */

/* Levels of so many 64ths, whose whole part is cut, after `more` is added; of stock no more than there is. What is left
 * then is filled in. */
START_TEST(test_rounded)
{
    const struct muslin_allocator memory = parts_memory();
    uint64_t seed = 4;
    for (int round = 0; round < 300; round++) {
        struct msl_basic basis[4];
        int64_t level[4];
        struct msl_plan_row wanted[4];
        int64_t in_hand_of[2];
        int32_t rows = 0;
        make_bench(&seed, round % 2, &memory);
        for (int32_t s = 0; s < parts.cutting.size_count; s++)
            bench.making.wanted[s] = 1000;
        for (int32_t stock = 0; stock < parts.cutting.stock_count; stock++) {
            bench.available[1 + stock] = pick(&seed, 2) == 0 ? INT64_MAX : pick(&seed, 9);
            in_hand_of[stock] = bench.available[1 + stock];
        }
        make_patterns(&seed, 6);
        const int64_t more = pick(&seed, 64);
        const int32_t point = 33 + (int32_t)pick(&seed, 8);
        for (int32_t i = 0; i < 4; i++) {
            const int64_t parts_of_64 = pick(&seed, 64 * 5);
            const struct msl_basic basic = { (int32_t)pick(&seed, parts.pool.pattern_count + 1) - 1,
                                             pick(&seed, 5) == 0 };
            basis[i] = basic;
            level[i] = parts_of_64 << (point - 6);
            int64_t times = (parts_of_64 + more) / 64;
            if (basic.column < 0 || basic.against)
                continue;
            const int32_t stock = way_of(basic.column)->stock;
            if (stock >= 0) {
                times = lesser(times, in_hand_of[stock]);
                in_hand_of[stock] -= times;
            }
            const struct msl_plan_row row = { times, basic.column, 0 };
            if (times > 0)
                wanted[rows++] = row;
        }
        const struct msl_master master = { .basis = basis, .level = level, .worth = bench.making.worth,
                                           .row_count = 4, .point = point };
        bench.making.best.cost = 0; /* so that none is kept */
        ck_assert_int_eq(msl_plan_round(&bench.making, &master, more), 0);
        for (int32_t row = 0; row < rows; row++) {
            ck_assert_int_eq(bench.making.plan.rows[row].times, wanted[row].times);
            ck_assert_int_eq(bench.making.plan.rows[row].pattern, wanted[row].pattern);
        }
        check_sums();
        msl_pricing_free(&bench.pricing, &memory);
    }
}
END_TEST

Suite *cutplan_fill_suite(void)
{
    Suite *suite = suite_create("cutplan_fill");
    TCase *all = tcase_create("all");
    tcase_add_test(all, test_sums);
    tcase_add_test(all, test_kept);
    tcase_add_test(all, test_no_room_to_tidy);
    tcase_add_test(all, test_filled);
    tcase_add_test(all, test_filled_plainly);
    tcase_add_test(all, test_plain_steps);
    tcase_add_test(all, test_some_at_a_time);
    tcase_add_test(all, test_many_plainly);
    tcase_add_test(all, test_rounded);
    suite_add_tcase(suite, all);
    return suite;
}
