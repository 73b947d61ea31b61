/* sheet.h - a sheet of text for people: sentences with figures from an answer, wrapped to the page.
 *
 * SPDX-License-Identifier: MIT
 *
 * A sentence is a template. {sets.unfinished_width} is replaced by that member of the answer: a length by its text
 * (with "about" where the text is not exact), a share by its text, a count by its digits, a list of numbers as
 * "1 to 4, 7 and 9". {sets.count:set} is a count with its noun, "1 set", "3 sets", or a list with it, "sets 1 to 3". A
 * figure is never broken over two lines. */
#ifndef CLI_SHEET_H
#define CLI_SHEET_H

#include <jansson.h>
#include <stdio.h>

struct sheet {
    FILE *out;
    int steps; /* numbered headings so far */
};

/* A title with a blank line under it; a heading with a blank line over it; the heading of the next numbered step. */
void sheet_title(struct sheet *sheet, json_t *answer, const char *template);
void sheet_heading(struct sheet *sheet, const char *words);
void sheet_step(struct sheet *sheet, const char *words);
/* A paragraph, a point of a list, and a point under a point. */
void sheet_say(struct sheet *sheet, json_t *answer, const char *template);
void sheet_point(struct sheet *sheet, json_t *answer, const char *template);
void sheet_under(struct sheet *sheet, json_t *answer, const char *template);
/* A text as it is, without places to fill; `first` begins its first line, `indent` blanks the others. A no-break space in
 * it is a blank at which no line breaks. */
void sheet_hanging(struct sheet *sheet, const char *first, size_t indent, const char *text);
/* How many columns such a text takes. */
size_t sheet_columns(const char *text);
/* A line that is not wrapped, and an empty one. */
void sheet_line(struct sheet *sheet, const char *text);
void sheet_gap(struct sheet *sheet);

/* A template on its own, filled. The caller frees it. */
char *sheet_sentence(json_t *answer, const char *template);
/* The text of one member on its own, as a template would show it. The caller frees it. */
char *sheet_text_of(json_t *value);

/* The general table of figures, for answers without a layout of their own. */
void show_figures(struct sheet *sheet, json_t *answer);
/* A backing: the chosen layout piece by piece, the others in a line each. */
void show_backing(struct sheet *sheet, json_t *backing);
/* Parts of a written pattern: the layout of the blocks, drawn; borders, batting, backing, quilting and binding. */
void draw_layout(struct sheet *sheet, json_t *plan);
void show_finishing(struct sheet *sheet, json_t *plan);
/* Answers that read better as lines than as a table: pieces, tables, the layouts of a backing. */
void show_cut(struct sheet *sheet, json_t *answer);
void show_finished(struct sheet *sheet, json_t *answer);
void show_table(struct sheet *sheet, json_t *answer);
void show_backing_answer(struct sheet *sheet, json_t *answer);
void show_border_answer(struct sheet *sheet, json_t *answer);
void show_calibrate(struct sheet *sheet, json_t *answer);
void show_yield(struct sheet *sheet, json_t *answer);
/* A quarter circle, a regular polygon, a unit of one's own shape: as one draws and cuts them. */
void show_curve(struct sheet *sheet, json_t *answer);
void show_polygon(struct sheet *sheet, json_t *answer);
void show_template_answer(struct sheet *sheet, json_t *answer);
void show_bias(struct sheet *sheet, json_t *answer);
/* A cut list as one cuts it, and what it could be cut from instead. */
void show_cutlist(struct sheet *sheet, json_t *answer);
void show_substitute(struct sheet *sheet, json_t *answer);
/* A cutting plan in the order of the cuts, and drawn. */
void show_cutplan(struct sheet *sheet, json_t *answer);
/* "A: 32 squares of 5 1/2 in": a row of its list. The caller frees it. */
char *cutplan_piece_in_words(json_t *row);
void draw_cutplan(FILE *out, json_t *answer);
/* Windows on a print, and stacks of identical layers. */
void show_motif(struct sheet *sheet, json_t *answer);
void show_stack(struct sheet *sheet, json_t *answer);
/* What to buy of a cloth, as put_shop_length() says it, in a point. */
void show_shop_length(struct sheet *sheet, json_t *answer);
/* Blocks of several prints, drawn as letters. */
void show_scatter(struct sheet *sheet, json_t *answer);
void show_shrinkage(struct sheet *sheet, json_t *answer);
void show_prewash(struct sheet *sheet, json_t *answer);
void show_accuracy(struct sheet *sheet, json_t *answer);
void show_bed(struct sheet *sheet, json_t *answer);
void show_cover(struct sheet *sheet, json_t *answer);
void show_across(struct sheet *sheet, json_t *answer);
void show_triangle_rows(struct sheet *sheet, json_t *answer);
void show_fit(struct sheet *sheet, json_t *answer);
void show_rescale(struct sheet *sheet, json_t *answer);
void show_seams(struct sheet *sheet, json_t *answer);
void show_thread(struct sheet *sheet, json_t *answer);
void show_stitches(struct sheet *sheet, json_t *answer);
void show_quilting_lines(struct sheet *sheet, json_t *answer);
void show_weight(struct sheet *sheet, json_t *answer);
/* A pieced unit as one works, and what cloth can become as a table. */
void show_unit(struct sheet *sheet, json_t *answer);
void show_makes(struct sheet *sheet, json_t *answer);
/* What people call the unit, and the way it is made, that a member names. */
const char *called_unit(json_t *object, const char *member);
const char *called_way(json_t *object, const char *member);
/* What can be made from what there is, in the order asked for. */
void show_from_stock(struct sheet *sheet, json_t *answer);
void show_sashing(struct sheet *sheet, json_t *answer);
void show_on_point(struct sheet *sheet, json_t *answer);
void show_log_cabin(struct sheet *sheet, json_t *answer);
void show_frame(struct sheet *sheet, json_t *answer);
void show_medallion(struct sheet *sheet, json_t *answer);
void show_pieced_border(struct sheet *sheet, json_t *answer);
/* What cloth that was counted in strips does not include. */
void show_nothing_allowed(struct sheet *sheet);
/* The sentences of a list, each a point. */
void show_sentences(struct sheet *sheet, json_t *sentences);
/* A pattern from its file, as text or as a table of comma-separated values. */
void show_pattern(struct sheet *sheet, json_t *answer);
/* A whole quilt as a written pattern. */
void show_plan(struct sheet *sheet, json_t *answer);

#endif
