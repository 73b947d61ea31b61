/* seam.c - what seams take off, put on, and turn out to take.
 *
 * SPDX-License-Identifier: MIT
 *
 * The contracts in ACSL hold for the ranges that the public functions check first: sizes to 2^30, allowances and
 * take-ups to 2^27, counts below 2^31. So every sum and single product here fits 64 bits; the rest is in wide.h. */
#include "muslin/seam.h"

#include "wide.h"

/* ---- the arithmetic of a seam ---------------------------------------------------------------------------------- */

/*@ requires 0 <= allowance <= 134217728 && 0 <= take_up <= 134217728;
    assigns \nothing;
    ensures \result == 2 * allowance + take_up;
    ensures 0 <= \result <= 402653184; */
static muslin_len taken_by_seam(muslin_len allowance, muslin_len take_up)
{
    return 2 * allowance + take_up;
}

/*@ requires 0 <= finished <= 1073741824 && 0 <= taken <= 402653184;
    assigns \nothing;
    ensures \result - taken == finished; */
static muslin_len with_seams(muslin_len finished, muslin_len taken)
{
    return finished + taken;
}

/*@ requires 0 <= total <= 2305843009213693952;
    requires 0 <= seams < 2147483648 && 0 <= taken <= 402653184;
    assigns \nothing;
    ensures \result == total - seams * taken; */
static muslin_len joined(muslin_len total, int64_t seams, muslin_len taken)
{
    return total - seams * taken;
}

/* Half a take-up for each edge that is sewn, in all up to a tick. */
/*@ requires 0 <= first <= 134217728 && 0 <= second <= 134217728 && 0 <= take_up <= 134217728;
    assigns \nothing;
    ensures first > 0 && second > 0 ==> \result == take_up;
    ensures first == 0 && second == 0 ==> \result == 0;
    ensures (first > 0 <==> second == 0) ==> take_up <= 2 * \result <= take_up + 1; */
static muslin_len taken_by_folds(muslin_len first, muslin_len second, muslin_len take_up)
{
    int64_t sewn_edges = (first > 0) + (second > 0);
    return (sewn_edges * take_up + 1) / 2;
}

/*@ requires 0 < b <= 8589934592 && -4611686027017322496 <= a <= 4611686027017322496;
    assigns \nothing;
    ensures \result * b <= a < (\result + 1) * b; */
static int64_t divided_down(int64_t a, int64_t b)
{
    return a / b - (a % b < 0);
}

/* a / b to the nearest, ties up. */
/*@ requires 0 < b <= 4294967296 && -2305843009213693952 <= a <= 2305843009213693952;
    assigns \nothing;
    ensures 2 * \result * b <= 2 * a + b < 2 * (\result + 1) * b; */
static int64_t divided_nearest(int64_t a, int64_t b)
{
    return divided_down(2 * a + b, 2 * b);
}

/* part / whole in ppm, 0 <= part <= whole, so the result is at most 1000000. */
static int32_t share_of(int64_t part, int64_t whole)
{
    const struct muslin_rounding_spec nearest = MUSLIN_ROUNDING_SPEC_INIT;
    struct muslin_rounded share = { 0 };
    msl_wide_round(msl_wide_multiply(part, MUSLIN_PPM), whole, &nearest, &share);
    return (int32_t)share.value;
}

/* ---- input read ------------------------------------------------------------------------------------------------ */

/* Returns 2 s + u; 0 after a failure. */
static muslin_len read_seam(struct msl_check *check, const struct muslin_seam_spec *from)
{
    struct muslin_seam_spec seam;
    msl_read_struct(check, MUSLIN_ARG_SPEC, &seam, (uint32_t)sizeof seam, (uint32_t)sizeof seam, 0, from);
    msl_want_seam(check, MUSLIN_ARG_SEAM_ALLOWANCE, seam.allowance);
    msl_want_seam(check, MUSLIN_ARG_TAKE_UP, seam.take_up);
    return check->status == MUSLIN_OK ? taken_by_seam(seam.allowance, seam.take_up) : 0;
}

/* A size that what the seams take may not exceed. */
static void want_room_for(struct msl_check *check, muslin_len taken, int32_t argument, muslin_len size)
{
    if (size < taken)
        msl_fail(check, MUSLIN_ERR_SEAM_TOO_WIDE, argument, size, taken);
}

/* A number of array elements as a count; anything above the range stays above it. */
static int64_t count_of(size_t n)
{
    return n > (size_t)MUSLIN_COUNT_MAX ? MUSLIN_COUNT_MAX + 1 : (int64_t)n;
}

/* The sum of the cuts, each of them at least as wide as the seams it bears; 0 after a failure. */
static muslin_len sum_of_cuts(struct msl_check *check, const muslin_len *cuts, size_t n, muslin_len taken)
{
    muslin_len total = 0;
    for (size_t i = 0; i < n; i++) {
        check->at = (int64_t)i;
        msl_want_some_size(check, MUSLIN_ARG_CUT, cuts[i]);
        want_room_for(check, taken, MUSLIN_ARG_CUT, cuts[i]);
        if (check->status != MUSLIN_OK)
            return 0;
        total += cuts[i];
    }
    check->at = 0;
    return total;
}

/* ---- cut and finished ------------------------------------------------------------------------------------------ */

muslin_status muslin_seam_spec_init(struct muslin_seam_spec *spec, uint32_t size)
{
    const struct muslin_seam_spec initial = MUSLIN_SEAM_SPEC_INIT;
    return msl_init_struct(spec, size, &initial, (uint32_t)sizeof initial, (uint32_t)sizeof initial);
}

/* Writes a size with its seams put on, or taken off; nothing after a failure. */
typedef void seam_change(struct msl_check *check, muslin_len size, muslin_len taken, muslin_len *out);

static void put_on(struct msl_check *check, muslin_len finished, muslin_len taken, muslin_len *out)
{
    msl_want_size(check, MUSLIN_ARG_FINISHED, finished);
    if (check->status == MUSLIN_OK)
        *out = with_seams(finished, taken);
}

static void want_cut(struct msl_check *check, muslin_len cut, muslin_len taken)
{
    msl_want_size(check, MUSLIN_ARG_CUT, cut);
    want_room_for(check, taken, MUSLIN_ARG_CUT, cut);
}

static void take_off(struct msl_check *check, muslin_len cut, muslin_len taken, muslin_len *out)
{
    want_cut(check, cut, taken);
    if (check->status == MUSLIN_OK)
        *out = joined(cut, 1, taken);
}

static muslin_status change_one(seam_change *change, muslin_len size, const struct muslin_seam_spec *seam,
                                muslin_len *out, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    muslin_len taken = read_seam(&check, seam);
    msl_want_pointer(&check, MUSLIN_ARG_OUTPUT, out);
    change(&check, size, taken, out);
    return check.status;
}

/* Arrays of sizes, none of them null. */
struct sizes {
    const muslin_len *from;
    muslin_len *out;
    muslin_status *statuses;
    size_t *failed;
};

/* Sizes from `first` to before `end`. Stops at the first failure unless there are statuses to write each one to. */
static muslin_status change_each(seam_change *change, const struct sizes *sizes, size_t first, size_t end,
                                 muslin_len taken)
{
    for (size_t i = first; i < end; i++) {
        struct msl_check check = msl_check_start(NULL);
        change(&check, sizes->from[i], taken, &sizes->out[i]);
        if (sizes->statuses != NULL) {
            sizes->statuses[i] = check.status;
        } else if (check.status != MUSLIN_OK) {
            if (sizes->failed != NULL)
                *sizes->failed = i;
            return check.status;
        }
    }
    return MUSLIN_OK;
}

/* The same where no change can fail. Returns 0, and does nothing, where some size is small or large. */
static int change_block(const struct sizes *sizes, size_t first, size_t end, muslin_len least, muslin_len more)
{
    if (!msl_all_within(sizes->from + first, end - first, least, MUSLIN_SIZE_MAX / 2))
        return 0;
    const muslin_len *from = sizes->from;
    muslin_len *out = sizes->out;
    for (size_t i = first; i < end; i++)
        out[i] = from[i] + more;
    for (size_t i = first; sizes->statuses != NULL && i < end; i++)
        sizes->statuses[i] = MUSLIN_OK;
    return 1;
}

/* What is taken off must be there, and is at most 3/8 of the largest size. */
static muslin_status change_all(seam_change *change, const struct sizes *sizes, size_t n, muslin_len taken)
{
    const muslin_len least = change == take_off ? taken : 0;
    const muslin_len more = change == take_off ? -taken : taken;
    muslin_status status = MUSLIN_OK;
    size_t end;
    for (size_t first = 0; status == MUSLIN_OK && first < n; first = end) {
        end = msl_block_end(first, n);
        if (!change_block(sizes, first, end, least, more))
            status = change_each(change, sizes, first, end, taken);
    }
    return status;
}

static muslin_status change_array(seam_change *change, const muslin_len *sizes, size_t n,
                                  const struct muslin_seam_spec *seam, muslin_len *out, muslin_status *statuses,
                                  size_t *failed)
{
    struct msl_check check = msl_check_start(NULL);
    muslin_len taken = read_seam(&check, seam);
    if (n != 0) {
        msl_want_pointer(&check, MUSLIN_ARG_ROWS, sizes);
        msl_want_pointer(&check, MUSLIN_ARG_OUTPUT, out);
    }
    if (check.status != MUSLIN_OK)
        return check.status;
    const struct sizes all = { sizes, out, statuses, failed };
    return change_all(change, &all, n, taken);
}

muslin_status muslin_seam_cut_from_finished(muslin_len finished, const struct muslin_seam_spec *seam, muslin_len *out,
                                            struct muslin_problem *problem)
{
    return change_one(put_on, finished, seam, out, problem);
}

muslin_status muslin_seam_finished_from_cut(muslin_len cut, const struct muslin_seam_spec *seam, muslin_len *out,
                                            struct muslin_problem *problem)
{
    return change_one(take_off, cut, seam, out, problem);
}

muslin_status muslin_seam_cut_from_finished_n(const muslin_len *finished, size_t n, const struct muslin_seam_spec *seam,
                                              muslin_len *out, muslin_status *statuses, size_t *failed)
{
    return change_array(put_on, finished, n, seam, out, statuses, failed);
}

muslin_status muslin_seam_finished_from_cut_n(const muslin_len *cut, size_t n, const struct muslin_seam_spec *seam,
                                              muslin_len *out, muslin_status *statuses, size_t *failed)
{
    return change_array(take_off, cut, n, seam, out, statuses, failed);
}

/* ---- a piece with its own allowance on each edge --------------------------------------------------------------- */

muslin_status muslin_piece_spec_init(struct muslin_piece_spec *spec, uint32_t size)
{
    const struct muslin_piece_spec initial = MUSLIN_PIECE_SPEC_INIT;
    return msl_init_struct(spec, size, &initial, (uint32_t)sizeof initial, (uint32_t)sizeof initial);
}

static void want_each(struct msl_check *check, void want(struct msl_check *, int32_t, muslin_len), int32_t argument,
                      const muslin_len *values, int64_t count)
{
    for (int64_t i = 0; i < count; i++) {
        check->at = i;
        want(check, argument, values[i]);
    }
    check->at = 0;
}

static void read_piece(struct msl_check *check, struct muslin_piece_spec *piece, const struct muslin_piece_spec *from)
{
    msl_read_struct(check, MUSLIN_ARG_SPEC, piece, (uint32_t)sizeof *piece, (uint32_t)sizeof *piece, 0, from);
    const muslin_len sides[] = { piece->finished_width, piece->finished_height };
    const muslin_len edges[] = { piece->left, piece->right, piece->top, piece->bottom };
    want_each(check, msl_want_size, MUSLIN_ARG_FINISHED, sides, 2);
    want_each(check, msl_want_seam, MUSLIN_ARG_SEAM_ALLOWANCE, edges, 4);
    msl_want_seam(check, MUSLIN_ARG_TAKE_UP, piece->take_up);
}

static muslin_len side_cut(muslin_len finished, muslin_len first, muslin_len second, muslin_len take_up)
{
    return finished + first + second + taken_by_folds(first, second, take_up);
}

muslin_status muslin_seam_piece(const struct muslin_piece_spec *spec, struct muslin_piece *out,
                                struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct muslin_piece_spec s = { 0 };
    read_piece(&check, &s, spec);
    msl_want_output(&check, out, (uint32_t)sizeof *out);
    if (check.status != MUSLIN_OK)
        return check.status;
    struct muslin_piece piece = { 0 };
    piece.cut_width = side_cut(s.finished_width, s.left, s.right, s.take_up);
    piece.cut_height = side_cut(s.finished_height, s.top, s.bottom, s.take_up);
    piece.cut_area = 2 * piece.cut_width * piece.cut_height;
    piece.finished_area = 2 * s.finished_width * s.finished_height;
    if (piece.cut_area > 0)
        piece.seam_share = share_of(piece.cut_area - piece.finished_area, piece.cut_area);
    msl_write_struct(out, &piece, (uint32_t)sizeof piece);
    return MUSLIN_OK;
}

/* ---- rows and strip sets --------------------------------------------------------------------------------------- */

static void write_row(struct muslin_sewn_row *out, muslin_len cut_total, int64_t pieces, muslin_len taken)
{
    struct muslin_sewn_row row = { 0 };
    row.pieces = pieces;
    row.seams = pieces - 1;
    row.cut_total = cut_total;
    row.unfinished = joined(cut_total, row.seams, taken);
    row.eaten = cut_total - row.unfinished;
    row.finished = joined(cut_total, pieces, taken);
    row.seam_share = share_of(cut_total - row.finished, cut_total);
    msl_write_struct(out, &row, (uint32_t)sizeof row);
}

muslin_status muslin_seam_row_equal(muslin_len cut, int64_t pieces, const struct muslin_seam_spec *seam,
                                    struct muslin_sewn_row *out, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    muslin_len taken = read_seam(&check, seam);
    msl_want_output(&check, out, (uint32_t)sizeof *out);
    msl_want_some_size(&check, MUSLIN_ARG_CUT, cut);
    msl_want_some_count(&check, MUSLIN_ARG_PIECES, pieces);
    want_room_for(&check, taken, MUSLIN_ARG_CUT, cut);
    if (check.status == MUSLIN_OK)
        write_row(out, cut * pieces, pieces, taken);
    return check.status;
}

muslin_status muslin_seam_row(const muslin_len *cuts, size_t n, const struct muslin_seam_spec *seam,
                              struct muslin_sewn_row *out, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    muslin_len taken = read_seam(&check, seam);
    msl_want_output(&check, out, (uint32_t)sizeof *out);
    msl_want_pointer(&check, MUSLIN_ARG_CUT, cuts);
    msl_want_some_count(&check, MUSLIN_ARG_PIECES, count_of(n));
    if (check.status != MUSLIN_OK)
        return check.status;
    muslin_len total = sum_of_cuts(&check, cuts, n, taken);
    if (check.status == MUSLIN_OK)
        write_row(out, total, (int64_t)n, taken);
    return check.status;
}

/* numerator / denominator rounded into *out. MUSLIN_ERR_OVERFLOW leaves *out untouched; only a factor can cause it. */
static muslin_status write_rounded(struct muslin_rounded *out, struct msl_wide numerator, int64_t denominator,
                                   const struct muslin_rounding_spec *rounding)
{
    struct muslin_rounded rounded = { 0 };
    muslin_status status = msl_wide_round(numerator, denominator, rounding, &rounded);
    if (status == MUSLIN_OK)
        msl_write_struct(out, &rounded, (uint32_t)sizeof rounded);
    return status;
}

muslin_status muslin_seam_strip_for_finished(muslin_len finished, int64_t pieces, const struct muslin_seam_spec *seam,
                                             const struct muslin_rounding_spec *rounding, struct muslin_rounded *out,
                                             struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct muslin_rounding_spec how = { 0 };
    muslin_len taken = read_seam(&check, seam);
    msl_read_rounding(&check, &how, rounding);
    msl_want_output(&check, out, (uint32_t)sizeof *out);
    msl_want_size(&check, MUSLIN_ARG_FINISHED, finished);
    msl_want_some_count(&check, MUSLIN_ARG_PIECES, pieces);
    if (check.status != MUSLIN_OK)
        return check.status;
    return write_rounded(out, msl_wide_from(finished + pieces * taken), pieces, &how);
}

muslin_status muslin_seam_resize_cut(muslin_len cut, int64_t numerator, int64_t denominator,
                                     const struct muslin_seam_spec *seam, const struct muslin_rounding_spec *rounding,
                                     struct muslin_rounded *out, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct muslin_rounding_spec how = { 0 };
    muslin_len taken = read_seam(&check, seam);
    msl_read_rounding(&check, &how, rounding);
    msl_want_output(&check, out, (uint32_t)sizeof *out);
    want_cut(&check, cut, taken);
    msl_want_between(&check, MUSLIN_ARG_FACTOR, numerator, 1, INT64_MAX);
    if (denominator == 0)
        msl_fail(&check, MUSLIN_ERR_DIVIDE_BY_ZERO, MUSLIN_ARG_DIVISOR, 0, 1);
    msl_want_between(&check, MUSLIN_ARG_DIVISOR, denominator, 1, INT64_MAX);
    if (check.status != MUSLIN_OK)
        return check.status;
    struct msl_wide scaled = msl_wide_multiply(joined(cut, 1, taken), numerator);
    struct msl_wide seams = msl_wide_multiply(taken, denominator);
    if (write_rounded(out, msl_wide_add(scaled, seams), denominator, &how) != MUSLIN_OK)
        msl_fail(&check, MUSLIN_ERR_OVERFLOW, MUSLIN_ARG_FACTOR, numerator, 0);
    return check.status;
}

/* ---- the seam one really sews ---------------------------------------------------------------------------------- */

static void write_calibration(struct msl_check *check, struct muslin_calibration *out, muslin_len cut_total,
                              int64_t seams, muslin_len measured, muslin_len stitched)
{
    muslin_len planned = joined(cut_total, seams, 2 * stitched);
    muslin_len shortfall = planned - measured;
    /* s - u/2 over the denominator 2 seams */
    muslin_len cure = 2 * stitched * seams - shortfall;
    if (cure < 0) {
        msl_fail(check, MUSLIN_ERR_SEAM_TOO_WIDE, MUSLIN_ARG_MEASURED, measured, measured - cure);
        return;
    }
    struct muslin_calibration found = { 0 };
    found.seams = seams;
    found.planned = planned;
    found.shortfall = shortfall;
    found.per_seam_numerator = shortfall;
    found.per_seam_denominator = seams;
    found.take_up = divided_nearest(shortfall, seams);
    found.effective_numerator = cut_total - measured;
    found.effective_denominator = 2 * seams;
    found.effective_allowance = divided_nearest(cut_total - measured, 2 * seams);
    found.sew_at = divided_nearest(cure, 2 * seams);
    msl_write_struct(out, &found, (uint32_t)sizeof found);
}

muslin_status muslin_seam_calibrate(const muslin_len *cuts, size_t n, muslin_len measured, muslin_len stitched,
                                    struct muslin_calibration *out, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    msl_want_pointer(&check, MUSLIN_ARG_CUT, cuts);
    msl_want_output(&check, out, (uint32_t)sizeof *out);
    msl_want_between(&check, MUSLIN_ARG_PIECES, count_of(n), 2, MUSLIN_COUNT_MAX);
    msl_want_seam(&check, MUSLIN_ARG_SEAM_ALLOWANCE, stitched);
    if (check.status != MUSLIN_OK)
        return check.status;
    muslin_len total = sum_of_cuts(&check, cuts, n, 2 * stitched);
    msl_want_between(&check, MUSLIN_ARG_MEASURED, measured, 1, total);
    if (check.status == MUSLIN_OK)
        write_calibration(&check, out, total, (int64_t)n - 1, measured, stitched);
    return check.status;
}

muslin_status muslin_carry_on_spec_init(struct muslin_carry_on_spec *spec, uint32_t size)
{
    const struct muslin_carry_on_spec initial = MUSLIN_CARRY_ON_SPEC_INIT;
    return msl_init_struct(spec, size, &initial, (uint32_t)sizeof initial, (uint32_t)sizeof initial);
}

/* Reads the spec and returns P = 2 s + u of the plan; 0 after a failure. */
static muslin_len read_carry_on(struct msl_check *check, struct muslin_carry_on_spec *spec,
                                const struct muslin_carry_on_spec *from)
{
    msl_read_struct(check, MUSLIN_ARG_SPEC, spec, (uint32_t)sizeof *spec, (uint32_t)sizeof *spec, 0, from);
    msl_want_some_size(check, MUSLIN_ARG_CUT, spec->cut_total);
    msl_want_between(check, MUSLIN_ARG_STRIPS, spec->strips, 2, MUSLIN_COUNT_MAX);
    msl_want_between(check, MUSLIN_ARG_MEASURED, spec->measured, 1, spec->cut_total);
    msl_want_size(check, MUSLIN_ARG_SEGMENT_CUT, spec->later_cut);
    msl_want_seam(check, MUSLIN_ARG_SEAM_ALLOWANCE, spec->allowance);
    msl_want_seam(check, MUSLIN_ARG_TAKE_UP, spec->take_up);
    if (check->status != MUSLIN_OK)
        return 0;
    muslin_len taken = taken_by_seam(spec->allowance, spec->take_up);
    muslin_len least_measured = msl_divided_up(spec->cut_total, spec->strips);
    want_room_for(check, taken, MUSLIN_ARG_SEGMENT_CUT, spec->later_cut);
    want_room_for(check, spec->strips * taken + 1, MUSLIN_ARG_CUT, spec->cut_total);
    want_room_for(check, least_measured, MUSLIN_ARG_MEASURED, spec->measured);
    return taken;
}

muslin_status muslin_seam_carry_on(const struct muslin_carry_on_spec *spec,
                                   const struct muslin_rounding_spec *rounding, struct muslin_rounded *out,
                                   struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct muslin_carry_on_spec s = { 0 };
    struct muslin_rounding_spec how = { 0 };
    muslin_len taken = read_carry_on(&check, &s, spec);
    msl_read_rounding(&check, &how, rounding);
    msl_want_output(&check, out, (uint32_t)sizeof *out);
    if (check.status != MUSLIN_OK)
        return check.status;
    muslin_len planned_finished = joined(s.cut_total, s.strips, taken);
    struct msl_wide scaled = msl_wide_multiply(s.later_cut - taken, s.strips * s.measured - s.cut_total);
    struct msl_wide seams = msl_wide_multiply(s.cut_total - s.measured, planned_finished);
    return write_rounded(out, msl_wide_add(scaled, seams), (s.strips - 1) * planned_finished, &how);
}

muslin_status muslin_seam_error_total(muslin_len error_per_seam, int64_t seams, muslin_len *out,
                                      struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    msl_want_between(&check, MUSLIN_ARG_SEAM_ERROR, error_per_seam, -MUSLIN_SIZE_MAX, MUSLIN_SIZE_MAX);
    msl_want_count(&check, MUSLIN_ARG_SEAMS, seams);
    msl_want_pointer(&check, MUSLIN_ARG_OUTPUT, out);
    if (check.status == MUSLIN_OK)
        *out = error_per_seam * seams;
    return check.status;
}

muslin_status muslin_seam_error_limit(muslin_len tolerance, int64_t seams, muslin_len *out,
                                      struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    msl_want_size(&check, MUSLIN_ARG_TOLERANCE, tolerance);
    msl_want_some_count(&check, MUSLIN_ARG_SEAMS, seams);
    msl_want_pointer(&check, MUSLIN_ARG_OUTPUT, out);
    if (check.status == MUSLIN_OK)
        *out = tolerance / seams;
    return check.status;
}

muslin_status muslin_seam_share(int64_t cut_area, int64_t finished_area, int32_t *ppm, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    msl_want_pointer(&check, MUSLIN_ARG_OUTPUT, ppm);
    msl_want_between(&check, MUSLIN_ARG_AREA, cut_area, 1, INT64_MAX);
    check.at = 1;
    msl_want_between(&check, MUSLIN_ARG_AREA, finished_area, 0, cut_area);
    if (check.status == MUSLIN_OK)
        *ppm = share_of(cut_area - finished_area, cut_area);
    return check.status;
}
