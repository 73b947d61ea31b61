/* command.h - the front end's own terms: a command, its options, the desk it works at, and what can go wrong.
 *
 * SPDX-License-Identifier: MIT
 *
 * Every command is one row: a table of options that fills its request struct, and a function that turns the request
 * into a JSON answer. Command line, batch lines, --help and shell completion all read the same tables. */
#ifndef CLI_COMMAND_H
#define CLI_COMMAND_H

#include <jansson.h>
#include <muslin/muslin.h>
#include <stdbool.h>
#include <stddef.h>
#include <stdint.h>
#include <stdio.h>

/* What the program returns; the manual page lists these. */
enum exit_code {
    EXIT_ANSWERED = 0,
    EXIT_NO_ANSWER = 1,    /* the sum has no answer, or some lines of a batch failed */
    EXIT_WRONG_INPUT = 2,
    EXIT_FILE_TROUBLE = 3, /* a file, a stream or memory */
    EXIT_INTERRUPTED = 130
};

/* ---- what can go wrong ------------------------------------------------------------------------------------------ */

/* The status of a failure that the library never saw: an unknown option, a missing one, a line that is not JSON. */
#define STATUS_REQUEST (-1)

struct failure {
    enum exit_code exit_code;
    muslin_status status;  /* the library's, or STATUS_REQUEST */
    int32_t argument;      /* enum muslin_argument */
    int64_t at;
    int64_t value;
    int64_t limit;
    char option[32];       /* without dashes; empty when none can be named */
    char sentence[500];
    json_t *complaints;    /* of a file in which more may be wrong: {place, line, column, value, sentence} each; its
                              owner's; else null */
};

/* Fills the failure with a sentence of the front end's own. `option` may be null. */
void failure_say(struct failure *failure, const char *option, const char *format, ...)
    __attribute__((format(printf, 3, 4)));
/* "muslin plan: --columns: ..." on standard error. */
void tell_failure(const char *program, const struct failure *failure);
json_t *failure_as_json(const struct failure *failure);
/* Is it the question that is wrong, or is there just no quilt in it? */
enum exit_code exit_code_of(muslin_status status);

/* ---- words ------------------------------------------------------------------------------------------------------ */

/* A choice as people write it. A list ends with a null word. */
struct word {
    const char *word;
    int32_t value;
};

/* ---- options ---------------------------------------------------------------------------------------------------- */

enum kind {
    KIND_HEADING, /* no option: a title in --help */
    KIND_LENGTH,  /* muslin_len */
    KIND_LENGTHS, /* struct lengths, repeatable */
    KIND_COUNT,   /* int64_t */
    KIND_SHARE,   /* int32_t, parts per million, written "3 %" */
    KIND_CHOICE,  /* int32_t, one of `words` */
    KIND_SWITCH,  /* int32_t, 0 or 1 */
    KIND_TEXT,    /* const char *, which lives as long as the request */
    KIND_FILE,    /* the same: the name of a file */
    KIND_TEXTS,   /* struct texts, repeatable, read further by the command */
    KIND_FILES    /* json_t *, a list of texts of any length, which lives as long as the request */
};

#define LIST_MAX 200
#define TEXTS_MAX 40

struct lengths {
    size_t count;
    muslin_len values[LIST_MAX];
};

struct texts {
    size_t count;
    const char *texts[TEXTS_MAX];
};

#define OPTION_REQUIRED 1u
#define OPTION_OPERAND 2u  /* also taken from words that stand without an option name */

struct option_row {
    const char *name;          /* "fold-clear"; the title of a heading; null ends the table */
    enum kind kind;
    size_t offset;             /* in the command's request struct */
    int32_t argument;          /* what the library calls it, so that its complaint finds the option */
    unsigned flags;
    const struct word *words;  /* of KIND_CHOICE */
    const char *help;
};

/* Rows that most tables have. */
#define OPTION_HEADING(title) { title, KIND_HEADING, 0, 0, 0, NULL, NULL }
#define OPTION_END { NULL, KIND_HEADING, 0, 0, 0, NULL, NULL }
/* The seam, for a request struct with the members `allowance_` and `take_up_`. */
#define OPTION_SEAM(request, allowance_, take_up_) \
    { "seam", KIND_LENGTH, offsetof(struct request, allowance_), MUSLIN_ARG_SEAM_ALLOWANCE, 0, NULL, \
      "seam allowance on each edge, as stitched (1/4 in)" }, \
    { "take-up", KIND_LENGTH, offsetof(struct request, take_up_), MUSLIN_ARG_TAKE_UP, 0, NULL, \
      "what fold and thread of one pressed seam eat beyond its two allowances (none)" }
/* Rounding, for a request struct with the member `rounding_`. */
#define OPTION_ROUNDING(request, rounding_) \
    { "to", KIND_LENGTH, offsetof(struct request, rounding_.grid), MUSLIN_ARG_GRID, 0, NULL, \
      "round to this grid, for instance 1/8 in" }, \
    { "round", KIND_CHOICE, offsetof(struct request, rounding_.direction), MUSLIN_ARG_DIRECTION, 0, rounding_words, \
      "up, down or nearest (the usual)" }, \
    { "tolerance", KIND_LENGTH, offsetof(struct request, rounding_.tolerance), MUSLIN_ARG_TOLERANCE, 0, NULL, \
      "what rounding up or down may overlook (none)" }

/* ---- the desk --------------------------------------------------------------------------------------------------- */

enum units { UNITS_INCH = 1, UNITS_INCH_DECIMAL, UNITS_CM, UNITS_MM };

/* Options that every command knows and every batch line may name. */
struct common {
    int32_t units;         /* how lengths are written; never how they are read */
    int32_t bare_unit;     /* enum muslin_length_unit of a number that names none */
    int32_t decimal_comma;
    bool among_others;     /* a line of a batch: shows no progress of its own */
};
extern const struct common usual_common;

/* What a command works at: how to read and write lengths, and where to put a complaint. */
struct desk {
    struct common common;
    struct muslin_problem problem; /* handed to every library call */
    struct failure *failure;
    const struct option_row *options; /* of the command at work */
    json_t *request;                  /* as read: tells which options were given */
};

/* True when the library call succeeded; otherwise its problem becomes the failure. */
bool worked(struct desk *desk, muslin_status status);
/* Reads one length the way the user writes them; false leaves a failure that names the option. */
bool read_length(struct desk *desk, const char *option, const char *text, size_t length, muslin_len *out);
/* Was this option given, on the command line or in the line of a batch? */
bool given(const struct desk *desk, const char *option);

/* ---- commands --------------------------------------------------------------------------------------------------- */

struct sheet;

struct command {
    const char *name;
    const char *about;    /* one line */
    const char *operands; /* for the usage line */
    const char *examples; /* the end of --help */
    const struct option_row *options;
    size_t request_size;
    void (*start)(void *request);
    json_t *(*answer)(const void *request, struct desk *desk);
    const char *lead;     /* sentence over the figures, with {members} of the answer; may be null */
    void (*show)(struct sheet *sheet, json_t *answer); /* null: the general table of figures */
    void (*draw)(FILE *out, json_t *answer);           /* the answer as SVG; null: it has no drawing */
    /* Says on standard error what is wrong with an answer that was delivered; true where anything is. May be null. */
    bool (*doubt)(const char *program, json_t *answer);
};

/* The commands in the order of the work; a null pointer ends a group's list. */
struct command_group {
    const char *title;
    const struct command *const *commands;
};
extern const struct command_group command_groups[]; /* ends with a null title */

extern const struct option_row common_options[];

const struct command *find_command(const char *name);
/* The known name nearest to what was written, or null when none is near. */
const char *nearest_command(const char *written);
/* A list of those that may be meant: "plan", "border or pieced-border"; empty when none is near. */
void suggest_commands(const char *written, char *buf, size_t cap);
const char *nearest_option(const struct command *command, const char *written);
/* The row of an option, also among the common ones; '_' counts as '-'. Null when there is none. */
const struct option_row *find_option(const struct option_row *options, const char *name);

/* Reads the common options of a request over what *common holds; false leaves a failure. */
bool read_common(json_t *request, struct common *common, struct failure *failure);

/* Reads an object by a table of options into the struct that the table is for; false leaves a failure. */
bool read_by_table(json_t *object, const struct option_row *options, void *target, struct failure *failure);

/* The one way from a request to an answer, for the command line and for batch lines alike. `defaults` are the common
 * options to start from. Null leaves a failure. The caller owns the answer. */
json_t *answer_request(const struct command *command, json_t *request, const struct common *defaults,
                       struct failure *failure);

#endif
