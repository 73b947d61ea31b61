/* questions.c - what the handbook asks about lengths, seams, cloth, strip sets, settings and finishing.
 *
 * SPDX-License-Identifier: MIT */
#include "handbook.h"

/* ---- questions: length and seam -------------------------------------------------------------------------------- */

static void convert(struct figure *f)
{
    static const char *const styles[] = { "fractional inches", "decimal inches", "yards", "millimetres", "centimetres",
                                          NULL };
    struct muslin_format_spec spec = MUSLIN_FORMAT_SPEC_INIT;
    char text[64];
    int32_t exact;
    spec.style = choice(f, "style", styles);
    spec.denominator = (int32_t)count_or(f, "denominator", spec.denominator);
    spec.decimals = (int32_t)count_or(f, "decimals", spec.decimals);
    must(f, muslin_length_format(length(f, "length"), &spec, text, sizeof text, NULL, &exact, NULL));
    answer_text(f, "text", text);
    answer_count(f, "exact", exact);
}

static void total(struct figure *f)
{
    muslin_len lengths[] = { length(f, "a"), length_or(f, "b", 0) };
    int64_t counts[] = { count(f, "a_count"), count_or(f, "b_count", 0) };
    muslin_len sum;
    must(f, muslin_length_dot(lengths, counts, 2, &sum));
    answer_length(f, "total", sum);
}

static void scale(struct figure *f)
{
    struct muslin_rounding_spec rounding = rounding_of(f);
    struct muslin_rounded rounded = { .size = sizeof rounded };
    must(f, muslin_length_scale(length(f, "length"), count(f, "numerator"), count(f, "denominator"), &rounding,
                                &rounded));
    answer_length(f, "scaled", rounded.value + length_or(f, "add", 0));
    answer_count(f, "exact", rounded.exact);
}

static void times_root2(struct figure *f)
{
    struct muslin_rounding_spec rounding = rounding_of(f);
    struct muslin_rounded rounded = { .size = sizeof rounded };
    must(f, muslin_length_times_root2(length(f, "length"), &rounding, &rounded));
    answer_length(f, "diagonal", rounded.value + length_or(f, "add", 0));
}

static struct muslin_seam_spec seam_of(struct figure *f)
{
    struct muslin_seam_spec seam = MUSLIN_SEAM_SPEC_INIT;
    seam.allowance = length(f, "allowance");
    seam.take_up = length_or(f, "take_up", 0);
    return seam;
}

static void cut_from_finished(struct figure *f)
{
    struct muslin_seam_spec seam = seam_of(f);
    muslin_len cut;
    must(f, muslin_seam_cut_from_finished(length(f, "finished"), &seam, &cut, NULL));
    answer_length(f, "cut", cut);
}

static void finished_from_cut(struct figure *f)
{
    struct muslin_seam_spec seam = seam_of(f);
    muslin_len finished;
    must(f, muslin_seam_finished_from_cut(length(f, "cut"), &seam, &finished, NULL));
    answer_length(f, "finished", finished);
}

static void strip_for_finished(struct figure *f)
{
    struct muslin_seam_spec seam = seam_of(f);
    struct muslin_rounding_spec rounding = MUSLIN_ROUNDING_SPEC_INIT;
    struct muslin_rounded rounded = { .size = sizeof rounded };
    must(f, muslin_seam_strip_for_finished(length(f, "finished"), count(f, "pieces"), &seam, &rounding, &rounded,
                                           NULL));
    answer_length(f, "cut", rounded.value);
}

static void resize_cut(struct figure *f)
{
    struct muslin_seam_spec seam = seam_of(f);
    struct muslin_rounding_spec rounding = MUSLIN_ROUNDING_SPEC_INIT;
    struct muslin_rounded rounded = { .size = sizeof rounded };
    must(f, muslin_seam_resize_cut(length(f, "cut"), count(f, "numerator"), count(f, "denominator"), &seam, &rounding,
                                   &rounded, NULL));
    answer_length(f, "cut", rounded.value);
}

static void row(struct figure *f)
{
    struct muslin_seam_spec seam = seam_of(f);
    struct muslin_sewn_row made = { .size = sizeof made };
    must(f, muslin_seam_row_equal(length(f, "cut"), count(f, "pieces"), &seam, &made, NULL));
    answer_length(f, "unfinished", made.unfinished);
    answer_length(f, "finished", made.finished);
}

static void calibrate(struct figure *f)
{
    muslin_len cuts[PAIRS_MAX];
    int64_t pieces = count(f, "pieces");
    if (pieces > PAIRS_MAX)
        fail_figure(f, "has more than %d pieces", (int)PAIRS_MAX);
    for (int64_t i = 0; i < pieces; i++)
        cuts[i] = length(f, "cut");
    struct muslin_calibration found = { .size = sizeof found };
    must(f, muslin_seam_calibrate(cuts, (size_t)pieces, length(f, "measured"), length(f, "allowance"), &found, NULL));
    answer_count(f, "seams", found.seams);
    answer_length(f, "shortfall", found.shortfall);
    answer_length(f, "take_up", found.take_up);
    answer_length(f, "effective_allowance", found.effective_allowance);
}

/* ---- questions: fabric ----------------------------------------------------------------------------------------- */

static void purchase(struct figure *f)
{
    struct muslin_purchase_spec spec = MUSLIN_PURCHASE_SPEC_INIT;
    struct muslin_purchase made = { .size = sizeof made };
    spec.needed = length(f, "needed");
    spec.step = length(f, "step");
    must(f, muslin_fabric_purchase(&spec, &made, NULL));
    answer_length(f, "bought", made.bought);
    answer_length(f, "spare", made.spare);
}

static void pieces(struct figure *f)
{
    struct muslin_cloth_spec spec = MUSLIN_CLOTH_SPEC_INIT;
    struct muslin_cloth_pieces made = { .size = sizeof made };
    spec.width = length(f, "width");
    spec.length = length(f, "length");
    spec.piece_width = length(f, "piece_width");
    spec.piece_length = length(f, "piece_length");
    spec.loss_along = length_or(f, "loss_along", 0);
    must(f, muslin_fabric_pieces(&spec, &made, NULL));
    answer_count(f, "pieces", made.pieces);
}

static void strips(struct figure *f)
{
    struct muslin_strips_spec spec = MUSLIN_STRIPS_SPEC_INIT;
    struct muslin_strips made = { .size = sizeof made };
    spec.pieces = count(f, "pieces");
    spec.piece_across = length(f, "piece_across");
    spec.strip_cut = length(f, "strip_cut");
    spec.usable_width = length(f, "usable_width");
    must(f, muslin_fabric_strips(&spec, &made, NULL));
    answer_count(f, "per_strip", made.per_strip);
    answer_count(f, "strips", made.strips);
    answer_length(f, "cloth_length", made.length);
}

static void stock_strips(struct figure *f)
{
    struct muslin_stock_spec stock = MUSLIN_STOCK_SPEC_INIT;
    struct muslin_stock_yield made = { .size = sizeof made };
    stock.kind = MUSLIN_STOCK_FAT_QUARTER;
    stock.width = length(f, "width");
    stock.length = length(f, "length");
    must(f, muslin_stock_strips(&stock, length(f, "strip_cut"), count(f, "strips_wanted"), &made, NULL));
    answer_count(f, "per_piece", made.per_piece);
    answer_count(f, "pieces_needed", made.pieces_needed);
}

static void area(struct figure *f)
{
    struct muslin_purchase_spec spec = MUSLIN_PURCHASE_SPEC_INIT;
    struct muslin_purchase made = { .size = sizeof made };
    int64_t doubled = 2 * length(f, "piece_width") * length(f, "piece_length") * count(f, "pieces");
    muslin_len least;
    must(f, muslin_fabric_area_bound(doubled, length(f, "usable_width"), &least, NULL));
    answer_length(f, "least", least);
    spec.needed = least;
    spec.extra = length_or(f, "extra", 0);
    spec.step = length(f, "step");
    must(f, muslin_fabric_purchase(&spec, &made, NULL));
    answer_length(f, "bought", made.bought);
}

/* ---- questions: strip sets and setting ------------------------------------------------------------------------- */

static void yield(struct figure *f)
{
    static const char *const cuttings[] = { "from one end", "from both ends", NULL };
    struct muslin_yield_spec spec = MUSLIN_YIELD_SPEC_INIT;
    struct muslin_yield made = { .size = sizeof made };
    spec.flags = choice(f, "cutting", cuttings) == 1 ? MUSLIN_YIELD_FROM_ONE_END : 0;
    spec.strip_length = length(f, "strip_length");
    spec.segment_cut = length(f, "segment_cut");
    spec.end_trim = length_or(f, "end_trim", 0);
    must(f, muslin_stripset_yield(&spec, &made, NULL));
    answer_count(f, "segments", made.segments);
    answer_length(f, "least_length", made.least_length);
    answer_length(f, "left_over", made.left_over);
    answer_length(f, "shorter_by", made.shorter_by);
    answer_count(f, "no_slack", (made.warnings & MUSLIN_WARN_NO_SLACK) != 0);
}

static void need(struct figure *f)
{
    struct muslin_need_spec spec = MUSLIN_NEED_SPEC_INIT;
    struct muslin_need made = { .size = sizeof made };
    spec.segments = count(f, "segments");
    spec.segments_per_set = count(f, "segments_per_set");
    spec.strips_per_set = count(f, "strips_per_set");
    spec.strips_per_bundle = count_or(f, "strips_per_bundle", 0);
    must(f, muslin_stripset_need(&spec, &made, NULL));
    answer_count(f, "sets", made.sets);
    answer_count(f, "strips", made.strips);
    answer_count(f, "bundles", made.bundles);
}

static void harvest(struct figure *f)
{
    struct muslin_harvest_spec spec = MUSLIN_HARVEST_SPEC_INIT;
    struct muslin_harvest made = { .size = sizeof made };
    spec.strips = count(f, "strips");
    spec.strips_per_set = count(f, "strips_per_set");
    spec.segments_per_set = count(f, "segments_per_set");
    spec.segments_per_block = count(f, "segments_per_block");
    must(f, muslin_stripset_harvest(&spec, &made, NULL));
    answer_count(f, "segments", made.segments);
    answer_count(f, "blocks", made.blocks);
}

static void prints(struct figure *f)
{
    struct muslin_stripset_print rows[] = {
        { sizeof rows[0], 0, count(f, "in_hand_a"), count(f, "per_set_a"), 0 },
        { sizeof rows[0], 0, count(f, "in_hand_b"), count(f, "per_set_b"), 0 },
    };
    int64_t sets;
    must(f, muslin_stripset_prints(rows, sizeof rows[0], 2, 0, &sets, NULL, NULL));
    answer_count(f, "sets", sets);
    answer_count(f, "left_a", rows[0].left_over);
    answer_count(f, "left_b", rows[1].left_over);
}

static void setting(struct figure *f)
{
    struct muslin_setting_spec spec = MUSLIN_SETTING_SPEC_INIT;
    struct muslin_setting made = { .size = sizeof made };
    spec.block_width = length(f, "block");
    spec.block_height = spec.block_width;
    spec.columns = count(f, "columns");
    spec.rows = count(f, "rows");
    spec.allowance = length(f, "allowance");
    must(f, muslin_setting_straight(&spec, &made, NULL));
    answer_count(f, "blocks", made.blocks);
    answer_length(f, "finished_width", made.finished_width);
    answer_length(f, "finished_length", made.finished_length);
}

static void block(struct figure *f)
{
    struct muslin_block_spec spec = MUSLIN_BLOCK_SPEC_INIT;
    struct muslin_block made = { .size = sizeof made };
    spec.segment_cut = length(f, "segment_cut");
    spec.set_unfinished = length(f, "set_unfinished");
    spec.segments = count(f, "segments");
    spec.allowance = length(f, "allowance");
    must(f, muslin_block_from_segments(&spec, &made, NULL));
    answer_length(f, "unfinished_width", made.unfinished_width);
    answer_length(f, "unfinished_height", made.unfinished_height);
    answer_count(f, "square", made.square);
}

static const char *const joins[] = { "butted", "straight", "diagonal", "bias ends", NULL };

static void join_loss(struct figure *f)
{
    muslin_len loss;
    must(f, muslin_join_loss(choice(f, "join", joins), length(f, "strip_cut"), length(f, "allowance"), &loss, NULL));
    answer_length(f, "loss", loss);
}

static void run(struct figure *f)
{
    struct muslin_run_spec spec = MUSLIN_RUN_SPEC_INIT;
    struct muslin_run made = { .size = sizeof made };
    spec.length = length(f, "length");
    spec.strip_length = length(f, "strip_length");
    spec.strip_cut = length(f, "strip_cut");
    spec.join = choice(f, "join", joins);
    must(f, muslin_run_plan(&spec, &made, NULL));
    answer_count(f, "strips", made.strips);
    answer_count(f, "joins", made.joins);
    answer_length(f, "loss_per_join", made.loss_per_join);
    answer_length(f, "joined", made.joined);
    answer_length(f, "spare", made.spare);
}

/* ---- questions: finishing -------------------------------------------------------------------------------------- */

static void binding_width(struct figure *f)
{
    static const char *const folds[] = { "double", "single", NULL };
    struct muslin_binding_width_spec spec = MUSLIN_BINDING_WIDTH_SPEC_INIT;
    struct muslin_binding_width made = { .size = sizeof made };
    spec.fold = choice(f, "fold", folds);
    spec.allowance = length(f, "seam");
    spec.front = length(f, "front");
    spec.back = length(f, "back");
    spec.thickness = length(f, "thickness");
    must(f, muslin_binding_measure(&spec, &made, NULL));
    answer_length(f, "cut_width", made.cut_width);
}

static void binding(struct figure *f)
{
    struct muslin_binding_spec spec = MUSLIN_BINDING_SPEC_INIT;
    struct muslin_binding made = { .size = sizeof made };
    spec.perimeter = length_or(f, "perimeter", 0);
    if (spec.perimeter == 0) {
        spec.quilt_width = length(f, "quilt_width");
        spec.quilt_length = length(f, "quilt_length");
    }
    spec.extra = length(f, "extra");
    spec.strip_length = length(f, "strip_length");
    spec.binding_cut = length(f, "binding_cut");
    spec.join = choice(f, "join", joins);
    spec.spare_strips = count_or(f, "spare_strips", 0);
    spec.step = length_or(f, "step", spec.step);
    must(f, muslin_binding_plan(&spec, &made, NULL));
    answer_length(f, "length", made.length);
    answer_count(f, "strips_needed", made.strips_needed);
    answer_count(f, "strips", made.strips);
    answer_length(f, "joined", made.joined);
    answer_length(f, "cloth_length", made.cloth_length);
    answer_length(f, "bought", made.bought);
}

static void bias_tube(struct figure *f)
{
    struct muslin_bias_spec spec = MUSLIN_BIAS_SPEC_INIT;
    struct muslin_bias made = { .size = sizeof made };
    spec.width = length(f, "side");
    spec.length = spec.width;
    spec.strip_cut = length(f, "strip_cut");
    spec.allowance = length(f, "allowance");
    must(f, muslin_bias_tube(&spec, &made, NULL));
    answer_length(f, "length", made.length);
}

static void bias_square(struct figure *f)
{
    struct muslin_bias_spec spec = MUSLIN_BIAS_SPEC_INIT;
    struct muslin_rounding_spec rounding = MUSLIN_ROUNDING_SPEC_INIT;
    struct muslin_bias made = { .size = sizeof made };
    spec.wanted = length(f, "wanted");
    spec.strip_cut = length(f, "strip_cut");
    spec.allowance = length(f, "allowance");
    rounding.grid = length(f, "grid");
    rounding.direction = MUSLIN_DIRECTION_UP;
    must(f, muslin_bias_least_square(&spec, &rounding, &made, NULL));
    answer_length(f, "square", made.square_cut);
    answer_length(f, "length", made.length);
    answer_length(f, "area_rule", made.area_rule);
}

static void batting(struct figure *f)
{
    struct muslin_batting_spec spec = MUSLIN_BATTING_SPEC_INIT;
    struct muslin_batting made = { .size = sizeof made };
    spec.quilt_width = length(f, "quilt_width");
    spec.quilt_length = length(f, "quilt_length");
    muslin_len margin = length(f, "margin");
    spec.margin_left = margin;
    spec.margin_right = margin;
    spec.margin_top = margin;
    spec.margin_bottom = margin;
    must(f, muslin_batting_plan(&spec, &made, NULL));
    answer_length(f, "width", made.width);
    answer_length(f, "length", made.length);
}

static void read_backing(struct figure *f, struct muslin_backing_spec *spec)
{
    spec->flags = count_or(f, "round_panels", 0) != 0 ? MUSLIN_BACKING_ROUND_PANELS : 0;
    spec->quilt_width = length(f, "quilt_width");
    spec->quilt_length = length(f, "quilt_length");
    spec->margin_left = length(f, "margin_sides");
    spec->margin_right = spec->margin_left;
    spec->margin_top = length(f, "margin_ends");
    spec->margin_bottom = spec->margin_top;
    spec->fabric_width = length(f, "fabric_width");
    spec->allowance = length(f, "seam");
    spec->repeat = length_or(f, "repeat", 0);
    spec->step = length(f, "step");
}

static void answer_backing(struct figure *f, const struct muslin_backing *made)
{
    answer_count(f, "possible", made->possible);
    answer_length(f, "needed_width", made->needed_width);
    answer_length(f, "needed_length", made->needed_length);
    answer_count(f, "panels", made->panels);
    answer_length(f, "panel_length", made->panel_length);
    answer_count(f, "pieces", made->pieces);
    answer_length(f, "joined_width", made->joined_width);
    answer_length(f, "joined_length", made->joined_length);
    answer_length(f, "cloth_length", made->cloth_length);
    answer_length(f, "cloth_with_repeat", made->cloth_with_repeat);
    answer_length(f, "bought", made->bought);
    answer_length(f, "other_rounding", made->other_rounding);
    answer_length(f, "strip_cut", made->strip_cut);
}

static void backing(struct figure *f)
{
    static const char *const layouts[] = { "one width", "one width turned", "seams along", "seams across",
                                           "centre along", "centre across", "insert along", "insert across", NULL };
    struct muslin_backing_spec spec = MUSLIN_BACKING_SPEC_INIT;
    struct muslin_backing rows[16] = { 0 };
    size_t found;
    int32_t layout = choice(f, "layout", layouts);
    read_backing(f, &spec);
    must(f, muslin_backing_layouts(&spec, rows, sizeof rows[0], 16, &found, NULL));
    for (size_t i = 0; i < found; i++)
        if (rows[i].layout == layout)
            answer_backing(f, &rows[i]);
}

/* ---- the table ------------------------------------------------------------------------------------------------- */

extern const struct question questions[];

const struct question questions[] = {
    { "convert", convert },
    { "total", total },
    { "scale", scale },
    { "times_root2", times_root2 },
    { "cut_from_finished", cut_from_finished },
    { "finished_from_cut", finished_from_cut },
    { "strip_for_finished", strip_for_finished },
    { "resize_cut", resize_cut },
    { "row", row },
    { "calibrate", calibrate },
    { "purchase", purchase },
    { "pieces", pieces },
    { "strips", strips },
    { "stock_strips", stock_strips },
    { "area", area },
    { "yield", yield },
    { "need", need },
    { "harvest", harvest },
    { "prints", prints },
    { "setting", setting },
    { "block", block },
    { "join_loss", join_loss },
    { "run", run },
    { "binding_width", binding_width },
    { "binding", binding },
    { "bias_tube", bias_tube },
    { "bias_square", bias_square },
    { "batting", batting },
    { "backing", backing },
    { NULL, NULL },
};
