/* test_shape.h - what the tests of shape.h share: rows made in one line, and the suite's parts.
 *
 * SPDX-License-Identifier: MIT */
#ifndef MUSLIN_TEST_SHAPE_H
#define MUSLIN_TEST_SHAPE_H

#include "refusals.h"

/* A corner with a straight edge, an allowance of 1/4 in and a sharp tip. */
#define CORNER(piece, x, y) \
    { (uint32_t)sizeof(struct muslin_corner_spec), 0, (piece), 1, (x), (y), 2032, 0, 0, 0, 0, 1, 0 }
/* ... whose edge is an arc. */
#define ARC(piece, x, y, curve, cx, cy, r) \
    { (uint32_t)sizeof(struct muslin_corner_spec), 0, (piece), 1, (x), (y), 2032, 0, (cx), (cy), (r), (curve), 0 }
enum { OUTLINE = MUSLIN_SHAPE_OUTLINE, CONVEX = MUSLIN_CURVE_CONVEX, CONCAVE = MUSLIN_CURVE_CONCAVE };

#define ROWS(rows) rows, sizeof(rows)[0], COUNT_OF(rows)

static const struct muslin_rounding_spec to_tick = MUSLIN_ROUNDING_SPEC_INIT;

/* A call on rows alone; the problem's row must be `at`. */
#define ck_check_refuses(rows, code, at_)                                                                        \
    do {                                                                                                         \
        struct muslin_problem problem_ = PROBLEM;                                                                \
        struct muslin_shape shape_ = { .size = (uint32_t)sizeof shape_, .pieces = -7 };                          \
        ck_status(muslin_shape_check(rows, sizeof(rows)[0], COUNT_OF(rows), &shape_, &problem_), code);          \
        ck_assert_int_eq(problem_.status, code);                                                                 \
        ck_assert_msg(problem_.at == (at_),"at row %lld: %s", (long long)problem_.at, problem_.text);            \
        ck_assert_int_eq(shape_.pieces, -7);                                                                     \
    } while (0)

/* Piece 0 of the rows alone. */
#define ck_template_refuses(rows, code, row_)                                                                    \
    do {                                                                                                         \
        struct muslin_problem problem_ = PROBLEM;                                                                \
        size_t count_ = 77;                                                                                      \
        ck_status(muslin_shape_template(rows, sizeof(rows)[0], COUNT_OF(rows), 0, &to_tick, NULL, 0, 0, &count_, \
                                        &problem_), code);                                                       \
        ck_assert_int_eq(problem_.status, code);                                                                 \
        ck_assert_msg(problem_.at == (row_), "at row %lld: %s", (long long)problem_.at, problem_.text);          \
        ck_assert((code) != MUSLIN_ERR_SEAM_TOO_WIDE || strstr(problem_.text, muslin_status_sentence(code)));    \
        ck_assert_uint_eq(count_, 77);                                                                           \
    } while (0)
#define ck_template_takes(rows)                                                                                  \
    do {                                                                                                         \
        struct muslin_problem problem_ = PROBLEM;                                                                \
        size_t count_ = 0;                                                                                       \
        muslin_status status_ = muslin_shape_template(rows, sizeof(rows)[0], COUNT_OF(rows), 0, &to_tick, NULL,  \
                                                      0, 0, &count_, &problem_);                                 \
        ck_assert_msg(status_ == MUSLIN_OK, "%s", problem_.text);                                                \
    } while (0)

TCase *shape_ring_case(void);
TCase *shape_template_case(void);
TCase *shape_piece_case(void);
TCase *shape_curve_case(void);

#endif
