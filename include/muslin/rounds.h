/* muslin/rounds.h - what grows from the middle outwards: log cabins, mitred frames, medallions, pieced borders.
 *
 * SPDX-License-Identifier: MIT
 *
 * s is the allowance of an edge, u the take-up of a seam, so a seam takes m = 2 s + u; see seam.h.
 *
 * Every call
 *   Units       Lengths are ticks, 1 .. MUSLIN_SIZE_MAX unless a member says otherwise; allowance and take-up
 *               0 .. MUSLIN_SIZE_MAX / 8. A result may pass MUSLIN_SIZE_MAX by what seams and frames add.
 *   Rounding    Sizes with a root or a fraction in them are found exactly and rounded once, as the caller's
 *               muslin_rounding_spec asks. An ..._error member is the rounded value less the exact one, down to a tick.
 *   Statuses    MUSLIN_ERR_NULL: a spec, an array or an output is missing. MUSLIN_ERR_STRUCT_SIZE, _STRUCT_TAIL,
 *               _FLAGS: a struct breaks the rules of base.h. MUSLIN_ERR_RANGE: an input outside its range; the problem
 *               names it. MUSLIN_ERR_CHOICE: none of the listed choices. What else a call can return stands with it.
 *               Calls that fill rows also return MUSLIN_ERR_BUFFER when the rows do not fit. The ..._init calls return
 *               MUSLIN_ERR_NULL and MUSLIN_ERR_STRUCT_SIZE.
 *   Cost        Constant time unless a call says otherwise. Nothing allocates.
 *   Problem     Optional everywhere (null). For widths and rows its `at` is their number, from 0.
 */
#ifndef MUSLIN_ROUNDS_H
#define MUSLIN_ROUNDS_H

#include "setting.h"

#ifdef __cplusplus
extern "C" {
#endif

/* The most rounds of a log cabin or a medallion, and the most blocks of a log cabin that are counted together. */
#define MUSLIN_ROUNDS_MAX 1000
#define MUSLIN_LOGCABIN_BLOCKS_MAX 100000

/* ---- log cabins ------------------------------------------------------------------------------------------------ */

enum muslin_log_order {
    MUSLIN_LOG_ORDER_ROUND = 1,      /* each log turns the corner: four sides one after the other */
    MUSLIN_LOG_ORDER_COURTHOUSE = 2, /* courthouse steps: a side and its opposite, then the other two */
    MUSLIN_LOG_ORDER_QUARTER = 3     /* two neighbouring sides only: the centre stays in a corner */
};

enum muslin_log_turn {
    MUSLIN_LOG_TURN_CLOCKWISE = 1,
    MUSLIN_LOG_TURN_ANTICLOCKWISE = 2
};

/* The two groups of fabrics that a log cabin plays against each other, light and dark for instance: the logs sewn first
 * in each round (two of four, one of two), and the others. */
enum muslin_log_half {
    MUSLIN_LOG_HALF_FIRST = 1,
    MUSLIN_LOG_HALF_SECOND = 2
};

#define MUSLIN_LOGCABIN_GIVEN_CUT 1u /* centre and logs are given as cut, not finished */

struct muslin_logcabin_spec {
    uint32_t size;
    uint32_t flags;             /* MUSLIN_LOGCABIN_GIVEN_CUT or 0 */
    muslin_len centre_width;    /* finished, or cut with the flag */
    muslin_len centre_height;
    muslin_len log_width;       /* of every log, finished or cut as above; not used, and may be 0, where an array of
                                   widths is given */
    int64_t rounds;             /* 1 .. MUSLIN_ROUNDS_MAX */
    int64_t blocks;             /* alike, cut together; 1 .. MUSLIN_LOGCABIN_BLOCKS_MAX */
    muslin_len allowance;       /* s */
    muslin_len take_up;         /* u */
    muslin_len usable_width;    /* of the cloth: the length of a strip across it; 0: strips are not counted */
    muslin_len end_loss;        /* of each strip, where its ends are squared; 0 or more */
    int32_t order;              /* enum muslin_log_order */
    int32_t start;              /* enum muslin_side: the side of each round's first log */
    int32_t turn;               /* enum muslin_log_turn: where the next side lies */
    int32_t pad;                /* 0 */
};
/* Round and round, clockwise from the top, one block, 1/4 in seams, strips 40 in usable; sizes and rounds are still to
 * be given. */
#define MUSLIN_LOGCABIN_SPEC_INIT { sizeof(struct muslin_logcabin_spec), 0, 0, 0, 0, 0, 1, 2032, 0, 325120, 0, \
                                    1, 3, 1, 0 }
/* Writes the values above to the first `size` bytes of *spec. Since 1.0. */
MUSLIN_API muslin_status muslin_logcabin_spec_init(struct muslin_logcabin_spec *spec, uint32_t size);

struct muslin_logcabin {
    uint32_t size;
    uint32_t flags;
    muslin_len centre_cut_width;   /* of the middle patch, as cut */
    muslin_len centre_cut_height;
    muslin_len finished_width;     /* of the block */
    muslin_len finished_height;
    muslin_len unfinished_width;   /* of the block, outer seams still raw */
    muslin_len unfinished_height;
    int64_t logs;                  /* in one block */
    int64_t kinds;                 /* of strips: rows of muslin_logcabin_strips() */
    muslin_len first_length;       /* cut lengths of all logs of the first half, of all blocks, end to end */
    muslin_len second_length;      /* of the second half */
    muslin_len longest_log;        /* cut length */
    int64_t strips_least;          /* the plain running length over the strip, up, for each kind: no plan needs fewer */
    int64_t strips;                /* of the logs, cut without joins as muslin_logcabin_strips() says: at most so many
                                      are needed; 0 when not counted, as above */
    muslin_len cloth_length;       /* strips x their cut widths; the centres' strips apart */
    int32_t square;                /* 1 when the block is as wide as high */
    int32_t pad;
    muslin_len centre_strip_cut;   /* width of the strips the centres are cut from: their height or their width as cut,
                                      whichever takes less cloth, then the lesser; 0 when not counted, as all below */
    int64_t centres_per_strip;     /* that a strip gives */
    int64_t centre_strips;         /* for all blocks, up */
    muslin_len centre_cloth_length; /* centre_strips x centre_strip_cut */
};
/* A log cabin block: its size, its logs, and the strips for all blocks. Every log is as long as the raw edge it is sewn
 * to: it is cut as long as the block there measures unfinished. `widths` (null with n 0) gives the logs widths of their
 * own: n = rounds, one for each round, or n = the number of logs, one for each in sewing order; else MUSLIN_ERR_RANGE.
 * A row of strips is counted for each half and cut width (see muslin_logcabin_strips()). MUSLIN_ERR_SEAM_TOO_WIDE when
 * a centre or a log, given as cut, is m or less; MUSLIN_ERR_RANGE also when the finished block would pass
 * MUSLIN_SIZE_MAX; MUSLIN_ERR_NO_YIELD when the longest log of a half is longer than the strip without its end loss
 * (join strips first, and give the joined length as usable width). O(logs x kinds). Source: geometry. Example: centre 2
 * in, 3 rounds of logs 1 in finished, 20 blocks: 8 in finished, 8 1/2 in unfinished, 12 logs each, the longest cut 8
 * 1/2 in, and 2 strips of 2 1/2 in for the centres. Since 1.0. */
MUSLIN_API muslin_status muslin_logcabin_plan(const struct muslin_logcabin_spec *spec, const muslin_len *widths,
                                              size_t n, struct muslin_logcabin *out, struct muslin_problem *problem);

/* One log, in sewing order. */
struct muslin_logcabin_log {
    uint32_t size;
    uint32_t flags;
    int64_t round;                 /* from 1 */
    muslin_len cut_length;         /* the raw edge it is sewn to */
    muslin_len cut_width;          /* of its strip */
    muslin_len finished_length;    /* as seen */
    muslin_len finished_width;
    muslin_len running_length;     /* cut lengths so far, of one block */
    muslin_len unfinished_width;   /* what the block must measure now, this log sewn on and pressed */
    muslin_len unfinished_height;
    int32_t side;                  /* enum muslin_side */
    int32_t half;                  /* enum muslin_log_half */
    int32_t closes_round;          /* 1 when it is its round's last: measure here, and square up */
    int32_t pad;
};
/* The logs of one block in sewing order (ask-then-fill), as many as muslin_logcabin.logs. Statuses as for
 * muslin_logcabin_plan(), but the strips are not asked about. O(logs). Source: geometry. Example: centre 2 in, logs 1
 * in finished, from the top clockwise: cut lengths 2 1/2, 3 1/2, 3 1/2, 4 1/2 in; the block then measures 4 1/2 in.
 * Since 1.0. */
MUSLIN_API muslin_status muslin_logcabin_logs(const struct muslin_logcabin_spec *spec, const muslin_len *widths,
                                              size_t n, struct muslin_logcabin_log *rows, size_t row_size,
                                              size_t capacity, size_t *count, struct muslin_problem *problem);

/* The strips of one half and one cut width, for all blocks. */
struct muslin_logcabin_strip {
    uint32_t size;
    uint32_t flags;
    muslin_len cut_width;     /* what its logs share */
    int64_t pieces;           /* logs */
    muslin_len longest;       /* of them, cut length */
    muslin_len length;        /* cut lengths end to end */
    int64_t strips_least;     /* length over the usable width without its end loss, up; 0 when not counted */
    int64_t strips;           /* cut without joins; 0 when not counted */
    muslin_len cloth_length;  /* strips x cut_width */
    int32_t half;             /* enum muslin_log_half */
    int32_t pad;
};
/* Strips for all blocks, a row for each half and cut width, the first half first, in sewing order of their first logs
 * (ask-then-fill). strips_least is the plain book sum, which forgets that a log does not run on from one strip to the
 * next. `strips` is a plan that works: the row's logs in the reverse order of sewing, each for all blocks before the
 * next, a log from the strip at hand while it reaches, else from a new one, and the old one is done with. It can be
 * more than the best plan, never fewer. Statuses as for muslin_logcabin_plan(). O(logs x kinds). Source: common
 * practice, no source, for both ways; geometry. Example: 20 blocks, centre 2 in, 3 rounds of logs 1 in finished, strips
 * 40 in: of the first half 600 in, by length 15 strips; cut so, 16. Since 1.0. */
MUSLIN_API muslin_status muslin_logcabin_strips(const struct muslin_logcabin_spec *spec, const muslin_len *widths,
                                                size_t n, struct muslin_logcabin_strip *rows, size_t row_size,
                                                size_t capacity, size_t *count, struct muslin_problem *problem);

/* ---- log cabins, backwards ------------------------------------------------------------------------------------- */

struct muslin_logcabin_fit_spec {
    uint32_t size;
    uint32_t flags;            /* 0 */
    muslin_len wanted;         /* finished side of the block */
    muslin_len centre;         /* finished side of the centre, 1 or more and less than wanted */
    int64_t rounds;            /* 1 .. MUSLIN_ROUNDS_MAX; for muslin_logcabin_log_for() */
    muslin_len log_finished;   /* for muslin_logcabin_rounds_for() */
    muslin_len allowance;      /* s */
    muslin_len take_up;        /* u */
    int32_t order;             /* enum muslin_log_order */
    int32_t pad;               /* 0 */
};
/* Round and round, 1/4 in seams; sizes and rounds are still to be given. */
#define MUSLIN_LOGCABIN_FIT_SPEC_INIT { sizeof(struct muslin_logcabin_fit_spec), 0, 0, 0, 0, 0, 2032, 0, 1, 0 }
/* Writes the values above to the first `size` bytes of *spec. Since 1.0. */
MUSLIN_API muslin_status muslin_logcabin_fit_spec_init(struct muslin_logcabin_fit_spec *spec, uint32_t size);

struct muslin_logcabin_fit {
    uint32_t size;
    uint32_t flags;
    int64_t rounds;                /* as given, or found */
    int64_t logs_across;           /* in the block's width: 2 x rounds, or rounds with MUSLIN_LOG_ORDER_QUARTER */
    muslin_len exact_numerator;    /* the log that finishes the block exactly: wanted - centre ... */
    int64_t exact_denominator;     /* ... over logs_across */
    muslin_len log_finished;       /* as given, or found */
    muslin_len log_cut;            /* log_finished and a seam */
    muslin_len block_finished;     /* centre + logs_across x log_finished */
    muslin_len rest;               /* wanted - block_finished; negative when the block comes out larger */
    muslin_len centre_to_fit;      /* the finished centre with which the block comes out as wanted: centre + rest; no
                                      centre does when it is 0 or less */
    muslin_len next_finished;      /* the block with one round more */
};
/* The log width that finishes a block of `wanted` with so many rounds round the centre, brought to the grid, and what
 * the block then becomes. MUSLIN_ERR_NO_FIT when the rounded log would be nothing (problem: the log, and one tick).
 * log_finished is not used, 0 or more. Source: geometry. Example: a 12 in block round a 2 in centre in 3 rounds, to the
 * nearest 1/8 in: 10/6 in, so logs 1 5/8 in finished, cut 2 1/8 in, and the block finishes at 11 3/4 in. Since 1.0. */
MUSLIN_API muslin_status muslin_logcabin_log_for(const struct muslin_logcabin_fit_spec *spec,
                                                 const struct muslin_rounding_spec *rounding,
                                                 struct muslin_logcabin_fit *out, struct muslin_problem *problem);

/* How many rounds of such logs fit round the centre within `wanted`; 0 when not even one does, and more than
 * MUSLIN_ROUNDS_MAX when they do, which the other calls refuse. `rounds` of the spec is not used, 0 ..
 * MUSLIN_ROUNDS_MAX; exact_numerator and exact_denominator are 0. Source: geometry. Example: within 10 in, round a 2 in
 * centre with logs 1 1/2 in finished: 2 rounds, 8 in finished, 2 in short of it; with a 4 in centre it would come out.
 * Since 1.0. */
MUSLIN_API muslin_status muslin_logcabin_rounds_for(const struct muslin_logcabin_fit_spec *spec,
                                                    struct muslin_logcabin_fit *out, struct muslin_problem *problem);

/* ---- mitred frames --------------------------------------------------------------------------------------------- */

/* Four pieces with 45 degree ends round an opening, cut by template: top and bottom alike, the two sides alike. */
struct muslin_frame_spec {
    uint32_t size;
    uint32_t flags;              /* 0 */
    muslin_len opening_width;    /* finished, as all sizes here */
    muslin_len opening_height;
    muslin_len frame_width;      /* W */
    muslin_len allowance;        /* s */
    muslin_len take_up;          /* u */
    muslin_len usable_width;     /* of the cloth: the length of a strip across it; 0: strips are not counted */
};
/* 1/4 in seams, strips 40 in usable; the sizes are still to be given. */
#define MUSLIN_FRAME_SPEC_INIT { sizeof(struct muslin_frame_spec), 0, 0, 0, 0, 2032, 0, 325120 }
/* Writes the values above to the first `size` bytes of *spec. Since 1.0. */
MUSLIN_API muslin_status muslin_frame_spec_init(struct muslin_frame_spec *spec, uint32_t size);

struct muslin_frame {
    uint32_t size;
    uint32_t flags;
    muslin_len cut_width;              /* of the strip: W + m */
    muslin_len top_long;               /* raw long edge of top and bottom, from tip to tip, rounded */
    muslin_len top_long_error;         /* less the exact one, down to a tick */
    muslin_len top_short;              /* raw short edge: 2 cut_width less than the long one, as its ends leave it */
    muslin_len side_long;              /* the same of left and right */
    muslin_len side_long_error;        /* less the exact one, down to a tick */
    muslin_len side_short;             /* 2 cut_width less than side_long */
    muslin_len strip_length;           /* of one strip that holds all four as cut, each turned against the one before */
    muslin_len finished_width;         /* of the whole */
    muslin_len finished_height;
    muslin_len unfinished_width;       /* of the whole, outer seams still raw */
    muslin_len unfinished_height;
    int64_t strips;                    /* across the cloth, 1 to 4, the fewest that hold the four pieces without joins;
                                          0 when not counted, or when a piece is longer than such a strip */
    muslin_len cloth_length;           /* strips x cut_width */
};
/* Raw edges of the pieces, every seam, mitre included, with its m / 2 on each piece. Round an opening L, with sharp
 * tips: long L + 2 W + (1 + sqrt 2) m, short L + (sqrt 2 - 1) m; for an unfinished side L + m and no take-up, long is
 * what muslin_border_plan() gives a mitred piece. The long edge is rounded and the piece cut from it, so the short edge
 * is off by as much. A strip holds the pieces nested: what their long edges have beyond the cut width, and the cut
 * width once more for the slanting ends. Round up to be sure of the tips. MUSLIN_ERR_NO_FIT when rounding leaves
 * nothing of a short edge (problem: the grid, limit 0). Source: geometry. Example: a 6 in square opening, frame 2 in,
 * 1/4 in seams, up to 1/8 in: strips cut 2 1/2 in, long 11 1/4 in, short 6 1/4 in, and one strip of 37 1/2 in holds all
 * four. Since 1.0. */
MUSLIN_API muslin_status muslin_frame_pieces(const struct muslin_frame_spec *spec,
                                             const struct muslin_rounding_spec *rounding, struct muslin_frame *out,
                                             struct muslin_problem *problem);

enum muslin_frame_piece {
    MUSLIN_FRAME_PIECE_TOP = 1, /* top or bottom */
    MUSLIN_FRAME_PIECE_SIDE = 2 /* left and right */
};
enum muslin_frame_line {
    MUSLIN_FRAME_LINE_CUT = 1,     /* the raw edge */
    MUSLIN_FRAME_LINE_FINISHED = 2 /* the stitched line */
};

/* A corner of a piece: x along the raw long edge from its left tip, y from that edge towards the opening. */
struct muslin_frame_corner {
    uint32_t size;
    uint32_t flags;
    muslin_len x;        /* rounded */
    muslin_len x_error;  /* less the exact one, down to a tick */
    muslin_len y;        /* rounded */
    muslin_len y_error;  /* less the exact one, down to a tick */
    int32_t piece;       /* enum muslin_frame_piece */
    int32_t line;        /* enum muslin_frame_line */
};
/* The outlines for a template: 16 rows, top then side, cut then finished, each from the left outer corner to the right
 * one and back along the inner edge (ask-then-fill). Source: geometry. Example: a 6 in square opening, frame 2 in, 1/4
 * in seams: the cut outline goes from 0, 0 over about 11.207, 0 and 8.707, 2 1/2 to 2 1/2, 2 1/2. Since 1.0. */
MUSLIN_API muslin_status muslin_frame_outline(const struct muslin_frame_spec *spec,
                                              const struct muslin_rounding_spec *rounding,
                                              struct muslin_frame_corner *rows, size_t row_size, size_t capacity,
                                              size_t *count, struct muslin_problem *problem);

/* ---- medallions ------------------------------------------------------------------------------------------------ */

enum muslin_round_kind {
    MUSLIN_ROUND_PLAIN = 1,  /* a border of whole strips */
    MUSLIN_ROUND_PIECED = 2, /* a border of equal units side by side */
    MUSLIN_ROUND_COPING = 3  /* plain strips just wide enough that the pieced round behind them comes out */
};

enum muslin_round_corner {
    MUSLIN_ROUND_CORNER_SQUARES = 1, /* each run is a side's length, and four squares stand in the corners */
    MUSLIN_ROUND_CORNER_THROUGH = 2  /* sides first; top and bottom run through the corners */
};

#define MUSLIN_MEDALLION_EQUAL_COPING 1u /* coping strips must be equally wide on all four sides */

struct muslin_medallion_spec {
    uint32_t size;
    uint32_t flags;              /* MUSLIN_MEDALLION_EQUAL_COPING or 0 */
    muslin_len centre_width;     /* finished */
    muslin_len centre_height;
    muslin_len allowance;        /* s */
    muslin_len take_up;          /* u */
};
/* 1/4 in seams; the centre is still to be given. */
#define MUSLIN_MEDALLION_SPEC_INIT { sizeof(struct muslin_medallion_spec), 0, 0, 0, 2032, 0 }
/* Writes the values above to the first `size` bytes of *spec. Since 1.0. */
MUSLIN_API muslin_status muslin_medallion_spec_init(struct muslin_medallion_spec *spec, uint32_t size);

/* A round, from the inside outwards: the first five members are given, the others are answered. Left and right are the
 * sides, which run along the height; top and bottom run along the width. Coping that is not needed on the sides has a
 * side_pair of 0: then side_finished, side_cut and side_length are 0 too, and likewise for top and bottom; there are
 * corner squares only where neither pair is 0. */
struct muslin_medallion_row {
    uint32_t size;
    uint32_t flags;                /* 0 */
    int32_t kind;                  /* enum muslin_round_kind */
    int32_t corner;                /* enum muslin_round_corner */
    muslin_len width;              /* finished width of the border, of PIECED the depth of a unit; of COPING the least
                                      width wanted, which may be 0 */
    muslin_len repeat;             /* PIECED: finished length of a unit along the border; else not used, 0 or more */
    muslin_len most;               /* COPING: the greatest width allowed, width or more; else not used, 0 or more */
    muslin_len before_width;       /* out: finished, within this round */
    muslin_len before_height;
    muslin_len after_width;        /* finished, with this round */
    muslin_len after_height;
    muslin_len side_pair;          /* finished width of both side borders together: after_width - before_width */
    muslin_len top_pair;           /* of top and bottom, so */
    muslin_len side_finished;      /* of one of them, half a pair, down: where a coping pair is odd, one of the two is
                                      a tick wider */
    muslin_len top_finished;       /* of top or bottom, so */
    muslin_len side_cut;           /* width of a side strip as cut, of PIECED the unfinished depth; 0 without a strip */
    muslin_len top_cut;            /* of top or bottom, so */
    muslin_len side_length;        /* length of a side as cut, of PIECED unfinished: what it must measure */
    muslin_len top_length;         /* of top or bottom, so */
    int64_t side_units;            /* PIECED: whole units in each side ... */
    int64_t top_units;             /* ... and in top and bottom each */
    int64_t units;                 /* in the round: 2 x both, corner squares apart */
    int64_t corner_squares;        /* 4 or 0; cut as wide as side_cut and as high as top_cut */
    muslin_len side_rest;          /* PIECED: of the run, beyond its whole units */
    muslin_len top_rest;           /* of top or bottom, so */
    muslin_len unit_unfinished;    /* PIECED: repeat + m */
    int32_t divides;               /* 1 unless a PIECED round leaves a rest on a side or on the top */
    int32_t unequal;               /* 1 when side and top differ in width: COPING only */
    muslin_len after_unfinished_width; /* after_width + m: what the top must measure with this round, and how long a row
                                          for top or bottom is with its corner squares */
    muslin_len after_unfinished_height;
};
/* A plain round with corner squares; its width is still to be given. */
#define MUSLIN_MEDALLION_ROW_INIT \
    { sizeof(struct muslin_medallion_row), 0, 1, 1, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, \
      0, 0, 0, 0 }
/* Writes the values above to the first `size` bytes of *row. Since 1.0. */
MUSLIN_API muslin_status muslin_medallion_row_init(struct muslin_medallion_row *row, uint32_t size);

struct muslin_medallion {
    uint32_t size;
    uint32_t flags;
    muslin_len finished_width; /* with all rounds */
    muslin_len finished_height;
    muslin_len unfinished_width; /* with all rounds, outer seams still raw */
    muslin_len unfinished_height;
    int64_t undivided;       /* pieced rounds that leave a rest */
    int64_t unequal;         /* coping rounds whose sides differ from top and bottom */
    int64_t units;           /* in all pieced rounds */
    int64_t corner_squares;  /* in all rounds */
};
/* Grows a medallion round by round and answers into the caller's n rows (1 .. MUSLIN_ROUNDS_MAX). A pieced round that
 * leaves a rest is no failure: its row says so. A COPING round stands directly before a PIECED one (else
 * MUSLIN_ERR_CHOICE, naming the kind). With the next round's repeat r, the least k with k r >= run + 2 width is taken
 * for the sides and for top and bottom apart, and the strips get (k r - run) / 2; run is the side, or, for top and
 * bottom that run through the corners, the side with two unit depths. MUSLIN_ERR_NO_FIT when equal strips are asked for
 * and no width does for both (limit 0), or else when that passes `most` on any side (the limit is the wider strip, with
 * which as `most` the round comes out).
 * MUSLIN_ERR_RANGE also when `most` is below `width`, or the finished quilt would pass MUSLIN_SIZE_MAX. On failure no
 * row is touched. Two passes. Source: geometry; the coping strip is common practice, no source. Example: centre 20 in,
 * then coping of 1/2 to 3 in before a border of 4 in squares: coping 2 in, cut 2 1/2 in, and 6 squares a side, 24 and 4
 * in the corners; 32 in finished. Since 1.0. */
MUSLIN_API muslin_status muslin_medallion_plan(const struct muslin_medallion_spec *spec,
                                               struct muslin_medallion_row *rows, size_t row_size, size_t n,
                                               struct muslin_medallion *out, struct muslin_problem *problem);

/* ---- borders that must divide ---------------------------------------------------------------------------------- */

struct muslin_repeat_spec {
    uint32_t size;
    uint32_t flags;               /* 0 */
    muslin_len side_finished;     /* the run to be filled */
    muslin_len repeat_finished;   /* length of a unit along it */
    int64_t spacers;              /* that share what the units leave; 0 .. MUSLIN_COUNT_MAX */
    muslin_len spacer_least;      /* finished, 0 or more; without spacers not used */
    muslin_len allowance;         /* s */
    muslin_len take_up;           /* u */
};
/* No spacers, 1/4 in seams; side and repeat are still to be given. */
#define MUSLIN_REPEAT_SPEC_INIT { sizeof(struct muslin_repeat_spec), 0, 0, 0, 0, 0, 2032, 0 }
/* Writes the values above to the first `size` bytes of *spec. Since 1.0. */
MUSLIN_API muslin_status muslin_repeat_spec_init(struct muslin_repeat_spec *spec, uint32_t size);

struct muslin_repeat {
    uint32_t size;
    uint32_t flags;
    int64_t units_below;           /* the most that do not pass the side */
    muslin_len rest_below;         /* what they leave */
    int64_t units_above;           /* the fewest that reach it */
    muslin_len over_above;         /* how far they pass it */
    int64_t units_nearest;         /* of the two, the nearer; the larger when equally near */
    muslin_len repeat_below;       /* the repeat with which units_below fill the side, rounded; 0 without a unit */
    muslin_len repeat_below_error; /* less the exact one, down to a tick */
    muslin_len repeat_above;       /* the repeat with which units_above fill it */
    muslin_len repeat_above_error; /* less the exact one, down to a tick */
    muslin_len unit_unfinished;    /* repeat_finished + m */
    int64_t units;                 /* with spacers: the most that leave every spacer its least; else units_below */
    muslin_len shared;             /* what they leave; the exact spacer is this over `spacers` */
    muslin_len spacer_finished;    /* rounded; 0 without spacers */
    muslin_len spacer_cut;         /* spacer_finished + m; 0 without */
    muslin_len left_over;          /* shared - spacers x spacer_finished; negative when they pass the side */
    int32_t divides;               /* 1 when the units alone fill the side */
    int32_t pad;
    muslin_len below_left_over;    /* side - units_below x repeat_below: what rounding leaves, negative when they pass
                                      the side; 0 without a unit. The exact repeat is the side over the units */
    muslin_len above_left_over;    /* side - units_above x repeat_above */
};
/* Units of one repeat along a side: how many, what is left, what repeat would come out, and spacers that share what is
 * left. MUSLIN_ERR_NO_FIT when the spacers alone pass the side (problem: the side, and what they need). Source:
 * geometry. Example: 50 in of 4 in units with two spacers, to 1/8 in: 12 units leave 2 in, spacers 1 in finished, cut
 * 1 1/2 in; with a repeat of 4 1/8 in, 12 units are 1/2 in short. Since 1.0. */
MUSLIN_API muslin_status muslin_repeat_plan(const struct muslin_repeat_spec *spec,
                                            const struct muslin_rounding_spec *rounding, struct muslin_repeat *out,
                                            struct muslin_problem *problem);

struct muslin_common_repeat {
    uint32_t size;
    uint32_t flags;
    muslin_len common;        /* the greatest length that divides both sides */
    int64_t parts;            /* the repeat is this part of it: common / parts exactly */
    muslin_len repeat;        /* finished, rounded */
    muslin_len repeat_error;  /* less the exact one, down to a tick */
    int64_t across;           /* units along the width */
    int64_t down;             /* units along the height */
};
/* The largest repeat from `least` (0 or more) to `most` (1 or more) that divides both sides of a quilt: a whole part of
 * their greatest common measure. MUSLIN_ERR_RANGE also when most is below least; MUSLIN_ERR_NO_FIT when the largest
 * that does not pass `most` is below `least` (limit 0). O(log size). Source: geometry. Example: 42 x 48 in, 2 to 4 in:
 * 3 in, 14 units across and 16 down. Since 1.0. */
MUSLIN_API muslin_status muslin_repeat_common(muslin_len width, muslin_len height, muslin_len least, muslin_len most,
                                              const struct muslin_rounding_spec *rounding,
                                              struct muslin_common_repeat *out, struct muslin_problem *problem);

/* ---- borders of squares on point ------------------------------------------------------------------------------- */

/* The most squares that muslin_point_border_spec may ask for. */
#define MUSLIN_POINT_BORDER_SQUARES_MAX 536870912

/* Squares on their points in one row, tip to tip, set-in triangles between them, half ones at the row's ends. */
struct muslin_point_border_spec {
    uint32_t size;
    uint32_t flags;               /* 0 */
    muslin_len side_finished;     /* the run to be filled */
    muslin_len diagonal_finished; /* of a square: the depth of the border; 0: as `squares` need it to fill the side */
    int64_t squares;              /* in the run, 1 .. MUSLIN_POINT_BORDER_SQUARES_MAX, when no diagonal is given; else
                                     not used, 0 or more */
    int64_t runs;                 /* alike, counted together; 1 .. MUSLIN_COUNT_MAX */
    muslin_len allowance;         /* s */
    muslin_len take_up;           /* u */
};
/* One run, 1/4 in seams; its size is still to be given. */
#define MUSLIN_POINT_BORDER_SPEC_INIT { sizeof(struct muslin_point_border_spec), 0, 0, 0, 0, 1, 2032, 0 }
/* Writes the values above to the first `size` bytes of *spec. Since 1.0. */
MUSLIN_API muslin_status muslin_point_border_spec_init(struct muslin_point_border_spec *spec, uint32_t size);

struct muslin_point_border {
    uint32_t size;
    uint32_t flags;
    muslin_len diagonal_numerator;    /* the finished diagonal D, exactly: this over ... */
    int64_t diagonal_denominator;     /* ... this, 1 when it was given */
    muslin_len diagonal_finished;     /* rounded as `measuring` */
    muslin_len diagonal_error;        /* less the exact one, down to a tick */
    int64_t squares_per_run;          /* as many as fit whole */
    muslin_len rest;                  /* of the side, beyond the squares */
    muslin_len square_finished;       /* D / sqrt 2, rounded as `measuring` */
    muslin_len square_finished_error; /* less the exact one, down to a tick */
    muslin_len square_cut;            /* D / sqrt 2 + m, rounded as `cutting`: also the strip squares are cut from */
    muslin_len square_cut_error;      /* less the exact one, down to a tick */
    muslin_len setting_cut;           /* a square cut twice, corner to corner, for four triangles: D + (1 + sqrt 2) m */
    muslin_len setting_cut_error;     /* less the exact one, down to a tick */
    muslin_len end_cut;               /* a square cut once for two half triangles: D / 2 + (1 + 1 / sqrt 2) m */
    muslin_len end_cut_error;         /* less the exact one, down to a tick */
    muslin_len border_unfinished;     /* depth of the border: D, rounded, + m */
    int64_t squares;                  /* in all runs */
    int64_t setting_triangles;        /* two for each pair of neighbours */
    int64_t setting_squares;          /* to cut for them, a quarter each, up */
    int64_t end_triangles;            /* four a run */
    int64_t end_squares;              /* two a run */
    muslin_len run_longer_by;         /* what rounding makes of a run: its squares as cut, sewn with the seams given,
                                         less as many of D, to the nearest tick; negative when shorter */
};
/* A pieced border of squares on point: sizes to cut, counts, and what the side leaves. The long edges of the setting
 * triangles lie on the border's edge, with the grain. `cutting` rounds what is cut and `measuring` what is reported as
 * finished; in the problem their members have `at` 0 and 1. MUSLIN_ERR_RANGE also when the squares would be less than a
 * tick from tip to tip; MUSLIN_ERR_NO_FIT when not one of the given diagonal fits the side (problem: the side, and the
 * diagonal), or when rounding leaves nothing of a square but its seams (the grid, limit 0). Sources: Why I cut strips
 * at 1.91 inches for that border (blog, 2008) for the squares, geometry for the triangles. Example: diagonal 2 in, 1/4
 * in seams, a side of 40 in, up to 1/64 in: strips cut 1 59/64 in, 20 squares, 38 setting triangles. Since 1.0. */
MUSLIN_API muslin_status muslin_point_border_plan(const struct muslin_point_border_spec *spec,
                                                  const struct muslin_rounding_spec *cutting,
                                                  const struct muslin_rounding_spec *measuring,
                                                  struct muslin_point_border *out, struct muslin_problem *problem);

#ifdef __cplusplus
}
#endif

#endif
