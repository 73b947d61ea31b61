/* solution_cuts.h - the cut list in the making, and strips of a strip set.
 *
 * SPDX-License-Identifier: MIT */
#ifndef MUSLIN_SOLUTION_CUTS_H
#define MUSLIN_SOLUTION_CUTS_H

#include "solution_inside.h"
#include "solution_sort.h"

/* ---- rows of the cut list --------------------------------------------------------------------------------------- */

/* A row that a node needs: a rectangle, one piece from each, with the seam's allowances; sizes and counts still 0. */
struct muslin_solution_cut msl_new_cut(const struct muslin_solution *solution, uint32_t node, uint32_t fabric,
                                       int32_t source);

/* Its sizes and shape, as unit.h says of a piece: how it is cut, not how often. */
void msl_take_piece(struct muslin_solution_cut *cut, const struct muslin_unit_piece *piece);

/* Of fields: how many blanks give the pieces that are scattered, and what they give too much. */
void msl_count_blanks(struct muslin_solution_cut *cut);

/* Takes the row into the list. */
void msl_add_cut(struct msl_solving *solving, const struct muslin_solution_cut *cut);

/* Of a fabric without direction: turns the rectangle so that its longer side is the width. Returns by how many
 * quarters. */
int32_t msl_lay_cut(const struct muslin_solution *solution, struct muslin_solution_cut *cut);

/* Adds the copies, mirrored (MSL_TURN_MIRRORED) or not (0), to the row by how their print lies: `laid` is by how many
 * quarters the piece was turned when it was cut, against how it lies in its node. Returns how many copies. */
int64_t msl_count_turns(struct muslin_solution_cut *cut, const struct msl_counts *copies, int32_t mirrored,
                        int32_t laid);

/* Whether one sees that the fabric's print lies turned by so many quarters. */
int msl_print_shows(const struct muslin_solution *solution, uint32_t fabric, int32_t quarters);

/* ---- patches and strips ----------------------------------------------------------------------------------------- */

/* A patch as it is cut by itself, or its mirror image; *laid as above. */
struct muslin_solution_cut msl_patch_cut(const struct muslin_solution *solution, uint32_t patch, int32_t mirrored,
                                         int32_t *laid);

/* The patch that a node is, turned or not; 0 when it is none. */
uint32_t msl_patch_under(const struct muslin_solution *solution, uint32_t node);

/* The strip for child k of a join that is strip-pieced. It is cut across the cloth and lies in the join turned by an
 * odd number of quarters when joined across, by an even one when joined down: as the print of the patch would lie, or,
 * where that cannot be, a quarter further. */
struct msl_set_strip {
    uint32_t fabric;
    int32_t turn;
    int32_t shows;             /* 1: one sees that its print lies otherwise than in a patch cut by itself */
    muslin_len cut;            /* height of the strip */
    muslin_len edge[MSL_EDGES]; /* allowances, as it is cut */
};
struct msl_set_strip msl_set_strip_of(const struct muslin_solution *solution, uint32_t join, int64_t k);

/* ---- each kind of node ------------------------------------------------------------------------------------------ */

/* All units together: those alike share their recipes. */
void msl_cut_units(struct msl_solving *solving);
void msl_cut_diagonal(struct msl_solving *solving, uint32_t node);
void msl_cut_sixty(struct msl_solving *solving, uint32_t node);

/* Passes on what a call of another module said was wrong with a node. */
void msl_fail_node(struct msl_solving *solving, uint32_t node, const struct muslin_problem *problem);

#endif
