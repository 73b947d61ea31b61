/* places.c - where nodes lie among the patches of another, and which row of the cut list each patch comes from.
 *
 * SPDX-License-Identifier: MIT
 *
 * In the order of the tree a node's own pieces come before its children, each of which has as many patches as its size
 * says. */
#include <stdlib.h>

#include "patches.h"

size_t patches_in(const struct worked *worked, muslin_id node)
{
    return (size_t)size_of(worked, node).patches;
}

size_t own_patches(muslin_id node, const struct patches *patches, size_t first, size_t end)
{
    size_t own = 0;
    while (first + own < end && patches->rows[first + own].node == node)
        own++;
    return own;
}

/* ---- the way down ------------------------------------------------------------------------------------------------ */

struct way {
    const struct worked *worked;
    const struct patches *patches;
    visitor *visit;
    void *with;
};

/* How the library takes a child at a place; null where it says nothing. */
static const struct muslin_pressing_child *taken(const struct worked *worked, muslin_id parent, size_t place)
{
    for (size_t i = 0; i < worked->children_count; i++)
        if (worked->children[i].node == parent && worked->children[i].place == (int64_t)place)
            return &worked->children[i];
    return NULL;
}

/* What turns a node is gone through. `other_way` says that what it lies in is pressed the other way, and so it. */
static void go_down(const struct way *way, struct place place);

static void go_into(const struct way *way, const struct place *place)
{
    size_t count;
    muslin_id *children = children_of(way->worked, place->node, &count);
    size_t first = place->first + own_patches(place->node, way->patches, place->first, place->end);
    for (size_t i = 0; i < count && first < place->end; i++) {
        const struct muslin_pressing_child *row = taken(way->worked, place->node, i);
        struct place child = *place;
        child.node = children[i];
        child.parent = place->node;
        child.first = first;
        child.end = first + patches_in(way->worked, children[i]);
        child.depth++;
        child.other_way = place->other_way != (row != NULL && row->other_way == 1);
        first = child.end;
        go_down(way, child);
    }
    free(children);
}

/* What lies in a part that is turned lies in it as the part's own places say. */
static bool is_turned_whole(const struct worked *worked, muslin_id node)
{
    for (size_t i = 0; i < worked->children_count; i++)
        if (worked->children[i].child == node && worked->children[i].turn != 0)
            return true;
    return false;
}

static void go_down(const struct way *way, struct place place)
{
    const struct muslin_node node = node_of(way->worked, place.node);
    const bool is_turn = node.kind == MUSLIN_NODE_TURN;
    if (is_turn) {
        place.turns = (place.turns + node.quarter_turns) % 4;
        place.mirrored ^= node.mirrored == 1;
    } else if (!way->visit(way->with, &place))
        return;
    place.is_whole |= is_turned_whole(way->worked, place.node);
    if (!is_turn && place.is_whole)
        place.other_way = place.is_whole = false;
    go_into(way, &place);
}

void visit_places(const struct worked *worked, muslin_id node, const struct patches *patches, visitor *visit,
                  void *with)
{
    const struct way way = { worked, patches, visit, with };
    go_down(&way, (struct place){ .node = node, .end = patches->count });
}

/* ---- cuts -------------------------------------------------------------------------------------------------------- */

struct cutting {
    const struct worked *worked;
    const struct patches *patches;
    int64_t *cuts;
};

/* Side triangles of a field on point are cut twice on the diagonal, those of its corners once. */
static bool is_triangle_of(const struct worked *worked, const struct muslin_solution_cut *cut, muslin_id field,
                           int32_t region)
{
    struct muslin_quilt_diagonal_spec spec = MUSLIN_QUILT_DIAGONAL_SPEC_INIT;
    must(muslin_quilt_read_diagonal(worked->design->quilt, field, &spec, NULL));
    const int64_t sides = 2 * (spec.columns - 1) + 2 * (spec.rows - 1);
    const bool is_side = region <= sides;
    return is_side == (cut->again == MUSLIN_CUT_AGAIN_TWICE);
}

/* Pieces of 60 degree rows by the room they take; behind them come the half-triangles at the ends, from rectangles. */
static bool is_sixty_of(const struct worked *worked, const struct muslin_solution_cut *cut, muslin_id rows,
                        int32_t region)
{
    static const int32_t shapes[] = { 0, MUSLIN_CUT_SHAPE_TRIANGLES, MUSLIN_CUT_SHAPE_DIAMONDS,
                                      MUSLIN_CUT_SHAPE_TRAPEZOIDS };
    size_t count;
    must(muslin_quilt_read_sixty_pieces(worked->design->quilt, rows, NULL, 0, 0, &count, NULL));
    struct muslin_quilt_sixty_piece_spec *pieces = rows_for(count, sizeof *pieces);
    for (size_t i = 0; i < count; i++)
        must(muslin_quilt_sixty_piece_spec_init(&pieces[i], sizeof pieces[i]));
    must(muslin_quilt_read_sixty_pieces(worked->design->quilt, rows, pieces, sizeof *pieces, count, &count, NULL));
    const bool is_given = region >= 1 && (size_t)region <= count;
    const int32_t shape = is_given ? shapes[pieces[region - 1].cells] : MUSLIN_CUT_SHAPE_RECTANGLE;
    free(pieces);
    return cut->shape == shape;
}

/* Strips set in at the left, right, top and bottom. */
static bool is_strip_at(const struct worked *worked, size_t cut, muslin_id node, int32_t side)
{
    const enum mitred_sides sides = mitred_sides(worked, cut, node);
    return sides == MITRED_ALL || (sides == MITRED_BESIDE) == (side <= 2);
}

static bool is_of(const struct worked *worked, size_t cut, muslin_id node, const struct muslin_outline *patch)
{
    const struct muslin_solution_cut *row = &worked->cuts[cut];
    const int32_t kind = node_of(worked, node).kind;
    if (row->fabric != patch->fabric || !is_cut_for(worked, cut, node))
        return false;
    if (row->source == MUSLIN_CUT_SOURCE_UNIT || row->source == MUSLIN_CUT_SOURCE_TEMPLATE)
        return row->region == patch->region;
    if (row->source == MUSLIN_CUT_SOURCE_MITRED && kind == MUSLIN_NODE_SET_IN)
        return is_strip_at(worked, cut, node, patch->region);
    if (row->source == MUSLIN_CUT_SOURCE_SETTING && kind == MUSLIN_NODE_DIAGONAL)
        return is_triangle_of(worked, row, node, patch->region);
    return kind != MUSLIN_NODE_SIXTY || is_sixty_of(worked, row, node, patch->region);
}

/* Pieces cut again on the diagonal are seen as triangles. */
static bool looks_like(const struct muslin_solution_cut *cut, const struct muslin_outline *patch)
{
    return (cut->again != MUSLIN_CUT_AGAIN_NO) == (patch->corners == 3);
}

/* Of a node's own pieces: of a unit, a shape, strips set in, triangles. A star has squares and triangles of one fabric,
 * which are two rows of the list. */
static int64_t cut_of_own(const struct worked *worked, muslin_id node, const struct muslin_outline *patch)
{
    int64_t found = -1;
    for (size_t i = 0; i < worked->cuts_count; i++) {
        if (!is_of(worked, i, node, patch))
            continue;
        if (looks_like(&worked->cuts[i], patch))
            return (int64_t)i;
        found = found < 0 ? (int64_t)i : found;
    }
    return found;
}

static bool find_cuts(void *with, const struct place *place)
{
    const struct cutting *cutting = with;
    const struct worked *worked = cutting->worked;
    const size_t own = own_patches(place->node, cutting->patches, place->first, place->end);
    const bool is_patch = node_of(worked, place->node).kind == MUSLIN_NODE_PATCH;
    for (size_t row = place->first; row < place->first + own; row++) {
        int64_t cut = -1;
        if (!is_patch)
            cut = cut_of_own(worked, place->node, &cutting->patches->rows[row]);
        else if (place->parent != 0 && node_of(worked, place->parent).kind == MUSLIN_NODE_JOIN)
            cut = cut_of_strip(worked, place->parent, place->node);
        cutting->cuts[row] = is_patch && cut < 0 ? cut_of_patch(worked, place->node) : cut;
    }
    return true;
}

int64_t *cuts_of_patches(const struct worked *worked, muslin_id node, const struct patches *patches)
{
    struct cutting cutting = { worked, patches, rows_for(patches->count, sizeof(int64_t)) };
    for (size_t i = 0; i < patches->count; i++)
        cutting.cuts[i] = -1;
    visit_places(worked, node, patches, find_cuts, &cutting);
    return cutting.cuts;
}

/* ---- names ------------------------------------------------------------------------------------------------------- */

const char *piece_name(const struct worked *worked, int64_t cut, char text[WORD_ROOM])
{
    snprintf(text, WORD_ROOM, "[%d]", worked->piece[cut]);
    return text;
}

const char *part_name(const struct worked *worked, muslin_id node, bool other_way, char text[WORD_ROOM])
{
    char letter[16];
    snprintf(text, WORD_ROOM, "%s%s", letter_of(worked, node, letter), other_way ? "*" : "");
    return text;
}
