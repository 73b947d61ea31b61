# SPDX-License-Identifier: MIT
"""Units of the caller's own, their templates, quarter circles and regular polygons.

Tiling is decided another way than in the library: the plane is cut into upright slabs at every corner and crossing, and
in the middle of each slab the edges are sorted and the pieces counted. Templates are worked out with 90 decimals, from
points and directions; a value within 10^-45 of a half tick is taken to be it.
"""

from decimal import Decimal, getcontext
from fractions import Fraction
from itertools import combinations
from math import isqrt

from .base import LENGTH_MAX, SIZE_MAX, Refused, Wants, grid_point, rounded

getcontext().prec = 90

SHAPE_SIZE_MAX, SEAM_MAX, REACH, CORNERS = 2**20, 2**17, 2**22, 1024
STRAIGHT, CONVEX, CONCAVE = 1, 2, 3
SHARP, BLUNT, TRIM_ARRIVING, TRIM_LEAVING = 1, 2, 3, 4
WARN_BIAS_EDGE = 1 << 12
HALF = Decimal("0.5")
NEAR = Decimal(10)**-45


# ---- rows -----------------------------------------------------------------------------------------------------------

def read(rows):
    """The rows by piece."""
    wants = Wants()
    wants.between(len(rows), 1, CORNERS)
    before = -1
    for row in rows:
        arc = row.curve != STRAIGHT
        wants.choice(row.tip, SHARP, TRIM_LEAVING)
        wants.choice(row.curve, STRAIGHT, CONCAVE)
        wants.between(row.x, 0, SHAPE_SIZE_MAX)
        wants.between(row.y, 0, SHAPE_SIZE_MAX)
        wants.between(row.allowance, 0, SEAM_MAX)
        wants.between(row.take_up, 0, SEAM_MAX)
        wants.between(row.radius, int(arc), SHAPE_SIZE_MAX if arc else 0)
        wants.between(row.centre_x, -SHAPE_SIZE_MAX if arc else 0, 2 * SHAPE_SIZE_MAX if arc else 0)
        wants.between(row.centre_y, -SHAPE_SIZE_MAX if arc else 0, 2 * SHAPE_SIZE_MAX if arc else 0)
        wants.that(before <= row.piece <= before + 1, "ERR_SHAPE")
        before = row.piece
    wants.done()
    rings = {}
    for at, row in enumerate(rows):
        row.row = at
        rings.setdefault(row.piece, []).append(row)
    return rings


def point(row):
    return row.x, row.y


def edges(ring):
    return list(zip(ring, ring[1:] + ring[:1]))


def cross(a, b):
    return a[0] * b[1] - a[1] * b[0]


def dot(a, b):
    return a[0] * b[0] + a[1] * b[1]


def minus(a, b):
    return a[0] - b[0], a[1] - b[1]


def area2(ring):
    return sum(cross(point(a), point(b)) for a, b in edges(ring))


# ---- straight shapes ------------------------------------------------------------------------------------------------

def meet_at(p, q, r, s):
    """Where two segments meet: None, a point, or "along" when they share more than a point."""
    d, e = minus(q, p), minus(s, r)
    below = cross(d, e)
    if below == 0:
        if cross(d, minus(r, p)) != 0:
            return None
        ends = sorted([Fraction(dot(minus(end, p), d), dot(d, d)) for end in (r, s)])
        low, high = max(ends[0], 0), min(ends[1], 1)
        if low > high:
            return None
        return "along" if low < high else (p[0] + low * d[0], p[1] + low * d[1])
    t = Fraction(cross(minus(r, p), e), below)
    u = Fraction(cross(minus(r, p), d), below)
    return (p[0] + t * d[0], p[1] + t * d[1]) if 0 <= t <= 1 and 0 <= u <= 1 else None


def is_simple(ring):
    """Of straight edges."""
    if len(ring) < 3 or any(point(a) == point(b) for a, b in edges(ring)):
        return False
    numbered = list(enumerate(edges(ring)))
    for (i, (a, b)), (j, (c, d)) in combinations(numbered, 2):
        found = meet_at(point(a), point(b), point(c), point(d))
        shared = ([point(b)] if j == i + 1 else []) + ([point(a)] if (j + 1) % len(ring) == i else [])
        if found is not None and found not in shared:
            return False
    return area2(ring) > 0


def covers_once(outline, pieces):
    """Cut at every x where something happens; in the middle of each slab walk upwards and count."""
    lines = [(which, point(a), point(b)) for which, ring in enumerate([outline, *pieces]) for a, b in edges(ring)]
    stops = {end[0] for _, p, q in lines for end in (p, q)}
    for (_, p, q), (_, r, s) in combinations(lines, 2):
        found = meet_at(p, q, r, s)
        if found not in (None, "along"):
            stops.add(found[0])
    stops = sorted(stops)
    for left, right in zip(stops, stops[1:]):
        x = Fraction(left + right, 2)
        events = {}
        for which, p, q in lines:
            if min(p[0], q[0]) < x < max(p[0], q[0]):
                y = p[1] + Fraction(x - p[0]) * (q[1] - p[1]) / (q[0] - p[0])
                inside, covered = events.get(y, (0, 0))
                step = 1 if p[0] < q[0] else -1
                events[y] = (inside + step, covered) if which == 0 else (inside, covered + step)
        inside = covered = 0
        for y in sorted(events):
            inside, covered = inside + events[y][0], covered + events[y][1]
            if inside != covered:
                return False
    return True


def lies_on(a, b, c, d):
    """Both run the same way and share more than a point."""
    return (meet_at(point(a), point(b), point(c), point(d)) == "along" and
            dot(minus(point(b), point(a)), minus(point(d), point(c))) > 0)


def is_outside(rings, a, b):
    return any(lies_on(a, b, c, d) for c, d in edges(rings.get(-1, [])))


def check(rows):
    """Straight shapes only."""
    rings = read(rows)
    pieces = [rings[name] for name in sorted(rings) if name >= 0]
    if -1 not in rings or not pieces or not all(map(is_simple, rings.values())):
        raise Refused("ERR_SHAPE")
    if not covers_once(rings[-1], pieces):
        raise Refused("ERR_NOT_TILED")
    every = [edge for ring in pieces for edge in edges(ring)]
    outside = sum(is_outside(rings, a, b) for a, b in every)
    xs, ys = [row.x for row in rings[-1]], [row.y for row in rings[-1]]
    return {"pieces": len(pieces), "corners": len(every), "outside_edges": outside,
            "inside_edges": len(every) - outside, "finished_width": max(xs) - min(xs),
            "finished_height": max(ys) - min(ys), "finished_area": area2(rings[-1]), "has_arcs": 0}


# ---- lines and circles with 90 decimals -----------------------------------------------------------------------------

def exact(value):
    """A value as a fraction: the half tick that it is, or one so near that rounding is the same."""
    halves = (value * 2).to_integral_value()
    return Fraction(int(halves), 2) if abs(value * 2 - halves) < NEAR else Fraction(value)


def length(v):
    return (Decimal(v[0])**2 + Decimal(v[1])**2).sqrt()


def effective(row):
    return Decimal(2 * row.allowance + row.take_up) / 2


def unit(v):
    size = length(v)
    return Decimal(v[0]) / size, Decimal(v[1]) / size


def plus(p, d, times):
    return p[0] + d[0] * times, p[1] + d[1] * times


def out_of(d):
    """Outwards from a direction with the piece on its left."""
    return d[1], -d[0]


def crossing(p, d, q, e):
    """Of the lines p + t d and q + t e."""
    t = cross(minus(q, p), e) / cross(d, e)
    return plus(p, d, t)


def mirrored(p, d, v):
    """A vector mirrored in the line with unit direction d."""
    along, across = dot(v, d), dot(v, out_of(d))
    return plus((d[0] * along, d[1] * along), out_of(d), -across)


def straight_joint(before, here, after):
    v = Decimal(here.x), Decimal(here.y)
    d, e = unit(minus(point(here), point(before))), unit(minus(point(after), point(here)))
    s, t = effective(before), effective(here)
    p, q = plus(v, out_of(d), s), plus(v, out_of(e), t)
    turn = cross(minus(point(here), point(before)), minus(point(after), point(here)))
    forward = dot(minus(point(here), point(before)), minus(point(after), point(here)))
    if turn == 0:
        return [p] if s == t else [p, q]
    if here.tip == SHARP or turn < 0 or forward >= 0:
        return [crossing(p, d, q, e)]
    if here.tip == BLUNT:
        return [plus(p, d, t), plus(q, e, -s)]
    if here.tip == TRIM_ARRIVING:
        hinge = crossing(v, d, q, e)
        return [crossing(hinge, mirrored(v, d, e), p, d), hinge]
    hinge = crossing(v, e, p, d)
    return [hinge, crossing(hinge, mirrored(v, e, d), q, e)]


def bulge(row):
    return {STRAIGHT: 0, CONVEX: 1, CONCAVE: -1}[row.curve]


def cut_radius(row):
    radius = row.radius + bulge(row) * effective(row)
    if radius <= 0:
        raise Refused("ERR_SEAM_TOO_WIDE")
    return radius


def root_of(square):
    if square < -NEAR:
        raise Refused("ERR_SEAM_TOO_WIDE")
    return square.sqrt() if square > NEAR else Decimal(0)


def line_and_circle(p, d, centre, radius, v):
    """The one of the two places that lies on the side of v."""
    foot = plus(p, d, dot(minus(centre, p), d))
    root = root_of(radius**2 - dot(minus(foot, centre), minus(foot, centre)))
    side = dot(minus(v, centre), d)
    if abs(side) < NEAR and root != 0:
        raise Refused("ERR_SHAPE")
    return plus(foot, d, root if side > 0 else -root)


def arc_and_line(arc, start, end, line, here):
    centre = Decimal(arc.centre_x), Decimal(arc.centre_y)
    v = Decimal(here.x), Decimal(here.y)
    d = unit(minus(point(end), point(start)))
    radius = cut_radius(arc)
    spoke = minus(v, centre)
    if abs(start.x - end.x) and abs(start.y - end.y):
        if abs(cross(spoke, d)) > 1:
            raise Refused("ERR_SHAPE")
        way = 1 if dot(spoke, d) > 0 else -1
        d = unit((spoke[0] * way, spoke[1] * way))
    return [line_and_circle(plus(v, out_of(d), effective(line)), d, centre, radius, v)]


def two_arcs(a, b, here):
    p, q = (Decimal(a.centre_x), Decimal(a.centre_y)), (Decimal(b.centre_x), Decimal(b.centre_y))
    v = Decimal(here.x), Decimal(here.y)
    r, s = cut_radius(a), cut_radius(b)
    if p == q:
        spoke = unit(minus(v, p))
        return [plus(p, spoke, r)] if r == s else [plus(p, spoke, r), plus(p, spoke, s)]
    d, apart = unit(minus(q, p)), length(minus(q, p))
    along = (r**2 - s**2 + apart**2) / (2 * apart)
    root = root_of(r**2 - along**2)
    side = cross(d, minus(v, p))
    if abs(side) < NEAR and root != 0:
        raise Refused("ERR_SHAPE")
    return [plus(plus(p, d, along), (-d[1], d[0]), root if side > 0 else -root)]


def joint(before, here, after):
    if here.curve == before.curve == STRAIGHT:
        return straight_joint(before, here, after)
    if here.tip != SHARP:
        raise Refused("ERR_CHOICE")
    if here.curve == STRAIGHT:
        return arc_and_line(before, here, after, here, here)
    if before.curve == STRAIGHT:
        return arc_and_line(here, before, here, before, here)
    return two_arcs(before, here, here)


# ---- templates ------------------------------------------------------------------------------------------------------

def piece_of(rows, piece):
    rings = read(rows)
    if piece < 0 or piece not in rings:
        raise Refused("ERR_INDEX")
    ring = rings[piece]
    if all(row.curve == STRAIGHT for row in ring) and not is_simple(ring):
        raise Refused("ERR_SHAPE")
    return rings, ring


def together(*steps):
    """What each step gives; what any of them refuses may be what the library says."""
    made, reasons = [], set()
    for step in steps:
        try:
            made.append(step())
        except Refused as refused:
            reasons |= refused.statuses
    if reasons:
        raise Refused(*reasons)
    return made


def good_rounding(rounding):
    wants = Wants()
    wants.rounding(rounding)
    wants.done()


def good_margin(margin):
    wants = Wants()
    wants.between(margin, 0, SHAPE_SIZE_MAX)
    wants.done()


def joints(ring, rounding):
    found, reasons = [], set()
    for at, here in enumerate(ring):
        try:
            places = joint(ring[at - 1], here, ring[(at + 1) % len(ring)])
        except Refused as refused:
            reasons |= refused.statuses
            found.append([])
            continue
        found.append([tuple(grid_point(exact(c), rounding) for c in place) for place in places])
        if any(abs(c) > REACH for place in found[-1] for c in place):
            reasons.add("ERR_OVERFLOW")
    for at, (a, b) in enumerate(edges(ring)):
        start, end = found[at], found[(at + 1) % len(ring)]
        if start and end and dot(minus(end[0], start[-1]), minus(point(b), point(a))) <= 0:
            reasons.add("ERR_SEAM_TOO_WIDE")
    if reasons:
        raise Refused(*reasons)
    return found


def template(rows, piece, rounding):
    (_, ring), _ = together(lambda: piece_of(rows, piece), lambda: good_rounding(rounding))
    made = []
    for row, places in zip(ring, joints(ring, rounding)):
        for place in places:
            seam = place is places[-1]
            arc = seam and row.curve != STRAIGHT
            made.append({"corner": row.row, "curve": row.curve if arc else STRAIGHT, "x": place[0], "y": place[1],
                         "centre_x": row.centre_x if arc else 0, "centre_y": row.centre_y if arc else 0,
                         "radius": int(cut_radius(row) + HALF) if arc else 0, "has_seam": int(seam)})
    return made


def up(value):
    return -(-exact(value) // 1)


def arc_points(ring, found, d):
    """The farthest points of convex arcs in direction d."""
    for at, row in enumerate(ring):
        if row.curve != CONVEX:
            continue
        p, q = found[at][-1], found[(at + 1) % len(ring)][0]
        far = plus((Decimal(row.centre_x), Decimal(row.centre_y)), d, cut_radius(row))
        if cross(minus(q, p), minus(far, p)) < -NEAR:
            yield far


def sizes(ring, found, direction):
    """Along and across."""
    d = unit(direction)
    sizes_ = []
    for way in (d, out_of(d)):
        reach = []
        for face in (way, (-way[0], -way[1])):
            places = [place for places in found for place in places] + list(arc_points(ring, found, face))
            reach.append(max(dot(place, face) for place in places))
        sizes_.append(up(sum(reach)))
    return sizes_


def good_grain(spec):
    wants = Wants()
    wants.between(spec.grain_x, -SHAPE_SIZE_MAX, SHAPE_SIZE_MAX)
    wants.between(spec.grain_y, -SHAPE_SIZE_MAX, SHAPE_SIZE_MAX)
    wants.done()


def piece(rows, spec, rounding):
    (rings, ring), *_ = together(lambda: piece_of(rows, spec.piece), lambda: good_rounding(rounding),
                                 lambda: good_margin(spec.margin), lambda: good_grain(spec))
    found = joints(ring, rounding)
    lines = [(a, b) for a, b in edges(ring) if a.curve == STRAIGHT]
    outside = [(a, b) for a, b in lines if is_outside(rings, a, b)]

    def size2(edge):
        return dot(minus(point(edge[1]), point(edge[0])), minus(point(edge[1]), point(edge[0])))

    grain, grain_corner = (spec.grain_x, spec.grain_y), -1
    if grain == (0, 0):
        grain = (1, 0)
        if lines:
            a, b = max(outside or lines, key=size2)
            grain, grain_corner = minus(point(b), point(a)), a.row
    bias = sum(cross(minus(point(b), point(a)), grain) != 0 and dot(minus(point(b), point(a)), grain) != 0
               for a, b in outside)
    longest = max(lines, key=size2) if lines else None
    outlined = [place for places in found for place in places]
    width, height = sizes(ring, found, (1, 0))
    along, across = sizes(ring, found, grain)
    return {
        "finished_area": area2(ring),
        "cut_area": sum(cross(a, b) for a, b in zip(outlined, outlined[1:] + outlined[:1])),
        "cut_width": width,
        "cut_height": height,
        "longest": (isqrt(4 * size2(longest)) + 1) // 2 if longest else 0,
        "grain_x": grain[0],
        "grain_y": grain[1],
        "rectangle_along": along + 2 * spec.margin,
        "rectangle_across": across + 2 * spec.margin,
        "longest_corner": longest[0].row if longest else -1,
        "grain_corner": grain_corner,
        "outside_edges": len(outside),
        "bias_edges": bias,
        "has_arcs": int(len(lines) < len(ring)),
        "warnings": WARN_BIAS_EDGE if bias else 0,
    }


def laid_on(rows, corner):
    read(rows)
    if not 0 <= corner < len(rows):
        raise Refused("ERR_INDEX")
    found = piece_of(rows, rows[corner].piece)
    if rows[corner].curve != STRAIGHT:
        raise Refused("ERR_SHAPE")
    return found


def foundation(rows, corner, margin, rounding):
    (rings, ring), *_ = together(lambda: laid_on(rows, corner), lambda: good_rounding(rounding),
                                 lambda: good_margin(margin))
    a, b = next(edge for edge in edges(rings[rows[corner].piece]) if edge[0].row == corner)
    along, across = sizes(ring, joints(ring, rounding), minus(point(b), point(a)))
    return {"along": along + 2 * margin, "across": across + 2 * margin}


# ---- quarter circles ------------------------------------------------------------------------------------------------

PI = Decimal("3.14159265358979323846264338327950288419716939937510582097494459230781640628620899")


def arc_length(radius, quarter_turns, rounding):
    wants = Wants()
    wants.size(radius)
    wants.between(quarter_turns, 1, 4)
    wants.rounding(rounding)
    wants.done()
    return rounded(Fraction(PI) * radius * quarter_turns / 2, rounding)


def quarter(spec, rounding):
    wants = Wants()
    wants.between(spec.finished, 2, SIZE_MAX // 4)
    wants.between(spec.radius, 1, spec.finished - 1)
    wants.seam(spec.allowance, spec.take_up)
    wants.rounding(rounding)
    wants.done()
    both = 2 * spec.allowance + spec.take_up
    if spec.radius < both:
        raise Refused("ERR_SEAM_TOO_WIDE")
    e, r = Decimal(both) / 2, Decimal(spec.radius)

    def to_grid(value):
        return grid_point(exact(value), rounding)

    return {
        "convex_cut_square": spec.radius + both,
        "convex_cut_radius": to_grid(r + e),
        "convex_cut_leg": to_grid(e + ((r + e)**2 - e**2).sqrt()),
        "concave_cut_square": spec.finished + both,
        "concave_cut_radius": to_grid(r - e),
        "concave_cut_leg": to_grid(spec.finished + e - ((r - e)**2 - e**2).sqrt()),
        "centre_inset": to_grid(e),
        "seam_length": grid_point(Fraction(PI) * spec.radius / 2, rounding),
    }


# ---- regular polygons -----------------------------------------------------------------------------------------------

R2, R3 = Decimal(2).sqrt(), Decimal(3).sqrt()
# side, flats, corners, centre and twice the area of a polygon with side 1
REGULAR = {
    3: (Decimal(1), R3 / 2, Decimal(1), 1 / R3, R3 / 2),
    4: (Decimal(1), Decimal(1), R2, R2 / 2, Decimal(2)),
    6: (Decimal(1), R3, Decimal(2), Decimal(1), 3 * R3),
    8: (Decimal(1), 1 + R2, (4 + 2 * R2).sqrt(), (1 + R2 / 2).sqrt(), 4 + 4 * R2),
}


def regular(sides, measure, size, rounding):
    wants = Wants()
    wants.that(sides in REGULAR, "ERR_CHOICE")
    wants.choice(measure, 1, 4)
    wants.between(size, 1, SIZE_MAX)
    wants.rounding(rounding)
    wants.done()
    side = size / REGULAR[sides][measure - 1]
    area = (exact(REGULAR[sides][4] * side**2) + Fraction(1, 2)).__floor__()
    if area > LENGTH_MAX:
        raise Refused("ERR_OVERFLOW")
    names = ("side", "flats", "corners", "centre")
    made = {name: grid_point(exact(part * side), rounding) for name, part in zip(names, REGULAR[sides])}
    return dict(made, area=area)
