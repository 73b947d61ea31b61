/* units.h - what muslin_length_unit_ticks() promises to the proofs of its callers, proved with it.
 *
 * SPDX-License-Identifier: MIT */
#include "muslin/length.h"

/*@ logic integer ticks_of(integer unit) =
  @         unit == MUSLIN_LENGTH_UNIT_INCH ? MUSLIN_TICKS_PER_INCH :
  @         unit == MUSLIN_LENGTH_UNIT_FOOT ? 12 * MUSLIN_TICKS_PER_INCH :
  @         unit == MUSLIN_LENGTH_UNIT_YARD ? 36 * MUSLIN_TICKS_PER_INCH :
  @         unit == MUSLIN_LENGTH_UNIT_MM ? MUSLIN_TICKS_PER_MM :
  @         unit == MUSLIN_LENGTH_UNIT_CM ? 10 * MUSLIN_TICKS_PER_MM :
  @         unit == MUSLIN_LENGTH_UNIT_M ? 1000 * MUSLIN_TICKS_PER_MM : 0; */

/*@ assigns \nothing;
  @ ensures \result == ticks_of(unit);
  @ ensures 0 <= \result < 0x80000;
  @ ensures MUSLIN_LENGTH_UNIT_INCH <= unit <= MUSLIN_LENGTH_UNIT_M ==> 0 < \result; */
muslin_len muslin_length_unit_ticks(int32_t unit);
