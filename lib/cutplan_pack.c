/* cutplan_pack.c - are so many strips of a way enough for so many pieces of each size?
 *
 * SPDX-License-Identifier: MIT
 *
 * What lies in a strip is a row of counts, the size that takes most first. If there is a packing at all, then one in
 * which no row is later in this order than the one before it, a strip with more of an earlier size being earlier, and
 * of those the one whose first strips are earliest: in it nothing that still comes would fit into a strip besides. So
 * strips are filled one after the other, each as full as can be, and when the last does not hold the rest, the last
 * that can gives one piece back. What may stay empty in all is known beforehand. */
#include "cutplan_pack.h"

void msl_pack_begin(struct msl_packing *packing)
{
    packing->size_count = 0;
    packing->used = 0;
}

void msl_pack_add(struct msl_packing *packing, const struct msl_cutting *cutting, int32_t way, int32_t size,
                  int64_t wanted)
{
    const int64_t taken = msl_taken_in(&cutting->sizes[size], cutting->ways[way].along, NULL);
    const struct msl_packed added = {
        .taken = taken, .run_in = cutting->sizes[size].run_in, .wanted = wanted, .size = size
    };
    int32_t at = packing->size_count;
    if (wanted <= 0)
        return;
    for (; at > 0 && packing->sizes[at - 1].taken < taken; at--)
        packing->sizes[at] = packing->sizes[at - 1];
    packing->sizes[at] = added;
    packing->size_count++;
}

struct filling {
    struct msl_packing *packing;
    int64_t across;
    int64_t spare; /* what may still stay empty */
    int64_t left;  /* pieces not in a strip yet */
    int32_t one_size;
};

static int32_t *strip_of(const struct filling *filling, int32_t strip)
{
    return filling->packing->counts + (int64_t)strip * filling->packing->size_count;
}

/* Puts as much as fits into a strip, of the sizes from `from` on. */
static void fill(struct filling *filling, int32_t strip, int32_t from)
{
    struct msl_packing *packing = filling->packing;
    int32_t *counts = strip_of(filling, strip);
    int64_t *room = &packing->rooms[strip];
    for (int32_t i = from; i < packing->size_count; i++) {
        struct msl_packed *size = &packing->sizes[i];
        int64_t fits = 0;
        if (*room >= size->run_in + size->taken)
            fits = (*room - size->run_in) / size->taken;
        if (filling->one_size && *room < filling->across)
            fits = 0;
        counts[i] = (int32_t)msl_lesser(fits, size->wanted);
        if (counts[i] > 0)
            *room -= size->run_in + counts[i] * size->taken;
        size->wanted -= counts[i];
        filling->left -= counts[i];
    }
    packing->steps += packing->size_count + 2; /* looked at before and after, too */
}

/* What stays empty in a strip, run-ins included. */
static int64_t empty_in(const struct filling *filling, int32_t strip)
{
    const int32_t *counts = strip_of(filling, strip);
    int64_t empty = filling->across;
    for (int32_t i = 0; i < filling->packing->size_count; i++)
        empty -= counts[i] * filling->packing->sizes[i].taken;
    return empty;
}

/* Empties a strip. */
static void take_out(struct filling *filling, int32_t strip)
{
    struct msl_packing *packing = filling->packing;
    const int32_t *counts = strip_of(filling, strip);
    for (int32_t i = 0; i < packing->size_count; i++) {
        packing->sizes[i].wanted += counts[i];
        filling->left += counts[i];
    }
}

/* One piece of a size less in a strip. */
static void take_one(struct filling *filling, int32_t strip, int32_t at)
{
    struct msl_packed *size = &filling->packing->sizes[at];
    int32_t *count = strip_of(filling, strip) + at;
    --*count;
    size->wanted++;
    filling->left++;
    filling->packing->rooms[strip] += size->taken + (*count == 0 ? size->run_in : 0);
}

/* The next content of a strip in the order: of the last size that has some, one less, and what then fits of later
 * ones; skipped where the piece would fit again. The first size stays: of the largest pieces that are left each has to
 * lie somewhere. Returns 0 after the last. */
static int next_content(struct filling *filling, int32_t strip)
{
    const struct msl_packing *packing = filling->packing;
    const int32_t *counts = strip_of(filling, strip);
    int32_t first = 0;
    int32_t last = 0;
    int64_t taken = 0;
    while (counts[first] == 0)
        first++;
    do {
        last = packing->size_count - 1;
        while (counts[last] == 0)
            last--;
        if (last == first && counts[last] == 1)
            return 0;
        take_one(filling, strip, last);
        fill(filling, strip, last + 1);
        taken = packing->sizes[last].taken + (counts[last] == 0 ? packing->sizes[last].run_in : 0);
    } while (packing->rooms[strip] >= taken);
    return 1;
}

/* 1 when the content of a strip is not earlier in the order than that of the one before. */
static int in_order(const struct filling *filling, int32_t strip)
{
    const int32_t *now = strip_of(filling, strip);
    const int32_t *before = strip_of(filling, strip - 1);
    for (int32_t i = 0; i < filling->packing->size_count; i++)
        if (now[i] != before[i])
            return now[i] < before[i];
    return 1;
}

/* Begins a strip. */
static void open_strip(struct filling *filling, int32_t strip)
{
    filling->packing->rooms[strip] = filling->across;
    fill(filling, strip, 0);
}

/* Brings a strip to the first content, from what it has on, that keeps order and leaves no more empty than may be.
 * Returns 0 when there is none. */
static int settle(struct filling *filling, int32_t strip)
{
    for (;;) {
        const int64_t empty = empty_in(filling, strip);
        if (empty <= filling->spare && (strip == 0 || in_order(filling, strip))) {
            filling->spare -= empty;
            return 1;
        }
        if (!next_content(filling, strip))
            return 0;
    }
}

/* Back to the last strip that has another content. Returns 0 when none has. */
static int go_back(struct filling *filling, int32_t *strip)
{
    do {
        take_out(filling, *strip);
        if (*strip == 0)
            return 0;
        --*strip;
        filling->spare += empty_in(filling, *strip);
    } while (!next_content(filling, *strip));
    return 1;
}

int msl_pack(struct msl_packing *packing, const struct msl_cutting *cutting, int32_t way, int64_t strips)
{
    struct filling filling = { .packing = packing, .across = cutting->ways[way].across, .one_size = cutting->one_size };
    const int64_t until = packing->steps + packing->most_steps;
    int32_t strip = 0;
    if (strips * packing->size_count > MSL_PACK_ROOM)
        return MSL_PACK_UNKNOWN;
    filling.spare = strips * filling.across;
    for (int32_t i = 0; i < packing->size_count; i++) {
        filling.left += packing->sizes[i].wanted;
        filling.spare -= packing->sizes[i].wanted * packing->sizes[i].taken;
    }
    if (filling.left == 0)
        return MSL_PACK_YES;
    if (filling.spare < 0)
        return MSL_PACK_NO;
    open_strip(&filling, strip);
    for (;;) {
        if (packing->steps > until)
            return MSL_PACK_UNKNOWN;
        if (settle(&filling, strip)) {
            packing->used = strip + 1;
            if (filling.left == 0)
                return MSL_PACK_YES;
            open_strip(&filling, ++strip); /* there is one: what is left fits into what may stay empty */
        } else if (!go_back(&filling, &strip)) {
            return MSL_PACK_NO;
        }
    }
}
