/* write_finishing.c - backing panel by panel, batting, binding, sleeve, and how it lies on the bed.
 *
 * SPDX-License-Identifier: MIT */
#include <inttypes.h>
#include <stdlib.h>

#include "wording.h"

/* ---- backing ----------------------------------------------------------------------------------------------------- */

static const char *layout_name(int32_t layout)
{
    switch (layout) {
    case MUSLIN_BACKING_LAYOUT_ONE_WIDTH:
        return "one panel, its length along the quilt's length";
    case MUSLIN_BACKING_LAYOUT_ONE_WIDTH_TURNED:
        return "one panel, its length along the quilt's width";
    case MUSLIN_BACKING_LAYOUT_SEAMS_ALONG:
        return "panels side by side, seams along the quilt's length";
    case MUSLIN_BACKING_LAYOUT_SEAMS_ACROSS:
        return "panels one below the other, seams along its width";
    case MUSLIN_BACKING_LAYOUT_CENTRE_ALONG:
        return "a whole panel in the middle, equal sides, seams along the length";
    case MUSLIN_BACKING_LAYOUT_CENTRE_ACROSS:
        return "a whole panel in the middle, equal sides, seams along the width";
    case MUSLIN_BACKING_LAYOUT_INSERT_ALONG:
        return "one panel split lengthwise, an insert between its halves, seams along the length";
    case MUSLIN_BACKING_LAYOUT_INSERT_ACROSS:
        return "one panel split lengthwise, an insert between its halves, seams along the width";
    default:
        return "another layout";
    }
}

void add_panels(struct line *line, const struct muslin_backing *backing)
{
    const bool has_insert = backing->layout == MUSLIN_BACKING_LAYOUT_INSERT_ALONG ||
                            backing->layout == MUSLIN_BACKING_LAYOUT_INSERT_ACROSS;
    add(line, "%" PRId64 " panel%s%s", backing->panels, plural(backing->panels), has_insert ? " and an insert" : "");
}

static void write_panels(struct document *document, const struct worked *worked)
{
    static const char *const heads[] = { "#Place", "Piece", "How many", "Cut, across the cloth x along it" };
    static const char *const roles[] = { "", "whole width", "middle, whole width", "side", "half", "insert" };
    struct table *table = put_table(document, worked->design->solve.tops > 1
                                    ? "Backing of each quilt, piece by piece in the order it is sewn"
                                    : "Backing, piece by piece in the order it is sewn", heads, 4);
    char text[WORD_ROOM];
    for (size_t i = 0; i < worked->panels_count; i++) {
        const struct muslin_panel *panel = &worked->panels[i];
        add_cell(table, "%d", (int)panel->position);
        add_cell(table, "%s", panel->role > 0 && panel->role <= 5 ? roles[panel->role] : "panel");
        add_cell(table, "%" PRId64 " piece%s", panel->count, plural(panel->count));
        add_cell(table, "%s", panel_size(worked, panel, text));
    }
}

static void write_other_backings(struct document *document, const struct worked *worked)
{
    static const char *const heads[] = { "Other layouts of the backing", "Cut from", "#Buy" };
    struct table *table = NULL;
    char text[WORD_ROOM];
    for (size_t i = 1; i < worked->backings_count; i++) {
        const struct muslin_backing *backing = &worked->backings[i];
        struct line panels = { NULL, 0, 0 };
        if (!backing->possible)
            continue;
        if (table == NULL)
            table = put_table(document, NULL, heads, 3);
        add_cell(table, "%s", layout_name(backing->layout));
        add_panels(&panels, backing);
        add_cell(table, "%s", panels.text);
        free(panels.text);
        add_cell(table, "%s", to_buy(worked, worked->backs[i].bought, text));
    }
}

/* An insert is cut across the cloth and turned; of several pieces it is joined before it is sewn in. */
static void write_insert(struct document *document, const struct worked *worked)
{
    const char *along = worked->backings[0].layout == MUSLIN_BACKING_LAYOUT_INSERT_ALONG ? "down" : "across";
    for (size_t i = 0; i < worked->panels_count; i++) {
        const struct muslin_panel *panel = &worked->panels[i];
        char text[WORD_ROOM];
        if (panel->role != MUSLIN_PANEL_ROLE_INSERT)
            continue;
        say(document, ITEM_POINT, 0, NULL, "Turn the insert a quarter: the %s across the cloth run %s the quilt.",
            measured(worked, panel->cut_width, text), along);
        if (panel->count > 1)
            say(document, ITEM_POINT, 0, NULL, "Join the %" PRId64 " pieces of the insert end to end first, and trim "
                "it to the length of the halves.", panel->count);
    }
}

static void write_backing(struct document *document, const struct worked *worked)
{
    const struct muslin_backing *best = &worked->backings[0];
    const struct muslin_backing_spec *spec = &worked->design->backing;
    const int64_t tops = worked->design->solve.tops;
    char text[WORD_ROOM];
    say(document, ITEM_SUBHEADING, 0, NULL, "Backing");
    say(document, ITEM_SAY, 0, NULL, "The back must measure at least %s: it stands out beyond the quilt on every side "
        "until it is quilted.", at_least_by(worked, best->needed_width, best->needed_length, text));
    to_buy(worked, worked->backs[0].bought, text);
    if (tops > 1)
        say(document, ITEM_POINT, 0, NULL, "Least cloth: %s. Buy %s for all %" PRId64 " quilts.",
            layout_name(best->layout), text, tops);
    else
        say(document, ITEM_POINT, 0, NULL, "Least cloth: %s. Buy %s.", layout_name(best->layout), text);
    write_panels(document, worked);
    write_insert(document, worked);
    if (best->seams > 0)
        say(document, ITEM_POINT, 0, NULL, "Trim the selvages off, sew the pieces with %s seams and press them open.",
            measured(worked, spec->allowance, text));
    if (best->seams > 0)
        say(document, ITEM_POINT, 0, NULL, "Sewn together it measures at least %s unfinished.",
            at_least_by(worked, best->joined_width, best->joined_length, text));
    if (is_nothing(worked, best->narrower_by))
        say(document, ITEM_CAUTION, 0, NULL, "The cloth for the back must have its full width: any narrower, and this "
            "layout needs more.");
    else
        say(document, ITEM_POINT, 0, NULL, "The cloth may be up to %s narrower and what is bought still be enough; the "
            "pieces are then cut otherwise.", at_most(worked, best->narrower_by, text));
    put_picture(document, PICTURE_BACKING, worked, 0, "Backing, with the quilt's outline");
    write_other_backings(document, worked);
}

/* ---- batting ----------------------------------------------------------------------------------------------------- */

/* Against the back, where there is one. */
static const char *how_far_out(const struct worked *worked)
{
    if (!worked->design->has_backing)
        return "it stands out beyond the quilt on every side";
    const muslin_len back = worked->backings[0].needed_width;
    if (worked->batting.width < back)
        return "it stands out beyond the quilt like the back, a little less";
    return worked->batting.width == back ? "it stands out beyond the quilt as far as the back"
                                         : "it stands out further than the back: trim it to that when they are layered";
}

static void write_batting(struct document *document, const struct worked *worked)
{
    const struct muslin_batting *batting = &worked->batting;
    const muslin_len roll = worked->design->batting.roll_width;
    const int64_t tops = worked->design->solve.tops;
    const char *each = tops > 1 ? " for each quilt" : "";
    char head[WORD_ROOM];
    char text[WORD_ROOM];
    char wide[WORD_ROOM];
    say(document, ITEM_SUBHEADING, 0, NULL, "%s", capital(worked, WORD_BATTING, head));
    say(document, ITEM_POINT, 0, NULL, "Cut %s%s: %s.", at_least_by(worked, batting->width, batting->length, text),
        each, how_far_out(worked));
    if (batting->package >= 0)
        say(document, ITEM_POINT, 0, NULL, "A package of %s covers that%s.",
            package_size(worked, text),
            batting->turned ? ", turned a quarter" : "");
    if (batting->joined_pieces > 1)
        say(document, ITEM_POINT, 0, NULL, "From the roll, %s wide: %" PRId64 " pieces laid edge to edge %s, sewn "
            "without overlapping; %s of the roll in all%s.", measured(worked, roll, wide), batting->joined_pieces,
            batting->joined_turned ? "across the quilt" : "along the quilt",
            to_buy(worked, batting->joined_length, text), each);
    if (batting->joined_pieces == 1)
        say(document, ITEM_POINT, 0, NULL, "From the roll, %s wide: one piece, %s long%s.",
            measured(worked, roll, wide), to_buy(worked, batting->joined_length, text), each);
}

/* ---- layers ------------------------------------------------------------------------------------------------------ */

static void write_layers(struct document *document, const struct worked *worked)
{
    say(document, ITEM_SUBHEADING, 0, NULL, "Layers and quilting");
    say(document, ITEM_POINT, 0, NULL, "Layer: spread the back on a flat floor or table, right side down and taut; on "
        "it the %s, and on that the top, right side up, pressed, in the middle of both.", word(worked, WORD_BATTING));
    say(document, ITEM_POINT, 0, NULL, "Baste: from the middle outwards, with long stitches or safety pins, a hand's "
        "breadth apart.");
    say(document, ITEM_POINT, 0, NULL, "Quilt: from the middle outwards, by hand or machine, no further apart than the "
        "maker of the %s says; then trim all layers even with the top.", word(worked, WORD_BATTING));
}

/* ---- binding ----------------------------------------------------------------------------------------------------- */

/* What the strips come to, counted where they are laid out. */
int64_t count_binding_strips(const struct worked *worked, muslin_len *together)
{
    int64_t strips = 0;
    muslin_len sum = 0;
    for (size_t i = 0; i < worked->bill_count; i++) {
        const struct bolt *bolt = &worked->bolts[i];
        for (size_t k = 0; k < bolt->places_count; k++) {
            const struct muslin_cutplan_place *place = &bolt->places[k];
            if (laid_for(worked, bolt->pieces[place->piece].label) != LAID_BINDING)
                continue;
            const int64_t count = place->count * times_of(bolt, &bolt->strips[place->strip]);
            const muslin_len lengths[] = { sum, place->width };
            const int64_t counts[] = { 1, count };
            strips += count;
            must(muslin_length_dot(lengths, counts, 2, &sum));
        }
    }
    if (together != NULL)
        *together = sum;
    return strips;
}

static void write_binding_length(struct document *document, const struct worked *worked)
{
    const struct muslin_binding_spec *spec = &worked->design->binding;
    const int64_t tops = worked->design->solve.tops;
    struct line line = { NULL, 0, 0 };
    char text[WORD_ROOM];
    muslin_len together;
    muslin_len ends;
    const int64_t strips = count_binding_strips(worked, &together);
    must(muslin_length_subtract(worked->binding_reckoned, worked->binding.perimeter, &ends));
    add(&line, "%" PRId64 " strips cut %s wide, ", strips, measured(worked, spec->binding_cut, text));
    add(&line, "%s together; ", measured(worked, together, text));
    if (strips > tops)
        add(&line, "%" PRId64 " joins%s take %s each. ", strips - tops,
            spec->join == MUSLIN_JOIN_DIAGONAL ? " on the slant" : "",
            measured(worked, worked->binding.loss_per_join, text));
    add(&line, "That makes %s%s: ", measured(worked, worked->binding_reckoned, text),
        tops > 1 ? " for each quilt" : "");
    add(&line, "%s round the quilt and ", measured(worked, worked->binding.perimeter, text));
    add(&line, "%s for the corners and for joining the ends.", measured(worked, ends, text));
    put(document, ITEM_POINT, 0, NULL, &line);
}

static void write_binding(struct document *document, const struct worked *worked)
{
    say(document, ITEM_SUBHEADING, 0, NULL, "Binding");
    say(document, ITEM_POINT, 0, NULL, "Of %s.", fabric_name(worked, worked->design->binding_fabric));
    write_binding_length(document, worked);
    say(document, ITEM_POINT, 0, NULL, "Press the joins open and the strip in half lengthwise, right side out. When "
        "the quilt is quilted and trimmed, sew the raw edges of the binding to its front with "
        "the seam allowance, from the middle of a side; at a corner stop one seam allowance before the edge, fold the "
        "strip up and down again and go on. Join the ends, fold the binding over the edge and sew its fold down on the "
        "back, over the seam.");
}

/* ---- sleeve and bed ---------------------------------------------------------------------------------------------- */

static void write_sleeve(struct document *document, const struct worked *worked)
{
    const struct muslin_hanging *sleeve = &worked->sleeve;
    char text[WORD_ROOM];
    char finished[WORD_ROOM];
    say(document, ITEM_SUBHEADING, 0, NULL, "Hanging sleeve, if the quilt is to hang");
    const struct muslin_extra_cut_spec *cut = &worked->extras[worked->extras_count - 1];
    say(document, ITEM_POINT, 0, NULL, "Of %s cut%s %" PRId64 " piece%s of %s%s; finished %s long%s.",
        fabric_name(worked, worked->design->sleeve_fabric),
        worked->design->solve.tops > 1 ? " for each quilt" : "", sleeve->sleeves, plural(sleeve->sleeves),
        measured_by(worked, sleeve->sleeve_cut_length, sleeve->sleeve_cut_width, text),
        cut->kind == MUSLIN_BLANK_JOINED ? ", joined from strips, as the cloth is not so wide" : "",
        measured(worked, sleeve->sleeve_finished, finished), sleeve->sleeves > 1 ? " each" : "");
    say(document, ITEM_POINT, 0, NULL, "Hem the short ends, sew the long edges together to a tube, and sew it to the "
        "back below the upper binding by hand, along both folds, with a little slack towards you for the rod.");
}

static void add_drop(struct line *line, const struct worked *worked, muslin_len drop, const char *where)
{
    char text[WORD_ROOM];
    if (drop >= 0)
        add(line, "%s it hangs %s", where, measured(worked, drop, text));
    else
        add(line, "%s it is %s short of the edge", where, measured(worked, -drop, text));
}

static void write_bed(struct document *document, const struct worked *worked)
{
    const struct muslin_bed_cover *cover = &worked->cover;
    const struct design *design = worked->design;
    struct line line = { NULL, 0, 0 };
    char text[WORD_ROOM];
    say(document, ITEM_SUBHEADING, 0, NULL, "On the bed");
    add(&line, "In the middle of a mattress of %s", measured_by(worked, design->bed_width, design->bed_length, text));
    if (design->bed_depth > 0)
        add(&line, ", %s deep", measured(worked, design->bed_depth, text));
    add(&line, ", its upper edge at the head: ");
    add_drop(&line, worked, cover->side_drop, "on each side");
    add_drop(&line, worked, cover->foot_drop, ", at the foot");
    add(&line, ".");
    put(document, ITEM_POINT, 0, NULL, &line);
    if (design->bed_depth > 0 && cover->reaches_depth)
        say(document, ITEM_POINT, 0, NULL, "It covers the mattress down to its lower edge.");
    if (design->bed_depth > 0 && !cover->reaches_depth && cover->short_width > 0)
        say(document, ITEM_POINT, 0, NULL, "To cover the sides of the mattress it would have to be %s wider.",
            at_least(worked, cover->short_width, text));
    if (design->bed_depth > 0 && !cover->reaches_depth && cover->short_length > 0)
        say(document, ITEM_POINT, 0, NULL, "To cover its foot it would have to be %s longer.",
            at_least(worked, cover->short_length, text));
    if (cover->corner_hang > 0)
        say(document, ITEM_CAUTION, 0, NULL, "At the foot the corners hang longer than the drop: %s below the top of "
            "the mattress. See that nobody trips over them.", measured(worked, cover->corner_hang, text));
    say(document, ITEM_POINT, 0, NULL, "Quilting takes up some of width and length: measure a quilted sample.");
}

void write_finishing(struct document *document, const struct worked *worked)
{
    const struct design *design = worked->design;
    if (design->has_backing || design->has_batting || design->has_binding || design->has_sleeve || design->has_bed)
        say(document, ITEM_HEADING, 0, NULL, "Finishing");
    if (design->has_backing)
        write_backing(document, worked);
    if (design->has_batting)
        write_batting(document, worked);
    if (design->has_backing && design->has_batting)
        write_layers(document, worked);
    if (design->has_binding)
        write_binding(document, worked);
    if (worked->sleeve.sleeves > 0)
        write_sleeve(document, worked);
    if (design->has_bed)
        write_bed(document, worked);
}
