/* fit_across.c - how many blocks fit a width, and how many rows of triangles a quilt.
 *
 * SPDX-License-Identifier: MIT */
#include "muslin/fit.h"

#include "root.h"
#include "surd.h"

muslin_status muslin_fit_across_spec_init(struct muslin_fit_across_spec *spec, uint32_t size)
{
    const struct muslin_fit_across_spec initial = MUSLIN_FIT_ACROSS_SPEC_INIT;
    return msl_init_struct(spec, size, &initial, (uint32_t)sizeof initial, (uint32_t)sizeof initial);
}

muslin_status muslin_fit_triangles_spec_init(struct muslin_fit_triangles_spec *spec, uint32_t size)
{
    const struct muslin_fit_triangles_spec initial = MUSLIN_FIT_TRIANGLES_SPEC_INIT;
    return msl_init_struct(spec, size, &initial, (uint32_t)sizeof initial, (uint32_t)sizeof initial);
}

/* What would fill a width: a whole number and a rest of less than one. */
struct share {
    int64_t whole;
    int has_rest;
    int half_or_more; /* the rest */
};

static struct share share_of(int64_t room, int64_t each)
{
    struct share share = { 0 };
    if (room <= 0)
        return share;
    share.whole = room / each;
    share.has_rest = room % each != 0;
    share.half_or_more = 2 * (room % each) >= each;
    return share;
}

/* Rounded as asked, to one at least; a failure when rounding down leaves none of `one` in `wanted`. */
static int64_t count_of(struct msl_check *check, struct share share, int32_t direction, int32_t argument,
                        muslin_len wanted, muslin_len one)
{
    int64_t count = share.whole;
    if (direction == MUSLIN_DIRECTION_UP)
        count += share.has_rest;
    if (direction == MUSLIN_DIRECTION_NEAREST)
        count += share.half_or_more;
    if (count == 0 && direction == MUSLIN_DIRECTION_DOWN)
        msl_fail(check, MUSLIN_ERR_NO_FIT, argument, wanted, one);
    return count == 0 ? 1 : count;
}

static void want_direction(struct msl_check *check, int32_t direction)
{
    msl_want_choice(check, MUSLIN_ARG_DIRECTION, direction, MUSLIN_DIRECTION_UP, MUSLIN_DIRECTION_NEAREST);
}

/* ---- blocks across a width --------------------------------------------------------------------------------------- */

static void read_across(struct msl_check *check, struct muslin_fit_across_spec *spec,
                        const struct muslin_fit_across_spec *from)
{
    msl_read_struct(check, MUSLIN_ARG_SPEC, spec, (uint32_t)sizeof *spec, (uint32_t)sizeof *spec,
                    MUSLIN_FIT_ACROSS_FRAME, from);
    msl_want_some_size(check, MUSLIN_ARG_QUILT_WIDTH, spec->wanted);
    msl_want_size(check, MUSLIN_ARG_BORDER_WIDTH, spec->border);
    msl_want_some_size(check, MUSLIN_ARG_BLOCK_WIDTH, spec->block);
    msl_want_size(check, MUSLIN_ARG_SASH_WIDTH, spec->sash);
    want_direction(check, spec->direction);
    msl_want_pad(check, spec->pad);
}

muslin_status muslin_fit_across(const struct muslin_fit_across_spec *spec, struct muslin_fit_across_blocks *out,
                                struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct muslin_fit_across_spec s = { 0 };
    struct muslin_fit_across_blocks across = { 0 };
    read_across(&check, &s, spec);
    msl_want_output(&check, out, (uint32_t)sizeof *out);
    if (check.status != MUSLIN_OK)
        return check.status;
    muslin_len beside = 2 * s.border + ((s.flags & MUSLIN_FIT_ACROSS_FRAME) != 0 ? s.sash : -s.sash);
    across.room = s.wanted - beside;
    across.pitch = s.block + s.sash;
    across.blocks = count_of(&check, share_of(across.room, across.pitch), s.direction, MUSLIN_ARG_QUILT_WIDTH,
                             s.wanted, across.pitch + beside);
    if (check.status != MUSLIN_OK)
        return check.status;
    across.finished_width = across.blocks * across.pitch + beside;
    across.off = across.finished_width - s.wanted;
    across.exact = across.off == 0;
    msl_write_struct(out, &across, (uint32_t)sizeof across);
    return MUSLIN_OK;
}

/* ---- rows of equilateral triangles ------------------------------------------------------------------------------- */

static void read_rows(struct msl_check *check, struct muslin_fit_triangles_spec *spec,
                      const struct muslin_fit_triangles_spec *from)
{
    msl_read_struct(check, MUSLIN_ARG_SPEC, spec, (uint32_t)sizeof *spec, (uint32_t)sizeof *spec, 0, from);
    msl_want_some_size(check, MUSLIN_ARG_QUILT_WIDTH, spec->wanted_width);
    msl_want_some_size(check, MUSLIN_ARG_QUILT_LENGTH, spec->wanted_length);
    msl_want_some_size(check, MUSLIN_ARG_TRIANGLE_HEIGHT, spec->height);
    want_direction(check, spec->rows_direction);
    check->at = 1;
    want_direction(check, spec->sides_direction);
    check->at = 0;
    msl_want_seam(check, MUSLIN_ARG_SEAM_ALLOWANCE, spec->allowance);
    msl_want_seam(check, MUSLIN_ARG_TAKE_UP, spec->take_up);
}

/* n sides are n 2 h / sqrt 3 wide, at most w when n^2 is at most 3 w^2 over 4 h^2; never exactly, for sqrt 3 is no
 * fraction. Half a side more fits when ((2 n + 1) h)^2 <= 3 w^2; the left side is below (2.8 x 2^30)^2 < 2^63. */
static struct share sides_within(muslin_len width, muslin_len height)
{
    struct share share = { .has_rest = 1 };
    uint64_t three_squares = 3 * (uint64_t)width * (uint64_t)width;
    uint64_t next_half = (uint64_t)height;
    share.whole = (int64_t)msl_root(three_squares / (4 * (uint64_t)height * (uint64_t)height), NULL);
    next_half *= 2 * (uint64_t)share.whole + 1;
    share.half_or_more = next_half * next_half <= three_squares;
    return share;
}

/* n x 2 h / sqrt 3 = 2 n h sqrt 3 / 3 to the nearest tick. */
static muslin_len width_of(int64_t sides, muslin_len height)
{
    struct msl_surd surd = msl_surd_of(0, 2 * sides * height, 3, 3);
    struct msl_exact exact = msl_surd_exact(&surd);
    return exact.floor + exact.upper_half;
}

static void find_rows(struct muslin_fit_triangle_rows *rows, const struct muslin_fit_triangles_spec *spec)
{
    rows->side = width_of(1, spec->height);
    rows->finished_width = width_of(rows->sides, spec->height);
    rows->finished_length = rows->rows * spec->height;
    rows->off_width = rows->finished_width - spec->wanted_width;
    rows->off_length = rows->finished_length - spec->wanted_length;
    rows->triangles = rows->rows * (2 * rows->sides - 1);
    rows->half_triangles = 2 * rows->rows;
    rows->halves_each_hand = rows->rows;
}

/* A raw edge lies E / 2 outside the finished one. The raw triangle's height is then 3 E / 2 more, and the half of its
 * base, with E / 2 on the straight side, is (3 E + (2 height + 3 E) sqrt 3) / 6. */
static void find_cuts(struct muslin_fit_triangle_rows *rows, const struct muslin_fit_triangles_spec *spec)
{
    muslin_len seam = 2 * spec->allowance + spec->take_up;
    muslin_len raw = 2 * spec->height + 3 * seam;
    const struct msl_surd base = msl_surd_of(0, raw, 3, 3);
    const struct msl_surd half = msl_surd_of(3 * seam, raw, 3, 6);
    rows->unfinished_width = rows->finished_width + seam;
    rows->unfinished_length = rows->finished_length + seam;
    rows->strip_cut = msl_divided_up(raw, 2);
    rows->strip_cut_blunt = spec->height + seam;
    rows->cut_base = msl_surd_ceiling(&base);
    rows->half_cut_base = msl_surd_ceiling(&half);
}

muslin_status muslin_fit_triangles(const struct muslin_fit_triangles_spec *spec, struct muslin_fit_triangle_rows *out,
                                   struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct muslin_fit_triangles_spec s = { 0 };
    struct muslin_fit_triangle_rows rows = { 0 };
    read_rows(&check, &s, spec);
    msl_want_output(&check, out, (uint32_t)sizeof *out);
    if (check.status != MUSLIN_OK)
        return check.status;
    rows.rows = count_of(&check, share_of(s.wanted_length, s.height), s.rows_direction, MUSLIN_ARG_QUILT_LENGTH,
                         s.wanted_length, s.height);
    rows.sides = count_of(&check, sides_within(s.wanted_width, s.height), s.sides_direction, MUSLIN_ARG_QUILT_WIDTH,
                          s.wanted_width, width_of(1, s.height));
    if (check.status != MUSLIN_OK)
        return check.status;
    find_rows(&rows, &s);
    find_cuts(&rows, &s);
    msl_write_struct(out, &rows, (uint32_t)sizeof rows);
    return MUSLIN_OK;
}
