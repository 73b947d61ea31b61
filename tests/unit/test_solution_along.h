/* test_solution_along.h - the pieces along the sides of a node: those that are drawn there.
 *
 * SPDX-License-Identifier: MIT */
#ifndef MUSLIN_TEST_SOLUTION_ALONG_H
#define MUSLIN_TEST_SOLUTION_ALONG_H

#include "test_quilt.h"

enum { SIDES_ROOM = 200 };

struct drawn_sides {
    size_t count;
    struct muslin_outline rows[SIDES_ROOM];
    struct muslin_outline_corner corners[5 * SIDES_ROOM];
};

/* How many outlines have an edge, not just a point, on a side of what is drawn: left, right, top, bottom. */
static inline int64_t drawn_along(const struct drawn_sides *drawn, int side, muslin_len width, muslin_len height)
{
    const muslin_len line = side == 1 ? width : side == 2 ? height : 0;
    int64_t pieces = 0;
    for (size_t row = 0; row < drawn->count; row++) {
        const struct muslin_outline *outline = &drawn->rows[row];
        int touches = 0;
        for (int64_t k = 0; k < outline->corners; k++) {
            const struct muslin_outline_corner *from = &drawn->corners[outline->first_corner + k];
            const struct muslin_outline_corner *to = &drawn->corners[outline->first_corner + (k + 1) % outline->corners];
            touches |= side < 2 ? from->x == line && to->x == line : from->y == line && to->y == line;
        }
        pieces += touches;
    }
    return pieces;
}

/* The pieces along each side, as what is sewn to it and a tick longer is told, are those drawn there. */
static inline void ck_along(struct sewn *s, muslin_id node)
{
    struct muslin_solution *solution = solved(s->quilt, node);
    const struct muslin_node_size size = size_of(solution, node);
    static struct drawn_sides drawn;
    size_t given = 0;
    int64_t pieces[4];
    ck_ok(muslin_solution_outlines(solution, node, MUSLIN_STAGE_FINISHED, 0, drawn.rows, sizeof drawn.rows[0],
                                   SIDES_ROOM, drawn.corners, sizeof drawn.corners[0], 5 * SIDES_ROOM, &drawn.count,
                                   &given, NULL));
    ck_assert_uint_eq(given, drawn.count);
    for (int side = 0; side < 4; side++)
        pieces[side] = drawn_along(&drawn, side, size.finished_width, size.finished_height);
    muslin_solution_free(solution);
    for (int side = 0; side < 4; side++) {
        const int across = side < 2;
        const muslin_id longer = fixed_of(s->quilt, (across ? size.finished_height : size.finished_width) + 1);
        const muslin_id patch = patch_of(s->quilt, s->blue, across ? s->two : longer, across ? longer : s->two);
        const muslin_id before[] = { patch, node };
        const muslin_id after[] = { node, patch };
        const muslin_id join = join_of(s->quilt, across ? MUSLIN_AXIS_ACROSS : MUSLIN_AXIS_DOWN,
                                       side % 2 == 0 ? before : after, 2);
        struct muslin_misfit row = { .size = (uint32_t)sizeof row };
        size_t count = 0;
        solution = solved(s->quilt, join);
        ck_ok(muslin_solution_misfits(solution, &row, sizeof row, 1, &count, NULL));
        ck_assert_uint_eq(count, 1);
        ck_assert_int_eq(row.node, join);
        ck_assert_int_eq(row.pieces, pieces[side]);
        muslin_solution_free(solution);
    }
}

#endif
