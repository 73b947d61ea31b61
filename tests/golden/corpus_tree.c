/* corpus_tree.c - small trees: fabrics, measures, patches, units, shapes, joins, turns; the rest is in
 * corpus_tree_round.c.
 *
 * SPDX-License-Identifier: MIT
 *
 * Parts are drawn from what there is, the newest most often, so that trees become deep; half of the makers make what
 * fits, the others take what comes, so that there is something to ease and to complain about. */
#include "corpus_tree.h"

/* ---- ids ------------------------------------------------------------------------------------------------------- */

/* Nothing, of another quilt, of another sort, not made yet, or just a number. */
static muslin_id draw_foreign(struct golden *g)
{
    muslin_id sort = draw_between(g, 1, 3);
    muslin_id number = draw_between(g, 1, 40);
    switch (draw_below(g, 4)) {
    case 0:
        return 0;
    case 1:
        return draw_length(g);
    default:
        return INT64_C(1) << 40 | sort << 36 | number;
    }
}

muslin_id draw_id(struct golden *g, const struct ids *ids)
{
    if (ids->used == 0 || draw_rarely(g, 120))
        return draw_foreign(g);
    int64_t one = draw_below(g, (int64_t)ids->used);
    int64_t other = draw_below(g, (int64_t)ids->used);
    return ids->of[one > other ? one : other];
}

muslin_id draw_id_rarely(struct golden *g, const struct ids *ids, int64_t n)
{
    return draw_rarely(g, n) ? draw_id(g, ids) : 0;
}

struct muslin_quilt *draw_quilt(struct golden *g, const struct tree *tree)
{
    return draw_rarely(g, 300) ? NULL : tree->quilt;
}

void told_id(struct golden *g, struct ids *ids, muslin_status status, const muslin_id *id)
{
    told(g, status);
    take_number(g, *id);
    if (status != MUSLIN_OK)
        return;
    int64_t place = ids->used < IDS ? (int64_t)ids->used++ : draw_below(g, IDS);
    ids->of[place] = *id;
}

/* ---- rows ------------------------------------------------------------------------------------------------------ */

size_t draw_room(struct golden *g, size_t most)
{
    return draw_rarely(g, 12) ? (size_t)draw_below(g, 3) : most;
}

size_t told_rows(struct golden *g, muslin_status status, const size_t *count, size_t room)
{
    told(g, status);
    take_number(g, (int64_t)*count);
    return status == MUSLIN_OK && *count <= room ? *count : 0;
}

/* ---- fabrics and measures -------------------------------------------------------------------------------------- */

static const char *const names[] = { "blue", "white", "", "sash", "a name of forty letters and then some more" };

static const char *draw_name(struct golden *g, size_t *length)
{
    const char *name = names[draw_below(g, 5)];
    *length = 0;
    while (name[*length] != 0)
        (*length)++;
    return name;
}

static void make_fabric(struct golden *g, struct tree *tree)
{
    SPEC(muslin_quilt_fabric_spec, spec);
    size_t length;
    muslin_id id = -77;
    spec.flags = draw_flags(g, 0);
    if (draw_rarely(g, 3))
        spec.usable_width = draw_size(g, 60);
    spec.print = draw_rarely(g, 3) ? draw_choice(g, MUSLIN_PRINT_NONE, MUSLIN_PRINT_STRIPE_ACROSS) : MUSLIN_PRINT_NONE;
    spec.darkness = (int32_t)(draw_rarely(g, 80) ? draw_between(g, -1, 101) : draw_below(g, 101));
    const char *name = draw_name(g, &length);
    told_id(g, &tree->fabrics, muslin_quilt_fabric(draw_quilt(g, tree), &spec, name, length, &id, ask(g)), &id);
}

/* Of few sizes, so that much fits; rarely any. */
static muslin_len draw_usual_size(struct golden *g, const struct tree *tree)
{
    muslin_len usual = draw_between(g, 1, 4) * (tree->metric ? 20 * MUSLIN_TICKS_PER_MM : MUSLIN_TICKS_PER_INCH);
    return draw_rarely(g, 8) ? draw_size(g, 6) : usual;
}

muslin_id tree_measure(struct golden *g, struct tree *tree, const muslin_len *size)
{
    size_t length;
    muslin_id id = -77;
    muslin_len value = size != NULL ? *size : draw_usual_size(g, tree);
    const char *name = draw_name(g, &length);
    told_id(g, &tree->measures, muslin_quilt_measure(draw_quilt(g, tree), name, length, value, &id, ask(g)), &id);
    return id;
}

static void make_fixed(struct golden *g, struct tree *tree)
{
    muslin_id id = -77;
    muslin_len value = draw_usual_size(g, tree);
    told_id(g, &tree->measures, muslin_quilt_fixed(draw_quilt(g, tree), value, &id, ask(g)), &id);
}

static void make_sum(struct golden *g, struct tree *tree)
{
    struct muslin_quilt_sum_spec terms[3];
    muslin_id id = -77;
    size_t n = (size_t)draw_between(g, draw_rarely(g, 60) ? 0 : 1, 3);
    for (size_t i = 0; i < 3; i++) {
        SPEC(muslin_quilt_sum_spec, term);
        term.flags = draw_flags(g, 0);
        term.measure = draw_id(g, &tree->measures);
        term.factor = draw_rarely(g, 20) ? draw_length(g) : draw_between(g, draw_rarely(g, 4) ? -1 : 1, 3);
        terms[i] = term;
    }
    told_id(g, &tree->measures, muslin_quilt_sum(draw_quilt(g, tree), terms, sizeof terms[0], n, &id, ask(g)), &id);
}

muslin_id tree_extent(struct golden *g, struct tree *tree, muslin_id node, int32_t axis)
{
    muslin_id id = -77;
    told_id(g, &tree->measures, muslin_quilt_extent(draw_quilt(g, tree), node, axis, &id, ask(g)), &id);
    return id;
}

static void make_extent(struct golden *g, struct tree *tree)
{
    muslin_id node = draw_id(g, &tree->nodes);
    int32_t axis = draw_choice(g, MUSLIN_AXIS_ACROSS, MUSLIN_AXIS_DOWN);
    tree_extent(g, tree, node, axis);
}

/* ---- leaves ---------------------------------------------------------------------------------------------------- */

muslin_id tree_patch_of(struct golden *g, struct tree *tree, muslin_id width, muslin_id height)
{
    SPEC(muslin_quilt_patch_spec, spec);
    muslin_id id = -77;
    spec.flags = draw_flags(g, 0);
    spec.fabric = draw_id(g, &tree->fabrics);
    spec.width = width;
    spec.height = height;
    spec.left = draw_id_rarely(g, &tree->measures, 80);
    spec.right = draw_id_rarely(g, &tree->measures, 80);
    spec.top = draw_id_rarely(g, &tree->measures, 80);
    spec.bottom = draw_id_rarely(g, &tree->measures, 80);
    told_id(g, &tree->nodes, muslin_quilt_patch(draw_quilt(g, tree), &spec, &id, ask(g)), &id);
    return id;
}

static void make_patch(struct golden *g, struct tree *tree)
{
    muslin_id width = draw_id(g, &tree->measures);
    muslin_id height = draw_rarely(g, 2) ? width : draw_id(g, &tree->measures);
    tree_patch_of(g, tree, width, height);
}

/* Geese take half their width, which is a measure of its own or none; half-rectangles and snowballs take any. */
static void make_unit(struct golden *g, struct tree *tree)
{
    SPEC(muslin_quilt_unit_spec, spec);
    muslin_id fabrics[3];
    muslin_id id = -77;
    (void)muslin_unit_recipe_at(draw_below(g, GOLDEN_RECIPES), &spec.kind, &spec.method, NULL);
    spec.flags = draw_flags(g, 0);
    spec.width = draw_id(g, &tree->measures);
    spec.height = spec.kind == MUSLIN_UNIT_HALF_RECTANGLE || draw_rarely(g, 20) ? draw_id(g, &tree->measures) : 0;
    spec.corner = spec.kind == MUSLIN_UNIT_SNOWBALL || draw_rarely(g, 60) ? draw_id(g, &tree->measures) : 0;
    if (spec.kind == MUSLIN_UNIT_SPLIT_QUARTER || spec.kind == MUSLIN_UNIT_HALF_RECTANGLE || draw_rarely(g, 60))
        spec.hand = draw_choice(g, 1, 2);
    for (size_t i = 0; i < 3; i++)
        fabrics[i] = draw_id(g, &tree->fabrics);
    int three = spec.kind == MUSLIN_UNIT_SPLIT_QUARTER || spec.kind == MUSLIN_UNIT_KALEIDOSCOPE;
    size_t n = draw_rarely(g, 40) ? (size_t)draw_below(g, 4) : three ? 3 : 2;
    told_id(g, &tree->nodes, muslin_quilt_unit(draw_quilt(g, tree), &spec, fabrics, n, &id, ask(g)), &id);
}

static struct muslin_corner_spec draw_corner(struct golden *g, int32_t piece, muslin_len x, muslin_len y)
{
    struct muslin_corner_spec corner = MUSLIN_CORNER_SPEC_INIT;
    corner.piece = piece;
    corner.x = draw_rarely(g, 400) ? draw_size(g, 8) : x;
    corner.y = y;
    return corner;
}

/* A sheet with a strip on the left, the rest cut on the slant: three pieces, of which one has a corner in an edge of
 * the strip. */
static void make_shape(struct golden *g, struct tree *tree)
{
    enum { CORNERS_OF_ALL = 15 };
    muslin_len w = draw_between(g, 2, 6) * MUSLIN_TICKS_PER_INCH;
    muslin_len h = draw_between(g, 1, 6) * MUSLIN_TICKS_PER_INCH;
    muslin_len a = draw_between(g, 1, w - 1);
    muslin_len b = draw_between(g, 1, h - 1);
    const muslin_len places[CORNERS_OF_ALL][3] = {
        { -1, 0, 0 }, { -1, w, 0 }, { -1, w, h }, { -1, 0, h },                            /* the outline */
        { 0, 0, 0 },  { 0, a, 0 },  { 0, a, h },  { 0, 0, h },                             /* the strip */
        { 1, a, 0 },  { 1, w, 0 },  { 1, a, b },  { 2, w, 0 },  { 2, w, h }, { 2, a, h },  { 2, a, b }
    };
    struct muslin_corner_spec corners[CORNERS_OF_ALL];
    muslin_id fabrics[3];
    muslin_id id = -77;
    for (size_t i = 0; i < CORNERS_OF_ALL; i++)
        corners[i] = draw_corner(g, (int32_t)places[i][0], places[i][1], places[i][2]);
    for (size_t i = 0; i < 3; i++)
        fabrics[i] = draw_id(g, &tree->fabrics);
    size_t pieces = draw_rarely(g, 40) ? 2 : 3;
    muslin_id width = draw_id_rarely(g, &tree->measures, 2);
    muslin_id height = draw_id_rarely(g, &tree->measures, 2);
    told_id(g, &tree->nodes,
            muslin_quilt_shape(draw_quilt(g, tree), corners, sizeof corners[0], CORNERS_OF_ALL, fabrics, pieces, width,
                               height, &id, ask(g)),
            &id);
}

/* ---- joins ----------------------------------------------------------------------------------------------------- */

static void join_some(struct golden *g, struct tree *tree, const muslin_id *children, size_t n, int32_t axis)
{
    SPEC(muslin_quilt_join_spec, spec);
    muslin_id id = -77;
    spec.flags = draw_flags(g, MUSLIN_QUILT_JOIN_KEEPS_ORDER);
    spec.axis = axis;
    spec.piecing = draw_rarely(g, 4) ? draw_choice(g, MUSLIN_STRIP_PIECING_WHERE_FEWER, MUSLIN_STRIP_PIECING_NEVER)
                                     : MUSLIN_STRIP_PIECING_WHERE_FEWER;
    spec.press = draw_rarely(g, 4) ? draw_choice(g, MUSLIN_SEAM_PRESS_FREE, MUSLIN_SEAM_PRESS_OPEN) : MUSLIN_SEAM_PRESS_FREE;
    told_id(g, &tree->nodes, muslin_quilt_join(draw_quilt(g, tree), &spec, children, n, &id, ask(g)), &id);
}

static void make_join(struct golden *g, struct tree *tree)
{
    muslin_id children[6];
    size_t n = (size_t)draw_between(g, draw_rarely(g, 60) ? 0 : 1, 6);
    muslin_id other = draw_id(g, &tree->nodes);
    int alike = draw_rarely(g, 2);
    for (size_t i = 0; i < 6; i++)
        children[i] = alike && i > 0 ? children[0] : draw_id(g, &tree->nodes);
    if (alike)
        children[draw_below(g, 6)] = other;
    join_some(g, tree, children, n, draw_choice(g, MUSLIN_AXIS_ACROSS, MUSLIN_AXIS_DOWN));
}

/* Patches of one size, turned or not: a strip set. */
static void make_strips(struct golden *g, struct tree *tree)
{
    muslin_id strips[6];
    size_t n = (size_t)draw_between(g, 2, 6);
    muslin_id width = draw_id(g, &tree->measures);
    muslin_id height = draw_rarely(g, 2) ? width : draw_id(g, &tree->measures);
    for (size_t i = 0; i < n; i++) {
        strips[i] = tree_patch_of(g, tree, width, height);
        if (draw_rarely(g, 5))
            strips[i] = tree_turned(g, tree, strips[i], 2);
    }
    join_some(g, tree, strips, n, draw_choice(g, MUSLIN_AXIS_ACROSS, MUSLIN_AXIS_DOWN));
}

static void make_grid(struct golden *g, struct tree *tree)
{
    enum { CELLS = 9 };
    muslin_id children[CELLS];
    muslin_id id = -77;
    int64_t columns = draw_rarely(g, 60) ? draw_count(g, 4) : draw_between(g, 1, 3);
    int64_t rows = draw_between(g, 1, 3);
    size_t n = draw_rarely(g, 60) || columns > 3 || columns < 0 ? CELLS : (size_t)(columns * rows);
    muslin_id one = draw_id(g, &tree->nodes);
    muslin_id other = draw_id(g, &tree->nodes);
    int any = draw_rarely(g, 4);
    for (int32_t i = 0; i < CELLS; i++)
        children[i] = any ? draw_id(g, &tree->nodes) : i % 2 == 0 ? one : other;
    told_id(g, &tree->nodes, muslin_quilt_grid(draw_quilt(g, tree), columns, rows, children, n, &id, ask(g)), &id);
}

/* Turns of nodes that are not square make misfits. */
static void make_repeat(struct golden *g, struct tree *tree)
{
    int32_t turns[4];
    muslin_id id = -77;
    int64_t columns = draw_rarely(g, 60) ? draw_count(g, 8) : draw_between(g, 1, 5);
    int64_t rows = draw_between(g, 1, 5);
    int64_t pattern_columns = draw_between(g, 1, 2);
    int64_t pattern_rows = draw_between(g, 1, 2);
    int turned = draw_rarely(g, 2);
    for (size_t i = 0; i < 4; i++)
        turns[i] = turned ? draw_choice(g, 0, 3) : 0;
    size_t n = draw_rarely(g, 60) ? 4 : (size_t)(pattern_columns * pattern_rows);
    muslin_id node = draw_id(g, &tree->nodes);
    told_id(g, &tree->nodes,
            muslin_quilt_repeat(draw_quilt(g, tree), node, columns, rows, turns, n, pattern_columns, pattern_rows, &id,
                                ask(g)),
            &id);
}

/* ---- turned, mirrored, trimmed --------------------------------------------------------------------------------- */

muslin_id tree_turned(struct golden *g, struct tree *tree, muslin_id node, int32_t quarter_turns)
{
    muslin_id id = -77;
    told_id(g, &tree->nodes, muslin_quilt_turn(draw_quilt(g, tree), node, quarter_turns, &id, ask(g)), &id);
    return id;
}

static void make_turn(struct golden *g, struct tree *tree)
{
    muslin_id node = draw_id(g, &tree->nodes);
    tree_turned(g, tree, node, draw_choice(g, 0, 3));
}

static void make_mirror(struct golden *g, struct tree *tree)
{
    muslin_id id = -77;
    muslin_id node = draw_id(g, &tree->nodes);
    told_id(g, &tree->nodes, muslin_quilt_mirror(draw_quilt(g, tree), node, &id, ask(g)), &id);
}

/* By a small fixed length, else by any measure, which is mostly too much. */
static void make_trim(struct golden *g, struct tree *tree)
{
    SPEC(muslin_quilt_trim_spec, spec);
    muslin_id small = 0;
    muslin_id id = -77;
    told(g, muslin_quilt_fixed(tree->quilt, draw_below(g, 5000), &small, ask(g)));
    muslin_id by = draw_rarely(g, 8) ? draw_id(g, &tree->measures) : small;
    spec.flags = draw_flags(g, 0);
    spec.left = draw_rarely(g, 2) ? by : 0;
    spec.right = draw_rarely(g, 2) ? by : 0;
    spec.top = draw_rarely(g, 2) ? by : 0;
    spec.bottom = draw_rarely(g, 2) ? by : 0;
    muslin_id node = draw_id(g, &tree->nodes);
    told_id(g, &tree->nodes, muslin_quilt_trim(draw_quilt(g, tree), node, &spec, &id, ask(g)), &id);
}

/* ---- a tree ---------------------------------------------------------------------------------------------------- */

int tree_begin(struct golden *g, struct tree *tree)
{
    SPEC(muslin_quilt_spec, spec);
    struct muslin_allocator allocator = shelf_open(&tree->shelf);
    muslin_id seam[2] = { 0 };
    tree->quilt = NULL;
    tree->metric = draw_rarely(g, 3);
    tree->fabrics.used = tree->measures.used = tree->nodes.used = 0;
    spec.flags = draw_flags(g, 0);
    spec.allowance = tree->metric ? 6 * MUSLIN_TICKS_PER_MM : draw_rarely(g, 4) ? draw_seam(g) : MUSLIN_QUARTER_INCH;
    spec.take_up = draw_rarely(g, 4) ? draw_take_up(g) : 0;
    spec.most = draw_rarely(g, 30) ? draw_count(g, 40) : 3000;
    spec.tag = draw_rarely(g, 60) ? draw_length(g) : 1;
    spec.tag = spec.tag == 0 ? 1 : spec.tag; /* 0 would take it from where the quilt lies */
    shelf_refuse(g, &tree->shelf, 60, 1);
    told(g, muslin_quilt_create(&spec, &allocator, &tree->quilt, ask(g)));
    if (tree->quilt == NULL)
        return 0;
    told(g, muslin_quilt_seam(tree->quilt, &seam[0], &seam[1], ask(g)));
    tree->measures.of[0] = seam[0];
    tree->measures.used = 1;
    int64_t parts = draw_between(g, 2, 4);
    for (int64_t i = 0; i < parts; i++) {
        make_fabric(g, tree);
        tree_measure(g, tree, NULL);
        make_patch(g, tree);
    }
    return 1;
}

void tree_grow(struct golden *g, struct tree *tree, int64_t steps)
{
    static void (*const makers[])(struct golden *, struct tree *) = {
        make_fabric, make_fixed, make_sum,    make_extent, make_patch,  make_patch,    make_unit,     make_unit,
        make_shape,  make_join,  make_join,   make_strips, make_strips, make_grid,     make_repeat,   make_turn,
        make_mirror, make_trim,  tree_pinwheel, tree_set_in, tree_logs, tree_surround, tree_sashed, tree_diagonal,
        tree_sixty };
    for (int64_t i = 0; i < steps; i++) {
        shelf_refuse(g, &tree->shelf, 60, 3);
        makers[draw_below(g, (int64_t)(sizeof makers / sizeof makers[0]))](g, tree);
    }
    tree->shelf.refused = 0;
}

void tree_end(struct golden *g, struct tree *tree)
{
    muslin_quilt_free(tree->quilt);
    take_number(g, (int64_t)tree->shelf.out);
    take_number(g, tree->shelf.full);
}
