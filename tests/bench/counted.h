/* counted.h - an allocator that counts what is held.
 *
 * SPDX-License-Identifier: MIT */
#ifndef COUNTED_H
#define COUNTED_H

#include <muslin/muslin.h>

#include <stddef.h>

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
