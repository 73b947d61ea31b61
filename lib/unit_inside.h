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

/* ---- one patch of a unit, drawn: unit_outline.c ------------------------------------------------------------------ */

enum { MSL_UNIT_CORNERS = 8, MSL_UNIT_PATCHES = 16 };

struct msl_unit_patch {
    int32_t region;
    int32_t corners;
    int32_t tip;   /* the corner where the edge starts that cuts a raw point off; -1: it is whole */
    int32_t exact; /* 1 when no corner was rounded */
};

int32_t msl_unit_patches(int32_t kind);

/* Patch 0, 1, ... as muslin_unit_outlines() draws it; x and y, with room for MSL_UNIT_CORNERS, get its corners. Of the
 * spec kind, method, tip, seam and sizes count; the height must be there. */
struct msl_unit_patch msl_unit_patch(const struct muslin_unit_spec *spec, int32_t hand, int32_t stage, int32_t patch,
                                     muslin_len *x, muslin_len *y);

/* The region towards which the recipe presses a seam between these two, 0 where it presses it open. */
int32_t msl_unit_pressed_to(int32_t kind, int32_t method, int32_t first, int32_t second);

#endif
