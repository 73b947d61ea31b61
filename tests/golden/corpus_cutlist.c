/* corpus_cutlist.c - the calls of cutlist.h.
 *
 * SPDX-License-Identifier: MIT */
#include "golden.h"

struct list {
    struct muslin_cutlist_piece_spec rows[FEW];
    size_t n;
};

static struct list draw_list(struct golden *g)
{
    struct list list;
    list.n = (size_t)draw_below(g, FEW + 1);
    for (int32_t i = 0; i < FEW; i++) {
        SPEC(muslin_cutlist_piece_spec, cut);
        cut.flags = draw_flags(g, MUSLIN_CUTLIST_PIECE_MAY_TURN);
        cut.cut_width = draw_between(g, 1, 96) * (MUSLIN_TICKS_PER_INCH / 8);
        cut.cut_length = draw_between(g, 1, 96) * (MUSLIN_TICKS_PER_INCH / 8);
        cut.count = draw_between(g, 0, 90);
        if (draw_rarely(g, 60))
            cut.cut_width = draw_size(g, 50);
        if (draw_rarely(g, 60))
            cut.cut_length = draw_size(g, 50);
        if (draw_rarely(g, 60))
            cut.count = draw_count(g, 90);
        list.rows[i] = cut;
    }
    return list;
}

static struct muslin_stock_spec draw_stock(struct golden *g)
{
    SPEC(muslin_stock_spec, stock);
    stock.flags = draw_flags(g, 0);
    stock.width = draw_size(g, 44);
    stock.length = draw_size(g, 40);
    stock.count = draw_count(g, 60);
    stock.print = draw_rarely(g, 4) ? draw_choice(g, MUSLIN_PRINT_NONE, MUSLIN_PRINT_STRIPE_ACROSS)
                                    : MUSLIN_PRINT_NONE;
    stock.kind = draw_choice(g, MUSLIN_STOCK_YARDAGE, MUSLIN_STOCK_FAT_EIGHTH);
    return stock;
}

/* What an ask-then-fill call found, in room for some rows. */
static void take_rows(struct golden *g, const struct muslin_cutlist_row *found, size_t count)
{
    take_number(g, (int64_t)count);
    for (int32_t i = 0; i < FEW; i++)
        TAKE(g, muslin_cutlist_row, found[i]);
}

static void yardage(struct golden *g)
{
    EACH_ROUND {
        struct list list = draw_list(g);
        SPEC(muslin_cutlist_spec, spec);
        OUT(muslin_cutlist_yardage, out);
        struct muslin_cutlist_row found[FEW] = { { 0 } };
        size_t count = 99;
        size_t capacity = (size_t)draw_below(g, FEW + 1);
        spec.flags = draw_flags(g, 0);
        spec.usable_width = draw_size(g, 60);
        spec.end_loss = draw_rarely(g, 2) ? 0 : draw_size(g, 1);
        spec.straightening = draw_rarely(g, 2) ? 0 : draw_size(g, 2);
        spec.print = draw_choice(g, MUSLIN_PRINT_NONE, MUSLIN_PRINT_STRIPE_ACROSS);
        told(g, muslin_cutlist_from_yardage(list.rows, sizeof list.rows[0], list.n, &spec, &out, ask(g)));
        TAKE(g, muslin_cutlist_yardage, out);
        told(g, muslin_cutlist_yardage_rows(list.rows, sizeof list.rows[0], list.n, &spec, found, sizeof found[0],
                                            capacity, &count, ask(g)));
        take_rows(g, found, count);
    }
}

static void stock(struct golden *g)
{
    EACH_ROUND {
        struct list list = draw_list(g);
        struct muslin_stock_spec stock = draw_stock(g);
        OUT(muslin_cutlist_stock, out);
        OUT(muslin_cutlist_lists, lists);
        OUT(muslin_substitution, instead);
        struct muslin_cutlist_row found[FEW] = { { 0 } };
        size_t count = 99;
        size_t capacity = (size_t)draw_below(g, FEW + 1);
        int64_t prints = stock.kind == MUSLIN_STOCK_YARDAGE ? draw_between(g, 0, 2) : draw_count(g, 40);
        told(g, muslin_cutlist_from_stock(list.rows, sizeof list.rows[0], list.n, &stock, &out, ask(g)));
        TAKE(g, muslin_cutlist_stock, out);
        told(g, muslin_cutlist_stock_rows(list.rows, sizeof list.rows[0], list.n, &stock, found, sizeof found[0],
                                          capacity, &count, ask(g)));
        take_rows(g, found, count);
        struct muslin_cutlist_part parts[FEW] = { { 0 } };
        told(g, muslin_cutlist_stock_parts(list.rows, sizeof list.rows[0], list.n, &stock, parts, sizeof parts[0],
                                           capacity, &count, ask(g)));
        take_number(g, (int64_t)count);
        for (int32_t i = 0; i < FEW; i++)
            TAKE(g, muslin_cutlist_part, parts[i]);
        told(g, muslin_cutlist_lists_rows(list.rows, sizeof list.rows[0], list.n, &stock, found, sizeof found[0],
                                         capacity, &count, ask(g)));
        take_rows(g, found, count);
        told(g, muslin_cutlist_lists_from_stock(list.rows, sizeof list.rows[0], list.n, &stock, &lists, ask(g)));
        TAKE(g, muslin_cutlist_lists, lists);
        told(g, muslin_cutlist_substitute(list.rows, sizeof list.rows[0], list.n, &stock, prints, &instead, ask(g)));
        TAKE(g, muslin_substitution, instead);
    }
}

void golden_cutlist(struct golden *g)
{
    yardage(g);
    stock(g);
}
