/* cutplan_repack.c - whether pieces fit into strips: one piece after the other, in every order that matters.
 *
 * SPDX-License-Identifier: MIT
 *
 * If the pieces fit at all, then so that in each strip the sizes come in order, the widest first, that no strip comes
 * before the one it follows, compared piece by piece, and that nothing that lies in a later strip would fit into an
 * earlier one: of all packings the one whose strips are earliest. Only such packings are looked at. So a strip goes on
 * while anything fits, and the next begins with the widest piece that is left. */
#include "cutplan_repack.h"
#include "wide.h"

/* Where a piece lies. Before the first one is a place that is no piece's: behind it, too, a strip begins. */
struct place {
    int64_t room;   /* left in its strip after it */
    int64_t spare;  /* what may still stay empty, after its run-in */
    int32_t kind;   /* of the pieces */
    int32_t first;  /* place that begins its strip */
    int32_t before; /* place that begins the strip before */
    int32_t tied;   /* 1: so far its strip is as the one before */
};

struct packing {
    struct msl_repacked *pieces;
    struct place *places;
    int64_t room;
    int32_t count;    /* of pieces' kinds */
    int32_t one_size;
};

static int64_t needed(const struct packing *packing, const struct place *last, int32_t kind)
{
    return packing->pieces[kind].taken + (last->kind == kind ? 0 : packing->pieces[kind].run_in);
}

static int fits_beside(const struct packing *packing, const struct place *last, int32_t kind)
{
    if (packing->pieces[kind].wanted == 0 || needed(packing, last, kind) > last->room)
        return 0;
    return packing->one_size == 0 || kind == last->kind;
}

/* The first kind from `from` on that fits; count: none does. */
static int32_t first_beside(const struct packing *packing, const struct place *last, int32_t from)
{
    int32_t kind = from;
    while (kind < packing->count && !fits_beside(packing, last, kind))
        kind++;
    return kind;
}

static int32_t first_wanted(const struct packing *packing)
{
    int32_t kind = 0;
    while (packing->pieces[kind].wanted == 0)
        kind++;
    return kind;
}

/* The place that begins the next strip. Returns 0 where there is none: where strips are used up, what may stay empty
 * is, too, as long as any piece is left. */
static int begin_strip(const struct packing *packing, int32_t at, struct place *place)
{
    const struct place *last = place - 1;
    place->kind = first_wanted(packing);
    place->first = at;
    place->before = last->first;
    place->tied = packing->places[last->first].kind == place->kind;
    place->spare = last->spare - last->room - packing->pieces[place->kind].run_in;
    place->room = packing->room - packing->pieces[place->kind].run_in - packing->pieces[place->kind].taken;
    return place->spare >= 0 && place->room >= 0;
}

/* What the strip before has as many pieces from its beginning. */
static int32_t kind_before(const struct packing *packing, int32_t at, const struct place *last)
{
    return packing->places[last->before + at - last->first].kind;
}

/* The place that goes on with a strip. */
static void go_on(const struct packing *packing, int32_t at, int32_t kind, struct place *place)
{
    const struct place *last = place - 1;
    *place = *last;
    place->kind = kind;
    place->room -= needed(packing, last, kind);
    place->spare -= needed(packing, last, kind) - packing->pieces[kind].taken;
    place->tied = last->tied && kind_before(packing, at, last) == kind;
}

/* The next way to lay piece number `at`, of kind `from` or a later one. Returns 0 where there is none. */
static int next_place(const struct packing *packing, int32_t at, int32_t from)
{
    struct place *place = &packing->places[at];
    const struct place *last = place - 1;
    if (first_beside(packing, last, 0) == packing->count)
        return begin_strip(packing, at, place) && from <= place->kind;
    int32_t least = from > last->kind ? from : last->kind;
    if (last->tied && kind_before(packing, at, last) > least)
        least = kind_before(packing, at, last);
    const int32_t kind = first_beside(packing, last, least);
    if (kind < packing->count)
        go_on(packing, at, kind, place);
    return kind < packing->count;
}

/* 1 where all that there is was looked at in vain. */
static int look_at_all(struct msl_most *most, struct packing *packing, int64_t total)
{
    int32_t at = 1;
    int32_t from = 0;
    while (at <= total && most->status == MUSLIN_OK) {
        msl_most_count(most, packing->count);
        if (next_place(packing, at, from)) {
            packing->pieces[packing->places[at++].kind].wanted--;
            from = 0;
        } else if (at == 1) {
            return 1;
        } else {
            const int32_t kind = packing->places[--at].kind;
            packing->pieces[kind].wanted++;
            from = kind + 1;
        }
    }
    return 0;
}

static void sort_pieces(struct msl_repacked *pieces, int32_t count)
{
    for (int32_t i = 1; i < count; i++) {
        const struct msl_repacked piece = pieces[i];
        int32_t k = i;
        for (; k > 0 && pieces[k - 1].taken < piece.taken; k--)
            pieces[k] = pieces[k - 1];
        pieces[k] = piece;
    }
}

int msl_repack_fails(struct msl_most *most, struct msl_repacked *pieces, int32_t count, int64_t strips, int64_t room)
{
    const struct muslin_allocator *allocator = most->allocator;
    struct packing packing = { .pieces = pieces, .room = room, .count = count, .one_size = most->cutting->one_size };
    struct place begin = { .kind = count };
    int64_t total = 0;
    int64_t taken = 0;
    for (int32_t i = 0; i < count; i++) {
        total += pieces[i].wanted;
        taken = msl_most_added(taken, pieces[i].wanted * pieces[i].taken);
    }
    strips = msl_lesser(strips, total);
    if (msl_wide_compare(msl_wide_multiply(strips, room), msl_wide_from(taken)) < 0)
        return 1;
    if (total > (int64_t)MSL_SUMS_MAX) {
        most->status = MUSLIN_ERR_WORK_LIMIT;
        return 0;
    }
    begin.spare = strips * room - taken;
    packing.places = allocator->alloc(allocator->context, (size_t)(total + 1) * sizeof *packing.places);
    if (packing.places == NULL) {
        most->status = MUSLIN_ERR_NO_MEMORY;
        return 0;
    }
    packing.places[0] = begin;
    sort_pieces(pieces, count);
    const int fails = look_at_all(most, &packing, total);
    allocator->free(allocator->context, packing.places, (size_t)(total + 1) * sizeof *packing.places);
    return fails;
}
