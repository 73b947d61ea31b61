/* setting_point.h - the squares from which the triangles of a setting on point are cut.
 *
 * SPDX-License-Identifier: MIT */
#ifndef MUSLIN_SETTING_POINT_H
#define MUSLIN_SETTING_POINT_H

#include "muslin/setting.h"

#include "inside.h"

/* What one seam takes: t = 2 s + u. */
muslin_len msl_point_seam(const struct muslin_setting_point_spec *spec);

/* A square cut on the diagonal. Cut twice, its finished side is the diagonal of `side`; cut once, half of it. */
struct msl_point_square {
    muslin_len side;  /* the triangle's leg where it is cut twice, its long side where it is cut once */
    int64_t divisor;  /* 1 cut twice, 2 cut once */
    muslin_len add;   /* customary addition */
    int64_t at;       /* which square, for the problem */
};

struct msl_point_cut {
    muslin_len cut;
    muslin_len need;
    muslin_len surplus;
};

/* The square as the spec's policy asks, brought to the grid of `cutting`, both checked. MUSLIN_ERR_CUSTOMARY in *check
 * when a customary total is too small. The spec's sizes are within MUSLIN_SIZE_MAX, `side` within three of them. */
struct msl_point_cut msl_point_cut_square(struct msl_check *check, const struct muslin_setting_point_spec *spec,
                                          const struct muslin_rounding_spec *cutting,
                                          const struct msl_point_square *square);

#endif
