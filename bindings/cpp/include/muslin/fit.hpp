// muslin/fit.hpp - settings that come out at a wanted size or for a bed, and a pattern resized.
// Written by generate.py from lib/abi/api.json: change that, not this file.
//
// SPDX-License-Identifier: MIT
#ifndef MUSLIN_FIT_HPP
#define MUSLIN_FIT_HPP

#include <muslin/fit.h>
#include <muslin/setting.hpp>

namespace muslin {

/** enum muslin_drop */
enum class drop : std::int32_t {
    /** as far as the mattress is deep: a coverlet that shows the base of the bed */
    depth = MUSLIN_DROP_DEPTH,
    /** the depth and 3 in, or what else is asked: hides where mattress and base meet */
    over_joint = MUSLIN_DROP_OVER_JOINT,
    /** from the top of the mattress down to the floor: a bedspread */
    floor = MUSLIN_DROP_FLOOR,
    /** as the spec says */
    given = MUSLIN_DROP_GIVEN,
};

/** enum muslin_foot_corner */
enum class foot_corner : std::int32_t {
    /** left square: their points hang lower than the edges */
    square = MUSLIN_FOOT_CORNER_SQUARE,
    /** cut to a quarter circle, so that no point hangs lower than the edges */
    rounded = MUSLIN_FOOT_CORNER_ROUNDED,
};

/** enum muslin_fit_kind */
enum class fit_kind : std::int32_t {
    /** side by side: c B + 2 b wide */
    straight = MUSLIN_FIT_STRAIGHT,
    /** sashes between blocks: c B + (c - 1) S + 2 b */
    sashed = MUSLIN_FIT_SASHED,
    /** and one round the outside: c B + (c + 1) S + 2 b */
    framed = MUSLIN_FIT_FRAMED,
    /** on their corners, c and r counted along the edges, (c - 1)(r - 1) alternate blocks between them: c B sqrt 2
     * + 2 b */
    on_point = MUSLIN_FIT_ON_POINT,
};

/** enum muslin_parity */
enum class parity : std::int32_t {
    /** even or odd */
    any = MUSLIN_PARITY_ANY,
    /** turned blocks that come in fours */
    even = MUSLIN_PARITY_EVEN,
    /** every other block a plain one, and the same block in all four corners */
    odd = MUSLIN_PARITY_ODD,
};

/** enum muslin_fit_rank */
enum class fit_rank : std::int32_t {
    /** least off first: what width and length are off, added up */
    nearest = MUSLIN_FIT_RANK_NEAREST,
    /** blocks and alternate blocks */
    fewest_blocks = MUSLIN_FIT_RANK_FEWEST_BLOCKS,
    /** the largest block first */
    largest_block = MUSLIN_FIT_RANK_LARGEST_BLOCK,
};

/** struct muslin_bed_spec. */
struct MUSLIN_CPP_TWIN bed_spec {
    using c_type = muslin_bed_spec;

    static constexpr std::uint32_t foot_given = MUSLIN_BED_FOOT_GIVEN;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** 1 or more */
    muslin::length mattress_width{};
    /** 1 or more */
    muslin::length mattress_length{};
    /** 1 or more for DEPTH and OVER_JOINT */
    muslin::length mattress_depth{};
    /** floor to top of mattress; 1 or more for FLOOR, else 0 if unknown */
    muslin::length floor_height{};
    /** added to the depth by OVER_JOINT */
    muslin::length beyond_depth = muslin::length::of_ticks(24384);
    /** left and right, for GIVEN */
    muslin::length side_drop{};
    /** for GIVEN and with MUSLIN_BED_FOOT_GIVEN */
    muslin::length foot_drop{};
    /** beyond the mattress at the head, where the quilt hangs there too */
    muslin::length head_drop{};
    /** to fold under and over the pillows */
    muslin::length pillow_tuck{};
    /** what quilting will take up of width and of length: 1-3 in or more on a bed quilt (Standard quilt sizes for
     * mattresses); measure a sample */
    muslin::length quilting_extra{};
    /** enum drop */
    muslin::drop drop = muslin::drop::depth;
    /** enum foot_corner */
    muslin::foot_corner foot_corner = muslin::foot_corner::square;
};
static_assert(detail::is_twin<bed_spec>);

/** struct muslin_bed. */
struct MUSLIN_CPP_TWIN bed {
    using c_type = muslin_bed;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** on each side, by the rule asked for */
    muslin::length side_drop{};
    /** at the foot */
    muslin::length foot_drop{};
    /** of the quilt on the bed: mattress + 2 side drops */
    muslin::length finished_width{};
    /** mattress + head drop + foot drop + pillow tuck */
    muslin::length finished_length{};
    /** finished width of the top to piece: the same and quilting_extra */
    muslin::length top_width{};
    muslin::length top_length{};
    /** how far below the mattress a foot corner reaches along the cloth, up to a tick: its point, sqrt(side drop^2
     * + foot drop^2), so 1.414 drops where they are equal; when rounded, the longer of the two drops */
    muslin::length corner_hang{};
    /** of the quarter circle to draw: the shorter of the two drops; 0 when square */
    muslin::length corner_radius{};
    /** how far the point stands beyond that circle, (sqrt 2 - 1) radii, up to a tick: what is lost of the corner
     * along its diagonal; 0 when square */
    muslin::length corner_cut_off{};
    /** floor_height - corner_hang, below 0 when the corner lies on the floor; 0 where floor_height is 0 */
    muslin::length corner_clearance{};
    /** 1 when floor_height is given and the corner hangs lower: feet catch in it */
    muslin::truth corner_touches{};
    /** warning::small_quilt: no side of the mattress, as of a crib's, passes 60 in */
    std::uint32_t warnings = 0;
};
static_assert(detail::is_twin<bed>);

/** struct muslin_bed_covered_spec. */
struct MUSLIN_CPP_TWIN bed_covered_spec {
    using c_type = muslin_bed_covered_spec;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** finished, 1 or more */
    muslin::length quilt_width{};
    /** finished, 1 or more */
    muslin::length quilt_length{};
    /** 1 or more */
    muslin::length mattress_width{};
    /** 1 or more */
    muslin::length mattress_length{};
    /** 0 if unknown */
    muslin::length mattress_depth{};
    /** from the floor to the top of the mattress; 0 if unknown */
    muslin::length floor_height{};
    /** as in bed_spec */
    muslin::length head_drop{};
    /** as in bed_spec */
    muslin::length pillow_tuck{};
    /** enum foot_corner */
    muslin::foot_corner foot_corner = muslin::foot_corner::square;
    std::int32_t pad = 0;
};
static_assert(detail::is_twin<bed_covered_spec>);

/** struct muslin_bed_cover. */
struct MUSLIN_CPP_TWIN bed_cover {
    using c_type = muslin_bed_cover;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** on each side, half of what is left over, down to a tick; below 0 where the quilt is narrower than the
     * mattress */
    muslin::length side_drop{};
    /** what is left of the length; below 0 where the quilt does not reach the foot */
    muslin::length foot_drop{};
    /** how much wider it must be for the sides to hang to the mattress's depth; 0: it is wide enough */
    muslin::length short_width{};
    /** the same for the length */
    muslin::length short_length{};
    /** as in bed; 0 where a drop is below 0 */
    muslin::length corner_hang{};
    /** as in bed */
    muslin::length corner_clearance{};
    /** 1 when the quilt covers the top of the mattress */
    muslin::truth reaches_edges{};
    /** 1 when it hangs to the depth on both sides and at the foot */
    muslin::truth reaches_depth{};
    /** 1 when floor_height is given and a foot corner hangs lower */
    muslin::truth corner_touches{};
    /** warning::small_quilt: no side of quilt or of mattress is longer than 60 in */
    std::uint32_t warnings = 0;
    /** how far each side hangs below the mattress's lower edge, down to a tick: side_drop less the depth; 0: it
     * just reaches it, below 0: it falls short */
    muslin::length beyond_side{};
    /** the same at the foot */
    muslin::length beyond_foot{};
};
static_assert(detail::is_twin<bed_cover>);

/** struct muslin_fit_spec. Blocks are square. A size runs from its least to its most in steps from the least. */
struct MUSLIN_CPP_TWIN fit_spec {
    using c_type = muslin_fit_spec;

    static constexpr std::uint32_t allow_straight = MUSLIN_FIT_ALLOW_STRAIGHT;
    static constexpr std::uint32_t allow_sashed = MUSLIN_FIT_ALLOW_SASHED;
    static constexpr std::uint32_t allow_framed = MUSLIN_FIT_ALLOW_FRAMED;
    static constexpr std::uint32_t allow_on_point = MUSLIN_FIT_ALLOW_ON_POINT;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** 1 or more, with borders */
    muslin::length wanted_width{};
    /** 1 or more */
    muslin::length wanted_length{};
    /** how much narrower it may come out */
    muslin::length width_under{};
    /** how much wider */
    muslin::length width_over{};
    /** how much shorter */
    muslin::length length_under{};
    /** how much longer */
    muslin::length length_over{};
    /** 1 or more */
    muslin::length block_least = muslin::length::of_ticks(48768);
    /** block_least or more */
    muslin::length block_most = muslin::length::of_ticks(113792);
    /** 1 or more */
    muslin::length block_step = muslin::length::of_ticks(4064);
    /** 1 or more where sashes are allowed; where they are not, all three are not looked at */
    muslin::length sash_least = muslin::length::of_ticks(8128);
    muslin::length sash_most = muslin::length::of_ticks(24384);
    /** from width to width, 1 or more */
    muslin::length sash_step = muslin::length::of_ticks(4064);
    /** on each side, all borders together; 0: none */
    muslin::length border_least{};
    muslin::length border_most{};
    /** 1 or more */
    muslin::length border_step = muslin::length::of_ticks(8128);
    /** 1 or more */
    std::int64_t columns_least = 1;
    /** columns_least or more */
    std::int64_t columns_most = 100;
    /** 1 or more */
    std::int64_t rows_least = 1;
    /** rows_least or more */
    std::int64_t rows_most = 100;
    /** list so many only; 0: all, to MUSLIN_COUNT_MAX */
    std::int64_t best = 0;
    /** the most combinations of kind, block, sash and border that are tried, and the most settings that may be
     * found, listed or not; 1 .. MUSLIN_COUNT_MAX */
    std::int64_t work_limit = 1000000;
    /** enum fit_rank */
    muslin::fit_rank rank = muslin::fit_rank::nearest;
    /** enum parity */
    muslin::parity columns_parity = muslin::parity::any;
    /** enum parity */
    muslin::parity rows_parity = muslin::parity::any;
    std::int32_t pad = 0;
};
static_assert(detail::is_twin<fit_spec>);

/** struct muslin_fit. One setting. */
struct MUSLIN_CPP_TWIN fit {
    using c_type = muslin_fit;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** enum fit_kind */
    muslin::fit_kind kind{};
    /** 1 when width and length are exactly as wanted; always 0 on point, where they are no whole ticks even if
     * off_width and off_length are 0 */
    muslin::truth exact{};
    /** of blocks, alternates apart */
    std::int64_t columns = 0;
    /** so */
    std::int64_t rows = 0;
    /** finished side */
    muslin::length block{};
    /** 0 where the kind has none */
    muslin::length sash{};
    /** on each side */
    muslin::length border{};
    /** on point to the nearest tick, else exact */
    muslin::length finished_width{};
    muslin::length finished_length{};
    /** finished_width - wanted_width */
    muslin::length off_width{};
    muslin::length off_length{};
    /** columns x rows */
    std::int64_t blocks = 0;
    /** on point (columns - 1)(rows - 1), else 0 */
    std::int64_t alternates = 0;
    /** what it is ranked by, the lowest first: ticks off in all; blocks and alternates; or minus the block in ticks */
    std::int64_t rank_key = 0;
};
static_assert(detail::is_twin<fit>);

/** struct muslin_fit_across_spec. */
struct MUSLIN_CPP_TWIN fit_across_spec {
    using c_type = muslin_fit_across_spec;

    static constexpr std::uint32_t frame = MUSLIN_FIT_ACROSS_FRAME;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** the width (or length) to fill, 1 or more */
    muslin::length wanted{};
    /** on each side */
    muslin::length border{};
    /** 1 or more */
    muslin::length block{};
    /** between blocks; 0: none */
    muslin::length sash{};
    /** enum direction: fewer blocks, more, or the nearer of the two (ties: more) */
    muslin::direction direction = muslin::direction::nearest;
    std::int32_t pad = 0;
};
static_assert(detail::is_twin<fit_across_spec>);

/** struct muslin_fit_across_blocks. */
struct MUSLIN_CPP_TWIN fit_across_blocks {
    using c_type = muslin_fit_across_blocks;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** 1 or more */
    std::int64_t blocks = 0;
    /** of so many blocks, their sashes and both borders */
    muslin::length finished_width{};
    /** finished_width - wanted */
    muslin::length off{};
    /** the blocks that would fill it, exact as a fraction: room / pitch, where room is wanted - 2 border + sash, or
     * - sash when framed, ... */
    muslin::length room{};
    /** ... and pitch is block + sash */
    muslin::length pitch{};
    /** 1 when it comes out at the wanted width */
    muslin::truth exact{};
    std::int32_t pad = 0;
};
static_assert(detail::is_twin<fit_across_blocks>);

/** struct muslin_fit_triangles_spec. */
struct MUSLIN_CPP_TWIN fit_triangles_spec {
    using c_type = muslin_fit_triangles_spec;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** 1 or more */
    muslin::length wanted_width{};
    /** 1 or more */
    muslin::length wanted_length{};
    /** finished height of a triangle, 1 or more: the depth of a row */
    muslin::length height{};
    /** enum direction: fewer rows, more, or the nearest (ties: more) */
    muslin::direction rows_direction = muslin::direction::nearest;
    /** enum direction, for the sides across */
    muslin::direction sides_direction = muslin::direction::nearest;
    /** s */
    muslin::length allowance = muslin::length::of_ticks(2032);
    /** u */
    muslin::length take_up{};
};
static_assert(detail::is_twin<fit_triangles_spec>);

/** struct muslin_fit_triangle_rows. */
struct MUSLIN_CPP_TWIN fit_triangle_rows {
    using c_type = muslin_fit_triangle_rows;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** 1 or more */
    std::int64_t rows = 0;
    /** whole sides of triangles across, 1 or more */
    std::int64_t sides = 0;
    /** 2 height / sqrt 3, to the nearest tick */
    muslin::length side{};
    /** sides x 2 height / sqrt 3, rounded once to the nearest tick */
    muslin::length finished_width{};
    /** rows x height */
    muslin::length finished_length{};
    /** finished - wanted */
    muslin::length off_width{};
    muslin::length off_length{};
    /** whole ones, with squared ends: 2 sides - 1 a row */
    std::int64_t triangles = 0;
    /** two a row, one at each end ... */
    std::int64_t half_triangles = 0;
    /** ... which are mirror images: so many lean to the left, so many to the right */
    std::int64_t halves_each_hand = 0;
    /** of the quilt, with E = 2 s + u on it: nearest tick */
    muslin::length unfinished_width{};
    muslin::length unfinished_length{};
    /** cut width of the strips for triangles with sharp tips: height + 3/2 E (3 s where nothing is taken up), up to
     * a tick */
    muslin::length strip_cut{};
    /** ... where the ruler cuts the upper tip off level with its allowance: height + E */
    muslin::length strip_cut_blunt{};
    /** of a whole triangle along the strip, from raw point to raw point, whether the upper tip is sharp or blunt:
     * (2 height + 3 E) / sqrt 3, up to a tick */
    muslin::length cut_base{};
    /** of a half triangle along the strip, from its straight side, which has its allowance too: cut_base / 2 + E /
     * 2 before rounding, up to a tick */
    muslin::length half_cut_base{};
};
static_assert(detail::is_twin<fit_triangle_rows>);

/** struct muslin_fit_rescale_spec. */
struct MUSLIN_CPP_TWIN fit_rescale_spec {
    using c_type = muslin_fit_rescale_spec;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** of the scale, 1 .. INT64_MAX: 3 / 2 is half as large again */
    std::int64_t numerator = 1;
    /** 1 .. INT64_MAX */
    std::int64_t denominator = 1;
    /** s */
    muslin::length allowance = muslin::length::of_ticks(2032);
    /** u */
    muslin::length take_up{};
    /** the ruler's marks, 1 or more: cut sizes shall lie on it */
    muslin::length grid = muslin::length::of_ticks(1016);
};
static_assert(detail::is_twin<fit_rescale_spec>);

/** struct muslin_fit_rescale_row. One size of the pattern. */
struct MUSLIN_CPP_TWIN fit_rescale_row {
    using c_type = muslin_fit_rescale_row;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** in: as it is, 1 .. MUSLIN_SIZE_MAX */
    muslin::length finished{};
    /** finished x numerator / denominator, to the nearest tick, ties up ... */
    muslin::length new_finished{};
    /** ... and what that leaves out, in denominators of a tick: exact is new_finished + rest / denominator */
    std::int64_t rest = 0;
    /** new_finished + 2 s + u */
    muslin::length new_cut{};
    /** the largest cut size on the grid that is not larger than the exact one; 0 where nothing would be seen of it
     * (2 s + u or less) */
    muslin::length cut_below{};
    /** the nearest on the grid, ties up, of those of which something is seen (above 2 s + u): cut_above where the
     * nearest of all is no such one */
    muslin::length cut_nearest{};
    /** the smallest on the grid that is not smaller */
    muslin::length cut_above{};
    /** 1 when the exact cut size lies on the grid: all four are then the same */
    muslin::truth on_grid{};
    std::int32_t pad = 0;
};
static_assert(detail::is_twin<fit_rescale_row>);

/** struct muslin_fit_rescaled. */
struct MUSLIN_CPP_TWIN fit_rescaled {
    using c_type = muslin_fit_rescaled;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** sizes that do not lie on the grid */
    std::int64_t off_grid = 0;
    /** the largest measure of which all finished sizes are whole multiples */
    muslin::length unit{};
    /** what that unit may become so that every cut size lies on the grid: the next one not above the scale asked
     * for, 0 if there is none ... */
    muslin::length unit_below{};
    /** ... and the next one not below it, 0 if there is none */
    muslin::length unit_above{};
    /** the nearer of the two as a scale in lowest terms, ties up: numerator / ... */
    std::int64_t numerator = 0;
    /** ... denominator; 0 / 1 if there is none */
    std::int64_t denominator = 0;
    /** warning::off_grid */
    std::uint32_t warnings = 0;
    std::int32_t pad = 0;
};
static_assert(detail::is_twin<fit_rescaled>);

inline namespace MUSLIN_CPP_FORM {

/** The size of a quilt for a mattress. Width and length follow Standard quilt sizes for mattresses (quilting
 * magazine, 2022) and How to make a bed quilt the right size; the corner is geometry: cloth hangs over the
 * mattress's corner as far as the corner of the quilt is from it, and a circle that touches both edges reaches as
 * far as the longer drop. status::range also when a side of the top would pass MUSLIN_SIZE_MAX
 * (argument::quilt_width or argument::quilt_length).
 * muslin_bed_size() in muslin/fit.h. Since 1.0. */
inline answer<muslin::bed> bed_size(const muslin::bed_spec &spec = {})
{
    muslin::bed out;
    return asking::ask(out, [&](muslin_problem *problem) {
        return muslin_bed_size(detail::in_c(&spec), detail::in_c(&out), problem);
    });
}

/** Backwards: how a quilt of a given size lies on a mattress, in the middle, and what it falls short by. Source:
 * the same sums turned round.
 * muslin_bed_covered() in muslin/fit.h. Since 1.0. */
inline answer<muslin::bed_cover> bed_covered(const muslin::bed_covered_spec &spec = {})
{
    muslin::bed_cover out;
    return asking::ask(out, [&](muslin_problem *problem) {
        return muslin_bed_covered(detail::in_c(&spec), detail::in_c(&out), problem);
    });
}

/** Every setting of the kinds, sizes and counts allowed whose width and length lie within the tolerances, compared
 * exactly, on point too, and do not pass MUSLIN_SIZE_MAX; ranked as asked, and the same list every time: equals
 * are ordered by what they are off, then fewer blocks, kind, larger block, narrower sash, narrower border, fewer
 * columns. Ask, fill: see base.h; a count of 0 is an answer too (see fit_nearest). No setting is found twice, but
 * different ones may have one size. status::choice for argument::setting_kind: no kind is allowed. status::range
 * also for a most below its least. status::work_limit, before anything is written; the problem's limit is
 * work_limit. With `at` 0 there are more combinations than that: value is their number (INT64_MAX: or more). With
 * `at` 1 more settings are found: value is how many were when the search ended, so there may be more. Columns and
 * rows are solved for, not tried, so one combination takes constant time; n settings found take O(n log n) to put
 * in order, in the caller's rows. Source: sizes by geometry.
 * muslin_fit_settings() in muslin/fit.h. Since 1.0. */
inline answer<std::vector<muslin::fit>> fit_settings(const muslin::fit_spec &spec = {})
{
    std::vector<muslin::fit> rows;
    return asking::ask_rows(rows, rows, [&](auto to, muslin_problem *problem) {
        return muslin_fit_settings(detail::in_c(&spec), to.rows, sizeof(muslin::fit), to.capacity, to.count, problem);
    });
}

/** The one setting that comes nearest to the wanted size, whatever the tolerances, `best` and `rank` say (they must
 * still be in range); its rank_key is that of fit_rank::nearest, and equals are decided in the order above. No
 * side of it passes MUSLIN_SIZE_MAX. status::no_fit when there is none: no count of the parity asked for lies
 * between its least and its most, or even the least counts are too large. Other statuses as above; the work limit
 * holds for the combinations alone.
 * muslin_fit_nearest() in muslin/fit.h. Since 1.0. */
inline answer<muslin::fit> fit_nearest(const muslin::fit_spec &spec = {})
{
    muslin::fit out;
    return asking::ask(out, [&](muslin_problem *problem) {
        return muslin_fit_nearest(detail::in_c(&spec), detail::in_c(&out), problem);
    });
}

/** The number of blocks for a width: (wanted - 2 border + sash) / (block + sash), rounded as asked but to one block
 * at least. status::no_fit when rounded down and not even one block fits (value: the wanted width; limit: what one
 * block takes). Source: How-to article on fitting sashed squares to a quilt width.
 * muslin_fit_across() in muslin/fit.h. Since 1.0. */
inline answer<muslin::fit_across_blocks> fit_across(const muslin::fit_across_spec &spec = {})
{
    muslin::fit_across_blocks out;
    return asking::ask(out, [&](muslin_problem *problem) {
        return muslin_fit_across(detail::in_c(&spec), detail::in_c(&out), problem);
    });
}

/** Rows of equilateral triangles, point up and point down in turn, for a quilt of about this size, and how to cut
 * them from strips. The counts are found exactly; one at least of each. The halves are cut from the same strips:
 * square to the strip on one side, at 60 degrees on the other, left and right ones in turn. status::no_fit when
 * rounded down and not even one row or side fits. Source: How to cut equilateral triangles (blog) for rows and
 * sides, geometry for the rest.
 * muslin_fit_triangles() in muslin/fit.h. Since 1.0. */
inline answer<muslin::fit_triangle_rows> fit_triangles(const muslin::fit_triangles_spec &spec = {})
{
    muslin::fit_triangle_rows out;
    return asking::ask(out, [&](muslin_problem *problem) {
        return muslin_fit_triangles(detail::in_c(&spec), detail::in_c(&out), problem);
    });
}

/** A pattern made larger or smaller: n finished sizes in the array (n 1 .. MUSLIN_COUNT_MAX), each scaled exactly
 * and given its seams back, and set against the marks of the ruler; and the nearest scales that keep all of them
 * on the marks. A new size is whole ruler marks less seams for every size at once only when the unit, which all of
 * them are multiples of, becomes one of every `grid` ticks; so no scale is searched for, and none is overlooked.
 * There is none where the seams do not suit the marks (allowances of 1/16 in with marks at 1/4 in, and sizes of 1
 * and 2 units). A scale whose sizes would pass MUSLIN_SIZE_MAX is left out. Rows are fit_rescale_row at stride
 * row_size; each row's own `size` is read, and only the members behind `finished` are written. status::overflow: a
 * new size passes MUSLIN_SIZE_MAX (argument::ratio; `at` names the row, `value` its finished size). Nothing is
 * written before all rows are checked. O(n). Source: Learn how to resize quilt blocks (take the seams off, scale,
 * put them back) and geometry.
 * muslin_fit_rescale() in muslin/fit.h. Since 1.0. */
inline answer<muslin::fit_rescaled> fit_rescale(const muslin::fit_rescale_spec &spec,
                                                muslin::span<muslin::fit_rescale_row> rows)
{
    muslin::fit_rescaled out;
    return asking::ask(out, [&](muslin_problem *problem) {
        return muslin_fit_rescale(detail::in_c(&spec), detail::in_c(rows.data()), sizeof(muslin::fit_rescale_row),
                                  rows.size(), detail::in_c(&out), problem);
    });
}

} // namespace MUSLIN_CPP_FORM

} // namespace muslin

#endif
