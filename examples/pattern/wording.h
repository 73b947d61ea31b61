/* wording.h - words that several parts of the document share. For those who write it.
 *
 * SPDX-License-Identifier: MIT */
#ifndef WORDING_H
#define WORDING_H

#include "document.h"

/* "s" but for one; what stands before item `i` of `count` in "a, b and c". */
const char *plural(int64_t count);
const char *comma(size_t i, size_t count);
const char *turned(int32_t quarter_turns);
const char *unit_name(int32_t kind);
const char *direction_name(int32_t press);

/* A word as the file has chosen it. */
const char *word(const struct worked *worked, enum chosen_word which);
/* The same with a capital letter. */
const char *capital(const struct worked *worked, enum chosen_word which, char text[WORD_ROOM]);
/* "sash", or "lattice strip"; "sashes", or "lattice strips". */
const char *sash(const struct worked *worked);
const char *sashes(const struct worked *worked);
/* "Fabric A, night", as a subheading. */
void write_fabric_heading(struct document *document, const struct worked *worked, muslin_id fabric);

/* Words that are spelt as the pattern spells "color" or "colour". */
enum spelt { MITRE, MITRED, CENTRE, NEIGHBOURS };
const char *spelt(const struct worked *worked, enum spelt which);
/* "lamp block", "border, left side", "row"; without the letter. */
void add_name(struct line *line, const struct worked *worked, muslin_id node);
/* A part that was told before: its number or letter, and how it is turned. */
void add_again_part(struct line *line, const struct worked *worked, const struct lying *part);
/* A child as it is laid: "[4] night, cut 3 1/2 in x 3 1/2 in", "A* (flying geese) upside down". */
void add_part(struct line *line, const struct worked *worked, const struct lying *part);
/* "seams 1 to 4 to the right; seam 5 to the left". */
void add_runs(struct line *line, const struct muslin_pressing_seam *seams, size_t count);
/* How the seams of a join are pressed, as a point. */
void write_join_pressing(struct document *document, const struct worked *worked, muslin_id join);
/* Where seams of the parts of a node do not lock, as a caution. */
void write_clashes(struct document *document, const struct worked *worked, muslin_id node);
void write_mitred_pressing(struct document *document, const struct worked *worked, muslin_id set_in);

/* Steps of other kinds than joins and strip sets: write_recipe.c, write_field.c, write_sets.c, write_shapes.c. */
void write_recipe(struct document *document, const struct worked *worked, size_t step);
void write_field(struct document *document, const struct worked *worked, size_t step);
void write_set(struct document *document, const struct worked *worked, size_t step);
void write_segments(struct document *document, const struct worked *worked, size_t step);
void write_shape(struct document *document, const struct worked *worked, size_t step);
void write_trimming(struct document *document, const struct worked *worked, size_t step);
void write_pinwheel(struct document *document, const struct worked *worked, size_t step);
void write_sixty(struct document *document, const struct worked *worked, size_t step);
void write_set_in(struct document *document, const struct worked *worked, size_t step);

/* Whether something is taken the other way: turned, or else pressed so. */
bool has_other_way(const struct worked *worked, bool is_turned);
/* Which block begins a diagonal row, counted from 0, of a field of so many columns and rows. */
size_t block_that_begins(const struct point_field *field, size_t number);
/* What a block on point is called in the field's rows; the field's row of numbers, or null. */
const struct point_field *point_field_of(const struct worked *worked, muslin_id node);
/* The border of the top that a step is of, or null; whether a patch is a plain strip of it. */
const struct border_asked *border_of_step(const struct worked *worked, size_t step);
bool is_border_strip(const struct worked *worked, size_t step, muslin_id patch);
/* How many segments the last set is sewn for where short strips do for it, and how long they are; 0: none is short. */
int64_t short_set(const struct worked *worked, const struct muslin_stripset *set, muslin_len *length);
/* Of segments that are pressed the other way: how many sets are pressed so for them, and how many come from other sets
 * and are pressed anew once they are cut. */
struct other_sets {
    int64_t sets;
    int64_t anew;
};
struct other_sets other_sets(const struct worked *worked, const struct muslin_stripset *set,
                             const struct muslin_pressing_seam *seam);
/* The set that a join is sewn as, or null. */
const struct muslin_stripset *set_of(const struct worked *worked, muslin_id join);
/* A block of which there are more, and which is sewn first: every such step. */
bool is_test_step(const struct worked *worked, size_t step);
bool has_test_block(const struct worked *worked);
/* Where there is none, a unit of which there are more is. */
bool has_test_unit(const struct worked *worked);
/* Strips of the binding, as they are laid out for all tops, and what they come to; that may be null. */
int64_t count_binding_strips(const struct worked *worked, muslin_len *together);
/* "2 panels"; "1 panel and an insert". */
void add_panels(struct line *line, const struct muslin_backing *backing);
/* A strip of a border is cut after the top is measured. */
bool is_border_cut(const struct worked *worked, size_t cut);
/* The mitred border of the top that a cut is for, or null. */
const struct border_asked *mitred_border_of(const struct worked *worked, size_t cut);
/* Whether less than that is nothing on a ruler: 1/8 in, or a millimetre; little cloth to spare: 1 in, or 25 mm. */
bool is_nothing(const struct worked *worked, muslin_len length);
bool is_little(const struct worked *worked, muslin_len length);

#endif
