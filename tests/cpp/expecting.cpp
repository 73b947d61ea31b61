// The form without exceptions: calls return muslin::expected. Built with -fno-exceptions, and with MUSLIN_EXPECTED
// beside throwing.cpp, since a program may hold both.
//
// SPDX-License-Identifier: MIT
#include <muslin/muslin.hpp>

#include <cstdio>
#include <type_traits>

using namespace muslin::literals;

static_assert(std::is_same_v<decltype(muslin::stripset_yield()), muslin::expected<muslin::yield>>);

static int wrong = 0;

static void check(bool right, int line)
{
    if (!right) {
        std::printf("expecting.cpp:%d\n", line);
        wrong++;
    }
}
#define CHECK(right) check((right), __LINE__)

/** 36 patches of 2 in. */
static muslin::expected<muslin::id> patches(muslin::quilt &quilt)
{
    muslin::quilt_patch_spec patch;
    patch.fabric = *quilt.fabric({}, "blue");
    patch.width = patch.height = *quilt.fixed(2_in);
    return quilt.repeat(*quilt.patch(patch), 6, 6, std::vector<std::int32_t>{0}, 1, 1);
}

int expecting()
{
    const auto cut = muslin::seam_cut_from_finished(6_in); // handbook T01-01
    CHECK(cut && cut.has_value() && *cut == 6.5_in && cut.value() == 6.5_in);

    const auto failed = muslin::length_parse("2 1/2 inch or so");
    CHECK(!failed && failed.error().status() == muslin::status::text_trailing && failed.error().at() == 11);
    CHECK(!failed.error().sentence().empty());

    const auto overflow = muslin::length_add(muslin::length::of_ticks(MUSLIN_LENGTH_MAX), 1_ticks);
    CHECK(!overflow && overflow.error().status() == muslin::status::overflow);

    const auto written = muslin::length_format(2.5_in);
    CHECK(written && written->text == "2 1/2 in" && written->exact);

    auto quilt = muslin::quilt::create();
    const auto top = patches(*quilt);
    auto solution = muslin::solution::create(*quilt, *top);
    CHECK(solution && solution->totals()->patches == 36);
    const muslin::solution kept = *std::move(solution);
    CHECK(kept.cuts()->at(0).count == 36);
    CHECK(!kept.size({}));

    std::vector<muslin::blank_spec> squares(1);
    squares[0].cut_width = squares[0].cut_length = 5_in;
    squares[0].count = 7;
    long told = 0;
    const auto plan = muslin::cutplan::create({}, squares, {}, muslin::libc_allocator(), [&](auto...) { told++; });
    CHECK(plan && plan->totals()->cloth_length == 5_in);
    return wrong;
}
