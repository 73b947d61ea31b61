/* questions_reference.c - what the handbook asks about the tables of reference.h.
 *
 * SPDX-License-Identifier: MIT */
#include "handbook.h"

extern const struct question questions_reference[];

/* A row of a table by its name. */
static void reference(struct figure *f)
{
    static const char *const tables[] = { "batting", "pre-cuts", "fabric widths", "mattresses", "cribs",
                                          "pillow tucks", "drops", "fractions of a yard", "stitches", "cautions",
                                          "other batting", NULL };
    int32_t table = choice(f, "table", tables);
    const char *name = word(f, "name");
    struct muslin_reference row = { .size = sizeof row };
    int64_t rows = 0;
    must(f, muslin_reference_count(table, &rows, NULL));
    for (int64_t i = 0; i < rows; i++) {
        if (strcmp(muslin_reference_name(table, i), name) != 0)
            continue;
        must(f, muslin_reference_row(table, i, &row, NULL));
        answer_length(f, "width", row.width);
        answer_length(f, "length", row.length);
        answer_count(f, "count", row.count);
        answer_text(f, "note", muslin_reference_note(table, i));
        return;
    }
    fail_figure(f, "there is no row \"%s\"", name);
}

const struct question questions_reference[] = {
    { "reference", reference },
    { NULL, NULL },
};
