/* test_finishing_backing.c - backing: layouts against published figures and against brute force.
 *
 * SPDX-License-Identifier: MIT */
#include "test_finishing.h"

enum { LAYOUTS = 8, WIDEST = 48 };

static struct muslin_backing_spec no_margins(muslin_len width, muslin_len length, muslin_len usable)
{
    struct muslin_backing_spec spec = MUSLIN_BACKING_SPEC_INIT;
    spec.quilt_width = width;
    spec.quilt_length = length;
    spec.margin_left = spec.margin_right = spec.margin_top = spec.margin_bottom = 0;
    spec.fabric_width = usable;
    return spec;
}

static void lay_all(const struct muslin_backing_spec *spec, struct muslin_backing rows[LAYOUTS])
{
    size_t count = 0;
    ck_ok(muslin_backing_layouts(spec, rows, sizeof rows[0], LAYOUTS, &count, NULL));
    ck_assert_uint_eq(count, LAYOUTS);
}

static struct muslin_backing laid(const struct muslin_backing_spec *spec, int32_t layout)
{
    struct muslin_backing rows[LAYOUTS];
    lay_all(spec, rows);
    ck_assert_int_eq(rows[layout - 1].layout, layout);
    return rows[layout - 1];
}

static struct muslin_backing best_of(const struct muslin_backing_spec *spec)
{
    struct muslin_backing rows[LAYOUTS];
    struct muslin_backing best = { 0 };
    int found = 0;
    lay_all(spec, rows);
    for (int i = 0; i < LAYOUTS; i++)
        if (rows[i].best) {
            best = rows[i];
            found++;
        }
    ck_assert_int_eq(found, 1);
    return best;
}

/* ---- published figures ----------------------------------------------------------------------------------------- */

/* Two longarm quilting service sheets, "Preparing your quilt": quilt 60 x 80, 4 in each side: 68 x 88 in. */
START_TEST(four_inches_on_each_side_make_sixty_by_eighty_sixty_eight_by_eighty_eight)
{
    struct muslin_backing_spec spec = MUSLIN_BACKING_SPEC_INIT;
    spec.quilt_width = WHOLE_IN(60);
    spec.quilt_length = WHOLE_IN(80);
    struct muslin_backing row = laid(&spec, MUSLIN_BACKING_LAYOUT_SEAMS_ALONG);
    ck_assert_int_eq(row.needed_width, WHOLE_IN(68));
    ck_assert_int_eq(row.needed_length, WHOLE_IN(88));
}
END_TEST

/* Quilters' club forum, "How do I figure the back of a 112 x 88 quilt?": 120 x 96, 42 in usable; each panel 96 in is
 * up to 2 3/4 yd, three are 8 1/4 yd. Rounded once, 3 x 96 = 288 in are 8 yd exactly. With 1/2 in seams they give 124
 * in. */
START_TEST(three_panels_of_ninety_six_inches_are_eight_yards_or_eight_and_a_quarter)
{
    struct muslin_backing_spec spec = MUSLIN_BACKING_SPEC_INIT;
    spec.quilt_width = WHOLE_IN(112);
    spec.quilt_length = WHOLE_IN(88);
    spec.fabric_width = WHOLE_IN(42);
    spec.step = WHOLE_IN(9);
    struct muslin_backing row = laid(&spec, MUSLIN_BACKING_LAYOUT_SEAMS_ALONG);
    ck_assert_int_eq(row.panels, 3);
    ck_assert_int_eq(row.panel_length, WHOLE_IN(96));
    ck_assert_int_eq(row.joined_width, WHOLE_IN(124));
    ck_assert_int_eq(row.cloth_length, WHOLE_IN(288));
    ck_assert_int_eq(row.bought, WHOLE_IN(8 * 36));
    ck_assert_int_eq(row.other_rounding, WHOLE_IN(8 * 36 + 9));
    spec.flags = MUSLIN_BACKING_ROUND_PANELS;
    row = laid(&spec, MUSLIN_BACKING_LAYOUT_SEAMS_ALONG);
    ck_assert_int_eq(row.bought, WHOLE_IN(8 * 36 + 9));
    ck_assert_int_eq(row.other_rounding, WHOLE_IN(8 * 36));
}
END_TEST

/* The same thread: wide cloth of about 108 in, turned: 96 in fit its width, 120 in to buy. The source buys 3 1/2 yd;
 * exactly 3.333 yd, so 3 3/8 in eighths and 3 1/2 in halves. */
START_TEST(wide_cloth_is_turned_when_only_the_length_fits_its_width)
{
    struct muslin_backing_spec spec = MUSLIN_BACKING_SPEC_INIT;
    spec.quilt_width = WHOLE_IN(112);
    spec.quilt_length = WHOLE_IN(88);
    spec.fabric_width = WHOLE_IN(108);
    struct muslin_backing row = laid(&spec, MUSLIN_BACKING_LAYOUT_ONE_WIDTH_TURNED);
    ck_assert_int_eq(row.possible, 1);
    ck_assert_int_eq(row.turned, 1);
    ck_assert_int_eq(row.cloth_length, WHOLE_IN(120));
    ck_assert_int_eq(row.bought, IN(121, 1, 2));
    ck_assert_int_eq(row.joined_width, WHOLE_IN(120));
    ck_assert_int_eq(row.joined_length, WHOLE_IN(108));
    ck_assert_int_eq(row.narrower_by, WHOLE_IN(12));
    ck_assert_int_eq(laid(&spec, MUSLIN_BACKING_LAYOUT_ONE_WIDTH).possible, 0);
    spec.step = WHOLE_IN(18);
    ck_assert_int_eq(laid(&spec, MUSLIN_BACKING_LAYOUT_ONE_WIDTH_TURNED).bought, WHOLE_IN(126));
}
END_TEST

/* Quilting forum, 2017, "Mathematically challenged": backing 80 x 56, seam across, 40 in usable; the answer printed,
 * 112 in (3 1/8 yd), forgets the seam: 2 x 40 - 1 = 79 in is less than 80, so it takes three. */
START_TEST(two_forty_inch_panels_do_not_reach_eighty_inches)
{
    struct muslin_backing_spec spec = no_margins(WHOLE_IN(56), WHOLE_IN(80), WHOLE_IN(40));
    struct muslin_backing row = laid(&spec, MUSLIN_BACKING_LAYOUT_SEAMS_ACROSS);
    ck_assert_int_eq(row.panels, 3);
    ck_assert_int_eq(row.panel_length, WHOLE_IN(56));
    ck_assert_int_eq(row.cloth_length, WHOLE_IN(168));
    ck_assert_int_eq(row.joined_length, WHOLE_IN(118));
    spec.quilt_length = WHOLE_IN(79);
    row = laid(&spec, MUSLIN_BACKING_LAYOUT_SEAMS_ACROSS);
    ck_assert_int_eq(row.panels, 2);
    ck_assert_int_eq(row.narrower_by, 0);
    ck_assert_uint_eq(row.warnings, MUSLIN_WARN_NO_SLACK);
}
END_TEST

/* Quilting forum, "Need some measuring help: 59 x 65": 3 3/4 yd of 42 in are two 67 1/2 in lengths; joined 67 1/2 x 83
 * with 1/2 in seams. */
START_TEST(two_lengths_of_forty_two_join_to_eighty_three)
{
    struct muslin_backing_spec spec = no_margins(WHOLE_IN(83), IN(67, 1, 2), WHOLE_IN(42));
    struct muslin_backing row = laid(&spec, MUSLIN_BACKING_LAYOUT_SEAMS_ALONG);
    ck_assert_int_eq(row.panels, 2);
    ck_assert_int_eq(row.joined_width, WHOLE_IN(83));
    ck_assert_int_eq(row.cloth_length, WHOLE_IN(135));
    ck_assert_int_eq(row.bought, IN(3 * 36, 0, 1) + WHOLE_IN(27));
}
END_TEST

/* Quilting forum, 2011, "Calculating yardage for backing": 60 x 85 from 42 in: a centre and two 9 in sides, 170 in.
 * The source ignores the seams: with 9 in sides it is 58 in across, and 60 in takes sides of 10 in. */
START_TEST(a_centre_panel_needs_its_sides_wider_by_the_seams)
{
    struct muslin_backing_spec spec = no_margins(WHOLE_IN(60), WHOLE_IN(85), WHOLE_IN(42));
    struct muslin_backing row = laid(&spec, MUSLIN_BACKING_LAYOUT_CENTRE_ALONG);
    ck_assert_int_eq(row.panels, 2);
    ck_assert_int_eq(row.pieces, 3);
    ck_assert_int_eq(row.cloth_length, WHOLE_IN(170));
    ck_assert_int_eq(row.strip_cut, WHOLE_IN(10));
    ck_assert_int_eq(row.joined_width, WHOLE_IN(60));
    spec.quilt_width = WHOLE_IN(58);
    ck_assert_int_eq(laid(&spec, MUSLIN_BACKING_LAYOUT_CENTRE_ALONG).strip_cut, WHOLE_IN(9));
}
END_TEST

/* Online magazine, "Quilt backings - fabric calculation": quilt 72 x 90, 2 in at each end: two 94 in lengths = 188 in,
 * up to 5 1/4 yd. */
START_TEST(two_ninety_four_inch_lengths_are_five_and_a_quarter_yards)
{
    struct muslin_backing_spec spec = MUSLIN_BACKING_SPEC_INIT;
    spec.quilt_width = WHOLE_IN(72);
    spec.quilt_length = WHOLE_IN(90);
    spec.margin_left = spec.margin_right = 0;
    spec.margin_top = spec.margin_bottom = WHOLE_IN(2);
    struct muslin_backing row = laid(&spec, MUSLIN_BACKING_LAYOUT_SEAMS_ALONG);
    ck_assert_int_eq(row.cloth_length, WHOLE_IN(188));
    ck_assert_int_eq(row.bought, WHOLE_IN(5 * 36 + 9));
}
END_TEST

/* Home magazine, "Figuring pattern repeats": cut length 96, repeat 27: 3.6, so 4 repeats = 108 in, and one repeat on
 * the whole order to shift the start. */
START_TEST(a_repeat_of_twenty_seven_makes_ninety_six_a_hundred_and_eight)
{
    struct muslin_backing_spec spec = no_margins(WHOLE_IN(79), WHOLE_IN(96), WHOLE_IN(40));
    spec.repeat = WHOLE_IN(27);
    struct muslin_backing row = laid(&spec, MUSLIN_BACKING_LAYOUT_SEAMS_ALONG);
    ck_assert_int_eq(row.panel_length, WHOLE_IN(108));
    ck_assert_int_eq(row.cloth_length, WHOLE_IN(216));
    ck_assert_int_eq(row.cloth_with_repeat, WHOLE_IN(243));
    ck_assert_int_eq(row.bought, WHOLE_IN(243));
    spec.step = WHOLE_IN(36);
    row = laid(&spec, MUSLIN_BACKING_LAYOUT_SEAMS_ALONG);
    ck_assert_int_eq(row.bought, WHOLE_IN(252));
    ck_assert_int_eq(row.other_rounding, WHOLE_IN(108 + 108 + 36));
}
END_TEST

/* St Croix quilters, "Quilt backing": a top 40 x 45, one width of 44 to 45 in. At 42 in usable the margins at the
 * sides are gone: 3 in each would need 46. */
START_TEST(one_width_serves_a_small_quilt_only_while_the_margins_fit)
{
    struct muslin_backing_spec spec = MUSLIN_BACKING_SPEC_INIT;
    spec.quilt_width = WHOLE_IN(40);
    spec.quilt_length = WHOLE_IN(45);
    spec.margin_left = spec.margin_right = spec.margin_top = spec.margin_bottom = WHOLE_IN(2);
    spec.fabric_width = WHOLE_IN(44);
    ck_assert_int_eq(laid(&spec, MUSLIN_BACKING_LAYOUT_ONE_WIDTH).possible, 1);
    ck_assert_int_eq(laid(&spec, MUSLIN_BACKING_LAYOUT_ONE_WIDTH).cloth_length, WHOLE_IN(49));
    ck_assert_uint_eq(laid(&spec, MUSLIN_BACKING_LAYOUT_ONE_WIDTH).warnings, MUSLIN_WARN_NO_SLACK);
    spec.selvage = WHOLE_IN(1);
    ck_assert_int_eq(laid(&spec, MUSLIN_BACKING_LAYOUT_ONE_WIDTH).possible, 0);
}
END_TEST

/* ---- brute force: panels laid down until they cover ------------------------------------------------------------- */

struct trial {
    int possible;
    int64_t panels, strips, pieces, seams;
    muslin_len joined, cut, panel_length;
};

struct request {
    muslin_len width, length, usable, seam, trim, repeat, step;
    int32_t print;
    int each; /* lengths rounded one by one */
};

static muslin_len counted_up(muslin_len length, muslin_len step)
{
    muslin_len up = 0;
    while (up < length)
        up += step > 0 ? step : length;
    return up;
}

static struct trial try_side_by_side(muslin_len need, muslin_len u, muslin_len q)
{
    struct trial trial = { 0 };
    muslin_len covered = u;
    int64_t panels = 1;
    while (covered < need && u - 2 * q > 0) {
        covered += u - q - q;
        panels++;
    }
    trial.possible = panels > 1 && covered >= need;
    trial.panels = trial.pieces = panels;
    trial.seams = panels - 1;
    trial.joined = covered;
    return trial;
}

static struct trial try_centre(muslin_len need, muslin_len u, muslin_len q)
{
    struct trial trial = { 0 };
    for (muslin_len side = u; need > u && side > 0; side--)
        if (side - q + (u - 2 * q) + side - q >= need) {
            trial.possible = 1;
            trial.cut = side;
            trial.joined = side - q + (u - 2 * q) + side - q;
        }
    trial.panels = trial.cut + trial.cut <= u ? 2 : 3;
    trial.pieces = 3;
    trial.seams = 2;
    return trial;
}

static struct trial try_insert(muslin_len need, muslin_len u, muslin_len q, muslin_len panel_length)
{
    struct trial trial = { 0 };
    for (muslin_len x = u / 2; need > u && x > 0; x--)
        if (u - 2 * q + (x - 2 * q) >= need) {
            trial.possible = 1;
            trial.cut = x;
            trial.joined = u - 2 * q + (x - 2 * q);
        }
    muslin_len run = u;
    trial.strips = 1;
    while (trial.possible && run < panel_length) {
        run += u - q - q;
        trial.strips++;
    }
    trial.panels = 1;
    trial.pieces = 2 + trial.strips;
    trial.seams = trial.strips + 1;
    return trial;
}

static struct trial try_layout(const struct request *r, int32_t layout, muslin_len usable)
{
    struct trial trial = { 0 };
    int turned = layout == MUSLIN_BACKING_LAYOUT_ONE_WIDTH_TURNED || layout == MUSLIN_BACKING_LAYOUT_SEAMS_ACROSS ||
                 layout == MUSLIN_BACKING_LAYOUT_CENTRE_ACROSS || layout == MUSLIN_BACKING_LAYOUT_INSERT_ACROSS;
    int insert = layout == MUSLIN_BACKING_LAYOUT_INSERT_ALONG || layout == MUSLIN_BACKING_LAYOUT_INSERT_ACROSS;
    muslin_len need = turned ? r->length : r->width;
    muslin_len panel_length = counted_up((turned ? r->width : r->length) + r->trim, r->repeat);
    if (r->print != MUSLIN_PRINT_NONE && (turned || insert))
        return trial;
    if (layout <= MUSLIN_BACKING_LAYOUT_ONE_WIDTH_TURNED) {
        trial.possible = need <= usable;
        trial.panels = trial.pieces = 1;
        trial.joined = usable;
    } else if (layout <= MUSLIN_BACKING_LAYOUT_SEAMS_ACROSS) {
        trial = try_side_by_side(need, usable, r->seam);
    } else if (layout <= MUSLIN_BACKING_LAYOUT_CENTRE_ACROSS) {
        trial = try_centre(need, usable, r->seam);
    } else {
        trial = try_insert(need, usable, r->seam, panel_length);
    }
    trial.panel_length = panel_length;
    return trial;
}

static muslin_len insert_length(const struct request *r, const struct trial *trial)
{
    return trial->strips * counted_up(trial->cut, r->repeat);
}

/* What the layout buys with one rounding on the total, and with each length rounded. */
static muslin_len bought_on_total(const struct request *r, const struct trial *trial)
{
    return counted_up(trial->panels * trial->panel_length + insert_length(r, trial) + r->repeat, r->step);
}

static muslin_len bought_each(const struct request *r, const struct trial *trial)
{
    return trial->panels * counted_up(trial->panel_length, r->step) + counted_up(insert_length(r, trial), r->step) +
           counted_up(r->repeat, r->step);
}

static muslin_len bought_of(const struct request *r, const struct trial *trial)
{
    return r->each ? bought_each(r, trial) : bought_on_total(r, trial);
}

/* How much narrower the cloth may be while panels and strips stay the same and what was bought is enough. */
static muslin_len try_narrower(const struct request *r, int32_t layout)
{
    struct trial now = try_layout(r, layout, r->usable);
    muslin_len narrower = 0;
    for (muslin_len usable = r->usable - 1; usable > 0; usable--) {
        struct trial then = try_layout(r, layout, usable);
        if (!then.possible || then.panels != now.panels || then.strips != now.strips)
            break;
        if (bought_of(r, &then) > bought_of(r, &now))
            break;
        narrower++;
    }
    return narrower;
}

static struct muslin_backing_spec spec_of(const struct request *r)
{
    struct muslin_backing_spec spec = no_margins(r->width, r->length, r->usable);
    spec.allowance = r->seam;
    spec.end_loss = r->trim;
    spec.repeat = r->repeat;
    spec.step = r->step;
    spec.print = r->print;
    spec.flags = r->each ? MUSLIN_BACKING_ROUND_PANELS : 0;
    return spec;
}

static struct request any_request(uint64_t *dice)
{
    struct request r = { 0 };
    r.width = draw_from(dice, 1, 70);
    r.length = draw_from(dice, 1, 70);
    r.usable = draw_from(dice, 1, WIDEST);
    r.seam = draw_from(dice, 0, 4);
    r.trim = draw_from(dice, 0, 2);
    r.repeat = draw_from(dice, -9, 9);
    r.repeat = r.repeat > 0 ? r.repeat : 0;
    r.step = draw_from(dice, 1, 8);
    r.print = (int32_t)draw_from(dice, 1, 8);
    if (r.print > MUSLIN_PRINT_STRIPE_ACROSS)
        r.print = MUSLIN_PRINT_NONE;
    r.each = draw_from(dice, 0, 1) == 1;
    return r;
}

static int sizes_agree(const struct muslin_backing *row, const struct trial *trial, const struct request *r)
{
    int turned =
        row->layout == MUSLIN_BACKING_LAYOUT_ONE_WIDTH_TURNED || row->layout == MUSLIN_BACKING_LAYOUT_SEAMS_ACROSS ||
        row->layout == MUSLIN_BACKING_LAYOUT_CENTRE_ACROSS || row->layout == MUSLIN_BACKING_LAYOUT_INSERT_ACROSS;
    return row->turned == turned && row->needed_width == r->width && row->needed_length == r->length &&
           row->panels == trial->panels && row->pieces == trial->pieces && row->seams == trial->seams &&
           row->panel_length == trial->panel_length && row->strip_cut == trial->cut &&
           row->joined_width == (turned ? trial->panel_length : trial->joined) &&
           row->joined_length == (turned ? trial->joined : trial->panel_length) &&
           row->narrower_by == try_narrower(r, row->layout) &&
           row->warnings == (row->narrower_by == 0 ? (uint32_t)MUSLIN_WARN_NO_SLACK : 0u);
}

static int cloth_agrees(const struct muslin_backing *row, const struct trial *trial, const struct request *r)
{
    muslin_len exact = trial->panels * trial->panel_length + insert_length(r, trial);
    return row->cloth_length == exact && row->cloth_with_repeat == exact + r->repeat &&
           row->bought == bought_of(r, trial) &&
           row->other_rounding == (r->each ? bought_on_total(r, trial) : bought_each(r, trial));
}

static int is_all_zero(const struct muslin_backing *row)
{
    struct muslin_backing zero = { 0 };
    zero.size = row->size;
    zero.layout = row->layout;
    return memcmp(row, &zero, sizeof zero) == 0;
}

/* The best by the rule of the header: buys least, then fewest seams, then the lower number. */
static int32_t best_by_sorting(const struct muslin_backing rows[LAYOUTS])
{
    int32_t best = 0;
    for (int32_t layout = LAYOUTS; layout >= 1; layout--) {
        const struct muslin_backing *row = &rows[layout - 1];
        const struct muslin_backing *than = &rows[best > 0 ? best - 1 : 0];
        if (row->possible && (best == 0 || row->bought < than->bought ||
                              (row->bought == than->bought && row->seams <= than->seams)))
            best = layout;
    }
    return best;
}

static int request_agrees(const struct request *r)
{
    struct muslin_backing_spec spec = spec_of(r);
    struct muslin_backing rows[LAYOUTS];
    struct muslin_problem problem = PROBLEM;
    size_t count = 0;
    int any = 0;
    muslin_status status = muslin_backing_layouts(&spec, rows, sizeof rows[0], LAYOUTS, &count, &problem);
    for (int32_t layout = 1; layout <= LAYOUTS; layout++)
        any |= try_layout(r, layout, r->usable).possible;
    if (!any || status != MUSLIN_OK)
        return !any && status == MUSLIN_ERR_NO_FIT;
    for (int32_t layout = 1; layout <= LAYOUTS; layout++) {
        const struct muslin_backing *row = &rows[layout - 1];
        struct trial trial = try_layout(r, layout, r->usable);
        if (row->layout != layout || row->possible != trial.possible)
            return 0;
        if (row->best != (layout == best_by_sorting(rows)))
            return 0;
        if (!trial.possible && !is_all_zero(row))
            return 0;
        if (trial.possible && (!sizes_agree(row, &trial, r) || !cloth_agrees(row, &trial, r)))
            return 0;
    }
    return 1;
}

START_TEST(all_layouts_are_what_laying_panels_down_finds)
{
    uint64_t dice = 17;
    int wrong = 0;
    for (int i = 0; i < 30000; i++) {
        struct request r = any_request(&dice);
        wrong += request_agrees(&r) == 0;
    }
    ck_assert_int_eq(wrong, 0);
}
END_TEST

/* Side panels from one width turn on a parity: every small need and width, one after another. */
START_TEST(the_slack_of_a_centre_panel_is_right_for_every_small_width)
{
    int wrong = 0;
    for (muslin_len need = 2; need <= 40; need++)
        for (muslin_len usable = 1; usable < need; usable++)
            for (muslin_len seam = 0; seam <= 3; seam++) {
                struct request r = { need, 5, usable, seam, 0, 0, 1, MUSLIN_PRINT_ONE_WAY, 0 };
                wrong += request_agrees(&r) == 0;
            }
    ck_assert_int_eq(wrong, 0);
}
END_TEST

START_TEST(rounding_panel_by_panel_swaps_the_two_roundings)
{
    uint64_t dice = 23;
    int wrong = 0;
    for (int i = 0; i < 3000; i++) {
        struct request r = any_request(&dice);
        r.each = 0;
        struct muslin_backing_spec spec = spec_of(&r);
        struct muslin_backing total[LAYOUTS];
        struct muslin_backing each[LAYOUTS];
        size_t count = 0;
        if (muslin_backing_layouts(&spec, total, sizeof total[0], LAYOUTS, &count, NULL) != MUSLIN_OK)
            continue;
        spec.flags = MUSLIN_BACKING_ROUND_PANELS;
        ck_ok(muslin_backing_layouts(&spec, each, sizeof each[0], LAYOUTS, &count, NULL));
        for (int k = 0; k < LAYOUTS; k++) {
            wrong += each[k].bought != total[k].other_rounding || each[k].other_rounding != total[k].bought;
            wrong += each[k].bought < total[k].bought;
            wrong += each[k].best != (k + 1 == best_by_sorting(each));
        }
    }
    ck_assert_int_eq(wrong, 0);
}
END_TEST

/* ---- prints ---------------------------------------------------------------------------------------------------- */

START_TEST(a_print_with_a_direction_forbids_turned_panels_and_inserts)
{
    for (int32_t print = MUSLIN_PRINT_NONE; print <= MUSLIN_PRINT_STRIPE_ACROSS; print++) {
        struct muslin_backing_spec spec = no_margins(WHOLE_IN(56), WHOLE_IN(57), WHOLE_IN(42));
        struct muslin_backing rows[LAYOUTS];
        spec.print = print;
        lay_all(&spec, rows);
        int free_to_turn = print == MUSLIN_PRINT_NONE;
        ck_assert_int_eq(rows[MUSLIN_BACKING_LAYOUT_SEAMS_ALONG - 1].possible, 1);
        ck_assert_int_eq(rows[MUSLIN_BACKING_LAYOUT_CENTRE_ALONG - 1].possible, 1);
        ck_assert_int_eq(rows[MUSLIN_BACKING_LAYOUT_SEAMS_ACROSS - 1].possible, free_to_turn);
        ck_assert_int_eq(rows[MUSLIN_BACKING_LAYOUT_CENTRE_ACROSS - 1].possible, free_to_turn);
        ck_assert_int_eq(rows[MUSLIN_BACKING_LAYOUT_INSERT_ALONG - 1].possible, free_to_turn);
        ck_assert_int_eq(rows[MUSLIN_BACKING_LAYOUT_INSERT_ACROSS - 1].possible, free_to_turn);
    }
}
END_TEST

/* 120 x 96 in from 108 in cloth: turned it takes 120 in; upright and split, an insert of 120 - 108 + 2 = 14 in makes
 * 96 + 14 = 110 in, the least there is. */
START_TEST(an_insert_can_buy_less_than_wide_cloth_turned)
{
    struct muslin_backing_spec spec = no_margins(WHOLE_IN(120), WHOLE_IN(96), WHOLE_IN(108));
    struct muslin_backing row = best_of(&spec);
    ck_assert_int_eq(row.layout, MUSLIN_BACKING_LAYOUT_INSERT_ALONG);
    ck_assert_int_eq(row.cloth_length, WHOLE_IN(110));
    ck_assert_int_eq(row.seams, 2);
}
END_TEST

START_TEST(a_print_with_a_direction_forbids_wide_cloth_turned)
{
    struct muslin_backing_spec spec = no_margins(WHOLE_IN(120), WHOLE_IN(96), WHOLE_IN(108));
    ck_assert_int_eq(laid(&spec, MUSLIN_BACKING_LAYOUT_ONE_WIDTH_TURNED).possible, 1);
    spec.print = MUSLIN_PRINT_ONE_WAY;
    ck_assert_int_eq(laid(&spec, MUSLIN_BACKING_LAYOUT_ONE_WIDTH_TURNED).possible, 0);
    ck_assert_int_eq(best_of(&spec).layout, MUSLIN_BACKING_LAYOUT_SEAMS_ALONG);
}
END_TEST

/* ---- nothing serves -------------------------------------------------------------------------------------------- */

START_TEST(cloth_no_wider_than_its_seams_fits_nothing_and_the_least_width_is_named)
{
    uint64_t dice = 29;
    int wrong = 0;
    int seen = 0;
    for (int i = 0; i < 4000; i++) {
        struct request r = any_request(&dice);
        r.usable = draw_from(&dice, 1, 6);
        struct muslin_backing_spec spec = spec_of(&r);
        spec.selvage = draw_from(&dice, 0, 3);
        spec.fabric_width = r.usable + 2 * spec.selvage;
        struct muslin_problem problem = PROBLEM;
        size_t count = 77;
        if (muslin_backing_layouts(&spec, NULL, 0, 0, &count, &problem) == MUSLIN_OK)
            continue;
        seen++;
        wrong += problem.status != MUSLIN_ERR_NO_FIT || count != 77 || problem.value != spec.fabric_width;
        wrong += problem.argument != MUSLIN_ARG_FABRIC_WIDTH;
        spec.fabric_width = problem.limit;
        wrong += muslin_backing_layouts(&spec, NULL, 0, 0, &count, NULL) != MUSLIN_OK;
        spec.fabric_width--;
        wrong += muslin_backing_layouts(&spec, NULL, 0, 0, &count, NULL) == MUSLIN_OK;
    }
    ck_assert_int_eq(wrong, 0);
    ck_assert_int_gt(seen, 100);
}
END_TEST

/* ---- the edges of the ranges ----------------------------------------------------------------------------------- */

/* 2^30 panels one tick wide, each 3 (2^30 - 1) long: twice 2^30 is two of the repeat and two ticks. The numbers below
 * are that product and Python's whole numbers for its roundings. */
START_TEST(the_most_cloth_there_can_be_is_still_a_right_number)
{
    struct muslin_backing_spec spec = no_margins(MUSLIN_SIZE_MAX, MUSLIN_SIZE_MAX, 1);
    spec.allowance = 0;
    spec.end_loss = MUSLIN_SIZE_MAX;
    spec.repeat = MUSLIN_SIZE_MAX - 1;
    spec.step = MUSLIN_SIZE_MAX;
    struct muslin_backing row = laid(&spec, MUSLIN_BACKING_LAYOUT_SEAMS_ALONG);
    ck_assert_int_eq(row.panels, MUSLIN_SIZE_MAX);
    ck_assert_int_eq(row.panel_length, 3 * (MUSLIN_SIZE_MAX - 1));
    ck_assert_int_eq(row.cloth_length, INT64_C(3458764510599315456));
    ck_assert_int_eq(row.cloth_with_repeat, INT64_C(3458764511673057279));
    ck_assert_int_eq(row.bought, INT64_C(3458764511673057280));
    ck_assert_int_eq(row.other_rounding, INT64_C(3458764514894282752));
    ck_assert_int_eq(row.narrower_by, 0);
}
END_TEST

static const struct muslin_backing_spec throw_size = {
    (uint32_t)sizeof throw_size, 0, WHOLE_IN(60), WHOLE_IN(80), 32512, 32512, 32512, 32512, WHOLE_IN(42), IN(0, 1, 2),
    IN(0, 1, 2), 0, 0, 36576, MUSLIN_PRINT_NONE, 0
};

static muslin_status layouts_call(const void *spec, void *out, struct muslin_problem *problem)
{
    size_t count = 0;
    return muslin_backing_layouts(spec, out, sizeof(struct muslin_backing), LAYOUTS, &count, problem);
}

static const struct ruled layouts = RULED(layouts_call, throw_size, muslin_backing);

static muslin_status panels_call(const void *spec, void *out, struct muslin_problem *problem)
{
    size_t count = 0;
    return muslin_backing_panels(spec, MUSLIN_BACKING_LAYOUT_CENTRE_ALONG, out, sizeof(struct muslin_panel), 3, &count,
                                 problem);
}

static const struct ruled panels = RULED(panels_call, throw_size, muslin_panel);

START_TEST(both_calls_check_their_request)
{
    ck_spec_rules(&layouts);
    ck_problem_rules(&layouts);
    ck_spec_rules(&panels);
    ck_problem_rules(&panels);
}
END_TEST

START_TEST(both_calls_read_a_newer_request_with_a_zero_tail)
{
    union roomy spec;
    size_t count = 0;
    lay_out(&spec, &throw_size, (uint32_t)sizeof throw_size);
    spec.head[0] += SPARE;
    ck_ok(muslin_backing_layouts((const struct muslin_backing_spec *)(const void *)&spec, NULL, 0, 0, &count, NULL));
    ck_assert_uint_eq(count, LAYOUTS);
}
END_TEST

START_TEST(both_calls_refuse_what_lies_outside_their_ranges)
{
    const struct refusal refusals[] = {
        REFUSAL(muslin_backing_spec, flags, 2, MUSLIN_ERR_FLAGS, MUSLIN_ARG_SPEC),
        OUTSIDE(muslin_backing_spec, quilt_width, 1, MUSLIN_SIZE_MAX, MUSLIN_ARG_QUILT_WIDTH),
        OUTSIDE(muslin_backing_spec, quilt_length, 1, MUSLIN_SIZE_MAX, MUSLIN_ARG_QUILT_LENGTH),
        OUTSIDE(muslin_backing_spec, margin_left, 0, MUSLIN_SIZE_MAX, MUSLIN_ARG_MARGIN),
        OUTSIDE(muslin_backing_spec, margin_right, 0, MUSLIN_SIZE_MAX, MUSLIN_ARG_MARGIN),
        OUTSIDE(muslin_backing_spec, margin_top, 0, MUSLIN_SIZE_MAX, MUSLIN_ARG_MARGIN),
        OUTSIDE(muslin_backing_spec, margin_bottom, 0, MUSLIN_SIZE_MAX, MUSLIN_ARG_MARGIN),
        OUTSIDE(muslin_backing_spec, fabric_width, 1, MUSLIN_SIZE_MAX, MUSLIN_ARG_FABRIC_WIDTH),
        OUTSIDE(muslin_backing_spec, selvage, 0, WHOLE_IN(21) - 1, MUSLIN_ARG_SELVAGE),
        OUTSIDE(muslin_backing_spec, allowance, 0, MUSLIN_SIZE_MAX / 8, MUSLIN_ARG_SEAM_ALLOWANCE),
        OUTSIDE(muslin_backing_spec, end_loss, 0, MUSLIN_SIZE_MAX, MUSLIN_ARG_END_TRIM),
        OUTSIDE(muslin_backing_spec, repeat, 0, MUSLIN_SIZE_MAX, MUSLIN_ARG_REPEAT),
        OUTSIDE(muslin_backing_spec, step, 1, MUSLIN_SIZE_MAX, MUSLIN_ARG_STEP),
        REFUSAL(muslin_backing_spec, pad, 1, MUSLIN_ERR_STRUCT_TAIL, MUSLIN_ARG_SPEC),
        NOT_A_CHOICE(muslin_backing_spec, print, 5, MUSLIN_ARG_PRINT_DIRECTION),
    };
    ck_refusals_at(&layouts, 0, refusals, COUNT_OF(refusals));
    ck_refusals_at(&panels, 0, refusals, COUNT_OF(refusals));
}
END_TEST

START_TEST(a_tick_of_usable_width_is_enough_to_be_looked_at)
{
    struct muslin_backing_spec spec = no_margins(1, 1, WHOLE_IN(42));
    spec.selvage = WHOLE_IN(21) - 1;
    spec.fabric_width = WHOLE_IN(42) - 1;
    struct muslin_backing row = laid(&spec, MUSLIN_BACKING_LAYOUT_ONE_WIDTH);
    ck_assert_int_eq(row.joined_width, 1);
}
END_TEST

/* ---- rows ------------------------------------------------------------------------------------------------------ */

START_TEST(rows_are_asked_for_and_then_filled)
{
    struct muslin_backing rows[LAYOUTS];
    size_t count = 0;
    memset(rows, FILL, sizeof rows);
    ck_ok(muslin_backing_layouts(&throw_size, NULL, 0, 0, &count, NULL));
    ck_assert_uint_eq(count, LAYOUTS);
    count = 0;
    ck_status(muslin_backing_layouts(&throw_size, rows, sizeof rows[0], LAYOUTS - 1, &count, NULL), MUSLIN_ERR_BUFFER);
    ck_assert_uint_eq(count, LAYOUTS);
    ck_assert_int_eq(rows[0].layout, (int32_t)UINT32_C(0xA5A5A5A5));
    count = 0;
    ck_status(muslin_backing_panels(&throw_size, MUSLIN_BACKING_LAYOUT_CENTRE_ALONG, NULL, 0, 0, &count, NULL),
              MUSLIN_OK);
    ck_assert_uint_eq(count, 3);
    struct muslin_panel panel[3];
    memset(panel, FILL, sizeof panel);
    count = 0;
    ck_status(
        muslin_backing_panels(&throw_size, MUSLIN_BACKING_LAYOUT_CENTRE_ALONG, panel, sizeof panel[0], 2, &count, NULL),
        MUSLIN_ERR_BUFFER);
    ck_assert_uint_eq(count, 3);
    ck_assert_int_eq(panel[0].role, (int32_t)UINT32_C(0xA5A5A5A5));
}
END_TEST

START_TEST(rows_need_their_pointers_and_a_row_size_that_is_known)
{
    struct muslin_backing rows[LAYOUTS];
    struct muslin_panel panel[3];
    const int32_t centre = MUSLIN_BACKING_LAYOUT_CENTRE_ALONG;
    size_t count = 77;
    ck_status(muslin_backing_layouts(&throw_size, NULL, sizeof rows[0], 8, &count, NULL), MUSLIN_ERR_NULL);
    ck_status(muslin_backing_layouts(&throw_size, rows, sizeof rows[0], 8, NULL, NULL), MUSLIN_ERR_NULL);
    ck_status(muslin_backing_layouts(&throw_size, rows, sizeof rows[0] - 1, 8, &count, NULL), MUSLIN_ERR_STRUCT_SIZE);
    ck_status(muslin_backing_layouts(&throw_size, rows, 4097, 8, &count, NULL), MUSLIN_ERR_STRUCT_SIZE);
    ck_status(muslin_backing_panels(&throw_size, centre, NULL, sizeof panel[0], 3, &count, NULL), MUSLIN_ERR_NULL);
    ck_status(muslin_backing_panels(&throw_size, centre, panel, sizeof panel[0], 3, NULL, NULL), MUSLIN_ERR_NULL);
    ck_status(muslin_backing_panels(&throw_size, centre, panel, 0, 3, &count, NULL), MUSLIN_ERR_STRUCT_SIZE);
    ck_status(muslin_backing_panels(&throw_size, centre, panel, 4097, 3, &count, NULL), MUSLIN_ERR_STRUCT_SIZE);
    ck_assert_uint_eq(count, 77);
}
END_TEST

START_TEST(rows_lie_at_the_callers_stride)
{
    struct wider {
        struct muslin_backing row;
        int64_t newer;
    } rows[LAYOUTS];
    struct muslin_backing plain[LAYOUTS];
    size_t count = 0;
    memset(rows, FILL, sizeof rows);
    lay_all(&throw_size, plain);
    ck_ok(muslin_backing_layouts(&throw_size, &rows[0].row, sizeof rows[0], LAYOUTS, &count, NULL));
    for (int i = 0; i < LAYOUTS; i++) {
        ck_assert_uint_eq(rows[i].row.size, sizeof rows[0]);
        ck_assert_int_eq(rows[i].newer, 0);
        rows[i].row.size = plain[i].size;
        ck_assert_mem_eq(&rows[i].row, &plain[i], sizeof plain[i]);
    }
}
END_TEST

/* ---- panel by panel -------------------------------------------------------------------------------------------- */

enum { MOST_PIECES = 80 };

/* What lies between two others of a centre or an insert differs from them. */
static int32_t role_at(int32_t layout, size_t i)
{
    switch (layout) {
    case MUSLIN_BACKING_LAYOUT_CENTRE_ALONG:
    case MUSLIN_BACKING_LAYOUT_CENTRE_ACROSS:
        return i == 1 ? MUSLIN_PANEL_ROLE_CENTRE : MUSLIN_PANEL_ROLE_SIDE;
    case MUSLIN_BACKING_LAYOUT_INSERT_ALONG:
    case MUSLIN_BACKING_LAYOUT_INSERT_ACROSS:
        return i == 1 ? MUSLIN_PANEL_ROLE_INSERT : MUSLIN_PANEL_ROLE_HALF;
    default:
        return MUSLIN_PANEL_ROLE_WHOLE;
    }
}

/* Sewing the described pieces together, one after the other, gives the joined size, and they can be cut from the
 * cloth. */
static int panels_add_up(const struct muslin_backing_spec *spec, const struct muslin_backing *row)
{
    struct muslin_panel pieces[MOST_PIECES];
    size_t count = 0;
    muslin_len u = spec->fabric_width - 2 * spec->selvage;
    muslin_len across = 0;
    muslin_len sides = 0;
    muslin_len halves = 0;
    int64_t sewn = 0;
    int64_t seams = -1;
    ck_ok(muslin_backing_panels(spec, row->layout, pieces, sizeof pieces[0], MOST_PIECES, &count, NULL));
    for (size_t i = 0; i < count; i++) {
        const struct muslin_panel *piece = &pieces[i];
        int insert = piece->role == MUSLIN_PANEL_ROLE_INSERT;
        across += (insert ? piece->cut_length : piece->cut_width) - (i > 0 ? 2 * spec->allowance : 0);
        sides += piece->role == MUSLIN_PANEL_ROLE_SIDE ? piece->cut_width : 0;
        halves += piece->role == MUSLIN_PANEL_ROLE_HALF ? piece->cut_width : 0;
        sewn += piece->count;
        seams += 1 + (piece->count - 1);
        if (piece->role != role_at(row->layout, i))
            return 0;
        if (piece->position != (int32_t)i + 1 || piece->cut_width > u || piece->size != sizeof pieces[0])
            return 0;
        muslin_len run = piece->count * piece->cut_width - (piece->count - 1) * 2 * spec->allowance;
        if (insert ? run < row->panel_length : piece->cut_length != row->panel_length || piece->count != 1)
            return 0;
        if (insert && piece->count > 1 && run - piece->cut_width + 2 * spec->allowance >= row->panel_length)
            return 0;
        if ((piece->role == MUSLIN_PANEL_ROLE_WHOLE || piece->role == MUSLIN_PANEL_ROLE_CENTRE) &&
            piece->cut_width != u)
            return 0;
    }
    muslin_len joined = row->turned ? row->joined_length : row->joined_width;
    muslin_len needed = row->turned ? row->needed_length : row->needed_width;
    return across == joined && joined >= needed && sewn == row->pieces && seams == row->seams &&
           sides <= (row->panels - 1) * u && (halves == 0 || halves == u) && halves <= row->panels * u;
}

/* Of a layout that does not serve no least is known. */
START_TEST(a_layout_that_does_not_serve_is_said)
{
    struct muslin_backing_spec spec = no_margins(WHOLE_IN(59), WHOLE_IN(75), WHOLE_IN(42));
    struct muslin_problem problem = PROBLEM;
    char sentence[200];
    size_t count = 0;
    ck_status(muslin_backing_panels(&spec, MUSLIN_BACKING_LAYOUT_ONE_WIDTH, NULL, 0, 0, &count, &problem),
              MUSLIN_ERR_NO_FIT);
    snprintf(sentence, sizeof sentence, "Backing layout is 1. %s", muslin_status_sentence(MUSLIN_ERR_NO_FIT));
    ck_assert_str_eq(problem.text, sentence);
}
END_TEST

START_TEST(the_pieces_described_add_up_to_the_joined_size)
{
    uint64_t dice = 31;
    int wrong = 0;
    for (int i = 0; i < 5000; i++) {
        struct request r = any_request(&dice);
        struct muslin_backing_spec spec = spec_of(&r);
        struct muslin_backing rows[LAYOUTS];
        size_t count = 0;
        if (muslin_backing_layouts(&spec, rows, sizeof rows[0], LAYOUTS, &count, NULL) != MUSLIN_OK)
            continue;
        for (int k = 0; k < LAYOUTS; k++) {
            if (rows[k].possible)
                wrong += panels_add_up(&spec, &rows[k]) == 0;
            else
                wrong += muslin_backing_panels(&spec, k + 1, NULL, 0, 0, &count, NULL) != MUSLIN_ERR_NO_FIT;
        }
    }
    ck_assert_int_eq(wrong, 0);
}
END_TEST

/* 59 in across from 42 in cloth: 42 + 2 x 9 1/2 less four allowances of 1/2 in is 59. */
START_TEST(a_centre_is_sewn_side_centre_side)
{
    struct muslin_backing_spec spec = no_margins(WHOLE_IN(59), WHOLE_IN(75), WHOLE_IN(42));
    struct muslin_panel panel[3];
    size_t count = 0;
    ck_ok(muslin_backing_panels(&spec, MUSLIN_BACKING_LAYOUT_CENTRE_ALONG, panel, sizeof panel[0], 3, &count, NULL));
    ck_assert_int_eq(panel[0].role, MUSLIN_PANEL_ROLE_SIDE);
    ck_assert_int_eq(panel[0].cut_width, IN(9, 1, 2));
    ck_assert_int_eq(panel[0].cut_length, WHOLE_IN(75));
    ck_assert_int_eq(panel[1].role, MUSLIN_PANEL_ROLE_CENTRE);
    ck_assert_int_eq(panel[1].cut_width, WHOLE_IN(42));
    ck_assert_int_eq(panel[2].role, MUSLIN_PANEL_ROLE_SIDE);
    ck_assert_int_eq(panel[2].cut_width, IN(9, 1, 2));
}
END_TEST

/* Geometry: strip x = need - panel + 4 q = 56 - 42 + 2 = 16 in. 75 in long from strips 42 in long: two join to 83. */
START_TEST(an_insert_lies_between_two_halves_and_is_joined_from_strips)
{
    struct muslin_backing_spec spec = no_margins(WHOLE_IN(56), WHOLE_IN(75), WHOLE_IN(42) + 1);
    struct muslin_panel panel[3];
    size_t count = 0;
    ck_ok(muslin_backing_panels(&spec, MUSLIN_BACKING_LAYOUT_INSERT_ALONG, panel, sizeof panel[0], 3, &count, NULL));
    ck_assert_uint_eq(count, 3);
    ck_assert_int_eq(panel[0].role, MUSLIN_PANEL_ROLE_HALF);
    ck_assert_int_eq(panel[0].cut_width, WHOLE_IN(21));
    ck_assert_int_eq(panel[1].role, MUSLIN_PANEL_ROLE_INSERT);
    ck_assert_int_eq(panel[1].cut_length, WHOLE_IN(16) - 1);
    ck_assert_int_eq(panel[1].cut_width, WHOLE_IN(42) + 1);
    ck_assert_int_eq(panel[1].count, 2);
    ck_assert_int_eq(panel[2].role, MUSLIN_PANEL_ROLE_HALF);
    ck_assert_int_eq(panel[2].cut_width, WHOLE_IN(21) + 1);
    struct muslin_backing row = laid(&spec, MUSLIN_BACKING_LAYOUT_INSERT_ALONG);
    ck_assert_int_eq(row.cloth_length, WHOLE_IN(75) + 2 * (WHOLE_IN(16) - 1));
}
END_TEST

START_TEST(an_unknown_layout_is_no_choice_and_an_impossible_one_does_not_fit)
{
    struct muslin_problem problem = PROBLEM;
    size_t count = 77;
    ck_status(muslin_backing_panels(&throw_size, 0, NULL, 0, 0, &count, &problem), MUSLIN_ERR_CHOICE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_LAYOUT);
    ck_status(muslin_backing_panels(&throw_size, 9, NULL, 0, 0, &count, NULL), MUSLIN_ERR_CHOICE);
    ck_status(muslin_backing_panels(&throw_size, MUSLIN_BACKING_LAYOUT_ONE_WIDTH, NULL, 0, 0, &count, &problem),
              MUSLIN_ERR_NO_FIT);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_LAYOUT);
    ck_assert_int_eq(problem.value, MUSLIN_BACKING_LAYOUT_ONE_WIDTH);
    ck_assert_int_eq(problem.limit, 0);
    ck_assert_uint_eq(count, 77);
}
END_TEST

static muslin_status backing_init(void *spec, uint32_t size)
{
    return muslin_backing_spec_init(spec, size);
}

START_TEST(init_call_gives_the_macros_bytes)
{
    const struct muslin_backing_spec spec = MUSLIN_BACKING_SPEC_INIT;
    ck_init_rules(backing_init, &spec, sizeof spec);
}
END_TEST

void add_finishing_backing(Suite *suite)
{
    TCase *published = tcase_create("backing: published figures");
    tcase_add_test(published, four_inches_on_each_side_make_sixty_by_eighty_sixty_eight_by_eighty_eight);
    tcase_add_test(published, three_panels_of_ninety_six_inches_are_eight_yards_or_eight_and_a_quarter);
    tcase_add_test(published, wide_cloth_is_turned_when_only_the_length_fits_its_width);
    tcase_add_test(published, two_forty_inch_panels_do_not_reach_eighty_inches);
    tcase_add_test(published, two_lengths_of_forty_two_join_to_eighty_three);
    tcase_add_test(published, a_centre_panel_needs_its_sides_wider_by_the_seams);
    tcase_add_test(published, two_ninety_four_inch_lengths_are_five_and_a_quarter_yards);
    tcase_add_test(published, a_repeat_of_twenty_seven_makes_ninety_six_a_hundred_and_eight);
    tcase_add_test(published, one_width_serves_a_small_quilt_only_while_the_margins_fit);
    suite_add_tcase(suite, published);

    TCase *brute = tcase_create("backing: brute force");
    tcase_set_timeout(brute, 60);
    tcase_add_test(brute, all_layouts_are_what_laying_panels_down_finds);
    tcase_add_test(brute, the_slack_of_a_centre_panel_is_right_for_every_small_width);
    tcase_add_test(brute, rounding_panel_by_panel_swaps_the_two_roundings);
    tcase_add_test(brute, cloth_no_wider_than_its_seams_fits_nothing_and_the_least_width_is_named);
    tcase_add_test(brute, a_layout_that_does_not_serve_is_said);
    tcase_add_test(brute, the_pieces_described_add_up_to_the_joined_size);
    suite_add_tcase(suite, brute);

    TCase *rules = tcase_create("backing: rules");
    tcase_add_test(rules, init_call_gives_the_macros_bytes);
    tcase_add_test(rules, a_print_with_a_direction_forbids_turned_panels_and_inserts);
    tcase_add_test(rules, an_insert_can_buy_less_than_wide_cloth_turned);
    tcase_add_test(rules, a_print_with_a_direction_forbids_wide_cloth_turned);
    tcase_add_test(rules, the_most_cloth_there_can_be_is_still_a_right_number);
    tcase_add_test(rules, both_calls_check_their_request);
    tcase_add_test(rules, both_calls_read_a_newer_request_with_a_zero_tail);
    tcase_add_test(rules, both_calls_refuse_what_lies_outside_their_ranges);
    tcase_add_test(rules, a_tick_of_usable_width_is_enough_to_be_looked_at);
    tcase_add_test(rules, rows_are_asked_for_and_then_filled);
    tcase_add_test(rules, rows_need_their_pointers_and_a_row_size_that_is_known);
    tcase_add_test(rules, rows_lie_at_the_callers_stride);
    tcase_add_test(rules, a_centre_is_sewn_side_centre_side);
    tcase_add_test(rules, an_insert_lies_between_two_halves_and_is_joined_from_strips);
    tcase_add_test(rules, an_unknown_layout_is_no_choice_and_an_impossible_one_does_not_fit);
    suite_add_tcase(suite, rules);
}
