/* plan.h - what the two halves of the plan share: strips to top, and borders to binding.
 *
 * SPDX-License-Identifier: MIT */
#ifndef CLI_PLAN_H
#define CLI_PLAN_H

#include "command.h"

struct plan_request {
    struct muslin_stripquilt_spec quilt;
    struct lengths usable;
    struct texts borders;
    struct muslin_border_spec border; /* what all borders share */
    struct muslin_batting_spec batting;
    struct muslin_backing_spec backing;
    struct muslin_binding_spec binding;
    struct muslin_binding_width_spec binding_width;
    struct muslin_purchase_spec purchase;
    muslin_len pink_depth;
    muslin_len batting_margin;
    muslin_len backing_margin;
    int32_t edge;
    int32_t align;
    int32_t strips_care;
    int32_t cloth_care;
    int32_t one_end;
    int32_t with_batting;
    int32_t with_backing;
    int32_t with_binding;
    int32_t backing_layout;
};

/* The plan as it grows. */
struct plan {
    struct muslin_stripquilt_spec spec;
    struct muslin_stripquilt quilt;
    struct muslin_stripquilt marked; /* one top of it, with segments cut on a mark of the ruler */
    struct muslin_stripquilt finest; /* where no mark gives as many of a set: what the finest one gives, else all 0 */
    int64_t seams_per_set;
    muslin_len finished_width; /* of the quilt, borders included */
    muslin_len finished_length;
    struct muslin_backing backed;
    struct muslin_binding bound;
    bool with_backing;
    bool with_binding;
    uint32_t warnings;
};

/* Borders, batting, backing, binding, and what to buy for them. */
bool put_finishing(json_t *answer, struct desk *desk, const struct plan_request *wanted, struct plan *plan);

#endif
