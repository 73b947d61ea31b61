/* muslin/pressing.h - which way to press every seam of a top so that seams nest.
 *
 * SPDX-License-Identifier: MIT
 *
 * Where two pieces are sewn together and a seam of either ends at the same place of the edge they share, the two seams
 * nest if they are pressed opposite ways. That is a meeting. The plan gives every different node one pressing, and lets
 * each place in which it is used take it as it is or the other way, all seams reversed. Meetings that still do not nest
 * are exceptions.
 *
 * Seams       The seams of a node are numbered from 0: of a join, seam k lies between children k and k + 1; of a set-in
 *             along the centre's left, right, top and bottom, as far as there are strips, then the mitres, upper left,
 *             upper right, lower left, lower right; of a diagonal field at the left of each block but the first, by its
 *             number, then of the triangles at the right from the top and at the bottom from the left, then below each
 *             row from the upper right, then of the corners, upper left, lower right, upper right, lower left; of a
 *             unit or a shape, a pinwheel or 60 degree rows as muslin_pressing_seams() lists them. A seam is pressed to
 *             the left or right, one that runs across up or down. Its first piece is the left one, or the upper one.
 *             With sashes, a diagonal field's c x r blocks have these seams, first to last; of what lies in a row it is
 *             the one at its left, and what begins a row of blocks next to the upper left corner has none: in
 *             SASH_INNER the first block, else the sash at its left.
 *
 *                 what                                         how many                   order
 *                 blocks, then alternates                      c r + (c - 1)(r - 1)       as they were given
 *                 whole sashes: of each block, in SASH_INNER   4 c r, or                  by that block; at its left,
 *                   of each alternate                            4 (c - 1)(r - 1)           right, above, below
 *                 cornerstones at the left tip of blocks,      (c - 1) r                  by that block
 *                   but the first of each row
 *                 cornerstones at the upper tip of blocks,     c (r - 1)                  by that block
 *                   but those of the first row
 *                 SASH_OUTER: cornerstones at the edge;        r at the right, then       from the top, from the left
 *                   SASH_CUT: their halves                       c at the bottom
 *                 SASH_INNER: sashes that the edge cuts off,   c - 1, r - 1, c - 1,       at the top, right, bottom,
 *                   those that stand                             r - 1                      left: from the left or top
 *                 SASH_INNER: those that lie                   r - 1, c - 1               at the right, at the bottom
 *                 triangles                                    r - 1, c - 1               at the right, at the bottom
 *                 below each row, of blocks or of sashes       2 (c + r) - 2, in          from the upper right
 *                                                                SASH_INNER 2 (c + r) - 4
 *                 corners                                      4                          upper left, lower right,
 *                                                                                           upper right, lower left
 *
 *             What closes a row at the left names the seam of what lies at its right. In SASH_OUTER a triangle has one
 *             seam along a sash and a cornerstone, the one that the sash has there.
 * Meetings    Ends count as one place when they are no more than two ticks apart. Where several seams of one side end
 *             at one place, those at right angles to the edge count and slanted ones beside them do not; without such,
 *             all of them do. So points of half-squares meet along the edge between two of them, and where four come
 *             together the seams between them meet. Pieces within one unit, shape or set-in are not held against each
 *             other. Of what is trimmed, a seam at right angles to the edge still ends there when it goes further in
 *             than is trimmed; other ends are gone, and what is cut in two, or laid bare, only by trimming is not
 *             looked at. Meetings inside what is trimmed off count: it is sewn before.
 * Turned      What looks the same after a turn need not be pressed the other way. All copies are pressed alike, and
 *             those that are to be the other way are turned as a whole, by a quarter or by a half, when every seam that
 *             ends on the edges then lies where one was that is pressed the opposite way: seen from outside, it is as
 *             if it were pressed the other way, and nothing in it is. The same means: the same outlines and fabrics; no
 *             print of which one sees that it lies another way; the same allowances; no join in it that keeps its
 *             order; and no more than 4096 patches, which are compared one by one. Where two slanted seams alone end at
 *             one place of an edge it is not turned. What is trimmed later is turned where seams that take each other's
 *             place go in equally far. Three quarters do what one does.
 * Every call
 *   Statuses    MUSLIN_ERR_NULL, _STRUCT_SIZE, _STRUCT_TAIL, _FLAGS, _BUFFER: an input or output breaks the rules of
 *               base.h. What else a call can return stands with it.
 *   Threads     A plan may be read from many threads.
 */
#ifndef MUSLIN_PRESSING_H
#define MUSLIN_PRESSING_H

#include "solution.h"

#ifdef __cplusplus
extern "C" {
#endif

struct muslin_pressing; /* opaque */

enum muslin_prefer {
    MUSLIN_PREFER_NOTHING = 0, /* either side is as good */
    MUSLIN_PREFER_DARKER = 1 /* seams go towards the darker fabric where nesting leaves the choice */
};

struct muslin_pressing_spec {
    uint32_t size;
    uint32_t flags;      /* 0 */
    int64_t work_limit;  /* steps of the search, 0 .. 2^40; when it runs out the best plan so far stands */
    int32_t prefer;      /* enum muslin_prefer */
    int32_t units;       /* 1: the seams of units are pressed as their recipes say, in every copy; 0: so they are
                            preferred, where their fabrics do not say which is darker, and give way to nesting */
};
/* Twenty million steps, towards the dark, units as nesting wants them. */
#define MUSLIN_PRESSING_SPEC_INIT { sizeof(struct muslin_pressing_spec), 0, 20000000, 1, 0 }
/* Writes the values above to the first `size` bytes of *spec. Since 1.0. */
MUSLIN_API muslin_status muslin_pressing_spec_init(struct muslin_pressing_spec *spec, uint32_t size);

/* A plan for the whole solution, which it reads and which must outlive it. The fewest exceptions come first; what joins
 * ask for is kept in every copy: a node that asks is taken as it is, or it is turned, or what holds it. Then come few
 * copies pressed the other way: as few as can be taken the other way, and of these turned what can be, small nodes
 * before what they are part of, by a quarter rather than by a half. Then comes the preference for the darker side:
 * fabrics whose darkness is stated and differs, else the first region of a unit. These are sought step by step and not
 * proved. Meetings of seams that are pressed open are left out. The plan is the best there is when `proven` says so
 * (small trees always), and never has more exceptions than all pressed in turn, see `alternating`, or without turning.
 * Whether what asks for a way may be turned is looked through node by node, as far as the work limit goes. In joins of
 * more than 64 children that repeat after 32 or fewer, places that lie two repeats apart are taken alike; meetings
 * there are told once, at the first. Same request, same plan. Allocator null: the quilt's. `progress` is told
 * exceptions, beginning with those of all pressed in turn. MUSLIN_ERR_RANGE, MUSLIN_ERR_CHOICE: a member outside its
 * range or choices. MUSLIN_ERR_WORK_LIMIT: edges of different nodes have more than 2^26 pieces in all.
 * MUSLIN_ERR_NO_MEMORY. Time follows meetings of different parts, plus the work limit, up to four times where joins ask
 * for a way. Source: a system of linear equations over two elements, solved by elimination; branch and bound where not
 * all can hold. Example: rows of equal blocks: every other row the other way, no exception. Since 1.0. */
MUSLIN_API muslin_status muslin_pressing_create(const struct muslin_solution *solution,
                                                const struct muslin_pressing_spec *spec,
                                                const struct muslin_allocator *allocator, muslin_progress progress,
                                                void *context, struct muslin_pressing **out,
                                                struct muslin_problem *problem);

/* Gives the plan's memory back; null is fine. Constant time. Example: muslin_pressing_free(pressing). Since 1.0. */
MUSLIN_API void muslin_pressing_free(struct muslin_pressing *pressing);

struct muslin_pressing_total {
    uint32_t size;
    uint32_t flags;
    int64_t meetings;       /* in all tops, those left out not counted */
    int64_t exceptions;     /* of those, that do not nest */
    int64_t least;          /* no plan of this sort has fewer */
    int64_t alternating;    /* exceptions when all is pressed in turn: every seam to its first piece, and joins take
                               their second child the other way, their fourth, and so on, where none asks otherwise */
    int64_t open;           /* meetings left out, as a seam is pressed open */
    int64_t other_way;      /* copies of nodes with seams of their own that are the other way, pressed or turned; where
                               those seams are open, turned alone */
    int64_t work;           /* steps taken */
    int32_t proven;         /* 1 when exceptions = least */
    int32_t pad;
    int64_t copies_turned;  /* of other_way, copies that are turned and not pressed the other way */
};
/* How well it nests. Constant time. Example: 3 x 3 nine-patches: 64 meetings, four within each block, two along every
 * edge between two of them and one wherever four come together; no exception. Since 1.0. */
MUSLIN_API muslin_status muslin_pressing_totals(const struct muslin_pressing *pressing,
                                                struct muslin_pressing_total *out, struct muslin_problem *problem);

enum muslin_press {
    MUSLIN_PRESS_LEFT = 1,     /* to the left */
    MUSLIN_PRESS_RIGHT = 2,    /* to the right */
    MUSLIN_PRESS_UP = 3,       /* upwards */
    MUSLIN_PRESS_DOWN = 4,     /* downwards */
    MUSLIN_PRESS_OPEN = 5      /* open */
};

enum muslin_other_way {
    MUSLIN_OTHER_WAY_NONE = 1,      /* no copy is taken the other way */
    MUSLIN_OTHER_WAY_PRESSED = 2,   /* press so many copies the other way */
    MUSLIN_OTHER_WAY_SETS = 3,      /* cut them from strip sets of their own, pressed the other way */
    MUSLIN_OTHER_WAY_TURNED = 4     /* press all alike and turn so many as a whole, by `turn` quarters: they look the
                                       same; segments of strip sets end for end */
};

/* Which of its two pieces a seam is pressed towards. */
enum muslin_towards {
    MUSLIN_TOWARDS_NEITHER = 0, /* open */
    MUSLIN_TOWARDS_FIRST = 1,   /* the left or upper one */
    MUSLIN_TOWARDS_SECOND = 2   /* the right or lower one */
};

enum muslin_preferred {
    MUSLIN_PREFERRED_NEITHER = 0, /* neither way is preferred */
    MUSLIN_PREFERRED_KEPT = 1,    /* pressed as preferred */
    MUSLIN_PREFERRED_AGAINST = 2  /* ... against it */
};

struct muslin_pressing_seam {
    uint32_t size;
    uint32_t flags;
    muslin_id node;            /* whose seam it is */
    int64_t seam;              /* number in its node */
    int64_t as_shown;          /* copies of the node pressed so, also those in what is turned as a whole */
    int64_t other_way;         /* copies taken the other way: by `other`, pressed or turned; an open seam is told so
                                  when its node is turned */
    muslin_len from_x;         /* finished ends, in the node as it was made, from its lower left */
    muslin_len from_y;
    muslin_len to_x;           /* its other end */
    muslin_len to_y;           /* its other end */
    int32_t press;             /* enum muslin_press, in the node as it was made */
    int32_t towards;           /* enum muslin_towards */
    int32_t other;             /* enum muslin_other_way */
    int32_t preferred;         /* enum muslin_preferred */
    int32_t turn;              /* MUSLIN_OTHER_WAY_TURNED: quarter turns of the copies the other way; else 0 */
    int32_t pad;
};
/* Every seam of every different node, in their order. A node is shown as most of its copies are pressed, or as it asks
 * to be. Of strip-pieced joins they are the set's, and all of a set is pressed alike: copies the other way are cut from
 * another set, or turned end for end. Time follows the seams. Example: of 3 x 3 nine-patches four are turned by a
 * quarter, all pressed alike: the seams of the first and third row away from the middle of the block, those of the
 * second row and the long ones towards it. Example: a row of three patches has two, both to the right, and for every
 * other row to the left. Since 1.0. */
MUSLIN_API muslin_status muslin_pressing_seams(const struct muslin_pressing *pressing,
                                               struct muslin_pressing_seam *rows, size_t row_size, size_t capacity,
                                               size_t *count, struct muslin_problem *problem);

struct muslin_pressing_child {
    uint32_t size;
    uint32_t flags;
    muslin_id node;      /* made of ... */
    muslin_id child;     /* ... this ... */
    int64_t place;       /* ... which is its child of this number */
    int32_t other_way;   /* 1 when it takes its child the other way than that is shown; the whole may be taken the other
                            way again by what it is part of */
    int32_t turn;        /* quarters by which the child is turned where it is the other way; 0: it is pressed. The same
                            in every place of the child, also where other_way is 0: what the node is part of may be the
                            other way, and then this place, too. By itself it says nothing of this place */
};
/* Which places take a child the other way: a row for each child with seams, in the order of the nodes. From the root
 * down: a child is the other way when its place says so and what it is part of is not, or the reverse. One with a
 * `turn` is then turned as a whole, and all in it is as its own places say; of any other all in it is the other way
 * than they say. Time follows the children. Example: a top of five equal rows: 0, 1, 0, 1, 0. Since 1.0. */
MUSLIN_API muslin_status muslin_pressing_children(const struct muslin_pressing *pressing,
                                                  struct muslin_pressing_child *rows, size_t row_size, size_t capacity,
                                                  size_t *count, struct muslin_problem *problem);

struct muslin_pressing_exception {
    uint32_t size;
    uint32_t flags;
    muslin_id node;        /* in which the two edges are sewn together ... */
    int64_t seam;          /* ... by its seam of this number */
    muslin_len x;          /* where, finished, in the node as it was made */
    muslin_len y;
    muslin_id first_node;  /* whose seams meet there */
    int64_t first_seam;    /* its number in first_node */
    muslin_id second_node; /* and the other */
    int64_t second_seam;   /* its number in second_node */
    int64_t count;         /* in all tops */
};
/* The meetings that do not nest, in the order of the nodes: press one of the two seams open there, or accept the lump.
 * Of what is turned the seam is named that would end there unturned. Time follows the meetings of different parts.
 * Example: none in a straight setting of equal blocks. Since 1.0. */
MUSLIN_API muslin_status muslin_pressing_exceptions(const struct muslin_pressing *pressing,
                                                    struct muslin_pressing_exception *rows, size_t row_size,
                                                    size_t capacity, size_t *count, struct muslin_problem *problem);

#ifdef __cplusplus
}
#endif

#endif
