/* rounds_frame.c - mitred frames, cut by template.
 *
 * SPDX-License-Identifier: MIT
 *
 * Where a 45 degree seam meets the border's edge, an offset of m / 2 on both moves the raw corner along the edge by
 * (1 + sqrt 2) m / 2: outwards at the long edge, and by (sqrt 2 - 1) m / 2 at the short one. */
#include "rounds_inside.h"

muslin_status muslin_frame_spec_init(struct muslin_frame_spec *spec, uint32_t size)
{
    const struct muslin_frame_spec initial = MUSLIN_FRAME_SPEC_INIT;
    return msl_init_struct(spec, size, &initial, (uint32_t)sizeof initial, (uint32_t)sizeof initial);
}

/* A request read, and its rounding. */
struct frame {
    struct muslin_frame_spec spec;
    struct muslin_rounding_spec how;
    muslin_len taken; /* m */
};

static void read_frame(struct msl_check *check, struct frame *frame, const struct muslin_frame_spec *spec,
                       const struct muslin_rounding_spec *rounding)
{
    struct muslin_frame_spec *s = &frame->spec;
    msl_read_struct(check, MUSLIN_ARG_SPEC, s, (uint32_t)sizeof *s, (uint32_t)sizeof *s, 0, spec);
    msl_want_some_size(check, MUSLIN_ARG_CENTRE_WIDTH, s->opening_width);
    msl_want_some_size(check, MUSLIN_ARG_CENTRE_HEIGHT, s->opening_height);
    msl_want_some_size(check, MUSLIN_ARG_BORDER_WIDTH, s->frame_width);
    msl_want_seams(check, s->allowance, s->take_up);
    msl_want_size(check, MUSLIN_ARG_USABLE_WIDTH, s->usable_width);
    msl_read_rounding(check, &frame->how, rounding);
    if (check->status == MUSLIN_OK)
        frame->taken = msl_taken(s->allowance, s->take_up);
}

/* ---- pieces ------------------------------------------------------------------------------------------------------ */

/* The long edge round an opening: L + 2 W + (1 + sqrt 2) m. */
static muslin_len long_edge(const struct frame *frame, muslin_len opening, muslin_len *error)
{
    struct msl_surd exact = msl_surd_of(opening + 2 * frame->spec.frame_width + frame->taken, frame->taken, 2, 1);
    return msl_round_once(&exact, &frame->how, error);
}

/* The fewest strips with room for `room` of middles that hold two pieces each of two middles. Where three fit on one,
 * two and one do no better than two and two. */
static int64_t strips_for(muslin_len room, muslin_len shorter, muslin_len longer)
{
    if (longer > room)
        return 0;
    if (2 * (shorter + longer) <= room)
        return 1;
    if (shorter + longer <= room)
        return 2;
    return 2 * shorter <= room ? 3 : 4;
}

static void find_pieces(struct muslin_frame *out, const struct frame *frame)
{
    const struct muslin_frame_spec *s = &frame->spec;
    muslin_len m = frame->taken;
    out->cut_width = s->frame_width + m;
    out->top_long = long_edge(frame, s->opening_width, &out->top_long_error);
    out->side_long = long_edge(frame, s->opening_height, &out->side_long_error);
    out->top_short = out->top_long - 2 * out->cut_width;
    out->side_short = out->side_long - 2 * out->cut_width;
    out->finished_width = s->opening_width + 2 * s->frame_width;
    out->finished_height = s->opening_height + 2 * s->frame_width;
    out->unfinished_width = out->finished_width + m;
    out->unfinished_height = out->finished_height + m;
}

/* A piece takes its middle, its long edge less the cut width; each strip the cut width once more. */
static void find_strips(struct muslin_frame *out, muslin_len usable)
{
    muslin_len top = out->top_long - out->cut_width;
    muslin_len side = out->side_long - out->cut_width;
    out->strip_length = 2 * (top + side) + out->cut_width;
    out->strips = strips_for(usable - out->cut_width, top < side ? top : side, top < side ? side : top);
    out->cloth_length = out->strips * out->cut_width;
}

muslin_status muslin_frame_pieces(const struct muslin_frame_spec *spec, const struct muslin_rounding_spec *rounding,
                                  struct muslin_frame *out, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct frame frame = { 0 };
    struct muslin_frame pieces = { 0 };
    read_frame(&check, &frame, spec, rounding);
    msl_want_output(&check, out, (uint32_t)sizeof *out);
    if (check.status != MUSLIN_OK)
        return check.status;
    find_pieces(&pieces, &frame);
    if (pieces.top_short <= 0 || pieces.side_short <= 0)
        return msl_fail(&check, MUSLIN_ERR_NO_FIT, MUSLIN_ARG_GRID, frame.how.grid, 0);
    find_strips(&pieces, frame.spec.usable_width);
    msl_write_struct(out, &pieces, (uint32_t)sizeof pieces);
    return MUSLIN_OK;
}

/* ---- outlines ---------------------------------------------------------------------------------------------------- */

enum { LINES = 2, CORNERS = 4, PIECES = 2 };

/* Twice a corner's place: x = openings L + frames W + seams m + roots sqrt 2 m, y = up_frames W + up_seams m. */
struct place {
    int32_t openings;
    int32_t frames;
    int32_t seams;
    int32_t roots;
    int32_t up_frames;
    int32_t up_seams;
};

static const struct place places[LINES][CORNERS] = {
    { { 0, 0, 0, 0, 0, 0 }, { 2, 4, 2, 2, 0, 0 }, { 2, 2, 0, 2, 2, 2 }, { 0, 2, 2, 0, 2, 2 } },
    { { 0, 0, 1, 1, 0, 1 }, { 2, 4, 1, 1, 0, 1 }, { 2, 2, 1, 1, 2, 1 }, { 0, 2, 1, 1, 2, 1 } }
};

static struct muslin_frame_corner corner_of(const struct frame *frame, int32_t piece, int32_t line, int32_t corner)
{
    const struct muslin_frame_spec *s = &frame->spec;
    const struct place *at = &places[line - MUSLIN_FRAME_LINE_CUT][corner];
    muslin_len opening = piece == MUSLIN_FRAME_PIECE_TOP ? s->opening_width : s->opening_height;
    struct msl_surd x = msl_surd_of(at->openings * opening + at->frames * s->frame_width + at->seams * frame->taken,
                                    at->roots * frame->taken, 2, 2);
    struct muslin_frame_corner row = { 0 };
    row.piece = piece;
    row.line = line;
    row.x = msl_round_once(&x, &frame->how, &row.x_error);
    row.y = msl_divide_once(at->up_frames * s->frame_width + at->up_seams * frame->taken, 2, &frame->how,
                            &row.y_error);
    return row;
}

muslin_status muslin_frame_outline(const struct muslin_frame_spec *spec, const struct muslin_rounding_spec *rounding,
                                   struct muslin_frame_corner *rows, size_t row_size, size_t capacity, size_t *count,
                                   struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct frame frame = { 0 };
    size_t index = 0;
    read_frame(&check, &frame, spec, rounding);
    if (!msl_rows_wanted(&check, rows, row_size, (uint32_t)sizeof *rows, capacity, count, PIECES * LINES * CORNERS))
        return check.status;
    for (int32_t piece = MUSLIN_FRAME_PIECE_TOP; piece <= MUSLIN_FRAME_PIECE_SIDE; piece++)
        for (int32_t line = MUSLIN_FRAME_LINE_CUT; line <= MUSLIN_FRAME_LINE_FINISHED; line++)
            for (int32_t corner = 0; corner < CORNERS; corner++) {
                struct muslin_frame_corner row = corner_of(&frame, piece, line, corner);
                msl_write_row(rows, row_size, index++, &row, (uint32_t)sizeof row);
            }
    return MUSLIN_OK;
}
