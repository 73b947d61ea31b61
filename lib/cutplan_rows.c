/* cutplan_rows.c - what a cutting plan says row by row: strips, places, what is left over, pieces, stock.
 *
 * SPDX-License-Identifier: MIT */
#include "cutplan_plan.h"

muslin_status muslin_cutplan_strips(const struct muslin_cutplan *plan, struct muslin_cutplan_strip *rows,
                                    size_t row_size, size_t capacity, size_t *count, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    const uint32_t known = (uint32_t)sizeof *rows;
    msl_want_plan(&check, plan);
    if (check.status != MUSLIN_OK)
        return check.status;
    const size_t needed = (size_t)plan->strips.used;
    if (msl_rows_wanted(&check, rows, row_size, known, capacity, count, needed))
        for (size_t i = 0; i < needed; i++)
            msl_write_row(rows, row_size, i, msl_strip_of(plan, i), known);
    return check.status;
}

muslin_status muslin_cutplan_places(const struct muslin_cutplan *plan, struct muslin_cutplan_place *rows,
                                    size_t row_size, size_t capacity, size_t *count, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    const uint32_t known = (uint32_t)sizeof *rows;
    msl_want_plan(&check, plan);
    if (check.status != MUSLIN_OK)
        return check.status;
    const size_t needed = (size_t)plan->places.used;
    if (msl_rows_wanted(&check, rows, row_size, known, capacity, count, needed))
        for (size_t i = 0; i < needed; i++)
            msl_write_row(rows, row_size, i, msl_place_of(plan, i), known);
    return check.status;
}

/* ---- left over -------------------------------------------------------------------------------------------------- */

/* Taken off at the right end of a strip; nothing where that is the fold. */
static int64_t loss_at_right(const struct muslin_cutplan *plan)
{
    const int64_t loss = plan->spec.end_loss - plan->spec.end_loss / 2;
    return plan->layers == 2 ? 0 : loss;
}

static struct muslin_cutplan_left_over end_of(const struct muslin_cutplan *plan, uint64_t row)
{
    const struct muslin_cutplan_strip *strip = msl_strip_of(plan, row);
    const int64_t x = msl_begin_of(plan, strip) + strip->used;
    const struct muslin_cutplan_left_over end = { .size = (uint32_t)sizeof end,
                                                  .strip = (int64_t)row,
                                                  .count = msl_times_of(plan, strip),
                                                  .x = x,
                                                  .width = strip->width - x - loss_at_right(plan),
                                                  .height = strip->height };
    return end;
}

/* Above the last strip within a panel, beside its slit pieces; of stock right across. */
static struct muslin_cutplan_left_over rest_of(const struct muslin_cutplan *plan, uint64_t row)
{
    const struct muslin_cutplan_strip *holder = msl_strip_of(plan, row);
    const int is_panel = holder->kind == MUSLIN_CUTPLAN_STRIP_PANEL;
    struct muslin_cutplan_left_over rest = { .size = (uint32_t)sizeof rest,
                                             .strip = (int64_t)row,
                                             .count = holder->times };
    for (uint64_t i = row + 1; i < plan->strips.used; i++) {
        const struct muslin_cutplan_strip *strip = msl_strip_of(plan, i);
        if (strip->holder != (int64_t)row)
            break;
        if (strip->kind == MUSLIN_CUTPLAN_STRIP_SLIT)
            rest.x = strip->width;
        else
            rest.y += strip->times * strip->height;
    }
    rest.width = holder->width - rest.x - (is_panel ? loss_at_right(plan) : 0);
    rest.height = holder->height - rest.y;
    return rest;
}

/* Above slit pieces that are shorter than their panel, side by side and equally long: from the first of them on. */
static struct muslin_cutplan_left_over above_slit(const struct muslin_cutplan *plan, uint64_t number)
{
    const struct muslin_cutplan_place *first = msl_place_of(plan, number);
    const struct muslin_cutplan_strip *slit = msl_strip_of(plan, (uint64_t)first->strip);
    const uint64_t behind = (uint64_t)(slit->first_place + slit->places);
    struct muslin_cutplan_left_over block = { .size = (uint32_t)sizeof block,
                                              .strip = first->strip,
                                              .x = first->x,
                                              .y = first->height,
                                              .height = slit->height - first->height };
    if (number > (uint64_t)slit->first_place && first[-1].height == first->height)
        return block;
    for (uint64_t i = number; i < behind && msl_place_of(plan, i)->height == first->height; i++) {
        const struct muslin_cutplan_place *place = msl_place_of(plan, i);
        block.width = place->x + (place->count - 1) * place->pitch + place->width - first->x;
    }
    block.count = msl_times_of(plan, slit) * plan->layers;
    return block;
}

/* Beside a joined strip that goes round the fold and is shorter than both layers: in one of them, from the selvage. */
static struct muslin_cutplan_left_over beside_joined(const struct muslin_cutplan *plan, uint64_t number)
{
    const struct muslin_cutplan_place *place = msl_place_of(plan, number);
    const int64_t pieces = place->count * msl_times_of(plan, msl_strip_of(plan, (uint64_t)place->strip));
    const struct muslin_cutplan_left_over rest = { .size = (uint32_t)sizeof rest,
                                                   .strip = place->strip,
                                                   .count = pieces,
                                                   .x = place->x,
                                                   .y = place->y,
                                                   .width = 2 * plan->room - place->width,
                                                   .height = place->height };
    return rest;
}

static struct muslin_cutplan_left_over left_at_strip(const struct muslin_cutplan *plan, uint64_t row)
{
    const int32_t kind = msl_strip_of(plan, row)->kind;
    const int is_holder = kind == MUSLIN_CUTPLAN_STRIP_PANEL || kind == MUSLIN_CUTPLAN_STRIP_STOCK;
    struct muslin_cutplan_left_over left = is_holder ? rest_of(plan, row) : end_of(plan, row);
    left.width *= plan->layers;
    return left;
}

static struct muslin_cutplan_left_over left_at_place(const struct muslin_cutplan *plan, uint64_t number)
{
    static const struct muslin_cutplan_left_over nothing;
    const struct muslin_cutplan_place *place = msl_place_of(plan, number);
    if (msl_strip_of(plan, (uint64_t)place->strip)->kind == MUSLIN_CUTPLAN_STRIP_SLIT)
        return above_slit(plan, number);
    return msl_goes_round_fold(plan, place) ? beside_joined(plan, number) : nothing;
}

/* Cloth is left at strips, which are numbered first, and at places. */
static uint64_t spots_of(const struct muslin_cutplan *plan)
{
    return plan->strips.used + plan->places.used;
}

/* What is left of the cloth at a spot. Returns whether it is large enough. */
static int is_left_over(const struct muslin_cutplan *plan, uint64_t spot, int64_t least_side,
                        struct muslin_cutplan_left_over *left)
{
    const int64_t least = least_side == 0 ? 1 : least_side;
    *left = spot < plan->strips.used ? left_at_strip(plan, spot) : left_at_place(plan, spot - plan->strips.used);
    return left->width >= least && left->height >= least;
}

static void write_left_over(struct msl_check *check, const struct muslin_cutplan *plan, int64_t least_side,
                            struct muslin_cutplan_left_over *rows, size_t row_size, size_t count)
{
    struct msl_rank *ranks = msl_scratch(check, &plan->allocator, count, sizeof *ranks);
    struct msl_rank *spare = msl_scratch(check, &plan->allocator, count, sizeof *spare);
    struct muslin_cutplan_left_over left;
    uint32_t found = 0;
    for (uint64_t i = 0; check->status == MUSLIN_OK && i < spots_of(plan); i++)
        if (is_left_over(plan, i, least_side, &left)) {
            const struct msl_rank rank = { .first = -left.width * left.height, .row = (uint32_t)i };
            ranks[found++] = rank;
        }
    if (check->status == MUSLIN_OK)
        msl_sort(ranks, spare, found, NULL, NULL);
    for (uint32_t i = 0; i < found; i++) {
        is_left_over(plan, ranks[i].row, least_side, &left);
        msl_write_row(rows, row_size, i, &left, (uint32_t)sizeof left);
    }
    msl_scratch_free(&plan->allocator, ranks, count, sizeof *ranks);
    msl_scratch_free(&plan->allocator, spare, count, sizeof *spare);
}

muslin_status muslin_cutplan_left_overs(const struct muslin_cutplan *plan, muslin_len least_side,
                                        struct muslin_cutplan_left_over *rows, size_t row_size, size_t capacity,
                                        size_t *count, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct muslin_cutplan_left_over left;
    size_t needed = 0;
    msl_want_plan(&check, plan);
    msl_want_size(&check, MUSLIN_ARG_LEAST_SIDE, least_side);
    if (check.status != MUSLIN_OK)
        return check.status;
    for (uint64_t i = 0; i < spots_of(plan); i++)
        needed += (size_t)is_left_over(plan, i, least_side, &left);
    if (!msl_rows_to_fill(&check, rows, row_size, (uint32_t)sizeof *rows, capacity, count, needed))
        return check.status;
    write_left_over(&check, plan, least_side, rows, row_size, needed);
    if (check.status == MUSLIN_OK)
        *count = needed;
    return check.status;
}

/* ---- what of the request ---------------------------------------------------------------------------------------- */

/* Pieces cut for a row, and strips where it is JOINED. Of a size the last row that gets some has what is cut besides:
 * the second piece of a blank that nobody wants. */
static int64_t cut_for(const struct muslin_cutplan *plan, uint32_t row)
{
    int64_t cut = 0;
    for (int32_t i = 0; i < plan->cutting.size_count; i++) {
        const struct msl_cut_size *rows = &plan->sizes[i];
        const struct msl_blank *blanks = &plan->blanks[rows->first];
        const int64_t all = plan->cutting.sizes[i].count * (blanks->folded ? 1 : plan->layers);
        const int64_t wanted = blanks[rows->count - 1].end;
        int64_t before = 0;
        for (uint32_t k = 0; k < rows->count; k++) {
            const int64_t end = blanks[k].end == wanted ? all : blanks[k].end;
            cut += blanks[k].row == row ? end - before : 0;
            before = end;
        }
    }
    return cut;
}

muslin_status muslin_cutplan_pieces(const struct muslin_cutplan *plan, struct muslin_cutplan_piece *rows,
                                    size_t row_size, size_t capacity, size_t *count, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    msl_want_plan(&check, plan);
    if (check.status != MUSLIN_OK)
        return check.status;
    if (!msl_rows_wanted(&check, rows, row_size, (uint32_t)sizeof *rows, capacity, count, plan->piece_count))
        return check.status;
    for (uint32_t i = 0; i < plan->piece_count; i++) {
        const struct muslin_blank_spec *piece = &plan->pieces[i];
        const struct muslin_cutplan_piece row = { .size = (uint32_t)sizeof row,
                                                  .label = piece->label,
                                                  .made = plan->made[i],
                                                  .missing = piece->count - plan->made[i],
                                                  .cut = cut_for(plan, i) };
        msl_write_row(rows, row_size, i, &row, (uint32_t)sizeof row);
    }
    return check.status;
}

static int64_t used_of(const struct muslin_cutplan *plan, int64_t stock)
{
    int64_t used = 0;
    for (uint64_t i = 0; i < plan->strips.used; i++)
        if (msl_strip_of(plan, i)->stock == stock)
            used += msl_strip_of(plan, i)->times;
    return used;
}

muslin_status muslin_cutplan_stock(const struct muslin_cutplan *plan, struct muslin_cutplan_stock_used *rows,
                                   size_t row_size, size_t capacity, size_t *count, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    msl_want_plan(&check, plan);
    if (check.status != MUSLIN_OK)
        return check.status;
    if (!msl_rows_wanted(&check, rows, row_size, (uint32_t)sizeof *rows, capacity, count, plan->stock_count))
        return check.status;
    for (uint32_t i = 0; i < plan->stock_count; i++) {
        const int64_t used = used_of(plan, i);
        const struct muslin_cutplan_stock_used row = { .size = (uint32_t)sizeof row,
                                                       .label = plan->stock[i].label,
                                                       .used = used,
                                                       .cost = used * plan->stock[i].cost };
        msl_write_row(rows, row_size, i, &row, (uint32_t)sizeof row);
    }
    return check.status;
}

int32_t msl_some_are_turned(const struct muslin_cutplan *plan)
{
    int32_t turned = 0;
    for (uint64_t i = 0; i < plan->places.used; i++)
        turned |= msl_place_of(plan, i)->turned;
    return turned;
}
