/* unit_inside.h - what the files of the unit module share.
 *
 * SPDX-License-Identifier: MIT */
#ifndef MUSLIN_UNIT_INSIDE_H
#define MUSLIN_UNIT_INSIDE_H

#include "muslin/unit.h"

#include "surd.h"

/* W, H, the corner, E = 2 s + u, which one seam takes, and once it is known the height of a strip as cut. */
struct msl_unit_sizes {
    int64_t w;
    int64_t h;
    int64_t c;
    int64_t e;
    int64_t cut;
};

/* A spec read and checked, with H filled in where the kind leaves it to W. */
void msl_unit_read(struct msl_check *check, struct muslin_unit_spec *into, const struct muslin_unit_spec *from);

/* The same, but the kind, the method and the sizes are let be. */
void msl_unit_read_seam(struct msl_check *check, struct muslin_unit_spec *into, const struct muslin_unit_spec *from);

/* Of a spec that was read. */
struct msl_unit_sizes msl_unit_sizes_of(const struct muslin_unit_spec *spec);

#endif
