# SPDX-License-Identifier: MIT
"""Length against Python's fractions."""
import copy
import pickle
from decimal import Decimal
from fractions import Fraction
from typing import Any, Callable, List

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

import muslin
from muslin import Direction, InexactError, Length, LengthLike, Style, LengthUnit

TICK = Fraction(1, 8128)  # of an inch: 1/64 in is 127 ticks and, with 25.4 mm to the inch, 1 mm is 320
MM = Fraction(10, 254)

settings.register_profile("lengths", deadline=None, database=None, derandomize=True, max_examples=200)
settings.load_profile("lengths")

ticks = st.integers(-10**12, 10**12) | st.integers(-muslin.LENGTH_MAX, muslin.LENGTH_MAX)
lengths = ticks.map(Length)
small = st.integers(-10**9, 10**9).map(Length)


# ---- text -----------------------------------------------------------------------------------------------------------

@given(lengths)
def test_its_text_gives_it_back(length: Length) -> None:
    assert Length.parse(str(length)) == length


@given(lengths)
def test_its_repr_gives_it_back(length: Length) -> None:
    assert eval(repr(length), {"Length": Length}) == length


@given(lengths, st.sampled_from(list(Style)), st.booleans(), st.booleans(), st.sampled_from(".,"))
def test_a_text_said_to_be_exact_gives_it_back(length: Length, style: Style, unicode: bool, bare: bool,
                                               sign: str) -> None:
    units = {Style.MM: LengthUnit.MM, Style.CM: LengthUnit.CM, Style.YARD_FRACTION: LengthUnit.YARD}
    unit = units.get(style, LengthUnit.INCH)
    written = length.written(style=style, unicode=unicode, bare=bare, decimal_sign=sign)
    found = Length.parse(written.text, unit=unit, decimal_sign=sign, inexact=True)
    assert not written.exact or found == length


@pytest.mark.parametrize("text, inches", [
    ("2 1/2 in", Fraction(5, 2)), ("2½", Fraction(5, 2)), ("5' 6\"", Fraction(66)), ("1 yd 4 1/2 in", Fraction(81, 2)),
    ("-1/4", Fraction(-1, 4)), ("6.35 cm", Fraction(5, 2)), ("6 mm", 6 * MM)])
def test_text_is_read_exactly(text: str, inches: Fraction) -> None:
    assert Length.parse(text).inches == inches


def test_the_default_unit_and_the_decimal_sign_can_be_named() -> None:
    assert Length.parse("6,35", unit=LengthUnit.CM, decimal_sign=",") == Length.parse("2 1/2 in")


def test_text_off_the_grid_is_refused_unless_inexact_will_do() -> None:
    with pytest.raises(InexactError, match="1/3 in"):
        Length.parse("1/3 in")
    assert Length.parse("1/3 in", inexact=True).ticks == round(Fraction(8128, 3))


def test_text_can_be_styled() -> None:
    length = Length.parse("1 3/8 yd")
    assert length.format(style=Style.YARD_FRACTION) == "1 3/8 yd"
    assert length.format(unicode=True, bare=True) == "49½"
    assert length.format(style=Style.CM, decimals=2, decimal_sign=",") == "125,73 cm"
    assert Length.parse("3.05 in", inexact=True).format(denominator=8, direction=Direction.UP) == "3 1/8 in"
    assert f"[{Length.parse('6 in'):>8}]" == "[    6 in]"


# ---- fractions and floats -------------------------------------------------------------------------------------------

@given(lengths)
def test_inches_and_millimetres_are_exact(length: Length) -> None:
    assert length.inches == length.ticks * TICK
    assert length.mm * MM == length.inches
    assert length.to(LengthUnit.YARD) * 36 == length.inches


@given(lengths)
def test_a_fraction_gives_it_back(length: Length) -> None:
    assert Length.from_fraction(length.inches) == length
    assert Length.from_fraction(length.mm, unit=LengthUnit.MM) == length


@given(st.fractions(-10**6, 10**6), st.sampled_from(list(Direction)))
def test_a_fraction_is_rounded_as_told(inches: Fraction, direction: Direction) -> None:
    found = Length.from_fraction(inches, rounding=direction).inches - inches
    least, most = {Direction.UP: (0 * TICK, TICK), Direction.DOWN: (-TICK, 0 * TICK),
                   Direction.NEAREST: (-TICK / 2, TICK / 2)}[direction]
    assert least <= found <= most and found not in (TICK, -TICK)


def test_ties_go_up() -> None:
    assert Length.from_fraction(TICK / 2, rounding=Direction.NEAREST).ticks == 1
    assert Length.from_fraction(-TICK / 2, rounding=Direction.NEAREST).ticks == 0


def test_a_fraction_off_the_grid_is_refused_without_a_rounding() -> None:
    with pytest.raises(InexactError):
        Length.from_fraction(Fraction(1, 3))


@given(st.floats(-10**6, 10**6))
def test_a_float_is_taken_for_what_it_is(inches: float) -> None:
    assert Length.from_float(inches, rounding=Direction.DOWN) == \
        Length.from_fraction(Fraction(inches), rounding=Direction.DOWN)


def test_a_float_that_is_no_number_is_refused() -> None:
    for value in (float("nan"), float("inf")):
        with pytest.raises((ValueError, OverflowError)):
            Length.from_float(value, rounding=Direction.UP)


INCH = Length(8128)


@pytest.mark.parametrize("wrong", [
    lambda: Length(1.5), lambda: Length(2.0), lambda: Length.from_fraction(0.5),  # type: ignore[arg-type]
    lambda: INCH * 0.5, lambda: 0.5 * INCH, lambda: INCH / 0.5, lambda: INCH + 0.5,  # type: ignore[operator]
    lambda: INCH.times(0.5), lambda: INCH.snap(0.125, Direction.UP),  # type: ignore[arg-type]
    lambda: muslin.seam_cut_from_finished(6.0), lambda: muslin.SeamSpec(0.25)._struct(),  # type: ignore[arg-type]
    lambda: muslin.length_multiply("1 in", 2.0), lambda: INCH < 2.0,  # type: ignore[arg-type,operator]
    lambda: muslin.stripset_yield(segment_cut=6.5), lambda: INCH * Decimal("0.5")])  # type: ignore[arg-type,operator]
def test_floats_are_refused(wrong: Callable[[], object]) -> None:
    with pytest.raises(TypeError):
        wrong()


def test_a_bare_number_is_refused_because_it_does_not_say_its_unit() -> None:
    bare: Any = 6
    with pytest.raises(TypeError, match="segment_cut .* does not say its unit"):
        muslin.stripset_yield(segment_cut=bare)


# ---- arithmetic -----------------------------------------------------------------------------------------------------

@given(small, small, st.integers(-1000, 1000))
def test_sums_and_products_are_those_of_fractions(a: Length, b: Length, factor: int) -> None:
    assert (a + b).inches == a.inches + b.inches
    assert (a - b).inches == a.inches - b.inches
    assert (a * factor).inches == (factor * a).inches == a.inches * factor
    assert (-a).inches == -a.inches and (+a) == a and abs(a).inches == abs(a.inches)
    assert sum([a, b, a]) == a + b + a


@given(small, small.filter(bool))
def test_a_length_over_a_length_is_a_fraction(a: Length, b: Length) -> None:
    assert a / b == a.inches / b.inches
    assert (a // b) * b + a % b == a


@given(small, st.fractions(-100, 100, max_denominator=1000))
def test_products_with_fractions_are_exact_or_refused(a: Length, ratio: Fraction) -> None:
    exact = a.inches * ratio / TICK
    if exact.denominator == 1:
        assert (a * ratio).ticks == (ratio * a).ticks == exact
    else:
        with pytest.raises(InexactError):
            a * ratio
    assert a.times(ratio, rounding=Direction.UP).ticks == -(-exact.numerator // exact.denominator)


@given(small, st.integers(1, 1000))
def test_quotients_are_exact_or_refused(a: Length, divisor: int) -> None:
    if a.ticks % divisor == 0:
        assert (a / divisor).ticks * divisor == a.ticks
    else:
        with pytest.raises(InexactError, match="say how to round"):
            a / divisor


@given(small, st.integers(1, 10**6), st.sampled_from(list(Direction)))
def test_snapping_finds_the_grid_point(a: Length, grid: int, direction: Direction) -> None:
    found = a.snap(Length(grid), direction).ticks
    assert found % grid == 0
    assert {Direction.UP: 0 <= found - a.ticks < grid, Direction.DOWN: 0 <= a.ticks - found < grid,
            Direction.NEAREST: -grid < 2 * (a.ticks - found) < grid or 2 * (found - a.ticks) == grid}[direction]


def test_snapping_may_overlook_a_tolerance() -> None:
    """23.8774 in is two thousandths above 23 7/8 in: the example of length.h."""
    length = Length.from_fraction(Fraction(238774, 10000), rounding=Direction.NEAREST)
    assert length.snap("1/8 in", Direction.UP) == Length.parse("24 in")
    assert length.snap("1/8 in", Direction.UP, "0.1 mm") == Length.parse("23 7/8 in")


@given(small, small)
def test_order_and_hash_are_those_of_fractions(a: Length, b: Length) -> None:
    assert (a < b, a <= b, a == b, a > b, a >= b) == tuple(
        (a.inches < b.inches, a.inches <= b.inches, a.inches == b.inches, a.inches > b.inches, a.inches >= b.inches))
    assert muslin.length_compare(a, b) == (a.inches > b.inches) - (a.inches < b.inches)
    assert hash(a) == hash(Length(a.ticks))
    assert bool(a) == (a.inches != 0)


def test_sums_beyond_the_range_are_refused() -> None:
    most = Length(muslin.LENGTH_MAX)
    with pytest.raises(muslin.errors.OverflowError):
        most + Length(1)
    with pytest.raises(muslin.errors.OverflowError):
        most * 2
    with pytest.raises(muslin.errors.RangeError):
        Length(2**63 - 1) + Length(0)
    with pytest.raises(OverflowError):
        Length(2**63)


def test_a_length_equals_nothing_but_a_length() -> None:
    others: List[object] = [1, 8128, "1 in", Fraction(1), None]
    assert [other for other in others if INCH == other] == []


def test_only_nothing_can_be_added_that_is_no_length() -> None:
    with pytest.raises(TypeError):
        1 + INCH
    with pytest.raises(TypeError):
        INCH - 1  # type: ignore[operator]
    with pytest.raises(TypeError):
        INCH // 2  # type: ignore[operator]
    with pytest.raises(TypeError):
        INCH % 2  # type: ignore[operator]


def test_division_by_nothing_is_an_error() -> None:
    with pytest.raises(ZeroDivisionError):
        INCH / 0
    with pytest.raises(ZeroDivisionError):
        INCH / Length(0)


def test_a_length_cannot_be_changed() -> None:
    with pytest.raises(AttributeError):
        INCH.ticks = 1  # type: ignore[misc]


def test_a_length_can_be_copied_and_pickled() -> None:
    assert copy.deepcopy(INCH) == INCH
    assert pickle.loads(pickle.dumps(INCH)) == INCH


def test_a_unit_or_direction_that_is_none_is_refused() -> None:
    with pytest.raises(ValueError):
        Length.from_fraction(1, unit=LengthUnit(99))
    with pytest.raises(ValueError):
        Length.from_fraction(Fraction(1, 3), rounding=Direction(99))
    with pytest.raises(muslin.errors.ChoiceError):
        INCH.snap("1/8 in", Direction(0))


def test_text_is_a_length_wherever_a_length_is_asked() -> None:
    like: LengthLike = "6 in"
    assert muslin.seam_cut_from_finished(like) == muslin.seam_cut_from_finished(Length.parse("6 in"))
