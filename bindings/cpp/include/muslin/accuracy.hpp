// muslin/accuracy.hpp - small errors added up: the worst case, and what chance makes of it.
// Written by generate.py from lib/abi/api.json: change that, not this file.
//
// SPDX-License-Identifier: MIT
#ifndef MUSLIN_ACCURACY_HPP
#define MUSLIN_ACCURACY_HPP

#include <muslin/accuracy.h>
#include <muslin/seam.hpp>

namespace muslin {

/** struct muslin_accuracy_row_spec. */
struct MUSLIN_CPP_TWIN accuracy_row_spec {
    using c_type = muslin_accuracy_row_spec;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** side by side */
    std::int64_t pieces = 1;
    /** that the measure crosses, 0 .. MUSLIN_COUNT_MAX; pieces - 1 from raw edge to raw edge */
    std::int64_t seams = 0;
    /** e, of one seam */
    muslin::length seam_error{};
    /** c, of one cut edge */
    muslin::length cut_error{};
};
static_assert(detail::is_twin<accuracy_row_spec>);

/** struct muslin_accuracy_row_errors. */
struct MUSLIN_CPP_TWIN accuracy_row_errors {
    using c_type = muslin_accuracy_row_errors;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** 2 x pieces */
    std::int64_t cuts = 0;
    /** seams x e: what the seams bring to the worst case */
    muslin::length from_seams{};
    /** cuts x c */
    muslin::length from_cuts{};
    /** the sum of the two */
    muslin::length worst{};
    /** sqrt(seams x e^2 + cuts x c^2), up to a tick */
    muslin::length likely{};
};
static_assert(detail::is_twin<accuracy_row_errors>);

/** struct muslin_accuracy_top_spec. */
struct MUSLIN_CPP_TWIN accuracy_top_spec {
    using c_type = muslin_accuracy_top_spec;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** a block */
    std::int64_t pieces_across = 1;
    /** a block */
    std::int64_t pieces_down = 1;
    /** of blocks */
    std::int64_t columns = 1;
    /** of blocks */
    std::int64_t rows = 1;
    /** e, of one seam */
    muslin::length seam_error{};
    /** c, of one cut edge */
    muslin::length cut_error{};
};
static_assert(detail::is_twin<accuracy_top_spec>);

/** struct muslin_accuracy_top_errors. */
struct MUSLIN_CPP_TWIN accuracy_top_errors {
    using c_type = muslin_accuracy_top_errors;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** pieces_across - 1 */
    std::int64_t block_seams_across = 0;
    /** how far the unfinished width of a block may be off ... */
    muslin::length block_width_worst{};
    muslin::length block_width_likely{};
    /** pieces_down - 1 */
    std::int64_t block_seams_down = 0;
    /** ... and its unfinished height */
    muslin::length block_height_worst{};
    muslin::length block_height_likely{};
    /** columns x pieces_across - 1 */
    std::int64_t top_seams_across = 0;
    /** how far the unfinished width of the top may be off ... */
    muslin::length top_width_worst{};
    muslin::length top_width_likely{};
    /** rows x pieces_down - 1 */
    std::int64_t top_seams_down = 0;
    /** ... and its unfinished length */
    muslin::length top_length_worst{};
    muslin::length top_length_likely{};
};
static_assert(detail::is_twin<accuracy_top_errors>);

/** struct muslin_accuracy_meet_spec. */
struct MUSLIN_CPP_TWIN accuracy_meet_spec {
    using c_type = muslin_accuracy_meet_spec;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** n, of each of the two rows */
    std::int64_t seams = 1;
    /** e, of one seam */
    muslin::length seam_error{};
    /** c, of one cut edge */
    muslin::length cut_error{};
    /** seams this far apart still count as meeting; 0 .. MUSLIN_SIZE_MAX */
    muslin::length tolerance = muslin::length::of_ticks(508);
};
static_assert(detail::is_twin<accuracy_meet_spec>);

/** struct muslin_accuracy_meeting. */
struct MUSLIN_CPP_TWIN accuracy_meeting {
    using c_type = muslin_accuracy_meeting;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** apart at the last seam: 2 n (e + 2 c), both rows off opposite ways */
    muslin::length worst{};
    /** the same by chance: sqrt(2 n (e^2 + 2 c^2)), up to a tick */
    muslin::length likely{};
    /** the first seam at which the worst case passes the tolerance; 0: none */
    std::int64_t first_missed = 0;
    /** the first at which the likely one does: from it on about one in three misses, or more; 0: none */
    std::int64_t likely_first_missed = 0;
    /** the largest e for which all n meet at worst, down to a tick; also 0 when the cuts alone are too much */
    muslin::length largest_seam_error{};
    /** ... for which all n are likely to meet */
    muslin::length likely_largest_seam_error{};
    /** 1 when all n seams meet even at worst */
    muslin::truth meets{};
    /** 1 when the likely one is within the tolerance at all n: about two in three then meet at the last seam, and
     * more of them before it */
    muslin::truth likely_meets{};
    /** 1 when they would at worst if no seam were off: 4 n c <= tolerance */
    muslin::truth cuts_meet{};
    /** 1 when they would by chance */
    muslin::truth likely_cuts_meet{};
    /** the first seam at which twice the likely one passes the tolerance: from it on about one in twenty misses, or
     * more; 0: none */
    std::int64_t twice_likely_first_missed = 0;
    /** the largest e for which twice the likely one is within the tolerance at all n, down to a tick; also 0 when
     * the cuts alone are too much */
    muslin::length twice_likely_largest_seam_error{};
    /** 1 when twice the likely one is within the tolerance at all n seams */
    muslin::truth twice_likely_meets{};
    /** 1 when it would be if no seam were off */
    muslin::truth twice_likely_cuts_meet{};
};
static_assert(detail::is_twin<accuracy_meeting>);

inline namespace MUSLIN_CPP_FORM {

/** How far off a row of pieces may be.
 * muslin_accuracy_row() in muslin/accuracy.h. Since 1.0. */
inline answer<muslin::accuracy_row_errors> accuracy_row(const muslin::accuracy_row_spec &spec = {})
{
    muslin::accuracy_row_errors out;
    return asking::ask(out, [&](muslin_problem *problem) {
        return muslin_accuracy_row(detail::in_c(&spec), detail::in_c(&out), problem);
    });
}

/** How far off a block and a top of such blocks may be, in a straight setting without sashing (for other rows count
 * pieces and seams and ask accuracy_row()). status::range for argument::pieces also when a row of the top has more
 * than MUSLIN_COUNT_MAX pieces; `at` is 0 across, 1 down.
 * muslin_accuracy_top() in muslin/accuracy.h. Since 1.0. */
inline answer<muslin::accuracy_top_errors> accuracy_top(const muslin::accuracy_top_spec &spec = {})
{
    muslin::accuracy_top_errors out;
    return asking::ask(out, [&](muslin_problem *problem) {
        return muslin_accuracy_top(detail::in_c(&spec), detail::in_c(&out), problem);
    });
}

/** Whether the seams of two neighbouring rows meet. The rows are cut alike, laid edge to edge at one end, and eased
 * nowhere. Before the k-th seam lie k pieces, so its place is off by k seams (its own counted in full, which is on
 * the safe side) and 2 k cuts in each row; the two rows are independent of each other. Pinned in the middle
 * instead, only half the seams lie between.
 * muslin_accuracy_meet() in muslin/accuracy.h. Since 1.0. */
inline answer<muslin::accuracy_meeting> accuracy_meet(const muslin::accuracy_meet_spec &spec = {})
{
    muslin::accuracy_meeting out;
    return asking::ask(out, [&](muslin_problem *problem) {
        return muslin_accuracy_meet(detail::in_c(&spec), detail::in_c(&out), problem);
    });
}

} // namespace MUSLIN_CPP_FORM

} // namespace muslin

#endif
