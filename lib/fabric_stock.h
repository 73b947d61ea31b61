/* fabric_stock.h - stock read and checked, for every module that cuts from it.
 *
 * SPDX-License-Identifier: MIT */
#ifndef MUSLIN_FABRIC_STOCK_H
#define MUSLIN_FABRIC_STOCK_H

#include "muslin/fabric.h"

#include "inside.h"

/* A caller's stock into *stock, every member checked; `argument` names the struct in a problem. */
void msl_read_stock(struct msl_check *check, int32_t argument, struct muslin_stock_spec *stock, const void *from);

#endif
