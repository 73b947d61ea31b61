/* reference.c - tables to start from, each row with its source.
 *
 * SPDX-License-Identifier: MIT
 *
 * Names and sources lie in one constant struct each, found by 16-bit offsets, as in base.c. */
#include "muslin/reference.h"

#include "inside.h"

#define INCHES(whole) ((whole) * MUSLIN_TICKS_PER_INCH)
#define CENTIMETRES(whole) ((whole) * 10 * MUSLIN_TICKS_PER_MM)
/* Cut width of the strips in a bundle. */
#define TWO_AND_A_HALF (INCHES(5) / 2)

#define SOURCES(X) \
    X(practice, "common practice, no source") \
    X(memory, "from memory, no source") \
    X(two_charts, "Quilt sizes 101 (public article); Quilt size measurements (quilting magazine, 2013)") \
    X(basics, "Quilting basics: standard quilt sizes (public blog, 2012)") \
    X(conversion, "Fat quarter conversion (public forum)") \
    X(ten_inch, "Cutting up a 10 inch square (teacher's blog): 40 to 44 in a bundle") \
    X(measurements, "Measurements page (C. A. Taylor); Fat quarter conversion (public forum)") \
    X(use_40, "Binding math (public forum)") \
    X(use_42, "Double fold flange quilt binding (designer's blog, 2019)") \
    X(use_44, "52 4-inch and 20 3-inch squares (public forum)")

/* X(member, source, name, width, length, count) */
#define BATTING(X) \
    X(craft, basics, "craft", INCHES(34), INCHES(45), 0) \
    X(crib, two_charts, "crib", INCHES(45), INCHES(60), 0) \
    X(throw_size, memory, "throw", INCHES(60), INCHES(60), 0) \
    X(twin, memory, "twin", INCHES(72), INCHES(90), 0) \
    X(full, two_charts, "full", INCHES(81), INCHES(96), 0) \
    X(queen, memory, "queen", INCHES(90), INCHES(108), 0) \
    X(king, two_charts, "king", INCHES(120), INCHES(120), 0)

#define PRECUTS(X) \
    X(strips_40, conversion, "2 1/2 in strips, bundle of 40", INCHES(40), TWO_AND_A_HALF, 40) \
    X(strips_42, conversion, "2 1/2 in strips, bundle of 42", INCHES(40), TWO_AND_A_HALF, 42) \
    X(fives_42, conversion, "5 in squares, bundle of 42", INCHES(5), INCHES(5), 42) \
    X(tens_40, ten_inch, "10 in squares, bundle of 40", INCHES(10), INCHES(10), 40) \
    X(tens_42, memory, "10 in squares, bundle of 42", INCHES(10), INCHES(10), 42) \
    X(tens_44, ten_inch, "10 in squares, bundle of 44", INCHES(10), INCHES(10), 44) \
    X(quarter, measurements, "fat quarter", INCHES(22), INCHES(18), 1) \
    X(quarter_narrow, measurements, "fat quarter, narrow", INCHES(20), INCHES(18), 1) \
    X(quarter_metric, practice, "fat quarter, metric", CENTIMETRES(55), CENTIMETRES(50), 1) \
    X(eighth, practice, "fat eighth", INCHES(22), INCHES(9), 1) \
    X(eighth_narrow, practice, "fat eighth, narrow", INCHES(20), INCHES(9), 1)

#define FABRIC_WIDTHS(X) \
    X(cotton_40, use_40, "quilting cotton, careful", INCHES(40), 0, 0) \
    X(cotton_42, use_42, "quilting cotton, usual", INCHES(42), 0, 0) \
    X(cotton_44, use_44, "quilting cotton, generous", INCHES(44), 0, 0) \
    X(wide_54, practice, "wide goods, 54 in", INCHES(54), 0, 0) \
    X(wide_60, practice, "wide goods, 60 in", INCHES(60), 0, 0) \
    X(wide_90, practice, "wide backing, 90 in", INCHES(90), 0, 0) \
    X(wide_108, practice, "wide backing, 108 in", INCHES(108), 0, 0)

#define SOURCE_MEMBER(member, words) char member[sizeof words];
#define SOURCE_WORDS(member, words) words,
#define NAME_MEMBER(member, source, words, width, length, count) char member[sizeof words];
#define NAME_WORDS(member, source, words, width, length, count) words,

struct source_texts {
    SOURCES(SOURCE_MEMBER)
};
struct name_texts {
    BATTING(NAME_MEMBER)
    PRECUTS(NAME_MEMBER)
    FABRIC_WIDTHS(NAME_MEMBER)
};
static const struct source_texts sources = { SOURCES(SOURCE_WORDS) };
static const struct name_texts names = { BATTING(NAME_WORDS) PRECUTS(NAME_WORDS) FABRIC_WIDTHS(NAME_WORDS) };

struct row {
    int32_t width;
    int32_t length;
    uint16_t count;
    uint16_t name_at;
    uint16_t source_at;
};

#define ROW(member, source, words, width, length, count) \
    { width, length, count, (uint16_t)offsetof(struct name_texts, member), \
      (uint16_t)offsetof(struct source_texts, source) },

/* All tables in one array, and where each begins and ends in it: an array of arrays would hold addresses. */
static const struct row rows[] = { BATTING(ROW) PRECUTS(ROW) FABRIC_WIDTHS(ROW) };

#define ONE(member, source, words, width, length, count) + 1
enum {
    PRECUTS_AT = 0 BATTING(ONE),
    FABRIC_WIDTHS_AT = PRECUTS_AT PRECUTS(ONE),
    ROWS_END = FABRIC_WIDTHS_AT FABRIC_WIDTHS(ONE)
};
static const uint8_t table_at[] = { 0, PRECUTS_AT, FABRIC_WIDTHS_AT, ROWS_END };

/* An unknown table has no rows. */
static int64_t rows_of(int32_t table)
{
    if (table < MUSLIN_TABLE_BATTING || table > MUSLIN_TABLE_FABRIC_WIDTH)
        return 0;
    return table_at[table] - table_at[table - 1];
}

static const struct row *find_row(int32_t table, int64_t index)
{
    if (index < 0 || index >= rows_of(table))
        return NULL;
    return &rows[table_at[table - 1] + index];
}

static void want_table(struct msl_check *check, int32_t table)
{
    msl_want_choice(check, MUSLIN_ARG_TABLE, table, MUSLIN_TABLE_BATTING, MUSLIN_TABLE_FABRIC_WIDTH);
}

muslin_status muslin_reference_count(int32_t table, int64_t *out)
{
    struct msl_check check = msl_check_start(NULL);
    msl_want_pointer(&check, MUSLIN_ARG_OUTPUT, out);
    want_table(&check, table);
    if (check.status == MUSLIN_OK)
        *out = rows_of(table);
    return check.status;
}

muslin_status muslin_reference_row(int32_t table, int64_t index, struct muslin_reference *out,
                                   struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    msl_want_output(&check, out, (uint32_t)sizeof *out);
    want_table(&check, table);
    if (check.status != MUSLIN_OK)
        return check.status;
    const struct row *row = find_row(table, index);
    if (row == NULL)
        return msl_fail(&check, MUSLIN_ERR_INDEX, MUSLIN_ARG_INDEX, index, rows_of(table) - 1);
    struct muslin_reference found = { 0, 0, row->width, row->length, row->count };
    msl_write_struct(out, &found, (uint32_t)sizeof found);
    return MUSLIN_OK;
}

const char *muslin_reference_name(int32_t table, int64_t index)
{
    const struct row *row = find_row(table, index);
    return row == NULL ? "" : (const char *)&names + row->name_at;
}

const char *muslin_reference_source(int32_t table, int64_t index)
{
    const struct row *row = find_row(table, index);
    return row == NULL ? "" : (const char *)&sources + row->source_at;
}
