/* worked.c - one size of a pattern asked through: solved, cut, sewn, pressed, finished, bought.
 *
 * SPDX-License-Identifier: MIT
 *
 * What can fail as the pattern wishes it becomes a complaint with the library's sentence; what can only fail for want
 * of memory stops the program. */
#include <stdlib.h>

#include "worked.h"

void *rows_for(size_t count, size_t size)
{
    return kept(calloc(count + 1, size));
}

/* All rows that a call has: first it tells how many, then it fills them. Its own arguments stand last. */
#define READ_ROWS(rows, count, call, ...) \
    do { \
        must(call(__VA_ARGS__, NULL, 0, 0, &(count), NULL)); \
        (rows) = rows_for((count), sizeof *(rows)); \
        must(call(__VA_ARGS__, (rows), sizeof *(rows), (count), &(count), NULL)); \
    } while (0)

/* ---- complaints -------------------------------------------------------------------------------------------------- */

/* True when the call went well; else its sentence is told at the place. */
static bool went_well(muslin_status status, const struct muslin_problem *problem, const char *place,
                      struct complaints *complaints)
{
    if (status == MUSLIN_OK)
        return true;
    if (status == MUSLIN_ERR_NO_MEMORY)
        must(status);
    complain(complaints, place, NULL, status, "%s",
             problem->status == status ? problem->text : muslin_status_sentence(status));
    return false;
}

/* Where the node stands in the file that could not be solved; the library tells its number. */
static const char *place_of_node(const struct design *design, const struct muslin_problem *problem)
{
    muslin_id id;
    if (problem->argument == MUSLIN_ARG_MEASURE ||
        muslin_quilt_id(design->quilt, MUSLIN_SORT_NODE, problem->at, &id, NULL) != MUSLIN_OK)
        return "";
    const struct named *named = named_of(design, id);
    return named == NULL || named->place == NULL ? "/top" : named->place;
}

/* ---- sizes and cuts ---------------------------------------------------------------------------------------------- */

static bool solve(struct worked *worked, struct complaints *complaints)
{
    const struct design *design = worked->design;
    struct muslin_problem problem = MUSLIN_PROBLEM_INIT;
    muslin_status status = muslin_solution_create(design->quilt, design->top, &design->solve, NULL, 0, 0, NULL,
                                                  &worked->solution, &problem);
    if (!went_well(status, &problem, place_of_node(design, &problem), complaints))
        return false;
    worked->totals.size = sizeof worked->totals;
    must(muslin_solution_totals(worked->solution, &worked->totals, NULL));
    worked->top = size_of(worked, design->top);
    READ_ROWS(worked->misfits, worked->misfits_count, muslin_solution_misfits, worked->solution);
    return true;
}

/* The four strips of a mitred border are cut alike: one number. */
static bool shares_number(const struct muslin_solution_cut *a, const struct muslin_solution_cut *b)
{
    return a->source == MUSLIN_CUT_SOURCE_MITRED && b->source == MUSLIN_CUT_SOURCE_MITRED && a->fabric == b->fabric &&
           a->cut_width == b->cut_width && a->cut_height == b->cut_height;
}

/* How long the cloth must be for it; strips are cut across all of it. */
static muslin_len length_of(const struct worked *worked, const struct muslin_solution_cut *cut)
{
    if (cut->source == MUSLIN_CUT_SOURCE_SET_STRIP || cut->pitch > 0)
        return cloth_of(worked->design, cut->fabric)->usable_width;
    return cut->cut_width > cut->cut_height ? cut->cut_width : cut->cut_height;
}

/* Of one fabric first what is cut from strips joined end to end, the widest first, then the longest first. */
static bool is_cut_before(const struct worked *worked, size_t one, size_t other)
{
    const struct muslin_solution_cut *a = &worked->cuts[one];
    const struct muslin_solution_cut *b = &worked->cuts[other];
    if (a->fabric != b->fabric)
        return false;
    if (is_joined(worked, one) != is_joined(worked, other))
        return is_joined(worked, one);
    if (is_joined(worked, one) && a->cut_height != b->cut_height)
        return a->cut_height > b->cut_height;
    return length_of(worked, a) > length_of(worked, b);
}

/* Cuts of one fabric stand together: each moves up among them as far as it goes. */
static void put_in_order(struct worked *worked)
{
    size_t *order = worked->order = rows_for(worked->cuts_count, sizeof *order);
    int number = 0;
    for (size_t i = 0; i < worked->cuts_count; i++) {
        size_t place = i;
        for (; place > 0 && is_cut_before(worked, i, order[place - 1]); place--)
            order[place] = order[place - 1];
        order[place] = i;
    }
    worked->piece = rows_for(worked->cuts_count, sizeof *worked->piece);
    for (size_t i = 0; i < worked->cuts_count; i++) {
        number += i == 0 || !shares_number(&worked->cuts[order[i - 1]], &worked->cuts[order[i]]);
        worked->piece[order[i]] = number;
    }
}

static struct muslin_blank_spec *request_of(const struct worked *worked, const struct cloth *cloth,
                                            const struct muslin_yardage_spec *spec, size_t *count)
{
    must(muslin_yardage_pieces(worked->solution, cloth->id, spec, NULL, 0, 0, count, NULL));
    struct muslin_blank_spec *rows = rows_for(*count + 2, sizeof *rows);
    must(muslin_yardage_pieces(worked->solution, cloth->id, spec, rows, sizeof *rows, *count, count, NULL));
    return rows;
}

/* Strips cannot be slit: what is too long for one is joined. */
struct muslin_yardage_spec buying_of(const struct worked *worked, const struct cloth *cloth)
{
    struct muslin_yardage_spec spec = worked->design->buying;
    spec.mitre_extra = worked->mitre_extra;
    if (cloth->strip_cut > 0)
        spec.long_pieces = MUSLIN_LONG_PIECES_JOINED;
    return spec;
}

/* A hand's breadth to hold, so that the longest of the mitred strips comes out at a whole inch or centimetre. */
static void leave_mitred_long(struct worked *worked)
{
    const bool in_inches = worked->design->pattern->units == PATTERN_INCH;
    const muslin_len hold = in_inches ? 2 * MUSLIN_TICKS_PER_INCH : 50 * MUSLIN_TICKS_PER_MM;
    struct muslin_rounding_spec whole = MUSLIN_ROUNDING_SPEC_INIT;
    struct muslin_rounded length = { .size = (uint32_t)sizeof length };
    muslin_len longest = 0;
    muslin_len held;
    for (size_t i = 0; i < worked->cuts_count; i++)
        if (worked->cuts[i].source == MUSLIN_CUT_SOURCE_MITRED && worked->cuts[i].cut_width > longest)
            longest = worked->cuts[i].cut_width;
    if (longest == 0)
        return;
    whole.grid = in_inches ? MUSLIN_TICKS_PER_INCH : 10 * MUSLIN_TICKS_PER_MM;
    whole.direction = MUSLIN_DIRECTION_UP;
    must(muslin_length_add(longest, hold, &held));
    must(muslin_length_snap(held, &whole, &length));
    must(muslin_length_subtract(length.value, longest, &worked->mitre_extra));
}

/* How each cut is laid out, as the library asks for it. */
static void read_laid(struct worked *worked)
{
    worked->laid = rows_for(worked->cuts_count, sizeof *worked->laid);
    for (size_t i = 0; i < worked->design->cloths_used; i++) {
        const struct cloth *cloth = &worked->design->cloths[i];
        const struct muslin_yardage_spec spec = buying_of(worked, cloth);
        size_t count;
        struct muslin_blank_spec *rows = request_of(worked, cloth, &spec, &count);
        for (size_t k = 0; k < count; k++)
            worked->laid[rows[k].label] = rows[k].kind;
        free(rows);
    }
}

static void read_cuts(struct worked *worked)
{
    READ_ROWS(worked->cuts, worked->cuts_count, muslin_solution_cuts, worked->solution);
    READ_ROWS(worked->sets, worked->sets_count, muslin_solution_stripsets, worked->solution);
}

/* ---- sewing and pressing ----------------------------------------------------------------------------------------- */

/* An allowance that is 1/64 in off makes each seam 1/32 in off. */
static void read_steps(struct worked *worked)
{
    const muslin_len seam_error = MUSLIN_TICKS_PER_INCH / 32;
    READ_ROWS(worked->steps, worked->steps_count, muslin_sewing_steps, worked->solution);
    worked->feeds = rows_for(worked->steps_count, sizeof *worked->feeds);
    for (size_t i = 0; i < worked->steps_count; i++)
        READ_ROWS(worked->feeds[i].rows, worked->feeds[i].count, muslin_sewing_feeds, worked->solution, (int64_t)i);
    worked->sewn.size = sizeof worked->sewn;
    must(muslin_sewing_totals(worked->solution, seam_error, 0, &worked->sewn, NULL));
}

/* Strips of a mitred border lie over the seam that holds them, its mitres open: none of these meets another seam, and
 * so the plan leaves them to chance. Along the middle part a strip is the first piece at the left and at the top. */
static void press_outwards(struct worked *worked, muslin_id border)
{
    static const int32_t presses[] = { MUSLIN_PRESS_LEFT, MUSLIN_PRESS_RIGHT, MUSLIN_PRESS_UP, MUSLIN_PRESS_DOWN };
    for (size_t i = 0; i < worked->seams_count; i++) {
        struct muslin_pressing_seam *seam = &worked->seams[i];
        if (seam->node != border)
            continue;
        seam->press = seam->seam < 4 ? presses[seam->seam] : MUSLIN_PRESS_OPEN;
        seam->towards = seam->seam >= 4 ? 0 : seam->seam % 2 == 0 ? 1 : 2;
    }
}

static void press_mitred_borders(struct worked *worked)
{
    const struct design *design = worked->design;
    for (size_t i = 0; i < design->borders_used; i++)
        if (design->borders[i].corners == CORNERS_MITRED)
            press_outwards(worked, design->borders[i].outside);
}

static bool press(struct worked *worked, struct complaints *complaints)
{
    struct muslin_problem problem = MUSLIN_PROBLEM_INIT;
    muslin_status status = muslin_pressing_create(worked->solution, &worked->design->pressing, NULL, NULL, NULL,
                                                  &worked->pressing, &problem);
    if (!went_well(status, &problem, "/pressing", complaints))
        return false;
    const struct muslin_pressing *plan = worked->pressing;
    worked->pressed.size = sizeof worked->pressed;
    must(muslin_pressing_totals(plan, &worked->pressed, NULL));
    READ_ROWS(worked->seams, worked->seams_count, muslin_pressing_seams, plan);
    press_mitred_borders(worked);
    READ_ROWS(worked->children, worked->children_count, muslin_pressing_children, plan);
    READ_ROWS(worked->exceptions, worked->exceptions_count, muslin_pressing_exceptions, plan);
    return true;
}

/* ---- finishing --------------------------------------------------------------------------------------------------- */

/* Ten inches more than round will do for the corners and for joining the ends; more is reckoned at first. */
enum { ENDS_LEAST = 10 * MUSLIN_TICKS_PER_INCH };

/* A last strip of which the join takes more than half is not cut, where the others go round with enough to spare. Not
 * where the file says how much is to be spare. */
static muslin_len without_stub(const struct muslin_binding *binding, muslin_len whole)
{
    const muslin_len adds = whole - binding->loss_per_join;
    const muslin_len others = binding->joined - adds;
    const bool is_stub = binding->length - others < binding->loss_per_join;
    return binding->joins > 0 && is_stub && others - binding->perimeter >= ENDS_LEAST ? others : binding->length;
}

static bool bind(struct worked *worked, struct complaints *complaints)
{
    const struct design *design = worked->design;
    struct muslin_extra_cut_spec cut = MUSLIN_EXTRA_CUT_SPEC_INIT;
    struct muslin_problem problem = MUSLIN_PROBLEM_INIT;
    struct muslin_binding_spec spec = design->binding;
    spec.quilt_width = worked->top.finished_width;
    spec.quilt_length = worked->top.finished_height;
    spec.strip_length = cloth_of(design, design->binding_fabric)->usable_width;
    worked->binding.size = sizeof worked->binding;
    if (!went_well(muslin_binding_plan(&spec, &worked->binding, &problem), &problem, "/binding", complaints))
        return false;
    worked->binding_reckoned = design->asks_binding_extra ? worked->binding.length
                                                          : without_stub(&worked->binding, spec.strip_length);
    cut.fabric = design->binding_fabric;
    cut.kind = MUSLIN_BLANK_JOINED;
    cut.cut_width = worked->binding_reckoned;
    cut.cut_length = spec.binding_cut;
    cut.join_loss = worked->binding.loss_per_join;
    cut.count = design->solve.tops;
    worked->extras[worked->extras_count++] = cut;
    return true;
}

static bool hang(struct worked *worked, struct complaints *complaints)
{
    const struct design *design = worked->design;
    struct muslin_extra_cut_spec cut = MUSLIN_EXTRA_CUT_SPEC_INIT;
    struct muslin_problem problem = MUSLIN_PROBLEM_INIT;
    struct muslin_hanging_spec spec = design->sleeve;
    spec.quilt_width = worked->top.finished_width;
    worked->sleeve.size = sizeof worked->sleeve;
    if (!went_well(muslin_hanging_plan(&spec, &worked->sleeve, &problem), &problem, "/sleeve", complaints))
        return false;
    if (worked->sleeve.sleeves == 0)
        return true;
    const bool is_long = worked->sleeve.sleeve_cut_length > cloth_of(design, design->sleeve_fabric)->usable_width;
    cut.fabric = design->sleeve_fabric;
    cut.kind = is_long ? MUSLIN_BLANK_JOINED : MUSLIN_BLANK_PIECE;
    cut.cut_width = worked->sleeve.sleeve_cut_length;
    cut.cut_length = worked->sleeve.sleeve_cut_width;
    cut.join_loss = is_long ? 2 * spec.allowance : 0;
    cut.count = worked->sleeve.sleeves * design->solve.tops;
    worked->extras[worked->extras_count++] = cut;
    return true;
}

static bool pad(struct worked *worked, struct complaints *complaints)
{
    const struct design *design = worked->design;
    struct muslin_problem problem = MUSLIN_PROBLEM_INIT;
    struct muslin_batting_spec batting = design->batting;
    batting.quilt_width = worked->top.finished_width;
    batting.quilt_length = worked->top.finished_height;
    worked->batting.size = sizeof worked->batting;
    if (!went_well(muslin_batting_plan(&batting, &worked->batting, &problem), &problem, "/batting", complaints))
        return false;
    const muslin_status status = muslin_length_multiply(worked->batting.joined_length, design->solve.tops,
                                                        &worked->batting_from_roll);
    return went_well(status, &problem, "/tops", complaints);
}

/* Cloth for the backs of all tops, cut from one length, as it is bought: what is sewn together of one serves each. */
static muslin_status buy_backs(const struct design *design, const struct muslin_backing *backing,
                               struct muslin_purchase *purchase, struct muslin_problem *problem)
{
    struct muslin_purchase_spec spec = MUSLIN_PURCHASE_SPEC_INIT;
    const muslin_len lengths[] = { backing->cloth_length, backing->cloth_with_repeat };
    const int64_t counts[] = { design->solve.tops - 1, 1 };
    muslin_status status = muslin_length_dot(lengths, counts, 2, &spec.needed);
    spec.extra = design->buying.extra;
    spec.step = design->buying.step;
    spec.shrinkage = design->buying.shrinkage;
    purchase->size = sizeof *purchase;
    return status != MUSLIN_OK ? status : muslin_fabric_purchase(&spec, purchase, problem);
}

/* The layout of which least is bought comes first; of several, the one with the fewest seams. */
static void put_best_first(struct worked *worked)
{
    size_t best = 0;
    for (size_t i = 1; i < worked->backings_count; i++) {
        const struct muslin_backing *one = &worked->backings[i];
        const muslin_len bought = worked->backs[i].bought;
        const muslin_len least = worked->backs[best].bought;
        if (one->possible && (!worked->backings[best].possible || bought < least ||
                              (bought == least && one->seams < worked->backings[best].seams)))
            best = i;
    }
    for (size_t k = best; k > 0; k--) {
        const struct muslin_backing layout = worked->backings[k];
        const struct muslin_purchase purchase = worked->backs[k];
        worked->backings[k] = worked->backings[k - 1];
        worked->backs[k] = worked->backs[k - 1];
        worked->backings[k - 1] = layout;
        worked->backs[k - 1] = purchase;
    }
}

/* A layout that takes more cloth than can be bought is not possible. */
static bool lay_out_backs(struct worked *worked, const struct muslin_backing_spec *backing,
                          struct complaints *complaints)
{
    struct muslin_problem problem = MUSLIN_PROBLEM_INIT;
    struct muslin_problem too_much = MUSLIN_PROBLEM_INIT;
    muslin_status bought = MUSLIN_OK;
    size_t *count = &worked->backings_count;
    muslin_status status = muslin_backing_layouts(backing, NULL, 0, 0, count, &problem);
    if (!went_well(status, &problem, "/backing", complaints))
        return false;
    worked->backings = rows_for(*count, sizeof *worked->backings);
    worked->backs = rows_for(*count, sizeof *worked->backs);
    must(muslin_backing_layouts(backing, worked->backings, sizeof *worked->backings, *count, count, NULL));
    for (size_t i = 0; i < *count; i++) {
        status = buy_backs(worked->design, &worked->backings[i], &worked->backs[i], &too_much);
        worked->backings[i].possible = worked->backings[i].possible && status == MUSLIN_OK;
        bought = status == MUSLIN_OK ? bought : status;
    }
    put_best_first(worked);
    return worked->backings[0].possible || went_well(bought, &too_much, "/backing", complaints);
}

static bool back(struct worked *worked, struct complaints *complaints)
{
    struct muslin_backing_spec spec = worked->design->backing;
    spec.quilt_width = worked->top.finished_width;
    spec.quilt_length = worked->top.finished_height;
    if (!lay_out_backs(worked, &spec, complaints))
        return false;
    READ_ROWS(worked->panels, worked->panels_count, muslin_backing_panels, &spec, worked->backings[0].layout);
    return true;
}

static bool lay(struct worked *worked, struct complaints *complaints)
{
    const struct design *design = worked->design;
    struct muslin_problem problem = MUSLIN_PROBLEM_INIT;
    struct muslin_bed_covered_spec spec = MUSLIN_BED_COVERED_SPEC_INIT;
    char place[40];
    spec.quilt_width = worked->top.finished_width;
    spec.quilt_length = worked->top.finished_height;
    spec.mattress_width = design->bed_width;
    spec.mattress_length = design->bed_length;
    spec.mattress_depth = design->bed_depth;
    worked->cover.size = sizeof worked->cover;
    snprintf(place, sizeof place, "/sizes/%zu/bed", design->size);
    return went_well(muslin_bed_covered(&spec, &worked->cover, &problem), &problem, place, complaints);
}

static bool finish(struct worked *worked, struct complaints *complaints)
{
    bool fine = !worked->design->has_binding || bind(worked, complaints);
    fine = (!worked->design->has_sleeve || hang(worked, complaints)) && fine;
    fine = (!worked->design->has_bed || lay(worked, complaints)) && fine;
    fine = (!worked->design->has_batting || pad(worked, complaints)) && fine;
    return (!worked->design->has_backing || back(worked, complaints)) && fine;
}

/* ---- cloth ------------------------------------------------------------------------------------------------------- */

/* Pieces of cloth from so wide on are told as left over. */
static muslin_len least_left_over(const struct design *design)
{
    return design->pattern->units == PATTERN_INCH ? 2 * MUSLIN_TICKS_PER_INCH : 50 * MUSLIN_TICKS_PER_MM;
}

static void read_bolt(struct worked *worked, size_t row)
{
    struct bolt *bolt = &worked->bolts[row];
    const muslin_len least = least_left_over(worked->design);
    const struct muslin_cutplan *plan = bolt->from_strips;
    if (plan == NULL)
        must(muslin_yardage_plan(worked->yardage, (int64_t)row, &plan, NULL));
    READ_ROWS(bolt->strips, bolt->strips_count, muslin_cutplan_strips, plan);
    READ_ROWS(bolt->places, bolt->places_count, muslin_cutplan_places, plan);
    READ_ROWS(bolt->pieces, bolt->pieces_count, muslin_cutplan_pieces, plan);
    READ_ROWS(bolt->left_over, bolt->left_over_count, muslin_cutplan_left_overs, plan, least);
}

struct muslin_blank_spec *pieces_of(const struct worked *worked, const struct cloth *cloth,
                                    const struct muslin_yardage_spec *buying, size_t *count)
{
    struct muslin_blank_spec *rows = request_of(worked, cloth, buying, count);
    for (size_t i = 0; i < worked->extras_count; i++) {
        const struct muslin_extra_cut_spec *extra = &worked->extras[i];
        struct muslin_blank_spec row = MUSLIN_BLANK_SPEC_INIT;
        if (extra->fabric != cloth->id)
            continue;
        row.cut_width = extra->cut_width;
        row.cut_length = extra->cut_length;
        row.count = extra->count;
        row.join_loss = extra->join_loss;
        row.kind = extra->kind;
        row.label = (int64_t)(worked->cuts_count + i);
        rows[(*count)++] = row;
    }
    return rows;
}

/* A plan from strips as they are bought, as many as it takes. */
static muslin_status plan_strips(const struct worked *worked, const struct cloth *cloth, struct muslin_cutplan **plan,
                                 struct muslin_problem *problem)
{
    const struct muslin_yardage_spec buying = buying_of(worked, cloth);
    struct muslin_cutplan_spec spec = MUSLIN_CUTPLAN_SPEC_INIT;
    struct muslin_cutplan_stock_spec stock = MUSLIN_CUTPLAN_STOCK_SPEC_INIT;
    struct muslin_allocator allocator;
    size_t count;
    struct muslin_blank_spec *rows = pieces_of(worked, cloth, &buying, &count);
    spec.flags = MUSLIN_CUTPLAN_FIRST_CUT_ACROSS;
    spec.usable_width = 0;
    spec.print = cloth->print;
    spec.work_limit = buying.work_limit;
    stock.width = cloth->usable_width;
    stock.length = cloth->strip_cut;
    must(muslin_allocator_libc(&allocator));
    muslin_status status = muslin_cutplan_create(&spec, rows, sizeof *rows, count, &stock, sizeof stock, 1, &allocator,
                                                 NULL, NULL, plan, problem);
    free(rows);
    return status;
}

static int64_t strips_of(const struct muslin_cutplan *plan)
{
    struct muslin_cutplan_total totals = { .size = sizeof totals };
    must(muslin_cutplan_totals(plan, &totals, NULL));
    return totals.stock_pieces;
}

/* How many strips so many tops take; -1 where that cannot be worked out. What is not of the tops is as it is. */
static int64_t strips_for_tops(const struct worked *worked, const struct cloth *cloth, int64_t tops)
{
    struct worked other = { .design = worked->design,
                            .cuts_count = worked->cuts_count,
                            .mitre_extra = worked->mitre_extra };
    struct muslin_solution_spec spec = worked->design->solve;
    struct muslin_cutplan *plan = NULL;
    int64_t strips = -1;
    spec.tops = tops;
    if (muslin_solution_create(worked->design->quilt, worked->design->top, &spec, NULL, 0, 0, NULL, &other.solution,
                               NULL) !=
        MUSLIN_OK)
        return strips;
    for (size_t i = 0; i < worked->extras_count; i++) {
        other.extras[i] = worked->extras[i];
        other.extras[i].count = worked->extras[i].count / worked->design->solve.tops * tops;
    }
    other.extras_count = worked->extras_count;
    if (plan_strips(&other, cloth, &plan, NULL) == MUSLIN_OK)
        strips = strips_of(plan);
    muslin_cutplan_free(plan);
    muslin_solution_free(other.solution);
    return strips;
}

static bool read_strips(struct worked *worked, size_t row, struct complaints *complaints)
{
    const struct cloth *cloth = cloth_of(worked->design, worked->bill[row].fabric);
    struct bolt *bolt = &worked->bolts[row];
    struct muslin_problem problem = MUSLIN_PROBLEM_INIT;
    char place[80];
    if (cloth->strip_cut == 0)
        return true;
    snprintf(place, sizeof place, "/fabrics/%s", cloth->key);
    if (!went_well(plan_strips(worked, cloth, &bolt->from_strips, &problem), &problem, place, complaints))
        return false;
    bolt->strips_needed = strips_of(bolt->from_strips);
    for (int64_t tops = 1; cloth->strips_have > 0 && tops <= TOPS_TRIED; tops++) {
        const int64_t strips = strips_for_tops(worked, cloth, tops);
        if (strips < 0 || strips > cloth->strips_have)
            break;
        bolt->tops_given = tops;
    }
    return true;
}

struct stopper {
    bool (*stop)(void *);
    void *with;
};

static int32_t ask_to_stop(void *context, int64_t work, int64_t best, int64_t bound)
{
    const struct stopper *stopper = context;
    (void)work;
    (void)best;
    (void)bound;
    return stopper->stop != NULL && stopper->stop(stopper->with);
}

/* The binding or sleeve, where its strip is what does not fit or its join is what takes too much; else null. */
static const char *place_of_extra(const struct worked *worked, muslin_id fabric, int64_t value)
{
    for (size_t i = 0; i < worked->extras_count; i++) {
        const struct muslin_extra_cut_spec *cut = &worked->extras[i];
        if (cut->fabric == fabric && (cut->cut_width == value || cut->cut_length == value || cut->join_loss == value))
            return laid_for(worked, (int64_t)(worked->cuts_count + i)) == LAID_BINDING ? "/binding" : "/sleeve";
    }
    return NULL;
}

/* Where in the file the fabric stands of which no plan can be made, or what is to be cut from it. */
static void place_of_fabric(const struct worked *worked, const struct muslin_problem *problem, char *place, size_t room)
{
    const bool is_join = problem->argument == MUSLIN_ARG_JOIN_LOSS;
    muslin_id id;
    snprintf(place, room, "/buying");
    if (muslin_quilt_id(worked->design->quilt, MUSLIN_SORT_FABRIC, problem->at, &id, NULL) != MUSLIN_OK)
        return;
    const char *extra = is_join || problem->status == MUSLIN_ERR_NO_YIELD
                            ? place_of_extra(worked, id, problem->value) : NULL;
    if (extra != NULL || is_join)
        snprintf(place, room, "%s", extra != NULL ? extra : "/seam/allowance");
    else
        snprintf(place, room, "/fabrics/%s", cloth_of(worked->design, id)->key);
}

static bool buy(struct worked *worked, const struct stopper *stopper, struct complaints *complaints)
{
    struct muslin_problem problem = MUSLIN_PROBLEM_INIT;
    struct muslin_allocator allocator;
    char place[80];
    bool fine = true;
    struct muslin_yardage_spec spec = worked->design->buying;
    spec.mitre_extra = worked->mitre_extra;
    must(muslin_allocator_libc(&allocator));
    muslin_status status = muslin_yardage_create(worked->solution, &spec, worked->extras,
                                                 sizeof worked->extras[0], worked->extras_count, &allocator,
                                                 ask_to_stop, (void *)(uintptr_t)stopper, &worked->yardage, &problem);
    place_of_fabric(worked, &problem, place, sizeof place);
    if (!went_well(status, &problem, place, complaints))
        return false;
    READ_ROWS(worked->bill, worked->bill_count, muslin_yardage_fabrics, worked->yardage);
    worked->bolts = rows_for(worked->bill_count, sizeof *worked->bolts);
    for (size_t i = 0; i < worked->bill_count; i++) {
        fine = read_strips(worked, i, complaints) && fine;
        read_bolt(worked, i);
    }
    return fine;
}

/* ---- all --------------------------------------------------------------------------------------------------------- */

static bool work_out(struct worked *worked, const struct stopper *stopper, struct complaints *complaints)
{
    if (!solve(worked, complaints))
        return false;
    read_cuts(worked);
    leave_mitred_long(worked);
    read_laid(worked);
    put_in_order(worked);
    read_steps(worked);
    bool fine = press(worked, complaints);
    fine = finish(worked, complaints) && fine;
    fine = fine && buy(worked, stopper, complaints);
    if (stopper->stop != NULL && stopper->stop(stopper->with)) {
        complain(complaints, "", NULL, -1, "It was interrupted before all was worked out.");
        return false;
    }
    return fine;
}

struct worked *worked_create(const struct design *design, bool (*stop)(void *), void *with,
                             struct complaints *complaints)
{
    const struct stopper stopper = { stop, with };
    struct worked *worked = rows_for(1, sizeof *worked);
    worked->design = design;
    if (work_out(worked, &stopper, complaints))
        return worked;
    worked_free(worked);
    return NULL;
}

static void bolt_free(struct bolt *bolt)
{
    free(bolt->strips);
    free(bolt->places);
    free(bolt->pieces);
    free(bolt->left_over);
    muslin_cutplan_free(bolt->from_strips);
}

void worked_free(struct worked *worked)
{
    if (worked == NULL)
        return;
    for (size_t i = 0; worked->bolts != NULL && i < worked->bill_count; i++)
        bolt_free(&worked->bolts[i]);
    for (size_t i = 0; worked->feeds != NULL && i < worked->steps_count; i++)
        free(worked->feeds[i].rows);
    void *const rows[] = { worked->misfits, worked->cuts,       worked->order, worked->piece, worked->laid,
                           worked->sets,    worked->steps,      worked->feeds, worked->seams, worked->children,
                           worked->exceptions, worked->bill,    worked->bolts, worked->backings, worked->backs,
                           worked->panels };
    for (size_t i = 0; i < sizeof rows / sizeof rows[0]; i++)
        free(rows[i]);
    muslin_yardage_free(worked->yardage);
    muslin_pressing_free(worked->pressing);
    muslin_solution_free(worked->solution);
    free(worked);
}
