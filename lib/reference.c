/* reference.c - tables to start from, each row with its source.
 *
 * SPDX-License-Identifier: MIT
 *
 * Names, sources and notes lie in one constant struct each, found by 16-bit offsets, as in base.c. */
#include "muslin/reference.h"

#include "inside.h"
#include "reference_rows.h"

#define WORDS_MEMBER(member, words) char member[sizeof words];
#define WORDS(member, words) words,
#define NAME_MEMBER(member, source, note, words, width, length, count) char member[sizeof words];
#define NAME_WORDS(member, source, note, words, width, length, count) words,
#define ROWS(table, X) table(X)

struct source_texts {
    SOURCES(WORDS_MEMBER)
};
struct note_texts {
    NOTES(WORDS_MEMBER)
};
struct name_texts {
    TABLES(ROWS, NAME_MEMBER)
};
static const struct source_texts sources = { SOURCES(WORDS) };
static const struct note_texts notes = { NOTES(WORDS) };
static const struct name_texts names = { TABLES(ROWS, NAME_WORDS) };

struct row {
    int32_t width;
    int32_t length;
    uint16_t count;
    uint16_t name_at;
    uint16_t source_at;
    uint16_t note_at;
};

#define ROW(member, source, note, words, width, length, count) \
    { width, length, count, (uint16_t)offsetof(struct name_texts, member), \
      (uint16_t)offsetof(struct source_texts, source), (uint16_t)offsetof(struct note_texts, note) },

/* All tables in one array, and how many rows each has: an array of arrays would hold addresses. */
static const struct row rows[] = { TABLES(ROWS, ROW) };

#define ONE(member, source, note, words, width, length, count) + 1
#define COUNT_OF(table, X) 0 table(X),
static const uint8_t counts[] = { TABLES(COUNT_OF, ONE) };

enum { TABLE_LAST = sizeof counts / sizeof counts[0] };

/* An unknown table has no rows. */
static int64_t rows_of(int32_t table)
{
    return table < MUSLIN_TABLE_BATTING || table > TABLE_LAST ? 0 : counts[table - 1];
}

static const struct row *find_row(int32_t table, int64_t index)
{
    const struct row *row = rows;
    if (index < 0 || index >= rows_of(table))
        return NULL;
    for (int32_t before = 0; before < table - 1; before++)
        row += counts[before];
    return row + index;
}

static void want_table(struct msl_check *check, int32_t table)
{
    msl_want_choice(check, MUSLIN_ARG_TABLE, table, MUSLIN_TABLE_BATTING, TABLE_LAST);
}

muslin_status muslin_reference_count(int32_t table, int64_t *out, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
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
    struct muslin_reference found = { .width = row->width, .length = row->length, .count = row->count };
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

const char *muslin_reference_note(int32_t table, int64_t index)
{
    const struct row *row = find_row(table, index);
    return row == NULL ? "" : (const char *)&notes + row->note_at;
}
