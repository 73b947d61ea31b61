/* test_cutplan_made.h - the parts of the suite of cutplan.h, one a file, and what they share: requests made short, and
 * a plan held against its request piece by piece, by geometry alone.
 *
 * SPDX-License-Identifier: MIT */
#ifndef MUSLIN_TEST_CUTPLAN_MADE_H
#define MUSLIN_TEST_CUTPLAN_MADE_H

#include "cutplan_check.h"
#include "cutplan_plan.h"
#include "failing_allocator.h"
#include "refusals.h"

void add_cutplan_request(Suite *suite);
void add_cutplan_rows(Suite *suite);
void add_cutplan_known(Suite *suite);
void add_cutplan_blanks(Suite *suite);
void add_long_cutplan_request(Suite *suite);
void add_long_cutplan_rows(Suite *suite);
void add_long_cutplan_blanks(Suite *suite);

enum { PIECES = 60, STOCKS = 6, STRIPS = 2000, PLACES = 6000 };

/* A request in the making, and the plan for it read back. */
struct planned {
    struct muslin_cutplan_spec spec;
    struct muslin_blank_spec pieces[PIECES];
    struct muslin_cutplan_stock_spec stock[STOCKS];
    size_t n;
    size_t stock_n;
    struct muslin_cutplan *plan;
    struct muslin_cutplan_total totals;
    struct muslin_cutplan_strip strips[STRIPS];
    struct muslin_cutplan_place places[PLACES];
    struct muslin_cutplan_piece made[PIECES];
    size_t strip_count;
    size_t place_count;
};

static inline void start(struct planned *p, muslin_len usable_width)
{
    const struct muslin_cutplan_spec spec = MUSLIN_CUTPLAN_SPEC_INIT;
    memset(p, 0, sizeof *p);
    p->spec = spec;
    p->spec.usable_width = usable_width;
    p->spec.work_limit = 2000000;
}

static inline struct muslin_blank_spec *want(struct planned *p, int64_t count, muslin_len width, muslin_len length)
{
    struct muslin_blank_spec piece = MUSLIN_BLANK_SPEC_INIT;
    piece.cut_width = width;
    piece.cut_length = length;
    piece.count = count;
    ck_assert_uint_lt(p->n, PIECES);
    p->pieces[p->n] = piece;
    return &p->pieces[p->n++];
}

static inline struct muslin_blank_spec *want_kind(struct planned *p, int32_t kind, int64_t count, muslin_len width,
                                                  muslin_len length)
{
    struct muslin_blank_spec *piece = want(p, count, width, length);
    piece->kind = kind;
    return piece;
}

static inline struct muslin_cutplan_stock_spec *have(struct planned *p, int64_t count, muslin_len width,
                                                     muslin_len length)
{
    struct muslin_cutplan_stock_spec stock = MUSLIN_CUTPLAN_STOCK_SPEC_INIT;
    stock.width = width;
    stock.length = length;
    stock.count = count;
    ck_assert_uint_lt(p->stock_n, STOCKS);
    p->stock[p->stock_n] = stock;
    return &p->stock[p->stock_n++];
}

static inline muslin_status plan_with(struct planned *p, const struct muslin_allocator *allocator,
                                      struct muslin_problem *problem)
{
    return muslin_cutplan_create(&p->spec, p->pieces, sizeof p->pieces[0], p->n, p->stock, sizeof p->stock[0],
                                 p->stock_n, allocator, NULL, NULL, &p->plan, problem);
}

static inline muslin_status try_plan(struct planned *p, struct muslin_problem *problem)
{
    struct muslin_allocator allocator;
    ck_ok(muslin_allocator_libc(&allocator));
    return plan_with(p, &allocator, problem);
}

static inline void read_plan(struct planned *p)
{
    size_t count = 0;
    p->totals.size = (uint32_t)sizeof p->totals;
    ck_ok(muslin_cutplan_totals(p->plan, &p->totals, NULL));
    ck_ok(muslin_cutplan_strips(p->plan, p->strips, sizeof p->strips[0], STRIPS, &p->strip_count, NULL));
    ck_ok(muslin_cutplan_places(p->plan, p->places, sizeof p->places[0], PLACES, &p->place_count, NULL));
    ck_ok(muslin_cutplan_pieces(p->plan, p->made, sizeof p->made[0], PIECES, &count, NULL));
    ck_assert_uint_eq(count, p->n);
}

/* ---- held against the request ----------------------------------------------------------------------------------- */

static inline int planned_has(const struct planned *p, uint32_t flag)
{
    return (p->spec.flags & flag) != 0;
}

static inline int64_t planned_layers(const struct planned *p)
{
    return planned_has(p, MUSLIN_CUTPLAN_FOLDED) ? 2 : 1;
}

static inline int64_t planned_times(const struct planned *p, const struct muslin_cutplan_strip *strip)
{
    return strip->times * (strip->holder < 0 ? 1 : p->strips[strip->holder].times);
}

/* Room that a strip has from its left end on, without what is squared off at its right end. */
static inline muslin_len planned_room(const struct planned *p, const struct muslin_cutplan_strip *strip)
{
    const muslin_len right = p->spec.end_loss - p->spec.end_loss / 2;
    return strip->width -
           (planned_has(p, MUSLIN_CUTPLAN_FOLDED) || strip->kind == MUSLIN_CUTPLAN_STRIP_SLIT ? 0 : right);
}

static inline int64_t planned_pieces(const struct planned *p, const struct muslin_cutplan_place *place)
{
    const int joined = p->pieces[place->piece].kind == MUSLIN_BLANK_JOINED;
    const int round_fold = joined && place->width * 2 > p->spec.usable_width - p->spec.end_loss;
    return place->count * (round_fold ? 1 : planned_layers(p));
}

/* A place is of the size that its row says, lies as it may, and inside its strip. */
static inline void ck_place(const struct planned *p, const struct muslin_cutplan_place *place)
{
    const struct muslin_cutplan_strip *strip = &p->strips[place->strip];
    const struct muslin_blank_spec *row = &p->pieces[place->piece];
    const int64_t every = p->spec.resquare_every;
    const muslin_len share = every == 0 ? 0 : (p->spec.resquare_loss + every - 1) / every;
    const muslin_len across = place->turned ? row->cut_length : row->cut_width;
    const muslin_len along = place->turned ? row->cut_width : row->cut_length;
    const muslin_len behind = place->x + (place->count - 1) * place->pitch + (place->pitch > place->width ?
        place->pitch : place->width);
    ck_assert_int_ge(place->count, 1);
    ck_assert(!place->turned || (row->flags == MUSLIN_BLANK_MAY_TURN && p->spec.print == MUSLIN_PRINT_NONE));
    ck_assert_int_eq(place->height, along);
    if (row->kind == MUSLIN_BLANK_JOINED) {
        ck_assert_int_le(place->width, across);
    } else {
        ck_assert_int_eq(place->width, across + row->run_in);
        ck_assert_int_eq(place->pitch, across + share);
        ck_assert_int_le(behind, planned_room(p, strip));
    }
    ck_assert_int_le(place->x + place->count * place->pitch + row->run_in, planned_room(p, strip));
    ck_assert_int_le(place->y + place->height, strip->height);
    ck_assert_int_eq(place->trimmed, place->y + place->height < strip->height);
    if (row->kind == MUSLIN_BLANK_SLOPED || planned_has(p, MUSLIN_CUTPLAN_ONE_HEIGHT))
        ck_assert_int_eq(place->height, strip->height);
}

/* Two places of one strip do not overlap. */
static inline void ck_apart(const struct planned *p, const struct muslin_cutplan_place *a,
                            const struct muslin_cutplan_place *b)
{
    const int64_t run_in = p->pieces[a->piece].run_in;
    const int same = a->piece == b->piece || run_in > 0;
    const muslin_len a_end = a->x + a->count * a->pitch + (same ? 0 : run_in);
    const muslin_len b_end = b->x + b->count * b->pitch;
    ck_assert(a_end <= b->x || b_end <= a->x || a->y + a->height <= b->y || b->y + b->height <= a->y);
}

static inline void ck_strip_places(const struct planned *p, size_t row)
{
    const struct muslin_cutplan_strip *strip = &p->strips[row];
    muslin_len used = 0;
    for (int64_t i = strip->first_place; i < strip->first_place + strip->places; i++) {
        const struct muslin_cutplan_place *place = &p->places[i];
        const muslin_len end = place->x + place->count * place->pitch + p->pieces[place->piece].run_in;
        const muslin_len begin = p->places[strip->first_place].x;
        ck_assert_int_eq(place->strip, (int64_t)row);
        ck_place(p, place);
        used = end - begin > used ? end - begin : used;
        for (int64_t k = strip->first_place; k < i; k++) {
            ck_apart(p, &p->places[k], place);
            if (planned_has(p, MUSLIN_CUTPLAN_OWN_STRIPS) && strip->kind != MUSLIN_CUTPLAN_STRIP_SLIT)
                ck_assert(place->width == p->places[k].width || place->width == p->places[k].height);
        }
    }
    ck_assert_int_eq(strip->used, used);
    ck_assert(strip->places > 0 || strip->kind == MUSLIN_CUTPLAN_STRIP_PANEL ||
              strip->kind == MUSLIN_CUTPLAN_STRIP_STOCK);
}

/* Strips within their holder, one above the other and beside what is slit; returns the row behind the last of them. */
static inline size_t ck_holder(const struct planned *p, size_t row)
{
    const struct muslin_cutplan_strip *holder = &p->strips[row];
    muslin_len y = 0;
    muslin_len x = 0;
    size_t i = row + 1;
    for (; i < p->strip_count && p->strips[i].holder == (int64_t)row; i++) {
        const struct muslin_cutplan_strip *strip = &p->strips[i];
        ck_assert_int_eq(strip->x, strip->kind == MUSLIN_CUTPLAN_STRIP_SLIT ? 0 : x);
        ck_assert_int_eq(strip->y, strip->kind == MUSLIN_CUTPLAN_STRIP_SLIT ? 0 : y);
        ck_assert_int_le(strip->x + strip->width, holder->width);
        if (strip->kind == MUSLIN_CUTPLAN_STRIP_SLIT) {
            ck_assert_int_eq(strip->height, holder->height);
            x = strip->width;
        } else {
            ck_assert_int_eq(strip->kind, MUSLIN_CUTPLAN_STRIP_WITHIN);
            y += strip->times * strip->height;
        }
    }
    ck_assert_int_le(y, holder->height);
    return i;
}

/* Strips lie one behind the other, panels first, and higher before lower ones. */
static inline void ck_bolt(const struct planned *p)
{
    muslin_len y = 0;
    int32_t kind = MUSLIN_CUTPLAN_STRIP_PANEL;
    muslin_len height = INT64_MAX;
    for (size_t i = 0; i < p->strip_count;) {
        const struct muslin_cutplan_strip *strip = &p->strips[i];
        ck_assert(strip->kind == MUSLIN_CUTPLAN_STRIP_STRIP || strip->kind == MUSLIN_CUTPLAN_STRIP_PANEL);
        ck_assert(strip->kind == kind || kind == MUSLIN_CUTPLAN_STRIP_PANEL);
        ck_assert(strip->kind != kind || strip->height <= height);
        ck_assert_int_eq(strip->x, 0);
        ck_assert_int_eq(strip->y, y);
        ck_assert_int_eq(strip->width, p->spec.usable_width / planned_layers(p));
        y += strip->times * strip->height;
        kind = strip->kind;
        height = strip->height;
        i = ck_holder(p, i);
    }
    ck_assert_int_eq(p->totals.cost, y);
    ck_assert_int_eq(p->totals.cloth_length, y == 0 ? 0 : y + p->spec.straightening);
    ck_assert(p->totals.cloth_length <= p->totals.own_strips_length || p->totals.stopped != 0);
    ck_assert_int_le(p->totals.area_bound, y);
}

static inline void ck_stock(const struct planned *p)
{
    int64_t used[STOCKS] = { 0 };
    int64_t cost = 0;
    struct muslin_cutplan_stock_used rows[STOCKS];
    size_t count = 0;
    for (size_t i = 0; i < p->strip_count;) {
        const struct muslin_cutplan_strip *strip = &p->strips[i];
        const struct muslin_cutplan_stock_spec *stock = &p->stock[strip->stock];
        const muslin_len length = stock->length - p->spec.straightening;
        ck_assert_int_eq(strip->kind, MUSLIN_CUTPLAN_STRIP_STOCK);
        ck_assert_int_eq(strip->width, strip->turned ? length : stock->width);
        ck_assert_int_eq(strip->height, strip->turned ? stock->width : length);
        used[strip->stock] += strip->times;
        cost += strip->times * stock->cost;
        i = ck_holder(p, i);
    }
    ck_assert_int_eq(p->totals.cost, cost);
    ck_ok(muslin_cutplan_stock(p->plan, rows, sizeof rows[0], STOCKS, &count, NULL));
    ck_assert_uint_eq(count, p->stock_n);
    for (size_t i = 0; i < count; i++) {
        ck_assert_int_eq(rows[i].label, p->stock[i].label);
        ck_assert_int_eq(rows[i].used, used[i]);
        ck_assert_int_eq(rows[i].cost, used[i] * p->stock[i].cost);
        ck_assert(used[i] <= p->stock[i].count);
    }
}

/* What each row gets: its count, or with spare ones more; of joined lengths strips that give them. Of folded cloth a
 * row may have its first piece from the last blank of the row before, and give one so. */
static inline void ck_row(const struct planned *p, size_t row)
{
    const struct muslin_blank_spec *piece = &p->pieces[row];
    int64_t cut = 0;
    int64_t length = 0;
    for (size_t i = 0; i < p->place_count; i++)
        if (p->places[i].piece == (int64_t)row) {
            const int64_t pieces = planned_pieces(p, &p->places[i]) * planned_times(p, &p->strips[p->places[i].strip]);
            cut += pieces;
            length += pieces * (p->places[i].width - piece->join_loss);
        }
    ck_assert_int_eq(p->made[row].label, piece->label);
    ck_assert_int_eq(p->made[row].made + p->made[row].missing, piece->count);
    if (planned_layers(p) == 1)
        ck_assert_int_eq(p->made[row].cut, cut);
    ck_assert_int_le(p->made[row].cut, cut + 2);
    ck_assert_int_ge(p->made[row].cut, cut - 2);
    if (piece->kind == MUSLIN_BLANK_JOINED)
        ck_assert_int_ge(length + (planned_layers(p) - 1) * p->spec.usable_width / 2,
                         p->made[row].made * (piece->cut_width - piece->join_loss));
    else
        ck_assert_int_ge(p->made[row].cut, p->made[row].made);
    ck_assert_int_eq(p->made[row].cut == 0, p->made[row].made == 0);
}

static inline void ck_waste(const struct planned *p)
{
    int64_t waste = 2 * p->spec.usable_width * p->totals.cloth_length;
    int64_t pieces = 0;
    for (size_t i = 0; i < p->strip_count; i++)
        if (p->strips[i].kind == MUSLIN_CUTPLAN_STRIP_STOCK)
            waste += 2 * p->strips[i].times * p->stock[p->strips[i].stock].width * p->stock[p->strips[i].stock].length;
    for (size_t i = 0; i < p->place_count; i++) {
        const struct muslin_cutplan_place *place = &p->places[i];
        const int64_t count = planned_pieces(p, place) * planned_times(p, &p->strips[place->strip]);
        pieces += count;
        waste -= 2 * count * (place->width - p->pieces[place->piece].run_in) * place->height;
    }
    ck_assert_int_eq(p->totals.pieces, pieces);
    ck_assert_int_eq(p->totals.waste, waste);
    ck_assert_int_ge(waste, 0);
}

static inline void ck_counts(const struct planned *p)
{
    int64_t cut = 0;
    int64_t strips = 0;
    int64_t panels = 0;
    int64_t stock = 0;
    for (size_t i = 0; i < p->strip_count; i++) {
        const int32_t kind = p->strips[i].kind;
        strips += kind == MUSLIN_CUTPLAN_STRIP_SLIT || kind == MUSLIN_CUTPLAN_STRIP_STOCK
                      ? 0
                      : planned_times(p, &p->strips[i]);
        panels += kind == MUSLIN_CUTPLAN_STRIP_PANEL ? p->strips[i].times : 0;
        stock += kind == MUSLIN_CUTPLAN_STRIP_STOCK ? p->strips[i].times : 0;
    }
    for (size_t i = 0; i < p->n; i++)
        cut += p->made[i].cut;
    ck_assert_int_eq(p->totals.pieces, cut);
    ck_assert_int_eq(p->totals.strips, strips);
    ck_assert_int_eq(p->totals.panels, panels);
    ck_assert_int_eq(p->totals.stock_pieces, stock);
}

/* A rectangle of a strip, and pieces of a place, overlap. */
static inline int planned_overlap(const struct planned *p, const struct muslin_cutplan_left_over *left,
                                  const struct muslin_cutplan_place *place)
{
    const int round_fold = planned_pieces(p, place) == place->count && planned_layers(p) == 2;
    const muslin_len end = place->x + (round_fold ? 0 : (place->count - 1) * place->pitch + place->width);
    return left->x < end && place->x < left->x + left->width && left->y < place->y + place->height &&
           place->y < left->y + left->height;
}

/* What is left over lies inside what it is left of, apart from its pieces. */
static inline void ck_left_over(const struct planned *p)
{
    static struct muslin_cutplan_left_over rows[STRIPS];
    size_t count = 0;
    const muslin_len least = WHOLE_IN(3);
    ck_ok(muslin_cutplan_left_overs(p->plan, least, rows, sizeof rows[0], STRIPS, &count, NULL));
    for (size_t i = 0; i < count; i++) {
        const struct muslin_cutplan_strip *strip = &p->strips[rows[i].strip];
        const int sheet = strip->kind == MUSLIN_CUTPLAN_STRIP_PANEL || strip->kind == MUSLIN_CUTPLAN_STRIP_STOCK;
        const int at_fold = strip->kind != MUSLIN_CUTPLAN_STRIP_SLIT && rows[i].count == planned_times(p, strip) &&
                            (sheet || rows[i].x >= p->places[strip->first_place].x + strip->used);
        muslin_len y = 0;
        for (size_t k = (size_t)rows[i].strip + 1; sheet && k < p->strip_count; k++)
            if (p->strips[k].holder == rows[i].strip && p->strips[k].kind == MUSLIN_CUTPLAN_STRIP_WITHIN)
                y += p->strips[k].times * p->strips[k].height;
        ck_assert_int_ge(rows[i].width, least);
        ck_assert_int_ge(rows[i].height, least);
        if (sheet)
            ck_assert_int_eq(rows[i].y, y);
        for (int64_t k = strip->first_place; k < strip->first_place + strip->places; k++)
            ck_assert(!planned_overlap(p, &rows[i], &p->places[k]));
        ck_assert_int_le(rows[i].y + rows[i].height, strip->height);
        ck_assert_int_le(rows[i].x + rows[i].width / (at_fold ? planned_layers(p) : 1), strip->width);
        ck_assert(i == 0 || rows[i].width * rows[i].height <= rows[i - 1].width * rows[i - 1].height);
    }
}

/* Whether two pieces of one sheet lie on each other. */
static inline int planned_on(const struct muslin_cutplan_blank *a, const struct muslin_cutplan_blank *b)
{
    return a->sheet == b->sheet && a->x < b->x + b->width && b->x < a->x + a->width && a->y < b->y + b->height &&
           b->y < a->y + a->height;
}

/* Of the bolt, or of the piece of stock. */
static inline void ck_on_cloth(const struct planned *p, const struct muslin_cutplan_blank *blank)
{
    const int of_bolt = blank->stock < 0;
    const struct muslin_cutplan_stock_spec *stock = &p->stock[of_bolt ? 0 : blank->stock];
    ck_assert_int_ge(blank->x, 0);
    ck_assert_int_ge(blank->y, 0);
    ck_assert_int_le(blank->x + blank->width, of_bolt ? p->spec.usable_width : stock->width);
    ck_assert_int_le(blank->y + blank->height, of_bolt ? p->totals.cost : stock->length - p->spec.straightening);
    ck_assert_int_le(blank->sheet, of_bolt ? 0 : p->totals.stock_pieces - 1);
}

/* Every blank has the size of its row, lies on its cloth, and on no other one; pieces of sloped and joined rows aside,
 * and those far apart in the order of cutting. */
static inline void ck_blanks(const struct planned *p)
{
    enum { PAGE = 64 };
    static struct muslin_cutplan_blank rows[2 * PAGE];
    int64_t pieces = 0;
    size_t left = 1;
    int64_t first = 0;
    for (; left > 0 && first < 4000; first += PAGE) {
        ck_ok(muslin_cutplan_blanks(p->plan, first, rows + PAGE, sizeof rows[0], PAGE, &left, NULL));
        const size_t given = left < PAGE ? left : PAGE;
        for (size_t i = PAGE; i < PAGE + given; i++) {
            const struct muslin_blank_spec *row = &p->pieces[rows[i].piece];
            const int plain = row->kind <= MUSLIN_BLANK_LENGTHWISE;
            pieces += rows[i].layers;
            ck_assert_int_eq(rows[i].piece, p->places[rows[i].place].piece);
            ck_assert_int_eq(rows[i].strip, p->places[rows[i].place].strip);
            ck_on_cloth(p, &rows[i]);
            if (plain) {
                ck_assert_int_eq(rows[i].width, rows[i].turned ? row->cut_length : row->cut_width);
                ck_assert_int_eq(rows[i].height, rows[i].turned ? row->cut_width : row->cut_length);
            }
            for (size_t k = first == 0 ? PAGE : 0; plain && k < i; k++)
                ck_assert(p->pieces[rows[k].piece].kind > MUSLIN_BLANK_LENGTHWISE || !planned_on(&rows[i], &rows[k]));
        }
        memcpy(rows, rows + PAGE, PAGE * sizeof rows[0]);
        left -= given;
    }
    if (left == 0)
        ck_assert_int_eq(pieces, p->totals.pieces);
}

/* Each size has its spare pieces, and no two are alike; but joined strips may be as some pieces are, and have none. */
static inline void ck_no_size_again(const struct planned *p, const struct muslin_cutplan_size *sizes, size_t n)
{
    for (size_t i = 0; i < p->n; i++)
        if (p->pieces[i].kind == MUSLIN_BLANK_JOINED)
            return;
    int64_t wanted = (int64_t)n * p->spec.spare_pieces;
    for (size_t i = 0; i < p->n; i++)
        wanted += p->made[i].made;
    for (size_t i = 0; i < n; i++)
        wanted -= sizes[i].count;
    ck_assert(planned_layers(p) == 2 || wanted == 0);
    for (size_t i = 0; i < n; i++)
        for (size_t k = 0; k < i; k++)
            ck_assert(sizes[i].taken != sizes[k].taken || sizes[i].height != sizes[k].height ||
                      sizes[i].run_in != sizes[k].run_in || sizes[i].may_turn != sizes[k].may_turn ||
                      sizes[i].slit != sizes[k].slit || sizes[i].level != sizes[k].level);
}

/* Sizes come from rows of the request, the highest first. */
static inline size_t ck_sizes(const struct planned *p)
{
    struct muslin_cutplan_size sizes[STRIPS];
    size_t n = 0;
    ck_ok(muslin_cutplan_sizes(p->plan, sizes, sizeof sizes[0], STRIPS, &n, NULL));
    ck_no_size_again(p, sizes, n);
    for (size_t i = 0; i < n; i++) {
        ck_assert(sizes[i].piece >= 0 && sizes[i].piece < (int64_t)p->n);
        const struct muslin_blank_spec *from = &p->pieces[sizes[i].piece];
        ck_assert(i == 0 || sizes[i].height <= sizes[i - 1].height);
        ck_assert_int_eq(sizes[i].run_in, from->run_in);
        ck_assert_int_eq(sizes[i].may_turn, sizes[i].turned_taken > 0);
        ck_assert_int_eq(sizes[i].may_turn, sizes[i].turned_height > 0);
        ck_assert(!sizes[i].may_turn || (from->flags & MUSLIN_BLANK_MAY_TURN) != 0);
        ck_assert(!sizes[i].slit || from->kind == MUSLIN_BLANK_LENGTHWISE);
        ck_assert_int_eq(sizes[i].level,
                         from->kind == MUSLIN_BLANK_SLOPED || (p->spec.flags & MUSLIN_CUTPLAN_ONE_HEIGHT) != 0);
    }
    return n;
}

/* Ways are of the bolt, where they cost their height, or of a row of stock; the dearest first. */
static inline size_t ck_ways(const struct planned *p)
{
    struct muslin_cutplan_way ways[STRIPS];
    size_t n = 0;
    ck_ok(muslin_cutplan_ways(p->plan, ways, sizeof ways[0], STRIPS, &n, NULL));
    for (size_t i = 0; i < n; i++) {
        ck_assert(i == 0 || ways[i].cost <= ways[i - 1].cost);
        ck_assert(ways[i].width >= 0 && ways[i].height >= 0);
        ck_assert(i == 0 || ways[i].kind != MUSLIN_CUTPLAN_STRIP_PANEL || ways[i].cost < ways[i - 1].cost ||
                  ways[i - 1].kind == MUSLIN_CUTPLAN_STRIP_PANEL);
        if (p->stock_n == 0) {
            ck_assert_int_eq(ways[i].stock, -1);
            ck_assert_int_eq(ways[i].cost, ways[i].height);
            ck_assert_int_eq(ways[i].turned, 0);
            ck_assert(ways[i].kind == MUSLIN_CUTPLAN_STRIP_STRIP || ways[i].kind == MUSLIN_CUTPLAN_STRIP_PANEL);
        } else {
            ck_assert(ways[i].stock >= 0 && ways[i].stock < (int64_t)p->stock_n);
            const struct muslin_cutplan_stock_spec *stock = &p->stock[ways[i].stock];
            ck_assert_int_eq(ways[i].kind, MUSLIN_CUTPLAN_STRIP_STOCK);
            ck_assert_int_le(ways[i].width, ways[i].turned ? stock->length : stock->width);
            ck_assert_int_le(ways[i].height, ways[i].turned ? stock->width : stock->length);
        }
    }
    return n;
}

/* Cases make a tree: two parts of one leave nothing out, and a part is proved by worths of its own or of one above. */
static inline void ck_case(const struct muslin_cutplan_case *cases, size_t i, int64_t ways)
{
    const struct muslin_cutplan_case *at = &cases[i];
    int64_t above = (int64_t)i;
    ck_assert(at->packed_way >= -1 && at->packed_way < ways);
    while (above != at->worths && above > 0)
        above = cases[above].parent;
    ck_assert_int_eq(above, at->worths);
    ck_assert_int_eq(cases[above].worths, above);
    if (i == 0) {
        ck_assert_int_eq(at->parent, -1);
        ck_assert_int_eq(at->plan_size, -1);
        return;
    }
    ck_assert(at->parent >= 0 && at->parent < (int64_t)i);
    const struct muslin_cutplan_case *parts = &cases[cases[at->parent].split];
    ck_assert(at == &parts[0] || at == &parts[1]);
    ck_assert(at->first_way >= 0 && at->first_way <= at->last_way && at->last_way < ways);
    ck_assert_int_eq(parts[0].first_way, parts[1].first_way);
    ck_assert_int_eq(parts[0].last_way, parts[1].last_way);
    ck_assert_int_eq(parts[0].plan_size, parts[1].plan_size);
    ck_assert_int_eq(parts[0].at_least + parts[1].at_least, 1);
    ck_assert_int_eq(parts[parts[1].at_least].wanted, parts[parts[0].at_least].wanted + 1);
}

/* Worths are of each size, each stock and each case on the way down, in this order, and have the sign of what they are
 * worths of. */
static inline void ck_worths(const struct planned *p, const struct muslin_cutplan_case *cases, size_t of_case,
                             size_t sizes)
{
    struct muslin_cutplan_worth worths[STRIPS];
    size_t count = 0;
    int64_t scale = 0;
    ck_ok(muslin_cutplan_worths(p->plan, (int64_t)of_case, worths, sizeof worths[0], STRIPS, &count, &scale, NULL));
    ck_assert_int_gt(scale, 0);
    for (size_t k = 0; k < sizes + p->stock_n; k++) {
        ck_assert_int_eq(worths[k].plan_size, k < sizes ? (int64_t)k : -1);
        ck_assert_int_eq(worths[k].of_case, -1);
        ck_assert(k < sizes ? worths[k].stock == -1 : worths[k].stock >= 0 && worths[k].stock < (int64_t)p->stock_n);
        ck_assert(k < sizes ? worths[k].worth >= 0 : worths[k].worth <= 0);
    }
    for (int64_t at = (int64_t)of_case; at > 0; at = cases[at].parent) {
        const struct muslin_cutplan_worth *worth = &worths[--count];
        ck_assert_int_eq(worth->of_case, at);
        ck_assert_int_eq(worth->plan_size, -1);
        ck_assert_int_eq(worth->stock, -1);
        ck_assert(cases[at].at_least ? worth->worth >= 0 : worth->worth <= 0);
    }
    ck_assert_uint_eq(count, sizes + p->stock_n);
}

static inline void ck_proof(const struct planned *p)
{
    static struct muslin_cutplan_case cases[STRIPS];
    const size_t sizes = ck_sizes(p);
    const size_t ways = ck_ways(p);
    size_t n = 0;
    ck_ok(muslin_cutplan_cases(p->plan, NULL, 0, 0, &n, NULL));
    ck_assert_int_eq(p->totals.cases, (int64_t)n);
    if (n > STRIPS)
        return;
    ck_ok(muslin_cutplan_cases(p->plan, cases, sizeof cases[0], STRIPS, &n, NULL));
    for (size_t i = 0; i < n; i++) {
        size_t count = 0;
        int64_t scale = 0;
        ck_case(cases, i, (int64_t)ways);
        ck_assert(cases[i].plan_size >= -1 && cases[i].plan_size < (int64_t)sizes);
        ck_assert(cases[i].plan_size < 0 || cases[i].first_way == cases[i].last_way);
        if (cases[i].worths == (int64_t)i)
            ck_worths(p, cases, i, sizes);
        else
            ck_status(muslin_cutplan_worths(p->plan, (int64_t)i, NULL, 0, 0, &count, &scale, NULL), MUSLIN_ERR_INDEX);
    }
}

/* ---- sums, added up another way ---------------------------------------------------------------------------------- */

/* Cuts upright in one strip: wherever something ends, its left end that is squared or a piece, and the strip does not;
 * one more for the first of sloped pieces; and one for each that is trimmed. */
static inline int64_t cuts_upright(const struct planned *p, const struct muslin_cutplan_strip *strip)
{
    const muslin_len width =
        strip->kind == MUSLIN_CUTPLAN_STRIP_SLIT ? p->strips[strip->holder].width : strip->width;
    int64_t cuts = p->places[strip->first_place].x > 0;
    for (int64_t i = strip->first_place; i < strip->first_place + strip->places; i++) {
        const struct muslin_cutplan_place *place = &p->places[i];
        const muslin_len run_in = p->pieces[place->piece].run_in;
        cuts += place->y == 0 && run_in > 0;
        for (int64_t k = 1; k <= place->count; k++)
            cuts += (place->y == 0 && place->x + run_in + k * place->pitch < width) + (place->trimmed != 0);
    }
    return cuts;
}

/* Cuts right across: where a strip ends, and what it lies within does not. */
static inline int64_t cuts_right_across(const struct planned *p, const struct muslin_cutplan_strip *strip)
{
    int64_t cuts = 0;
    if (strip->kind == MUSLIN_CUTPLAN_STRIP_SLIT || strip->kind == MUSLIN_CUTPLAN_STRIP_STOCK)
        return 0;
    if (strip->holder < 0)
        return strip->times;
    for (int64_t k = 1; k <= strip->times; k++)
        cuts += strip->y + k * strip->height < p->strips[strip->holder].height;
    return cuts * p->strips[strip->holder].times;
}

/* Strips around the fold have their width unfolded, and no pitch within their half. */
static inline void ck_cuts(const struct planned *p)
{
    int64_t cuts = 0;
    int64_t heights = 0;
    for (size_t i = 0; i < p->strip_count; i++) {
        const struct muslin_cutplan_strip *strip = &p->strips[i];
        const int holds = strip->kind != MUSLIN_CUTPLAN_STRIP_PANEL && strip->kind != MUSLIN_CUTPLAN_STRIP_STOCK;
        int is_new = holds && strip->kind != MUSLIN_CUTPLAN_STRIP_SLIT;
        cuts += cuts_right_across(p, strip) + (holds ? cuts_upright(p, strip) * planned_times(p, strip) : 0);
        for (size_t k = 0; is_new && k < i; k++)
            is_new = p->strips[k].height != strip->height || p->strips[k].kind == MUSLIN_CUTPLAN_STRIP_PANEL ||
                     p->strips[k].kind == MUSLIN_CUTPLAN_STRIP_SLIT || p->strips[k].kind == MUSLIN_CUTPLAN_STRIP_STOCK;
        heights += is_new;
    }
    ck_assert_int_eq(p->totals.heights, heights);
    for (size_t i = 0; i < p->n; i++)
        if (p->pieces[i].kind == MUSLIN_BLANK_JOINED && planned_layers(p) == 2)
            return;
    ck_assert_int_eq(p->totals.cuts, cuts);
}

/* Strips of one size alone, so many pieces in each; 0 where none fits. */
static inline muslin_len length_of_own(int64_t count, muslin_len room, muslin_len run_in, muslin_len taken,
                                       muslin_len height)
{
    const int64_t each = taken > 0 && room >= run_in ? (room - run_in) / taken : 0;
    int64_t strips = each > 0 ? count / each : 0;
    strips += each > 0 && strips * each < count;
    return strips * height;
}

/* Of a bolt: strips of one size each, and the area of all that is cut. */
static inline void ck_beside(const struct planned *p)
{
    static struct muslin_cutplan_size sizes[STRIPS];
    const muslin_len room = (p->spec.usable_width > p->spec.end_loss ? p->spec.usable_width - p->spec.end_loss : 0) /
                            planned_layers(p);
    size_t n = 0;
    muslin_len own = 0;
    int64_t area = 0;
    ck_ok(muslin_cutplan_sizes(p->plan, sizes, sizeof sizes[0], STRIPS, &n, NULL));
    for (size_t i = 0; i < n; i++) {
        const muslin_len listed =
            length_of_own(sizes[i].count, room, sizes[i].run_in, sizes[i].taken, sizes[i].height);
        const muslin_len turned =
            length_of_own(sizes[i].count, room, sizes[i].run_in, sizes[i].turned_taken, sizes[i].turned_height);
        own += listed > 0 && (turned == 0 || listed < turned) ? listed : turned;
    }
    for (size_t i = 0; i < p->place_count; i++)
        area += (p->places[i].width - p->pieces[p->places[i].piece].run_in) * p->places[i].height *
                p->places[i].count * planned_times(p, &p->strips[p->places[i].strip]);
    if (p->stock_n > 0 || n == 0) {
        ck_assert_int_eq(p->totals.own_strips_length, 0);
        ck_assert_int_eq(p->totals.area_bound, 0);
    } else if (!p->totals.other_lengths) {
        ck_assert_int_eq(p->totals.own_strips_length, own + p->spec.straightening);
        if (planned_layers(p) == 1 && p->totals.cost < INT64_C(1) << 40) /* else the area might be too large here */
            ck_assert_int_eq(p->totals.area_bound, (area + p->spec.usable_width - 1) / p->spec.usable_width);
    }
}

static inline void ck_sums(const struct planned *p)
{
    const int may_join = p->stock_n == 0 && (p->spec.flags & (MUSLIN_CUTPLAN_OWN_STRIPS | MUSLIN_CUTPLAN_STACKED |
                                                              MUSLIN_CUTPLAN_FOLDED)) == 0;
    int64_t missing = 0;
    int others = 0;
    for (size_t i = 0; i < p->n; i++) {
        missing += p->made[i].missing;
        others |= may_join && p->pieces[i].count == 1 && p->pieces[i].least_part > 0;
    }
    ck_assert_int_eq(p->totals.other_lengths, others);
    if (p->stock_n == 0 && !others && p->totals.stopped == MUSLIN_CUTPLAN_STOPPED_WORK)
        ck_assert_int_ge(p->totals.work, p->spec.work_limit);
    ck_assert_int_eq(p->totals.missing, missing);
    ck_assert_int_eq(p->totals.cloth_length,
                     p->stock_n == 0 && p->totals.cost > 0 ? p->totals.cost + p->spec.straightening : 0);
    ck_cuts(p);
    ck_beside(p);
}

/* ---- the proof, read back and proved anew ----------------------------------------------------------------------- */

/* The proof as the public calls tell it, put together again. */
struct as_read {
    struct msl_piece_size sizes[STRIPS];
    struct msl_way ways[STRIPS];
    struct msl_case cases[STRIPS];
    int64_t heights[STRIPS];
    int64_t available[STOCKS];
    int64_t worths[STRIPS * 40];
    struct msl_cutting cutting;
    struct msl_found found;
    int64_t unit; /* the greatest length that all sizes are whole numbers of */
};

static inline int64_t common_divisor(int64_t a, int64_t b)
{
    while (b != 0) {
        const int64_t rest = a % b;
        a = b;
        b = rest;
    }
    return a;
}

static inline void read_sizes(const struct planned *p, struct as_read *read)
{
    static struct muslin_cutplan_size rows[STRIPS];
    size_t n = 0;
    ck_ok(muslin_cutplan_sizes(p->plan, rows, sizeof rows[0], STRIPS, &n, NULL));
    read->unit = 0;
    for (size_t i = 0; i < n; i++) {
        const int64_t lengths[] = { rows[i].taken, rows[i].height, rows[i].run_in, rows[i].turned_taken,
                                    rows[i].turned_height };
        for (size_t k = 0; k < sizeof lengths / sizeof lengths[0]; k++)
            read->unit = common_divisor(read->unit, lengths[k]);
    }
    read->unit += read->unit == 0;
    ck_assert_int_eq(read->unit, p->plan->unit);
    for (size_t i = 0; i < n; i++) {
        const struct msl_piece_size size = { rows[i].taken / read->unit, rows[i].height / read->unit,
                                             rows[i].turned_taken / read->unit, rows[i].turned_height / read->unit,
                                             rows[i].run_in / read->unit, rows[i].count, rows[i].slit,
                                             rows[i].level };
        read->sizes[i] = size;
    }
    read->cutting.size_count = (int32_t)n;
}

/* From the highest, each once. */
static inline void read_height(struct as_read *read, int64_t height)
{
    int32_t at = read->cutting.height_count;
    for (int32_t i = 0; i < at; i++)
        if (read->heights[i] == height)
            return;
    for (; at > 0 && read->heights[at - 1] < height; at--)
        read->heights[at] = read->heights[at - 1];
    read->heights[at] = height;
    read->cutting.height_count++;
}

static inline void read_ways(const struct planned *p, struct as_read *read)
{
    static struct muslin_cutplan_way rows[STRIPS];
    const int64_t cost_unit = p->stock_n == 0 ? read->unit : 1;
    size_t n = 0;
    ck_ok(muslin_cutplan_ways(p->plan, rows, sizeof rows[0], STRIPS, &n, NULL));
    for (size_t i = 0; i < n; i++) {
        const struct msl_way way = { rows[i].cost / cost_unit,      rows[i].width / read->unit,
                                     rows[i].height / read->unit,   rows[i].kind != MUSLIN_CUTPLAN_STRIP_STRIP,
                                     rows[i].kind == MUSLIN_CUTPLAN_STRIP_PANEL, (int32_t)rows[i].stock,
                                     rows[i].turned };
        read->ways[i] = way;
    }
    read->cutting.way_count = (int32_t)n;
    for (int32_t i = 0; i < read->cutting.size_count; i++) {
        if (!read->sizes[i].slit)
            read_height(read, read->sizes[i].along);
        if (read->sizes[i].turned_along > 0)
            read_height(read, read->sizes[i].turned_along);
    }
    for (size_t i = 0; i < p->stock_n; i++)
        read->available[i] = p->stock[i].count == MUSLIN_COUNT_MAX ? INT64_MAX : p->stock[i].count;
    read->cutting.stock_count = (int32_t)p->stock_n;
    for (int32_t i = 0, k = 0; i < p->plan->cutting.height_count; i++) { /* of those sizes that fit so */
        while (k < read->cutting.height_count && read->heights[k] > p->plan->cutting.heights[i])
            k++;
        ck_assert(k < read->cutting.height_count && read->heights[k] == p->plan->cutting.heights[i]);
    }
}

/* Worths of sizes, stock in the order of its rows, and conditions from the whole down. */
static inline void read_worths(const struct planned *p, struct as_read *read, int32_t number)
{
    static struct muslin_cutplan_worth rows[STRIPS];
    struct msl_case *of = &read->cases[number];
    int64_t *worths = read->worths + read->found.worth_count;
    size_t n = 0;
    int64_t scale = 0;
    ck_ok(muslin_cutplan_worths(p->plan, number, rows, sizeof rows[0], STRIPS, &n, &scale, NULL));
    ck_assert_uint_le((size_t)read->found.worth_count + n, sizeof read->worths / sizeof read->worths[0]);
    for (size_t i = 0; i < n; i++) {
        const int64_t stock = read->cutting.size_count + rows[i].stock;
        worths[rows[i].plan_size >= 0 ? rows[i].plan_size : rows[i].stock >= 0 ? stock : (int64_t)i] =
            rows[i].worth / (p->stock_n == 0 ? read->unit : 1);
    }
    of->first_worth = read->found.worth_count;
    of->worth_count = (int32_t)n;
    read->found.worth_count += of->worth_count;
}

static inline void read_cases(const struct planned *p, struct as_read *read)
{
    static struct muslin_cutplan_case rows[STRIPS];
    const int64_t cost_unit = p->stock_n == 0 ? read->unit : 1;
    size_t n = 0;
    ck_ok(muslin_cutplan_cases(p->plan, rows, sizeof rows[0], STRIPS, &n, NULL));
    read->found.case_count = (int32_t)n;
    for (int32_t i = 0; i < (int32_t)n; i++) {
        const struct muslin_cutplan_case *row = &rows[i];
        const int of_size = row->plan_size >= 0;
        const struct msl_case of = { .limit = { .wanted = row->wanted,
                                                .kind = of_size ? MSL_LIMIT_COPIES : MSL_LIMIT_WAYS,
                                                .first_way = (int32_t)row->first_way,
                                                .last_way = (int32_t)row->last_way,
                                                .size = of_size ? (int32_t)row->plan_size : 0,
                                                .at_least = row->at_least },
                                     .least = row->least / cost_unit,
                                     .parent = (int32_t)row->parent,
                                     .split = (int32_t)row->split,
                                     .packed = (int32_t)row->packed_way + 1 };
        read->cases[i] = of;
        if (row->worths == i)
            read_worths(p, read, i);
    }
}

/* What is told of sizes, ways, cases and worths is a proof of the bound that is told; the plan itself is read as it is
 * kept. */
static inline void ck_proof_as_read(const struct planned *p)
{
    static struct as_read read;
    struct muslin_allocator memory;
    struct msl_told told = msl_told_by(NULL, NULL);
    struct muslin_cutplan_checked out = { .size = (uint32_t)sizeof out };
    if (p->totals.cases > STRIPS / 4)
        return;
    memset(&read, 0, sizeof read);
    read.cutting.sizes = read.sizes;
    read.cutting.ways = read.ways;
    read.cutting.heights = read.heights;
    read.cutting.available = read.available;
    read.cutting.one_size = planned_has(p, MUSLIN_CUTPLAN_OWN_STRIPS);
    read.cutting.stacked = planned_has(p, MUSLIN_CUTPLAN_STACKED);
    read.found.cases = read.cases;
    read.found.worths = read.worths;
    read_sizes(p, &read);
    read_ways(p, &read);
    read_cases(p, &read);
    read.found.plan = p->plan->found.plan;
    read.found.cost = p->totals.cost / (p->stock_n == 0 ? read.unit : 1);
    read.found.least = p->totals.least / (p->stock_n == 0 ? read.unit : 1);
    ck_ok(muslin_allocator_libc(&memory));
    ck_ok(msl_found_check(&read.cutting, &read.found, MSL_CHECK_STEPS_MAX, &told, &memory, &out));
    ck_assert_int_eq(out.fault, 0);
    ck_assert_int_eq(out.cost, read.found.cost);
    ck_assert_int_eq(out.least, read.found.least);
}

/* The whole plan, read and held against its request. */
static inline void ck_plan(struct planned *p)
{
    struct muslin_cutplan_checked checked = { .size = (uint32_t)sizeof checked };
    read_plan(p);
    ck_ok(muslin_cutplan_check(p->plan, NULL, NULL, &checked, NULL));
    ck_assert_int_eq(checked.fault, 0);
    ck_assert_int_eq(checked.cost, p->totals.cost);
    ck_assert_int_eq(checked.least, p->totals.least);
    int32_t turned = 0;
    for (size_t i = 0; i < p->place_count; i++)
        turned |= p->places[i].turned;
    ck_assert_int_eq(msl_some_are_turned(p->plan), turned);
    for (size_t i = 0; i < p->strip_count; i++)
        ck_strip_places(p, i);
    if (p->stock_n == 0)
        ck_bolt(p);
    else
        ck_stock(p);
    for (size_t i = 0; i < p->n; i++)
        ck_row(p, i);
    ck_waste(p);
    ck_counts(p);
    ck_left_over(p);
    ck_blanks(p);
    ck_sums(p);
    ck_proof(p);
    ck_proof_as_read(p);
    ck_assert_int_le(p->totals.least, p->totals.cost);
    ck_assert_int_eq(p->totals.proven, p->totals.least == p->totals.cost);
}

static inline void make_plan(struct planned *p)
{
    struct muslin_problem problem = PROBLEM;
    ck_assert_msg(try_plan(p, &problem) == MUSLIN_OK, "%s", problem.text);
    ck_plan(p);
}

#endif
