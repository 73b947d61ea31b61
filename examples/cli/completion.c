/* completion.c - a completion script for bash, made from the tables of options.
 *
 * SPDX-License-Identifier: MIT */
#include "completion.h"

#include "args.h"
#include "batch.h"

static void write_options(FILE *out, const struct option_row *options)
{
    for (const struct option_row *row = options; row->name != NULL; row++)
        if (row->kind != KIND_HEADING)
            fprintf(out, " --%s", row->name);
}

/* After an option with a choice come its words. */
static void write_choices(FILE *out, const char *command, const struct option_row *options)
{
    for (const struct option_row *row = options; row->name != NULL; row++) {
        if (row->words == NULL)
            continue;
        fprintf(out, "    %s:--%s) words=\"", command, row->name);
        for (const struct word *word = row->words; word->word != NULL; word++)
            fprintf(out, "%s%s", word == row->words ? "" : " ", word->word);
        fputs("\" ;;\n", out);
    }
}

static void write_command_options(FILE *out, const char *command, const struct option_row *options,
                                  const struct option_row *front)
{
    fprintf(out, "    %s:*) words=\"--help", command);
    write_options(out, options);
    write_options(out, common_options);
    write_options(out, front);
    fputs("\" ;;\n", out);
}

void write_completion(FILE *out)
{
    static const struct option_row none[] = { OPTION_END };
    fputs("# bash completion for muslin\n"
          "_muslin() {\n"
          "    local words=\"\"\n"
          "    if [ \"$COMP_CWORD\" -eq 1 ]; then\n"
          "        words=\"", out);
    for (const struct command_group *group = command_groups; group->title != NULL; group++)
        for (const struct command *const *command = group->commands; *command != NULL; command++)
            fprintf(out, "%s ", (*command)->name);
    fputs("batch completion help --help --version\"\n"
          "    else case \"${COMP_WORDS[1]}:${COMP_WORDS[COMP_CWORD-1]}\" in\n", out);
    write_choices(out, "*", common_options);
    for (const struct command_group *group = command_groups; group->title != NULL; group++)
        for (const struct command *const *command = group->commands; *command != NULL; command++) {
            write_choices(out, (*command)->name, (*command)->options);
            write_command_options(out, (*command)->name, (*command)->options,
                                  front_of(*command));
        }
    write_choices(out, "batch", batch_front_options);
    write_command_options(out, "batch", none, batch_front_options);
    fputs("    esac; fi\n"
          "    mapfile -t COMPREPLY < <(compgen -W \"$words\" -- \"${COMP_WORDS[COMP_CWORD]}\")\n"
          "}\n"
          "complete -o default -F _muslin muslin\n", out);
}
