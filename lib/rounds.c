/* rounds.c - what grows from the middle outwards: log cabins, frames, pieced borders.
 *
 * SPDX-License-Identifier: MIT */
#include "muslin/rounds.h"

#include "inside.h"
