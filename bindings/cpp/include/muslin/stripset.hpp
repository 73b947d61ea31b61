// muslin/stripset.hpp - strip sets: what one gives, from wishes to strips, from a bundle to wishes.
// Written by generate.py from lib/abi/api.json: change that, not this file.
//
// SPDX-License-Identifier: MIT
#ifndef MUSLIN_STRIPSET_HPP
#define MUSLIN_STRIPSET_HPP

#include <muslin/stripset.h>
#include <muslin/reference.hpp>

namespace muslin {

/** struct muslin_yield_spec. cut straight through from one end; the fold is not kept clear */
struct MUSLIN_CPP_TWIN yield_spec {
    using c_type = muslin_yield_spec;

    static constexpr std::uint32_t from_one_end = MUSLIN_YIELD_FROM_ONE_END;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** L, of the shortest strip in the set */
    muslin::length strip_length = muslin::length::of_ticks(325120);
    /** a, 1 or more */
    muslin::length segment_cut{};
    /** t, taken off each end to square it */
    muslin::length end_trim{};
    /** r, lost each time the cut edge is squared again ... */
    muslin::length resquare_loss{};
    /** ... after every m cuts; 0 for never */
    std::int64_t resquare_every = 0;
    /** z, kept free of cuts in the middle; must be 0 with FROM_ONE_END */
    muslin::length fold_clear{};
};
static_assert(detail::is_twin<yield_spec>);

/** struct muslin_yield. */
struct MUSLIN_CPP_TWIN yield {
    using c_type = muslin_yield;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** N */
    std::int64_t segments = 0;
    /** N / 2 when cutting from both ends, N from one */
    std::int64_t per_end = 0;
    /** times the edge is squared again, both ends together */
    std::int64_t resquarings = 0;
    /** the shortest strip that gives as many; 0 when N is 0 */
    muslin::length least_length{};
    /** L less trims, segments and squaring losses, not below 0: from both ends the middle piece, fold included;
     * from one end L - 2 t - k a - r floor((k - 1) / m) */
    muslin::length left_over{};
    /** the strip may be this much shorter before a segment is lost; 0 when N is 0 */
    muslin::length shorter_by{};
    /** it must be this much longer to give more: one more from each end that is cut from; never 0, and for N = 0
     * what is missing to the first */
    muslin::length longer_for_more{};
    /** warning::no_slack when shorter_by is 0 and N is not */
    std::uint32_t warnings = 0;
    std::int32_t pad = 0;
    /** segments when the same set is cut straight through from one end, nothing kept clear: N itself with
     * FROM_ONE_END. How near it is to its edge, a call with that flag tells; all above speaks of N. Since 1.1 */
    std::int64_t from_one_end = 0;
};
static_assert(detail::is_twin<yield>);

/** struct muslin_need_spec. */
struct MUSLIN_CPP_TWIN need_spec {
    using c_type = muslin_need_spec;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** wanted */
    std::int64_t segments = 0;
    /** what one set gives; see stripset_yield() */
    std::int64_t segments_per_set = 0;
    /** 1 or more */
    std::int64_t strips_per_set = 0;
    /** 1 or more when bundles are wanted, else 0 */
    std::int64_t strips_per_bundle = 0;
    /** cut width of a strip, for the length of cloth instead of bundles; 0 if not wanted */
    muslin::length strip_cut{};
};
static_assert(detail::is_twin<need_spec>);

/** struct muslin_need. */
struct MUSLIN_CPP_TWIN need {
    using c_type = muslin_need;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** up */
    std::int64_t sets = 0;
    /** sets x strips_per_set, below 2^62 */
    std::int64_t strips = 0;
    /** up; 0 when not asked */
    std::int64_t bundles = 0;
    /** that the sets give beyond the wish */
    std::int64_t spare_segments = 0;
    /** that the bundles hold beyond the sets; 0 when not asked */
    std::int64_t spare_strips = 0;
    /** strips x strip_cut; 0 when not asked */
    muslin::length cloth_length{};
};
static_assert(detail::is_twin<need>);

/** struct muslin_harvest_spec. */
struct MUSLIN_CPP_TWIN harvest_spec {
    using c_type = muslin_harvest_spec;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** in hand */
    std::int64_t strips = 0;
    /** 1 or more */
    std::int64_t strips_per_set = 0;
    /** 0 or more */
    std::int64_t segments_per_set = 0;
    /** 1 or more */
    std::int64_t segments_per_block = 1;
    /** 1 or more */
    std::int64_t blocks_per_top = 1;
};
static_assert(detail::is_twin<harvest_spec>);

/** struct muslin_harvest. */
struct MUSLIN_CPP_TWIN harvest {
    using c_type = muslin_harvest;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** down, from all strips */
    std::int64_t sets = 0;
    /** from all sets */
    std::int64_t segments = 0;
    /** from all segments */
    std::int64_t blocks = 0;
    /** from all blocks, all down */
    std::int64_t tops = 0;
    /** sets that those tops need, up */
    std::int64_t sets_used = 0;
    /** sets_used x strips_per_set */
    std::int64_t strips_used = 0;
    /** strips - strips_used */
    std::int64_t strips_left = 0;
    /** of the sets used, beyond the tops */
    std::int64_t segments_left = 0;
    /** of all blocks, beyond the tops */
    std::int64_t blocks_left = 0;
    /** strips missing for one more top; 0 only when a set gives nothing, so that no number of strips is enough */
    std::int64_t strips_for_one_more = 0;
};
static_assert(detail::is_twin<harvest>);

/** struct muslin_stripset_print. Sets that hold a given number of strips of each print: one row a print. */
struct MUSLIN_CPP_TWIN stripset_print {
    using c_type = muslin_stripset_print;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** strips of this print */
    std::int64_t in_hand = 0;
    /** strips of it in each set, 0 or more */
    std::int64_t per_set = 0;
    /** out: in_hand - sets x per_set, or what is missing, negative, when sets were asked for */
    std::int64_t left_over = 0;
};
static_assert(detail::is_twin<stripset_print>);

/** What stripset_shortest() answers. */
struct stripset_shortest_answer {
    muslin::length shortest{};
    std::size_t index = 0;
    std::uint32_t warnings = 0;
};

/** What stripset_prints() answers. */
struct stripset_prints_answer {
    std::int64_t sets = 0;
    std::size_t scarcest = 0;
};

inline namespace MUSLIN_CPP_FORM {

/** How many segments one set gives. From both ends N = 2 max { k : t + k a + r floor((k - 1) / m) <= (L - z) / 2 },
 * k = 0 always fits, with no squaring after the last cut; from one end N = max { k : 2 t + k a + r floor((k - 1) /
 * m) <= L }. Lengths are whole ticks, so halving an odd L - z loses nothing. N = 0 is an answer, and so is a trim
 * or a clear zone longer than the strip. status::range also for a fold_clear with FROM_ONE_END. Exact for every
 * input in range. Source: geometry; that some teachers cut from both ends and keep clear of the fold, and square
 * again every 2 or 3 cuts, is common practice.
 * muslin_stripset_yield() in muslin/stripset.h. Since 1.0. */
inline answer<muslin::yield> stripset_yield(const muslin::yield_spec &spec = {})
{
    muslin::yield out;
    return asking::ask(out, [&](muslin_problem *problem) {
        return muslin_stripset_yield(detail::in_c(&spec), detail::in_c(&out), problem);
    });
}

/** The usable length that a set of strips shares, the shortest, with its index (the first of equals); warnings gets
 * warning::mixed_widths when they differ, else 0. n is 1 or more (status::range); in the problem `at` is the
 * element. `index` and `warnings` may be null. One pass.
 * muslin_stripset_shortest() in muslin/stripset.h. Since 1.0. */
inline answer<muslin::stripset_shortest_answer> stripset_shortest(muslin::span<const muslin::length> lengths)
{
    muslin::stripset_shortest_answer answer;
    return asking::ask(answer, [&](muslin_problem *problem) {
        return muslin_stripset_shortest(detail::in_c(lengths.data()), lengths.size(), detail::in_c(&answer.shortest),
                                        &answer.index, &answer.warnings, problem);
    });
}

/** Segments wanted -> sets -> strips -> bundles or a length of cloth. status::no_yield when segments_per_set is 0
 * and segments are wanted; status::overflow when the cloth would be longer than MUSLIN_LENGTH_MAX. No segments
 * wanted: all zero. Source: Quick rail fence from 2.5 inch strips (handout).
 * muslin_stripset_need() in muslin/stripset.h. Since 1.0. */
inline answer<muslin::need> stripset_need(const muslin::need_spec &spec = {})
{
    muslin::need out;
    return asking::ask(out, [&](muslin_problem *problem) {
        return muslin_stripset_need(detail::in_c(&spec), detail::in_c(&out), problem);
    });
}

/** Strips in hand -> sets -> segments -> blocks -> tops, and what is left over. Segments may be joined into blocks
 * across sets and tops. status::overflow when the strips for one more top would pass MUSLIN_LENGTH_MAX. Source:
 * common practice, no source.
 * muslin_stripset_harvest() in muslin/stripset.h. Since 1.0. */
inline answer<muslin::harvest> stripset_harvest(const muslin::harvest_spec &spec = {})
{
    muslin::harvest out;
    return asking::ask(out, [&](muslin_problem *problem) {
        return muslin_stripset_harvest(detail::in_c(&spec), detail::in_c(&out), problem);
    });
}

/** With sets_wanted 0: how many sets the scarcest print allows; with sets_wanted above 0 sets becomes sets_wanted.
 * Written are sets, scarcest (may be null: the row of the print that allows the fewest sets, the first of equals)
 * and every row's `left_over`, which alone is changed in it. At least one row must have per_set above 0, so n = 0
 * is status::range too. A row's own size may not pass row_size, nor row_size 4096 (status::struct_size). In the
 * problem `at` is the row. On failure no row is touched. Two passes.
 * muslin_stripset_prints() in muslin/stripset.h. Since 1.0. */
inline answer<muslin::stripset_prints_answer> stripset_prints(muslin::span<muslin::stripset_print> rows,
                                                              std::int64_t sets_wanted)
{
    muslin::stripset_prints_answer answer;
    return asking::ask(answer, [&](muslin_problem *problem) {
        return muslin_stripset_prints(detail::in_c(rows.data()), sizeof(muslin::stripset_print), rows.size(),
                                      sets_wanted, &answer.sets, &answer.scarcest, problem);
    });
}

} // namespace MUSLIN_CPP_FORM

} // namespace muslin

#endif
