/* muslin/fit.h - settings that come out at a wanted size or for a bed, and a pattern resized.
 *
 * SPDX-License-Identifier: MIT
 */
#ifndef MUSLIN_FIT_H
#define MUSLIN_FIT_H

#include "setting.h"

#ifdef __cplusplus
extern "C" {
#endif

#ifdef __cplusplus
}
#endif

#endif
