# SPDX-License-Identifier: MIT
"""Strategies for requests, from the plausible to the absurd, and the comparison of two answers."""

from types import SimpleNamespace

from hypothesis import strategies as st

from asking import Failed
from muslin_model.base import COUNT_MAX, LENGTH_MAX, PPM, SEAM_MAX, SIZE_MAX, Refused

INT32 = (-(2**31), 2**31 - 1)
INT64 = (-(2**63), 2**63 - 1)


def mostly(*usual, rarely):
    """Nine draws in ten usual, one from the edges and beyond."""
    return st.integers(0, 9).flatmap(lambda n: st.sampled_from(rarely) if n == 9 else st.one_of(*usual))


eighths = st.integers(1, 960).map(lambda n: n * 1016)
ticks = st.integers(0, 10**6)
sizes = mostly(eighths, ticks, st.integers(0, SIZE_MAX) | eighths,
               rarely=[0, 1, 2, SIZE_MAX - 1, SIZE_MAX, SIZE_MAX + 1, -1, *INT64])
small_sizes = mostly(st.integers(0, 16).map(lambda n: n * 508), st.integers(0, 8128),
                     rarely=[0, 1, SIZE_MAX, SIZE_MAX + 1, -1])
seams = mostly(st.integers(0, 8).map(lambda n: n * 508), st.sampled_from([2032, 1920, 2400]), st.integers(0, 5000),
               rarely=[0, 1, SEAM_MAX, SEAM_MAX + 1, -1, *INT64])
take_ups = mostly(st.just(0), st.integers(0, 300), rarely=[1, SEAM_MAX, SEAM_MAX + 1, -1])
counts = mostly(st.integers(1, 12), st.integers(0, 1000), rarely=[0, 1, COUNT_MAX, COUNT_MAX + 1, -1, *INT64])
few = mostly(st.integers(1, 8), st.integers(1, 20), rarely=[0, 1, 100, COUNT_MAX, COUNT_MAX + 1, -1])
shares = mostly(st.just(0), st.integers(0, 200_000), st.integers(0, PPM - 1),
                rarely=[PPM - 1, PPM, -1, 10 * PPM, 10 * PPM + 1, *INT32])
lengths = st.one_of(st.integers(-10**7, 10**7), st.integers(-LENGTH_MAX, LENGTH_MAX),
                    st.sampled_from([0, 1, -1, LENGTH_MAX, -LENGTH_MAX, LENGTH_MAX + 1, -LENGTH_MAX - 1, *INT64]))
whole_numbers = st.one_of(st.integers(-20, 20), st.integers(*INT64), st.sampled_from(INT64))


def choices(last):
    return mostly(st.integers(1, last), rarely=[0, last + 1, -1, *INT32])


@st.composite
def roundings(draw, grids=mostly(st.sampled_from([1, 127, 254, 508, 1016, 2032, 4064, 8128, 320, 32]),
                                 st.integers(1, 10**5), rarely=[1, SIZE_MAX, SIZE_MAX + 1, 0, -1])):
    grid = draw(grids)
    tolerance = draw(mostly(st.just(0), st.integers(0, max(grid - 1, 0)), rarely=[grid - 1, grid, -1]))
    return {"grid": grid, "tolerance": tolerance, "direction": draw(choices(3))}


def requests(**members):
    return st.fixed_dictionaries(members)


def as_object(members):
    return SimpleNamespace(**members)


def differences(found, expected):
    return {name: (found[name], expected[name]) for name in expected if found[name] != expected[name]}


def agree(asked, modelled):
    """The library must answer what the model answers, or fail for a reason that the model sees too."""
    try:
        expected = modelled()
    except Refused as refused:
        try:
            found = asked()
        except Failed as failed:
            status = failed.status.name
            assert status in refused.statuses, f"{status}, not one of {sorted(refused.statuses)}"
            return
        raise AssertionError(f"answered {found} instead of {sorted(refused.statuses)}") from None
    found = asked()
    if isinstance(expected, dict):
        found = {name: found[name] for name in expected}
        assert found == expected, f"(library, model): {differences(found, expected)}"
    assert found == expected, f"library {found}, model {expected}"
