/* test_cutplan_price.c - the pattern worth most of a strip, against all fillings.
 *
 * SPDX-License-Identifier: MIT */
#include "test_cutplan_parts.h"

enum { ROOM = 24 };

static struct parts parts;

/* ---- what a strip may be worth, by trying everything ------------------------------------------------------------- */

/* All counts of the sizes within `most`. */
static int64_t try_counts(const int64_t *worth, const int64_t *most, int64_t height, int64_t room)
{
    int64_t counts[4] = { 0 };
    const int32_t sizes = parts.cutting.size_count;
    int64_t best = 0;
    for (int32_t at = 0; at < sizes;) {
        int64_t taken = 0;
        int64_t sum = 0;
        int32_t kinds = 0;
        for (int32_t s = 0; s < sizes; s++) {
            const int64_t each = plainly_taken(&parts.sizes[s], height);
            if (counts[s] == 0)
                continue;
            taken += each == 0 ? room + 1 : counts[s] * each + parts.sizes[s].run_in;
            sum += counts[s] * worth[s];
            kinds++;
        }
        if (taken <= room && (kinds < 2 || !parts.cutting.one_size))
            best = larger(best, sum);
        for (at = 0; at < sizes && counts[at] >= most[at]; at++)
            counts[at] = 0;
        if (at < sizes)
            counts[at]++;
    }
    return best;
}

/* Stacks of any number of pieces: by width what fills each height best, then by length what fills the strip best. */
static int64_t try_stacks(const int64_t *worth, int64_t height, int64_t room, int32_t first, int32_t end)
{
    int64_t stack[ROOM + 1][ROOM + 1] = { 0 };
    int64_t strip[ROOM + 1] = { 0 };
    for (int64_t width = 1; width <= room; width++)
        for (int64_t h = 1; h <= height; h++) {
            stack[width][h] = stack[width][h - 1];
            for (int32_t s = first; s < end; s++) {
                const struct msl_piece_size *size = &parts.sizes[s];
                const int whole = size->level && h < height;
                if (size->across == width && size->along <= h && !whole && (!size->level || size->along == h))
                    stack[width][h] = larger(stack[width][h], stack[width][h - size->along] + worth[s]);
                if (size->turned_across == width && size->turned_along <= h && !whole &&
                    (!size->level || size->turned_along == h))
                    stack[width][h] = larger(stack[width][h], stack[width][h - size->turned_along] + worth[s]);
            }
        }
    for (int64_t r = 1; r <= room; r++)
        for (int64_t width = 1; width <= r; width++)
            strip[r] = larger(strip[r], strip[r - width] + stack[width][height]);
    return strip[room];
}

static int64_t try_all(const int64_t *worth, const int64_t *most, int64_t height, int64_t room)
{
    int64_t best = 0;
    if (!parts.cutting.stacked)
        return try_counts(worth, most, height, room);
    if (!parts.cutting.one_size)
        return try_stacks(worth, height, room, 0, parts.cutting.size_count);
    for (int32_t s = 0; s < parts.cutting.size_count; s++)
        best = larger(best, try_stacks(worth, height, room, s, s + 1));
    return best;
}

/* ---- what was made ------------------------------------------------------------------------------------------------ */

/* Lays the strip piece by piece as its rows say, and counts the pieces. Returns what they are worth. */
static int64_t lay_out(int32_t made, const int64_t *worth, int64_t height, int64_t room, int64_t *pieces)
{
    const struct msl_pattern *pattern = &parts.patterns[made];
    const struct msl_strip *strip = &parts.strips[pattern->first];
    int64_t x = 0;
    int64_t sum = 0;
    int64_t width = 0;
    int64_t stacked = 0;
    int32_t sizes = 0;
    int32_t last = -1;
    ck_assert_int_eq(pattern->count, 1);
    ck_assert_int_eq(strip->height, height);
    memset(pieces, 0, FEW_SIZES * sizeof *pieces);
    for (int32_t i = 0; i < strip->count; i++) {
        const struct msl_laid *laid = &parts.laid[strip->first + i];
        const struct msl_piece_size *size = &parts.sizes[laid->size];
        int32_t turned;
        int64_t across = msl_taken_in(size, height, &turned);
        ck_assert_int_gt(laid->count, 0);
        turned ^= laid->other_way;
        across = turned ? size->turned_across : size->across;
        const int64_t along = turned ? size->turned_along : size->along;
        ck_assert_int_gt(across, 0);
        if (laid->above) {
            ck_assert_int_eq(across, width);
            ck_assert_int_eq(laid->count, parts.laid[strip->first + i - 1].count);
            stacked += along;
        } else {
            x += across * laid->count + size->run_in;
            width = across;
            stacked = along;
        }
        ck_assert_int_le(stacked, height);
        if (size->level)
            ck_assert_int_eq(along, height);
        pieces[laid->size] += laid->count;
        sum += laid->count * worth[laid->size];
        sizes += laid->size != last;
        last = laid->size;
    }
    ck_assert_int_le(x, room);
    if (parts.cutting.one_size)
        ck_assert_int_eq(sizes, 1);
    return sum;
}

static void make_sizes(uint64_t *seed)
{
    const int32_t sizes = 1 + (int32_t)pick(seed, 4);
    parts_begin(&parts);
    parts.cutting.one_size = pick(seed, 4) == 0;
    parts.cutting.stacked = pick(seed, 2) == 0;
    for (int32_t s = 0; s < sizes; s++) {
        const int turns = pick(seed, 2) == 0;
        struct msl_piece_size *size = parts_size(&parts, 1 + pick(seed, 9), 1 + pick(seed, 9), turns, 1 + pick(seed, 3));
        if (pick(seed, 5) == 0) /* a square */
            size->along = size->across;
        if (turns) {
            size->turned_across = size->along;
            size->turned_along = size->across;
        }
        size->level = pick(seed, 4) == 0;
        size->slit = pick(seed, 4) == 0;
        if (!turns && !parts.cutting.stacked && pick(seed, 3) == 0)
            size->run_in = pick(seed, 5);
    }
    parts_way(&parts, 1 + pick(seed, ROOM), 1 + pick(seed, 12));
}

static void make_worths(uint64_t *seed, int64_t *worth, int64_t *most, int64_t plenty)
{
    for (int32_t s = 0; s < parts.cutting.size_count; s++) {
        worth[s] = pick(seed, 40) - 4;
        most[s] = pick(seed, 2) == 0 ? parts.sizes[s].count : pick(seed, 4);
        if (plenty > 0)
            most[s] = plenty;
    }
}

enum { SPOILT = 77 };

/* Pricing with room before its first stack, and behind the last way of lying, where lies what would spoil it. */
struct spoilt {
    struct msl_pricing pricing;
    struct msl_item stacked[2 * FEW_SIZES + 1];
    int32_t stacked_counts[2 * FEW_SIZES + 1];
    struct msl_item *own; /* as they were taken */
    int32_t *own_counts;
};

static void make_spoilt(struct spoilt *s, const struct muslin_allocator *memory)
{
    const struct msl_item item = { 1, 0, SPOILT, 0, 1, 0 };
    parts.sizes[parts.cutting.size_count] = parts.sizes[0];
    parts.cutting.size_count++;
    ck_assert(msl_pricing_make(&s->pricing, &parts.cutting, 4096, memory));
    parts.cutting.size_count--;
    memset(s->pricing.seen, 0, 2 * (size_t)parts.cutting.size_count);
    memset(s->pricing.seen + 2 * parts.cutting.size_count, SPOILT, 2);
    s->own = s->pricing.stacked;
    s->own_counts = s->pricing.stacked_counts;
    s->stacked[0] = item;
    s->stacked_counts[0] = SPOILT;
    s->pricing.stacked = s->stacked + 1;
    s->pricing.stacked_counts = s->stacked_counts + 1;
}

static void free_spoilt(struct spoilt *s, const struct muslin_allocator *memory)
{
    s->pricing.stacked = s->own;
    s->pricing.stacked_counts = s->own_counts;
    parts.cutting.size_count++;
    msl_pricing_free(&s->pricing, memory);
    parts.cutting.size_count--;
}

START_TEST(test_strips)
{
    const struct muslin_allocator memory = parts_memory();
    uint64_t seed = 1;
    int stacks_pay = 0;
    for (int round = 0; round < 6000; round++) {
        int64_t worth[FEW_SIZES];
        int64_t most[FEW_SIZES];
        int64_t pieces[FEW_SIZES];
        static struct spoilt spoilt;
        int32_t made;
        int64_t bound;
        make_sizes(&seed);
        const struct msl_way *way = &parts.ways[0];
        make_worths(&seed, worth, most, parts.cutting.stacked && pick(&seed, 2) == 0 ? ROOM * ROOM : 0);
        int64_t positive[FEW_SIZES];
        for (int32_t s = 0; s < parts.cutting.size_count; s++)
            positive[s] = larger(worth[s], 0);
        const int64_t best = try_all(positive, most, way->along, way->across);
        const int64_t beat = pick(&seed, 2) == 0 ? pick(&seed, best + 2) : 0;
        make_spoilt(&spoilt, &memory);
        ck_assert(msl_price(&spoilt.pricing, 0, worth, most, beat, &parts.pool, &made, &bound));
        for (int32_t i = 0; i < spoilt.pricing.stacked_count; i++)
            ck_assert_int_gt(spoilt.pricing.stacked[i].most, 0);
        free_spoilt(&spoilt, &memory);
        const int exact = !parts.cutting.stacked || most[0] == ROOM * ROOM;
        if (exact)
            ck_assert_int_eq(bound, larger(beat, best));
        if (exact)
            ck_assert_int_eq(made >= 0, best > beat);
        ck_assert_int_eq(made >= 0, bound > beat);
        ck_assert_int_eq(parts.pool.pattern_count, made >= 0);
        ck_assert_int_eq(parts.pool.strip_count, made >= 0);
        if (made < 0) {
            ck_assert_int_eq(parts.pool.laid_count, 0);
            continue;
        }
        const int64_t sum = lay_out(made, worth, way->along, way->across, pieces);
        int over = 0;
        for (int32_t s = 0; s < parts.cutting.size_count; s++) {
            over |= pieces[s] > most[s];
            ck_assert(pieces[s] == 0 || worth[s] > 0);
        }
        ck_assert_int_gt(sum, beat);
        ck_assert_int_le(sum, bound);
        if (exact) {
            ck_assert_int_eq(sum, best);
            ck_assert_int_eq(over, 0);
        } else {
            /* no fewer stacks pay than strips without */
            parts.cutting.stacked = 0;
            ck_assert_int_ge(bound, try_all(positive, most, way->along, way->across));
            stacks_pay += sum > try_all(positive, most, way->along, way->across);
        }
    }
    ck_assert_int_gt(stacks_pay, 50);
}
END_TEST

/* ---- what is offered to the knapsack ----------------------------------------------------------------------------- */

/* Pieces that may be in a stack so wide, at most. */
static int64_t as_wide(const struct msl_filling *filling, int64_t width)
{
    int64_t pieces = 0;
    for (int32_t s = filling->first; s < filling->end; s++) {
        const struct msl_piece_size *size = &parts.sizes[s];
        const int listed = size->across == width && size->along <= filling->height;
        const int turned = size->turned_across == width && size->turned_along <= filling->height;
        if (filling->worth[s] > 0 && (!filling->within || !size->slit) && !size->level && size->run_in == 0)
            pieces += (listed || turned) * filling->most[s];
    }
    return pieces;
}

/* An item is as the knapsack asks: worth something, no more of it than fit and are wanted. */
static void check_item(const struct msl_filling *filling, const struct msl_item *item)
{
    const int32_t sizes = parts.cutting.size_count;
    ck_assert(item->taken > 0 && item->worth > 0 && item->most > 0 && item->run_in >= 0);
    ck_assert_int_le(item->run_in + item->taken * item->most, filling->room);
    if (item->size >= sizes) {
        const int32_t lying = item->size - sizes;
        ck_assert(parts.cutting.stacked && lying >= 2 * filling->first && lying < 2 * filling->end);
        ck_assert_int_eq(item->run_in, 0);
        ck_assert_int_le(item->most, as_wide(filling, item->taken));
        return;
    }
    const struct msl_piece_size *size = &parts.sizes[item->size];
    ck_assert(item->size >= filling->first && item->size < filling->end);
    ck_assert(!filling->within || !size->slit);
    ck_assert_int_eq(item->taken, plainly_taken(size, filling->height));
    ck_assert_int_eq(item->run_in, size->run_in);
    ck_assert_int_eq(item->worth, filling->worth[item->size]);
    ck_assert_int_le(item->most, filling->most[item->size]);
}

/* And so are pieces on offer for a stack. */
static void check_stacked(const struct msl_pricing *pricing, const struct msl_filling *filling)
{
    for (int32_t i = 0; i < pricing->stacked_count; i++) {
        const struct msl_item *item = &pricing->stacked[i];
        const struct msl_piece_size *size = &parts.sizes[item->size / 2];
        ck_assert(item->size >= 2 * filling->first && item->size < 2 * filling->end);
        ck_assert_int_eq(item->taken, item->size % 2 ? size->turned_along : size->along);
        ck_assert(item->worth > 0 && item->most > 0 && item->run_in == 0);
        ck_assert_int_le(item->taken * item->most, filling->height);
        ck_assert_int_le(item->most, filling->most[item->size / 2]);
    }
}

START_TEST(test_offered)
{
    const struct muslin_allocator memory = parts_memory();
    uint64_t seed = 5;
    int32_t found = 0;
    for (int round = 0; round < 4000; round++) {
        static struct spoilt spoilt;
        struct msl_pricing *pricing = &spoilt.pricing;
        int64_t worth[FEW_SIZES];
        int64_t most[FEW_SIZES];
        int64_t bound;
        make_sizes(&seed);
        parts.cutting.one_size = 0;
        make_spoilt(&spoilt, &memory);
        make_worths(&seed, worth, most, 0);
        const int32_t sizes = parts.cutting.size_count;
        worth[sizes] = most[sizes] = SPOILT;
        struct msl_filling filling = { parts.ways[0].along, parts.ways[0].across, worth, most,
                                       (int32_t)pick(&seed, sizes), 0, pick(&seed, 2) == 0, 0 };
        filling.end = filling.first + 1 + (int32_t)pick(&seed, sizes - filling.first);
        const int64_t best = msl_strip_worth(pricing, &filling, 0, &bound);
        ck_assert_int_eq(pricing->seen[2 * sizes], SPOILT);
        if (best == 0) /* a step for each size that was looked at */
            ck_assert_int_eq(pricing->sack.steps, filling.end - filling.first);
        for (int32_t i = 0; i < pricing->item_count; i++) {
            check_item(&filling, &pricing->items[i]);
            for (int32_t k = 0; k < i; k++) /* one stack of each width */
                ck_assert(pricing->items[k].size < sizes || pricing->items[i].size < sizes ||
                          pricing->items[k].taken != pricing->items[i].taken);
        }
        if (parts.cutting.stacked && best > 0)
            check_stacked(pricing, &filling);
        ck_assert_int_eq(best > 0, pricing->item_count > 0);
        found += best > 0;
        ck_assert_int_eq(msl_strip_worth(pricing, &filling, best, &bound), best);
        ck_assert_int_eq(pricing->item_count, 0); /* nothing is worth more, and so nothing is in it */
        free_spoilt(&spoilt, &memory);
    }
    ck_assert_int_gt(found, 1000);
}
END_TEST

/* No thing of a way holds more pieces than are said to go into any. */
START_TEST(test_pieces_within)
{
    const struct muslin_allocator memory = parts_memory();
    uint64_t seed = 6;
    for (int round = 0; round < 1500; round++) {
        int64_t worth[FEW_SIZES];
        int64_t most[FEW_SIZES];
        struct msl_pricing pricing;
        int32_t made;
        int64_t bound;
        int64_t pieces = 0;
        make_sizes(&seed);
        parts.cutting.height_count = parts_heights(&parts, parts.heights);
        parts.ways[0].sheet = round % 2;
        for (int32_t s = 0; s < parts.cutting.size_count; s++) {
            parts.sizes[s].slit = 0;
            worth[s] = 1;
            most[s] = 2 * ROOM * ROOM;
        }
        ck_assert(msl_pricing_make(&pricing, &parts.cutting, 4096, &memory));
        ck_assert(msl_price(&pricing, 0, worth, most, 0, &parts.pool, &made, &bound));
        for (int32_t i = 0; i < parts.pool.laid_count; i++)
            pieces += parts.laid[i].count;
        ck_assert_int_ge(msl_pieces_within(&parts.cutting), larger(1, pieces));
        msl_pricing_free(&pricing, &memory);
    }
}
END_TEST

/* With few states what is found may be less, and *bound is never below what there is. */
START_TEST(test_few_states)
{
    const struct muslin_allocator memory = parts_memory();
    uint64_t seed = 7;
    int32_t short_of = 0;
    for (int round = 0; round < 3000; round++) {
        int64_t worth[FEW_SIZES];
        int64_t most[FEW_SIZES];
        int64_t pieces[FEW_SIZES];
        struct msl_pricing pricing;
        int32_t made;
        int64_t bound;
        make_sizes(&seed);
        parts.cutting.one_size = round % 2;
        const struct msl_way *way = &parts.ways[0];
        make_worths(&seed, worth, most, parts.cutting.stacked ? ROOM * ROOM : 0);
        for (int32_t s = 0; s < parts.cutting.size_count; s++)
            worth[s] = larger(worth[s], 0);
        const int64_t best = try_all(worth, most, way->along, way->across);
        ck_assert(msl_pricing_make(&pricing, &parts.cutting, 4, &memory));
        ck_assert(msl_price(&pricing, 0, worth, most, 0, &parts.pool, &made, &bound));
        const int64_t sum = made < 0 ? 0 : lay_out(made, worth, way->along, way->across, pieces);
        ck_assert_int_le(sum, best);
        ck_assert_int_ge(bound, best);
        short_of += bound > sum;
        msl_pricing_free(&pricing, &memory);
    }
    ck_assert_int_gt(short_of, 50);
}
END_TEST

/* A strip 4 high and 8 long: pieces 3 x 2, of which two stand one above the other. Where just one is wanted, the stack
 * of two is made only for what one does not pay. */
START_TEST(test_more_than_wanted)
{
    const struct muslin_allocator memory = parts_memory();
    const int64_t worth[1] = { 5 };
    const int64_t one[1] = { 1 };
    struct msl_pricing pricing;
    int32_t made;
    int64_t bound;
    parts_begin(&parts);
    parts_size(&parts, 3, 2, 0, 1);
    parts_way(&parts, 8, 4);
    parts.cutting.stacked = 1;
    ck_assert(msl_pricing_make(&pricing, &parts.cutting, 64, &memory));
    ck_assert(msl_price(&pricing, 0, worth, one, 4, &parts.pool, &made, &bound));
    ck_assert_int_eq(parts.laid[parts.strips[parts.patterns[made].first].first].count, 1);
    ck_assert_int_eq(parts.pool.laid_count, 1);
    ck_assert(msl_price(&pricing, 0, worth, one, 6, &parts.pool, &made, &bound));
    ck_assert_int_eq(made, -1); /* one stack of the one that is wanted */
    ck_assert_int_eq(bound, 6);
    msl_pricing_free(&pricing, &memory);
}
END_TEST

/* Sloped pieces lie beside each other only: with a run-in of 1 two of 3 in a room of 8, not four. */
START_TEST(test_sloped_is_not_stacked)
{
    const struct muslin_allocator memory = parts_memory();
    const int64_t worth[1] = { 5 };
    const int64_t most[1] = { 9 };
    struct msl_pricing pricing;
    int32_t made;
    int64_t bound;
    parts_begin(&parts);
    parts_size(&parts, 3, 2, 0, 1)->run_in = 1;
    parts_way(&parts, 8, 4);
    parts.cutting.stacked = 1;
    ck_assert(msl_pricing_make(&pricing, &parts.cutting, 64, &memory));
    ck_assert(msl_price(&pricing, 0, worth, most, 0, &parts.pool, &made, &bound));
    ck_assert_int_eq(made, 0);
    ck_assert_int_eq(bound, 10);
    msl_pricing_free(&pricing, &memory);
}
END_TEST

START_TEST(test_taken)
{
    const struct msl_piece_size piece = { 7, 4, 4, 7, 0, 1, 0, 0 };
    const struct msl_piece_size level = { 7, 4, 4, 7, 0, 1, 0, 1 };
    const struct msl_piece_size square = { 5, 5, 5, 5, 0, 1, 0, 0 };
    const struct msl_piece_size fixed = { 7, 4, 0, 0, 0, 1, 0, 0 };
    int32_t turned;
    ck_assert_int_eq(msl_taken_in(&piece, 3, &turned), 0);
    ck_assert_int_eq(turned, 0);
    ck_assert_int_eq(msl_taken_in(&piece, 6, &turned), 7);
    ck_assert_int_eq(turned, 0);
    ck_assert_int_eq(msl_taken_in(&piece, 7, &turned), 4);
    ck_assert_int_eq(turned, 1);
    ck_assert_int_eq(msl_taken_in(&level, 8, NULL), 0);
    ck_assert_int_eq(msl_taken_in(&level, 4, &turned), 7);
    ck_assert_int_eq(turned, 0);
    ck_assert_int_eq(msl_taken_in(&level, 7, &turned), 4);
    ck_assert_int_eq(turned, 1);
    ck_assert_int_eq(msl_taken_in(&square, 5, &turned), 5);
    ck_assert_int_eq(turned, 0);
    ck_assert_int_eq(msl_taken_in(&fixed, 9, &turned), 7);
    ck_assert_int_eq(turned, 0);
}
END_TEST

/* Every array of the pool too small in its turn: nothing is left behind. */
START_TEST(test_full_pool)
{
    const struct muslin_allocator memory = parts_memory();
    const int64_t worth[2] = { 5, 4 };
    const int64_t most[2] = { 4, 1 };
    const int32_t sizes[2] = { 0, 1 };
    const int32_t counts[2] = { 2, 1 };
    const int32_t empty[2] = { 0, 0 };
    struct msl_pricing pricing;
    int32_t made;
    int64_t bound;
    for (int stacked = 0; stacked < 2; stacked++) {
        parts_begin(&parts);
        parts_size(&parts, 3, 2, 0, 4);
        parts_size(&parts, 2, 4, 0, 1);
        parts_way(&parts, 8, 4);
        parts.cutting.stacked = stacked;
        ck_assert(msl_pricing_make(&pricing, &parts.cutting, 64, &memory));
        for (int full = 0; full < 4; full++) {
            parts.pool.most_patterns = full == 0 ? 0 : 1;
            parts.pool.most_strips = full == 1 ? 0 : 1;
            parts.pool.most_laid = full < 2 ? 2 : full - 2;
            parts.strips[0].first = 1000; /* of what lay there before */
            ck_assert(!msl_price(&pricing, 0, worth, most, 1, &parts.pool, &made, &bound));
            ck_assert_int_eq(made, -1);
            ck_assert_int_eq(msl_pool_add(&parts.pool, 0, 4, sizes, counts, 2), -1);
            ck_assert_int_eq(parts.pool.pattern_count + parts.pool.strip_count + parts.pool.laid_count, 0);
        }
        msl_pricing_free(&pricing, &memory);
    }
    parts.pool.most_patterns = parts.pool.most_strips = 2;
    parts.pool.most_laid = 2;
    ck_assert_int_eq(msl_pool_add(&parts.pool, 0, 4, sizes, counts, 2), 0);
    ck_assert_int_eq(msl_pool_add(&parts.pool, 0, 4, sizes, empty, 2), 1);
    ck_assert_int_eq(parts.strips[0].count, 2);
    ck_assert_int_eq(parts.strips[1].count, 0);
    ck_assert_int_eq(parts.laid[1].size, 1);
}
END_TEST

START_TEST(test_memory)
{
    struct failing_allocator failing;
    parts_begin(&parts);
    parts_size(&parts, 3, 2, 0, 4);
    parts_way(&parts, 8, 4);
    EVERY_ALLOCATION_FAILS_ONCE(failing) {
        struct msl_pricing pricing;
        const int made = msl_pricing_make(&pricing, &parts.cutting, 64, &failing.allocator);
        ck_assert_int_eq(made, !failing.has_failed);
        if (made)
            msl_pricing_free(&pricing, &failing.allocator);
        ck_assert(failing_is_clean(&failing));
    }
}
END_TEST

Suite *cutplan_price_suite(void)
{
    Suite *suite = suite_create("cutplan_price");
    TCase *all = tcase_create("all");
    tcase_add_test(all, test_strips);
    tcase_add_test(all, test_few_states);
    tcase_add_test(all, test_offered);
    tcase_add_test(all, test_pieces_within);
    tcase_add_test(all, test_more_than_wanted);
    tcase_add_test(all, test_sloped_is_not_stacked);
    tcase_add_test(all, test_taken);
    tcase_add_test(all, test_full_pool);
    tcase_add_test(all, test_memory);
    suite_add_tcase(suite, all);
    return suite;
}
