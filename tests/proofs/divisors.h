/* divisors.h - what the provers are told about divisors. Included in front of the files whose proofs want it. Trusted
 * by Frama-C; lemmas.py proves the axioms.
 *
 * SPDX-License-Identifier: MIT */

/*@ axiomatic divisors {
      predicate divides(integer d, integer n) reads \nothing; // n is a multiple of d
      axiom divides_ends: \forall integer d; divides(d, d) && divides(d, 0);
      axiom divides_with_rest: \forall integer d, a, b; 0 <= a && 0 < b && divides(d, b) && divides(d, a % b) ==>
          divides(d, a);
      axiom divides_exactly: \forall integer d, n; 0 < d && divides(d, n) ==> n / d * d == n;
    } */
