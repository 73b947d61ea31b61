/* unit_cut.h - a recipe's pieces as they are cut, for the calls forwards and backwards.
 *
 * SPDX-License-Identifier: MIT */
#ifndef MUSLIN_UNIT_CUT_H
#define MUSLIN_UNIT_CUT_H

#include "unit_table.h"

/* Sizes, surplus and what the row says; total and hand are left 0. */
void msl_unit_cut_piece(const struct unit_row *row, const struct msl_unit_sizes *sizes,
                        const struct muslin_unit_spec *spec, struct muslin_unit_piece *piece);

/* MUSLIN_ERR_CUSTOMARY in *check where an addition that this recipe uses is too small. */
void msl_unit_want_additions(struct msl_check *check, const struct unit_recipe *recipe,
                             const struct muslin_unit_spec *spec);

/* The sizes that the unit itself has: finished, and unfinished to trim to. */
void msl_unit_tell_sizes(int32_t kind, const struct msl_unit_sizes *sizes, struct muslin_unit_plan *unit);

/* How far from the raw corner the seam of a half-rectangle meets the shorter raw side, nearest tick. */
muslin_len msl_unit_seam_offset(const struct msl_unit_sizes *sizes);

/* Of an eight-pointed star: how much wider its diamonds as cut make it, and what a row's square, `cut` wide, is larger
 * than they ask for. 0 for other kinds. */
muslin_len msl_unit_star_wider_by(const struct unit_recipe *recipe, const struct muslin_unit_spec *spec);
muslin_len msl_unit_star_excess(const struct unit_recipe *recipe, int32_t row, muslin_len cut,
                                const struct muslin_unit_spec *spec);

/* The recipe behind muslin_unit_recipe_at(), 0 .. count - 1. */
const struct unit_recipe *msl_unit_method_at(int64_t index);

#endif
