# SPDX-License-Identifier: MIT
"""Sashed settings, pieced and plain blocks in turn, lines of unequal blocks: laid out and counted."""

from .base import COUNT_MAX, SIZE_MAX, WARN_NO_SLACK, Refused, Wants, up
from .setting import STRAIGHT, loss_of, run_of

VERTICAL, HORIZONTAL, CORNERSTONE = 1, 2, 3
FIRST_PIECED, FIRST_PLAIN = 1, 2


def seam(spec):
    return 2 * spec.allowance + spec.take_up


def sashed(spec):
    wants = Wants()
    wants.some_size(spec.block_width, spec.block_height)
    wants.some_count(spec.columns, spec.rows)
    least = 1 if spec.cornerstones else 0
    wants.between(spec.sash_width, least, SIZE_MAX)
    wants.between(spec.sash_height, least, SIZE_MAX)
    wants.seam(spec.allowance, spec.take_up)
    wants.size(spec.usable_width)
    wants.between(spec.end_loss, 0, spec.usable_width)
    beyond = 1 if spec.frame else -1
    columns, rows, t = spec.columns, spec.rows, seam(spec)
    beside, between = columns + beyond, rows + beyond
    width = columns * spec.block_width + beside * spec.sash_width
    length = rows * spec.block_height + between * spec.sash_height
    wants.size(width, length)
    wants.done()
    vertical = beside * rows if spec.sash_width else 0
    horizontal = between * (columns if spec.cornerstones else 1) if spec.sash_height else 0
    corners = beside * between if spec.cornerstones else 0
    return {
        "blocks": columns * rows,
        "vertical_sashes": vertical,
        "horizontal_sashes": horizontal,
        "cornerstones": corners,
        "vertical_cut_width": spec.sash_width + t if vertical else 0,
        "vertical_cut_length": spec.block_height + t if vertical else 0,
        "horizontal_cut_width": spec.sash_height + t if horizontal else 0,
        "horizontal_cut_length": (spec.block_width if spec.cornerstones else width) + t if horizontal else 0,
        "cornerstone_cut_width": spec.sash_width + t if corners else 0,
        "cornerstone_cut_height": spec.sash_height + t if corners else 0,
        "finished_width": width,
        "finished_length": length,
        "unfinished_width": width + t,
        "unfinished_length": length + t,
        "block_unfinished_width": spec.block_width + t,
        "block_unfinished_height": spec.block_height + t,
    }


def strips_for(spec, kind, pieces, cut_length, cut_width):
    strip = spec.usable_width - spec.end_loss
    if pieces > COUNT_MAX:
        raise Refused("ERR_OVERFLOW")
    row = {"kind": kind, "pieces": pieces, "cut_length": cut_length, "cut_width": cut_width}
    if cut_length > strip:
        strips, joined = run_of(pieces * cut_length, strip, loss_of(STRAIGHT, cut_width, spec.allowance))
        row.update(per_strip=0, strips=strips, spare_pieces=0, joins=strips - 1,
                   narrower_by=(joined - pieces * cut_length) // strips)
    else:
        per_strip = strip // cut_length
        strips = up(-(-pieces // per_strip))
        row.update(per_strip=per_strip, strips=strips, spare_pieces=strips * per_strip - pieces, joins=0,
                   narrower_by=strip - per_strip * cut_length)
    row["cloth_length"] = row["strips"] * cut_width
    row["warnings"] = 0 if row["narrower_by"] else WARN_NO_SLACK
    return row


def pieces(spec):
    top = sashed(spec)
    kinds = [(VERTICAL, "vertical_sashes", "vertical_cut_length", "vertical_cut_width"),
             (HORIZONTAL, "horizontal_sashes", "horizontal_cut_length", "horizontal_cut_width"),
             (CORNERSTONE, "cornerstones", "cornerstone_cut_width", "cornerstone_cut_height")]
    return [strips_for(spec, kind, *(top[name] for name in names)) for kind, *names in kinds if top[names[0]]]


def alternate(spec):
    wants = Wants()
    wants.some_size(spec.block_width, spec.block_height)
    wants.some_count(spec.columns, spec.rows)
    wants.seam(spec.allowance, spec.take_up)
    wants.choice(spec.first, FIRST_PIECED, FIRST_PLAIN)
    width, length, t = spec.columns * spec.block_width, spec.rows * spec.block_height, seam(spec)
    wants.size(width, length)
    wants.done()
    blocks = spec.columns * spec.rows
    larger, smaller = (blocks + 1) // 2, blocks // 2
    pieced, plain = (larger, smaller) if spec.first == FIRST_PIECED else (smaller, larger)
    return {"pieced": pieced, "plain": plain, "plain_cut_width": spec.block_width + t,
            "plain_cut_height": spec.block_height + t, "finished_width": width, "finished_length": length,
            "unfinished_width": width + t, "unfinished_length": length + t}


def line_wants(sizes, spec):
    wants = Wants()
    wants.size(spec.sash, spec.wanted)
    wants.seam(spec.allowance, spec.take_up)
    wants.some_count(len(sizes))
    wants.some_size(*sizes)
    sashes = len(sizes) + (1 if spec.frame else -1)
    wants.size(sum(sizes) + sashes * spec.sash)
    wants.done()
    return sashes


def line(sizes, spec):
    sashes = line_wants(sizes, spec)
    finished = sum(sizes) + sashes * spec.sash
    return {"sashes": sashes if spec.sash else 0, "finished": finished, "unfinished": finished + seam(spec),
            "longer_by": finished - spec.wanted if spec.wanted else 0}


def places(sizes, spec):
    line_wants(sizes, spec)
    first = spec.sash if spec.frame else 0
    return [{"start": first + sum(sizes[:i]) + i * spec.sash, "finished": size, "unfinished": size + seam(spec)}
            for i, size in enumerate(sizes)]
