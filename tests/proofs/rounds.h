/* rounds.h - what the provers are told about quotients and products. Included in front of the files whose proofs want
 * it. Each sentence is about a word of its own, so that it is used just where a proof says the word. Trusted by
 * Frama-C; lemmas.py proves the axioms.
 *
 * SPDX-License-Identifier: MIT */
#include <stdint.h>

/*@ axiomatic rounds {
      predicate goes(integer q, integer b, integer a) reads \nothing; // b into a, q times and not once more
      axiom goes_by_products: \forall integer q, b, a; goes(q, b, a) <==> 0 < b && q * b <= a < q * b + b;
      axiom goes_as_divided: \forall integer q, b, a; 0 <= q && goes(q, b, a) ==> a / b == q;
      predicate at_most(integer a, integer b, integer d) reads \nothing; // a d <= b d
      axiom at_most_by_factors: \forall integer a, b, d; 0 <= d && a <= b ==> at_most(a, b, d);
      axiom at_most_as_products: \forall integer a, b, d; at_most(a, b, d) ==> a * d <= b * d;
    } */
