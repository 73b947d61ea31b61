/* setting_line.c - a line of blocks of unequal size: its whole, and where each block lies.
 *
 * SPDX-License-Identifier: MIT */
#include "muslin/setting.h"

#include "inside.h"

muslin_status muslin_setting_line_spec_init(struct muslin_setting_line_spec *spec, uint32_t size)
{
    const struct muslin_setting_line_spec initial = MUSLIN_SETTING_LINE_SPEC_INIT;
    return msl_init_struct(spec, size, &initial, (uint32_t)sizeof initial, (uint32_t)sizeof initial);
}

static int has_frame(const struct muslin_setting_line_spec *spec)
{
    return (spec->flags & MUSLIN_SETTING_LINE_FRAME) != 0;
}

/* The request, but for the sizes. n is compared as it is, for a size_t may be wider than a count. */
static void read_line(struct msl_check *check, struct muslin_setting_line_spec *spec,
                      const struct muslin_setting_line_spec *from, const muslin_len *sizes, size_t n)
{
    msl_read_struct(check, MUSLIN_ARG_SPEC, spec, (uint32_t)sizeof *spec, (uint32_t)sizeof *spec,
                    MUSLIN_SETTING_LINE_FRAME, from);
    msl_want_size(check, MUSLIN_ARG_SASH_WIDTH, spec->sash);
    msl_want_seam(check, MUSLIN_ARG_SEAM_ALLOWANCE, spec->allowance);
    msl_want_seam(check, MUSLIN_ARG_TAKE_UP, spec->take_up);
    msl_want_size(check, MUSLIN_ARG_FINISHED, spec->wanted);
    msl_want_some_count(check, MUSLIN_ARG_BLOCKS, n > MUSLIN_COUNT_MAX ? MUSLIN_COUNT_MAX + 1 : (int64_t)n);
    msl_want_pointer(check, MUSLIN_ARG_BLOCK_WIDTH, sizes);
}

/* The finished line. n sizes and n + 1 sashes, each at most 2^30, add up to below 2^62. */
static muslin_len line_of(struct msl_check *check, const struct muslin_setting_line_spec *spec, const muslin_len *sizes,
                          size_t n)
{
    if (check->status != MUSLIN_OK)
        return 0;
    int64_t sashes = has_frame(spec) ? (int64_t)n + 1 : (int64_t)n - 1;
    muslin_len finished = sashes * spec->sash;
    for (size_t i = 0; i < n; i++) {
        check->at = (int64_t)i;
        msl_want_some_size(check, MUSLIN_ARG_BLOCK_WIDTH, sizes[i]);
        if (check->status != MUSLIN_OK)
            return 0;
        finished += sizes[i];
    }
    check->at = 0;
    msl_want_size(check, MUSLIN_ARG_LENGTH, finished);
    return finished;
}

muslin_status muslin_setting_line(const muslin_len *sizes, size_t n, const struct muslin_setting_line_spec *spec,
                                  struct muslin_setting_line_plan *out, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct muslin_setting_line_spec s = { 0 };
    struct muslin_setting_line_plan line = { 0 };
    read_line(&check, &s, spec, sizes, n);
    msl_want_output(&check, out, (uint32_t)sizeof *out);
    line.finished = line_of(&check, &s, sizes, n);
    if (check.status != MUSLIN_OK)
        return check.status;
    line.sashes = s.sash == 0 ? 0 : has_frame(&s) ? (int64_t)n + 1 : (int64_t)n - 1;
    line.unfinished = line.finished + 2 * s.allowance + s.take_up;
    line.longer_by = s.wanted == 0 ? 0 : line.finished - s.wanted;
    msl_write_struct(out, &line, (uint32_t)sizeof line);
    return check.status;
}

static void write_places(struct muslin_setting_line_place *rows, size_t row_size,
                         const struct muslin_setting_line_spec *spec, const muslin_len *sizes, size_t n)
{
    struct muslin_setting_line_place place = { 0 };
    place.start = has_frame(spec) ? spec->sash : 0;
    for (size_t i = 0; i < n; i++) {
        place.finished = sizes[i];
        place.unfinished = sizes[i] + 2 * spec->allowance + spec->take_up;
        msl_write_row(rows, row_size, i, &place, (uint32_t)sizeof place);
        place.start += sizes[i] + spec->sash;
    }
}

muslin_status muslin_setting_line_places(const muslin_len *sizes, size_t n, const struct muslin_setting_line_spec *spec,
                                         struct muslin_setting_line_place *rows, size_t row_size, size_t capacity,
                                         size_t *count, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct muslin_setting_line_spec s = { 0 };
    read_line(&check, &s, spec, sizes, n);
    (void)line_of(&check, &s, sizes, n);
    if (check.status != MUSLIN_OK)
        return check.status;
    if (msl_rows_wanted(&check, rows, row_size, (uint32_t)sizeof *rows, capacity, count, n))
        write_places(rows, row_size, &s, sizes, n);
    return check.status;
}
