/* bytes.c - a file that is being made, in memory.
 *
 * SPDX-License-Identifier: MIT */
#include "bytes.h"

#include <muslin/muslin.h>
#include <stdarg.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "pattern.h"

void bytes_add(struct bytes *bytes, const char *text, size_t length)
{
    if (bytes->room - bytes->used < length) {
        bytes->room = 2 * (bytes->room + length) + 4096;
        bytes->text = realloc(bytes->text, bytes->room);
        if (bytes->text == NULL)
            must(MUSLIN_ERR_NO_MEMORY);
    }
    if (length > 0)
        memcpy(bytes->text + bytes->used, text, length);
    bytes->used += length;
}

void bytes_say(struct bytes *bytes, const char *format, ...)
{
    char text[200];
    va_list arguments;
    va_start(arguments, format);
    int length = vsnprintf(text, sizeof text, format, arguments);
    va_end(arguments);
    bytes_add(bytes, text, (size_t)length < sizeof text ? (size_t)length : sizeof text - 1);
}

void bytes_free(struct bytes *bytes)
{
    free(bytes->text);
    *bytes = (struct bytes){ NULL, 0, 0 };
}

cairo_status_t bytes_take(void *bytes, const unsigned char *data, unsigned int length)
{
    bytes_add(bytes, (const char *)data, length);
    return CAIRO_STATUS_SUCCESS;
}
