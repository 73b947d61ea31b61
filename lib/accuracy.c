/* accuracy.c - small errors added up: the worst case, and what chance makes of it.
 *
 * SPDX-License-Identifier: MIT */
#include "muslin/accuracy.h"

#include "inside.h"
