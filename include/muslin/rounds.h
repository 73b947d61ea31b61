/* muslin/rounds.h - what grows from the middle outwards: log cabins, frames, pieced borders.
 *
 * SPDX-License-Identifier: MIT
 */
#ifndef MUSLIN_ROUNDS_H
#define MUSLIN_ROUNDS_H

#include "setting.h"

#ifdef __cplusplus
extern "C" {
#endif

#ifdef __cplusplus
}
#endif

#endif
