/* apart.h - the parts of a sewing step drawn apart: which patch belongs to which part, how far each is moved.
 *
 * SPDX-License-Identifier: MIT */
#ifndef APART_H
#define APART_H

#include "picture.h"

enum { PART_LEFT_OUT = -1 };

/* Something that is sewn to others in the step: patches `first` to `end`, or those whose number is its own. */
struct part {
    muslin_id node;    /* without what turns it; 0: pieces of the node itself, or a row of a field */
    size_t first;
    size_t end;
    struct lying lying;
    struct spot moved;
};

struct apart {
    const struct canvas *canvas;
    muslin_id node;
    struct muslin_node kind;
    struct patches patches;
    int *part_of;      /* of each patch */
    struct part *parts;
    int parts_count;
    struct spot *moved; /* of each patch */
    struct view view;
    double gap;        /* between parts that are joined: there is an arrow in it */
    int shown_first;   /* of many parts that are joined the first and the last ones are shown */
    int shown_last;
    double step;       /* how far rows of a field are moved from each other, across and down */
    bool is_shortened; /* parts are left out */
};

/* Tells the parts; they are not moved yet. */
struct apart apart_of(const struct canvas *canvas, muslin_id node);
void apart_free(struct apart *apart);

/* Chooses a scale so that all is so wide and high at most, and moves the parts. */
void move_apart(struct apart *apart, double width, double height);

/* The rows of a field on point or of 60 degree pieces, counted as they are sewn together. */
int rows_of_field(const struct apart *apart);

#endif
