/* main.c - the digest of the arithmetic, printed by a bare Cortex-M0 through its debugger's channel (semihosting).
 *
 * SPDX-License-Identifier: MIT */
#include "golden.h"

#include <stdio.h>

void _start(void);

/* Where its stack begins, and what it runs first. */
__attribute__((section(".vectors"), used)) static void (*const vectors[2])(void) = {
    (void (*)(void))0x7f000000, _start
};

int main(void)
{
    struct golden g;
    golden_arithmetic(&g);
    printf("arithmetic %08lx%08lx\n", (unsigned long)(g.arithmetic >> 32), (unsigned long)(g.arithmetic & 0xffffffffu));
    return 0;
}
