/* cutlist.c - a list of pieces, and the cloth it takes: yardage, fat quarters, bundles.
 *
 * SPDX-License-Identifier: MIT */
#include "muslin/cutlist.h"

#include "inside.h"
