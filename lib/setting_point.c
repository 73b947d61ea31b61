/* setting_point.c - blocks set on point: counts, squares for the triangles, the size of the centre, and back.
 *
 * SPDX-License-Identifier: MIT
 *
 * In every layout a line of n blocks is (n B + (n + k) w) sqrt 2 + 2 f long, where k says how many sashes there are
 * beyond the blocks: 1 outside all of them, 0 where the outer ones are cut in half, -1 where there are none. */
#include "setting_point.h"

#include "surd.h"

muslin_status muslin_setting_point_spec_init(struct muslin_setting_point_spec *spec, uint32_t size)
{
    const struct muslin_setting_point_spec initial = MUSLIN_SETTING_POINT_SPEC_INIT;
    return msl_init_struct(spec, size, &initial, (uint32_t)sizeof initial, (uint32_t)sizeof initial);
}

/* ---- the request ------------------------------------------------------------------------------------------------- */

enum { FACTOR_MAX = 1000000 };

/* Members that share a name are told apart by their place. */
static void want_at(struct msl_check *check, int64_t at, int32_t argument, int64_t value, int64_t least, int64_t most)
{
    check->at = at;
    msl_want_between(check, argument, value, least, most);
    check->at = 0;
}

static void want_factor(struct msl_check *check, const struct muslin_setting_point_spec *spec)
{
    int64_t least = spec->factor_numerator != 0;
    msl_want_between(check, MUSLIN_ARG_FACTOR, spec->factor_numerator, 0, FACTOR_MAX);
    if (least == 1 && spec->factor_denominator == 0)
        msl_fail(check, MUSLIN_ERR_DIVIDE_BY_ZERO, MUSLIN_ARG_DENOMINATOR, 0, 1);
    msl_want_between(check, MUSLIN_ARG_DENOMINATOR, spec->factor_denominator, least, least * FACTOR_MAX);
}

/* Where blocks or cornerstones are cut at the edge itself, nothing can stand between them and it. */
static int is_cut_at_edge(const struct muslin_setting_point_spec *spec)
{
    return spec->layout == MUSLIN_POINT_LAYOUT_SASH_CUT || spec->layout == MUSLIN_POINT_LAYOUT_SASH_INNER ||
           spec->edge == MUSLIN_POINT_EDGE_HALF_BLOCKS;
}

static void want_layout(struct msl_check *check, const struct muslin_setting_point_spec *spec)
{
    int plain = spec->layout == MUSLIN_POINT_LAYOUT_PLAIN;
    msl_want_choice(check, MUSLIN_ARG_SETTING_LAYOUT, spec->layout, MUSLIN_POINT_LAYOUT_PLAIN,
                    MUSLIN_POINT_LAYOUT_SASH_INNER);
    msl_want_choice(check, MUSLIN_ARG_EDGE_STYLE, spec->edge, MUSLIN_POINT_EDGE_TRIANGLES,
                    MUSLIN_POINT_EDGE_HALF_BLOCKS);
    if (spec->edge == MUSLIN_POINT_EDGE_HALF_BLOCKS && !plain && spec->layout != MUSLIN_POINT_LAYOUT_SASH_CUT)
        msl_fail(check, MUSLIN_ERR_NO_FIT, MUSLIN_ARG_EDGE_STYLE, spec->edge, 0);
    msl_want_between(check, MUSLIN_ARG_SASH_WIDTH, spec->sash, plain ? 0 : 1, plain ? 0 : MUSLIN_SIZE_MAX);
    msl_want_between(check, MUSLIN_ARG_SET_OFF, spec->set_off, 0, is_cut_at_edge(spec) ? 0 : MUSLIN_SIZE_MAX);
}

static void want_allowances(struct msl_check *check, const struct muslin_setting_point_spec *spec)
{
    msl_want_seam(check, MUSLIN_ARG_SEAM_ALLOWANCE, spec->allowance);
    msl_want_seam(check, MUSLIN_ARG_TAKE_UP, spec->take_up);
    msl_want_choice(check, MUSLIN_ARG_POLICY, spec->policy, MUSLIN_ALLOWANCE_POLICY_EXACT,
                    MUSLIN_ALLOWANCE_POLICY_OVERSIZE);
    msl_want_between(check, MUSLIN_ARG_TRIM_ROOM, spec->trim_room, 0,
                     spec->policy == MUSLIN_ALLOWANCE_POLICY_OVERSIZE ? MUSLIN_SIZE_MAX : 0);
    want_at(check, 0, MUSLIN_ARG_EXTRA, spec->side_addition, 0, MUSLIN_SIZE_MAX);
    want_at(check, 1, MUSLIN_ARG_EXTRA, spec->corner_addition, 0, MUSLIN_SIZE_MAX);
    want_factor(check, spec);
    msl_want_pad(check, spec->pad);
}

/* All but block and rows, which not every call uses. */
static void read_point(struct msl_check *check, struct muslin_setting_point_spec *spec,
                       const struct muslin_setting_point_spec *from)
{
    msl_read_struct(check, MUSLIN_ARG_SPEC, spec, (uint32_t)sizeof *spec, (uint32_t)sizeof *spec,
                    MUSLIN_SETTING_POINT_DIAGONAL_FIRST, from);
    msl_want_some_count(check, MUSLIN_ARG_COLUMNS, spec->columns);
    want_layout(check, spec);
    want_allowances(check, spec);
}

static void read_rounding(struct msl_check *check, struct muslin_rounding_spec *rounding,
                          const struct muslin_rounding_spec *from, int64_t at)
{
    check->at = at;
    msl_read_rounding(check, rounding, from);
    check->at = 0;
}

/* ---- layouts ----------------------------------------------------------------------------------------------------- */

static int64_t sashes_beyond(const struct muslin_setting_point_spec *spec)
{
    return spec->layout == MUSLIN_POINT_LAYOUT_SASH_OUTER ? 1 : spec->layout == MUSLIN_POINT_LAYOUT_SASH_INNER ? -1 : 0;
}

/* The least block that leaves something of the side triangles: above the sash where they lose one. */
static muslin_len least_block(const struct muslin_setting_point_spec *spec)
{
    return spec->layout == MUSLIN_POINT_LAYOUT_SASH_INNER ? spec->sash + 1 : 1;
}

static muslin_len least_on_grid(const struct muslin_setting_point_spec *spec, muslin_len grid)
{
    return (least_block(spec) + grid - 1) / grid * grid;
}

/* n B + (n + k) w: the line without its root, at most 2^62. */
static muslin_len straight_line(const struct muslin_setting_point_spec *spec, muslin_len block, int64_t blocks)
{
    return blocks * block + (blocks + sashes_beyond(spec)) * spec->sash;
}

static struct msl_surd line_of(const struct muslin_setting_point_spec *spec, muslin_len straight)
{
    return msl_surd_of(2 * spec->set_off, straight, 2, 1);
}

/* A line that is too long already without its root is told so. */
static void want_line(struct msl_check *check, const struct muslin_setting_point_spec *spec, int32_t argument,
                      int64_t blocks)
{
    muslin_len straight = straight_line(spec, spec->block, blocks);
    msl_want_size(check, argument, straight);
    if (check->status != MUSLIN_OK)
        return;
    struct msl_surd line = line_of(spec, straight);
    msl_want_size(check, argument, msl_surd_ceiling(&line));
}

/* ---- counts ------------------------------------------------------------------------------------------------------ */

/* Each of the c r blocks has four sashes, and what surrounds an alternate belongs to blocks. Cornerstones lie at the
 * four tips of every block: (c + 1) r to the left and right of blocks, c (r + 1) above and below; of those, c + c and
 * r + r at the edge. Where no sash lies outside, the four corner blocks lack one sash each towards their corners, and
 * what lies between a block and a side triangle, two of them at each, ends at the edge. */
static void count_sashes(struct muslin_setting_point_plan *made, const struct muslin_setting_point_spec *spec)
{
    int64_t outer = 2 * spec->columns + 2 * spec->rows;
    int64_t tips = 2 * made->blocks + spec->columns + spec->rows;
    if (spec->layout == MUSLIN_POINT_LAYOUT_PLAIN)
        return;
    made->sashes = 4 * made->blocks;
    made->cornerstones = tips;
    if (spec->layout == MUSLIN_POINT_LAYOUT_SASH_OUTER)
        return;
    made->cornerstones = tips - outer;
    if (spec->layout == MUSLIN_POINT_LAYOUT_SASH_CUT) {
        made->edge_cornerstones = outer;
        made->edge_cornerstone_squares = (spec->columns + spec->rows + 1) / 2; /* each gives four */
        return;
    }
    made->edge_sashes = 2 * (outer - 4);
    made->sashes = 4 * made->alternates;
}

static void count_pieces(struct muslin_setting_point_plan *made, const struct muslin_setting_point_spec *spec)
{
    int64_t sides = 2 * (spec->columns - 1) + 2 * (spec->rows - 1);
    int halves = spec->edge == MUSLIN_POINT_EDGE_HALF_BLOCKS;
    made->blocks = spec->columns * spec->rows;
    made->alternates = (spec->columns - 1) * (spec->rows - 1);
    made->side_triangles = halves ? 0 : sides;
    made->half_blocks = halves ? sides : 0;
    made->side_squares = (made->side_triangles + 3) / 4;
    made->spare_side_triangles = 4 * made->side_squares - made->side_triangles;
    made->corner_triangles = 4;
    made->corner_squares = 2;
    count_sashes(made, spec);
    made->straight_grain = made->half_blocks == 0 && made->edge_sashes == 0;
    made->warnings = made->straight_grain ? 0 : MUSLIN_WARN_BIAS_EDGE;
}

/* ---- cut sizes --------------------------------------------------------------------------------------------------- */

/* 5 s and 7 s / 2, where a seam with its take-up counts for 2 s. */
static muslin_len side_addition(const struct muslin_setting_point_spec *spec)
{
    return spec->side_addition != 0 ? spec->side_addition : (5 * msl_point_seam(spec) + 1) / 2;
}

static muslin_len corner_addition(const struct muslin_setting_point_spec *spec)
{
    return spec->corner_addition != 0 ? spec->corner_addition : (7 * msl_point_seam(spec) + 3) / 4;
}

static uint32_t grid_warning(muslin_len cut, const struct muslin_rounding_spec *cutting)
{
    return cut % cutting->grid == 0 ? 0 : MUSLIN_WARN_OFF_GRID;
}

/* Half of what a square has too much, down to a tick, also below 0. */
static muslin_len room_at_edge(muslin_len surplus)
{
    return surplus / 2 - (surplus % 2 < 0);
}

static void cut_triangles(struct msl_check *check, struct muslin_setting_point_plan *made,
                          const struct muslin_setting_point_spec *spec, const struct muslin_rounding_spec *cutting)
{
    int64_t outside = spec->layout == MUSLIN_POINT_LAYOUT_SASH_OUTER ? 2 : 0;
    const struct msl_point_square sides = { spec->block + sashes_beyond(spec) * spec->sash, 1, side_addition(spec), 0 };
    const struct msl_point_square corners = { spec->block + outside * spec->sash, 2, corner_addition(spec), 1 };
    const struct msl_point_square edges = { spec->sash, 1, side_addition(spec), 2 };
    struct msl_point_cut cut = { 0 };
    if (made->side_triangles > 0)
        cut = msl_point_cut_square(check, spec, cutting, &sides);
    made->side_square_cut = cut.cut;
    made->side_need = cut.need;
    made->side_surplus = cut.surplus;
    cut = msl_point_cut_square(check, spec, cutting, &corners);
    made->corner_square_cut = cut.cut;
    made->corner_need = cut.need;
    made->corner_surplus = cut.surplus;
    cut = (struct msl_point_cut){ 0 };
    if (made->edge_cornerstones > 0)
        cut = msl_point_cut_square(check, spec, cutting, &edges);
    made->edge_cornerstone_cut = cut.cut;
    made->edge_cornerstone_need = cut.need;
    made->edge_cornerstone_surplus = cut.surplus;
    made->side_room = room_at_edge(made->side_surplus);
    made->corner_room = room_at_edge(made->corner_surplus);
    made->edge_cornerstone_room = room_at_edge(made->edge_cornerstone_surplus);
    made->warnings |= grid_warning(made->side_square_cut, cutting) | grid_warning(made->corner_square_cut, cutting) |
                      grid_warning(made->edge_cornerstone_cut, cutting);
}

/* A sash that ends at the edge has one square end and one at 45 degrees, whose allowance reaches t / sqrt 2 further
 * along the long side. */
static void cut_straight_pieces(struct muslin_setting_point_plan *made, const struct muslin_setting_point_spec *spec,
                                const struct muslin_rounding_spec *cutting)
{
    muslin_len seam = msl_point_seam(spec);
    struct msl_surd edge_sash = msl_surd_of(2 * (spec->block + seam), seam, 2, 2);
    struct muslin_rounded rounded = { 0 };
    made->alternate_cut = spec->block + seam;
    made->half_block_beyond = made->half_blocks > 0 ? (seam + 1) / 2 : 0;
    if (spec->layout == MUSLIN_POINT_LAYOUT_PLAIN)
        return;
    made->sash_cut_width = spec->sash + seam;
    made->sash_cut_length = spec->block + seam;
    made->cornerstone_cut = spec->sash + seam;
    if (made->edge_sashes == 0)
        return;
    msl_surd_round(&edge_sash, cutting, &rounded); /* far below the largest length */
    made->edge_sash_cut_length = rounded.value;
}

/* ---- the size of the centre -------------------------------------------------------------------------------------- */

static muslin_len measure(const struct msl_surd *exact, const struct muslin_rounding_spec *measuring,
                          muslin_len *error)
{
    struct muslin_rounded rounded = { 0 };
    msl_surd_round(exact, measuring, &rounded); /* far below the largest length */
    *error = rounded.error;
    return rounded.value;
}

static void measure_centre(struct muslin_setting_point_plan *made, const struct muslin_setting_point_spec *spec,
                           const struct muslin_rounding_spec *measuring)
{
    struct msl_surd diagonal = msl_surd_of(0, spec->block, 2, 1);
    struct msl_surd width = line_of(spec, straight_line(spec, spec->block, spec->columns));
    struct msl_surd length = line_of(spec, straight_line(spec, spec->block, spec->rows));
    made->diagonal = measure(&diagonal, measuring, &made->diagonal_error);
    made->finished_width = measure(&width, measuring, &made->width_error);
    made->finished_length = measure(&length, measuring, &made->length_error);
    made->unfinished_width = made->finished_width + msl_point_seam(spec);
    made->unfinished_length = made->finished_length + msl_point_seam(spec);
}

muslin_status muslin_setting_point(const struct muslin_setting_point_spec *spec,
                                   const struct muslin_rounding_spec *cutting,
                                   const struct muslin_rounding_spec *measuring, struct muslin_setting_point_plan *out,
                                   struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct muslin_setting_point_spec s = { 0 };
    struct muslin_rounding_spec how[] = { { 0 }, { 0 } };
    struct muslin_setting_point_plan made = { 0 };
    read_point(&check, &s, spec);
    msl_want_between(&check, MUSLIN_ARG_BLOCK_WIDTH, s.block, least_block(&s), MUSLIN_SIZE_MAX);
    msl_want_some_count(&check, MUSLIN_ARG_QUILT_ROWS, s.rows);
    read_rounding(&check, &how[0], cutting, 0);
    read_rounding(&check, &how[1], measuring, 1);
    msl_want_output(&check, out, (uint32_t)sizeof *out);
    if (check.status == MUSLIN_OK)
        want_line(&check, &s, MUSLIN_ARG_QUILT_WIDTH, s.columns);
    if (check.status == MUSLIN_OK)
        want_line(&check, &s, MUSLIN_ARG_QUILT_LENGTH, s.rows);
    if (check.status != MUSLIN_OK)
        return check.status;
    count_pieces(&made, &s);
    cut_triangles(&check, &made, &s, &how[0]);
    cut_straight_pieces(&made, &s, &how[0]);
    measure_centre(&made, &s, &how[1]);
    if (check.status == MUSLIN_OK)
        msl_write_struct(out, &made, (uint32_t)sizeof made);
    return check.status;
}

/* ---- backwards --------------------------------------------------------------------------------------------------- */

/* The width that a block of this size would need, up to a tick; 0 where it passes the largest size. */
static muslin_len width_needed(const struct muslin_setting_point_spec *spec, muslin_len block)
{
    muslin_len straight = straight_line(spec, block, spec->columns);
    if (straight > MUSLIN_SIZE_MAX)
        return 0;
    struct msl_surd line = line_of(spec, straight);
    muslin_len width = msl_surd_ceiling(&line);
    return width > MUSLIN_SIZE_MAX ? 0 : width;
}

/* c B + (c + k) w <= (W - 2 f) / sqrt 2 for whole numbers on the left, so the right side may be brought down. */
muslin_status muslin_setting_point_block_for_width(const struct muslin_setting_point_spec *spec,
                                                   muslin_len wanted_width, muslin_len grid, muslin_len *out,
                                                   struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct muslin_setting_point_spec s = { 0 };
    read_point(&check, &s, spec);
    msl_want_some_size(&check, MUSLIN_ARG_QUILT_WIDTH, wanted_width);
    msl_want_some_size(&check, MUSLIN_ARG_GRID, grid);
    msl_want_pointer(&check, MUSLIN_ARG_OUTPUT, out);
    if (check.status != MUSLIN_OK)
        return check.status;
    struct msl_surd room = msl_surd_of(0, wanted_width - 2 * s.set_off, 2, 2);
    muslin_len least = least_on_grid(&s, grid);
    muslin_len for_blocks = msl_surd_floor(&room) - straight_line(&s, 0, s.columns);
    muslin_len block = for_blocks / s.columns / grid * grid;
    if (block < least)
        return msl_fail(&check, MUSLIN_ERR_NO_FIT, MUSLIN_ARG_QUILT_WIDTH, wanted_width, width_needed(&s, least));
    *out = block;
    return MUSLIN_OK;
}

/* S = (B + k w + t) sqrt 2 + 2 f + t, so B = (S - 2 f - t) / sqrt 2 - (t + k w). The least S leaves a tick of B. */
muslin_status muslin_setting_point_block_from_side(const struct muslin_setting_point_spec *spec,
                                                   muslin_len side_square_cut,
                                                   const struct muslin_rounding_spec *rounding,
                                                   struct muslin_rounded *out, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct muslin_setting_point_spec s = { 0 };
    struct muslin_rounding_spec how = { 0 };
    struct muslin_rounded rounded = { 0 };
    read_point(&check, &s, spec);
    msl_want_some_size(&check, MUSLIN_ARG_CUT, side_square_cut);
    msl_read_rounding(&check, &how, rounding);
    msl_want_output(&check, out, (uint32_t)sizeof *out);
    if (check.status != MUSLIN_OK)
        return check.status;
    muslin_len seam = msl_point_seam(&s);
    muslin_len beside = seam + sashes_beyond(&s) * s.sash;
    struct msl_surd least = msl_surd_of(2 * s.set_off + seam, least_block(&s) + beside, 2, 1);
    struct msl_surd block = msl_surd_of(-2 * beside, side_square_cut - 2 * s.set_off - seam, 2, 2);
    if (msl_surd_ceiling(&least) > side_square_cut)
        return msl_fail(&check, MUSLIN_ERR_NO_FIT, MUSLIN_ARG_CUT, side_square_cut, msl_surd_ceiling(&least));
    msl_surd_round(&block, &how, &rounded); /* below the square */
    if (rounded.value < least_block(&s))
        return msl_fail(&check, MUSLIN_ERR_NO_FIT, MUSLIN_ARG_BLOCK_WIDTH, rounded.value, least_on_grid(&s, how.grid));
    msl_write_struct(out, &rounded, (uint32_t)sizeof rounded);
    return MUSLIN_OK;
}
