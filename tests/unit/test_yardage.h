/* test_yardage.h - what tests of yardage share: fabrics of all sorts, pieces of a fabric read back.
 *
 * SPDX-License-Identifier: MIT */
#ifndef MUSLIN_TEST_YARDAGE_H
#define MUSLIN_TEST_YARDAGE_H

#include "test_solution_cuts.h"

static inline muslin_id yardage_patch(struct muslin_quilt *quilt, muslin_id fabric, muslin_len width, muslin_len height)
{
    return patch_of(quilt, fabric, fixed_of(quilt, width), fixed_of(quilt, height));
}

static inline muslin_id yardage_unit(struct muslin_quilt *quilt, int32_t kind, int32_t method, muslin_len side,
                                     const muslin_id *fabrics, size_t n)
{
    struct muslin_quilt_unit_spec spec = MUSLIN_QUILT_UNIT_SPEC_INIT;
    muslin_id unit = 0;
    spec.kind = kind;
    spec.method = method;
    spec.width = fixed_of(quilt, side);
    ck_ok(muslin_quilt_unit(quilt, &spec, fabrics, n, &unit, NULL));
    return unit;
}

#endif
