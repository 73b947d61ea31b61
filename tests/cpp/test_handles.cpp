// Handles: moved, never copied, given back once, with exceptions of progress in between.
//
// SPDX-License-Identifier: MIT
#include <doctest/doctest.h>
#include <muslin/muslin.hpp>

#include <cstdlib>
#include <functional>
#include <stdexcept>

using namespace muslin::literals;

// ---- what the compiler must refuse ---------------------------------------------------------------------------------

template <class Handle> inline constexpr bool moves_only = std::is_nothrow_move_constructible_v<Handle> &&
    std::is_nothrow_move_assignable_v<Handle> && !std::is_copy_constructible_v<Handle> &&
    !std::is_copy_assignable_v<Handle>;
static_assert(moves_only<muslin::quilt> && moves_only<muslin::solution> && moves_only<muslin::pressing> &&
              moves_only<muslin::cutplan> && moves_only<muslin::yardage>);

template <class Quilt> using made_fixed = decltype(std::declval<Quilt &>().fixed(muslin::length()));
template <class Quilt> using counted = decltype(std::declval<Quilt &>().counts());
template <template <class> class Does, class T, class = void> inline constexpr bool can = false;
template <template <class> class Does, class T> inline constexpr bool can<Does, T, std::void_t<Does<T>>> = true;
static_assert(can<made_fixed, muslin::quilt> && !can<made_fixed, const muslin::quilt>);
static_assert(can<counted, const muslin::quilt>);

// ---- an allocator that counts --------------------------------------------------------------------------------------

struct counter {
    long blocks = 0, most = -1, asked = 0;

    muslin_allocator allocator()
    {
        return {[](void *self, size_t size) { return static_cast<counter *>(self)->take(size); },
                [](void *self, void *block, size_t, size_t size) {
                    return static_cast<counter *>(self)->grow(block, size);
                },
                [](void *self, void *block, size_t) { static_cast<counter *>(self)->give(block); }, this};
    }
    bool refuses() { return most >= 0 && asked++ >= most; }
    void *take(size_t size) { return refuses() ? nullptr : (blocks++, std::malloc(size)); }
    void *grow(void *block, size_t size) { return refuses() ? nullptr : std::realloc(block, size); }
    void give(void *block)
    {
        blocks--;
        std::free(block);
    }
};

/** Nine patches of 2 in finished, five blue and four white. */
struct nine_patch {
    muslin::quilt quilt;
    muslin::id side, blue, white, top;

    explicit nine_patch(const muslin_allocator &allocator = muslin::libc_allocator())
        : quilt(muslin::quilt::create({}, allocator)), side(quilt.measure("side", 2_in)),
          blue(quilt.fabric({}, "blue")), white(quilt.fabric({}, "white"))
    {
        const muslin::id dark = patch(blue), light = patch(white);
        top = quilt.grid(3, 3, {dark, light, dark, light, dark, light, dark, light, dark});
    }
    muslin::id patch(muslin::id fabric)
    {
        muslin::quilt_patch_spec spec;
        spec.fabric = fabric;
        spec.width = spec.height = side;
        return quilt.patch(spec);
    }
};

// ---- owning --------------------------------------------------------------------------------------------------------

TEST_CASE("what is made is given back, once, wherever it was moved")
{
    counter memory;
    {
        muslin::quilt moved; // lives longest: solutions read it
        nine_patch patch(memory.allocator());
        CHECK(memory.blocks > 0);
        muslin::solution first = muslin::solution::create(patch.quilt, patch.top);
        muslin::solution second = std::move(first);
        CHECK_FALSE(first);
        CHECK(second);
        first = std::move(second);
        CHECK(first.totals().patches == 9);
        muslin::solution &itself = first;
        first = std::move(itself);
        CHECK(first.totals().patches == 9);
        first = muslin::solution::create(patch.quilt, patch.top); // the old one is given back
        std::vector<muslin::solution> several;
        for (int i = 0; i < 5; i++)
            several.push_back(muslin::solution::create(patch.quilt, patch.top));
        moved = std::move(patch.quilt); // which solutions do not mind
        CHECK(several.back().totals().patches == 9);
        CHECK(moved.name(patch.white) == "white");
    }
    CHECK(memory.blocks == 0);
}

TEST_CASE("a handle that owns nothing fails and does not crash")
{
    muslin::quilt none;
    CHECK_FALSE(none);
    CHECK_THROWS_AS(none.fixed(1_in), muslin::error);
    CHECK_THROWS_AS(none.counts(), muslin::error);
    try {
        (void)muslin::solution::create(none, {});
        FAIL("nothing was thrown");
    } catch (const muslin::error &failed) {
        CHECK(failed.status() == muslin::status::null);
    }
}

TEST_CASE("wherever memory ends, nothing is lost")
{
    long most = 0;
    for (bool done = false; !done; most++) {
        counter memory;
        memory.most = most;
        try {
            nine_patch patch(memory.allocator());
            const muslin::solution solution = muslin::solution::create(patch.quilt, patch.top);
            const muslin::pressing pressing = muslin::pressing::create(solution);
            done = true;
        } catch (const muslin::error &failed) {
            CHECK(failed.status() == muslin::status::no_memory);
        }
        CHECK(memory.blocks == 0);
    }
    CHECK(most > 5);
}

TEST_CASE("a plan that yardage lends is not given back twice")
{
    counter memory;
    {
        nine_patch patch(memory.allocator());
        const muslin::solution solution = muslin::solution::create(patch.quilt, patch.top);
        const muslin::yardage yardage = muslin::yardage::create(solution, {}, {}, memory.allocator());
        const long before = memory.blocks;
        {
            const muslin::cutplan lent = yardage.plan(0);
            CHECK(lent.totals().strips > 0);
            muslin::cutplan own = yardage.plan(1);
            own = muslin::cutplan::create({}, {}, {}, memory.allocator());
            CHECK(memory.blocks > before);
        }
        CHECK(memory.blocks == before);
        CHECK(yardage.plan(0).totals().strips > 0);
    }
    CHECK(memory.blocks == 0);
}

// ---- progress ------------------------------------------------------------------------------------------------------

/** 32 squares of 5 1/2 in, 16 of 6 and 8 of 9 1/2 need 60 in of a bolt of 40 in. */
static std::vector<muslin::blank_spec> squares()
{
    std::vector<muslin::blank_spec> rows(3);
    const muslin::length sides[] = {5.5_in, 6_in, 9.5_in};
    const std::int64_t counts[] = {32, 16, 8};
    for (std::size_t i = 0; i < 3; i++) {
        rows[i].cut_width = rows[i].cut_length = sides[i];
        rows[i].count = counts[i];
    }
    return rows;
}

/** Enough sizes that a search goes on for a while. */
static std::vector<muslin::blank_spec> many()
{
    std::vector<muslin::blank_spec> rows(12);
    for (std::size_t i = 0; i < rows.size(); i++) {
        rows[i].cut_width = 2.125_in + 0.75_in * static_cast<int>(i);
        rows[i].cut_length = 3.375_in + 0.875_in * static_cast<int>(i * 7 % 12);
        rows[i].count = 3 + static_cast<std::int64_t>(i % 5);
    }
    return rows;
}

TEST_CASE("a plan tells how it stands to anything that can be called")
{
    const muslin::cutplan plain = muslin::cutplan::create({}, squares());
    CHECK(plain.totals().cloth_length == 60_in); // the header's example
    long told = 0;
    const auto count = [&told](std::int64_t, std::int64_t best, std::int64_t bound) {
        told++;
        CHECK(best >= bound);
    };
    const muslin::cutplan watched =
        muslin::cutplan::create({}, squares(), {}, muslin::libc_allocator(), count); // a const one, without an answer
    CHECK(told > 0);
    CHECK(watched.totals().cloth_length == 60_in);
    std::function<bool(std::int64_t, std::int64_t, std::int64_t)> stop = [](auto...) { return true; };
    const muslin::cutplan stopped = muslin::cutplan::create({}, many(), {}, muslin::libc_allocator(), stop);
    CHECK(stopped.totals().stopped == muslin::cutplan_stopped::progress);
}

TEST_CASE("what progress throws comes out as it went in, and nothing is lost")
{
    counter memory;
    long told = 0;
    CHECK_THROWS_WITH_AS(muslin::cutplan::create({}, many(), {}, memory.allocator(),
                                                 [&told](std::int64_t, std::int64_t, std::int64_t) -> bool {
                                                     told++;
                                                     throw std::out_of_range("enough");
                                                 }),
                         "enough", std::out_of_range);
    CHECK(told == 1); // it is asked no more
    CHECK(memory.blocks == 0);
}

TEST_CASE("what progress throws comes out of yardage too")
{
    counter memory;
    muslin::quilt quilt = muslin::quilt::create();
    std::vector<muslin::id> patches;
    muslin::quilt_patch_spec patch;
    patch.fabric = quilt.fabric({}, "blue");
    for (const muslin::blank_spec &of : many()) {
        patch.width = quilt.fixed(of.cut_width);
        patch.height = quilt.fixed(of.cut_length);
        for (std::int64_t i = 0; i < of.count; i++)
            patches.push_back(quilt.patch(patch));
    }
    const muslin::solution solution = muslin::solution::create(quilt, quilt.join({}, patches));
    CHECK_THROWS_AS(muslin::yardage::create(solution, {}, {}, memory.allocator(), [](auto...) { throw 5; }), int);
    CHECK(memory.blocks == 0);
}
