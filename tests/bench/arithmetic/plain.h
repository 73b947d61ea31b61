/* plain.h - sums of the shape of the library's, in a shared library of their own: what such a call takes by itself.
 *
 * SPDX-License-Identifier: MIT */
#ifndef PLAIN_H
#define PLAIN_H

#include <stdint.h>

struct plain_seam {
    int64_t allowance;
    int64_t take_up;
};

/* 0, or 1 where the sum does not fit; nothing else is checked. */
int32_t plain_add(int64_t a, int64_t b, int64_t *out);
int32_t plain_cut_size(int64_t finished, const struct plain_seam *seam, int64_t *out, void *problem);

#endif
