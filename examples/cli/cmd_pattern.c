/* cmd_pattern.c - a pattern file worked out: what to buy, cut and sew, in words and as figures.
 *
 * SPDX-License-Identifier: MIT */
#define _POSIX_C_SOURCE 200809L
#include <stdlib.h>
#include <string.h>
#include <strings.h>

#include "cmd.h"
#include "document.h"
#include "interrupt.h"
#include "memory.h"
#include "sheet.h"

struct pattern_request {
    const char *file;
    const char *size;
    int32_t csv;
};

static void start_pattern(void *request)
{
    *(struct pattern_request *)request = (struct pattern_request){ NULL, NULL, 0 };
}

/* ---- complaints -------------------------------------------------------------------------------------------------- */

static bool is_file_trouble(const struct complaint *complaint)
{
    static const char trouble[] = "this file cannot be read";
    return complaint->place[0] == '\0' && strncmp(complaint->sentence, trouble, sizeof trouble - 1) == 0;
}

static json_t *complaint_as_json(const struct complaint *complaint)
{
    json_t *row = json_object();
    json_object_set_new(row, "place", json_string(complaint->place));
    json_object_set_new(row, "line", json_integer(complaint->line));
    json_object_set_new(row, "column", json_integer(complaint->column));
    json_object_set_new(row, "sizes", complaint->sizes == NULL ? json_null() : json_string(complaint->sizes));
    json_object_set_new(row, "value", complaint->value == NULL ? json_null() : json_string(complaint->value));
    json_object_set_new(row, "sentence", json_string(complaint->sentence));
    json_object_set_new(row, "status", complaint->status < 0 ? json_null() : json_integer(complaint->status));
    return row;
}

/* All of them become the failure. */
static void fail(struct desk *desk, const char *file, const struct complaints *complaints)
{
    struct failure *failure = desk->failure;
    const int count = (int)complaints->used;
    bool no_answer = count > 0;
    failure_say(failure, "file", "%.200s: %d thing%s %s wrong.", file, count, count == 1 ? "" : "s",
                count == 1 ? "is" : "are");
    failure->complaints = json_array();
    for (size_t i = 0; i < complaints->used; i++) {
        no_answer = no_answer && exit_code_of(complaints->rows[i].status) == EXIT_NO_ANSWER;
        json_array_append_new(failure->complaints, complaint_as_json(&complaints->rows[i]));
    }
    if (no_answer)
        failure->exit_code = EXIT_NO_ANSWER;
    if (count == 1 && is_file_trouble(&complaints->rows[0]))
        failure->exit_code = EXIT_FILE_TROUBLE;
    if (interrupted())
        failure->exit_code = EXIT_INTERRUPTED;
}

/* ---- sizes ------------------------------------------------------------------------------------------------------- */

/* The size's number, or -1 with a failure that names what there is. */
static long find_size(struct desk *desk, const struct pattern *pattern, const char *name)
{
    char list[300] = "";
    for (size_t i = 0; i < pattern->sizes_count; i++) {
        const size_t used = strlen(list);
        if (strcasecmp(pattern->sizes[i].name, name) == 0)
            return (long)i;
        snprintf(list + used, sizeof list - used, "%s\"%s\"", i == 0 ? "" : ", ", pattern->sizes[i].name);
    }
    failure_say(desk->failure, "size", "The pattern has no size \"%.60s\". It has %s.", name, list);
    return -1;
}

struct sizes {
    struct design **designs;
    struct worked **worked;
    size_t count;
    unsigned looked_at; /* a bit for each */
};

static bool stop(void *with)
{
    (void)with;
    return interrupted();
}

static void work_out(const struct pattern *pattern, size_t size, struct sizes *sizes, struct complaints *complaints)
{
    struct complaints own = { NULL, 0, 0 };
    struct design *design = design_create(pattern, size, &own);
    struct worked *worked = design == NULL ? NULL : worked_create(design, stop, NULL, &own);
    complaints_of_size(complaints, &own, size);
    sizes->looked_at |= 1u << size;
    sizes->designs[sizes->count] = design;
    sizes->worked[sizes->count++] = worked;
}

static void free_sizes(struct sizes *sizes)
{
    for (size_t i = 0; i < sizes->count; i++) {
        worked_free(sizes->worked[i]);
        if (sizes->designs[i] != NULL)
            design_free(sizes->designs[i]);
    }
    free(sizes->designs);
    free(sizes->worked);
}

/* ---- the answer -------------------------------------------------------------------------------------------------- */

static json_t *text_or_null(const char *text)
{
    return text == NULL ? json_null() : json_string(text);
}

static json_t *table_as_json(const struct table *table)
{
    json_t *object = json_object();
    json_t *heads = json_array();
    json_t *numbers = json_array();
    json_t *rows = json_array();
    for (size_t i = 0; i < table->columns; i++) {
        json_array_append_new(heads, json_string(table->heads[i]));
        json_array_append_new(numbers, json_boolean(table->is_number[i]));
    }
    for (size_t i = 0; i < table->rows; i++) {
        json_t *row = json_array();
        for (size_t k = 0; k < table->columns; k++)
            json_array_append_new(row, json_string(table->cells[i * table->columns + k]));
        json_array_append_new(rows, row);
    }
    json_object_set_new(object, "heads", heads);
    json_object_set_new(object, "numbers", numbers);
    json_object_set_new(object, "rows", rows);
    return object;
}

static json_t *document_as_json(const struct document *document)
{
    static const char *const kinds[] = { "",      "title", "size",    "heading", "subheading", "say",
                                         "point", "step",  "caution", "table",   "picture" };
    static const char *const pictures[] = { "",     "top",       "blank top", "key",     "part",    "step",
                                            "strip set", "cloth", "borders",   "backing", "checks", "template" };
    json_t *list = json_array();
    for (size_t i = 0; i < document->used; i++) {
        const struct item *item = &document->items[i];
        json_t *row = json_object();
        json_object_set_new(row, "kind", json_string(kinds[item->kind]));
        json_object_set_new(row, "depth", json_integer(item->depth));
        json_object_set_new(row, "lead", text_or_null(item->lead));
        json_object_set_new(row, "text", text_or_null(item->text));
        if (item->kind == ITEM_PICTURE)
            json_object_set_new(row, "picture", json_string(pictures[item->picture.kind]));
        if (item->table != NULL)
            json_object_set_new(row, "table", table_as_json(item->table));
        json_array_append_new(list, row);
    }
    return list;
}

static json_t *answer_of(const struct pattern *pattern, const struct pattern_request *wanted, struct sizes *sizes)
{
    json_t *answer = json_object();
    json_t *facts = json_array();
    struct document *document = document_create(pattern, sizes->worked, sizes->count);
    json_object_set_new(answer, "title", json_string(pattern->title));
    json_object_set_new(answer, "version", text_or_null(pattern->version));
    json_object_set_new(answer, "date", text_or_null(pattern->date));
    json_object_set_new(answer, "invented", json_boolean(pattern->invented));
    json_object_set_new(answer, "csv", json_boolean(wanted->csv));
    for (size_t i = 0; i < sizes->count; i++)
        json_array_append_new(facts, facts_of(sizes->worked[i]));
    json_object_set_new(answer, "sizes", facts);
    json_object_set_new(answer, "document", document_as_json(document));
    document_free(document);
    return answer;
}

static json_t *answer_sizes(const struct pattern *pattern, const struct pattern_request *wanted, struct desk *desk,
                            struct complaints *complaints)
{
    json_t *answer = NULL;
    struct sizes sizes = { .count = 0 };
    const long only = wanted->size == NULL ? 0 : find_size(desk, pattern, wanted->size);
    if (only < 0)
        return NULL;
    sizes.designs = need_memory(pattern->sizes_count * sizeof *sizes.designs);
    sizes.worked = need_memory(pattern->sizes_count * sizeof *sizes.worked);
    for (size_t i = 0; i < pattern->sizes_count && !interrupted(); i++)
        if (wanted->size == NULL || i == (size_t)only)
            work_out(pattern, i, &sizes, complaints);
    if (complaints->used == 0 && !interrupted())
        answer = answer_of(pattern, wanted, &sizes);
    else {
        name_sizes(complaints, pattern, sizes.looked_at);
        fail(desk, wanted->file, complaints);
    }
    free_sizes(&sizes);
    return answer;
}

/* A pattern has its own units. */
static bool no_units_given(struct desk *desk)
{
    static const char *const options[] = { "units", "bare-unit", "decimal-comma" };
    for (size_t i = 0; i < sizeof options / sizeof options[0]; i++)
        if (given(desk, options[i])) {
            failure_say(desk->failure, options[i], "A pattern is read and written in the units that its file says.");
            return false;
        }
    return true;
}

/* Standard input may be where the lines of a batch come from. */
static bool is_not_taken(struct desk *desk, const char *file)
{
    if (!desk->common.among_others || strcmp(file, "-") != 0)
        return true;
    failure_say(desk->failure, "file", "A line of a batch cannot have its pattern from standard input: name a file.");
    return false;
}

static json_t *answer_pattern(const void *request, struct desk *desk)
{
    const struct pattern_request *wanted = request;
    struct complaints complaints = { NULL, 0, 0 };
    json_t *answer = NULL;
    if (!no_units_given(desk) || !is_not_taken(desk, wanted->file))
        return NULL;
    struct pattern *pattern = pattern_read(wanted->file, &complaints);
    if (pattern == NULL)
        fail(desk, wanted->file, &complaints);
    else
        answer = answer_sizes(pattern, wanted, desk, &complaints);
    if (pattern != NULL)
        pattern_free(pattern);
    complaints_free(&complaints);
    return answer;
}

/* Several edges of one part may not meet: the place is told once. */
static bool is_told_place(json_t *misfits, size_t row)
{
    const char *place = json_string_value(json_object_get(json_array_get(misfits, row), "place"));
    for (size_t i = 0; i < row; i++)
        if (strcmp(json_string_value(json_object_get(json_array_get(misfits, i), "place")), place) == 0)
            return true;
    return false;
}

/* What is eased is meant so. */
static bool doubt_pattern(const char *program, json_t *answer)
{
    bool doubted = false;
    json_t *facts;
    json_t *misfit;
    size_t index;
    size_t row;
    json_array_foreach(json_object_get(answer, "sizes"), index, facts)
        json_array_foreach(json_object_get(facts, "misfits"), row, misfit) {
            if (strcmp(json_string_value(json_object_get(misfit, "kind")), "eased") == 0)
                continue;
            doubted = true;
            if (is_told_place(json_object_get(facts, "misfits"), row))
                continue;
            fprintf(stderr, "%s: %s, size \"%s\": edges do not meet here; change the design before you cut.\n", program,
                    json_string_value(json_object_get(misfit, "place")),
                    json_string_value(json_object_get(facts, "size")));
        }
    return doubted;
}

static const struct option_row pattern_options[] = {
    { "file", KIND_FILE, offsetof(struct pattern_request, file), 0, OPTION_REQUIRED | OPTION_OPERAND, NULL,
      "the pattern file; - is standard input" },
    { "size", KIND_TEXT, offsetof(struct pattern_request, size), 0, 0, NULL,
      "only this one of the sizes that the file has (all of them)" },
    { "csv", KIND_SWITCH, offsetof(struct pattern_request, csv), 0, 0, NULL,
      "the tables alone, as comma-separated values: sizes, cuts, purchase, and edges that do not meet, told apart by "
      "their first column" },
    OPTION_END
};

const struct command pattern_command = {
    .name = "pattern",
    .about = "a pattern file worked out: what to buy, cut, sew and press, for each of its sizes",
    .operands = "FILE",
    .examples = "  muslin pattern examples/patterns/a-kite-each.json\n"
                "  muslin pattern examples/patterns/ferry-steps.json --csv --output ferry.csv\n"
                "  muslin pattern examples/patterns/slipway-pebbles.json --size queen --json\n"
                "\n"
                "A pattern file describes one design, in JSON: fabrics, measures, how patches are joined into blocks "
                "and blocks into the top, borders and finishing, and the sizes it comes in. All that is wrong in it is "
                "told, each with its place. Pictures are told by their captions here; muslin-sheet draws them. Cut a "
                "test block first. Where edges do not meet, the pattern is worked out all the same; standard error says so, and "
                "the exit status is 1.",
    .options = pattern_options,
    .request_size = sizeof(struct pattern_request),
    .start = start_pattern,
    .answer = answer_pattern,
    .show = show_pattern,
    .doubt = doubt_pattern
};
