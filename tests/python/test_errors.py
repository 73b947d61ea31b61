# SPDX-License-Identifier: MIT
"""Each status is an exception with the library's sentence."""
import builtins
import ctypes
import pickle
from array import array
from typing import Any, Callable, Dict, List

import pytest

import muslin
from muslin import Argument, Direction, Length, MuslinError, RoundingSpec, Status, Table, Turning, errors, structs
from muslin._problem import CLASSES, call_telling, error_of
from muslin._values import new


def raw_seam(**members: int) -> Any:
    seam = new(structs.muslin_seam_spec)
    for name, value in members.items():
        setattr(seam, name, value)
    return seam


def row_with(seam: Any) -> None:
    """A call with a struct that no spec of the package would make."""
    out = new(structs.muslin_sewn_row)
    call_telling("muslin_seam_row_equal", 8128, 2, ctypes.byref(seam), ctypes.byref(out))


class Longer(structs.muslin_seam_spec):
    """A spec of a later version, with a member that this library does not know."""

    _fields_ = [("later", ctypes.c_int64)]


def longer_seam() -> Any:
    seam = new(Longer)
    seam.later = 1
    return ctypes.cast(ctypes.pointer(seam), ctypes.POINTER(structs.muslin_seam_spec)).contents


def into_one_byte() -> None:
    call_telling("muslin_length_format", 8128, None, ctypes.create_string_buffer(1), 1, None, None)


def drawing(*shapes: str) -> List[muslin.CornerSpec]:
    """The outline, then the pieces; a corner is its x and y in inches, a digit each."""
    return [muslin.CornerSpec(piece=piece, x=corner[0], y=corner[1])
            for piece, corners in enumerate(shapes, -1) for corner in corners.split()]


def in_the_place_of_a_node() -> None:
    with muslin.Quilt() as quilt:
        quilt.node(quilt.fabric("blue"))


def ended_by_its_progress() -> None:
    squares = [muslin.BlankSpec(cut_width=side, cut_length=side, count=count)
               for side, count in (("5 1/2 in", 32), ("6 in", 16), ("9 1/2 in", 8))]
    with muslin.Cutplan(squares) as plan:
        plan.check(progress=lambda *numbers: True)


def without_memory() -> None:
    """A quilt from an allocator that has nothing."""
    usual, spec = structs.muslin_allocator(), new(structs.muslin_quilt_spec)
    muslin.library.muslin_allocator_libc(ctypes.byref(usual))
    muslin.library.muslin_quilt_spec_init(ctypes.byref(spec), ctypes.sizeof(spec))
    nothing = type(usual.alloc)(lambda context, size: None)
    allocator = structs.muslin_allocator(nothing, usual.realloc, usual.free, None)
    quilt = ctypes.POINTER(structs.muslin_quilt)()
    call_telling("muslin_quilt_create", ctypes.byref(spec), ctypes.byref(allocator), ctypes.byref(quilt))


PROVOKED: Dict[Status, Callable[[], Any]] = {
    Status.ERR_NULL: lambda: call_telling("muslin_length_parse", b"1", 1, None, None),
    Status.ERR_STRUCT_SIZE: lambda: row_with(raw_seam(size=0)),
    Status.ERR_STRUCT_TAIL: lambda: row_with(longer_seam()),
    Status.ERR_FLAGS: lambda: row_with(raw_seam(flags=1 << 31)),
    Status.ERR_CHOICE: lambda: muslin.join_loss(muslin.Join(99), "2 1/2 in", "1/4 in"),
    Status.ERR_RANGE: lambda: muslin.seam_row_equal("2 1/2 in", 0),
    Status.ERR_OVERFLOW: lambda: Length(muslin.LENGTH_MAX) + Length(1),
    Status.ERR_DIVIDE_BY_ZERO: lambda: muslin.length_divide("1 in", 0),
    Status.ERR_BUFFER: into_one_byte,
    Status.ERR_INDEX: lambda: muslin.reference_row(Table.BATTING, 10**6),
    Status.ERR_TEXT_EMPTY: lambda: Length.parse(" "),
    Status.ERR_TEXT_SYNTAX: lambda: Length.parse("in"),
    Status.ERR_TEXT_TRAILING: lambda: Length.parse("2 in)"),
    Status.ERR_TEXT_UNIT: lambda: Length.parse("2 ells"),
    Status.ERR_TEXT_DECIMAL: lambda: Length.parse("2,5 in"),
    Status.ERR_TEXT_ZERO_DENOMINATOR: lambda: Length.parse("1/0 in"),
    Status.ERR_TEXT_ENCODING: lambda: Length.parse("2 in\udc80"),
    Status.ERR_SEAM_TOO_WIDE: lambda: muslin.seam_finished_from_cut("1/4 in"),
    Status.ERR_NOT_SQUARE: lambda: muslin.setting_straight(
        block_width="6 in", block_height="7 in", columns=2, rows=2, turning=Turning.QUARTER_ALTERNATE),
    Status.ERR_NO_YIELD: lambda: muslin.fabric_strips(pieces=1, piece_across="41 in", strip_cut="2 in"),
    Status.ERR_NOT_ENOUGH: lambda: muslin.stripquilt_plan(strips=6, columns=9, rows=9, tops=1),
    Status.ERR_NO_FIT: lambda: muslin.border_plan(
        unfinished_width="20 in", unfinished_length="20 in", finished_border="50 in", lengthwise=True),
    Status.ERR_CUSTOMARY: lambda: muslin.unit_recipe(
        finished_width="3 in", policy=muslin.AllowancePolicy.CUSTOMARY, half_addition="3/4 in"),
    Status.ERR_METHOD: lambda: muslin.unit_recipe(finished_width="3 in", method=muslin.UnitMethod.FLIPPED_CORNERS),
    Status.ERR_SHAPE: lambda: muslin.shape_check(drawing("00 30 33 03", "00 33 30")),  # clockwise
    Status.ERR_NOT_TILED: lambda: muslin.shape_check(drawing("00 30 33 03", "00 30 33")),  # half of it is left open
    Status.ERR_WORK_LIMIT: lambda: muslin.fit_settings(
        wanted_width="60 in", wanted_length="72 in", allow_straight=True, work_limit=1),
    Status.ERR_NO_MEMORY: without_memory,
    Status.ERR_FOREIGN: in_the_place_of_a_node,
    Status.ERR_STOPPED: ended_by_its_progress,
    Status.ERR_TOO_MANY: lambda: muslin.stripquilt_strips_needed(tops=2**31 - 1, columns=9, rows=9),
}


def test_every_failure_is_provoked() -> None:
    assert set(PROVOKED) == set(Status) - {Status.OK}


@pytest.mark.parametrize("status", list(PROVOKED), ids=[status.name for status in PROVOKED])
def test_a_status_is_raised_as_its_own_exception(status: Status) -> None:
    with pytest.raises(MuslinError) as caught:
        PROVOKED[status]()
    words = [word.capitalize() for word in status.name.split("_")[1:]]
    assert type(caught.value).__name__ == "".join(words) + "Error"
    assert caught.value.status == status
    assert str(caught.value).endswith(".") and len(str(caught.value)) > 20


def test_the_package_and_the_library_know_the_same_statuses() -> None:
    assert muslin.status_count() == len(Status)
    assert [muslin.status_name(status) for status in Status] == [status.name for status in Status]


def test_every_status_has_a_class_that_is_exported() -> None:
    assert sorted(CLASSES) == sorted(set(Status) - {Status.OK})
    assert set(errors.__all__) == {kind.__name__ for kind in CLASSES.values()} | {"MuslinError"}
    assert len(set(CLASSES.values())) == len(CLASSES)


def test_every_exception_is_a_muslin_error_and_a_value_error() -> None:
    assert all(issubclass(kind, MuslinError) and issubclass(kind, ValueError) for kind in CLASSES.values())


@pytest.mark.parametrize("name", ["OverflowError", "IndexError", "BufferError"])
def test_where_python_has_the_same_name_it_catches_ours(name: str) -> None:
    assert issubclass(getattr(errors, name), getattr(builtins, name))


# ---- what an exception carries --------------------------------------------------------------------------------------

def test_an_exception_names_argument_value_and_limit() -> None:
    """A piece cut 1/4 in with two seams of 1/4 in lacks 1/4 in: 2032 ticks where 4064 are needed."""
    with pytest.raises(errors.SeamTooWideError) as caught:
        muslin.seam_finished_from_cut("1/4 in")
    assert (caught.value.argument, caught.value.value, caught.value.limit) == (Argument.CUT, 2032, 4064)


def test_an_exception_says_the_librarys_own_sentence() -> None:
    problem, out = new(structs.muslin_problem), ctypes.c_int64()
    seam = raw_seam(allowance=2032)
    status = muslin.library.muslin_seam_finished_from_cut(2032, ctypes.byref(seam), ctypes.byref(out),
                                                          ctypes.byref(problem))
    assert status == Status.ERR_SEAM_TOO_WIDE
    with pytest.raises(errors.SeamTooWideError) as caught:
        muslin.seam_finished_from_cut("1/4 in")
    assert str(caught.value) == problem.text.decode()


def test_an_exception_of_a_call_without_problem_says_the_statuss_sentence() -> None:
    with pytest.raises(errors.DivideByZeroError) as caught:
        muslin.length_divide("1 in", 0)
    assert str(caught.value) == muslin.status_sentence(Status.ERR_DIVIDE_BY_ZERO) == caught.value.status.sentence


def test_an_exception_of_a_text_says_where() -> None:
    with pytest.raises(errors.TextUnitError) as caught:
        Length.parse("2½ ells")
    assert (caught.value.at, caught.value.bytes) == (len("2½ ".encode()), 4)


def test_an_exception_of_a_row_says_which() -> None:
    with pytest.raises(errors.SeamTooWideError) as caught:
        muslin.seam_row(["2 1/2 in", "2 1/2 in", "1/8 in"])
    assert caught.value.at == 2


def test_an_exception_can_be_pickled() -> None:
    with pytest.raises(MuslinError) as caught:
        muslin.seam_finished_from_cut("1/4 in")
    again = pickle.loads(pickle.dumps(caught.value))
    assert type(again) is type(caught.value) and str(again) == str(caught.value)
    assert vars(again) == vars(caught.value)


def test_a_status_of_a_newer_library_is_a_plain_muslin_error() -> None:
    found = error_of(1000)
    assert type(found) is MuslinError and found.status == 1000 and found.status.name == "UNKNOWN_1000"


def test_a_choice_of_a_newer_library_keeps_its_number() -> None:
    assert muslin.Join(77) == 77 and muslin.Join(77).name == "UNKNOWN_77"
    with pytest.raises(ValueError):
        muslin.Join("diagonal")  # type: ignore[arg-type]


def test_a_choice_prints_its_name() -> None:
    assert str(muslin.Join.DIAGONAL) == f"{muslin.Join.DIAGONAL}" == "DIAGONAL"


# ---- numbers that C cannot hold -------------------------------------------------------------------------------------

@pytest.mark.parametrize("wrong", [
    lambda: muslin.seam_row_equal("1 in", 2**63), lambda: muslin.stripquilt_plan(strips=-2**63 - 1),
    lambda: muslin.binding_plan(corners=2**64 + 4), lambda: muslin.status_name(2**32),
    lambda: muslin.warning_sentence(muslin.Warning(2**32 + 1)), lambda: muslin.warning_sentence(muslin.Warning(-1)),
    lambda: muslin.fabric_purchase(shrinkage=2**31), lambda: muslin.join_loss(muslin.Join(2**32 + 1), "1", "1"),
    lambda: muslin.length_format("1", denominator=2**32 + 2), lambda: Length(1) * 2**64])
def test_a_number_is_refused_and_never_cut_off(wrong: Callable[[], object]) -> None:
    with pytest.raises(builtins.OverflowError, match="does not fit"):
        wrong()


@pytest.mark.parametrize("wrong", [
    lambda: Length.parse(b"1 in"), lambda: Length.parse("1", decimal_sign=44),  # type: ignore[arg-type]
    lambda: muslin.seam_row_equal("1 in", 2, RoundingSpec()),  # type: ignore[arg-type]
    lambda: muslin.seam_row_equal("1 in", "2"),  # type: ignore[arg-type]
    lambda: Length.parse("1", decimal_sign="")])
def test_what_is_of_the_wrong_type_is_refused(wrong: Callable[[], object]) -> None:
    with pytest.raises(TypeError):
        wrong()


def test_a_failed_call_leaves_out_untouched() -> None:
    out = array("q", [5])
    with pytest.raises(MuslinError):
        muslin.length_snap_n(array("q", [1]), RoundingSpec(direction=Direction(9)), out)
    assert out == array("q", [5])
