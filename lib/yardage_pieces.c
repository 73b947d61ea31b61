/* yardage_pieces.c - what a spec of yardage says, and how each row of a cut list is cut from its fabric.
 *
 * SPDX-License-Identifier: MIT */
#include "yardage_inside.h"

enum {
    KNOWN_FLAGS = MUSLIN_CUTPLAN_NO_PANELS | MUSLIN_CUTPLAN_ONE_HEIGHT | MUSLIN_CUTPLAN_OWN_STRIPS |
                  MUSLIN_CUTPLAN_STACKED | MUSLIN_CUTPLAN_FOLDED
};

/* ---- the spec --------------------------------------------------------------------------------------------------- */

muslin_status muslin_yardage_spec_init(struct muslin_yardage_spec *spec, uint32_t size)
{
    static const struct muslin_yardage_spec initial = MUSLIN_YARDAGE_SPEC_INIT;
    return msl_init_struct(spec, size, &initial, (uint32_t)sizeof initial, (uint32_t)sizeof initial);
}

struct muslin_cutplan_spec msl_plan_spec_of(const struct muslin_yardage_spec *in, muslin_len usable_width,
                                            int32_t print)
{
    struct muslin_cutplan_spec spec = MUSLIN_CUTPLAN_SPEC_INIT;
    spec.flags = in->flags;
    spec.usable_width = usable_width;
    spec.end_loss = in->end_loss;
    spec.resquare_loss = in->resquare_loss;
    spec.resquare_every = in->resquare_every;
    spec.straightening = in->straightening;
    spec.spare_pieces = in->spare_pieces;
    spec.work_limit = in->work_limit;
    spec.print = print;
    return spec;
}

struct muslin_purchase_spec msl_purchase_spec_of(const struct muslin_yardage_spec *in, muslin_len needed)
{
    struct muslin_purchase_spec spec = MUSLIN_PURCHASE_SPEC_INIT;
    spec.needed = needed;
    spec.extra = in->extra;
    spec.step = in->step;
    spec.shrinkage = in->shrinkage;
    spec.extra_share = in->extra_share;
    return spec;
}

/* What is wrong in a purchase of nothing is wrong in its members. */
static void want_purchase(struct msl_check *check, const struct muslin_yardage_spec *in)
{
    const struct muslin_purchase_spec spec = msl_purchase_spec_of(in, 0);
    struct muslin_problem problem = MUSLIN_PROBLEM_INIT;
    struct muslin_purchase bought = { .size = sizeof bought };
    if (check->status == MUSLIN_OK && muslin_fabric_purchase(&spec, &bought, &problem) != MUSLIN_OK)
        msl_fail(check, problem.status, problem.argument, problem.value, problem.limit);
}

void msl_read_yardage_spec(struct msl_check *check, struct muslin_yardage_spec *into,
                           const struct muslin_yardage_spec *from)
{
    msl_read_struct(check, MUSLIN_ARG_SPEC, into, (uint32_t)sizeof *into, (uint32_t)sizeof *into, KNOWN_FLAGS, from);
    if (check->status != MUSLIN_OK)
        return;
    const struct muslin_cutplan_spec plan = msl_plan_spec_of(into, 1, MUSLIN_PRINT_NONE);
    msl_want_plan_spec(check, &plan, 0);
    msl_want_size(check, MUSLIN_ARG_JOIN_LOSS, into->join_loss);
    msl_want_size(check, MUSLIN_ARG_LEAST_PART, into->least_part);
    msl_want_size(check, MUSLIN_ARG_MITRE_EXTRA, into->mitre_extra);
    want_purchase(check, into);
    msl_want_choice(check, MUSLIN_ARG_LONG_PIECES, into->long_pieces, MUSLIN_LONG_PIECES_LENGTHWISE,
                    MUSLIN_LONG_PIECES_JOINED);
    msl_want_pad(check, into->pad);
}

/* ---- how a row is cut ------------------------------------------------------------------------------------------- */

/* Along one strip: a whole one, and what a piece cut across from it may take. */
struct strip_room {
    muslin_len whole;
    muslin_len piece;
};

/* Strips of folded cloth have two layers, and whole ones go round the fold. Where losses take all, the plan refuses
 * what is asked of it: there is no strip, however short. */
static struct strip_room room_of(const struct muslin_yardage_spec *in, muslin_len usable_width)
{
    const int64_t layers = (in->flags & MUSLIN_CUTPLAN_FOLDED) != 0 ? 2 : 1;
    const int64_t share = in->resquare_loss == 0 ? 0 : msl_divided_up(in->resquare_loss, in->resquare_every);
    const muslin_len layer = (usable_width - in->end_loss) / layers;
    const struct strip_room room = { layer < 1 ? 1 : layer * layers, layer - share };
    return room;
}

static int may_be_joined(const struct muslin_solution_cut *cut)
{
    return cut->source == MUSLIN_CUT_SOURCE_PATCH || cut->source == MUSLIN_CUT_SOURCE_MITRED;
}

static void lay_lengthwise(struct muslin_blank_spec *blank, muslin_len across, muslin_len along)
{
    blank->kind = MUSLIN_BLANK_LENGTHWISE;
    blank->cut_width = across;
    blank->cut_length = along;
}

static void lay_joined(struct muslin_blank_spec *blank, muslin_len across, muslin_len along,
                       const struct muslin_yardage_spec *in)
{
    blank->kind = MUSLIN_BLANK_JOINED;
    blank->cut_width = across;
    blank->cut_length = along;
    blank->join_loss = in->join_loss;
    blank->least_part = in->least_part;
}

/* Its print stays along the cloth. */
static void lay_printed(struct muslin_blank_spec *blank, const struct muslin_solution_cut *cut, muslin_len room,
                        const struct muslin_yardage_spec *in)
{
    if (cut->cut_width > room && may_be_joined(cut))
        lay_joined(blank, cut->cut_width, cut->cut_height, in);
    else if (cut->cut_height > room)
        lay_lengthwise(blank, cut->cut_width, cut->cut_height);
}

static void lay_either_way(struct muslin_blank_spec *blank, const struct muslin_solution_cut *cut, muslin_len room,
                           const struct muslin_yardage_spec *in)
{
    const int wide = cut->cut_width > cut->cut_height;
    const muslin_len longer = wide ? cut->cut_width : cut->cut_height;
    const muslin_len shorter = wide ? cut->cut_height : cut->cut_width;
    if (longer <= room)
        blank->flags = MUSLIN_BLANK_MAY_TURN;
    else if (in->long_pieces == MUSLIN_LONG_PIECES_JOINED && may_be_joined(cut))
        lay_joined(blank, longer, shorter, in);
    else
        lay_lengthwise(blank, shorter, longer);
}

/* A row as it is laid out: mitred strips with what is added for handling. */
static struct muslin_solution_cut as_laid(const struct muslin_solution_cut *row, const struct muslin_yardage_spec *in)
{
    struct muslin_solution_cut cut = *row;
    if (cut.source == MUSLIN_CUT_SOURCE_MITRED && cut.cut_width >= cut.cut_height)
        cut.cut_width += in->mitre_extra;
    else if (cut.source == MUSLIN_CUT_SOURCE_MITRED)
        cut.cut_height += in->mitre_extra;
    return cut;
}

struct muslin_blank_spec msl_blank_of_cut(const struct muslin_solution *solution, uint64_t row,
                                          const struct muslin_yardage_spec *in)
{
    const struct muslin_solution_cut cut = as_laid((const struct muslin_solution_cut *)solution->cuts.rows + row, in);
    const uint32_t fabric = (uint32_t)muslin_id_number(cut.fabric);
    const struct strip_room room = room_of(in, solution->widths[fabric - 1]);
    struct muslin_blank_spec blank = MUSLIN_BLANK_SPEC_INIT;
    blank.cut_width = cut.cut_width;
    blank.cut_length = cut.cut_height;
    blank.count = cut.count;
    blank.label = (int64_t)row;
    if (cut.source == MUSLIN_CUT_SOURCE_SET_STRIP) {
        blank.kind = MUSLIN_BLANK_JOINED;
        blank.cut_width = room.whole;
    } else if (cut.pitch != 0) {
        blank.kind = MUSLIN_BLANK_SLOPED;
        blank.cut_width = cut.pitch;
        blank.run_in = cut.cut_width - cut.pitch;
    } else if (solution->quilt->fabrics[fabric - 1].print == MUSLIN_PRINT_NONE) {
        lay_either_way(&blank, &cut, room.piece, in);
    } else {
        lay_printed(&blank, &cut, room.piece, in);
    }
    return blank;
}

/* ---- the rows of a fabric --------------------------------------------------------------------------------------- */

struct msl_span msl_cuts_of(const struct muslin_solution *solution, uint32_t fabric)
{
    const struct muslin_solution_cut *cuts = solution->cuts.rows;
    struct msl_span span = { 0 };
    while (span.first < solution->cuts.used && (uint32_t)muslin_id_number(cuts[span.first].fabric) < fabric)
        span.first++;
    while (span.first + span.count < solution->cuts.used &&
           (uint32_t)muslin_id_number(cuts[span.first + span.count].fabric) == fabric)
        span.count++;
    return span;
}

muslin_status muslin_yardage_pieces(const struct muslin_solution *solution, muslin_id fabric,
                                    const struct muslin_yardage_spec *spec, struct muslin_blank_spec *rows,
                                    size_t row_size, size_t capacity, size_t *count, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct muslin_yardage_spec in;
    msl_want_solution(&check, solution);
    msl_read_yardage_spec(&check, &in, spec);
    if (check.status != MUSLIN_OK)
        return check.status;
    const uint32_t number = msl_want_id(&check, solution->quilt, MUSLIN_SORT_FABRIC, MUSLIN_ARG_FABRIC, fabric);
    const struct msl_span span = msl_cuts_of(solution, number);
    if (!msl_rows_wanted(&check, rows, row_size, (uint32_t)sizeof *rows, capacity, count, (size_t)span.count))
        return check.status;
    for (uint64_t i = 0; i < span.count; i++) {
        const struct muslin_blank_spec blank = msl_blank_of_cut(solution, span.first + i, &in);
        msl_write_row(rows, row_size, (size_t)i, &blank, (uint32_t)sizeof blank);
    }
    return MUSLIN_OK;
}
