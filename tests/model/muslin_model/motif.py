# SPDX-License-Identifier: MIT
"""Windows on a printed repeat, laid one after the other; stacks of identical layers."""

from .base import COUNT_MAX, LENGTH_MAX, WARN_NO_SLACK, Refused, Wants, least, largest


def repeats_over(cut, repeat):
    """The least number of repeats that a window does not reach beyond."""
    return least(lambda n: n * repeat >= cut, cut)


def columns_in(width, spec, any_across):
    """Windows that are whole in this width. Where the print may begin anywhere, the worst case is a print whose first
    window just misses the selvage, so that the next repeat's is the first."""
    if spec.repeat_width == 0:
        return int(spec.cut_width <= width)
    step = repeats_over(spec.cut_width, spec.repeat_width) * spec.repeat_width
    if not any_across:
        return largest(lambda n: n * step <= width, width)
    return largest(lambda n: n == 0 or spec.repeat_width + (n - 1) * step + spec.cut_width <= width, width)


def rows_of(spec, any_across):
    """(windows a row, repeats along a window takes, across)"""
    wants = Wants()
    wants.some_size(spec.repeat_length, spec.usable_width, spec.cut_width, spec.cut_length)
    wants.size(spec.repeat_width)
    wants.some_count(spec.motifs)
    wants.count(spec.pieces)
    wants.done()
    columns = columns_in(spec.usable_width, spec, any_across)
    if columns == 0:
        raise Refused("ERR_NO_YIELD")
    across = repeats_over(spec.cut_width, spec.repeat_width) if spec.repeat_width else 1
    along = repeats_over(spec.cut_length, spec.repeat_length)
    print_area = across * (spec.repeat_width or spec.usable_width) * along * spec.repeat_length
    if spec.motifs * spec.cut_width * spec.cut_length > print_area:
        raise Refused("ERR_RANGE")
    return columns * spec.motifs, along, across


def chances(spec):
    """(certain, lucky, within): the least and the most windows a row gives, and how far in the first may then begin."""
    if spec.repeat_width == 0:
        return spec.motifs, spec.motifs, 0
    step = repeats_over(spec.cut_width, spec.repeat_width) * spec.repeat_width
    lucky = largest(lambda n: n == 0 or (n - 1) * step + spec.cut_width <= spec.usable_width, spec.usable_width)
    within = spec.usable_width - spec.cut_width - (lucky - 1) * step
    return columns_in(spec.usable_width, spec, True) * spec.motifs, lucky * spec.motifs, within


def end_of_rows(rows, along, spec, any_start):
    """Where the last of so many rows may end: with its window, when the first window begins within a repeat of the end
    of the cloth and each repeat gives one; else with its repeats."""
    row = along * spec.repeat_length
    if rows == 0:
        return 0
    if any_start and spec.motifs == 1:
        return spec.repeat_length + (rows - 1) * row + spec.cut_length
    return rows * row + (spec.repeat_length if any_start else 0)


def plan(spec, any_start, any_across):
    per_row, along, across = rows_of(spec, any_start or any_across)
    rows = -(-spec.pieces // per_row)
    shift = spec.repeat_length if any_start and rows else 0
    certain, lucky, within = chances(spec)
    rows_certain = -(-spec.pieces // certain) if certain else 0
    rows_lucky = -(-spec.pieces // lucky)
    found = {
        "repeats_bought": rows * along + (shift > 0),
        "per_row_certain": certain,
        "per_row_lucky": lucky,
        "rows_certain": rows_certain,
        "rows_lucky": rows_lucky,
        "cloth_certain": rows_certain * along * spec.repeat_length + shift if certain else 0,
        "cloth_lucky": rows_lucky * along * spec.repeat_length + shift,
        "lucky_within": within,
        "wider_rows": 0,
        "repeats_across_each": across,
        "repeats_along_each": along,
        "per_row": per_row,
        "rows": rows,
        "repeats": rows * along,
        "spare_pieces": rows * per_row - spec.pieces,
        "row_length": along * spec.repeat_length,
        "waste_per_row": along * spec.repeat_length - spec.cut_length,
        "shift": shift,
        "cloth_length": rows * along * spec.repeat_length + shift,
        "cloth_least": end_of_rows(rows, along, spec, any_start),
        "narrower_by": 0,
        "wider_for_less": 0,
        "warnings": 0,
    }
    if rows and not spec.repeat_width and spec.cut_width == spec.usable_width:
        found["warnings"] = WARN_NO_SLACK
    if spec.repeat_width and rows:
        def rows_at(width):
            columns = columns_in(width, spec, any_start or any_across)
            return -(-spec.pieces // (columns * spec.motifs)) if columns else spec.pieces + 1

        narrowest = least(lambda width: rows_at(width) <= rows, spec.usable_width)
        found["narrower_by"] = spec.usable_width - narrowest
        found["warnings"] = WARN_NO_SLACK if narrowest == spec.usable_width else 0
        if rows > 1:
            wider = least(lambda more: rows_at(spec.usable_width + more) < rows, 2**63)
            found["wider_for_less"] = wider
            found["wider_rows"] = rows_at(spec.usable_width + wider)
    return found


def from_cloth(spec, cloth_length, any_start, any_across):
    wants = Wants()
    wants.size(cloth_length)
    wants.done()
    per_row, along, _ = rows_of(spec, any_start or any_across)
    rows = largest(lambda n: end_of_rows(n, along, spec, any_start) <= cloth_length, cloth_length + 1)
    left = cloth_length - end_of_rows(rows, along, spec, any_start)
    if rows == 0:
        left = max(cloth_length - (spec.repeat_length if any_start else 0), 0)
    certain, lucky, _ = chances(spec)
    return {
        "pieces_certain": rows * certain,
        "pieces_lucky": rows * lucky,
        "rows": rows,
        "repeats": rows * along,
        "pieces": rows * per_row,
        "left_over": left,
        "shorter_by": left if rows else 0,
        "longer_for_one": end_of_rows(rows + 1, along, spec, any_start) - cloth_length,
        "warnings": WARN_NO_SLACK if rows and left == 0 else 0,
    }


def stack(spec, any_start):
    wants = Wants()
    wants.some_size(spec.repeat_length, spec.strip_cut)
    wants.size(spec.straightening)
    wants.some_count(spec.per_strip, spec.layers)
    wants.count(spec.stacks)
    wants.done()
    strips = least(lambda n: n * spec.per_strip >= spec.stacks, COUNT_MAX)
    need = strips * spec.strip_cut + spec.straightening if strips else 0
    repeats = least(lambda n: n * spec.repeat_length >= need, need)
    layer = repeats * spec.repeat_length
    shift = spec.repeat_length if any_start and strips else 0
    if spec.layers * layer + shift > LENGTH_MAX:
        raise Refused("ERR_OVERFLOW")
    given = (layer - spec.straightening) // spec.strip_cut if strips else 0
    return {
        "strips": strips,
        "strips_in_layers": given,
        "repeats_per_layer": repeats,
        "repeats": spec.layers * repeats,
        "repeats_bought": spec.layers * repeats + (shift > 0),
        "used_length": need,
        "pieces": spec.layers * spec.stacks,
        "spare_stacks": given * spec.per_strip - spec.stacks,
        "layer_length": layer,
        "shift": shift,
        "cloth_length": spec.layers * layer + shift,
        "cloth_least": spec.layers * layer + shift - (layer - need),
        "left_over": layer - spec.straightening - given * spec.strip_cut if strips else 0,
        "shorter_by": layer - need,
        "warnings": WARN_NO_SLACK if strips and layer == need else 0,
    }
