/* allocator_libc.c - the C library's allocator. The only object that imports malloc, realloc and free.
 *
 * SPDX-License-Identifier: MIT */
#include <stdlib.h>

#include "inside.h"

static void *libc_alloc(void *context, size_t size)
{
    (void)context;
    return malloc(size);
}

static void *libc_realloc(void *context, void *block, size_t old_size, size_t size)
{
    (void)context;
    (void)old_size;
    return realloc(block, size);
}

static void libc_free(void *context, void *block, size_t size)
{
    (void)context;
    (void)size;
    free(block);
}

muslin_status muslin_allocator_libc(struct muslin_allocator *out)
{
    if (out == NULL)
        return MUSLIN_ERR_NULL;
    out->alloc = libc_alloc;
    out->realloc = libc_realloc;
    out->free = libc_free;
    out->context = NULL;
    return MUSLIN_OK;
}
