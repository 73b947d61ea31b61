/* corpus_quilt_read.c - trees read back, part by part, whichever kind it is asked as.
 *
 * SPDX-License-Identifier: MIT */
#include "corpus_tree.h"

enum { TREES = 60, ROWS = 24 };

/* The id of a number, mostly of one there is. */
static muslin_id take_id(struct golden *g, const struct tree *tree, int32_t sort, int64_t number)
{
    muslin_id id = 0;
    int32_t asked = draw_rarely(g, 60) ? draw_choice(g, MUSLIN_SORT_FABRIC, MUSLIN_SORT_NODE) : sort;
    int64_t of = draw_rarely(g, 60) ? draw_count(g, 100) : number;
    told(g, muslin_quilt_id(draw_quilt(g, tree), asked, of, &id, ask(g)));
    take_number(g, id);
    return id;
}

static void read_fabric(struct golden *g, const struct tree *tree, muslin_id id)
{
    OUT(muslin_quilt_fabric_spec, fabric);
    told(g, muslin_quilt_read_fabric(draw_quilt(g, tree), id, &fabric, ask(g)));
    TAKE(g, muslin_quilt_fabric_spec, fabric);
}

static void read_measure(struct golden *g, const struct tree *tree, muslin_id id)
{
    OUT(muslin_tree_measure, measure);
    struct muslin_quilt_sum_spec terms[4] = { { 0 } };
    size_t count = 99;
    size_t room = draw_room(g, 4);
    told(g, muslin_quilt_read_measure(draw_quilt(g, tree), id, &measure, ask(g)));
    TAKE(g, muslin_tree_measure, measure);
    muslin_status status = muslin_quilt_read_terms(draw_quilt(g, tree), id, terms, sizeof terms[0], room, &count,
                                                   ask(g));
    size_t given = told_rows(g, status, &count, room);
    for (size_t i = 0; i < given; i++)
        TAKE(g, muslin_quilt_sum_spec, terms[i]);
}

static void read_patch(struct golden *g, const struct tree *tree, muslin_id id)
{
    OUT(muslin_quilt_patch_spec, read);
    told(g, muslin_quilt_read_patch(draw_quilt(g, tree), id, &read, ask(g)));
    TAKE(g, muslin_quilt_patch_spec, read);
}

static void read_unit(struct golden *g, const struct tree *tree, muslin_id id)
{
    OUT(muslin_quilt_unit_spec, read);
    told(g, muslin_quilt_read_unit(draw_quilt(g, tree), id, &read, ask(g)));
    TAKE(g, muslin_quilt_unit_spec, read);
}

static void read_join(struct golden *g, const struct tree *tree, muslin_id id)
{
    OUT(muslin_quilt_join_spec, read);
    told(g, muslin_quilt_read_join(draw_quilt(g, tree), id, &read, ask(g)));
    TAKE(g, muslin_quilt_join_spec, read);
}

static void read_trim(struct golden *g, const struct tree *tree, muslin_id id)
{
    OUT(muslin_quilt_trim_spec, read);
    told(g, muslin_quilt_read_trim(draw_quilt(g, tree), id, &read, ask(g)));
    TAKE(g, muslin_quilt_trim_spec, read);
}

static void read_pinwheel(struct golden *g, const struct tree *tree, muslin_id id)
{
    OUT(muslin_quilt_pinwheel_spec, read);
    told(g, muslin_quilt_read_pinwheel(draw_quilt(g, tree), id, &read, ask(g)));
    TAKE(g, muslin_quilt_pinwheel_spec, read);
}

static void read_set_in(struct golden *g, const struct tree *tree, muslin_id id)
{
    OUT(muslin_quilt_set_in_spec, read);
    told(g, muslin_quilt_read_set_in(draw_quilt(g, tree), id, &read, ask(g)));
    TAKE(g, muslin_quilt_set_in_spec, read);
}

static void read_diagonal(struct golden *g, const struct tree *tree, muslin_id id)
{
    OUT(muslin_quilt_diagonal_spec, read);
    told(g, muslin_quilt_read_diagonal(draw_quilt(g, tree), id, &read, ask(g)));
    TAKE(g, muslin_quilt_diagonal_spec, read);
}

static void read_sixty(struct golden *g, const struct tree *tree, muslin_id id)
{
    OUT(muslin_quilt_sixty_spec, read);
    struct muslin_quilt_sixty_piece_spec pieces[ROWS] = { { 0 } };
    size_t count = 99;
    size_t room = draw_room(g, ROWS);
    told(g, muslin_quilt_read_sixty(draw_quilt(g, tree), id, &read, ask(g)));
    TAKE(g, muslin_quilt_sixty_spec, read);
    muslin_status status = muslin_quilt_read_sixty_pieces(draw_quilt(g, tree), id, pieces, sizeof pieces[0], room,
                                                          &count, ask(g));
    size_t given = told_rows(g, status, &count, room);
    for (size_t i = 0; i < given; i++)
        TAKE(g, muslin_quilt_sixty_piece_spec, pieces[i]);
}

static void read_shape(struct golden *g, const struct tree *tree, muslin_id id)
{
    struct muslin_corner_spec corners[ROWS] = { { 0 } };
    muslin_id width = -77;
    muslin_id height = -77;
    size_t count = 99;
    size_t room = draw_room(g, ROWS);
    muslin_status status = muslin_quilt_read_shape(draw_quilt(g, tree), id, corners, sizeof corners[0], room, &count,
                                                   &width, &height, ask(g));
    size_t given = told_rows(g, status, &count, room);
    take_number(g, width);
    take_number(g, height);
    for (size_t i = 0; i < given; i++)
        TAKE(g, muslin_corner_spec, corners[i]);
}

static void read_fabrics(struct golden *g, const struct tree *tree, muslin_id id)
{
    muslin_id ids[3] = { 0 };
    size_t count = 99;
    size_t room = draw_room(g, 3);
    told(g, muslin_quilt_read_fabrics(draw_quilt(g, tree), id, ids, room, &count, ask(g)));
    take_number(g, (int64_t)count);
    for (size_t i = 0; i < 3; i++)
        take_number(g, ids[i]);
}

/* As each kind in turn, of which one is right. */
static void read_node(struct golden *g, const struct tree *tree, muslin_id id)
{
    static void (*const kinds[])(struct golden *, const struct tree *, muslin_id) = {
        read_patch,  read_unit,     read_join,  read_trim,  read_pinwheel,
        read_set_in, read_diagonal, read_sixty, read_shape, read_fabrics };
    for (size_t i = 0; i < sizeof kinds / sizeof kinds[0]; i++)
        kinds[i](g, tree, id);
}

static void lay_one(struct golden *g, struct tree *tree)
{
    muslin_id id = -77;
    muslin_id node = draw_id(g, &tree->nodes);
    int32_t quarter_turns = draw_choice(g, 0, 3);
    int32_t mirrored = draw_choice(g, 0, 1);
    told_id(g, &tree->nodes, muslin_quilt_lay(draw_quilt(g, tree), node, quarter_turns, mirrored, &id, ask(g)), &id);
}

void golden_quilt_read(struct golden *g)
{
    static struct tree tree;
    for (int32_t round = 0; round < TREES; round++) {
        OUT(muslin_part_counts, counts);
        if (!tree_begin(g, &tree))
            continue;
        tree_grow(g, &tree, draw_between(g, 10, 40));
        lay_one(g, &tree);
        counts.size = (uint32_t)sizeof counts;
        told(g, muslin_quilt_counts(tree.quilt, &counts, ask(g)));
        for (int64_t i = 1; i <= counts.fabrics; i++)
            read_fabric(g, &tree, take_id(g, &tree, MUSLIN_SORT_FABRIC, i));
        for (int64_t i = 1; i <= counts.measures; i++)
            read_measure(g, &tree, take_id(g, &tree, MUSLIN_SORT_MEASURE, i));
        for (int64_t i = 1; i <= counts.nodes; i++)
            read_node(g, &tree, take_id(g, &tree, MUSLIN_SORT_NODE, i));
        tree_end(g, &tree);
    }
}
