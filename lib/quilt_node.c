/* quilt_node.c - patches, joins, turns, trims: what all else is made of.
 *
 * SPDX-License-Identifier: MIT */
#include "quilt_store.h"

enum {
    PATCH_SPEC_LEAST = sizeof(struct muslin_quilt_patch_spec),
    JOIN_SPEC_LEAST = sizeof(struct muslin_quilt_join_spec),
    TRIM_SPEC_LEAST = sizeof(struct muslin_quilt_trim_spec)
};

/* ---- patches ---------------------------------------------------------------------------------------------------- */

muslin_status muslin_quilt_patch_spec_init(struct muslin_quilt_patch_spec *spec, uint32_t size)
{
    static const struct muslin_quilt_patch_spec initial = MUSLIN_QUILT_PATCH_SPEC_INIT;
    return msl_init_struct(spec, size, &initial, sizeof initial, PATCH_SPEC_LEAST);
}

uint32_t msl_add_patch(struct msl_check *check, struct muslin_quilt *quilt, uint32_t fabric, uint32_t width,
                       uint32_t height)
{
    int32_t *args = msl_begin(check, quilt, PATCH_ARGS);
    if (args == NULL)
        return 0;
    args[PATCH_FABRIC] = (int32_t)fabric;
    args[PATCH_WIDTH] = (int32_t)width;
    args[PATCH_HEIGHT] = (int32_t)height;
    for (uint32_t edge = PATCH_LEFT; edge < PATCH_ARGS; edge++)
        args[edge] = MSL_ALLOWANCE;
    return msl_end_node(check, quilt, MUSLIN_NODE_PATCH, PATCH_ARGS);
}

/* A measure of a spec, with its number among those that share a name. */
static int32_t want_measure(struct msl_check *check, const struct muslin_quilt *quilt, muslin_id id, int64_t at)
{
    check->at = at;
    return (int32_t)msl_want_id(check, quilt, MUSLIN_SORT_MEASURE, MUSLIN_ARG_MEASURE, id);
}

static int32_t want_measure_or(struct msl_check *check, const struct muslin_quilt *quilt, muslin_id id, int64_t at,
                               uint32_t usual)
{
    check->at = at;
    return (int32_t)msl_want_id_or(check, quilt, MUSLIN_SORT_MEASURE, MUSLIN_ARG_MEASURE, id, usual);
}

muslin_status muslin_quilt_patch(struct muslin_quilt *quilt, const struct muslin_quilt_patch_spec *spec, muslin_id *out,
                                 struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct muslin_quilt_patch_spec in;
    msl_want_quilt(&check, quilt, out);
    msl_read_struct(&check, MUSLIN_ARG_SPEC, &in, sizeof in, PATCH_SPEC_LEAST, 0, spec);
    if (check.status != MUSLIN_OK)
        return check.status;
    struct msl_mark mark = msl_mark(quilt);
    int32_t *args = msl_begin(&check, quilt, PATCH_ARGS);
    if (args == NULL)
        return check.status;
    args[PATCH_FABRIC] = (int32_t)msl_want_id(&check, quilt, MUSLIN_SORT_FABRIC, MUSLIN_ARG_FABRIC, in.fabric);
    args[PATCH_WIDTH] = want_measure(&check, quilt, in.width, 0);
    args[PATCH_HEIGHT] = want_measure(&check, quilt, in.height, 1);
    args[PATCH_LEFT] = want_measure_or(&check, quilt, in.left, 2, MSL_ALLOWANCE);
    args[PATCH_RIGHT] = want_measure_or(&check, quilt, in.right, 3, MSL_ALLOWANCE);
    args[PATCH_TOP] = want_measure_or(&check, quilt, in.top, 4, MSL_ALLOWANCE);
    args[PATCH_BOTTOM] = want_measure_or(&check, quilt, in.bottom, 5, MSL_ALLOWANCE);
    if (check.status != MUSLIN_OK)
        return check.status;
    return msl_give_node(&check, quilt, mark, msl_end_node(&check, quilt, MUSLIN_NODE_PATCH, PATCH_ARGS), out);
}

/* ---- joins ------------------------------------------------------------------------------------------------------ */

muslin_status muslin_quilt_join_spec_init(struct muslin_quilt_join_spec *spec, uint32_t size)
{
    static const struct muslin_quilt_join_spec initial = MUSLIN_QUILT_JOIN_SPEC_INIT;
    return msl_init_struct(spec, size, &initial, sizeof initial, JOIN_SPEC_LEAST);
}

int32_t *msl_begin_join(struct msl_check *check, struct muslin_quilt *quilt, int32_t axis, uint32_t n)
{
    int32_t *args = msl_begin(check, quilt, JOIN_CHILDREN + n);
    if (args == NULL)
        return NULL;
    args[JOIN_AXIS] = axis;
    args[JOIN_FLAGS] = 0;
    args[JOIN_PIECING] = MUSLIN_STRIP_PIECING_WHERE_FEWER;
    args[JOIN_PRESS] = MUSLIN_SEAM_PRESS_FREE;
    return args + JOIN_CHILDREN;
}

uint32_t msl_end_join(struct msl_check *check, struct muslin_quilt *quilt, uint32_t n)
{
    if (n == 1)
        return (uint32_t)quilt->args[quilt->args_used + JOIN_CHILDREN];
    return msl_end_node(check, quilt, MUSLIN_NODE_JOIN, JOIN_CHILDREN + n);
}

uint32_t msl_add_join(struct msl_check *check, struct muslin_quilt *quilt, int32_t axis, const uint32_t *children,
                      uint32_t n)
{
    int32_t *args = msl_begin_join(check, quilt, axis, n);
    if (args == NULL)
        return 0;
    for (uint32_t i = 0; i < n; i++)
        args[i] = (int32_t)children[i];
    return msl_end_join(check, quilt, n);
}

/* How many children a call may give: as many as the argument store can hold. */
void msl_want_children(struct msl_check *check, const void *children, size_t n)
{
    msl_want_pointer(check, MUSLIN_ARG_CHILDREN, children);
    msl_want_between(check, MUSLIN_ARG_CHILDREN, n > MSL_CHILDREN_MOST ? MSL_CHILDREN_MOST + 1 : (int64_t)n, 1,
                     MSL_CHILDREN_MOST);
}

muslin_status muslin_quilt_join(struct muslin_quilt *quilt, const struct muslin_quilt_join_spec *spec,
                                const muslin_id *children, size_t n, muslin_id *out, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct muslin_quilt_join_spec in;
    msl_want_quilt(&check, quilt, out);
    msl_read_struct(&check, MUSLIN_ARG_SPEC, &in, sizeof in, JOIN_SPEC_LEAST, MUSLIN_QUILT_JOIN_KEEPS_ORDER, spec);
    msl_want_children(&check, children, n);
    if (check.status != MUSLIN_OK)
        return check.status;
    msl_want_choice(&check, MUSLIN_ARG_AXIS, in.axis, MUSLIN_AXIS_ACROSS, MUSLIN_AXIS_DOWN);
    msl_want_choice(&check, MUSLIN_ARG_STRIP_PIECING, in.piecing, MUSLIN_STRIP_PIECING_WHERE_FEWER,
                    MUSLIN_STRIP_PIECING_NEVER);
    msl_want_choice(&check, MUSLIN_ARG_PRESS, in.press, MUSLIN_SEAM_PRESS_FREE, MUSLIN_SEAM_PRESS_OPEN);
    msl_want_pad(&check, in.pad);
    struct msl_mark mark = msl_mark(quilt);
    int32_t *args = msl_begin_join(&check, quilt, in.axis, (uint32_t)n);
    for (size_t i = 0; args != NULL && i < n; i++) {
        check.at = (int64_t)i;
        args[i] = (int32_t)msl_want_id(&check, quilt, MUSLIN_SORT_NODE, MUSLIN_ARG_NODE, children[i]);
    }
    if (check.status != MUSLIN_OK)
        return check.status;
    check.at = 0;
    args -= JOIN_CHILDREN;
    args[JOIN_FLAGS] = (int32_t)in.flags;
    args[JOIN_PIECING] = in.piecing;
    args[JOIN_PRESS] = in.press;
    return msl_give_node(&check, quilt, mark, msl_end_join(&check, quilt, (uint32_t)n), out);
}

/* ---- turns ------------------------------------------------------------------------------------------------------ */

uint32_t msl_add_turn(struct msl_check *check, struct muslin_quilt *quilt, uint32_t node, int32_t how)
{
    if (msl_node_row(quilt, node)->kind == MUSLIN_NODE_TURN) { /* turns of turns are one */
        const int32_t *inner = msl_node_args(quilt, node);
        how = msl_turn_after(how, inner[TURN_HOW]);
        node = (uint32_t)inner[TURN_CHILD];
    }
    if (how == 0)
        return node;
    int32_t *args = msl_begin(check, quilt, TURN_ARGS);
    if (args == NULL)
        return 0;
    args[TURN_HOW] = how;
    args[TURN_CHILD] = (int32_t)node;
    return msl_end_node(check, quilt, MUSLIN_NODE_TURN, TURN_ARGS);
}

static muslin_status turned(struct msl_check *check, struct muslin_quilt *quilt, muslin_id node, int32_t how,
                            muslin_id *out)
{
    uint32_t number = msl_want_id(check, quilt, MUSLIN_SORT_NODE, MUSLIN_ARG_NODE, node);
    if (check->status != MUSLIN_OK)
        return check->status;
    struct msl_mark mark = msl_mark(quilt);
    return msl_give_node(check, quilt, mark, msl_add_turn(check, quilt, number, how), out);
}

muslin_status muslin_quilt_turn(struct muslin_quilt *quilt, muslin_id node, int32_t quarter_turns, muslin_id *out,
                                struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    msl_want_quilt(&check, quilt, out);
    msl_want_between(&check, MUSLIN_ARG_QUARTER_TURNS, quarter_turns, 0, 3);
    return check.status == MUSLIN_OK ? turned(&check, quilt, node, quarter_turns, out) : check.status;
}

muslin_status muslin_quilt_mirror(struct muslin_quilt *quilt, muslin_id node, muslin_id *out,
                                  struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    msl_want_quilt(&check, quilt, out);
    return check.status == MUSLIN_OK ? turned(&check, quilt, node, MSL_TURN_MIRRORED, out) : check.status;
}

muslin_status muslin_quilt_lay(struct muslin_quilt *quilt, muslin_id node, int32_t quarter_turns, int32_t mirrored,
                               muslin_id *out, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    msl_want_quilt(&check, quilt, out);
    msl_want_between(&check, MUSLIN_ARG_QUARTER_TURNS, quarter_turns, 0, 3);
    msl_want_choice(&check, MUSLIN_ARG_MIRRORED, mirrored, 0, 1);
    if (check.status != MUSLIN_OK)
        return check.status;
    return turned(&check, quilt, node, mirrored * MSL_TURN_MIRRORED + quarter_turns, out);
}

/* ---- trims ------------------------------------------------------------------------------------------------------ */

muslin_status muslin_quilt_trim_spec_init(struct muslin_quilt_trim_spec *spec, uint32_t size)
{
    static const struct muslin_quilt_trim_spec initial = MUSLIN_QUILT_TRIM_SPEC_INIT;
    return msl_init_struct(spec, size, &initial, sizeof initial, TRIM_SPEC_LEAST);
}

muslin_status muslin_quilt_trim(struct muslin_quilt *quilt, muslin_id node, const struct muslin_quilt_trim_spec *spec,
                                muslin_id *out, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct muslin_quilt_trim_spec in;
    msl_want_quilt(&check, quilt, out);
    msl_read_struct(&check, MUSLIN_ARG_SPEC, &in, sizeof in, TRIM_SPEC_LEAST, 0, spec);
    if (check.status != MUSLIN_OK)
        return check.status;
    struct msl_mark mark = msl_mark(quilt);
    int32_t *args = msl_begin(&check, quilt, TRIM_ARGS);
    if (args == NULL)
        return check.status;
    args[TRIM_CHILD] = (int32_t)msl_want_id(&check, quilt, MUSLIN_SORT_NODE, MUSLIN_ARG_NODE, node);
    args[TRIM_LEFT] = want_measure_or(&check, quilt, in.left, 0, 0);
    args[TRIM_RIGHT] = want_measure_or(&check, quilt, in.right, 1, 0);
    args[TRIM_TOP] = want_measure_or(&check, quilt, in.top, 2, 0);
    args[TRIM_BOTTOM] = want_measure_or(&check, quilt, in.bottom, 3, 0);
    if (check.status != MUSLIN_OK)
        return check.status;
    return msl_give_node(&check, quilt, mark, msl_end_node(&check, quilt, MUSLIN_NODE_TRIM, TRIM_ARGS), out);
}
