/* cmd_fabric.c - usable, pieces, strips, stock, buy: cloth and pre-cuts.
 *
 * SPDX-License-Identifier: MIT */
#include "answer.h"
#include "cmd.h"
#include "words.h"

/* ---- usable width ----------------------------------------------------------------------------------------------- */

struct usable_request {
    muslin_len labelled;
    muslin_len selvage;
    int32_t shrinkage;
};

static void start_usable(void *request)
{
    (void)request;
}

static json_t *answer_usable(const void *request, struct desk *desk)
{
    const struct usable_request *wanted = request;
    muslin_len usable = 0;
    if (!worked(desk, muslin_fabric_usable_width(wanted->labelled, wanted->selvage, wanted->shrinkage, &usable,
                                                 &desk->problem)))
        return NULL;
    json_t *answer = json_object();
    put_length(answer, desk, "labelled_width", wanted->labelled);
    put_slack(answer, desk, "usable_width", usable);
    return answer;
}

static const struct option_row usable_options[] = {
    { "labelled", KIND_LENGTH, offsetof(struct usable_request, labelled), MUSLIN_ARG_LABELLED_WIDTH,
      OPTION_REQUIRED | OPTION_OPERAND, NULL, "width on the bolt's label" },
    { "selvage", KIND_LENGTH, offsetof(struct usable_request, selvage), MUSLIN_ARG_SELVAGE, 0, NULL,
      "trimmed off each edge (none)" },
    { "shrinkage", KIND_SHARE, offsetof(struct usable_request, shrinkage), MUSLIN_ARG_SHRINKAGE, 0, NULL,
      "lost in the wash, such as \"3 %\" (none)" },
    OPTION_END
};

const struct command usable_command = {
    .name = "usable",
    .about = "usable width from the width on the label",
    .operands = "LABELLED",
    .examples = "  muslin usable 44 --selvage 1/2 --shrinkage \"3 %\"",
    .options = usable_options,
    .request_size = sizeof(struct usable_request),
    .start = start_usable,
    .answer = answer_usable
};

/* ---- pieces from a cloth ---------------------------------------------------------------------------------------- */

struct cloth_request {
    struct muslin_cloth_spec cloth;
    int32_t may_turn;
};

static void start_cloth(void *request)
{
    struct cloth_request *wanted = request;
    wanted->cloth = (struct muslin_cloth_spec)MUSLIN_CLOTH_SPEC_INIT;
}

static json_t *answer_pieces(const void *request, struct desk *desk)
{
    const struct cloth_request *wanted = request;
    struct muslin_cloth_spec spec = wanted->cloth;
    spec.flags = wanted->may_turn ? MUSLIN_CLOTH_MAY_TURN : 0;
    if (!given(desk, "piece-length"))
        spec.piece_length = spec.piece_width;
    struct muslin_cloth_pieces pieces = { .size = sizeof pieces };
    if (!worked(desk, muslin_fabric_pieces(&spec, &pieces, &desk->problem)))
        return NULL;
    json_t *answer = json_object();
    put_length(answer, desk, "cloth_width", spec.width);
    put_length(answer, desk, "cloth_length", spec.length);
    put_length(answer, desk, "piece_cut_width", spec.piece_width);
    put_length(answer, desk, "piece_cut_length", spec.piece_length);
    put_count(answer, "pieces", pieces.pieces);
    put_count(answer, "across", pieces.across);
    put_count(answer, "along", pieces.along);
    put_truth(answer, "pieces_lie_turned", pieces.turned == 1);
    put_slack(answer, desk, "left_over_across", pieces.left_across);
    put_slack(answer, desk, "left_over_along", pieces.left_along);
    put_slack(answer, desk, "cloth_may_be_narrower_by", pieces.narrower_by);
    put_slack(answer, desk, "cloth_may_be_shorter_by", pieces.shorter_by);
    put_least(answer, desk, "wider_for_one_more_by", pieces.wider_for_one);
    put_least(answer, desk, "longer_for_one_more_by", pieces.longer_for_one);
    put_warnings(answer, (uint32_t)pieces.warnings);
    return answer;
}

static const struct option_row pieces_options[] = {
    OPTION_HEADING("The cloth or pre-cut"),
    { "width", KIND_LENGTH, offsetof(struct cloth_request, cloth.width), MUSLIN_ARG_USABLE_WIDTH, 0, NULL,
      "its usable width (40 in)" },
    { "length", KIND_LENGTH, offsetof(struct cloth_request, cloth.length), MUSLIN_ARG_CLOTH_LENGTH, 0, NULL,
      "its length (1 yd)" },
    { "loss-across", KIND_LENGTH, offsetof(struct cloth_request, cloth.loss_across), MUSLIN_ARG_END_LOSS, 0, NULL,
      "taken off the width once, for straightening (none)" },
    { "loss-along", KIND_LENGTH, offsetof(struct cloth_request, cloth.loss_along), MUSLIN_ARG_END_LOSS, 0, NULL,
      "taken off the length once (none)" },
    OPTION_HEADING("The pieces"),
    { "piece", KIND_LENGTH, offsetof(struct cloth_request, cloth.piece_width), MUSLIN_ARG_CUT,
      OPTION_REQUIRED | OPTION_OPERAND, NULL, "cut size across the cloth, or of a square" },
    { "piece-length", KIND_LENGTH, offsetof(struct cloth_request, cloth.piece_length), MUSLIN_ARG_CUT, 0, NULL,
      "cut size along the cloth (the same)" },
    { "may-turn", KIND_SWITCH, offsetof(struct cloth_request, may_turn), MUSLIN_ARG_NONE, 0, NULL,
      "the pieces may all lie turned a quarter, if that gives more" },
    OPTION_END
};

const struct command pieces_command = {
    .name = "pieces",
    .about = "pieces that a cloth or pre-cut gives",
    .operands = "CUT",
    .examples = "  muslin pieces 5 --width 22 --length 18  # squares from a fat quarter\n"
                "  muslin pieces \"4 1/2\" --piece-length \"8 1/2\" --length 18 --may-turn",
    .options = pieces_options,
    .request_size = sizeof(struct cloth_request),
    .start = start_cloth,
    .answer = answer_pieces,
    .lead = "A cloth {cloth_width} by {cloth_length} gives {pieces:piece} cut {piece_cut_width} by {piece_cut_length}."
};

/* ---- strips across the cloth ------------------------------------------------------------------------------------ */

struct strips_request {
    struct muslin_strips_spec strips;
};

static void start_strips(void *request)
{
    struct strips_request *wanted = request;
    wanted->strips = (struct muslin_strips_spec)MUSLIN_STRIPS_SPEC_INIT;
}

static json_t *answer_strips(const void *request, struct desk *desk)
{
    const struct strips_request *wanted = request;
    struct muslin_strips_spec spec = wanted->strips;
    if (!given(desk, "strip"))
        spec.strip_cut = spec.piece_across;
    struct muslin_strips strips = { .size = sizeof strips };
    if (!worked(desk, muslin_fabric_strips(&spec, &strips, &desk->problem)))
        return NULL;
    json_t *answer = json_object();
    put_count(answer, "pieces_wanted", spec.pieces);
    put_length(answer, desk, "strip_cut", spec.strip_cut);
    put_count(answer, "pieces_from_each_strip", strips.per_strip);
    put_count(answer, "strips", strips.strips);
    put_cloth(answer, desk, "cloth_length", strips.length);
    put_count(answer, "pieces_to_spare", strips.spare_pieces);
    put_slack(answer, desk, "left_over_of_a_strip", strips.left_per_strip);
    put_slack(answer, desk, "cloth_may_be_narrower_by", strips.narrower_by);
    put_least(answer, desk, "wider_for_one_more_by", strips.wider_for_one);
    put_warnings(answer, (uint32_t)strips.warnings);
    return answer;
}

static const struct option_row strips_options[] = {
    { "pieces", KIND_COUNT, offsetof(struct strips_request, strips.pieces), MUSLIN_ARG_PIECES, OPTION_REQUIRED, NULL,
      "pieces wanted" },
    { "piece", KIND_LENGTH, offsetof(struct strips_request, strips.piece_across), MUSLIN_ARG_CUT,
      OPTION_REQUIRED | OPTION_OPERAND, NULL, "cut size of a piece, along the strip" },
    { "strip", KIND_LENGTH, offsetof(struct strips_request, strips.strip_cut), MUSLIN_ARG_STRIP_CUT, 0, NULL,
      "cut width of the strip (the same, for squares)" },
    { "usable", KIND_LENGTH, offsetof(struct strips_request, strips.usable_width), MUSLIN_ARG_USABLE_WIDTH, 0, NULL,
      "usable width of the cloth (40 in)" },
    { "end-loss", KIND_LENGTH, offsetof(struct strips_request, strips.end_loss), MUSLIN_ARG_END_LOSS, 0, NULL,
      "taken off each strip to square its ends (none)" },
    { "straighten", KIND_LENGTH, offsetof(struct strips_request, strips.straightening), MUSLIN_ARG_CLOTH_LENGTH, 0,
      NULL, "taken off the cloth once (none)" },
    OPTION_END
};

const struct command strips_command = {
    .name = "strips",
    .about = "from pieces wanted to strips across the cloth",
    .operands = "CUT",
    .examples = "  muslin strips 4 --pieces 52 --usable 44\n"
                "  muslin strips \"3 1/2\" --strip \"6 1/2\" --pieces 24 --end-loss 1",
    .options = strips_options,
    .request_size = sizeof(struct strips_request),
    .start = start_strips,
    .answer = answer_strips,
    .lead = "{pieces_wanted:piece} come from {strips:strip} cut {strip_cut} wide across the cloth."
};

/* ---- stock in hand ---------------------------------------------------------------------------------------------- */

struct stock_request {
    struct muslin_stock_spec stock;
    muslin_len strip_cut;
    int64_t strips;
    int32_t align;
};

static void start_stock(void *request)
{
    struct stock_request *wanted = request;
    wanted->stock = (struct muslin_stock_spec)MUSLIN_STOCK_SPEC_INIT;
    wanted->align = MUSLIN_EDGE_PINKED_TIPS;
}

static json_t *answer_stock(const void *request, struct desk *desk)
{
    const struct stock_request *wanted = request;
    const struct muslin_stock_spec *stock = &wanted->stock;
    muslin_len width = 0;
    muslin_len length = 0;
    struct muslin_stock_yield strips = { .size = sizeof strips };
    if (!worked(desk, muslin_stock_size(stock, wanted->align, &width, &length, &desk->problem)))
        return NULL;
    if (given(desk, "strip") &&
        !worked(desk, muslin_stock_strips(stock, wanted->strip_cut, wanted->strips, &strips, &desk->problem)))
        return NULL;
    json_t *answer = json_object();
    put_length(answer, desk, "reckon_with_width", width);
    put_length(answer, desk, "reckon_with_length", length);
    if (!given(desk, "strip"))
        return answer;
    put_length(answer, desk, "strip_cut", wanted->strip_cut);
    put_length(answer, desk, "strip_length", strips.strip_length);
    put_count(answer, "strips_from_each_piece", strips.per_piece);
    put_count(answer, "strips_in_hand", strips.in_hand);
    put_count(answer, "pieces_needed", strips.pieces_needed);
    put_count(answer, "pieces_missing", strips.pieces_missing);
    put_slack(answer, desk, "left_over_of_each_piece", strips.left_over);
    put_slack(answer, desk, "piece_may_be_shorter_by", strips.shorter_by);
    put_warnings(answer, (uint32_t)strips.warnings);
    return answer;
}

static const struct option_row stock_options[] = {
    OPTION_HEADING("The pieces in hand"),
    { "width", KIND_LENGTH, offsetof(struct stock_request, stock.width), MUSLIN_ARG_USABLE_WIDTH, OPTION_REQUIRED, NULL,
      "across: the long side of a strip, 20 to 22 in of a fat quarter" },
    { "length", KIND_LENGTH, offsetof(struct stock_request, stock.length), MUSLIN_ARG_CLOTH_LENGTH, OPTION_REQUIRED,
      NULL, "along: the cut width of a strip, 18 in of a fat quarter" },
    { "count", KIND_COUNT, offsetof(struct stock_request, stock.count), MUSLIN_ARG_IN_HAND, 0, NULL,
      "pieces in hand (1)" },
    { "edge", KIND_CHOICE, offsetof(struct stock_request, stock.edge), MUSLIN_ARG_EDGE, 0, edge_words,
      "straight (the usual), or pinked and measured from tip to tip or from valley to valley" },
    { "pink-depth", KIND_LENGTH, offsetof(struct stock_request, stock.pink_depth), MUSLIN_ARG_PINK_DEPTH, 0, NULL,
      "from tip to valley, on one edge (none)" },
    { "align", KIND_CHOICE, offsetof(struct stock_request, align), MUSLIN_ARG_EDGE, 0, align_words,
      "what you line up throughout: tips (the usual) or valleys" },
    OPTION_HEADING("Strips from them"),
    { "strip", KIND_LENGTH, offsetof(struct stock_request, strip_cut), MUSLIN_ARG_STRIP_CUT, 0, NULL,
      "cut width of the strips" },
    { "strips", KIND_COUNT, offsetof(struct stock_request, strips), MUSLIN_ARG_STRIPS, 0, NULL,
      "strips wanted (none)" },
    OPTION_END
};

const struct command stock_command = {
    .name = "stock",
    .about = "pre-cuts in hand: their true size, and strips from them",
    .operands = "",
    .examples = "  muslin stock --width 21 --length 18 --count 12 --strip \"2 1/2\" --strips 80\n"
                "  muslin stock --width 42 --length \"2 1/2\" --edge pinked-tips \\\n"
                "      --pink-depth 1/8 --align valleys",
    .options = stock_options,
    .request_size = sizeof(struct stock_request),
    .start = start_stock,
    .answer = answer_stock
};

/* ---- what to buy ------------------------------------------------------------------------------------------------ */

struct buy_request {
    struct muslin_purchase_spec purchase;
};

static void start_buy(void *request)
{
    struct buy_request *wanted = request;
    wanted->purchase = (struct muslin_purchase_spec)MUSLIN_PURCHASE_SPEC_INIT;
}

static json_t *answer_buy(const void *request, struct desk *desk)
{
    const struct buy_request *wanted = request;
    struct muslin_purchase purchase = { .size = sizeof purchase };
    if (!worked(desk, muslin_fabric_purchase(&wanted->purchase, &purchase, &desk->problem)))
        return NULL;
    json_t *answer = json_object();
    put_cloth(answer, desk, "needed", purchase.needed);
    put_cloth(answer, desk, "before_shrinking", purchase.unshrunk);
    put_cloth(answer, desk, "with_extra", purchase.with_extra);
    put_cloth(answer, desk, "bought", purchase.bought);
    put_count(answer, "steps", purchase.steps);
    put_slack(answer, desk, "spare", purchase.spare);
    put_least(answer, desk, "a_step_less_if_it_were_shorter_by", purchase.less_by);
    return answer;
}

static const struct option_row buy_options[] = {
    { "needed", KIND_LENGTH, offsetof(struct buy_request, purchase.needed), MUSLIN_ARG_CLOTH_LENGTH,
      OPTION_REQUIRED | OPTION_OPERAND, NULL, "length of cloth that must be there in the end" },
    { "step", KIND_LENGTH, offsetof(struct buy_request, purchase.step), MUSLIN_ARG_STEP, 0, NULL,
      "what the shop sells in (1/8 yd)" },
    { "shrinkage", KIND_SHARE, offsetof(struct buy_request, purchase.shrinkage), MUSLIN_ARG_SHRINKAGE, 0, NULL,
      "lost in the wash, such as \"3 %\" (none)" },
    { "extra-share", KIND_SHARE, offsetof(struct buy_request, purchase.extra_share), MUSLIN_ARG_EXTRA_SHARE, 0, NULL,
      "to add for safety, such as \"10 %\" (none)" },
    { "extra", KIND_LENGTH, offsetof(struct buy_request, purchase.extra), MUSLIN_ARG_EXTRA, 0, NULL,
      "fixed extra, added last (none)" },
    OPTION_END
};

const struct command buy_command = {
    .name = "buy",
    .about = "from a length of cloth needed to the length to buy",
    .operands = "NEEDED",
    .examples = "  muslin buy \"112 in\"\n"
                "  muslin buy \"2.3 m\" --step \"10 cm\" --shrinkage \"4 %\" --units cm",
    .options = buy_options,
    .request_size = sizeof(struct buy_request),
    .start = start_buy,
    .answer = answer_buy,
    .lead = "For {needed} buy {bought}."
};
