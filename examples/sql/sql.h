/* sql.h - what the files of the SQLite extension share: values read, answers given, functions that give tables.
 *
 * SPDX-License-Identifier: MIT */
#ifndef SQL_H
#define SQL_H

#include <stdbool.h>
#include <stddef.h>

#include <jansson.h>
#include <muslin/muslin.h>
#include <sqlite3ext.h>

struct word;

/* ---- what is wrong ----------------------------------------------------------------------------------------------- */

/* The sentence that becomes the SQL error: the first one counts. */
struct trouble {
    bool is_there;
    char *sentence; /* of sqlite3_mprintf(); null when there was no memory for it, or for the work */
};

/* Says it, unless something has been said; returns false. */
bool trouble_say(struct trouble *trouble, const char *format, ...);
/* The same when memory runs out. */
bool trouble_memory(struct trouble *trouble);
/* Whether the library did what was asked; says its sentence if it did not. */
bool was_answered(struct trouble *trouble, muslin_status status, const struct muslin_problem *problem);

/* ---- values: values.c -------------------------------------------------------------------------------------------- */

/* Each says what is wrong with a value of the wrong type or content, naming it `what`. A length is whole ticks or a
 * text with its unit; a count is a whole number; a word is one of a list. */
bool length_from(struct trouble *trouble, const char *what, sqlite3_value *value, muslin_len *length);
bool count_from(struct trouble *trouble, const char *what, sqlite3_value *value, int64_t *count);
bool word_from(struct trouble *trouble, const char *what, sqlite3_value *value, const struct word *words,
               int32_t *chosen);
bool text_from(struct trouble *trouble, const char *what, sqlite3_value *value, const char **text, size_t *length);
/* The same of what may be left out: of a null pointer nothing is read. */
bool length_if(struct trouble *trouble, const char *what, sqlite3_value *value, muslin_len *length);
bool count_if(struct trouble *trouble, const char *what, sqlite3_value *value, int64_t *count);
/* Whether a text was read as a length; says the library's sentence of `what` if it was not. */
bool length_was_read(struct trouble *trouble, const char *what, muslin_status status,
                     const struct muslin_problem *problem);
/* A length that is a text of so many bytes. */
bool length_from_text(struct trouble *trouble, const char *what, const char *text, size_t length, muslin_len *out);

/* ---- functions that give one value: functions.c ------------------------------------------------------------------ */

int add_functions(sqlite3 *database);

/* ---- functions that give a table: tables.c ----------------------------------------------------------------------- */

/* The rows of an answer, cell by cell. */
struct cell {
    char *text; /* null: a number, or nothing */
    int64_t number;
    bool is_nothing;
};
struct answer {
    struct cell *cells;
    size_t used;
    size_t room;
    bool out_of_memory;
};
void put_number(struct answer *answer, int64_t number);
void put_text(struct answer *answer, const char *text); /* null: nothing */
void put_nothing(struct answer *answer);

/* One such function. Its arguments are the hidden columns, which follow those shown. */
struct table_function {
    const char *name;
    const char *columns; /* as CREATE TABLE has them */
    const char *usage;   /* an example, for who leaves out what is required */
    int shown;
    int arguments;
    int required;
    bool innocuous; /* may be used in views and triggers of a database that one does not trust */
    /* Arguments that are not given are null; none is an SQL NULL. */
    bool (*fill)(struct trouble *trouble, sqlite3_value **arguments, struct answer *answer);
};
int add_table(sqlite3 *database, const struct table_function *table);

extern const struct table_function unit_table;            /* table_unit.c */
extern const struct table_function backing_table;         /* table_backing.c */
extern const struct table_function cutplan_table;         /* table_cutplan.c */
extern const struct table_function pattern_table;         /* table_pattern.c */
extern const struct table_function pattern_fabrics_table; /* ... */
extern const struct table_function pattern_sets_table;    /* ... */
extern const struct table_function pattern_cuts_table;    /* ... */
extern const struct table_function pattern_facts_table;   /* ... */

#endif
