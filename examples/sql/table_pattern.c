/* table_pattern.c - muslin_pattern() and its like: a pattern's sizes, what each takes of its fabrics, and its cuts.
 *
 * SPDX-License-Identifier: MIT */
#define _POSIX_C_SOURCE 200809L
#include <stdlib.h>
#include <string.h>
#include <strings.h>

#include "document.h"
#include "sql.h"
#include "words.h"

SQLITE_EXTENSION_INIT3

enum { PATTERN_TEXT, PATTERN_ONLY };

typedef void (*put_size)(struct answer *answer, const struct worked *worked);

/* ---- what is wrong with a pattern -------------------------------------------------------------------------------- */

/* The first few things, each with its place. */
static bool say_complaints(struct trouble *trouble, const struct complaints *complaints)
{
    enum { SAID_MOST = 3 };
    char said[900] = "";
    for (size_t i = 0; i < complaints->used && i < SAID_MOST; i++) {
        const struct complaint *complaint = &complaints->rows[i];
        const size_t used = strlen(said);
        sqlite3_snprintf((int)(sizeof said - used), said + used, "%s%!.80s: %!.180s", i == 0 ? "" : "; ",
                         complaint->place[0] == '\0' ? "the whole" : complaint->place, complaint->sentence);
    }
    if (complaints->used > SAID_MOST)
        return trouble_say(trouble, "%d things are wrong with the pattern: %s; and %d more", (int)complaints->used,
                           said, (int)complaints->used - SAID_MOST);
    return trouble_say(trouble, "%d thing%s wrong with the pattern: %s", (int)complaints->used,
                       complaints->used == 1 ? " is" : "s are", said);
}

/* ---- its sizes --------------------------------------------------------------------------------------------------- */

static void work_out(const struct pattern *pattern, size_t size, put_size put_rows, struct answer *answer,
                     struct complaints *complaints)
{
    struct design *design = design_create(pattern, size, complaints);
    struct worked *worked = design == NULL ? NULL : worked_create(design, NULL, NULL, complaints);
    if (worked != NULL)
        put_rows(answer, worked);
    worked_free(worked);
    if (design != NULL)
        design_free(design);
}

static bool is_wanted(const struct pattern *pattern, size_t size, const char *only)
{
    return only == NULL || strcasecmp(pattern->sizes[size].name, only) == 0;
}

static bool fill_sizes(struct trouble *trouble, const struct pattern *pattern, const char *only, put_size put_rows,
                       struct answer *answer)
{
    struct complaints complaints = { NULL, 0, 0 };
    bool is_there = false;
    for (size_t i = 0; i < pattern->sizes_count; i++) {
        if (!is_wanted(pattern, i, only))
            continue;
        is_there = true;
        work_out(pattern, i, put_rows, answer, &complaints);
    }
    if (complaints.used > 0)
        say_complaints(trouble, &complaints);
    else if (!is_there)
        trouble_say(trouble, "The pattern has no size \"%!.60s\".", only);
    const bool is_well = is_there && complaints.used == 0;
    complaints_free(&complaints);
    return is_well;
}

static bool fill(struct trouble *trouble, sqlite3_value **arguments, put_size put_rows, struct answer *answer)
{
    struct complaints complaints = { NULL, 0, 0 };
    const char *text;
    const char *only = NULL;
    size_t length;
    size_t ignored;
    if (!text_from(trouble, "pattern", arguments[PATTERN_TEXT], &text, &length) ||
        (arguments[PATTERN_ONLY] != NULL && !text_from(trouble, "size", arguments[PATTERN_ONLY], &only, &ignored)))
        return false;
    struct pattern *pattern = pattern_parse(text, length, &complaints);
    const bool is_well = pattern != NULL ? fill_sizes(trouble, pattern, only, put_rows, answer)
                                         : say_complaints(trouble, &complaints);
    if (pattern != NULL)
        pattern_free(pattern);
    complaints_free(&complaints);
    return is_well;
}

static const char *size_name(const struct worked *worked)
{
    return worked->design->pattern->sizes[worked->design->size].name;
}

/* ---- a row each size --------------------------------------------------------------------------------------------- */

/* A length of what the pattern may do without. */
static void put_if(struct answer *answer, bool is_there, muslin_len length)
{
    if (is_there)
        put_number(answer, length);
    else
        put_nothing(answer);
}

/* Of all fabrics that are bought by the length; the backing, of a cloth of its own, is not among them. */
static void put_cloth_bought(struct answer *answer, const struct worked *worked)
{
    muslin_len sum = 0;
    bool is_well = true;
    for (size_t i = 0; i < worked->bill_count; i++)
        if (cloth_of(worked->design, worked->bill[i].fabric)->strip_cut == 0)
            is_well = is_well && muslin_length_add(sum, worked->bill[i].bought, &sum) == MUSLIN_OK;
    put_if(answer, is_well, sum);
}

static void put_pattern(struct answer *answer, const struct worked *worked)
{
    const struct design *design = worked->design;
    const bool has_backing = design->has_backing && worked->backings_count > 0;
    put_text(answer, design->pattern->title);
    put_text(answer, size_name(worked));
    put_number(answer, worked->top.finished_width);
    put_number(answer, worked->top.finished_height);
    put_number(answer, worked->top.unfinished_width);
    put_number(answer, worked->top.unfinished_height);
    put_number(answer, worked->totals.patches);
    put_number(answer, (int64_t)worked->bill_count);
    put_number(answer, (int64_t)worked->misfits_count);
    put_number(answer, worked->pressed.exceptions);
    put_cloth_bought(answer, worked);
    put_if(answer, design->has_binding, worked->binding_reckoned);
    put_if(answer, has_backing, has_backing ? worked->backs[0].bought : 0);
    put_if(answer, design->has_batting, worked->batting.width);
    put_if(answer, design->has_batting, worked->batting.length);
    put_if(answer, design->has_bed, worked->cover.side_drop);
    put_if(answer, design->has_bed, worked->cover.foot_drop);
}

static bool fill_pattern(struct trouble *trouble, sqlite3_value **arguments, struct answer *answer)
{
    return fill(trouble, arguments, put_pattern, answer);
}

const struct table_function pattern_table = {
    .name = "muslin_pattern",
    .columns = "CREATE TABLE pattern(title TEXT, size TEXT, finished_width INTEGER, finished_height INTEGER, "
               "unfinished_width INTEGER, unfinished_height INTEGER, patches INTEGER, fabrics INTEGER, "
               "misfits INTEGER, not_nesting INTEGER, cloth_bought INTEGER, binding_length INTEGER, "
               "backing_bought INTEGER, batting_cut_width INTEGER, batting_cut_length INTEGER, side_drop INTEGER, "
               "foot_drop INTEGER, pattern HIDDEN, only_size HIDDEN)",
    .usage = "muslin_pattern(muslin_pattern_file('ferry-steps.json'))",
    .shown = 17,
    .arguments = 2,
    .required = 1,
    .innocuous = false, /* it may search for seconds */
    .fill = fill_pattern
};

/* ---- everything, as JSON ----------------------------------------------------------------------------------------- */

static void put_facts(struct answer *answer, const struct worked *worked)
{
    json_t *facts = facts_of(worked);
    char *text = json_dumps(facts, JSON_COMPACT);
    put_text(answer, size_name(worked));
    put_text(answer, kept(text));
    free(text);
    json_decref(facts);
}

static bool fill_facts(struct trouble *trouble, sqlite3_value **arguments, struct answer *answer)
{
    return fill(trouble, arguments, put_facts, answer);
}

const struct table_function pattern_facts_table = {
    .name = "muslin_pattern_facts",
    .columns = "CREATE TABLE facts(size TEXT, facts TEXT, pattern HIDDEN, only_size HIDDEN)",
    .usage = "muslin_pattern_facts(muslin_pattern_file('ferry-steps.json'))",
    .shown = 2,
    .arguments = 2,
    .required = 1,
    .innocuous = false,
    .fill = fill_facts
};

/* ---- a row each fabric ------------------------------------------------------------------------------------------- */

static void put_fabrics(struct answer *answer, const struct worked *worked)
{
    for (size_t i = 0; i < worked->bill_count; i++) {
        const struct muslin_fabric_yardage *row = &worked->bill[i];
        const struct cloth *cloth = cloth_of(worked->design, row->fabric);
        const bool by_length = cloth->strip_cut == 0;
        put_text(answer, size_name(worked));
        put_text(answer, cloth->letter);
        put_text(answer, cloth->name);
        put_number(answer, row->usable_width);
        put_if(answer, by_length, row->cloth_length);
        put_if(answer, by_length, row->least);
        put_if(answer, by_length, row->bought);
        put_if(answer, by_length, row->spare);
        put_if(answer, by_length, row->narrowest_width);
        put_if(answer, !by_length, cloth->strip_cut);
        put_if(answer, !by_length, worked->bolts[i].strips_needed);
        put_if(answer, !by_length && cloth->strips_have > 0, cloth->strips_have);
    }
}

static bool fill_fabrics(struct trouble *trouble, sqlite3_value **arguments, struct answer *answer)
{
    return fill(trouble, arguments, put_fabrics, answer);
}

const struct table_function pattern_fabrics_table = {
    .name = "muslin_pattern_fabrics",
    .columns = "CREATE TABLE fabrics(size TEXT, letter TEXT, fabric TEXT, usable_width INTEGER, needed INTEGER, "
               "least INTEGER, bought INTEGER, spare INTEGER, narrowest_width INTEGER, strips_cut_width INTEGER, "
               "strips_needed INTEGER, strips_have INTEGER, pattern HIDDEN, only_size HIDDEN)",
    .usage = "muslin_pattern_fabrics(muslin_pattern_file('ferry-steps.json'))",
    .shown = 12,
    .arguments = 2,
    .required = 1,
    .innocuous = false,
    .fill = fill_fabrics
};

/* ---- a row each strip set ---------------------------------------------------------------------------------------- */

static void put_sets(struct answer *answer, const struct worked *worked)
{
    char letter[16];
    for (size_t i = 0; i < worked->sets_count; i++) {
        const struct muslin_stripset *row = &worked->sets[i];
        if (!row->used)
            continue;
        put_text(answer, size_name(worked));
        put_text(answer, letter_of(worked, row->node, letter));
        put_number(answer, row->strips);
        put_number(answer, row->set_unfinished);
        put_number(answer, row->segment_cut);
        put_number(answer, row->segments);
        put_number(answer, row->segments_per_set);
        put_number(answer, row->sets);
        put_number(answer, row->spare);
        put_number(answer, row->shorter_by);
    }
}

static bool fill_sets(struct trouble *trouble, sqlite3_value **arguments, struct answer *answer)
{
    return fill(trouble, arguments, put_sets, answer);
}

const struct table_function pattern_sets_table = {
    .name = "muslin_pattern_sets",
    .columns = "CREATE TABLE sets(size TEXT, letter TEXT, strips INTEGER, set_unfinished INTEGER, "
               "segment_cut INTEGER, segments INTEGER, segments_per_set INTEGER, sets INTEGER, spare INTEGER, "
               "shorter_by INTEGER, pattern HIDDEN, only_size HIDDEN)",
    .usage = "muslin_pattern_sets(muslin_pattern_file('ferry-steps.json'))",
    .shown = 10,
    .arguments = 2,
    .required = 1,
    .innocuous = false,
    .fill = fill_sets
};

/* ---- a row each piece of the cut list ---------------------------------------------------------------------------- */

static const struct word source_words[] = {
    { "patch", MUSLIN_CUT_SOURCE_PATCH },     { "strip for sets", MUSLIN_CUT_SOURCE_SET_STRIP },
    { "unit", MUSLIN_CUT_SOURCE_UNIT },       { "template", MUSLIN_CUT_SOURCE_TEMPLATE },
    { "setting", MUSLIN_CUT_SOURCE_SETTING }, { "60 degrees", MUSLIN_CUT_SOURCE_SIXTY },
    { "mitred", MUSLIN_CUT_SOURCE_MITRED },   { NULL, 0 }
};

static void put_cuts(struct answer *answer, const struct worked *worked)
{
    for (size_t i = 0; i < worked->cuts_count; i++) {
        const size_t cut = worked->order[i];
        const struct muslin_solution_cut *row = &worked->cuts[cut];
        put_text(answer, size_name(worked));
        put_number(answer, worked->piece[cut]);
        put_text(answer, fabric_name(worked, row->fabric));
        put_number(answer, row->count);
        put_number(answer, cut_length(worked, cut));
        put_number(answer, row->cut_height);
        put_text(answer, word_of(again_words, row->again));
        put_number(answer, row->pieces);
        put_number(answer, row->spare);
        put_text(answer, word_of(source_words, row->source));
        put_number(answer, is_joined(worked, cut));
    }
}

static bool fill_cuts(struct trouble *trouble, sqlite3_value **arguments, struct answer *answer)
{
    return fill(trouble, arguments, put_cuts, answer);
}

const struct table_function pattern_cuts_table = {
    .name = "muslin_pattern_cuts",
    .columns = "CREATE TABLE cuts(size TEXT, piece INTEGER, fabric TEXT, count INTEGER, cut_width INTEGER, "
               "cut_height INTEGER, cut_again TEXT, pieces INTEGER, spare INTEGER, source TEXT, "
               "joined INTEGER, pattern HIDDEN, only_size HIDDEN)",
    .usage = "muslin_pattern_cuts(muslin_pattern_file('ferry-steps.json'))",
    .shown = 11,
    .arguments = 2,
    .required = 1,
    .innocuous = false,
    .fill = fill_cuts
};
