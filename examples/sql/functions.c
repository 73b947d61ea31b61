/* functions.c - the functions that give one value: lengths read and written, seams, rounding, cloth, strip sets.
 *
 * SPDX-License-Identifier: MIT */
#include <stdio.h>
#include <string.h>

#include "sql.h"
#include "words.h"

SQLITE_EXTENSION_INIT3

/* One call. What is read says its trouble, and then nothing more is asked. */
struct call {
    sqlite3_context *context;
    int given;
    sqlite3_value **values;
    struct trouble trouble;
};

/* Where an argument may be left out: then what is there already stays. */
static bool length_at(struct call *call, int at, const char *what, muslin_len *length)
{
    return at >= call->given || length_from(&call->trouble, what, call->values[at], length);
}

static bool count_at(struct call *call, int at, const char *what, int64_t *count)
{
    return at >= call->given || count_from(&call->trouble, what, call->values[at], count);
}

static bool word_at(struct call *call, int at, const char *what, const struct word *words, int32_t *chosen)
{
    return at >= call->given || word_from(&call->trouble, what, call->values[at], words, chosen);
}

static bool seam_at(struct call *call, int at, struct muslin_seam_spec *seam)
{
    *seam = (struct muslin_seam_spec)MUSLIN_SEAM_SPEC_INIT;
    return length_at(call, at, "seam allowance", &seam->allowance) &&
           length_at(call, at + 1, "take-up", &seam->take_up);
}

static void give(struct call *call, muslin_status status, const struct muslin_problem *problem, int64_t value)
{
    if (was_answered(&call->trouble, status, problem))
        sqlite3_result_int64(call->context, value);
}

/* ---- lengths in words -------------------------------------------------------------------------------------------- */

static void version(struct call *call)
{
    sqlite3_result_text(call->context, muslin_version_text(), -1, SQLITE_STATIC);
}

static const struct word bare_units[] = {
    { "in", MUSLIN_LENGTH_UNIT_INCH }, { "ft", MUSLIN_LENGTH_UNIT_FOOT }, { "yd", MUSLIN_LENGTH_UNIT_YARD },
    { "mm", MUSLIN_LENGTH_UNIT_MM },   { "cm", MUSLIN_LENGTH_UNIT_CM },   { "m", MUSLIN_LENGTH_UNIT_M },
    { NULL, 0 }
};

/* A number is taken where its unit is given: SQLite writes it as text. */
static bool length_or_number(struct call *call, const char **text, size_t *length)
{
    const int type = sqlite3_value_type(call->values[0]);
    if (call->given == 1 || (type != SQLITE_INTEGER && type != SQLITE_FLOAT))
        return text_from(&call->trouble, "length", call->values[0], text, length);
    *text = (const char *)sqlite3_value_text(call->values[0]);
    *length = (size_t)sqlite3_value_bytes(call->values[0]);
    return *text != NULL || trouble_memory(&call->trouble);
}

static bool parsed_at(struct call *call, struct muslin_parsed *parsed)
{
    struct muslin_parse_spec spec = MUSLIN_PARSE_SPEC_INIT;
    struct muslin_problem problem = MUSLIN_PROBLEM_INIT;
    muslin_len ignored;
    const char *text;
    size_t length;
    *parsed = (struct muslin_parsed){ .size = sizeof *parsed };
    if (!length_or_number(call, &text, &length))
        return false;
    if (call->given == 1 && !length_from_text(&call->trouble, "length", text, length, &ignored))
        return false;
    if (!word_at(call, 1, "unit", bare_units, &spec.default_unit))
        return false;
    const muslin_status status = muslin_length_parse(text, length, &spec, parsed, &problem);
    return length_was_read(&call->trouble, "length", status, &problem);
}

static void length(struct call *call)
{
    struct muslin_parsed parsed;
    if (parsed_at(call, &parsed))
        sqlite3_result_int64(call->context, parsed.value);
}

static void length_exact(struct call *call)
{
    struct muslin_parsed parsed;
    if (parsed_at(call, &parsed))
        sqlite3_result_int(call->context, parsed.exact);
}

static const struct word styles[] = {
    { "in", MUSLIN_STYLE_INCH_FRACTION }, { "decimal in", MUSLIN_STYLE_INCH_DECIMAL },
    { "yd", MUSLIN_STYLE_YARD_FRACTION }, { "mm", MUSLIN_STYLE_MM },
    { "cm", MUSLIN_STYLE_CM },            { NULL, 0 }
};

/* How fine it is shown: a denominator of fractions, else decimals. */
static bool fineness_at(struct call *call, int at, struct muslin_format_spec *spec)
{
    const bool is_fraction = spec->style == MUSLIN_STYLE_INCH_FRACTION || spec->style == MUSLIN_STYLE_YARD_FRACTION;
    int64_t fineness = is_fraction ? spec->denominator : spec->decimals;
    const char *what = is_fraction ? "denominator" : "number of decimals";
    if (!count_at(call, at, what, &fineness))
        return false;
    if (fineness < (is_fraction ? 1 : 0) || fineness > (is_fraction ? 64 : 6))
        return trouble_say(&call->trouble, "The %s is %lld, but must be %s.", what, (long long)fineness,
                           is_fraction ? "1 to 64" : "0 to 6");
    *(is_fraction ? &spec->denominator : &spec->decimals) = (int32_t)fineness;
    return true;
}

enum { WRITTEN_MOST = 64 };

/* The text, and whether it says exactly the length. */
static bool written_at(struct call *call, char written[WRITTEN_MOST], int32_t *exact)
{
    struct muslin_format_spec spec = MUSLIN_FORMAT_SPEC_INIT;
    struct muslin_problem problem = MUSLIN_PROBLEM_INIT;
    muslin_len ticks = 0;
    if (!length_at(call, 0, "length", &ticks) || !word_at(call, 1, "style", styles, &spec.style) ||
        !fineness_at(call, 2, &spec) || !word_at(call, 3, "direction", rounding_words, &spec.direction))
        return false;
    muslin_status status = muslin_length_format(ticks, &spec, written, WRITTEN_MOST, NULL, exact, &problem);
    return was_answered(&call->trouble, status, &problem);
}

static void text(struct call *call)
{
    char written[WRITTEN_MOST];
    int32_t ignored;
    if (written_at(call, written, &ignored))
        sqlite3_result_text(call->context, written, -1, SQLITE_TRANSIENT);
}

static void text_exact(struct call *call)
{
    char ignored[WRITTEN_MOST];
    int32_t exact;
    if (written_at(call, ignored, &exact))
        sqlite3_result_int(call->context, exact);
}

/* ---- rounding ---------------------------------------------------------------------------------------------------- */

static void give_rounded(struct call *call, bool asks_whether)
{
    struct muslin_rounding_spec rounding = MUSLIN_ROUNDING_SPEC_INIT;
    struct muslin_rounded rounded = { .size = sizeof rounded };
    const struct muslin_problem problem = MUSLIN_PROBLEM_INIT;
    muslin_len ticks = 0;
    if (!length_at(call, 0, "length", &ticks) || !length_at(call, 1, "grid", &rounding.grid) ||
        !word_at(call, 2, "direction", rounding_words, &rounding.direction))
        return;
    if (rounding.grid < 1 || rounding.grid > MUSLIN_SIZE_MAX) {
        trouble_say(&call->trouble, "The grid is %lld ticks, but must be 1 to %lld.", (long long)rounding.grid,
                    (long long)MUSLIN_SIZE_MAX);
        return;
    }
    muslin_status status = muslin_length_snap(ticks, &rounding, &rounded);
    give(call, status, &problem, asks_whether ? rounded.exact : rounded.value);
}

static void rounded(struct call *call)
{
    give_rounded(call, false);
}

static void on_grid(struct call *call)
{
    give_rounded(call, true);
}

/* ---- seams ------------------------------------------------------------------------------------------------------- */

static void from_finished(struct call *call)
{
    struct muslin_problem problem = MUSLIN_PROBLEM_INIT;
    struct muslin_seam_spec seam;
    muslin_len finished = 0;
    muslin_len cut = 0;
    if (!length_at(call, 0, "finished size", &finished) || !seam_at(call, 1, &seam))
        return;
    muslin_status status = muslin_seam_cut_from_finished(finished, &seam, &cut, &problem);
    give(call, status, &problem, cut);
}

static void finished(struct call *call)
{
    struct muslin_problem problem = MUSLIN_PROBLEM_INIT;
    struct muslin_seam_spec seam;
    muslin_len cut = 0;
    muslin_len size = 0;
    if (!length_at(call, 0, "cut or unfinished size", &cut) || !seam_at(call, 1, &seam))
        return;
    muslin_status status = muslin_seam_finished_from_cut(cut, &seam, &size, &problem);
    give(call, status, &problem, size);
}

static void row_unfinished(struct call *call)
{
    struct muslin_problem problem = MUSLIN_PROBLEM_INIT;
    struct muslin_sewn_row row = { .size = sizeof row };
    struct muslin_seam_spec seam;
    muslin_len cut = 0;
    int64_t pieces = 0;
    if (!length_at(call, 0, "cut size", &cut) || !count_at(call, 1, "number of pieces", &pieces) ||
        !seam_at(call, 2, &seam))
        return;
    muslin_status status = muslin_seam_row_equal(cut, pieces, &seam, &row, &problem);
    give(call, status, &problem, row.unfinished);
}

static void cut_resized(struct call *call)
{
    struct muslin_rounding_spec rounding = MUSLIN_ROUNDING_SPEC_INIT;
    struct muslin_problem problem = MUSLIN_PROBLEM_INIT;
    struct muslin_rounded out = { .size = sizeof out };
    struct muslin_seam_spec seam = MUSLIN_SEAM_SPEC_INIT;
    muslin_len cut = 0;
    int64_t numerator = 0;
    int64_t denominator = 0;
    if (!length_at(call, 0, "cut size", &cut) || !count_at(call, 1, "numerator", &numerator) ||
        !count_at(call, 2, "denominator", &denominator) ||
        !length_at(call, 3, "seam allowance", &seam.allowance) || !length_at(call, 4, "grid", &rounding.grid))
        return;
    muslin_status status = muslin_seam_resize_cut(cut, numerator, denominator, &seam, &rounding, &out, &problem);
    give(call, status, &problem, out.value);
}

/* ---- cloth ------------------------------------------------------------------------------------------------------- */

static void usable_width(struct call *call)
{
    struct muslin_problem problem = MUSLIN_PROBLEM_INIT;
    muslin_len labelled = 0;
    muslin_len selvage = 0;
    muslin_len width = 0;
    if (!length_at(call, 0, "labelled width", &labelled) || !length_at(call, 1, "selvage", &selvage))
        return;
    muslin_status status = muslin_fabric_usable_width(labelled, selvage, 0, &width, &problem);
    give(call, status, &problem, width);
}

static void bought(struct call *call)
{
    struct muslin_problem problem = MUSLIN_PROBLEM_INIT;
    struct muslin_purchase purchase = { .size = sizeof purchase };
    struct muslin_purchase_spec spec = MUSLIN_PURCHASE_SPEC_INIT;
    if (!length_at(call, 0, "length needed", &spec.needed) || !length_at(call, 1, "step", &spec.step))
        return;
    muslin_status status = muslin_fabric_purchase(&spec, &purchase, &problem);
    give(call, status, &problem, purchase.bought);
}

/* Money in the smallest coin, to the nearest. */
static void cost(struct call *call)
{
    struct muslin_problem problem = MUSLIN_PROBLEM_INIT;
    struct muslin_cost out = { .size = sizeof out };
    struct muslin_cost_spec spec = MUSLIN_COST_SPEC_INIT;
    spec.sold = MUSLIN_COST_LENGTH;
    spec.per = muslin_length_unit_ticks(MUSLIN_LENGTH_UNIT_YARD);
    if (!length_at(call, 0, "length bought", &spec.amount) || !count_at(call, 1, "price", &spec.price) ||
        !length_at(call, 2, "length that the price is for", &spec.per))
        return;
    muslin_status status = muslin_cost_plan(&spec, &out, &problem);
    give(call, status, &problem, out.cost);
}

/* How much cloth may be lacking; nothing where it gives nothing anyway. */
static void give_slack(struct call *call, int64_t yield, muslin_len slack)
{
    if (yield > 0)
        sqlite3_result_int64(call->context, slack);
}

/* Pieces side by side in one strip across the cloth. */
static bool across_at(struct call *call, struct muslin_cloth_pieces *pieces)
{
    struct muslin_problem problem = MUSLIN_PROBLEM_INIT;
    struct muslin_cloth_spec spec = MUSLIN_CLOTH_SPEC_INIT;
    spec.length = spec.piece_length = 1;
    *pieces = (struct muslin_cloth_pieces){ .size = sizeof *pieces };
    return length_at(call, 0, "cut width of the piece", &spec.piece_width) &&
           length_at(call, 1, "usable width", &spec.width) && length_at(call, 2, "end loss", &spec.loss_across) &&
           was_answered(&call->trouble, muslin_fabric_pieces(&spec, pieces, &problem), &problem);
}

static void per_strip(struct call *call)
{
    struct muslin_cloth_pieces pieces;
    if (across_at(call, &pieces))
        sqlite3_result_int64(call->context, pieces.across);
}

static void narrower_by(struct call *call)
{
    struct muslin_cloth_pieces pieces;
    if (across_at(call, &pieces))
        give_slack(call, pieces.across, pieces.narrower_by);
}

static void strips(struct call *call)
{
    struct muslin_problem problem = MUSLIN_PROBLEM_INIT;
    struct muslin_strips out = { .size = sizeof out };
    struct muslin_strips_spec spec = MUSLIN_STRIPS_SPEC_INIT;
    spec.strip_cut = 1;
    if (!count_at(call, 0, "number of pieces", &spec.pieces) ||
        !length_at(call, 1, "cut width of the piece", &spec.piece_across) ||
        !length_at(call, 2, "usable width", &spec.usable_width) || !length_at(call, 3, "end loss", &spec.end_loss))
        return;
    muslin_status status = muslin_fabric_strips(&spec, &out, &problem);
    give(call, status, &problem, out.strips);
}

/* ---- strip sets -------------------------------------------------------------------------------------------------- */

static const struct word ends[] = { { "both ends", 0 },
                                    { "one end", (int32_t)MUSLIN_YIELD_FROM_ONE_END },
                                    { NULL, 0 } };

static bool yield_at(struct call *call, struct muslin_yield *yield)
{
    struct muslin_problem problem = MUSLIN_PROBLEM_INIT;
    struct muslin_yield_spec spec = MUSLIN_YIELD_SPEC_INIT;
    int32_t from = 0;
    *yield = (struct muslin_yield){ .size = sizeof *yield };
    if (!length_at(call, 0, "segment's cut width", &spec.segment_cut) ||
        !length_at(call, 1, "usable length of the strips", &spec.strip_length) ||
        !length_at(call, 2, "end trim", &spec.end_trim) || !length_at(call, 3, "fold clear", &spec.fold_clear) ||
        !word_at(call, 4, "end that is cut from", ends, &from))
        return false;
    spec.flags = (uint32_t)from;
    return was_answered(&call->trouble, muslin_stripset_yield(&spec, yield, &problem), &problem);
}

static void yield(struct call *call)
{
    struct muslin_yield out;
    if (yield_at(call, &out))
        sqlite3_result_int64(call->context, out.segments);
}

static void shorter_by(struct call *call)
{
    struct muslin_yield out;
    if (yield_at(call, &out))
        give_slack(call, out.segments, out.shorter_by);
}

/* ---- a pattern's file -------------------------------------------------------------------------------------------- */

static void pattern_file(struct call *call)
{
    enum { MOST = 4 << 20 };
    const char *path;
    size_t length;
    if (!text_from(&call->trouble, "path", call->values[0], &path, &length))
        return;
    FILE *file = strlen(path) == length ? fopen(path, "rb") : NULL;
    char *buffer = sqlite3_malloc64(MOST + 1);
    const size_t read = file != NULL && buffer != NULL ? fread(buffer, 1, MOST + 1, file) : 0;
    if (buffer == NULL)
        trouble_memory(&call->trouble);
    else if (file == NULL || ferror(file) != 0)
        trouble_say(&call->trouble, "The pattern file \"%!.200s\" cannot be read.", path);
    else if (read > MOST)
        trouble_say(&call->trouble, "The pattern file \"%!.200s\" is larger than 4 MiB.", path);
    else
        sqlite3_result_text(call->context, buffer, (int)read, SQLITE_TRANSIENT);
    sqlite3_free(buffer);
    if (file != NULL)
        fclose(file);
}

/* ---- all of them ------------------------------------------------------------------------------------------------- */

struct function {
    const char *name;
    int least; /* arguments */
    int most;
    void (*body)(struct call *call);
    int flags;
};

enum { PURE = SQLITE_UTF8 | SQLITE_DETERMINISTIC | SQLITE_INNOCUOUS, READS_FILES = SQLITE_UTF8 | SQLITE_DIRECTONLY };

static const struct function functions[] = {
    { "muslin_version", 0, 0, version, PURE },
    { "muslin_length", 1, 2, length, PURE },
    { "muslin_length_exact", 1, 2, length_exact, PURE },
    { "muslin_text", 1, 4, text, PURE },
    { "muslin_text_exact", 1, 3, text_exact, PURE },
    { "muslin_rounded", 2, 3, rounded, PURE },
    { "muslin_on_grid", 2, 2, on_grid, PURE },
    { "muslin_cut", 1, 3, from_finished, PURE },
    { "muslin_unfinished", 1, 3, from_finished, PURE },
    { "muslin_finished", 1, 3, finished, PURE },
    { "muslin_row_unfinished", 2, 4, row_unfinished, PURE },
    { "muslin_cut_resized", 3, 5, cut_resized, PURE },
    { "muslin_usable_width", 2, 2, usable_width, PURE },
    { "muslin_bought", 1, 2, bought, PURE },
    { "muslin_cost", 2, 3, cost, PURE },
    { "muslin_per_strip", 2, 3, per_strip, PURE },
    { "muslin_narrower_by", 2, 3, narrower_by, PURE },
    { "muslin_strips", 3, 4, strips, PURE },
    { "muslin_yield", 2, 5, yield, PURE },
    { "muslin_shorter_by", 2, 5, shorter_by, PURE },
    { "muslin_pattern_file", 1, 1, pattern_file, READS_FILES },
};

/* Nothing in, nothing out: a size that is not known must not be taken for a usual one. */
static void answer_call(sqlite3_context *context, int given, sqlite3_value **values)
{
    const struct function *function = sqlite3_user_data(context);
    struct call call = { context, given, values, { false, NULL } };
    for (int i = 0; i < given; i++)
        if (sqlite3_value_type(values[i]) == SQLITE_NULL)
            return;
    function->body(&call);
    if (!call.trouble.is_there)
        return;
    char *message = call.trouble.sentence == NULL
                        ? NULL
                        : sqlite3_mprintf("%s: %s", function->name, call.trouble.sentence);
    sqlite3_free(call.trouble.sentence);
    if (message == NULL)
        sqlite3_result_error_nomem(context);
    else
        sqlite3_result_error(context, message, -1);
    sqlite3_free(message);
}

int add_functions(sqlite3 *database)
{
    int status = SQLITE_OK;
    for (size_t i = 0; i < sizeof functions / sizeof functions[0]; i++) {
        const struct function *function = &functions[i];
        for (int given = function->least; given <= function->most && status == SQLITE_OK; given++)
            status = sqlite3_create_function_v2(database, function->name, given, function->flags,
                                                (void *)(size_t)function, answer_call, NULL, NULL, NULL);
    }
    return status;
}
