/* corpus_scatter.c - the calls of scatter.h.
 *
 * SPDX-License-Identifier: MIT */
#include "golden.h"

/* ---- the calls --------------------------------------------------------------------------------------------------- */

enum { PLACES = 30, KINDS = 5, TOUCHES = 60, SCATTERS = 300 };

static void draw_stock(struct golden *g, int64_t *prints, size_t kinds, int64_t places)
{
    for (size_t i = 0; i < kinds; i++)
        prints[i] = draw_rarely(g, 90) ? draw_count(g, 40) : draw_below(g, 2 * places + 1);
    if (!draw_rarely(g, 30))
        prints[draw_below(g, (int64_t)kinds)] += places;
}

static struct muslin_scatter_spec draw_spec(struct golden *g, int64_t places)
{
    SPEC(muslin_scatter_spec, spec);
    spec.flags = draw_flags(g, 0);
    spec.places = draw_rarely(g, 40) ? draw_count(g, PLACES) % (PLACES + 1) : places;
    spec.seed = draw_length(g);
    spec.work_limit = draw_rarely(g, 30) ? draw_between(g, -1, 5) : draw_below(g, 6000);
    return spec;
}

static void draw_touches(struct golden *g, struct muslin_touch_spec *rows, size_t n, int64_t places)
{
    for (size_t i = 0; i < n; i++) {
        SPEC(muslin_touch_spec, touch);
        touch.flags = draw_rarely(g, 60) ? draw_flags(g, 0) : 0;
        touch.first = draw_below(g, places);
        touch.second = draw_rarely(g, 900) ? draw_length(g) : draw_below(g, places);
        if (touch.second == touch.first && !draw_rarely(g, 60))
            touch.second = (touch.first + 1) % places;
        touch.weight = draw_rarely(g, 4) ? draw_between(g, draw_rarely(g, 90) ? 0 : 1, 9) : 1;
        rows[i] = touch;
        rows[i].size = draw_rarely(g, 300) ? draw_struct_size(g, sizeof rows[i]) : (uint32_t)sizeof rows[i];
    }
}

static void prints(struct golden *g, struct shelf *shelf)
{
    for (int32_t round = 0; round < SCATTERS; round++) {
        int64_t places = draw_between(g, 2, PLACES);
        size_t kinds = (size_t)draw_between(g, 1, KINDS);
        size_t n = (size_t)draw_between(g, 0, TOUCHES);
        int64_t stock[KINDS] = { 0 };
        int64_t given[PLACES];
        int64_t out[PLACES] = { 0 };
        struct muslin_touch_spec rows[TOUCHES];
        OUT(muslin_scattered, result);
        struct muslin_scatter_spec spec = draw_spec(g, places);
        struct muslin_allocator memory = shelf_open(shelf);
        shelf_refuse(g, shelf, 40, 12);
        draw_stock(g, stock, kinds, places);
        draw_touches(g, rows, n, places);
        for (int32_t i = 0; i < PLACES; i++)
            given[i] = draw_rarely(g, 9) ? draw_below(g, (int64_t)kinds) : -1;
        told(g, muslin_scatter_prints(&spec, stock, kinds, rows, sizeof rows[0], n, draw_rarely(g, 2) ? given : NULL,
                                      &memory, NULL, NULL, out, &result, ask(g)));
        TAKE(g, muslin_scattered, result);
        for (int32_t i = 0; i < PLACES; i++)
            take_number(g, out[i]);
    }
}

static void draw_blocks(struct golden *g, struct muslin_edge_prints_spec *rows, size_t n, int64_t places)
{
    for (size_t i = 0; i < n; i++) {
        SPEC(muslin_edge_prints_spec, block);
        block.flags = draw_rarely(g, 30) ? draw_flags(g, 3) : (uint32_t)draw_between(g, 0, 3);
        block.count = draw_rarely(g, 30) ? draw_count(g, 40) : draw_below(g, places) + places / 2;
        block.top = draw_between(g, draw_rarely(g, 90) ? -2 : -1, 2);
        block.right = draw_between(g, -1, 2);
        block.bottom = draw_between(g, -1, 2);
        block.left = draw_rarely(g, 2) ? block.right : draw_between(g, -1, 2);
        rows[i] = block;
    }
}

static void blocks(struct golden *g, struct shelf *shelf)
{
    for (int32_t round = 0; round < SCATTERS; round++) {
        SPEC(muslin_scatter_blocks_spec, spec);
        OUT(muslin_scattered, result);
        struct muslin_edge_prints_spec rows[KINDS];
        struct muslin_placed_block placed[PLACES] = { { 0 } };
        size_t n = (size_t)draw_between(g, draw_rarely(g, 30) ? 0 : 1, KINDS);
        size_t count = 77;
        spec.flags = draw_flags(g, 0);
        spec.columns = draw_rarely(g, 40) ? draw_count(g, 40) % 41 : draw_between(g, 1, 6);
        spec.rows = draw_between(g, draw_rarely(g, 30) ? 0 : 1, 5);
        spec.seed = draw_length(g);
        spec.work_limit = draw_below(g, 6000);
        draw_blocks(g, rows, n, spec.columns * spec.rows + 1);
        struct muslin_allocator memory = shelf_open(shelf);
        shelf_refuse(g, shelf, 40, 12);
        size_t capacity = draw_rarely(g, 20) ? 0 : PLACES;
        told(g, muslin_scatter_blocks(&spec, rows, sizeof rows[0], n, &memory, NULL, NULL, placed, sizeof placed[0],
                                      capacity, &count, &result, ask(g)));
        take_number(g, (int64_t)count);
        TAKE(g, muslin_scattered, result);
        for (int32_t i = 0; i < PLACES; i++)
            TAKE(g, muslin_placed_block, placed[i]);
    }
}

static void sets(struct golden *g, struct shelf *shelf)
{
    for (int32_t round = 0; round < SCATTERS; round++) {
        int64_t sets = draw_between(g, draw_rarely(g, 30) ? 0 : 1, 6);
        int64_t strips = draw_between(g, draw_rarely(g, 30) ? 0 : 1, 5);
        size_t kinds = (size_t)draw_between(g, 1, KINDS);
        int64_t stock[KINDS] = { 0 };
        int64_t out[PLACES] = { 0 };
        OUT(muslin_scattered, result);
        struct muslin_scatter_spec spec = draw_spec(g, sets * strips);
        struct muslin_allocator memory = shelf_open(shelf);
        shelf_refuse(g, shelf, 40, 12);
        draw_stock(g, stock, kinds, sets * strips);
        told(g, muslin_scatter_sets(&spec, stock, kinds, sets, strips, &memory, out, &result, ask(g)));
        TAKE(g, muslin_scattered, result);
        for (int32_t i = 0; i < PLACES; i++)
            take_number(g, out[i]);
    }
}

/* A grid of a block of three patches of two fabrics, some turned. */
static muslin_id draw_top(struct golden *g, struct muslin_quilt *quilt, const muslin_id *fabrics)
{
    static const int32_t turns[] = { 0, 1, 2, 3 };
    muslin_id size = 0;
    muslin_id patches[3] = { 0 };
    muslin_id block = 0;
    muslin_id top = 0;
    muslin_quilt_fixed(quilt, draw_between(g, 1, 48) * (MUSLIN_TICKS_PER_INCH / 8), &size, NULL);
    for (int32_t i = 0; i < 3; i++) {
        struct muslin_quilt_patch_spec patch;
        muslin_len third = 0;
        muslin_quilt_patch_spec_init(&patch, (uint32_t)sizeof patch);
        muslin_length_multiply(8128, draw_between(g, 1, 3), &third);
        muslin_quilt_fixed(quilt, third, &patch.width, NULL);
        patch.fabric = fabrics[draw_below(g, 2)];
        patch.height = size;
        muslin_quilt_patch(quilt, &patch, &patches[i], NULL);
    }
    struct muslin_quilt_join_spec join;
    muslin_quilt_join_spec_init(&join, (uint32_t)sizeof join);
    join.axis = MUSLIN_AXIS_ACROSS;
    muslin_quilt_join(quilt, &join, patches, 3, &block, NULL);
    int64_t columns = draw_between(g, 1, 4);
    int64_t rows = draw_between(g, 1, 4);
    int64_t turned = draw_between(g, 1, 4);
    muslin_quilt_repeat(quilt, block, columns, rows, turns, (size_t)turned, turned, 1, &top, NULL);
    return top;
}

static void touches_of(struct golden *g, const struct muslin_solution *solution, muslin_id fabric, struct shelf *shelf)
{
    struct muslin_touch_spec rows[TOUCHES] = { { 0 } };
    size_t count = 77;
    int64_t places = 77;
    size_t capacity = draw_rarely(g, 9) ? 0 : TOUCHES;
    struct muslin_allocator memory = shelf_open(shelf);
    shelf_refuse(g, shelf, 40, 12);
    told(g, muslin_scatter_touches(solution, draw_rarely(g, 40) ? 0 : fabric, &memory, rows, sizeof rows[0], capacity,
                                   &count, &places, ask(g)));
    take_number(g, (int64_t)count);
    take_number(g, places);
    for (int32_t i = 0; i < TOUCHES; i++)
        TAKE(g, muslin_touch_spec, rows[i]);
}

static void tops(struct golden *g, struct shelf *shelf, struct shelf *quilts)
{
    for (int32_t round = 0; round < SCATTERS; round++) {
        struct muslin_quilt_spec spec;
        struct muslin_quilt_fabric_spec cloth;
        struct muslin_solution_spec solve;
        struct muslin_quilt *quilt = NULL;
        struct muslin_solution *solution = NULL;
        muslin_id fabrics[2] = { 0 };
        struct muslin_allocator memory = shelf_open(quilts);
        muslin_quilt_spec_init(&spec, (uint32_t)sizeof spec);
        spec.tag = 1;
        muslin_quilt_create(&spec, &memory, &quilt, NULL);
        muslin_quilt_fabric_spec_init(&cloth, (uint32_t)sizeof cloth);
        muslin_quilt_fabric(quilt, &cloth, "a", 1, &fabrics[0], NULL);
        muslin_quilt_fabric(quilt, &cloth, "b", 1, &fabrics[1], NULL);
        muslin_id top = draw_top(g, quilt, fabrics);
        muslin_solution_spec_init(&solve, (uint32_t)sizeof solve);
        take_number(g, muslin_solution_create(quilt, top, &solve, NULL, 0, 0, NULL, &solution, NULL));
        touches_of(g, solution, fabrics[0], shelf);
        muslin_solution_free(solution);
        muslin_quilt_free(quilt);
    }
}

void golden_scatter(struct golden *g)
{
    static struct shelf shelf;
    static struct shelf quilts;
    prints(g, &shelf);
    blocks(g, &shelf);
    sets(g, &shelf);
    tops(g, &shelf, &quilts);
}
