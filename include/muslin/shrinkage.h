/* muslin/shrinkage.h - what washing and quilting do to a size: dimensional change, and the size to make.
 *
 * SPDX-License-Identifier: MIT
 */
#ifndef MUSLIN_SHRINKAGE_H
#define MUSLIN_SHRINKAGE_H

#include "seam.h"

#ifdef __cplusplus
extern "C" {
#endif

#ifdef __cplusplus
}
#endif

#endif
