/* show_design.c - a pattern file as the tests see it: what is wrong with it, and what its sizes come to.
 *
 * SPDX-License-Identifier: MIT
 *
 *   show_design FILE ...   one line of JSON a file
 *   show_design --lines    one line of JSON for each line of standard input, which is a file's text */
#define _POSIX_C_SOURCE 200809L
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "pattern.h"

static void set(json_t *object, const char *member, json_t *value)
{
    if (value == NULL || json_object_set_new(object, member, value) != 0) {
        fprintf(stderr, "show_design: \"%s\" cannot be said\n", member);
        exit(1);
    }
}

static void set_whole(json_t *object, const char *member, int64_t value)
{
    set(object, member, json_integer(value));
}

static void set_text(json_t *object, const char *member, const char *text)
{
    set(object, member, text != NULL ? json_string(text) : json_null());
}

static void add(json_t *list, json_t *value)
{
    if (json_array_append_new(list, value) != 0)
        exit(1);
}

static json_t *complaints_of(const struct complaints *complaints)
{
    json_t *list = json_array();
    for (size_t i = 0; i < complaints->used; i++) {
        const struct complaint *complaint = &complaints->rows[i];
        json_t *row = json_object();
        set_text(row, "place", complaint->place);
        set_whole(row, "line", complaint->line);
        set_whole(row, "column", complaint->column);
        set_text(row, "value", complaint->value);
        set_text(row, "sentence", complaint->sentence);
        set_whole(row, "status", complaint->status);
        add(list, row);
    }
    return list;
}

static json_t *cloths_of(const struct design *design)
{
    json_t *list = json_array();
    for (size_t i = 0; i < design->cloths_used; i++) {
        const struct cloth *cloth = &design->cloths[i];
        char colour[8];
        json_t *row = json_object();
        snprintf(colour, sizeof colour, "#%02x%02x%02x", cloth->colour[0], cloth->colour[1], cloth->colour[2]);
        set_text(row, "key", cloth->key);
        set_text(row, "name", cloth->name);
        set_text(row, "letter", cloth->letter);
        set_text(row, "color", colour);
        set_whole(row, "usable width", cloth->usable_width);
        set_whole(row, "strip cut", cloth->strip_cut);
        set_whole(row, "strips", cloth->strips_have);
        add(list, row);
    }
    return list;
}

static void size_of(json_t *row, const struct muslin_solution *solution, muslin_id node)
{
    struct muslin_node_size size = { .size = (uint32_t)sizeof size };
    if (muslin_solution_size(solution, node, &size, NULL) != MUSLIN_OK)
        return; /* not part of the top */
    set_whole(row, "width", size.finished_width);
    set_whole(row, "height", size.finished_height);
    set_whole(row, "count", size.count);
}

static json_t *names_of(const struct design *design, const struct muslin_solution *solution)
{
    json_t *list = json_array();
    for (size_t i = 0; i < design->names_used; i++) {
        const struct named *named = &design->names[i];
        json_t *row = json_object();
        set_text(row, "name", named->name);
        set_text(row, "place", named->place);
        set_whole(row, "side", named->side);
        set_whole(row, "log", named->log);
        set(row, "block", json_boolean(named->is_block));
        size_of(row, solution, named->id);
        add(list, row);
    }
    return list;
}

static json_t *borders_of(const struct design *design, const struct muslin_solution *solution)
{
    json_t *list = json_array();
    for (size_t i = 0; i < design->borders_used; i++) {
        const struct border_asked *border = &design->borders[i];
        json_t *row = json_object();
        set_text(row, "name", border->name);
        set_whole(row, "corners", border->corners);
        set_whole(row, "wide", border->width);
        size_of(row, solution, border->outside);
        add(list, row);
    }
    return list;
}

static void show_solved(json_t *row, const struct design *design, const struct muslin_solution *solution)
{
    struct muslin_solution_total totals = { .size = (uint32_t)sizeof totals };
    must(muslin_solution_totals(solution, &totals, NULL));
    size_of(row, solution, design->top);
    set_whole(row, "patches", totals.patches);
    set_whole(row, "misfits", totals.misfits);
    set_whole(row, "eased", totals.eased);
    set_whole(row, "strip sets", totals.stripsets);
    set_whole(row, "cuts", totals.cuts);
    set(row, "names", names_of(design, solution));
    set(row, "borders", borders_of(design, solution));
}

static void show_finishing(json_t *row, const struct design *design)
{
    set_whole(row, "binding cut", design->has_binding ? design->binding.binding_cut : 0);
    set_whole(row, "batting beyond", design->has_batting ? design->batting.margin_left : 0);
    set_whole(row, "backing width", design->has_backing ? design->backing.fabric_width : 0);
    set_whole(row, "sleeves", design->has_sleeve ? design->sleeve.sleeves : 0);
    set_whole(row, "bed", design->has_bed ? design->bed_width : 0);
    set_whole(row, "step", design->buying.step);
    set_whole(row, "shrinkage", design->buying.shrinkage);
    set_whole(row, "grid", design->solve.grid);
    set_whole(row, "fold clear", design->solve.fold_clear);
    set_whole(row, "units asked", (int64_t)design->units_used);
    set_whole(row, "fields", (int64_t)design->fields_used);
}

static json_t *show_size(const struct pattern *pattern, size_t size, struct complaints *complaints)
{
    struct design *design = design_create(pattern, size, complaints);
    struct muslin_solution *solution = NULL;
    json_t *row = json_object();
    set_text(row, "name", pattern->sizes[size].name);
    if (design != NULL) {
        must(muslin_solution_create(design->quilt, design->top, &design->solve, NULL, 0, 0, NULL, &solution, NULL));
        show_solved(row, design, solution);
        show_finishing(row, design);
        set(row, "cloths", cloths_of(design));
    }
    muslin_solution_free(solution);
    design_free(design);
    return row;
}

static void show(struct pattern *pattern, struct complaints *complaints)
{
    json_t *shown = json_object();
    json_t *sizes = json_array();
    set(shown, "read", json_boolean(pattern != NULL));
    if (pattern != NULL) {
        set_text(shown, "title", pattern->title);
        set_whole(shown, "units", pattern->units);
        set_whole(shown, "paper", pattern->paper);
        set_text(shown, "sold by", pattern->words[WORD_YARD]);
        for (size_t i = 0; i < pattern->sizes_count; i++)
            add(sizes, show_size(pattern, i, complaints));
    }
    set(shown, "sizes", sizes);
    set(shown, "complaints", complaints_of(complaints));
    if (json_dumpf(shown, stdout, JSON_COMPACT) != 0)
        exit(1);
    putchar('\n');
    json_decref(shown);
    pattern_free(pattern);
    complaints_free(complaints);
}

int main(int count, char **arguments)
{
    struct complaints complaints = { NULL, 0, 0 };
    char *line = NULL;
    size_t room = 0;
    ssize_t length;
    for (int i = 1; i < count; i++) {
        if (strcmp(arguments[i], "--lines") != 0)
            show(pattern_read(arguments[i], &complaints), &complaints);
        else
            while ((length = getline(&line, &room, stdin)) > 0)
                show(pattern_parse(line, (size_t)length, &complaints), &complaints);
    }
    free(line);
    return fflush(stdout) != 0;
}
