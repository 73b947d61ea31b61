// muslin/stripquilt.hpp - a whole top from a bundle of pre-cut strips: sets, segments, stacks, blocks, top.
// Written by generate.py from lib/abi/api.json: change that, not this file.
//
// SPDX-License-Identifier: MIT
#ifndef MUSLIN_STRIPQUILT_HPP
#define MUSLIN_STRIPQUILT_HPP

#include <muslin/stripquilt.h>
#include <muslin/finishing.hpp>

namespace muslin {

/** enum muslin_nesting */
enum class nesting : std::int32_t {
    /** turn some segments end for end, which turns their pressing and the order of prints */
    turn = MUSLIN_NESTING_TURN,
    /** turn none; name the joins that do not nest */
    name = MUSLIN_NESTING_NAME,
};

/** enum muslin_set_pressing */
enum class set_pressing : std::int32_t {
    /** all seams of the set towards its labelled top strip */
    to_top = MUSLIN_SET_PRESSING_TO_TOP,
    /** ... away from it */
    to_bottom = MUSLIN_SET_PRESSING_TO_BOTTOM,
};

/** struct muslin_stripquilt_spec. */
struct MUSLIN_CPP_TWIN stripquilt_spec {
    using c_type = muslin_stripquilt_spec;

    static constexpr std::uint32_t from_one_end = MUSLIN_YIELD_FROM_ONE_END;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** in hand */
    std::int64_t strips = 0;
    /** sewn side by side */
    std::int64_t strips_per_set = 6;
    /** 1 .. MUSLIN_STRIPQUILT_SEGMENTS_MAX */
    std::int64_t segments_per_block = 2;
    /** of blocks */
    std::int64_t columns = 1;
    std::int64_t rows = 1;
    /** wanted; 0 for as many as the strips give */
    std::int64_t tops = 0;
    /** cut width of a strip, 1 or more */
    muslin::length strip_cut = muslin::length::of_ticks(20320);
    /** of the shortest strip */
    muslin::length strip_length = muslin::length::of_ticks(325120);
    /** 0 for the cut that makes the block square */
    muslin::length segment_cut{};
    /** s */
    muslin::length allowance = muslin::length::of_ticks(2032);
    /** u */
    muslin::length take_up{};
    /** taken off each end, as in yield_spec */
    muslin::length end_trim{};
    /** as in yield_spec */
    muslin::length resquare_loss{};
    /** as in yield_spec */
    std::int64_t resquare_every = 0;
    /** as in yield_spec */
    muslin::length fold_clear{};
    /** enum turning */
    muslin::turning turning = muslin::turning::quarter_alternate;
    /** enum nesting */
    muslin::nesting nesting = muslin::nesting::turn;
    /** as in setting_spec; also for segment_cut 0 */
    muslin::length square_tolerance = muslin::length::of_ticks(127);
};
static_assert(detail::is_twin<stripquilt_spec>);

/** struct muslin_stripquilt. */
struct MUSLIN_CPP_TWIN stripquilt {
    using c_type = muslin_stripquilt;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** width of a strip set */
    muslin::length set_unfinished{};
    muslin::length set_finished{};
    /** what is seen of one strip */
    muslin::length strip_finished{};
    /** as asked, or found */
    muslin::length segment_cut{};
    /** what is seen of one segment */
    muslin::length segment_finished{};
    /** that a set gives */
    std::int64_t segments_per_set = 0;
    /** of those, from each end */
    std::int64_t segments_per_end = 0;
    /** a set */
    std::int64_t resquarings = 0;
    /** the shortest strip that gives as many segments */
    muslin::length strip_least{};
    /** how much shorter strips may be before a segment is lost */
    muslin::length strip_shorter_by{};
    /** how much longer they must be to give more */
    muslin::length strip_longer_for_more{};
    /** of each set, fold included */
    muslin::length strip_left_over{};
    /** of a block, outer seams still raw */
    muslin::length block_unfinished_width{};
    muslin::length block_unfinished_height{};
    /** as seen in the top */
    muslin::length block_finished_width{};
    muslin::length block_finished_height{};
    /** columns x rows */
    std::int64_t blocks_per_top = 0;
    /** in each top */
    std::int64_t blocks_turned = 0;
    /** without borders */
    muslin::length top_finished_width{};
    muslin::length top_finished_length{};
    /** outer seams still raw */
    muslin::length top_unfinished_width{};
    muslin::length top_unfinished_length{};
    /** that the strips make */
    std::int64_t sets_in_hand = 0;
    /** that those give */
    std::int64_t tops_in_hand = 0;
    /** planned: as wished, or all */
    std::int64_t tops = 0;
    /** to sew for them: one stack of segments each */
    std::int64_t sets = 0;
    /** sets x strips_per_set */
    std::int64_t strips_used = 0;
    /** of those in hand */
    std::int64_t strips_left = 0;
    /** beyond those in hand, to make tops_in_hand + 1 */
    std::int64_t strips_for_one_more_top = 0;
    /** in all planned tops */
    std::int64_t blocks = 0;
    /** used in them */
    std::int64_t segments = 0;
    /** cut but not used */
    std::int64_t segments_left = 0;
    /** segments to take from each of the last stacks ... */
    std::int64_t stack_low = 0;
    /** ... and from each of the first `stacks_high`: one more, or as many ... */
    std::int64_t stack_high = 0;
    /** ... and then this is all the sets */
    std::int64_t stacks_high = 0;
    /** rows of stripquilt_groups */
    std::int64_t groups = 0;
    /** end for end, in all blocks (nesting::turn), else 0 */
    std::int64_t segments_turned = 0;
    /** joins inside all blocks that do not nest (nesting::name), else 0 */
    std::int64_t places_not_nesting = 0;
    /** 1 when a block is square to the tick */
    muslin::truth block_square{};
    /** warning::no_slack, warning::nest_conflict, warning::set_repeats, warning::small_quilt */
    std::uint32_t warnings = 0;
};
static_assert(detail::is_twin<stripquilt>);

/** struct muslin_block_group. Blocks that are made alike: `blocks` of them, each taking one segment from each
 * listed stack, left to right. */
struct MUSLIN_CPP_TWIN block_group {
    using c_type = muslin_block_group;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** number of the group's first block, from 1 */
    std::int64_t first_block = 0;
    /** of them, one behind the other */
    std::int64_t blocks = 0;
    /** members of `sets` in use */
    std::int32_t segments = 0;
    /** bit j: segment j, from 0, is turned end for end */
    std::uint32_t turned = 0;
    /** bit j: segments j and j + 1 do not nest */
    std::uint32_t not_nesting = 0;
    /** 1 when a set occurs twice in each of these blocks */
    muslin::truth repeats{};
    /** enum set_pressing: the way segment 0 ends up pressed, turning counted; from there the segments alternate
     * where they nest */
    muslin::set_pressing first_pressing{};
    std::int32_t pad = 0;
    /** numbers of the sets, from 1; 0 behind the last */
    std::int64_t sets[32]{};
};
static_assert(detail::is_twin<block_group>);

/** What stripquilt_pressing() answers. */
struct stripquilt_pressing_answer {
    muslin::set_pressing pressing{};
    std::int64_t segments = 0;
};

inline namespace MUSLIN_CPP_FORM {

/** Plans the quilt. The sets to sew are the least that give the segments for the tops planned. Warnings:
 * warning::no_slack when the yield stands on its edge; warning::nest_conflict when some segment is turned or some
 * join does not nest; warning::set_repeats when the sets are fewer than a block's segments; warning::small_quilt
 * when both finished sides of a top are 60 in or less (a cautious limit: common practice, no source; the caution
 * itself is that of the American Academy of Pediatrics, 2022: no loose bedding in an infant's sleep space).
 * Statuses: status::range, also when the set would be wider, a block wider unfinished or a finished top larger
 * than MUSLIN_SIZE_MAX, or a top of more than MUSLIN_COUNT_MAX blocks; status::choice (turning, nesting);
 * status::seam_too_wide when nothing of a strip or a segment would be seen; status::not_square (a quarter turn of
 * a block that is not square, or segment_cut 0 where no whole tick makes it square, both beyond square_tolerance:
 * problem->value is the finished width, problem->limit the height); status::no_yield (a set gives no segment:
 * problem->limit is the usable length that gives one); status::not_enough (the strips do not give the tops wished
 * for, or not one: problem->value is what is wanted, problem->limit what they give, in tops). Source: common
 * practice, no source, for the way; geometry for the sizes.
 * muslin_stripquilt_plan() in muslin/stripquilt.h. Since 1.0. */
inline answer<muslin::stripquilt> stripquilt_plan(const muslin::stripquilt_spec &spec = {})
{
    muslin::stripquilt out;
    return asking::ask(out, [&](muslin_problem *problem) {
        return muslin_stripquilt_plan(detail::in_c(&spec), detail::in_c(&out), problem);
    });
}

/** The fewest strips that give the tops wished for, or one when none is: how many to have, or to add to those in
 * hand. `strips` of the spec may be 0 here, and is not looked at. status::too_many: more than MUSLIN_COUNT_MAX
 * would be needed (problem->value is the tops, problem->limit what so many strips give); the other statuses as
 * stripquilt_plan() has them, but status::not_enough. Constant time. Source: geometry; that sets are sewn whole is
 * common practice, no source.
 * muslin_stripquilt_strips_needed() in muslin/stripquilt.h. Since 1.1. */
inline answer<std::int64_t> stripquilt_strips_needed(const muslin::stripquilt_spec &spec = {})
{
    std::int64_t strips = 0;
    return asking::ask(strips, [&](muslin_problem *problem) {
        return muslin_stripquilt_strips_needed(detail::in_c(&spec), &strips, problem);
    });
}

/** Which stacks meet in which blocks, as dealt (ask-then-fill): one row for each run of blocks that take from the
 * same stacks, in order, never more rows than sets. A set named twice in a row is in each of its blocks twice.
 * Without turning, `turned` is 0; with it, `not_nesting` is 0. Where the sets are fewer than a block's segments,
 * every block repeats one and is marked. status::buffer when the rows do not fit. O(groups).
 * muslin_stripquilt_groups() in muslin/stripquilt.h. Since 1.0. */
inline answer<std::vector<muslin::block_group>> stripquilt_groups(const muslin::stripquilt_spec &spec = {})
{
    std::vector<muslin::block_group> rows;
    return asking::ask_rows(rows, rows, [&](auto to, muslin_problem *problem) {
        return muslin_stripquilt_groups(detail::in_c(&spec), to.rows, sizeof(muslin::block_group), to.capacity,
                                        to.count, problem);
    });
}

/** Which way to press all seams of set `set` (from 1), and how many segments its stack gives. Set 1 goes to its
 * top. The others are chosen so that the fewest segments of all planned tops lie the wrong way for their
 * neighbours: with two segments a block, so that the fewest joins do not nest; with more, so that the fewest
 * segments need be turned, while another pressing may leave fewer joins to name. That it is the fewest is tested
 * against all pressings of small plans and against an exact search of larger ones. The rest is in block_group's
 * `turned` or `not_nesting`. status::index for a set outside 1 .. sets. `segments` may be null.
 * muslin_stripquilt_pressing() in muslin/stripquilt.h. Since 1.0. */
inline answer<muslin::stripquilt_pressing_answer> stripquilt_pressing(const muslin::stripquilt_spec &spec,
                                                                      std::int64_t set)
{
    muslin::stripquilt_pressing_answer answer;
    return asking::ask(answer, [&](muslin_problem *problem) {
        return muslin_stripquilt_pressing(detail::in_c(&spec), set, detail::in_c(&answer.pressing), &answer.segments,
                                          problem);
    });
}

} // namespace MUSLIN_CPP_FORM

} // namespace muslin

#endif
