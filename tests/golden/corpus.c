/* corpus.c - the calls behind the digest: every exported function, with good input mostly and bad input now and then.
 *
 * SPDX-License-Identifier: MIT
 *
 * muslin_allocator_libc alone is not called: it is not there on a target without a C library. Version numbers and
 * texts are called and not taken, since they change with each release. */
#include "golden.h"

/* ---- base ------------------------------------------------------------------------------------------------------ */

void golden_base(struct golden *g)
{
    take_number(g, muslin_version() >= MUSLIN_VERSION);
    take_number(g, muslin_version_text()[0] != 0);
    muslin_problem_init(&g->problem, (uint32_t)sizeof g->problem);
    take_number(g, g->problem.size == sizeof g->problem);
    for (muslin_status status = -1; status <= muslin_status_count(); status++) {
        take_words(g, muslin_status_name(status));
        take_words(g, muslin_status_sentence(status));
    }
    for (int32_t argument = -1; argument <= muslin_argument_count(); argument++)
        take_words(g, muslin_argument_words(argument));
    take_words(g, muslin_warning_name(1u << (muslin_warning_count() - 1)));
    for (uint32_t warning = 0; warning < 1u << 17; warning++) {
        take_words(g, muslin_warning_name(warning));
        take_words(g, muslin_warning_sentence(warning));
    }
    for (int32_t i = -1; i <= muslin_constant_count(); i++) {
        take_words(g, muslin_constant_name(i));
        (void)muslin_constant_value(i); /* the layout table has them: the version is one */
    }
}

/* ---- length ---------------------------------------------------------------------------------------------------- */

struct muslin_rounding_spec draw_rounding(struct golden *g)
{
    static const int16_t grids[] = { 1, 127, 254, 508, 1016, 2032, 4064, 8128, 32, 320, 3200, 7 };
    SPEC(muslin_rounding_spec, rounding);
    rounding.flags = draw_flags(g, 0);
    rounding.grid = grids[draw_below(g, (int64_t)(sizeof grids / sizeof grids[0]))];
    if (draw_rarely(g, 12))
        rounding.grid = draw_size(g, 40);
    if (draw_rarely(g, 3))
        rounding.tolerance = draw_below(g, rounding.grid < 1 ? 1 : rounding.grid);
    if (draw_rarely(g, 40))
        rounding.tolerance = draw_size(g, 1);
    rounding.direction = draw_choice(g, MUSLIN_DIRECTION_UP, MUSLIN_DIRECTION_NEAREST);
    return rounding;
}

/* The calls without a problem. Results come by pointer: by value they could be read before the call. */
static void told_length(struct golden *g, muslin_status status, const muslin_len *result)
{
    take_number(g, status);
    take_number(g, *result);
}

static void told_rounded(struct golden *g, muslin_status status, const struct muslin_rounded *result)
{
    take_number(g, status);
    TAKE(g, muslin_rounded, *result);
}

static void plain_sums(struct golden *g)
{
    EACH_ROUND {
        muslin_len a = draw_length(g);
        muslin_len b = draw_length(g);
        int64_t factor = draw_rarely(g, 3) ? draw_length(g) : draw_between(g, -200, 200);
        muslin_len result = -77;
        told_length(g, muslin_length_add(a, b, &result), &result);
        told_length(g, muslin_length_subtract(a, b, &result), &result);
        told_length(g, muslin_length_multiply(a, factor, &result), &result);
        take_number(g, muslin_length_compare(a, b));
    }
}

static void rounded_sums(struct golden *g)
{
    EACH_ROUND {
        struct muslin_rounding_spec rounding = draw_rounding(g);
        muslin_len a = draw_length(g);
        int64_t above = draw_rarely(g, 3) ? draw_length(g) : draw_between(g, -100, 100);
        int64_t below = draw_rarely(g, 3) ? draw_length(g) : draw_between(g, 0, 100);
        OUT(muslin_rounded, result);
        told_rounded(g, muslin_length_divide(a, above, &rounding, &result), &result);
        told_rounded(g, muslin_length_scale(a, above, below, &rounding, &result), &result);
        told_rounded(g, muslin_length_snap(a, &rounding, &result), &result);
    }
}

/* Mostly of something up to 2 yd each way, in doubled square ticks. */
static int64_t draw_area(struct golden *g)
{
    int64_t width = draw_between(g, -1, 72 * MUSLIN_TICKS_PER_INCH);
    int64_t height = draw_between(g, 0, 72 * MUSLIN_TICKS_PER_INCH);
    return draw_rarely(g, 10) ? draw_length(g) : 2 * width * height;
}

static void irrational_sizes(struct golden *g)
{
    EACH_ROUND {
        struct muslin_rounding_spec rounding = draw_rounding(g);
        muslin_len a = draw_rarely(g, 4) ? draw_below(g, MUSLIN_SIZE_MAX) : draw_size(g, 120);
        muslin_len b = draw_size(g, 120);
        int64_t area = draw_area(g);
        OUT(muslin_rounded, result);
        told_rounded(g, muslin_length_times_root2(a, &rounding, &result), &result);
        told_rounded(g, muslin_length_over_root2(a, &rounding, &result), &result);
        told_rounded(g, muslin_length_equilateral_height(a, &rounding, &result), &result);
        told_rounded(g, muslin_length_equilateral_side(a, &rounding, &result), &result);
        told_rounded(g, muslin_length_hypotenuse(a, b, &rounding, &result), &result);
        told_rounded(g, muslin_length_root_of_area(area, &rounding, &result), &result);
    }
}

/* What an array form is given and gives. */
struct arrays {
    muslin_len a[FEW];
    muslin_len b[FEW];
    int64_t factors[FEW];
    muslin_len out[FEW];
    muslin_status statuses[FEW];
    muslin_status *wanted; /* statuses, or null */
    size_t failed;
};

static struct arrays draw_arrays(struct golden *g)
{
    struct arrays all = { { 0 }, { 0 }, { 0 }, { 0 }, { 0 }, NULL, 99 };
    for (int32_t i = 0; i < FEW; i++) {
        all.a[i] = draw_length(g);
        all.b[i] = draw_length(g);
        all.factors[i] = draw_between(g, -1000, 1000);
        if (draw_rarely(g, 12))
            all.factors[i] = draw_length(g);
    }
    return all;
}

static void told_arrays(struct golden *g, muslin_status status, const struct arrays *all)
{
    take_number(g, status);
    take_number(g, (int64_t)all->failed);
    for (int32_t i = 0; i < FEW; i++) {
        take_number(g, all->out[i]);
        take_number(g, all->statuses[i]);
    }
}

static void array_sums(struct golden *g)
{
    EACH_ROUND {
        struct arrays all = draw_arrays(g);
        struct muslin_rounding_spec rounding = draw_rounding(g);
        int64_t above = draw_between(g, -50, 50);
        int64_t below = draw_between(g, 0, 50);
        muslin_len sum = -77;
        all.wanted = draw_rarely(g, 2) ? all.statuses : NULL;
        told_arrays(g, muslin_length_add_n(all.a, all.b, FEW, all.out, all.wanted, &all.failed), &all);
        told_arrays(g, muslin_length_subtract_n(all.a, all.b, FEW, all.out, all.wanted, &all.failed), &all);
        told_arrays(g, muslin_length_multiply_n(all.a, all.factors, FEW, all.out, all.wanted, &all.failed), &all);
        told_arrays(g, muslin_length_scale_n(all.a, FEW, above, below, &rounding, all.out, all.wanted, &all.failed),
                    &all);
        told_arrays(g, muslin_length_snap_n(all.a, FEW, &rounding, all.out, all.wanted, &all.failed), &all);
        told_length(g, muslin_length_sum(all.a, FEW, &sum), &sum);
        told_length(g, muslin_length_dot(all.a, all.factors, FEW, &sum), &sum);
    }
}

void golden_length(struct golden *g)
{
    plain_sums(g);
    rounded_sums(g);
    irrational_sizes(g);
    array_sums(g);
}

/* ---- text ------------------------------------------------------------------------------------------------------ */

/* Scraps that texts are put together from, each behind a zero byte; the odd ones: vulgar half, seven eighths, minus,
 * fraction slash, no-break space, double prime, a stray byte. */
static const char scraps[] = "1\0" "2\0" "3/4\0" "5/8\0" "12\0" "0\0" "7.25\0" ".5\0" "6,35\0" " \0" " \0" "-\0" "+\0"
                             "/\0" "in\0" "\"\0" " yd \0" "ft\0" "'\0" "mm\0" " cm\0" "m\0" "yards\0" "INCHES\0"
                             "1/0\0" "99999999999999999999\0" "\xc2\xbd\0" "\xe2\x85\x9e\0" "\xe2\x88\x92\0"
                             "\xe2\x81\x84\0" "\xc2\xa0\0" "\xe2\x80\xb3\0" "\xff\0" "x\0" "metre";
enum { SCRAPS = 35, TEXT = 240 };

static size_t add_scrap(char *text, size_t length, int64_t which)
{
    size_t at = 0;
    while (which > 0)
        if (scraps[at++] == 0)
            which--;
    for (; scraps[at] != 0; at++)
        text[length++] = scraps[at];
    return length;
}

static size_t draw_text(struct golden *g, char *text)
{
    int64_t count = draw_between(g, 0, 7);
    size_t length = 0;
    for (int64_t i = 0; i < count; i++)
        length = add_scrap(text, length, draw_below(g, SCRAPS));
    return length;
}

static void parse(struct golden *g, const char *text, size_t length)
{
    SPEC(muslin_parse_spec, spec);
    OUT(muslin_parsed, out);
    spec.flags = draw_flags(g, 0);
    spec.default_unit = draw_choice(g, MUSLIN_LENGTH_UNIT_INCH, MUSLIN_LENGTH_UNIT_M);
    spec.decimal_sign = draw_rarely(g, 4) ? ',' : '.';
    told(g, muslin_length_parse(text, length, draw_rarely(g, 3) ? NULL : &spec, &out, ask(g)));
    TAKE(g, muslin_parsed, out);
}

static struct muslin_format_spec draw_format(struct golden *g)
{
    SPEC(muslin_format_spec, spec);
    spec.flags = draw_flags(g, MUSLIN_FORMAT_UNICODE | MUSLIN_FORMAT_BARE);
    spec.style = draw_choice(g, MUSLIN_STYLE_INCH_FRACTION, MUSLIN_STYLE_CM);
    spec.denominator = draw_rarely(g, 3) ? draw_choice(g, 1, 64) : (int32_t)1 << draw_below(g, 7);
    spec.decimals = draw_choice(g, 0, 6);
    spec.decimal_sign = draw_rarely(g, 4) ? ',' : '.';
    spec.direction = draw_choice(g, MUSLIN_DIRECTION_UP, MUSLIN_DIRECTION_NEAREST);
    return spec;
}

static void format(struct golden *g)
{
    struct muslin_format_spec spec = draw_format(g);
    char text[64] = "";
    size_t need = 0;
    int32_t exact = -1;
    size_t cap = draw_rarely(g, 10) ? (size_t)draw_below(g, 12) : sizeof text;
    muslin_len length = draw_length(g);
    told(g, muslin_length_format(length, draw_rarely(g, 6) ? NULL : &spec, text, cap, &need, &exact, ask(g)));
    take_number(g, (int64_t)need);
    take_number(g, exact);
    take_text(g, text, sizeof text);
    size_t used = 0;
    while (text[used] != 0)
        used++;
    parse(g, text, used);
}

void golden_text(struct golden *g)
{
    for (int32_t unit = -1; unit <= MUSLIN_LENGTH_UNIT_M + 1; unit++) {
        const char *word = muslin_length_unit_word(unit);
        take_number(g, muslin_length_unit_ticks(unit));
        take_text(g, word, word[0] == 0 ? 0 : 1);
    }
    for (int32_t round = 0; round < 10 * ROUNDS; round++) {
        char text[TEXT];
        size_t length = draw_text(g, text);
        parse(g, text, length);
    }
    for (int32_t round = 0; round < 4 * ROUNDS; round++)
        format(g);
}

/* ---- seam ------------------------------------------------------------------------------------------------------ */

static struct muslin_seam_spec draw_seam_spec(struct golden *g)
{
    SPEC(muslin_seam_spec, seam);
    seam.flags = draw_flags(g, 0);
    seam.allowance = draw_seam(g);
    seam.take_up = draw_take_up(g);
    return seam;
}

void told_problem_length(struct golden *g, muslin_status status, const muslin_len *result)
{
    told(g, status);
    take_number(g, *result);
}

void told_problem_rounded(struct golden *g, muslin_status status, const struct muslin_rounded *result)
{
    told(g, status);
    TAKE(g, muslin_rounded, *result);
}

static void cut_and_finished(struct golden *g)
{
    EACH_ROUND {
        struct muslin_seam_spec seam = draw_seam_spec(g);
        struct arrays all = draw_arrays(g);
        muslin_len size = draw_size(g, 60);
        muslin_len result = -77;
        for (int32_t i = 0; i < FEW; i++)
            all.a[i] = draw_size(g, 60);
        all.wanted = draw_rarely(g, 2) ? all.statuses : NULL;
        told_problem_length(g, muslin_seam_cut_from_finished(size, &seam, &result, ask(g)), &result);
        told_problem_length(g, muslin_seam_finished_from_cut(size, &seam, &result, ask(g)), &result);
        told_arrays(g, muslin_seam_cut_from_finished_n(all.a, FEW, &seam, all.out, all.wanted, &all.failed), &all);
        told_arrays(g, muslin_seam_finished_from_cut_n(all.a, FEW, &seam, all.out, all.wanted, &all.failed), &all);
    }
}

static void pieces(struct golden *g)
{
    EACH_ROUND {
        SPEC(muslin_piece_spec, spec);
        OUT(muslin_piece, out);
        spec.flags = draw_flags(g, 0);
        spec.finished_width = draw_size(g, 60);
        spec.finished_height = draw_size(g, 60);
        spec.left = draw_seam(g);
        spec.right = draw_seam(g);
        spec.top = draw_seam(g);
        spec.bottom = draw_seam(g);
        spec.take_up = draw_take_up(g);
        told(g, muslin_seam_piece(&spec, &out, ask(g)));
        TAKE(g, muslin_piece, out);
    }
}

static void rows_of_pieces(struct golden *g)
{
    EACH_ROUND {
        struct muslin_seam_spec seam = draw_seam_spec(g);
        struct muslin_rounding_spec rounding = draw_rounding(g);
        muslin_len cuts[FEW];
        muslin_len cut = draw_size(g, 12);
        int64_t count = draw_count(g, 40);
        int64_t above = draw_between(g, 0, 20);
        int64_t below = draw_between(g, 0, 20);
        OUT(muslin_sewn_row, row);
        OUT(muslin_rounded, rounded);
        for (int32_t i = 0; i < FEW; i++)
            cuts[i] = draw_size(g, 12);
        told(g, muslin_seam_row_equal(cut, count, &seam, &row, ask(g)));
        TAKE(g, muslin_sewn_row, row);
        told(g, muslin_seam_row(cuts, (size_t)draw_below(g, FEW + 1), &seam, &row, ask(g)));
        TAKE(g, muslin_sewn_row, row);
        told_problem_rounded(g, muslin_seam_strip_for_finished(cut, count, &seam, &rounding, &rounded, ask(g)),
                             &rounded);
        told_problem_rounded(g, muslin_seam_resize_cut(cut, above, below, &seam, &rounding, &rounded, ask(g)),
                             &rounded);
    }
}

static void calibrations(struct golden *g)
{
    EACH_ROUND {
        struct muslin_rounding_spec rounding = draw_rounding(g);
        muslin_len cuts[FEW];
        muslin_len sum = 0;
        size_t n = (size_t)draw_below(g, FEW + 1);
        for (int32_t i = 0; i < FEW; i++) {
            cuts[i] = draw_between(g, 8, 80) * 1016;
            sum += i < (int32_t)n ? cuts[i] : 0;
        }
        muslin_len measured = sum - (int64_t)n * draw_between(g, 3000, 5000);
        muslin_len stitched = draw_seam(g);
        if (draw_rarely(g, 20))
            measured = draw_size(g, 60);
        OUT(muslin_calibration, out);
        told(g, muslin_seam_calibrate(cuts, n, measured, stitched, &out, ask(g)));
        TAKE(g, muslin_calibration, out);
        SPEC(muslin_carry_on_spec, spec);
        OUT(muslin_rounded, rounded);
        spec.flags = draw_flags(g, 0);
        spec.cut_total = sum;
        spec.strips = draw_rarely(g, 10) ? draw_count(g, 20) : (int64_t)n;
        spec.measured = measured;
        spec.later_cut = draw_size(g, 20);
        spec.allowance = stitched;
        spec.take_up = draw_take_up(g);
        told_problem_rounded(g, muslin_seam_carry_on(&spec, &rounding, &rounded, ask(g)), &rounded);
    }
}

static void errors_and_shares(struct golden *g)
{
    EACH_ROUND {
        muslin_len error = draw_size(g, 1);
        int64_t seams = draw_count(g, 200);
        int64_t cut_area = draw_area(g);
        int64_t finished_area = cut_area - draw_between(g, -1, (cut_area < 0 ? 0 : cut_area) / 3);
        muslin_len result = -77;
        int32_t share = -77;
        if (draw_rarely(g, 2))
            error = error == INT64_MIN ? error : -error;
        told_problem_length(g, muslin_seam_error_total(error, seams, &result, ask(g)), &result);
        told_problem_length(g, muslin_seam_error_limit(error, seams, &result, ask(g)), &result);
        told(g, muslin_seam_share(cut_area, finished_area, &share, ask(g)));
        take_number(g, share);
    }
}

void golden_seam(struct golden *g)
{
    cut_and_finished(g);
    pieces(g);
    rows_of_pieces(g);
    calibrations(g);
    errors_and_shares(g);
}

/* ---- fabric ---------------------------------------------------------------------------------------------------- */

static int32_t draw_share(struct golden *g, int64_t most)
{
    return (int32_t)(draw_rarely(g, 2) ? 0 : draw_between(g, -1, most));
}

static muslin_len draw_step(struct golden *g)
{
    static const int32_t steps[] = { 36576, 73152, 97536, 32000, 80000, 1 };
    return draw_rarely(g, 20) ? draw_size(g, 40) : steps[draw_below(g, 6)];
}

static void purchases(struct golden *g)
{
    EACH_ROUND {
        SPEC(muslin_purchase_spec, spec);
        OUT(muslin_purchase, out);
        muslin_len labelled = draw_size(g, 60);
        muslin_len selvage = draw_size(g, 1);
        int64_t area = draw_area(g);
        int32_t shrinkage = draw_share(g, 120000);
        muslin_len result = -77;
        spec.flags = draw_flags(g, 0);
        spec.needed = draw_size(g, 400);
        spec.extra = draw_rarely(g, 2) ? 0 : draw_size(g, 10);
        spec.step = draw_step(g);
        spec.shrinkage = draw_share(g, 1000000);
        spec.extra_share = draw_share(g, 300000);
        told(g, muslin_fabric_purchase(&spec, &out, ask(g)));
        TAKE(g, muslin_purchase, out);
        told_problem_length(g, muslin_fabric_usable_width(labelled, selvage, shrinkage, &result, ask(g)), &result);
        told_problem_length(g, muslin_fabric_area_bound(area, labelled, &result, ask(g)), &result);
    }
}

static void cloth(struct golden *g)
{
    EACH_ROUND {
        SPEC(muslin_cloth_spec, spec);
        OUT(muslin_cloth_pieces, out);
        spec.flags = draw_flags(g, MUSLIN_CLOTH_MAY_TURN);
        spec.width = draw_size(g, 45);
        spec.length = draw_size(g, 80);
        spec.piece_width = draw_size(g, 12);
        spec.piece_length = draw_size(g, 12);
        spec.loss_across = draw_rarely(g, 2) ? 0 : draw_size(g, 1);
        spec.loss_along = draw_rarely(g, 2) ? 0 : draw_size(g, 1);
        told(g, muslin_fabric_pieces(&spec, &out, ask(g)));
        TAKE(g, muslin_cloth_pieces, out);
    }
}

static void strips(struct golden *g)
{
    EACH_ROUND {
        SPEC(muslin_strips_spec, spec);
        OUT(muslin_strips, out);
        spec.flags = draw_flags(g, 0);
        spec.pieces = draw_count(g, 500);
        spec.piece_across = draw_size(g, 12);
        spec.strip_cut = draw_size(g, 10);
        spec.usable_width = draw_size(g, 60);
        spec.end_loss = draw_rarely(g, 2) ? 0 : draw_size(g, 1);
        spec.straightening = draw_rarely(g, 2) ? 0 : draw_size(g, 2);
        told(g, muslin_fabric_strips(&spec, &out, ask(g)));
        TAKE(g, muslin_strips, out);
    }
}

static struct muslin_stock_spec draw_stock(struct golden *g)
{
    SPEC(muslin_stock_spec, stock);
    stock.flags = draw_flags(g, 0);
    stock.width = draw_size(g, 44);
    stock.length = draw_size(g, 36);
    stock.count = draw_count(g, 60);
    stock.edge = draw_choice(g, MUSLIN_EDGE_STRAIGHT, MUSLIN_EDGE_PINKED_VALLEYS);
    stock.pink_depth = stock.edge == MUSLIN_EDGE_STRAIGHT ? 0 : draw_below(g, 2000);
    stock.care = draw_choice(g, MUSLIN_CARE_UNWASHED, MUSLIN_CARE_WASHED);
    stock.print = draw_choice(g, MUSLIN_PRINT_NONE, MUSLIN_PRINT_STRIPE_ACROSS);
    stock.kind = draw_choice(g, MUSLIN_STOCK_YARDAGE, MUSLIN_STOCK_FAT_EIGHTH);
    if (draw_rarely(g, 20))
        stock.pink_depth = draw_size(g, 20);
    return stock;
}

static void stock(struct golden *g)
{
    EACH_ROUND {
        struct muslin_stock_spec in_hand[3];
        OUT(muslin_stock_yield, out);
        muslin_len width = -77;
        muslin_len length = -77;
        uint32_t warnings = 77;
        int32_t allowed = -77;
        for (int32_t i = 0; i < 3; i++)
            in_hand[i] = draw_stock(g);
        int32_t align = draw_choice(g, MUSLIN_EDGE_PINKED_TIPS, MUSLIN_EDGE_PINKED_VALLEYS);
        muslin_len strip_cut = draw_size(g, 6);
        int64_t wanted = draw_count(g, 300);
        told(g, muslin_stock_size(&in_hand[0], align, &width, &length, ask(g)));
        take_number(g, width);
        take_number(g, length);
        told(g, muslin_stock_strips(&in_hand[0], strip_cut, wanted, &out, ask(g)));
        TAKE(g, muslin_stock_yield, out);
        told(g, muslin_stock_check(in_hand, sizeof in_hand[0], (size_t)draw_below(g, 4), &warnings, ask(g)));
        take_number(g, warnings);
        int32_t print = draw_choice(g, MUSLIN_PRINT_NONE, MUSLIN_PRINT_STRIPE_ACROSS);
        int32_t turns = draw_choice(g, 0, 3);
        told(g, muslin_print_may_turn(print, turns, &allowed, ask(g)));
        take_number(g, allowed);
    }
}

void golden_fabric(struct golden *g)
{
    purchases(g);
    cloth(g);
    strips(g);
    stock(g);
}

/* ---- reference ------------------------------------------------------------------------------------------------- */

void golden_reference(struct golden *g)
{
    /* The rows of 1.0; others may come behind them. */
    static const unsigned char rows[MUSLIN_TABLE_BATTING_OTHER + 1] = { 0, 7, 15, 7, 11, 5, 3, 5, 17, 2, 5, 3 };
    for (int32_t table = MUSLIN_TABLE_BATTING - 1; table <= MUSLIN_TABLE_BATTING_OTHER; table++) {
        int64_t count = 0;
        take_number(g, muslin_reference_count(table, &count, ask(g)));
        take_number(g, count >= rows[table]);
        for (int64_t index = -1; index < rows[table]; index++) {
            OUT(muslin_reference, row);
            told(g, muslin_reference_row(table, index, &row, ask(g)));
            TAKE(g, muslin_reference, row);
            take_words(g, muslin_reference_name(table, index));
            take_words(g, muslin_reference_source(table, index));
            take_words(g, muslin_reference_note(table, index));
        }
    }
}

/* ---- stripset -------------------------------------------------------------------------------------------------- */

static void yields(struct golden *g)
{
    EACH_ROUND {
        SPEC(muslin_yield_spec, spec);
        OUT(muslin_yield, out);
        spec.flags = draw_flags(g, MUSLIN_YIELD_FROM_ONE_END);
        spec.strip_length = draw_size(g, 110);
        spec.segment_cut = draw_size(g, 12);
        spec.end_trim = draw_rarely(g, 2) ? 0 : draw_size(g, 1);
        spec.resquare_loss = draw_rarely(g, 2) ? 0 : draw_size(g, 1);
        spec.resquare_every = draw_count(g, 4);
        spec.fold_clear = spec.flags != 0 || draw_rarely(g, 2) ? 0 : draw_size(g, 3);
        told(g, muslin_stripset_yield(&spec, &out, ask(g)));
        TAKE(g, muslin_yield, out);
    }
}

static void shortest_strips(struct golden *g)
{
    EACH_ROUND {
        muslin_len lengths[FEW];
        muslin_len shortest = -77;
        size_t index = 99;
        uint32_t warnings = 77;
        size_t n = (size_t)draw_below(g, FEW + 1);
        for (int32_t i = 0; i < FEW; i++)
            lengths[i] = draw_rarely(g, 3) ? draw_size(g, 44) : MUSLIN_USABLE_WIDTH_USUAL;
        told(g, muslin_stripset_shortest(lengths, n, &shortest, &index, &warnings, ask(g)));
        take_number(g, shortest);
        take_number(g, (int64_t)index);
        take_number(g, warnings);
    }
}

static void wishes(struct golden *g)
{
    EACH_ROUND {
        SPEC(muslin_need_spec, need_spec);
        OUT(muslin_need, need);
        need_spec.flags = draw_flags(g, 0);
        need_spec.segments = draw_count(g, 400);
        need_spec.segments_per_set = draw_count(g, 12);
        need_spec.strips_per_set = draw_count(g, 10);
        need_spec.strips_per_bundle = draw_count(g, 42);
        need_spec.strip_cut = draw_rarely(g, 2) ? 0 : draw_size(g, 6);
        told(g, muslin_stripset_need(&need_spec, &need, ask(g)));
        TAKE(g, muslin_need, need);
        SPEC(muslin_harvest_spec, harvest_spec);
        OUT(muslin_harvest, harvest);
        harvest_spec.flags = draw_flags(g, 0);
        harvest_spec.strips = draw_count(g, 200);
        harvest_spec.strips_per_set = draw_count(g, 10);
        harvest_spec.segments_per_set = draw_count(g, 12);
        harvest_spec.segments_per_block = draw_count(g, 6);
        harvest_spec.blocks_per_top = draw_count(g, 60);
        told(g, muslin_stripset_harvest(&harvest_spec, &harvest, ask(g)));
        TAKE(g, muslin_harvest, harvest);
    }
}

static void sets_of_prints(struct golden *g)
{
    EACH_ROUND {
        struct muslin_stripset_print rows[4];
        int64_t sets = -77;
        size_t scarcest = 99;
        size_t n = (size_t)draw_below(g, 5);
        int64_t wanted = draw_rarely(g, 2) ? 0 : draw_count(g, 20);
        for (int32_t i = 0; i < 4; i++) {
            muslin_stripset_print_init(&rows[i], (uint32_t)sizeof rows[i]);
            rows[i].size = draw_struct_size(g, sizeof rows[i]);
            rows[i].flags = draw_flags(g, 0);
            rows[i].in_hand = draw_count(g, 60);
            rows[i].per_set = draw_count(g, 3);
        }
        told(g, muslin_stripset_prints(rows, sizeof rows[0], n, wanted, &sets, &scarcest, ask(g)));
        take_number(g, sets);
        take_number(g, (int64_t)scarcest);
        for (int32_t i = 0; i < 4; i++)
            TAKE(g, muslin_stripset_print, rows[i]);
    }
}

void golden_stripset(struct golden *g)
{
    yields(g);
    shortest_strips(g);
    wishes(g);
    sets_of_prints(g);
}

/* ---- setting --------------------------------------------------------------------------------------------------- */

static void settings(struct golden *g)
{
    EACH_ROUND {
        SPEC(muslin_setting_spec, spec);
        OUT(muslin_setting, out);
        int32_t turns = -77;
        spec.flags = draw_flags(g, 0);
        spec.block_width = draw_size(g, 20);
        spec.block_height = draw_rarely(g, 4) ? draw_size(g, 20) : spec.block_width;
        spec.columns = draw_count(g, 20);
        spec.rows = draw_count(g, 20);
        spec.allowance = draw_seam(g);
        spec.take_up = draw_take_up(g);
        spec.turning = draw_choice(g, MUSLIN_TURNING_NONE, MUSLIN_TURNING_HALF_ALTERNATE);
        spec.square_tolerance = draw_rarely(g, 2) ? 127 : draw_size(g, 1);
        told(g, muslin_setting_straight(&spec, &out, ask(g)));
        TAKE(g, muslin_setting, out);
        int64_t column = draw_count(g, 20);
        int64_t row = draw_count(g, 20);
        told(g, muslin_setting_turn(spec.turning, column, row, &turns, ask(g)));
        take_number(g, turns);
    }
}

static void blocks(struct golden *g)
{
    EACH_ROUND {
        SPEC(muslin_block_spec, spec);
        OUT(muslin_block, out);
        spec.flags = draw_flags(g, 0);
        spec.segment_cut = draw_size(g, 12);
        spec.set_unfinished = draw_size(g, 24);
        spec.segments = draw_count(g, 6);
        spec.allowance = draw_seam(g);
        spec.take_up = draw_take_up(g);
        told(g, muslin_block_from_segments(&spec, &out, ask(g)));
        TAKE(g, muslin_block, out);
    }
}

static void runs(struct golden *g)
{
    EACH_ROUND {
        SPEC(muslin_run_spec, spec);
        OUT(muslin_run, out);
        muslin_len loss = -77;
        spec.flags = draw_flags(g, 0);
        spec.length = draw_size(g, 500);
        spec.strip_length = draw_size(g, 60);
        spec.strip_cut = draw_size(g, 8);
        spec.allowance = draw_seam(g);
        spec.join = draw_choice(g, MUSLIN_JOIN_BUTTED, MUSLIN_JOIN_BIAS_ENDS);
        told(g, muslin_run_plan(&spec, &out, ask(g)));
        TAKE(g, muslin_run, out);
        told_problem_length(g, muslin_join_loss(spec.join, spec.strip_cut, spec.allowance, &loss, ask(g)), &loss);
    }
}

static void borders(struct golden *g)
{
    EACH_ROUND {
        SPEC(muslin_border_spec, spec);
        OUT(muslin_border, out);
        spec.flags = draw_flags(g, MUSLIN_BORDER_LENGTHWISE);
        spec.unfinished_width = draw_size(g, 100);
        spec.unfinished_length = draw_size(g, 100);
        spec.finished_border = draw_size(g, 12);
        spec.allowance = draw_seam(g);
        spec.take_up = draw_take_up(g);
        spec.usable_width = draw_size(g, 60);
        spec.mitre_extra = draw_rarely(g, 2) ? 0 : draw_size(g, 4);
        spec.style = draw_choice(g, MUSLIN_BORDER_STYLE_SIDES_FIRST, MUSLIN_BORDER_STYLE_MITRED);
        spec.join = draw_choice(g, MUSLIN_JOIN_BUTTED, MUSLIN_JOIN_BIAS_ENDS);
        told(g, muslin_border_plan(&spec, &out, ask(g)));
        TAKE(g, muslin_border, out);
    }
}

void golden_setting(struct golden *g)
{
    settings(g);
    blocks(g);
    runs(g);
    borders(g);
}

/* ---- finishing ------------------------------------------------------------------------------------------------- */

static void binding_widths(struct golden *g)
{
    EACH_ROUND {
        SPEC(muslin_binding_width_spec, spec);
        OUT(muslin_binding_width, out);
        spec.flags = draw_flags(g, 0);
        spec.fold = draw_choice(g, MUSLIN_FOLD_DOUBLE, MUSLIN_FOLD_SINGLE);
        spec.allowance = draw_seam(g);
        spec.front = draw_size(g, 1);
        spec.thickness = draw_rarely(g, 2) ? 0 : draw_below(g, 2000);
        spec.back = draw_size(g, 1);
        spec.turn_under = draw_seam(g);
        spec.binding_cut = draw_rarely(g, 2) ? 0 : draw_size(g, 4);
        spec.uneven_limit = draw_size(g, 1);
        told(g, muslin_binding_measure(&spec, &out, ask(g)));
        TAKE(g, muslin_binding_width, out);
    }
}

static void bindings(struct golden *g)
{
    EACH_ROUND {
        SPEC(muslin_binding_spec, spec);
        OUT(muslin_binding, out);
        spec.flags = draw_flags(g, 0);
        spec.perimeter = draw_rarely(g, 4) ? draw_size(g, 400) : 0;
        spec.quilt_width = draw_size(g, 120);
        spec.quilt_length = draw_size(g, 120);
        spec.extra = draw_size(g, 20);
        spec.corners = draw_count(g, 8);
        spec.corner_extra = draw_rarely(g, 2) ? 0 : draw_size(g, 1);
        spec.binding_cut = draw_size(g, 4);
        spec.strip_length = draw_size(g, 60);
        spec.allowance = draw_seam(g);
        spec.step = draw_step(g);
        spec.spare_strips = draw_count(g, 2);
        spec.join = draw_choice(g, MUSLIN_JOIN_BUTTED, MUSLIN_JOIN_BIAS_ENDS);
        told(g, muslin_binding_plan(&spec, &out, ask(g)));
        TAKE(g, muslin_binding, out);
    }
}

static void bias(struct golden *g)
{
    EACH_ROUND {
        struct muslin_rounding_spec rounding = draw_rounding(g);
        SPEC(muslin_bias_spec, spec);
        OUT(muslin_bias, out);
        spec.flags = draw_flags(g, MUSLIN_BIAS_BLUNT_ENDS);
        spec.width = draw_size(g, 44);
        spec.length = draw_rarely(g, 3) ? draw_size(g, 72) : spec.width;
        spec.strip_cut = draw_size(g, 4);
        spec.allowance = draw_seam(g);
        spec.wanted = draw_size(g, 500);
        if (!draw_rarely(g, 20)) {
            rounding.direction = MUSLIN_DIRECTION_UP;
            rounding.tolerance = 0;
        }
        told(g, muslin_bias_tube(&spec, &out, ask(g)));
        TAKE(g, muslin_bias, out);
        told(g, muslin_bias_least_square(&spec, &rounding, &out, ask(g)));
        TAKE(g, muslin_bias, out);
        told(g, muslin_bias_strips(&spec, &out, ask(g)));
        TAKE(g, muslin_bias, out);
    }
}

static void battings(struct golden *g)
{
    EACH_ROUND {
        SPEC(muslin_batting_spec, spec);
        OUT(muslin_batting, out);
        spec.flags = draw_flags(g, MUSLIN_BATTING_FIXED);
        spec.quilt_width = draw_size(g, 120);
        spec.quilt_length = draw_size(g, 120);
        spec.margin_left = draw_size(g, 5);
        spec.margin_right = draw_size(g, 5);
        spec.margin_top = draw_size(g, 5);
        spec.margin_bottom = draw_size(g, 5);
        spec.roll_width = draw_rarely(g, 2) ? 0 : draw_size(g, 124);
        told(g, muslin_batting_plan(&spec, &out, ask(g)));
        TAKE(g, muslin_batting, out);
    }
}

static struct muslin_backing_spec draw_backing(struct golden *g)
{
    SPEC(muslin_backing_spec, spec);
    spec.flags = draw_flags(g, MUSLIN_BACKING_ROUND_PANELS);
    spec.quilt_width = draw_size(g, 110);
    spec.quilt_length = draw_size(g, 110);
    spec.margin_left = draw_size(g, 5);
    spec.margin_right = draw_size(g, 5);
    spec.margin_top = draw_size(g, 5);
    spec.margin_bottom = draw_size(g, 5);
    spec.fabric_width = draw_size(g, 110);
    spec.selvage = draw_rarely(g, 2) ? 0 : draw_size(g, 1);
    spec.allowance = draw_seam(g);
    spec.end_loss = draw_rarely(g, 2) ? 0 : draw_size(g, 2);
    spec.repeat = draw_rarely(g, 3) ? draw_size(g, 24) : 0;
    spec.step = draw_step(g);
    spec.print = draw_choice(g, MUSLIN_PRINT_NONE, MUSLIN_PRINT_STRIPE_ACROSS);
    return spec;
}

static void backings(struct golden *g)
{
    enum { LAYOUTS = 8, PANELS = 12 };
    EACH_ROUND {
        struct muslin_backing_spec spec = draw_backing(g);
        struct muslin_backing layouts[LAYOUTS] = { { 0 } };
        struct muslin_panel panels[PANELS] = { { 0 } };
        size_t count = 99;
        size_t capacity = draw_rarely(g, 20) ? (size_t)draw_below(g, LAYOUTS) : LAYOUTS;
        told(g, muslin_backing_layouts(&spec, layouts, sizeof layouts[0], capacity, &count, ask(g)));
        take_number(g, (int64_t)count);
        for (int32_t i = 0; i < LAYOUTS; i++)
            TAKE(g, muslin_backing, layouts[i]);
        int32_t layout = draw_choice(g, MUSLIN_BACKING_LAYOUT_ONE_WIDTH, MUSLIN_BACKING_LAYOUT_INSERT_ACROSS);
        capacity = draw_rarely(g, 20) ? 0 : PANELS;
        told(g, muslin_backing_panels(&spec, layout, panels, sizeof panels[0], capacity, &count, ask(g)));
        take_number(g, (int64_t)count);
        for (int32_t i = 0; i < PANELS; i++)
            TAKE(g, muslin_panel, panels[i]);
    }
}

static void hangings(struct golden *g)
{
    EACH_ROUND {
        SPEC(muslin_hanging_spec, spec);
        OUT(muslin_hanging, out);
        spec.flags = draw_flags(g, 0);
        spec.quilt_width = draw_size(g, 110);
        spec.sleeves = draw_count(g, 2);
        spec.inset = draw_size(g, 3);
        spec.gap = draw_size(g, 6);
        spec.drop = draw_size(g, 6);
        spec.ease = draw_size(g, 1);
        spec.hem = draw_size(g, 2);
        spec.allowance = draw_seam(g);
        spec.label_width = draw_rarely(g, 2) ? 0 : draw_size(g, 8);
        spec.label_height = draw_rarely(g, 8) ? draw_size(g, 8) : spec.label_width;
        spec.corners = draw_count(g, 4);
        spec.corner_triangle = spec.corners == 0 ? 0 : draw_size(g, 6);
        told(g, muslin_hanging_plan(&spec, &out, ask(g)));
        TAKE(g, muslin_hanging, out);
    }
}

void golden_finishing(struct golden *g)
{
    binding_widths(g);
    bindings(g);
    bias(g);
    battings(g);
    backings(g);
    hangings(g);
}

/* ---- stripquilt ------------------------------------------------------------------------------------------------ */

static struct muslin_stripquilt_spec draw_stripquilt(struct golden *g)
{
    SPEC(muslin_stripquilt_spec, spec);
    spec.flags = draw_flags(g, MUSLIN_YIELD_FROM_ONE_END);
    spec.strips = draw_count(g, 300);
    spec.strips_per_set = draw_between(g, 1, 8);
    spec.segments_per_block = draw_rarely(g, 10) ? draw_count(g, 17) : draw_between(g, 1, 4);
    spec.columns = draw_between(g, 1, 6);
    spec.rows = draw_between(g, 1, 6);
    spec.tops = draw_rarely(g, 2) ? 0 : draw_count(g, 3);
    spec.strip_cut = draw_rarely(g, 2) ? draw_size(g, 4) : 20320;
    spec.strip_length = draw_rarely(g, 2) ? draw_size(g, 60) : MUSLIN_USABLE_WIDTH_USUAL;
    spec.segment_cut = draw_rarely(g, 2) ? draw_size(g, 12) : 0;
    spec.allowance = draw_seam(g);
    spec.take_up = draw_take_up(g);
    spec.end_trim = draw_rarely(g, 2) ? 0 : draw_size(g, 1);
    spec.resquare_loss = draw_rarely(g, 2) ? 0 : draw_size(g, 1);
    spec.resquare_every = draw_count(g, 4);
    spec.fold_clear = spec.flags != 0 || draw_rarely(g, 2) ? 0 : draw_size(g, 3);
    spec.turning = draw_choice(g, MUSLIN_TURNING_NONE, MUSLIN_TURNING_HALF_ALTERNATE);
    spec.nesting = draw_choice(g, MUSLIN_NESTING_TURN, MUSLIN_NESTING_NAME);
    spec.square_tolerance = draw_rarely(g, 2) ? 127 : draw_size(g, 1);
    return spec;
}

void golden_stripquilt(struct golden *g)
{
    enum { GROUPS = 40 };
    for (int32_t round = 0; round < 3 * ROUNDS; round++) {
        struct muslin_stripquilt_spec spec = draw_stripquilt(g);
        struct muslin_block_group groups[GROUPS] = { { 0 } };
        OUT(muslin_stripquilt, out);
        size_t count = 99;
        int32_t pressing = -77;
        int64_t segments = -77;
        size_t capacity = draw_rarely(g, 20) ? 0 : GROUPS;
        int64_t set = draw_count(g, 12);
        told(g, muslin_stripquilt_plan(&spec, &out, ask(g)));
        TAKE(g, muslin_stripquilt, out);
        told(g, muslin_stripquilt_groups(&spec, groups, sizeof groups[0], capacity, &count, ask(g)));
        take_number(g, (int64_t)count);
        for (int32_t i = 0; i < GROUPS; i++)
            TAKE(g, muslin_block_group, groups[i]);
        told(g, muslin_stripquilt_pressing(&spec, set, &pressing, &segments, ask(g)));
        take_number(g, pressing);
        take_number(g, segments);
        told(g, muslin_stripquilt_strips_needed(&spec, &segments, ask(g)));
        take_number(g, segments);
    }
}
