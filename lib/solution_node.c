/* solution_node.c - asks a node of any kind: each question goes to the file of its kind.
 *
 * SPDX-License-Identifier: MIT */
#include "solution_inside.h"

static int32_t kind_of(const struct muslin_solution *solution, uint32_t node)
{
    return msl_node_row(solution->quilt, node)->kind;
}

/* ---- what solving needs ----------------------------------------------------------------------------------------- */

void msl_want_node_size(struct msl_solving *solving, int32_t argument, muslin_len size)
{
    msl_want_some_size(solving->check, argument, size);
}

uint8_t msl_measures_exact(const struct muslin_solution *solution, uint32_t node)
{
    const int32_t *args = msl_node_args(solution->quilt, node);
    const struct msl_children measures = msl_measures_of(kind_of(solution, node));
    uint8_t exact = 1;
    for (uint32_t i = 0; i < measures.count; i++)
        exact &= (uint8_t)msl_is_exact(solution, args[measures.first + i]);
    return exact;
}

muslin_len msl_edge_with(muslin_len first, muslin_len second)
{
    return first == second ? first : -1;
}

muslin_len msl_allowances(const struct muslin_solution *solution, muslin_len first, muslin_len second)
{
    muslin_len usual = msl_value_of(solution, MSL_ALLOWANCE);
    muslin_len sum = (first < 0 ? usual : first) + (second < 0 ? usual : second);
    int64_t sewn = (first != 0) + (second != 0);
    return sum + msl_divided_up(sewn * msl_value_of(solution, MSL_TAKE_UP), 2);
}

static int64_t between(muslin_len a, muslin_len b)
{
    return a < b ? b - a : a - b;
}

void msl_add_misfit(struct msl_solving *solving, uint32_t node, const struct msl_meeting *m, int32_t kind)
{
    struct muslin_solution *s = solving->solution;
    struct muslin_misfit *row = msl_add_row(solving->check, &s->allocator, &s->misfits, sizeof *row);
    if (row == NULL)
        return;
    int by_length = kind != MUSLIN_MISFIT_ALLOWANCE;
    muslin_len first = by_length ? m->first_size : m->first_edge;
    muslin_len second = by_length ? m->second_size : m->second_edge;
    int mixed = first < 0 || second < 0;
    int64_t pieces = msl_greater(m->first_pieces, m->second_pieces);
    *row = (struct muslin_misfit){ .size = sizeof *row,
                                   .node = msl_id(s->quilt, MUSLIN_SORT_NODE, node),
                                   .first = m->first,
                                   .second = m->second,
                                   .first_size = first,
                                   .second_size = second,
                                   .difference = mixed ? 0 : first - second,
                                   .pieces = by_length ? pieces : 0,
                                   .kind = kind };
    if (kind == MUSLIN_MISFIT_EASED)
        row->ease_each = msl_divided_up(between(first, second), pieces);
}

void msl_check_edges(struct msl_solving *solving, uint32_t node, const struct msl_meeting *meeting)
{
    muslin_len difference = between(meeting->first_size, meeting->second_size);
    if (difference != 0)
        msl_add_misfit(solving, node, meeting,
                       difference > solving->solution->spec.ease ? MUSLIN_MISFIT_LENGTH : MUSLIN_MISFIT_EASED);
    if (meeting->first_edge != meeting->second_edge || meeting->first_edge < 0)
        msl_add_misfit(solving, node, meeting, MUSLIN_MISFIT_ALLOWANCE);
}

void msl_solve_node(struct msl_solving *solving, uint32_t node)
{
    switch (kind_of(solving->solution, node)) {
    case MUSLIN_NODE_PATCH:
        msl_patch_size(solving, node);
        break;
    case MUSLIN_NODE_UNIT:
        msl_unit_size(solving, node);
        break;
    case MUSLIN_NODE_SHAPE:
        msl_shape_size(solving, node);
        break;
    case MUSLIN_NODE_JOIN:
        msl_join_size(solving, node);
        break;
    case MUSLIN_NODE_TURN:
        msl_turn_size(solving, node);
        break;
    case MUSLIN_NODE_TRIM:
        msl_trim_size(solving, node);
        break;
    case MUSLIN_NODE_PINWHEEL:
        msl_pinwheel_size(solving, node);
        break;
    case MUSLIN_NODE_SET_IN:
        msl_set_in_size(solving, node);
        break;
    case MUSLIN_NODE_DIAGONAL:
        msl_diagonal_size(solving, node);
        break;
    default:
        msl_sixty_size(solving, node);
        break;
    }
    const struct msl_size *size = msl_size_of(solving->solution, node);
    msl_want_node_size(solving, MUSLIN_ARG_FINISHED, size->width);
    msl_want_node_size(solving, MUSLIN_ARG_FINISHED, size->height);
    msl_want_some_count(solving->check, MUSLIN_ARG_PIECES, size->patches);
}

/* ---- parts ------------------------------------------------------------------------------------------------------ */

int64_t msl_parts(const struct muslin_solution *solution, uint32_t node)
{
    const struct msl_row *row = msl_node_row(solution->quilt, node);
    if (row->kind == MUSLIN_NODE_DIAGONAL)
        return msl_diagonal_parts(solution, node);
    return msl_children_of(row->kind, row->count).count;
}

struct msl_part msl_part(const struct muslin_solution *solution, uint32_t node, int64_t k)
{
    switch (kind_of(solution, node)) {
    case MUSLIN_NODE_JOIN:
        return msl_join_part(solution, node, k);
    case MUSLIN_NODE_TURN:
        return msl_turn_part(solution, node);
    case MUSLIN_NODE_TRIM:
        return msl_trim_part(solution, node);
    case MUSLIN_NODE_PINWHEEL:
        return msl_pinwheel_part(solution, node, k);
    case MUSLIN_NODE_SET_IN:
        return msl_set_in_part(solution, node);
    default:
        return msl_diagonal_part(solution, node, k);
    }
}

/* Binary search among the slots of a join or a field on point: the last child that begins at or before the patch. */
static int64_t slot_with(const struct muslin_solution *solution, uint32_t node, int64_t patch, int64_t *before)
{
    const struct msl_slot *slots = (const struct msl_slot *)solution->slots.rows + msl_size_of(solution, node)->slots;
    int64_t low = 0;
    int64_t high = msl_parts(solution, node);
    while (high - low > 1) {
        int64_t middle = (low + high) / 2;
        if (slots[middle].patches <= patch)
            low = middle;
        else
            high = middle;
    }
    *before = slots[low].patches;
    return low;
}

int64_t msl_part_with(const struct muslin_solution *solution, uint32_t node, int64_t patch, int64_t *before)
{
    const int32_t kind = kind_of(solution, node);
    if (kind == MUSLIN_NODE_JOIN || kind == MUSLIN_NODE_DIAGONAL)
        return slot_with(solution, node, patch, before);
    int64_t first = msl_pieces(solution, node);
    int64_t k = 0;
    for (;;) {
        int64_t patches = msl_size_of(solution, msl_part(solution, node, k).node)->patches;
        if (patch < first + patches)
            break;
        first += patches;
        k++;
    }
    *before = first;
    return k;
}

/* Edges clockwise from the left: a turn moves each on by its quarters. */
enum msl_edge msl_edge_before(int32_t turn, enum msl_edge edge)
{
    static const uint8_t clockwise[MSL_EDGES] = { 0, 2, 1, 3 }; /* left, right, top, bottom */
    static const uint8_t edge_at[MSL_EDGES] = { MSL_LEFT, MSL_TOP, MSL_RIGHT, MSL_BOTTOM };
    enum msl_edge before = (enum msl_edge)edge_at[(clockwise[edge] + 4 - (turn & MSL_TURN_QUARTERS)) & 3];
    if ((turn & MSL_TURN_MIRRORED) == 0 || before == MSL_TOP || before == MSL_BOTTOM)
        return before;
    return before == MSL_LEFT ? MSL_RIGHT : MSL_LEFT;
}

void msl_turn_point(int32_t turn, muslin_len width, muslin_len height, muslin_len *x, muslin_len *y)
{
    if ((turn & MSL_TURN_MIRRORED) != 0)
        *x = width - *x;
    for (int32_t i = 0; i < (turn & MSL_TURN_QUARTERS); i++) {
        muslin_len was_x = *x;
        muslin_len was_width = width;
        *x = *y;
        *y = was_width - was_x;
        width = height;
        height = was_width;
    }
}

/* ---- own pieces ------------------------------------------------------------------------------------------------- */

int64_t msl_pieces(const struct muslin_solution *solution, uint32_t node)
{
    switch (kind_of(solution, node)) {
    case MUSLIN_NODE_PATCH:
        return 1;
    case MUSLIN_NODE_UNIT:
        return msl_unit_pieces(solution, node);
    case MUSLIN_NODE_SHAPE:
        return msl_shape_pieces(solution, node);
    case MUSLIN_NODE_SET_IN:
        return msl_set_in_pieces(solution, node);
    case MUSLIN_NODE_DIAGONAL:
        return msl_diagonal_pieces(solution, node);
    case MUSLIN_NODE_SIXTY:
        return msl_sixty_pieces(solution, node);
    default:
        return 0;
    }
}

void msl_outline(const struct muslin_solution *solution, uint32_t node, int64_t piece, int32_t stage,
                 struct msl_ring *ring)
{
    ring->turn = 0;
    switch (kind_of(solution, node)) {
    case MUSLIN_NODE_PATCH:
        msl_patch_outline(solution, node, stage, ring);
        break;
    case MUSLIN_NODE_UNIT:
        msl_unit_outline(solution, node, piece, stage, ring);
        break;
    case MUSLIN_NODE_SHAPE:
        msl_shape_outline(solution, node, piece, stage, ring);
        break;
    case MUSLIN_NODE_SET_IN:
        msl_set_in_outline(solution, node, piece, stage, ring);
        break;
    case MUSLIN_NODE_DIAGONAL:
        msl_diagonal_outline(solution, node, piece, stage, ring);
        break;
    default:
        msl_sixty_outline(solution, node, piece, stage, ring);
        break;
    }
}

int64_t msl_ring_area(const struct msl_ring *ring)
{
    uint64_t sum = 0; /* parts of it may pass 64 bits, the whole does not */
    for (int32_t i = 1; i + 1 < ring->corners; i++) {
        uint64_t across = (uint64_t)(ring->x[i] - ring->x[0]) * (uint64_t)(ring->y[i + 1] - ring->y[0]);
        uint64_t down = (uint64_t)(ring->x[i + 1] - ring->x[0]) * (uint64_t)(ring->y[i] - ring->y[0]);
        sum += across - down;
    }
    return (int64_t)sum;
}

/* Corners i of an outline, moved by d_i, at most half a tick in x and in y, change twice its area, the sum of
 * x_i (y_(i+1) - y_(i-1)), by at most half of |y_(i+1) - y_(i-1)| + |x_(i+1) - x_(i-1)| each, and by 1/2 each where two
 * moved corners meet. Summed up, that is no more than all |dx| + |dy| along the exact edges, plus corners / 2; an exact
 * edge's |dx| and |dy| pass the rounded ones by at most 1 each. */
static int64_t ring_bound(const struct msl_ring *ring)
{
    int64_t bound = 2 * ring->corners + (ring->corners + 1) / 2;
    for (int32_t i = 0; i < ring->corners; i++) {
        const int32_t next = i + 1 == ring->corners ? 0 : i + 1;
        bound += between(ring->x[i], ring->x[next]) + between(ring->y[i], ring->y[next]);
    }
    return bound;
}

/* Fields find their own width and height, and round them: that changes twice their product by at most their sum and
 * 1/2 + 1/2. What another node is made of is as large as it is. */
struct msl_own_area msl_own_area(const struct muslin_solution *solution, uint32_t node)
{
    const struct msl_size *size = msl_size_of(solution, node);
    const int64_t pieces = msl_pieces(solution, node);
    const int32_t kind = kind_of(solution, node);
    const int is_field = kind == MUSLIN_NODE_DIAGONAL || kind == MUSLIN_NODE_SIXTY;
    struct msl_own_area own = { 0, is_field ? size->width + size->height + 1 : 0 };
    struct msl_ring ring;
    for (int64_t piece = 0; piece < pieces; piece++) {
        msl_outline(solution, node, piece, MUSLIN_STAGE_FINISHED, &ring);
        own.area += msl_ring_area(&ring);
        own.bound += ring.exact ? 0 : ring_bound(&ring);
    }
    return own;
}

/* ---- seams ------------------------------------------------------------------------------------------------------ */

int64_t msl_seams(const struct muslin_solution *solution, uint32_t node)
{
    switch (kind_of(solution, node)) {
    case MUSLIN_NODE_UNIT:
        return msl_unit_seams(solution, node);
    case MUSLIN_NODE_SHAPE:
        return msl_shape_seams(solution, node);
    case MUSLIN_NODE_JOIN:
        return msl_parts(solution, node) - 1;
    case MUSLIN_NODE_PINWHEEL:
        return PINWHEEL_ARGS - 1;
    case MUSLIN_NODE_SET_IN:
        return msl_set_in_seams(solution, node);
    case MUSLIN_NODE_DIAGONAL:
        return msl_diagonal_seams(solution, node);
    case MUSLIN_NODE_SIXTY:
        return msl_sixty_seams(solution, node);
    default:
        return 0;
    }
}

struct msl_seam msl_seam(const struct muslin_solution *solution, uint32_t node, int64_t k)
{
    switch (kind_of(solution, node)) {
    case MUSLIN_NODE_UNIT:
        return msl_unit_seam(solution, node, k);
    case MUSLIN_NODE_SHAPE:
        return msl_shape_seam(solution, node, k);
    case MUSLIN_NODE_JOIN:
        return msl_join_seam(solution, node, k);
    case MUSLIN_NODE_PINWHEEL:
        return msl_pinwheel_seam(solution, node, k);
    case MUSLIN_NODE_SET_IN:
        return msl_set_in_seam(solution, node, k);
    case MUSLIN_NODE_DIAGONAL:
        return msl_diagonal_seam(solution, node, k);
    default:
        return msl_sixty_seam(solution, node, k);
    }
}

int64_t msl_seam_beside(const struct muslin_solution *solution, uint32_t node, int64_t k, enum msl_edge edge)
{
    switch (kind_of(solution, node)) {
    case MUSLIN_NODE_JOIN:
        return msl_join_beside(solution, node, k, edge);
    case MUSLIN_NODE_PINWHEEL:
        return msl_pinwheel_beside(k, edge);
    case MUSLIN_NODE_SET_IN:
        return msl_set_in_beside(solution, node, edge);
    case MUSLIN_NODE_DIAGONAL:
        return msl_diagonal_beside(solution, node, k, edge);
    default:
        return -1;
    }
}
