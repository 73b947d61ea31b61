/* cmd_plan.c - plan: a whole strip quilt from a bundle of strips.
 *
 * SPDX-License-Identifier: MIT */
#include <stdio.h>
#include <stdlib.h>

#include "answer.h"
#include "cmd.h"
#include "plan.h"
#include "sheet.h"
#include "words.h"

static void start_plan(void *request)
{
    struct plan_request *wanted = request;
    wanted->quilt = (struct muslin_stripquilt_spec)MUSLIN_STRIPQUILT_SPEC_INIT;
    wanted->edge = MUSLIN_EDGE_STRAIGHT;
    wanted->align = MUSLIN_EDGE_PINKED_TIPS;
    wanted->strips_care = MUSLIN_CARE_UNWASHED;
    wanted->cloth_care = MUSLIN_CARE_UNWASHED;
    wanted->border = (struct muslin_border_spec)MUSLIN_BORDER_SPEC_INIT;
    wanted->border.mitre_extra = MITRE_EXTRA_USUAL;
    wanted->batting = (struct muslin_batting_spec)MUSLIN_BATTING_SPEC_INIT;
    wanted->backing = (struct muslin_backing_spec)MUSLIN_BACKING_SPEC_INIT;
    wanted->binding = (struct muslin_binding_spec)MUSLIN_BINDING_SPEC_INIT;
    wanted->binding_width = (struct muslin_binding_width_spec)MUSLIN_BINDING_WIDTH_SPEC_INIT;
    wanted->purchase = (struct muslin_purchase_spec)MUSLIN_PURCHASE_SPEC_INIT;
}

/* ---- what the strips are ---------------------------------------------------------------------------------------- */

static struct muslin_stock_spec strips_as_stock(const struct plan_request *wanted, muslin_len usable)
{
    struct muslin_stock_spec stock = MUSLIN_STOCK_SPEC_INIT;
    stock.width = usable;
    stock.length = wanted->quilt.strip_cut;
    stock.count = wanted->quilt.strips;
    stock.edge = wanted->edge;
    stock.pink_depth = wanted->pink_depth;
    stock.care = wanted->strips_care;
    return stock;
}

/* Usable length of the shortest strip, and the width to reckon with where the edges are pinked. */
static bool settle_strips(struct desk *desk, const struct plan_request *wanted, struct plan *plan)
{
    struct muslin_stripquilt_spec *quilt = &plan->spec;
    *quilt = wanted->quilt;
    quilt->flags = wanted->one_end ? MUSLIN_YIELD_FROM_ONE_END : 0;
    const struct lengths *usable = &wanted->usable;
    if (usable->count > 0 && !worked(desk, muslin_stripset_shortest(usable->values, usable->count,
                                                                    &quilt->strip_length, NULL, &plan->warnings,
                                                                    &desk->problem)))
        return false;
    if (wanted->edge == MUSLIN_EDGE_STRAIGHT && !given(desk, "pink-depth"))
        return true;
    struct muslin_stock_spec stock = strips_as_stock(wanted, quilt->strip_length);
    return worked(desk, muslin_stock_size(&stock, wanted->align, NULL, &quilt->strip_cut, &desk->problem));
}

/* Do strips and the cloth round them go together? */
static bool check_stock(struct desk *desk, const struct plan_request *wanted, struct plan *plan)
{
    struct muslin_stock_spec stock[2] = { strips_as_stock(wanted, plan->spec.strip_length), MUSLIN_STOCK_SPEC_INIT };
    stock[1].kind = MUSLIN_STOCK_YARDAGE;
    stock[1].care = wanted->cloth_care;
    uint32_t warnings = 0;
    size_t kinds = wanted->borders.count > 0 ? 2 : 1;
    if (!worked(desk, muslin_stock_check(stock, sizeof stock[0], kinds, &warnings, &desk->problem)))
        return false;
    plan->warnings |= warnings;
    return true;
}

/* ---- from the strips to the top --------------------------------------------------------------------------------- */

static void put_assumed(json_t *answer, const struct desk *desk, const struct plan_request *wanted,
                        const struct plan *plan)
{
    const struct muslin_stripquilt_spec *spec = &plan->spec;
    json_t *assumed = put_object(answer, "assumed");
    put_count(assumed, "strips_in_hand", spec->strips);
    put_length(assumed, desk, "strip_cut", spec->strip_cut);
    put_text(assumed, "strip_edge", word_of(edge_words, wanted->edge));
    put_text(assumed, "line_up", word_of(align_words, wanted->align));
    put_text(assumed, "line_up_one", wanted->align == MUSLIN_EDGE_PINKED_TIPS ? "tip" : "valley");
    put_text(assumed, "strips_care", word_of(care_words, wanted->strips_care));
    put_text(assumed, "cloth_care", word_of(care_words, wanted->cloth_care));
    put_length(assumed, desk, "strip_length", spec->strip_length);
    put_length(assumed, desk, "seam_allowance", spec->allowance);
    put_length(assumed, desk, "take_up_per_seam", spec->take_up);
    put_length(assumed, desk, "end_trim", spec->end_trim);
    put_length(assumed, desk, "fold_clear", spec->fold_clear);
    put_truth(assumed, "cut_from_one_end", wanted->one_end == 1);
    put_length(assumed, desk, "resquare_loss", spec->resquare_loss);
    put_count(assumed, "resquare_every", spec->resquare_every);
    put_slack(assumed, desk, "cloth_usable_width", wanted->border.usable_width);
    put_share(assumed, desk, "shrinkage", wanted->purchase.shrinkage);
    put_share(assumed, desk, "extra_share", wanted->purchase.extra_share);
    put_length(assumed, desk, "extra", wanted->purchase.extra);
    put_cloth(assumed, desk, "purchase_step", wanted->purchase.step);
}

/* More sets or groups than this are not listed one by one. */
#define LISTED_MAX 1000

static bool put_pressing(json_t *sets, struct desk *desk, const struct plan *plan)
{
    json_t *to_top = put_list(sets, "press_towards_top");
    json_t *to_bottom = put_list(sets, "press_towards_bottom");
    for (int64_t set = 1; set <= plan->quilt.sets && plan->quilt.sets <= LISTED_MAX; set++) {
        int32_t pressing = 0;
        int64_t segments = 0;
        if (!worked(desk, muslin_stripquilt_pressing(&plan->spec, set, &pressing, &segments, &desk->problem)))
            return false;
        json_array_append_new(pressing == MUSLIN_SET_PRESSING_TO_TOP ? to_top : to_bottom, json_integer(set));
    }
    return true;
}

static bool put_sets(json_t *answer, struct desk *desk, struct plan *plan)
{
    const struct muslin_stripquilt *quilt = &plan->quilt;
    struct muslin_seam_spec seam = MUSLIN_SEAM_SPEC_INIT;
    struct muslin_sewn_row row = { .size = sizeof row };
    seam.allowance = plan->spec.allowance;
    seam.take_up = plan->spec.take_up;
    if (!worked(desk, muslin_seam_row_equal(plan->spec.strip_cut, plan->spec.strips_per_set, &seam, &row,
                                            &desk->problem)))
        return false;
    plan->seams_per_set = row.seams;
    json_t *sets = put_object(answer, "sets");
    put_count(sets, "sets", quilt->sets);
    put_count(sets, "strips_per_set", plan->spec.strips_per_set);
    put_count(sets, "strips_used", quilt->strips_used);
    put_count(sets, "seams_per_set", row.seams);
    put_length(sets, desk, "unfinished_width", quilt->set_unfinished);
    put_length(sets, desk, "finished_width", quilt->set_finished);
    put_length(sets, desk, "strip_finished_width", quilt->strip_finished);
    put_share(sets, desk, "share_in_the_seams", row.seam_share);
    return put_pressing(sets, desk, plan);
}

/* A needle that is off by so little is easily overlooked: 1/32 in, or 1 mm for people who measure so. */
static muslin_len small_slip(const struct desk *desk)
{
    bool metric = desk->common.units == UNITS_CM || desk->common.units == UNITS_MM;
    return metric ? MUSLIN_TICKS_PER_MM : MUSLIN_TICKS_PER_INCH / 32;
}

static bool put_check(json_t *answer, struct desk *desk, const struct plan *plan)
{
    struct muslin_seam_spec seam = MUSLIN_SEAM_SPEC_INIT;
    struct muslin_sewn_row trio = { .size = sizeof trio };
    muslin_len slip = small_slip(desk);
    muslin_len per_seam = 0;
    muslin_len slips = 0;
    seam.allowance = plan->spec.allowance;
    seam.take_up = plan->spec.take_up;
    if (!worked(desk, muslin_seam_row_equal(plan->spec.strip_cut, 3, &seam, &trio, &desk->problem)))
        return false;
    if (!worked(desk, muslin_length_multiply(slip, 2, &per_seam))) /* a seam has two allowances */
        return false;
    if (plan->seams_per_set > 0 &&
        !worked(desk, muslin_seam_error_total(per_seam, plan->seams_per_set, &slips, &desk->problem)))
        return false;
    json_t *check = put_object(answer, "check");
    put_length(check, desk, "trio_unfinished_width", trio.unfinished);
    put_length(check, desk, "trio_centre_finished_width", plan->quilt.strip_finished);
    put_length(check, desk, "set_unfinished_width", plan->quilt.set_unfinished);
    put_length(check, desk, "needle_off_by", slip);
    put_length(check, desk, "error_per_seam", per_seam);
    put_length(check, desk, "error_of_a_set", slips);
    return true;
}

/* Cuts beyond this many stretches between squarings are not listed one by one. */
#define STRETCHES_MAX 6

/* From one end: so many cuts, then the edge is squared again, and so on. Empty when that is never needed. */
static void put_cuts_between_squarings(json_t *segments, const struct plan *plan)
{
    int64_t every = plan->spec.resquare_every;
    int64_t left = plan->quilt.segments_per_end;
    json_t *cuts = put_list(segments, "cuts_between_squarings");
    if (plan->quilt.resquarings == 0 || plan->spec.resquare_loss == 0)
        return;
    for (; left > every && json_array_size(cuts) < STRETCHES_MAX; left -= every)
        json_array_append_new(cuts, json_integer(every));
    if (json_array_size(cuts) < STRETCHES_MAX)
        json_array_append_new(cuts, json_integer(left));
    else
        json_array_clear(cuts);
}

/* One top with segments cut so wide, of as many strips as it takes; all 0 where there is none. */
static struct muslin_stripquilt cut_at(const struct plan *plan, muslin_len segment_cut, uint32_t flags)
{
    struct muslin_stripquilt quilt = { .size = (uint32_t)sizeof quilt };
    struct muslin_stripquilt_spec spec = plan->spec;
    spec.flags |= flags;
    spec.segment_cut = segment_cut;
    spec.turning = MUSLIN_TURNING_NONE; /* what is sewn of wider segments is trimmed before it is turned */
    spec.strips = MUSLIN_COUNT_MAX;
    spec.tops = 1;
    (void)muslin_stripquilt_plan(&spec, &quilt, NULL);
    return quilt;
}

/* Segments whose width lies between two marks are cut to the first mark at which a set gives as many. Where none does,
 * they are told as they are, and what comes of the finest mark. */
static void find_mark(const struct desk *desk, struct plan *plan)
{
    const muslin_len exact = plan->quilt.segment_cut;
    muslin_len cut = up_to_mark(desk, exact, 0);
    for (size_t finer = 1; cut >= 0; cut = up_to_mark(desk, exact, finer++)) {
        plan->marked = cut_at(plan, cut, 0);
        if (plan->marked.segments_per_set == plan->quilt.segments_per_set)
            return;
        plan->finest = plan->marked;
        plan->finest.segment_cut = cut;
    }
    plan->marked = cut_at(plan, exact, 0);
}

/* What a set gives when nothing is kept clear and it is cut straight through, across the fold; 0: that is not asked. */
static int64_t straight_through(const struct plan *plan)
{
    if ((plan->spec.flags & MUSLIN_YIELD_FROM_ONE_END) != 0 || plan->spec.fold_clear > 0)
        return 0;
    return cut_at(plan, plan->marked.segment_cut, MUSLIN_YIELD_FROM_ONE_END).segments_per_set;
}

/* The one width to cut at. */
static void put_mark(json_t *segments, const struct desk *desk, const struct plan *plan)
{
    const struct muslin_stripquilt *marked = &plan->marked;
    put_length(segments, desk, "cut_at", marked->segment_cut);
    if (marked->segment_cut > plan->quilt.segment_cut)
        put_length(segments, desk, "a_block_is_sewn_so_wide", marked->block_unfinished_width);
    if (marked->segment_cut != plan->quilt.segment_cut || plan->finest.segment_cut == 0)
        return;
    put_length(segments, desk, "finest_mark", plan->finest.segment_cut);
    put_count(segments, "finest_mark_gives", plan->finest.segments_per_set);
}

static void put_segments(json_t *answer, const struct desk *desk, const struct plan *plan)
{
    const struct muslin_stripquilt *quilt = &plan->quilt;
    json_t *segments = put_object(answer, "segments");
    put_length(segments, desk, "segment_cut", quilt->segment_cut);
    put_mark(segments, desk, plan);
    put_length(segments, desk, "segment_finished_width", quilt->segment_finished);
    put_count(segments, "from_each_set", quilt->segments_per_set);
    put_count(segments, "from_each_end", quilt->segments_per_end);
    if (straight_through(plan) > quilt->segments_per_set)
        put_count(segments, "from_each_set_straight_through", straight_through(plan));
    put_count(segments, "squared_again_per_set", quilt->resquarings);
    put_cuts_between_squarings(segments, plan);
    put_count(segments, "stacks", quilt->sets);
    put_count(segments, "used", quilt->segments);
    put_count(segments, "left", quilt->segments_left);
    put_count(segments, "from_the_first_stacks", quilt->stack_high);
    put_count(segments, "first_stacks", quilt->stacks_high);
    put_count(segments, "from_each_other_stack", quilt->stack_low);
}

/* ---- which stacks meet ------------------------------------------------------------------------------------------ */

static void put_group(json_t *answer, const struct muslin_block_group *group)
{
    put_count(answer, "first_block", group->first_block);
    put_count(answer, "last_block", group->first_block + group->blocks - 1);
    put_count(answer, "blocks", group->blocks);
    json_t *stacks = put_list(answer, "stacks");
    json_t *turned = put_list(answer, "turn_end_for_end");
    json_t *not_nesting = put_list(answer, "not_nesting");
    for (int32_t j = 0; j < group->segments; j++) {
        json_array_append_new(stacks, json_integer(group->sets[j]));
        if ((group->turned >> j & 1u) != 0)
            json_array_append_new(turned, json_integer(j + 1));
        if ((group->not_nesting >> j & 1u) != 0)
            json_array_append_new(not_nesting, json_pack("[i,i]", j + 1, j + 2));
    }
    put_truth(answer, "repeats_a_set", group->repeats == 1);
    put_text(answer, "first_segment_pressed",
             group->first_pressing == MUSLIN_SET_PRESSING_TO_TOP ? "towards_top" : "towards_bottom");
}

static bool put_groups(json_t *blocks, struct desk *desk, const struct plan *plan)
{
    static const size_t row_size = sizeof(struct muslin_block_group);
    size_t count = 0;
    if (!worked(desk, muslin_stripquilt_groups(&plan->spec, NULL, row_size, 0, &count, &desk->problem)))
        return false;
    put_count(blocks, "different_pairings", (int64_t)count);
    json_t *groups = put_list(blocks, "groups");
    if (count > LISTED_MAX)
        return true;
    struct muslin_block_group rows[LISTED_MAX];
    if (!worked(desk, muslin_stripquilt_groups(&plan->spec, rows, row_size, LISTED_MAX, &count, &desk->problem)))
        return false;
    for (size_t i = 0; i < count; i++)
        put_group(append_object(groups), &rows[i]);
    return true;
}

static bool put_blocks(json_t *answer, struct desk *desk, const struct plan *plan)
{
    const struct muslin_stripquilt *quilt = &plan->quilt;
    json_t *blocks = put_object(answer, "blocks");
    put_count(blocks, "blocks", quilt->blocks);
    put_count(blocks, "segments_per_block", plan->spec.segments_per_block);
    put_length(blocks, desk, "unfinished_width", quilt->block_unfinished_width);
    put_length(blocks, desk, "unfinished_height", quilt->block_unfinished_height);
    put_length(blocks, desk, "finished_width", quilt->block_finished_width);
    put_length(blocks, desk, "finished_height", quilt->block_finished_height);
    put_truth(blocks, "square", quilt->block_square == 1);
    put_count(blocks, "segments_turned", quilt->segments_turned);
    put_count(blocks, "places_not_nesting", quilt->places_not_nesting);
    return put_groups(blocks, desk, plan);
}

/* ---- the top ---------------------------------------------------------------------------------------------------- */

/* Rows and columns of a layout beyond this are not drawn; the pattern goes on in the same way. */
#define DRAWN_MAX 36

static bool put_layout(json_t *top, struct desk *desk, const struct muslin_stripquilt_spec *spec)
{
    json_t *rows = put_list(top, "quarter_turns");
    for (int64_t row = 0; row < spec->rows && row < DRAWN_MAX; row++) {
        json_t *turns = json_array();
        json_array_append_new(rows, turns);
        for (int64_t column = 0; column < spec->columns && column < DRAWN_MAX; column++) {
            int32_t quarter_turns = 0;
            if (!worked(desk, muslin_setting_turn(spec->turning, column, row, &quarter_turns, &desk->problem)))
                return false;
            json_array_append_new(turns, json_integer(quarter_turns));
        }
    }
    return true;
}

static bool put_top(json_t *answer, struct desk *desk, const struct plan *plan)
{
    const struct muslin_stripquilt *quilt = &plan->quilt;
    json_t *top = put_object(answer, "top");
    put_count(top, "tops", quilt->tops);
    put_count(top, "columns", plan->spec.columns);
    put_count(top, "rows", plan->spec.rows);
    put_count(top, "blocks", quilt->blocks_per_top);
    put_count(top, "blocks_turned", quilt->blocks_turned);
    put_text(top, "turning", word_of(turning_words, plan->spec.turning));
    put_length(top, desk, "finished_width", quilt->top_finished_width);
    put_length(top, desk, "finished_length", quilt->top_finished_length);
    put_length(top, desk, "unfinished_width", quilt->top_unfinished_width);
    put_length(top, desk, "unfinished_length", quilt->top_unfinished_length);
    return put_layout(top, desk, &plan->spec);
}

/* ---- left over, and how near the edge --------------------------------------------------------------------------- */

static void put_left_over(json_t *answer, const struct desk *desk, const struct plan *plan)
{
    const struct muslin_stripquilt *quilt = &plan->quilt;
    json_t *left = put_object(answer, "left_over");
    put_count(left, "strips", quilt->strips_left);
    put_count(left, "segments", quilt->segments_left);
    put_count(left, "tops_from_all_strips", quilt->tops_in_hand);
    put_count(left, "strips_missing_for_one_more_top", quilt->strips_for_one_more_top);
    put_spare(left, desk, "of_each_set", plan->marked.strip_left_over);
}

static void put_edges(json_t *answer, const struct desk *desk, const struct plan *plan)
{
    const struct muslin_stripquilt *marked = &plan->marked;
    json_t *edges = put_object(answer, "edges");
    put_least(edges, desk, "shortest_strip_that_gives_as_many", marked->strip_least);
    put_slack(edges, desk, "strip_may_be_shorter_by", marked->strip_shorter_by);
    put_least(edges, desk, "strip_longer_for_more_by", marked->strip_longer_for_more);
    if (plan->with_binding)
        put_spare(edges, desk, "binding_strips_may_be_shorter_by", plan->bound.narrower_by);
    if (plan->with_backing)
        put_spare(edges, desk, "backing_cloth_may_be_narrower_by", plan->backed.narrower_by);
}

/* Some warnings are said in the plan's own words, where it knows more than the library's sentence; that a quilt is
 * small is a caution of every plan, and said once more only where no border makes it larger. */
static void put_plan_warnings(json_t *answer, const struct plan_request *wanted, const struct plan *plan)
{
    uint32_t own = MUSLIN_WARN_NEST_CONFLICT | MUSLIN_WARN_DIAGONAL_STRETCH;
    if (wanted->borders.count > 0)
        own |= MUSLIN_WARN_SMALL_QUILT;
    put_warnings(answer, plan->warnings & ~own);
    json_t *list = json_object_get(answer, "warnings");
    if (plan->quilt.segments_turned > 0)
        json_array_append_new(list, json_string("Some segments are turned end for end, so that the seams inside their "
                                                "block nest; their prints then run the other way."));
    if (plan->quilt.places_not_nesting > 0)
        json_array_append_new(list, json_string("Some seams inside blocks do not nest: pin those named above."));
    if ((plan->warnings & MUSLIN_WARN_DIAGONAL_STRETCH) != 0)
        json_array_append_new(list, json_string("Diagonal joins put a short bias seam into the border: press it "
                                                "without pulling."));
}

static void put_cautions(json_t *answer)
{
    static const char *const cautions[] = {
        "Cutting cannot be undone. Measure the test block and every set, and only then cut.",
        ("Close the guard of the rotary cutter after every cut, cut away from yourself, keep fingers off the ruler's "
         "edge, and store the cutter closed, out of children's reach."),
        "An iron burns: stand it up, mind its cord, and do not leave it on by itself.",
        "Take pins out before they reach the needle: a struck pin or needle can break and fly.",
        "Keep quilts and all other soft bedding out of an infant's sleep space in the first year.",
        "This plan makes no claim that the quilt meets any safety standard; follow the rules where you live.",
    };
    json_t *list = put_list(answer, "cautions");
    for (size_t i = 0; i < sizeof cautions / sizeof cautions[0]; i++)
        json_array_append_new(list, json_string(cautions[i]));
}

/* ---- too few strips --------------------------------------------------------------------------------------------- */

/* What the tops wanted would need, had one strips enough; false when even the most that can be counted are too few. */
static bool plan_with_plenty(struct muslin_stripquilt_spec spec, struct muslin_stripquilt *needed)
{
    spec.strips = MUSLIN_COUNT_MAX;
    spec.tops = spec.tops > 0 ? spec.tops : 1;
    return muslin_stripquilt_plan(&spec, needed, NULL) == MUSLIN_OK;
}

/* A plan that fails for want of strips: what it would take, and what there is. */
static void say_what_is_missing(struct desk *desk, const struct muslin_stripquilt_spec *spec)
{
    struct muslin_stripquilt needed = { .size = sizeof needed };
    struct muslin_harvest_spec harvest_spec = MUSLIN_HARVEST_SPEC_INIT;
    struct muslin_harvest harvest = { .size = sizeof harvest };
    if (desk->failure->status != MUSLIN_ERR_NOT_ENOUGH || !plan_with_plenty(*spec, &needed))
        return;
    harvest_spec.strips = spec->strips;
    harvest_spec.strips_per_set = spec->strips_per_set;
    harvest_spec.segments_per_set = needed.segments_per_set;
    harvest_spec.segments_per_block = spec->segments_per_block;
    harvest_spec.blocks_per_top = needed.blocks_per_top;
    if (muslin_stripset_harvest(&harvest_spec, &harvest, NULL) != MUSLIN_OK)
        return;
    json_t *figures = json_pack("{s:I,s:I,s:I,s:I,s:I,s:I,s:I,s:I,s:I}", "tops", needed.tops, "columns", spec->columns,
                                "rows", spec->rows, "segments", needed.segments, "sets", needed.sets, "strips",
                                needed.strips_used, "in_hand", spec->strips, "blocks", harvest.blocks, "give",
                                harvest.tops);
    char *sentence = sheet_sentence(figures, "For {tops:top} of {columns} by {rows} blocks it takes "
                                             "{segments:segment}: {sets:set}, {strips:strip}. Your {in_hand:strip} "
                                             "make {blocks:block}, enough for {give:top}.");
    snprintf(desk->failure->sentence, sizeof desk->failure->sentence, "%s", sentence);
    snprintf(desk->failure->option, sizeof desk->failure->option, "%s", given(desk, "tops") ? "tops" : "strips");
    free(sentence);
    json_decref(figures);
}

/* ---- the whole plan --------------------------------------------------------------------------------------------- */

static bool put_plan(json_t *answer, struct desk *desk, const struct plan_request *wanted, struct plan *plan)
{
    if (!settle_strips(desk, wanted, plan))
        return false;
    if (!worked(desk, muslin_stripquilt_plan(&plan->spec, &plan->quilt, &desk->problem))) {
        say_what_is_missing(desk, &plan->spec);
        return false;
    }
    find_mark(desk, plan);
    plan->warnings |= plan->quilt.warnings & ~(uint32_t)MUSLIN_WARN_NO_SLACK;
    plan->warnings |= plan->marked.warnings & MUSLIN_WARN_NO_SLACK;
    if (!check_stock(desk, wanted, plan))
        return false;
    put_assumed(answer, desk, wanted, plan);
    if (!put_sets(answer, desk, plan) || !put_check(answer, desk, plan))
        return false;
    put_segments(answer, desk, plan);
    if (!put_blocks(answer, desk, plan) || !put_top(answer, desk, plan) ||
        !put_finishing(answer, desk, wanted, plan))
        return false;
    put_left_over(answer, desk, plan);
    put_edges(answer, desk, plan);
    put_plan_warnings(answer, wanted, plan);
    put_cautions(answer);
    return true;
}

static json_t *answer_plan(const void *request, struct desk *desk)
{
    struct plan plan = { .quilt.size = sizeof plan.quilt };
    json_t *answer = json_object();
    if (put_plan(answer, desk, request, &plan))
        return answer;
    json_decref(answer);
    return NULL;
}

/* ---- options ---------------------------------------------------------------------------------------------------- */

#define AT(member) offsetof(struct plan_request, member)

static const struct option_row plan_options[] = {
    OPTION_HEADING("The strips in hand"),
    { "strips", KIND_COUNT, AT(quilt.strips), MUSLIN_ARG_STRIPS, OPTION_REQUIRED | OPTION_OPERAND, NULL,
      "how many strips" },
    { "strip", KIND_LENGTH, AT(quilt.strip_cut), MUSLIN_ARG_STRIP_CUT, 0, NULL, "their cut width (2 1/2 in)" },
    { "usable", KIND_LENGTHS, AT(usable), MUSLIN_ARG_STRIP_LENGTH, 0, NULL,
      "their usable length, selvages off (40 in); repeat it for strips of different lengths" },
    { "edge", KIND_CHOICE, AT(edge), MUSLIN_ARG_EDGE, 0, edge_words,
      "straight (the usual), or pinked and measured from tip to tip or from valley to valley" },
    { "pink-depth", KIND_LENGTH, AT(pink_depth), MUSLIN_ARG_PINK_DEPTH, 0, NULL,
      "from tip to valley, on one edge (none)" },
    { "align", KIND_CHOICE, AT(align), MUSLIN_ARG_EDGE, 0, align_words,
      "what you line up throughout: tips (the usual) or valleys" },
    { "strips-care", KIND_CHOICE, AT(strips_care), MUSLIN_ARG_CARE_STATE, 0, care_words,
      "unwashed (the usual) or washed" },
    OPTION_HEADING("Sets and segments"),
    { "set", KIND_COUNT, AT(quilt.strips_per_set), MUSLIN_ARG_STRIPS_PER_SET, 0, NULL, "strips in a set (6)" },
    { "segment", KIND_LENGTH, AT(quilt.segment_cut), MUSLIN_ARG_SEGMENT_CUT, 0, NULL,
      "cut size of a segment (the one that makes the block square)" },
    { "trim", KIND_LENGTH, AT(quilt.end_trim), MUSLIN_ARG_END_TRIM, 0, NULL,
      "taken off each end of a set to square it (none)" },
    { "fold-clear", KIND_LENGTH, AT(quilt.fold_clear), MUSLIN_ARG_FOLD_CLEAR, 0, NULL,
      "kept free of cuts in the middle, where the fold was (none)" },
    { "resquare", KIND_LENGTH, AT(quilt.resquare_loss), MUSLIN_ARG_RESQUARE_LOSS, 0, NULL,
      "lost each time the cut edge is squared again (none)" },
    { "resquare-every", KIND_COUNT, AT(quilt.resquare_every), MUSLIN_ARG_RESQUARE_EVERY, 0, NULL,
      "cuts between two squarings (never)" },
    { "one-end", KIND_SWITCH, AT(one_end), MUSLIN_ARG_NONE, 0, NULL, "cut straight through from one end" },
    OPTION_HEADING("Blocks and top"),
    { "block", KIND_COUNT, AT(quilt.segments_per_block), MUSLIN_ARG_SEGMENTS_PER_BLOCK, 0, NULL,
      "segments in a block (2)" },
    { "columns", KIND_COUNT, AT(quilt.columns), MUSLIN_ARG_COLUMNS, OPTION_REQUIRED, NULL, "blocks across" },
    { "rows", KIND_COUNT, AT(quilt.rows), MUSLIN_ARG_QUILT_ROWS, OPTION_REQUIRED, NULL, "blocks down" },
    { "tops", KIND_COUNT, AT(quilt.tops), MUSLIN_ARG_TOPS, 0, NULL, "tops wanted (as many as the strips give)" },
    { "turn", KIND_CHOICE, AT(quilt.turning), MUSLIN_ARG_TURNING, 0, turning_words,
      "turn every other block: quarter (the usual, square blocks only), half or none" },
    { "square", KIND_LENGTH, AT(quilt.square_tolerance), MUSLIN_ARG_SQUARE_TOLERANCE, 0, NULL,
      "a block may be this far from square and still be turned a quarter (1/64 in)" },
    { "nest", KIND_CHOICE, AT(quilt.nesting), MUSLIN_ARG_PRESSING, 0, nesting_words,
      "where pressing alone cannot make seams nest: turn some segments end for end (the usual), or name the "
      "seams that do not nest" },
    OPTION_HEADING("Seams"),
    OPTION_SEAM(plan_request, quilt.allowance, quilt.take_up),
    OPTION_HEADING("Borders"),
    { "border", KIND_TEXTS, AT(borders), MUSLIN_ARG_BORDER_WIDTH, 0, NULL,
      "finished width, then words as wanted: sides-first (the usual), top-first, cornerstones or mitred; straight (the "
      "usual), diagonal or butted joins; lengthwise. From the inside outwards, may be repeated" },
    { "mitre-extra", KIND_LENGTH, AT(border.mitre_extra), MUSLIN_ARG_MITRE_EXTRA, 0, NULL,
      "for handling, added to the least length of each mitred piece (2 in)" },
    { "cloth-width", KIND_LENGTH, AT(border.usable_width), MUSLIN_ARG_USABLE_WIDTH, 0, NULL,
      "usable width of the cloth for borders and binding (40 in)" },
    { "cloth-care", KIND_CHOICE, AT(cloth_care), MUSLIN_ARG_CARE_STATE, 0, care_words,
      "of the border cloth: unwashed (the usual) or washed" },
    OPTION_HEADING("Batting"),
    { "batting", KIND_SWITCH, AT(with_batting), MUSLIN_ARG_NONE, 0, NULL, "plan the batting" },
    { "batting-margin", KIND_LENGTH, AT(batting_margin), MUSLIN_ARG_MARGIN, 0, NULL,
      "beyond the quilt on every side (3 in)" },
    { "batting-roll", KIND_LENGTH, AT(batting.roll_width), MUSLIN_ARG_FABRIC_WIDTH, 0, NULL,
      "width of batting sold by length, to see pieces joined" },
    OPTION_HEADING("Backing"),
    { "backing", KIND_SWITCH, AT(with_backing), MUSLIN_ARG_NONE, 0, NULL, "plan the backing" },
    { "backing-margin", KIND_LENGTH, AT(backing_margin), MUSLIN_ARG_MARGIN, 0, NULL,
      "beyond the quilt on every side (4 in)" },
    { "backing-width", KIND_LENGTH, AT(backing.fabric_width), MUSLIN_ARG_FABRIC_WIDTH, 0, NULL,
      "of the cloth, from edge to edge (40 in)" },
    { "backing-selvage", KIND_LENGTH, AT(backing.selvage), MUSLIN_ARG_SELVAGE, 0, NULL, "cut off each edge (none)" },
    { "backing-seam", KIND_LENGTH, AT(backing.allowance), MUSLIN_ARG_NONE, 0, NULL, "allowance of its seams (1/2 in)" },
    { "backing-trim", KIND_LENGTH, AT(backing.end_loss), MUSLIN_ARG_NONE, 0, NULL,
      "added to each panel's length, for squaring (none)" },
    { "backing-repeat", KIND_LENGTH, AT(backing.repeat), MUSLIN_ARG_REPEAT, 0, NULL,
      "pattern repeat along the cloth (none)" },
    { "backing-print", KIND_CHOICE, AT(backing.print), MUSLIN_ARG_PRINT_DIRECTION, 0, print_words,
      "direction of the print (none)" },
    { "backing-layout", KIND_CHOICE, AT(backing_layout), MUSLIN_ARG_LAYOUT, 0, layout_words,
      "the layout to use (the one that buys least)" },
    OPTION_HEADING("Binding"),
    { "binding", KIND_SWITCH, AT(with_binding), MUSLIN_ARG_NONE, 0, NULL, "plan the binding" },
    { "binding-cut", KIND_LENGTH, AT(binding.binding_cut), MUSLIN_ARG_BINDING_CUT, 0, NULL,
      "cut width of its strips (2 1/2 in)" },
    { "binding-extra", KIND_LENGTH, AT(binding.extra), MUSLIN_ARG_EXTRA, 0, NULL,
      "for the ends and the last join (12 in)" },
    { "binding-join", KIND_CHOICE, AT(binding.join), MUSLIN_ARG_JOIN, 0, join_words,
      "diagonal (the usual), straight or butted (the loss ignored)" },
    { "binding-fold", KIND_CHOICE, AT(binding_width.fold), MUSLIN_ARG_FOLD, 0, fold_words,
      "double (the usual) or single" },
    { "binding-front", KIND_LENGTH, AT(binding_width.front), MUSLIN_ARG_BINDING_FRONT, 0, NULL,
      "finished width on the front, to learn what the back shows" },
    { "thickness", KIND_LENGTH, AT(binding_width.thickness), MUSLIN_ARG_THICKNESS, 0, NULL,
      "of the quilt at its edge, with binding-front (none)" },
    OPTION_HEADING("Buying"),
    { "step", KIND_LENGTH, AT(purchase.step), MUSLIN_ARG_STEP, 0, NULL, "what the shop sells in (1/8 yd)" },
    { "shrinkage", KIND_SHARE, AT(purchase.shrinkage), MUSLIN_ARG_SHRINKAGE, 0, NULL,
      "of cloth that is washed first, such as \"3 %\" (none)" },
    { "extra-share", KIND_SHARE, AT(purchase.extra_share), MUSLIN_ARG_EXTRA_SHARE, 0, NULL,
      "to add for safety, such as \"10 %\" (none)" },
    { "extra", KIND_LENGTH, AT(purchase.extra), MUSLIN_ARG_EXTRA, 0, NULL,
      "to add to each length bought, for a crooked cut in the shop (none)" },
    OPTION_END
};

const struct command plan_command = {
    .name = "plan",
    .about = "a whole strip quilt from a bundle of strips: the main job",
    .operands = "STRIPS",
    .examples = "  muslin plan 42 --columns 3 --rows 3\n"
                "  muslin plan 42 --segment \"6 1/2\" --usable 42 --trim 1/2 --fold-clear 1 \\\n"
                "      --columns 3 --rows 3 --tops 1 --border \"1 in\" \\\n"
                "      --border \"4 in cornerstones\" --batting --backing --binding",
    .options = plan_options,
    .request_size = sizeof(struct plan_request),
    .start = start_plan,
    .answer = answer_plan,
    .show = show_plan
};
