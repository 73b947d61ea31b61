// muslin/scatter.hpp - prints spread over a top, or strips over sets, so that equal ones seldom touch.
// Written by generate.py from lib/abi/api.json: change that, not this file.
//
// SPDX-License-Identifier: MIT
#ifndef MUSLIN_SCATTER_HPP
#define MUSLIN_SCATTER_HPP

#include <muslin/scatter.h>
#include <muslin/sewing.hpp>

namespace muslin {

/** struct muslin_scatter_spec. */
struct MUSLIN_CPP_TWIN scatter_spec {
    using c_type = muslin_scatter_spec;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** to be filled, 1 .. 2^24 */
    std::int64_t places = 0;
    /** any number */
    std::int64_t seed = 1;
    /** steps of the search, 0 .. 2^40; a step looks at a touch. 0: filled once, not bettered */
    std::int64_t work_limit = 10000000;
};
static_assert(detail::is_twin<scatter_spec>);

/** struct muslin_touch_spec. */
struct MUSLIN_CPP_TWIN touch_spec {
    using c_type = muslin_touch_spec;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** places that touch, each 0 .. places - 1, and not the same */
    std::int64_t first = 0;
    std::int64_t second = 0;
    /** how much it matters when they are equal; 1 .. 2^20 */
    std::int64_t weight = 1;
};
static_assert(detail::is_twin<touch_spec>);

/** struct muslin_scattered. */
struct MUSLIN_CPP_TWIN scattered {
    using c_type = muslin_scattered;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** weight of the pairs that are equal and touch */
    std::int64_t touching = 0;
    /** how many of them there are */
    std::int64_t pairs = 0;
    /** no arrangement has less weight */
    std::int64_t least = 0;
    /** steps taken; an exchange that has begun is finished, past the limit too */
    std::int64_t work = 0;
    /** 1 when touching = least */
    muslin::truth proven{};
    std::int32_t pad = 0;
};
static_assert(detail::is_twin<scattered>);

/** struct muslin_scatter_blocks_spec. */
struct MUSLIN_CPP_TWIN scatter_blocks_spec {
    using c_type = muslin_scatter_blocks_spec;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** 1 .. 2^12 */
    std::int64_t columns = 1;
    /** 1 .. 2^12 */
    std::int64_t rows = 1;
    /** as in scatter_spec */
    std::int64_t seed = 1;
    /** so */
    std::int64_t work_limit = 10000000;
};
static_assert(detail::is_twin<scatter_blocks_spec>);

/** struct muslin_edge_prints_spec. A kind of block, by the print that shows at each of its edges; -1: none that
 * matters. */
struct MUSLIN_CPP_TWIN edge_prints_spec {
    using c_type = muslin_edge_prints_spec;

    static constexpr std::uint32_t turns_half = MUSLIN_EDGE_PRINTS_TURNS_HALF;
    static constexpr std::uint32_t turns_quarter = MUSLIN_EDGE_PRINTS_TURNS_QUARTER;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** how many there are, 0 .. MUSLIN_COUNT_MAX */
    std::int64_t count = 1;
    /** prints, -1 .. MUSLIN_COUNT_MAX */
    std::int64_t top = -1;
    std::int64_t right = -1;
    std::int64_t bottom = -1;
    std::int64_t left = -1;
};
static_assert(detail::is_twin<edge_prints_spec>);

/** struct muslin_placed_block. */
struct MUSLIN_CPP_TWIN placed_block {
    using c_type = muslin_placed_block;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** row of the blocks given */
    std::int64_t kind = 0;
    /** clockwise */
    std::int32_t quarter_turns = 0;
    std::int32_t pad = 0;
};
static_assert(detail::is_twin<placed_block>);

/** What scatter_prints() answers. */
struct scatter_prints_answer {
    std::vector<std::int64_t> out;
    muslin::scattered result;
};

/** What scatter_blocks() answers. */
struct scatter_blocks_answer {
    std::vector<muslin::placed_block> rows;
    muslin::scattered result;
};

/** What scatter_sets() answers. */
struct scatter_sets_answer {
    std::vector<std::int64_t> out;
    muslin::scattered result;
};

/** What scatter_touches() answers. */
struct scatter_touches_answer {
    std::vector<muslin::touch_spec> rows;
    std::int64_t places = 0;
};

inline namespace MUSLIN_CPP_FORM {

/** Which print goes where: `prints[i]` says for how many places print i suffices, 0 .. MUSLIN_COUNT_MAX (`kinds` of
 * them, 1 .. 2^20), `touches` which places touch (touch_n, 0 .. 2^27; a pair named twice counts twice), `given[p]`
 * a print that place p must have, or -1; given may be null. Writes one print number for each place to `out`. Where
 * it costs no touch, every print lies spread over the whole. The lower bound counts what is given, packs pairs,
 * rings and cliques of places that cannot all differ because few kinds are there, and knows that more of a print
 * than can lie apart must touch. status::choice: a place that touches itself. status::not_enough also for a print
 * that is given to more places than it suffices for (`at`: the print).
 * muslin_scatter_prints() in muslin/scatter.h. Since 1.0. */
template <class Progress = no_progress>
answer<muslin::scatter_prints_answer> scatter_prints(const muslin::scatter_spec &spec,
                                                     muslin::span<const std::int64_t> prints,
                                                     muslin::span<const muslin::touch_spec> touches,
                                                     muslin::span<const std::int64_t> given = {},
                                                     const muslin_allocator &allocator = libc_allocator(),
                                                     Progress &&progress = {})
{
    muslin::scatter_prints_answer answer;
    answer.out.resize(detail::places(spec.places));
    detail::teller<std::remove_reference_t<Progress>> progress_(progress);
    return asking::ask(answer, [&](muslin_problem *problem) {
        if (const muslin_status status = detail::same_size(given.empty() ? 0 : given.size(),
                                                           given.empty() ? 0 : detail::places(spec.places),
                                                           MUSLIN_ARG_PLACES, problem))
            return status;
        return progress_.done(muslin_scatter_prints(detail::in_c(&spec), prints.data(), prints.size(),
                                                    detail::in_c(touches.data()), sizeof(muslin::touch_spec),
                                                    touches.size(), given.empty() ? nullptr : given.data(), &allocator,
                                                    progress_.template callback<muslin_progress>(), progress_.context(),
                                                    answer.out.data(), detail::in_c(&answer.result), problem));
    });
}

/** Blocks laid out in columns x rows, turned where they may be, so that as few equal prints as possible meet at an
 * edge: one row for each place, row by row from the top; n kinds of blocks, 1 .. 2^20. The lower bound counts
 * lines in which more blocks show one print at both ends than can lie apart.
 * muslin_scatter_blocks() in muslin/scatter.h. Since 1.0. */
template <class Progress = no_progress>
answer<muslin::scatter_blocks_answer> scatter_blocks(const muslin::scatter_blocks_spec &spec,
                                                     muslin::span<const muslin::edge_prints_spec> blocks,
                                                     const muslin_allocator &allocator = libc_allocator(),
                                                     Progress &&progress = {})
{
    muslin::scatter_blocks_answer answer;
    detail::teller<std::remove_reference_t<Progress>> progress_(progress);
    return asking::ask_rows(answer, answer.rows, [&](auto to, muslin_problem *problem) {
        return progress_.done(muslin_scatter_blocks(detail::in_c(&spec), detail::in_c(blocks.data()),
                                                    sizeof(muslin::edge_prints_spec), blocks.size(), &allocator,
                                                    progress_.template callback<muslin_progress>(), progress_.context(),
                                                    to.rows, sizeof(muslin::placed_block), to.capacity, to.count,
                                                    detail::in_c(&answer.result), problem));
    });
}

/** Strips dealt to sets: `prints[i]` strips of print i (kinds of them), `sets` of `strips_per_set` (1 .. 2^24
 * each), lying in their order in `out` (sets x strips_per_set print numbers, and spec->places must say as many:
 * else status::range). As few equal strips as possible lie in one set, and next to each other: its touches are all
 * pairs in a set, neighbours with double weight; `pairs` counts each once. Of prints of which there are too many,
 * strips stay over. No search is needed: the answer is always the least there is, `proven` is 1 and `work` 0; the
 * seed shuffles. Source: pigeonhole.
 * muslin_scatter_sets() in muslin/scatter.h. Since 1.0. */
inline answer<muslin::scatter_sets_answer> scatter_sets(const muslin::scatter_spec &spec,
                                                        muslin::span<const std::int64_t> prints, std::int64_t sets,
                                                        std::int64_t strips_per_set,
                                                        const muslin_allocator &allocator = libc_allocator())
{
    muslin::scatter_sets_answer answer;
    answer.out.resize(detail::places(spec.places));
    return asking::ask(answer, [&](muslin_problem *problem) {
        return muslin_scatter_sets(detail::in_c(&spec), prints.data(), prints.size(), sets, strips_per_set, &allocator,
                                   answer.out.data(), detail::in_c(&answer.result), problem);
    });
}

/** The places of a fabric in a solved top, for scatter_prints(): its patches in the order of solution::outlines()
 * of the root, and which of them touch along an edge (longer than a corner: than 1/1000 in), each pair once, in
 * order, with weight 1. places gets their number, on success. Edges that lie within 1/1000 in of one line across,
 * down or at 45 degrees count as on it, since fields on point are rounded; a slanting edge of another direction
 * touches where it has both ends in common, or is drawn exactly. status::foreign: no fabric of this quilt.
 * status::range: the top has more than 2^24 patches, of all fabrics. Time follows all outlines x depth, and a sort
 * of the fabric's edges; memory from the allocator, about 50 bytes an edge. Source: geometry.
 * muslin_scatter_touches() in muslin/scatter.h. Since 1.0. */
inline answer<muslin::scatter_touches_answer> scatter_touches(const muslin::solution &solution, muslin::id fabric,
                                                              const muslin_allocator &allocator = libc_allocator())
{
    muslin::scatter_touches_answer answer;
    return asking::ask_rows(answer, answer.rows, [&](auto to, muslin_problem *problem) {
        return muslin_scatter_touches(solution.get(), detail::in_c(fabric), &allocator, to.rows,
                                      sizeof(muslin::touch_spec), to.capacity, to.count, &answer.places, problem);
    });
}

} // namespace MUSLIN_CPP_FORM

} // namespace muslin

#endif
