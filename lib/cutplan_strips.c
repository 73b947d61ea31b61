/* cutplan_strips.c - what was found, laid out as strips with places, and what they add up to.
 *
 * SPDX-License-Identifier: MIT
 *
 * The search knows sizes, the caller rows of the request: pieces of a size go to its rows one after the other, and what
 * is cut alike again and again is one strip with a number of times as long as it is for the same rows. */
#include "cutplan_plan.h"

#include "wide.h"

/* How far the layout has come. */
struct laying {
    struct msl_check *check;
    struct muslin_cutplan *plan;
    int64_t *done;   /* blanks laid, of each size */
    int64_t *uses;   /* blanks in one thing, of each size */
    uint32_t *at;    /* the blank whose row gets the next one, of each size */
    int64_t y;       /* where the next thing begins: in the bolt, or in its holder */
    int64_t x;       /* where strips of this holder begin, and how wide they are */
    int64_t width;
    int64_t begin;   /* and where pieces begin in them */
    int64_t holder;
};

static struct muslin_cutplan_strip *strip_at(const struct muslin_cutplan *plan, uint64_t row)
{
    return (struct muslin_cutplan_strip *)plan->strips.rows + row;
}

static struct muslin_cutplan_place *place_at(const struct muslin_cutplan *plan, uint64_t row)
{
    return (struct muslin_cutplan_place *)plan->places.rows + row;
}

static const struct msl_blank *blank_of(const struct laying *laying, int32_t size)
{
    return &laying->plan->blanks[laying->at[size]];
}

/* Pieces that one blank gives. */
static int64_t layers_of(const struct muslin_cutplan *plan, const struct msl_blank *blank)
{
    return blank->folded ? 1 : plan->layers;
}

/* Blanks that the row in turn still gets; 0 where all rows have theirs. A blank of two layers goes to the row of its
 * first piece. */
static int64_t left_of(const struct laying *laying, int32_t size)
{
    const struct msl_cut_size *rows = &laying->plan->sizes[size];
    const int64_t layers = layers_of(laying->plan, blank_of(laying, size));
    const int64_t pieces = laying->done[size] * layers;
    while (laying->at[size] + 1 < rows->first + rows->count && blank_of(laying, size)->end <= pieces)
        laying->at[size]++;
    const int64_t end = blank_of(laying, size)->end;
    return end <= pieces ? 0 : msl_divided_up(end - pieces, layers);
}

/* ---- how pieces lie --------------------------------------------------------------------------------------------- */

struct lying {
    int64_t taken;
    int64_t height;
    int32_t turned;
};

/* The narrower way that is not higher than the strip, in a stack perhaps the other one. */
static struct lying lying_of(const struct msl_piece_size *size, const struct msl_laid *laid, int64_t height)
{
    int32_t turned;
    msl_taken_in(size, height, &turned);
    turned ^= laid->other_way;
    const struct lying lying = { turned ? size->turned_across : size->across,
                                 turned ? size->turned_along : size->along, turned };
    return lying;
}

/* ---- places ----------------------------------------------------------------------------------------------------- */

/* Where the next group lies in its strip. */
struct corner {
    int64_t x;      /* of the group, or of the stack that it is in */
    int64_t y;
    int64_t behind; /* where the next one beside it begins */
    int64_t height; /* of the strip; of slit pieces of the panel */
};

static void put_place(const struct laying *laying, const struct corner *corner, int64_t x, int32_t size, int64_t count,
                      struct lying lying)
{
    struct muslin_cutplan *plan = laying->plan;
    const struct msl_blank *blank = blank_of(laying, size);
    struct muslin_cutplan_place *place =
        msl_add_row(laying->check, &plan->allocator, &plan->places, sizeof(struct muslin_cutplan_place));
    if (place == NULL)
        return;
    const int64_t high = lying.turned ? blank->width : blank->along;
    const struct muslin_cutplan_place row = { .size = (uint32_t)sizeof row, .piece = blank->row,
                                           .strip = (int64_t)plan->strips.used - 1, .count = count, .x = x,
                                           .y = corner->y, .width = lying.turned ? blank->along : blank->width,
                                           .height = high, .pitch = lying.taken * plan->unit,
                                           .turned = lying.turned ^ blank->swapped,
                                           .trimmed = corner->y + high < corner->height };
    *place = row;
}

/* A group of equal pieces, given to the rows in turn; what nobody wants is left away. */
static void put_group(const struct laying *laying, struct corner *corner, const struct msl_laid *laid,
                      struct lying lying)
{
    const int64_t taken = lying.taken * laying->plan->unit;
    const int64_t run_in = laying->plan->cutting.sizes[laid->size].run_in * laying->plan->unit;
    int64_t x = corner->x;
    for (int64_t rest = laid->count; rest > 0;) {
        const int64_t left = left_of(laying, laid->size);
        if (left == 0)
            break;
        const int64_t count = left < rest ? left : rest;
        put_place(laying, corner, x, laid->size, count, lying);
        laying->done[laid->size] += count;
        x += count * taken;
        rest -= count;
    }
    if (x > corner->x && x + run_in > corner->behind)
        corner->behind = x + run_in;
    corner->y += lying.height * laying->plan->unit;
}

/* The pieces of a strip, from the left. Returns how much of it they take. */
static int64_t put_pieces(const struct laying *laying, const struct msl_strip *strip, int64_t height)
{
    const struct muslin_cutplan *plan = laying->plan;
    const struct msl_laid *laid = plan->found.plan.laid + strip->first;
    struct corner corner = { .behind = laying->begin, .height = height };
    for (int32_t i = 0; i < strip->count; i++) {
        if (!laid[i].above) {
            corner.x = corner.behind;
            corner.y = 0;
        }
        const struct msl_piece_size *size = &plan->cutting.sizes[laid[i].size];
        put_group(laying, &corner, &laid[i], lying_of(size, &laid[i], height / plan->unit));
    }
    return corner.behind - laying->begin;
}

/* ---- strips ----------------------------------------------------------------------------------------------------- */

static struct muslin_cutplan_strip *add_strip(const struct laying *laying, int32_t kind)
{
    struct muslin_cutplan *plan = laying->plan;
    struct muslin_cutplan_strip *strip =
        msl_add_row(laying->check, &plan->allocator, &plan->strips, sizeof(struct muslin_cutplan_strip));
    if (strip == NULL)
        return NULL;
    const struct muslin_cutplan_strip row = { .size = (uint32_t)sizeof row, .times = 1, .holder = laying->holder,
                                           .stock = -1, .first_place = (int64_t)plan->places.used, .x = laying->x,
                                           .y = laying->y, .width = laying->width, .kind = kind };
    *strip = row;
    return strip;
}

/* A strip with its pieces; the next one begins above it. */
static void put_strip(struct laying *laying, const struct msl_strip *found, int32_t kind, int64_t height)
{
    struct muslin_cutplan_strip *strip = add_strip(laying, kind);
    if (strip == NULL)
        return;
    strip->height = height;
    strip->used = put_pieces(laying, found, height);
    strip->places = (int64_t)laying->plan->places.used - strip->first_place;
    laying->y += height;
}

/* One row has pieces of two widths where it is joined, or lies turned. How far up they lie says how they are stacked,
 * and so where they lie along the strip. */
static int is_same_place(const struct muslin_cutplan_place *a, const struct muslin_cutplan_place *b)
{
    int same = a->piece == b->piece;
    same &= a->count == b->count;
    same &= a->width == b->width;
    same &= a->y == b->y;
    return same;
}

/* Of two strips that hold the same, one behind the other, one is kept with the times of both. */
static void merge_last(struct muslin_cutplan *plan)
{
    struct muslin_cutplan_strip *last = strip_at(plan, plan->strips.used - 1);
    struct muslin_cutplan_strip *before = plan->strips.used > 1 ? last - 1 : last;
    int same = before != last && before->kind == last->kind && before->height == last->height &&
               before->places == last->places;
    for (int64_t i = 0; same && i < last->places; i++)
        same = is_same_place(place_at(plan, (uint64_t)(before->first_place + i)),
                             place_at(plan, (uint64_t)(last->first_place + i)));
    if (!same)
        return;
    before->times += last->times;
    plan->strips.used--;
    plan->places.used -= (uint64_t)last->places;
}

/* ---- things ----------------------------------------------------------------------------------------------------- */

/* Slit pieces lie at the panel's left edge, the rest beside them; the loss at that edge is taken off once. Where nobody
 * wants any of them, nothing is slit. */
static void put_slit(struct laying *laying, const struct msl_strip *found, int64_t length)
{
    put_strip(laying, found, MUSLIN_CUTPLAN_STRIP_SLIT, length);
    if (laying->check->status != MUSLIN_OK)
        return;
    struct muslin_cutplan_strip *slit = strip_at(laying->plan, laying->plan->strips.used - 1);
    laying->y = 0;
    if (slit->places == 0) {
        laying->plan->strips.used--;
        return;
    }
    slit->width = laying->begin + slit->used;
    laying->x = slit->width;
    laying->width -= slit->width;
    laying->begin = 0;
}

/* A strip across the rest of a panel or of a piece of stock, of which nobody wants anything, is not cut. */
static void put_strip_within(struct laying *laying, const struct msl_strip *found)
{
    struct muslin_cutplan *plan = laying->plan;
    const int64_t y = laying->y;
    put_strip(laying, found, MUSLIN_CUTPLAN_STRIP_WITHIN, found->height * plan->unit);
    if (laying->check->status != MUSLIN_OK)
        return;
    if (strip_at(plan, plan->strips.used - 1)->places > 0) {
        merge_last(plan);
    } else {
        plan->strips.used--;
        laying->y = y;
    }
}

/* What a panel or a piece of stock holds. */
static void put_within(struct laying *laying, const struct msl_pattern *pattern, int64_t length)
{
    const struct muslin_cutplan *plan = laying->plan;
    const struct msl_strip *strips = plan->found.plan.strips + pattern->first;
    for (int32_t i = 0; laying->check->status == MUSLIN_OK && i < pattern->count; i++) {
        if (strips[i].height == 0)
            put_slit(laying, &strips[i], length);
        else
            put_strip_within(laying, &strips[i]);
    }
}

static void put_sheet(struct laying *laying, const struct msl_pattern *pattern, const struct msl_way *way)
{
    struct muslin_cutplan *plan = laying->plan;
    const uint64_t row = plan->strips.used;
    const int64_t y = laying->y;
    int64_t height = way->along * plan->unit;
    if (!way->panel) {
        const struct muslin_cutplan_stock_spec *stock = &plan->stock[plan->stock_rows[way->stock]];
        const int64_t length = stock->length - plan->spec.straightening;
        laying->width = way->turned ? length : stock->width;
        height = way->turned ? stock->width : length;
    }
    struct muslin_cutplan_strip *holder =
        add_strip(laying, way->panel ? MUSLIN_CUTPLAN_STRIP_PANEL : MUSLIN_CUTPLAN_STRIP_STOCK);
    if (holder == NULL)
        return;
    holder->height = height;
    holder->stock = way->panel ? -1 : (int64_t)plan->stock_rows[way->stock];
    holder->turned = way->turned;
    laying->holder = (int64_t)row;
    laying->y = 0;
    put_within(laying, pattern, height);
    laying->y = y + (way->panel ? height : 0);
}

/* Every thing begins at the left edge of the bolt, or of its own piece of stock. */
static void put_thing(struct laying *laying, const struct msl_pattern *pattern, int64_t times)
{
    const struct muslin_cutplan *plan = laying->plan;
    const struct msl_way *way = &plan->cutting.ways[pattern->way];
    const uint64_t row = plan->strips.used;
    const int64_t y = laying->y;
    laying->x = 0;
    laying->width = plan->layer;
    laying->begin = plan->spec.end_loss / 2;
    laying->holder = -1;
    if (way->sheet)
        put_sheet(laying, pattern, way);
    else
        put_strip(laying, plan->found.plan.strips + pattern->first, MUSLIN_CUTPLAN_STRIP_STRIP,
                  way->along * plan->unit);
    if (laying->check->status != MUSLIN_OK)
        return;
    strip_at(plan, row)->times = times;
    laying->y = y + (laying->y - y) * times;
    if (!way->sheet)
        merge_last(laying->plan);
}

/* ---- how often alike -------------------------------------------------------------------------------------------- */

/* Goes through all that a pattern holds: adds it to `uses`, or (times 1 or more) counts it as done for the other times
 * and clears `uses`. */
static void count_uses(const struct laying *laying, const struct msl_pattern *pattern, int64_t times)
{
    const struct msl_pool *pool = &laying->plan->found.plan;
    for (int32_t s = pattern->first; s < pattern->first + pattern->count; s++)
        for (int32_t i = pool->strips[s].first; i < pool->strips[s].first + pool->strips[s].count; i++) {
            const int32_t size = pool->laid[i].size;
            if (times == 0) {
                laying->uses[size] += pool->laid[i].count;
            } else {
                laying->done[size] += laying->uses[size] * (times - 1);
                laying->uses[size] = 0;
            }
        }
}

/* For so many times, one at least, every size of the pattern goes to the row that it goes to first. */
static int64_t times_alike(const struct laying *laying, const struct msl_pattern *pattern, int64_t most)
{
    const struct msl_pool *pool = &laying->plan->found.plan;
    int64_t alike = most;
    for (int32_t s = pattern->first; s < pattern->first + pattern->count; s++)
        for (int32_t i = pool->strips[s].first; i < pool->strips[s].first + pool->strips[s].count; i++) {
            const int32_t size = pool->laid[i].size;
            const int64_t left = left_of(laying, size);
            const int64_t times = left == 0 ? most : left / laying->uses[size];
            alike = times < alike ? times : alike;
        }
    return alike == 0 ? 1 : alike;
}

static void put_pattern(struct laying *laying, const struct msl_pattern *pattern)
{
    for (int64_t left = pattern->times; left > 0 && laying->check->status == MUSLIN_OK;) {
        count_uses(laying, pattern, 0);
        const int64_t times = times_alike(laying, pattern, left);
        put_thing(laying, pattern, times);
        count_uses(laying, pattern, times);
        left -= times;
    }
}

/* ---- in what order ---------------------------------------------------------------------------------------------- */

/* How high a size lies in a strip: what is trimmed least comes first. */
static int64_t height_in(const struct msl_cutting *cutting, const struct msl_laid *laid, int64_t height)
{
    return lying_of(&cutting->sizes[laid->size], laid, height).height;
}

/* Pieces from the highest, equal ones in the order of their sizes; stacks stay as they are. */
static void order_pieces(struct muslin_cutplan *plan, const struct msl_strip *strip)
{
    struct msl_laid *laid = plan->found.plan.laid + strip->first;
    int32_t stacked = 0;
    for (int32_t i = 0; i < strip->count; i++)
        stacked |= laid[i].above;
    for (int32_t i = 1; i < strip->count && !stacked; i++) {
        const struct msl_laid moved = laid[i];
        const int64_t height = height_in(&plan->cutting, &moved, strip->height);
        int32_t at = i;
        for (; at > 0; at--) {
            const int64_t before = height_in(&plan->cutting, &laid[at - 1], strip->height);
            if (before > height || (before == height && laid[at - 1].size <= moved.size))
                break;
            laid[at] = laid[at - 1];
        }
        laid[at] = moved;
    }
}

static int32_t more_in(const struct msl_pool *pool, const struct msl_strip *a, const struct msl_strip *b)
{
    for (int32_t i = 0; i < a->count && i < b->count; i++) {
        const struct msl_laid *one = &pool->laid[a->first + i];
        const struct msl_laid *other = &pool->laid[b->first + i];
        if (one->size != other->size)
            return other->size - one->size;
        if (one->count != other->count)
            return one->count - other->count;
    }
    return a->count - b->count;
}

/* Patterns alike lie together, so that they are one row; of others the one with more of its highest pieces is first. */
static int is_before(const void *context, uint32_t a, uint32_t b)
{
    const struct msl_pool *pool = context;
    const struct msl_pattern *one = &pool->patterns[a];
    const struct msl_pattern *other = &pool->patterns[b];
    int32_t more = one->count - other->count;
    for (int32_t s = 0; s < one->count && more == 0; s++)
        more = more_in(pool, &pool->strips[one->first + s], &pool->strips[other->first + s]);
    return more > 0;
}

/* Panels are cut first, then strips, each from the highest down; stock from the dearest. */
static void put_patterns(struct laying *laying, struct msl_rank *ranks, struct msl_rank *spare)
{
    const struct msl_cutting *cutting = &laying->plan->cutting;
    const struct msl_pool *pool = &laying->plan->found.plan;
    for (int32_t i = 0; i < pool->pattern_count; i++) {
        const struct msl_rank rank = { pool->patterns[i].way, 0, !cutting->ways[pool->patterns[i].way].sheet,
                                       (uint32_t)i };
        ranks[i] = rank;
    }
    for (int32_t s = 0; s < pool->strip_count; s++)
        order_pieces(laying->plan, &pool->strips[s]);
    msl_sort(ranks, spare, (uint64_t)pool->pattern_count, is_before, pool);
    for (int32_t i = 0; i < pool->pattern_count; i++)
        put_pattern(laying, &pool->patterns[ranks[i].row]);
}

void msl_lay_strips(struct msl_check *check, struct muslin_cutplan *plan)
{
    const struct muslin_allocator *a = &plan->allocator;
    const uint64_t sizes = (uint64_t)plan->cutting.size_count;
    const uint64_t patterns = (uint64_t)plan->found.plan.pattern_count;
    struct laying laying = { .check = check, .plan = plan };
    laying.done = msl_scratch(check, a, sizes, sizeof laying.done[0]);
    laying.uses = msl_scratch(check, a, sizes, sizeof laying.uses[0]);
    laying.at = msl_scratch(check, a, sizes, sizeof laying.at[0]);
    struct msl_rank *ranks = msl_scratch(check, a, patterns, sizeof *ranks);
    struct msl_rank *spare = msl_scratch(check, a, patterns, sizeof *spare);
    if (check->status == MUSLIN_OK) {
        for (uint64_t i = 0; i < sizes; i++) {
            laying.done[i] = 0;
            laying.uses[i] = 0;
            laying.at[i] = plan->sizes[i].first;
        }
        put_patterns(&laying, ranks, spare);
    }
    msl_scratch_free(a, laying.done, sizes, sizeof laying.done[0]);
    msl_scratch_free(a, laying.uses, sizes, sizeof laying.uses[0]);
    msl_scratch_free(a, laying.at, sizes, sizeof laying.at[0]);
    msl_scratch_free(a, ranks, patterns, sizeof *ranks);
    msl_scratch_free(a, spare, patterns, sizeof *spare);
}
