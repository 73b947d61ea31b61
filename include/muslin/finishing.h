/* muslin/finishing.h - binding, batting, backing, and what hangs on the back.
 *
 * SPDX-License-Identifier: MIT
 *
 * Quilt sizes here are those of the finished top, 1 .. MUSLIN_SIZE_MAX. Other lengths of a request are
 * 0 .. MUSLIN_SIZE_MAX and allowances 0 .. MUSLIN_SIZE_MAX / 8, unless a member says otherwise.
 *
 * Every call
 *   Statuses    MUSLIN_ERR_NULL, MUSLIN_ERR_STRUCT_SIZE, MUSLIN_ERR_STRUCT_TAIL and MUSLIN_ERR_FLAGS as for every
 *               struct; MUSLIN_ERR_RANGE for a value outside the range of its member; MUSLIN_ERR_CHOICE for a choice
 *               that is not listed. What else a call can return stands with it.
 *   Cost        Constant time unless its comment says otherwise. Nothing allocates.
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
    muslin_len allowance;    /* s, from the raw edge of the binding to its seam */
    muslin_len front;        /* finished width shown on the front, from the seam to the edge of the quilt */
    muslin_len thickness;    /* t of the quilt sandwich at the edge */
    muslin_len back;         /* finished width wanted on the back; not used when binding_cut is given */
    muslin_len turn_under;   /* at the far edge of a single fold; not used for a double one */
    muslin_len binding_cut;  /* 0: work out the cut width; else: work out what this one shows on the back */
    muslin_len uneven_limit; /* warn when back and front differ by more than this */
};
/* Double fold, 1/4 in seam, 1/4 in shown on both sides, no thickness, warn beyond 1/8 in. */
#define MUSLIN_BINDING_WIDTH_SPEC_INIT { sizeof(struct muslin_binding_width_spec), 0, 1, 0, 2032, 2032, 0, \
                                         2032, 2032, 0, 1016 }
/* Writes the values above to the first `size` bytes of *spec. Since 1.0. */
MUSLIN_API muslin_status muslin_binding_width_spec_init(struct muslin_binding_width_spec *spec, uint32_t size);

struct muslin_binding_width {
    uint32_t size;
    uint32_t flags;
    muslin_len cut_width;    /* C, of the strip */
    muslin_len back;         /* finished width shown on the back, half ticks down; below 0: it does not reach round */
    muslin_len folded;       /* width after folding, before sewing: C/2 up for a double fold, C for a single one */
    uint32_t warnings;       /* MUSLIN_WARN_BINDING_UNEVEN beyond the limit; MUSLIN_WARN_BACK_TOO_NARROW when the back
                                shows less than the front, so that the seam stays bare; half ticks counted */
    uint32_t pad;            /* 0 */
};
/* The cut width of a binding from what it shall show, or what a given cut width shows. Double fold:
 * C = 2 (s + front + t + back), so the back shows C/2 - s - front - t. Single fold: C = s + front + t + back +
 * turn_under, the back C - s - front - t - turn_under. Source: geometry; 4 w + 1/2 in and 6 w + ease, the rules in
 * print, are special cases. Example: all 1/4 in, double fold: C = 1 1/2 in. Since 1.0. */
MUSLIN_API muslin_status muslin_binding_measure(const struct muslin_binding_width_spec *spec,
                                                struct muslin_binding_width *out, struct muslin_problem *problem);

/* ---- binding: the length --------------------------------------------------------------------------------------- */

struct muslin_binding_spec {
    uint32_t size;
    uint32_t flags;             /* 0 */
    muslin_len perimeter;       /* finished, of any outline, up to 4 x MUSLIN_SIZE_MAX; 0: 2 x (width + length) */
    muslin_len quilt_width;     /* finished; not read when a perimeter is given */
    muslin_len quilt_length;    /* the same */
    muslin_len extra;           /* for the ends and the last join; sources use 10, 12, 15, 20, 24 in */
    int64_t corners;            /* of the outline, 0 .. MUSLIN_COUNT_MAX; 0 for a rounded one */
    muslin_len corner_extra;    /* added for each corner; most sources add none */
    muslin_len binding_cut;     /* cut width of the strips, 1 or more */
    muslin_len strip_length;    /* usable length of each strip, 1 or more */
    muslin_len allowance;       /* of the joins */
    muslin_len step;            /* purchase step, 1 or more */
    int64_t spare_strips;       /* cut on top of the need, 0 .. MUSLIN_COUNT_MAX */
    int32_t join;               /* enum muslin_join; BUTTED ignores the loss, as many published figures do */
    int32_t pad;                /* 0 */
};
/* Extra 12 in, 2 1/2 in strips, 40 in usable, diagonal joins, bought in eighths of a yard. */
#define MUSLIN_BINDING_SPEC_INIT { sizeof(struct muslin_binding_spec), 0, 0, 0, 0, 97536, 4, 0, 20320, \
                                   325120, 2032, 36576, 0, 3, 0 }
/* Writes the values above to the first `size` bytes of *spec. Since 1.0. */
MUSLIN_API muslin_status muslin_binding_spec_init(struct muslin_binding_spec *spec, uint32_t size);

struct muslin_binding {
    uint32_t size;
    uint32_t flags;
    muslin_len perimeter;       /* finished */
    muslin_len length;          /* perimeter + corners x corner_extra + extra: wanted in one run */
    int64_t strips_needed;      /* for that run */
    int64_t strips;             /* to cut: strips_needed + spare_strips */
    int64_t joins;              /* strips_needed - 1 */
    muslin_len loss_per_join;   /* as of muslin_join_loss() */
    muslin_len joined;          /* the run of the needed strips, without the spare ones */
    muslin_len spare;           /* joined - length: what is left at the last corner */
    muslin_len cloth_length;    /* strips x binding_cut */
    muslin_len bought;          /* cloth_length up to the step */
    muslin_len narrower_by;     /* the cloth may be this much narrower before another strip is needed, down */
    uint32_t warnings;          /* MUSLIN_WARN_NO_SLACK when nothing is spare */
    uint32_t pad;               /* 0 */
};
/* Length, strips, joins and cloth for a binding; the run is muslin_run_plan()'s. MUSLIN_ERR_NO_YIELD when a join eats
 * a whole strip and one strip is not enough; MUSLIN_ERR_RANGE also when the run passes the longest that
 * muslin_run_plan() takes; MUSLIN_ERR_OVERFLOW when it needs more than MUSLIN_COUNT_MAX strips. Source: sums, and
 * common practice for the extra. Example: 96 x 110 in, 12 in extra, 40 in usable, joins ignored: 424 in, 11 strips; 11
 * strips of 2 1/2 in need 27 1/2 in. Since 1.0. */
MUSLIN_API muslin_status muslin_binding_plan(const struct muslin_binding_spec *spec, struct muslin_binding *out,
                                             struct muslin_problem *problem);

/* ---- bias ------------------------------------------------------------------------------------------------------ */

struct muslin_bias_spec {
    uint32_t size;
    uint32_t flags;          /* MUSLIN_BIAS_BLUNT_ENDS or 0 */
    muslin_len width;        /* of the cloth piece, 1 or more; not read for the least square */
    muslin_len length;       /* its other side; the tube: 1 or more, strips: the same as width or 0 */
    muslin_len strip_cut;    /* w, cut width of the bias strip, 1 or more */
    muslin_len allowance;    /* s, of the seams */
    muslin_len wanted;       /* length of bias strip, 1 or more; read for the least square only */
};
#define MUSLIN_BIAS_BLUNT_ENDS 1u /* both ends cut square: takes off w more */
/* A strip cut 2 1/2 in, 1/4 in seams; the cloth, or the length wanted, is still to be given. */
#define MUSLIN_BIAS_SPEC_INIT { sizeof(struct muslin_bias_spec), 0, 0, 0, 20320, 2032, 0 }
/* Writes the values above to the first `size` bytes of *spec. Since 1.0. */
MUSLIN_API muslin_status muslin_bias_spec_init(struct muslin_bias_spec *spec, uint32_t size);

struct muslin_bias {
    uint32_t size;
    uint32_t flags;
    int64_t rounds;          /* of the tube; for separate strips: how many strips */
    int64_t joins;           /* that take 2 sqrt 2 s off the run each: rounds - 1; 0 without a round */
    muslin_len length;       /* of bias strip obtained, down to a tick; 0 if none */
    muslin_len square_cut;   /* side of the square to cut (least square), else 0 */
    muslin_len area_rule;    /* sqrt(wanted x w), nearest tick (least square), else 0: the published rule, a lower
                                bound only */
    muslin_len spare;        /* length - wanted (least square), else 0 */
};
/* The continuous tube from a rectangle a x b (a the shorter side; a square is cut on its diagonal, of a longer
 * rectangle a 45 degree corner is moved to the other end). The first seam takes 2 s off b, so there are
 * n = floor((b - 2 s) / (sqrt 2 w)) rounds, each sqrt 2 a long; the tube's own seam crosses the strip n - 1 times.
 * Length n sqrt 2 a - (n - 1) 2 sqrt 2 s, ends at 45 degrees. Exact, rounded once. Source: geometry. No round at all is
 * an answer (length 0), and so it is when the seams take up the whole of a: a <= 2 s. MUSLIN_ERR_RANGE also when n x a
 * passes MUSLIN_SIZE_MAX. Example: 18 x 18 in, 2 1/2 in strip, 1/4 in seams: 4 rounds, 99.70 in. Since 1.0. */
MUSLIN_API muslin_status muslin_bias_tube(const struct muslin_bias_spec *spec, struct muslin_bias *out,
                                          struct muslin_problem *problem);

/* The least square, on the rounding's grid, whose tube gives `wanted`. rounding's direction must be up
 * (MUSLIN_ERR_CHOICE) and its tolerance 0 (MUSLIN_ERR_RANGE). Area rules in print are too small in places: the tube
 * loses two allowances a round and whole rounds at its edge. MUSLIN_ERR_RANGE also when no square up to
 * MUSLIN_SIZE_MAX will do (the limit is what the largest gives), or when the least one gives so much more than wanted
 * that muslin_bias_tube() would refuse it. Source: geometry, as for the tube. Cost: the logarithm of
 * MUSLIN_SIZE_MAX / grid. Example: 55 in of 2 1/2 in, 1/4 in seams, to 1/8 in: 13 3/8 in. Since 1.0. */
MUSLIN_API muslin_status muslin_bias_least_square(const struct muslin_bias_spec *spec,
                                                  const struct muslin_rounding_spec *rounding,
                                                  struct muslin_bias *out, struct muslin_problem *problem);

/* Separate strips cut side by side from both halves of a square (`width`; `length` must equal it or be 0), parallel to
 * its diagonal, ends left at 45 degrees, every other one turned end for end, joined into one run: in each half
 * n = floor(S / (sqrt 2 w)) strips, down to the short ones in the corner; measured along their middle they add up to
 * sqrt 2 n S - n n w a half, and each of the 2 n - 1 joins takes 2 sqrt 2 s. Down to a tick. No strip at all is an
 * answer (length 0). MUSLIN_ERR_RANGE also when n x S passes MUSLIN_SIZE_MAX. Source: geometry. Example: 18 in square,
 * 2 1/2 in strips, 1/4 in seams: 10 strips, 123.19 in. Since 1.0. */
MUSLIN_API muslin_status muslin_bias_strips(const struct muslin_bias_spec *spec, struct muslin_bias *out,
                                            struct muslin_problem *problem);

/* ---- batting --------------------------------------------------------------------------------------------------- */

struct muslin_batting_spec {
    uint32_t size;
    uint32_t flags;           /* MUSLIN_BATTING_FIXED or 0 */
    muslin_len quilt_width;   /* finished */
    muslin_len quilt_length;
    muslin_len margin_left;   /* beyond the quilt; quilt and margins together at most MUSLIN_SIZE_MAX each way */
    muslin_len margin_right;
    muslin_len margin_top;
    muslin_len margin_bottom;
    muslin_len roll_width;    /* of batting sold by length, for pieces joined; 0 when not asked */
};
#define MUSLIN_BATTING_FIXED 1u /* the package may not be turned */
/* 3 in on every side. */
#define MUSLIN_BATTING_SPEC_INIT { sizeof(struct muslin_batting_spec), 0, 0, 0, 24384, 24384, 24384, 24384, \
                                   0 }
/* Writes the values above to the first `size` bytes of *spec. Since 1.0. */
MUSLIN_API muslin_status muslin_batting_spec_init(struct muslin_batting_spec *spec, uint32_t size);

struct muslin_batting {
    uint32_t size;
    uint32_t flags;
    muslin_len width;           /* to cut: quilt and margins */
    muslin_len length;
    int64_t package;            /* row of MUSLIN_TABLE_BATTING, the smallest area that covers, the first of equals; -1
                                   when none does */
    muslin_len package_width;   /* as listed; 0 when none */
    muslin_len package_length;
    muslin_len spare_width;     /* package beyond the need along the quilt's width, as it lies; 0 when none */
    muslin_len spare_length;    /* ... and along its length */
    int32_t turned;             /* 1 when the package lies turned a quarter: only where it does not cover upright */
    int32_t joined_turned;      /* 1 when joined pieces run across the quilt, 0 when along its length */
    int64_t joined_pieces;      /* pieces of the roll laid edge to edge, without allowance; 0 when not asked */
    muslin_len joined_length;   /* of roll to buy for them: the shorter of both ways; ties: fewer pieces, then along */
    int64_t joined_joins;       /* joined_pieces - 1 */
};
/* Batting for a quilt: the size to cut, the package to buy, or the pieces of a roll. That no listed package covers is
 * an answer (package -1), not an error. Source: margins by common practice, the table's rows name theirs; geometry.
 * Cost: rows of the table. Example: 60 x 80 in with 3 in margins: 66 x 86 in. Since 1.0. */
MUSLIN_API muslin_status muslin_batting_plan(const struct muslin_batting_spec *spec, struct muslin_batting *out,
                                             struct muslin_problem *problem);

/* ---- backing --------------------------------------------------------------------------------------------------- */

enum muslin_backing_layout {
    MUSLIN_BACKING_LAYOUT_ONE_WIDTH = 1,        /* a single panel, its length along the quilt's length */
    MUSLIN_BACKING_LAYOUT_ONE_WIDTH_TURNED = 2, /* a single panel, its length along the quilt's width */
    MUSLIN_BACKING_LAYOUT_SEAMS_ALONG = 3,      /* panels side by side, seams parallel to the quilt's length */
    MUSLIN_BACKING_LAYOUT_SEAMS_ACROSS = 4,     /* panels one below the other, seams parallel to its width */
    MUSLIN_BACKING_LAYOUT_CENTRE_ALONG = 5,     /* a whole panel in the middle, equal side panels, seams along */
    MUSLIN_BACKING_LAYOUT_CENTRE_ACROSS = 6,    /* the same, seams across */
    MUSLIN_BACKING_LAYOUT_INSERT_ALONG = 7,     /* one panel split lengthwise, an insert between its halves, seams
                                                   along */
    MUSLIN_BACKING_LAYOUT_INSERT_ACROSS = 8     /* the same, seams across */
};

struct muslin_backing_spec {
    uint32_t size;
    uint32_t flags;             /* MUSLIN_BACKING_ROUND_PANELS or 0 */
    muslin_len quilt_width;     /* finished */
    muslin_len quilt_length;
    muslin_len margin_left;     /* beyond the quilt; quilt and margins together at most MUSLIN_SIZE_MAX each way */
    muslin_len margin_right;
    muslin_len margin_top;
    muslin_len margin_bottom;
    muslin_len fabric_width;    /* from edge to edge of the cloth, 1 or more */
    muslin_len selvage;         /* cut off each edge: usable width u = fabric_width - 2 x selvage, 1 or more */
    muslin_len allowance;       /* q, allowance of the backing's seams */
    muslin_len end_loss;        /* added to each panel's length, for squaring */
    muslin_len repeat;          /* pattern repeat along the cloth; each length cut is a whole number of them, the first
                                   too; 0 for none */
    muslin_len step;            /* purchase step, 1 or more */
    int32_t print;              /* enum muslin_print: a print with a direction forbids what would lie turned a quarter,
                                   that is turned panels, and inserts, which are cut across the cloth */
    int32_t pad;                /* 0 */
};
#define MUSLIN_BACKING_ROUND_PANELS 1u /* round each length cut up to the step, not only the total */
/* 4 in on every side, 40 in usable without selvages, 1/2 in seams, bought in eighths of a yard, no repeat. */
#define MUSLIN_BACKING_SPEC_INIT { sizeof(struct muslin_backing_spec), 0, 0, 0, 32512, 32512, 32512, 32512, \
                                   325120, 0, 4064, 0, 0, 36576, 1, 0 }
/* Writes the values above to the first `size` bytes of *spec. Since 1.0. */
MUSLIN_API muslin_status muslin_backing_spec_init(struct muslin_backing_spec *spec, uint32_t size);

struct muslin_backing {
    uint32_t size;
    uint32_t flags;
    int32_t layout;             /* enum muslin_backing_layout */
    int32_t possible;           /* 0: this layout cannot serve; everything below is then 0 */
    int32_t best;               /* 1 for the one that buys least; ties: fewest seams, then the lower number */
    int32_t turned;             /* 1 when the cloth's length runs across the quilt */
    muslin_len needed_width;    /* quilt and margins */
    muslin_len needed_length;
    int64_t panels;             /* lengths of cloth of the full width; the strips of an insert are not counted */
    muslin_len panel_length;    /* cut length of each, with end_trim and repeat */
    int64_t pieces;             /* sewn together: panels, or centre and sides, or two halves and an insert's strips */
    int64_t seams;              /* in the finished backing, joins within an insert included */
    muslin_len joined_width;    /* unfinished, of the backing as sewn, before trimming, along the quilt's width ... */
    muslin_len joined_length;   /* ... and length */
    muslin_len cloth_length;    /* exact: panels, and for an insert its strips one below the other */
    muslin_len cloth_with_repeat;/* one repeat more on the order, to shift the start; cloth_length without a repeat */
    muslin_len bought;          /* cloth_with_repeat up to the step, on the total, or length by length if asked */
    muslin_len other_rounding;  /* the same under the other rounding rule */
    muslin_len narrower_by;     /* the cloth may be this much narrower and what is bought still be enough for this
                                   layout, with as many panels and strips; their widths change: plan again first */
    muslin_len strip_cut;       /* cut width of each side panel (CENTRE) or of the insert (INSERT); else 0 */
    uint32_t warnings;          /* MUSLIN_WARN_NO_SLACK when narrower_by is 0 */
    uint32_t pad;               /* 0 */
};
/* All layouts compared, one row each, in the order of the enum (ask-then-fill; eight rows in this version, later
 * versions may know more). `need` is the side that the panels' widths must cover. ONE_WIDTH serves while need <= u;
 * the others are for a wider need.
 *   SEAMS   n panels joined are n u - 2 q (n - 1) wide; the least n, 2 or more. None when u <= 2 q.
 *   CENTRE  side = (need - u + 4 q) / 2 up to a tick: both from one further panel if 2 sides fit in u, from one each
 *           if one does, else it fails.
 *   INSERT  x = need - u + 4 q, no wider than u / 2, cut across the cloth in n strips u long, joined end to end until
 *           n u - 2 q (n - 1) is at least the panel's length, and then trimmed to it.
 * Rounding length by length takes each panel up to the step, the insert's strips together, and the extra repeat.
 * MUSLIN_ERR_NO_FIT when no layout serves; the limit is the fabric width that would. MUSLIN_ERR_RANGE also when the
 * selvages leave nothing. MUSLIN_ERR_BUFFER, MUSLIN_ERR_STRUCT_SIZE for the rows. Source: geometry; whole repeats for
 * every length are common practice in workrooms. Example: a backing of 80 x 56 in at 40 in usable, 1/2 in seams: two
 * panels side by side give 79 in, so 80 in needs three. Since 1.0. */
MUSLIN_API muslin_status muslin_backing_layouts(const struct muslin_backing_spec *spec, struct muslin_backing *rows,
                                                size_t row_size, size_t capacity, size_t *count,
                                                struct muslin_problem *problem);

enum muslin_panel_role {
    MUSLIN_PANEL_ROLE_WHOLE = 1,  /* the full usable width, one of equals */
    MUSLIN_PANEL_ROLE_CENTRE = 2, /* the full usable width, between two sides */
    MUSLIN_PANEL_ROLE_SIDE = 3,   /* cut to width from a further panel */
    MUSLIN_PANEL_ROLE_HALF = 4,   /* of a panel split lengthwise */
    MUSLIN_PANEL_ROLE_INSERT = 5  /* strips between the halves */
};

struct muslin_panel {
    uint32_t size;
    uint32_t flags;
    int32_t role;              /* enum muslin_panel_role */
    int32_t position;          /* from 1, from the left (seams along) or the top (seams across) */
    muslin_len cut_width;      /* across the cloth */
    muslin_len cut_length;     /* along the cloth; of an insert this is its width in the backing */
    int64_t count;             /* equal pieces: more than 1 only for an insert, whose strips are joined end to end */
};
/* One layout piece by piece, in sewing order across the quilt (ask-then-fill): the cut widths, of the insert its
 * cut_length, less 2 q a seam, are exactly the joined size of muslin_backing_layouts(). Halves of an odd number of
 * ticks differ by one. MUSLIN_ERR_CHOICE for an unknown layout, MUSLIN_ERR_NO_FIT for one that cannot serve,
 * MUSLIN_ERR_BUFFER and MUSLIN_ERR_STRUCT_SIZE for the rows, else as muslin_backing_layouts(). O(rows). Example: 59 in
 * across from 42 in cloth, 1/2 in seams, CENTRE: side 9 1/2 in, centre 42 in, side 9 1/2 in. Since 1.0. */
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
    muslin_len gap;              /* between two sleeves, for a middle hook; not used for one */
    muslin_len drop;             /* finished depth of the sleeve, lying flat; 1 or more where there is a sleeve */
    muslin_len ease;             /* extra in the sleeve's front, so that the rod does not bulge the quilt */
    muslin_len hem;              /* turned under at each end of a sleeve, in all */
    muslin_len allowance;        /* of the sleeve's long seam, of the label, and of the binding seam at the triangles */
    muslin_len label_width;      /* finished; 0 for no label */
    muslin_len label_height;     /* finished, 1 or more where there is a label */
    muslin_len corner_triangle;  /* finished short side of corner triangles that hold a rod or a label; 0 for none */
    int64_t corners;             /* how many triangles, 0 .. 4 */
};
/* One sleeve 4 in deep, 1 in in from each edge, 1/2 in ease, 1 in hems. Common practice, no source. */
#define MUSLIN_HANGING_SPEC_INIT { sizeof(struct muslin_hanging_spec), 0, 0, 1, 8128, 16256, 32512, 4064, \
                                   8128, 2032, 0, 0, 0, 0 }
/* Writes the values above to the first `size` bytes of *spec. Since 1.0. */
MUSLIN_API muslin_status muslin_hanging_spec_init(struct muslin_hanging_spec *spec, uint32_t size);

struct muslin_hanging {
    uint32_t size;
    uint32_t flags;
    int64_t sleeves;             /* as asked */
    muslin_len sleeve_finished;  /* finished length of each; 0 without a sleeve, and so are both cut sizes */
    muslin_len sleeve_cut_length;/* finished + 2 hems */
    muslin_len sleeve_cut_width; /* 2 x drop + ease + 2 allowances: a tube */
    muslin_len label_cut_width;  /* finished + 2 allowances; 0 without a label */
    muslin_len label_cut_height;
    int64_t corner_squares;      /* squares folded once on the diagonal, raw sides into the binding seam */
    muslin_len corner_square_cut;/* corner_triangle + 2 allowances; 0 without triangles */
};
/* Hanging sleeve (one, or two with a gap), label, corner triangles. A sleeve's length is
 * (quilt_width - 2 inset - (n - 1) gap) / n, down to a tick. A folded square lies in the quilt's corner: each of its
 * raw sides loses one allowance to the other's seam and one at the tip, where the fold runs at 45 degrees.
 * MUSLIN_ERR_RANGE also when inset and gap leave no sleeve. Source: common practice, no source, and
 * geometry. Example: quilt 60 in wide, the initial values: sleeve 58 in, cut 60 x 9 in. Since 1.0. */
MUSLIN_API muslin_status muslin_hanging_plan(const struct muslin_hanging_spec *spec, struct muslin_hanging *out,
                                             struct muslin_problem *problem);

#ifdef __cplusplus
}
#endif

#endif
