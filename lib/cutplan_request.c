/* cutplan_request.c - what a cutting plan is asked for: initial values, every member checked, and a copy kept.
 *
 * SPDX-License-Identifier: MIT */
#include "cutplan_plan.h"

enum {
    PRIORITY_MOST = 1000,
    OF_A_PIECE = MUSLIN_BLANK_MAY_TURN,
    OF_A_BOLT = MUSLIN_CUTPLAN_NO_PANELS | MUSLIN_CUTPLAN_ONE_HEIGHT | MUSLIN_CUTPLAN_OWN_STRIPS |
                MUSLIN_CUTPLAN_STACKED | MUSLIN_CUTPLAN_FIRST_CUT_ACROSS | MUSLIN_CUTPLAN_FOLDED |
                MUSLIN_CUTPLAN_BY_PRIORITY,
    OF_STOCK = OF_A_BOLT & ~MUSLIN_CUTPLAN_FOLDED
};
#define WORK_MOST (INT64_C(1) << 40)

/* ---- initial values --------------------------------------------------------------------------------------------- */

muslin_status muslin_blank_spec_init(struct muslin_blank_spec *spec, uint32_t size)
{
    static const struct muslin_blank_spec initial = MUSLIN_BLANK_SPEC_INIT;
    return msl_init_struct(spec, size, &initial, (uint32_t)sizeof initial, (uint32_t)sizeof initial);
}

muslin_status muslin_cutplan_stock_spec_init(struct muslin_cutplan_stock_spec *spec, uint32_t size)
{
    static const struct muslin_cutplan_stock_spec initial = MUSLIN_CUTPLAN_STOCK_SPEC_INIT;
    return msl_init_struct(spec, size, &initial, (uint32_t)sizeof initial, (uint32_t)sizeof initial);
}

muslin_status muslin_cutplan_spec_init(struct muslin_cutplan_spec *spec, uint32_t size)
{
    static const struct muslin_cutplan_spec initial = MUSLIN_CUTPLAN_SPEC_INIT;
    return msl_init_struct(spec, size, &initial, (uint32_t)sizeof initial, (uint32_t)sizeof initial);
}

/* ---- what is asked ---------------------------------------------------------------------------------------------- */

/* With stock the width is each piece's own. */
void msl_want_plan_spec(struct msl_check *check, const struct muslin_cutplan_spec *in, int has_stock)
{
    const int64_t some_loss = in->resquare_loss != 0;
    msl_want_between(check, MUSLIN_ARG_USABLE_WIDTH, in->usable_width, !has_stock, has_stock ? 0 : MUSLIN_SIZE_MAX);
    msl_want_size(check, MUSLIN_ARG_END_LOSS, in->end_loss);
    msl_want_size(check, MUSLIN_ARG_RESQUARE_LOSS, in->resquare_loss);
    msl_want_between(check, MUSLIN_ARG_RESQUARE_EVERY, in->resquare_every, some_loss, some_loss * MUSLIN_COUNT_MAX);
    msl_want_size(check, MUSLIN_ARG_STRAIGHTENING, in->straightening);
    msl_want_count(check, MUSLIN_ARG_SPARE_PIECES, in->spare_pieces);
    msl_want_between(check, MUSLIN_ARG_WORK_LIMIT, in->work_limit, 0, WORK_MOST);
    msl_want_choice(check, MUSLIN_ARG_PRINT_DIRECTION, in->print, MUSLIN_PRINT_NONE, MUSLIN_PRINT_STRIPE_ACROSS);
    msl_want_pad(check, in->pad);
}

static struct muslin_blank_spec read_piece(struct msl_check *check, const struct msl_plan_request *request, size_t i)
{
    struct muslin_blank_spec piece = { 0 };
    const void *row = msl_row_to_read(check, request->pieces, request->piece_size, i);
    msl_read_struct(check, MUSLIN_ARG_ROWS, &piece, (uint32_t)sizeof piece, (uint32_t)sizeof piece, OF_A_PIECE, row);
    return piece;
}

void msl_want_blank(struct msl_check *check, const struct muslin_blank_spec *piece)
{
    const int is_sloped = piece->kind == MUSLIN_BLANK_SLOPED;
    const int is_joined = piece->kind == MUSLIN_BLANK_JOINED;
    msl_want_choice(check, MUSLIN_ARG_BLANK_KIND, piece->kind, MUSLIN_BLANK_PIECE, MUSLIN_BLANK_SLOPED);
    if (check->status == MUSLIN_OK && piece->kind != MUSLIN_BLANK_PIECE && piece->flags != 0)
        msl_fail(check, MUSLIN_ERR_FLAGS, MUSLIN_ARG_ROWS, piece->flags, 0);
    msl_want_some_size(check, MUSLIN_ARG_PIECE_WIDTH, piece->cut_width);
    msl_want_some_size(check, MUSLIN_ARG_PIECE_LENGTH, piece->cut_length);
    msl_want_between(check, MUSLIN_ARG_PIECES, piece->count, 0, MUSLIN_CUTPLAN_COUNT_MAX);
    msl_want_between(check, MUSLIN_ARG_RUN_IN, piece->run_in, 0, is_sloped ? MUSLIN_SIZE_MAX : 0);
    msl_want_between(check, MUSLIN_ARG_JOIN_LOSS, piece->join_loss, 0, is_joined ? MUSLIN_SIZE_MAX : 0);
    msl_want_between(check, MUSLIN_ARG_PRIORITY, piece->priority, 0, PRIORITY_MOST);
    msl_want_between(check, MUSLIN_ARG_LEAST_PART, piece->least_part, 0, is_joined ? MUSLIN_SIZE_MAX : 0);
}

static struct muslin_cutplan_stock_spec read_stock(struct msl_check *check, const struct msl_plan_request *request,
                                                   size_t i)
{
    struct muslin_cutplan_stock_spec stock = { 0 };
    const void *row = msl_row_to_read(check, request->stock, request->stock_size, i);
    msl_read_struct(check, MUSLIN_ARG_ROWS, &stock, (uint32_t)sizeof stock, (uint32_t)sizeof stock, 0, row);
    return stock;
}

static void want_stock(struct msl_check *check, const struct muslin_cutplan_stock_spec *stock)
{
    msl_want_some_size(check, MUSLIN_ARG_STOCK_SIDE, stock->width);
    msl_want_some_size(check, MUSLIN_ARG_STOCK_SIDE, stock->length);
    msl_want_count(check, MUSLIN_ARG_STOCK_COUNT, stock->count);
    msl_want_some_count(check, MUSLIN_ARG_STOCK_COST, stock->cost);
}

static void want_rows(struct msl_check *check, int32_t argument, const void *rows, size_t row_size, uint32_t least,
                      size_t n)
{
    msl_want_between(check, argument, n > MUSLIN_COUNT_MAX ? MUSLIN_COUNT_MAX : (int64_t)n, 0,
                     MUSLIN_CUTPLAN_ROWS_MAX);
    if (n == 0)
        return;
    msl_want_row_size(check, row_size, least);
    msl_want_pointer(check, argument, rows);
}

void msl_read_request(struct msl_check *check, struct msl_plan_request *request, const struct muslin_cutplan_spec *spec)
{
    const int has_stock = request->stock_count != 0;
    msl_read_struct(check, MUSLIN_ARG_SPEC, &request->spec, (uint32_t)sizeof *spec, (uint32_t)sizeof *spec,
                    has_stock ? OF_STOCK : OF_A_BOLT, spec);
    if (check->status == MUSLIN_OK)
        msl_want_plan_spec(check, &request->spec, has_stock);
    want_rows(check, MUSLIN_ARG_ROWS, request->pieces, request->piece_size, (uint32_t)sizeof *request->pieces,
              request->piece_count);
    want_rows(check, MUSLIN_ARG_STOCK_ROWS, request->stock, request->stock_size, (uint32_t)sizeof *request->stock,
              request->stock_count);
    for (size_t i = 0; check->status == MUSLIN_OK && i < request->piece_count; i++) {
        const struct muslin_blank_spec piece = read_piece(check, request, i);
        if (check->status == MUSLIN_OK)
            msl_want_blank(check, &piece);
    }
    for (size_t i = 0; check->status == MUSLIN_OK && i < request->stock_count; i++) {
        const struct muslin_cutplan_stock_spec stock = read_stock(check, request, i);
        if (check->status == MUSLIN_OK)
            want_stock(check, &stock);
    }
    check->at = 0;
}

/* ---- kept ------------------------------------------------------------------------------------------------------- */

/* Whether a piece of stock comes before another: what they say decides, not their rows. */
static int is_stock_before(const struct muslin_cutplan_stock_spec *a, const struct muslin_cutplan_stock_spec *b)
{
    if (a->cost != b->cost)
        return a->cost > b->cost;
    if (a->width != b->width)
        return a->width > b->width;
    if (a->length != b->length)
        return a->length > b->length;
    return a->count > b->count;
}

static void sort_stock(const struct muslin_cutplan *plan)
{
    for (uint32_t i = 0; i < plan->stock_count; i++) {
        uint32_t at = i;
        for (; at > 0 && is_stock_before(&plan->stock[i], &plan->stock[plan->stock_rows[at - 1]]); at--)
            plan->stock_rows[at] = plan->stock_rows[at - 1];
        plan->stock_rows[at] = i;
    }
}

void msl_keep_request(struct msl_check *check, struct muslin_cutplan *plan, const struct msl_plan_request *request)
{
    const struct muslin_allocator *a = &plan->allocator;
    plan->spec = request->spec;
    plan->piece_count = (uint32_t)request->piece_count;
    plan->stock_count = (uint32_t)request->stock_count;
    plan->pieces = msl_scratch(check, a, plan->piece_count, sizeof plan->pieces[0]);
    plan->made = msl_scratch(check, a, plan->piece_count, sizeof plan->made[0]);
    plan->stock = msl_scratch(check, a, plan->stock_count, sizeof plan->stock[0]);
    plan->stock_rows = msl_scratch(check, a, plan->stock_count, sizeof plan->stock_rows[0]);
    if (check->status != MUSLIN_OK)
        return;
    for (size_t i = 0; i < request->piece_count; i++) {
        plan->pieces[i] = read_piece(check, request, i);
        plan->made[i] = plan->pieces[i].count;
    }
    for (size_t i = 0; i < request->stock_count; i++)
        plan->stock[i] = read_stock(check, request, i);
    check->at = 0;
    sort_stock(plan);
}
