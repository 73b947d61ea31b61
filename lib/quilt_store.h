/* quilt_store.h - how a quilt keeps its fabrics, measures and nodes: numbered, each different one once.
 *
 * SPDX-License-Identifier: MIT
 *
 * A node or a measure is a row with a kind and a run of whole numbers, its arguments: numbers of measures, fabrics and
 * earlier nodes, choices, coordinates. Two rows of one kind with equal arguments are one row. To make one:
 *
 *     int32_t *args = msl_begin(check, quilt, 7);
 *     if (args == NULL)
 *         return 0;
 *     args[...] = ...;
 *     return msl_end_node(check, quilt, MUSLIN_NODE_PATCH, 7);
 *
 * Between the two nothing else may be made. Numbers count from 1; 0 is none. */
#ifndef MUSLIN_QUILT_STORE_H
#define MUSLIN_QUILT_STORE_H

#include "muslin/quilt.h"

#include "inside.h"

/* ---- what is stored --------------------------------------------------------------------------------------------- */

/* A node or a measure. */
struct msl_row {
    uint32_t args;   /* first of its arguments */
    uint32_t count;  /* of them */
    uint32_t hash;
    uint32_t before; /* of a node: measures made before it; of a measure: nodes */
    uint16_t depth;  /* of a node */
    uint8_t kind;    /* enum muslin_node_kind or enum muslin_measure_kind */
    uint8_t points;  /* of a node: fields on point within each other */
};

struct msl_list {
    struct msl_row *rows;
    uint32_t *table; /* open addressing: numbers of rows, 0 where free; at most half full */
    uint32_t used;
    uint32_t capacity;
    uint32_t places; /* in the table, a power of two or 0 */
};

/* Arguments of each kind of measure. Value and name of one with a name: two numbers, its first byte, bytes; each is
 * another. Of a fixed one the value. Of a sum measure and factor, in turn. Of an extent node and axis. */

/* The two that every quilt has. */
enum { MSL_ALLOWANCE = 1, MSL_TAKE_UP = 2 };

struct msl_fabric {
    muslin_len usable_width;
    uint32_t name;
    uint32_t name_length;
    int32_t print;
    int32_t darkness;
};

struct muslin_quilt {
    struct muslin_allocator allocator;
    int64_t tag;
    int64_t most;
    int64_t bytes; /* held from the allocator, this struct included */
    struct msl_list nodes;
    struct msl_list measures;
    struct msl_fabric *fabrics;
    int32_t *args;
    char *names;
    uint32_t fabrics_used;
    uint32_t fabrics_capacity;
    uint32_t args_used;
    uint32_t args_capacity;
    uint32_t names_used;
    uint32_t names_capacity;
};

/* Arguments of each kind of node. Measures that say 0 for "the quilt's allowance" are stored as MSL_ALLOWANCE. */
enum { PATCH_FABRIC, PATCH_WIDTH, PATCH_HEIGHT, PATCH_LEFT, PATCH_RIGHT, PATCH_TOP, PATCH_BOTTOM, PATCH_ARGS };
/* a fabric for each region, 0 where there are but two; then how it is sewn, see quilt_piecing.h */
enum {
    UNIT_KIND, UNIT_METHOD, UNIT_HAND, UNIT_WIDTH, UNIT_HEIGHT, UNIT_CORNER, UNIT_FABRICS,
    UNIT_PIECING = UNIT_FABRICS + 3
};
/* outline's size as drawn, pieces, their corners in all; then a fabric for each piece; x and y of each corner; then how
 * it is sewn */
enum { SHAPE_WIDTH, SHAPE_HEIGHT, SHAPE_DRAWN_WIDTH, SHAPE_DRAWN_HEIGHT, SHAPE_PIECES, SHAPE_CORNERS, SHAPE_FABRICS };
enum { JOIN_AXIS, JOIN_FLAGS, JOIN_PIECING, JOIN_PRESS, JOIN_CHILDREN };
enum { TURN_HOW, TURN_CHILD, TURN_ARGS };
enum { TRIM_LEFT, TRIM_RIGHT, TRIM_TOP, TRIM_BOTTOM, TRIM_CHILD, TRIM_ARGS };
enum { PINWHEEL_CENTRE, PINWHEEL_TOP, PINWHEEL_RIGHT, PINWHEEL_BOTTOM, PINWHEEL_LEFT, PINWHEEL_ARGS };
/* widths and fabrics in the order left, right, top, bottom; 0 where there is no strip */
enum { SET_IN_CENTRE, SET_IN_WIDTHS, SET_IN_FABRICS = SET_IN_WIDTHS + 4, SET_IN_ARGS = SET_IN_FABRICS + 4 };
/* then, in a layout with sashes, patches follow the blocks: a sash that lies and one that stands, where there are whole
 * ones, and a cornerstone, where there is a whole one */
enum {
    DIAGONAL_COLUMNS, DIAGONAL_ROWS, DIAGONAL_LAYOUT, DIAGONAL_SIDE_FABRIC, DIAGONAL_CORNER_FABRIC,
    DIAGONAL_SASH_FABRIC, DIAGONAL_CORNERSTONE, DIAGONAL_SET_OFF, DIAGONAL_SASH, DIAGONAL_BLOCKS
};
enum { DIAGONAL_SASH_PATCHES = 3 };
/* rows of 60 degree pieces: for each piece its fabric and its cells */
enum { SIXTY_CELLS, SIXTY_ROWS, SIXTY_HEIGHT, SIXTY_END_FABRIC, SIXTY_FIRST, SIXTY_PIECES };

/* ---- how a node lies -------------------------------------------------------------------------------------------- */

/* How something lies: mirrored (4) first, left for right, then turned clockwise by 0 .. 3 quarters. */
enum { MSL_TURN_QUARTERS = 3, MSL_TURN_MIRRORED = 4, MSL_TURNS = 8 };

/* What `inner`, then `outer`, come to. */
int32_t msl_turn_after(int32_t outer, int32_t inner);

/* ---- making ----------------------------------------------------------------------------------------------------- */

/* Room for `count` arguments of something new; null when there is none, with the failure in *check. */
int32_t *msl_begin(struct msl_check *check, struct muslin_quilt *quilt, uint32_t count);

/* The node of this kind with the arguments begun: the one there is, or a new one. 0 after a failure. */
uint32_t msl_end_node(struct msl_check *check, struct muslin_quilt *quilt, int32_t kind, uint32_t count);
uint32_t msl_end_measure(struct msl_check *check, struct muslin_quilt *quilt, int32_t kind, uint32_t count);

/* What there is now, to go back to when something that makes several nodes fails half way. */
struct msl_mark {
    uint32_t nodes;
    uint32_t measures;
    uint32_t args;
};
struct msl_mark msl_mark(const struct muslin_quilt *quilt);
void msl_go_back(struct muslin_quilt *quilt, struct msl_mark mark);

/* Makes *rows hold `needed` rows, by doubling. */
void msl_grow(struct msl_check *check, struct muslin_quilt *quilt, void **rows, uint32_t *capacity, uint64_t needed,
              size_t row_size);

/* Keeps a name; returns its first byte. */
uint32_t msl_keep_name(struct msl_check *check, struct muslin_quilt *quilt, const char *name, size_t bytes);

/* An allocator and its three functions. */
void msl_want_allocator(struct msl_check *check, const struct muslin_allocator *allocator);
/* The same allocator, where one is given; else the quilt's. */
const struct muslin_allocator *msl_allocator_or(struct msl_check *check, const struct muslin_allocator *allocator,
                                                const struct muslin_quilt *quilt);
/* Bytes of so many rows; more than any machine has where their number would not fit 32 bits, or their size size_t. */
size_t msl_bytes(uint64_t count, size_t row_size);
/* A block of another size, or the first one. */
void *msl_moved(const struct muslin_allocator *allocator, void *block, size_t old_size, size_t size);

/* Scratch memory of the quilt's allocator. `count` of 0 gets one. Null after a failure. */
void *msl_scratch(struct msl_check *check, const struct muslin_allocator *allocator, uint64_t count, size_t size);
void msl_scratch_free(const struct muslin_allocator *allocator, void *block, uint64_t count, size_t size);

/* Two arguments that hold one long number. */
void msl_put_long(int32_t *args, int64_t value);
int64_t msl_get_long(const int32_t *args);

/* ---- ids -------------------------------------------------------------------------------------------------------- */

muslin_id msl_id(const struct muslin_quilt *quilt, int32_t sort, uint32_t number);

/* How many fabrics, measures or nodes there are. */
uint32_t msl_used_of(const struct muslin_quilt *quilt, int32_t sort);

/* The number behind an id of this quilt and sort, else MUSLIN_ERR_FOREIGN for `argument` and 0. */
uint32_t msl_want_id(struct msl_check *check, const struct muslin_quilt *quilt, int32_t sort, int32_t argument,
                     muslin_id id);
/* The same; id 0 gives `usual`. */
uint32_t msl_want_id_or(struct msl_check *check, const struct muslin_quilt *quilt, int32_t sort, int32_t argument,
                        muslin_id id, uint32_t usual);

/* Ends a call that made a node or a measure: writes its id where all went well, else goes back to the mark. */
muslin_status msl_give_node(struct msl_check *check, struct muslin_quilt *quilt, struct msl_mark mark, uint32_t node,
                            muslin_id *out);
muslin_status msl_give_measure(struct msl_check *check, struct muslin_quilt *quilt, struct msl_mark mark,
                               uint32_t measure, muslin_id *out);

/* A name: up to 200 bytes. */
void msl_want_name(struct msl_check *check, const char *name, size_t bytes);

/* Children in a call, 1 or more, and their array. */
enum { MSL_CHILDREN_MOST = 2147483000 };
void msl_want_children(struct msl_check *check, const void *children, size_t n);

/* Checks (ids, capacity, count) like msl_rows_wanted(). */
int msl_ids_wanted(struct msl_check *check, int64_t *ids, size_t capacity, size_t *count, size_t needed);

/* MUSLIN_ERR_WORK_LIMIT when the quilt holds all that it may. */
void msl_want_room(struct msl_check *check, const struct muslin_quilt *quilt);

/* Opens a call that makes something: quilt and out must be there. */
void msl_want_quilt(struct msl_check *check, const struct muslin_quilt *quilt, const void *out);

/* ---- reading ---------------------------------------------------------------------------------------------------- */

static inline const struct msl_row *msl_node_row(const struct muslin_quilt *quilt, uint32_t node)
{
    return &quilt->nodes.rows[node - 1];
}

static inline const int32_t *msl_node_args(const struct muslin_quilt *quilt, uint32_t node)
{
    return quilt->args + quilt->nodes.rows[node - 1].args;
}

static inline const struct msl_row *msl_measure_row(const struct muslin_quilt *quilt, uint32_t measure)
{
    return &quilt->measures.rows[measure - 1];
}

static inline const int32_t *msl_measure_args(const struct muslin_quilt *quilt, uint32_t measure)
{
    return quilt->args + quilt->measures.rows[measure - 1].args;
}

/* Where among the arguments of a node of this kind its children lie, one after the other, and how many there are. */
struct msl_children {
    uint32_t first;
    uint32_t count;
};
struct msl_children msl_children_of(int32_t kind, uint32_t args);

/* The same for its measures; those that are 0 are none. */
struct msl_children msl_measures_of(int32_t kind);

/* ---- nodes that others are made of: quilt_node.c ---------------------------------------------------------------- */

uint32_t msl_add_patch(struct msl_check *check, struct muslin_quilt *quilt, uint32_t fabric, uint32_t width,
                       uint32_t height);
uint32_t msl_add_extent(struct msl_check *check, struct muslin_quilt *quilt, uint32_t node, int32_t axis);
uint32_t msl_add_turn(struct msl_check *check, struct muslin_quilt *quilt, uint32_t node, int32_t how);
/* A join of n nodes, 1 or more, in the usual way: the caller writes their numbers to where msl_begin_join() points, and
 * msl_end_join() makes it; one alone is itself. */
int32_t *msl_begin_join(struct msl_check *check, struct muslin_quilt *quilt, int32_t axis, uint32_t n);
uint32_t msl_end_join(struct msl_check *check, struct muslin_quilt *quilt, uint32_t n);
uint32_t msl_add_join(struct msl_check *check, struct muslin_quilt *quilt, int32_t axis, const uint32_t *children,
                      uint32_t n);

#endif
