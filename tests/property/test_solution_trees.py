# SPDX-License-Identifier: MIT
"""Whole trees, solved and drawn: sizes, copies, misfits and outlines against the model; tiling and the seams along
edges from the library's outlines alone."""

import itertools
from dataclasses import replace

from hypothesis import assume, given
from hypothesis import strategies as st

from muslin import (Axis, CutSource, Length, PointLayout, Press, Pressing, Print, Quilt, Solution, StripPiecing,
                    UnitKind, UnitMethod, Stage)
from muslin import Warning as Warn
from muslin_model import tree as model
from muslin_model.tree import (ACROSS, DOWN, Field, Join, Patch, Pinwheel, SetIn, Trim, Turn, Unit, joined, turned)

FABRICS = 3
fabrics = st.integers(0, FABRICS - 1)
turns = st.tuples(st.booleans(), st.integers(0, 3))


# ---- trees that fill a rectangle ------------------------------------------------------------------------------------

@st.composite
def cuts(draw, length, most=4):
    """Lengths, multiples of 4, that make up one: equal ones, or any."""
    steps = length // 4
    n = draw(st.integers(2, most))
    if steps % n == 0 and draw(st.booleans()):
        return [length // n] * n
    places = draw(st.lists(st.integers(1, steps - 1), min_size=1, max_size=most - 1, unique=True)) if steps > 1 else []
    ends = [0] + sorted(places) + [steps]
    return [4 * (b - a) for a, b in zip(ends, ends[1:])]


def some(length):
    """Less than a length, by steps of 4."""
    return st.integers(1, max(1, length // 8)).map(lambda n: 4 * n)


def filled(width, height, depth, kinds):
    """A tree of this finished size; its edges all meet. Sizes are multiples of 4."""
    makers = [patches(width, height)]
    if depth > 0:
        makers += [make(width, height, depth - 1, kinds) for make in kinds]
    return st.one_of(*makers)


def patches(width, height):
    return st.builds(Patch, fabrics, st.just(width), st.just(height))


@st.composite
def joins(draw, width, height, depth, kinds):
    axis = draw(st.sampled_from([ACROSS, DOWN]))
    lengths = draw(cuts(width if axis == ACROSS else height))
    parts = [draw(filled(*((n, height) if axis == ACROSS else (width, n)), depth, kinds)) for n in lengths]
    return joined(axis, parts)


@st.composite
def repeats(draw, width, height, depth, kinds):
    """The same part again and again, every other one turned by half."""
    n = draw(st.integers(2, 3))
    assume(width % (4 * n) == 0)
    part = draw(filled(width // n, height, depth, kinds))
    other = turned(draw(st.booleans()), draw(st.sampled_from([0, 2])), part)
    return joined(ACROSS, [other if k % 2 else part for k in range(n)])


@st.composite
def grids(draw, width, height, depth, kinds):
    """Rows and columns of one or two parts, each lying as it will."""
    columns, rows = draw(st.integers(2, 3)), draw(st.integers(2, 3))
    assume(width % (4 * columns) == 0 and height % (4 * rows) == 0)
    parts = draw(st.lists(filled(width // columns, height // rows, depth, kinds), min_size=1, max_size=2))
    half = st.tuples(st.booleans(), st.sampled_from([0, 2]))
    return joined(DOWN, [joined(ACROSS, [turned(*draw(half), draw(st.sampled_from(parts))) for _ in range(columns)])
                         for _ in range(rows)])


@st.composite
def turnings(draw, width, height, depth, kinds):
    mirrored, quarters = draw(turns)
    size = (height, width) if quarters % 2 else (width, height)
    return turned(mirrored, quarters, draw(filled(*size, depth, kinds)))


@st.composite
def trims(draw, width, height, depth, kinds):
    by = draw(st.tuples(*[st.sampled_from([0, 0, 1, 2, 4, 8, 20])] * 4))
    assume(any(by))
    grown = [-(-n // 4) * 4 for n in (width + by[0] + by[1], height + by[2] + by[3])]
    by = (by[0], grown[0] - width - by[0], by[2], grown[1] - height - by[2])
    return Trim(draw(filled(*grown, depth, kinds)), by)


@st.composite
def pinwheels(draw, width, height, depth, kinds):
    assume(width >= 12 and height >= 12)
    left, right = draw(some(width // 2)), draw(some(width // 2))
    top, bottom = draw(some(height // 2)), draw(some(height // 2))
    assume(left + right < width and top + bottom < height)
    sizes = [(width - left - right, height - top - bottom), (width - right, top), (right, height - bottom),
             (width - left, bottom), (left, height - top)]
    return Pinwheel(tuple(draw(filled(*size, depth, kinds)) for size in sizes))


@st.composite
def set_ins(draw, width, height, depth, kinds):
    assume(width >= 16 and height >= 16)
    widths = tuple(draw(st.sampled_from([0, 4, some(side // 2)])) for side in (width, width, height, height))
    widths = tuple(draw(one) if isinstance(one, st.SearchStrategy) else one for one in widths)
    left, right, top, bottom = widths
    assume(any(widths) and left + right < width and top + bottom < height)
    centre = draw(filled(width - left - right, height - top - bottom, depth, kinds))
    return SetIn(centre, widths, draw(st.tuples(*[fabrics] * 4)))


@st.composite
def units(draw, width, height, depth, kinds):
    """Cut at 45 degrees, so that trims meet them on whole ticks."""
    kind, wants = draw(st.sampled_from([(model.HALF_SQUARE, width == height), (model.QUARTER_SQUARE, width == height),
                                        (model.FLYING_GEESE, width == 2 * height)]))
    assume(wants)
    return Unit(kind, width, 0, 0, 1, draw(st.tuples(fabrics, fabrics)))


@st.composite
def slanted_units(draw, width, height, depth, kinds):
    assume(width != height)
    hand, pair = draw(st.integers(1, 2)), draw(st.tuples(fabrics, fabrics))
    return Unit(model.HALF_RECTANGLE, width, height, 0, hand, pair)


EXACT = [joins, repeats, grids, turnings, trims, pinwheels, set_ins, units]
sides = st.sampled_from([24, 48, 60, 96, 120])


@st.composite
def tops(draw, kinds=EXACT):
    width = draw(sides)
    height = width if draw(st.booleans()) else draw(sides)
    return draw(filled(width, height, draw(st.integers(1, 4)), kinds))


def magnified(tree, by):
    """The same design, larger."""
    def larger(value):
        return tuple(map(larger, value)) if isinstance(value, tuple) else (
            value and value * by if isinstance(value, int) else magnified(value, by))

    names = ("child", "children", "width", "height", "widths", "by", "corner", "set_off", "sash")
    return replace(tree, **{name: larger(getattr(tree, name)) for name in names if hasattr(tree, name)})


@st.composite
def fields(draw, depth):
    """Blocks on point, pieced in parts of many ticks; a block may be what is trimmed from another field."""
    columns, rows = draw(st.integers(1, 3)), draw(st.integers(1, 3))
    count = columns * rows + (columns - 1) * (rows - 1)
    side, larger, inner = draw(sides), 32, []
    if depth > 0:
        field = draw(fields(depth - 1))
        width, height = model.size(field)
        larger = min(width, height) // side
        inner = [Trim(field, (0, width - larger * side, 0, height - larger * side))]
    pieced = st.lists(filled(side, side, 2 - depth, EXACT), min_size=1, max_size=3)
    blocks = inner + [magnified(block, larger) for block in draw(pieced)]
    return Field(columns, rows, tuple(draw(st.sampled_from(blocks)) for _ in range(count)),
                 draw(st.sampled_from([0, 0, 100, 1000])), draw(st.tuples(fabrics, fabrics)))


# ---- trees whose edges need not meet --------------------------------------------------------------------------------

lengths = st.integers(1, 40)
allowances = st.sampled_from([None, None, None, 0, 7, 2032])
loose_patches = st.builds(Patch, fabrics, lengths, lengths, st.tuples(*[allowances] * 4))


@st.composite
def trimmed_trees(draw, trees):
    tree = draw(trees)
    width, height = model.size(tree)
    by = tuple(draw(st.integers(0, (side - 1) // 2)) for side in (width, width, height, height))
    return Trim(tree, by)


loose_trees = st.recursive(loose_patches, lambda trees: st.one_of(
    st.builds(joined, st.sampled_from([ACROSS, DOWN]), st.lists(trees, min_size=1, max_size=4)),
    st.builds(lambda turn, tree: turned(*turn, tree), turns, trees), trimmed_trees(trees)), max_leaves=12)


# ---- made and asked -------------------------------------------------------------------------------------------------

class Made:
    """A tree in a quilt of its own, solved."""

    def __init__(self, tree, allowance=2032, take_up=0, ease=0, tops=1, prints=(Print.NONE,) * FABRICS,
                 piecing=StripPiecing.WHERE_FEWER):
        self.quilt = Quilt(allowance=Length(allowance), take_up=Length(take_up))
        self.fabrics = [self.quilt.fabric(str(number), print=print_) for number, print_ in enumerate(prints)]
        self.piecing = piecing
        self.ids = {}
        for node in model.nodes(tree):
            self.ids[node] = self.make(node)
        self.tree = tree
        self.solution = Solution(self.quilt, self.ids[tree], ease=Length(ease), tops=tops)

    def length(self, value):
        return self.quilt.fixed(Length(value))

    def lengths_of(self, names, values):
        return {name: self.length(value) for name, value in zip(names, values) if value}

    def sashes_of(self, tree):
        return {"sash": self.length(tree.sash), "sash_fabric": self.fabrics[0]} if tree.sash else {}

    def make(self, tree):
        quilt, parts = self.quilt, [self.ids[child] for child in model.children(tree)]
        names = ["left", "right", "top", "bottom"]
        if isinstance(tree, Patch):
            own = {name: self.length(edge) for name, edge in zip(names, tree.edges) if edge is not None}
            return quilt.patch(fabric=self.fabrics[tree.fabric], width=self.length(tree.width),
                               height=self.length(tree.height), **own)
        if isinstance(tree, Unit):
            return quilt.unit([self.fabrics[f] for f in tree.fabrics], kind=UnitKind(tree.kind),
                              method=UnitMethod.PIECES, hand=tree.hand,
                              **self.lengths_of(["width", "height"], [tree.width, tree.height]))
        if isinstance(tree, Join):
            return quilt.join(parts, axis=Axis(tree.axis), piecing=self.piecing)
        if isinstance(tree, Turn):
            return quilt.turn(quilt.mirror(*parts) if tree.mirrored else parts[0], tree.quarters)
        if isinstance(tree, Trim):
            return quilt.trim(*parts, **self.lengths_of(names, tree.by))
        if isinstance(tree, Pinwheel):
            return quilt.pinwheel(**dict(zip(["centre", "top", "right", "bottom", "left"], parts)))
        if isinstance(tree, Field):
            side, corner = (self.fabrics[f] for f in tree.fabrics)
            return quilt.diagonal(parts, columns=tree.columns, rows=tree.rows, side_fabric=side, corner_fabric=corner,
                                  layout=PointLayout(tree.layout), **self.sashes_of(tree),
                                  **self.lengths_of(["set_off"], [tree.set_off]))
        strips = {f"{name}_fabric": self.fabrics[f] for name, f, w in zip(names, tree.fabrics, tree.widths) if w}
        return quilt.set_in(centre=parts[0], **strips, **self.lengths_of([f"{n}_width" for n in names], tree.widths))

    def outlines(self, tree=None, stage=Stage.FINISHED):
        return list(self.solution.outlines(self.ids[tree or self.tree], stage))


def ring_of(outline):
    return [(corner.x.ticks, corner.y.ticks) for corner in outline.corners]


# ---- sizes, copies, misfits -----------------------------------------------------------------------------------------

def sized_and_counted(made, tops, allowance, take_up):
    """Every node of a tree as the model has it; how often each is, and how it lies."""
    copies = model.copies(made.tree, tops)
    assert set(copies) == set(model.nodes(made.tree))
    for node, ways in copies.items():
        size = made.solution.size(made.ids[node])
        width, height = model.size(node)
        assert (size.finished_width.ticks, size.finished_height.ticks) == (width, height)
        assert (size.unfinished_width.ticks, size.unfinished_height.ticks) == model.unfinished(node, allowance, take_up)
        edges = model.edges(node, allowance)
        assert [edge.ticks for edge in (size.left, size.right, size.top, size.bottom)] == [
            -1 if edge is None else edge for edge in edges]
        assert size.count == sum(ways.values())
        assert size.mirrored == sum(n for lying, n in ways.items() if lying.mirrored)
        assert [size.upright, size.quarter, size.half, size.three_quarter] == [
            sum(n for lying, n in ways.items() if lying.eighths == 2 * q) for q in range(4)]
        assert size.patches == len(model.draw(node))
        if not any(isinstance(part, (Field, Unit)) for part in model.nodes(node)):
            assert (size.seams_across, size.seams_down) == model.piled_seams(node)
        sums = [made.solution.explain(made.ids[node], axis)[-1].sum.ticks for axis in Axis]
        assert tuple(sums) == model.unfinished(node, allowance, take_up)
    return copies


@given(tops(), st.integers(0, 3000), st.integers(0, 9), st.integers(1, 5))
def test_sizes_and_copies_of_what_fits(tree, allowance, take_up, tops_):
    sized_and_counted(Made(tree, allowance, take_up, tops=tops_), tops_, allowance, take_up)


@given(loose_trees, st.integers(0, 3000), st.integers(0, 9), st.integers(0, 20), st.integers(1, 5))
def test_sizes_copies_and_misfits_of_any_tree(tree, allowance, take_up, ease, tops):
    made = Made(tree, allowance, take_up, ease, tops)
    copies = sized_and_counted(made, tops, allowance, take_up)
    wanted = [(made.ids[node], first, second, *sizes, pieces, each, count, kind)
              for node, first, second, sizes, pieces, each, count, kind in model.misfits(tree, allowance, ease, tops)]
    rows = made.solution.misfits()
    assert sorted(wanted) == sorted((row.node, row.first, row.second, row.first_size.ticks, row.second_size.ticks,
                                     row.pieces, row.ease_each.ticks, row.count, int(row.kind)) for row in rows)
    assert [row.node for row in rows] == sorted(row.node for row in rows)
    totals = made.solution.totals()
    assert totals.misfits + totals.eased == len(wanted)
    assert totals.different_nodes == len(copies)
    assert totals.patch_area == sum(model.area(piece.ring) for piece in model.draw(tree))
    assert totals.patches == tops * len(model.draw(tree))


@given(loose_trees)
def test_a_way_leads_to_every_node(tree):
    made = Made(tree)
    for node in model.nodes(tree):
        at = tree
        for step in made.solution.path(made.ids[node]):
            at = model.children(at)[step]
        assert at == node


# ---- cut ------------------------------------------------------------------------------------------------------------

def cut_as(made, node, mirrored, prints, allowance, take_up):
    """Fabric, width, height, and allowances of its edges, cut on the right side of the cloth; without direction a piece
    may be turned, and is longer than high, its edges left out."""
    width, height = model.unfinished(node, allowance, take_up)
    if prints[node.fabric] == Print.NONE:
        return made.fabrics[node.fabric], max(width, height), min(width, height)
    left, right, *others = model.edges(node, allowance)
    return made.fabrics[node.fabric], width, height, *([right, left] if mirrored else [left, right]), *others


@given(loose_trees, st.integers(0, 3000), st.integers(0, 9), st.integers(1, 5),
       st.tuples(*[st.sampled_from([Print.NONE, Print.ONE_WAY])] * FABRICS))
def test_patches_are_cut_as_often_as_they_lie_somewhere(tree, allowance, take_up, tops, prints):
    made = Made(tree, allowance, take_up, tops=tops, prints=prints, piecing=StripPiecing.NEVER)
    wanted, nodes = {}, {}
    for node, ways in model.copies(tree, tops).items():
        for lying, n in ways.items() if isinstance(node, Patch) else ():
            key = cut_as(made, node, lying.mirrored, prints, allowance, take_up)
            nodes.setdefault(key, set()).add(made.ids[node])
            wanted.setdefault(key, [0] * 4)[lying.eighths // 2] += n
    found, needed_by = {}, {}
    for number, cut in enumerate(made.solution.cuts()):
        assert (cut.source, cut.gives, cut.spare, cut.scattered) == (CutSource.PATCH, 1, 0, 0)
        assert cut.surplus_width.ticks == cut.surplus_height.ticks == 0
        turned_by = [cut.upright, cut.quarter, cut.half, cut.three_quarter]
        assert cut.pieces == cut.count == sum(turned_by)
        key = cut.fabric, cut.cut_width.ticks, cut.cut_height.ticks
        has_way = prints[made.fabrics.index(cut.fabric)] != Print.NONE
        if has_way:
            key += tuple(edge.ticks for edge in (cut.left, cut.right, cut.top, cut.bottom))
            assert (Warn.PRINT_TURNED in cut.warnings) == any(turned_by[1:])
        ids = list(made.solution.cut_nodes(number))
        assert cut.nodes == len(ids) and cut.first_node == ids[0] and ids == sorted(ids)
        needed_by.setdefault(key, set()).update(ids)
        of = found.setdefault(key, [0] * 4)
        found[key] = [a + b for a, b in zip(of, turned_by)] if has_way else [sum(of) + sum(turned_by)]
    assert found == {key: of if len(key) > 3 else [sum(of)] for key, of in wanted.items()}
    assert needed_by == nodes


# ---- outlines -------------------------------------------------------------------------------------------------------

def agree(made, tree=None, within=0):
    """Every outline as the model has it, to the nearest tick, or within some."""
    pieces, outlines = model.draw(tree or made.tree), made.outlines(tree)
    assert len(pieces) == len(outlines)
    for piece, outline in zip(pieces, outlines):
        assert outline.node == made.ids[piece.leaf]
        assert outline.fabric == made.fabrics[piece.fabric]
        assert (2 * outline.quarter_turns + outline.on_point, outline.mirrored) == (
            piece.lying.eighths, piece.lying.mirrored)
        if piece.ring is None:
            continue
        wanted, ring = [model.to_tick(point) for point in piece.ring], ring_of(outline)
        if within == 0:
            assert once(ring) == once(wanted)
        else:
            assert near(wanted, ring, within) and near(ring, wanted, within)
    return outlines


def once(ring):
    """From the lowest corner on; corners that rounding brings together are one."""
    first = ring.index(min(ring)) if ring else 0
    corners = [point for point, _ in itertools.groupby(ring[first:] + ring[:first])]
    return corners[:-1] if len(corners) > 1 and corners[-1] == corners[0] else corners


def near(ring, other, within):
    """Every corner has one of the other ring's beside it; where there is no other, hardly anything is there."""
    if not other:
        return model.area(ring) <= 2 * within * sum(abs(x - u) + abs(y - v) for (x, y), (u, v) in model.round_(ring))
    return all(any(abs(x - u) <= within and abs(y - v) <= within for u, v in other) for x, y in ring)


@given(loose_trees)
def test_any_tree_is_drawn_as_the_model_draws_it(tree):
    made = Made(tree)
    for node in model.nodes(tree):
        agree(made, node)


def sewn_together(made, outlines, slack=0):
    """From outlines alone: they tile the whole; both sides of an edge name one seam, that of the node in which their
    ways part; the outside has none."""
    tree, pieces = made.tree, model.draw(made.tree)
    width, height = model.size(tree)
    seen = [(piece, outline, ring_of(outline)) for piece, outline in zip(pieces, outlines) if outline.corners]
    rings = [ring for _, _, ring in seen]
    inside = model.shared(rings, width, height, slack)
    touched = set()
    for i, edge, j, other_edge, segment in inside:
        labels = {(corner.seam_node, corner.seam) for corner in (seen[i][1].corners[edge],
                                                                 seen[j][1].corners[other_edge])}
        wanted = model.seam_between(tree, seen[i][0].way, seen[j][0].way)
        assert len(labels) == 1, (labels, segment)
        (seam_node, seam), = labels
        assert seam_node == made.ids[wanted.node] and wanted.number in (None, seam)
        touched |= {(i, edge), (j, other_edge)}
    for i, (_, outline, ring) in enumerate(seen):
        for edge, corner in enumerate(outline.corners):
            if (i, edge) not in touched:
                assert (corner.seam_node, corner.seam) == (0, 0)
    return sum(model.area(ring) for ring in rings)


@given(tops())
def test_what_fits_tiles_and_is_sewn_together(tree):
    made = Made(tree)
    covered = sewn_together(made, agree(made))
    totals = made.solution.totals()
    assert totals.misfits == totals.eased == 0 and totals.exact and totals.area_error == 0
    assert covered == totals.patch_area == totals.finished_area == 2 * model.size(tree)[0] * model.size(tree)[1]


@given(tops([joins, turnings, trims, slanted_units]))
def test_slanted_pieces_are_trimmed_to_the_nearest_tick(tree):
    agree(Made(tree))


@given(fields(0))
def test_fields_on_point_are_drawn_and_sewn_together(tree):
    made = Made(tree)
    covered = sewn_together(made, agree(made), slack=2)
    totals = made.solution.totals()
    assert abs(totals.finished_area - totals.patch_area) <= totals.area_error
    assert abs(totals.finished_area - covered) <= totals.area_error + 2 * len(model.draw(tree)) * sum(model.size(tree))


@given(fields(2))
def test_fields_lie_within_fields(tree):
    """Trimmed corners are rounded in every field in which they lie; slivers of a tick may come or go."""
    made = Made(tree)
    agree(made, within=3)
    totals = made.solution.totals()
    assert abs(totals.finished_area - totals.patch_area) <= totals.area_error


# ---- pressed --------------------------------------------------------------------------------------------------------

TOWARDS = {Press.LEFT: (-1, 0), Press.RIGHT: (1, 0), Press.UP: (0, 1), Press.DOWN: (0, -1)}


class Pressed:
    """Which way each seam of each copy is pressed, from the rows of a plan alone."""

    def __init__(self, made):
        self.made, self.plan = made, Pressing(made.solution)
        self.shown = {(row.node, row.seam): row.press for row in self.plan.seams()}
        self.other_way = {(row.node, row.place): row.other_way for row in self.plan.children()}

    def towards(self, seam):
        at, other, lying = self.made.tree, False, model.Lying()
        for step in seam.way:
            other ^= bool(self.other_way.get((self.made.ids[at], step), 0))
            if isinstance(at, Turn):
                lying = lying.of(model.Lying(2 * at.quarters, at.mirrored))
            at = model.children(at)[step]
        x, y = TOWARDS[self.shown[self.made.ids[at], seam.number]]
        return model.turn_point(Turn(lying.mirrored, lying.eighths // 2, None), (-x, -y) if other else (x, y))


@given(tops([joins, grids, turnings, pinwheels]))
def test_meetings_nest_but_for_the_exceptions(tree):
    """From the outlines and the rows of the plan alone: where seams meet, and whether they are pressed opposite ways.
    Without trims: what is trimmed off was sewn before, and its meetings count, but no outline shows them."""
    made = Made(tree)
    seen = [(piece, ring_of(outline)) for piece, outline in zip(model.draw(tree), made.outlines()) if outline.corners]
    pieces, rings = zip(*seen)
    pressed = Pressed(made)
    found = model.meetings(tree, pieces, rings, *model.size(tree))
    lumps = 0
    for _, _, (a, b) in found:
        (x, y), (u, v) = pressed.towards(a), pressed.towards(b)
        lumps += (x, y) != (-u, -v)
    totals = pressed.plan.totals()
    assert (totals.meetings, totals.exceptions) == (len(found), lumps)
    assert lumps == sum(row.count for row in pressed.plan.exceptions())


# ---- pages, stages --------------------------------------------------------------------------------------------------

@given(tops())
def test_raw_patches_hold_their_finished_ones(tree):
    """Of patches: one allowance beyond the finished outline on every side. Nothing is trimmed yet."""
    made = Made(tree, allowance=100)
    assume(not any(isinstance(node, (Trim, SetIn, Unit)) for node in model.nodes(tree)))
    for finished, raw in zip(made.outlines(), made.outlines(stage=Stage.RAW)):
        low, high = min(ring_of(finished)), max(ring_of(finished))
        assert (min(ring_of(raw)), max(ring_of(raw))) == ((low[0] - 100, low[1] - 100), (high[0] + 100, high[1] + 100))
        labels = [[(corner.seam_node, corner.seam) for corner in outline.corners] for outline in (finished, raw)]
        assert labels[0] == labels[1]
