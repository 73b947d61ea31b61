/* scatter_blocks.c - blocks laid out and turned so that equal prints seldom meet at an edge.
 *
 * SPDX-License-Identifier: MIT */
#include "scatter_inside.h"

muslin_status muslin_scatter_blocks_spec_init(struct muslin_scatter_blocks_spec *spec, uint32_t size)
{
    static const struct muslin_scatter_blocks_spec initial = MUSLIN_SCATTER_BLOCKS_SPEC_INIT;
    return msl_init_struct(spec, size, &initial, (uint32_t)sizeof initial, (uint32_t)sizeof initial);
}

muslin_status muslin_edge_prints_spec_init(struct muslin_edge_prints_spec *spec, uint32_t size)
{
    static const struct muslin_edge_prints_spec initial = MUSLIN_EDGE_PRINTS_SPEC_INIT;
    return msl_init_struct(spec, size, &initial, (uint32_t)sizeof initial, (uint32_t)sizeof initial);
}

enum { SIDE_MAX = 1 << 12, TOP = 0, RIGHT = 1, BOTTOM = 2, LEFT = 3 };

struct blocks {
    const struct muslin_edge_prints_spec *rows;
    size_t row_size;
    size_t n;
};

/* ---- what is asked ----------------------------------------------------------------------------------------------- */

static struct muslin_edge_prints_spec block_at(struct msl_check *check, const struct blocks *blocks, size_t index)
{
    struct muslin_edge_prints_spec block = { 0 };
    const void *row = msl_row_to_read(check, blocks->rows, blocks->row_size, index);
    msl_read_struct(check, MUSLIN_ARG_ROWS, &block, (uint32_t)sizeof block, (uint32_t)sizeof block,
                    MUSLIN_EDGE_PRINTS_TURNS_HALF | MUSLIN_EDGE_PRINTS_TURNS_QUARTER, row);
    return block;
}

static void want_block(struct msl_check *check, const struct muslin_edge_prints_spec *block)
{
    msl_want_count(check, MUSLIN_ARG_BLOCKS, block->count);
    msl_want_between(check, MUSLIN_ARG_PRINTS, block->top, -1, MUSLIN_COUNT_MAX);
    msl_want_between(check, MUSLIN_ARG_PRINTS, block->right, -1, MUSLIN_COUNT_MAX);
    msl_want_between(check, MUSLIN_ARG_PRINTS, block->bottom, -1, MUSLIN_COUNT_MAX);
    msl_want_between(check, MUSLIN_ARG_PRINTS, block->left, -1, MUSLIN_COUNT_MAX);
}

static void want_blocks(struct msl_check *check, const struct blocks *blocks, int64_t places)
{
    int64_t there_are = 0;
    msl_want_rows(check, MUSLIN_ARG_BLOCKS, blocks->n, 1, MSL_KINDS_MAX);
    msl_want_row_size(check, blocks->row_size, (uint32_t)sizeof *blocks->rows);
    msl_want_pointer(check, MUSLIN_ARG_ROWS, blocks->rows);
    for (size_t i = 0; check->status == MUSLIN_OK && i < blocks->n; i++) {
        struct muslin_edge_prints_spec block = block_at(check, blocks, i);
        want_block(check, &block);
        there_are += check->status == MUSLIN_OK ? block.count : 0;
    }
    check->at = 0;
    if (there_are < places)
        msl_fail(check, MUSLIN_ERR_NOT_ENOUGH, MUSLIN_ARG_PLACES, places, there_are);
}

/* ---- what the search needs --------------------------------------------------------------------------------------- */

/* The blocks as the search knows them. */
struct kinds {
    int32_t *edges;
    uint8_t *turn_step;
    int64_t *stock;
};

static uint8_t turn_step_of(uint32_t flags)
{
    if ((flags & MUSLIN_EDGE_PRINTS_TURNS_QUARTER) != 0)
        return 1;
    return (flags & MUSLIN_EDGE_PRINTS_TURNS_HALF) != 0 ? 2 : 4;
}

static void take_kinds(struct msl_check *check, const struct blocks *blocks, struct kinds *kinds)
{
    for (size_t i = 0; i < blocks->n; i++) {
        struct muslin_edge_prints_spec block = block_at(check, blocks, i);
        kinds->edges[4 * i + TOP] = (int32_t)block.top;
        kinds->edges[4 * i + RIGHT] = (int32_t)block.right;
        kinds->edges[4 * i + BOTTOM] = (int32_t)block.bottom;
        kinds->edges[4 * i + LEFT] = (int32_t)block.left;
        kinds->turn_step[i] = turn_step_of(block.flags);
        kinds->stock[i] = block.count;
    }
}

/* Each place touches the next in its row and the one below. */
static void put_touches(struct msl_scatter *s, struct msl_scatter_room *room, uint32_t columns)
{
    for (uint32_t place = 0; place < s->places; place++) {
        if ((place + 1) % columns != 0)
            msl_scatter_count(s, place, place + 1);
        if (place + columns < s->places)
            msl_scatter_count(s, place, place + columns);
    }
    msl_scatter_counted(s, room);
    if (room->check->status != MUSLIN_OK)
        return;
    for (uint32_t place = 0; place < s->places; place++) {
        if ((place + 1) % columns != 0)
            msl_scatter_put(s, place, place + 1, 1, RIGHT);
        if (place + columns < s->places)
            msl_scatter_put(s, place, place + columns, 1, BOTTOM);
    }
}

/* ---- a lower bound ----------------------------------------------------------------------------------------------- */

/* The print that a block shows at both of two opposite edges however it lies, or -1. */
static int32_t print_across(const struct msl_scatter *s, uint32_t kind, uint32_t edge)
{
    const int32_t *edges = s->edges + 4 * kind;
    int32_t print = edges[edge];
    if (edges[edge ^ 2] != print)
        return -1;
    if (s->turn_step[kind] == 1 && (edges[edge ^ 1] != print || edges[edge ^ 3] != print))
        return -1;
    return print;
}

/* How many blocks with this print across must be laid at least. */
static int64_t must_lie(const struct msl_scatter *s, int32_t print, uint32_t edge)
{
    int64_t others = 0;
    for (uint32_t kind = 0; kind < s->kinds; kind++)
        if (print_across(s, kind, edge) != print)
            others += s->stock[kind];
    return (int64_t)s->places - others;
}

/* The only print that more than half of all blocks can show across, if one does (Boyer and Moore's vote). */
static int32_t print_of_most(const struct msl_scatter *s, uint32_t edge)
{
    int32_t print = -1;
    int64_t lead = 0;
    for (uint32_t kind = 0; kind < s->kinds; kind++) {
        int32_t shown = print_across(s, kind, edge);
        if (shown == print) {
            lead += s->stock[kind];
        } else if (s->stock[kind] > lead) {
            print = shown;
            lead = s->stock[kind] - lead;
        } else {
            lead -= s->stock[kind];
        }
    }
    return print;
}

/* In lines of places: every second place of each may have one print; one more in a line of an even number meets one
 * other, any further two. */
static int64_t least_in_lines(const struct msl_scatter *s, uint32_t edge, int64_t lines, int64_t length)
{
    int32_t print = print_of_most(s, edge);
    int64_t over = must_lie(s, print, edge) - lines * ((length + 1) / 2);
    if (print < 0 || over <= 0)
        return 0;
    if (length % 2 == 0)
        return over <= lines ? over : 2 * over - lines;
    return 2 * over;
}

/* ---- the answer -------------------------------------------------------------------------------------------------- */

static void scatter(struct msl_check *check, struct msl_scatter *s, struct msl_scatter_room *room,
                    const struct blocks *blocks, uint32_t columns)
{
    int64_t n = s->kinds;
    struct kinds kinds;
    kinds.edges = msl_scatter_take(room, 4 * n, sizeof *kinds.edges);
    kinds.turn_step = msl_scatter_take(room, n, sizeof *kinds.turn_step);
    kinds.stock = msl_scatter_take(room, n, sizeof *kinds.stock);
    msl_scatter_start(s, room);
    if (check->status != MUSLIN_OK)
        return;
    put_touches(s, room, columns);
    if (check->status != MUSLIN_OK)
        return;
    take_kinds(check, blocks, &kinds);
    s->edges = kinds.edges;
    s->turn_step = kinds.turn_step;
    s->stock = kinds.stock;
    s->least = least_in_lines(s, RIGHT, s->places / columns, columns) +
               least_in_lines(s, BOTTOM, columns, s->places / columns);
    msl_scatter_search(s);
}

static void write_blocks(const struct msl_scatter *s, struct muslin_placed_block *rows, size_t row_size)
{
    for (uint32_t place = 0; place < s->places; place++) {
        struct muslin_placed_block block = { 0 };
        block.kind = s->best[place] / 4;
        block.quarter_turns = s->best[place] % 4;
        msl_write_row(rows, row_size, place, &block, (uint32_t)sizeof block);
    }
}

static void read_spec(struct msl_check *check, struct muslin_scatter_blocks_spec *into,
                      const struct muslin_scatter_blocks_spec *spec)
{
    msl_read_struct(check, MUSLIN_ARG_SPEC, into, (uint32_t)sizeof *into, (uint32_t)sizeof *into, 0, spec);
    msl_want_between(check, MUSLIN_ARG_COLUMNS, into->columns, 1, SIDE_MAX);
    msl_want_between(check, MUSLIN_ARG_QUILT_ROWS, into->rows, 1, SIDE_MAX);
    msl_want_between(check, MUSLIN_ARG_WORK_LIMIT, into->work_limit, 0, MSL_WORK_MAX);
}

muslin_status muslin_scatter_blocks(const struct muslin_scatter_blocks_spec *spec,
                                    const struct muslin_edge_prints_spec *blocks, size_t block_size, size_t n,
                                    const struct muslin_allocator *allocator, muslin_progress progress, void *context,
                                    struct muslin_placed_block *rows, size_t row_size, size_t capacity,
                                    size_t *count, struct muslin_scattered *result, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct muslin_scatter_blocks_spec in = { 0 };
    struct muslin_scattered found = { 0 };
    struct msl_scatter_room room = { .check = &check, .allocator = allocator };
    struct blocks kinds = { blocks, block_size, n };
    read_spec(&check, &in, spec);
    msl_want_allocator(&check, allocator);
    msl_want_output(&check, result, (uint32_t)sizeof *result);
    if (check.status != MUSLIN_OK)
        return check.status;
    want_blocks(&check, &kinds, in.columns * in.rows);
    if (check.status != MUSLIN_OK)
        return check.status;
    if (!msl_rows_to_fill(&check, rows, row_size, (uint32_t)sizeof *rows, capacity, count,
                          (size_t)(in.columns * in.rows)))
        return check.status;
    struct msl_scatter s = { .places = (uint32_t)(in.columns * in.rows), .kinds = (uint32_t)n,
                             .chance = (uint64_t)in.seed, .work_limit = in.work_limit,
                             .told = msl_told_by(progress, context) };
    scatter(&check, &s, &room, &kinds, (uint32_t)in.columns);
    if (check.status == MUSLIN_OK) {
        msl_scatter_result(&s, &found);
        write_blocks(&s, rows, row_size);
        *count = s.places;
        msl_write_struct(result, &found, (uint32_t)sizeof found);
    }
    msl_scatter_give_back(&room);
    return check.status;
}
