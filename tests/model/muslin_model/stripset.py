# SPDX-License-Identifier: MIT
"""Strip sets: yields, wishes, bundles."""

from .base import COUNT_MAX, LENGTH_MAX, WARN_MIXED_WIDTHS, WARN_NO_SLACK, Refused, Wants, largest


def yield_of(spec, one_end):
    """Cuts are counted along the strip; from both ends, each end has half of what the fold leaves."""
    wants = Wants()
    wants.size(spec.strip_length, spec.end_trim, spec.resquare_loss, spec.fold_clear)
    wants.some_size(spec.segment_cut)
    wants.count(spec.resquare_every)
    wants.that(not (one_end and spec.fold_clear), "ERR_RANGE")
    wants.done()

    def squarings(k):
        return (k - 1) // spec.resquare_every if k and spec.resquare_every else 0

    def strip_for(k):
        """The strip that k cuts (from each end) use up."""
        cut = k * spec.segment_cut + squarings(k) * spec.resquare_loss
        if one_end:
            return 2 * spec.end_trim + cut
        return 2 * (spec.end_trim + cut) + spec.fold_clear

    ends = 1 if one_end else 2
    k = largest(lambda k: k == 0 or strip_for(k) <= spec.strip_length, spec.strip_length)
    used = 2 * spec.end_trim + ends * (k * spec.segment_cut + squarings(k) * spec.resquare_loss)
    shorter = spec.strip_length - strip_for(k) if k else 0
    def through(k):
        return 2 * spec.end_trim + k * spec.segment_cut + squarings(k) * spec.resquare_loss

    return {
        "from_one_end": largest(lambda k: k == 0 or through(k) <= spec.strip_length, spec.strip_length),
        "segments": ends * k,
        "per_end": k,
        "resquarings": ends * squarings(k),
        "least_length": strip_for(k) if k else 0,
        "left_over": max(spec.strip_length - used, 0),
        "shorter_by": shorter,
        "longer_for_more": strip_for(k + 1) - spec.strip_length,
        "warnings": WARN_NO_SLACK if k and shorter == 0 else 0,
    }


def shortest(lengths):
    wants = Wants()
    wants.that(len(lengths) >= 1, "ERR_RANGE")
    wants.size(*lengths)
    wants.done()
    found = min(lengths)
    return found, lengths.index(found), WARN_MIXED_WIDTHS if len(set(lengths)) > 1 else 0


def need(spec):
    wants = Wants()
    wants.count(spec.segments, spec.segments_per_set, spec.strips_per_bundle)
    wants.some_count(spec.strips_per_set)
    wants.size(spec.strip_cut)
    wants.done()
    if spec.segments and not spec.segments_per_set:
        raise Refused("ERR_NO_YIELD")
    sets = -(-spec.segments // spec.segments_per_set) if spec.segments else 0
    strips = sets * spec.strips_per_set
    bundles = -(-strips // spec.strips_per_bundle) if spec.strips_per_bundle else 0
    if strips * spec.strip_cut > LENGTH_MAX:
        raise Refused("ERR_OVERFLOW")
    return {
        "sets": sets,
        "strips": strips,
        "bundles": bundles,
        "spare_segments": sets * spec.segments_per_set - spec.segments,
        "spare_strips": bundles * spec.strips_per_bundle - strips if spec.strips_per_bundle else 0,
        "cloth_length": strips * spec.strip_cut,
    }


def harvest(spec):
    wants = Wants()
    wants.count(spec.strips, spec.segments_per_set)
    wants.some_count(spec.strips_per_set, spec.segments_per_block, spec.blocks_per_top)
    wants.done()
    sets = spec.strips // spec.strips_per_set
    segments = sets * spec.segments_per_set
    blocks = segments // spec.segments_per_block
    tops = blocks // spec.blocks_per_top
    a_top = spec.blocks_per_top * spec.segments_per_block

    def sets_for(some_tops):
        return -(-some_tops * a_top // spec.segments_per_set) if some_tops else 0

    used = sets_for(tops)
    found = {
        "sets": sets,
        "segments": segments,
        "blocks": blocks,
        "tops": tops,
        "sets_used": used,
        "strips_used": used * spec.strips_per_set,
        "strips_left": spec.strips - used * spec.strips_per_set,
        "segments_left": used * spec.segments_per_set - tops * a_top,
        "blocks_left": blocks - tops * spec.blocks_per_top,
    }
    if spec.segments_per_set:
        more = sets_for(tops + 1) * spec.strips_per_set
        if more > LENGTH_MAX:
            raise Refused("ERR_OVERFLOW")
        found["strips_for_one_more"] = more - spec.strips
    return found


def prints(rows, sets_wanted):
    """rows are (in_hand, per_set). Sets, the scarcest row, what is left of each."""
    wants = Wants()
    wants.count(sets_wanted)
    for in_hand, per_set in rows:
        wants.count(in_hand, per_set)
    wants.that(any(per_set > 0 for _, per_set in rows), "ERR_RANGE")
    wants.done()
    allowed = [in_hand // per_set if per_set else COUNT_MAX + 1 for in_hand, per_set in rows]
    sets = sets_wanted or min(allowed)
    return sets, allowed.index(min(allowed)), [in_hand - sets * per_set for in_hand, per_set in rows]
