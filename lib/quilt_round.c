/* quilt_round.c - what grows round a centre: pinwheels, mitred strips, logs, borders with corners of their own.
 *
 * SPDX-License-Identifier: MIT
 *
 * Pinwheels and mitred strips are nodes of their own kinds; logs and borders are joins of patches and nodes. */
#include "quilt_store.h"

enum {
    PINWHEEL_SPEC_LEAST = sizeof(struct muslin_quilt_pinwheel_spec),
    SET_IN_SPEC_LEAST = sizeof(struct muslin_quilt_set_in_spec),
    LOG_SPEC_LEAST = sizeof(struct muslin_quilt_log_spec),
    SURROUND_SPEC_LEAST = sizeof(struct muslin_quilt_surround_spec),
    SIDES = 4,
    SURROUND_NODES = 9
};

/* Nodes of a spec, one after the other, as numbers. */
static void want_nodes(struct msl_check *check, const struct muslin_quilt *quilt, const muslin_id *ids, uint32_t n,
                       int32_t *numbers)
{
    for (uint32_t i = 0; check->status == MUSLIN_OK && i < n; i++) {
        check->at = i;
        numbers[i] = (int32_t)msl_want_id(check, quilt, MUSLIN_SORT_NODE, MUSLIN_ARG_NODE, ids[i]);
    }
    if (check->status == MUSLIN_OK)
        check->at = 0;
}

/* ---- pinwheels -------------------------------------------------------------------------------------------------- */

muslin_status muslin_quilt_pinwheel_spec_init(struct muslin_quilt_pinwheel_spec *spec, uint32_t size)
{
    static const struct muslin_quilt_pinwheel_spec initial = MUSLIN_QUILT_PINWHEEL_SPEC_INIT;
    return msl_init_struct(spec, size, &initial, sizeof initial, PINWHEEL_SPEC_LEAST);
}

muslin_status muslin_quilt_pinwheel(struct muslin_quilt *quilt, const struct muslin_quilt_pinwheel_spec *spec,
                                    muslin_id *out, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct muslin_quilt_pinwheel_spec in;
    msl_want_quilt(&check, quilt, out);
    msl_read_struct(&check, MUSLIN_ARG_SPEC, &in, sizeof in, PINWHEEL_SPEC_LEAST, 0, spec);
    if (check.status != MUSLIN_OK)
        return check.status;
    struct msl_mark mark = msl_mark(quilt);
    const muslin_id nodes[PINWHEEL_ARGS] = { in.centre, in.top, in.right, in.bottom, in.left };
    int32_t *args = msl_begin(&check, quilt, PINWHEEL_ARGS);
    want_nodes(&check, quilt, nodes, PINWHEEL_ARGS, args);
    if (check.status != MUSLIN_OK)
        return check.status;
    return msl_give_node(&check, quilt, mark, msl_end_node(&check, quilt, MUSLIN_NODE_PINWHEEL, PINWHEEL_ARGS), out);
}

/* ---- strips with mitred corners --------------------------------------------------------------------------------- */

muslin_status muslin_quilt_set_in_spec_init(struct muslin_quilt_set_in_spec *spec, uint32_t size)
{
    static const struct muslin_quilt_set_in_spec initial = MUSLIN_QUILT_SET_IN_SPEC_INIT;
    return msl_init_struct(spec, size, &initial, sizeof initial, SET_IN_SPEC_LEAST);
}

/* A strip has a width and a fabric; where there is none, neither. */
static void want_strips(struct msl_check *check, const struct muslin_quilt *quilt,
                        const struct muslin_quilt_set_in_spec *in, int32_t *args)
{
    const muslin_id widths[SIDES] = { in->left_width, in->right_width, in->top_width, in->bottom_width };
    const muslin_id fabrics[SIDES] = { in->left_fabric, in->right_fabric, in->top_fabric, in->bottom_fabric };
    int64_t strips = 0;
    for (int side = 0; check->status == MUSLIN_OK && side < SIDES; side++) {
        int32_t *width = &args[SET_IN_WIDTHS + side];
        int32_t *fabric = &args[SET_IN_FABRICS + side];
        check->at = side;
        *width = (int32_t)msl_want_id_or(check, quilt, MUSLIN_SORT_MEASURE, MUSLIN_ARG_MEASURE, widths[side], 0);
        *fabric = 0;
        if (*width != 0)
            *fabric = (int32_t)msl_want_id(check, quilt, MUSLIN_SORT_FABRIC, MUSLIN_ARG_FABRIC, fabrics[side]);
        else
            msl_want_between(check, MUSLIN_ARG_FABRIC, fabrics[side], 0, 0);
        strips += *width != 0;
    }
    check->at = 0;
    msl_want_between(check, MUSLIN_ARG_STRIPS, strips, 1, SIDES);
}

muslin_status muslin_quilt_set_in(struct muslin_quilt *quilt, const struct muslin_quilt_set_in_spec *spec,
                                  muslin_id *out, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct muslin_quilt_set_in_spec in;
    msl_want_quilt(&check, quilt, out);
    msl_read_struct(&check, MUSLIN_ARG_SPEC, &in, sizeof in, SET_IN_SPEC_LEAST, 0, spec);
    if (check.status != MUSLIN_OK)
        return check.status;
    struct msl_mark mark = msl_mark(quilt);
    int32_t *args = msl_begin(&check, quilt, SET_IN_ARGS);
    want_nodes(&check, quilt, &in.centre, 1, args);
    want_strips(&check, quilt, &in, args);
    if (check.status != MUSLIN_OK)
        return check.status;
    return msl_give_node(&check, quilt, mark, msl_end_node(&check, quilt, MUSLIN_NODE_SET_IN, SET_IN_ARGS), out);
}

/* ---- logs ------------------------------------------------------------------------------------------------------- */

muslin_status muslin_quilt_log_spec_init(struct muslin_quilt_log_spec *spec, uint32_t size)
{
    static const struct muslin_quilt_log_spec initial = MUSLIN_QUILT_LOG_SPEC_INIT;
    return msl_init_struct(spec, size, &initial, sizeof initial, LOG_SPEC_LEAST);
}

/* Sews one log, as long as what is there, to what is there. */
static uint32_t add_log(struct msl_check *check, struct muslin_quilt *quilt, uint32_t there,
                        const struct muslin_quilt_log_spec *in)
{
    uint32_t fabric = msl_want_id(check, quilt, MUSLIN_SORT_FABRIC, MUSLIN_ARG_FABRIC, in->fabric);
    uint32_t width = msl_want_id(check, quilt, MUSLIN_SORT_MEASURE, MUSLIN_ARG_MEASURE, in->width);
    msl_want_choice(check, MUSLIN_ARG_LOG_SIDE, in->side, MUSLIN_SIDE_LEFT, MUSLIN_SIDE_BOTTOM);
    msl_want_pad(check, in->pad);
    int beside = in->side == MUSLIN_SIDE_LEFT || in->side == MUSLIN_SIDE_RIGHT;
    int before = in->side == MUSLIN_SIDE_LEFT || in->side == MUSLIN_SIDE_TOP;
    uint32_t length = msl_add_extent(check, quilt, there, beside ? MUSLIN_AXIS_DOWN : MUSLIN_AXIS_ACROSS);
    uint32_t log = msl_add_patch(check, quilt, fabric, beside ? width : length, beside ? length : width);
    const uint32_t pair[] = { before ? log : there, before ? there : log };
    return msl_add_join(check, quilt, beside ? MUSLIN_AXIS_ACROSS : MUSLIN_AXIS_DOWN, pair, 2);
}

muslin_status muslin_quilt_logs(struct muslin_quilt *quilt, muslin_id centre, const struct muslin_quilt_log_spec *logs,
                                size_t row_size, size_t n, muslin_id *out, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    msl_want_quilt(&check, quilt, out);
    if (n != 0) {
        msl_want_pointer(&check, MUSLIN_ARG_ROWS, logs);
        msl_want_row_size(&check, row_size, LOG_SPEC_LEAST);
    }
    uint32_t there = msl_want_id(&check, quilt, MUSLIN_SORT_NODE, MUSLIN_ARG_NODE, centre);
    if (check.status != MUSLIN_OK)
        return check.status;
    struct msl_mark mark = msl_mark(quilt);
    for (size_t i = 0; check.status == MUSLIN_OK && i < n; i++) {
        struct muslin_quilt_log_spec in;
        const void *row = msl_row_to_read(&check, logs, row_size, i);
        msl_read_struct(&check, MUSLIN_ARG_ROWS, &in, sizeof in, LOG_SPEC_LEAST, 0, row);
        there = add_log(&check, quilt, there, &in);
    }
    return msl_give_node(&check, quilt, mark, there, out);
}

/* ---- borders with corners --------------------------------------------------------------------------------------- */

muslin_status muslin_quilt_surround_spec_init(struct muslin_quilt_surround_spec *spec, uint32_t size)
{
    static const struct muslin_quilt_surround_spec initial = MUSLIN_QUILT_SURROUND_SPEC_INIT;
    return msl_init_struct(spec, size, &initial, sizeof initial, SURROUND_SPEC_LEAST);
}

static uint32_t add_row(struct msl_check *check, struct muslin_quilt *quilt, int32_t left, int32_t middle,
                        int32_t right)
{
    const uint32_t row[] = { (uint32_t)left, (uint32_t)middle, (uint32_t)right };
    return msl_add_join(check, quilt, MUSLIN_AXIS_ACROSS, row, 3);
}

/* The middle row is made first, as it is sewn. */
static uint32_t add_surround(struct msl_check *check, struct muslin_quilt *quilt, const int32_t *nodes)
{
    enum { CENTRE, LEFT, RIGHT, TOP, BOTTOM, TOP_LEFT, TOP_RIGHT, BOTTOM_LEFT, BOTTOM_RIGHT };
    uint32_t middle = add_row(check, quilt, nodes[LEFT], nodes[CENTRE], nodes[RIGHT]);
    uint32_t top = add_row(check, quilt, nodes[TOP_LEFT], nodes[TOP], nodes[TOP_RIGHT]);
    uint32_t bottom = add_row(check, quilt, nodes[BOTTOM_LEFT], nodes[BOTTOM], nodes[BOTTOM_RIGHT]);
    const uint32_t rows[] = { top, middle, bottom };
    return msl_add_join(check, quilt, MUSLIN_AXIS_DOWN, rows, 3);
}

muslin_status muslin_quilt_surround(struct muslin_quilt *quilt, const struct muslin_quilt_surround_spec *spec,
                                    muslin_id *out, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct muslin_quilt_surround_spec in;
    msl_want_quilt(&check, quilt, out);
    msl_read_struct(&check, MUSLIN_ARG_SPEC, &in, sizeof in, SURROUND_SPEC_LEAST, 0, spec);
    if (check.status != MUSLIN_OK)
        return check.status;
    const muslin_id ids[SURROUND_NODES] = { in.centre, in.left, in.right, in.top, in.bottom, in.top_left,
                                            in.top_right, in.bottom_left, in.bottom_right };
    int32_t nodes[SURROUND_NODES];
    want_nodes(&check, quilt, ids, SURROUND_NODES, nodes);
    if (check.status != MUSLIN_OK)
        return check.status;
    struct msl_mark mark = msl_mark(quilt);
    return msl_give_node(&check, quilt, mark, add_surround(&check, quilt, nodes), out);
}
