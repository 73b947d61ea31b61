/* buy.c - what to buy, and how to cut it: a plan for each fabric, strip by strip, binding included.
 *
 * SPDX-License-Identifier: MIT */
#include <inttypes.h>
#include <stdlib.h>

#include "sheet.h"

/* ---- the plans -------------------------------------------------------------------------------------------------- */

/* Ten inches more than round will do for the corners and for joining the ends; twelve are reckoned at first. */
enum { ENDS_LEAST = 10 * INCH };

/* A last strip of which the join takes more than half is not cut, where the others go round with enough to spare. */
static muslin_len without_stub(const struct muslin_binding *binding, muslin_len whole)
{
    const muslin_len adds = whole - binding->loss_per_join;
    const muslin_len others = binding->joined - adds;
    const int is_stub = binding->length - others < binding->loss_per_join;
    return binding->joins > 0 && is_stub && others - binding->perimeter >= ENDS_LEAST ? others : binding->length;
}

/* The usual binding, of the first fabric: strips of 2 1/2 in, joined on the slant. */
static struct muslin_extra_cut_spec binding_of(struct sheet *sheet)
{
    const struct muslin_node_size size = size_of(sheet, sheet->design->top);
    struct muslin_binding_spec spec = MUSLIN_BINDING_SPEC_INIT;
    struct muslin_binding binding = { .size = (uint32_t)sizeof binding };
    struct muslin_extra_cut_spec cut = MUSLIN_EXTRA_CUT_SPEC_INIT;
    spec.quilt_width = size.finished_width;
    spec.quilt_length = size.finished_height;
    must(muslin_binding_plan(&spec, &binding, NULL), NULL);
    sheet->binding_length = without_stub(&binding, spec.strip_length);
    sheet->binding_round = binding.perimeter;
    sheet->binding_loss = binding.loss_per_join;
    cut.fabric = sheet->design->cloths[0].id;
    cut.kind = MUSLIN_BLANK_JOINED;
    cut.cut_width = sheet->binding_length;
    cut.cut_length = spec.binding_cut;
    cut.join_loss = binding.loss_per_join;
    return cut;
}

/* Long strips are joined, as the cut list has them, so nothing is cut lengthwise. Half an inch of each fabric goes into
 * straightening its end. */
void read_yardage(struct sheet *sheet)
{
    struct muslin_yardage_spec spec = MUSLIN_YARDAGE_SPEC_INIT;
    struct muslin_problem problem = MUSLIN_PROBLEM_INIT;
    struct muslin_allocator allocator;
    const struct muslin_extra_cut_spec binding = binding_of(sheet);
    size_t *count = &sheet->bill_count;
    spec.flags = MUSLIN_CUTPLAN_NO_PANELS;
    spec.straightening = STRAIGHTENING;
    spec.long_pieces = MUSLIN_LONG_JOINED;
    must(muslin_allocator_libc(&allocator), NULL);
    must(muslin_yardage_create(sheet->solution, &spec, &binding, sizeof binding, 1, &allocator, NULL, NULL,
                               &sheet->yardage, &problem), &problem);
    must(muslin_yardage_fabrics(sheet->yardage, NULL, 0, 0, count, NULL), NULL);
    sheet->bill = calloc(*count + 1, sizeof *sheet->bill);
    if (sheet->bill == NULL)
        must(MUSLIN_ERR_NO_MEMORY, NULL);
    must(muslin_yardage_fabrics(sheet->yardage, sheet->bill, sizeof *sheet->bill, *count, count, NULL), NULL);
}

struct bolt read_bolt(const struct sheet *sheet, size_t fabric)
{
    struct bolt bolt = { .strips = NULL };
    const struct muslin_cutplan *plan;
    must(muslin_yardage_plan(sheet->yardage, (int64_t)fabric, &plan, NULL), NULL);
    must(muslin_cutplan_strips(plan, NULL, 0, 0, &bolt.strips_count, NULL), NULL);
    must(muslin_cutplan_places(plan, NULL, 0, 0, &bolt.places_count, NULL), NULL);
    must(muslin_cutplan_pieces(plan, NULL, 0, 0, &bolt.pieces_count, NULL), NULL);
    bolt.strips = calloc(bolt.strips_count + 1, sizeof *bolt.strips);
    bolt.places = calloc(bolt.places_count + 1, sizeof *bolt.places);
    bolt.pieces = calloc(bolt.pieces_count + 1, sizeof *bolt.pieces);
    if (bolt.strips == NULL || bolt.places == NULL || bolt.pieces == NULL)
        must(MUSLIN_ERR_NO_MEMORY, NULL);
    must(muslin_cutplan_strips(plan, bolt.strips, sizeof *bolt.strips, bolt.strips_count, &bolt.strips_count, NULL),
         NULL);
    must(muslin_cutplan_places(plan, bolt.places, sizeof *bolt.places, bolt.places_count, &bolt.places_count, NULL),
         NULL);
    must(muslin_cutplan_pieces(plan, bolt.pieces, sizeof *bolt.pieces, bolt.pieces_count, &bolt.pieces_count, NULL),
         NULL);
    return bolt;
}

void free_bolt(struct bolt *bolt)
{
    free(bolt->strips);
    free(bolt->places);
    free(bolt->pieces);
}

/* Labels are rows of the cut list; binding comes behind the last. */
const char *place_name(const struct sheet *sheet, const struct bolt *bolt, size_t place, char text[WORD])
{
    const int64_t label = bolt->pieces[bolt->places[place].piece].label;
    if ((size_t)label < sheet->cuts_count)
        snprintf(text, WORD, "[%d]", sheet->piece[label]);
    else
        snprintf(text, WORD, "binding");
    return text;
}

/* ---- the page --------------------------------------------------------------------------------------------------- */

static const char *yards(muslin_len length, char text[WORD])
{
    struct muslin_format_spec spec = MUSLIN_FORMAT_SPEC_INIT;
    spec.style = MUSLIN_STYLE_YARD_FRACTION;
    spec.denominator = 8;
    must(muslin_length_format(length, &spec, text, WORD, NULL, NULL, NULL), NULL);
    return text;
}

/* A strip that is told by its length: taken whole, for a strip set or to be joined. */
static int is_whole(const struct sheet *sheet, const struct bolt *bolt, size_t place)
{
    const int64_t label = bolt->pieces[bolt->places[place].piece].label;
    return (size_t)label >= sheet->cuts_count || sheet->cuts[label].source == MUSLIN_CUT_SET_STRIP ||
           is_too_long(&sheet->cuts[label]);
}

static int is_square(const struct sheet *sheet, const struct bolt *bolt, size_t place)
{
    const int64_t label = bolt->pieces[bolt->places[place].piece].label;
    const struct muslin_cut *cut = &sheet->cuts[label];
    return (size_t)label < sheet->cuts_count && cut->shape == MUSLIN_CUT_RECTANGLE && cut->cut_width == cut->cut_height;
}

static void add_place(struct line *line, const struct sheet *sheet, const struct bolt *bolt,
                      const struct muslin_plan_strip *strip, size_t place)
{
    const struct muslin_plan_place *row = &bolt->places[place];
    char text[WORD];
    char name[WORD];
    place_name(sheet, bolt, place, name);
    if (is_whole(sheet, bolt, place) && row->count > 1)
        add(line, "%" PRId64 " pieces %s long for %s", row->count, inches(row->width, text), name);
    else if (is_whole(sheet, bolt, place))
        add(line, "%s long for %s", inches(row->width, text), name);
    else if (is_square(sheet, bolt, place))
        add(line, "%" PRId64 " square%s %s", row->count, plural(row->count), name);
    else
        add(line, "%" PRId64 " of %s", row->count, name);
    if (row->turned && !is_whole(sheet, bolt, place) && !is_square(sheet, bolt, place))
        add(line, ", turned: cross-cut at %s", inches(row->width, text));
    if (row->trimmed) {
        add(line, ", trimmed from %s", inches(strip->height, text));
        add(line, " to %s high", inches(row->height, text));
    }
}

/* Pieces to be joined for a border: how much longer they may be left. */
static void add_free(struct line *line, const struct sheet *sheet, const struct bolt *bolt,
                     const struct muslin_plan_strip *strip)
{
    char text[WORD];
    char name[WORD];
    const muslin_len left = strip->width - strip->used;
    for (int64_t i = 0; i < strip->places; i++) {
        const size_t place = (size_t)(strip->first_place + i);
        const int64_t label = bolt->pieces[bolt->places[place].piece].label;
        if ((size_t)label >= sheet->cuts_count || !is_too_long(&sheet->cuts[label]) ||
            bolt->places[place].width >= strip->width)
            continue;
        add(line, left >= 4 * INCH ? ". %s of this strip are free: cut those for %s longer, so that their seam is not "
                                     "by a corner, and trim when the top is measured"
                                   : ". Only %s of this strip are free to leave those for %s longer",
            inches(left, text), place_name(sheet, bolt, place, name));
    }
}

static void print_strip(const struct sheet *sheet, const struct bolt *bolt, const struct muslin_plan_strip *strip)
{
    struct line line = { .used = 0 };
    char text[WORD];
    add(&line, "%" PRId64 " strip%s %s wide%s: ", strip->times, plural(strip->times), inches(strip->height, text),
        strip->times == 1 ? "" : ", from each");
    for (int64_t i = 0; i < strip->places; i++) {
        add(&line, "%s", i == 0 ? "" : "; ");
        add_place(&line, sheet, bolt, strip, (size_t)(strip->first_place + i));
    }
    add_free(&line, sheet, bolt, strip);
    print_line(&line, 4, 5);
}

/* ---- warnings ---------------------------------------------------------------------------------------------------- */

/* How much shorter the strips of all sets may be that this row of the cut list goes into. */
static muslin_len shorter_by(const struct sheet *sheet, size_t cut)
{
    muslin_len least = USABLE;
    for (size_t i = 0; i < sheet->sets_count; i++)
        if (sheet->sets[i].used && is_cut_for(sheet, cut, sheet->sets[i].node) && sheet->sets[i].shorter_by < least)
            least = sheet->sets[i].shorter_by;
    return least;
}

/* The narrowest cloth that it can be cut from as it is laid out; a strip for a set need only be as long as its segments
 * take. */
static muslin_len narrowest(const struct sheet *sheet, const struct bolt *bolt)
{
    muslin_len most = 0;
    for (size_t i = 0; i < bolt->strips_count; i++) {
        const struct muslin_plan_strip *strip = &bolt->strips[i];
        const int64_t label = bolt->pieces[bolt->places[strip->first_place].piece].label;
        muslin_len needed = strip->used;
        if ((size_t)label < sheet->cuts_count && sheet->cuts[label].source == MUSLIN_CUT_SET_STRIP)
            needed -= shorter_by(sheet, (size_t)label);
        most = needed > most ? needed : most;
    }
    return most;
}

/* Whether pieces of this row lie turned in one strip and not in another. */
static int lies_both_ways(const struct bolt *bolt, int64_t piece)
{
    int ways = 0;
    for (size_t i = 0; i < bolt->places_count; i++)
        if (bolt->places[i].piece == piece && bolt->places[i].width != bolt->places[i].height)
            ways |= bolt->places[i].turned ? 2 : 1;
    return ways == 3;
}

static void print_both_ways(const struct sheet *sheet, const struct bolt *bolt)
{
    struct line line = { .used = 0 };
    size_t found = 0;
    for (size_t i = 0; i < bolt->pieces_count; i++)
        if ((size_t)bolt->pieces[i].label < sheet->cuts_count && lies_both_ways(bolt, (int64_t)i))
            add(&line, "%s[%d]", found++ > 0 ? " and " : "", sheet->piece[bolt->pieces[i].label]);
    if (found == 0)
        return;
    add(&line, ": some lie along the cloth, some across it. Where a print would show that, or stretch matter, cut all "
        "of them alike; that may take more cloth.");
    print_line(&line, 4, 5);
}

static void add_to_buy(struct line *line, const struct muslin_fabric_yardage *row)
{
    enum { STEP = 36 * INCH / 8 };
    char text[WORD];
    add(line, "%s are needed. Buy ", inches(row->cloth_length, text));
    if (row->spare == 0) {
        add(line, "at least %s: that leaves nothing to spare, ", yards(row->bought, text));
        add(line, "%s is safer", yards(row->bought + STEP, text));
    } else {
        add(line, "%s, ", yards(row->bought, text));
        add(line, "%s to spare", inches(row->spare, text));
    }
    add(line, row->bought <= 9 * INCH ? " (off the bolt, no fat quarter). " : ". ");
}

static void print_fabric(const struct sheet *sheet, size_t fabric)
{
    const struct muslin_fabric_yardage *row = &sheet->bill[fabric];
    struct bolt bolt = read_bolt(sheet, fabric);
    struct line line = { .used = 0 };
    char text[WORD];
    const muslin_len least_width = narrowest(sheet, &bolt);
    add(&line, "%s: ", fabric_name(sheet, row->fabric));
    add_to_buy(&line, row);
    if (row->proven)
        add(&line, "Cut in two steps like this, no plan needs less. ");
    else
        add(&line, "Cut in two steps like this, no plan needs less than %s. ", inches(row->least, text));
    if (least_width < row->usable_width)
        add(&line, "It works down to %s of usable width.", inches(least_width, text));
    else
        add(&line, "It takes all of the %s across, with nothing to spare.", inches(row->usable_width, text));
    print_line(&line, 2, 2);
    for (size_t i = 0; i < bolt.strips_count; i++)
        print_strip(sheet, &bolt, &bolt.strips[i]);
    print_both_ways(sheet, &bolt);
    free_bolt(&bolt);
}

/* What the strips come to, joined: counted where they are laid out. */
static void print_binding(const struct sheet *sheet)
{
    struct line line = { .used = 0 };
    char text[WORD];
    muslin_len together = 0;
    int64_t strips = 0;
    struct bolt bolt = read_bolt(sheet, 0);
    for (size_t i = 0; i < bolt.places_count; i++) {
        const struct muslin_plan_place *place = &bolt.places[i];
        if ((size_t)bolt.pieces[place->piece].label < sheet->cuts_count)
            continue;
        strips += place->count * bolt.strips[place->strip].times;
        together += place->count * bolt.strips[place->strip].times * place->width;
    }
    free_bolt(&bolt);
    add(&line, "Binding, of %s: ", sheet->design->cloths[0].name);
    add(&line, "%" PRId64 " strips 2 1/2 in wide, %s together; ", strips, inches(together, text));
    add(&line, "%" PRId64 " joins on the slant take %s each. ", strips - 1, inches(sheet->binding_loss, text));
    add(&line, "That makes %s: ", inches(sheet->binding_length, text));
    add(&line, "%s round the quilt and ", inches(sheet->binding_round, text));
    add(&line, "%s for the corners and for joining the ends.",
        inches(sheet->binding_length - sheet->binding_round, text));
    print_line(&line, 2, 0);
}

void print_yardage(const struct sheet *sheet)
{
    struct line line = { .used = 0 };
    printf("\nBUY, AND LAY THE CUTS OUT (off the bolt; strips go right across the cloth, the widest first)\n");
    add(&line, "Fold the cloth lengthwise, selvage on selvage, and straighten its end square to the fold: 1/2 in is "
        "counted for that. Cut strips through both layers, trim the selvages off and open each strip flat; then cut "
        "its pieces from the left end, in the order said. Sizes are cut sizes. Shrinkage is not counted: of cloth that "
        "will be washed first buy more.");
    print_line(&line, 2, 0);
    add(&line, "Two steps: strips right across the cloth, then pieces side by side from each. What is said of other "
        "plans is said of such ones: not of pieces stacked one above the other in a strip, nor of borders or binding "
        "cut along the cloth.");
    print_line(&line, 2, 0);
    print_binding(sheet);
    for (size_t i = 0; i < sheet->bill_count; i++)
        print_fabric(sheet, i);
}
