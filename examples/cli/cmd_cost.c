/* cmd_cost.c - weight, cost: what a quilt weighs and what its things cost.
 *
 * SPDX-License-Identifier: MIT */
#include <stdio.h>
#include <string.h>

#include "answer.h"
#include "cmd.h"
#include "sheet.h"
#include "words.h"

/* Digits with at most so many decimals, as a whole number of the smallest part; what follows is left at *rest. False
 * when there is no such number. */
static bool read_decimal(const struct desk *desk, const char *text, int64_t decimals, int64_t *number,
                         const char **rest)
{
    char sign = desk->common.decimal_comma ? ',' : '.';
    int64_t value = 0;
    int64_t behind = -1;
    size_t digits = 0;
    for (; (*text >= '0' && *text <= '9') || (*text == sign && behind < 0); text++) {
        if (*text == sign) {
            behind = 0;
            continue;
        }
        behind += behind >= 0;
        if (behind > decimals || value > (INT64_MAX - 9) / 10)
            return false;
        value = value * 10 + (*text - '0');
        digits++;
    }
    for (int64_t i = behind < 0 ? 0 : behind; i < decimals; i++) {
        if (value > INT64_MAX / 10)
            return false;
        value *= 10;
    }
    *number = value;
    *rest = text + strspn(text, " ");
    return digits > 0;
}

/* ---- weight ----------------------------------------------------------------------------------------------------- */

struct weight_request {
    const char *top;
    const char *batting;
    const char *backing;
    const char *binding;
    struct muslin_weight_spec weight;
};

static void start_weight(void *request)
{
    struct weight_request *wanted = request;
    wanted->weight = (struct muslin_weight_spec)MUSLIN_WEIGHT_SPEC_INIT;
}

/* "120 g" for a square metre, "4 oz" for a square yard; nothing is nothing. */
static bool read_density(struct desk *desk, const char *option, const char *text, int64_t *density)
{
    const char *unit = "";
    int64_t thousandths = 0;
    if (text == NULL)
        return true;
    if (read_decimal(desk, text, 3, &thousandths, &unit) && strcmp(unit, "g") == 0) {
        *density = thousandths;
        return true;
    }
    if (strcmp(unit, "oz") == 0)
        return worked(desk, muslin_density_from_ounces(thousandths, MUSLIN_DIRECTION_NEAREST, density, &desk->problem));
    failure_say(desk->failure, option, "Write grams for a square metre, \"120 g\", or ounces for a square yard, "
                                       "\"4 oz\", with at most three decimals.");
    return false;
}

static bool read_densities(struct desk *desk, const struct weight_request *wanted, struct muslin_weight_spec *spec)
{
    return read_density(desk, "top", wanted->top, &spec->top_density) &&
           read_density(desk, "batting", wanted->batting, &spec->batting_density) &&
           read_density(desk, "backing", wanted->backing, &spec->backing_density) &&
           read_density(desk, "binding", wanted->binding, &spec->binding_density);
}

enum { LAYERS = 4 };
static const char *const layer_names[LAYERS] = { "top", "batting", "backing", "binding" };

/* "120 g a square metre", "4 oz a square yard" */
static void put_cloth_weight(json_t *layer, const char *density)
{
    char text[80];
    bool metric = strchr(density, 'z') == NULL;
    snprintf(text, sizeof text, "%.40s a square %s", density, metric ? "metre" : "yard");
    put_text(layer, "cloth", text);
}

/* The layers that were given, each with what it was reckoned from. */
static bool put_layers(json_t *answer, struct desk *desk, const struct weight_request *wanted,
                       const struct muslin_weight *weight)
{
    const int64_t masses[LAYERS] = { weight->top, weight->batting, weight->backing, weight->binding };
    const char *const densities[LAYERS] = { wanted->top, wanted->batting, wanted->backing, wanted->binding };
    json_t *list = put_list(answer, "layers");
    for (size_t i = 0; i < LAYERS; i++) {
        if (!given(desk, layer_names[i]))
            continue;
        json_t *layer = append_object(list);
        put_text(layer, "layer", layer_names[i]);
        put_cloth_weight(layer, densities[i]);
        if (i == 0 && wanted->weight.seam_share > 0)
            put_share(layer, desk, "in_seams", wanted->weight.seam_share);
        if (!put_mass(layer, desk, "mass", masses[i]))
            return false;
    }
    return put_mass(answer, desk, "total", weight->total);
}

/* "top and backing" and ", batting or binding": what was counted and what was not. */
static void put_layer_words(json_t *answer, const struct desk *desk)
{
    const char *parts[2][LAYERS];
    size_t counts[2] = { 0, 0 };
    char text[2][80] = { "", "" };
    for (size_t i = 0; i < LAYERS; i++) {
        size_t missing = given(desk, layer_names[i]) ? 0 : 1;
        parts[missing][counts[missing]++] = layer_names[i];
    }
    for (size_t way = 0; way < 2; way++)
        for (size_t i = 0; i < counts[way]; i++) {
            bool last = i + 1 == counts[way];
            const char *between = way == 1 ? (last ? " or " : ", ") : i == 0 ? "" : last ? " and " : ", ";
            size_t used = strlen(text[way]);
            snprintf(text[way] + used, sizeof text[way] - used, "%s%s", between, parts[way][i]);
        }
    put_text(answer, "counted", text[0]);
    put_text(answer, "not_counted", text[1]);
}

static json_t *answer_weight(const void *request, struct desk *desk)
{
    const struct weight_request *wanted = request;
    struct muslin_weight_spec spec = wanted->weight;
    struct muslin_weight weight = { .size = sizeof weight };
    if (!read_densities(desk, wanted, &spec) || !worked(desk, muslin_weight_plan(&spec, &weight, &desk->problem)))
        return NULL;
    json_t *answer = json_object();
    put_about(answer, desk, "finished_width", spec.width);
    put_about(answer, desk, "finished_length", spec.length);
    put_layer_words(answer, desk);
    if (put_layers(answer, desk, wanted, &weight))
        return answer;
    json_decref(answer);
    return NULL;
}

static const struct option_row weight_options[] = {
    { "width", KIND_LENGTH, offsetof(struct weight_request, weight.width), MUSLIN_ARG_QUILT_WIDTH, OPTION_REQUIRED,
      NULL, "finished width of the quilt" },
    { "length", KIND_LENGTH, offsetof(struct weight_request, weight.length), MUSLIN_ARG_QUILT_LENGTH, OPTION_REQUIRED,
      NULL, "finished length" },
    OPTION_HEADING("What the cloth weighs: \"120 g\" for a square metre, or \"4 oz\" for a square yard"),
    { "top", KIND_TEXT, offsetof(struct weight_request, top), MUSLIN_ARG_DENSITY, OPTION_REQUIRED, NULL,
      "of the top; its maker says, or weigh a piece whose size you know" },
    { "batting", KIND_TEXT, offsetof(struct weight_request, batting), MUSLIN_ARG_DENSITY, 0, NULL,
      "of the batting (no batting)" },
    { "backing", KIND_TEXT, offsetof(struct weight_request, backing), MUSLIN_ARG_DENSITY, 0, NULL,
      "of the backing (no backing)" },
    { "binding", KIND_TEXT, offsetof(struct weight_request, binding), MUSLIN_ARG_DENSITY, 0, NULL,
      "of the binding (no binding)" },
    OPTION_HEADING("What else there is of it"),
    { "in-seams", KIND_SHARE, offsetof(struct weight_request, weight.seam_share), MUSLIN_ARG_EXTRA_SHARE, 0, NULL,
      "cloth more that lies in the top's seams, such as \"20 %\"; see muslin row (none)" },
    { "binding-length", KIND_LENGTH, offsetof(struct weight_request, weight.binding_length), MUSLIN_ARG_LENGTH, 0,
      NULL, "length of the binding; see muslin binding" },
    { "binding-cut", KIND_LENGTH, offsetof(struct weight_request, weight.binding_cut), MUSLIN_ARG_BINDING_CUT, 0, NULL,
      "cut width of the binding" },
    OPTION_END
};

const struct command weight_command = {
    .name = "weight",
    .about = "what a quilt weighs, layer by layer",
    .operands = "",
    .examples = "  muslin weight --width \"1.5 m\" --length \"2 m\" --top \"120 g\" --batting \"150 g\" \\\n"
                "    --backing \"120 g\" --in-seams \"10 %\" --units cm\n"
                "  muslin weight --width 60 --length 72 --top \"4 oz\" --backing \"4 oz\"",
    .options = weight_options,
    .request_size = sizeof(struct weight_request),
    .start = start_weight,
    .answer = answer_weight,
    .show = show_weight
};

/* ---- cost ------------------------------------------------------------------------------------------------------- */

struct cost_request {
    struct texts things;
    int64_t decimals;
    int32_t direction;
};

static void start_cost(void *request)
{
    struct cost_request *wanted = request;
    wanted->decimals = 2;
    wanted->direction = MUSLIN_DIRECTION_NEAREST;
}

static bool complain_of_thing(struct desk *desk, const char *text)
{
    failure_say(desk->failure, "thing", "\"%.60s\": write \"3 1/8 yd at 11.50 the yd\", \"7 at 1.20\", \"7 at 5.00 for "
                                        "3\" or \"45 at 42.00 a bundle of 40\".", text);
    return false;
}

static bool read_whole(const char *text, size_t length, int64_t *number)
{
    char digits[20];
    long long value = 0;
    if (length == 0 || length >= sizeof digits || strspn(text, "0123456789") < length)
        return false;
    snprintf(digits, sizeof digits, "%.*s", (int)length, text);
    if (sscanf(digits, "%lld", &value) != 1)
        return false;
    *number = value;
    return true;
}

/* What the price is for: nothing for one piece, "for 3", "a bundle of 40", "the yd". */
static bool read_per(struct desk *desk, const char *text, const char *words, struct muslin_cost_spec *thing)
{
    static const char bundle[] = "a bundle of ";
    char one[40];
    thing->sold = MUSLIN_COST_PIECES;
    thing->per = 1;
    if (words[0] == '\0')
        return true;
    if (strncmp(words, "for ", 4) == 0 && read_whole(words + 4, strlen(words + 4), &thing->per))
        return true;
    if (strncmp(words, bundle, sizeof bundle - 1) == 0) {
        const char *pieces = words + sizeof bundle - 1;
        thing->sold = MUSLIN_COST_BUNDLES;
        return read_whole(pieces, strlen(pieces), &thing->per) || complain_of_thing(desk, text);
    }
    if (strncmp(words, "the ", 4) != 0 || strlen(words) > 16)
        return complain_of_thing(desk, text);
    thing->sold = MUSLIN_COST_LENGTH;
    snprintf(one, sizeof one, "1 %s", words + 4);
    return read_length(desk, "thing", one, strlen(one), &thing->per);
}

/* How much of "45", "45 pieces" or "1 piece" is its number. */
static size_t digits_before(const char *text, size_t length)
{
    static const char *const words[] = { " pieces", " piece" };
    for (size_t i = 0; i < sizeof words / sizeof words[0]; i++) {
        size_t word = strlen(words[i]);
        if (length > word && strncmp(text + length - word, words[i], word) == 0)
            return length - word;
    }
    return length;
}

static bool read_thing(struct desk *desk, const struct cost_request *wanted, const char *text,
                       struct muslin_cost_spec *thing)
{
    const char *at = strstr(text, " at ");
    const char *words = "";
    *thing = (struct muslin_cost_spec)MUSLIN_COST_SPEC_INIT;
    thing->direction = wanted->direction;
    if (at == NULL || !read_decimal(desk, at + 4, wanted->decimals, &thing->price, &words))
        return complain_of_thing(desk, text);
    if (!read_per(desk, text, words, thing))
        return false;
    size_t length = (size_t)(at - text);
    if (thing->sold == MUSLIN_COST_LENGTH)
        return read_length(desk, "thing", text, length, &thing->amount);
    return read_whole(text, digits_before(text, length), &thing->amount) || complain_of_thing(desk, text);
}

/* {"minor": 3594, "text": "35.94"} */
static void put_money(json_t *answer, const struct desk *desk, const struct cost_request *wanted, const char *name,
                      int64_t money)
{
    char digits[32];
    char text[40];
    int decimals = (int)wanted->decimals;
    snprintf(digits, sizeof digits, "%0*lld", decimals + 1, (long long)money);
    int whole = (int)strlen(digits) - decimals;
    const char *sign = decimals == 0 ? "" : desk->common.decimal_comma ? "," : ".";
    snprintf(text, sizeof text, "%.*s%s%s", whole, digits, sign, digits + whole);
    json_t *object = put_object(answer, name);
    put_count(object, "minor", money);
    put_text(object, "text", text);
}

/* "45 at ..." is said as "45 pieces at ...". */
static void put_thing_text(json_t *row, const char *text, const struct muslin_cost_spec *thing)
{
    char said[200];
    const char *price = strstr(text, " at ");
    if (thing->sold == MUSLIN_COST_LENGTH)
        snprintf(said, sizeof said, "%.180s", text);
    else
        snprintf(said, sizeof said, "%lld piece%s%.140s", (long long)thing->amount, thing->amount == 1 ? "" : "s",
                 price);
    put_text(row, "thing", said);
}

static bool put_thing(json_t *list, struct desk *desk, const struct cost_request *wanted, const char *text,
                      const struct muslin_cost_spec *thing)
{
    struct muslin_cost cost = { .size = sizeof cost };
    if (!worked(desk, muslin_cost_plan(thing, &cost, &desk->problem)))
        return false;
    json_t *row = append_object(list);
    put_thing_text(row, text, thing);
    if (thing->sold == MUSLIN_COST_BUNDLES) {
        put_count(row, "bundles", cost.bought);
        put_count(row, "pieces_to_spare", cost.spare);
    }
    put_money(row, desk, wanted, "cost", cost.cost);
    put_truth(row, "rounded", cost.exact == 0);
    return true;
}

static json_t *answer_cost(const void *request, struct desk *desk)
{
    const struct cost_request *wanted = request;
    struct muslin_cost_spec things[TEXTS_MAX];
    int64_t total = 0;
    size_t count = wanted->things.count;
    if (wanted->decimals < 0 || wanted->decimals > 4) {
        failure_say(desk->failure, "decimals", "Money has 0 to 4 decimals.");
        return NULL;
    }
    for (size_t i = 0; i < count; i++)
        if (!read_thing(desk, wanted, wanted->things.texts[i], &things[i]))
            return NULL;
    json_t *answer = json_object();
    json_t *list = put_list(answer, "things");
    bool fine = true;
    for (size_t i = 0; i < count && fine; i++)
        fine = put_thing(list, desk, wanted, wanted->things.texts[i], &things[i]);
    if (fine && worked(desk, muslin_cost_total(things, sizeof things[0], count, &total, &desk->problem))) {
        put_money(answer, desk, wanted, "total", total);
        return answer;
    }
    json_decref(answer);
    return NULL;
}

static void show_cost(struct sheet *sheet, json_t *answer)
{
    json_t *things = json_object_get(answer, "things");
    for (size_t i = 0; i < json_array_size(things); i++) {
        json_t *thing = json_array_get(things, i);
        bool bundles = json_object_get(thing, "bundles") != NULL;
        sheet_point(sheet, thing, "{thing}: {cost}");
        if (bundles)
            sheet_under(sheet, thing, "{bundles:bundle}, with {pieces_to_spare:piece} to spare");
    }
    sheet_gap(sheet);
    sheet_say(sheet, answer, "Together {total}, without tax or shipping. Each line is rounded on its own, as a bill "
                             "does it.");
}

static const struct option_row cost_options[] = {
    { "thing", KIND_TEXTS, offsetof(struct cost_request, things), MUSLIN_ARG_AMOUNT, OPTION_REQUIRED | OPTION_OPERAND,
      NULL, "how much of something at what price: \"3 1/8 yd at 11.50 the yd\", \"7 at 1.20\", \"7 at 5.00 for 3\", "
      "\"45 at 42.00 a bundle of 40\"" },
    { "decimals", KIND_COUNT, offsetof(struct cost_request, decimals), MUSLIN_ARG_DECIMALS, 0, NULL,
      "decimals of the money, 0 to 4 (2)" },
    { "round", KIND_CHOICE, offsetof(struct cost_request, direction), MUSLIN_ARG_DIRECTION, 0, rounding_words,
      "each line up, down or to the nearest (the usual)" },
    OPTION_END
};

const struct command cost_command = {
    .name = "cost",
    .about = "what cloth, pieces and bundles cost together",
    .operands = "THING...",
    .examples = "  muslin cost \"3 1/8 yd at 11.50 the yd\" \"45 at 42.00 a bundle of 40\"\n"
                "  muslin cost \"2.4 m at 12.00 the m\" \"3 at 2.80\"",
    .options = cost_options,
    .request_size = sizeof(struct cost_request),
    .start = start_cost,
    .answer = answer_cost,
    .show = show_cost
};
