/* test_cutplan_split.c - on what a case is split, what splits are remembered for, and what is packed.
 *
 * SPDX-License-Identifier: MIT */
#include "test_cutplan_brute.h"

#include "cutplan_split.h"

enum { ONE = 1 << MSL_PART_BITS };

static struct brute brute;
static struct tiny t;

/* Levels with room beside them, where a whole one and a half lies. */
static int64_t way_levels[TINY_WAYS + 2];
static int64_t copies_levels[TINY_WAYS + 2];

/* So many 2048ths, as a level. */
static int64_t level_of(const struct msl_workshop *workshop, int64_t parts)
{
    return parts << (workshop->master.point - 11);
}

/* Two sizes, and ways at 10 and 4, or other costs; all is whole. */
static struct msl_workshop *two_ways(int64_t dear, int64_t cheap)
{
    static const struct msl_watch watch = { NULL, NULL, 0, 0 };
    tiny_start(&t);
    tiny_size(&t, 5, 10, 3, 0);
    tiny_size(&t, 3, 4, 7, 0);
    tiny_bolt(&t, 20);
    t.ways[0].cost = dear;
    t.ways[1].cost = cheap;
    t.ways[2].cost = 3; /* not of this cutting */
    struct msl_workshop *workshop = tiny_open(&t, &watch);
    struct msl_search *search = &workshop->whole;
    memset(search->gains, 0, 4 * sizeof search->gains[0]);
    search->way_level = way_levels + 1;
    search->copies_level = copies_levels + 1;
    way_levels[0] = way_levels[3] = copies_levels[0] = copies_levels[5] = level_of(workshop, 3 << 10);
    for (int32_t i = 0; i < 2; i++)
        search->way_level[i] = search->copies_level[i] = search->copies_level[2 + i] = level_of(workshop, 3 << 11);
    return workshop;
}

/* ---- levels ------------------------------------------------------------------------------------------------------ */

/* Levels of two rows, which the third one's is not; what comes of them, in 2048ths of a way or of a size in one. */
static void ck_levels(struct msl_workshop *workshop, struct msl_basic one, struct msl_basic other,
                      const double *expected)
{
    struct msl_search *search = &workshop->whole;
    struct msl_master *master = &workshop->master;
    master->basis[0] = one;
    master->basis[1] = other;
    ck_assert(msl_master_load(master));
    master->basis[2] = master->basis[3] = other;
    master->level[2] = level_of(workshop, 1 << 11);
    msl_levels_find(search);
    const int64_t found[6] = { search->way_level[0], search->way_level[1], search->copies_level[0],
                               search->copies_level[1], search->copies_level[2], search->copies_level[3] };
    for (int32_t i = 0; i < 6; i++) {
        const double off = (double)found[i] / (double)((int64_t)1 << master->point) - expected[i];
        ck_assert(off < 1e-9 && off > -1e-9);
    }
    int64_t ways = 0; /* and to the last digit what the master says */
    for (int32_t row = 0; row < 2; row++)
        if (master->basis[row].column >= 0 && !master->basis[row].against)
            ways += master->level[row];
    ck_assert_int_eq(found[0] + found[1], ways);
    for (int32_t i = 0; i < 6; i++)
        ck_assert(expected[i] > 0 || found[i] == 0);
    ck_assert(way_levels[0] == way_levels[3] && copies_levels[0] == copies_levels[5]);
    ck_assert(way_levels[0] == copies_levels[0] && way_levels[0] == level_of(workshop, 3 << 10));
}

/* 3 of the first size and 7 of the other are wanted. */
START_TEST(levels_add_up_by_way_and_size)
{
    struct msl_workshop *workshop = two_ways(10, 4);
    struct msl_search *search = &workshop->whole;
    struct msl_master *master = &workshop->master;
    const int32_t both[2] = { 0, 1 };
    const int32_t second_counts[2] = { 0, 5 };
    const int32_t third_counts[2] = { 6, 1 };
    const struct msl_laid two = { 0, 2, 0, 0 };
    const struct msl_laid three = { 1, 3, 0, 0 };
    const struct msl_basic slack = { -1, 0 };
    const struct msl_basic against = { -1, 1 };
    msl_cases_begin(search);
    /* two of the one size in a strip, three of the other in another one */
    ck_assert(msl_pool_begin(&search->pool, 0));
    ck_assert(msl_pool_strip(&search->pool, 5) && msl_pool_lay(&search->pool, two));
    ck_assert(msl_pool_strip(&search->pool, 5) && msl_pool_lay(&search->pool, three));
    const struct msl_basic first = { search->pool.pattern_count - 1, 0 };
    const struct msl_basic second = { msl_pool_add(&search->pool, 1, 4, both, second_counts, 2), 0 };
    const struct msl_basic third = { msl_pool_add(&search->pool, 0, 10, both, third_counts, 2), 0 };
    /* 3 / 2 of the first pattern has 9 / 2 of the other size; 1 / 2 of the second the rest */
    const double halves[6] = { 1.5, 0.5, 3, 4.5, 0, 2.5 };
    ck_levels(workshop, first, second, halves);
    /* the first size must not be wanted */
    const double of_second[6] = { 0, 1.4, 0, 0, 0, 7 };
    ck_levels(workshop, against, second, of_second);
    /* 7 of the third pattern: 39 too many of the first size */
    const double of_third[6] = { 7, 0, 42, 7, 0, 0 };
    ck_levels(workshop, slack, third, of_third);
    /* with 3 of the other size wanted the second pattern would be less than nothing: it is against */
    master->limits[1].wanted = 3;
    const double of_first[6] = { 1.5, 0, 3, 4.5, 0, 0 };
    ck_levels(workshop, first, second, of_first);
    msl_workshop_close(workshop);
}
END_TEST

/* ---- what is not whole ------------------------------------------------------------------------------------------- */

/* The split chosen where there are so many 2048ths of the ways. */
static int chosen(struct msl_workshop *workshop, int64_t first, int64_t second, struct msl_split *split)
{
    workshop->whole.way_level[0] = level_of(workshop, first);
    workshop->whole.way_level[1] = level_of(workshop, second);
    return msl_split_choose(&workshop->whole, split);
}

static void ck_on_ways(const struct msl_split *split, int32_t last_way, int64_t wanted, int64_t part)
{
    ck_assert_int_eq(split->limit.kind, MSL_LIMIT_WAYS);
    ck_assert_int_eq(split->limit.first_way, 0);
    ck_assert_int_eq(split->limit.last_way, last_way);
    ck_assert_int_eq(split->limit.wanted, wanted);
    ck_assert_int_eq(split->limit.at_least, 0);
    ck_assert_int_eq(split->upper, part >= 1024);
    /* whole within a 2048th, which is added before */
    ck_assert_int_eq(split->part, (part + 1) * (ONE >> 11));
}

START_TEST(near_one_half_is_split_first)
{
    struct msl_workshop *workshop = two_ways(8, 4); /* steps of 4 and 4 */
    struct msl_split split;
    ck_assert(!chosen(workshop, 0, 0, &split));
    ck_assert(!chosen(workshop, 3 << 11, 5 << 11, &split));
    ck_assert(chosen(workshop, (3 << 11) + 1024, 0, &split)); /* both alike: the first */
    ck_on_ways(&split, 0, 3, 1024);
    ck_assert(chosen(workshop, (3 << 11) + 600, 300, &split)); /* 600 and 900 */
    ck_on_ways(&split, 1, 3, 900);
    ck_assert(chosen(workshop, (3 << 11) + 600, (1 << 11) + 1200, &split)); /* 600 and 1800 */
    ck_on_ways(&split, 0, 3, 600);
    ck_assert(chosen(workshop, 3 << 11, (5 << 11) + 1500, &split));
    ck_on_ways(&split, 1, 8, 1500);
    /* whole within a hair, on both sides; two hairs off it is not */
    ck_assert(chosen(workshop, (3 << 11) - 2, 2, &split));
    ck_on_ways(&split, 0, 2, 2046);
    ck_assert(chosen(workshop, (3 << 11) + 1, (1 << 11) - 1, &split));
    ck_on_ways(&split, 0, 3, 1);
    ck_assert(!chosen(workshop, (3 << 11) - 1, 1, &split));
    workshop->whole.way_level[0] = level_of(workshop, (3 << 11) + 1) - 1;
    workshop->whole.way_level[1] = 0;
    ck_assert(!msl_split_choose(&workshop->whole, &split));
    msl_workshop_close(workshop);
}
END_TEST

START_TEST(where_the_next_way_is_cheaper_is_split_first)
{
    struct msl_split split;
    struct msl_workshop *workshop = two_ways(10, 4); /* 6 and 4: 36 x 600 x 1448 and 16 x 1000 x 1048 */
    ck_assert(chosen(workshop, 600, 400, &split));
    ck_on_ways(&split, 0, 0, 600);
    msl_workshop_close(workshop);
    workshop = two_ways(6, 4); /* 2 and 4: 4 x 1000 x 1048 and 16 x 600 x 1448 */
    ck_assert(chosen(workshop, 1000, (1 << 11) - 400, &split));
    ck_on_ways(&split, 1, 1, 600);
    msl_workshop_close(workshop);
    workshop = two_ways(4, 4); /* as dear: that counts as a step of 1; 900 x 1148 and 16 x 30 x 2018 */
    ck_assert(chosen(workshop, 900, (1 << 11) - 870, &split));
    ck_on_ways(&split, 0, 0, 900);
    ck_assert(chosen(workshop, 900, (1 << 11) - 800, &split)); /* 16 x 100 x 1948 */
    ck_on_ways(&split, 1, 1, 100);
    msl_workshop_close(workshop);
    workshop = two_ways((int64_t)10 << 50, (int64_t)4 << 50); /* the same as 10 and 4 */
    ck_assert(chosen(workshop, 600, 400, &split));
    ck_on_ways(&split, 0, 0, 600);
    ck_assert(chosen(workshop, 30, 994, &split)); /* 36 x 30 x 2018 and 16 x 1024 x 1024 */
    ck_on_ways(&split, 1, 0, 1024);
    msl_workshop_close(workshop);
}
END_TEST

/* Four splits are taken to have proved a step each. Way 0 is at one half, and way 1, too. */
START_TEST(what_proved_much_is_split_first)
{
    static const struct {
        int64_t sum, count;
        int32_t gain, last_way;
    } rows[] = {
        { 9 << 10, 1, 2, 1 }, { 9 << 10, 1, 3, 1 }, { 9 << 10, 1, 0, 0 }, /* 13 of 5 */
        { 0, 1, 0, 1 }, { 0, 4, 1, 1 }, { 0, 4, 2, 0 }, { 0, 4, 3, 0 }, /* 4 of 8 */
        { 5 << 10, 4, 3, 1 }, { 3 << 10, 4, 3, 0 }, { 4 << 10, 4, 3, 0 }, /* 9 of 8, 7 of 8, and one each as before */
    };
    struct msl_workshop *workshop = two_ways(8, 4);
    struct msl_search *search = &workshop->whole;
    struct msl_split split;
    for (size_t i = 0; i < sizeof rows / sizeof rows[0]; i++) {
        memset(search->gains, 0, 4 * sizeof search->gains[0]);
        search->gains[rows[i].gain].sum = rows[i].sum;
        search->gains[rows[i].gain].count = rows[i].count;
        ck_assert(chosen(workshop, 1024, 0, &split));
        ck_on_ways(&split, rows[i].last_way, 0, 1024);
    }
    /* where one part never proved anything it is split on all the same */
    search->gains[0].count = search->gains[3].count = (int64_t)1 << 40;
    ck_assert(chosen(workshop, 1024, 1024, &split));
    ck_on_ways(&split, 0, 0, 1024);
    msl_workshop_close(workshop);
}
END_TEST

/* Pieces of the dearest way in which some are not whole, those nearest to one half. */
START_TEST(pieces_are_split_after_that)
{
    static const struct {
        int64_t levels[4];
        int32_t way, size, upper;
        int64_t wanted;
    } rows[] = {
        { { (1 << 11) + 400, (2 << 11) + 1200, 1024, 0 }, 0, 1, 1, 2 },
        { { (1 << 11) + 900, (2 << 11) + 1200, 1024, 0 }, 0, 0, 0, 1 },
        { { (1 << 11) + 847, (2 << 11) + 1198, 1024, 0 }, 0, 1, 1, 2 },
        { { (1 << 11) + 848, (2 << 11) + 1198, 1024, 0 }, 0, 0, 0, 1 }, /* as near: the first */
        { { (1 << 11) + 30, (2 << 11) + 2000, 1024, 0 }, 0, 1, 1, 2 }, /* 31 and 47 off */
        { { (1 << 11), (2 << 11), 1024, 300 }, 1, 0, 1, 0 },
        { { (1 << 11) - 1, (2 << 11), 0, (6 << 11) + 300 }, 1, 1, 0, 6 },
    };
    struct msl_workshop *workshop = two_ways(10, 4);
    struct msl_split split;
    for (size_t i = 0; i < sizeof rows / sizeof rows[0]; i++) {
        for (int32_t k = 0; k < 4; k++)
            workshop->whole.copies_level[k] = level_of(workshop, rows[i].levels[k]);
        ck_assert(msl_split_choose(&workshop->whole, &split));
        ck_assert_int_eq(split.limit.kind, MSL_LIMIT_COPIES);
        ck_assert_int_eq(split.limit.first_way, rows[i].way);
        ck_assert_int_eq(split.limit.last_way, rows[i].way);
        ck_assert_int_eq(split.limit.size, rows[i].size);
        ck_assert_int_eq(split.limit.wanted, rows[i].wanted);
        ck_assert_int_eq(split.limit.at_least, 0);
        ck_assert_int_eq(split.upper, rows[i].upper);
        ck_assert_int_eq(split.part, 0);
    }
    msl_workshop_close(workshop);
}
END_TEST

/* ---- what is remembered ------------------------------------------------------------------------------------------ */

/* What a part of a split says: on ways down to the last, or to the first, from so many 16ths on. */
struct learnt {
    int32_t kind, last_way, at_least, part;
};

/* What is remembered of it, where the whole was worth 100, this case is worth `worth`, and the best plan costs `best`,
 * all of that and the ways so many times as dear. */
static struct msl_gain learnt(struct learnt of, int64_t worth, int64_t best, int64_t times)
{
    struct msl_workshop *workshop = two_ways(10 * times, 4 * times);
    struct msl_search *search = &workshop->whole;
    struct msl_master *master = &workshop->master;
    const struct msl_case whole = { .parent = -1 };
    const struct msl_case made = { .limit = { .kind = of.kind, .last_way = of.last_way, .at_least = of.at_least } };
    search->cases[0] = whole;
    search->cases[1] = made;
    master->bits = 4;
    search->open[0].part = of.part * (ONE / 16);
    search->open[0].value = 100 * times << 4;
    search->making.best.cost = best * times;
    master->row_count = 1;
    master->limits[0].wanted = 2;
    master->worth[0] = worth * times << 3;
    msl_split_learn(search, 1);
    ck_assert_int_eq(search->open[1].value, (worth < best ? worth : best) * times << 4);
    const int32_t own = 2 * of.last_way + of.at_least;
    const struct msl_gain gain = search->gains[own];
    for (int32_t i = 0; i < 4; i++)
        ck_assert(i == own || search->gains[i].count == 0);
    msl_workshop_close(workshop);
    return gain;
}

static void ck_gain(struct msl_gain gain, int64_t sum, int64_t count)
{
    ck_assert_int_eq(gain.sum, sum);
    ck_assert_int_eq(gain.count, count);
}

/* A step is 6 from the first way to the next, 4 from that to none. */
START_TEST(splits_are_remembered_by_what_they_proved)
{
    const struct learnt lower = { MSL_LIMIT_WAYS, 1, 0, 8 };
    const struct learnt quarter = { MSL_LIMIT_WAYS, 1, 0, 4 };
    const struct learnt upper = { MSL_LIMIT_WAYS, 1, 1, 12 };
    const struct learnt first = { MSL_LIMIT_WAYS, 0, 0, 8 };
    const struct learnt first_upper = { MSL_LIMIT_WAYS, 0, 1, 8 };
    const struct learnt whole = { MSL_LIMIT_WAYS, 1, 0, 0 };
    const struct learnt copies = { MSL_LIMIT_COPIES, 1, 0, 8 };
    ck_gain(learnt(lower, 103, 1000, 1), 3 * 1024 * 2 / 4, 1);
    ck_gain(learnt(quarter, 103, 1000, 1), 3 * 1024 * 4 / 4, 1);
    ck_gain(learnt(upper, 106, 1000, 1), 6 * 1024 * 4 / 4, 1); /* the other part: 4 of 16 away */
    ck_gain(learnt(first, 103, 1000, 1), 3 * 1024 * 2 / 6, 1);
    ck_gain(learnt(first_upper, 109, 1000, 1), 9 * 1024 * 2 / 6, 1);
    ck_gain(learnt(lower, 110, 101, 1), 1024 * 2 / 4, 1); /* no more than the best plan costs */
    ck_gain(learnt(lower, 100, 1000, 1), 0, 1);
    ck_gain(learnt(first_upper, 97, 1000, 1), 0, 1);
    ck_gain(learnt(first_upper, 1000000, 2000000, 1), 1 << 20, 1); /* the most that one counts */
    ck_gain(learnt(whole, 103, 1000, 1), 0, 0);
    ck_gain(learnt(copies, 103, 1000, 1), 0, 0);
    /* a step is reckoned with 17 digits, down, and a gain so with a hair more */
    ck_gain(learnt(lower, 103, 1000, 1 << 20), 3 * 1024 * 2 / 4, 1);
    ck_gain(learnt(first, 103, 1000, 1 << 20), 3 * 1024 * 2 / 6, 1);
}
END_TEST

/* ---- all is whole ------------------------------------------------------------------------------------------------ */

/* How many strips of each way, and of each size in them, by chance: of each size as many as are wanted, or one less. */
struct numbers {
    int64_t strips[TINY_WAYS];
    int64_t pieces[TINY_WAYS][TINY_SIZES];
    int32_t state[TINY_WAYS];
};

static void draw_numbers(struct numbers *n, uint64_t *seed)
{
    memset(n, 0, sizeof *n);
    for (int32_t way = 0; way < t.cutting.way_count; way++)
        n->strips[way] = tiny_chance(seed, 4);
    for (int32_t size = 0; size < t.cutting.size_count; size++)
        for (int64_t left = t.sizes[size].count - (tiny_chance(seed, 4) == 0); left > 0; left--) {
            int32_t way = (int32_t)tiny_chance(seed, t.cutting.way_count);
            while (n->strips[way] == 0 || msl_taken_in(&t.sizes[size], t.ways[way].along, NULL) == 0) {
                n->strips[way]++;
                way = (way + 1) % t.cutting.way_count;
            }
            n->pieces[way][size]++;
        }
    for (int32_t way = 0; way < t.cutting.way_count; way++)
        for (int32_t size = t.cutting.size_count - 1; size >= 0; size--)
            n->state[way] = n->state[way] * brute.base[size] + (int32_t)n->pieces[way][size];
}

/* Levels of them, each off by less than a hair. The master has no pattern in its basis but half of one without pieces,
 * of each way, so that all is to be packed. */
static void set_numbers(struct msl_workshop *workshop, const struct numbers *n, uint64_t *seed)
{
    struct msl_search *search = &workshop->whole;
    const int32_t sizes = t.cutting.size_count;
    const int64_t hair = level_of(workshop, 1);
    search->way_level = way_levels + 1;
    search->copies_level = copies_levels + 1;
    way_levels[0] = copies_levels[0] = level_of(workshop, 3 << 10);
    msl_cases_begin(search);
    for (int32_t size = 0; size < sizes; size++)
        workshop->master.worth[size] = 100;
    for (int32_t way = 0; way < t.cutting.way_count; way++) {
        const struct msl_limit ways = { .wanted = 1000, .kind = MSL_LIMIT_WAYS, .last_way = way };
        const struct msl_basic empty = { search->pool.pattern_count - t.cutting.way_count + way, 0 };
        const int32_t row = workshop->master.row_count++;
        workshop->master.limits[row] = ways;
        workshop->master.basis[row] = empty;
        workshop->master.level[row] = level_of(workshop, 1024);
        search->way_level[way] = level_of(workshop, n->strips[way] << 11) + tiny_chance(seed, hair) - hair / 2;
        for (int32_t size = 0; size < sizes; size++)
            search->copies_level[way * sizes + size] =
                level_of(workshop, n->pieces[way][size] << 11) + tiny_chance(seed, hair) - hair / 2;
    }
}

/* 1 where the rows from `first` on ask for this. */
static int asks(const struct msl_master *master, int32_t first, struct msl_limit limit)
{
    int32_t count = 0;
    for (int32_t row = first; row < master->row_count; row++)
        count += memcmp(&master->limits[row], &limit, sizeof limit) == 0;
    ck_assert_int_le(count, 1);
    return count;
}

/* Splits until there are no more, always into the part that is looked at first. Returns how many. Of no plan that is
 * not kept a pattern stays. */
static int32_t split_on(struct msl_workshop *workshop, struct msl_case *solved)
{
    struct msl_master *master = &workshop->master;
    struct msl_split split;
    int32_t count = 0;
    const int32_t patterns = workshop->whole.pool.pattern_count;
    const struct msl_search *search = &workshop->whole;
    for (; msl_split_pack(&workshop->whole, solved, &split); count++) {
        struct msl_limit limit = split.limit;
        ck_assert(search->making.best.count > 0 || search->pool.pattern_count == patterns);
        ck_assert_int_eq(solved->packed, 0);
        ck_assert_int_eq(split.part, 0);
        ck_assert_int_lt(count, 200);
        limit.at_least = split.upper;
        limit.wanted += split.upper;
        const struct msl_basic slack = { -1 - master->row_count, 0 };
        master->basis[master->row_count] = slack;
        master->limits[master->row_count++] = limit;
    }
    ck_assert(search->making.best.count > 0 || search->pool.pattern_count == patterns);
    return count;
}

/* What a way's numbers ask for; `proof`: only at most so many strips, at least so many pieces. Returns how many rows.
 * */
static int32_t ck_asked(const struct msl_master *master, int32_t first, const struct numbers *n, int32_t way, int proof)
{
    struct msl_limit limit = { .wanted = n->strips[way], .kind = MSL_LIMIT_WAYS, .first_way = way, .last_way = way };
    int32_t rows = 1;
    ck_assert(asks(master, first, limit));
    limit.at_least = 1;
    ck_assert_int_eq(asks(master, first, limit), !proof && limit.wanted > 0);
    rows += !proof && limit.wanted > 0;
    limit.kind = MSL_LIMIT_COPIES;
    for (limit.size = 0; limit.size < t.cutting.size_count; limit.size++) {
        limit.wanted = n->pieces[way][limit.size];
        limit.at_least = 1;
        ck_assert_int_eq(asks(master, first, limit), limit.wanted > 0);
        rows += limit.wanted > 0;
        limit.at_least = 0;
        ck_assert_int_eq(asks(master, first, limit), !proof);
        rows += !proof;
    }
    return rows;
}

/* Packs numbers by chance. Returns 1 + the first way whose pieces do not fit into its strips, by all ways of laying. */
static int32_t pack_by_chance(uint64_t *seed)
{
    static const struct msl_watch watch = { NULL, NULL, 0, 0 };
    static struct numbers n;
    struct msl_case solved = { 0 };
    int64_t cost = 0;
    int64_t missing = 0;
    int32_t unfit = 0;
    int32_t rows = 0;
    draw_numbers(&n, seed);
    struct msl_workshop *workshop = tiny_open(&t, &watch);
    set_numbers(workshop, &n, seed);
    const int32_t first = workshop->master.row_count;
    for (int32_t way = 0; way < t.cutting.way_count; way++) {
        cost += n.strips[way] * t.ways[way].cost;
        if (unfit == 0 && brute_strips(&brute, way, n.state[way]) > n.strips[way])
            unfit = 1 + way;
    }
    for (int32_t size = 0; size < t.cutting.size_count; size++) {
        missing += t.sizes[size].count;
        for (int32_t way = 0; way < t.cutting.way_count; way++)
            missing -= n.pieces[way][size];
    }
    const int32_t count = split_on(workshop, &solved);
    ck_assert_int_eq(solved.packed, t.cutting.stacked ? 0 : unfit);
    for (int32_t way = 0; way < t.cutting.way_count; way++)
        if (solved.packed == 0 || solved.packed == 1 + way)
            rows += ck_asked(&workshop->master, first, &n, way, solved.packed > 0);
    ck_assert_int_eq(count, rows);
    ck_assert(unfit > 0 || workshop->whole.making.best.count > 0);
    if (workshop->whole.making.best.count > 0 && (!t.cutting.stacked || (unfit == 0 && missing == 0)))
        ck_best_plan(&t, &workshop->whole.making);
    if (unfit == 0 && missing == 0)
        ck_assert_int_le(workshop->whole.making.best.cost, cost);
    msl_workshop_close(workshop);
    return unfit;
}

START_TEST(strips_are_packed_as_all_ways_of_laying_say)
{
    uint64_t seed = 1;
    int32_t fit = 0;
    int32_t unfit = 0;
    for (int round = 0; round < 250; round++) {
        tiny_start(&t);
        t.cutting.stacked = round % 8 == 0;
        for (int64_t left = 2 + tiny_chance(&seed, 5); left > 0 && t.cutting.size_count < 3;) {
            const int64_t count = 1 + tiny_chance(&seed, left);
            const int64_t across = 2 + tiny_chance(&seed, 8);
            const int64_t along = 2 + tiny_chance(&seed, 3);
            tiny_size(&t, across, along, count, tiny_chance(&seed, 4) == 0);
            left -= count;
        }
        tiny_bolt(&t, 10 + tiny_chance(&seed, 6));
        brute_start(&brute, &t.cutting);
        for (int again = 0; again < 4; again++) {
            const int found = pack_by_chance(&seed);
            fit += found == 0;
            unfit += found > 0;
        }
    }
    ck_assert_int_gt(fit, 200);
    ck_assert_int_gt(unfit, 100);
}
END_TEST

/* Numbers of the only way, in which each size lies as high; the master has half of a pattern in its basis. */
static struct msl_workshop *one_way(int64_t across, const int64_t (*sizes)[2], int32_t count, int64_t strips)
{
    static const struct msl_watch watch = { NULL, NULL, 0, 0 };
    static struct numbers n;
    uint64_t seed = 1;
    tiny_start(&t);
    memset(&n, 0, sizeof n);
    for (int32_t size = 0; size < count; size++) {
        tiny_size(&t, sizes[size][0], 5, sizes[size][1], 0);
        n.pieces[0][size] = sizes[size][1];
    }
    n.strips[0] = strips;
    tiny_bolt(&t, across);
    struct msl_workshop *workshop = tiny_open(&t, &watch);
    set_numbers(workshop, &n, &seed);
    workshop->whole.making.best.cost = 5 * strips + 1;
    return workshop;
}

static void ck_packed_plan(struct msl_workshop *workshop, int64_t cost)
{
    struct msl_case solved = { 0 };
    split_on(workshop, &solved);
    ck_assert_int_eq(solved.packed, 0);
    ck_best_plan(&t, &workshop->whole.making);
    ck_assert_int_eq(workshop->whole.making.best.cost, cost);
    msl_workshop_close(workshop);
}

/* Filled as full as can be, one strip after the other, these take one more: 10, 6 and 6 are 22. */
START_TEST(what_is_not_packed_fullest_is_packed_all_the_same)
{
    static const int64_t six[4][2] = { { 14, 2 }, { 10, 1 }, { 9, 1 }, { 6, 2 } };
    static const int64_t ten[4][2] = { { 11, 2 }, { 9, 1 }, { 7, 5 }, { 4, 2 } };
    struct msl_case solved = { 0 };
    struct msl_split split;
    /* 14 + 6 twice, 10 + 9 */
    ck_packed_plan(one_way(22, six, 4, 3), 3 * 5);
    /* 11 + 7 twice, 9 + 7 + 4, 7 + 7 + 4 */
    ck_packed_plan(one_way(20, ten, 4, 4), 4 * 5);
    /* without room for a third strip's pattern, or row, there is no plan */
    struct msl_workshop *workshop = one_way(22, six, 4, 3);
    workshop->whole.pool.most_patterns = workshop->whole.pool.pattern_count + 2;
    ck_assert_int_eq(msl_split_pack(&workshop->whole, &solved, &split), 1);
    ck_assert_int_eq(workshop->whole.making.best.count, 0);
    msl_workshop_close(workshop);
    workshop = one_way(22, six, 4, 3);
    workshop->whole.making.plan.most = 2;
    ck_assert_int_eq(msl_split_pack(&workshop->whole, &solved, &split), 1);
    ck_assert_int_eq(workshop->whole.making.best.count, 0);
    msl_workshop_close(workshop);
}
END_TEST

/* Too many strips to be looked at one by one: 7 + 7 + 6 ten thousand times, and one more of 7; with 13 + 7, too. */
START_TEST(many_strips_are_packed_fullest)
{
    static const int64_t two[2][2] = { { 7, 20001 }, { 6, 10000 } };
    static const int64_t three[3][2] = { { 13, 5000 }, { 7, 25000 }, { 6, 10000 } };
    static const int64_t ones[3][2] = { { 20, 6000 }, { 19, 3000 }, { 11, 1 } };
    static const int64_t pairs[2][2] = { { 9, 8000 }, { 6, 9000 } };
    ck_packed_plan(one_way(20, two, 2, 10001), 10001 * 5);
    ck_packed_plan(one_way(20, three, 3, 15000), 15000 * 5);
    ck_packed_plan(one_way(20, ones, 3, 9001), 9001 * 5);
    ck_packed_plan(one_way(18, pairs, 2, 7000), 7000 * 5); /* 9 + 9 and 6 + 6 + 6 */
}
END_TEST

/* What lies in stock is not packed, and so never shown not to fit. */
START_TEST(stock_is_not_packed)
{
    static const struct msl_watch watch = { NULL, NULL, 0, 0 };
    static struct numbers n;
    uint64_t seed = 1;
    struct msl_case solved = { 0 };
    tiny_start(&t);
    memset(&n, 0, sizeof n);
    tiny_size(&t, 7, 5, 3, 0);
    tiny_heights(&t);
    tiny_stock(&t, 8, 6, 9, 1);
    n.strips[0] = 1;
    n.pieces[0][0] = 3; /* of which there is room for one */
    struct msl_workshop *workshop = tiny_open(&t, &watch);
    set_numbers(workshop, &n, &seed);
    ck_assert_int_gt(split_on(workshop, &solved), 0);
    ck_assert_int_eq(solved.packed, 0);
    msl_workshop_close(workshop);
}
END_TEST

/* Where patterns are cut whole times, that is the plan: two of one, and one of another; not what must not be. */
START_TEST(whole_levels_are_the_plan)
{
    struct msl_workshop *workshop = two_ways(10, 4);
    struct msl_search *search = &workshop->whole;
    struct msl_master *master = &workshop->master;
    struct msl_case solved = { 0 };
    struct msl_split split;
    const int32_t both[2] = { 0, 1 };
    const int32_t first_counts[2] = { 2, 1 };
    const int32_t second_counts[2] = { 0, 5 };
    msl_cases_begin(search);
    const int32_t first = msl_pool_add(&search->pool, 0, 10, both, first_counts, 2);
    const int32_t second = msl_pool_add(&search->pool, 1, 4, both, second_counts, 2);
    const struct msl_basic basis[6] = { { first, 0 },  { second, 0 }, { -1, 0 },
                                        { second, 1 }, { -2, 0 },     { second, 0 } };
    const int64_t levels[6] = { 2, 1, 5, 3, 1, 4 };
    for (int32_t row = 0; row < 6; row++) {
        const struct msl_limit other = { .wanted = 100, .kind = MSL_LIMIT_WAYS, .last_way = 1 };
        if (row > 1)
            master->limits[row] = other;
        master->basis[row] = basis[row];
        master->level[row] = level_of(workshop, (levels[row] << 11) + (row == 5) * 1024);
    }
    master->row_count = 5; /* and one behind them */
    search->making.plan.most = 2;
    search->way_level[0] = level_of(workshop, 2 << 11);
    search->way_level[1] = level_of(workshop, 1 << 11);
    search->copies_level[0] = level_of(workshop, 4 << 11);
    search->copies_level[1] = level_of(workshop, 2 << 11);
    search->copies_level[2] = 0;
    search->copies_level[3] = level_of(workshop, 5 << 11);
    ck_assert_int_eq(msl_split_pack(search, &solved, &split), 1);
    const struct msl_plan *best = &search->making.best;
    ck_assert_int_eq(best->count, 2);
    ck_assert_int_eq(best->cost, 24);
    ck_assert(best->rows[0].pattern == first && best->rows[0].times == 2);
    ck_assert(best->rows[1].pattern == second && best->rows[1].times == 1);
    msl_workshop_close(workshop);
}
END_TEST

Suite *cutplan_split_suite(void)
{
    Suite *suite = suite_create("cutplan_split");
    TCase *all = tcase_create("all");
    tcase_set_timeout(all, 60);
    tcase_add_test(all, levels_add_up_by_way_and_size);
    tcase_add_test(all, near_one_half_is_split_first);
    tcase_add_test(all, where_the_next_way_is_cheaper_is_split_first);
    tcase_add_test(all, what_proved_much_is_split_first);
    tcase_add_test(all, pieces_are_split_after_that);
    tcase_add_test(all, splits_are_remembered_by_what_they_proved);
    tcase_add_test(all, strips_are_packed_as_all_ways_of_laying_say);
    tcase_add_test(all, what_is_not_packed_fullest_is_packed_all_the_same);
    tcase_add_test(all, many_strips_are_packed_fullest);
    tcase_add_test(all, stock_is_not_packed);
    tcase_add_test(all, whole_levels_are_the_plan);
    suite_add_tcase(suite, all);
    return suite;
}
