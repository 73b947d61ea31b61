/* ideas.h - what can be made from what there is: tops of strip sets, and tops of pieced units set straight.
 *
 * SPDX-License-Identifier: MIT */
#ifndef CLI_IDEAS_H
#define CLI_IDEAS_H

#include "command.h"

/* Rectangles of one size, the longer side first; or strips of one cut width, of which the shortest counts. */
struct source {
    uint64_t rows;       /* bit i: row i of the stock is in it */
    int64_t count;
    muslin_len length;   /* the longer side */
    muslin_len cut;      /* the shorter one; of strips their cut width */
    int64_t from_each;   /* strips that each piece of cloth is cut into first; 0: it is taken as it is */
    int64_t cloth;       /* of all of them, in squares of 1/8 in; 0 where that is too much to tell */
};

enum { SOURCES_MAX = 3 * TEXTS_MAX };
struct sources {
    struct source rows[SOURCES_MAX];
    size_t count;
};

enum made { MADE_ALL = 1, MADE_STRIP_SETS, MADE_UNITS };
enum rank { RANK_LARGEST = 1, RANK_LEAST_LEFT, RANK_LARGEST_BLOCK };

/* How an idea is to be cut and sewn. */
struct wishes {
    int32_t made;             /* enum made */
    int32_t rank;             /* enum rank */
    int32_t all;              /* every way, not only the best of each kind */
    struct lengths blocks;    /* finished sizes of units to try beside the largest; none: the usual ones */
    muslin_len allowance;
    muslin_len take_up;
    muslin_len end_loss;
    muslin_len finished_grid;
    bool metric;              /* the usual sizes are whole centimetres */
};

/* The layout that would be the next larger one. */
struct next_layout {
    int64_t columns; /* 0: none is looked at */
    int64_t rows;
    muslin_len top_width;
    muslin_len top_length;
    int64_t more;    /* pieces, or strips, that are missing for it */
};

struct idea {
    int32_t made;                /* MADE_STRIP_SETS or MADE_UNITS */
    const struct source *source;
    int64_t strips_per_set;      /* of strip sets */
    int64_t segments_per_block;
    muslin_len segment_cut;
    int64_t sets;
    int64_t segments_left;
    int32_t unit;                /* of units: enum muslin_unit_kind */
    int32_t method;
    int64_t fabrics;             /* that the pieces are dealt to */
    int64_t units_left;          /* that could be made beside those of the top */
    muslin_len block_width;      /* finished */
    muslin_len block_height;
    int64_t columns;
    int64_t rows;
    int64_t blocks;
    muslin_len top_width;        /* finished, without borders */
    muslin_len top_length;
    int64_t used;                /* pieces or strips of the source */
    int64_t left;
    int32_t seen;                /* share of the source that the finished top shows, parts per million in
                                    whole per cent; 0: not known */
    struct next_layout next;
    uint32_t warnings;
};

struct ideas {
    struct idea *rows; /* the caller frees them */
    size_t count;
    size_t room;
};

/* Cloth of so many pieces in squares of 1/8 in; 0 where that is too much to tell. */
int64_t cloth_area(int64_t count, muslin_len length, muslin_len width);

/* At least three times as long as wide. */
bool are_strips(const struct source *source);

/* What the sources give, best first. False leaves a failure. */
bool find_ideas(struct desk *desk, const struct sources *sources, const struct wishes *wishes, struct ideas *ideas);

#endif
