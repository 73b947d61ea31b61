/* muslin/accuracy.h - small errors added up: the worst case, and what chance makes of it.
 *
 * SPDX-License-Identifier: MIT
 *
 * A row of n pieces has n - 1 seams inside it and 2 n cut edges, two a piece. A seam is off by e when it takes e more
 * or less of the row than planned (both edges and the fold together, as in muslin_seam_error_total()); a cut is off by
 * c when its edge lies c beside where it should. Both are magnitudes, 0 or more.
 *
 *   worst       All errors as large as stated and all the same way: seams x e + cuts x c, exact.
 *   likely      Errors that are independent of each other, lean neither way and have e and c as their standard size
 *               (root mean square): then the whole has the standard size sqrt(seams x e^2 + cuts x c^2), up to a tick.
 *               With many errors about two rows in three stay within it and nineteen in twenty within twice as much.
 *   Beware      Errors are not independent where one cut makes many pieces (strip sets), and they lean one way where an
 *               allowance is sewn too wide throughout: that adds up like the worst case, and a test set finds it
 *               (muslin_seam_calibrate()). Squaring up a block ends the errors within it; what is said here is for
 *               blocks left as they come out.
 *   Source      Geometry and probability; no published source for the figures. That an error in each seam multiplies by
 *               the number of seams: Quilting notes: block construction (homeschool quilting notes, n.d.).
 *
 * Every call
 *   Units       Errors are ticks, 0 .. MUSLIN_SIZE_MAX / 8; counts 1 .. MUSLIN_COUNT_MAX unless a member says
 *               otherwise. So the worst case is below 2^61 and nothing overflows.
 *   Statuses    MUSLIN_ERR_NULL: a spec or output is missing. MUSLIN_ERR_STRUCT_SIZE, _STRUCT_TAIL, _FLAGS: a struct
 *               breaks the rules of base.h. MUSLIN_ERR_RANGE: an input outside its range; the problem names it. What
 *               else a call can return stands with it. The ..._init calls return MUSLIN_ERR_NULL and
 *               MUSLIN_ERR_STRUCT_SIZE.
 *   Cost        Constant time. Nothing allocates.
 */
#ifndef MUSLIN_ACCURACY_H
#define MUSLIN_ACCURACY_H

#include "seam.h"

#ifdef __cplusplus
extern "C" {
#endif

/* ---- one row --------------------------------------------------------------------------------------------------- */

struct muslin_accuracy_row_spec {
    uint32_t size;
    uint32_t flags;          /* 0 */
    int64_t pieces;          /* side by side */
    int64_t seams;           /* that the measure crosses, 0 .. MUSLIN_COUNT_MAX; pieces - 1 from raw edge to raw edge */
    muslin_len seam_error;   /* e, of one seam */
    muslin_len cut_error;    /* c, of one cut edge */
};
/* One piece, no seam, no error; all still to be given. */
#define MUSLIN_ACCURACY_ROW_SPEC_INIT { sizeof(struct muslin_accuracy_row_spec), 0, 1, 0, 0, 0 }
/* Writes the values above to the first `size` bytes of *spec. Since 1.0. */
MUSLIN_API muslin_status muslin_accuracy_row_spec_init(struct muslin_accuracy_row_spec *spec, uint32_t size);

struct muslin_accuracy_row_errors {
    uint32_t size;
    uint32_t flags;
    int64_t cuts;            /* 2 x pieces */
    muslin_len from_seams;   /* seams x e: what the seams bring to the worst case */
    muslin_len from_cuts;    /* cuts x c */
    muslin_len worst;        /* the sum of the two */
    muslin_len likely;       /* sqrt(seams x e^2 + cuts x c^2), up to a tick */
};
/* How far off a row of pieces may be. Example: 8 seams each off by 1/32 in, cuts without error: 1/4 in at worst, and
 * 719 ticks (a good 1/12 in) as chance has it. Since 1.0. */
MUSLIN_API muslin_status muslin_accuracy_row(const struct muslin_accuracy_row_spec *spec,
                                             struct muslin_accuracy_row_errors *out, struct muslin_problem *problem);

/* ---- block and top --------------------------------------------------------------------------------------------- */

struct muslin_accuracy_top_spec {
    uint32_t size;
    uint32_t flags;          /* 0 */
    int64_t pieces_across;   /* a block */
    int64_t pieces_down;     /* a block */
    int64_t columns;         /* of blocks */
    int64_t rows;            /* of blocks */
    muslin_len seam_error;   /* e, of one seam */
    muslin_len cut_error;    /* c, of one cut edge */
};
/* One block of one piece, no error; all still to be given. */
#define MUSLIN_ACCURACY_TOP_SPEC_INIT { sizeof(struct muslin_accuracy_top_spec), 0, 1, 1, 1, 1, 0, 0 }
/* Writes the values above to the first `size` bytes of *spec. Since 1.0. */
MUSLIN_API muslin_status muslin_accuracy_top_spec_init(struct muslin_accuracy_top_spec *spec, uint32_t size);

struct muslin_accuracy_top_errors {
    uint32_t size;
    uint32_t flags;
    int64_t block_seams_across;      /* pieces_across - 1 */
    muslin_len block_width_worst;    /* how far the unfinished width of a block may be off ... */
    muslin_len block_width_likely;
    int64_t block_seams_down;        /* pieces_down - 1 */
    muslin_len block_height_worst;   /* ... and its unfinished height */
    muslin_len block_height_likely;
    int64_t top_seams_across;        /* columns x pieces_across - 1 */
    muslin_len top_width_worst;      /* how far the unfinished width of the top may be off ... */
    muslin_len top_width_likely;
    int64_t top_seams_down;          /* rows x pieces_down - 1 */
    muslin_len top_length_worst;     /* ... and its unfinished length */
    muslin_len top_length_likely;
};
/* How far off a block and a top of such blocks may be, in a straight setting without sashing (for other rows count
 * pieces and seams and ask muslin_accuracy_row()). MUSLIN_ERR_RANGE for MUSLIN_ARG_PIECES also when a row of the top
 * has more than MUSLIN_COUNT_MAX pieces; `at` is 0 across, 1 down. Example: blocks of 3 x 3 pieces, 4 x 5 of them, each
 * seam off by 1/64 in and cuts without error: a block 1/32 in at worst, the top 11/64 in across and 7/32 in down.
 * Since 1.0. */
MUSLIN_API muslin_status muslin_accuracy_top(const struct muslin_accuracy_top_spec *spec,
                                             struct muslin_accuracy_top_errors *out, struct muslin_problem *problem);

/* ---- will seams meet? ------------------------------------------------------------------------------------------ */

struct muslin_accuracy_meet_spec {
    uint32_t size;
    uint32_t flags;          /* 0 */
    int64_t seams;           /* n, of each of the two rows */
    muslin_len seam_error;   /* e, of one seam */
    muslin_len cut_error;    /* c, of one cut edge */
    muslin_len tolerance;    /* seams this far apart still count as meeting; 0 .. MUSLIN_SIZE_MAX */
};
/* One seam, no error, 1/16 in apart at most (common practice, no source); the rest is still to be given. */
#define MUSLIN_ACCURACY_MEET_SPEC_INIT { sizeof(struct muslin_accuracy_meet_spec), 0, 1, 0, 0, 508 }
/* Writes the values above to the first `size` bytes of *spec. Since 1.0. */
MUSLIN_API muslin_status muslin_accuracy_meet_spec_init(struct muslin_accuracy_meet_spec *spec, uint32_t size);

struct muslin_accuracy_meeting {
    uint32_t size;
    uint32_t flags;
    muslin_len worst;                     /* apart at the last seam: 2 n (e + 2 c), both rows off opposite ways */
    muslin_len likely;                    /* the same by chance: sqrt(2 n (e^2 + 2 c^2)), up to a tick */
    int64_t first_missed;                 /* the first seam at which the worst case passes the tolerance; 0: none */
    int64_t likely_first_missed;          /* the first at which the likely one does: from it on about one in three
                                             misses, or more; 0: none */
    muslin_len largest_seam_error;        /* the largest e for which all n meet at worst, down to a tick; also 0 when
                                             the cuts alone are too much */
    muslin_len likely_largest_seam_error; /* ... for which all n are likely to meet */
    int32_t meets;                        /* 1 when all n seams meet even at worst */
    int32_t likely_meets;                 /* 1 when the likely one is within the tolerance at all n: about two in three
                                             then meet at the last seam, and more of them before it */
    int32_t cuts_meet;                    /* 1 when they would at worst if no seam were off: 4 n c <= tolerance */
    int32_t likely_cuts_meet;             /* 1 when they would by chance */
    int64_t twice_likely_first_missed;    /* the first seam at which twice the likely one passes the tolerance: from it
                                             on about one in twenty misses, or more; 0: none */
    muslin_len twice_likely_largest_seam_error; /* the largest e for which twice the likely one is within the tolerance
                                             at all n, down to a tick; also 0 when the cuts alone are too much */
    int32_t twice_likely_meets;           /* 1 when twice the likely one is within the tolerance at all n seams */
    int32_t twice_likely_cuts_meet;       /* 1 when it would be if no seam were off */
};
/* Whether the seams of two neighbouring rows meet. The rows are cut alike, laid edge to edge at one end, and eased
 * nowhere. Before the k-th seam lie k pieces, so its place is off by k seams (its own counted in full, which is on the
 * safe side) and 2 k cuts in each row; the two rows are independent of each other. Pinned in the middle instead, only
 * half the seams lie between. Example: 8 seams, each off by 1/64 in, cuts without error, within 1/16 in: the third seam
 * is the first that may miss, at worst; by chance about two in three still meet at the eighth, and from the third on
 * about one in twenty misses; at worst a seam may be off by 31 ticks. Since 1.0. */
MUSLIN_API muslin_status muslin_accuracy_meet(const struct muslin_accuracy_meet_spec *spec,
                                              struct muslin_accuracy_meeting *out, struct muslin_problem *problem);

#ifdef __cplusplus
}
#endif

#endif
