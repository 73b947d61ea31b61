# SPDX-License-Identifier: MIT
"""Backing layouts, each tried on the cloth."""

from fractions import Fraction

from .base import WARN_NO_SLACK, Refused, Wants, largest, least, up
from .fabric import PRINT_NONE, PRINT_STRIPE_ACROSS

ONE_WIDTH, ONE_WIDTH_TURNED, SEAMS_ALONG, SEAMS_ACROSS = 1, 2, 3, 4
CENTRE_ALONG, CENTRE_ACROSS, INSERT_ALONG, INSERT_ACROSS = 5, 6, 7, 8
TURNED = (ONE_WIDTH_TURNED, SEAMS_ACROSS, CENTRE_ACROSS, INSERT_ACROSS)
LAYOUTS = range(ONE_WIDTH, INSERT_ACROSS + 1)


def one_width(usable, seam, need, panel):
    if usable < need:
        return None
    return {"panels": 1, "pieces": 1, "seams": 0, "joined": usable, "strip_cut": 0, "insert_strips": 0}


def joined_width(panels, usable, seam):
    return panels * usable - 2 * seam * (panels - 1)


def seams(usable, seam, need, panel):
    if need <= usable:
        return None
    panels = least(lambda n: n >= 2 and joined_width(n, usable, seam) >= need, need + 2)
    if panels is None or usable <= 2 * seam:
        return None
    return {"panels": panels, "pieces": panels, "seams": panels - 1, "joined": joined_width(panels, usable, seam),
            "strip_cut": 0, "insert_strips": 0}


def centre(usable, seam, need, panel):
    side = up(Fraction(need - usable + 4 * seam, 2))
    if need <= usable or side > usable:
        return None
    return {"panels": 2 if 2 * side <= usable else 3, "pieces": 3, "seams": 2,
            "joined": usable + 2 * side - 4 * seam, "strip_cut": side, "insert_strips": 0}


def insert(usable, seam, need, panel):
    strip = need - usable + 4 * seam
    if need <= usable or 2 * strip > usable:
        return None
    strips = least(lambda n: n >= 1 and joined_width(n, usable, seam) >= panel, panel + 2)
    if strips is None:
        return None
    return {"panels": 1, "pieces": 2 + strips, "seams": 2 + strips - 1, "joined": usable + strip - 4 * seam,
            "strip_cut": strip, "insert_strips": strips}


WAYS = {ONE_WIDTH: one_width, SEAMS_ALONG: seams, CENTRE_ALONG: centre, INSERT_ALONG: insert}


def whole_repeats(length, repeat):
    return up(length, repeat) if repeat else length


def panel_length(spec, run):
    return whole_repeats(run + spec.end_loss, spec.repeat)


def try_layout(layout, usable, spec, width, length):
    turned = layout in TURNED
    if turned and spec.print != PRINT_NONE:
        return None
    if layout in (INSERT_ALONG, INSERT_ACROSS) and spec.print != PRINT_NONE:
        return None
    if usable < 1:
        return None
    need = length if turned else width
    return WAYS[layout - turned](usable, spec.allowance, need, panel_length(spec, width if turned else length))


def layout_of(layout, spec, width, length, usable, round_panels):
    """One row, or None when the layout cannot serve."""
    way = try_layout(layout, usable, spec, width, length)
    if way is None:
        return None
    turned = layout in TURNED
    panel = panel_length(spec, width if turned else length)

    def lengths(way):
        extra = way["insert_strips"] * whole_repeats(way["strip_cut"], spec.repeat)
        cloth = way["panels"] * panel + extra
        per_panel = way["panels"] * up(panel, spec.step) + up(extra, spec.step) + up(spec.repeat, spec.step)
        on_total = up(cloth + spec.repeat, spec.step)
        return cloth, *((per_panel, on_total) if round_panels else (on_total, per_panel))

    cloth, bought, other_rounding = lengths(way)
    layout_is_insert = layout in (INSERT_ALONG, INSERT_ACROSS)

    def still_serves(narrower):
        other = try_layout(layout, usable - narrower, spec, width, length)
        if other is None or other["panels"] > way["panels"] or lengths(other)[1] > bought:
            return False
        return not layout_is_insert or other["pieces"] <= way["pieces"]

    narrower_by = largest(lambda n: n == 0 or still_serves(n), usable)
    return {
        "layout": layout,
        "possible": 1,
        "turned": int(turned),
        "needed_width": width,
        "needed_length": length,
        "panels": way["panels"],
        "panel_length": panel,
        "pieces": way["pieces"],
        "seams": way["seams"],
        "joined_width": panel if turned else way["joined"],
        "joined_length": way["joined"] if turned else panel,
        "cloth_length": cloth,
        "cloth_with_repeat": cloth + spec.repeat,
        "bought": bought,
        "other_rounding": other_rounding,
        "narrower_by": narrower_by,
        "strip_cut": way["strip_cut"],
        "warnings": WARN_NO_SLACK if narrower_by == 0 else 0,
    }


def want(spec):
    wants = Wants()
    wants.some_size(spec.quilt_width, spec.quilt_length, spec.step)
    wants.some_size(spec.fabric_width)
    wants.size(spec.margin_left, spec.margin_right, spec.margin_top, spec.margin_bottom, spec.selvage, spec.end_loss,
               spec.repeat)
    wants.seam(spec.allowance)
    wants.choice(spec.print, PRINT_NONE, PRINT_STRIPE_ACROSS)
    wants.that(spec.fabric_width - 2 * spec.selvage >= 1, "ERR_RANGE")
    wants.size(spec.quilt_width + spec.margin_left + spec.margin_right,
               spec.quilt_length + spec.margin_top + spec.margin_bottom)
    wants.done()


def layouts(spec, round_panels):
    """All rows in order; None for one that cannot serve."""
    want(spec)
    width = spec.quilt_width + spec.margin_left + spec.margin_right
    length = spec.quilt_length + spec.margin_top + spec.margin_bottom
    usable = spec.fabric_width - 2 * spec.selvage
    rows = [layout_of(layout, spec, width, length, usable, round_panels) for layout in LAYOUTS]
    possible = [row for row in rows if row]
    if not possible:
        raise Refused("ERR_NO_FIT")
    best = min(possible, key=lambda row: (row["bought"], row["seams"], row["layout"]))
    for row in possible:
        row["best"] = int(row is best)
    return rows
