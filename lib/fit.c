/* fit.c - settings that come out at a wanted size or for a bed, and a pattern resized.
 *
 * SPDX-License-Identifier: MIT */
#include "muslin/fit.h"

#include "inside.h"
