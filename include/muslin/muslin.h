/* muslin/muslin.h - all of muslin.
 *
 * SPDX-License-Identifier: MIT
 */
#ifndef MUSLIN_MUSLIN_H
#define MUSLIN_MUSLIN_H

#include "base.h"
#include "length.h"
#include "seam.h"
#include "fabric.h"
#include "reference.h"
#include "stripset.h"
#include "setting.h"
#include "finishing.h"
#include "stripquilt.h"

#endif
