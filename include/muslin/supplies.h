/* muslin/supplies.h - what else a quilt needs: thread, weight, cost.
 *
 * SPDX-License-Identifier: MIT
 */
#ifndef MUSLIN_SUPPLIES_H
#define MUSLIN_SUPPLIES_H

#include "fabric.h"

#ifdef __cplusplus
extern "C" {
#endif

#ifdef __cplusplus
}
#endif

#endif
