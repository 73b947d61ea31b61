/* pressing.c - a pressing plan: the choices there are, and how many copies are pressed either way in the end.
 *
 * SPDX-License-Identifier: MIT */
#include "pressing_inside.h"
#include "unit_inside.h"

enum { PRESSING_SPEC_LEAST = sizeof(struct muslin_pressing_spec) };

/* Joins of more children than this, whose order repeats after no more than half as many, are pressed alike from the
 * second repeat on. */
enum { PLACES_APART = 64, REPEAT_MOST = PLACES_APART / 2 };

/* Ends of seams, and pairs of edges' ends, that are looked at in all. */
enum { ENDS_MOST = 67108864 };

#define WORK_MOST (INT64_C(1) << 40)

muslin_status muslin_pressing_spec_init(struct muslin_pressing_spec *spec, uint32_t size)
{
    static const struct muslin_pressing_spec initial = MUSLIN_PRESSING_SPEC_INIT;
    return msl_init_struct(spec, size, &initial, sizeof initial, PRESSING_SPEC_LEAST);
}

/* ---- numbering -------------------------------------------------------------------------------------------------- */

static int is_join(const struct muslin_pressing *plan, uint32_t node)
{
    return msl_kind_of(plan, node) == MUSLIN_NODE_JOIN;
}

/* The part, where it carries seams, else 0: others are all alike. */
static uint32_t carrying_part(const struct muslin_pressing *plan, uint32_t node, int64_t k)
{
    uint32_t part = msl_part(plan->solution, node, k).node;
    return msl_pressed(plan, part)->carries ? part : 0;
}

static int repeats_after(const struct muslin_pressing *plan, uint32_t node, int64_t repeat, int64_t parts)
{
    int64_t k = repeat;
    while (k < parts && carrying_part(plan, node, k) == carrying_part(plan, node, k - repeat))
        k++;
    return k == parts;
}

/* Twice the repeat: each of its parts can be taken as it is in one and the other way in the next. */
static int64_t places_of(const struct muslin_pressing *plan, uint32_t node)
{
    const int64_t parts = msl_parts(plan->solution, node);
    if (!is_join(plan, node) || parts <= PLACES_APART)
        return parts;
    for (int64_t repeat = 1; repeat <= REPEAT_MOST; repeat++)
        if (repeats_after(plan, node, repeat, parts))
            return 2 * repeat;
    return parts;
}

/* What a seam joins: how dark it is (0: several fabrics, or not stated), and its region in a unit. */
struct joined {
    int32_t darkness;
    int32_t region;
};

static int32_t darkness_of(const struct muslin_solution *s, uint32_t node)
{
    const struct msl_row *row = msl_node_row(s->quilt, node);
    while (row->kind == MUSLIN_NODE_TURN || row->kind == MUSLIN_NODE_TRIM) {
        node = msl_part(s, node, 0).node;
        row = msl_node_row(s->quilt, node);
    }
    if (row->kind != MUSLIN_NODE_PATCH)
        return 0;
    return s->quilt->fabrics[msl_node_args(s->quilt, node)[PATCH_FABRIC] - 1].darkness;
}

/* Number `which` of a node's pieces and parts. */
static struct joined joined_of(const struct muslin_solution *s, uint32_t node, int64_t which)
{
    const int64_t pieces = msl_pieces(s, node);
    if (which >= pieces)
        return (struct joined){ .darkness = darkness_of(s, msl_part(s, node, which - pieces).node) };
    struct msl_ring ring;
    msl_outline(s, node, which, MUSLIN_STAGE_FINISHED, &ring);
    return (struct joined){ s->quilt->fabrics[ring.fabric - 1].darkness, ring.region };
}

static int is_unit(const struct muslin_solution *s, uint32_t node)
{
    return msl_node_row(s->quilt, node)->kind == MUSLIN_NODE_UNIT;
}

/* How a recipe presses a seam of its unit: towards its first piece (1) or its second (2), or open (0). The long seam of
 * a quarter-square is opened, the short ones that end in its middle are not. */
static uint8_t recipe_way(const struct muslin_solution *s, uint32_t node, const struct msl_seam *seam)
{
    const int32_t *args = msl_node_args(s->quilt, node);
    const struct msl_size *size = msl_size_of(s, node);
    const int from_middle = 2 * seam->from_x == size->width || 2 * seam->to_x == size->width;
    if (args[UNIT_KIND] == MUSLIN_UNIT_QUARTER_SQUARE && !from_middle)
        return 0;
    const int32_t first = joined_of(s, node, seam->first).region;
    const int32_t towards = msl_unit_pressed_to(args[UNIT_KIND], args[UNIT_METHOD], first,
                                                joined_of(s, node, seam->second).region);
    return towards == 0 ? 0 : towards == first ? 1 : 2;
}

/* Whether every copy of the node must be pressed as it is shown. */
static int asks_for_a_way(const struct muslin_pressing *plan, uint32_t node, int64_t seams)
{
    if (is_join(plan, node)) {
        const int32_t press = msl_node_args(plan->solution->quilt, node)[JOIN_PRESS];
        return press == MUSLIN_SEAM_PRESS_TO_FIRST || press == MUSLIN_SEAM_PRESS_TO_LAST;
    }
    if (plan->spec.units == 0 || !is_unit(plan->solution, node))
        return 0;
    int asks = 0;
    for (int64_t k = 0; k < seams; k++) {
        const struct msl_seam seam = msl_seam(plan->solution, node, k);
        asks |= recipe_way(plan->solution, node, &seam) != 0;
    }
    return asks;
}

/* Whether someone wants the node's own pieces in their order. */
static int keeps_order(const struct muslin_pressing *plan, uint32_t node)
{
    const int32_t *args = msl_node_args(plan->solution->quilt, node);
    return is_join(plan, node) && (args[JOIN_FLAGS] & (int32_t)MUSLIN_QUILT_JOIN_KEEPS_ORDER) != 0;
}

/* What a node holds: *places is set where it holds any. Returns its own seams; nodes that the root does not hold have
 * nothing. */
static int64_t look_into(struct muslin_pressing *plan, uint32_t node, int64_t *places)
{
    struct msl_pressed_node *pressed = msl_pressed(plan, node);
    if (msl_copies_of(plan, node) == 0)
        return 0;
    const int64_t seams = msl_seams(plan->solution, node);
    const int64_t parts = msl_parts(plan->solution, node);
    int carries = 0;
    pressed->asks = (uint8_t)asks_for_a_way(plan, node, seams);
    pressed->stiff = pressed->asks;
    pressed->ordered = (uint8_t)keeps_order(plan, node);
    for (int64_t k = 0; k < parts; k++) {
        const struct msl_pressed_node *part = msl_pressed(plan, msl_part(plan->solution, node, k).node);
        carries |= part->carries;
        pressed->stiff |= part->stiff;
        pressed->ordered |= part->ordered;
    }
    pressed->carries = (uint8_t)(carries || seams > 0);
    if (carries)
        *places = places_of(plan, node);
    return seams;
}

static void number_nodes(struct muslin_pressing *plan)
{
    static const struct msl_pressed_node none;
    for (uint32_t node = 1; node <= plan->nodes; node++) {
        struct msl_pressed_node *pressed = msl_pressed(plan, node);
        *pressed = none;
        pressed->first_seam = plan->seams;
        pressed->first_place = plan->places;
        int64_t places = 0;
        plan->seams += (uint32_t)look_into(plan, node, &places);
        plan->places += (uint32_t)places;
    }
    plan->node[plan->nodes].first_seam = plan->seams;
    plan->node[plan->nodes].first_place = plan->places;
}

/* How much there is to look at: no quilt comes near the limit, but a few nodes can describe an edge of a thousand
 * million pieces. */
static int64_t pieces_round(const struct msl_size *size)
{
    return size->along[MSL_LEFT] + size->along[MSL_RIGHT] + size->along[MSL_TOP] + size->along[MSL_BOTTOM];
}

/* Pieces round all parts that are held against each other: each has its edges looked at twice. */
static int64_t pieces_between(const struct muslin_pressing *plan, uint32_t node)
{
    const int64_t places = msl_own_places(plan, node);
    int64_t pieces = 0;
    for (int64_t k = 0; k < places; k++)
        pieces += pieces_round(msl_size_of(plan->solution, msl_part(plan->solution, node, k).node));
    return pieces;
}

static void want_few_ends(struct msl_check *check, const struct muslin_pressing *plan)
{
    int64_t ends = 0;
    for (uint32_t node = 1; node <= plan->nodes && ends <= ENDS_MOST; node++)
        if (msl_pressed(plan, node)->carries)
            ends += pieces_round(msl_size_of(plan->solution, node)) + pieces_between(plan, node);
    if (ends > ENDS_MOST)
        msl_fail(check, MUSLIN_ERR_WORK_LIMIT, MUSLIN_ARG_SEAMS, ends, ENDS_MOST);
}

/* ---- choices ---------------------------------------------------------------------------------------------------- */

/* When joins are pressed in turn, every second part is taken the other way. */
static uint8_t in_turn(const struct muslin_pressing *plan, uint32_t node, int64_t k)
{
    return is_join(plan, node) && (k & 1) != 0;
}

/* Gives places their bits, from the root down: the first place that takes a node has none. A node is `reversed` when,
 * all being pressed in turn, that first place takes it the other way. Of nodes whose way is asked for each place has a
 * bit, if they may be turned. */
static void give_bits(struct muslin_pressing *plan)
{
    plan->bits = plan->seams;
    for (uint32_t node = plan->nodes; node > 0; node--) {
        const struct msl_pressed_node *pressed = msl_pressed(plan, node);
        const int64_t places = msl_own_places(plan, node);
        for (int64_t k = 0; k < places; k++) {
            const uint32_t number = msl_part(plan->solution, node, k).node;
            struct msl_pressed_node *part = msl_pressed(plan, number);
            uint32_t *bit = &plan->place_bit[msl_pressing_place(plan, node, k)];
            const int is_held = part->choice == MSL_CHOICE_KEPT ||
                                (part->stiff && plan->turnings == MSL_TURN_NO_HELD);
            part->trimmed |= pressed->trimmed | (msl_kind_of(plan, node) == MUSLIN_NODE_TRIM);
            *bit = 0;
            if (!part->carries || is_held)
                continue;
            if (part->seen || part->stiff)
                *bit = plan->bits++;
            else
                part->reversed = pressed->reversed ^ in_turn(plan, node, k);
            part->seen = 1;
        }
    }
}

/* The way of every bit when all is pressed in turn: seams to their first piece, every second part the other way. */
static void press_in_turn(const struct muslin_pressing *plan, uint8_t *ways)
{
    for (uint32_t node = 1; node <= plan->nodes; node++) {
        const struct msl_pressed_node *pressed = msl_pressed(plan, node);
        const uint32_t seams = msl_own_seams(plan, node);
        const int64_t places = msl_own_places(plan, node);
        for (uint32_t k = 0; k < seams; k++)
            ways[pressed->first_seam + k] = pressed->reversed;
        for (int64_t k = 0; k < places; k++) {
            const uint32_t bit = plan->place_bit[msl_pressing_place(plan, node, k)];
            const struct msl_pressed_node *part = msl_pressed(plan, msl_part(plan->solution, node, k).node);
            if (bit != 0)
                ways[bit] = !part->stiff && (in_turn(plan, node, k) ^ pressed->reversed ^ part->reversed);
        }
    }
}

/* Towards the darker side; of a unit whose fabrics do not tell, as its recipe says. */
static uint8_t wish_of(const struct muslin_solution *s, uint32_t node, const struct msl_seam *seam)
{
    const struct joined first = joined_of(s, node, seam->first);
    const struct joined second = joined_of(s, node, seam->second);
    if (first.darkness > 0 && second.darkness > 0 && first.darkness != second.darkness)
        return first.darkness > second.darkness ? 1 : 2;
    return is_unit(s, node) ? recipe_way(s, node, seam) : 0;
}

/* A unit's seam held to its recipe. */
static struct msl_seam_way held_way(const struct muslin_solution *s, uint32_t node, const struct msl_seam *seam)
{
    const uint8_t towards = recipe_way(s, node, seam);
    return (struct msl_seam_way){ .way = towards == 2,
                                  .held = towards == 0 ? MSL_HELD_OPEN : MSL_HELD_ASKED,
                                  .wish = towards };
}

static void ask_seams(struct muslin_pressing *plan, uint32_t node)
{
    const int32_t press = is_join(plan, node) ? msl_node_args(plan->solution->quilt, node)[JOIN_PRESS]
                                              : MUSLIN_SEAM_PRESS_FREE;
    const uint32_t seams = msl_own_seams(plan, node);
    for (uint32_t k = 0; k < seams; k++) {
        struct msl_seam_way way = { .way = press == MUSLIN_SEAM_PRESS_TO_LAST, .held = MSL_HELD_FREE };
        if (press == MUSLIN_SEAM_PRESS_TO_FIRST || press == MUSLIN_SEAM_PRESS_TO_LAST)
            way.held = MSL_HELD_ASKED;
        if (press == MUSLIN_SEAM_PRESS_OPEN)
            way.held = MSL_HELD_OPEN;
        const struct msl_seam seam = msl_seam(plan->solution, node, k);
        if (plan->spec.prefer == MUSLIN_PREFER_DARKER && way.held != MSL_HELD_OPEN)
            way.wish = wish_of(plan->solution, node, &seam);
        if (plan->spec.units != 0 && is_unit(plan->solution, node))
            way = held_way(plan->solution, node, &seam);
        plan->seam[msl_pressed(plan, node)->first_seam + k] = way;
    }
}

/* ---- what came out ---------------------------------------------------------------------------------------------- */

void msl_count_parts_of(const struct muslin_pressing *plan, uint32_t node)
{
    const struct msl_pressed_node *pressed = msl_pressed(plan, node);
    const int64_t parts = msl_own_places(plan, node) > 0 ? msl_parts(plan->solution, node) : 0;
    int64_t ways[2] = { pressed->as_shown, pressed->other_way };
    if (pressed->turn != 0) {
        ways[pressed->reversed] += ways[!pressed->reversed];
        ways[!pressed->reversed] = 0;
    }
    for (int64_t k = 0; k < parts; k++) {
        const uint32_t number = carrying_part(plan, node, k);
        if (number == 0)
            continue;
        struct msl_pressed_node *part = msl_pressed(plan, number);
        const int other = plan->place_way[msl_pressing_place(plan, node, k)];
        part->as_shown += ways[other];
        part->other_way += ways[!other];
    }
}

void msl_begin_count(const struct muslin_pressing *plan)
{
    for (uint32_t node = 1; node <= plan->nodes; node++) {
        struct msl_pressed_node *pressed = msl_pressed(plan, node);
        pressed->as_shown = node == plan->nodes ? plan->solution->spec.tops : 0;
        pressed->other_way = 0;
        pressed->reversed = 0;
    }
}

/* Seams of a node that are pressed against what is preferred, less those that are pressed so. */
static int64_t against_wishes(const struct muslin_pressing *plan, uint32_t node)
{
    const struct msl_seam_way *seams = plan->seam + msl_pressed(plan, node)->first_seam;
    const uint32_t n = msl_own_seams(plan, node);
    int64_t against = 0;
    for (uint32_t k = 0; k < n; k++)
        if (seams[k].wish != 0)
            against += seams[k].wish == seams[k].way + 1 ? -1 : 1;
    return against;
}

/* A node is shown as most of its copies are pressed, or as it is asked for. */
static int is_better_reversed(const struct muslin_pressing *plan, uint32_t node)
{
    const struct msl_pressed_node *pressed = msl_pressed(plan, node);
    if (msl_own_seams(plan, node) == 0 || pressed->stiff)
        return 0;
    if (pressed->as_shown != pressed->other_way)
        return pressed->other_way > pressed->as_shown;
    return against_wishes(plan, node) > 0;
}

/* By how many quarters copies the other way are turned; 0: they are pressed. */
static uint8_t turn_of(struct msl_nesting *nesting, uint32_t node)
{
    const struct msl_pressed_node *pressed = msl_pressed(nesting->plan, node);
    if ((pressed->reversed ? pressed->as_shown : pressed->other_way) == 0)
        return 0;
    for (uint32_t i = pressed->first_turning; i < nesting->plan->node[node].first_turning; i++) {
        struct msl_turning *turning = msl_turning_at(nesting, i);
        if (turning->holds && msl_is_alike(nesting, turning))
            return turning->turn;
    }
    return 0;
}

/* The first node, from the root down, that is taken the other way though it can neither be turned nor pressed so. */
static void note_broken(struct msl_nesting *nesting, uint32_t node)
{
    struct muslin_pressing *plan = nesting->plan;
    const struct msl_pressed_node *pressed = msl_pressed(plan, node);
    if (!pressed->stiff || pressed->choice != MSL_CHOICE_FREE || pressed->other_way == 0 || pressed->turn != 0)
        return;
    if (plan->broken.node != 0 || msl_can_be_pressed(plan, node))
        return;
    plan->broken = (struct msl_chosen){ .node = node, .choice = MSL_CHOICE_FREE };
    for (uint32_t i = pressed->first_turning; i < plan->node[node].first_turning; i++)
        plan->broken.choices |= (uint8_t)(1 << msl_turning_at(nesting, i)->turn);
}

/* From the root down: what is turned as a whole leaves its parts as they are. */
static void find_ways_shown(struct msl_nesting *nesting)
{
    struct muslin_pressing *plan = nesting->plan;
    msl_begin_count(plan);
    for (uint32_t node = plan->nodes; node > 0; node--) {
        struct msl_pressed_node *pressed = msl_pressed(plan, node);
        pressed->reversed = (uint8_t)is_better_reversed(plan, node);
        pressed->turn = turn_of(nesting, node);
        note_broken(nesting, node);
        msl_count_parts_of(plan, node);
    }
}

static void reverse_seams(const struct muslin_pressing *plan, uint32_t node)
{
    struct msl_pressed_node *pressed = msl_pressed(plan, node);
    const int64_t as_shown = pressed->as_shown;
    pressed->as_shown = pressed->other_way;
    pressed->other_way = as_shown;
    const uint32_t n = msl_own_seams(plan, node);
    for (uint32_t k = 0; k < n; k++)
        plan->seam[pressed->first_seam + k].way ^= 1;
}

static void show_reversed(const struct muslin_pressing *plan)
{
    for (uint32_t node = 1; node <= plan->nodes; node++) {
        const int64_t places = msl_own_places(plan, node);
        if (msl_pressed(plan, node)->reversed)
            reverse_seams(plan, node);
        for (int64_t k = 0; k < places; k++) {
            const struct msl_pressed_node *part = msl_pressed(plan, msl_part(plan->solution, node, k).node);
            if (part->carries)
                plan->place_way[msl_pressing_place(plan, node, k)] ^=
                    msl_pressed(plan, node)->reversed ^ part->reversed;
        }
    }
}

/* Seams pressed open are the same the other way; turned, they are told with what they lie in. */
static int is_taken_alike(const struct muslin_pressing *plan, const struct msl_pressed_node *pressed)
{
    return pressed->turn == 0 && plan->seam[pressed->first_seam].held == MSL_HELD_OPEN;
}

static void sum_up(struct muslin_pressing *plan)
{
    for (uint32_t node = 1; node <= plan->nodes; node++) {
        const struct msl_pressed_node *pressed = msl_pressed(plan, node);
        if (msl_own_seams(plan, node) == 0 || is_taken_alike(plan, pressed))
            continue;
        plan->totals.other_way += pressed->other_way;
        plan->totals.copies_turned += pressed->turn != 0 ? pressed->other_way : 0;
    }
    plan->totals.proven = plan->totals.exceptions == plan->totals.least;
}

/* ---- made ------------------------------------------------------------------------------------------------------- */

void muslin_pressing_free(struct muslin_pressing *plan)
{
    if (plan == NULL)
        return;
    const struct muslin_allocator a = plan->allocator;
    msl_scratch_free(&a, plan->node, (uint64_t)plan->nodes + 1, sizeof plan->node[0]);
    msl_scratch_free(&a, plan->seam, plan->seams, sizeof plan->seam[0]);
    msl_scratch_free(&a, plan->place_bit, plan->places, sizeof plan->place_bit[0]);
    msl_scratch_free(&a, plan->place_way, plan->places, sizeof plan->place_way[0]);
    msl_free_rows(&a, &plan->met, sizeof(struct msl_met));
    msl_scratch_free(&a, plan, 1, sizeof *plan);
}

/* What is asked, and whom it is told. */
struct request {
    const struct muslin_solution *solution;
    const struct muslin_allocator *allocator;
    struct muslin_pressing_spec spec;
    struct msl_told told;
};

static struct muslin_pressing *begin_plan(struct msl_check *check, const struct request *request, int32_t turnings,
                                          const struct msl_chosen *chosen, uint32_t n)
{
    const struct muslin_allocator *a = request->allocator;
    static const struct muslin_pressing none;
    struct muslin_pressing *plan = msl_scratch(check, a, 1, sizeof *plan);
    if (plan == NULL)
        return NULL;
    *plan = none;
    plan->solution = request->solution;
    plan->allocator = *a;
    plan->spec = request->spec;
    plan->turnings = turnings;
    plan->nodes = request->solution->root;
    plan->node = msl_scratch(check, a, (uint64_t)plan->nodes + 1, sizeof plan->node[0]);
    if (check->status == MUSLIN_OK)
        number_nodes(plan);
    for (uint32_t i = 0; check->status == MUSLIN_OK && i < n; i++)
        msl_pressed(plan, chosen[i].node)->choice = chosen[i].choice;
    if (check->status == MUSLIN_OK)
        want_few_ends(check, plan);
    plan->seam = msl_scratch(check, a, plan->seams, sizeof plan->seam[0]);
    plan->place_bit = msl_scratch(check, a, plan->places, sizeof plan->place_bit[0]);
    plan->place_way = msl_scratch(check, a, plan->places, sizeof plan->place_way[0]);
    if (check->status == MUSLIN_OK)
        give_bits(plan);
    for (uint32_t node = 1; check->status == MUSLIN_OK && node <= plan->nodes; node++)
        ask_seams(plan, node);
    return plan;
}

static void end_nesting(struct msl_nesting *nesting)
{
    const struct muslin_allocator *a = &nesting->plan->allocator;
    msl_free_rows(a, &nesting->rules, sizeof(struct msl_rule));
    msl_free_rows(a, &nesting->terms, sizeof(uint32_t));
    msl_free_rows(a, &nesting->sum, sizeof(uint32_t));
    msl_free_rows(a, &nesting->turnings, sizeof(struct msl_turning));
    msl_free_rows(a, &nesting->turned_ends, sizeof(struct msl_turned_end));
    msl_free_rows(a, &nesting->turned_bits, sizeof(uint32_t));
    msl_free_rows(a, &nesting->low, sizeof(struct msl_end));
    msl_free_rows(a, &nesting->high, sizeof(struct msl_end));
    msl_scratch_free(a, nesting->table, nesting->places, sizeof(uint32_t));
}

static void make_plan(struct msl_check *check, struct muslin_pressing *plan, struct msl_told *told, int bounds_all)
{
    const struct muslin_allocator *a = &plan->allocator;
    struct msl_nesting nesting = { .plan = plan,
                                   .check = check,
                                   .told = told,
                                   .bounds_all = bounds_all };
    uint8_t *alternating = msl_scratch(check, a, plan->bits, 1);
    if (check->status == MUSLIN_OK) {
        press_in_turn(plan, alternating);
        msl_find_ends(&nesting);
        msl_find_meetings(&nesting);
        msl_hold_turnings(&nesting);
        plan->effort += (int64_t)(nesting.ends.used + plan->met.used + plan->bits);
        msl_free_rows(a, &nesting.ends, sizeof(struct msl_end));
        msl_free_rows(a, &nesting.taken, sizeof(struct msl_taken));
        msl_solve_rules(&nesting, alternating);
    }
    msl_scratch_free(a, alternating, plan->bits, 1);
    if (check->status == MUSLIN_OK) {
        find_ways_shown(&nesting);
        show_reversed(plan);
        sum_up(plan);
    }
    end_nesting(&nesting);
}

/* A plan that takes nodes with asked seams the other way like this, and `n` of them as chosen. Null after a failure. */
static struct muslin_pressing *plan_with(struct msl_check *check, struct request *request, int32_t turnings,
                                         const struct msl_chosen *chosen, uint32_t n)
{
    struct muslin_pressing *plan = begin_plan(check, request, turnings, chosen, n);
    if (check->status == MUSLIN_OK)
        make_plan(check, plan, &request->told, turnings == MSL_TURN_HELD && n == 0);
    if (check->status != MUSLIN_OK) {
        muslin_pressing_free(plan);
        return NULL;
    }
    request->told.before += plan->totals.work;
    if (plan->broken.node == 0 && plan->totals.exceptions < request->told.best)
        request->told.best = plan->totals.exceptions;
    return plan;
}

static void set_least(struct muslin_pressing *plan, int64_t least)
{
    plan->totals.least = least;
    plan->totals.proven = plan->totals.exceptions == least;
}

/* The better of two plans, by the bound of the first; the other one goes. The work of both was done. */
static struct muslin_pressing *better_of(struct muslin_pressing *plan, struct muslin_pressing *other)
{
    const int is_better = other->broken.node == 0 &&
                          (plan->broken.node != 0 || other->totals.exceptions < plan->totals.exceptions);
    struct muslin_pressing *kept = is_better ? other : plan;
    kept->has_turned = plan->has_turned;
    kept->totals.work = plan->totals.work + other->totals.work;
    kept->totals.alternating = plan->totals.alternating;
    set_least(kept, plan->totals.least);
    muslin_pressing_free(is_better ? plan : other);
    return kept;
}

/* Where a better plan than this one can be: holds it against one that takes nodes with asked seams like this. */
static struct muslin_pressing *try_also(struct msl_check *check, struct muslin_pressing *plan, struct request *request,
                                        int32_t turnings)
{
    if (check->status != MUSLIN_OK || !plan->has_turned || (plan->broken.node == 0 && plan->totals.proven))
        return plan;
    struct muslin_pressing *other = plan_with(check, request, turnings, NULL, 0);
    return check->status == MUSLIN_OK ? better_of(plan, other) : plan;
}

/* ---- one node after another ------------------------------------------------------------------------------------- */

/* Plans with more and more nodes chosen of: depth first. */
struct choosing {
    struct request *request;
    struct muslin_pressing *best;
    struct msl_chosen *chosen;
    uint32_t count;
    uint32_t pad;
    int64_t least;     /* of the plans that are looked through */
};

/* Begins to choose of a node: first it is kept as it is. */
static void choose_of(struct choosing *choosing, struct msl_chosen broken)
{
    broken.choice = MSL_CHOICE_KEPT;
    choosing->chosen[choosing->count++] = broken;
}

/* The next choice of the last node, or of the one before it, where there is none. */
static void choose_next(struct choosing *choosing)
{
    while (choosing->count > 0) {
        struct msl_chosen *last = &choosing->chosen[choosing->count - 1];
        do
            last->choice--;
        while (last->choice != MSL_CHOICE_FREE && (last->choices >> last->choice & 1) == 0);
        if (last->choice != MSL_CHOICE_FREE)
            return;
        choosing->count--;
    }
}

/* Looks at the plan with what is chosen: goes on to choose of a node that it breaks, or keeps it where it is better.
 * What it finds at best bounds all plans with these choices. */
static void try_chosen(struct msl_check *check, struct choosing *choosing)
{
    struct request *request = choosing->request;
    struct muslin_pressing *plan = plan_with(check, request, MSL_TURN_HELD, choosing->chosen, choosing->count);
    if (plan == NULL)
        return;
    const struct msl_chosen broken = plan->broken;
    const int64_t least = plan->totals.least;
    request->spec.work_limit -= plan->totals.work + plan->effort;
    choosing->best = better_of(choosing->best, plan);
    if (broken.node != 0 && least < choosing->best->totals.exceptions) {
        choose_of(choosing, broken);
        return;
    }
    if (least < choosing->least)
        choosing->least = least;
    choose_next(choosing);
}

/* Of each node that a plan breaks, from the root down, there are few choices: it is never taken the other way, or one
 * of its turnings is made to hold. All plans that there are, are among those of one or another; so the least of their
 * bounds holds for all, once all are looked through. */
static struct muslin_pressing *choose_turnings(struct msl_check *check, struct muslin_pressing *best,
                                               struct request *request, struct msl_chosen broken)
{
    if (check->status != MUSLIN_OK || broken.node == 0 || best->totals.proven)
        return best;
    const struct muslin_allocator a = best->allocator;
    const uint64_t nodes = best->nodes;
    const int64_t bound = best->totals.least;
    struct choosing choosing = { .request = request, .best = best, .least = INT64_MAX };
    choosing.chosen = msl_scratch(check, &a, nodes, sizeof choosing.chosen[0]);
    if (choosing.chosen == NULL)
        return best;
    choose_of(&choosing, broken);
    while (check->status == MUSLIN_OK && choosing.count > 0 && request->spec.work_limit > 0 &&
           !request->told.ended && choosing.best->totals.exceptions > bound)
        try_chosen(check, &choosing);
    msl_scratch_free(&a, choosing.chosen, nodes, sizeof choosing.chosen[0]);
    if (choosing.count == 0) {
        const int64_t fewest = choosing.best->totals.exceptions;
        set_least(choosing.best, msl_greater(msl_lesser(choosing.least, fewest), bound));
    }
    return choosing.best;
}

/* Whether a node with asked seams can be taken the other way hangs on how all in it is pressed, which is no sum of
 * bits. So the first plan takes such nodes either way freely, and then looks whether the turnings that it needs hold.
 * Every plan that there is, is among those it chooses from: its bound holds for all. Where its turnings hold and it
 * reaches the bound, none is better. Else two other plans are tried: with all such nodes as they are, which always can
 * be, and with all pressed so that they can be turned; then, as far as the work limit goes, plans that choose of one
 * node after another. */
static struct muslin_pressing *best_plan(struct msl_check *check, struct request *request)
{
    struct muslin_pressing *plan = plan_with(check, request, MSL_TURN_HELD, NULL, 0);
    struct msl_chosen broken = { .choice = MSL_CHOICE_FREE };
    if (check->status == MUSLIN_OK)
        broken = plan->broken;
    plan = try_also(check, plan, request, MSL_TURN_NO_HELD);
    plan = try_also(check, plan, request, MSL_TURN_HELD_ALIKE);
    return choose_turnings(check, plan, request, broken);
}

muslin_status muslin_pressing_create(const struct muslin_solution *solution, const struct muslin_pressing_spec *spec,
                                     const struct muslin_allocator *allocator, muslin_progress progress, void *context,
                                     struct muslin_pressing **out, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct muslin_pressing_spec in;
    msl_want_solution(&check, solution);
    msl_read_struct(&check, MUSLIN_ARG_SPEC, &in, sizeof in, PRESSING_SPEC_LEAST, 0, spec);
    msl_want_pointer(&check, MUSLIN_ARG_OUTPUT, out);
    if (check.status != MUSLIN_OK)
        return check.status;
    allocator = msl_allocator_or(&check, allocator, solution->quilt);
    msl_want_between(&check, MUSLIN_ARG_WORK_LIMIT, in.work_limit, 0, WORK_MOST);
    msl_want_choice(&check, MUSLIN_ARG_PREFER, in.prefer, MUSLIN_PREFER_NOTHING, MUSLIN_PREFER_DARKER);
    check.at = 1;
    msl_want_choice(&check, MUSLIN_ARG_PREFER, in.units, 0, 1);
    check.at = 0;
    if (check.status != MUSLIN_OK)
        return check.status;
    struct request request = { solution, allocator, in, msl_told_by(progress, context) };
    request.told.best = INT64_MAX;
    struct muslin_pressing *plan = best_plan(&check, &request);
    if (check.status == MUSLIN_OK)
        *out = plan;
    else
        muslin_pressing_free(plan);
    return check.status;
}
