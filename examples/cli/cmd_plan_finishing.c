/* cmd_plan_finishing.c - the second half of a plan: borders, batting, backing, binding, what to buy.
 *
 * SPDX-License-Identifier: MIT */
#include "answer.h"
#include "cmd.h"
#include "plan.h"
#include "words.h"

/* ---- what to buy ------------------------------------------------------------------------------------------------ */

/* One line of the shopping list, up to the shop's step. */
static bool put_buy(json_t *answer, struct desk *desk, const struct plan_request *wanted, const char *what,
                    int64_t number, muslin_len needed)
{
    struct muslin_purchase_spec spec = wanted->purchase;
    struct muslin_purchase purchase = { .size = sizeof purchase };
    spec.needed = needed;
    if (!worked(desk, muslin_fabric_purchase(&spec, &purchase, &desk->problem)))
        return false;
    json_t *line = append_object(json_object_get(answer, "buy"));
    put_text(line, "for", what);
    if (number > 0)
        put_count(line, "number", number);
    put_cloth(line, desk, "needed", purchase.needed);
    put_cloth(line, desk, "with_shrinkage_and_extra", purchase.with_extra);
    put_cloth(line, desk, "bought", purchase.bought);
    put_slack(line, desk, "spare", purchase.spare);
    return true;
}

/* What one top needs, for all tops together. */
static bool put_buy_for_tops(json_t *answer, struct desk *desk, const struct plan_request *wanted,
                             const struct plan *plan, const char *what, int64_t number, muslin_len for_one_top)
{
    muslin_len needed = 0;
    return worked(desk, muslin_length_multiply(for_one_top, plan->quilt.tops, &needed)) &&
           put_buy(answer, desk, wanted, what, number, needed);
}

/* ---- borders ---------------------------------------------------------------------------------------------------- */

/* Cloth for the cornerstones of one border, four squares for each top. */
static bool put_cornerstones(json_t *answer, struct desk *desk, const struct plan_request *wanted,
                             const struct plan *plan, json_t *border, muslin_len cut)
{
    struct muslin_strips_spec spec = MUSLIN_STRIPS_SPEC_INIT;
    struct muslin_strips strips = { .size = sizeof strips };
    spec.pieces = 4 * plan->quilt.tops;
    spec.piece_across = cut;
    spec.strip_cut = cut;
    spec.usable_width = wanted->border.usable_width;
    if (!worked(desk, muslin_fabric_strips(&spec, &strips, &desk->problem)))
        return false;
    put_count(border, "cornerstones", spec.pieces);
    put_count(border, "cornerstone_strips", strips.strips);
    int64_t number = json_integer_value(json_object_get(border, "number"));
    return put_buy(answer, desk, wanted, "cornerstones of border", number, strips.length);
}

static bool put_plan_borders(json_t *answer, struct desk *desk, const struct plan_request *wanted, struct plan *plan)
{
    struct muslin_border_spec spec = wanted->border;
    struct muslin_border borders[TEXTS_MAX];
    spec.unfinished_width = plan->quilt.top_unfinished_width;
    spec.unfinished_length = plan->quilt.top_unfinished_length;
    spec.allowance = plan->spec.allowance;
    spec.take_up = plan->spec.take_up;
    json_t *list = put_list(answer, "borders");
    if (!put_borders(list, desk, &wanted->borders, &spec, borders, &plan->warnings))
        return false;
    plan->finished_width = plan->quilt.top_finished_width;
    plan->finished_length = plan->quilt.top_finished_length;
    for (size_t i = 0; i < wanted->borders.count; i++) {
        const struct muslin_border *border = &borders[i];
        int64_t number = (int64_t)i + 1;
        if (!put_buy_for_tops(answer, desk, wanted, plan, "border", number, border->cloth_length))
            return false;
        if (border->cornerstone_cut != 0 && !put_cornerstones(answer, desk, wanted, plan, json_array_get(list, i),
                                                              border->cornerstone_cut))
            return false;
        plan->finished_width = border->finished_width;
        plan->finished_length = border->finished_length;
    }
    return true;
}

/* ---- batting, backing, binding ---------------------------------------------------------------------------------- */

static bool put_plan_batting(json_t *answer, struct desk *desk, const struct plan_request *wanted,
                             const struct plan *plan)
{
    struct muslin_batting_spec spec = wanted->batting;
    struct muslin_batting batting = { .size = sizeof batting };
    spec.quilt_width = plan->finished_width;
    spec.quilt_length = plan->finished_length;
    if (given(desk, "batting-margin"))
        spec.margin_left = spec.margin_right = spec.margin_top = spec.margin_bottom = wanted->batting_margin;
    json_t *part = put_object(answer, "batting");
    put_length(part, desk, "margin", spec.margin_left);
    return put_batting(part, desk, &spec, &batting);
}

static bool put_plan_backing(json_t *answer, struct desk *desk, const struct plan_request *wanted, struct plan *plan)
{
    struct muslin_backing_spec spec = wanted->backing;
    plan->backed = (struct muslin_backing){ .size = sizeof plan->backed };
    spec.quilt_width = plan->finished_width;
    spec.quilt_length = plan->finished_length;
    spec.step = wanted->purchase.step;
    if (given(desk, "backing-margin"))
        spec.margin_left = spec.margin_right = spec.margin_top = spec.margin_bottom = wanted->backing_margin;
    json_t *backing = put_object(answer, "backing");
    put_length(backing, desk, "margin", spec.margin_left);
    if (!put_backing(backing, desk, &spec, wanted->backing_layout, &plan->backed))
        return false;
    plan->warnings |= plan->backed.warnings;
    return put_buy_for_tops(answer, desk, wanted, plan, "backing", 0, plan->backed.cloth_with_repeat);
}

static bool put_plan_binding(json_t *answer, struct desk *desk, const struct plan_request *wanted, struct plan *plan)
{
    struct muslin_binding_spec spec = wanted->binding;
    struct muslin_binding_width_spec across = wanted->binding_width;
    struct muslin_binding_width width = { .size = sizeof width };
    plan->bound = (struct muslin_binding){ .size = sizeof plan->bound };
    spec.quilt_width = plan->finished_width;
    spec.quilt_length = plan->finished_length;
    spec.strip_length = wanted->border.usable_width;
    spec.step = wanted->purchase.step;
    across.binding_cut = spec.binding_cut;
    json_t *binding = put_object(answer, "binding");
    if (!put_binding(binding, desk, &spec, &plan->bound))
        return false;
    put_text(binding, "fold", word_of(fold_words, across.fold));
    if (given(desk, "binding-front") && !put_binding_width(put_object(binding, "across"), desk, &across, &width))
        return false;
    plan->warnings |= plan->bound.warnings | width.warnings;
    return put_buy_for_tops(answer, desk, wanted, plan, "binding", 0, plan->bound.cloth_length);
}

bool put_finishing(json_t *answer, struct desk *desk, const struct plan_request *wanted, struct plan *plan)
{
    put_list(answer, "buy");
    if (!put_plan_borders(answer, desk, wanted, plan))
        return false;
    put_length(answer, desk, "quilt_finished_width", plan->finished_width);
    put_length(answer, desk, "quilt_finished_length", plan->finished_length);
    plan->with_backing = wanted->with_backing == 1;
    plan->with_binding = wanted->with_binding == 1;
    return (wanted->with_batting == 0 || put_plan_batting(answer, desk, wanted, plan)) &&
           (!plan->with_backing || put_plan_backing(answer, desk, wanted, plan)) &&
           (!plan->with_binding || put_plan_binding(answer, desk, wanted, plan));
}
