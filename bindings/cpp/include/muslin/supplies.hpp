// muslin/supplies.hpp - what else a quilt needs: thread, stitches, lines of quilting, weight, cost.
// Written by generate.py from lib/abi/api.json: change that, not this file.
//
// SPDX-License-Identifier: MIT
#ifndef MUSLIN_SUPPLIES_HPP
#define MUSLIN_SUPPLIES_HPP

#include <muslin/supplies.h>
#include <muslin/fabric.hpp>

namespace muslin {

/** enum muslin_thread_method */
enum class thread_method : std::int32_t {
    /** thread : seam as given */
    ratio = MUSLIN_THREAD_METHOD_RATIO,
    /** 2 + 2 T S: from the thickness sewn and the stitch */
    formula = MUSLIN_THREAD_METHOD_FORMULA,
};

/** enum muslin_quilting_pattern */
enum class quilting_pattern : std::int32_t {
    /** straight lines from side to side */
    across = MUSLIN_QUILTING_PATTERN_ACROSS,
    /** straight lines from top to bottom */
    along = MUSLIN_QUILTING_PATTERN_ALONG,
    /** both */
    grid = MUSLIN_QUILTING_PATTERN_GRID,
    /** at 45 degrees, one way */
    diagonal = MUSLIN_QUILTING_PATTERN_DIAGONAL,
    /** at 45 degrees, both ways */
    crosshatch = MUSLIN_QUILTING_PATTERN_CROSSHATCH,
    /** along seams or shapes whose length is given */
    outline = MUSLIN_QUILTING_PATTERN_OUTLINE,
};

/** enum muslin_quilting_start */
enum class quilting_start : std::int32_t {
    /** the first diagonal cuts a corner off, at the offset from that corner */
    at_offset = MUSLIN_QUILTING_START_AT_OFFSET,
    /** the first diagonal starts in a corner; the others lie on both sides of it */
    from_corner = MUSLIN_QUILTING_START_FROM_CORNER,
};

/** enum muslin_cost_kind */
enum class cost_kind : std::int32_t {
    /** cloth by length: a price for so many ticks, 292608 for a yard, 320000 for a metre */
    length = MUSLIN_COST_LENGTH,
    /** things one by one: a price for one, or for so many */
    pieces = MUSLIN_COST_PIECES,
    /** pieces that are sold together only: whole bundles are bought */
    bundles = MUSLIN_COST_BUNDLES,
};

/** struct muslin_piecing_spec. */
struct MUSLIN_CPP_TWIN piecing_spec {
    using c_type = muslin_piecing_spec;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** strip sets */
    std::int64_t sets = 0;
    /** 1 or more */
    std::int64_t strips_per_set = 1;
    /** length of the seams in a set */
    muslin::length strip_length = muslin::length::of_ticks(325120);
    /** equal tops of blocks in a straight setting */
    std::int64_t tops = 0;
    /** 1 or more */
    std::int64_t columns = 1;
    /** 1 or more */
    std::int64_t rows = 1;
    /** 1 or more, side by side, each as high as the block */
    std::int64_t segments_per_block = 1;
    /** finished */
    muslin::length block_width{};
    /** finished */
    muslin::length block_height{};
    /** of one edge, 0 .. MUSLIN_SIZE_MAX / 8 */
    muslin::length allowance = muslin::length::of_ticks(2032);
    /** of one seam, 0 .. MUSLIN_SIZE_MAX / 8 */
    muslin::length take_up{};
};
static_assert(detail::is_twin<piecing_spec>);

/** struct muslin_piecing. */
struct MUSLIN_CPP_TWIN piecing {
    using c_type = muslin_piecing;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** number of seams in all */
    std::int64_t seams = 0;
    /** sets x (strips - 1) x strip length */
    muslin::length in_sets{};
    /** segment to segment, each as long as the block is high, unfinished */
    muslin::length in_blocks{};
    /** block to block, as long */
    muslin::length in_rows{};
    /** row to row, each as long as the row is wide, unfinished */
    muslin::length between_rows{};
    /** of the four: what thread_plan() asks for */
    muslin::length total{};
};
static_assert(detail::is_twin<piecing>);

/** struct muslin_thread_spec. bobbins are bought wound, so that spools hold the needle thread alone */
struct MUSLIN_CPP_TWIN thread_spec {
    using c_type = muslin_thread_spec;

    static constexpr std::uint32_t ready_bobbins = MUSLIN_THREAD_READY_BOBBINS;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** to be sewn, 0 .. MUSLIN_LENGTH_MAX / 2 */
    muslin::length seam{};
    /** thread ..., 1 .. MUSLIN_COUNT_MAX; by the formula not used */
    std::int64_t ratio_above = 5;
    /** ... for so much seam, 1 .. MUSLIN_COUNT_MAX; by the formula not used */
    std::int64_t ratio_below = 2;
    /** T: all layers together, pressed flat under the foot; by the ratio not used */
    muslin::length thickness{};
    /** 1 / S, 1 or more; by the ratio not used */
    muslin::length stitch_length = muslin::length::of_ticks(640);
    /** thread a bobbin holds, 0 .. MUSLIN_LENGTH_MAX / 2; 0: bobbins are not counted */
    muslin::length bobbin{};
    /** thread on a spool, 0 .. MUSLIN_LENGTH_MAX / 2; 0: spools are not counted */
    muslin::length spool{};
    /** enum thread_method */
    muslin::thread_method method = muslin::thread_method::ratio;
    /** ppm on top, 0 .. 10000000 */
    std::int32_t waste = 150000;
};
static_assert(detail::is_twin<thread_spec>);

/** struct muslin_thread. */
struct MUSLIN_CPP_TWIN thread {
    using c_type = muslin_thread;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** thread for one unit of seam, in thousandths, nearest */
    std::int64_t ratio_thousandths = 0;
    /** without waste, up to a tick */
    muslin::length thread{};
    /** exact thread x (1 + waste), up to a tick: needle and bobbin thread together */
    muslin::length with_waste{};
    /** half of the exact one, up to a tick */
    muslin::length needle{};
    /** the other half, up to a tick */
    muslin::length bobbin_thread{};
    /** up */
    std::int64_t bobbins = 0;
    /** for with_waste, or for the needle thread alone, up; the last bobbin is wound only as far as it is needed */
    std::int64_t spools = 0;
    /** room, or ready thread, left on the last one */
    muslin::length left_on_bobbin{};
    /** spools x spool less the same thread */
    muslin::length left_on_spool{};
    /** the seam may be so much longer before one bobbin more is needed ... */
    muslin::length bobbin_longer_by{};
    /** ... before one spool more is needed; both at most up to the longest seam for which this call gives an answer */
    muslin::length spool_longer_by{};
};
static_assert(detail::is_twin<thread>);

/** struct muslin_quilting_spec. */
struct MUSLIN_CPP_TWIN quilting_spec {
    using c_type = muslin_quilting_spec;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** of the area to quilt, 1 or more but for an outline */
    muslin::length width{};
    /** of the area, 1 or more but for an outline */
    muslin::length length{};
    /** d, from line to line, square to them, 1 or more; for an outline not used */
    muslin::length spacing = muslin::length::of_ticks(16256);
    /** no line lies nearer to the edges it runs beside, or to the corners it cuts off; from a corner and for an
     * outline not used */
    muslin::length offset{};
    /** length of what is outlined, 0 .. MUSLIN_LENGTH_MAX / 2; used for an outline alone */
    muslin::length outline{};
    /** lines along an outline: 1 in the ditch or on one side, 2 on both sides */
    std::int64_t passes = 1;
    /** enum quilting_pattern */
    muslin::quilting_pattern pattern = muslin::quilting_pattern::grid;
    /** enum quilting_start, of diagonals */
    muslin::quilting_start start = muslin::quilting_start::at_offset;
};
static_assert(detail::is_twin<quilting_spec>);

/** struct muslin_quilting. */
struct MUSLIN_CPP_TWIN quilting {
    using c_type = muslin_quilting;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** in all; for an outline the passes */
    std::int64_t lines = 0;
    /** of all lines together, up to a tick: what thread_plan() asks for */
    muslin::length length{};
    /** from side to side, or the diagonals one way */
    std::int64_t lines_first = 0;
    /** from top to bottom, or the diagonals the other way */
    std::int64_t lines_second = 0;
    /** straight lines: from the last one to where another might lie; diagonals: 0 */
    muslin::length left_first{};
    muslin::length left_second{};
    /** straight lines: the widest spacing with as many lines, down to a tick, which uses up what is left; 0 below
     * two lines and for diagonals */
    muslin::length even_first{};
    muslin::length even_second{};
    /** 1 when the length is a whole number of ticks */
    muslin::truth exact{};
    std::int32_t pad = 0;
    /** straight lines: from the last one to the edge behind it, offset and what is left; 0 where there is no line,
     * and for diagonals */
    muslin::length last_first{};
    muslin::length last_second{};
};
static_assert(detail::is_twin<quilting>);

/** struct muslin_weight_spec. */
struct MUSLIN_CPP_TWIN weight_spec {
    using c_type = muslin_weight_spec;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** of the finished quilt */
    muslin::length width{};
    muslin::length length{};
    /** as cut and joined, or 0 */
    muslin::length binding_length{};
    /** cut width of the binding */
    muslin::length binding_cut{};
    /** mg for a square metre of the top's cloth, 0 .. MUSLIN_COUNT_MAX, and so on */
    std::int64_t top_density = 0;
    /** of the filler */
    std::int64_t batting_density = 0;
    /** of the back */
    std::int64_t backing_density = 0;
    /** of the binding's cloth */
    std::int64_t binding_density = 0;
    /** each mass is rounded to a multiple of so many mg, 1 .. MUSLIN_SIZE_MAX */
    std::int64_t step = 1000;
    /** ppm of cloth more that lies in the top's seams, 0 .. 10000000 */
    std::int32_t seam_share = 0;
    /** enum direction */
    muslin::direction direction = muslin::direction::nearest;
};
static_assert(detail::is_twin<weight_spec>);

/** struct muslin_weight. */
struct MUSLIN_CPP_TWIN weight {
    using c_type = muslin_weight;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** mg: width x length x (1 + seam share) x density */
    std::int64_t top = 0;
    /** mg: width x length x density */
    std::int64_t batting = 0;
    std::int64_t backing = 0;
    /** mg: length x cut width x density */
    std::int64_t binding = 0;
    /** mg: of the exact masses, rounded once, so it may differ from the sum of the rounded ones */
    std::int64_t total = 0;
};
static_assert(detail::is_twin<weight>);

/** struct muslin_cost_spec. One thing on a list of costs. */
struct MUSLIN_CPP_TWIN cost_spec {
    using c_type = muslin_cost_spec;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** ticks, 0 .. MUSLIN_LENGTH_MAX / 2, as bought (see fabric_purchase()); or pieces */
    std::int64_t amount = 0;
    /** 0 .. MUSLIN_MONEY_MAX */
    std::int64_t price = 0;
    /** what the price is for: ticks, 1 .. MUSLIN_SIZE_MAX; or pieces, 1 .. MUSLIN_COUNT_MAX */
    std::int64_t per = 1;
    /** enum cost_kind */
    muslin::cost_kind sold = muslin::cost_kind::pieces;
    /** enum direction, of a cost between two whole numbers; shops round to the nearest */
    muslin::direction direction = muslin::direction::nearest;
};
static_assert(detail::is_twin<cost_spec>);

/** struct muslin_cost. */
struct MUSLIN_CPP_TWIN cost {
    using c_type = muslin_cost;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** the amount, or whole bundles, up */
    std::int64_t bought = 0;
    /** pieces that the bundles hold beyond the amount: so many more cost nothing more */
    std::int64_t spare = 0;
    /** amount x price / per, rounded as asked, or bundles x price */
    std::int64_t cost = 0;
    /** 1 when the cost was not rounded */
    muslin::truth exact{};
    std::int32_t pad = 0;
};
static_assert(detail::is_twin<cost>);

/** What stitch_count() answers. */
struct stitch_count_answer {
    std::int64_t thousandths = 0;
    muslin::truth exact{};
};

inline namespace MUSLIN_CPP_FORM {

/** Length of all seams of strip sets and of tops of blocks. A seam is sewn from raw edge to raw edge, so it is as
 * long as the unfinished piece: finished + 2 s + u. Borders, backing and binding are not in it; length_dot() adds
 * up other seams. status::overflow when seams or a length pass MUSLIN_LENGTH_MAX. Source: geometry.
 * muslin_piecing_plan() in muslin/supplies.h. Since 1.0. */
inline answer<muslin::piecing> piecing_plan(const muslin::piecing_spec &spec = {})
{
    muslin::piecing out;
    return asking::ask(out, [&](muslin_problem *problem) {
        return muslin_piecing_plan(detail::in_c(&spec), detail::in_c(&out), problem);
    });
}

/** Sewing thread for seams in lockstitch (ISO 4915 type 301), half of it from the needle, half from the bobbin. By
 * the ratio, thread = seam x above / below: 5 : 2 is usual for 301. By the formula, thread = seam x (2 + 2 T S)
 * with S stitches to the unit: each of the two threads lies once along the seam and goes once through the
 * thickness a stitch. The two agree for patchwork. status::overflow when the thread passes MUSLIN_LENGTH_MAX.
 * Sources: Stitch classes 300-400 (Apparel Science) for 2.5 and 1 : 1; Sewing thread consumption guide (textile
 * blog) for the formula; Measuring actual thread consumption (Apparel Science) for 10 to 15 % waste, a
 * thread-industry handout for 15 to 20 %.
 * muslin_thread_plan() in muslin/supplies.h. Since 1.0. */
inline answer<muslin::thread> thread_plan(const muslin::thread_spec &spec = {})
{
    muslin::thread out;
    return asking::ask(out, [&](muslin_problem *problem) {
        return muslin_thread_plan(detail::in_c(&spec), detail::in_c(&out), problem);
    });
}

/** How many stitches of `stitch_length` (1 .. MUSLIN_SIZE_MAX) lie in `length` (0 .. MUSLIN_SIZE_MAX; an inch is
 * 8128): thousandths gets length / stitch_length with so many decimals (0 .. 3), rounded as `direction` (enum
 * direction) says, always counted in thousandths; exact, which may be null, becomes 1 when nothing was lost.
 * Source: Convert metric stitch length to stitches per inch (public blog), 25.4 / mm.
 * muslin_stitch_count() in muslin/supplies.h. Since 1.0. */
inline answer<muslin::stitch_count_answer> stitch_count(muslin::length length, muslin::length stitch_length,
                                                        std::int32_t decimals, muslin::direction direction)
{
    muslin::stitch_count_answer answer;
    return asking::ask(answer, [&](muslin_problem *problem) {
        return muslin_stitch_count(detail::in_c(length), detail::in_c(stitch_length), decimals, detail::in_c(direction),
                                   &answer.thousandths, detail::in_c(&answer.exact), problem);
    });
}

/** The other way round: the stitch of which so many thousandths (1 .. MUSLIN_COUNT_MAX) lie in `length` (0 ..
 * MUSLIN_SIZE_MAX), rounded as asked. status::null: rounding or out is null. Source: as stitch_count().
 * muslin_stitch_length() in muslin/supplies.h. Since 1.0. */
inline answer<muslin::rounded> stitch_length(muslin::length length, std::int64_t thousandths,
                                             const muslin::rounding_spec &rounding = {})
{
    muslin::rounded out;
    return asking::ask(out, [&](muslin_problem *problem) {
        return muslin_stitch_length(detail::in_c(length), thousandths, detail::in_c(&rounding), detail::in_c(&out),
                                    problem);
    });
}

/** Number and length of the lines of quilting on a rectangle. Straight lines lie at offset, offset + d, ... from
 * the first edge and no nearer than the offset to the last; with an offset of 0 a line on the edge itself counts.
 * Diagonals from an offset lie at offset, offset + d, ... from the corner they cut off, measured square to them,
 * and no nearer than the offset to the far corner; at 0 a line would be a point and is not counted. Diagonals from
 * a corner: one starts in it, and others lie at d, 2 d, ... on both sides as far as they meet the area. The second
 * way is the mirror image of the first. Lines end at the edges of the area; tails and turns belong into the waste
 * of the thread. No line at all is an answer. status::overflow when an outline times its passes passes
 * MUSLIN_LENGTH_MAX. Source: geometry: a diagonal of a w x h area at the distance p from a corner is 2 p long,
 * then sqrt 2 x the shorter side, then sqrt 2 (w + h) - 2 p.
 * muslin_quilting_lines() in muslin/supplies.h. Since 1.0. */
inline answer<muslin::quilting> quilting_lines(const muslin::quilting_spec &spec = {})
{
    muslin::quilting out;
    return asking::ask(out, [&](muslin_problem *problem) {
        return muslin_quilting_lines(detail::in_c(&spec), detail::in_c(&out), problem);
    });
}

/** What a quilt weighs, layer by layer, from what its cloth weighs for a square metre (its maker says, or weigh a
 * piece of known size). Thread is left out: it is a few grams. One square metre is 320000 x 320000 square ticks,
 * so each mass is exact before it is rounded. In the problem the densities have `at` 0 to 3 in the order of the
 * struct. Source: geometry.
 * muslin_weight_plan() in muslin/supplies.h. Since 1.0. */
inline answer<muslin::weight> weight_plan(const muslin::weight_spec &spec = {})
{
    muslin::weight out;
    return asking::ask(out, [&](muslin_problem *problem) {
        return muslin_weight_plan(detail::in_c(&spec), detail::in_c(&out), problem);
    });
}

/** Ounces for a square yard, in thousandths of an ounce (0 .. MUSLIN_COUNT_MAX), as mg for a square metre, rounded
 * as `direction` (enum direction) says. Source: NIST Handbook 44 and SP 811: the pound is 453.59237 g, the yard
 * 0.9144 m, exactly.
 * muslin_density_from_ounces() in muslin/supplies.h. Since 1.0. */
inline answer<std::int64_t> density_from_ounces(std::int64_t thousandths, muslin::direction direction)
{
    std::int64_t density = 0;
    return asking::ask(density, [&](muslin_problem *problem) {
        return muslin_density_from_ounces(thousandths, detail::in_c(direction), &density, problem);
    });
}

/** A mass in mg (0 .. MUSLIN_LENGTH_MAX) in ounces with so many decimals (0 .. 3), rounded as `direction` (enum
 * direction) says and counted in thousandths. Source: as above.
 * muslin_mass_in_ounces() in muslin/supplies.h. Since 1.0. */
inline answer<std::int64_t> mass_in_ounces(std::int64_t mass, std::int32_t decimals, muslin::direction direction)
{
    std::int64_t thousandths = 0;
    return asking::ask(thousandths, [&](muslin_problem *problem) {
        return muslin_mass_in_ounces(mass, decimals, detail::in_c(direction), &thousandths, problem);
    });
}

/** What one thing costs. The money has as many decimals as the caller says; no money is converted. status::overflow
 * when the cost passes MUSLIN_MONEY_MAX. Source: geometry; rounding to the nearest with halves upwards is common
 * practice, no source.
 * muslin_cost_plan() in muslin/supplies.h. Since 1.0. */
inline answer<muslin::cost> cost_plan(const muslin::cost_spec &spec = {})
{
    muslin::cost out;
    return asking::ask(out, [&](muslin_problem *problem) {
        return muslin_cost_plan(detail::in_c(&spec), detail::in_c(&out), problem);
    });
}

/** The sum of a list, each row rounded on its own as a bill does it, and the sum not rounded again. Rows are
 * cost_spec at stride row_size (at least the first published size, at most 4096, and no row's own size above it:
 * else status::struct_size); the first bad row fails the call and is the problem's `at`. n = 0 gives 0, and rows
 * may then be null. status::overflow when a cost or the sum passes MUSLIN_MONEY_MAX. One pass. Source: geometry.
 * muslin_cost_total() in muslin/supplies.h. Since 1.0. */
inline answer<std::int64_t> cost_total(muslin::span<const muslin::cost_spec> rows)
{
    std::int64_t total = 0;
    return asking::ask(total, [&](muslin_problem *problem) {
        return muslin_cost_total(detail::in_c(rows.data()), sizeof(muslin::cost_spec), rows.size(), &total, problem);
    });
}

} // namespace MUSLIN_CPP_FORM

} // namespace muslin

#endif
