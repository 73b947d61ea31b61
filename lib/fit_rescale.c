/* fit_rescale.c - a pattern made larger or smaller, and the scales that keep it on the ruler's marks.
 *
 * SPDX-License-Identifier: MIT
 *
 * Let G be the greatest common divisor of the finished sizes, so that each is f G with a whole f, and P = 2 s + u. A
 * scale that puts every cut size on the grid g makes G into some U with f U + P a multiple of g for every f. As
 * G = sum of a F for whole a (and so the sum of a f is 1), U is a whole number too, and
 *     U = sum of a f U = - P x sum of a   (mod g)
 * is the one remainder it can have; whether it serves all f is then tried. So the scales are U / G for U in steps of g.
 */
#include "muslin/fit.h"

#include "wide.h"

muslin_status muslin_fit_rescale_spec_init(struct muslin_fit_rescale_spec *spec, uint32_t size)
{
    const struct muslin_fit_rescale_spec initial = MUSLIN_FIT_RESCALE_SPEC_INIT;
    return msl_init_struct(spec, size, &initial, (uint32_t)sizeof initial, (uint32_t)sizeof initial);
}

muslin_status muslin_fit_rescale_row_init(struct muslin_fit_rescale_row *row, uint32_t size)
{
    static const struct muslin_fit_rescale_row initial = MUSLIN_FIT_RESCALE_ROW_INIT;
    return msl_init_struct(row, size, &initial, (uint32_t)sizeof initial, (uint32_t)sizeof initial);
}

/* The caller's rows, each of its own size, at a stride of row_size. */
struct pattern {
    struct muslin_fit_rescale_row *rows;
    size_t row_size;
    size_t n;
};

static void read_rescale(struct msl_check *check, struct muslin_fit_rescale_spec *spec,
                         const struct muslin_fit_rescale_spec *from)
{
    msl_read_struct(check, MUSLIN_ARG_SPEC, spec, (uint32_t)sizeof *spec, (uint32_t)sizeof *spec, 0, from);
    msl_want_between(check, MUSLIN_ARG_RATIO, spec->numerator, 1, INT64_MAX);
    msl_want_between(check, MUSLIN_ARG_DENOMINATOR, spec->denominator, 1, INT64_MAX);
    msl_want_seam(check, MUSLIN_ARG_SEAM_ALLOWANCE, spec->allowance);
    msl_want_seam(check, MUSLIN_ARG_TAKE_UP, spec->take_up);
    msl_want_some_size(check, MUSLIN_ARG_GRID, spec->grid);
}

static void want_pattern(struct msl_check *check, const struct pattern *pattern)
{
    int64_t n = pattern->n > (size_t)MUSLIN_COUNT_MAX ? MUSLIN_COUNT_MAX + 1 : (int64_t)pattern->n;
    msl_want_pointer(check, MUSLIN_ARG_ROWS, pattern->rows);
    msl_want_row_size(check, pattern->row_size, (uint32_t)sizeof *pattern->rows);
    msl_want_some_count(check, MUSLIN_ARG_PIECES, n);
}

static struct muslin_fit_rescale_row read_row(struct msl_check *check, const struct pattern *pattern, size_t index)
{
    struct muslin_fit_rescale_row row = { 0 };
    msl_read_struct(check, MUSLIN_ARG_ROWS, &row, (uint32_t)sizeof row, (uint32_t)sizeof row, 0,
                    msl_row_to_read(check, pattern->rows, pattern->row_size, index));
    return row;
}

static muslin_len seam_of(const struct muslin_fit_rescale_spec *spec)
{
    return 2 * spec->allowance + spec->take_up;
}

/* ---- one size ---------------------------------------------------------------------------------------------------- */

/* length x numerator / denominator: whole ticks, the rest in denominators, and whether the rest is half a tick or
 * more. */
struct scaled {
    int64_t floor;
    int64_t rest;
    int half_or_more;
};

/* Returns 0 when the scaled size, to the nearest tick, passes MUSLIN_SIZE_MAX. */
static int scale(struct scaled *scaled, muslin_len length, const struct muslin_fit_rescale_spec *spec)
{
    if (!msl_wide_floor(msl_wide_multiply(length, spec->numerator), spec->denominator, &scaled->floor, &scaled->rest))
        return 0;
    scaled->half_or_more = scaled->rest >= spec->denominator - scaled->rest;
    return scaled->floor + scaled->half_or_more <= MUSLIN_SIZE_MAX;
}

static struct muslin_rounded to_marks(const struct scaled *scaled, const struct muslin_fit_rescale_spec *spec,
                                      int32_t direction)
{
    struct muslin_rounding_spec rounding = MUSLIN_ROUNDING_SPEC_INIT;
    struct muslin_rounded rounded = { 0 };
    struct msl_exact cut = { scaled->floor + seam_of(spec), scaled->rest == 0, scaled->half_or_more };
    rounding.grid = spec->grid;
    rounding.direction = direction;
    (void)msl_grid_round(cut, &rounding, &rounded); /* cannot overflow: a cut is below 2^31 */
    return rounded;
}

/* Something shall be seen of every answer. The exact cut is above what its seams take, and so is the mark above it. */
static void find_row(struct muslin_fit_rescale_row *row, const struct muslin_fit_rescale_spec *spec)
{
    struct scaled scaled = { 0 };
    (void)scale(&scaled, row->finished, spec);
    row->new_finished = scaled.floor + scaled.half_or_more;
    row->rest = scaled.half_or_more ? scaled.rest - spec->denominator : scaled.rest;
    row->new_cut = row->new_finished + seam_of(spec);
    struct muslin_rounded below = to_marks(&scaled, spec, MUSLIN_DIRECTION_DOWN);
    row->on_grid = below.exact;
    row->cut_above = to_marks(&scaled, spec, MUSLIN_DIRECTION_UP).value;
    row->cut_nearest = to_marks(&scaled, spec, MUSLIN_DIRECTION_NEAREST).value;
    row->cut_below = below.value > seam_of(spec) ? below.value : 0;
    if (row->cut_nearest <= seam_of(spec))
        row->cut_nearest = row->cut_above;
}

/* ---- the unit of all sizes --------------------------------------------------------------------------------------- */

/* The greatest common divisor of the sizes read so far, as a sum of whole multiples of them, and the sum of those
 * multiples, in the remainders of the grid. */
struct unit {
    muslin_len length;
    int64_t multiples;
    muslin_len largest; /* of the sizes */
};

/* a x b + c, in the remainders of `grid`; b and c are remainders already and a is within +-2^31. */
static int64_t remainder_of(int64_t a, int64_t b, int64_t c, muslin_len grid)
{
    int64_t rest = (a % grid * b + c) % grid;
    return rest < 0 ? rest + grid : rest;
}

/* Euclid's algorithm, keeping of each remainder how often it holds the unit; how often it holds the new size follows,
 * and only its remainder is wanted. The multiples stay below the sizes. */
static void join_unit(struct unit *unit, muslin_len size, muslin_len grid)
{
    int64_t a = unit->length;
    int64_t b = size;
    int64_t units_in_a = 1;
    int64_t units_in_b = 0;
    int64_t sizes_in_a = 0;
    int64_t sizes_in_b = 1;
    while (b != 0) {
        int64_t times = a / b;
        int64_t rest = a % b;
        int64_t units = units_in_a - times * units_in_b;
        int64_t sizes = sizes_in_a - times * sizes_in_b;
        a = b;
        b = rest;
        units_in_a = units_in_b;
        units_in_b = units;
        sizes_in_a = sizes_in_b;
        sizes_in_b = sizes;
    }
    unit->length = a;
    unit->multiples = remainder_of(units_in_a, unit->multiples, remainder_of(sizes_in_a, 1 % grid, 0, grid), grid);
    unit->largest = size > unit->largest ? size : unit->largest;
}

/* Reads all rows, checks that each can be scaled, and finds their unit. */
static struct unit find_unit(struct msl_check *check, const struct pattern *pattern,
                             const struct muslin_fit_rescale_spec *spec)
{
    struct unit unit = { 0 };
    for (size_t i = 0; i < pattern->n && check->status == MUSLIN_OK; i++) {
        struct muslin_fit_rescale_row row = read_row(check, pattern, i);
        struct scaled scaled;
        msl_want_some_size(check, MUSLIN_ARG_FINISHED, row.finished);
        if (check->status != MUSLIN_OK)
            return unit;
        if (!scale(&scaled, row.finished, spec))
            msl_fail(check, MUSLIN_ERR_OVERFLOW, MUSLIN_ARG_RATIO, row.finished, MUSLIN_SIZE_MAX);
        join_unit(&unit, row.finished, spec->grid);
    }
    return unit;
}

/* ---- scales that stay on the marks ------------------------------------------------------------------------------- */

/* Whether a unit with this remainder puts every size on the grid. */
static int serves_all(const struct pattern *pattern, const struct muslin_fit_rescale_spec *spec,
                      const struct unit *unit, int64_t remainder)
{
    struct msl_check check = msl_check_start(NULL);
    for (size_t i = 0; i < pattern->n; i++) {
        int64_t times = read_row(&check, pattern, i).finished / unit->length;
        if (remainder_of(times, remainder, seam_of(spec) % spec->grid, spec->grid) != 0)
            return 0;
    }
    return 1;
}

/* Units on both sides of the exact one that leave this remainder; 0 where there is none. */
static void find_units(struct muslin_fit_rescaled *found, const struct unit *unit, const struct scaled *exact,
                       const struct muslin_fit_rescale_spec *spec, int64_t remainder)
{
    muslin_len ceiling = exact->floor + (exact->rest != 0);
    muslin_len below = exact->floor - remainder_of(1, exact->floor % spec->grid, -remainder, spec->grid);
    muslin_len above = ceiling + remainder_of(-1, ceiling % spec->grid, remainder, spec->grid);
    found->unit_below = below > 0 ? below : 0;
    found->unit_above = unit->largest / unit->length * above <= MUSLIN_SIZE_MAX ? above : 0;
}

/* Twice the exact unit reaches the sum of the two when the one above is as near. Twice its fraction is below 2. */
static int above_is_nearer(const struct muslin_fit_rescaled *found, const struct scaled *exact)
{
    int64_t missing = found->unit_below + found->unit_above - 2 * exact->floor;
    if (found->unit_below == 0 || found->unit_above == 0)
        return found->unit_below == 0;
    return missing <= (exact->half_or_more ? 1 : 0);
}

static void find_scales(struct muslin_fit_rescaled *found, const struct pattern *pattern,
                        const struct muslin_fit_rescale_spec *spec, const struct unit *unit)
{
    struct scaled exact = { 0 };
    int64_t seam = seam_of(spec) % spec->grid;
    int64_t remainder = remainder_of(-seam, unit->multiples, 0, spec->grid);
    (void)scale(&exact, unit->length, spec); /* no larger than the sizes, which have been tried */
    found->unit = unit->length;
    if (serves_all(pattern, spec, unit, remainder))
        find_units(found, unit, &exact, spec, remainder);
    muslin_len nearest = above_is_nearer(found, &exact) ? found->unit_above : found->unit_below;
    int64_t divisor = msl_common_divisor(unit->length, nearest);
    found->numerator = nearest / divisor;
    found->denominator = unit->length / divisor;
}

static void write_rows(struct muslin_fit_rescaled *found, const struct pattern *pattern,
                       const struct muslin_fit_rescale_spec *spec)
{
    struct msl_check check = msl_check_start(NULL);
    for (size_t i = 0; i < pattern->n; i++) {
        struct muslin_fit_rescale_row row = read_row(&check, pattern, i);
        find_row(&row, spec);
        found->off_grid += !row.on_grid;
        msl_write_struct((unsigned char *)pattern->rows + i * pattern->row_size, &row, (uint32_t)sizeof row);
    }
    found->warnings = found->off_grid > 0 ? MUSLIN_WARN_OFF_GRID : 0;
}

muslin_status muslin_fit_rescale(const struct muslin_fit_rescale_spec *spec, struct muslin_fit_rescale_row *rows,
                                 size_t row_size, size_t n, struct muslin_fit_rescaled *out,
                                 struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct muslin_fit_rescale_spec s = { 0 };
    struct muslin_fit_rescaled found = { 0 };
    const struct pattern pattern = { rows, row_size, n };
    read_rescale(&check, &s, spec);
    want_pattern(&check, &pattern);
    msl_want_output(&check, out, (uint32_t)sizeof *out);
    if (check.status != MUSLIN_OK)
        return check.status;
    struct unit unit = find_unit(&check, &pattern, &s);
    if (check.status != MUSLIN_OK)
        return check.status;
    find_scales(&found, &pattern, &s, &unit);
    write_rows(&found, &pattern, &s);
    msl_write_struct(out, &found, (uint32_t)sizeof found);
    return MUSLIN_OK;
}
