# SPDX-License-Identifier: MIT
"""Exact arithmetic, rounding and irrational sizes against fractions and whole-number roots."""

from hypothesis import given
from hypothesis import strategies as st

from asking import ask
from muslin_model import length as model
from questions import agree, as_object, lengths, roundings, sizes, whole_numbers

PLAIN = [("add", lengths), ("subtract", lengths), ("multiply", whole_numbers)]
ROOTS = ["times_root2", "over_root2", "equilateral_height", "equilateral_side"]


@given(st.sampled_from(PLAIN).flatmap(lambda call: st.tuples(st.just(call[0]), lengths, call[1])))
def test_sums_and_products_are_exact_or_refused(question):
    call, a, b = question
    agree(lambda: ask(f"length_{call}", a, b), lambda: getattr(model, call)(a, b))


@given(st.lists(lengths, max_size=8))
def test_a_sum_does_not_depend_on_order(values):
    agree(lambda: ask("length_sum", values), lambda: model.total(values))
    agree(lambda: ask("length_sum", values[::-1]), lambda: model.total(values))


@given(st.lists(st.tuples(lengths, whole_numbers), max_size=6))
def test_a_sum_of_products_is_exact_or_refused(pairs):
    values, factors = [a for a, _ in pairs], [n for _, n in pairs]
    agree(lambda: ask("length_dot", values, factors), lambda: model.dot(values, factors))


@given(lengths, whole_numbers, roundings())
def test_a_quotient_is_rounded_once(a, divisor, rounding):
    agree(lambda: ask("length_divide", a, divisor, rounding),
          lambda: model.divide(a, divisor, as_object(rounding)))


@given(lengths, whole_numbers, whole_numbers, roundings())
def test_a_scaled_length_is_rounded_once(a, numerator, denominator, rounding):
    agree(lambda: ask("length_scale", a, numerator, denominator, rounding),
          lambda: model.scale(a, numerator, denominator, as_object(rounding)))


@given(lengths, roundings())
def test_a_length_snaps_to_its_grid(a, rounding):
    agree(lambda: ask("length_snap", a, rounding), lambda: model.snap(a, as_object(rounding)))


@given(st.sampled_from(ROOTS), sizes, roundings())
def test_an_irrational_size_is_the_correctly_rounded_one(call, a, rounding):
    agree(lambda: ask(f"length_{call}", a, rounding), lambda: getattr(model, call)(a, as_object(rounding)))


@given(sizes, sizes, roundings())
def test_a_hypotenuse_is_the_correctly_rounded_one(a, b, rounding):
    agree(lambda: ask("length_hypotenuse", a, b, rounding),
          lambda: model.hypotenuse(a, b, as_object(rounding)))


@given(st.integers(1, 2000), st.integers(1, 2000), st.integers(1, 2000), roundings())
def test_a_hypotenuse_that_is_whole_is_exact(m, n, k, rounding):
    a, b = abs(m * m - n * n) * k % 2**29, 2 * m * n * k % 2**29
    agree(lambda: ask("length_hypotenuse", a, b, rounding),
          lambda: model.hypotenuse(a, b, as_object(rounding)))


areas = st.one_of(st.integers(0, 2**61), sizes.map(lambda a: 2 * a * a % 2**62), st.integers(-1, 10),
                  st.sampled_from([2**61, 2**61 + 1, -(2**63), 2**63 - 1]))


@given(areas, roundings())
def test_the_side_of_a_square_is_the_correctly_rounded_one(area, rounding):
    agree(lambda: ask("length_root_of_area", area, rounding),
          lambda: model.root_of_area(area, as_object(rounding)))
