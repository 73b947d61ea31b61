/* muslin/setting.h - blocks put together: the straight setting, and borders round it.
 *
 * SPDX-License-Identifier: MIT
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
    muslin_len block_width;         /* finished, 1 .. MUSLIN_SIZE_MAX */
    muslin_len block_height;        /* finished */
    int64_t columns;                /* 1 .. MUSLIN_COUNT_MAX */
    int64_t rows;
    muslin_len allowance;           /* s */
    muslin_len take_up;             /* u */
    int32_t turning;                /* enum muslin_turning */
    int32_t pad;                    /* 0 */
};
#define MUSLIN_SETTING_SPEC_INIT { (uint32_t)sizeof(struct muslin_setting_spec), 0, 0, 0, 1, 1, 2032, 0, 1, 0 }
/* Writes the values above to the first `size` bytes of *spec. Since 0.1. */
MUSLIN_API muslin_status muslin_setting_spec_init(struct muslin_setting_spec *spec, uint32_t size);

struct muslin_setting {
    uint32_t size;
    uint32_t flags;
    int64_t blocks;
    int64_t turned;                  /* of them, turned */
    muslin_len finished_width;       /* of the top without borders */
    muslin_len finished_length;
    muslin_len unfinished_width;     /* finished + 2 s + u */
    muslin_len unfinished_length;
    int64_t block_seams;             /* seams that join blocks into rows: rows x (columns - 1) */
    int64_t row_seams;               /* seams that join the rows: rows - 1 */
};
/* The size of a top of columns x rows blocks in a straight setting. MUSLIN_ERR_NOT_SQUARE when a quarter turn is
 * asked of a block that is not square; MUSLIN_ERR_RANGE when a side would pass MUSLIN_SIZE_MAX. Constant time.
 * Example: 3 x 3 blocks of 12 in finished: 36 in finished, 36 1/2 in unfinished. Since 0.1. */
MUSLIN_API muslin_status muslin_setting_straight(const struct muslin_setting_spec *spec, struct muslin_setting *out,
                                                 struct muslin_problem *problem);

/* The quarter turns (0 .. 3, clockwise) of the block in this column and row, both from 0: the first block is not
 * turned. Since 0.1. */
MUSLIN_API muslin_status muslin_setting_turn(int32_t turning, int64_t column, int64_t row, int32_t *quarter_turns);

/* Blocks from segments: `segments` of them joined along their long sides. */
struct muslin_block_spec {
    uint32_t size;
    uint32_t flags;               /* 0 */
    muslin_len segment_cut;       /* a, across the block */
    muslin_len set_unfinished;    /* unfinished width of the strip set: the segment's long side */
    int64_t segments;             /* 1 or more */
    muslin_len allowance;
    muslin_len take_up;
};
#define MUSLIN_BLOCK_SPEC_INIT { (uint32_t)sizeof(struct muslin_block_spec), 0, 0, 0, 2, 2032, 0 }
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
    muslin_len square_segment_cut;/* the segment cut that would make the block square, down to a tick; 0 if none */
    int32_t square;               /* 1 when width and height are equal */
    int32_t square_exact;         /* 1 when square_segment_cut makes it exactly square */
};
/* MUSLIN_ERR_SEAM_TOO_WIDE when segment or set would not be seen; MUSLIN_ERR_RANGE. Example: two segments 6 1/2 in
 * of a set 12 1/2 in wide: a block 12 1/2 in square unfinished, 12 in finished. Since 0.1. */
MUSLIN_API muslin_status muslin_block_from_segments(const struct muslin_block_spec *spec, struct muslin_block *out,
                                                    struct muslin_problem *problem);

/* ---- joins of strips end to end -------------------------------------------------------------------------------- */

enum muslin_join {
    MUSLIN_JOIN_BUTTED = 1,    /* edge to edge, nothing lost (batting; or a count that ignores the loss) */
    MUSLIN_JOIN_STRAIGHT = 2,  /* a straight seam: loses two allowances */
    MUSLIN_JOIN_DIAGONAL = 3,  /* square-ended strips laid at right angles: loses the strip's cut width */
    MUSLIN_JOIN_BIAS_ENDS = 4  /* ends already cut at 45 degrees: loses 2 sqrt 2 allowances, up to a tick */
};

/* What one join takes off the run, in ticks. Source: public handouts and geometry. Since 0.1. */
MUSLIN_API muslin_status muslin_join_loss(int32_t join, muslin_len strip_cut, muslin_len allowance, muslin_len *out,
                                          struct muslin_problem *problem);

struct muslin_run_spec {
    uint32_t size;
    uint32_t flags;            /* 0 */
    muslin_len length;         /* wanted in one run; 0 .. MUSLIN_LENGTH_MAX / 2 */
    muslin_len strip_length;   /* usable length of each strip */
    muslin_len strip_cut;      /* cut width of a strip */
    muslin_len allowance;      /* of the joins */
    int32_t join;              /* enum muslin_join */
    int32_t pad;               /* 0 */
};
#define MUSLIN_RUN_SPEC_INIT { (uint32_t)sizeof(struct muslin_run_spec), 0, 0, 325120, 20320, 2032, 2, 0 }
/* Writes the values above to the first `size` bytes of *spec. Since 0.1. */
MUSLIN_API muslin_status muslin_run_spec_init(struct muslin_run_spec *spec, uint32_t size);

struct muslin_run {
    uint32_t size;
    uint32_t flags;
    int64_t strips;             /* least n with n L - (n - 1) loss >= length; 0 when length is 0 */
    int64_t joins;              /* n - 1 */
    muslin_len loss_per_join;
    muslin_len joined;          /* the whole run, joined */
    muslin_len spare;           /* joined - length */
    muslin_len cloth_length;    /* n x strip_cut */
    muslin_len narrower_by;     /* each strip may be this much shorter before one more is needed, down */
    int32_t warnings;           /* MUSLIN_WARN_NO_SLACK when spare is 0 */
    int32_t pad;
};
/* Strips joined end to end into one run (borders, binding). MUSLIN_ERR_NO_YIELD when a join eats a whole strip and one
 * strip is not enough. Example: 294 in of strips 40 in long, straight 1/4 in seams: 8 strips. Since 0.1. */
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
    muslin_len unfinished_width;   /* of what it is sewn to; measure it through the middle */
    muslin_len unfinished_length;
    muslin_len finished_border;    /* finished width of the border, 1 or more */
    muslin_len allowance;
    muslin_len take_up;
    muslin_len usable_width;       /* of the cloth: the length of a strip across it */
    muslin_len mitre_extra;        /* mitred only: added to the exact least length of each piece */
    int32_t style;                 /* enum muslin_border_style */
    int32_t join;                  /* enum muslin_join, of strips across the width */
};
#define MUSLIN_BORDER_SPEC_INIT { (uint32_t)sizeof(struct muslin_border_spec), 0, 0, 0, 0, 2032, 0, 325120, 0, 1, 2 }
/* Writes the values above to the first `size` bytes of *spec. Since 0.1. */
MUSLIN_API muslin_status muslin_border_spec_init(struct muslin_border_spec *spec, uint32_t size);

struct muslin_border {
    uint32_t size;
    uint32_t flags;
    muslin_len cut_width;            /* of every strip: finished + 2 s + u */
    muslin_len side_cut_length;      /* of each of the two sides, as cut */
    muslin_len top_cut_length;       /* of top and of bottom, as cut */
    muslin_len cornerstone_cut;      /* side of four squares; 0 without cornerstones */
    muslin_len total_length;         /* of the four pieces */
    int64_t strips;                  /* across the width (joined in one run) or lengthwise pieces side by side */
    int64_t joins;
    muslin_len loss_per_join;
    muslin_len cloth_length;         /* for the strips, or along the cloth when cut lengthwise; cornerstones apart */
    muslin_len spare;                /* of the run; lengthwise: usable width left beside the pieces of the first panel */
    muslin_len unfinished_width;     /* of the top with this border on: the next border's input */
    muslin_len unfinished_length;
    muslin_len finished_width;
    muslin_len finished_length;
    uint32_t warnings;               /* MUSLIN_WARN_DIAGONAL_STRETCH, MUSLIN_WARN_NO_SLACK */
    uint32_t pad;
};
/* One border. Lengths are for edges measured raw to raw, so no allowance is added to a butted length. A mitred piece
 * needs L + 2 W + 2 sqrt 2 s (geometry), up to a tick, plus mitre_extra. Lengthwise pieces lie side by side, as many
 * as the usable width holds, longest first (MUSLIN_ERR_NO_FIT when not even one fits). Cornerstones come from a strip
 * of the same cut width and are not counted in total_length. Printed lengths are the arithmetic: measure the real top
 * through the middle in three places, cut to that, and ease to fit. MUSLIN_ERR_RANGE, MUSLIN_ERR_NO_YIELD.
 * Example: 38 1/2 x 50 in, 4 in border with cornerstones: cut 4 1/2 in, two of 50, two of 38 1/2, four squares
 * 4 1/2 in; 46 1/2 x 58 in. Since 0.1. */
MUSLIN_API muslin_status muslin_border_plan(const struct muslin_border_spec *spec, struct muslin_border *out,
                                            struct muslin_problem *problem);

#ifdef __cplusplus
}
#endif

#endif
