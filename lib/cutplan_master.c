/* cutplan_master.c - how often to cut each known pattern, in fractions, and what each piece is then worth.
 *
 * SPDX-License-Identifier: MIT
 *
 * The simplex method with an explicit inverse. What is wanted is moved by a hair, differently in each row, so that
 * ties, and with them going round in circles, are rare. Levels and worths are carried on from exchange to exchange, and
 * found anew with the inverse. Numbers have a range; what would leave it ends the search for better levels, which is
 * always sound, for the worths alone prove something. */
#include "cutplan_master.h"

#include "cutplan_point.h"
#include "quilt_store.h"
#include "wide.h"

enum {
    POINT_MOST = 40,
    POINT_LEAST = 33,
    ENTRY_BITS = 56,   /* entries of the inverse stay below it, */
    LEVEL_BITS = 60,   /* and levels */
    SPARE_BITS = 12,   /* the point leaves so many of a word to the entries */
    MORE_BITS = 6,     /* of worths while they are summed up */
    SMALL_BITS = 18,   /* below 1 / 2^SMALL_BITS is nothing */
    REFACTOR = 64,     /* exchanges until the inverse is made anew */
    BLOCK = 64         /* patterns looked at before one of them is taken */
};

static int64_t *row_of(const struct msl_master *master, int32_t row)
{
    return master->inverse + (int64_t)row * master->row_count;
}

/* ---- columns ---------------------------------------------------------------------------------------------------- */

/* What a pattern counts in a limit that is not of a size. */
static int64_t counts_in(const struct msl_master *master, const struct msl_limit *limit, int32_t way)
{
    if (limit->kind == MSL_LIMIT_STOCK)
        return master->cutting->ways[way].stock == limit->first_way;
    if (limit->kind == MSL_LIMIT_WAYS)
        return limit->first_way <= way && way <= limit->last_way;
    return limit->first_way == way ? master->column[limit->size] : 0;
}

static void put_pattern(struct msl_master *master, int32_t index)
{
    const struct msl_pool *pool = master->pool;
    const struct msl_pattern *pattern = &pool->patterns[index];
    for (int32_t s = 0; s < pattern->count; s++) {
        const struct msl_strip *strip = &pool->strips[pattern->first + s];
        for (int32_t i = 0; i < strip->count; i++)
            master->column[pool->laid[strip->first + i].size] += pool->laid[strip->first + i].count;
    }
    for (int32_t r = master->cutting->size_count; r < master->row_count; r++)
        master->column[r] = counts_in(master, &master->limits[r], pattern->way);
}

/* Writes what comes in to the column, and the rows where it is not 0. Returns 0 where sums of its products with the
 * inverse may pass 2^62. */
static int put_column(struct msl_master *master, struct msl_basic basic)
{
    int64_t sum = 0;
    for (int32_t r = 0; r < master->row_count; r++)
        master->column[r] = 0;
    if (basic.column >= 0)
        put_pattern(master, basic.column);
    else
        master->column[-1 - basic.column] = master->limits[-1 - basic.column].at_least ? -1 : 1;
    master->spot_count = 0;
    for (int32_t r = 0; r < master->row_count; r++) {
        if (master->column[r] == 0)
            continue;
        master->spots[master->spot_count++] = r;
        sum += msl_greater(master->column[r], -master->column[r]);
        if (basic.against)
            master->column[r] = -master->column[r];
    }
    return msl_wide_compare(msl_wide_multiply((int64_t)master->largest, sum), msl_wide_from(INT64_MAX / 2)) < 0;
}

static int64_t price_of(const struct msl_master *master, struct msl_basic basic)
{
    if (basic.against)
        return master->price_against;
    if (basic.column < 0)
        return 0;
    return master->cutting->ways[master->pool->patterns[basic.column].way].cost;
}

/* ---- the inverse ------------------------------------------------------------------------------------------------ */

static int64_t hair(const struct msl_master *master, int32_t row)
{
    return (int64_t)(row * 7919 % 1009 + 16) << (master->point - 32);
}

/* Levels from the inverse, moved by a hair or not. */
static int find_levels(struct msl_master *master, int moved)
{
    const int32_t rows = master->row_count;
    const int32_t hairs = moved ? master->cutting->size_count : 0;
    uint64_t seen = 0;
    for (int32_t i = 0; i < rows; i++) {
        const int64_t *inverse = row_of(master, i);
        uint64_t level = 0;
        int64_t rough = 0;
        for (int32_t r = 0; r < rows; r++) {
            level += (uint64_t)inverse[r] * (uint64_t)master->limits[r].wanted;
            rough += (inverse[r] >> 28) * master->limits[r].wanted;
        }
        for (int32_t r = 0; r < hairs; r++)
            level += (uint64_t)msl_point_times(inverse[r], hair(master, r), master->point);
        master->level[i] = (int64_t)level;
        seen |= msl_point_magnitude(rough);
    }
    master->steps += rows * rows / 4;
    return seen >> (LEVEL_BITS - 28) == 0;
}

/* What the column does to each level. */
static void look_along(struct msl_master *master)
{
    for (int32_t i = 0; i < master->row_count; i++) {
        const int64_t *inverse = row_of(master, i);
        int64_t along = 0;
        for (int32_t k = 0; k < master->spot_count; k++)
            along += inverse[master->spots[k]] * master->column[master->spots[k]];
        master->along[i] = along;
    }
}

/* The row of what comes in, divided by its part there. Returns what no entry passes. */
static int64_t pivot_row(struct msl_master *master, int32_t at, int64_t part)
{
    int64_t *pivoted = row_of(master, at);
    uint64_t seen = 0;
    master->spot_count = 0;
    for (int32_t r = 0; r < master->row_count; r++) {
        if (pivoted[r] == 0)
            continue;
        pivoted[r] = msl_point_times(pivoted[r], part, master->point);
        seen |= msl_point_magnitude(pivoted[r]);
        master->spots[master->spot_count++] = r;
    }
    return (int64_t)seen;
}

/* Brings the column into the inverse, in this row. */
static int pivot(struct msl_master *master, int32_t at, int64_t part)
{
    const int32_t point = master->point;
    const int64_t *pivoted = row_of(master, at);
    if (!msl_point_fits((int64_t)master->largest, part, point))
        return 0;
    const int64_t most = pivot_row(master, at, part);
    uint64_t seen = (uint64_t)most;
    for (int32_t i = 0; i < master->row_count; i++) {
        const int64_t along = master->along[i];
        int64_t *row = row_of(master, i);
        if (i == at || along == 0)
            continue;
        if (!msl_point_fits(along, most, point))
            return 0;
        for (int32_t k = 0; k < master->spot_count; k++) {
            const int32_t r = master->spots[k];
            row[r] -= msl_point_times(along, pivoted[r], point);
            seen |= msl_point_magnitude(row[r]);
        }
    }
    master->steps += master->row_count * master->spot_count / 2;
    master->largest |= seen;
    return seen >> ENTRY_BITS == 0;
}

/* All slacks, those that are basic where they belong. */
static void start_inverse(struct msl_master *master)
{
    const int32_t rows = master->row_count;
    for (int32_t i = 0; i < rows; i++) {
        int64_t *row = row_of(master, i);
        for (int32_t r = 0; r < rows; r++)
            row[r] = 0;
        row[i] = (int64_t)(master->limits[i].at_least ? -1 : 1) * ((int64_t)1 << master->point);
        master->coming[i] = master->basis[i];
        master->taken[i] = 0;
    }
    for (int32_t i = 0; i < rows; i++) {
        const int32_t r = -1 - master->coming[i].column;
        if (r < 0)
            continue;
        master->basis[r] = master->coming[i];
        master->taken[r] = 1;
        if (master->coming[i].against)
            row_of(master, r)[r] = -row_of(master, r)[r];
    }
}

/* The row not taken in which a column counts most; -1: nowhere. */
static int32_t most_along(const struct msl_master *master)
{
    uint64_t most = (uint64_t)1 << (master->point - SMALL_BITS);
    int32_t best = -1;
    for (int32_t r = 0; r < master->row_count; r++) {
        const uint64_t size = msl_point_magnitude(master->along[r]);
        if (master->taken[r] || size <= most)
            continue;
        most = size;
        best = r;
    }
    return best;
}

/* Brings in what is to be basic, each in the row where it counts most. */
static int bring_in(struct msl_master *master)
{
    for (int32_t i = 0; i < master->row_count; i++) {
        if (master->coming[i].column < 0)
            continue;
        if (!put_column(master, master->coming[i]))
            return 0;
        look_along(master);
        const int32_t at = most_along(master);
        if (at < 0 || !pivot(master, at, msl_point_reciprocal(master->along[at], master->point)))
            return 0;
        master->taken[at] = 1;
        master->basis[at] = master->coming[i];
    }
    return 1;
}

/* Starts from slack in every row. Where that fails the basis is as it was. */
static int invert(struct msl_master *master)
{
    master->since = 0;
    master->largest = (uint64_t)1 << master->point;
    start_inverse(master);
    if (bring_in(master))
        return 1;
    for (int32_t i = 0; i < master->row_count; i++)
        master->basis[i] = master->coming[i];
    return 0;
}

/* The inverse and the levels, from the basis. */
static int renew(struct msl_master *master)
{
    return invert(master) && find_levels(master, 1);
}

int msl_master_load(struct msl_master *master)
{
    if (!renew(master))
        return 0;
    for (int32_t i = 0; i < master->row_count; i++) {
        int64_t *row = row_of(master, i);
        if (master->level[i] >= 0)
            continue;
        master->basis[i].against = !master->basis[i].against;
        master->level[i] = -master->level[i];
        for (int32_t r = 0; r < master->row_count; r++)
            row[r] = -row[r];
    }
    return 1;
}

/* ---- worths ----------------------------------------------------------------------------------------------------- */

/* way_fixed, and way_worth of ways in which sizes have worths of their own, or of all. */
static void spread(struct msl_master *master, int all)
{
    const struct msl_cutting *cutting = master->cutting;
    const int32_t sizes = cutting->size_count;
    for (int32_t w = 0; w < cutting->way_count; w++) {
        master->way_fixed[w] = cutting->ways[w].cost * ((int64_t)1 << master->bits);
        for (int32_t s = 0; (all || master->own_worths[w]) && s < sizes; s++)
            master->way_worth[w * sizes + s] = master->worth[s];
    }
    for (int32_t r = sizes; r < master->row_count; r++) {
        const struct msl_limit *limit = &master->limits[r];
        if (limit->kind == MSL_LIMIT_COPIES)
            master->way_worth[limit->first_way * sizes + limit->size] += master->worth[r];
        else
            for (int32_t w = 0; w < cutting->way_count; w++)
                master->way_fixed[w] -= counts_in(master, limit, w) * master->worth[r];
    }
    master->steps += cutting->way_count / 4 + (all ? cutting->way_count * sizes / 4 : 0);
}

/* Worths from the inverse. */
static int find_worths(struct msl_master *master)
{
    const int32_t rows = master->row_count;
    uint64_t seen = 0;
    for (int32_t r = 0; r < rows; r++)
        master->worth[r] = master->rough[r] = 0;
    for (int32_t i = 0; i < rows; i++) {
        const int64_t price = price_of(master, master->basis[i]) * ((int64_t)1 << (master->bits + MORE_BITS));
        const int64_t *inverse = row_of(master, i);
        for (int32_t r = 0; price != 0 && r < rows; r++) {
            if (!msl_point_fits(price, inverse[r], master->point))
                return 0;
            const int64_t worth = msl_point_times(price, inverse[r], master->point);
            master->worth[r] = (int64_t)((uint64_t)master->worth[r] + (uint64_t)worth);
            master->rough[r] += worth >> 8;
        }
    }
    for (int32_t r = 0; r < rows; r++) {
        master->worth[r] >>= MORE_BITS;
        seen |= msl_point_magnitude(master->rough[r]);
    }
    master->steps += rows * rows / 4;
    if (seen > (uint64_t)master->most_worth >> (8 - MORE_BITS))
        return 0;
    spread(master, 0);
    return 1;
}

/* Worths of the wrong sign, or out of range, are set to what proves something. */
static void clean(struct msl_master *master)
{
    for (int32_t r = 0; r < master->row_count; r++) {
        const int64_t most = master->limits[r].at_least ? master->most_worth : 0;
        const int64_t least = most - master->most_worth;
        if (master->worth[r] > most)
            master->worth[r] = most;
        if (master->worth[r] < least)
            master->worth[r] = least;
    }
}

static int64_t lacks(const struct msl_master *master, int32_t index)
{
    const struct msl_pool *pool = master->pool;
    const struct msl_pattern *pattern = &pool->patterns[index];
    const int64_t *worth = master->worth;
    int64_t lack = master->way_fixed[pattern->way];
    if (master->own_worths[pattern->way])
        worth = master->way_worth + (int64_t)pattern->way * master->cutting->size_count;
    for (int32_t s = 0; s < pattern->count; s++) {
        const struct msl_strip *strip = &pool->strips[pattern->first + s];
        for (int32_t i = 0; i < strip->count; i++)
            lack -= worth[pool->laid[strip->first + i].size] * pool->laid[strip->first + i].count;
    }
    return lack;
}

/* ---- steps ------------------------------------------------------------------------------------------------------ */

/* So much of a lack is rounding. */
static int64_t tolerance(const struct msl_master *master)
{
    return 64 + ((int64_t)1 << master->bits >> 17);
}

int64_t msl_master_pays(const struct msl_master *master)
{
    return 16 * tolerance(master);
}

/* What pays most: a slack, or a pattern of the first block that has one. Returns what it lacks, below 0; 0: none. */
static int64_t choose(struct msl_master *master, struct msl_basic *in)
{
    const int32_t count = master->pool->pattern_count;
    const int64_t none = -tolerance(master);
    int64_t most = none;
    in->column = in->against = 0;
    for (int32_t r = 0; r < master->row_count; r++) {
        const int64_t lack = master->limits[r].at_least ? master->worth[r] : -master->worth[r];
        if (lack < most) {
            most = lack;
            in->column = -1 - r;
        }
    }
    for (int32_t seen = 0; seen < count && (seen % BLOCK > 0 || seen == 0 || most == none); seen++) {
        if (master->scan_from >= count)
            master->scan_from = 0;
        const int64_t lack = lacks(master, master->scan_from);
        if (lack < most) {
            most = lack;
            in->column = master->scan_from;
        }
        master->scan_from++;
        master->steps += 4;
    }
    return most == none ? 0 : most;
}

/* Whether a in row i reaches nothing before b in row j. */
static int sooner(const struct msl_master *master, int32_t i, int32_t j)
{
    const int64_t a = master->level[i] < 0 ? 0 : master->level[i];
    const int64_t b = master->level[j] < 0 ? 0 : master->level[j];
    const int32_t order =
        msl_wide_compare(msl_wide_multiply(a, master->along[j]), msl_wide_multiply(b, master->along[i]));
    return order < 0 || (order == 0 && master->along[i] > master->along[j]);
}

/* Row of what goes: the first to reach nothing; -1: none does. */
static int32_t leaving(const struct msl_master *master)
{
    const int64_t small = (int64_t)1 << (master->point - SMALL_BITS);
    int32_t best = -1;
    for (int32_t i = 0; i < master->row_count; i++)
        if (master->along[i] >= small && (best < 0 || sooner(master, i, best)))
            best = i;
    return best;
}

static int move_levels(struct msl_master *master, int32_t out, int64_t part)
{
    uint64_t seen = 0;
    if (!msl_point_fits(master->level[out], part, master->point))
        return 0;
    const int64_t level = msl_point_times(master->level[out], part, master->point);
    for (int32_t i = 0; i < master->row_count; i++) {
        if (!msl_point_fits(level, master->along[i], master->point))
            return 0;
        master->level[i] -= msl_point_times(level, master->along[i], master->point);
        seen |= msl_point_magnitude(master->level[i]);
    }
    master->level[out] = level;
    return (seen | msl_point_magnitude(level)) >> LEVEL_BITS == 0;
}

/* After the pivot: what came in lacks nothing any more. */
static int move_worths(struct msl_master *master, int32_t at, int64_t lack)
{
    const int64_t *inverse = row_of(master, at);
    if (!msl_point_fits(lack, (int64_t)master->largest, master->point))
        return 0;
    for (int32_t r = 0; r < master->row_count; r++) {
        master->worth[r] += msl_point_times(lack, inverse[r], master->point);
        if (msl_point_magnitude(master->worth[r]) > (uint64_t)master->most_worth)
            return 0;
    }
    spread(master, 0);
    return 1;
}

/* Exchanges what is basic for what comes in. */
static int exchange(struct msl_master *master, struct msl_basic in, int64_t lack)
{
    if (!put_column(master, in))
        return 0;
    look_along(master);
    const int32_t out = leaving(master);
    if (out < 0)
        return 0;
    const int64_t part = msl_point_reciprocal(master->along[out], master->point);
    if (!move_levels(master, out, part) || !pivot(master, out, part))
        return 0;
    master->basis[out] = in;
    if (!move_worths(master, out, lack))
        return 0;
    return ++master->since < REFACTOR || renew(master);
}

static int improve(struct msl_master *master)
{
    int fresh = 1;
    if (!find_worths(master))
        return 0;
    for (int32_t left = 40 * master->row_count + 400; left > 0; left--) {
        struct msl_basic in;
        const int64_t lack = choose(master, &in);
        if (lack == 0 && fresh)
            return 1;
        if (lack == 0 ? !find_worths(master) : !exchange(master, in, lack))
            return 0;
        fresh = lack == 0;
    }
    return 0;
}

int msl_master_improve(struct msl_master *master)
{
    for (int32_t w = 0; w < master->cutting->way_count; w++)
        master->own_worths[w] = 0;
    for (int32_t r = master->cutting->size_count; r < master->row_count; r++)
        if (master->limits[r].kind == MSL_LIMIT_COPIES)
            master->own_worths[master->limits[r].first_way] = 1;
    /* what lost its precision or its range on the way may keep them from where it is */
    const int done = improve(master) || (msl_master_load(master) && improve(master));
    clean(master);
    spread(master, 1);
    return done;
}

int64_t msl_master_against(const struct msl_master *master)
{
    int64_t most = 0;
    for (int32_t i = 0; i < master->row_count; i++)
        if (master->basis[i].against && master->level[i] > most)
            most = master->level[i];
    return most;
}

int msl_master_levels(struct msl_master *master)
{
    const int found = find_levels(master, 0);
    for (int32_t i = 0; i < master->row_count; i++)
        if (master->level[i] < 0)
            master->level[i] = 0;
    return found;
}

/* ---- room ------------------------------------------------------------------------------------------------------- */

static int32_t bits_of(int64_t a)
{
    int32_t bits = 0;
    for (; a > 0; a >>= 1)
        bits++;
    return bits;
}

/* The point: sums of a column, and levels some times above what is wanted, are to stay in range. */
static int32_t point_for(const struct msl_cutting *cutting)
{
    const int32_t column = 62 - SPARE_BITS - bits_of(2 * msl_pieces_within(cutting) + MSL_LIMITS_MAX);
    int64_t wanted = 0;
    for (int32_t s = 0; s < cutting->size_count; s++)
        wanted += cutting->sizes[s].count;
    const int32_t level = LEVEL_BITS - 4 - bits_of(wanted);
    const int32_t point = column < level ? column : level;
    if (point > POINT_MOST)
        return POINT_MOST;
    return point > POINT_LEAST ? point : POINT_LEAST;
}

int msl_master_make(struct msl_master *master, const struct msl_cutting *cutting, struct msl_pool *pool,
                    const struct muslin_allocator *allocator)
{
    const uint64_t ways = (uint64_t)cutting->way_count;
    const uint64_t sizes = (uint64_t)cutting->size_count;
    const uint64_t rows = MSL_LIMITS_MAX;
    const int64_t most = ((int64_t)1 << 57) / msl_pieces_within(cutting);
    const int64_t above = (int64_t)1 << 53;
    const struct msl_master none = { .cutting = cutting, .pool = pool, .point = point_for(cutting),
                                     .most_worth = most < above ? most : above };
    struct msl_check check = msl_check_start(NULL);
    *master = none;
    master->limits = msl_scratch(&check, allocator, rows, sizeof *master->limits);
    master->basis = msl_scratch(&check, allocator, rows, sizeof *master->basis);
    master->level = msl_scratch(&check, allocator, rows, sizeof *master->level);
    master->worth = msl_scratch(&check, allocator, rows, sizeof *master->worth);
    master->way_fixed = msl_scratch(&check, allocator, ways, sizeof *master->way_fixed);
    master->way_worth = msl_scratch(&check, allocator, ways * sizes, sizeof *master->way_worth);
    master->inverse = msl_scratch(&check, allocator, rows * rows, sizeof *master->inverse);
    master->column = msl_scratch(&check, allocator, rows, sizeof *master->column);
    master->along = msl_scratch(&check, allocator, rows, sizeof *master->along);
    master->rough = msl_scratch(&check, allocator, rows, sizeof *master->rough);
    master->coming = msl_scratch(&check, allocator, rows, sizeof *master->coming);
    master->spots = msl_scratch(&check, allocator, rows, sizeof *master->spots);
    master->taken = msl_scratch(&check, allocator, rows, sizeof *master->taken);
    master->own_worths = msl_scratch(&check, allocator, ways, sizeof *master->own_worths);
    if (check.status == MUSLIN_OK)
        return 1;
    msl_master_free(master, allocator);
    return 0;
}

void msl_master_free(struct msl_master *master, const struct muslin_allocator *allocator)
{
    const uint64_t ways = (uint64_t)master->cutting->way_count;
    const uint64_t sizes = (uint64_t)master->cutting->size_count;
    const uint64_t rows = MSL_LIMITS_MAX;
    msl_scratch_free(allocator, master->limits, rows, sizeof *master->limits);
    msl_scratch_free(allocator, master->basis, rows, sizeof *master->basis);
    msl_scratch_free(allocator, master->level, rows, sizeof *master->level);
    msl_scratch_free(allocator, master->worth, rows, sizeof *master->worth);
    msl_scratch_free(allocator, master->way_fixed, ways, sizeof *master->way_fixed);
    msl_scratch_free(allocator, master->way_worth, ways * sizes, sizeof *master->way_worth);
    msl_scratch_free(allocator, master->inverse, rows * rows, sizeof *master->inverse);
    msl_scratch_free(allocator, master->column, rows, sizeof *master->column);
    msl_scratch_free(allocator, master->along, rows, sizeof *master->along);
    msl_scratch_free(allocator, master->rough, rows, sizeof *master->rough);
    msl_scratch_free(allocator, master->coming, rows, sizeof *master->coming);
    msl_scratch_free(allocator, master->spots, rows, sizeof *master->spots);
    msl_scratch_free(allocator, master->taken, rows, sizeof *master->taken);
    msl_scratch_free(allocator, master->own_worths, ways, sizeof *master->own_worths);
}
