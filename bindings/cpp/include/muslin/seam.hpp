// muslin/seam.hpp - cut, unfinished, finished: what seams take, and what a real seam takes.
// Written by generate.py from lib/abi/api.json: change that, not this file.
//
// SPDX-License-Identifier: MIT
#ifndef MUSLIN_SEAM_HPP
#define MUSLIN_SEAM_HPP

#include <muslin/seam.h>
#include <muslin/length.hpp>

namespace muslin {

/** enum muslin_allowance_policy */
enum class allowance_policy : std::int32_t {
    /** what the geometry of the seams asks for, and no more */
    exact = MUSLIN_ALLOWANCE_POLICY_EXACT,
    /** the trade's round figures, or the caller's; refused where they are too small */
    customary = MUSLIN_ALLOWANCE_POLICY_CUSTOMARY,
    /** the customary figures and some room to trim away after sewing */
    oversize = MUSLIN_ALLOWANCE_POLICY_OVERSIZE,
};

/** struct muslin_seam_spec. */
struct MUSLIN_CPP_TWIN seam_spec {
    using c_type = muslin_seam_spec;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** s, per edge, as stitched; 0 .. MUSLIN_SIZE_MAX / 8 */
    muslin::length allowance = muslin::length::of_ticks(2032);
    /** u, per seam; 0 .. MUSLIN_SIZE_MAX / 8 */
    muslin::length take_up{};
};
static_assert(detail::is_twin<seam_spec>);

/** struct muslin_piece_spec. */
struct MUSLIN_CPP_TWIN piece_spec {
    using c_type = muslin_piece_spec;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** 0 .. MUSLIN_SIZE_MAX */
    muslin::length finished_width{};
    /** 0 .. MUSLIN_SIZE_MAX */
    muslin::length finished_height{};
    /** allowance on each edge, 0 .. MUSLIN_SIZE_MAX / 8; 0: on the fold or left raw */
    muslin::length left = muslin::length::of_ticks(2032);
    muslin::length right = muslin::length::of_ticks(2032);
    muslin::length top = muslin::length::of_ticks(2032);
    muslin::length bottom = muslin::length::of_ticks(2032);
    /** u per seam; each edge with an allowance bears half of it */
    muslin::length take_up{};
};
static_assert(detail::is_twin<piece_spec>);

/** struct muslin_piece. */
struct MUSLIN_CPP_TWIN piece {
    using c_type = muslin_piece;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** finished + left + right + u/2 for each of the two that is sewn, in all up to a tick */
    muslin::length cut_width{};
    /** the same with top and bottom */
    muslin::length cut_height{};
    /** doubled square ticks, below 2^62 */
    std::int64_t cut_area = 0;
    /** doubled square ticks */
    std::int64_t finished_area = 0;
    /** ppm of the cut piece that disappears into seams, nearest; 0 for a cut area of 0 */
    std::int32_t seam_share = 0;
    std::int32_t pad = 0;
};
static_assert(detail::is_twin<piece>);

/** struct muslin_sewn_row. */
struct MUSLIN_CPP_TWIN sewn_row {
    using c_type = muslin_sewn_row;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** in the row */
    std::int64_t pieces = 0;
    /** pieces - 1 */
    std::int64_t seams = 0;
    /** sum of the cut sizes */
    muslin::length cut_total{};
    /** what the inner seams take: seams x (2 s + u) */
    muslin::length eaten{};
    /** cut_total - eaten */
    muslin::length unfinished{};
    /** unfinished - 2 s - u */
    muslin::length finished{};
    /** ppm of cut_total that is not seen in the end: inner and outer seams, nearest */
    std::int32_t seam_share = 0;
    std::int32_t pad = 0;
};
static_assert(detail::is_twin<sewn_row>);

/** struct muslin_calibration. */
struct MUSLIN_CPP_TWIN calibration {
    using c_type = muslin_calibration;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** n - 1 */
    std::int64_t seams = 0;
    /** unfinished width with the stitched allowance and no take-up */
    muslin::length planned{};
    /** planned - measured; negative when the set came out wide */
    muslin::length shortfall{};
    /** shortfall over seams: the take-up u, exact as a fraction ... */
    muslin::length per_seam_numerator{};
    /** ... over this */
    std::int64_t per_seam_denominator = 0;
    /** ... and rounded to the nearest tick, ties up; negative when wide */
    muslin::length take_up{};
    /** e = (sum of cuts - measured) / (2 seams), exact ... */
    muslin::length effective_numerator{};
    /** ... over this */
    std::int64_t effective_denominator = 0;
    /** ... and rounded to the nearest tick, ties up */
    muslin::length effective_allowance{};
    /** the cure: stitch at s - u/2, nearest tick, ties up; then the plan is met */
    muslin::length sew_at{};
};
static_assert(detail::is_twin<calibration>);

/** struct muslin_carry_on_spec. */
struct MUSLIN_CPP_TWIN carry_on_spec {
    using c_type = muslin_carry_on_spec;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** T, sum of the strips' cut widths; 1 .. MUSLIN_SIZE_MAX */
    muslin::length cut_total{};
    /** n, 2 .. MUSLIN_COUNT_MAX */
    std::int64_t strips = 2;
    /** M, unfinished width of the sewn set; 1 .. T */
    muslin::length measured{};
    /** c, the later piece, as the plan had it; 0 .. MUSLIN_SIZE_MAX */
    muslin::length later_cut{};
    /** s of the plan; 0 .. MUSLIN_SIZE_MAX / 8 */
    muslin::length allowance = muslin::length::of_ticks(2032);
    /** u of the plan; 0 .. MUSLIN_SIZE_MAX / 8 */
    muslin::length take_up{};
};
static_assert(detail::is_twin<carry_on_spec>);

inline namespace MUSLIN_CPP_FORM {

/** The cut size of a piece that shall finish at `finished` (0 .. MUSLIN_SIZE_MAX) and is sewn into its neighbours
 * on both sides: finished + 2 s + u. The unfinished size of a sewn unit follows by the same sum. Source: Moonlight
 * Quilters Guild, Tip - On Point Settings.
 * muslin_seam_cut_from_finished() in muslin/seam.h. Since 1.0. */
inline answer<muslin::length> seam_cut_from_finished(muslin::length finished, const muslin::seam_spec &seam = {})
{
    muslin::length out{};
    return asking::ask(out, [&](muslin_problem *problem) {
        return muslin_seam_cut_from_finished(detail::in_c(finished), detail::in_c(&seam), detail::in_c(&out), problem);
    });
}

/** The finished size of a cut piece or an unfinished unit (`cut`, 0 .. MUSLIN_SIZE_MAX): cut - 2 s - u.
 * status::seam_too_wide when that is below zero. Source: as above, turned round.
 * muslin_seam_finished_from_cut() in muslin/seam.h. Since 1.0. */
inline answer<muslin::length> seam_finished_from_cut(muslin::length cut, const muslin::seam_spec &seam = {})
{
    muslin::length out{};
    return asking::ask(out, [&](muslin_problem *problem) {
        return muslin_seam_finished_from_cut(detail::in_c(cut), detail::in_c(&seam), detail::in_c(&out), problem);
    });
}

/** Array forms of the two, with the rules of the array forms in length.h: with `statuses` each element gets its own
 * and the call succeeds, without it stops at the first failing element and says which in failed. The seam is
 * checked first, n = 0 or not; with n = 0 the arrays may be null. One pass. Since 1.0 both.
 * muslin_seam_cut_from_finished_n() in muslin/seam.h. Since 1.0. */
inline answer<std::size_t> seam_cut_from_finished_n(muslin::span<const muslin::length> finished,
                                                    const muslin::seam_spec &seam, muslin::span<muslin::length> out,
                                                    muslin::span<muslin::status> statuses = {})
{
    std::size_t count = finished.size();
    return asking::ask(count, [&](muslin_problem *problem) {
        if (const muslin_status status = detail::same_size(out.size(), finished.size(), MUSLIN_ARG_OUTPUT, problem))
            return status;
        if (const muslin_status status = detail::same_size(statuses.empty() ? finished.size() : statuses.size(),
                                                           finished.size(), MUSLIN_ARG_OUTPUT, problem))
            return status;
        std::size_t failed = 0;
        const muslin_status status = muslin_seam_cut_from_finished_n(detail::in_c(finished.data()), finished.size(),
                                                                     detail::in_c(&seam), detail::in_c(out.data()),
                                                                     detail::in_c(statuses.data()), &failed);
        return detail::failed_at(status, failed, problem);
    });
}

/** Array forms of the two, with the rules of the array forms in length.h: with `statuses` each element gets its own
 * and the call succeeds, without it stops at the first failing element and says which in failed.
 * muslin_seam_finished_from_cut_n() in muslin/seam.h. Since 1.0. */
inline answer<std::size_t> seam_finished_from_cut_n(muslin::span<const muslin::length> cut,
                                                    const muslin::seam_spec &seam, muslin::span<muslin::length> out,
                                                    muslin::span<muslin::status> statuses = {})
{
    std::size_t count = cut.size();
    return asking::ask(count, [&](muslin_problem *problem) {
        if (const muslin_status status = detail::same_size(out.size(), cut.size(), MUSLIN_ARG_OUTPUT, problem))
            return status;
        if (const muslin_status status = detail::same_size(statuses.empty() ? cut.size() : statuses.size(), cut.size(),
                                                           MUSLIN_ARG_OUTPUT, problem))
            return status;
        std::size_t failed = 0;
        const muslin_status status = muslin_seam_finished_from_cut_n(detail::in_c(cut.data()), cut.size(),
                                                                     detail::in_c(&seam), detail::in_c(out.data()),
                                                                     detail::in_c(statuses.data()), &failed);
        return detail::failed_at(status, failed, problem);
    });
}

/** Cut size of a piece with different allowances on its four edges, and the share of it that the seams swallow. In
 * the problem, `at` is 0 for width and left, 1 for height and right, 2 top, 3 bottom. Source: geometry.
 * muslin_seam_piece() in muslin/seam.h. Since 1.0. */
inline answer<muslin::piece> seam_piece(const muslin::piece_spec &spec = {})
{
    muslin::piece out;
    return asking::ask(out, [&](muslin_problem *problem) {
        return muslin_seam_piece(detail::in_c(&spec), detail::in_c(&out), problem);
    });
}

/** Equal pieces sewn side by side: a row of patches or the width of a strip set. pieces 1 .. MUSLIN_COUNT_MAX, cut
 * 1 .. MUSLIN_SIZE_MAX. Each piece bears two half seams, so a cut below 2 s + u is status::seam_too_wide. The
 * longest row possible fits a length, so nothing overflows. Source: Vicki, Hints and tips 20: how wide should my
 * strip set be? (take-up by geometry).
 * muslin_seam_row_equal() in muslin/seam.h. Since 1.0. */
inline answer<muslin::sewn_row> seam_row_equal(muslin::length cut, std::int64_t pieces,
                                               const muslin::seam_spec &seam = {})
{
    muslin::sewn_row out;
    return asking::ask(out, [&](muslin_problem *problem) {
        return muslin_seam_row_equal(detail::in_c(cut), pieces, detail::in_c(&seam), detail::in_c(&out), problem);
    });
}

/** The same for n pieces of unequal cut size; the problem's `at` names the first offending piece. One pass. Source:
 * geometry.
 * muslin_seam_row() in muslin/seam.h. Since 1.0. */
inline answer<muslin::sewn_row> seam_row(muslin::span<const muslin::length> cuts, const muslin::seam_spec &seam = {})
{
    muslin::sewn_row out;
    return asking::ask(out, [&](muslin_problem *problem) {
        return muslin_seam_row(detail::in_c(cuts.data()), cuts.size(), detail::in_c(&seam), detail::in_c(&out),
                               problem);
    });
}

/** Backwards: the cut width of `pieces` (1 .. MUSLIN_COUNT_MAX) equal strips that together shall finish at
 * `finished`: finished / pieces + 2 s + u, rounded once, as asked. Source: Nine patch perfected, finished / 3 +
 * 1/2.
 * muslin_seam_strip_for_finished() in muslin/seam.h. Since 1.0. */
inline answer<muslin::rounded> seam_strip_for_finished(muslin::length finished, std::int64_t pieces,
                                                       const muslin::seam_spec &seam = {},
                                                       const muslin::rounding_spec &rounding = {})
{
    muslin::rounded out;
    return asking::ask(out, [&](muslin_problem *problem) {
        return muslin_seam_strip_for_finished(detail::in_c(finished), pieces, detail::in_c(&seam),
                                              detail::in_c(&rounding), detail::in_c(&out), problem);
    });
}

/** A cut size resized with its block: take the seams off, scale by numerator / denominator (both 1 .. INT64_MAX),
 * put them back on, rounded once, as asked. status::divide_by_zero: denominator 0. status::seam_too_wide: cut
 * below 2 s + u. status::overflow: the result passes MUSLIN_LENGTH_MAX. Source: Learn how to resize quilt blocks.
 * muslin_seam_resize_cut() in muslin/seam.h. Since 1.0. */
inline answer<muslin::rounded> seam_resize_cut(muslin::length cut, std::int64_t numerator, std::int64_t denominator,
                                               const muslin::seam_spec &seam = {},
                                               const muslin::rounding_spec &rounding = {})
{
    muslin::rounded out;
    return asking::ask(out, [&](muslin_problem *problem) {
        return muslin_seam_resize_cut(detail::in_c(cut), numerator, denominator, detail::in_c(&seam),
                                      detail::in_c(&rounding), detail::in_c(&out), problem);
    });
}

/** The effective allowance from a measured set of n strips or a test trio: cuts as cut, `measured` the unfinished
 * width edge to edge, `stitched` the allowance one meant to sew. n 2 .. MUSLIN_COUNT_MAX; each cut 1 ..
 * MUSLIN_SIZE_MAX and at least 2 s (else status::seam_too_wide, `at` names it); measured 1 .. the sum of cuts
 * (else status::range). status::seam_too_wide for `measured` when the cure would be below 0: u is then above 2 s.
 * One pass. For a trio, a centre measured between its two seams says the same: centre = cut - 2 e, so e = (cut -
 * centre) / 2. The fractions are not in lowest terms. Source: 1/4 inch seam test (T. Pereira), centre = cut - 1/2;
 * geometry.
 * muslin_seam_calibrate() in muslin/seam.h. Since 1.0. */
inline answer<muslin::calibration> seam_calibrate(muslin::span<const muslin::length> cuts, muslin::length measured,
                                                  muslin::length stitched)
{
    muslin::calibration out;
    return asking::ask(out, [&](muslin_problem *problem) {
        return muslin_seam_calibrate(detail::in_c(cuts.data()), cuts.size(), detail::in_c(measured),
                                     detail::in_c(stitched), detail::in_c(&out), problem);
    });
}

/** The carry-on plan: sets that came out wrong are kept, and a later piece planned at c is cut to suit. With E = (T
 * - M) / (n - 1) as really sewn and P = 2 s + u as planned, the planned finished size c - P is scaled by (M - E) /
 * (D - P), where D = T - (n - 1) P is the planned width, and gets E back: (c - P) (M - E) / (D - P) + E = ((c - P)
 * (n M - T) + (T - M) (T - n P)) / ((n - 1) (T - n P)), whose right side is whole above and below the line (91 and
 * 61 bits at most) and is rounded once, as asked. So a piece that was to be as long as its set is wide (a square
 * block) becomes M. The result is at most 2^61. status::seam_too_wide: c below P; T not above n P (nothing of the
 * plan would be seen); or n M below T (nothing of the sewn set is). In the problem c is argument::segment_cut and
 * T is argument::cut. Source: geometry.
 * muslin_seam_carry_on() in muslin/seam.h. Since 1.0. */
inline answer<muslin::rounded> seam_carry_on(const muslin::carry_on_spec &spec = {},
                                             const muslin::rounding_spec &rounding = {})
{
    muslin::rounded out;
    return asking::ask(out, [&](muslin_problem *problem) {
        return muslin_seam_carry_on(detail::in_c(&spec), detail::in_c(&rounding), detail::in_c(&out), problem);
    });
}

/** How far a row is off when each of `seams` (0 .. MUSLIN_COUNT_MAX) seams is off by `error_per_seam`
 * (+-MUSLIN_SIZE_MAX): error x seams. Source: geometry.
 * muslin_seam_error_total() in muslin/seam.h. Since 1.0. */
inline answer<muslin::length> seam_error_total(muslin::length error_per_seam, std::int64_t seams)
{
    muslin::length out{};
    return asking::ask(out, [&](muslin_problem *problem) {
        return muslin_seam_error_total(detail::in_c(error_per_seam), seams, detail::in_c(&out), problem);
    });
}

/** The largest error per seam, either way, that keeps the total within `tolerance` (0 .. MUSLIN_SIZE_MAX):
 * tolerance / seams, down to a tick. seams 1 .. MUSLIN_COUNT_MAX. Source: geometry.
 * muslin_seam_error_limit() in muslin/seam.h. Since 1.0. */
inline answer<muslin::length> seam_error_limit(muslin::length tolerance, std::int64_t seams)
{
    muslin::length out{};
    return asking::ask(out, [&](muslin_problem *problem) {
        return muslin_seam_error_limit(detail::in_c(tolerance), seams, detail::in_c(&out), problem);
    });
}

/** The share of fabric that disappears into seams, in ppm to the nearest, ties up: (cut - finished) / cut, for any
 * two areas in doubled square ticks (a patch, a strip set, a whole top). cut_area 1 .. INT64_MAX, finished_area 0
 * .. cut_area. In the problem, `at` is 0 for the cut area and 1 for the finished one. Source: geometry.
 * muslin_seam_share() in muslin/seam.h. Since 1.0. */
inline answer<std::int32_t> seam_share(std::int64_t cut_area, std::int64_t finished_area)
{
    std::int32_t ppm = 0;
    return asking::ask(ppm, [&](muslin_problem *problem) {
        return muslin_seam_share(cut_area, finished_area, &ppm, problem);
    });
}

} // namespace MUSLIN_CPP_FORM

} // namespace muslin

#endif
