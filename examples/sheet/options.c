/* options.c - the command line read with getopt_long.
 *
 * SPDX-License-Identifier: MIT */
#define _GNU_SOURCE
#include "options.h"

#include <errno.h>
#include <getopt.h>
#include <limits.h>
#include <stdlib.h>
#include <string.h>

#include "memory.h"

/* Values of getopt_long for options without a letter, in the order of the table. */
enum { FIRST_LONG = 256, MOST_OPTIONS = 32 };

const struct option_told options_told[] = {
    { "output", 'o', "FILE", "FILE", "where the sheet goes; - is standard output (PATTERN with another ending, here)" },
    { "size", 's', "NAME", NULL, "only this size; may be given more than once (all of them)" },
    { "paper", 'p', "PAPER", "letter a4", "letter or a4 (as the pattern says)" },
    { "pdf", 0, NULL, NULL, "one file with all pages (the usual, unless FILE ends otherwise)" },
    { "svg", 0, NULL, NULL, "a drawing of each page: NAME-1.svg, NAME-2.svg, ..." },
    { "png", 0, NULL, NULL, "an image of each page: NAME-1.png, NAME-2.png, ..." },
    { "dpi", 0, "N", NULL, "dots per inch of a PNG, 36 to 600 (150)" },
    { "page", 0, "N", NULL, "only this page" },
    { "picture", 0, "KIND", "top blank key block step strip-set cloth borders backing checks template",
      "only pictures of this kind, each alone" },
    { "pictures", 0, "FOLDER", "FOLDER", "all pictures, each alone, as SVG (or with --png) into this folder" },
    { "grey", 0, NULL, NULL, "without colours, as a black and white printer shows it" },
    { "force", 'f', NULL, NULL, "replace files that are there" },
    { "completion", 0, "SHELL", "bash zsh", "print what completes these options in bash or zsh" },
    { "help", 'h', NULL, NULL, "this text" },
    { "version", 'V', NULL, NULL, "the version" },
    { NULL, 0, NULL, NULL, NULL }
};

const char *picture_word(int kind)
{
    static const char *const words[] = { "top",   "blank",   "key",     "block",  "step",    "strip-set",
                                         "cloth", "borders", "backing", "checks", "template" };
    return words[kind - PICTURE_TOP];
}

/* ---- values ------------------------------------------------------------------------------------------------------ */

static bool read_number(const char *option, const char *text, long least, long most, long *out,
                        struct failure *failure)
{
    char *end = NULL;
    errno = 0;
    long number = strtol(text, &end, 10);
    if (errno == 0 && end != text && *end == '\0' && number >= least && number <= most) {
        *out = number;
        return true;
    }
    if (most == INT_MAX)
        failure_say(failure, option, "\"%.60s\" is no number of 1 or more.", text);
    else
        failure_say(failure, option, "\"%.60s\" is no number from %ld to %ld.", text, least, most);
    return false;
}

/* The place of a word among those of the table, from 1; 0 leaves a failure. */
static int read_choice(const char *option, const char *text, const char *choices, struct failure *failure)
{
    size_t length = strlen(text);
    int place = 1;
    for (const char *word = choices; *word != '\0'; place++) {
        size_t next = strcspn(word, " ");
        if (next == length && strncasecmp(word, text, length) == 0)
            return place;
        word += next + strspn(word + next, " ");
    }
    failure_say(failure, option, "\"%.60s\" is none of these: %s.", text, choices);
    return 0;
}

static bool set_form(struct wish *wish, enum form form, struct failure *failure)
{
    if (wish->form == FORM_UNSAID || wish->form == form) {
        wish->form = form;
        return true;
    }
    failure_say(failure, NULL, "Choose one of --pdf, --svg and --png.");
    return false;
}

static void add_size(struct wish *wish, const char *name)
{
    const char **more = need_memory((wish->sizes_count + 1) * sizeof *more);
    for (size_t i = 0; i < wish->sizes_count; i++)
        more[i] = wish->sizes[i];
    more[wish->sizes_count++] = name;
    free(wish->sizes);
    wish->sizes = more;
}

/* ---- options ----------------------------------------------------------------------------------------------------- */

static bool take_value(const struct option_told *told, const char *text, struct wish *wish, enum instead *instead,
                       struct failure *failure)
{
    int choice = 1;
    if (told->choices != NULL && strcmp(told->choices, told->value) != 0)
        choice = read_choice(told->name, text, told->choices, failure);
    if (strcmp(told->name, "output") == 0)
        wish->output = text;
    else if (strcmp(told->name, "pictures") == 0)
        wish->pictures = text;
    else if (strcmp(told->name, "size") == 0)
        add_size(wish, text);
    else if (strcmp(told->name, "paper") == 0)
        wish->paper = choice;
    else if (strcmp(told->name, "picture") == 0)
        wish->picture = choice;
    else if (strcmp(told->name, "completion") == 0)
        *instead = choice == 1 ? INSTEAD_BASH : INSTEAD_ZSH;
    else if (strcmp(told->name, "dpi") == 0)
        return read_number(told->name, text, 36, 600, &wish->dpi, failure);
    else
        return read_number(told->name, text, 1, INT_MAX, &wish->page, failure);
    return choice != 0;
}

static bool take_switch(const struct option_told *told, struct wish *wish, enum instead *instead,
                        struct failure *failure)
{
    if (strcmp(told->name, "pdf") == 0)
        return set_form(wish, FORM_PDF, failure);
    if (strcmp(told->name, "svg") == 0)
        return set_form(wish, FORM_SVG, failure);
    if (strcmp(told->name, "png") == 0)
        return set_form(wish, FORM_PNG, failure);
    if (strcmp(told->name, "grey") == 0)
        wish->grey = true;
    else if (strcmp(told->name, "force") == 0)
        wish->force = true;
    else
        *instead = strcmp(told->name, "help") == 0 ? INSTEAD_HELP : INSTEAD_VERSION;
    return true;
}

/* getopt_long's own tables, made of ours. */
static void make_tables(struct option *longs, char *letters)
{
    *letters++ = ':';
    for (int i = 0; options_told[i].name != NULL; i++) {
        const struct option_told *told = &options_told[i];
        longs[i] = (struct option){ told->name, told->value != NULL ? required_argument : no_argument, NULL,
                                    FIRST_LONG + i };
        if (told->letter == 0)
            continue;
        *letters++ = told->letter;
        if (told->value != NULL)
            *letters++ = ':';
    }
    *letters = '\0';
}

static const struct option_told *told_of(int found)
{
    int row = 0;
    while (found < FIRST_LONG && options_told[row].letter != found)
        row++;
    return &options_told[found < FIRST_LONG ? row : found - FIRST_LONG];
}

static bool take_options(int argc, char **argv, struct wish *wish, enum instead *instead, struct failure *failure)
{
    struct option longs[MOST_OPTIONS] = { { NULL, 0, NULL, 0 } };
    char letters[2 * MOST_OPTIONS];
    make_tables(longs, letters);
    for (int found; (found = getopt_long(argc, argv, letters, longs, NULL)) != -1;) {
        if (found == ':' || found == '?') {
            failure_say(failure, NULL, found == ':' ? "%.60s wants a value. See muslin-sheet --help."
                                                    : "There is no option %.60s. See muslin-sheet --help.",
                        argv[optind - 1]);
            return false;
        }
        const struct option_told *told = told_of(found);
        if (!(told->value != NULL ? take_value(told, optarg, wish, instead, failure)
                                  : take_switch(told, wish, instead, failure)))
            return false;
    }
    return true;
}

/* ---- what goes together ------------------------------------------------------------------------------------------ */

static enum form form_of_name(const char *name)
{
    const char *dot = name != NULL ? strrchr(name, '.') : NULL;
    if (dot != NULL && strcasecmp(dot, ".svg") == 0)
        return FORM_SVG;
    return dot != NULL && strcasecmp(dot, ".png") == 0 ? FORM_PNG : FORM_PDF;
}

static bool goes_together(struct wish *wish, struct failure *failure)
{
    const bool has_ending = form_of_name(wish->output) != FORM_PDF ||
                            (wish->output != NULL && strlen(wish->output) > 4 &&
                             strcasecmp(wish->output + strlen(wish->output) - 4, ".pdf") == 0);
    if (wish->form != FORM_UNSAID && has_ending && form_of_name(wish->output) != wish->form) {
        failure_say(failure, "output", "%.200s is not named like what it is to be: give it another ending, or leave out "
                                       "--pdf, --svg or --png.", wish->output);
        return false;
    }
    if (wish->form == FORM_UNSAID)
        wish->form = wish->output == NULL && (wish->pictures != NULL || wish->picture != 0)
                         ? FORM_SVG
                         : form_of_name(wish->output);
    if (wish->pictures != NULL && (wish->output != NULL || wish->page != 0 || wish->picture != 0))
        failure_say(failure, "pictures", "This writes all pictures, each to its own file: leave out --output, "
                                         "--page and --picture.");
    else if (wish->pictures != NULL && wish->form == FORM_PDF)
        failure_say(failure, "pictures", "Pictures alone are SVG or PNG, not PDF.");
    else if (wish->picture != 0 && (wish->page != 0 || wish->form == FORM_PDF))
        failure_say(failure, "picture", "A picture alone is SVG or PNG and has no pages.");
    else
        return true;
    return false;
}

bool options_read(int argc, char **argv, struct wish *wish, enum instead *instead, struct failure *failure)
{
    *wish = (struct wish){ .dpi = 150 };
    *instead = INSTEAD_NOTHING;
    opterr = 0;
    if (!take_options(argc, argv, wish, instead, failure))
        return false;
    if (*instead != INSTEAD_NOTHING)
        return true;
    if (optind + 1 != argc) {
        failure_say(failure, NULL, "%s See muslin-sheet --help.",
                    optind == argc ? "Say which pattern, for instance muslin-sheet lanterns.json."
                                   : "One pattern at a time.");
        return false;
    }
    wish->pattern = argv[optind];
    return goes_together(wish, failure);
}

void options_free(struct wish *wish)
{
    free(wish->sizes);
}
