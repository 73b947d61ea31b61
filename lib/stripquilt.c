/* stripquilt.c - a whole top from strips: what seam, stripset and setting answer, joined into one plan.
 *
 * SPDX-License-Identifier: MIT */
#include "inside.h"
#include "stripquilt_deal.h"

/* Packaged batting for a crib is 45 x 60 in; a top within 60 in both ways may end up in one (common practice, no
 * source, and meant to warn rather too often). */
#define SMALL_QUILT_SIDE (INT64_C(60) * MUSLIN_TICKS_PER_INCH)

muslin_status muslin_stripquilt_spec_init(struct muslin_stripquilt_spec *spec, uint32_t size)
{
    const struct muslin_stripquilt_spec initial = MUSLIN_STRIPQUILT_SPEC_INIT;
    return msl_init_struct(spec, size, &initial, (uint32_t)sizeof initial, (uint32_t)sizeof initial);
}

/* ---- the request ------------------------------------------------------------------------------------------------- */

/* What the yield alone needs is checked there. */
static void read_wish(struct msl_check *check, struct muslin_stripquilt_spec *spec,
                      const struct muslin_stripquilt_spec *from, int64_t least_strips)
{
    msl_read_struct(check, MUSLIN_ARG_SPEC, spec, (uint32_t)sizeof *spec, (uint32_t)sizeof *spec,
                    MUSLIN_YIELD_FROM_ONE_END, from);
    msl_want_between(check, MUSLIN_ARG_STRIPS, spec->strips, least_strips, MUSLIN_COUNT_MAX);
    msl_want_some_count(check, MUSLIN_ARG_STRIPS_PER_SET, spec->strips_per_set);
    msl_want_between(check, MUSLIN_ARG_SEGMENTS_PER_BLOCK, spec->segments_per_block, 1, MUSLIN_STRIPQUILT_SEGMENTS_MAX);
    msl_want_count(check, MUSLIN_ARG_TOPS, spec->tops);
    msl_want_some_size(check, MUSLIN_ARG_STRIP_CUT, spec->strip_cut);
    msl_want_size(check, MUSLIN_ARG_SEGMENT_CUT, spec->segment_cut);
    msl_want_seam(check, MUSLIN_ARG_SEAM_ALLOWANCE, spec->allowance);
    msl_want_seam(check, MUSLIN_ARG_TAKE_UP, spec->take_up);
    msl_want_choice(check, MUSLIN_ARG_PRESSING, spec->nesting, MUSLIN_NESTING_TURN, MUSLIN_NESTING_NAME);
    msl_want_size(check, MUSLIN_ARG_SQUARE_TOLERANCE, spec->square_tolerance);
}

/* A plan needs strips in hand. */
static void read_spec(struct msl_check *check, struct muslin_stripquilt_spec *spec,
                      const struct muslin_stripquilt_spec *from)
{
    read_wish(check, spec, from, 1);
}

/* ---- the plan, step by step -------------------------------------------------------------------------------------- */

/* A request being answered. */
struct plan {
    struct muslin_stripquilt_spec spec;
    struct muslin_stripquilt found;
    struct msl_deal deal;
};

static muslin_len seam_of(const struct muslin_stripquilt_spec *spec)
{
    return 2 * spec->allowance + spec->take_up;
}

static void find_set(struct msl_check *check, struct plan *plan)
{
    const struct muslin_stripquilt_spec *s = &plan->spec;
    muslin_len seam = seam_of(s);
    if (s->strip_cut <= seam)
        msl_fail(check, MUSLIN_ERR_SEAM_TOO_WIDE, MUSLIN_ARG_STRIP_CUT, s->strip_cut, seam);
    plan->found.strip_finished = s->strip_cut - seam;
    plan->found.set_finished = s->strips_per_set * plan->found.strip_finished;
    plan->found.set_unfinished = plan->found.set_finished + seam;
    msl_want_size(check, MUSLIN_ARG_UNFINISHED, plan->found.set_unfinished);
}

/* The segment cut wished for, or the one with which the segments fill exactly the height of the set. */
static muslin_len segment_cut_of(struct msl_check *check, const struct plan *plan)
{
    const struct muslin_stripquilt_spec *s = &plan->spec;
    muslin_len height = plan->found.set_finished;
    muslin_len segment = height / s->segments_per_block;
    if (s->segment_cut > 0)
        return s->segment_cut;
    if (height - segment * s->segments_per_block > s->square_tolerance)
        msl_fail(check, MUSLIN_ERR_NOT_SQUARE, MUSLIN_ARG_BLOCK_WIDTH, segment * s->segments_per_block, height);
    return segment + seam_of(s);
}

static void find_block(struct msl_check *check, struct plan *plan)
{
    const struct muslin_stripquilt_spec *s = &plan->spec;
    struct muslin_block_spec wanted = MUSLIN_BLOCK_SPEC_INIT;
    struct muslin_block block = { .size = (uint32_t)sizeof block };
    wanted.segment_cut = segment_cut_of(check, plan);
    wanted.set_unfinished = plan->found.set_unfinished;
    wanted.segments = s->segments_per_block;
    wanted.allowance = s->allowance;
    wanted.take_up = s->take_up;
    if (check->status == MUSLIN_OK)
        check->status = muslin_block_from_segments(&wanted, &block, check->problem);
    plan->found.segment_cut = wanted.segment_cut;
    plan->found.segment_finished = block.segment_finished;
    plan->found.block_unfinished_width = block.unfinished_width;
    plan->found.block_unfinished_height = block.unfinished_height;
    plan->found.block_finished_width = block.finished_width;
    plan->found.block_finished_height = block.finished_height;
    plan->found.block_square = block.square;
}

static void find_top(struct msl_check *check, struct plan *plan)
{
    const struct muslin_stripquilt_spec *s = &plan->spec;
    struct muslin_setting_spec wanted = MUSLIN_SETTING_SPEC_INIT;
    struct muslin_setting top = { .size = (uint32_t)sizeof top };
    wanted.block_width = plan->found.block_finished_width;
    wanted.block_height = plan->found.block_finished_height;
    wanted.columns = s->columns;
    wanted.rows = s->rows;
    wanted.allowance = s->allowance;
    wanted.take_up = s->take_up;
    wanted.turning = s->turning;
    wanted.square_tolerance = s->square_tolerance;
    check->status = muslin_setting_straight(&wanted, &top, check->problem);
    plan->found.blocks_per_top = top.blocks;
    plan->found.blocks_turned = top.blocks_turned;
    plan->found.top_finished_width = top.finished_width;
    plan->found.top_finished_length = top.finished_length;
    plan->found.top_unfinished_width = top.unfinished_width;
    plan->found.top_unfinished_length = top.unfinished_length;
    if (top.finished_width <= SMALL_QUILT_SIDE && top.finished_length <= SMALL_QUILT_SIDE)
        plan->found.warnings |= MUSLIN_WARN_SMALL_QUILT;
}

static void find_yield(struct msl_check *check, struct plan *plan)
{
    const struct muslin_stripquilt_spec *s = &plan->spec;
    struct muslin_yield_spec wanted = MUSLIN_YIELD_SPEC_INIT;
    struct muslin_yield yield = { .size = (uint32_t)sizeof yield };
    wanted.flags = s->flags;
    wanted.strip_length = s->strip_length;
    wanted.segment_cut = plan->found.segment_cut;
    wanted.end_trim = s->end_trim;
    wanted.resquare_loss = s->resquare_loss;
    wanted.resquare_every = s->resquare_every;
    wanted.fold_clear = s->fold_clear;
    check->status = muslin_stripset_yield(&wanted, &yield, check->problem);
    if (yield.segments == 0)
        msl_fail(check, MUSLIN_ERR_NO_YIELD, MUSLIN_ARG_STRIP_LENGTH, s->strip_length,
                 s->strip_length + yield.longer_for_more);
    plan->found.segments_per_set = yield.segments;
    plan->found.segments_per_end = yield.per_end;
    plan->found.resquarings = yield.resquarings;
    plan->found.strip_least = yield.least_length;
    plan->found.strip_shorter_by = yield.shorter_by;
    plan->found.strip_longer_for_more = yield.longer_for_more;
    plan->found.strip_left_over = yield.left_over;
    plan->found.warnings |= (uint32_t)yield.warnings;
}

/* What the strips in hand give, and the tops to plan: those wished for, or all, but at least one. */
static void find_tops(struct msl_check *check, struct plan *plan)
{
    const struct muslin_stripquilt_spec *s = &plan->spec;
    struct muslin_harvest_spec wanted = MUSLIN_HARVEST_SPEC_INIT;
    struct muslin_harvest harvest = { .size = (uint32_t)sizeof harvest };
    wanted.strips = s->strips;
    wanted.strips_per_set = s->strips_per_set;
    wanted.segments_per_set = plan->found.segments_per_set;
    wanted.segments_per_block = s->segments_per_block;
    wanted.blocks_per_top = plan->found.blocks_per_top;
    check->status = muslin_stripset_harvest(&wanted, &harvest, check->problem);
    plan->found.sets_in_hand = harvest.sets;
    plan->found.tops_in_hand = harvest.tops;
    plan->found.strips_for_one_more_top = harvest.strips_for_one_more;
    plan->found.tops = s->tops > 0 ? s->tops : harvest.tops;
    if (plan->found.tops > harvest.tops || harvest.tops == 0)
        msl_fail(check, MUSLIN_ERR_NOT_ENOUGH, MUSLIN_ARG_TOPS, s->tops > 0 ? s->tops : 1, harvest.tops);
}

/* The tops are no more than the strips give, so their segments are at most 2^61. */
static void find_stacks(struct plan *plan)
{
    struct muslin_stripquilt *found = &plan->found;
    found->blocks = found->tops * found->blocks_per_top;
    found->segments = found->blocks * plan->spec.segments_per_block;
    found->sets = msl_divided_up(found->segments, found->segments_per_set);
    found->segments_left = found->sets * found->segments_per_set - found->segments;
    found->strips_used = found->sets * plan->spec.strips_per_set;
    found->strips_left = plan->spec.strips - found->strips_used;
    found->stack_low = found->segments / found->sets;
    found->stack_high = msl_divided_up(found->segments, found->sets);
    found->stacks_high = found->stack_high > found->stack_low ? found->segments % found->sets : found->sets;
    if (found->sets < plan->spec.segments_per_block)
        found->warnings |= MUSLIN_WARN_SET_REPEATS;
}

static void find_dealing(struct plan *plan)
{
    struct muslin_stripquilt *found = &plan->found;
    plan->deal = msl_deal_of(plan->spec.segments_per_block, found->blocks, found->sets);
    found->groups = msl_deal_groups(&plan->deal);
    int64_t wrong = msl_deal_wrong(&plan->deal);
    if (plan->spec.nesting == MUSLIN_NESTING_TURN)
        found->segments_turned = wrong;
    else
        found->places_not_nesting = msl_deal_clashes(&plan->deal);
    if (wrong > 0)
        found->warnings |= MUSLIN_WARN_NEST_CONFLICT;
}

/* What one set gives, and a top takes. Each step needs what those before it found. */
static void find_set_and_top(struct msl_check *check, struct plan *plan)
{
    if (check->status == MUSLIN_OK)
        find_set(check, plan);
    if (check->status == MUSLIN_OK)
        find_block(check, plan);
    if (check->status == MUSLIN_OK)
        find_top(check, plan);
    if (check->status == MUSLIN_OK)
        find_yield(check, plan);
}

static void find_plan(struct msl_check *check, struct plan *plan)
{
    find_set_and_top(check, plan);
    if (check->status == MUSLIN_OK)
        find_tops(check, plan);
    if (check->status != MUSLIN_OK)
        return;
    find_stacks(plan);
    find_dealing(plan);
}

/* ---- public ------------------------------------------------------------------------------------------------------ */

muslin_status muslin_stripquilt_plan(const struct muslin_stripquilt_spec *spec, struct muslin_stripquilt *out,
                                     struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct plan plan = { 0 };
    read_spec(&check, &plan.spec, spec);
    msl_want_output(&check, out, (uint32_t)sizeof *out);
    find_plan(&check, &plan);
    if (check.status == MUSLIN_OK)
        msl_write_struct(out, &plan.found, (uint32_t)sizeof plan.found);
    return check.status;
}

/* A top has less than 2^36 segments, and as many strips as can be counted give less than 2^61. */
static int64_t strips_for(struct msl_check *check, const struct plan *plan)
{
    const struct muslin_stripquilt_spec *s = &plan->spec;
    const int64_t tops = s->tops > 0 ? s->tops : 1;
    const int64_t segments = plan->found.blocks_per_top * s->segments_per_block;
    const int64_t most = MUSLIN_COUNT_MAX / s->strips_per_set * plan->found.segments_per_set / segments;
    if (tops > most) {
        msl_fail(check, MUSLIN_ERR_TOO_MANY, MUSLIN_ARG_TOPS, tops, most);
        return 0;
    }
    return msl_divided_up(tops * segments, plan->found.segments_per_set) * s->strips_per_set;
}

muslin_status muslin_stripquilt_strips_needed(const struct muslin_stripquilt_spec *spec, int64_t *strips,
                                              struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct plan plan = { 0 };
    read_wish(&check, &plan.spec, spec, 0);
    msl_want_pointer(&check, MUSLIN_ARG_OUTPUT, strips);
    find_set_and_top(&check, &plan);
    const int64_t found = check.status == MUSLIN_OK ? strips_for(&check, &plan) : 0;
    if (check.status == MUSLIN_OK)
        *strips = found;
    return check.status;
}

muslin_status muslin_stripquilt_groups(const struct muslin_stripquilt_spec *spec, struct muslin_block_group *rows,
                                       size_t row_size, size_t capacity, size_t *count, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct plan plan = { 0 };
    read_spec(&check, &plan.spec, spec);
    find_plan(&check, &plan);
    size_t groups = (size_t)plan.found.groups;
    if (msl_rows_wanted(&check, rows, row_size, (uint32_t)sizeof *rows, capacity, count, groups) == 0)
        return check.status;
    int64_t block = 0;
    for (size_t i = 0; i < groups; i++) {
        struct muslin_block_group group = msl_deal_group(&plan.deal, block, plan.spec.nesting);
        msl_write_row(rows, row_size, i, &group, (uint32_t)sizeof group);
        block += group.blocks;
    }
    return MUSLIN_OK;
}

muslin_status muslin_stripquilt_pressing(const struct muslin_stripquilt_spec *spec, int64_t set, int32_t *pressing,
                                         int64_t *segments, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct plan plan = { 0 };
    read_spec(&check, &plan.spec, spec);
    msl_want_pointer(&check, MUSLIN_ARG_OUTPUT, pressing);
    find_plan(&check, &plan);
    if (check.status == MUSLIN_OK && (set < 1 || set > plan.found.sets))
        msl_fail(&check, MUSLIN_ERR_INDEX, MUSLIN_ARG_INDEX, set, plan.found.sets);
    if (check.status != MUSLIN_OK)
        return check.status;
    int as_first = msl_deal_pressing(&plan.deal, set - 1) == msl_deal_pressing(&plan.deal, 0);
    *pressing = as_first ? MUSLIN_SET_PRESSING_TO_TOP : MUSLIN_SET_PRESSING_TO_BOTTOM;
    if (segments != NULL)
        *segments = msl_deal_height(&plan.deal, set - 1);
    return MUSLIN_OK;
}
