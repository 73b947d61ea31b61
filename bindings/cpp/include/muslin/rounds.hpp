// muslin/rounds.hpp - what grows from the middle outwards: log cabins, mitred frames, medallions, pieced borders.
// Written by generate.py from lib/abi/api.json: change that, not this file.
//
// SPDX-License-Identifier: MIT
#ifndef MUSLIN_ROUNDS_HPP
#define MUSLIN_ROUNDS_HPP

#include <muslin/rounds.h>
#include <muslin/setting.hpp>

namespace muslin {

/** enum muslin_log_order */
enum class log_order : std::int32_t {
    /** each log turns the corner: four sides one after the other */
    round = MUSLIN_LOG_ORDER_ROUND,
    /** courthouse steps: a side and its opposite, then the other two */
    courthouse = MUSLIN_LOG_ORDER_COURTHOUSE,
    /** two neighbouring sides only: the centre stays in a corner */
    quarter = MUSLIN_LOG_ORDER_QUARTER,
};

/** enum muslin_log_turn */
enum class log_turn : std::int32_t {
    clockwise = MUSLIN_LOG_TURN_CLOCKWISE,
    anticlockwise = MUSLIN_LOG_TURN_ANTICLOCKWISE,
};

/** enum muslin_log_half */
enum class log_half : std::int32_t {
    first = MUSLIN_LOG_HALF_FIRST,
    second = MUSLIN_LOG_HALF_SECOND,
};

/** enum muslin_frame_piece */
enum class frame_piece : std::int32_t {
    /** top or bottom */
    top = MUSLIN_FRAME_PIECE_TOP,
    /** left and right */
    side = MUSLIN_FRAME_PIECE_SIDE,
};

/** enum muslin_frame_line */
enum class frame_line : std::int32_t {
    /** the raw edge */
    cut = MUSLIN_FRAME_LINE_CUT,
    /** the stitched line */
    finished = MUSLIN_FRAME_LINE_FINISHED,
};

/** enum muslin_round_kind */
enum class round_kind : std::int32_t {
    /** a border of whole strips */
    plain = MUSLIN_ROUND_PLAIN,
    /** a border of equal units side by side */
    pieced = MUSLIN_ROUND_PIECED,
    /** plain strips just wide enough that the pieced round behind them comes out */
    coping = MUSLIN_ROUND_COPING,
};

/** enum muslin_round_corner */
enum class round_corner : std::int32_t {
    /** each run is a side's length, and four squares stand in the corners */
    squares = MUSLIN_ROUND_CORNER_SQUARES,
    /** sides first; top and bottom run through the corners */
    through = MUSLIN_ROUND_CORNER_THROUGH,
};

/** struct muslin_logcabin_spec. centre and logs are given as cut, not finished */
struct MUSLIN_CPP_TWIN logcabin_spec {
    using c_type = muslin_logcabin_spec;

    static constexpr std::uint32_t given_cut = MUSLIN_LOGCABIN_GIVEN_CUT;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** finished, or cut with the flag */
    muslin::length centre_width{};
    muslin::length centre_height{};
    /** of every log, finished or cut as above; not used, and may be 0, where an array of widths is given */
    muslin::length log_width{};
    /** 1 .. MUSLIN_ROUNDS_MAX */
    std::int64_t rounds = 0;
    /** alike, cut together; 1 .. MUSLIN_LOGCABIN_BLOCKS_MAX */
    std::int64_t blocks = 1;
    /** s */
    muslin::length allowance = muslin::length::of_ticks(2032);
    /** u */
    muslin::length take_up{};
    /** of the cloth: the length of a strip across it; 0: strips are not counted */
    muslin::length usable_width = muslin::length::of_ticks(325120);
    /** of each strip, where its ends are squared; 0 or more */
    muslin::length end_loss{};
    /** enum log_order */
    muslin::log_order order = muslin::log_order::round;
    /** enum side: the side of each round's first log */
    muslin::side start = muslin::side::top;
    /** enum log_turn: where the next side lies */
    muslin::log_turn turn = muslin::log_turn::clockwise;
    std::int32_t pad = 0;
};
static_assert(detail::is_twin<logcabin_spec>);

/** struct muslin_logcabin. */
struct MUSLIN_CPP_TWIN logcabin {
    using c_type = muslin_logcabin;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** of the middle patch, as cut */
    muslin::length centre_cut_width{};
    muslin::length centre_cut_height{};
    /** of the block */
    muslin::length finished_width{};
    muslin::length finished_height{};
    /** of the block, outer seams still raw */
    muslin::length unfinished_width{};
    muslin::length unfinished_height{};
    /** in one block */
    std::int64_t logs = 0;
    /** of strips: rows of logcabin_strips() */
    std::int64_t kinds = 0;
    /** cut lengths of all logs of the first half, of all blocks, end to end */
    muslin::length first_length{};
    /** of the second half */
    muslin::length second_length{};
    /** cut length */
    muslin::length longest_log{};
    /** the plain running length over the strip, up, for each kind: no plan needs fewer */
    std::int64_t strips_least = 0;
    /** of the logs, cut without joins as logcabin_strips() says: at most so many are needed; 0 when not counted, as
     * above */
    std::int64_t strips = 0;
    /** strips x their cut widths; the centres' strips apart */
    muslin::length cloth_length{};
    /** 1 when the block is as wide as high */
    muslin::truth square{};
    std::int32_t pad = 0;
    /** width of the strips the centres are cut from: their height or their width as cut, whichever takes less
     * cloth, then the lesser; 0 when not counted, as all below */
    muslin::length centre_strip_cut{};
    /** that a strip gives */
    std::int64_t centres_per_strip = 0;
    /** for all blocks, up */
    std::int64_t centre_strips = 0;
    /** centre_strips x centre_strip_cut */
    muslin::length centre_cloth_length{};
};
static_assert(detail::is_twin<logcabin>);

/** struct muslin_logcabin_log. One log, in sewing order. */
struct MUSLIN_CPP_TWIN logcabin_log {
    using c_type = muslin_logcabin_log;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** from 1 */
    std::int64_t round = 0;
    /** the raw edge it is sewn to */
    muslin::length cut_length{};
    /** of its strip */
    muslin::length cut_width{};
    /** as seen */
    muslin::length finished_length{};
    muslin::length finished_width{};
    /** cut lengths so far, of one block */
    muslin::length running_length{};
    /** what the block must measure now, this log sewn on and pressed */
    muslin::length unfinished_width{};
    muslin::length unfinished_height{};
    /** enum side */
    muslin::side side{};
    /** enum log_half */
    muslin::log_half half{};
    /** 1 when it is its round's last: measure here, and square up */
    muslin::truth closes_round{};
    std::int32_t pad = 0;
};
static_assert(detail::is_twin<logcabin_log>);

/** struct muslin_logcabin_strip. The strips of one half and one cut width, for all blocks. */
struct MUSLIN_CPP_TWIN logcabin_strip {
    using c_type = muslin_logcabin_strip;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** what its logs share */
    muslin::length cut_width{};
    /** logs */
    std::int64_t pieces = 0;
    /** of them, cut length */
    muslin::length longest{};
    /** cut lengths end to end */
    muslin::length length{};
    /** length over the usable width without its end loss, up; 0 when not counted */
    std::int64_t strips_least = 0;
    /** cut without joins; 0 when not counted */
    std::int64_t strips = 0;
    /** strips x cut_width */
    muslin::length cloth_length{};
    /** enum log_half */
    muslin::log_half half{};
    std::int32_t pad = 0;
};
static_assert(detail::is_twin<logcabin_strip>);

/** struct muslin_logcabin_fit_spec. */
struct MUSLIN_CPP_TWIN logcabin_fit_spec {
    using c_type = muslin_logcabin_fit_spec;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** finished side of the block */
    muslin::length wanted{};
    /** finished side of the centre, 1 or more and less than wanted */
    muslin::length centre{};
    /** 1 .. MUSLIN_ROUNDS_MAX; for logcabin_log_for() */
    std::int64_t rounds = 0;
    /** for logcabin_rounds_for() */
    muslin::length log_finished{};
    /** s */
    muslin::length allowance = muslin::length::of_ticks(2032);
    /** u */
    muslin::length take_up{};
    /** enum log_order */
    muslin::log_order order = muslin::log_order::round;
    std::int32_t pad = 0;
};
static_assert(detail::is_twin<logcabin_fit_spec>);

/** struct muslin_logcabin_fit. */
struct MUSLIN_CPP_TWIN logcabin_fit {
    using c_type = muslin_logcabin_fit;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** as given, or found */
    std::int64_t rounds = 0;
    /** in the block's width: 2 x rounds, or rounds with log_order::quarter */
    std::int64_t logs_across = 0;
    /** the log that finishes the block exactly: wanted - centre ... */
    muslin::length exact_numerator{};
    /** ... over logs_across */
    std::int64_t exact_denominator = 0;
    /** as given, or found */
    muslin::length log_finished{};
    /** log_finished and a seam */
    muslin::length log_cut{};
    /** centre + logs_across x log_finished */
    muslin::length block_finished{};
    /** wanted - block_finished; negative when the block comes out larger */
    muslin::length rest{};
    /** the finished centre with which the block comes out as wanted: centre + rest; no centre does when it is 0 or
     * less */
    muslin::length centre_to_fit{};
    /** the block with one round more */
    muslin::length next_finished{};
};
static_assert(detail::is_twin<logcabin_fit>);

/** struct muslin_frame_spec. Four pieces with 45 degree ends round an opening, cut by template: top and bottom
 * alike, the two sides alike. */
struct MUSLIN_CPP_TWIN frame_spec {
    using c_type = muslin_frame_spec;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** finished, as all sizes here */
    muslin::length opening_width{};
    muslin::length opening_height{};
    /** W */
    muslin::length frame_width{};
    /** s */
    muslin::length allowance = muslin::length::of_ticks(2032);
    /** u */
    muslin::length take_up{};
    /** of the cloth: the length of a strip across it; 0: strips are not counted */
    muslin::length usable_width = muslin::length::of_ticks(325120);
};
static_assert(detail::is_twin<frame_spec>);

/** struct muslin_frame. */
struct MUSLIN_CPP_TWIN frame {
    using c_type = muslin_frame;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** of the strip: W + m */
    muslin::length cut_width{};
    /** raw long edge of top and bottom, from tip to tip, rounded */
    muslin::length top_long{};
    /** less the exact one, down to a tick */
    muslin::length top_long_error{};
    /** raw short edge: 2 cut_width less than the long one, as its ends leave it */
    muslin::length top_short{};
    /** the same of left and right */
    muslin::length side_long{};
    /** less the exact one, down to a tick */
    muslin::length side_long_error{};
    /** 2 cut_width less than side_long */
    muslin::length side_short{};
    /** of one strip that holds all four as cut, each turned against the one before */
    muslin::length strip_length{};
    /** of the whole */
    muslin::length finished_width{};
    muslin::length finished_height{};
    /** of the whole, outer seams still raw */
    muslin::length unfinished_width{};
    muslin::length unfinished_height{};
    /** across the cloth, 1 to 4, the fewest that hold the four pieces without joins; 0 when not counted, or when a
     * piece is longer than such a strip */
    std::int64_t strips = 0;
    /** strips x cut_width */
    muslin::length cloth_length{};
};
static_assert(detail::is_twin<frame>);

/** struct muslin_frame_corner. A corner of a piece: x along the raw long edge from its left tip, y from that edge
 * towards the opening. */
struct MUSLIN_CPP_TWIN frame_corner {
    using c_type = muslin_frame_corner;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** rounded */
    muslin::length x{};
    /** less the exact one, down to a tick */
    muslin::length x_error{};
    /** rounded */
    muslin::length y{};
    /** less the exact one, down to a tick */
    muslin::length y_error{};
    /** enum frame_piece */
    muslin::frame_piece piece{};
    /** enum frame_line */
    muslin::frame_line line{};
};
static_assert(detail::is_twin<frame_corner>);

/** struct muslin_medallion_spec. coping strips must be equally wide on all four sides */
struct MUSLIN_CPP_TWIN medallion_spec {
    using c_type = muslin_medallion_spec;

    static constexpr std::uint32_t equal_coping = MUSLIN_MEDALLION_EQUAL_COPING;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** finished */
    muslin::length centre_width{};
    muslin::length centre_height{};
    /** s */
    muslin::length allowance = muslin::length::of_ticks(2032);
    /** u */
    muslin::length take_up{};
};
static_assert(detail::is_twin<medallion_spec>);

/** struct muslin_medallion_row. A round, from the inside outwards: the first five members are given, the others are
 * answered. Left and right are the sides, which run along the height; top and bottom run along the width. Coping
 * that is not needed on the sides has a side_pair of 0: then side_finished, side_cut and side_length are 0 too,
 * and likewise for top and bottom; there are corner squares only where neither pair is 0. */
struct MUSLIN_CPP_TWIN medallion_row {
    using c_type = muslin_medallion_row;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** enum round_kind */
    muslin::round_kind kind = muslin::round_kind::plain;
    /** enum round_corner */
    muslin::round_corner corner = muslin::round_corner::squares;
    /** finished width of the border, of PIECED the depth of a unit; of COPING the least width wanted, which may be 0 */
    muslin::length width{};
    /** PIECED: finished length of a unit along the border; else not used, 0 or more */
    muslin::length repeat{};
    /** COPING: the greatest width allowed, width or more; else not used, 0 or more */
    muslin::length most{};
    /** out: finished, within this round */
    muslin::length before_width{};
    muslin::length before_height{};
    /** finished, with this round */
    muslin::length after_width{};
    muslin::length after_height{};
    /** finished width of both side borders together: after_width - before_width */
    muslin::length side_pair{};
    /** of top and bottom, so */
    muslin::length top_pair{};
    /** of one of them, half a pair, down: where a coping pair is odd, one of the two is a tick wider */
    muslin::length side_finished{};
    /** of top or bottom, so */
    muslin::length top_finished{};
    /** width of a side strip as cut, of PIECED the unfinished depth; 0 without a strip */
    muslin::length side_cut{};
    /** of top or bottom, so */
    muslin::length top_cut{};
    /** length of a side as cut, of PIECED unfinished: what it must measure */
    muslin::length side_length{};
    /** of top or bottom, so */
    muslin::length top_length{};
    /** PIECED: whole units in each side ... */
    std::int64_t side_units = 0;
    /** ... and in top and bottom each */
    std::int64_t top_units = 0;
    /** in the round: 2 x both, corner squares apart */
    std::int64_t units = 0;
    /** 4 or 0; cut as wide as side_cut and as high as top_cut */
    std::int64_t corner_squares = 0;
    /** PIECED: of the run, beyond its whole units */
    muslin::length side_rest{};
    /** of top or bottom, so */
    muslin::length top_rest{};
    /** PIECED: repeat + m */
    muslin::length unit_unfinished{};
    /** 1 unless a PIECED round leaves a rest on a side or on the top */
    std::int32_t divides = 0;
    /** 1 when side and top differ in width: COPING only */
    muslin::truth unequal{};
    /** after_width + m: what the top must measure with this round, and how long a row for top or bottom is with its
     * corner squares */
    muslin::length after_unfinished_width{};
    muslin::length after_unfinished_height{};
};
static_assert(detail::is_twin<medallion_row>);

/** struct muslin_medallion. */
struct MUSLIN_CPP_TWIN medallion {
    using c_type = muslin_medallion;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** with all rounds */
    muslin::length finished_width{};
    muslin::length finished_height{};
    /** with all rounds, outer seams still raw */
    muslin::length unfinished_width{};
    muslin::length unfinished_height{};
    /** pieced rounds that leave a rest */
    std::int64_t undivided = 0;
    /** coping rounds whose sides differ from top and bottom */
    std::int64_t unequal = 0;
    /** in all pieced rounds */
    std::int64_t units = 0;
    /** in all rounds */
    std::int64_t corner_squares = 0;
};
static_assert(detail::is_twin<medallion>);

/** struct muslin_repeat_spec. */
struct MUSLIN_CPP_TWIN repeat_spec {
    using c_type = muslin_repeat_spec;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** the run to be filled */
    muslin::length side_finished{};
    /** length of a unit along it */
    muslin::length repeat_finished{};
    /** that share what the units leave; 0 .. MUSLIN_COUNT_MAX */
    std::int64_t spacers = 0;
    /** finished, 0 or more; without spacers not used */
    muslin::length spacer_least{};
    /** s */
    muslin::length allowance = muslin::length::of_ticks(2032);
    /** u */
    muslin::length take_up{};
};
static_assert(detail::is_twin<repeat_spec>);

/** struct muslin_repeat. */
struct MUSLIN_CPP_TWIN repeat {
    using c_type = muslin_repeat;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** the most that do not pass the side */
    std::int64_t units_below = 0;
    /** what they leave */
    muslin::length rest_below{};
    /** the fewest that reach it */
    std::int64_t units_above = 0;
    /** how far they pass it */
    muslin::length over_above{};
    /** of the two, the nearer; the larger when equally near */
    std::int64_t units_nearest = 0;
    /** the repeat with which units_below fill the side, rounded; 0 without a unit */
    muslin::length repeat_below{};
    /** less the exact one, down to a tick */
    muslin::length repeat_below_error{};
    /** the repeat with which units_above fill it */
    muslin::length repeat_above{};
    /** less the exact one, down to a tick */
    muslin::length repeat_above_error{};
    /** repeat_finished + m */
    muslin::length unit_unfinished{};
    /** with spacers: the most that leave every spacer its least; else units_below */
    std::int64_t units = 0;
    /** what they leave; the exact spacer is this over `spacers` */
    muslin::length shared{};
    /** rounded; 0 without spacers */
    muslin::length spacer_finished{};
    /** spacer_finished + m; 0 without */
    muslin::length spacer_cut{};
    /** shared - spacers x spacer_finished; negative when they pass the side */
    muslin::length left_over{};
    /** 1 when the units alone fill the side */
    muslin::truth divides{};
    std::int32_t pad = 0;
    /** side - units_below x repeat_below: what rounding leaves, negative when they pass the side; 0 without a unit.
     * The exact repeat is the side over the units */
    muslin::length below_left_over{};
    /** side - units_above x repeat_above */
    muslin::length above_left_over{};
};
static_assert(detail::is_twin<repeat>);

/** struct muslin_common_repeat. */
struct MUSLIN_CPP_TWIN common_repeat {
    using c_type = muslin_common_repeat;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** the greatest length that divides both sides */
    muslin::length common{};
    /** the repeat is this part of it: common / parts exactly */
    std::int64_t parts = 0;
    /** finished, rounded */
    muslin::length repeat{};
    /** less the exact one, down to a tick */
    muslin::length repeat_error{};
    /** units along the width */
    std::int64_t across = 0;
    /** units along the height */
    std::int64_t down = 0;
};
static_assert(detail::is_twin<common_repeat>);

/** struct muslin_point_border_spec. Squares on their points in one row, tip to tip, set-in triangles between them,
 * half ones at the row's ends. */
struct MUSLIN_CPP_TWIN point_border_spec {
    using c_type = muslin_point_border_spec;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** the run to be filled */
    muslin::length side_finished{};
    /** of a square: the depth of the border; 0: as `squares` need it to fill the side */
    muslin::length diagonal_finished{};
    /** in the run, 1 .. MUSLIN_POINT_BORDER_SQUARES_MAX, when no diagonal is given; else not used, 0 or more */
    std::int64_t squares = 0;
    /** alike, counted together; 1 .. MUSLIN_COUNT_MAX */
    std::int64_t runs = 1;
    /** s */
    muslin::length allowance = muslin::length::of_ticks(2032);
    /** u */
    muslin::length take_up{};
};
static_assert(detail::is_twin<point_border_spec>);

/** struct muslin_point_border. */
struct MUSLIN_CPP_TWIN point_border {
    using c_type = muslin_point_border;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** the finished diagonal D, exactly: this over ... */
    muslin::length diagonal_numerator{};
    /** ... this, 1 when it was given */
    std::int64_t diagonal_denominator = 0;
    /** rounded as `measuring` */
    muslin::length diagonal_finished{};
    /** less the exact one, down to a tick */
    muslin::length diagonal_error{};
    /** as many as fit whole */
    std::int64_t squares_per_run = 0;
    /** of the side, beyond the squares */
    muslin::length rest{};
    /** D / sqrt 2, rounded as `measuring` */
    muslin::length square_finished{};
    /** less the exact one, down to a tick */
    muslin::length square_finished_error{};
    /** D / sqrt 2 + m, rounded as `cutting`: also the strip squares are cut from */
    muslin::length square_cut{};
    /** less the exact one, down to a tick */
    muslin::length square_cut_error{};
    /** a square cut twice, corner to corner, for four triangles: D + (1 + sqrt 2) m */
    muslin::length setting_cut{};
    /** less the exact one, down to a tick */
    muslin::length setting_cut_error{};
    /** a square cut once for two half triangles: D / 2 + (1 + 1 / sqrt 2) m */
    muslin::length end_cut{};
    /** less the exact one, down to a tick */
    muslin::length end_cut_error{};
    /** depth of the border: D, rounded, + m */
    muslin::length border_unfinished{};
    /** in all runs */
    std::int64_t squares = 0;
    /** two for each pair of neighbours */
    std::int64_t setting_triangles = 0;
    /** to cut for them, a quarter each, up */
    std::int64_t setting_squares = 0;
    /** four a run */
    std::int64_t end_triangles = 0;
    /** two a run */
    std::int64_t end_squares = 0;
    /** what rounding makes of a run: its squares as cut, sewn with the seams given, less as many of D, to the
     * nearest tick; negative when shorter */
    muslin::length run_longer_by{};
};
static_assert(detail::is_twin<point_border>);

inline namespace MUSLIN_CPP_FORM {

/** A log cabin block: its size, its logs, and the strips for all blocks. Every log is as long as the raw edge it is
 * sewn to: it is cut as long as the block there measures unfinished. `widths` (null with n 0) gives the logs
 * widths of their own: n = rounds, one for each round, or n = the number of logs, one for each in sewing order;
 * else status::range. A row of strips is counted for each half and cut width (see logcabin_strips()).
 * status::seam_too_wide when a centre or a log, given as cut, is m or less; status::range also when the finished
 * block would pass MUSLIN_SIZE_MAX; status::no_yield when the longest log of a half is longer than the strip
 * without its end loss (join strips first, and give the joined length as usable width). O(logs x kinds). Source:
 * geometry.
 * muslin_logcabin_plan() in muslin/rounds.h. Since 1.0. */
inline answer<muslin::logcabin> logcabin_plan(const muslin::logcabin_spec &spec,
                                              muslin::span<const muslin::length> widths)
{
    muslin::logcabin out;
    return asking::ask(out, [&](muslin_problem *problem) {
        return muslin_logcabin_plan(detail::in_c(&spec), detail::in_c(widths.data()), widths.size(), detail::in_c(&out),
                                    problem);
    });
}

/** The logs of one block in sewing order (ask-then-fill), as many as logcabin.logs. Statuses as for
 * logcabin_plan(), but the strips are not asked about. O(logs). Source: geometry.
 * muslin_logcabin_logs() in muslin/rounds.h. Since 1.0. */
inline answer<std::vector<muslin::logcabin_log>> logcabin_logs(const muslin::logcabin_spec &spec,
                                                               muslin::span<const muslin::length> widths)
{
    std::vector<muslin::logcabin_log> rows;
    return asking::ask_rows(rows, rows, [&](auto to, muslin_problem *problem) {
        return muslin_logcabin_logs(detail::in_c(&spec), detail::in_c(widths.data()), widths.size(), to.rows,
                                    sizeof(muslin::logcabin_log), to.capacity, to.count, problem);
    });
}

/** Strips for all blocks, a row for each half and cut width, the first half first, in sewing order of their first
 * logs (ask-then-fill). strips_least is the plain book sum, which forgets that a log does not run on from one
 * strip to the next. `strips` is a plan that works: the row's logs in the reverse order of sewing, each for all
 * blocks before the next, a log from the strip at hand while it reaches, else from a new one, and the old one is
 * done with. It can be more than the best plan, never fewer. Statuses as for logcabin_plan(). O(logs x kinds).
 * Source: common practice, no source, for both ways; geometry.
 * muslin_logcabin_strips() in muslin/rounds.h. Since 1.0. */
inline answer<std::vector<muslin::logcabin_strip>> logcabin_strips(const muslin::logcabin_spec &spec,
                                                                   muslin::span<const muslin::length> widths)
{
    std::vector<muslin::logcabin_strip> rows;
    return asking::ask_rows(rows, rows, [&](auto to, muslin_problem *problem) {
        return muslin_logcabin_strips(detail::in_c(&spec), detail::in_c(widths.data()), widths.size(), to.rows,
                                      sizeof(muslin::logcabin_strip), to.capacity, to.count, problem);
    });
}

/** The log width that finishes a block of `wanted` with so many rounds round the centre, brought to the grid, and
 * what the block then becomes. status::no_fit when the rounded log would be nothing (problem: the log, and one
 * tick). log_finished is not used, 0 or more. Source: geometry.
 * muslin_logcabin_log_for() in muslin/rounds.h. Since 1.0. */
inline answer<muslin::logcabin_fit> logcabin_log_for(const muslin::logcabin_fit_spec &spec = {},
                                                     const muslin::rounding_spec &rounding = {})
{
    muslin::logcabin_fit out;
    return asking::ask(out, [&](muslin_problem *problem) {
        return muslin_logcabin_log_for(detail::in_c(&spec), detail::in_c(&rounding), detail::in_c(&out), problem);
    });
}

/** How many rounds of such logs fit round the centre within `wanted`; 0 when not even one does, and more than
 * MUSLIN_ROUNDS_MAX when they do, which the other calls refuse. `rounds` of the spec is not used, 0 ..
 * MUSLIN_ROUNDS_MAX; exact_numerator and exact_denominator are 0. Source: geometry.
 * muslin_logcabin_rounds_for() in muslin/rounds.h. Since 1.0. */
inline answer<muslin::logcabin_fit> logcabin_rounds_for(const muslin::logcabin_fit_spec &spec = {})
{
    muslin::logcabin_fit out;
    return asking::ask(out, [&](muslin_problem *problem) {
        return muslin_logcabin_rounds_for(detail::in_c(&spec), detail::in_c(&out), problem);
    });
}

/** Raw edges of the pieces, every seam, mitre included, with its m / 2 on each piece. Round an opening L, with
 * sharp tips: long L + 2 W + (1 + sqrt 2) m, short L + (sqrt 2 - 1) m; for an unfinished side L + m and no
 * take-up, long is what border_plan() gives a mitred piece. The long edge is rounded and the piece cut from it, so
 * the short edge is off by as much. A strip holds the pieces nested: what their long edges have beyond the cut
 * width, and the cut width once more for the slanting ends. Round up to be sure of the tips. status::no_fit when
 * rounding leaves nothing of a short edge (problem: the grid, limit 0). Source: geometry.
 * muslin_frame_pieces() in muslin/rounds.h. Since 1.0. */
inline answer<muslin::frame> frame_pieces(const muslin::frame_spec &spec = {},
                                          const muslin::rounding_spec &rounding = {})
{
    muslin::frame out;
    return asking::ask(out, [&](muslin_problem *problem) {
        return muslin_frame_pieces(detail::in_c(&spec), detail::in_c(&rounding), detail::in_c(&out), problem);
    });
}

/** The outlines for a template: 16 rows, top then side, cut then finished, each from the left outer corner to the
 * right one and back along the inner edge (ask-then-fill). Source: geometry.
 * muslin_frame_outline() in muslin/rounds.h. Since 1.0. */
inline answer<std::vector<muslin::frame_corner>> frame_outline(const muslin::frame_spec &spec = {},
                                                               const muslin::rounding_spec &rounding = {})
{
    std::vector<muslin::frame_corner> rows;
    return asking::ask_rows(rows, rows, [&](auto to, muslin_problem *problem) {
        return muslin_frame_outline(detail::in_c(&spec), detail::in_c(&rounding), to.rows, sizeof(muslin::frame_corner),
                                    to.capacity, to.count, problem);
    });
}

/** Grows a medallion round by round and answers into the caller's n rows (1 .. MUSLIN_ROUNDS_MAX). A pieced round
 * that leaves a rest is no failure: its row says so. A COPING round stands directly before a PIECED one (else
 * status::choice, naming the kind). With the next round's repeat r, the least k with k r >= run + 2 width is taken
 * for the sides and for top and bottom apart, and the strips get (k r - run) / 2; run is the side, or, for top and
 * bottom that run through the corners, the side with two unit depths. status::no_fit when equal strips are asked
 * for and no width does for both (limit 0), or else when that passes `most` on any side (the limit is the wider
 * strip, with which as `most` the round comes out). status::range also when `most` is below `width`, or the
 * finished quilt would pass MUSLIN_SIZE_MAX. On failure no row is touched. Two passes. Source: geometry; the
 * coping strip is common practice, no source.
 * muslin_medallion_plan() in muslin/rounds.h. Since 1.0. */
inline answer<muslin::medallion> medallion_plan(const muslin::medallion_spec &spec,
                                                muslin::span<muslin::medallion_row> rows)
{
    muslin::medallion out;
    return asking::ask(out, [&](muslin_problem *problem) {
        return muslin_medallion_plan(detail::in_c(&spec), detail::in_c(rows.data()), sizeof(muslin::medallion_row),
                                     rows.size(), detail::in_c(&out), problem);
    });
}

/** Units of one repeat along a side: how many, what is left, what repeat would come out, and spacers that share
 * what is left. status::no_fit when the spacers alone pass the side (problem: the side, and what they need).
 * Source: geometry.
 * muslin_repeat_plan() in muslin/rounds.h. Since 1.0. */
inline answer<muslin::repeat> repeat_plan(const muslin::repeat_spec &spec = {},
                                          const muslin::rounding_spec &rounding = {})
{
    muslin::repeat out;
    return asking::ask(out, [&](muslin_problem *problem) {
        return muslin_repeat_plan(detail::in_c(&spec), detail::in_c(&rounding), detail::in_c(&out), problem);
    });
}

/** The largest repeat from `least` (0 or more) to `most` (1 or more) that divides both sides of a quilt: a whole
 * part of their greatest common measure. status::range also when most is below least; status::no_fit when the
 * largest that does not pass `most` is below `least` (limit 0). O(log size). Source: geometry.
 * muslin_repeat_common() in muslin/rounds.h. Since 1.0. */
inline answer<muslin::common_repeat> repeat_common(muslin::length width, muslin::length height, muslin::length least,
                                                   muslin::length most, const muslin::rounding_spec &rounding = {})
{
    muslin::common_repeat out;
    return asking::ask(out, [&](muslin_problem *problem) {
        return muslin_repeat_common(detail::in_c(width), detail::in_c(height), detail::in_c(least), detail::in_c(most),
                                    detail::in_c(&rounding), detail::in_c(&out), problem);
    });
}

/** A pieced border of squares on point: sizes to cut, counts, and what the side leaves. The long edges of the
 * setting triangles lie on the border's edge, with the grain. `cutting` rounds what is cut and `measuring` what is
 * reported as finished; in the problem their members have `at` 0 and 1. status::range also when the squares would
 * be less than a tick from tip to tip; status::no_fit when not one of the given diagonal fits the side (problem:
 * the side, and the diagonal), or when rounding leaves nothing of a square but its seams (the grid, limit 0).
 * Sources: Why I cut strips at 1.91 inches for that border (blog, 2008) for the squares, geometry for the
 * triangles.
 * muslin_point_border_plan() in muslin/rounds.h. Since 1.0. */
inline answer<muslin::point_border> point_border_plan(const muslin::point_border_spec &spec = {},
                                                      const muslin::rounding_spec &cutting = {},
                                                      const muslin::rounding_spec &measuring = {})
{
    muslin::point_border out;
    return asking::ask(out, [&](muslin_problem *problem) {
        return muslin_point_border_plan(detail::in_c(&spec), detail::in_c(&cutting), detail::in_c(&measuring),
                                        detail::in_c(&out), problem);
    });
}

} // namespace MUSLIN_CPP_FORM

} // namespace muslin

#endif
