/* cmd_cutplan.c - cutplan: a list of pieces cut from the least cloth, strip by strip, and how little can do.
 *
 * SPDX-License-Identifier: MIT */
#define _POSIX_C_SOURCE 200809L
#include <inttypes.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <time.h>
#include <unistd.h>

#include "answer.h"
#include "cmd.h"
#include "interrupt.h"
#include "memory.h"
#include "pieces.h"
#include "sheet.h"
#include "words.h"

/* As many as there are letters for. */
static const char letters[] = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmn";

static const struct word progress_words[] = { { "auto", 1 }, { "always", 2 }, { "never", 3 }, { NULL, 0 } };

struct cutplan_request {
    struct texts pieces;
    struct texts stock;
    struct muslin_cutplan_spec cloth;
    muslin_len allowance; /* of joins */
    muslin_len least_side;
    int32_t join;
    int32_t no_panels;
    int32_t one_height;
    int32_t own_strips;
    int32_t stacked;
    int32_t folded;
    int32_t as_far;
    int32_t progress;
};

static void start_cutplan(void *request)
{
    struct cutplan_request *wanted = request;
    wanted->cloth = (struct muslin_cutplan_spec)MUSLIN_CUTPLAN_SPEC_INIT;
    wanted->allowance = MUSLIN_TICKS_PER_INCH / 4;
    wanted->least_side = 2 * MUSLIN_TICKS_PER_INCH;
    wanted->join = MUSLIN_JOIN_DIAGONAL;
    wanted->progress = 1;
}

/* ---- the list as people write it -------------------------------------------------------------------------------- */

/* Pieces and stock as the library takes them, rows of both with the number of their text as label. */
struct list {
    struct muslin_blank_spec pieces[TEXTS_MAX];
    struct muslin_cutplan_stock_spec stock[TEXTS_MAX];
    size_t n;
    size_t stock_n;
};

static bool not_understood(struct desk *desk, const char *option, const char *text, const char *wanted)
{
    failure_say(desk->failure, option, "\"%.60s\" is no row of this list: write %s.", text, wanted);
    return false;
}

static bool not_a_piece(struct desk *desk, const char *text)
{
    return not_understood(desk, "piece", text,
                          "how many of what cut size, such as \"20 of 2 1/2 x 4 1/2 in\", \"12 of 5 in turn\", "
                          "\"2 of 4 1/2 x 60 in lengthwise\" or \"1 of 164 x 2 1/2 in joined\"");
}

/* How long pieces lie, behind their sizes. */
static int32_t kind_of(const char *sizes, size_t *length, uint32_t *flags)
{
    if (ends_with(sizes, length, " turn")) {
        *flags = MUSLIN_BLANK_MAY_TURN;
        return MUSLIN_BLANK_PIECE;
    }
    if (ends_with(sizes, length, " lengthwise"))
        return MUSLIN_BLANK_LENGTHWISE;
    return ends_with(sizes, length, " joined") ? MUSLIN_BLANK_JOINED : MUSLIN_BLANK_PIECE;
}

static bool read_piece(struct desk *desk, const struct cutplan_request *wanted, const char *text,
                       struct muslin_blank_spec *piece)
{
    *piece = (struct muslin_blank_spec)MUSLIN_BLANK_SPEC_INIT;
    const char *sizes = read_count(text, &piece->count);
    if (sizes == NULL || strlen(sizes) > 80)
        return not_a_piece(desk, text);
    size_t length = strlen(sizes);
    piece->kind = kind_of(sizes, &length, &piece->flags);
    if (!read_sizes(desk, "piece", sizes, length, &piece->cut_width, &piece->cut_length))
        return is_other_word(desk) ? not_a_piece(desk, text) : false;
    return piece->kind != MUSLIN_BLANK_JOINED ||
           worked(desk, muslin_join_loss(wanted->join, piece->cut_length, wanted->allowance, &piece->join_loss,
                                         &desk->problem));
}

static bool no_stock(struct desk *desk, const char *text)
{
    return not_understood(desk, "stock", text,
                          "how many there are of what size, across the cloth, x, along it, such as \"6 of 21 x 18 in\" "
                          "or \"any of 21 x 18 in at 3\", each at a cost of 3");
}

/* "6 of 21 x 18 in", "any of 21 x 18 in", and at what cost. */
static bool read_stock(struct desk *desk, const char *text, struct muslin_cutplan_stock_spec *stock)
{
    static const char any[] = "any of ";
    *stock = (struct muslin_cutplan_stock_spec)MUSLIN_CUTPLAN_STOCK_SPEC_INIT;
    const char *sizes = strncmp(text, any, strlen(any)) == 0 ? text + strlen(any) : read_count(text, &stock->count);
    size_t length = sizes == NULL ? 0 : strlen(sizes);
    const char *at = sizes == NULL ? NULL : strstr(sizes, " at ");
    char *end = NULL;
    if (at != NULL) {
        stock->cost = strtoll(at + 4, &end, 10);
        length = (size_t)(at - sizes);
    }
    if (length == 0 || length > 80 || (at != NULL && (end == at + 4 || *end != '\0')))
        return no_stock(desk, text);
    return read_sizes(desk, "stock", sizes, length, &stock->width, &stock->length) ||
           (is_other_word(desk) ? no_stock(desk, text) : false);
}

static bool read_list(struct desk *desk, const struct cutplan_request *wanted, struct list *list)
{
    if (wanted->folded && wanted->stock.count > 0) {
        failure_say(desk->failure, "folded", "Only a bolt is cut folded, not pieces of stock.");
        return false;
    }
    list->n = wanted->pieces.count;
    list->stock_n = wanted->stock.count;
    for (size_t i = 0; i < list->n; i++) {
        if (!read_piece(desk, wanted, wanted->pieces.texts[i], &list->pieces[i]))
            return false;
        list->pieces[i].label = (int64_t)i;
        list->pieces[i].priority = (int32_t)i;
    }
    for (size_t i = 0; i < list->stock_n; i++) {
        if (!read_stock(desk, wanted->stock.texts[i], &list->stock[i]))
            return false;
        list->stock[i].label = (int64_t)i;
    }
    return true;
}

/* ---- the search, told on the terminal --------------------------------------------------------------------------- */

enum { FIRST_AFTER_MS = 1000, BETWEEN_MS = 200 };

struct watch {
    const struct desk *desk;
    bool shown;
    bool from_stock;
    bool drawn;
    int64_t last_ms;
};

static int64_t now_ms(void)
{
    struct timespec now;
    clock_gettime(CLOCK_MONOTONIC, &now);
    return (int64_t)now.tv_sec * 1000 + now.tv_nsec / 1000000;
}

static void write_cost(const struct watch *watch, int64_t cost)
{
    if (watch->from_stock) {
        fprintf(stderr, "%" PRId64, cost);
        return;
    }
    json_t *part = json_object();
    put_ample(part, watch->desk, "cost", cost);
    fputs(json_string_value(json_object_get(json_object_get(part, "cost"), "text")), stderr);
    json_decref(part);
}

/* What takes less than a second is not told. */
static int32_t watch_search(void *context, int64_t work, int64_t best, int64_t bound)
{
    struct watch *watch = context;
    (void)work;
    if (watch->shown && now_ms() >= watch->last_ms + BETWEEN_MS) {
        watch->last_ms = now_ms();
        watch->drawn = true;
        fputs("\rbest plan so far: ", stderr);
        write_cost(watch, best);
        fputs("; no plan needs less than ", stderr);
        write_cost(watch, bound);
        fputs(" (Ctrl-C ends the search)\033[K", stderr);
        fflush(stderr);
    }
    return interrupted() ? 1 : 0;
}

static struct watch start_watch(const struct desk *desk, const struct cutplan_request *wanted)
{
    const bool always = wanted->progress == 2;
    return (struct watch){ .desk = desk,
                           .shown = !desk->common.among_others &&
                                    (always || (wanted->progress == 1 && isatty(STDERR_FILENO) == 1)),
                           .from_stock = wanted->stock.count > 0,
                           .last_ms = now_ms() + (always ? -BETWEEN_MS : FIRST_AFTER_MS) };
}

static bool is_of_a_piece(int32_t argument)
{
    return argument == MUSLIN_ARG_PIECE_WIDTH || argument == MUSLIN_ARG_PIECE_LENGTH ||
           argument == MUSLIN_ARG_PIECES || argument == MUSLIN_ARG_JOIN_LOSS;
}

/* A complaint about a row says which one. */
static bool worked_on(struct desk *desk, const struct cutplan_request *wanted, muslin_status status)
{
    if (worked(desk, status))
        return true;
    struct failure *failure = desk->failure;
    size_t used = strlen(failure->sentence);
    if (failure->argument == MUSLIN_ARG_PIECE_LENGTH)
        snprintf(failure->option, sizeof failure->option, "piece");
    if (is_of_a_piece(failure->argument) && failure->at >= 0 && (size_t)failure->at < wanted->pieces.count)
        snprintf(failure->sentence + used, sizeof failure->sentence - used, " This is about \"%.60s\".",
                 wanted->pieces.texts[failure->at]);
    return false;
}

static bool search(struct desk *desk, const struct cutplan_request *wanted, const struct list *list,
                   struct muslin_cutplan **plan)
{
    struct muslin_allocator memory;
    struct muslin_cutplan_spec spec = wanted->cloth;
    struct watch watch = start_watch(desk, wanted);
    spec.flags = (wanted->no_panels ? MUSLIN_CUTPLAN_NO_PANELS : 0) |
                 (wanted->one_height ? MUSLIN_CUTPLAN_ONE_HEIGHT : 0) |
                 (wanted->own_strips ? MUSLIN_CUTPLAN_OWN_STRIPS : 0) |
                 (wanted->stacked ? MUSLIN_CUTPLAN_STACKED : 0) | (wanted->folded ? MUSLIN_CUTPLAN_FOLDED : 0) |
                 (wanted->as_far ? MUSLIN_CUTPLAN_BY_PRIORITY : 0);
    if (list->stock_n > 0)
        spec.usable_width = 0;
    if (!worked(desk, muslin_allocator_libc(&memory)))
        return false;
    muslin_status status = muslin_cutplan_create(&spec, list->pieces, sizeof list->pieces[0], list->n, list->stock,
                                                 sizeof list->stock[0], list->stock_n, &memory, watch_search, &watch,
                                                 plan, &desk->problem);
    if (watch.drawn)
        fputs("\r\033[K", stderr);
    return worked_on(desk, wanted, status);
}

/* ---- the answer ------------------------------------------------------------------------------------------------- */

/* All rows of a plan, asked for and filled. */
struct rows {
    struct muslin_cutplan_strip *strips;
    struct muslin_cutplan_place *places;
    struct muslin_cutplan_left_over *left_over;
    size_t strip_count;
    size_t place_count;
    size_t left_over_count;
};

static bool read_rows(struct desk *desk, const struct cutplan_request *wanted, const struct muslin_cutplan *plan,
                      struct rows *rows)
{
    if (!worked(desk, muslin_cutplan_strips(plan, NULL, 0, 0, &rows->strip_count, &desk->problem)) ||
        !worked(desk, muslin_cutplan_places(plan, NULL, 0, 0, &rows->place_count, &desk->problem)) ||
        !worked(desk, muslin_cutplan_left_overs(plan, wanted->least_side, NULL, 0, 0, &rows->left_over_count,
                                                &desk->problem)))
        return false;
    rows->strips = need_memory((rows->strip_count + 1) * sizeof *rows->strips);
    rows->places = need_memory((rows->place_count + 1) * sizeof *rows->places);
    rows->left_over = need_memory((rows->left_over_count + 1) * sizeof *rows->left_over);
    return worked(desk, muslin_cutplan_strips(plan, rows->strips, sizeof *rows->strips, rows->strip_count,
                                              &rows->strip_count, &desk->problem)) &&
           worked(desk, muslin_cutplan_places(plan, rows->places, sizeof *rows->places, rows->place_count,
                                              &rows->place_count, &desk->problem)) &&
           worked(desk, muslin_cutplan_left_overs(plan, wanted->least_side, rows->left_over, sizeof *rows->left_over,
                                                  rows->left_over_count, &rows->left_over_count, &desk->problem));
}

static void free_rows(struct rows *rows)
{
    free(rows->strips);
    free(rows->places);
    free(rows->left_over);
}

static void put_label(json_t *answer, int64_t row)
{
    const char letter[2] = { letters[row], '\0' };
    put_text(answer, "label", letter);
}

static const char *strip_in_words(int32_t kind)
{
    static const char *const words[] = { "", "strip", "panel", "slit", "stock", "within" };
    return words[kind];
}

/* What holds a strip, or null. */
static const struct muslin_cutplan_strip *holder_of(const struct rows *rows, const struct muslin_cutplan_strip *strip)
{
    return strip->holder < 0 ? NULL : &rows->strips[strip->holder];
}

/* Whether first cuts run along the length of what the strip lies in, so that it stands upright in the cloth. */
static bool stands_upright(const struct rows *rows, const struct muslin_cutplan_strip *strip)
{
    const struct muslin_cutplan_strip *holder = holder_of(rows, strip);
    return strip->turned == 1 || (holder != NULL && holder->turned == 1);
}

/* In the cloth, not in its strip: a piece turned in a strip that stands upright lies as it was asked for. */
static bool is_turned(const struct rows *rows, const struct muslin_cutplan_strip *strip,
                      const struct muslin_cutplan_place *place, const struct muslin_blank_spec *piece)
{
    const bool oblong = piece->kind == MUSLIN_BLANK_PIECE && piece->cut_width != piece->cut_length;
    return oblong && (place->turned == 1) != stands_upright(rows, strip);
}

static bool is_square(const struct muslin_blank_spec *piece)
{
    return piece->kind == MUSLIN_BLANK_PIECE && piece->cut_width == piece->cut_length;
}

/* Another piece lies above it or below it, cut from the same blank. */
static bool is_in_a_stack(const struct rows *rows, const struct muslin_cutplan_strip *strip, int64_t at)
{
    const struct muslin_cutplan_place *place = &rows->places[strip->first_place + at];
    return place->y > 0 || (at + 1 < strip->places && place[1].y > 0);
}

static void put_places(json_t *strip_of, const struct desk *desk, const struct list *pieces, const struct rows *rows,
                       const struct muslin_cutplan_strip *strip)
{
    json_t *list = put_list(strip_of, "places");
    for (int64_t i = 0; i < strip->places; i++) {
        const struct muslin_cutplan_place *place = &rows->places[strip->first_place + i];
        json_t *one = append_object(list);
        put_label(one, place->piece);
        put_count(one, "pieces", place->count);
        put_length(one, desk, "x", place->x);
        put_length(one, desk, "y", place->y);
        put_length(one, desk, "cut_across", place->width);
        put_length(one, desk, "cut_along", place->height);
        put_length(one, desk, "pitch", place->pitch);
        put_truth(one, "square", is_square(&pieces->pieces[place->piece]));
        put_truth(one, "turned", is_turned(rows, strip, place, &pieces->pieces[place->piece]));
        put_truth(one, "in_a_stack", is_in_a_stack(rows, strip, i));
        put_truth(one, "trimmed", place->trimmed == 1);
        if (place->trimmed == 1)
            put_length(one, desk, "trimmed_from", strip->height);
        put_truth(one, "joined", pieces->pieces[place->piece].kind == MUSLIN_BLANK_JOINED);
        put_truth(one, "round_the_fold", place->width > strip->width);
    }
}

static void put_strips(json_t *answer, const struct desk *desk, const struct list *pieces, const struct rows *rows)
{
    json_t *list = put_list(answer, "strips_in_order");
    for (size_t i = 0; i < rows->strip_count; i++) {
        const struct muslin_cutplan_strip *strip = &rows->strips[i];
        json_t *one = append_object(list);
        put_count(one, "number", (int64_t)i + 1);
        put_text(one, "kind", strip_in_words(strip->kind));
        put_count(one, "times", strip->times);
        if (strip->holder >= 0)
            put_count(one, "within_number", strip->holder + 1);
        if (strip->stock >= 0) {
            put_count(one, "stock_row", strip->stock + 1);
            put_length(one, desk, "stock_across", pieces->stock[strip->stock].width);
            put_length(one, desk, "stock_along", pieces->stock[strip->stock].length);
        }
        put_length(one, desk, "x", strip->x);
        put_length(one, desk, "y", strip->y);
        put_length(one, desk, "strip_cut", strip->height);
        put_length(one, desk, "long", strip->width);
        put_length(one, desk, "used", strip->used);
        put_truth(one, "cut_along_the_length", strip->turned == 1);
        put_places(one, desk, pieces, rows, strip);
    }
}

/* As it lies in the cloth. */
static void put_left_over(json_t *answer, const struct desk *desk, const struct rows *rows)
{
    json_t *list = put_list(answer, "left_over");
    for (size_t i = 0; i < rows->left_over_count; i++) {
        const struct muslin_cutplan_left_over *rest = &rows->left_over[i];
        const bool upright = stands_upright(rows, &rows->strips[rest->strip]);
        json_t *one = append_object(list);
        put_count(one, "of_strip_number", rest->strip + 1);
        put_count(one, "pieces", rest->count);
        put_length(one, desk, "x", rest->x);
        put_length(one, desk, "y", rest->y);
        put_slack(one, desk, "across", upright ? rest->height : rest->width);
        put_slack(one, desk, "along", upright ? rest->width : rest->height);
    }
}

/* How often what a strip holds is cut. */
static int64_t times_of(const struct rows *rows, const struct muslin_cutplan_strip *strip)
{
    const struct muslin_cutplan_strip *holder = holder_of(rows, strip);
    return strip->times * (holder == NULL ? 1 : holder->times);
}

static void put_trims(json_t *answer, const struct rows *rows)
{
    int64_t trims = 0;
    for (size_t i = 0; i < rows->place_count; i++)
        if (rows->places[i].trimmed == 1)
            trims += rows->places[i].count * times_of(rows, &rows->strips[rows->places[i].strip]);
    put_count(answer, "trims", trims);
}

/* Strips of a joined row: how long together and what joining them takes; how little the shortest one adds. Of folded
 * cloth not all of them are wanted, where they do not add up it is left out. */
static void put_joins(json_t *row, const struct desk *desk, const struct muslin_blank_spec *piece,
                      const struct muslin_cutplan_piece *found, const struct rows *rows)
{
    const int64_t joins = found->cut - found->made;
    muslin_len together = 0;
    muslin_len shortest = MUSLIN_LENGTH_MAX;
    for (size_t i = 0; i < rows->place_count; i++) {
        const struct muslin_cutplan_place *place = &rows->places[i];
        if (place->piece != piece->label)
            continue;
        together += place->width * place->count * times_of(rows, &rows->strips[place->strip]);
        shortest = place->width < shortest ? place->width : shortest;
    }
    if (joins <= 0 || together - joins * piece->join_loss != found->made * piece->cut_width)
        return;
    put_count(row, "strips_to_join", found->cut);
    put_length(row, desk, "strips_together", together);
    put_count(row, "joins", joins);
    put_length(row, desk, "loss_per_join", piece->join_loss);
    if (found->made == 1 && shortest < 2 * piece->join_loss) {
        put_length(row, desk, "shortest_strip", shortest);
        put_length(row, desk, "shortest_strip_adds", shortest - piece->join_loss);
        put_length(row, desk, "joined_without_it", piece->cut_width - (shortest - piece->join_loss));
    }
}

static const char *piece_in_words(int32_t kind)
{
    static const char *const words[] = { "", "piece", "lengthwise", "joined" };
    return words[kind];
}

/* What becomes of each row of the list. */
static bool put_list_of_pieces(json_t *answer, struct desk *desk, const struct cutplan_request *wanted,
                               const struct list *list, const struct muslin_cutplan *plan, const struct rows *cuts)
{
    struct muslin_cutplan_piece found[TEXTS_MAX];
    size_t count = 0;
    if (!worked(desk, muslin_cutplan_pieces(plan, found, sizeof found[0], TEXTS_MAX, &count, &desk->problem)))
        return false;
    json_t *rows = put_list(answer, "list");
    for (size_t i = 0; i < list->n; i++) {
        json_t *one = append_object(rows);
        put_label(one, (int64_t)i);
        put_text(one, "as_written", wanted->pieces.texts[i]);
        put_text(one, "kind", piece_in_words(list->pieces[i].kind));
        put_length(one, desk, "cut_across", list->pieces[i].cut_width);
        put_length(one, desk, "cut_along", list->pieces[i].cut_length);
        put_truth(one, "square", is_square(&list->pieces[i]));
        put_truth(one, "may_turn", (list->pieces[i].flags & MUSLIN_BLANK_MAY_TURN) != 0 &&
                                       wanted->cloth.print == MUSLIN_PRINT_NONE);
        put_count(one, "wanted", list->pieces[i].count);
        put_count(one, "made", found[i].made);
        put_count(one, "missing", found[i].missing);
        put_count(one, "cut", found[i].cut);
        if (list->pieces[i].kind == MUSLIN_BLANK_JOINED)
            put_joins(one, desk, &list->pieces[i], &found[i], cuts);
    }
    return true;
}

/* How large a piece of stock must be at least for what the plan cuts from it: of all of one row. */
static void put_least_stock(json_t *row, const struct desk *desk, const struct cutplan_request *wanted, int64_t stock,
                            const struct rows *rows)
{
    muslin_len across = 0;
    muslin_len along = 0;
    for (size_t i = 0; i < rows->strip_count; i++) {
        const struct muslin_cutplan_strip *holder = &rows->strips[i];
        muslin_len longest = 0;
        muslin_len high = 0;
        if (holder->kind != MUSLIN_CUTPLAN_STRIP_STOCK || holder->stock != stock)
            continue;
        for (size_t k = i + 1; k < rows->strip_count && rows->strips[k].holder == (int64_t)i; k++) {
            const muslin_len length = rows->strips[k].used + wanted->cloth.end_loss;
            longest = length > longest ? length : longest;
            high += rows->strips[k].times * rows->strips[k].height;
        }
        const muslin_len wide = holder->turned == 1 ? high : longest;
        const muslin_len deep = (holder->turned == 1 ? longest : high) + wanted->cloth.straightening;
        across = wide > across ? wide : across;
        along = deep > along ? deep : along;
    }
    put_least(row, desk, "least_width", across);
    put_least(row, desk, "least_length", along);
}

static bool put_stock(json_t *answer, struct desk *desk, const struct cutplan_request *wanted, const struct list *list,
                      const struct muslin_cutplan *plan, const struct rows *cuts)
{
    struct muslin_cutplan_stock_used found[TEXTS_MAX];
    size_t count = 0;
    if (!worked(desk, muslin_cutplan_stock(plan, found, sizeof found[0], TEXTS_MAX, &count, &desk->problem)))
        return false;
    json_t *rows = put_list(answer, "stock");
    for (size_t i = 0; i < list->stock_n; i++) {
        json_t *one = append_object(rows);
        put_text(one, "as_written", wanted->stock.texts[i]);
        put_length(one, desk, "width", list->stock[i].width);
        put_length(one, desk, "length", list->stock[i].length);
        if (list->stock[i].count < MUSLIN_COUNT_MAX) {
            put_count(one, "there", list->stock[i].count);
            put_count(one, "whole", list->stock[i].count - found[i].used);
        }
        put_count(one, "used", found[i].used);
        put_count(one, "cost_of_each", list->stock[i].cost);
        put_count(one, "cost", found[i].cost);
        put_least_stock(one, desk, wanted, (int64_t)i, cuts);
    }
    return true;
}

static const char *end_in_words(const struct muslin_cutplan_total *totals)
{
    static const char *const words[] = { "proven", "interrupt", "work limit", "memory", "too many sizes",
                                         "nothing left to look for" };
    return words[totals->stopped];
}

static bool put_cloth_totals(json_t *answer, struct desk *desk, const struct cutplan_request *wanted,
                             const struct muslin_cutplan *plan, const struct muslin_cutplan_total *totals)
{
    muslin_len narrowest = 0;
    const muslin_len least = totals->least + (totals->cloth_length - totals->cost);
    if (!worked(desk, muslin_cutplan_narrowest(plan, &narrowest, &desk->problem)))
        return false;
    put_length(answer, desk, "usable_width", wanted->cloth.usable_width);
    put_cloth(answer, desk, "cloth_length", totals->cloth_length);
    put_slack(answer, desk, "no_plan_needs_less_than", least);
    put_slack(answer, desk, "more_than_that", totals->cloth_length - least);
    put_cloth(answer, desk, "each_size_on_its_own_strips", totals->own_strips_length);
    put_slack(answer, desk, "saved", totals->own_strips_length - totals->cloth_length);
    put_shop_length(put_object(answer, "own_strips_to_buy"), desk, totals->own_strips_length);
    put_least(answer, desk, "area_bound", totals->area_bound);
    put_least(answer, desk, "narrowest_as_cut", narrowest);
    put_shop_length(answer, desk, totals->cloth_length);
    return true;
}

static bool put_totals(json_t *answer, struct desk *desk, const struct cutplan_request *wanted,
                       const struct muslin_cutplan *plan)
{
    struct muslin_cutplan_total totals = { .size = sizeof totals };
    if (!worked(desk, muslin_cutplan_totals(plan, &totals, &desk->problem)))
        return false;
    put_text(answer, "from", wanted->stock.count > 0 ? "stock" : "yardage");
    put_count(answer, "pieces", totals.pieces);
    put_count(answer, "missing", totals.missing);
    put_count(answer, "panels", totals.panels);
    put_count(answer, "strips", totals.strips - totals.panels);
    put_count(answer, "cuts", totals.cuts);
    put_truth(answer, "certainly_the_least", totals.proven == 1);
    put_text(answer, "search_ended_by", end_in_words(&totals));
    put_count(answer, "steps_of_the_search", totals.work);
    put_length(answer, desk, "end_loss", wanted->cloth.end_loss);
    put_length(answer, desk, "left_end", wanted->cloth.end_loss / 2);
    put_length(answer, desk, "right_end", wanted->cloth.end_loss - wanted->cloth.end_loss / 2);
    put_length(answer, desk, "straightening", wanted->cloth.straightening);
    put_count(answer, "spare_pieces_of_each_size", wanted->cloth.spare_pieces);
    put_length(answer, desk, "left_over_listed_from", wanted->least_side);
    put_text(answer, "join", word_of(join_words, wanted->join));
    put_text(answer, "print", word_of(print_words, wanted->cloth.print));
    put_truth(answer, "folded", wanted->folded == 1);
    put_truth(answer, "own_strips", wanted->own_strips == 1);
    put_truth(answer, "stacked", wanted->stacked == 1);
    put_truth(answer, "one_height", wanted->one_height == 1);
    put_truth(answer, "no_panels", wanted->no_panels == 1);
    if (wanted->stock.count == 0)
        return put_cloth_totals(answer, desk, wanted, plan, &totals);
    put_count(answer, "pieces_of_stock", totals.stock_pieces);
    put_count(answer, "cost", totals.cost);
    put_count(answer, "no_plan_costs_less_than", totals.least);
    return true;
}

static bool put_plan(json_t *answer, struct desk *desk, const struct cutplan_request *wanted, const struct list *list,
                     const struct muslin_cutplan *plan)
{
    struct rows rows = { 0 };
    bool fine = read_rows(desk, wanted, plan, &rows) && put_totals(answer, desk, wanted, plan) &&
                put_list_of_pieces(answer, desk, wanted, list, plan, &rows) &&
                (list->stock_n == 0 || put_stock(answer, desk, wanted, list, plan, &rows));
    if (fine) {
        put_trims(answer, &rows);
        put_strips(answer, desk, list, &rows);
        put_left_over(answer, desk, &rows);
    }
    free_rows(&rows);
    return fine;
}

static json_t *answer_cutplan(const void *request, struct desk *desk)
{
    const struct cutplan_request *wanted = request;
    struct list list;
    struct muslin_cutplan *plan = NULL;
    if (!read_list(desk, wanted, &list) || !search(desk, wanted, &list, &plan))
        return NULL;
    json_t *answer = json_object();
    if (!put_plan(answer, desk, wanted, &list, plan)) {
        json_decref(answer);
        answer = NULL;
    }
    muslin_cutplan_free(plan);
    return answer;
}

static const struct option_row cutplan_options[] = {
    { "piece", KIND_TEXTS, offsetof(struct cutplan_request, pieces), MUSLIN_ARG_PIECE_WIDTH,
      OPTION_REQUIRED | OPTION_OPERAND,
      NULL, "how many of what cut size: across the cloth, x, along it; one size for squares. Behind it \"turn\": these "
      "may lie turned a quarter; \"lengthwise\": the second size lies along the cloth, slit from a panel; \"joined\": "
      "the first size is a length in all, pieced from strips. May be repeated" },
    { "stock", KIND_TEXTS, offsetof(struct cutplan_request, stock), MUSLIN_ARG_STOCK_SIDE, 0, NULL,
      "cut from this instead of a bolt: how many there are, or any, of what size, such as \"6 of 21 x 18 in\"; \" at "
      "3\" behind it: each costs 3 (1). May be repeated" },
    { "print", KIND_CHOICE, offsetof(struct cutplan_request, cloth.print), MUSLIN_ARG_PRINT_DIRECTION, 0, print_words,
      "none (the usual), two-way, one-way, stripe-along or stripe-across; with a direction no piece is turned" },
    OPTION_HEADING("Cloth"),
    { "usable", KIND_LENGTH, offsetof(struct cutplan_request, cloth.usable_width), MUSLIN_ARG_USABLE_WIDTH, 0, NULL,
      "usable width of the bolt (40 in)" },
    { "end-loss", KIND_LENGTH, offsetof(struct cutplan_request, cloth.end_loss), MUSLIN_ARG_END_LOSS, 0, NULL,
      "taken off each strip to square its ends (none)" },
    { "straighten", KIND_LENGTH, offsetof(struct cutplan_request, cloth.straightening), MUSLIN_ARG_STRAIGHTENING, 0,
      NULL, "taken off the bolt once, or off each piece of stock (none)" },
    { "resquare-loss", KIND_LENGTH, offsetof(struct cutplan_request, cloth.resquare_loss), MUSLIN_ARG_RESQUARE_LOSS, 0,
      NULL, "what squaring a strip's cut end again takes (none)" },
    { "resquare-every", KIND_COUNT, offsetof(struct cutplan_request, cloth.resquare_every), MUSLIN_ARG_RESQUARE_EVERY,
      0, NULL, "so many cuts later (never)" },
    { "spare", KIND_COUNT, offsetof(struct cutplan_request, cloth.spare_pieces), MUSLIN_ARG_SPARE_PIECES, 0, NULL,
      "so many more pieces of each size, for mistakes (none)" },
    OPTION_HEADING("What is joined"),
    { "join", KIND_CHOICE, offsetof(struct cutplan_request, join), MUSLIN_ARG_JOIN, 0, join_words,
      "diagonal (the usual: takes the strip's cut width of its length), straight, bias-ends or butted" },
    { "seam", KIND_LENGTH, offsetof(struct cutplan_request, allowance), MUSLIN_ARG_SEAM_ALLOWANCE, 0, NULL,
      "seam allowance of joins (1/4 in)" },
    OPTION_HEADING("Way of cutting"),
    { "own-strips", KIND_SWITCH, offsetof(struct cutplan_request, own_strips), 0, 0, NULL,
      "each size on its own strips, as most books have it" },
    { "folded", KIND_SWITCH, offsetof(struct cutplan_request, folded), 0, 0, NULL,
      "the bolt is cut in two layers, folded lengthwise: each cut gives two pieces" },
    { "one-height", KIND_SWITCH, offsetof(struct cutplan_request, one_height), 0, 0, NULL,
      "a strip holds only pieces of just its height: nothing is trimmed" },
    { "stacked", KIND_SWITCH, offsetof(struct cutplan_request, stacked), 0, 0, NULL,
      "what is cross-cut from a strip may be cut once more, into pieces of one width one above the other" },
    { "no-panels", KIND_SWITCH, offsetof(struct cutplan_request, no_panels), 0, 0, NULL,
      "nothing is slit from panels" },
    { "as-far", KIND_SWITCH, offsetof(struct cutplan_request, as_far), 0, 0, NULL,
      "from stock: as far as it goes, first rows first; without it too little stock is no answer" },
    OPTION_HEADING("The search"),
    { "work", KIND_COUNT, offsetof(struct cutplan_request, cloth.work_limit), MUSLIN_ARG_WORK_LIMIT, 0, NULL,
      "search no longer than so many steps (400000000)" },
    { "progress", KIND_CHOICE, offsetof(struct cutplan_request, progress), 0, 0, progress_words,
      "how the search stands, on standard error: auto (on a terminal, after a second; the usual), always or never" },
    { "left-over", KIND_LENGTH, offsetof(struct cutplan_request, least_side), MUSLIN_ARG_LEAST_SIDE, 0, NULL,
      "list what is left where it is at least so wide and so long (2 in)" },
    OPTION_END
};

const struct command cutplan_command = {
    .name = "cutplan",
    .about = "a list of pieces cut from the least cloth, strip by strip",
    .operands = "PIECES...",
    .examples = "  muslin cutplan \"32 of 5 1/2 in\" \"16 of 6 in\" \"8 of 9 1/2 in\"\n"
                "  muslin cutplan \"24 of 3 x 5 in turn\" \"2 of 4 1/2 x 60 in lengthwise\" \\\n"
                "      \"1 of 164 x 2 1/2 in joined\" --svg bolt.svg\n"
                "  muslin cutplan \"40 of 4 in\" \"9 of 6 1/2 in\" --stock \"6 of 21 x 18 in\"\n"
                "\n"
                "An invented example. Ottilie wants 32 squares cut 5 1/2 in, 16 cut 6 in and 8 cut 9 1/2 in from one "
                "blue. Each size on its own strips would take more cloth than the first line above says: the plan "
                "fills the ends of higher strips with lower pieces, which are then trimmed. It also says the least "
                "that any such plan can need, so she knows when to stop looking. Sizes are cut sizes, seams included. "
                "Cut a test block first.",
    .options = cutplan_options,
    .request_size = sizeof(struct cutplan_request),
    .start = start_cutplan,
    .answer = answer_cutplan,
    .show = show_cutplan,
    .draw = draw_cutplan
};
