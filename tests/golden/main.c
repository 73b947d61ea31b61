/* main.c - prints the digests, in the form of digest.txt.
 *
 * SPDX-License-Identifier: MIT */
#include "golden.h"

#include <stdio.h>

static void print(const char *name, uint64_t digest)
{
    printf("%s %08lx%08lx\n", name, (unsigned long)(digest >> 32), (unsigned long)(digest & 0xffffffffu));
}

int main(void)
{
    struct golden g;
    golden_run(&g);
    print("arithmetic", g.arithmetic);
    print("figures", g.figures);
    print("words", g.words);
    return 0;
}
