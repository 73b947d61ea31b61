/* cmd_shrinkage.c - shrinkage, prewash: what washing and quilting do to a size, and the size to make.
 *
 * SPDX-License-Identifier: MIT */
#include <stdio.h>

#include "answer.h"
#include "cmd.h"
#include "sheet.h"
#include "words.h"

/* ---- shrinkage -------------------------------------------------------------------------------------------------- */

struct shrinkage_request {
    struct muslin_wash_spec sample;
    struct muslin_shrinkage_spec quilt;
    int32_t quilting; /* the same share both ways */
    int32_t washing;
    int32_t fabric;
    int32_t batting;
    int32_t governs;
    int32_t made;
    struct muslin_seam_spec seam;
    struct muslin_rounding_spec rounding;
};

/* Width or length: the options that belong to it. */
struct side {
    const char *name;
    const char *before;
    const char *after;
};
static const struct side sides[] = { { "width", "before-width", "after-width" },
                                     { "length", "before-length", "after-length" } };
enum { SIDES = 2 };

static const struct word source_words[] = {
    { "the batting", MUSLIN_GOVERNING_SOURCE_BATTING }, { "the fabric", MUSLIN_GOVERNING_SOURCE_FABRIC },
    { "both alike", MUSLIN_GOVERNING_SOURCE_BOTH }, { NULL, 0 }
};

static void start_shrinkage(void *request)
{
    struct shrinkage_request *wanted = request;
    wanted->sample = (struct muslin_wash_spec)MUSLIN_WASH_SPEC_INIT;
    wanted->quilt = (struct muslin_shrinkage_spec)MUSLIN_SHRINKAGE_SPEC_INIT;
    wanted->governs = MUSLIN_GOVERNING_RULE_BATTING;
    wanted->seam = (struct muslin_seam_spec)MUSLIN_SEAM_SPEC_INIT;
    wanted->rounding = (struct muslin_rounding_spec)MUSLIN_ROUNDING_SPEC_INIT;
    wanted->rounding.grid = MUSLIN_TICKS_PER_INCH / 8;
    wanted->rounding.direction = MUSLIN_DIRECTION_UP;
}

static bool is_measured(const struct desk *desk)
{
    return given(desk, "before-width") || given(desk, "before-length");
}

static bool wants_size(const struct desk *desk)
{
    return given(desk, "width") || given(desk, "length");
}

static bool has_shares(const struct desk *desk)
{
    static const char *const names[] = { "quilting", "quilting-across", "quilting-along", "washing", "washing-across",
                                         "washing-along", "fabric", "batting" };
    for (size_t i = 0; i < sizeof names / sizeof *names; i++)
        if (given(desk, names[i]))
            return true;
    return false;
}

/* Both measures of a side or none; and where a size is wanted of a sample, the measures of that side. */
static bool side_is_whole(struct desk *desk, const struct side *side)
{
    bool before = given(desk, side->before);
    if (before != given(desk, side->after)) {
        failure_say(desk->failure, before ? side->after : side->before,
                    "A measure needs its other half: give both --%s and --%s.", side->before, side->after);
        return false;
    }
    if (!is_measured(desk) || before || !given(desk, side->name))
        return true;
    failure_say(desk->failure, side->before, "For this %s give the sample's %s too, before and after.", side->name,
                side->name);
    return false;
}

/* A sample or shares, and a size where there is no sample. */
static bool can_be_answered(struct desk *desk, const struct shrinkage_request *wanted)
{
    if (!side_is_whole(desk, &sides[0]) || !side_is_whole(desk, &sides[1]))
        return false;
    if (!is_measured(desk) && !wants_size(desk)) {
        failure_say(desk->failure, "width", "Give the size wanted, or what was measured before and after, or both.");
        return false;
    }
    if (is_measured(desk) && (has_shares(desk) || wanted->made != 0)) {
        failure_say(desk->failure, "before-width", "A measured sample says it all: leave out the shares and --made.");
        return false;
    }
    if (!is_measured(desk) && !has_shares(desk)) {
        failure_say(desk->failure, "washing", "Give the share lost to --quilting or --washing, or a measured sample.");
        return false;
    }
    if (given(desk, "fabric") != given(desk, "batting") || (given(desk, "fabric") && given(desk, "washing"))) {
        failure_say(desk->failure, given(desk, "fabric") ? "batting" : "fabric",
                    "Give both --fabric and --batting, and then no --washing.");
        return false;
    }
    return true;
}

/* "shrank about 5.6 %", "grew 1 %": to the nearest tenth of a per cent. The change itself keeps the sign that ISO 5077
 * gives it. */
static void put_in_words(json_t *answer, const struct desk *desk, const char *name, int32_t change, const char *shrank,
                         const char *grew)
{
    const int32_t tenth = MUSLIN_PPM / 1000;
    int32_t size = change < 0 ? -change : change;
    int32_t tenths = (size + tenth / 2) / tenth;
    char decimal[8] = "";
    char words[80];
    if (tenths % 10 != 0)
        snprintf(decimal, sizeof decimal, "%c%d", desk->common.decimal_comma ? ',' : '.', (int)(tenths % 10));
    snprintf(words, sizeof words, "%s%s %d%s %%", change < 0 ? shrank : grew, size % tenth == 0 ? "" : " about",
             (int)(tenths / 10), decimal);
    put_text(answer, name, change == 0 ? "stays as it is" : words);
}

/* A size to make, finished and unfinished. */
static bool put_make(json_t *side, struct desk *desk, const struct shrinkage_request *wanted, muslin_len make)
{
    muslin_len unfinished = 0;
    if (!worked(desk, muslin_seam_cut_from_finished(make, &wanted->seam, &unfinished, &desk->problem)))
        return false;
    put_length(side, desk, "make_finished", make);
    put_length(side, desk, "make_unfinished", unfinished);
    put_length(side, desk, "seam_allowance", wanted->seam.allowance);
    return true;
}

/* ---- what was measured */

static bool put_measured(json_t *answer, struct desk *desk, const struct muslin_wash_spec *sample)
{
    const muslin_len before[] = { sample->before_width, sample->before_length };
    const muslin_len after[] = { sample->after_width, sample->after_length };
    json_t *list = put_list(answer, "measured");
    for (size_t i = 0; i < SIDES; i++) {
        int32_t change = 0;
        if (!given(desk, sides[i].before))
            continue;
        if (!worked(desk, muslin_shrinkage_change(before[i], after[i], &change, &desk->problem)))
            return false;
        json_t *side = append_object(list);
        put_text(side, "side", sides[i].name);
        put_length(side, desk, "before", before[i]);
        put_length(side, desk, "after", after[i]);
        put_share(side, desk, "change", change);
        put_in_words(side, desk, "in_words", change, "shrank", "grew");
    }
    if (json_array_size(list) < SIDES)
        return true;
    struct muslin_wash_change change = { .size = sizeof change };
    if (!worked(desk, muslin_shrinkage_measure(sample, &change, &desk->problem)))
        return false;
    put_share(answer, desk, "change_of_the_area", change.change_area);
    put_in_words(answer, desk, "area_in_words", change.change_area, "shrank", "grew");
    return true;
}

static bool put_sample(json_t *answer, struct desk *desk, const struct shrinkage_request *wanted)
{
    const struct muslin_wash_spec *sample = &wanted->sample;
    const muslin_len before[] = { sample->before_width, sample->before_length };
    const muslin_len after[] = { sample->after_width, sample->after_length };
    const muslin_len targets[] = { wanted->quilt.width, wanted->quilt.length };
    json_t *list = put_list(answer, "make_by_the_sample");
    for (size_t i = 0; i < SIDES; i++) {
        struct muslin_rounded make = { .size = sizeof make };
        if (!given(desk, sides[i].name))
            continue;
        if (!worked(desk, muslin_shrinkage_from_sample(before[i], after[i], targets[i], &wanted->rounding, &make,
                                                       &desk->problem)))
            return false;
        json_t *side = append_object(list);
        put_text(side, "side", sides[i].name);
        put_length(side, desk, "wanted_finished", targets[i]);
        if (!put_make(side, desk, wanted, make.value))
            return false;
        put_rounding(side, desk, &make);
    }
    return true;
}

/* ---- shares */

/* The shares of both ways, and of fabric and batting the one that governs. */
static bool settle_shares(json_t *answer, struct desk *desk, const struct shrinkage_request *wanted,
                          struct muslin_shrinkage_spec *quilt)
{
    struct muslin_governing governing = { .size = sizeof governing, .share = wanted->washing };
    if (given(desk, "fabric")) {
        if (!worked(desk, muslin_shrinkage_governs(wanted->fabric, wanted->batting, wanted->governs, &governing,
                                                   &desk->problem)))
            return false;
        json_t *told = put_object(answer, "governing");
        put_share(told, desk, "share", governing.share);
        put_text(told, "source", word_of(source_words, governing.source));
        put_truth(told, "larger", governing.share == (wanted->fabric > wanted->batting ? wanted->fabric
                                                                                       : wanted->batting));
    }
    *quilt = wanted->quilt;
    if (!given(desk, "quilting-across"))
        quilt->quilting_across = wanted->quilting;
    if (!given(desk, "quilting-along"))
        quilt->quilting_along = wanted->quilting;
    if (!given(desk, "washing-across"))
        quilt->washing_across = governing.share;
    if (!given(desk, "washing-along"))
        quilt->washing_along = governing.share;
    return true;
}

static void put_shares(json_t *side, const struct desk *desk, int32_t quilting, int32_t washing)
{
    put_share(side, desk, "lost_to_quilting", quilting);
    put_share(side, desk, "lost_in_the_wash", washing);
}

/* Less than that nobody sees in a quilt. */
#define SEEN (MUSLIN_TICKS_PER_INCH / 64)

/* What the quilt as made measures when it is quilted, and whether the easy mark above the least lies within that. */
static void put_as_made(json_t *side, const struct desk *desk, muslin_len as_made)
{
    put_about(side, desk, "quilted_as_made", as_made);
    json_t *mark = json_object_get(json_object_get(side, "quilted_in_practice"), "ticks");
    put_truth(side, "easy_mark_holds", json_integer_value(mark) <= as_made);
}

/* What the quilt must measure before the wash, and what the size to make ends at. */
static bool put_checks(json_t *side, struct desk *desk, const struct muslin_seam_spec *seam, muslin_len quilted,
                       muslin_len washed)
{
    muslin_len raw = 0;
    if (!worked(desk, muslin_seam_cut_from_finished(quilted, seam, &raw, &desk->problem)))
        return false;
    put_least(side, desk, "must_measure_when_quilted", quilted);
    put_on_mark(side, desk, "quilted_at_least", quilted, MUSLIN_DIRECTION_UP, 64, 1);
    put_on_mark(side, desk, "quilted_in_practice", quilted, MUSLIN_DIRECTION_UP, 8, 50);
    put_on_mark(side, desk, "quilted_raw_at_least", raw, MUSLIN_DIRECTION_UP, 64, 1);
    put_about(side, desk, "then_ends_at", washed);
    return true;
}

/* What the size to make measures when it is quilted. */
static bool find_as_made(struct desk *desk, const struct muslin_shrinkage_spec *quilt,
                         const struct muslin_size_to_make *made, struct muslin_washed_size *as_made)
{
    const struct muslin_rounding_spec to_tick = MUSLIN_ROUNDING_SPEC_INIT;
    struct muslin_shrinkage_spec spec = *quilt;
    spec.width = made->make_width;
    spec.length = made->make_length;
    return worked(desk, muslin_shrinkage_becomes(&spec, &to_tick, as_made, &desk->problem));
}

static bool put_size_to_make(json_t *answer, struct desk *desk, const struct shrinkage_request *wanted,
                             const struct muslin_shrinkage_spec *quilt)
{
    struct muslin_size_to_make made = { .size = sizeof made };
    struct muslin_washed_size as_made = { .size = sizeof as_made };
    if (!worked(desk, muslin_shrinkage_size_to_make(quilt, &wanted->rounding, &made, &desk->problem)) ||
        !find_as_made(desk, quilt, &made, &as_made))
        return false;
    json_t *list = put_list(answer, "make");
    for (size_t i = 0; i < SIDES; i++) {
        if (!given(desk, sides[i].name))
            continue;
        json_t *side = append_object(list);
        put_text(side, "side", sides[i].name);
        put_length(side, desk, "wanted_finished", i == 0 ? quilt->width : quilt->length);
        put_shares(side, desk, i == 0 ? quilt->quilting_across : quilt->quilting_along,
                   i == 0 ? quilt->washing_across : quilt->washing_along);
        if (!put_make(side, desk, wanted, i == 0 ? made.make_width : made.make_length) ||
            !put_checks(side, desk, &wanted->seam, i == 0 ? made.quilted_width : made.quilted_length,
                        i == 0 ? made.washed_width : made.washed_length))
            return false;
        put_as_made(side, desk, i == 0 ? as_made.quilted_width : as_made.quilted_length);
        put_about(side, desk, "multiplying_would_say", i == 0 ? made.multiplied_width : made.multiplied_length);
        put_about(side, desk, "and_end_short_by", i == 0 ? made.short_width : made.short_length);
        put_truth(side, "short_by_what_is_seen", (i == 0 ? made.short_width : made.short_length) >= SEEN);
    }
    return true;
}

static bool put_becomes(json_t *answer, struct desk *desk, const struct muslin_shrinkage_spec *quilt,
                        struct muslin_rounding_spec rounding)
{
    struct muslin_washed_size washed = { .size = sizeof washed };
    if (!given(desk, "to"))
        rounding.grid = 1;
    if (!given(desk, "round"))
        rounding.direction = MUSLIN_DIRECTION_NEAREST;
    if (!worked(desk, muslin_shrinkage_becomes(quilt, &rounding, &washed, &desk->problem)))
        return false;
    json_t *list = put_list(answer, "becomes");
    for (size_t i = 0; i < SIDES; i++) {
        if (!given(desk, sides[i].name))
            continue;
        json_t *side = append_object(list);
        put_text(side, "side", sides[i].name);
        put_length(side, desk, "made_finished", i == 0 ? quilt->width : quilt->length);
        put_shares(side, desk, i == 0 ? quilt->quilting_across : quilt->quilting_along,
                   i == 0 ? quilt->washing_across : quilt->washing_along);
        put_about(side, desk, "quilted", i == 0 ? washed.quilted_width : washed.quilted_length);
        put_about(side, desk, "washed", i == 0 ? washed.washed_width : washed.washed_length);
        put_share(side, desk, "change", i == 0 ? washed.change_across : washed.change_along);
        put_in_words(side, desk, "in_words", i == 0 ? washed.change_across : washed.change_along, "shrinks by",
                     "grows by");
    }
    return true;
}

static bool put_by_shares(json_t *answer, struct desk *desk, const struct shrinkage_request *wanted)
{
    struct muslin_shrinkage_spec quilt;
    if (!settle_shares(answer, desk, wanted, &quilt))
        return false;
    return wanted->made != 0 ? put_becomes(answer, desk, &quilt, wanted->rounding)
                             : put_size_to_make(answer, desk, wanted, &quilt);
}

static bool put_shrinkage(json_t *answer, struct desk *desk, const struct shrinkage_request *wanted)
{
    if (!is_measured(desk))
        return put_by_shares(answer, desk, wanted);
    return put_measured(answer, desk, &wanted->sample) && (!wants_size(desk) || put_sample(answer, desk, wanted));
}

static json_t *answer_shrinkage(const void *request, struct desk *desk)
{
    const struct shrinkage_request *wanted = request;
    if (!can_be_answered(desk, wanted))
        return NULL;
    json_t *answer = json_object();
    if (put_shrinkage(answer, desk, wanted))
        return answer;
    json_decref(answer);
    return NULL;
}

static const struct option_row shrinkage_options[] = {
    OPTION_HEADING("The quilt"),
    { "width", KIND_LENGTH, offsetof(struct shrinkage_request, quilt.width), MUSLIN_ARG_QUILT_WIDTH, 0, NULL,
      "finished width wanted in the end, quilted and washed" },
    { "length", KIND_LENGTH, offsetof(struct shrinkage_request, quilt.length), MUSLIN_ARG_QUILT_LENGTH, 0, NULL,
      "finished length wanted in the end" },
    { "made", KIND_SWITCH, offsetof(struct shrinkage_request, made), MUSLIN_ARG_NONE, 0, NULL,
      "width and length are what is made: say what they become" },
    OPTION_HEADING("A sample, made, quilted and washed as the quilt will be"),
    { "before-width", KIND_LENGTH, offsetof(struct shrinkage_request, sample.before_width), MUSLIN_ARG_MEASURED, 0,
      NULL, "its width before" },
    { "after-width", KIND_LENGTH, offsetof(struct shrinkage_request, sample.after_width), MUSLIN_ARG_MEASURED, 0, NULL,
      "its width after" },
    { "before-length", KIND_LENGTH, offsetof(struct shrinkage_request, sample.before_length), MUSLIN_ARG_MEASURED, 0,
      NULL, "its length before" },
    { "after-length", KIND_LENGTH, offsetof(struct shrinkage_request, sample.after_length), MUSLIN_ARG_MEASURED, 0,
      NULL, "its length after" },
    OPTION_HEADING("Shares lost, where there is no sample"),
    { "quilting", KIND_SHARE, offsetof(struct shrinkage_request, quilting), MUSLIN_ARG_QUILTING_LOSS, 0, NULL,
      "taken up by the quilting each way, such as \"2 %\" (none)" },
    { "washing", KIND_SHARE, offsetof(struct shrinkage_request, washing), MUSLIN_ARG_SHRINKAGE, 0, NULL,
      "lost in the wash each way, such as \"5 %\" (none)" },
    { "quilting-across", KIND_SHARE, offsetof(struct shrinkage_request, quilt.quilting_across),
      MUSLIN_ARG_QUILTING_LOSS, 0, NULL, "of the width alone" },
    { "quilting-along", KIND_SHARE, offsetof(struct shrinkage_request, quilt.quilting_along),
      MUSLIN_ARG_QUILTING_LOSS, 0, NULL, "of the length alone" },
    { "washing-across", KIND_SHARE, offsetof(struct shrinkage_request, quilt.washing_across), MUSLIN_ARG_SHRINKAGE, 0,
      NULL, "of the width alone" },
    { "washing-along", KIND_SHARE, offsetof(struct shrinkage_request, quilt.washing_along), MUSLIN_ARG_SHRINKAGE, 0,
      NULL, "of the length alone" },
    { "fabric", KIND_SHARE, offsetof(struct shrinkage_request, fabric), MUSLIN_ARG_SHRINKAGE, 0, NULL,
      "what the fabric loses in the wash; with --batting, instead of --washing" },
    { "batting", KIND_SHARE, offsetof(struct shrinkage_request, batting), MUSLIN_ARG_SHRINKAGE, 0, NULL,
      "what the batting loses in the wash" },
    { "governs", KIND_CHOICE, offsetof(struct shrinkage_request, governs), MUSLIN_ARG_GOVERNING_RULE, 0,
      governing_words, "which of the two the quilt follows: batting (the usual, closely quilted), fabric, larger or "
                       "smaller" },
    OPTION_HEADING("The seam round the top, for its unfinished size"),
    OPTION_SEAM(shrinkage_request, seam.allowance, seam.take_up),
    OPTION_HEADING("Rounding of the size to make: up to 1/8 in unless told otherwise"),
    OPTION_ROUNDING(shrinkage_request, rounding),
    OPTION_END
};

const struct command shrinkage_command = {
    .name = "shrinkage",
    .about = "what quilting and washing take, and the size to make",
    .operands = "",
    .examples = "  muslin shrinkage --before-width 9 --after-width \"8 1/2\" \\\n"
                "      --before-length 20 --after-length \"18 1/4\"\n"
                "  muslin shrinkage --length 90 --before-length 20 --after-length 18\n"
                "  muslin shrinkage --width 60 --length 72 --quilting \"2 %\" --washing \"5 %\"\n"
                "  muslin shrinkage --width 60 --fabric \"3 %\" --batting \"5 %\"\n"
                "  muslin shrinkage --width 64 --length 80 --made --washing \"4 %\"",
    .options = shrinkage_options,
    .request_size = sizeof(struct shrinkage_request),
    .start = start_shrinkage,
    .answer = answer_shrinkage,
    .show = show_shrinkage
};

/* ---- prewash ---------------------------------------------------------------------------------------------------- */

struct prewash_request {
    struct muslin_prewash_spec cloth;
};

static void start_prewash(void *request)
{
    struct prewash_request *wanted = request;
    wanted->cloth = (struct muslin_prewash_spec)MUSLIN_PREWASH_SPEC_INIT;
}

static json_t *answer_prewash(const void *request, struct desk *desk)
{
    const struct prewash_request *wanted = request;
    struct muslin_prewash wash = { .size = sizeof wash };
    if (!worked(desk, muslin_shrinkage_prewash(&wanted->cloth, &wash, &desk->problem)))
        return NULL;
    json_t *answer = json_object();
    put_cloth(answer, desk, "needed_after_the_wash", wanted->cloth.needed_length);
    put_cloth(answer, desk, "to_wash", wash.unshrunk_length);
    put_ample(answer, desk, "length_lost", wash.lost_length);
    put_length(answer, desk, "usable_width_before", wanted->cloth.usable_width);
    put_slack(answer, desk, "usable_width_after", wash.washed_width);
    put_shop_length(answer, desk, wash.unshrunk_length);
    put_share(answer, desk, "lost_across", wanted->cloth.across);
    put_share(answer, desk, "lost_along", wanted->cloth.along);
    return answer;
}

static const struct option_row prewash_options[] = {
    { "needed", KIND_LENGTH, offsetof(struct prewash_request, cloth.needed_length), MUSLIN_ARG_CLOTH_LENGTH,
      OPTION_REQUIRED | OPTION_OPERAND, NULL, "length of cloth that must be there after the wash" },
    { "usable", KIND_LENGTH, offsetof(struct prewash_request, cloth.usable_width), MUSLIN_ARG_USABLE_WIDTH, 0, NULL,
      "usable width of the cloth before the wash (40 in)" },
    { "across", KIND_SHARE, offsetof(struct prewash_request, cloth.across), MUSLIN_ARG_SHRINKAGE, 0, NULL,
      "what the width loses, such as \"3 %\" (none)" },
    { "along", KIND_SHARE, offsetof(struct prewash_request, cloth.along), MUSLIN_ARG_SHRINKAGE, 0, NULL,
      "what the length loses, such as \"4 %\" (none)" },
    OPTION_END
};

const struct command prewash_command = {
    .name = "prewash",
    .about = "cloth to wash so that enough is left, and how wide it then is",
    .operands = "NEEDED",
    .examples = "  muslin prewash \"4 yd\" --usable 42 --across \"3 %\" --along \"4 %\"",
    .options = prewash_options,
    .request_size = sizeof(struct prewash_request),
    .start = start_prewash,
    .answer = answer_prewash,
    .show = show_prewash
};
