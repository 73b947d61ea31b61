/* test_cutplan_master.c - levels and worths of patterns, which prove each other.
 *
 * SPDX-License-Identifier: MIT */
#include "test_cutplan_parts.h"

#include "cutplan_master.h"
#include "cutplan_point.h"
#include "wide.h"

static struct parts parts;

/* ---- numbers with a point ---------------------------------------------------------------------------------------- */

/* A number of up to 62 digits: any, or near a power of two or three times one. */
static int64_t pick_number(uint64_t *seed)
{
    const int64_t power = (int64_t)1 << pick(seed, 62);
    const int64_t near = pick(seed, 3) - 1;
    int64_t number = power + near;
    if (pick(seed, 3) == 0)
        number = power / 2 * 3 + near;
    if (pick(seed, 3) == 0)
        number = (int64_t)(((uint64_t)pick(seed, (int64_t)1 << 31) << 31 | (uint64_t)pick(seed, (int64_t)1 << 31)) %
                           (uint64_t)power);
    number = lesser(number, ((int64_t)1 << 62) - 1);
    return pick(seed, 2) == 0 ? number : -number;
}

/* Whether a wide number is below that power of two. */
static int is_below(struct msl_wide number, int32_t power)
{
    return msl_wide_compare(number, msl_wide_multiply((int64_t)1 << (power - 62), (int64_t)1 << 62)) < 0;
}

/* Products are rounded to the nearest, a half up; those that fit are below 2^61, all below 2^60 fit. */
START_TEST(test_products)
{
    uint64_t seed = 1;
    int64_t fitting = 0;
    for (int round = 0; round < 20000; round++) {
        const int32_t point = 33 + (int32_t)pick(&seed, 8);
        const int64_t a = pick_number(&seed);
        const int64_t b = pick_number(&seed);
        const struct msl_wide exact = msl_wide_multiply(a, b);
        const struct msl_wide size = msl_wide_multiply(a < 0 ? -a : a, b < 0 ? -b : b);
        const int fits = msl_point_fits(a, b, point);
        int64_t nearest;
        int64_t rest;
        if (is_below(size, 61 + point)) {
            ck_assert(msl_wide_floor(msl_wide_add(exact, msl_wide_from((int64_t)1 << (point - 1))),
                                     (int64_t)1 << point, &nearest, &rest));
            ck_assert_int_eq(msl_point_times(a, b, point), nearest);
        }
        ck_assert(!fits || is_below(size, 61 + point));
        ck_assert(fits || !is_below(size, 60 + point));
        fitting += fits;
    }
    ck_assert_int_gt(fitting, 5000);
    ck_assert_int_lt(fitting, 19500);
    /* the most by which it is rough: 3 x 2^31 less 1 has the first 32 digits of 2^32 */
    ck_assert(!msl_point_fits(((int64_t)3 << 31) - 1, ((int64_t)1 << 62) - 1, 33));
    ck_assert(!msl_point_fits(((int64_t)1 << 62) - 1, ((int64_t)3 << 31) - 1, 33));
    ck_assert_uint_eq(msl_point_magnitude(INT64_MIN), INT64_MAX);
    ck_assert_uint_eq(msl_point_magnitude(INT64_MAX), INT64_MAX);
    ck_assert_uint_eq(msl_point_magnitude(-1), 0);
}
END_TEST

/* size x part is 2^(2 point) at most, and size x (part + 1) is more. */
START_TEST(test_reciprocals)
{
    uint64_t seed = 2;
    for (int round = 0; round < 5000;) {
        const int32_t point = 33 + (int32_t)pick(&seed, 8);
        const int64_t a = pick_number(&seed);
        const int64_t size = a < 0 ? -a : a;
        const struct msl_wide one = msl_wide_multiply((int64_t)1 << point, (int64_t)1 << point);
        if (size <= (int64_t)1 << (2 * point - 62))
            continue;
        const int64_t part = msl_point_reciprocal(a, point);
        const int64_t found = part < 0 ? -part : part;
        ck_assert(part == 0 || (part < 0) == (a < 0));
        ck_assert_int_le(msl_wide_compare(msl_wide_multiply(size, found), one), 0);
        ck_assert_int_gt(msl_wide_compare(msl_wide_multiply(size, found + 1), one), 0);
        round++;
    }
}
END_TEST

/* ---- a master made by chance ------------------------------------------------------------------------------------- */

static double part_of(int64_t value, int32_t bits)
{
    return (double)value / (double)((int64_t)1 << bits);
}

static void limit(struct msl_master *master, int32_t kind, int32_t first, int32_t last, int32_t size, int32_t at_least,
                  int64_t wanted)
{
    const struct msl_limit one = { wanted, kind, first, last, size, at_least, 0 };
    const struct msl_basic slack = { -1 - master->row_count, 0 };
    ck_assert_int_lt(master->row_count, MSL_LIMITS_MAX);
    master->basis[master->row_count] = slack;
    master->limits[master->row_count++] = one;
}

/* Every size is wanted, nothing is cut yet. */
static void begin(struct msl_master *master, const struct muslin_allocator *memory, int64_t price)
{
    parts.cutting.way_count++; /* room for what lies beside */
    ck_assert(msl_master_make(master, &parts.cutting, &parts.pool, memory));
    parts.cutting.way_count--;
    ck_assert_int_ge(master->point, 33);
    ck_assert_int_le(master->point, 40);
    master->price_against = price;
    master->bits = 30;
    while (master->bits > 0 && price > master->most_worth >> master->bits >> 8)
        master->bits--;
    for (int32_t s = 0; s < parts.cutting.size_count; s++)
        limit(master, MSL_LIMIT_SIZE, 0, 0, s, 1, parts.sizes[s].count);
}

enum { BESIDE = 77 };

/* The elements behind those that a master works on, each in its array. */
static int64_t *beside(const struct msl_master *master, int32_t array)
{
    const int32_t ways = parts.cutting.way_count;
    const int32_t rows = master->row_count;
    int64_t *const arrays[] = { &master->limits[rows].wanted, master->level + rows, master->worth + rows,
                                master->column + rows, master->along + rows, master->rough + rows,
                                master->inverse + rows * rows, master->way_fixed + ways,
                                master->way_worth + ways * parts.cutting.size_count };
    return array < (int32_t)(sizeof arrays / sizeof arrays[0]) ? arrays[array] : NULL;
}

/* Much that would spoil what is worked out, if it were taken for a row or a way. */
static void put_beside(struct msl_master *master)
{
    const struct msl_limit limit = { 0, MSL_LIMIT_WAYS, 0, 3, 0, 1, 0 };
    const struct msl_basic basic = { BESIDE, BESIDE };
    master->limits[master->row_count] = limit;
    master->basis[master->row_count] = master->coming[master->row_count] = basic;
    master->spots[master->row_count] = BESIDE;
    master->taken[master->row_count] = master->own_worths[parts.cutting.way_count] = BESIDE;
    for (int32_t i = 0; beside(master, i) != NULL; i++)
        *beside(master, i) = -((int64_t)BESIDE << 40);
}

static void check_beside(const struct msl_master *master)
{
    const int32_t rows = master->row_count;
    ck_assert(master->basis[rows].column == BESIDE && master->basis[rows].against == BESIDE);
    ck_assert(master->coming[rows].column == BESIDE && master->coming[rows].against == BESIDE);
    ck_assert(master->spots[rows] == BESIDE && master->taken[rows] == BESIDE);
    ck_assert(master->own_worths[parts.cutting.way_count] == BESIDE);
    for (int32_t i = 0; beside(master, i) != NULL; i++)
        ck_assert_int_eq(*beside(master, i), -((int64_t)BESIDE << 40));
}

/* What a pattern counts in a limit. */
static int64_t counted(int32_t pattern, const struct msl_limit *one)
{
    const struct msl_pattern *p = &parts.patterns[pattern];
    int64_t pieces = 0;
    if (one->kind == MSL_LIMIT_STOCK)
        return parts.ways[p->way].stock == one->first_way;
    if (one->kind == MSL_LIMIT_WAYS)
        return p->way >= one->first_way && p->way <= one->last_way;
    for (int32_t s = p->first; s < p->first + p->count; s++)
        for (int32_t i = parts.strips[s].first; i < parts.strips[s].first + parts.strips[s].count; i++)
            pieces += parts.laid[i].size == one->size ? parts.laid[i].count : 0;
    return one->kind == MSL_LIMIT_SIZE || one->first_way == p->way ? pieces : 0;
}

/* The worths have the right signs and range, and way_fixed and way_worth are made of them: what a pattern lacks by them
 * is its cost less what each row says. */
static void check_sound(const struct msl_master *master)
{
    for (int32_t r = 0; r < master->row_count; r++) {
        ck_assert(master->limits[r].at_least ? master->worth[r] >= 0 : master->worth[r] <= 0);
        ck_assert_int_le(llabs(master->worth[r]), master->most_worth);
    }
    for (int32_t p = 0; p < parts.pool.pattern_count; p++) {
        const int32_t way = parts.patterns[p].way;
        int64_t by_way = master->way_fixed[way];
        int64_t by_row = parts.ways[way].cost * ((int64_t)1 << master->bits);
        for (int32_t s = 0; s < parts.cutting.size_count; s++) {
            const struct msl_limit of_size = { .kind = MSL_LIMIT_SIZE, .size = s };
            by_way -= counted(p, &of_size) * master->way_worth[way * parts.cutting.size_count + s];
        }
        for (int32_t r = 0; r < master->row_count; r++)
            by_row -= counted(p, &master->limits[r]) * master->worth[r];
        ck_assert_int_eq(by_way, by_row);
    }
}

static double cost_of(const struct msl_master *master)
{
    double cost = 0;
    for (int32_t i = 0; i < master->row_count; i++) {
        const struct msl_basic basic = master->basis[i];
        const double level = part_of(master->level[i], master->point);
        if (basic.against)
            cost += level * (double)master->price_against;
        else if (basic.column >= 0)
            cost += level * (double)parts.ways[parts.patterns[basic.column].way].cost;
    }
    return cost;
}

/* What is in the basis, so often, gives in each row just what is wanted; of what is against, the reverse. */
static void check_levels(const struct msl_master *master)
{
    for (int32_t r = 0; r < master->row_count; r++) {
        double sum = (double)-master->limits[r].wanted;
        double off = 1e-3 + (double)master->limits[r].wanted * 1e-5;
        for (int32_t i = 0; i < master->row_count; i++) {
            const struct msl_basic basic = master->basis[i];
            double counts = basic.column == -1 - r ? master->limits[r].at_least ? -1 : 1 : 0;
            if (basic.column >= 0)
                counts = (double)counted(basic.column, &master->limits[r]);
            off += counts * 1e-6; /* as rough as levels are */
            counts *= part_of(master->level[i], master->point);
            sum += basic.against ? -counts : counts;
            off += counts * 1e-5;
        }
        ck_assert(sum < off && sum > -off);
    }
}

/* No pattern is worth more than it costs, but for what each worth may be off by. */
static void check_none_pays(const struct msl_master *master)
{
    const double hair = part_of(msl_master_pays(master), master->bits);
    for (int32_t p = 0; p < parts.pool.pattern_count; p++) {
        double lack = (double)parts.ways[parts.patterns[p].way].cost;
        double off = hair;
        for (int32_t r = 0; r < master->row_count; r++) {
            lack -= (double)counted(p, &master->limits[r]) * part_of(master->worth[r], master->bits);
            off += (double)counted(p, &master->limits[r]) * hair / 16;
        }
        ck_assert(lack > -off);
    }
}

/* Levels keep to the limits, no pattern pays, and what is wanted is worth what is cut costs: by that both are best. */
static void check_best(struct msl_master *master)
{
    double worth = 0;
    ck_assert(msl_master_levels(master));
    check_levels(master);
    const double cost = cost_of(master);
    int64_t most_against = 0;
    for (int32_t i = 0; i < master->row_count; i++)
        if (master->basis[i].against)
            most_against = larger(most_against, master->level[i]);
    ck_assert_int_eq(msl_master_against(master), most_against);
    const int against = part_of(most_against, master->point) > 1e-4;
    for (int32_t r = 0; r < master->row_count; r++) {
        double sum = 0;
        worth += part_of(master->worth[r], master->bits) * (double)master->limits[r].wanted;
        for (int32_t i = 0; i < master->row_count; i++)
            if (master->basis[i].column >= 0)
                sum += part_of(master->level[i], master->point) *
                       (double)counted(master->basis[i].column, &master->limits[r]);
        const double over = sum - (double)master->limits[r].wanted;
        ck_assert(against || (master->limits[r].at_least ? over > -1e-3 : over < 1e-3));
    }
    check_none_pays(master);
    ck_assert(cost - worth < 1e-3 + cost * 1e-5 && worth - cost < 1e-3 + cost * 1e-5);
}

/* More strips of one size each for the last pattern. */
static void add_strips(uint64_t *seed, int32_t sizes, int64_t most_laid)
{
    for (int64_t more = pick(seed, 3); more >= 0; more--) {
        const struct msl_laid laid = { (int32_t)pick(seed, sizes), 1 + (int32_t)pick(seed, most_laid), 0, 0 };
        ck_assert(msl_pool_strip(&parts.pool, 10) && msl_pool_lay(&parts.pool, laid));
    }
}

/* Some sizes, ways and patterns. */
static void make_pool(uint64_t *seed, int64_t most_count, int64_t most_laid, int32_t patterns)
{
    int32_t sizes[FEW_SIZES];
    int32_t counts[FEW_SIZES];
    parts_begin(&parts);
    const int32_t n = 1 + (int32_t)pick(seed, 6);
    for (int32_t s = 0; s < n; s++)
        parts_size(&parts, 10, 20, 0, 1 + pick(seed, most_count));
    for (int32_t w = 0; w < 4; w++)
        parts_way(&parts, 240 * most_laid, 20 - w)->stock = (int32_t)pick(seed, 3) - 1;
    for (int32_t p = 0; p < patterns || p < 3 * n; p++) {
        for (int32_t s = 0; s < n; s++) {
            sizes[s] = s;
            counts[s] = pick(seed, 2) == 0 || s == p % n ? 1 + (int32_t)pick(seed, most_laid) : 0;
        }
        msl_pool_add(&parts.pool, (int32_t)pick(seed, 4), 20, sizes, counts, n);
        if (pick(seed, 4) == 0)
            add_strips(seed, n, most_laid);
    }
}

static void make_limits(uint64_t *seed, struct msl_master *master)
{
    for (int64_t more = pick(seed, 5); more > 0; more--) {
        const int32_t first = (int32_t)pick(seed, 4);
        const int32_t last = first + (int32_t)pick(seed, 4 - first);
        const int32_t size = (int32_t)pick(seed, parts.cutting.size_count);
        const int32_t at_least = (int32_t)pick(seed, 2);
        const int32_t kind = MSL_LIMIT_STOCK + (int32_t)pick(seed, 3);
        const int64_t wanted = pick(seed, at_least ? 10 : 60);
        limit(master, kind, kind == MSL_LIMIT_STOCK ? first % 2 : first, last, size,
              kind == MSL_LIMIT_STOCK ? 0 : at_least, wanted);
    }
}

START_TEST(test_best)
{
    const struct muslin_allocator memory = parts_memory();
    uint64_t seed = 1;
    for (int round = 0; round < 600; round++) {
        struct msl_master master;
        make_pool(&seed, 60, 6, round % 100 == 0 ? 550 : 0);
        begin(&master, &memory, 3000);
        make_limits(&seed, &master);
        put_beside(&master);
        ck_assert(msl_master_load(&master));
        ck_assert(msl_master_improve(&master));
        check_sound(&master);
        check_best(&master);
        check_beside(&master);
        /* and from where it is, with one limit more */
        limit(&master, MSL_LIMIT_WAYS, 0, 3, 0, 1, pick(&seed, 20));
        ck_assert(msl_master_load(&master));
        ck_assert(msl_master_improve(&master));
        check_sound(&master);
        check_best(&master);
        msl_master_free(&master, &memory);
    }
}
END_TEST

/* How often each column is in the basis: patterns, then slacks. */
static void count_basis(const struct msl_master *master, int32_t *counts)
{
    memset(counts, 0, (FEW_PATTERNS + MSL_LIMITS_MAX) * sizeof *counts);
    for (int32_t i = 0; i < master->row_count; i++) {
        const int32_t column = master->basis[i].column;
        counts[column < 0 ? FEW_PATTERNS - 1 - column : column]++;
    }
}

/* Loads the basis, which has the same columns afterwards, also where it can't be inverted. What is turned against, or
 * back, is more than nothing. */
static int load_as_it_is(struct msl_master *master)
{
    static int32_t before[FEW_PATTERNS + MSL_LIMITS_MAX];
    static int32_t after[FEW_PATTERNS + MSL_LIMITS_MAX];
    static struct msl_basic basis[MSL_LIMITS_MAX];
    memcpy(basis, master->basis, (size_t)master->row_count * sizeof basis[0]);
    count_basis(master, before);
    const int loads = msl_master_load(master);
    count_basis(master, after);
    ck_assert_mem_eq(before, after, sizeof before);
    for (int32_t i = 0; loads && i < master->row_count; i++)
        for (int32_t k = 0; k < master->row_count; k++)
            if (basis[k].column == master->basis[i].column && basis[k].against != master->basis[i].against)
                ck_assert_int_gt(master->level[i], 0);
    return loads;
}

/* What is wanted with its point is a level: below 2^59 that is within the range of the numbers, from 2^63 on it is not.
 * */
START_TEST(test_large_levels)
{
    const struct muslin_allocator memory = parts_memory();
    for (int32_t digits = 0; digits < 33; digits++)
        for (int32_t row = 0; row < 3; row++) {
            struct msl_master master;
            parts_begin(&parts);
            for (int32_t s = 0; s < 3; s++)
                parts_size(&parts, 10, 20, 0, 3);
            parts_way(&parts, 410, 20);
            begin(&master, &memory, 3000);
            for (int32_t s = 0; s < 3; s++)
                master.basis[s].against = 1;
            master.limits[row].wanted = (int64_t)1 << digits;
            const int loads = load_as_it_is(&master);
            ck_assert(digits + master.point >= 59 || loads);
            ck_assert(digits + master.point < 63 || !loads);
            ck_assert(loads || !msl_master_levels(&master));
            msl_master_free(&master, &memory);
        }
}
END_TEST

/* Whatever is put into the basis, its levels say so; what would be below nothing is against. */
START_TEST(test_loaded)
{
    const struct muslin_allocator memory = parts_memory();
    uint64_t seed = 7;
    int loaded = 0;
    for (int round = 0; round < 700; round++) {
        struct msl_master master;
        make_pool(&seed, 60, 6, 0);
        begin(&master, &memory, 3000);
        make_limits(&seed, &master);
        for (int32_t r = 0; r < master.row_count; r++) {
            if (pick(&seed, 2) == 0)
                master.basis[r].column = (int32_t)pick(&seed, parts.pool.pattern_count);
            master.basis[r].against = (int32_t)pick(&seed, 2);
        }
        put_beside(&master);
        const int fits = load_as_it_is(&master);
        loaded += fits;
        for (int32_t i = 0; fits && i < master.row_count; i++)
            ck_assert_int_ge(master.level[i], 0);
        if (fits && msl_master_levels(&master))
            check_levels(&master);
        check_beside(&master);
        msl_master_free(&master, &memory);
    }
    ck_assert_int_gt(loaded, 150);
}
END_TEST

/* Numbers that leave every range in turn: what is said stays sound. */
START_TEST(test_out_of_range)
{
    const struct muslin_allocator memory = parts_memory();
    static const int64_t large[] = { 3, 40, 4000, 70000, 1000000, 30000000 };
    uint64_t seed = 2;
    int loaded = 0;
    int best = 0;
    for (int round = 0; round < 2500; round++) {
        struct msl_master master;
        make_pool(&seed, 60, large[pick(&seed, 6)], 0);
        begin(&master, &memory, pick(&seed, 2) == 0 ? 3000 : 30000000000);
        make_limits(&seed, &master);
        if (pick(&seed, 3) == 0)
            master.limits[pick(&seed, master.row_count)].wanted = (int64_t)1 << pick(&seed, 32);
        if (pick(&seed, 2) == 0) {
            /* patterns in the basis, whichever they are */
            for (int32_t r = 0; r < parts.cutting.size_count; r++)
                if (pick(&seed, 2) == 0)
                    master.basis[r].column = (int32_t)pick(&seed, parts.pool.pattern_count);
        }
        put_beside(&master);
        const int fits = load_as_it_is(&master);
        loaded += fits;
        if (fits) {
            const int is_best = msl_master_improve(&master);
            best += is_best;
            check_sound(&master);
            if (is_best)
                check_none_pays(&master);
            msl_master_levels(&master);
            for (int32_t i = 0; i < master.row_count; i++)
                ck_assert_int_ge(master.level[i], 0);
        }
        check_beside(&master);
        msl_master_free(&master, &memory);
    }
    ck_assert_int_gt(loaded, 400);
    ck_assert_int_lt(loaded, 2500);
    ck_assert_int_gt(best, 400);
    ck_assert_int_lt(best, loaded);
}
END_TEST

/* Patterns of one of a size and 40 of the next: a surplus of the last hangs on the first by 40 x 40 x 40. With that
 * surplus below nothing, at the highest price, worths leave their range. */
START_TEST(test_dear_chain)
{
    const struct muslin_allocator memory = parts_memory();
    const int64_t wanted[4] = { 1, 60, 1, 1 };
    const int32_t counts[2] = { 1, 40 };
    struct msl_master master;
    parts_begin(&parts);
    for (int32_t s = 0; s < 4; s++)
        parts_size(&parts, 10, 20, 0, wanted[s]);
    parts_way(&parts, 410, 20);
    for (int32_t s = 0; s < 3; s++) {
        const int32_t sizes[2] = { s, s + 1 };
        msl_pool_add(&parts.pool, 0, 20, sizes, counts, 2);
    }
    begin(&master, &memory, 30000000000);
    for (int32_t s = 0; s < 3; s++)
        master.basis[s].column = s;
    ck_assert(msl_master_load(&master));
    ck_assert(!msl_master_improve(&master));
    check_sound(&master);
    msl_master_free(&master, &memory);
}
END_TEST

/* Patterns as in the chain, and one with many of the first size and one of a fifth: for each of that, the surplus of
 * the fourth is 40 x 40 x 40 times as many. What is above 2^62 with its point is out of range. */
START_TEST(test_large_columns)
{
    const struct muslin_allocator memory = parts_memory();
    const int32_t counts[2] = { 1, 40 };
    for (int32_t digits = 0; digits < 31; digits++) {
        const int32_t many[2] = { 1 << digits, 1 };
        struct msl_master master;
        parts_begin(&parts);
        for (int32_t s = 0; s < 5; s++)
            parts_size(&parts, 10, 20, 0, 3);
        parts_way(&parts, 410, 20);
        for (int32_t s = 0; s < 3; s++) {
            const int32_t sizes[2] = { s, s + 1 };
            msl_pool_add(&parts.pool, 0, 20, sizes, counts, 2);
        }
        const int32_t last[2] = { 0, 4 };
        msl_pool_add(&parts.pool, 0, 20, last, many, 2);
        begin(&master, &memory, 3000);
        for (int32_t s = 0; s < 4; s++)
            master.basis[s < 3 ? s : 4].column = s;
        const int loads = msl_master_load(&master);
        ck_assert(digits > 0 || loads);
        ck_assert(digits + 15 + master.point < 62 || !loads);
        if (loads && msl_master_levels(&master))
            check_levels(&master);
        msl_master_free(&master, &memory);
    }
}
END_TEST

/* Seven rows, of five sizes and two numbers of ways, nine ways, eleven patterns, all of them dear. Loading slacks looks
 * at the 49 entries of the inverse: 12; as much again what finds the levels. Where no pattern pays the 49 entries give
 * the worths, 9 ways get theirs, and after the 11 patterns again, with 45 worths of their own sizes: 12 + 2 + 44 + 2 +
 * 11. One pattern brought in changes the seven entries of one column, of two more a second one those of two: of these
 * two entries count one. */
START_TEST(test_steps)
{
    const struct muslin_allocator memory = parts_memory();
    const int32_t sizes[1] = { 2 };
    const int32_t counts[1] = { 3 };
    struct msl_master master;
    parts_begin(&parts);
    for (int32_t s = 0; s < 5; s++)
        parts_size(&parts, 10, 20, 0, 3);
    for (int32_t w = 0; w < 9; w++)
        parts_way(&parts, 410, 4000 - w);
    for (int32_t p = 0; p < 11; p++)
        msl_pool_add(&parts.pool, p % 9, 20, sizes, counts, 1);
    begin(&master, &memory, 10);
    limit(&master, MSL_LIMIT_WAYS, 0, 3, 0, 0, 4);
    limit(&master, MSL_LIMIT_WAYS, 4, 5, 0, 0, 4);
    for (int32_t s = 0; s < 5; s++)
        master.basis[s].against = 1;
    master.steps = 1000;
    ck_assert(msl_master_load(&master));
    ck_assert_int_eq(master.steps, 1012);
    ck_assert(msl_master_levels(&master));
    ck_assert_int_eq(master.steps, 1024);
    ck_assert(msl_master_improve(&master));
    ck_assert_int_eq(master.steps, 1024 + 12 + 2 + 44 + 2 + 11);
    master.basis[2].column = 4;
    master.basis[2].against = 0;
    master.steps = 1000;
    ck_assert(msl_master_load(&master));
    ck_assert_int_eq(master.steps, 1000 + 3 + 12);
    const int32_t more_sizes[2] = { 2, 3 };
    const int32_t more_counts[2] = { 3, 1 };
    const int32_t most_counts[2] = { 1, 2 };
    master.basis[2].column = msl_pool_add(&parts.pool, 0, 20, more_sizes, more_counts, 2);
    master.basis[3].column = msl_pool_add(&parts.pool, 0, 20, more_sizes, most_counts, 2);
    master.basis[3].against = 0;
    master.steps = 1000;
    ck_assert(msl_master_load(&master));
    ck_assert_int_eq(master.steps, 1000 + 3 + 7 + 12);
    msl_master_free(&master, &memory);
}
END_TEST

/* What is wanted of each size is moved up, by less than a millionth and differently in each row; and not at all where
 * levels are found anew. */
START_TEST(test_hairs)
{
    const struct muslin_allocator memory = parts_memory();
    struct msl_master master;
    parts_begin(&parts);
    for (int32_t s = 0; s < FEW_SIZES; s++)
        parts_size(&parts, 10, 20, 0, 3);
    parts_way(&parts, 410, 20);
    begin(&master, &memory, 3000);
    for (int32_t s = 0; s < FEW_SIZES; s++)
        master.basis[s].against = 1;
    ck_assert(msl_master_load(&master));
    const int64_t wanted = (int64_t)3 << master.point;
    for (int32_t s = 0; s < FEW_SIZES; s++) {
        ck_assert_int_gt(master.level[s], wanted);
        ck_assert_int_lt(master.level[s], wanted + ((int64_t)1 << master.point) / 1000000);
        for (int32_t other = 0; other < s; other++)
            ck_assert_int_ne(master.level[s], master.level[other]);
    }
    ck_assert(msl_master_levels(&master));
    for (int32_t s = 0; s < FEW_SIZES; s++)
        ck_assert_int_eq(master.level[s], wanted);
    msl_master_free(&master, &memory);
}
END_TEST

/* ---- against known values ----------------------------------------------------------------------------------------- */

struct piece {
    int64_t across, along, count;
    int turns;
};

/* The least cost in fractions, by pricing until no strip pays. */
static double solve(int64_t room, const struct piece *pieces, int32_t n)
{
    const struct muslin_allocator memory = parts_memory();
    struct msl_pricing pricing;
    struct msl_master master;
    int64_t most[FEW_SIZES];
    int64_t heights[FEW_WAYS];
    parts_begin(&parts);
    for (int32_t s = 0; s < n; s++) {
        parts_size(&parts, pieces[s].across, pieces[s].along, pieces[s].turns, pieces[s].count);
        most[s] = pieces[s].count;
    }
    const int32_t count = parts_heights(&parts, heights);
    for (int32_t w = 0; w < count; w++)
        parts_way(&parts, room, heights[w]);
    ck_assert(msl_pricing_make(&pricing, &parts.cutting, 1 << 16, &memory));
    begin(&master, &memory, 5000);
    ck_assert(msl_master_load(&master));
    int pays = 1;
    for (int round = 0; pays && round < 300; round++) {
        pays = 0;
        ck_assert(msl_master_improve(&master));
        for (int32_t w = 0; w < count; w++) {
            int32_t made;
            int64_t bound;
            const int64_t beat = master.way_fixed[w] + msl_master_pays(&master);
            ck_assert(msl_price(&pricing, w, master.way_worth + w * n, most, beat, &parts.pool, &made, &bound));
            pays |= made >= 0;
        }
    }
    ck_assert(!pays);
    check_sound(&master);
    check_best(&master);
    ck_assert_int_eq(msl_master_against(&master) >> (master.point - 12), 0);
    const double cost = cost_of(&master);
    ck_assert_int_gt(master.steps, 0);
    msl_master_free(&master, &memory);
    msl_pricing_free(&pricing, &memory);
    return cost;
}

static int near(double a, double b)
{
    return a - b < 2e-3 * (1 + b / 1000) && b - a < 2e-3 * (1 + b / 1000);
}

/* A million squares of 20 in strips of 320: 16 in each, 62,500 strips; and as many as levels have room for. A million
 * of 160 x 8, two in each strip, beside seven whole strips of 30. */
START_TEST(test_a_million)
{
    const struct piece squares[1] = { { 20, 20, 1000000, 0 } };
    const struct piece most[1] = { { 20, 20, 128000000, 0 } };
    const struct piece wholes[2] = { { 160, 8, 1000000, 0 }, { 320, 30, 7, 0 } };
    ck_assert(near(solve(320, squares, 1), 62500 * 20.0));
    ck_assert(near(solve(320, most, 1), 8000000 * 20.0));
    ck_assert(near(solve(320, wholes, 2), 500000 * 8.0 + 7 * 30.0));
}
END_TEST

START_TEST(test_known)
{
    /* bounds by columns, worked out once in fractions; eighths of an inch */
    const struct piece q01[3] = { { 44, 44, 32, 1 }, { 48, 48, 16, 1 }, { 76, 76, 8, 1 } };
    ck_assert(near(solve(320, q01, 3), 475.048));
    const struct piece q05[10] = { { 20, 20, 3, 1 }, { 20, 52, 7, 1 }, { 24, 52, 9, 1 }, { 28, 28, 3, 1 }, {
        32, 32, 27, 1 }, { 32, 60, 27, 1 }, { 35, 35, 13, 1 }, { 44, 44, 40, 1 }, { 52, 52, 7, 1 }, { 328, 18,
        5, 0 } };
    ck_assert(near(solve(328, q05, 10), 759.713));
    const struct piece q27[6] = { { 16, 22, 80, 0 }, { 20, 20, 159, 0 }, { 28, 28, 80, 0 }, { 32, 32, 80, 0 },
        { 35, 35, 10, 0 }, { 320, 18, 5, 0 } };
    ck_assert(near(solve(320, q27, 6), 875.275));
    const struct piece q13[11] = { { 12, 12, 11, 1 }, { 16, 28, 42, 1 }, { 20, 36, 42, 1 }, { 20, 52, 21, 1 },
        { 24, 24, 21, 1 }, { 24, 34, 42, 1 }, { 28, 52, 53, 1 }, { 55, 55, 5, 1 }, { 84, 84, 3, 1 }, { 320,
        12, 29, 0 }, { 320, 20, 7, 0 } };
    ck_assert(near(solve(320, q13, 11), 1223.778));
}
END_TEST

START_TEST(test_memory)
{
    struct failing_allocator failing;
    uint64_t seed = 3;
    make_pool(&seed, 60, 6, 0);
    EVERY_ALLOCATION_FAILS_ONCE(failing) {
        struct msl_master master;
        const int made = msl_master_make(&master, &parts.cutting, &parts.pool, &failing.allocator);
        ck_assert_int_eq(made, !failing.has_failed);
        if (made)
            msl_master_free(&master, &failing.allocator);
        ck_assert(failing_is_clean(&failing));
    }
}
END_TEST

Suite *cutplan_master_suite(void)
{
    Suite *suite = suite_create("cutplan_master");
    TCase *all = tcase_create("all");
    tcase_set_timeout(all, 60);
    tcase_add_test(all, test_products);
    tcase_add_test(all, test_reciprocals);
    tcase_add_test(all, test_best);
    tcase_add_test(all, test_large_levels);
    tcase_add_test(all, test_loaded);
    tcase_add_test(all, test_out_of_range);
    tcase_add_test(all, test_dear_chain);
    tcase_add_test(all, test_large_columns);
    tcase_add_test(all, test_steps);
    tcase_add_test(all, test_hairs);
    tcase_add_test(all, test_a_million);
    tcase_add_test(all, test_known);
    tcase_add_test(all, test_memory);
    suite_add_tcase(suite, all);
    return suite;
}
