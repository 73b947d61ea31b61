/* args.c - the command line, read by argp from the same tables that read a batch.
 *
 * SPDX-License-Identifier: MIT */
#include "args.h"

#include <argp.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "completion.h"
#include "memory.h"
#include "words.h"

const struct option_row front_options[] = {
    OPTION_HEADING("What becomes of the answer"),
    { "json", KIND_SWITCH, 0, 0, 0, NULL, "answer in JSON, for scripts" },
    { "output", KIND_FILE, 0, 0, 0, NULL, "write to this file; if the work fails, no half of it is left behind" },
    { "force", KIND_SWITCH, 0, 0, 0, NULL, "replace the file if it exists" },
    OPTION_END
};

const struct option_row drawing_front_options[] = {
    OPTION_HEADING("What becomes of the answer"),
    { "json", KIND_SWITCH, 0, 0, 0, NULL, "answer in JSON, for scripts" },
    { "output", KIND_FILE, 0, 0, 0, NULL, "write to this file; if the work fails, no half of it is left behind" },
    { "svg", KIND_FILE, 0, 0, 0, NULL, "draw it into this file as well, in the same way" },
    { "force", KIND_SWITCH, 0, 0, 0, NULL, "replace files that exist" },
    OPTION_END
};

const struct option_row *front_of(const struct command *command)
{
    return command->draw == NULL ? front_options : drawing_front_options;
}

/* ---- the tables together ---------------------------------------------------------------------------------------- */

/* All rows that this command line may name, in one array; those from `first_front` on are the front end's. */
struct rows {
    const struct option_row *rows[160];
    size_t count;
    size_t first_front;
};

static void add_rows(struct rows *rows, const struct option_row *table)
{
    for (const struct option_row *row = table; row->name != NULL; row++)
        rows->rows[rows->count++] = row;
}

static struct rows rows_of(const struct command *command, const struct option_row *front)
{
    struct rows rows = { .count = 0 };
    add_rows(&rows, command->options);
    add_rows(&rows, common_options);
    rows.first_front = rows.count;
    add_rows(&rows, front);
    return rows;
}

bool takes_value(const struct option_row *row)
{
    return row->kind != KIND_SWITCH && row->kind != KIND_HEADING;
}

/* ---- unknown options, found before argp sees them so that the nearest can be named ------------------------------- */

/* The row that `--written` names, also shortened; null when it names none. */
static const struct option_row *row_named(const struct rows *rows, const char *written, size_t length)
{
    const struct option_row *found = NULL;
    for (size_t i = 0; i < rows->count; i++) {
        const struct option_row *row = rows->rows[i];
        if (row->kind == KIND_HEADING || strncmp(row->name, written, length) != 0)
            continue;
        if (row->name[length] == '\0')
            return row;
        found = row;
    }
    return found;
}

static bool is_argps_own(const char *written, size_t length)
{
    return length > 0 && (strncmp("help", written, length) == 0 || strncmp("usage", written, length) == 0 ||
                          strncmp("version", written, length) == 0);
}

static void complain_of_option(const struct rows *rows, const char *written, size_t length, struct failure *failure)
{
    char name[60];
    snprintf(name, sizeof name, "%.*s", (int)length, written);
    struct nearest nearest = nearest_start(name);
    for (size_t i = 0; i < rows->count; i++)
        if (rows->rows[i]->kind != KIND_HEADING)
            nearest_offer(&nearest, rows->rows[i]->name);
    const char *near = nearest.word;
    failure_say(failure, NULL, "There is no option --%s.%s%s%s", name, near != NULL ? " Did you mean --" : "",
                near != NULL ? near : "", near != NULL ? "?" : "");
}

/* "-1/4" looks like an option and is a length. */
static bool is_negative_number(const char *word)
{
    return word[0] == '-' && word[1] != '\0' && strchr(".,0123456789", word[1]) != NULL;
}

static bool check_words(const struct rows *rows, int argc, char **argv, struct failure *failure)
{
    for (int i = 1; i < argc && strcmp(argv[i], "--") != 0; i++) {
        const char *word = argv[i];
        if (is_negative_number(word)) {
            failure_say(failure, NULL, "Write -- before a negative length that has no option's name: -- %.60s", word);
            return false;
        }
        if (strncmp(word, "--", 2) != 0)
            continue;
        size_t length = strcspn(word + 2, "=");
        const struct option_row *row = row_named(rows, word + 2, length);
        if (row == NULL && !is_argps_own(word + 2, length)) {
            complain_of_option(rows, word + 2, length, failure);
            return false;
        }
        if (row != NULL && takes_value(row) && word[2 + length] != '=')
            i++;
    }
    return true;
}

/* ---- argp ------------------------------------------------------------------------------------------------------- */

/* Keys above all characters: these options have no short form. */
#define FIRST_KEY 1000

struct parsing {
    const struct rows *rows;
    struct args *args;
    struct failure *failure;
};

static bool repeats(const struct option_row *row)
{
    return row->kind == KIND_LENGTHS || row->kind == KIND_TEXTS || row->kind == KIND_FILES;
}

static error_t take(struct parsing *parsing, size_t index, const char *text)
{
    const struct option_row *row = parsing->rows->rows[index];
    json_t *object = index < parsing->rows->first_front ? parsing->args->request : parsing->args->front;
    json_t *value = takes_value(row) ? json_string(text) : json_true();
    if (value == NULL) {
        failure_say(parsing->failure, row->name, "This text is not valid UTF-8.");
        return EINVAL;
    }
    if (!repeats(row))
        return json_object_set_new(object, row->name, value) == 0 ? 0 : EINVAL;
    json_t *list = json_object_get(object, row->name);
    if (list == NULL)
        json_object_set_new(object, row->name, list = json_array());
    json_array_append_new(list, value);
    return 0;
}

static error_t take_operand(struct parsing *parsing, const char *text)
{
    for (size_t i = 0; i < parsing->rows->count; i++) {
        const struct option_row *row = parsing->rows->rows[i];
        if ((row->flags & OPTION_OPERAND) == 0)
            continue;
        if (repeats(row) || (json_object_get(parsing->args->request, row->name) == NULL &&
                             json_object_get(parsing->args->front, row->name) == NULL))
            return take(parsing, i, text);
    }
    failure_say(parsing->failure, NULL, "\"%.60s\" stands there without an option's name. If it belongs to the word "
                                        "before it, put both in quotes: \"2 1/2\".", text);
    return EINVAL;
}

static error_t parse(int key, char *text, struct argp_state *state)
{
    struct parsing *parsing = state->input;
    if (key == ARGP_KEY_ARG)
        return take_operand(parsing, text);
    if (key < FIRST_KEY || key >= FIRST_KEY + (int)parsing->rows->count)
        return ARGP_ERR_UNKNOWN;
    return take(parsing, (size_t)(key - FIRST_KEY), text);
}

/* ---- --help ----------------------------------------------------------------------------------------------------- */

static const char *value_word(const struct option_row *row)
{
    switch (row->kind) {
    case KIND_LENGTH:
    case KIND_LENGTHS:
        return "LENGTH";
    case KIND_COUNT:
        return "NUMBER";
    case KIND_SHARE:
        return "PERCENT";
    case KIND_CHOICE:
        return "WORD";
    case KIND_TEXT:
        return "TEXT";
    case KIND_TEXTS:
        return "WORDS";
    case KIND_FILE:
    case KIND_FILES:
        return "FILE";
    default:
        return NULL;
    }
}

/* The help of a choice names all its words, where the sentence does not do so already; that of an option that must be
 * given says so. The caller frees it. */
static char *whole_help(const struct option_row *row)
{
    char list[300] = "";
    bool named = true;
    for (const struct word *word = row->words; word != NULL && word->word != NULL; word++)
        named = named && strstr(row->help, word->word) != NULL;
    if (!named)
        list_words(row->words, list, sizeof list);
    const char *needed = (row->flags & OPTION_REQUIRED) != 0 ? " (must be given)" : "";
    size_t size = strlen(row->help) + strlen(list) + strlen(needed) + 3;
    char *help = need_memory(size);
    snprintf(help, size, "%s%s%s%s", row->help, named ? "" : ": ", list, needed);
    return help;
}

/* argp's own table; the helps are allocated, the last row is empty. */
static struct argp_option *argp_rows(const struct rows *rows)
{
    struct argp_option *options = need_memory((rows->count + 1) * sizeof *options);
    for (size_t i = 0; i < rows->count; i++) {
        const struct option_row *row = rows->rows[i];
        if (row->kind == KIND_HEADING) {
            options[i].doc = row->name;
            continue;
        }
        options[i].name = row->name;
        options[i].key = FIRST_KEY + (int)i;
        options[i].arg = value_word(row);
        options[i].doc = whole_help(row);
    }
    return options;
}

static void free_argp_rows(struct argp_option *options, size_t count)
{
    for (size_t i = 0; i < count; i++)
        if (options[i].key != 0)
            free((char *)(uintptr_t)options[i].doc);
    free(options);
}

/* One line on what it does, a vertical tab, then the examples below the options. The caller frees it. */
static char *documentation(const struct command *command)
{
    char *text = NULL;
    size_t length = 0;
    FILE *out = open_text(&text, &length);
    fprintf(out, "muslin %s: %s.\v", command->name, command->about);
    fprintf(out, "A length is written as people write it: 2 1/2, 2.5, \"18 in\", \"1 3/8 yd\", \"6.35 cm\". Words with "
                 "blanks go in quotes.\n\nFor example:\n%s", command->examples);
    fclose(out);
    return text;
}

bool read_args(const struct command *command, const struct option_row *front, int argc, char **argv,
               struct args *args, struct failure *failure)
{
    struct rows rows = rows_of(command, front);
    *args = (struct args){ json_object(), json_object() };
    if (!check_words(&rows, argc, argv, failure))
        return false;
    struct argp_option *options = argp_rows(&rows);
    char *doc = documentation(command);
    struct parsing parsing = { &rows, args, failure };
    struct argp argp = { options, parse, command->operands, doc, NULL, NULL, NULL };
    failure->exit_code = EXIT_ANSWERED;
    error_t error = argp_parse(&argp, argc, argv, 0, NULL, &parsing);
    if (error != 0 && failure->exit_code == EXIT_ANSWERED)
        failure_say(failure, NULL, "The words cannot be read: %s.", strerror(error));
    free(doc);
    free_argp_rows(options, rows.count);
    return error == 0;
}
