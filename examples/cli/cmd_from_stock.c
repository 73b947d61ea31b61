/* cmd_from_stock.c - from-stock: what can be made from the strips, squares and cloth there are, ranked.
 *
 * SPDX-License-Identifier: MIT */
#include <stdlib.h>
#include <string.h>

#include "answer.h"
#include "can_make.h"
#include "cmd.h"
#include "ideas.h"
#include "pieces.h"
#include "sheet.h"
#include "words.h"

static const struct word made_words[] = {
    { "all", MADE_ALL }, { "strip-sets", MADE_STRIP_SETS }, { "units", MADE_UNITS }, { NULL, 0 }
};
static const struct word rank_words[] = {
    { "largest", RANK_LARGEST }, { "least-left-over", RANK_LEAST_LEFT }, { "largest-block", RANK_LARGEST_BLOCK },
    { NULL, 0 }
};

struct from_stock_request {
    struct texts stock;
    json_t *patterns; /* files and folders; null: none */
    struct wishes wishes;
    muslin_len cut_strips;
    int64_t list;
};

static void start_from_stock(void *request)
{
    struct from_stock_request *wanted = request;
    wanted->wishes.made = MADE_ALL;
    wanted->wishes.rank = RANK_LARGEST;
    wanted->wishes.allowance = MUSLIN_TICKS_PER_INCH / 4;
    wanted->wishes.finished_grid = MUSLIN_TICKS_PER_INCH / 8;
    wanted->list = 12;
}

/* ---- the stock -------------------------------------------------------------------------------------------------- */

static bool no_stock(struct desk *desk, const char *text)
{
    failure_say(desk->failure, "stock", "\"%.60s\" is no row of this list: write how many there are of what size, such "
                                        "as \"42 of 2 1/2 x 42 in\" for strips, \"40 of 5 in\" for squares or \"6 of "
                                        "18 x 21 in\" for fat quarters.", text);
    return false;
}

/* The row as a source of strips and squares, and as cloth. */
static bool read_row(struct desk *desk, const char *text, struct source *row, struct cloth_row *cloth)
{
    muslin_len across = 0;
    muslin_len along = 0;
    const char *sizes = read_count(text, &row->count);
    if (sizes == NULL || strlen(sizes) > 80)
        return no_stock(desk, text);
    if (!read_sizes(desk, "stock", sizes, strlen(sizes), &across, &along))
        return is_other_word(desk) ? no_stock(desk, text) : false;
    row->length = across > along ? across : along;
    row->cut = across > along ? along : across;
    row->cloth = cloth_area(row->count, row->length, row->cut);
    *cloth = (struct cloth_row){ text, row->count, across, along };
    if (row->count > 0 && row->cut > 0 && row->length <= MUSLIN_SIZE_MAX)
        return true;
    failure_say(desk->failure, "stock", "\"%.60s\": there must be one at least, and neither side may be nothing or "
                                        "longer than %d in.", text, (int)(MUSLIN_SIZE_MAX / MUSLIN_TICKS_PER_INCH));
    return false;
}

static void add_source(struct sources *sources, const struct source *source)
{
    for (size_t i = 0; i < sources->count; i++)
        if (sources->rows[i].rows == source->rows && sources->rows[i].from_each == source->from_each)
            return;
    sources->rows[sources->count++] = *source;
}

/* A cloth of two strips or more may be cut into strips along its longer side first. */
static bool cut_into_strips(struct desk *desk, const struct source *row, muslin_len strip, struct source *strips)
{
    struct muslin_cloth_spec spec = MUSLIN_CLOTH_SPEC_INIT;
    struct muslin_cloth_pieces pieces = { .size = sizeof pieces };
    *strips = *row;
    if (strip == 0)
        return true;
    spec.width = row->cut;
    spec.length = row->length;
    spec.piece_width = strip;
    spec.piece_length = row->length;
    if (!worked(desk, muslin_fabric_pieces(&spec, &pieces, &desk->problem)))
        return false;
    if (pieces.pieces < 2 || pieces.pieces > MUSLIN_COUNT_MAX / row->count)
        return true;
    strips->cut = strip;
    strips->count = row->count * pieces.pieces;
    strips->from_each = pieces.pieces;
    return true;
}

/* Rows of strips of one cut width go together; the shortest counts. */
static void add_together(struct sources *sources, size_t rows)
{
    for (size_t i = 0; i < rows; i++) {
        struct source together = sources->rows[i];
        for (size_t k = 0; k < rows; k++) {
            const struct source *other = &sources->rows[k];
            if (k == i || other->cut != together.cut || other->length < together.length ||
                other->count > MUSLIN_COUNT_MAX - together.count)
                continue;
            together.count += other->count;
            together.cloth = together.cloth == 0 || other->cloth == 0 ? 0 : together.cloth + other->cloth;
            together.rows |= other->rows;
        }
        add_source(sources, &together);
    }
}

static bool read_rows(struct desk *desk, const struct from_stock_request *wanted, struct sources *sources,
                      struct cloth_row *cloths)
{
    sources->count = 0;
    for (size_t i = 0; i < wanted->stock.count; i++) {
        struct source row = { .rows = UINT64_C(1) << i };
        if (!read_row(desk, wanted->stock.texts[i], &row, &cloths[i]))
            return false;
        add_source(sources, &row);
    }
    return true;
}

static bool derive_sources(struct desk *desk, const struct from_stock_request *wanted, struct sources *sources)
{
    add_together(sources, sources->count);
    for (size_t i = 0, rows = wanted->stock.count; i < rows; i++) {
        struct source strips;
        if (!cut_into_strips(desk, &sources->rows[i], wanted->cut_strips, &strips))
            return false;
        if (strips.from_each > 0)
            add_source(sources, &strips);
    }
    return true;
}

/* ---- the answer ------------------------------------------------------------------------------------------------- */

static void put_source(json_t *answer, const struct desk *desk, const struct from_stock_request *wanted,
                       const struct source *source)
{
    json_t *list = put_list(answer, "from");
    for (size_t i = 0; i < wanted->stock.count; i++)
        if ((source->rows >> i & 1) != 0)
            json_array_append_new(list, json_string(wanted->stock.texts[i]));
    put_count(answer, "there", source->count);
    put_length(answer, desk, "piece_cut", source->cut);
    put_length(answer, desk, "piece_length", source->length);
    put_truth(answer, "strips", are_strips(source));
    if (source->from_each > 0)
        put_count(answer, "strips_from_each", source->from_each);
}

static void put_next(json_t *answer, const struct desk *desk, const struct next_layout *next)
{
    json_t *put = put_object(answer, "next_larger");
    put_count(put, "columns", next->columns);
    put_count(put, "rows", next->rows);
    put_length(put, desk, "top_finished_width", next->top_width);
    put_length(put, desk, "top_finished_length", next->top_length);
    put_count(put, "more", next->more);
}

static void put_making(json_t *answer, const struct desk *desk, const struct idea *idea)
{
    put_text(answer, "made_of", word_of(made_words, idea->made));
    if (idea->made == MADE_STRIP_SETS) {
        put_count(answer, "strips_in_a_set", idea->strips_per_set);
        put_count(answer, "segments_in_a_block", idea->segments_per_block);
        put_length(answer, desk, "segment_cut", idea->segment_cut);
        put_count(answer, "sets", idea->sets);
        put_count(answer, "segments_left", idea->segments_left);
        return;
    }
    put_text(answer, "unit", word_of(unit_kind_words, idea->unit));
    put_text(answer, "method", word_of(unit_method_words, idea->method));
    put_count(answer, "fabrics", idea->fabrics);
    put_count(answer, "units_left", idea->units_left);
}

static void put_idea(json_t *answer, const struct desk *desk, const struct from_stock_request *wanted,
                     const struct idea *idea, size_t number)
{
    put_count(answer, "number", (int64_t)number);
    put_making(answer, desk, idea);
    put_source(answer, desk, wanted, idea->source);
    put_count(answer, "blocks", idea->blocks);
    put_count(answer, "columns", idea->columns);
    put_count(answer, "rows", idea->rows);
    put_length(answer, desk, "block_finished_width", idea->block_width);
    put_length(answer, desk, "block_finished_height", idea->block_height);
    put_length(answer, desk, "top_finished_width", idea->top_width);
    put_length(answer, desk, "top_finished_length", idea->top_length);
    put_count(answer, "used", idea->used);
    put_count(answer, "left", idea->left);
    put_share(answer, desk, "seen_in_the_top", idea->seen);
    put_truth(answer, "nothing_to_spare", (idea->warnings & MUSLIN_WARN_NO_SLACK) != 0);
    if (idea->next.columns > 0)
        put_next(answer, desk, &idea->next);
    put_warnings(answer, idea->warnings);
}

static struct wishes wishes_of(const struct desk *desk, const struct from_stock_request *wanted)
{
    struct wishes wishes = wanted->wishes;
    wishes.metric = desk->common.units == UNITS_CM || desk->common.units == UNITS_MM;
    if (wishes.metric && !given(desk, "step"))
        wishes.finished_grid = 5 * MUSLIN_TICKS_PER_MM;
    return wishes;
}

static json_t *answer_ideas(struct desk *desk, const struct from_stock_request *wanted, struct sources *sources)
{
    const struct wishes wishes = wishes_of(desk, wanted);
    struct ideas ideas = { NULL, 0, 0 };
    json_t *answer = NULL;
    if (derive_sources(desk, wanted, sources) && find_ideas(desk, sources, &wishes, &ideas)) {
        answer = json_object();
        put_text(answer, "ranked_by", word_of(rank_words, wanted->wishes.rank));
        put_length(answer, desk, "seam_allowance", wanted->wishes.allowance);
        put_length(answer, desk, "finished_in_steps_of", wishes.finished_grid);
        put_truth(answer, "every_way", wanted->wishes.all == 1);
        put_count(answer, "ideas_found", (int64_t)ideas.count);
        json_t *list = put_list(answer, "ideas");
        for (size_t i = 0; i < ideas.count && (wanted->list == 0 || (int64_t)i < wanted->list); i++)
            put_idea(append_object(list), desk, wanted, &ideas.rows[i], i + 1);
    }
    free(ideas.rows);
    return answer;
}

static json_t *answer_from_stock(const void *request, struct desk *desk)
{
    const struct from_stock_request *wanted = request;
    struct sources sources;
    struct cloth_row cloths[TEXTS_MAX];
    if (!read_rows(desk, wanted, &sources, cloths))
        return NULL;
    if (wanted->patterns == NULL)
        return answer_ideas(desk, wanted, &sources);
    json_t *answer = json_object();
    if (put_patterns(answer, desk, wanted->patterns, cloths, wanted->stock.count, wanted->list))
        return answer;
    json_decref(answer);
    return NULL;
}

/* Patterns that are wrong were passed over. */
static bool doubt_from_stock(const char *program, json_t *answer)
{
    json_t *files = json_object_get(json_object_get(answer, "patterns"), "wrong_files");
    json_t *name;
    size_t index;
    json_array_foreach(files, index, name)
        fprintf(stderr, "%s: %s, or a size in it, is wrong: muslin pattern tells what.\n", program,
                json_string_value(name));
    return json_array_size(files) > 0;
}

#define AT(member) offsetof(struct from_stock_request, member)
static const struct option_row from_stock_options[] = {
    OPTION_HEADING("What you have"),
    { "stock", KIND_TEXTS, AT(stock), MUSLIN_ARG_STOCK_SIDE, OPTION_REQUIRED | OPTION_OPERAND, NULL,
      "how many there are of what size, as cut: \"42 of 2 1/2 x 42 in\" are strips, \"40 of 5 in\" squares, \"6 of 18 "
      "x 21 in\" fat quarters. May be repeated" },
    { "cut-strips", KIND_LENGTH, AT(cut_strips), MUSLIN_ARG_STRIP_CUT, 0, NULL,
      "pieces of cloth may also be cut into strips this wide, along their longer side" },
    { "end-loss", KIND_LENGTH, AT(wishes.end_loss), MUSLIN_ARG_END_LOSS, 0, NULL,
      "taken off the longer side of each, for squaring (none)" },
    OPTION_HEADING("What you want"),
    { "make", KIND_CHOICE, AT(wishes.made), 0, 0, made_words,
      "strip-sets (blocks of strips sewn together), units (pieced units set side by side) or all (the usual)" },
    { "block", KIND_LENGTHS, AT(wishes.blocks), MUSLIN_ARG_FINISHED, 0, NULL,
      "finished width of units to try (the largest, and 3, 4, 6, 8, 9 and 12 in, or 8, 10, 15, 20, 25 and 30 cm with "
      "--units cm or mm); may be repeated" },
    { "step", KIND_LENGTH, AT(wishes.finished_grid), MUSLIN_ARG_GRID, 0, NULL,
      "the largest units finish in steps of this (1/8 in, or 5 mm with --units cm or mm)" },
    { "patterns", KIND_FILES, AT(patterns), 0, 0, NULL,
      "instead: which sizes of these pattern files, or of those in these folders, can be cut from it; each row of the "
      "stock is then one fabric, its sizes across the cloth x along it. May be repeated" },
    OPTION_SEAM(from_stock_request, wishes.allowance, wishes.take_up),
    OPTION_HEADING("The list"),
    { "rank", KIND_CHOICE, AT(wishes.rank), MUSLIN_ARG_RANK, 0, rank_words,
      "what comes first: largest (the largest top, then the least left over; the usual), least-left-over (the largest "
      "share of the cloth is seen in the top) or largest-block" },
    { "all", KIND_SWITCH, AT(wishes.all), 0, 0, NULL,
      "every way and size, not only the best of each kind of block" },
    { "list", KIND_COUNT, AT(list), MUSLIN_ARG_BEST, 0, NULL, "list so many (12); 0 lists all" },
    OPTION_END
};

const struct command from_stock_command = {
    .name = "from-stock",
    .about = "what your stash can become: tops from strips, squares and cloth",
    .operands = "STOCK...",
    .examples = "  muslin from-stock \"42 of 2 1/2 x 42 in\"\n"
                "  muslin from-stock \"40 of 5 in\" \"6 of 18 x 21 in\" --cut-strips \"2 1/2\"\n"
                "  muslin from-stock \"40 of 5 in\" --make units --block 4 --block 3 \\\n"
                "      --rank least-left-over\n"
                "  muslin from-stock \"1 of 42 x 90 in\" \"1 of 42 x 72 in\" \\\n"
                "      --patterns examples/patterns\n"
                "\n"
                "Each idea takes one row of the stock, or all strips of one cut width, and sets its blocks in straight "
                "rows, in a top no longer than half as long again as wide. The pieces are dealt evenly to the fabrics "
                "of a unit: for two fabrics, half of them must do as the one and half as the other. At least three "
                "times as long as wide is a strip.",
    .options = from_stock_options,
    .request_size = sizeof(struct from_stock_request),
    .start = start_from_stock,
    .answer = answer_from_stock,
    .show = show_from_stock,
    .doubt = doubt_from_stock
};
