/* finishing_backing.c - backing: every layout of panels worked out and compared.
 *
 * SPDX-License-Identifier: MIT
 *
 * Words: `across` is measured over the panels' widths, `along` over their lengths. In a turned layout the panels'
 * length runs across the quilt, so `across` is the quilt's length there. */
#include "finishing_inside.h"

static const struct muslin_backing_spec backing_start = MUSLIN_BACKING_SPEC_INIT;

enum { FIRST_LAYOUT = MUSLIN_BACKING_LAYOUT_ONE_WIDTH, LAST_LAYOUT = MUSLIN_BACKING_LAYOUT_INSERT_ACROSS };

muslin_status muslin_backing_spec_init(struct muslin_backing_spec *spec, uint32_t size)
{
    return msl_init_struct(spec, size, &backing_start, (uint32_t)sizeof backing_start,
                           (uint32_t)sizeof backing_start);
}

/* ---- the request ----------------------------------------------------------------------------------------------- */

/* The usable width; selvages must leave some. 0 after a failure. */
static muslin_len usable_of(struct msl_check *check, const struct muslin_backing_spec *spec)
{
    msl_want_some_size(check, MUSLIN_ARG_FABRIC_WIDTH, spec->fabric_width);
    if (check->status != MUSLIN_OK)
        return 0;
    msl_want_between(check, MUSLIN_ARG_SELVAGE, spec->selvage, 0, (spec->fabric_width - 1) / 2);
    return check->status == MUSLIN_OK ? spec->fabric_width - 2 * spec->selvage : 0;
}

void msl_backing_read(struct msl_check *check, struct msl_backing *into, const struct muslin_backing_spec *from)
{
    struct muslin_backing_spec *spec = &into->spec;
    msl_read_struct(check, MUSLIN_ARG_SPEC, spec, (uint32_t)sizeof *spec, (uint32_t)sizeof *spec,
                    MUSLIN_BACKING_ROUND_PANELS, from);
    into->needed_width = msl_with_margins(check, MUSLIN_ARG_QUILT_WIDTH, spec->quilt_width, spec->margin_left,
                                          spec->margin_right);
    into->needed_length = msl_with_margins(check, MUSLIN_ARG_QUILT_LENGTH, spec->quilt_length, spec->margin_top,
                                           spec->margin_bottom);
    into->usable = usable_of(check, spec);
    msl_want_seam(check, MUSLIN_ARG_SEAM_ALLOWANCE, spec->allowance);
    msl_want_size(check, MUSLIN_ARG_END_TRIM, spec->end_loss);
    msl_want_size(check, MUSLIN_ARG_REPEAT, spec->repeat);
    msl_want_some_size(check, MUSLIN_ARG_STEP, spec->step);
    msl_want_choice(check, MUSLIN_ARG_PRINT_DIRECTION, spec->print, MUSLIN_PRINT_NONE, MUSLIN_PRINT_STRIPE_ACROSS);
    msl_want_pad(check, spec->pad);
    if (check->status == MUSLIN_OK)
        (void)muslin_print_may_turn(spec->print, 1, &into->may_turn, NULL);
}

/* ---- one layout, before it is laid on the quilt ---------------------------------------------------------------- */

/* What must be covered, and with what. */
struct bed {
    muslin_len across;       /* needed */
    muslin_len usable;       /* u, width of a panel */
    muslin_len seam;         /* q */
    muslin_len panel_length; /* of each panel as cut */
};

struct panels {
    int64_t panels;
    int64_t pieces;
    int64_t seams;
    int64_t strips;           /* that an insert is joined from, else 0 */
    muslin_len joined;        /* across, as sewn */
    muslin_len strip_cut;     /* of a side panel or an insert, else 0 */
    muslin_len least_usable;  /* the narrowest usable width with the same panels and strips */
};

/* Each of these fills *panels and returns 1, or returns 0 when the layout does not serve. A layout with seams is for a
 * need that one width does not cover; so u stays below `across` there, however much narrower the cloth becomes. */

static int lay_one_width(const struct bed *bed, struct panels *panels)
{
    if (bed->across > bed->usable)
        return 0;
    panels->panels = 1;
    panels->pieces = 1;
    panels->joined = bed->usable;
    panels->least_usable = bed->across;
    return 1;
}

/* n u - 2 q (n - 1) >= across, so n >= (across - 2 q) / (u - 2 q). When u <= 2 q, no n gives more than one width. */
static int lay_seams(const struct bed *bed, struct panels *panels)
{
    const muslin_len lost = 2 * bed->seam;
    if (bed->across <= bed->usable || bed->usable <= lost)
        return 0;
    int64_t n = msl_divided_up(bed->across - lost, bed->usable - lost);
    panels->panels = n;
    panels->pieces = n;
    panels->seams = n - 1;
    panels->joined = n * bed->usable - panels->seams * lost;
    panels->least_usable = msl_divided_up(bed->across + panels->seams * lost, n);
    return 1;
}

/* The narrowest u whose sides, 2 c together, still come from one panel. With c = (K - u) / 2 up, 2 c <= u holds just
 * when K - u <= 2 floor(u / 2): for even u from K / 2 on, for odd u from (K + 1) / 2 on. Only where K / 2 is itself
 * odd does the half of K not do. */
static muslin_len least_for_paired_sides(muslin_len k)
{
    return msl_divided_up(k, 2) + (k % 4 == 2);
}

/* u + 2 c - 4 q >= across, so with K = across + 4 q the sides are c = (K - u) / 2 wide, up. They come from one further
 * panel while 2 c <= u, else from one each while c <= u, that is u >= K / 3. */
static int lay_centre(const struct bed *bed, struct panels *panels)
{
    const muslin_len k = bed->across + 4 * bed->seam;
    if (bed->across <= bed->usable || k > 3 * bed->usable)
        return 0;
    muslin_len side = msl_divided_up(k - bed->usable, 2);
    int paired = 2 * side <= bed->usable;
    panels->panels = paired ? 2 : 3;
    panels->pieces = 3;
    panels->seams = 2;
    panels->joined = bed->usable + 2 * side - 4 * bed->seam;
    panels->strip_cut = side;
    panels->least_usable = paired ? least_for_paired_sides(k) : msl_divided_up(k, 3);
    return 1;
}

/* Strips as long as the cloth is wide, joined until they are as long as the panel: n u - 2 q (n - 1) >= length. */
static int64_t strips_for(const struct bed *bed)
{
    const muslin_len lost = 2 * bed->seam;
    if (bed->panel_length <= bed->usable)
        return 1;
    return msl_divided_up(bed->panel_length - lost, bed->usable - lost);
}

/* The panel is split and a strip x let in: u + x - 4 q = across. With K = across + 4 q, x = K - u is at most u / 2
 * while u >= 2 K / 3; then u is above 2 q, so the strips can be joined. */
static int lay_insert(const struct bed *bed, struct panels *panels)
{
    const muslin_len k = bed->across + 4 * bed->seam;
    const muslin_len insert = k - bed->usable;
    if (bed->across <= bed->usable || 2 * insert > bed->usable)
        return 0;
    int64_t n = strips_for(bed);
    panels->panels = 1;
    panels->pieces = 2 + n;
    panels->seams = 2 + (n - 1);
    panels->strips = n;
    panels->joined = bed->across;
    panels->strip_cut = insert;
    muslin_len for_width = msl_divided_up(2 * k, 3);
    muslin_len for_length = msl_divided_up(bed->panel_length + (n - 1) * 2 * bed->seam, n);
    panels->least_usable = msl_greater(for_width, for_length);
    return 1;
}

static int lay(int32_t layout, const struct bed *bed, struct panels *panels)
{
    switch (layout) {
    case MUSLIN_BACKING_LAYOUT_ONE_WIDTH:
    case MUSLIN_BACKING_LAYOUT_ONE_WIDTH_TURNED:
        return lay_one_width(bed, panels);
    case MUSLIN_BACKING_LAYOUT_SEAMS_ALONG:
    case MUSLIN_BACKING_LAYOUT_SEAMS_ACROSS:
        return lay_seams(bed, panels);
    case MUSLIN_BACKING_LAYOUT_CENTRE_ALONG:
    case MUSLIN_BACKING_LAYOUT_CENTRE_ACROSS:
        return lay_centre(bed, panels);
    default:
        return lay_insert(bed, panels);
    }
}

/* ---- on the quilt, and bought ---------------------------------------------------------------------------------- */

/* The layouts come in pairs, first with the cloth's length along the quilt's, then turned. */
static int32_t is_turned(int32_t layout)
{
    return layout % 2 == 0;
}

/* An insert is cut across the cloth, so its print lies turned beside the panel's, whichever way the panel runs. */
static int shows_print_turned(int32_t layout)
{
    return is_turned(layout) || layout == MUSLIN_BACKING_LAYOUT_INSERT_ALONG;
}

static muslin_len whole_repeats(const struct muslin_backing_spec *spec, muslin_len length)
{
    return spec->repeat == 0 ? length : msl_up_to_step(length, spec->repeat);
}

/* Exact length, then both roundings. Ranges: at most 2^30 panels below 2^32 each, so all stays within
 * MUSLIN_LENGTH_MAX. */
static void buy(const struct muslin_backing_spec *spec, const struct panels *panels, struct muslin_backing *row)
{
    muslin_len insert = panels->strips * whole_repeats(spec, panels->strip_cut);
    row->cloth_length = panels->panels * row->panel_length + insert;
    row->cloth_with_repeat = row->cloth_length + spec->repeat;
    muslin_len on_total = msl_up_to_step(row->cloth_with_repeat, spec->step);
    muslin_len per_panel = panels->panels * msl_up_to_step(row->panel_length, spec->step) +
                           msl_up_to_step(insert, spec->step) + msl_up_to_step(spec->repeat, spec->step);
    int each = (spec->flags & MUSLIN_BACKING_ROUND_PANELS) != 0;
    row->bought = each ? per_panel : on_total;
    row->other_rounding = each ? on_total : per_panel;
}

/* What is bought beyond the need lets each strip of an insert be this much wider, in whole repeats. */
static muslin_len insert_wider_by(const struct muslin_backing_spec *spec, const struct panels *panels,
                                  const struct muslin_backing *row)
{
    muslin_len strips = panels->strips * whole_repeats(spec, panels->strip_cut);
    muslin_len spare = row->bought - row->cloth_with_repeat;
    if ((spec->flags & MUSLIN_BACKING_ROUND_PANELS) != 0)
        spare = msl_up_to_step(strips, spec->step) - strips;
    muslin_len each = (strips + spare) / panels->strips;
    return each - (spec->repeat == 0 ? 0 : each % spec->repeat) - panels->strip_cut;
}

/* Cloth narrower by d keeps its panels and strips down to least_usable; an insert grows by d meanwhile. */
static void find_slack(const struct muslin_backing_spec *spec, const struct bed *bed, const struct panels *panels,
                       struct muslin_backing *row)
{
    row->narrower_by = bed->usable - panels->least_usable;
    if (panels->strips > 0) {
        muslin_len wider = insert_wider_by(spec, panels, row);
        row->narrower_by = msl_lesser(wider, row->narrower_by);
    }
    row->warnings = row->narrower_by == 0 ? MUSLIN_WARN_NO_SLACK : 0;
}

static struct bed bed_for(const struct msl_backing *backing, int32_t turned)
{
    muslin_len along = turned ? backing->needed_width : backing->needed_length;
    struct bed bed = { 0 };
    bed.across = turned ? backing->needed_length : backing->needed_width;
    bed.usable = backing->usable;
    bed.seam = backing->spec.allowance;
    bed.panel_length = whole_repeats(&backing->spec, along + backing->spec.end_loss);
    return bed;
}

static void describe(const struct msl_backing *backing, const struct bed *bed, const struct panels *panels,
                     struct muslin_backing *row)
{
    row->turned = is_turned(row->layout);
    row->needed_width = backing->needed_width;
    row->needed_length = backing->needed_length;
    row->panels = panels->panels;
    row->panel_length = bed->panel_length;
    row->pieces = panels->pieces;
    row->seams = panels->seams;
    row->joined_width = row->turned ? bed->panel_length : panels->joined;
    row->joined_length = row->turned ? panels->joined : bed->panel_length;
    row->strip_cut = panels->strip_cut;
}

void msl_backing_lay(const struct msl_backing *backing, int32_t layout, struct muslin_backing *row)
{
    const struct muslin_backing nothing = { 0 };
    struct bed bed = bed_for(backing, is_turned(layout));
    struct panels panels = { 0 };
    *row = nothing;
    row->layout = layout;
    if (shows_print_turned(layout) && backing->may_turn == 0)
        return;
    row->possible = lay(layout, &bed, &panels);
    if (row->possible == 0)
        return;
    describe(backing, &bed, &panels, row);
    buy(&backing->spec, &panels, row);
    find_slack(&backing->spec, &bed, &panels, row);
}

/* ---- all of them ----------------------------------------------------------------------------------------------- */

static int buys_less(const struct muslin_backing *row, const struct muslin_backing *best)
{
    if (row->possible == 0 || best->possible == 0)
        return row->possible > best->possible;
    return row->bought != best->bought ? row->bought < best->bought : row->seams < best->seams;
}

/* The number of the best layout; 0 when none serves. */
static int32_t best_layout(const struct msl_backing *backing)
{
    struct muslin_backing best = { 0 };
    for (int32_t layout = FIRST_LAYOUT; layout <= LAST_LAYOUT; layout++) {
        struct muslin_backing row;
        msl_backing_lay(backing, layout, &row);
        if (buys_less(&row, &best))
            best = row;
    }
    return best.layout;
}

/* The least fabric width with which some layout serves: panels side by side need more than their seams, and one width
 * may do with less. */
static muslin_len least_fabric_width(const struct msl_backing *backing)
{
    muslin_len least = msl_lesser(2 * backing->spec.allowance + 1, backing->needed_width);
    if (backing->may_turn)
        least = msl_lesser(least, backing->needed_length);
    return least + 2 * backing->spec.selvage;
}

muslin_status muslin_backing_layouts(const struct muslin_backing_spec *spec, struct muslin_backing *rows,
                                     size_t row_size, size_t capacity, size_t *count, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct msl_backing backing = { 0 };
    msl_backing_read(&check, &backing, spec);
    if (check.status != MUSLIN_OK)
        return check.status;
    int32_t best = best_layout(&backing);
    if (best == 0)
        return msl_fail(&check, MUSLIN_ERR_NO_FIT, MUSLIN_ARG_FABRIC_WIDTH, backing.spec.fabric_width,
                        least_fabric_width(&backing));
    if (msl_rows_wanted(&check, rows, row_size, (uint32_t)sizeof *rows, capacity, count, LAST_LAYOUT) == 0)
        return check.status;
    for (int32_t layout = FIRST_LAYOUT; layout <= LAST_LAYOUT; layout++) {
        struct muslin_backing row;
        msl_backing_lay(&backing, layout, &row);
        row.best = layout == best;
        msl_write_row(rows, row_size, (size_t)(layout - FIRST_LAYOUT), &row, (uint32_t)sizeof row);
    }
    return MUSLIN_OK;
}
