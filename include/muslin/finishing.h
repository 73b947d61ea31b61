/* muslin/finishing.h - binding, batting, backing, and what hangs on the back.
 *
 * SPDX-License-Identifier: MIT
 *
 * Quilt sizes here are those of the finished top, 1 .. MUSLIN_SIZE_MAX, unless a member says otherwise. Nothing
 * allocates.
 */
#ifndef MUSLIN_FINISHING_H
#define MUSLIN_FINISHING_H

#include "setting.h"

#ifdef __cplusplus
extern "C" {
#endif

/* ---- binding: the width ---------------------------------------------------------------------------------------- */

enum muslin_fold {
    MUSLIN_FOLD_DOUBLE = 1, /* folded in half, raw edges in the seam, the fold sewn down on the back */
    MUSLIN_FOLD_SINGLE = 2  /* one layer, its far edge turned under on the back */
};

struct muslin_binding_width_spec {
    uint32_t size;
    uint32_t flags;          /* 0 */
    int32_t fold;            /* enum muslin_fold */
    int32_t pad;             /* 0 */
    muslin_len seam;         /* s, from the raw edge of the binding to its seam */
    muslin_len front;        /* finished width shown on the front, from the seam to the edge of the quilt */
    muslin_len thickness;    /* t of the quilt sandwich at the edge */
    muslin_len back;         /* finished width wanted on the back; used when binding_cut is 0 */
    muslin_len turn_under;   /* single fold only */
    muslin_len binding_cut;  /* 0: work out the cut width; else: work out what it shows on the back */
    muslin_len uneven_limit; /* warn when back and front differ by more than this */
};
/* Double fold, 1/4 in seam, 1/4 in shown on both sides, no thickness, warn beyond 1/8 in. */
#define MUSLIN_BINDING_WIDTH_SPEC_INIT { (uint32_t)sizeof(struct muslin_binding_width_spec), 0, 1, 0, 2032, 2032, 0, \
                                         2032, 2032, 0, 1016 }
/* Writes the values above to the first `size` bytes of *spec. Since 0.1. */
MUSLIN_API muslin_status muslin_binding_width_spec_init(struct muslin_binding_width_spec *spec, uint32_t size);

struct muslin_binding_width {
    uint32_t size;
    uint32_t flags;
    muslin_len cut_width;    /* C */
    muslin_len back;         /* finished width shown on the back, half ticks down; negative: it does not reach round */
    muslin_len folded;       /* width after folding, before sewing: C/2 up for a double fold, C for a single one */
    uint32_t warnings;       /* MUSLIN_WARN_BINDING_UNEVEN; MUSLIN_WARN_BACK_TOO_NARROW when back < front */
    uint32_t pad;
};
/* Double fold: C = 2 (s + front + t + back), so the back shows C/2 - s - front - t. Single fold:
 * C = s + front + t + back + turn_under. Source: geometry; 4 w + 1/2 in and 6 w + ease are special cases in print.
 * MUSLIN_ERR_CHOICE, MUSLIN_ERR_RANGE. Example: all 1/4 in, double fold: C = 1 1/2 in. Since 0.1. */
MUSLIN_API muslin_status muslin_binding_measure(const struct muslin_binding_width_spec *spec,
                                                struct muslin_binding_width *out, struct muslin_problem *problem);

/* ---- binding: the length --------------------------------------------------------------------------------------- */

struct muslin_binding_spec {
    uint32_t size;
    uint32_t flags;             /* 0 */
    muslin_len perimeter;       /* of any outline; 0: take 2 x (quilt_width + quilt_length) */
    muslin_len quilt_width;     /* finished */
    muslin_len quilt_length;
    muslin_len extra;           /* for the ends and the last join; sources use 10, 12, 15, 20, 24 in */
    int64_t corners;            /* of the outline; 0 for a rounded one */
    muslin_len corner_extra;    /* added for each corner; most sources add none */
    muslin_len binding_cut;     /* cut width of the strips */
    muslin_len strip_length;    /* usable length of each strip */
    muslin_len allowance;       /* of the joins */
    muslin_len step;            /* purchase step */
    int64_t spare_strips;       /* cut on top of the need */
    int32_t join;               /* enum muslin_join; BUTTED ignores the loss, as many published figures do */
    int32_t pad;                /* 0 */
};
/* Extra 12 in, 2 1/2 in strips, 40 in usable, diagonal joins, bought in eighths of a yard. */
#define MUSLIN_BINDING_SPEC_INIT { (uint32_t)sizeof(struct muslin_binding_spec), 0, 0, 0, 0, 97536, 4, 0, 20320, \
                                   325120, 2032, 36576, 0, 3, 0 }
/* Writes the values above to the first `size` bytes of *spec. Since 0.1. */
MUSLIN_API muslin_status muslin_binding_spec_init(struct muslin_binding_spec *spec, uint32_t size);

struct muslin_binding {
    uint32_t size;
    uint32_t flags;
    muslin_len perimeter;
    muslin_len length;          /* perimeter + corners x corner_extra + extra: wanted in one run */
    int64_t strips_needed;
    int64_t strips;             /* strips_needed + spare_strips */
    int64_t joins;              /* strips_needed - 1 */
    muslin_len loss_per_join;
    muslin_len joined;          /* the run of the needed strips */
    muslin_len spare;           /* joined - length: what is left at the last corner */
    muslin_len cloth_length;    /* strips x binding_cut */
    muslin_len bought;          /* up to the step */
    muslin_len narrower_by;     /* the cloth may be this much narrower before another strip is needed, down */
    uint32_t warnings;          /* MUSLIN_WARN_NO_SLACK */
    uint32_t pad;
};
/* Length, strips, joins and cloth for a binding. MUSLIN_ERR_NO_YIELD, MUSLIN_ERR_RANGE. Example: 96 x 110 in, 12 in
 * extra, 40 in usable, joins ignored: 424 in, 11 strips; 11 strips of 2 1/2 in need 27 1/2 in. Since 0.1. */
MUSLIN_API muslin_status muslin_binding_plan(const struct muslin_binding_spec *spec, struct muslin_binding *out,
                                             struct muslin_problem *problem);

/* ---- bias ------------------------------------------------------------------------------------------------------ */

struct muslin_bias_spec {
    uint32_t size;
    uint32_t flags;          /* MUSLIN_BIAS_BLUNT_ENDS or 0 */
    muslin_len width;        /* of the cloth piece; for the least square it is not read */
    muslin_len length;       /* its other side */
    muslin_len strip_cut;    /* w, cut width of the bias strip, 1 or more */
    muslin_len allowance;    /* s, of the seams */
    muslin_len wanted;       /* for the least square: length of bias wanted */
};
#define MUSLIN_BIAS_BLUNT_ENDS 1u /* both ends cut square: takes off w more */
#define MUSLIN_BIAS_SPEC_INIT { (uint32_t)sizeof(struct muslin_bias_spec), 0, 0, 0, 20320, 2032, 0 }
/* Writes the values above to the first `size` bytes of *spec. Since 0.1. */
MUSLIN_API muslin_status muslin_bias_spec_init(struct muslin_bias_spec *spec, uint32_t size);

struct muslin_bias {
    uint32_t size;
    uint32_t flags;
    int64_t rounds;          /* of the tube; for separate strips: how many strips */
    int64_t joins;           /* seams that cross the strip */
    muslin_len length;       /* of bias strip obtained, down to a tick; 0 if none */
    muslin_len square;       /* side of the square used (least square), else 0 */
    muslin_len area_rule;    /* sqrt(wanted x w), nearest tick: the published rule, a lower bound only; else 0 */
    muslin_len spare;        /* length - wanted (least square), else 0 */
};
/* The continuous tube from a rectangle a x b (a the shorter side; a square is cut on its diagonal, of a longer
 * rectangle a 45 degree corner is moved to the other end): rounds n = floor((b - 2 s) / (sqrt 2 w)), length
 * n sqrt 2 a - (n - 1) 2 sqrt 2 s, ends at 45 degrees. Exact, rounded once. Source: geometry. No round at all is an
 * answer (length 0). MUSLIN_ERR_RANGE when n x a passes MUSLIN_SIZE_MAX. Since 0.1. */
MUSLIN_API muslin_status muslin_bias_tube(const struct muslin_bias_spec *spec, struct muslin_bias *out,
                                          struct muslin_problem *problem);

/* The least square, on the rounding's grid, whose tube gives `wanted`. rounding's direction must be up
 * (MUSLIN_ERR_CHOICE) and its tolerance 0. Area rules in print are too small in places: the tube loses two allowances
 * a round and whole rounds at its edge. MUSLIN_ERR_RANGE when no square up to MUSLIN_SIZE_MAX will do.
 * O(log) by halving. Example: 55 in of 2 1/2 in, 1/4 in seams: 13 3/8 in. Since 0.1. */
MUSLIN_API muslin_status muslin_bias_least_square(const struct muslin_bias_spec *spec,
                                                  const struct muslin_rounding_spec *rounding,
                                                  struct muslin_bias *out, struct muslin_problem *problem);

/* Separate strips cut side by side from both halves of a square (`width`; `length` must equal it or be 0), parallel to
 * its diagonal, ends left at 45 degrees, joined into one run: in each half n = floor(S / (sqrt 2 w)) strips; measured
 * along their middle they add up to sqrt 2 n S - n n w a half, and each join takes 2 sqrt 2 s. Down to a tick.
 * Source: geometry. Since 0.1. */
MUSLIN_API muslin_status muslin_bias_strips(const struct muslin_bias_spec *spec, struct muslin_bias *out,
                                            struct muslin_problem *problem);

/* ---- batting --------------------------------------------------------------------------------------------------- */

struct muslin_batting_spec {
    uint32_t size;
    uint32_t flags;           /* MUSLIN_BATTING_FIXED or 0 */
    muslin_len quilt_width;
    muslin_len quilt_length;
    muslin_len margin_left;   /* beyond the quilt on each side, 0 or more */
    muslin_len margin_right;
    muslin_len margin_top;
    muslin_len margin_bottom;
    muslin_len roll_width;    /* of batting sold by length, for pieces joined; 0 when not asked */
};
#define MUSLIN_BATTING_FIXED 1u /* the package may not be turned */
/* 3 in on every side. */
#define MUSLIN_BATTING_SPEC_INIT { (uint32_t)sizeof(struct muslin_batting_spec), 0, 0, 0, 24384, 24384, 24384, 24384, 0 }
/* Writes the values above to the first `size` bytes of *spec. Since 0.1. */
MUSLIN_API muslin_status muslin_batting_spec_init(struct muslin_batting_spec *spec, uint32_t size);

struct muslin_batting {
    uint32_t size;
    uint32_t flags;
    muslin_len width;           /* to cut */
    muslin_len length;
    int64_t package;            /* row of MUSLIN_TABLE_BATTING, the smallest area that covers; -1 when none does */
    muslin_len package_width;   /* 0 when none */
    muslin_len package_length;
    muslin_len spare_width;     /* package beyond the need, as it lies */
    muslin_len spare_length;
    int32_t turned;             /* 1 when the package lies turned */
    int32_t joined_turned;      /* 1 when joined pieces run across the quilt */
    int64_t joined_pieces;      /* pieces of the roll laid edge to edge, without allowance; 0 when not asked */
    muslin_len joined_length;   /* length of roll to buy for them: the shorter of both ways */
    int64_t joined_joins;
};
/* Batting for a quilt. That no listed package covers is an answer (package -1), not an error. Example: 60 x 80 in with
 * 3 in margins: 66 x 86 in. Cost: rows of the table. Since 0.1. */
MUSLIN_API muslin_status muslin_batting_plan(const struct muslin_batting_spec *spec, struct muslin_batting *out,
                                             struct muslin_problem *problem);

/* ---- backing --------------------------------------------------------------------------------------------------- */

enum muslin_backing_layout_kind {
    MUSLIN_BACKING_ONE_WIDTH = 1,        /* a single panel, its length along the quilt's length */
    MUSLIN_BACKING_ONE_WIDTH_TURNED = 2, /* a single panel, its length along the quilt's width */
    MUSLIN_BACKING_SEAMS_ALONG = 3,      /* panels side by side, seams parallel to the quilt's length */
    MUSLIN_BACKING_SEAMS_ACROSS = 4,     /* panels one below the other, seams parallel to its width */
    MUSLIN_BACKING_CENTRE_ALONG = 5,     /* a whole panel in the middle, equal side panels, seams along */
    MUSLIN_BACKING_CENTRE_ACROSS = 6,    /* the same, seams across */
    MUSLIN_BACKING_INSERT_ALONG = 7,     /* one panel split lengthwise, a strip let in, seams along */
    MUSLIN_BACKING_INSERT_ACROSS = 8     /* the same, seams across */
};

struct muslin_backing_spec {
    uint32_t size;
    uint32_t flags;             /* MUSLIN_BACKING_ROUND_PANELS or 0 */
    muslin_len quilt_width;
    muslin_len quilt_length;
    muslin_len margin_left;     /* beyond the quilt on each side, 0 or more */
    muslin_len margin_right;
    muslin_len margin_top;
    muslin_len margin_bottom;
    muslin_len fabric_width;    /* from edge to edge of the cloth */
    muslin_len selvage;         /* cut off each edge: usable width u = fabric_width - 2 x selvage */
    muslin_len seam;            /* q, allowance of the backing's seams */
    muslin_len end_trim;        /* added to each panel's length, for squaring */
    muslin_len repeat;          /* pattern repeat along the cloth; each length is a whole number of them; 0 for none */
    muslin_len step;            /* purchase step, 1 or more */
    int32_t print;              /* enum muslin_print: a print with a direction forbids panels turned a quarter */
    int32_t pad;                /* 0 */
};
#define MUSLIN_BACKING_ROUND_PANELS 1u /* round each panel up to the step, not only the total */
/* 4 in on every side, 40 in usable without selvages, 1/2 in seams, bought in eighths of a yard, no repeat. */
#define MUSLIN_BACKING_SPEC_INIT { (uint32_t)sizeof(struct muslin_backing_spec), 0, 0, 0, 32512, 32512, 32512, 32512, \
                                   325120, 0, 4064, 0, 0, 36576, 1, 0 }
/* Writes the values above to the first `size` bytes of *spec. Since 0.1. */
MUSLIN_API muslin_status muslin_backing_spec_init(struct muslin_backing_spec *spec, uint32_t size);

struct muslin_backing {
    uint32_t size;
    uint32_t flags;
    int32_t layout;             /* enum muslin_backing_layout_kind */
    int32_t possible;           /* 0: this layout cannot serve; the numbers below are then 0 */
    int32_t best;               /* 1 for the one that buys least; ties: fewest seams, then the lower number */
    int32_t turned;             /* 1 when the cloth's length runs across the quilt */
    muslin_len needed_width;    /* quilt and margins */
    muslin_len needed_length;
    int64_t panels;             /* full-width lengths cut from the cloth */
    muslin_len panel_length;    /* of each, with end_trim and repeat */
    int64_t pieces;             /* pieces sewn together: panels, or centre and sides, or halves and insert strips */
    int64_t seams;              /* in the finished backing, joins within an insert included */
    muslin_len joined_width;    /* of the backing as sewn, before trimming, along the quilt's width ... */
    muslin_len joined_length;   /* ... and length */
    muslin_len cloth_length;    /* exact */
    muslin_len cloth_with_repeat;/* one repeat more on the order, to shift the start; cloth_length without repeat */
    muslin_len bought;          /* up to the step, per panel if asked, else on the total */
    muslin_len other_rounding;  /* the same under the other rounding rule */
    muslin_len narrower_by;     /* the cloth may be this much narrower before this layout needs more panels or fails */
    muslin_len strip_cut;       /* cut width of each side panel (CENTRE) or of the insert (INSERT); else 0 */
    uint32_t warnings;          /* MUSLIN_WARN_NO_SLACK */
    uint32_t pad;
};
/* All layouts compared, one row each, in the order of the enum (ask-then-fill; eight rows in this version, later
 * versions may know more). With n panels of usable width u and seam q the joined width is n u - 2 q (n - 1). CENTRE:
 * side = (need - u + 4 q) / 2 up to a tick, both sides from one further panel if 2 sides fit in u, else from one each.
 * INSERT: strip x = need - u + 4 q, cut across the cloth in ceil((L - 2 q) / (u - 2 q)) pieces joined end to end,
 * x no wider than 1/2 u; only for a print that may turn. A layout that cannot serve has possible = 0; if none can,
 * MUSLIN_ERR_NO_FIT. Source: geometry. MUSLIN_ERR_RANGE (sizes, negative margins), MUSLIN_ERR_CHOICE.
 * Example: 80 x 56 in need at 40 in usable, 1/2 in seams: two panels side by side give 79 in, so three are needed.
 * Since 0.1. */
MUSLIN_API muslin_status muslin_backing_layouts(const struct muslin_backing_spec *spec, struct muslin_backing *rows,
                                                size_t row_size, size_t capacity, size_t *count,
                                                struct muslin_problem *problem);

enum muslin_panel_role {
    MUSLIN_PANEL_WHOLE = 1,
    MUSLIN_PANEL_CENTRE = 2,
    MUSLIN_PANEL_SIDE = 3,
    MUSLIN_PANEL_HALF = 4,
    MUSLIN_PANEL_INSERT = 5
};

struct muslin_panel {
    uint32_t size;
    uint32_t flags;
    int32_t role;              /* enum muslin_panel_role */
    int32_t position;          /* from 1, from the left (seams along) or the top (seams across) */
    muslin_len cut_width;      /* across the cloth */
    muslin_len cut_length;     /* along the cloth */
    int64_t count;             /* equal pieces: > 1 only for an insert made of several */
};
/* One layout piece by piece, in sewing order across the quilt (ask-then-fill). MUSLIN_ERR_CHOICE for an unknown
 * layout, MUSLIN_ERR_NO_FIT for one that cannot serve. O(pieces). Since 0.1. */
MUSLIN_API muslin_status muslin_backing_panels(const struct muslin_backing_spec *spec, int32_t layout,
                                               struct muslin_panel *rows, size_t row_size, size_t capacity,
                                               size_t *count, struct muslin_problem *problem);

/* ---- what hangs on the back ------------------------------------------------------------------------------------ */

struct muslin_hanging_spec {
    uint32_t size;
    uint32_t flags;              /* 0 */
    muslin_len quilt_width;      /* finished */
    int64_t sleeves;             /* 0, 1 or 2 */
    muslin_len inset;            /* from each side edge of the quilt to the sleeve */
    muslin_len gap;              /* between two sleeves, for a middle hook */
    muslin_len drop;             /* finished depth of the sleeve, lying flat */
    muslin_len ease;             /* extra in the sleeve's front, so that the rod does not bulge the quilt */
    muslin_len hem;              /* turned under at each end of a sleeve, in all */
    muslin_len allowance;        /* of the long seam and of the label */
    muslin_len label_width;      /* finished; 0 for no label */
    muslin_len label_height;
    muslin_len corner_triangle;  /* finished short side of corner triangles that hold a rod or a label; 0 for none */
    int64_t corners;             /* how many triangles, 0 .. 4 */
};
/* One sleeve 4 in deep, 1 in in from each edge, 1/2 in ease, 1 in hems. Common practice, no source. */
#define MUSLIN_HANGING_SPEC_INIT { (uint32_t)sizeof(struct muslin_hanging_spec), 0, 0, 1, 8128, 16256, 32512, 4064, \
                                   8128, 2032, 0, 0, 0, 0 }
/* Writes the values above to the first `size` bytes of *spec. Since 0.1. */
MUSLIN_API muslin_status muslin_hanging_spec_init(struct muslin_hanging_spec *spec, uint32_t size);

struct muslin_hanging {
    uint32_t size;
    uint32_t flags;
    int64_t sleeves;
    muslin_len sleeve_finished;  /* finished length of each */
    muslin_len sleeve_cut_length;/* finished + 2 hems */
    muslin_len sleeve_cut_width; /* 2 x drop + ease + 2 allowances: a tube */
    muslin_len label_cut_width;  /* finished + 2 allowances; 0 without label */
    muslin_len label_cut_height;
    int64_t corner_squares;      /* squares folded once on the diagonal, raw edges into the binding seam */
    muslin_len corner_square_cut;/* corner_triangle + allowance, folded: two raw sides in the seam */
};
/* Hanging sleeve (one, or two with a gap), label, corner triangles. A sleeve's length is
 * (quilt_width - 2 inset - (n - 1) gap) / n, down to a tick. Common practice, no source; geometry. MUSLIN_ERR_RANGE,
 * also when inset and gap leave no sleeve. Since 0.1. */
MUSLIN_API muslin_status muslin_hanging_plan(const struct muslin_hanging_spec *spec, struct muslin_hanging *out,
                                             struct muslin_problem *problem);

#ifdef __cplusplus
}
#endif

#endif
