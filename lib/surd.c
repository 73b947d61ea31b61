/* surd.c - values with a square root in them, rounded in a direction that is right.
 *
 * SPDX-License-Identifier: MIT */
#include "surd.h"

struct msl_surd msl_surd_of(int64_t whole, int64_t root, int64_t under, int64_t divisor)
{
    struct msl_surd surd = { whole, 0, { 0, 0 }, divisor, { 0, 0 } };
    surd.sign = root < 0 ? -1 : root > 0;
    surd.radicand = msl_wide_multiply(root * (root < 0 ? -1 : 1), (root < 0 ? -root : root) * under);
    return surd;
}

/*@ predicate are_roots(integer inner, integer root, integer r, integer m) = 0 <= inner && 0 <= root &&
  @         square(inner) <= m < square(inner + 1) && square(root) <= r + inner < square(root + 1);
  @ lemma root_is_reached: \forall integer inner, root, r, m, x;
  @         are_roots(inner, root, r, m) ==> (root_reaches(x, r, m) <==> x <= root);
  @ lemma root_stays_within: \forall integer inner, root, r, m, x; are_roots(inner, root, r, m) ==>
  @         (root_within(x, r, m) <==> root < x || (root == x && square(root) == r + inner && square(inner) == m)); */

/* The highest binary digit that the root of n can have; 0 of 0. */
/*@ requires 0 <= wide_value(n) < 0x40000000000000000000000000000000;
  @ assigns \nothing;
  @ ensures 0 <= \result <= 0x4000000000000000 && is_digit(\result);
  @ ensures \result == 0 ? wide_value(n) == 0 : wide_value(n) < square(2 * \result); */
static int64_t highest_digit(struct msl_wide n)
{
    int64_t digit = INT64_C(1) << 31;
    if (n.high != 0)
        return INT64_C(1) << 62;
    /*@ loop invariant 0 <= digit <= 0x80000000 && is_digit(digit);
      @ loop invariant square(digit) == digit * digit && square(digit) <= square(0x80000000) == 0x4000000000000000;
      @ loop invariant digit == 0 ? n.low == 0 : n.low < square(2 * digit);
      @ loop assigns digit;
      @ loop variant digit; */
    while ((uint64_t)digit * (uint64_t)digit > n.low) {
        /*@ assert n.low < square(digit); */
        /*@ assert (digit >> 1) == digit / 2 && (digit == 1 || digit == 2 * (digit / 2)); */
        digit >>= 1;
    }
    return digit;
}

/* As msl_root does it: binary digits from the highest down, each kept where the square still is not above n. */
int64_t msl_wide_root(struct msl_wide n, int32_t *whole_root)
{
    int64_t root = 0;
    /*@ loop invariant 0 <= root && 0 <= digit <= 0x4000000000000000 && is_digit(digit);
      @ loop invariant root + 2 * digit <= 0x8000000000000000;
      @ loop invariant square(root) <= wide_value(n) < square(root + (digit == 0 ? 1 : 2 * digit));
      @ loop assigns digit, root;
      @ loop variant digit; */
    for (int64_t digit = highest_digit(n); digit != 0; digit >>= 1) {
        /*@ assert square(root + digit) == (root + digit) * (root + digit); */
        if (msl_wide_compare(msl_wide_multiply(root + digit, root + digit), n) <= 0)
            root += digit;
        /*@ assert square(root) <= wide_value(n) < square(root + digit); */
        /*@ assert (digit >> 1) == digit / 2 && (digit == 1 || digit == 2 * (digit / 2)); */
    }
    *whole_root = msl_wide_compare(msl_wide_multiply(root, root), n) == 0;
    return root;
}

/* floor(a / b), b above 0. */
/*@ requires 0 < b;
  @ assigns \nothing;
  @ ensures \result * b <= a < (\result + 1) * b && (a % b == 0 <==> a == \result * b); */
static int64_t floor_of(int64_t a, int64_t b)
{
    return a / b - (a % b < 0 ? 1 : 0);
}

/*@ requires 0 <= wide_value(n) < 0x10000000000000000000000000000000;
  @ assigns \nothing;
  @ ensures wide_value(\result) == 4 * wide_value(n); */
static struct msl_wide four_times(struct msl_wide n)
{
    struct msl_wide twice = msl_wide_add(n, n);
    return msl_wide_add(twice, twice);
}

/* floor(sqrt(4 n + sqrt(16 m))), which is twice the root; and whether that is exact. As floor(sqrt x) is
 * floor(sqrt(floor x)), the inner root may be taken down first. */
/*@ requires \valid_read(surd) && surd_in_range(*surd) && \valid(whole_root) && \separated(surd, whole_root);
  @ assigns *whole_root;
  @ ensures 0 <= \result <= 0x5B00000000000000 && (*whole_root == 0 || *whole_root == 1);
  @ ensures wide_value(surd->radicand) < 0x4000000000000000000000000000000 ==> \result <= 0x4000000000000000;
  @ ensures \forall integer x; twice_reaches(*surd, x) <==> x <= \result;
  @ ensures \forall integer x; twice_within(*surd, x) <==> \result + (*whole_root != 0 ? 0 : 1) <= x; */
static int64_t twice_the_root(const struct msl_surd *surd, int32_t *whole_root)
{
    int32_t inner_is_whole = 1;
    int64_t inner = msl_wide_root(four_times(four_times(surd->inner)), &inner_is_whole);
    int64_t root = msl_wide_root(msl_wide_add(four_times(surd->radicand), msl_wide_from(inner)), whole_root);
    /*@ assert are_roots(inner, root, 4 * wide_value(surd->radicand), 16 * wide_value(surd->inner)); */
    /*@ assert square(0x4000000000000001) == 0x10000000000000008000000000000001; */
    /*@ assert square(0x5B00000000000000) == 0x20590000000000000000000000000000; */
    *whole_root &= inner_is_whole;
    return root;
}

/* The floor of 2 (p +- R), and whether that is exact: floor(p + x) = p + floor(x) for a whole p. */
/*@ requires \valid_read(surd) && surd_in_range(*surd) && \valid(is_whole) && \separated(surd, is_whole);
  @ assigns *is_whole;
  @ ensures *is_whole == 0 || *is_whole == 1;
  @ ensures \forall integer y; sum_reaches(*surd, y) <==> y <= \result;
  @ ensures \forall integer y; sum_within(*surd, y) <==> \result + (*is_whole != 0 ? 0 : 1) <= y; */
static int64_t twice_the_sum(const struct msl_surd *surd, int32_t *is_whole)
{
    int64_t twice = 2 * surd->whole;
    int64_t root = twice_the_root(surd, is_whole);
    int64_t above = root + 1 - *is_whole;
    /*@ assert surd->sign > 0 ==> \forall integer y; sum_reaches(*surd, y) <==> y <= twice + root; */
    /*@ assert surd->sign > 0 ==> \forall integer y; sum_within(*surd, y) <==> twice + above <= y; */
    /*@ assert surd->sign < 0 ==> \forall integer y; sum_reaches(*surd, y) <==> y <= twice - above; */
    /*@ assert surd->sign < 0 ==> \forall integer y; sum_within(*surd, y) <==> twice - root <= y; */
    if (surd->sign > 0)
        return twice + root;
    if (surd->sign < 0)
        return twice - above;
    *is_whole = 1;
    return twice;
}

/* floor(y / d) = floor(floor(y) / d) for a whole d above 0. So the floor of twice (p +- R) / d needs only that of twice
 * p +- R; its lowest bit tells the half. */
/*@ predicate is_floor(integer halves, integer twice, integer d) =
  @         0 < d && times(halves, d) <= twice < times(halves + 1, d);
  @ lemma floor_reaches: \forall integer twice, halves, d, h;
  @         is_floor(halves, twice, d) ==> (times(h, d) <= twice <==> h <= halves);
  @ lemma floor_stays_below: \forall integer twice, halves, d, h;
  @         is_floor(halves, twice, d) && twice != times(halves, d) ==> (twice <= times(h, d) <==> halves < h);
  @ lemma floor_stays_within: \forall integer halves, d, h;
  @         0 < d ==> (times(halves, d) <= times(h, d) <==> halves <= h); */
struct msl_exact msl_surd_exact(const struct msl_surd *surd)
{
    struct msl_exact exact;
    int32_t is_whole = 1;
    int64_t twice = twice_the_sum(surd, &is_whole);
    int64_t halves = floor_of(twice, surd->divisor);
    exact.floor = floor_of(halves, 2);
    exact.upper_half = halves != 2 * exact.floor;
    exact.on_tick = is_whole && twice % surd->divisor == 0 && !exact.upper_half;
    /*@ assert is_floor(halves, twice, surd->divisor); */
    /*@ assert halves == twice_of(exact); */
    /*@ assert exact.on_tick != 0 <==>
      @        is_whole != 0 && twice == times(halves, surd->divisor) && halves == 2 * exact.floor; */
    /*@ assert \forall integer h; times(h, surd->divisor) <= twice <==> h <= halves; */
    /*@ assert \forall integer h; half_reaches(*surd, surd->divisor, h) <==> h <= halves; */
    /*@ assert \forall integer h; twice + (is_whole != 0 ? 0 : 1) <= times(h, surd->divisor) <==>
      @        halves + (is_whole != 0 && twice == times(halves, surd->divisor) ? 0 : 1) <= h; */
    /*@ assert \forall integer h; half_within(*surd, surd->divisor, h) <==>
      @        twice + (is_whole != 0 ? 0 : 1) <= times(h, surd->divisor); */
    /*@ assert \forall integer h; half_within(*surd, surd->divisor, h) <==>
      @        halves + (is_whole != 0 && twice == times(halves, surd->divisor) ? 0 : 1) <= h; */
    /*@ assert \forall integer v; ceiling_of(exact) <= v <==>
      @        halves + (is_whole != 0 && twice == times(halves, surd->divisor) ? 0 : 1) <= 2 * v; */
    return exact;
}

void msl_surd_round(const struct msl_surd *surd, const struct muslin_rounding_spec *rounding,
                    struct muslin_rounded *out)
{
    (void)msl_grid_round(msl_surd_exact(surd), rounding, out);
}

int64_t msl_surd_floor(const struct msl_surd *surd)
{
    return msl_surd_exact(surd).floor;
}

int64_t msl_surd_ceiling(const struct msl_surd *surd)
{
    struct msl_exact exact = msl_surd_exact(surd);
    return exact.floor + (exact.on_tick ? 0 : 1);
}
