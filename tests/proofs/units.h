/* units.h - what muslin_length_unit_ticks() promises to the proofs of its callers, proved with it.
 *
 * SPDX-License-Identifier: MIT */
#include "muslin/length.h"

/*@ assigns \nothing;
  @ ensures 0 <= \result < 0x80000;
  @ ensures MUSLIN_LENGTH_UNIT_INCH <= unit <= MUSLIN_LENGTH_UNIT_M ==> 0 < \result; */
muslin_len muslin_length_unit_ticks(int32_t unit);
