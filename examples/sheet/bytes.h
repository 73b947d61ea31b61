/* bytes.h - a file that is being made, in memory.
 *
 * SPDX-License-Identifier: MIT */
#ifndef BYTES_H
#define BYTES_H

#include <cairo.h>
#include <stddef.h>

struct bytes {
    char *text;
    size_t used;
    size_t room;
};

void bytes_add(struct bytes *bytes, const char *text, size_t length);
void bytes_say(struct bytes *bytes, const char *format, ...) __attribute__((format(printf, 2, 3)));
void bytes_free(struct bytes *bytes);
/* For cairo's streams; `bytes` is a struct bytes. */
cairo_status_t bytes_take(void *bytes, const unsigned char *data, unsigned int length);

#endif
