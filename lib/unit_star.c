/* unit_star.c - what rounding its diamonds does to an eight-pointed star.
 *
 * SPDX-License-Identifier: MIT
 *
 * Diamonds from a strip K wide finish K - E between two sides, and d = sqrt 2 (K - E) along each. A star is
 * d + sqrt 2 d + d wide. Its corner squares finish d, its triangles sqrt 2 d along their long side, which takes
 * (1 + sqrt 2) E more.
 */
#include "unit_cut.h"

enum { DIAMONDS, CORNERS, SIDES };

/* K - E. */
static int64_t diamond_height(const struct unit_recipe *recipe, const struct muslin_unit_spec *spec)
{
    struct msl_unit_sizes sizes = msl_unit_sizes_of(spec);
    struct muslin_unit_piece diamond = { 0 };
    msl_unit_cut_piece(&recipe->row[DIAMONDS], &sizes, spec, &diamond);
    return diamond.cut_height - sizes.e;
}

muslin_len msl_unit_star_wider_by(const struct unit_recipe *recipe, const struct muslin_unit_spec *spec)
{
    if (spec->kind != MUSLIN_UNIT_EIGHT_POINTED_STAR)
        return 0;
    int64_t height = diamond_height(recipe, spec);
    struct msl_surd wider = msl_surd_of(2 * height - spec->finished_width, 2 * height, 2, 1);
    struct msl_exact exact = msl_surd_exact(&wider);
    return exact.floor + exact.upper_half;
}

muslin_len msl_unit_star_excess(const struct unit_recipe *recipe, int32_t row, muslin_len cut,
                                const struct muslin_unit_spec *spec)
{
    if (spec->kind != MUSLIN_UNIT_EIGHT_POINTED_STAR || row == DIAMONDS)
        return 0;
    int64_t height = diamond_height(recipe, spec);
    int64_t e = msl_unit_sizes_of(spec).e;
    struct msl_surd asked = row == CORNERS ? msl_surd_of(e, height, 2, 1) : msl_surd_of(2 * height + e, e, 2, 1);
    return cut - msl_surd_ceiling(&asked);
}
