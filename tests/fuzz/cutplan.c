/* cutplan.c - cutting plans of small requests: none below its bound, none with a fault, memory given back.
 *
 * SPDX-License-Identifier: MIT */
#include <stdlib.h>

#include "draw.h"

int LLVMFuzzerTestOneInput(const uint8_t *data, size_t size);

enum { ROWS = 6, STOCK = 3, MOST_WORK = 20000 };

struct request {
    struct muslin_cutplan_spec spec;
    struct muslin_blank_spec rows[ROWS];
    struct muslin_cutplan_stock_spec stock[STOCK];
    size_t row_count;
    size_t stock_count;
};

/* 1 .. 255 eighths of an inch, or any tick up to 4 in. */
static muslin_len draw_side(struct input *input)
{
    const muslin_len side = draw_byte(input);
    return side > 0 ? side * 1016 : 1 + draw_byte(input) * 127;
}

static void draw_row(struct input *input, struct muslin_blank_spec *row)
{
    *row = (struct muslin_blank_spec)MUSLIN_BLANK_SPEC_INIT;
    row->kind = 1 + (int32_t)draw_below(input, 4);
    row->flags = row->kind == MUSLIN_BLANK_PIECE ? draw_below(input, 2) * MUSLIN_BLANK_MAY_TURN : 0;
    row->cut_width = draw_side(input) * (row->kind == MUSLIN_BLANK_JOINED ? 9 : 1);
    row->cut_length = draw_side(input);
    row->count = draw_below(input, 20);
    if (row->kind == MUSLIN_BLANK_SLOPED)
        row->run_in = draw_below(input, 4) * 1016;
    if (row->kind == MUSLIN_BLANK_JOINED) {
        row->join_loss = draw_below(input, 3) * 2032;
        row->least_part = draw_below(input, 2) * 81280;
    }
    row->priority = (int32_t)draw_below(input, 4);
}

static void draw_request(struct input *input, struct request *request)
{
    request->spec = (struct muslin_cutplan_spec)MUSLIN_CUTPLAN_SPEC_INIT;
    request->spec.flags = draw_below(input, 128);
    request->spec.usable_width = draw_side(input) + 20 * 8128;
    request->spec.end_loss = draw_below(input, 3) * 2032;
    request->spec.resquare_every = draw_below(input, 4);
    request->spec.resquare_loss = request->spec.resquare_every > 0 ? draw_below(input, 9) * 127 : 0;
    request->spec.straightening = draw_below(input, 3) * 4064;
    request->spec.spare_pieces = draw_below(input, 8) == 7;
    request->spec.print = 1 + (int32_t)draw_below(input, 2);
    request->spec.work_limit = draw_byte(input) * (int64_t)(MOST_WORK / 256);
    request->stock_count = draw_below(input, 2 * STOCK) < STOCK ? 0 : 1 + draw_below(input, STOCK);
    request->row_count = 1 + draw_below(input, ROWS);
    if (request->stock_count > 0)
        request->spec.usable_width = 0;
    for (size_t i = 0; i < request->stock_count; i++) {
        request->stock[i] = (struct muslin_cutplan_stock_spec)MUSLIN_CUTPLAN_STOCK_SPEC_INIT;
        request->stock[i].width = draw_side(input);
        request->stock[i].length = draw_side(input);
        request->stock[i].count = draw_below(input, 4) == 0 ? MUSLIN_COUNT_MAX : 1 + draw_below(input, 6);
        request->stock[i].cost = 1 + draw_byte(input);
    }
    for (size_t i = 0; i < request->row_count; i++)
        draw_row(input, &request->rows[i]);
}

/* Everything that is cut lies within the plan's cloth, and is as many as the totals say. */
static void check_rows(const struct muslin_cutplan *plan, const struct muslin_cutplan_total *total)
{
    size_t count = 0;
    MUST(muslin_cutplan_strips(plan, NULL, sizeof(struct muslin_cutplan_strip), 0, &count, NULL) == MUSLIN_OK);
    struct muslin_cutplan_strip *strips = malloc(count * sizeof *strips);
    MUST(muslin_cutplan_strips(plan, strips, sizeof *strips, count, &count, NULL) == MUSLIN_OK);
    free(strips);
    MUST(muslin_cutplan_pieces(plan, NULL, sizeof(struct muslin_cutplan_piece), 0, &count, NULL) == MUSLIN_OK);
    struct muslin_cutplan_piece *pieces = malloc(count * sizeof *pieces);
    MUST(muslin_cutplan_pieces(plan, pieces, sizeof *pieces, count, &count, NULL) == MUSLIN_OK);
    free(pieces);
    MUST(total->pieces >= 0 && total->missing >= 0 && total->waste >= 0 && total->strips >= total->panels);
}

static void check_plan(const struct muslin_cutplan *plan)
{
    struct muslin_cutplan_total total = { .size = sizeof total };
    struct muslin_cutplan_checked checked = { .size = sizeof checked };
    MUST(muslin_cutplan_totals(plan, &total, NULL) == MUSLIN_OK);
    MUST(total.cost >= total.least && (total.proven == 1) == (total.cost == total.least));
    check_rows(plan, &total);
    const muslin_status status = muslin_cutplan_check(plan, NULL, NULL, &checked, NULL);
    if (status == MUSLIN_OK)
        MUST(checked.fault == MUSLIN_CUTPLAN_FAULT_NONE && checked.cost == total.cost);
    else
        MUST(status == MUSLIN_ERR_NO_MEMORY || status == MUSLIN_ERR_WORK_LIMIT);
}

int LLVMFuzzerTestOneInput(const uint8_t *data, size_t size)
{
    struct input input = { data, size };
    struct request request = { 0 };
    struct failing_allocator failing;
    struct muslin_cutplan *plan = NULL;
    failing_start(&failing, draw_byte(&input));
    draw_request(&input, &request);
    const muslin_status status =
        muslin_cutplan_create(&request.spec, request.rows, sizeof request.rows[0], request.row_count,
                              request.stock_count > 0 ? request.stock : NULL, sizeof request.stock[0],
                              request.stock_count, &failing.allocator, NULL, NULL, &plan, NULL);
    MUST((status == MUSLIN_OK) == (plan != NULL));
    MUST(status != MUSLIN_ERR_NO_MEMORY || failing.has_failed);
    if (plan != NULL)
        check_plan(plan);
    muslin_cutplan_free(plan);
    MUST(failing_is_clean(&failing));
    return 0;
}
