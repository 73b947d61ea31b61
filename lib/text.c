/* text.c - text written piece by piece into a buffer.
 *
 * SPDX-License-Identifier: MIT
 *
 * Every buffer is the library's own and longer than its longest text today. The two checks against its end keep a
 * longer sentence of tomorrow from running over; no call reaches them, so they are excepted from coverage. */
#include "inside.h"

static void put_byte(struct msl_text *text, char byte)
{
    if (text->used < text->cap) /* UNREACHED: see above */
        text->buf[text->used] = byte;
    text->used++;
}

void msl_put(struct msl_text *text, const char *words)
{
    for (size_t i = 0; words[i] != 0; i++)
        put_byte(text, words[i]);
}

void msl_put_unsigned(struct msl_text *text, uint64_t number)
{
    char digits[20];
    int count = 0;
    do {
        digits[count] = (char)('0' + (int)(number % 10));
        number /= 10;
        count++;
    } while (number != 0);
    while (count > 0) {
        count--;
        put_byte(text, digits[count]);
    }
}

void msl_put_signed(struct msl_text *text, int64_t number)
{
    if (number < 0)
        put_byte(text, '-');
    msl_put_unsigned(text, number < 0 ? (uint64_t)0 - (uint64_t)number : (uint64_t)number);
}

void msl_put_end(struct msl_text *text)
{
    size_t end = text->used < text->cap ? text->used : text->cap - 1; /* UNREACHED: see above */
    text->buf[end] = 0;
}
