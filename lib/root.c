/* root.c - square roots of whole numbers.
 *
 * SPDX-License-Identifier: MIT */
#include "root.h"
#include "wide.h"

/* The greatest power of four that is not above n; 1 for n = 0. */
static uint64_t first_bit(uint64_t n)
{
    uint64_t bit = (uint64_t)1 << 62;
    while (bit > n && bit > 1)
        bit >>= 2;
    return bit;
}

/* Digit by digit in base two, as one takes a root by hand. Before each step n0 = root^2-part taken + rest, where `root`
 * holds the digits found, shifted to their place. */
uint64_t msl_root(uint64_t n, uint64_t *rest)
{
    uint64_t root = 0;
    for (uint64_t bit = first_bit(n); bit != 0; bit >>= 2) {
        uint64_t step = root + bit;
        root >>= 1;
        if (n >= step) {
            n -= step;
            root += bit;
        }
    }
    if (rest != NULL)
        *rest = n;
    return root;
}

/* With f = floor(sqrt n), q = floor(f / d) and o = f - d q, the value sqrt(n) / d lies in [q, q + 1). Its fraction is
 * (o + sqrt(n) - f) / d, so it reaches one half when 2 (o + fraction of the root) >= d. For odd d and 2 o + 1 = d that
 * asks whether sqrt(n) >= f + 1/2, that is n >= f f + f + 1/4, that is rest > f. */
void msl_root_round(uint64_t n, int64_t divisor, muslin_len offset, const struct muslin_rounding_spec *rounding, struct muslin_rounded *out)
{
    uint64_t rest;
    uint64_t root = msl_root(n, &rest);
    int64_t over = (int64_t)(root % (uint64_t)divisor);
    int root_upper_half = rest > root;
    struct msl_exact exact;
    exact.floor = (int64_t)(root / (uint64_t)divisor) + offset;
    exact.on_tick = rest == 0 && over == 0;
    exact.upper_half = 2 * over + (root_upper_half ? 1 : 0) >= divisor;
    (void)msl_grid_round(exact, rounding, out); /* cannot overflow: the root is below 2^32, the offset at most 2^61 */
}
