// muslin/motif.hpp - pieces that need a window on a printed repeat, and stacks of identical layers.
// Written by generate.py from lib/abi/api.json: change that, not this file.
//
// SPDX-License-Identifier: MIT
#ifndef MUSLIN_MOTIF_HPP
#define MUSLIN_MOTIF_HPP

#include <muslin/motif.h>
#include <muslin/fabric.hpp>

namespace muslin {

/** struct muslin_motif_spec. */
struct MUSLIN_CPP_TWIN motif_spec {
    using c_type = muslin_motif_spec;

    static constexpr std::uint32_t any_start = MUSLIN_MOTIF_ANY_START;
    static constexpr std::uint32_t any_across = MUSLIN_MOTIF_ANY_ACROSS;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** of the print along the cloth, 1 or more */
    muslin::length repeat_length{};
    /** across it; 0: the whole usable width counts as one repeat */
    muslin::length repeat_width{};
    /** of the cloth, 1 or more */
    muslin::length usable_width = muslin::length::of_ticks(325120);
    /** of the window, across, 1 or more */
    muslin::length cut_width{};
    /** along, 1 or more */
    muslin::length cut_length{};
    /** windows that one repeat gives, 1 or more: count only those that can all be cut, so of two that overlap one;
     * for a window larger than the repeat, those that the repeats it takes give together */
    std::int64_t motifs = 1;
    /** windows wanted */
    std::int64_t pieces = 0;
};
static_assert(detail::is_twin<motif_spec>);

/** struct muslin_motif. */
struct MUSLIN_CPP_TWIN motif {
    using c_type = muslin_motif;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** repeats that a window takes across: cut_width / repeat_width, up; 1 when the width is one repeat */
    std::int64_t repeats_across_each = 0;
    /** along: cut_length / repeat_length, up */
    std::int64_t repeats_along_each = 0;
    /** windows that a row gives from selvage to selvage */
    std::int64_t per_row = 0;
    /** rows of windows: pieces / per_row, up */
    std::int64_t rows = 0;
    /** along, for all rows: rows x repeats_along_each */
    std::int64_t repeats = 0;
    /** repeats, and the one for shifting the start where it is counted */
    std::int64_t repeats_bought = 0;
    /** windows that the rows give beyond those wanted */
    std::int64_t spare_pieces = 0;
    /** windows that a row gives wherever the print begins across; 0 when none is certain */
    std::int64_t per_row_certain = 0;
    /** ... and gives when the print begins best: see lucky_within */
    std::int64_t per_row_lucky = 0;
    /** rows for the windows wanted when a row gives only those; 0 when none is certain */
    std::int64_t rows_certain = 0;
    /** ... when it gives the most */
    std::int64_t rows_lucky = 0;
    /** repeats_along_each x repeat_length */
    muslin::length row_length{};
    /** row_length - cut_length */
    muslin::length waste_per_row{};
    /** the repeat for shifting the start, or 0 */
    muslin::length shift{};
    /** rows x row_length + shift */
    muslin::length cloth_length{};
    /** the same with rows_certain; 0 when none is certain */
    muslin::length cloth_certain{};
    /** ... with rows_lucky */
    muslin::length cloth_lucky{};
    /** per_row_lucky holds when the first whole window begins no farther than this from the edge of the usable
     * width; 0 when the width is one repeat */
    muslin::length lucky_within{};
    /** the cloth may be this much narrower before a row more is needed; 0 when the width is one repeat, since how
     * the print lies in it is not known */
    muslin::length narrower_by{};
    /** this much wider, the least, and fewer rows are needed; 0 when no width saves one, or the width is one repeat */
    muslin::length wider_for_less{};
    /** so many they then are; 0 when no width saves one */
    std::int64_t wider_rows = 0;
    /** warning::no_slack when a piece is wanted and narrower_by is 0; where the width is one repeat, when the
     * window is as wide as the cloth */
    std::uint32_t warnings = 0;
    std::int32_t pad = 0;
    /** cloth_length without what lies behind the windows of the last row: less by waste_per_row where the start is
     * shifted and motifs is 1, else the same */
    muslin::length cloth_least{};
};
static_assert(detail::is_twin<motif>);

/** struct muslin_motif_yield. */
struct MUSLIN_CPP_TWIN motif_yield {
    using c_type = muslin_motif_yield;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** of windows, whole: of the last only the windows must be there, as in cloth_least */
    std::int64_t rows = 0;
    /** along, used by them */
    std::int64_t repeats = 0;
    /** rows x per_row: windows */
    std::int64_t pieces = 0;
    /** rows x per_row_certain */
    std::int64_t pieces_certain = 0;
    /** rows x per_row_lucky */
    std::int64_t pieces_lucky = 0;
    /** of the length, behind the rows; what the shift takes is not in it */
    muslin::length left_over{};
    /** the cloth may be this much shorter before a row is lost; 0 when there is none */
    muslin::length shorter_by{};
    /** this much longer and one more row fits */
    muslin::length longer_for_one{};
    /** warning::no_slack when there is a row and shorter_by is 0 */
    std::uint32_t warnings = 0;
    std::int32_t pad = 0;
};
static_assert(detail::is_twin<motif_yield>);

/** struct muslin_stack_spec. */
struct MUSLIN_CPP_TWIN stack_spec {
    using c_type = muslin_stack_spec;

    static constexpr std::uint32_t any_start = MUSLIN_STACK_ANY_START;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** of the print along the cloth, 1 or more */
    muslin::length repeat_length{};
    /** cut width of the strips that are cut through all layers, 1 or more */
    muslin::length strip_cut{};
    /** taken off the aligned layers once, before the first strip */
    muslin::length straightening{};
    /** stacks that one strip gives, 1 or more: as many as pieces from a single strip */
    std::int64_t per_strip = 1;
    /** identical pieces in a stack, 1 or more: 4, 6 or 8 for the blocks that are usual */
    std::int64_t layers = 6;
    /** wanted */
    std::int64_t stacks = 0;
};
static_assert(detail::is_twin<stack_spec>);

/** struct muslin_stack. */
struct MUSLIN_CPP_TWIN stack {
    using c_type = muslin_stack;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** to cut through the layers: stacks / per_strip, up */
    std::int64_t strips = 0;
    /** that the layers give, whole */
    std::int64_t strips_in_layers = 0;
    /** (strips x strip_cut + straightening) / repeat_length, up; 0 without a strip */
    std::int64_t repeats_per_layer = 0;
    /** of the cloth: layers x repeats_per_layer; the one for the start is not counted */
    std::int64_t repeats = 0;
    /** ... and that one, where it is */
    std::int64_t repeats_bought = 0;
    /** stacks x layers */
    std::int64_t pieces = 0;
    /** that strips_in_layers give beyond those wanted */
    std::int64_t spare_stacks = 0;
    /** of each layer: repeats_per_layer x repeat_length */
    muslin::length layer_length{};
    /** of each layer: strips x strip_cut + straightening; 0 without a strip */
    muslin::length used_length{};
    /** the repeat for choosing the start, or 0 */
    muslin::length shift{};
    /** layers x layer_length + shift */
    muslin::length cloth_length{};
    /** of each layer, behind strips_in_layers */
    muslin::length left_over{};
    /** the cloth may end this much early, in the last layer: layer_length - used_length. The other layers stay as
     * long as they are, since each begins whole repeats behind the one before */
    muslin::length shorter_by{};
    /** warning::no_slack when a strip is wanted and shorter_by is 0 */
    std::uint32_t warnings = 0;
    std::int32_t pad = 0;
    /** cloth_length - shorter_by */
    muslin::length cloth_least{};
};
static_assert(detail::is_twin<stack>);

inline namespace MUSLIN_CPP_FORM {

/** Windows wanted -> repeats -> length of cloth. A window no larger than the repeat takes one repeat each way, a
 * larger one as many as it reaches over, up: the next window then begins where the print does again. Across, whole
 * repeats are counted: usable width / (repeats a window takes x repeat_width), down. With MUSLIN_MOTIF_ANY_ACROSS
 * the first window may begin up to a repeat from the selvage and must still end before the other one; with
 * MUSLIN_MOTIF_ANY_START it may too, and one repeat of length is added for the whole order when a piece is wanted.
 * status::no_yield: not one window fits across (the problem names the usable width and the least that would do;
 * where only part of a repeat lies across the cloth, count the motifs you see and give repeat_width 0). Whole
 * repeats lie between what is certain and what is lucky, and both are said: the print seldom begins at the edge of
 * the usable width. Where the width is one repeat, both are per_row. status::range for `motifs` also when so many
 * windows are larger than the repeats they are cut from, by area. Sources: Figuring pattern repeats (home magazine
 * how-to) for repeats along and the one more for the order; geometry for the rest.
 * muslin_motif_plan() in muslin/motif.h. Since 1.0. */
inline answer<muslin::motif> motif_plan(const muslin::motif_spec &spec = {})
{
    muslin::motif out;
    return asking::ask(out, [&](muslin_problem *problem) {
        return muslin_motif_plan(detail::in_c(&spec), detail::in_c(&out), problem);
    });
}

/** Windows that a cloth so long (0 .. MUSLIN_SIZE_MAX) gives, counted as in motif_plan(); spec->pieces is not used,
 * but must be in its range. No row is an answer, not an error. status::no_yield and status::range as there.
 * Source: geometry.
 * muslin_motif_from_cloth() in muslin/motif.h. Since 1.0. */
inline answer<muslin::motif_yield> motif_from_cloth(const muslin::motif_spec &spec, muslin::length cloth_length)
{
    muslin::motif_yield out;
    return asking::ask(out, [&](muslin_problem *problem) {
        return muslin_motif_from_cloth(detail::in_c(&spec), detail::in_c(cloth_length), detail::in_c(&out), problem);
    });
}

/** Cloth for stacks of identical pieces: it is cut into `layers` lengths of whole repeats that begin at the same
 * place of the print; they are laid on each other so that the print matches, and strips and pieces are cut through
 * all of them at once. status::overflow when the cloth would be longer than MUSLIN_LENGTH_MAX. Sources: common
 * practice, no source, for the way; geometry for the sums.
 * muslin_stack_plan() in muslin/motif.h. Since 1.0. */
inline answer<muslin::stack> stack_plan(const muslin::stack_spec &spec = {})
{
    muslin::stack out;
    return asking::ask(out, [&](muslin_problem *problem) {
        return muslin_stack_plan(detail::in_c(&spec), detail::in_c(&out), problem);
    });
}

} // namespace MUSLIN_CPP_FORM

} // namespace muslin

#endif
