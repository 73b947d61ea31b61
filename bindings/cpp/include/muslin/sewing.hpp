// muslin/sewing.hpp - the order of sewing: steps that can be chain-pieced, labels for stacks, seams and thread.
// Written by generate.py from lib/abi/api.json: change that, not this file.
//
// SPDX-License-Identifier: MIT
#ifndef MUSLIN_SEWING_HPP
#define MUSLIN_SEWING_HPP

#include <muslin/sewing.h>
#include <muslin/pressing.hpp>

namespace muslin {

/** enum muslin_sewing_kind */
enum class sewing_kind : std::int32_t {
    /** strips sewn into sets */
    set = MUSLIN_SEWING_SET,
    /** sets cut across into segments: nothing is sewn */
    segments = MUSLIN_SEWING_SEGMENTS,
    /** a unit by its recipe: unit_steps() has its own steps */
    unit = MUSLIN_SEWING_UNIT,
    /** the caller's own shape */
    shape = MUSLIN_SEWING_SHAPE,
    /** pieces joined in their order */
    join = MUSLIN_SEWING_JOIN,
    /** trimmed to size: nothing is sewn */
    trim = MUSLIN_SEWING_TRIM,
    /** a partial first seam, three whole ones, the first one finished */
    pinwheel = MUSLIN_SEWING_PINWHEEL,
    /** strips sewn from mark to mark, then the mitres */
    set_in = MUSLIN_SEWING_SET_IN,
    /** diagonal rows of blocks and of sashes, then rows to each other, corners last */
    diagonal = MUSLIN_SEWING_DIAGONAL,
    /** rows of 60 degree pieces, then rows to each other */
    sixty = MUSLIN_SEWING_SIXTY,
};

/** struct muslin_sewing_step. */
struct MUSLIN_CPP_TWIN sewing_step {
    using c_type = muslin_sewing_step;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** what is made */
    muslin::id node{};
    /** number of the stack it makes, from 0, for sewing_label(); a step of cutting takes that of its set */
    std::int64_t stack = 0;
    /** how many are made: strip sets, segments that are needed, units with the spare ones of their recipes (units
     * alike share recipes: with the first of them), joins ... */
    std::int64_t alike = 0;
    /** that go into one; of segments and trims 1 */
    std::int64_t pieces = 0;
    /** in one */
    std::int64_t seams = 0;
    /** the longest of them, from raw edge to raw edge, where edges do not meet the longer one; what set-in and
     * partial seams leave open is counted with them */
    muslin::length seam_longest{};
    /** all seams of all that are alike */
    muslin::length sewn{};
    /** of what is made; of a set: its width and the strips' length */
    muslin::length unfinished_width{};
    muslin::length unfinished_height{};
    /** steps that it needs: sewing_feeds() */
    std::int64_t feeds = 0;
    /** enum sewing_kind */
    muslin::sewing_kind kind{};
    /** 1 when more than one is sewn */
    muslin::truth chain{};
};
static_assert(detail::is_twin<sewing_step>);

/** struct muslin_sewing_feed. */
struct MUSLIN_CPP_TWIN sewing_feed {
    using c_type = muslin_sewing_feed;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** what is used */
    muslin::id node{};
    /** the step that makes it; -1: it is cut as it is */
    std::int64_t step = 0;
    /** how many go into one */
    std::int64_t each = 0;
};
static_assert(detail::is_twin<sewing_feed>);

/** struct muslin_sewing_total. */
struct MUSLIN_CPP_TWIN sewing_total {
    using c_type = muslin_sewing_total;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** rows of sewing_steps() */
    std::int64_t steps = 0;
    /** in all tops */
    std::int64_t seams = 0;
    /** all seams: what thread_plan() asks for */
    muslin::length sewn{};
    /** of those, in strip sets */
    muslin::length in_sets{};
    /** of one top: the most seams across it ... */
    std::int64_t width_seams = 0;
    /** ... and down */
    std::int64_t height_seams = 0;
    /** how far its unfinished width may be off, each seam and each cut edge off as stated */
    muslin::length width_worst{};
    muslin::length width_likely{};
    /** its height, so */
    muslin::length height_worst{};
    muslin::length height_likely{};
};
static_assert(detail::is_twin<sewing_total>);

inline namespace MUSLIN_CPP_FORM {

/** The steps, a row each, in the order of their nodes. A strip-pieced join is two: its set, then its segments.
 * Turned nodes take no step of their own; mirror images are sewn along with what they mirror, the other way round.
 * Seams of units and shapes, and mitres, are as long as their finished seams, to the nearest tick, plus an
 * allowance e at each end; one that joins two halves of a unit through its middle, see quilt::unit(), counts once.
 * In a field on point, in every layout, an end that lies on the outer edge counts e sqrt 2, also where of what is
 * sewn together one piece ends square there and the other, longer one at 45 degrees; every other end counts e.
 * Rows are sewn with their triangles, then to each other, corners last. A triangle of SASH_OUTER that is set into
 * a corner, see quilt::diagonal(), comes once the rows of sashes on both sides of its row are sewn to it: into the
 * angle of the row's end and of the row of sashes that runs on, two seams from mark to mark, which count like the
 * others.
 * muslin_sewing_steps() in muslin/sewing.h. Since 1.0. */
inline answer<std::vector<muslin::sewing_step>> sewing_steps(const muslin::solution &solution)
{
    std::vector<muslin::sewing_step> rows;
    return asking::ask_rows(rows, rows, [&](auto to, muslin_problem *problem) {
        return muslin_sewing_steps(solution.get(), to.rows, sizeof(muslin::sewing_step), to.capacity, to.count,
                                   problem);
    });
}

/** What goes into one of step `step`: made by earlier steps, or patches, each once, in the order of their first
 * use. Of a set, the patches that its strips become; of segments, their set, by the join's id. Pieces that are no
 * nodes, of units, setting triangles and the like, are in the cut list alone. status::index: no such step.
 * muslin_sewing_feeds() in muslin/sewing.h. Since 1.0. */
inline answer<std::vector<muslin::sewing_feed>> sewing_feeds(const muslin::solution &solution, std::int64_t step)
{
    std::vector<muslin::sewing_feed> rows;
    return asking::ask_rows(rows, rows, [&](auto to, muslin_problem *problem) {
        return muslin_sewing_feeds(solution.get(), step, to.rows, sizeof(muslin::sewing_feed), to.capacity, to.count,
                                   problem);
    });
}

/** The label of stack `number` (0 .. MUSLIN_COUNT_MAX): A .. Z, then AA, AB and so on, terminated; text out as in
 * base.h. Source: common practice, no source.
 * muslin_sewing_label() in muslin/sewing.h. Since 1.0. */
inline answer<std::string> sewing_label(std::int64_t number)
{
    std::string text;
    return asking::ask_text(text, text, [&](auto to, muslin_problem *problem) {
        return muslin_sewing_label(number, to.text, to.capacity, to.need, problem);
    });
}

/** All seams, and how far off the whole top may be: with the most seams across it, each off by seam_error and each
 * of its pieces' cuts by cut_error (0 .. MUSLIN_SIZE_MAX / 8 each), as accuracy_row() says; the rounding of
 * on-point and 60 degree parts is not in it. The most are counted of each row and block by itself, so where blocks
 * differ or lie turned no one line need cross as many: it is off by no more.
 * muslin_sewing_totals() in muslin/sewing.h. Since 1.0. */
inline answer<muslin::sewing_total> sewing_totals(const muslin::solution &solution, muslin::length seam_error,
                                                  muslin::length cut_error)
{
    muslin::sewing_total out;
    return asking::ask(out, [&](muslin_problem *problem) {
        return muslin_sewing_totals(solution.get(), detail::in_c(seam_error), detail::in_c(cut_error),
                                    detail::in_c(&out), problem);
    });
}

} // namespace MUSLIN_CPP_FORM

} // namespace muslin

#endif
