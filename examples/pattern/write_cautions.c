/* write_cautions.c - what is assumed, and where work can hurt or cloth be lost.
 *
 * SPDX-License-Identifier: MIT */
#include "wording.h"

static bool has_slant(const struct worked *worked)
{
    for (size_t i = 0; i < worked->cuts_count; i++)
        if (worked->cuts[i].again != MUSLIN_CUT_AGAIN_NO || worked->cuts[i].pitch > 0 ||
            worked->cuts[i].source == MUSLIN_CUT_SOURCE_TEMPLATE)
            return true;
    return false;
}

static void write_assumptions(struct document *document, const struct worked *worked)
{
    char text[WORD_ROOM];
    say(document, ITEM_HEADING, 0, NULL, "What is assumed");
    say(document, ITEM_POINT, 0, NULL, "Every seam takes its allowance, fold included, and every piece is cut as "
        "said%s.",
        has_test_block(worked) ? ": the test block shows whether yours do" : "");
    say(document, ITEM_POINT, 0, NULL, "Cloth is usable over the width said from end to end, without flaws.");
    if (worked->design->solve.end_trim > 0 && worked->sets_count > 0)
        say(document, ITEM_POINT, 0, NULL, "Squaring takes %s at each end of a strip set.",
            measured(worked, worked->design->solve.end_trim, text));
    if (worked->totals.exact == 0)
        say(document, ITEM_POINT, 0, NULL, "Lengths on the slant are no whole fractions; cut sizes of triangles are "
            "brought to the next %s.", measured(worked, worked->design->solve.grid, text));
}

void write_before(struct document *document, const struct worked *worked)
{
    say(document, ITEM_HEADING, 0, NULL, "Before you cut");
    say(document, ITEM_CAUTION, 0, NULL, "Rotary cutters, irons, needles and pins hurt: close the blade each time you "
        "put the cutter down, cut away from yourself with the hand flat on the ruler, let no iron stand hot alone, "
        "count the pins, and keep all of it from children.");
    say(document, ITEM_CAUTION, 0, NULL, "Cutting cannot be undone: cut for %s.",
        has_test_block(worked) ? "the test block first" :
        has_test_unit(worked) ? "the test unit first" : "one part first, sew it and measure it");
    say(document, ITEM_CAUTION, 0, NULL, "Cloth cut folded must lie smooth and square to the fold, or strips come out "
        "with a bend in the middle: open the first strip and look.");
}

void write_cautions(struct document *document, const struct worked *worked)
{
    write_assumptions(document, worked);
    say(document, ITEM_HEADING, 0, NULL, "Cautions");
    if (has_slant(worked))
        say(document, ITEM_CAUTION, 0, NULL, "Edges that were cut on the slant (triangles, diamonds) stretch: press "
            "them without pushing.");
    say(document, ITEM_SAY, 0, NULL, "Nothing here says that a quilt meets a safety standard; where one is sold or "
        "given to a child, ask which rules hold where you live.");
}
