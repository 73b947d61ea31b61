/* muslin/shape.h - a unit of the caller's own: polygons and arcs, their templates with allowances.
 *
 * SPDX-License-Identifier: MIT
 */
#ifndef MUSLIN_SHAPE_H
#define MUSLIN_SHAPE_H

#include "seam.h"

#ifdef __cplusplus
extern "C" {
#endif

#ifdef __cplusplus
}
#endif

#endif
