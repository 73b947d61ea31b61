# SPDX-License-Identifier: MIT
"""Changes by quilting and washing, in fractions."""

from fractions import Fraction

from .base import PPM, Wants, down, nearest, rounded, up

BATTING, FABRIC, LARGER, SMALLER = 1, 2, 3, 4
BATTING, FABRIC, BOTH = 1, 2, 3


def wants_measures(wants, before, after):
    wants.some_size(before)
    wants.size(after)
    wants.that(after <= 10 * before, "ERR_RANGE")


def wants_losses(wants, *shares):
    for share in shares:
        wants.between(share, 0, PPM - 1)


def ppm_of(before, after):
    return nearest(Fraction(after - before, before) * PPM)


def change(before, after):
    wants = Wants()
    wants_measures(wants, before, after)
    wants.done()
    return ppm_of(before, after)


def measure(spec):
    wants = Wants()
    wants_measures(wants, spec.before_width, spec.after_width)
    wants_measures(wants, spec.before_length, spec.after_length)
    wants.done()
    before, after = spec.before_width * spec.before_length, spec.after_width * spec.after_length
    return {
        "area_before": 2 * before,
        "area_after": 2 * after,
        "change_across": ppm_of(spec.before_width, spec.after_width),
        "change_along": ppm_of(spec.before_length, spec.after_length),
        "change_area": ppm_of(before, after),
    }


def left(share):
    return 1 - Fraction(share, PPM)


def sides(spec):
    return (("width", spec.width, spec.quilting_across, spec.washing_across),
            ("length", spec.length, spec.quilting_along, spec.washing_along))


def wants_quilt(spec, rounding):
    wants = Wants()
    wants.size(spec.width, spec.length)
    wants_losses(wants, spec.quilting_across, spec.quilting_along, spec.washing_across, spec.washing_along)
    wants.rounding(rounding)
    wants.done()


def size_to_make(spec, rounding):
    wants_quilt(spec, rounding)
    answer = {}
    for side, size, quilting, washing in sides(spec):
        keeps = left(quilting) * left(washing)
        make = rounded(size / keeps, rounding)
        multiplied = size * (1 + Fraction(quilting, PPM)) * (1 + Fraction(washing, PPM))
        answer.update({
            f"make_{side}": make["value"],
            f"quilted_{side}": nearest(size / left(washing)),
            f"washed_{side}": nearest(make["value"] * keeps),
            f"multiplied_{side}": nearest(multiplied),
            f"short_{side}": size - nearest(multiplied * keeps),
            f"{side}_exact": make["exact"],
        })
    return answer


def becomes(spec, rounding):
    wants_quilt(spec, rounding)
    answer = {}
    area = Fraction(1)
    for side, size, quilting, washing in sides(spec):
        keeps = left(quilting) * left(washing)
        area *= keeps
        answer.update({
            f"quilted_{side}": rounded(size * left(quilting), rounding)["value"],
            f"washed_{side}": rounded(size * keeps, rounding)["value"],
            "change_across" if side == "width" else "change_along": nearest((keeps - 1) * PPM),
        })
    return dict(answer, change_area=nearest((area - 1) * PPM))


def from_sample(before, after, target, rounding):
    wants = Wants()
    wants.some_size(before, after)
    wants.size(target)
    wants.rounding(rounding)
    wants.done()
    return rounded(Fraction(target * before, after), rounding)


def governs(fabric, batting, rule):
    wants = Wants()
    wants_losses(wants, fabric, batting)
    wants.choice(rule, BATTING, SMALLER)
    wants.done()
    share = {BATTING: batting, FABRIC: fabric, LARGER: max(fabric, batting), SMALLER: min(fabric, batting)}[rule]
    if rule in (LARGER, SMALLER) and fabric == batting:
        return {"share": share, "source": BOTH}
    if rule in (BATTING, FABRIC):
        return {"share": share, "source": BATTING if rule == BATTING else FABRIC}
    return {"share": share, "source": BATTING if share == batting else FABRIC}


def prewash(spec):
    wants = Wants()
    wants.size(spec.needed_length, spec.usable_width)
    wants_losses(wants, spec.across, spec.along)
    wants.done()
    unshrunk = up(spec.needed_length / left(spec.along))
    width = down(spec.usable_width * left(spec.across))
    return {
        "unshrunk_length": unshrunk,
        "washed_width": width,
        "lost_length": unshrunk - spec.needed_length,
        "lost_width": spec.usable_width - width,
    }
