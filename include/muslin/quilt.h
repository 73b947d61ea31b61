/* muslin/quilt.h - the piecing tree: one description of a top, from which sizes, cuts, sewing and drawings follow.
 *
 * SPDX-License-Identifier: MIT
 *
 * A quilt holds fabrics, measures and nodes. A measure is a length with a name, a fixed length, a sum of measures, or
 * how far a node extends. Leaves of the tree are patches and pieced units; inner nodes join, turn, mirror, trim or
 * surround others. Nodes name measures and fabrics, not numbers: one tree serves every size of a design, and values are
 * put in when it is solved (solution.h).
 *
 * Ids         Everything made gets a muslin_id. It carries its quilt: an id of another quilt, of another sort or of
 *             nothing is MUSLIN_ERR_FOREIGN. Nothing is ever deleted, so an id stays good as long as its quilt. 0 is no
 *             id; where a comment allows it, it stands for the usual thing.
 * Sharing     What is equal is stored once: asking for the same patch of the same measures and fabric again gives the
 *             same id. Cost follows the number of different parts, not the number of patches. A node can only be made
 *             of nodes that exist, so there are no cycles.
 * Places      Columns run from left to right, rows from top to bottom, and of pieces joined down the first lies on top.
 *             Drawings (solution.h) have their origin in the lower left, x to the right and y upwards. Quarter turns
 *             are clockwise, the right side of the cloth facing you.
 *
 * Every call
 *   Statuses    MUSLIN_ERR_NULL: the quilt, a spec, array or output is missing. MUSLIN_ERR_STRUCT_SIZE, _STRUCT_TAIL,
 *               _FLAGS: a struct breaks the rules of base.h. MUSLIN_ERR_CHOICE, MUSLIN_ERR_RANGE: a member outside its
 *               choices or range. MUSLIN_ERR_FOREIGN as above; in the problem `at` counts the members or elements that
 *               share a name, from 0. MUSLIN_ERR_NO_MEMORY: the allocator returned nothing. MUSLIN_ERR_WORK_LIMIT: the
 *               quilt would hold more than its spec allows. What else a call can return stands with it. After any
 *               failure the quilt holds what it held before.
 *   Cost        Time follows the number of ids given, on the average. Memory grows by doubling: the number of
 *               allocations follows the logarithm of what is stored.
 *   Threads     A quilt that nobody adds to may be read from many threads.
 */
#ifndef MUSLIN_QUILT_H
#define MUSLIN_QUILT_H

#include "shape.h"
#include "unit.h"
#include "setting.h"
#include "supplies.h"

#ifdef __cplusplus
extern "C" {
#endif

/* A fabric, a measure or a node of one quilt; 0: none. */
typedef int64_t muslin_id;

/* How deep nodes may lie in each other: a leaf has depth 1, a join one more than its deepest child. */
#define MUSLIN_QUILT_DEPTH_MAX 4096
/* How many nodes can turn by 45 degrees within each other. */
#define MUSLIN_QUILT_POINT_DEPTH_MAX 4

enum muslin_sort {
    MUSLIN_SORT_FABRIC = 1,
    MUSLIN_SORT_MEASURE = 2,
    MUSLIN_SORT_NODE = 3
};

/* ---- a quilt --------------------------------------------------------------------------------------------------- */

struct muslin_quilt; /* opaque */

struct muslin_quilt_spec {
    uint32_t size;
    uint32_t flags;       /* 0 */
    muslin_len allowance; /* s: value of the quilt's seam allowance until another is given; 0 .. MUSLIN_SIZE_MAX / 8 */
    muslin_len take_up;   /* u, so; 0 .. MUSLIN_SIZE_MAX / 8 */
    int64_t most;         /* fabrics, measures and nodes together, each with sixteen numbers on
                             the average; 1 .. 2^27 */
    int64_t tag;          /* what marks this quilt's ids, 1 .. 2^20 - 1: whoever has several quilts
                             numbers them, so that none takes another's ids. 0: taken from where the quilt lies
                             in memory, another one in every run; one made later in its place may get it again */
};
/* 1/4 in seams without take-up, up to 2^26 parts, tag 1: the same ids in every run. */
#define MUSLIN_QUILT_SPEC_INIT { sizeof(struct muslin_quilt_spec), 0, MUSLIN_QUARTER_INCH, 0, 67108864, 1 }
/* Writes the values above to the first `size` bytes of *spec. MUSLIN_ERR_NULL; MUSLIN_ERR_STRUCT_SIZE. Example:
 * muslin_quilt_spec_init(&spec, sizeof spec). Since 1.0. */
MUSLIN_API muslin_status muslin_quilt_spec_init(struct muslin_quilt_spec *spec, uint32_t size);

/* An empty quilt, with two measures: its seam allowance and its take-up. The allocator is copied; its functions must
 * serve as long as the quilt and its solutions. *out is written on success alone. Two quilts of one tag take each
 * other's ids for their own. Example: muslin_quilt_create(&spec, &allocator, &quilt, NULL), with
 * muslin_allocator_libc(&allocator) before. Since 1.0. */
MUSLIN_API muslin_status muslin_quilt_create(const struct muslin_quilt_spec *spec,
                                             const struct muslin_allocator *allocator, struct muslin_quilt **out,
                                             struct muslin_problem *problem);

/* Gives the quilt's memory back; null is fine. Its solutions read it: free them before. Example:
 * muslin_quilt_free(quilt). Since 1.0. */
MUSLIN_API void muslin_quilt_free(struct muslin_quilt *quilt);

/* The sort of an id (enum muslin_sort; 0 for what is no id) and its number, counted from 1 for each sort in the
 * order of making (0 for what is no id). Neither asks whether a quilt has it. Constant time. Example: the third node
 * made has number 3. Since 1.0 both. */
MUSLIN_API int32_t muslin_id_sort(muslin_id id);
MUSLIN_API int64_t muslin_id_number(muslin_id id);

/* ---- fabrics --------------------------------------------------------------------------------------------------- */

struct muslin_quilt_fabric_spec {
    uint32_t size;
    uint32_t flags;          /* 0 */
    muslin_len usable_width; /* of the cloth, or length of a strip; 1 .. MUSLIN_SIZE_MAX; the value until another is
                                given */
    int32_t print;           /* enum muslin_print; a patch's cloth stands upright when its print's top is the patch's */
    int32_t darkness;        /* for pressing: seams go towards the greater number; 0 .. 100, 0: not stated */
};
/* 40 in usable, without direction, of no stated darkness. */
#define MUSLIN_QUILT_FABRIC_SPEC_INIT { sizeof(struct muslin_quilt_fabric_spec), 0, 325120, 1, 0 }
/* Writes the values above to the first `size` bytes of *spec. Since 1.0. */
MUSLIN_API muslin_status muslin_quilt_fabric_spec_init(struct muslin_quilt_fabric_spec *spec, uint32_t size);

/* A new fabric. `name` is any text of `bytes` bytes (0 .. 200), kept as it is; names need not differ, and every call
 * makes another fabric. Example: muslin_quilt_fabric(quilt, &spec, "blue", 4, &blue, NULL). Since 1.0. */
MUSLIN_API muslin_status muslin_quilt_fabric(struct muslin_quilt *quilt, const struct muslin_quilt_fabric_spec *spec,
                                             const char *name, size_t bytes, muslin_id *out,
                                             struct muslin_problem *problem);

/* ---- measures -------------------------------------------------------------------------------------------------- */

/* A new measure with a name (as of a fabric) and the value it has until another is given, 0 .. MUSLIN_SIZE_MAX. Every
 * call makes another measure, whatever its name and value. Example: muslin_quilt_measure(quilt, "strip", 5, 16256,
 * &strip, NULL). Since 1.0. */
MUSLIN_API muslin_status muslin_quilt_measure(struct muslin_quilt *quilt, const char *name, size_t bytes,
                                              muslin_len value, muslin_id *out, struct muslin_problem *problem);

/* A length that no size of the design changes, 0 .. MUSLIN_SIZE_MAX; equal ones are one measure. Example: 1/2 in of
 * trimming room. Since 1.0. */
MUSLIN_API muslin_status muslin_quilt_fixed(struct muslin_quilt *quilt, muslin_len value, muslin_id *out,
                                            struct muslin_problem *problem);

struct muslin_quilt_sum_spec {
    uint32_t size;
    uint32_t flags;    /* 0 */
    muslin_id measure; /* of the same quilt */
    int64_t factor;    /* -2^20 .. 2^20 */
};
/* Once a measure that is still to be given. */
#define MUSLIN_QUILT_SUM_SPEC_INIT { sizeof(struct muslin_quilt_sum_spec), 0, 0, 1 }
/* Writes the values above to the first `size` bytes of *spec. Since 1.0. */
MUSLIN_API muslin_status muslin_quilt_sum_spec_init(struct muslin_quilt_sum_spec *spec, uint32_t size);

/* The sum of factor x measure over n terms (1 .. 64). When it is solved it must lie in 0 .. MUSLIN_SIZE_MAX. Example: a
 * block three strips across is 3 x strip. Since 1.0. */
MUSLIN_API muslin_status muslin_quilt_sum(struct muslin_quilt *quilt, const struct muslin_quilt_sum_spec *terms,
                                          size_t row_size, size_t n, muslin_id *out, struct muslin_problem *problem);

enum muslin_axis {
    MUSLIN_AXIS_ACROSS = 1, /* side by side, from the left; of a size: the width */
    MUSLIN_AXIS_DOWN = 2    /* one below the other, from the top; of a size: the height */
};

/* The finished width or height of a node, as a measure: a sash as long as its block, a border as long as the top.
 * Example: muslin_quilt_extent(quilt, block, MUSLIN_AXIS_DOWN, &length, NULL). Since 1.0. */
MUSLIN_API muslin_status muslin_quilt_extent(struct muslin_quilt *quilt, muslin_id node, int32_t axis, muslin_id *out,
                                             struct muslin_problem *problem);

/* The quilt's seam allowance and its take-up, as measures: give them values when solving. Either output may be null.
 * Example: muslin_quilt_seam(quilt, &allowance, &take_up, NULL). Since 1.0. */
MUSLIN_API muslin_status muslin_quilt_seam(const struct muslin_quilt *quilt, muslin_id *allowance, muslin_id *take_up,
                                           struct muslin_problem *problem);

/* The name of a fabric or a measure, terminated; measures made without one have none (""). As base.h says of text out:
 * cap 0 asks, MUSLIN_ERR_BUFFER when it is too small, *need counts the terminator. Example:
 * muslin_quilt_name(quilt, blue, buf, sizeof buf, &need, NULL). Since 1.0. */
MUSLIN_API muslin_status muslin_quilt_name(const struct muslin_quilt *quilt, muslin_id id, char *buf, size_t cap,
                                           size_t *need, struct muslin_problem *problem);

/* ---- leaves ---------------------------------------------------------------------------------------------------- */

struct muslin_quilt_patch_spec {
    uint32_t size;
    uint32_t flags;   /* 0 */
    muslin_id fabric; /* of the same quilt */
    muslin_id width;  /* finished */
    muslin_id height; /* finished */
    muslin_id left;   /* allowance of each edge; 0: the quilt's */
    muslin_id right;
    muslin_id top;
    muslin_id bottom;
};
/* The quilt's allowance all round; fabric and size are still to be given. */
#define MUSLIN_QUILT_PATCH_SPEC_INIT { sizeof(struct muslin_quilt_patch_spec), 0, 0, 0, 0, 0, 0, 0, 0 }
/* Writes the values above to the first `size` bytes of *spec. Since 1.0. */
MUSLIN_API muslin_status muslin_quilt_patch_spec_init(struct muslin_quilt_patch_spec *spec, uint32_t size);

/* One rectangle of one fabric. Example: 2 x 2 in finished is cut 2 1/2 x 2 1/2 in with 1/4 in seams. Since 1.0. */
MUSLIN_API muslin_status muslin_quilt_patch(struct muslin_quilt *quilt, const struct muslin_quilt_patch_spec *spec,
                                            muslin_id *out, struct muslin_problem *problem);

struct muslin_quilt_unit_spec {
    uint32_t size;
    uint32_t flags;   /* 0 */
    muslin_id width;  /* W, H and corner as the kind takes them (unit.h); 0 where it takes none */
    muslin_id height;
    muslin_id corner; /* so */
    int32_t kind;     /* enum muslin_unit_kind that fills a rectangle: HALF_SQUARE .. HALF_RECTANGLE, OCTAGON,
                         EIGHT_POINTED_STAR, KALEIDOSCOPE */
    int32_t method;   /* enum muslin_unit_method */
    int32_t hand;     /* enum muslin_hand; FIRST for kinds without hands */
    int32_t pad;      /* 0 */
};
/* One half-square, two at a time, of the first hand; its width is still to be given. */
#define MUSLIN_QUILT_UNIT_SPEC_INIT { sizeof(struct muslin_quilt_unit_spec), 0, 0, 0, 0, 2, 2, 1, 0 }
/* Writes the values above to the first `size` bytes of *spec. Since 1.0. */
MUSLIN_API muslin_status muslin_quilt_unit_spec_init(struct muslin_quilt_unit_spec *spec, uint32_t size);

/* A pieced unit by its recipe, with a fabric for each of its regions (n is their number, 2 or 3), drawn as
 * muslin_unit_outlines() draws it and sewn with the quilt's seam. Where its pieces come together in the middle, two
 * halves are joined by one seam straight through it: of a quarter-square from the lower right to the upper left, of a
 * split quarter along the large triangle, of an eight-pointed star upright, of a kaleidoscope from the right one of the
 * two points below to the left one above. MUSLIN_ERR_METHOD: the kind is not made so. MUSLIN_ERR_RANGE: another number
 * of fabrics, or a measure that the kind does not take. Whether its sizes suit the kind is known when it is solved.
 * Example: a half-square, blue below its rising seam and white above. Since 1.0. */
MUSLIN_API muslin_status muslin_quilt_unit(struct muslin_quilt *quilt, const struct muslin_quilt_unit_spec *spec,
                                           const muslin_id *fabrics, size_t n, muslin_id *out,
                                           struct muslin_problem *problem);

/* The most corners of one piece of a shape. */
#define MUSLIN_QUILT_CORNERS_MAX 32

/* A unit of the caller's own, drawn as shape.h says, outline first, with straight edges and an outline that is an
 * upright rectangle from (0, 0); `fabrics` has one for each piece. Allowances and tips of the corners are not looked
 * at: the quilt's seam is used, and raw points are sharp. Its size is the outline's, times width / outline width and
 * height / outline height, each corner to the nearest tick; `width` or `height` 0: as drawn. Statuses also as of
 * muslin_shape_check(), which is asked first. MUSLIN_ERR_SHAPE also for arcs and an outline that is no rectangle.
 * MUSLIN_ERR_RANGE also for a piece of more than MUSLIN_QUILT_CORNERS_MAX corners, and for other than `pieces` pieces.
 * Solving fails with MUSLIN_ERR_SHAPE where it becomes so small that neighbouring corners of a piece fall together, and
 * with MUSLIN_ERR_OVERFLOW where a raw point would reach more than MUSLIN_TEMPLATE_REACH_MAX beyond its finished one.
 * Time as of muslin_shape_check(). Example: a square with one corner cut off on the slant. Since 1.0. */
MUSLIN_API muslin_status muslin_quilt_shape(struct muslin_quilt *quilt, const struct muslin_corner_spec *corners,
                                            size_t row_size, size_t n, const muslin_id *fabrics, size_t pieces,
                                            muslin_id width, muslin_id height, muslin_id *out,
                                            struct muslin_problem *problem);

/* ---- joins ----------------------------------------------------------------------------------------------------- */

enum muslin_strip_piecing {
    MUSLIN_STRIP_PIECING_WHERE_FEWER = 1, /* as a strip set where that takes fewer cuts and pays, see
                                             muslin_stripset */
    MUSLIN_STRIP_PIECING_ALWAYS = 2,      /* as a strip set; solving fails where the pieces do not allow it */
    MUSLIN_STRIP_PIECING_NEVER = 3        /* piece by piece */
};
enum muslin_seam_press {
    MUSLIN_SEAM_PRESS_FREE = 1,     /* whichever way seams nest */
    MUSLIN_SEAM_PRESS_TO_FIRST = 2, /* towards the piece that comes first: to the left, or up */
    MUSLIN_SEAM_PRESS_TO_LAST = 3,  /* to the right, or down */
    MUSLIN_SEAM_PRESS_OPEN = 4      /* half to either side: does not nest, and needs not */
};

#define MUSLIN_QUILT_JOIN_KEEPS_ORDER 1u /* the order of the pieces is labelled: no segment of it is turned end for
                                            end */

struct muslin_quilt_join_spec {
    uint32_t size;
    uint32_t flags;  /* MUSLIN_QUILT_JOIN_KEEPS_ORDER or 0 */
    int32_t axis;    /* enum muslin_axis */
    int32_t piecing; /* enum muslin_strip_piecing; WHERE_FEWER: no matter unless all are patches of one length */
    int32_t press;   /* enum muslin_seam_press, of all its seams */
    int32_t pad;     /* 0 */
};
/* Side by side, strip-pieced where that takes fewer cuts, pressed as it nests. */
#define MUSLIN_QUILT_JOIN_SPEC_INIT { sizeof(struct muslin_quilt_join_spec), 0, 1, 1, 1, 0 }
/* Writes the values above to the first `size` bytes of *spec. Since 1.0. */
MUSLIN_API muslin_status muslin_quilt_join_spec_init(struct muslin_quilt_join_spec *spec, uint32_t size);

/* n nodes (1 or more) sewn edge to edge in their order; one alone is itself. Whether their edges meet is told when it
 * is solved. MUSLIN_ERR_RANGE for MUSLIN_ARG_DEPTH beyond MUSLIN_QUILT_DEPTH_MAX. Example: three patches side by side.
 * Since 1.0. */
MUSLIN_API muslin_status muslin_quilt_join(struct muslin_quilt *quilt, const struct muslin_quilt_join_spec *spec,
                                           const muslin_id *children, size_t n, muslin_id *out,
                                           struct muslin_problem *problem);

/* Columns x rows nodes, given row by row from the top: each row joined across, then the rows joined down.
 * 1 .. MUSLIN_COUNT_MAX each; n is their product. Example: a straight setting of unlike blocks. Since 1.0. */
MUSLIN_API muslin_status muslin_quilt_grid(struct muslin_quilt *quilt, int64_t columns, int64_t rows,
                                           const muslin_id *children, size_t n, muslin_id *out,
                                           struct muslin_problem *problem);

/* One node columns x rows times, turned by a pattern that repeats: turns[(row % pattern_rows) x pattern_columns +
 * column % pattern_columns] quarter turns, each 0 .. 3. n is pattern_columns x pattern_rows; rows are made once each
 * and shared. Columns and rows 1 .. 2^20. Example: the pattern 0 1 / 1 0 turns every other block, like a chessboard.
 * Since 1.0. */
MUSLIN_API muslin_status muslin_quilt_repeat(struct muslin_quilt *quilt, muslin_id node, int64_t columns, int64_t rows,
                                             const int32_t *turns, size_t n, int64_t pattern_columns,
                                             int64_t pattern_rows, muslin_id *out, struct muslin_problem *problem);

/* ---- turned, mirrored, trimmed --------------------------------------------------------------------------------- */

/* The node turned by quarter_turns (0 .. 3) clockwise: the same sewing, lying another way. By 0, the node itself; turns
 * of turns are one turn. Example: a block turned by 1 has its top on the right. Since 1.0. */
MUSLIN_API muslin_status muslin_quilt_turn(struct muslin_quilt *quilt, muslin_id node, int32_t quarter_turns,
                                           muslin_id *out, struct muslin_problem *problem);

/* The node's mirror image, left for right: another sewing, whose pieces with hands are cut the other way. Twice is the
 * node itself. Example: the other half of a heart. Since 1.0. */
MUSLIN_API muslin_status muslin_quilt_mirror(struct muslin_quilt *quilt, muslin_id node, muslin_id *out,
                                             struct muslin_problem *problem);

/* Both in one step, without a node in between: first mirrored, where `mirrored` is 1 (else 0), then turned clockwise by
 * quarter_turns (0 .. 3), as struct muslin_node tells of a turn. Example: mirrored and turned by 2, a block is its own
 * image, top for bottom. Since 1.0. */
MUSLIN_API muslin_status muslin_quilt_lay(struct muslin_quilt *quilt, muslin_id node, int32_t quarter_turns,
                                          int32_t mirrored, muslin_id *out, struct muslin_problem *problem);

struct muslin_quilt_trim_spec {
    uint32_t size;
    uint32_t flags;   /* 0 */
    muslin_id left;   /* cut away after sewing; 0: nothing */
    muslin_id right;
    muslin_id top;
    muslin_id bottom;
};
/* Nothing trimmed. */
#define MUSLIN_QUILT_TRIM_SPEC_INIT { sizeof(struct muslin_quilt_trim_spec), 0, 0, 0, 0, 0 }
/* Writes the values above to the first `size` bytes of *spec. Since 1.0. */
MUSLIN_API muslin_status muslin_quilt_trim_spec_init(struct muslin_quilt_trim_spec *spec, uint32_t size);

/* The node made larger than it is needed and trimmed after sewing: what is joined to it meets the trimmed edge, which
 * is no mismatch. Solving fails with MUSLIN_ERR_RANGE where nothing would be left. Example: an edge strip cut an inch
 * too long. Since 1.0. */
MUSLIN_API muslin_status muslin_quilt_trim(struct muslin_quilt *quilt, muslin_id node,
                                           const struct muslin_quilt_trim_spec *spec, muslin_id *out,
                                           struct muslin_problem *problem);

/* ---- round a centre -------------------------------------------------------------------------------------------- */

struct muslin_quilt_pinwheel_spec {
    uint32_t size;
    uint32_t flags;   /* 0 */
    muslin_id centre; /* nodes */
    muslin_id top;    /* over centre and left: as wide as both together */
    muslin_id right;  /* beside centre and top: as high as both together */
    muslin_id bottom; /* under centre and right */
    muslin_id left;   /* beside centre and bottom */
};
/* All five are still to be given. */
#define MUSLIN_QUILT_PINWHEEL_SPEC_INIT { sizeof(struct muslin_quilt_pinwheel_spec), 0, 0, 0, 0, 0, 0 }
/* Writes the values above to the first `size` bytes of *spec. Since 1.0. */
MUSLIN_API muslin_status muslin_quilt_pinwheel_spec_init(struct muslin_quilt_pinwheel_spec *spec, uint32_t size);

/* Four nodes round a centre, each end against the next one's side: four seams, top, right, bottom, left, of which the
 * first (top to centre) is sewn in part and finished when left is on. Edges that do not meet are told when it is
 * solved: the centre's, with the end that prolongs it, first, then the node's that is sewn to it. Each node then lies
 * in its corner and the centre against left and top, and the whole is as large as the largest of its rows and columns.
 * The mirror image turns the other way. Source: geometry. Example: four 2 x 4 in rectangles round a 2 in square make
 * 6 in. Since 1.0. */
MUSLIN_API muslin_status muslin_quilt_pinwheel(struct muslin_quilt *quilt,
                                               const struct muslin_quilt_pinwheel_spec *spec, muslin_id *out,
                                               struct muslin_problem *problem);

struct muslin_quilt_set_in_spec {
    uint32_t size;
    uint32_t flags;         /* 0 */
    muslin_id centre;       /* node */
    muslin_id left_width;   /* finished width of the strip on each side; 0: no strip there */
    muslin_id right_width;
    muslin_id top_width;
    muslin_id bottom_width;
    muslin_id left_fabric;  /* 0 where there is no strip */
    muslin_id right_fabric;
    muslin_id top_fabric;
    muslin_id bottom_fabric;
};
/* No strip; the centre is still to be given. */
#define MUSLIN_QUILT_SET_IN_SPEC_INIT { sizeof(struct muslin_quilt_set_in_spec), 0, 0, 0, 0, 0, 0, 0, 0, 0, 0 }
/* Writes the values above to the first `size` bytes of *spec. Since 1.0. */
MUSLIN_API muslin_status muslin_quilt_set_in_spec_init(struct muslin_quilt_set_in_spec *spec, uint32_t size);

/* Strips round a centre with mitred corners: where two strips meet, the seam runs from the centre's corner to the outer
 * one, and stitching along the centre stops one allowance from the edge there, so that the corner can be set in. Where
 * a neighbour is missing, a strip's end is square. Strips have the quilt's allowance all round. A mitred border has all
 * four strips, an attic window two. MUSLIN_ERR_RANGE: no strip at all, a fabric without a strip; when it is solved, a
 * strip of no width. Source: geometry. Example: a 6 in square with 2 in strips at left and bottom makes 8 in. Since
 * 1.0. */
MUSLIN_API muslin_status muslin_quilt_set_in(struct muslin_quilt *quilt, const struct muslin_quilt_set_in_spec *spec,
                                             muslin_id *out, struct muslin_problem *problem);

struct muslin_quilt_log_spec {
    uint32_t size;
    uint32_t flags;   /* 0 */
    muslin_id fabric; /* of the log */
    muslin_id width;  /* finished */
    int32_t side;     /* enum muslin_side */
    int32_t pad;      /* 0 */
};
/* On the right; fabric and width are still to be given. */
#define MUSLIN_QUILT_LOG_SPEC_INIT { sizeof(struct muslin_quilt_log_spec), 0, 0, 0, 2, 0 }
/* Writes the values above to the first `size` bytes of *spec. Since 1.0. */
MUSLIN_API muslin_status muslin_quilt_log_spec_init(struct muslin_quilt_log_spec *spec, uint32_t size);

/* Strips sewn on one after the other (n, 0 or more), each as long as what is there: log cabin, courthouse steps, plain
 * borders. Example: four logs round a centre, right, top, left, bottom. Since 1.0. */
MUSLIN_API muslin_status muslin_quilt_logs(struct muslin_quilt *quilt, muslin_id centre,
                                           const struct muslin_quilt_log_spec *logs, size_t row_size, size_t n,
                                           muslin_id *out, struct muslin_problem *problem);

struct muslin_quilt_surround_spec {
    uint32_t size;
    uint32_t flags;         /* 0 */
    muslin_id centre;       /* nodes */
    muslin_id left;         /* as high as the centre */
    muslin_id right;
    muslin_id top;          /* as wide as the centre */
    muslin_id bottom;
    muslin_id top_left;     /* as wide as left, as high as top, and so on */
    muslin_id top_right;
    muslin_id bottom_left;  /* at the lower left */
    muslin_id bottom_right; /* at the lower right */
};
/* All nine are still to be given. */
#define MUSLIN_QUILT_SURROUND_SPEC_INIT { sizeof(struct muslin_quilt_surround_spec), 0, 0, 0, 0, 0, 0, 0, 0, 0, 0 }
/* Writes the values above to the first `size` bytes of *spec. Since 1.0. */
MUSLIN_API muslin_status muslin_quilt_surround_spec_init(struct muslin_quilt_surround_spec *spec, uint32_t size);

/* A border with corners of its own, plain or pieced: sides joined to the centre, then top and bottom with their corners
 * joined to that. Example: a round of half-squares with corner squares. Since 1.0. */
MUSLIN_API muslin_status muslin_quilt_surround(struct muslin_quilt *quilt,
                                               const struct muslin_quilt_surround_spec *spec, muslin_id *out,
                                               struct muslin_problem *problem);

#define MUSLIN_QUILT_SASHED_FRAME 1u        /* sashes also round the outside, not only between the blocks */
#define MUSLIN_QUILT_SASHED_CORNERSTONES 2u /* squares where sashes cross; else sashes between rows run through */

struct muslin_quilt_sashed_spec {
    uint32_t size;
    uint32_t flags;        /* MUSLIN_QUILT_SASHED_... or 0 */
    int64_t columns;       /* of blocks, 1 .. MUSLIN_COUNT_MAX */
    int64_t rows;
    muslin_id sash;        /* finished width */
    muslin_id sash_fabric; /* of all sashes */
    muslin_id cornerstone; /* fabric of CORNERSTONES; 0: as the sashes; without them 0 */
};
/* One block without frame and cornerstones; the sash is still to be given. */
#define MUSLIN_QUILT_SASHED_SPEC_INIT { sizeof(struct muslin_quilt_sashed_spec), 0, 1, 1, 0, 0, 0 }
/* Writes the values above to the first `size` bytes of *spec. Since 1.0. */
MUSLIN_API muslin_status muslin_quilt_sashed_spec_init(struct muslin_quilt_sashed_spec *spec, uint32_t size);

/* Blocks (columns x rows, row by row from the top; n is their product) with sashes between them, each as long as the
 * first block of its row is high, or of its column wide. Without cornerstones a sash between two rows is as long as the
 * upper one with its sashes, the frame's top as the first. Rows are joined across, then all down. MUSLIN_ERR_RANGE for
 * MUSLIN_ARG_FABRIC (`at` 1): a fabric for cornerstones without CORNERSTONES. Example: 3 x 3 blocks of 12 in with 2 in
 * sashes and a frame finish 44 in. Since 1.0. */
MUSLIN_API muslin_status muslin_quilt_sashed(struct muslin_quilt *quilt, const struct muslin_quilt_sashed_spec *spec,
                                             const muslin_id *blocks, size_t n, muslin_id *out,
                                             struct muslin_problem *problem);

/* ---- fields that are not upright ------------------------------------------------------------------------------- */

struct muslin_quilt_diagonal_spec {
    uint32_t size;
    uint32_t flags;           /* 0 */
    int64_t columns;          /* c: blocks side by side, alternates not counted; 1 .. 2^15 */
    int64_t rows;             /* r, so */
    muslin_id side_fabric;    /* of the setting triangles */
    muslin_id corner_fabric;  /* of the corner triangles */
    muslin_id set_off;        /* f: blocks float this far inside the edge; 0: they touch it. 0 in SASH_CUT and
                                 SASH_INNER */
    muslin_id sash;           /* w, finished width; 0 in PLAIN, in no other layout. Below B in SASH_INNER */
    muslin_id sash_fabric;    /* 0 in PLAIN, in no other layout */
    muslin_id cornerstone;    /* its fabric; 0: as the sashes; 0 in PLAIN */
    int32_t layout;           /* enum muslin_point_layout */
    int32_t pad;              /* 0 */
};
/* One block, no set-off, no sashes; the fabrics are still to be given. */
#define MUSLIN_QUILT_DIAGONAL_SPEC_INIT { sizeof(struct muslin_quilt_diagonal_spec), 0, 1, 1, 0, 0, 0, 0, 0, 0, 1, 0 }
/* Writes the values above to the first `size` bytes of *spec. Since 1.0. */
MUSLIN_API muslin_status muslin_quilt_diagonal_spec_init(struct muslin_quilt_diagonal_spec *spec, uint32_t size);

/* Blocks on point in diagonal rows, closed by setting triangles. `blocks` has the c x r main blocks row by row from the
 * top, then the (c - 1)(r - 1) alternates so, n in all. All are squares of one size B, which is checked when it is
 * solved. A block's top edge becomes its upper right one: it is turned clockwise by an eighth of a turn. Inside the
 * turned frame everything is exact; the outside is as muslin_setting_point() has it for the layout, rounded once, to
 * the nearest tick: in PLAIN c B sqrt 2 + 2 f by r B sqrt 2 + 2 f.
 *   Pieces      Counts and cuts are those of muslin_setting_point(), as the solve's policy asks. Whole sashes and
 *               cornerstones are patches, B by w, w by B and w by w, upright in the turned frame: up to three children
 *               more, which follow the blocks, see muslin_quilt_children(). Triangles, and in SASH_INNER the sashes
 *               that end at the edge, are the field's own pieces.
 *   Rows        Rows run down to the right. Where there are sashes, they stand between the blocks of a row and in
 *               SASH_OUTER and SASH_CUT also at its ends; a row of sashes and cornerstones lies between two rows of
 *               blocks, and in those layouts beyond the first and the last one. Side triangles close rows of blocks. In
 *               SASH_OUTER a triangle is as long as its row and one row of sashes are high: sew that one to the row
 *               first. A triangle that would need one row of sashes where the triangle at the other end needs the other
 *               one, which is where c and r differ by 2 or more, is set into its corner from mark to mark.
 *   Seams       Seams of rows, and last those of the corners, are straight from edge to edge, and stop at the leg of a
 *               triangle of SASH_OUTER. So where blocks float, the seam below a row runs on beyond the tips, between
 *               two triangles, and each is drawn as far as it is left.
 * MUSLIN_ERR_RANGE for MUSLIN_ARG_CHILDREN: another number of blocks; for MUSLIN_ARG_DEPTH: more than
 * MUSLIN_QUILT_POINT_DEPTH_MAX such fields within each other; for MUSLIN_ARG_MEASURE (`at` 0 the set-off, 1 the sash)
 * or MUSLIN_ARG_FABRIC (`at` 2 of the sashes, 3 of the cornerstones): an id where the layout has none, or none where it
 * needs one. Solving fails with MUSLIN_ERR_RANGE for MUSLIN_ARG_SASH_WIDTH when w is not above 0, and for
 * MUSLIN_ARG_BLOCK_WIDTH when blocks of SASH_INNER are not larger than w; `at` is the field's number. Source:
 * geometry. Example: 3 x 3 blocks and 4 alternates of 6 in: 25.456 in square. Since 1.0. */
MUSLIN_API muslin_status muslin_quilt_diagonal(struct muslin_quilt *quilt,
                                               const struct muslin_quilt_diagonal_spec *spec, const muslin_id *blocks,
                                               size_t n, muslin_id *out, struct muslin_problem *problem);

/* How the triangle stands with which the first row begins; rows alternate. */
enum muslin_sixty_first {
    MUSLIN_SIXTY_FIRST_ON_SIDE = 1,
    MUSLIN_SIXTY_FIRST_ON_POINT = 2
};

struct muslin_quilt_sixty_spec {
    uint32_t size;
    uint32_t flags;         /* 0 */
    int64_t cells;          /* triangles in a row, ends not counted; 1 .. 2^20 */
    int64_t rows;           /* 1 .. 2^20 */
    muslin_id height;       /* H, finished, of a row */
    muslin_id end_fabric;   /* of the half-triangles that close both ends */
    int32_t first;          /* enum muslin_sixty_first */
    int32_t pad;            /* 0 */
};
/* One triangle standing on its side; height and fabric are still to be given. */
#define MUSLIN_QUILT_SIXTY_SPEC_INIT { sizeof(struct muslin_quilt_sixty_spec), 0, 1, 1, 0, 0, 1, 0 }
/* Writes the values above to the first `size` bytes of *spec. Since 1.0. */
MUSLIN_API muslin_status muslin_quilt_sixty_spec_init(struct muslin_quilt_sixty_spec *spec, uint32_t size);

struct muslin_quilt_sixty_piece_spec {
    uint32_t size;
    uint32_t flags;   /* 0 */
    muslin_id fabric; /* of the piece */
    int64_t cells;    /* 1: a triangle, 2: a diamond, 3: a half-hexagon */
};
/* A triangle; the fabric is still to be given. */
#define MUSLIN_QUILT_SIXTY_PIECE_SPEC_INIT { sizeof(struct muslin_quilt_sixty_piece_spec), 0, 0, 1 }
/* Writes the values above to the first `size` bytes of *spec. Since 1.0. */
MUSLIN_API muslin_status muslin_quilt_sixty_piece_spec_init(struct muslin_quilt_sixty_piece_spec *spec, uint32_t size);

/* Rows of equilateral triangles and what they make up: each row is filled, from the left, with pieces of one to three
 * triangles' room (n pieces in all; a row's pieces must end with it, else MUSLIN_ERR_RANGE with `at` the piece, n where
 * there are too few), and closed at both ends by half-triangles. A row is H high and (cells + 1) H / sqrt 3 wide, to
 * the nearest tick; corners lie at whole multiples of H / sqrt 3, each rounded once. Pieces are cut from strips as
 * unit.h says, half-triangles as half-rectangles. Source: geometry. Example: 5 triangles of 3 in: 10.392 in wide. Since
 * 1.0. */
MUSLIN_API muslin_status muslin_quilt_sixty(struct muslin_quilt *quilt, const struct muslin_quilt_sixty_spec *spec,
                                            const struct muslin_quilt_sixty_piece_spec *pieces, size_t row_size,
                                            size_t n, muslin_id *out, struct muslin_problem *problem);

/* ---- reading it back -------------------------------------------------------------------------------------------
 *
 * Whatever a quilt holds comes back as it was given, so that it can be listed, saved and made again. Ids are those of
 * the quilt that is read; 0 stands where nothing was given, but for the edges of a patch: the quilt's allowance comes
 * back by its own id; and for cornerstones on point: so does the fabric of their sashes. Specs are outputs here: their
 * `size` is set before the call, and what is written can be given to the call that made the part.
 *
 * To make a quilt again in an empty one, of the values that the first two measures have as allowance and take-up: its
 * fabrics, by number; then its nodes, by number, and before each of them, and after the last one, the measures that
 * follow, by number, up to the first extent of a node that is still to be made. All numbers are then as they were.
 * Grids, repeats, logs, borders and sashed settings come back as what they are made of: patches, extents, turns and
 * joins. */

/* The id of the fabric, measure or node (sort, enum muslin_sort) with this number, 1 .. as many as there are: what
 * muslin_id_number() says of it. MUSLIN_ERR_INDEX: there are not so many. Constant time. Example: measure 1 is the
 * quilt's seam allowance. Since 1.0. */
MUSLIN_API muslin_status muslin_quilt_id(const struct muslin_quilt *quilt, int32_t sort, int64_t number, muslin_id *out,
                                         struct muslin_problem *problem);

/* A fabric, but for its name, which muslin_quilt_name() tells. Constant time. Example: one made with the initial values
 * has 40 in of usable width. Since 1.0. */
MUSLIN_API muslin_status muslin_quilt_read_fabric(const struct muslin_quilt *quilt, muslin_id fabric,
                                                  struct muslin_quilt_fabric_spec *out, struct muslin_problem *problem);

enum muslin_measure_kind {
    MUSLIN_MEASURE_NAMED = 1,
    MUSLIN_MEASURE_FIXED = 2,
    MUSLIN_MEASURE_SUM = 3,
    MUSLIN_MEASURE_EXTENT = 4
};

struct muslin_tree_measure {
    uint32_t size;
    uint32_t flags;
    muslin_len value; /* of a fixed one; of one with a name, until another is given; else 0 */
    muslin_id node;   /* whose extent it is; else 0 */
    int32_t kind;     /* enum muslin_measure_kind */
    int32_t axis;     /* of an extent, enum muslin_axis; else 0 */
    int64_t terms;    /* of a sum, what muslin_quilt_read_terms() gives; else 0 */
};
/* What a measure is, but for its name. Constant time. Example: a block three strips across is a sum of one term. Since
 * 1.0. */
MUSLIN_API muslin_status muslin_quilt_read_measure(const struct muslin_quilt *quilt, muslin_id measure,
                                                   struct muslin_tree_measure *out, struct muslin_problem *problem);

/* The terms of a sum, in the order in which they were given: ask, then fill. MUSLIN_ERR_CHOICE for MUSLIN_ARG_KIND:
 * another kind of measure. Example: 3 x strip has the factor 3. Since 1.0. */
MUSLIN_API muslin_status muslin_quilt_read_terms(const struct muslin_quilt *quilt, muslin_id measure,
                                                 struct muslin_quilt_sum_spec *rows, size_t row_size, size_t capacity,
                                                 size_t *count, struct muslin_problem *problem);

enum muslin_node_kind {
    MUSLIN_NODE_PATCH = 1,   /* muslin_quilt_patch() */
    MUSLIN_NODE_UNIT = 2,    /* muslin_quilt_unit() */
    MUSLIN_NODE_SHAPE = 3,   /* muslin_quilt_shape() */
    MUSLIN_NODE_JOIN = 4,    /* pieces side by side or one below the other */
    MUSLIN_NODE_TURN = 5,    /* turned, mirrored, or both */
    MUSLIN_NODE_TRIM = 6,    /* muslin_quilt_trim() */
    MUSLIN_NODE_PINWHEEL = 7, /* muslin_quilt_pinwheel() */
    MUSLIN_NODE_SET_IN = 8,  /* muslin_quilt_set_in() */
    MUSLIN_NODE_DIAGONAL = 9, /* a field on point */
    MUSLIN_NODE_SIXTY = 10   /* rows of 60 degree pieces */
};

struct muslin_node {
    uint32_t size;
    uint32_t flags;
    int64_t children;        /* nodes it is made of: what muslin_quilt_children() gives */
    int64_t depth;           /* 1 for a leaf */
    int32_t kind;            /* enum muslin_node_kind */
    int32_t axis;            /* of a join, enum muslin_axis; else 0 */
    int32_t quarter_turns;   /* of a turn: first mirrored, where it is, then turned clockwise by so many */
    int32_t mirrored;        /* 1 when it is the mirror image */
};
/* What a node is. Example: a join of three patches has 3 children and depth 2. Since 1.0. */
MUSLIN_API muslin_status muslin_quilt_node(const struct muslin_quilt *quilt, muslin_id node,
                                           struct muslin_node *out, struct muslin_problem *problem);

/* The nodes that a node is made of, in the order in which they were given (a pinwheel: centre, top, right, bottom,
 * left), repeats repeated: ask, then fill. Patches that were not given follow the blocks of a field on point with
 * sashes: its sash that lies (B wide), the one that stands, its cornerstone; in SASH_INNER the sashes only where
 * there are alternates, and no cornerstone of one block alone in SASH_CUT and SASH_INNER, for whole ones are not in
 * it. So muslin_solution_size() knows every child of what it solved. Example: of a join of three equal patches,
 * three times the same id. Since 1.0. */
MUSLIN_API muslin_status muslin_quilt_children(const struct muslin_quilt *quilt, muslin_id node, muslin_id *ids,
                                               size_t capacity, size_t *count, struct muslin_problem *problem);

/* What a node was made with: each of these reads one kind. MUSLIN_ERR_CHOICE for MUSLIN_ARG_KIND: the node is of
 * another kind, which is `value`. What a trim, a join, a turn and a field on point are made of, muslin_quilt_children()
 * tells; how a turn lies, muslin_quilt_node(). Time follows what is written. Example: a patch of blue, 2 in by 2 in,
 * names blue and the measure of 2 in twice. Since 1.0 all. */
MUSLIN_API muslin_status muslin_quilt_read_patch(const struct muslin_quilt *quilt, muslin_id node,
                                                 struct muslin_quilt_patch_spec *out, struct muslin_problem *problem);
MUSLIN_API muslin_status muslin_quilt_read_unit(const struct muslin_quilt *quilt, muslin_id node,
                                                struct muslin_quilt_unit_spec *out, struct muslin_problem *problem);
MUSLIN_API muslin_status muslin_quilt_read_join(const struct muslin_quilt *quilt, muslin_id node,
                                                struct muslin_quilt_join_spec *out, struct muslin_problem *problem);
MUSLIN_API muslin_status muslin_quilt_read_trim(const struct muslin_quilt *quilt, muslin_id node,
                                                struct muslin_quilt_trim_spec *out, struct muslin_problem *problem);
MUSLIN_API muslin_status muslin_quilt_read_pinwheel(const struct muslin_quilt *quilt, muslin_id node,
                                                    struct muslin_quilt_pinwheel_spec *out,
                                                    struct muslin_problem *problem);
MUSLIN_API muslin_status muslin_quilt_read_set_in(const struct muslin_quilt *quilt, muslin_id node,
                                                  struct muslin_quilt_set_in_spec *out, struct muslin_problem *problem);
MUSLIN_API muslin_status muslin_quilt_read_diagonal(const struct muslin_quilt *quilt, muslin_id node,
                                                    struct muslin_quilt_diagonal_spec *out,
                                                    struct muslin_problem *problem);
MUSLIN_API muslin_status muslin_quilt_read_sixty(const struct muslin_quilt *quilt, muslin_id node,
                                                 struct muslin_quilt_sixty_spec *out, struct muslin_problem *problem);

/* The pieces of 60 degree rows, from the left, row by row: ask, then fill. MUSLIN_ERR_CHOICE as above. Example: a row
 * of a diamond and a triangle has two pieces, of 2 cells and of 1. Since 1.0. */
MUSLIN_API muslin_status muslin_quilt_read_sixty_pieces(const struct muslin_quilt *quilt, muslin_id node,
                                                        struct muslin_quilt_sixty_piece_spec *rows, size_t row_size,
                                                        size_t capacity, size_t *count, struct muslin_problem *problem);

/* The drawing of a shape: ask, then fill. The outline comes first, as the four corners of its rectangle, then the
 * pieces as they were drawn. Allowances and tips, which a quilt does not look at, are those of MUSLIN_CORNER_SPEC_INIT.
 * *width and *height get the measures that it is stretched to, 0: as drawn, on success. MUSLIN_ERR_CHOICE as above.
 * Example: a square with one corner cut off on the slant has 4 corners of the outline and 5 + 3 of its pieces. Since
 * 1.0. */
MUSLIN_API muslin_status muslin_quilt_read_shape(const struct muslin_quilt *quilt, muslin_id node,
                                                 struct muslin_corner_spec *corners, size_t row_size, size_t capacity,
                                                 size_t *count, muslin_id *width, muslin_id *height,
                                                 struct muslin_problem *problem);

/* The fabrics of a unit's regions, or of a shape's pieces: ask, then fill. MUSLIN_ERR_CHOICE as above. Example: of a
 * half-square, the fabric below its rising seam and the one above. Since 1.0. */
MUSLIN_API muslin_status muslin_quilt_read_fabrics(const struct muslin_quilt *quilt, muslin_id node, muslin_id *ids,
                                                   size_t capacity, size_t *count, struct muslin_problem *problem);

struct muslin_part_counts {
    uint32_t size;
    uint32_t flags;
    int64_t fabrics;   /* made so far */
    int64_t measures;  /* so, the seam allowance and take-up among them */
    int64_t nodes;     /* different ones */
    int64_t bytes;     /* that the quilt holds from its allocator */
};
/* How much a quilt holds. Example: a fresh one has no fabrics, two measures and no nodes. Since 1.0. */
MUSLIN_API muslin_status muslin_quilt_counts(const struct muslin_quilt *quilt, struct muslin_part_counts *out,
                                             struct muslin_problem *problem);

#ifdef __cplusplus
}
#endif

#endif
