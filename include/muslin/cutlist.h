/* muslin/cutlist.h - a list of pieces, and the cloth it takes: yardage, fat quarters, bundles.
 *
 * SPDX-License-Identifier: MIT
 */
#ifndef MUSLIN_CUTLIST_H
#define MUSLIN_CUTLIST_H

#include "stripset.h"

#ifdef __cplusplus
extern "C" {
#endif

#ifdef __cplusplus
}
#endif

#endif
