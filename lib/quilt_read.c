/* quilt_read.c - fabrics, measures and nodes read back as they were given.
 *
 * SPDX-License-Identifier: MIT */
#include "quilt_piecing.h"

enum {
    FABRIC_SPEC_LEAST = sizeof(struct muslin_quilt_fabric_spec),
    MEASURE_LEAST = sizeof(struct muslin_tree_measure),
    SUM_SPEC_LEAST = sizeof(struct muslin_quilt_sum_spec),
    PATCH_SPEC_LEAST = sizeof(struct muslin_quilt_patch_spec),
    UNIT_SPEC_LEAST = sizeof(struct muslin_quilt_unit_spec),
    JOIN_SPEC_LEAST = sizeof(struct muslin_quilt_join_spec),
    TRIM_SPEC_LEAST = sizeof(struct muslin_quilt_trim_spec),
    PINWHEEL_SPEC_LEAST = sizeof(struct muslin_quilt_pinwheel_spec),
    SET_IN_SPEC_LEAST = sizeof(struct muslin_quilt_set_in_spec),
    DIAGONAL_SPEC_LEAST = sizeof(struct muslin_quilt_diagonal_spec),
    SIXTY_SPEC_LEAST = sizeof(struct muslin_quilt_sixty_spec),
    SIXTY_PIECE_SPEC_LEAST = sizeof(struct muslin_quilt_sixty_piece_spec),
    CORNER_SPEC_LEAST = sizeof(struct muslin_corner_spec)
};

/* ---- ids -------------------------------------------------------------------------------------------------------- */

muslin_status muslin_quilt_id(const struct muslin_quilt *quilt, int32_t sort, int64_t number, muslin_id *out,
                              struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    msl_want_quilt(&check, quilt, out);
    msl_want_choice(&check, MUSLIN_ARG_SORT, sort, MUSLIN_SORT_FABRIC, MUSLIN_SORT_NODE);
    if (check.status != MUSLIN_OK)
        return check.status;
    int64_t used = msl_used_of(quilt, sort);
    if (number < 1 || number > used)
        return msl_fail(&check, MUSLIN_ERR_INDEX, MUSLIN_ARG_INDEX, number, used);
    *out = msl_id(quilt, sort, (uint32_t)number);
    return MUSLIN_OK;
}

/* The id of what an argument names; 0 where it names nothing. */
static muslin_id id_of(const struct muslin_quilt *quilt, int32_t sort, int32_t number)
{
    return number == 0 ? 0 : msl_id(quilt, sort, (uint32_t)number);
}

static muslin_id fabric_id(const struct muslin_quilt *quilt, int32_t number)
{
    return id_of(quilt, MUSLIN_SORT_FABRIC, number);
}

static muslin_id measure_id(const struct muslin_quilt *quilt, int32_t number)
{
    return id_of(quilt, MUSLIN_SORT_MEASURE, number);
}

static muslin_id node_id(const struct muslin_quilt *quilt, int32_t number)
{
    return id_of(quilt, MUSLIN_SORT_NODE, number);
}

/* ---- fabrics and measures --------------------------------------------------------------------------------------- */

muslin_status muslin_quilt_read_fabric(const struct muslin_quilt *quilt, muslin_id fabric,
                                       struct muslin_quilt_fabric_spec *out, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    msl_want_quilt(&check, quilt, out);
    msl_want_output(&check, out, FABRIC_SPEC_LEAST);
    uint32_t number = msl_want_id(&check, quilt, MUSLIN_SORT_FABRIC, MUSLIN_ARG_FABRIC, fabric);
    if (check.status != MUSLIN_OK)
        return check.status;
    const struct msl_fabric *kept = &quilt->fabrics[number - 1];
    const struct muslin_quilt_fabric_spec found = {
        .usable_width = kept->usable_width, .print = kept->print, .darkness = kept->darkness
    };
    msl_write_struct(out, &found, sizeof found);
    return MUSLIN_OK;
}

muslin_status muslin_quilt_read_measure(const struct muslin_quilt *quilt, muslin_id measure,
                                        struct muslin_tree_measure *out, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    msl_want_quilt(&check, quilt, out);
    msl_want_output(&check, out, MEASURE_LEAST);
    uint32_t number = msl_want_id(&check, quilt, MUSLIN_SORT_MEASURE, MUSLIN_ARG_MEASURE, measure);
    if (check.status != MUSLIN_OK)
        return check.status;
    const struct msl_row *row = msl_measure_row(quilt, number);
    const int32_t *args = msl_measure_args(quilt, number);
    struct muslin_tree_measure found = { .size = sizeof found, .kind = row->kind };
    if (row->kind == MUSLIN_MEASURE_SUM) {
        found.terms = row->count / 2;
    } else if (row->kind == MUSLIN_MEASURE_EXTENT) {
        found.node = node_id(quilt, args[0]);
        found.axis = args[1];
    } else {
        found.value = msl_get_long(args);
    }
    msl_write_struct(out, &found, sizeof found);
    return MUSLIN_OK;
}

/* A measure or a node of this kind; 0 after a failure. */
static int want_kind(struct msl_check *check, int32_t found, int32_t kind)
{
    if (found != kind)
        msl_fail(check, MUSLIN_ERR_CHOICE, MUSLIN_ARG_KIND, found, kind);
    return found == kind;
}

muslin_status muslin_quilt_read_terms(const struct muslin_quilt *quilt, muslin_id measure,
                                      struct muslin_quilt_sum_spec *rows, size_t row_size, size_t capacity,
                                      size_t *count, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    msl_want_quilt(&check, quilt, count);
    uint32_t number = msl_want_id(&check, quilt, MUSLIN_SORT_MEASURE, MUSLIN_ARG_MEASURE, measure);
    if (number == 0 || !want_kind(&check, msl_measure_row(quilt, number)->kind, MUSLIN_MEASURE_SUM))
        return check.status;
    size_t terms = msl_measure_row(quilt, number)->count / 2;
    if (!msl_rows_wanted(&check, rows, row_size, SUM_SPEC_LEAST, capacity, count, terms))
        return check.status;
    const int32_t *args = msl_measure_args(quilt, number);
    for (size_t i = 0; i < terms; i++) {
        const struct muslin_quilt_sum_spec term = {
            .measure = measure_id(quilt, args[2 * i]), .factor = args[2 * i + 1]
        };
        msl_write_row(rows, row_size, i, &term, sizeof term);
    }
    return MUSLIN_OK;
}

/* ---- nodes of one kind ------------------------------------------------------------------------------------------ */

/* The arguments of a node that must be of this kind; null after a failure. */
static const int32_t *want_node(struct msl_check *check, const struct muslin_quilt *quilt, muslin_id node, int32_t kind)
{
    uint32_t number = msl_want_id(check, quilt, MUSLIN_SORT_NODE, MUSLIN_ARG_NODE, node);
    if (number == 0 || !want_kind(check, msl_node_row(quilt, number)->kind, kind))
        return NULL;
    return msl_node_args(quilt, number);
}

/* The same where a spec is to be written. */
static const int32_t *want_spec(struct msl_check *check, const struct muslin_quilt *quilt, muslin_id node, int32_t kind,
                                const void *out, uint32_t least)
{
    msl_want_quilt(check, quilt, out);
    msl_want_output(check, out, least);
    return want_node(check, quilt, node, kind);
}

muslin_status muslin_quilt_read_patch(const struct muslin_quilt *quilt, muslin_id node,
                                      struct muslin_quilt_patch_spec *out, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    const int32_t *args = want_spec(&check, quilt, node, MUSLIN_NODE_PATCH, out, PATCH_SPEC_LEAST);
    if (args == NULL)
        return check.status;
    struct muslin_quilt_patch_spec found = MUSLIN_QUILT_PATCH_SPEC_INIT;
    found.fabric = fabric_id(quilt, args[PATCH_FABRIC]);
    found.width = measure_id(quilt, args[PATCH_WIDTH]);
    found.height = measure_id(quilt, args[PATCH_HEIGHT]);
    found.left = measure_id(quilt, args[PATCH_LEFT]);
    found.right = measure_id(quilt, args[PATCH_RIGHT]);
    found.top = measure_id(quilt, args[PATCH_TOP]);
    found.bottom = measure_id(quilt, args[PATCH_BOTTOM]);
    msl_write_struct(out, &found, sizeof found);
    return MUSLIN_OK;
}

muslin_status muslin_quilt_read_unit(const struct muslin_quilt *quilt, muslin_id node,
                                     struct muslin_quilt_unit_spec *out, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    const int32_t *args = want_spec(&check, quilt, node, MUSLIN_NODE_UNIT, out, UNIT_SPEC_LEAST);
    if (args == NULL)
        return check.status;
    struct muslin_quilt_unit_spec found = MUSLIN_QUILT_UNIT_SPEC_INIT;
    found.width = measure_id(quilt, args[UNIT_WIDTH]);
    found.height = measure_id(quilt, args[UNIT_HEIGHT]);
    found.corner = measure_id(quilt, args[UNIT_CORNER]);
    found.kind = args[UNIT_KIND];
    found.method = args[UNIT_METHOD];
    found.hand = args[UNIT_HAND];
    msl_write_struct(out, &found, sizeof found);
    return MUSLIN_OK;
}

/* Its flags say how it was made, so they are written too. */
muslin_status muslin_quilt_read_join(const struct muslin_quilt *quilt, muslin_id node,
                                     struct muslin_quilt_join_spec *out, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    const int32_t *args = want_spec(&check, quilt, node, MUSLIN_NODE_JOIN, out, JOIN_SPEC_LEAST);
    if (args == NULL)
        return check.status;
    struct muslin_quilt_join_spec found = MUSLIN_QUILT_JOIN_SPEC_INIT;
    found.axis = args[JOIN_AXIS];
    found.piecing = args[JOIN_PIECING];
    found.press = args[JOIN_PRESS];
    msl_write_struct(out, &found, sizeof found);
    out->flags = (uint32_t)args[JOIN_FLAGS];
    return MUSLIN_OK;
}

muslin_status muslin_quilt_read_trim(const struct muslin_quilt *quilt, muslin_id node,
                                     struct muslin_quilt_trim_spec *out, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    const int32_t *args = want_spec(&check, quilt, node, MUSLIN_NODE_TRIM, out, TRIM_SPEC_LEAST);
    if (args == NULL)
        return check.status;
    struct muslin_quilt_trim_spec found = MUSLIN_QUILT_TRIM_SPEC_INIT;
    found.left = measure_id(quilt, args[TRIM_LEFT]);
    found.right = measure_id(quilt, args[TRIM_RIGHT]);
    found.top = measure_id(quilt, args[TRIM_TOP]);
    found.bottom = measure_id(quilt, args[TRIM_BOTTOM]);
    msl_write_struct(out, &found, sizeof found);
    return MUSLIN_OK;
}

muslin_status muslin_quilt_read_pinwheel(const struct muslin_quilt *quilt, muslin_id node,
                                         struct muslin_quilt_pinwheel_spec *out, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    const int32_t *args = want_spec(&check, quilt, node, MUSLIN_NODE_PINWHEEL, out, PINWHEEL_SPEC_LEAST);
    if (args == NULL)
        return check.status;
    struct muslin_quilt_pinwheel_spec found = MUSLIN_QUILT_PINWHEEL_SPEC_INIT;
    found.centre = node_id(quilt, args[PINWHEEL_CENTRE]);
    found.top = node_id(quilt, args[PINWHEEL_TOP]);
    found.right = node_id(quilt, args[PINWHEEL_RIGHT]);
    found.bottom = node_id(quilt, args[PINWHEEL_BOTTOM]);
    found.left = node_id(quilt, args[PINWHEEL_LEFT]);
    msl_write_struct(out, &found, sizeof found);
    return MUSLIN_OK;
}

muslin_status muslin_quilt_read_set_in(const struct muslin_quilt *quilt, muslin_id node,
                                       struct muslin_quilt_set_in_spec *out, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    const int32_t *args = want_spec(&check, quilt, node, MUSLIN_NODE_SET_IN, out, SET_IN_SPEC_LEAST);
    if (args == NULL)
        return check.status;
    const int32_t *widths = args + SET_IN_WIDTHS;
    const int32_t *fabrics = args + SET_IN_FABRICS;
    struct muslin_quilt_set_in_spec found = MUSLIN_QUILT_SET_IN_SPEC_INIT;
    found.centre = node_id(quilt, args[SET_IN_CENTRE]);
    found.left_width = measure_id(quilt, widths[0]);
    found.right_width = measure_id(quilt, widths[1]);
    found.top_width = measure_id(quilt, widths[2]);
    found.bottom_width = measure_id(quilt, widths[3]);
    found.left_fabric = fabric_id(quilt, fabrics[0]);
    found.right_fabric = fabric_id(quilt, fabrics[1]);
    found.top_fabric = fabric_id(quilt, fabrics[2]);
    found.bottom_fabric = fabric_id(quilt, fabrics[3]);
    msl_write_struct(out, &found, sizeof found);
    return MUSLIN_OK;
}

muslin_status muslin_quilt_read_diagonal(const struct muslin_quilt *quilt, muslin_id node,
                                         struct muslin_quilt_diagonal_spec *out, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    const int32_t *args = want_spec(&check, quilt, node, MUSLIN_NODE_DIAGONAL, out, DIAGONAL_SPEC_LEAST);
    if (args == NULL)
        return check.status;
    struct muslin_quilt_diagonal_spec found = MUSLIN_QUILT_DIAGONAL_SPEC_INIT;
    found.columns = args[DIAGONAL_COLUMNS];
    found.rows = args[DIAGONAL_ROWS];
    found.side_fabric = fabric_id(quilt, args[DIAGONAL_SIDE_FABRIC]);
    found.corner_fabric = fabric_id(quilt, args[DIAGONAL_CORNER_FABRIC]);
    found.set_off = measure_id(quilt, args[DIAGONAL_SET_OFF]);
    found.sash = measure_id(quilt, args[DIAGONAL_SASH]);
    found.sash_fabric = fabric_id(quilt, args[DIAGONAL_SASH_FABRIC]);
    found.cornerstone = fabric_id(quilt, args[DIAGONAL_CORNERSTONE]);
    found.layout = args[DIAGONAL_LAYOUT];
    msl_write_struct(out, &found, sizeof found);
    return MUSLIN_OK;
}

/* ---- rows of 60 degree pieces ----------------------------------------------------------------------------------- */

muslin_status muslin_quilt_read_sixty(const struct muslin_quilt *quilt, muslin_id node,
                                      struct muslin_quilt_sixty_spec *out, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    const int32_t *args = want_spec(&check, quilt, node, MUSLIN_NODE_SIXTY, out, SIXTY_SPEC_LEAST);
    if (args == NULL)
        return check.status;
    struct muslin_quilt_sixty_spec found = MUSLIN_QUILT_SIXTY_SPEC_INIT;
    found.cells = args[SIXTY_CELLS];
    found.rows = args[SIXTY_ROWS];
    found.height = measure_id(quilt, args[SIXTY_HEIGHT]);
    found.end_fabric = fabric_id(quilt, args[SIXTY_END_FABRIC]);
    found.first = args[SIXTY_FIRST];
    msl_write_struct(out, &found, sizeof found);
    return MUSLIN_OK;
}

muslin_status muslin_quilt_read_sixty_pieces(const struct muslin_quilt *quilt, muslin_id node,
                                             struct muslin_quilt_sixty_piece_spec *rows, size_t row_size,
                                             size_t capacity, size_t *count, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    msl_want_quilt(&check, quilt, count);
    const int32_t *args = want_node(&check, quilt, node, MUSLIN_NODE_SIXTY);
    if (args == NULL)
        return check.status;
    size_t pieces = (msl_node_row(quilt, (uint32_t)muslin_id_number(node))->count - SIXTY_PIECES) / 2;
    if (!msl_rows_wanted(&check, rows, row_size, SIXTY_PIECE_SPEC_LEAST, capacity, count, pieces))
        return check.status;
    for (size_t i = 0; i < pieces; i++) {
        const int32_t *kept = args + SIXTY_PIECES + 2 * i;
        const struct muslin_quilt_sixty_piece_spec piece = { .fabric = fabric_id(quilt, kept[0]), .cells = kept[1] };
        msl_write_row(rows, row_size, i, &piece, sizeof piece);
    }
    return MUSLIN_OK;
}

/* ---- shapes, and fabrics of units and shapes -------------------------------------------------------------------- */

enum { OUTLINE_CORNERS = 4 };

static void write_corner(struct muslin_corner_spec *corners, size_t row_size, int32_t row, int32_t piece, int32_t x,
                         int32_t y)
{
    struct muslin_corner_spec corner = MUSLIN_CORNER_SPEC_INIT;
    corner.piece = piece;
    corner.x = x;
    corner.y = y;
    msl_write_row(corners, row_size, (size_t)row, &corner, sizeof corner);
}

/* The outline, counter-clockwise from (0, 0), then all pieces. */
static void write_drawing(const int32_t *args, struct muslin_corner_spec *corners, size_t row_size)
{
    const int32_t width = args[SHAPE_DRAWN_WIDTH];
    const int32_t height = args[SHAPE_DRAWN_HEIGHT];
    const int32_t *places = args + SHAPE_FABRICS + args[SHAPE_PIECES];
    const int32_t *piecing = places + 2 * (int64_t)args[SHAPE_CORNERS];
    write_corner(corners, row_size, 0, MUSLIN_SHAPE_OUTLINE, 0, 0);
    write_corner(corners, row_size, 1, MUSLIN_SHAPE_OUTLINE, width, 0);
    write_corner(corners, row_size, 2, MUSLIN_SHAPE_OUTLINE, width, height);
    write_corner(corners, row_size, 3, MUSLIN_SHAPE_OUTLINE, 0, height);
    for (int32_t piece = 0; piece < args[SHAPE_PIECES]; piece++)
        for (int32_t i = msl_first_corner(piecing, piece); i < msl_first_corner(piecing, piece + 1); i++)
            write_corner(corners, row_size, OUTLINE_CORNERS + i, piece, places[2 * i], places[2 * i + 1]);
}

muslin_status muslin_quilt_read_shape(const struct muslin_quilt *quilt, muslin_id node,
                                      struct muslin_corner_spec *corners, size_t row_size, size_t capacity,
                                      size_t *count, muslin_id *width, muslin_id *height,
                                      struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    msl_want_quilt(&check, quilt, count);
    msl_want_pointer(&check, MUSLIN_ARG_OUTPUT, width);
    msl_want_pointer(&check, MUSLIN_ARG_OUTPUT, height);
    const int32_t *args = want_node(&check, quilt, node, MUSLIN_NODE_SHAPE);
    if (args == NULL)
        return check.status;
    size_t needed = OUTLINE_CORNERS + (size_t)args[SHAPE_CORNERS];
    if (msl_rows_wanted(&check, corners, row_size, CORNER_SPEC_LEAST, capacity, count, needed))
        write_drawing(args, corners, row_size);
    if (check.status != MUSLIN_OK)
        return check.status;
    *width = measure_id(quilt, args[SHAPE_WIDTH]);
    *height = measure_id(quilt, args[SHAPE_HEIGHT]);
    return MUSLIN_OK;
}

/* The first of the fabrics, and how many they are; null of a node that has no such row of them. */
static const int32_t *fabrics_of(const struct muslin_quilt *quilt, uint32_t node, size_t *n)
{
    const int32_t *args = msl_node_args(quilt, node);
    if (msl_node_row(quilt, node)->kind == MUSLIN_NODE_UNIT) {
        *n = args[UNIT_PIECING - 1] == 0 ? 2 : 3;
        return args + UNIT_FABRICS;
    }
    if (msl_node_row(quilt, node)->kind != MUSLIN_NODE_SHAPE)
        return NULL;
    *n = (size_t)args[SHAPE_PIECES];
    return args + SHAPE_FABRICS;
}

muslin_status muslin_quilt_read_fabrics(const struct muslin_quilt *quilt, muslin_id node, muslin_id *ids,
                                        size_t capacity, size_t *count, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    msl_want_quilt(&check, quilt, count);
    uint32_t number = msl_want_id(&check, quilt, MUSLIN_SORT_NODE, MUSLIN_ARG_NODE, node);
    if (check.status != MUSLIN_OK)
        return check.status;
    size_t n = 0;
    const int32_t *fabrics = fabrics_of(quilt, number, &n);
    if (fabrics == NULL)
        return msl_fail(&check, MUSLIN_ERR_CHOICE, MUSLIN_ARG_KIND, msl_node_row(quilt, number)->kind,
                        MUSLIN_NODE_SHAPE);
    if (!msl_ids_wanted(&check, ids, capacity, count, n))
        return check.status;
    for (size_t i = 0; i < n; i++)
        ids[i] = fabric_id(quilt, fabrics[i]);
    return MUSLIN_OK;
}
