# SPDX-License-Identifier: MIT
"""Fields that are not upright, drawn exactly: blocks on point by cutting the field the way its seams were sewn, last
seam first, and rows of 60 degree pieces by putting cells together. Nothing is rounded before the last step."""

from fractions import Fraction

from .root2 import ROOT, Root2, Root3

HALF = Fraction(1, 2)


def nearest(number):
    """To the nearest whole number, a half up."""
    return (number + HALF).floor()


def rounded(points):
    return [(nearest(x), nearest(y)) for x, y in points]


def cross(a, b):
    return a[0] * b[1] - a[1] * b[0]


def area(polygon):
    """Doubled, and positive counter-clockwise."""
    total = polygon[0][0] * 0
    for here, there in zip(polygon, polygon[1:] + polygon[:1]):
        total = total + cross(here, there)
    return total


def cut(polygon, height):
    """The convex parts where height(point) >= 0 and where it is <= 0, height being linear; [] where there is none."""
    parts = ([], [])
    for here, there in zip(polygon, polygon[1:] + polygon[:1]):
        at, next_at = height(here), height(there)
        for part, sign in zip(parts, (1, -1)):
            if at.sign() * sign >= 0:
                part.append(here)
            if at.sign() * next_at.sign() < 0:
                share = at / (at - next_at)
                part.append(tuple(a + (b - a) * share for a, b in zip(here, there)))
    return tuple(part if len(part) > 2 and area(part).sign() > 0 else [] for part in parts)


def unit_normal(here, there):
    """Outwards, of an edge that is upright, level, or slanted at 45 degrees (sqrt 2) or 60 (sqrt 3)."""
    dx, dy = there[0] - here[0], there[1] - here[1]
    kind = type(dx)
    slant = (kind(0, HALF), kind(0, HALF)) if kind is Root2 else (kind(0, HALF), kind(HALF))
    if dx.sign() == 0:
        return kind(dy.sign()), kind(0)
    if dy.sign() == 0:
        return kind(0), kind(-dx.sign())
    assert ((dx * slant[0]) * (dx * slant[0]) - (dy * slant[1]) * (dy * slant[1])).sign() == 0
    return slant[0] * dy.sign(), slant[1] * -dx.sign()


def widened(polygon, by):
    """Every edge of a convex polygon moved outwards."""
    lines = []
    for here, there in zip(polygon, polygon[1:] + polygon[:1]):
        normal = unit_normal(here, there)
        lines.append((normal, normal[0] * here[0] + normal[1] * here[1] + by))
    corners = []
    for (n, c), (m, d) in zip(lines[-1:] + lines[:-1], lines):
        below = cross(n, m)
        corners.append(((c * m[1] - d * n[1]) / below, (n[0] * d - m[0] * c) / below))
    return corners


def contains(polygon, point):
    return all((cross((there[0] - here[0], there[1] - here[1]), (point[0] - here[0], point[1] - here[1]))).sign() >= 0
               for here, there in zip(polygon, polygon[1:] + polygon[:1]))


# ---- blocks on point ------------------------------------------------------------------------------------------------

class Diagonal:
    """columns x rows blocks; pieces[name] are polygons, in the order of the library."""

    def __init__(self, columns, rows, block, set_off):
        self.columns, self.rows, self.block, self.set_off = columns, rows, block, set_off
        self.width = columns * block * ROOT + 2 * set_off
        self.height = rows * block * ROOT + 2 * set_off
        self.cells = {}
        self.pieces = self.sort_pieces(self.take_apart())

    def turned(self, point):
        """u and v, times sqrt 2."""
        x = point[0] - self.set_off
        y = point[1] - self.set_off - Fraction(2 * self.rows - 1, 2) * self.block * ROOT
        return x - y, x + y

    def point(self, u, v):
        return ((u + v) * HALF * ROOT + self.set_off,
                (v - u) * HALF * ROOT + Fraction(2 * self.rows - 1, 2) * self.block * ROOT + self.set_off)

    def split(self, polygon, axis, blocks):
        """Where u (0) or v (1) is above so many blocks, and below."""
        return cut(polygon, lambda point: self.turned(point)[axis] - blocks * self.block * ROOT)

    def seam(self, polygon, axis, blocks):
        """Where the line lies in the polygon, from its low end."""
        on_line = [point for point in polygon if (self.turned(point)[axis] - blocks * self.block * ROOT).sign() == 0]
        return sorted(on_line, key=lambda point: self.turned(point)[1 - axis].ends())

    def take_apart(self):
        """Pieces by their cell: whole blocks along u and v. Corners first, then rows, then what is in the rows."""
        c, r = self.columns, self.rows
        field = [(Root2(0), Root2(0)), (self.width, Root2(0)), (self.width, self.height), (Root2(0), self.height)]
        found, self.row_seams, self.corner_seams = {}, [], []
        found[c - 1, c], field = self.split(field, 1, c)
        field, found[r - 1, -r] = self.split(field, 1, 1 - r)
        field, found[-1, 0] = self.split(field, 0, 0)
        found[c + r - 1, c - r], field = self.split(field, 0, c + r - 1)
        self.corner_seams = [self.seam(found[-1, 0], 0, 0), self.seam(found[c + r - 1, c - r], 0, c + r - 1),
                             self.seam(found[c - 1, c], 1, c), self.seam(found[r - 1, -r], 1, 1 - r)]
        for b in range(c - 1, -r, -1):
            row, field = self.split(field, 1, b) if b > 1 - r else (field, [])
            if field:
                self.row_seams.append(self.seam(field, 1, b))
            for a in range(abs(b), min(2 * c - 2 - b, 2 * r - 2 + b) + 2):
                row, piece = self.split(row, 0, a)
                if piece:
                    found[a - 1, b] = piece
            if row:
                found[a, b] = row
        return found

    def is_outside(self, point):
        x, y = point
        return 0 in (x.sign(), y.sign(), (self.width - x).sign(), (self.height - y).sign())

    def sewn(self, seam, by):
        """Length of a seam: an end at the outside is cut at 45 degrees, another one straight."""
        total = Root2(0)
        for axis in 0, 1:
            total = total + (self.turned(seam[1])[axis] - self.turned(seam[0])[axis]) * HALF * ROOT
        for point in seam:
            total = total + (ROOT if self.is_outside(point) else 1) * by
        return total

    def sort_pieces(self, found):
        c, r = self.columns, self.rows
        order = [(k - 1, k) for k in range(1, c)] + [(c - 1 + k, c - k) for k in range(1, r)]
        order += [(r - 1 + k, k - r) for k in range(1, c)] + [(k - 1, -k) for k in range(1, r)]
        order += [(-1, 0), (c + r - 1, c - r), (c - 1, c), (r - 1, -r)]
        pieces = [found.pop(cell) for cell in order]
        self.cells = found
        return pieces

    def blocks(self):
        """Cells in the order in which they are given."""
        for alternate in 0, 1:
            for row in range(self.rows - alternate):
                for column in range(self.columns - alternate):
                    yield column + row + alternate, column - row


# ---- blocks on point with sashes -----------------------------------------------------------------------------------

OUTER, CUT, INNER = 2, 3, 4


class Sashed:
    """Blocks with sashes and cornerstones, laid out one by one and cut off at the edge; what is left over are the
    triangles. `parts` and `pieces` are polygons in the order of the library."""

    def __init__(self, layout, columns, rows, block, sash, set_off=0):
        self.layout, self.columns, self.rows = layout, columns, rows
        self.block, self.sash, self.set_off = block, sash, set_off
        self.pitch = block + sash
        self.gaps = {OUTER: 1, CUT: 0, INNER: -1}[layout]
        self.width = (columns * block + (columns + self.gaps) * sash) * ROOT + 2 * set_off
        self.height = (rows * block + (rows + self.gaps) * sash) * ROOT + 2 * set_off
        self.field = [(Root2(0), Root2(0)), (self.width, Root2(0)), (self.width, self.height), (Root2(0), self.height)]
        self.lay_parts()
        self.pieces = self.triangles() + self.corners() + self.cut_off

    def point(self, u, v):
        """Measured from the left tip of the first block, which stands away from the left edge as far as all do."""
        out = Fraction((1 + self.gaps) * self.sash, 2) * ROOT + self.set_off
        top = self.height - out
        tip = self.block * HALF * ROOT
        return out + (u + v) * HALF * ROOT, top - tip + (v - u) * HALF * ROOT

    def rectangle(self, u, v, width, height):
        return [self.point(u + a * width, v + b * height) for a, b in ((0, 0), (1, 0), (1, 1), (0, 1))]

    def within(self, polygon):
        for height in (lambda p: p[0], lambda p: p[1], lambda p: self.width - p[0], lambda p: self.height - p[1]):
            polygon = cut(polygon, height)[0] if polygon else []
        return polygon

    def mains(self):
        return [(i + j, i - j) for j in range(self.rows) for i in range(self.columns)]

    def alternates(self):
        return [(i + j + 1, i - j) for j in range(self.rows - 1) for i in range(self.columns - 1)]

    def sashes_of(self, a, b):
        """Left, right, above, below."""
        u, v, w, side = a * self.pitch, b * self.pitch, self.sash, self.block
        return [(u - w, v, w, side), (u + side, v, w, side), (u, v + side, side, w), (u, v - w, side, w)]

    def lay_parts(self):
        """Whole ones, and what the edge cuts off by the side at which it does: those that stand, those that lie."""
        p, w, side = self.pitch, self.sash, self.block
        c, r = self.columns, self.rows
        self.blocks = [(a * p, b * p, side, side) for a, b in self.mains() + self.alternates()]
        hosts = self.alternates() if self.layout == INNER else self.mains()
        sashes = [sash for a, b in hosts for sash in self.sashes_of(a, b)]
        left = {(i, j): ((i + j) * p - w, (i - j) * p - w, w, w) for j in range(r) for i in range(c + 1)}
        above = {(i, j): ((i + j) * p - w, (i - j) * p + side, w, w) for j in range(r + 1) for i in range(c)}
        stones = [left[i, j] for j in range(r) for i in range(1, c)]
        stones += [above[i, j] for j in range(1, r) for i in range(c)]
        frame = [left[c, j] for j in range(r)] + [above[i, r] for i in range(c)]
        frame += [above[i, 0] for i in range(c)] + [left[0, j] for j in range(r)]
        if self.layout == OUTER:
            stones += frame
        self.whole = self.blocks + sashes + stones
        self.parts = [self.rectangle(*part) for part in self.whole]
        cut_off = frame if self.layout == CUT else self.edge_sashes() if self.layout == INNER else []
        self.cut_off = [self.within(self.rectangle(*part)) for part in cut_off]

    def edge_sashes(self):
        """Beside the blocks at the edge, but not at the corners."""
        last_column, last_row = self.columns - 1, self.rows - 1
        def at(i, j, side):
            return self.sashes_of(i + j, i - j)[side]
        found = [at(k, 0, 0) for k in range(1, self.columns)] + [at(last_column, k, 1) for k in range(last_row)]
        found += [at(k, last_row, 1) for k in range(last_column)] + [at(0, k, 0) for k in range(1, self.rows)]
        found += [at(last_column, k, 2) for k in range(1, self.rows)]
        found += [at(k, last_row, 3) for k in range(1, self.columns)]
        return found + [at(k, 0, 2) for k in range(last_column)] + [at(0, k, 3) for k in range(last_row)]

    def above_line(self, polygon, axis, at, sign):
        """What lies beyond u (0) or v (1) = at, to larger (1) or smaller (-1) ones."""
        def height(point):
            x, y = point[0] - self.point(0, 0)[0], point[1] - self.point(0, 0)[1]
            return ((x + y if axis else x - y) - at * ROOT) * sign
        return cut(polygon, height)[0] if polygon else []

    def ends(self):
        """Lines at which the corners begin: u at the left, at the right, v above, below."""
        w = 0 if self.layout == INNER else self.sash
        c, r, p, side = self.columns, self.rows, self.pitch, self.block
        return -w, (c + r - 2) * p + side + w, (c - 1) * p + side + w, (1 - r) * p - w

    def corners(self):
        left, right, above, below = self.ends()
        middle = self.above_line(self.above_line(self.field, 1, above, -1), 1, below, 1)
        return [self.above_line(middle, 0, left, -1), self.above_line(middle, 0, right, 1),
                self.above_line(self.field, 1, above, 1), self.above_line(self.field, 1, below, -1)]

    def triangles(self):
        """Between two neighbours at the edge, as far as the seams of the corners and of the rows leave them."""
        p, w, c, r = self.pitch, self.sash, self.columns, self.rows
        left, right, above, below = self.ends()
        between = self.field
        for axis, at, sign in ((1, above, -1), (1, below, 1), (0, left, 1), (0, right, -1)):
            between = self.above_line(between, axis, at, sign)

        def part(u, u_sign, v, v_sign, other):
            found = self.above_line(self.above_line(between, 0, u, u_sign), 1, v, v_sign)
            return self.above_line(found, 1, other, -v_sign) if self.layout == OUTER else found
        found = [part(k * p - w, -1, k * p, 1, (k + 1) * p) for k in range(1, c)]
        found += [part((c + k) * p, 1, (c - 1 - k) * p, 1, (c - k) * p) for k in range(r - 1)]
        found += [part((r + k) * p, 1, (k - r + 2) * p - w, -1, (k - r + 1) * p - w) for k in range(c - 1)]
        found += [part(k * p - w, -1, (1 - k) * p - w, -1, -k * p - w) for k in range(1, r)]
        return found


# ---- rows of 60 degree pieces ---------------------------------------------------------------------------------------

def hull(points):
    """Of whole numbers, counter-clockwise, without corners of 180 degrees."""
    points = sorted(set(points))

    def half(points):
        found = []
        for point in points:
            while len(found) > 1 and cross((found[-1][0] - found[-2][0], found[-1][1] - found[-2][1]),
                                           (point[0] - found[-1][0], point[1] - found[-1][1])) <= 0:
                found.pop()
            found.append(point)
        return found[:-1]
    return half(points) + half(points[::-1])


class Sixty:
    """Rows of pieces, rows = lists of cells; corners in steps of h = H / sqrt 3 across and H up."""

    def __init__(self, rows, height, first):
        self.rows, self.height = rows, height
        self.cells = sum(rows[0])
        self.width = Root3(0, Fraction((self.cells + 1) * height, 3))
        self.pieces = [self.placed(shape) for shape in self.shapes(first)]

    def triangle(self, row, cell, up):
        low = len(self.rows) - 1 - row
        base, tip = (low, low + 1) if up else (low + 1, low)
        return [(cell, base), (cell + 2, base), (cell + 1, tip)]

    def shapes(self, first):
        ends = []
        for number, row in enumerate(self.rows):
            up = (first == 1) == (number % 2 == 0)
            cell = 0
            low = len(self.rows) - 1 - number
            for cells in row:
                yield hull([point for k in range(cells)
                            for point in self.triangle(number, cell + k, up == ((cell + k) % 2 == 0))])
                cell += cells
            last_up = up == (cell % 2 == 1)
            ends.append([(0, low), (0, low + 1), (1, low + up)])
            ends.append([(cell + 1, low), (cell + 1, low + 1), (cell, low + last_up)])
        yield from map(hull, ends)

    def placed(self, shape):
        return [(Root3(0, Fraction(k * self.height, 3)), Root3(level * self.height)) for k, level in shape]

    def raw(self, number, by, blunt):
        """A triangle's tip is blunt where it is cut off level with the side of the raw row."""
        polygon = widened(self.pieces[number], by)
        whole = number < sum(map(len, self.rows))
        if not blunt or not whole or len(polygon) != 3:
            return polygon
        low = min(y for _, y in self.pieces[number])
        polygon, _ = cut(polygon, lambda point: point[1] - low + by)
        return cut(polygon, lambda point: low + self.height + by - point[1])[0]
