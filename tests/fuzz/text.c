/* text.c - lengths out of any text and back: what is written of what was read says the same.
 *
 * SPDX-License-Identifier: MIT */
#include <stdlib.h>
#include <string.h>

#include "draw.h"

int LLVMFuzzerTestOneInput(const uint8_t *data, size_t size);

enum { LONGEST = 64 }; /* what the header promises of texts that are written */

static void read_back(const char *text, size_t bytes, const struct muslin_format_spec *writing, muslin_len length)
{
    static const int32_t unit[] = { 0, MUSLIN_LENGTH_UNIT_INCH, MUSLIN_LENGTH_UNIT_INCH, MUSLIN_LENGTH_UNIT_YARD,
                                    MUSLIN_LENGTH_UNIT_MM, MUSLIN_LENGTH_UNIT_CM };
    struct muslin_parse_spec reading = MUSLIN_PARSE_SPEC_INIT;
    struct muslin_parsed parsed = { .size = sizeof parsed };
    reading.default_unit = unit[writing->style];
    reading.decimal_sign = writing->decimal_sign;
    MUST(muslin_length_parse(text, bytes, &reading, &parsed, NULL) == MUSLIN_OK);
    MUST(parsed.value == length && parsed.exact == 1);
}

/* Written in a way that is drawn; exact when the style's grid holds the length. */
static void write_out(struct input *input, muslin_len length)
{
    struct muslin_format_spec writing = MUSLIN_FORMAT_SPEC_INIT;
    size_t need = 0, need_again = 0;
    int32_t exact = -1;
    writing.flags = draw_below(input, 4);
    writing.style = 1 + (int32_t)draw_below(input, 5);
    writing.denominator = 1 + (int32_t)draw_below(input, 64);
    writing.decimals = (int32_t)draw_below(input, 7);
    writing.decimal_sign = draw_below(input, 2) == 0 ? '.' : ',';
    writing.direction = 1 + (int32_t)draw_below(input, 3);
    MUST(muslin_length_format(length, &writing, NULL, 0, &need, &exact, NULL) == MUSLIN_OK);
    MUST(need > 1 && need < LONGEST && (exact == 0 || exact == 1));
    char *text = malloc(need);
    MUST(text != NULL);
    memset(text, 1, need);
    MUST(muslin_length_format(length, &writing, text, need - 1, &need_again, NULL, NULL) == MUSLIN_ERR_BUFFER);
    MUST(need_again == need && text[0] == 1);
    MUST(muslin_length_format(length, &writing, text, need, NULL, NULL, NULL) == MUSLIN_OK);
    MUST(strlen(text) == need - 1);
    if (exact == 1)
        read_back(text, need - 1, &writing, length);
    free(text);
}

/* A fault lies within the text, and is told by one of the statuses of text. */
static void check_fault(muslin_status status, const struct muslin_problem *problem, size_t bytes)
{
    MUST((status >= MUSLIN_ERR_TEXT_EMPTY && status <= MUSLIN_ERR_TEXT_ENCODING) || status == MUSLIN_ERR_OVERFLOW);
    MUST(problem->status == status && problem->argument == MUSLIN_ARG_TEXT);
    MUST(problem->at >= 0 && problem->bytes >= 0 && problem->at + problem->bytes <= (int64_t)bytes);
}

int LLVMFuzzerTestOneInput(const uint8_t *data, size_t size)
{
    struct input input = { data, size < 8 ? size : 8 };
    struct muslin_parse_spec reading = MUSLIN_PARSE_SPEC_INIT;
    struct muslin_parsed parsed = { .size = sizeof parsed }, negative = { .size = sizeof negative };
    struct muslin_problem problem = { .size = sizeof problem };
    reading.default_unit = 1 + (int32_t)draw_below(&input, 6);
    reading.decimal_sign = draw_below(&input, 2) == 0 ? '.' : ',';
    const size_t bytes = size < 8 ? 0 : size - 8;
    char *text = malloc(bytes);
    if (bytes > 0)
        memcpy(text, data + 8, bytes);
    const muslin_status status = muslin_length_parse(text, bytes, &reading, &parsed, &problem);
    if (status == MUSLIN_OK) {
        MUST(parsed.value >= -MUSLIN_LENGTH_MAX && parsed.value <= MUSLIN_LENGTH_MAX);
        MUST(parsed.unit >= MUSLIN_LENGTH_UNIT_INCH && parsed.unit <= MUSLIN_LENGTH_UNIT_M);
        write_out(&input, parsed.value);
    } else
        check_fault(status, &problem, bytes);
    free(text);

    /* The same behind a minus: there it is refused, or the negative, up to a tie. */
    text = malloc(bytes + 1);
    MUST(text != NULL);
    text[0] = '-';
    if (bytes > 0)
        memcpy(text + 1, data + 8, bytes);
    if (muslin_length_parse(text, bytes + 1, &reading, &negative, NULL) == MUSLIN_OK) {
        MUST(status == MUSLIN_OK);
        MUST(negative.value == -parsed.value || (parsed.exact == 0 && negative.value == -parsed.value + 1));
    }
    free(text);
    return 0;
}
