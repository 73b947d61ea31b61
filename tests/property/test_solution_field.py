# SPDX-License-Identifier: MIT
"""Fields on point and rows of 60 degree pieces: sizes, outlines and seams against a drawing with exact coordinates."""

from fractions import Fraction

from hypothesis import given
from hypothesis import strategies as st

import muslin
from muslin_model.field import Diagonal, Sixty, area, nearest, rounded, widened
from muslin_model.root2 import Root2, Root3

FINISHED, RAW = 1, 2
SHARP, BLUNT = 1, 2

sizes = st.integers(1, 80).map(lambda n: n * 1016) | st.integers(1, 300) | st.integers(1, 10**6)
seams = st.sampled_from([2032, 1920, 0, 1]) | st.integers(0, 10**4)
take_ups = st.sampled_from([0, 1, 127]) | st.integers(0, 300)


@st.composite
def diagonals(draw):
    """Mostly set off by less than a block, now and then by several."""
    block = draw(sizes)
    set_off = draw(st.just(0) | st.integers(0, block) | st.integers(0, 8 * block))
    return draw(st.integers(1, 5)), draw(st.integers(1, 5)), block, set_off


@st.composite
def rows_of_cells(draw):
    cells = draw(st.integers(1, 8))
    rows = []
    for _ in range(draw(st.integers(1, 4))):
        row = []
        while sum(row) < cells:
            row.append(draw(st.integers(1, min(3, cells - sum(row)))))
        rows.append(row)
    return rows


def plain(outline):
    return [(corner.x.ticks, corner.y.ticks) for corner in outline.corners]


def from_least(polygon):
    """Begun with the least corner, so that the same polygons are equal; rounded corners may fall together."""
    return min(polygon[k:] + polygon[:k] for k in range(len(polygon)))


def drawn(solution, node, stage):
    return [from_least(plain(outline)) for outline in solution.outlines(node, muslin.UnitStage(stage))]


def exactly(polygons):
    return [from_least(rounded(polygon)) for polygon in polygons]


def solved_field(columns, rows, block, set_off, allowance, take_up):
    quilt = muslin.Quilt(allowance=muslin.Length(allowance), take_up=muslin.Length(take_up))
    fabric = quilt.fabric("any")
    side = quilt.fixed(muslin.Length(block))
    patch = quilt.patch(fabric=fabric, width=side, height=side)
    blocks = [patch] * (columns * rows + (columns - 1) * (rows - 1))
    field = quilt.diagonal(blocks, columns=columns, rows=rows, side_fabric=fabric, corner_fabric=fabric,
                           set_off=quilt.fixed(muslin.Length(set_off)))
    return muslin.Solution(quilt, field), field


def solved_rows(rows, height, first, allowance, take_up, tip):
    quilt = muslin.Quilt(allowance=muslin.Length(allowance), take_up=muslin.Length(take_up))
    fabric = quilt.fabric("any")
    pieces = [muslin.SixtyPieceSpec(fabric=fabric, cells=cells) for row in rows for cells in row]
    node = quilt.sixty(pieces, cells=sum(rows[0]), rows=len(rows), height=quilt.fixed(muslin.Length(height)),
                       end_fabric=fabric, first=first)
    return muslin.Solution(quilt, node, tip=muslin.Tip(tip)), node


def crossed(polygons, axis):
    """The most seams that a level (1) or upright (0) line crosses, as far as floats can tell."""
    spans = [sorted(float(point[axis].a) + float(point[axis].b) * 2 ** 0.5 for point in polygon)
             for polygon in polygons]
    ends = sorted({end for span in spans for end in span})
    middles = [low + (high - low) * share for low, high in zip(ends, ends[1:]) if high - low > 1e-6
               for share in (0.001, 0.5, 0.999)]
    return max(sum(span[0] < middle < span[-1] for span in spans) for middle in middles) - 1


# ---- blocks on point ------------------------------------------------------------------------------------------------

@given(diagonals(), seams, take_ups)
def test_a_field_on_point(request, allowance, take_up):
    columns, rows, block, set_off = request
    model = Diagonal(*request)
    solution, node = solved_field(*request, allowance, take_up)
    size = solution.size(node)
    assert (size.finished_width.ticks, size.finished_height.ticks) == (nearest(model.width), nearest(model.height))
    squares = [[model.point(u * block, v * block) for u, v in ((a, b), (a + 1, b), (a + 1, b + 1), (a, b + 1))]
               for a, b in model.blocks()]
    assert drawn(solution, node, FINISHED) == exactly(model.pieces + squares)
    out = Fraction(2 * allowance + take_up, 2)
    assert drawn(solution, node, RAW)[:len(model.pieces)] == exactly(widened(piece, out) for piece in model.pieces)


@given(diagonals())
def test_the_model_fills_the_field(request):
    columns, rows, block, _ = request
    model = Diagonal(*request)
    pieces = sum((area(piece) for piece in model.pieces), Root2(0))
    assert len(model.cells) == columns * rows + (columns - 1) * (rows - 1)
    assert pieces + 2 * len(model.cells) * block * block == 2 * model.width * model.height


@given(diagonals())
def test_the_totals_bound_what_rounding_does(request):
    solution, node = solved_field(*request, 2032, 0)
    totals = solution.totals()
    assert abs(totals.finished_area - totals.patch_area) <= totals.area_bound


@given(diagonals())
def test_no_line_crosses_more_seams(request):
    columns, rows, block, set_off = request
    model = Diagonal(*request)
    solution, node = solved_field(*request, 2032, 0)
    size = solution.size(node)
    polygons = model.pieces + list(model.cells.values())
    most = crossed(polygons, 1), crossed(polygons, 0)
    stated = size.seams_across, size.seams_down
    assert most <= stated and (set_off or most == stated)


@given(diagonals())
def test_edges_name_their_seams(request):
    """An edge without a seam lies on the field's; others of one seam lie on one line."""
    solution, node = solved_field(*request, 2032, 0)
    size = solution.size(node)
    ends = {}
    for outline in solution.outlines(node, muslin.UnitStage.FINISHED):
        corners = outline.corners
        for here, there in zip(corners, corners[1:] + corners[:1]):
            if here.seam_node == 0:
                assert (here.x == there.x and here.x.ticks in (0, size.finished_width.ticks) or
                        here.y == there.y and here.y.ticks in (0, size.finished_height.ticks))
            else:
                rises = (there.x.ticks - here.x.ticks) * (there.y.ticks - here.y.ticks) >= 0
                across = [point.x.ticks - (point.y.ticks if rises else -point.y.ticks) for point in (here, there)]
                ends.setdefault((here.seam, rises), []).extend(across)
    columns, rows = request[:2]
    if request[2] > 8:
        assert len(ends) == columns * rows + (columns - 1) * (rows - 1) + 2 * (columns + rows) - 1
        assert all(max(places) - min(places) <= 2 for places in ends.values())


def ends_of(solution, node):
    """Of its seams, in their order."""
    with muslin.PressingPlan(solution) as plan:
        return [(seam.from_x.ticks, seam.from_y.ticks, seam.to_x.ticks, seam.to_y.ticks) for seam in plan.seams()
                if seam.node == node]


def sewn_of(solution, node):
    return [(step.seams, step.sewn.ticks, step.seam_longest.ticks) for step in solution.sewing_steps()
            if step.node == node]


@given(diagonals(), seams, take_ups)
def test_seams_on_point(request, allowance, take_up):
    """Those at the left of blocks and of what ends rows run up to the right, those below rows up to the left."""
    columns, rows, block, set_off = request
    model = Diagonal(*request)
    solution, node = solved_field(*request, allowance, take_up)
    cells = list(model.blocks())[1:]
    cells += [(columns + row, columns - 1 - row) for row in range(rows - 1)]
    cells += [(rows + column, 1 - rows + column) for column in range(columns - 1)]
    lines = [(model.point(a * block, b * block), model.point(a * block, (b + 1) * block)) for a, b in cells]
    lines += [line[::-1] for line in model.row_seams]
    lines += [line[::-1] if number > 1 else line for number, line in enumerate(model.corner_seams)]
    assert ends_of(solution, node) == [sum(rounded(line), ()) for line in lines]
    sewn = [block + 2 * allowance + take_up] * len(cells)
    sewn += [nearest(model.sewn(k, Fraction(2 * allowance + take_up, 2))) for k in range(columns + rows + 2)]
    assert sewn_of(solution, node) == [(len(sewn), sum(sewn), max(sewn))]


# ---- rows of 60 degree pieces ---------------------------------------------------------------------------------------

@given(rows_of_cells(), sizes, st.integers(1, 2), seams, take_ups, st.sampled_from([SHARP, BLUNT]))
def test_rows_of_60_degree_pieces(rows, height, first, allowance, take_up, tip):
    model = Sixty(rows, height, first)
    solution, node = solved_rows(rows, height, first, allowance, take_up, tip)
    size = solution.size(node)
    assert (size.finished_width.ticks, size.finished_height.ticks) == (nearest(model.width), len(rows) * height)
    assert size.seams_across == max(map(len, rows)) + 1
    assert size.seams_down == 2 * len(rows) - 1
    out = Fraction(2 * allowance + take_up, 2)
    assert drawn(solution, node, FINISHED) == exactly(model.pieces)
    assert drawn(solution, node, RAW) == exactly(model.raw(k, out, tip == BLUNT) for k in range(len(model.pieces)))


@given(rows_of_cells(), sizes, st.integers(1, 2), seams, take_ups)
def test_seams_of_60_degree_rows(rows, height, first, allowance, take_up):
    """At the left of each piece, at the right end of each row, below each row."""
    solution, node = solved_rows(rows, height, first, allowance, take_up, BLUNT)

    def slanted(row, cell):
        leans = (first == 1) == ((row + cell) % 2 == 0)
        low = (len(rows) - 1 - row) * height
        ends = [Root3(0, Fraction((cell + step) * height, 3)) for step in (not leans, leans)]
        return nearest(ends[0]), low, nearest(ends[1]), low + height
    lines = [slanted(number, sum(row[:k])) for number, row in enumerate(rows) for k in range(len(row))]
    lines += [slanted(number, sum(row)) for number, row in enumerate(rows)]
    lines += [(0, number * height, solution.size(node).finished_width.ticks, number * height)
              for number in range(len(rows) - 1, 0, -1)]
    assert ends_of(solution, node) == lines
    wide = nearest(Sixty(rows, height, first).width + 2 * allowance + take_up)
    slant = nearest(Root3(0, Fraction(2 * (height + 2 * allowance + take_up), 3)))
    sewn = [slant] * (len(lines) - len(rows) + 1) + [wide] * (len(rows) - 1)
    assert sewn_of(solution, node) == [(len(sewn), sum(sewn), max(sewn))]


@given(rows_of_cells(), sizes, st.integers(1, 2))
def test_the_model_fills_the_rows(rows, height, first):
    model = Sixty(rows, height, first)
    assert sum((area(piece) for piece in model.pieces), Root3(0)) == 2 * model.width * len(rows) * height
