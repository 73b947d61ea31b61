/* main.c - muslin, quilt arithmetic on the command line.
 *
 * SPDX-License-Identifier: MIT
 *
 * Only the library's public headers are used, and no sum is done here: what is shown, the library worked out. */
#include <argp.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "args.h"
#include "batch.h"
#include "completion.h"
#include "interrupt.h"
#include "memory.h"
#include "output.h"
#include "sheet.h"

/* ---- complaints ------------------------------------------------------------------------------------------------- */

/* With --json the complaint is also an answer that a script can read. */
static void complain_in_json(const struct failure *failure)
{
    json_t *reply = json_pack("{s:o}", "error", failure_as_json(failure));
    char *text = json_dumps(reply, JSON_INDENT(2));
    puts(text);
    free(text);
    json_decref(reply);
}

/* ---- one command ------------------------------------------------------------------------------------------------ */

/* The answer as text; the caller frees it. */
static char *text_for_people(const struct command *command, json_t *answer)
{
    char *text = NULL;
    size_t length = 0;
    struct sheet sheet = { .out = open_text(&text, &length) };
    if (command->lead != NULL)
        sheet_title(&sheet, answer, command->lead);
    if (command->show != NULL)
        command->show(&sheet, answer);
    else
        show_figures(&sheet, answer);
    fclose(sheet.out);
    return text;
}

static char *text_of(const struct command *command, json_t *answer, bool json)
{
    if (!json)
        return text_for_people(command, answer);
    char *text = json_dumps(answer, JSON_INDENT(2));
    size_t length = strlen(text);
    char *line = need_memory(length + 2);
    memcpy(line, text, length);
    line[length] = '\n';
    free(text);
    return line;
}

static bool deliver(const char *text, const char *target, const struct args *args, struct failure *failure)
{
    struct output output;
    bool replace = json_is_true(json_object_get(args->front, "force"));
    if (!output_open(&output, target, replace, failure))
        return false;
    if (!output_write(&output, text, strlen(text), failure)) {
        output_drop(&output);
        return false;
    }
    return output_finish(&output, failure);
}

/* Goes first: where it cannot be written, nothing is said. */
static bool deliver_drawing(const struct command *command, json_t *answer, const struct args *args,
                            struct failure *failure)
{
    const char *target = json_string_value(json_object_get(args->front, "svg"));
    char *drawing = NULL;
    size_t length = 0;
    if (target == NULL)
        return true;
    FILE *out = open_text(&drawing, &length);
    command->draw(out, answer);
    fclose(out);
    bool fine = deliver(drawing, target, args, failure);
    free(drawing);
    return fine;
}

static bool answer_and_deliver(const struct command *command, const struct args *args, const char *program,
                               bool *doubted, struct failure *failure)
{
    json_t *answer = answer_request(command, args->request, &usual_common, failure);
    if (answer == NULL)
        return false;
    char *text = text_of(command, answer, json_is_true(json_object_get(args->front, "json")));
    bool fine = deliver_drawing(command, answer, args, failure) &&
                deliver(text, json_string_value(json_object_get(args->front, "output")), args, failure);
    *doubted = fine && command->doubt != NULL && command->doubt(program, answer);
    json_decref(answer);
    free(text);
    return fine;
}

/* One answer has one form. */
static bool is_one_form(const struct args *args, struct failure *failure)
{
    if (json_object_get(args->request, "csv") == NULL || !json_is_true(json_object_get(args->front, "json")))
        return true;
    failure_say(failure, "csv", "The answer is either comma-separated values or JSON: leave out --csv or --json.");
    return false;
}

static enum exit_code run_command(const struct command *command, int argc, char **argv)
{
    struct args args;
    struct failure failure = { .exit_code = EXIT_ANSWERED };
    bool doubted = false;
    bool fine = read_args(command, front_of(command), argc, argv, &args, &failure) &&
                is_one_form(&args, &failure) &&
                answer_and_deliver(command, &args, argv[0], &doubted, &failure);
    if (!fine) {
        tell_failure(argv[0], &failure);
        if (json_is_true(json_object_get(args.front, "json")))
            complain_in_json(&failure);
        json_decref(failure.complaints);
    }
    json_decref(args.request);
    json_decref(args.front);
    if (fine)
        return interrupted() ? EXIT_INTERRUPTED : doubted ? EXIT_NO_ANSWER : EXIT_ANSWERED;
    return failure.exit_code;
}

/* ---- muslin itself ---------------------------------------------------------------------------------------------- */

const char *argp_program_version = NULL;

static const char main_doc[] =
    "Quilt arithmetic: from the sizes someone wants to see to what must be cut, sewn, pressed and bought, and back "
    "again. Figures are exact or say about, and sizes say cut, unfinished or finished.\v";

/* The list of commands, below the options. */
/* A command's line; what is too long for it goes on below, under the words. */
static void list_command(FILE *out, const char *name, const char *about)
{
    enum { COLUMN = 16, LINE = 78 };
    int used = fprintf(out, "  %-14s", name);
    for (const char *word = about; *word != '\0';) {
        int length = (int)strcspn(word, " ");
        if (used + 1 + length > LINE)
            used = fprintf(out, "\n%*s", COLUMN, "") - 1;
        used += fprintf(out, " %.*s", length, word);
        word += length + (word[length] == ' ');
    }
    fputc('\n', out);
}

static char *list_commands(void)
{
    char *text = NULL;
    size_t length = 0;
    FILE *out = open_text(&text, &length);
    for (const struct command_group *group = command_groups; group->title != NULL; group++) {
        fprintf(out, "%s:\n", group->title);
        for (const struct command *const *command = group->commands; *command != NULL; command++)
            list_command(out, (*command)->name, (*command)->about);
        fputc('\n', out);
    }
    fputs("For scripts:\n", out);
    list_command(out, "batch", batch_command.about);
    list_command(out, "completion", completion_command.about);
    fputc('\n', out);
    fputs("muslin COMMAND --help tells more, with examples. Exit status: 0 answered, 1 the sum has no answer, 2 wrong "
          "input, 3 trouble with a file, 130 interrupted.", out);
    fclose(out);
    return text;
}

static char *filter_help(int key, const char *text, void *input)
{
    (void)input;
    return key == ARGP_KEY_HELP_EXTRA ? list_commands() : (char *)(uintptr_t)text;
}

/* Only words before the command are for muslin itself; argp stops there. */
static error_t parse_main(int key, char *text, struct argp_state *state)
{
    (void)text;
    if (key != ARGP_KEY_ARG)
        return ARGP_ERR_UNKNOWN;
    *(int *)state->input = state->next - 1;
    state->next = state->argc;
    return 0;
}

static int find_command_word(int argc, char **argv)
{
    const struct argp argp = { NULL, parse_main, "COMMAND ...", main_doc, NULL, filter_help, NULL };
    int at = argc;
    if (argp_parse(&argp, argc, argv, ARGP_IN_ORDER, NULL, &at) != 0)
        exit(EXIT_WRONG_INPUT);
    return at;
}

static enum exit_code unknown_command(const char *name)
{
    char meant[200];
    suggest_commands(name, meant, sizeof meant);
    fprintf(stderr, "muslin: There is no command \"%s\".%s%s%s See muslin --help.\n", name,
            meant[0] != '\0' ? " Did you mean " : "", meant, meant[0] != '\0' ? "?" : "");
    return EXIT_WRONG_INPUT;
}

/* argv[0] becomes "muslin plan", so that argp and complaints name the command. */
static enum exit_code run_named(const char *name, int argc, char **argv)
{
    char program[60];
    const struct command *command = find_command(name);
    snprintf(program, sizeof program, "muslin %s", name);
    argv[0] = program;
    if (command != NULL)
        return run_command(command, argc, argv);
    if (strcmp(name, "batch") == 0)
        return run_batch_command(argc, argv);
    if (strcmp(name, "completion") == 0)
        return run_completion_command(argc, argv);
    return unknown_command(name);
}

/* -h is what many try first. A length behind a lone -- is none. */
static void as_help(int argc, char **argv)
{
    static char help[] = "--help";
    for (int i = 1; i < argc && strcmp(argv[i], "--") != 0; i++)
        if (strcmp(argv[i], "-h") == 0)
            argv[i] = help;
}

int main(int argc, char **argv)
{
    char version[40];
    char help[] = "--help";
    char name_of_program[] = "muslin";
    snprintf(version, sizeof version, "muslin %s", muslin_version_text());
    argp_program_version = version;
    argp_err_exit_status = EXIT_WRONG_INPUT;
    use_memory_for_json();
    watch_for_interrupt();
    argv[0] = name_of_program;
    as_help(argc, argv);
    int at = find_command_word(argc, argv);
    if (at >= argc) {
        fputs("muslin: Say what to work out, for instance muslin plan 42 --columns 3 --rows 3. See muslin --help.\n",
              stderr);
        return EXIT_WRONG_INPUT;
    }
    const char *name = argv[at];
    if (strcmp(name, "version") == 0)
        return puts(version) >= 0 && fflush(stdout) == 0 ? EXIT_ANSWERED : EXIT_FILE_TROUBLE;
    if (strcmp(name, "help") == 0) {
        char *shifted[] = { argv[0], help, NULL };
        if (at + 1 < argc)
            return (int)run_named(argv[at + 1], 2, shifted);
        find_command_word(2, shifted);
    }
    return (int)run_named(name, argc - at, argv + at);
}
