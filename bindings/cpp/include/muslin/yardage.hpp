// muslin/yardage.hpp - from a solved quilt to what to buy: each fabric's pieces, a cutting plan for each, the lengths.
// Written by generate.py from lib/abi/api.json: change that, not this file.
//
// SPDX-License-Identifier: MIT
#ifndef MUSLIN_YARDAGE_HPP
#define MUSLIN_YARDAGE_HPP

#include <muslin/yardage.h>
#include <muslin/cutplan.hpp>

namespace muslin {

/** enum muslin_long_pieces */
enum class long_pieces : std::int32_t {
    /** along the cloth, whole, slit from panels */
    lengthwise = MUSLIN_LONG_PIECES_LENGTHWISE,
    /** across the cloth, pieced from strips */
    joined = MUSLIN_LONG_PIECES_JOINED,
};

/** struct muslin_yardage_spec. */
struct MUSLIN_CPP_TWIN yardage_spec {
    using c_type = muslin_yardage_spec;

    static constexpr std::uint32_t no_panels = MUSLIN_CUTPLAN_NO_PANELS;
    static constexpr std::uint32_t one_height = MUSLIN_CUTPLAN_ONE_HEIGHT;
    static constexpr std::uint32_t own_strips = MUSLIN_CUTPLAN_OWN_STRIPS;
    static constexpr std::uint32_t stacked = MUSLIN_CUTPLAN_STACKED;
    static constexpr std::uint32_t folded = MUSLIN_CUTPLAN_FOLDED;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** these six as in cutplan_spec, of each fabric */
    muslin::length end_loss{};
    /** so */
    muslin::length resquare_loss{};
    /** so */
    std::int64_t resquare_every = 0;
    /** so */
    muslin::length straightening{};
    /** so */
    std::int64_t spare_pieces = 0;
    /** of each fabric */
    std::int64_t work_limit = 400000000;
    /** of pieces that are joined here, as in blank_spec */
    muslin::length join_loss = muslin::length::of_ticks(4064);
    /** these four as in purchase_spec, of each fabric */
    muslin::length extra{};
    /** so */
    muslin::length step = muslin::length::of_ticks(36576);
    /** so */
    std::int32_t shrinkage = 0;
    /** so */
    std::int32_t extra_share = 0;
    /** enum long_pieces: what is longer than its fabric is wide */
    muslin::long_pieces long_pieces = muslin::long_pieces::lengthwise;
    std::int32_t pad = 0;
    /** as join_loss */
    muslin::length least_part{};
    /** added to the longer side of each mitred strip, for handling; 0 .. MUSLIN_SIZE_MAX */
    muslin::length mitre_extra{};
};
static_assert(detail::is_twin<yardage_spec>);

/** struct muslin_extra_cut_spec. What is cut besides from a fabric of the quilt: a row of a request, for one of its
 * fabrics. */
struct MUSLIN_CPP_TWIN extra_cut_spec {
    using c_type = muslin_extra_cut_spec;

    static constexpr std::uint32_t may_turn = MUSLIN_BLANK_MAY_TURN;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** of the quilt, whether its top uses it or not */
    muslin::id fabric{};
    /** these and what follows as in blank_spec */
    muslin::length cut_width{};
    muslin::length cut_length{};
    /** so */
    std::int64_t count = 1;
    /** so */
    muslin::length run_in{};
    /** so */
    muslin::length join_loss{};
    /** enum blank_kind */
    muslin::blank_kind kind = muslin::blank_kind::piece;
    std::int32_t pad = 0;
    /** so */
    muslin::length least_part{};
};
static_assert(detail::is_twin<extra_cut_spec>);

/** struct muslin_fabric_yardage. */
struct MUSLIN_CPP_TWIN fabric_yardage {
    using c_type = muslin_fabric_yardage;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** of the quilt */
    muslin::id fabric{};
    /** of its cloth */
    muslin::length usable_width{};
    /** cut, extra cuts and spare ones among them */
    std::int64_t pieces = 0;
    /** of the plan, straightening included: what is needed */
    muslin::length cloth_length{};
    /** no plan of two stages needs less, straightening included */
    muslin::length least{};
    /** when each size has its own strips */
    muslin::length own_strips_length{};
    /** before it shrinks and with what is added, as in purchase */
    muslin::length with_extra{};
    /** up to the step */
    muslin::length bought{};
    /** bought - with_extra */
    muslin::length spare{};
    /** at which the plan can still be cut as it is */
    muslin::length narrowest_width{};
    /** 1: cloth_length is the least */
    muslin::truth proven{};
    /** 1: some pieces lie turned a quarter from the request */
    muslin::truth turned{};
};
static_assert(detail::is_twin<fabric_yardage>);

inline namespace MUSLIN_CPP_FORM {

/** struct muslin_yardage, owned: it is moved, never copied, and given back at its end. */
class yardage : public handle<muslin_yardage, muslin_yardage_free> {
public:
    /** The whole way, for every fabric of which something is cut, with n rows of extra cuts. The solution need not
     * outlive it. Allocator null: status::null. `progress` is told as for a plan, fabric after fabric, beginning anew
     * with each; when it ends the search, the fabrics that follow get their first plan only. status::range,
     * status::choice, status::flags, status::foreign: a member; of the extra cuts `at` is the row. What plans and
     * purchases can return comes with the fabric's number (id_number()) as `at`: status::no_yield: a piece does not
     * fit, with its size as value and what there is room for as limit; status::range: more rows, pieces of a row or
     * cloth than one plan or purchase can take, or joins that take a whole strip; status::overflow; status::no_memory.
     * Time and memory: those of the plans.
     * muslin_yardage_create() in muslin/yardage.h. Since 1.0. */
    template <class Progress = no_progress>
    static answer<muslin::yardage> create(const muslin::solution &solution, const muslin::yardage_spec &spec = {},
                                          muslin::span<const muslin::extra_cut_spec> cuts = {},
                                          const muslin_allocator &allocator = libc_allocator(),
                                          Progress &&progress = {})
    {
        muslin::yardage out;
        detail::teller<std::remove_reference_t<Progress>> progress_(progress);
        return asking::ask(out, [&](muslin_problem *problem) {
            return progress_.done(muslin_yardage_create(solution.get(), detail::in_c(&spec), detail::in_c(cuts.data()),
                                                        sizeof(muslin::extra_cut_spec), cuts.size(), &allocator,
                                                        progress_.template callback<muslin_progress>(),
                                                        progress_.context(), out.made(), problem));
        });
    }

    /** A row for each fabric of which something is cut, in the order in which the fabrics were made. Time follows the
     * rows.
     * muslin_yardage_fabrics() in muslin/yardage.h. Since 1.0. */
    answer<std::vector<muslin::fabric_yardage>> fabrics() const
    {
        std::vector<muslin::fabric_yardage> rows;
        return asking::ask_rows(rows, rows, [&](auto to, muslin_problem *problem) {
            return muslin_yardage_fabrics(get(), to.rows, sizeof(muslin::fabric_yardage), to.capacity, to.count,
                                          problem);
        });
    }

    /** The plan of a row of yardage::fabrics(); it lives as long as the yardage, and is not freed by itself. Labels of
     * its pieces (cutplan::pieces()) are rows of the cut list, or of the extra cuts, counted on behind its last row.
     * status::index: no such row. Constant time.
     * muslin_yardage_plan() in muslin/yardage.h. Since 1.0. */
    answer<muslin::cutplan> plan(std::int64_t row) const
    {
        muslin::cutplan out;
        return asking::ask(out, [&](muslin_problem *problem) {
            return muslin_yardage_plan(get(), row, out.lent(), problem);
        });
    }
};

/** The pieces of one fabric as a request, ask-then-fill: rows of the cut list as said above, `label` the row there,
 * priority 0. Of the spec what a strip has room for matters, join_loss, least_part, long_pieces and mitre_extra.
 * status::foreign: not a fabric of the solution's quilt. status::range, status::choice: a member of the spec. Time
 * follows the cut list.
 * muslin_yardage_pieces() in muslin/yardage.h. Since 1.0. */
inline answer<std::vector<muslin::blank_spec>> yardage_pieces(const muslin::solution &solution, muslin::id fabric,
                                                              const muslin::yardage_spec &spec = {})
{
    std::vector<muslin::blank_spec> rows;
    return asking::ask_rows(rows, rows, [&](auto to, muslin_problem *problem) {
        return muslin_yardage_pieces(solution.get(), detail::in_c(fabric), detail::in_c(&spec), to.rows,
                                     sizeof(muslin::blank_spec), to.capacity, to.count, problem);
    });
}

} // namespace MUSLIN_CPP_FORM

} // namespace muslin

#endif
