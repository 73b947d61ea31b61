/* solution_cuts.c - the cut list: what each node asks for, equal rows made one, sorted.
 *
 * SPDX-License-Identifier: MIT
 *
 * Every node adds rows of its own to `cuts`, with the node as first_node. Then they are sorted, equal ones become one
 * row, and `needs` keeps which nodes those came from. */
#include "solution_cuts.h"

/* ---- a row ------------------------------------------------------------------------------------------------------ */

struct muslin_solution_cut msl_new_cut(const struct muslin_solution *solution, uint32_t node, uint32_t fabric,
                                       int32_t source)
{
    const muslin_len allowance = msl_value_of(solution, MSL_ALLOWANCE);
    struct muslin_solution_cut cut = { .size = sizeof cut, .source = source, .shape = MUSLIN_CUT_SHAPE_RECTANGLE };
    cut.fabric = msl_id(solution->quilt, MUSLIN_SORT_FABRIC, fabric);
    cut.first_node = msl_id(solution->quilt, MUSLIN_SORT_NODE, node);
    cut.left = cut.right = cut.top = cut.bottom = allowance;
    cut.again = MUSLIN_CUT_AGAIN_NO;
    cut.grain = MUSLIN_GRAIN_ALL_EDGES;
    cut.gives = 1;
    cut.hand = MUSLIN_HAND_FIRST;
    return cut;
}

void msl_take_piece(struct muslin_solution_cut *cut, const struct muslin_unit_piece *piece)
{
    cut->cut_width = piece->cut_width;
    cut->cut_height = piece->cut_height;
    cut->pitch = piece->pitch;
    cut->wide_edge = piece->wide_edge;
    cut->narrow_edge = piece->narrow_edge;
    cut->surplus_width = piece->surplus_width;
    cut->surplus_height = piece->surplus_height;
    cut->shape = piece->shape;
    cut->again = piece->again;
    cut->gives = piece->gives;
    cut->grain = piece->grain;
    cut->hand = piece->hand;
    cut->angle = piece->angle;
}

void msl_count_blanks(struct muslin_solution_cut *cut)
{
    cut->count = msl_divided_up(cut->scattered, cut->gives);
    cut->pieces = cut->count * cut->gives;
    cut->spare = cut->pieces - cut->scattered;
}

void msl_add_cut(struct msl_solving *solving, const struct muslin_solution_cut *cut)
{
    struct muslin_solution *s = solving->solution;
    struct muslin_solution_cut *row = msl_add_row(solving->check, &s->allocator, &s->cuts, sizeof *row);
    if (row != NULL)
        *row = *cut;
}

static uint32_t fabric_of(const struct muslin_solution_cut *cut)
{
    return (uint32_t)muslin_id_number(cut->fabric);
}

static int32_t print_of(const struct muslin_solution *solution, const struct muslin_solution_cut *cut)
{
    return solution->quilt->fabrics[fabric_of(cut) - 1].print;
}

/* A quarter clockwise: what was at the left comes to the top. */
static void turn_cut(struct muslin_solution_cut *cut)
{
    const struct muslin_solution_cut was = *cut;
    cut->cut_width = was.cut_height;
    cut->cut_height = was.cut_width;
    cut->surplus_width = was.surplus_height;
    cut->surplus_height = was.surplus_width;
    cut->left = was.bottom;
    cut->top = was.left;
    cut->right = was.top;
    cut->bottom = was.right;
}

/* Compares the first in which two lists of numbers differ. */
static int list_is_before(const int64_t *a, const int64_t *b, int n)
{
    int i = 0;
    while (i < n - 1 && a[i] == b[i])
        i++;
    return a[i] < b[i];
}

/* Which way of laying a rectangle is taken: the wider one; of equal ones the one with the lesser allowances. */
static int lies_better(const struct muslin_solution_cut *a, const struct muslin_solution_cut *b)
{
    const int64_t first[] = { -a->cut_width, a->left, a->right, a->top, a->bottom };
    const int64_t second[] = { -b->cut_width, b->left, b->right, b->top, b->bottom };
    return list_is_before(first, second, sizeof first / sizeof first[0]);
}

int32_t msl_lay_cut(const struct muslin_solution *solution, struct muslin_solution_cut *cut)
{
    struct muslin_solution_cut turned = *cut;
    int32_t laid = 0;
    if (print_of(solution, cut) != MUSLIN_PRINT_NONE)
        return 0;
    for (int32_t quarters = 1; quarters <= MSL_TURN_QUARTERS; quarters++) {
        turn_cut(&turned);
        if (lies_better(&turned, cut)) {
            *cut = turned;
            laid = quarters;
        }
    }
    return laid;
}

int64_t msl_count_turns(struct muslin_solution_cut *cut, const struct msl_counts *copies, int32_t mirrored,
                        int32_t laid)
{
    int64_t of[MSL_TURN_QUARTERS + 1];
    for (int32_t quarters = 0; quarters <= MSL_TURN_QUARTERS; quarters++)
        of[quarters] = copies->of[mirrored | ((quarters + laid) & MSL_TURN_QUARTERS)];
    cut->upright += of[0];
    cut->quarter += of[1];
    cut->half += of[2];
    cut->three_quarter += of[3];
    return of[0] + of[1] + of[2] + of[3];
}

/* ---- patches ---------------------------------------------------------------------------------------------------- */

struct muslin_solution_cut msl_patch_cut(const struct muslin_solution *solution, uint32_t patch, int32_t mirrored,
                                         int32_t *laid)
{
    const struct msl_size *size = msl_size_of(solution, patch);
    uint32_t fabric = (uint32_t)msl_node_args(solution->quilt, patch)[PATCH_FABRIC];
    struct muslin_solution_cut cut = msl_new_cut(solution, patch, fabric, MUSLIN_CUT_SOURCE_PATCH);
    cut.cut_width = size->width + msl_allowances(solution, size->edge[MSL_LEFT], size->edge[MSL_RIGHT]);
    cut.cut_height = size->height + msl_allowances(solution, size->edge[MSL_TOP], size->edge[MSL_BOTTOM]);
    cut.left = size->edge[msl_edge_before(mirrored, MSL_LEFT)];
    cut.right = size->edge[msl_edge_before(mirrored, MSL_RIGHT)];
    cut.top = size->edge[MSL_TOP];
    cut.bottom = size->edge[MSL_BOTTOM];
    *laid = msl_lay_cut(solution, &cut);
    return cut;
}

static void cut_patch(struct msl_solving *solving, uint32_t node)
{
    const struct muslin_solution *s = solving->solution;
    for (int32_t mirrored = 0; mirrored <= MSL_TURN_MIRRORED; mirrored += MSL_TURN_MIRRORED) {
        int32_t laid = 0;
        struct muslin_solution_cut cut = msl_patch_cut(s, node, mirrored, &laid);
        cut.pieces = msl_count_turns(&cut, &s->cut[node - 1], mirrored, laid);
        cut.count = cut.pieces;
        if (cut.pieces > 0)
            msl_add_cut(solving, &cut);
    }
}

/* ---- strips of strip sets --------------------------------------------------------------------------------------- */

/* Ends of a strip are not sewn: they count with the quilt's allowance. One without direction lies either way up. */
static void cut_strip(struct msl_solving *solving, const struct muslin_stripset *set, int64_t k)
{
    const struct muslin_solution *s = solving->solution;
    const uint32_t join = (uint32_t)muslin_id_number(set->node);
    struct msl_set_strip strip = msl_set_strip_of(s, join, k);
    struct muslin_solution_cut cut = msl_new_cut(s, join, strip.fabric, MUSLIN_CUT_SOURCE_SET_STRIP);
    cut.cut_width = s->widths[strip.fabric - 1];
    cut.cut_height = strip.cut;
    cut.top = strip.edge[MSL_TOP];
    cut.bottom = strip.edge[MSL_BOTTOM];
    if (print_of(s, &cut) == MUSLIN_PRINT_NONE && cut.bottom < cut.top) {
        turn_cut(&cut);
        turn_cut(&cut);
        strip.turn ^= 2;
    }
    struct msl_counts lying = { { 0 } };
    for (int32_t turn = 0; turn < MSL_TURNS; turn++)
        lying.of[msl_turn_after(turn, strip.turn) & MSL_TURN_QUARTERS] += s->counts[join - 1].of[turn];
    cut.count = set->sets;
    cut.gives = (int32_t)set->segments_per_set;
    cut.pieces = set->sets * set->segments_per_set;
    cut.spare = cut.pieces - msl_count_turns(&cut, &lying, 0, 0);
    msl_add_cut(solving, &cut);
}

static void cut_sets(struct msl_solving *solving)
{
    const struct muslin_stripset *sets = solving->solution->sets.rows;
    for (uint64_t i = 0; i < solving->solution->sets.used; i++)
        for (int64_t k = 0; sets[i].used && k < sets[i].strips; k++)
            cut_strip(solving, &sets[i], k);
}

/* ---- pieces cut round their outline ----------------------------------------------------------------------------- */

/* One of a node's own pieces: the smallest upright rectangle round it. */
static void find_cut(const struct muslin_solution *s, uint32_t node, int64_t piece, int32_t source,
                     struct muslin_solution_cut *cut)
{
    struct msl_ring ring;
    msl_outline(s, node, piece, MUSLIN_STAGE_RAW, &ring);
    muslin_len left = ring.x[0];
    muslin_len right = left;
    muslin_len bottom = ring.y[0];
    muslin_len top = bottom;
    for (int32_t i = 1; i < ring.corners; i++) {
        left = ring.x[i] < left ? ring.x[i] : left;
        right = ring.x[i] > right ? ring.x[i] : right;
        bottom = ring.y[i] < bottom ? ring.y[i] : bottom;
        top = ring.y[i] > top ? ring.y[i] : top;
    }
    *cut = msl_new_cut(s, node, ring.fabric, source);
    cut->cut_width = right - left;
    cut->cut_height = top - bottom;
    cut->region = ring.region;
}

/* What is the same from both sides has no hand, and no side of its node. */
static int has_hands(const struct muslin_solution *s, uint32_t node, int64_t piece, int32_t source)
{
    return source == MUSLIN_CUT_SOURCE_TEMPLATE || !msl_set_in_ends_alike(s, node, piece);
}

/* A piece of the caller's own shape, whose mirror images are cut with the template turned over, or a mitred strip. */
static void cut_outlined(struct msl_solving *solving, uint32_t node, int64_t piece, int32_t source)
{
    const struct muslin_solution *s = solving->solution;
    const int hands = has_hands(s, node, piece, source);
    for (int32_t mirrored = 0; mirrored <= MSL_TURN_MIRRORED; mirrored += MSL_TURN_MIRRORED) {
        struct muslin_solution_cut cut;
        find_cut(s, node, piece, source, &cut);
        cut.region = hands ? cut.region : 0;
        cut.hand = hands && mirrored ? MUSLIN_HAND_MIRRORED : MUSLIN_HAND_FIRST;
        cut.pieces = msl_count_turns(&cut, &s->cut[node - 1], mirrored, msl_lay_cut(s, &cut));
        cut.count = cut.pieces;
        if (cut.pieces > 0)
            msl_add_cut(solving, &cut);
    }
}

/* ---- all nodes -------------------------------------------------------------------------------------------------- */

void msl_fail_node(struct msl_solving *solving, uint32_t node, const struct muslin_problem *problem)
{
    solving->check->at = node;
    msl_fail(solving->check, problem->status, problem->argument, problem->value, problem->limit);
}

/* Units come later, together. */
static void cut_node(struct msl_solving *solving, uint32_t node)
{
    const struct muslin_solution *s = solving->solution;
    switch (msl_node_row(s->quilt, node)->kind) {
    case MUSLIN_NODE_PATCH:
        cut_patch(solving, node);
        break;
    case MUSLIN_NODE_SHAPE:
        for (int64_t piece = 0; piece < msl_pieces(s, node); piece++)
            cut_outlined(solving, node, piece, MUSLIN_CUT_SOURCE_TEMPLATE);
        break;
    case MUSLIN_NODE_SET_IN:
        for (int64_t piece = 0; piece < msl_pieces(s, node); piece++)
            cut_outlined(solving, node, piece, MUSLIN_CUT_SOURCE_MITRED);
        break;
    case MUSLIN_NODE_DIAGONAL:
        msl_cut_diagonal(solving, node);
        break;
    case MUSLIN_NODE_SIXTY:
        msl_cut_sixty(solving, node);
        break;
    default:
        break;
    }
}

/* ---- sorted and made one ---------------------------------------------------------------------------------------- */

enum { TRAITS = 19 };

/* What makes a cut of one fabric and size another one; a template belongs to its shape. */
static void traits_of(const struct muslin_solution_cut *cut, int64_t *traits)
{
    const int64_t all[TRAITS] = { cut->source,
                                  cut->source == MUSLIN_CUT_SOURCE_TEMPLATE ? cut->first_node : 0,
                                  cut->region,
                                  cut->shape,
                                  cut->again,
                                  cut->gives,
                                  cut->grain,
                                  cut->hand,
                                  cut->angle,
                                  cut->pitch,
                                  cut->wide_edge,
                                  cut->narrow_edge,
                                  cut->surplus_width,
                                  cut->surplus_height,
                                  cut->left,
                                  cut->right,
                                  cut->top,
                                  cut->bottom,
                                  0 };
    for (int i = 0; i < TRAITS; i++)
        traits[i] = all[i];
}

/* Of one fabric and size: by traits, then by node. */
static int cut_is_before(const void *context, uint32_t a, uint32_t b)
{
    const struct muslin_solution_cut *cuts = context;
    int64_t first[TRAITS];
    int64_t second[TRAITS];
    traits_of(&cuts[a], first);
    traits_of(&cuts[b], second);
    first[TRAITS - 1] = cuts[a].first_node;
    second[TRAITS - 1] = cuts[b].first_node;
    return list_is_before(first, second, TRAITS);
}

/* Of two that follow each other when sorted. */
static int is_same_cut(const struct muslin_solution_cut *a, const struct muslin_solution_cut *b)
{
    int64_t first[TRAITS];
    int64_t second[TRAITS];
    if (a->fabric != b->fabric || a->cut_height != b->cut_height || a->cut_width != b->cut_width)
        return 0;
    traits_of(a, first);
    traits_of(b, second);
    return !list_is_before(first, second, TRAITS);
}

/* Fields share blanks that are cut again: what one leaves over another uses. Units have shared theirs already. */
static void add_counts(struct muslin_solution_cut *row, const struct muslin_solution_cut *more)
{
    row->count += more->count;
    row->pieces += more->pieces;
    row->spare += more->spare;
    row->upright += more->upright;
    row->quarter += more->quarter;
    row->half += more->half;
    row->three_quarter += more->three_quarter;
    row->scattered += more->scattered;
    row->warnings |= more->warnings;
    if (row->again != MUSLIN_CUT_AGAIN_NO && row->source != MUSLIN_CUT_SOURCE_UNIT)
        msl_count_blanks(row);
}

/* Without direction a rectangle may be cut either way. */
static muslin_len length_of(const struct muslin_solution *s, const struct muslin_solution_cut *row)
{
    const int either_way = row->shape == MUSLIN_CUT_SHAPE_RECTANGLE && print_of(s, row) == MUSLIN_PRINT_NONE;
    return either_way && row->cut_height > row->cut_width ? row->cut_height : row->cut_width;
}

static void warn(const struct muslin_solution *s, struct muslin_solution_cut *row)
{
    const uint32_t fabric = fabric_of(row);
    int shows = (row->quarter + row->three_quarter > 0 && msl_print_shows(s, fabric, 1)) ||
                (row->half > 0 && msl_print_shows(s, fabric, 2)) ||
                (row->scattered > 0 && print_of(s, row) != MUSLIN_PRINT_NONE);
    int small = row->surplus_width < 0 || row->surplus_height < 0;
    row->warnings |= shows ? MUSLIN_WARN_PRINT_TURNED : 0;
    row->warnings |= small ? MUSLIN_WARN_BELOW_EXACT : 0;
    row->warnings |= length_of(s, row) > s->widths[fabric - 1] ? MUSLIN_WARN_LONGER_THAN_WIDTH : 0;
}

/* Notes that the last row of the list needs a node, once. */
static void need_node(struct msl_solving *solving, uint64_t row, uint32_t node, int64_t *nodes)
{
    struct muslin_solution *s = solving->solution;
    const struct msl_need *needs = s->needs.rows;
    if (*nodes > 0 && needs[s->needs.used - 1].node == node)
        return;
    struct msl_need *need = msl_add_row(solving->check, &s->allocator, &s->needs, sizeof *need);
    if (need == NULL)
        return;
    *need = (struct msl_need){ (int64_t)row, node, 0 };
    ++*nodes;
}

/* Rows that lie in order become the list: equal ones are added to the first of them, and the rest move up. */
static void merge_cuts(struct msl_solving *solving)
{
    struct muslin_solution *s = solving->solution;
    struct muslin_solution_cut *rows = s->cuts.rows;
    uint64_t used = 0;
    for (uint64_t i = 0; i < s->cuts.used; i++) {
        const uint32_t node = (uint32_t)muslin_id_number(rows[i].first_node);
        if (used > 0 && is_same_cut(&rows[used - 1], &rows[i])) {
            add_counts(&rows[used - 1], &rows[i]);
        } else {
            rows[used] = rows[i];
            used++;
        }
        need_node(solving, used - 1, node, &rows[used - 1].nodes);
    }
    s->cuts.used = used;
}

/* Brings every row to where its rank says, round by round: each round of places is walked once. */
static void move_cuts(struct muslin_solution_cut *rows, struct msl_rank *ranks, uint64_t n)
{
    for (uint64_t first = 0; first < n; first++) {
        const struct muslin_solution_cut kept = rows[first];
        uint64_t to = first;
        while (ranks[to].row != first) {
            const uint64_t from = ranks[to].row;
            rows[to] = rows[from];
            ranks[to].row = (uint32_t)to;
            to = from;
        }
        rows[to] = kept;
        ranks[to].row = (uint32_t)to;
    }
}

static void sort_cuts(struct msl_solving *solving)
{
    struct muslin_solution *s = solving->solution;
    struct muslin_solution_cut *cuts = s->cuts.rows;
    const uint64_t n = s->cuts.used;
    struct msl_rank *ranks = msl_scratch(solving->check, &s->allocator, 2 * n, sizeof *ranks);
    if (ranks == NULL)
        return;
    for (uint64_t i = 0; i < n; i++)
        ranks[i] = (struct msl_rank){ -cuts[i].cut_height, -cuts[i].cut_width, fabric_of(&cuts[i]), (uint32_t)i };
    msl_sort(ranks, ranks + n, n, cut_is_before, cuts);
    move_cuts(cuts, ranks, n);
    msl_scratch_free(&s->allocator, ranks, 2 * n, sizeof *ranks);
    merge_cuts(solving);
    for (uint64_t i = 0; i < s->cuts.used; i++)
        warn(s, &cuts[i]);
}

void msl_make_cuts(struct msl_solving *solving)
{
    struct muslin_solution *s = solving->solution;
    for (uint32_t node = 1; node <= s->root && solving->check->status == MUSLIN_OK; node++)
        if (msl_copies(&s->cut[node - 1]) > 0)
            cut_node(solving, node);
    cut_sets(solving);
    if (solving->check->status == MUSLIN_OK)
        msl_cut_units(solving);
    if (solving->check->status == MUSLIN_OK)
        sort_cuts(solving);
}
