/* type.h - the letters: fonts, sizes, and texts set in them.
 *
 * SPDX-License-Identifier: MIT */
#ifndef TYPE_H
#define TYPE_H

#include <pango/pangocairo.h>
#include <stdbool.h>

enum face {
    FACE_TITLE,
    FACE_SIZE,
    FACE_HEADING,
    FACE_SUBHEADING,
    FACE_LETTER, /* of a step */
    FACE_BODY,
    FACE_STRONG,
    FACE_CELL,
    FACE_COLUMN, /* head of a table's column */
    FACE_FINE,   /* cells and heads of a table that is too wide for these */
    FACE_FINE_COLUMN,
    FACE_CAPTION,
    FACE_FOOT,
    FACES
};

/* The case all types are taken from. */
struct type_case {
    PangoFontMap *fonts;
    PangoContext *context;
    PangoFontDescription *faces[FACES];
    double baseline[FACES]; /* from the top of a line */
    gunichar missing;       /* first character that no font has; 0: none so far */
};

/* False when there is no font at all. */
bool type_case_open(struct type_case *letters);
void type_case_close(struct type_case *letters);

/* A text, broken to the width (one line where that is 0). */
PangoLayout *type_set(struct type_case *letters, enum face face, const char *text, double width);
PangoLayout *type_set_right(struct type_case *letters, enum face face, const char *text, double width);

double type_leading(enum face face); /* from line to line */
int type_lines(PangoLayout *layout);
double type_width(PangoLayout *layout);       /* of its longest line */
double type_least_width(PangoLayout *layout); /* of its longest word */
/* Draws one line, or all: the upper left corner stands at x, y. */
void type_draw_line(cairo_t *cairo, const struct type_case *letters, enum face face, PangoLayout *layout, int line,
                    double x, double y);
void type_draw(cairo_t *cairo, const struct type_case *letters, enum face face, PangoLayout *layout, double x,
               double y);

#endif
