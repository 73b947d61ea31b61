/* quilt_unit.c - pieced units by their recipes.
 *
 * SPDX-License-Identifier: MIT */
#include "quilt_piecing.h"
#include "unit_table.h"

enum { UNIT_SPEC_LEAST = sizeof(struct muslin_quilt_unit_spec) };

muslin_status muslin_quilt_unit_spec_init(struct muslin_quilt_unit_spec *spec, uint32_t size)
{
    static const struct muslin_quilt_unit_spec initial = MUSLIN_QUILT_UNIT_SPEC_INIT;
    return msl_init_struct(spec, size, &initial, sizeof initial, UNIT_SPEC_LEAST);
}

/* ---- how it is sewn --------------------------------------------------------------------------------------------- */

/* A unit large enough that no two corners fall together, and even, so that middles lie on their lines. */
enum { MODEL_WIDTH = 65536, MODEL_CORNERS = 64 };

struct model {
    int32_t pieces;
    int32_t height;
    int32_t first[MSL_UNIT_PATCHES + 1];
    int32_t places[2 * MODEL_CORNERS];
};

static void draw_model(struct model *model, int32_t kind, int32_t hand)
{
    const int32_t how = msl_unit_kind_of(kind)->height;
    struct muslin_unit_spec spec = MUSLIN_UNIT_SPEC_INIT;
    model->pieces = msl_unit_patches(kind);
    model->height = how == HEIGHT_HALF || how == HEIGHT_NEEDED ? MODEL_WIDTH / 2 : MODEL_WIDTH;
    model->first[0] = 0;
    spec.kind = kind;
    spec.finished_width = MODEL_WIDTH;
    spec.finished_height = model->height;
    spec.corner = MODEL_WIDTH / 4;
    int32_t corner = 0;
    for (int32_t i = 0; i < model->pieces; i++) {
        muslin_len x[MSL_UNIT_CORNERS];
        muslin_len y[MSL_UNIT_CORNERS];
        struct msl_unit_patch patch = msl_unit_patch(&spec, hand, MUSLIN_STAGE_FINISHED, i, x, y);
        for (int32_t k = 0; k < patch.corners; k++, corner++) {
            model->places[2 * corner] = (int32_t)x[k];
            model->places[2 * corner + 1] = (int32_t)y[k];
        }
        model->first[i + 1] = corner;
    }
}

/* ---- what it is made of ----------------------------------------------------------------------------------------- */

/* All but the single patches; those with slanted sides fill no rectangle. */
static void want_kind(struct msl_check *check, int32_t kind)
{
    msl_want_choice(check, MUSLIN_ARG_UNIT_KIND, kind, MUSLIN_UNIT_HALF_SQUARE, MUSLIN_UNIT_KALEIDOSCOPE);
    if (check->status == MUSLIN_OK && msl_unit_kind_of(kind)->untrimmed)
        msl_fail(check, MUSLIN_ERR_CHOICE, MUSLIN_ARG_UNIT_KIND, kind, MUSLIN_UNIT_KALEIDOSCOPE);
}

/* The recipe; null after a failure. Its tip changes nothing here. */
static const struct unit_recipe *want_recipe(struct msl_check *check, const struct muslin_quilt_unit_spec *in)
{
    want_kind(check, in->kind);
    msl_want_choice(check, MUSLIN_ARG_METHOD, in->method, MUSLIN_UNIT_METHOD_PIECES, MUSLIN_UNIT_METHOD_BIAS_STRIPS);
    if (check->status != MUSLIN_OK)
        return NULL;
    const struct unit_recipe *recipe = msl_unit_recipe_for(in->kind, in->method, MUSLIN_TIP_BLUNT);
    if (recipe == NULL)
        msl_fail(check, MUSLIN_ERR_METHOD, MUSLIN_ARG_METHOD, in->method, 0);
    msl_want_choice(check, MUSLIN_ARG_HAND, in->hand, MUSLIN_HAND_FIRST,
                    msl_unit_kind_of(in->kind)->hands == HANDS_NONE ? MUSLIN_HAND_FIRST : MUSLIN_HAND_MIRRORED);
    msl_want_pad(check, in->pad);
    return check->status == MUSLIN_OK ? recipe : NULL;
}

static int64_t regions_of(const struct unit_recipe *recipe)
{
    int64_t regions = 0;
    for (int32_t i = 0; i < recipe->rows; i++)
        regions = recipe->row[i].region > regions ? recipe->row[i].region : regions;
    return regions;
}

static void want_fabrics(struct msl_check *check, const struct unit_recipe *recipe, size_t n)
{
    if (check->status == MUSLIN_OK)
        msl_want_between(check, MUSLIN_ARG_FABRICS, n > MSL_CHILDREN_MOST ? MSL_CHILDREN_MOST : (int64_t)n,
                         regions_of(recipe), regions_of(recipe));
}

/* A measure of the spec that must be there, may be missing, or must be missing. */
enum taken { TAKEN, TAKEN_OR_NOT, NOT_TAKEN };

static int32_t want_taken(struct msl_check *check, const struct muslin_quilt *quilt, muslin_id id, int64_t at,
                          enum taken taken)
{
    check->at = at;
    if (taken == NOT_TAKEN)
        msl_want_between(check, MUSLIN_ARG_MEASURE, id, 0, 0);
    if (taken != TAKEN && id == 0)
        return 0;
    return (int32_t)msl_want_id(check, quilt, MUSLIN_SORT_MEASURE, MUSLIN_ARG_MEASURE, id);
}

static enum taken takes_height(const struct unit_kind *kind)
{
    if (kind->height == HEIGHT_NEEDED)
        return TAKEN;
    return kind->height == HEIGHT_SQUARE ? NOT_TAKEN : TAKEN_OR_NOT;
}

/* All arguments but how it is sewn. */
static void put_args(struct msl_check *check, const struct muslin_quilt *quilt, const struct muslin_quilt_unit_spec *in,
                     const muslin_id *fabrics, size_t n, int32_t *args)
{
    const struct unit_kind *kind = msl_unit_kind_of(in->kind);
    args[UNIT_KIND] = in->kind;
    args[UNIT_METHOD] = in->method;
    args[UNIT_HAND] = in->hand;
    args[UNIT_WIDTH] = want_taken(check, quilt, in->width, 0, TAKEN);
    args[UNIT_HEIGHT] = want_taken(check, quilt, in->height, 1, takes_height(kind));
    args[UNIT_CORNER] = want_taken(check, quilt, in->corner, 2, kind->takes_corner ? TAKEN : NOT_TAKEN);
    args[UNIT_PIECING - 1] = 0;
    for (size_t i = 0; i < n; i++) {
        check->at = (int64_t)i;
        args[UNIT_FABRICS + i] = (int32_t)msl_want_id(check, quilt, MUSLIN_SORT_FABRIC, MUSLIN_ARG_FABRIC, fabrics[i]);
    }
}

static uint32_t put_piecing(const struct model *model, int32_t *piecing)
{
    const struct msl_piecing_pattern pattern = { model->pieces, MODEL_WIDTH, model->height, 1, model->first,
                                         model->places };
    for (int32_t i = 0; i <= model->pieces; i++)
        piecing[PIECING_FIRST + i] = model->first[i];
    return msl_find_piecing(&pattern, piecing);
}

muslin_status muslin_quilt_unit(struct muslin_quilt *quilt, const struct muslin_quilt_unit_spec *spec,
                                const muslin_id *fabrics, size_t n, muslin_id *out, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct muslin_quilt_unit_spec in;
    msl_want_quilt(&check, quilt, out);
    msl_read_struct(&check, MUSLIN_ARG_SPEC, &in, sizeof in, UNIT_SPEC_LEAST, 0, spec);
    msl_want_pointer(&check, MUSLIN_ARG_FABRIC, fabrics);
    if (check.status != MUSLIN_OK)
        return check.status;
    want_fabrics(&check, want_recipe(&check, &in), n);
    if (check.status != MUSLIN_OK)
        return check.status;
    struct model model;
    draw_model(&model, in.kind, in.hand);
    const uint32_t room = msl_piecing_room((uint32_t)model.pieces, (uint32_t)model.first[model.pieces]);
    struct msl_mark mark = msl_mark(quilt);
    int32_t *args = msl_begin(&check, quilt, UNIT_PIECING + room);
    if (args == NULL)
        return check.status;
    put_args(&check, quilt, &in, fabrics, n, args);
    if (check.status != MUSLIN_OK)
        return check.status;
    check.at = 0;
    uint32_t count = UNIT_PIECING + put_piecing(&model, args + UNIT_PIECING);
    return msl_give_node(&check, quilt, mark, msl_end_node(&check, quilt, MUSLIN_NODE_UNIT, count), out);
}
