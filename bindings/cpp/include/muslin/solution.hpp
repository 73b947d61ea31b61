// muslin/solution.hpp - a piecing tree solved: sizes, the assembly check, the cut list, drawings.
// Written by generate.py from lib/abi/api.json: change that, not this file.
//
// SPDX-License-Identifier: MIT
#ifndef MUSLIN_SOLUTION_HPP
#define MUSLIN_SOLUTION_HPP

#include <muslin/solution.h>
#include <muslin/quilt.hpp>

namespace muslin {

/** enum muslin_misfit_kind */
enum class misfit_kind : std::int32_t {
    /** two edges to be sewn together differ in length by more than the ease */
    length = MUSLIN_MISFIT_LENGTH,
    /** ... by no more than the ease */
    eased = MUSLIN_MISFIT_EASED,
    /** their allowances differ, or the pieces along one differ among themselves */
    allowance = MUSLIN_MISFIT_ALLOWANCE,
    /** a block on point is not a square of the first one's size */
    not_square = MUSLIN_MISFIT_NOT_SQUARE,
};

/** enum muslin_cut_source */
enum class cut_source : std::int32_t {
    /** a patch, cut by itself */
    patch = MUSLIN_CUT_SOURCE_PATCH,
    /** a strip for strip sets, as long as its fabric's usable width */
    set_strip = MUSLIN_CUT_SOURCE_SET_STRIP,
    /** a piece of a unit's recipe */
    unit = MUSLIN_CUT_SOURCE_UNIT,
    /** a piece of the caller's own shape: the smallest upright rectangle round it as cut */
    template_ = MUSLIN_CUT_SOURCE_TEMPLATE,
    /** a square for setting triangles, or for cornerstones that the edge cuts in half */
    setting = MUSLIN_CUT_SOURCE_SETTING,
    /** a piece of a 60 degree row, cut from a strip */
    sixty = MUSLIN_CUT_SOURCE_SIXTY,
    /** a strip with mitred ends, cut as a rectangle to its longest edge; so is a sash on point that ends at the
     * edge, cut off at 45 degrees */
    mitred = MUSLIN_CUT_SOURCE_MITRED,
};

/** enum muslin_term_kind */
enum class term_kind : std::int32_t {
    /** a measure's value: of `id`, `times` of it */
    measure = MUSLIN_TERM_MEASURE,
    /** finished size of the child `id`, `times` of it */
    child = MUSLIN_TERM_CHILD,
    /** the greatest of the children: the child `id` */
    greatest = MUSLIN_TERM_GREATEST,
    /** allowance of an edge, from the measure `id` */
    allowance = MUSLIN_TERM_ALLOWANCE,
    /** half the take-up `id`, of `times` edges, up to a tick */
    take_up = MUSLIN_TERM_TAKE_UP,
    /** what is trimmed away, from the measure `id`; negative */
    trimmed = MUSLIN_TERM_TRIMMED,
    /** `times` diagonals of the block `id`, rounded once; then of squares as wide as the sash `id`: what all
     * together, rounded once, leave */
    diagonal = MUSLIN_TERM_DIAGONAL,
    /** `times` half sides of a triangle of height `id`, rounded once */
    sixty = MUSLIN_TERM_SIXTY,
    /** the size of the caller's own drawing */
    drawn = MUSLIN_TERM_DRAWN,
    /** half of the measure `id`: the height of geese */
    half = MUSLIN_TERM_HALF,
};

/** struct muslin_solution_spec. */
struct MUSLIN_CPP_TWIN solution_spec {
    using c_type = muslin_solution_spec;

    static constexpr std::uint32_t from_one_end = MUSLIN_YIELD_FROM_ONE_END;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 1;
    /** how many of the root are made; 1 .. MUSLIN_COUNT_MAX */
    std::int64_t tops = 1;
    /** edges that differ by no more are eased, not misfits; 0 .. MUSLIN_SIZE_MAX */
    muslin::length ease{};
    /** pieces cut again on the diagonal are rounded to it; 1 .. MUSLIN_UNIT_SIZE_MAX */
    muslin::length grid = muslin::length::of_ticks(1016);
    /** below grid */
    muslin::length grid_tolerance{};
    /** as in unit_spec; 0: its usual ones */
    muslin::length half_addition{};
    /** so */
    muslin::length quarter_addition{};
    /** OVERSIZE: room to trim units and setting triangles */
    muslin::length trim_room{};
    /** strip sets: taken off each end, as in yield_spec */
    muslin::length end_trim{};
    /** as in yield_spec */
    muslin::length resquare_loss{};
    /** as in yield_spec */
    std::int64_t resquare_every = 0;
    /** must be 0 with FROM_ONE_END */
    muslin::length fold_clear{};
    /** enum allowance_policy */
    muslin::allowance_policy policy = muslin::allowance_policy::exact;
    /** enum tip */
    muslin::tip tip = muslin::tip::blunt;
    /** enum direction, of cut sizes that are rounded */
    muslin::direction direction = muslin::direction::up;
    /** enum strip_piecing, of joins that say WHERE_FEWER: that, or NEVER */
    muslin::strip_piecing strip_piecing = muslin::strip_piecing::where_fewer;
};
static_assert(detail::is_twin<solution_spec>);

/** struct muslin_solution_value_spec. */
struct MUSLIN_CPP_TWIN solution_value_spec {
    using c_type = muslin_solution_value_spec;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** a named measure, the quilt's allowance or take-up, or a fabric, whose usable width it is; a fixed length, a
     * sum or an extent cannot be given one: status::foreign */
    muslin::id id{};
    /** in the range of what it stands for */
    muslin::length value{};
};
static_assert(detail::is_twin<solution_value_spec>);

/** struct muslin_node_size. */
struct MUSLIN_CPP_TWIN node_size {
    using c_type = muslin_node_size;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** as seen */
    muslin::length finished_width{};
    muslin::length finished_height{};
    /** of a patch: cut */
    muslin::length unfinished_width{};
    muslin::length unfinished_height{};
    /** allowance of its edges; -1 where the pieces along one differ */
    muslin::length left{};
    muslin::length right{};
    muslin::length top{};
    muslin::length bottom{};
    /** of them in all tops */
    std::int64_t count = 0;
    /** of those, mirror images */
    std::int64_t mirrored = 0;
    /** of all, so many lie as they were made ... */
    std::int64_t upright = 0;
    /** ... turned a quarter clockwise ... */
    std::int64_t quarter = 0;
    /** ... half ... */
    std::int64_t half = 0;
    /** parts of a diagonal field count as in its own frame */
    std::int64_t three_quarter = 0;
    /** in one of it */
    std::int64_t patches = 0;
    /** seams whose errors add up in its width: of pieces side by side all count, of rows the one with most */
    std::int64_t seams_across = 0;
    /** so in its height: rows all count, each with its highest pile of seams */
    std::int64_t seams_down = 0;
    /** enum node_kind */
    muslin::node_kind kind{};
    /** 1 when its size was not rounded; inside, corners may be */
    muslin::truth exact{};
};
static_assert(detail::is_twin<node_size>);

/** struct muslin_solution_total. */
struct MUSLIN_CPP_TWIN solution_total {
    using c_type = muslin_solution_total;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** in all tops */
    std::int64_t patches = 0;
    /** that the root holds, itself included */
    std::int64_t different_nodes = 0;
    /** of one top: width x height */
    std::int64_t finished_area = 0;
    /** of one top: what its finished outlines cover, each in its own frame */
    std::int64_t patch_area = 0;
    /** where edges meet, the two differ by no more than this; 0 where everything is exact */
    std::int64_t area_error = 0;
    /** rows of solution::misfits() that are no ease, ... */
    std::int64_t misfits = 0;
    /** ... and that are */
    std::int64_t eased = 0;
    /** rows of solution::cuts() */
    std::int64_t cuts = 0;
    /** rows of solution::stripsets() */
    std::int64_t stripsets = 0;
    /** all that the rows of cuts, and of strip sets that are used, carry */
    std::uint32_t warnings = 0;
    /** 1 when nothing in it was rounded */
    muslin::truth exact{};
};
static_assert(detail::is_twin<solution_total>);

/** struct muslin_misfit. */
struct MUSLIN_CPP_TWIN misfit {
    using c_type = muslin_misfit;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** in which they meet */
    muslin::id node{};
    /** child of it, counted from 0; strips of a set-in: enum side; -1: a setting triangle or a sash on point */
    std::int64_t first = 0;
    std::int64_t second = 0;
    /** finished length of its edge; of ALLOWANCE its allowance, -1 where mixed */
    muslin::length first_size{};
    muslin::length second_size{};
    /** first less second; 0 where one is mixed */
    muslin::length difference{};
    /** seams to stretch or gather over: pieces along the edge that gives way, the one with more of them; of
     * ALLOWANCE 0 */
    std::int64_t pieces = 0;
    /** what each of them takes up: the difference over pieces, up to a tick; else 0 */
    muslin::length ease_each{};
    /** how often it happens in all tops */
    std::int64_t count = 0;
    /** enum misfit_kind */
    muslin::misfit_kind kind{};
    std::int32_t pad = 0;
};
static_assert(detail::is_twin<misfit>);

/** struct muslin_solution_cut. */
struct MUSLIN_CPP_TWIN solution_cut {
    using c_type = muslin_solution_cut;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** it is cut from */
    muslin::id fabric{};
    /** the first node that needs it; solution::cut_nodes() has all */
    muslin::id first_node{};
    /** as in unit_piece: across as the patch lies when upright; of a fabric without direction the longer side of a
     * rectangle that is not cut again. SET_STRIP: the usable width */
    muslin::length cut_width{};
    /** ... and along the print */
    muslin::length cut_height{};
    /** of shapes cut from a strip; else 0 */
    muslin::length pitch{};
    /** so */
    muslin::length wide_edge{};
    /** so */
    muslin::length narrow_edge{};
    /** cut less exact need, down to a tick */
    muslin::length surplus_width{};
    muslin::length surplus_height{};
    /** allowance on each edge of a rectangle that is sewn as it is cut; else the seam's */
    muslin::length left{};
    muslin::length right{};
    muslin::length top{};
    muslin::length bottom{};
    /** to cut, for all tops */
    std::int64_t count = 0;
    /** in the end, those spare included */
    std::int64_t pieces = 0;
    /** pieces beyond the need */
    std::int64_t spare = 0;
    /** different nodes that need it */
    std::int64_t nodes = 0;
    /** pieces needed that lie with their print as cut, and turned by one, two and three quarters in the top. Strips
     * are cut across the cloth: in a set joined down a print lies as its patch does, in one joined across a
     * quarter further */
    std::int64_t upright = 0;
    /** of those, turned by one quarter ... */
    std::int64_t quarter = 0;
    /** ... by two ... */
    std::int64_t half = 0;
    /** ... by three */
    std::int64_t three_quarter = 0;
    /** pieces needed whose print lies as the method brings it: of units all but rectangles to which corners are
     * sewn and octagons; setting triangles; 60 degree pieces */
    std::int64_t scattered = 0;
    /** enum cut_source */
    muslin::cut_source source{};
    /** enum cut_shape */
    muslin::cut_shape shape{};
    /** enum cut_again */
    muslin::cut_again again{};
    /** pieces from each: pieces = count x gives */
    std::int32_t gives = 0;
    /** enum grain */
    muslin::grain grain{};
    /** enum hand; of a sash cut off at the edge FIRST when the slanted end, seen upwards from the square one, rises
     * to the right */
    muslin::hand hand{};
    /** degrees, as in unit_piece */
    std::int32_t angle = 0;
    /** of a unit; piece number, from 1, of a shape; of a mitred strip whose ends differ its side; else 0 */
    std::int32_t region = 0;
    /** warning::print_turned: a fabric with a direction lies turned in some places, or, scattered, may lie so.
     * warning::longer_than_width: cut_width, of a rectangle of a fabric without direction the longer side, passes
     * the fabric's usable width; warning::below_exact: a surplus is below 0; warning::bias_edge: of a unit whose
     * outer edges lie on the bias, or a sash that the edge of a field on point cuts off at 45 degrees: there the
     * edge stretches */
    std::uint32_t warnings = 0;
    std::int32_t pad = 0;
};
static_assert(detail::is_twin<solution_cut>);

/** struct muslin_stripset. */
struct MUSLIN_CPP_TWIN stripset {
    using c_type = muslin_stripset;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** the join */
    muslin::id node{};
    /** in a set */
    std::int64_t strips = 0;
    /** width of the set, edge to edge */
    muslin::length set_unfinished{};
    /** what is cut across from it: unfinished length of the patches */
    muslin::length segment_cut{};
    /** of the narrowest fabric in it */
    muslin::length strip_length{};
    /** needed */
    std::int64_t segments = 0;
    /** that a set gives */
    std::int64_t segments_per_set = 0;
    /** up */
    std::int64_t sets = 0;
    /** segments beyond the need */
    std::int64_t spare = 0;
    /** cuts when every patch is cut by itself: strips of its height, cut across */
    std::int64_t cuts_apart = 0;
    /** cuts when it is strip-pieced */
    std::int64_t cuts_in_sets = 0;
    /** strips may be this much shorter before a set gives less */
    muslin::length shorter_by{};
    /** 1 when the cut list and the sewing plan take it. WHERE_FEWER: it takes fewer cuts, at least half of its
     * segments are needed, and no print would show that it lies turned in strips */
    muslin::truth used{};
    /** 1 when a segment turned end for end looks the same and its order need not stay */
    muslin::truth turns{};
    /** warning::no_slack, warning::mixed_widths; warning::print_turned: in strips a print lies otherwise than in
     * patches cut by themselves */
    std::uint32_t warnings = 0;
    std::int32_t pad = 0;
};
static_assert(detail::is_twin<stripset>);

/** struct muslin_term. */
struct MUSLIN_CPP_TWIN term {
    using c_type = muslin_term;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** measure or node; 0 where the kind names none */
    muslin::id id{};
    /** what it is multiplied by */
    std::int64_t times = 0;
    /** the whole term: what it adds to the sum */
    muslin::length value{};
    /** up to and with it */
    muslin::length sum{};
    /** enum term_kind */
    muslin::term_kind kind{};
    /** 1: the sum is the finished size up to here; 0: the unfinished one, cut of a patch */
    muslin::truth finished{};
};
static_assert(detail::is_twin<term>);

/** struct muslin_outline. */
struct MUSLIN_CPP_TWIN outline {
    using c_type = muslin_outline;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** the leaf (or diagonal field, 60 degree rows, set-in) that it belongs to */
    muslin::id node{};
    /** of the patch */
    muslin::id fabric{};
    /** of its corners in the array of corners */
    std::int64_t first_corner = 0;
    /** counter-clockwise */
    std::int64_t corners = 0;
    /** of a unit; piece from 1 of a shape; triangle from 1 of a field: at the top from the left, right from the
     * top, bottom, left, then corners upper left, lower right, upper right, lower left; then, cut off at the edge,
     * sashes that stand in the turned frame at the top, right, bottom, left, those that lie at the right, bottom,
     * top, left, or cornerstones so; piece from 1 of rows: those given, then the left and the right half-triangle
     * of each row; 1 of a patch */
    std::int32_t region = 0;
    /** how its print lies: clockwise */
    std::int32_t quarter_turns = 0;
    /** 1 when it is a mirror image: left for right first, then turned */
    muslin::truth mirrored{};
    /** 1 when it is turned by an eighth more, clockwise: in a field on point (not in one that lies in another,
     * where two eighths are a quarter), or a sash cut off at its edge */
    muslin::truth on_point{};
};
static_assert(detail::is_twin<outline>);

/** struct muslin_outline_corner. */
struct MUSLIN_CPP_TWIN outline_corner {
    using c_type = muslin_outline_corner;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** to the right from the lower left of what is drawn, finished */
    muslin::length x{};
    /** upwards */
    muslin::length y{};
    /** in which the seam lies along the edge that starts here; 0: the outside */
    muslin::id seam_node{};
    /** of that node: its number, from 0, as pressing.h counts them */
    std::int64_t seam = 0;
};
static_assert(detail::is_twin<outline_corner>);

/** What solution::outlines() answers. */
struct solution_outlines_answer {
    std::size_t count = 0;
    std::size_t written = 0;
};

inline namespace MUSLIN_CPP_FORM {

/** struct muslin_solution, owned: it is moved, never copied, and given back at its end. */
class solution : public handle<muslin_solution, muslin_solution_free> {
public:
    /** Solves the tree under `root`, with n values (0 or more; the last one of an id counts) in place of those that
     * measures and fabrics have. Only what the root needs is worked out. Edges that do not meet do not make it fail:
     * see solution::misfits(). status::range: a sum of measures, a size or a trimmed size outside 1 .. MUSLIN_SIZE_MAX
     * (a sum may be 0), more pieces than MUSLIN_COUNT_MAX; `at` is the number of the measure or node (id_number()).
     * Statuses of the recipes of units and setting triangles (unit.h, setting.h), `at` the node. status::method: a
     * join that must be strip-pieced has pieces that are not patches of one length. status::no_yield: a strip set as
     * wide as its fabric gives no segment. status::no_memory. Allocator null: the quilt's. Time and memory follow the
     * nodes of the quilt up to the root, plus a sort of the cut list.
     * muslin_solution_create() in muslin/solution.h. Since 1.0. */
    static answer<muslin::solution> create(const muslin::quilt &quilt, muslin::id root,
                                           const muslin::solution_spec &spec = {},
                                           muslin::span<const muslin::solution_value_spec> values = {},
                                           const muslin_allocator &allocator = libc_allocator())
    {
        muslin::solution out;
        return asking::ask(out, [&](muslin_problem *problem) {
            return muslin_solution_create(quilt.get(), detail::in_c(root), detail::in_c(&spec),
                                          detail::in_c(values.data()), sizeof(muslin::solution_value_spec),
                                          values.size(), &allocator, out.made(), problem);
        });
    }

    /** How large a node is, how many there are and how they lie. Constant time.
     * muslin_solution_size() in muslin/solution.h. Since 1.0. */
    answer<muslin::node_size> size(muslin::id node) const
    {
        muslin::node_size out;
        return asking::ask(out, [&](muslin_problem *problem) {
            return muslin_solution_size(get(), detail::in_c(node), detail::in_c(&out), problem);
        });
    }

    /** The value a measure has in this solution. status::foreign also for a measure that the root does not need.
     * Constant time.
     * muslin_solution_value() in muslin/solution.h. Since 1.0. */
    answer<muslin::length> value(muslin::id measure) const
    {
        muslin::length value{};
        return asking::ask(value, [&](muslin_problem *problem) {
            return muslin_solution_value(get(), detail::in_c(measure), detail::in_c(&value), problem);
        });
    }

    /** The whole at a glance. Time follows the nodes, their own pieces, and the patches in parts that trimming cuts.
     * muslin_solution_totals() in muslin/solution.h. Since 1.0. */
    answer<muslin::solution_total> totals() const
    {
        muslin::solution_total out;
        return asking::ask(out, [&](muslin_problem *problem) {
            return muslin_solution_totals(get(), detail::in_c(&out), problem);
        });
    }

    /** Every pair of edges that do not meet, each where it is made (once for equal parts), in the order of the nodes.
     * muslin_solution_misfits() in muslin/solution.h. Since 1.0. */
    answer<std::vector<muslin::misfit>> misfits() const
    {
        std::vector<muslin::misfit> rows;
        return asking::ask_rows(rows, rows, [&](auto to, muslin_problem *problem) {
            return muslin_solution_misfits(get(), to.rows, sizeof(muslin::misfit), to.capacity, to.count, problem);
        });
    }

    /** One way from the root to a node: the child numbers to follow. Of the nodes made of it the first is taken, and of
     * those made of that one the first, up to the root; of equal children the first. Empty for the root. Time follows
     * the nodes above it and their children.
     * muslin_solution_path() in muslin/solution.h. Since 1.0. */
    answer<std::vector<std::int64_t>> path(muslin::id node) const
    {
        std::vector<std::int64_t> steps;
        return asking::ask_rows(steps, steps, [&](auto to, muslin_problem *problem) {
            return muslin_solution_path(get(), detail::in_c(node), to.rows, to.capacity, to.count, problem);
        });
    }

    /** What to cut, by fabric in the order in which they were made, the highest and then the longest first; cuts equal
     * in all but counts are one row (templates of one shape only). Units alike in size, kind, method and fabrics share
     * their recipes, whatever their nodes are called. Mitred strips that are mitred alike at both ends are one row on
     * whichever sides they lie; where the ends differ, side and hand stay apart. Fields on point share equal squares
     * for setting triangles, and 60 degree rows equal rectangles for half-triangles: what all need together is rounded
     * up. Rectangles round templates and mitred strips have their raw outline's corners, to the nearest tick. The
     * half-triangles at the ends of 60 degree rows are cut in pairs from rectangles of H / sqrt 3 + (1 + sqrt 3) E / 2
     * by H + (3 + sqrt 3) E / 2, E = 2 s + u, rounded once. Source: geometry.
     * muslin_solution_cuts() in muslin/solution.h. Since 1.0. */
    answer<std::vector<muslin::solution_cut>> cuts() const
    {
        std::vector<muslin::solution_cut> rows;
        return asking::ask_rows(rows, rows, [&](auto to, muslin_problem *problem) {
            return muslin_solution_cuts(get(), to.rows, sizeof(muslin::solution_cut), to.capacity, to.count, problem);
        });
    }

    /** The nodes that need a row of the cut list, in their order; of a strip the join. status::index: no such row. Time
     * follows the result.
     * muslin_solution_cut_nodes() in muslin/solution.h. Since 1.0. */
    answer<std::vector<muslin::id>> cut_nodes(std::int64_t row) const
    {
        std::vector<muslin::id> ids;
        return asking::ask_rows(ids, ids, [&](auto to, muslin_problem *problem) {
            return muslin_solution_cut_nodes(get(), row, to.rows, to.capacity, to.count, problem);
        });
    }

    /** Every join that can be strip-pieced: all its children are patches (turned or not) of one finished length with
     * the same allowances at its ends, and a set gives at least one segment. Cuts are counted as one for each strip
     * from the cloth and one for each piece or segment from its strip; patches of one fabric and cut size share
     * strips, cut straight through. Yields are stripset_yield()'s.
     * muslin_solution_stripsets() in muslin/solution.h. Since 1.0. */
    answer<std::vector<muslin::stripset>> stripsets() const
    {
        std::vector<muslin::stripset> rows;
        return asking::ask_rows(rows, rows, [&](auto to, muslin_problem *problem) {
            return muslin_solution_stripsets(get(), to.rows, sizeof(muslin::stripset), to.capacity, to.count, problem);
        });
    }

    /** The sum that leads to the width (axis::across) or height (axis::down) of a node: the finished size first, then
     * its allowances up to the unfinished size, which is the last row's sum. Runs of equal children are one term. Time
     * follows the children.
     * muslin_solution_explain() in muslin/solution.h. Since 1.0. */
    answer<std::vector<muslin::term>> explain(muslin::id node, muslin::axis axis) const
    {
        std::vector<muslin::term> rows;
        return asking::ask_rows(rows, rows, [&](auto to, muslin_problem *problem) {
            return muslin_solution_explain(get(), detail::in_c(node), detail::in_c(axis), to.rows, sizeof(muslin::term),
                                           to.capacity, to.count, problem);
        });
    }

    /** The outlines of the patches under a node, from number `first` on, in the order of the tree. Corners of a row are
     * the next free ones of `corners`. Stage is as in unit.h: raw outlines reach below 0. Everything exact is drawn
     * exactly; a corner in a turned frame is rounded once in each, and shared corners round alike. A trimmed node is
     * drawn as it is after trimming, new corners to the nearest tick, and a patch of which nothing is left is a row
     * without corners (raw: all as before trimming). Edges that differ in length are drawn as they are, and leave a
     * gap. Along an edge lies the seam by which it is sewn on, also where it only lies on a part of that seam.
     * status::range: `first` not in 0 .. the number of patches. Time follows outlines x depth.
     * muslin_solution_outlines() in muslin/solution.h. Since 1.0. */
    answer<muslin::solution_outlines_answer> outlines(muslin::id node, muslin::stage stage, std::int64_t first,
                                                      muslin::span<muslin::outline> rows,
                                                      muslin::span<muslin::outline_corner> corners) const
    {
        muslin::solution_outlines_answer answer;
        return asking::ask(answer, [&](muslin_problem *problem) {
            return muslin_solution_outlines(get(), detail::in_c(node), detail::in_c(stage), first,
                                            detail::in_c(rows.data()), sizeof(muslin::outline), rows.size(),
                                            detail::in_c(corners.data()), sizeof(muslin::outline_corner),
                                            corners.size(), &answer.count, &answer.written, problem);
        });
    }
};

} // namespace MUSLIN_CPP_FORM

} // namespace muslin

#endif
