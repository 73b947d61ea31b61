# SPDX-License-Identifier: MIT
"""Fields on point and rows of 60 degree pieces: sizes, outlines and seams against a drawing with exact coordinates."""

from fractions import Fraction

from hypothesis import given
from hypothesis import strategies as st

import pytest

import muslin
from asking import Failed, ask
from muslin_model.field import CUT, INNER, OUTER, Diagonal, Sashed, Sixty, area, nearest, rounded, widened
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
    return [from_least(plain(outline)) for outline in solution.outlines(node, muslin.Stage(stage))]


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
    pieces = [muslin.QuiltSixtyPieceSpec(fabric=fabric, cells=cells) for row in rows for cells in row]
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
    assert abs(totals.finished_area - totals.patch_area) <= totals.area_error


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
    for outline in solution.outlines(node, muslin.Stage.FINISHED):
        corners = outline.corners
        for here, there in zip(corners, corners[1:] + corners[:1]):
            if here.seam_node == 0:
                assert (here.x == there.x and here.x.ticks in (0, size.finished_width.ticks) or
                        here.y == there.y and here.y.ticks in (0, size.finished_height.ticks))
            else:
                steps = there.x.ticks - here.x.ticks, there.y.ticks - here.y.ticks
                if max(map(abs, steps)) < 2:
                    continue  # which way it runs is lost
                rises = steps[0] * steps[1] >= 0
                across = [point.x.ticks - (point.y.ticks if rises else -point.y.ticks) for point in (here, there)]
                ends.setdefault((here.seam, rises), []).extend(across)
    columns, rows = request[:2]
    if request[2] > 8:
        assert len(ends) == columns * rows + (columns - 1) * (rows - 1) + 2 * (columns + rows) - 1
        assert all(max(places) - min(places) <= 2 for places in ends.values())


def ends_of(solution, node):
    """Of its seams, in their order."""
    with muslin.Pressing(solution) as plan:
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
    by = Fraction(2 * allowance + take_up, 2)
    sewn = [nearest(model.sewn(line, by)) for line in lines + model.row_seams + model.corner_seams]
    lines += [line[::-1] for line in model.row_seams]
    lines += [line[::-1] if number > 1 else line for number, line in enumerate(model.corner_seams)]
    assert ends_of(solution, node) == [sum(rounded(line), ()) for line in lines]
    assert sewn_of(solution, node) == [(len(sewn), sum(sewn), max(sewn))]


# ---- with sashes ----------------------------------------------------------------------------------------------------

@st.composite
def sashed(draw):
    """Sashes mostly narrower than the blocks."""
    layout = draw(st.sampled_from([OUTER, CUT, INNER]))
    block = draw(sizes.filter(lambda side: side > 1))
    sash = draw(st.integers(1, block - 1) | st.integers(1, max(1, block // 4)))
    if layout != INNER:
        sash = draw(st.just(sash) | st.integers(1, 3 * block))
    set_off = draw(st.just(0) | st.integers(0, block) | st.integers(0, 8 * block)) if layout == OUTER else 0
    return layout, draw(st.integers(1, 5)), draw(st.integers(1, 5)), block, sash, set_off


SIDE, CORNER, SASH, STONE, BLOCK = "side", "corner", "sash", "stone", "block"


def solved_sashed(request, allowance, take_up, **solve):
    layout, columns, rows, block, sash, set_off = request
    quilt = muslin.Quilt(allowance=muslin.Length(allowance), take_up=muslin.Length(take_up))
    fabrics = {name: quilt.fabric(name) for name in (SIDE, CORNER, SASH, STONE, BLOCK)}
    side = quilt.fixed(muslin.Length(block))
    patch = quilt.patch(fabric=fabrics[BLOCK], width=side, height=side)
    blocks = [patch] * (columns * rows + (columns - 1) * (rows - 1))
    off = {"set_off": quilt.fixed(muslin.Length(set_off))} if layout == OUTER else {}
    field = quilt.diagonal(blocks, columns=columns, rows=rows, side_fabric=fabrics[SIDE],
                           corner_fabric=fabrics[CORNER], sash=quilt.fixed(muslin.Length(sash)),
                           sash_fabric=fabrics[SASH], cornerstone=fabrics[STONE], layout=muslin.PointLayout(layout),
                           **off)
    return muslin.Solution(quilt, field, **solve), field, fabrics


@given(sashed(), seams, take_ups)
def test_a_field_with_sashes(request, allowance, take_up):
    model = Sashed(*request)
    solution, node, _ = solved_sashed(request, allowance, take_up)
    size = solution.size(node)
    assert (size.finished_width.ticks, size.finished_height.ticks) == (nearest(model.width), nearest(model.height))
    assert drawn(solution, node, FINISHED) == exactly(model.pieces + model.parts)
    out = Fraction(2 * allowance + take_up, 2)
    assert drawn(solution, node, RAW)[:len(model.pieces)] == exactly(widened(piece, out) for piece in model.pieces)
    totals = solution.totals()
    assert abs(totals.finished_area - totals.patch_area) <= totals.area_error


@given(sashed())
def test_the_model_with_sashes_fills_the_field(request):
    """As large as the field, all within it, and each of a size of its own."""
    layout, columns, rows, block, sash, set_off = request
    model = Sashed(*request)
    assert all(area(polygon).sign() > 0 for polygon in model.pieces)
    assert sum(map(area, model.pieces + model.parts), Root2(0)) == 2 * model.width * model.height
    assert all(model.within(polygon) == polygon for polygon in model.parts)
    if set_off == 0:
        leg = {OUTER: block + sash, CUT: block, INNER: block - sash}[layout]
        long_side = block + 2 * sash if layout == OUTER else block
        sides = 2 * (columns + rows) - 4
        assert all(area(piece) == leg * leg for piece in model.pieces[:sides])
        assert all(2 * area(piece) == long_side * long_side for piece in model.pieces[sides:sides + 4])


@given(sashed())
def test_no_line_crosses_more_seams_with_sashes(request):
    model = Sashed(*request)
    solution, node, _ = solved_sashed(request, 2032, 0)
    size = solution.size(node)
    most = crossed(model.pieces + model.parts, 1), crossed(model.pieces + model.parts, 0)
    stated = size.seams_across, size.seams_down
    assert most <= stated and (request[-1] or request[3] < 500 or most == stated)


def on_lines(point, model):
    """u and v, times sqrt 2."""
    x, y = (here - there for here, there in zip(point, model.point(0, 0)))
    return x - y, x + y


@given(sashed())
def test_seams_with_sashes(request):
    """Every edge of every piece names a seam or lies at the edge of the field; what names one seam lies on one line, and
    on both sides of it the same stretch; the seam runs from end to end of that."""
    model = Sashed(*request)
    solution, node, _ = solved_sashed(request, 2032, 0)
    stretches = {}
    polygons = model.pieces + model.parts
    outlines = list(solution.outlines(node, muslin.Stage.FINISHED))
    for polygon, outline in zip(polygons, outlines):
        if len(set(rounded(polygon))) < len(polygon):
            return  # corners fall together
        first = rounded(polygon).index((outline.corners[0].x.ticks, outline.corners[0].y.ticks))
        polygon = polygon[first:] + polygon[:first]
        for here, there, corner in zip(polygon, polygon[1:] + polygon[:1], outline.corners):
            if corner.seam_node == 0:
                assert any((a - b).sign() == 0 and (a - c).sign() == 0 for a, c, b in (
                    (here[0], there[0], Root2(0)), (here[1], there[1], Root2(0)), (here[0], there[0], model.width),
                    (here[1], there[1], model.height)))
                continue
            (u, v), (next_u, next_v) = on_lines(here, model), on_lines(there, model)
            along_v = (u - next_u).sign() == 0
            assert along_v or (v - next_v).sign() == 0
            low, high = sorted([v, next_v] if along_v else [u, next_u], key=lambda number: number.ends())
            rises = ((next_v - v) if along_v else (next_u - u)).sign()
            key = (along_v, u.ends() if along_v else v.ends())
            stretches.setdefault(corner.seam, {}).setdefault(key, {}).setdefault(rises, []).append((low, high))
    ends = ends_of(solution, node)
    assert sorted(stretches) == list(range(len(ends)))
    for seam, lines in stretches.items():
        assert len(lines) == 1
        (along_v, _), sides = next(iter(lines.items()))
        covered = [stretch(part) for part in sides.values()]
        assert len(covered) == 2 and all((a - b).sign() == 0 for a, b in zip(*covered))
        level = next(iter(lines))[1]
        check_ends(model, ends[seam], along_v, level, covered[0])


def stretch(parts):
    """Without gaps."""
    parts = sorted(parts, key=lambda part: part[0].ends())
    assert all((a[1] - b[0]).sign() == 0 for a, b in zip(parts, parts[1:]))
    return parts[0][0], parts[-1][1]


def check_ends(model, ends, along_v, level, covered):
    """Upwards: to larger v, or to smaller u."""
    def place(at):
        u, v = (level[0], float(at.a) + float(at.b) * 2**0.5)[::1 if along_v else -1]
        x, y = (float(value.a) + float(value.b) * 2**0.5 for value in model.point(0, 0))
        return x + (float(u) + float(v)) / 2, y + (float(v) - float(u)) / 2
    low, high = map(place, covered if along_v else covered[::-1])
    assert all(abs(found - wanted) <= 0.51 for found, wanted in zip(ends, low + high))


@given(sashed(), seams.filter(bool), take_ups, st.integers(1, 3))
def test_cuts_with_sashes(request, allowance, take_up, policy):
    """As a setting on point has them, whole sashes and cornerstones too; what it refuses cannot be solved."""
    layout, columns, rows, block, sash, set_off = request
    cutting = {"grid": 1016, "tolerance": 0, "direction": 1}
    spec = {"block": block, "columns": columns, "rows": rows, "sash": sash, "set_off": set_off, "allowance": allowance,
            "take_up": take_up, "layout": layout, "policy": policy}
    solve = {"policy": muslin.AllowancePolicy(policy), "grid": muslin.Length(1016)}
    try:
        wanted = ask("setting_point", spec, cutting, cutting)
    except Failed:
        with pytest.raises(muslin.MuslinError):
            solved_sashed(request, allowance, take_up, **solve)
        return
    solution, node, fabrics = solved_sashed(request, allowance, take_up, **solve)
    found = {}
    for cut in solution.cuts():
        name = next(name for name, fabric in fabrics.items() if fabric == cut.fabric)
        key = name, int(cut.again), *sorted([cut.cut_width.ticks, cut.cut_height.ticks])
        found[key] = found.get(key, 0) + cut.count
    rows_wanted = [(SIDE, 3, "side_square_cut", "side_square_cut", "side_squares"),
                   (CORNER, 2, "corner_square_cut", "corner_square_cut", "corner_squares"),
                   (SASH, 1, "sash_cut_width", "sash_cut_length", "sashes"),
                   (SASH, 1, "sash_cut_width", "edge_sash_cut_length", "edge_sashes"),
                   (STONE, 1, "cornerstone_cut", "cornerstone_cut", "cornerstones"),
                   (STONE, 3, "edge_cornerstone_cut", "edge_cornerstone_cut", "edge_cornerstone_squares")]
    expected = {}
    for name, again, one, other, count in rows_wanted:
        if wanted[count]:
            key = name, again, *sorted([wanted[one], wanted[other]])
            expected[key] = expected.get(key, 0) + wanted[count]
    expected[BLOCK, 1, wanted["alternate_cut"], wanted["alternate_cut"]] = wanted["blocks"] + wanted["alternates"]
    assert found == expected


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
