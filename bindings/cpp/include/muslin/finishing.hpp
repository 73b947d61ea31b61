// muslin/finishing.hpp - binding, batting, backing, and what hangs on the back.
// Written by generate.py from lib/abi/api.json: change that, not this file.
//
// SPDX-License-Identifier: MIT
#ifndef MUSLIN_FINISHING_HPP
#define MUSLIN_FINISHING_HPP

#include <muslin/finishing.h>
#include <muslin/setting.hpp>

namespace muslin {

/** enum muslin_fold */
enum class fold : std::int32_t {
    /** folded in half, raw edges in the seam, the fold sewn down on the back */
    double_ = MUSLIN_FOLD_DOUBLE,
    /** one layer, its far edge turned under on the back */
    single = MUSLIN_FOLD_SINGLE,
};

/** enum muslin_backing_layout */
enum class backing_layout : std::int32_t {
    /** a single panel, its length along the quilt's length */
    one_width = MUSLIN_BACKING_LAYOUT_ONE_WIDTH,
    /** a single panel, its length along the quilt's width */
    one_width_turned = MUSLIN_BACKING_LAYOUT_ONE_WIDTH_TURNED,
    /** panels side by side, seams parallel to the quilt's length */
    seams_along = MUSLIN_BACKING_LAYOUT_SEAMS_ALONG,
    /** panels one below the other, seams parallel to its width */
    seams_across = MUSLIN_BACKING_LAYOUT_SEAMS_ACROSS,
    /** a whole panel in the middle, equal side panels, seams along */
    centre_along = MUSLIN_BACKING_LAYOUT_CENTRE_ALONG,
    /** the same, seams across */
    centre_across = MUSLIN_BACKING_LAYOUT_CENTRE_ACROSS,
    /** one panel split lengthwise, an insert between its halves, seams along */
    insert_along = MUSLIN_BACKING_LAYOUT_INSERT_ALONG,
    /** the same, seams across */
    insert_across = MUSLIN_BACKING_LAYOUT_INSERT_ACROSS,
};

/** enum muslin_panel_role */
enum class panel_role : std::int32_t {
    /** the full usable width, one of equals */
    whole = MUSLIN_PANEL_ROLE_WHOLE,
    /** the full usable width, between two sides */
    centre = MUSLIN_PANEL_ROLE_CENTRE,
    /** cut to width from a further panel */
    side = MUSLIN_PANEL_ROLE_SIDE,
    /** of a panel split lengthwise */
    half = MUSLIN_PANEL_ROLE_HALF,
    /** strips between the halves */
    insert = MUSLIN_PANEL_ROLE_INSERT,
};

/** struct muslin_binding_width_spec. */
struct MUSLIN_CPP_TWIN binding_width_spec {
    using c_type = muslin_binding_width_spec;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** enum fold */
    muslin::fold fold = muslin::fold::double_;
    std::int32_t pad = 0;
    /** s, from the raw edge of the binding to its seam */
    muslin::length allowance = muslin::length::of_ticks(2032);
    /** finished width shown on the front, from the seam to the edge of the quilt */
    muslin::length front = muslin::length::of_ticks(2032);
    /** t of the quilt sandwich at the edge */
    muslin::length thickness{};
    /** finished width wanted on the back; not used when binding_cut is given */
    muslin::length back = muslin::length::of_ticks(2032);
    /** at the far edge of a single fold; not used for a double one */
    muslin::length turn_under = muslin::length::of_ticks(2032);
    /** 0: work out the cut width; else: work out what this one shows on the back */
    muslin::length binding_cut{};
    /** warn when back and front differ by more than this */
    muslin::length uneven_limit = muslin::length::of_ticks(1016);
};
static_assert(detail::is_twin<binding_width_spec>);

/** struct muslin_binding_width. */
struct MUSLIN_CPP_TWIN binding_width {
    using c_type = muslin_binding_width;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** C, of the strip */
    muslin::length cut_width{};
    /** finished width shown on the back, half ticks down; below 0: it does not reach round */
    muslin::length back{};
    /** width after folding, before sewing: C/2 up for a double fold, C for a single one */
    muslin::length folded{};
    /** warning::binding_uneven beyond the limit; warning::back_too_narrow when the back shows less than the front,
     * so that the seam stays bare; half ticks counted */
    std::uint32_t warnings = 0;
    std::uint32_t pad = 0;
};
static_assert(detail::is_twin<binding_width>);

/** struct muslin_binding_spec. */
struct MUSLIN_CPP_TWIN binding_spec {
    using c_type = muslin_binding_spec;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** finished, of any outline, up to 4 x MUSLIN_SIZE_MAX; 0: 2 x (width + length) */
    muslin::length perimeter{};
    /** finished; not read when a perimeter is given */
    muslin::length quilt_width{};
    /** the same */
    muslin::length quilt_length{};
    /** for the ends and the last join; sources use 10, 12, 15, 20, 24 in */
    muslin::length extra = muslin::length::of_ticks(97536);
    /** of the outline, 0 .. MUSLIN_COUNT_MAX; 0 for a rounded one */
    std::int64_t corners = 4;
    /** added for each corner; most sources add none */
    muslin::length corner_extra{};
    /** cut width of the strips, 1 or more */
    muslin::length binding_cut = muslin::length::of_ticks(20320);
    /** usable length of each strip, 1 or more */
    muslin::length strip_length = muslin::length::of_ticks(325120);
    /** of the joins */
    muslin::length allowance = muslin::length::of_ticks(2032);
    /** purchase step, 1 or more */
    muslin::length step = muslin::length::of_ticks(36576);
    /** cut on top of the need, 0 .. MUSLIN_COUNT_MAX */
    std::int64_t spare_strips = 0;
    /** enum join; BUTTED ignores the loss, as many published figures do */
    muslin::join join = muslin::join::diagonal;
    std::int32_t pad = 0;
};
static_assert(detail::is_twin<binding_spec>);

/** struct muslin_binding. */
struct MUSLIN_CPP_TWIN binding {
    using c_type = muslin_binding;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** finished */
    muslin::length perimeter{};
    /** perimeter + corners x corner_extra + extra: wanted in one run */
    muslin::length length{};
    /** for that run */
    std::int64_t strips_needed = 0;
    /** to cut: strips_needed + spare_strips */
    std::int64_t strips = 0;
    /** strips_needed - 1 */
    std::int64_t joins = 0;
    /** as of join_loss() */
    muslin::length loss_per_join{};
    /** the run of the needed strips, without the spare ones */
    muslin::length joined{};
    /** joined - length: what is left at the last corner */
    muslin::length spare{};
    /** strips x binding_cut */
    muslin::length cloth_length{};
    /** cloth_length up to the step */
    muslin::length bought{};
    /** the cloth may be this much narrower before another strip is needed, down */
    muslin::length narrower_by{};
    /** warning::no_slack when nothing is spare */
    std::uint32_t warnings = 0;
    std::uint32_t pad = 0;
};
static_assert(detail::is_twin<binding>);

/** struct muslin_bias_spec. */
struct MUSLIN_CPP_TWIN bias_spec {
    using c_type = muslin_bias_spec;

    static constexpr std::uint32_t blunt_ends = MUSLIN_BIAS_BLUNT_ENDS;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** of the cloth piece, 1 or more; not read for the least square */
    muslin::length width{};
    /** its other side; the tube: 1 or more, strips: the same as width or 0 */
    muslin::length length{};
    /** w, cut width of the bias strip, 1 or more */
    muslin::length strip_cut = muslin::length::of_ticks(20320);
    /** s, of the seams */
    muslin::length allowance = muslin::length::of_ticks(2032);
    /** length of bias strip, 1 or more; read for the least square only */
    muslin::length wanted{};
};
static_assert(detail::is_twin<bias_spec>);

/** struct muslin_bias. */
struct MUSLIN_CPP_TWIN bias {
    using c_type = muslin_bias;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** of the tube; for separate strips: how many strips */
    std::int64_t rounds = 0;
    /** that take 2 sqrt 2 s off the run each: rounds - 1; 0 without a round */
    std::int64_t joins = 0;
    /** of bias strip obtained, down to a tick; 0 if none */
    muslin::length length{};
    /** side of the square to cut (least square), else 0 */
    muslin::length square_cut{};
    /** sqrt(wanted x w), nearest tick (least square), else 0: the published rule, a lower bound only */
    muslin::length area_rule{};
    /** length - wanted (least square), else 0 */
    muslin::length spare{};
};
static_assert(detail::is_twin<bias>);

/** struct muslin_batting_spec. */
struct MUSLIN_CPP_TWIN batting_spec {
    using c_type = muslin_batting_spec;

    static constexpr std::uint32_t fixed = MUSLIN_BATTING_FIXED;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** finished */
    muslin::length quilt_width{};
    muslin::length quilt_length{};
    /** beyond the quilt; quilt and margins together at most MUSLIN_SIZE_MAX each way */
    muslin::length margin_left = muslin::length::of_ticks(24384);
    muslin::length margin_right = muslin::length::of_ticks(24384);
    muslin::length margin_top = muslin::length::of_ticks(24384);
    muslin::length margin_bottom = muslin::length::of_ticks(24384);
    /** of batting sold by length, for pieces joined; 0 when not asked */
    muslin::length roll_width{};
};
static_assert(detail::is_twin<batting_spec>);

/** struct muslin_batting. */
struct MUSLIN_CPP_TWIN batting {
    using c_type = muslin_batting;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** to cut: quilt and margins */
    muslin::length width{};
    muslin::length length{};
    /** row of table::batting, the smallest area that covers, the first of equals; -1 when none does */
    std::int64_t package = 0;
    /** as listed; 0 when none */
    muslin::length package_width{};
    muslin::length package_length{};
    /** package beyond the need along the quilt's width, as it lies; 0 when none */
    muslin::length spare_width{};
    /** ... and along its length */
    muslin::length spare_length{};
    /** 1 when the package lies turned a quarter: only where it does not cover upright */
    muslin::truth turned{};
    /** 1 when joined pieces run across the quilt, 0 when along its length */
    muslin::truth joined_turned{};
    /** pieces of the roll laid edge to edge, without allowance; 0 when not asked */
    std::int64_t joined_pieces = 0;
    /** of roll to buy for them: the shorter of both ways; ties: fewer pieces, then along */
    muslin::length joined_length{};
    /** joined_pieces - 1 */
    std::int64_t joined_joins = 0;
};
static_assert(detail::is_twin<batting>);

/** struct muslin_backing_spec. */
struct MUSLIN_CPP_TWIN backing_spec {
    using c_type = muslin_backing_spec;

    static constexpr std::uint32_t round_panels = MUSLIN_BACKING_ROUND_PANELS;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** finished */
    muslin::length quilt_width{};
    muslin::length quilt_length{};
    /** beyond the quilt; quilt and margins together at most MUSLIN_SIZE_MAX each way */
    muslin::length margin_left = muslin::length::of_ticks(32512);
    muslin::length margin_right = muslin::length::of_ticks(32512);
    muslin::length margin_top = muslin::length::of_ticks(32512);
    muslin::length margin_bottom = muslin::length::of_ticks(32512);
    /** from edge to edge of the cloth, 1 or more */
    muslin::length fabric_width = muslin::length::of_ticks(325120);
    /** cut off each edge: usable width u = fabric_width - 2 x selvage, 1 or more */
    muslin::length selvage{};
    /** q, allowance of the backing's seams */
    muslin::length allowance = muslin::length::of_ticks(4064);
    /** added to each panel's length, for squaring */
    muslin::length end_loss{};
    /** pattern repeat along the cloth; each length cut is a whole number of them, the first too; 0 for none */
    muslin::length repeat{};
    /** purchase step, 1 or more */
    muslin::length step = muslin::length::of_ticks(36576);
    /** enum print: a print with a direction forbids what would lie turned a quarter, that is turned panels, and
     * inserts, which are cut across the cloth */
    muslin::print print = muslin::print::none;
    std::int32_t pad = 0;
};
static_assert(detail::is_twin<backing_spec>);

/** struct muslin_backing. */
struct MUSLIN_CPP_TWIN backing {
    using c_type = muslin_backing;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** enum backing_layout */
    muslin::backing_layout layout{};
    /** 0: this layout cannot serve; everything below is then 0 */
    muslin::truth possible{};
    /** 1 for the one that buys least; ties: fewest seams, then the lower number */
    muslin::truth best{};
    /** 1 when the cloth's length runs across the quilt */
    muslin::truth turned{};
    /** quilt and margins */
    muslin::length needed_width{};
    muslin::length needed_length{};
    /** lengths of cloth of the full width; the strips of an insert are not counted */
    std::int64_t panels = 0;
    /** cut length of each, with end_trim and repeat */
    muslin::length panel_length{};
    /** sewn together: panels, or centre and sides, or two halves and an insert's strips */
    std::int64_t pieces = 0;
    /** in the finished backing, joins within an insert included */
    std::int64_t seams = 0;
    /** unfinished, of the backing as sewn, before trimming, along the quilt's width ... */
    muslin::length joined_width{};
    /** ... and length */
    muslin::length joined_length{};
    /** exact: panels, and for an insert its strips one below the other */
    muslin::length cloth_length{};
    /** one repeat more on the order, to shift the start; cloth_length without a repeat */
    muslin::length cloth_with_repeat{};
    /** cloth_with_repeat up to the step, on the total, or length by length if asked */
    muslin::length bought{};
    /** the same under the other rounding rule */
    muslin::length other_rounding{};
    /** the cloth may be this much narrower and what is bought still be enough for this layout, with as many panels
     * and strips; their widths change: plan again first */
    muslin::length narrower_by{};
    /** cut width of each side panel (CENTRE) or of the insert (INSERT); else 0 */
    muslin::length strip_cut{};
    /** warning::no_slack when narrower_by is 0 */
    std::uint32_t warnings = 0;
    std::uint32_t pad = 0;
};
static_assert(detail::is_twin<backing>);

/** struct muslin_panel. */
struct MUSLIN_CPP_TWIN panel {
    using c_type = muslin_panel;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** enum panel_role */
    muslin::panel_role role{};
    /** from 1, from the left (seams along) or the top (seams across) */
    std::int32_t position = 0;
    /** across the cloth */
    muslin::length cut_width{};
    /** along the cloth; of an insert this is its width in the backing */
    muslin::length cut_length{};
    /** equal pieces: more than 1 only for an insert, whose strips are joined end to end */
    std::int64_t count = 0;
};
static_assert(detail::is_twin<panel>);

/** struct muslin_hanging_spec. */
struct MUSLIN_CPP_TWIN hanging_spec {
    using c_type = muslin_hanging_spec;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** finished */
    muslin::length quilt_width{};
    /** 0, 1 or 2 */
    std::int64_t sleeves = 1;
    /** from each side edge of the quilt to the sleeve */
    muslin::length inset = muslin::length::of_ticks(8128);
    /** between two sleeves, for a middle hook; not used for one */
    muslin::length gap = muslin::length::of_ticks(16256);
    /** finished depth of the sleeve, lying flat; 1 or more where there is a sleeve */
    muslin::length drop = muslin::length::of_ticks(32512);
    /** extra in the sleeve's front, so that the rod does not bulge the quilt */
    muslin::length ease = muslin::length::of_ticks(4064);
    /** turned under at each end of a sleeve, in all */
    muslin::length hem = muslin::length::of_ticks(8128);
    /** of the sleeve's long seam, of the label, and of the binding seam at the triangles */
    muslin::length allowance = muslin::length::of_ticks(2032);
    /** finished; 0 for no label */
    muslin::length label_width{};
    /** finished, 1 or more where there is a label */
    muslin::length label_height{};
    /** finished short side of corner triangles that hold a rod or a label; 0 for none */
    muslin::length corner_triangle{};
    /** how many triangles, 0 .. 4 */
    std::int64_t corners = 0;
};
static_assert(detail::is_twin<hanging_spec>);

/** struct muslin_hanging. */
struct MUSLIN_CPP_TWIN hanging {
    using c_type = muslin_hanging;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** as asked */
    std::int64_t sleeves = 0;
    /** finished length of each; 0 without a sleeve, and so are both cut sizes */
    muslin::length sleeve_finished{};
    /** finished + 2 hems */
    muslin::length sleeve_cut_length{};
    /** 2 x drop + ease + 2 allowances: a tube */
    muslin::length sleeve_cut_width{};
    /** finished + 2 allowances; 0 without a label */
    muslin::length label_cut_width{};
    muslin::length label_cut_height{};
    /** squares folded once on the diagonal, raw sides into the binding seam */
    std::int64_t corner_squares = 0;
    /** corner_triangle + 2 allowances; 0 without triangles */
    muslin::length corner_square_cut{};
};
static_assert(detail::is_twin<hanging>);

inline namespace MUSLIN_CPP_FORM {

/** The cut width of a binding from what it shall show, or what a given cut width shows. Double fold: C = 2 (s +
 * front + t + back), so the back shows C/2 - s - front - t. Single fold: C = s + front + t + back + turn_under,
 * the back C - s - front - t - turn_under. Source: geometry; 4 w + 1/2 in and 6 w + ease, the rules in print, are
 * special cases.
 * muslin_binding_measure() in muslin/finishing.h. Since 1.0. */
inline answer<muslin::binding_width> binding_measure(const muslin::binding_width_spec &spec = {})
{
    muslin::binding_width out;
    return asking::ask(out, [&](muslin_problem *problem) {
        return muslin_binding_measure(detail::in_c(&spec), detail::in_c(&out), problem);
    });
}

/** Length, strips, joins and cloth for a binding; the run is run_plan()'s. status::no_yield when a join eats a
 * whole strip and one strip is not enough; status::range also when the run passes the longest that run_plan()
 * takes; status::overflow when it needs more than MUSLIN_COUNT_MAX strips. Source: sums, and common practice for
 * the extra.
 * muslin_binding_plan() in muslin/finishing.h. Since 1.0. */
inline answer<muslin::binding> binding_plan(const muslin::binding_spec &spec = {})
{
    muslin::binding out;
    return asking::ask(out, [&](muslin_problem *problem) {
        return muslin_binding_plan(detail::in_c(&spec), detail::in_c(&out), problem);
    });
}

/** The continuous tube from a rectangle a x b (a the shorter side; a square is cut on its diagonal, of a longer
 * rectangle a 45 degree corner is moved to the other end). The first seam takes 2 s off b, so there are n =
 * floor((b - 2 s) / (sqrt 2 w)) rounds, each sqrt 2 a long; the tube's own seam crosses the strip n - 1 times.
 * Length n sqrt 2 a - (n - 1) 2 sqrt 2 s, ends at 45 degrees. Exact, rounded once. Source: geometry. No round at
 * all is an answer (length 0), and so it is when the seams take up the whole of a: a <= 2 s. status::range also
 * when n x a passes MUSLIN_SIZE_MAX.
 * muslin_bias_tube() in muslin/finishing.h. Since 1.0. */
inline answer<muslin::bias> bias_tube(const muslin::bias_spec &spec = {})
{
    muslin::bias out;
    return asking::ask(out, [&](muslin_problem *problem) {
        return muslin_bias_tube(detail::in_c(&spec), detail::in_c(&out), problem);
    });
}

/** The least square, on the rounding's grid, whose tube gives `wanted`. rounding's direction must be up
 * (status::choice) and its tolerance 0 (status::range). Area rules in print are too small in places: the tube
 * loses two allowances a round and whole rounds at its edge. status::range also when no square up to
 * MUSLIN_SIZE_MAX will do (the limit is what the largest gives), or when the least one gives so much more than
 * wanted that bias_tube() would refuse it. Source: geometry, as for the tube. Cost: the logarithm of
 * MUSLIN_SIZE_MAX / grid.
 * muslin_bias_least_square() in muslin/finishing.h. Since 1.0. */
inline answer<muslin::bias> bias_least_square(const muslin::bias_spec &spec = {},
                                              const muslin::rounding_spec &rounding = {})
{
    muslin::bias out;
    return asking::ask(out, [&](muslin_problem *problem) {
        return muslin_bias_least_square(detail::in_c(&spec), detail::in_c(&rounding), detail::in_c(&out), problem);
    });
}

/** Separate strips cut side by side from both halves of a square (`width`; `length` must equal it or be 0),
 * parallel to its diagonal, ends left at 45 degrees, every other one turned end for end, joined into one run: in
 * each half n = floor(S / (sqrt 2 w)) strips, down to the short ones in the corner; measured along their middle
 * they add up to sqrt 2 n S - n n w a half, and each of the 2 n - 1 joins takes 2 sqrt 2 s. Down to a tick. No
 * strip at all is an answer (length 0). status::range also when n x S passes MUSLIN_SIZE_MAX. Source: geometry.
 * muslin_bias_strips() in muslin/finishing.h. Since 1.0. */
inline answer<muslin::bias> bias_strips(const muslin::bias_spec &spec = {})
{
    muslin::bias out;
    return asking::ask(out, [&](muslin_problem *problem) {
        return muslin_bias_strips(detail::in_c(&spec), detail::in_c(&out), problem);
    });
}

/** Batting for a quilt: the size to cut, the package to buy, or the pieces of a roll. That no listed package covers
 * is an answer (package -1), not an error. Source: margins by common practice, the table's rows name theirs;
 * geometry. Cost: rows of the table.
 * muslin_batting_plan() in muslin/finishing.h. Since 1.0. */
inline answer<muslin::batting> batting_plan(const muslin::batting_spec &spec = {})
{
    muslin::batting out;
    return asking::ask(out, [&](muslin_problem *problem) {
        return muslin_batting_plan(detail::in_c(&spec), detail::in_c(&out), problem);
    });
}

/** All layouts compared, one row each, in the order of the enum (ask-then-fill; eight rows in this version, later
 * versions may know more). `need` is the side that the panels' widths must cover. ONE_WIDTH serves while need <=
 * u; the others are for a wider need. SEAMS n panels joined are n u - 2 q (n - 1) wide; the least n, 2 or more.
 * None when u <= 2 q. CENTRE side = (need - u + 4 q) / 2 up to a tick: both from one further panel if 2 sides fit
 * in u, from one each if one does, else it fails. INSERT x = need - u + 4 q, no wider than u / 2, cut across the
 * cloth in n strips u long, joined end to end until n u - 2 q (n - 1) is at least the panel's length, and then
 * trimmed to it. Rounding length by length takes each panel up to the step, the insert's strips together, and the
 * extra repeat. status::no_fit when no layout serves; the limit is the fabric width that would. status::range also
 * when the selvages leave nothing. status::buffer, status::struct_size for the rows. Source: geometry; whole
 * repeats for every length are common practice in workrooms.
 * muslin_backing_layouts() in muslin/finishing.h. Since 1.0. */
inline answer<std::vector<muslin::backing>> backing_layouts(const muslin::backing_spec &spec = {})
{
    std::vector<muslin::backing> rows;
    return asking::ask_rows(rows, rows, [&](auto to, muslin_problem *problem) {
        return muslin_backing_layouts(detail::in_c(&spec), to.rows, sizeof(muslin::backing), to.capacity, to.count,
                                      problem);
    });
}

/** One layout piece by piece, in sewing order across the quilt (ask-then-fill): the cut widths, of the insert its
 * cut_length, less 2 q a seam, are exactly the joined size of backing_layouts(). Halves of an odd number of ticks
 * differ by one. status::choice for an unknown layout, status::no_fit for one that cannot serve, status::buffer
 * and status::struct_size for the rows, else as backing_layouts(). O(rows).
 * muslin_backing_panels() in muslin/finishing.h. Since 1.0. */
inline answer<std::vector<muslin::panel>> backing_panels(const muslin::backing_spec &spec,
                                                         muslin::backing_layout layout)
{
    std::vector<muslin::panel> rows;
    return asking::ask_rows(rows, rows, [&](auto to, muslin_problem *problem) {
        return muslin_backing_panels(detail::in_c(&spec), detail::in_c(layout), to.rows, sizeof(muslin::panel),
                                     to.capacity, to.count, problem);
    });
}

/** Hanging sleeve (one, or two with a gap), label, corner triangles. A sleeve's length is (quilt_width - 2 inset -
 * (n - 1) gap) / n, down to a tick. A folded square lies in the quilt's corner: each of its raw sides loses one
 * allowance to the other's seam and one at the tip, where the fold runs at 45 degrees. status::range also when
 * inset and gap leave no sleeve. Source: common practice, no source, and geometry.
 * muslin_hanging_plan() in muslin/finishing.h. Since 1.0. */
inline answer<muslin::hanging> hanging_plan(const muslin::hanging_spec &spec = {})
{
    muslin::hanging out;
    return asking::ask(out, [&](muslin_problem *problem) {
        return muslin_hanging_plan(detail::in_c(&spec), detail::in_c(&out), problem);
    });
}

} // namespace MUSLIN_CPP_FORM

} // namespace muslin

#endif
