/* muslin/yardage.h - from a solved quilt to what to buy: each fabric's pieces, a cutting plan for each, the lengths.
 *
 * SPDX-License-Identifier: MIT
 *
 * One call goes the whole way: the cut list of a solution, with its strips for strip sets, and whatever else is cut
 * from the same fabrics, binding or a hanging sleeve for instance, becomes a request for each fabric; each gets its
 * plan, and the length is brought up to what is sold. The plans are read as cutplan.h says.
 *
 * How it is cut  A rectangle may lie either way where its fabric has no direction; else it lies as in the cut list, its
 *                print along the cloth. What is cut at a slant from a strip of its own height (what has a pitch in the
 *                cut list: triangles, diamonds, trapezoids, wedges) is SLOPED: it takes the pitch, and what its first
 *                piece reaches beyond that is the run-in. Strips for strip sets are whole strips of the cloth, which
 *                are not cut across: what squaring their ends takes is the strip set's own matter (end_trim when
 *                solving).
 * Long pieces    What is longer than a strip has room for, losses counted, is LENGTHWISE, the longer side along the
 *                cloth, or JOINED, the longer side across it, as long_pieces says. Only patches and mitred strips are
 *                joined; what is cut again, or to a shape, has no room for a seam. A print with a direction decides for
 *                itself: what is too long across it is joined, what is long along it lies lengthwise.
 * Mitred strips  The cut list has the least length, from point to point. Nobody cuts so close: mitre_extra is added
 *                before it is seen whether a strip is long. Print adds 1/2 to 6 in.
 *
 * Every call
 *   Statuses    MUSLIN_ERR_NULL, _STRUCT_SIZE, _STRUCT_TAIL, _FLAGS, _BUFFER: an input or output breaks the rules of
 *               base.h. What else a call can return stands with it.
 *   Threads     A yardage and its plans may be read from many threads at a time by calls that do not allocate.
 */
#ifndef MUSLIN_YARDAGE_H
#define MUSLIN_YARDAGE_H

#include "cutplan.h"

#ifdef __cplusplus
extern "C" {
#endif

struct muslin_yardage; /* opaque */

enum muslin_long_pieces {
    MUSLIN_LONG_PIECES_LENGTHWISE = 1, /* along the cloth, whole, slit from panels */
    MUSLIN_LONG_PIECES_JOINED = 2      /* across the cloth, pieced from strips */
};

struct muslin_yardage_spec {
    uint32_t size;
    uint32_t flags;           /* MUSLIN_CUTPLAN_NO_PANELS, MUSLIN_CUTPLAN_ONE_HEIGHT, MUSLIN_CUTPLAN_OWN_STRIPS,
                                 MUSLIN_CUTPLAN_STACKED, MUSLIN_CUTPLAN_FOLDED, added */
    muslin_len end_loss;      /* these six as in struct muslin_cutplan_spec, of each fabric */
    muslin_len resquare_loss; /* so */
    int64_t resquare_every;   /* so */
    muslin_len straightening; /* so */
    int64_t spare_pieces;     /* so */
    int64_t work_limit;       /* of each fabric */
    muslin_len join_loss;     /* of pieces that are joined here, as in struct muslin_blank_spec */
    muslin_len extra;         /* these four as in struct muslin_purchase_spec, of each fabric */
    muslin_len step;          /* so */
    int32_t shrinkage;        /* so */
    int32_t extra_share;      /* so */
    int32_t long_pieces;      /* enum muslin_long_pieces: what is longer than its fabric is wide */
    int32_t pad;              /* 0 */
    muslin_len least_part;    /* as join_loss */
    muslin_len mitre_extra;   /* added to the longer side of each mitred strip, for handling; 0 .. MUSLIN_SIZE_MAX */
};
/* Nothing lost, 400 million steps a fabric, straight joins of 1/4 in seams, long pieces lengthwise; sold by 1/8 yd. */
#define MUSLIN_YARDAGE_SPEC_INIT \
    { sizeof(struct muslin_yardage_spec), 0, 0, 0, 0, 0, 0, 400000000, 4064, 0, 36576, 0, 0, 1, 0, 0, 0 }
/* Writes the values above to the first `size` bytes of *spec. Since 1.0. */
MUSLIN_API muslin_status muslin_yardage_spec_init(struct muslin_yardage_spec *spec, uint32_t size);

/* What is cut besides from a fabric of the quilt: a row of a request, for one of its fabrics. */
struct muslin_extra_cut_spec {
    uint32_t size;
    uint32_t flags;         /* MUSLIN_BLANK_MAY_TURN, of a PIECE only, or 0 */
    muslin_id fabric;       /* of the quilt, whether its top uses it or not */
    muslin_len cut_width;   /* these and what follows as in struct muslin_blank_spec */
    muslin_len cut_length;
    int64_t count;          /* so */
    muslin_len run_in;      /* so */
    muslin_len join_loss;   /* so */
    int32_t kind;           /* enum muslin_blank_kind */
    int32_t pad;            /* 0 */
    muslin_len least_part;  /* so */
};
/* One piece that stays as it is listed; fabric and size are still to be given. */
#define MUSLIN_EXTRA_CUT_SPEC_INIT { sizeof(struct muslin_extra_cut_spec), 0, 0, 0, 0, 1, 0, 0, 1, 0, 0 }
/* Writes the values above to the first `size` bytes of *spec. Since 1.0. */
MUSLIN_API muslin_status muslin_extra_cut_spec_init(struct muslin_extra_cut_spec *spec, uint32_t size);

/* The pieces of one fabric as a request, ask-then-fill: rows of the cut list as said above, `label` the row there,
 * priority 0. Of the spec what a strip has room for matters, join_loss, least_part, long_pieces and mitre_extra.
 * MUSLIN_ERR_FOREIGN: not a fabric of the solution's quilt. MUSLIN_ERR_RANGE, _CHOICE: a member of the spec. Time
 * follows the cut list. Example: 36 squares of 2 1/2 in from the blue are one row, and a border of 60 in is
 * lengthwise. Since 1.0. */
MUSLIN_API muslin_status muslin_yardage_pieces(const struct muslin_solution *solution, muslin_id fabric,
                                               const struct muslin_yardage_spec *spec, struct muslin_blank_spec *rows,
                                               size_t row_size, size_t capacity, size_t *count,
                                               struct muslin_problem *problem);

/* The whole way, for every fabric of which something is cut, with n rows of extra cuts. The solution need not outlive
 * it. Allocator null: MUSLIN_ERR_NULL. `progress` is told as for a plan, fabric after fabric, beginning anew with each;
 * when it ends the search, the fabrics that follow get their first plan only. MUSLIN_ERR_RANGE, _CHOICE, _FLAGS,
 * _FOREIGN: a member; of the extra cuts `at` is the row. What plans and purchases can return comes with the fabric's
 * number (muslin_id_number()) as `at`: MUSLIN_ERR_NO_YIELD: a piece does not fit, with its size as value and what there
 * is room for as limit; MUSLIN_ERR_RANGE: more rows, pieces of a row or cloth than one plan or purchase can take, or
 * joins that take a whole strip; MUSLIN_ERR_OVERFLOW; MUSLIN_ERR_NO_MEMORY. Time and memory: those of the plans.
 * Example: a top of three fabrics, the third also bound with it: three lengths to buy. Since 1.0. */
MUSLIN_API muslin_status muslin_yardage_create(const struct muslin_solution *solution,
                                               const struct muslin_yardage_spec *spec,
                                               const struct muslin_extra_cut_spec *cuts, size_t row_size, size_t n,
                                               const struct muslin_allocator *allocator,
                                               muslin_progress progress, void *context,
                                               struct muslin_yardage **out, struct muslin_problem *problem);

/* Gives its memory back, with all its plans; null is fine. Time follows the plans. Example:
 * muslin_yardage_free(yardage). Since 1.0. */
MUSLIN_API void muslin_yardage_free(struct muslin_yardage *yardage);

struct muslin_fabric_yardage {
    uint32_t size;
    uint32_t flags;
    muslin_id fabric;         /* of the quilt */
    muslin_len usable_width;  /* of its cloth */
    int64_t pieces;           /* cut, extra cuts and spare ones among them */
    muslin_len cloth_length;  /* of the plan, straightening included: what is needed */
    muslin_len least;         /* no plan of two stages needs less, straightening included */
    muslin_len own_strips_length; /* when each size has its own strips */
    muslin_len with_extra;    /* before it shrinks and with what is added, as in struct muslin_purchase */
    muslin_len bought;        /* up to the step */
    muslin_len spare;         /* bought - with_extra */
    muslin_len narrowest_width; /* at which the plan can still be cut as it is */
    int32_t proven;           /* 1: cloth_length is the least */
    int32_t turned;           /* 1: some pieces lie turned a quarter from the request */
};
/* A row for each fabric of which something is cut, in the order in which the fabrics were made. Time follows the rows.
 * Example: of 40 squares cut 3 in, 13 from each strip of 40 in, 12 in are needed, and 3/8 yd bought. Since 1.0. */
MUSLIN_API muslin_status muslin_yardage_fabrics(const struct muslin_yardage *yardage,
                                                struct muslin_fabric_yardage *rows, size_t row_size, size_t capacity,
                                                size_t *count, struct muslin_problem *problem);

/* The plan of a row of muslin_yardage_fabrics(); it lives as long as the yardage, and is not freed by itself. Labels of
 * its pieces (muslin_cutplan_pieces()) are rows of the cut list, or of the extra cuts, counted on behind its last row.
 * MUSLIN_ERR_INDEX: no such row. Constant time. Example: muslin_cutplan_strips() of the first row's plan. Since 1.0. */
MUSLIN_API muslin_status muslin_yardage_plan(const struct muslin_yardage *yardage, int64_t row,
                                             const struct muslin_cutplan **out, struct muslin_problem *problem);

#ifdef __cplusplus
}
#endif

#endif
