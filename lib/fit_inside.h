/* fit_inside.h - the best settings found so far.
 *
 * SPDX-License-Identifier: MIT */
#ifndef MUSLIN_FIT_INSIDE_H
#define MUSLIN_FIT_INSIDE_H

#include "inside.h"
#include "muslin/fit.h"

/* What width and length are off, added up. */
muslin_len msl_fit_off(const struct muslin_fit *fit);

/* Whether a comes before b, by rank key and then as fit.h says; of two settings exactly one does. */
int msl_fit_before(const struct muslin_fit *a, const struct muslin_fit *b);

/* The caller's rows, of which `room` are used: no row comes before the one at its parent's place, so that the last in
 * rank stands first. */
struct msl_fit_heap {
    struct muslin_fit *rows;
    size_t row_size;
    size_t held;
    size_t room;
};

/* Keeps a setting if there is room, or else if it comes before the last one kept. Room is 1 or more. */
void msl_fit_offer(struct msl_fit_heap *heap, const struct muslin_fit *fit);

/* Brings what is kept into the order of rank. */
void msl_fit_order(struct msl_fit_heap *heap);

#endif
