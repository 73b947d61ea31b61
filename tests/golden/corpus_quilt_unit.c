/* corpus_quilt_unit.c - units and the caller's own shapes as leaves of a tree, solved and drawn.
 *
 * SPDX-License-Identifier: MIT */
#include "golden.h"

/* ---- leaves
 * ------------------------------------------------------------------------------------------------------- */

static struct shelf shelf;

struct leaf {
    struct muslin_quilt *quilt;
    muslin_id fabrics[3];
    muslin_id measures[3]; /* width, height, corner */
    muslin_id node;
};

static void begin_leaf(struct golden *g, struct leaf *leaf)
{
    struct muslin_quilt_spec quilt = MUSLIN_QUILT_SPEC_INIT;
    struct muslin_quilt_fabric_spec fabric = MUSLIN_QUILT_FABRIC_SPEC_INIT;
    struct muslin_allocator memory = shelf_open(&shelf);
    quilt.tag = 1;
    quilt.allowance = draw_seam(g);
    quilt.take_up = draw_take_up(g);
    leaf->quilt = NULL;
    leaf->node = 0;
    told(g, muslin_quilt_create(&quilt, &memory, &leaf->quilt, ask(g)));
    for (int32_t i = 0; leaf->quilt != NULL && i < 3; i++) {
        muslin_len value = draw_size(g, i == 2 ? 2 : 12);
        leaf->fabrics[i] = leaf->measures[i] = 0;
        told(g, muslin_quilt_fabric(leaf->quilt, &fabric, "fabric", 6, &leaf->fabrics[i], ask(g)));
        told(g, muslin_quilt_measure(leaf->quilt, "measure", 7, value, &leaf->measures[i], ask(g)));
    }
}

static void draw_leaf(struct golden *g, const struct leaf *leaf)
{
    enum { PIECES = 16, CORNERS = 80 };
    struct muslin_solution_spec spec = MUSLIN_SOLUTION_SPEC_INIT;
    struct muslin_solution *solution = NULL;
    OUT(muslin_node_size, size);
    spec.tip = draw_choice(g, MUSLIN_TIP_SHARP, MUSLIN_TIP_BLUNT);
    told(g, muslin_solution_create(leaf->quilt, leaf->node, &spec, NULL, 0, 0, NULL, &solution, ask(g)));
    if (solution == NULL)
        return;
    told(g, muslin_solution_size(solution, leaf->node, &size, ask(g)));
    TAKE(g, muslin_node_size, size);
    for (int32_t stage = MUSLIN_STAGE_FINISHED; stage <= MUSLIN_STAGE_RAW; stage++) {
        struct muslin_outline rows[PIECES] = { { 0 } };
        struct muslin_outline_corner corners[CORNERS] = { { 0 } };
        size_t count = 0;
        size_t given = 0;
        told(g, muslin_solution_outlines(solution, leaf->node, stage, 0, rows, sizeof rows[0], PIECES, corners,
                                         sizeof corners[0], CORNERS, &count, &given, ask(g)));
        take_number(g, (int64_t)given);
        for (size_t i = 0; i < given; i++)
            TAKE(g, muslin_outline, rows[i]);
        for (size_t i = 0; i < CORNERS; i++)
            TAKE(g, muslin_outline_corner, corners[i]);
    }
    muslin_solution_free(solution);
}

static void units(struct golden *g)
{
    EACH_ROUND {
        struct leaf leaf;
        begin_leaf(g, &leaf);
        if (leaf.quilt == NULL)
            continue;
        SPEC(muslin_quilt_unit_spec, spec);
        spec.kind = draw_choice(g, MUSLIN_UNIT_HALF_SQUARE, MUSLIN_UNIT_KALEIDOSCOPE);
        spec.method = draw_rarely(g, 2) ? MUSLIN_UNIT_METHOD_PIECES
                                        : draw_choice(g, MUSLIN_UNIT_METHOD_PIECES, MUSLIN_UNIT_METHOD_BIAS_STRIPS);
        spec.hand = draw_rarely(g, 8) ? 2 : 1;
        spec.width = leaf.measures[0];
        spec.height = spec.kind == MUSLIN_UNIT_HALF_RECTANGLE || draw_rarely(g, 20) ? leaf.measures[1] : 0;
        spec.corner = spec.kind == MUSLIN_UNIT_SNOWBALL ? leaf.measures[2] : 0;
        size_t fabrics = spec.kind == MUSLIN_UNIT_SPLIT_QUARTER || spec.kind == MUSLIN_UNIT_KALEIDOSCOPE ? 3 : 2;
        told(g, muslin_quilt_unit(leaf.quilt, &spec, leaf.fabrics, fabrics, &leaf.node, ask(g)));
        take_number(g, leaf.node);
        draw_leaf(g, &leaf);
        muslin_quilt_free(leaf.quilt);
    }
}

/* A rectangle cut on one slanted line from its lower to its upper edge. */
static void shapes(struct golden *g)
{
    enum { ROWS = 12 };
    static const int8_t places[ROWS][3] = { /* piece; x: 0, foot, top, width; y: 0, height */
        { -1, 0, 0 }, { -1, 3, 0 }, { -1, 3, 1 }, { -1, 0, 1 }, { 0, 0, 0 }, { 0, 1, 0 }, { 0, 2, 1 }, { 0, 0, 1 },
        { 1, 1, 0 }, { 1, 3, 0 }, { 1, 3, 1 }, { 1, 2, 1 }
    };
    EACH_ROUND {
        struct leaf leaf;
        struct muslin_corner_spec rows[ROWS];
        begin_leaf(g, &leaf);
        if (leaf.quilt == NULL)
            continue;
        muslin_len x[] = { 0, 0, 0, 0 };
        muslin_len y[] = { 0, 0 };
        for (int32_t i = 1; i < 4; i++)
            x[i] = draw_between(g, i == 3 ? 30000 : 1, 60000);
        y[1] = draw_between(g, 1, 60000);
        for (int32_t i = 0; i < ROWS; i++) {
            muslin_corner_spec_init(&rows[i], (uint32_t)sizeof rows[i]);
            rows[i].piece = places[i][0];
            rows[i].x = x[places[i][1]];
            rows[i].y = y[places[i][2]];
        }
        muslin_id width = draw_rarely(g, 3) ? leaf.measures[0] : 0;
        muslin_id height = draw_rarely(g, 3) ? leaf.measures[1] : 0;
        told(g, muslin_quilt_shape(leaf.quilt, rows, sizeof rows[0], ROWS, leaf.fabrics, 2, width, height, &leaf.node,
                                   ask(g)));
        take_number(g, leaf.node);
        draw_leaf(g, &leaf);
        muslin_quilt_free(leaf.quilt);
    }
}

void golden_quilt_unit(struct golden *g)
{
    units(g);
    shapes(g);
}
