/* backing.c - backings sewn panel by panel: all small quilts, cloths, seams, losses, repeats and steps.
 *
 * SPDX-License-Identifier: MIT
 *
 *     backing [MOST, by default 12]      needs up to so many ticks each way
 *
 * Each layout is sewn by trying: panels are joined until they cover, sides and inserts grow tick by tick until they do,
 * steps and repeats are counted up. From that for all widths of cloth follow how much narrower it may be, and the
 * narrowest that serves at all. */
#include <stdio.h>
#include <stdlib.h>

#include <muslin/muslin.h>

enum { LAYOUTS = 8, MOST_NEED = 40, MOST_PANELS = 200 };

/* The ways of joining; of each there is a layout along the quilt and one across it. */
enum way { ONE_WIDTH, SEAMS, CENTRE, INSERT };

static enum way way_of(int32_t layout)
{
    return (enum way)((layout - 1) / 2);
}

static int runs_across(int32_t layout)
{
    return layout % 2 == 0;
}

static void wrong(const struct muslin_backing_spec *spec, int32_t layout, const char *what)
{
    printf("%s, layout %d: quilt %lld x %lld margins %lld %lld %lld %lld cloth %lld selvage %lld allowance %lld "
           "loss %lld repeat %lld step %lld print %d flags %u\n", what, (int)layout, (long long)spec->quilt_width,
           (long long)spec->quilt_length, (long long)spec->margin_left, (long long)spec->margin_right,
           (long long)spec->margin_top, (long long)spec->margin_bottom, (long long)spec->fabric_width,
           (long long)spec->selvage, (long long)spec->allowance, (long long)spec->end_loss, (long long)spec->repeat,
           (long long)spec->step, (int)spec->print, (unsigned)spec->flags);
    exit(1);
}

/* ---- sewn by trying ---------------------------------------------------------------------------------------------- */

struct sewn {
    int possible;
    int64_t panels;
    int64_t pieces;
    int64_t strips;       /* of an insert */
    int64_t joined;       /* across, as sewn */
    int64_t strip_cut;    /* of a side or an insert */
    int64_t panel_length;
    int64_t cloth;
    int64_t on_total;     /* bought, rounded once */
    int64_t each;         /* bought, rounded length by length */
};

/* The first multiple of the step that is no less. */
static int64_t counted_up(int64_t length, int64_t step)
{
    int64_t sum = 0;
    while (sum < length)
        sum += step;
    return sum;
}

static int64_t in_repeats(const struct muslin_backing_spec *spec, int64_t length)
{
    return spec->repeat == 0 ? length : counted_up(length, spec->repeat);
}

/* Pieces so wide sewn together until they cover the need; 0 when that never happens. */
static int64_t joined_until(int64_t need, int64_t width, int64_t allowance, int64_t *joined)
{
    int64_t pieces = 1;
    *joined = width;
    while (*joined < need && pieces < MOST_PANELS) {
        *joined += width - 2 * allowance;
        pieces++;
    }
    return *joined < need ? 0 : pieces;
}

/* Two equal sides or one insert beside the cloth's width, two seams: as narrow as covers, no wider than `widest`. */
static int64_t widened_until(int64_t need, int64_t usable, int64_t allowance, int64_t added, int64_t widest)
{
    for (int64_t cut = 1; cut <= widest; cut++)
        if (usable + added * cut - 4 * allowance >= need)
            return cut;
    return 0;
}

/* The pieces of one layout; a layout with seams is for what one width does not cover. */
static void join(const struct muslin_backing_spec *spec, enum way way, int64_t need, int64_t usable, struct sewn *sewn)
{
    const int64_t q = spec->allowance;
    int64_t run;
    sewn->possible = (need <= usable) == (way == ONE_WIDTH);
    sewn->panels = sewn->pieces = 1;
    sewn->joined = usable;
    if (!sewn->possible || way == ONE_WIDTH)
        return;
    if (way == SEAMS) {
        sewn->panels = sewn->pieces = joined_until(need, usable, q, &sewn->joined);
        sewn->possible = sewn->panels > 0;
        return;
    }
    sewn->strip_cut = way == CENTRE ? widened_until(need, usable, q, 2, usable)
                                    : widened_until(need, usable, q, 1, usable / 2);
    sewn->possible = sewn->strip_cut > 0;
    if (way == CENTRE) {
        sewn->panels = 2 * sewn->strip_cut <= usable ? 2 : 3;
        sewn->pieces = 3;
    } else if (sewn->possible) {
        sewn->strips = joined_until(sewn->panel_length, usable, q, &run);
        sewn->possible = sewn->strips > 0;
        sewn->pieces = 2 + sewn->strips;
    }
    sewn->joined = usable + (way == CENTRE ? 2 : 1) * sewn->strip_cut - 4 * q;
}

static struct sewn sew(const struct muslin_backing_spec *spec, int32_t layout, const int64_t need[2], int64_t usable)
{
    struct sewn sewn = { 0 };
    const int across = runs_across(layout);
    sewn.panel_length = in_repeats(spec, need[!across] + spec->end_loss);
    join(spec, way_of(layout), need[across], usable, &sewn);
    if (spec->print != MUSLIN_PRINT_NONE && (across || way_of(layout) == INSERT))
        sewn.possible = 0;
    if (!sewn.possible)
        return (struct sewn){ 0 };
    const int64_t insert = sewn.strips * in_repeats(spec, sewn.strip_cut);
    sewn.cloth = sewn.panels * sewn.panel_length + insert;
    sewn.on_total = counted_up(sewn.cloth + spec->repeat, spec->step);
    sewn.each = sewn.panels * counted_up(sewn.panel_length, spec->step) + counted_up(insert, spec->step) +
                counted_up(spec->repeat, spec->step);
    return sewn;
}

/* ---- compared ---------------------------------------------------------------------------------------------------- */

/* Every layout from every usable width up to what one width covers. */
struct bed {
    int64_t need[2]; /* across the panels' widths: of a layout along the quilt, and of one across it */
    struct sewn sewn[LAYOUTS + 1][MOST_NEED + 1];
};

static int64_t bought(const struct muslin_backing_spec *spec, const struct sewn *sewn)
{
    return (spec->flags & MUSLIN_BACKING_ROUND_PANELS) != 0 ? sewn->each : sewn->on_total;
}

/* How much narrower the cloth may be, tick by tick, while as many panels and strips and what is bought still do. */
static int64_t narrower(const struct muslin_backing_spec *spec, const struct sewn *of_layout, int64_t usable)
{
    const struct sewn *now = &of_layout[usable];
    int64_t by = 0;
    while (by + 1 < usable) {
        const struct sewn *then = &of_layout[usable - by - 1];
        if (!then->possible || then->panels != now->panels || then->strips != now->strips ||
            bought(spec, then) > bought(spec, now))
            break;
        by++;
    }
    return by;
}

static void compare_layout(const struct muslin_backing_spec *spec, const struct bed *bed, int64_t usable,
                           const struct muslin_backing *row)
{
    const struct sewn *sewn = &bed->sewn[row->layout][usable];
    const int across = runs_across(row->layout);
    if (row->possible != sewn->possible)
        wrong(spec, row->layout, "possible");
    if (!sewn->possible)
        return;
    if (row->panels != sewn->panels || row->panel_length != sewn->panel_length || row->pieces != sewn->pieces ||
        row->seams != sewn->pieces - 1 || row->strip_cut != sewn->strip_cut)
        wrong(spec, row->layout, "panels");
    if (row->turned != across || row->needed_width != bed->need[0] || row->needed_length != bed->need[1])
        wrong(spec, row->layout, "need");
    if (row->joined_width != (across ? sewn->panel_length : sewn->joined) ||
        row->joined_length != (across ? sewn->joined : sewn->panel_length))
        wrong(spec, row->layout, "joined size");
    if (row->cloth_length != sewn->cloth || row->cloth_with_repeat != sewn->cloth + spec->repeat)
        wrong(spec, row->layout, "cloth");
    if (row->bought != bought(spec, sewn) || row->bought + row->other_rounding != sewn->each + sewn->on_total)
        wrong(spec, row->layout, "bought");
    const int64_t by = narrower(spec, bed->sewn[row->layout], usable);
    if (row->narrower_by != by || row->warnings != (by == 0 ? MUSLIN_WARN_NO_SLACK : 0))
        wrong(spec, row->layout, "narrower");
}

/* What a piece of a layout is: its width, but of halves only that they are alike to a tick. */
static int is_piece(const struct sewn *sewn, enum way way, int64_t usable, size_t at, const struct muslin_panel *panel)
{
    const int middle = at == 1;
    const int insert = way == INSERT && middle;
    if (panel->cut_length != (insert ? sewn->strip_cut : sewn->panel_length) ||
        panel->count != (insert ? sewn->strips : 1) || panel->position != (int32_t)at + 1)
        return 0;
    switch (way) {
    case CENTRE:
        return panel->role == (middle ? MUSLIN_PANEL_ROLE_CENTRE : MUSLIN_PANEL_ROLE_SIDE) &&
               panel->cut_width == (middle ? usable : sewn->strip_cut);
    case INSERT:
        return middle ? panel->role == MUSLIN_PANEL_ROLE_INSERT && panel->cut_width == usable
                      : panel->role == MUSLIN_PANEL_ROLE_HALF &&
                            (panel->cut_width == usable / 2 || panel->cut_width == usable - usable / 2);
    default:
        return panel->role == MUSLIN_PANEL_ROLE_WHOLE && panel->cut_width == usable;
    }
}

/* The pieces in sewing order: what they measure across, less two allowances a seam, is the joined size. */
static void compare_pieces(const struct muslin_backing_spec *spec, int32_t layout, const struct sewn *sewn,
                           int64_t usable)
{
    static struct muslin_panel rows[MOST_PANELS];
    const enum way way = way_of(layout);
    size_t count = 0;
    int64_t across = 0;
    rows[0].size = sizeof rows[0];
    if (muslin_backing_panels(spec, layout, rows, sizeof rows[0], MOST_PANELS, &count, NULL) !=
        (sewn->possible ? MUSLIN_OK : MUSLIN_ERR_NO_FIT))
        wrong(spec, layout, "pieces refused or not");
    if (!sewn->possible)
        return;
    for (size_t i = 0; i < count; i++) {
        if (!is_piece(sewn, way, usable, i, &rows[i]))
            wrong(spec, layout, "a piece");
        across += rows[i].role == MUSLIN_PANEL_ROLE_INSERT ? rows[i].cut_length : rows[i].cut_width;
    }
    if ((int64_t)count != (way == INSERT ? 3 : sewn->pieces) ||
        across - 2 * spec->allowance * ((int64_t)count - 1) != sewn->joined)
        wrong(spec, layout, "pieces");
}

/* The layout that buys least, of equals the one with the fewest seams, of those the first; 0 when none serves. */
static int32_t best_of(const struct muslin_backing_spec *spec, const struct bed *bed, int64_t usable)
{
    int32_t best = 0;
    int64_t least = 0;
    for (int32_t layout = 1; layout <= LAYOUTS; layout++) {
        const struct sewn *sewn = &bed->sewn[layout][usable];
        /* Pieces are fewer than the factor, so they only decide between equals. */
        const int64_t costs = bought(spec, sewn) * 4 * MOST_PANELS + sewn->pieces;
        if (sewn->possible && (best == 0 || costs < least)) {
            best = layout;
            least = costs;
        }
    }
    return best;
}

static int64_t was_best[LAYOUTS + 1]; /* at 0: none served */

static void compare(const struct muslin_backing_spec *spec, const struct bed *bed, int64_t usable)
{
    static struct muslin_backing rows[LAYOUTS];
    struct muslin_problem problem = MUSLIN_PROBLEM_INIT;
    size_t count = 0;
    const int32_t best = best_of(spec, bed, usable);
    was_best[best]++;
    rows[0].size = sizeof rows[0];
    const muslin_status status = muslin_backing_layouts(spec, rows, sizeof rows[0], LAYOUTS, &count, &problem);
    if (best == 0) {
        int64_t serving = usable;
        while (best_of(spec, bed, serving) == 0)
            serving++;
        if (status != MUSLIN_ERR_NO_FIT || problem.argument != MUSLIN_ARG_FABRIC_WIDTH ||
            problem.limit != serving + 2 * spec->selvage)
            wrong(spec, 0, "nothing serves");
        return;
    }
    if (status != MUSLIN_OK || count != LAYOUTS)
        wrong(spec, 0, "refused");
    for (int32_t layout = 1; layout <= LAYOUTS; layout++) {
        if (rows[layout - 1].layout != layout || rows[layout - 1].best != (layout == best))
            wrong(spec, layout, "best");
        compare_layout(spec, bed, usable, &rows[layout - 1]);
        compare_pieces(spec, layout, &bed->sewn[layout][usable], usable);
    }
}

/* ---- the grid ---------------------------------------------------------------------------------------------------- */

/* What the backing must be taken apart into a quilt and two margins. */
static void split(int64_t need, muslin_len *quilt, muslin_len *before, muslin_len *after)
{
    *before = need > 2 ? need % 3 : 0;
    *after = need > 4 ? need % 2 : 0;
    *quilt = need - *before - *after;
}

/* One request with cloth of every width. */
static int64_t compare_widths(struct muslin_backing_spec *spec, struct bed *bed, int64_t most)
{
    int64_t compared = 0;
    split(bed->need[0], &spec->quilt_width, &spec->margin_left, &spec->margin_right);
    split(bed->need[1], &spec->quilt_length, &spec->margin_top, &spec->margin_bottom);
    for (int32_t layout = 1; layout <= LAYOUTS; layout++)
        for (int64_t usable = 1; usable <= most; usable++)
            bed->sewn[layout][usable] = sew(spec, layout, bed->need, usable);
    for (int64_t usable = 1; usable <= most; usable++, compared++) {
        spec->selvage = usable % 3;
        spec->fabric_width = usable + 2 * spec->selvage;
        compare(spec, bed, usable);
    }
    return compared;
}

static int64_t compare_needs(struct muslin_backing_spec *spec, int64_t most)
{
    static struct bed bed;
    int64_t compared = 0;
    for (bed.need[0] = 1; bed.need[0] <= most; bed.need[0]++)
        for (bed.need[1] = 1; bed.need[1] <= most; bed.need[1]++)
            compared += compare_widths(spec, &bed, most);
    return compared;
}

int main(int count, char **words)
{
    const int64_t most = count == 2 ? atoll(words[1]) : 12;
    struct muslin_backing_spec spec = MUSLIN_BACKING_SPEC_INIT;
    int64_t compared = 0;
    if (most < 1 || most > MOST_NEED)
        return 1;
    for (spec.allowance = 0; spec.allowance <= 3; spec.allowance++)
        for (spec.end_loss = 0; spec.end_loss <= 2; spec.end_loss++)
            for (spec.repeat = 0; spec.repeat <= 5; spec.repeat += spec.repeat == 0 ? 2 : 1)
                for (spec.step = 1; spec.step <= 5; spec.step += 2)
                    for (int way = 0; way < 4; way++) {
                        spec.flags = way % 2 == 0 ? 0 : MUSLIN_BACKING_ROUND_PANELS;
                        spec.print = way < 2 ? MUSLIN_PRINT_NONE : MUSLIN_PRINT_TWO_WAY + (int32_t)spec.repeat % 4;
                        compared += compare_needs(&spec, most);
                    }
    /* Where a centre and its sides serve, as many panels side by side do, with a seam less or as many. */
    for (int32_t layout = 1; layout <= LAYOUTS; layout++)
        if ((was_best[layout] == 0) != (way_of(layout) == CENTRE))
            wrong(&spec, layout, was_best[layout] == 0 ? "never the best" : "the best");
    printf("%lld backings in 8 layouts, %lld that none serves\n", (long long)compared, (long long)was_best[0]);
    return 0;
}
