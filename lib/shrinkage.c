/* shrinkage.c - what washing and quilting do to a size: dimensional change, and the size to make.
 *
 * SPDX-License-Identifier: MIT */
#include "muslin/shrinkage.h"

#include "inside.h"
