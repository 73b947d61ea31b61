# SPDX-License-Identifier: MIT
"""Array forms against the same call element by element."""

from array import array

import muslin
from hypothesis import given
from hypothesis import strategies as st

from asking import Failed, into
from muslin_model import length as model
from muslin_model import seam as model_seam
from muslin_model.base import Refused
from questions import as_object, lengths, sizes, whole_numbers

UNTOUCHED = 12345
ROUNDING = {"grid": 127, "tolerance": 0, "direction": 1}
SEAM = {"allowance": 2032, "take_up": 100}
rounding, seam = as_object(ROUNDING), as_object(SEAM)

FORMS = {
    "length_add_n": ([lengths, lengths], lambda a, b: model.add(a, b)),
    "length_subtract_n": ([lengths, lengths], lambda a, b: model.subtract(a, b)),
    "length_multiply_n": ([lengths, whole_numbers], lambda a, b: model.multiply(a, b)),
    "length_snap_n": ([lengths], lambda a: model.snap(a, rounding)["value"]),
    "length_scale_n": ([lengths], lambda a: model.scale(a, 7, 3, rounding)["value"]),
    "seam_cut_from_finished_n": ([sizes], lambda a: model_seam.cut_from_finished(a, seam)),
    "seam_finished_from_cut_n": ([sizes], lambda a: model_seam.finished_from_cut(a, seam)),
}
OTHERS = {
    "length_snap_n": [into(muslin.RoundingSpec, ROUNDING)],
    "length_scale_n": [7, 3, into(muslin.RoundingSpec, ROUNDING)],
    "seam_cut_from_finished_n": [into(muslin.SeamSpec, SEAM)],
    "seam_finished_from_cut_n": [into(muslin.SeamSpec, SEAM)],
}


@st.composite
def elementwise(draw):
    form = draw(st.sampled_from(sorted(FORMS)))
    rows = draw(st.lists(st.tuples(*FORMS[form][0]), max_size=6))
    return form, rows


def one_by_one(form, rows):
    """Value or statuses of each element."""
    answers = []
    for row in rows:
        try:
            answers.append(FORMS[form][1](*row))
        except Refused as refused:
            answers.append(refused.statuses)
    return answers


def call(form, rows, out, statuses=None):
    columns = [array("q", column) for column in zip(*rows)] or [array("q")] * len(FORMS[form][0])
    getattr(muslin, form)(*columns, *OTHERS.get(form, []), out, statuses)


@given(elementwise())
def test_each_element_gets_its_own_status(question):
    form, rows = question
    out, statuses = array("q", [UNTOUCHED] * len(rows)), array("i", [-1] * len(rows))
    call(form, rows, out, statuses)
    for answer, value, status in zip(one_by_one(form, rows), out, statuses):
        if isinstance(answer, frozenset):
            assert value == UNTOUCHED and muslin.Status(status).name in answer
        else:
            assert (value, status) == (answer, 0)


@given(elementwise())
def test_without_statuses_the_first_failure_stops_the_call(question):
    form, rows = question
    answers = one_by_one(form, rows)
    failing = [at for at, answer in enumerate(answers) if isinstance(answer, frozenset)]
    out = array("q", [UNTOUCHED] * len(rows))
    try:
        call(form, rows, out)
        assert not failing
    except Failed as failed:
        assert failed.at == failing[0] and failed.status.name in answers[failing[0]]
    done = failing[0] if failing else len(rows)
    assert list(out[:done]) == answers[:done]
    assert all(value == UNTOUCHED for value in out[done:])
