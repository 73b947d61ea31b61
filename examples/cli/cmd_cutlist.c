/* cmd_cutlist.c - cutlist, substitute: a list of pieces, and the cloth or the pre-cuts it takes.
 *
 * SPDX-License-Identifier: MIT */
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "answer.h"
#include "cmd.h"
#include "pieces.h"
#include "sheet.h"
#include "words.h"

static const struct word from_words[] = {
    { "yardage", MUSLIN_STOCK_YARDAGE }, { "strips", MUSLIN_STOCK_STRIP }, { "squares", MUSLIN_STOCK_SQUARE },
    { "fat-quarters", MUSLIN_STOCK_FAT_QUARTER }, { "fat-eighths", MUSLIN_STOCK_FAT_EIGHTH }, { NULL, 0 }
};

/* A kind of stock in a sentence. */
static const char *kind_in_words(int32_t kind)
{
    static const char *const words[] = { "", "yardage", "strips", "squares", "fat quarters", "fat eighths" };
    return words[kind];
}

/* ---- the list as people write it -------------------------------------------------------------------------------- */

struct list {
    struct muslin_cutlist_piece_spec rows[TEXTS_MAX];
    size_t n;
};

#define ROWS_OF(list) (list)->rows, sizeof(list)->rows[0], (list)->n

static bool is_not_understood(struct desk *desk, const char *text)
{
    failure_say(desk->failure, "piece",
                "\"%.60s\" is no row of a cut list: write how many of what cut size, such as \"20 of 2 1/2 x 4 1/2 "
                "in\" or \"12 of 5 in turn\".", text);
    return false;
}

static bool read_row(struct desk *desk, const char *text, struct muslin_cutlist_piece_spec *cut)
{
    const struct muslin_cutlist_piece_spec initial = MUSLIN_CUTLIST_PIECE_SPEC_INIT;
    *cut = initial;
    const char *sizes = read_count(text, &cut->count);
    if (sizes == NULL || strlen(sizes) > 80)
        return is_not_understood(desk, text);
    size_t length = strlen(sizes);
    if (ends_with(sizes, &length, " turn"))
        cut->flags = MUSLIN_CUTLIST_PIECE_MAY_TURN;
    return read_sizes(desk, "piece", sizes, length, &cut->cut_width, &cut->cut_length);
}

static bool read_list(struct desk *desk, const struct texts *texts, struct list *list)
{
    list->n = texts->count;
    for (size_t i = 0; i < texts->count; i++)
        if (!read_row(desk, texts->texts[i], &list->rows[i]))
            return false;
    return true;
}

/* A complaint about a row says which one. */
static bool worked_on(struct desk *desk, const struct texts *texts, muslin_status status)
{
    if (worked(desk, status))
        return true;
    struct failure *failure = desk->failure;
    size_t used = strlen(failure->sentence);
    if (failure->argument == MUSLIN_ARG_CUT || status == MUSLIN_ERR_NO_YIELD)
        snprintf(failure->sentence + used, sizeof failure->sentence - used, " This is about \"%.60s\".",
                 texts->texts[failure->at]);
    return false;
}

/* ---- stock ------------------------------------------------------------------------------------------------------ */

/* The usual size of each kind, fat quarters and eighths at their narrow width: common practice, no source. */
static void usual_size(int32_t kind, struct muslin_stock_spec *stock)
{
    static const struct {
        int32_t width;
        int32_t length; /* both in half inches */
    } sizes[] = { { 0, 0 }, { 80, 72 }, { 80, 5 }, { 20, 20 }, { 40, 36 }, { 40, 18 } };
    stock->kind = kind;
    stock->width = (muslin_len)sizes[kind].width * (MUSLIN_TICKS_PER_INCH / 2);
    stock->length = (muslin_len)sizes[kind].length * (MUSLIN_TICKS_PER_INCH / 2);
}

/* ---- cutlist ---------------------------------------------------------------------------------------------------- */

struct cutlist_request {
    struct texts pieces;
    struct muslin_cutlist_spec cloth;
    struct muslin_stock_spec stock; /* width and length 0: the usual ones */
};

static void start_cutlist(void *request)
{
    struct cutlist_request *wanted = request;
    wanted->cloth = (struct muslin_cutlist_spec)MUSLIN_CUTLIST_SPEC_INIT;
    wanted->stock = (struct muslin_stock_spec)MUSLIN_STOCK_SPEC_INIT;
    wanted->stock.kind = MUSLIN_STOCK_YARDAGE;
    wanted->stock.count = 0;
}

/* How one size is cut. */
static json_t *append_size(json_t *sizes, const struct desk *desk, const struct muslin_cutlist_piece_spec *cut,
                           const struct muslin_cutlist_row *found)
{
    json_t *size = append_object(sizes);
    put_count(size, "pieces", found->pieces);
    put_length(size, desk, "cut_across", cut->cut_width);
    put_length(size, desk, "cut_along", cut->cut_length);
    put_truth(size, "pieces_lie_turned", found->turned == 1);
    put_count(size, "strips", found->strips);
    put_length(size, desk, "strip_cut", found->strip_cut);
    put_count(size, "pieces_from_each_strip", found->per_strip);
    put_length(size, desk, "piece_cut", found->piece_cut);
    put_cloth(size, desk, "length_of_the_strips", found->strips_length);
    put_count(size, "pieces_to_spare", found->spare_pieces);
    return size;
}

static void put_sizes(json_t *answer, const struct desk *desk, const struct list *list,
                      const struct muslin_cutlist_row *found, bool from_stock)
{
    json_t *sizes = put_list(answer, "sizes");
    for (size_t i = 0; i < list->n; i++) {
        json_t *size = append_size(sizes, desk, &list->rows[i], &found[i]);
        if (!from_stock)
            continue;
        put_count(size, "from_stock_number", found[i].first_stock);
        put_count(size, "to_stock_number", found[i].last_stock);
        put_truth(size, "strips_must_be_trimmed", found[i].trimmed == 1);
        put_list(size, "from");
    }
}

/* Under each size, how many strips come from which piece of stock. */
static bool put_parts(json_t *answer, struct desk *desk, const struct list *list,
                      const struct muslin_stock_spec *stock)
{
    struct muslin_cutlist_part parts[3 * TEXTS_MAX];
    size_t count;
    if (!worked(desk, muslin_cutlist_stock_parts(ROWS_OF(list), stock, parts, sizeof parts[0], 3 * TEXTS_MAX, &count,
                                                 &desk->problem)))
        return false;
    json_t *sizes = json_object_get(answer, "sizes");
    for (size_t i = 0; i < count; i++) {
        json_t *size = json_array_get(sizes, (size_t)parts[i].row);
        json_t *part = append_object(json_object_get(size, "from"));
        put_count(part, "strips", parts[i].strips);
        put_count(part, "first_stock", parts[i].first_stock);
        put_count(part, "last_stock", parts[i].last_stock);
        put_length(part, desk, "begins_at", parts[i].begins_at);
    }
    return true;
}

/* What would be cut another way from cloth wide enough to take less. Nothing where no cloth is so wide. */
static bool put_wider(json_t *answer, struct desk *desk, const struct cutlist_request *wanted, const struct list *list,
                      const struct muslin_cutlist_yardage *cloth, const struct muslin_cutlist_row *now)
{
    struct muslin_cutlist_row then[TEXTS_MAX];
    struct muslin_cutlist_spec spec = wanted->cloth;
    size_t count;
    if (cloth->wider_for_less == 0 || cloth->wider_for_less > MUSLIN_SIZE_MAX - spec.usable_width)
        return true;
    spec.usable_width += cloth->wider_for_less;
    if (!worked(desk, muslin_cutlist_yardage_rows(ROWS_OF(list), &spec, then, sizeof then[0], TEXTS_MAX, &count,
                                                  &desk->problem)))
        return false;
    json_t *wider = put_object(answer, "less_cloth_if_wider");
    put_least(wider, desk, "by", cloth->wider_for_less);
    put_least(wider, desk, "usable_width", spec.usable_width);
    put_slack(wider, desk, "saves", cloth->wider_saves);
    json_t *sizes = put_list(wider, "sizes");
    for (size_t i = 0; i < count; i++)
        if (then[i].strips_length != now[i].strips_length)
            put_truth(append_size(sizes, desk, &list->rows[i], &then[i]), "lay_turned", now[i].turned == 1);
    return true;
}

/* How many whole lists a stock in hand gives. */
static bool put_sets(json_t *answer, struct desk *desk, const struct texts *texts, const struct list *list,
                     const struct muslin_stock_spec *stock)
{
    struct muslin_cutlist_lists whole = { .size = sizeof whole };
    if (!worked_on(desk, texts, muslin_cutlist_lists_from_stock(ROWS_OF(list), stock, &whole, &desk->problem)))
        return false;
    json_t *part = put_object(answer, "in_hand_gives");
    put_count(part, "whole_lists", whole.lists);
    put_count(part, "stock_used", whole.stock_used);
    put_count(part, "stock_left", whole.stock_left);
    put_count(part, "stock_for_one_more", whole.stock_for_one_more);
    put_slack(part, desk, "left_over_of_the_last", whole.left_over);
    put_slack(part, desk, "may_be_narrower_by", whole.narrower_by);
    put_slack(part, desk, "may_be_shorter_by", whole.shorter_by);
    put_slack(part, desk, "as_cut_may_be_narrower_by", whole.as_cut_narrower_by);
    put_slack(part, desk, "as_cut_may_be_shorter_by", whole.as_cut_shorter_by);
    put_warnings(part, whole.warnings);
    struct muslin_cutlist_row found[TEXTS_MAX];
    size_t count;
    if (!worked(desk, muslin_cutlist_lists_rows(ROWS_OF(list), stock, found, sizeof found[0], TEXTS_MAX, &count,
                                               &desk->problem)))
        return false;
    put_sizes(part, desk, list, found, false);
    return true;
}

/* A cloth in hand, less what the losses take. */
static bool put_cloth_in_hand(json_t *answer, struct desk *desk, const struct cutlist_request *wanted,
                              const struct list *list)
{
    struct muslin_stock_spec stock = wanted->stock;
    stock.print = wanted->cloth.print;
    stock.count = 1;
    if (!worked(desk, muslin_length_subtract(wanted->cloth.usable_width, wanted->cloth.end_loss, &stock.width)) ||
        !worked(desk, muslin_length_subtract(wanted->stock.length, wanted->cloth.straightening, &stock.length)))
        return false;
    put_length(answer, desk, "cloth_in_hand", wanted->stock.length);
    return put_sets(answer, desk, &wanted->pieces, list, &stock);
}

static json_t *answer_from_yardage(struct desk *desk, const struct cutlist_request *wanted, const struct list *list)
{
    struct muslin_cutlist_yardage cloth = { .size = sizeof cloth };
    struct muslin_cutlist_row found[TEXTS_MAX];
    size_t count;
    if (!worked_on(desk, &wanted->pieces, muslin_cutlist_from_yardage(ROWS_OF(list), &wanted->cloth, &cloth,
                                                                      &desk->problem)) ||
        !worked(desk, muslin_cutlist_yardage_rows(ROWS_OF(list), &wanted->cloth, found, sizeof found[0], TEXTS_MAX,
                                                  &count, &desk->problem)))
        return NULL;
    json_t *answer = json_object();
    put_text(answer, "from", "yardage");
    put_length(answer, desk, "usable_width", wanted->cloth.usable_width);
    put_length(answer, desk, "end_loss", wanted->cloth.end_loss);
    put_length(answer, desk, "straightening", wanted->cloth.straightening);
    put_sizes(answer, desk, list, found, false);
    put_count(answer, "pieces", cloth.pieces);
    put_count(answer, "strips", cloth.strips);
    put_cloth(answer, desk, "cloth_length", cloth.cloth_length);
    put_least(answer, desk, "area_bound", cloth.area_bound);
    put_least(answer, desk, "narrowest_usable_width", cloth.narrowest_width);
    put_slack(answer, desk, "cloth_may_be_narrower_by", cloth.narrower_by);
    put_least(answer, desk, "narrowest_as_cut", cloth.narrowest_as_cut);
    put_shop_length(answer, desk, cloth.cloth_length);
    put_warnings(answer, cloth.warnings);
    if (put_wider(answer, desk, wanted, list, &cloth, found) &&
        (!given(desk, "length") || put_cloth_in_hand(answer, desk, wanted, list)))
        return answer;
    json_decref(answer);
    return NULL;
}

/* The list with every piece free to lie either way. */
static struct list turning(const struct list *list)
{
    struct list free = *list;
    for (size_t i = 0; i < free.n; i++)
        free.rows[i].flags |= MUSLIN_CUTLIST_PIECE_MAY_TURN;
    return free;
}

/* Where a piece does not fit, the complaint says whether it would if it lay turned. */
static bool lay_out_on_stock(struct desk *desk, const struct cutlist_request *wanted, const struct list *list,
                             const struct muslin_stock_spec *stock, struct muslin_cutlist_stock *all)
{
    muslin_status status = muslin_cutlist_from_stock(ROWS_OF(list), stock, all, &desk->problem);
    if (worked_on(desk, &wanted->pieces, status))
        return true;
    const struct list free = turning(list);
    struct failure *failure = desk->failure;
    size_t used = strlen(failure->sentence);
    if (status == MUSLIN_ERR_NO_YIELD && muslin_cutlist_from_stock(ROWS_OF(&free), stock, all, NULL) == MUSLIN_OK)
        snprintf(failure->sentence + used, sizeof failure->sentence - used,
                 " It fits turned a quarter: write \"turn\" behind it if it may lie so.");
    return false;
}

static json_t *answer_from_stock(struct desk *desk, const struct cutlist_request *wanted, const struct list *list)
{
    struct muslin_stock_spec stock = wanted->stock;
    struct muslin_cutlist_stock all = { .size = sizeof all };
    struct muslin_cutlist_row found[TEXTS_MAX];
    size_t count;
    usual_size(wanted->stock.kind, &stock);
    stock.print = wanted->cloth.print;
    stock.width = given(desk, "width") ? wanted->stock.width : stock.width;
    stock.length = given(desk, "length") ? wanted->stock.length : stock.length;
    if (!lay_out_on_stock(desk, wanted, list, &stock, &all) ||
        !worked(desk, muslin_cutlist_stock_rows(ROWS_OF(list), &stock, found, sizeof found[0], TEXTS_MAX, &count,
                                                &desk->problem)))
        return NULL;
    json_t *answer = json_object();
    put_text(answer, "from", kind_in_words(stock.kind));
    put_length(answer, desk, "stock_width", stock.width);
    put_length(answer, desk, "stock_length", stock.length);
    put_sizes(answer, desk, list, found, true);
    put_count(answer, "pieces", all.pieces);
    put_count(answer, "strips", all.strips);
    put_count(answer, "stock_needed", all.stock_needed);
    put_count(answer, "area_bound", all.area_bound);
    put_slack(answer, desk, "left_over_of_the_last", all.left_over);
    put_slack(answer, desk, "stock_may_be_narrower_by", all.narrower_by);
    put_slack(answer, desk, "stock_may_be_shorter_by", all.shorter_by);
    put_slack(answer, desk, "as_cut_may_be_narrower_by", all.as_cut_narrower_by);
    put_slack(answer, desk, "as_cut_may_be_shorter_by", all.as_cut_shorter_by);
    put_warnings(answer, all.warnings);
    if (given(desk, "in-hand")) {
        put_count(answer, "stock_in_hand", stock.count);
        put_count(answer, "stock_missing", all.stock_missing);
        put_count(answer, "stock_left", all.stock_left);
    }
    if (put_parts(answer, desk, list, &stock) &&
        (!given(desk, "in-hand") || put_sets(answer, desk, &wanted->pieces, list, &stock)))
        return answer;
    json_decref(answer);
    return NULL;
}

static json_t *answer_cutlist(const void *request, struct desk *desk)
{
    const struct cutlist_request *wanted = request;
    struct list list;
    if (!read_list(desk, &wanted->pieces, &list))
        return NULL;
    return wanted->stock.kind == MUSLIN_STOCK_YARDAGE ? answer_from_yardage(desk, wanted, &list)
                                                      : answer_from_stock(desk, wanted, &list);
}

#define OPTION_PIECES(request) \
    { "piece", KIND_TEXTS, offsetof(struct request, pieces), MUSLIN_ARG_CUT, OPTION_REQUIRED | OPTION_OPERAND, NULL, \
      "how many of what cut size: across the cloth, x, along it; one size for squares. \"turn\" behind it: these may " \
      "lie turned a quarter. In the order of cutting, may be repeated" }
#define OPTION_PRINT(request, print_) \
    { "print", KIND_CHOICE, offsetof(struct request, print_), MUSLIN_ARG_PRINT_DIRECTION, 0, print_words, \
      "none (the usual), two-way, one-way, stripe-along or stripe-across; with a direction no piece is turned" }

static const struct option_row cutlist_options[] = {
    OPTION_PIECES(cutlist_request),
    { "from", KIND_CHOICE, offsetof(struct cutlist_request, stock.kind), MUSLIN_ARG_STOCK_KIND, 0, from_words,
      "yardage (the usual), strips of a bundle, squares, fat-quarters or fat-eighths" },
    OPTION_PRINT(cutlist_request, cloth.print),
    OPTION_HEADING("Yardage"),
    { "usable", KIND_LENGTH, offsetof(struct cutlist_request, cloth.usable_width), MUSLIN_ARG_USABLE_WIDTH, 0, NULL,
      "usable width of the cloth (40 in)" },
    { "end-loss", KIND_LENGTH, offsetof(struct cutlist_request, cloth.end_loss), MUSLIN_ARG_END_LOSS, 0, NULL,
      "taken off each strip to square its ends (none)" },
    { "straighten", KIND_LENGTH, offsetof(struct cutlist_request, cloth.straightening), MUSLIN_ARG_END_LOSS, 0, NULL,
      "taken off the cloth once (none)" },
    OPTION_HEADING("What is in hand"),
    { "width", KIND_LENGTH, offsetof(struct cutlist_request, stock.width), MUSLIN_ARG_USABLE_WIDTH, 0, NULL,
      "of each pre-cut: 40 in of strips, 10 in of squares, 20 in of fat quarters and eighths" },
    { "length", KIND_LENGTH, offsetof(struct cutlist_request, stock.length), MUSLIN_ARG_CLOTH_LENGTH, 0, NULL,
      "of each pre-cut: 2 1/2, 10, 18 or 9 in; of yardage: the cloth in hand" },
    { "in-hand", KIND_COUNT, offsetof(struct cutlist_request, stock.count), MUSLIN_ARG_PIECES, 0, NULL,
      "pre-cuts in hand: says what is missing, and how often the list comes from them" },
    OPTION_END
};

const struct command cutlist_command = {
    .name = "cutlist",
    .about = "from a list of pieces to cloth, fat quarters or bundles",
    .operands = "PIECES...",
    .examples = "  muslin cutlist \"52 of 4 in\" \"20 of 3 in\" --usable 44\n"
                "  muslin cutlist \"24 of 8 1/2 x 4 1/2 in turn\" --length \"2 yd\"\n"
                "  muslin cutlist \"14 of 5 in\" \"12 of 2 1/2 x 4 1/2\" --from fat-quarters \\\n"
                "      --in-hand 8",
    .options = cutlist_options,
    .request_size = sizeof(struct cutlist_request),
    .start = start_cutlist,
    .answer = answer_cutlist,
    .show = show_cutlist
};

/* ---- substitute ------------------------------------------------------------------------------------------------- */

struct substitute_request {
    struct texts pieces;
    muslin_len usable_width;
    muslin_len fat_width;
    int64_t prints;
    int32_t print;
};

static void start_substitute(void *request)
{
    struct substitute_request *wanted = request;
    wanted->usable_width = MUSLIN_USABLE_WIDTH_USUAL;
    wanted->fat_width = 20 * MUSLIN_TICKS_PER_INCH;
    wanted->prints = MUSLIN_COUNT_MAX;
    wanted->print = MUSLIN_PRINT_NONE;
}

static struct muslin_stock_spec stock_instead(const struct substitute_request *wanted, int32_t kind)
{
    struct muslin_stock_spec stock = MUSLIN_STOCK_SPEC_INIT;
    usual_size(kind, &stock);
    stock.print = wanted->print;
    stock.count = 0;
    if (kind == MUSLIN_STOCK_FAT_QUARTER || kind == MUSLIN_STOCK_FAT_EIGHTH)
        stock.width = wanted->fat_width;
    else if (kind != MUSLIN_STOCK_SQUARE)
        stock.width = wanted->usable_width;
    return stock;
}

static bool ask_instead(struct desk *desk, const struct substitute_request *wanted, const struct list *list,
                        const struct muslin_stock_spec *stock, struct muslin_substitution *found)
{
    int64_t prints = stock->kind == MUSLIN_STOCK_YARDAGE ? 1 : wanted->prints;
    found->size = sizeof *found;
    return worked_on(desk, &wanted->pieces, muslin_cutlist_substitute(ROWS_OF(list), stock, prints, found,
                                                                      &desk->problem));
}

/* What the stock gives, one way or the other. */
static void put_given(json_t *instead, const struct desk *desk, const struct muslin_substitution *found, bool yardage)
{
    put_count(instead, "pieces_from_the_rest", found->rest_pieces);
    put_count(instead, "fabrics", found->fabrics);
    if (yardage) {
        put_cloth(instead, desk, "cloth_length", found->cloth_length);
        put_shop_length(instead, desk, found->cloth_length);
    } else {
        put_count(instead, "needed", found->stock_needed);
        put_count(instead, "of_each_fabric_at_least", found->per_fabric_least);
        put_count(instead, "of_each_fabric_at_most", found->per_fabric_most);
        put_slack(instead, desk, "may_be_shorter_by", found->shorter_by);
    }
    put_count(instead, "pieces_to_spare", found->spare_pieces);
    put_truth(instead, "pieces_lie_turned", found->turned == 1);
    put_slack(instead, desk, "may_be_narrower_by", found->narrower_by);
    put_warnings(instead, found->warnings);
}

static bool is_better(const struct muslin_substitution *turned, const struct muslin_substitution *listed)
{
    if (!turned->possible || !listed->possible)
        return turned->possible != 0;
    return turned->stock_needed < listed->stock_needed || turned->cloth_length < listed->cloth_length;
}

/* As listed, and turned where only that fits or takes less. */
static bool put_instead(json_t *list_of, struct desk *desk, const struct substitute_request *wanted,
                        const struct list *list, int32_t kind)
{
    bool yardage = kind == MUSLIN_STOCK_YARDAGE;
    const struct list free = turning(list);
    const struct muslin_stock_spec stock = stock_instead(wanted, kind);
    struct muslin_stock_spec plain = stock;
    struct muslin_substitution found = { 0 };
    struct muslin_substitution turned = { 0 };
    plain.print = MUSLIN_PRINT_NONE;
    if (!ask_instead(desk, wanted, list, &stock, &found) || !ask_instead(desk, wanted, &free, &plain, &turned))
        return false;
    json_t *instead = append_object(list_of);
    put_text(instead, "from", kind_in_words(kind));
    put_length(instead, desk, "width", stock.width);
    if (!yardage)
        put_length(instead, desk, "length", stock.length);
    put_truth(instead, "possible", found.possible == 1);
    if (found.possible)
        put_given(instead, desk, &found, yardage);
    else
        put_text(instead, "does_not_fit", wanted->pieces.texts[found.unfit_row]);
    if (!is_better(&turned, &found) || (found.possible && wanted->print != MUSLIN_PRINT_NONE))
        return true;
    put_truth(instead, "the_print_lets_turn", wanted->print == MUSLIN_PRINT_NONE);
    put_given(put_object(instead, "turned"), desk, &turned, yardage);
    return true;
}

static json_t *answer_substitute(const void *request, struct desk *desk)
{
    const struct substitute_request *wanted = request;
    struct list list;
    if (!read_list(desk, &wanted->pieces, &list))
        return NULL;
    json_t *answer = json_object();
    json_t *list_of = put_list(answer, "instead");
    for (int32_t kind = MUSLIN_STOCK_YARDAGE; kind <= MUSLIN_STOCK_FAT_EIGHTH; kind++)
        if (!put_instead(list_of, desk, wanted, &list, kind)) {
            json_decref(answer);
            return NULL;
        }
    return answer;
}

static const struct option_row substitute_options[] = {
    OPTION_PIECES(substitute_request),
    OPTION_PRINT(substitute_request, print),
    { "usable", KIND_LENGTH, offsetof(struct substitute_request, usable_width), MUSLIN_ARG_USABLE_WIDTH, 0, NULL,
      "usable width of yardage, and usable length of strips (40 in)" },
    { "fat-width", KIND_LENGTH, offsetof(struct substitute_request, fat_width), MUSLIN_ARG_USABLE_WIDTH, 0, NULL,
      "usable width of fat quarters and fat eighths (20 in)" },
    { "prints", KIND_COUNT, offsetof(struct substitute_request, prints), MUSLIN_ARG_PRINTS, 0, NULL,
      "different prints among the pre-cuts (each is another)" },
    OPTION_END
};

const struct command substitute_command = {
    .name = "substitute",
    .about = "the same pieces from yardage, strips, squares or fat quarters",
    .operands = "PIECES...",
    .examples = "  muslin substitute \"60 of 2 1/2 x 4 1/2 in\" --prints 20",
    .options = substitute_options,
    .request_size = sizeof(struct substitute_request),
    .start = start_substitute,
    .answer = answer_substitute,
    .show = show_substitute
};
