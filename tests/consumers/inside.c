/* inside.c - asks for a function that the library keeps to itself; it must not link.
 *
 * SPDX-License-Identifier: MIT */
#include <stdint.h>

uint64_t msl_root(uint64_t n, uint64_t *rest);

int main(void)
{
    return (int)msl_root(49, 0) - 7;
}
