/* measure.h - the clock of the benches: time of the processor. Include it first.
 *
 * SPDX-License-Identifier: MIT */
#ifndef MEASURE_H
#define MEASURE_H

#define _POSIX_C_SOURCE 199309L
#include <time.h>

/* In milliseconds that this program computed: what else the machine does changes little. */
static double now(void)
{
    struct timespec time;
    clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &time);
    return (double)time.tv_sec * 1e3 + (double)time.tv_nsec / 1e6;
}

#endif
