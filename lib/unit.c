/* unit.c - a recipe for a finished size: what to cut, what it yields, what is wasted.
 *
 * SPDX-License-Identifier: MIT
 *
 * After the checks a finished size is at most 2^26 ticks and E = 2 s + u below 2^25, so that every product here fits 64
 * bits: the largest cut size is below 2^28, of a half-rectangle below 2^31, the largest area of a recipe below 2^63. */
#include "unit_cut.h"

muslin_status muslin_unit_spec_init(struct muslin_unit_spec *spec, uint32_t size)
{
    const struct muslin_unit_spec initial = MUSLIN_UNIT_SPEC_INIT;
    return msl_init_struct(spec, size, &initial, (uint32_t)sizeof initial, (uint32_t)sizeof initial);
}

/* ---- the spec ---------------------------------------------------------------------------------------------------- */

static int64_t seam_of(const struct muslin_unit_spec *spec)
{
    return 2 * spec->allowance + spec->take_up;
}

/* An addition not given is the trade's: 7/4 E and 5/2 E, up to a tick. */
static void settle_additions(struct muslin_unit_spec *spec)
{
    int64_t e = seam_of(spec);
    if (spec->half_addition == 0)
        spec->half_addition = msl_divided_up(7 * e, 4);
    if (spec->quarter_addition == 0)
        spec->quarter_addition = msl_divided_up(5 * e, 2);
}

/* Pieces that an addition makes larger are squares, so their height tells. */
static int32_t has_rule(const struct unit_recipe *recipe, int32_t rule)
{
    int32_t found = 0;
    for (int32_t i = 0; i < recipe->rows; i++)
        found |= msl_unit_formula_of(recipe->row[i].height)->rule == rule;
    return found;
}

static void want_addition(struct msl_check *check, int32_t argument, muslin_len addition, struct msl_surd need)
{
    muslin_len least = msl_surd_ceiling(&need);
    if (addition < least)
        msl_fail(check, MUSLIN_ERR_CUSTOMARY, argument, addition, least);
}

void msl_unit_want_additions(struct msl_check *check, const struct unit_recipe *recipe,
                             const struct muslin_unit_spec *spec)
{
    int64_t e = seam_of(spec);
    if (spec->policy == MUSLIN_ALLOWANCE_POLICY_EXACT)
        return;
    if (has_rule(recipe, RULE_HALF))
        want_addition(check, MUSLIN_ARG_HALF_ADDITION, spec->half_addition, msl_surd_of(2 * e, e, 2, 2));
    if (has_rule(recipe, RULE_QUARTER))
        want_addition(check, MUSLIN_ARG_QUARTER_ADDITION, spec->quarter_addition, msl_surd_of(e, e, 2, 1));
}

static void want_part(struct msl_check *check, int32_t argument, muslin_len value)
{
    msl_want_between(check, argument, value, 0, MUSLIN_UNIT_SIZE_MAX / 8);
}

void msl_unit_read_seam(struct msl_check *check, struct muslin_unit_spec *into, const struct muslin_unit_spec *from)
{
    msl_read_struct(check, MUSLIN_ARG_SPEC, into, (uint32_t)sizeof *into, (uint32_t)sizeof *into, 0, from);
    want_part(check, MUSLIN_ARG_SEAM_ALLOWANCE, into->allowance);
    want_part(check, MUSLIN_ARG_TAKE_UP, into->take_up);
    want_part(check, MUSLIN_ARG_HALF_ADDITION, into->half_addition);
    want_part(check, MUSLIN_ARG_QUARTER_ADDITION, into->quarter_addition);
    msl_want_choice(check, MUSLIN_ARG_POLICY, into->policy, MUSLIN_ALLOWANCE_POLICY_EXACT,
                    MUSLIN_ALLOWANCE_POLICY_OVERSIZE);
    msl_want_between(check, MUSLIN_ARG_TRIM, into->trim_room, 0,
                     into->policy == MUSLIN_ALLOWANCE_POLICY_OVERSIZE ? MUSLIN_UNIT_SIZE_MAX / 8 : 0);
    msl_want_between(check, MUSLIN_ARG_GRID, into->grid, 1, MUSLIN_UNIT_SIZE_MAX);
    if (check->status != MUSLIN_OK)
        return;
    msl_want_between(check, MUSLIN_ARG_TOLERANCE, into->tolerance, 0, into->grid - 1);
    msl_want_choice(check, MUSLIN_ARG_DIRECTION, into->direction, MUSLIN_DIRECTION_UP, MUSLIN_DIRECTION_NEAREST);
    msl_want_choice(check, MUSLIN_ARG_TIP, into->tip, MUSLIN_TIP_SHARP, MUSLIN_TIP_BLUNT);
    msl_want_count(check, MUSLIN_ARG_UNITS, into->units);
    msl_want_pad(check, into->pad);
    if (check->status == MUSLIN_OK)
        settle_additions(into);
}

/* Fills in a height that follows from the width. */
static void settle_height(struct msl_check *check, struct muslin_unit_spec *spec, int32_t how)
{
    muslin_len due = how == HEIGHT_HALF ? spec->finished_width / 2 : spec->finished_width;
    if (how == HEIGHT_HALF)
        msl_want_between(check, MUSLIN_ARG_FINISHED, spec->finished_width, 2 * due + spec->finished_width % 2 * 2,
                         MUSLIN_UNIT_SIZE_MAX);
    if (how == HEIGHT_NEEDED || spec->finished_height != 0)
        msl_want_between(check, MUSLIN_ARG_HEIGHT, spec->finished_height, 1, MUSLIN_UNIT_SIZE_MAX);
    else
        spec->finished_height = due;
    if (how == HEIGHT_SQUARE || how == HEIGHT_HALF)
        msl_want_between(check, MUSLIN_ARG_HEIGHT, spec->finished_height, due, due);
}

static void settle_sizes(struct msl_check *check, struct muslin_unit_spec *spec)
{
    const struct unit_kind *kind = msl_unit_kind_of(spec->kind);
    msl_want_between(check, MUSLIN_ARG_FINISHED, spec->finished_width, kind->takes_width,
                     kind->takes_width ? MUSLIN_UNIT_SIZE_MAX : 0);
    if (check->status != MUSLIN_OK)
        return;
    settle_height(check, spec, kind->height);
    if (check->status != MUSLIN_OK)
        return;
    muslin_len shorter = msl_lesser(spec->finished_width, spec->finished_height);
    msl_want_between(check, MUSLIN_ARG_CORNER, spec->corner, kind->takes_corner, kind->takes_corner ? shorter / 2 : 0);
    if (spec->kind == MUSLIN_UNIT_TRAPEZOID)
        msl_want_between(check, MUSLIN_ARG_FINISHED, spec->finished_width, 2 * spec->finished_height,
                         MUSLIN_UNIT_SIZE_MAX);
    int64_t at = check->at;
    check->at = 1;
    msl_want_between(check, MUSLIN_ARG_UNITS, spec->mirrored, 0, kind->hands != HANDS_NONE ? MUSLIN_COUNT_MAX : 0);
    check->at = at;
}

/* A half-rectangle far longer than wide needs more than any other piece: the more, the wider its seams. */
static void want_cuttable(struct msl_check *check, const struct unit_recipe *recipe,
                          const struct muslin_unit_spec *spec)
{
    struct msl_unit_sizes sizes = msl_unit_sizes_of(spec);
    if (check->status != MUSLIN_OK || spec->kind != MUSLIN_UNIT_HALF_RECTANGLE)
        return;
    struct msl_surd width = msl_unit_size_exact(recipe->row[0].width, &sizes);
    struct msl_surd height = msl_unit_size_exact(recipe->row[0].height, &sizes);
    msl_want_between(check, MUSLIN_ARG_CUT, msl_surd_ceiling(&width), 1, MUSLIN_SIZE_MAX);
    msl_want_between(check, MUSLIN_ARG_CUT, msl_surd_ceiling(&height), 1, MUSLIN_SIZE_MAX);
}

void msl_unit_read(struct msl_check *check, struct muslin_unit_spec *into, const struct muslin_unit_spec *from)
{
    msl_unit_read_seam(check, into, from);
    msl_want_choice(check, MUSLIN_ARG_UNIT_KIND, into->kind, MUSLIN_UNIT_RECTANGLE, MUSLIN_UNIT_SLANTED_SLICE);
    msl_want_choice(check, MUSLIN_ARG_METHOD, into->method, MUSLIN_UNIT_METHOD_PIECES, MUSLIN_UNIT_METHOD_BIAS_STRIPS);
    if (check->status != MUSLIN_OK)
        return;
    const struct unit_recipe *recipe = msl_unit_recipe_for(into->kind, into->method, into->tip);
    if (recipe == NULL) {
        msl_fail(check, MUSLIN_ERR_METHOD, MUSLIN_ARG_METHOD, into->method, 0);
        return;
    }
    msl_unit_want_additions(check, recipe, into);
    settle_sizes(check, into);
    want_cuttable(check, recipe, into);
}

struct msl_unit_sizes msl_unit_sizes_of(const struct muslin_unit_spec *spec)
{
    struct msl_unit_sizes sizes = { spec->finished_width, spec->finished_height, spec->corner, seam_of(spec), 0 };
    return sizes;
}

/* ---- a size to cut ----------------------------------------------------------------------------------------------- */

static struct muslin_rounding_spec rounding_of(const struct muslin_unit_spec *spec)
{
    struct muslin_rounding_spec rounding = MUSLIN_ROUNDING_SPEC_INIT;
    rounding.grid = spec->grid;
    rounding.tolerance = spec->tolerance;
    rounding.direction = spec->direction;
    return rounding;
}

/* The size that is brought to the grid: the geometry, or the trade's rule for it, with room to trim. */
static struct msl_surd wanted_size(int32_t size, const struct msl_unit_sizes *sizes,
                                   const struct muslin_unit_spec *spec)
{
    const struct unit_formula *f = msl_unit_formula_of(size);
    int32_t customary = spec->policy != MUSLIN_ALLOWANCE_POLICY_EXACT && f->rule != RULE_NONE;
    struct msl_surd wanted = customary ? msl_unit_size_bare(size, sizes) : msl_unit_size_exact(size, sizes);
    if (customary)
        wanted.whole += wanted.divisor * f->additions *
                        (f->rule == RULE_HALF ? spec->half_addition : spec->quarter_addition);
    wanted.whole += wanted.divisor * f->trims * spec->trim_room;
    return wanted;
}

static muslin_len size_to_cut(int32_t size, const struct msl_unit_sizes *sizes, const struct muslin_unit_spec *spec,
                              muslin_len *surplus)
{
    const struct muslin_rounding_spec rounding = rounding_of(spec);
    struct muslin_rounded rounded = { 0 };
    struct msl_surd need = msl_unit_size_exact(size, sizes);
    struct msl_surd wanted = wanted_size(size, sizes, spec);
    msl_surd_round(&wanted, &rounding, &rounded); /* far from overflow: a step of 2^26 beyond 2^28 at most */
    muslin_len cut = rounded.value > 0 ? rounded.value : spec->grid;
    *surplus = cut - msl_surd_ceiling(&need);
    return cut;
}

static muslin_len tick_above(int32_t size, const struct msl_unit_sizes *sizes)
{
    struct msl_surd exact = msl_unit_size_exact(size, sizes);
    return msl_surd_ceiling(&exact);
}

void msl_unit_cut_piece(const struct unit_row *row, const struct msl_unit_sizes *sizes,
                        const struct muslin_unit_spec *spec, struct muslin_unit_piece *piece)
{
    piece->region = row->region;
    piece->shape = row->shape;
    piece->again = row->again;
    piece->gives = row->gives;
    piece->grain = row->grain;
    piece->count = row->count;
    piece->angle = row->angle;
    piece->cut_height = size_to_cut(row->height, sizes, spec, &piece->surplus_height);
    struct msl_unit_sizes along = *sizes;
    along.cut = piece->cut_height;
    if (row->pitch == 0)
        piece->cut_width = size_to_cut(row->width, sizes, spec, &piece->surplus_width);
    else
        piece->cut_width = tick_above(row->width, &along);
    piece->pitch = tick_above(row->pitch, &along);
    piece->wide_edge = tick_above(row->wide, &along);
    piece->narrow_edge = tick_above(row->narrow, &along);
}

/* ---- the recipe -------------------------------------------------------------------------------------------------- */

void msl_unit_tell_sizes(int32_t kind_number, const struct msl_unit_sizes *sizes, struct muslin_unit_plan *unit)
{
    const struct unit_kind *kind = msl_unit_kind_of(kind_number);
    unit->finished_width = sizes->w;
    unit->finished_height = sizes->h;
    if (!kind->takes_width) {
        struct msl_surd width = msl_unit_size_exact(kind->width, sizes);
        struct msl_exact exact = msl_surd_exact(&width);
        unit->finished_width = exact.floor + exact.upper_half;
    }
    unit->unfinished_width = kind->untrimmed ? 0 : unit->finished_width + sizes->e;
    unit->unfinished_height = unit->finished_height + sizes->e;
}

/* Doubled: E / 2 along all edges of all pieces of all units. The root under the edges is below 2^62. */
static int64_t allowance_area(const struct unit_recipe *recipe, const struct msl_unit_sizes *sizes)
{
    struct msl_surd area = msl_unit_size_exact(recipe->edges, sizes);
    int64_t factor = recipe->units * sizes->e;
    area.whole *= factor;
    area.radicand = msl_wide_multiply((int64_t)area.radicand.low, factor * factor);
    return msl_surd_ceiling(&area);
}

static void tell_areas(const struct unit_recipe *recipe, const struct msl_unit_sizes *sizes,
                       struct muslin_unit_plan *unit)
{
    unit->finished_area = 2 * sizes->w * sizes->h * recipe->units;
    unit->allowance_area = allowance_area(recipe, sizes);
    unit->waste_area = unit->cut_area - unit->finished_area - unit->allowance_area;
}

/* The seam runs from finished corner to finished corner at the slope of the longer to the shorter side, so on its way
 * out through the allowance e it climbs e short / long, and misses the raw corner by e (long - short) / long. */
muslin_len msl_unit_seam_offset(const struct msl_unit_sizes *sizes)
{
    int64_t longer = msl_greater(sizes->w, sizes->h);
    int64_t shorter = msl_lesser(sizes->w, sizes->h);
    return (sizes->e * (longer - shorter) + longer) / (2 * longer);
}

/* A second line E beside the first, and half a seam on each side of it: corner - sqrt 2 E. */
static muslin_len bonus_unfinished(const struct msl_unit_sizes *sizes, muslin_len corner_cut)
{
    struct msl_surd rest = msl_surd_of(corner_cut, -sizes->e, 2, 1);
    muslin_len unfinished = msl_surd_floor(&rest);
    return msl_greater(unfinished, 0);
}

/* How often a recipe is made for a hand. Where one makes both hands, the greater wish decides; where its pieces can be
 * sewn to either, both wishes count together, and a kind without hands has only the one. */
static int64_t recipes_for(const struct unit_recipe *recipe, const struct muslin_unit_spec *spec, int32_t hand)
{
    int32_t apart = msl_unit_kind_of(recipe->kind)->hands == HANDS_APART;
    int64_t alike = recipe->units - recipe->mirrored;
    if (hand == MUSLIN_HAND_MIRRORED)
        return apart ? msl_divided_up(spec->mirrored, recipe->units) : 0;
    if (recipe->mirrored == 0)
        return msl_divided_up(spec->units + (apart ? 0 : spec->mirrored), recipe->units);
    int64_t first = msl_divided_up(spec->units, alike);
    int64_t second = msl_divided_up(spec->mirrored, recipe->mirrored);
    return msl_greater(first, second);
}

/* Hands that are cut apart have rows of their own. */
static int32_t hands_cut(const struct muslin_unit_spec *spec)
{
    return spec->mirrored != 0 && msl_unit_kind_of(spec->kind)->hands == HANDS_APART ? 2 : 1;
}

static int below_need(const struct muslin_unit_piece *piece)
{
    return piece->surplus_width < 0 || piece->surplus_height < 0;
}

static void tell_recipe(const struct unit_recipe *recipe, const struct muslin_unit_spec *spec,
                        struct muslin_unit_plan *unit)
{
    struct msl_unit_sizes sizes = msl_unit_sizes_of(spec);
    struct muslin_unit_piece piece = { 0 };
    msl_unit_tell_sizes(spec->kind, &sizes, unit);
    unit->units_per_recipe = recipe->units;
    unit->mirrored_per_recipe = recipe->mirrored;
    unit->recipes = recipes_for(recipe, spec, 1);
    unit->mirrored_recipes = recipes_for(recipe, spec, 2);
    unit->spare_units = (unit->recipes + unit->mirrored_recipes) * recipe->units - spec->units - spec->mirrored;
    unit->pieces = recipe->rows * hands_cut(spec);
    unit->bias_outside = recipe->bias;
    unit->warnings = recipe->bias ? MUSLIN_WARN_BIAS_EDGE : 0;
    for (int32_t i = 0; i < recipe->rows; i++) {
        msl_unit_cut_piece(&recipe->row[i], &sizes, spec, &piece);
        unit->cut_area += 2 * piece.cut_width * piece.cut_height * piece.count;
        unit->warnings |= below_need(&piece) ? MUSLIN_WARN_BELOW_EXACT : 0;
    }
    if (recipe->edges == 0)
        unit->cut_area = 0;
    else
        tell_areas(recipe, &sizes, unit);
    if (spec->kind == MUSLIN_UNIT_HALF_RECTANGLE)
        unit->seam_offset = msl_unit_seam_offset(&sizes);
    unit->star_wider_by = msl_unit_star_wider_by(recipe, spec);
    unit->bonus_units = recipe->bonus;
    if (recipe->bonus != 0) /* the corners are the last row */
        unit->bonus_unfinished = bonus_unfinished(&sizes, piece.cut_height);
}

muslin_status muslin_unit_recipe(const struct muslin_unit_spec *spec, struct muslin_unit_plan *out,
                                 struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct muslin_unit_spec s = { 0 };
    msl_unit_read(&check, &s, spec);
    msl_want_output(&check, out, (uint32_t)sizeof *out);
    if (check.status != MUSLIN_OK)
        return check.status;
    struct muslin_unit_plan unit = { 0 };
    tell_recipe(msl_unit_recipe_for(s.kind, s.method, s.tip), &s, &unit);
    msl_write_struct(out, &unit, (uint32_t)sizeof unit);
    return MUSLIN_OK;
}

static void write_pieces(const struct unit_recipe *recipe, const struct muslin_unit_spec *spec, int32_t hand,
                         struct muslin_unit_piece *rows, size_t row_size)
{
    struct msl_unit_sizes sizes = msl_unit_sizes_of(spec);
    size_t first = hand == MUSLIN_HAND_MIRRORED ? (size_t)recipe->rows : 0;
    for (int32_t i = 0; i < recipe->rows; i++) {
        struct muslin_unit_piece piece = { 0 };
        msl_unit_cut_piece(&recipe->row[i], &sizes, spec, &piece);
        piece.total = piece.count * recipes_for(recipe, spec, hand);
        piece.hand = hand;
        piece.star_excess = msl_unit_star_excess(recipe, i, piece.cut_width, spec);
        msl_write_row(rows, row_size, first + (size_t)i, &piece, (uint32_t)sizeof piece);
    }
}

muslin_status muslin_unit_pieces(const struct muslin_unit_spec *spec, struct muslin_unit_piece *rows, size_t row_size,
                                 size_t capacity, size_t *count, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct muslin_unit_spec s = { 0 };
    msl_unit_read(&check, &s, spec);
    if (check.status != MUSLIN_OK)
        return check.status;
    const struct unit_recipe *recipe = msl_unit_recipe_for(s.kind, s.method, s.tip);
    int32_t hands = hands_cut(&s);
    if (!msl_rows_wanted(&check, rows, row_size, (uint32_t)sizeof *rows, capacity, count,
                         (size_t)recipe->rows * (size_t)hands))
        return check.status;
    for (int32_t hand = 1; hand <= hands; hand++)
        write_pieces(recipe, &s, hand, rows, row_size);
    return MUSLIN_OK;
}

/* ---- the list of recipes ----------------------------------------------------------------------------------------- */

int64_t muslin_unit_recipe_count(void)
{
    int64_t count = 0;
    for (int32_t i = 0; i < msl_unit_recipe_count(); i++)
        count += msl_unit_recipe_at(i)->tip != MUSLIN_TIP_SHARP;
    return count;
}

/* A sharp recipe stands right behind its blunt one, which speaks for both. */
const struct unit_recipe *msl_unit_method_at(int64_t index)
{
    int32_t at = 0;
    for (int64_t left = index;; at++) {
        left -= msl_unit_recipe_at(at)->tip != MUSLIN_TIP_SHARP;
        if (left < 0)
            return msl_unit_recipe_at(at);
    }
}

muslin_status muslin_unit_recipe_at(int64_t index, int32_t *kind, int32_t *method, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    msl_want_pointer(&check, MUSLIN_ARG_OUTPUT, kind);
    check.at = 1;
    msl_want_pointer(&check, MUSLIN_ARG_OUTPUT, method);
    check.at = 0;
    if (check.status != MUSLIN_OK)
        return check.status;
    if (index < 0 || index >= muslin_unit_recipe_count())
        return msl_fail(&check, MUSLIN_ERR_INDEX, MUSLIN_ARG_INDEX, index, muslin_unit_recipe_count() - 1);
    *kind = msl_unit_method_at(index)->kind;
    *method = msl_unit_method_at(index)->method;
    return MUSLIN_OK;
}
