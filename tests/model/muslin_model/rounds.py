# SPDX-License-Identifier: MIT
"""What grows from the middle outwards: log cabins, mitred frames, medallions, pieced borders."""

from fractions import Fraction
from itertools import product
from math import gcd
from types import SimpleNamespace

from .base import SIZE_MAX, Refused, Wants, least, rounded, root_between

ROUND, COURTHOUSE, QUARTER = 1, 2, 3
LEFT, RIGHT, TOP, BOTTOM = 1, 2, 3, 4
CLOCKWISE, ANTICLOCKWISE = 1, 2
PLAIN, PIECED, COPING = 1, 2, 3
SQUARES, THROUGH = 1, 2
ROUNDS_MAX, BLOCKS_MAX, SQUARES_MAX = 1000, 100000, 2**29


def seam_of(spec):
    return 2 * spec.allowance + spec.take_up


def surd(whole, root, under, divisor, rounding):
    """(whole + root x sqrt(under)) / divisor brought to the grid; the enclosure's ends must agree."""
    low, high = ((whole + (1 if root >= 0 else -1) * end) / Fraction(divisor)
                 for end in root_between(root * root * under))
    at_low, at_high = rounded(low, rounding), rounded(high, rounding)
    if low == high:
        return at_low["value"], at_low["error"]
    assert at_low["value"] == at_high["value"]
    error = (at_low["value"] - high).__floor__()
    assert error == (at_low["value"] - low).__floor__()
    return at_low["value"], error


# ---- log cabins -----------------------------------------------------------------------------------------------------

class Block:
    """A log cabin as rectangles: each log drawn where it lies, in finished sizes; the four edges of what is there."""

    def __init__(self, width, height):
        self.left, self.top, self.right, self.bottom = 0, 0, width, height

    def add(self, side, width):
        """Draws a log along a side; returns its rectangle and its length."""
        left, top, right, bottom = self.left, self.top, self.right, self.bottom
        if side == TOP:
            self.top -= width
            return (left, self.top, right, top), right - left
        if side == BOTTOM:
            self.bottom += width
            return (left, bottom, right, self.bottom), right - left
        if side == LEFT:
            self.left -= width
            return (self.left, top, left, bottom), bottom - top
        self.right += width
        return (right, top, self.right, bottom), bottom - top


OPPOSITE = {TOP: BOTTOM, BOTTOM: TOP, LEFT: RIGHT, RIGHT: LEFT}
NEXT = {CLOCKWISE: {TOP: RIGHT, RIGHT: BOTTOM, BOTTOM: LEFT, LEFT: TOP},
        ANTICLOCKWISE: {TOP: LEFT, LEFT: BOTTOM, BOTTOM: RIGHT, RIGHT: TOP}}


def sides_of(spec):
    """The sides of a round's logs, in sewing order."""
    start = spec.start
    beside = NEXT[spec.turn][start]
    if spec.order == COURTHOUSE:
        return [start, OPPOSITE[start], beside, OPPOSITE[beside]]
    return [start, beside] if spec.order == QUARTER else [start, beside, OPPOSITE[start], OPPOSITE[beside]]


def read_cabin(spec, widths, given_cut):
    """Checks all but the strips; returns the centre, finished, and the finished width of every log."""
    wants = Wants()
    wants.some_size(spec.centre_width, spec.centre_height)
    wants.size(spec.log_width, spec.usable_width, spec.end_loss)
    wants.between(spec.rounds, 1, ROUNDS_MAX)
    wants.between(spec.blocks, 1, BLOCKS_MAX)
    wants.seam(spec.allowance, spec.take_up)
    wants.choice(spec.order, ROUND, QUARTER)
    wants.choice(spec.start, LEFT, BOTTOM)
    wants.choice(spec.turn, CLOCKWISE, ANTICLOCKWISE)
    a_round = 2 if spec.order == QUARTER else 4
    wants.that(not widths or len(widths) in (spec.rounds, spec.rounds * a_round), "ERR_RANGE")
    given = [spec.centre_width, spec.centre_height, *(widths or [spec.log_width])]
    for size in given:
        wants.some_size(size)
        wants.that(not given_cut or size > seam_of(spec), "ERR_SEAM_TOO_WIDE")
    wants.done()
    width, height, *logs = [size - seam_of(spec) * given_cut for size in given]
    repeated = len(sides_of(spec)) * spec.rounds // len(logs)
    return width, height, [log for log in logs for _ in range(repeated)]


def logs_of(spec, widths, given_cut):
    """The finished block, and every log with its rectangle."""
    width, height, logs = read_cabin(spec, widths, given_cut)
    block, seam, found, running = Block(width, height), seam_of(spec), [], 0
    sides = sides_of(spec)
    for at, log in enumerate(logs):
        place = at % len(sides)
        rectangle, length = block.add(sides[place], log)
        running += length + seam
        found.append({
            "round": at // len(sides) + 1,
            "cut_length": length + seam,
            "cut_width": log + seam,
            "finished_length": length,
            "finished_width": log,
            "running_length": running,
            "unfinished_width": block.right - block.left + seam,
            "unfinished_height": block.bottom - block.top + seam,
            "side": sides[place],
            "half": 1 if place < len(sides) // 2 else 2,
            "closes_round": int(place == len(sides) - 1),
            "rectangle": rectangle,
        })
    if max(block.right - block.left, block.bottom - block.top) > SIZE_MAX:
        raise Refused("ERR_RANGE")
    return block, found


def cut_strips(lengths, blocks, room):
    """Strips cut without joins, as the last strip's rest allows: whole strips of one length at a time."""
    strips, left = 0, 0
    for length in lengths:
        pieces = blocks
        from_rest = min(pieces, left // length)
        left -= from_rest * length
        pieces -= from_rest
        if pieces:
            per_strip = room // length
            begun = -(-pieces // per_strip)
            strips += begun
            left = room - (pieces - (begun - 1) * per_strip) * length
    return strips


def strips_of(spec, widths, given_cut):
    _, logs = logs_of(spec, widths, given_cut)
    kinds = []
    for half in (1, 2):
        for log in logs:
            kind = (half, log["cut_width"])
            if log["half"] == half and kind not in kinds:
                kinds.append(kind)
    room, rows = spec.usable_width - spec.end_loss, []
    for half, cut_width in kinds:
        lengths = [log["cut_length"] for log in logs if (log["half"], log["cut_width"]) == (half, cut_width)]
        total = sum(lengths) * spec.blocks
        counted = spec.usable_width > 0
        if counted and max(lengths) > room:
            raise Refused("ERR_NO_YIELD")
        strips = cut_strips(lengths[::-1], spec.blocks, room) if counted else 0
        rows.append({
            "half": half,
            "cut_width": cut_width,
            "pieces": len(lengths) * spec.blocks,
            "longest": max(lengths),
            "length": total,
            "strips_least": -(-total // room) if counted else 0,
            "strips": strips,
            "cloth_length": strips * cut_width,
        })
    return rows


def centres_of(spec, width, height):
    """The centres as cut, by trying both ways: the least cloth, then the narrower strip."""
    room, ways = spec.usable_width - spec.end_loss, []
    if spec.usable_width == 0:
        return dict.fromkeys(("centre_strip_cut", "centres_per_strip", "centre_strips", "centre_cloth_length"), 0)
    for strip, along in ((width, height), (height, width)):
        strips = Fraction(spec.blocks, room // along).__ceil__()
        ways.append((strips * strip, strip, room // along, strips))
    cloth, strip, each, strips = min(ways)
    return {"centre_strip_cut": strip, "centres_per_strip": each, "centre_strips": strips,
            "centre_cloth_length": cloth}


def cabin(spec, widths, given_cut):
    width, height, _ = read_cabin(spec, widths, given_cut)
    block, logs = logs_of(spec, widths, given_cut)
    strips, seam = strips_of(spec, widths, given_cut), seam_of(spec)
    return centres_of(spec, width + seam, height + seam) | {
        "centre_cut_width": width + seam,
        "centre_cut_height": height + seam,
        "finished_width": block.right - block.left,
        "finished_height": block.bottom - block.top,
        "unfinished_width": block.right - block.left + seam,
        "unfinished_height": block.bottom - block.top + seam,
        "logs": len(logs),
        "kinds": len(strips),
        "first_length": sum(row["length"] for row in strips if row["half"] == 1),
        "second_length": sum(row["length"] for row in strips if row["half"] == 2),
        "longest_log": max(log["cut_length"] for log in logs),
        "strips_least": sum(row["strips_least"] for row in strips),
        "strips": sum(row["strips"] for row in strips),
        "cloth_length": sum(row["cloth_length"] for row in strips),
        "square": int(block.right - block.left == block.bottom - block.top),
    }


def read_fit(spec, least_rounds, least_log):
    wants = Wants()
    wants.some_size(spec.wanted, spec.centre)
    wants.between(spec.rounds, least_rounds, ROUNDS_MAX)
    wants.between(spec.log_finished, least_log, SIZE_MAX)
    wants.seam(spec.allowance, spec.take_up)
    wants.choice(spec.order, ROUND, QUARTER)
    wants.that(spec.centre < spec.wanted, "ERR_RANGE")
    return wants


def fit_of(spec, rounds, log):
    a_round = 1 if spec.order == QUARTER else 2
    block = spec.centre + a_round * rounds * log
    return {
        "rounds": rounds,
        "logs_across": a_round * rounds,
        "log_finished": log,
        "log_cut": log + seam_of(spec),
        "block_finished": block,
        "rest": spec.wanted - block,
        "centre_to_fit": spec.wanted - a_round * rounds * log,
        "next_finished": block + a_round * log,
    }


def log_for(spec, rounding):
    wants = read_fit(spec, 1, 0)
    wants.rounding(rounding)
    wants.done()
    across = spec.rounds * (1 if spec.order == QUARTER else 2)
    log = rounded(Fraction(spec.wanted - spec.centre, across), rounding)["value"]
    if log <= 0:
        raise Refused("ERR_NO_FIT")
    return dict(fit_of(spec, spec.rounds, log), exact_numerator=spec.wanted - spec.centre, exact_denominator=across)


def rounds_for(spec):
    read_fit(spec, 0, 1).done()
    a_round = 1 if spec.order == QUARTER else 2
    rounds = Fraction(spec.wanted - spec.centre, a_round * spec.log_finished).__floor__()
    return dict(fit_of(spec, rounds, spec.log_finished), exact_numerator=0, exact_denominator=0)


# ---- frames ---------------------------------------------------------------------------------------------------------

def read_frame(spec, rounding):
    wants = Wants()
    wants.some_size(spec.opening_width, spec.opening_height, spec.frame_width)
    wants.size(spec.usable_width)
    wants.seam(spec.allowance, spec.take_up)
    wants.rounding(rounding)
    wants.done()


def nested(pieces, cut_width):
    """The length of pieces, given by their long edges, that lie on a strip turned against each other: along the middle
    of the strip each takes half of both edges, and half a cut width sticks out at either end."""
    return sum(Fraction(long + long - 2 * cut_width, 2) for long in pieces) + cut_width


def fewest_strips(pieces, cut_width, usable):
    """Every way of dealing the pieces out to as many strips as there are pieces; 0 when none fits."""
    fewest = 0
    for deal in product(range(len(pieces)), repeat=len(pieces)):
        strips = [[piece for piece, at in zip(pieces, deal) if at == strip] for strip in set(deal)]
        if all(nested(strip, cut_width) <= usable for strip in strips):
            fewest = min(fewest or len(strips), len(strips))
    return fewest


def frame(spec, rounding):
    """Each edge lies half a seam outside its line; where lines meet at 45 or 135 degrees, the raw corner moves along
    the edge by that times the tangent of half of what is left to 180: tan 67.5 = 1 + sqrt 2, tan 22.5 = sqrt 2 - 1."""
    read_frame(spec, rounding)
    seam, border = seam_of(spec), spec.frame_width
    found = {
        "cut_width": border + seam,
        "finished_width": spec.opening_width + 2 * border,
        "finished_height": spec.opening_height + 2 * border,
        "unfinished_width": spec.opening_width + 2 * border + seam,
        "unfinished_height": spec.opening_height + 2 * border + seam,
    }
    for name, opening in (("top", spec.opening_width), ("side", spec.opening_height)):
        found[f"{name}_long"], error = surd(opening + 2 * border + seam, seam, 2, 1, rounding)
        found[f"{name}_long_error"] = error
        found[f"{name}_short"] = found[f"{name}_long"] - 2 * (border + seam)  # at 45 degrees, a cut width at each end
    if min(found["top_short"], found["side_short"]) <= 0:
        raise Refused("ERR_NO_FIT")
    pieces = 2 * [found["top_long"], found["side_long"]]
    found["strip_length"] = int(nested(pieces, border + seam))
    found["strips"] = fewest_strips(pieces, border + seam, spec.usable_width)
    found["cloth_length"] = found["strips"] * (border + seam)
    return found


def frame_corners(spec):
    """Exact corners in doubles: x = (whole, times sqrt 2 m), y, each twice; by adding up from the left tip."""
    seam, border = seam_of(spec), spec.frame_width
    for piece, opening in ((1, spec.opening_width), (2, spec.opening_height)):
        long = (2 * (opening + 2 * border + seam), 2)
        tip = (seam, 1)  # twice (1 + sqrt 2) m / 2
        for line, start, up, down in ((1, (0, 0), 0, 2 * (border + seam)), (2, tip, seam, seam + 2 * border)):
            inner = (start[0] + down - up, start[1])
            mirrored = [(long[0] - x, long[1] - r) for x, r in (start, inner)]
            for (x, r), y in zip((start, *mirrored, inner), (up, up, down, down)):
                yield piece, line, x, r, y


def outline(spec, rounding):
    read_frame(spec, rounding)
    rows = []
    for piece, line, whole, roots, y in frame_corners(spec):
        at_x = surd(whole, roots * seam_of(spec), 2, 2, rounding)
        at_y = rounded(Fraction(y, 2), rounding)
        rows.append({"x": at_x[0], "x_error": at_x[1], "y": at_y["value"], "y_error": at_y["error"], "piece": piece,
                     "line": line})
    return rows


# ---- medallions -----------------------------------------------------------------------------------------------------

def want_round(wants, row):
    wants.choice(row.kind, PLAIN, COPING)
    wants.choice(row.corner, SQUARES, THROUGH)
    wants.between(row.width, 0 if row.kind == COPING else 1, SIZE_MAX)
    wants.between(row.repeat, 1 if row.kind == PIECED else 0, SIZE_MAX)
    wants.between(row.most, row.width if row.kind == COPING else 0, SIZE_MAX)


def coping_pair(row, run, repeat):
    """The least k repeats that leave each strip its least width."""
    k = least(lambda k: k * repeat - run >= 2 * row.width, run + 2 * row.width + 1)
    pair = k * repeat - run
    if -(-pair // 2) > row.most:
        raise Refused("ERR_NO_FIT")
    return pair


def pairs_of(rows, at, width, height, equal):
    row = rows[at]
    if row.kind != COPING:
        return 2 * row.width, 2 * row.width
    after = rows[at + 1]
    corners = 2 * after.width if after.corner == THROUGH else 0
    side, top = coping_pair(row, width + corners, after.repeat), coping_pair(row, height, after.repeat)
    if equal and side != top:
        raise Refused("ERR_NO_FIT")
    return side, top


def answered_round(row, width, height, side, top, seam):
    run = width + (side if row.corner == THROUGH else 0)
    pieced = row.kind == PIECED
    across, down = (divmod(run, row.repeat), divmod(height, row.repeat)) if pieced else ((0, 0), (0, 0))
    return {
        "before_width": width,
        "before_height": height,
        "after_width": width + side,
        "after_height": height + top,
        "side_pair": side,
        "top_pair": top,
        "side_finished": side // 2,
        "top_finished": top // 2,
        "side_cut": side // 2 + seam if side else 0,
        "top_cut": top // 2 + seam if top else 0,
        "side_length": height + seam if side else 0,
        "top_length": run + seam if top else 0,
        "side_units": down[0],
        "top_units": across[0],
        "units": 2 * (down[0] + across[0]),
        "corner_squares": 4 if row.corner == SQUARES and side and top else 0,
        "side_rest": down[1],
        "top_rest": across[1],
        "unit_unfinished": row.repeat + seam if pieced else 0,
        "divides": int(down[1] == 0 and across[1] == 0),
        "unequal": int(side != top),
        "after_unfinished_width": width + side + seam,
        "after_unfinished_height": height + top + seam,
    }


def medallion(spec, rows, equal):
    """The rounds' answers and the quilt's. What is wrong with a later round may be found before or after what the
    growing itself finds wrong, so both are reasons."""
    wants = Wants()
    wants.some_size(spec.centre_width, spec.centre_height)
    wants.seam(spec.allowance, spec.take_up)
    wants.between(len(rows), 1, ROUNDS_MAX)
    wants.done()
    for row in rows:
        want_round(wants, row)
    for row, after in zip(rows, [*rows[1:], None]):
        wants.that(row.kind != COPING or (after is not None and after.kind == PIECED), "ERR_CHOICE")
    width, height, seam, answers = spec.centre_width, spec.centre_height, seam_of(spec), []
    if wants.reasons:
        raise Refused(*wants.reasons, "ERR_RANGE", "ERR_NO_FIT")
    for at, row in enumerate(rows):
        side, top = pairs_of(rows, at, width, height, equal)
        answers.append(answered_round(row, width, height, side, top, seam))
        width, height = width + side, height + top
        if max(width, height) > SIZE_MAX:
            raise Refused("ERR_RANGE")
    return {
        "rows": answers,
        "finished_width": width,
        "finished_height": height,
        "unfinished_width": width + seam,
        "unfinished_height": height + seam,
        "undivided": sum(1 - row["divides"] for row in answers),
        "unequal": sum(row["unequal"] for row in answers),
        "units": sum(row["units"] for row in answers),
        "corner_squares": sum(row["corner_squares"] for row in answers),
    }


# ---- pieced borders -------------------------------------------------------------------------------------------------

def repeat(spec, rounding):
    wants = Wants()
    wants.some_size(spec.side_finished, spec.repeat_finished)
    wants.count(spec.spacers)
    wants.size(spec.spacer_least)
    wants.seam(spec.allowance, spec.take_up)
    wants.rounding(rounding)
    wants.that(spec.spacers * spec.spacer_least <= spec.side_finished, "ERR_NO_FIT")
    wants.done()
    side, unit, seam = spec.side_finished, spec.repeat_finished, seam_of(spec)
    below, above = side // unit, -(-side // unit)
    nearest = above if above * unit - side <= side - below * unit else below
    repeats = [rounded(Fraction(side, count), rounding) if count else {"value": 0, "error": 0}
               for count in (below, above)]
    units = (side - spec.spacers * spec.spacer_least) // unit
    shared = side - units * unit
    spacer = rounded(Fraction(shared, spec.spacers), rounding)["value"] if spec.spacers else 0
    return {
        "units_below": below,
        "rest_below": side - below * unit,
        "units_above": above,
        "over_above": above * unit - side,
        "units_nearest": nearest,
        "repeat_below": repeats[0]["value"],
        "repeat_below_error": repeats[0]["error"],
        "repeat_above": repeats[1]["value"],
        "repeat_above_error": repeats[1]["error"],
        "unit_unfinished": unit + seam,
        "units": units,
        "shared": shared,
        "spacer_finished": spacer,
        "spacer_cut": spacer + seam if spec.spacers else 0,
        "left_over": shared - spec.spacers * spacer,
        "divides": int(below == above),
        "below_left_over": side - below * repeats[0]["value"] if below else 0,
        "above_left_over": side - above * repeats[1]["value"],
    }


def common(width, height, narrowest, widest, rounding):
    wants = Wants()
    wants.some_size(width, height, widest)
    wants.size(narrowest)
    wants.that(narrowest <= widest, "ERR_RANGE")
    wants.rounding(rounding)
    wants.done()
    both = gcd(width, height)
    parts = -(-both // widest)
    if Fraction(both, parts) < narrowest:
        raise Refused("ERR_NO_FIT")
    unit = Fraction(both, parts)
    brought = rounded(unit, rounding)
    return {
        "common": both,
        "parts": parts,
        "repeat": brought["value"],
        "repeat_error": brought["error"],
        "across": int(width / unit),
        "down": int(height / unit),
    }


def point_border(spec, cutting, measuring):
    wants = Wants()
    wants.some_size(spec.side_finished)
    wants.size(spec.diagonal_finished)
    wants.between(spec.squares, 1 if spec.diagonal_finished == 0 else 0, SQUARES_MAX)
    wants.some_count(spec.runs)
    wants.seam(spec.allowance, spec.take_up)
    wants.that(spec.diagonal_finished != 0 or spec.squares <= spec.side_finished, "ERR_RANGE")
    wants.that(spec.diagonal_finished <= spec.side_finished, "ERR_NO_FIT")
    wants.rounding(cutting)
    wants.rounding(measuring)
    wants.done()
    by_count = spec.diagonal_finished == 0
    numerator, below = (spec.side_finished, spec.squares) if by_count else (spec.diagonal_finished, 1)
    squares = spec.squares if by_count else spec.side_finished // spec.diagonal_finished
    seam = seam_of(spec)
    brought = rounded(Fraction(numerator, below), measuring)
    triangles = 2 * (squares - 1) * spec.runs
    found = {
        "diagonal_numerator": numerator,
        "diagonal_denominator": below,
        "diagonal_finished": brought["value"],
        "diagonal_error": brought["error"],
        "squares_per_run": squares,
        "rest": 0 if by_count else spec.side_finished % spec.diagonal_finished,
        "border_unfinished": brought["value"] + seam,
        "squares": squares * spec.runs,
        "setting_triangles": triangles,
        "setting_squares": -(-triangles // 4),
        "end_triangles": 4 * spec.runs,
        "end_squares": 2 * spec.runs,
    }
    # all over 2 x below: D / sqrt 2 = sqrt 2 D / 2, and 1 / sqrt 2 = sqrt 2 / 2
    whole = below * seam
    for name, value in (("square_finished", (0, numerator)), ("square_cut", (2 * whole, numerator)),
                        ("setting_cut", (2 * numerator + 2 * whole, 2 * whole)),
                        ("end_cut", (numerator + 2 * whole, whole))):
        how = measuring if name == "square_finished" else cutting
        found[name], found[f"{name}_error"] = surd(*value, 2, 2 * below, how)
    shown = found["square_cut"] - seam
    if shown <= 0:
        raise Refused("ERR_NO_FIT")
    to_a_tick = SimpleNamespace(grid=1, tolerance=0, direction=3)
    found["run_longer_by"], _ = surd(-squares * Fraction(numerator, below), squares * shown, 2, 1, to_a_tick)
    return found
