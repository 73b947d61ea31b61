/* cutplan_most.c - what a thing of a way can be worth at most, by lists of the sums that occur.
 *
 * SPDX-License-Identifier: MIT */
#include "cutplan_most.h"
#include "told.h"
#include "wide.h"

int64_t msl_most_added(int64_t a, int64_t b)
{
    return a > MSL_WORTH_MAX - b ? MSL_WORTH_MAX : a + b;
}

/* ---- rules of cutting ------------------------------------------------------------------------------------------- */

static int lies_in(int64_t needed, int32_t level, int64_t height)
{
    return level != 0 ? needed == height : needed <= height;
}

struct msl_lying msl_lying_in(const struct msl_piece_size *size, int64_t height, int32_t other_way)
{
    static const struct msl_lying nowhere = { 0 };
    const struct msl_lying listed = { size->across, size->along };
    const struct msl_lying turned = { size->turned_across, size->turned_along };
    const int may_lie = lies_in(listed.height, size->level, height);
    const int may_turn = turned.taken > 0 && lies_in(turned.height, size->level, height);
    const int narrower_turned = turned.taken < listed.taken;
    if (may_lie && may_turn)
        return (other_way != 0) != narrower_turned ? turned : listed;
    if (other_way != 0)
        return nowhere;
    return may_lie ? listed : may_turn ? turned : nowhere;
}

void msl_most_count(struct msl_most *most, int64_t steps)
{
    most->steps += steps;
    if (!msl_goes_on(most->told, most->steps) || most->steps > most->most_steps)
        most->status = MUSLIN_ERR_WORK_LIMIT;
}

/* ---- lists of sums ---------------------------------------------------------------------------------------------- */

/* Room for so many sums; what is in the list stays. */
static void make_room(struct msl_most *most, struct msl_sums *sums, size_t needed)
{
    const struct muslin_allocator *allocator = most->allocator;
    struct msl_sum *moved = NULL;
    if (most->status != MUSLIN_OK || needed <= sums->most)
        return;
    if (needed > MSL_SUMS_MAX) {
        most->status = MUSLIN_ERR_WORK_LIMIT;
        return;
    }
    if (sums->at == NULL)
        moved = allocator->alloc(allocator->context, needed * sizeof *moved);
    else
        moved = allocator->realloc(allocator->context, sums->at, sums->most * sizeof *moved, needed * sizeof *moved);
    if (moved == NULL) {
        most->status = MUSLIN_ERR_NO_MEMORY;
        return;
    }
    sums->at = moved;
    sums->most = needed;
}

static void give_back(const struct msl_most *most, struct msl_sums *sums)
{
    if (sums->at != NULL)
        most->allocator->free(most->allocator->context, sums->at, sums->most * sizeof *sums->at);
}

static void swap(struct msl_sums *a, struct msl_sums *b)
{
    struct msl_sums was = *a;
    *a = *b;
    *b = was;
}

/* Nothing laid. */
static void start_sums(struct msl_most *most, struct msl_sums *sums)
{
    static const struct msl_sum nothing = { 0 };
    make_room(most, sums, 1);
    if (most->status != MUSLIN_OK)
        return;
    sums->at[0] = nothing;
    sums->count = 1;
}

static void copy_sums(struct msl_most *most, struct msl_sums *into, const struct msl_sums *from)
{
    make_room(most, into, from->count);
    if (most->status != MUSLIN_OK)
        return;
    for (size_t i = 0; i < from->count; i++)
        into->at[i] = from->at[i];
    into->count = from->count;
}

static void keep_if_worth_more(struct msl_sums *into, struct msl_sum sum)
{
    if (into->count == 0 || sum.worth > into->at[into->count - 1].worth)
        into->at[into->count++] = sum;
}

/* Puts into most->next what is in most->so_far, and what is in most->sums with `beside` laid beside it. */
static void merge(struct msl_most *most, struct msl_sum beside, int64_t room)
{
    const struct msl_sums *a = &most->so_far;
    const struct msl_sums *b = &most->sums;
    struct msl_sums *into = &most->next;
    into->count = 0;
    make_room(most, into, a->count + b->count);
    if (most->status != MUSLIN_OK)
        return;
    size_t from_a = 0;
    for (size_t from_b = 0; from_b < b->count && b->at[from_b].taken <= room - beside.taken; from_b++) {
        struct msl_sum sum = { b->at[from_b].taken + beside.taken, msl_most_added(b->at[from_b].worth, beside.worth) };
        while (from_a < a->count && a->at[from_a].taken <= sum.taken)
            keep_if_worth_more(into, a->at[from_a++]);
        keep_if_worth_more(into, sum);
    }
    while (from_a < a->count)
        keep_if_worth_more(into, a->at[from_a++]);
    msl_most_count(most, (int64_t)(a->count + b->count));
}

/* The sums, and those with one to `offer->most` of an offer laid beside them. */
static void lay(struct msl_most *most, const struct msl_offer *offer, int64_t room)
{
    struct msl_sum beside = { offer->run_in, 0 };
    copy_sums(most, &most->so_far, &most->sums);
    for (int64_t n = 0; n < offer->most && offer->taken <= room - beside.taken && most->status == MUSLIN_OK; n++) {
        beside.taken += offer->taken;
        beside.worth = msl_most_added(beside.worth, offer->worth);
        merge(most, beside, room);
        swap(&most->so_far, &most->next);
    }
    swap(&most->sums, &most->so_far);
}

/* Leaves out the sums that can't come above `enough`: what is left of the room holds no more of the later offers than
 * its length of the best of them. */
static void thin_out(struct msl_sums *sums, const struct msl_offer *best, int64_t room, int64_t enough)
{
    size_t kept = 0;
    for (size_t i = 0; i < sums->count; i++) {
        struct msl_sum sum = sums->at[i];
        struct msl_wide needed = msl_wide_multiply(enough - sum.worth, best->taken);
        if (msl_wide_compare(msl_wide_multiply(room - sum.taken, best->worth), needed) > 0)
            sums->at[kept++] = sum;
    }
    sums->count = kept;
}

/* The most worth per length first. */
static void sort_offers(struct msl_offer *offers, int32_t count)
{
    for (int32_t i = 1; i < count; i++) {
        struct msl_offer offer = offers[i];
        int32_t k = i;
        for (; k > 0 && msl_wide_compare(msl_wide_multiply(offers[k - 1].worth, offer.taken),
                                         msl_wide_multiply(offer.worth, offers[k - 1].taken)) < 0; k--)
            offers[k] = offers[k - 1];
        offers[k] = offer;
    }
}

/* All sums of these offers in most->sums. */
static void fill_all(struct msl_most *most, const struct msl_offer *offers, int32_t count, int64_t room)
{
    start_sums(most, &most->sums);
    for (int32_t i = 0; i < count && most->status == MUSLIN_OK; i++)
        lay(most, &offers[i], room);
}

static int64_t worth_in(const struct msl_sums *sums)
{
    return sums->count == 0 ? 0 : sums->at[sums->count - 1].worth;
}

/* The most that these offers are worth in the room, as far as it is above `enough`. */
static int64_t fill_above(struct msl_most *most, struct msl_offer *offers, int32_t count, int64_t room, int64_t enough)
{
    sort_offers(offers, count);
    start_sums(most, &most->sums);
    for (int32_t i = 0; i < count && most->status == MUSLIN_OK; i++) {
        thin_out(&most->sums, &offers[i], room, enough);
        lay(most, &offers[i], room);
    }
    return worth_in(&most->sums);
}

/* ---- in a strip ------------------------------------------------------------------------------------------------- */

/* 1 where pieces of the size lie in stacks. */
static int is_stacked(const struct msl_cutting *cutting, const struct msl_piece_size *size)
{
    return cutting->stacked != 0 && size->run_in == 0 && size->level == 0;
}

/* 1 where a size is worth something; in strips within a sheet none that is slit is laid. */
static int is_offered(const struct msl_way *way, const struct msl_piece_size *size, int64_t worth)
{
    return worth > 0 && (way->sheet == 0 || size->slit == 0);
}

/* Offers the sizes that lie side by side in strips of this height. */
static int32_t offer_sizes(struct msl_most *most, const struct msl_way *way, const int64_t *worth, int64_t height)
{
    const struct msl_cutting *cutting = most->cutting;
    int32_t count = 0;
    for (int32_t i = most->first; i < most->end; i++) {
        const struct msl_piece_size *size = &cutting->sizes[i];
        struct msl_offer offer = { msl_lying_in(size, height, 0).taken, size->run_in, worth[i], size->count };
        if (is_offered(way, size, worth[i]) && !is_stacked(cutting, size) && offer.taken > 0)
            most->offers[count++] = offer;
    }
    return count;
}

/* How pieces of number 2 x size + turned lie in a stack; nowhere where they are in none in strips of this height. */
static struct msl_lying lying_in_stack(const struct msl_most *most, const struct msl_way *way, const int64_t *worth,
                                       int32_t number, int64_t height)
{
    static const struct msl_lying nowhere = { 0 };
    const struct msl_piece_size *size = &most->cutting->sizes[number / 2];
    const struct msl_lying listed = { size->across, size->along };
    const struct msl_lying turned = { size->turned_across, size->turned_along };
    const struct msl_lying lying = number % 2 == 0 ? listed : turned;
    const int is_known = number % 2 != 0 && turned.taken == listed.taken; /* of a square both ways are one */
    if (!is_offered(way, size, worth[number / 2]) || !is_stacked(most->cutting, size) || is_known)
        return nowhere;
    return lying.height <= height ? lying : nowhere;
}

/* Offers the best stack of the width that pieces of this number have, unless an earlier one has it. */
static int32_t offer_stack(struct msl_most *most, const struct msl_way *way, const int64_t *worth, int32_t number,
                           int64_t height, int32_t count)
{
    struct msl_offer stack = { .taken = lying_in_stack(most, way, worth, number, height).taken };
    int32_t stacked = 0;
    if (stack.taken == 0)
        return count;
    for (int32_t k = 2 * most->first; k < 2 * most->end; k++) {
        const struct msl_lying lying = lying_in_stack(most, way, worth, k, height);
        const struct msl_offer piece = { lying.height, 0, worth[k / 2], most->cutting->sizes[k / 2].count };
        if (lying.taken != stack.taken)
            continue;
        if (k < number)
            return count;
        stack.most = msl_most_added(stack.most, piece.most);
        most->stacked[stacked++] = piece;
    }
    stack.worth = fill_above(most, most->stacked, stacked, height, 0);
    most->offers[count] = stack;
    return count + 1;
}

/* Offers all that can lie in a strip of this height. */
static int32_t offer_all(struct msl_most *most, const struct msl_way *way, const int64_t *worth, int64_t height)
{
    int32_t count = offer_sizes(most, way, worth, height);
    for (int32_t k = 2 * most->first; k < 2 * most->end; k++)
        count = offer_stack(most, way, worth, k, height, count);
    return count;
}

/* All sums in a strip that holds one size only. */
static void fill_with_one_size(struct msl_most *most, const struct msl_way *way, const int64_t *worth, int64_t height)
{
    static const struct msl_sum nothing = { 0 };
    start_sums(most, &most->any_one);
    for (int32_t i = 0; i < most->cutting->size_count && most->status == MUSLIN_OK; i++) {
        most->first = i;
        most->end = i + 1;
        fill_all(most, most->offers, offer_all(most, way, worth, height), way->across);
        swap(&most->so_far, &most->any_one);
        merge(most, nothing, way->across);
        swap(&most->next, &most->any_one);
    }
    swap(&most->sums, &most->any_one);
}

/* All sums in a strip. */
static void fill_strip(struct msl_most *most, const struct msl_way *way, const int64_t *worth, int64_t height)
{
    if (most->cutting->one_size != 0)
        fill_with_one_size(most, way, worth, height);
    else
        fill_all(most, most->offers, offer_all(most, way, worth, height), way->across);
}

static int64_t most_of_strip(struct msl_most *most, const struct msl_way *way, const int64_t *worth, int64_t enough)
{
    if (most->cutting->one_size == 0)
        return fill_above(most, most->offers, offer_all(most, way, worth, way->along), way->across, enough);
    fill_strip(most, way, worth, way->along);
    return worth_in(&most->sums);
}

/* ---- in a sheet ------------------------------------------------------------------------------------------------- */

/* Offers the sizes that may be slit: of a panel. */
static int32_t offer_slits(struct msl_most *most, const struct msl_way *way, const int64_t *worth)
{
    const struct msl_cutting *cutting = most->cutting;
    int32_t count = 0;
    for (int32_t i = 0; i < cutting->size_count; i++) {
        const struct msl_piece_size *size = &cutting->sizes[i];
        struct msl_offer offer = { msl_lying_in(size, way->along, 0).taken, size->run_in, worth[i], size->count };
        if (way->panel != 0 && size->slit != 0 && worth[i] > 0 && offer.taken > 0)
            most->offers[count++] = offer;
    }
    return count;
}

/* What slit pieces can take together, and are worth. */
static void list_slits(struct msl_most *most, const struct msl_way *way, const int64_t *worth)
{
    fill_all(most, most->offers, offer_slits(most, way, worth), way->across);
    swap(&most->sums, &most->slit);
}

/* What a strip of each height is worth in the rest of the width beside each sum of slit pieces. */
static void list_strips(struct msl_most *most, const struct msl_way *way, const int64_t *worth)
{
    const struct msl_cutting *cutting = most->cutting;
    const size_t slits = most->slit.count;
    make_room(most, &most->strips, slits * (size_t)cutting->height_count);
    for (int32_t h = 0; h < cutting->height_count && most->status == MUSLIN_OK; h++) {
        struct msl_sum *strips = most->strips.at + (size_t)h * slits;
        size_t fits = 0;
        if (cutting->heights[h] <= way->along)
            fill_strip(most, way, worth, cutting->heights[h]);
        else
            start_sums(most, &most->sums);
        for (size_t i = slits; i-- > 0 && most->status == MUSLIN_OK;) {
            const int64_t room = way->across - most->slit.at[i].taken;
            while (fits < most->sums.count && most->sums.at[fits].taken <= room)
                fits++;
            strips[i] = most->sums.at[fits - 1];
        }
    }
}

/* The most that strips, one behind the other, are worth beside one sum of slit pieces. */
static int64_t most_behind(struct msl_most *most, const struct msl_way *way, size_t slit, int64_t enough)
{
    const struct msl_cutting *cutting = most->cutting;
    int32_t count = 0;
    for (int32_t h = 0; h < cutting->height_count; h++) {
        const int64_t worth = most->strips.at[(size_t)h * most->slit.count + slit].worth;
        const struct msl_offer offer = { cutting->heights[h], 0, worth, way->along };
        if (worth > 0)
            most->offers[count++] = offer;
    }
    return fill_above(most, most->offers, count, way->along, enough);
}

static int64_t most_of_sheet(struct msl_most *most, const struct msl_way *way, const int64_t *worth, int64_t enough)
{
    int64_t best = 0;
    list_slits(most, way, worth);
    list_strips(most, way, worth);
    for (size_t i = 0; i < most->slit.count && most->status == MUSLIN_OK; i++) {
        const int64_t slit = most->slit.at[i].worth;
        best = msl_greater(best, msl_most_added(slit, most_behind(most, way, i, enough - slit)));
    }
    return best;
}

/* ---- in a thing of a way ---------------------------------------------------------------------------------------- */

/* The least area that a piece takes. */
static int64_t area_of(const struct msl_piece_size *size)
{
    const int64_t listed = size->across * size->along;
    const int64_t turned = size->turned_across * size->turned_along;
    return turned > 0 ? msl_lesser(turned, listed) : listed;
}

/* 1 where no piece is worth more for its area than the whole thing, worth `enough`, has. */
static int is_enough_by_area(const struct msl_cutting *cutting, const struct msl_way *way, const int64_t *worth,
                             int64_t enough)
{
    for (int32_t i = 0; i < cutting->size_count; i++)
        if (msl_wide_compare(msl_wide_multiply(worth[i], way->across * way->along),
                             msl_wide_multiply(enough, area_of(&cutting->sizes[i]))) > 0)
            return 0;
    return 1;
}

int64_t msl_most_of(struct msl_most *most, int32_t way, const int64_t *worth, int64_t enough)
{
    const struct msl_way *of = &most->cutting->ways[way];
    if (is_enough_by_area(most->cutting, of, worth, enough))
        return enough;
    return of->sheet != 0 ? most_of_sheet(most, of, worth, enough) : most_of_strip(most, of, worth, enough);
}

/* ---- begin and end ---------------------------------------------------------------------------------------------- */

/* Each size, or stacks of it by both ways of lying, or heights; and what lies in one stack, each size once. */
static size_t offers_of(const struct msl_cutting *cutting)
{
    return 3 * (size_t)cutting->size_count + (size_t)cutting->height_count + 1;
}

muslin_status msl_most_start(struct msl_most *most, const struct msl_cutting *cutting, int64_t most_steps,
                             struct msl_told *told, const struct muslin_allocator *allocator)
{
    static const struct msl_most nothing = { 0 };
    *most = nothing;
    most->cutting = cutting;
    most->allocator = allocator;
    most->told = told;
    most->most_steps = most_steps;
    most->end = cutting->size_count;
    most->offers = allocator->alloc(allocator->context, offers_of(cutting) * sizeof *most->offers);
    if (most->offers == NULL)
        most->status = MUSLIN_ERR_NO_MEMORY;
    else
        most->stacked = most->offers + 2 * (size_t)cutting->size_count + (size_t)cutting->height_count;
    return most->status;
}

void msl_most_end(struct msl_most *most)
{
    const struct muslin_allocator *allocator = most->allocator;
    if (most->offers != NULL)
        allocator->free(allocator->context, most->offers, offers_of(most->cutting) * sizeof *most->offers);
    give_back(most, &most->sums);
    give_back(most, &most->so_far);
    give_back(most, &most->next);
    give_back(most, &most->any_one);
    give_back(most, &most->slit);
    give_back(most, &most->strips);
}
