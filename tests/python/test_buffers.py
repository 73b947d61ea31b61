# SPDX-License-Identifier: MIT
"""Array forms: the caller's memory is used where it lies, and what does not fit is refused."""
import ctypes
from array import array
from typing import Any, Callable

import pytest

import muslin
from muslin import Direction, Length, RoundingSpec, SeamSpec
from muslin._buffers import Numbers


def q(*numbers: int) -> "array[int]":
    return array("q", numbers)


MOST = muslin.LENGTH_MAX


# ---- where the numbers lie ------------------------------------------------------------------------------------------

def test_an_array_is_read_where_it_lies() -> None:
    numbers = q(1, 2, 3)
    address, count = numbers.buffer_info()
    found = Numbers(numbers, "numbers", 64)
    assert (found.first, found.count) == (address, count)


def test_a_slice_of_a_memoryview_is_read_where_it_lies() -> None:
    numbers = q(1, 2, 3, 4)
    found = Numbers(memoryview(numbers)[1:3], "numbers", 64)
    assert (found.first, found.count) == (numbers.buffer_info()[0] + 8, 2)


def test_out_is_written_where_it_lies_and_returned() -> None:
    out = q(0, 0)
    assert muslin.length_add_n(q(1, 2), q(10, 20), out) is out
    assert out == q(11, 22)


def test_out_may_be_an_input() -> None:
    numbers = q(1, 2)
    muslin.length_add_n(numbers, numbers, numbers)
    assert numbers == q(2, 4)


def test_out_may_be_part_of_a_larger_array() -> None:
    out = q(7, 0, 0, 7)
    muslin.length_add_n(q(1, 2), q(10, 20), memoryview(out)[1:3])
    assert out == q(7, 11, 22, 7)


def test_without_out_a_new_array_comes_back() -> None:
    assert muslin.length_add_n(q(1), q(2)) == q(3)


def test_a_ctypes_array_will_do() -> None:
    numbers = (ctypes.c_int64 * 2)(5, 6)
    muslin.length_multiply_n(numbers, q(2, 3), numbers)
    assert list(numbers) == [10, 18]


def test_a_read_only_buffer_is_read() -> None:
    assert muslin.length_add_n(memoryview(q(1, 2)).toreadonly(), memoryview(bytes(16)).cast("q")) == q(1, 2)


def test_numpy_arrays_are_used_where_they_lie() -> None:
    numpy = pytest.importorskip("numpy")
    numbers, out = numpy.arange(6, dtype="int64").reshape(2, 3), numpy.zeros((2, 3), dtype="int64")
    assert Numbers(numbers, "numbers", 64).first == numbers.ctypes.data
    assert muslin.length_add_n(numbers, numbers, out) is out
    assert (out == 2 * numbers).all()
    assert muslin.length_sum(numbers.ravel()) == Length(15)
    for wrong in (numbers[:, ::2], numpy.arange(3.0), numpy.arange(3, dtype="int32"), numpy.arange(3, dtype=">i8")):
        with pytest.raises((TypeError, ValueError)):
            muslin.length_sum(wrong)


def test_nothing_is_answered_by_nothing() -> None:
    assert muslin.length_add_n(q(), q()) == q()
    assert muslin.length_sum(q()) == Length(0)


# ---- all array forms ------------------------------------------------------------------------------------------------

EIGHTH_UP = RoundingSpec(grid="1/8 in", direction=Direction.UP)


@pytest.mark.parametrize("form, single", [
    (lambda a, b: muslin.length_add_n(a, b), lambda x, y: muslin.length_add(x, Length(y))),
    (lambda a, b: muslin.length_subtract_n(a, b), lambda x, y: muslin.length_subtract(x, Length(y))),
    (lambda a, b: muslin.length_multiply_n(a, b), lambda x, y: muslin.length_multiply(x, y)),
    (lambda a, b: muslin.length_scale_n(a, 2, 7, EIGHTH_UP),
     lambda x, y: muslin.length_scale(x, 2, 7, EIGHTH_UP).value),
    (lambda a, b: muslin.length_snap_n(a, EIGHTH_UP), lambda x, y: muslin.length_snap(x, EIGHTH_UP).value),
    (lambda a, b: muslin.seam_cut_from_finished_n(a, SeamSpec(allowance="6 mm")),
     lambda x, y: muslin.seam_cut_from_finished(x, SeamSpec(allowance="6 mm"))),
    (lambda a, b: muslin.seam_finished_from_cut_n(a), lambda x, y: muslin.seam_finished_from_cut(x))])
def test_an_array_form_does_what_the_single_call_does(form: Callable[[Any, Any], Any],
                                                      single: Callable[[Length, int], Length]) -> None:
    a, b = q(4064, 8128, 20320, 12345), q(3, 5, 7, 2)
    assert list(form(a, b)) == [single(Length(x), y).ticks for x, y in zip(a, b)]


# ---- failures -------------------------------------------------------------------------------------------------------

def test_without_statuses_the_first_failure_is_raised_and_says_where() -> None:
    out = q(0, 0, 0)
    with pytest.raises(muslin.errors.OverflowError) as caught:
        muslin.length_add_n(q(1, MOST, 3), q(1, 1, 1), out)
    assert caught.value.at == 1
    assert out == q(2, 0, 0)


def test_with_statuses_each_element_has_its_own() -> None:
    out, statuses = q(9, 9, 9), array("i", [9, 9, 9])
    muslin.length_add_n(q(1, MOST, 3), q(1, 1, 1), out, statuses)
    assert (out, list(statuses)) == (q(2, 9, 4), [muslin.Status.OK, muslin.Status.ERR_OVERFLOW, muslin.Status.OK])


OVERLAPPING = q(1, 2, 3)


@pytest.mark.parametrize("kind, message, wrong", [
    (TypeError, "a must be a buffer", lambda: muslin.length_add_n([1], q(1))),
    (TypeError, "b must hold signed integers of 64 bits .* not 'd'",
     lambda: muslin.length_add_n(q(1), array("d", [1]))),
    (TypeError, "not 'i' of 32", lambda: muslin.length_add_n(array("i", [1]), q(1))),
    (TypeError, "not 'Q'", lambda: muslin.length_add_n(array("Q", [1]), q(1))),
    (TypeError, "not 'B'", lambda: muslin.length_add_n(bytes(8), q(1))),
    (TypeError, "not 'd'", lambda: muslin.length_sum(array("d", [1]))),  # type: ignore[arg-type]
    (TypeError, r"values\[1\] must be a Length", lambda: muslin.length_sum(["1 in", 2])),  # type: ignore[list-item]
    (TypeError, "values must be a buffer", lambda: muslin.length_sum("1 in")),
    (TypeError, "statuses must hold signed integers of 32 bits",
     lambda: muslin.length_add_n(q(1), q(1), None, q(1))),
    (ValueError, "a must lie in one piece", lambda: muslin.length_add_n(memoryview(q(1, 2, 3))[::2], q(1, 2))),
    (ValueError, "out must be writable", lambda: muslin.length_add_n(q(1), q(1), memoryview(q(1)).toreadonly())),
    (ValueError, "unequal length: a 1, b 2", lambda: muslin.length_add_n(q(1), q(1, 2))),
    (ValueError, "unequal length: a 1, b 1, out 2", lambda: muslin.length_add_n(q(1), q(1), q(1, 2))),
    (ValueError, "unequal length: out 1, statuses 2",
     lambda: muslin.length_add_n(q(1), q(1), None, array("i", [1, 2]))),
    (ValueError, "unequal length: lengths 1, counts 2", lambda: muslin.length_dot(q(1), q(1, 2))),
    (ValueError, "must not overlap one in part",
     lambda: muslin.length_snap_n(memoryview(OVERLAPPING)[:2], EIGHTH_UP, memoryview(OVERLAPPING)[1:]))])
def test_what_does_not_fit_is_refused(kind: Any, message: str, wrong: Callable[[], object]) -> None:
    with pytest.raises(kind, match=message):
        wrong()


# ---- calls that only read an array ----------------------------------------------------------------------------------

@pytest.mark.parametrize("values", [q(8128, 4064), memoryview(q(8128, 4064)), ["1 in", "1/2 in"],
                                    (Length(8128), "1/2"), iter([Length(8128), Length(4064)])])
def test_lengths_may_come_as_a_buffer_or_one_by_one(values: Any) -> None:
    assert muslin.length_sum(values) == Length.parse("1 1/2 in")


def test_a_sum_of_products() -> None:
    assert muslin.length_dot(["2 1/2 in", "1 in"], q(6, -1)) == Length.parse("14 in")
