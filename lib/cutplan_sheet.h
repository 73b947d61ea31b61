/* cutplan_sheet.h - the pattern that is worth most of a panel or a piece of stock.
 *
 * SPDX-License-Identifier: MIT */
#ifndef MUSLIN_CUTPLAN_SHEET_H
#define MUSLIN_CUTPLAN_SHEET_H

#include "cutplan_price.h"

/* The most that a sheet can be worth, above beat, else beat; what it then holds stays in the scratch. */
int64_t msl_sheet_worth(struct msl_pricing *pricing, const struct msl_way *way, const int64_t *worth,
                        const int64_t *most, int64_t beat, int64_t *bound);

/* Adds what msl_sheet_worth() has found to the pattern begun, its strips filled anew with no more than `most` in each
 * and than is left in all; and to *sum what that is worth. Returns 0 where the pool is full. */
int msl_sheet_lay(struct msl_pricing *pricing, const struct msl_way *way, const int64_t *worth, const int64_t *most,
                  struct msl_pool *pool, int64_t *sum);

#endif
