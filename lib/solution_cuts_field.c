/* solution_cuts_field.c - what fields that are not upright are cut from: triangles, what the edge cuts, 60 degree rows.
 *
 * SPDX-License-Identifier: MIT */
#include "solution_cuts.h"
#include "surd.h"

/* Room to trim, which only one policy knows. */
static muslin_len trim_of(const struct muslin_solution *s)
{
    return s->spec.policy == MUSLIN_ALLOWANCE_POLICY_OVERSIZE ? s->spec.trim_room : 0;
}

static struct muslin_rounding_spec rounding_of(const struct muslin_solution *s)
{
    struct muslin_rounding_spec rounding = MUSLIN_ROUNDING_SPEC_INIT;
    rounding.grid = s->spec.grid;
    rounding.tolerance = s->spec.grid_tolerance;
    rounding.direction = s->spec.direction;
    return rounding;
}

/* So many pieces from a blank that is cut again and gives several. */
static void cut_again(struct msl_solving *solving, struct muslin_solution_cut *cut, int32_t again, int64_t needed)
{
    cut->again = again;
    cut->gives = again == MUSLIN_CUT_AGAIN_TWICE ? 4 : 2;
    cut->grain = again == MUSLIN_CUT_AGAIN_TWICE ? MUSLIN_GRAIN_LONG_EDGE : MUSLIN_GRAIN_SHORT_EDGES;
    cut->scattered = needed;
    msl_count_blanks(cut);
    if (needed > 0)
        msl_add_cut(solving, cut);
}

/* ---- setting triangles ------------------------------------------------------------------------------------------ */

static struct muslin_setting_point_spec point_spec(const struct muslin_solution *s, const int32_t *args)
{
    struct muslin_setting_point_spec spec = MUSLIN_SETTING_POINT_SPEC_INIT;
    spec.block = msl_size_of(s, (uint32_t)args[DIAGONAL_BLOCKS])->width;
    spec.columns = args[DIAGONAL_COLUMNS];
    spec.rows = args[DIAGONAL_ROWS];
    spec.sash = msl_value_or_none(s, args[DIAGONAL_SASH]);
    spec.set_off = msl_value_or_none(s, args[DIAGONAL_SET_OFF]);
    spec.allowance = msl_value_of(s, MSL_ALLOWANCE);
    spec.take_up = msl_value_of(s, MSL_TAKE_UP);
    spec.trim_room = trim_of(s);
    spec.side_addition = s->spec.quarter_addition;
    spec.corner_addition = s->spec.half_addition;
    spec.layout = args[DIAGONAL_LAYOUT];
    spec.policy = s->spec.policy;
    return spec;
}

/* Triangles from squares of this size. */
static void cut_triangles(struct msl_solving *solving, uint32_t node, int32_t fabric, muslin_len size,
                          muslin_len surplus, int32_t again, int64_t needed)
{
    struct muslin_solution_cut square = msl_new_cut(solving->solution, node, (uint32_t)fabric,
                                                    MUSLIN_CUT_SOURCE_SETTING);
    square.cut_width = square.cut_height = size;
    square.surplus_width = square.surplus_height = surplus;
    cut_again(solving, &square, again, needed);
}

/* Sashes that the edge cuts off, half of them mirror images of the others, lie upright in the turned frame: standing
 * ones and lying ones of either hand, `each` of them. */
static void cut_edge_sashes(struct msl_solving *solving, uint32_t node, const struct muslin_setting_point_plan *point,
                            int lies, int32_t hand, int64_t each)
{
    const struct muslin_solution *s = solving->solution;
    const uint32_t fabric = (uint32_t)msl_node_args(s->quilt, node)[DIAGONAL_SASH_FABRIC];
    const muslin_len seam = msl_seam_of(s);
    const struct msl_surd need = msl_surd_of(2 * point->sash_cut_length, seam, 2, 2);
    const muslin_len surplus = point->edge_sash_cut_length - msl_surd_ceiling(&need);
    for (int32_t mirrored = 0; mirrored <= MSL_TURN_MIRRORED; mirrored += MSL_TURN_MIRRORED) {
        struct muslin_solution_cut cut = msl_new_cut(s, node, fabric, MUSLIN_CUT_SOURCE_MITRED);
        struct msl_counts copies = s->cut[node - 1];
        for (int32_t turn = 0; turn < MSL_TURNS; turn++)
            copies.of[turn] *= each;
        cut.cut_width = lies ? point->edge_sash_cut_length : point->sash_cut_width;
        cut.cut_height = lies ? point->sash_cut_width : point->edge_sash_cut_length;
        cut.surplus_width = lies ? surplus : 0;
        cut.surplus_height = lies ? 0 : surplus;
        cut.hand = mirrored ? 3 - hand : hand;
        cut.angle = 45;
        cut.warnings = point->warnings & MUSLIN_WARN_BIAS_EDGE;
        cut.pieces = msl_count_turns(&cut, &copies, mirrored, msl_lay_cut(s, &cut));
        cut.count = cut.pieces;
        if (cut.pieces > 0)
            msl_add_cut(solving, &cut);
    }
}

/* Seen upwards from its square end, a standing one at the top or the bottom rises to the right, at the sides to the
 * left; lying ones the other way round. */
static void cut_sashes(struct msl_solving *solving, uint32_t node, const struct muslin_setting_point_plan *point)
{
    const int32_t *args = msl_node_args(solving->solution->quilt, node);
    const int64_t across = 2 * ((int64_t)args[DIAGONAL_COLUMNS] - 1);
    const int64_t down = 2 * ((int64_t)args[DIAGONAL_ROWS] - 1);
    if (point->edge_sashes == 0)
        return;
    cut_edge_sashes(solving, node, point, 0, 1, across);
    cut_edge_sashes(solving, node, point, 0, 2, down);
    cut_edge_sashes(solving, node, point, 1, 2, across);
    cut_edge_sashes(solving, node, point, 1, 1, down);
}

/* Whole sashes and cornerstones are patches of their own. */
void msl_cut_diagonal(struct msl_solving *solving, uint32_t node)
{
    const struct muslin_solution *s = solving->solution;
    const int32_t *args = msl_node_args(s->quilt, node);
    const int64_t copies = msl_copies(&s->cut[node - 1]);
    const struct muslin_rounding_spec rounding = rounding_of(s);
    const struct muslin_setting_point_spec spec = point_spec(s, args);
    struct muslin_problem problem = MUSLIN_PROBLEM_INIT;
    struct muslin_setting_point_plan point = { .size = sizeof point };
    if (muslin_setting_point(&spec, &rounding, &rounding, &point, &problem) != MUSLIN_OK) {
        msl_fail_node(solving, node, &problem);
        return;
    }
    cut_triangles(solving, node, args[DIAGONAL_SIDE_FABRIC], point.side_square_cut, point.side_surplus,
                  MUSLIN_CUT_AGAIN_TWICE, copies * point.side_triangles);
    cut_triangles(solving, node, args[DIAGONAL_CORNER_FABRIC], point.corner_square_cut, point.corner_surplus,
                  MUSLIN_CUT_AGAIN_ONCE, copies * point.corner_triangles);
    if (point.edge_cornerstones > 0)
        cut_triangles(solving, node, args[DIAGONAL_CORNERSTONE], point.edge_cornerstone_cut,
                      point.edge_cornerstone_surplus, MUSLIN_CUT_AGAIN_TWICE, copies * point.edge_cornerstones);
    cut_sashes(solving, node, &point);
}

/* ---- pieces of 60 degree rows ----------------------------------------------------------------------------------- */

/* One, two or three triangles' room. */
static int32_t kind_of(int32_t cells)
{
    static const uint8_t kinds[] = { MUSLIN_UNIT_TRIANGLE_60, MUSLIN_UNIT_DIAMOND_60, MUSLIN_UNIT_HALF_HEXAGON };
    return kinds[cells - 1];
}

/* The spec of unit.h that cuts them from a strip. */
static struct muslin_unit_spec strip_spec(const struct muslin_solution *s, muslin_len height, int32_t cells,
                                          int64_t pieces)
{
    struct muslin_unit_spec spec = MUSLIN_UNIT_SPEC_INIT;
    spec.finished_height = height;
    spec.allowance = msl_value_of(s, MSL_ALLOWANCE);
    spec.take_up = msl_value_of(s, MSL_TAKE_UP);
    spec.half_addition = s->spec.half_addition;
    spec.quarter_addition = s->spec.quarter_addition;
    spec.trim_room = trim_of(s);
    spec.grid = s->spec.grid;
    spec.tolerance = s->spec.grid_tolerance;
    spec.units = pieces;
    spec.kind = kind_of(cells);
    spec.method = MUSLIN_UNIT_METHOD_STRIPS;
    spec.policy = s->spec.policy;
    spec.tip = s->spec.tip;
    spec.direction = s->spec.direction;
    return spec;
}

/* Pieces of one fabric and number of cells. */
static void cut_from_strip(struct msl_solving *solving, uint32_t node, muslin_len height, const struct msl_rank *kind,
                           int64_t pieces)
{
    const struct muslin_solution *s = solving->solution;
    const struct muslin_unit_spec spec = strip_spec(s, height, (int32_t)kind->first, pieces);
    struct muslin_problem problem = MUSLIN_PROBLEM_INIT;
    struct muslin_unit_piece piece = { .size = sizeof piece };
    size_t count = 0;
    if (muslin_unit_pieces(&spec, &piece, sizeof piece, 1, &count, &problem) != MUSLIN_OK) {
        msl_fail_node(solving, node, &problem);
        return;
    }
    struct muslin_solution_cut cut = msl_new_cut(s, node, kind->group, MUSLIN_CUT_SOURCE_SIXTY);
    msl_take_piece(&cut, &piece);
    cut.count = cut.pieces = cut.scattered = pieces;
    msl_add_cut(solving, &cut);
}

/* A size brought to the grid once, with room to trim; *surplus gets what it has over the need, down to a tick. */
static muslin_len size_to_cut(const struct muslin_solution *s, struct msl_surd need, muslin_len *surplus)
{
    const struct muslin_rounding_spec rounding = rounding_of(s);
    struct muslin_rounded rounded = { .size = sizeof rounded };
    muslin_len least = msl_surd_ceiling(&need);
    need.whole += need.divisor * trim_of(s);
    msl_surd_round(&need, &rounding, &rounded); /* far below the largest length */
    muslin_len cut = rounded.value > 0 ? rounded.value : rounding.grid;
    *surplus = cut - least;
    return cut;
}

/* Half-triangles that close the rows, two from a rectangle cut once. Their legs are H / sqrt 3 along the row and H. Raw
 * edges lie E / 2 outside, which moves a right angle by E / 2 along either leg, one of 60 degrees by sqrt 3 E / 2 and
 * one of 30 by (2 + sqrt 3) E / 2. So the rectangle is H / sqrt 3 + (1 + sqrt 3) E / 2 by H + (3 + sqrt 3) E / 2. */
static void cut_ends(struct msl_solving *solving, uint32_t node, int32_t hand, int64_t needed)
{
    const struct muslin_solution *s = solving->solution;
    const int32_t *args = msl_node_args(s->quilt, node);
    const muslin_len height = msl_value_of(s, args[SIXTY_HEIGHT]);
    const muslin_len seam = msl_seam_of(s);
    struct muslin_solution_cut cut = msl_new_cut(s, node, (uint32_t)args[SIXTY_END_FABRIC], MUSLIN_CUT_SOURCE_SIXTY);
    cut.cut_width = size_to_cut(s, msl_surd_of(3 * seam, 2 * height + 3 * seam, 3, 6), &cut.surplus_width);
    cut.cut_height = size_to_cut(s, msl_surd_of(2 * height + 3 * seam, seam, 3, 2), &cut.surplus_height);
    cut.hand = hand;
    cut_again(solving, &cut, MUSLIN_CUT_AGAIN_ONCE, needed);
}

/* A triangle that stands on its side leaves a half-triangle of the first hand (its seam rises to the right) at the left
 * and one of the second at the right; one on its point the other way round. A row of an even number of triangles ends
 * with the other kind than it begins with. */
static int64_t ends_of_first_hand(const int32_t *args)
{
    const int64_t rows = args[SIXTY_ROWS];
    if (args[SIXTY_CELLS] % 2 != 0)
        return rows;
    return 2 * (args[SIXTY_FIRST] == 1 ? (rows + 1) / 2 : rows / 2);
}

static void cut_all_ends(struct msl_solving *solving, uint32_t node)
{
    const int32_t *args = msl_node_args(solving->solution->quilt, node);
    const int64_t *of = solving->solution->cut[node - 1].of;
    const int64_t plain = of[0] + of[1] + of[2] + of[3];
    const int64_t mirrored = msl_copies(&solving->solution->cut[node - 1]) - plain;
    const int64_t first = ends_of_first_hand(args);
    const int64_t second = 2 * (int64_t)args[SIXTY_ROWS] - first;
    cut_ends(solving, node, 1, plain * first + mirrored * second);
    cut_ends(solving, node, 2, plain * second + mirrored * first);
}

void msl_cut_sixty(struct msl_solving *solving, uint32_t node)
{
    struct muslin_solution *s = solving->solution;
    const int32_t *pieces = msl_node_args(s->quilt, node) + SIXTY_PIECES;
    const uint64_t n = (msl_node_row(s->quilt, node)->count - SIXTY_PIECES) / 2;
    const muslin_len height = msl_value_of(s, msl_node_args(s->quilt, node)[SIXTY_HEIGHT]);
    const int64_t copies = msl_copies(&s->cut[node - 1]);
    struct msl_rank *ranks = msl_scratch(solving->check, &s->allocator, 2 * n, sizeof *ranks);
    if (ranks == NULL)
        return;
    for (uint64_t i = 0; i < n; i++)
        ranks[i] = (struct msl_rank){ pieces[2 * i + 1], 0, (uint32_t)pieces[2 * i], 0 };
    msl_sort(ranks, ranks + n, n, NULL, NULL);
    for (uint64_t i = 0, first = 0; i < n; i++) {
        if (i + 1 < n && ranks[i + 1].group == ranks[i].group && ranks[i + 1].first == ranks[i].first)
            continue;
        cut_from_strip(solving, node, height, &ranks[i], copies * (int64_t)(i + 1 - first));
        first = i + 1;
    }
    msl_scratch_free(&s->allocator, ranks, 2 * n, sizeof *ranks);
    cut_all_ends(solving, node);
}
