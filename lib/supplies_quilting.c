/* supplies_quilting.c - lines of quilting: how many, and how long together.
 *
 * SPDX-License-Identifier: MIT
 *
 * A line at 45 degrees over a w x h area, at the distance p from the corner it cuts off, is a chord of
 *
 *     2 p                     up to p = m / sqrt 2, the nearer corner (m is the shorter side, M the longer),
 *     sqrt 2 m                up to p = M / sqrt 2,
 *     sqrt 2 (w + h) - 2 p    up to p = (w + h) / sqrt 2, the far corner.
 *
 * So a sum of chords is a + b sqrt 2 with whole a and b, and is rounded once. Sides are at most 2^30. Then no distance
 * passes 2^30.5, and one way has at most 2^30.5 lines with |a| <= 2^60 and b <= 2^60.5: b is sqrt 2 w h / d but for the
 * ends of its ranges. */
#include "muslin/supplies.h"

#include "supplies_inside.h"
#include "surd.h"

muslin_status muslin_quilting_spec_init(struct muslin_quilting_spec *spec, uint32_t size)
{
    const struct muslin_quilting_spec initial = MUSLIN_QUILTING_SPEC_INIT;
    return msl_init_struct(spec, size, &initial, (uint32_t)sizeof initial, (uint32_t)sizeof initial);
}

static void read_quilting(struct msl_check *check, struct muslin_quilting_spec *spec,
                          const struct muslin_quilting_spec *from)
{
    msl_read_struct(check, MUSLIN_ARG_SPEC, spec, (uint32_t)sizeof *spec, (uint32_t)sizeof *spec, 0, from);
    muslin_len least = spec->pattern == MUSLIN_QUILTING_PATTERN_OUTLINE ? 0 : 1;
    msl_want_between(check, MUSLIN_ARG_QUILT_WIDTH, spec->width, least, MUSLIN_SIZE_MAX);
    msl_want_between(check, MUSLIN_ARG_QUILT_LENGTH, spec->length, least, MUSLIN_SIZE_MAX);
    msl_want_some_size(check, MUSLIN_ARG_SPACING, spec->spacing);
    msl_want_size(check, MUSLIN_ARG_OFFSET, spec->offset);
    msl_want_between(check, MUSLIN_ARG_LENGTH, spec->outline, 0, MUSLIN_LENGTH_MAX / 2);
    msl_want_count(check, MUSLIN_ARG_PASSES, spec->passes);
    msl_want_choice(check, MUSLIN_ARG_PATTERN, spec->pattern, MUSLIN_QUILTING_PATTERN_ACROSS,
                    MUSLIN_QUILTING_PATTERN_OUTLINE);
    msl_want_choice(check, MUSLIN_ARG_START, spec->start, MUSLIN_QUILTING_START_AT_OFFSET,
                    MUSLIN_QUILTING_START_FROM_CORNER);
}

/* ---- straight lines --------------------------------------------------------------------------------------------- */

struct straight {
    int64_t lines;
    muslin_len left;
    muslin_len even;
    muslin_len last; /* from the last line to its edge */
};

/* Lines side by side over `extent`. */
static struct straight lay_straight(const struct muslin_quilting_spec *spec, muslin_len extent)
{
    struct straight laid = { 0 };
    muslin_len room = extent - 2 * spec->offset;
    if (room < 0)
        return laid;
    laid.lines = room / spec->spacing + 1;
    laid.left = room % spec->spacing;
    laid.last = spec->offset + laid.left;
    if (laid.lines > 1)
        laid.even = room / (laid.lines - 1);
    return laid;
}

static void quilt_straight(const struct muslin_quilting_spec *s, struct muslin_quilting *quilting)
{
    const struct straight none = { 0 };
    struct straight across = s->pattern == MUSLIN_QUILTING_PATTERN_ALONG ? none : lay_straight(s, s->length);
    struct straight along = s->pattern == MUSLIN_QUILTING_PATTERN_ACROSS ? none : lay_straight(s, s->width);
    quilting->lines_first = across.lines;
    quilting->left_first = across.left;
    quilting->even_first = across.even;
    quilting->lines_second = along.lines;
    quilting->left_second = along.left;
    quilting->even_second = along.even;
    quilting->last_first = across.last;
    quilting->last_second = along.last;
    quilting->length = across.lines * s->width + along.lines * s->length;
    quilting->exact = 1;
}

/* ---- diagonals -------------------------------------------------------------------------------------------------- */

/* Lines and their length together, whole + root x sqrt 2. */
struct chords {
    int64_t lines;
    int64_t whole;
    int64_t root;
};

/* floor(a / sqrt 2), a at most 2^31: whole distances up to it are those up to a / sqrt 2. */
static muslin_len over_root2(muslin_len a)
{
    const struct msl_surd value = msl_surd_of(0, a, 2, 2);
    return msl_surd_floor(&value);
}

/* Distances first, first + d, ... */
struct steps {
    muslin_len first;
    muslin_len spacing;
};

/* How many of them are not above `last`. */
static int64_t steps_up_to(struct steps steps, muslin_len last)
{
    return last < steps.first ? 0 : (last - steps.first) / steps.spacing + 1;
}

/* Twice the sum of the distances from the number `from` up to before `to`: both ends added, times how many. */
static int64_t twice_the_sum(struct steps steps, int64_t from, int64_t to)
{
    if (from >= to)
        return 0;
    return (2 * steps.first + steps.spacing * (from + to - 1)) * (to - from);
}

/* From the corner that the lines cut off. A line through the corner itself is a point and left out. */
static struct chords cut_corners(const struct muslin_quilting_spec *s, muslin_len shorter, muslin_len longer)
{
    const struct steps steps = { s->offset == 0 ? s->spacing : s->offset, s->spacing };
    struct chords chords = { 0 };
    chords.lines = steps_up_to(steps, over_root2(shorter + longer) - s->offset);
    int64_t rising = msl_lesser(chords.lines, steps_up_to(steps, over_root2(shorter)));
    int64_t level = msl_lesser(chords.lines, steps_up_to(steps, over_root2(longer)));
    chords.whole = twice_the_sum(steps, 0, rising) - twice_the_sum(steps, level, chords.lines);
    chords.root = shorter * (level - rising) + (shorter + longer) * (chords.lines - level);
    return chords;
}

/* From the line that starts in a corner, to its two sides; towards the longer side the chords stay level at first. */
static struct chords start_in_corner(const struct muslin_quilting_spec *s, muslin_len shorter, muslin_len longer)
{
    const struct steps steps = { s->spacing, s->spacing };
    struct chords chords = { 0 };
    int64_t level = steps_up_to(steps, over_root2(longer - shorter));
    int64_t towards_longer = steps_up_to(steps, over_root2(longer));
    int64_t towards_shorter = steps_up_to(steps, over_root2(shorter));
    chords.lines = 1 + towards_longer + towards_shorter;
    chords.whole = -twice_the_sum(steps, level, towards_longer) - twice_the_sum(steps, 0, towards_shorter);
    chords.root = shorter * (1 + level + towards_shorter) + longer * (towards_longer - level);
    return chords;
}

/* One or two times the length, up. Doubling is left to the end: the value is irrational or whole, so its half of a
 * tick tells the last tick of the double. */
static void add_up(const struct chords *chords, int64_t ways, struct muslin_quilting *quilting)
{
    const struct msl_surd value = { .whole = chords->whole,
                                    .sign = 1,
                                    .radicand = msl_wide_multiply(chords->root, 2 * chords->root),
                                    .divisor = 1 };
    struct msl_exact length = msl_surd_exact(&value);
    quilting->exact = length.on_tick;
    quilting->length = ways * length.floor;
    if (!length.on_tick)
        quilting->length += ways == 1 ? 1 : 1 + length.upper_half;
}

static void quilt_diagonally(const struct muslin_quilting_spec *s, struct muslin_quilting *quilting)
{
    int64_t ways = s->pattern == MUSLIN_QUILTING_PATTERN_CROSSHATCH ? 2 : 1;
    muslin_len shorter = msl_lesser(s->width, s->length);
    muslin_len longer = s->width + s->length - shorter;
    struct chords chords = s->start == MUSLIN_QUILTING_START_AT_OFFSET ? cut_corners(s, shorter, longer)
                                                                 : start_in_corner(s, shorter, longer);
    add_up(&chords, ways, quilting);
    quilting->lines_first = chords.lines;
    quilting->lines_second = (ways - 1) * chords.lines;
}

/* ---- all patterns ----------------------------------------------------------------------------------------------- */

static void quilt_outline(struct msl_check *check, const struct muslin_quilting_spec *s,
                          struct muslin_quilting *quilting)
{
    if (s->passes > 0 && s->outline > MUSLIN_LENGTH_MAX / s->passes) {
        msl_fail(check, MUSLIN_ERR_OVERFLOW, MUSLIN_ARG_PASSES, s->passes, MUSLIN_LENGTH_MAX / s->outline);
        return;
    }
    quilting->lines_first = s->passes;
    quilting->length = s->outline * s->passes;
    quilting->exact = 1;
}

muslin_status muslin_quilting_lines(const struct muslin_quilting_spec *spec, struct muslin_quilting *out,
                                    struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct muslin_quilting_spec s = { 0 };
    struct muslin_quilting quilting = { 0 };
    read_quilting(&check, &s, spec);
    msl_want_output(&check, out, (uint32_t)sizeof *out);
    if (check.status != MUSLIN_OK)
        return check.status;
    if (s.pattern <= MUSLIN_QUILTING_PATTERN_GRID)
        quilt_straight(&s, &quilting);
    else if (s.pattern <= MUSLIN_QUILTING_PATTERN_CROSSHATCH)
        quilt_diagonally(&s, &quilting);
    else
        quilt_outline(&check, &s, &quilting);
    quilting.lines = quilting.lines_first + quilting.lines_second;
    if (check.status == MUSLIN_OK)
        msl_write_struct(out, &quilting, (uint32_t)sizeof quilting);
    return check.status;
}
