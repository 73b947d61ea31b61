/* pieces.c - rows of a list of pieces read.
 *
 * SPDX-License-Identifier: MIT */
#include "pieces.h"

#include <errno.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

/* "20 of ": what comes behind it, or null. */
const char *read_count(const char *text, int64_t *count)
{
    char *end;
    errno = 0;
    long long number = strtoll(text, &end, 10);
    if (end == text || errno != 0 || number < 0 || number > MUSLIN_COUNT_MAX || strncmp(end, " of ", 4) != 0)
        return NULL;
    *count = number;
    return end + 4;
}

/* The unit that ends a text, such as " cm"; empty when it ends with a figure. */
static const char *unit_behind(const char *text, size_t length)
{
    size_t start = length;
    while (start > 0 && (text[start - 1] < '0' || text[start - 1] > '9'))
        start--;
    return text + start;
}

bool ends_with(const char *text, size_t *length, const char *word)
{
    size_t letters = strlen(word);
    if (*length <= letters || strncmp(text + *length - letters, word, letters) != 0)
        return false;
    *length -= letters;
    return true;
}

/* "4 x 6 cm" is 4 cm by 6 cm: a size without a unit has that of the one behind it. */
bool read_sizes(struct desk *desk, const char *option, const char *text, size_t length, muslin_len *across,
                muslin_len *along)
{
    char first[100];
    const char *by = strstr(text, " x ");
    if (by == NULL || by >= text + length) {
        bool good = read_length(desk, option, text, length, across);
        *along = *across;
        return good;
    }
    const char *second = by + 3;
    size_t second_length = length - (size_t)(second - text);
    const char *unit = unit_behind(second, second_length);
    bool bare = unit_behind(text, (size_t)(by - text)) == by;
    int unit_length = bare ? (int)(second + second_length - unit) : 0;
    snprintf(first, sizeof first, "%.*s%.*s", (int)(by - text), text, unit_length, unit);
    return read_length(desk, option, first, strlen(first), across) &&
           read_length(desk, option, second, second_length, along);
}

bool is_other_word(const struct desk *desk)
{
    return desk->problem.status == MUSLIN_ERR_TEXT_TRAILING || desk->problem.status == MUSLIN_ERR_TEXT_UNIT;
}
