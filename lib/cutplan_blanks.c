/* cutplan_blanks.c - every piece of a cutting plan by itself, where it is cut from the bolt or the piece of stock.
 *
 * SPDX-License-Identifier: MIT */
#include "cutplan_plan.h"

/* A row of strips that lies in no other, and the strips in which its pieces are: those that it holds, or itself. */
struct thing {
    const struct muslin_cutplan_strip *strip;
    uint64_t first;
    uint64_t behind;
    int64_t pieces; /* in each */
};

static int64_t places_in(const struct muslin_cutplan *plan, const struct muslin_cutplan_strip *strip)
{
    int64_t pieces = 0;
    for (int64_t i = 0; i < strip->places; i++)
        pieces += msl_place_of(plan, (uint64_t)(strip->first_place + i))->count;
    return pieces;
}

/* A strip counts `times` in its holder; one that has none is there once. */
static int64_t times_in_thing(const struct muslin_cutplan_strip *strip)
{
    return strip->holder < 0 ? 1 : strip->times;
}

static struct thing thing_at(const struct muslin_cutplan *plan, uint64_t row)
{
    struct thing thing = { msl_strip_of(plan, row), row, row + 1, 0 };
    if (thing.strip->kind != MUSLIN_CUTPLAN_STRIP_STRIP)
        thing.first++;
    while (thing.behind < plan->strips.used && msl_strip_of(plan, thing.behind)->holder == (int64_t)row)
        thing.behind++;
    for (uint64_t i = thing.first; i < thing.behind; i++)
        thing.pieces += places_in(plan, msl_strip_of(plan, i)) * times_in_thing(msl_strip_of(plan, i));
    return thing;
}

/* The lower left corner of a piece of a strip, from that of what holds the strip. */
static struct muslin_cutplan_blank blank_in_strip(const struct muslin_cutplan *plan, uint64_t row, int64_t number)
{
    const struct muslin_cutplan_strip *strip = msl_strip_of(plan, row);
    const int64_t in_each = places_in(plan, strip);
    int64_t at = strip->first_place;
    int64_t left = number % in_each;
    for (; left >= msl_place_of(plan, (uint64_t)at)->count; at++)
        left -= msl_place_of(plan, (uint64_t)at)->count;
    const struct muslin_cutplan_place *place = msl_place_of(plan, (uint64_t)at);
    const struct muslin_cutplan_blank blank = {
        .size = (uint32_t)sizeof blank, .piece = place->piece, .place = at, .strip = (int64_t)row, .stock = -1,
        .x = strip->x + place->x + left * place->pitch, .y = strip->y + number / in_each * strip->height + place->y,
        .width = place->width, .height = place->height, .turned = place->turned, .trimmed = place->trimmed,
        .layers = (int32_t)(msl_pieces_in(plan, place) / place->count)
    };
    return blank;
}

/* The piece of stock lies as its row says: where first cuts run along it, its strips stand upright in it. */
static void turn(struct muslin_cutplan_blank *blank, const struct muslin_cutplan_strip *stock)
{
    const struct muslin_cutplan_blank lying = *blank;
    blank->x = stock->height - lying.y - lying.height;
    blank->y = lying.x;
    blank->width = lying.height;
    blank->height = lying.width;
    blank->turned = !lying.turned;
}

/* A piece of a thing, which is the one of that number of its row. */
static struct muslin_cutplan_blank blank_in_thing(const struct muslin_cutplan *plan, const struct thing *thing,
                                                  int64_t number)
{
    const int64_t which = number / thing->pieces;
    int64_t left = number % thing->pieces;
    uint64_t row = thing->first;
    for (;; row++) {
        const struct muslin_cutplan_strip *strip = msl_strip_of(plan, row);
        const int64_t pieces = places_in(plan, strip) * times_in_thing(strip);
        if (left < pieces)
            break;
        left -= pieces;
    }
    struct muslin_cutplan_blank blank = blank_in_strip(plan, row, left);
    blank.stock = thing->strip->stock;
    if (thing->strip->kind == MUSLIN_CUTPLAN_STRIP_PANEL)
        blank.y += thing->strip->y;
    if (thing->strip->kind != MUSLIN_CUTPLAN_STRIP_STOCK)
        blank.y += which * thing->strip->height;
    else
        blank.sheet = which;
    if (thing->strip->turned)
        turn(&blank, thing->strip);
    return blank;
}

/* Writes from piece `first` on what there is room for. Returns how many pieces there are in all. */
static int64_t write_blanks(const struct muslin_cutplan *plan, int64_t first, struct muslin_cutplan_blank *rows,
                            size_t row_size, size_t capacity)
{
    int64_t before = 0;
    int64_t sheets = 0;
    size_t given = 0;
    for (uint64_t row = 0; row < plan->strips.used;) {
        const struct thing thing = thing_at(plan, row);
        const int64_t all = thing.pieces * thing.strip->times;
        for (int64_t i = first > before ? first - before : 0; i < all && given < capacity; i++) {
            struct muslin_cutplan_blank blank = blank_in_thing(plan, &thing, i);
            blank.sheet += sheets;
            msl_write_row(rows, row_size, given++, &blank, (uint32_t)sizeof blank);
        }
        before += all;
        sheets += thing.strip->kind == MUSLIN_CUTPLAN_STRIP_STOCK ? thing.strip->times : 0;
        row = thing.behind;
    }
    return before;
}

muslin_status muslin_cutplan_blanks(const struct muslin_cutplan *plan, int64_t first, struct muslin_cutplan_blank *rows,
                                    size_t row_size, size_t capacity, size_t *count, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    msl_want_plan(&check, plan);
    msl_want_pointer(&check, MUSLIN_ARG_OUTPUT, count);
    if (capacity != 0) {
        msl_want_row_size(&check, row_size, (uint32_t)sizeof *rows);
        msl_want_pointer(&check, MUSLIN_ARG_ROWS, rows);
    }
    if (check.status != MUSLIN_OK)
        return check.status;
    const int64_t all = write_blanks(plan, 0, NULL, 0, 0);
    msl_want_between(&check, MUSLIN_ARG_INDEX, first, 0, all);
    if (check.status != MUSLIN_OK)
        return check.status;
    write_blanks(plan, first, rows, row_size, capacity);
    *count = (size_t)(all - first);
    return MUSLIN_OK;
}
