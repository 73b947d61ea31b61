/* measure.h - what the benches measure with: time of the processor, and memory held. Include it first.
 *
 * SPDX-License-Identifier: MIT */
#ifndef MEASURE_H
#define MEASURE_H

#define _POSIX_C_SOURCE 199309L
#include <stddef.h>
#include <time.h>

#include <muslin/muslin.h>

/* In milliseconds that this program computed: what else the machine does changes little. */
static double now(void)
{
    struct timespec time;
    clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &time);
    return (double)time.tv_sec * 1e3 + (double)time.tv_nsec / 1e6;
}

/* An allocator that counts. */
struct counted {
    struct muslin_allocator libc;
    size_t calls;
    size_t held;
    size_t most;
};

static void note(struct counted *counted, size_t more, size_t less)
{
    counted->calls++;
    counted->held += more;
    counted->held -= less;
    if (counted->held > counted->most)
        counted->most = counted->held;
}

static void *counted_alloc(void *context, size_t size)
{
    struct counted *counted = context;
    note(counted, size, 0);
    return counted->libc.alloc(NULL, size);
}

static void *counted_realloc(void *context, void *block, size_t old_size, size_t size)
{
    struct counted *counted = context;
    note(counted, size, old_size);
    return counted->libc.realloc(NULL, block, old_size, size);
}

static void counted_free(void *context, void *block, size_t size)
{
    struct counted *counted = context;
    counted->held -= size;
    counted->libc.free(NULL, block, size);
}

#endif
