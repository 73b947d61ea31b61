/* wraps.h - what the provers are told about sums that pass 64 bits. Included in front of the files whose
 * proofs want it. Trusted by Frama-C; lemmas.py proves both axioms.
 *
 * SPDX-License-Identifier: MIT */
#include <stdint.h>

/*@ axiomatic wraps {
      axiom wraps_below: // C11 6.3.1.3: 2^64 is added
        \forall integer x; -0x10000000000000000 <= x < 0 ==> (uint64_t)x == x + 0x10000000000000000;
      axiom wraps_above: // C11 6.3.1.3: 2^64 is subtracted
        \forall integer x; 0x10000000000000000 <= x < 0x20000000000000000 ==> (uint64_t)x == x - 0x10000000000000000;
    } */
