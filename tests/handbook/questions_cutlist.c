/* questions_cutlist.c - what the handbook asks about cutlist.h.
 *
 * SPDX-License-Identifier: MIT */
#include "handbook.h"

enum { ROWS_MAX = 2 };

/* The list: a_width, a_length and a_count, and b_... where there is a second size. */
static size_t read_list(struct figure *f, struct muslin_cutlist_piece_spec *rows)
{
    const struct muslin_cutlist_piece_spec initial = MUSLIN_CUTLIST_PIECE_SPEC_INIT;
    rows[0] = initial;
    rows[0].cut_width = length(f, "a_width");
    rows[0].cut_length = length(f, "a_length");
    rows[0].count = count(f, "a_count");
    rows[1] = initial;
    rows[1].cut_width = length_or(f, "b_width", 1);
    rows[1].cut_length = length_or(f, "b_length", 1);
    rows[1].count = count_or(f, "b_count", 0);
    return rows[1].count == 0 ? 1 : 2;
}

static void cutlist(struct figure *f)
{
    struct muslin_cutlist_piece_spec rows[ROWS_MAX];
    struct muslin_cutlist_row found[ROWS_MAX] = { { 0 } };
    struct muslin_cutlist_spec spec = MUSLIN_CUTLIST_SPEC_INIT;
    struct muslin_cutlist_yardage made = { .size = sizeof made };
    size_t n = read_list(f, rows);
    size_t rows_found;
    spec.usable_width = length(f, "usable_width");
    must(f, muslin_cutlist_from_yardage(rows, sizeof rows[0], n, &spec, &made, NULL));
    must(f, muslin_cutlist_yardage_rows(rows, sizeof rows[0], n, &spec, found, sizeof found[0], n, &rows_found, NULL));
    answer_count(f, "strips", made.strips);
    answer_length(f, "cloth_length", made.cloth_length);
    answer_length(f, "area_bound", made.area_bound);
    answer_count(f, "a_per_strip", found[0].per_strip);
    answer_count(f, "a_strips", found[0].strips);
    answer_count(f, "b_per_strip", found[1].per_strip);
    answer_count(f, "b_strips", found[1].strips);
}

static void cutlist_stock(struct figure *f)
{
    struct muslin_cutlist_piece_spec rows[ROWS_MAX];
    struct muslin_stock_spec stock = MUSLIN_STOCK_SPEC_INIT;
    struct muslin_cutlist_stock made = { .size = sizeof made };
    size_t n = read_list(f, rows);
    stock.width = length(f, "width");
    stock.length = length(f, "length");
    stock.kind = MUSLIN_STOCK_FAT_QUARTER;
    must(f, muslin_cutlist_from_stock(rows, sizeof rows[0], n, &stock, &made, NULL));
    answer_count(f, "stock_needed", made.stock_needed);
    answer_length(f, "left_over", made.left_over);
}

static void cutlist_lists(struct figure *f)
{
    struct muslin_cutlist_piece_spec rows[ROWS_MAX];
    struct muslin_stock_spec stock = MUSLIN_STOCK_SPEC_INIT;
    struct muslin_cutlist_lists made = { .size = sizeof made };
    size_t n = read_list(f, rows);
    stock.width = length(f, "width");
    stock.length = length(f, "length");
    stock.count = count(f, "stock");
    must(f, muslin_cutlist_lists_from_stock(rows, sizeof rows[0], n, &stock, &made, NULL));
    answer_count(f, "lists", made.lists);
}

extern const struct question questions_cutlist[];

const struct question questions_cutlist[] = {
    { "cutlist", cutlist },
    { "cutlist_stock", cutlist_stock },
    { "cutlist_lists", cutlist_lists },
    { NULL, NULL },
};
