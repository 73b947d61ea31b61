/* cutplan_deal.c - few pieces dealt out to pieces of stock in every way.
 *
 * SPDX-License-Identifier: MIT
 *
 * Piece after piece lies in a blank, a strip or a piece of stock that is there already, or begins a new one, a strip as
 * high as any may be. Where one has no choice left, the one before it takes its next. Equal pieces lie in strips in the
 * order in which these were begun. */
#include "cutplan_deal.h"

/* What a piece may take: so many choices, twice as many where it may lie turned. */
struct target {
    int32_t blank; /* -1, or what the piece lies in; the first that is not counts */
    int32_t strip; /* -1, or as well */
    int32_t way;   /* -1, or of the sheet that is begun; else it is */
    int32_t sheet;
    int64_t height; /* of a strip that is begun */
};

static int32_t targets_of(const struct msl_stock_deal *deal)
{
    const struct msl_cutting *cutting = deal->making->cutting;
    return deal->blank_count + deal->strip_count + (deal->sheet_count + cutting->way_count) * cutting->height_count;
}

static struct target target_at(const struct msl_stock_deal *deal, int32_t number)
{
    const struct msl_cutting *cutting = deal->making->cutting;
    struct target target = { .blank = -1, .strip = -1, .way = -1 };
    if (number < deal->blank_count) {
        target.blank = number;
        target.strip = deal->blanks[number].strip;
        return target;
    }
    number -= deal->blank_count;
    if (number < deal->strip_count) {
        target.strip = number;
        return target;
    }
    number -= deal->strip_count;
    target.height = cutting->heights[number % cutting->height_count];
    number /= cutting->height_count;
    if (number < deal->sheet_count)
        target.sheet = number;
    else
        target.way = number - deal->sheet_count;
    return target;
}

/* ---- one piece --------------------------------------------------------------------------------------------------- */

static int is_stacked(const struct msl_stock_deal *deal, const struct msl_piece_size *size)
{
    return deal->making->cutting->stacked && size->run_in == 0 && !size->level;
}

/* 1 where the way it lies is one to look at: in a stack any that is not too high, else the narrowest. */
static int may_lie(const struct msl_stock_deal *deal, const struct msl_piece_size *size, int64_t height, int32_t turned)
{
    int32_t narrowest;
    if (msl_taken_in(size, height, &narrowest) == 0)
        return 0;
    const int fits = turned ? size->turned_across > 0 && size->turned_along <= height : size->along <= height;
    return turned == narrowest || (is_stacked(deal, size) && fits);
}

/* The size of the last piece before this one in a strip; -1: it holds none. Equal pieces follow each other. */
static int32_t size_before(const struct msl_stock_deal *deal, int32_t piece, int32_t strip)
{
    int32_t size = -1;
    for (int32_t i = 0; i < piece; i++)
        if (deal->pieces[i].strip == strip)
            size = deal->pieces[i].size;
    return size;
}

/* 1 where a strip has no piece of another size, or may have some. */
static int may_join(const struct msl_stock_deal *deal, int32_t piece, int32_t strip)
{
    const int32_t before = size_before(deal, piece, strip);
    return !deal->making->cutting->one_size || before < 0 || before == deal->pieces[piece].size;
}

/* What a piece takes of the strip. */
static int64_t taken_of(const struct msl_stock_deal *deal, int32_t piece, int32_t strip, int64_t across)
{
    const int32_t size = deal->pieces[piece].size;
    return across + (size_before(deal, piece, strip) == size ? 0 : deal->making->cutting->sizes[size].run_in);
}

/* Puts a piece above others in a blank. */
static int put_on(struct msl_stock_deal *deal, struct msl_dealt *piece, const struct target *target, int64_t across,
                  int64_t along)
{
    struct msl_dealt_blank *blank = &deal->blanks[target->blank];
    const struct msl_piece_size *size = &deal->making->cutting->sizes[piece->size];
    if (!is_stacked(deal, size) || across != blank->across || along > blank->along)
        return 0;
    blank->along -= along;
    piece->taken = along;
    piece->blank = target->blank;
    piece->strip = target->strip;
    piece->on = 1;
    return 1;
}

/* Begins what the target wants begun. Returns 0 where there is no room for it. */
static int begin(struct msl_stock_deal *deal, struct msl_dealt *piece, const struct target *target)
{
    const struct msl_cutting *cutting = deal->making->cutting;
    const int32_t way = target->way >= 0 ? target->way : deal->sheets[target->sheet].way;
    const int64_t along = target->way >= 0 ? cutting->ways[way].along : deal->sheets[target->sheet].along;
    const int32_t sheet = target->way >= 0 ? deal->sheet_count : target->sheet;
    if (target->height > along || (target->way >= 0 && deal->making->in_hand[cutting->ways[way].stock] == 0))
        return 0;
    const struct msl_dealt_sheet left = { .along = along - target->height, .way = way };
    const struct msl_dealt_strip strip = {
        .height = target->height, .room = cutting->ways[way].across, .sheet = sheet
    };
    deal->sheets[sheet] = left;
    deal->strips[deal->strip_count++] = strip;
    piece->opened = target->height;
    piece->sheet_too = target->way >= 0;
    deal->sheet_count += piece->sheet_too;
    deal->making->in_hand[cutting->ways[way].stock] -= piece->sheet_too;
    return 1;
}

/* Takes back what put() and begin() did. */
static void take_back(struct msl_stock_deal *deal, struct msl_dealt *piece)
{
    if (piece->on) {
        deal->blanks[piece->blank].along += piece->taken;
        return;
    }
    struct msl_dealt_strip *strip = &deal->strips[piece->strip];
    struct msl_dealt_sheet *sheet = &deal->sheets[strip->sheet];
    strip->room += piece->taken;
    deal->blank_count -= piece->blank >= 0;
    deal->strip_count -= piece->opened > 0;
    sheet->along += piece->opened;
    deal->sheet_count -= piece->sheet_too;
    deal->making->in_hand[deal->making->cutting->ways[sheet->way].stock] += piece->sheet_too;
}

/* Puts a piece where its choice says. Returns 0 where it can't lie there. */
static int put(struct msl_stock_deal *deal, int32_t number)
{
    struct msl_dealt *piece = &deal->pieces[number];
    const struct msl_piece_size *size = &deal->making->cutting->sizes[piece->size];
    const struct target target = target_at(deal, piece->choice / 2);
    const int32_t turned = piece->choice % 2;
    const int32_t strip = target.strip >= 0 ? target.strip : deal->strip_count;
    const int64_t height = target.strip >= 0 ? deal->strips[strip].height : target.height;
    const int64_t along = turned ? size->turned_along : size->along;
    const int64_t across = turned ? size->turned_across : size->across;
    piece->taken = piece->opened = 0;
    piece->blank = -1;
    piece->on = piece->sheet_too = 0;
    piece->turned = turned;
    if (!may_lie(deal, size, height, turned) || !may_join(deal, number, strip))
        return 0;
    if (number > 0 && piece[-1].size == piece->size && piece[-1].strip > strip)
        return 0;
    if (target.blank >= 0)
        return put_on(deal, piece, &target, across, along);
    if (target.strip < 0 && !begin(deal, piece, &target))
        return 0;
    piece->strip = strip;
    const int64_t taken = taken_of(deal, number, strip, across);
    if (taken > deal->strips[strip].room) {
        take_back(deal, piece);
        return 0;
    }
    deal->strips[strip].room -= taken;
    piece->taken = taken;
    if (is_stacked(deal, size)) {
        const struct msl_dealt_blank blank = { .across = across, .along = height - along, .strip = strip };
        piece->blank = deal->blank_count;
        deal->blanks[deal->blank_count++] = blank;
    }
    return 1;
}

/* ---- all pieces -------------------------------------------------------------------------------------------------- */

/* 1 where a plan of any pieces that are dealt has room. */
static int has_room(const struct msl_making *making)
{
    const struct msl_pool *pool = making->pool;
    return (making->plan.most >= MSL_DEALT_MAX) + (pool->most_patterns >= MSL_DEALT_MAX) +
           (pool->most_strips >= MSL_DEALT_MAX) + (pool->most_laid >= MSL_DEALT_MAX) == 4;
}

/* The pieces wanted, one by one. Returns 0 where they are too many. */
static int take_pieces(struct msl_stock_deal *deal)
{
    const struct msl_making *making = deal->making;
    deal->piece_count = deal->strip_count = deal->sheet_count = deal->blank_count = 0;
    for (int32_t i = 0; i < making->cutting->size_count; i++)
        for (int64_t n = 0; n < making->wanted[i]; n++) {
            if (deal->piece_count == MSL_DEALT_MAX)
                return 0;
            const struct msl_dealt piece = { .size = i, .choice = -1 };
            deal->pieces[deal->piece_count++] = piece;
        }
    return 1;
}

/* Pieces of a blank, or with -1 those of the strip that are in none, laid in the last strip of the pool. Equal ones of
 * a strip follow each other. */
static void lay(const struct msl_stock_deal *deal, int32_t strip, int32_t blank)
{
    struct msl_pool *pool = deal->making->pool;
    int32_t last = -1;
    for (int32_t i = 0; i < deal->piece_count; i++) {
        const struct msl_dealt *piece = &deal->pieces[i];
        int32_t turned;
        if (piece->strip != strip || piece->blank != blank)
            continue;
        msl_taken_in(&deal->making->cutting->sizes[piece->size], deal->strips[strip].height, &turned);
        const struct msl_laid laid = { piece->size, 1, blank >= 0 && last >= 0, turned != piece->turned };
        if (blank < 0 && last == piece->size)
            pool->laid[pool->laid_count - 1].count++;
        else
            msl_pool_lay(pool, laid);
        last = piece->size;
    }
}

static void add_sheet(const struct msl_stock_deal *deal, int32_t sheet)
{
    struct msl_pool *pool = deal->making->pool;
    msl_pool_begin(pool, deal->sheets[sheet].way);
    for (int32_t s = 0; s < deal->strip_count; s++) {
        if (deal->strips[s].sheet != sheet)
            continue;
        msl_pool_strip(pool, deal->strips[s].height);
        lay(deal, s, -1);
        for (int32_t b = 0; b < deal->blank_count; b++)
            if (deal->blanks[b].strip == s)
                lay(deal, s, b);
    }
    msl_plan_put(deal->making, pool->pattern_count - 1, 1);
}

/* The plan that was dealt. There is no other, so what the pool has is not needed. */
static void keep(const struct msl_stock_deal *deal)
{
    struct msl_pool *pool = deal->making->pool;
    pool->pattern_count = pool->strip_count = pool->laid_count = 0;
    msl_plan_begin(deal->making);
    for (int32_t i = 0; i < deal->sheet_count; i++)
        add_sheet(deal, i);
    msl_plan_end(deal->making, 1);
}

int msl_deal(struct msl_stock_deal *deal, struct msl_making *making, int64_t most_steps)
{
    int32_t at = 0;
    int64_t steps = 0;
    deal->making = making;
    msl_plan_begin(making);
    if (!has_room(making) || !take_pieces(deal))
        return MSL_DEAL_UNKNOWN;
    while (at < deal->piece_count && steps < most_steps) {
        struct msl_dealt *piece = &deal->pieces[at];
        steps++;
        if (++piece->choice < 2 * targets_of(deal)) {
            at += put(deal, at);
        } else {
            piece->choice = -1;
            if (at == 0)
                break;
            take_back(deal, &deal->pieces[--at]);
        }
    }
    making->pricing->sack.steps += steps;
    if (at < deal->piece_count)
        return steps < most_steps ? MSL_DEAL_NO : MSL_DEAL_UNKNOWN;
    keep(deal);
    return MSL_DEAL_YES;
}
