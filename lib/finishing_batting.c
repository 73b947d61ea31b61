/* finishing_batting.c - batting: what to cut, which package covers it, or how a roll is pieced.
 *
 * SPDX-License-Identifier: MIT */
#include "finishing_inside.h"
#include "muslin/reference.h"

static const struct muslin_batting_spec batting_start = MUSLIN_BATTING_SPEC_INIT;

muslin_status muslin_batting_spec_init(struct muslin_batting_spec *spec, uint32_t size)
{
    return msl_init_struct(spec, size, &batting_start, (uint32_t)sizeof batting_start,
                           (uint32_t)sizeof batting_start);
}

/* ---- packages -------------------------------------------------------------------------------------------------- */

/* A package as it lies over the quilt: upright if it covers so, else turned if it may and covers turned. */
struct laid {
    int covers;
    int32_t turned;
    muslin_len spare_width;
    muslin_len spare_length;
};

static struct laid lay_once(muslin_len width, muslin_len length, const struct muslin_batting *batting)
{
    struct laid laid = { 0 };
    laid.spare_width = width - batting->width;
    laid.spare_length = length - batting->length;
    laid.covers = laid.spare_width >= 0 && laid.spare_length >= 0;
    return laid;
}

static struct laid lay_package(const struct muslin_reference *package, const struct muslin_batting *batting,
                               int may_turn)
{
    struct laid upright = lay_once(package->width, package->length, batting);
    if (upright.covers || may_turn == 0)
        return upright;
    struct laid turned = lay_once(package->length, package->width, batting);
    turned.turned = 1;
    return turned;
}

static void take_package(struct muslin_batting *batting, int64_t row, const struct muslin_reference *package,
                         const struct laid *laid)
{
    batting->package = row;
    batting->package_width = package->width;
    batting->package_length = package->length;
    batting->spare_width = laid->spare_width;
    batting->spare_length = laid->spare_length;
    batting->turned = laid->turned;
}

static void choose_package(struct muslin_batting *batting, int may_turn)
{
    int64_t least_area = INT64_MAX;
    int64_t rows = 0;
    (void)muslin_reference_count(MUSLIN_TABLE_BATTING, &rows, NULL);
    batting->package = -1;
    for (int64_t row = 0; row < rows; row++) {
        struct muslin_reference package = { .size = (uint32_t)sizeof package };
        (void)muslin_reference_row(MUSLIN_TABLE_BATTING, row, &package, NULL);
        struct laid laid = lay_package(&package, batting, may_turn);
        int64_t area = package.width * package.length;
        if (laid.covers && area < least_area) {
            least_area = area;
            take_package(batting, row, &package, &laid);
        }
    }
}

/* ---- pieces of a roll ------------------------------------------------------------------------------------------ */

/* Edge to edge, each as wide as the roll and as long as `along`, until they cover `across`. */
struct pieced {
    int64_t pieces;
    muslin_len length;
};

static struct pieced piece_roll(muslin_len across, muslin_len along, muslin_len roll)
{
    struct pieced pieced = { msl_divided_up(across, roll), 0 };
    pieced.length = pieced.pieces * along;
    return pieced;
}

static int takes_less_roll(struct pieced a, struct pieced b)
{
    return a.length != b.length ? a.length < b.length : a.pieces < b.pieces;
}

static void join_pieces(struct muslin_batting *batting, muslin_len roll)
{
    struct pieced down = piece_roll(batting->width, batting->length, roll);
    struct pieced across = piece_roll(batting->length, batting->width, roll);
    batting->joined_turned = takes_less_roll(across, down);
    struct pieced best = batting->joined_turned ? across : down;
    batting->joined_pieces = best.pieces;
    batting->joined_length = best.length;
    batting->joined_joins = best.pieces - 1;
}

muslin_status muslin_batting_plan(const struct muslin_batting_spec *spec, struct muslin_batting *out,
                                  struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct muslin_batting_spec asked = { 0 };
    msl_read_struct(&check, MUSLIN_ARG_SPEC, &asked, (uint32_t)sizeof asked, (uint32_t)sizeof asked,
                    MUSLIN_BATTING_FIXED, spec);
    msl_want_output(&check, out, (uint32_t)sizeof *out);
    struct muslin_batting batting = { 0 };
    batting.width = msl_with_margins(&check, MUSLIN_ARG_QUILT_WIDTH, asked.quilt_width, asked.margin_left,
                                     asked.margin_right);
    batting.length = msl_with_margins(&check, MUSLIN_ARG_QUILT_LENGTH, asked.quilt_length, asked.margin_top,
                                      asked.margin_bottom);
    msl_want_size(&check, MUSLIN_ARG_FABRIC_WIDTH, asked.roll_width);
    if (check.status != MUSLIN_OK)
        return check.status;

    choose_package(&batting, (asked.flags & MUSLIN_BATTING_FIXED) == 0);
    if (asked.roll_width != 0)
        join_pieces(&batting, asked.roll_width);
    msl_write_struct(out, &batting, (uint32_t)sizeof batting);
    return MUSLIN_OK;
}
