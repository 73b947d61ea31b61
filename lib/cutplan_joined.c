/* cutplan_joined.c - joined pieces in strips from what a plan leaves over.
 *
 * SPDX-License-Identifier: MIT
 *
 * The strips of one joined piece are thought away from a plan that was found. What the others then leave over, at their
 * ends and behind the last one of a panel, is room for it. Of the strips that held nothing else as few as will do are
 * kept, whole, and the longest room gives the rest: fewest joins. For these lengths there is a plan, shorter by the
 * strips that are not kept; the search may find a better one. */
#include "cutplan_plan.h"

#include "wide.h"

struct joining {
    const struct muslin_cutplan *plan;
    const struct muslin_blank_spec *piece;
    int32_t size;      /* one of those that its strips are */
    int64_t *out;      /* of each size: strips of the piece that are still to be thought away */
    int64_t *uses;     /* of each of those sizes: in one pattern */
    int64_t alone;     /* strips that hold nothing else */
    struct msl_length rooms[MSL_PARTS_MAX]; /* the longest */
    int32_t room_count;
    int32_t length_count;
    struct msl_length *lengths;
};

int msl_may_join_anew(const struct muslin_cutplan *plan, uint32_t row)
{
    const uint32_t flags = MUSLIN_CUTPLAN_OWN_STRIPS | MUSLIN_CUTPLAN_STACKED | MUSLIN_CUTPLAN_FOLDED;
    const struct muslin_blank_spec *piece = &plan->pieces[row];
    return piece->least_part > 0 && piece->count == 1 && plan->stock_count == 0 && (plan->spec.flags & flags) == 0;
}

/* ---- what is left ------------------------------------------------------------------------------------------------ */

/* Room so long, so many times; the shortest goes where there is too much. */
static void add_room(struct joining *joining, int64_t units, int64_t count)
{
    const int64_t length = units * joining->plan->unit;
    const struct muslin_blank_spec *piece = joining->piece;
    if (count == 0 || length < piece->least_part || length <= piece->join_loss)
        return;
    int32_t at = joining->room_count;
    if (at == MSL_PARTS_MAX && joining->rooms[at - 1].length >= length)
        return;
    at -= at == MSL_PARTS_MAX;
    joining->room_count = at + 1;
    for (; at > 0 && joining->rooms[at - 1].length < length; at--)
        joining->rooms[at] = joining->rooms[at - 1];
    const struct msl_length room = { length, count };
    joining->rooms[at] = room;
}

/* What is left of `across` in a strip; with `without`, when the strips of the piece are thought away. *held is how much
 * of it others take. */
static int64_t left_in(const struct joining *joining, const struct msl_strip *strip, int64_t height, int64_t across,
                       int without, int64_t *held)
{
    *held = 0;
    for (int32_t i = strip->first; i < strip->first + strip->count; i++) {
        const struct msl_laid *laid = &joining->plan->found.plan.laid[i];
        const struct msl_piece_size *size = &joining->plan->cutting.sizes[laid->size];
        if (!without || joining->uses[laid->size] == 0)
            *held += size->run_in + laid->count * msl_taken_in(size, height, NULL);
    }
    return across - *held;
}

static int suits(const struct joining *joining, int64_t height)
{
    return msl_taken_in(&joining->plan->cutting.sizes[joining->size], height, NULL) > 0;
}

static void look_at_strip(struct joining *joining, const struct msl_pattern *pattern, int64_t times, int without)
{
    const struct msl_way *way = &joining->plan->cutting.ways[pattern->way];
    const struct msl_strip *strip = &joining->plan->found.plan.strips[pattern->first];
    int64_t held;
    const int64_t left = left_in(joining, strip, way->along, way->across, without, &held);
    if (held == 0)
        joining->alone += times;
    else if (suits(joining, way->along))
        add_room(joining, left, times);
}

static void look_at_panel(struct joining *joining, const struct msl_pattern *pattern, int64_t times, int without)
{
    const struct msl_way *way = &joining->plan->cutting.ways[pattern->way];
    const struct msl_strip *strips = &joining->plan->found.plan.strips[pattern->first];
    int64_t across = way->across;
    int64_t along = way->along;
    int64_t held;
    for (int32_t i = 0; i < pattern->count; i++)
        if (strips[i].height == 0)
            across = left_in(joining, &strips[i], way->along, across, 0, &held);
    for (int32_t i = 0; i < pattern->count; i++) {
        const int64_t height = strips[i].height;
        const int64_t left = left_in(joining, &strips[i], height, across, without, &held);
        along -= height;
        if (suits(joining, height)) /* slit pieces are in no strip */
            add_room(joining, left, times);
    }
    add_room(joining, across, along / joining->plan->cutting.sizes[joining->size].along * times);
}

static void look_at(struct joining *joining, const struct msl_pattern *pattern, int64_t times, int without)
{
    if (joining->plan->cutting.ways[pattern->way].sheet)
        look_at_panel(joining, pattern, times, without);
    else
        look_at_strip(joining, pattern, times, without);
}

/* Strips of the piece in one pattern, into `uses`. Returns from how many of its times they are thought away. */
static int64_t count_uses(const struct joining *joining, const struct msl_pattern *pattern)
{
    const struct msl_pool *pool = &joining->plan->found.plan;
    int64_t times = 0;
    for (int32_t i = 0; i < joining->plan->cutting.size_count; i++)
        joining->uses[i] = 0;
    for (int32_t s = pattern->first; s < pattern->first + pattern->count; s++)
        for (int32_t i = pool->strips[s].first; i < pool->strips[s].first + pool->strips[s].count; i++) {
            const struct msl_laid *laid = &pool->laid[i];
            if (joining->out[laid->size] > 0) {
                joining->uses[laid->size] += laid->count;
                times = pattern->times;
            }
        }
    for (int32_t i = 0; i < joining->plan->cutting.size_count; i++)
        if (joining->uses[i] > 0 && joining->out[i] / joining->uses[i] < times)
            times = joining->out[i] / joining->uses[i];
    return times;
}

static void find_rooms(struct joining *joining)
{
    const struct msl_pool *pool = &joining->plan->found.plan;
    for (int32_t p = 0; p < pool->pattern_count; p++) {
        const int64_t times = count_uses(joining, &pool->patterns[p]);
        look_at(joining, &pool->patterns[p], times, 1);
        look_at(joining, &pool->patterns[p], pool->patterns[p].times - times, 0);
        for (int32_t i = 0; i < joining->plan->cutting.size_count; i++)
            joining->out[i] -= times * joining->uses[i];
    }
}

/* ---- the lengths ------------------------------------------------------------------------------------------------- */

static void add_length(struct joining *joining, int64_t length, int64_t count)
{
    const struct msl_length added = { length, count };
    if (count > 0)
        joining->lengths[joining->length_count++] = added;
}

/* Strips are cut so much shorter in all, from the last one back, none to less than it may be. Returns 0 where that is
 * not enough. */
static int cut_shorter(struct joining *joining, int64_t by)
{
    const int64_t least = joining->piece->least_part;
    int64_t shortest = 0; /* strips that become just so long */
    for (int32_t i = joining->length_count - 1; i >= 0; i--) {
        struct msl_length *last = &joining->lengths[i];
        const int64_t most = last->length - least;
        if (most <= 0)
            continue;
        const int64_t all = msl_lesser(last->count, by / most);
        shortest += all;
        last->count -= all;
        by -= all * most;
        if (by > 0 && last->count > 0) {
            last->count--;
            add_length(joining, last->length - by, 1);
            by = 0;
        }
    }
    add_length(joining, least, shortest);
    return by == 0;
}

/* The piece from so many whole strips and the longest room. Returns 0 where that does not give its length. */
static int join(struct joining *joining, int64_t whole, int64_t wholes)
{
    const struct muslin_blank_spec *piece = joining->piece;
    const int64_t loss = piece->join_loss;
    int64_t missing = piece->cut_width - loss - wholes * (whole - loss);
    int64_t parts = 0;
    joining->length_count = 0;
    add_length(joining, whole, wholes);
    for (int32_t i = 0; i < joining->room_count && missing > 0; i++) {
        const int64_t gain = joining->rooms[i].length - loss;
        const int64_t count = msl_lesser(msl_lesser(joining->rooms[i].count, MSL_PARTS_MAX - parts),
                                         msl_divided_up(missing, gain));
        add_length(joining, joining->rooms[i].length, count);
        missing -= count * gain;
        parts += count;
    }
    return missing <= 0 && cut_shorter(joining, -missing);
}

/* With fewer strips kept than were alone. */
static int join_with_fewest(struct joining *joining)
{
    const struct muslin_blank_spec *piece = joining->piece;
    const int64_t whole = joining->plan->room;
    const int64_t gain = whole - piece->join_loss;
    const int64_t more = piece->cut_width > whole ? msl_divided_up(piece->cut_width - whole, gain) : 0;
    const int64_t first = msl_lesser(joining->alone - 1, more);
    int64_t wholes = first;
    while (wholes >= 0 && join(joining, whole, wholes))
        wholes--;
    if (wholes == first)
        return 0;
    join(joining, whole, wholes + 1);
    return 1;
}

/* The strips of the piece, by their sizes. */
static void think_away(struct joining *joining, uint32_t row)
{
    const struct muslin_cutplan *plan = joining->plan;
    for (int32_t i = 0; i < plan->cutting.size_count; i++) {
        const struct msl_cut_size *rows = &plan->sizes[i];
        joining->out[i] = 0;
        for (uint32_t k = rows->first; k < rows->first + rows->count; k++)
            if (plan->blanks[k].row == row) {
                joining->out[i] += plan->blanks[k].each;
                joining->size = i;
            }
    }
}

/* Lengths for the piece of a row. Returns how many; 0: there are none. */
static int32_t find_lengths(struct msl_check *check, const struct muslin_cutplan *plan, uint32_t row,
                            struct msl_length *lengths)
{
    const struct muslin_allocator *a = &plan->allocator;
    const uint64_t sizes = (uint64_t)plan->cutting.size_count;
    struct joining joining = { .plan = plan, .piece = &plan->pieces[row], .lengths = lengths };
    int32_t count = 0;
    joining.out = msl_scratch(check, a, sizes, sizeof joining.out[0]);
    joining.uses = msl_scratch(check, a, sizes, sizeof joining.uses[0]);
    if (check->status == MUSLIN_OK) {
        think_away(&joining, row);
        find_rooms(&joining);
        count = join_with_fewest(&joining) ? joining.length_count : 0;
    }
    msl_scratch_free(a, joining.out, sizes, sizeof joining.out[0]);
    msl_scratch_free(a, joining.uses, sizes, sizeof joining.uses[0]);
    return count;
}

struct msl_blank *msl_join_anew(struct msl_check *check, struct muslin_cutplan *plan, uint32_t row)
{
    struct msl_length lengths[MSL_LENGTHS_MAX];
    const uint32_t n = plan->blank_count;
    const int32_t count = find_lengths(check, plan, row, lengths);
    struct msl_blank *before = count > 0 ? msl_scratch(check, &plan->allocator, n, sizeof *before) : NULL;
    if (before == NULL)
        return NULL;
    for (uint32_t i = 0; i < n; i++)
        before[i] = plan->blanks[i];
    if (msl_put_lengths(check, plan, row, lengths, count))
        return before;
    msl_scratch_free(&plan->allocator, before, n, sizeof *before);
    return NULL;
}
