/* supplies.c - what else a quilt needs: thread, weight, cost.
 *
 * SPDX-License-Identifier: MIT */
#include "muslin/supplies.h"

#include "inside.h"
