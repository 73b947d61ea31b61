/* muslin/unit.h - recipes for pieced shapes, forwards and backwards.
 *
 * SPDX-License-Identifier: MIT
 */
#ifndef MUSLIN_UNIT_H
#define MUSLIN_UNIT_H

#include "seam.h"

#ifdef __cplusplus
extern "C" {
#endif

#ifdef __cplusplus
}
#endif

#endif
