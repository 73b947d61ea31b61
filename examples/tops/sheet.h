/* sheet.h - a solved quilt as its working sheet sees it: rows of the library, words for them, lines of the page.
 *
 * SPDX-License-Identifier: MIT */
#ifndef SHEET_H
#define SHEET_H

#include "tops.h"

/* ---- all that a sheet is written from: sheet.c ------------------------------------------------------------------ */

struct feeds {
    struct muslin_sewing_feed *rows;
    size_t count;
};

struct sheet {
    const struct design *design;
    const struct muslin_solution *solution;
    const struct muslin_solve_spec *spec;
    struct muslin_pressing_plan *plan;
    struct muslin_cut *cuts;
    size_t cuts_count;
    size_t *order; /* the cuts as the page lists them: of each fabric the longest strips first */
    int *piece;    /* number of each cut on the page, from 1; strips of one mitred border share theirs */
    struct muslin_sewing_row *steps;
    struct feeds *feeds; /* of each step */
    size_t steps_count;
    struct muslin_strip_set *sets;
    size_t sets_count;
    struct muslin_pressed_seam *seams;
    size_t seams_count;
    struct muslin_pressed_child *children;
    size_t children_count;
    struct muslin_pressing_exception *exceptions;
    size_t exceptions_count;
    struct muslin_yardage *yardage;
    struct muslin_fabric_yardage *bill; /* what it comes to, fabric by fabric */
    size_t bill_count;
    muslin_len binding_length; /* sewn together: round the quilt, and what is reckoned for its ends besides */
    muslin_len binding_round;
    muslin_len binding_loss;   /* of each join */
};

/* A node's children: give them back with free(). */
muslin_id *children_of(const struct sheet *sheet, muslin_id node, size_t *count);

/* ---- lines: words.c --------------------------------------------------------------------------------------------- */

struct line {
    char text[8192];
    size_t used;
};

#if defined __GNUC__
#define LIKE_PRINTF __attribute__((format(printf, 2, 3)))
#else
#define LIKE_PRINTF
#endif

/* Adds words to a line; print_line() prints it, broken at blanks, `indent` blanks before it and `hang` more before what
 * does not fit on its first line of the page, and empties it. */
void add(struct line *line, const char *format, ...) LIKE_PRINTF;
void print_line(struct line *line, int indent, int hang);

/* Whether a ruler's eighths show the length exactly. */
int is_on_ruler(muslin_len length);
/* "s" but for one; "a, b and c": what stands before item `i` of `count`. */
const char *plural(int64_t count);
const char *comma(size_t i, size_t count);
const char *turned(int32_t quarter_turns);
const char *unit_name(int32_t kind);

/* ---- parts: parts.c --------------------------------------------------------------------------------------------- */

const char *fabric_name(const struct sheet *sheet, muslin_id fabric);
struct muslin_node node_of(const struct sheet *sheet, muslin_id node);
struct muslin_node_size size_of(const struct sheet *sheet, muslin_id node);
const struct named *named_of(const struct sheet *sheet, muslin_id node);
const struct unit *unit_of(const struct sheet *sheet, muslin_id node);

/* A node without what only turns or mirrors it, and how it is turned. */
struct lying {
    muslin_id node;
    int32_t quarter_turns;
    int32_t mirrored;
    int other_way; /* 1: pressed the other way */
};
struct lying lying_at(const struct sheet *sheet, muslin_id parent, size_t place, muslin_id child);

/* The last step that makes the node, or -1; its letter. */
int64_t step_of(const struct sheet *sheet, muslin_id node);
const char *letter(const struct sheet *sheet, muslin_id node, char text[16]);

/* "lamp block", "border, left side", "row"; without the letter. */
void add_name(struct line *line, const struct sheet *sheet, muslin_id node);
/* A child as it is laid: "[4] night, cut 3 1/2 in x 3 1/2 in", "A* (flying geese) upside down". */
void add_part(struct line *line, const struct sheet *sheet, const struct lying *part);
/* Whether a row of the cut list goes into a node. */
int is_cut_for(const struct sheet *sheet, size_t cut, muslin_id node);
/* The cut list's row of a patch, of a patch in a strip set, or -1. */
int64_t cut_of_patch(const struct sheet *sheet, muslin_id patch);
int64_t cut_of_strip(const struct sheet *sheet, muslin_id join, muslin_id patch);

/* ---- the page ---------------------------------------------------------------------------------------------------- */

void print_cuts(const struct sheet *sheet);                                      /* cuts.c */
int is_too_long(const struct muslin_cut *cut); /* for the cloth's width: cut from strips joined end to end */
void print_yardage(const struct sheet *sheet);                                   /* buy.c */
void print_steps(const struct sheet *sheet);                                     /* steps.c */
void print_recipe(const struct sheet *sheet, const struct muslin_sewing_row *);  /* recipe.c */
void print_field(const struct sheet *sheet, const struct muslin_sewing_row *);   /* field.c */
/* The first block of a diagonal row, which is counted from 0. */
size_t block_that_begins(const struct design *design, size_t number);

/* Taken off the end of each fabric. */
enum { STRAIGHTENING = INCH / 2 };

/* buy.c: the plans of all fabrics; that of one, row by row, to be given back; what a place of it holds, "[4]". */
void read_yardage(struct sheet *sheet);
struct bolt {
    struct muslin_plan_strip *strips;
    size_t strips_count;
    struct muslin_plan_place *places;
    size_t places_count;
    struct muslin_plan_piece *pieces;
    size_t pieces_count;
};
struct bolt read_bolt(const struct sheet *sheet, size_t fabric);
void free_bolt(struct bolt *bolt);
const char *place_name(const struct sheet *sheet, const struct bolt *bolt, size_t place, char text[WORD]);

/* press.c */
void print_join_pressing(const struct sheet *sheet, muslin_id join);
void print_mitred_pressing(const struct sheet *sheet, muslin_id set_in);
void print_summary(const struct sheet *sheet);
/* The seams of a node, in their order; how many of its copies are pressed the other way. */
const struct muslin_pressed_seam *seams_of(const struct sheet *sheet, muslin_id node, size_t *count);
const char *direction(int32_t press);
/* "seams 1 to 4 to the right; seam 5 to the left". */
void add_runs(struct line *line, const struct muslin_pressed_seam *seams, size_t count);

#endif
