/* tags.c - the tree of what a page shows.
 *
 * SPDX-License-Identifier: MIT */
#include "tags.h"

#include <stdlib.h>
#include <string.h>

/* ---- the tree ---------------------------------------------------------------------------------------------------- */

void tags_open(struct tags *tags, const char *tag, int level)
{
    if (tags->used == TAGS_DEEPEST)
        return;
    cairo_tag_begin(tags->cairo, tag, NULL);
    tags->open[tags->used] = tag;
    tags->level[tags->used++] = level;
}

void tags_close(struct tags *tags)
{
    if (tags->used > 0)
        cairo_tag_end(tags->cairo, tags->open[--tags->used]);
}

void tags_leaf(struct tags *tags, const char *tag)
{
    cairo_tag_begin(tags->cairo, tag, NULL);
}

void tags_leaf_end(struct tags *tags, const char *tag)
{
    cairo_tag_end(tags->cairo, tag);
}

static void tell(struct tags *tags, struct told told)
{
    if (tags->told_used == tags->told_room) {
        tags->told_room = 2 * tags->told_room + 32;
        tags->told = realloc(tags->told, tags->told_room * sizeof *tags->told);
        if (tags->told == NULL)
            must(MUSLIN_ERR_NO_MEMORY);
    }
    tags->told[tags->told_used++] = told;
}

void tags_figure(struct tags *tags, char *said)
{
    tell(tags, (struct told){ .said = said });
    tags_leaf(tags, "Figure");
}

void tags_head(struct tags *tags, bool of_row)
{
    tell(tags, (struct told){ .is_head = true, .of_row = of_row });
    tags_leaf(tags, "TH");
}

void tags_begin(struct tags *tags, cairo_t *cairo)
{
    *tags = (struct tags){ .cairo = cairo };
    tags_open(tags, "Document", 0);
}

void tags_end(struct tags *tags)
{
    while (tags->used > 0)
        tags_close(tags);
}

void tags_free(struct tags *tags)
{
    for (size_t i = 0; i < tags->told_used; i++)
        free(tags->told[i].said);
    free(tags->told);
    tags->told = NULL;
    tags->told_used = 0;
}

/* ---- lists ------------------------------------------------------------------------------------------------------- */

static int innermost(const struct tags *tags)
{
    return tags->used > 0 ? tags->level[tags->used - 1] : 0;
}

static void close_deeper(struct tags *tags, int level)
{
    while (innermost(tags) > level)
        tags_close(tags);
}

/* A list has the tags L, LI and LBody open while it goes on. */
static void begin_point(struct tags *tags, int level)
{
    close_deeper(tags, level);
    if (innermost(tags) == level) {
        tags_close(tags);
        tags_close(tags);
    } else {
        tags_open(tags, "L", level);
    }
    tags_open(tags, "LI", level);
}

void tags_place(struct tags *tags, const struct flow *flow, const struct strip *strip)
{
    enum { STEPS = 1, POINTS = 2 };
    if (!strip->first || strip->kind == STRIP_SPACE)
        return;
    const struct item *item = strip->item != NO_ITEM ? &flow->document->items[strip->item] : NULL;
    bool is_line = strip->kind == STRIP_LINE && item != NULL;
    if (is_line && item->kind == ITEM_STEP)
        begin_point(tags, STEPS);
    else if (is_line && item->kind == ITEM_POINT)
        begin_point(tags, POINTS + item->depth);
    else
        close_deeper(tags, strip->in_step ? STEPS : 0);
}

const char *tags_of(const struct tags *tags, const struct flow *flow, const struct strip *strip)
{
    switch (flow->document->items[strip->item].kind) {
    case ITEM_TITLE:
        return "H1";
    case ITEM_SIZE:
        return "H2";
    case ITEM_HEADING:
        return tags->by_size ? "H3" : "H2";
    case ITEM_SUBHEADING:
        return tags->by_size ? "H4" : "H3";
    default:
        return "P";
    }
}
