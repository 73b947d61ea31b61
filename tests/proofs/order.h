/* order.h - a lemma for the provers, proved like the functions.
 *
 * SPDX-License-Identifier: MIT */
/*@ lemma products_keep_order: \forall integer a, b, d; 0 < d && a <= b ==> a * d <= b * d; */
