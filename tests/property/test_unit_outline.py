# SPDX-License-Identifier: MIT
"""Outlines of units against drawing them another way: each unit by its description, at sixty digits, its raw patches by
moving every edge outwards. And laws that any drawing must keep: finished patches fill the unit, raw edges run beside
finished ones at the allowance."""

from decimal import ROUND_FLOOR, Decimal, localcontext

from hypothesis import assume, given
from hypothesis import strategies as st

from asking import ask

UNIT_SIZE_MAX = 2**26
PIECES, TWO, STRIPS, FLIPPED = 1, 2, 8, 7
SHARP, BLUNT = 1, 2
FINISHED, RAW = 1, 2

(RECTANGLE, HALF_SQUARE, QUARTER_SQUARE, SPLIT_QUARTER, GEESE, ON_POINT, SNOWBALL, HALF_RECTANGLE, TRIANGLE_60,
 DIAMOND_60, DIAMOND_45, HEXAGON, HALF_HEXAGON, TRAPEZOID, OCTAGON, STAR, KALEIDOSCOPE, SLICE) = range(1, 19)

METHOD = {RECTANGLE: PIECES, HALF_SQUARE: TWO, QUARTER_SQUARE: TWO, SPLIT_QUARTER: PIECES, GEESE: PIECES,
          ON_POINT: PIECES, SNOWBALL: FLIPPED, HALF_RECTANGLE: PIECES, OCTAGON: PIECES, STAR: PIECES,
          KALEIDOSCOPE: PIECES}
BY_HEIGHT = {TRIANGLE_60, DIAMOND_60, DIAMOND_45, HEXAGON, HALF_HEXAGON}

# ---- numbers at sixty digits ----------------------------------------------------------------------------------------


def root(number):
    return Decimal(number).sqrt()


# Cosines of 0, 22 1/2, 30, 45, 60, 67 1/2 and 90 degrees.
COSINES = {0: lambda: Decimal(1), 45: lambda: root(2 + root(2)) / 2, 60: lambda: root(3) / 2, 90: lambda: root(2) / 2,
           120: lambda: Decimal(1) / 2, 135: lambda: root(2 - root(2)) / 2, 180: lambda: Decimal(0)}


def cosine(half_degrees):
    half_degrees %= 720
    if half_degrees > 360:
        half_degrees = 720 - half_degrees
    return -COSINES[360 - half_degrees]() if half_degrees > 180 else COSINES[half_degrees]()


def towards(degrees):
    """The point at distance 1 in this direction."""
    half_degrees = int(2 * degrees)
    return cosine(half_degrees), cosine(180 - half_degrees)


def plus(point, direction, length):
    return point[0] + direction[0] * length, point[1] + direction[1] * length


def cross(a, b, c):
    """Twice the area of the triangle a, b, c; above 0 when it runs counterclockwise."""
    return (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0])


def area_of(polygon):
    return sum(cross(polygon[0], polygon[i], polygon[i + 1]) for i in range(1, len(polygon) - 1)) / Decimal(2)


# ---- units by their description -------------------------------------------------------------------------------------


def box(left, low, right, high):
    return [(left, low), (right, low), (right, high), (left, high)]


def corner_triangles(outline):
    """The corners that a convex polygon of eight leaves of the rectangle round it."""
    left, right = min(x for x, _ in outline), max(x for x, _ in outline)
    low, high = min(y for _, y in outline), max(y for _, y in outline)
    ends = {corner: [point for point in outline if point[0] == corner[0] or point[1] == corner[1]]
            for corner in box(left, low, right, high)}
    triangles = []
    for corner, points in ends.items():
        beside = min((p for p in points if p[1] == corner[1]), key=lambda p, c=corner: abs(p[0] - c[0]))
        above = min((p for p in points if p[0] == corner[0]), key=lambda p, c=corner: abs(p[1] - c[1]))
        triangle = [corner, beside, above]
        triangles.append(triangle if cross(*triangle) > 0 else [corner, above, beside])
    return triangles


def eight_points(size):
    """A regular octagon in a square, from the left end of its lowest side on."""
    half = size / 2
    radius = half / towards(22.5)[0]
    points = [plus((half, half), towards(247.5 + 45 * k), radius) for k in range(8)]
    # The sides lie on the square: sixty digits leave a trace that comparisons would trip over.
    return [tuple(Decimal(0) if abs(v) < Decimal("1e-40") else size if abs(v - size) < Decimal("1e-40") else v
                  for v in point) for point in points]


def star(size):
    half = size / 2
    side = size / (2 + root(2))
    middle = (half, half)
    diamonds, outer, tips = [], [], []
    for k in range(8):
        first, second = towards(225 + 45 * k), towards(270 + 45 * k)
        tip = plus(plus(middle, first, side), second, side)
        diamonds.append([middle, plus(middle, first, side), tip, plus(middle, second, side)])
        outer.append(plus(middle, first, side))
        tips.append(tip)
    squares = [[corner, tips[first], outer[first], tips[first - 1]]
               for corner, first in zip(box(Decimal(0), Decimal(0), size, size), (0, 2, 4, 6))]
    triangles = [[tips[first], tips[first + 1], outer[first + 1]] for first in (0, 2, 4, 6)]
    return [(1, patch) for patch in diamonds] + [(2, patch) for patch in squares + triangles]


def leaning(long_side, height, degrees, back):
    """A parallelogram, or a trapezoid whose ends lean in (back = -1)."""
    run = height * towards(degrees)[0] / towards(degrees)[1]
    zero = Decimal(0)
    return [(zero, zero), (long_side, zero), (long_side + back * run, height), (run, height)]


def single_patch(kind, w, h):
    side_60 = h / towards(60)[1]
    if kind == TRIANGLE_60:
        zero = Decimal(0)
        return [(zero, zero), (side_60, zero), plus((zero, zero), towards(60), side_60)]
    if kind == HEXAGON:
        radius = h / 2 / towards(30)[0]
        return [plus((radius, h / 2), towards(60 * k), radius) for k in range(6)]
    if kind == HALF_HEXAGON:
        return leaning(2 * side_60, h, 60, -1)
    if kind == TRAPEZOID:
        return leaning(w, h, 45, -1)
    if kind == SLICE:
        return leaning(w / towards(45)[1], h, 45, 1)
    degrees = 60 if kind == DIAMOND_60 else 45
    return leaning(h / towards(degrees)[1], h, degrees, 1)


def drawn(kind, w, h, c):
    """(region, corners) of each finished patch, counterclockwise."""
    zero = Decimal(0)
    whole = box(zero, zero, w, h)
    low_left, low_right, high_right, high_left = whole
    middle = (w / 2, h / 2)
    if kind == RECTANGLE:
        return [(1, whole)]
    if kind in (HALF_SQUARE, HALF_RECTANGLE):
        return [(1, [low_left, low_right, high_right]), (2, [low_left, high_right, high_left])]
    if kind == QUARTER_SQUARE:
        return [(1 + i % 2, [whole[i], whole[(i + 1) % 4], middle]) for i in range(4)]
    if kind == SPLIT_QUARTER:
        return [(1, [low_left, low_right, high_right]), (2, [high_left, low_left, middle]),
                (3, [high_right, high_left, middle])]
    if kind == GEESE:
        point = (w / 2, h)
        return [(1, [low_left, low_right, point]), (2, [low_left, point, high_left]),
                (2, [low_right, high_right, point])]
    if kind in (ON_POINT, SNOWBALL, OCTAGON):
        if kind == ON_POINT:
            inner = [(w / 2, zero), (w, h / 2), (w / 2, h), (zero, h / 2)]
        elif kind == OCTAGON:
            inner = eight_points(w)
        else:
            inner = [(c, zero), (w - c, zero), (w, c), (w, h - c), (w - c, h), (c, h), (zero, h - c), (zero, c)]
        return [(1, inner)] + [(2, triangle) for triangle in corner_triangles(inner)]
    if kind == STAR:
        return star(w)
    if kind == KALEIDOSCOPE:
        points = eight_points(w)
        wedges = [[middle, points[k], points[(k + 1) % 8]] for k in range(8)]
        corners = corner_triangles(points)
        return [(1 + k % 2, wedge) for k, wedge in enumerate(wedges)] + [(3, corner) for corner in corners]
    return [(1, single_patch(kind, w, h))]


# ---- raw patches: every edge moved outwards -------------------------------------------------------------------------


def moved_edge(a, b, e):
    """The line a x + b y = c beside an edge that runs counterclockwise, e outside it."""
    dx, dy = b[0] - a[0], b[1] - a[1]
    length = root(dx * dx + dy * dy)
    return dy / length, -dx / length, (dy * a[0] - dx * a[1]) / length + e


def meeting(first, second):
    below = first[0] * second[1] - first[1] * second[0]
    return ((first[2] * second[1] - first[1] * second[2]) / below,
            (first[0] * second[2] - first[2] * second[0]) / below)


def raw_of(polygon, e):
    lines = [moved_edge(polygon[i], polygon[(i + 1) % len(polygon)], e) for i in range(len(polygon))]
    return [meeting(lines[i - 1], lines[i]) for i in range(len(lines))]


def cut_off(polygon, line):
    """What lies on the inner side of a line a x + b y = c."""
    kept = []
    for i, point in enumerate(polygon):
        following = polygon[(i + 1) % len(polygon)]
        beyond = [line[0] * x + line[1] * y - line[2] for x, y in (point, following)]
        if beyond[0] <= 0:
            kept.append(point)
        if (beyond[0] > 0) != (beyond[1] > 0):
            share = beyond[0] / (beyond[0] - beyond[1])
            kept.append(tuple(p + share * (q - p) for p, q in zip(point, following)))
    return kept


def blunt_line(spec, region, patch, e):
    """Where the ruler cuts a point off, or None."""
    kind = spec["kind"]
    if spec["tip"] == SHARP or kind not in (HALF_SQUARE, TRIANGLE_60, KALEIDOSCOPE):
        return None
    if (kind, region) == (KALEIDOSCOPE, 3):
        return None
    if kind == TRIANGLE_60:
        return Decimal(0), Decimal(1), patch[2][1] + e
    if kind == HALF_SQUARE:
        if spec["method"] != STRIPS:
            return None
        size = Decimal(spec["finished_width"])
        return (Decimal(0), Decimal(1), size + e) if region == 1 else (Decimal(1), Decimal(0), size + e)
    middle, left, right = patch
    across = ((left[0] + right[0]) / 2, (left[1] + right[1]) / 2)
    length = root((middle[0] - across[0]) ** 2 + (middle[1] - across[1]) ** 2)
    a, b = (middle[0] - across[0]) / length, (middle[1] - across[1]) / length
    return a, b, a * middle[0] + b * middle[1] + e


def tick(value):
    """The nearest tick, a half up; a trace of the arithmetic is not taken for more than a half."""
    twice = 2 * value
    near = twice.to_integral_value()
    twice = near if abs(twice - near) < Decimal("1e-25") else twice
    return int(((twice + 1) / 2).to_integral_value(rounding=ROUND_FLOOR))


def expected(spec, hand):
    w, h, c = (Decimal(spec[name]) for name in ("finished_width", "finished_height", "corner"))
    kind = spec["kind"]
    e = (2 * Decimal(spec["allowance"]) + spec["take_up"]) / 2
    if kind == GEESE:
        h = w / 2
    elif kind not in BY_HEIGHT and not h:
        h = w
    patches = drawn(kind, w, h, c)
    width = max(x for _, patch in patches for x, _ in patch)
    outlines = []
    for stage in (FINISHED, RAW):
        for number, (region, patch) in enumerate(patches, 1):
            corners = patch
            line = blunt_line(spec, region, patch, e) if stage == RAW else None
            if stage == RAW:
                corners = raw_of(patch, e)
            if line and e:
                corners = cut_off(corners, line)
            elif line:  # a cut of no length
                tip = max(corners, key=lambda p, a=line: a[0] * p[0] + a[1] * p[1])
                corners = [p for point in corners for p in ([tip] * 2 if point == tip else [point])]
            if hand == 2:
                corners = [(width - x, y) for x, y in reversed(corners)]
            outlines.append((stage, number, region, [(tick(x), tick(y)) for x, y in corners]))
    return outlines


# ---- the library's ---------------------------------------------------------------------------------------------------


def outlines_of(spec, hand):
    outlines = {}
    for row in ask("unit_outlines", hand, spec):
        corners = outlines.setdefault((row["stage"], row["patch"], row["region"]), [])
        assert row["corner"] == len(corners)
        corners.append((row["x"], row["y"]))
    return outlines


def from_the_lowest(corners):
    """The same round, begun where it is least."""
    return min(corners[first:] + corners[:first] for first in range(len(corners)))


lengths = st.one_of(st.integers(1, 96).map(lambda n: n * 1016), st.integers(1, 10**6), st.integers(1, UNIT_SIZE_MAX),
                    st.integers(1, 30))
parts = st.one_of(st.sampled_from([2032, 1920, 2400, 0]), st.integers(0, 5000), st.integers(0, UNIT_SIZE_MAX // 8),
                  st.integers(0, 3))


@st.composite
def specs(draw, least=1, seam=parts):
    kind = draw(st.integers(RECTANGLE, SLICE))
    w = max(least, draw(lengths))
    h = max(least, draw(lengths))
    method = METHOD.get(kind, STRIPS)
    spec = {"kind": kind, "method": method, "finished_width": w, "finished_height": 0, "corner": 0,
            "allowance": draw(seam), "take_up": draw(seam), "tip": draw(st.sampled_from([SHARP, BLUNT]))}
    if kind == HALF_SQUARE and draw(st.booleans()):
        spec["method"] = STRIPS
    if kind == GEESE:
        spec["finished_width"] = max(2, w - w % 2)
    if kind in BY_HEIGHT:
        spec.update(finished_width=0, finished_height=h)
    if kind in (RECTANGLE, HALF_RECTANGLE, SLICE, SNOWBALL):
        spec["finished_height"] = h
    if kind == HALF_RECTANGLE:  # not so narrow that its seams make a side longer than any size
        longer, shorter = max(w, h), min(w, h)
        seam = 2 * spec["allowance"] + spec["take_up"]
        assume(longer + seam * (longer + shorter) // shorter < 2**30)
    if kind == TRAPEZOID:
        assume(w > 2 * least)
        spec["finished_height"] = draw(st.integers(least, (w - 1) // 2))
    if kind == SNOWBALL:
        assume(min(w, h) > 2 * least)
        spec["corner"] = draw(st.integers(least, (min(w, h) - 1) // 2))
    return spec


@given(specs(), st.sampled_from([1, 2]))
def test_every_corner_lies_where_drawing_puts_it(spec, hand):
    with localcontext() as context:
        context.prec = 60
        wanted = expected(spec, hand)
    found = outlines_of(spec, hand)
    assert list(found) == [outline[:3] for outline in wanted]
    for stage, number, region, corners in wanted:
        assert from_the_lowest(found[stage, number, region]) == from_the_lowest(corners), (stage, number)


def from_the_raw_corner(patch, e):
    """How far from the raw lower left the long side of a triangle there, drawn on, meets the raw lower edge."""
    _, first, second = patch
    share = (-e - first[1]) / (second[1] - first[1])
    return first[0] + share * (second[0] - first[0]) + e


@given(specs(), st.sampled_from([1, 2]))
def test_trimming_says_where_the_drawn_seam_meets_the_edge(spec, hand):
    kind = spec["kind"]
    assume(kind in (HALF_RECTANGLE, SNOWBALL, OCTAGON, KALEIDOSCOPE, STAR))
    with localcontext() as context:
        context.prec = 60
        w, h, c = (Decimal(spec[name]) for name in ("finished_width", "finished_height", "corner"))
        e = (2 * Decimal(spec["allowance"]) + spec["take_up"]) / 2
        patches = [patch for _, patch in drawn(kind, w, h or w, c)]
        if kind == STAR:
            wanted = min(x for x, y in patches[0] if abs(y) < Decimal("1e-40")) + e
        elif kind == HALF_RECTANGLE:  # the seam leaves by the shorter sides
            climb = e * min(w, h) / max(w, h)
            wanted = e - climb
        else:
            wanted = from_the_raw_corner(patches[1 if kind != KALEIDOSCOPE else 8], e)
        wanted = tick(wanted)
    last = ask("unit_steps", spec)[-1]
    assert last["from_corner"] == wanted


# ---- laws ------------------------------------------------------------------------------------------------------------


usual = st.sampled_from([2032, 1920, 2400])


def apart(first, second, slack):
    """Whether an edge of the first has the second on its outer side, but for so much."""
    for i, a in enumerate(first):
        b = first[(i + 1) % len(first)]
        length = root((b[0] - a[0]) ** 2 + (b[1] - a[1]) ** 2)
        if length and all(cross(a, b, point) <= slack * length for point in second):
            return True
    return False


@given(specs(least=8128, seam=usual), st.sampled_from([1, 2]))
def test_finished_patches_fill_the_unit_and_do_not_overlap(spec, hand):
    finished = [corners for (stage, _, _), corners in outlines_of(spec, hand).items() if stage == FINISHED]
    slack = 2
    for i, first in enumerate(finished):
        assert area_of(first) > 0
        for second in finished[:i]:
            assert apart(first, second, slack) or apart(second, first, slack)
    if len(finished) > 1:  # then the unit is a rectangle
        width = max(x for corners in finished for x, _ in corners)
        height = max(y for corners in finished for _, y in corners)
        assert min(min(point) for corners in finished for point in corners) == 0
        assert abs(sum(map(area_of, finished)) - width * height) <= 20 * (width + height)


def distance(point, a, b):
    """Of a point from the line through a and b, above 0 on its right."""
    return -cross(a, b, point) / root((b[0] - a[0]) ** 2 + (b[1] - a[1]) ** 2)


def beside(patch, edge, e, slack):
    """Whether a raw edge runs e outside some edge of the finished patch."""
    for i, a in enumerate(patch):
        b = patch[(i + 1) % len(patch)]
        if all(abs(distance(point, a, b) - e) <= slack for point in edge):
            return True
    return False


@given(specs(least=8128, seam=usual), st.sampled_from([1, 2]))
def test_raw_edges_run_beside_finished_ones_at_the_allowance(spec, hand):
    outlines = outlines_of(spec, hand)
    e = (2 * Decimal(spec["allowance"]) + spec["take_up"]) / 2
    reach = 4 * max(max(map(max, corners)) for corners in outlines.values())
    for (stage, number, region), raw in outlines.items():
        if stage == FINISHED:
            continue
        patch = outlines[FINISHED, number, region]
        shortest = min(root((a[0] - b[0]) ** 2 + (a[1] - b[1]) ** 2) for a, b in zip(patch, patch[1:] + patch[:1]))
        slack = 2 + Decimal(2 * reach) / shortest  # what a tick at an end of the finished edge makes at the raw one
        edges = [(raw[i], raw[(i + 1) % len(raw)]) for i in range(len(raw))]
        far = sum(not beside(patch, edge, e, slack) for edge in edges)
        assert far == len(raw) - len(patch)  # the cut across a blunt tip


@given(specs(), st.sampled_from([1, 2]))
def test_mirroring_keeps_the_shape(spec, hand):
    found, mirrored = outlines_of(spec, hand), outlines_of(spec, 3 - hand)
    assert list(found) == list(mirrored)
    for key, corners in found.items():
        ours = sorted(area_of([tuple(map(Decimal, point)) for point in shape]) for shape in (corners, mirrored[key]))
        around = sum(abs(x) + abs(y) for x, y in corners)
        assert ours[1] - ours[0] <= 4 * around + 16
