// muslin/muslin.hpp - all of the library.
// Written by generate.py from lib/abi/api.json: change that, not this file.
//
// SPDX-License-Identifier: MIT
#ifndef MUSLIN_MUSLIN_HPP
#define MUSLIN_MUSLIN_HPP

#include <muslin/base.hpp>
#include <muslin/length.hpp>
#include <muslin/seam.hpp>
#include <muslin/accuracy.hpp>
#include <muslin/shrinkage.hpp>
#include <muslin/fabric.hpp>
#include <muslin/motif.hpp>
#include <muslin/reference.hpp>
#include <muslin/stripset.hpp>
#include <muslin/cutlist.hpp>
#include <muslin/shape.hpp>
#include <muslin/unit.hpp>
#include <muslin/setting.hpp>
#include <muslin/rounds.hpp>
#include <muslin/fit.hpp>
#include <muslin/finishing.hpp>
#include <muslin/stripquilt.hpp>
#include <muslin/supplies.hpp>
#include <muslin/quilt.hpp>
#include <muslin/solution.hpp>
#include <muslin/pressing.hpp>
#include <muslin/sewing.hpp>
#include <muslin/scatter.hpp>
#include <muslin/cutplan.hpp>
#include <muslin/yardage.hpp>

#endif
