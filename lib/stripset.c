/* stripset.c - what one strip set gives, and the way from wishes to strips and from strips to wishes.
 *
 * SPDX-License-Identifier: MIT
 *
 * After the checks a size is at most 2^30 and a count below 2^31, so a product of two of them fits 64 bits. */
#include "muslin/stripset.h"

#include "inside.h"

#include <stddef.h>

/* Bytes of the outputs that callers of 1.0 know. */
enum { YIELD_LEAST = offsetof(struct muslin_yield, from_one_end) };

/* ---- the yield of one set ---------------------------------------------------------------------------------------- */

muslin_status muslin_yield_spec_init(struct muslin_yield_spec *spec, uint32_t size)
{
    const struct muslin_yield_spec initial = MUSLIN_YIELD_SPEC_INIT;
    return msl_init_struct(spec, size, &initial, (uint32_t)sizeof initial, (uint32_t)sizeof initial);
}

/* Times the edge is squared again among `cuts` from one end: none after the last, and never when `every` is 0. */
/*@ requires 0 <= cuts <= 1073741825 && 0 <= every <= 2147483647;
    assigns \nothing;
    ensures cuts == 0 || every == 0 ==> \result == 0;
    ensures cuts > 0 && every > 0 ==> \result == (cuts - 1) / every; */
static int64_t resquarings(int64_t cuts, int64_t every)
{
    return cuts == 0 || every == 0 ? 0 : (cuts - 1) / every;
}

/* What `cuts` from one end use up: k a + r floor((k - 1) / m). */
/*@ requires 0 <= cuts <= 1073741825 && 1 <= segment <= 1073741824;
    requires 0 <= loss <= 1073741824 && 0 <= every <= 2147483647;
    assigns \nothing;
    ensures \result == cuts * segment + (cuts == 0 || every == 0 ? 0 : (cuts - 1) / every) * loss; */
static muslin_len used_by(int64_t cuts, muslin_len segment, muslin_len loss, int64_t every)
{
    return cuts * segment + resquarings(cuts, every) * loss;
}

/* The greatest k whose cuts use up no more than `room`. m segments and one squaring make a round of m a + r; the first
 * cut, made before any round is full, is set aside, so that a squaring counts only with a segment behind it. */
/*@ requires room <= 1073741824 && 1 <= segment <= 1073741824;
    requires 0 <= loss <= 1073741824 && 0 <= every <= 2147483647;
    assigns \nothing;
    ensures 0 <= \result <= 1073741824;
    ensures \result > 0 ==> \result * segment + (every == 0 ? 0 : (\result - 1) / every) * loss <= room;
    ensures (\result + 1) * segment + (every == 0 ? 0 : \result / every) * loss > room; */
static int64_t most_cuts(muslin_len room, muslin_len segment, muslin_len loss, int64_t every)
{
    if (room < segment)
        return 0;
    muslin_len beyond_first = room - segment;
    if (every == 0)
        return 1 + beyond_first / segment;
    muslin_len round = every * segment + loss;
    int64_t rounds = beyond_first / round;
    int64_t fit = beyond_first % round / segment;
    /*@ assert every <= round && rounds * every <= rounds * round <= beyond_first < rounds * round + round; */
    /*@ assert rounds * round == rounds * every * segment + rounds * loss; */
    /*@ assert fit * segment <= beyond_first - rounds * round < fit * segment + segment; */
    if (fit < every - 1) {
        /*@ assert goes(rounds, every, rounds * every + fit) && goes(rounds, every, rounds * every + fit + 1); */
        /*@ assert (rounds * every + fit + 1) * segment + rounds * loss <= room; */
        /*@ assert (rounds * every + fit + 2) * segment + rounds * loss > room; */
        /*@ assert (rounds * every + fit) / every == rounds && (rounds * every + fit + 1) / every == rounds; */
        return rounds * every + fit + 1;
    }
    /*@ assert at_most(every, fit + 1, segment) && at_most(1, segment, (rounds + 1) * every); */
    /*@ assert goes(rounds, every, (rounds + 1) * every - 1) && goes(rounds + 1, every, (rounds + 1) * every); */
    /*@ assert (rounds + 1) * every <= (rounds + 1) * every * segment; */
    /*@ assert (rounds + 1) * every * segment + rounds * loss <= room; */
    /*@ assert ((rounds + 1) * every + 1) * segment + (rounds + 1) * loss > room; */
    /*@ assert ((rounds + 1) * every - 1) / every == rounds && (rounds + 1) * every / every == rounds + 1; */
    return (rounds + 1) * every;
}

static void read_yield(struct msl_check *check, struct muslin_yield_spec *spec, const struct muslin_yield_spec *from)
{
    msl_read_struct(check, MUSLIN_ARG_SPEC, spec, (uint32_t)sizeof *spec, (uint32_t)sizeof *spec,
                    MUSLIN_YIELD_FROM_ONE_END, from);
    msl_want_size(check, MUSLIN_ARG_STRIP_LENGTH, spec->strip_length);
    msl_want_some_size(check, MUSLIN_ARG_SEGMENT_CUT, spec->segment_cut);
    msl_want_size(check, MUSLIN_ARG_END_TRIM, spec->end_trim);
    msl_want_size(check, MUSLIN_ARG_RESQUARE_LOSS, spec->resquare_loss);
    msl_want_count(check, MUSLIN_ARG_RESQUARE_EVERY, spec->resquare_every);
    msl_want_between(check, MUSLIN_ARG_FOLD_CLEAR, spec->fold_clear, 0,
                     spec->flags & MUSLIN_YIELD_FROM_ONE_END ? 0 : MUSLIN_SIZE_MAX);
}

/* One set as it is cut: alike from each of `ends` ends. */
struct cutting {
    const struct muslin_yield_spec *spec;
    int64_t ends;
};

/* What the trims and `cuts` from each end use up. */
static muslin_len used_in_all(const struct cutting *cutting, int64_t cuts)
{
    const struct muslin_yield_spec *s = cutting->spec;
    return 2 * s->end_trim + cutting->ends * used_by(cuts, s->segment_cut, s->resquare_loss, s->resquare_every);
}

/* k whole cuts from each end fit twice into an odd rest when they fit twice into one tick less, so nothing is lost by
 * halving. A rest below zero gives no cut, whichever way it is halved. */
static int64_t cuts_from_each_end(const struct cutting *cutting)
{
    const struct muslin_yield_spec *s = cutting->spec;
    muslin_len room = s->strip_length - s->fold_clear - 2 * s->end_trim;
    return most_cuts(room / cutting->ends, s->segment_cut, s->resquare_loss, s->resquare_every);
}

/* The set cut from one end to the other. */
static int64_t straight_through(const struct muslin_yield_spec *s)
{
    return most_cuts(s->strip_length - 2 * s->end_trim, s->segment_cut, s->resquare_loss, s->resquare_every);
}

static struct muslin_yield yield_of(const struct cutting *cutting)
{
    const struct muslin_yield_spec *s = cutting->spec;
    int64_t cuts = cuts_from_each_end(cutting);
    muslin_len least = s->fold_clear + used_in_all(cutting, cuts);
    muslin_len left = s->strip_length - used_in_all(cutting, cuts);
    struct muslin_yield yield = { 0 };
    yield.per_end = cuts;
    yield.segments = cutting->ends * cuts;
    yield.from_one_end = straight_through(s);
    yield.resquarings = cutting->ends * resquarings(cuts, s->resquare_every);
    yield.left_over = msl_greater(left, 0);
    yield.longer_for_more = s->fold_clear + used_in_all(cutting, cuts + 1) - s->strip_length;
    if (cuts == 0)
        return yield;
    yield.least_length = least;
    yield.shorter_by = s->strip_length - least;
    yield.warnings = yield.shorter_by == 0 ? MUSLIN_WARN_NO_SLACK : 0;
    return yield;
}

muslin_status muslin_stripset_yield(const struct muslin_yield_spec *spec, struct muslin_yield *out,
                                    struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct muslin_yield_spec s = { 0 };
    read_yield(&check, &s, spec);
    msl_want_output(&check, out, YIELD_LEAST);
    if (check.status != MUSLIN_OK)
        return check.status;
    struct cutting cutting = { &s, s.flags & MUSLIN_YIELD_FROM_ONE_END ? 1 : 2 };
    struct muslin_yield yield = yield_of(&cutting);
    msl_write_struct(out, &yield, (uint32_t)sizeof yield);
    return MUSLIN_OK;
}

/* ---- strips of unequal length ------------------------------------------------------------------------------------ */

static void want_lengths(struct msl_check *check, const muslin_len *lengths, size_t n)
{
    if (n == 0)
        msl_fail(check, MUSLIN_ERR_RANGE, MUSLIN_ARG_STRIPS, 0, 1);
    msl_want_pointer(check, MUSLIN_ARG_STRIP_LENGTH, lengths);
    for (size_t i = 0; i < n && check->status == MUSLIN_OK; i++) {
        check->at = (int64_t)i;
        msl_want_size(check, MUSLIN_ARG_STRIP_LENGTH, lengths[i]);
    }
    check->at = 0;
}

muslin_status muslin_stripset_shortest(const muslin_len *lengths, size_t n, muslin_len *shortest, size_t *index,
                                       uint32_t *warnings, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    want_lengths(&check, lengths, n);
    msl_want_pointer(&check, MUSLIN_ARG_OUTPUT, shortest);
    if (check.status != MUSLIN_OK)
        return check.status;
    size_t found = 0;
    uint32_t warned = 0;
    for (size_t i = 1; i < n; i++) {
        if (lengths[i] != lengths[found])
            warned = MUSLIN_WARN_MIXED_WIDTHS;
        if (lengths[i] < lengths[found])
            found = i;
    }
    *shortest = lengths[found];
    if (index != NULL)
        *index = found;
    if (warnings != NULL)
        *warnings = warned;
    return MUSLIN_OK;
}

/* ---- from wishes to strips --------------------------------------------------------------------------------------- */

muslin_status muslin_need_spec_init(struct muslin_need_spec *spec, uint32_t size)
{
    const struct muslin_need_spec initial = MUSLIN_NEED_SPEC_INIT;
    return msl_init_struct(spec, size, &initial, (uint32_t)sizeof initial, (uint32_t)sizeof initial);
}

static void read_need(struct msl_check *check, struct muslin_need_spec *spec, const struct muslin_need_spec *from)
{
    msl_read_struct(check, MUSLIN_ARG_SPEC, spec, (uint32_t)sizeof *spec, (uint32_t)sizeof *spec, 0, from);
    msl_want_count(check, MUSLIN_ARG_SEGMENTS, spec->segments);
    msl_want_count(check, MUSLIN_ARG_SEGMENTS_PER_SET, spec->segments_per_set);
    msl_want_some_count(check, MUSLIN_ARG_STRIPS_PER_SET, spec->strips_per_set);
    msl_want_count(check, MUSLIN_ARG_STRIPS_PER_BUNDLE, spec->strips_per_bundle);
    msl_want_size(check, MUSLIN_ARG_STRIP_CUT, spec->strip_cut);
    if (spec->segments > 0 && spec->segments_per_set == 0)
        msl_fail(check, MUSLIN_ERR_NO_YIELD, MUSLIN_ARG_SEGMENTS_PER_SET, 0, 1);
}

/* The cloth in so many strips (up to 2^62) is a length. */
static void want_cloth(struct msl_check *check, int64_t strips, muslin_len strip_cut)
{
    const int64_t most = MUSLIN_LENGTH_MAX / msl_greater(strip_cut, 1);
    if (strips > most)
        msl_fail(check, MUSLIN_ERR_OVERFLOW, MUSLIN_ARG_STRIPS, strips, most);
}

muslin_status muslin_stripset_need(const struct muslin_need_spec *spec, struct muslin_need *out,
                                   struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct muslin_need_spec s = { 0 };
    read_need(&check, &s, spec);
    msl_want_output(&check, out, (uint32_t)sizeof *out);
    if (check.status != MUSLIN_OK)
        return check.status;
    struct muslin_need need = { 0 };
    need.sets = s.segments > 0 ? msl_divided_up(s.segments, s.segments_per_set) : 0;
    need.spare_segments = need.sets * s.segments_per_set - s.segments;
    need.strips = need.sets * s.strips_per_set;
    if (s.strips_per_bundle > 0) {
        need.bundles = msl_divided_up(need.strips, s.strips_per_bundle);
        need.spare_strips = need.bundles * s.strips_per_bundle - need.strips;
    }
    want_cloth(&check, need.strips, s.strip_cut);
    if (check.status != MUSLIN_OK)
        return check.status;
    need.cloth_length = need.strips * s.strip_cut;
    msl_write_struct(out, &need, (uint32_t)sizeof need);
    return MUSLIN_OK;
}

/* ---- from a bundle to wishes ------------------------------------------------------------------------------------- */

muslin_status muslin_harvest_spec_init(struct muslin_harvest_spec *spec, uint32_t size)
{
    const struct muslin_harvest_spec initial = MUSLIN_HARVEST_SPEC_INIT;
    return msl_init_struct(spec, size, &initial, (uint32_t)sizeof initial, (uint32_t)sizeof initial);
}

static void read_harvest(struct msl_check *check, struct muslin_harvest_spec *spec,
                         const struct muslin_harvest_spec *from)
{
    msl_read_struct(check, MUSLIN_ARG_SPEC, spec, (uint32_t)sizeof *spec, (uint32_t)sizeof *spec, 0, from);
    msl_want_count(check, MUSLIN_ARG_STRIPS, spec->strips);
    msl_want_some_count(check, MUSLIN_ARG_STRIPS_PER_SET, spec->strips_per_set);
    msl_want_count(check, MUSLIN_ARG_SEGMENTS_PER_SET, spec->segments_per_set);
    msl_want_some_count(check, MUSLIN_ARG_SEGMENTS_PER_BLOCK, spec->segments_per_block);
    msl_want_some_count(check, MUSLIN_ARG_BLOCKS, spec->blocks_per_top);
}

/* One top more than those in hand: its segments, with those of the others, are below 2^63. */
static int64_t strips_for_one_more(struct msl_check *check, const struct muslin_harvest_spec *s, int64_t tops)
{
    int64_t segments = (tops + 1) * (s->blocks_per_top * s->segments_per_block);
    int64_t sets = msl_divided_up(segments, s->segments_per_set);
    if (sets > MUSLIN_LENGTH_MAX / s->strips_per_set) {
        msl_fail(check, MUSLIN_ERR_OVERFLOW, MUSLIN_ARG_BLOCKS, s->blocks_per_top, 0);
        return 0;
    }
    return sets * s->strips_per_set - s->strips;
}

/* What the tops take up, all from a segments_per_set above 0. */
static void use_up(struct msl_check *check, const struct muslin_harvest_spec *s, struct muslin_harvest *harvest)
{
    int64_t segments = harvest->tops * s->blocks_per_top * s->segments_per_block;
    harvest->sets_used = msl_divided_up(segments, s->segments_per_set);
    harvest->strips_used = harvest->sets_used * s->strips_per_set;
    harvest->segments_left = harvest->sets_used * s->segments_per_set - segments;
    harvest->strips_for_one_more = strips_for_one_more(check, s, harvest->tops);
}

muslin_status muslin_stripset_harvest(const struct muslin_harvest_spec *spec, struct muslin_harvest *out,
                                      struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct muslin_harvest_spec s = { 0 };
    read_harvest(&check, &s, spec);
    msl_want_output(&check, out, (uint32_t)sizeof *out);
    if (check.status != MUSLIN_OK)
        return check.status;
    struct muslin_harvest harvest = { 0 };
    harvest.sets = s.strips / s.strips_per_set;
    harvest.segments = harvest.sets * s.segments_per_set;
    harvest.blocks = harvest.segments / s.segments_per_block;
    harvest.tops = harvest.blocks / s.blocks_per_top;
    harvest.blocks_left = harvest.blocks - harvest.tops * s.blocks_per_top;
    if (s.segments_per_set > 0)
        use_up(&check, &s, &harvest);
    harvest.strips_left = s.strips - harvest.strips_used;
    if (check.status == MUSLIN_OK)
        msl_write_struct(out, &harvest, (uint32_t)sizeof harvest);
    return check.status;
}

/* ---- sets with different prints ---------------------------------------------------------------------------------- */

muslin_status muslin_stripset_print_init(struct muslin_stripset_print *print, uint32_t size)
{
    static const struct muslin_stripset_print initial = MUSLIN_STRIPSET_PRINT_INIT;
    return msl_init_struct(print, size, &initial, (uint32_t)sizeof initial, (uint32_t)sizeof initial);
}

/* The caller's rows, each of its own size, at a stride of row_size. */
struct prints {
    struct muslin_stripset_print *rows;
    size_t row_size;
    size_t n;
};

static struct muslin_stripset_print read_print(struct msl_check *check, const struct prints *prints, size_t index)
{
    struct muslin_stripset_print row = { 0 };
    msl_read_struct(check, MUSLIN_ARG_ROWS, &row, (uint32_t)sizeof row, (uint32_t)sizeof row, 0,
                    msl_row_to_read(check, prints->rows, prints->row_size, index));
    return row;
}

/* The print that allows the fewest sets; `sets` stays above every count while no row needs a strip. */
struct scarcest {
    int64_t sets;
    size_t row;
};

static void find_scarcest(struct msl_check *check, const struct prints *prints, struct scarcest *found)
{
    for (size_t i = 0; i < prints->n && check->status == MUSLIN_OK; i++) {
        struct muslin_stripset_print row = read_print(check, prints, i);
        msl_want_count(check, MUSLIN_ARG_IN_HAND, row.in_hand);
        msl_want_count(check, MUSLIN_ARG_PER_SET, row.per_set);
        if (row.per_set > 0 && row.in_hand / row.per_set < found->sets) {
            found->sets = row.in_hand / row.per_set;
            found->row = i;
        }
    }
    check->at = 0;
    if (found->sets > MUSLIN_COUNT_MAX)
        msl_fail(check, MUSLIN_ERR_RANGE, MUSLIN_ARG_PER_SET, 0, 1);
}

/* All rows have been read once without failure. */
static void write_left(struct msl_check *check, const struct prints *prints, int64_t sets)
{
    for (size_t i = 0; i < prints->n; i++) {
        struct muslin_stripset_print row = read_print(check, prints, i);
        row.left_over = row.in_hand - sets * row.per_set;
        msl_write_struct((unsigned char *)prints->rows + i * prints->row_size, &row, (uint32_t)sizeof row);
    }
}

muslin_status muslin_stripset_prints(struct muslin_stripset_print *rows, size_t row_size, size_t n, int64_t sets_wanted,
                                     int64_t *sets, size_t *scarcest, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    const struct prints prints = { rows, row_size, n };
    struct scarcest found = { MUSLIN_COUNT_MAX + 1, 0 };
    if (n > 0) {
        msl_want_pointer(&check, MUSLIN_ARG_ROWS, rows);
        msl_want_row_size(&check, row_size, (uint32_t)sizeof *rows);
    }
    msl_want_count(&check, MUSLIN_ARG_SETS, sets_wanted);
    msl_want_pointer(&check, MUSLIN_ARG_OUTPUT, sets);
    find_scarcest(&check, &prints, &found);
    if (check.status != MUSLIN_OK)
        return check.status;
    *sets = sets_wanted > 0 ? sets_wanted : found.sets;
    if (scarcest != NULL)
        *scarcest = found.row;
    write_left(&check, &prints, *sets);
    return MUSLIN_OK;
}
