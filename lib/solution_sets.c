/* solution_sets.c - joins that can be strip-pieced: what a set gives, and whether it takes fewer cuts.
 *
 * SPDX-License-Identifier: MIT */
#include "solution_cuts.h"

/* ---- which joins ------------------------------------------------------------------------------------------------ */

uint32_t msl_patch_under(const struct muslin_solution *solution, uint32_t node)
{
    if (msl_node_row(solution->quilt, node)->kind == MUSLIN_NODE_TURN)
        node = (uint32_t)msl_node_args(solution->quilt, node)[TURN_CHILD];
    return msl_node_row(solution->quilt, node)->kind == MUSLIN_NODE_PATCH ? node : 0;
}

static uint32_t child_of(const struct muslin_solution *solution, uint32_t join, int64_t k)
{
    return (uint32_t)msl_node_args(solution->quilt, join)[JOIN_CHILDREN + k];
}

static int32_t axis_of(const struct muslin_solution *solution, uint32_t join)
{
    return msl_node_args(solution->quilt, join)[JOIN_AXIS];
}

/* Finished size along an axis. */
static muslin_len reach(const struct msl_size *size, int32_t axis)
{
    return axis == MUSLIN_AXIS_ACROSS ? size->width : size->height;
}

/* Patches alone, of one finished length across the join, with equal allowances at the ends of that length. */
static int can_be_set(const struct muslin_solution *s, uint32_t join)
{
    const struct msl_edges edges = msl_edges_along(axis_of(s, join));
    const int32_t across = axis_of(s, join) == MUSLIN_AXIS_ACROSS ? MUSLIN_AXIS_DOWN : MUSLIN_AXIS_ACROSS;
    const struct msl_size *first = msl_size_of(s, child_of(s, join, 0));
    const int64_t n = msl_parts(s, join);
    for (int64_t k = 0; k < n; k++) {
        const struct msl_size *size = msl_size_of(s, child_of(s, join, k));
        int alike = reach(size, across) == reach(first, across) && size->edge[edges.side] == first->edge[edges.side] &&
                    size->edge[edges.other_side] == first->edge[edges.other_side];
        if (!alike || msl_patch_under(s, child_of(s, join, k)) == 0)
            return 0;
    }
    return 1;
}

/* ---- strips ----------------------------------------------------------------------------------------------------- */

int msl_print_shows(const struct muslin_solution *solution, uint32_t fabric, int32_t quarters)
{
    int32_t allowed = 0;
    (void)muslin_print_may_turn(solution->quilt->fabrics[fabric - 1].print, quarters, &allowed, NULL);
    return !allowed;
}

static int32_t turn_of(const struct muslin_solution *solution, uint32_t node)
{
    int turned = msl_node_row(solution->quilt, node)->kind == MUSLIN_NODE_TURN;
    return turned ? msl_node_args(solution->quilt, node)[TURN_HOW] & MSL_TURN_QUARTERS : 0;
}

struct msl_set_strip msl_set_strip_of(const struct muslin_solution *solution, uint32_t join, int64_t k)
{
    const uint32_t child = child_of(solution, join, k);
    const struct msl_size *size = msl_size_of(solution, child);
    const int32_t axis = axis_of(solution, join);
    const struct msl_edges edges = msl_edges_along(axis);
    const int32_t odd = axis == MUSLIN_AXIS_ACROSS;
    struct msl_set_strip strip = { .turn = turn_of(solution, child) };
    strip.fabric = (uint32_t)msl_node_args(solution->quilt, msl_patch_under(solution, child))[PATCH_FABRIC];
    strip.cut = reach(size, axis) + msl_allowances(solution, size->edge[edges.first], size->edge[edges.last]);
    if ((strip.turn & 1) != odd) {
        strip.turn = (strip.turn + 1) & MSL_TURN_QUARTERS;
        strip.shows = msl_print_shows(solution, strip.fabric, 1);
    }
    for (int edge = MSL_LEFT; edge < MSL_EDGES; edge++)
        strip.edge[msl_edge_before(strip.turn, (enum msl_edge)edge)] = size->edge[edge];
    return strip;
}

static muslin_len width_of(const struct muslin_solution *s, uint32_t fabric)
{
    return s->widths[fabric - 1];
}

/* ---- what a set gives ------------------------------------------------------------------------------------------- */

/* Cut from the ends that the flags say. */
static struct muslin_yield yield_of(const struct muslin_solution *s, uint32_t flags, muslin_len strip, muslin_len cut)
{
    struct muslin_yield_spec spec = MUSLIN_YIELD_SPEC_INIT;
    struct muslin_yield yield = { .size = sizeof yield };
    spec.flags = flags;
    spec.strip_length = strip;
    spec.segment_cut = cut;
    spec.end_trim = s->spec.end_trim;
    spec.resquare_loss = s->spec.resquare_loss;
    spec.resquare_every = s->spec.resquare_every;
    spec.fold_clear = flags == 0 ? s->spec.fold_clear : 0;
    if (cut <= strip) /* else none, and it may be longer than any strip can be */
        (void)muslin_stripset_yield(&spec, &yield, NULL);
    return yield;
}

/* What all its strips say: the narrowest width and whether a print would show. */
static int look_at_strips(const struct muslin_solution *s, uint32_t join, struct muslin_stripset *set)
{
    int shows = 0;
    for (int64_t k = 0; k < set->strips; k++) {
        struct msl_set_strip strip = msl_set_strip_of(s, join, k);
        muslin_len width = width_of(s, strip.fabric);
        if (k > 0 && width != set->strip_length)
            set->warnings |= MUSLIN_WARN_MIXED_WIDTHS;
        if (k == 0 || width < set->strip_length)
            set->strip_length = width;
        shows |= strip.shows;
    }
    if (shows)
        set->warnings |= MUSLIN_WARN_PRINT_TURNED;
    return shows;
}

/* Whether a segment turned end for end looks as before: its strips are the same read from either end, and nobody wants
 * them in this order. */
static int may_turn(const struct muslin_solution *s, uint32_t join, const struct muslin_stripset *set)
{
    const struct msl_edges edges = msl_edges_along(axis_of(s, join));
    const struct msl_size *size = msl_size_of(s, join);
    if ((msl_node_args(s->quilt, join)[JOIN_FLAGS] & (int32_t)MUSLIN_QUILT_JOIN_KEEPS_ORDER) != 0 ||
        size->edge[edges.side] != size->edge[edges.other_side])
        return 0;
    for (int64_t k = 0; k < set->strips; k++) {
        struct msl_set_strip strip = msl_set_strip_of(s, join, k);
        struct msl_set_strip other = msl_set_strip_of(s, join, set->strips - 1 - k);
        const struct msl_size *here = msl_size_of(s, child_of(s, join, k));
        const struct msl_size *there = msl_size_of(s, child_of(s, join, set->strips - 1 - k));
        if (strip.fabric != other.fabric || strip.cut != other.cut ||
            here->edge[edges.first] != there->edge[edges.last] || msl_print_shows(s, strip.fabric, 2))
            return 0;
    }
    return 1;
}

static struct muslin_stripset set_of(const struct muslin_solution *s, uint32_t join)
{
    const int32_t axis = axis_of(s, join);
    const int32_t across = axis == MUSLIN_AXIS_ACROSS ? MUSLIN_AXIS_DOWN : MUSLIN_AXIS_ACROSS;
    const struct msl_edges edges = msl_edges_along(axis);
    const struct msl_size *size = msl_size_of(s, join);
    struct muslin_stripset set = { .size = sizeof set };
    set.node = msl_id(s->quilt, MUSLIN_SORT_NODE, join);
    set.strips = msl_parts(s, join);
    set.set_unfinished = reach(size, axis) + msl_allowances(s, size->edge[edges.first], size->edge[edges.last]);
    set.segment_cut = reach(size, across) + msl_allowances(s, size->edge[edges.side], size->edge[edges.other_side]);
    set.segments = msl_copies(&s->counts[join - 1]);
    return set;
}

/* ---- cuts counted ----------------------------------------------------------------------------------------------- */

struct finding {
    struct msl_solving *solving;
    struct msl_rank *ranks; /* twice `room` */
    uint64_t room;          /* children of the largest join that can be a set */
};

/* Pieces from one strip of their own height, or where they are longer than that, of their own width. */
static int64_t pieces_in_strip(const struct muslin_solution *s, uint32_t fabric, muslin_len width, muslin_len height)
{
    muslin_len strip = width_of(s, fabric);
    int64_t pieces = yield_of(s, MUSLIN_YIELD_FROM_ONE_END, strip, width).segments;
    return pieces != 0 ? pieces : yield_of(s, MUSLIN_YIELD_FROM_ONE_END, strip, height).segments;
}

/* Patches cut by themselves: equal ones of the join share their strips. */
static int64_t cuts_apart(const struct finding *finding, uint32_t join, int64_t segments)
{
    const struct muslin_solution *s = finding->solving->solution;
    const int64_t n = msl_parts(s, join);
    int64_t cuts = 0;
    for (int64_t k = 0; k < n; k++) {
        uint32_t patch = msl_patch_under(s, child_of(s, join, k));
        int32_t laid = 0;
        struct muslin_solution_cut cut = msl_patch_cut(s, patch, 0, &laid);
        uint32_t fabric = (uint32_t)muslin_id_number(cut.fabric);
        finding->ranks[k] = (struct msl_rank){ cut.cut_height, cut.cut_width, fabric, 0 };
    }
    msl_sort(finding->ranks, finding->ranks + finding->room, (uint64_t)n, NULL, NULL);
    for (int64_t k = 0, first = 0; k < n; k++) {
        const struct msl_rank *this = &finding->ranks[k];
        const struct msl_rank *next = this + 1;
        if (k + 1 < n && next->group == this->group && next->first == this->first && next->second == this->second)
            continue;
        int64_t pieces = (k + 1 - first) * segments;
        cuts += pieces + msl_divided_up(pieces, pieces_in_strip(s, this->group, this->second, this->first));
        first = k + 1;
    }
    return cuts;
}

/* WHERE_FEWER: fewer cuts, no print that would show it, and a set of which at least half is needed. */
static int32_t is_used(const struct muslin_solution *s, uint32_t join, const struct muslin_stripset *set, int shows)
{
    int32_t piecing = msl_node_args(s->quilt, join)[JOIN_PIECING];
    if (piecing != MUSLIN_STRIP_PIECING_WHERE_FEWER)
        return piecing == MUSLIN_STRIP_PIECING_ALWAYS;
    return s->spec.strip_piecing == MUSLIN_STRIP_PIECING_WHERE_FEWER && set->cuts_in_sets < set->cuts_apart &&
           set->spare <= set->segments && !shows;
}

static void find_set(const struct finding *finding, uint32_t join)
{
    struct msl_solving *solving = finding->solving;
    struct muslin_solution *s = solving->solution;
    struct muslin_stripset set = set_of(s, join);
    int shows = look_at_strips(s, join, &set);
    struct muslin_yield yield = yield_of(s, s->spec.flags, set.strip_length, set.segment_cut);
    if (yield.segments == 0) {
        if (msl_node_args(s->quilt, join)[JOIN_PIECING] == MUSLIN_STRIP_PIECING_ALWAYS) {
            solving->check->at = join;
            msl_fail(solving->check, MUSLIN_ERR_NO_YIELD, MUSLIN_ARG_SEGMENT_CUT, set.segment_cut, set.strip_length);
        }
        return;
    }
    set.segments_per_set = yield.segments;
    set.sets = msl_divided_up(set.segments, yield.segments);
    set.spare = set.sets * yield.segments - set.segments;
    set.shorter_by = yield.shorter_by;
    set.warnings |= yield.warnings;
    set.cuts_apart = cuts_apart(finding, join, set.segments);
    set.cuts_in_sets = set.sets * set.strips + set.segments;
    set.turns = may_turn(s, join, &set);
    set.used = is_used(s, join, &set, shows);
    msl_size_of(s, join)->as_set = (uint8_t)set.used;
    struct muslin_stripset *row = msl_add_row(solving->check, &s->allocator, &s->sets, sizeof *row);
    if (row != NULL)
        *row = set;
}

/* ---- all of them ------------------------------------------------------------------------------------------------ */

static int is_join(const struct muslin_solution *s, uint32_t node)
{
    return msl_node_row(s->quilt, node)->kind == MUSLIN_NODE_JOIN && msl_copies(&s->counts[node - 1]) > 0;
}

/* A join that must be strip-pieced and cannot be is a failure. */
static uint64_t largest_set(struct msl_solving *solving)
{
    const struct muslin_solution *s = solving->solution;
    int64_t largest = 0;
    for (uint32_t node = 1; node <= s->root && solving->check->status == MUSLIN_OK; node++) {
        if (!is_join(s, node))
            continue;
        int can = can_be_set(s, node);
        if (can && msl_parts(s, node) > largest)
            largest = msl_parts(s, node);
        if (!can && msl_node_args(s->quilt, node)[JOIN_PIECING] == MUSLIN_STRIP_PIECING_ALWAYS) {
            solving->check->at = node;
            msl_fail(solving->check, MUSLIN_ERR_METHOD, MUSLIN_ARG_STRIP_PIECING, MUSLIN_STRIP_PIECING_ALWAYS, 0);
        }
    }
    return (uint64_t)largest;
}

/* Copies that are cut by themselves: from the root downwards, but not into a set. */
static void count_cut(struct muslin_solution *s)
{
    s->cut[s->root - 1] = s->counts[s->root - 1];
    for (uint32_t node = s->root; node > 0; node--)
        if (msl_copies(&s->cut[node - 1]) > 0 && !msl_size_of(s, node)->as_set)
            msl_count_parts(s, s->cut, node);
}

void msl_find_sets(struct msl_solving *solving)
{
    struct muslin_solution *s = solving->solution;
    struct finding finding = { solving, NULL, largest_set(solving) };
    finding.ranks = msl_scratch(solving->check, &s->allocator, 2 * finding.room, sizeof *finding.ranks);
    if (finding.ranks == NULL)
        return;
    for (uint32_t node = 1; node <= s->root && solving->check->status == MUSLIN_OK; node++)
        if (is_join(s, node) && can_be_set(s, node))
            find_set(&finding, node);
    msl_scratch_free(&s->allocator, finding.ranks, 2 * finding.room, sizeof *finding.ranks);
    if (solving->check->status == MUSLIN_OK)
        count_cut(s);
}
