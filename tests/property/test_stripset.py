# SPDX-License-Identifier: MIT
"""Yields, wishes and bundles against counting."""

from hypothesis import given
from hypothesis import strategies as st

from asking import ask
from muslin_model import stripset as model
from questions import agree, as_object, counts, few, mostly, requests, sizes, small_sizes

yields = requests(strip_length=mostly(st.integers(30 * 8, 45 * 8).map(lambda n: n * 1016), sizes, rarely=[0]),
                  segment_cut=mostly(st.integers(8, 100).map(lambda n: n * 1016), sizes, rarely=[1]),
                  end_trim=small_sizes, resquare_loss=small_sizes, resquare_every=few,
                  fold_clear=mostly(st.just(0), small_sizes, rarely=[1]))


@given(yields, st.booleans())
def test_the_yield_of_a_set(spec, one_end):
    agree(lambda: ask("stripset_yield", dict(spec, from_one_end=one_end)),
          lambda: model.yield_of(as_object(spec), one_end))


@given(st.integers(0, 400), st.integers(1, 60), st.integers(0, 12), st.integers(0, 9), st.integers(0, 5),
       st.integers(0, 20), st.booleans())
def test_the_yield_of_a_small_strip_by_cutting_it(length, cut, trim, loss, every, clear, one_end):
    """Cuts one segment after the other from a strip of so many ticks."""
    clear = 0 if one_end else clear
    room = 2 * (length - 2 * trim) if one_end else length - clear - 2 * trim
    taken, used = 0, 0
    while True:
        squaring = loss if taken and every and taken % every == 0 else 0
        if 2 * (used + squaring + cut) > room:
            break
        used += squaring + cut
        taken += 1
    spec = {"strip_length": length, "segment_cut": cut, "end_trim": trim, "resquare_loss": loss,
            "resquare_every": every, "fold_clear": clear, "from_one_end": one_end}
    assert ask("stripset_yield", spec)["segments"] == taken * (1 if one_end else 2)


@given(st.lists(sizes, min_size=1, max_size=6))
def test_the_shortest_strip(lengths):
    agree(lambda: tuple(ask("stripset_shortest", lengths).values()), lambda: model.shortest(lengths))


@given(requests(segments=counts, segments_per_set=few, strips_per_set=few,
                strips_per_bundle=mostly(st.just(0), counts, rarely=[1]), strip_cut=sizes))
def test_from_wishes_to_strips(spec):
    agree(lambda: ask("stripset_need", spec), lambda: model.need(as_object(spec)))


@given(requests(strips=counts, strips_per_set=few, segments_per_set=few, segments_per_block=few, blocks_per_top=few))
def test_from_a_bundle_to_tops(spec):
    agree(lambda: ask("stripset_harvest", spec), lambda: model.harvest(as_object(spec)))


@given(st.lists(st.tuples(counts, mostly(st.integers(0, 3), counts, rarely=[0])), max_size=5),
       mostly(st.just(0), counts, rarely=[1]))
def test_sets_with_different_prints(rows, wanted):
    def asked():
        found = ask("stripset_prints", [{"in_hand": in_hand, "per_set": per_set} for in_hand, per_set in rows], wanted)
        return found["sets"], found["scarcest"], [row["left_over"] for row in found["rows"]]

    agree(asked, lambda: model.prints(rows, wanted))
