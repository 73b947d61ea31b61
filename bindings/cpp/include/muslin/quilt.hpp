// muslin/quilt.hpp - the piecing tree: one description of a top, from which sizes, cuts, sewing and drawings follow.
// Written by generate.py from lib/abi/api.json: change that, not this file.
//
// SPDX-License-Identifier: MIT
#ifndef MUSLIN_QUILT_HPP
#define MUSLIN_QUILT_HPP

#include <muslin/quilt.h>
#include <muslin/shape.hpp>
#include <muslin/unit.hpp>
#include <muslin/setting.hpp>
#include <muslin/supplies.hpp>

namespace muslin {

/** enum muslin_sort */
enum class sort : std::int32_t {
    fabric = MUSLIN_SORT_FABRIC,
    measure = MUSLIN_SORT_MEASURE,
    node = MUSLIN_SORT_NODE,
};

/** enum muslin_axis */
enum class axis : std::int32_t {
    /** side by side, from the left; of a size: the width */
    across = MUSLIN_AXIS_ACROSS,
    /** one below the other, from the top; of a size: the height */
    down = MUSLIN_AXIS_DOWN,
};

/** enum muslin_strip_piecing */
enum class strip_piecing : std::int32_t {
    /** as a strip set where that takes fewer cuts and pays, see stripset */
    where_fewer = MUSLIN_STRIP_PIECING_WHERE_FEWER,
    /** as a strip set; solving fails where the pieces do not allow it */
    always = MUSLIN_STRIP_PIECING_ALWAYS,
    /** piece by piece */
    never = MUSLIN_STRIP_PIECING_NEVER,
};

/** enum muslin_seam_press */
enum class seam_press : std::int32_t {
    /** whichever way seams nest */
    free = MUSLIN_SEAM_PRESS_FREE,
    /** towards the piece that comes first: to the left, or up */
    to_first = MUSLIN_SEAM_PRESS_TO_FIRST,
    /** to the right, or down */
    to_last = MUSLIN_SEAM_PRESS_TO_LAST,
    /** half to either side: does not nest, and needs not */
    open = MUSLIN_SEAM_PRESS_OPEN,
};

/** enum muslin_sixty_first */
enum class sixty_first : std::int32_t {
    on_side = MUSLIN_SIXTY_FIRST_ON_SIDE,
    on_point = MUSLIN_SIXTY_FIRST_ON_POINT,
};

/** enum muslin_measure_kind */
enum class measure_kind : std::int32_t {
    named = MUSLIN_MEASURE_NAMED,
    fixed = MUSLIN_MEASURE_FIXED,
    sum = MUSLIN_MEASURE_SUM,
    extent = MUSLIN_MEASURE_EXTENT,
};

/** enum muslin_node_kind */
enum class node_kind : std::int32_t {
    /** quilt::patch() */
    patch = MUSLIN_NODE_PATCH,
    /** quilt::unit() */
    unit = MUSLIN_NODE_UNIT,
    /** quilt::shape() */
    shape = MUSLIN_NODE_SHAPE,
    /** pieces side by side or one below the other */
    join = MUSLIN_NODE_JOIN,
    /** turned, mirrored, or both */
    turn = MUSLIN_NODE_TURN,
    /** quilt::trim() */
    trim = MUSLIN_NODE_TRIM,
    /** quilt::pinwheel() */
    pinwheel = MUSLIN_NODE_PINWHEEL,
    /** quilt::set_in() */
    set_in = MUSLIN_NODE_SET_IN,
    /** a field on point */
    diagonal = MUSLIN_NODE_DIAGONAL,
    /** rows of 60 degree pieces */
    sixty = MUSLIN_NODE_SIXTY,
};

/** struct muslin_quilt_spec. opaque */
struct MUSLIN_CPP_TWIN quilt_spec {
    using c_type = muslin_quilt_spec;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** s: value of the quilt's seam allowance until another is given; 0 .. MUSLIN_SIZE_MAX / 8 */
    muslin::length allowance = muslin::length::of_ticks(2032);
    /** u, so; 0 .. MUSLIN_SIZE_MAX / 8 */
    muslin::length take_up{};
    /** fabrics, measures and nodes together, each with sixteen numbers on the average; 1 .. 2^27 */
    std::int64_t most = 67108864;
    /** what marks this quilt's ids, 1 .. 2^20 - 1: whoever has several quilts numbers them, so that none takes
     * another's ids. 0: taken from where the quilt lies in memory, another one in every run; one made later in its
     * place may get it again */
    std::int64_t tag = 1;
};
static_assert(detail::is_twin<quilt_spec>);

/** struct muslin_quilt_fabric_spec. */
struct MUSLIN_CPP_TWIN quilt_fabric_spec {
    using c_type = muslin_quilt_fabric_spec;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** of the cloth, or length of a strip; 1 .. MUSLIN_SIZE_MAX; the value until another is given */
    muslin::length usable_width = muslin::length::of_ticks(325120);
    /** enum print; a patch's cloth stands upright when its print's top is the patch's */
    muslin::print print = muslin::print::none;
    /** for pressing: seams go towards the greater number; 0 .. 100, 0: not stated */
    std::int32_t darkness = 0;
};
static_assert(detail::is_twin<quilt_fabric_spec>);

/** struct muslin_quilt_sum_spec. */
struct MUSLIN_CPP_TWIN quilt_sum_spec {
    using c_type = muslin_quilt_sum_spec;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** of the same quilt */
    muslin::id measure{};
    /** -2^20 .. 2^20 */
    std::int64_t factor = 1;
};
static_assert(detail::is_twin<quilt_sum_spec>);

/** struct muslin_quilt_patch_spec. */
struct MUSLIN_CPP_TWIN quilt_patch_spec {
    using c_type = muslin_quilt_patch_spec;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** of the same quilt */
    muslin::id fabric{};
    /** finished */
    muslin::id width{};
    /** finished */
    muslin::id height{};
    /** allowance of each edge; 0: the quilt's */
    muslin::id left{};
    muslin::id right{};
    muslin::id top{};
    muslin::id bottom{};
};
static_assert(detail::is_twin<quilt_patch_spec>);

/** struct muslin_quilt_unit_spec. */
struct MUSLIN_CPP_TWIN quilt_unit_spec {
    using c_type = muslin_quilt_unit_spec;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** W, H and corner as the kind takes them (unit.h); 0 where it takes none */
    muslin::id width{};
    muslin::id height{};
    /** so */
    muslin::id corner{};
    /** enum unit_kind that fills a rectangle: HALF_SQUARE .. HALF_RECTANGLE, OCTAGON, EIGHT_POINTED_STAR,
     * KALEIDOSCOPE */
    muslin::unit_kind kind = muslin::unit_kind::half_square;
    /** enum unit_method */
    muslin::unit_method method = muslin::unit_method::two_at_a_time;
    /** enum hand; FIRST for kinds without hands */
    muslin::hand hand = muslin::hand::first;
    std::int32_t pad = 0;
};
static_assert(detail::is_twin<quilt_unit_spec>);

/** struct muslin_quilt_join_spec. the order of the pieces is labelled: no segment of it is turned end for end */
struct MUSLIN_CPP_TWIN quilt_join_spec {
    using c_type = muslin_quilt_join_spec;

    static constexpr std::uint32_t keeps_order = MUSLIN_QUILT_JOIN_KEEPS_ORDER;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** enum axis */
    muslin::axis axis = muslin::axis::across;
    /** enum strip_piecing; WHERE_FEWER: no matter unless all are patches of one length */
    muslin::strip_piecing piecing = muslin::strip_piecing::where_fewer;
    /** enum seam_press, of all its seams */
    muslin::seam_press press = muslin::seam_press::free;
    std::int32_t pad = 0;
};
static_assert(detail::is_twin<quilt_join_spec>);

/** struct muslin_quilt_trim_spec. */
struct MUSLIN_CPP_TWIN quilt_trim_spec {
    using c_type = muslin_quilt_trim_spec;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** cut away after sewing; 0: nothing */
    muslin::id left{};
    muslin::id right{};
    muslin::id top{};
    muslin::id bottom{};
};
static_assert(detail::is_twin<quilt_trim_spec>);

/** struct muslin_quilt_pinwheel_spec. */
struct MUSLIN_CPP_TWIN quilt_pinwheel_spec {
    using c_type = muslin_quilt_pinwheel_spec;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** nodes */
    muslin::id centre{};
    /** over centre and left: as wide as both together */
    muslin::id top{};
    /** beside centre and top: as high as both together */
    muslin::id right{};
    /** under centre and right */
    muslin::id bottom{};
    /** beside centre and bottom */
    muslin::id left{};
};
static_assert(detail::is_twin<quilt_pinwheel_spec>);

/** struct muslin_quilt_set_in_spec. */
struct MUSLIN_CPP_TWIN quilt_set_in_spec {
    using c_type = muslin_quilt_set_in_spec;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** node */
    muslin::id centre{};
    /** finished width of the strip on each side; 0: no strip there */
    muslin::id left_width{};
    muslin::id right_width{};
    muslin::id top_width{};
    muslin::id bottom_width{};
    /** 0 where there is no strip */
    muslin::id left_fabric{};
    muslin::id right_fabric{};
    muslin::id top_fabric{};
    muslin::id bottom_fabric{};
};
static_assert(detail::is_twin<quilt_set_in_spec>);

/** struct muslin_quilt_log_spec. */
struct MUSLIN_CPP_TWIN quilt_log_spec {
    using c_type = muslin_quilt_log_spec;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** of the log */
    muslin::id fabric{};
    /** finished */
    muslin::id width{};
    /** enum side */
    muslin::side side = muslin::side::right;
    std::int32_t pad = 0;
};
static_assert(detail::is_twin<quilt_log_spec>);

/** struct muslin_quilt_surround_spec. */
struct MUSLIN_CPP_TWIN quilt_surround_spec {
    using c_type = muslin_quilt_surround_spec;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** nodes */
    muslin::id centre{};
    /** as high as the centre */
    muslin::id left{};
    muslin::id right{};
    /** as wide as the centre */
    muslin::id top{};
    muslin::id bottom{};
    /** as wide as left, as high as top, and so on */
    muslin::id top_left{};
    muslin::id top_right{};
    /** at the lower left */
    muslin::id bottom_left{};
    /** at the lower right */
    muslin::id bottom_right{};
};
static_assert(detail::is_twin<quilt_surround_spec>);

/** struct muslin_quilt_sashed_spec. squares where sashes cross; else sashes between rows run through */
struct MUSLIN_CPP_TWIN quilt_sashed_spec {
    using c_type = muslin_quilt_sashed_spec;

    static constexpr std::uint32_t frame = MUSLIN_QUILT_SASHED_FRAME;
    static constexpr std::uint32_t cornerstones = MUSLIN_QUILT_SASHED_CORNERSTONES;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** of blocks, 1 .. MUSLIN_COUNT_MAX */
    std::int64_t columns = 1;
    std::int64_t rows = 1;
    /** finished width */
    muslin::id sash{};
    /** of all sashes */
    muslin::id sash_fabric{};
    /** fabric of CORNERSTONES; 0: as the sashes; without them 0 */
    muslin::id cornerstone{};
};
static_assert(detail::is_twin<quilt_sashed_spec>);

/** struct muslin_quilt_diagonal_spec. */
struct MUSLIN_CPP_TWIN quilt_diagonal_spec {
    using c_type = muslin_quilt_diagonal_spec;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** c: blocks side by side, alternates not counted; 1 .. 2^15 */
    std::int64_t columns = 1;
    /** r, so */
    std::int64_t rows = 1;
    /** of the setting triangles */
    muslin::id side_fabric{};
    /** of the corner triangles */
    muslin::id corner_fabric{};
    /** f: blocks float this far inside the edge; 0: they touch it. 0 in SASH_CUT and SASH_INNER */
    muslin::id set_off{};
    /** w, finished width; 0 in PLAIN, in no other layout. Below B in SASH_INNER */
    muslin::id sash{};
    /** 0 in PLAIN, in no other layout */
    muslin::id sash_fabric{};
    /** its fabric; 0: as the sashes; 0 in PLAIN */
    muslin::id cornerstone{};
    /** enum point_layout */
    muslin::point_layout layout = muslin::point_layout::plain;
    std::int32_t pad = 0;
};
static_assert(detail::is_twin<quilt_diagonal_spec>);

/** struct muslin_quilt_sixty_spec. */
struct MUSLIN_CPP_TWIN quilt_sixty_spec {
    using c_type = muslin_quilt_sixty_spec;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** triangles in a row, ends not counted; 1 .. 2^20 */
    std::int64_t cells = 1;
    /** 1 .. 2^20 */
    std::int64_t rows = 1;
    /** H, finished, of a row */
    muslin::id height{};
    /** of the half-triangles that close both ends */
    muslin::id end_fabric{};
    /** enum sixty_first */
    muslin::sixty_first first = muslin::sixty_first::on_side;
    std::int32_t pad = 0;
};
static_assert(detail::is_twin<quilt_sixty_spec>);

/** struct muslin_quilt_sixty_piece_spec. */
struct MUSLIN_CPP_TWIN quilt_sixty_piece_spec {
    using c_type = muslin_quilt_sixty_piece_spec;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** of the piece */
    muslin::id fabric{};
    /** 1: a triangle, 2: a diamond, 3: a half-hexagon */
    std::int64_t cells = 1;
};
static_assert(detail::is_twin<quilt_sixty_piece_spec>);

/** struct muslin_tree_measure. */
struct MUSLIN_CPP_TWIN tree_measure {
    using c_type = muslin_tree_measure;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** of a fixed one; of one with a name, until another is given; else 0 */
    muslin::length value{};
    /** whose extent it is; else 0 */
    muslin::id node{};
    /** enum measure_kind */
    muslin::measure_kind kind{};
    /** of an extent, enum axis; else 0 */
    muslin::axis axis{};
    /** of a sum, what quilt::read_terms() gives; else 0 */
    std::int64_t terms = 0;
};
static_assert(detail::is_twin<tree_measure>);

/** struct muslin_node. */
struct MUSLIN_CPP_TWIN node {
    using c_type = muslin_node;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** nodes it is made of: what quilt::children() gives */
    std::int64_t children = 0;
    /** 1 for a leaf */
    std::int64_t depth = 0;
    /** enum node_kind */
    muslin::node_kind kind{};
    /** of a join, enum axis; else 0 */
    muslin::axis axis{};
    /** of a turn: first mirrored, where it is, then turned clockwise by so many */
    std::int32_t quarter_turns = 0;
    /** 1 when it is the mirror image */
    muslin::truth mirrored{};
};
static_assert(detail::is_twin<node>);

/** struct muslin_part_counts. */
struct MUSLIN_CPP_TWIN part_counts {
    using c_type = muslin_part_counts;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** made so far */
    std::int64_t fabrics = 0;
    /** so, the seam allowance and take-up among them */
    std::int64_t measures = 0;
    /** different ones */
    std::int64_t nodes = 0;
    /** that the quilt holds from its allocator */
    std::int64_t bytes = 0;
};
static_assert(detail::is_twin<part_counts>);

/** What quilt::seam() answers. */
struct quilt_seam_answer {
    muslin::id allowance{};
    muslin::id take_up{};
};

/** What quilt::read_shape() answers. */
struct quilt_read_shape_answer {
    std::vector<muslin::corner_spec> corners;
    muslin::id width{};
    muslin::id height{};
};

inline namespace MUSLIN_CPP_FORM {

/** struct muslin_quilt, owned: it is moved, never copied, and given back at its end. */
class quilt : public handle<muslin_quilt, muslin_quilt_free> {
public:
    /** An empty quilt, with two measures: its seam allowance and its take-up. The allocator is copied; its functions
     * must serve as long as the quilt and its solutions. out is written on success alone. Two quilts of one tag take
     * each other's ids for their own.
     * muslin_quilt_create() in muslin/quilt.h. Since 1.0. */
    static answer<muslin::quilt> create(const muslin::quilt_spec &spec = {},
                                        const muslin_allocator &allocator = libc_allocator())
    {
        muslin::quilt out;
        return asking::ask(out, [&](muslin_problem *problem) {
            return muslin_quilt_create(detail::in_c(&spec), &allocator, out.made(), problem);
        });
    }

    /** A new fabric. `name` is any text of `bytes` bytes (0 .. 200), kept as it is; names need not differ, and every
     * call makes another fabric.
     * muslin_quilt_fabric() in muslin/quilt.h. Since 1.0. */
    answer<muslin::id> fabric(const muslin::quilt_fabric_spec &spec, std::string_view name)
    {
        muslin::id out{};
        return asking::ask(out, [&](muslin_problem *problem) {
            return muslin_quilt_fabric(get(), detail::in_c(&spec), name.data(), name.size(), detail::in_c(&out),
                                       problem);
        });
    }

    /** A new measure with a name (as of a fabric) and the value it has until another is given, 0 .. MUSLIN_SIZE_MAX.
     * Every call makes another measure, whatever its name and value.
     * muslin_quilt_measure() in muslin/quilt.h. Since 1.0. */
    answer<muslin::id> measure(std::string_view name, muslin::length value)
    {
        muslin::id out{};
        return asking::ask(out, [&](muslin_problem *problem) {
            return muslin_quilt_measure(get(), name.data(), name.size(), detail::in_c(value), detail::in_c(&out),
                                        problem);
        });
    }

    /** A length that no size of the design changes, 0 .. MUSLIN_SIZE_MAX; equal ones are one measure.
     * muslin_quilt_fixed() in muslin/quilt.h. Since 1.0. */
    answer<muslin::id> fixed(muslin::length value)
    {
        muslin::id out{};
        return asking::ask(out, [&](muslin_problem *problem) {
            return muslin_quilt_fixed(get(), detail::in_c(value), detail::in_c(&out), problem);
        });
    }

    /** The sum of factor x measure over n terms (1 .. 64). When it is solved it must lie in 0 .. MUSLIN_SIZE_MAX.
     * muslin_quilt_sum() in muslin/quilt.h. Since 1.0. */
    answer<muslin::id> sum(muslin::span<const muslin::quilt_sum_spec> terms)
    {
        muslin::id out{};
        return asking::ask(out, [&](muslin_problem *problem) {
            return muslin_quilt_sum(get(), detail::in_c(terms.data()), sizeof(muslin::quilt_sum_spec), terms.size(),
                                    detail::in_c(&out), problem);
        });
    }

    /** The finished width or height of a node, as a measure: a sash as long as its block, a border as long as the top.
     * muslin_quilt_extent() in muslin/quilt.h. Since 1.0. */
    answer<muslin::id> extent(muslin::id node, muslin::axis axis)
    {
        muslin::id out{};
        return asking::ask(out, [&](muslin_problem *problem) {
            return muslin_quilt_extent(get(), detail::in_c(node), detail::in_c(axis), detail::in_c(&out), problem);
        });
    }

    /** The quilt's seam allowance and its take-up, as measures: give them values when solving. Either output may be
     * null.
     * muslin_quilt_seam() in muslin/quilt.h. Since 1.0. */
    answer<muslin::quilt_seam_answer> seam() const
    {
        muslin::quilt_seam_answer answer;
        return asking::ask(answer, [&](muslin_problem *problem) {
            return muslin_quilt_seam(get(), detail::in_c(&answer.allowance), detail::in_c(&answer.take_up), problem);
        });
    }

    /** The name of a fabric or a measure, terminated; measures made without one have none (""). As base.h says of text
     * out: cap 0 asks, status::buffer when it is too small, need counts the terminator.
     * muslin_quilt_name() in muslin/quilt.h. Since 1.0. */
    answer<std::string> name(muslin::id id) const
    {
        std::string text;
        return asking::ask_text(text, text, [&](auto to, muslin_problem *problem) {
            return muslin_quilt_name(get(), detail::in_c(id), to.text, to.capacity, to.need, problem);
        });
    }

    /** One rectangle of one fabric.
     * muslin_quilt_patch() in muslin/quilt.h. Since 1.0. */
    answer<muslin::id> patch(const muslin::quilt_patch_spec &spec = {})
    {
        muslin::id out{};
        return asking::ask(out, [&](muslin_problem *problem) {
            return muslin_quilt_patch(get(), detail::in_c(&spec), detail::in_c(&out), problem);
        });
    }

    /** A pieced unit by its recipe, with a fabric for each of its regions (n is their number, 2 or 3), drawn as
     * unit_outlines() draws it and sewn with the quilt's seam. Where its pieces come together in the middle, two
     * halves are joined by one seam straight through it: of a quarter-square from the lower right to the upper left,
     * of a split quarter along the large triangle, of an eight-pointed star upright, of a kaleidoscope from the right
     * one of the two points below to the left one above. status::method: the kind is not made so. status::range:
     * another number of fabrics, or a measure that the kind does not take. Whether its sizes suit the kind is known
     * when it is solved.
     * muslin_quilt_unit() in muslin/quilt.h. Since 1.0. */
    answer<muslin::id> unit(const muslin::quilt_unit_spec &spec, muslin::span<const muslin::id> fabrics)
    {
        muslin::id out{};
        return asking::ask(out, [&](muslin_problem *problem) {
            return muslin_quilt_unit(get(), detail::in_c(&spec), detail::in_c(fabrics.data()), fabrics.size(),
                                     detail::in_c(&out), problem);
        });
    }

    /** A unit of the caller's own, drawn as shape.h says, outline first, with straight edges and an outline that is an
     * upright rectangle from (0, 0); `fabrics` has one for each piece. Allowances and tips of the corners are not
     * looked at: the quilt's seam is used, and raw points are sharp. Its size is the outline's, times width / outline
     * width and height / outline height, each corner to the nearest tick; `width` or `height` 0: as drawn. Statuses
     * also as of shape_check(), which is asked first. status::shape also for arcs and an outline that is no rectangle.
     * status::range also for a piece of more than MUSLIN_QUILT_CORNERS_MAX corners, and for other than `pieces`
     * pieces. Solving fails with status::shape where it becomes so small that neighbouring corners of a piece fall
     * together, and with status::overflow where a raw point would reach more than MUSLIN_TEMPLATE_REACH_MAX beyond its
     * finished one. Time as of shape_check().
     * muslin_quilt_shape() in muslin/quilt.h. Since 1.0. */
    answer<muslin::id> shape(muslin::span<const muslin::corner_spec> corners, muslin::span<const muslin::id> fabrics,
                             muslin::id width, muslin::id height)
    {
        muslin::id out{};
        return asking::ask(out, [&](muslin_problem *problem) {
            return muslin_quilt_shape(get(), detail::in_c(corners.data()), sizeof(muslin::corner_spec), corners.size(),
                                      detail::in_c(fabrics.data()), fabrics.size(), detail::in_c(width),
                                      detail::in_c(height), detail::in_c(&out), problem);
        });
    }

    /** n nodes (1 or more) sewn edge to edge in their order; one alone is itself. Whether their edges meet is told when
     * it is solved. status::range for argument::depth beyond MUSLIN_QUILT_DEPTH_MAX.
     * muslin_quilt_join() in muslin/quilt.h. Since 1.0. */
    answer<muslin::id> join(const muslin::quilt_join_spec &spec, muslin::span<const muslin::id> children)
    {
        muslin::id out{};
        return asking::ask(out, [&](muslin_problem *problem) {
            return muslin_quilt_join(get(), detail::in_c(&spec), detail::in_c(children.data()), children.size(),
                                     detail::in_c(&out), problem);
        });
    }

    /** Columns x rows nodes, given row by row from the top: each row joined across, then the rows joined down. 1 ..
     * MUSLIN_COUNT_MAX each; n is their product.
     * muslin_quilt_grid() in muslin/quilt.h. Since 1.0. */
    answer<muslin::id> grid(std::int64_t columns, std::int64_t rows, muslin::span<const muslin::id> children)
    {
        muslin::id out{};
        return asking::ask(out, [&](muslin_problem *problem) {
            return muslin_quilt_grid(get(), columns, rows, detail::in_c(children.data()), children.size(),
                                     detail::in_c(&out), problem);
        });
    }

    /** One node columns x rows times, turned by a pattern that repeats: turns[(row % pattern_rows) x pattern_columns +
     * column % pattern_columns] quarter turns, each 0 .. 3. n is pattern_columns x pattern_rows; rows are made once
     * each and shared. Columns and rows 1 .. 2^20.
     * muslin_quilt_repeat() in muslin/quilt.h. Since 1.0. */
    answer<muslin::id> repeat(muslin::id node, std::int64_t columns, std::int64_t rows,
                              muslin::span<const std::int32_t> turns, std::int64_t pattern_columns,
                              std::int64_t pattern_rows)
    {
        muslin::id out{};
        return asking::ask(out, [&](muslin_problem *problem) {
            return muslin_quilt_repeat(get(), detail::in_c(node), columns, rows, turns.data(), turns.size(),
                                       pattern_columns, pattern_rows, detail::in_c(&out), problem);
        });
    }

    /** The node turned by quarter_turns (0 .. 3) clockwise: the same sewing, lying another way. By 0, the node itself;
     * turns of turns are one turn.
     * muslin_quilt_turn() in muslin/quilt.h. Since 1.0. */
    answer<muslin::id> turn(muslin::id node, std::int32_t quarter_turns)
    {
        muslin::id out{};
        return asking::ask(out, [&](muslin_problem *problem) {
            return muslin_quilt_turn(get(), detail::in_c(node), quarter_turns, detail::in_c(&out), problem);
        });
    }

    /** The node's mirror image, left for right: another sewing, whose pieces with hands are cut the other way. Twice is
     * the node itself.
     * muslin_quilt_mirror() in muslin/quilt.h. Since 1.0. */
    answer<muslin::id> mirror(muslin::id node)
    {
        muslin::id out{};
        return asking::ask(out, [&](muslin_problem *problem) {
            return muslin_quilt_mirror(get(), detail::in_c(node), detail::in_c(&out), problem);
        });
    }

    /** Both in one step, without a node in between: first mirrored, where `mirrored` is 1 (else 0), then turned
     * clockwise by quarter_turns (0 .. 3), as node tells of a turn.
     * muslin_quilt_lay() in muslin/quilt.h. Since 1.0. */
    answer<muslin::id> lay(muslin::id node, std::int32_t quarter_turns, bool mirrored)
    {
        muslin::id out{};
        return asking::ask(out, [&](muslin_problem *problem) {
            return muslin_quilt_lay(get(), detail::in_c(node), quarter_turns, mirrored, detail::in_c(&out), problem);
        });
    }

    /** The node made larger than it is needed and trimmed after sewing: what is joined to it meets the trimmed edge,
     * which is no mismatch. Solving fails with status::range where nothing would be left.
     * muslin_quilt_trim() in muslin/quilt.h. Since 1.0. */
    answer<muslin::id> trim(muslin::id node, const muslin::quilt_trim_spec &spec = {})
    {
        muslin::id out{};
        return asking::ask(out, [&](muslin_problem *problem) {
            return muslin_quilt_trim(get(), detail::in_c(node), detail::in_c(&spec), detail::in_c(&out), problem);
        });
    }

    /** Four nodes round a centre, each end against the next one's side: four seams, top, right, bottom, left, of which
     * the first (top to centre) is sewn in part and finished when left is on. Edges that do not meet are told when it
     * is solved: the centre's, with the end that prolongs it, first, then the node's that is sewn to it. Each node
     * then lies in its corner and the centre against left and top, and the whole is as large as the largest of its
     * rows and columns. The mirror image turns the other way. Source: geometry.
     * muslin_quilt_pinwheel() in muslin/quilt.h. Since 1.0. */
    answer<muslin::id> pinwheel(const muslin::quilt_pinwheel_spec &spec = {})
    {
        muslin::id out{};
        return asking::ask(out, [&](muslin_problem *problem) {
            return muslin_quilt_pinwheel(get(), detail::in_c(&spec), detail::in_c(&out), problem);
        });
    }

    /** Strips round a centre with mitred corners: where two strips meet, the seam runs from the centre's corner to the
     * outer one, and stitching along the centre stops one allowance from the edge there, so that the corner can be set
     * in. Where a neighbour is missing, a strip's end is square. Strips have the quilt's allowance all round. A mitred
     * border has all four strips, an attic window two. status::range: no strip at all, a fabric without a strip; when
     * it is solved, a strip of no width. Source: geometry.
     * muslin_quilt_set_in() in muslin/quilt.h. Since 1.0. */
    answer<muslin::id> set_in(const muslin::quilt_set_in_spec &spec = {})
    {
        muslin::id out{};
        return asking::ask(out, [&](muslin_problem *problem) {
            return muslin_quilt_set_in(get(), detail::in_c(&spec), detail::in_c(&out), problem);
        });
    }

    /** Strips sewn on one after the other (n, 0 or more), each as long as what is there: log cabin, courthouse steps,
     * plain borders.
     * muslin_quilt_logs() in muslin/quilt.h. Since 1.0. */
    answer<muslin::id> logs(muslin::id centre, muslin::span<const muslin::quilt_log_spec> logs)
    {
        muslin::id out{};
        return asking::ask(out, [&](muslin_problem *problem) {
            return muslin_quilt_logs(get(), detail::in_c(centre), detail::in_c(logs.data()),
                                     sizeof(muslin::quilt_log_spec), logs.size(), detail::in_c(&out), problem);
        });
    }

    /** A border with corners of its own, plain or pieced: sides joined to the centre, then top and bottom with their
     * corners joined to that.
     * muslin_quilt_surround() in muslin/quilt.h. Since 1.0. */
    answer<muslin::id> surround(const muslin::quilt_surround_spec &spec = {})
    {
        muslin::id out{};
        return asking::ask(out, [&](muslin_problem *problem) {
            return muslin_quilt_surround(get(), detail::in_c(&spec), detail::in_c(&out), problem);
        });
    }

    /** Blocks (columns x rows, row by row from the top; n is their product) with sashes between them, each as long as
     * the first block of its row is high, or of its column wide. Without cornerstones a sash between two rows is as
     * long as the upper one with its sashes, the frame's top as the first. Rows are joined across, then all down.
     * status::range for argument::fabric (`at` 1): a fabric for cornerstones without CORNERSTONES.
     * muslin_quilt_sashed() in muslin/quilt.h. Since 1.0. */
    answer<muslin::id> sashed(const muslin::quilt_sashed_spec &spec, muslin::span<const muslin::id> blocks)
    {
        muslin::id out{};
        return asking::ask(out, [&](muslin_problem *problem) {
            return muslin_quilt_sashed(get(), detail::in_c(&spec), detail::in_c(blocks.data()), blocks.size(),
                                       detail::in_c(&out), problem);
        });
    }

    /** Blocks on point in diagonal rows, closed by setting triangles. `blocks` has the c x r main blocks row by row
     * from the top, then the (c - 1)(r - 1) alternates so, n in all. All are squares of one size B, which is checked
     * when it is solved. A block's top edge becomes its upper right one: it is turned clockwise by an eighth of a
     * turn. Inside the turned frame everything is exact; the outside is as setting_point() has it for the layout,
     * rounded once, to the nearest tick: in PLAIN c B sqrt 2 + 2 f by r B sqrt 2 + 2 f. Pieces Counts and cuts are
     * those of setting_point(), as the solve's policy asks. Whole sashes and cornerstones are patches, B by w, w by B
     * and w by w, upright in the turned frame: up to three children more, which follow the blocks, see
     * quilt::children(). Triangles, and in SASH_INNER the sashes that end at the edge, are the field's own pieces.
     * Rows Rows run down to the right. Where there are sashes, they stand between the blocks of a row and in
     * SASH_OUTER and SASH_CUT also at its ends; a row of sashes and cornerstones lies between two rows of blocks, and
     * in those layouts beyond the first and the last one. Side triangles close rows of blocks. In SASH_OUTER a
     * triangle is as long as its row and one row of sashes are high: sew that one to the row first. A triangle that
     * would need one row of sashes where the triangle at the other end needs the other one, which is where c and r
     * differ by 2 or more, is set into its corner from mark to mark. Seams Seams of rows, and last those of the
     * corners, are straight from edge to edge, and stop at the leg of a triangle of SASH_OUTER. So where blocks float,
     * the seam below a row runs on beyond the tips, between two triangles, and each is drawn as far as it is left.
     * status::range for argument::children: another number of blocks; for argument::depth: more than
     * MUSLIN_QUILT_POINT_DEPTH_MAX such fields within each other; for argument::measure (`at` 0 the set-off, 1 the
     * sash) or argument::fabric (`at` 2 of the sashes, 3 of the cornerstones): an id where the layout has none, or
     * none where it needs one. Solving fails with status::range for argument::sash_width when w is not above 0, and
     * for argument::block_width when blocks of SASH_INNER are not larger than w; `at` is the field's number. Source:
     * geometry.
     * muslin_quilt_diagonal() in muslin/quilt.h. Since 1.0. */
    answer<muslin::id> diagonal(const muslin::quilt_diagonal_spec &spec, muslin::span<const muslin::id> blocks)
    {
        muslin::id out{};
        return asking::ask(out, [&](muslin_problem *problem) {
            return muslin_quilt_diagonal(get(), detail::in_c(&spec), detail::in_c(blocks.data()), blocks.size(),
                                         detail::in_c(&out), problem);
        });
    }

    /** Rows of equilateral triangles and what they make up: each row is filled, from the left, with pieces of one to
     * three triangles' room (n pieces in all; a row's pieces must end with it, else status::range with `at` the piece,
     * n where there are too few), and closed at both ends by half-triangles. A row is H high and (cells + 1) H / sqrt
     * 3 wide, to the nearest tick; corners lie at whole multiples of H / sqrt 3, each rounded once. Pieces are cut
     * from strips as unit.h says, half-triangles as half-rectangles. Source: geometry.
     * muslin_quilt_sixty() in muslin/quilt.h. Since 1.0. */
    answer<muslin::id> sixty(const muslin::quilt_sixty_spec &spec,
                             muslin::span<const muslin::quilt_sixty_piece_spec> pieces)
    {
        muslin::id out{};
        return asking::ask(out, [&](muslin_problem *problem) {
            return muslin_quilt_sixty(get(), detail::in_c(&spec), detail::in_c(pieces.data()),
                                      sizeof(muslin::quilt_sixty_piece_spec), pieces.size(), detail::in_c(&out),
                                      problem);
        });
    }

    /** The id of the fabric, measure or node (sort, enum sort) with this number, 1 .. as many as there are: what
     * id_number() says of it. status::index: there are not so many. Constant time.
     * muslin_quilt_id() in muslin/quilt.h. Since 1.0. */
    answer<muslin::id> id(muslin::sort sort, std::int64_t number) const
    {
        muslin::id out{};
        return asking::ask(out, [&](muslin_problem *problem) {
            return muslin_quilt_id(get(), detail::in_c(sort), number, detail::in_c(&out), problem);
        });
    }

    /** A fabric, but for its name, which quilt::name() tells. Constant time.
     * muslin_quilt_read_fabric() in muslin/quilt.h. Since 1.0. */
    answer<muslin::quilt_fabric_spec> read_fabric(muslin::id fabric) const
    {
        muslin::quilt_fabric_spec out;
        return asking::ask(out, [&](muslin_problem *problem) {
            return muslin_quilt_read_fabric(get(), detail::in_c(fabric), detail::in_c(&out), problem);
        });
    }

    /** What a measure is, but for its name. Constant time.
     * muslin_quilt_read_measure() in muslin/quilt.h. Since 1.0. */
    answer<muslin::tree_measure> read_measure(muslin::id measure) const
    {
        muslin::tree_measure out;
        return asking::ask(out, [&](muslin_problem *problem) {
            return muslin_quilt_read_measure(get(), detail::in_c(measure), detail::in_c(&out), problem);
        });
    }

    /** The terms of a sum, in the order in which they were given: ask, then fill. status::choice for argument::kind:
     * another kind of measure.
     * muslin_quilt_read_terms() in muslin/quilt.h. Since 1.0. */
    answer<std::vector<muslin::quilt_sum_spec>> read_terms(muslin::id measure) const
    {
        std::vector<muslin::quilt_sum_spec> rows;
        return asking::ask_rows(rows, rows, [&](auto to, muslin_problem *problem) {
            return muslin_quilt_read_terms(get(), detail::in_c(measure), to.rows, sizeof(muslin::quilt_sum_spec),
                                           to.capacity, to.count, problem);
        });
    }

    /** What a node is.
     * muslin_quilt_node() in muslin/quilt.h. Since 1.0. */
    answer<muslin::node> node(muslin::id node) const
    {
        muslin::node out;
        return asking::ask(out, [&](muslin_problem *problem) {
            return muslin_quilt_node(get(), detail::in_c(node), detail::in_c(&out), problem);
        });
    }

    /** The nodes that a node is made of, in the order in which they were given (a pinwheel: centre, top, right, bottom,
     * left), repeats repeated: ask, then fill. Patches that were not given follow the blocks of a field on point with
     * sashes: its sash that lies (B wide), the one that stands, its cornerstone; in SASH_INNER the sashes only where
     * there are alternates, and no cornerstone of one block alone in SASH_CUT and SASH_INNER, for whole ones are not
     * in it. So solution::size() knows every child of what it solved.
     * muslin_quilt_children() in muslin/quilt.h. Since 1.0. */
    answer<std::vector<muslin::id>> children(muslin::id node) const
    {
        std::vector<muslin::id> ids;
        return asking::ask_rows(ids, ids, [&](auto to, muslin_problem *problem) {
            return muslin_quilt_children(get(), detail::in_c(node), to.rows, to.capacity, to.count, problem);
        });
    }

    /** What a node was made with: each of these reads one kind. status::choice for argument::kind: the node is of
     * another kind, which is `value`. What a trim, a join, a turn and a field on point are made of, quilt::children()
     * tells; how a turn lies, quilt::node(). Time follows what is written.
     * muslin_quilt_read_patch() in muslin/quilt.h. Since 1.0. */
    answer<muslin::quilt_patch_spec> read_patch(muslin::id node) const
    {
        muslin::quilt_patch_spec out;
        return asking::ask(out, [&](muslin_problem *problem) {
            return muslin_quilt_read_patch(get(), detail::in_c(node), detail::in_c(&out), problem);
        });
    }

    /** What a node was made with: each of these reads one kind.
     * muslin_quilt_read_unit() in muslin/quilt.h. Since 1.0. */
    answer<muslin::quilt_unit_spec> read_unit(muslin::id node) const
    {
        muslin::quilt_unit_spec out;
        return asking::ask(out, [&](muslin_problem *problem) {
            return muslin_quilt_read_unit(get(), detail::in_c(node), detail::in_c(&out), problem);
        });
    }

    /** What a node was made with: each of these reads one kind.
     * muslin_quilt_read_join() in muslin/quilt.h. Since 1.0. */
    answer<muslin::quilt_join_spec> read_join(muslin::id node) const
    {
        muslin::quilt_join_spec out;
        return asking::ask(out, [&](muslin_problem *problem) {
            return muslin_quilt_read_join(get(), detail::in_c(node), detail::in_c(&out), problem);
        });
    }

    /** What a node was made with: each of these reads one kind.
     * muslin_quilt_read_trim() in muslin/quilt.h. Since 1.0. */
    answer<muslin::quilt_trim_spec> read_trim(muslin::id node) const
    {
        muslin::quilt_trim_spec out;
        return asking::ask(out, [&](muslin_problem *problem) {
            return muslin_quilt_read_trim(get(), detail::in_c(node), detail::in_c(&out), problem);
        });
    }

    /** What a node was made with: each of these reads one kind.
     * muslin_quilt_read_pinwheel() in muslin/quilt.h. Since 1.0. */
    answer<muslin::quilt_pinwheel_spec> read_pinwheel(muslin::id node) const
    {
        muslin::quilt_pinwheel_spec out;
        return asking::ask(out, [&](muslin_problem *problem) {
            return muslin_quilt_read_pinwheel(get(), detail::in_c(node), detail::in_c(&out), problem);
        });
    }

    /** What a node was made with: each of these reads one kind.
     * muslin_quilt_read_set_in() in muslin/quilt.h. Since 1.0. */
    answer<muslin::quilt_set_in_spec> read_set_in(muslin::id node) const
    {
        muslin::quilt_set_in_spec out;
        return asking::ask(out, [&](muslin_problem *problem) {
            return muslin_quilt_read_set_in(get(), detail::in_c(node), detail::in_c(&out), problem);
        });
    }

    /** What a node was made with: each of these reads one kind.
     * muslin_quilt_read_diagonal() in muslin/quilt.h. Since 1.0. */
    answer<muslin::quilt_diagonal_spec> read_diagonal(muslin::id node) const
    {
        muslin::quilt_diagonal_spec out;
        return asking::ask(out, [&](muslin_problem *problem) {
            return muslin_quilt_read_diagonal(get(), detail::in_c(node), detail::in_c(&out), problem);
        });
    }

    /** What a node was made with: each of these reads one kind.
     * muslin_quilt_read_sixty() in muslin/quilt.h. Since 1.0. */
    answer<muslin::quilt_sixty_spec> read_sixty(muslin::id node) const
    {
        muslin::quilt_sixty_spec out;
        return asking::ask(out, [&](muslin_problem *problem) {
            return muslin_quilt_read_sixty(get(), detail::in_c(node), detail::in_c(&out), problem);
        });
    }

    /** The pieces of 60 degree rows, from the left, row by row: ask, then fill. status::choice as above.
     * muslin_quilt_read_sixty_pieces() in muslin/quilt.h. Since 1.0. */
    answer<std::vector<muslin::quilt_sixty_piece_spec>> read_sixty_pieces(muslin::id node) const
    {
        std::vector<muslin::quilt_sixty_piece_spec> rows;
        return asking::ask_rows(rows, rows, [&](auto to, muslin_problem *problem) {
            return muslin_quilt_read_sixty_pieces(get(), detail::in_c(node), to.rows,
                                                  sizeof(muslin::quilt_sixty_piece_spec), to.capacity, to.count,
                                                  problem);
        });
    }

    /** The drawing of a shape: ask, then fill. The outline comes first, as the four corners of its rectangle, then the
     * pieces as they were drawn. Allowances and tips, which a quilt does not look at, are those of
     * MUSLIN_CORNER_SPEC_INIT. width and height get the measures that it is stretched to, 0: as drawn, on success.
     * status::choice as above.
     * muslin_quilt_read_shape() in muslin/quilt.h. Since 1.0. */
    answer<muslin::quilt_read_shape_answer> read_shape(muslin::id node) const
    {
        muslin::quilt_read_shape_answer answer;
        return asking::ask_rows(answer, answer.corners, [&](auto to, muslin_problem *problem) {
            return muslin_quilt_read_shape(get(), detail::in_c(node), to.rows, sizeof(muslin::corner_spec), to.capacity,
                                           to.count, detail::in_c(&answer.width), detail::in_c(&answer.height),
                                           problem);
        });
    }

    /** The fabrics of a unit's regions, or of a shape's pieces: ask, then fill. status::choice as above.
     * muslin_quilt_read_fabrics() in muslin/quilt.h. Since 1.0. */
    answer<std::vector<muslin::id>> read_fabrics(muslin::id node) const
    {
        std::vector<muslin::id> ids;
        return asking::ask_rows(ids, ids, [&](auto to, muslin_problem *problem) {
            return muslin_quilt_read_fabrics(get(), detail::in_c(node), to.rows, to.capacity, to.count, problem);
        });
    }

    /** How much a quilt holds.
     * muslin_quilt_counts() in muslin/quilt.h. Since 1.0. */
    answer<muslin::part_counts> counts() const
    {
        muslin::part_counts out;
        return asking::ask(out, [&](muslin_problem *problem) {
            return muslin_quilt_counts(get(), detail::in_c(&out), problem);
        });
    }
};

/** The sort of an id (enum sort; 0 for what is no id) and its number, counted from 1 for each sort in the order of
 * making (0 for what is no id). Neither asks whether a quilt has it. Constant time. Since 1.0 both.
 * muslin_id_sort() in muslin/quilt.h. Since 1.0. */
[[nodiscard]] inline muslin::sort id_sort(muslin::id id) noexcept
{
    return static_cast<muslin::sort>(muslin_id_sort(detail::in_c(id)));
}

/** The sort of an id (enum sort; 0 for what is no id) and its number, counted from 1 for each sort in the order of
 * making (0 for what is no id).
 * muslin_id_number() in muslin/quilt.h. Since 1.0. */
[[nodiscard]] inline std::int64_t id_number(muslin::id id) noexcept
{
    return muslin_id_number(detail::in_c(id));
}

} // namespace MUSLIN_CPP_FORM

} // namespace muslin

#endif
