/* stripset.c - what a strip set gives, and how many sets a wish or a bundle makes.
 *
 * SPDX-License-Identifier: MIT */
#include "muslin/stripset.h"

#include "inside.h"

/* ---- the yield of one set ---------------------------------------------------------------------------------------- */

/* Everything is compared in halves of a tick, so that (L - z) / 2 and 2 t stand on one scale:
 *     from both ends   2 (t + k a + r floor((k - 1) / m)) <= L - z
 *     from one end     2 (2 t + k a + r floor((k - 1) / m)) <= 2 L  */
struct cutting {
    muslin_len room;    /* doubled: L - z, or 2 L */
    muslin_len trims;   /* doubled: 2 t, or 4 t */
    muslin_len segment; /* a */
    muslin_len loss;    /* r */
    int64_t every;      /* m, 0 for never */
    int64_t ends;       /* 2 or 1 */
};

static struct cutting cutting_of(const struct muslin_yield_spec *in)
{
    int one_end = (in->flags & MUSLIN_YIELD_FROM_ONE_END) != 0;
    struct cutting cutting;
    cutting.room = one_end ? 2 * in->usable_length : in->usable_length - in->fold_clear;
    cutting.trims = one_end ? 4 * in->end_trim : 2 * in->end_trim;
    cutting.segment = in->segment_cut;
    cutting.loss = in->resquare_loss;
    cutting.every = in->resquare_every;
    cutting.ends = one_end ? 1 : 2;
    return cutting;
}

/*@ requires k >= 0 && every >= 0;
  @ assigns \nothing;
  @ ensures (k == 0 || every == 0) ==> \result == 0;
  @ ensures (k > 0 && every > 0) ==> \result == (k - 1) / every; */
static int64_t resquarings(int64_t k, int64_t every)
{
    if (k == 0 || every == 0)
        return 0;
    return (k - 1) / every;
}

/* What k segments from one end take, trims included, doubled. Grows with k. k is at most 2^30 + 1 here, a and r at most
 * 2^30, so it stays below 2^62 + 2^62. */
static muslin_len taken(const struct cutting *cutting, int64_t k)
{
    return cutting->trims + 2 * (k * cutting->segment + cutting->loss * resquarings(k, cutting->every));
}

/* The most segments from one end: k = 0 always fits, and more than room / 2 a never do. Found by halving. */
static int64_t most_from_one_end(const struct cutting *cutting)
{
    int64_t fits = 0;
    int64_t too_many = (cutting->room < 0 ? 0 : cutting->room / (2 * cutting->segment)) + 1;
    while (too_many - fits > 1) {
        int64_t middle = fits + (too_many - fits) / 2;
        if (taken(cutting, middle) <= cutting->room)
            fits = middle;
        else
            too_many = middle;
    }
    return fits;
}

/* The usable length at which k segments from one end just fit: from both ends taken + z, from one end half of it. */
static muslin_len length_for(const struct cutting *cutting, const struct muslin_yield_spec *in, int64_t k)
{
    muslin_len all = taken(cutting, k);
    return cutting->ends == 1 ? all / 2 : all + in->fold_clear;
}

static struct muslin_yield yield_of(const struct muslin_yield_spec *in)
{
    struct cutting cutting = cutting_of(in);
    struct muslin_yield result = { 0 };
    int64_t k = most_from_one_end(&cutting);
    result.segments = cutting.ends * k;
    result.per_end = k;
    result.resquarings = cutting.ends * resquarings(k, in->resquare_every);
    result.longer_for_more = length_for(&cutting, in, k + 1) - in->usable_length;
    result.left_over = in->usable_length;
    if (k == 0)
        return result;
    result.least_length = length_for(&cutting, in, k);
    result.shorter_by = in->usable_length - result.least_length;
    result.left_over = result.shorter_by + in->fold_clear;
    result.warnings = result.shorter_by == 0 ? MUSLIN_WARN_NO_SLACK : 0;
    return result;
}

muslin_status muslin_yield_spec_init(struct muslin_yield_spec *spec, uint32_t size)
{
    const struct muslin_yield_spec initial = MUSLIN_YIELD_SPEC_INIT;
    return msl_init_struct(spec, size, &initial, (uint32_t)sizeof initial, (uint32_t)sizeof initial);
}

muslin_status muslin_stripset_yield(const struct muslin_yield_spec *spec, struct muslin_yield *out,
                                    struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct muslin_yield_spec in;
    msl_read_struct(&check, MUSLIN_ARG_SPEC, &in, (uint32_t)sizeof in, (uint32_t)sizeof in, MUSLIN_YIELD_FROM_ONE_END,
                    spec);
    msl_want_output(&check, out, (uint32_t)sizeof *out);
    if (check.status != MUSLIN_OK)
        return check.status;
    msl_want_size(&check, MUSLIN_ARG_STRIP_LENGTH, in.usable_length);
    msl_want_some_size(&check, MUSLIN_ARG_SEGMENT_CUT, in.segment_cut);
    msl_want_size(&check, MUSLIN_ARG_END_TRIM, in.end_trim);
    msl_want_size(&check, MUSLIN_ARG_RESQUARE_LOSS, in.resquare_loss);
    msl_want_count(&check, MUSLIN_ARG_RESQUARE_EVERY, in.resquare_every);
    msl_want_between(&check, MUSLIN_ARG_FOLD_CLEAR, in.fold_clear, 0,
                     (in.flags & MUSLIN_YIELD_FROM_ONE_END) != 0 ? 0 : MUSLIN_SIZE_MAX);
    if (check.status != MUSLIN_OK)
        return check.status;
    struct muslin_yield result = yield_of(&in);
    msl_write_struct(out, &result, (uint32_t)sizeof result);
    return MUSLIN_OK;
}

muslin_status muslin_stripset_shortest(const muslin_len *lengths, size_t n, muslin_len *shortest, size_t *index,
                                       uint32_t *warnings, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    size_t least = 0;
    uint32_t mixed = 0;
    msl_want_pointer(&check, MUSLIN_ARG_STRIP_LENGTH, lengths);
    msl_want_pointer(&check, MUSLIN_ARG_OUTPUT, shortest);
    msl_want_between(&check, MUSLIN_ARG_STRIPS, n != 0, 1, 1);
    for (size_t i = 0; check.status == MUSLIN_OK && i < n; i++) {
        check.at = (int64_t)i;
        msl_want_size(&check, MUSLIN_ARG_STRIP_LENGTH, lengths[i]);
        mixed |= lengths[i] != lengths[0] ? (uint32_t)MUSLIN_WARN_MIXED_WIDTHS : 0;
        least = lengths[i] < lengths[least] ? i : least;
    }
    if (check.status != MUSLIN_OK)
        return check.status;
    *shortest = lengths[least];
    if (index != NULL)
        *index = least;
    if (warnings != NULL)
        *warnings = mixed;
    return MUSLIN_OK;
}

/* ---- from wishes to strips --------------------------------------------------------------------------------------- */

/* Up, for counts of 0 or more. Written so that no sum can pass 64 bits. */
static int64_t divide_up(int64_t a, int64_t b)
{
    return a / b + (a % b != 0 ? 1 : 0);
}

static struct muslin_need need_of(const struct muslin_need_spec *in)
{
    struct muslin_need result = { 0 };
    if (in->segments == 0)
        return result;
    result.sets = divide_up(in->segments, in->segments_per_set);
    result.strips = result.sets * in->strips_per_set;
    result.spare_segments = result.sets * in->segments_per_set - in->segments;
    if (in->strips_per_bundle == 0)
        return result;
    result.bundles = divide_up(result.strips, in->strips_per_bundle);
    result.spare_strips = result.bundles * in->strips_per_bundle - result.strips;
    return result;
}

muslin_status muslin_need_spec_init(struct muslin_need_spec *spec, uint32_t size)
{
    const struct muslin_need_spec initial = MUSLIN_NEED_SPEC_INIT;
    return msl_init_struct(spec, size, &initial, (uint32_t)sizeof initial, (uint32_t)sizeof initial);
}

muslin_status muslin_stripset_need(const struct muslin_need_spec *spec, struct muslin_need *out,
                                   struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct muslin_need_spec in;
    msl_read_struct(&check, MUSLIN_ARG_SPEC, &in, (uint32_t)sizeof in, (uint32_t)sizeof in, 0, spec);
    msl_want_output(&check, out, (uint32_t)sizeof *out);
    if (check.status != MUSLIN_OK)
        return check.status;
    msl_want_count(&check, MUSLIN_ARG_SEGMENTS, in.segments);
    msl_want_count(&check, MUSLIN_ARG_SEGMENTS_PER_SET, in.segments_per_set);
    msl_want_some_count(&check, MUSLIN_ARG_STRIPS_PER_SET, in.strips_per_set);
    msl_want_count(&check, MUSLIN_ARG_STRIPS_PER_BUNDLE, in.strips_per_bundle);
    msl_want_size(&check, MUSLIN_ARG_STRIP_CUT, in.strip_cut);
    if (check.status == MUSLIN_OK && in.segments != 0 && in.segments_per_set == 0)
        msl_fail(&check, MUSLIN_ERR_NO_YIELD, MUSLIN_ARG_SEGMENTS_PER_SET, 0, 1);
    if (check.status != MUSLIN_OK)
        return check.status;
    struct muslin_need result = need_of(&in);
    if (muslin_length_multiply(in.strip_cut, result.strips, &result.cloth_length) != MUSLIN_OK)
        return msl_fail(&check, MUSLIN_ERR_OVERFLOW, MUSLIN_ARG_STRIPS, result.strips, 0);
    msl_write_struct(out, &result, (uint32_t)sizeof result);
    return MUSLIN_OK;
}

/* ---- from a bundle to wishes ------------------------------------------------------------------------------------- */

/* Products of two counts stay below 2^62, and so does all that is smaller than one of them. */
static struct muslin_harvest harvest_of(const struct muslin_harvest_spec *in)
{
    struct muslin_harvest result = { 0 };
    result.sets = in->strips / in->strips_per_set;
    result.segments = result.sets * in->segments_per_set;
    result.blocks = result.segments / in->segments_per_block;
    result.tops = result.blocks / in->blocks_per_top;
    int64_t blocks_used = result.tops * in->blocks_per_top;
    int64_t segments_used = blocks_used * in->segments_per_block;
    result.sets_used = segments_used == 0 ? 0 : divide_up(segments_used, in->segments_per_set);
    result.strips_used = result.sets_used * in->strips_per_set;
    result.strips_left = in->strips - result.strips_used;
    result.segments_left = result.sets_used * in->segments_per_set - segments_used;
    result.blocks_left = result.blocks - blocks_used;
    return result;
}

/* Strips missing for one more top than `tops`; 0 when a set gives nothing, so that no number of strips will do. */
static muslin_status strips_for_one_more(const struct muslin_harvest_spec *in, int64_t tops, int64_t *out)
{
    int64_t per_top = in->blocks_per_top * in->segments_per_block;
    int64_t strips;
    if (in->segments_per_set == 0) {
        *out = 0;
        return MUSLIN_OK;
    }
    int64_t sets = divide_up(tops * per_top + per_top, in->segments_per_set);
    muslin_status status = muslin_length_multiply(in->strips_per_set, sets, &strips);
    if (status == MUSLIN_OK)
        *out = strips - in->strips;
    return status;
}

muslin_status muslin_harvest_spec_init(struct muslin_harvest_spec *spec, uint32_t size)
{
    const struct muslin_harvest_spec initial = MUSLIN_HARVEST_SPEC_INIT;
    return msl_init_struct(spec, size, &initial, (uint32_t)sizeof initial, (uint32_t)sizeof initial);
}

muslin_status muslin_stripset_harvest(const struct muslin_harvest_spec *spec, struct muslin_harvest *out,
                                      struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct muslin_harvest_spec in;
    msl_read_struct(&check, MUSLIN_ARG_SPEC, &in, (uint32_t)sizeof in, (uint32_t)sizeof in, 0, spec);
    msl_want_output(&check, out, (uint32_t)sizeof *out);
    if (check.status != MUSLIN_OK)
        return check.status;
    msl_want_count(&check, MUSLIN_ARG_STRIPS, in.strips);
    msl_want_some_count(&check, MUSLIN_ARG_STRIPS_PER_SET, in.strips_per_set);
    msl_want_count(&check, MUSLIN_ARG_SEGMENTS_PER_SET, in.segments_per_set);
    msl_want_some_count(&check, MUSLIN_ARG_SEGMENTS_PER_BLOCK, in.segments_per_block);
    msl_want_some_count(&check, MUSLIN_ARG_BLOCKS, in.blocks_per_top);
    if (check.status != MUSLIN_OK)
        return check.status;
    struct muslin_harvest result = harvest_of(&in);
    if (strips_for_one_more(&in, result.tops, &result.strips_for_one_more) != MUSLIN_OK)
        return msl_fail(&check, MUSLIN_ERR_OVERFLOW, MUSLIN_ARG_BLOCKS, in.blocks_per_top, 0);
    msl_write_struct(out, &result, (uint32_t)sizeof result);
    return MUSLIN_OK;
}

/* ---- sets with different prints ---------------------------------------------------------------------------------- */

/* A caller's row, through its stride. */
static void *row_at(void *rows, size_t row_size, size_t index)
{
    return (unsigned char *)rows + index * row_size;
}

static struct muslin_print_row read_print(struct msl_check *check, void *rows, size_t row_size, size_t index)
{
    struct muslin_print_row row = { 0 };
    check->at = (int64_t)index;
    msl_read_struct(check, MUSLIN_ARG_ROWS, &row, (uint32_t)sizeof row, (uint32_t)sizeof row, 0,
                    row_at(rows, row_size, index));
    return row;
}

/* The sets that each print allows; the scarcest decides. -1 when no row asks for a strip. */
static int64_t sets_of_prints(struct msl_check *check, void *rows, size_t row_size, size_t n, size_t *scarcest)
{
    int64_t sets = -1;
    for (size_t i = 0; i < n && check->status == MUSLIN_OK; i++) {
        struct muslin_print_row row = read_print(check, rows, row_size, i);
        msl_want_count(check, MUSLIN_ARG_IN_HAND, row.in_hand);
        msl_want_count(check, MUSLIN_ARG_PER_SET, row.per_set);
        if (check->status != MUSLIN_OK || row.per_set == 0)
            continue;
        int64_t allowed = row.in_hand / row.per_set;
        if (sets >= 0 && sets <= allowed)
            continue;
        sets = allowed;
        *scarcest = i;
    }
    return sets;
}

static void write_left(struct msl_check *check, void *rows, size_t row_size, size_t n, int64_t sets)
{
    for (size_t i = 0; i < n; i++) {
        struct muslin_print_row row = read_print(check, rows, row_size, i);
        row.left = row.in_hand - sets * row.per_set;
        msl_write_struct(row_at(rows, row_size, i), &row, (uint32_t)sizeof row);
    }
}

muslin_status muslin_stripset_prints(struct muslin_print_row *rows, size_t row_size, size_t n, int64_t sets_wanted,
                                     int64_t *sets, size_t *scarcest, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    size_t least = 0;
    msl_want_pointer(&check, MUSLIN_ARG_ROWS, rows);
    msl_want_pointer(&check, MUSLIN_ARG_OUTPUT, sets);
    msl_want_count(&check, MUSLIN_ARG_STRIPS, sets_wanted);
    if (check.status == MUSLIN_OK && row_size < sizeof *rows)
        msl_fail(&check, MUSLIN_ERR_STRUCT_SIZE, MUSLIN_ARG_ROW_SIZE, (int64_t)row_size, (int64_t)sizeof *rows);
    if (check.status != MUSLIN_OK)
        return check.status;
    int64_t allowed = sets_of_prints(&check, rows, row_size, n, &least);
    msl_want_between(&check, MUSLIN_ARG_PER_SET, allowed < 0 ? 0 : 1, 1, 1);
    if (check.status != MUSLIN_OK)
        return check.status;
    *sets = sets_wanted > 0 ? sets_wanted : allowed;
    if (scarcest != NULL)
        *scarcest = least;
    write_left(&check, rows, row_size, n, *sets);
    return MUSLIN_OK;
}
