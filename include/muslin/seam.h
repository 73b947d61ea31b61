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
 *
 * Every call
 *   Units       Lengths are ticks, areas doubled square ticks, shares ppm. Sizes are 0 .. MUSLIN_SIZE_MAX, allowance
 *               and take-up 0 .. MUSLIN_SIZE_MAX / 8, counts as said. A result may pass MUSLIN_SIZE_MAX by what the
 *               seams add.
 *   Statuses    MUSLIN_ERR_NULL: a spec, array or output is missing. MUSLIN_ERR_STRUCT_SIZE, _STRUCT_TAIL, _FLAGS: a
 *               struct breaks the rules of base.h. MUSLIN_ERR_RANGE: an input outside its range; the problem names it.
 *               MUSLIN_ERR_SEAM_TOO_WIDE: the seams need more than there is; a size that finishes at exactly zero is
 *               let pass. Calls that round add those of struct muslin_rounding_spec: MUSLIN_ERR_CHOICE (direction).
 *               What else a call can return stands with it.
 *   Cost        Constant time, unless an array is read: then one pass. Nothing allocates, nothing is kept.
 *   Problem     Optional everywhere (null). Where several members share a name, its `at` counts them from 0 in the
 *               order of the struct; for arrays `at` is the element.
 */
#ifndef MUSLIN_SEAM_H
#define MUSLIN_SEAM_H

#include "length.h"

#ifdef __cplusplus
extern "C" {
#endif

/* 1/4 in, the usual allowance: a default of the ..._SPEC_INIT values, never a hidden constant. */
#define MUSLIN_QUARTER_INCH INT64_C(2032)

/* What is added to the finished size of a piece that is cut on the diagonal, so that its seams find room: a choice that
 * pieced units (unit.h) and settings on point (setting.h) share. */
enum muslin_allowance_policy {
    MUSLIN_ALLOWANCE_POLICY_EXACT = 1,     /* what the geometry of the seams asks for, and no more */
    MUSLIN_ALLOWANCE_POLICY_CUSTOMARY = 2, /* the trade's round figures, or the caller's; refused where they are too
                                              small */
    MUSLIN_ALLOWANCE_POLICY_OVERSIZE = 3   /* the customary figures and some room to trim away after sewing */
};

struct muslin_seam_spec {
    uint32_t size;
    uint32_t flags;       /* 0 */
    muslin_len allowance; /* s, per edge, as stitched; 0 .. MUSLIN_SIZE_MAX / 8 */
    muslin_len take_up;   /* u, per seam; 0 .. MUSLIN_SIZE_MAX / 8 */
};
/* 1/4 in, no take-up. */
#define MUSLIN_SEAM_SPEC_INIT { sizeof(struct muslin_seam_spec), 0, MUSLIN_QUARTER_INCH, 0 }
/* Writes the values above to the first `size` bytes of *spec. MUSLIN_ERR_NULL; MUSLIN_ERR_STRUCT_SIZE. Example:
 * muslin_seam_spec_init(&seam, sizeof seam). Since 1.0. */
MUSLIN_API muslin_status muslin_seam_spec_init(struct muslin_seam_spec *spec, uint32_t size);

/* The cut size of a piece that shall finish at `finished` (0 .. MUSLIN_SIZE_MAX) and is sewn into its neighbours on
 * both sides: finished + 2 s + u. The unfinished size of a sewn unit follows by the same sum. Source: Moonlight
 * Quilters Guild, Tip - On Point Settings. Example: 6 in finished, 1/4 in: cut 6 1/2 in. Since 1.0. */
MUSLIN_API muslin_status muslin_seam_cut_from_finished(muslin_len finished, const struct muslin_seam_spec *seam,
                                                       muslin_len *out, struct muslin_problem *problem);

/* The finished size of a cut piece or an unfinished unit (`cut`, 0 .. MUSLIN_SIZE_MAX): cut - 2 s - u.
 * MUSLIN_ERR_SEAM_TOO_WIDE when that is below zero. Source: as above, turned round. Example: 12 1/2 in unfinished,
 * 1/4 in: 12 in finished. Since 1.0. */
MUSLIN_API muslin_status muslin_seam_finished_from_cut(muslin_len cut, const struct muslin_seam_spec *seam,
                                                       muslin_len *out, struct muslin_problem *problem);

/* Array forms of the two, with the rules of the array forms in length.h: with `statuses` each element gets its own and
 * the call succeeds, without it stops at the first failing element and says which in *failed. The seam is checked
 * first, n = 0 or not; with n = 0 the arrays may be null. One pass. Example: out = finished makes the change in
 * place. Since 1.0 both. */
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
    muslin_len finished_width;  /* 0 .. MUSLIN_SIZE_MAX */
    muslin_len finished_height; /* 0 .. MUSLIN_SIZE_MAX */
    muslin_len left;            /* allowance on each edge, 0 .. MUSLIN_SIZE_MAX / 8; 0: on the fold or left raw */
    muslin_len right;
    muslin_len top;
    muslin_len bottom;
    muslin_len take_up;         /* u per seam; each edge with an allowance bears half of it */
};
/* 1/4 in on all four edges, no take-up; the size is still to be given. */
#define MUSLIN_PIECE_SPEC_INIT { sizeof(struct muslin_piece_spec), 0, 0, 0, 2032, 2032, 2032, 2032, 0 }
/* Writes the values above to the first `size` bytes of *spec. MUSLIN_ERR_NULL; MUSLIN_ERR_STRUCT_SIZE. Example:
 * muslin_piece_spec_init(&piece, sizeof piece). Since 1.0. */
MUSLIN_API muslin_status muslin_piece_spec_init(struct muslin_piece_spec *spec, uint32_t size);

struct muslin_piece {
    uint32_t size;
    uint32_t flags;
    muslin_len cut_width;     /* finished + left + right + u/2 for each of the two that is sewn, in all up to a tick */
    muslin_len cut_height;    /* the same with top and bottom */
    int64_t cut_area;         /* doubled square ticks, below 2^62 */
    int64_t finished_area;    /* doubled square ticks */
    int32_t seam_share;       /* ppm of the cut piece that disappears into seams, nearest; 0 for a cut area of 0 */
    int32_t pad;
};
/* Cut size of a piece with different allowances on its four edges, and the share of it that the seams swallow. In the
 * problem, `at` is 0 for width and left, 1 for height and right, 2 top, 3 bottom. Source: geometry. Example: 6 x 6 in
 * finished with 1/4 in all round: cut 6 1/2 in square, 147929 ppm lost to seams. Since 1.0. */
MUSLIN_API muslin_status muslin_seam_piece(const struct muslin_piece_spec *spec, struct muslin_piece *out,
                                           struct muslin_problem *problem);

/* ---- rows and strip sets --------------------------------------------------------------------------------------- */

struct muslin_sewn_row {
    uint32_t size;
    uint32_t flags;
    int64_t pieces;           /* in the row */
    int64_t seams;            /* pieces - 1 */
    muslin_len cut_total;     /* sum of the cut sizes */
    muslin_len eaten;         /* what the inner seams take: seams x (2 s + u) */
    muslin_len unfinished;    /* cut_total - eaten */
    muslin_len finished;      /* unfinished - 2 s - u */
    int32_t seam_share;       /* ppm of cut_total that is not seen in the end: inner and outer seams, nearest */
    int32_t pad;
};
/* Equal pieces sewn side by side: a row of patches or the width of a strip set. pieces 1 .. MUSLIN_COUNT_MAX,
 * cut 1 .. MUSLIN_SIZE_MAX. Each piece bears two half seams, so a cut below 2 s + u is MUSLIN_ERR_SEAM_TOO_WIDE. The
 * longest row possible fits a length, so nothing overflows. Source: Vicki, Hints and tips 20: how wide should my strip
 * set be? (take-up by geometry). Example: 6 strips cut 2 1/2 in: 12 1/2 in unfinished, 12 in finished. Since 1.0. */
MUSLIN_API muslin_status muslin_seam_row_equal(muslin_len cut, int64_t pieces, const struct muslin_seam_spec *seam,
                                               struct muslin_sewn_row *out, struct muslin_problem *problem);
/* The same for n pieces of unequal cut size; the problem's `at` names the first offending piece. One pass. Source:
 * geometry. Example: cut 1 1/2, 2 1/2 and 3 1/2 in: 6 1/2 in unfinished, 6 in finished. Since 1.0. */
MUSLIN_API muslin_status muslin_seam_row(const muslin_len *cuts, size_t n, const struct muslin_seam_spec *seam,
                                         struct muslin_sewn_row *out, struct muslin_problem *problem);

/* Backwards: the cut width of `pieces` (1 .. MUSLIN_COUNT_MAX) equal strips that together shall finish at `finished`:
 * finished / pieces + 2 s + u, rounded once, as asked. Source: Nine patch perfected, finished / 3 + 1/2. Example:
 * block 6 in finished, 3 across: strips cut 2 1/2 in. Since 1.0. */
MUSLIN_API muslin_status muslin_seam_strip_for_finished(muslin_len finished, int64_t pieces,
                                                        const struct muslin_seam_spec *seam,
                                                        const struct muslin_rounding_spec *rounding,
                                                        struct muslin_rounded *out, struct muslin_problem *problem);

/* A cut size resized with its block: take the seams off, scale by numerator / denominator (both 1 .. INT64_MAX), put
 * them back on, rounded once, as asked. MUSLIN_ERR_DIVIDE_BY_ZERO: denominator 0. MUSLIN_ERR_SEAM_TOO_WIDE: cut below
 * 2 s + u. MUSLIN_ERR_OVERFLOW: the result passes MUSLIN_LENGTH_MAX. Source: Learn how to resize quilt blocks.
 * Example: cut 3 1/2 in doubled is 6 1/2 in. Since 1.0. */
MUSLIN_API muslin_status muslin_seam_resize_cut(muslin_len cut, int64_t numerator, int64_t denominator,
                                                const struct muslin_seam_spec *seam,
                                                const struct muslin_rounding_spec *rounding,
                                                struct muslin_rounded *out, struct muslin_problem *problem);

/* ---- the seam one really sews ---------------------------------------------------------------------------------- */

struct muslin_calibration {
    uint32_t size;
    uint32_t flags;
    int64_t seams;                    /* n - 1 */
    muslin_len planned;               /* unfinished width with the stitched allowance and no take-up */
    muslin_len shortfall;             /* planned - measured; negative when the set came out wide */
    muslin_len per_seam_numerator;    /* shortfall over seams: the take-up u, exact as a fraction ... */
    int64_t per_seam_denominator;     /* ... over this */
    muslin_len take_up;               /* ... and rounded to the nearest tick, ties up; negative when wide */
    muslin_len effective_numerator;   /* e = (sum of cuts - measured) / (2 seams), exact ... */
    int64_t effective_denominator;    /* ... over this */
    muslin_len effective_allowance;   /* ... and rounded to the nearest tick, ties up */
    muslin_len sew_at;                /* the cure: stitch at s - u/2, nearest tick, ties up; then the plan is met */
};
/* The effective allowance from a measured set of n strips or a test trio: cuts as cut, `measured` the unfinished width
 * edge to edge, `stitched` the allowance one meant to sew. n 2 .. MUSLIN_COUNT_MAX; each cut 1 .. MUSLIN_SIZE_MAX and
 * at least 2 s (else MUSLIN_ERR_SEAM_TOO_WIDE, `at` names it); measured 1 .. the sum of cuts (else MUSLIN_ERR_RANGE).
 * MUSLIN_ERR_SEAM_TOO_WIDE for `measured` when the cure would be below 0: u is then above 2 s. One pass.
 * For a trio, a centre measured between its two seams says the same: centre = cut - 2 e, so e = (cut - centre) / 2.
 * The fractions are not in lowest terms. Source: 1/4 inch seam test (T. Pereira), centre = cut - 1/2; geometry.
 * Example: 4 strips cut 2 1/2 in measuring 8 3/8 in: short by 1/8 in over 3 seams. Since 1.0. */
MUSLIN_API muslin_status muslin_seam_calibrate(const muslin_len *cuts, size_t n, muslin_len measured,
                                               muslin_len stitched, struct muslin_calibration *out,
                                               struct muslin_problem *problem);

struct muslin_carry_on_spec {
    uint32_t size;
    uint32_t flags;       /* 0 */
    muslin_len cut_total; /* T, sum of the strips' cut widths; 1 .. MUSLIN_SIZE_MAX */
    int64_t strips;       /* n, 2 .. MUSLIN_COUNT_MAX */
    muslin_len measured;  /* M, unfinished width of the sewn set; 1 .. T */
    muslin_len later_cut; /* c, the later piece, as the plan had it; 0 .. MUSLIN_SIZE_MAX */
    muslin_len allowance; /* s of the plan; 0 .. MUSLIN_SIZE_MAX / 8 */
    muslin_len take_up;   /* u of the plan; 0 .. MUSLIN_SIZE_MAX / 8 */
};
/* Two strips, 1/4 in, no take-up; the widths are still to be given. */
#define MUSLIN_CARRY_ON_SPEC_INIT { sizeof(struct muslin_carry_on_spec), 0, 0, 2, 0, 0, 2032, 0 }
/* Writes the values above to the first `size` bytes of *spec. MUSLIN_ERR_NULL; MUSLIN_ERR_STRUCT_SIZE. Example:
 * muslin_carry_on_spec_init(&later, sizeof later). Since 1.0. */
MUSLIN_API muslin_status muslin_carry_on_spec_init(struct muslin_carry_on_spec *spec, uint32_t size);

/* The carry-on plan: sets that came out wrong are kept, and a later piece planned at c is cut to suit. With
 * E = (T - M) / (n - 1) as really sewn and P = 2 s + u as planned, the planned finished size c - P is scaled by
 * (M - E) / (D - P), where D = T - (n - 1) P is the planned width, and gets E back:
 *     (c - P) (M - E) / (D - P) + E = ((c - P) (n M - T) + (T - M) (T - n P)) / ((n - 1) (T - n P)),
 * whose right side is whole above and below the line (91 and 61 bits at most) and is rounded once, as asked. So a
 * piece that was to be as long as its set is wide (a square block) becomes M. The result is at most 2^61.
 * MUSLIN_ERR_SEAM_TOO_WIDE: c below P; T not above n P (nothing of the plan would be seen); or n M below T (nothing of
 * the sewn set is). In the problem c is MUSLIN_ARG_SEGMENT_CUT and T is MUSLIN_ARG_CUT. Source: geometry.
 * Example: 4 strips cut 2 1/2 in measure 8 3/8 in: a segment planned at 8 1/2 in is cut 8 3/8 in. Since 1.0. */
MUSLIN_API muslin_status muslin_seam_carry_on(const struct muslin_carry_on_spec *spec,
                                              const struct muslin_rounding_spec *rounding, struct muslin_rounded *out,
                                              struct muslin_problem *problem);

/* How far a row is off when each of `seams` (0 .. MUSLIN_COUNT_MAX) seams is off by `error_per_seam`
 * (+-MUSLIN_SIZE_MAX): error x seams. Source: geometry. Example: 1/32 in too wide at 11 seams: 11/32 in. Since 1.0. */
MUSLIN_API muslin_status muslin_seam_error_total(muslin_len error_per_seam, int64_t seams, muslin_len *out,
                                                 struct muslin_problem *problem);

/* The largest error per seam, either way, that keeps the total within `tolerance` (0 .. MUSLIN_SIZE_MAX):
 * tolerance / seams, down to a tick. seams 1 .. MUSLIN_COUNT_MAX. Source: geometry. Example: 1/4 in over 8 seams:
 * 1/32 in. Since 1.0. */
MUSLIN_API muslin_status muslin_seam_error_limit(muslin_len tolerance, int64_t seams, muslin_len *out,
                                                 struct muslin_problem *problem);

/* The share of fabric that disappears into seams, in ppm to the nearest, ties up: (cut - finished) / cut, for any two
 * areas in doubled square ticks (a patch, a strip set, a whole top). cut_area 1 .. INT64_MAX, finished_area
 * 0 .. cut_area. In the problem, `at` is 0 for the cut area and 1 for the finished one. Source: geometry. Example: cut
 * 2 1/2 in square, finished 2 in: 360000. Since 1.0. */
MUSLIN_API muslin_status muslin_seam_share(int64_t cut_area, int64_t finished_area, int32_t *ppm,
                                           struct muslin_problem *problem);

#ifdef __cplusplus
}
#endif

#endif
