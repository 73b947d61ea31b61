/* help.c - --help, and completion for bash and zsh, from the table of options.
 *
 * SPDX-License-Identifier: MIT */
#include <string.h>

#include "options.h"

static void put_option(FILE *out, const struct option_told *told)
{
    char word[60];
    char letter[4] = "   ";
    if (told->letter != 0)
        snprintf(letter, sizeof letter, "-%c,", told->letter);
    snprintf(word, sizeof word, "%s --%s%s%s", letter, told->name, told->value != NULL ? " " : "",
             told->value != NULL ? told->value : "");
    fprintf(out, "  %-24s %s\n", word, told->help);
    if (strcmp(told->name, "picture") == 0)
        fprintf(out, "  %-24s KIND is one of: %s\n", "", told->choices);
}

void help_print(FILE *out)
{
    fputs("Usage: muslin-sheet [OPTION ...] PATTERN.json\n\n"
          "Works a quilt pattern out and makes a sheet to print of it: all sizes side by side, then for each size\n"
          "what to buy, what to cut and how it lies on the cloth, every step of sewing with its picture, pressing,\n"
          "finishing, and templates in their true size. PATTERN.json describes the quilt; - reads standard input.\n\n",
          out);
    for (const struct option_told *told = options_told; told->name != NULL; told++)
        put_option(out, told);
    fputs("\nExamples:\n"
          "  muslin-sheet lanterns.json                          all sizes, to lanterns.pdf\n"
          "  muslin-sheet lanterns.json --size lap --paper a4    one size, on A4\n"
          "  muslin-sheet lanterns.json -o class.pdf --grey      for a copier\n"
          "  muslin-sheet lanterns.json --png --page 1 -o a.png  the first page as an image\n"
          "  muslin-sheet lanterns.json --picture top -o top.svg the top alone\n"
          "  muslin-sheet lanterns.json --pictures drawings      every picture, each in a file\n\n"
          "Print at 100 % (\"actual size\") and measure the check square before you cut by a template. A file that is\n"
          "there is never replaced without --force; the names of the files that were written are printed.\n\n"
          "Exit status: 0 written, 1 the pattern has no answer, or edges in it do not meet, 2 wrong input, 3 trouble\n"
          "with a file, the memory or the fonts, 130 interrupted: nothing is left half written.\n",
          out);
}

/* ---- bash -------------------------------------------------------------------------------------------------------- */

static bool is_named(const struct option_told *told, const char *name)
{
    return told->choices != NULL && strcmp(told->choices, name) == 0;
}

static void put_words(FILE *out, const struct option_told *told)
{
    fputs("        --", out);
    fputs(told->name, out);
    if (told->letter != 0)
        fprintf(out, "|-%c", told->letter);
    if (is_named(told, "FILE"))
        fputs(") mapfile -t COMPREPLY < <(compgen -f -- \"$word\"); return ;;\n", out);
    else if (is_named(told, "FOLDER"))
        fputs(") mapfile -t COMPREPLY < <(compgen -d -- \"$word\"); return ;;\n", out);
    else
        fprintf(out, ") words=\"%s\" ;;\n", told->choices != NULL ? told->choices : "");
}

void help_bash(FILE *out)
{
    fputs("# bash completion for muslin-sheet\n"
          "_muslin_sheet() {\n"
          "    local word=\"${COMP_WORDS[COMP_CWORD]}\" words=\"\"\n"
          "    case \"${COMP_WORDS[COMP_CWORD-1]}\" in\n", out);
    for (const struct option_told *told = options_told; told->name != NULL; told++)
        if (told->value != NULL)
            put_words(out, told);
    fputs("        *)\n"
          "            if [[ $word != -* ]]; then\n"
          "                mapfile -t COMPREPLY < <(compgen -f -X '!*.json' -- \"$word\"; compgen -d -- \"$word\")\n"
          "                return\n"
          "            fi\n"
          "            words=\"", out);
    for (const struct option_told *told = options_told; told->name != NULL; told++)
        fprintf(out, "%s--%s", told == options_told ? "" : " ", told->name);
    fputs("\" ;;\n"
          "    esac\n"
          "    mapfile -t COMPREPLY < <(compgen -W \"$words\" -- \"$word\")\n"
          "}\n"
          "complete -o filenames -F _muslin_sheet muslin-sheet\n", out);
}

/* ---- zsh --------------------------------------------------------------------------------------------------------- */

/* Within '...[...]' no brackets, and no quotes. */
static void put_help(FILE *out, const char *help)
{
    for (const char *c = help; *c != '\0'; c++) {
        if (*c == '[' || *c == ']' || *c == ':')
            fputc('\\', out);
        if (*c != '\'')
            fputc(*c, out);
    }
}

static void put_value(FILE *out, const struct option_told *told)
{
    if (told->value == NULL)
        return;
    fprintf(out, ":%s:", told->value);
    if (is_named(told, "FILE"))
        fputs("_files", out);
    else if (is_named(told, "FOLDER"))
        fputs("_files -/", out);
    else if (told->choices != NULL)
        fprintf(out, "(%s)", told->choices);
}

void help_zsh(FILE *out)
{
    fputs("#compdef muslin-sheet\n"
          "_arguments \\\n", out);
    for (const struct option_told *told = options_told; told->name != NULL; told++) {
        const char *many = strcmp(told->name, "size") == 0 ? "*" : "";
        fprintf(out, "    '%s--%s[", many, told->name);
        put_help(out, told->help);
        fputc(']', out);
        put_value(out, told);
        fputs("' \\\n", out);
    }
    fputs("    '1:pattern:_files -g \"*.json\"'\n", out);
}
