/* muslin/motif.h - pieces that need a window on a printed repeat, and stacks of identical layers.
 *
 * SPDX-License-Identifier: MIT
 */
#ifndef MUSLIN_MOTIF_H
#define MUSLIN_MOTIF_H

#include "fabric.h"

#ifdef __cplusplus
extern "C" {
#endif

#ifdef __cplusplus
}
#endif

#endif
