/* completion_bash.c - the completion script for bash.
 *
 * SPDX-License-Identifier: MIT */
#include "completion.h"

static void write_words(FILE *out, const struct word *words)
{
    for (const struct word *word = words; word->word != NULL; word++)
        fprintf(out, "%s%s", word == words ? "" : " ", word->word);
}

/* After an option with a choice come its words, after one that names a file the files, after another nothing. */
static void write_values(FILE *out, const char *command, const struct option_row *options)
{
    for (const struct option_row *row = options; row->name != NULL; row++) {
        if (!takes_value(row))
            continue;
        fprintf(out, "    %s:--%s) ", command, row->name);
        if (row->words != NULL) {
            fputs("words=\"", out);
            write_words(out, row->words);
            fputc('"', out);
        } else {
            fputs(is_file(row) ? "return" : "none=yes", out);
        }
        fputs(" ;;\n", out);
    }
}

static void write_options(FILE *out, const struct completed *completed)
{
    fputs("--help", out);
    for (size_t i = 0; i < 3 && completed->tables[i] != NULL; i++)
        for (const struct option_row *row = completed->tables[i]; row->name != NULL; row++)
            if (row->kind != KIND_HEADING)
                fprintf(out, " --%s", row->name);
}

/* Options where one has been begun, or where nothing else can be completed. */
static void write_command(FILE *out, const struct completed *completed)
{
    const struct option_row *operand = completed_operand(completed);
    for (size_t i = 0; i < 3 && completed->tables[i] != NULL; i++)
        write_values(out, completed->name, completed->tables[i]);
    if (operand != NULL) {
        fprintf(out, "    %s:*) case \"$word\" in -*) words=\"", completed->name);
        write_options(out, completed);
        fputs("\" ;; *) ", out);
        if (is_file(operand)) {
            fputs("return", out);
        } else {
            fputs("words=\"", out);
            write_words(out, operand->words);
            fputc('"', out);
        }
        fputs(" ;; esac ;;\n", out);
        return;
    }
    fprintf(out, "    %s:*) words=\"", completed->name);
    write_options(out, completed);
    fputs("\" ;;\n", out);
}

static void write_name(FILE *out, const struct completed *completed)
{
    fprintf(out, "%s ", completed->name);
}

void write_bash_completion(FILE *out)
{
    fputs("# bash completion for muslin\n"
          "_muslin() {\n"
          "    local words=\"\" none=\"\" word=\"${COMP_WORDS[COMP_CWORD]}\" before=\"${COMP_WORDS[COMP_CWORD-1]}\"\n"
          "    COMPREPLY=()\n"
          "    # --option=word comes in three words\n"
          "    if [ \"$before\" = \"=\" ]; then before=\"${COMP_WORDS[COMP_CWORD-2]}\"; fi\n"
          "    if [ \"$word\" = \"=\" ]; then word=\"\"; fi\n"
          "    if [ \"$COMP_CWORD\" -eq 1 ] || [ \"${COMP_WORDS[1]}\" = \"help\" ]; then\n"
          "        words=\"", out);
    for_each_completed(out, write_name);
    fputs("help --help --version\"\n"
          "    else case \"${COMP_WORDS[1]}:$before\" in\n", out);
    for_each_completed(out, write_command);
    fputs("    esac; fi\n"
          "    if [ -n \"$none\" ]; then compopt +o default 2>/dev/null; return; fi\n"
          "    mapfile -t COMPREPLY < <(compgen -W \"$words\" -- \"$word\")\n"
          "}\n"
          "complete -o default -F _muslin muslin\n", out);
}
