/* handbook.h - a published figure as its CSV row gives it, and how a question reads its inputs and gives its answers.
 *
 * SPDX-License-Identifier: MIT */
#ifndef MUSLIN_HANDBOOK_H
#define MUSLIN_HANDBOOK_H

#include <check.h>
#include <muslin/muslin.h>
#include <stdio.h>
#include <string.h>

enum { TEXT_MAX = 1000, PAIRS_MAX = 16, FIGURES_MAX = 1000 };
enum column { ID, QUESTION, INPUTS, EXPECTED, KIND, SOURCE, ADDRESS, NOTE, COLUMNS };

struct pair {
    char *name;
    const char *relation;
    char *text;
    int used;
};

struct pairs {
    struct pair pair[PAIRS_MAX];
    int count;
};

struct figure {
    char cells[COLUMNS][TEXT_MAX];
    struct pairs inputs;
    struct pairs expected;
};

#define fail_figure(f, ...) \
    do { \
        char why[TEXT_MAX]; \
        snprintf(why, sizeof why, __VA_ARGS__); \
        ck_abort_msg("%s (%s): %s. Source: %s. Note: %s", (f)->cells[ID], (f)->cells[QUESTION], why, \
                     (f)->cells[SOURCE], (f)->cells[NOTE]); \
    } while (0)

/* ---- inputs ---------------------------------------------------------------------------------------------------- */

/* The text of an input, or null when the row has none of that name. */
const char *given(struct figure *f, const char *name);
/* The same, but the row must have it. */
const char *word(struct figure *f, const char *name);
muslin_len length(struct figure *f, const char *name);
muslin_len length_or(struct figure *f, const char *name, muslin_len otherwise);
int64_t count(struct figure *f, const char *name);
int64_t count_or(struct figure *f, const char *name, int64_t otherwise);
/* The place of an input among `words`, which ends with NULL; the library's choices count from 1. */
int32_t choice(struct figure *f, const char *name, const char *const *words);
/* The inputs grid, direction and, where given, tolerance. */
struct muslin_rounding_spec rounding_of(struct figure *f);

/* ---- answers --------------------------------------------------------------------------------------------------- */

/* Compares an answer with the row's expectations of that name, if there are any. */
void answer_length(struct figure *f, const char *name, muslin_len answer);
void answer_count(struct figure *f, const char *name, int64_t answer);
void answer_text(struct figure *f, const char *name, const char *answer);
void must(const struct figure *f, muslin_status status);

/* ---- questions ------------------------------------------------------------------------------------------------- */

struct question {
    const char *name; /* null ends a table */
    void (*ask)(struct figure *f);
};

#endif
