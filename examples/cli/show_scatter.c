/* show_scatter.c - blocks scattered over a top, drawn as letters.
 *
 * SPDX-License-Identifier: MIT */
#include <string.h>

#include "look.h"
#include "memory.h"
#include "sheet.h"

#include <stdlib.h>

/* "   A B A" */
static void show_row(struct sheet *sheet, const char *row)
{
    size_t blocks = strlen(row);
    char *line = need_memory(2 * blocks + 2);
    for (size_t i = 0; i < blocks; i++) {
        line[2 * i] = ' ';
        line[2 * i + 1] = row[i];
    }
    line[2 * blocks] = '\0';
    sheet_line(sheet, line);
    free(line);
}

static bool is_one(json_t *answer, const char *member)
{
    return json_integer_value(json_object_get(answer, member)) == 1;
}

static void show_touching(struct sheet *sheet, json_t *answer)
{
    if (json_integer_value(json_object_get(answer, "touching_pairs")) == 0)
        sheet_say(sheet, answer, "No two blocks of one print touch along a side.");
    else if (json_is_true(json_object_get(answer, "certainly_the_fewest")))
        sheet_say(sheet, answer, is_one(answer, "touching_pairs")
                                     ? "{touching_pairs} pair of equal blocks touches; no layout has fewer."
                                     : "{touching_pairs} pairs of equal blocks touch; no layout has fewer.");
    else
        sheet_say(sheet, answer, is_one(answer, "touching_pairs")
                                     ? "{touching_pairs} pair of equal blocks touches. That is the best found; whether "
                                       "none need touch is not known."
                                     : "{touching_pairs} pairs of equal blocks touch. That is the best found; no layout "
                                       "has fewer than {no_layout_has_fewer_than}.");
}

void show_scatter(struct sheet *sheet, json_t *answer)
{
    size_t index;
    json_t *item;
    sheet_say(sheet, answer, "{blocks:block}, {columns} across and {rows} down:");
    sheet_gap(sheet);
    json_array_foreach(json_object_get(answer, "layout"), index, item)
        show_row(sheet, json_string_value(item));
    sheet_gap(sheet);
    show_touching(sheet, answer);
    sheet_gap(sheet);
    json_array_foreach(json_object_get(answer, "prints"), index, item)
        sheet_point(sheet, item, "{letter}: {used} of {in_hand:block}");
    sheet_gap(sheet);
    sheet_say(sheet, answer, "The same seed, {seed}, gives the same layout again; another --seed gives another.");
}
