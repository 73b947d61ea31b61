/* shrinkage.c - what washing and quilting do to a size: dimensional change, and the size to make.
 *
 * SPDX-License-Identifier: MIT
 *
 * After the checks a size is at most 2^30 and a share below 10^6, so two sizes, or two shares kept, multiply within 64
 * bits; what is more goes through wide numbers. */
#include "muslin/shrinkage.h"

#include "wide.h"

/* The most that a measured size may have grown, in times. */
enum { GROWTH_MAX = 10 };

static const int64_t ppm_square = (int64_t)MUSLIN_PPM * MUSLIN_PPM;

/* numerator / denominator (above 0) to the nearest, ties up, where that is known to be within a length's range. */
static int64_t nearest(struct msl_wide numerator, int64_t denominator)
{
    const struct muslin_rounding_spec rounding = MUSLIN_ROUNDING_SPEC_INIT;
    struct muslin_rounded rounded = { 0 };
    (void)msl_wide_round(numerator, denominator, &rounding, &rounded);
    return rounded.value;
}

/* A share lost, and what is left of one whole. */
static void want_loss(struct msl_check *check, int32_t argument, int64_t at, int32_t share)
{
    check->at = at;
    msl_want_between(check, argument, share, 0, MUSLIN_PPM - 1);
    check->at = 0;
}

static int64_t kept(int32_t share)
{
    return MUSLIN_PPM - share;
}

/* ---- what was measured ----------------------------------------------------------------------------------------- */

static void want_measured(struct msl_check *check, int64_t at, muslin_len before, muslin_len after)
{
    check->at = at;
    msl_want_some_size(check, MUSLIN_ARG_MEASURED, before);
    check->at = at + 1;
    msl_want_size(check, MUSLIN_ARG_MEASURED, after);
    if (check->status == MUSLIN_OK && after > GROWTH_MAX * before)
        msl_fail(check, MUSLIN_ERR_RANGE, MUSLIN_ARG_MEASURED, after, GROWTH_MAX * before);
    check->at = 0;
}

/* Of two lengths or two areas, the second at most 100 times the first. */
static int32_t change_of(int64_t before, int64_t after)
{
    return (int32_t)nearest(msl_wide_multiply(after - before, MUSLIN_PPM), before);
}

muslin_status muslin_shrinkage_change(muslin_len before, muslin_len after, int32_t *ppm, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    want_measured(&check, 0, before, after);
    msl_want_pointer(&check, MUSLIN_ARG_OUTPUT, ppm);
    if (check.status == MUSLIN_OK)
        *ppm = change_of(before, after);
    return check.status;
}

muslin_status muslin_wash_spec_init(struct muslin_wash_spec *spec, uint32_t size)
{
    const struct muslin_wash_spec initial = MUSLIN_WASH_SPEC_INIT;
    return msl_init_struct(spec, size, &initial, (uint32_t)sizeof initial, (uint32_t)sizeof initial);
}

muslin_status muslin_shrinkage_measure(const struct muslin_wash_spec *spec, struct muslin_wash_change *out,
                                       struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct muslin_wash_spec s = { 0 };
    msl_read_struct(&check, MUSLIN_ARG_SPEC, &s, (uint32_t)sizeof s, (uint32_t)sizeof s, 0, spec);
    msl_want_output(&check, out, (uint32_t)sizeof *out);
    want_measured(&check, 0, s.before_width, s.after_width);
    want_measured(&check, 2, s.before_length, s.after_length);
    if (check.status != MUSLIN_OK)
        return check.status;
    struct muslin_wash_change wash = { 0 };
    wash.area_before = 2 * s.before_width * s.before_length;
    wash.area_after = 2 * s.after_width * s.after_length;
    wash.change_across = change_of(s.before_width, s.after_width);
    wash.change_along = change_of(s.before_length, s.after_length);
    wash.change_area = change_of(wash.area_before, wash.area_after);
    msl_write_struct(out, &wash, (uint32_t)sizeof wash);
    return MUSLIN_OK;
}

/* ---- the size to make, and what a size becomes ----------------------------------------------------------------- */

muslin_status muslin_shrinkage_spec_init(struct muslin_shrinkage_spec *spec, uint32_t size)
{
    const struct muslin_shrinkage_spec initial = MUSLIN_SHRINKAGE_SPEC_INIT;
    return msl_init_struct(spec, size, &initial, (uint32_t)sizeof initial, (uint32_t)sizeof initial);
}

static void read_shrinkage(struct msl_check *check, struct muslin_shrinkage_spec *spec,
                           const struct muslin_shrinkage_spec *from)
{
    msl_read_struct(check, MUSLIN_ARG_SPEC, spec, (uint32_t)sizeof *spec, (uint32_t)sizeof *spec, 0, from);
    msl_want_size(check, MUSLIN_ARG_QUILT_WIDTH, spec->width);
    msl_want_size(check, MUSLIN_ARG_QUILT_LENGTH, spec->length);
    want_loss(check, MUSLIN_ARG_QUILTING_LOSS, 0, spec->quilting_across);
    want_loss(check, MUSLIN_ARG_QUILTING_LOSS, 1, spec->quilting_along);
    want_loss(check, MUSLIN_ARG_SHRINKAGE, 0, spec->washing_across);
    want_loss(check, MUSLIN_ARG_SHRINKAGE, 1, spec->washing_along);
}

/* One direction of a quilt, the size wanted or made; and the size to make for it. */
struct side {
    muslin_len size;
    int32_t quilting;
    int32_t washing;
};

struct side_to_make {
    struct muslin_rounded make;
    muslin_len quilted;
    muslin_len washed;
    muslin_len multiplied;
    muslin_len short_by;
};

static struct side across_of(const struct muslin_shrinkage_spec *s)
{
    const struct side side = { s->width, s->quilting_across, s->washing_across };
    return side;
}

static struct side along_of(const struct muslin_shrinkage_spec *s)
{
    const struct side side = { s->length, s->quilting_along, s->washing_along };
    return side;
}

/* The part of one whole that is left, times 10^12. */
static int64_t kept_of(struct side side)
{
    return kept(side.quilting) * kept(side.washing);
}

/* What a made size (up to MUSLIN_LENGTH_MAX) ends at. */
static muslin_len washed_of(struct side side, muslin_len made)
{
    return nearest(msl_wide_multiply(made, kept_of(side)), ppm_square);
}

/* What the exact product of multiplying ends at: size x (1 - q^2)(1 - w^2). The size times the first factor is split
 * into a whole number and a rest; what is lost of the rest's share is less than one of its 10^12 parts, too little to
 * reach the next half. */
static muslin_len multiplied_end(struct side side)
{
    int64_t by_quilting = ppm_square - (int64_t)side.quilting * side.quilting;
    int64_t by_washing = ppm_square - (int64_t)side.washing * side.washing;
    int64_t whole = 0;
    int64_t rest = 0;
    int64_t part = 0;
    int64_t lost = 0;
    (void)msl_wide_floor(msl_wide_multiply(side.size, by_quilting), ppm_square, &whole, &rest);
    (void)msl_wide_floor(msl_wide_multiply(rest, by_washing), ppm_square, &part, &lost);
    return nearest(msl_wide_add(msl_wide_multiply(whole, by_washing), msl_wide_from(part)), ppm_square);
}

static void make_side(struct msl_check *check, int32_t argument, struct side side,
                      const struct muslin_rounding_spec *rounding, struct side_to_make *out)
{
    int64_t grown = (int64_t)(MUSLIN_PPM + side.quilting) * (MUSLIN_PPM + side.washing);
    muslin_status status =
        msl_wide_round(msl_wide_multiply(side.size, ppm_square), kept_of(side), rounding, &out->make);
    if (status != MUSLIN_OK)
        msl_fail(check, status, argument, side.size, 0);
    out->quilted = nearest(msl_wide_multiply(side.size, MUSLIN_PPM), kept(side.washing));
    out->washed = washed_of(side, out->make.value);
    out->multiplied = nearest(msl_wide_multiply(side.size, grown), ppm_square);
    out->short_by = side.size - multiplied_end(side);
}

static struct muslin_size_to_make both_sides(const struct side_to_make *across, const struct side_to_make *along)
{
    struct muslin_size_to_make made = { 0 };
    made.make_width = across->make.value;
    made.make_length = along->make.value;
    made.quilted_width = across->quilted;
    made.quilted_length = along->quilted;
    made.washed_width = across->washed;
    made.washed_length = along->washed;
    made.multiplied_width = across->multiplied;
    made.multiplied_length = along->multiplied;
    made.short_width = across->short_by;
    made.short_length = along->short_by;
    made.width_exact = across->make.exact;
    made.length_exact = along->make.exact;
    return made;
}

muslin_status muslin_shrinkage_size_to_make(const struct muslin_shrinkage_spec *spec,
                                            const struct muslin_rounding_spec *rounding,
                                            struct muslin_size_to_make *out, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct muslin_shrinkage_spec s = { 0 };
    struct muslin_rounding_spec r = { 0 };
    struct side_to_make across = { 0 };
    struct side_to_make along = { 0 };
    read_shrinkage(&check, &s, spec);
    msl_read_rounding(&check, &r, rounding);
    msl_want_output(&check, out, (uint32_t)sizeof *out);
    if (check.status != MUSLIN_OK)
        return check.status;
    make_side(&check, MUSLIN_ARG_QUILT_WIDTH, across_of(&s), &r, &across);
    make_side(&check, MUSLIN_ARG_QUILT_LENGTH, along_of(&s), &r, &along);
    if (check.status != MUSLIN_OK)
        return check.status;
    struct muslin_size_to_make made = both_sides(&across, &along);
    msl_write_struct(out, &made, (uint32_t)sizeof made);
    return MUSLIN_OK;
}

/* size x kept / whole, rounded as asked; no more than the size and a step of the grid. */
static muslin_len part_of(muslin_len size, int64_t kept_part, int64_t whole,
                          const struct muslin_rounding_spec *rounding)
{
    struct muslin_rounded rounded = { 0 };
    (void)msl_wide_round(msl_wide_multiply(size, kept_part), whole, rounding, &rounded);
    return rounded.value;
}

/* The part of an area that is left, less one whole, in ppm: 10^24 over 10^18 is 10^6. */
static int32_t area_change(struct side across, struct side along)
{
    struct msl_wide left = msl_wide_multiply(kept_of(across), kept_of(along));
    return (int32_t)(nearest(left, ppm_square * MUSLIN_PPM) - MUSLIN_PPM);
}

static struct muslin_washed_size become(struct side across, struct side along,
                                        const struct muslin_rounding_spec *rounding)
{
    struct muslin_washed_size became = { 0 };
    became.quilted_width = part_of(across.size, kept(across.quilting), MUSLIN_PPM, rounding);
    became.quilted_length = part_of(along.size, kept(along.quilting), MUSLIN_PPM, rounding);
    became.washed_width = part_of(across.size, kept_of(across), ppm_square, rounding);
    became.washed_length = part_of(along.size, kept_of(along), ppm_square, rounding);
    became.change_across = (int32_t)nearest(msl_wide_from(kept_of(across) - ppm_square), MUSLIN_PPM);
    became.change_along = (int32_t)nearest(msl_wide_from(kept_of(along) - ppm_square), MUSLIN_PPM);
    became.change_area = area_change(across, along);
    return became;
}

muslin_status muslin_shrinkage_becomes(const struct muslin_shrinkage_spec *spec,
                                       const struct muslin_rounding_spec *rounding, struct muslin_washed_size *out,
                                       struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct muslin_shrinkage_spec s = { 0 };
    struct muslin_rounding_spec r = { 0 };
    read_shrinkage(&check, &s, spec);
    msl_read_rounding(&check, &r, rounding);
    msl_want_output(&check, out, (uint32_t)sizeof *out);
    if (check.status != MUSLIN_OK)
        return check.status;
    struct muslin_washed_size became = become(across_of(&s), along_of(&s), &r);
    msl_write_struct(out, &became, (uint32_t)sizeof became);
    return MUSLIN_OK;
}

muslin_status muslin_shrinkage_from_sample(muslin_len before, muslin_len after, muslin_len target,
                                           const struct muslin_rounding_spec *rounding, struct muslin_rounded *out,
                                           struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct muslin_rounding_spec r = { 0 };
    struct muslin_rounded make = { 0 };
    msl_want_some_size(&check, MUSLIN_ARG_MEASURED, before);
    check.at = 1;
    msl_want_some_size(&check, MUSLIN_ARG_MEASURED, after);
    check.at = 0;
    msl_want_size(&check, MUSLIN_ARG_FINISHED, target);
    msl_read_rounding(&check, &r, rounding);
    msl_want_output(&check, out, (uint32_t)sizeof *out);
    if (check.status != MUSLIN_OK)
        return check.status;
    (void)msl_wide_round(msl_wide_multiply(target, before), after, &r, &make); /* at most 2^60 and a step */
    msl_write_struct(out, &make, (uint32_t)sizeof make);
    return MUSLIN_OK;
}

/* ---- fabric and batting ---------------------------------------------------------------------------------------- */

static int32_t source_of(int32_t fabric, int32_t batting, int32_t rule)
{
    if (rule == MUSLIN_GOVERNING_RULE_BATTING)
        return MUSLIN_GOVERNING_SOURCE_BATTING;
    if (rule == MUSLIN_GOVERNING_RULE_FABRIC)
        return MUSLIN_GOVERNING_SOURCE_FABRIC;
    if (fabric == batting)
        return MUSLIN_GOVERNING_SOURCE_BOTH;
    return (rule == MUSLIN_GOVERNING_RULE_LARGER) == (batting > fabric) ? MUSLIN_GOVERNING_SOURCE_BATTING
                                                                        : MUSLIN_GOVERNING_SOURCE_FABRIC;
}

muslin_status muslin_shrinkage_governs(int32_t fabric, int32_t batting, int32_t governing_rule,
                                       struct muslin_governing *out, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct muslin_governing governing = { 0 };
    want_loss(&check, MUSLIN_ARG_SHRINKAGE, 0, fabric);
    want_loss(&check, MUSLIN_ARG_SHRINKAGE, 1, batting);
    msl_want_choice(&check, MUSLIN_ARG_GOVERNING_RULE, governing_rule, MUSLIN_GOVERNING_RULE_BATTING,
                    MUSLIN_GOVERNING_RULE_SMALLER);
    msl_want_output(&check, out, (uint32_t)sizeof *out);
    if (check.status != MUSLIN_OK)
        return check.status;
    governing.source = source_of(fabric, batting, governing_rule);
    governing.share = governing.source == MUSLIN_GOVERNING_SOURCE_FABRIC ? fabric : batting;
    msl_write_struct(out, &governing, (uint32_t)sizeof governing);
    return MUSLIN_OK;
}

/* ---- cloth that is washed before it is cut --------------------------------------------------------------------- */

muslin_status muslin_prewash_spec_init(struct muslin_prewash_spec *spec, uint32_t size)
{
    const struct muslin_prewash_spec initial = MUSLIN_PREWASH_SPEC_INIT;
    return msl_init_struct(spec, size, &initial, (uint32_t)sizeof initial, (uint32_t)sizeof initial);
}

muslin_status muslin_shrinkage_prewash(const struct muslin_prewash_spec *spec, struct muslin_prewash *out,
                                       struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct muslin_prewash_spec s = { 0 };
    struct muslin_prewash wash = { 0 };
    msl_read_struct(&check, MUSLIN_ARG_SPEC, &s, (uint32_t)sizeof s, (uint32_t)sizeof s, 0, spec);
    msl_want_output(&check, out, (uint32_t)sizeof *out);
    msl_want_size(&check, MUSLIN_ARG_CLOTH_LENGTH, s.needed_length);
    msl_want_size(&check, MUSLIN_ARG_USABLE_WIDTH, s.usable_width);
    want_loss(&check, MUSLIN_ARG_SHRINKAGE, 0, s.across);
    want_loss(&check, MUSLIN_ARG_SHRINKAGE, 1, s.along);
    if (check.status != MUSLIN_OK)
        return check.status;
    wash.unshrunk_length = msl_divided_up(s.needed_length * MUSLIN_PPM, kept(s.along));
    wash.washed_width = s.usable_width * kept(s.across) / MUSLIN_PPM;
    wash.lost_length = wash.unshrunk_length - s.needed_length;
    wash.lost_width = s.usable_width - wash.washed_width;
    msl_write_struct(out, &wash, (uint32_t)sizeof wash);
    return MUSLIN_OK;
}
