/* write_templates.c - shapes that a ruler alone does not cut, true size; a drawing to colour.
 *
 * SPDX-License-Identifier: MIT */
#include <inttypes.h>

#include "wording.h"

static bool wants_template(const struct muslin_solution_cut *cut)
{
    return cut->source == MUSLIN_CUT_SOURCE_TEMPLATE || cut->shape == MUSLIN_CUT_SHAPE_WEDGES ||
           cut->shape == MUSLIN_CUT_SHAPE_OCTAGONS || cut->shape == MUSLIN_CUT_SHAPE_HEXAGONS;
}

static size_t count_templates(const struct worked *worked)
{
    size_t count = 0;
    for (size_t i = 0; i < worked->cuts_count; i++)
        count += wants_template(&worked->cuts[i]);
    return count;
}

void write_templates(struct document *document, const struct worked *worked)
{
    if (count_templates(worked) > 0) {
        char caption[160];
        say(document, ITEM_HEADING, 0, NULL, "Templates");
        say(document, ITEM_SAY, 0, NULL, "Print these at their true size, not fitted to the page, and measure the "
            "check squares on the first page. The outer line is the cut line, the dashed one the seam line; the arrow "
            "lies with the lengthwise grain. Of pieces marked as reversed turn the template over.");
        for (size_t i = 0; i < worked->cuts_count; i++) {
            const size_t cut = worked->order[i];
            const struct muslin_solution_cut *row = &worked->cuts[cut];
            if (!wants_template(row))
                continue;
            snprintf(caption, sizeof caption, "Template [%d], %.60s: cut %" PRId64 "%s", worked->piece[cut],
                     fabric_name(worked, row->fabric), row->count,
                     row->hand == MUSLIN_HAND_MIRRORED ? ", reversed" : "");
            put_picture(document, PICTURE_TEMPLATE, worked, (int64_t)cut, caption);
        }
    }
    say(document, ITEM_HEADING, 0, NULL, "To %s", word(worked, WORD_COLOR));
    put_picture(document, PICTURE_TOP_BLANK, worked, 0, "The top without its fabrics, to try your own");
}
