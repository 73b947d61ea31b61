/* solution_inside.h - a solved tree: what is kept of every node, and how one asks a node of any kind.
 *
 * SPDX-License-Identifier: MIT
 *
 * Each kind of node answers the same questions in its own file, solution_<kind>.c: how large it is, which parts it has
 * and where they lie, how its own pieces are outlined, where its seams run, what must be cut for it. solution_node.c
 * asks the right one. All else (cut list, drawing, sewing, pressing) is written once, on these answers. */
#ifndef MUSLIN_SOLUTION_INSIDE_H
#define MUSLIN_SOLUTION_INSIDE_H

#include "muslin/solution.h"

#include "inside.h"
#include "quilt_store.h"
#include "solution_growing.h"

/* ---- what is kept ----------------------------------------------------------------------------------------------- */

enum msl_edge { MSL_LEFT, MSL_RIGHT, MSL_TOP, MSL_BOTTOM, MSL_EDGES };

/* One node, solved. Nodes that the root does not need have reached = 0 and nothing else. */
struct msl_size {
    muslin_len width; /* finished */
    muslin_len height;
    muslin_len edge[MSL_EDGES]; /* allowance; -1: mixed */
    int64_t patches;            /* outlines in one */
    int64_t across;             /* seams whose errors add up in its width, see muslin_solution_size() */
    int64_t down;
    int64_t along[MSL_EDGES]; /* pieces along each edge */
    int64_t spare;            /* of a unit: what the recipes of all alike make beyond the need; of the first of them */
    uint32_t slots;           /* of a join, a field on point or 60 degree rows: the first of its slots */
    uint32_t step;            /* of sewing, that makes it, from 1; 0: it is cut as it is, or not sewn in */
    uint32_t feeds;           /* the first of what goes into it ... */
    uint32_t fed;             /* ... and how many different nodes those are */
    uint8_t reached;
    uint8_t exact;
    uint8_t as_set; /* of a join: 1 when it is strip-pieced */
    uint8_t pad;
};

/* Where a child of a join begins: from the left (joined across) or from the top (joined down), and how many patches lie
 * in those before it. Of a field on point only that, own pieces included. Of a piece in 60 degree rows: the cell of its
 * row in which it begins, and the row. */
struct msl_slot {
    muslin_len offset;
    int64_t patches;
};

/* What goes into a node: a child, not turned, and how many of it. */
struct msl_feed {
    uint32_t node;
    uint32_t pad;
    int64_t each;
};

/* Copies of a node in all tops by how they lie, see msl_turn_after(). */
struct msl_counts {
    int64_t of[MSL_TURNS];
};

struct muslin_solution {
    const struct muslin_quilt *quilt;
    struct muslin_allocator allocator;
    struct muslin_solution_spec spec;
    uint32_t root;
    uint32_t measures;         /* looked at: those made before the root */
    uint32_t fabrics;
    uint32_t steps;            /* of sewing */
    muslin_len *values;        /* of measure m at m - 1; -1: not needed */
    uint8_t *rounded;          /* 1 for a measure whose value hangs on a size that was rounded */
    muslin_len *widths;        /* usable, of fabric f at f - 1 */
    struct msl_size *sizes;    /* of node n at n - 1, up to the root */
    struct msl_counts *counts; /* all copies ... */
    struct msl_counts *cut;    /* ... and those that are cut by themselves: not as part of a strip set */
    struct msl_rows slots;     /* struct msl_slot */
    struct msl_rows misfits;   /* struct muslin_misfit */
    struct msl_rows sets;      /* struct muslin_stripset */
    struct msl_rows cuts;      /* struct muslin_solution_cut */
    struct msl_rows needs;     /* struct msl_need, see solution_cuts.c */
    struct msl_rows feeds;     /* struct msl_feed, see solution_steps.c */
};

/* A solution in the making. Failures go to *check, whose `at` is the number of the node or measure. */
struct msl_solving {
    struct muslin_solution *solution;
    struct msl_check *check;
};

/* A node that the list of cuts needs, for muslin_solution_cut_nodes(): its row, its number. */
struct msl_need {
    int64_t row;
    uint32_t node;
    uint32_t pad;
};

/* Copies however they lie. */
int64_t msl_copies(const struct msl_counts *counts);
/* Adds the copies of a node, of node n at n - 1, to those of its parts. */
void msl_count_parts(const struct muslin_solution *solution, struct msl_counts *counts, uint32_t node);

static inline struct msl_size *msl_size_of(const struct muslin_solution *solution, uint32_t node)
{
    return &solution->sizes[node - 1];
}

static inline muslin_len msl_value_of(const struct muslin_solution *solution, int32_t measure)
{
    return solution->values[measure - 1];
}

/* The same; 0 where there is no measure. */
static inline muslin_len msl_value_or_none(const struct muslin_solution *solution, int32_t measure)
{
    return measure == 0 ? 0 : msl_value_of(solution, measure);
}

/* Whether a measure's value was found without rounding; 0 is no measure. */
static inline int msl_is_exact(const struct muslin_solution *solution, int32_t measure)
{
    return measure == 0 || !solution->rounded[measure - 1];
}

/* The quilt's seam: 2 s + u, what one seam takes, and e = s + u / 2 twice. */
static inline muslin_len msl_seam_of(const struct muslin_solution *solution)
{
    return 2 * msl_value_of(solution, MSL_ALLOWANCE) + msl_value_of(solution, MSL_TAKE_UP);
}

/* What edges with these allowances add to a finished size: both, and half the take-up for each that is not 0, in all up
 * to a tick. */
muslin_len msl_allowances(const struct muslin_solution *solution, muslin_len first, muslin_len second);

/* ---- parts of a node -------------------------------------------------------------------------------------------- */

/* A child where it lies: the lower left of its box, finished, in the finished node. In a field on point it lies in the
 * turned frame (on_point = 1), where it is upright: x and y are u and v, whole ticks from the left tip of the first
 * row's first block, u down to the right, v up to the right. msl_diagonal_point() brings any point of the frame, so any
 * corner in the child, into the field. See solution_diagonal.h. */
struct msl_part {
    uint32_t node;
    int32_t turn;    /* of the child: 0 but in a turn */
    muslin_len x;
    muslin_len y;
    int32_t on_point; /* 1: x and y are in a turned frame */
};

/* How many children a node shows, and one of them. Own pieces (below) come before them in a drawing. */
int64_t msl_parts(const struct muslin_solution *solution, uint32_t node);
struct msl_part msl_part(const struct muslin_solution *solution, uint32_t node, int64_t k);

/* The child in which outline number `patch` (not below the node's own pieces) lies; *before gets how many outlines come
 * before its first one. Binary search in a join, else a walk along the parts. */
int64_t msl_part_with(const struct muslin_solution *solution, uint32_t node, int64_t patch, int64_t *before);

/* How a part's edges and size come to lie after a turn: the child's edge that lies at `edge`; width and height change
 * places by odd quarters. */
enum msl_edge msl_edge_before(int32_t turn, enum msl_edge edge);
/* A point of a child w x h, seen in the child as it is turned. */
void msl_turn_point(int32_t turn, muslin_len width, muslin_len height, muslin_len *x, muslin_len *y);

/* ---- own pieces ------------------------------------------------------------------------------------------------- */

/* Corners of a piece, and room for those that trimming adds. */
enum { MSL_RING_MOST = MUSLIN_QUILT_CORNERS_MAX, MSL_RING_ROOM = 80 };
enum { MSL_TURN_EIGHTH = MSL_TURNS };

/* The outline of one piece, counter-clockwise, in its node. */
struct msl_ring {
    uint32_t fabric;
    int32_t region;
    int32_t corners;
    int32_t exact;               /* finished, nothing in it was rounded */
    int32_t turn;                /* of its print; MSL_TURN_EIGHTH: upright in the turned frame of a field on point */
    muslin_len x[MSL_RING_ROOM];
    muslin_len y[MSL_RING_ROOM];
    int32_t seam[MSL_RING_MOST]; /* along the edge that starts here: the (first) seam of the node, -1 its outside */
};

/* Pieces that a node has of its own: 1 for a patch, the patches of a unit, setting triangles, mitred strips; not its
 * children's. */
int64_t msl_pieces(const struct muslin_solution *solution, uint32_t node);
/* Outline of one of them at a stage of enum muslin_stage. */
void msl_outline(const struct muslin_solution *solution, uint32_t node, int64_t piece, int32_t stage,
                 struct msl_ring *ring);

/* Doubled area of a ring. */
int64_t msl_ring_area(const struct msl_ring *ring);

/* What a node's own pieces' outlines as rounded, finished, cover twice; and how far twice the node's area, width x
 * height as rounded, can be from that together with its parts' width x height: every corner is within half a tick of
 * its place, and so is the size. 0 where all is exact. Time follows the node's own pieces. */
struct msl_own_area {
    int64_t area;
    int64_t bound;
};
struct msl_own_area msl_own_area(const struct muslin_solution *solution, uint32_t node);

/* ---- seams ------------------------------------------------------------------------------------------------------ */

/* A seam of the node itself, by its finished ends in the node: it runs upwards, a level one to the right. `first` and
 * `second` are what it joins, numbered: own pieces, then parts; `first` is to the left of it, of a level one above. A
 * seam between two rows of a field on point names their first blocks, of a row of sashes its first one that lies, that
 * of a corner the block or sash it lies at, and one between 60 degree rows the half-triangles at their left. */
struct msl_seam {
    muslin_len from_x;
    muslin_len from_y;
    muslin_len to_x;
    muslin_len to_y;
    muslin_len sewn;  /* length from raw edge to raw edge, nearest tick */
    int64_t first;
    int64_t second;
};
int64_t msl_seams(const struct muslin_solution *solution, uint32_t node);
struct msl_seam msl_seam(const struct muslin_solution *solution, uint32_t node, int64_t k);
/* The seam of the node along an edge of part k (an edge as the part lies in the node); -1: that edge is the node's. */
int64_t msl_seam_beside(const struct muslin_solution *solution, uint32_t node, int64_t k, enum msl_edge edge);

/* ---- each kind -------------------------------------------------------------------------------------------------- */

/* <kind>_size fills in *msl_size_of(node), whose children are solved, and reports misfits (msl_check_edges). The others
 * answer the questions above; a kind without pieces, parts or seams of its own does without. */
void msl_patch_size(struct msl_solving *solving, uint32_t node);
void msl_patch_outline(const struct muslin_solution *solution, uint32_t node, int32_t stage, struct msl_ring *ring);

/* The edges of a join along one axis: where it begins and ends, and the two that run along it. */
struct msl_edges {
    enum msl_edge first;
    enum msl_edge last;
    enum msl_edge side;
    enum msl_edge other_side;
};
struct msl_edges msl_edges_along(int32_t axis);

void msl_join_size(struct msl_solving *solving, uint32_t node);
struct msl_part msl_join_part(const struct muslin_solution *solution, uint32_t node, int64_t k);
struct msl_seam msl_join_seam(const struct muslin_solution *solution, uint32_t node, int64_t k);
int64_t msl_join_beside(const struct muslin_solution *solution, uint32_t node, int64_t k, enum msl_edge edge);

void msl_turn_size(struct msl_solving *solving, uint32_t node);
struct msl_part msl_turn_part(const struct muslin_solution *solution, uint32_t node);

void msl_trim_size(struct msl_solving *solving, uint32_t node);
struct msl_part msl_trim_part(const struct muslin_solution *solution, uint32_t node);

void msl_unit_size(struct msl_solving *solving, uint32_t node);
int64_t msl_unit_pieces(const struct muslin_solution *solution, uint32_t node);
void msl_unit_outline(const struct muslin_solution *solution, uint32_t node, int64_t piece, int32_t stage,
                      struct msl_ring *ring);
int64_t msl_unit_seams(const struct muslin_solution *solution, uint32_t node);
struct msl_seam msl_unit_seam(const struct muslin_solution *solution, uint32_t node, int64_t k);

void msl_shape_size(struct msl_solving *solving, uint32_t node);
int64_t msl_shape_pieces(const struct muslin_solution *solution, uint32_t node);
void msl_shape_outline(const struct muslin_solution *solution, uint32_t node, int64_t piece, int32_t stage,
                       struct msl_ring *ring);
int64_t msl_shape_seams(const struct muslin_solution *solution, uint32_t node);
struct msl_seam msl_shape_seam(const struct muslin_solution *solution, uint32_t node, int64_t k);

void msl_pinwheel_size(struct msl_solving *solving, uint32_t node);
struct msl_part msl_pinwheel_part(const struct muslin_solution *solution, uint32_t node, int64_t k);
struct msl_seam msl_pinwheel_seam(const struct muslin_solution *solution, uint32_t node, int64_t k);
int64_t msl_pinwheel_beside(int64_t k, enum msl_edge edge);

void msl_set_in_size(struct msl_solving *solving, uint32_t node);
int64_t msl_set_in_pieces(const struct muslin_solution *solution, uint32_t node);
struct msl_part msl_set_in_part(const struct muslin_solution *solution, uint32_t node);
void msl_set_in_outline(const struct muslin_solution *solution, uint32_t node, int64_t piece, int32_t stage,
                        struct msl_ring *ring);
/* Whether a strip is the same from both ends: neighbours of one width, or none. */
int msl_set_in_ends_alike(const struct muslin_solution *solution, uint32_t node, int64_t piece);
int64_t msl_set_in_seams(const struct muslin_solution *solution, uint32_t node);
struct msl_seam msl_set_in_seam(const struct muslin_solution *solution, uint32_t node, int64_t k);
int64_t msl_set_in_beside(const struct muslin_solution *solution, uint32_t node, enum msl_edge edge);

void msl_diagonal_size(struct msl_solving *solving, uint32_t node);
int64_t msl_diagonal_pieces(const struct muslin_solution *solution, uint32_t node);
struct msl_part msl_diagonal_part(const struct muslin_solution *solution, uint32_t node, int64_t k);
/* A point of the turned frame, in the field's own, rounded once to the nearest tick. */
void msl_diagonal_point(const struct muslin_solution *solution, uint32_t node, muslin_len u, muslin_len v,
                        muslin_len *x, muslin_len *y);
void msl_diagonal_outline(const struct muslin_solution *solution, uint32_t node, int64_t piece, int32_t stage,
                          struct msl_ring *ring);
int64_t msl_diagonal_seams(const struct muslin_solution *solution, uint32_t node);
struct msl_seam msl_diagonal_seam(const struct muslin_solution *solution, uint32_t node, int64_t k);
int64_t msl_diagonal_beside(const struct muslin_solution *solution, uint32_t node, int64_t k, enum msl_edge edge);
int64_t msl_diagonal_parts(const struct muslin_solution *solution, uint32_t node);

/* The seams within rows, at the left of what lies there: they come first, so many of them, before those between rows
 * and those of the corners, which are four. */
int64_t msl_diagonal_uprights(const struct muslin_solution *solution, uint32_t node);
/* One of them in the turned frame: where it runs, and the lower side of its row; the leg of a triangle belongs to the
 * row of blocks that it closes. */
struct msl_upright {
    muslin_len u;
    muslin_len from;
    muslin_len to;
    muslin_len row;
};
struct msl_upright msl_diagonal_upright(const struct muslin_solution *solution, uint32_t node, int64_t k);

void msl_sixty_size(struct msl_solving *solving, uint32_t node);
int64_t msl_sixty_pieces(const struct muslin_solution *solution, uint32_t node);
void msl_sixty_outline(const struct muslin_solution *solution, uint32_t node, int64_t piece, int32_t stage,
                       struct msl_ring *ring);
int64_t msl_sixty_seams(const struct muslin_solution *solution, uint32_t node);
struct msl_seam msl_sixty_seam(const struct muslin_solution *solution, uint32_t node, int64_t k);

/* The spec with which unit.h answers for a unit node: sizes, seam and policy put in; `units` of the first hand and
 * `mirrored` ones are left 0. */
struct muslin_unit_spec msl_unit_spec(const struct muslin_solution *solution, uint32_t node);

/* ---- while solving ---------------------------------------------------------------------------------------------- */

/* A size of the node in the making: 1 .. MUSLIN_SIZE_MAX, else MUSLIN_ERR_RANGE. */
void msl_want_node_size(struct msl_solving *solving, int32_t argument, muslin_len size);

/* 1 when none of the measures that a node names was rounded. */
uint8_t msl_measures_exact(const struct muslin_solution *solution, uint32_t node);

/* The allowance of an edge made up of two stretches: equal, or -1. */
muslin_len msl_edge_with(muslin_len first, muslin_len second);

/* Solves a node of any kind; its size must come out. */
void msl_solve_node(struct msl_solving *solving, uint32_t node);

/* What meets in a node: two edges to be sewn together, with the child numbers, finished lengths, allowances and pieces
 * along them. Adds a row to the misfits where they do not meet. */
struct msl_meeting {
    int64_t first;
    int64_t second;
    muslin_len first_size;
    muslin_len second_size;
    muslin_len first_edge;
    muslin_len second_edge;
    int64_t first_pieces;
    int64_t second_pieces;
};
void msl_check_edges(struct msl_solving *solving, uint32_t node, const struct msl_meeting *meeting);
/* Adds a row for it, of a kind of enum muslin_misfit_kind. */
void msl_add_misfit(struct msl_solving *solving, uint32_t node, const struct msl_meeting *meeting, int32_t kind);

/* Adds a slot, struct msl_slot. */
void msl_add_slot(struct msl_solving *solving, muslin_len offset, int64_t patches);

/* Finds strip sets (and sets as_set and `cut`), then makes the cut list. */
void msl_find_sets(struct msl_solving *solving);
void msl_make_cuts(struct msl_solving *solving);
/* Numbers the steps of sewing, once it is known which joins are strip-pieced, and notes what goes into each. */
void msl_find_steps(struct msl_solving *solving);

/* ---- public calls ----------------------------------------------------------------------------------------------- */

void msl_want_solution(struct msl_check *check, const struct muslin_solution *solution);
/* A solution and one of its nodes, by id: the number, or 0 after a failure. */
uint32_t msl_want_node(struct msl_check *check, const struct muslin_solution *solution, muslin_id node);

#endif
