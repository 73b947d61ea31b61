/* scatter_inside.h - what the files that scatter prints and blocks share: places that touch, what lies in them, chance.
 *
 * SPDX-License-Identifier: MIT */
#ifndef MUSLIN_SCATTER_INSIDE_H
#define MUSLIN_SCATTER_INSIDE_H

#include "muslin/scatter.h"

#include "inside.h"
#include "quilt_store.h"
#include "told.h"

enum {
    MSL_PLACES_MAX = 1 << 24,
    MSL_KINDS_MAX = 1 << 20,
    MSL_TOUCHES_MAX = 1 << 27, /* so that no array passes 2^32 bytes */
    MSL_TOUCH_WEIGHT_MAX = 1 << 20
};
#define MSL_WORK_MAX (INT64_C(1) << 40)
#define MSL_NOWHERE UINT32_MAX

/* ---- memory ------------------------------------------------------------------------------------------------------ */

/* All that one call takes from the allocator, to be given back together. */
enum { MSL_SCATTER_BLOCKS = 20 };
struct msl_scatter_room {
    struct msl_check *check;
    const struct muslin_allocator *allocator;
    void *block[MSL_SCATTER_BLOCKS];
    uint64_t count[MSL_SCATTER_BLOCKS];
    size_t each[MSL_SCATTER_BLOCKS];
    int32_t blocks;
};

/* Null after a failure of the check, which a lack of memory is too: a caller takes all it needs and asks once. */
void *msl_scatter_take(struct msl_scatter_room *room, int64_t count, size_t each);
void msl_scatter_give_back(struct msl_scatter_room *room);

/* ---- chance ------------------------------------------------------------------------------------------------------ */

/* 0 .. n - 1, for n of 1 .. 2^32 - 1. The same on every machine. */
uint32_t msl_chance(uint64_t *state, uint32_t n);

/* ---- a heap ------------------------------------------------------------------------------------------------------ */

/* Items 0 .. n - 1 by their keys, the largest first. */
struct msl_scatter_heap {
    uint32_t held;
    uint32_t *items;
    uint32_t *where; /* of an item in `items`; MSL_NOWHERE: not held */
    int64_t *keys;   /* of an item */
};

/* Room for n items, to be cleared before any is added. */
void msl_heap_take(struct msl_scatter_heap *heap, struct msl_scatter_room *room, uint32_t n);
void msl_heap_clear(struct msl_scatter_heap *heap, uint32_t n);
void msl_heap_add(struct msl_scatter_heap *heap, uint32_t item, int64_t key);
/* Takes the first one out; the heap holds one. */
uint32_t msl_heap_pull(struct msl_scatter_heap *heap);
/* Gives a held item another key. */
void msl_heap_change(struct msl_scatter_heap *heap, uint32_t item, int64_t key);

/* ---- places and what lies in them -------------------------------------------------------------------------------- */

/* One end of two places that touch. */
struct msl_touch {
    uint32_t place;  /* the other one */
    uint32_t weight; /* 4 x weight + the edge of this end, of blocks: 0 top, 1 right, 2 bottom, 3 left */
};

/* What lies in a place is 4 x its kind + its quarter turns, or -1: nothing yet. */
struct msl_scatter {
    uint32_t places;
    uint32_t kinds;
    uint32_t *first;          /* of a place in `touches`; places + 1 of them */
    struct msl_touch *touches;
    const int32_t *edges;     /* of each kind of block four prints, from the top clockwise; null: kinds are prints */
    const uint8_t *turn_step; /* of each kind of block: 1, 2 or 4 quarters */
    const int64_t *given;     /* null, or a kind for each place, or -1 */
    const int64_t *stock;     /* of each kind */
    int64_t *left;            /* of each kind, what is not laid; no more than there are places */
    int32_t *laid;
    int32_t *best;            /* the best that was found */
    uint32_t *loose;          /* the places that are not given */
    uint32_t n_loose;
    uint32_t *troubled;       /* loose places that perhaps touch an equal, ... */
    uint32_t *trouble_of;     /* ... and where among them a place stands, or MSL_NOWHERE */
    uint32_t n_troubled;
    uint32_t *marks;          /* a number for each place, for the lower bound */
    struct msl_scatter_heap next_places;
    struct msl_scatter_heap next_kinds;
    uint64_t chance;
    int64_t weight;           /* of what lies now */
    int64_t best_weight;
    int64_t least;
    int64_t work;
    int64_t work_limit;
    struct msl_told told;     /* of weights */
};

/* Room for everything but the touches, whose number becomes known when they are counted. */
void msl_scatter_start(struct msl_scatter *s, struct msl_scatter_room *room);

/* Touches come in twice: counted, then put. */
void msl_scatter_count(struct msl_scatter *s, uint32_t a, uint32_t b);
void msl_scatter_counted(struct msl_scatter *s, struct msl_scatter_room *room);
void msl_scatter_put(struct msl_scatter *s, uint32_t a, uint32_t b, uint32_t weight, uint32_t edge_of_a);

int msl_scatter_is_given(const struct msl_scatter *s, uint32_t place);
/* What is given lies, nothing else does. */
void msl_scatter_clear(struct msl_scatter *s);
/* Whether two that lie side by side are equal there. */
int msl_scatter_meets(const struct msl_scatter *s, int32_t one, int32_t other, uint32_t edge_of_one);
/* The weight of the touches at a place if `one` lay there. */
int64_t msl_scatter_weight(struct msl_scatter *s, uint32_t place, int32_t one);
/* Lays a kind, turned so that it touches least, and gives the weight at the place. */
int64_t msl_scatter_lay(struct msl_scatter *s, uint32_t place, uint32_t kind);
/* Takes away what lies there and gives the weight it had. */
int64_t msl_scatter_lift(struct msl_scatter *s, uint32_t place);

/* How the next kind is chosen from those that touch no equal. */
enum msl_scatter_way {
    MSL_SCATTER_EVENLY = 0, /* the one of which the smallest share lies: they spread over the whole top */
    MSL_SCATTER_MOST = 1    /* the one of which the most are left */
};
/* Lays all places, those first that have the most laid around them. Returns 0 when the work limit ended it. */
int msl_scatter_fill(struct msl_scatter *s, enum msl_scatter_way way);

/* Whether the work limit is reached, or the search was ended when it told how it stands. */
int msl_scatter_is_up(struct msl_scatter *s);
/* Fills, and betters it until the least is reached or the work is up. The answer is `best`. */
void msl_scatter_search(struct msl_scatter *s);

/* No arrangement of prints weighs less. To be asked before the search. */
int64_t msl_scatter_least(struct msl_scatter *s);

/* Counts what touches in `best`. */
void msl_scatter_result(struct msl_scatter *s, struct muslin_scattered *result);

/* ---- what is asked ----------------------------------------------------------------------------------------------- */

/* Reads a spec and checks its values. */
void msl_read_scatter(struct msl_check *check, struct muslin_scatter_spec *into,
                      const struct muslin_scatter_spec *spec);
/* How many rows there are. */
void msl_want_rows(struct msl_check *check, int32_t argument, size_t n, int64_t least, int64_t most);
/* Counts of prints, enough for all places. */
void msl_want_stock(struct msl_check *check, const int64_t *prints, size_t kinds, int64_t places);

#endif
