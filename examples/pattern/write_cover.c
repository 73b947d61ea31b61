/* write_cover.c - title, story, and all sizes side by side.
 *
 * SPDX-License-Identifier: MIT */
#include <inttypes.h>
#include <stdlib.h>

#include "wording.h"

static void write_title(struct document *document, const struct pattern *pattern)
{
    struct line line = { NULL, 0, 0 };
    say(document, ITEM_TITLE, 0, NULL, "%s", pattern->title);
    if (pattern->by != NULL)
        add(&line, "By %s. ", pattern->by);
    if (pattern->version != NULL)
        add(&line, "Version %s. ", pattern->version);
    if (pattern->date != NULL)
        add(&line, "%s. ", pattern->date);
    if (pattern->invented)
        add(&line, "An invented quilt; names, people and %ss are made up. ", pattern->words[WORD_COLOR]);
    if (line.used > 0) {
        line.text[line.used - 1] = '\0';
        put(document, ITEM_SAY, 0, NULL, &line);
    }
    if (pattern->story != NULL)
        say(document, ITEM_SAY, 0, NULL, "%s", pattern->story);
}

/* ---- all sizes side by side -------------------------------------------------------------------------------------- */

static int64_t count_blocks(const struct worked *worked)
{
    int64_t count = 0;
    for (size_t i = 0; i < worked->steps_count; i++) {
        const struct named *named = named_of(worked->design, worked->steps[i].node);
        if (named != NULL && named->is_block && worked->steps[i].kind != MUSLIN_SEWING_SET)
            count += size_of(worked, worked->steps[i].node).count;
    }
    return count;
}

/* Where little is to spare the amount that is safer stands with it. */
static void add_bought(struct table *table, const struct worked *worked, muslin_len bought, muslin_len spare)
{
    char text[WORD_ROOM];
    char safer[WORD_ROOM];
    muslin_len more;
    must(muslin_length_add(bought, worked->design->buying.step, &more));
    if (is_little(worked, spare))
        add_cell(table, "%s (safer: %s)", to_buy(worked, bought, text), to_buy(worked, more, safer));
    else
        add_cell(table, "%s", to_buy(worked, bought, text));
}

static void add_backing_cell(struct table *table, const struct worked *worked)
{
    const struct muslin_purchase *backs = &worked->backs[0];
    add_bought(table, worked, backs->bought, backs->spare);
}

static void add_batting_cell(struct table *table, const struct worked *worked)
{
    const int64_t tops = worked->design->solve.tops;
    char text[WORD_ROOM];
    at_least_by(worked, worked->batting.width, worked->batting.length, text);
    if (tops > 1)
        add_cell(table, "%" PRId64 " pieces of %s", tops, text);
    else
        add_cell(table, "%s", text);
}

static void add_cloth_cell(struct table *table, const struct worked *worked, size_t number)
{
    char text[WORD_ROOM];
    const struct cloth *cloth = &worked->design->cloths[number];
    for (size_t i = 0; i < worked->bill_count; i++) {
        if (worked->bill[i].fabric != cloth->id)
            continue;
        if (cloth->strip_cut > 0)
            add_cell(table, "%" PRId64 " strips %s wide", worked->bolts[i].strips_needed,
                     measured(worked, cloth->strip_cut, text));
        else
            add_bought(table, worked, worked->bill[i].bought, worked->bill[i].spare);
        return;
    }
    add_cell(table, "none");
}

enum row { ROW_FINISHED, ROW_UNFINISHED, ROW_BLOCKS, ROW_BINDING, ROW_BACKING, ROW_BATTING };

static void add_size_cell(struct table *table, const struct worked *worked, enum row row)
{
    char text[WORD_ROOM];
    const struct muslin_node_size *top = &worked->top;
    if (row == ROW_FINISHED)
        add_cell(table, "%s", measured_by(worked, top->finished_width, top->finished_height, text));
    else if (row == ROW_UNFINISHED)
        add_cell(table, "%s", measured_by(worked, top->unfinished_width, top->unfinished_height, text));
    else if (row == ROW_BLOCKS)
        add_cell(table, "%" PRId64, count_blocks(worked));
    else if (row == ROW_BINDING && worked->design->has_binding)
        add_cell(table, "%" PRId64 " strips cut %s wide", count_binding_strips(worked, NULL),
                 measured(worked, worked->design->binding.binding_cut, text));
    else if (row == ROW_BACKING && worked->design->has_backing)
        add_backing_cell(table, worked);
    else if (row == ROW_BATTING && worked->design->has_batting)
        add_batting_cell(table, worked);
    else
        add_cell(table, "none");
}

static void add_row(struct table *table, struct worked *const *sizes, size_t count, enum row row)
{
    for (size_t i = 0; i < count; i++)
        add_size_cell(table, sizes[i], row);
}

/* What is only behind is told below; what no size is cut from is not bought. */
static bool is_cut_from(struct worked *const *sizes, size_t count, size_t cloth)
{
    for (size_t i = 0; i < count; i++)
        for (size_t k = 0; k < sizes[i]->bill_count; k++)
            if (sizes[i]->bill[k].fabric == sizes[i]->design->cloths[cloth].id)
                return true;
    return false;
}

static void write_cloth_rows(struct table *table, struct worked *const *sizes, size_t count)
{
    for (size_t cloth = 0; cloth < sizes[0]->design->cloths_used; cloth++) {
        if (!is_cut_from(sizes, count, cloth))
            continue;
        add_cell(table, "%s, %s", sizes[0]->design->cloths[cloth].letter, sizes[0]->design->cloths[cloth].name);
        for (size_t i = 0; i < count; i++)
            add_cloth_cell(table, sizes[i], cloth);
    }
}

/* Below the cloth of the top: what goes round, behind and between. */
static void write_finishing_rows(struct table *table, struct worked *const *sizes, size_t count)
{
    const struct design *design = sizes[0]->design;
    char text[WORD_ROOM];
    if (design->has_binding) {
        add_cell(table, "binding (its %s is counted above)", word(sizes[0], WORD_FABRIC));
        add_row(table, sizes, count, ROW_BINDING);
    }
    if (design->has_backing) {
        add_cell(table, "backing, %s wide", measured(sizes[0], design->backing.fabric_width, text));
        add_row(table, sizes, count, ROW_BACKING);
    }
    if (design->has_batting) {
        add_cell(table, "%s, cut", word(sizes[0], WORD_BATTING));
        add_row(table, sizes, count, ROW_BATTING);
    }
}

static bool has_blocks(struct worked *const *sizes, size_t count)
{
    for (size_t i = 0; i < count; i++)
        if (count_blocks(sizes[i]) > 0)
            return true;
    return false;
}

static void write_table(struct document *document, const struct pattern *pattern, struct worked *const *sizes,
                        size_t count)
{
    const char **heads = rows_for(count + 1, sizeof *heads);
    heads[0] = pattern->sizes_count == 1 ? "" : "Size";
    for (size_t i = 0; i < count; i++)
        heads[i + 1] = pattern->sizes_count == 1 ? "This quilt" : pattern->sizes[sizes[i]->design->size].name;
    struct table *table = put_table(document, "Sizes, and what to buy for each", heads, count + 1);
    free(heads);
    add_cell(table, "top, finished");
    add_row(table, sizes, count, ROW_FINISHED);
    add_cell(table, "top, unfinished");
    add_row(table, sizes, count, ROW_UNFINISHED);
    if (has_blocks(sizes, count)) {
        add_cell(table, "blocks");
        add_row(table, sizes, count, ROW_BLOCKS);
    }
    write_cloth_rows(table, sizes, count);
    write_finishing_rows(table, sizes, count);
}

void write_cover(struct document *document, struct worked *const *sizes, size_t count)
{
    const struct pattern *pattern = document->pattern;
    char caption[120];
    write_title(document, pattern);
    if (count == 0)
        return;
    for (size_t i = 0; i < count; i++) {
        snprintf(caption, sizeof caption, "%.80s, finished", pattern->sizes[sizes[i]->design->size].name);
        put_picture(document, PICTURE_TOP, sizes[i], 0, pattern->sizes_count > 1 ? caption : "The top, finished");
    }
    write_table(document, pattern, sizes, count);
    put_picture(document, PICTURE_CHECKS, sizes[0], 0, "Check squares: 1 in and 25 mm where the printer keeps true "
        "size");
}
