// muslin/reference.hpp - tables to start from, each row with its source.
// Written by generate.py from lib/abi/api.json: change that, not this file.
//
// SPDX-License-Identifier: MIT
#ifndef MUSLIN_REFERENCE_HPP
#define MUSLIN_REFERENCE_HPP

#include <muslin/reference.h>
#include <muslin/fabric.hpp>

namespace muslin {

/** enum muslin_table */
enum class table : std::int32_t {
    /** packaged batting, in this version smallest first: width, length */
    batting = MUSLIN_TABLE_BATTING,
    /** usual pre-cuts: cut width across, cut length along, pieces sold together */
    precut = MUSLIN_TABLE_PRECUT,
    /** usable widths people plan with, in this version smallest first: width */
    fabric_width = MUSLIN_TABLE_FABRIC_WIDTH,
    /** mattresses: width, length */
    mattress = MUSLIN_TABLE_MATTRESS,
    /** what the law fixes for a full-size crib: width, length; a thickness as width */
    crib = MUSLIN_TABLE_CRIB,
    /** what a quilt is longer for tucking under pillows: width */
    pillow_tuck = MUSLIN_TABLE_PILLOW_TUCK,
    /** depths of mattresses, least as width and greatest as length; what a drop adds */
    drop = MUSLIN_TABLE_DROP,
    /** fractions of a yard and of a metre, in this version smallest first: width */
    yard_fraction = MUSLIN_TABLE_YARD_FRACTION,
    /** usual lengths of a stitch: width */
    stitch = MUSLIN_TABLE_STITCH,
    /** behind cautions: sizes, or an age in months as count; see each row's note */
    caution = MUSLIN_TABLE_CAUTION,
    /** packaged batting where other lists disagree with table::batting; never chosen by batting_plan() */
    batting_other = MUSLIN_TABLE_BATTING_OTHER,
};

/** struct muslin_reference. */
struct MUSLIN_CPP_TWIN reference {
    using c_type = muslin_reference;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** ticks; as in stock_spec, the longer side of a strip or a fat quarter; 0 where there is none */
    muslin::length width{};
    /** ticks; 0 where there is none */
    muslin::length length{};
    /** pieces sold together, 1 for a single one; months in a caution; 0 where there is none */
    std::int64_t count = 0;
};
static_assert(detail::is_twin<reference>);

inline namespace MUSLIN_CPP_FORM {

/** How many rows a table has. Rows are only ever added at the end, whatever their size, so an index keeps its
 * meaning. status::null: out is null. status::choice: table is none of enum table. The problem is optional (null).
 * muslin_reference_count() in muslin/reference.h. Since 1.0. */
inline answer<std::int64_t> reference_count(muslin::table table)
{
    std::int64_t out = 0;
    return asking::ask(out, [&](muslin_problem *problem) {
        return muslin_reference_count(detail::in_c(table), &out, problem);
    });
}

/** Row `index`, from 0, of a table. status::null and status::struct_size for out; status::choice for an unknown
 * table; status::index for a row that does not exist (the problem's limit is the last one). Source: what
 * reference_source says of the row.
 * muslin_reference_row() in muslin/reference.h. Since 1.0. */
inline answer<muslin::reference> reference_row(muslin::table table, std::int64_t index)
{
    muslin::reference out;
    return asking::ask(out, [&](muslin_problem *problem) {
        return muslin_reference_row(detail::in_c(table), index, detail::in_c(&out), problem);
    });
}

/** A row's name in the trade's words; where its figures come from: a title with the kind of publication and its
 * year where it has one, "common practice, no source" or "from memory, no source"; and a note on what else to
 * know, above all where other lists disagree, or "" where there is nothing to say. All three are "" for a row that
 * does not exist, and never null. Their wording may improve.
 * muslin_reference_name() in muslin/reference.h. Since 1.0. */
[[nodiscard]] inline std::string_view reference_name(muslin::table table, std::int64_t index) noexcept
{
    return muslin_reference_name(detail::in_c(table), index);
}

/** A row's name in the trade's words; where its figures come from: a title with the kind of publication and its
 * year where it has one, "common practice, no source" or "from memory, no source"; and a note on what else to
 * know, above all where other lists disagree, or "" where there is nothing to say.
 * muslin_reference_source() in muslin/reference.h. Since 1.0. */
[[nodiscard]] inline std::string_view reference_source(muslin::table table, std::int64_t index) noexcept
{
    return muslin_reference_source(detail::in_c(table), index);
}

/** A row's name in the trade's words; where its figures come from: a title with the kind of publication and its
 * year where it has one, "common practice, no source" or "from memory, no source"; and a note on what else to
 * know, above all where other lists disagree, or "" where there is nothing to say.
 * muslin_reference_note() in muslin/reference.h. Since 1.0. */
[[nodiscard]] inline std::string_view reference_note(muslin::table table, std::int64_t index) noexcept
{
    return muslin_reference_note(detail::in_c(table), index);
}

} // namespace MUSLIN_CPP_FORM

} // namespace muslin

#endif
