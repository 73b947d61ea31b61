/* cutplan_totals.c - what the strips of a cutting plan add up to.
 *
 * SPDX-License-Identifier: MIT */
#include "cutplan_plan.h"

#include "wide.h"

static uint64_t strips_of(const struct muslin_cutplan *plan)
{
    return plan->strips.used;
}

int64_t msl_times_of(const struct muslin_cutplan *plan, const struct muslin_cutplan_strip *strip)
{
    return strip->holder < 0 ? strip->times : strip->times * msl_strip_of(plan, (uint64_t)strip->holder)->times;
}

int64_t msl_begin_of(const struct muslin_cutplan *plan, const struct muslin_cutplan_strip *strip)
{
    return strip->x > 0 ? 0 : plan->spec.end_loss / 2;
}

/* ---- cuts ------------------------------------------------------------------------------------------------------- */

/* Cuts in one strip: its left end squared, the right edge of each piece, the first edge of sloped ones, and trims. */
static int64_t cuts_in(const struct muslin_cutplan *plan, const struct muslin_cutplan_strip *strip)
{
    const int64_t begin = msl_begin_of(plan, strip);
    const int is_slit = strip->kind == MUSLIN_CUTPLAN_STRIP_SLIT;
    const int64_t width = is_slit ? msl_strip_of(plan, (uint64_t)strip->holder)->width : strip->width;
    int64_t cuts = begin > 0;
    for (int64_t i = 0; i < strip->places; i++) {
        const struct muslin_cutplan_place *place = msl_place_of(plan, (uint64_t)(strip->first_place + i));
        cuts += place->y == 0 ? place->count + (plan->pieces[place->piece].run_in > 0) : 0;
        cuts += place->trimmed ? place->count : 0;
    }
    return cuts - (begin + strip->used == width);
}

/* Cuts across: none where a strip ends with what holds it. */
static int64_t cuts_across(const struct muslin_cutplan *plan, const struct muslin_cutplan_strip *strip)
{
    if (strip->kind != MUSLIN_CUTPLAN_STRIP_WITHIN)
        return strip->kind == MUSLIN_CUTPLAN_STRIP_STRIP || strip->kind == MUSLIN_CUTPLAN_STRIP_PANEL ? strip->times
                                                                                                      : 0;
    const struct muslin_cutplan_strip *holder = msl_strip_of(plan, (uint64_t)strip->holder);
    const int is_last = strip->y + strip->times * strip->height == holder->height;
    return (strip->times - is_last) * holder->times;
}

static void count_strips(struct muslin_cutplan *plan)
{
    struct muslin_cutplan_total *totals = &plan->totals;
    for (uint64_t i = 0; i < strips_of(plan); i++) {
        const struct muslin_cutplan_strip *strip = msl_strip_of(plan, i);
        const int64_t times = msl_times_of(plan, strip);
        const int is_holder = strip->kind == MUSLIN_CUTPLAN_STRIP_PANEL || strip->kind == MUSLIN_CUTPLAN_STRIP_STOCK;
        totals->panels += strip->kind == MUSLIN_CUTPLAN_STRIP_PANEL ? times : 0;
        totals->stock_pieces += strip->kind == MUSLIN_CUTPLAN_STRIP_STOCK ? times : 0;
        totals->strips +=
            strip->kind == MUSLIN_CUTPLAN_STRIP_STOCK || strip->kind == MUSLIN_CUTPLAN_STRIP_SLIT ? 0 : times;
        totals->cuts += cuts_across(plan, strip) + (is_holder ? 0 : cuts_in(plan, strip) * times);
    }
}

static int is_strip_as_high(const struct muslin_cutplan_strip *strip, int64_t height)
{
    return strip->height == height &&
           (strip->kind == MUSLIN_CUTPLAN_STRIP_STRIP || strip->kind == MUSLIN_CUTPLAN_STRIP_WITHIN);
}

static int64_t heights_of(const struct muslin_cutplan *plan)
{
    int64_t heights = 0;
    for (int32_t i = 0; i < plan->cutting.height_count; i++) {
        uint64_t row = 0;
        while (row < strips_of(plan) &&
               !is_strip_as_high(msl_strip_of(plan, row), plan->cutting.heights[i] * plan->unit))
            row++;
        heights += row < strips_of(plan);
    }
    return heights;
}

/* ---- pieces ----------------------------------------------------------------------------------------------------- */

int msl_goes_round_fold(const struct muslin_cutplan *plan, const struct muslin_cutplan_place *place)
{
    return plan->pieces[place->piece].kind == MUSLIN_BLANK_JOINED && place->width > plan->room;
}

int64_t msl_pieces_in(const struct muslin_cutplan *plan, const struct muslin_cutplan_place *place)
{
    return msl_goes_round_fold(plan, place) ? place->count : place->count * plan->layers;
}

/* Of sloped pieces what each takes of the strip is as much as it has, without the first run-in. */
static int64_t area_of(const struct muslin_cutplan *plan, const struct muslin_cutplan_place *place)
{
    return (place->width - plan->pieces[place->piece].run_in) * place->height;
}

static int64_t missing_of(const struct muslin_cutplan *plan)
{
    int64_t missing = 0;
    for (uint32_t i = 0; i < plan->piece_count; i++)
        missing += plan->pieces[i].count - plan->made[i];
    return missing;
}

static struct msl_wide cloth_of(const struct muslin_cutplan *plan)
{
    struct msl_wide cloth = msl_wide_multiply(2 * plan->spec.usable_width, plan->totals.cloth_length);
    for (uint64_t i = 0; i < strips_of(plan); i++) {
        const struct muslin_cutplan_strip *strip = msl_strip_of(plan, i);
        if (strip->kind == MUSLIN_CUTPLAN_STRIP_STOCK) {
            const struct muslin_cutplan_stock_spec *stock = &plan->stock[strip->stock];
            cloth = msl_wide_add(cloth, msl_wide_multiply(2 * stock->width * stock->length, strip->times));
        }
    }
    return cloth;
}

/* Counts pieces, and what of the cloth becomes none. */
static void count_pieces(struct msl_check *check, struct muslin_cutplan *plan)
{
    struct msl_wide waste = cloth_of(plan);
    int64_t rest;
    for (uint64_t i = 0; i < plan->places.used; i++) {
        const struct muslin_cutplan_place *place = msl_place_of(plan, i);
        const int64_t times = msl_times_of(plan, msl_strip_of(plan, (uint64_t)place->strip));
        const int64_t pieces = msl_pieces_in(plan, place) * times;
        waste = msl_wide_add(waste, msl_wide_multiply(-2 * area_of(plan, place), pieces));
        plan->totals.pieces += pieces;
    }
    if (!msl_wide_floor(waste, 1, &plan->totals.waste, &rest))
        msl_fail(check, MUSLIN_ERR_OVERFLOW, MUSLIN_ARG_WASTE, 0, 0);
}

/* ---- beside it -------------------------------------------------------------------------------------------------- */

/* The length that a size takes on strips of its own, all pieces alike; INT64_MAX where none fits so. There is room for
 * the run-in of each. */
static int64_t length_alone(const struct msl_piece_size *size, int64_t room, int64_t across, int64_t along)
{
    const int64_t in_each = across == 0 ? 0 : (room - size->run_in) / across;
    return in_each == 0 ? INT64_MAX : msl_divided_up(size->count, in_each) * along;
}

static int64_t own_strips_length(const struct muslin_cutplan *plan)
{
    const int64_t room = plan->room / plan->unit;
    int64_t length = 0;
    for (int32_t i = 0; i < plan->cutting.size_count; i++) {
        const struct msl_piece_size *size = &plan->cutting.sizes[i];
        const int64_t listed = length_alone(size, room, size->across, size->along);
        const int64_t turned = length_alone(size, room, size->turned_across, size->turned_along);
        length += msl_lesser(listed, turned);
    }
    return length * plan->unit;
}

/* No more than the pieces one above the other, so it is no large number. */
static int64_t area_bound(const struct muslin_cutplan *plan)
{
    struct msl_wide area = msl_wide_from(0);
    int64_t whole;
    int64_t rest;
    for (int32_t i = 0; i < plan->cutting.size_count; i++) {
        const struct msl_cut_size *rows = &plan->sizes[i];
        const struct msl_blank *last = &plan->blanks[rows->first + rows->count - 1];
        area = msl_wide_add(area, msl_wide_multiply((last->width - last->run_in) * last->along, last->end));
    }
    msl_wide_floor(area, plan->spec.usable_width, &whole, &rest);
    return whole + (rest != 0);
}

void msl_add_up_beside(struct muslin_cutplan *plan)
{
    struct muslin_cutplan_total *totals = &plan->totals;
    if (plan->stock_count != 0 || plan->cutting.size_count == 0)
        return;
    totals->own_strips_length = own_strips_length(plan) + plan->spec.straightening;
    totals->area_bound = area_bound(plan);
}

void msl_add_up(struct msl_check *check, struct muslin_cutplan *plan)
{
    struct muslin_cutplan_total *totals = &plan->totals;
    totals->missing = missing_of(plan);
    totals->cost = plan->found.cost * plan->cost_unit;
    totals->least = plan->found.least * plan->cost_unit;
    totals->work = plan->found.work + plan->work_besides;
    totals->cases = plan->found.case_count;
    totals->proven = totals->cost == totals->least;
    totals->stopped = plan->found.stopped;
    if (plan->stock_count == 0 && totals->cost > 0)
        totals->cloth_length = totals->cost + plan->spec.straightening;
    for (uint32_t i = 0; i < plan->piece_count; i++)
        totals->other_lengths |= msl_may_join_anew(plan, i);
    totals->heights = heights_of(plan);
    count_strips(plan);
    count_pieces(check, plan);
}
