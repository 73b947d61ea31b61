// muslin/core.hpp - what the generated headers stand on: lengths, ids, errors, spans, handles, and how C is asked.
//
// SPDX-License-Identifier: MIT
//
// Two forms, one for each translation unit. Where exceptions are available a call returns its result and throws
// muslin::error. Where they are not (-fno-exceptions), or MUSLIN_EXPECTED is defined before the first of these headers,
// it returns muslin::expected<result>. Functions and handles of the two forms lie in different inline namespaces, so
// that a program may link both.
#ifndef MUSLIN_CORE_HPP
#define MUSLIN_CORE_HPP

#include <muslin/base.h>
#include <muslin/length.h>

#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <cstring>
#include <exception>
#include <initializer_list>
#include <string>
#include <string_view>
#include <type_traits>
#include <utility>
#include <variant>
#include <vector>

#if defined MUSLIN_EXPECTED || !defined __cpp_exceptions
#  define MUSLIN_CPP_FORM expecting
#else
#  define MUSLIN_CPP_FORM throwing
#  define MUSLIN_CPP_THROWS 1
#endif

// The structs of these headers are laid out as those of C, and handed to it as such: the compiler is told.
#if defined __GNUC__
#  define MUSLIN_CPP_TWIN __attribute__((__may_alias__))
#  define MUSLIN_CPP_SELDOM __attribute__((__cold__, __noinline__))
#else
#  define MUSLIN_CPP_TWIN
#  define MUSLIN_CPP_SELDOM
#endif

namespace muslin {

enum class status : std::int32_t;
enum class argument : std::int32_t;
enum class warning : std::uint32_t;

// ---- lengths -------------------------------------------------------------------------------------------------------

/** An exact length, in whole ticks of 1/8128 inch. No number becomes one by itself: write 2.5_in, or name the ticks. */
class length {
public:
    using c_type = muslin_len;

    constexpr length() noexcept = default;

    template <class N, std::enable_if_t<std::is_integral_v<N>, int> = 0>
    [[nodiscard]] static constexpr length of_ticks(N ticks) noexcept
    {
        length made;
        made.ticks_ = static_cast<muslin_len>(ticks);
        return made;
    }

    [[nodiscard]] constexpr std::int64_t ticks() const noexcept { return ticks_; }

    friend constexpr bool operator==(length a, length b) noexcept { return a.ticks_ == b.ticks_; }
    friend constexpr bool operator!=(length a, length b) noexcept { return a.ticks_ != b.ticks_; }
    friend constexpr bool operator<(length a, length b) noexcept { return a.ticks_ < b.ticks_; }
    friend constexpr bool operator>(length a, length b) noexcept { return a.ticks_ > b.ticks_; }
    friend constexpr bool operator<=(length a, length b) noexcept { return a.ticks_ <= b.ticks_; }
    friend constexpr bool operator>=(length a, length b) noexcept { return a.ticks_ >= b.ticks_; }

private:
    muslin_len ticks_ = 0;
};

namespace detail {

inline constexpr std::int64_t no_length = -1;

/** The ticks of a number as it is written, times a unit; no_length where that is not whole, too large, or no plain
 * decimal number. */
template <std::size_t N>
constexpr std::int64_t ticks_of(const char (&digits)[N], std::int64_t unit)
{
    std::int64_t number = 0, parts = 1;
    bool decimals = false;
    for (char sign : digits) {
        if (sign == '\'')
            continue;
        if (sign == '.') {
            decimals = true;
            continue;
        }
        const int digit = sign - '0';
        if (digit < 0 || digit > 9 || number > (MUSLIN_LENGTH_MAX - digit) / 10 || parts > MUSLIN_LENGTH_MAX / 10)
            return no_length;
        number = 10 * number + digit;
        parts *= decimals ? 10 : 1;
    }
    if (number > MUSLIN_LENGTH_MAX / unit || number * unit % parts != 0)
        return no_length;
    return number * unit / parts;
}

template <std::int64_t Unit, char... Digits>
constexpr length literal()
{
    constexpr char digits[] = {Digits...};
    constexpr std::int64_t ticks = ticks_of(digits, Unit);
    static_assert(ticks != no_length, "a literal is a decimal number, a whole number of ticks of 1/8128 in: 2.5_in");
    return length::of_ticks(ticks);
}

} // namespace detail

/** 2.5_in, 1_ft, 3_yd, 6_mm, 63.5_cm, 1.5_m, 20320_ticks: exact, or the program does not compile. */
namespace literals {

template <char... Digits> constexpr length operator""_ticks()
{
    return detail::literal<1, Digits...>();
}
template <char... Digits> constexpr length operator""_in()
{
    return detail::literal<MUSLIN_TICKS_PER_INCH, Digits...>();
}
template <char... Digits> constexpr length operator""_ft()
{
    return detail::literal<12 * MUSLIN_TICKS_PER_INCH, Digits...>();
}
template <char... Digits> constexpr length operator""_yd()
{
    return detail::literal<36 * MUSLIN_TICKS_PER_INCH, Digits...>();
}
template <char... Digits> constexpr length operator""_mm()
{
    return detail::literal<MUSLIN_TICKS_PER_MM, Digits...>();
}
template <char... Digits> constexpr length operator""_cm()
{
    return detail::literal<10 * MUSLIN_TICKS_PER_MM, Digits...>();
}
template <char... Digits> constexpr length operator""_m()
{
    return detail::literal<1000 * MUSLIN_TICKS_PER_MM, Digits...>();
}

} // namespace literals

// ---- other values --------------------------------------------------------------------------------------------------

/** A fabric, a measure or a node of one quilt; the initial one is none. */
class id {
public:
    using c_type = std::int64_t;

    constexpr id() noexcept = default;
    [[nodiscard]] static constexpr id of_value(std::int64_t value) noexcept
    {
        id made;
        made.value_ = value;
        return made;
    }
    [[nodiscard]] constexpr std::int64_t value() const noexcept { return value_; }
    explicit constexpr operator bool() const noexcept { return value_ != 0; }

    friend constexpr bool operator==(id a, id b) noexcept { return a.value_ == b.value_; }
    friend constexpr bool operator!=(id a, id b) noexcept { return a.value_ != b.value_; }
    friend constexpr bool operator<(id a, id b) noexcept { return a.value_ < b.value_; }

private:
    std::int64_t value_ = 0;
};

/** A truth value that takes the room of an integer, as in C. */
class truth {
public:
    using c_type = std::int32_t;

    constexpr truth() noexcept = default;
    constexpr truth(bool value) noexcept : value_(value ? 1 : 0) {}
    constexpr operator bool() const noexcept { return value_ != 0; }

private:
    std::int32_t value_ = 0;
};

/** Whether a sum of warnings holds one of them. */
[[nodiscard]] constexpr bool holds(std::uint32_t warnings, warning one) noexcept
{
    return (warnings & static_cast<std::uint32_t>(one)) != 0;
}

/** Elements of somebody else, side by side: of an array, a vector, a list in braces, or anything with data() and
 * size(). */
template <class T>
class span {
public:
    constexpr span() noexcept = default;
    constexpr span(T *data, std::size_t size) noexcept : data_(data), size_(size) {}
    template <std::size_t N>
    constexpr span(T (&array)[N]) noexcept : data_(array), size_(N) {}
    template <class Range, class = std::enable_if_t<std::is_convertible_v<
                               decltype(std::declval<Range &>().data()), T *>>>
    constexpr span(Range &&range) noexcept : data_(range.data()), size_(range.size()) {}
    template <class U = T, class = std::enable_if_t<std::is_const_v<U>>>
    constexpr span(std::initializer_list<std::remove_const_t<T>> list) noexcept : size_(list.size())
    {
        data_ = list.begin(); // lives as long as the call that it is written in
    }

    [[nodiscard]] constexpr T *data() const noexcept { return data_; }
    [[nodiscard]] constexpr std::size_t size() const noexcept { return size_; }
    [[nodiscard]] constexpr bool empty() const noexcept { return size_ == 0; }
    constexpr T &operator[](std::size_t at) const noexcept { return data_[at]; }
    [[nodiscard]] constexpr T *begin() const noexcept { return data_; }
    [[nodiscard]] constexpr T *end() const noexcept { return data_ + size_; }

private:
    T *data_ = nullptr;
    std::size_t size_ = 0;
};

/** The allocator of the C library: where handles get their memory unless told otherwise. */
[[nodiscard]] inline muslin_allocator libc_allocator() noexcept
{
    muslin_allocator made{};
    muslin_allocator_libc(&made);
    return made;
}

// ---- failures ------------------------------------------------------------------------------------------------------

/** What went wrong and where: a failed call throws this, or its expected<> holds it. */
class error : public std::exception {
public:
    explicit error(const muslin_problem &problem) noexcept : problem_(problem) {}

    /** One sentence that names argument, value and limit. */
    [[nodiscard]] const char *what() const noexcept override { return problem_.text; }
    [[nodiscard]] std::string sentence() const { return problem_.text; }
    [[nodiscard]] muslin::status status() const noexcept { return static_cast<muslin::status>(problem_.status); }
    /** Which input is meant; its words are argument_words(). */
    [[nodiscard]] muslin::argument argument() const noexcept
    {
        return static_cast<muslin::argument>(problem_.argument);
    }
    /** Byte in the text, or number of the row or element, at which it was found; else 0. */
    [[nodiscard]] std::int64_t at() const noexcept { return problem_.at; }
    /** Bytes of text concerned, else 0. */
    [[nodiscard]] std::int64_t bytes() const noexcept { return problem_.bytes; }
    /** The offending value as its argument is measured: ticks, count, ppm or choice. */
    [[nodiscard]] std::int64_t value() const noexcept { return problem_.value; }
    /** The limit that it broke, in the same unit; 0 where there is none. */
    [[nodiscard]] std::int64_t limit() const noexcept { return problem_.limit; }

private:
    muslin_problem problem_;
};

/** A result, or the error instead of it. Asking for what is not there ends the program. */
template <class T>
class [[nodiscard]] expected {
public:
    expected(T &&value) : holds_(std::in_place_index<0>, std::move(value)) {}
    expected(const error &failed) : holds_(std::in_place_index<1>, failed) {}

    [[nodiscard]] bool has_value() const noexcept { return holds_.index() == 0; }
    explicit operator bool() const noexcept { return has_value(); }

    [[nodiscard]] T &value() & { return present(std::get_if<0>(&holds_)); }
    [[nodiscard]] const T &value() const & { return present(std::get_if<0>(&holds_)); }
    [[nodiscard]] T &&value() && { return std::move(present(std::get_if<0>(&holds_))); }
    [[nodiscard]] T &operator*() & { return value(); }
    [[nodiscard]] const T &operator*() const & { return value(); }
    [[nodiscard]] T &&operator*() && { return std::move(*this).value(); }
    [[nodiscard]] T *operator->() { return &value(); }
    [[nodiscard]] const T *operator->() const { return &value(); }
    [[nodiscard]] const muslin::error &error() const { return present(std::get_if<1>(&holds_)); }

private:
    template <class Held>
    static Held &present(Held *held)
    {
        if (held == nullptr)
            std::abort();
        return *held;
    }

    std::variant<T, muslin::error> holds_;
};

// ---- values and memory as C sees them ------------------------------------------------------------------------------

namespace detail {

constexpr muslin_len in_c(length value) noexcept { return value.ticks(); }
constexpr std::int64_t in_c(id value) noexcept { return value.value(); }
constexpr std::int32_t in_c(truth value) noexcept { return value ? 1 : 0; }
template <class Enum, std::enable_if_t<std::is_enum_v<Enum>, int> = 0>
constexpr std::underlying_type_t<Enum> in_c(Enum value) noexcept
{
    return static_cast<std::underlying_type_t<Enum>>(value);
}

template <class Twin>
typename Twin::c_type *in_c(Twin *twin) noexcept
{
    return reinterpret_cast<typename Twin::c_type *>(twin);
}
template <class Twin>
const typename Twin::c_type *in_c(const Twin *twin) noexcept
{
    return reinterpret_cast<const typename Twin::c_type *>(twin);
}
template <class Enum, std::enable_if_t<std::is_enum_v<Enum>, int> = 0>
std::underlying_type_t<Enum> *in_c(Enum *choice) noexcept
{
    return reinterpret_cast<std::underlying_type_t<Enum> *>(choice);
}

constexpr std::int64_t *in_c(std::int64_t *number) noexcept { return number; }

/** Whether a struct may be handed to C as the one that it names. Its members' places are compared in the tests. */
template <class Twin>
inline constexpr bool is_twin = sizeof(Twin) == sizeof(typename Twin::c_type) &&
    alignof(Twin) == alignof(typename Twin::c_type) && std::is_standard_layout_v<Twin> &&
    std::is_trivially_copyable_v<Twin>;

static_assert(is_twin<length> && is_twin<id> && is_twin<truth>);

/** A problem of which C knows the size; the rest is written when a call fails. */
inline void prepare(muslin_problem &problem) noexcept
{
    problem.size = sizeof problem;
    problem.flags = 0;
    problem.status = MUSLIN_OK;
}

/** The problem of a call that tells only its status, or of what this header refuses itself. */
inline void describe(muslin_problem &problem, muslin_status status) noexcept
{
    problem = MUSLIN_PROBLEM_INIT;
    problem.status = status;
    std::strncpy(problem.text, muslin_status_sentence(status), sizeof problem.text - 1);
    problem.text[sizeof problem.text - 1] = '\0';
}

/** Whether arrays that belong together are equally long; the status and problem of those that are not. */
inline muslin_status same_size(std::size_t size, std::size_t wanted, muslin_argument which, muslin_problem *problem)
    noexcept
{
    if (size == wanted)
        return MUSLIN_OK;
    describe(*problem, MUSLIN_ERR_BUFFER);
    problem->argument = which;
    problem->value = static_cast<std::int64_t>(size);
    problem->limit = static_cast<std::int64_t>(wanted);
    return MUSLIN_ERR_BUFFER;
}

/** The problem of an array form, which tells only its status and where it stopped. */
inline muslin_status failed_at(muslin_status status, std::size_t failed, muslin_problem *problem) noexcept
{
    if (status != MUSLIN_OK) {
        describe(*problem, status);
        problem->at = static_cast<std::int64_t>(failed);
    }
    return status;
}

/** Room for one number a place: no more than any call takes, and never none, so that C says what is wrong with it. */
inline std::size_t places(std::int64_t wanted) noexcept
{
    return wanted < 1 || wanted > (1 << 24) ? 1 : static_cast<std::size_t>(wanted);
}

} // namespace detail

// ---- handles and progress ------------------------------------------------------------------------------------------

/** Owns what C made, and gives it back. One that was moved from, or never made, owns nothing: its calls fail. What was
 * made from it reads it, wherever it is moved to, and must be given back before it. */
template <class C, void (*Free)(C *)>
class handle {
public:
    handle() noexcept = default;
    handle(handle &&other) noexcept : c_(std::exchange(other.c_, nullptr)), lent_(other.lent_) {}
    handle &operator=(handle &&other) noexcept
    {
        handle old(std::move(other));
        std::swap(c_, old.c_);
        std::swap(lent_, old.lent_);
        return *this;
    }
    ~handle()
    {
        if (!lent_)
            Free(c_);
    }

    /** For calls of C. */
    [[nodiscard]] C *get() noexcept { return c_; }
    [[nodiscard]] const C *get() const noexcept { return c_; }
    explicit operator bool() const noexcept { return c_ != nullptr; }

    /** Where C writes what it makes; only of a handle that owns nothing. */
    [[nodiscard]] C **made() noexcept { return &c_; }
    /** Where C writes what stays its own: what is lent is not given back. */
    [[nodiscard]] const C **lent() noexcept
    {
        lent_ = true;
        return const_cast<const C **>(&c_);
    }

private:
    C *c_ = nullptr;
    bool lent_ = false;
};

/** Told nothing: the search runs to its end. */
struct no_progress {};

namespace detail {

/** A callable that C can call: what it throws waits until C is done, and ends the search. */
template <class Progress>
class teller {
public:
    explicit teller(Progress &progress) noexcept : progress_(progress) {}

    template <class... Numbers>
    static std::int32_t tell(void *context, Numbers... numbers) noexcept
    {
        teller &self = *static_cast<teller *>(context);
#ifdef __cpp_exceptions
        try {
            return self.call(numbers...);
        } catch (...) {
            self.thrown_ = std::current_exception();
            return 1;
        }
#else
        return self.call(numbers...);
#endif
    }

    template <class Callback>
    [[nodiscard]] Callback callback() const noexcept
    {
        if constexpr (std::is_same_v<std::decay_t<Progress>, no_progress>)
            return nullptr;
        else
            return tell;
    }
    [[nodiscard]] void *context() noexcept { return this; }

    muslin_status done(muslin_status status)
    {
#ifdef __cpp_exceptions
        if (thrown_)
            std::rethrow_exception(thrown_);
#endif
        return status;
    }

private:
    template <class... Numbers>
    std::int32_t call(Numbers... numbers)
    {
        if constexpr (std::is_void_v<std::invoke_result_t<Progress &, Numbers...>>) {
            progress_(numbers...);
            return 0;
        } else {
            return progress_(numbers...) ? 1 : 0;
        }
    }

    Progress &progress_;
    std::exception_ptr thrown_;
};

} // namespace detail

// ---- asking --------------------------------------------------------------------------------------------------------

inline namespace MUSLIN_CPP_FORM {

#ifdef MUSLIN_CPP_THROWS
template <class T> using answer = T;
#else
template <class T> using answer = expected<T>;
#endif

namespace asking {
/** What comes of a failed call; apart, so that calls that succeed stay short. */
template <class T>
MUSLIN_CPP_SELDOM answer<T> failed(muslin_status status, muslin_problem &problem)
{
    if (problem.status == MUSLIN_OK)
        detail::describe(problem, status);
#ifdef MUSLIN_CPP_THROWS
    throw error(problem);
#else
    return error(problem);
#endif
}

/** One call of C that writes into the result. */
template <class T, class Call>
inline answer<T> ask(T &result, Call &&call)
{
    muslin_problem problem;
    detail::prepare(problem);
    const muslin_status status = call(&problem);
    if (status != MUSLIN_OK)
        return failed<T>(status, problem);
    return std::move(result);
}

/** Where a call writes its rows, or only how many there are. */
template <class Row>
struct page {
    Row *rows;
    std::size_t capacity;
    std::size_t *count;
};

/** How many rows are there, then the rows. */
template <class T, class Row, class Call>
answer<T> ask_rows(T &result, std::vector<Row> &rows, Call &&call)
{
    return ask(result, [&](muslin_problem *problem) {
        using row = std::remove_pointer_t<decltype(detail::in_c(rows.data()))>;
        std::size_t count = 0;
        const muslin_status status = call(page<row>{nullptr, 0, &count}, problem);
        if (status != MUSLIN_OK || count == 0)
            return status;
        rows.resize(count);
        return call(page<row>{detail::in_c(rows.data()), count, &count}, problem);
    });
}

/** Where a call writes its text, or only how long it is. */
struct line {
    char *text;
    std::size_t capacity;
    std::size_t *need;
};

/** How long is the text, then the text. */
template <class T, class Call>
answer<T> ask_text(T &result, std::string &text, Call &&call)
{
    return ask(result, [&](muslin_problem *problem) {
        std::size_t need = 0;
        const muslin_status status = call(line{nullptr, 0, &need}, problem);
        if (status != MUSLIN_OK || need == 0)
            return status;
        text.resize(need - 1); // any string has room for the terminator
        return call(line{text.data(), need, &need}, problem);
    });
}

} // namespace asking

#ifdef MUSLIN_CPP_THROWS

/** Exact, or an error is thrown: status::range where one lies beyond MUSLIN_LENGTH_MAX, status::overflow where the
 * result would. The other form has length_add() and its like. */
inline length operator+(length a, length b)
{
    length sum;
    return asking::ask(sum, [&](muslin_problem *) {
        return muslin_length_add(a.ticks(), b.ticks(), detail::in_c(&sum));
    });
}
inline length operator-(length a, length b)
{
    length rest;
    return asking::ask(rest, [&](muslin_problem *) {
        return muslin_length_subtract(a.ticks(), b.ticks(), detail::in_c(&rest));
    });
}
template <class N, std::enable_if_t<std::is_integral_v<N> && !std::is_same_v<N, bool>, int> = 0>
length operator*(length a, N factor)
{
    static_assert(sizeof(N) < 8 || std::is_signed_v<N>, "a factor of 64 bits has a sign");
    length product;
    return asking::ask(product, [&](muslin_problem *) {
        return muslin_length_multiply(a.ticks(), static_cast<std::int64_t>(factor), detail::in_c(&product));
    });
}
template <class N, std::enable_if_t<std::is_integral_v<N> && !std::is_same_v<N, bool>, int> = 0>
length operator*(N factor, length a) { return a * factor; }
inline length operator-(length a) { return length() - a; }
inline length &operator+=(length &a, length b) { return a = a + b; }
inline length &operator-=(length &a, length b) { return a = a - b; }
template <class N, class = decltype(length() * N())>
length &operator*=(length &a, N factor) { return a = a * factor; }

#endif

} // namespace MUSLIN_CPP_FORM

} // namespace muslin

#endif
