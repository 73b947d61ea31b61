/* unit_table.h - the recipes as data: for each kind and method its pieces, and for each piece the formula of its size.
 *
 * SPDX-License-Identifier: MIT */
#ifndef MUSLIN_UNIT_TABLE_H
#define MUSLIN_UNIT_TABLE_H

#include "unit_inside.h"

/* Which trade addition may stand in for the geometry. */
enum unit_rule { RULE_NONE, RULE_HALF, RULE_QUARTER };

/* (plain . (W, H, C, E, K) + sqrt(under) x rooted . (W, H, C, E, K)) / divisor, where K is the strip as cut. With a
 * rule, the customary size is the same without its terms in E, and the addition so many times instead; room to trim is
 * added so many times. */
struct unit_formula {
    int8_t plain[5];
    int8_t rooted[5];
    int8_t under;
    int8_t divisor;
    int8_t rule;
    int8_t additions;
    int8_t trims;
};

struct unit_row {
    int8_t region;
    int8_t shape; /* enum muslin_cut_shape */
    int8_t again; /* enum muslin_cut_again */
    int8_t gives;
    int8_t grain; /* enum muslin_grain */
    int8_t count;
    int8_t width; /* enum unit_size; of a strip shape, what the first piece takes along the strip */
    int8_t height;
    int8_t pitch;  /* SIZE_NOTHING for rectangles and octagons; else it, `width` and edges follow from K */
    int8_t wide;   /* edges along the strip; SIZE_NOTHING for rectangles */
    int8_t narrow;
    int8_t angle;  /* degrees; 0 for rectangles */
};

enum { UNIT_ROWS_MOST = 3 };

struct unit_recipe {
    int8_t kind;
    int8_t method;
    int8_t tip;        /* enum muslin_tip; 0: whichever */
    int8_t units;
    int8_t mirrored;   /* of these, mirror images */
    int8_t bias;       /* 1: outer edges on the bias */
    int8_t bonus;      /* half-squares from cut-off corners */
    int8_t edges;      /* enum unit_size: length of all edges of all pieces; SIZE_NOTHING: areas are not told */
    int8_t rows;
    struct unit_row row[UNIT_ROWS_MOST];
};

/* How a kind takes its height. */
enum unit_height { HEIGHT_SQUARE, HEIGHT_FREE, HEIGHT_NEEDED, HEIGHT_HALF };

/* Whether a kind has a mirror image, and what it is cut from: its own pieces, or the same ones. */
enum unit_hands { HANDS_NONE, HANDS_APART, HANDS_TOGETHER };

struct unit_kind {
    int8_t takes_width;
    int8_t height; /* enum unit_height */
    int8_t takes_corner;
    int8_t hands;  /* enum unit_hands */
    int8_t width;  /* enum unit_size: finished width, where the kind takes none */
    int8_t untrimmed; /* 1: a single patch with slanted sides */
};

int32_t msl_unit_recipe_count(void);
const struct unit_recipe *msl_unit_recipe_at(int32_t index);
const struct unit_kind *msl_unit_kind_of(int32_t kind);

/* The recipe of this kind, method and tip; null when there is none. */
const struct unit_recipe *msl_unit_recipe_for(int32_t kind, int32_t method, int32_t tip);

/* A size by geometry. Those along a strip of wedges are whole ticks, up to two too long. */
struct msl_surd msl_unit_size_exact(int32_t size, const struct msl_unit_sizes *sizes);
const struct unit_formula *msl_unit_formula_of(int32_t size);
/* The same without its terms in E. */
struct msl_surd msl_unit_size_bare(int32_t size, const struct msl_unit_sizes *sizes);

#endif
