// muslin/shrinkage.hpp - what washing and quilting do to a size: dimensional change, and the size to make.
// Written by generate.py from lib/abi/api.json: change that, not this file.
//
// SPDX-License-Identifier: MIT
#ifndef MUSLIN_SHRINKAGE_HPP
#define MUSLIN_SHRINKAGE_HPP

#include <muslin/shrinkage.h>
#include <muslin/seam.hpp>

namespace muslin {

/** enum muslin_governing_rule */
enum class governing_rule : std::int32_t {
    /** closely quilted: the layers go where the batting goes */
    batting = MUSLIN_GOVERNING_RULE_BATTING,
    /** as the fabric does */
    fabric = MUSLIN_GOVERNING_RULE_FABRIC,
    /** on the safe side where the quilt must not end too small */
    larger = MUSLIN_GOVERNING_RULE_LARGER,
    /** on the safe side where it must not end too large */
    smaller = MUSLIN_GOVERNING_RULE_SMALLER,
};

/** enum muslin_governing_source */
enum class governing_source : std::int32_t {
    /** the batting governs */
    batting = MUSLIN_GOVERNING_SOURCE_BATTING,
    /** the fabric governs */
    fabric = MUSLIN_GOVERNING_SOURCE_FABRIC,
    /** larger or smaller was asked, and they are alike */
    both = MUSLIN_GOVERNING_SOURCE_BOTH,
};

/** struct muslin_wash_spec. */
struct MUSLIN_CPP_TWIN wash_spec {
    using c_type = muslin_wash_spec;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** each as for shrinkage_change() */
    muslin::length before_width{};
    muslin::length after_width{};
    /** along the cloth, so */
    muslin::length before_length{};
    muslin::length after_length{};
};
static_assert(detail::is_twin<wash_spec>);

/** struct muslin_wash_change. */
struct MUSLIN_CPP_TWIN wash_change {
    using c_type = muslin_wash_change;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** doubled square ticks */
    std::int64_t area_before = 0;
    std::int64_t area_after = 0;
    /** ppm, nearest */
    std::int32_t change_across = 0;
    std::int32_t change_along = 0;
    /** ppm, nearest, from the areas themselves: neither of the two above nor their sum */
    std::int32_t change_area = 0;
    std::int32_t pad = 0;
};
static_assert(detail::is_twin<wash_change>);

/** struct muslin_shrinkage_spec. */
struct MUSLIN_CPP_TWIN shrinkage_spec {
    using c_type = muslin_shrinkage_spec;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** finished, the size that the call starts from */
    muslin::length width{};
    muslin::length length{};
    /** share lost to the quilting's take-up */
    std::int32_t quilting_across = 0;
    std::int32_t quilting_along = 0;
    /** share that the quilted quilt loses in the wash */
    std::int32_t washing_across = 0;
    std::int32_t washing_along = 0;
};
static_assert(detail::is_twin<shrinkage_spec>);

/** struct muslin_size_to_make. */
struct MUSLIN_CPP_TWIN size_to_make {
    using c_type = muslin_size_to_make;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** finished: wanted / ((1 - q)(1 - w)), rounded once, as asked */
    muslin::length make_width{};
    muslin::length make_length{};
    /** what the quilt must measure when quilted, before the wash: wanted / (1 - w), nearest tick */
    muslin::length quilted_width{};
    muslin::length quilted_length{};
    /** what the size to make ends at, quilted and washed, nearest tick */
    muslin::length washed_width{};
    muslin::length washed_length{};
    /** what multiplying would have said: wanted x (1 + q)(1 + w), nearest tick ... */
    muslin::length multiplied_width{};
    muslin::length multiplied_length{};
    /** ... and how far below the wanted size exactly so much ends: wanted less wanted x (1 - q^2)(1 - w^2), the
     * latter to the nearest tick */
    muslin::length short_width{};
    muslin::length short_length{};
    /** 1 when rounding lost nothing of make_width */
    muslin::truth width_exact{};
    std::int32_t length_exact = 0;
};
static_assert(detail::is_twin<size_to_make>);

/** struct muslin_washed_size. */
struct MUSLIN_CPP_TWIN washed_size {
    using c_type = muslin_washed_size;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** width x (1 - q), rounded once, as asked */
    muslin::length quilted_width{};
    muslin::length quilted_length{};
    /** width x (1 - q)(1 - w), rounded once, as asked */
    muslin::length washed_width{};
    muslin::length washed_length{};
    /** of the whole way, ppm, nearest: negative */
    std::int32_t change_across = 0;
    std::int32_t change_along = 0;
    /** so */
    std::int32_t change_area = 0;
    std::int32_t pad = 0;
};
static_assert(detail::is_twin<washed_size>);

/** struct muslin_governing. */
struct MUSLIN_CPP_TWIN governing {
    using c_type = muslin_governing;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** ppm lost: the one of the two that governs */
    std::int32_t share = 0;
    /** enum governing_source */
    muslin::governing_source source{};
};
static_assert(detail::is_twin<governing>);

/** struct muslin_prewash_spec. */
struct MUSLIN_CPP_TWIN prewash_spec {
    using c_type = muslin_prewash_spec;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** of cloth, after the wash */
    muslin::length needed_length{};
    /** of the cloth, before the wash */
    muslin::length usable_width = muslin::length::of_ticks(325120);
    /** share that the width loses, `at` 0 */
    std::int32_t across = 0;
    /** share that the length loses, `at` 1 */
    std::int32_t along = 0;
};
static_assert(detail::is_twin<prewash_spec>);

/** struct muslin_prewash. */
struct MUSLIN_CPP_TWIN prewash {
    using c_type = muslin_prewash;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** to wash, for the length needed afterwards: needed / (1 - along), up to a tick */
    muslin::length unshrunk_length{};
    /** usable after the wash: width x (1 - across), down to a tick */
    muslin::length washed_width{};
    /** unshrunk_length - needed_length */
    muslin::length lost_length{};
    /** usable_width - washed_width */
    muslin::length lost_width{};
};
static_assert(detail::is_twin<prewash>);

inline namespace MUSLIN_CPP_FORM {

/** Dimensional change in ppm to the nearest, negative when it shrank. before 1 .. MUSLIN_SIZE_MAX (`at` 0), after 0
 * .. the lesser of 10 x before and MUSLIN_SIZE_MAX (`at` 1), so that every change fits. Source: ISO 5077 (test
 * summary by a textile laboratory supplier).
 * muslin_shrinkage_change() in muslin/shrinkage.h. Since 1.0. */
inline answer<std::int32_t> shrinkage_change(muslin::length before, muslin::length after)
{
    std::int32_t ppm = 0;
    return asking::ask(ppm, [&](muslin_problem *problem) {
        return muslin_shrinkage_change(detail::in_c(before), detail::in_c(after), &ppm, problem);
    });
}

/** Both directions and the area of something measured before and after. `at` counts before_width 0, after_width 1,
 * before_length 2, after_length 3. Source: ISO 5077 as above; geometry for the area.
 * muslin_shrinkage_measure() in muslin/shrinkage.h. Since 1.0. */
inline answer<muslin::wash_change> shrinkage_measure(const muslin::wash_spec &spec = {})
{
    muslin::wash_change out;
    return asking::ask(out, [&](muslin_problem *problem) {
        return muslin_shrinkage_measure(detail::in_c(&spec), detail::in_c(&out), problem);
    });
}

/** From the size wanted in the end to the size to make: width and length are what the quilt shall measure when
 * quilted and washed. status::overflow, naming width or length, when a size to make passes MUSLIN_LENGTH_MAX.
 * Source: How to make a quilt finish at a certain size (blog, 2020), 90 / (1 - 0.10); geometry for two losses in
 * turn.
 * muslin_shrinkage_size_to_make() in muslin/shrinkage.h. Since 1.0. */
inline answer<muslin::size_to_make> shrinkage_size_to_make(const muslin::shrinkage_spec &spec = {},
                                                           const muslin::rounding_spec &rounding = {})
{
    muslin::size_to_make out;
    return asking::ask(out, [&](muslin_problem *problem) {
        return muslin_shrinkage_size_to_make(detail::in_c(&spec), detail::in_c(&rounding), detail::in_c(&out), problem);
    });
}

/** Backwards: what a made size (width and length of the spec) becomes by quilting and washing. A size to make that
 * was rounded up to a tick becomes, rounded down to a tick, the wanted size again. Source: geometry.
 * muslin_shrinkage_becomes() in muslin/shrinkage.h. Since 1.0. */
inline answer<muslin::washed_size> shrinkage_becomes(const muslin::shrinkage_spec &spec = {},
                                                     const muslin::rounding_spec &rounding = {})
{
    muslin::washed_size out;
    return asking::ask(out, [&](muslin_problem *problem) {
        return muslin_shrinkage_becomes(detail::in_c(&spec), detail::in_c(&rounding), detail::in_c(&out), problem);
    });
}

/** The size to make straight from a measured sample, without a percentage between that could be rounded: target x
 * before / after, rounded once, as asked. before and after 1 .. MUSLIN_SIZE_MAX (`at` 0 and 1), target 0 ..
 * MUSLIN_SIZE_MAX. The sample is made, quilted and washed as the quilt will be; one call for each direction.
 * Source: How to make a quilt finish at a certain size (blog, 2020).
 * muslin_shrinkage_from_sample() in muslin/shrinkage.h. Since 1.0. */
inline answer<muslin::rounded> shrinkage_from_sample(muslin::length before, muslin::length after, muslin::length target,
                                                     const muslin::rounding_spec &rounding = {})
{
    muslin::rounded out;
    return asking::ask(out, [&](muslin_problem *problem) {
        return muslin_shrinkage_from_sample(detail::in_c(before), detail::in_c(after), detail::in_c(target),
                                            detail::in_c(&rounding), detail::in_c(&out), problem);
    });
}

/** The share to reckon with when fabric and batting shrink differently. `fabric` (`at` 0) and `batting` (`at` 1)
 * are shares lost; status::choice when the rule is no enum governing_rule. A rule of thumb: what really happens
 * depends on how close the quilting is, and a washed sample tells more. Source: Post: planning for 3-5% batting
 * shrinkage (quilting forum, 2014) for the batting in a closely quilted quilt; the other rules common practice, no
 * source.
 * muslin_shrinkage_governs() in muslin/shrinkage.h. Since 1.0. */
inline answer<muslin::governing> shrinkage_governs(std::int32_t fabric, std::int32_t batting,
                                                   muslin::governing_rule governing_rule)
{
    muslin::governing out;
    return asking::ask(out, [&](muslin_problem *problem) {
        return muslin_shrinkage_governs(fabric, batting, detail::in_c(governing_rule), detail::in_c(&out), problem);
    });
}

/** What to wash so that enough cloth is left. First ask for the width, work out the length needed of cloth that
 * wide, then ask again: narrower cloth may need more strips. Buying steps and extras are for fabric_purchase(),
 * with its shrinkage at 0. Source: as for the size to make.
 * muslin_shrinkage_prewash() in muslin/shrinkage.h. Since 1.0. */
inline answer<muslin::prewash> shrinkage_prewash(const muslin::prewash_spec &spec = {})
{
    muslin::prewash out;
    return asking::ask(out, [&](muslin_problem *problem) {
        return muslin_shrinkage_prewash(detail::in_c(&spec), detail::in_c(&out), problem);
    });
}

} // namespace MUSLIN_CPP_FORM

} // namespace muslin

#endif
