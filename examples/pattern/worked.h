/* worked.h - one size of a pattern with all that the library says of it: rows, in the order in which they are printed.
 *
 * SPDX-License-Identifier: MIT */
#ifndef WORKED_H
#define WORKED_H

#include "pattern.h"

struct feeds {
    struct muslin_sewing_feed *rows;
    size_t count;
};

/* A fabric's cutting plan, row by row: from the bolt, or from strips where it is bought as strips. */
struct bolt {
    struct muslin_cutplan_strip *strips;
    size_t strips_count;
    struct muslin_cutplan_place *places;
    size_t places_count;
    struct muslin_cutplan_piece *pieces;
    size_t pieces_count;
    struct muslin_cutplan_left_over *left_over; /* pieces of cloth that are left and of use */
    size_t left_over_count;
    struct muslin_cutplan *from_strips; /* null: from the bolt */
    int64_t strips_needed;              /* of those, in all tops */
    int64_t tops_given;                 /* that the strips there are suffice for, up to TOPS_TRIED; 0: not said how many
                                           there are, or not even one */
};
enum { TOPS_TRIED = 50 };

struct worked {
    const struct design *design;
    struct muslin_solution *solution;
    struct muslin_solution_total totals;
    struct muslin_node_size top;

    struct muslin_misfit *misfits; /* edges that do not meet */
    size_t misfits_count;
    struct muslin_solution_cut *cuts;
    size_t cuts_count;
    size_t *order; /* the cuts as they are listed: of each fabric the longest strips first */
    int *piece;    /* number of each cut in print, from 1; the strips of one mitred border share theirs */
    muslin_len mitre_extra; /* to hold on to: added to the length of each mitred cut when it is laid out */
    int32_t *laid; /* how each is laid out, enum muslin_blank_kind: whole, lengthwise, joined from strips, on a slope */
    struct muslin_stripset *sets;
    size_t sets_count;

    struct muslin_sewing_step *steps;
    struct feeds *feeds; /* of each step */
    size_t steps_count;
    struct muslin_sewing_total sewn; /* with what seams that are 1/64 in off come to */

    struct muslin_pressing *pressing;
    struct muslin_pressing_total pressed;
    struct muslin_pressing_seam *seams;
    size_t seams_count;
    struct muslin_pressing_child *children;
    size_t children_count;
    struct muslin_pressing_exception *exceptions;
    size_t exceptions_count;

    struct muslin_yardage *yardage;
    struct muslin_extra_cut_spec extras[2]; /* binding and sleeve: labels of the plans behind those of the cuts */
    size_t extras_count;
    struct muslin_fabric_yardage *bill; /* fabric by fabric */
    struct bolt *bolts;                 /* of each of them */
    size_t bill_count;

    struct muslin_binding binding;
    muslin_len batting_from_roll; /* for all tops; 0: from packages */
    muslin_len binding_reckoned; /* what the strips are laid out for: without a last stub that is not needed */
    struct muslin_batting batting;
    struct muslin_backing *backings; /* layouts, the best first */
    struct muslin_purchase *backs;   /* of each, the cloth for the backs of all tops */
    size_t backings_count;
    struct muslin_panel *panels;     /* of the best one */
    size_t panels_count;
    struct muslin_hanging sleeve;
    struct muslin_bed_cover cover; /* how it lies on the bed */
};

/* Null when something is wrong. `stop` is asked now and then and may be null: true ends it, with a complaint. */
struct worked *worked_create(const struct design *design, bool (*stop)(void *), void *with,
                             struct complaints *complaints);
void worked_free(struct worked *worked);

/* Zeroed memory for so many rows, at least one; and the same memory, unless there is none: then the program stops. */
void *rows_for(size_t count, size_t size);
void *kept(void *memory);

/* ---- questions that several writers and drawings ask: parts.c --------------------------------------------------- */

/* A node's children: give them back with free(). */
muslin_id *children_of(const struct worked *worked, muslin_id node, size_t *count);
struct muslin_node node_of(const struct worked *worked, muslin_id node);
struct muslin_node_size size_of(const struct worked *worked, muslin_id node);

/* A node without what only turns or mirrors it, and how it is turned. */
struct lying {
    muslin_id node;
    int32_t quarter_turns;
    int32_t mirrored;
    bool other_way; /* pressed the other way, or turned so that its seams lie so */
};
struct lying lying_at(const struct worked *worked, muslin_id parent, size_t place, muslin_id child);

/* Where in the file a node was made, or else the nearest one that holds it: a JSON pointer. */
const char *place_in_file(const struct worked *worked, muslin_id node);
/* The same of a part of it, numbered as misfits number them; null where it has no number or no place of its own. */
const char *place_of_part(const struct worked *worked, muslin_id node, int64_t part);

/* How long a cut is in print and on the cloth: of mitred strips with what is left to hold on to. */
muslin_len cut_length(const struct worked *worked, size_t cut);

/* How many strips of a row of a plan there are in all: those within a holder are in each of it. */
int64_t times_of(const struct bolt *bolt, const struct muslin_cutplan_strip *strip);

/* How a cloth is bought and laid out. */
struct muslin_yardage_spec buying_of(const struct worked *worked, const struct cloth *cloth);
/* What is cut from a cloth, binding and sleeve too, as a cutting plan is asked for it: give it back with free(). */
struct muslin_blank_spec *pieces_of(const struct worked *worked, const struct cloth *cloth,
                                    const struct muslin_yardage_spec *buying, size_t *count);

/* What a piece of a plan is for. */
enum laid_for { LAID_CUT, LAID_BINDING, LAID_SLEEVE };
enum laid_for laid_for(const struct worked *worked, int64_t label);
/* The same in print: "[4]", "binding", "sleeve". */
const char *label_name(const struct worked *worked, int64_t label, char text[32]);
/* Whether a cut is pieced from strips joined end to end. */
bool is_joined(const struct worked *worked, size_t cut);
const char *fabric_name(const struct worked *worked, muslin_id fabric);

/* The last step that makes the node, or -1; its letter, "A" to "Z", "AA", ... */
int64_t step_of(const struct worked *worked, muslin_id node);
const char *letter_of(const struct worked *worked, muslin_id node, char text[16]);
/* Whether a row of the cut list goes into a node; the row of a patch, or of a patch in a strip set, or -1. */
bool is_cut_for(const struct worked *worked, size_t cut, muslin_id node);
/* Which sides of a node a mitred strip of it is for. */
enum mitred_sides { MITRED_ALL, MITRED_BESIDE, MITRED_ACROSS };
enum mitred_sides mitred_sides(const struct worked *worked, size_t cut, muslin_id node);
int64_t cut_of_patch(const struct worked *worked, muslin_id patch);
int64_t cut_of_strip(const struct worked *worked, muslin_id join, muslin_id patch);
/* The seams of a node, in their order. */
const struct muslin_pressing_seam *seams_of(const struct worked *worked, muslin_id node, size_t *count);

/* ---- lengths in words ------------------------------------------------------------------------------------------- */

enum { WORD_ROOM = 96 };
/* As one measures it, in the pattern's units: on a mark of a ruler, of 1/8 in, 1/16 in, or half a millimetre; else to
 * the nearest 1/8 in or millimetre, with "about" before it. */
const char *measured(const struct worked *worked, muslin_len length, char text[WORD_ROOM]);
/* The length, where it lies on a mark of the ruler; else the next of the usual marks. */
muslin_len to_mark(const struct worked *worked, muslin_len length);
/* The same of something very small, to 1/64 in or a hundredth of a millimetre. */
const char *measured_fine(const struct worked *worked, muslin_len length, char text[WORD_ROOM]);
/* What a strip set's segments are cut to: the mark of the ruler, or the first of finer ones, at which a set gives as many;
 * where none does, what they need. Beside it, how much shorter strips may then be before a set gives less. */
muslin_len segment_mark(const struct worked *worked, const struct muslin_stripset *set);
muslin_len set_slack(const struct worked *worked, const struct muslin_stripset *set);
const char *segment_measured(const struct worked *worked, const struct muslin_stripset *set, char text[WORD_ROOM]);
/* At least so much, or at most. */
const char *at_least(const struct worked *worked, muslin_len length, char text[WORD_ROOM]);
const char *at_most(const struct worked *worked, muslin_len length, char text[WORD_ROOM]);
/* "12 1/2 in x 9 in". */
const char *measured_by(const struct worked *worked, muslin_len width, muslin_len height, char text[WORD_ROOM]);
/* The same, neither side less than so much. */
const char *at_least_by(const struct worked *worked, muslin_len width, muslin_len height, char text[WORD_ROOM]);
/* How a panel of the back is cut: no shorter, and no narrower where it is cut from another. */
const char *panel_size(const struct worked *worked, const struct muslin_panel *panel, char text[WORD_ROOM]);
/* Of a package of batting: about whole centimetres where it was made in inches. */
const char *package_size(const struct worked *worked, char text[WORD_ROOM]);
/* A length to buy, up to what shops cut: "1 3/8 yd" or "1.3 m". */
const char *to_buy(const struct worked *worked, muslin_len length, char text[WORD_ROOM]);
/* A length of thread or of seams, up to whole yards or metres. */
const char *in_whole_yards(const struct worked *worked, muslin_len length, char text[WORD_ROOM]);

#endif
