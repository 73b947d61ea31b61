/* multiples.h - what the provers are told about multiples. Included in front of the files whose
 * proofs want it. Trusted by Frama-C; lemmas.py proves the axioms.
 *
 * SPDX-License-Identifier: MIT */
#include <stdint.h>

/*@ axiomatic multiples {
      axiom multiple: \forall integer k, b; 0 < b ==> (k * b) % b == 0;
      axiom next_multiples: \forall integer a, b; 0 < b && a % b == 0 ==> (a + b) % b == 0 && (a - b) % b == 0;
    } */
