/* table_cutplan.c - muslin_cutplan(): a list of pieces cut from the least length of a bolt, a row each place on it.
 *
 * SPDX-License-Identifier: MIT */
#include <string.h>

#include "sql.h"

SQLITE_EXTENSION_INIT3

enum { PLAN_PIECES, PLAN_USABLE_WIDTH, PLAN_END_LOSS, PLAN_STRAIGHTENING, PLAN_WORK_LIMIT };

/* ---- the list ---------------------------------------------------------------------------------------------------- */

struct list {
    json_t *rows;
    struct muslin_blank_spec *pieces;
    size_t count;
};

/* A text with its unit, or, by a member of its own name, whole ticks: a bare number would not say what it counts. */
static bool length_of_member(struct trouble *trouble, size_t row, json_t *piece, const char *member, muslin_len *length)
{
    char what[80];
    json_t *value = json_object_get(piece, member);
    sqlite3_snprintf(sizeof what, what, "%s_ticks", member);
    json_t *ticks = json_object_get(piece, what);
    if (value == NULL && json_is_integer(ticks)) {
        *length = json_integer_value(ticks);
        return true;
    }
    if (json_is_number(value))
        return trouble_say(trouble, "The \"%s\" in row %d of the pieces is a bare number, which does not say its unit: "
                           "write a text such as \"5 in\", or give whole ticks as \"%s\".", member, (int)row + 1, what);
    if (!json_is_string(value) || ticks != NULL)
        return trouble_say(trouble, "Row %d of the pieces needs either a \"%s\", a text with its unit, or a \"%s\", "
                           "whole ticks.", (int)row + 1, member, what);
    sqlite3_snprintf(sizeof what, what, "%s in row %d of the pieces", member, (int)row + 1);
    return length_from_text(trouble, what, json_string_value(value), json_string_length(value), length);
}

/* SQLite's json_object() makes 1 and 0 of what is true and not. */
static bool is_true(json_t *value)
{
    return json_is_true(value) || (json_is_integer(value) && json_integer_value(value) == 1);
}

static bool knows_members(struct trouble *trouble, size_t row, json_t *piece)
{
    static const char *const known[] = { "count",  "width", "width_ticks", "height", "height_ticks",
                                        "name",   "turn",  "lengthwise" };
    const char *member;
    json_t *ignored;
    json_object_foreach(piece, member, ignored)
    {
        bool is_known = false;
        for (size_t i = 0; i < sizeof known / sizeof known[0]; i++)
            is_known = is_known || strcmp(member, known[i]) == 0;
        if (!is_known)
            return trouble_say(trouble, "Row %d of the pieces has \"%!.40s\", which is none of count, width, "
                               "width_ticks, height, height_ticks, name, turn and lengthwise.", (int)row + 1, member);
    }
    return true;
}

static bool read_piece(struct trouble *trouble, size_t row, json_t *from, struct muslin_blank_spec *piece)
{
    json_t *count = json_object_get(from, "count");
    const bool turns = is_true(json_object_get(from, "turn"));
    const bool is_lengthwise = is_true(json_object_get(from, "lengthwise"));
    *piece = (struct muslin_blank_spec)MUSLIN_BLANK_SPEC_INIT;
    if (!json_is_object(from))
        return trouble_say(trouble, "Row %d of the pieces is no object with count, width and height.", (int)row + 1);
    if (!knows_members(trouble, row, from))
        return false;
    if (count != NULL && !json_is_integer(count))
        return trouble_say(trouble, "Row %d of the pieces has a \"count\" that is no whole number.", (int)row + 1);
    if (turns && is_lengthwise)
        return trouble_say(trouble, "Row %d of the pieces cannot both turn and lie lengthwise.", (int)row + 1);
    if (count != NULL)
        piece->count = json_integer_value(count);
    piece->label = (int64_t)row;
    piece->flags = turns ? MUSLIN_BLANK_MAY_TURN : 0;
    piece->kind = is_lengthwise ? MUSLIN_BLANK_LENGTHWISE : MUSLIN_BLANK_PIECE;
    return length_of_member(trouble, row, from, "width", &piece->cut_width) &&
           length_of_member(trouble, row, from, "height", &piece->cut_length);
}

static bool read_list(struct trouble *trouble, sqlite3_value *value, struct list *list)
{
    json_error_t error;
    const char *text;
    size_t length;
    if (!text_from(trouble, "list of pieces", value, &text, &length))
        return false;
    list->rows = json_loadb(text, length, JSON_REJECT_DUPLICATES, &error);
    if (list->rows == NULL)
        return trouble_say(trouble, "The list of pieces is no JSON: %s.", error.text);
    list->count = json_array_size(list->rows);
    if (!json_is_array(list->rows) || list->count > MUSLIN_CUTPLAN_ROWS_MAX)
        return trouble_say(trouble, "The list of pieces must be a JSON array of at most %d rows.",
                           MUSLIN_CUTPLAN_ROWS_MAX);
    list->pieces = sqlite3_malloc64((list->count + 1) * sizeof *list->pieces);
    if (list->pieces == NULL)
        return trouble_memory(trouble);
    for (size_t i = 0; i < list->count; i++)
        if (!read_piece(trouble, i, json_array_get(list->rows, i), &list->pieces[i]))
            return false;
    return true;
}

static void free_list(struct list *list)
{
    json_decref(list->rows);
    sqlite3_free(list->pieces);
}

/* ---- the plan ---------------------------------------------------------------------------------------------------- */

struct plan {
    struct muslin_cutplan_total totals;
    struct muslin_cutplan_strip *strips;
    struct muslin_cutplan_place *places;
    size_t strips_count;
    size_t places_count;
};

static bool read_plan(struct trouble *trouble, const struct muslin_cutplan *made, struct plan *plan)
{
    struct muslin_problem problem = MUSLIN_PROBLEM_INIT;
    plan->totals.size = sizeof plan->totals;
    muslin_status status = muslin_cutplan_totals(made, &plan->totals, &problem);
    if (status == MUSLIN_OK)
        status = muslin_cutplan_strips(made, NULL, sizeof *plan->strips, 0, &plan->strips_count, &problem);
    if (status == MUSLIN_OK)
        status = muslin_cutplan_places(made, NULL, sizeof *plan->places, 0, &plan->places_count, &problem);
    if (!was_answered(trouble, status, &problem))
        return false;
    plan->strips = sqlite3_malloc64((plan->strips_count + 1) * sizeof *plan->strips);
    plan->places = sqlite3_malloc64((plan->places_count + 1) * sizeof *plan->places);
    if (plan->strips == NULL || plan->places == NULL)
        return trouble_memory(trouble);
    status = muslin_cutplan_strips(made, plan->strips, sizeof *plan->strips, plan->strips_count, &plan->strips_count,
                                   &problem);
    if (status == MUSLIN_OK)
        status = muslin_cutplan_places(made, plan->places, sizeof *plan->places, plan->places_count,
                                       &plan->places_count, &problem);
    return was_answered(trouble, status, &problem);
}

static void put_name(struct answer *answer, json_t *row)
{
    json_t *name = json_object_get(row, "name");
    if (json_is_integer(name))
        put_number(answer, json_integer_value(name));
    else
        put_text(answer, json_string_value(name));
}

/* The bound with the straightening that is in cloth_length, so that the two can be compared. */
static muslin_len least_cloth(const struct muslin_cutplan_total *totals)
{
    return totals->cloth_length - (totals->cost - totals->least);
}

static void put_place(struct answer *answer, const struct list *list, const struct plan *plan,
                      const struct muslin_cutplan_place *place)
{
    const struct muslin_cutplan_strip *strip = &plan->strips[place->strip];
    put_number(answer, place->strip + 1);
    put_number(answer, strip->times);
    put_number(answer, strip->width);
    put_number(answer, strip->height);
    put_number(answer, place->piece + 1);
    put_name(answer, json_array_get(list->rows, (size_t)place->piece));
    put_number(answer, place->count);
    put_number(answer, place->width);
    put_number(answer, place->height);
    put_number(answer, place->x);
    put_number(answer, place->turned);
    put_number(answer, place->trimmed);
    put_number(answer, plan->totals.cloth_length);
    put_number(answer, least_cloth(&plan->totals));
    put_number(answer, plan->totals.proven);
}

static bool put_plan(struct trouble *trouble, const struct list *list, const struct muslin_cutplan *made,
                     struct answer *answer)
{
    struct plan plan = { .strips = NULL };
    const bool is_well = read_plan(trouble, made, &plan);
    for (size_t i = 0; is_well && i < plan.places_count; i++)
        put_place(answer, list, &plan, &plan.places[i]);
    sqlite3_free(plan.strips);
    sqlite3_free(plan.places);
    return is_well;
}

/* Which piece the library's sentence is about, it says in `at`. */
static bool plan_was_answered(struct trouble *trouble, muslin_status status, const struct muslin_problem *problem)
{
    const bool is_of_a_piece = problem->argument == MUSLIN_ARG_PIECE_WIDTH ||
                               problem->argument == MUSLIN_ARG_PIECE_LENGTH || problem->argument == MUSLIN_ARG_PIECES;
    if (status != MUSLIN_OK && is_of_a_piece)
        return trouble_say(trouble, "Row %lld of the pieces: %s", (long long)problem->at + 1, problem->text);
    return was_answered(trouble, status, problem);
}

static bool fill_cutplan(struct trouble *trouble, sqlite3_value **arguments, struct answer *answer)
{
    struct muslin_problem problem = MUSLIN_PROBLEM_INIT;
    struct muslin_cutplan_spec spec = MUSLIN_CUTPLAN_SPEC_INIT;
    struct muslin_cutplan *made = NULL;
    struct muslin_allocator memory;
    struct list list = { NULL, NULL, 0 };
    bool is_well = length_if(trouble, "usable width", arguments[PLAN_USABLE_WIDTH], &spec.usable_width) &&
                   length_if(trouble, "end loss", arguments[PLAN_END_LOSS], &spec.end_loss) &&
                   length_if(trouble, "straightening", arguments[PLAN_STRAIGHTENING], &spec.straightening) &&
                   count_if(trouble, "work limit", arguments[PLAN_WORK_LIMIT], &spec.work_limit) &&
                   read_list(trouble, arguments[PLAN_PIECES], &list) && muslin_allocator_libc(&memory) == MUSLIN_OK;
    if (is_well) {
        const muslin_status status = muslin_cutplan_create(&spec, list.pieces, sizeof *list.pieces, list.count, NULL, 0,
                                                           0, &memory, NULL, NULL, &made, &problem);
        is_well = plan_was_answered(trouble, status, &problem) && put_plan(trouble, &list, made, answer);
    }
    muslin_cutplan_free(made);
    free_list(&list);
    return is_well;
}

const struct table_function cutplan_table = {
    .name = "muslin_cutplan",
    .columns = "CREATE TABLE cutplan(strip INTEGER, times INTEGER, strip_width INTEGER, strip_height INTEGER, "
               "piece INTEGER, name, count INTEGER, cut_width INTEGER, cut_height INTEGER, x INTEGER, turned INTEGER, "
               "trimmed INTEGER, cloth_length INTEGER, least INTEGER, proven INTEGER, pieces HIDDEN, "
               "usable_width HIDDEN, end_loss HIDDEN, straightening HIDDEN, work_limit HIDDEN)",
    .usage = "muslin_cutplan('[{\"count\": 20, \"width\": \"5 in\", \"height\": \"5 in\"}]', '40 in')",
    .shown = 15,
    .arguments = 5,
    .required = 1,
    .innocuous = false, /* it may search for seconds */
    .fill = fill_cutplan
};
