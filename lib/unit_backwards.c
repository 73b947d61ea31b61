/* unit_backwards.c - what given stock yields, the largest unit it makes, and all that it makes.
 *
 * SPDX-License-Identifier: MIT */
#include "unit_cut.h"

muslin_status muslin_unit_stock_spec_init(struct muslin_unit_stock_spec *spec, uint32_t size)
{
    const struct muslin_unit_stock_spec initial = MUSLIN_UNIT_STOCK_SPEC_INIT;
    return msl_init_struct(spec, size, &initial, (uint32_t)sizeof initial, (uint32_t)sizeof initial);
}

static void read_stock(struct msl_check *check, struct muslin_unit_stock_spec *into,
                       const struct muslin_unit_stock_spec *from)
{
    check->at = 1;
    msl_read_struct(check, MUSLIN_ARG_SPEC, into, (uint32_t)sizeof *into, (uint32_t)sizeof *into, 0, from);
    msl_want_some_size(check, MUSLIN_ARG_STRIP_LENGTH, into->width);
    msl_want_some_size(check, MUSLIN_ARG_STRIP_CUT, into->height);
    msl_want_count(check, MUSLIN_ARG_IN_HAND, into->per_region);
    msl_want_size(check, MUSLIN_ARG_END_LOSS, into->end_loss);
    msl_want_between(check, MUSLIN_ARG_GRID, into->finished_grid, 1, MUSLIN_UNIT_SIZE_MAX);
    check->at = 0;
}

/* ---- what a rectangle of stock gives ----------------------------------------------------------------------------- */

/* Pieces of one row from one rectangle: a plain grid, or along strips, where the first takes the run-in too. */
static int64_t from_rectangle(const struct muslin_unit_piece *piece, const struct muslin_unit_stock_spec *stock)
{
    muslin_len along = stock->width - stock->end_loss;
    int64_t strips = stock->height / piece->cut_height;
    if (along < piece->cut_width)
        return 0;
    if (piece->pitch == 0)
        return strips * (along / piece->cut_width);
    return strips * ((along - piece->cut_width) / piece->pitch + 1);
}

/* A recipe's pieces, and how many of each a rectangle gives. */
struct harvest {
    const struct unit_recipe *recipe;
    int64_t per_rectangle[UNIT_ROWS_MOST];
    muslin_len highest;
};

static struct harvest harvest_of(const struct unit_recipe *recipe, const struct msl_unit_sizes *sizes,
                                 const struct muslin_unit_spec *spec, const struct muslin_unit_stock_spec *stock)
{
    struct harvest harvest = { .recipe = recipe };
    for (int32_t i = 0; i < recipe->rows; i++) {
        struct muslin_unit_piece piece = { 0 };
        msl_unit_cut_piece(&recipe->row[i], sizes, spec, &piece);
        harvest.per_rectangle[i] = from_rectangle(&piece, stock);
        harvest.highest = msl_greater(piece.cut_height, harvest.highest);
    }
    return harvest;
}

/* Does a rectangle give at least one piece of every row? */
static int every_row_fits(const struct harvest *harvest)
{
    int fits = 1;
    for (int32_t i = 0; i < harvest->recipe->rows; i++)
        fits &= harvest->per_rectangle[i] > 0;
    return fits;
}

/* Rectangles that a region's rows need for so many recipes; every row fits. */
static int64_t rectangles_for(const struct harvest *harvest, int32_t region, int64_t recipes)
{
    int64_t rectangles = 0;
    for (int32_t i = 0; i < harvest->recipe->rows; i++) {
        const struct unit_row *row = &harvest->recipe->row[i];
        int64_t per = harvest->per_rectangle[i];
        int64_t needed = recipes * row->count;
        if (row->region == region)
            rectangles += msl_divided_up(needed, per);
    }
    return rectangles;
}

static int enough_for(const struct harvest *harvest, int64_t per_region, int64_t recipes)
{
    int enough = 1;
    for (int32_t i = 0; i < harvest->recipe->rows; i++)
        enough &= rectangles_for(harvest, harvest->recipe->row[i].region, recipes) <= per_region;
    return enough;
}

/* More recipes never need fewer rectangles, so the greatest number is found by halving. */
static int64_t recipes_from(const struct harvest *harvest, int64_t per_region)
{
    int64_t enough = 0;
    int64_t most = MUSLIN_COUNT_MAX;
    if (!every_row_fits(harvest))
        return 0;
    while (enough < most) {
        int64_t middle = enough + (most - enough + 1) / 2;
        if (enough_for(harvest, per_region, middle))
            enough = middle;
        else
            most = middle - 1;
    }
    return enough;
}

static struct muslin_unit_yield yield_of(const struct harvest *harvest, const struct msl_unit_sizes *sizes,
                                         const struct muslin_unit_stock_spec *stock)
{
    struct muslin_unit_yield yield = { 0 };
    struct muslin_unit_plan unit = { 0 };
    msl_unit_tell_sizes(harvest->recipe->kind, sizes, &unit);
    yield.finished_width = unit.finished_width;
    yield.finished_height = unit.finished_height;
    yield.unfinished_width = unit.unfinished_width;
    yield.unfinished_height = unit.unfinished_height;
    yield.cut_spare = stock->height - harvest->highest;
    yield.recipes = recipes_from(harvest, stock->per_region);
    yield.units = yield.recipes * harvest->recipe->units;
    yield.units_of_one = recipes_from(harvest, 1) * harvest->recipe->units;
    yield.kind = harvest->recipe->kind;
    yield.method = harvest->recipe->method;
    return yield;
}

muslin_status muslin_unit_from_stock(const struct muslin_unit_spec *spec, const struct muslin_unit_stock_spec *stock,
                                     struct muslin_unit_yield *out, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct muslin_unit_spec s = { 0 };
    struct muslin_unit_stock_spec in_hand = { 0 };
    msl_unit_read(&check, &s, spec);
    read_stock(&check, &in_hand, stock);
    msl_want_output(&check, out, (uint32_t)sizeof *out);
    if (check.status != MUSLIN_OK)
        return check.status;
    struct msl_unit_sizes sizes = msl_unit_sizes_of(&s);
    struct harvest harvest = harvest_of(msl_unit_recipe_for(s.kind, s.method, s.tip), &sizes, &s, &in_hand);
    struct muslin_unit_yield yield = yield_of(&harvest, &sizes, &in_hand);
    msl_write_struct(out, &yield, (uint32_t)sizeof yield);
    return MUSLIN_OK;
}

/* ---- the largest unit -------------------------------------------------------------------------------------------- */

/* What stays the same while a unit grows: W : H : corner in lowest terms. A kind that takes no width has 0 there. */
struct proportion {
    int64_t w;
    int64_t h;
    int64_t c;
};

static struct proportion in_lowest_terms(int64_t w, int64_t h, int64_t c)
{
    int64_t divisor = msl_common_divisor(msl_common_divisor(w, h), c);
    struct proportion proportion = { w / divisor, h / divisor, c / divisor };
    return proportion;
}

/* So many times the proportion. */
static struct msl_unit_sizes grown(const struct proportion *proportion, int64_t times, int64_t e)
{
    struct msl_unit_sizes sizes = { times * proportion->w, times * proportion->h, times * proportion->c, e, 0 };
    return sizes;
}

/* The least number of times that puts the width (of a kind without one, the height) on the grid. */
static int64_t step_of(const struct proportion *proportion, int64_t grid)
{
    return grid / msl_common_divisor(grid, proportion->w != 0 ? proportion->w : proportion->h);
}

static int64_t seam_of(const struct muslin_unit_spec *spec)
{
    return 2 * spec->allowance + spec->take_up;
}

/* How many times the proportion the largest unit is of which a recipe can be cut; 0 when none can. In one proportion a
 * larger unit is never cut smaller, so it is found by halving. */
static int64_t largest_times(const struct unit_recipe *recipe, const struct proportion *proportion,
                             const struct muslin_unit_spec *spec, const struct muslin_unit_stock_spec *stock)
{
    int64_t step = step_of(proportion, stock->finished_grid);
    int64_t longer = msl_greater(proportion->w, proportion->h);
    int64_t fits = 0;
    int64_t most = MUSLIN_UNIT_SIZE_MAX / longer / step;
    while (fits < most) {
        int64_t middle = fits + (most - fits + 1) / 2;
        struct msl_unit_sizes sizes = grown(proportion, middle * step, seam_of(spec));
        struct harvest harvest = harvest_of(recipe, &sizes, spec, stock);
        if (every_row_fits(&harvest))
            fits = middle;
        else
            most = middle - 1;
    }
    return fits * step;
}

static struct muslin_unit_yield yield_at(const struct unit_recipe *recipe, const struct proportion *proportion,
                                         int64_t times, const struct muslin_unit_spec *spec,
                                         const struct muslin_unit_stock_spec *stock)
{
    struct msl_unit_sizes sizes = grown(proportion, times, seam_of(spec));
    struct harvest harvest = harvest_of(recipe, &sizes, spec, stock);
    return yield_of(&harvest, &sizes, stock);
}

/* The height that the smallest unit would need, for the problem. */
static muslin_len least_height(const struct unit_recipe *recipe, const struct proportion *proportion,
                               const struct muslin_unit_spec *spec, const struct muslin_unit_stock_spec *stock)
{
    struct msl_unit_sizes sizes = grown(proportion, step_of(proportion, stock->finished_grid), seam_of(spec));
    return harvest_of(recipe, &sizes, spec, stock).highest;
}

muslin_status muslin_unit_largest(const struct muslin_unit_spec *spec, const struct muslin_unit_stock_spec *stock,
                                  struct muslin_unit_yield *out, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct muslin_unit_spec s = { 0 };
    struct muslin_unit_stock_spec in_hand = { 0 };
    msl_unit_read(&check, &s, spec);
    read_stock(&check, &in_hand, stock);
    msl_want_output(&check, out, (uint32_t)sizeof *out);
    if (check.status != MUSLIN_OK)
        return check.status;
    const struct unit_recipe *recipe = msl_unit_recipe_for(s.kind, s.method, s.tip);
    struct proportion proportion = in_lowest_terms(s.finished_width, s.finished_height, s.corner);
    int64_t times = largest_times(recipe, &proportion, &s, &in_hand);
    if (times == 0)
        return msl_fail(&check, MUSLIN_ERR_NO_FIT, MUSLIN_ARG_STRIP_CUT, in_hand.height,
                        least_height(recipe, &proportion, &s, &in_hand));
    struct muslin_unit_yield yield = yield_at(recipe, &proportion, times, &s, &in_hand);
    msl_write_struct(out, &yield, (uint32_t)sizeof yield);
    return MUSLIN_OK;
}

/* ---- all that the stock makes ------------------------------------------------------------------------------------ */

static struct proportion usual_proportion(int32_t kind)
{
    const struct unit_kind *takes = msl_unit_kind_of(kind);
    struct proportion usual = { takes->takes_width, 1, 0 };
    if (kind == MUSLIN_UNIT_HALF_RECTANGLE || takes->height == HEIGHT_HALF)
        usual.w = 2;
    if (kind == MUSLIN_UNIT_TRAPEZOID)
        usual.w = 3;
    if (takes->takes_corner)
        usual = (struct proportion){ 3, 3, 1 };
    return usual;
}

/* The recipe of the method's kind with the tip that the spec asks for. */
static const struct unit_recipe *recipe_with_tip(int64_t index, const struct muslin_unit_spec *spec)
{
    const struct unit_recipe *method = msl_unit_method_at(index);
    return msl_unit_recipe_for(method->kind, method->method, spec->tip);
}

/* How many times its usual proportion the recipe is offered; 0 when it does not fit or its addition is too small. */
static int64_t times_offered(const struct unit_recipe *recipe, const struct muslin_unit_spec *spec,
                             const struct muslin_unit_stock_spec *stock)
{
    struct proportion proportion = usual_proportion(recipe->kind);
    struct msl_check additions = msl_check_start(NULL);
    msl_unit_want_additions(&additions, recipe, spec);
    return additions.status == MUSLIN_OK ? largest_times(recipe, &proportion, spec, stock) : 0;
}

muslin_status muslin_unit_makes(const struct muslin_unit_spec *spec, const struct muslin_unit_stock_spec *stock,
                                struct muslin_unit_yield *rows, size_t row_size, size_t capacity, size_t *count,
                                struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct muslin_unit_spec s = { 0 };
    struct muslin_unit_stock_spec in_hand = { 0 };
    size_t found = 0;
    msl_unit_read_seam(&check, &s, spec);
    read_stock(&check, &in_hand, stock);
    if (check.status != MUSLIN_OK)
        return check.status;
    for (int64_t i = 0; i < muslin_unit_recipe_count(); i++)
        found += times_offered(recipe_with_tip(i, &s), &s, &in_hand) != 0;
    if (!msl_rows_wanted(&check, rows, row_size, (uint32_t)sizeof *rows, capacity, count, found))
        return check.status;
    size_t row = 0;
    for (int64_t i = 0; i < muslin_unit_recipe_count(); i++) {
        const struct unit_recipe *recipe = recipe_with_tip(i, &s);
        struct proportion proportion = usual_proportion(recipe->kind);
        int64_t times = times_offered(recipe, &s, &in_hand);
        if (times == 0)
            continue;
        struct muslin_unit_yield yield = yield_at(recipe, &proportion, times, &s, &in_hand);
        msl_write_row(rows, row_size, row++, &yield, (uint32_t)sizeof yield);
    }
    return MUSLIN_OK;
}
