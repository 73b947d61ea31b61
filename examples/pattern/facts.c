/* facts.c - one size of a pattern as JSON: the sums as they are, lengths in ticks and words, names instead of ids.
 *
 * SPDX-License-Identifier: MIT */
#include <stdlib.h>

#include "wording.h"

/* ---- values ------------------------------------------------------------------------------------------------------ */

static void set(json_t *object, const char *name, json_t *value)
{
    if (value == NULL || json_object_set_new(object, name, value) != 0)
        must(MUSLIN_ERR_NO_MEMORY);
}

static void set_text(json_t *object, const char *name, const char *text)
{
    set(object, name, text == NULL ? json_null() : json_string(text));
}

static void set_count(json_t *object, const char *name, int64_t count)
{
    set(object, name, json_integer(count));
}

static void set_truth(json_t *object, const char *name, bool truth)
{
    set(object, name, json_boolean(truth));
}

static json_t *length_of(const struct worked *worked, muslin_len length)
{
    char text[WORD_ROOM];
    json_t *object = json_object();
    set_count(object, "ticks", length);
    set_text(object, "text", measured(worked, length, text));
    return object;
}

static void set_length(json_t *object, const struct worked *worked, const char *name, muslin_len length)
{
    set(object, name, length_of(worked, length));
}

/* A length to buy is told as shops cut it. */
static void set_bought(json_t *object, const struct worked *worked, const char *name, muslin_len length)
{
    char text[WORD_ROOM];
    json_t *value = json_object();
    set_count(value, "ticks", length);
    set_text(value, "text", to_buy(worked, length, text));
    set(object, name, value);
}

static json_t *add_row(json_t *list)
{
    json_t *row = json_object();
    if (json_array_append_new(list, row) != 0)
        must(MUSLIN_ERR_NO_MEMORY);
    return row;
}

static json_t *list_in(json_t *object, const char *name)
{
    json_t *list = json_array();
    set(object, name, list);
    return list;
}

static void set_size(json_t *object, const struct worked *worked, const char *name, muslin_len width, muslin_len height)
{
    json_t *size = json_object();
    set_length(size, worked, "width", width);
    set_length(size, worked, "height", height);
    set(object, name, size);
}

static void set_letter(json_t *object, const struct worked *worked, const char *name, muslin_id node)
{
    char letter[16];
    set_text(object, name, letter_of(worked, node, letter));
}

static void set_name(json_t *object, const struct worked *worked, muslin_id node)
{
    struct line line = { NULL, 0, 0 };
    add_name(&line, worked, node);
    set_text(object, "name", line.text);
    free(line.text);
}

/* ---- the top ----------------------------------------------------------------------------------------------------- */

static json_t *top_of(const struct worked *worked)
{
    json_t *top = json_object();
    const struct muslin_node_size *size = &worked->top;
    set_size(top, worked, "finished", size->finished_width, size->finished_height);
    set_size(top, worked, "unfinished", size->unfinished_width, size->unfinished_height);
    set_count(top, "patches", worked->totals.patches);
    set_count(top, "tops", worked->design->solve.tops);
    set_truth(top, "exact", worked->totals.exact != 0);
    return top;
}

static json_t *misfits_of(const struct worked *worked)
{
    static const char *const kinds[] = { "", "length", "eased", "allowance", "not square" };
    json_t *list = json_array();
    for (size_t i = 0; i < worked->misfits_count; i++) {
        const struct muslin_misfit *misfit = &worked->misfits[i];
        json_t *row = add_row(list);
        set_text(row, "kind", kinds[misfit->kind]);
        set_letter(row, worked, "in", misfit->node);
        set_name(row, worked, misfit->node);
        set_text(row, "place", place_in_file(worked, misfit->node));
        set_text(row, "first_place", place_of_part(worked, misfit->node, misfit->first));
        set_text(row, "second_place", place_of_part(worked, misfit->node, misfit->second));
        set_count(row, "first_part", misfit->first + 1);
        set_count(row, "second_part", misfit->second + 1);
        set_length(row, worked, "first_size", misfit->first_size);
        set_length(row, worked, "second_size", misfit->second_size);
        set_length(row, worked, "difference", misfit->difference);
        set_count(row, "times", misfit->count);
    }
    return list;
}

static json_t *cuts_of(const struct worked *worked)
{
    static const char *const sources[] = { "", "patch", "strip for sets", "unit", "template", "setting", "60 degrees",
                                           "mitred" };
    static const char *const agains[] = { "", "no", "once on the diagonal", "twice on the diagonal" };
    json_t *list = json_array();
    for (size_t i = 0; i < worked->cuts_count; i++) {
        const size_t cut = worked->order[i];
        const struct muslin_solution_cut *row = &worked->cuts[cut];
        json_t *fact = add_row(list);
        set_count(fact, "piece", worked->piece[cut]);
        set_text(fact, "fabric", fabric_name(worked, row->fabric));
        set_count(fact, "count", row->count);
        set_size(fact, worked, "cut", cut_length(worked, cut), row->cut_height);
        if (row->source == MUSLIN_CUT_SOURCE_MITRED)
            set_size(fact, worked, "cut_at_least", row->cut_width, row->cut_height);
        set_text(fact, "source", sources[row->source]);
        set_text(fact, "cut_again", agains[row->again]);
        set_count(fact, "pieces", row->pieces);
        set_count(fact, "spare", row->spare);
        set_truth(fact, "joined", is_joined(worked, cut));
        set_truth(fact, "border", is_border_cut(worked, cut));
    }
    return list;
}

static json_t *sets_of(const struct worked *worked)
{
    json_t *list = json_array();
    for (size_t i = 0; i < worked->sets_count; i++) {
        const struct muslin_stripset *set_row = &worked->sets[i];
        if (!set_row->used)
            continue;
        json_t *fact = add_row(list);
        set_letter(fact, worked, "letter", set_row->node);
        set_count(fact, "strips", set_row->strips);
        set_length(fact, worked, "set_unfinished", set_row->set_unfinished);
        set_length(fact, worked, "segment_cut", set_row->segment_cut);
        set_count(fact, "segments", set_row->segments);
        set_count(fact, "segments_per_set", set_row->segments_per_set);
        set_count(fact, "sets", set_row->sets);
        set_count(fact, "spare", set_row->spare);
        set_length(fact, worked, "strips_may_be_shorter_by", set_row->shorter_by);
    }
    return list;
}

/* ---- sewing ------------------------------------------------------------------------------------------------------ */

static void set_parts(json_t *fact, const struct worked *worked, size_t step)
{
    json_t *parts = list_in(fact, "parts");
    for (size_t i = 0; i < worked->feeds[step].count; i++) {
        const struct muslin_sewing_feed *feed = &worked->feeds[step].rows[i];
        const bool is_set = worked->steps[step].kind == MUSLIN_SEWING_SET;
        const int64_t cut = feed->step >= 0 ? -1 : is_set ? cut_of_strip(worked, worked->steps[step].node, feed->node)
                                                          : cut_of_patch(worked, feed->node);
        json_t *part = add_row(parts);
        set_count(part, "each", feed->each);
        if (cut >= 0)
            set_count(part, "piece", worked->piece[cut]);
        else
            set_letter(part, worked, "letter", feed->node);
    }
}

static void set_pressing(json_t *fact, const struct worked *worked, muslin_id node)
{
    size_t count;
    const struct muslin_pressing_seam *seams = seams_of(worked, node, &count);
    json_t *list = list_in(fact, "seams_pressed");
    for (size_t i = 0; i < count; i++)
        if (json_array_append_new(list, json_string(direction_name(seams[i].press))) != 0)
            must(MUSLIN_ERR_NO_MEMORY);
    set_count(fact, "the_other_way", count > 0 ? seams->other_way : 0);
}

static json_t *steps_of(const struct worked *worked)
{
    static const char *const kinds[] = { "", "strip set", "segments", "unit", "own shape", "join", "trim", "pinwheel",
                                         "set in", "on point", "60 degrees" };
    json_t *list = json_array();
    for (size_t i = 0; i < worked->steps_count; i++) {
        const struct muslin_sewing_step *step = &worked->steps[i];
        json_t *fact = add_row(list);
        set_letter(fact, worked, "letter", step->node);
        set_text(fact, "kind", kinds[step->kind]);
        set_name(fact, worked, step->node);
        set_count(fact, "make", step->alike);
        set_size(fact, worked, "unfinished", step->unfinished_width, step->unfinished_height);
        set_parts(fact, worked, i);
        set_pressing(fact, worked, step->node);
    }
    return list;
}

static json_t *nesting_of(const struct worked *worked)
{
    json_t *fact = json_object();
    set_count(fact, "meetings", worked->pressed.meetings);
    set_count(fact, "not_nesting", worked->pressed.exceptions);
    set_count(fact, "no_plan_has_fewer_than", worked->pressed.least);
    set_count(fact, "copies_the_other_way", worked->pressed.other_way);
    set_length(fact, worked, "seams_in_all", worked->sewn.sewn);
    return fact;
}

/* What only holds other strips: nothing is cut from it itself. */
static bool only_holds(const struct bolt *bolt, size_t strip)
{
    for (size_t i = 0; bolt->strips[strip].places == 0 && i < bolt->strips_count; i++)
        if (bolt->strips[i].holder == (int64_t)strip)
            return true;
    return false;
}

/* ---- cloth ------------------------------------------------------------------------------------------------------- */

static void set_strips(json_t *fact, const struct worked *worked, const struct bolt *bolt)
{
    json_t *list = list_in(fact, "strips");
    for (size_t i = 0; i < bolt->strips_count; i++) {
        const struct muslin_cutplan_strip *strip = &bolt->strips[i];
        if (only_holds(bolt, i))
            continue;
        json_t *row = add_row(list);
        set_count(row, "times", times_of(bolt, strip));
        set_size(row, worked, "cut", strip->width, strip->height);
        json_t *places = list_in(row, "pieces");
        for (int64_t k = 0; k < strip->places; k++) {
            const struct muslin_cutplan_place *place = &bolt->places[strip->first_place + k];
            char name[32];
            json_t *piece = add_row(places);
            set_text(piece, "piece", label_name(worked, bolt->pieces[place->piece].label, name));
            set_count(piece, "count", place->count);
            set_size(piece, worked, "cut", place->width, place->height);
        }
    }
}

static void set_left_over(json_t *fact, const struct worked *worked, const struct bolt *bolt)
{
    json_t *list = list_in(fact, "left_over");
    for (size_t i = 0; i < bolt->left_over_count; i++) {
        json_t *row = add_row(list);
        set_count(row, "count", bolt->left_over[i].count);
        set_size(row, worked, "size", bolt->left_over[i].width, bolt->left_over[i].height);
    }
}

static json_t *fabrics_of(const struct worked *worked)
{
    json_t *list = json_array();
    for (size_t i = 0; i < worked->bill_count; i++) {
        const struct muslin_fabric_yardage *row = &worked->bill[i];
        const struct cloth *cloth = cloth_of(worked->design, row->fabric);
        json_t *fact = add_row(list);
        set_text(fact, "letter", cloth->letter);
        set_text(fact, "fabric", cloth->name);
        set_length(fact, worked, "usable_width", row->usable_width);
        if (cloth->strip_cut > 0) {
            set_length(fact, worked, "strips_cut_width", cloth->strip_cut);
            set_count(fact, "strips_needed", worked->bolts[i].strips_needed);
            set_count(fact, "strips_have", cloth->strips_have);
            set_count(fact, "tops_that_they_give", worked->bolts[i].tops_given);
        } else {
            set_length(fact, worked, "needed", row->cloth_length);
            set_length(fact, worked, "no_plan_needs_less_than", row->least);
            set_bought(fact, worked, "buy", row->bought);
            set_length(fact, worked, "to_spare", row->spare);
            set_length(fact, worked, "narrowest_width", row->narrowest_width);
        }
        set_strips(fact, worked, &worked->bolts[i]);
        set_left_over(fact, worked, &worked->bolts[i]);
    }
    return list;
}

/* What is cut for the binding, alike pieces in one row. */
static void set_binding_strips(json_t *fact, const struct worked *worked)
{
    json_t *list = list_in(fact, "strips");
    for (size_t i = 0; i < worked->bill_count; i++) {
        const struct bolt *bolt = &worked->bolts[i];
        for (size_t k = 0; k < bolt->places_count; k++) {
            const struct muslin_cutplan_place *place = &bolt->places[k];
            if (laid_for(worked, bolt->pieces[place->piece].label) != LAID_BINDING)
                continue;
            json_t *row = add_row(list);
            set_count(row, "count", place->count * times_of(bolt, &bolt->strips[place->strip]));
            set_size(row, worked, "cut", place->width, place->height);
        }
    }
}

/* ---- finishing --------------------------------------------------------------------------------------------------- */

static json_t *binding_of(const struct worked *worked)
{
    json_t *fact = json_object();
    set_text(fact, "fabric", fabric_name(worked, worked->design->binding_fabric));
    set_length(fact, worked, "cut_width", worked->design->binding.binding_cut);
    set_length(fact, worked, "perimeter", worked->binding.perimeter);
    set_length(fact, worked, "length", worked->binding_reckoned);
    set_length(fact, worked, "loss_per_join", worked->binding.loss_per_join);
    set_binding_strips(fact, worked);
    return fact;
}

static json_t *backing_of(const struct worked *worked)
{
    const struct muslin_backing *best = &worked->backings[0];
    json_t *fact = json_object();
    set_text(fact, "fabric", worked->design->backing_name);
    set_size(fact, worked, "at_least", best->needed_width, best->needed_length);
    set_length(fact, worked, "needed", worked->backs[0].needed);
    set_bought(fact, worked, "buy", worked->backs[0].bought);
    set_size(fact, worked, "joined", best->joined_width, best->joined_length);
    json_t *panels = list_in(fact, "panels");
    for (size_t i = 0; i < worked->panels_count; i++) {
        json_t *row = add_row(panels);
        set_count(row, "place", worked->panels[i].position);
        set_count(row, "count", worked->panels[i].count);
        set_size(row, worked, "cut", worked->panels[i].cut_width, worked->panels[i].cut_length);
    }
    return fact;
}

static json_t *batting_of(const struct worked *worked)
{
    const struct muslin_batting *batting = &worked->batting;
    json_t *fact = json_object();
    set_count(fact, "count", worked->design->solve.tops);
    set_size(fact, worked, "cut", batting->width, batting->length);
    if (batting->package >= 0)
        set_size(fact, worked, "package", batting->package_width, batting->package_length);
    else if (worked->batting_from_roll > 0)
        set_bought(fact, worked, "buy", worked->batting_from_roll);
    return fact;
}

static json_t *sleeve_of(const struct worked *worked)
{
    json_t *fact = json_object();
    set_text(fact, "fabric", fabric_name(worked, worked->design->sleeve_fabric));
    set_count(fact, "sleeves", worked->sleeve.sleeves);
    set_count(fact, "sleeves_of_all_tops", worked->extras[worked->extras_count - 1].count);
    set_size(fact, worked, "cut", worked->sleeve.sleeve_cut_length, worked->sleeve.sleeve_cut_width);
    set_length(fact, worked, "finished", worked->sleeve.sleeve_finished);
    return fact;
}

static json_t *bed_of(const struct worked *worked)
{
    json_t *fact = json_object();
    set_length(fact, worked, "side_drop", worked->cover.side_drop);
    set_length(fact, worked, "foot_drop", worked->cover.foot_drop);
    set_length(fact, worked, "corner_hang", worked->cover.corner_hang);
    return fact;
}

json_t *facts_of(const struct worked *worked)
{
    const struct design *design = worked->design;
    json_t *facts = json_object();
    set_text(facts, "size", design->pattern->sizes[design->size].name);
    set(facts, "top", top_of(worked));
    set(facts, "misfits", misfits_of(worked));
    set(facts, "fabrics", fabrics_of(worked));
    set(facts, "cuts", cuts_of(worked));
    set(facts, "strip_sets", sets_of(worked));
    set(facts, "steps", steps_of(worked));
    set(facts, "pressing", nesting_of(worked));
    set(facts, "binding", design->has_binding ? binding_of(worked) : json_null());
    set(facts, "backing", design->has_backing ? backing_of(worked) : json_null());
    set(facts, "batting", design->has_batting ? batting_of(worked) : json_null());
    set(facts, "sleeve", worked->sleeve.sleeves > 0 ? sleeve_of(worked) : json_null());
    set(facts, "bed", design->has_bed ? bed_of(worked) : json_null());
    return facts;
}
