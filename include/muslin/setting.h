/* muslin/setting.h - blocks put together: the straight setting with and without sashing, the setting on point, borders.
 *
 * SPDX-License-Identifier: MIT
 *
 * s is the allowance of an edge, u the take-up of a seam, so a seam takes 2 s + u; see seam.h.
 *
 * Every call
 *   Units       Lengths are ticks, 0 .. MUSLIN_SIZE_MAX unless a member says otherwise; allowance and take-up
 *               0 .. MUSLIN_SIZE_MAX / 8; counts 1 .. MUSLIN_COUNT_MAX. A result may pass MUSLIN_SIZE_MAX by what seams
 *               and borders add.
 *   Statuses    MUSLIN_ERR_NULL: a spec or output is missing. MUSLIN_ERR_STRUCT_SIZE, _STRUCT_TAIL, _FLAGS: a struct
 *               breaks the rules of base.h. MUSLIN_ERR_RANGE: an input outside its range; the problem names it.
 *               MUSLIN_ERR_CHOICE: none of the listed choices. What else a call can return stands with it. The
 *               ..._init calls return MUSLIN_ERR_NULL and MUSLIN_ERR_STRUCT_SIZE.
 *   Cost        Constant time, unless an array is read: then one pass. Nothing allocates.
 *   Problem     Optional everywhere (null). Where several members share a name, its `at` counts them from 0 in the
 *               order of the struct; for arrays `at` is the element.
 */
#ifndef MUSLIN_SETTING_H
#define MUSLIN_SETTING_H

#include "stripset.h"

#ifdef __cplusplus
extern "C" {
#endif

/* A side of what is sewn. */
enum muslin_side {
    MUSLIN_SIDE_LEFT = 1,
    MUSLIN_SIDE_RIGHT = 2,
    MUSLIN_SIDE_TOP = 3,
    MUSLIN_SIDE_BOTTOM = 4
};

/* ---- straight setting ------------------------------------------------------------------------------------------ */

enum muslin_turning {
    MUSLIN_TURNING_NONE = 1,              /* all blocks the same way up */
    MUSLIN_TURNING_QUARTER_ALTERNATE = 2, /* every other block turned a quarter, like a chessboard; squares only */
    MUSLIN_TURNING_HALF_ALTERNATE = 3     /* every other block turned a half; any block */
};

struct muslin_setting_spec {
    uint32_t size;
    uint32_t flags;                 /* 0 */
    muslin_len block_width;         /* finished, 1 or more */
    muslin_len block_height;        /* finished, 1 or more */
    int64_t columns;                /* of blocks */
    int64_t rows;
    muslin_len allowance;           /* s */
    muslin_len take_up;             /* u */
    int32_t turning;                /* enum muslin_turning */
    int32_t pad;                    /* 0 */
    muslin_len square_tolerance;    /* a block is square enough for a quarter turn when its sides differ by no more */
};
/* One block, not turned, 1/4 in seams, square to 1/64 in (a thread's width: common practice, no source); its size is
 * still to be given. */
#define MUSLIN_SETTING_SPEC_INIT { sizeof(struct muslin_setting_spec), 0, 0, 0, 1, 1, 2032, 0, 1, 0, 127 }
/* Writes the values above to the first `size` bytes of *spec. Since 1.0. */
MUSLIN_API muslin_status muslin_setting_spec_init(struct muslin_setting_spec *spec, uint32_t size);

struct muslin_setting {
    uint32_t size;
    uint32_t flags;
    int64_t blocks;                  /* columns x rows */
    int64_t blocks_turned;           /* of them, turned: half of all, down, unless none is */
    muslin_len finished_width;       /* of the top without borders */
    muslin_len finished_length;
    muslin_len unfinished_width;     /* finished + 2 s + u */
    muslin_len unfinished_length;
    int64_t block_seams;             /* seams that join blocks into rows: rows x (columns - 1) */
    int64_t row_seams;               /* seams that join the rows: rows - 1 */
};
/* The size of a top of columns x rows blocks in a straight setting. MUSLIN_ERR_NOT_SQUARE when a quarter turn is asked
 * of a block whose sides differ by more than square_tolerance, even if none would be turned (where they differ by
 * less, the sizes here are those of the blocks not turned, and the difference is eased in); MUSLIN_ERR_RANGE also when
 * a finished side would pass MUSLIN_SIZE_MAX. Source: geometry. Example: 3 x 3 blocks of 12 in finished: 36 in
 * finished, 36 1/2 in unfinished. Since 1.0. */
MUSLIN_API muslin_status muslin_setting_straight(const struct muslin_setting_spec *spec, struct muslin_setting *out,
                                                 struct muslin_problem *problem);

/* The quarter turns (clockwise: 0, 1 or 2) of the block in this column and row, both from 0 to MUSLIN_COUNT_MAX: the
 * first block is not turned, its neighbours are. `turning` is an enum muslin_turning. Example: column 1, row 0 with
 * MUSLIN_TURNING_HALF_ALTERNATE: 2. Since 1.0. */
MUSLIN_API muslin_status muslin_setting_turn(int32_t turning, int64_t column, int64_t row, int32_t *quarter_turns,
                                             struct muslin_problem *problem);

/* ---- blocks from segments -------------------------------------------------------------------------------------- */

/* `segments` of them joined along their long sides. */
struct muslin_block_spec {
    uint32_t size;
    uint32_t flags;               /* 0 */
    muslin_len segment_cut;       /* a, across the block; 1 or more */
    muslin_len set_unfinished;    /* unfinished width of the strip set: along the segment; 1 or more */
    int64_t segments;             /* side by side */
    muslin_len allowance;         /* s */
    muslin_len take_up;           /* u */
};
/* Two segments, 1/4 in seams; their size is still to be given. */
#define MUSLIN_BLOCK_SPEC_INIT { sizeof(struct muslin_block_spec), 0, 0, 0, 2, 2032, 0 }
/* Writes the values above to the first `size` bytes of *spec. Since 1.0. */
MUSLIN_API muslin_status muslin_block_spec_init(struct muslin_block_spec *spec, uint32_t size);

struct muslin_block {
    uint32_t size;
    uint32_t flags;
    muslin_len unfinished_width;  /* segments x a - (segments - 1)(2 s + u) */
    muslin_len unfinished_height; /* set_unfinished */
    muslin_len finished_width;    /* as seen in the top */
    muslin_len finished_height;
    muslin_len segment_finished;  /* a - 2 s - u */
    muslin_len square_segment_cut;/* the segment cut that would make the block square, down to a tick: the finished
                                     height over the segments, plus 2 s + u; 0 if nothing would be seen of them */
    int32_t square;               /* 1 when width and height are equal */
    int32_t square_exact;         /* 1 when square_segment_cut makes it exactly square */
};
/* The block that segments make, and whether it is square. MUSLIN_ERR_SEAM_TOO_WIDE when nothing of segment or set would
 * be seen (2 s + u or less); MUSLIN_ERR_RANGE also when the block would be wider than MUSLIN_SIZE_MAX unfinished.
 * Source: geometry. Example: two segments cut 6 1/2 in from a set 12 1/2 in wide: a block 12 1/2 in square unfinished,
 * 12 in finished. Since 1.0. */
MUSLIN_API muslin_status muslin_block_from_segments(const struct muslin_block_spec *spec, struct muslin_block *out,
                                                    struct muslin_problem *problem);

/* ---- joins of strips end to end -------------------------------------------------------------------------------- */

enum muslin_join {
    MUSLIN_JOIN_BUTTED = 1,    /* edge to edge, nothing lost (batting; or a count that ignores the loss) */
    MUSLIN_JOIN_STRAIGHT = 2,  /* a straight seam: loses two allowances */
    MUSLIN_JOIN_DIAGONAL = 3,  /* square-ended strips laid at right angles: loses the strip's cut width */
    MUSLIN_JOIN_BIAS_ENDS = 4  /* ends already cut at 45 degrees: loses 2 sqrt 2 allowances, up to a tick */
};

/* What one join takes off the run, in ticks; `join` is an enum muslin_join. The strip's cut width counts for DIAGONAL
 * alone, the allowance for STRAIGHT and BIAS_ENDS. The take-up of a join, a thread or two, is left out. Sources: What
 * is lost? (tutorial, 2012) for the diagonal join, geometry for the others. Example: DIAGONAL, strips cut 3 in: 3 in.
 * Since 1.0. */
MUSLIN_API muslin_status muslin_join_loss(int32_t join, muslin_len strip_cut, muslin_len allowance, muslin_len *out,
                                          struct muslin_problem *problem);

struct muslin_run_spec {
    uint32_t size;
    uint32_t flags;            /* 0 */
    muslin_len length;         /* wanted in one run; 0 .. MUSLIN_LENGTH_MAX / 2 */
    muslin_len strip_length;   /* L, usable length of each strip */
    muslin_len strip_cut;      /* cut width of a strip */
    muslin_len allowance;      /* of the joins */
    int32_t join;              /* enum muslin_join */
    int32_t pad;               /* 0 */
};
/* Strips 40 in long, cut 2 1/2 in wide, straight 1/4 in seams. */
#define MUSLIN_RUN_SPEC_INIT { sizeof(struct muslin_run_spec), 0, 0, 325120, 20320, 2032, 2, 0 }
/* Writes the values above to the first `size` bytes of *spec. Since 1.0. */
MUSLIN_API muslin_status muslin_run_spec_init(struct muslin_run_spec *spec, uint32_t size);

struct muslin_run {
    uint32_t size;
    uint32_t flags;
    int64_t strips;             /* least n with n L - (n - 1) loss >= length; 0 when length is 0 */
    int64_t joins;              /* n - 1; 0 when n is 0 */
    muslin_len loss_per_join;   /* of the length, by the way of joining */
    muslin_len joined;          /* the whole run, joined: n L - (n - 1) loss */
    muslin_len spare;           /* joined - length */
    muslin_len cloth_length;    /* n x strip_cut */
    muslin_len narrower_by;     /* each strip may be this much shorter before one more is needed: spare / n, down */
    uint32_t warnings;          /* MUSLIN_WARN_NO_SLACK when spare is 0 and n is not */
    int32_t pad;
};
/* Strips joined end to end into one run (borders, binding). MUSLIN_ERR_NO_YIELD when a join eats a whole strip and one
 * strip is not enough; MUSLIN_ERR_OVERFLOW when more than MUSLIN_COUNT_MAX strips are needed. Source: geometry.
 * Example: 294 in of strips 40 in long, straight 1/4 in seams: 8 strips, 22 1/2 in to spare. Since 1.0. */
MUSLIN_API muslin_status muslin_run_plan(const struct muslin_run_spec *spec, struct muslin_run *out,
                                         struct muslin_problem *problem);

/* ---- borders --------------------------------------------------------------------------------------------------- */

enum muslin_border_style {
    MUSLIN_BORDER_STYLE_SIDES_FIRST = 1,   /* butted: sides first, then top and bottom over them */
    MUSLIN_BORDER_STYLE_TOP_FIRST = 2,     /* butted: top and bottom first */
    MUSLIN_BORDER_STYLE_CORNERSTONES = 3,  /* four squares in the corners */
    MUSLIN_BORDER_STYLE_MITRED = 4         /* seams at 45 degrees in the corners */
};
#define MUSLIN_BORDER_LENGTHWISE 1u  /* cut along the cloth in whole pieces, without joins */

struct muslin_border_spec {
    uint32_t size;
    uint32_t flags;                /* MUSLIN_BORDER_LENGTHWISE or 0 */
    muslin_len unfinished_width;   /* of what it is sewn to, 1 or more; measure it through the middle */
    muslin_len unfinished_length;
    muslin_len finished_border;    /* W, finished width of the border, 1 or more */
    muslin_len allowance;          /* s */
    muslin_len take_up;            /* u */
    muslin_len usable_width;       /* of the cloth: the length of a strip across it */
    muslin_len mitre_extra;        /* added to the exact least length of each mitred piece; else not used */
    int32_t style;                 /* enum muslin_border_style */
    int32_t join;                  /* enum muslin_join, of strips across the width; not used lengthwise */
};
/* Butted, sides first, 1/4 in seams, strips across 40 in usable joined straight; the sizes are still to be given. */
#define MUSLIN_BORDER_SPEC_INIT { sizeof(struct muslin_border_spec), 0, 0, 0, 0, 2032, 0, 325120, 0, 1, 2 }
/* Writes the values above to the first `size` bytes of *spec. Since 1.0. */
MUSLIN_API muslin_status muslin_border_spec_init(struct muslin_border_spec *spec, uint32_t size);

struct muslin_border {
    uint32_t size;
    uint32_t flags;
    muslin_len cut_width;            /* of every strip: finished + 2 s + u */
    muslin_len side_cut_length;      /* as cut, of each of the two sides, which run along the length */
    muslin_len top_cut_length;       /* as cut, of top and of bottom */
    muslin_len cornerstone_cut;      /* side of four squares; 0 without cornerstones */
    muslin_len total_length;         /* of the four pieces */
    int64_t strips;                  /* across the width, joined in one run; lengthwise: side by side, 1 to 4 */
    int64_t joins;                   /* strips - 1; lengthwise 0 */
    muslin_len loss_per_join;        /* lengthwise 0 */
    muslin_len cloth_length;         /* for the strips, or along the cloth when cut lengthwise; cornerstones apart */
    muslin_len spare;                /* of the run; lengthwise: width left beside the pieces of the first panel */
    muslin_len unfinished_width;     /* of the top with this border on: the next border's input */
    muslin_len unfinished_length;
    muslin_len finished_width;       /* of the top with this border on, as seen */
    muslin_len finished_length;
    uint32_t warnings;               /* MUSLIN_WARN_DIAGONAL_STRETCH when strips are joined by DIAGONAL or BIAS_ENDS,
                                        MUSLIN_WARN_NO_SLACK when spare is 0 */
    uint32_t pad;
};
/* One border; for several, from the inside outwards, the unfinished sizes of one are the input of the next. A side or
 * top is as long as the raw edge it is sewn to, so no allowance is added to a butted length: sides first, L and then
 * width + 2 W; top first the other way round; with cornerstones, the four edges as they are and four squares of the
 * cut width. A mitred piece along the raw edge L needs L + 2 W + 2 sqrt 2 s, up to a tick, plus mitre_extra; the
 * take-up of mitre and joins, a thread or two, is left to mitre_extra and spare. Across the width the four pieces are
 * cut from one run, as muslin_run_plan() does. Lengthwise they lie side by side, as many as the usable width holds,
 * longest first. Cornerstones come from a strip of the same cut width and are not counted in total_length. Printed
 * lengths are the arithmetic: measure the real top through the middle in three places, cut to that, and ease to fit.
 * MUSLIN_ERR_SEAM_TOO_WIDE when a side of the top is less than 2 s + u; MUSLIN_ERR_NO_YIELD and MUSLIN_ERR_OVERFLOW as
 * in muslin_run_plan(); MUSLIN_ERR_NO_FIT when, lengthwise, the cloth does not hold one piece. Sources: 4Bs: borders
 * (group sampler lesson), geometry for the mitre, where print adds anything from 1/2 to 6 in. Example: 38 1/2 x 50 in
 * unfinished, 4 in border with cornerstones: cut 4 1/2 in, two of 50, two of 38 1/2 in, four squares cut 4 1/2 in; 46
 * 1/2 x 58 in unfinished. Since 1.0. */
MUSLIN_API muslin_status muslin_border_plan(const struct muslin_border_spec *spec, struct muslin_border *out,
                                            struct muslin_problem *problem);

/* ---- straight setting with sashing ----------------------------------------------------------------------------- */

#define MUSLIN_SETTING_SASHED_FRAME 1u        /* sashes all round the outside too, not only between the blocks */
#define MUSLIN_SETTING_SASHED_CORNERSTONES 2u /* squares where the sashes cross; else long sashes run between the
                                                 rows */

struct muslin_setting_sashed_spec {
    uint32_t size;
    uint32_t flags;          /* MUSLIN_SETTING_SASHED_... or 0 */
    muslin_len block_width;  /* finished, 1 or more */
    muslin_len block_height; /* finished, 1 or more */
    int64_t columns;         /* of blocks */
    int64_t rows;
    muslin_len sash_width;   /* finished, of the vertical sashes beside the blocks of a row; 0: there are none */
    muslin_len sash_height;  /* finished, of the horizontal sashes above and below the rows; 0: there are none */
    muslin_len allowance;    /* s */
    muslin_len take_up;      /* u */
    muslin_len usable_width; /* of the cloth: the length of a strip across it */
    muslin_len end_loss;     /* taken off each strip for squaring its ends; at most usable_width */
};
/* One block, no sashes, no frame, 1/4 in seams, cloth 40 in usable; sizes and counts are still to be given. */
#define MUSLIN_SETTING_SASHED_SPEC_INIT \
    { sizeof(struct muslin_setting_sashed_spec), 0, 0, 0, 1, 1, 0, 0, 2032, 0, 325120, 0 }
/* Writes the values above to the first `size` bytes of *spec. Since 1.0. */
MUSLIN_API muslin_status muslin_setting_sashed_spec_init(struct muslin_setting_sashed_spec *spec, uint32_t size);

struct muslin_setting_sashed_plan {
    uint32_t size;
    uint32_t flags;
    int64_t blocks;                    /* c r */
    int64_t vertical_sashes;           /* c columns, r rows: r (c - 1), with a frame r (c + 1) */
    int64_t horizontal_sashes;         /* with cornerstones c (r - 1), with a frame c (r + 1); without them long sashes:
                                          r - 1, with a frame r + 1 */
    int64_t cornerstones;              /* (c - 1)(r - 1), with a frame (c + 1)(r + 1); 0 without cornerstones */
    muslin_len vertical_cut_width;     /* each finished size plus 2 s + u; the sizes of what there is none of are 0 */
    muslin_len vertical_cut_length;    /* a block's height as cut */
    muslin_len horizontal_cut_width;   /* as vertical_cut_width */
    muslin_len horizontal_cut_length;  /* a block's width as cut; of a long sash, a whole row's */
    muslin_len cornerstone_cut_width;  /* as vertical_cut_width */
    muslin_len cornerstone_cut_height; /* equal to the width where both kinds of sashes are equally wide */
    muslin_len finished_width;         /* of the top without borders: c blocks and c - 1 sashes, with a frame c + 1 */
    muslin_len finished_length;
    muslin_len unfinished_width;       /* finished + 2 s + u */
    muslin_len unfinished_length;
    muslin_len block_unfinished_width; /* what a block must measure before it is sewn in: finished + 2 s + u */
    muslin_len block_unfinished_height;
};
/* Blocks with sashes between them: how many pieces of each kind, their cut sizes, and the size of the top. Without
 * cornerstones each row is sewn first, blocks and vertical sashes, and long horizontal sashes join the rows. With
 * cornerstones both kinds of sashes must be wider than 0. MUSLIN_ERR_RANGE also when a finished side would pass
 * MUSLIN_SIZE_MAX or the end loss the usable width; sash_width and sash_height are MUSLIN_ARG_SASH_WIDTH with `at` 0
 * and 1. Sources: Quilt math: algorithms for cornerstones and sashes (blog, 2009) for the counts in a frame; How to
 * make quilt sashing with cornerstones (J. Wickell) for the cut sizes; geometry for the rest. Example: 4 x 5 blocks of
 * 12 in with sashes of 4 in, cornerstones and a frame: 25 vertical and 24 horizontal sashes cut 4 1/2 x 12 1/2 in, 30
 * cornerstones; 68 x 84 in finished. Since 1.0. */
MUSLIN_API muslin_status muslin_setting_sashed(const struct muslin_setting_sashed_spec *spec,
                                               struct muslin_setting_sashed_plan *out, struct muslin_problem *problem);

enum muslin_sash_kind {
    MUSLIN_SASH_VERTICAL = 1,
    MUSLIN_SASH_HORIZONTAL = 2,
    MUSLIN_SASH_CORNERSTONE = 3
};

struct muslin_sash_piece {
    uint32_t size;
    uint32_t flags;
    int64_t pieces;           /* of this kind */
    muslin_len cut_length;    /* along the strip */
    muslin_len cut_width;     /* of the strip */
    int64_t per_strip;        /* pieces from a strip across the cloth, down; 0 when a piece is longer than a strip */
    int64_t strips;           /* up */
    int64_t spare_pieces;     /* that the last strip could still give; 0 when strips are joined */
    int64_t joins;            /* straight seams, when pieces longer than a strip are cut from one joined run; else 0 */
    muslin_len cloth_length;  /* strips x cut_width */
    muslin_len narrower_by;   /* the cloth may be this much narrower before a full strip gives one piece less; when
                                 strips are joined, before one more of them is needed */
    int32_t kind;             /* enum muslin_sash_kind */
    uint32_t warnings;        /* MUSLIN_WARN_NO_SLACK when narrower_by is 0 */
};
/* The strips across the cloth for each kind of piece that there is, in the order of enum muslin_sash_kind: one to
 * three rows, none for a top without sashes. A piece longer than a strip is cut from strips joined end to end with
 * straight seams, 2 s lost in each. Statuses of muslin_setting_sashed(), and MUSLIN_ERR_NO_YIELD when a join would eat
 * a whole strip; MUSLIN_ERR_OVERFLOW when pieces or strips pass MUSLIN_COUNT_MAX; MUSLIN_ERR_BUFFER and
 * MUSLIN_ERR_STRUCT_SIZE for the rows. Source: How much fabric do I need for quilt sashing? (tutorial site); geometry.
 * Example: 24 horizontal sashes cut 12 1/2 x 4 1/2 in from cloth 44 in usable: 3 a strip, 8 strips, 36 in of cloth,
 * which may be 6 1/2 in narrower. Since 1.0. */
MUSLIN_API muslin_status muslin_setting_sashed_pieces(const struct muslin_setting_sashed_spec *spec,
                                                      struct muslin_sash_piece *rows, size_t row_size, size_t capacity,
                                                      size_t *count, struct muslin_problem *problem);

/* ---- pieced and plain blocks in turn --------------------------------------------------------------------------- */

enum muslin_first_block {
    MUSLIN_FIRST_BLOCK_PIECED = 1, /* a pieced block in the first corner */
    MUSLIN_FIRST_BLOCK_PLAIN = 2   /* a plain one */
};

struct muslin_setting_alternate_spec {
    uint32_t size;
    uint32_t flags;          /* 0 */
    muslin_len block_width;  /* finished, 1 or more */
    muslin_len block_height; /* finished, 1 or more */
    int64_t columns;         /* of blocks, pieced and plain */
    int64_t rows;
    muslin_len allowance;    /* s */
    muslin_len take_up;      /* u */
    int32_t first;           /* enum muslin_first_block */
    int32_t pad;             /* 0 */
};
/* One pieced block, 1/4 in seams; its size is still to be given. */
#define MUSLIN_SETTING_ALTERNATE_SPEC_INIT \
    { sizeof(struct muslin_setting_alternate_spec), 0, 0, 0, 1, 1, 2032, 0, 1, 0 }
/* Writes the values above to the first `size` bytes of *spec. Since 1.0. */
MUSLIN_API muslin_status muslin_setting_alternate_spec_init(struct muslin_setting_alternate_spec *spec, uint32_t size);

struct muslin_setting_alternate_plan {
    uint32_t size;
    uint32_t flags;
    int64_t pieced;              /* with an odd number of blocks, the first kind is one more than the other */
    int64_t plain;               /* the other blocks */
    muslin_len plain_cut_width;  /* finished + 2 s + u */
    muslin_len plain_cut_height;
    muslin_len finished_width;   /* of the top without borders */
    muslin_len finished_length;
    muslin_len unfinished_width; /* finished + 2 s + u */
    muslin_len unfinished_length;
};
/* Pieced and plain blocks like the fields of a chessboard. MUSLIN_ERR_RANGE also when a finished side would pass
 * MUSLIN_SIZE_MAX. Source: geometry. Example: 5 x 5 blocks of 8 in, a pieced one first: 13 pieced, 12 plain cut 8 1/2
 * in square. Since 1.0. */
MUSLIN_API muslin_status muslin_setting_alternate(const struct muslin_setting_alternate_spec *spec,
                                                  struct muslin_setting_alternate_plan *out,
                                                  struct muslin_problem *problem);

/* ---- columns or rows of unequal size --------------------------------------------------------------------------- */

#define MUSLIN_SETTING_LINE_FRAME 1u /* a sash before the first block and after the last one too */

/* A line is one row of blocks side by side, or one column of them; a top with unequal columns and rows is two. */
struct muslin_setting_line_spec {
    uint32_t size;
    uint32_t flags;       /* MUSLIN_SETTING_LINE_FRAME or 0 */
    muslin_len sash;      /* finished width of the sash between neighbours; 0: none */
    muslin_len allowance; /* s */
    muslin_len take_up;   /* u */
    muslin_len wanted;    /* finished size that the line should have; 0: none is wanted */
};
/* No sash, 1/4 in seams, no size wanted. */
#define MUSLIN_SETTING_LINE_SPEC_INIT { sizeof(struct muslin_setting_line_spec), 0, 0, 2032, 0, 0 }
/* Writes the values above to the first `size` bytes of *spec. Since 1.0. */
MUSLIN_API muslin_status muslin_setting_line_spec_init(struct muslin_setting_line_spec *spec, uint32_t size);

struct muslin_setting_line_plan {
    uint32_t size;
    uint32_t flags;
    int64_t sashes;         /* n - 1, with a frame n + 1; 0 without a sash */
    muslin_len finished;    /* the whole line */
    muslin_len unfinished;  /* finished + 2 s + u */
    muslin_len longer_by;   /* finished - wanted: negative when it falls short; 0 when no size is wanted */
};
/* The whole of a line of n columns or rows with finished sizes `sizes` (1 .. MUSLIN_SIZE_MAX each), and how far it is
 * from the size wanted. n is 1 .. MUSLIN_COUNT_MAX. MUSLIN_ERR_RANGE also when the line would pass MUSLIN_SIZE_MAX.
 * One pass. Source: geometry. Example: columns of 6, 12 and 6 in with a sash of 1 in between: 26 in finished, 26 1/2
 * in unfinished. Since 1.0. */
MUSLIN_API muslin_status muslin_setting_line(const muslin_len *sizes, size_t n,
                                             const struct muslin_setting_line_spec *spec,
                                             struct muslin_setting_line_plan *out, struct muslin_problem *problem);

struct muslin_setting_line_place {
    uint32_t size;
    uint32_t flags;
    muslin_len start;      /* finished, from the first edge of the line to this block's first edge */
    muslin_len finished;   /* its own size */
    muslin_len unfinished; /* finished + 2 s + u: what the block must measure before it is sewn in */
};
/* Where each of the n columns or rows lies: a row each, in their order. Statuses of muslin_setting_line(), and
 * MUSLIN_ERR_BUFFER and MUSLIN_ERR_STRUCT_SIZE for the rows. One pass. Source: geometry. Example: columns of 6, 12 and
 * 6 in with a sash of 1 in between start at 0, 7 and 20 in. Since 1.0. */
MUSLIN_API muslin_status muslin_setting_line_places(const muslin_len *sizes, size_t n,
                                                    const struct muslin_setting_line_spec *spec,
                                                    struct muslin_setting_line_place *rows, size_t row_size,
                                                    size_t capacity, size_t *count, struct muslin_problem *problem);

/* ---- setting on point ------------------------------------------------------------------------------------------ */

/* Square blocks stand on their corners, c columns by r rows of them, with (c - 1)(r - 1) alternate blocks in the gaps;
 * triangles fill the edges and corners. B is the finished side of a block, w the finished width of a sash, f the
 * set-off. The layouts differ in where the sashes end:
 *
 *   layout       side triangle's leg   corner triangle's long side   finished width of the centre
 *   PLAIN        B                     B                             c B sqrt 2 + 2 f
 *   SASH_OUTER   B + w                 B + 2 w                       (c B + (c + 1) w) sqrt 2 + 2 f
 *   SASH_CUT     B                     B                             c (B + w) sqrt 2
 *   SASH_INNER   B - w                 B                             (c B + (c - 1) w) sqrt 2
 */
enum muslin_point_layout {
    MUSLIN_POINT_LAYOUT_PLAIN = 1,      /* block to block, no sashes */
    MUSLIN_POINT_LAYOUT_SASH_OUTER = 2, /* every block has four sashes; the outer cornerstones touch the edge by their
                                           tips */
    MUSLIN_POINT_LAYOUT_SASH_CUT = 3,   /* the same, the edge runs through the middle of the outer cornerstones:
                                           triangles */
    MUSLIN_POINT_LAYOUT_SASH_INNER = 4  /* no sash outside the corner blocks; the outer blocks touch the edge by their
                                           tips, sashes beside side triangles end at the edge, cut off at 45 degrees:
                                           there the edge is bias, even beside triangles. A single block has no such
                                           sash */
};
enum muslin_point_edge {
    MUSLIN_POINT_EDGE_TRIANGLES = 1,  /* setting triangles: straight grain lies on the outside, but for the ends of
                                         sashes in SASH_INNER */
    MUSLIN_POINT_EDGE_HALF_BLOCKS = 2 /* blocks cut beyond their diagonal, one half from each, with bias on the outside;
                                         the corners stay triangles */
};
#define MUSLIN_SETTING_POINT_DIAGONAL_FIRST 1u /* bring the customary diagonal to the grid, then add; no rounding after
                                                  that */

struct muslin_setting_point_spec {
    uint32_t size;
    uint32_t flags;             /* MUSLIN_SETTING_POINT_DIAGONAL_FIRST or 0; not used with the exact policy */
    muslin_len block;           /* B, finished side, 1 or more; above w in SASH_INNER */
    int64_t columns;            /* c, of blocks side by side, without alternates; one is a runner */
    int64_t rows;               /* r */
    muslin_len sash;            /* w; 0 in PLAIN, else 1 or more */
    muslin_len set_off;         /* f: blocks float this far inside the edge, and it stays; 0 in SASH_CUT, SASH_INNER and
                                   with half-blocks, where something is cut at the edge itself */
    muslin_len allowance;       /* s */
    muslin_len take_up;         /* u */
    muslin_len trim_room;       /* added to the cut squares, half of it stands out at the edge and is trimmed away
                                   after sewing; 0 unless policy is OVERSIZE */
    muslin_len side_addition;   /* customary addition to a square cut twice; 0: 5 s + 5 u / 2, 1 1/4 in for 1/4 in */
    muslin_len corner_addition; /* ... to a square cut once; 0: 7 s / 2 + 7 u / 4, 7/8 in for 1/4 in */
    int64_t factor_numerator;   /* customary diagonal of a square, for instance 1414 over 1000: 0 (with a denominator
                                   of 0) for the root itself, or 1 .. 1000000 */
    int64_t factor_denominator; /* 0 or 1 .. 1000000; additions and factor are not used with the exact policy */
    int32_t layout;             /* enum muslin_point_layout */
    int32_t edge;               /* enum muslin_point_edge; half-blocks in PLAIN and SASH_CUT only */
    int32_t policy;             /* enum muslin_allowance_policy */
    int32_t pad;                /* 0 */
};
/* One block, no sashes, setting triangles, exact, 1/4 in seams; its size is still to be given. */
#define MUSLIN_SETTING_POINT_SPEC_INIT \
    { sizeof(struct muslin_setting_point_spec), 0, 0, 1, 1, 0, 0, 2032, 0, 0, 0, 0, 0, 0, 1, 1, 1, 0 }
/* Writes the values above to the first `size` bytes of *spec. Since 1.0. */
MUSLIN_API muslin_status muslin_setting_point_spec_init(struct muslin_setting_point_spec *spec, uint32_t size);

struct muslin_setting_point_plan {
    uint32_t size;
    uint32_t flags;
    int64_t blocks;                 /* c r */
    int64_t alternates;             /* (c - 1)(r - 1), pieced or plain */
    int64_t side_triangles;         /* 2 (c - 1) + 2 (r - 1); 0 with half-blocks */
    int64_t side_squares;           /* squares cut twice on the diagonal, four triangles each: up */
    int64_t spare_side_triangles;   /* triangles those squares give beyond the need */
    int64_t corner_triangles;       /* 4 */
    int64_t corner_squares;         /* 2, cut once on the diagonal, two triangles each */
    int64_t half_blocks;            /* 2 (c - 1) + 2 (r - 1) with half-blocks, each from a block of its own; else 0 */
    muslin_len alternate_cut;       /* side of a plain alternate square: B + 2 s + u */
    muslin_len side_square_cut;     /* as the policy asks, rounded as `cutting`; 0 without side triangles */
    muslin_len side_need;           /* exact need of it, up to a tick, without trimming room */
    muslin_len side_surplus;        /* cut less exact need, down to a tick; negative: rounding left it too small */
    muslin_len corner_square_cut;   /* these three as of the side squares */
    muslin_len corner_need;         /* exact, up to a tick */
    muslin_len corner_surplus;      /* down to a tick */
    muslin_len half_block_beyond;   /* half-blocks: cut this far beyond the diagonal, s + u / 2 up to a tick; 0 where
                                       there are none */
    muslin_len diagonal;            /* finished diagonal of a block, B sqrt 2, rounded as `measuring` */
    muslin_len diagonal_error;      /* value less exact, down to a tick, as in struct muslin_rounded */
    muslin_len finished_width;      /* of the centre without borders, rounded once as `measuring` */
    muslin_len width_error;         /* less the exact one, down to a tick */
    muslin_len finished_length;     /* as finished_width */
    muslin_len length_error;        /* less the exact one, down to a tick */
    muslin_len unfinished_width;    /* finished_width + 2 s + u */
    muslin_len unfinished_length;
    int64_t sashes;                 /* whole ones */
    int64_t edge_sashes;            /* SASH_INNER: those that end at the edge */
    int64_t cornerstones;           /* whole ones */
    int64_t edge_cornerstones;      /* SASH_CUT: triangles at the edge, 2 c + 2 r */
    int64_t edge_cornerstone_squares; /* squares cut twice on the diagonal, four of those triangles each: up */
    muslin_len sash_cut_width;      /* w + 2 s + u */
    muslin_len sash_cut_length;     /* B + 2 s + u */
    muslin_len edge_sash_cut_length;/* long side before the end is cut at 45 degrees: B + (1 + 1 / sqrt 2)(2 s + u),
                                       rounded as `cutting` */
    muslin_len cornerstone_cut;     /* w + 2 s + u */
    muslin_len edge_cornerstone_cut;/* side of the squares for edge cornerstones, made like the side squares */
    int32_t straight_grain;         /* 1 when the whole outer edge lies on the straight grain: neither half-blocks nor
                                       edge sashes */
    uint32_t warnings;              /* MUSLIN_WARN_BIAS_EDGE when it does not; MUSLIN_WARN_OFF_GRID when a square that
                                       was rounded by its diagonal does not lie on the cutting grid */
    muslin_len edge_cornerstone_need;    /* as of the side square; 0 without edge cornerstones */
    muslin_len edge_cornerstone_surplus; /* as of the side square */
    muslin_len side_room;                /* what there is to trim at the edge of the quilt: half of side_surplus, down
                                            to a tick */
    muslin_len corner_room;              /* half of corner_surplus, at both edges */
    muslin_len edge_cornerstone_room;    /* half of edge_cornerstone_surplus */
};
/* A setting on point: counts, squares to cut for its triangles, and the size of the centre. A square cut twice on the
 * diagonal keeps the straight grain on the long side of its triangles, as the edge needs it; one cut once keeps it on
 * the short sides, as the corner needs it. With t = 2 s + u, the exact needs are
 *     side    leg sqrt 2 + 2 f + (1 + sqrt 2) t            (4.8284 s without take-up)
 *     corner  long side / sqrt 2 + 2 f + (1 + 1 / sqrt 2) t   (3.4142 s)
 * and the customary figures leg x factor + 2 f + side_addition and long side / factor + 2 f + corner_addition, or, with
 * MUSLIN_SETTING_POINT_DIAGONAL_FIRST, the rounded diagonal (half of it for a corner, up to a tick) plus the same;
 * OVERSIZE adds trim_room. A square larger by x makes a triangle that stands out x / 2 farther at the edge: cut twice,
 * its height is half of the square; cut once, its corner moves outwards by x / sqrt 2, which is x / 2 from both edges.
 * Two set-off triangles meet beyond each block's tip, where one covers the other before trimming.
 * `cutting` rounds what is cut and `measuring` what is reported as finished; in the problem their members have `at` 0
 * and 1. MUSLIN_ERR_CUSTOMARY when a customary total, before trimming room and before the sum is rounded, is below the
 * exact need: the value is the total down to a tick, the limit the need up to a tick, `at` 0 side, 1 corner, 2 edge
 * cornerstone. MUSLIN_ERR_NO_FIT for half-blocks where a layout has none. MUSLIN_ERR_DIVIDE_BY_ZERO: factor over zero.
 * MUSLIN_ERR_RANGE also when a finished side would pass MUSLIN_SIZE_MAX, and where a layout bounds sash, set-off or
 * block. Sources: Tip - On Point Settings (Moonlight Quilters Guild), Setting and corner triangle chart (Tani) for the
 * customary figures; geometry for the others, verified by drawing. Example: 4 x 4 blocks of 6 in, customary with 1414
 * / 1000, up to 1/8 in: 9 alternates, 12 side triangles from 3 squares cut 9 3/4 in, 4 corners from 2 squares cut 5
 * 1/8 in. Since 1.0. */
MUSLIN_API muslin_status muslin_setting_point(const struct muslin_setting_point_spec *spec,
                                              const struct muslin_rounding_spec *cutting,
                                              const struct muslin_rounding_spec *measuring,
                                              struct muslin_setting_point_plan *out, struct muslin_problem *problem);

/* The largest block, a whole number of steps of `grid` (1 .. MUSLIN_SIZE_MAX), whose centre on point is not wider than
 * `wanted_width` (1 .. MUSLIN_SIZE_MAX). Of the spec, columns, sash, set-off and layout count; block and rows are not
 * used (for a wanted length, give the rows as columns). MUSLIN_ERR_NO_FIT when not even the smallest block is narrow
 * enough; the limit is the width it would need, up to a tick, or 0 where that passes MUSLIN_SIZE_MAX. Statuses of
 * muslin_setting_point() else. Source: geometry. Example: 5 columns within 90 in, in steps of 1/4 in: blocks of 12 1/2
 * in finished. Since 1.0. */
MUSLIN_API muslin_status muslin_setting_point_block_for_width(const struct muslin_setting_point_spec *spec,
                                                              muslin_len wanted_width, muslin_len grid, muslin_len *out,
                                                              struct muslin_problem *problem);

/* The finished block that a given side square (cut twice, `side_square_cut` 1 .. MUSLIN_SIZE_MAX) can frame exactly,
 * rounded once, as asked: the exact need solved for B. Of the spec, sash, set-off, allowance, take-up and layout
 * count. MUSLIN_ERR_NO_FIT when the square leaves no block of a tick, in SASH_INNER none a tick above the sash (the
 * limit is the least square that does), or when rounding leaves none (the problem names the block as rounded, and the
 * limit is the least on the grid). Source: geometry. Example: a side square cut 12 3/4 in, down to 1/8 in: blocks up to
 * 8 1/8 in finished. Since 1.0. */
MUSLIN_API muslin_status muslin_setting_point_block_from_side(const struct muslin_setting_point_spec *spec,
                                                              muslin_len side_square_cut,
                                                              const struct muslin_rounding_spec *rounding,
                                                              struct muslin_rounded *out,
                                                              struct muslin_problem *problem);

#ifdef __cplusplus
}
#endif

#endif
