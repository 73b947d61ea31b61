/* muslin/solution.h - a piecing tree solved: sizes, the assembly check, the cut list, drawings.
 *
 * SPDX-License-Identifier: MIT
 *
 * Solving puts values into a quilt's measures and gives an immutable solution. Another size of the same design is
 * another solution of the same tree. A solution reads its quilt, which must outlive it and may grow meanwhile in the
 * same thread.
 *
 * Sizes       Finished, unfinished (finished + e at each edge, e = s + u / 2, in all up to a tick; no e at an edge
 *             whose allowance is 0, and at one where they differ that of the quilt) and, of a patch, cut, which is the
 *             same. A join is as long as its children together and as high as its highest child; lower ones lie at its
 *             top, narrower ones at its left. A trimmed edge has the quilt's allowance; seams that a trim cuts off are
 *             still sewn, and still count.
 * Rows        All rows are asked for and then filled, as in base.h; they were worked out when it was solved unless the
 *             comment says otherwise.
 *
 * Every call
 *   Units       Lengths are ticks, areas doubled square ticks, counts int64_t up to MUSLIN_COUNT_MAX.
 *   Statuses    MUSLIN_ERR_NULL, _STRUCT_SIZE, _STRUCT_TAIL, _FLAGS, _BUFFER: an input or output breaks the rules of
 *               base.h. MUSLIN_ERR_CHOICE, MUSLIN_ERR_RANGE: a member outside its choices or range.
 *               MUSLIN_ERR_FOREIGN: an id of another quilt, or of a node that the solved one does not hold.
 *               What else a call can return stands with it.
 *   Cost        Only muslin_solution_create() allocates.
 *   Threads     A solution may be read from many threads.
 */
#ifndef MUSLIN_SOLUTION_H
#define MUSLIN_SOLUTION_H

#include "quilt.h"

#ifdef __cplusplus
extern "C" {
#endif

struct muslin_solution; /* opaque */

/* ---- solving --------------------------------------------------------------------------------------------------- */

struct muslin_solution_spec {
    uint32_t size;
    uint32_t flags;              /* MUSLIN_YIELD_FROM_ONE_END, of strip sets, or 0: from both ends */
    int64_t tops;                /* how many of the root are made; 1 .. MUSLIN_COUNT_MAX */
    muslin_len ease;             /* edges that differ by no more are eased, not misfits; 0 .. MUSLIN_SIZE_MAX */
    muslin_len grid;             /* pieces cut again on the diagonal are rounded to it; 1 .. MUSLIN_UNIT_SIZE_MAX */
    muslin_len grid_tolerance;   /* below grid */
    muslin_len half_addition;    /* as in struct muslin_unit_spec; 0: its usual ones */
    muslin_len quarter_addition; /* so */
    muslin_len trim_room;        /* OVERSIZE: room to trim units and setting triangles */
    muslin_len end_trim;         /* strip sets: taken off each end, as in struct muslin_yield_spec */
    muslin_len resquare_loss;    /* as in struct muslin_yield_spec */
    int64_t resquare_every;      /* as in struct muslin_yield_spec */
    muslin_len fold_clear;       /* must be 0 with FROM_ONE_END */
    int32_t policy;              /* enum muslin_allowance_policy */
    int32_t tip;                 /* enum muslin_tip */
    int32_t direction;           /* enum muslin_direction, of cut sizes that are rounded */
    int32_t strip_piecing;       /* enum muslin_strip_piecing, of joins that say WHERE_FEWER: that, or NEVER */
};
/* One top, nothing eased; exact triangles up to 1/8 in, blunt tips; strip sets where they take fewer cuts, cut straight
 * through from one end with nothing trimmed. */
#define MUSLIN_SOLUTION_SPEC_INIT \
    { sizeof(struct muslin_solution_spec), MUSLIN_YIELD_FROM_ONE_END, 1, 0, 1016, 0, 0, 0, 0, 0, 0, 0, 0, 1, 2, 1, 1 }
/* Writes the values above to the first `size` bytes of *spec. Since 1.0. */
MUSLIN_API muslin_status muslin_solution_spec_init(struct muslin_solution_spec *spec, uint32_t size);

struct muslin_solution_value_spec {
    uint32_t size;
    uint32_t flags;   /* 0 */
    muslin_id id;     /* a named measure, the quilt's allowance or take-up, or a fabric, whose usable width it is; a
                         fixed length, a sum or an extent cannot be given one: MUSLIN_ERR_FOREIGN */
    muslin_len value; /* in the range of what it stands for */
};
/* 0 for something still to be given. */
#define MUSLIN_SOLUTION_VALUE_SPEC_INIT { sizeof(struct muslin_solution_value_spec), 0, 0, 0 }
/* Writes the values above to the first `size` bytes of *spec. Since 1.0. */
MUSLIN_API muslin_status muslin_solution_value_spec_init(struct muslin_solution_value_spec *spec, uint32_t size);

/* Solves the tree under `root`, with n values (0 or more; the last one of an id counts) in place of those that measures
 * and fabrics have. Only what the root needs is worked out. Edges that do not meet do not make it fail: see
 * muslin_solution_misfits(). MUSLIN_ERR_RANGE: a sum of measures, a size or a trimmed size outside 1 .. MUSLIN_SIZE_MAX
 * (a sum may be 0), more pieces than MUSLIN_COUNT_MAX; `at` is the number of the measure or node (muslin_id_number()).
 * Statuses of the recipes of units and setting triangles (unit.h, setting.h), `at` the node. MUSLIN_ERR_METHOD: a join
 * that must be strip-pieced has pieces that are not patches of one length. MUSLIN_ERR_NO_YIELD: a strip set as wide as
 * its fabric gives no segment. MUSLIN_ERR_NO_MEMORY. Allocator null: the quilt's. Time and memory follow the nodes of
 * the quilt up to the root, plus a sort of the cut list. Example: muslin_solution_create(quilt, top, &spec, NULL, 0, 0,
 * NULL, &solution, NULL). Since 1.0. */
MUSLIN_API muslin_status muslin_solution_create(const struct muslin_quilt *quilt, muslin_id root,
                                                const struct muslin_solution_spec *spec,
                                                const struct muslin_solution_value_spec *values, size_t row_size,
                                                size_t n, const struct muslin_allocator *allocator,
                                                struct muslin_solution **out, struct muslin_problem *problem);

/* Gives the solution's memory back; null is fine. Example: muslin_solution_free(solution). Since 1.0. */
MUSLIN_API void muslin_solution_free(struct muslin_solution *solution);

/* ---- sizes ----------------------------------------------------------------------------------------------------- */

struct muslin_node_size {
    uint32_t size;
    uint32_t flags;
    muslin_len finished_width;    /* as seen */
    muslin_len finished_height;
    muslin_len unfinished_width;  /* of a patch: cut */
    muslin_len unfinished_height;
    muslin_len left;              /* allowance of its edges; -1 where the pieces along one differ */
    muslin_len right;
    muslin_len top;
    muslin_len bottom;
    int64_t count;                /* of them in all tops */
    int64_t mirrored;             /* of those, mirror images */
    int64_t upright;              /* of all, so many lie as they were made ... */
    int64_t quarter;              /* ... turned a quarter clockwise ... */
    int64_t half;                 /* ... half ... */
    int64_t three_quarter;        /* parts of a diagonal field count as in its own frame */
    int64_t patches;              /* in one of it */
    int64_t seams_across;         /* seams whose errors add up in its width: of pieces side by side all count, of rows
                                     the one with most */
    int64_t seams_down;           /* so in its height: rows all count, each with its highest pile of seams */
    int32_t kind;                 /* enum muslin_node_kind */
    int32_t exact;                /* 1 when its size was not rounded; inside, corners may be */
};
/* How large a node is, how many there are and how they lie. Constant time. Example: a patch of 2 in, four times in a
 * block of which there are nine: count 36, unfinished (cut) 2 1/2 in. Since 1.0. */
MUSLIN_API muslin_status muslin_solution_size(const struct muslin_solution *solution, muslin_id node,
                                              struct muslin_node_size *out, struct muslin_problem *problem);

/* The value a measure has in this solution. MUSLIN_ERR_FOREIGN also for a measure that the root does not need.
 * Constant time. Example: the extent of a block. Since 1.0. */
MUSLIN_API muslin_status muslin_solution_value(const struct muslin_solution *solution, muslin_id measure,
                                               muslin_len *value, struct muslin_problem *problem);

struct muslin_solution_total {
    uint32_t size;
    uint32_t flags;
    int64_t patches;           /* in all tops */
    int64_t different_nodes;   /* that the root holds, itself included */
    int64_t finished_area;     /* of one top: width x height */
    int64_t patch_area;        /* of one top: what its finished outlines cover, each in its own frame */
    int64_t area_error;        /* where edges meet, the two differ by no more than this; 0 where everything is exact */
    int64_t misfits;           /* rows of muslin_solution_misfits() that are no ease, ... */
    int64_t eased;             /* ... and that are */
    int64_t cuts;              /* rows of muslin_solution_cuts() */
    int64_t stripsets;         /* rows of muslin_solution_stripsets() */
    uint32_t warnings;         /* all that the rows of cuts, and of strip sets that are used, carry */
    int32_t exact;             /* 1 when nothing in it was rounded */
};
/* The whole at a glance. Time follows the nodes, their own pieces, and the patches in parts that trimming cuts.
 * Example: a 36 in square top of 81 patches. Since 1.0. */
MUSLIN_API muslin_status muslin_solution_totals(const struct muslin_solution *solution,
                                                struct muslin_solution_total *out, struct muslin_problem *problem);

/* ---- the assembly check ---------------------------------------------------------------------------------------- */

enum muslin_misfit_kind {
    MUSLIN_MISFIT_LENGTH = 1,   /* two edges to be sewn together differ in length by more than the ease */
    MUSLIN_MISFIT_EASED = 2,    /* ... by no more than the ease */
    MUSLIN_MISFIT_ALLOWANCE = 3,/* their allowances differ, or the pieces along one differ among themselves */
    MUSLIN_MISFIT_NOT_SQUARE = 4/* a block on point is not a square of the first one's size */
};

struct muslin_misfit {
    uint32_t size;
    uint32_t flags;
    muslin_id node;            /* in which they meet */
    int64_t first;             /* child of it, counted from 0; strips of a set-in: enum muslin_side; -1: a setting
                                  triangle or a sash on point */
    int64_t second;
    muslin_len first_size;     /* finished length of its edge; of ALLOWANCE its allowance, -1 where mixed */
    muslin_len second_size;
    muslin_len difference;     /* first less second; 0 where one is mixed */
    int64_t pieces;            /* seams to stretch or gather over: pieces along the edge that gives way, the one with
                                  more of them; of ALLOWANCE 0 */
    muslin_len ease_each;      /* what each of them takes up: the difference over pieces, up to a tick; else 0 */
    int64_t count;             /* how often it happens in all tops */
    int32_t kind;              /* enum muslin_misfit_kind */
    int32_t pad;
};
/* Every pair of edges that do not meet, each where it is made (once for equal parts), in the order of the nodes.
 * Example: patches of 6 and 6 1/4 in side by side: difference -1/4 in. Since 1.0. */
MUSLIN_API muslin_status muslin_solution_misfits(const struct muslin_solution *solution, struct muslin_misfit *rows,
                                                 size_t row_size, size_t capacity, size_t *count,
                                                 struct muslin_problem *problem);

/* One way from the root to a node: the child numbers to follow. Of the nodes made of it the first is taken, and of
 * those made of that one the first, up to the root; of equal children the first. Empty for the root. Time follows the
 * nodes above it and their children. Example: 2, 0: the first child of the root's third. Since 1.0. */
MUSLIN_API muslin_status muslin_solution_path(const struct muslin_solution *solution, muslin_id node, int64_t *steps,
                                              size_t capacity, size_t *count, struct muslin_problem *problem);

/* ---- the cut list ---------------------------------------------------------------------------------------------- */

enum muslin_cut_source {
    MUSLIN_CUT_SOURCE_PATCH = 1,      /* a patch, cut by itself */
    MUSLIN_CUT_SOURCE_SET_STRIP = 2,  /* a strip for strip sets, as long as its fabric's usable width */
    MUSLIN_CUT_SOURCE_UNIT = 3,       /* a piece of a unit's recipe */
    MUSLIN_CUT_SOURCE_TEMPLATE = 4,   /* a piece of the caller's own shape: the smallest upright rectangle round it as
                                         cut */
    MUSLIN_CUT_SOURCE_SETTING = 5,    /* a square for setting triangles, or for cornerstones that the edge cuts in
                                         half */
    MUSLIN_CUT_SOURCE_SIXTY = 6,      /* a piece of a 60 degree row, cut from a strip */
    MUSLIN_CUT_SOURCE_MITRED = 7      /* a strip with mitred ends, cut as a rectangle to its longest edge; so is a sash
                                         on point that ends at the edge, cut off at 45 degrees */
};

struct muslin_solution_cut {
    uint32_t size;
    uint32_t flags;
    muslin_id fabric;          /* it is cut from */
    muslin_id first_node;      /* the first node that needs it; muslin_solution_cut_nodes() has all */
    muslin_len cut_width;      /* as in struct muslin_unit_piece: across as the patch lies when upright; of a fabric
                                  without direction the longer side of a rectangle that is not cut again. SET_STRIP:
                                  the usable width */
    muslin_len cut_height;     /* ... and along the print */
    muslin_len pitch;          /* of shapes cut from a strip; else 0 */
    muslin_len wide_edge;      /* so */
    muslin_len narrow_edge;    /* so */
    muslin_len surplus_width;  /* cut less exact need, down to a tick */
    muslin_len surplus_height;
    muslin_len left;           /* allowance on each edge of a rectangle that is sewn as it is cut; else the seam's */
    muslin_len right;
    muslin_len top;
    muslin_len bottom;
    int64_t count;             /* to cut, for all tops */
    int64_t pieces;            /* in the end, those spare included */
    int64_t spare;             /* pieces beyond the need */
    int64_t nodes;             /* different nodes that need it */
    int64_t upright;           /* pieces needed that lie with their print as cut, and turned by one, two and three
                                  quarters in the top. Strips are cut across the cloth: in a set joined down a print
                                  lies as its patch does, in one joined across a quarter further */
    int64_t quarter; /* of those, turned by one quarter ... */
    int64_t half;              /* ... by two ... */
    int64_t three_quarter;     /* ... by three */
    int64_t scattered;         /* pieces needed whose print lies as the method brings it: of units all but rectangles
                                  to which corners are sewn and octagons; setting triangles; 60 degree pieces */
    int32_t source;            /* enum muslin_cut_source */
    int32_t shape;             /* enum muslin_cut_shape */
    int32_t again;             /* enum muslin_cut_again */
    int32_t gives;             /* pieces from each: pieces = count x gives */
    int32_t grain;             /* enum muslin_grain */
    int32_t hand;              /* enum muslin_hand; of a sash cut off at the edge FIRST when the slanted end, seen
                                  upwards from the square one, rises to the right */
    int32_t angle;             /* degrees, as in struct muslin_unit_piece */
    int32_t region;            /* of a unit; piece number, from 1, of a shape; of a mitred strip whose ends differ its
                                  side; else 0 */
    uint32_t warnings;         /* MUSLIN_WARN_PRINT_TURNED: a fabric with a direction lies turned in some places, or,
                                  scattered, may lie so. MUSLIN_WARN_LONGER_THAN_WIDTH: cut_width, of a rectangle of a
                                  fabric without direction the longer side, passes the fabric's usable width;
                                  MUSLIN_WARN_BELOW_EXACT: a surplus is below 0; MUSLIN_WARN_BIAS_EDGE: of a unit
                                  whose outer edges lie on the bias, or a sash that the edge of a field on point cuts
                                  off at 45 degrees: there the edge stretches */
    int32_t pad;
};
/* What to cut, by fabric in the order in which they were made, the highest and then the longest first; cuts equal in
 * all but counts are one row (templates of one shape only). Units alike in size, kind, method and fabrics share their
 * recipes, whatever their nodes are called. Mitred strips that are mitred alike at both ends are one row on whichever
 * sides they lie; where the ends differ, side and hand stay apart. Fields on point share equal squares for setting
 * triangles, and 60 degree rows equal rectangles for half-triangles: what all need together is rounded up. Rectangles
 * round templates and mitred strips have their raw outline's corners, to the nearest tick. The half-triangles at the
 * ends of 60 degree rows are cut in pairs from rectangles of H / sqrt 3 + (1 + sqrt 3) E / 2 by H + (3 + sqrt 3) E / 2,
 * E = 2 s + u, rounded once. Source: geometry. Example: 36 patches of 2 1/2 x 2 1/2 in cut from the blue. Since 1.0. */
MUSLIN_API muslin_status muslin_solution_cuts(const struct muslin_solution *solution, struct muslin_solution_cut *rows,
                                              size_t row_size, size_t capacity, size_t *count,
                                              struct muslin_problem *problem);

/* The nodes that need a row of the cut list, in their order; of a strip the join. MUSLIN_ERR_INDEX: no such row. Time
 * follows the result. Example: of a row with nodes = 2, two ids. Since 1.0. */
MUSLIN_API muslin_status muslin_solution_cut_nodes(const struct muslin_solution *solution, int64_t row, muslin_id *ids,
                                                   size_t capacity, size_t *count, struct muslin_problem *problem);

struct muslin_stripset {
    uint32_t size;
    uint32_t flags;
    muslin_id node;             /* the join */
    int64_t strips;             /* in a set */
    muslin_len set_unfinished;  /* width of the set, edge to edge */
    muslin_len segment_cut;     /* what is cut across from it: unfinished length of the patches */
    muslin_len strip_length;    /* of the narrowest fabric in it */
    int64_t segments;           /* needed */
    int64_t segments_per_set;   /* that a set gives */
    int64_t sets;               /* up */
    int64_t spare;              /* segments beyond the need */
    int64_t cuts_apart;         /* cuts when every patch is cut by itself: strips of its height, cut across */
    int64_t cuts_in_sets;       /* cuts when it is strip-pieced */
    muslin_len shorter_by;      /* strips may be this much shorter before a set gives less */
    int32_t used;               /* 1 when the cut list and the sewing plan take it. WHERE_FEWER: it takes fewer cuts,
                                   at least half of its segments are needed, and no print would show that it lies
                                   turned in strips */
    int32_t turns;              /* 1 when a segment turned end for end looks the same and its order need not stay */
    uint32_t warnings;          /* MUSLIN_WARN_NO_SLACK, MUSLIN_WARN_MIXED_WIDTHS; MUSLIN_WARN_PRINT_TURNED: in strips a
                                   print lies otherwise than in patches cut by themselves */
    int32_t pad;
};
/* Every join that can be strip-pieced: all its children are patches (turned or not) of one finished length with the
 * same allowances at its ends, and a set gives at least one segment. Cuts are counted as one for each strip from the
 * cloth and one for each piece or segment from its strip; patches of one fabric and cut size share strips, cut straight
 * through. Yields are muslin_stripset_yield()'s. Example: nine rows of three 2 in squares: segments of 2 1/2 in,
 * sixteen from a 40 in set, one set. Since 1.0. */
MUSLIN_API muslin_status muslin_solution_stripsets(const struct muslin_solution *solution, struct muslin_stripset *rows,
                                                   size_t row_size, size_t capacity, size_t *count,
                                                   struct muslin_problem *problem);

/* ---- explained ------------------------------------------------------------------------------------------------- */

enum muslin_term_kind {
    MUSLIN_TERM_MEASURE = 1,    /* a measure's value: of `id`, `times` of it */
    MUSLIN_TERM_CHILD = 2,      /* finished size of the child `id`, `times` of it */
    MUSLIN_TERM_GREATEST = 3,   /* the greatest of the children: the child `id` */
    MUSLIN_TERM_ALLOWANCE = 4,  /* allowance of an edge, from the measure `id` */
    MUSLIN_TERM_TAKE_UP = 5,    /* half the take-up `id`, of `times` edges, up to a tick */
    MUSLIN_TERM_TRIMMED = 6,    /* what is trimmed away, from the measure `id`; negative */
    MUSLIN_TERM_DIAGONAL = 7,   /* `times` diagonals of the block `id`, rounded once; then of squares as wide as the
                                   sash `id`: what all together, rounded once, leave */
    MUSLIN_TERM_SIXTY = 8,      /* `times` half sides of a triangle of height `id`, rounded once */
    MUSLIN_TERM_DRAWN = 9,      /* the size of the caller's own drawing */
    MUSLIN_TERM_HALF = 10       /* half of the measure `id`: the height of geese */
};

struct muslin_term {
    uint32_t size;
    uint32_t flags;
    muslin_id id;          /* measure or node; 0 where the kind names none */
    int64_t times;         /* what it is multiplied by */
    muslin_len value;      /* the whole term: what it adds to the sum */
    muslin_len sum;        /* up to and with it */
    int32_t kind;          /* enum muslin_term_kind */
    int32_t finished;      /* 1: the sum is the finished size up to here; 0: the unfinished one, cut of a patch */
};
/* The sum that leads to the width (MUSLIN_AXIS_ACROSS) or height (MUSLIN_AXIS_DOWN) of a node: the finished size first,
 * then its allowances up to the unfinished size, which is the last row's sum. Runs of equal children are one term. Time
 * follows the children. Example: three strips of 2 in: 3 x 2 = 6 in finished, 1/4 and 1/4 make 6 1/2 in. Since 1.0. */
MUSLIN_API muslin_status muslin_solution_explain(const struct muslin_solution *solution, muslin_id node, int32_t axis,
                                                 struct muslin_term *rows, size_t row_size, size_t capacity,
                                                 size_t *count, struct muslin_problem *problem);

/* ---- drawn ----------------------------------------------------------------------------------------------------- */

struct muslin_outline {
    uint32_t size;
    uint32_t flags;
    muslin_id node;          /* the leaf (or diagonal field, 60 degree rows, set-in) that it belongs to */
    muslin_id fabric;        /* of the patch */
    int64_t first_corner;    /* of its corners in the array of corners */
    int64_t corners;         /* counter-clockwise */
    int32_t region;          /* of a unit; piece from 1 of a shape; triangle from 1 of a field: at the top from the
                                left, right from the top, bottom, left, then corners upper left, lower right, upper
                                right, lower left; then, cut off at the edge, sashes that stand in the turned frame at
                                the top, right, bottom, left, those that lie at the right, bottom, top, left, or
                                cornerstones so; piece from 1 of rows: those given, then the left and the right
                                half-triangle of each row; 1 of a patch */
    int32_t quarter_turns;   /* how its print lies: clockwise */
    int32_t mirrored;        /* 1 when it is a mirror image: left for right first, then turned */
    int32_t on_point;        /* 1 when it is turned by an eighth more, clockwise: in a field on point (not in one that
                                lies in another, where two eighths are a quarter), or a sash cut off at its edge */
};

struct muslin_outline_corner {
    uint32_t size;
    uint32_t flags;
    muslin_len x;            /* to the right from the lower left of what is drawn, finished */
    muslin_len y;            /* upwards */
    muslin_id seam_node;     /* in which the seam lies along the edge that starts here; 0: the outside */
    int64_t seam;            /* of that node: its number, from 0, as pressing.h counts them */
};
/* The outlines of the patches under a node, from number `first` on, in the order of the tree: as many as `capacity`
 * rows and `corner_capacity` corners hold (a row is not cut short; none has more than 80 corners). *count gets how many
 * there are from `first` to the end, *written how many rows were written; with capacity 0 it only counts. Corners of a
 * row are the next free ones of `corners`. Stage is as in unit.h: raw outlines reach below 0. Everything exact is drawn
 * exactly; a corner in a turned frame is rounded once in each, and shared corners round alike. A trimmed node is drawn
 * as it is after trimming, new corners to the nearest tick, and a patch of which nothing is left is a row without
 * corners (raw: all as before trimming). Edges that differ in length are drawn as they are, and leave a gap. Along an
 * edge lies the seam by which it is sewn on, also where it only lies on a part of that seam. MUSLIN_ERR_RANGE:
 * `first` not in 0 .. the number of patches. Time follows outlines x depth. Example: a nine-patch has nine outlines of
 * four corners. Since 1.0. */
MUSLIN_API muslin_status muslin_solution_outlines(const struct muslin_solution *solution, muslin_id node, int32_t stage,
                                                  int64_t first, struct muslin_outline *rows, size_t row_size,
                                                  size_t capacity, struct muslin_outline_corner *corners,
                                                  size_t corner_size, size_t corner_capacity, size_t *count,
                                                  size_t *written, struct muslin_problem *problem);

#ifdef __cplusplus
}
#endif

#endif
