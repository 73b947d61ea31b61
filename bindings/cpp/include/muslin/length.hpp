// muslin/length.hpp - the number: its exact arithmetic, its rounding, its text forms.
// Written by generate.py from lib/abi/api.json: change that, not this file.
//
// SPDX-License-Identifier: MIT
#ifndef MUSLIN_LENGTH_HPP
#define MUSLIN_LENGTH_HPP

#include <muslin/length.h>
#include <muslin/base.hpp>

namespace muslin {

/** enum muslin_direction */
enum class direction : std::int32_t {
    /** towards +infinity */
    up = MUSLIN_DIRECTION_UP,
    /** towards -infinity */
    down = MUSLIN_DIRECTION_DOWN,
    /** to the nearest; ties upwards */
    nearest = MUSLIN_DIRECTION_NEAREST,
};

/** enum muslin_length_unit */
enum class length_unit : std::int32_t {
    inch = MUSLIN_LENGTH_UNIT_INCH,
    foot = MUSLIN_LENGTH_UNIT_FOOT,
    yard = MUSLIN_LENGTH_UNIT_YARD,
    mm = MUSLIN_LENGTH_UNIT_MM,
    cm = MUSLIN_LENGTH_UNIT_CM,
    m = MUSLIN_LENGTH_UNIT_M,
};

/** enum muslin_style */
enum class style : std::int32_t {
    /** 2 1/2 in */
    inch_fraction = MUSLIN_STYLE_INCH_FRACTION,
    /** 2.5 in */
    inch_decimal = MUSLIN_STYLE_INCH_DECIMAL,
    /** 1 3/8 yd */
    yard_fraction = MUSLIN_STYLE_YARD_FRACTION,
    /** 63.5 mm */
    mm = MUSLIN_STYLE_MM,
    /** 6.35 cm */
    cm = MUSLIN_STYLE_CM,
};

/** struct muslin_rounding_spec. The rounding a caller asks for. Grid is the step in ticks (1016 for 1/8 in), 1 ..
 * MUSLIN_SIZE_MAX. Tolerance, 0 .. grid - 1, is what may be overlooked when rounding up or down: with direction up
 * the result is the least grid point not below the exact value less the tolerance, with down the greatest not
 * above it plus the tolerance. It has no effect on nearest. It keeps 23.8774 in from becoming 24 for two
 * thousandths of an inch. */
struct MUSLIN_CPP_TWIN rounding_spec {
    using c_type = muslin_rounding_spec;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** in ticks, 1 .. MUSLIN_SIZE_MAX */
    muslin::length grid = muslin::length::of_ticks(1);
    /** 0 .. grid - 1 */
    muslin::length tolerance{};
    /** enum direction */
    muslin::direction direction = muslin::direction::nearest;
    std::int32_t pad = 0;
};
static_assert(detail::is_twin<rounding_spec>);

/** struct muslin_rounded. A rounded result. The error value - exact lies in [error, error + 1) ticks; when `exact`
 * is 1 it is exactly `error` and that is 0 too. `on_tick` is 1 when the exact value is a whole number of ticks, so
 * that `error` is exact. */
struct MUSLIN_CPP_TWIN rounded {
    using c_type = muslin_rounded;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** the grid point */
    muslin::length value{};
    /** value - exact value, rounded down to a tick */
    muslin::length error{};
    /** 1 when nothing was lost by rounding */
    muslin::truth exact{};
    /** 1 when the unrounded value is a whole number of ticks */
    muslin::truth on_tick{};
};
static_assert(detail::is_twin<rounded>);

/** struct muslin_parse_spec. */
struct MUSLIN_CPP_TWIN parse_spec {
    using c_type = muslin_parse_spec;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** enum length_unit, for a number that names none */
    muslin::length_unit default_unit = muslin::length_unit::inch;
    /** '.' or ',' */
    std::int32_t decimal_sign = 46;
};
static_assert(detail::is_twin<parse_spec>);

/** struct muslin_parsed. */
struct MUSLIN_CPP_TWIN parsed {
    using c_type = muslin_parsed;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** the length */
    muslin::length value{};
    /** 1 when the text lies on the tick grid; else value is the nearest tick, ties upwards */
    muslin::truth exact{};
    /** enum length_unit: of the last part, named or the default */
    muslin::length_unit unit{};
};
static_assert(detail::is_twin<parsed>);

/** struct muslin_format_spec. without the unit */
struct MUSLIN_CPP_TWIN format_spec {
    using c_type = muslin_format_spec;

    static constexpr std::uint32_t unicode = MUSLIN_FORMAT_UNICODE;
    static constexpr std::uint32_t bare = MUSLIN_FORMAT_BARE;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** enum style */
    muslin::style style = muslin::style::inch_fraction;
    /** of fraction styles, 1 .. 64; shown in lowest terms */
    std::int32_t denominator = 64;
    /** of decimal styles, 0 .. 6; trailing zeros are not shown */
    std::int32_t decimals = 4;
    /** '.' or ',' */
    std::int32_t decimal_sign = 46;
    /** enum direction, for a length off the style's grid */
    muslin::direction direction = muslin::direction::nearest;
    std::int32_t pad = 0;
};
static_assert(detail::is_twin<format_spec>);

/** What length_format() answers. */
struct length_format_answer {
    std::string text;
    muslin::truth exact{};
};

inline namespace MUSLIN_CPP_FORM {

/** a + b.
 * muslin_length_add() in muslin/length.h. Since 1.0. */
inline answer<muslin::length> length_add(muslin::length a, muslin::length b)
{
    muslin::length out{};
    return asking::ask(out, [&](muslin_problem *) {
        return muslin_length_add(detail::in_c(a), detail::in_c(b), detail::in_c(&out));
    });
}

/** a - b, which may be negative.
 * muslin_length_subtract() in muslin/length.h. Since 1.0. */
inline answer<muslin::length> length_subtract(muslin::length a, muslin::length b)
{
    muslin::length out{};
    return asking::ask(out, [&](muslin_problem *) {
        return muslin_length_subtract(detail::in_c(a), detail::in_c(b), detail::in_c(&out));
    });
}

/** a x factor, factor any int64_t.
 * muslin_length_multiply() in muslin/length.h. Since 1.0. */
inline answer<muslin::length> length_multiply(muslin::length a, std::int64_t factor)
{
    muslin::length out{};
    return asking::ask(out, [&](muslin_problem *) {
        return muslin_length_multiply(detail::in_c(a), factor, detail::in_c(&out));
    });
}

/** a / divisor, rounded as asked. divisor any int64_t but 0 (status::divide_by_zero). Statuses of the rounding,
 * here and wherever one is given: status::null, status::range (grid, tolerance), status::choice (direction), the
 * struct statuses. status::overflow when the grid point lies beyond MUSLIN_LENGTH_MAX.
 * muslin_length_divide() in muslin/length.h. Since 1.0. */
inline answer<muslin::rounded> length_divide(muslin::length a, std::int64_t divisor,
                                             const muslin::rounding_spec &rounding = {})
{
    muslin::rounded out;
    return asking::ask(out, [&](muslin_problem *) {
        return muslin_length_divide(detail::in_c(a), divisor, detail::in_c(&rounding), detail::in_c(&out));
    });
}

/** a x numerator / denominator, rounded once, as asked; the product is never cut short on the way. numerator any
 * int64_t, denominator > 0 (0: status::divide_by_zero, negative: status::range). Other statuses as for a quotient.
 * muslin_length_scale() in muslin/length.h. Since 1.0. */
inline answer<muslin::rounded> length_scale(muslin::length a, std::int64_t numerator, std::int64_t denominator,
                                            const muslin::rounding_spec &rounding = {})
{
    muslin::rounded out;
    return asking::ask(out, [&](muslin_problem *) {
        return muslin_length_scale(detail::in_c(a), numerator, denominator, detail::in_c(&rounding),
                                   detail::in_c(&out));
    });
}

/** a brought to the grid. Statuses as for a quotient.
 * muslin_length_snap() in muslin/length.h. Since 1.0. */
inline answer<muslin::rounded> length_snap(muslin::length a, const muslin::rounding_spec &rounding = {})
{
    muslin::rounded out;
    return asking::ask(out, [&](muslin_problem *) {
        return muslin_length_snap(detail::in_c(a), detail::in_c(&rounding), detail::in_c(&out));
    });
}

/** -1, 0 or 1 as a is less than, equal to or greater than b. For all int64_t.
 * muslin_length_compare() in muslin/length.h. Since 1.0. */
[[nodiscard]] inline std::int32_t length_compare(muslin::length a, muslin::length b) noexcept
{
    return muslin_length_compare(detail::in_c(a), detail::in_c(b));
}

/** The sum of n lengths; the status does not depend on their order, because partial sums may pass the range, and
 * any length out of range gives status::range before status::overflow is considered. n = 0 gives 0 (values may
 * then be null). O(n).
 * muslin_length_sum() in muslin/length.h. Since 1.0. */
inline answer<muslin::length> length_sum(muslin::span<const muslin::length> values)
{
    muslin::length out{};
    return asking::ask(out, [&](muslin_problem *) {
        return muslin_length_sum(detail::in_c(values.data()), values.size(), detail::in_c(&out));
    });
}

/** The sum of lengths[i] x counts[i]; order-independent as above. counts any int64_t. O(n).
 * muslin_length_dot() in muslin/length.h. Since 1.0. */
inline answer<muslin::length> length_dot(muslin::span<const muslin::length> lengths,
                                         muslin::span<const std::int64_t> counts)
{
    muslin::length out{};
    return asking::ask(out, [&](muslin_problem *problem) {
        if (const muslin_status status = detail::same_size(counts.size(), lengths.size(), MUSLIN_ARG_FACTOR, problem))
            return status;
        return muslin_length_dot(detail::in_c(lengths.data()), counts.data(), counts.size(), detail::in_c(&out));
    });
}

/** One call for n values. With `statuses` (n of them), each element gets its own status, failed elements of `out`
 * are untouched, and the call returns status::ok. Without (null), the call stops at the first failing element,
 * returns its status and writes its index to failed if that is given; earlier results stand. `out` may be an input
 * exactly; no other overlap. n = 0 succeeds, with null arrays too. What is wrong for all elements (a null array,
 * the rounding, the denominator) is returned with statuses as without, before anything is written; failed is
 * untouched then, and at success. O(n).
 * muslin_length_add_n() in muslin/length.h. Since 1.0. */
inline answer<std::size_t> length_add_n(muslin::span<const muslin::length> a, muslin::span<const muslin::length> b,
                                        muslin::span<muslin::length> out, muslin::span<muslin::status> statuses = {})
{
    std::size_t count = a.size();
    return asking::ask(count, [&](muslin_problem *problem) {
        if (const muslin_status status = detail::same_size(b.size(), a.size(), MUSLIN_ARG_ROWS, problem))
            return status;
        if (const muslin_status status = detail::same_size(out.size(), a.size(), MUSLIN_ARG_OUTPUT, problem))
            return status;
        if (const muslin_status status = detail::same_size(statuses.empty() ? a.size() : statuses.size(), a.size(),
                                                           MUSLIN_ARG_OUTPUT, problem))
            return status;
        std::size_t failed = 0;
        const muslin_status status = muslin_length_add_n(detail::in_c(a.data()), detail::in_c(b.data()), a.size(),
                                                         detail::in_c(out.data()), detail::in_c(statuses.data()),
                                                         &failed);
        return detail::failed_at(status, failed, problem);
    });
}

/** One call for n values.
 * muslin_length_subtract_n() in muslin/length.h. Since 1.0. */
inline answer<std::size_t> length_subtract_n(muslin::span<const muslin::length> a, muslin::span<const muslin::length> b,
                                             muslin::span<muslin::length> out,
                                             muslin::span<muslin::status> statuses = {})
{
    std::size_t count = a.size();
    return asking::ask(count, [&](muslin_problem *problem) {
        if (const muslin_status status = detail::same_size(b.size(), a.size(), MUSLIN_ARG_ROWS, problem))
            return status;
        if (const muslin_status status = detail::same_size(out.size(), a.size(), MUSLIN_ARG_OUTPUT, problem))
            return status;
        if (const muslin_status status = detail::same_size(statuses.empty() ? a.size() : statuses.size(), a.size(),
                                                           MUSLIN_ARG_OUTPUT, problem))
            return status;
        std::size_t failed = 0;
        const muslin_status status = muslin_length_subtract_n(detail::in_c(a.data()), detail::in_c(b.data()), a.size(),
                                                              detail::in_c(out.data()), detail::in_c(statuses.data()),
                                                              &failed);
        return detail::failed_at(status, failed, problem);
    });
}

/** One call for n values.
 * muslin_length_multiply_n() in muslin/length.h. Since 1.0. */
inline answer<std::size_t> length_multiply_n(muslin::span<const muslin::length> a,
                                             muslin::span<const std::int64_t> factors, muslin::span<muslin::length> out,
                                             muslin::span<muslin::status> statuses = {})
{
    std::size_t count = a.size();
    return asking::ask(count, [&](muslin_problem *problem) {
        if (const muslin_status status = detail::same_size(factors.size(), a.size(), MUSLIN_ARG_FACTOR, problem))
            return status;
        if (const muslin_status status = detail::same_size(out.size(), a.size(), MUSLIN_ARG_OUTPUT, problem))
            return status;
        if (const muslin_status status = detail::same_size(statuses.empty() ? a.size() : statuses.size(), a.size(),
                                                           MUSLIN_ARG_OUTPUT, problem))
            return status;
        std::size_t failed = 0;
        const muslin_status status = muslin_length_multiply_n(detail::in_c(a.data()), factors.data(), a.size(),
                                                              detail::in_c(out.data()), detail::in_c(statuses.data()),
                                                              &failed);
        return detail::failed_at(status, failed, problem);
    });
}

/** a[i] x numerator / denominator, each rounded as asked.
 * muslin_length_scale_n() in muslin/length.h. Since 1.0. */
inline answer<std::size_t> length_scale_n(muslin::span<const muslin::length> a, std::int64_t numerator,
                                          std::int64_t denominator, const muslin::rounding_spec &rounding,
                                          muslin::span<muslin::length> out, muslin::span<muslin::status> statuses = {})
{
    std::size_t count = a.size();
    return asking::ask(count, [&](muslin_problem *problem) {
        if (const muslin_status status = detail::same_size(out.size(), a.size(), MUSLIN_ARG_OUTPUT, problem))
            return status;
        if (const muslin_status status = detail::same_size(statuses.empty() ? a.size() : statuses.size(), a.size(),
                                                           MUSLIN_ARG_OUTPUT, problem))
            return status;
        std::size_t failed = 0;
        const muslin_status status = muslin_length_scale_n(detail::in_c(a.data()), a.size(), numerator, denominator,
                                                           detail::in_c(&rounding), detail::in_c(out.data()),
                                                           detail::in_c(statuses.data()), &failed);
        return detail::failed_at(status, failed, problem);
    });
}

/** a[i], each brought to the grid.
 * muslin_length_snap_n() in muslin/length.h. Since 1.0. */
inline answer<std::size_t> length_snap_n(muslin::span<const muslin::length> a, const muslin::rounding_spec &rounding,
                                         muslin::span<muslin::length> out, muslin::span<muslin::status> statuses = {})
{
    std::size_t count = a.size();
    return asking::ask(count, [&](muslin_problem *problem) {
        if (const muslin_status status = detail::same_size(out.size(), a.size(), MUSLIN_ARG_OUTPUT, problem))
            return status;
        if (const muslin_status status = detail::same_size(statuses.empty() ? a.size() : statuses.size(), a.size(),
                                                           MUSLIN_ARG_OUTPUT, problem))
            return status;
        std::size_t failed = 0;
        const muslin_status status = muslin_length_snap_n(detail::in_c(a.data()), a.size(), detail::in_c(&rounding),
                                                          detail::in_c(out.data()), detail::in_c(statuses.data()),
                                                          &failed);
        return detail::failed_at(status, failed, problem);
    });
}

/** a x sqrt 2, the diagonal of a square.
 * muslin_length_times_root2() in muslin/length.h. Since 1.0. */
inline answer<muslin::rounded> length_times_root2(muslin::length a, const muslin::rounding_spec &rounding = {})
{
    muslin::rounded out;
    return asking::ask(out, [&](muslin_problem *) {
        return muslin_length_times_root2(detail::in_c(a), detail::in_c(&rounding), detail::in_c(&out));
    });
}

/** a / sqrt 2, the side of a square with diagonal a.
 * muslin_length_over_root2() in muslin/length.h. Since 1.0. */
inline answer<muslin::rounded> length_over_root2(muslin::length a, const muslin::rounding_spec &rounding = {})
{
    muslin::rounded out;
    return asking::ask(out, [&](muslin_problem *) {
        return muslin_length_over_root2(detail::in_c(a), detail::in_c(&rounding), detail::in_c(&out));
    });
}

/** a x sqrt 3 / 2, the height of an equilateral triangle with side a.
 * muslin_length_equilateral_height() in muslin/length.h. Since 1.0. */
inline answer<muslin::rounded> length_equilateral_height(muslin::length a, const muslin::rounding_spec &rounding = {})
{
    muslin::rounded out;
    return asking::ask(out, [&](muslin_problem *) {
        return muslin_length_equilateral_height(detail::in_c(a), detail::in_c(&rounding), detail::in_c(&out));
    });
}

/** 2 a / sqrt 3, the side of an equilateral triangle with height a.
 * muslin_length_equilateral_side() in muslin/length.h. Since 1.0. */
inline answer<muslin::rounded> length_equilateral_side(muslin::length a, const muslin::rounding_spec &rounding = {})
{
    muslin::rounded out;
    return asking::ask(out, [&](muslin_problem *) {
        return muslin_length_equilateral_side(detail::in_c(a), detail::in_c(&rounding), detail::in_c(&out));
    });
}

/** sqrt(a x a + b x b).
 * muslin_length_hypotenuse() in muslin/length.h. Since 1.0. */
inline answer<muslin::rounded> length_hypotenuse(muslin::length a, muslin::length b,
                                                 const muslin::rounding_spec &rounding = {})
{
    muslin::rounded out;
    return asking::ask(out, [&](muslin_problem *) {
        return muslin_length_hypotenuse(detail::in_c(a), detail::in_c(b), detail::in_c(&rounding), detail::in_c(&out));
    });
}

/** The side of the square that has this area, in doubled square ticks (2 x width x height), 0 .. 2^61.
 * muslin_length_root_of_area() in muslin/length.h. Since 1.0. */
inline answer<muslin::rounded> length_root_of_area(std::int64_t area, const muslin::rounding_spec &rounding = {})
{
    muslin::rounded out;
    return asking::ask(out, [&](muslin_problem *) {
        return muslin_length_root_of_area(area, detail::in_c(&rounding), detail::in_c(&out));
    });
}

/** The length of one unit in ticks (exact for all six); 0 for anything else. Source: NIST Handbook 44, Appendix C.
 * muslin_length_unit_ticks() in muslin/length.h. Since 1.0. */
[[nodiscard]] inline muslin::length length_unit_ticks(muslin::length_unit unit) noexcept
{
    return length::of_ticks(muslin_length_unit_ticks(detail::in_c(unit)));
}

/** The unit's usual short word: "in", "ft", "yd", "mm", "cm", "m"; "" for anything else. Never null.
 * muslin_length_unit_word() in muslin/length.h. Since 1.0. */
[[nodiscard]] inline std::string_view length_unit_word(muslin::length_unit unit) noexcept
{
    return muslin_length_unit_word(detail::in_c(unit));
}

/** Reads one length from `bytes` bytes of UTF-8 text, which need not be terminated. Grammar: [sign] part { part },
 * with blanks around and between. A part is a number and, except for a last or only part, a unit; units of several
 * parts go from larger to smaller ("1 yd 4 1/2 in", "5' 6\""), and the sign holds for the whole. A number without
 * a unit takes the default one, and must be in its place in the order. Number: whole "2", decimal "2.5" or ".5",
 * fraction "5/8", mixed "2 1/2", "2-1/2", "2 (vulgar half)" with blanks, one hyphen or, before a vulgar fraction,
 * nothing between; with ASCII digits. The fraction may use / or U+2044 or U+2215, without blanks; vulgar fractions
 * are those of U+00BC..00BE and U+2150..215E, U+2189. Sign: + - or U+2212. Unit: in in. inch inches " U+2033
 * U+201D U+201C or a foot mark twice; ft ft. foot feet ' U+2032 U+2019 U+2018; yd yd. yds yds. yard yards; mm; cm;
 * m; and millimetre(s), centimetre(s), metre(s) in both spellings; letters in either case. Blank: space, tab, line
 * feed, carriage return, U+00A0 no-break, U+202F narrow no-break, U+2009 thin space. The decimal sign is the one
 * that the spec names; the other one is refused (status::text_decimal), never guessed. Values off the tick grid
 * are rounded once, for the whole text, to the nearest tick, and reported as inexact. spec null means
 * MUSLIN_PARSE_SPEC_INIT. Statuses, those of the text with place and bytes in problem: status::null (spec and
 * problem may be null, and the text of 0 bytes), the struct statuses, status::choice (unit, decimal sign);
 * status::text_encoding: not UTF-8, looked for first and in the whole text; names one byte; status::text_empty:
 * the text ends before its first number; bytes 0, at the end; status::text_syntax: no number where the first one,
 * a denominator or decimals should stand; names what stands there, bytes 0 at the end; status::text_decimal: the
 * other decimal sign, at the start or right behind a number; names it; status::text_unit: a word that is no unit,
 * or a unit not smaller than the one before; names the word, or the number whose default unit is out of order;
 * status::text_trailing: something more behind a whole length; names all the rest; status::text_zero_denominator:
 * names the denominator; status::overflow: the length passes MUSLIN_LENGTH_MAX; or a number has more than 18
 * digits, zeros at its outer ends not counted; or several parts have fractions of a tick whose common denominator
 * passes 2^62 - 1. Names the number. O(bytes).
 * muslin_length_parse() in muslin/length.h. Since 1.0. */
inline answer<muslin::parsed> length_parse(std::string_view text, const muslin::parse_spec &spec = {})
{
    muslin::parsed out;
    return asking::ask(out, [&](muslin_problem *problem) {
        return muslin_length_parse(text.data(), text.size(), detail::in_c(&spec), detail::in_c(&out), problem);
    });
}

/** Writes the length as terminated text. need (may be null) gets the bytes needed including the terminator; exact
 * (may be null) gets 1 when the text says exactly this length. With cap 0 (buf may then be null) it only asks:
 * writes need and exact and succeeds. If cap is too small: status::buffer, and only need is written. Promise:
 * whenever exact is 1, parsing the text (with the same decimal sign, and the style's unit as default) gives the
 * same length back, exact. Minus zero is never shown. spec null means MUSLIN_FORMAT_SPEC_INIT. Statuses:
 * status::null (buf, when cap is not 0), the struct statuses, status::range (length beyond MUSLIN_LENGTH_MAX;
 * denominator and decimals, each checked in every style), status::choice (style, direction, decimal sign),
 * status::buffer. The longest text is under 64 bytes.
 * muslin_length_format() in muslin/length.h. Since 1.0. */
inline answer<muslin::length_format_answer> length_format(muslin::length a, const muslin::format_spec &spec = {})
{
    muslin::length_format_answer answer;
    return asking::ask_text(answer, answer.text, [&](auto to, muslin_problem *problem) {
        return muslin_length_format(detail::in_c(a), detail::in_c(&spec), to.text, to.capacity, to.need,
                                    detail::in_c(&answer.exact), problem);
    });
}

} // namespace MUSLIN_CPP_FORM

} // namespace muslin

#endif
