/* completion.c - the command that prints a completion script, and what the scripts have in common.
 *
 * SPDX-License-Identifier: MIT */
#include "completion.h"

#include "args.h"
#include "batch.h"

enum shell { SHELL_BASH = 1, SHELL_ZSH };
static const struct word shell_words[] = { { "bash", SHELL_BASH }, { "zsh", SHELL_ZSH }, { NULL, 0 } };

struct completion_request {
    int32_t shell;
};

static const struct option_row shell_options[] = {
    { "shell", KIND_CHOICE, offsetof(struct completion_request, shell), 0, OPTION_OPERAND, shell_words,
      "bash (the usual) or zsh" },
    OPTION_END
};
static const struct option_row no_options[] = { OPTION_END };

const struct command completion_command = {
    .name = "completion",
    .about = "a script by which bash or zsh completes commands and options",
    .operands = "[SHELL]",
    .examples = "  muslin completion bash > ~/.muslin-completion  # and in ~/.bashrc: . ~/.muslin-completion\n"
                "  muslin completion zsh > _muslin  # in a folder of zsh's fpath",
    .options = no_options
};

/* ---- what scripts know ------------------------------------------------------------------------------------------ */

void for_each_completed(FILE *out, void (*write)(FILE *out, const struct completed *completed))
{
    for (const struct command_group *group = command_groups; group->title != NULL; group++)
        for (const struct command *const *at = group->commands; *at != NULL; at++) {
            const struct command *command = *at;
            const struct completed completed = { command->name, command->about,
                                                 { command->options, common_options, front_of(command) } };
            write(out, &completed);
        }
    const struct completed batch = { batch_command.name, batch_command.about, { batch_front_options, common_options } };
    const struct completed completion = { completion_command.name, completion_command.about, { shell_options } };
    write(out, &batch);
    write(out, &completion);
}

bool is_file(const struct option_row *row)
{
    return row->kind == KIND_FILE || row->kind == KIND_FILES;
}

const struct option_row *completed_operand(const struct completed *completed)
{
    for (size_t i = 0; i < 3 && completed->tables[i] != NULL; i++)
        for (const struct option_row *row = completed->tables[i]; row->name != NULL; row++)
            if ((row->flags & OPTION_OPERAND) != 0 && (is_file(row) || row->words != NULL))
                return row;
    return NULL;
}

/* ---- the command ------------------------------------------------------------------------------------------------ */

enum exit_code run_completion_command(int argc, char **argv)
{
    struct args args;
    struct failure failure;
    struct completion_request wanted = { .shell = SHELL_BASH };
    bool fine = read_args(&completion_command, shell_options, argc, argv, &args, &failure) &&
                read_by_table(args.front, shell_options, &wanted, &failure);
    if (!fine)
        tell_failure(argv[0], &failure);
    else if (wanted.shell == SHELL_ZSH)
        write_zsh_completion(stdout);
    else
        write_bash_completion(stdout);
    json_decref(args.request);
    json_decref(args.front);
    if (!fine)
        return EXIT_WRONG_INPUT;
    return fflush(stdout) == 0 ? EXIT_ANSWERED : EXIT_FILE_TROUBLE;
}
