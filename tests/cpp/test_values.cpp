// Lengths, ids and truth values; what may become what, and what must not.
//
// SPDX-License-Identifier: MIT
#include <doctest/doctest.h>
#include <muslin/muslin.hpp>

#include <array>
#include <limits>

using namespace muslin::literals;
using muslin::length;

// ---- what the compiler must refuse ---------------------------------------------------------------------------------

template <class A, class B> using added = decltype(std::declval<A>() + std::declval<B>());
template <class A, class B> using multiplied = decltype(std::declval<A>() * std::declval<B>());
template <class A, class B> using compared = decltype(std::declval<A>() < std::declval<B>());
template <template <class, class> class Does, class A, class B, class = void> inline constexpr bool does = false;
template <template <class, class> class Does, class A, class B>
inline constexpr bool does<Does, A, B, std::void_t<Does<A, B>>> = true;

static_assert(!std::is_convertible_v<int, length> && !std::is_constructible_v<length, int>);
static_assert(!std::is_convertible_v<double, length> && !std::is_constructible_v<length, double>);
static_assert(!std::is_convertible_v<length, std::int64_t> && !std::is_constructible_v<bool, length>);
static_assert(does<added, length, length> && !does<added, length, int> && !does<added, int, length>);
static_assert(does<multiplied, length, int> && does<multiplied, int, length> && !does<multiplied, length, length>);
static_assert(!does<multiplied, length, double> && !does<multiplied, float, length> && !does<multiplied, length, bool>);
static_assert(does<compared, length, length> && !does<compared, length, int>);
static_assert(!std::is_convertible_v<int, muslin::id> && !std::is_convertible_v<muslin::id, std::int64_t>);
static_assert(!std::is_convertible_v<muslin::edge, int> && !std::is_convertible_v<int, muslin::edge>);
static_assert(!std::is_convertible_v<muslin::id, bool> && std::is_constructible_v<bool, muslin::id>);

// Nothing is larger than in C.
static_assert(sizeof(length) == sizeof(muslin_len) && sizeof(muslin::yield) == sizeof(muslin_yield));
static_assert(std::is_trivially_copyable_v<length> && std::is_trivially_copyable_v<muslin::yield_spec>);

// ---- literals ------------------------------------------------------------------------------------------------------

// 8128 ticks are an inch, 320 a millimetre.
static_assert((1_in).ticks() == 8128 && (2.5_in).ticks() == 20320 && (.25_in).ticks() == 2032);
static_assert((1_ft).ticks() == 97536 && (1_yd).ticks() == 292608 && 1.5_yd == 54_in);
static_assert((1_mm).ticks() == 320 && (0.1_mm).ticks() == 32 && 2.54_cm == 1_in && 1_m == 1000_mm);
static_assert(1'000_in == 1000_in && 0_in == length() && 7_ticks == length::of_ticks(7));
static_assert((4'611'686'018'427'387'903_ticks).ticks() == MUSLIN_LENGTH_MAX);
static_assert(0.015625_in == 127_ticks); // 1/64 in

// What the literals of the compiler's own refusals go by; tests/cpp/run has them compiled.
static_assert(muslin::detail::ticks_of({'0', '.', '3'}, 8128) == muslin::detail::no_length);
static_assert(muslin::detail::ticks_of({'0', '.', '0', '1'}, 320) == muslin::detail::no_length);
static_assert(muslin::detail::ticks_of({'1', 'e', '3'}, 8128) == muslin::detail::no_length);
static_assert(muslin::detail::ticks_of({'0', 'x', '1'}, 8128) == muslin::detail::no_length);

// ---- sums ----------------------------------------------------------------------------------------------------------

TEST_CASE("lengths are added, taken away and multiplied exactly")
{
    CHECK(2.5_in + 0.25_in == 2.75_in);
    CHECK(2.5_in - 0.25_in == 2.25_in);
    CHECK(2.5_in * 6 == 15_in);
    CHECK(6u * 2.5_in == 15_in);
    CHECK(-(1_in) == 0_in - 1_in);
    length sum = 1_in;
    sum += 1_mm;
    sum -= 1_in;
    sum *= 10;
    CHECK(sum == 1_cm);
}

TEST_CASE("lengths are compared")
{
    CHECK((1_in < 26_mm && 1_in > 25_mm));
    CHECK((1_in <= 1_in && 1_in >= 1_in && 1_in != 1_cm));
    CHECK_FALSE(1_in < 1_in);
}

TEST_CASE("a sum beyond the largest length is refused, and leaves its variable")
{
    const length most = length::of_ticks(MUSLIN_LENGTH_MAX);
    length kept = most;
    const auto status_of = [](auto &&sum) {
        try {
            sum();
        } catch (const muslin::error &failed) {
            return failed.status();
        }
        return muslin::status::ok;
    };
    CHECK(status_of([&] { return kept += 1_ticks; }) == muslin::status::overflow);
    CHECK(kept == most);
    CHECK(status_of([&] { return -most - 1_ticks; }) == muslin::status::overflow);
    CHECK(status_of([&] { return most * 2; }) == muslin::status::overflow);
    CHECK(status_of([&] { return most * 1 - most; }) == muslin::status::ok);
    CHECK(status_of([&] { return length::of_ticks(std::numeric_limits<std::int64_t>::max()) + 1_in; }) ==
          muslin::status::range);
    CHECK(status_of([&] { return -length::of_ticks(std::numeric_limits<std::int64_t>::min()); }) ==
          muslin::status::range);
}

// ---- the other values ----------------------------------------------------------------------------------------------

TEST_CASE("a span is made of whatever lies side by side")
{
    const std::vector<length> vector{1_in, 2_in};
    const std::array<length, 2> array{1_in, 2_in};
    const length plain[] = {1_in, 2_in};
    CHECK(muslin::length_sum(vector) == 3_in);
    CHECK(muslin::length_sum(array) == 3_in);
    CHECK(muslin::length_sum(plain) == 3_in);
    CHECK(muslin::length_sum({1_in, 2_in}) == 3_in);
    CHECK(muslin::length_sum({plain + 1, 1}) == 2_in);
    CHECK(muslin::length_sum({}) == 0_in);
    const muslin::span<const length> span = vector;
    CHECK((span.size() == 2 && span[1] == 2_in && !span.empty() && span.end() - span.begin() == 2));
}

TEST_CASE("an id is none until a quilt gives it")
{
    CHECK_FALSE(muslin::id());
    CHECK(muslin::id::of_value(5));
    CHECK((muslin::id::of_value(5) == muslin::id::of_value(5) && muslin::id::of_value(5) != muslin::id()));
    CHECK(muslin::id() < muslin::id::of_value(5));
    CHECK(muslin::id_sort(muslin::id()) == muslin::sort{});
}

TEST_CASE("specs begin with the library's initial values, flags by name")
{
    muslin::yield_spec spec;
    CHECK((spec.size == sizeof(muslin_yield_spec) && spec.strip_length == 40_in && spec.end_trim == 0_in));
    spec.flags |= muslin::yield_spec::from_one_end;
    CHECK(spec.flags == MUSLIN_YIELD_FROM_ONE_END);
    CHECK(muslin::rounding_spec().direction == muslin::direction::nearest);
#if __cplusplus >= 202002L
    CHECK(muslin::stripset_yield({.strip_length = 42_in, .segment_cut = 10.5_in}).segments == 4); // handbook T11-02
#endif
}
