// Runs the form without exceptions, and beside it the other where both are linked.
//
// SPDX-License-Identifier: MIT
#include <cstdio>

int expecting();
#ifdef BOTH
int throwing();
#else
static int throwing() { return 0; }
#endif

int main()
{
    const int wrong = expecting() + throwing();
    std::printf("%d wrong\n", wrong);
    return wrong != 0;
}
