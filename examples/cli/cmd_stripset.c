/* cmd_stripset.c - yield, sets, bundle, prints: what strip sets give and need.
 *
 * SPDX-License-Identifier: MIT */
#include <string.h>

#include "answer.h"
#include "cmd.h"
#include "sheet.h"

/* ---- the yield of one set --------------------------------------------------------------------------------------- */

struct yield_request {
    struct lengths usable;
    int32_t one_end;
    struct muslin_yield_spec yield;
};

static void start_yield(void *request)
{
    struct yield_request *wanted = request;
    wanted->yield = (struct muslin_yield_spec)MUSLIN_YIELD_SPEC_INIT;
}

static json_t *answer_yield(const void *request, struct desk *desk)
{
    const struct yield_request *wanted = request;
    struct muslin_yield_spec spec = wanted->yield;
    const struct lengths *usable = &wanted->usable;
    uint32_t warnings = 0;
    spec.flags = wanted->one_end ? MUSLIN_YIELD_FROM_ONE_END : 0;
    if (usable->count > 0 && !worked(desk, muslin_stripset_shortest(usable->values, usable->count, &spec.strip_length,
                                                                    NULL, &warnings, &desk->problem)))
        return NULL;
    struct muslin_yield yield = { .size = sizeof yield };
    if (!worked(desk, muslin_stripset_yield(&spec, &yield, &desk->problem)))
        return NULL;
    json_t *answer = json_object();
    put_length(answer, desk, "strip_length", spec.strip_length);
    put_length(answer, desk, "segment_cut", spec.segment_cut);
    put_truth(answer, "cut_from_one_end", wanted->one_end == 1);
    put_count(answer, "segments", yield.segments);
    put_count(answer, "cut_from_each_end", yield.per_end);
    put_count(answer, "squared_again", yield.resquarings);
    put_least(answer, desk, "shortest_strip_that_gives_as_many", yield.least_length);
    put_slack(answer, desk, "strip_may_be_shorter_by", yield.shorter_by);
    put_least(answer, desk, "longer_for_more_by", yield.longer_for_more);
    put_slack(answer, desk, "left_over", yield.left_over);
    put_warnings(answer, warnings | (uint32_t)yield.warnings);
    return answer;
}

static const struct option_row yield_options[] = {
    { "segment", KIND_LENGTH, offsetof(struct yield_request, yield.segment_cut), MUSLIN_ARG_SEGMENT_CUT,
      OPTION_REQUIRED, NULL, "cut size of a segment, along the strips" },
    { "usable", KIND_LENGTHS, offsetof(struct yield_request, usable), MUSLIN_ARG_STRIP_LENGTH, 0, NULL,
      "usable length of the strips (40 in); repeat it for strips of different lengths" },
    { "trim", KIND_LENGTH, offsetof(struct yield_request, yield.end_trim), MUSLIN_ARG_END_TRIM, 0, NULL,
      "taken off each end to square it (none)" },
    { "fold-clear", KIND_LENGTH, offsetof(struct yield_request, yield.fold_clear), MUSLIN_ARG_FOLD_CLEAR, 0, NULL,
      "kept free of cuts in the middle, where the fold was (none)" },
    { "resquare", KIND_LENGTH, offsetof(struct yield_request, yield.resquare_loss), MUSLIN_ARG_RESQUARE_LOSS, 0, NULL,
      "lost each time the cut edge is squared again (none)" },
    { "resquare-every", KIND_COUNT, offsetof(struct yield_request, yield.resquare_every), MUSLIN_ARG_RESQUARE_EVERY, 0,
      NULL, "cuts between two squarings (never)" },
    { "one-end", KIND_SWITCH, offsetof(struct yield_request, one_end), MUSLIN_ARG_NONE, 0, NULL,
      "cut straight through from one end" },
    OPTION_END
};

const struct command yield_command = {
    .name = "yield",
    .about = "segments that one strip set gives, and how near the edge that is",
    .operands = "",
    .examples = "  muslin yield --segment \"6 1/2\" --usable 40 --trim 1/2\n"
                "  muslin yield --segment \"6 1/2\" --usable 42 --usable 40.5 --fold-clear 1",
    .options = yield_options,
    .request_size = sizeof(struct yield_request),
    .start = start_yield,
    .answer = answer_yield,
    .lead = "A set {strip_length} long gives {segments:segment} cut {segment_cut}.",
    .show = show_yield
};

/* ---- from wishes to strips -------------------------------------------------------------------------------------- */

struct sets_request {
    struct muslin_need_spec need;
};

static void start_sets(void *request)
{
    struct sets_request *wanted = request;
    wanted->need = (struct muslin_need_spec)MUSLIN_NEED_SPEC_INIT;
}

static json_t *answer_sets(const void *request, struct desk *desk)
{
    const struct sets_request *wanted = request;
    struct muslin_need need = { .size = sizeof need };
    if (!worked(desk, muslin_stripset_need(&wanted->need, &need, &desk->problem)))
        return NULL;
    json_t *answer = json_object();
    put_count(answer, "segments_wanted", wanted->need.segments);
    put_count(answer, "sets", need.sets);
    put_count(answer, "strips", need.strips);
    put_count(answer, "segments_to_spare", need.spare_segments);
    if (given(desk, "bundle")) {
        put_count(answer, "bundles", need.bundles);
        put_count(answer, "strips_to_spare", need.spare_strips);
    }
    if (given(desk, "strip"))
        put_cloth(answer, desk, "cloth_for_the_strips", need.cloth_length);
    return answer;
}

static const struct option_row sets_options[] = {
    { "segments", KIND_COUNT, offsetof(struct sets_request, need.segments), MUSLIN_ARG_SEGMENTS, OPTION_REQUIRED, NULL,
      "segments wanted" },
    { "per-set", KIND_COUNT, offsetof(struct sets_request, need.segments_per_set), MUSLIN_ARG_SEGMENTS_PER_SET,
      OPTION_REQUIRED, NULL, "segments that one set gives; see muslin yield" },
    { "set", KIND_COUNT, offsetof(struct sets_request, need.strips_per_set), MUSLIN_ARG_STRIPS_PER_SET, OPTION_REQUIRED,
      NULL, "strips in a set" },
    { "bundle", KIND_COUNT, offsetof(struct sets_request, need.strips_per_bundle), MUSLIN_ARG_STRIPS_PER_BUNDLE, 0,
      NULL, "strips in a bundle, to know how many bundles" },
    { "strip", KIND_LENGTH, offsetof(struct sets_request, need.strip_cut), MUSLIN_ARG_STRIP_CUT, 0, NULL,
      "cut width of a strip, to know how much cloth instead" },
    OPTION_END
};

const struct command sets_command = {
    .name = "sets",
    .about = "from segments wanted to sets, strips, bundles or cloth",
    .operands = "",
    .examples = "  muslin sets --segments 42 --per-set 3 --set 5 --bundle 40\n"
                "  muslin sets --segments 42 --per-set 3 --set 5 --strip \"2 1/2\"",
    .options = sets_options,
    .request_size = sizeof(struct sets_request),
    .start = start_sets,
    .answer = answer_sets,
    .lead = "{segments_wanted:segment} need {sets:set}, {strips:strip} in all."
};

/* ---- from a bundle to wishes ------------------------------------------------------------------------------------ */

struct bundle_request {
    struct muslin_harvest_spec harvest;
};

static void start_bundle(void *request)
{
    struct bundle_request *wanted = request;
    wanted->harvest = (struct muslin_harvest_spec)MUSLIN_HARVEST_SPEC_INIT;
}

static json_t *answer_bundle(const void *request, struct desk *desk)
{
    const struct bundle_request *wanted = request;
    struct muslin_harvest harvest = { .size = sizeof harvest };
    if (!worked(desk, muslin_stripset_harvest(&wanted->harvest, &harvest, &desk->problem)))
        return NULL;
    json_t *answer = json_object();
    put_count(answer, "strips_in_hand", wanted->harvest.strips);
    put_count(answer, "sets", harvest.sets);
    put_count(answer, "segments", harvest.segments);
    put_count(answer, "blocks", harvest.blocks);
    put_count(answer, "tops", harvest.tops);
    put_count(answer, "sets_for_these_tops", harvest.sets_used);
    put_count(answer, "strips_used", harvest.strips_used);
    put_count(answer, "strips_left", harvest.strips_left);
    put_count(answer, "segments_left_of_the_sets_used", harvest.segments_left);
    put_count(answer, "blocks_beyond_these_tops", harvest.blocks_left);
    put_count(answer, "strips_missing_for_one_more_top", harvest.strips_for_one_more);
    return answer;
}

static const struct option_row bundle_options[] = {
    { "strips", KIND_COUNT, offsetof(struct bundle_request, harvest.strips), MUSLIN_ARG_STRIPS,
      OPTION_REQUIRED | OPTION_OPERAND, NULL, "strips in hand" },
    { "set", KIND_COUNT, offsetof(struct bundle_request, harvest.strips_per_set), MUSLIN_ARG_STRIPS_PER_SET,
      OPTION_REQUIRED, NULL, "strips in a set" },
    { "per-set", KIND_COUNT, offsetof(struct bundle_request, harvest.segments_per_set), MUSLIN_ARG_SEGMENTS_PER_SET,
      OPTION_REQUIRED, NULL, "segments that one set gives; see muslin yield" },
    { "block", KIND_COUNT, offsetof(struct bundle_request, harvest.segments_per_block), MUSLIN_ARG_SEGMENTS_PER_BLOCK,
      0, NULL, "segments in a block (1)" },
    { "blocks", KIND_COUNT, offsetof(struct bundle_request, harvest.blocks_per_top), MUSLIN_ARG_BLOCKS, 0, NULL,
      "blocks in a top (1)" },
    OPTION_END
};

const struct command bundle_command = {
    .name = "bundle",
    .about = "from strips in hand to sets, segments, blocks and tops",
    .operands = "STRIPS",
    .examples = "  muslin bundle 42 --set 6 --per-set 6 --block 2 --blocks 9",
    .options = bundle_options,
    .request_size = sizeof(struct bundle_request),
    .start = start_bundle,
    .answer = answer_bundle,
    .lead = "{strips_in_hand:strip} make {tops:top}, with {strips_left:strip} left."
};

/* ---- sets of several prints ------------------------------------------------------------------------------------- */

struct prints_request {
    struct texts prints;
    int64_t sets;
};

static void start_prints(void *request)
{
    (void)request;
}

/* "12:2": twelve strips in hand, two in each set. */
static bool read_print(struct desk *desk, const char *text, struct muslin_stripset_print *row)
{
    long long in_hand = 0;
    long long per_set = 0;
    int used = 0;
    if (strspn(text, "0123456789:") == strlen(text) && strlen(text) < 24 &&
        sscanf(text, "%lld:%lld%n", &in_hand, &per_set, &used) == 2 && text[used] == '\0') {
        *row = (struct muslin_stripset_print){ .size = sizeof *row, .in_hand = in_hand, .per_set = per_set };
        return true;
    }
    failure_say(desk->failure, "print", "Write strips in hand and strips in each set with a colon: \"12:2\".");
    return false;
}

static json_t *answer_prints(const void *request, struct desk *desk)
{
    const struct prints_request *wanted = request;
    struct muslin_stripset_print rows[TEXTS_MAX];
    size_t count = wanted->prints.count;
    for (size_t i = 0; i < count; i++)
        if (!read_print(desk, wanted->prints.texts[i], &rows[i]))
            return NULL;
    int64_t sets = 0;
    size_t scarcest = 0;
    if (!worked(desk, muslin_stripset_prints(rows, sizeof rows[0], count, wanted->sets, &sets, &scarcest,
                                             &desk->problem)))
        return NULL;
    json_t *answer = json_object();
    put_count(answer, "sets", sets);
    put_text(answer, "sets_are", wanted->sets > 0 ? "wanted" : "possible");
    put_count(answer, "scarcest_print", (int64_t)scarcest + 1);
    json_t *prints = put_list(answer, "prints");
    for (size_t i = 0; i < count; i++) {
        json_t *print = append_object(prints);
        put_count(print, "in_hand", rows[i].in_hand);
        put_count(print, "in_each_set", rows[i].per_set);
        put_count(print, rows[i].left_over < 0 ? "missing" : "left", rows[i].left_over < 0 ? -rows[i].left_over : rows[i].left_over);
    }
    return answer;
}

static const struct option_row prints_options[] = {
    { "print", KIND_TEXTS, offsetof(struct prints_request, prints), MUSLIN_ARG_PER_SET,
      OPTION_REQUIRED | OPTION_OPERAND, NULL, "strips in hand and in each set, such as 12:2; once for each print" },
    { "sets", KIND_COUNT, offsetof(struct prints_request, sets), MUSLIN_ARG_SETS, 0, NULL,
      "sets wanted, to see what is missing (as many as there are strips for)" },
    OPTION_END
};

const struct command prints_command = {
    .name = "prints",
    .about = "sets that hold a given number of strips of each print",
    .operands = "IN-HAND:IN-EACH-SET...",
    .examples = "  muslin prints 12:2 9:1 20:3\n"
                "  muslin prints 12:2 9:1 --sets 8",
    .options = prints_options,
    .request_size = sizeof(struct prints_request),
    .start = start_prints,
    .answer = answer_prints,
    .lead = "Sets {sets_are}: {sets}. Print {scarcest_print} is the scarcest."
};
