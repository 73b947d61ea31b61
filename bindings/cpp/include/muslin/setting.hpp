// muslin/setting.hpp - blocks put together: the straight setting with and without sashing, the setting on point,
// borders.
// Written by generate.py from lib/abi/api.json: change that, not this file.
//
// SPDX-License-Identifier: MIT
#ifndef MUSLIN_SETTING_HPP
#define MUSLIN_SETTING_HPP

#include <muslin/setting.h>
#include <muslin/stripset.hpp>

namespace muslin {

/** enum muslin_side */
enum class side : std::int32_t {
    left = MUSLIN_SIDE_LEFT,
    right = MUSLIN_SIDE_RIGHT,
    top = MUSLIN_SIDE_TOP,
    bottom = MUSLIN_SIDE_BOTTOM,
};

/** enum muslin_turning */
enum class turning : std::int32_t {
    /** all blocks the same way up */
    none = MUSLIN_TURNING_NONE,
    /** every other block turned a quarter, like a chessboard; squares only */
    quarter_alternate = MUSLIN_TURNING_QUARTER_ALTERNATE,
    /** every other block turned a half; any block */
    half_alternate = MUSLIN_TURNING_HALF_ALTERNATE,
};

/** enum muslin_join */
enum class join : std::int32_t {
    /** edge to edge, nothing lost (batting; or a count that ignores the loss) */
    butted = MUSLIN_JOIN_BUTTED,
    /** a straight seam: loses two allowances */
    straight = MUSLIN_JOIN_STRAIGHT,
    /** square-ended strips laid at right angles: loses the strip's cut width */
    diagonal = MUSLIN_JOIN_DIAGONAL,
    /** ends already cut at 45 degrees: loses 2 sqrt 2 allowances, up to a tick */
    bias_ends = MUSLIN_JOIN_BIAS_ENDS,
};

/** enum muslin_border_style */
enum class border_style : std::int32_t {
    /** butted: sides first, then top and bottom over them */
    sides_first = MUSLIN_BORDER_STYLE_SIDES_FIRST,
    /** butted: top and bottom first */
    top_first = MUSLIN_BORDER_STYLE_TOP_FIRST,
    /** four squares in the corners */
    cornerstones = MUSLIN_BORDER_STYLE_CORNERSTONES,
    /** seams at 45 degrees in the corners */
    mitred = MUSLIN_BORDER_STYLE_MITRED,
};

/** enum muslin_sash_kind */
enum class sash_kind : std::int32_t {
    vertical = MUSLIN_SASH_VERTICAL,
    horizontal = MUSLIN_SASH_HORIZONTAL,
    cornerstone = MUSLIN_SASH_CORNERSTONE,
};

/** enum muslin_first_block */
enum class first_block : std::int32_t {
    /** a pieced block in the first corner */
    pieced = MUSLIN_FIRST_BLOCK_PIECED,
    /** a plain one */
    plain = MUSLIN_FIRST_BLOCK_PLAIN,
};

/** enum muslin_point_layout */
enum class point_layout : std::int32_t {
    /** block to block, no sashes */
    plain = MUSLIN_POINT_LAYOUT_PLAIN,
    /** every block has four sashes; the outer cornerstones touch the edge by their tips */
    sash_outer = MUSLIN_POINT_LAYOUT_SASH_OUTER,
    /** the same, the edge runs through the middle of the outer cornerstones: triangles */
    sash_cut = MUSLIN_POINT_LAYOUT_SASH_CUT,
    /** no sash outside the corner blocks; the outer blocks touch the edge by their tips, sashes beside side
     * triangles end at the edge, cut off at 45 degrees: there the edge is bias, even beside triangles. A single
     * block has no such sash */
    sash_inner = MUSLIN_POINT_LAYOUT_SASH_INNER,
};

/** enum muslin_point_edge */
enum class point_edge : std::int32_t {
    /** setting triangles: straight grain lies on the outside, but for the ends of sashes in SASH_INNER */
    triangles = MUSLIN_POINT_EDGE_TRIANGLES,
    /** blocks cut beyond their diagonal, one half from each, with bias on the outside; the corners stay triangles */
    half_blocks = MUSLIN_POINT_EDGE_HALF_BLOCKS,
};

/** struct muslin_setting_spec. */
struct MUSLIN_CPP_TWIN setting_spec {
    using c_type = muslin_setting_spec;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** finished, 1 or more */
    muslin::length block_width{};
    /** finished, 1 or more */
    muslin::length block_height{};
    /** of blocks */
    std::int64_t columns = 1;
    std::int64_t rows = 1;
    /** s */
    muslin::length allowance = muslin::length::of_ticks(2032);
    /** u */
    muslin::length take_up{};
    /** enum turning */
    muslin::turning turning = muslin::turning::none;
    std::int32_t pad = 0;
    /** a block is square enough for a quarter turn when its sides differ by no more */
    muslin::length square_tolerance = muslin::length::of_ticks(127);
};
static_assert(detail::is_twin<setting_spec>);

/** struct muslin_setting. */
struct MUSLIN_CPP_TWIN setting {
    using c_type = muslin_setting;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** columns x rows */
    std::int64_t blocks = 0;
    /** of them, turned: half of all, down, unless none is */
    std::int64_t blocks_turned = 0;
    /** of the top without borders */
    muslin::length finished_width{};
    muslin::length finished_length{};
    /** finished + 2 s + u */
    muslin::length unfinished_width{};
    muslin::length unfinished_length{};
    /** seams that join blocks into rows: rows x (columns - 1) */
    std::int64_t block_seams = 0;
    /** seams that join the rows: rows - 1 */
    std::int64_t row_seams = 0;
};
static_assert(detail::is_twin<setting>);

/** struct muslin_block_spec. `segments` of them joined along their long sides. */
struct MUSLIN_CPP_TWIN block_spec {
    using c_type = muslin_block_spec;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** a, across the block; 1 or more */
    muslin::length segment_cut{};
    /** unfinished width of the strip set: along the segment; 1 or more */
    muslin::length set_unfinished{};
    /** side by side */
    std::int64_t segments = 2;
    /** s */
    muslin::length allowance = muslin::length::of_ticks(2032);
    /** u */
    muslin::length take_up{};
};
static_assert(detail::is_twin<block_spec>);

/** struct muslin_block. */
struct MUSLIN_CPP_TWIN block {
    using c_type = muslin_block;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** segments x a - (segments - 1)(2 s + u) */
    muslin::length unfinished_width{};
    /** set_unfinished */
    muslin::length unfinished_height{};
    /** as seen in the top */
    muslin::length finished_width{};
    muslin::length finished_height{};
    /** a - 2 s - u */
    muslin::length segment_finished{};
    /** the segment cut that would make the block square, down to a tick: the finished height over the segments,
     * plus 2 s + u; 0 if nothing would be seen of them */
    muslin::length square_segment_cut{};
    /** 1 when width and height are equal */
    muslin::truth square{};
    /** 1 when square_segment_cut makes it exactly square */
    muslin::truth square_exact{};
};
static_assert(detail::is_twin<block>);

/** struct muslin_run_spec. */
struct MUSLIN_CPP_TWIN run_spec {
    using c_type = muslin_run_spec;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** wanted in one run; 0 .. MUSLIN_LENGTH_MAX / 2 */
    muslin::length length{};
    /** L, usable length of each strip */
    muslin::length strip_length = muslin::length::of_ticks(325120);
    /** cut width of a strip */
    muslin::length strip_cut = muslin::length::of_ticks(20320);
    /** of the joins */
    muslin::length allowance = muslin::length::of_ticks(2032);
    /** enum join */
    muslin::join join = muslin::join::straight;
    std::int32_t pad = 0;
};
static_assert(detail::is_twin<run_spec>);

/** struct muslin_run. */
struct MUSLIN_CPP_TWIN run {
    using c_type = muslin_run;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** least n with n L - (n - 1) loss >= length; 0 when length is 0 */
    std::int64_t strips = 0;
    /** n - 1; 0 when n is 0 */
    std::int64_t joins = 0;
    /** of the length, by the way of joining */
    muslin::length loss_per_join{};
    /** the whole run, joined: n L - (n - 1) loss */
    muslin::length joined{};
    /** joined - length */
    muslin::length spare{};
    /** n x strip_cut */
    muslin::length cloth_length{};
    /** each strip may be this much shorter before one more is needed: spare / n, down */
    muslin::length narrower_by{};
    /** warning::no_slack when spare is 0 and n is not */
    std::uint32_t warnings = 0;
    std::int32_t pad = 0;
};
static_assert(detail::is_twin<run>);

/** struct muslin_border_spec. cut along the cloth in whole pieces, without joins */
struct MUSLIN_CPP_TWIN border_spec {
    using c_type = muslin_border_spec;

    static constexpr std::uint32_t lengthwise = MUSLIN_BORDER_LENGTHWISE;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** of what it is sewn to, 1 or more; measure it through the middle */
    muslin::length unfinished_width{};
    muslin::length unfinished_length{};
    /** W, finished width of the border, 1 or more */
    muslin::length finished_border{};
    /** s */
    muslin::length allowance = muslin::length::of_ticks(2032);
    /** u */
    muslin::length take_up{};
    /** of the cloth: the length of a strip across it */
    muslin::length usable_width = muslin::length::of_ticks(325120);
    /** added to the exact least length of each mitred piece; else not used */
    muslin::length mitre_extra{};
    /** enum border_style */
    muslin::border_style style = muslin::border_style::sides_first;
    /** enum join, of strips across the width; not used lengthwise */
    muslin::join join = muslin::join::straight;
};
static_assert(detail::is_twin<border_spec>);

/** struct muslin_border. */
struct MUSLIN_CPP_TWIN border {
    using c_type = muslin_border;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** of every strip: finished + 2 s + u */
    muslin::length cut_width{};
    /** as cut, of each of the two sides, which run along the length */
    muslin::length side_cut_length{};
    /** as cut, of top and of bottom */
    muslin::length top_cut_length{};
    /** side of four squares; 0 without cornerstones */
    muslin::length cornerstone_cut{};
    /** of the four pieces */
    muslin::length total_length{};
    /** across the width, joined in one run; lengthwise: side by side, 1 to 4 */
    std::int64_t strips = 0;
    /** strips - 1; lengthwise 0 */
    std::int64_t joins = 0;
    /** lengthwise 0 */
    muslin::length loss_per_join{};
    /** for the strips, or along the cloth when cut lengthwise; cornerstones apart */
    muslin::length cloth_length{};
    /** of the run; lengthwise: width left beside the pieces of the first panel */
    muslin::length spare{};
    /** of the top with this border on: the next border's input */
    muslin::length unfinished_width{};
    muslin::length unfinished_length{};
    /** of the top with this border on, as seen */
    muslin::length finished_width{};
    muslin::length finished_length{};
    /** warning::diagonal_stretch when strips are joined by DIAGONAL or BIAS_ENDS, warning::no_slack when spare is 0 */
    std::uint32_t warnings = 0;
    std::uint32_t pad = 0;
};
static_assert(detail::is_twin<border>);

/** struct muslin_setting_sashed_spec. squares where the sashes cross; else long sashes run between the rows */
struct MUSLIN_CPP_TWIN setting_sashed_spec {
    using c_type = muslin_setting_sashed_spec;

    static constexpr std::uint32_t frame = MUSLIN_SETTING_SASHED_FRAME;
    static constexpr std::uint32_t cornerstones = MUSLIN_SETTING_SASHED_CORNERSTONES;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** finished, 1 or more */
    muslin::length block_width{};
    /** finished, 1 or more */
    muslin::length block_height{};
    /** of blocks */
    std::int64_t columns = 1;
    std::int64_t rows = 1;
    /** finished, of the vertical sashes beside the blocks of a row; 0: there are none */
    muslin::length sash_width{};
    /** finished, of the horizontal sashes above and below the rows; 0: there are none */
    muslin::length sash_height{};
    /** s */
    muslin::length allowance = muslin::length::of_ticks(2032);
    /** u */
    muslin::length take_up{};
    /** of the cloth: the length of a strip across it */
    muslin::length usable_width = muslin::length::of_ticks(325120);
    /** taken off each strip for squaring its ends; at most usable_width */
    muslin::length end_loss{};
};
static_assert(detail::is_twin<setting_sashed_spec>);

/** struct muslin_setting_sashed_plan. */
struct MUSLIN_CPP_TWIN setting_sashed_plan {
    using c_type = muslin_setting_sashed_plan;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** c r */
    std::int64_t blocks = 0;
    /** c columns, r rows: r (c - 1), with a frame r (c + 1) */
    std::int64_t vertical_sashes = 0;
    /** with cornerstones c (r - 1), with a frame c (r + 1); without them long sashes: r - 1, with a frame r + 1 */
    std::int64_t horizontal_sashes = 0;
    /** (c - 1)(r - 1), with a frame (c + 1)(r + 1); 0 without cornerstones */
    std::int64_t cornerstones = 0;
    /** each finished size plus 2 s + u; the sizes of what there is none of are 0 */
    muslin::length vertical_cut_width{};
    /** a block's height as cut */
    muslin::length vertical_cut_length{};
    /** as vertical_cut_width */
    muslin::length horizontal_cut_width{};
    /** a block's width as cut; of a long sash, a whole row's */
    muslin::length horizontal_cut_length{};
    /** as vertical_cut_width */
    muslin::length cornerstone_cut_width{};
    /** equal to the width where both kinds of sashes are equally wide */
    muslin::length cornerstone_cut_height{};
    /** of the top without borders: c blocks and c - 1 sashes, with a frame c + 1 */
    muslin::length finished_width{};
    muslin::length finished_length{};
    /** finished + 2 s + u */
    muslin::length unfinished_width{};
    muslin::length unfinished_length{};
    /** what a block must measure before it is sewn in: finished + 2 s + u */
    muslin::length block_unfinished_width{};
    muslin::length block_unfinished_height{};
};
static_assert(detail::is_twin<setting_sashed_plan>);

/** struct muslin_sash_piece. */
struct MUSLIN_CPP_TWIN sash_piece {
    using c_type = muslin_sash_piece;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** of this kind */
    std::int64_t pieces = 0;
    /** along the strip */
    muslin::length cut_length{};
    /** of the strip */
    muslin::length cut_width{};
    /** pieces from a strip across the cloth, down; 0 when a piece is longer than a strip */
    std::int64_t per_strip = 0;
    /** up */
    std::int64_t strips = 0;
    /** that the last strip could still give; 0 when strips are joined */
    std::int64_t spare_pieces = 0;
    /** straight seams, when pieces longer than a strip are cut from one joined run; else 0 */
    std::int64_t joins = 0;
    /** strips x cut_width */
    muslin::length cloth_length{};
    /** the cloth may be this much narrower before a full strip gives one piece less; when strips are joined, before
     * one more of them is needed */
    muslin::length narrower_by{};
    /** enum sash_kind */
    muslin::sash_kind kind{};
    /** warning::no_slack when narrower_by is 0 */
    std::uint32_t warnings = 0;
};
static_assert(detail::is_twin<sash_piece>);

/** struct muslin_setting_alternate_spec. */
struct MUSLIN_CPP_TWIN setting_alternate_spec {
    using c_type = muslin_setting_alternate_spec;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** finished, 1 or more */
    muslin::length block_width{};
    /** finished, 1 or more */
    muslin::length block_height{};
    /** of blocks, pieced and plain */
    std::int64_t columns = 1;
    std::int64_t rows = 1;
    /** s */
    muslin::length allowance = muslin::length::of_ticks(2032);
    /** u */
    muslin::length take_up{};
    /** enum first_block */
    muslin::first_block first = muslin::first_block::pieced;
    std::int32_t pad = 0;
};
static_assert(detail::is_twin<setting_alternate_spec>);

/** struct muslin_setting_alternate_plan. */
struct MUSLIN_CPP_TWIN setting_alternate_plan {
    using c_type = muslin_setting_alternate_plan;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** with an odd number of blocks, the first kind is one more than the other */
    std::int64_t pieced = 0;
    /** the other blocks */
    std::int64_t plain = 0;
    /** finished + 2 s + u */
    muslin::length plain_cut_width{};
    muslin::length plain_cut_height{};
    /** of the top without borders */
    muslin::length finished_width{};
    muslin::length finished_length{};
    /** finished + 2 s + u */
    muslin::length unfinished_width{};
    muslin::length unfinished_length{};
};
static_assert(detail::is_twin<setting_alternate_plan>);

/** struct muslin_setting_line_spec. A line is one row of blocks side by side, or one column of them; a top with
 * unequal columns and rows is two. */
struct MUSLIN_CPP_TWIN setting_line_spec {
    using c_type = muslin_setting_line_spec;

    static constexpr std::uint32_t frame = MUSLIN_SETTING_LINE_FRAME;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** finished width of the sash between neighbours; 0: none */
    muslin::length sash{};
    /** s */
    muslin::length allowance = muslin::length::of_ticks(2032);
    /** u */
    muslin::length take_up{};
    /** finished size that the line should have; 0: none is wanted */
    muslin::length wanted{};
};
static_assert(detail::is_twin<setting_line_spec>);

/** struct muslin_setting_line_plan. */
struct MUSLIN_CPP_TWIN setting_line_plan {
    using c_type = muslin_setting_line_plan;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** n - 1, with a frame n + 1; 0 without a sash */
    std::int64_t sashes = 0;
    /** the whole line */
    muslin::length finished{};
    /** finished + 2 s + u */
    muslin::length unfinished{};
    /** finished - wanted: negative when it falls short; 0 when no size is wanted */
    muslin::length longer_by{};
};
static_assert(detail::is_twin<setting_line_plan>);

/** struct muslin_setting_line_place. */
struct MUSLIN_CPP_TWIN setting_line_place {
    using c_type = muslin_setting_line_place;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** finished, from the first edge of the line to this block's first edge */
    muslin::length start{};
    /** its own size */
    muslin::length finished{};
    /** finished + 2 s + u: what the block must measure before it is sewn in */
    muslin::length unfinished{};
};
static_assert(detail::is_twin<setting_line_place>);

/** struct muslin_setting_point_spec. bring the customary diagonal to the grid, then add; no rounding after that */
struct MUSLIN_CPP_TWIN setting_point_spec {
    using c_type = muslin_setting_point_spec;

    static constexpr std::uint32_t diagonal_first = MUSLIN_SETTING_POINT_DIAGONAL_FIRST;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** B, finished side, 1 or more; above w in SASH_INNER */
    muslin::length block{};
    /** c, of blocks side by side, without alternates; one is a runner */
    std::int64_t columns = 1;
    /** r */
    std::int64_t rows = 1;
    /** w; 0 in PLAIN, else 1 or more */
    muslin::length sash{};
    /** f: blocks float this far inside the edge, and it stays; 0 in SASH_CUT, SASH_INNER and with half-blocks,
     * where something is cut at the edge itself */
    muslin::length set_off{};
    /** s */
    muslin::length allowance = muslin::length::of_ticks(2032);
    /** u */
    muslin::length take_up{};
    /** added to the cut squares, half of it stands out at the edge and is trimmed away after sewing; 0 unless
     * policy is OVERSIZE */
    muslin::length trim_room{};
    /** customary addition to a square cut twice; 0: 5 s + 5 u / 2, 1 1/4 in for 1/4 in */
    muslin::length side_addition{};
    /** ... to a square cut once; 0: 7 s / 2 + 7 u / 4, 7/8 in for 1/4 in */
    muslin::length corner_addition{};
    /** customary diagonal of a square, for instance 1414 over 1000: 0 (with a denominator of 0) for the root
     * itself, or 1 .. 1000000 */
    std::int64_t factor_numerator = 0;
    /** 0 or 1 .. 1000000; additions and factor are not used with the exact policy */
    std::int64_t factor_denominator = 0;
    /** enum point_layout */
    muslin::point_layout layout = muslin::point_layout::plain;
    /** enum point_edge; half-blocks in PLAIN and SASH_CUT only */
    muslin::point_edge edge = muslin::point_edge::triangles;
    /** enum allowance_policy */
    muslin::allowance_policy policy = muslin::allowance_policy::exact;
    std::int32_t pad = 0;
};
static_assert(detail::is_twin<setting_point_spec>);

/** struct muslin_setting_point_plan. */
struct MUSLIN_CPP_TWIN setting_point_plan {
    using c_type = muslin_setting_point_plan;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** c r */
    std::int64_t blocks = 0;
    /** (c - 1)(r - 1), pieced or plain */
    std::int64_t alternates = 0;
    /** 2 (c - 1) + 2 (r - 1); 0 with half-blocks */
    std::int64_t side_triangles = 0;
    /** squares cut twice on the diagonal, four triangles each: up */
    std::int64_t side_squares = 0;
    /** triangles those squares give beyond the need */
    std::int64_t spare_side_triangles = 0;
    /** 4 */
    std::int64_t corner_triangles = 0;
    /** 2, cut once on the diagonal, two triangles each */
    std::int64_t corner_squares = 0;
    /** 2 (c - 1) + 2 (r - 1) with half-blocks, each from a block of its own; else 0 */
    std::int64_t half_blocks = 0;
    /** side of a plain alternate square: B + 2 s + u */
    muslin::length alternate_cut{};
    /** as the policy asks, rounded as `cutting`; 0 without side triangles */
    muslin::length side_square_cut{};
    /** exact need of it, up to a tick, without trimming room */
    muslin::length side_need{};
    /** cut less exact need, down to a tick; negative: rounding left it too small */
    muslin::length side_surplus{};
    /** these three as of the side squares */
    muslin::length corner_square_cut{};
    /** exact, up to a tick */
    muslin::length corner_need{};
    /** down to a tick */
    muslin::length corner_surplus{};
    /** half-blocks: cut this far beyond the diagonal, s + u / 2 up to a tick; 0 where there are none */
    muslin::length half_block_beyond{};
    /** finished diagonal of a block, B sqrt 2, rounded as `measuring` */
    muslin::length diagonal{};
    /** value less exact, down to a tick, as in rounded */
    muslin::length diagonal_error{};
    /** of the centre without borders, rounded once as `measuring` */
    muslin::length finished_width{};
    /** less the exact one, down to a tick */
    muslin::length width_error{};
    /** as finished_width */
    muslin::length finished_length{};
    /** less the exact one, down to a tick */
    muslin::length length_error{};
    /** finished_width + 2 s + u */
    muslin::length unfinished_width{};
    muslin::length unfinished_length{};
    /** whole ones */
    std::int64_t sashes = 0;
    /** SASH_INNER: those that end at the edge */
    std::int64_t edge_sashes = 0;
    /** whole ones */
    std::int64_t cornerstones = 0;
    /** SASH_CUT: triangles at the edge, 2 c + 2 r */
    std::int64_t edge_cornerstones = 0;
    /** squares cut twice on the diagonal, four of those triangles each: up */
    std::int64_t edge_cornerstone_squares = 0;
    /** w + 2 s + u */
    muslin::length sash_cut_width{};
    /** B + 2 s + u */
    muslin::length sash_cut_length{};
    /** long side before the end is cut at 45 degrees: B + (1 + 1 / sqrt 2)(2 s + u), rounded as `cutting` */
    muslin::length edge_sash_cut_length{};
    /** w + 2 s + u */
    muslin::length cornerstone_cut{};
    /** side of the squares for edge cornerstones, made like the side squares */
    muslin::length edge_cornerstone_cut{};
    /** 1 when the whole outer edge lies on the straight grain: neither half-blocks nor edge sashes */
    muslin::truth straight_grain{};
    /** warning::bias_edge when it does not; warning::off_grid when a square that was rounded by its diagonal does
     * not lie on the cutting grid */
    std::uint32_t warnings = 0;
    /** as of the side square; 0 without edge cornerstones */
    muslin::length edge_cornerstone_need{};
    /** as of the side square */
    muslin::length edge_cornerstone_surplus{};
    /** what there is to trim at the edge of the quilt: half of side_surplus, down to a tick */
    muslin::length side_room{};
    /** half of corner_surplus, at both edges */
    muslin::length corner_room{};
    /** half of edge_cornerstone_surplus */
    muslin::length edge_cornerstone_room{};
};
static_assert(detail::is_twin<setting_point_plan>);

inline namespace MUSLIN_CPP_FORM {

/** The size of a top of columns x rows blocks in a straight setting. status::not_square when a quarter turn is
 * asked of a block whose sides differ by more than square_tolerance, even if none would be turned (where they
 * differ by less, the sizes here are those of the blocks not turned, and the difference is eased in);
 * status::range also when a finished side would pass MUSLIN_SIZE_MAX. Source: geometry.
 * muslin_setting_straight() in muslin/setting.h. Since 1.0. */
inline answer<muslin::setting> setting_straight(const muslin::setting_spec &spec = {})
{
    muslin::setting out;
    return asking::ask(out, [&](muslin_problem *problem) {
        return muslin_setting_straight(detail::in_c(&spec), detail::in_c(&out), problem);
    });
}

/** The quarter turns (clockwise: 0, 1 or 2) of the block in this column and row, both from 0 to MUSLIN_COUNT_MAX:
 * the first block is not turned, its neighbours are. `turning` is an enum turning.
 * muslin_setting_turn() in muslin/setting.h. Since 1.0. */
inline answer<std::int32_t> setting_turn(muslin::turning turning, std::int64_t column, std::int64_t row)
{
    std::int32_t quarter_turns = 0;
    return asking::ask(quarter_turns, [&](muslin_problem *problem) {
        return muslin_setting_turn(detail::in_c(turning), column, row, &quarter_turns, problem);
    });
}

/** The block that segments make, and whether it is square. status::seam_too_wide when nothing of segment or set
 * would be seen (2 s + u or less); status::range also when the block would be wider than MUSLIN_SIZE_MAX
 * unfinished. Source: geometry.
 * muslin_block_from_segments() in muslin/setting.h. Since 1.0. */
inline answer<muslin::block> block_from_segments(const muslin::block_spec &spec = {})
{
    muslin::block out;
    return asking::ask(out, [&](muslin_problem *problem) {
        return muslin_block_from_segments(detail::in_c(&spec), detail::in_c(&out), problem);
    });
}

/** What one join takes off the run, in ticks; `join` is an enum join. The strip's cut width counts for DIAGONAL
 * alone, the allowance for STRAIGHT and BIAS_ENDS. The take-up of a join, a thread or two, is left out. Sources:
 * What is lost? (tutorial, 2012) for the diagonal join, geometry for the others.
 * muslin_join_loss() in muslin/setting.h. Since 1.0. */
inline answer<muslin::length> join_loss(muslin::join join, muslin::length strip_cut, muslin::length allowance)
{
    muslin::length out{};
    return asking::ask(out, [&](muslin_problem *problem) {
        return muslin_join_loss(detail::in_c(join), detail::in_c(strip_cut), detail::in_c(allowance),
                                detail::in_c(&out), problem);
    });
}

/** Strips joined end to end into one run (borders, binding). status::no_yield when a join eats a whole strip and
 * one strip is not enough; status::overflow when more than MUSLIN_COUNT_MAX strips are needed. Source: geometry.
 * muslin_run_plan() in muslin/setting.h. Since 1.0. */
inline answer<muslin::run> run_plan(const muslin::run_spec &spec = {})
{
    muslin::run out;
    return asking::ask(out, [&](muslin_problem *problem) {
        return muslin_run_plan(detail::in_c(&spec), detail::in_c(&out), problem);
    });
}

/** One border; for several, from the inside outwards, the unfinished sizes of one are the input of the next. A side
 * or top is as long as the raw edge it is sewn to, so no allowance is added to a butted length: sides first, L and
 * then width + 2 W; top first the other way round; with cornerstones, the four edges as they are and four squares
 * of the cut width. A mitred piece along the raw edge L needs L + 2 W + 2 sqrt 2 s, up to a tick, plus
 * mitre_extra; the take-up of mitre and joins, a thread or two, is left to mitre_extra and spare. Across the width
 * the four pieces are cut from one run, as run_plan() does. Lengthwise they lie side by side, as many as the
 * usable width holds, longest first. Cornerstones come from a strip of the same cut width and are not counted in
 * total_length. Printed lengths are the arithmetic: measure the real top through the middle in three places, cut
 * to that, and ease to fit. status::seam_too_wide when a side of the top is less than 2 s + u; status::no_yield
 * and status::overflow as in run_plan(); status::no_fit when, lengthwise, the cloth does not hold one piece.
 * Sources: 4Bs: borders (group sampler lesson), geometry for the mitre, where print adds anything from 1/2 to 6
 * in.
 * muslin_border_plan() in muslin/setting.h. Since 1.0. */
inline answer<muslin::border> border_plan(const muslin::border_spec &spec = {})
{
    muslin::border out;
    return asking::ask(out, [&](muslin_problem *problem) {
        return muslin_border_plan(detail::in_c(&spec), detail::in_c(&out), problem);
    });
}

/** Blocks with sashes between them: how many pieces of each kind, their cut sizes, and the size of the top. Without
 * cornerstones each row is sewn first, blocks and vertical sashes, and long horizontal sashes join the rows. With
 * cornerstones both kinds of sashes must be wider than 0. status::range also when a finished side would pass
 * MUSLIN_SIZE_MAX or the end loss the usable width; sash_width and sash_height are argument::sash_width with `at`
 * 0 and 1. Sources: Quilt math: algorithms for cornerstones and sashes (blog, 2009) for the counts in a frame; How
 * to make quilt sashing with cornerstones (J. Wickell) for the cut sizes; geometry for the rest.
 * muslin_setting_sashed() in muslin/setting.h. Since 1.0. */
inline answer<muslin::setting_sashed_plan> setting_sashed(const muslin::setting_sashed_spec &spec = {})
{
    muslin::setting_sashed_plan out;
    return asking::ask(out, [&](muslin_problem *problem) {
        return muslin_setting_sashed(detail::in_c(&spec), detail::in_c(&out), problem);
    });
}

/** The strips across the cloth for each kind of piece that there is, in the order of enum sash_kind: one to three
 * rows, none for a top without sashes. A piece longer than a strip is cut from strips joined end to end with
 * straight seams, 2 s lost in each. Statuses of setting_sashed(), and status::no_yield when a join would eat a
 * whole strip; status::overflow when pieces or strips pass MUSLIN_COUNT_MAX; status::buffer and
 * status::struct_size for the rows. Source: How much fabric do I need for quilt sashing? (tutorial site);
 * geometry.
 * muslin_setting_sashed_pieces() in muslin/setting.h. Since 1.0. */
inline answer<std::vector<muslin::sash_piece>> setting_sashed_pieces(const muslin::setting_sashed_spec &spec = {})
{
    std::vector<muslin::sash_piece> rows;
    return asking::ask_rows(rows, rows, [&](auto to, muslin_problem *problem) {
        return muslin_setting_sashed_pieces(detail::in_c(&spec), to.rows, sizeof(muslin::sash_piece), to.capacity,
                                            to.count, problem);
    });
}

/** Pieced and plain blocks like the fields of a chessboard. status::range also when a finished side would pass
 * MUSLIN_SIZE_MAX. Source: geometry.
 * muslin_setting_alternate() in muslin/setting.h. Since 1.0. */
inline answer<muslin::setting_alternate_plan> setting_alternate(const muslin::setting_alternate_spec &spec = {})
{
    muslin::setting_alternate_plan out;
    return asking::ask(out, [&](muslin_problem *problem) {
        return muslin_setting_alternate(detail::in_c(&spec), detail::in_c(&out), problem);
    });
}

/** The whole of a line of n columns or rows with finished sizes `sizes` (1 .. MUSLIN_SIZE_MAX each), and how far it
 * is from the size wanted. n is 1 .. MUSLIN_COUNT_MAX. status::range also when the line would pass
 * MUSLIN_SIZE_MAX. One pass. Source: geometry.
 * muslin_setting_line() in muslin/setting.h. Since 1.0. */
inline answer<muslin::setting_line_plan> setting_line(muslin::span<const muslin::length> sizes,
                                                      const muslin::setting_line_spec &spec = {})
{
    muslin::setting_line_plan out;
    return asking::ask(out, [&](muslin_problem *problem) {
        return muslin_setting_line(detail::in_c(sizes.data()), sizes.size(), detail::in_c(&spec), detail::in_c(&out),
                                   problem);
    });
}

/** Where each of the n columns or rows lies: a row each, in their order. Statuses of setting_line(), and
 * status::buffer and status::struct_size for the rows. One pass. Source: geometry.
 * muslin_setting_line_places() in muslin/setting.h. Since 1.0. */
inline answer<std::vector<muslin::setting_line_place>> setting_line_places(muslin::span<const muslin::length> sizes,
                                                                           const muslin::setting_line_spec &spec = {})
{
    std::vector<muslin::setting_line_place> rows;
    return asking::ask_rows(rows, rows, [&](auto to, muslin_problem *problem) {
        return muslin_setting_line_places(detail::in_c(sizes.data()), sizes.size(), detail::in_c(&spec), to.rows,
                                          sizeof(muslin::setting_line_place), to.capacity, to.count, problem);
    });
}

/** A setting on point: counts, squares to cut for its triangles, and the size of the centre. A square cut twice on
 * the diagonal keeps the straight grain on the long side of its triangles, as the edge needs it; one cut once
 * keeps it on the short sides, as the corner needs it. With t = 2 s + u, the exact needs are side leg sqrt 2 + 2 f
 * + (1 + sqrt 2) t (4.8284 s without take-up) corner long side / sqrt 2 + 2 f + (1 + 1 / sqrt 2) t (3.4142 s) and
 * the customary figures leg x factor + 2 f + side_addition and long side / factor + 2 f + corner_addition, or,
 * with MUSLIN_SETTING_POINT_DIAGONAL_FIRST, the rounded diagonal (half of it for a corner, up to a tick) plus the
 * same; OVERSIZE adds trim_room. A square larger by x makes a triangle that stands out x / 2 farther at the edge:
 * cut twice, its height is half of the square; cut once, its corner moves outwards by x / sqrt 2, which is x / 2
 * from both edges. Two set-off triangles meet beyond each block's tip, where one covers the other before trimming.
 * `cutting` rounds what is cut and `measuring` what is reported as finished; in the problem their members have
 * `at` 0 and 1. status::customary when a customary total, before trimming room and before the sum is rounded, is
 * below the exact need: the value is the total down to a tick, the limit the need up to a tick, `at` 0 side, 1
 * corner, 2 edge cornerstone. status::no_fit for half-blocks where a layout has none. status::divide_by_zero:
 * factor over zero. status::range also when a finished side would pass MUSLIN_SIZE_MAX, and where a layout bounds
 * sash, set-off or block. Sources: Tip - On Point Settings (Moonlight Quilters Guild), Setting and corner triangle
 * chart (Tani) for the customary figures; geometry for the others, verified by drawing.
 * muslin_setting_point() in muslin/setting.h. Since 1.0. */
inline answer<muslin::setting_point_plan> setting_point(const muslin::setting_point_spec &spec = {},
                                                        const muslin::rounding_spec &cutting = {},
                                                        const muslin::rounding_spec &measuring = {})
{
    muslin::setting_point_plan out;
    return asking::ask(out, [&](muslin_problem *problem) {
        return muslin_setting_point(detail::in_c(&spec), detail::in_c(&cutting), detail::in_c(&measuring),
                                    detail::in_c(&out), problem);
    });
}

/** The largest block, a whole number of steps of `grid` (1 .. MUSLIN_SIZE_MAX), whose centre on point is not wider
 * than `wanted_width` (1 .. MUSLIN_SIZE_MAX). Of the spec, columns, sash, set-off and layout count; block and rows
 * are not used (for a wanted length, give the rows as columns). status::no_fit when not even the smallest block is
 * narrow enough; the limit is the width it would need, up to a tick, or 0 where that passes MUSLIN_SIZE_MAX.
 * Statuses of setting_point() else. Source: geometry.
 * muslin_setting_point_block_for_width() in muslin/setting.h. Since 1.0. */
inline answer<muslin::length> setting_point_block_for_width(const muslin::setting_point_spec &spec,
                                                            muslin::length wanted_width, muslin::length grid)
{
    muslin::length out{};
    return asking::ask(out, [&](muslin_problem *problem) {
        return muslin_setting_point_block_for_width(detail::in_c(&spec), detail::in_c(wanted_width), detail::in_c(grid),
                                                    detail::in_c(&out), problem);
    });
}

/** The finished block that a given side square (cut twice, `side_square_cut` 1 .. MUSLIN_SIZE_MAX) can frame
 * exactly, rounded once, as asked: the exact need solved for B. Of the spec, sash, set-off, allowance, take-up and
 * layout count. status::no_fit when the square leaves no block of a tick, in SASH_INNER none a tick above the sash
 * (the limit is the least square that does), or when rounding leaves none (the problem names the block as rounded,
 * and the limit is the least on the grid). Source: geometry.
 * muslin_setting_point_block_from_side() in muslin/setting.h. Since 1.0. */
inline answer<muslin::rounded> setting_point_block_from_side(const muslin::setting_point_spec &spec,
                                                             muslin::length side_square_cut,
                                                             const muslin::rounding_spec &rounding = {})
{
    muslin::rounded out;
    return asking::ask(out, [&](muslin_problem *problem) {
        return muslin_setting_point_block_from_side(detail::in_c(&spec), detail::in_c(side_square_cut),
                                                    detail::in_c(&rounding), detail::in_c(&out), problem);
    });
}

} // namespace MUSLIN_CPP_FORM

} // namespace muslin

#endif
