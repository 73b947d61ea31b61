// muslin/cutplan.hpp - how to cut a list of pieces from the least cloth, and a bound that proves how little that is.
// Written by generate.py from lib/abi/api.json: change that, not this file.
//
// SPDX-License-Identifier: MIT
#ifndef MUSLIN_CUTPLAN_HPP
#define MUSLIN_CUTPLAN_HPP

#include <muslin/cutplan.h>
#include <muslin/scatter.hpp>

namespace muslin {

/** enum muslin_blank_kind */
enum class blank_kind : std::int32_t {
    /** a rectangle */
    piece = MUSLIN_BLANK_PIECE,
    /** a rectangle, its cut_length along the cloth: a border, slit from a panel */
    lengthwise = MUSLIN_BLANK_LENGTHWISE,
    /** a strip cut_length high and cut_width long in all, pieced from strips across the cloth: binding, pieced
     * borders, long sashes */
    joined = MUSLIN_BLANK_JOINED,
    /** cut one beside the other from a strip just cut_length high, every second one upside down or all alike: each
     * takes cut_width of the strip, the first run_in more. 60 degree triangles, diamonds, wedges, half-hexagons */
    sloped = MUSLIN_BLANK_SLOPED,
};

/** enum muslin_cutplan_stopped */
enum class cutplan_stopped : std::int32_t {
    /** it came to its end: proven */
    done = MUSLIN_CUTPLAN_STOPPED_DONE,
    /** the progress call ended it */
    progress = MUSLIN_CUTPLAN_STOPPED_PROGRESS,
    /** the work limit: a higher one may give a better plan or a proof */
    work = MUSLIN_CUTPLAN_STOPPED_WORK,
    /** no memory for more, or the room that the search keeps to is full; fewer sizes at a time, or sizes in coarser
     * steps, take less */
    memory = MUSLIN_CUTPLAN_STOPPED_MEMORY,
    /** more sizes, or kinds of stock, than are searched: only first plans were made */
    sizes = MUSLIN_CUTPLAN_STOPPED_SIZES,
    /** it knows no more to do for plan or bound: a higher limit changes nothing */
    no_more = MUSLIN_CUTPLAN_STOPPED_NO_MORE,
};

/** enum muslin_cutplan_strip_kind */
enum class cutplan_strip_kind : std::int32_t {
    /** right across the bolt */
    strip = MUSLIN_CUTPLAN_STRIP_STRIP,
    /** a length of the bolt, as high as its longest slit piece */
    panel = MUSLIN_CUTPLAN_STRIP_PANEL,
    /** the pieces slit from a panel, side by side at its left edge */
    slit = MUSLIN_CUTPLAN_STRIP_SLIT,
    /** a piece of stock */
    stock = MUSLIN_CUTPLAN_STRIP_STOCK,
    /** a strip across the rest of a panel, or of a piece of stock */
    within = MUSLIN_CUTPLAN_STRIP_WITHIN,
};

/** enum muslin_cutplan_fault */
enum class cutplan_fault : std::int32_t {
    /** all is well */
    none = MUSLIN_CUTPLAN_FAULT_NONE,
    /** fewer pieces of a size than are wanted */
    missing = MUSLIN_CUTPLAN_FAULT_MISSING,
    /** a strip holds more than its room, or pieces overlap */
    overfull = MUSLIN_CUTPLAN_FAULT_OVERFULL,
    /** a piece is higher than its strip, or lies as it may not */
    too_high = MUSLIN_CUTPLAN_FAULT_TOO_HIGH,
    /** the cost is not what the strips add up to */
    cost = MUSLIN_CUTPLAN_FAULT_COST,
    /** two cases do not make up the one that they split */
    gap = MUSLIN_CUTPLAN_FAULT_GAP,
    /** worths do not prove what they are said to prove */
    bound = MUSLIN_CUTPLAN_FAULT_BOUND,
    /** more pieces of stock than there are */
    stock = MUSLIN_CUTPLAN_FAULT_STOCK,
};

/** struct muslin_blank_spec. these pieces may lie turned a quarter where the cloth has no direction */
struct MUSLIN_CPP_TWIN blank_spec {
    using c_type = muslin_blank_spec;

    static constexpr std::uint32_t may_turn = MUSLIN_BLANK_MAY_TURN;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** across the cloth, 1 or more; SLOPED: the pitch; JOINED: the length in all, of each */
    muslin::length cut_width{};
    /** along it, 1 or more: the height of strip that it needs */
    muslin::length cut_length{};
    /** 0 .. MUSLIN_CUTPLAN_COUNT_MAX; 0 asks for nothing and is never too large */
    std::int64_t count = 1;
    /** SLOPED: taken once in a strip besides; else 0 */
    muslin::length run_in{};
    /** JOINED: what each join takes of the length, 2 s when straight; below the length of a whole strip; else 0 */
    muslin::length join_loss{};
    /** the caller's own, given back; it does not matter to the plan */
    std::int64_t label = 0;
    /** enum blank_kind */
    muslin::blank_kind kind = muslin::blank_kind::piece;
    /** with MUSLIN_CUTPLAN_BY_PRIORITY: lower ones first; 0 .. 1000 */
    std::int32_t priority = 0;
    /** JOINED: strips of it may come from what is left over beside others, each at least this long; 0: only whole
     * strips and one shorter one; else 0. Many sewers take 10 to 12 in */
    muslin::length least_part{};
};
static_assert(detail::is_twin<blank_spec>);

/** struct muslin_cutplan_stock_spec. */
struct MUSLIN_CPP_TWIN cutplan_stock_spec {
    using c_type = muslin_cutplan_stock_spec;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** usable, across the cloth, 1 or more */
    muslin::length width = muslin::length::of_ticks(170688);
    /** along it, 1 or more */
    muslin::length length = muslin::length::of_ticks(146304);
    /** how many there are; MUSLIN_COUNT_MAX: any number */
    std::int64_t count = 2147483647;
    /** of each, in any unit, 1 .. MUSLIN_COUNT_MAX: money, area, or 1 to use the fewest */
    std::int64_t cost = 1;
    /** the caller's own, given back */
    std::int64_t label = 0;
};
static_assert(detail::is_twin<cutplan_stock_spec>);

/** struct muslin_cutplan_spec. from stock: what it does not suffice for is left out: rows in turn, by priority,
 * then from the highest pieces down, each get as many pieces as a plan is found for beside the rows before; what a
 * large piece leaves, later ones may still use */
struct MUSLIN_CPP_TWIN cutplan_spec {
    using c_type = muslin_cutplan_spec;

    static constexpr std::uint32_t no_panels = MUSLIN_CUTPLAN_NO_PANELS;
    static constexpr std::uint32_t one_height = MUSLIN_CUTPLAN_ONE_HEIGHT;
    static constexpr std::uint32_t own_strips = MUSLIN_CUTPLAN_OWN_STRIPS;
    static constexpr std::uint32_t stacked = MUSLIN_CUTPLAN_STACKED;
    static constexpr std::uint32_t first_cut_across = MUSLIN_CUTPLAN_FIRST_CUT_ACROSS;
    static constexpr std::uint32_t folded = MUSLIN_CUTPLAN_FOLDED;
    static constexpr std::uint32_t by_priority = MUSLIN_CUTPLAN_BY_PRIORITY;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** of the bolt, without selvages, 1 or more; with stock 0 */
    muslin::length usable_width = muslin::length::of_ticks(325120);
    /** taken off each strip for squaring its ends: half at its left end, down, the rest at its right one */
    muslin::length end_loss{};
    /** a strip's cut end is squared again after resquare_every cuts, and loses this: spread over those cuts, each
     * piece takes resquare_loss / resquare_every more, up; strips of JOINED pieces are not cross-cut and take no
     * more */
    muslin::length resquare_loss{};
    /** 1 or more with a loss, else 0 */
    std::int64_t resquare_every = 0;
    /** taken off the bolt, or the length of each piece of stock, once */
    muslin::length straightening{};
    /** more pieces of each size than all rows of it want; none of JOINED ones */
    std::int64_t spare_pieces = 0;
    /** steps of the search, 0 .. 2^40; a desk computer takes 200 to 300 million a second. 0: only first plans */
    std::int64_t work_limit = 400000000;
    /** enum print: with a direction no piece is turned */
    muslin::print print = muslin::print::none;
    std::int32_t pad = 0;
};
static_assert(detail::is_twin<cutplan_spec>);

/** struct muslin_cutplan_total. */
struct MUSLIN_CPP_TWIN cutplan_total {
    using c_type = muslin_cutplan_total;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** cut in all, those wanted and those spare; of JOINED each strip counts; of FOLDED cloth one that is too many,
     * too */
    std::int64_t pieces = 0;
    /** with MUSLIN_CUTPLAN_BY_PRIORITY: pieces left out */
    std::int64_t missing = 0;
    /** cut right across, panels among them, those within panels and stock too */
    std::int64_t strips = 0;
    /** of those, panels */
    std::int64_t panels = 0;
    /** different strip heights */
    std::int64_t heights = 0;
    /** right across, slits, left ends squared, cross-cuts and trims; an edge that is there already is none, nor is
     * straightening */
    std::int64_t cuts = 0;
    /** of the bolt: strips and panels, and straightening; 0 from stock, or of nothing */
    muslin::length cloth_length{};
    /** of the stock; from a bolt the cloth length without straightening */
    std::int64_t cost = 0;
    /** the bound: no plan of this kind costs less, JOINED pieces being cut in the lengths of cutplan::sizes() */
    std::int64_t least = 0;
    /** pieces of stock that are cut into; 0 from a bolt */
    std::int64_t stock_pieces = 0;
    /** doubled square ticks of the cloth that is used up or cut into that become no piece: trims, losses and what
     * is left over; spare pieces, one too many and what joins take of JOINED strips count as pieces */
    std::int64_t waste = 0;
    /** of a bolt: when each size has its own strips, all its pieces lying alike, the way that takes less; JOINED
     * ones in whole strips and one shorter one; straightening included; else 0 */
    muslin::length own_strips_length{};
    /** of a bolt: the pieces' area over its width, up: a plain bound, whatever the lengths of JOINED strips; else 0 */
    muslin::length area_bound{};
    /** steps taken */
    std::int64_t work = 0;
    /** of the proof */
    std::int64_t cases = 0;
    /** 1 when cost = least */
    muslin::truth proven{};
    /** enum cutplan_stopped */
    muslin::cutplan_stopped stopped{};
    /** 1: strips of JOINED pieces might have other lengths, with which a plan might cost less than least: some have
     * a least_part that is heeded */
    muslin::truth other_lengths{};
    std::int32_t pad = 0;
};
static_assert(detail::is_twin<cutplan_total>);

/** struct muslin_cutplan_strip. */
struct MUSLIN_CPP_TWIN cutplan_strip {
    using c_type = muslin_cutplan_strip;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** so many alike, one behind the other; of SLIT and WITHIN: in each of its holder */
    std::int64_t times = 0;
    /** SLIT and WITHIN: the row of the panel or piece of stock; else -1 */
    std::int64_t holder = 0;
    /** STOCK: the row of the request; else -1 */
    std::int64_t stock = 0;
    /** its pieces: rows of cutplan::places() */
    std::int64_t first_place = 0;
    /** how many */
    std::int64_t places = 0;
    /** lower left corner of the first: from the left selvage (FOLDED: that of both layers) or the holder's left
     * edge, */
    muslin::length x{};
    /** and from the straightened end of the bolt or the holder's lower edge; STOCK: 0 */
    muslin::length y{};
    /** along the strip, before end_loss: of a bolt, of its half when FOLDED, of the stock; SLIT: up to the last
     * slit; beside it what is left */
    muslin::length width{};
    /** how far along the cloth it goes */
    muslin::length height{};
    /** of the width, by its pieces */
    muslin::length used{};
    /** enum cutplan_strip_kind */
    muslin::cutplan_strip_kind kind{};
    /** 1 when first cuts run along the length of this piece of stock: its width here is its length, less
     * straightening, and its height is its width */
    muslin::truth turned{};
};
static_assert(detail::is_twin<cutplan_strip>);

/** struct muslin_cutplan_place. */
struct MUSLIN_CPP_TWIN cutplan_place {
    using c_type = muslin_cutplan_place;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** row of the request; of FOLDED cloth that of the upper piece: where the row wants only one more, the lower
     * one is for the next row of this size */
    std::int64_t piece = 0;
    /** row of cutplan::strips() */
    std::int64_t strip = 0;
    /** so many side by side; FOLDED: in each layer */
    std::int64_t count = 0;
    /** left edge of the first, from the strip's left end: of the first place half of end_loss, 0 beside slit pieces */
    muslin::length x{};
    /** lower edge, from the strip's: 0, or what lies below in a stack */
    muslin::length y{};
    /** cut, as it lies; SLOPED: from its left corner to its right one, run-in and pitch; JOINED and FOLDED: that of
     * the strip, which may go round the fold */
    muslin::length width{};
    muslin::length height{};
    /** from one to the next: the width, of SLOPED pieces the pitch, and the squaring share */
    muslin::length pitch{};
    /** 1: turned a quarter in its strip from what its row says */
    muslin::truth turned{};
    /** 1: the strip is higher, one more cut */
    muslin::truth trimmed{};
};
static_assert(detail::is_twin<cutplan_place>);

/** struct muslin_cutplan_blank. */
struct MUSLIN_CPP_TWIN cutplan_blank {
    using c_type = muslin_cutplan_blank;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** row of the request */
    std::int64_t piece = 0;
    /** row of cutplan::places() */
    std::int64_t place = 0;
    /** row of cutplan::strips() */
    std::int64_t strip = 0;
    /** row of the request, -1: from the bolt */
    std::int64_t stock = 0;
    /** which piece of stock of all that are used, from 0; of the bolt 0 */
    std::int64_t sheet = 0;
    /** lower left corner: from the left selvage, or the left edge of the piece of stock, */
    muslin::length x{};
    /** and from the straightened end of the bolt or piece of stock */
    muslin::length y{};
    /** across the bolt or piece of stock; SLOPED: from its left corner to its right one, so that neighbours
     * overlap; JOINED and FOLDED: unfolded, it may go round the fold */
    muslin::length width{};
    muslin::length height{};
    /** 1: turned a quarter from what its row says */
    muslin::truth turned{};
    /** 1: its strip is higher */
    muslin::truth trimmed{};
    /** 2: FOLDED, one in each layer; else 1 */
    std::int32_t layers = 0;
    std::int32_t pad = 0;
};
static_assert(detail::is_twin<cutplan_blank>);

/** struct muslin_cutplan_left_over. */
struct MUSLIN_CPP_TWIN cutplan_left_over {
    using c_type = muslin_cutplan_left_over;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** row of cutplan::strips(): the strip that it is the end of, the panel or piece of stock that it is the rest
     * of, the slit pieces that it lies above */
    std::int64_t strip = 0;
    /** so many alike */
    std::int64_t count = 0;
    /** its lower left corner, from that row's */
    muslin::length x{};
    muslin::length y{};
    /** without end_loss; at the fold of FOLDED cloth unfolded, twice as wide */
    muslin::length width{};
    muslin::length height{};
};
static_assert(detail::is_twin<cutplan_left_over>);

/** struct muslin_cutplan_piece. */
struct MUSLIN_CPP_TWIN cutplan_piece {
    using c_type = muslin_cutplan_piece;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** the row's own */
    std::int64_t label = 0;
    /** of its count */
    std::int64_t made = 0;
    /** the rest of it: 0, but with MUSLIN_CUTPLAN_BY_PRIORITY */
    std::int64_t missing = 0;
    /** for it, made or more: with the spare pieces, and of FOLDED cloth the one too many, of its size where it is
     * the last row that gets some; of JOINED strips */
    std::int64_t cut = 0;
};
static_assert(detail::is_twin<cutplan_piece>);

/** struct muslin_cutplan_stock_used. */
struct MUSLIN_CPP_TWIN cutplan_stock_used {
    using c_type = muslin_cutplan_stock_used;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** the row's own */
    std::int64_t label = 0;
    /** pieces of stock that are cut into */
    std::int64_t used = 0;
    /** of those */
    std::int64_t cost = 0;
};
static_assert(detail::is_twin<cutplan_stock_used>);

/** struct muslin_cutplan_width. */
struct MUSLIN_CPP_TWIN cutplan_width {
    using c_type = muslin_cutplan_width;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** of the cloth */
    muslin::length usable_width{};
    /** straightening included; 0 where a piece does not fit */
    muslin::length cloth_length{};
    /** bound, without straightening */
    std::int64_t least = 0;
    /** 1 when the length without straightening is the bound */
    muslin::truth proven{};
    std::int32_t pad = 0;
};
static_assert(detail::is_twin<cutplan_width>);

/** struct muslin_cutplan_size. */
struct MUSLIN_CPP_TWIN cutplan_size {
    using c_type = muslin_cutplan_size;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** the first row of the request that wants it */
    std::int64_t piece = 0;
    /** wanted, spare ones included, of all rows alike; FOLDED: blanks, of two pieces each, or of one where it goes
     * round the fold */
    std::int64_t count = 0;
    /** of a strip: cut width and the squaring share; SLOPED: the pitch. What may lie turned is given with its
     * longer side across */
    muslin::length taken{};
    /** of strip that it needs */
    muslin::length height{};
    /** as in blank_spec */
    muslin::length run_in{};
    /** 1: may lie turned */
    muslin::truth may_turn{};
    /** 1: may be slit from a panel, and is cut from no strip within one */
    muslin::truth slit{};
    /** 1: only in strips of just its height */
    muslin::truth level{};
    std::int32_t pad = 0;
    /** of a strip when turned: the other side and the squaring share; else 0 */
    muslin::length turned_taken{};
    /** then; else 0 */
    muslin::length turned_height{};
};
static_assert(detail::is_twin<cutplan_size>);

/** struct muslin_cutplan_way. */
struct MUSLIN_CPP_TWIN cutplan_way {
    using c_type = muslin_cutplan_way;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** height of a strip, length of a panel, or cost of the stock */
    std::int64_t cost = 0;
    /** row of the request, -1: from the bolt */
    std::int64_t stock = 0;
    /** room along each strip, down to what sizes can add up to */
    muslin::length width{};
    /** of the strip; of a panel or piece of stock room for strips */
    muslin::length height{};
    /** enum cutplan_strip_kind: STRIP, PANEL or STOCK */
    muslin::cutplan_strip_kind kind{};
    /** 1 when first cuts run along the length of the stock */
    muslin::truth turned{};
};
static_assert(detail::is_twin<cutplan_way>);

/** struct muslin_cutplan_case. */
struct MUSLIN_CPP_TWIN cutplan_case {
    using c_type = muslin_cutplan_case;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** row of the case of which this is a part; -1: the whole */
    std::int64_t parent = 0;
    /** rows split and split + 1 are its parts; 0: it is not split */
    std::int64_t split = 0;
    /** row whose worths prove its bound: itself, or one that it is a part of */
    std::int64_t worths = 0;
    /** bound of this case by those, before its parts are looked at */
    std::int64_t least = 0;
    /** what sets this case apart (not of the whole): `wanted` of the ways first_way .. last_way */
    std::int64_t wanted = 0;
    /** rows of cutplan::ways() */
    std::int64_t first_way = 0;
    /** ... up to and with this one */
    std::int64_t last_way = 0;
    /** -1: so many strips, panels or pieces of stock; else so many of this size in them, and first_way = last_way */
    std::int64_t plan_size = 0;
    /** -1, or a way that is one strip: nothing is of this case, because the conditions on the way to it ask for
     * more pieces than fit into as many strips of this way as they allow */
    std::int64_t packed_way = 0;
    /** 1: at least `wanted`, 0: at most */
    muslin::truth at_least{};
    std::int32_t pad = 0;
};
static_assert(detail::is_twin<cutplan_case>);

/** struct muslin_cutplan_worth. */
struct MUSLIN_CPP_TWIN cutplan_worth {
    using c_type = muslin_cutplan_worth;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** the size of which each piece is worth it, -1: not a size */
    std::int64_t plan_size = 0;
    /** ... else the case whose condition is, for each of what it counts; -1: not a case */
    std::int64_t of_case = 0;
    /** ... else the row of stock: each piece used costs so much more, worth being 0 or less */
    std::int64_t stock = 0;
    /** over scale, of the cost; 0 or more of sizes and at_least, 0 or less of at most */
    std::int64_t worth = 0;
};
static_assert(detail::is_twin<cutplan_worth>);

/** struct muslin_cutplan_checked. */
struct MUSLIN_CPP_TWIN cutplan_checked {
    using c_type = muslin_cutplan_checked;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** of the plan, added up anew */
    std::int64_t cost = 0;
    /** the bound, proved anew */
    std::int64_t least = 0;
    /** cases looked at */
    std::int64_t cases = 0;
    /** enum cutplan_fault: what is wrong first */
    muslin::cutplan_fault fault{};
    std::int32_t pad = 0;
    /** the row of sizes, of stock or of cases that is at fault; OVERFULL, TOO_HIGH, COST: which of the strips,
     * pieces laid or things as the search noted them */
    std::int64_t at = 0;
};
static_assert(detail::is_twin<cutplan_checked>);

/** What cutplan::worths() answers. */
struct cutplan_worths_answer {
    std::vector<muslin::cutplan_worth> rows;
    std::int64_t scale = 0;
};

inline namespace MUSLIN_CPP_FORM {

/** struct muslin_cutplan, owned: it is moved, never copied, and given back at its end. */
class cutplan : public handle<muslin_cutplan, muslin_cutplan_free> {
public:
    /** A plan for a list of pieces, n rows of blank_spec, from the bolt (stock_n 0), or from stock_n rows of
     * cutplan_stock_spec. Allocator null: the usual one is not linked in, so status::null. `progress` is told both as
     * `cost` in the totals; when JOINED strips get other lengths the bound begins anew. The plan is valid from the
     * first moments on and gets better until it is proven, the work limit is reached or progress says so; what then is
     * known stands in the totals. Blanks lie in their narrowest way that is not higher than the strip. JOINED pieces
     * become whole strips and one shorter one, from stock as long as its longest room at their height; the one piece
     * of a row with a least_part, from a bolt, gets other lengths where what the plan leaves over, up to 16 strips of
     * that, makes whole ones needless: then a plan is sought for these, and so on while it gets shorter (not with
     * OWN_STRIPS, STACKED or FOLDED). The first search has half of the work limit then, and each one after it part of
     * what is left, one in n + 1 with n such rows. First cuts run along the length of stock only where each piece of
     * the request may lie either way: MAY_TURN, a square, JOINED or SLOPED, and no direction of the print. LENGTHWISE
     * pieces from stock lie in strips as high as they are long. Nothing wanted is a plan of nothing. status::range,
     * status::choice, status::flags: a member outside its range, choices or kind. status::no_yield: a piece is larger
     * than the cloth in each way that it may lie; the problem names the side and the room for it, and in `at` its row,
     * from 0. status::not_enough: the stock in hand does not suffice, and MUSLIN_CUTPLAN_BY_PRIORITY is not set;
     * status::work_limit: no plan from stock was found, and it was not shown that there is none; of both, rows being
     * made from the highest pieces down, the problem says at which row it ends, how many pieces that wants, and for
     * how many of them there is a plan. status::overflow: all pieces one above the other, or each from a piece of the
     * dearest stock, would pass MUSLIN_LENGTH_MAX, or the waste would. status::no_memory. Memory: up to 16 MiB, 8 more
     * where a least_part is heeded, and 2 KiB for each row; time follows the work limit, up to five times that where
     * stock does not suffice: about a hundred looks at parts of the request, each a 32nd of the limit; and half as
     * much again each where up to 16 pieces are dealt out in every way. Source: Gilmore and Gomory 1965 for the bound;
     * Lodi, Martello and Vigo 2004, Bettinelli, Ceselli and Righini 2008 for strips by height.
     * muslin_cutplan_create() in muslin/cutplan.h. Since 1.0. */
    template <class Progress = no_progress>
    static answer<muslin::cutplan> create(const muslin::cutplan_spec &spec,
                                          muslin::span<const muslin::blank_spec> pieces,
                                          muslin::span<const muslin::cutplan_stock_spec> stock = {},
                                          const muslin_allocator &allocator = libc_allocator(),
                                          Progress &&progress = {})
    {
        muslin::cutplan out;
        detail::teller<std::remove_reference_t<Progress>> progress_(progress);
        return asking::ask(out, [&](muslin_problem *problem) {
            return progress_.done(muslin_cutplan_create(detail::in_c(&spec), detail::in_c(pieces.data()),
                                                        sizeof(muslin::blank_spec), pieces.size(),
                                                        detail::in_c(stock.data()), sizeof(muslin::cutplan_stock_spec),
                                                        stock.size(), &allocator,
                                                        progress_.template callback<muslin_progress>(),
                                                        progress_.context(), out.made(), problem));
        });
    }

    /** Length or cost, the bound and counts. Constant time.
     * muslin_cutplan_totals() in muslin/cutplan.h. Since 1.0. */
    answer<muslin::cutplan_total> totals() const
    {
        muslin::cutplan_total out;
        return asking::ask(out, [&](muslin_problem *problem) {
            return muslin_cutplan_totals(get(), detail::in_c(&out), problem);
        });
    }

    /** The strips in the order of cutting: of a bolt panels first, then the highest strips, equal heights together;
     * what a panel or piece of stock holds follows it. Time follows the strips.
     * muslin_cutplan_strips() in muslin/cutplan.h. Since 1.0. */
    answer<std::vector<muslin::cutplan_strip>> strips() const
    {
        std::vector<muslin::cutplan_strip> rows;
        return asking::ask_rows(rows, rows, [&](auto to, muslin_problem *problem) {
            return muslin_cutplan_strips(get(), to.rows, sizeof(muslin::cutplan_strip), to.capacity, to.count, problem);
        });
    }

    /** What each strip holds, from the left, place by place. Pieces that are wanted; what fits besides is left over.
     * Rows that want one size get its pieces one row after the other. Time follows the places.
     * muslin_cutplan_places() in muslin/cutplan.h. Since 1.0. */
    answer<std::vector<muslin::cutplan_place>> places() const
    {
        std::vector<muslin::cutplan_place> rows;
        return asking::ask_rows(rows, rows, [&](auto to, muslin_problem *problem) {
            return muslin_cutplan_places(get(), to.rows, sizeof(muslin::cutplan_place), to.capacity, to.count, problem);
        });
    }

    /** Each piece by itself, as a rectangle on its bolt or piece of stock, for drawing: from number `first` on, in the
     * order of cutting. A piece of stock lies as its row says, also where first cuts run along it: then its strips
     * stand upright. status::range: `first` not in 0 .. the number of blanks. Time: strips and places, and for each
     * blank what its panel or piece of stock holds.
     * muslin_cutplan_blanks() in muslin/cutplan.h. Since 1.0. */
    answer<std::vector<muslin::cutplan_blank>> blanks(std::int64_t first) const
    {
        std::vector<muslin::cutplan_blank> rows;
        return asking::ask_rows(rows, rows, [&](auto to, muslin_problem *problem) {
            return muslin_cutplan_blanks(get(), first, to.rows, sizeof(muslin::cutplan_blank), to.capacity, to.count,
                                         problem);
        });
    }

    /** Rectangles of cloth that are left, at least `least_side` and 1 both ways, the largest first: ends of strips, the
     * rest of panels and of stock, what lies above slit pieces that are shorter than their panel, and of FOLDED cloth
     * one layer beside a JOINED strip that goes round the fold and is not whole. Other trims along pieces are waste
     * and are not listed. Time: strips and places.
     * muslin_cutplan_left_overs() in muslin/cutplan.h. Since 1.0. */
    answer<std::vector<muslin::cutplan_left_over>> left_overs(muslin::length least_side) const
    {
        std::vector<muslin::cutplan_left_over> rows;
        return asking::ask_rows(rows, rows, [&](auto to, muslin_problem *problem) {
            return muslin_cutplan_left_overs(get(), detail::in_c(least_side), to.rows,
                                             sizeof(muslin::cutplan_left_over), to.capacity, to.count, problem);
        });
    }

    /** What becomes of each row of pieces. Time: rows squared.
     * muslin_cutplan_pieces() in muslin/cutplan.h. Since 1.0. */
    answer<std::vector<muslin::cutplan_piece>> pieces() const
    {
        std::vector<muslin::cutplan_piece> rows;
        return asking::ask_rows(rows, rows, [&](auto to, muslin_problem *problem) {
            return muslin_cutplan_pieces(get(), to.rows, sizeof(muslin::cutplan_piece), to.capacity, to.count, problem);
        });
    }

    /** How many of each row of stock are used; no rows from a bolt. Time: rows x strips.
     * muslin_cutplan_stock() in muslin/cutplan.h. Since 1.0. */
    answer<std::vector<muslin::cutplan_stock_used>> stock() const
    {
        std::vector<muslin::cutplan_stock_used> rows;
        return asking::ask_rows(rows, rows, [&](auto to, muslin_problem *problem) {
            return muslin_cutplan_stock(get(), to.rows, sizeof(muslin::cutplan_stock_used), to.capacity, to.count,
                                        problem);
        });
    }

    /** The same request at other usable widths of a bolt, so many from least to most in equal steps: for readers whose
     * cloth differs. A plan at one width is also one at all wider, so lengths never rise from row to row. The work
     * limit holds for each; `progress` is told as for a plan, beginning anew with each width, and when it ends the
     * search, the widths that follow get their first plan only. status::choice: a plan from stock. status::range:
     * widths below 1, most below least; `widths` outside 2 .. 1000, or not 1 where least is most. status::overflow,
     * status::no_memory: as cutplan::create(). Capacity 0 asks and searches nothing. Time: that of a plan for each
     * width.
     * muslin_cutplan_widths() in muslin/cutplan.h. Since 1.0. */
    template <class Progress = no_progress>
    answer<std::vector<muslin::cutplan_width>> widths(muslin::length least_width, muslin::length most_width,
                                                      std::int64_t widths, Progress &&progress = {}) const
    {
        std::vector<muslin::cutplan_width> rows;
        detail::teller<std::remove_reference_t<Progress>> progress_(progress);
        return asking::ask_rows(rows, rows, [&](auto to, muslin_problem *problem) {
            return progress_.done(muslin_cutplan_widths(get(), detail::in_c(least_width), detail::in_c(most_width),
                                                        widths, progress_.template callback<muslin_progress>(),
                                                        progress_.context(), to.rows, sizeof(muslin::cutplan_width),
                                                        to.capacity, to.count, problem));
        });
    }

    /** The narrowest usable width at which this plan can be cut as it is: its strips stay, none loses a piece. A bolt
     * narrower than that needs another plan, see above; of nothing 0. status::choice: a plan from stock. Time follows
     * the strips.
     * muslin_cutplan_narrowest() in muslin/cutplan.h. Since 1.0. */
    answer<muslin::length> narrowest() const
    {
        muslin::length width{};
        return asking::ask(width, [&](muslin_problem *problem) {
            return muslin_cutplan_narrowest(get(), detail::in_c(&width), problem);
        });
    }

    /** What the plan was made for, the highest first: sizes that are alike merged, joined pieces taken apart, what is
     * missing left out. Time follows the sizes.
     * muslin_cutplan_sizes() in muslin/cutplan.h. Since 1.0. */
    answer<std::vector<muslin::cutplan_size>> sizes() const
    {
        std::vector<muslin::cutplan_size> rows;
        return asking::ask_rows(rows, rows, [&](auto to, muslin_problem *problem) {
            return muslin_cutplan_sizes(get(), to.rows, sizeof(muslin::cutplan_size), to.capacity, to.count, problem);
        });
    }

    /** The ways to come by cloth that a plan may use, the dearest first, a panel before a strip as high. Strips need
     * only be as high as a size is. Time follows the ways.
     * muslin_cutplan_ways() in muslin/cutplan.h. Since 1.0. */
    answer<std::vector<muslin::cutplan_way>> ways() const
    {
        std::vector<muslin::cutplan_way> rows;
        return asking::ask_rows(rows, rows, [&](auto to, muslin_problem *problem) {
            return muslin_cutplan_ways(get(), to.rows, sizeof(muslin::cutplan_way), to.capacity, to.count, problem);
        });
    }

    /** Cases of the proof: each either is split into two that leave nothing out, or is empty, as trying all ways to
     * pack its strips shows, or has a bound not below the plan's. Time follows the cases.
     * muslin_cutplan_cases() in muslin/cutplan.h. Since 1.0. */
    answer<std::vector<muslin::cutplan_case>> cases() const
    {
        std::vector<muslin::cutplan_case> rows;
        return asking::ask_rows(rows, rows, [&](auto to, muslin_problem *problem) {
            return muslin_cutplan_cases(get(), to.rows, sizeof(muslin::cutplan_case), to.capacity, to.count, problem);
        });
    }

    /** The worths that prove a case, one for each size, each condition on the way to the case, and each stock. A thing
     * of a way may not be worth more than its cost: what its pieces are worth, with what conditions of its way and
     * stock add. Where it is by rho of its cost, the bound is (sum of worth x count wanted) / scale - rho (cost of the
     * plan - 1), up; and up once more, to the next number that costs of ways can add up to (from a bolt in heights,
     * looked at where the plan is below 2^23 of the greatest length that all sizes are whole numbers of): `least` is
     * that, and never more than the cost of the plan. scale: worths are over it. status::index: no such case, or one
     * without worths of its own. Time follows the result.
     * muslin_cutplan_worths() in muslin/cutplan.h. Since 1.0. */
    answer<muslin::cutplan_worths_answer> worths(std::int64_t of_case) const
    {
        muslin::cutplan_worths_answer answer;
        return asking::ask_rows(answer, answer.rows, [&](auto to, muslin_problem *problem) {
            return muslin_cutplan_worths(get(), of_case, to.rows, sizeof(muslin::cutplan_worth), to.capacity, to.count,
                                         &answer.scale, problem);
        });
    }

    /** Proves plan and bound anew, in whole numbers, by code of its own that shares only the rules of cutting with the
     * search. `progress` is told how many cases there are, as best, and how many of them are proved, as bound.
     * Allocates with the plan's allocator: status::no_memory. status::work_limit: it would take more than 2^40 steps,
     * or keep more than 2^20 sums at once. status::stopped: `progress` ended it. Time: cases x ways x what fits in a
     * strip.
     * muslin_cutplan_check() in muslin/cutplan.h. Since 1.0. */
    template <class Progress = no_progress>
    answer<muslin::cutplan_checked> check(Progress &&progress = {}) const
    {
        muslin::cutplan_checked out;
        detail::teller<std::remove_reference_t<Progress>> progress_(progress);
        return asking::ask(out, [&](muslin_problem *problem) {
            return progress_.done(muslin_cutplan_check(get(), progress_.template callback<muslin_progress>(),
                                                       progress_.context(), detail::in_c(&out), problem));
        });
    }
};

} // namespace MUSLIN_CPP_FORM

} // namespace muslin

#endif
