/* completion_zsh.c - the completion script for zsh.
 *
 * SPDX-License-Identifier: MIT */
#include <string.h>

#include "completion.h"

/* An explanation in single quotes, in brackets or between colons; a script has one line for each. */
static void write_explanation(FILE *out, const char *text)
{
    for (; *text != '\0'; text++) {
        if (*text == '\'')
            fputs("'\\'", out);
        else if (strchr("[]:\\", *text) != NULL)
            fputc('\\', out);
        fputc(*text, out);
    }
}

/* ":finished width:", and what completes it. */
static void write_value(FILE *out, const struct option_row *row)
{
    fprintf(out, ":%s:", row->name);
    if (is_file(row))
        fputs("_files", out);
    if (row->words == NULL)
        return;
    for (const struct word *word = row->words; word->word != NULL; word++)
        fprintf(out, "%s%s", word == row->words ? "(" : " ", word->word);
    fputc(')', out);
}

static bool repeats(const struct option_row *row)
{
    return row->kind == KIND_LENGTHS || row->kind == KIND_TEXTS || row->kind == KIND_FILES;
}

static void write_option(FILE *out, const struct option_row *row)
{
    fprintf(out, " \\\n            '%s--%s%s[", repeats(row) ? "*" : "", row->name, takes_value(row) ? "=" : "");
    write_explanation(out, row->help);
    fputc(']', out);
    if (takes_value(row))
        write_value(out, row);
    fputc('\'', out);
}

static void write_command(FILE *out, const struct completed *completed)
{
    const struct option_row *operand = completed_operand(completed);
    fprintf(out, "        (%s) _arguments -S '--help[options and examples]'", completed->name);
    for (size_t i = 0; i < 3 && completed->tables[i] != NULL; i++)
        for (const struct option_row *row = completed->tables[i]; row->name != NULL; row++)
            if (row->kind != KIND_HEADING)
                write_option(out, row);
    if (operand != NULL) {
        fputs(" \\\n            '*", out);
        write_value(out, operand);
        fputc('\'', out);
    }
    fputs(" ;;\n", out);
}

static void write_name(FILE *out, const struct completed *completed)
{
    fprintf(out, "        '%s:", completed->name);
    write_explanation(out, completed->about);
    fputs("'\n", out);
}

void write_zsh_completion(FILE *out)
{
    fputs("#compdef muslin\n"
          "# zsh completion for muslin\n"
          "_muslin() {\n"
          "    local context state state_descr line\n"
          "    typeset -A opt_args\n"
          "    local -a commands=(\n", out);
    for_each_completed(out, write_name);
    fputs("        'help:options and examples of a command'\n"
          "    )\n"
          "    _arguments -C '(-)--help[all commands]' '(-)--version[version]' '1: :->command' '*:: :->rest'\n"
          "    case $state in\n"
          "        (command) _describe -t commands command commands ;;\n"
          "        (rest) case $words[1] in\n"
          "        (help) _describe -t commands command commands ;;\n", out);
    for_each_completed(out, write_command);
    fputs("        esac ;;\n"
          "    esac\n"
          "}\n"
          "if [ \"$funcstack[1]\" = \"_muslin\" ]; then _muslin \"$@\"; else compdef _muslin muslin; fi\n", out);
}
