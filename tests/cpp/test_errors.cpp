// What a failed call throws, and what a call leaves as it was.
//
// SPDX-License-Identifier: MIT
#include <doctest/doctest.h>
#include <muslin/muslin.hpp>

using namespace muslin::literals;

template <class Call> muslin::error failure(Call call)
{
    try {
        call();
    } catch (const muslin::error &failed) {
        return failed;
    }
    FAIL("nothing was thrown");
    return muslin::error(muslin_problem{});
}

TEST_CASE("an error names argument, value and limit, and has the library's sentence")
{
    muslin::stripquilt_spec wish;
    wish.strips = 40;
    wish.columns = wish.rows = 4;
    wish.allowance = 1.25_in; // two of them are the whole strip of 2 1/2 in
    const muslin::error failed = failure([&] { return muslin::stripquilt_plan(wish); });
    CHECK(failed.status() == muslin::status::seam_too_wide);
    CHECK(failed.argument() == muslin::argument::strip_cut);
    CHECK(failed.value() == (2.5_in).ticks());
    CHECK(failed.limit() == (2.5_in).ticks());
    CHECK(failed.sentence() == "Cut width of a strip is 2 1/2 in, but its seams take 2 1/2 in."); // of README.md
    CHECK(failed.sentence() == failed.what());
    CHECK(muslin::argument_words(failed.argument()) == "cut width of a strip");
}

TEST_CASE("an error in a text says where")
{
    const muslin::error failed = failure([] { return muslin::length_parse("2 1/2 inch or so"); });
    CHECK(failed.status() == muslin::status::text_trailing);
    CHECK(failed.at() == 11); // "or so" begins there
    CHECK(failed.argument() == muslin::argument::text);
}

TEST_CASE("a call that tells only a status has a sentence too")
{
    const muslin::error failed = failure([] { return muslin::length_divide(1_in, 0); });
    CHECK(failed.status() == muslin::status::divide_by_zero);
    CHECK(failed.sentence() == muslin::status_sentence(muslin::status::divide_by_zero));
    CHECK(muslin::status_name(failed.status()) == "ERR_DIVIDE_BY_ZERO");
}

TEST_CASE("an error is an exception of the standard library, and can be kept")
{
    muslin::error kept{muslin_problem{}};
    try {
        (void)muslin::length_parse("");
    } catch (const std::exception &failed) {
        kept = dynamic_cast<const muslin::error &>(failed);
    }
    CHECK(kept.status() == muslin::status::text_empty);
}

TEST_CASE("an array form stops at the first failing element, and says which")
{
    const std::vector<muslin::length> most{1_in, muslin::length::of_ticks(MUSLIN_LENGTH_MAX), 1_in};
    std::vector<muslin::length> out(3);
    const muslin::error failed = failure([&] { return muslin::length_add_n(most, most, out); });
    CHECK(failed.status() == muslin::status::overflow);
    CHECK(failed.at() == 1);
    CHECK(out == std::vector<muslin::length>{2_in, 0_in, 0_in});

    std::vector<muslin::status> statuses(3);
    CHECK(muslin::length_add_n(most, most, out, statuses) == 3);
    CHECK(statuses == std::vector{muslin::status::ok, muslin::status::overflow, muslin::status::ok});
    CHECK(out == std::vector<muslin::length>{2_in, 0_in, 2_in});
}

TEST_CASE("arrays that belong together must be equally long")
{
    const std::vector<muslin::length> two{1_in, 2_in}, three{1_in, 2_in, 3_in};
    std::vector<muslin::length> out(2);
    const muslin::error longer = failure([&] { return muslin::length_add_n(two, three, out); });
    CHECK((longer.status() == muslin::status::buffer && longer.value() == 3 && longer.limit() == 2));
    const muslin::error room = failure([&] { return muslin::length_subtract_n(three, three, out); });
    CHECK((room.argument() == muslin::argument::output && room.value() == 2 && room.limit() == 3));
    const std::int64_t counts[] = {1};
    CHECK(failure([&] { return muslin::length_dot(two, counts); }).argument() == muslin::argument::factor);
    std::vector<muslin::status> statuses(1);
    CHECK(failure([&] { return muslin::length_add_n(two, two, out, statuses); }).value() == 1);
    CHECK(out == std::vector<muslin::length>{0_in, 0_in});
    muslin::scatter_spec places;
    places.places = 9;
    CHECK(failure([&] { return muslin::scatter_prints(places, {5, 4}, {}, {-1, -1}); }).argument() ==
          muslin::argument::places);
    places.places = -1;
    CHECK(failure([&] { return muslin::scatter_prints(places, {5, 4}, {}); }).status() ==
          muslin::status::range);
}
