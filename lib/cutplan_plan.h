/* cutplan_plan.h - a cutting plan as it is kept: the request, the sizes and ways it came to, what was found, its rows.
 *
 * SPDX-License-Identifier: MIT
 *
 * Lengths here are ticks, but for those of `cutting` and `found`, which are units (cutplan_inside.h). */
#ifndef MUSLIN_CUTPLAN_PLAN_H
#define MUSLIN_CUTPLAN_PLAN_H

#include "muslin/cutplan.h"

#include "cutplan_inside.h"
#include "cutplan_request.h"
#include "quilt_store.h"
#include "solution_growing.h"
#include "solution_sort.h"

/* What one row of the request wants of one size; rows of JOINED want two, whole strips and a shorter one, or more.
 * Blanks are sorted by their sizes, then in the order in which rows get pieces. */
struct msl_blank {
    int64_t across;   /* taken along the strip, the squaring share included */
    int64_t along;    /* the height */
    int64_t run_in;
    int64_t width;    /* cut, from the left edge of the piece to its right one */
    int64_t each;     /* so many for each that the row counts */
    int64_t end;      /* pieces of its size up to and with this row's */
    uint32_t row;
    uint8_t may_turn;
    uint8_t slit;
    uint8_t level;
    uint8_t joined;   /* its squaring share and spare pieces are none */
    uint8_t folded;   /* a joined strip that goes round the fold: one blank is one piece, not two */
    uint8_t swapped;  /* the row lists it the other way round: what may turn is wider than high here */
};

/* Of each size in `cutting`, at the same number. */
struct msl_cut_size {
    uint32_t first; /* of its blanks */
    uint32_t count;
};

/* So many strips of a joined piece. */
struct msl_length {
    int64_t length;
    int64_t count;
};

enum {
    MSL_PARTS_MAX = 16,                  /* strips of one joined piece from what is left over */
    MSL_LENGTHS_MAX = MSL_PARTS_MAX + 3 /* with whole ones, and those that are cut shorter: by all they may, and one */
};

struct muslin_cutplan {
    struct muslin_allocator allocator;
    struct muslin_cutplan_spec spec;
    struct muslin_blank_spec *pieces;
    struct muslin_cutplan_stock_spec *stock;
    uint32_t *stock_rows;       /* rows of the request in the order of what they say */
    int64_t *made;              /* of each row of pieces; less than its count where the stock does not suffice */
    struct msl_blank *blanks;
    struct msl_cut_size *sizes;
    struct msl_cutting cutting;
    struct msl_found found;
    struct msl_rows strips;     /* struct muslin_cutplan_strip */
    struct msl_rows places;     /* struct muslin_cutplan_place */
    struct muslin_cutplan_total totals;
    int64_t share;              /* of the squaring loss, for each piece */
    int64_t unit;               /* ticks */
    int64_t cost_unit;          /* of the cost: the same from a bolt, 1 from stock */
    int64_t layer;              /* width of the bolt, or of its half where it is folded */
    int64_t room;               /* along a strip of the bolt, for pieces */
    uint32_t piece_count;
    uint32_t stock_count;
    uint32_t blank_count;
    int32_t layers;             /* 2: folded */
    int32_t may_turn_stock;     /* 1: first cuts may run along the length of the stock */
    int64_t work_besides;       /* steps of the searches that did not give the plan */
};

/* ---- the request (cutplan_request.c) ---------------------------------------------------------------------------- */

/* The caller's arrays. */
struct msl_plan_request {
    struct muslin_cutplan_spec spec;
    const struct muslin_blank_spec *pieces;
    const struct muslin_cutplan_stock_spec *stock;
    size_t piece_size;
    size_t piece_count;
    size_t stock_size;
    size_t stock_count;
};

/* Reads and checks all of it. */
void msl_read_request(struct msl_check *check, struct msl_plan_request *request,
                      const struct muslin_cutplan_spec *spec);
/* Copies a checked request; every row of it is to be made. */
void msl_keep_request(struct msl_check *check, struct muslin_cutplan *plan, const struct msl_plan_request *request);

/* ---- sizes and ways (cutplan_sizes.c) --------------------------------------------------------------------------- */

/* Takes the request apart into sorted blanks, for the usable width of the plan's spec. MUSLIN_ERR_NO_YIELD: a piece is
 * too large; MUSLIN_ERR_RANGE: joins take a whole strip; MUSLIN_ERR_OVERFLOW: more than a plan can hold. */
void msl_lay_out(struct msl_check *check, struct muslin_cutplan *plan);
/* Of a row: what is lower comes first; all alike where rows are not left out by priority. */
int64_t msl_priority_of(const struct muslin_cutplan *plan, uint32_t row);
/* Gives a joined piece, the only one of its row, strips of other lengths. Returns 0, and does nothing, where blanks
 * would be more than the sizes that are searched. */
int msl_put_lengths(struct msl_check *check, struct muslin_cutplan *plan, uint32_t row,
                    const struct msl_length *lengths, int32_t count);
/* Fills in `cutting` from the blanks, for what is made of each row. */
void msl_fill_cutting(struct muslin_cutplan *plan);
/* Gives back what the two above took. */
void msl_free_cutting(struct muslin_cutplan *plan);

/* ---- joined pieces (cutplan_joined.c) --------------------------------------------------------------------------- */

/* Whether strips of this row may come from what is left over. */
int msl_may_join_anew(const struct muslin_cutplan *plan, uint32_t row);
/* Gives the piece of such a row strips of other lengths, of which what was found leaves over as many as make whole
 * strips needless. Returns the blanks as they were before, as many as there were, which are the caller's to give back;
 * null where there are no such lengths, or no memory: then nothing has changed. */
struct msl_blank *msl_join_anew(struct msl_check *check, struct muslin_cutplan *plan, uint32_t row);

/* ---- the search (cutplan.c) ------------------------------------------------------------------------------------- */

/* Looks for a plan for all that is made. */
void msl_search_all(struct msl_check *check, struct muslin_cutplan *plan, muslin_progress progress, void *context);
/* Whom several plans tell one after the other: once one is ended, the later ones end as soon as they are there. */
struct msl_tellings {
    muslin_progress progress; /* null: nobody */
    void *context;
    int32_t ended;
};
/* A muslin_progress that tells them. */
int32_t msl_tell_in_turn(void *tellings, int64_t work, int64_t best, int64_t bound);
static inline muslin_progress msl_progress_of(const struct msl_tellings *tellings)
{
    return tellings->progress == NULL ? NULL : msl_tell_in_turn;
}
void msl_free_found(struct muslin_cutplan *plan);

/* ---- rows (cutplan_strips.c, cutplan_rows.c) -------------------------------------------------------------------- */

/* Strips and places of what was found. */
void msl_lay_strips(struct msl_check *check, struct muslin_cutplan *plan);

static inline const struct muslin_cutplan_strip *msl_strip_of(const struct muslin_cutplan *plan, uint64_t row)
{
    return (const struct muslin_cutplan_strip *)plan->strips.rows + row;
}

static inline const struct muslin_cutplan_place *msl_place_of(const struct muslin_cutplan *plan, uint64_t row)
{
    return (const struct muslin_cutplan_place *)plan->places.rows + row;
}

/* Times in all, those of what holds it counted. */
int64_t msl_times_of(const struct muslin_cutplan *plan, const struct muslin_cutplan_strip *strip);
/* Where pieces begin in a strip: half of the end loss from its left end, but where that is an edge that was slit. */
int64_t msl_begin_of(const struct muslin_cutplan *plan, const struct muslin_cutplan_strip *strip);

/* ---- totals (cutplan_totals.c) ---------------------------------------------------------------------------------- */

/* Whether it is a joined strip that is longer than one layer of folded cloth; never otherwise. */
int msl_goes_round_fold(const struct muslin_cutplan *plan, const struct muslin_cutplan_place *place);
/* Pieces of a place: of folded cloth two, where it does not go round the fold. */
int64_t msl_pieces_in(const struct muslin_cutplan *plan, const struct muslin_cutplan_place *place);
/* What stands beside the plan, which does not hang on how it is cut: of a bolt, of what is wanted by now. */
void msl_add_up_beside(struct muslin_cutplan *plan);
/* What the strips add up to. */
void msl_add_up(struct msl_check *check, struct muslin_cutplan *plan);

/* MUSLIN_ERR_NULL where there is no plan. */
void msl_want_plan(struct msl_check *check, const struct muslin_cutplan *plan);

#endif
