/* write_buying.c - what to buy: a table of cloth and of what goes inside and behind, and where that is near its edge.
 *
 * SPDX-License-Identifier: MIT */
#include <inttypes.h>
#include <stdlib.h>
#include <string.h>

#include "wording.h"

/* ---- what it is for ---------------------------------------------------------------------------------------------- */

static void add_uses(struct line *line, const struct worked *worked, muslin_id fabric)
{
    bool in_top = false;
    size_t uses = 0;
    for (size_t i = 0; i < worked->cuts_count; i++)
        in_top = in_top || worked->cuts[i].fabric == fabric;
    if (in_top)
        add(line, "%stop", comma(uses++, 9));
    if (worked->design->has_binding && worked->design->binding_fabric == fabric)
        add(line, "%sbinding", comma(uses++, 9));
    if (worked->sleeve.sleeves > 0 && worked->design->sleeve_fabric == fabric)
        add(line, "%ssleeve", comma(uses++, 9));
}

/* ---- rows -------------------------------------------------------------------------------------------------------- */

static void write_strips_row(struct table *table, const struct worked *worked, const struct cloth *cloth,
                             const struct bolt *bolt)
{
    const int64_t missing = bolt->strips_needed - cloth->strips_have;
    char text[WORD_ROOM];
    add_cell(table, "%" PRId64 " strips", bolt->strips_needed);
    measured_by(worked, cloth->usable_width, cloth->strip_cut, text);
    if (cloth->strips_have == 0)
        add_cell(table, "%" PRId64 " strips of %s", bolt->strips_needed, text);
    else if (missing > 0)
        add_cell(table, "from your bundle: all %" PRId64 " strips of %s; %" PRId64 " more are missing",
                 cloth->strips_have, text, missing);
    else
        add_cell(table, "from your bundle: %" PRId64 " strips of %s", bolt->strips_needed, text);
    if (cloth->strips_have >= bolt->strips_needed)
        add_cell(table, "%" PRId64 " of %" PRId64 " strips", cloth->strips_have - bolt->strips_needed,
                 cloth->strips_have);
    else
        add_cell(table, cloth->strips_have == 0 ? "none" : "too few");
}

/* What is told as needed is on a mark of the ruler: what is told to be spare makes it up to what is bought. */
static const char *spare_of(const struct worked *worked, muslin_len needed, muslin_len spare, char text[WORD_ROOM])
{
    const muslin_len lengths[] = { spare, needed, to_mark(worked, needed) };
    const int64_t counts[] = { 1, 1, -1 };
    muslin_len told;
    must(muslin_length_dot(lengths, counts, 3, &told));
    return at_most(worked, told, text);
}

static void add_spare(struct table *table, const struct worked *worked, muslin_len needed, muslin_len spare)
{
    char text[WORD_ROOM];
    add_cell(table, "%s", is_nothing(worked, spare) ? "none" : spare_of(worked, needed, spare, text));
}

static void write_bolt_row(struct table *table, const struct worked *worked, const struct muslin_fabric_yardage *row)
{
    char text[WORD_ROOM];
    add_cell(table, "%s", at_least(worked, row->cloth_length, text));
    add_cell(table, "%s", to_buy(worked, row->bought, text));
    add_spare(table, worked, row->cloth_length, row->spare);
}

static void write_cloth_row(struct table *table, const struct worked *worked, size_t fabric)
{
    const struct muslin_fabric_yardage *row = &worked->bill[fabric];
    const struct cloth *cloth = cloth_of(worked->design, row->fabric);
    struct line uses = { NULL, 0, 0 };
    add_cell(table, "%s, %s", cloth->letter, cloth->name);
    if (cloth->strip_cut > 0)
        write_strips_row(table, worked, cloth, &worked->bolts[fabric]);
    else
        write_bolt_row(table, worked, row);
    add_uses(&uses, worked, row->fabric);
    add_cell(table, "%s", uses.text == NULL ? "" : uses.text);
    free(uses.text);
}

static void write_backing_row(struct table *table, const struct worked *worked)
{
    const struct design *design = worked->design;
    const struct muslin_backing *best = &worked->backings[0];
    const char *name = design->backing_fabric != 0 ? fabric_name(worked, design->backing_fabric) : design->backing_name;
    const struct muslin_purchase *backs = &worked->backs[0];
    const int64_t tops = design->solve.tops;
    struct line panels = { NULL, 0, 0 };
    char text[WORD_ROOM];
    add_cell(table, "backing%s%s, %s wide", name == NULL ? "" : ": ", name == NULL ? "" : name,
             measured(worked, design->backing.fabric_width, text));
    add_cell(table, "%s", at_least(worked, backs->needed, text));
    add_cell(table, "%s", to_buy(worked, backs->bought, text));
    add_spare(table, worked, backs->needed, backs->spare);
    add_panels(&panels, best);
    if (best->pieces > best->panels)
        add(&panels, ", %" PRId64 " pieces", best->pieces);
    if (tops > 1)
        add_cell(table, "backs of all %" PRId64 " quilts, of each: %s", tops, panels.text);
    else
        add_cell(table, "back of each quilt: %s", panels.text);
    free(panels.text);
}

static void write_batting_row(struct table *table, const struct worked *worked)
{
    const struct muslin_batting *batting = &worked->batting;
    const int64_t tops = worked->design->solve.tops;
    char text[WORD_ROOM];
    char wide[WORD_ROOM];
    add_cell(table, "%s", word(worked, WORD_BATTING));
    at_least_by(worked, batting->width, batting->length, text);
    if (tops > 1)
        add_cell(table, "%" PRId64 " pieces of %s", tops, text);
    else
        add_cell(table, "%s", text);
    if (batting->package >= 0 && tops > 1)
        add_cell(table, "%" PRId64 " packages of %s", tops, package_size(worked, text));
    else if (batting->package >= 0)
        add_cell(table, "a package of %s", package_size(worked, text));
    else if (batting->joined_pieces > 0)
        add_cell(table, "%s of the roll, %s wide", to_buy(worked, worked->batting_from_roll, text),
                 measured(worked, worked->design->batting.roll_width, wide));
    else
        add_cell(table, "from a roll");
    add_cell(table, "%s", "");
    if (tops > 1)
        add_cell(table, "middle of all %" PRId64 " quilts", tops);
    else
        add_cell(table, "middle of each quilt");
}

static void write_table(struct document *document, const struct worked *worked)
{
    static const char *const heads[] = { "What", "Needed", "Buy", "To spare", "For" };
    struct table *table = put_table(document, "To buy", heads, 5);
    for (size_t i = 0; i < worked->bill_count; i++)
        write_cloth_row(table, worked, i);
    if (worked->design->has_backing)
        write_backing_row(table, worked);
    if (worked->design->has_batting)
        write_batting_row(table, worked);
}

/* ---- near the edge ----------------------------------------------------------------------------------------------- */

static void write_no_spare(struct document *document, const struct worked *worked, const char *name,
                           muslin_len needed, muslin_len bought, muslin_len spare)
{
    char text[WORD_ROOM];
    char left[WORD_ROOM];
    char safer[WORD_ROOM];
    muslin_len more;
    must(muslin_length_add(bought, worked->design->buying.step, &more));
    to_buy(worked, bought, text);
    to_buy(worked, more, safer);
    if (is_nothing(worked, spare))
        say(document, ITEM_CAUTION, 0, NULL, "%s: buy at least %s: that leaves nothing to spare, %s is safer.", name,
            text, safer);
    else
        say(document, ITEM_CAUTION, 0, NULL, "%s: buy at least %s: that leaves only %s to spare, %s is safer.", name,
            text, spare_of(worked, needed, spare, left), safer);
}

/* Too few strips of one fabric are told; the fabric that gives the fewest tops says how many there are. */
static void write_strip_counts(struct document *document, const struct worked *worked)
{
    int64_t fewest = -1;
    bool shares = false;
    for (size_t i = 0; i < worked->bill_count; i++) {
        const struct cloth *cloth = cloth_of(worked->design, worked->bill[i].fabric);
        const struct bolt *bolt = &worked->bolts[i];
        if (cloth->strip_cut == 0 || cloth->strips_have == 0)
            continue;
        fewest = fewest < 0 || bolt->tops_given < fewest ? bolt->tops_given : fewest;
        shares = shares || bolt->strips_needed * bolt->tops_given > cloth->strips_have;
        if (cloth->strips_have < bolt->strips_needed)
            say(document, ITEM_CAUTION, 0, NULL, "%s: %" PRId64 " strips are needed, and there are only %" PRId64
                ": %" PRId64 " more are missing.", cloth->name, bolt->strips_needed, cloth->strips_have,
                bolt->strips_needed - cloth->strips_have);
    }
    if (fewest == 0)
        say(document, ITEM_CAUTION, 0, NULL, "The strips that there are do not suffice for one top of this size.");
    if (fewest > 0)
        say(document, ITEM_POINT, 0, NULL, "The strips that there are suffice for %" PRId64 " top%s of this size%s%s.",
            fewest, plural(fewest), fewest == TOPS_TRIED ? " or more" : "",
            shares ? ", cut together: what is short in the last set of one serves the next" : "");
}

static void write_edges(struct document *document, const struct worked *worked, size_t fabric)
{
    const struct muslin_fabric_yardage *row = &worked->bill[fabric];
    const struct cloth *cloth = cloth_of(worked->design, row->fabric);
    if (cloth->strip_cut > 0)
        return;
    if (is_little(worked, row->spare))
        write_no_spare(document, worked, cloth->name, row->cloth_length, row->bought, row->spare);
}

/* A quarter of a yard may lie in the shop as a fat quarter. */
static bool is_a_quarter(const struct worked *worked, size_t fabric)
{
    enum { FAT_QUARTER = 9 * MUSLIN_TICKS_PER_INCH };
    return worked->bill[fabric].bought <= FAT_QUARTER &&
           cloth_of(worked->design, worked->bill[fabric].fabric)->strip_cut == 0;
}

static void write_no_quarters(struct document *document, const struct worked *worked)
{
    struct line line = { NULL, 0, 0 };
    size_t count = 0;
    size_t told = 0;
    for (size_t i = 0; i < worked->bill_count; i++)
        count += is_a_quarter(worked, i);
    for (size_t i = 0; i < worked->bill_count; i++)
        if (is_a_quarter(worked, i))
            add(&line, "%s%s", comma(told++, count), fabric_name(worked, worked->bill[i].fabric));
    if (told == 0)
        return;
    add(&line, ": off the bolt, no fat quarter: strips go right across it.");
    put(document, ITEM_POINT, 0, NULL, &line);
}

static void write_backing_edge(struct document *document, const struct worked *worked)
{
    const struct muslin_purchase *backs = &worked->backs[0];
    if (is_little(worked, backs->spare))
        write_no_spare(document, worked, "backing", backs->needed, backs->bought, backs->spare);
}

static void write_added(struct document *document, const struct worked *worked)
{
    const struct muslin_yardage_spec *buying = &worked->design->buying;
    char text[WORD_ROOM];
    if (buying->shrinkage > 0)
        say(document, ITEM_POINT, 0, NULL, "For shrinking along the cloth %d.%02d per cent are counted: needed is what "
            "must be left after washing.", buying->shrinkage / 10000, buying->shrinkage / 100 % 100);
    else
        say(document, ITEM_POINT, 0, NULL, "Shrinkage is not counted: of cloth that will be washed first buy more.");
    if (buying->extra > 0)
        say(document, ITEM_POINT, 0, NULL, "%s more of each cloth is bought, for mistakes.",
            measured(worked, buying->extra, text));
}

/* One cloth for front and back is bought in one length, where both are reckoned of one width. */
static void write_same_cloth(struct document *document, const struct worked *worked)
{
    const muslin_id fabric = worked->design->backing_fabric;
    char text[WORD_ROOM];
    const muslin_len width = worked->design->backing.fabric_width;
    for (size_t i = 0; worked->design->has_backing && fabric != 0 && i < worked->bill_count; i++) {
        const muslin_len lengths[] = { worked->bill[i].bought, worked->backs[0].bought };
        muslin_len both;
        if (worked->bill[i].fabric != fabric)
            continue;
        must(muslin_length_sum(lengths, 2, &both));
        if (cloth_of(worked->design, fabric)->usable_width == width)
            say(document, ITEM_POINT, 0, NULL, "%s is bought for the top and for the back: %s in all.",
                fabric_name(worked, fabric), to_buy(worked, both, text));
        else
            say(document, ITEM_POINT, 0, NULL, "%s is bought for the top and for the back, of two widths: as two "
                "lengths.", fabric_name(worked, fabric));
    }
}

void write_buying(struct document *document, const struct worked *worked)
{
    say(document, ITEM_HEADING, 0, NULL, "What to buy");
    write_table(document, worked);
    for (size_t i = 0; i < worked->bill_count; i++)
        write_edges(document, worked, i);
    write_no_quarters(document, worked);
    if (worked->design->has_backing)
        write_backing_edge(document, worked);
    write_strip_counts(document, worked);
    write_same_cloth(document, worked);
    if (worked->design->has_batting && worked->batting.package < 0 && worked->batting.joined_pieces == 0)
        say(document, ITEM_POINT, 0, NULL, "No usual package of %s is large enough: join pieces edge to edge, without "
            "overlapping.", word(worked, WORD_BATTING));
    write_added(document, worked);
}
