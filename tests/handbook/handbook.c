/* handbook.c - published figures, read from CSV files and asked of the library through its public calls.
 *
 * SPDX-License-Identifier: MIT
 *
 * usage: handbook FILE.csv...   (columns: id, question, inputs, expected, kind, source, address, note)
 *
 * A row's inputs are "name=text; name=text"; its expectations the same with = != < <= >=. Every input must be used by
 * its question and every expectation met, so that a misspelt name is a failure, not a figure that is never tested. */
#include <csv.h>
#include <stdlib.h>

#include "handbook.h"

/* ---- rows ------------------------------------------------------------------------------------------------------ */

static struct figure figures[FIGURES_MAX];
static int figure_count;

static char *trimmed(char *text)
{
    while (*text == ' ')
        text++;
    size_t length = strlen(text);
    while (length > 0 && text[length - 1] == ' ')
        text[--length] = '\0';
    return text;
}

/* Longer relations first, so that "<=" is not taken for "<". */
static const char *const relations[] = { "!=", "<=", ">=", "<", "=" };
enum { RELATIONS = sizeof relations / sizeof *relations };

static void split_pair(const struct figure *f, char *text, struct pair *pair)
{
    for (int i = 0; i < RELATIONS; i++) {
        char *at = strstr(text, relations[i]);
        if (at == NULL)
            continue;
        *at = '\0';
        *pair = (struct pair) { trimmed(text), relations[i], trimmed(at + strlen(relations[i])), 0 };
        return;
    }
    fail_figure(f, "\"%s\" is no name=text", text);
}

static void split_pairs(const struct figure *f, char *cell, struct pairs *pairs)
{
    for (char *text = strtok(cell, ";"); text != NULL; text = strtok(NULL, ";")) {
        if (pairs->count == PAIRS_MAX)
            fail_figure(f, "has more than %d pairs in one cell", (int)PAIRS_MAX);
        split_pair(f, text, &pairs->pair[pairs->count++]);
    }
}

/* ---- inputs ---------------------------------------------------------------------------------------------------- */

const char *given(struct figure *f, const char *name)
{
    for (int i = 0; i < f->inputs.count; i++)
        if (strcmp(f->inputs.pair[i].name, name) == 0) {
            f->inputs.pair[i].used = 1;
            return f->inputs.pair[i].text;
        }
    return NULL;
}

const char *word(struct figure *f, const char *name)
{
    const char *text = given(f, name);
    if (text == NULL)
        fail_figure(f, "has no input %s", name);
    return text;
}

static muslin_len length_in(const struct figure *f, const char *text)
{
    struct muslin_parsed parsed = { .size = sizeof parsed };
    struct muslin_problem problem = { .size = sizeof problem };
    if (muslin_length_parse(text, strlen(text), NULL, &parsed, &problem) != MUSLIN_OK)
        fail_figure(f, "\"%s\": %s", text, problem.text);
    return parsed.value;
}

static int64_t count_in(const struct figure *f, const char *text)
{
    char *end;
    long long count = strtoll(text, &end, 10);
    if (end == text || *end != '\0')
        fail_figure(f, "\"%s\" is no whole number", text);
    return count;
}

muslin_len length(struct figure *f, const char *name)
{
    return length_in(f, word(f, name));
}

muslin_len length_or(struct figure *f, const char *name, muslin_len otherwise)
{
    const char *text = given(f, name);
    return text != NULL ? length_in(f, text) : otherwise;
}

int64_t count(struct figure *f, const char *name)
{
    return count_in(f, word(f, name));
}

int64_t count_or(struct figure *f, const char *name, int64_t otherwise)
{
    const char *text = given(f, name);
    return text != NULL ? count_in(f, text) : otherwise;
}

int32_t choice(struct figure *f, const char *name, const char *const *words)
{
    const char *text = word(f, name);
    for (int32_t i = 0; words[i] != NULL; i++)
        if (strcmp(text, words[i]) == 0)
            return i + 1;
    fail_figure(f, "%s=%s is no choice", name, text);
    return 0;
}

struct muslin_rounding_spec rounding_of(struct figure *f)
{
    static const char *const directions[] = { "up", "down", "nearest", NULL };
    struct muslin_rounding_spec rounding = MUSLIN_ROUNDING_SPEC_INIT;
    rounding.grid = length(f, "grid");
    rounding.tolerance = length_or(f, "tolerance", 0);
    rounding.direction = choice(f, "direction", directions);
    return rounding;
}

/* ---- answers --------------------------------------------------------------------------------------------------- */

static int holds(int64_t answer, const char *relation, int64_t expected)
{
    if (strcmp(relation, "=") == 0)
        return answer == expected;
    if (strcmp(relation, "!=") == 0)
        return answer != expected;
    if (strcmp(relation, "<") == 0)
        return answer < expected;
    if (strcmp(relation, "<=") == 0)
        return answer <= expected;
    return answer >= expected;
}

static void check_number(struct figure *f, const char *name, int64_t answer,
                         int64_t (*read)(const struct figure *f, const char *text))
{
    for (int i = 0; i < f->expected.count; i++) {
        struct pair *pair = &f->expected.pair[i];
        if (strcmp(pair->name, name) != 0)
            continue;
        pair->used = 1;
        if (!holds(answer, pair->relation, read(f, pair->text)))
            fail_figure(f, "%s is %lld, expected %s %s (%lld)", name, (long long)answer, pair->relation, pair->text,
                        (long long)read(f, pair->text));
    }
}

void answer_length(struct figure *f, const char *name, muslin_len answer)
{
    check_number(f, name, answer, length_in);
}

void answer_count(struct figure *f, const char *name, int64_t answer)
{
    check_number(f, name, answer, count_in);
}

void answer_text(struct figure *f, const char *name, const char *answer)
{
    for (int i = 0; i < f->expected.count; i++) {
        struct pair *pair = &f->expected.pair[i];
        if (strcmp(pair->name, name) != 0)
            continue;
        pair->used = 1;
        if (strcmp(pair->relation, "=") != 0 || strcmp(answer, pair->text) != 0)
            fail_figure(f, "%s is \"%s\", expected %s \"%s\"", name, answer, pair->relation, pair->text);
    }
}

void must(const struct figure *f, muslin_status status)
{
    if (status != MUSLIN_OK)
        fail_figure(f, "%s", muslin_status_sentence(status));
}

/* ---- the tables of questions ----------------------------------------------------------------------------------- */

/* One a file of questions. */
#define TABLES(X) \
    X(questions) \
    X(questions_accuracy) \
    X(questions_shrinkage) \
    X(questions_motif) \
    X(questions_cutlist) \
    X(questions_shape) \
    X(questions_unit) \
    X(questions_rounds) \
    X(questions_fit) \
    X(questions_supplies) \
    X(questions_reference) \
    X(questions_setting)

#define DECLARE(table) extern const struct question table[];
TABLES(DECLARE)

#define NAME(table) table,
static const struct question *const tables[] = { TABLES(NAME) };
enum { TABLES_COUNT = sizeof tables / sizeof *tables };

static void ask(struct figure *f)
{
    for (int i = 0; i < TABLES_COUNT; i++)
        for (const struct question *question = tables[i]; question->name != NULL; question++)
            if (strcmp(f->cells[QUESTION], question->name) == 0) {
                question->ask(f);
                return;
            }
    fail_figure(f, "is no question of the handbook");
}

static void want_all_used(const struct figure *f, const struct pairs *pairs, const char *what)
{
    for (int i = 0; i < pairs->count; i++)
        if (!pairs->pair[i].used)
            fail_figure(f, "%s %s is not one of this question's", what, pairs->pair[i].name);
}

START_TEST(a_published_figure_holds)
{
    struct figure *f = &figures[_i];
    split_pairs(f, f->cells[INPUTS], &f->inputs);
    split_pairs(f, f->cells[EXPECTED], &f->expected);
    if (f->expected.count == 0 || f->cells[SOURCE][0] == '\0')
        fail_figure(f, "names no expectation or no source");
    ask(f);
    want_all_used(f, &f->inputs, "input");
    want_all_used(f, &f->expected, "expectation");
}
END_TEST

/* ---- files ----------------------------------------------------------------------------------------------------- */

struct reading {
    const char *path;
    int line; /* 0 is the header */
    int column;
};

static void stop(const struct reading *reading, const char *why)
{
    fprintf(stderr, "%s, row %d: %s\n", reading->path, reading->line, why);
    exit(EXIT_FAILURE);
}

static void on_cell(void *text, size_t length_of_text, void *data)
{
    struct reading *reading = data;
    if (reading->column == COLUMNS || length_of_text >= TEXT_MAX || figure_count == FIGURES_MAX)
        stop(reading, "too many cells, too long a cell or too many rows");
    if (reading->line > 0)
        memcpy(figures[figure_count].cells[reading->column], text, length_of_text);
    reading->column++;
}

static void on_line(int end, void *data)
{
    struct reading *reading = data;
    (void)end;
    if (reading->column != COLUMNS)
        stop(reading, "too few cells");
    figure_count += reading->line > 0;
    reading->line++;
    reading->column = 0;
}

static void read_file(const char *path)
{
    struct reading reading = { path, 0, 0 };
    struct csv_parser parser;
    char chunk[4096];
    size_t got;
    FILE *file = fopen(path, "rb");
    if (file == NULL || csv_init(&parser, CSV_STRICT | CSV_STRICT_FINI) != 0)
        stop(&reading, "cannot be read");
    while ((got = fread(chunk, 1, sizeof chunk, file)) > 0)
        if (csv_parse(&parser, chunk, got, on_cell, on_line, &reading) != got)
            stop(&reading, csv_strerror(csv_error(&parser)));
    if (csv_fini(&parser, on_cell, on_line, &reading) != 0)
        stop(&reading, csv_strerror(csv_error(&parser)));
    csv_free(&parser);
    fclose(file);
    if (reading.line < 2)
        stop(&reading, "the file holds no figure");
}

static const char *file_name(const char *path)
{
    const char *slash = strrchr(path, '/');
    return slash != NULL ? slash + 1 : path;
}

int main(int argc, char **argv)
{
    Suite *suite = suite_create("handbook");
    for (int i = 1; i < argc; i++) {
        int first = figure_count;
        read_file(argv[i]);
        TCase *tcase = tcase_create(file_name(argv[i]));
        tcase_add_loop_test(tcase, a_published_figure_holds, first, figure_count);
        suite_add_tcase(suite, tcase);
    }
    SRunner *runner = srunner_create(suite);
    srunner_run_all(runner, CK_NORMAL);
    int failed = srunner_ntests_failed(runner);
    int ran = srunner_ntests_run(runner);
    srunner_free(runner);
    return failed == 0 && ran > 0 ? EXIT_SUCCESS : EXIT_FAILURE;
}
