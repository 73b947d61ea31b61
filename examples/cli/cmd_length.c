/* cmd_length.c - length, table: the numbers themselves, and the library's tables.
 *
 * SPDX-License-Identifier: MIT */
#include <stdio.h>

#include "answer.h"
#include "cmd.h"
#include "sheet.h"
#include "words.h"

void put_rounding(json_t *answer, const struct desk *desk, const struct muslin_rounded *rounded)
{
    if (rounded->error != 0)
        put_length(answer, desk, "rounded_by", rounded->error);
}

/* ---- length ----------------------------------------------------------------------------------------------------- */

enum finding { FIND_SUM = 1, FIND_DIAGONAL, FIND_SQUARE_SIDE, FIND_HEIGHT, FIND_TRIANGLE_SIDE, FIND_HYPOTENUSE };

static const struct word finding_words[] = {
    { "sum", FIND_SUM }, { "diagonal", FIND_DIAGONAL }, { "square-side", FIND_SQUARE_SIDE },
    { "triangle-height", FIND_HEIGHT }, { "triangle-side", FIND_TRIANGLE_SIDE }, { "hypotenuse", FIND_HYPOTENUSE },
    { NULL, 0 }
};

struct length_request {
    struct lengths lengths;
    int64_t times;
    int64_t over;
    int32_t finding;
    struct muslin_rounding_spec rounding;
};

static void start_length(void *request)
{
    struct length_request *wanted = request;
    wanted->times = 1;
    wanted->over = 1;
    wanted->finding = FIND_SUM;
    wanted->rounding = (struct muslin_rounding_spec)MUSLIN_ROUNDING_SPEC_INIT;
}

/* The lengths brought to one, and that one rounded. The hypotenuse alone looks at two. */
static muslin_status find(const struct length_request *wanted, muslin_len sum, struct muslin_rounded *out)
{
    switch (wanted->finding) {
    case FIND_DIAGONAL:
        return muslin_length_times_root2(sum, &wanted->rounding, out);
    case FIND_SQUARE_SIDE:
        return muslin_length_over_root2(sum, &wanted->rounding, out);
    case FIND_HEIGHT:
        return muslin_length_equilateral_height(sum, &wanted->rounding, out);
    case FIND_TRIANGLE_SIDE:
        return muslin_length_equilateral_side(sum, &wanted->rounding, out);
    case FIND_HYPOTENUSE:
        return muslin_length_hypotenuse(wanted->lengths.values[0], wanted->lengths.values[1], &wanted->rounding, out);
    default:
        return muslin_length_scale(sum, wanted->times, wanted->over, &wanted->rounding, out);
    }
}

static bool sides_fit(struct desk *desk, const struct length_request *wanted)
{
    if (wanted->finding == FIND_HYPOTENUSE && wanted->lengths.count != 2) {
        failure_say(desk->failure, "find", "The hypotenuse needs two lengths, the two short sides.");
        return false;
    }
    if (wanted->finding != FIND_SUM && (given(desk, "times") || given(desk, "over"))) {
        failure_say(desk->failure, "times", "Scaling goes with the sum only; scale the result in a second step.");
        return false;
    }
    return true;
}

static void put_in_every_unit(json_t *answer, const struct desk *desk, muslin_len value)
{
    static const struct word ways[] = {
        { "in_inches", UNITS_INCH }, { "in_decimal_inches", UNITS_INCH_DECIMAL }, { "in_cm", UNITS_CM },
        { "in_mm", UNITS_MM }, { NULL, 0 }
    };
    struct desk other = *desk;
    for (const struct word *way = ways; way->word != NULL; way++) {
        other.common.units = way->value;
        put_length(answer, &other, way->word, value);
    }
    other.common.units = UNITS_INCH;
    put_cloth(answer, &other, "as_cloth", value);
}

static json_t *answer_length(const void *request, struct desk *desk)
{
    const struct length_request *wanted = request;
    muslin_len sum = 0;
    struct muslin_rounded found = { .size = sizeof found };
    if (!sides_fit(desk, wanted) || !sum_of(desk, &wanted->lengths, &sum) ||
        !worked(desk, find(wanted, sum, &found)))
        return NULL;
    json_t *answer = json_object();
    put_length(answer, desk, "length", found.value);
    put_rounding(answer, desk, &found);
    put_in_every_unit(answer, desk, found.value);
    return answer;
}

static const struct option_row length_options[] = {
    { "length", KIND_LENGTHS, offsetof(struct length_request, lengths), MUSLIN_ARG_LENGTH,
      OPTION_REQUIRED | OPTION_OPERAND, NULL, "a length; several are added up" },
    { "times", KIND_COUNT, offsetof(struct length_request, times), MUSLIN_ARG_RATIO, 0, NULL, "multiply the sum (1)" },
    { "over", KIND_COUNT, offsetof(struct length_request, over), MUSLIN_ARG_DIVISOR, 0, NULL, "divide the sum (1)" },
    { "find", KIND_CHOICE, offsetof(struct length_request, finding), MUSLIN_ARG_NONE, 0, finding_words,
      "sum (the usual); diagonal of a square, square-side from a diagonal, triangle-height and triangle-side of an "
      "equilateral triangle; hypotenuse of two short sides" },
    OPTION_ROUNDING(length_request, rounding),
    OPTION_END
};

const struct command length_command = {
    .name = "length",
    .about = "read a length, add, scale, round, write it in every unit",
    .operands = "LENGTH...",
    .examples = "  muslin length \"2 1/2\"\n"
                "  muslin length \"6.35 cm\" --to 1/8\n"
                "  muslin length 6 --find diagonal --to 1/8 --round up\n"
                "  muslin length \"1 yd\" \"4 1/2 in\" --times 3",
    .options = length_options,
    .request_size = sizeof(struct length_request),
    .start = start_length,
    .answer = answer_length
};

/* ---- table ------------------------------------------------------------------------------------------------------ */

static const struct word table_words[] = {
    { "batting", MUSLIN_TABLE_BATTING }, { "other-batting", MUSLIN_TABLE_BATTING_OTHER },
    { "precut", MUSLIN_TABLE_PRECUT }, { "fabric-width", MUSLIN_TABLE_FABRIC_WIDTH },
    { "mattress", MUSLIN_TABLE_MATTRESS }, { "crib", MUSLIN_TABLE_CRIB },
    { "pillow-tuck", MUSLIN_TABLE_PILLOW_TUCK }, { "drop", MUSLIN_TABLE_DROP },
    { "yard-fraction", MUSLIN_TABLE_YARD_FRACTION }, { "stitch", MUSLIN_TABLE_STITCH },
    { "caution", MUSLIN_TABLE_CAUTION }, { NULL, 0 }
};

struct table_request {
    const char *table;
};

static void start_table(void *request)
{
    (void)request;
}

/* A range has a least and a greatest size; a stitch is said in millimetres; months are no pieces. */
static void put_sizes(json_t *answer, const struct desk *desk, int32_t table, const struct muslin_reference *row)
{
    bool range = table == MUSLIN_TABLE_DROP && row->length != 0;
    struct desk in_mm = *desk;
    in_mm.common.units = UNITS_MM;
    if (row->width != 0 || row->count == 0)
        put_length(answer, table == MUSLIN_TABLE_STITCH ? &in_mm : desk, range ? "least" : "width", row->width);
    if (row->length != 0)
        put_length(answer, desk, range ? "greatest" : "length", row->length);
    if (row->count != 0)
        put_count(answer, table == MUSLIN_TABLE_CAUTION ? "months" : "pieces", row->count);
}

static bool put_row(json_t *answer, struct desk *desk, int32_t table, int64_t index)
{
    struct muslin_reference row = { .size = sizeof row };
    if (!worked(desk, muslin_reference_row(table, index, &row, &desk->problem)))
        return false;
    put_text(answer, "name", muslin_reference_name(table, index));
    put_sizes(answer, desk, table, &row);
    put_text(answer, "source", muslin_reference_source(table, index));
    if (muslin_reference_note(table, index)[0] != '\0')
        put_text(answer, "note", muslin_reference_note(table, index));
    return true;
}

/* Says what was written, the nearest table there is, and all of them. */
static void complain_of_table(struct desk *desk, const char *written)
{
    struct nearest nearest = nearest_start(written);
    char list[300];
    char hint[80] = "";
    for (const struct word *word = table_words; word->word != NULL; word++)
        nearest_offer(&nearest, word->word);
    if (nearest.word != NULL)
        snprintf(hint, sizeof hint, " Did you mean %s?", nearest.word);
    list_words(table_words, list, sizeof list);
    failure_say(desk->failure, "table", "There is no table \"%.60s\".%s Choose one of %s.", written, hint, list);
}

static json_t *answer_table(const void *request, struct desk *desk)
{
    const struct table_request *wanted = request;
    const struct word *table = find_word(table_words, wanted->table);
    int64_t count = 0;
    if (table == NULL) {
        complain_of_table(desk, wanted->table);
        return NULL;
    }
    if (!worked(desk, muslin_reference_count(table->value, &count, &desk->problem)))
        return NULL;
    json_t *answer = json_object();
    json_t *rows = put_list(answer, "rows");
    for (int64_t i = 0; i < count; i++)
        if (!put_row(append_object(rows), desk, table->value, i)) {
            json_decref(answer);
            return NULL;
        }
    return answer;
}

static const struct option_row table_options[] = {
    { "table", KIND_TEXT, offsetof(struct table_request, table), MUSLIN_ARG_TABLE, OPTION_REQUIRED | OPTION_OPERAND,
      table_words, "batting (packages), other-batting (where lists disagree), precut (bundles), fabric-width (usable "
      "widths people plan with), mattress, crib (by law), pillow-tuck, drop (depths of mattresses), yard-fraction, "
      "stitch or caution (small parts, infants)" },
    OPTION_END
};

const struct command table_command = {
    .name = "table",
    .about = "usual sizes to start from, each with its source",
    .operands = "TABLE",
    .examples = "  muslin table batting\n"
                "  muslin table mattress --units cm",
    .options = table_options,
    .request_size = sizeof(struct table_request),
    .start = start_table,
    .answer = answer_table,
    .show = show_table
};
