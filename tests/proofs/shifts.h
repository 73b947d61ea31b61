/* shifts.h - what the provers are told about shifts. Included in front of the files whose
 * proofs want it. Trusted by Frama-C; lemmas.py proves the axioms.
 *
 * SPDX-License-Identifier: MIT */
#include <stdint.h>

/*@ axiomatic shifts {
      axiom shifts_down: // C11 6.5.7: the whole part of x / 2^n
        \forall integer x, n; 0 <= x && 0 <= n ==> (x >> n) == x / (1 << n);
      axiom doubles: // C11 6.5.7: 2^n
        \forall integer n; 0 <= n <= 64 ==>
            (1 << (n + 1)) == 2 * (1 << n) && 0 < (1 << n) <= 0x10000000000000000;
      axiom ends: // C11 6.5.7
        \forall integer n; (n == 0 ==> (1 << n) == 1) && (n == 64 ==> (1 << n) == 0x10000000000000000);
      axiom lowest_digit: // C11 6.5.10
        \forall integer x; 0 <= x ==> (x & 1) == x % 2;
      axiom halves_of_quotients: \forall integer x, p; 0 <= x && 0 < p ==> x / (2 * p) == x / p / 2;
    } */
