/* muslin/muslin.h - all of muslin.
 *
 * SPDX-License-Identifier: MIT
 */
#ifndef MUSLIN_MUSLIN_H
#define MUSLIN_MUSLIN_H

#include "base.h"
#include "length.h"
#include "seam.h"
#include "accuracy.h"
#include "shrinkage.h"
#include "fabric.h"
#include "motif.h"
#include "reference.h"
#include "stripset.h"
#include "cutlist.h"
#include "shape.h"
#include "unit.h"
#include "setting.h"
#include "rounds.h"
#include "fit.h"
#include "finishing.h"
#include "stripquilt.h"
#include "supplies.h"
#include "quilt.h"
#include "solution.h"
#include "pressing.h"
#include "sewing.h"
#include "scatter.h"
#include "cutplan.h"
#include "yardage.h"

#endif
