// every_call.hpp - what the program that every_call.py writes is made of: requests by chance, two quilts of one tag,
// and comparisons of what comes back through C and through C++.
//
// SPDX-License-Identifier: MIT
#ifndef EVERY_CALL_HPP
#define EVERY_CALL_HPP

#include <muslin/muslin.hpp>

#include <cstddef>
#include <cstdio>
#include <map>
#include <memory>
#include <string>
#include <string_view>
#include <vector>

#ifndef ROUNDS
#  define ROUNDS 1000
#endif

// ---- what is counted -----------------------------------------------------------------------------------------------

struct counts {
    long right = 0, refused = 0;
};

inline std::map<std::string, counts> asked;
inline std::string asking_now = "initial values";
inline long differences = 0;

inline void differs(const char *what)
{
    if (differences++ < 20)
        std::printf("%s: %s differs\n", asking_now.c_str(), what);
}

inline void tally(const char *name, muslin_status status)
{
    (status == MUSLIN_OK ? asked[name].right : asked[name].refused)++;
}

inline int report(std::size_t functions)
{
    std::size_t always_refused = 0;
    long questions = 0;
    for (const auto &[name, of] : asked) {
        questions += of.right + of.refused;
        if (of.right == 0 && ROUNDS >= 1000) { // of fewer, all may be refused
            std::printf("never answered: %s\n", name.c_str());
            always_refused++;
        }
    }
    if (asked.size() != functions)
        std::printf("%zu functions asked of %zu\n", asked.size(), functions);
    std::printf("%zu functions, %ld questions, %ld differences\n", asked.size(), questions, differences);
    return differences != 0 || always_refused != 0 || asked.size() != functions;
}

// ---- comparisons ---------------------------------------------------------------------------------------------------

inline void same_bytes(const void *cpp, const void *c, std::size_t size)
{
    if (size != 0 && std::memcmp(cpp, c, size) != 0)
        differs("what was written");
}

template <class T> long long number_of(T value)
{
    if constexpr (std::is_same_v<T, muslin::length>)
        return value.ticks();
    else if constexpr (std::is_same_v<T, muslin::id>)
        return value.value();
    else
        return static_cast<long long>(value);
}

template <class Cpp, class C>
void same(const Cpp &cpp, const C &c)
{
    if constexpr (std::is_convertible_v<C, std::string_view>) {
        if (std::string_view(cpp) != std::string_view(c))
            differs("text");
    } else if constexpr (std::is_arithmetic_v<C>) {
        if (number_of(cpp) != number_of(c))
            differs("a number");
    } else {
        static_assert(sizeof cpp == sizeof c);
        same_bytes(&cpp, &c, sizeof c);
    }
}

template <class Cpp, class C>
void same(const std::vector<Cpp> &cpp, const std::vector<C> &c)
{
    static_assert(sizeof(Cpp) == sizeof(C));
    if (cpp.size() != c.size())
        differs("the number of rows");
    else
        same_bytes(cpp.data(), c.data(), c.size() * sizeof(C));
}

inline void same_problem(const muslin::error &failed, muslin_status status, const muslin_problem *problem)
{
    if (static_cast<muslin_status>(failed.status()) != status)
        differs("the status");
    if (problem == nullptr ? failed.sentence() != muslin_status_sentence(status) :
            failed.sentence() != problem->text || static_cast<int>(failed.argument()) != problem->argument ||
            failed.at() != problem->at || failed.value() != problem->value || failed.limit() != problem->limit ||
            failed.bytes() != problem->bytes)
        differs("the problem");
}

/** Asks C++ what C was asked, and compares. */
template <class Call, class Compare>
void attempt(const char *name, muslin_status status, const muslin_problem *problem, Call call, Compare compare)
{
    asking_now = name;
    tally(name, status);
#ifdef MUSLIN_CPP_THROWS
    try {
        const auto got = call();
        status == MUSLIN_OK ? compare(got) : differs("success");
    } catch (const muslin::error &failed) {
        same_problem(failed, status, problem);
    }
#else
    const auto got = call();
    if (!got)
        same_problem(got.error(), status, problem);
    else if (status == MUSLIN_OK)
        compare(*got);
    else
        differs("success");
#endif
}

// ---- values as C++ takes them --------------------------------------------------------------------------------------

/** A number that becomes whatever is asked for. */
template <class N> struct any {
    N number;
    operator muslin::length() const { return muslin::length::of_ticks(number); }
    operator muslin::id() const { return muslin::id::of_value(number); }
    template <class T, std::enable_if_t<std::is_enum_v<T> || std::is_integral_v<T>, int> = 0>
    operator T() const { return static_cast<T>(number); }
};
template <class N> any(N) -> any<N>;

template <class T, class N> T given(N number) { return static_cast<T>(number); }

template <class Twin, class C> Twin twin(const C &c)
{
    Twin made;
    static_assert(sizeof made == sizeof c);
    std::memcpy(static_cast<void *>(&made), &c, sizeof c);
    return made;
}

template <class Twin, class C> std::vector<Twin> twins(const std::vector<C> &rows)
{
    std::vector<Twin> made;
    for (const C &row : rows)
        made.push_back(twin<Twin>(row));
    return made;
}

template <class T, class N> muslin::span<const T> span_of(const std::vector<N> &numbers)
{
    static_assert(sizeof(T) == sizeof(N));
    return {reinterpret_cast<const T *>(numbers.data()), numbers.size()};
}

template <class T> std::vector<T> cut_to(const std::vector<T> &rows, std::size_t count)
{
    return {rows.begin(), rows.begin() + static_cast<std::ptrdiff_t>(count)};
}

#ifdef MUSLIN_CPP_THROWS
template <class T> T sure(T &&got) { return std::move(got); }
#else
template <class T> T sure(muslin::expected<T> &&got) { return *std::move(got); }
#endif

// ---- requests ------------------------------------------------------------------------------------------------------

/** What is asked about: a nine-patch in two fabrics, sewn, pressed, planned and bought. */
struct bench {
    muslin::quilt quilt;
    std::vector<muslin::id> fabrics, measures, nodes;
    muslin::solution solution;
    muslin::pressing pressing;
    muslin::yardage yardage;
    muslin::cutplan cutplan;

    bench()
    {
        using namespace muslin::literals;
        muslin::quilt_spec spec;
        spec.tag = 7; // of one tag, both quilts know the same ids
        quilt = sure(muslin::quilt::create(spec));
        fabrics = {sure(quilt.fabric({}, "blue")), sure(quilt.fabric({}, "white"))};
        measures = {sure(quilt.measure("side", 2_in)), sure(quilt.fixed(3_in))};
        for (muslin::id fabric : fabrics) {
            muslin::quilt_patch_spec patch;
            patch.fabric = fabric;
            patch.width = patch.height = measures[0];
            nodes.push_back(sure(quilt.patch(patch)));
        }
        nodes.push_back(sure(quilt.grid(3, 3, nine())));
        others();
        solution = sure(muslin::solution::create(quilt, nodes[2]));
        pressing = sure(muslin::pressing::create(solution));
        yardage = sure(muslin::yardage::create(solution));
        cutplan = sure(yardage.plan(0));
    }

    std::vector<muslin::id> nine() const
    {
        const muslin::id dark = nodes[0], light = nodes[1];
        return {dark, light, dark, light, dark, light, dark, light, dark};
    }

    /** One node of every other kind, so that each can be read. */
    void others()
    {
        const muslin::id blue = fabrics[0], dark = nodes[0], small = measures[0];
        muslin::quilt_unit_spec unit;
        unit.width = measures[1];
        nodes.push_back(sure(quilt.unit(unit, fabrics)));
        muslin::quilt_sum_spec term;
        term.measure = small;
        measures.push_back(sure(quilt.sum({term, term})));
        muslin::quilt_trim_spec trim;
        trim.left = small;
        nodes.push_back(sure(quilt.trim(nodes[2], trim)));
        muslin::quilt_diagonal_spec field;
        field.side_fabric = field.corner_fabric = blue;
        nodes.push_back(sure(quilt.diagonal(field, {dark})));
        muslin::quilt_sixty_piece_spec piece;
        piece.fabric = blue;
        muslin::quilt_sixty_spec sixty;
        sixty.height = small;
        sixty.end_fabric = blue;
        nodes.push_back(sure(quilt.sixty(sixty, {piece})));
        muslin::quilt_pinwheel_spec pinwheel;
        pinwheel.centre = pinwheel.top = pinwheel.right = pinwheel.bottom = pinwheel.left = dark;
        nodes.push_back(sure(quilt.pinwheel(pinwheel)));
        muslin::quilt_set_in_spec set_in;
        set_in.centre = dark;
        set_in.left_width = small;
        set_in.left_fabric = blue;
        nodes.push_back(sure(quilt.set_in(set_in)));
        nodes.push_back(sure(quilt.shape(twins<muslin::corner_spec>(halves()), {blue, blue}, {}, {})));
    }

    /** A square of 3 in, cut from corner to corner: its outline, then its two pieces. */
    static std::vector<muslin_corner_spec> halves()
    {
        static const int corners[][3] = {{-1, 0, 0}, {-1, 3, 0}, {-1, 3, 3}, {-1, 0, 3}, {0, 0, 0},
                                         {0, 3, 0},  {0, 0, 3},  {1, 3, 0},  {1, 3, 3},  {1, 0, 3}};
        std::vector<muslin_corner_spec> rows;
        for (const auto &[piece, x, y] : corners) {
            muslin_corner_spec row = MUSLIN_CORNER_SPEC_INIT;
            row.piece = piece;
            row.x = x * MUSLIN_TICKS_PER_INCH;
            row.y = y * MUSLIN_TICKS_PER_INCH;
            rows.push_back(row);
        }
        return rows;
    }
};


class requests {
public:
    muslin_allocator allocator = muslin::libc_allocator();

    std::uint32_t next()
    {
        state_ = state_ * 6364136223846793005u + 1442695040888963407u;
        return static_cast<std::uint32_t>(state_ >> 33);
    }
    bool mostly() { return next() % 8 < 5; }
    bool often() { return next() % 4 == 0; }
    bool now_and_then() { return next() % 8 == 0; }
    std::int64_t one_of(std::initializer_list<std::int64_t> values)
    {
        return next() % 64 == 0 ? -3 : values.begin()[next() % values.size()];
    }
    std::int64_t small() { return one_of({0, 1, 1, 2, 2, 3, 4, 6, 9, 500}); }
    std::int64_t length() { return one_of({0, 2032, 4064, 8128, 16256, 20320, 40640, 48768, 97536, 325120, 731520}); }
    std::size_t rows() { return next() % 5; }
    std::size_t places(std::int64_t wanted)
    {
        return wanted < 1 || wanted > (1 << 24) ? 1 : static_cast<std::size_t>(wanted);
    }
    std::string text()
    {
        static const char *const texts[] = {"2 1/2 in", "6 cm", "1 yd 3 in", "blue", "", "3/0", "9 9", "1/3"};
        return texts[next() % 8];
    }
    std::int64_t fabric() { return any_id(c_.fabrics, 2); }
    std::int64_t measure() { return any_id(c_.measures, 3); }
    std::int64_t part() { return often() ? measure() : often() ? node() : fabric(); }
    bool yes() { return next() % 2 == 0; }
    std::int64_t node() { return any_id(c_.nodes, static_cast<std::uint32_t>(c_.nodes.size())); }

    muslin_quilt *c_quilt() { return c_.quilt.get(); }
    const muslin_solution *c_solution() { return c_.solution.get(); }
    const muslin_pressing *c_pressing() { return c_.pressing.get(); }
    const muslin_yardage *c_yardage() { return c_.yardage.get(); }
    const muslin_cutplan *c_cutplan() { return c_.cutplan.get(); }
    muslin::quilt &cpp_quilt() { return cpp_.quilt; }
    muslin::solution &cpp_solution() { return cpp_.solution; }
    muslin::pressing &cpp_pressing() { return cpp_.pressing; }
    muslin::yardage &cpp_yardage() { return cpp_.yardage; }
    muslin::cutplan &cpp_cutplan() { return cpp_.cutplan; }

private:
    /** Mostly of the right sort; now and then of another, or of nothing. */
    std::int64_t any_id(const std::vector<muslin::id> &ids, std::uint32_t count)
    {
        if (now_and_then())
            return often() ? 0 : c_.nodes[0].value();
        return ids[next() % count].value();
    }

    std::uint64_t state_ = 1;
    bench c_, cpp_;
};

/** What hardly comes about by chance: now and then it is given. */
template <class Asked> void known(Asked &it, requests &from)
{
    if (!from.mostly())
        return;
    if constexpr (std::is_same_v<Asked, std::vector<muslin_corner_spec>>) {
        it = bench::halves();
    } else if constexpr (std::is_same_v<Asked, muslin_carry_on_spec>) {
        it = MUSLIN_CARRY_ON_SPEC_INIT;
        it.cut_total = 81280; // 10 in, which came out at 8 1/2 in
        it.strips = 4;
        it.measured = it.later_cut = 69088;
    } else if constexpr (std::is_same_v<Asked, muslin_stripquilt_spec>) {
        it = MUSLIN_STRIPQUILT_SPEC_INIT;
        it.strips = 42;
        it.columns = it.rows = from.small();
    } else if constexpr (std::is_same_v<Asked, muslin_quilt_diagonal_spec>) {
        it = MUSLIN_QUILT_DIAGONAL_SPEC_INIT;
        it.side_fabric = it.corner_fabric = from.fabric();
    }
}

#endif
