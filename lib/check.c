/* check.c - input checked, problems put into a sentence.
 *
 * SPDX-License-Identifier: MIT */
#include "inside.h"

/* What a value is measured in, which decides how a sentence shows it. */
enum measure { MEASURE_NUMBER, MEASURE_LENGTH, MEASURE_SHARE, MEASURE_ID };

/* All that are not numbers; with room for arguments to come. */
enum { ARGUMENTS_MOST = 256 };
static const uint8_t measures[ARGUMENTS_MOST] = {
    [MUSLIN_ARG_SHRINKAGE] = MEASURE_SHARE,
    [MUSLIN_ARG_EXTRA_SHARE] = MEASURE_SHARE,
    [MUSLIN_ARG_QUILTING_LOSS] = MEASURE_SHARE,
    [MUSLIN_ARG_WASTE] = MEASURE_SHARE,
    [MUSLIN_ARG_LENGTH] = MEASURE_LENGTH,
    [MUSLIN_ARG_OTHER_LENGTH] = MEASURE_LENGTH,
    [MUSLIN_ARG_GRID] = MEASURE_LENGTH,
    [MUSLIN_ARG_TOLERANCE] = MEASURE_LENGTH,
    [MUSLIN_ARG_SEAM_ALLOWANCE] = MEASURE_LENGTH,
    [MUSLIN_ARG_TAKE_UP] = MEASURE_LENGTH,
    [MUSLIN_ARG_FINISHED] = MEASURE_LENGTH,
    [MUSLIN_ARG_UNFINISHED] = MEASURE_LENGTH,
    [MUSLIN_ARG_CUT] = MEASURE_LENGTH,
    [MUSLIN_ARG_MEASURED] = MEASURE_LENGTH,
    [MUSLIN_ARG_SEAM_ERROR] = MEASURE_LENGTH,
    [MUSLIN_ARG_CUT_ERROR] = MEASURE_LENGTH,
    [MUSLIN_ARG_USABLE_WIDTH] = MEASURE_LENGTH,
    [MUSLIN_ARG_LABELLED_WIDTH] = MEASURE_LENGTH,
    [MUSLIN_ARG_SELVAGE] = MEASURE_LENGTH,
    [MUSLIN_ARG_EXTRA] = MEASURE_LENGTH,
    [MUSLIN_ARG_STEP] = MEASURE_LENGTH,
    [MUSLIN_ARG_CLOTH_LENGTH] = MEASURE_LENGTH,
    [MUSLIN_ARG_END_LOSS] = MEASURE_LENGTH,
    [MUSLIN_ARG_PINK_DEPTH] = MEASURE_LENGTH,
    [MUSLIN_ARG_STRIP_LENGTH] = MEASURE_LENGTH,
    [MUSLIN_ARG_STRIP_CUT] = MEASURE_LENGTH,
    [MUSLIN_ARG_SEGMENT_CUT] = MEASURE_LENGTH,
    [MUSLIN_ARG_END_TRIM] = MEASURE_LENGTH,
    [MUSLIN_ARG_RESQUARE_LOSS] = MEASURE_LENGTH,
    [MUSLIN_ARG_FOLD_CLEAR] = MEASURE_LENGTH,
    [MUSLIN_ARG_BLOCK_WIDTH] = MEASURE_LENGTH,
    [MUSLIN_ARG_BLOCK_HEIGHT] = MEASURE_LENGTH,
    [MUSLIN_ARG_QUILT_WIDTH] = MEASURE_LENGTH,
    [MUSLIN_ARG_QUILT_LENGTH] = MEASURE_LENGTH,
    [MUSLIN_ARG_BORDER_WIDTH] = MEASURE_LENGTH,
    [MUSLIN_ARG_JOIN_LOSS] = MEASURE_LENGTH,
    [MUSLIN_ARG_MITRE_EXTRA] = MEASURE_LENGTH,
    [MUSLIN_ARG_MARGIN] = MEASURE_LENGTH,
    [MUSLIN_ARG_FABRIC_WIDTH] = MEASURE_LENGTH,
    [MUSLIN_ARG_REPEAT] = MEASURE_LENGTH,
    [MUSLIN_ARG_BINDING_CUT] = MEASURE_LENGTH,
    [MUSLIN_ARG_BINDING_FRONT] = MEASURE_LENGTH,
    [MUSLIN_ARG_BINDING_BACK] = MEASURE_LENGTH,
    [MUSLIN_ARG_THICKNESS] = MEASURE_LENGTH,
    [MUSLIN_ARG_TURN_UNDER] = MEASURE_LENGTH,
    [MUSLIN_ARG_PERIMETER] = MEASURE_LENGTH,
    [MUSLIN_ARG_BIAS_LENGTH] = MEASURE_LENGTH,
    [MUSLIN_ARG_SLEEVE_DROP] = MEASURE_LENGTH,
    [MUSLIN_ARG_INSET] = MEASURE_LENGTH,
    [MUSLIN_ARG_CORNER_TRIANGLE] = MEASURE_LENGTH,
    [MUSLIN_ARG_LABEL] = MEASURE_LENGTH,
    [MUSLIN_ARG_SQUARE_TOLERANCE] = MEASURE_LENGTH,
    [MUSLIN_ARG_HALF_ADDITION] = MEASURE_LENGTH,
    [MUSLIN_ARG_QUARTER_ADDITION] = MEASURE_LENGTH,
    [MUSLIN_ARG_TRIM] = MEASURE_LENGTH,
    [MUSLIN_ARG_CORNER] = MEASURE_LENGTH,
    [MUSLIN_ARG_HEIGHT] = MEASURE_LENGTH,
    [MUSLIN_ARG_STITCH_LENGTH] = MEASURE_LENGTH,
    [MUSLIN_ARG_BOBBIN] = MEASURE_LENGTH,
    [MUSLIN_ARG_SPOOL] = MEASURE_LENGTH,
    [MUSLIN_ARG_SPACING] = MEASURE_LENGTH,
    [MUSLIN_ARG_OFFSET] = MEASURE_LENGTH,
    [MUSLIN_ARG_MATTRESS_WIDTH] = MEASURE_LENGTH,
    [MUSLIN_ARG_MATTRESS_LENGTH] = MEASURE_LENGTH,
    [MUSLIN_ARG_MATTRESS_DEPTH] = MEASURE_LENGTH,
    [MUSLIN_ARG_FLOOR_HEIGHT] = MEASURE_LENGTH,
    [MUSLIN_ARG_DROP] = MEASURE_LENGTH,
    [MUSLIN_ARG_PILLOW_TUCK] = MEASURE_LENGTH,
    [MUSLIN_ARG_SASH_WIDTH] = MEASURE_LENGTH,
    [MUSLIN_ARG_TRIANGLE_HEIGHT] = MEASURE_LENGTH,
    [MUSLIN_ARG_CENTRE_WIDTH] = MEASURE_LENGTH,
    [MUSLIN_ARG_CENTRE_HEIGHT] = MEASURE_LENGTH,
    [MUSLIN_ARG_LOG_WIDTH] = MEASURE_LENGTH,
    [MUSLIN_ARG_UNIT_REPEAT] = MEASURE_LENGTH,
    [MUSLIN_ARG_COPING_MOST] = MEASURE_LENGTH,
    [MUSLIN_ARG_SPACER_LEAST] = MEASURE_LENGTH,
    [MUSLIN_ARG_DIAGONAL] = MEASURE_LENGTH,
    [MUSLIN_ARG_SET_OFF] = MEASURE_LENGTH,
    [MUSLIN_ARG_TRIM_ROOM] = MEASURE_LENGTH,
    [MUSLIN_ARG_PLACE] = MEASURE_LENGTH,
    [MUSLIN_ARG_CENTRE] = MEASURE_LENGTH,
    [MUSLIN_ARG_RADIUS] = MEASURE_LENGTH,
    [MUSLIN_ARG_VALUE] = MEASURE_LENGTH,
    [MUSLIN_ARG_FABRIC] = MEASURE_ID,
    [MUSLIN_ARG_NODE] = MEASURE_ID,
    [MUSLIN_ARG_MEASURE] = MEASURE_ID,
    [MUSLIN_ARG_EASE] = MEASURE_LENGTH,
    [MUSLIN_ARG_SUM] = MEASURE_LENGTH,
    [MUSLIN_ARG_RUN_IN] = MEASURE_LENGTH,
    [MUSLIN_ARG_STRAIGHTENING] = MEASURE_LENGTH,
    [MUSLIN_ARG_STOCK_SIDE] = MEASURE_LENGTH,
    [MUSLIN_ARG_LEAST_SIDE] = MEASURE_LENGTH,
    [MUSLIN_ARG_PIECE_WIDTH] = MEASURE_LENGTH,
    [MUSLIN_ARG_PIECE_LENGTH] = MEASURE_LENGTH,
};

static enum measure measure_of(int32_t argument)
{
    return (enum measure)measures[argument];
}

/* Whole inches and a fraction in lowest terms. */
static void put_inches(struct msl_text *text, uint64_t in_64ths)
{
    uint64_t whole = in_64ths / 64;
    uint64_t part = in_64ths % 64;
    uint64_t below = 64;
    while (part != 0 && part % 2 == 0) {
        part /= 2;
        below /= 2;
    }
    if (whole != 0 || part == 0)
        msl_put_unsigned(text, whole);
    if (part != 0) {
        msl_put(text, whole != 0 ? " " : "");
        msl_put_unsigned(text, part);
        msl_put(text, "/");
        msl_put_unsigned(text, below);
    }
    msl_put(text, " in");
}

/* Four decimals of an inch, down: enough to tell two sizes apart, not to cut by. */
static void put_about(struct msl_text *text, uint64_t ticks)
{
    uint64_t decimals = ticks % MUSLIN_TICKS_PER_INCH * 10000 / MUSLIN_TICKS_PER_INCH;
    msl_put_unsigned(text, ticks / MUSLIN_TICKS_PER_INCH);
    msl_put(text, ".");
    for (uint64_t place = 1000; place != 0; place /= 10)
        msl_put_unsigned(text, decimals / place % 10);
    msl_put(text, " in");
}

/* Tenths of a millimetre. */
static void put_millimetres(struct msl_text *text, uint64_t tenths)
{
    msl_put_unsigned(text, tenths / 10);
    if (tenths % 10 != 0) {
        msl_put(text, ".");
        msl_put_unsigned(text, tenths % 10);
    }
    msl_put(text, " mm");
}

static uint64_t magnitude(muslin_len value)
{
    return value < 0 ? (uint64_t)0 - (uint64_t)value : (uint64_t)value;
}

static int is_fraction_of_an_inch(uint64_t ticks)
{
    return ticks % (MUSLIN_TICKS_PER_INCH / 64) == 0;
}

/* Limits of the library, large powers of two, only happen to be whole tenths of a millimetre. */
static int is_tenths_of_a_millimetre(uint64_t ticks)
{
    int is_own_limit = ticks >= MUSLIN_SIZE_MAX / 1024 && ticks <= MUSLIN_SIZE_MAX && (ticks & (ticks - 1)) == 0;
    return ticks % (MUSLIN_TICKS_PER_MM / 10) == 0 && !is_own_limit;
}

/* A length as someone would say it: in 64ths of an inch where it is one, else in tenths of a millimetre where it is
 * one, else in decimals. */
static void put_length(struct msl_text *text, muslin_len value)
{
    const uint64_t per_64th = MUSLIN_TICKS_PER_INCH / 64;
    const uint64_t per_tenth = MUSLIN_TICKS_PER_MM / 10;
    uint64_t ticks = magnitude(value);
    int is_fraction = is_fraction_of_an_inch(ticks);
    int is_metric = is_tenths_of_a_millimetre(ticks);
    if (!is_fraction && !is_metric)
        msl_put(text, "about ");
    if (value < 0)
        msl_put(text, "-");
    if (is_fraction)
        put_inches(text, ticks / per_64th);
    else if (is_metric)
        put_millimetres(text, ticks / per_tenth);
    else
        put_about(text, ticks);
}

/* Of an id only its number says something to people; it stands in the low 32 bits (quilt.h). */
static void put_id(struct msl_text *text, int64_t id)
{
    int is_id = id > UINT32_MAX;
    msl_put(text, is_id ? "number " : "");
    msl_put_signed(text, is_id ? id & UINT32_MAX : id);
}

static void put_value(struct msl_text *text, int32_t argument, int64_t value)
{
    enum measure measure = measure_of(argument);
    if (measure == MEASURE_LENGTH) {
        put_length(text, value);
        return;
    }
    if (measure == MEASURE_ID) {
        put_id(text, value);
        return;
    }
    msl_put_signed(text, value);
    if (measure == MEASURE_SHARE)
        msl_put(text, " parts per million");
}

/* Whether a value and its limit are both told in millimetres: where both are round there, and not both in inches. */
static int are_both_metric(const struct muslin_problem *p)
{
    uint64_t value = magnitude(p->value);
    uint64_t limit = magnitude(p->limit);
    int are_fractions = is_fraction_of_an_inch(value) && is_fraction_of_an_inch(limit);
    return measure_of(p->argument) == MEASURE_LENGTH && !are_fractions && is_tenths_of_a_millimetre(value) &&
           is_tenths_of_a_millimetre(limit);
}

static void put_tenths(struct msl_text *text, muslin_len value)
{
    if (value < 0)
        msl_put(text, "-");
    put_millimetres(text, magnitude(value) / (MUSLIN_TICKS_PER_MM / 10));
}

/* A limit that is no round number of millimetres is told in hundredths where the value is in millimetres, if need be to
 * the safe side. */
static void put_limit_value(struct msl_text *text, const struct muslin_problem *p)
{
    uint64_t value = magnitude(p->value);
    uint64_t limit = magnitude(p->limit);
    int value_is_metric = is_tenths_of_a_millimetre(value) && !is_fraction_of_an_inch(value);
    if (are_both_metric(p)) {
        put_tenths(text, p->limit);
        return;
    }
    if (measure_of(p->argument) != MEASURE_LENGTH || !value_is_metric) {
        put_value(text, p->argument, p->limit);
        return;
    }
    uint64_t upwards = value < limit ? MUSLIN_TICKS_PER_MM - 1 : 0;
    uint64_t hundredths = (limit % MUSLIN_TICKS_PER_MM * 100 + upwards) / MUSLIN_TICKS_PER_MM;
    if (limit * 100 % MUSLIN_TICKS_PER_MM != 0)
        msl_put(text, "about ");
    msl_put(text, p->limit < 0 ? "-" : "");
    msl_put_unsigned(text, limit / MUSLIN_TICKS_PER_MM + hundredths / 100);
    msl_put(text, ".");
    msl_put_unsigned(text, hundredths / 10 % 10);
    msl_put_unsigned(text, hundredths % 10);
    msl_put(text, " mm");
}

/* What must be 0 because of another member: why. Returns 0 where a limit of 0 needs no reason. */
static int put_why_none(struct msl_text *text, int32_t argument)
{
    switch (argument) {
    case MUSLIN_ARG_USABLE_WIDTH:
        msl_put(text, ", but must be 0 with stock, which has widths of its own.");
        return 1;
    case MUSLIN_ARG_RESQUARE_EVERY:
        msl_put(text, ", but must be 0 where re-squaring loses nothing.");
        return 1;
    case MUSLIN_ARG_RUN_IN:
        msl_put(text, ", but must be 0 of a piece that is not sloped.");
        return 1;
    case MUSLIN_ARG_JOIN_LOSS:
        msl_put(text, ", but must be 0 of a piece that is not joined.");
        return 1;
    default:
        return 0;
    }
}

/* A least of one tick is better said as more than nothing. */
static void put_range(struct msl_text *text, const struct muslin_problem *p)
{
    if (p->limit == 1 && measure_of(p->argument) == MEASURE_LENGTH) {
        msl_put(text, ", but must be more than 0 in.");
        return;
    }
    if (p->limit == 0 && measure_of(p->argument) == MEASURE_ID) {
        msl_put(text, ", but none is taken here.");
        return;
    }
    if (p->limit == 0 && p->value > 0 && put_why_none(text, p->argument))
        return;
    msl_put(text, p->value < p->limit ? ", but must be at least " : ", but must be at most ");
    put_limit_value(text, p);
    msl_put(text, ".");
}

/* ", but <words> <limit>." */
static void put_limit(struct msl_text *text, const struct muslin_problem *p, const char *words)
{
    msl_put(text, ", but ");
    msl_put(text, words);
    msl_put(text, " ");
    put_limit_value(text, p);
    msl_put(text, ".");
}

static void put_count_limit(struct msl_text *text, const struct muslin_problem *p, const char *words)
{
    msl_put(text, words);
    msl_put_signed(text, p->limit);
    msl_put(text, ".");
}

static void put_reason(struct msl_text *text, const struct muslin_problem *p)
{
    int no_least = p->status == MUSLIN_ERR_NO_FIT && p->limit == 0;
    int no_seam = p->status == MUSLIN_ERR_SEAM_TOO_WIDE && p->argument == MUSLIN_ARG_CORNER_ROW;
    if (p->status == MUSLIN_ERR_METHOD && p->argument == MUSLIN_ARG_STRIP_PIECING) {
        msl_put(text, ", but its pieces are not all patches of one length: no strip set makes them.");
        return;
    }
    if (p->status == MUSLIN_ERR_CHOICE && p->argument == MUSLIN_ARG_STOCK_ROWS) {
        msl_put(text, ", but only plans from a bolt have an answer to this.");
        return;
    }
    switch (no_least || no_seam ? MUSLIN_OK : p->status) {
    case MUSLIN_ERR_RANGE:
        put_range(text, p);
        return;
    case MUSLIN_ERR_SEAM_TOO_WIDE:
        put_limit(text, p, p->argument == MUSLIN_ARG_MEASURED ? "must be at least" : "its seams take");
        return;
    case MUSLIN_ERR_NOT_SQUARE:
        put_limit(text, p, "to be square it must be");
        return;
    case MUSLIN_ERR_CUSTOMARY:
        put_limit(text, p, "the geometry needs at least");
        return;
    case MUSLIN_ERR_NOT_ENOUGH:
        put_limit(text, p, "what is in hand gives only");
        return;
    case MUSLIN_ERR_NO_YIELD:
    case MUSLIN_ERR_NO_FIT:
        put_limit(text, p, p->value <= p->limit ? "what is needed here is at least" : "there is room for at most");
        return;
    case MUSLIN_ERR_BUFFER:
        put_count_limit(text, p, ", but must be at least ");
        return;
    case MUSLIN_ERR_CHOICE:
        put_count_limit(text, p, ", which is none of the choices; see the named constants, up to ");
        return;
    case MUSLIN_ERR_INDEX:
        put_count_limit(text, p, ", but the last one is ");
        return;
    case MUSLIN_ERR_STRUCT_SIZE:
        put_count_limit(text, p, p->value < p->limit ? ", but must be the sizeof of its struct, at least "
                                                     : ", but must be the sizeof of its struct, at most ");
        return;
    case MUSLIN_ERR_FLAGS:
        put_count_limit(text, p, ", but the flags known here add up to ");
        return;
    default:
        msl_put(text, ". ");
        msl_put(text, muslin_status_sentence(p->status));
    }
}

/* How much of a text is quoted, so that the longest sentence still fits behind it. */
enum { QUOTE_MAX = 24 };

static int is_printable_ascii(char c)
{
    return c >= ' ' && c <= '~';
}

/* The first bytes of what is wrong, in quotes; nothing where that would not be plain ASCII. */
static void put_quote(struct msl_text *text, const char *words, int64_t at, int64_t length)
{
    int64_t shown = msl_lesser(length, QUOTE_MAX);
    for (int64_t i = 0; i < shown; i++)
        if (!is_printable_ascii(words[at + i]))
            return;
    if (shown == 0)
        return;
    msl_put(text, ", \"");
    for (int64_t i = 0; i < shown; i++) {
        const char letter[] = { words[at + i], 0 };
        msl_put(text, letter);
    }
    msl_put(text, shown < length ? "...\"" : "\"");
}

static void put_text_sentence(struct msl_text *text, const struct muslin_problem *p, const char *words)
{
    msl_put(text, "At byte ");
    msl_put_signed(text, p->at);
    msl_put(text, " of the text");
    put_quote(text, words, p->at, p->bytes);
    msl_put(text, ": ");
    msl_put(text, muslin_status_sentence(p->status));
}

/* Arguments whose names are plural. */
static int is_plural(int32_t argument)
{
    return argument == MUSLIN_ARG_ROWS || argument == MUSLIN_ARG_SPARE_PIECES || argument == MUSLIN_ARG_RESQUARE_EVERY;
}

/* Of a struct that is wrong, what of it the value is. */
static const char *part_of_struct(const struct muslin_problem *p)
{
    switch (p->status) {
    case MUSLIN_ERR_STRUCT_SIZE:
        return p->argument == MUSLIN_ARG_ROW_SIZE ? "" : "size of the ";
    case MUSLIN_ERR_STRUCT_TAIL:
        return p->limit == 0 ? "padding of the " : "size of the ";
    case MUSLIN_ERR_FLAGS:
        return "flags of the ";
    default:
        return "";
    }
}

/* What the value is of. */
static void put_subject(struct msl_text *text, const struct muslin_problem *p)
{
    const char *part = part_of_struct(p);
    msl_put(text, part);
    msl_put(text, muslin_argument_words(p->argument));
    msl_put(text, p->status == MUSLIN_ERR_FLAGS || (is_plural(p->argument) && *part == 0) ? " are " : " is ");
}

/* `at` tells the two apart: the steps that a search needs, and the results that it found before it was ended. */
static void put_work(struct msl_text *text, const struct muslin_problem *p)
{
    int parts = p->argument == MUSLIN_ARG_MOST;
    if (p->argument == MUSLIN_ARG_PIECES) {
        put_subject(text, p);
        msl_put_signed(text, p->value);
        msl_put(text, ", but plans were found only for ");
        msl_put_signed(text, p->limit);
        msl_put(text, ", and it was not shown that there are none for more.");
        return;
    }
    int steps = p->at == 0;
    msl_put(text, parts ? "The quilt would hold " : steps ? "The search needs " : "The search finds at least ");
    msl_put_signed(text, p->value);
    msl_put(text, parts ? " parts, but the " : steps ? " steps, but the " : " results, but the ");
    msl_put(text, muslin_argument_words(p->argument));
    msl_put(text, " is ");
    msl_put_signed(text, p->limit);
    msl_put(text, ".");
}

/* An id that must be given, and was not. */
static int is_missing_id(const struct muslin_problem *p)
{
    int none_fits = p->status == MUSLIN_ERR_RANGE || p->status == MUSLIN_ERR_FOREIGN;
    return none_fits && measure_of(p->argument) == MEASURE_ID && p->value == 0;
}

/* `words` is the text that a failure in a text is about. */
static void put_sentence(struct muslin_problem *p, const char *words)
{
    struct msl_text text = { p->text, sizeof p->text, 0 };
    if (p->argument == MUSLIN_ARG_TEXT && p->status != MUSLIN_ERR_NULL) {
        put_text_sentence(&text, p, words);
    } else if (p->status == MUSLIN_ERR_NULL) {
        msl_put(&text, muslin_argument_words(p->argument));
        msl_put(&text, ": ");
        msl_put(&text, muslin_status_sentence(p->status));
    } else if (p->status == MUSLIN_ERR_WORK_LIMIT) {
        put_work(&text, p);
    } else if (p->status == MUSLIN_ERR_STOPPED || p->status == MUSLIN_ERR_NO_MEMORY) {
        msl_put(&text, muslin_status_sentence(p->status));
    } else if (is_missing_id(p)) {
        put_subject(&text, p);
        msl_put(&text, "missing, but one is needed here.");
    } else {
        put_subject(&text, p);
        if (are_both_metric(p))
            put_tenths(&text, p->value);
        else
            put_value(&text, p->argument, p->value);
        if (p->argument == MUSLIN_ARG_NAME && p->status == MUSLIN_ERR_RANGE)
            msl_put(&text, " bytes");
        put_reason(&text, p);
    }
    msl_put_end(&text);
    if (p->text[0] >= 'a') /* the names of arguments begin with small letters */
        p->text[0] = (char)(p->text[0] - 'a' + 'A');
}

muslin_status muslin_problem_init(struct muslin_problem *problem, uint32_t size)
{
    static const struct muslin_problem initial = MUSLIN_PROBLEM_INIT;
    return msl_init_struct(problem, size, &initial, (uint32_t)sizeof initial, (uint32_t)sizeof initial);
}

struct msl_check msl_check_start(struct muslin_problem *problem)
{
    struct msl_check check = { MUSLIN_OK, NULL, 0 };
    if (problem == NULL)
        return check;
    uint32_t size = problem->size;
    if (size < sizeof(struct muslin_problem) || size > MSL_STRUCT_SIZE_MAX) {
        check.status = MUSLIN_ERR_STRUCT_SIZE;
        return check;
    }
    check.problem = problem;
    return check;
}

static muslin_status fail(struct msl_check *check, struct muslin_problem *found, const char *words)
{
    if (check->status != MUSLIN_OK)
        return check->status;
    check->status = found->status;
    if (check->problem == NULL)
        return check->status;
    found->at = check->at;
    put_sentence(found, words);
    msl_write_struct(check->problem, found, (uint32_t)sizeof *found);
    return check->status;
}

muslin_status msl_fail(struct msl_check *check, muslin_status status, int32_t argument, int64_t value, int64_t limit)
{
    struct muslin_problem found = { 0 };
    found.status = status;
    found.argument = argument;
    found.value = value;
    found.limit = limit;
    return fail(check, &found, NULL);
}

muslin_status msl_fail_text(struct msl_check *check, muslin_status status, const char *text, int64_t length)
{
    struct muslin_problem found = { 0 };
    found.status = status;
    found.argument = MUSLIN_ARG_TEXT;
    found.bytes = length;
    return fail(check, &found, text);
}

void msl_want_size(struct msl_check *check, int32_t argument, muslin_len value)
{
    msl_want_between(check, argument, value, 0, MUSLIN_SIZE_MAX);
}

void msl_want_some_size(struct msl_check *check, int32_t argument, muslin_len value)
{
    msl_want_between(check, argument, value, 1, MUSLIN_SIZE_MAX);
}

void msl_want_count(struct msl_check *check, int32_t argument, int64_t value)
{
    msl_want_between(check, argument, value, 0, MUSLIN_COUNT_MAX);
}

void msl_want_some_count(struct msl_check *check, int32_t argument, int64_t value)
{
    msl_want_between(check, argument, value, 1, MUSLIN_COUNT_MAX);
}

void msl_want_seam(struct msl_check *check, int32_t argument, muslin_len value)
{
    msl_want_between(check, argument, value, 0, MUSLIN_SIZE_MAX / 8);
}

void msl_want_choice(struct msl_check *check, int32_t argument, int32_t value, int32_t first, int32_t last)
{
    if (value < first || value > last)
        msl_fail(check, MUSLIN_ERR_CHOICE, argument, value, last);
}

void msl_want_decimal_sign(struct msl_check *check, int32_t sign)
{
    if (sign != '.' && sign != ',')
        msl_fail(check, MUSLIN_ERR_CHOICE, MUSLIN_ARG_DECIMAL_SIGN, sign, '.');
}

void msl_want_pad(struct msl_check *check, int32_t pad)
{
    if (pad != 0)
        msl_fail(check, MUSLIN_ERR_STRUCT_TAIL, MUSLIN_ARG_SPEC, pad, 0);
}
