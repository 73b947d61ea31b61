/* muslin/setting.h - blocks put together: the straight setting, and borders round it.
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
 *   Cost        Constant time. Nothing allocates.
 */
#ifndef MUSLIN_SETTING_H
#define MUSLIN_SETTING_H

#include "stripset.h"

#ifdef __cplusplus
extern "C" {
#endif

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
/* Writes the values above to the first `size` bytes of *spec. Since 0.1. */
MUSLIN_API muslin_status muslin_setting_spec_init(struct muslin_setting_spec *spec, uint32_t size);

struct muslin_setting {
    uint32_t size;
    uint32_t flags;
    int64_t blocks;
    int64_t turned;                  /* of them, turned: half of all, down, unless none is */
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
 * finished, 36 1/2 in unfinished. Since 0.1. */
MUSLIN_API muslin_status muslin_setting_straight(const struct muslin_setting_spec *spec, struct muslin_setting *out,
                                                 struct muslin_problem *problem);

/* The quarter turns (clockwise: 0, 1 or 2) of the block in this column and row, both from 0 to MUSLIN_COUNT_MAX: the
 * first block is not turned, its neighbours are. `turning` is an enum muslin_turning. Example: column 1, row 0 with
 * MUSLIN_TURNING_HALF_ALTERNATE: 2. Since 0.1. */
MUSLIN_API muslin_status muslin_setting_turn(int32_t turning, int64_t column, int64_t row, int32_t *quarter_turns);

/* ---- blocks from segments -------------------------------------------------------------------------------------- */

/* `segments` of them joined along their long sides. */
struct muslin_block_spec {
    uint32_t size;
    uint32_t flags;               /* 0 */
    muslin_len segment_cut;       /* a, across the block; 1 or more */
    muslin_len set_unfinished;    /* unfinished width of the strip set: along the segment; 1 or more */
    int64_t segments;
    muslin_len allowance;
    muslin_len take_up;
};
/* Two segments, 1/4 in seams; their size is still to be given. */
#define MUSLIN_BLOCK_SPEC_INIT { sizeof(struct muslin_block_spec), 0, 0, 0, 2, 2032, 0 }
/* Writes the values above to the first `size` bytes of *spec. Since 0.1. */
MUSLIN_API muslin_status muslin_block_spec_init(struct muslin_block_spec *spec, uint32_t size);

struct muslin_block {
    uint32_t size;
    uint32_t flags;
    muslin_len unfinished_width;  /* segments x a - (segments - 1)(2 s + u) */
    muslin_len unfinished_height; /* set_unfinished */
    muslin_len finished_width;
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
 * 12 in finished. Since 0.1. */
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
 * Since 0.1. */
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
/* Writes the values above to the first `size` bytes of *spec. Since 0.1. */
MUSLIN_API muslin_status muslin_run_spec_init(struct muslin_run_spec *spec, uint32_t size);

struct muslin_run {
    uint32_t size;
    uint32_t flags;
    int64_t strips;             /* least n with n L - (n - 1) loss >= length; 0 when length is 0 */
    int64_t joins;              /* n - 1; 0 when n is 0 */
    muslin_len loss_per_join;
    muslin_len joined;          /* the whole run, joined: n L - (n - 1) loss */
    muslin_len spare;           /* joined - length */
    muslin_len cloth_length;    /* n x strip_cut */
    muslin_len narrower_by;     /* each strip may be this much shorter before one more is needed: spare / n, down */
    uint32_t warnings;          /* MUSLIN_WARN_NO_SLACK when spare is 0 and n is not */
    int32_t pad;
};
/* Strips joined end to end into one run (borders, binding). MUSLIN_ERR_NO_YIELD when a join eats a whole strip and one
 * strip is not enough; MUSLIN_ERR_OVERFLOW when more than MUSLIN_COUNT_MAX strips are needed. Source: geometry.
 * Example: 294 in of strips 40 in long, straight 1/4 in seams: 8 strips, 22 1/2 in to spare. Since 0.1. */
MUSLIN_API muslin_status muslin_run_plan(const struct muslin_run_spec *spec, struct muslin_run *out,
                                         struct muslin_problem *problem);

/* ---- borders --------------------------------------------------------------------------------------------------- */

enum muslin_border_style {
    MUSLIN_BORDER_SIDES_FIRST = 1,   /* butted: sides first, then top and bottom over them */
    MUSLIN_BORDER_TOP_FIRST = 2,     /* butted: top and bottom first */
    MUSLIN_BORDER_CORNERSTONES = 3,  /* four squares in the corners */
    MUSLIN_BORDER_MITRED = 4         /* seams at 45 degrees in the corners */
};
#define MUSLIN_BORDER_LENGTHWISE 1u  /* cut along the cloth in whole pieces, without joins */

struct muslin_border_spec {
    uint32_t size;
    uint32_t flags;                /* MUSLIN_BORDER_LENGTHWISE or 0 */
    muslin_len unfinished_width;   /* of what it is sewn to, 1 or more; measure it through the middle */
    muslin_len unfinished_length;
    muslin_len finished_border;    /* W, finished width of the border, 1 or more */
    muslin_len allowance;
    muslin_len take_up;
    muslin_len usable_width;       /* of the cloth: the length of a strip across it */
    muslin_len mitre_extra;        /* added to the exact least length of each mitred piece; else not used */
    int32_t style;                 /* enum muslin_border_style */
    int32_t join;                  /* enum muslin_join, of strips across the width; not used lengthwise */
};
/* Butted, sides first, 1/4 in seams, strips across 40 in usable joined straight; the sizes are still to be given. */
#define MUSLIN_BORDER_SPEC_INIT { sizeof(struct muslin_border_spec), 0, 0, 0, 0, 2032, 0, 325120, 0, 1, 2 }
/* Writes the values above to the first `size` bytes of *spec. Since 0.1. */
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
    muslin_len finished_width;
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
 * 1/2 x 58 in unfinished. Since 0.1. */
MUSLIN_API muslin_status muslin_border_plan(const struct muslin_border_spec *spec, struct muslin_border *out,
                                            struct muslin_problem *problem);

#ifdef __cplusplus
}
#endif

#endif
