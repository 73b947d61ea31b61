/* fit.c - settings of blocks that come out at a wanted size.
 *
 * SPDX-License-Identifier: MIT
 *
 * Kind, block, sash and border are tried one combination after the other; the columns and rows that come out within
 * the tolerances follow from each by division, or on point by a root. Sizes that are compared are at most 2^30 ticks,
 * so their squares and doubled squares fit 64 bits. */
#include "muslin/fit.h"

#include "fit_inside.h"
#include "root.h"
#include "surd.h"

#define ALL_KINDS \
    (MUSLIN_FIT_ALLOW_STRAIGHT | MUSLIN_FIT_ALLOW_SASHED | MUSLIN_FIT_ALLOW_FRAMED | MUSLIN_FIT_ALLOW_ON_POINT)
#define WITH_SASHES (MUSLIN_FIT_ALLOW_SASHED | MUSLIN_FIT_ALLOW_FRAMED)

muslin_status muslin_fit_spec_init(struct muslin_fit_spec *spec, uint32_t size)
{
    const struct muslin_fit_spec initial = MUSLIN_FIT_SPEC_INIT;
    return msl_init_struct(spec, size, &initial, (uint32_t)sizeof initial, (uint32_t)sizeof initial);
}

/* ---- the request ------------------------------------------------------------------------------------------------- */

/* Members that share a name are told apart by their place: 0 for the least, 1 for the most; the steps by `which`. */
static void want_steps(struct msl_check *check, int32_t argument, int64_t which, muslin_len lowest, muslin_len least,
                       muslin_len most, muslin_len step)
{
    msl_want_between(check, argument, least, lowest, MUSLIN_SIZE_MAX);
    check->at = 1;
    msl_want_between(check, argument, most, least, MUSLIN_SIZE_MAX);
    check->at = which;
    msl_want_some_size(check, MUSLIN_ARG_GRID, step);
    check->at = 0;
}

static void want_counts(struct msl_check *check, int32_t argument, int64_t least, int64_t most)
{
    msl_want_some_count(check, argument, least);
    check->at = 1;
    msl_want_between(check, argument, most, least, MUSLIN_COUNT_MAX);
    check->at = 0;
}

static void want_tolerances(struct msl_check *check, const struct muslin_fit_spec *spec)
{
    const muslin_len tolerances[] = { spec->width_under, spec->width_over, spec->length_under, spec->length_over };
    for (int64_t i = 0; i < 4; i++) {
        check->at = i;
        msl_want_size(check, MUSLIN_ARG_TOLERANCE, tolerances[i]);
    }
    check->at = 0;
}

static void want_choices(struct msl_check *check, const struct muslin_fit_spec *spec)
{
    msl_want_count(check, MUSLIN_ARG_BEST, spec->best);
    msl_want_some_count(check, MUSLIN_ARG_WORK_LIMIT, spec->work_limit);
    msl_want_choice(check, MUSLIN_ARG_RANK, spec->rank, MUSLIN_FIT_RANK_NEAREST, MUSLIN_FIT_RANK_LARGEST_BLOCK);
    msl_want_choice(check, MUSLIN_ARG_PARITY, spec->columns_parity, MUSLIN_PARITY_ANY, MUSLIN_PARITY_ODD);
    check->at = 1;
    msl_want_choice(check, MUSLIN_ARG_PARITY, spec->rows_parity, MUSLIN_PARITY_ANY, MUSLIN_PARITY_ODD);
    check->at = 0;
    msl_want_pad(check, spec->pad);
    if (check->status == MUSLIN_OK && (spec->flags & ALL_KINDS) == 0)
        msl_fail(check, MUSLIN_ERR_CHOICE, MUSLIN_ARG_SETTING_KIND, 0, ALL_KINDS);
}

static int64_t kinds_among(uint32_t flags)
{
    int64_t kinds = 0;
    for (; flags != 0; flags >>= 1)
        kinds += flags & 1;
    return kinds;
}

static int64_t sizes_of(muslin_len least, muslin_len most, muslin_len step)
{
    return (most - least) / step + 1;
}

/* Combinations of kind, block, sash and border: below 2^62 without borders; INT64_MAX stands for all beyond it. */
static void want_work(struct msl_check *check, const struct muslin_fit_spec *spec)
{
    if (check->status != MUSLIN_OK)
        return;
    int64_t sashed = kinds_among(spec->flags & WITH_SASHES);
    int64_t plain = kinds_among(spec->flags & ~WITH_SASHES);
    int64_t borders = sizes_of(spec->border_least, spec->border_most, spec->border_step);
    int64_t sashes = sashed != 0 ? sizes_of(spec->sash_least, spec->sash_most, spec->sash_step) : 0;
    int64_t without = sizes_of(spec->block_least, spec->block_most, spec->block_step) * (plain + sashed * sashes);
    int64_t work = without > INT64_MAX / borders ? INT64_MAX : without * borders;
    if (work > spec->work_limit)
        msl_fail(check, MUSLIN_ERR_WORK_LIMIT, MUSLIN_ARG_WORK_LIMIT, work, spec->work_limit);
}

static void read_fit(struct msl_check *check, struct muslin_fit_spec *spec, const struct muslin_fit_spec *from)
{
    msl_read_struct(check, MUSLIN_ARG_SPEC, spec, (uint32_t)sizeof *spec, (uint32_t)sizeof *spec, ALL_KINDS, from);
    msl_want_some_size(check, MUSLIN_ARG_QUILT_WIDTH, spec->wanted_width);
    msl_want_some_size(check, MUSLIN_ARG_QUILT_LENGTH, spec->wanted_length);
    want_tolerances(check, spec);
    want_steps(check, MUSLIN_ARG_BLOCK_WIDTH, 0, 1, spec->block_least, spec->block_most, spec->block_step);
    if ((spec->flags & WITH_SASHES) != 0)
        want_steps(check, MUSLIN_ARG_SASH_WIDTH, 1, 1, spec->sash_least, spec->sash_most, spec->sash_step);
    want_steps(check, MUSLIN_ARG_BORDER_WIDTH, 2, 0, spec->border_least, spec->border_most, spec->border_step);
    want_counts(check, MUSLIN_ARG_COLUMNS, spec->columns_least, spec->columns_most);
    want_counts(check, MUSLIN_ARG_QUILT_ROWS, spec->rows_least, spec->rows_most);
    want_choices(check, spec);
    want_work(check, spec);
}

/* ---- combinations, one after the other --------------------------------------------------------------------------- */

struct combination {
    int32_t kind;
    muslin_len block;
    muslin_len sash; /* 0 where the kind has none */
    muslin_len border;
};

static int has_sash(int32_t kind)
{
    return kind == MUSLIN_FIT_SASHED || kind == MUSLIN_FIT_FRAMED;
}

/* The first combination of the next kind allowed, from `kind` on; 0 when there is no further kind. */
static int start_kind(struct combination *c, const struct muslin_fit_spec *spec, int32_t kind)
{
    while (kind <= MUSLIN_FIT_ON_POINT && (spec->flags >> (kind - 1) & 1) == 0)
        kind++;
    c->kind = kind;
    c->block = spec->block_least;
    c->sash = has_sash(kind) ? spec->sash_least : 0;
    c->border = spec->border_least;
    return kind <= MUSLIN_FIT_ON_POINT;
}

/* The next size, or the least again and 0. */
static int step_up(muslin_len *size, muslin_len least, muslin_len most, muslin_len step)
{
    int more = step <= most - *size;
    *size = more ? *size + step : least;
    return more;
}

/* Borders change fastest, kinds last; 0 after the last combination. */
static int next_combination(struct combination *c, const struct muslin_fit_spec *spec)
{
    return step_up(&c->border, spec->border_least, spec->border_most, spec->border_step) ||
           (has_sash(c->kind) && step_up(&c->sash, spec->sash_least, spec->sash_most, spec->sash_step)) ||
           step_up(&c->block, spec->block_least, spec->block_most, spec->block_step) ||
           start_kind(c, spec, c->kind + 1);
}

/* ---- counts that come out right ---------------------------------------------------------------------------------- */

/* One way across the quilt: width and columns, or length and rows. */
struct way {
    muslin_len wanted;
    muslin_len under;
    muslin_len over;
    int64_t least;
    int64_t most;
    int32_t parity;
};

static struct way across(const struct muslin_fit_spec *spec)
{
    struct way way = { spec->wanted_width, spec->width_under,  spec->width_over,
                       spec->columns_least, spec->columns_most, spec->columns_parity };
    return way;
}

static struct way down(const struct muslin_fit_spec *spec)
{
    struct way way = { spec->wanted_length, spec->length_under, spec->length_over,
                       spec->rows_least,    spec->rows_most,    spec->rows_parity };
    return way;
}

/* Sashes beyond one a block, in ticks: sashed settings have one less, framed ones one more. */
static muslin_len odd_sash(const struct combination *c)
{
    switch (c->kind) {
    case MUSLIN_FIT_SASHED:
        return -c->sash;
    case MUSLIN_FIT_FRAMED:
        return c->sash;
    default:
        return 0;
    }
}

/* The most blocks whose size is at most `size` (up to 2^30), 0 if not even one's is. On point n B sqrt 2 <= w says
 * that n^2 is at most w^2 over 2 B^2. */
static int64_t most_within(const struct combination *c, muslin_len size)
{
    muslin_len inner = size - 2 * c->border - odd_sash(c);
    if (inner <= 0)
        return 0;
    if (c->kind == MUSLIN_FIT_ON_POINT)
        return (int64_t)msl_root((uint64_t)(inner * inner) / (uint64_t)(2 * c->block * c->block), NULL);
    return inner / (c->block + c->sash);
}

/* The most blocks whose size is below `size`; on point none ever is a whole number of ticks. */
static int64_t most_below(const struct combination *c, muslin_len size)
{
    return most_within(c, c->kind == MUSLIN_FIT_ON_POINT ? size : size - 1);
}

/* Size of so many blocks, on point to the nearest tick. */
static muslin_len size_of(const struct combination *c, int64_t blocks)
{
    muslin_len beside = 2 * c->border + odd_sash(c);
    if (c->kind != MUSLIN_FIT_ON_POINT)
        return blocks * (c->block + c->sash) + beside;
    struct msl_surd surd = msl_surd_of(beside, blocks * c->block, 2, 1);
    struct msl_exact exact = msl_surd_exact(&surd);
    return exact.floor + exact.upper_half;
}

/* From least to most in steps; none when most is below least. */
struct counts {
    int64_t least;
    int64_t most;
    int64_t step;
};

static struct counts counts_between(int64_t least, int64_t most, int32_t parity)
{
    struct counts counts = { least, most, 1 };
    int64_t rest = parity == MUSLIN_PARITY_ODD;
    if (parity == MUSLIN_PARITY_ANY)
        return counts;
    counts.least += counts.least % 2 != rest;
    counts.most -= counts.most % 2 != rest;
    counts.step = 2;
    return counts;
}

/* The counts that come out within the tolerances. */
static struct counts counts_fitting(const struct combination *c, const struct way *way)
{
    int64_t least = most_below(c, way->wanted - way->under) + 1;
    int64_t most = most_within(c, msl_lesser(way->wanted + way->over, MUSLIN_SIZE_MAX));
    return counts_between(msl_greater(least, way->least), msl_lesser(most, way->most), way->parity);
}

static int64_t number_of(struct counts counts)
{
    return counts.most < counts.least ? 0 : (counts.most - counts.least) / counts.step + 1;
}

static muslin_len off_by(const struct combination *c, const struct way *way, int64_t blocks)
{
    muslin_len off = size_of(c, blocks) - way->wanted;
    return off < 0 ? -off : off;
}

/* The count that comes out nearest, the lower of two; 0 when there is none. Sizes grow with their counts, so it is the
 * last one not above the wanted size or the one after it. */
static int64_t nearest_count(const struct combination *c, const struct way *way)
{
    int64_t most = msl_lesser(most_within(c, MUSLIN_SIZE_MAX), way->most);
    struct counts counts = counts_between(way->least, most, way->parity);
    int64_t low = most_within(c, way->wanted);
    if (counts.most < counts.least)
        return 0;
    if (low < counts.least)
        return counts.least;
    if (low >= counts.most)
        return counts.most;
    low -= (low - counts.least) % counts.step;
    return off_by(c, way, low + counts.step) < off_by(c, way, low) ? low + counts.step : low;
}

/* ---- a setting and its rank -------------------------------------------------------------------------------------- */

static int64_t rank_key_of(const struct muslin_fit *fit, int32_t rank)
{
    switch (rank) {
    case MUSLIN_FIT_RANK_FEWEST_BLOCKS:
        return fit->blocks + fit->alternates;
    case MUSLIN_FIT_RANK_LARGEST_BLOCK:
        return -fit->block;
    default:
        return msl_fit_off(fit);
    }
}

static struct muslin_fit fit_of(const struct muslin_fit_spec *spec, const struct combination *c, int64_t columns,
                                int64_t rows, int32_t rank)
{
    struct muslin_fit fit = { 0 };
    fit.kind = c->kind;
    fit.columns = columns;
    fit.rows = rows;
    fit.block = c->block;
    fit.sash = c->sash;
    fit.border = c->border;
    fit.finished_width = size_of(c, columns);
    fit.finished_length = size_of(c, rows);
    fit.off_width = fit.finished_width - spec->wanted_width;
    fit.off_length = fit.finished_length - spec->wanted_length;
    fit.exact = c->kind != MUSLIN_FIT_ON_POINT && msl_fit_off(&fit) == 0;
    fit.blocks = columns * rows;
    fit.alternates = c->kind == MUSLIN_FIT_ON_POINT ? (columns - 1) * (rows - 1) : 0;
    fit.rank_key = rank_key_of(&fit, rank);
    return fit;
}

/* ---- all settings ------------------------------------------------------------------------------------------------ */

/* Each way's counts are below 2^31, so what one combination adds fits. */
static int64_t count_settings(struct msl_check *check, const struct muslin_fit_spec *spec)
{
    struct combination c;
    const struct way ways[2] = { across(spec), down(spec) };
    int64_t found = 0;
    if (check->status != MUSLIN_OK)
        return 0;
    int more = start_kind(&c, spec, MUSLIN_FIT_STRAIGHT);
    for (; more && found <= spec->work_limit; more = next_combination(&c, spec))
        found += number_of(counts_fitting(&c, &ways[0])) * number_of(counts_fitting(&c, &ways[1]));
    if (found > spec->work_limit) {
        check->at = 1;
        msl_fail(check, MUSLIN_ERR_WORK_LIMIT, MUSLIN_ARG_WORK_LIMIT, found, spec->work_limit);
    }
    return spec->best > 0 ? msl_lesser(found, spec->best) : found;
}

static void offer_settings(struct msl_fit_heap *heap, const struct muslin_fit_spec *spec, const struct combination *c)
{
    const struct way ways[2] = { across(spec), down(spec) };
    struct counts columns = counts_fitting(c, &ways[0]);
    struct counts rows = counts_fitting(c, &ways[1]);
    for (int64_t column = columns.least; column <= columns.most; column += columns.step)
        for (int64_t row = rows.least; row <= rows.most; row += rows.step) {
            struct muslin_fit fit = fit_of(spec, c, column, row, spec->rank);
            msl_fit_offer(heap, &fit);
        }
}

muslin_status muslin_fit_settings(const struct muslin_fit_spec *spec, struct muslin_fit *rows, size_t row_size,
                                  size_t capacity, size_t *count, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct muslin_fit_spec s = { 0 };
    struct combination c;
    read_fit(&check, &s, spec);
    size_t needed = (size_t)count_settings(&check, &s);
    if (!msl_rows_wanted(&check, rows, row_size, (uint32_t)sizeof *rows, capacity, count, needed))
        return check.status;
    struct msl_fit_heap heap = { rows, row_size, 0, needed };
    for (int more = start_kind(&c, &s, MUSLIN_FIT_STRAIGHT); more && needed > 0; more = next_combination(&c, &s))
        offer_settings(&heap, &s, &c);
    msl_fit_order(&heap);
    return MUSLIN_OK;
}

/* ---- the nearest setting ----------------------------------------------------------------------------------------- */

muslin_status muslin_fit_nearest(const struct muslin_fit_spec *spec, struct muslin_fit *out,
                                 struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct muslin_fit_spec s = { 0 };
    struct muslin_fit best = { 0 };
    struct combination c;
    read_fit(&check, &s, spec);
    msl_want_output(&check, out, (uint32_t)sizeof *out);
    if (check.status != MUSLIN_OK)
        return check.status;
    const struct way ways[2] = { across(&s), down(&s) };
    for (int more = start_kind(&c, &s, MUSLIN_FIT_STRAIGHT); more; more = next_combination(&c, &s)) {
        int64_t columns = nearest_count(&c, &ways[0]);
        int64_t rows = nearest_count(&c, &ways[1]);
        if (columns == 0 || rows == 0)
            continue;
        struct muslin_fit fit = fit_of(&s, &c, columns, rows, MUSLIN_FIT_RANK_NEAREST);
        if (best.blocks == 0 || msl_fit_before(&fit, &best))
            best = fit;
    }
    if (best.blocks == 0)
        return msl_fail(&check, MUSLIN_ERR_NO_FIT, MUSLIN_ARG_COLUMNS, s.columns_most, 0);
    msl_write_struct(out, &best, (uint32_t)sizeof best);
    return MUSLIN_OK;
}
