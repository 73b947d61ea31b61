/* unit.c - recipes for pieced shapes, forwards and backwards.
 *
 * SPDX-License-Identifier: MIT */
#include "muslin/unit.h"

#include "inside.h"
