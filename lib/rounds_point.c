/* rounds_point.c - borders of squares on point.
 *
 * SPDX-License-Identifier: MIT
 *
 * The diagonal is numerator / denominator, with a denominator up to 2^29; so every size here is one root over twice
 * that. A right triangle with two equal legs, m / 2 beyond each edge, has a raw long edge (1 + sqrt 2) m longer, and
 * raw legs (1 + 1 / sqrt 2) m longer. */
#include "rounds_inside.h"

muslin_status muslin_point_border_spec_init(struct muslin_point_border_spec *spec, uint32_t size)
{
    const struct muslin_point_border_spec initial = MUSLIN_POINT_BORDER_SPEC_INIT;
    return msl_init_struct(spec, size, &initial, (uint32_t)sizeof initial, (uint32_t)sizeof initial);
}

static void read_point_border(struct msl_check *check, struct muslin_point_border_spec *spec,
                              const struct muslin_point_border_spec *from)
{
    msl_read_struct(check, MUSLIN_ARG_SPEC, spec, (uint32_t)sizeof *spec, (uint32_t)sizeof *spec, 0, from);
    msl_want_some_size(check, MUSLIN_ARG_FINISHED, spec->side_finished);
    msl_want_size(check, MUSLIN_ARG_DIAGONAL, spec->diagonal_finished);
    msl_want_between(check, MUSLIN_ARG_PIECES, spec->squares, spec->diagonal_finished == 0,
                     MUSLIN_POINT_BORDER_SQUARES_MAX);
    msl_want_some_count(check, MUSLIN_ARG_RUNS, spec->runs);
    msl_want_seams(check, spec->allowance, spec->take_up);
    if (spec->diagonal_finished == 0)
        msl_want_between(check, MUSLIN_ARG_PIECES, spec->squares, 1, spec->side_finished);
    else if (spec->diagonal_finished > spec->side_finished)
        msl_fail(check, MUSLIN_ERR_NO_FIT, MUSLIN_ARG_FINISHED, spec->side_finished, spec->diagonal_finished);
}

static void find_diagonal(struct muslin_point_border *border, const struct muslin_point_border_spec *s)
{
    if (s->diagonal_finished == 0) {
        border->diagonal_numerator = s->side_finished;
        border->diagonal_denominator = s->squares;
        border->squares_per_run = s->squares;
        return;
    }
    border->diagonal_numerator = s->diagonal_finished;
    border->diagonal_denominator = 1;
    border->squares_per_run = s->side_finished / s->diagonal_finished;
    border->rest = s->side_finished % s->diagonal_finished;
}

static void find_sizes(struct muslin_point_border *border, muslin_len taken, const struct muslin_rounding_spec *cutting,
                       const struct muslin_rounding_spec *measuring)
{
    int64_t below = border->diagonal_denominator;
    muslin_len diagonal = border->diagonal_numerator;
    muslin_len seams = below * taken;
    struct msl_surd square = msl_surd_of(0, diagonal, 2, 2 * below);
    struct msl_surd cut = msl_surd_of(2 * seams, diagonal, 2, 2 * below);
    struct msl_surd setting = msl_surd_of(diagonal + seams, seams, 2, below);
    struct msl_surd end = msl_surd_of(diagonal + 2 * seams, seams, 2, 2 * below);
    border->diagonal_finished = msl_divide_once(diagonal, below, measuring, &border->diagonal_error);
    border->square_finished = msl_round_once(&square, measuring, &border->square_finished_error);
    border->square_cut = msl_round_once(&cut, cutting, &border->square_cut_error);
    border->setting_cut = msl_round_once(&setting, cutting, &border->setting_cut_error);
    border->end_cut = msl_round_once(&end, cutting, &border->end_cut_error);
    border->border_unfinished = border->diagonal_finished + taken;
}

/* n (sqrt 2 (cut - m) - D). Rounded to a grid of up to 2^30, n squares of what is cut are below 2^61. */
static void find_run(struct muslin_point_border *border, const struct muslin_point_border_spec *s, muslin_len taken)
{
    const struct muslin_rounding_spec nearest = MUSLIN_ROUNDING_SPEC_INIT;
    muslin_len sides = border->squares_per_run * (border->square_cut - taken);
    struct msl_surd longer = { .whole = border->rest - s->side_finished, .sign = 1, .divisor = 1 };
    muslin_len error;
    longer.radicand = msl_wide_multiply(sides, 2 * sides);
    border->run_longer_by = msl_round_once(&longer, &nearest, &error);
}

static void count_pieces(struct muslin_point_border *border, int64_t runs)
{
    int64_t between = (border->squares_per_run - 1) * runs; /* neighbours, with a triangle on either side */
    border->squares = border->squares_per_run * runs;
    border->setting_triangles = 2 * between;
    border->setting_squares = (between + 1) / 2;
    border->end_triangles = 4 * runs;
    border->end_squares = 2 * runs;
}

muslin_status muslin_point_border_plan(const struct muslin_point_border_spec *spec,
                                       const struct muslin_rounding_spec *cutting,
                                       const struct muslin_rounding_spec *measuring, struct muslin_point_border *out,
                                       struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct muslin_point_border_spec s = { 0 };
    struct muslin_rounding_spec how[] = { { 0 }, { 0 } };
    struct muslin_point_border border = { 0 };
    read_point_border(&check, &s, spec);
    msl_read_rounding(&check, &how[0], cutting);
    check.at = 1;
    msl_read_rounding(&check, &how[1], measuring);
    check.at = 0;
    msl_want_output(&check, out, (uint32_t)sizeof *out);
    if (check.status != MUSLIN_OK)
        return check.status;
    find_diagonal(&border, &s);
    muslin_len taken = msl_taken(s.allowance, s.take_up);
    find_sizes(&border, taken, &how[0], &how[1]);
    if (border.square_cut <= taken)
        return msl_fail(&check, MUSLIN_ERR_NO_FIT, MUSLIN_ARG_GRID, how[0].grid, 0);
    find_run(&border, &s, taken);
    count_pieces(&border, s.runs);
    msl_write_struct(out, &border, (uint32_t)sizeof border);
    return MUSLIN_OK;
}
