// muslin/fabric.hpp - cloth and pre-cuts: usable width, what to buy, pieces from cloth, stock in hand.
// Written by generate.py from lib/abi/api.json: change that, not this file.
//
// SPDX-License-Identifier: MIT
#ifndef MUSLIN_FABRIC_HPP
#define MUSLIN_FABRIC_HPP

#include <muslin/fabric.h>
#include <muslin/seam.hpp>

namespace muslin {

/** enum muslin_edge */
enum class edge : std::int32_t {
    /** cut straight */
    straight = MUSLIN_EDGE_STRAIGHT,
    /** zigzag edges, the stated size measured from tip to tip */
    pinked_tips = MUSLIN_EDGE_PINKED_TIPS,
    /** ... from valley to valley */
    pinked_valleys = MUSLIN_EDGE_PINKED_VALLEYS,
};

/** enum muslin_care */
enum class care : std::int32_t {
    unwashed = MUSLIN_CARE_UNWASHED,
    washed = MUSLIN_CARE_WASHED,
};

/** enum muslin_print */
enum class print : std::int32_t {
    /** looks the same in every direction */
    none = MUSLIN_PRINT_NONE,
    /** upright or upside down alike, along the cloth */
    two_way = MUSLIN_PRINT_TWO_WAY,
    /** has a top, along the cloth */
    one_way = MUSLIN_PRINT_ONE_WAY,
    /** stripes that run with the selvage */
    stripe_along = MUSLIN_PRINT_STRIPE_ALONG,
    /** stripes that run from selvage to selvage */
    stripe_across = MUSLIN_PRINT_STRIPE_ACROSS,
};

/** enum muslin_stock_kind */
enum class stock_kind : std::int32_t {
    yardage = MUSLIN_STOCK_YARDAGE,
    strip = MUSLIN_STOCK_STRIP,
    square = MUSLIN_STOCK_SQUARE,
    fat_quarter = MUSLIN_STOCK_FAT_QUARTER,
    fat_eighth = MUSLIN_STOCK_FAT_EIGHTH,
};

/** struct muslin_purchase_spec. */
struct MUSLIN_CPP_TWIN purchase_spec {
    using c_type = muslin_purchase_spec;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** length of cloth that must be there in the end */
    muslin::length needed{};
    /** fixed extra, added last */
    muslin::length extra{};
    /** what the shop sells in, 1 or more: 1/8 yd 36576, 1/4 yd 73152, 1/3 yd 97536, 10 cm 32000, 25 cm 80000 */
    muslin::length step = muslin::length::of_ticks(36576);
    /** ppm lost in the wash, 0 .. 999999: needed / (1 - shrinkage), up */
    std::int32_t shrinkage = 0;
    /** ppm to add for safety, 0 .. 10000000: x (1 + share), up */
    std::int32_t extra_share = 0;
};
static_assert(detail::is_twin<purchase_spec>);

/** struct muslin_purchase. */
struct MUSLIN_CPP_TWIN purchase {
    using c_type = muslin_purchase;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** as asked */
    muslin::length needed{};
    /** what shrinks to `needed`, up to a tick */
    muslin::length unshrunk{};
    /** unshrunk plus the share, up to a tick, plus the fixed extra: the least to buy */
    muslin::length with_extra{};
    /** with_extra up to the step */
    muslin::length bought{};
    /** bought / step */
    std::int64_t steps = 0;
    /** bought - with_extra: so much more could be wished for at the same price */
    muslin::length spare{};
    /** with_extra less this much, the least, would save a step; 0 if nothing is bought */
    muslin::length less_by{};
};
static_assert(detail::is_twin<purchase>);

/** struct muslin_cloth_spec. */
struct MUSLIN_CPP_TWIN cloth_spec {
    using c_type = muslin_cloth_spec;

    static constexpr std::uint32_t may_turn = MUSLIN_CLOTH_MAY_TURN;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** usable width of the cloth or pre-cut */
    muslin::length width = muslin::length::of_ticks(325120);
    /** its length */
    muslin::length length = muslin::length::of_ticks(292608);
    /** cut size across the cloth, 1 or more */
    muslin::length piece_width{};
    /** cut size along it, 1 or more */
    muslin::length piece_length{};
    /** taken off the width once, for straightening */
    muslin::length loss_across{};
    /** taken off the length once */
    muslin::length loss_along{};
};
static_assert(detail::is_twin<cloth_spec>);

/** struct muslin_cloth_pieces. */
struct MUSLIN_CPP_TWIN cloth_pieces {
    using c_type = muslin_cloth_pieces;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** pieces side by side */
    std::int64_t across = 0;
    /** rows of them */
    std::int64_t along = 0;
    /** across x along */
    std::int64_t pieces = 0;
    /** 1 when the pieces lie turned a quarter; a tie is not turned */
    muslin::truth turned{};
    /** warning::no_slack when there are pieces and one of the two slacks is 0 */
    std::uint32_t warnings = 0;
    /** cloth left over beside the columns, after the loss; 0 when the loss eats it all */
    muslin::length left_across{};
    /** ... and behind the rows */
    muslin::length left_along{};
    /** the cloth may be this much narrower before a column of pieces is lost */
    muslin::length narrower_by{};
    /** ... and this much shorter before a row is lost; both are 0 when there is no piece */
    muslin::length shorter_by{};
    /** this much wider and one more column fits */
    muslin::length wider_for_one{};
    /** this much longer and one more row fits */
    muslin::length longer_for_one{};
};
static_assert(detail::is_twin<cloth_pieces>);

/** struct muslin_strips_spec. */
struct MUSLIN_CPP_TWIN strips_spec {
    using c_type = muslin_strips_spec;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** pieces wanted */
    std::int64_t pieces = 0;
    /** cut size along the strip, 1 or more */
    muslin::length piece_across{};
    /** cut width of the strip, 1 or more */
    muslin::length strip_cut{};
    /** length of one strip across the cloth */
    muslin::length usable_width = muslin::length::of_ticks(325120);
    /** taken off each strip for squaring its ends */
    muslin::length end_loss{};
    /** taken off the cloth once */
    muslin::length straightening{};
};
static_assert(detail::is_twin<strips_spec>);

/** struct muslin_strips. */
struct MUSLIN_CPP_TWIN strips {
    using c_type = muslin_strips;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** pieces, down */
    std::int64_t per_strip = 0;
    /** up */
    std::int64_t strips = 0;
    /** that the last strip could still give */
    std::int64_t spare_pieces = 0;
    /** cloth for them: strips x strip_cut + straightening */
    muslin::length length{};
    /** left over at the end of a full strip, after the end loss */
    muslin::length left_per_strip{};
    /** the cloth may be this much narrower before a strip gives one piece less */
    muslin::length narrower_by{};
    /** this much wider and each strip gives one more */
    muslin::length wider_for_one{};
    /** warning::no_slack when narrower_by is 0 */
    std::uint32_t warnings = 0;
    std::int32_t pad = 0;
};
static_assert(detail::is_twin<strips>);

/** struct muslin_stock_spec. One kind of cloth in hand: `count` pieces of width x length. A spec and a row at once. */
struct MUSLIN_CPP_TWIN stock_spec {
    using c_type = muslin_stock_spec;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** across, 1 or more: the longer side of a strip (its usable length), 20 .. 22 in of a fat quarter */
    muslin::length width = muslin::length::of_ticks(325120);
    /** along, 1 or more: the cut width of a strip, 18 in of a fat quarter */
    muslin::length length = muslin::length::of_ticks(20320);
    /** pieces */
    std::int64_t count = 1;
    /** tip to valley, on one edge; must be 0 for straight edges */
    muslin::length pink_depth{};
    /** enum edge */
    muslin::edge edge = muslin::edge::straight;
    /** enum care */
    muslin::care care = muslin::care::unwashed;
    /** enum print */
    muslin::print print = muslin::print::none;
    /** enum stock_kind */
    muslin::stock_kind kind = muslin::stock_kind::strip;
};
static_assert(detail::is_twin<stock_spec>);

/** struct muslin_stock_yield. */
struct MUSLIN_CPP_TWIN stock_yield {
    using c_type = muslin_stock_yield;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** strips that one piece of stock gives */
    std::int64_t per_piece = 0;
    /** strips that the whole stock gives */
    std::int64_t in_hand = 0;
    /** pieces of stock for the strips wanted, up */
    std::int64_t pieces_needed = 0;
    /** of those, not in hand */
    std::int64_t pieces_missing = 0;
    /** length of each strip */
    muslin::length strip_length{};
    /** of each piece, beside the strips */
    muslin::length left_over{};
    /** the piece may be this much shorter before a strip is lost */
    muslin::length shorter_by{};
    /** warning::no_slack when shorter_by is 0 */
    std::uint32_t warnings = 0;
    std::int32_t pad = 0;
};
static_assert(detail::is_twin<stock_yield>);

/** What stock_size() answers. */
struct stock_size_answer {
    muslin::length width{};
    muslin::length length{};
};

inline namespace MUSLIN_CPP_FORM {

/** Usable width from the labelled width (1 .. MUSLIN_SIZE_MAX): (labelled - 2 x selvage) x (1 - shrinkage), down to
 * a tick. shrinkage 0 .. 999999 ppm. status::range for `selvage` also when two of them leave nothing. Source: ISO
 * 5077 for what shrinkage is a share of (the size before washing); geometry.
 * muslin_fabric_usable_width() in muslin/fabric.h. Since 1.0. */
inline answer<muslin::length> fabric_usable_width(muslin::length labelled, muslin::length selvage,
                                                  std::int32_t shrinkage)
{
    muslin::length out{};
    return asking::ask(out, [&](muslin_problem *problem) {
        return muslin_fabric_usable_width(detail::in_c(labelled), detail::in_c(selvage), shrinkage, detail::in_c(&out),
                                          problem);
    });
}

/** From a length needed to a length bought. Shrinkage divides by 1 - p, it does not multiply by 1 + p. Source:
 * Mathematically challenged: 80 x 56 backing (public forum) for the step; geometry for the shrinkage.
 * muslin_fabric_purchase() in muslin/fabric.h. Since 1.0. */
inline answer<muslin::purchase> fabric_purchase(const muslin::purchase_spec &spec = {})
{
    muslin::purchase out;
    return asking::ask(out, [&](muslin_problem *problem) {
        return muslin_fabric_purchase(detail::in_c(&spec), detail::in_c(&out), problem);
    });
}

/** How many pieces a cloth gives in a plain grid: floor(width / a) x floor(length / b), losses taken off first.
 * Published charts mix widths; width and losses are inputs here. Zero pieces is an answer, not an error, also when
 * the losses eat the cloth. With MUSLIN_CLOTH_MAY_TURN the slacks are those of the way reported: beyond them the
 * other way may still give as many. In the problem, piece_width and piece_length are argument::cut with `at` 0 and
 * 1, the losses argument::end_loss with `at` 0 and 1. Source: Number of squares from a fat quarter; geometry.
 * muslin_fabric_pieces() in muslin/fabric.h. Since 1.0. */
inline answer<muslin::cloth_pieces> fabric_pieces(const muslin::cloth_spec &spec = {})
{
    muslin::cloth_pieces out;
    return asking::ask(out, [&](muslin_problem *problem) {
        return muslin_fabric_pieces(detail::in_c(&spec), detail::in_c(&out), problem);
    });
}

/** Pieces wanted -> strips across the width -> length of cloth. status::no_yield when a strip gives no piece (the
 * problem names the usable width and the least that would do). In the problem, piece_across is argument::cut,
 * end_loss and straightening are argument::end_loss with `at` 0 and 1. Source: 52 4-inch and 20 3-inch squares
 * (public forum).
 * muslin_fabric_strips() in muslin/fabric.h. Since 1.0. */
inline answer<muslin::strips> fabric_strips(const muslin::strips_spec &spec = {})
{
    muslin::strips out;
    return asking::ask(out, [&](muslin_problem *problem) {
        return muslin_fabric_strips(detail::in_c(&spec), detail::in_c(&out), problem);
    });
}

/** The least length of cloth whose area is `area` (doubled square ticks, 0 .. MUSLIN_LENGTH_MAX) at this usable
 * width (1 .. MUSLIN_SIZE_MAX): area / (2 x width), up to a tick. A lower bound only, since it ignores how pieces
 * lie. Source: fall block swap question (public forum), area over width.
 * muslin_fabric_area_bound() in muslin/fabric.h. Since 1.0. */
inline answer<muslin::length> fabric_area_bound(std::int64_t area, muslin::length usable_width)
{
    muslin::length out{};
    return asking::ask(out, [&](muslin_problem *problem) {
        return muslin_fabric_area_bound(area, detail::in_c(usable_width), detail::in_c(&out), problem);
    });
}

/** The size that the arithmetic must use when one lines up the tips (align edge::pinked_tips) or the valleys
 * (edge::pinked_valleys) throughout: a pinked size measured at the other point changes by two depths each way, one
 * for each of two edges; a straight edge changes nothing. Either output may be null. status::range for pink_depth
 * when nothing is left; status::choice for another align. Source: geometry.
 * muslin_stock_size() in muslin/fabric.h. Since 1.0. */
inline answer<muslin::stock_size_answer> stock_size(const muslin::stock_spec &stock, muslin::edge align)
{
    muslin::stock_size_answer answer;
    return asking::ask(answer, [&](muslin_problem *problem) {
        return muslin_stock_size(detail::in_c(&stock), detail::in_c(align), detail::in_c(&answer.width),
                                 detail::in_c(&answer.length), problem);
    });
}

/** Strips of cut width strip_cut (1 or more) from stock, cut across its width (each strip as long as the stock is
 * wide). The stated width and length are used as they are: to line up the other point of pinked edges, state what
 * stock_size gives. status::no_yield when a piece gives none (the problem names its length and the least that
 * would do). Source: Fat quarter conversion (public forum).
 * muslin_stock_strips() in muslin/fabric.h. Since 1.0. */
inline answer<muslin::stock_yield> stock_strips(const muslin::stock_spec &stock, muslin::length strip_cut,
                                                std::int64_t strips_wanted)
{
    muslin::stock_yield out;
    return asking::ask(out, [&](muslin_problem *problem) {
        return muslin_stock_strips(detail::in_c(&stock), detail::in_c(strip_cut), strips_wanted, detail::in_c(&out),
                                   problem);
    });
}

/** What to say when these fabrics meet in one top: a sum of enum warning bits. MIXED_WASH: some are washed, some
 * are not. PRECUT_WASHED: a strip or a square is washed. MIXED_EDGES: they do not all have the same kind of edge.
 * Every row speaks, whatever its count. Rows are stock_spec at stride row_size (at least the first published size,
 * at most 4096, and no row's own size above it: else status::struct_size); the first bad row fails the call and is
 * the problem's `at`. n = 0 gives 0, and rows may then be null. One pass. Common practice, no source.
 * muslin_stock_check() in muslin/fabric.h. Since 1.0. */
inline answer<std::uint32_t> stock_check(muslin::span<const muslin::stock_spec> rows)
{
    std::uint32_t warnings = 0;
    return asking::ask(warnings, [&](muslin_problem *problem) {
        return muslin_stock_check(detail::in_c(rows.data()), sizeof(muslin::stock_spec), rows.size(), &warnings,
                                  problem);
    });
}

/** allowed becomes 1 when a piece of this print may lie turned by so many quarter turns (0 .. 3, else
 * status::range) without showing it, else 0: without direction any; two-way and stripes a half turn; one-way no
 * turn. Source: geometry.
 * muslin_print_may_turn() in muslin/fabric.h. Since 1.0. */
inline answer<muslin::truth> print_may_turn(muslin::print print, std::int32_t quarter_turns)
{
    muslin::truth allowed{};
    return asking::ask(allowed, [&](muslin_problem *problem) {
        return muslin_print_may_turn(detail::in_c(print), quarter_turns, detail::in_c(&allowed), problem);
    });
}

} // namespace MUSLIN_CPP_FORM

} // namespace muslin

#endif
