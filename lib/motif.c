/* motif.c - pieces that need a window on a printed repeat, and stacks of identical layers.
 *
 * SPDX-License-Identifier: MIT */
#include "muslin/motif.h"

#include "inside.h"
