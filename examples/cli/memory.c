/* memory.c - memory, or an end.
 *
 * SPDX-License-Identifier: MIT */
#define _POSIX_C_SOURCE 200809L
#include "memory.h"

#include <jansson.h>
#include <stdlib.h>

#include "command.h"

static void end_without_memory(void)
{
    fputs("muslin: There is no memory left.\n", stderr);
    exit(EXIT_FILE_TROUBLE);
}

void *need_memory(size_t size)
{
    void *memory = calloc(1, size != 0 ? size : 1);
    if (memory == NULL)
        end_without_memory();
    return memory;
}

FILE *open_text(char **text, size_t *length)
{
    FILE *stream = open_memstream(text, length);
    if (stream == NULL)
        end_without_memory();
    return stream;
}

void use_memory_for_json(void)
{
    json_set_alloc_funcs(need_memory, free);
}
