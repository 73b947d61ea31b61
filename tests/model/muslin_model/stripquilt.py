# SPDX-License-Identifier: MIT
"""A whole top from a bundle of strips: the counts by putting the other parts together, the dealing by dealing."""

from itertools import product

from . import seam, setting, stripset
from .base import COUNT_MAX, WARN_SET_REPEATS, WARN_SMALL_QUILT, Refused, Wants

NESTING_TURN, NESTING_NAME = 1, 2
STRIPQUILT_SEGMENTS_MAX = 32
SMALL_QUILT_SIDE = 60 * 8128


class Parts:
    """A request put together from named values."""

    def __init__(self, **values):
        self.__dict__.update(values)


def square_cut(spec, set_unfinished, seams):
    if spec.segments_per_block < 1:
        raise Refused("ERR_RANGE")
    total = set_unfinished + (spec.segments_per_block - 1) * seams
    if total % spec.segments_per_block > spec.square_tolerance:
        raise Refused("ERR_NOT_SQUARE")
    return total // spec.segments_per_block


def parts_of(spec, one_end, wants):
    """Set, segment, block, top and yield; a part that refuses adds its reasons to those that there are."""
    row = cut = block = top = one_set = None
    try:
        row = seam.row_equal(spec.strip_cut, spec.strips_per_set, spec)
        cut = spec.segment_cut or square_cut(spec, row["unfinished"], 2 * spec.allowance + spec.take_up)
        block = setting.block(Parts(segment_cut=cut, set_unfinished=row["unfinished"],
                                    segments=spec.segments_per_block, allowance=spec.allowance, take_up=spec.take_up))
        top = setting.straight(Parts(block_width=block["finished_width"], block_height=block["finished_height"],
                                     columns=spec.columns, rows=spec.rows, allowance=spec.allowance,
                                     take_up=spec.take_up, turning=spec.turning,
                                     square_tolerance=spec.square_tolerance))
        one_set = stripset.yield_of(Parts(strip_length=spec.strip_length, segment_cut=cut, end_trim=spec.end_trim,
                                          resquare_loss=spec.resquare_loss, resquare_every=spec.resquare_every,
                                          fold_clear=spec.fold_clear), one_end)
    except Refused as refused:
        wants.reasons |= refused.statuses
    return row, cut, block, top, one_set


def plan(spec, one_end):
    wants = Wants()
    wants.some_count(spec.strips, spec.strips_per_set, spec.columns, spec.rows)
    wants.between(spec.segments_per_block, 1, STRIPQUILT_SEGMENTS_MAX)
    wants.count(spec.tops, spec.resquare_every)
    wants.some_size(spec.strip_cut)
    wants.size(spec.strip_length, spec.segment_cut, spec.end_trim, spec.resquare_loss, spec.fold_clear)
    wants.seam(spec.allowance, spec.take_up)
    wants.size(spec.square_tolerance)
    wants.choice(spec.turning, setting.TURNING_NONE, setting.TURNING_HALF)
    wants.choice(spec.nesting, NESTING_TURN, NESTING_NAME)
    wants.that(not (one_end and spec.fold_clear), "ERR_RANGE")
    row, cut, block, top, one_set = parts_of(spec, one_end, wants)
    wants.that(top is None or top["blocks"] <= COUNT_MAX, "ERR_RANGE")
    wants.done()
    seams = 2 * spec.allowance + spec.take_up
    per_set = one_set["segments"]
    if per_set == 0:
        raise Refused("ERR_NO_YIELD")
    harvest = stripset.harvest(Parts(strips=spec.strips, strips_per_set=spec.strips_per_set,
                                     segments_per_set=per_set, segments_per_block=spec.segments_per_block,
                                     blocks_per_top=top["blocks"]))
    tops = spec.tops or harvest["tops"]
    if tops > harvest["tops"] or tops == 0:
        raise Refused("ERR_NOT_ENOUGH")
    blocks = tops * top["blocks"]
    segments = blocks * spec.segments_per_block
    sets = -(-segments // per_set)
    heights = stack_heights(segments, sets)
    return {
        "set_unfinished": row["unfinished"],
        "set_finished": row["finished"],
        "strip_finished": spec.strip_cut - seams,
        "segment_cut": cut,
        "segment_finished": block["segment_finished"],
        "segments_per_set": per_set,
        "segments_per_end": one_set["per_end"],
        "resquarings": one_set["resquarings"],
        "strip_least": one_set["least_length"],
        "strip_shorter_by": one_set["shorter_by"],
        "strip_longer_for_more": one_set["longer_for_more"],
        "strip_left_over": one_set["left_over"],
        "block_unfinished_width": block["unfinished_width"],
        "block_unfinished_height": block["unfinished_height"],
        "block_finished_width": block["finished_width"],
        "block_finished_height": block["finished_height"],
        "blocks_per_top": top["blocks"],
        "blocks_turned": top["blocks_turned"],
        "top_finished_width": top["finished_width"],
        "top_finished_length": top["finished_length"],
        "top_unfinished_width": top["unfinished_width"],
        "top_unfinished_length": top["unfinished_length"],
        "sets_in_hand": harvest["sets"],
        "tops_in_hand": harvest["tops"],
        "tops": tops,
        "sets": sets,
        "strips_used": sets * spec.strips_per_set,
        "strips_left": spec.strips - sets * spec.strips_per_set,
        "strips_for_one_more_top": harvest["strips_for_one_more"],
        "blocks": blocks,
        "segments": segments,
        "segments_left": sets * per_set - segments,
        "stack_low": heights["low"],
        "stack_high": heights["high"],
        "stacks_high": heights["high_count"],
        "block_square": block["square"],
        "warnings": warnings_of(spec, one_set, top, sets),
    }


def warnings_of(spec, one_set, top, sets):
    """All but the one about nesting, which follows from the dealing."""
    small = max(top["finished_width"], top["finished_length"]) <= SMALL_QUILT_SIDE
    return (one_set["warnings"] | (WARN_SMALL_QUILT if small else 0)
            | (WARN_SET_REPEATS if sets < spec.segments_per_block else 0))


def stack_heights(segments, sets):
    """As even as can be: the first stacks give one more, or all give the same."""
    low, more = divmod(segments, sets)
    return {"low": low, "high": low + 1 if more else low, "high_count": more or sets}


def dealt_blocks(segments, sets, blocks):
    """The sets of every block, by laying out the stacks one after the other and dealing round."""
    low, more = divmod(segments, sets)
    line = [number + 1 for number in range(sets) for _ in range(low + (number < more))]
    return [tuple(line[first::blocks]) for first in range(blocks)]


def turned_in(block, pressing):
    """The fewest segments to turn so that a block is pressed this way and that way in turn."""
    as_is = sum((pressing[number] + place) % 2 for place, number in enumerate(block))
    return min(as_is, len(block) - as_is)


def fewest_turned(dealt, sets):
    """The fewest segments that any pressing leaves to be turned, by trying all of them."""
    pressings = (dict(enumerate((1, *rest), 1)) for rest in product((1, 2), repeat=sets - 1))
    return min(sum(turned_in(block, pressing) for block in dealt) for pressing in pressings)
