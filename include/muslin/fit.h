/* muslin/fit.h - settings that come out at a wanted size or for a bed, and a pattern resized.
 *
 * SPDX-License-Identifier: MIT
 *
 * s is the allowance of an edge, u the take-up of a seam, so a seam takes 2 s + u; see seam.h.
 *
 * Every call
 *   Units       Lengths are ticks, 0 .. MUSLIN_SIZE_MAX unless a member says otherwise; allowance and take-up
 *               0 .. MUSLIN_SIZE_MAX / 8; counts 1 .. MUSLIN_COUNT_MAX. Quilts, blocks, sashes and borders are measured
 *               finished, as seen; a member that is not says so.
 *   Statuses    MUSLIN_ERR_NULL: a spec, array or output is missing. MUSLIN_ERR_STRUCT_SIZE, _STRUCT_TAIL, _FLAGS: a
 *               struct breaks the rules of base.h. MUSLIN_ERR_RANGE: an input outside its range; the problem names it.
 *               MUSLIN_ERR_CHOICE: none of the listed choices. What else a call can return stands with it. The
 *               ..._init calls return MUSLIN_ERR_NULL and MUSLIN_ERR_STRUCT_SIZE.
 *   Cost        Constant time where nothing else is said. Nothing allocates, nothing is kept.
 *   Problem     Optional everywhere (null). Where several members share a name, its `at` counts them from 0 in the
 *               order of the struct; for arrays `at` is the row.
 */
#ifndef MUSLIN_FIT_H
#define MUSLIN_FIT_H

#include "setting.h"

#ifdef __cplusplus
extern "C" {
#endif

/* ---- a quilt for a bed ----------------------------------------------------------------------------------------- */

/* How far a quilt hangs over the edge of a mattress. Source of the first three rules: How to make a bed quilt the right
 * size (article). Mattresses are 7-9 in deep, 10-15 in when deep, 15-22 in when extra deep (Standard quilt sizes for
 * mattresses, quilting magazine, 2022): measure, do not look it up. */
enum muslin_drop {
    MUSLIN_DROP_DEPTH = 1,      /* as far as the mattress is deep: a coverlet that shows the base of the bed */
    MUSLIN_DROP_OVER_JOINT = 2, /* the depth and 3 in, or what else is asked: hides where mattress and base meet */
    MUSLIN_DROP_FLOOR = 3,      /* from the top of the mattress down to the floor: a bedspread */
    MUSLIN_DROP_GIVEN = 4       /* as the spec says */
};

/* The two corners at the foot. */
enum muslin_foot_corner {
    MUSLIN_FOOT_CORNER_SQUARE = 1,     /* left square: their points hang lower than the edges */
    MUSLIN_FOOT_CORNER_ROUNDED = 2     /* cut to a quarter circle, so that no point hangs lower than the edges */
};

/* The foot hangs as foot_drop says, whatever rule the sides follow: 0 for a bed with a footboard. */
#define MUSLIN_BED_FOOT_GIVEN 1u

struct muslin_bed_spec {
    uint32_t size;
    uint32_t flags;               /* MUSLIN_BED_FOOT_GIVEN */
    muslin_len mattress_width;    /* 1 or more */
    muslin_len mattress_length;   /* 1 or more */
    muslin_len mattress_depth;    /* 1 or more for DEPTH and OVER_JOINT */
    muslin_len floor_height;      /* floor to top of mattress; 1 or more for FLOOR, else 0 if unknown */
    muslin_len beyond_depth;      /* added to the depth by OVER_JOINT */
    muslin_len side_drop;         /* left and right, for GIVEN */
    muslin_len foot_drop;         /* for GIVEN and with MUSLIN_BED_FOOT_GIVEN */
    muslin_len head_drop;         /* beyond the mattress at the head, where the quilt hangs there too */
    muslin_len pillow_tuck;       /* to fold under and over the pillows */
    muslin_len quilting_extra;    /* what quilting will take up of width and of length: 1-3 in or more on a bed
                                     quilt (Standard quilt sizes for mattresses); measure a sample */
    int32_t drop;                 /* enum muslin_drop */
    int32_t foot_corner;          /* enum muslin_foot_corner */
};
/* Drops as deep as the mattress, 3 in beyond it where they hide the joint, no pillow tuck, square corners, nothing
 * taken up by quilting; the mattress is still to be given. Pillow tucks are 10 in (Standard quilt sizes for
 * mattresses), 12 in and more, or 15 in at least (How to measure bedding). */
#define MUSLIN_BED_SPEC_INIT { sizeof(struct muslin_bed_spec), 0, 0, 0, 0, 0, 24384, 0, 0, 0, 0, 0, 1, 1 }
/* Writes the values above to the first `size` bytes of *spec. Since 1.0. */
MUSLIN_API muslin_status muslin_bed_spec_init(struct muslin_bed_spec *spec, uint32_t size);

struct muslin_bed {
    uint32_t size;
    uint32_t flags;
    muslin_len side_drop;          /* on each side, by the rule asked for */
    muslin_len foot_drop;          /* at the foot */
    muslin_len finished_width;     /* of the quilt on the bed: mattress + 2 side drops */
    muslin_len finished_length;    /* mattress + head drop + foot drop + pillow tuck */
    muslin_len top_width;          /* finished width of the top to piece: the same and quilting_extra */
    muslin_len top_length;
    muslin_len corner_hang;        /* how far below the mattress a foot corner reaches along the cloth, up to a
                                      tick: its point, sqrt(side drop^2 + foot drop^2), so 1.414 drops where they
                                      are equal; when rounded, the longer of the two drops */
    muslin_len corner_radius;      /* of the quarter circle to draw: the shorter of the two drops; 0 when square */
    muslin_len corner_cut_off;     /* how far the point stands beyond that circle, (sqrt 2 - 1) radii, up to a tick:
                                      what is lost of the corner along its diagonal; 0 when square */
    muslin_len corner_clearance;   /* floor_height - corner_hang, below 0 when the corner lies on the floor; 0 where
                                      floor_height is 0 */
    int32_t corner_touches;        /* 1 when floor_height is given and the corner hangs lower: feet catch in it */
    uint32_t warnings;             /* MUSLIN_WARN_SMALL_QUILT: no side of the mattress, as of a crib's, passes 60 in */
};
/* The size of a quilt for a mattress. Width and length follow Standard quilt sizes for mattresses (quilting magazine,
 * 2022) and How to make a bed quilt the right size; the corner is geometry: cloth hangs over the mattress's corner as
 * far as the corner of the quilt is from it, and a circle that touches both edges reaches as far as the longer drop.
 * MUSLIN_ERR_RANGE also when a side of the top would pass MUSLIN_SIZE_MAX (MUSLIN_ARG_QUILT_WIDTH or
 * MUSLIN_ARG_QUILT_LENGTH). Example: a mattress 60 x 80 in and 12 in deep: 84 x 92 in, its square corners hang
 * 16.97 in. Since 1.0. */
MUSLIN_API muslin_status muslin_bed_size(const struct muslin_bed_spec *spec, struct muslin_bed *out,
                                         struct muslin_problem *problem);

struct muslin_bed_covered_spec {
    uint32_t size;
    uint32_t flags;               /* 0 */
    muslin_len quilt_width;       /* finished, 1 or more */
    muslin_len quilt_length;      /* finished, 1 or more */
    muslin_len mattress_width;    /* 1 or more */
    muslin_len mattress_length;   /* 1 or more */
    muslin_len mattress_depth;    /* 0 if unknown */
    muslin_len floor_height;      /* from the floor to the top of the mattress; 0 if unknown */
    muslin_len head_drop;         /* as in struct muslin_bed_spec */
    muslin_len pillow_tuck;       /* as in struct muslin_bed_spec */
    int32_t foot_corner;          /* enum muslin_foot_corner */
    int32_t pad;                  /* 0 */
};
/* No pillow tuck, square corners; quilt and mattress are still to be given. */
#define MUSLIN_BED_COVERED_SPEC_INIT { sizeof(struct muslin_bed_covered_spec), 0, 0, 0, 0, 0, 0, 0, 0, 0, 1, 0 }
/* Writes the values above to the first `size` bytes of *spec. Since 1.0. */
MUSLIN_API muslin_status muslin_bed_covered_spec_init(struct muslin_bed_covered_spec *spec, uint32_t size);

struct muslin_bed_cover {
    uint32_t size;
    uint32_t flags;
    muslin_len side_drop;          /* on each side, half of what is left over, down to a tick; below 0 where the quilt
                                      is narrower than the mattress */
    muslin_len foot_drop;          /* what is left of the length; below 0 where the quilt does not reach the foot */
    muslin_len short_width;        /* how much wider it must be for the sides to hang to the mattress's depth; 0: it
                                      is wide enough */
    muslin_len short_length;       /* the same for the length */
    muslin_len corner_hang;        /* as in struct muslin_bed; 0 where a drop is below 0 */
    muslin_len corner_clearance;   /* as in struct muslin_bed */
    int32_t reaches_edges;         /* 1 when the quilt covers the top of the mattress */
    int32_t reaches_depth;         /* 1 when it hangs to the depth on both sides and at the foot */
    int32_t corner_touches;        /* 1 when floor_height is given and a foot corner hangs lower */
    uint32_t warnings;             /* MUSLIN_WARN_SMALL_QUILT: no side of quilt or of mattress is longer than 60 in */
    muslin_len beyond_side;        /* how far each side hangs below the mattress's lower edge, down to a tick: side_drop
                                      less the depth; 0: it just reaches it, below 0: it falls short */
    muslin_len beyond_foot;        /* the same at the foot */
};
/* Backwards: how a quilt of a given size lies on a mattress, in the middle, and what it falls short by. Source: the
 * same sums turned round. Example: a quilt 84 x 92 in on a mattress 60 x 80 in hangs 12 in on each side and at the
 * foot. Since 1.0. */
MUSLIN_API muslin_status muslin_bed_covered(const struct muslin_bed_covered_spec *spec, struct muslin_bed_cover *out,
                                            struct muslin_problem *problem);

/* ---- settings that come out at a wanted size ------------------------------------------------------------------- */

/* How blocks of side B, c across and r down, are put together, with sashes S wide and a border b wide all round. */
enum muslin_fit_kind {
    MUSLIN_FIT_STRAIGHT = 1, /* side by side: c B + 2 b wide */
    MUSLIN_FIT_SASHED = 2,   /* sashes between blocks: c B + (c - 1) S + 2 b */
    MUSLIN_FIT_FRAMED = 3,   /* and one round the outside: c B + (c + 1) S + 2 b */
    MUSLIN_FIT_ON_POINT = 4  /* on their corners, c and r counted along the edges, (c - 1)(r - 1) alternate blocks
                                between them: c B sqrt 2 + 2 b */
};

/* The kinds that are wanted: straight, with sashes, with sashes all round, on point. */
#define MUSLIN_FIT_ALLOW_STRAIGHT 1u
#define MUSLIN_FIT_ALLOW_SASHED 2u
#define MUSLIN_FIT_ALLOW_FRAMED 4u
#define MUSLIN_FIT_ALLOW_ON_POINT 8u

enum muslin_parity {
    MUSLIN_PARITY_ANY = 1,   /* even or odd */
    MUSLIN_PARITY_EVEN = 2,  /* turned blocks that come in fours */
    MUSLIN_PARITY_ODD = 3    /* every other block a plain one, and the same block in all four corners */
};

enum muslin_fit_rank {
    MUSLIN_FIT_RANK_NEAREST = 1,       /* least off first: what width and length are off, added up */
    MUSLIN_FIT_RANK_FEWEST_BLOCKS = 2, /* blocks and alternate blocks */
    MUSLIN_FIT_RANK_LARGEST_BLOCK = 3  /* the largest block first */
};

/* Blocks are square. A size runs from its least to its most in steps from the least. */
struct muslin_fit_spec {
    uint32_t size;
    uint32_t flags;            /* MUSLIN_FIT_ALLOW_...: one kind at least */
    muslin_len wanted_width;   /* 1 or more, with borders */
    muslin_len wanted_length;  /* 1 or more */
    muslin_len width_under;    /* how much narrower it may come out */
    muslin_len width_over;     /* how much wider */
    muslin_len length_under;   /* how much shorter */
    muslin_len length_over;    /* how much longer */
    muslin_len block_least;    /* 1 or more */
    muslin_len block_most;     /* block_least or more */
    muslin_len block_step;     /* 1 or more */
    muslin_len sash_least;     /* 1 or more where sashes are allowed; where they are not, all three are not looked at */
    muslin_len sash_most;
    muslin_len sash_step;      /* from width to width, 1 or more */
    muslin_len border_least;   /* on each side, all borders together; 0: none */
    muslin_len border_most;
    muslin_len border_step;    /* 1 or more */
    int64_t columns_least;     /* 1 or more */
    int64_t columns_most;      /* columns_least or more */
    int64_t rows_least;        /* 1 or more */
    int64_t rows_most;         /* rows_least or more */
    int64_t best;              /* list so many only; 0: all, to MUSLIN_COUNT_MAX */
    int64_t work_limit;        /* the most combinations of kind, block, sash and border that are tried, and the most
                                  settings that may be found, listed or not; 1 .. MUSLIN_COUNT_MAX */
    int32_t rank;              /* enum muslin_fit_rank */
    int32_t columns_parity;    /* enum muslin_parity */
    int32_t rows_parity;       /* enum muslin_parity */
    int32_t pad;               /* 0 */
};
/* No kind allowed yet, nothing over or under, blocks of 6 to 14 in by the half inch, sashes of 1 to 3 in by the half
 * inch, no borders, 1 to 100 columns and rows, all that are found, a million combinations at most, the nearest first
 * (ranges: common practice, no source); the size and the kinds are still to be given. */
#define MUSLIN_FIT_SPEC_INIT                                                                                          \
    { sizeof(struct muslin_fit_spec), 0, 0, 0, 0, 0, 0, 0, 48768, 113792, 4064, 8128, 24384, 4064, 0, 0, 8128, 1, 100, \
      1, 100, 0, 1000000, 1, 1, 1, 0 }
/* Writes the values above to the first `size` bytes of *spec. Since 1.0. */
MUSLIN_API muslin_status muslin_fit_spec_init(struct muslin_fit_spec *spec, uint32_t size);

/* One setting. */
struct muslin_fit {
    uint32_t size;
    uint32_t flags;
    int32_t kind;               /* enum muslin_fit_kind */
    int32_t exact;              /* 1 when width and length are exactly as wanted; always 0 on point, where they are no
                                   whole ticks even if off_width and off_length are 0 */
    int64_t columns;            /* of blocks, alternates apart */
    int64_t rows;               /* so */
    muslin_len block;           /* finished side */
    muslin_len sash;            /* 0 where the kind has none */
    muslin_len border;          /* on each side */
    muslin_len finished_width;  /* on point to the nearest tick, else exact */
    muslin_len finished_length;
    muslin_len off_width;       /* finished_width - wanted_width */
    muslin_len off_length;
    int64_t blocks;             /* columns x rows */
    int64_t alternates;         /* on point (columns - 1)(rows - 1), else 0 */
    int64_t rank_key;           /* what it is ranked by, the lowest first: ticks off in all; blocks and alternates;
                                   or minus the block in ticks */
};

/* Every setting of the kinds, sizes and counts allowed whose width and length lie within the tolerances, compared
 * exactly, on point too, and do not pass MUSLIN_SIZE_MAX; ranked as asked, and the same list every time: equals are
 * ordered by what they are off, then fewer blocks, kind, larger block, narrower sash, narrower border, fewer columns.
 * Ask, fill: see base.h; a count of 0 is an answer too (see muslin_fit_nearest). No setting is found twice, but
 * different ones may have one size. MUSLIN_ERR_CHOICE for MUSLIN_ARG_SETTING_KIND: no kind is allowed. MUSLIN_ERR_RANGE
 * also for a most below its least. MUSLIN_ERR_WORK_LIMIT, before anything is written; the problem's limit is
 * work_limit. With `at` 0 there are more combinations than that: value is their number (INT64_MAX: or more). With `at`
 * 1 more settings are found: value is how many were when the search ended, so there may be more. Columns and rows are
 * solved for, not tried, so one combination takes constant time; n settings found take O(n log n) to put in order, in
 * the caller's rows. Source: sizes by geometry. Example: 60 x 72 in from 12 in blocks, straight: 5 x 6 blocks.
 * Since 1.0. */
MUSLIN_API muslin_status muslin_fit_settings(const struct muslin_fit_spec *spec, struct muslin_fit *rows,
                                             size_t row_size, size_t capacity, size_t *count,
                                             struct muslin_problem *problem);

/* The one setting that comes nearest to the wanted size, whatever the tolerances, `best` and `rank` say (they must
 * still be in range); its rank_key is that of MUSLIN_FIT_RANK_NEAREST, and equals are decided in the order above. No
 * side of it passes MUSLIN_SIZE_MAX. MUSLIN_ERR_NO_FIT when there is none: no count of the parity asked for lies
 * between its least and its most, or even the least counts are too large. Other statuses as above; the work limit holds
 * for the combinations alone. Example: 61 x 72 in from 12 in blocks, straight: 5 x 6 blocks, 1 in too narrow. Since
 * 1.0. */
MUSLIN_API muslin_status muslin_fit_nearest(const struct muslin_fit_spec *spec, struct muslin_fit *out,
                                            struct muslin_problem *problem);

/* ---- how many fit ---------------------------------------------------------------------------------------------- */

/* A sash also on the left of the first block and on the right of the last. */
#define MUSLIN_FIT_ACROSS_FRAME 1u

struct muslin_fit_across_spec {
    uint32_t size;
    uint32_t flags;          /* MUSLIN_FIT_ACROSS_FRAME */
    muslin_len wanted;       /* the width (or length) to fill, 1 or more */
    muslin_len border;       /* on each side */
    muslin_len block;        /* 1 or more */
    muslin_len sash;         /* between blocks; 0: none */
    int32_t direction;       /* enum muslin_direction: fewer blocks, more, or the nearer of the two (ties: more) */
    int32_t pad;             /* 0 */
};
/* No border, no sash, the nearest; width and block are still to be given. */
#define MUSLIN_FIT_ACROSS_SPEC_INIT { sizeof(struct muslin_fit_across_spec), 0, 0, 0, 0, 0, 3, 0 }
/* Writes the values above to the first `size` bytes of *spec. Since 1.0. */
MUSLIN_API muslin_status muslin_fit_across_spec_init(struct muslin_fit_across_spec *spec, uint32_t size);

struct muslin_fit_across_blocks {
    uint32_t size;
    uint32_t flags;
    int64_t blocks;              /* 1 or more */
    muslin_len finished_width;   /* of so many blocks, their sashes and both borders */
    muslin_len off;              /* finished_width - wanted */
    muslin_len room;             /* the blocks that would fill it, exact as a fraction: room / pitch, where room is
                                    wanted - 2 border + sash, or - sash when framed, ... */
    muslin_len pitch;            /* ... and pitch is block + sash */
    int32_t exact;               /* 1 when it comes out at the wanted width */
    int32_t pad;
};
/* The number of blocks for a width: (wanted - 2 border + sash) / (block + sash), rounded as asked but to one block at
 * least. MUSLIN_ERR_NO_FIT when rounded down and not even one block fits (value: the wanted width; limit: what one
 * block takes). Source: How-to article on fitting sashed squares to a quilt width. Example: 88 in wide, borders of
 * 4 in, blocks of 12 in, sashes of 2 in: 5.86, so 6 blocks and a width of 90 in. Since 1.0. */
MUSLIN_API muslin_status muslin_fit_across(const struct muslin_fit_across_spec *spec,
                                           struct muslin_fit_across_blocks *out, struct muslin_problem *problem);

struct muslin_fit_triangles_spec {
    uint32_t size;
    uint32_t flags;          /* 0 */
    muslin_len wanted_width; /* 1 or more */
    muslin_len wanted_length;/* 1 or more */
    muslin_len height;       /* finished height of a triangle, 1 or more: the depth of a row */
    int32_t rows_direction;  /* enum muslin_direction: fewer rows, more, or the nearest (ties: more) */
    int32_t sides_direction; /* enum muslin_direction, for the sides across */
    muslin_len allowance;    /* s */
    muslin_len take_up;      /* u */
};
/* The nearest both ways, 1/4 in seams; sizes are still to be given. */
#define MUSLIN_FIT_TRIANGLES_SPEC_INIT { sizeof(struct muslin_fit_triangles_spec), 0, 0, 0, 0, 3, 3, 2032, 0 }
/* Writes the values above to the first `size` bytes of *spec. Since 1.0. */
MUSLIN_API muslin_status muslin_fit_triangles_spec_init(struct muslin_fit_triangles_spec *spec, uint32_t size);

struct muslin_fit_triangle_rows {
    uint32_t size;
    uint32_t flags;
    int64_t rows;                /* 1 or more */
    int64_t sides;               /* whole sides of triangles across, 1 or more */
    muslin_len side;             /* 2 height / sqrt 3, to the nearest tick */
    muslin_len finished_width;   /* sides x 2 height / sqrt 3, rounded once to the nearest tick */
    muslin_len finished_length;  /* rows x height */
    muslin_len off_width;        /* finished - wanted */
    muslin_len off_length;
    int64_t triangles;           /* whole ones, with squared ends: 2 sides - 1 a row */
    int64_t half_triangles;      /* two a row, one at each end ... */
    int64_t halves_each_hand;    /* ... which are mirror images: so many lean to the left, so many to the right */
    muslin_len unfinished_width; /* of the quilt, with E = 2 s + u on it: nearest tick */
    muslin_len unfinished_length;
    muslin_len strip_cut;        /* cut width of the strips for triangles with sharp tips: height + 3/2 E (3 s where
                                    nothing is taken up), up to a tick */
    muslin_len strip_cut_blunt;  /* ... where the ruler cuts the upper tip off level with its allowance: height + E */
    muslin_len cut_base;         /* of a whole triangle along the strip, from raw point to raw point, whether the upper
                                    tip is sharp or blunt: (2 height + 3 E) / sqrt 3, up to a tick */
    muslin_len half_cut_base;    /* of a half triangle along the strip, from its straight side, which has its allowance
                                    too: cut_base / 2 + E / 2 before rounding, up to a tick */
};
/* Rows of equilateral triangles, point up and point down in turn, for a quilt of about this size, and how to cut them
 * from strips. The counts are found exactly; one at least of each. The halves are cut from the same strips: square to
 * the strip on one side, at 60 degrees on the other, left and right ones in turn. MUSLIN_ERR_NO_FIT when rounded down
 * and not even one row or side fits. Source: How to cut equilateral triangles (blog) for rows and sides, geometry for
 * the rest. Example: 40 x 50 in with a height of 4 1/4 in: 12 rows, 51 in long, and 8 sides across; strips cut 5 in for
 * sharp tips, 4 3/4 in for blunt ones. Since 1.0. */
MUSLIN_API muslin_status muslin_fit_triangles(const struct muslin_fit_triangles_spec *spec,
                                              struct muslin_fit_triangle_rows *out, struct muslin_problem *problem);

/* ---- a pattern resized ----------------------------------------------------------------------------------------- */

struct muslin_fit_rescale_spec {
    uint32_t size;
    uint32_t flags;        /* 0 */
    int64_t numerator;     /* of the scale, 1 .. INT64_MAX: 3 / 2 is half as large again */
    int64_t denominator;   /* 1 .. INT64_MAX */
    muslin_len allowance;  /* s */
    muslin_len take_up;    /* u */
    muslin_len grid;       /* the ruler's marks, 1 or more: cut sizes shall lie on it */
};
/* The size as it is, 1/4 in seams, a ruler with eighths. */
#define MUSLIN_FIT_RESCALE_SPEC_INIT { sizeof(struct muslin_fit_rescale_spec), 0, 1, 1, 2032, 0, 1016 }
/* Writes the values above to the first `size` bytes of *spec. Since 1.0. */
MUSLIN_API muslin_status muslin_fit_rescale_spec_init(struct muslin_fit_rescale_spec *spec, uint32_t size);

/* One size of the pattern. */
struct muslin_fit_rescale_row {
    uint32_t size;
    uint32_t flags;
    muslin_len finished;       /* in: as it is, 1 .. MUSLIN_SIZE_MAX */
    muslin_len new_finished;   /* finished x numerator / denominator, to the nearest tick, ties up ... */
    int64_t rest;              /* ... and what that leaves out, in denominators of a tick: exact is
                                  new_finished + rest / denominator */
    muslin_len new_cut;        /* new_finished + 2 s + u */
    muslin_len cut_below;      /* the largest cut size on the grid that is not larger than the exact one; 0 where
                                  nothing would be seen of it (2 s + u or less) */
    muslin_len cut_nearest;    /* the nearest on the grid, ties up, of those of which something is seen (above 2 s + u):
                                  cut_above where the nearest of all is no such one */
    muslin_len cut_above;      /* the smallest on the grid that is not smaller */
    int32_t on_grid;           /* 1 when the exact cut size lies on the grid: all four are then the same */
    int32_t pad;
};
/* All zero: the size is still to be given. */
#define MUSLIN_FIT_RESCALE_ROW_INIT { sizeof(struct muslin_fit_rescale_row), 0, 0, 0, 0, 0, 0, 0, 0, 0, 0 }
/* Writes the values above to the first `size` bytes of *row. Since 1.0. */
MUSLIN_API muslin_status muslin_fit_rescale_row_init(struct muslin_fit_rescale_row *row, uint32_t size);

struct muslin_fit_rescaled {
    uint32_t size;
    uint32_t flags;
    int64_t off_grid;          /* sizes that do not lie on the grid */
    muslin_len unit;           /* the largest measure of which all finished sizes are whole multiples */
    muslin_len unit_below;     /* what that unit may become so that every cut size lies on the grid: the next one not
                                  above the scale asked for, 0 if there is none ... */
    muslin_len unit_above;     /* ... and the next one not below it, 0 if there is none */
    int64_t numerator;         /* the nearer of the two as a scale in lowest terms, ties up: numerator / ... */
    int64_t denominator;       /* ... denominator; 0 / 1 if there is none */
    uint32_t warnings;         /* MUSLIN_WARN_OFF_GRID */
    int32_t pad;
};
/* A pattern made larger or smaller: n finished sizes in the array (n 1 .. MUSLIN_COUNT_MAX), each scaled exactly and
 * given its seams back, and set against the marks of the ruler; and the nearest scales that keep all of them on the
 * marks. A new size is whole ruler marks less seams for every size at once only when the unit, which all of them are
 * multiples of, becomes one of every `grid` ticks; so no scale is searched for, and none is overlooked. There is none
 * where the seams do not suit the marks (allowances of 1/16 in with marks at 1/4 in, and sizes of 1 and 2 units). A
 * scale whose sizes would pass MUSLIN_SIZE_MAX is left out. Rows are muslin_fit_rescale_row at stride row_size; each
 * row's own `size` is read, and only the members behind `finished` are written. MUSLIN_ERR_OVERFLOW: a new size passes
 * MUSLIN_SIZE_MAX (MUSLIN_ARG_RATIO; `at` names the row, `value` its finished size). Nothing is written before all rows
 * are checked. O(n). Source: Learn how to resize quilt blocks (take the seams off, scale, put them back) and geometry.
 * Example: sizes of 3 and 6 in finished at 3 / 4: 2 1/4 and 4 1/2 in, cut 2 3/4 and 5 in. Since 1.0. */
MUSLIN_API muslin_status muslin_fit_rescale(const struct muslin_fit_rescale_spec *spec,
                                            struct muslin_fit_rescale_row *rows, size_t row_size, size_t n,
                                            struct muslin_fit_rescaled *out, struct muslin_problem *problem);

#ifdef __cplusplus
}
#endif

#endif
