/* test_cutplan_search.c - plans and proofs of few pieces, against every plan and every pattern there is.
 *
 * SPDX-License-Identifier: MIT */
#include "test_cutplan_brute.h"

static struct brute brute;

/* Sizes by chance: few different sides, so that heights and sums meet. */
static void chance_sizes(struct tiny *t, uint64_t *seed, int64_t side)
{
    int64_t left = 3 + tiny_chance(seed, 4);
    tiny_start(t);
    while (left > 0 && t->cutting.size_count < 4) {
        int64_t count = 1 + tiny_chance(seed, left);
        int64_t across = 2 + tiny_chance(seed, side);
        int64_t along = 2 + tiny_chance(seed, side);
        tiny_size(t, across, along, count, tiny_chance(seed, 3) > 0);
        left -= count;
    }
}

/* Searches, and looks at all that comes out. Returns 0 where no plan was found though there is one. */
static int ck_search(const struct tiny *t, int64_t work_limit)
{
    struct msl_found found;
    brute_start(&brute, &t->cutting);
    int64_t best = brute_cost(&brute);
    muslin_status status = tiny_search(t, work_limit, &found);
    if (best < 0)
        ck_assert(status == MUSLIN_ERR_NOT_ENOUGH || status == MUSLIN_ERR_WORK_LIMIT);
    if (status == MUSLIN_ERR_NOT_ENOUGH)
        ck_assert_int_lt(best, 0);
    if (status == MUSLIN_ERR_NOT_ENOUGH || status == MUSLIN_ERR_WORK_LIMIT)
        return best < 0;
    ck_ok(status);
    ck_plan(&t->cutting, &found);
    ck_proof(&brute, &found);
    ck_assert_int_le(found.least, best);
    ck_assert_int_ge(found.cost, best);
    tiny_free(&found);
    return 1;
}

START_TEST(bolts_by_chance)
{
    uint64_t seed = (uint64_t)_i;
    struct tiny t;
    chance_sizes(&t, &seed, 9);
    tiny_bolt(&t, 10 + tiny_chance(&seed, 12));
    struct msl_found found;
    ck_assert(ck_search(&t, 1000000));
    ck_ok(tiny_search(&t, 1000000, &found));
    ck_assert_int_eq(found.cost, found.least);
    ck_assert_int_eq(found.stopped, 0);
    tiny_free(&found);
}
END_TEST

START_TEST(bolts_with_rules)
{
    uint64_t seed = (uint64_t)_i + 7000;
    struct tiny t;
    chance_sizes(&t, &seed, 6);
    for (int32_t i = 0; i < t.cutting.size_count; i++) {
        t.sizes[i].run_in = tiny_chance(&seed, 3);
        t.sizes[i].level = tiny_chance(&seed, 4) == 0;
    }
    t.cutting.one_size = _i % 5 == 0;
    tiny_bolt(&t, 10 + tiny_chance(&seed, 12));
    ck_assert(ck_search(&t, 1000000));
}
END_TEST

START_TEST(bolts_with_little_work)
{
    uint64_t seed = (uint64_t)_i + 9000;
    struct tiny t;
    chance_sizes(&t, &seed, 9);
    tiny_bolt(&t, 10 + tiny_chance(&seed, 12));
    ck_assert(ck_search(&t, tiny_chance(&seed, 3000)));
}
END_TEST

/* Few pieces of stock: where just one plan uses them up, now and then it is not found. */
START_TEST(stock_by_chance)
{
    int32_t unseen = 0;
    for (int32_t i = 0; i < 300; i++) {
        uint64_t seed = (uint64_t)i + 5000;
        struct tiny t;
        chance_sizes(&t, &seed, 6);
        tiny_heights(&t);
        tiny_stock(&t, 8 + tiny_chance(&seed, 4), 8 + tiny_chance(&seed, 6),
                   i % 3 == 0 ? INT64_MAX : 1 + tiny_chance(&seed, 3), 5 + tiny_chance(&seed, 4));
        if (i % 2)
            tiny_stock(&t, 8, 8, 1 + tiny_chance(&seed, 3), 3 + tiny_chance(&seed, 2));
        unseen += !ck_search(&t, i % 5 == 4 ? tiny_chance(&seed, 3000) : 1000000);
    }
    ck_assert_int_le(unseen, 3);
}
END_TEST

/* ---- by hand ----------------------------------------------------------------------------------------------------- */

/* 40 in: seven squares of 5 1/2 in, six of 6, four of 9 1/2 in a strip. In half inches 80. */
static void three_squares(struct tiny *t)
{
    tiny_start(t);
    tiny_size(t, 11, 11, 32, 1);
    tiny_size(t, 12, 12, 16, 1);
    tiny_size(t, 19, 19, 8, 1);
    tiny_bolt(t, 80);
}

START_TEST(three_squares_take_60_inches)
{
    struct tiny t;
    struct msl_found found;
    three_squares(&t);
    ck_ok(tiny_search(&t, 1000000, &found));
    ck_plan(&t.cutting, &found);
    ck_assert_int_eq(found.cost, 120);
    ck_assert_int_eq(found.least, 120);
    tiny_free(&found);
}
END_TEST

START_TEST(every_allocation_may_fail)
{
    struct tiny t;
    struct msl_watch watch = { NULL, NULL, 10000, 0 };
    struct failing_allocator failing;
    three_squares(&t);
    EVERY_ALLOCATION_FAILS_ONCE(failing) {
        struct msl_found found;
        memset(&found, 7, sizeof found);
        muslin_status status = msl_cutplan_search(&t.cutting, &watch, &failing.allocator, &found);
        ck_status(status, failing.has_failed ? MUSLIN_ERR_NO_MEMORY : MUSLIN_OK);
        if (status == MUSLIN_OK)
            msl_found_free(&failing.allocator, &found);
        else
            ck_assert_int_eq(found.bits, 0x07070707);
        ck_assert(failing_is_clean(&failing));
    }
}
END_TEST

START_TEST(a_search_takes_16_mebibytes_at_most)
{
    struct tiny t;
    struct failing_allocator failing;
    struct msl_watch watch = { NULL, NULL, 10000, 0 };
    tiny_start(&t);
    static struct msl_piece_size sizes[MSL_SIZES_MAX];
    static struct msl_way ways[MSL_WAYS_MAX];
    for (int32_t i = 0; i < MSL_SIZES_MAX; i++) {
        struct msl_piece_size size = { 20 + i, 20 + i, 0, 0, 0, 7, 0, 0 };
        sizes[i] = size;
    }
    for (int32_t i = 0; i < MSL_WAYS_MAX; i++) {
        struct msl_way way = { 340 - i, 320, 340 - i, 0, 0, -1, 0 };
        ways[i] = way;
    }
    t.cutting.sizes = sizes;
    t.cutting.size_count = MSL_SIZES_MAX;
    t.cutting.ways = ways;
    t.cutting.way_count = MSL_WAYS_MAX;
    failing_start(&failing, 0);
    struct msl_workshop *workshop = msl_workshop_open(&t.cutting, &watch, &failing.allocator);
    ck_assert_ptr_nonnull(workshop);
    ck_assert_uint_le(failing.bytes, (size_t)16 << 20);
    msl_workshop_close(workshop);
    ck_assert(failing_is_clean(&failing));
}
END_TEST

struct told {
    int32_t times;
    int32_t end;
    int64_t work;
    int64_t best;
    int64_t least;
};

static int32_t tell(void *context, int64_t work, int64_t best, int64_t least)
{
    struct told *told = context;
    ck_assert_int_ge(work, told->work);
    ck_assert_int_le(best, told->best);
    ck_assert_int_ge(least, told->least);
    ck_assert_int_le(least, best);
    told->work = work;
    told->best = best;
    told->least = least;
    return ++told->times == told->end;
}

/* The prints of a throw, in eighths, that takes some hundred cases. */
static void throw_of_eight(struct tiny *t)
{
    tiny_start(t);
    tiny_size(t, 20, 20, 32, 1);
    tiny_size(t, 20, 52, 18, 1);
    tiny_size(t, 28, 28, 127, 1);
    tiny_size(t, 28, 40, 32, 1);
    tiny_size(t, 36, 100, 32, 1);
    tiny_size(t, 39, 39, 32, 1);
    tiny_size(t, 48, 48, 8, 1);
    tiny_size(t, 50, 50, 32, 1);
    tiny_size(t, 55, 55, 8, 1);
    tiny_size(t, 336, 18, 7, 0);
    tiny_bolt(t, 336);
}

START_TEST(progress_is_told_and_may_end_it)
{
    struct tiny t;
    struct muslin_allocator memory;
    struct msl_found found;
    struct told told = { 0, 5, 0, INT64_MAX, 0 };
    struct msl_watch watch = { tell, &told, 400000000, 0 };
    muslin_allocator_libc(&memory);
    throw_of_eight(&t);
    ck_ok(msl_cutplan_search(&t.cutting, &watch, &memory, &found));
    ck_plan(&t.cutting, &found);
    ck_assert_int_eq(told.times, 5);
    ck_assert_int_eq(found.stopped, 1);
    ck_assert_int_le(found.cost, told.best);
    tiny_free(&found);
    told.end = 0;
    told.work = told.least = 0;
    told.best = INT64_MAX;
    ck_ok(msl_cutplan_search(&t.cutting, &watch, &memory, &found));
    ck_assert_int_eq(found.stopped, 0);
    ck_assert_int_eq(found.cost, 1510);
    ck_assert_int_eq(found.least, 1510);
    tiny_free(&found);
}
END_TEST

START_TEST(without_work_there_is_a_plan_and_a_plain_bound)
{
    struct tiny t;
    struct msl_found found;
    three_squares(&t);
    ck_ok(tiny_search(&t, 0, &found));
    ck_plan(&t.cutting, &found);
    ck_assert_int_eq(found.stopped, 2);
    /* 32 x 121 + 16 x 144 + 8 x 361 = 9064 over 80: 113.3 */
    ck_assert_int_eq(found.least, 114);
    tiny_free(&found);
}
END_TEST

/* More sizes than are searched: first plans and the area. */
START_TEST(many_sizes_have_a_plan_and_a_plain_bound)
{
    static struct msl_piece_size sizes[MSL_SIZES_MAX + 1];
    static struct msl_way ways[MSL_SIZES_MAX + 1];
    struct msl_cutting cutting = { sizes, ways, NULL, NULL, MSL_SIZES_MAX + 1, MSL_SIZES_MAX + 1, 0, 0, 0, 0 };
    int64_t area = 0;
    for (int32_t i = 0; i <= MSL_SIZES_MAX; i++) {
        struct msl_piece_size size = { 200 - i, 200 - i, 0, 0, 0, 1 + i % 3, 0, 0 };
        struct msl_way way = { 200 - i, 400, 200 - i, 0, 0, -1, 0 };
        sizes[i] = size;
        ways[i] = way;
        area += size.across * size.along * size.count;
    }
    struct tiny t;
    struct msl_found found;
    tiny_start(&t);
    t.cutting = cutting;
    ck_ok(tiny_search(&t, 1000000, &found));
    ck_assert_int_eq(found.least, (area + 399) / 400);
    ck_assert_int_eq(found.case_count, 1);
    ck_assert_int_eq(found.worth_count, MSL_SIZES_MAX + 1);
    int64_t pieces = 0;
    for (int32_t i = 0; i < found.plan.laid_count; i++)
        pieces += found.plan.laid[i].count;
    ck_assert_int_ge(pieces, 2 * (MSL_SIZES_MAX + 1) - 1);
    tiny_free(&found);
    struct failing_allocator failing;
    struct msl_watch watch = { NULL, NULL, 10000, 0 };
    EVERY_ALLOCATION_FAILS_ONCE(failing) {
        muslin_status status = msl_cutplan_search(&t.cutting, &watch, &failing.allocator, &found);
        ck_status(status, failing.has_failed ? MUSLIN_ERR_NO_MEMORY : MUSLIN_OK);
        if (status == MUSLIN_OK)
            msl_found_free(&failing.allocator, &found);
        ck_assert(failing_is_clean(&failing));
    }
}
END_TEST

/* Too many ways, or too many pieces of stock. */
START_TEST(many_ways_and_much_stock_as_well)
{
    static struct msl_piece_size sizes[MSL_SIZES_MAX + 1];
    static struct msl_way ways[2 * MSL_WAYS_MAX];
    static int64_t available[MSL_WAYS_MAX];
    static int64_t heights[MSL_SIZES_MAX + 1];
    struct msl_cutting cutting = { sizes, ways, heights, available, 1, MSL_WAYS_MAX + 1, 0, 0, 0, 0 };
    struct tiny t;
    struct msl_found found;
    tiny_start(&t);
    for (int32_t i = 0; i <= MSL_SIZES_MAX; i++) {
        struct msl_piece_size size = { 10, 200 - i, 0, 0, 0, 2, 0, 0 };
        sizes[i] = size;
        heights[i] = 200 - i;
    }
    for (int32_t i = 0; i < 2 * MSL_WAYS_MAX; i++) {
        struct msl_way way = { 600 - i, 400, 600 - i, 0, 0, -1, 0 };
        ways[i] = way;
    }
    t.cutting = cutting;
    ck_ok(tiny_search(&t, 1000000, &found));
    ck_assert_int_eq(found.cost, 600 - MSL_WAYS_MAX);
    ck_assert_int_eq(found.case_count, 1);
    tiny_free(&found);
    /* many sizes, from pieces of stock, of which each has its own */
    for (int32_t i = 0; i < MSL_WAYS_MAX; i++) {
        struct msl_way way = { 7, 400, 300, 1, 0, i, 0 };
        ways[i] = way;
        available[i] = i % 2 ? 3 : INT64_MAX;
    }
    t.cutting.size_count = t.cutting.height_count = MSL_SIZES_MAX + 1;
    t.cutting.stock_count = t.cutting.way_count = MSL_WAYS_MAX;
    ck_ok(tiny_search(&t, 1000000, &found));
    ck_assert_int_eq(found.case_count, 1);
    ck_assert_int_eq(found.cost % 7, 0);
    tiny_free(&found);
    t.cutting.size_count = t.cutting.height_count = 3;
    ck_ok(tiny_search(&t, 1000000, &found));
    ck_assert_int_eq(found.cost, 7);
    ck_assert_int_eq(found.case_count, 1);
    tiny_free(&found);
}
END_TEST

/* Three each of 14, 13, 8 and 6, of 26: 123 in all, and fractions of strips that hold them come to five, yet five
 * strips do not. */
static void five_strips_all_but_hold(struct tiny *t)
{
    tiny_start(t);
    tiny_size(t, 13, 10, 3, 0);
    tiny_size(t, 6, 10, 3, 0);
    tiny_size(t, 14, 10, 3, 0);
    tiny_size(t, 8, 10, 3, 0);
    tiny_bolt(t, 26);
}

START_TEST(what_can_not_be_packed_is_proved_by_packing)
{
    struct tiny t;
    struct msl_found found;
    int32_t packed = 0;
    five_strips_all_but_hold(&t);
    ck_assert(ck_search(&t, 10000000));
    ck_ok(tiny_search(&t, 10000000, &found));
    ck_assert_int_eq(found.cost, 60);
    ck_assert_int_eq(found.least, 60);
    for (int32_t i = 0; i < found.case_count; i++)
        packed += found.cases[i].packed > 0;
    ck_assert_int_gt(packed, 0);
    tiny_free(&found);
}
END_TEST

START_TEST(stacks_leave_that_open)
{
    struct tiny t;
    struct msl_found found;
    five_strips_all_but_hold(&t);
    t.cutting.stacked = 1;
    ck_ok(tiny_search(&t, 10000000, &found));
    ck_plan(&t.cutting, &found);
    ck_assert_int_eq(found.cost, 60);
    ck_assert_int_eq(found.least, 50);
    ck_assert_int_eq(found.stopped, MUSLIN_CUTPLAN_STOPPED_NO_MORE);
    tiny_free(&found);
}
END_TEST

/* Two borders 4 x 60 and 28 squares of 8, of 40: the borders take a panel of 60, whose rest is 32 wide and has seven
 * strips of four squares. */
START_TEST(squares_beside_borders)
{
    struct tiny t;
    struct msl_found found;
    tiny_start(&t);
    tiny_size(&t, 4, 60, 2, 0)->slit = 1;
    tiny_size(&t, 8, 8, 28, 1);
    struct msl_way panel = { 60, 40, 60, 1, 1, -1, 0 };
    t.ways[t.cutting.way_count++] = panel;
    tiny_bolt(&t, 40);
    ck_ok(tiny_search(&t, 10000000, &found));
    ck_assert_int_eq(found.cost, 60);
    ck_assert_int_eq(found.least, 60);
    tiny_free(&found);
    /* a border 4 x 20 besides: three of them leave room for 21 squares, the others take two strips */
    tiny_start(&t);
    tiny_size(&t, 4, 60, 2, 0)->slit = 1;
    tiny_size(&t, 4, 20, 1, 0)->slit = 1;
    tiny_size(&t, 8, 8, 28, 1);
    t.ways[t.cutting.way_count++] = panel;
    tiny_bolt(&t, 40);
    for (int32_t i = t.cutting.way_count++; i > 2; i--)
        t.ways[i] = t.ways[i - 1];
    panel.cost = panel.along = 20;
    t.ways[2] = panel;
    ck_ok(tiny_search(&t, 10000000, &found));
    ck_assert_int_eq(found.cost, 76);
    ck_assert_int_eq(found.least, 76);
    tiny_free(&found);
}
END_TEST

/* The largest numbers there are: only the range is looked at. */
START_TEST(large_numbers_stay_in_range)
{
    struct tiny t;
    struct msl_found found;
    tiny_start(&t);
    tiny_size(&t, 1 << 20, 1 << 30, 2000000000, 0);
    tiny_size(&t, (1 << 29) + 1, 1 << 29, 2000000000, 0);
    tiny_size(&t, (1 << 20) + 7, 1 << 28, 5, 0);
    tiny_bolt(&t, 1 << 30);
    ck_ok(tiny_search(&t, 1000000, &found));
    ck_plan(&t.cutting, &found);
    /* the second alone takes a strip for each */
    ck_assert_int_ge(found.cost, ((int64_t)1 << 29) * 2000000000);
    tiny_free(&found);
}
END_TEST

/* Strips far longer than what they cost, and pieces that take next to nothing of them. */
START_TEST(long_strips_stay_in_range)
{
    struct tiny t;
    struct msl_found found;
    tiny_start(&t);
    tiny_size(&t, 1, 1 << 20, 3, 0);
    tiny_size(&t, 1 << 29, 1 << 19, 3, 0);
    tiny_bolt(&t, 1 << 30);
    ck_ok(tiny_search(&t, 1000000, &found));
    ck_plan(&t.cutting, &found);
    /* one high strip with a second piece, one low one with two */
    ck_assert_int_eq(found.cost, (1 << 20) + (1 << 19));
    ck_assert_int_eq(found.least, found.cost);
    tiny_free(&found);
}
END_TEST

START_TEST(stock_that_is_too_little)
{
    struct tiny t;
    struct msl_found found;
    tiny_start(&t);
    tiny_size(&t, 5, 5, 5, 0);
    tiny_heights(&t);
    tiny_stock(&t, 10, 10, 1, 3);
    ck_status(tiny_search(&t, 100000, &found), MUSLIN_ERR_NOT_ENOUGH);
    t.available[0] = 2;
    ck_ok(tiny_search(&t, 100000, &found));
    ck_assert_int_eq(found.cost, 6);
    tiny_free(&found);
}
END_TEST

/* ---- room that gives out ----------------------------------------------------------------------------------------- */

/* What is made smaller. */
enum { CASES, WORTHS, BASICS, PATTERNS, STRIPS, LAID, ROWS, LIMITS, DEPTH, PART_CASES, PART_PATTERNS, ROOMS };

static int32_t *room_of(struct msl_workshop *workshop, int32_t room)
{
    struct msl_search *whole = &workshop->whole;
    struct msl_search *part = &workshop->repair.part;
    int32_t *const rooms[ROOMS] = {
        [CASES] = &whole->most_cases,
        [WORTHS] = &whole->most_worths,
        [BASICS] = &whole->most_basics,
        [PATTERNS] = &whole->pool.most_patterns,
        [STRIPS] = &whole->pool.most_strips,
        [LIMITS] = &whole->most_rows,
        [DEPTH] = &whole->most_depth,
        [LAID] = &whole->pool.most_laid,
        [ROWS] = &whole->making.plan.most,
        [PART_CASES] = &part->most_cases,
        [PART_PATTERNS] = &part->pool.most_patterns,
    };
    return rooms[room];
}

static void search_in_little_room(const struct tiny *t, int32_t room, int32_t most, int with_brute)
{
    struct muslin_allocator memory;
    struct msl_watch watch = { NULL, NULL, room == STRIPS || room == LIMITS ? 2000000 : 1000000, 0 };
    struct msl_found found;
    muslin_allocator_libc(&memory);
    struct msl_workshop *workshop = msl_workshop_open(&t->cutting, &watch, &memory);
    ck_assert_ptr_nonnull(workshop);
    *room_of(workshop, room) = most;
    msl_workshop_search(workshop);
    muslin_status status = msl_hand_out(workshop, &found);
    if (status == MUSLIN_ERR_WORK_LIMIT) /* no room for any plan */
        return;
    ck_ok(status);
    ck_plan(&t->cutting, &found);
    if (with_brute)
        ck_proof(&brute, &found);
    /* with all the room there is they are proven: what is not for want of it says so */
    if (room <= BASICS && found.least < found.cost)
        ck_assert_int_ne(found.stopped, MUSLIN_CUTPLAN_STOPPED_NO_MORE);
    tiny_free(&found);
}

/* A list for two kinds of stock, in eighths. */
static void throw_from_stock(struct tiny *t)
{
    tiny_start(t);
    tiny_size(t, 12, 12, 44, 0);
    tiny_size(t, 24, 24, 66, 0);
    tiny_size(t, 64, 24, 44, 1);
    tiny_size(t, 32, 32, 44, 0);
    tiny_size(t, 116, 32, 11, 1);
    tiny_size(t, 34, 34, 11, 0);
    tiny_heights(t);
    tiny_stock(t, 168, 144, INT64_MAX, 378);
    tiny_stock(t, 168, 72, INT64_MAX, 189);
}

START_TEST(little_room_gives_less_but_nothing_wrong)
{
    static const int32_t first[ROOMS] = { 1, 11, 11, 1, 1, 1, 1, 11, 0, 1, 11 };
    static const int32_t last[ROOMS] = { 60, 800, 1200, 400, 400, 900, 60, 30, 20, 30, 60 };
    struct tiny t;
    throw_of_eight(&t);
    for (int32_t most = first[_i]; most < last[_i]; most += 1 + most / 6)
        search_in_little_room(&t, _i, most, 0);
    five_strips_all_but_hold(&t);
    for (int32_t most = first[_i]; most < last[_i]; most += 1 + most / 6)
        search_in_little_room(&t, _i, most, 0);
    throw_from_stock(&t);
    for (int32_t most = 100; _i >= PATTERNS && _i <= LAID && most < 900; most += _i == STRIPS ? 5 : 1 + most / 12)
        search_in_little_room(&t, _i, most, 0);
    three_squares(&t);
    for (int32_t most = first[_i]; most < last[_i]; most += 1 + most / 6)
        search_in_little_room(&t, _i, most, 0);
    for (uint64_t seed = 1; seed < 30; seed++) {
        uint64_t chance = seed;
        chance_sizes(&t, &chance, 9);
        tiny_bolt(&t, 10 + tiny_chance(&chance, 12));
        brute_start(&brute, &t.cutting);
        search_in_little_room(&t, _i, first[_i] + (int32_t)tiny_chance(&chance, 20), 1);
    }
}
END_TEST

/* ---- looked into while it goes on -------------------------------------------------------------------------------- */

enum { LOOKED_CASES = 4000, LOOKED_EVERY = 8 };

/* A search, and what was seen of it last. */
struct looked {
    struct msl_workshop *workshop;
    int64_t steps[3];
    int64_t times;
    int64_t solved;
    int64_t best;
    int64_t proved[LOOKED_CASES]; /* of each case, its bound */
    uint64_t bases[LOOKED_CASES]; /* of each case, what its basis holds; 0: not seen yet */
};

static int is_open(const struct msl_search *search, int32_t number)
{
    const struct msl_case *of = &search->cases[number];
    return of->split == 0 && of->packed == 0 && of->least < search->making.best.cost;
}

/* The least bound first, then the deeper, then the older. */
static int is_sooner(const struct msl_search *search, int32_t a, int32_t b)
{
    const int64_t by[] = { search->cases[a].least - search->cases[b].least,
                           search->open[b].depth - search->open[a].depth, a - b };
    return by[0] != 0 ? by[0] < 0 : by[1] != 0 ? by[1] < 0 : by[2] < 0;
}

static int32_t not_in_order(const struct msl_search *search)
{
    int32_t wrong = 0;
    for (int32_t i = 1; i < search->heap_count; i++)
        wrong += is_sooner(search, search->heap[i], search->heap[(i - 1) / 2]);
    return wrong;
}

/* Each case that is open waits in just one place, and the bound is the least of them. */
static void ck_waiting(const struct msl_search *search)
{
    static uint8_t waits[LOOKED_CASES];
    int64_t least = search->making.best.cost;
    int32_t wrong = 0;
    ck_assert_int_le(search->case_count, LOOKED_CASES);
    memset(waits, 0, sizeof waits);
    for (int32_t i = 0; i < search->heap_count; i++)
        waits[search->heap[i]]++;
    if (search->next >= 0)
        waits[search->next]++;
    for (int32_t i = 0; i < search->case_count; i++) {
        const int is_aside = search->cases[i].least >= search->aside;
        wrong += waits[i] > 1 || (is_open(search, i) && waits[i] == 0 && !is_aside) ||
                 (waits[i] == 1 && search->cases[i].split > 0);
        if (is_open(search, i) && search->cases[i].least < least)
            least = search->cases[i].least;
    }
    ck_assert_int_eq(wrong, 0);
    ck_assert_int_eq(search->told_least, least);
}

/* The room that a strip needs for what lies in it, by the narrower side of each piece that may lie so; without stacks. */
static int64_t room_needed(const struct msl_search *search, const struct msl_strip *strip)
{
    int64_t room = 0;
    for (int32_t i = 0; i < strip->count; i++) {
        const struct msl_laid *laid = &search->pool.laid[strip->first + i];
        const struct msl_piece_size *size = &search->cutting->sizes[laid->size];
        int64_t taken = INT32_MAX;
        if (size->along <= strip->height)
            taken = size->across;
        if (size->turned_along > 0 && size->turned_along <= strip->height && size->turned_across < taken)
            taken = size->turned_across;
        room += size->run_in + laid->count * taken;
    }
    return room;
}

/* Whether a thing of its way can be cut so. */
static int can_be_cut(const struct msl_search *search, const struct msl_pattern *pattern)
{
    const struct msl_way *way = &search->cutting->ways[pattern->way];
    int64_t high = 0;
    for (int32_t s = 0; s < pattern->count; s++) {
        const struct msl_strip *strip = &search->pool.strips[pattern->first + s];
        high += strip->height;
        if (room_needed(search, strip) > way->across)
            return 0;
    }
    return high <= way->along;
}

static uint64_t mixed(uint64_t hash, int64_t value)
{
    return (hash ^ (uint64_t)value) * UINT64_C(0x9E3779B97F4A7C15) + (hash >> 31);
}

/* What a pattern holds, whatever its number. */
static uint64_t held_in(const struct msl_search *search, int32_t column)
{
    const struct msl_pattern *pattern = &search->pool.patterns[column];
    uint64_t hash = mixed(7, pattern->way);
    for (int32_t s = 0; s < pattern->count; s++) {
        const struct msl_strip *strip = &search->pool.strips[pattern->first + s];
        hash = mixed(hash, strip->height);
        for (int32_t i = 0; i < strip->count; i++)
            hash = mixed(mixed(hash, search->pool.laid[strip->first + i].size),
                         search->pool.laid[strip->first + i].count);
    }
    return hash;
}

static uint64_t basis_of(const struct msl_search *search, int32_t number)
{
    const struct msl_open *open = &search->open[number];
    uint64_t hash = 1;
    ck_assert(open->first_basic >= 0 && open->first_basic + open->basic_count <= search->basic_count);
    for (int32_t i = 0; i < open->basic_count; i++) {
        const int32_t basic = search->bases[open->first_basic + i];
        const int is_slack = basic / 2 >= MSL_FIRST_SLACK;
        ck_assert(is_slack || basic / 2 < search->pool.pattern_count);
        hash = mixed(hash, is_slack ? basic : basic % 2);
        hash = is_slack ? hash : mixed(hash, (int64_t)held_in(search, basic / 2));
    }
    return hash;
}

/* Plans get cheaper, and bounds only rise. */
static void ck_gained(struct looked *looked, int64_t best)
{
    const struct msl_search *search = &looked->workshop->whole;
    int32_t fallen = 0;
    for (int32_t i = 0; i < search->case_count; i++) {
        fallen += search->cases[i].least < looked->proved[i];
        looked->proved[i] = search->cases[i].least;
    }
    ck_assert(fallen == 0 && (looked->times == 0 || best <= looked->best));
    looked->best = best;
}

/* All patterns can be cut, and a case that waits begins from the basis that it had, wherever its patterns moved. */
static void ck_patterns(struct looked *looked)
{
    const struct msl_search *search = &looked->workshop->whole;
    int32_t wrong = 0;
    for (int32_t i = 0; i < search->pool.pattern_count; i++)
        wrong += !can_be_cut(search, &search->pool.patterns[i]);
    for (int32_t i = 0; i < search->case_count; i++)
        if (is_open(search, i)) {
            const uint64_t basis = basis_of(search, i);
            wrong += looked->bases[i] != 0 && looked->bases[i] != basis;
            looked->bases[i] = basis;
        }
    ck_assert_int_eq(wrong, 0);
}

/* The best plan has all pieces, within the stock, and costs what is told. */
static void ck_best(const struct msl_search *search, int64_t told)
{
    const struct msl_plan *best = &search->making.best;
    int64_t left[TINY_SIZES];
    int64_t cost = 0;
    int32_t missing = 0;
    if (best->count == 0)
        return;
    for (int32_t i = 0; i < search->cutting->size_count; i++)
        left[i] = search->cutting->sizes[i].count;
    for (int32_t row = 0; row < best->count; row++) {
        const struct msl_pattern *pattern = &search->pool.patterns[best->rows[row].pattern];
        cost += best->rows[row].times * search->cutting->ways[pattern->way].cost;
        for (int32_t s = 0; s < pattern->count; s++) {
            const struct msl_strip *strip = &search->pool.strips[pattern->first + s];
            for (int32_t i = 0; i < strip->count; i++)
                left[search->pool.laid[strip->first + i].size] -=
                    best->rows[row].times * search->pool.laid[strip->first + i].count;
        }
    }
    for (int32_t i = 0; i < search->cutting->size_count; i++)
        missing += left[i] > 0;
    ck_assert(missing == 0 && cost == best->cost && cost == told);
}

static int is_of_same(const struct msl_limit *a, const struct msl_limit *b)
{
    return a->kind == b->kind && a->first_way == b->first_way && a->last_way == b->last_way && a->size == b->size &&
           a->at_least == b->at_least;
}

/* Rows of the master, for the case just solved: what is wanted of each size and stock, then what its limits ask, each
 * once, as the last of those that ask the same says; no more of them than there may be. */
static void ck_rows(const struct msl_search *search)
{
    const struct msl_master *master = search->master;
    const struct msl_cutting *cutting = search->cutting;
    int32_t rows = cutting->size_count;
    int32_t wrong = 0;
    for (int32_t i = 0; i < rows; i++)
        wrong += master->limits[i].kind != MSL_LIMIT_SIZE || master->limits[i].size != i ||
                 master->limits[i].wanted != cutting->sizes[i].count || !master->limits[i].at_least;
    for (int32_t i = 0; i < cutting->stock_count; i++)
        if (cutting->available[i] < INT64_MAX) {
            const struct msl_limit *limit = &master->limits[rows++];
            wrong += limit->kind != MSL_LIMIT_STOCK || limit->first_way != i ||
                     limit->wanted != cutting->available[i] || limit->at_least;
        }
    for (int32_t i = 0; i < search->chain_count; i++) {
        const struct msl_limit *limit = &search->cases[search->chain[search->chain_count - 1 - i]].limit;
        int is_last = 1;
        int is_first = 1;
        for (int32_t k = 0; k < search->chain_count; k++) {
            const struct msl_limit *other = &search->cases[search->chain[search->chain_count - 1 - k]].limit;
            is_last &= k <= i || !is_of_same(limit, other);
            is_first &= k >= i || !is_of_same(limit, other);
        }
        rows += is_first;
        wrong += (search->row_of[i] >= 0) != is_last;
        if (is_last)
            wrong += !is_of_same(limit, &master->limits[search->row_of[i]]) ||
                     master->limits[search->row_of[i]].wanted != limit->wanted;
    }
    ck_assert_int_eq(wrong, 0);
    ck_assert_int_eq(master->row_count, rows);
    ck_assert(rows <= search->most_rows && search->chain_count <= search->most_depth);
}

/* Parts of the case just solved begin from the basis that it ended with: of each row a pattern, or the slack of a row. */
static void ck_basis_kept(const struct msl_search *search)
{
    const struct msl_master *master = search->master;
    const struct msl_case *solved = &search->cases[search->chain_count == 0 ? 0 : search->chain[0]];
    int32_t wrong = 0;
    if (solved->split == 0)
        return;
    for (int32_t part = solved->split; part < solved->split + 2; part++) {
        const struct msl_open *open = &search->open[part];
        wrong += open->basic_count != master->row_count;
        for (int32_t i = 0; i < open->basic_count; i++) {
            const int32_t column = master->basis[i].column;
            const uint16_t kept = search->bases[open->first_basic + i];
            wrong += kept / 2 != (column < 0 ? MSL_FIRST_SLACK - 1 - column : column) ||
                     kept % 2 != master->basis[i].against;
        }
    }
    ck_assert_int_eq(wrong, 0);
}

/* Parts are one deeper than what they are parts of and begin with its bound or a higher one; the first has no more of
 * what it is split on, the second more. */
static void ck_parts(const struct msl_search *search)
{
    int32_t wrong = search->open[0].depth != 0 || search->cases[0].parent != -1;
    for (int32_t i = 0; i < search->case_count; i++) {
        const struct msl_case *of = &search->cases[i];
        if (of->split == 0)
            continue;
        for (int32_t part = of->split; part < of->split + 2; part++)
            wrong += search->cases[part].parent != i || search->cases[part].least < of->least ||
                     search->open[part].depth != search->open[i].depth + 1 ||
                     search->cases[part].limit.at_least != part - of->split;
        wrong += of->split + 1 >= search->case_count ||
                 search->cases[of->split].limit.wanted + 1 != search->cases[of->split + 1].limit.wanted;
    }
    ck_assert_int_eq(wrong, 0);
}

/* Nothing takes more room than there is, however little that is. */
static void ck_room(const struct msl_search *search)
{
    const struct msl_pool *pool = &search->pool;
    ck_assert(search->case_count <= search->most_cases && search->heap_count <= search->most_cases &&
              search->basic_count <= search->most_basics && search->worth_count <= search->most_worths);
    ck_assert(pool->pattern_count <= pool->most_patterns && pool->strip_count <= pool->most_strips &&
              pool->laid_count <= pool->most_laid);
}

/* Steps are only ever added. */
static void ck_steps(struct looked *looked, int64_t work)
{
    const struct msl_workshop *workshop = looked->workshop;
    const int64_t steps[] = { workshop->master.steps, workshop->pricing.sack.steps, workshop->packing.steps };
    ck_assert_int_eq(work, steps[0] + steps[1] + steps[2]);
    for (int32_t i = 0; i < 3; i++) {
        ck_assert_int_ge(steps[i], looked->steps[i]);
        looked->steps[i] = steps[i];
    }
}

static int32_t look_into(void *context, int64_t work, int64_t best, int64_t least)
{
    struct looked *looked = context;
    const struct msl_search *whole = &looked->workshop->whole;
    ck_steps(looked, work);
    ck_assert_int_eq(not_in_order(whole), 0);
    ck_assert_int_eq(whole->told_least, least);
    ck_best(whole, best);
    ck_gained(looked, best);
    if (looked->times++ % LOOKED_EVERY == 0)
        ck_patterns(looked);
    ck_parts(whole);
    ck_room(whole);
    if (whole->watch->every == 0)
        ck_waiting(whole);
    if (whole->watch->every == 0 && looked->solved < whole->solved) { /* no repair was made since */
        looked->solved = whole->solved;
        ck_rows(whole);
        ck_basis_kept(whole);
    }
    return 0;
}

static void look_through(const struct tiny *t, int32_t room, int32_t most, int64_t every)
{
    static struct looked looked;
    struct muslin_allocator memory;
    struct msl_watch watch = { look_into, &looked, 3000000, every };
    struct msl_found found;
    muslin_allocator_libc(&memory);
    memset(&looked, 0, sizeof looked);
    looked.workshop = msl_workshop_open(&t->cutting, &watch, &memory);
    ck_assert_ptr_nonnull(looked.workshop);
    *room_of(looked.workshop, room) = most;
    msl_workshop_search(looked.workshop);
    if (looked.workshop->repair.tries > 0)
        ck_assert_int_eq(not_in_order(&looked.workshop->repair.part), 0);
    if (msl_hand_out(looked.workshop, &found) == MUSLIN_OK) {
        ck_plan(&t->cutting, &found);
        tiny_free(&found);
    }
}

/* Whatever is short of room, between two cases the search is in order. */
START_TEST(between_cases_all_is_in_order)
{
    static const struct {
        int32_t room;
        int32_t most;
    } shorts[] = { { CASES, LOOKED_CASES }, { CASES, 40 },  { PATTERNS, 300 }, { LAID, 900 },
                   { BASICS, 900 },         { LIMITS, 16 }, { DEPTH, 4 },      { WORTHS, 150 } };
    struct tiny t;
    for (size_t i = 0; i < sizeof shorts / sizeof shorts[0]; i++) {
        throw_of_eight(&t);
        look_through(&t, shorts[i].room, shorts[i].most, 0);
        throw_from_stock(&t);
        look_through(&t, shorts[i].room, shorts[i].most, 0);
        five_strips_all_but_hold(&t);
        look_through(&t, shorts[i].room, shorts[i].most, 0);
        for (uint64_t seed = 1; seed < 20; seed++) {
            uint64_t chance = seed;
            chance_sizes(&t, &chance, 9);
            tiny_bolt(&t, 10 + tiny_chance(&chance, 12));
            look_through(&t, shorts[i].room, shorts[i].most, 0);
        }
    }
    throw_of_eight(&t);
    look_through(&t, CASES, LOOKED_CASES, 1);
    throw_from_stock(&t);
    look_through(&t, CASES, LOOKED_CASES, 1);
}
END_TEST

/* The first case alone bounds this at 50, and packing proves 60: without room for two more cases that stays open, not
 * because nothing more is known. */
START_TEST(a_search_whose_room_is_full_says_so)
{
    struct tiny t;
    struct muslin_allocator memory;
    struct msl_watch watch = { NULL, NULL, 10000000, 0 };
    struct msl_found found;
    muslin_allocator_libc(&memory);
    five_strips_all_but_hold(&t);
    struct msl_workshop *workshop = msl_workshop_open(&t.cutting, &watch, &memory);
    ck_assert_ptr_nonnull(workshop);
    *room_of(workshop, CASES) = 1;
    msl_workshop_search(workshop);
    ck_ok(msl_hand_out(workshop, &found));
    ck_plan(&t.cutting, &found);
    ck_assert_int_eq(found.cost, 60);
    ck_assert_int_eq(found.least, 50);
    ck_assert_int_eq(found.stopped, MUSLIN_CUTPLAN_STOPPED_MEMORY);
    tiny_free(&found);
}
END_TEST

static int32_t end_at_once_with_a_bound_of_50(void *context, int64_t work, int64_t best, int64_t least)
{
    int32_t *times = context;
    (void)work;
    (void)best;
    *times += least == 50;
    return *times == 100;
}

/* Where no case is left, repairs go on, until progress or the work limit ends them. */
START_TEST(repairs_go_on_and_may_be_ended)
{
    struct tiny t;
    struct muslin_allocator memory;
    int32_t times = 0;
    struct msl_watch watch = { end_at_once_with_a_bound_of_50, &times, 10000000, 0 };
    struct msl_found found;
    muslin_allocator_libc(&memory);
    five_strips_all_but_hold(&t);
    t.cutting.stacked = 1;
    ck_ok(msl_cutplan_search(&t.cutting, &watch, &memory, &found));
    ck_assert_int_eq(found.stopped, 1);
    ck_assert_int_eq(times, 100);
    tiny_free(&found);
}
END_TEST

/* 129 sizes as wide as the bolt: too many to be searched, but no plan is shorter than all of them together. */
START_TEST(many_sizes_may_be_proven)
{
    static struct msl_piece_size sizes[MSL_SIZES_MAX + 1];
    static struct msl_way ways[MSL_SIZES_MAX + 1];
    struct tiny t;
    struct msl_found found;
    tiny_start(&t);
    for (int32_t i = 0; i <= MSL_SIZES_MAX; i++) {
        struct msl_piece_size size = { 320, 200 - i, 0, 0, 0, 1, 0, 0 };
        struct msl_way way = { 200 - i, 320, 200 - i, 0, 0, -1, 0 };
        sizes[i] = size;
        ways[i] = way;
    }
    t.cutting.sizes = sizes;
    t.cutting.ways = ways;
    t.cutting.size_count = t.cutting.way_count = MSL_SIZES_MAX + 1;
    ck_ok(tiny_search(&t, 10000, &found));
    ck_assert_int_eq(found.cost, 129 * (200 + 72) / 2);
    ck_assert_int_eq(found.least, found.cost);
    ck_assert_int_eq(found.stopped, 0);
    tiny_free(&found);
}
END_TEST

/* More sizes than are searched, and more sums than pricing holds at once: stock of any number gives them all. */
START_TEST(many_sizes_from_stock_have_a_plan)
{
    static struct msl_piece_size sizes[200];
    static int64_t heights[200];
    uint64_t chance = 3;
    struct tiny t;
    struct msl_found found;
    int64_t pieces = 0;
    tiny_start(&t);
    for (int32_t i = 0; i < 200; i++) {
        struct msl_piece_size size = { 8000 + tiny_chance(&chance, 60000), 68000 - 300 * i, 0, 0, 0, 1, 0, 0 };
        sizes[i] = size;
        heights[i] = size.along;
    }
    t.cutting.sizes = sizes;
    t.cutting.heights = heights;
    t.cutting.size_count = t.cutting.height_count = 200;
    tiny_stock(&t, 170688, 146304, INT64_MAX, 1);
    ck_ok(tiny_search(&t, 1000000, &found));
    for (int32_t i = 0; i < found.plan.laid_count; i++)
        pieces += found.plan.laid[i].count;
    ck_assert_int_eq(pieces, 200);
    ck_assert_int_lt(found.cost, 50);
    ck_assert_int_eq(found.stopped, MUSLIN_CUTPLAN_STOPPED_SIZES);
    tiny_free(&found);
}
END_TEST

/* A quilt with four borders, in eighths: no bound may pass the best plan known, 1108; slit from panels it takes less
 * than the least that strips right across do, 1399. */
START_TEST(panels_with_much_to_try)
{
    const struct msl_way panels[2] = { { 580, 328, 580, 1, 1, -1, 0 }, { 484, 328, 484, 1, 1, -1, 0 } };
    struct tiny t;
    struct msl_found found;
    tiny_start(&t);
    t.ways[0] = panels[0];
    t.ways[1] = panels[1];
    t.cutting.way_count = 2;
    tiny_size(&t, 76, 76, 4, 0);
    tiny_size(&t, 44, 44, 60, 0);
    tiny_size(&t, 43, 43, 45, 0);
    tiny_size(&t, 40, 28, 15, 1);
    tiny_size(&t, 40, 16, 15, 1);
    tiny_size(&t, 31, 31, 15, 0);
    tiny_size(&t, 28, 28, 8, 0);
    tiny_bolt(&t, 328);
    tiny_size(&t, 36, 580, 2, 0)->slit = 1;
    tiny_size(&t, 36, 484, 2, 0)->slit = 1;
    ck_ok(tiny_search(&t, 30000000, &found));
    ck_assert_int_le(found.cost, 1399);
    ck_assert_int_le(found.least, 1108);
    ck_assert_int_eq(found.stopped, 2);
    tiny_free(&found);
}
END_TEST

Suite *cutplan_search_long_suite(void)
{
    Suite *suite = suite_create("cutplan_search_long");
    TCase *tcase = tcase_create("search");
    tcase_set_timeout(tcase, 60);
    tcase_add_loop_test(tcase, little_room_gives_less_but_nothing_wrong, 0, ROOMS);
    suite_add_tcase(suite, tcase);
    return suite;
}

Suite *cutplan_search_suite(void)
{
    Suite *suite = suite_create("cutplan_search");
    TCase *tcase = tcase_create("chance");
    tcase_set_timeout(tcase, 60);
    tcase_add_loop_test(tcase, bolts_by_chance, 0, 200);
    tcase_add_loop_test(tcase, bolts_with_rules, 0, 200);
    tcase_add_loop_test(tcase, bolts_with_little_work, 0, 100);
    tcase_add_test(tcase, stock_by_chance);
    suite_add_tcase(suite, tcase);
    tcase = tcase_create("hand");
    tcase_set_timeout(tcase, 60);
    tcase_add_test(tcase, three_squares_take_60_inches);
    tcase_add_test(tcase, every_allocation_may_fail);
    tcase_add_test(tcase, a_search_takes_16_mebibytes_at_most);
    tcase_add_test(tcase, progress_is_told_and_may_end_it);
    tcase_add_test(tcase, without_work_there_is_a_plan_and_a_plain_bound);
    tcase_add_test(tcase, many_sizes_have_a_plan_and_a_plain_bound);
    tcase_add_test(tcase, many_ways_and_much_stock_as_well);
    tcase_add_test(tcase, what_can_not_be_packed_is_proved_by_packing);
    tcase_add_test(tcase, stacks_leave_that_open);
    tcase_add_test(tcase, squares_beside_borders);
    tcase_add_test(tcase, large_numbers_stay_in_range);
    tcase_add_test(tcase, long_strips_stay_in_range);
    tcase_add_test(tcase, stock_that_is_too_little);
    tcase_add_test(tcase, between_cases_all_is_in_order);
    tcase_add_test(tcase, a_search_whose_room_is_full_says_so);
    tcase_add_test(tcase, repairs_go_on_and_may_be_ended);
    tcase_add_test(tcase, many_sizes_may_be_proven);
    tcase_add_test(tcase, many_sizes_from_stock_have_a_plan);
    tcase_add_test(tcase, panels_with_much_to_try);
    suite_add_tcase(suite, tcase);
    return suite;
}
