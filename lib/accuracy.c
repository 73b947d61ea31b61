/* accuracy.c - small errors added up: the worst case, and what chance makes of it.
 *
 * SPDX-License-Identifier: MIT
 *
 * After the checks an error is at most 2^27 and a count below 2^31, so a sum of a few errors times a count fits 64
 * bits, and a square of an error times a count fits 86. */
#include "muslin/accuracy.h"

#include "surd.h"

static void want_errors(struct msl_check *check, muslin_len seam_error, muslin_len cut_error)
{
    msl_want_seam(check, MUSLIN_ARG_SEAM_ERROR, seam_error);
    msl_want_seam(check, MUSLIN_ARG_CUT_ERROR, cut_error);
}

/* seams x e^2 + cuts x c^2: the square of the likely error. */
static struct msl_wide likely_square(int64_t seams, muslin_len seam_error, int64_t cuts, muslin_len cut_error)
{
    return msl_wide_add(msl_wide_multiply(seam_error * seam_error, seams),
                        msl_wide_multiply(cut_error * cut_error, cuts));
}

static muslin_len root_up(struct msl_wide square)
{
    int32_t is_whole;
    const int64_t root = msl_wide_root(square, &is_whole);
    return is_whole ? root : root + 1;
}

/* ---- one row --------------------------------------------------------------------------------------------------- */

muslin_status muslin_accuracy_row_spec_init(struct muslin_accuracy_row_spec *spec, uint32_t size)
{
    const struct muslin_accuracy_row_spec initial = MUSLIN_ACCURACY_ROW_SPEC_INIT;
    return msl_init_struct(spec, size, &initial, (uint32_t)sizeof initial, (uint32_t)sizeof initial);
}

static struct muslin_accuracy_row_errors accuracy_of(int64_t pieces, int64_t seams, muslin_len seam_error,
                                                     muslin_len cut_error)
{
    struct muslin_accuracy_row_errors row = { 0 };
    row.cuts = 2 * pieces;
    row.from_seams = seams * seam_error;
    row.from_cuts = row.cuts * cut_error;
    row.worst = row.from_seams + row.from_cuts;
    row.likely = root_up(likely_square(seams, seam_error, row.cuts, cut_error));
    return row;
}

muslin_status muslin_accuracy_row(const struct muslin_accuracy_row_spec *spec, struct muslin_accuracy_row_errors *out,
                                  struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct muslin_accuracy_row_spec s = { 0 };
    msl_read_struct(&check, MUSLIN_ARG_SPEC, &s, (uint32_t)sizeof s, (uint32_t)sizeof s, 0, spec);
    msl_want_output(&check, out, (uint32_t)sizeof *out);
    msl_want_some_count(&check, MUSLIN_ARG_PIECES, s.pieces);
    msl_want_count(&check, MUSLIN_ARG_SEAMS, s.seams);
    want_errors(&check, s.seam_error, s.cut_error);
    if (check.status != MUSLIN_OK)
        return check.status;
    struct muslin_accuracy_row_errors row = accuracy_of(s.pieces, s.seams, s.seam_error, s.cut_error);
    msl_write_struct(out, &row, (uint32_t)sizeof row);
    return MUSLIN_OK;
}

/* ---- block and top --------------------------------------------------------------------------------------------- */

muslin_status muslin_accuracy_top_spec_init(struct muslin_accuracy_top_spec *spec, uint32_t size)
{
    const struct muslin_accuracy_top_spec initial = MUSLIN_ACCURACY_TOP_SPEC_INIT;
    return msl_init_struct(spec, size, &initial, (uint32_t)sizeof initial, (uint32_t)sizeof initial);
}

/* Pieces of a block and of a whole row of the top, in one direction. */
static void want_pieces(struct msl_check *check, int64_t at, int64_t pieces, int32_t argument, int64_t blocks)
{
    check->at = at;
    msl_want_some_count(check, MUSLIN_ARG_PIECES, pieces);
    check->at = 0;
    msl_want_some_count(check, argument, blocks);
    if (check->status != MUSLIN_OK)
        return;
    check->at = at;
    msl_want_some_count(check, MUSLIN_ARG_PIECES, pieces * blocks);
    check->at = 0;
}

static void read_top(struct msl_check *check, struct muslin_accuracy_top_spec *spec,
                     const struct muslin_accuracy_top_spec *from)
{
    msl_read_struct(check, MUSLIN_ARG_SPEC, spec, (uint32_t)sizeof *spec, (uint32_t)sizeof *spec, 0, from);
    want_pieces(check, 0, spec->pieces_across, MUSLIN_ARG_COLUMNS, spec->columns);
    want_pieces(check, 1, spec->pieces_down, MUSLIN_ARG_QUILT_ROWS, spec->rows);
    want_errors(check, spec->seam_error, spec->cut_error);
}

/* From raw edge to raw edge. */
static struct muslin_accuracy_row_errors run_of(int64_t pieces, const struct muslin_accuracy_top_spec *spec)
{
    return accuracy_of(pieces, pieces - 1, spec->seam_error, spec->cut_error);
}

static struct muslin_accuracy_top_errors top_of(const struct muslin_accuracy_top_spec *spec)
{
    struct muslin_accuracy_top_errors top = { 0 };
    struct muslin_accuracy_row_errors width = run_of(spec->pieces_across, spec);
    struct muslin_accuracy_row_errors height = run_of(spec->pieces_down, spec);
    struct muslin_accuracy_row_errors across = run_of(spec->columns * spec->pieces_across, spec);
    struct muslin_accuracy_row_errors down = run_of(spec->rows * spec->pieces_down, spec);
    top.block_seams_across = spec->pieces_across - 1;
    top.block_width_worst = width.worst;
    top.block_width_likely = width.likely;
    top.block_seams_down = spec->pieces_down - 1;
    top.block_height_worst = height.worst;
    top.block_height_likely = height.likely;
    top.top_seams_across = spec->columns * spec->pieces_across - 1;
    top.top_width_worst = across.worst;
    top.top_width_likely = across.likely;
    top.top_seams_down = spec->rows * spec->pieces_down - 1;
    top.top_length_worst = down.worst;
    top.top_length_likely = down.likely;
    return top;
}

muslin_status muslin_accuracy_top(const struct muslin_accuracy_top_spec *spec, struct muslin_accuracy_top_errors *out,
                                  struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct muslin_accuracy_top_spec s = { 0 };
    read_top(&check, &s, spec);
    msl_want_output(&check, out, (uint32_t)sizeof *out);
    if (check.status != MUSLIN_OK)
        return check.status;
    struct muslin_accuracy_top_errors top = top_of(&s);
    msl_write_struct(out, &top, (uint32_t)sizeof top);
    return MUSLIN_OK;
}

/* ---- will seams meet? ------------------------------------------------------------------------------------------ */

muslin_status muslin_accuracy_meet_spec_init(struct muslin_accuracy_meet_spec *spec, uint32_t size)
{
    const struct muslin_accuracy_meet_spec initial = MUSLIN_ACCURACY_MEET_SPEC_INIT;
    return msl_init_struct(spec, size, &initial, (uint32_t)sizeof initial, (uint32_t)sizeof initial);
}

/* The first k of 1 .. seams for which k x each > room; 0 when there is none. */
static int64_t first_beyond(int64_t each, int64_t room, int64_t seams)
{
    if (each == 0)
        return 0;
    int64_t within = room / each;
    return within < seams ? within + 1 : 0;
}

/* At the k-th seam each row is off by k (e + 2 c) at worst, and the two opposite ways. */
static void meet_at_worst(struct muslin_accuracy_meeting *met, const struct muslin_accuracy_meet_spec *s)
{
    int64_t each = 2 * (s->seam_error + 2 * s->cut_error);
    muslin_len room = s->tolerance / (2 * s->seams) - 2 * s->cut_error;
    met->worst = s->seams * each;
    met->first_missed = first_beyond(each, s->tolerance, s->seams);
    met->meets = met->first_missed == 0;
    met->cuts_meet = room >= 0;
    met->largest_seam_error = msl_greater(room, 0);
}

/* What chance does to all n seams, `times` (1 or 2) the likely size being held against the tolerance. */
struct chance {
    int64_t first_missed;
    muslin_len largest_seam_error;
    int cuts_meet;
};

/* The squares grow by 2 (e^2 + 2 c^2) from seam to seam, at most 2^57. With t the tolerance over `times`, e may be as
 * large as the root of t^2 / (2 n) - 2 c^2, which in whole ticks is the root of the quotient's floor. */
static struct chance chance_of(const struct muslin_accuracy_meet_spec *s, int64_t times)
{
    int64_t cuts = 2 * s->cut_error * s->cut_error;
    int64_t each = 2 * (s->seam_error * s->seam_error + cuts);
    int64_t square = s->tolerance * s->tolerance;
    int64_t room = square / (2 * times * times * s->seams) - cuts;
    struct chance chance = { .cuts_meet = room >= 0 };
    chance.first_missed = first_beyond(times * times * each, square, s->seams);
    chance.largest_seam_error = (muslin_len)msl_root((uint64_t)msl_greater(room, 0), NULL);
    return chance;
}

static void meet_by_chance(struct muslin_accuracy_meeting *met, const struct muslin_accuracy_meet_spec *s)
{
    struct chance once = chance_of(s, 1);
    struct chance twice = chance_of(s, 2);
    int64_t square = 2 * (s->seam_error * s->seam_error + 2 * s->cut_error * s->cut_error);
    met->likely = root_up(msl_wide_multiply(s->seams, square));
    met->likely_first_missed = once.first_missed;
    met->likely_meets = once.first_missed == 0;
    met->likely_cuts_meet = once.cuts_meet;
    met->likely_largest_seam_error = once.largest_seam_error;
    met->twice_likely_first_missed = twice.first_missed;
    met->twice_likely_meets = twice.first_missed == 0;
    met->twice_likely_cuts_meet = twice.cuts_meet;
    met->twice_likely_largest_seam_error = twice.largest_seam_error;
}

muslin_status muslin_accuracy_meet(const struct muslin_accuracy_meet_spec *spec, struct muslin_accuracy_meeting *out,
                                   struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct muslin_accuracy_meet_spec s = { 0 };
    struct muslin_accuracy_meeting met = { 0 };
    msl_read_struct(&check, MUSLIN_ARG_SPEC, &s, (uint32_t)sizeof s, (uint32_t)sizeof s, 0, spec);
    msl_want_output(&check, out, (uint32_t)sizeof *out);
    msl_want_some_count(&check, MUSLIN_ARG_SEAMS, s.seams);
    want_errors(&check, s.seam_error, s.cut_error);
    msl_want_size(&check, MUSLIN_ARG_TOLERANCE, s.tolerance);
    if (check.status != MUSLIN_OK)
        return check.status;
    meet_at_worst(&met, &s);
    meet_by_chance(&met, &s);
    msl_write_struct(out, &met, (uint32_t)sizeof met);
    return MUSLIN_OK;
}
