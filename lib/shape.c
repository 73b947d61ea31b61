/* shape.c - a unit of the caller's own: polygons and arcs, their templates with allowances.
 *
 * SPDX-License-Identifier: MIT */
#include "muslin/shape.h"

#include "inside.h"
