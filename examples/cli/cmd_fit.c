/* cmd_fit.c - fit, rescale: settings that come out at a size, and a pattern made larger or smaller.
 *
 * SPDX-License-Identifier: MIT */
#include <stdlib.h>
#include <string.h>

#include "answer.h"
#include "cmd.h"
#include "memory.h"
#include "sheet.h"
#include "words.h"

/* ---- settings that come out at a size --------------------------------------------------------------------------- */

static const struct word kind_words[] = {
    { "straight", MUSLIN_FIT_STRAIGHT }, { "sashed", MUSLIN_FIT_SASHED }, { "framed", MUSLIN_FIT_FRAMED },
    { "on-point", MUSLIN_FIT_ON_POINT }, { NULL, 0 }
};
static const struct word allow_words[] = {
    { "straight", MUSLIN_FIT_ALLOW_STRAIGHT }, { "sashed", MUSLIN_FIT_ALLOW_SASHED },
    { "framed", MUSLIN_FIT_ALLOW_FRAMED }, { "on-point", MUSLIN_FIT_ALLOW_ON_POINT }, { NULL, 0 }
};
static const struct word rank_words[] = {
    { "nearest", MUSLIN_FIT_RANK_NEAREST }, { "fewest-blocks", MUSLIN_FIT_RANK_FEWEST_BLOCKS },
    { "largest-block", MUSLIN_FIT_RANK_LARGEST_BLOCK }, { NULL, 0 }
};
static const struct word parity_words[] = {
    { "any", MUSLIN_PARITY_ANY }, { "even", MUSLIN_PARITY_EVEN }, { "odd", MUSLIN_PARITY_ODD }, { NULL, 0 }
};

#define LISTED_USUAL 20

struct fit_request {
    struct muslin_fit_spec fit;
    struct texts settings;
    muslin_len within;
    muslin_len block;
    muslin_len sash;
    muslin_len border;
};

static void start_fit(void *request)
{
    struct fit_request *wanted = request;
    wanted->fit = (struct muslin_fit_spec)MUSLIN_FIT_SPEC_INIT;
    wanted->fit.best = LISTED_USUAL;
    wanted->within = 2 * MUSLIN_TICKS_PER_INCH;
}

/* The kinds named, or the straight one. */
static bool read_kinds(struct desk *desk, const struct texts *settings, uint32_t *flags)
{
    *flags = settings->count == 0 ? MUSLIN_FIT_ALLOW_STRAIGHT : 0;
    for (size_t i = 0; i < settings->count; i++) {
        const struct word *word = find_word(allow_words, settings->texts[i]);
        if (word == NULL) {
            char list[100];
            list_words(allow_words, list, sizeof list);
            failure_say(desk->failure, "setting", "Choose one of %s; the option may be repeated.", list);
            return false;
        }
        *flags |= (uint32_t)word->value;
    }
    return true;
}

/* One size instead of a range. */
static void narrow(const struct desk *desk, const char *option, muslin_len size, muslin_len *least, muslin_len *most)
{
    if (!given(desk, option))
        return;
    *least = size;
    *most = size;
}

/* A range that is given by its least alone begins and ends there. */
static void close_range(const struct desk *desk, const char *least_option, const char *most_option, muslin_len least,
                        muslin_len *most)
{
    if (given(desk, least_option) && !given(desk, most_option) && *most < least)
        *most = least;
}

static bool fit_wanted(struct desk *desk, const struct fit_request *wanted, struct muslin_fit_spec *spec)
{
    *spec = wanted->fit;
    muslin_len *tolerances[] = { &spec->width_under, &spec->width_over, &spec->length_under, &spec->length_over };
    for (size_t i = 0; i < 4; i++)
        *tolerances[i] = wanted->within;
    narrow(desk, "block", wanted->block, &spec->block_least, &spec->block_most);
    narrow(desk, "sash", wanted->sash, &spec->sash_least, &spec->sash_most);
    narrow(desk, "border", wanted->border, &spec->border_least, &spec->border_most);
    close_range(desk, "block-least", "block-most", spec->block_least, &spec->block_most);
    close_range(desk, "sash-least", "sash-most", spec->sash_least, &spec->sash_most);
    close_range(desk, "border-least", "border-most", spec->border_least, &spec->border_most);
    return read_kinds(desk, &wanted->settings, &spec->flags);
}

static void put_fit(json_t *answer, const struct desk *desk, const struct muslin_fit *fit)
{
    put_text(answer, "setting", word_of(kind_words, fit->kind));
    put_count(answer, "columns", fit->columns);
    put_count(answer, "rows", fit->rows);
    put_length(answer, desk, "finished_block", fit->block);
    put_length(answer, desk, "finished_sash", fit->sash);
    put_length(answer, desk, "finished_border", fit->border);
    put_about(answer, desk, "finished_width", fit->finished_width);
    put_about(answer, desk, "finished_length", fit->finished_length);
    put_off_by(answer, desk, "wider_than_wanted_by", "width_off_by", fit->off_width);
    put_off_by(answer, desk, "longer_than_wanted_by", "length_off_by", fit->off_length);
    put_truth(answer, "exactly_as_wanted", fit->exact == 1);
    put_count(answer, "blocks", fit->blocks);
    put_count(answer, "alternate_blocks", fit->alternates);
}

/* Of a range the least and the most share a name in the library; its problem tells them apart. */
static bool searched(struct desk *desk, muslin_status status)
{
    static const char *const most[] = { "block", "sash", "border", "columns", "rows" };
    struct failure *failure = desk->failure;
    if (worked(desk, status))
        return true;
    for (size_t i = 0; i < sizeof most / sizeof most[0]; i++)
        if (failure->status == MUSLIN_ERR_RANGE && failure->at == 1 &&
            strncmp(failure->option, most[i], strlen(most[i])) == 0)
            snprintf(failure->option, sizeof failure->option, "%s-most", most[i]);
    return false;
}

/* The best of them, and how many there are in all. */
static bool put_fits(json_t *answer, struct desk *desk, const struct muslin_fit_spec *spec)
{
    struct muslin_fit_spec all = *spec;
    size_t found = 0;
    size_t count = 0;
    all.best = 0;
    if (!searched(desk, muslin_fit_settings(&all, NULL, 0, 0, &found, &desk->problem)) ||
        !worked(desk, muslin_fit_settings(spec, NULL, 0, 0, &count, &desk->problem)))
        return false;
    put_count(answer, "settings_found", (int64_t)found);
    json_t *list = put_list(answer, "settings");
    if (count == 0)
        return true;
    struct muslin_fit *rows = need_memory(count * sizeof *rows);
    bool fine = worked(desk, muslin_fit_settings(spec, rows, sizeof *rows, count, &count, &desk->problem));
    for (size_t i = 0; fine && i < count; i++)
        put_fit(append_object(list), desk, &rows[i]);
    free(rows);
    return fine;
}

static bool put_nearest(json_t *answer, struct desk *desk, const struct muslin_fit_spec *spec)
{
    struct muslin_fit nearest = { .size = sizeof nearest };
    if (!worked(desk, muslin_fit_nearest(spec, &nearest, &desk->problem)))
        return false;
    put_fit(put_object(answer, "nearest"), desk, &nearest);
    return true;
}

/* One range of sizes that was tried. */
static void put_range(json_t *tried, const struct desk *desk, const char *name, const muslin_len *range)
{
    json_t *put = put_object(tried, name);
    put_length(put, desk, "least", range[0]);
    put_length(put, desk, "most", range[1]);
    put_length(put, desk, "step", range[2]);
}

static void put_tried(json_t *answer, const struct desk *desk, const struct muslin_fit_spec *spec)
{
    const muslin_len block[] = { spec->block_least, spec->block_most, spec->block_step };
    const muslin_len sash[] = { spec->sash_least, spec->sash_most, spec->sash_step };
    const muslin_len border[] = { spec->border_least, spec->border_most, spec->border_step };
    json_t *tried = put_object(answer, "tried");
    put_range(tried, desk, "finished_block", block);
    if ((spec->flags & (MUSLIN_FIT_ALLOW_SASHED | MUSLIN_FIT_ALLOW_FRAMED)) != 0)
        put_range(tried, desk, "finished_sash", sash);
    put_range(tried, desk, "finished_border", border);
    put_count(tried, "columns_least", spec->columns_least);
    put_count(tried, "columns_most", spec->columns_most);
    put_count(tried, "rows_least", spec->rows_least);
    put_count(tried, "rows_most", spec->rows_most);
}

/* "straight", "sashed or on-point": the settings asked for. */
static void put_asked(json_t *answer, uint32_t flags)
{
    struct word asked[sizeof allow_words / sizeof allow_words[0]];
    size_t count = 0;
    char text[100];
    for (const struct word *word = allow_words; word->word != NULL; word++)
        if ((flags & (uint32_t)word->value) != 0)
            asked[count++] = *word;
    asked[count] = (struct word){ NULL, 0 };
    list_words(asked, text, sizeof text);
    put_text(answer, "settings_asked", text);
}

/* Where several settings were asked for: those of which none comes out at the size, and the nearest of each. */
static bool put_missing(json_t *answer, struct desk *desk, const struct muslin_fit_spec *spec)
{
    json_t *list = put_list(answer, "settings_without_a_fit");
    for (const struct word *word = allow_words; word->word != NULL; word++) {
        struct muslin_fit_spec one = *spec;
        struct muslin_fit nearest = { .size = sizeof nearest };
        size_t count = 0;
        one.flags = (uint32_t)word->value;
        one.best = 1;
        if ((spec->flags & one.flags) == 0)
            continue;
        if (!worked(desk, muslin_fit_settings(&one, NULL, 0, 0, &count, &desk->problem)))
            return false;
        if (count > 0)
            continue;
        json_t *missing = append_object(list);
        put_text(missing, "setting", word->word);
        if (muslin_fit_nearest(&one, &nearest, NULL) == MUSLIN_OK)
            put_fit(put_object(missing, "nearest"), desk, &nearest);
    }
    return true;
}

static json_t *answer_fit(const void *request, struct desk *desk)
{
    const struct fit_request *wanted = request;
    struct muslin_fit_spec spec;
    if (!fit_wanted(desk, wanted, &spec))
        return NULL;
    json_t *answer = json_object();
    put_length(answer, desk, "wanted_width", spec.wanted_width);
    put_length(answer, desk, "wanted_length", spec.wanted_length);
    put_length(answer, desk, "within", wanted->within);
    put_text(answer, "ranked_by", word_of(rank_words, spec.rank));
    put_asked(answer, spec.flags);
    put_tried(answer, desk, &spec);
    bool fine = put_fits(answer, desk, &spec) && put_missing(answer, desk, &spec);
    if (fine && json_array_size(json_object_get(answer, "settings")) == 0)
        fine = put_nearest(answer, desk, &spec);
    if (fine)
        return answer;
    json_decref(answer);
    return NULL;
}

#define OPTION_RANGE(name_, member, argument_, one, least, most, step) \
    { name_, KIND_LENGTH, offsetof(struct fit_request, member), argument_, 0, NULL, one }, \
    { name_ "-least", KIND_LENGTH, offsetof(struct fit_request, fit.member##_least), argument_, 0, NULL, least }, \
    { name_ "-most", KIND_LENGTH, offsetof(struct fit_request, fit.member##_most), argument_, 0, NULL, most }, \
    { name_ "-step", KIND_LENGTH, offsetof(struct fit_request, fit.member##_step), MUSLIN_ARG_GRID, 0, NULL, step }

static const struct option_row fit_options[] = {
    OPTION_HEADING("The size wanted, finished, with borders"),
    { "width", KIND_LENGTH, offsetof(struct fit_request, fit.wanted_width), MUSLIN_ARG_QUILT_WIDTH, OPTION_REQUIRED,
      NULL, "finished width" },
    { "length", KIND_LENGTH, offsetof(struct fit_request, fit.wanted_length), MUSLIN_ARG_QUILT_LENGTH,
      OPTION_REQUIRED, NULL, "finished length" },
    { "within", KIND_LENGTH, offsetof(struct fit_request, within), MUSLIN_ARG_TOLERANCE, 0, NULL,
      "how much larger or smaller each side may come out (2 in)" },
    OPTION_HEADING("Settings"),
    { "setting", KIND_TEXTS, offsetof(struct fit_request, settings), MUSLIN_ARG_SETTING_KIND, 0, NULL,
      "straight (the usual), sashed, framed (a sash round the outside too) or on-point; may be repeated" },
    { "columns-least", KIND_COUNT, offsetof(struct fit_request, fit.columns_least), MUSLIN_ARG_COLUMNS, 0, NULL,
      "blocks across, at least (1)" },
    { "columns-most", KIND_COUNT, offsetof(struct fit_request, fit.columns_most), MUSLIN_ARG_COLUMNS, 0, NULL,
      "at most (100)" },
    { "columns-are", KIND_CHOICE, offsetof(struct fit_request, fit.columns_parity), MUSLIN_ARG_PARITY, 0, parity_words,
      "any number (the usual), even or odd" },
    { "rows-least", KIND_COUNT, offsetof(struct fit_request, fit.rows_least), MUSLIN_ARG_QUILT_ROWS, 0, NULL,
      "blocks down, at least (1)" },
    { "rows-most", KIND_COUNT, offsetof(struct fit_request, fit.rows_most), MUSLIN_ARG_QUILT_ROWS, 0, NULL,
      "at most (100)" },
    { "rows-are", KIND_CHOICE, offsetof(struct fit_request, fit.rows_parity), MUSLIN_ARG_PARITY, 0, parity_words,
      "any number (the usual), even or odd" },
    OPTION_HEADING("Finished sizes to try: one, or from a least to a most in steps"),
    OPTION_RANGE("block", block, MUSLIN_ARG_BLOCK_WIDTH, "side of the block", "from (6 in)", "to (14 in)",
                 "in steps of (1/2 in)"),
    OPTION_RANGE("sash", sash, MUSLIN_ARG_SASH_WIDTH, "width of the sash", "from (1 in)", "to (3 in)",
                 "in steps of (1/2 in)"),
    OPTION_RANGE("border", border, MUSLIN_ARG_BORDER_WIDTH, "width of all borders on one side (none)", "from (none)",
                 "to (none)", "in steps of (1 in)"),
    OPTION_HEADING("The list"),
    { "rank", KIND_CHOICE, offsetof(struct fit_request, fit.rank), MUSLIN_ARG_RANK, 0, rank_words,
      "what comes first: nearest (the usual), fewest-blocks or largest-block" },
    { "list", KIND_COUNT, offsetof(struct fit_request, fit.best), MUSLIN_ARG_BEST, 0, NULL,
      "list so many (20); 0 lists all" },
    { "work", KIND_COUNT, offsetof(struct fit_request, fit.work_limit), MUSLIN_ARG_WORK_LIMIT, 0, NULL,
      "give up beyond so many combinations (1000000)" },
    OPTION_END
};

const struct command fit_command = {
    .name = "fit",
    .about = "settings of blocks that come out at a wanted size",
    .operands = "",
    .examples = "  muslin fit --width 60 --length 72 --within 0\n"
                "  muslin fit --width 84 --length 92 --setting sashed --setting on-point \\\n"
                "      --block-least 9 --block-most 12 --border-most 6 --rank fewest-blocks",
    .options = fit_options,
    .request_size = sizeof(struct fit_request),
    .start = start_fit,
    .answer = answer_fit,
    .show = show_fit
};

/* ---- a pattern resized ------------------------------------------------------------------------------------------ */

struct rescale_request {
    struct lengths sizes;
    struct muslin_fit_rescale_spec rescale;
    int32_t cut;
};

static void start_rescale(void *request)
{
    struct rescale_request *wanted = request;
    wanted->rescale = (struct muslin_fit_rescale_spec)MUSLIN_FIT_RESCALE_SPEC_INIT;
}

/* The finished sizes, from cut ones where these were given. */
static bool read_sizes(struct desk *desk, const struct rescale_request *wanted, struct muslin_fit_rescale_row *rows)
{
    struct muslin_seam_spec seam = MUSLIN_SEAM_SPEC_INIT;
    seam.allowance = wanted->rescale.allowance;
    seam.take_up = wanted->rescale.take_up;
    for (size_t i = 0; i < wanted->sizes.count; i++) {
        rows[i] = (struct muslin_fit_rescale_row){ .size = sizeof rows[i], .finished = wanted->sizes.values[i] };
        if (wanted->cut && !worked(desk, muslin_seam_finished_from_cut(wanted->sizes.values[i], &seam,
                                                                       &rows[i].finished, &desk->problem)))
            return false;
    }
    return true;
}

static void put_size(json_t *answer, const struct desk *desk, const struct muslin_fit_rescale_row *row)
{
    put_length(answer, desk, "finished", row->finished);
    put_length(answer, desk, "new_finished", row->new_finished);
    put_length(answer, desk, "new_cut", row->new_cut);
    put_truth(answer, "on_the_marks", row->on_grid == 1);
    put_length(answer, desk, "cut_on_mark_below", row->cut_below);
    put_length(answer, desk, "cut_on_nearest_mark", row->cut_nearest);
    put_length(answer, desk, "cut_on_mark_above", row->cut_above);
}

static void put_scale(json_t *answer, const struct desk *desk, const struct muslin_fit_rescaled *rescaled)
{
    put_length(answer, desk, "unit_of_all_sizes", rescaled->unit);
    if (rescaled->unit_below != 0)
        put_length(answer, desk, "unit_on_marks_below", rescaled->unit_below);
    if (rescaled->unit_above != 0)
        put_length(answer, desk, "unit_on_marks_above", rescaled->unit_above);
    if (rescaled->numerator == 0)
        return;
    json_t *scale = put_object(answer, "nearest_scale_on_marks");
    put_count(scale, "times", rescaled->numerator);
    put_count(scale, "over", rescaled->denominator);
}

static json_t *answer_rescale(const void *request, struct desk *desk)
{
    const struct rescale_request *wanted = request;
    struct muslin_fit_rescale_row rows[LIST_MAX];
    struct muslin_fit_rescaled rescaled = { .size = sizeof rescaled };
    if (!read_sizes(desk, wanted, rows) ||
        !worked(desk, muslin_fit_rescale(&wanted->rescale, rows, sizeof rows[0], wanted->sizes.count, &rescaled,
                                     &desk->problem)))
        return NULL;
    json_t *answer = json_object();
    put_count(answer, "times", wanted->rescale.numerator);
    put_count(answer, "over", wanted->rescale.denominator);
    put_length(answer, desk, "marks", wanted->rescale.grid);
    put_length(answer, desk, "seam_allowance", wanted->rescale.allowance);
    json_t *list = put_list(answer, "sizes");
    for (size_t i = 0; i < wanted->sizes.count; i++)
        put_size(append_object(list), desk, &rows[i]);
    put_count(answer, "sizes_off_the_marks", rescaled.off_grid);
    put_scale(answer, desk, &rescaled);
    put_warnings(answer, rescaled.warnings);
    return answer;
}

static const struct option_row rescale_options[] = {
    { "size", KIND_LENGTHS, offsetof(struct rescale_request, sizes), MUSLIN_ARG_FINISHED,
      OPTION_REQUIRED | OPTION_OPERAND, NULL, "finished sizes of the pattern as it is; may be repeated" },
    { "cut", KIND_SWITCH, offsetof(struct rescale_request, cut), MUSLIN_ARG_CUT, 0, NULL,
      "the sizes given are cut sizes: take their seams off first" },
    { "times", KIND_COUNT, offsetof(struct rescale_request, rescale.numerator), MUSLIN_ARG_RATIO, 0, NULL,
      "make the pattern this many times as large (1)" },
    { "over", KIND_COUNT, offsetof(struct rescale_request, rescale.denominator), MUSLIN_ARG_DENOMINATOR, 0, NULL,
      "... divided by this (1); 3 over 4 is three quarters" },
    { "marks", KIND_LENGTH, offsetof(struct rescale_request, rescale.grid), MUSLIN_ARG_GRID, 0, NULL,
      "distance of the ruler's marks that cut sizes shall lie on (1/8 in)" },
    OPTION_SEAM(rescale_request, rescale.allowance, rescale.take_up),
    OPTION_END
};

const struct command rescale_command = {
    .name = "rescale",
    .about = "all sizes of a pattern made larger or smaller, kept on the ruler",
    .operands = "FINISHED...",
    .examples = "  muslin rescale 2 4 6 --times 2 --over 3\n"
                "  muslin rescale \"2 1/2\" \"4 1/2\" --cut --times 3 --over 2 --marks 1/4",
    .options = rescale_options,
    .request_size = sizeof(struct rescale_request),
    .start = start_rescale,
    .answer = answer_rescale,
    .lead = "The pattern at {times} / {over} of its size; the seams stay as wide as they are.",
    .show = show_rescale
};
