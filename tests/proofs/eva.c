/* eva.c - every length in every style, every struct of up to 48 bytes, every text of up to 4096 and every refusal of
 * one, for Frama-C's Eva: the formatter, the reader of sized structs and what stands around the parser have no run-time
 * error, and read and write nothing beside what they are given.
 *
 * SPDX-License-Identifier: MIT */
#include <__fc_builtin.h>

#include "inside.h"

enum { TEXT_MOST = 32, READ_MOST = 4096, STRUCT_MOST = 48 };

static size_t any_up_to(int most)
{
    return (size_t)Frama_C_interval(0, most);
}

/* With a spec of any values that are taken; with a problem and without. */
void format_any_length(void)
{
    char buffer[TEXT_MOST];
    struct muslin_format_spec spec = MUSLIN_FORMAT_SPEC_INIT;
    struct muslin_problem problem = { sizeof problem };
    size_t need;
    int32_t exact;
    int64_t length = Frama_C_long_long_interval(-MUSLIN_LENGTH_MAX, MUSLIN_LENGTH_MAX);
    spec.flags = (uint32_t)Frama_C_interval(0, MUSLIN_FORMAT_UNICODE | MUSLIN_FORMAT_BARE);
    spec.style = Frama_C_interval(MUSLIN_STYLE_INCH_FRACTION, MUSLIN_STYLE_CM);
    spec.denominator = Frama_C_interval(1, 64);
    spec.decimals = Frama_C_interval(0, 6);
    /*@ split spec.decimals; */
    /*@ split spec.style; */
    spec.decimal_sign = Frama_C_interval(0, 1) ? '.' : ',';
    spec.direction = Frama_C_interval(MUSLIN_DIRECTION_UP, MUSLIN_DIRECTION_NEAREST);
    muslin_length_format(length, &spec, buffer, any_up_to(TEXT_MOST), &need, &exact,
                         Frama_C_interval(0, 1) ? &problem : NULL);
}

/* A struct of any size at all, in memory of any bytes, read into one that is known by 24. */
void read_any_struct(void)
{
    char theirs[STRUCT_MOST];
    unsigned char ours[24];
    struct muslin_problem problem = { sizeof problem };
    struct msl_check check = msl_check_start(&problem);
    Frama_C_make_unknown(theirs, sizeof theirs);
    *(uint32_t *)theirs = (uint32_t)Frama_C_interval(0, STRUCT_MOST);
    msl_read_struct(&check, MUSLIN_ARG_SPEC, ours, sizeof ours, 16, 3, theirs);
}

/* A text of any bytes, up to READ_MOST of them. What reads and refuses it is taken at its word, which WP proves. */
void parse_any_text(void)
{
    char text[READ_MOST];
    struct muslin_parse_spec spec = MUSLIN_PARSE_SPEC_INIT;
    struct muslin_parsed parsed = { sizeof parsed };
    struct muslin_problem problem = { sizeof problem };
    Frama_C_make_unknown(text, sizeof text);
    spec.default_unit = Frama_C_interval(MUSLIN_LENGTH_UNIT_INCH, MUSLIN_LENGTH_UNIT_M);
    spec.decimal_sign = Frama_C_interval(0, 1) ? '.' : ',';
    muslin_length_parse(text, any_up_to(READ_MOST), Frama_C_interval(0, 1) ? &spec : NULL, &parsed,
                        Frama_C_interval(0, 1) ? &problem : NULL);
}

/* A refusal of any of a text's bytes, as the parser tells them. */
void refuse_any_text(void)
{
    char text[TEXT_MOST];
    struct muslin_problem problem = { sizeof problem };
    struct msl_check check = msl_check_start(Frama_C_interval(0, 1) ? &problem : NULL);
    muslin_status status = Frama_C_interval(MUSLIN_ERR_TEXT_EMPTY, MUSLIN_ERR_TEXT_ENCODING);
    int length = Frama_C_interval(0, TEXT_MOST);
    /*@ split status; */
    /*@ split length; */
    Frama_C_make_unknown(text, sizeof text);
    check.at = Frama_C_interval(0, TEXT_MOST - length);
    msl_fail_text(&check, status, text, length);
}
