/* random_calls.c - the SQLite extension asked at random: values of all types, in all numbers, and broken texts.
 *
 * SPDX-License-Identifier: MIT
 *
 * random_calls EXTENSION SEED CALLS PATTERN. Both are built with sanitizers. Each call must answer, or fail with a
 * sentence that names the function, or for want of memory. Prints how many did either, for each function. */
#include <inttypes.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include <sqlite3.h>

/* ---- chance ------------------------------------------------------------------------------------------------------ */

static uint64_t state;

static uint32_t below(uint32_t limit)
{
    state = state * UINT64_C(6364136223846793005) + UINT64_C(1442695040888963407);
    return (uint32_t)(state >> 33) % limit;
}

/* ---- what is asked ----------------------------------------------------------------------------------------------- */

struct asked {
    const char *name;
    int least;
    int most;
    int is_table;
    int work_limit; /* its place among the arguments, from 1; 0: none */
};

static const struct asked asked[] = {
    { "muslin_version", 0, 0, 0, 0 },        { "muslin_length", 1, 2, 0, 0 },
    { "muslin_length_exact", 1, 2, 0, 0 },   { "muslin_text", 1, 4, 0, 0 },
    { "muslin_rounded", 2, 3, 0, 0 },        { "muslin_on_grid", 2, 2, 0, 0 },
    { "muslin_cut", 1, 3, 0, 0 },            { "muslin_unfinished", 1, 3, 0, 0 },
    { "muslin_finished", 1, 3, 0, 0 },       { "muslin_row_unfinished", 2, 4, 0, 0 },
    { "muslin_cut_resized", 3, 5, 0, 0 },    { "muslin_usable_width", 2, 2, 0, 0 },
    { "muslin_bought", 1, 2, 0, 0 },         { "muslin_cost", 2, 3, 0, 0 },
    { "muslin_per_strip", 2, 3, 0, 0 },      { "muslin_narrower_by", 2, 3, 0, 0 },
    { "muslin_strips", 3, 4, 0, 0 },         { "muslin_yield", 2, 5, 0, 0 },
    { "muslin_shorter_by", 2, 5, 0, 0 },     { "muslin_pattern_file", 1, 1, 0, 0 },
    { "muslin_text_exact", 1, 3, 0, 0 },
    { "muslin_unit", 2, 9, 1, 0 },           { "muslin_backing", 2, 7, 1, 0 },
    { "muslin_cutplan", 5, 5, 1, 5 },        { "muslin_pattern", 1, 2, 1, 0 },
    { "muslin_pattern_fabrics", 1, 2, 1, 0 }, { "muslin_pattern_sets", 1, 2, 1, 0 },
    { "muslin_pattern_cuts", 1, 2, 1, 0 },   { "muslin_pattern_facts", 1, 2, 1, 0 },
};
enum { FUNCTIONS = sizeof asked / sizeof asked[0] };

static char *pattern;
static size_t pattern_length;

static void bind_number(sqlite3_stmt *statement, int at)
{
    static const sqlite3_int64 known[] = { 0, 1, -1, 2032, 20320, 325120, 1 << 30, INT64_MAX, INT64_MIN, 8128, 64 };
    sqlite3_bind_int64(statement, at, below(2) != 0 ? known[below(11)] : (sqlite3_int64)below(400000));
}

static void bind_word(sqlite3_stmt *statement, int at)
{
    static const char *const words[] = {
        "2 1/2 in", "40 in", "6 mm", "1/4 in", "", "in", "mm", "yd", "up", "nearest", "half-square", "hexagon",
        "flying-geese", "pieces", "strips", "two-at-a-time", "lap", "queen", "1/0 in", "999999999999 yd", "2,5 cm",
        "one end",
        "[{\"count\": 20, \"width\": \"5 in\", \"height_ticks\": 9}]", "[]", "[1]", "{}", "[{\"width\": 1}]",
        "[{\"count\": 3, \"width\": \"5 in\", \"height\": \"60 in\", \"lengthwise\": 1}]", "\xff\xfe", "\xe2\x80\xb3",
        "[{\"count\": 9, \"width\": \"3 in\", \"height\": \"2 in\", \"turn\": true, \"name\": \"x\"}]", "snowball"
    };
    const char *word = words[below(sizeof words / sizeof words[0])];
    sqlite3_bind_text(statement, at, word, below(8) == 0 ? (int)strlen(word) + 1 : -1, SQLITE_TRANSIENT);
}

/* Up to a megabyte of one byte, or of digits. */
static void bind_huge(sqlite3_stmt *statement, int at, int is_text)
{
    const size_t length = below(1 << 20);
    char *bytes = malloc(length + 1);
    memset(bytes, is_text ? "1 /[\"\xc2"[below(6)] : (int)below(256), length + 1);
    if (is_text)
        sqlite3_bind_text(statement, at, bytes, (int)length, free);
    else
        sqlite3_bind_blob(statement, at, bytes, (int)length, free);
}

/* The sample pattern with some of its bytes changed, or some lost; one time in four as it is. */
static void bind_pattern(sqlite3_stmt *statement, int at)
{
    static const char bytes[] = "0123456789{}[]\",:abz -/.\\\xc3\0";
    char *copy = malloc(pattern_length + 1);
    size_t length = pattern_length;
    memcpy(copy, pattern, length);
    for (uint32_t i = below(4); i > 0; i--)
        copy[below((uint32_t)length)] = bytes[below(sizeof bytes)];
    if (below(8) == 0)
        length = below((uint32_t)length);
    sqlite3_bind_text(statement, at, copy, (int)length, free);
}

static void bind(sqlite3_stmt *statement, int at)
{
    switch (below(12)) {
    case 0:
        sqlite3_bind_null(statement, at);
        break;
    case 1:
        sqlite3_bind_double(statement, at, below(2) != 0 ? 2.5 : -1e300);
        break;
    case 2:
        bind_huge(statement, at, (int)below(2));
        break;
    case 3:
        bind_pattern(statement, at);
        break;
    case 4:
    case 5:
    case 6:
    case 7:
        bind_number(statement, at);
        break;
    default:
        bind_word(statement, at);
    }
}

/* ---- a call ------------------------------------------------------------------------------------------------------ */

static int fail(sqlite3 *database, const char *sql, const char *why)
{
    printf("%s: %s: %s\n", sql, why, sqlite3_errmsg(database));
    exit(1);
}

/* Most values are refused, so that what makes an answer likely is put in here and there. */
static sqlite3_stmt *prepared(sqlite3 *database, const struct asked *function)
{
    static const char *const kinds[] = { "half-square", "hexagon", "kaleidoscope", "octagon", "triangle-60" };
    char sql[200];
    const int given = function->least + (int)below((uint32_t)(function->most - function->least + 1));
    int used = snprintf(sql, sizeof sql, "SELECT %s%s(", function->is_table ? "* FROM " : "", function->name);
    sqlite3_stmt *statement = NULL;
    for (int i = 0; i < given; i++)
        used += snprintf(sql + used, sizeof sql - (size_t)used, i == 0 ? "?" : ", ?");
    snprintf(sql + used, sizeof sql - (size_t)used, ")");
    if (sqlite3_prepare_v2(database, sql, -1, &statement, NULL) != SQLITE_OK)
        fail(database, sql, "not prepared");
    for (int i = 1; i <= given; i++)
        bind(statement, i);
    if (strncmp(function->name, "muslin_pattern", 14) == 0 && function->is_table && below(3) != 0)
        bind_pattern(statement, 1);
    if (strcmp(function->name, "muslin_unit") == 0 && below(3) != 0) {
        sqlite3_bind_text(statement, 1, kinds[below(sizeof kinds / sizeof kinds[0])], -1, SQLITE_STATIC);
        sqlite3_bind_text(statement, 2, "6 in", -1, SQLITE_STATIC);
    }
    if (function->work_limit != 0)
        sqlite3_bind_int64(statement, function->work_limit, below(20000));
    return statement;
}

static int call(sqlite3 *database, const struct asked *function)
{
    sqlite3_stmt *statement = prepared(database, function);
    if (below(8) == 0) /* SQLite's memory runs out, sooner or later */
        sqlite3_hard_heap_limit64(sqlite3_memory_used() + 1 + below(30000));
    int status = sqlite3_step(statement);
    while (status == SQLITE_ROW) {
        for (int i = 0; i < sqlite3_column_count(statement); i++)
            sqlite3_column_text(statement, i);
        status = sqlite3_step(statement);
    }
    sqlite3_hard_heap_limit64(0);
    if (status == SQLITE_ERROR && strncmp(sqlite3_errmsg(database), function->name, strlen(function->name)) != 0)
        fail(database, sqlite3_sql(statement), "a sentence that does not name it");
    if (status != SQLITE_ERROR && status != SQLITE_DONE && status != SQLITE_NOMEM)
        fail(database, sqlite3_sql(statement), "neither an answer nor a sentence");
    sqlite3_finalize(statement);
    return status == SQLITE_DONE;
}

static void read_pattern(const char *path)
{
    enum { ROOM = 1 << 20 };
    FILE *file = fopen(path, "rb");
    pattern = malloc(ROOM);
    if (file == NULL || pattern == NULL)
        exit(2);
    pattern_length = fread(pattern, 1, ROOM, file);
    fclose(file);
}

int main(int count, char **words)
{
    int answered[FUNCTIONS] = { 0 };
    int refused[FUNCTIONS] = { 0 };
    sqlite3 *database = NULL;
    if (count != 5 || sqlite3_open(":memory:", &database) != SQLITE_OK)
        return 2;
    state = strtoull(words[2], NULL, 10);
    read_pattern(words[4]);
    sqlite3_db_config(database, SQLITE_DBCONFIG_ENABLE_LOAD_EXTENSION, 1, NULL);
    if (sqlite3_load_extension(database, words[1], NULL, NULL) != SQLITE_OK)
        fail(database, words[1], "not loaded");
    for (long calls = strtol(words[3], NULL, 10); calls > 0; calls--) {
        const uint32_t which = below(FUNCTIONS);
        (call(database, &asked[which]) ? answered : refused)[which]++;
    }
    for (int i = 0; i < FUNCTIONS; i++)
        printf("%s %d %d\n", asked[i].name, answered[i], refused[i]);
    sqlite3_close(database);
    free(pattern);
    return 0;
}
