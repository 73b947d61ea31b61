/* main.c - prints the digests, in the form of digest.txt.
 *
 * SPDX-License-Identifier: MIT */
#include "golden.h"

#include <locale.h>
#include <stdio.h>

static void print(const char *name, uint64_t digest)
{
    printf("%s %08lx%08lx\n", name, (unsigned long)(digest >> 32), (unsigned long)(digest & 0xffffffffu));
}

/* In the locale of the environment: no figure may depend on one. */
int main(void)
{
    setlocale(LC_ALL, "");
    struct golden g;
    golden_run(&g);
    print("arithmetic", g.arithmetic);
    print("figures", g.figures);
    print("words", g.words);
    return 0;
}
