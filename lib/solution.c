/* solution.c - solving a tree, from values to sizes and counts; what it says of one node.
 *
 * SPDX-License-Identifier: MIT
 *
 * Nodes and measures are numbered in the order in which they were made, and each is made of earlier ones. So one pass
 * from the root downwards finds what is needed, one upwards works it out, and one downwards counts the copies. */
#include "solution_inside.h"

enum {
    SOLVE_SPEC_LEAST = sizeof(struct muslin_solution_spec),
    VALUE_SPEC_LEAST = sizeof(struct muslin_solution_value_spec),
    NODE_SIZE_LEAST = sizeof(struct muslin_node_size)
};

muslin_status muslin_solution_spec_init(struct muslin_solution_spec *spec, uint32_t size)
{
    static const struct muslin_solution_spec initial = MUSLIN_SOLUTION_SPEC_INIT;
    return msl_init_struct(spec, size, &initial, sizeof initial, SOLVE_SPEC_LEAST);
}

muslin_status muslin_solution_value_spec_init(struct muslin_solution_value_spec *spec, uint32_t size)
{
    static const struct muslin_solution_value_spec initial = MUSLIN_SOLUTION_VALUE_SPEC_INIT;
    return msl_init_struct(spec, size, &initial, sizeof initial, VALUE_SPEC_LEAST);
}

/* ---- rows that grow --------------------------------------------------------------------------------------------- */

void *msl_add_row(struct msl_check *check, const struct muslin_allocator *allocator, struct msl_rows *rows,
                  size_t row_size)
{
    if (check->status != MUSLIN_OK)
        return NULL;
    if (rows->used == rows->capacity) {
        uint64_t grown = rows->capacity == 0 ? 16 : 2 * rows->capacity;
        size_t old_size = (size_t)rows->capacity * row_size;
        void *block = msl_moved(allocator, rows->rows, old_size, msl_bytes(grown, row_size));
        if (block == NULL) {
            msl_fail(check, MUSLIN_ERR_NO_MEMORY, MUSLIN_ARG_ALLOCATOR, (int64_t)grown, 0);
            return NULL;
        }
        rows->rows = block;
        rows->capacity = grown;
    }
    rows->used++;
    return (unsigned char *)rows->rows + (size_t)(rows->used - 1) * row_size;
}

void msl_free_rows(const struct muslin_allocator *allocator, struct msl_rows *rows, size_t row_size)
{
    if (rows->rows != NULL)
        allocator->free(allocator->context, rows->rows, (size_t)rows->capacity * row_size);
}

/* ---- memory ----------------------------------------------------------------------------------------------------- */

static const struct msl_size no_size;
static const struct msl_counts no_counts = { { 0, 0, 0, 0, 0, 0, 0, 0 } };

static void clear_nodes(struct muslin_solution *s)
{
    for (uint32_t i = 0; i < s->root; i++) {
        s->sizes[i] = no_size;
        s->counts[i] = no_counts;
        s->cut[i] = no_counts;
    }
}

static struct muslin_solution *allocate(struct msl_check *check, const struct muslin_quilt *quilt, uint32_t root,
                                        const struct muslin_solution_spec *in, const struct muslin_allocator *a)
{
    struct muslin_solution *s = msl_scratch(check, a, 1, sizeof *s);
    if (s == NULL)
        return NULL;
    *s = (struct muslin_solution){ .quilt = quilt,
                                   .allocator = *a,
                                   .spec = *in,
                                   .root = root,
                                   .measures = quilt->measures.used,
                                   .fabrics = quilt->fabrics_used };
    s->values = msl_scratch(check, a, s->measures, sizeof s->values[0]);
    s->rounded = msl_scratch(check, a, s->measures, sizeof s->rounded[0]);
    s->widths = msl_scratch(check, a, s->fabrics, sizeof s->widths[0]);
    s->sizes = msl_scratch(check, a, root, sizeof s->sizes[0]);
    s->counts = msl_scratch(check, a, root, sizeof s->counts[0]);
    s->cut = msl_scratch(check, a, root, sizeof s->cut[0]);
    if (check->status == MUSLIN_OK)
        clear_nodes(s);
    return s;
}

void muslin_solution_free(struct muslin_solution *s)
{
    if (s == NULL)
        return;
    const struct muslin_allocator a = s->allocator;
    msl_scratch_free(&a, s->values, s->measures, sizeof s->values[0]);
    msl_scratch_free(&a, s->rounded, s->measures, sizeof s->rounded[0]);
    msl_scratch_free(&a, s->widths, s->fabrics, sizeof s->widths[0]);
    msl_scratch_free(&a, s->sizes, s->root, sizeof s->sizes[0]);
    msl_scratch_free(&a, s->counts, s->root, sizeof s->counts[0]);
    msl_scratch_free(&a, s->cut, s->root, sizeof s->cut[0]);
    msl_free_rows(&a, &s->slots, sizeof(struct msl_slot));
    msl_free_rows(&a, &s->misfits, sizeof(struct muslin_misfit));
    msl_free_rows(&a, &s->sets, sizeof(struct muslin_stripset));
    msl_free_rows(&a, &s->cuts, sizeof(struct muslin_solution_cut));
    msl_free_rows(&a, &s->needs, sizeof(struct msl_need));
    msl_free_rows(&a, &s->feeds, sizeof(struct msl_feed));
    msl_scratch_free(&a, s, 1, sizeof *s);
}

/* ---- values ----------------------------------------------------------------------------------------------------- */

/* Those the quilt has; others, worked out later, are -1 until then. */
static void usual_values(struct muslin_solution *s)
{
    for (uint32_t m = 1; m <= s->measures; m++) {
        int named = msl_measure_row(s->quilt, m)->kind == MUSLIN_MEASURE_NAMED;
        s->values[m - 1] = named ? msl_get_long(msl_measure_args(s->quilt, m)) : -1;
        s->rounded[m - 1] = 0;
    }
    for (uint32_t f = 0; f < s->fabrics; f++)
        s->widths[f] = s->quilt->fabrics[f].usable_width;
}

/* One value given instead. */
static void take_value(struct msl_check *check, struct muslin_solution *s, const struct muslin_solution_value_spec *in)
{
    if (muslin_id_sort(in->id) == MUSLIN_SORT_FABRIC) {
        uint32_t fabric = msl_want_id(check, s->quilt, MUSLIN_SORT_FABRIC, MUSLIN_ARG_FABRIC, in->id);
        msl_want_some_size(check, MUSLIN_ARG_USABLE_WIDTH, in->value);
        if (check->status == MUSLIN_OK)
            s->widths[fabric - 1] = in->value;
        return;
    }
    uint32_t measure = msl_want_id(check, s->quilt, MUSLIN_SORT_MEASURE, MUSLIN_ARG_MEASURE, in->id);
    if (check->status != MUSLIN_OK)
        return;
    if (msl_measure_row(s->quilt, measure)->kind != MUSLIN_MEASURE_NAMED)
        msl_fail(check, MUSLIN_ERR_FOREIGN, MUSLIN_ARG_MEASURE, in->id, 0);
    if (measure == MSL_ALLOWANCE || measure == MSL_TAKE_UP)
        msl_want_seam(check, measure == MSL_ALLOWANCE ? MUSLIN_ARG_SEAM_ALLOWANCE : MUSLIN_ARG_TAKE_UP, in->value);
    msl_want_size(check, MUSLIN_ARG_VALUE, in->value);
    s->values[measure - 1] = in->value;
}

static void take_values(struct msl_check *check, struct muslin_solution *s,
                        const struct muslin_solution_value_spec *values, size_t row_size, size_t n)
{
    for (size_t i = 0; check->status == MUSLIN_OK && i < n; i++) {
        struct muslin_solution_value_spec in;
        const void *row = msl_row_to_read(check, values, row_size, i);
        msl_read_struct(check, MUSLIN_ARG_ROWS, &in, sizeof in, VALUE_SPEC_LEAST, 0, row);
        if (check->status == MUSLIN_OK)
            take_value(check, s, &in);
    }
}

/* Sums and extents; the others have their value. A sum's terms are below 2^51 and at most 64. */
static void solve_measure(struct msl_solving *solving, uint32_t measure)
{
    struct muslin_solution *s = solving->solution;
    const struct msl_row *row = msl_measure_row(s->quilt, measure);
    const int32_t *args = msl_measure_args(s->quilt, measure);
    muslin_len value = s->values[measure - 1];
    if (row->kind == MUSLIN_MEASURE_FIXED)
        value = msl_get_long(args);
    if (row->kind == MUSLIN_MEASURE_EXTENT) {
        const struct msl_size *size = msl_size_of(s, (uint32_t)args[0]);
        value = args[1] == MUSLIN_AXIS_ACROSS ? size->width : size->height;
        s->rounded[measure - 1] = !size->exact;
    }
    if (row->kind == MUSLIN_MEASURE_SUM) {
        value = 0;
        for (uint32_t i = 0; i < row->count; i += 2) {
            value += args[i + 1] * msl_value_of(s, args[i]);
            s->rounded[measure - 1] |= s->rounded[args[i] - 1];
        }
    }
    solving->check->at = measure;
    msl_want_size(solving->check, row->kind == MUSLIN_MEASURE_SUM ? MUSLIN_ARG_SUM : MUSLIN_ARG_VALUE, value);
    s->values[measure - 1] = value;
}

/* ---- what the root needs ---------------------------------------------------------------------------------------- */

/* Measures needed are marked in an array of their own, nodes in their sizes. */
enum { MEASURE_IS_NEEDED = 1, MEASURE_IS_SASH = 2 };

struct need {
    struct muslin_solution *solution;
    uint8_t *measures;
};

static void mark_node(struct need *need, uint32_t node)
{
    const struct muslin_quilt *quilt = need->solution->quilt;
    const struct msl_row *row = msl_node_row(quilt, node);
    const int32_t *args = msl_node_args(quilt, node);
    struct msl_children children = msl_children_of(row->kind, row->count);
    for (uint32_t i = 0; i < children.count; i++)
        msl_size_of(need->solution, (uint32_t)args[children.first + i])->reached = 1;
    struct msl_children measures = msl_measures_of(row->kind);
    for (uint32_t i = 0; i < measures.count; i++)
        if (args[measures.first + i] != 0)
            need->measures[args[measures.first + i] - 1] |= MEASURE_IS_NEEDED;
    if (row->kind == MUSLIN_NODE_DIAGONAL && args[DIAGONAL_SASH] != 0)
        need->measures[args[DIAGONAL_SASH] - 1] |= MEASURE_IS_SASH;
}

static void mark_measure(struct need *need, uint32_t measure)
{
    const struct muslin_quilt *quilt = need->solution->quilt;
    const struct msl_row *row = msl_measure_row(quilt, measure);
    const int32_t *args = msl_measure_args(quilt, measure);
    if (row->kind == MUSLIN_MEASURE_EXTENT)
        msl_size_of(need->solution, (uint32_t)args[0])->reached = 1;
    for (uint32_t i = 0; row->kind == MUSLIN_MEASURE_SUM && i < row->count; i += 2)
        need->measures[args[i] - 1] |= MEASURE_IS_NEEDED;
}

/* The later one of a node and a measure, by the order in which they were made. A quilt's seam is made before any node,
 * so measures do not run out before nodes do. */
static int measure_is_later(const struct muslin_quilt *quilt, uint32_t node, uint32_t measure)
{
    return node == 0 || measure > msl_node_row(quilt, node)->before;
}

static void mark_needed(struct need *need)
{
    struct muslin_solution *s = need->solution;
    for (uint32_t m = 0; m < s->measures; m++)
        need->measures[m] = 0;
    need->measures[MSL_ALLOWANCE - 1] = need->measures[MSL_TAKE_UP - 1] = MEASURE_IS_NEEDED;
    uint32_t node = s->root;
    uint32_t measure = s->measures;
    msl_size_of(s, node)->reached = 1;
    while (measure > 0) {
        if (measure_is_later(s->quilt, node, measure)) {
            if (need->measures[measure - 1])
                mark_measure(need, measure);
            measure--;
        } else {
            if (msl_size_of(s, node)->reached)
                mark_node(need, node);
            node--;
        }
    }
}

/* ---- sizes and counts ------------------------------------------------------------------------------------------- */

/* The first field on point that has sashes so wide; there is one. */
static uint32_t field_with_sash(const struct muslin_solution *s, uint32_t measure)
{
    uint32_t node = 1;
    while (!msl_size_of(s, node)->reached || msl_node_row(s->quilt, node)->kind != MUSLIN_NODE_DIAGONAL ||
           msl_node_args(s->quilt, node)[DIAGONAL_SASH] != (int32_t)measure)
        node++;
    return node;
}

/* Said of the sash: else it would be of patches that the caller never made. */
static void want_sash(struct msl_solving *solving, uint32_t measure)
{
    const muslin_len width = solving->solution->values[measure - 1];
    if (solving->check->status != MUSLIN_OK || width > 0)
        return;
    solving->check->at = field_with_sash(solving->solution, measure);
    msl_fail(solving->check, MUSLIN_ERR_RANGE, MUSLIN_ARG_SASH_WIDTH, width, 1);
}

static void solve_needed(struct msl_solving *solving, const struct need *need, uint32_t measure)
{
    if (need->measures[measure - 1] == 0 || solving->check->status != MUSLIN_OK)
        return;
    solve_measure(solving, measure);
    if ((need->measures[measure - 1] & MEASURE_IS_SASH) != 0)
        want_sash(solving, measure);
}

static void solve_nodes(struct msl_solving *solving, const struct need *need)
{
    struct muslin_solution *s = solving->solution;
    uint32_t measure = 1;
    for (uint32_t node = 1; node <= s->root; node++) {
        for (; measure <= msl_node_row(s->quilt, node)->before; measure++)
            solve_needed(solving, need, measure);
        if (solving->check->status != MUSLIN_OK)
            return;
        solving->check->at = node;
        if (msl_size_of(s, node)->reached)
            msl_solve_node(solving, node);
    }
    for (measure = 1; measure <= s->measures; measure++)
        if (!need->measures[measure - 1])
            s->values[measure - 1] = -1;
}

void msl_count_parts(const struct muslin_solution *s, struct msl_counts *counts, uint32_t node)
{
    int64_t parts = msl_parts(s, node);
    const struct msl_counts *own = &counts[node - 1];
    for (int64_t k = 0; k < parts; k++) {
        struct msl_part part = msl_part(s, node, k);
        for (int32_t turn = 0; turn < MSL_TURNS; turn++)
            counts[part.node - 1].of[msl_turn_after(turn, part.turn)] += own->of[turn];
    }
}

int64_t msl_copies(const struct msl_counts *counts)
{
    int64_t copies = 0;
    for (int32_t turn = 0; turn < MSL_TURNS; turn++)
        copies += counts->of[turn];
    return copies;
}

/* Nodes that are measured and not sewn in have none. */
static void count_misfits(struct muslin_solution *s)
{
    struct muslin_misfit *misfits = s->misfits.rows;
    const uint64_t found = s->misfits.used;
    s->misfits.used = 0;
    for (uint64_t i = 0; i < found; i++) {
        misfits[i].count = msl_copies(&s->counts[muslin_id_number(misfits[i].node) - 1]);
        if (misfits[i].count > 0)
            misfits[s->misfits.used++] = misfits[i];
    }
}

/* Copies of every node. No node has more than the root has patches. */
static void count_nodes(struct msl_solving *solving)
{
    struct muslin_solution *s = solving->solution;
    msl_want_between(solving->check, MUSLIN_ARG_TOPS, s->spec.tops, 1,
                     MUSLIN_COUNT_MAX / msl_size_of(s, s->root)->patches);
    if (solving->check->status != MUSLIN_OK)
        return;
    s->counts[s->root - 1].of[0] = s->spec.tops;
    for (uint32_t node = s->root; node > 0; node--)
        if (msl_copies(&s->counts[node - 1]) > 0)
            msl_count_parts(s, s->counts, node);
    count_misfits(s);
}

static void solve(struct msl_solving *solving)
{
    struct muslin_solution *s = solving->solution;
    struct need need = { s, NULL };
    need.measures = msl_scratch(solving->check, &s->allocator, s->measures, 1);
    if (need.measures == NULL)
        return;
    mark_needed(&need);
    solve_nodes(solving, &need);
    msl_scratch_free(&s->allocator, need.measures, s->measures, 1);
    if (solving->check->status == MUSLIN_OK)
        count_nodes(solving);
    if (solving->check->status == MUSLIN_OK)
        msl_find_sets(solving);
    if (solving->check->status == MUSLIN_OK)
        msl_make_cuts(solving);
    if (solving->check->status == MUSLIN_OK)
        msl_find_steps(solving);
}

static void want_solve_spec(struct msl_check *check, const struct muslin_solution_spec *in)
{
    msl_want_some_count(check, MUSLIN_ARG_TOPS, in->tops);
    msl_want_size(check, MUSLIN_ARG_EASE, in->ease);
    msl_want_between(check, MUSLIN_ARG_GRID, in->grid, 1, MUSLIN_UNIT_SIZE_MAX);
    /* from a grid that was refused nothing may be subtracted */
    msl_want_between(check, MUSLIN_ARG_TOLERANCE, in->grid_tolerance, 0, in->grid > 0 ? in->grid - 1 : 0);
    msl_want_between(check, MUSLIN_ARG_HALF_ADDITION, in->half_addition, 0, MUSLIN_UNIT_SIZE_MAX / 8);
    msl_want_between(check, MUSLIN_ARG_QUARTER_ADDITION, in->quarter_addition, 0, MUSLIN_UNIT_SIZE_MAX / 8);
    msl_want_between(check, MUSLIN_ARG_TRIM, in->trim_room, 0, MUSLIN_UNIT_SIZE_MAX / 8);
    msl_want_size(check, MUSLIN_ARG_END_TRIM, in->end_trim);
    msl_want_size(check, MUSLIN_ARG_RESQUARE_LOSS, in->resquare_loss);
    msl_want_count(check, MUSLIN_ARG_RESQUARE_EVERY, in->resquare_every);
    msl_want_between(check, MUSLIN_ARG_FOLD_CLEAR, in->fold_clear, 0,
                     (in->flags & MUSLIN_YIELD_FROM_ONE_END) != 0 ? 0 : MUSLIN_SIZE_MAX);
    msl_want_choice(check, MUSLIN_ARG_POLICY, in->policy, MUSLIN_ALLOWANCE_POLICY_EXACT,
                    MUSLIN_ALLOWANCE_POLICY_OVERSIZE);
    msl_want_choice(check, MUSLIN_ARG_TIP, in->tip, MUSLIN_TIP_SHARP, MUSLIN_TIP_BLUNT);
    msl_want_choice(check, MUSLIN_ARG_DIRECTION, in->direction, MUSLIN_DIRECTION_UP, MUSLIN_DIRECTION_NEAREST);
    if (in->strip_piecing != MUSLIN_STRIP_PIECING_NEVER)
        msl_want_choice(check, MUSLIN_ARG_STRIP_PIECING, in->strip_piecing, MUSLIN_STRIP_PIECING_WHERE_FEWER,
                        MUSLIN_STRIP_PIECING_WHERE_FEWER);
}

muslin_status muslin_solution_create(const struct muslin_quilt *quilt, muslin_id root,
                                     const struct muslin_solution_spec *spec,
                                     const struct muslin_solution_value_spec *values, size_t row_size, size_t n,
                                     const struct muslin_allocator *allocator, struct muslin_solution **out,
                                     struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct muslin_solution_spec in;
    msl_want_quilt(&check, quilt, out);
    msl_read_struct(&check, MUSLIN_ARG_SPEC, &in, sizeof in, SOLVE_SPEC_LEAST, MUSLIN_YIELD_FROM_ONE_END, spec);
    uint32_t number = msl_want_id(&check, quilt, MUSLIN_SORT_NODE, MUSLIN_ARG_NODE, root);
    if (n != 0) {
        msl_want_pointer(&check, MUSLIN_ARG_ROWS, values);
        msl_want_row_size(&check, row_size, VALUE_SPEC_LEAST);
    }
    if (check.status != MUSLIN_OK)
        return check.status;
    allocator = msl_allocator_or(&check, allocator, quilt);
    want_solve_spec(&check, &in);
    if (check.status != MUSLIN_OK)
        return check.status;
    struct msl_solving solving = { allocate(&check, quilt, number, &in, allocator), &check };
    if (check.status == MUSLIN_OK) {
        usual_values(solving.solution);
        take_values(&check, solving.solution, values, row_size, n);
        check.at = 0;
    }
    if (check.status == MUSLIN_OK)
        solve(&solving);
    if (check.status == MUSLIN_OK)
        *out = solving.solution;
    else
        muslin_solution_free(solving.solution);
    return check.status;
}

/* ---- one node --------------------------------------------------------------------------------------------------- */

void msl_want_solution(struct msl_check *check, const struct muslin_solution *solution)
{
    msl_want_pointer(check, MUSLIN_ARG_QUILT, solution);
}

uint32_t msl_want_node(struct msl_check *check, const struct muslin_solution *solution, muslin_id node)
{
    if (check->status != MUSLIN_OK)
        return 0;
    uint32_t number = msl_want_id(check, solution->quilt, MUSLIN_SORT_NODE, MUSLIN_ARG_NODE, node);
    if (check->status == MUSLIN_OK &&
        (number > solution->root || msl_copies(&solution->counts[number - 1]) == 0))
        msl_fail(check, MUSLIN_ERR_FOREIGN, MUSLIN_ARG_NODE, node, 0);
    return number;
}

static void count_turns(const struct msl_counts *counts, struct muslin_node_size *out)
{
    const int64_t *of = counts->of;
    out->count = msl_copies(counts);
    for (int32_t turn = MSL_TURN_MIRRORED; turn < MSL_TURNS; turn++)
        out->mirrored += of[turn];
    out->upright = of[0] + of[MSL_TURN_MIRRORED];
    out->quarter = of[1] + of[MSL_TURN_MIRRORED + 1];
    out->half = of[2] + of[MSL_TURN_MIRRORED + 2];
    out->three_quarter = of[3] + of[MSL_TURN_MIRRORED + 3];
}

muslin_status muslin_solution_size(const struct muslin_solution *solution, muslin_id node, struct muslin_node_size *out,
                                   struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    msl_want_solution(&check, solution);
    msl_want_output(&check, out, NODE_SIZE_LEAST);
    uint32_t number = msl_want_node(&check, solution, node);
    if (check.status != MUSLIN_OK)
        return check.status;
    const struct msl_size *size = msl_size_of(solution, number);
    struct muslin_node_size found = {
        .size = sizeof found,
        .finished_width = size->width,
        .finished_height = size->height,
        .unfinished_width = size->width + msl_allowances(solution, size->edge[MSL_LEFT], size->edge[MSL_RIGHT]),
        .unfinished_height = size->height + msl_allowances(solution, size->edge[MSL_TOP], size->edge[MSL_BOTTOM]),
        .left = size->edge[MSL_LEFT],
        .right = size->edge[MSL_RIGHT],
        .top = size->edge[MSL_TOP],
        .bottom = size->edge[MSL_BOTTOM],
        .patches = size->patches,
        .seams_across = size->across,
        .seams_down = size->down,
        .kind = msl_node_row(solution->quilt, number)->kind,
        .exact = size->exact
    };
    count_turns(&solution->counts[number - 1], &found);
    msl_write_struct(out, &found, sizeof found);
    return MUSLIN_OK;
}

muslin_status muslin_solution_value(const struct muslin_solution *solution, muslin_id measure, muslin_len *value,
                                    struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    msl_want_solution(&check, solution);
    msl_want_pointer(&check, MUSLIN_ARG_OUTPUT, value);
    if (check.status != MUSLIN_OK)
        return check.status;
    uint32_t number = msl_want_id(&check, solution->quilt, MUSLIN_SORT_MEASURE, MUSLIN_ARG_MEASURE, measure);
    if (check.status != MUSLIN_OK)
        return check.status;
    if (number > solution->measures || solution->values[number - 1] < 0)
        return msl_fail(&check, MUSLIN_ERR_FOREIGN, MUSLIN_ARG_MEASURE, measure, 0);
    *value = solution->values[number - 1];
    return MUSLIN_OK;
}
