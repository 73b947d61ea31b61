/* test_solution_cuts.c - the cut list of a solved tree: patches, prints, order, rows read back, random trees counted.
 *
 * SPDX-License-Identifier: MIT */
#include "test_solution_cuts.h"

/* ---- patches ---------------------------------------------------------------------------------------------------- */

static void list_apart(struct listed *listed, struct sewn *sewn, muslin_id root, int64_t tops)
{
    struct muslin_solution_spec spec = MUSLIN_SOLUTION_SPEC_INIT;
    spec.strip_piecing = MUSLIN_STRIP_PIECING_NEVER;
    spec.tops = tops;
    list_with(listed, sewn->quilt, root, &spec);
}

START_TEST(equal_patches_are_one_row)
{
    /* Example: 36 patches of 2 1/2 x 2 1/2 in cut from the blue. */
    static struct listed listed;
    struct sewn sewn;
    begin_sewing(&sewn);
    muslin_id patch = patch_of(sewn.quilt, sewn.blue, sewn.two, sewn.two);
    list_apart(&listed, &sewn, repeat_of(sewn.quilt, patch, 6, 6), 1);
    ck_assert_uint_eq(listed.cut_count, 1);
    const struct muslin_solution_cut *cut = &listed.cuts[0];
    ck_assert_uint_eq(cut->size, sizeof *cut);
    ck_assert_int_eq(cut->fabric, sewn.blue);
    ck_assert_int_eq(cut->first_node, patch);
    ck_assert_int_eq(cut->cut_width, IN(2, 1, 2));
    ck_assert_int_eq(cut->cut_height, IN(2, 1, 2));
    ck_assert_int_eq(cut->left + cut->right + cut->top + cut->bottom, 4 * MUSLIN_QUARTER_INCH);
    ck_assert_int_eq(cut->pitch + cut->wide_edge + cut->narrow_edge + cut->angle + cut->region, 0);
    ck_assert_int_eq(cut->surplus_width + cut->surplus_height, 0);
    ck_assert_int_eq(cut->nodes, 1);
    ck_assert_int_eq(cut->source, MUSLIN_CUT_SOURCE_PATCH);
    ck_assert_int_eq(cut->shape, MUSLIN_CUT_SHAPE_RECTANGLE);
    ck_assert_int_eq(cut->again, MUSLIN_CUT_AGAIN_NO);
    ck_assert_int_eq(cut->grain, MUSLIN_GRAIN_ALL_EDGES);
    ck_assert_int_eq(cut->hand, 1);
    ck_counts(cut, 36, 36, 0);
    ck_turns(cut, 36, 0, 0, 0, 0);
    ck_assert_uint_eq(cut->warnings, 0);
    end_list(&listed);
    list_apart(&listed, &sewn, repeat_of(sewn.quilt, patch, 6, 6), 5);
    ck_counts(&listed.cuts[0], 180, 180, 0);
    end_list(&listed);
    end_sewing(&sewn);
}
END_TEST

/* 2 x 3 and 3 x 2 in, and the first turned: of a fabric without direction all are cut 3 1/2 x 2 1/2 in. */
START_TEST(turned_patches_without_direction_are_one_row)
{
    /* Example: of a row with nodes = 2, two ids. */
    static struct listed listed;
    struct sewn sewn;
    begin_sewing(&sewn);
    muslin_id three = measure_of(sewn.quilt, "three", WHOLE_IN(3));
    muslin_id upright = patch_of(sewn.quilt, sewn.blue, sewn.two, three);
    muslin_id lying = patch_of(sewn.quilt, sewn.blue, three, sewn.two);
    const muslin_id all[] = { upright, lying, turn_of(sewn.quilt, upright, 1), turn_of(sewn.quilt, lying, 2),
                              mirror_of(sewn.quilt, upright) };
    list_apart(&listed, &sewn, join_of(sewn.quilt, MUSLIN_AXIS_ACROSS, all, 5), 1);
    ck_assert_uint_eq(listed.cut_count, 1);
    const struct muslin_solution_cut *cut = &listed.cuts[0];
    ck_assert_int_eq(cut->cut_width, IN(3, 1, 2));
    ck_assert_int_eq(cut->cut_height, IN(2, 1, 2));
    ck_counts(cut, 5, 5, 0);
    /* against the piece lying as it is cut: one lies so, two stand after three quarters, one after a quarter less
     * than its own turn, one is turned by a half */
    ck_turns(cut, 2, 0, 1, 2, 0);
    ck_assert_int_eq(cut->nodes, 2);
    muslin_id ids[3] = { 0, 0, 99 };
    size_t count = 0;
    ck_ok(muslin_solution_cut_nodes(listed.solution, 0, ids, 3, &count, NULL));
    ck_assert_uint_eq(count, 2);
    ck_assert_int_eq(ids[0], upright);
    ck_assert_int_eq(ids[1], lying);
    ck_assert_int_eq(ids[2], 99);
    end_list(&listed);
    end_sewing(&sewn);
}
END_TEST

/* Of a fabric with a direction each is cut as it stands, the print upwards, and counted by how it lies. */
START_TEST(prints_are_cut_upright_and_counted)
{
    static struct listed listed;
    struct sewn sewn;
    begin_sewing(&sewn);
    muslin_id three = fixed_of(sewn.quilt, WHOLE_IN(3));
    for (int32_t print = MUSLIN_PRINT_TWO_WAY; print <= MUSLIN_PRINT_STRIPE_ACROSS; print++) {
        muslin_id fabric = printed_fabric(sewn.quilt, "print", print);
        muslin_id patch = patch_of(sewn.quilt, fabric, sewn.two, three);
        muslin_id wide = patch_of(sewn.quilt, fabric, three, sewn.two);
        for (int32_t turn = 0; turn < 4; turn++) {
            const muslin_id all[] = { turn_of(sewn.quilt, patch, turn), wide,
                                      turn_of(sewn.quilt, mirror_of(sewn.quilt, patch), turn) };
            list_apart(&listed, &sewn, join_of(sewn.quilt, MUSLIN_AXIS_ACROSS, all, 3), 1);
            ck_assert_uint_eq(listed.cut_count, 2);
            const struct muslin_solution_cut *cut =
                cut_sized(&listed, MUSLIN_CUT_SOURCE_PATCH, fabric, IN(2, 1, 2), IN(3, 1, 2));
            ck_turns(cut, turn == 0 ? 2 : 0, turn == 1 ? 2 : 0, turn == 2 ? 2 : 0, turn == 3 ? 2 : 0, 0);
            ck_counts(cut, 2, 2, 0);
            int shows = turn % 2 == 1 || (turn == 2 && print == MUSLIN_PRINT_ONE_WAY);
            ck_assert_uint_eq(cut->warnings, shows ? MUSLIN_WARN_PRINT_TURNED : 0);
            cut = cut_sized(&listed, MUSLIN_CUT_SOURCE_PATCH, fabric, IN(3, 1, 2), IN(2, 1, 2));
            ck_turns(cut, 1, 0, 0, 0, 0);
            ck_assert_uint_eq(cut->warnings, 0);
            end_list(&listed);
        }
    }
    end_sewing(&sewn);
}
END_TEST

/* Cloth 40 in wide: 39 1/2 in finished is cut 40 in and just fits, a tick more does not. With a print the piece must
 * not be turned, so only its width counts. */
START_TEST(pieces_longer_than_the_cloth_is_wide_are_told)
{
    static struct listed listed;
    struct sewn sewn;
    begin_sewing(&sewn);
    muslin_id flowers = printed_fabric(sewn.quilt, "flowers", MUSLIN_PRINT_ONE_WAY);
    const struct {
        muslin_id fabric;
        muslin_len width;
        muslin_len height;
        uint32_t warnings;
    } cases[] = {
        { sewn.blue, IN(39, 1, 2), WHOLE_IN(2), 0 },
        { sewn.blue, IN(39, 1, 2) + 1, WHOLE_IN(2), MUSLIN_WARN_LONGER_THAN_WIDTH },
        { sewn.blue, WHOLE_IN(2), IN(39, 1, 2), 0 },
        { sewn.blue, WHOLE_IN(2), IN(39, 1, 2) + 1, MUSLIN_WARN_LONGER_THAN_WIDTH },
        { flowers, IN(39, 1, 2), WHOLE_IN(60), 0 },
        { flowers, IN(39, 1, 2) + 1, WHOLE_IN(2), MUSLIN_WARN_LONGER_THAN_WIDTH },
    };
    for (size_t i = 0; i < COUNT_OF(cases); i++) {
        muslin_id patch = patch_of(sewn.quilt, cases[i].fabric, fixed_of(sewn.quilt, cases[i].width),
                                   fixed_of(sewn.quilt, cases[i].height));
        struct muslin_solution_total totals = { .size = sizeof totals };
        list_apart(&listed, &sewn, patch, 1);
        ck_assert_uint_eq(listed.cut_count, 1);
        ck_assert_msg(listed.cuts[0].warnings == cases[i].warnings, "case %zu", i);
        ck_ok(muslin_solution_totals(listed.solution, &totals, NULL));
        ck_assert_uint_eq(totals.warnings, cases[i].warnings);
        end_list(&listed);
        /* of cloth an inch wider all pieces without a print fit, and so does this width */
        struct muslin_solution_spec spec = MUSLIN_SOLUTION_SPEC_INIT;
        const struct muslin_solution_value_spec wider = { sizeof wider, 0, cases[i].fabric, WHOLE_IN(41) };
        ck_ok(muslin_solution_create(sewn.quilt, patch, &spec, &wider, sizeof wider, 1, NULL, &listed.solution, NULL));
        list_all(&listed);
        ck_assert_uint_eq(listed.cuts[0].warnings, 0);
        end_list(&listed);
    }
    /* a flowered border turned by a quarter both lies turned and is too long */
    muslin_id border = patch_of(sewn.quilt, flowers, fixed_of(sewn.quilt, WHOLE_IN(50)), sewn.two);
    list_apart(&listed, &sewn, turn_of(sewn.quilt, border, 1), 1);
    ck_assert_uint_eq(listed.cuts[0].warnings, MUSLIN_WARN_LONGER_THAN_WIDTH | MUSLIN_WARN_PRINT_TURNED);
    end_list(&listed);
    /* strips for sets are as long as the cloth is wide */
    muslin_id square = patch_of(sewn.quilt, sewn.blue, sewn.two, sewn.two);
    const muslin_id pair[] = { square, patch_of(sewn.quilt, sewn.white, sewn.two, sewn.two) };
    list_of(&listed, sewn.quilt, repeat_of(sewn.quilt, join_of(sewn.quilt, MUSLIN_AXIS_ACROSS, pair, 2), 6, 6));
    ck_assert_int_eq(listed.cuts[0].source, MUSLIN_CUT_SOURCE_SET_STRIP);
    ck_assert_uint_eq(listed.cuts[0].warnings, 0);
    end_list(&listed);
    end_sewing(&sewn);
}
END_TEST

static muslin_id edged(struct sewn *sewn, muslin_id fabric, const muslin_id *edges)
{
    struct muslin_quilt_patch_spec spec = MUSLIN_QUILT_PATCH_SPEC_INIT;
    muslin_id id = 0;
    spec.fabric = fabric;
    spec.width = spec.height = sewn->two;
    spec.left = edges[0];
    spec.right = edges[1];
    spec.top = edges[2];
    spec.bottom = edges[3];
    ck_ok(muslin_quilt_patch(sewn->quilt, &spec, &id, NULL));
    return id;
}

/* Squares with other allowances on two edges that meet: turned they are one piece, and for a square so is the mirror
 * image. With three unlike edges the mirror image is another piece. */
START_TEST(edges_with_allowances_of_their_own_tell_pieces_apart)
{
    static struct listed listed;
    struct sewn sewn;
    begin_sewing(&sewn);
    muslin_id half = fixed_of(sewn.quilt, IN(0, 1, 2));
    muslin_id none = fixed_of(sewn.quilt, 0);
    const muslin_id corner[] = { half, 0, half, 0 };
    const muslin_id hooked[] = { half, none, 0, 0 };
    muslin_id patch = edged(&sewn, sewn.blue, corner);
    const muslin_id same[] = { patch, turn_of(sewn.quilt, patch, 1), turn_of(sewn.quilt, patch, 2),
                               mirror_of(sewn.quilt, patch) };
    list_apart(&listed, &sewn, join_of(sewn.quilt, MUSLIN_AXIS_ACROSS, same, 4), 1);
    ck_assert_uint_eq(listed.cut_count, 1);
    ck_assert_int_eq(listed.cuts[0].cut_width, IN(2, 3, 4));
    ck_assert_int_eq(listed.cuts[0].cut_height, IN(2, 3, 4));
    ck_counts(&listed.cuts[0], 4, 4, 0);
    end_list(&listed);
    /* no allowance opposite the wide one: its mirror image turned by a half is itself */
    muslin_id hook = edged(&sewn, sewn.blue, hooked);
    const muslin_id hooks[] = { hook, mirror_of(sewn.quilt, hook) };
    list_apart(&listed, &sewn, join_of(sewn.quilt, MUSLIN_AXIS_ACROSS, hooks, 2), 1);
    ck_assert_uint_eq(listed.cut_count, 1);
    ck_assert_int_eq(listed.cuts[0].cut_width, IN(2, 1, 2));
    ck_counts(&listed.cuts[0], 2, 2, 0);
    end_list(&listed);
    const muslin_id three_edges[] = { half, none, none, 0 };
    muslin_id odd = edged(&sewn, sewn.blue, three_edges);
    const muslin_id odds[] = { odd, turn_of(sewn.quilt, odd, 3), mirror_of(sewn.quilt, odd) };
    list_apart(&listed, &sewn, join_of(sewn.quilt, MUSLIN_AXIS_ACROSS, odds, 3), 1);
    ck_assert_uint_eq(listed.cut_count, 2);
    ck_assert_int_eq(listed.cuts[0].count + listed.cuts[1].count, 3);
    ck_assert_int_eq(listed.cuts[0].nodes, 1);
    ck_assert_int_eq(listed.cuts[1].nodes, 1);
    end_list(&listed);
    end_sewing(&sewn);
}
END_TEST

START_TEST(rows_are_sorted_by_fabric_height_and_width)
{
    static struct listed listed;
    struct sewn sewn;
    begin_sewing(&sewn);
    muslin_id row[40];
    uint64_t state = 7;
    for (size_t i = 0; i < COUNT_OF(row); i++) {
        muslin_id fabric = draw_from(&state, 0, 1) ? sewn.blue : sewn.white;
        row[i] = patch_of(sewn.quilt, fabric, fixed_of(sewn.quilt, IN(draw_from(&state, 1, 4), 0, 1)),
                          fixed_of(sewn.quilt, IN(draw_from(&state, 1, 4), 0, 1)));
    }
    list_apart(&listed, &sewn, join_of(sewn.quilt, MUSLIN_AXIS_ACROSS, row, COUNT_OF(row)), 1);
    int64_t pieces = listed.cuts[0].count;
    for (size_t i = 1; i < listed.cut_count; i++) {
        const struct muslin_solution_cut *a = &listed.cuts[i - 1];
        const struct muslin_solution_cut *b = &listed.cuts[i];
        int after = b->fabric > a->fabric || (b->fabric == a->fabric && (b->cut_height < a->cut_height ||
                    (b->cut_height == a->cut_height && b->cut_width < a->cut_width)));
        ck_assert(after);
        pieces += b->count;
    }
    ck_assert_int_eq(pieces, COUNT_OF(row));
    end_list(&listed);
    end_sewing(&sewn);
}
END_TEST

/* ---- random trees, counted one by one --------------------------------------------------------------------------- */

enum { FABRICS = 3, NODES_MOST = 60, PIECES_MOST = 20000 };

/* What the test knows of a node: what it made it of. */
struct made {
    muslin_id id;
    muslin_id fabric; /* of a patch */
    int32_t print;
    muslin_len width; /* as cut, of a patch */
    muslin_len height;
    muslin_len edge[4]; /* left, top, right, bottom: clockwise */
    int32_t axis;       /* of a join */
    int32_t turn;       /* of a turned or mirrored one, -1 for mirrored */
    int32_t children;
    int32_t child[4];
};

struct garden {
    struct sewn sewn;
    struct made made[NODES_MOST];
    int32_t nodes;
    int32_t patches; /* they come first, some of them turned */
    muslin_id fabrics[FABRICS];
    int32_t prints[FABRICS];
};

/* A patch as it lies in the top: where its print's top points (a quarter turn each, clockwise from up) and which way
 * its left edge lies from there. */
struct lying {
    int32_t made;
    int32_t up;       /* 0 up, 1 right, 2 down, 3 left */
    int32_t mirrored; /* 1: going clockwise round what is seen meets the edges the other way round */
};

struct lain {
    struct lying *pieces;
    size_t count;
    const struct listed *listed; /* joins used as sets are not gone into; null: all are */
    int64_t segments[NODES_MOST];
    struct lying set[PIECES_MOST]; /* joins used as sets, as they lie */
    size_t sets;
};

static int used_as_set(const struct lain *lain, muslin_id node)
{
    for (size_t i = 0; i < lain->listed->set_count; i++)
        if (lain->listed->sets[i].node == node)
            return lain->listed->sets[i].used;
    return 0;
}

/* The image of something turned or mirrored within something that lies so. */
static struct lying within(struct lying outer, int32_t made, int32_t turn)
{
    if (turn < 0)
        return (struct lying){ made, outer.up, !outer.mirrored };
    return (struct lying){ made, (outer.up + (outer.mirrored ? 4 - turn : turn)) % 4, outer.mirrored };
}

/* Walks the tree with a stack of its own and writes down every patch. */
static void lay_all(const struct garden *garden, int32_t root, struct lain *lain)
{
    static struct lying stack[PIECES_MOST];
    size_t depth = 0;
    stack[depth++] = (struct lying){ root, 0, 0 };
    while (depth > 0) {
        struct lying here = stack[--depth];
        const struct made *made = &garden->made[here.made];
        if (made->fabric != 0) {
            lain->pieces[lain->count++] = here;
        } else if (made->axis != 0 && used_as_set(lain, made->id)) {
            lain->segments[here.made]++;
            lain->set[lain->sets++] = here;
        } else {
            for (int32_t k = 0; k < made->children; k++)
                stack[depth++] = within(here, made->child[k], made->axis != 0 ? 0 : made->turn);
        }
    }
}

static void grow_patch(struct garden *garden, struct made *made, uint64_t *state)
{
    struct muslin_quilt_patch_spec spec = MUSLIN_QUILT_PATCH_SPEC_INIT;
    muslin_len width = WHOLE_IN(draw_from(state, 1, 2));
    muslin_len height = WHOLE_IN(draw_from(state, 1, 2));
    int64_t fabric = draw_from(state, 0, FABRICS - 1);
    spec.fabric = made->fabric = garden->fabrics[fabric];
    made->print = garden->prints[fabric];
    spec.width = fixed_of(garden->sewn.quilt, width);
    spec.height = fixed_of(garden->sewn.quilt, height);
    for (int edge = 0; edge < 4; edge++)
        made->edge[edge] = draw_from(state, 0, 7) == 0 ? 0 : MUSLIN_QUARTER_INCH;
    spec.left = fixed_of(garden->sewn.quilt, made->edge[0]);
    spec.top = fixed_of(garden->sewn.quilt, made->edge[1]);
    spec.right = fixed_of(garden->sewn.quilt, made->edge[2]);
    spec.bottom = fixed_of(garden->sewn.quilt, made->edge[3]);
    made->width = width + made->edge[0] + made->edge[2];
    made->height = height + made->edge[1] + made->edge[3];
    ck_ok(muslin_quilt_patch(garden->sewn.quilt, &spec, &made->id, NULL));
}

/* A node to make another one of, rather a late one. */
static int32_t draw_node(uint64_t *state, int32_t nodes)
{
    int32_t a = (int32_t)draw_from(state, 0, nodes - 1);
    int32_t b = (int32_t)draw_from(state, 0, nodes - 1);
    return a > b ? a : b;
}

static void grow_join(struct garden *garden, struct made *made, uint64_t *state)
{
    muslin_id children[4];
    made->axis = (int32_t)draw_from(state, MUSLIN_AXIS_ACROSS, MUSLIN_AXIS_DOWN);
    made->children = (int32_t)draw_from(state, 2, 4);
    int32_t nodes = draw_from(state, 0, 1) == 0 ? garden->patches : garden->nodes;
    for (int32_t k = 0; k < made->children; k++) {
        made->child[k] = draw_node(state, nodes);
        children[k] = garden->made[made->child[k]].id;
    }
    /* WHERE_FEWER or NEVER */
    int32_t piecing = draw_from(state, 0, 2) == 0 ? MUSLIN_STRIP_PIECING_NEVER : MUSLIN_STRIP_PIECING_WHERE_FEWER;
    made->id = pieced_join(garden->sewn.quilt, made->axis, piecing, 0, children, (size_t)made->children);
}

static void grow_turn(struct garden *garden, struct made *made, uint64_t *state)
{
    made->children = 1;
    made->child[0] = draw_node(state, garden->nodes);
    made->turn = (int32_t)draw_from(state, -1, 3);
    muslin_id child = garden->made[made->child[0]].id;
    made->id = made->turn < 0 ? mirror_of(garden->sewn.quilt, child) : turn_of(garden->sewn.quilt, child, made->turn);
}

static void grow_root(struct garden *garden, struct made *made)
{
    muslin_id children[4];
    made->axis = MUSLIN_AXIS_DOWN;
    made->children = 4;
    for (int32_t k = 0; k < 4; k++) {
        made->child[k] = garden->nodes - 1 - k;
        children[k] = garden->made[made->child[k]].id;
    }
    made->id = join_of(garden->sewn.quilt, MUSLIN_AXIS_DOWN, children, 4);
}

static void grow(struct garden *garden, uint64_t *state)
{
    begin_sewing(&garden->sewn);
    garden->nodes = 0;
    for (int32_t i = 0; i < FABRICS; i++) {
        garden->prints[i] = i == 0 ? MUSLIN_PRINT_NONE : (int32_t)draw_from(state, 1, 5);
        struct muslin_quilt_fabric_spec spec = MUSLIN_QUILT_FABRIC_SPEC_INIT;
        spec.print = garden->prints[i];
        spec.usable_width = WHOLE_IN(6); /* so narrow that sets pay */
        ck_ok(muslin_quilt_fabric(garden->sewn.quilt, &spec, "cloth", 5, &garden->fabrics[i], NULL));
    }
    int32_t nodes = (int32_t)draw_from(state, 9, 24);
    while (garden->nodes < nodes) {
        struct made made = { 0 };
        if (garden->nodes == nodes - 1) /* the root: four of them */
            grow_root(garden, &made);
        else if (garden->nodes < 2 || (garden->nodes < nodes / 3 && draw_from(state, 0, 1) == 0))
            grow_patch(garden, &made, state);
        else if (garden->nodes < nodes / 3)
            grow_turn(garden, &made, state);
        else if (draw_from(state, 0, 2) != 0)
            grow_join(garden, &made, state);
        else
            grow_turn(garden, &made, state);
        int known = 0;
        for (int32_t i = 0; i < garden->nodes; i++)
            known |= garden->made[i].id == made.id;
        if (!known)
            garden->made[garden->nodes++] = made;
        if (garden->nodes <= nodes / 3)
            garden->patches = garden->nodes;
    }
}

/* Whether the piece, seen with its print's top turned up and then turned back by so many quarters, is the row's. */
static int fits_row(const struct made *made, int mirrored, int32_t quarters, const struct muslin_solution_cut *cut)
{
    const muslin_len row[4] = { cut->left, cut->top, cut->right, cut->bottom };
    muslin_len width = quarters % 2 ? made->height : made->width;
    muslin_len height = quarters % 2 ? made->width : made->height;
    if (width != cut->cut_width || height != cut->cut_height || cut->fabric != made->fabric)
        return 0;
    for (int edge = 0; edge < 4; edge++) {
        int before = (edge + 4 - quarters) % 4;
        if (mirrored && before % 2 == 0)
            before = 2 - before;
        if (row[edge] != made->edge[before])
            return 0;
    }
    return 1;
}

/* Every patch that lies in the top belongs to one row; the rows' counts must come out. */
static void ck_patch_rows(const struct garden *garden, const struct lain *lain)
{
    static int64_t found[CUTS_MOST][4];
    memset(found, 0, sizeof found);
    for (size_t i = 0; i < lain->count; i++) {
        const struct lying *piece = &lain->pieces[i];
        const struct made *made = &garden->made[piece->made];
        int rows = 0;
        for (size_t row = 0; row < lain->listed->cut_count; row++) {
            const struct muslin_solution_cut *cut = &lain->listed->cuts[row];
            int32_t quarters = 0;
            int32_t most = made->print == MUSLIN_PRINT_NONE ? 4 : 1;
            while (quarters < most && !fits_row(made, piece->mirrored, quarters, cut))
                quarters++;
            if (cut->source != MUSLIN_CUT_SOURCE_PATCH || quarters == most)
                continue;
            rows++;
            found[row][(piece->up + 4 - quarters) % 4]++;
        }
        ck_assert_int_eq(rows, 1);
    }
    for (size_t row = 0; row < lain->listed->cut_count; row++) {
        const struct muslin_solution_cut *cut = &lain->listed->cuts[row];
        if (cut->source != MUSLIN_CUT_SOURCE_PATCH)
            continue;
        ck_turns(cut, found[row][0], found[row][1], found[row][2], found[row][3], 0);
        ck_counts(cut, found[row][0] + found[row][1] + found[row][2] + found[row][3], cut->count, 0);
        ck_assert(cut->cut_width >= cut->cut_height || cut->fabric != garden->fabrics[0]);
    }
}

static void ck_sets(const struct garden *garden, const struct lain *lain)
{
    int64_t strips = 0;
    int64_t pieces = 0;
    for (size_t i = 0; i < lain->listed->set_count; i++) {
        const struct muslin_stripset *set = &lain->listed->sets[i];
        for (int32_t node = 0; node < garden->nodes; node++)
            if (garden->made[node].id == set->node && set->used && garden->made[node].axis != 0) {
                ck_assert_int_eq(set->segments, lain->segments[node]);
                strips += set->sets * set->strips;
                pieces += set->segments * set->strips;
                break;
            }
    }
    for (size_t row = 0; row < lain->listed->cut_count; row++) {
        const struct muslin_solution_cut *cut = &lain->listed->cuts[row];
        if (cut->source != MUSLIN_CUT_SOURCE_SET_STRIP)
            continue;
        ck_counts(cut, cut->count, cut->pieces, cut->spare);
        strips -= cut->count;
        pieces -= cut->pieces - cut->spare;
    }
    ck_assert_int_eq(strips, 0);
    ck_assert_int_eq(pieces, 0);
}

/* What lies in strips: per fabric, how many prints point each way. */
static void ck_strip_prints(const struct garden *garden, const struct lain *lain)
{
    int64_t found[FABRICS][4] = { { 0 } };
    for (size_t i = 0; i < lain->sets; i++) {
        const struct made *join = &garden->made[lain->set[i].made];
        for (int32_t k = 0; k < join->children; k++) {
            struct lying child = { join->child[k], 0, 0 };
            const struct made *made = &garden->made[join->child[k]];
            while (made->fabric == 0) { /* turned, perhaps more than once */
                child = within(child, made->child[0], made->turn);
                made = &garden->made[child.made];
            }
            if (child.up % 2 != (join->axis == MUSLIN_AXIS_ACROSS))
                child.up = (child.up + 1) % 4; /* strips lie on end when joined across, and only then */
            struct lying lies = within(lain->set[i], child.made, child.up);
            for (int fabric = 0; fabric < FABRICS; fabric++)
                if (made->fabric == garden->fabrics[fabric])
                    found[fabric][lies.up]++;
        }
    }
    for (int fabric = 1; fabric < FABRICS; fabric++) { /* strips of the first may lie upside down */
        if (garden->prints[fabric] == MUSLIN_PRINT_NONE)
            continue;
        for (size_t row = 0; row < lain->listed->cut_count; row++) {
            const struct muslin_solution_cut *cut = &lain->listed->cuts[row];
            if (cut->source != MUSLIN_CUT_SOURCE_SET_STRIP || cut->fabric != garden->fabrics[fabric])
                continue;
            found[fabric][0] -= cut->upright;
            found[fabric][1] -= cut->quarter;
            found[fabric][2] -= cut->half;
            found[fabric][3] -= cut->three_quarter;
        }
        for (int up = 0; up < 4; up++)
            ck_assert_int_eq(found[fabric][up], 0);
    }
}

/* Of each node a top is solved, twice: once all apart, once with strip sets where they pay. */
START_TEST(random_trees_are_counted_one_by_one)
{
    static struct garden garden;
    static struct listed listed;
    static struct lying pieces[PIECES_MOST];
    static struct lain lain;
    uint64_t state = 20;
    int64_t sets = 0;
    for (int tree = 0; tree < 1000; tree++) {
        grow(&garden, &state);
        int32_t root = garden.nodes - 1;
        for (int32_t wish = MUSLIN_STRIP_PIECING_WHERE_FEWER; wish <= MUSLIN_STRIP_PIECING_NEVER; wish += 2) {
            struct muslin_solution_spec spec = MUSLIN_SOLUTION_SPEC_INIT;
            spec.strip_piecing = wish;
            list_with(&listed, garden.sewn.quilt, garden.made[root].id, &spec);
            if (size_of(listed.solution, garden.made[root].id).patches < PIECES_MOST / 4) {
                memset(&lain, 0, sizeof lain);
                lain.pieces = pieces;
                lain.listed = &listed;
                lay_all(&garden, root, &lain);
                ck_patch_rows(&garden, &lain);
                ck_sets(&garden, &lain);
                ck_strip_prints(&garden, &lain);
                sets += (int64_t)lain.sets;
            }
            end_list(&listed);
        }
        end_sewing(&garden.sewn);
    }
    ck_assert_int_gt(sets, 500);
}
END_TEST

/* ---- rows read back --------------------------------------------------------------------------------------------- */

START_TEST(cuts_are_rows_asked_for_and_filled)
{
    struct sewn sewn;
    begin_sewing(&sewn);
    struct muslin_solution *solution = solved(sewn.quilt, patch_of(sewn.quilt, sewn.blue, sewn.two, sewn.two));
    struct muslin_solution_cut row = { .size = sizeof row };
    size_t count = 7;
    ck_ok(muslin_solution_cuts(solution, NULL, 0, 0, &count, NULL));
    ck_assert_uint_eq(count, 1);
    ck_ok(muslin_solution_cuts(solution, &row, sizeof row, 1, &count, NULL));
    ck_assert_int_eq(row.count, 1);
    ck_status(muslin_solution_cuts(NULL, &row, sizeof row, 1, &count, NULL), MUSLIN_ERR_NULL);
    ck_status(muslin_solution_cuts(solution, &row, sizeof row, 1, NULL, NULL), MUSLIN_ERR_NULL);
    ck_status(muslin_solution_cuts(solution, NULL, sizeof row, 1, &count, NULL), MUSLIN_ERR_NULL);
    ck_status(muslin_solution_cuts(solution, &row, sizeof row - 1, 1, &count, NULL), MUSLIN_ERR_STRUCT_SIZE);
    muslin_solution_free(solution);
    end_sewing(&sewn);
}
END_TEST

START_TEST(nodes_of_a_row_are_ids_asked_for_and_filled)
{
    static struct listed listed;
    struct sewn sewn;
    struct muslin_problem problem = PROBLEM;
    begin_sewing(&sewn);
    muslin_id row[7];
    for (size_t i = 0; i < COUNT_OF(row); i++) /* equal in value, each with a measure of its own */
        row[i] = patch_of(sewn.quilt, i % 3 == 0 ? sewn.white : sewn.blue, sewn.two,
                          measure_of(sewn.quilt, "height", WHOLE_IN(i == 5 ? 3 : 2)));
    list_apart(&listed, &sewn, join_of(sewn.quilt, MUSLIN_AXIS_ACROSS, row, COUNT_OF(row)), 1);
    ck_assert_uint_eq(listed.cut_count, 3);
    const muslin_id expected[3][3] = { { row[5] }, { row[1], row[2], row[4] }, { row[0], row[3], row[6] } };
    for (int64_t i = 0; i < 3; i++) {
        muslin_id ids[3] = { 0 };
        size_t count = 0;
        ck_ok(muslin_solution_cut_nodes(listed.solution, i, ids, 3, &count, NULL));
        ck_assert_int_eq(listed.cuts[i].nodes, (int64_t)count);
        ck_assert_int_eq(listed.cuts[i].first_node, ids[0]);
        ck_assert_mem_eq(ids, expected[i], sizeof ids);
        ck_ok(muslin_solution_cut_nodes(listed.solution, i, NULL, 0, &count, NULL));
        ck_assert_uint_eq(count, i == 0 ? 1 : 3);
    }
    muslin_id two[2];
    size_t count = 0;
    ck_status(muslin_solution_cut_nodes(listed.solution, 1, two, 2, &count, NULL), MUSLIN_ERR_BUFFER);
    ck_assert_uint_eq(count, 3);
    ck_status(muslin_solution_cut_nodes(listed.solution, 3, two, 2, &count, &problem), MUSLIN_ERR_INDEX);
    ck_assert_int_eq(problem.value, 3);
    ck_assert_int_eq(problem.limit, 2);
    ck_status(muslin_solution_cut_nodes(listed.solution, -1, two, 2, &count, NULL), MUSLIN_ERR_INDEX);
    ck_status(muslin_solution_cut_nodes(NULL, 0, two, 2, &count, NULL), MUSLIN_ERR_NULL);
    ck_status(muslin_solution_cut_nodes(listed.solution, 0, NULL, 2, &count, NULL), MUSLIN_ERR_NULL);
    ck_status(muslin_solution_cut_nodes(listed.solution, 0, two, 2, NULL, NULL), MUSLIN_ERR_NULL);
    end_list(&listed);
    end_sewing(&sewn);
}
END_TEST

Suite *solution_cuts_suite(void)
{
    Suite *suite = suite_create("cut list of a solved tree");
    TCase *patches = tcase_create("patches");
    tcase_add_test(patches, equal_patches_are_one_row);
    tcase_add_test(patches, turned_patches_without_direction_are_one_row);
    tcase_add_test(patches, prints_are_cut_upright_and_counted);
    tcase_add_test(patches, pieces_longer_than_the_cloth_is_wide_are_told);
    tcase_add_test(patches, edges_with_allowances_of_their_own_tell_pieces_apart);
    tcase_add_test(patches, rows_are_sorted_by_fabric_height_and_width);
    suite_add_tcase(suite, patches);
    TCase *trees = tcase_create("trees");
    tcase_add_test(trees, random_trees_are_counted_one_by_one);
    tcase_add_test(trees, cuts_are_rows_asked_for_and_filled);
    tcase_add_test(trees, nodes_of_a_row_are_ids_asked_for_and_filled);
    suite_add_tcase(suite, trees);
    return suite;
}
