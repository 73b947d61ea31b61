/* test_quilt_pieced.h - what tests of units and of the caller's own shapes share.
 *
 * SPDX-License-Identifier: MIT */
#ifndef MUSLIN_TEST_QUILT_PIECED_H
#define MUSLIN_TEST_QUILT_PIECED_H

#include "test_quilt.h"

/* A unit's kind and the way it is made, with what follows from geometry. */
struct unit_case {
    int32_t kind;
    int32_t method;
    int32_t hand;
    size_t fabrics;
    int64_t patches;
    int64_t across; /* most seams that a line meets */
    int64_t down;
};

/* By hand: a goose's two seams run side by side across and one after the other down; a star's five lie on a level line
 * through its lower half, where it meets a side triangle, two diamonds left of the middle seam and so on. */
static const struct unit_case unit_cases[] = {
    { MUSLIN_UNIT_HALF_SQUARE, MUSLIN_UNIT_METHOD_TWO_AT_A_TIME, 1, 2, 2, 1, 1 },
    { MUSLIN_UNIT_HALF_SQUARE, MUSLIN_UNIT_METHOD_STRIPS, 1, 2, 2, 1, 1 },
    { MUSLIN_UNIT_QUARTER_SQUARE, MUSLIN_UNIT_METHOD_PIECES, 1, 2, 4, 2, 2 },
    { MUSLIN_UNIT_SPLIT_QUARTER, MUSLIN_UNIT_METHOD_PIECES, 1, 3, 3, 2, 2 },
    { MUSLIN_UNIT_SPLIT_QUARTER, MUSLIN_UNIT_METHOD_TWO_AT_A_TIME, 2, 3, 3, 2, 2 },
    { MUSLIN_UNIT_FLYING_GEESE, MUSLIN_UNIT_METHOD_FOUR_AT_A_TIME, 1, 2, 3, 2, 1 },
    { MUSLIN_UNIT_SQUARE_IN_SQUARE, MUSLIN_UNIT_METHOD_PIECES, 1, 2, 5, 2, 2 },
    { MUSLIN_UNIT_SNOWBALL, MUSLIN_UNIT_METHOD_FLIPPED_CORNERS, 1, 2, 5, 2, 2 },
    { MUSLIN_UNIT_HALF_RECTANGLE, MUSLIN_UNIT_METHOD_PIECES, 1, 2, 2, 1, 1 },
    { MUSLIN_UNIT_HALF_RECTANGLE, MUSLIN_UNIT_METHOD_PIECES, 2, 2, 2, 1, 1 },
    { MUSLIN_UNIT_OCTAGON, MUSLIN_UNIT_METHOD_PIECES, 1, 2, 5, 2, 2 },
    { MUSLIN_UNIT_EIGHT_POINTED_STAR, MUSLIN_UNIT_METHOD_PIECES, 1, 2, 16, 5, 5 },
    { MUSLIN_UNIT_KALEIDOSCOPE, MUSLIN_UNIT_METHOD_PIECES, 1, 3, 12, 4, 4 },
};
enum { UNIT_CASES = sizeof unit_cases / sizeof unit_cases[0] };

/* The measures that a kind takes: W; H for a half-rectangle and a snowball; a snowball's corner. */
static inline struct muslin_quilt_unit_spec unit_spec_of(const struct unit_case *unit, muslin_id width,
                                                         muslin_id height, muslin_id corner)
{
    struct muslin_quilt_unit_spec spec = MUSLIN_QUILT_UNIT_SPEC_INIT;
    spec.kind = unit->kind;
    spec.method = unit->method;
    spec.hand = unit->hand;
    spec.width = width;
    if (unit->kind == MUSLIN_UNIT_HALF_RECTANGLE || unit->kind == MUSLIN_UNIT_SNOWBALL)
        spec.height = height;
    if (unit->kind == MUSLIN_UNIT_SNOWBALL)
        spec.corner = corner;
    return spec;
}

/* Blue, white, blue. */
static inline muslin_id unit_of(struct sewn *s, const struct muslin_quilt_unit_spec *spec, size_t fabrics)
{
    const muslin_id ids[] = { s->blue, s->white, s->blue };
    muslin_id id = 0;
    ck_ok(muslin_quilt_unit(s->quilt, spec, ids, fabrics, &id, NULL));
    return id;
}

/* The case as a node W x H, with a snowball's corner C. */
static inline muslin_id unit_case_of(struct sewn *s, const struct unit_case *unit, muslin_len width, muslin_len height,
                                     muslin_len corner)
{
    struct muslin_quilt_unit_spec spec = unit_spec_of(unit, fixed_of(s->quilt, width), fixed_of(s->quilt, height),
                                                      fixed_of(s->quilt, corner));
    return unit_of(s, &spec, unit->fabrics);
}

/* One corner of a shape, its edge straight. */
#define CORNER(piece, x, y) \
    { (uint32_t)sizeof(struct muslin_corner_spec), 0, (piece), 1, (x), (y), 2032, 0, 0, 0, 0, 1, 0 }
enum { OUTLINE = MUSLIN_SHAPE_OUTLINE };

/* Six inches by six, its upper right corner cut off on the slant from the middles of two sides. */
#define SLANT_CORNER                                                                                     \
    {                                                                                                    \
        CORNER(OUTLINE, 0, 0), CORNER(OUTLINE, 48768, 0), CORNER(OUTLINE, 48768, 48768),                 \
            CORNER(OUTLINE, 0, 48768), CORNER(0, 0, 0), CORNER(0, 48768, 0), CORNER(0, 48768, 24384),    \
            CORNER(0, 24384, 48768), CORNER(0, 0, 48768), CORNER(1, 48768, 24384), CORNER(1, 48768, 48768), \
            CORNER(1, 24384, 48768)                                                                      \
    }

/* A shape with pieces in blue and white in turn. */
static inline muslin_status try_shape(struct sewn *s, const struct muslin_corner_spec *rows, size_t n, size_t pieces,
                                      muslin_id width, muslin_id height, muslin_id *out,
                                      struct muslin_problem *problem)
{
    muslin_id fabrics[64];
    for (size_t i = 0; i < 64; i++)
        fabrics[i] = i % 2 == 0 ? s->blue : s->white;
    return muslin_quilt_shape(s->quilt, rows, sizeof *rows, n, fabrics, pieces, width, height, out, problem);
}

static inline muslin_id shape_of(struct sewn *s, const struct muslin_corner_spec *rows, size_t n, size_t pieces,
                                 muslin_id width, muslin_id height)
{
    muslin_id id = 0;
    ck_ok(try_shape(s, rows, n, pieces, width, height, &id, NULL));
    return id;
}

#endif
