// muslin/cutlist.hpp - a list of pieces, and the cloth it takes: yardage, fat quarters, bundles.
// Written by generate.py from lib/abi/api.json: change that, not this file.
//
// SPDX-License-Identifier: MIT
#ifndef MUSLIN_CUTLIST_HPP
#define MUSLIN_CUTLIST_HPP

#include <muslin/cutlist.h>
#include <muslin/stripset.hpp>

namespace muslin {

/** struct muslin_cutlist_piece_spec. Pieces of one size and one fabric; a row of a list. */
struct MUSLIN_CPP_TWIN cutlist_piece_spec {
    using c_type = muslin_cutlist_piece_spec;

    static constexpr std::uint32_t may_turn = MUSLIN_CUTLIST_PIECE_MAY_TURN;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** across the cloth, 1 or more */
    muslin::length cut_width{};
    /** along it, 1 or more */
    muslin::length cut_length{};
    /** wanted */
    std::int64_t count = 1;
};
static_assert(detail::is_twin<cutlist_piece_spec>);

/** struct muslin_cutlist_row. How one row is cut. */
struct MUSLIN_CPP_TWIN cutlist_row {
    using c_type = muslin_cutlist_row;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** wanted, of all lists that are cut together */
    std::int64_t pieces = 0;
    /** pieces / per_strip, up */
    std::int64_t strips = 0;
    /** pieces from one strip, down */
    std::int64_t per_strip = 0;
    /** that the last strip could still give */
    std::int64_t spare_pieces = 0;
    /** cut width of each strip, along the cloth */
    muslin::length strip_cut{};
    /** what is cut off the strip for each piece, across the cloth */
    muslin::length piece_cut{};
    /** of cloth: strips x strip_cut */
    muslin::length strips_length{};
    /** the piece of stock, from 1, that gives the first strip; 0 from yardage or for none */
    std::int64_t first_stock = 0;
    /** ... and the last strip */
    std::int64_t last_stock = 0;
    /** 1 when the pieces lie turned a quarter */
    muslin::truth turned{};
    /** 1 when the strips must be cut from the stock; 0 when a piece of stock is as narrow as the strip already,
     * from yardage, or without a strip */
    muslin::truth trimmed{};
};
static_assert(detail::is_twin<cutlist_row>);

/** struct muslin_cutlist_spec. */
struct MUSLIN_CPP_TWIN cutlist_spec {
    using c_type = muslin_cutlist_spec;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** length of a strip across the cloth, 1 or more */
    muslin::length usable_width = muslin::length::of_ticks(325120);
    /** taken off each strip for squaring its ends */
    muslin::length end_loss{};
    /** taken off the cloth once */
    muslin::length straightening{};
    /** enum print */
    muslin::print print = muslin::print::none;
    std::int32_t pad = 0;
};
static_assert(detail::is_twin<cutlist_spec>);

/** struct muslin_cutlist_yardage. */
struct MUSLIN_CPP_TWIN cutlist_yardage {
    using c_type = muslin_cutlist_yardage;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** of the whole list */
    std::int64_t pieces = 0;
    /** of all rows */
    std::int64_t strips = 0;
    /** that the last strips of all rows could still give */
    std::int64_t spare_pieces = 0;
    /** the strips one behind the other, plus straightening */
    muslin::length cloth_length{};
    /** a bound only: the pieces' area over the usable width, up to a tick; no plan needs less, and hardly any gets
     * by with it */
    muslin::length area_bound{};
    /** the narrowest usable width at which cloth_length is the same */
    muslin::length narrowest_width{};
    /** usable_width - narrowest_width */
    muslin::length narrower_by{};
    /** ... at which also the rows lie alike and take as many strips */
    muslin::length narrowest_as_cut{};
    /** this much wider, the least, and cloth_length is less; 0 when no width saves any */
    muslin::length wider_for_less{};
    /** so much less it then is; how it is cut then, the call below says for that width */
    muslin::length wider_saves{};
    /** warning::no_slack when a piece is wanted and narrower_by is 0 */
    std::uint32_t warnings = 0;
    /** 1 when the pieces of some row lie turned a quarter */
    muslin::truth turned{};
};
static_assert(detail::is_twin<cutlist_yardage>);

/** struct muslin_cutlist_stock. */
struct MUSLIN_CPP_TWIN cutlist_stock {
    using c_type = muslin_cutlist_stock;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** of the whole list */
    std::int64_t pieces = 0;
    /** cut across the stock */
    std::int64_t strips = 0;
    /** that the last strips of all rows could still give */
    std::int64_t spare_pieces = 0;
    /** pieces of stock; enough, by this plain method */
    std::int64_t stock_needed = 0;
    /** of those, not in hand */
    std::int64_t stock_missing = 0;
    /** in hand and not touched */
    std::int64_t stock_left = 0;
    /** a bound only: the pieces' area over that of a piece of stock, up; no plan needs fewer */
    std::int64_t area_bound = 0;
    /** length of the last piece of stock behind its last strip */
    muslin::length left_over{};
    /** each piece of stock may be this much narrower before one more is needed */
    muslin::length narrower_by{};
    /** ... or this much shorter */
    muslin::length shorter_by{};
    /** this much narrower, and the strips stay as they are, row by row */
    muslin::length as_cut_narrower_by{};
    /** ... or this much shorter, the least rest of any piece of stock needed */
    muslin::length as_cut_shorter_by{};
    /** warning::no_slack when a piece is wanted and narrower_by or shorter_by is 0 */
    std::uint32_t warnings = 0;
    /** 1 when some row's strips must be cut from the stock (see cutlist_row) */
    muslin::truth trimmed{};
    /** 1 when the pieces of some row lie turned a quarter */
    muslin::truth turned{};
    std::int32_t pad = 0;
    /** that left_over could still give, cut as those of the last row; 0 when that wants none */
    std::int64_t rest_pieces = 0;
};
static_assert(detail::is_twin<cutlist_stock>);

/** struct muslin_cutlist_part. Strips of one row that come from one piece of stock, or from several that are cut
 * alike. */
struct MUSLIN_CPP_TWIN cutlist_part {
    using c_type = muslin_cutlist_part;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** from 0 */
    std::int64_t row = 0;
    /** from each of these pieces of stock */
    std::int64_t strips = 0;
    /** the first of them, from 1 */
    std::int64_t first_stock = 0;
    /** the last; the same when it is one */
    std::int64_t last_stock = 0;
    /** length of the piece of stock that earlier rows have used */
    muslin::length begins_at{};
};
static_assert(detail::is_twin<cutlist_part>);

/** struct muslin_cutlist_lists. */
struct MUSLIN_CPP_TWIN cutlist_lists {
    using c_type = muslin_cutlist_lists;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** whole lists that the stock in hand gives */
    std::int64_t lists = 0;
    /** pieces of stock for them */
    std::int64_t stock_used = 0;
    /** in hand and not touched */
    std::int64_t stock_left = 0;
    /** pieces of stock to add for one list more */
    std::int64_t stock_for_one_more = 0;
    /** length of the last piece of stock used behind its last strip */
    muslin::length left_over{};
    /** each piece of stock may be this much narrower before a list is lost; 0 for none */
    muslin::length narrower_by{};
    /** ... or this much shorter */
    muslin::length shorter_by{};
    /** this much narrower, and the strips for those lists stay as they are */
    muslin::length as_cut_narrower_by{};
    /** ... or this much shorter */
    muslin::length as_cut_shorter_by{};
    /** warning::no_slack when there is a list and narrower_by or shorter_by is 0 */
    std::uint32_t warnings = 0;
    std::int32_t pad = 0;
};
static_assert(detail::is_twin<cutlist_lists>);

/** struct muslin_substitution. */
struct MUSLIN_CPP_TWIN substitution {
    using c_type = muslin_substitution;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** the first row of which not one piece fits, from 0; -1 when all do */
    std::int64_t unfit_row = 0;
    /** pieces of stock; from yardage 0 */
    std::int64_t stock_needed = 0;
    /** of those, not in hand */
    std::int64_t stock_missing = 0;
    /** different fabrics that the list then shows, when each piece of stock needed is taken from another print as
     * long as there is one; from yardage 1; 0 for an empty list */
    std::int64_t fabrics = 0;
    /** pieces of stock of each of them, dealt evenly: at least so many; from yardage 0 */
    std::int64_t per_fabric_least = 0;
    /** ... and at most */
    std::int64_t per_fabric_most = 0;
    /** from yardage: length needed; else 0 */
    muslin::length cloth_length{};
    /** of that, not in hand */
    muslin::length cloth_missing{};
    /** as in cutlist_yardage and cutlist_stock */
    muslin::length narrower_by{};
    /** from yardage: what is in hand beyond cloth_length */
    muslin::length shorter_by{};
    /** that the last strips of all rows could still give */
    std::int64_t spare_pieces = 0;
    /** 1 when every row can be cut from it; else all but unfit_row is 0 */
    muslin::truth possible{};
    /** 1 when what is in hand suffices */
    muslin::truth enough{};
    /** warning::no_slack when a piece is wanted and narrower_by is 0 or, where it is enough or from pieces of
     * stock, shorter_by */
    std::uint32_t warnings = 0;
    /** 1 when the pieces of some row lie turned a quarter */
    muslin::truth turned{};
    /** as in cutlist_stock: of a list of one row, so many more than spare_pieces come from the stock that is
     * needed; from yardage 0 */
    std::int64_t rest_pieces = 0;
};
static_assert(detail::is_twin<substitution>);

inline namespace MUSLIN_CPP_FORM {

/** Length of cloth for the whole list: for each row count / ((usable_width - end_loss) / across) strips as high as
 * the piece is along the cloth, added up. With turning, the way that takes less length. Narrowest and wider width
 * are those of the answer, not of a yield: a strip may give a piece less where the number of strips stays.
 * status::no_yield names argument::usable_width; status::overflow when the cloth would be longer than
 * MUSLIN_LENGTH_MAX. Source: 52 4-inch and 20 3-inch squares (public forum).
 * muslin_cutlist_from_yardage() in muslin/cutlist.h. Since 1.0. */
inline answer<muslin::cutlist_yardage> cutlist_from_yardage(muslin::span<const muslin::cutlist_piece_spec> pieces,
                                                            const muslin::cutlist_spec &spec = {})
{
    muslin::cutlist_yardage out;
    return asking::ask(out, [&](muslin_problem *problem) {
        return muslin_cutlist_from_yardage(detail::in_c(pieces.data()), sizeof(muslin::cutlist_piece_spec),
                                           pieces.size(), detail::in_c(&spec), detail::in_c(&out), problem);
    });
}

/** How each row is cut then (ask-then-fill): n rows in the order of the list. status::buffer when they do not fit;
 * the others as above. Source: Start quilting, lesson two (M. Hohn).
 * muslin_cutlist_yardage_rows() in muslin/cutlist.h. Since 1.0. */
inline answer<std::vector<muslin::cutlist_row>> cutlist_yardage_rows(
    muslin::span<const muslin::cutlist_piece_spec> pieces, const muslin::cutlist_spec &spec = {})
{
    std::vector<muslin::cutlist_row> rows;
    return asking::ask_rows(rows, rows, [&](auto to, muslin_problem *problem) {
        return muslin_cutlist_yardage_rows(detail::in_c(pieces.data()), sizeof(muslin::cutlist_piece_spec),
                                           pieces.size(), detail::in_c(&spec), to.rows, sizeof(muslin::cutlist_row),
                                           to.capacity, to.count, problem);
    });
}

/** The list from pieces of stock of one size: squares, strips of a bundle, fat quarters, or a cloth. Row by row,
 * strips as long as the stock is wide are cut one behind the other; a row goes on in the piece of stock that the
 * row before has left, as long as a strip fits behind; then it takes a new one, and no row goes back. A row lies
 * turned when it then ends earlier: in an earlier piece of stock, or further forward in the same. (That is the
 * best of all ways of turning rows: whoever begins earlier ends earlier.) A strip of a bundle gives the pieces
 * that are as high as the strip is, or lower ones, which the result calls trimmed. The stated width and length are
 * used as they are: to line up the other point of pinked edges, or to square the ends, state what is left.
 * status::no_yield names argument::usable_width or argument::cloth_length, for the piece as it is listed. Source:
 * Cutting up a 10 inch square (teacher's blog) for one size; common practice, no source, for several.
 * muslin_cutlist_from_stock() in muslin/cutlist.h. Since 1.0. */
inline answer<muslin::cutlist_stock> cutlist_from_stock(muslin::span<const muslin::cutlist_piece_spec> pieces,
                                                        const muslin::stock_spec &stock = {})
{
    muslin::cutlist_stock out;
    return asking::ask(out, [&](muslin_problem *problem) {
        return muslin_cutlist_from_stock(detail::in_c(pieces.data()), sizeof(muslin::cutlist_piece_spec), pieces.size(),
                                         detail::in_c(&stock), detail::in_c(&out), problem);
    });
}

/** How each row is cut then (ask-then-fill): n rows in the order of the list. status::buffer when they do not fit;
 * the others as above. Source: as above.
 * muslin_cutlist_stock_rows() in muslin/cutlist.h. Since 1.0. */
inline answer<std::vector<muslin::cutlist_row>> cutlist_stock_rows(
    muslin::span<const muslin::cutlist_piece_spec> pieces, const muslin::stock_spec &stock = {})
{
    std::vector<muslin::cutlist_row> rows;
    return asking::ask_rows(rows, rows, [&](auto to, muslin_problem *problem) {
        return muslin_cutlist_stock_rows(detail::in_c(pieces.data()), sizeof(muslin::cutlist_piece_spec), pieces.size(),
                                         detail::in_c(&stock), to.rows, sizeof(muslin::cutlist_row), to.capacity,
                                         to.count, problem);
    });
}

/** Which strips come from which piece of stock (ask-then-fill), row by row in the order of cutting: none for a row
 * without a strip, at most three for any other: from what the row before has left, from whole pieces of stock, and
 * from the last. status::buffer when they do not fit; the others as above. Source: as above.
 * muslin_cutlist_stock_parts() in muslin/cutlist.h. Since 1.0. */
inline answer<std::vector<muslin::cutlist_part>> cutlist_stock_parts(
    muslin::span<const muslin::cutlist_piece_spec> pieces, const muslin::stock_spec &stock = {})
{
    std::vector<muslin::cutlist_part> rows;
    return asking::ask_rows(rows, rows, [&](auto to, muslin_problem *problem) {
        return muslin_cutlist_stock_parts(detail::in_c(pieces.data()), sizeof(muslin::cutlist_piece_spec),
                                          pieces.size(), detail::in_c(&stock), to.rows, sizeof(muslin::cutlist_part),
                                          to.capacity, to.count, problem);
    });
}

/** How many times the whole list (how many quilts, blocks or kits) comes from stock->count pieces of stock, all
 * rows taken so many times and then cut as in cutlist_from_stock(): row by row, not list by list. No list is an
 * answer, not an error. status::range for the number of pieces also when the list asks for nothing;
 * status::overflow when there are more than MUSLIN_COUNT_MAX lists. Source: geometry.
 * muslin_cutlist_lists_from_stock() in muslin/cutlist.h. Since 1.0. */
inline answer<muslin::cutlist_lists> cutlist_lists_from_stock(muslin::span<const muslin::cutlist_piece_spec> pieces,
                                                              const muslin::stock_spec &stock = {})
{
    muslin::cutlist_lists out;
    return asking::ask(out, [&](muslin_problem *problem) {
        return muslin_cutlist_lists_from_stock(detail::in_c(pieces.data()), sizeof(muslin::cutlist_piece_spec),
                                               pieces.size(), detail::in_c(&stock), detail::in_c(&out), problem);
    });
}

/** How each row is cut for all those lists together (ask-then-fill): n rows in the order of the list; a row may lie
 * another way than for one list. status::buffer when they do not fit; the others as above. Source: geometry.
 * muslin_cutlist_lists_rows() in muslin/cutlist.h. Since 1.0. */
inline answer<std::vector<muslin::cutlist_row>> cutlist_lists_rows(
    muslin::span<const muslin::cutlist_piece_spec> pieces, const muslin::stock_spec &stock = {})
{
    std::vector<muslin::cutlist_row> rows;
    return asking::ask_rows(rows, rows, [&](auto to, muslin_problem *problem) {
        return muslin_cutlist_lists_rows(detail::in_c(pieces.data()), sizeof(muslin::cutlist_piece_spec), pieces.size(),
                                         detail::in_c(&stock), to.rows, sizeof(muslin::cutlist_row), to.capacity,
                                         to.count, problem);
    });
}

/** The same list from something else: call it for each kind of stock at hand or in question, and compare; which is
 * better is the caller's to say. `prints` is the number of different fabrics in the stock (1 .. MUSLIN_COUNT_MAX):
 * of a bundle or a set of fat quarters; for stock_kind::yardage it must be 1, and the answer is a length, worked
 * as in cutlist_from_yardage() with nothing lost, against count x length in hand. Other kinds are worked as in
 * cutlist_from_stock(). Stock that is missing is taken to be of the same prints. A row that does not fit is an
 * answer, not an error; whether it would fit turned, or turning saves, is known by asking once more with
 * MUSLIN_CUTLIST_PIECE_MAY_TURN in its flags. status::overflow as with yardage. Source: geometry.
 * muslin_cutlist_substitute() in muslin/cutlist.h. Since 1.0. */
inline answer<muslin::substitution> cutlist_substitute(muslin::span<const muslin::cutlist_piece_spec> pieces,
                                                       const muslin::stock_spec &stock, std::int64_t prints)
{
    muslin::substitution out;
    return asking::ask(out, [&](muslin_problem *problem) {
        return muslin_cutlist_substitute(detail::in_c(pieces.data()), sizeof(muslin::cutlist_piece_spec), pieces.size(),
                                         detail::in_c(&stock), prints, detail::in_c(&out), problem);
    });
}

} // namespace MUSLIN_CPP_FORM

} // namespace muslin

#endif
