/* cutplan_split.h - on what a case is split, and what becomes of one in which all is whole.
 *
 * SPDX-License-Identifier: MIT */
#ifndef MUSLIN_CUTPLAN_SPLIT_H
#define MUSLIN_CUTPLAN_SPLIT_H

#include "cutplan_case.h"

/* How many there are of each way and of each size in it, by the master's levels. */
void msl_levels_find(struct msl_search *search);

/* A number that is not whole, to split on. Returns 0 when all are. */
int msl_split_choose(const struct msl_search *search, struct msl_split *split);

/* Remembers what the case, just solved, has proved beyond the one of which it is a part. */
void msl_split_learn(struct msl_search *search, int32_t number);

/* Where all numbers are whole: packs each way's pieces into its strips. That gives a plan; or closes the case, where
 * its limits leave no other numbers for a way in which they do not fit; or gives a split that brings it nearer to
 * that. Returns 0 when there is none: all numbers are set and nobody knows whether they fit. */
int msl_split_pack(struct msl_search *search, struct msl_case *solved, struct msl_split *split);

#endif
