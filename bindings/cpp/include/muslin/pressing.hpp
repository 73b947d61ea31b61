// muslin/pressing.hpp - which way to press every seam of a top so that seams nest.
// Written by generate.py from lib/abi/api.json: change that, not this file.
//
// SPDX-License-Identifier: MIT
#ifndef MUSLIN_PRESSING_HPP
#define MUSLIN_PRESSING_HPP

#include <muslin/pressing.h>
#include <muslin/solution.hpp>

namespace muslin {

/** enum muslin_prefer */
enum class prefer : std::int32_t {
    /** either side is as good */
    nothing = MUSLIN_PREFER_NOTHING,
    /** seams go towards the darker fabric where nesting leaves the choice */
    darker = MUSLIN_PREFER_DARKER,
};

/** enum muslin_press */
enum class press : std::int32_t {
    /** to the left */
    left = MUSLIN_PRESS_LEFT,
    /** to the right */
    right = MUSLIN_PRESS_RIGHT,
    /** upwards */
    up = MUSLIN_PRESS_UP,
    /** downwards */
    down = MUSLIN_PRESS_DOWN,
    /** open */
    open = MUSLIN_PRESS_OPEN,
};

/** enum muslin_other_way */
enum class other_way : std::int32_t {
    /** no copy is taken the other way */
    none = MUSLIN_OTHER_WAY_NONE,
    /** press so many copies the other way */
    pressed = MUSLIN_OTHER_WAY_PRESSED,
    /** cut them from strip sets of their own, pressed the other way */
    sets = MUSLIN_OTHER_WAY_SETS,
    /** press all alike and turn so many as a whole, by `turn` quarters: they look the same; segments of strip sets
     * end for end */
    turned = MUSLIN_OTHER_WAY_TURNED,
};

/** enum muslin_towards */
enum class towards : std::int32_t {
    /** open */
    neither = MUSLIN_TOWARDS_NEITHER,
    /** the left or upper one */
    first = MUSLIN_TOWARDS_FIRST,
    /** the right or lower one */
    second = MUSLIN_TOWARDS_SECOND,
};

/** enum muslin_preferred */
enum class preferred : std::int32_t {
    /** neither way is preferred */
    neither = MUSLIN_PREFERRED_NEITHER,
    /** pressed as preferred */
    kept = MUSLIN_PREFERRED_KEPT,
    /** ... against it */
    against = MUSLIN_PREFERRED_AGAINST,
};

/** struct muslin_pressing_spec. */
struct MUSLIN_CPP_TWIN pressing_spec {
    using c_type = muslin_pressing_spec;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** steps of the search, 0 .. 2^40; when it runs out the best plan so far stands */
    std::int64_t work_limit = 20000000;
    /** enum prefer */
    muslin::prefer prefer = muslin::prefer::darker;
    /** 1: the seams of units are pressed as their recipes say, in every copy; 0: so they are preferred, where their
     * fabrics do not say which is darker, and give way to nesting */
    muslin::truth units{};
};
static_assert(detail::is_twin<pressing_spec>);

/** struct muslin_pressing_total. */
struct MUSLIN_CPP_TWIN pressing_total {
    using c_type = muslin_pressing_total;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** in all tops, those left out not counted */
    std::int64_t meetings = 0;
    /** of those, that do not nest */
    std::int64_t exceptions = 0;
    /** no plan of this sort has fewer */
    std::int64_t least = 0;
    /** exceptions when all is pressed in turn: every seam to its first piece, and joins take their second child the
     * other way, their fourth, and so on, where none asks otherwise */
    std::int64_t alternating = 0;
    /** meetings left out, as a seam is pressed open */
    std::int64_t open = 0;
    /** copies of nodes with seams of their own that are the other way, pressed or turned; where those seams are
     * open, turned alone */
    std::int64_t other_way = 0;
    /** steps taken */
    std::int64_t work = 0;
    /** 1 when exceptions = least */
    muslin::truth proven{};
    std::int32_t pad = 0;
    /** of other_way, copies that are turned and not pressed the other way */
    std::int64_t copies_turned = 0;
};
static_assert(detail::is_twin<pressing_total>);

/** struct muslin_pressing_seam. */
struct MUSLIN_CPP_TWIN pressing_seam {
    using c_type = muslin_pressing_seam;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** whose seam it is */
    muslin::id node{};
    /** number in its node */
    std::int64_t seam = 0;
    /** copies of the node pressed so, also those in what is turned as a whole */
    std::int64_t as_shown = 0;
    /** copies taken the other way: by `other`, pressed or turned; an open seam is told so when its node is turned */
    std::int64_t other_way = 0;
    /** finished ends, in the node as it was made, from its lower left */
    muslin::length from_x{};
    muslin::length from_y{};
    /** its other end */
    muslin::length to_x{};
    /** its other end */
    muslin::length to_y{};
    /** enum press, in the node as it was made */
    muslin::press press{};
    /** enum towards */
    muslin::towards towards{};
    /** enum other_way */
    muslin::other_way other{};
    /** enum preferred */
    muslin::preferred preferred{};
    /** other_way::turned: quarter turns of the copies the other way; else 0 */
    std::int32_t turn = 0;
    std::int32_t pad = 0;
};
static_assert(detail::is_twin<pressing_seam>);

/** struct muslin_pressing_child. */
struct MUSLIN_CPP_TWIN pressing_child {
    using c_type = muslin_pressing_child;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** made of ... */
    muslin::id node{};
    /** ... this ... */
    muslin::id child{};
    /** ... which is its child of this number */
    std::int64_t place = 0;
    /** 1 when it takes its child the other way than that is shown; the whole may be taken the other way again by
     * what it is part of */
    muslin::truth other_way{};
    /** quarters by which the child is turned where it is the other way; 0: it is pressed. The same in every place
     * of the child, also where other_way is 0: what the node is part of may be the other way, and then this place,
     * too. By itself it says nothing of this place */
    std::int32_t turn = 0;
};
static_assert(detail::is_twin<pressing_child>);

/** struct muslin_pressing_exception. */
struct MUSLIN_CPP_TWIN pressing_exception {
    using c_type = muslin_pressing_exception;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** in which the two edges are sewn together ... */
    muslin::id node{};
    /** ... by its seam of this number */
    std::int64_t seam = 0;
    /** where, finished, in the node as it was made */
    muslin::length x{};
    muslin::length y{};
    /** whose seams meet there */
    muslin::id first_node{};
    /** its number in first_node */
    std::int64_t first_seam = 0;
    /** and the other */
    muslin::id second_node{};
    /** its number in second_node */
    std::int64_t second_seam = 0;
    /** in all tops */
    std::int64_t count = 0;
};
static_assert(detail::is_twin<pressing_exception>);

inline namespace MUSLIN_CPP_FORM {

/** struct muslin_pressing, owned: it is moved, never copied, and given back at its end. */
class pressing : public handle<muslin_pressing, muslin_pressing_free> {
public:
    /** A plan for the whole solution, which it reads and which must outlive it. The fewest exceptions come first; what
     * joins ask for is kept in every copy: a node that asks is taken as it is, or it is turned, or what holds it. Then
     * come few copies pressed the other way: as few as can be taken the other way, and of these turned what can be,
     * small nodes before what they are part of, by a quarter rather than by a half. Then comes the preference for the
     * darker side: fabrics whose darkness is stated and differs, else the first region of a unit. These are sought
     * step by step and not proved. Meetings of seams that are pressed open are left out. The plan is the best there is
     * when `proven` says so (small trees always), and never has more exceptions than all pressed in turn, see
     * `alternating`, or without turning. Whether what asks for a way may be turned is looked through node by node, as
     * far as the work limit goes. In joins of more than 64 children that repeat after 32 or fewer, places that lie two
     * repeats apart are taken alike; meetings there are told once, at the first. Same request, same plan. Allocator
     * null: the quilt's. `progress` is told exceptions, beginning with those of all pressed in turn. status::range,
     * status::choice: a member outside its range or choices. status::work_limit: edges of different nodes have more
     * than 2^26 pieces in all. status::no_memory. Time follows meetings of different parts, plus the work limit, up to
     * four times where joins ask for a way. Source: a system of linear equations over two elements, solved by
     * elimination; branch and bound where not all can hold.
     * muslin_pressing_create() in muslin/pressing.h. Since 1.0. */
    template <class Progress = no_progress>
    static answer<muslin::pressing> create(const muslin::solution &solution, const muslin::pressing_spec &spec = {},
                                           const muslin_allocator &allocator = libc_allocator(),
                                           Progress &&progress = {})
    {
        muslin::pressing out;
        detail::teller<std::remove_reference_t<Progress>> progress_(progress);
        return asking::ask(out, [&](muslin_problem *problem) {
            return progress_.done(muslin_pressing_create(solution.get(), detail::in_c(&spec), &allocator,
                                                         progress_.template callback<muslin_progress>(),
                                                         progress_.context(), out.made(), problem));
        });
    }

    /** How well it nests. Constant time.
     * muslin_pressing_totals() in muslin/pressing.h. Since 1.0. */
    answer<muslin::pressing_total> totals() const
    {
        muslin::pressing_total out;
        return asking::ask(out, [&](muslin_problem *problem) {
            return muslin_pressing_totals(get(), detail::in_c(&out), problem);
        });
    }

    /** Every seam of every different node, in their order. A node is shown as most of its copies are pressed, or as it
     * asks to be. Of strip-pieced joins they are the set's, and all of a set is pressed alike: copies the other way
     * are cut from another set, or turned end for end. Time follows the seams.
     * muslin_pressing_seams() in muslin/pressing.h. Since 1.0. */
    answer<std::vector<muslin::pressing_seam>> seams() const
    {
        std::vector<muslin::pressing_seam> rows;
        return asking::ask_rows(rows, rows, [&](auto to, muslin_problem *problem) {
            return muslin_pressing_seams(get(), to.rows, sizeof(muslin::pressing_seam), to.capacity, to.count, problem);
        });
    }

    /** Which places take a child the other way: a row for each child with seams, in the order of the nodes. From the
     * root down: a child is the other way when its place says so and what it is part of is not, or the reverse. One
     * with a `turn` is then turned as a whole, and all in it is as its own places say; of any other all in it is the
     * other way than they say. Time follows the children.
     * muslin_pressing_children() in muslin/pressing.h. Since 1.0. */
    answer<std::vector<muslin::pressing_child>> children() const
    {
        std::vector<muslin::pressing_child> rows;
        return asking::ask_rows(rows, rows, [&](auto to, muslin_problem *problem) {
            return muslin_pressing_children(get(), to.rows, sizeof(muslin::pressing_child), to.capacity, to.count,
                                            problem);
        });
    }

    /** The meetings that do not nest, in the order of the nodes: press one of the two seams open there, or accept the
     * lump. Of what is turned the seam is named that would end there unturned. Time follows the meetings of different
     * parts.
     * muslin_pressing_exceptions() in muslin/pressing.h. Since 1.0. */
    answer<std::vector<muslin::pressing_exception>> exceptions() const
    {
        std::vector<muslin::pressing_exception> rows;
        return asking::ask_rows(rows, rows, [&](auto to, muslin_problem *problem) {
            return muslin_pressing_exceptions(get(), to.rows, sizeof(muslin::pressing_exception), to.capacity, to.count,
                                              problem);
        });
    }
};

} // namespace MUSLIN_CPP_FORM

} // namespace muslin

#endif
