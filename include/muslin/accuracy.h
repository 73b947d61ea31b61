/* muslin/accuracy.h - small errors added up: the worst case, and what chance makes of it.
 *
 * SPDX-License-Identifier: MIT
 */
#ifndef MUSLIN_ACCURACY_H
#define MUSLIN_ACCURACY_H

#include "seam.h"

#ifdef __cplusplus
extern "C" {
#endif

#ifdef __cplusplus
}
#endif

#endif
