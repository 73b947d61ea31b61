/* root.c - square roots of whole numbers.
 *
 * SPDX-License-Identifier: MIT */
#include "root.h"
#include "wide.h"

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
void msl_root_round(uint64_t n, int64_t divisor, const struct muslin_rounding_spec *rounding,
                    struct muslin_rounded *out)
{
    uint64_t rest;
    uint64_t root = msl_root(n, &rest);
    int64_t over = (int64_t)(root % (uint64_t)divisor);
    struct msl_exact exact;
    exact.floor = (int64_t)(root / (uint64_t)divisor);
    exact.on_tick = (rest | (uint64_t)over) == 0;
    exact.upper_half = 2 * over + (rest > root ? 1 : 0) >= divisor;
    (void)msl_grid_round(exact, rounding, out); /* cannot overflow: the root is below 2^32 */
}
