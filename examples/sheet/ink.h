/* ink.h - what all pictures are drawn with: cloth that is told apart without colour, words, arrows, dimension lines.
 *
 * SPDX-License-Identifier: MIT
 *
 * All lengths are points; y runs downwards. Words stand upright, whatever they are written beside. */
#ifndef INK_H
#define INK_H

#include "draw.h"

/* ---- cloth: cloth.c ---------------------------------------------------------------------------------------------- */

/* Says that what is drawn there is only measured: hatchings are left out. */
void only_measure(cairo_surface_t *surface);
/* Fills the path with the fabric's colour and its hatching, light on dark cloth, dark on light; the path is used up. */
void fill_cloth(cairo_t *cairo, const struct design *design, muslin_id fabric);
/* With its colour alone, for what is too small to show more. */
void fill_plain(cairo_t *cairo, const struct design *design, muslin_id fabric);
/* Fills it as cloth that is not looked at just now. */
void fill_pale(cairo_t *cairo);
/* Fills it as left over: white with wide dashes. */
void fill_left_over(cairo_t *cairo);
/* Strokes it so that it is seen on light and on dark cloth. */
void stroke_seam(cairo_t *cairo);
/* The same between patches so small that a plain seam would blacken them. */
void stroke_fine_seam(cairo_t *cairo);

/* ---- words: label.c ---------------------------------------------------------------------------------------------- */

/* In points; none on paper is smaller than the small ones. */
enum { TEXT_SIZE = 8, SMALL_SIZE = 7, LETTER_SIZE = 9 };

struct room {
    double width;
    double height;
};

/* Words of one line, or of several that are parted by "\n". */
struct room words_room(const char *words, double size);

enum plate {
    PLATE_NONE = 1, /* on paper */
    PLATE_BOX,      /* on cloth: parts and pieces */
    PLATE_RING      /* on cloth or paper: a fabric's letter */
};
/* How large the words are with what is behind them. */
struct room plate_room(const char *words, double size, enum plate plate);
/* In the middle of x, y. */
void write_words(cairo_t *cairo, double x, double y, const char *words, double size, enum plate plate);
/* From x on, or up to x; y is their middle. */
void write_from(cairo_t *cairo, double x, double y, const char *words, double size);
void write_up_to(cairo_t *cairo, double x, double y, const char *words, double size);
/* From x on, broken where they would be wider; y is their top. Returns how high they are. */
double write_wrapped(cairo_t *cairo, double x, double y, double width, const char *words, double size);
double wrapped_height(double width, const char *words, double size);

/* ---- lines: line.c ----------------------------------------------------------------------------------------------- */

void set_black(cairo_t *cairo);
/* Thin and black, plain or dashed. */
void stroke_thin(cairo_t *cairo);
void stroke_dashed(cairo_t *cairo, double dash, double gap);

/* From one end to the other, its head at the latter; on cloth it has a white rim. */
/* Fills the path black with a white edge, so that it stands out from any cloth. */
void fill_in_relief(cairo_t *cairo);
void draw_arrow(cairo_t *cairo, double from_x, double from_y, double to_x, double to_y);
/* From words to what they are said of, across anything: a thin line, a dot at its end. */
void draw_lead(cairo_t *cairo, double from_x, double from_y, double to_x, double to_y);
/* Which way a seam is pressed: `reach` to either side of x, y; to both sides for open. */
void draw_pressed(cairo_t *cairo, double x, double y, int32_t press, double angle, double reach);

/* Dimension lines with words in their middle, across and down. */
void dimension_across(cairo_t *cairo, double left, double right, double y, const char *words);
void dimension_down(cairo_t *cairo, double x, double top, double bottom, const char *words);
/* A zigzag where something is left out: across a strip that lies, or one that stands. */
void draw_break(cairo_t *cairo, double x, double top, double bottom);
void draw_break_across(cairo_t *cairo, double left, double right, double y);

#endif
