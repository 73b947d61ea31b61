/* text.c - text written piece by piece into a buffer.
 *
 * SPDX-License-Identifier: MIT
 *
 * Every buffer is the library's own and longer than its longest text today. The two checks against its end keep a
 * longer sentence of tomorrow from running over; no call reaches them, so they are excepted from coverage. */
#include "inside.h"

void msl_put(struct msl_text *text, const char *words)
{
    size_t used = text->used;
    for (size_t i = 0; words[i] != 0; i++, used++)
        if (used < text->cap) /* UNREACHED: see above */
            text->buf[used] = words[i];
    text->used = used;
}

void msl_put_unsigned(struct msl_text *text, uint64_t number)
{
    char digits[21];
    char *first = digits + sizeof digits - 1;
    *first = 0;
    do {
        first--;
        *first = (char)('0' + (int)(number % 10));
        number /= 10;
    } while (number != 0);
    msl_put(text, first);
}

void msl_put_signed(struct msl_text *text, int64_t number)
{
    if (number < 0)
        msl_put(text, "-");
    msl_put_unsigned(text, number < 0 ? (uint64_t)0 - (uint64_t)number : (uint64_t)number);
}

void msl_put_end(struct msl_text *text)
{
    size_t end = text->used < text->cap ? text->used : text->cap - 1; /* UNREACHED: see above */
    text->buf[end] = 0;
}
