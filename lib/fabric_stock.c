/* fabric_stock.c - stock: what lies on the table already, its edges, its washing, its print.
 *
 * SPDX-License-Identifier: MIT */
#include "fabric_stock.h"

muslin_status muslin_stock_spec_init(struct muslin_stock_spec *spec, uint32_t size)
{
    const struct muslin_stock_spec initial = MUSLIN_STOCK_SPEC_INIT;
    return msl_init_struct(spec, size, &initial, (uint32_t)sizeof initial, (uint32_t)sizeof initial);
}

void msl_read_stock(struct msl_check *check, int32_t argument, struct muslin_stock_spec *stock, const void *from)
{
    msl_read_struct(check, argument, stock, (uint32_t)sizeof *stock, (uint32_t)sizeof *stock, 0, from);
    msl_want_some_size(check, MUSLIN_ARG_USABLE_WIDTH, stock->width);
    msl_want_some_size(check, MUSLIN_ARG_CLOTH_LENGTH, stock->length);
    msl_want_count(check, MUSLIN_ARG_PIECES, stock->count);
    msl_want_choice(check, MUSLIN_ARG_EDGE, stock->edge, MUSLIN_EDGE_STRAIGHT, MUSLIN_EDGE_PINKED_VALLEYS);
    msl_want_between(check, MUSLIN_ARG_PINK_DEPTH, stock->pink_depth, 0,
                     stock->edge == MUSLIN_EDGE_STRAIGHT ? 0 : MUSLIN_SIZE_MAX);
    msl_want_choice(check, MUSLIN_ARG_CARE_STATE, stock->care, MUSLIN_CARE_UNWASHED, MUSLIN_CARE_WASHED);
    msl_want_choice(check, MUSLIN_ARG_PRINT_DIRECTION, stock->print, MUSLIN_PRINT_NONE, MUSLIN_PRINT_STRIPE_ACROSS);
    msl_want_choice(check, MUSLIN_ARG_STOCK_KIND, stock->kind, MUSLIN_STOCK_YARDAGE, MUSLIN_STOCK_FAT_EIGHTH);
}

/* ---- pinked edges ---------------------------------------------------------------------------------------------- */

/* What each size changes by when the other point is lined up: both edges lose, or gain, the depth of the zigzag. */
static muslin_len change_by_aligning(const struct muslin_stock_spec *stock, int32_t align)
{
    if (stock->edge == MUSLIN_EDGE_STRAIGHT || stock->edge == align)
        return 0;
    return align == MUSLIN_EDGE_PINKED_TIPS ? 2 * stock->pink_depth : -2 * stock->pink_depth;
}

muslin_status muslin_stock_size(const struct muslin_stock_spec *stock, int32_t align, muslin_len *width,
                                muslin_len *length, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct muslin_stock_spec s = { 0 };
    msl_read_stock(&check, MUSLIN_ARG_SPEC, &s, stock);
    msl_want_choice(&check, MUSLIN_ARG_EDGE, align, MUSLIN_EDGE_PINKED_TIPS, MUSLIN_EDGE_PINKED_VALLEYS);
    if (check.status != MUSLIN_OK)
        return check.status;
    muslin_len change = change_by_aligning(&s, align);
    muslin_len shorter = msl_lesser(s.width, s.length);
    if (shorter + change <= 0)
        return msl_fail(&check, MUSLIN_ERR_RANGE, MUSLIN_ARG_PINK_DEPTH, s.pink_depth, (shorter - 1) / 2);
    if (width != NULL)
        *width = s.width + change;
    if (length != NULL)
        *length = s.length + change;
    return MUSLIN_OK;
}

/* ---- strips from stock ----------------------------------------------------------------------------------------- */

muslin_status muslin_stock_strips(const struct muslin_stock_spec *stock, muslin_len strip_cut, int64_t strips_wanted,
                                  struct muslin_stock_yield *out, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct muslin_stock_spec s = { 0 };
    msl_read_stock(&check, MUSLIN_ARG_SPEC, &s, stock);
    msl_want_some_size(&check, MUSLIN_ARG_STRIP_CUT, strip_cut);
    msl_want_count(&check, MUSLIN_ARG_STRIPS, strips_wanted);
    msl_want_output(&check, out, (uint32_t)sizeof *out);
    if (check.status == MUSLIN_OK && s.length < strip_cut)
        msl_fail(&check, MUSLIN_ERR_NO_YIELD, MUSLIN_ARG_CLOTH_LENGTH, s.length, strip_cut);
    if (check.status != MUSLIN_OK)
        return check.status;
    struct muslin_stock_yield strips = { 0 };
    strips.per_piece = s.length / strip_cut;
    strips.in_hand = strips.per_piece * s.count;
    strips.pieces_needed = msl_divided_up(strips_wanted, strips.per_piece);
    strips.pieces_missing = msl_greater(strips.pieces_needed - s.count, 0);
    strips.strip_length = s.width;
    strips.left_over = s.length % strip_cut;
    strips.shorter_by = strips.left_over;
    strips.warnings = strips.shorter_by == 0 ? MUSLIN_WARN_NO_SLACK : 0;
    msl_write_struct(out, &strips, (uint32_t)sizeof strips);
    return MUSLIN_OK;
}

/* ---- fabrics that meet ----------------------------------------------------------------------------------------- */

static int is_small_precut(const struct muslin_stock_spec *stock)
{
    return stock->kind == MUSLIN_STOCK_STRIP || stock->kind == MUSLIN_STOCK_SQUARE;
}

/* What the first fabric and another one of the same top say together. */
static uint32_t warnings_for(const struct muslin_stock_spec *first, const struct muslin_stock_spec *other)
{
    uint32_t warnings = 0;
    if (other->care != first->care)
        warnings |= MUSLIN_WARN_MIXED_WASH;
    if (other->edge != first->edge)
        warnings |= MUSLIN_WARN_MIXED_EDGES;
    if (other->care == MUSLIN_CARE_WASHED && is_small_precut(other))
        warnings |= MUSLIN_WARN_PRECUT_WASHED;
    return warnings;
}

static uint32_t check_rows(struct msl_check *check, const void *rows, size_t row_size, size_t n)
{
    struct muslin_stock_spec first = { 0 };
    struct muslin_stock_spec stock = { 0 };
    uint32_t warnings = 0;
    for (size_t i = 0; i < n; i++) {
        msl_read_stock(check, MUSLIN_ARG_ROWS, &stock, msl_row_to_read(check, rows, row_size, i));
        if (check->status != MUSLIN_OK)
            return 0;
        if (i == 0)
            first = stock;
        warnings |= warnings_for(&first, &stock);
    }
    return warnings;
}

muslin_status muslin_stock_check(const struct muslin_stock_spec *rows, size_t row_size, size_t n, uint32_t *warnings,
                                 struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    msl_want_pointer(&check, MUSLIN_ARG_OUTPUT, warnings);
    if (n != 0) {
        msl_want_pointer(&check, MUSLIN_ARG_ROWS, rows);
        msl_want_row_size(&check, row_size, (uint32_t)sizeof(struct muslin_stock_spec));
    }
    if (check.status != MUSLIN_OK)
        return check.status;
    uint32_t found = check_rows(&check, rows, row_size, n);
    if (check.status == MUSLIN_OK)
        *warnings = found;
    return check.status;
}

/* ---- prints ---------------------------------------------------------------------------------------------------- */

/* The least turn, in quarters, after which the print looks the same again. */
static int32_t quarters_to_same(int32_t print)
{
    if (print == MUSLIN_PRINT_NONE)
        return 1;
    return print == MUSLIN_PRINT_ONE_WAY ? 4 : 2;
}

muslin_status muslin_print_may_turn(int32_t print, int32_t quarter_turns, int32_t *allowed,
                                    struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    msl_want_choice(&check, MUSLIN_ARG_PRINT_DIRECTION, print, MUSLIN_PRINT_NONE, MUSLIN_PRINT_STRIPE_ACROSS);
    msl_want_between(&check, MUSLIN_ARG_TURNING, quarter_turns, 0, 3);
    msl_want_pointer(&check, MUSLIN_ARG_OUTPUT, allowed);
    if (check.status == MUSLIN_OK)
        *allowed = quarter_turns % quarters_to_same(print) == 0;
    return check.status;
}
