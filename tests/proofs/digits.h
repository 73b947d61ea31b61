/* digits.h - what the provers are told about binary digits, the powers of two. Included in front of the files whose
 * proofs want it. Trusted by Frama-C; lemmas.py proves the axioms.
 *
 * SPDX-License-Identifier: MIT */
#include <stdint.h>

/*@ axiomatic digits {
      predicate is_digit(integer d) reads \nothing; // 0, or a power of two up to 2^62
      axiom highest_digits: is_digit(0x4000000000000000) && is_digit(0x80000000) && is_digit(0);
      axiom next_digits: \forall integer d; is_digit(d) && 0 < d ==> is_digit(d / 2) && (d == 1 || d == 2 * (d / 2));
    } */
