/* root.c - square roots of whole numbers.
 *
 * SPDX-License-Identifier: MIT */
#include "root.h"

/* The root's binary digits from the highest down: each is kept where the square still is not above n. Before the turn
 * of a digit the root lies from `root` to below `root` + twice the digit, and that sum is at most 2^32, so no square
 * passes 64 bits. After the last turn only one whole number is left. */
uint64_t msl_root(uint64_t n, uint64_t *rest)
{
    uint64_t root = 0;
    /*@ loop invariant -1 <= bit <= 31 && 0 <= root && root + (1 << (bit + 1)) <= 0x100000000;
      @ loop invariant root * root <= n;
      @ loop invariant n < (root + (1 << (bit + 1))) * (root + (1 << (bit + 1)));
      @ loop assigns bit, root;
      @ loop variant bit; */
    for (int bit = 31; bit >= 0; bit--) {
        uint64_t candidate = root + ((uint64_t)1 << bit);
        /*@ assert candidate == root + (1 << bit) && candidate <= UINT32_MAX; */
        /*@ assert candidate * candidate <= 0xFFFFFFFE00000001; */
        /*@ assert root + (1 << (bit + 1)) == candidate + (1 << bit); */
        /*@ assert candidate * candidate == (root + (1 << bit)) * (root + (1 << bit)); */
        if (candidate * candidate <= n)
            root = candidate;
        /*@ assert n < (root + (1 << bit)) * (root + (1 << bit)); */
    }
    if (rest != NULL)
        *rest = n - root * root;
    return root;
}

/* With f = floor(sqrt n), q = floor(f / d) and o = f - d q, the value sqrt(n) / d lies in [q, q + 1). Its fraction is
 * (o + sqrt(n) - f) / d, so it reaches one half when 2 o + 2 (sqrt(n) - f) >= d. As 0 <= 2 (sqrt(n) - f) < 2, only
 * 2 o + 1 = d is in doubt; it asks whether sqrt(n) >= f + 1/2, that is n >= f f + f + 1/4, that is rest > f. */
/*@ requires 0 < divisor;
  @ assigns \nothing;
  @ ensures is_root_over(\result, n, divisor) && 0 <= \result.floor <= UINT32_MAX; */
static struct msl_exact root_over(uint64_t n, int64_t divisor)
{
    uint64_t rest;
    uint64_t root = msl_root(n, &rest);
    int64_t over = (int64_t)(root % (uint64_t)divisor);
    struct msl_exact exact;
    exact.floor = (int64_t)(root / (uint64_t)divisor);
    exact.on_tick = (rest | (uint64_t)over) == 0;
    exact.upper_half = 2 * over + (rest > root ? 1 : 0) >= divisor;
    /*@ assert root == exact.floor * divisor + over && 0 <= over < divisor; */
    /*@ assert exact.on_tick != 0 <==> rest == 0 && over == 0; */
    /*@ assert 0 <= exact.floor * divisor <= root < (exact.floor + 1) * divisor; */
    /*@ assert square(exact.floor * divisor) <= square(root) <= n; */
    /*@ assert n < square(root + 1) <= square((exact.floor + 1) * divisor); */
    /*@ assert exact.on_tick != 0 ==> n == square(exact.floor * divisor); */
    /*@ assert exact.on_tick == 0 ==> square(exact.floor * divisor) < n; */
    /*@ assert square(2 * root + 1) == 4 * square(root) + 4 * root + 1; */
    /*@ assert square(2 * root + 2) == 4 * square(root + 1); */
    /*@ assert square(2 * root) == 4 * square(root) && n == square(root) + rest && n < square(root + 1); */
    /*@ assert exact.upper_half != 0 ==> (2 * exact.floor + 1) * divisor <= 2 * root + (rest > root ? 1 : 0); */
    /*@ assert exact.upper_half == 0 ==> (2 * exact.floor + 1) * divisor >= 2 * root + 1 + (rest > root ? 1 : 0); */
    /*@ assert exact.upper_half != 0 ==> square((2 * exact.floor + 1) * divisor) <= 4 * n; */
    /*@ assert exact.upper_half == 0 ==> square((2 * exact.floor + 1) * divisor) > 4 * n; */
    return exact;
}

void msl_root_round(uint64_t n, int64_t divisor, const struct muslin_rounding_spec *rounding,
                    struct muslin_rounded *out)
{
    struct msl_exact exact = root_over(n, divisor);
    (void)msl_grid_round(exact, rounding, out); /* cannot overflow: the root is below 2^32 */
}
