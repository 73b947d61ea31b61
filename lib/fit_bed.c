/* fit_bed.c - a quilt for a mattress, and how a quilt lies on one.
 *
 * SPDX-License-Identifier: MIT
 *
 * After the checks every size is at most 2^30 ticks, so a sum of a few fits 64 bits, and so do the squares of drops. */
#include "muslin/fit.h"

#include "root.h"

/* The longest side of what may be a baby's quilt, or its mattress; a crib's is 52 in long, the narrowest bed's 75. */
#define SMALL_QUILT_SIDE (INT64_C(60) * MUSLIN_TICKS_PER_INCH)

muslin_status muslin_bed_spec_init(struct muslin_bed_spec *spec, uint32_t size)
{
    const struct muslin_bed_spec initial = MUSLIN_BED_SPEC_INIT;
    return msl_init_struct(spec, size, &initial, (uint32_t)sizeof initial, (uint32_t)sizeof initial);
}

muslin_status muslin_bed_covered_spec_init(struct muslin_bed_covered_spec *spec, uint32_t size)
{
    const struct muslin_bed_covered_spec initial = MUSLIN_BED_COVERED_SPEC_INIT;
    return msl_init_struct(spec, size, &initial, (uint32_t)sizeof initial, (uint32_t)sizeof initial);
}

/* ---- corners ----------------------------------------------------------------------------------------------------- */

static uint32_t warnings_of(muslin_len width, muslin_len length)
{
    return width <= SMALL_QUILT_SIDE && length <= SMALL_QUILT_SIDE ? MUSLIN_WARN_SMALL_QUILT : 0;
}

static muslin_len root_up(uint64_t n)
{
    uint64_t rest;
    uint64_t root = msl_root(n, &rest);
    return (muslin_len)root + (rest != 0);
}

/* A rounded corner is a circle of the shorter drop's radius that touches both edges. Its centre then lies above one
 * edge of the mattress, and the point of it farthest from the mattress's corner is as far as the longer drop. */
static muslin_len hang_of(muslin_len side, muslin_len foot, int32_t corner)
{
    if (corner == MUSLIN_FOOT_CORNER_ROUNDED)
        return side > foot ? side : foot;
    return root_up((uint64_t)side * (uint64_t)side + (uint64_t)foot * (uint64_t)foot);
}

/* ---- from mattress to quilt -------------------------------------------------------------------------------------- */

static int counts_from_depth(int32_t rule)
{
    return rule == MUSLIN_DROP_DEPTH || rule == MUSLIN_DROP_OVER_JOINT;
}

/* Three drops share a name, told apart by their place. */
static void want_drops(struct msl_check *check, const struct muslin_bed_spec *spec)
{
    msl_want_size(check, MUSLIN_ARG_DROP, spec->side_drop);
    check->at = 1;
    msl_want_size(check, MUSLIN_ARG_DROP, spec->foot_drop);
    check->at = 2;
    msl_want_size(check, MUSLIN_ARG_DROP, spec->head_drop);
    check->at = 0;
}

static void want_extras(struct msl_check *check, const struct muslin_bed_spec *spec)
{
    msl_want_size(check, MUSLIN_ARG_EXTRA, spec->beyond_depth);
    check->at = 1;
    msl_want_size(check, MUSLIN_ARG_EXTRA, spec->quilting_extra);
    check->at = 0;
}

static void read_bed(struct msl_check *check, struct muslin_bed_spec *spec, const struct muslin_bed_spec *from)
{
    msl_read_struct(check, MUSLIN_ARG_SPEC, spec, (uint32_t)sizeof *spec, (uint32_t)sizeof *spec,
                    MUSLIN_BED_FOOT_GIVEN, from);
    msl_want_choice(check, MUSLIN_ARG_DROP_RULE, spec->drop, MUSLIN_DROP_DEPTH, MUSLIN_DROP_GIVEN);
    msl_want_choice(check, MUSLIN_ARG_FOOT_CORNER, spec->foot_corner, MUSLIN_FOOT_CORNER_SQUARE,
                    MUSLIN_FOOT_CORNER_ROUNDED);
    msl_want_some_size(check, MUSLIN_ARG_MATTRESS_WIDTH, spec->mattress_width);
    msl_want_some_size(check, MUSLIN_ARG_MATTRESS_LENGTH, spec->mattress_length);
    msl_want_between(check, MUSLIN_ARG_MATTRESS_DEPTH, spec->mattress_depth, counts_from_depth(spec->drop),
                     MUSLIN_SIZE_MAX);
    msl_want_between(check, MUSLIN_ARG_FLOOR_HEIGHT, spec->floor_height, spec->drop == MUSLIN_DROP_FLOOR,
                     MUSLIN_SIZE_MAX);
    want_drops(check, spec);
    msl_want_size(check, MUSLIN_ARG_PILLOW_TUCK, spec->pillow_tuck);
    want_extras(check, spec);
}

static muslin_len drop_by_rule(const struct muslin_bed_spec *spec)
{
    switch (spec->drop) {
    case MUSLIN_DROP_DEPTH:
        return spec->mattress_depth;
    case MUSLIN_DROP_OVER_JOINT:
        return spec->mattress_depth + spec->beyond_depth;
    case MUSLIN_DROP_FLOOR:
        return spec->floor_height;
    default:
        return spec->side_drop;
    }
}

static void find_size(struct muslin_bed *bed, const struct muslin_bed_spec *spec)
{
    int foot_given = spec->drop == MUSLIN_DROP_GIVEN || (spec->flags & MUSLIN_BED_FOOT_GIVEN) != 0;
    bed->side_drop = drop_by_rule(spec);
    bed->foot_drop = foot_given ? spec->foot_drop : bed->side_drop;
    bed->finished_width = spec->mattress_width + 2 * bed->side_drop;
    bed->finished_length = spec->mattress_length + spec->head_drop + bed->foot_drop + spec->pillow_tuck;
    bed->top_width = bed->finished_width + spec->quilting_extra;
    bed->top_length = bed->finished_length + spec->quilting_extra;
    bed->warnings = warnings_of(spec->mattress_width, spec->mattress_length);
}

static void find_corner(struct muslin_bed *bed, const struct muslin_bed_spec *spec)
{
    bed->corner_hang = hang_of(bed->side_drop, bed->foot_drop, spec->foot_corner);
    if (spec->foot_corner == MUSLIN_FOOT_CORNER_ROUNDED) {
        muslin_len radius = bed->side_drop < bed->foot_drop ? bed->side_drop : bed->foot_drop;
        bed->corner_radius = radius;
        bed->corner_cut_off = root_up(2 * (uint64_t)radius * (uint64_t)radius) - radius;
    }
    if (spec->floor_height > 0)
        bed->corner_clearance = spec->floor_height - bed->corner_hang;
    bed->corner_touches = bed->corner_clearance < 0;
}

muslin_status muslin_bed_size(const struct muslin_bed_spec *spec, struct muslin_bed *out,
                              struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct muslin_bed_spec s = { 0 };
    struct muslin_bed bed = { 0 };
    read_bed(&check, &s, spec);
    msl_want_output(&check, out, (uint32_t)sizeof *out);
    if (check.status != MUSLIN_OK)
        return check.status;
    find_size(&bed, &s);
    msl_want_size(&check, MUSLIN_ARG_QUILT_WIDTH, bed.top_width);
    msl_want_size(&check, MUSLIN_ARG_QUILT_LENGTH, bed.top_length);
    if (check.status != MUSLIN_OK)
        return check.status;
    find_corner(&bed, &s);
    msl_write_struct(out, &bed, (uint32_t)sizeof bed);
    return MUSLIN_OK;
}

/* ---- from quilt to mattress -------------------------------------------------------------------------------------- */

static void read_cover(struct msl_check *check, struct muslin_bed_covered_spec *spec,
                       const struct muslin_bed_covered_spec *from)
{
    msl_read_struct(check, MUSLIN_ARG_SPEC, spec, (uint32_t)sizeof *spec, (uint32_t)sizeof *spec, 0, from);
    msl_want_some_size(check, MUSLIN_ARG_QUILT_WIDTH, spec->quilt_width);
    msl_want_some_size(check, MUSLIN_ARG_QUILT_LENGTH, spec->quilt_length);
    msl_want_some_size(check, MUSLIN_ARG_MATTRESS_WIDTH, spec->mattress_width);
    msl_want_some_size(check, MUSLIN_ARG_MATTRESS_LENGTH, spec->mattress_length);
    msl_want_size(check, MUSLIN_ARG_MATTRESS_DEPTH, spec->mattress_depth);
    msl_want_size(check, MUSLIN_ARG_FLOOR_HEIGHT, spec->floor_height);
    msl_want_size(check, MUSLIN_ARG_DROP, spec->head_drop);
    msl_want_size(check, MUSLIN_ARG_PILLOW_TUCK, spec->pillow_tuck);
    msl_want_choice(check, MUSLIN_ARG_FOOT_CORNER, spec->foot_corner, MUSLIN_FOOT_CORNER_SQUARE,
                    MUSLIN_FOOT_CORNER_ROUNDED);
    msl_want_pad(check, spec->pad);
}

static muslin_len not_below_zero(muslin_len length)
{
    return length > 0 ? length : 0;
}

/* Half of what is left over, towards the narrower. */
static muslin_len half_down(muslin_len length)
{
    return length / 2 - (length % 2 < 0);
}

static struct muslin_bed_cover cover_of(const struct muslin_bed_covered_spec *spec)
{
    struct muslin_bed_cover cover = { 0 };
    muslin_len beside = spec->quilt_width - spec->mattress_width;
    cover.side_drop = half_down(beside);
    cover.foot_drop = spec->quilt_length - spec->mattress_length - spec->head_drop - spec->pillow_tuck;
    cover.short_width = not_below_zero(2 * spec->mattress_depth - beside);
    cover.short_length = not_below_zero(spec->mattress_depth - cover.foot_drop);
    cover.reaches_edges = cover.side_drop >= 0 && cover.foot_drop >= 0;
    cover.reaches_depth = (cover.short_width | cover.short_length) == 0;
    cover.beyond_side = cover.side_drop - spec->mattress_depth;
    cover.beyond_foot = cover.foot_drop - spec->mattress_depth;
    if (cover.reaches_edges)
        cover.corner_hang = hang_of(cover.side_drop, cover.foot_drop, spec->foot_corner);
    if (spec->floor_height > 0)
        cover.corner_clearance = spec->floor_height - cover.corner_hang;
    cover.corner_touches = cover.corner_clearance < 0;
    cover.warnings = warnings_of(spec->quilt_width, spec->quilt_length) |
                     warnings_of(spec->mattress_width, spec->mattress_length);
    return cover;
}

muslin_status muslin_bed_covered(const struct muslin_bed_covered_spec *spec, struct muslin_bed_cover *out,
                                 struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct muslin_bed_covered_spec s = { 0 };
    read_cover(&check, &s, spec);
    msl_want_output(&check, out, (uint32_t)sizeof *out);
    if (check.status != MUSLIN_OK)
        return check.status;
    struct muslin_bed_cover cover = cover_of(&s);
    msl_write_struct(out, &cover, (uint32_t)sizeof cover);
    return MUSLIN_OK;
}
