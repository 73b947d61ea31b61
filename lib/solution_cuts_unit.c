/* solution_cuts_unit.c - what pieced units are cut from: units alike share their recipes.
 *
 * SPDX-License-Identifier: MIT */
#include "solution_cuts.h"
#include "unit_table.h"

/* ---- units alike ------------------------------------------------------------------------------------------------ */

enum { METHODS = 16 };

static struct msl_rank rank_of(const struct muslin_solution *s, uint32_t node)
{
    const int32_t *args = msl_node_args(s->quilt, node);
    const uint32_t recipe = (uint32_t)(args[UNIT_KIND] * METHODS + args[UNIT_METHOD]);
    const muslin_len height = msl_value_or_none(s, args[UNIT_HEIGHT]);
    return (struct msl_rank){ msl_value_of(s, args[UNIT_WIDTH]), height, recipe, node };
}

/* Of one kind, method and size: what its corner and fabrics say. */
enum { TRAITS = 1 + UNIT_ROWS_MOST };

static int64_t trait_of(const struct muslin_solution *s, uint32_t node, int i)
{
    const int32_t *args = msl_node_args(s->quilt, node);
    return i == 0 ? msl_value_or_none(s, args[UNIT_CORNER]) : args[UNIT_FABRICS + i - 1];
}

static int unit_is_before(const void *context, uint32_t a, uint32_t b)
{
    const struct muslin_solution *s = context;
    int i = 0;
    while (i < TRAITS - 1 && trait_of(s, a, i) == trait_of(s, b, i))
        i++;
    return trait_of(s, a, i) < trait_of(s, b, i);
}

/* Of two that follow each other when sorted. */
static int is_same_unit(const struct muslin_solution *s, const struct msl_rank *a, const struct msl_rank *b)
{
    return a->group == b->group && a->first == b->first && a->second == b->second &&
           !unit_is_before(s, a->row, b->row);
}

/* ---- hands ------------------------------------------------------------------------------------------------------ */

/* Copies of a unit that are mirrored as it stands in the tree (MSL_TURN_MIRRORED) or not (0). */
static int64_t copies_of(const struct msl_counts *counts, int32_t mirrored)
{
    return counts->of[mirrored] + counts->of[mirrored + 1] + counts->of[mirrored + 2] + counts->of[mirrored + 3];
}

/* How many of its copies are of a hand, 1 or 2: a mirror image is of the other one. Kinds that have no hands count all
 * as of the first. */
static int64_t of_hand(const struct muslin_solution *s, uint32_t node, int32_t hand)
{
    const int32_t *args = msl_node_args(s->quilt, node);
    const struct msl_counts *cut = &s->cut[node - 1];
    if (msl_unit_kind_of(args[UNIT_KIND])->hands == HANDS_NONE)
        return hand == 1 ? msl_copies(cut) : 0;
    return copies_of(cut, args[UNIT_HAND] == hand ? 0 : MSL_TURN_MIRRORED);
}

/* ---- the pieces of a recipe ------------------------------------------------------------------------------------- */

/* Patches that one unit has from a row of its recipe. Methods that make several at a time have the rows of the recipe
 * that cuts each piece by itself. */
static int64_t patches_of(const struct muslin_unit_spec *unit, int64_t row)
{
    int several = unit->method >= MUSLIN_UNIT_METHOD_TWO_AT_A_TIME && unit->method <= MUSLIN_UNIT_METHOD_FOUR_AT_A_TIME;
    const struct unit_recipe *recipe =
        msl_unit_recipe_for(unit->kind, several ? MUSLIN_UNIT_METHOD_PIECES : unit->method, unit->tip);
    return recipe->row[row].count * recipe->row[row].gives / recipe->units;
}

/* A rectangle that stays whole and upright: what corners are sewn to, or cut off from. */
static int stays_upright(const struct muslin_unit_spec *unit, const struct muslin_unit_piece *piece)
{
    return piece->region == 1 &&
           (unit->method == MUSLIN_UNIT_METHOD_FLIPPED_CORNERS || unit->kind == MUSLIN_UNIT_OCTAGON);
}

/* Units alike: where they stand among the ranks, their spec with all copies in it, what they are cut from. */
struct alike {
    const struct msl_rank *first;
    uint64_t count;
    struct muslin_unit_spec unit;
    struct muslin_unit_piece pieces[2 * UNIT_ROWS_MOST];
    size_t rows;
    uint32_t warnings; /* of the unit, for each of its rows */
};

/* The row as its first node needs it, without the counts. */
static void find_cut(const struct muslin_solution *s, uint32_t node, const struct muslin_unit_piece *piece,
                     struct muslin_solution_cut *cut)
{
    uint32_t fabric = (uint32_t)msl_node_args(s->quilt, node)[UNIT_FABRICS + piece->region - 1];
    *cut = msl_new_cut(s, node, fabric, MUSLIN_CUT_SOURCE_UNIT);
    msl_take_piece(cut, piece);
    cut->region = piece->region;
}

/* How many pieces of this row a node needs. Where hands are cut each for itself, a row is of one of them. */
static int64_t needed_by(const struct muslin_solution *s, uint32_t node, const struct muslin_unit_piece *piece,
                         int64_t patches)
{
    int apart = msl_unit_kind_of(msl_node_args(s->quilt, node)[UNIT_KIND])->hands == HANDS_APART;
    return patches * (apart ? of_hand(s, node, piece->hand) : msl_copies(&s->cut[node - 1]));
}

/* Each node gets a row of its own, so that the list knows who needs it; the first one has what is cut for all. */
static void cut_piece(struct msl_solving *solving, const struct alike *alike, size_t number)
{
    const struct muslin_solution *s = solving->solution;
    const struct muslin_unit_piece *piece = &alike->pieces[number];
    const struct unit_recipe *recipe = msl_unit_recipe_for(alike->unit.kind, alike->unit.method, alike->unit.tip);
    const int64_t row = (int64_t)number % recipe->rows;
    const int64_t patches = patches_of(&alike->unit, row);
    const int64_t gives = recipe->units * patches / recipe->row[row].count;
    int64_t spare = piece->total * gives;
    for (uint64_t i = 0; i < alike->count; i++)
        spare -= needed_by(s, alike->first[i].row, piece, patches);
    int64_t total = piece->total;
    for (uint64_t i = 0; i < alike->count; i++) {
        const uint32_t node = alike->first[i].row;
        const int64_t needed = needed_by(s, node, piece, patches);
        if (needed == 0)
            continue;
        struct muslin_solution_cut cut;
        find_cut(s, node, piece, &cut);
        int whole = cut.shape == MUSLIN_CUT_SHAPE_RECTANGLE && cut.again == MUSLIN_CUT_AGAIN_NO;
        int32_t laid = whole ? msl_lay_cut(s, &cut) : 0;
        if (stays_upright(&alike->unit, piece)) {
            (void)msl_count_turns(&cut, &s->cut[node - 1], 0, laid);
            (void)msl_count_turns(&cut, &s->cut[node - 1], MSL_TURN_MIRRORED, laid);
        } else {
            cut.scattered = needed;
        }
        cut.warnings = alike->warnings;
        cut.gives = (int32_t)gives;
        cut.count = total;
        cut.pieces = total * gives;
        cut.spare = spare;
        msl_add_cut(solving, &cut);
        total = spare = 0;
    }
}

static void tell_recipe(const struct muslin_solution *s, struct alike *alike)
{
    struct muslin_unit_plan plan = { .size = sizeof plan };
    (void)muslin_unit_recipe(&alike->unit, &plan, NULL);
    msl_size_of(s, alike->first->row)->spare = plan.spare_units;
    alike->warnings = plan.warnings & MUSLIN_WARN_BIAS_EDGE;
}

/* That the recipe can be made was seen when the unit's size was found. */
static void cut_alike(struct msl_solving *solving, struct alike *alike)
{
    const struct muslin_solution *s = solving->solution;
    alike->unit = msl_unit_spec(s, alike->first->row);
    alike->unit.units = alike->unit.mirrored = 0;
    for (uint64_t i = 0; i < alike->count; i++) {
        alike->unit.units += of_hand(s, alike->first[i].row, 1);
        alike->unit.mirrored += of_hand(s, alike->first[i].row, 2);
    }
    (void)muslin_unit_pieces(&alike->unit, alike->pieces, sizeof alike->pieces[0], 2 * UNIT_ROWS_MOST, &alike->rows,
                             NULL);
    tell_recipe(s, alike);
    for (size_t row = 0; row < alike->rows; row++)
        cut_piece(solving, alike, row);
}

/* ---- all units -------------------------------------------------------------------------------------------------- */

static int is_unit(const struct muslin_solution *s, uint32_t node)
{
    return msl_node_row(s->quilt, node)->kind == MUSLIN_NODE_UNIT && msl_copies(&s->cut[node - 1]) > 0;
}

static void cut_sorted(struct msl_solving *solving, const struct msl_rank *ranks, uint64_t n)
{
    for (uint64_t first = 0; first < n;) {
        struct alike alike = { .first = ranks + first, .count = 1 };
        while (first + alike.count < n &&
               is_same_unit(solving->solution, alike.first, &ranks[first + alike.count]))
            alike.count++;
        cut_alike(solving, &alike);
        first += alike.count;
    }
}

void msl_cut_units(struct msl_solving *solving)
{
    struct muslin_solution *s = solving->solution;
    uint64_t units = 0;
    uint64_t found = 0;
    for (uint32_t node = 1; node <= s->root; node++)
        units += (uint64_t)is_unit(s, node);
    struct msl_rank *ranks = msl_scratch(solving->check, &s->allocator, 2 * units, sizeof *ranks);
    if (ranks == NULL)
        return;
    for (uint32_t node = 1; node <= s->root; node++)
        if (is_unit(s, node))
            ranks[found++] = rank_of(s, node);
    msl_sort(ranks, ranks + units, units, unit_is_before, s);
    cut_sorted(solving, ranks, units);
    msl_scratch_free(&s->allocator, ranks, 2 * units, sizeof *ranks);
}
