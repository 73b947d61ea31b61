/* buy.c - what to buy, and how to cut it: a plan for each fabric, strip by strip, binding included.
 *
 * SPDX-License-Identifier: MIT */
#include <inttypes.h>
#include <stdlib.h>

#include "sheet.h"

/* ---- the plans -------------------------------------------------------------------------------------------------- */

/* The usual binding, of the first fabric: strips of 2 1/2 in, joined on the slant. */
static struct muslin_extra_cut_spec binding_of(const struct sheet *sheet, muslin_len *length)
{
    const struct muslin_node_size size = size_of(sheet, sheet->design->top);
    struct muslin_binding_spec spec = MUSLIN_BINDING_SPEC_INIT;
    struct muslin_binding binding = { .size = (uint32_t)sizeof binding };
    struct muslin_extra_cut_spec cut = MUSLIN_EXTRA_CUT_SPEC_INIT;
    spec.quilt_width = size.finished_width;
    spec.quilt_length = size.finished_height;
    must(muslin_binding_plan(&spec, &binding, NULL), NULL);
    *length = binding.length;
    cut.fabric = sheet->design->cloths[0].id;
    cut.kind = MUSLIN_BLANK_JOINED;
    cut.cut_width = binding.length;
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
    const struct muslin_extra_cut_spec binding = binding_of(sheet, &sheet->binding_length);
    size_t *count = &sheet->bill_count;
    spec.flags = MUSLIN_CUTPLAN_NO_PANELS;
    spec.straightening = INCH / 2;
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

static void add_place(struct line *line, const struct sheet *sheet, const struct bolt *bolt, size_t place)
{
    const struct muslin_plan_place *row = &bolt->places[place];
    char text[WORD];
    char name[WORD];
    if (is_whole(sheet, bolt, place)) {
        if (row->count > 1)
            add(line, "%" PRId64 " of ", row->count);
        add(line, "%s long for %s", inches(row->width, text), place_name(sheet, bolt, place, name));
        if (row->trimmed)
            add(line, ", trimmed to %s", inches(row->height, text));
        return;
    }
    add(line, "%" PRId64 " of %s", row->count, place_name(sheet, bolt, place, name));
    if (row->turned)
        add(line, ", turned, %s along the strip", inches(row->width, text));
    if (row->trimmed)
        add(line, ", trimmed to %s", inches(row->height, text));
}

static void print_strip(const struct sheet *sheet, const struct bolt *bolt, const struct muslin_plan_strip *strip)
{
    struct line line = { .used = 0 };
    char text[WORD];
    add(&line, "%" PRId64 " strip%s by %s: ", strip->times, plural(strip->times), inches(strip->height, text));
    for (int64_t i = 0; i < strip->places; i++) {
        add(&line, "%s", i == 0 ? "" : "; ");
        add_place(&line, sheet, bolt, (size_t)(strip->first_place + i));
    }
    print_line(&line, 4, 5);
}

static void print_fabric(const struct sheet *sheet, size_t fabric)
{
    const struct muslin_fabric_yardage *row = &sheet->bill[fabric];
    struct bolt bolt = read_bolt(sheet, fabric);
    struct line line = { .used = 0 };
    char text[WORD];
    add(&line, "%s: buy %s. ", fabric_name(sheet, row->fabric), yards(row->bought, text));
    add(&line, "%s are needed", inches(row->cloth_length, text));
    if (row->proven)
        add(&line, "; cut in strips like this, no plan needs less");
    else
        add(&line, "; cut in strips like this, no plan needs less than %s", inches(row->least, text));
    add(&line, ". It works down to %s of usable width.", inches(row->narrowest_width, text));
    print_line(&line, 2, 2);
    for (size_t i = 0; i < bolt.strips_count; i++)
        print_strip(sheet, &bolt, &bolt.strips[i]);
    free_bolt(&bolt);
}

void print_yardage(const struct sheet *sheet)
{
    struct line line = { .used = 0 };
    char text[WORD];
    printf("\nBUY, AND LAY THE CUTS OUT (strips go right across the cloth, the highest first)\n");
    add(&line, "Straighten the end of each fabric first; 1/2 in is counted for that. Sizes are cut sizes. Binding of "
        "2 1/2 in strips, %s in all with their joins sewn on the slant, is counted to %s. Shrinkage is not counted.",
        inches(sheet->binding_length, text), sheet->design->cloths[0].name);
    print_line(&line, 2, 0);
    for (size_t i = 0; i < sheet->bill_count; i++)
        print_fabric(sheet, i);
}
