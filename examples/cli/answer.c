/* answer.c - what answers are made of.
 *
 * SPDX-License-Identifier: MIT */
#include "answer.h"

#include <stdio.h>
#include <string.h>

/* ---- lengths as text -------------------------------------------------------------------------------------------- */

struct length_text {
    char text[160];
    int32_t exact;
};

/* A way of writing a length. */
struct style {
    int32_t style;
    int32_t denominator;
    int32_t decimals;
};

/* For each unit, the ways that are tried until one says the length exactly; the last one says it about. */
#define STYLES_MAX 3
static const struct style styles_of[][STYLES_MAX] = {
    [UNITS_INCH] = { { MUSLIN_STYLE_INCH_FRACTION, 64, 0 } },
    [UNITS_INCH_DECIMAL] = { { MUSLIN_STYLE_INCH_DECIMAL, 1, 4 },
                             { MUSLIN_STYLE_INCH_DECIMAL, 1, 6 },
                             { MUSLIN_STYLE_INCH_DECIMAL, 1, 3 } },
    [UNITS_CM] = { { MUSLIN_STYLE_CM, 1, 4 }, { MUSLIN_STYLE_CM, 1, 2 } },
    [UNITS_MM] = { { MUSLIN_STYLE_MM, 1, 3 }, { MUSLIN_STYLE_MM, 1, 1 } }
};
/* Yards are sold in eighths or in thirds; any other length of cloth is said in inches. */
static const struct style in_yards[] = {
    { MUSLIN_STYLE_YARD_FRACTION, 8, 0 }, { MUSLIN_STYLE_YARD_FRACTION, 3, 0 }
};

/* A length beyond what the library writes is shown in ticks; no sum of the library's comes out so large. */
static void write_in_style(const struct desk *desk, muslin_len value, const struct style *style, int32_t direction,
                           struct length_text *out)
{
    struct muslin_format_spec spec = MUSLIN_FORMAT_SPEC_INIT;
    spec.style = style->style;
    spec.denominator = style->denominator;
    spec.decimals = style->decimals;
    spec.direction = direction;
    spec.decimal_sign = desk->common.decimal_comma ? ',' : '.';
    if (muslin_length_format(value, &spec, out->text, sizeof out->text, NULL, &out->exact, NULL) == MUSLIN_OK)
        return;
    snprintf(out->text, sizeof out->text, "%lld ticks", (long long)value);
    out->exact = 1;
}

static struct length_text write_length(const struct desk *desk, muslin_len value, int32_t direction)
{
    struct length_text out = { .exact = 0 };
    const struct style *styles = styles_of[desk->common.units];
    for (size_t i = 0; i < STYLES_MAX && styles[i].style != 0 && !out.exact; i++)
        write_in_style(desk, value, &styles[i], direction, &out);
    return out;
}

static json_t *length_as_json(muslin_len value, const struct length_text *text)
{
    json_t *length = json_object();
    json_object_set_new(length, "ticks", json_integer(value));
    json_object_set_new(length, "text", json_string(text->text));
    json_object_set_new(length, "exact", json_boolean(text->exact));
    return length;
}

static void put_rounded(json_t *answer, const struct desk *desk, const char *name, muslin_len value,
                        int32_t direction)
{
    struct length_text text = write_length(desk, value, direction);
    json_object_set_new(answer, name, length_as_json(value, &text));
}

void put_length(json_t *answer, const struct desk *desk, const char *name, muslin_len value)
{
    put_rounded(answer, desk, name, value, MUSLIN_DIRECTION_NEAREST);
}

void put_slack(json_t *answer, const struct desk *desk, const char *name, muslin_len value)
{
    put_rounded(answer, desk, name, value, MUSLIN_DIRECTION_DOWN);
}

void put_least(json_t *answer, const struct desk *desk, const char *name, muslin_len value)
{
    put_rounded(answer, desk, name, value, MUSLIN_DIRECTION_UP);
}

static bool in_inches(const struct desk *desk)
{
    return desk->common.units == UNITS_INCH || desk->common.units == UNITS_INCH_DECIMAL;
}

/* A mark of the grid, or the value itself where that is too large for one. */
static muslin_len on_grid(muslin_len value, muslin_len grid, int32_t direction)
{
    struct muslin_rounding_spec spec = MUSLIN_ROUNDING_SPEC_INIT;
    struct muslin_rounded rounded = { .size = sizeof rounded };
    spec.grid = grid;
    spec.direction = direction;
    return muslin_length_snap(value, &spec, &rounded) == MUSLIN_OK ? rounded.value : value;
}

muslin_len up_to_mark(const struct desk *desk, muslin_len value, size_t fineness)
{
    static const muslin_len inch_marks[] = { MUSLIN_TICKS_PER_INCH / 8, MUSLIN_TICKS_PER_INCH / 16,
                                             MUSLIN_TICKS_PER_INCH / 32, MUSLIN_TICKS_PER_INCH / 64 };
    static const muslin_len metric_marks[] = { MUSLIN_TICKS_PER_MM, MUSLIN_TICKS_PER_MM / 2, MUSLIN_TICKS_PER_MM / 10 };
    const size_t count = in_inches(desk) ? 4 : 3;
    if (fineness >= count)
        return -1;
    if (write_length(desk, value, MUSLIN_DIRECTION_UP).exact)
        return value;
    return on_grid(value, (in_inches(desk) ? inch_marks : metric_marks)[fineness], MUSLIN_DIRECTION_UP);
}

/* As text in whole eighths of an inch, or in steps of 5 mm: nearer than that nobody measures cloth. What is less than a
 * step is said as it is. */
static struct length_text write_measured(const struct desk *desk, muslin_len value, int32_t direction)
{
    muslin_len grid = in_inches(desk) ? MUSLIN_TICKS_PER_INCH / 8 : 5 * MUSLIN_TICKS_PER_MM;
    muslin_len measured = on_grid(value, grid, direction);
    struct length_text text = write_length(desk, measured == 0 ? value : measured, direction);
    text.exact = text.exact && (measured == 0 || measured == value);
    return text;
}

void put_spare(json_t *answer, const struct desk *desk, const char *name, muslin_len value)
{
    struct length_text text = write_measured(desk, value, MUSLIN_DIRECTION_DOWN);
    json_object_set_new(answer, name, length_as_json(value, &text));
}

void put_ample(json_t *answer, const struct desk *desk, const char *name, muslin_len value)
{
    struct length_text text = write_measured(desk, value, MUSLIN_DIRECTION_UP);
    json_object_set_new(answer, name, length_as_json(value, &text));
}

void put_cloth(json_t *answer, const struct desk *desk, const char *name, muslin_len value)
{
    struct length_text plain = write_measured(desk, value, MUSLIN_DIRECTION_UP);
    struct length_text yards = { .exact = 0 };
    for (size_t i = 0; i < 2 && in_inches(desk) && value != 0 && !yards.exact; i++)
        write_in_style(desk, value, &in_yards[i], MUSLIN_DIRECTION_UP, &yards);
    if (yards.exact) {
        size_t used = strlen(yards.text);
        snprintf(yards.text + used, sizeof yards.text - used, " (%.60s)", plain.text);
    }
    json_object_set_new(answer, name, length_as_json(value, yards.exact ? &yards : &plain));
}

/* What shops cut cloth in. */
static muslin_len shop_step(const struct desk *desk)
{
    return in_inches(desk) ? 36 * MUSLIN_TICKS_PER_INCH / 8 : 100 * MUSLIN_TICKS_PER_MM;
}

void put_to_buy(json_t *answer, const struct desk *desk, const char *name, muslin_len value)
{
    static const struct style shop[] = { { MUSLIN_STYLE_YARD_FRACTION, 8, 0 }, { MUSLIN_STYLE_CM, 1, 0 } };
    muslin_len bought = on_grid(value, shop_step(desk), MUSLIN_DIRECTION_UP);
    struct length_text text = { .exact = 0 };
    write_in_style(desk, bought, &shop[in_inches(desk) ? 0 : 1], MUSLIN_DIRECTION_UP, &text);
    json_object_set_new(answer, name, length_as_json(bought, &text));
}

void put_about(json_t *answer, const struct desk *desk, const char *name, muslin_len value)
{
    muslin_len grid = in_inches(desk) ? MUSLIN_TICKS_PER_INCH / 16 : MUSLIN_TICKS_PER_MM;
    muslin_len near = on_grid(value, grid, MUSLIN_DIRECTION_NEAREST);
    struct length_text text = write_length(desk, value, MUSLIN_DIRECTION_NEAREST);
    if (!text.exact && near != 0) {
        text = write_length(desk, near, MUSLIN_DIRECTION_NEAREST);
        text.exact = 0;
    }
    json_object_set_new(answer, name, length_as_json(value, &text));
}

void put_on_mark(json_t *answer, const struct desk *desk, const char *name, muslin_len value, int32_t direction,
                 int32_t parts, int32_t tenths)
{
    muslin_len grid = in_inches(desk) ? MUSLIN_TICKS_PER_INCH / parts : tenths * MUSLIN_TICKS_PER_MM / 10;
    put_length(answer, desk, name, on_grid(value, grid, direction));
}

void put_off_by(json_t *answer, const struct desk *desk, const char *name, const char *amount, muslin_len value)
{
    put_about(answer, desk, name, value);
    put_about(answer, desk, amount, value < 0 ? -value : value);
}

void put_yards(json_t *answer, const struct desk *desk, const char *name, muslin_len value)
{
    struct length_text text = { .exact = 0 };
    if (!in_inches(desk))
        return;
    for (size_t i = 0; i < 2 && !text.exact; i++)
        write_in_style(desk, value, &in_yards[1 - i], MUSLIN_DIRECTION_UP, &text);
    json_object_set_new(answer, name, length_as_json(value, &text));
}

void put_shop_length(json_t *answer, const struct desk *desk, muslin_len needed)
{
    struct muslin_purchase_spec spec = MUSLIN_PURCHASE_SPEC_INIT;
    struct muslin_purchase buy = { .size = sizeof buy };
    spec.needed = needed;
    spec.step = shop_step(desk);
    if (needed == 0 || muslin_fabric_purchase(&spec, &buy, NULL) != MUSLIN_OK)
        return;
    put_text(answer, "buy_in_steps_of", in_inches(desk) ? "1/8 yd" : "10 cm");
    put_cloth(answer, desk, "buy", buy.bought);
    put_slack(answer, desk, "buy_leaves", buy.spare);
    spec.extra = 1;
    if (buy.spare == 0 && muslin_fabric_purchase(&spec, &buy, NULL) == MUSLIN_OK)
        put_cloth(answer, desk, "buy_rather", buy.bought);
}

/* Yards of thread are counted whole, and centimetres as well. A few yards and less are said as lengths are. */
#define FEW_YARDS (10 * 36 * MUSLIN_TICKS_PER_INCH)

void put_thread(json_t *answer, const struct desk *desk, const char *name, muslin_len value, int32_t direction)
{
    static const struct style whole[] = { { MUSLIN_STYLE_YARD_FRACTION, 1, 0 }, { MUSLIN_STYLE_CM, 1, 0 } };
    struct length_text text = { .exact = 0 };
    if (value < FEW_YARDS)
        text = write_measured(desk, value, direction);
    else
        write_in_style(desk, value, &whole[in_inches(desk) ? 0 : 1], direction, &text);
    json_object_set_new(answer, name, length_as_json(value, &text));
}

/* ---- everything else -------------------------------------------------------------------------------------------- */

void put_count(json_t *answer, const char *name, int64_t value)
{
    json_object_set_new(answer, name, json_integer(value));
}

/* A number with up to `places` decimals (1 .. 6), without noughts at the end: 10160 with 3 is 10.16. */
static void write_decimal(const struct desk *desk, int64_t value, int places, const char *unit, char *buf, size_t cap)
{
    char decimals[8];
    int64_t one = 1;
    int64_t size = value < 0 ? -value : value;
    for (int i = 0; i < places; i++)
        one *= 10;
    snprintf(decimals, sizeof decimals, "%0*d", places, (int)(size % one));
    size_t length = (size_t)places;
    while (length > 0 && decimals[length - 1] == '0')
        decimals[--length] = '\0';
    const char *sign = length == 0 ? "" : desk->common.decimal_comma ? "," : ".";
    snprintf(buf, cap, "%s%lld%s%s%s", value < 0 ? "-" : "", (long long)(size / one), sign, decimals, unit);
}

void put_share(json_t *answer, const struct desk *desk, const char *name, int32_t ppm)
{
    char text[32];
    write_decimal(desk, ppm, 4, " %", text, sizeof text);
    json_t *share = put_object(answer, name);
    put_count(share, "ppm", ppm);
    put_text(share, "text", text);
}

void put_thousandths(json_t *answer, const struct desk *desk, const char *name, int64_t thousandths)
{
    char text[48];
    write_decimal(desk, thousandths, 3, "", text, sizeof text);
    json_t *number = put_object(answer, name);
    put_count(number, "thousandths", thousandths);
    put_text(number, "text", text);
}

bool put_mass(json_t *answer, struct desk *desk, const char *name, int64_t mass)
{
    char text[112];
    write_decimal(desk, mass, 3, " g", text, sizeof text);
    if (in_inches(desk)) {
        int64_t ounces = 0;
        char in_ounces[48];
        if (!worked(desk, muslin_mass_in_ounces(mass, 1, MUSLIN_DIRECTION_NEAREST, &ounces, &desk->problem)))
            return false;
        write_decimal(desk, ounces, 3, " oz", in_ounces, sizeof in_ounces);
        size_t used = strlen(text);
        snprintf(text + used, sizeof text - used, " (%s)", in_ounces);
    }
    json_t *weight = put_object(answer, name);
    put_count(weight, "mg", mass);
    put_text(weight, "text", text);
    return true;
}

void put_text(json_t *answer, const char *name, const char *text)
{
    json_object_set_new(answer, name, json_string(text));
}

void put_truth(json_t *answer, const char *name, bool truth)
{
    json_object_set_new(answer, name, json_boolean(truth));
}

static bool holds_text(const json_t *list, const char *text)
{
    for (size_t i = 0; i < json_array_size(list); i++)
        if (strcmp(json_string_value(json_array_get(list, i)), text) == 0)
            return true;
    return false;
}

void put_warnings(json_t *answer, uint32_t warnings)
{
    json_t *list = json_object_get(answer, "warnings");
    if (list == NULL)
        list = put_list(answer, "warnings");
    for (uint32_t bit = 1; bit != 0; bit <<= 1) {
        const char *sentence = (warnings & bit) != 0 ? muslin_warning_sentence(bit) : "";
        if (sentence[0] != '\0' && !holds_text(list, sentence))
            json_array_append_new(list, json_string(sentence));
    }
}

json_t *put_object(json_t *answer, const char *name)
{
    json_t *object = json_object();
    json_object_set_new(answer, name, object);
    return object;
}

json_t *put_list(json_t *answer, const char *name)
{
    json_t *list = json_array();
    json_object_set_new(answer, name, list);
    return list;
}

json_t *append_object(json_t *list)
{
    json_t *object = json_object();
    json_array_append_new(list, object);
    return object;
}

bool sum_of(struct desk *desk, const struct lengths *lengths, muslin_len *sum)
{
    return worked(desk, muslin_length_sum(lengths->values, lengths->count, sum));
}
