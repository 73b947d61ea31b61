/* tens.h - what the provers are told about digits in a text. Included in front of the files whose proofs want
 * it. Trusted by Frama-C; lemmas.py proves the axioms.
 *
 * SPDX-License-Identifier: MIT */
#include <stdint.h>

/*@ axiomatic bytes {
      axiom bytes_below: // C11 6.3.1.3: 2^8 is added
        \forall integer c; -0x80 <= c < 0 ==> (unsigned char)c == c + 0x100;
      axiom words_below: // C11 6.3.1.3: 2^32 is added
        \forall integer c; -0x100000000 <= c < 0 ==> (uint32_t)c == c + 0x100000000;
    } */
/*@ axiomatic tens {
      logic integer ten_to(integer n) reads \nothing; // 10^n
      axiom first_tens: ten_to(0) == 1;
      axiom next_tens: \forall integer n; 0 <= n ==> ten_to(n + 1) == 10 * ten_to(n);
      axiom most_tens: \forall integer n; 0 <= n <= 18 ==> 1 <= ten_to(n) <= 1000000000000000000;
    } */
