/* ideas.c - tops of strip sets and of pieced units from what there is; every figure is the library's.
 *
 * SPDX-License-Identifier: MIT */
#include "ideas.h"

#include <stdlib.h>
#include <string.h>

#include "layouts.h"
#include "memory.h"

/* ---- the top of an idea ----------------------------------------------------------------------------------------- */

static bool size_top(const struct wishes *wishes, const struct idea *idea, int64_t columns, int64_t rows,
                     struct muslin_setting *top)
{
    struct muslin_setting_spec spec = MUSLIN_SETTING_SPEC_INIT;
    spec.block_width = idea->block_width;
    spec.block_height = idea->block_height;
    spec.columns = columns;
    spec.rows = rows;
    spec.allowance = wishes->allowance;
    spec.take_up = wishes->take_up;
    *top = (struct muslin_setting){ .size = sizeof *top };
    return muslin_setting_straight(&spec, top, NULL) == MUSLIN_OK;
}

/* The largest sensible layout of so many blocks. */
static bool lay_out(const struct wishes *wishes, struct idea *idea, int64_t blocks)
{
    struct muslin_setting top;
    const struct layout layout = largest_layout(idea->block_width, idea->block_height, blocks);
    if (layout.columns == 0 || !size_top(wishes, idea, layout.columns, layout.rows, &top))
        return false;
    idea->columns = layout.columns;
    idea->rows = layout.rows;
    idea->blocks = top.blocks;
    idea->top_width = top.finished_width;
    idea->top_length = top.finished_length;
    return true;
}

/* The next larger one, but for what it takes. */
static bool lay_out_next(const struct wishes *wishes, struct idea *idea)
{
    struct muslin_setting top;
    const struct layout layout = smallest_layout(idea->block_width, idea->block_height, idea->blocks + 1);
    if (layout.columns == 0 || !size_top(wishes, idea, layout.columns, layout.rows, &top))
        return false;
    idea->next = (struct next_layout){ .columns = layout.columns, .rows = layout.rows };
    idea->next.top_width = top.finished_width;
    idea->next.top_length = top.finished_length;
    return true;
}

/* Sides of at most MUSLIN_SIZE_MAX: their product stays within 2^60. */
static int64_t area(muslin_len width, muslin_len length)
{
    return width * length;
}

static int64_t scaled(int64_t value, int64_t numerator, int64_t denominator)
{
    struct muslin_rounding_spec nearest = MUSLIN_ROUNDING_SPEC_INIT;
    struct muslin_rounded part = { .size = sizeof part };
    nearest.grid = 1;
    nearest.direction = MUSLIN_DIRECTION_NEAREST;
    return muslin_length_scale(value, numerator, denominator, &nearest, &part) == MUSLIN_OK ? part.value : 0;
}

int64_t cloth_area(int64_t count, muslin_len length, muslin_len width)
{
    enum { EIGHTH = MUSLIN_TICKS_PER_INCH / 8 };
    int64_t all = 0;
    return muslin_length_multiply(scaled(length, width, EIGHTH * EIGHTH), count, &all) == MUSLIN_OK ? all : 0;
}

bool are_strips(const struct source *source)
{
    return muslin_length_compare(source->length, 3 * source->cut) >= 0;
}

/* The finished top over all cloth of the source, in whole per cent. */
static int32_t share_seen(const struct idea *idea)
{
    enum { PER_CENT = 10000 };
    if (idea->source->cloth == 0)
        return 0;
    return PER_CENT * (int32_t)scaled(100, cloth_area(1, idea->top_width, idea->top_length), idea->source->cloth);
}

/* ---- order ------------------------------------------------------------------------------------------------------ */

static int descending(int64_t a, int64_t b)
{
    return muslin_length_compare(b, a);
}

/* Below 0 where a comes first: by what was asked for, then the larger top, the larger share that is seen, fewer pieces,
 * fewer blocks, the usual way of sewing. */
static int compare_ideas(const struct idea *a, const struct idea *b, int32_t rank)
{
    const int by_area = descending(area(a->top_width, a->top_length), area(b->top_width, b->top_length));
    const int by_share = descending(a->seen, b->seen);
    const int by_block = descending(area(a->block_width, a->block_height), area(b->block_width, b->block_height));
    const int first = rank == RANK_LARGEST ? by_area : rank == RANK_LEAST_LEFT ? by_share : by_block;
    const int keys[] = { first,
                         by_area,
                         by_share,
                         descending(b->used, a->used),
                         descending(b->blocks, a->blocks),
                         (b->method == MUSLIN_UNIT_METHOD_TWO_AT_A_TIME) -
                             (a->method == MUSLIN_UNIT_METHOD_TWO_AT_A_TIME) };
    for (size_t i = 0; i < sizeof keys / sizeof keys[0]; i++)
        if (keys[i] != 0)
            return keys[i];
    return 0;
}

/* Ways of one kind, of which the best is listed. */
static bool are_of_one_kind(const struct idea *a, const struct idea *b)
{
    return a->source == b->source && a->made == b->made && a->unit == b->unit &&
           a->strips_per_set == b->strips_per_set;
}

static void add_idea(struct ideas *ideas, const struct wishes *wishes, const struct idea *idea)
{
    for (size_t i = 0; i < ideas->count && !wishes->all; i++)
        if (are_of_one_kind(&ideas->rows[i], idea)) {
            if (compare_ideas(idea, &ideas->rows[i], wishes->rank) < 0)
                ideas->rows[i] = *idea;
            return;
        }
    if (ideas->count == ideas->room) {
        struct idea *rows = need_memory((2 * ideas->room + 64) * sizeof *rows);
        if (ideas->count > 0)
            memcpy(rows, ideas->rows, ideas->count * sizeof *rows);
        free(ideas->rows);
        ideas->rows = rows;
        ideas->room = 2 * ideas->room + 64;
    }
    ideas->rows[ideas->count++] = *idea;
}

/* Into order, each behind those that are as good. */
static void put_in_order(struct ideas *ideas, int32_t rank)
{
    for (size_t i = 1; i < ideas->count; i++) {
        const struct idea idea = ideas->rows[i];
        size_t at = i;
        for (; at > 0 && compare_ideas(&idea, &ideas->rows[at - 1], rank) < 0; at--)
            ideas->rows[at] = ideas->rows[at - 1];
        ideas->rows[at] = idea;
    }
}

/* ---- strip sets ------------------------------------------------------------------------------------------------- */

/* Sets of so many strips are tried. */
enum { SET_LEAST = 2, SET_MOST = 12 };

static struct muslin_stripquilt_spec strip_spec(const struct source *source, const struct wishes *wishes,
                                                int64_t strips_per_set, int64_t segments_per_block)
{
    struct muslin_stripquilt_spec spec = MUSLIN_STRIPQUILT_SPEC_INIT;
    spec.strips = source->count;
    spec.strips_per_set = strips_per_set;
    spec.segments_per_block = segments_per_block;
    spec.strip_cut = source->cut;
    spec.strip_length = source->length;
    spec.allowance = wishes->allowance;
    spec.take_up = wishes->take_up;
    spec.end_trim = wishes->end_loss;
    return spec;
}

/* One top of this layout, from as many strips as it takes. */
static bool plan_top(struct muslin_stripquilt_spec spec, int64_t columns, int64_t rows, struct muslin_stripquilt *top)
{
    spec.strips = MUSLIN_COUNT_MAX;
    spec.columns = columns;
    spec.rows = rows;
    spec.tops = 1;
    *top = (struct muslin_stripquilt){ .size = sizeof *top };
    return muslin_stripquilt_plan(&spec, top, NULL) == MUSLIN_OK;
}

/* Square blocks of strip sets: a top of one block says how many there are, and how large. */
static bool strip_idea(const struct source *source, const struct wishes *wishes, int64_t strips_per_set,
                       int64_t segments_per_block, struct idea *idea)
{
    const struct muslin_stripquilt_spec spec = strip_spec(source, wishes, strips_per_set, segments_per_block);
    struct muslin_stripquilt block = { .size = sizeof block };
    struct muslin_stripquilt top;
    *idea = (struct idea){ .made = MADE_STRIP_SETS, .source = source };
    if (muslin_stripquilt_plan(&spec, &block, NULL) != MUSLIN_OK)
        return false;
    idea->strips_per_set = strips_per_set;
    idea->segments_per_block = segments_per_block;
    idea->segment_cut = block.segment_cut;
    idea->block_width = block.block_finished_width;
    idea->block_height = block.block_finished_height;
    if (!lay_out(wishes, idea, block.tops_in_hand) || !plan_top(spec, idea->columns, idea->rows, &top))
        return false;
    idea->sets = top.sets;
    idea->segments_left = top.segments_left;
    idea->used = top.strips_used;
    idea->left = source->count - top.strips_used;
    idea->warnings = top.warnings;
    idea->seen = share_seen(idea);
    if (lay_out_next(wishes, idea) && plan_top(spec, idea->next.columns, idea->next.rows, &top))
        idea->next.more = top.strips_used - source->count;
    return true;
}

/* The segments of a block divide its strips, so that seams of turned neighbours meet. */
static void find_strip_ideas(const struct source *source, const struct wishes *wishes, struct ideas *ideas)
{
    for (int64_t strips = SET_LEAST; strips <= SET_MOST; strips++)
        for (int64_t segments = 1; segments <= strips; segments++) {
            struct idea idea;
            if (strips % segments == 0 && strip_idea(source, wishes, strips, segments, &idea))
                add_idea(ideas, wishes, &idea);
        }
}

/* ---- pieced units ----------------------------------------------------------------------------------------------- */

enum { RECIPES_MAX = 128, PIECES_MAX = 16 };

/* Units whose outline is a rectangle can be set in straight rows. */
static bool can_be_set(int32_t kind)
{
    switch (kind) {
    case MUSLIN_UNIT_TRIANGLE_60:
    case MUSLIN_UNIT_DIAMOND_60:
    case MUSLIN_UNIT_DIAMOND_45:
    case MUSLIN_UNIT_HEXAGON:
    case MUSLIN_UNIT_HALF_HEXAGON:
    case MUSLIN_UNIT_TRAPEZOID:
    case MUSLIN_UNIT_SLANTED_SLICE:
        return false;
    default:
        return true;
    }
}

static struct muslin_unit_stock_spec stock_of(const struct source *source, const struct wishes *wishes, int64_t each)
{
    struct muslin_unit_stock_spec stock = MUSLIN_UNIT_STOCK_SPEC_INIT;
    stock.width = source->length;
    stock.height = source->cut;
    stock.per_region = each;
    stock.end_loss = wishes->end_loss;
    stock.finished_grid = wishes->finished_grid;
    return stock;
}

static struct muslin_unit_spec cut_as(const struct wishes *wishes)
{
    struct muslin_unit_spec spec = MUSLIN_UNIT_SPEC_INIT;
    spec.allowance = wishes->allowance;
    spec.take_up = wishes->take_up;
    return spec;
}

/* The recipe of a unit of this width, of the proportions that the library offers it in. */
static struct muslin_unit_spec unit_of(const struct wishes *wishes, const struct muslin_unit_yield *largest,
                                       muslin_len width)
{
    struct muslin_unit_spec spec = cut_as(wishes);
    spec.kind = largest->kind;
    spec.method = largest->method;
    spec.finished_width = width;
    if (largest->kind == MUSLIN_UNIT_SNOWBALL)
        spec.corner = scaled(width, 1, 3);
    if (largest->kind == MUSLIN_UNIT_HALF_RECTANGLE)
        spec.finished_height = scaled(width, largest->finished_height, largest->finished_width);
    return spec;
}

/* Fabrics that one recipe is cut from; 0 where it cannot be cut. */
static int64_t fabrics_of(const struct muslin_unit_spec *spec)
{
    struct muslin_unit_piece pieces[PIECES_MAX];
    size_t count = 0;
    int64_t fabrics = 0;
    if (muslin_unit_pieces(spec, pieces, sizeof pieces[0], PIECES_MAX, &count, NULL) != MUSLIN_OK)
        return 0;
    for (size_t i = 0; i < count; i++)
        fabrics = pieces[i].region > fabrics ? pieces[i].region : fabrics;
    return fabrics;
}

static int64_t units_from(const struct idea *idea, const struct wishes *wishes, const struct muslin_unit_spec *spec,
                          int64_t each)
{
    const struct muslin_unit_stock_spec stock = stock_of(idea->source, wishes, each);
    struct muslin_unit_yield yield = { .size = sizeof yield };
    return muslin_unit_from_stock(spec, &stock, &yield, NULL) == MUSLIN_OK ? yield.units : 0;
}

/* The fewest pieces of each fabric that give so many units, looked for by halves; MUSLIN_COUNT_MAX: none do. */
static int64_t pieces_for(const struct idea *idea, const struct wishes *wishes, const struct muslin_unit_spec *spec,
                          int64_t units)
{
    int64_t least = 1;
    int64_t enough = MUSLIN_COUNT_MAX;
    while (least < enough) {
        const int64_t middle = least + (enough - least) / 2;
        if (units_from(idea, wishes, spec, middle) >= units)
            enough = middle;
        else
            least = middle + 1;
    }
    return enough;
}

static bool unit_idea(const struct source *source, const struct wishes *wishes,
                      const struct muslin_unit_yield *largest, muslin_len width, struct idea *idea)
{
    const struct muslin_unit_spec spec = unit_of(wishes, largest, width);
    struct muslin_unit_plan unit = { .size = sizeof unit };
    *idea = (struct idea){ .made = MADE_UNITS, .source = source, .unit = largest->kind, .method = largest->method };
    idea->fabrics = fabrics_of(&spec);
    if (idea->fabrics == 0 || muslin_unit_recipe(&spec, &unit, NULL) != MUSLIN_OK)
        return false;
    idea->block_width = unit.finished_width;
    idea->block_height = unit.finished_height;
    idea->warnings = unit.warnings;
    const int64_t units = units_from(idea, wishes, &spec, source->count / idea->fabrics);
    if (!lay_out(wishes, idea, units))
        return false;
    idea->used = pieces_for(idea, wishes, &spec, idea->blocks) * idea->fabrics;
    idea->left = source->count - idea->used;
    idea->units_left = units - idea->blocks;
    idea->seen = share_seen(idea);
    if (lay_out_next(wishes, idea)) {
        const int64_t each = pieces_for(idea, wishes, &spec, idea->next.columns * idea->next.rows);
        idea->next.more = each * idea->fabrics - source->count;
        if (each == MUSLIN_COUNT_MAX)
            idea->next.columns = 0;
    }
    return true;
}

/* Of each recipe the largest size, and those wished for or usual that are smaller. */
static void find_sizes(const struct source *source, const struct wishes *wishes,
                       const struct muslin_unit_yield *largest, struct ideas *ideas)
{
    enum { USUAL = 6, CM = 10 * MUSLIN_TICKS_PER_MM };
    static const muslin_len inches[USUAL] = { 3, 4, 6, 8, 9, 12 };
    static const muslin_len centimetres[USUAL] = { 8, 10, 15, 20, 25, 30 };
    const bool wished = wishes->blocks.count > 0;
    struct idea idea;
    if (!wished && unit_idea(source, wishes, largest, largest->finished_width, &idea))
        add_idea(ideas, wishes, &idea);
    for (size_t i = 0; i < (wished ? wishes->blocks.count : USUAL); i++) {
        const muslin_len width = wished ? wishes->blocks.values[i]
                                        : wishes->metric ? centimetres[i] * CM : inches[i] * MUSLIN_TICKS_PER_INCH;
        if (width <= largest->finished_width && (wished || width < largest->finished_width) &&
            unit_idea(source, wishes, largest, width, &idea))
            add_idea(ideas, wishes, &idea);
    }
}

static bool find_unit_ideas(struct desk *desk, const struct source *source, const struct wishes *wishes,
                            struct ideas *ideas)
{
    struct muslin_unit_yield largest[RECIPES_MAX];
    const struct muslin_unit_spec spec = cut_as(wishes);
    const struct muslin_unit_stock_spec stock = stock_of(source, wishes, source->count);
    size_t count = 0;
    if (!worked(desk, muslin_unit_makes(&spec, &stock, largest, sizeof largest[0], RECIPES_MAX, &count,
                                        &desk->problem)))
        return false;
    for (size_t i = 0; i < count && wishes->made != MADE_STRIP_SETS; i++)
        if (can_be_set(largest[i].kind))
            find_sizes(source, wishes, &largest[i], ideas);
    return true;
}

/* ---- all of them ------------------------------------------------------------------------------------------------ */

bool find_ideas(struct desk *desk, const struct sources *sources, const struct wishes *wishes, struct ideas *ideas)
{
    *ideas = (struct ideas){ NULL, 0, 0 };
    for (size_t i = 0; i < sources->count; i++) {
        const struct source *source = &sources->rows[i];
        if (!find_unit_ideas(desk, source, wishes, ideas))
            return false;
        if (wishes->made != MADE_UNITS && are_strips(source))
            find_strip_ideas(source, wishes, ideas);
    }
    put_in_order(ideas, wishes->rank);
    return true;
}
