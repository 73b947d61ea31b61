/* muslin/seam.h - cut, unfinished, finished: what seams take, and what a real seam takes.
 *
 * SPDX-License-Identifier: MIT
 *
 * Words. Finished: the size seen in the sewn quilt. Unfinished: a sewn unit with its outer allowances still raw.
 * Cut: the piece as it leaves the cutting table. Allowance s: the margin between cut edge and stitched line.
 * Take-up u: what fold and thread of one pressed seam eat beyond its two allowances. One seam between two pieces
 * therefore takes 2 s + u off their widths, and the effective allowance is e = s + u/2, so
 *     cut = finished + 2 e = finished + 2 s + u          (cut size from finished: common to every source in the trade;
 *     row of n pieces = sum of cuts - (n - 1) 2 e         take-up by geometry)
 * Sizes are 0 .. MUSLIN_SIZE_MAX, allowance and take-up 0 .. MUSLIN_SIZE_MAX / 8. Nothing allocates.
 */
#ifndef MUSLIN_SEAM_H
#define MUSLIN_SEAM_H

#include "length.h"

#ifdef __cplusplus
extern "C" {
#endif

/* 1/4 in, the usual allowance: a default of the ..._SPEC_INIT values, never a hidden constant. */
#define MUSLIN_QUARTER_INCH 2032

struct muslin_seam_spec {
    uint32_t size;
    uint32_t flags;       /* 0 */
    muslin_len allowance; /* s, per edge, as stitched */
    muslin_len take_up;   /* u, per seam */
};
#define MUSLIN_SEAM_SPEC_INIT { (uint32_t)sizeof(struct muslin_seam_spec), 0, MUSLIN_QUARTER_INCH, 0 }
/* Writes the values above (1/4 in, no take-up) to the first `size` bytes of *spec. Since 0.1. */
MUSLIN_API muslin_status muslin_seam_spec_init(struct muslin_seam_spec *spec, uint32_t size);

/* The cut size of a piece that shall finish at `finished` and is sewn into its neighbours on both sides:
 * finished + 2 s + u. The unfinished size of a sewn unit follows by the same sum. finished >= 0; MUSLIN_ERR_RANGE.
 * Example: 6 in finished, 1/4 in: 6 1/2 in. Since 0.1. */
MUSLIN_API muslin_status muslin_seam_cut_from_finished(muslin_len finished, const struct muslin_seam_spec *seam,
                                                       muslin_len *out, struct muslin_problem *problem);

/* The finished size of a cut piece or an unfinished unit: cut - 2 s - u. MUSLIN_ERR_SEAM_TOO_WIDE when that is below
 * zero; exactly zero is allowed. Since 0.1. */
MUSLIN_API muslin_status muslin_seam_finished_from_cut(muslin_len cut, const struct muslin_seam_spec *seam,
                                                       muslin_len *out, struct muslin_problem *problem);

/* Array forms of the two, with the rules of length.h. O(n). Since 0.1. */
MUSLIN_API muslin_status muslin_seam_cut_from_finished_n(const muslin_len *finished, size_t n,
                                                         const struct muslin_seam_spec *seam, muslin_len *out,
                                                         muslin_status *statuses, size_t *failed);
MUSLIN_API muslin_status muslin_seam_finished_from_cut_n(const muslin_len *cut, size_t n,
                                                         const struct muslin_seam_spec *seam, muslin_len *out,
                                                         muslin_status *statuses, size_t *failed);

/* ---- a piece with its own allowance on each edge --------------------------------------------------------------- */

struct muslin_piece_spec {
    uint32_t size;
    uint32_t flags;             /* 0 */
    muslin_len finished_width;
    muslin_len finished_height;
    muslin_len left;            /* allowance on each edge; 0 for an edge on the fold or left raw */
    muslin_len right;
    muslin_len top;
    muslin_len bottom;
    muslin_len take_up;         /* u per seam; each edge with an allowance bears half of it, see muslin_piece */
};
#define MUSLIN_PIECE_SPEC_INIT { (uint32_t)sizeof(struct muslin_piece_spec), 0, 0, 0, 2032, 2032, 2032, 2032, 0 }
/* Writes the values above to the first `size` bytes of *spec. Since 0.1. */
MUSLIN_API muslin_status muslin_piece_spec_init(struct muslin_piece_spec *spec, uint32_t size);

struct muslin_piece {
    uint32_t size;
    uint32_t flags;
    muslin_len cut_width;     /* finished + left + right + u/2 for each sewn edge, halves rounded up to a tick */
    muslin_len cut_height;
    int64_t cut_area;         /* doubled square ticks */
    int64_t finished_area;
    int32_t seam_share;       /* ppm of the cut piece that disappears into seams, nearest */
    int32_t pad;
};
/* Cut size of a piece with different allowances on its four edges, and the share of it that the seams swallow.
 * MUSLIN_ERR_RANGE, the struct statuses. Since 0.1. */
MUSLIN_API muslin_status muslin_seam_piece(const struct muslin_piece_spec *spec, struct muslin_piece *out,
                                           struct muslin_problem *problem);

/* ---- rows and strip sets --------------------------------------------------------------------------------------- */

struct muslin_row {
    uint32_t size;
    uint32_t flags;
    int64_t pieces;
    int64_t seams;            /* pieces - 1 */
    muslin_len cut_total;     /* sum of the cut sizes */
    muslin_len eaten;         /* what the inner seams take: seams x (2 s + u) */
    muslin_len unfinished;    /* cut_total - eaten */
    muslin_len finished;      /* unfinished - 2 s - u */
    int32_t seam_share;       /* ppm of cut_total that is not seen in the end: inner and outer seams, nearest */
    int32_t pad;
};
/* Pieces sewn side by side, equal ones: a row of patches or the width of a strip set. pieces 1 .. 2^31 - 1,
 * cut 1 .. MUSLIN_SIZE_MAX. Each piece must be at least as wide as the seams it bears, else MUSLIN_ERR_SEAM_TOO_WIDE;
 * MUSLIN_ERR_OVERFLOW when the row is longer than MUSLIN_LENGTH_MAX.
 * Example: 6 strips cut 2 1/2 in: 12 1/2 in unfinished, 12 in finished. Since 0.1. */
MUSLIN_API muslin_status muslin_seam_row_equal(muslin_len cut, int64_t pieces, const struct muslin_seam_spec *seam,
                                               struct muslin_row *out, struct muslin_problem *problem);
/* The same for n pieces of unequal cut size; the problem's `at` names the first offending piece. O(n). Since 0.1. */
MUSLIN_API muslin_status muslin_seam_row(const muslin_len *cuts, size_t n, const struct muslin_seam_spec *seam,
                                         struct muslin_row *out, struct muslin_problem *problem);

/* Backwards: the cut width of `pieces` equal strips that together shall finish at `finished`:
 * finished / pieces + 2 s + u, rounded as asked. Example: block 6 in, 3 across: strips cut 2 1/2 in. Since 0.1. */
MUSLIN_API muslin_status muslin_seam_strip_for_finished(muslin_len finished, int64_t pieces,
                                                        const struct muslin_seam_spec *seam,
                                                        const struct muslin_rounding_spec *rounding,
                                                        struct muslin_rounded *out, struct muslin_problem *problem);

/* A cut size resized with its block: take the seams off, scale by numerator / denominator, put them back on, rounded
 * once. Example: cut 3 1/2 in doubled is 6 1/2 in. MUSLIN_ERR_SEAM_TOO_WIDE, MUSLIN_ERR_RANGE. Since 0.1. */
MUSLIN_API muslin_status muslin_seam_resize_cut(muslin_len cut, int64_t numerator, int64_t denominator,
                                                const struct muslin_seam_spec *seam,
                                                const struct muslin_rounding_spec *rounding,
                                                struct muslin_rounded *out, struct muslin_problem *problem);

/* ---- the seam one really sews ---------------------------------------------------------------------------------- */

struct muslin_calibration {
    uint32_t size;
    uint32_t flags;
    int64_t seams;
    muslin_len planned;               /* unfinished width with the stitched allowance and no take-up */
    muslin_len shortfall;             /* planned - measured; negative when the set came out wide */
    muslin_len per_seam_numerator;    /* shortfall over seams: the take-up u, exact as a fraction ... */
    int64_t per_seam_denominator;
    muslin_len take_up;               /* ... and rounded to the nearest tick */
    muslin_len effective_numerator;   /* e = (sum of cuts - measured) / (2 seams), exact ... */
    int64_t effective_denominator;
    muslin_len effective_allowance;   /* ... and rounded to the nearest tick */
    muslin_len sew_at;                /* the cure: stitch at s - u/2, nearest tick; then the set meets its plan */
};
/* The effective allowance from a measured set of n strips or a test trio: cuts as cut, `measured` the unfinished width
 * edge to edge, `stitched` the allowance one meant to sew. n 2 .. 2^31 - 1 (MUSLIN_ERR_RANGE). A measured width that
 * is not above 0, or above the sum of cuts, is MUSLIN_ERR_RANGE; a cure below 0 is MUSLIN_ERR_SEAM_TOO_WIDE.
 * Example: 4 strips cut 2 1/2 in measuring 8 3/8 in: short by 1/8 in over 3 seams. O(n). Since 0.1. */
MUSLIN_API muslin_status muslin_seam_calibrate(const muslin_len *cuts, size_t n, muslin_len measured,
                                               muslin_len stitched, struct muslin_calibration *out,
                                               struct muslin_problem *problem);

/* The carry-on plan: sets that came out wrong are kept, and a later piece planned at `later_cut` is cut to suit. With
 * E = 2 e = (cut_total - measured) / (strips - 1) as really sewn and P = 2 s + u as planned, the planned finished size
 * later_cut - P is scaled by (measured - E) / (planned - P), where planned = cut_total - (strips - 1) P, and gets E
 * back; rounded once, as asked. A segment that was to be as long as its set is wide (a square block) becomes
 * `measured`. Source: geometry. MUSLIN_ERR_RANGE, MUSLIN_ERR_SEAM_TOO_WIDE. Since 0.1. */
struct muslin_carry_on_spec {
    uint32_t size;
    uint32_t flags;       /* 0 */
    muslin_len cut_total; /* sum of the strips' cut widths */
    int64_t strips;       /* 2 or more */
    muslin_len measured;  /* unfinished width of the sewn set */
    muslin_len later_cut; /* the later piece, as the plan had it */
    muslin_len allowance; /* s of the plan */
    muslin_len take_up;   /* u of the plan */
};
#define MUSLIN_CARRY_ON_SPEC_INIT { (uint32_t)sizeof(struct muslin_carry_on_spec), 0, 0, 2, 0, 0, 2032, 0 }
/* Writes the values above to the first `size` bytes of *spec. Since 0.1. */
MUSLIN_API muslin_status muslin_carry_on_spec_init(struct muslin_carry_on_spec *spec, uint32_t size);
MUSLIN_API muslin_status muslin_seam_carry_on(const struct muslin_carry_on_spec *spec,
                                              const struct muslin_rounding_spec *rounding, struct muslin_rounded *out,
                                              struct muslin_problem *problem);

/* How far a row is off when each of `seams` seams is off by `error_per_seam` (signed): error x seams. Since 0.1. */
MUSLIN_API muslin_status muslin_seam_error_total(muslin_len error_per_seam, int64_t seams, muslin_len *out,
                                                 struct muslin_problem *problem);
/* The largest error per seam that keeps the total within `tolerance` (>= 0): tolerance / seams, down to a tick.
 * seams 1 or more. Since 0.1. */
MUSLIN_API muslin_status muslin_seam_error_limit(muslin_len tolerance, int64_t seams, muslin_len *out,
                                                 struct muslin_problem *problem);

/* The share of fabric that disappears into seams, in ppm to the nearest: (cut - finished) / cut, for any two areas in
 * doubled square ticks (a patch, a strip set, a whole top). cut_area > 0, 0 <= finished_area <= cut_area. Since 0.1. */
MUSLIN_API muslin_status muslin_seam_share(int64_t cut_area, int64_t finished_area, int32_t *ppm,
                                           struct muslin_problem *problem);

#ifdef __cplusplus
}
#endif

#endif
