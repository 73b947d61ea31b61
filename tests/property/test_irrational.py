# SPDX-License-Identifier: MIT
"""Irrational sizes against mpmath at 60 digits, over the whole range: equal to the last tick."""

import mpmath
from hypothesis import given
from hypothesis import strategies as st

from asking import ask
from muslin_model.base import DOWN, NEAREST, SIZE_MAX, UP

any_size = st.integers(0, SIZE_MAX) | st.integers(0, 400).map(lambda n: n * 1016) | st.integers(SIZE_MAX - 99, SIZE_MAX)
ways = st.sampled_from([UP, DOWN, NEAREST])
GRIDS = st.sampled_from([1, 127, 1016, 320, 32]) | st.integers(1, 10**5)


def on_grid(exact, grid, direction):
    steps = exact / grid
    return int({UP: mpmath.ceil, DOWN: mpmath.floor, NEAREST: lambda x: mpmath.floor(x + mpmath.mpf(1) / 2)}[direction](
        steps)) * grid


def ck(call, arguments, formula, grid, direction):
    with mpmath.workdps(60):
        expected = on_grid(formula(*(mpmath.mpf(argument) for argument in arguments)), grid, direction)
    assert ask(call, *arguments, {"grid": grid, "direction": direction})["value"] == expected


@given(any_size, GRIDS, ways)
def test_roots_of_two_and_three(size, grid, direction):
    ck("length_times_root2", [size], lambda a: a * mpmath.sqrt(2), grid, direction)
    ck("length_over_root2", [size], lambda a: a / mpmath.sqrt(2), grid, direction)
    ck("length_equilateral_height", [size], lambda a: a * mpmath.sqrt(3) / 2, grid, direction)
    ck("length_equilateral_side", [size], lambda a: 2 * a / mpmath.sqrt(3), grid, direction)


@given(any_size, any_size, GRIDS, ways)
def test_a_hypotenuse(a, b, grid, direction):
    ck("length_hypotenuse", [a, b], lambda x, y: mpmath.sqrt(x * x + y * y), grid, direction)


@given(st.integers(0, 2 * SIZE_MAX**2) | any_size, GRIDS, ways)
def test_the_side_of_a_square_of_given_area(area, grid, direction):
    ck("length_root_of_area", [area], lambda doubled: mpmath.sqrt(doubled / 2), grid, direction)
