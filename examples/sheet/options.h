/* options.h - what was asked for on the command line.
 *
 * SPDX-License-Identifier: MIT */
#ifndef OPTIONS_H
#define OPTIONS_H

#include <stdio.h>

#include "command.h"
#include "document.h"

enum form { FORM_UNSAID, FORM_PDF, FORM_SVG, FORM_PNG };

struct wish {
    const char *pattern;  /* "-": standard input */
    const char *output;   /* null: named after the pattern; "-": standard output */
    const char *pictures; /* folder for all pictures, or null */
    const char **sizes;   /* none: all of them */
    size_t sizes_count;
    int paper;            /* enum pattern_paper; 0: as the pattern says */
    enum form form;
    long dpi;
    long page;            /* 0: all */
    int picture;          /* enum picture_kind; 0: pages */
    bool grey;
    bool force;
};

/* What is to be done instead of a sheet. */
enum instead { INSTEAD_NOTHING, INSTEAD_HELP, INSTEAD_VERSION, INSTEAD_BASH, INSTEAD_ZSH };

/* False leaves a failure. */
bool options_read(int argc, char **argv, struct wish *wish, enum instead *instead, struct failure *failure);
void options_free(struct wish *wish);

/* A row of the table that reading, --help and completion share. */
struct option_told {
    const char *name;
    char letter;           /* 0: none */
    const char *value;     /* what follows it; null: nothing */
    const char *choices;   /* words parted by blanks; "FILE" and "FOLDER" are names of files; null: anything */
    const char *help;
};
extern const struct option_told options_told[]; /* ends with a null name */

/* "top", "blank", ...: of enum picture_kind, in its order. */
const char *picture_word(int kind);

/* help.c */
void help_print(FILE *out);
void help_bash(FILE *out);
void help_zsh(FILE *out);

#endif
