/* test_base.c - version, names and sentences, problems, sized structs, the allocator.
 *
 * SPDX-License-Identifier: MIT */
#include <limits.h>
#include <stdio.h>

#include "../../lib/inside.h"
#include "failing_allocator.h"
#include "struct_rules.h"

/* ---- version --------------------------------------------------------------------------------------------------- */

START_TEST(the_running_version_is_that_of_the_headers)
{
    ck_assert_uint_eq(muslin_version(), MUSLIN_VERSION);
}
END_TEST

START_TEST(the_version_number_is_made_of_its_three_parts)
{
    ck_assert_int_eq(MUSLIN_VERSION,
                     MUSLIN_VERSION_MAJOR * 1000000 + MUSLIN_VERSION_MINOR * 1000 + MUSLIN_VERSION_PATCH);
}
END_TEST

START_TEST(the_version_text_spells_the_same_three_numbers)
{
    char text[32];
    snprintf(text, sizeof text, "%d.%d.%d", MUSLIN_VERSION_MAJOR, MUSLIN_VERSION_MINOR, MUSLIN_VERSION_PATCH);
    ck_assert_str_eq(muslin_version_text(), text);
}
END_TEST

/* ---- numbers --------------------------------------------------------------------------------------------------- */

START_TEST(a_64th_of_an_inch_and_a_tenth_of_a_millimetre_are_whole_ticks)
{
    /* 1 in = 25.4 mm exactly: NIST Special Publication 811, Appendix B.8 (2008). */
    ck_assert_int_eq(MUSLIN_TICKS_PER_INCH % 64, 0);
    ck_assert_int_eq(MUSLIN_TICKS_PER_MM % 10, 0);
    ck_assert_int_eq(MUSLIN_TICKS_PER_INCH * 10, MUSLIN_TICKS_PER_MM * 254);
}
END_TEST

START_TEST(the_limits_are_the_powers_of_two_that_the_header_names)
{
    ck_assert_int_eq(MUSLIN_LENGTH_MAX, (INT64_C(1) << 62) - 1);
    ck_assert_int_eq(MUSLIN_SIZE_MAX, INT64_C(1) << 30);
    ck_assert_int_eq(MUSLIN_COUNT_MAX, (INT64_C(1) << 31) - 1);
    ck_assert_int_eq(MUSLIN_PPM, 1000000);
}
END_TEST

/* ---- statuses -------------------------------------------------------------------------------------------------- */

#define STATUS(name, number) { MUSLIN_##name, number, #name }

static const struct status_row {
    int32_t status;
    int32_t number;
    const char *name;
} statuses[] = {
    STATUS(OK, 0),
    STATUS(ERR_NULL, 1),
    STATUS(ERR_STRUCT_SIZE, 2),
    STATUS(ERR_STRUCT_TAIL, 3),
    STATUS(ERR_FLAGS, 4),
    STATUS(ERR_CHOICE, 5),
    STATUS(ERR_RANGE, 6),
    STATUS(ERR_OVERFLOW, 7),
    STATUS(ERR_DIVIDE_BY_ZERO, 8),
    STATUS(ERR_BUFFER, 9),
    STATUS(ERR_INDEX, 10),
    STATUS(ERR_TEXT_EMPTY, 11),
    STATUS(ERR_TEXT_SYNTAX, 12),
    STATUS(ERR_TEXT_TRAILING, 13),
    STATUS(ERR_TEXT_UNIT, 14),
    STATUS(ERR_TEXT_DECIMAL, 15),
    STATUS(ERR_TEXT_ZERO_DENOMINATOR, 16),
    STATUS(ERR_TEXT_ENCODING, 17),
    STATUS(ERR_SEAM_TOO_WIDE, 18),
    STATUS(ERR_NOT_SQUARE, 19),
    STATUS(ERR_NO_YIELD, 20),
    STATUS(ERR_NOT_ENOUGH, 21),
    STATUS(ERR_NO_FIT, 22),
    STATUS(ERR_NO_MEMORY, 23),
    STATUS(ERR_CUSTOMARY, 24),
    STATUS(ERR_METHOD, 25),
    STATUS(ERR_SHAPE, 26),
    STATUS(ERR_NOT_TILED, 27),
    STATUS(ERR_WORK_LIMIT, 28),
    STATUS(ERR_FOREIGN, 29),
    STATUS(ERR_STOPPED, 30),
    STATUS(ERR_TOO_MANY, 31),
};
enum { STATUSES = sizeof statuses / sizeof statuses[0] };

START_TEST(every_status_has_its_number_and_its_name)
{
    for (int32_t i = 0; i < STATUSES; i++) {
        ck_assert_int_eq(statuses[i].status, i);
        ck_assert_int_eq(statuses[i].number, i);
        ck_assert_str_eq(muslin_status_name(i), statuses[i].name);
    }
}
END_TEST

START_TEST(the_count_of_statuses_is_that_of_the_list)
{
    ck_assert_int_eq(muslin_status_count(), STATUSES);
}
END_TEST

/* One line of printable ASCII that begins with a capital and ends with a full stop. */
static int is_sentence(const char *text)
{
    size_t length = strlen(text);
    for (size_t i = 0; i < length; i++)
        if (text[i] < ' ' || text[i] > '~')
            return 0;
    return length > 10 && text[0] >= 'A' && text[0] <= 'Z' && text[length - 1] == '.';
}

START_TEST(every_status_has_a_sentence_of_its_own)
{
    for (int32_t i = 0; i < muslin_status_count(); i++) {
        ck_assert_msg(is_sentence(muslin_status_sentence(i)), "status %d", i);
        for (int32_t before = 0; before < i; before++)
            ck_assert_str_ne(muslin_status_sentence(i), muslin_status_sentence(before));
    }
}
END_TEST

START_TEST(a_number_that_is_no_status_is_called_unknown)
{
    const int32_t outside[] = { -1, STATUSES, INT32_MIN, INT32_MAX };
    for (size_t i = 0; i < 4; i++) {
        ck_assert_str_eq(muslin_status_name(outside[i]), "UNKNOWN");
        ck_assert(is_sentence(muslin_status_sentence(outside[i])));
        for (int32_t status = 0; status < STATUSES; status++)
            ck_assert_str_ne(muslin_status_sentence(outside[i]), muslin_status_sentence(status));
    }
}
END_TEST

/* ---- arguments and warnings ------------------------------------------------------------------------------------ */

START_TEST(every_argument_has_a_name_of_its_own)
{
    for (int32_t i = 0; i < muslin_argument_count(); i++) {
        ck_assert_uint_gt(strlen(muslin_argument_words(i)), 3);
        for (int32_t before = 0; before < i; before++)
            ck_assert_str_ne(muslin_argument_words(i), muslin_argument_words(before));
    }
}
END_TEST

START_TEST(arguments_are_called_by_the_words_of_the_trade)
{
    /* Some of all parts of the list, so that a row left out or put in the wrong place shows. */
    ck_assert_str_eq(muslin_argument_words(MUSLIN_ARG_NONE), "nothing");
    ck_assert_str_eq(muslin_argument_words(MUSLIN_ARG_GRID), "grid");
    ck_assert_str_eq(muslin_argument_words(MUSLIN_ARG_SEAM_ALLOWANCE), "seam allowance");
    ck_assert_str_eq(muslin_argument_words(MUSLIN_ARG_PIECES), "number of pieces");
    ck_assert_str_eq(muslin_argument_words(MUSLIN_ARG_SHRINKAGE), "shrinkage");
    ck_assert_str_eq(muslin_argument_words(MUSLIN_ARG_STRIPS_PER_BUNDLE), "strips per bundle");
    ck_assert_str_eq(muslin_argument_words(MUSLIN_ARG_QUILT_ROWS), "rows of blocks");
    ck_assert_str_eq(muslin_argument_words(MUSLIN_ARG_MARGIN), "margin");
    ck_assert_str_eq(muslin_argument_words(MUSLIN_ARG_PERIMETER), "perimeter");
    ck_assert_str_eq(muslin_argument_words(MUSLIN_ARG_IN_HAND), "strips in hand");
    ck_assert_str_eq(muslin_argument_words(MUSLIN_ARG_STITCH_LENGTH), "stitch length");
    ck_assert_str_eq(muslin_argument_words(MUSLIN_ARG_PRICE_PER), "what the price is for");
}
END_TEST

START_TEST(a_number_that_is_no_argument_is_called_unknown)
{
    ck_assert_str_eq(muslin_argument_words(-1), "unknown argument");
    ck_assert_str_eq(muslin_argument_words(muslin_argument_count()), "unknown argument");
    ck_assert_str_eq(muslin_argument_words(INT32_MIN), "unknown argument");
    ck_assert_str_eq(muslin_argument_words(INT32_MAX), "unknown argument");
}
END_TEST

START_TEST(every_warning_has_a_sentence_of_its_own)
{
    const char *seen[32];
    for (int bit = 0; bit <= 15; bit++) {
        seen[bit] = muslin_warning_sentence(UINT32_C(1) << bit);
        ck_assert_msg(is_sentence(seen[bit]), "warning bit %d", bit);
        for (int before = 0; before < bit; before++)
            ck_assert_str_ne(seen[bit], seen[before]);
    }
    ck_assert_uint_eq(MUSLIN_WARN_MIXED_WIDTHS, 1u << 11);
    ck_assert_uint_eq(MUSLIN_WARN_LONGER_THAN_WIDTH, 1u << 15);
    ck_assert_str_eq(muslin_warning_sentence(MUSLIN_WARN_LONGER_THAN_WIDTH),
                     "A piece is longer than its fabric is wide: join strips, or cut it along the cloth.");
}
END_TEST

START_TEST(what_is_not_one_known_warning_has_no_sentence)
{
    ck_assert_str_eq(muslin_warning_sentence(0), "");
    ck_assert_str_eq(muslin_warning_sentence(MUSLIN_WARN_NO_SLACK | MUSLIN_WARN_MIXED_WASH), "");
    ck_assert_str_eq(muslin_warning_sentence(UINT32_C(1) << 31), "");
    ck_assert_str_eq(muslin_warning_sentence(UINT32_MAX), "");
}
END_TEST

START_TEST(warnings_are_counted_and_named_like_their_constants)
{
    ck_assert_int_eq(muslin_warning_count(), 16);
    ck_assert_str_eq(muslin_warning_name(MUSLIN_WARN_NO_SLACK), "NO_SLACK");
    ck_assert_str_eq(muslin_warning_name(MUSLIN_WARN_SET_REPEATS), "SET_REPEATS");
    ck_assert_str_eq(muslin_warning_name(MUSLIN_WARN_BIAS_EDGE), "BIAS_EDGE");
    ck_assert_str_eq(muslin_warning_name(MUSLIN_WARN_LONGER_THAN_WIDTH), "LONGER_THAN_WIDTH");
    for (int32_t bit = 0; bit < 32; bit++) {
        int known = strcmp(muslin_warning_name(UINT32_C(1) << bit), "UNKNOWN") != 0;
        ck_assert_int_eq(known, bit < muslin_warning_count());
        ck_assert_int_eq(known, muslin_warning_sentence(UINT32_C(1) << bit)[0] != 0);
    }
    ck_assert_str_eq(muslin_warning_name(0), "UNKNOWN");
    ck_assert_str_eq(muslin_warning_name(MUSLIN_WARN_NO_SLACK | MUSLIN_WARN_MIXED_WASH), "UNKNOWN");
}
END_TEST

/* ---- constants ------------------------------------------------------------------------------------------------- */

/* The value of the constant of this name, which is there once. */
static int64_t constant(const char *name)
{
    int32_t found = -1;
    for (int32_t i = 0; i < muslin_constant_count(); i++)
        if (strcmp(muslin_constant_name(i), name) == 0) {
            ck_assert_int_eq(found, -1);
            found = i;
        }
    ck_assert_msg(found >= 0, "no constant %s", name);
    return muslin_constant_value(found);
}

START_TEST(constants_have_the_values_of_the_headers)
{
    ck_assert_int_eq(constant("VERSION_MAJOR"), MUSLIN_VERSION_MAJOR);
    ck_assert_int_eq(constant("VERSION"), MUSLIN_VERSION);
    ck_assert_int_eq(constant("LENGTH_MAX"), MUSLIN_LENGTH_MAX);
    ck_assert_int_eq(constant("PPM"), 1000000);
    ck_assert_int_eq(constant("FORMAT_BARE"), MUSLIN_FORMAT_BARE);
    ck_assert_int_eq(constant("SHAPE_OUTLINE"), -1);
    ck_assert_int_eq(constant("MONEY_MAX"), MUSLIN_MONEY_MAX);
    ck_assert_int_eq(constant("CUTPLAN_BY_PRIORITY"), MUSLIN_CUTPLAN_BY_PRIORITY);
}
END_TEST

START_TEST(constants_have_names_of_their_own_and_none_lies_beyond_the_list)
{
    for (int32_t i = 0; i < muslin_constant_count(); i++)
        constant(muslin_constant_name(i));
    const int32_t outside[] = { -1, muslin_constant_count(), INT32_MIN, INT32_MAX };
    for (size_t i = 0; i < 4; i++) {
        ck_assert_str_eq(muslin_constant_name(outside[i]), "");
        ck_assert_int_eq(muslin_constant_value(outside[i]), 0);
    }
}
END_TEST

/* ---- problems -------------------------------------------------------------------------------------------------- */

/* A seam allowance out of range: the shortest way to a problem. */
static muslin_status provoke(muslin_len allowance, struct muslin_problem *problem)
{
    struct muslin_seam_spec seam = MUSLIN_SEAM_SPEC_INIT;
    muslin_len out;
    seam.allowance = allowance;
    return muslin_seam_cut_from_finished(WHOLE_IN(1), &seam, &out, problem);
}

START_TEST(a_problem_names_status_argument_value_and_limit)
{
    struct muslin_problem problem = PROBLEM;
    ck_status(provoke(-127, &problem), MUSLIN_ERR_RANGE);
    ck_assert_uint_eq(problem.size, sizeof problem);
    ck_assert_uint_eq(problem.flags, 0);
    ck_assert_int_eq(problem.status, MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_SEAM_ALLOWANCE);
    ck_assert_int_eq(problem.at, 0);
    ck_assert_int_eq(problem.bytes, 0);
    ck_assert_int_eq(problem.value, -127);
    ck_assert_int_eq(problem.limit, 0);
}
END_TEST

START_TEST(a_sentence_shows_lengths_in_inches)
{
    const struct {
        muslin_len allowance;
        const char *shown;
    } rows[] = {
        { -1 * 8128 / 64, "-1/64 in" },  { -3 * 8128 / 8, "-3/8 in" },
        { -5 * 8128 / 2, "-2 1/2 in" },  { -12 * 8128, "-12 in" },
        { -32, "-0.1 mm" },              { -320 * 65, "-65 mm" },
        /* 1 / 8128 = 0.00012..., 12345 / 8128 = 1.51882... */
        { -1, "about -0.0001 in" },      { -12345, "about -1.5188 in" },
        /* 8127 / 8128 = 0.99987..., 7319 / 8128 = 0.90046... */
        { -8127, "about -0.9998 in" },   { -7319, "about -0.9004 in" },
        /* 2 to the power 63, over 320 ticks to the millimetre */
        { INT64_MIN, "-28823037615171174.4 mm" },
    };
    for (size_t i = 0; i < sizeof rows / sizeof rows[0]; i++) {
        struct muslin_problem problem = PROBLEM;
        char sentence[200];
        snprintf(sentence, sizeof sentence, "Seam allowance is %s, but must be at least 0 %s.", rows[i].shown,
                 strstr(rows[i].shown, "mm") != NULL ? "mm" : "in");
        ck_status(provoke(rows[i].allowance, &problem), MUSLIN_ERR_RANGE);
        ck_assert_str_eq(problem.text, sentence);
    }
}
END_TEST

START_TEST(a_sentence_shows_counts_as_numbers)
{
    struct muslin_problem problem = PROBLEM;
    struct muslin_seam_spec seam = MUSLIN_SEAM_SPEC_INIT;
    struct muslin_sewn_row out = { .size = sizeof out };
    ck_status(muslin_seam_row_equal(WHOLE_IN(2), MUSLIN_COUNT_MAX + 1, &seam, &out, &problem), MUSLIN_ERR_RANGE);
    ck_assert_str_eq(problem.text, "Number of pieces is 2147483648, but must be at most 2147483647.");
}
END_TEST

START_TEST(a_sentence_shows_shares_in_parts_per_million)
{
    struct muslin_problem problem = PROBLEM;
    muslin_len usable = 77;
    ck_status(muslin_fabric_usable_width(WHOLE_IN(44), 0, -1, &usable, &problem), MUSLIN_ERR_RANGE);
    ck_assert_str_eq(problem.text,
                     "Shrinkage is -1 parts per million, but must be at least 0 parts per million.");
}
END_TEST

/* What the wording must hold, whatever else it says: what is wrong, the value, the limit. */
static void ck_says(const struct muslin_problem *problem, muslin_status status, const char *what, const char *value,
                    const char *limit)
{
    ck_assert_int_eq(problem->status, status);
    ck_assert_ptr_nonnull(strstr(problem->text, what));
    ck_assert_ptr_nonnull(strstr(problem->text, value));
    ck_assert_ptr_nonnull(strstr(problem->text, limit));
    ck_assert(is_sentence(problem->text));
}

START_TEST(a_sentence_tells_the_limit_of_every_kind_of_failure)
{
    struct muslin_problem problem = PROBLEM;
    struct muslin_reference row = { .size = sizeof row };
    struct muslin_parse_spec parse = MUSLIN_PARSE_SPEC_INIT;
    struct muslin_parsed parsed = { .size = sizeof parsed };
    char narrow[3];
    muslin_reference_row(MUSLIN_TABLE_BATTING, 99, &row, &problem);
    ck_says(&problem, MUSLIN_ERR_INDEX, "Index", "99", "6");
    muslin_reference_row(99, 0, &row, &problem);
    ck_says(&problem, MUSLIN_ERR_CHOICE, "Table", "99", "11");
    parse.flags = 4;
    muslin_length_parse("1", 1, &parse, &parsed, &problem);
    ck_says(&problem, MUSLIN_ERR_FLAGS, "Flags of the spec", "4", "0");
    parse.size = 5;
    muslin_length_parse("1", 1, &parse, &parsed, &problem);
    ck_says(&problem, MUSLIN_ERR_STRUCT_SIZE, "Size of the spec", "5", "16");
    struct muslin_parse_spec newer[2] = { MUSLIN_PARSE_SPEC_INIT, MUSLIN_PARSE_SPEC_INIT };
    newer[0].size = sizeof newer;
    muslin_length_parse("1", 1, newer, &parsed, &problem);
    ck_says(&problem, MUSLIN_ERR_STRUCT_TAIL, "Size of the spec is 32. ", "Bytes behind", "not zero");
    struct muslin_cutlist_spec padded = MUSLIN_CUTLIST_SPEC_INIT;
    padded.pad = 3;
    struct muslin_cutlist_piece_spec piece = MUSLIN_CUTLIST_PIECE_SPEC_INIT;
    struct muslin_cutlist_yardage yardage = { .size = sizeof yardage };
    muslin_cutlist_from_yardage(&piece, sizeof piece, 1, &padded, &yardage, &problem);
    ck_says(&problem, MUSLIN_ERR_STRUCT_TAIL, "Padding of the spec is 3. ", "Bytes behind", "not zero");
    muslin_length_format(WHOLE_IN(2), NULL, narrow, sizeof narrow, NULL, NULL, &problem);
    ck_says(&problem, MUSLIN_ERR_BUFFER, "Buffer", "3", "5");
}
END_TEST

START_TEST(a_sentence_about_sizes_that_do_not_go_says_what_would)
{
    struct muslin_problem problem = PROBLEM;
    struct muslin_calibration calibration = { .size = sizeof calibration };
    struct muslin_backing_spec backing = MUSLIN_BACKING_SPEC_INIT;
    struct muslin_panel panels[8];
    size_t count = 0;
    const muslin_len trio[] = { IN(2, 1, 2), IN(2, 1, 2), IN(2, 1, 2) };
    /* u = (7 1/2 - 2 1/2) / 2 - 1/2 = 2 in, so the cure 1/4 - 1 in is below 0; it is 0 for u = 1/2, at 5 1/2 in */
    muslin_seam_calibrate(trio, 3, IN(2, 1, 2), IN(0, 1, 4), &calibration, &problem);
    ck_says(&problem, MUSLIN_ERR_SEAM_TOO_WIDE, "Measured", "2 1/2 in", "must be at least 5 1/2 in");
    backing.quilt_width = WHOLE_IN(60);
    backing.quilt_length = WHOLE_IN(80);
    muslin_backing_panels(&backing, MUSLIN_BACKING_LAYOUT_ONE_WIDTH, panels, sizeof panels[0], 8, &count, &problem);
    ck_says(&problem, MUSLIN_ERR_NO_FIT, "layout", "1", "layout");
    ck_assert_ptr_null(strstr(problem.text, "at least 0"));
    backing.quilt_width = WHOLE_IN(20);
    muslin_backing_panels(&backing, MUSLIN_BACKING_LAYOUT_ONE_WIDTH, panels, 3, 8, &count, &problem);
    ck_says(&problem, MUSLIN_ERR_STRUCT_SIZE, "Row size", "3", "4");
}
END_TEST

START_TEST(a_sentence_names_the_pointer_that_is_missing)
{
    struct muslin_problem problem = PROBLEM;
    struct muslin_seam_spec seam = MUSLIN_SEAM_SPEC_INIT;
    ck_status(muslin_seam_cut_from_finished(0, &seam, NULL, &problem), MUSLIN_ERR_NULL);
    ck_assert_int_eq(problem.limit, 0);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_OUTPUT);
    ck_assert_int_eq(strncmp(problem.text, "Output: ", 8), 0);
    ck_assert(is_sentence(problem.text));
}
END_TEST

ROW_INIT_CALL(problem)

START_TEST(a_problem_begins_as_its_macro_says)
{
    const struct muslin_problem initial = MUSLIN_PROBLEM_INIT;
    ck_init_rules(init_problem, &initial, (uint32_t)sizeof initial);
    struct muslin_problem problem;
    /* Example: muslin_problem_init(&problem, sizeof problem). */
    ck_ok(muslin_problem_init(&problem, sizeof problem));
    ck_assert_uint_eq(problem.size, sizeof problem);
    ck_assert_str_eq(problem.text, "");
}
END_TEST

START_TEST(a_problem_is_untouched_at_success)
{
    struct muslin_problem problem;
    struct muslin_problem before;
    memset(&before, FILL, sizeof before);
    before.size = (uint32_t)sizeof before;
    problem = before;
    ck_ok(provoke(0, &problem));
    ck_assert_mem_eq(&problem, &before, sizeof problem);
}
END_TEST

START_TEST(a_problem_of_a_wrong_size_is_refused_and_untouched)
{
    const uint32_t wrong[] = { 0, 8, sizeof(struct muslin_problem) - 1, 4097, UINT32_MAX };
    for (size_t i = 0; i < sizeof wrong / sizeof wrong[0]; i++) {
        struct muslin_problem problem;
        memset(&problem, FILL, sizeof problem);
        problem.size = wrong[i];
        struct muslin_problem before = problem;
        ck_status(provoke(-1, &problem), MUSLIN_ERR_STRUCT_SIZE);
        ck_status(provoke(0, &problem), MUSLIN_ERR_STRUCT_SIZE);
        ck_assert_mem_eq(&problem, &before, sizeof problem);
    }
}
END_TEST

START_TEST(a_newer_problem_has_its_unknown_rest_zeroed)
{
    union roomy roomy;
    lay_out_output(&roomy, (uint32_t)sizeof(struct muslin_problem) + SPARE);
    ck_status(provoke(-1, (struct muslin_problem *)(void *)&roomy), MUSLIN_ERR_RANGE);
    ck_assert_uint_eq(roomy.head[0], sizeof(struct muslin_problem) + SPARE);
    ck_assert_uint_eq(roomy.head[1], 0);
    for (size_t i = sizeof(struct muslin_problem); i < sizeof(struct muslin_problem) + SPARE; i++)
        ck_assert_uint_eq(roomy.bytes[i], 0);
    ck_assert(is_untouched_from(&roomy, (uint32_t)sizeof(struct muslin_problem) + SPARE));
}
END_TEST

START_TEST(a_call_may_go_without_a_problem)
{
    ck_status(provoke(-1, NULL), MUSLIN_ERR_RANGE);
    ck_ok(provoke(0, NULL));
}
END_TEST

/* The longest sentences that anyone can provoke end within the text, at a full stop or where it is full. */
START_TEST(the_longest_sentences_are_terminated)
{
    const char text[] = "2 somethingverylongthatisnounitatall";
    struct muslin_problem problem = PROBLEM;
    struct muslin_parsed out = { .size = sizeof out };
    memset(problem.text, FILL, sizeof problem.text);
    ck_status(muslin_length_parse(text, sizeof text - 1, NULL, &out, &problem), MUSLIN_ERR_TEXT_UNIT);
    ck_assert_ptr_nonnull(memchr(problem.text, 0, sizeof problem.text));
    ck_assert(is_sentence(problem.text));
}
END_TEST

/* ---- sized structs, shown on one of them ------------------------------------------------------------------------- */

static muslin_status snap_with(const void *rounding, void *out)
{
    return muslin_length_snap(WHOLE_IN(1), rounding, out);
}

static const struct muslin_rounding_spec nearest = MUSLIN_ROUNDING_SPEC_INIT;

START_TEST(a_spec_may_be_as_large_as_4096_bytes_if_its_tail_is_zero)
{
    union roomy spec;
    struct muslin_rounded out = { .size = sizeof out };
    lay_out(&spec, &nearest, sizeof nearest);
    spec.head[0] = 4096;
    ck_ok(snap_with(&spec, &out));
    ck_assert_int_eq(out.value, WHOLE_IN(1));
    spec.head[0] = 4097;
    ck_status(snap_with(&spec, &out), MUSLIN_ERR_STRUCT_SIZE);
}
END_TEST

START_TEST(nothing_behind_a_wrong_size_is_read)
{
    /* Eight bytes on the heap: a reader of more is found by the address sanitizer and by valgrind. */
    uint32_t *head = malloc(8);
    struct muslin_rounded out = { .size = sizeof out };
    head[0] = 8;
    head[1] = 0;
    muslin_status spec_status = snap_with(head, &out);
    muslin_status out_status = snap_with(&nearest, head);
    free(head);
    ck_status(spec_status, MUSLIN_ERR_STRUCT_SIZE);
    ck_status(out_status, MUSLIN_ERR_STRUCT_SIZE);
}
END_TEST

START_TEST(one_byte_behind_the_known_members_is_enough_to_be_refused)
{
    union roomy spec;
    struct muslin_rounded out = { .size = sizeof out };
    for (uint32_t at = sizeof nearest; at < sizeof nearest + SPARE; at++) {
        lay_out(&spec, &nearest, sizeof nearest);
        spec.head[0] = (uint32_t)sizeof nearest + SPARE;
        spec.bytes[at] = 1;
        ck_status(snap_with(&spec, &out), MUSLIN_ERR_STRUCT_TAIL);
    }
}
END_TEST

START_TEST(an_output_as_large_as_4096_bytes_is_zeroed_behind_what_is_known)
{
    union roomy out;
    lay_out_output(&out, 4096);
    ck_ok(snap_with(&nearest, &out));
    ck_assert_uint_eq(out.head[0], 4096);
    for (uint32_t i = sizeof(struct muslin_rounded); i < 4096; i++)
        ck_assert_uint_eq(out.bytes[i], 0);
    ck_assert(is_untouched_from(&out, 4096));
}
END_TEST

/* A struct that has grown from 16 bytes to 24, as callers see it who know only the first 16: what they do not know is
 * zero to the library, and is not touched by it. */
START_TEST(a_struct_that_has_grown_is_read_and_written_as_before)
{
    struct grown {
        uint32_t size, flags;
        int64_t first, later;
    };
    enum { BEFORE = 16 };
    const struct grown theirs = { BEFORE, 0, 5, 7 }, ours = { sizeof ours, 0, 3, 4 };
    struct grown read = { 1, 1, 1, 1 }, written = theirs, begun = { 1, 1, 1, 1 };
    struct msl_check check = msl_check_start(NULL);
    msl_read_struct(&check, MUSLIN_ARG_SPEC, &read, sizeof read, BEFORE, 0, &theirs);
    ck_ok(check.status);
    ck_assert_uint_eq(read.size, sizeof read);
    ck_assert_int_eq(read.first, 5);
    ck_assert_int_eq(read.later, 0);
    msl_write_struct(&written, &ours, sizeof ours);
    ck_assert_uint_eq(written.size, BEFORE);
    ck_assert_int_eq(written.first, 3);
    ck_assert_int_eq(written.later, 7);
    ck_ok(msl_init_struct(&begun, BEFORE, &ours, sizeof ours, BEFORE));
    ck_assert_uint_eq(begun.size, BEFORE);
    ck_assert_uint_eq(begun.flags, 0);
    ck_assert_int_eq(begun.first, 3);
    ck_assert_int_eq(begun.later, 1);
    ck_status(msl_init_struct(&begun, BEFORE - 1, &ours, sizeof ours, BEFORE), MUSLIN_ERR_STRUCT_SIZE);
}
END_TEST

/* ---- the allocator --------------------------------------------------------------------------------------------- */

START_TEST(the_libc_allocator_gives_memory_that_can_be_written_moved_and_freed)
{
    struct muslin_allocator libc;
    ck_ok(muslin_allocator_libc(&libc));
    unsigned char *block = libc.alloc(libc.context, 100);
    ck_assert_ptr_nonnull(block);
    memset(block, 7, 100);
    block = libc.realloc(libc.context, block, 100, 10000);
    ck_assert_ptr_nonnull(block);
    for (int i = 0; i < 100; i++)
        ck_assert_uint_eq(block[i], 7);
    memset(block, 8, 10000);
    libc.free(libc.context, block, 10000);
}
END_TEST

START_TEST(the_libc_allocator_needs_somewhere_to_go)
{
    ck_status(muslin_allocator_libc(NULL), MUSLIN_ERR_NULL);
}
END_TEST

/* ---- the failing allocator, tried on a small list that grows --------------------------------------------------- */

struct pile {
    const struct muslin_allocator *from;
    int64_t *items;
    size_t count;
    size_t room;
};

static muslin_status pile_open(struct pile *pile, const struct muslin_allocator *from)
{
    pile->from = from;
    pile->count = 0;
    pile->room = 2;
    pile->items = from->alloc(from->context, pile->room * sizeof pile->items[0]);
    return pile->items == NULL ? MUSLIN_ERR_NO_MEMORY : MUSLIN_OK;
}

static muslin_status pile_put(struct pile *pile, int64_t item)
{
    if (pile->count == pile->room) {
        size_t old_size = pile->room * sizeof item;
        void *more = pile->from->realloc(pile->from->context, pile->items, old_size, 2 * old_size);
        if (more == NULL)
            return MUSLIN_ERR_NO_MEMORY;
        pile->items = more;
        pile->room *= 2;
    }
    pile->items[pile->count] = item;
    pile->count++;
    return MUSLIN_OK;
}

static void pile_close(struct pile *pile)
{
    pile->from->free(pile->from->context, pile->items, pile->room * sizeof pile->items[0]);
}

/* 1 + 2 + ... + n by way of a pile. */
static muslin_status sum_by_pile(const struct muslin_allocator *from, int64_t n, int64_t *sum)
{
    struct pile pile;
    muslin_status status = pile_open(&pile, from);
    if (status != MUSLIN_OK)
        return status;
    for (int64_t i = 1; i <= n && status == MUSLIN_OK; i++)
        status = pile_put(&pile, i);
    if (status == MUSLIN_OK)
        *sum = 0;
    for (size_t i = 0; i < pile.count && status == MUSLIN_OK; i++)
        *sum += pile.items[i];
    pile_close(&pile);
    return status;
}

START_TEST(every_allocation_of_a_pile_fails_in_its_turn)
{
    struct failing_allocator failing;
    size_t rounds = 0;
    EVERY_ALLOCATION_FAILS_ONCE(failing)
    {
        int64_t sum = 77;
        muslin_status status = sum_by_pile(&failing.allocator, 20, &sum);
        ck_status(status, failing.has_failed ? MUSLIN_ERR_NO_MEMORY : MUSLIN_OK);
        ck_assert_int_eq(sum, failing.has_failed ? 77 : 20 * 21 / 2);
        ck_assert(failing_is_clean(&failing));
        rounds++;
    }
    /* Rooms of 2, 4, 8, 16 and 32 are five allocations, and the last round is the one that succeeds. */
    ck_assert_uint_eq(rounds, 6);
}
END_TEST

START_TEST(the_same_pile_stands_on_the_libc_allocator)
{
    struct muslin_allocator libc;
    int64_t sum = 0;
    ck_ok(muslin_allocator_libc(&libc));
    ck_ok(sum_by_pile(&libc, 1000, &sum));
    ck_assert_int_eq(sum, 500500);
}
END_TEST

START_TEST(the_failing_allocator_finds_a_leak)
{
    struct failing_allocator failing;
    failing_start(&failing, 0);
    struct muslin_allocator *from = &failing.allocator;
    void *block = from->alloc(from->context, 24);
    ck_assert(!failing_is_clean(&failing));
    ck_assert_uint_eq(failing.blocks, 1);
    ck_assert_uint_eq(failing.bytes, 24);
    from->free(from->context, block, 24);
    ck_assert(failing_is_clean(&failing));
}
END_TEST

START_TEST(the_failing_allocator_finds_a_wrong_old_size)
{
    struct failing_allocator failing;
    failing_start(&failing, 0);
    struct muslin_allocator *from = &failing.allocator;
    void *block = from->alloc(from->context, 24);
    block = from->realloc(from->context, block, 25, 48);
    ck_assert_uint_eq(failing.mistakes, 1);
    from->free(from->context, block, 24);
    ck_assert_uint_eq(failing.mistakes, 2);
    ck_assert_uint_eq(failing.blocks, 0);
}
END_TEST

START_TEST(the_failing_allocator_finds_null_blocks_and_empty_sizes)
{
    struct failing_allocator failing;
    failing_start(&failing, 0);
    struct muslin_allocator *from = &failing.allocator;
    from->free(from->context, NULL, 8);
    ck_assert_uint_eq(failing.mistakes, 1);
    ck_assert_ptr_null(from->realloc(from->context, NULL, 0, 8));
    ck_assert_uint_eq(failing.mistakes, 2);
    void *nothing = from->alloc(from->context, 0);
    ck_assert_uint_eq(failing.mistakes, 3);
    from->free(from->context, nothing, 0);
    ck_assert_uint_eq(failing.mistakes, 3);
}
END_TEST

START_TEST(a_block_that_cannot_grow_is_kept_as_it_was)
{
    struct failing_allocator failing;
    failing_start(&failing, 2);
    struct muslin_allocator *from = &failing.allocator;
    unsigned char *block = from->alloc(from->context, 3);
    memset(block, 9, 3);
    ck_assert_ptr_null(from->realloc(from->context, block, 3, 300));
    ck_assert_uint_eq(block[2], 9);
    from->free(from->context, block, 3);
    ck_assert(failing_is_clean(&failing));
}
END_TEST

/* ---- suite ----------------------------------------------------------------------------------------------------- */

static TCase *tcase_words(void)
{
    TCase *words = tcase_create("version, names, sentences");
    tcase_add_test(words, the_running_version_is_that_of_the_headers);
    tcase_add_test(words, the_version_number_is_made_of_its_three_parts);
    tcase_add_test(words, the_version_text_spells_the_same_three_numbers);
    tcase_add_test(words, a_64th_of_an_inch_and_a_tenth_of_a_millimetre_are_whole_ticks);
    tcase_add_test(words, the_limits_are_the_powers_of_two_that_the_header_names);
    tcase_add_test(words, every_status_has_its_number_and_its_name);
    tcase_add_test(words, the_count_of_statuses_is_that_of_the_list);
    tcase_add_test(words, every_status_has_a_sentence_of_its_own);
    tcase_add_test(words, a_number_that_is_no_status_is_called_unknown);
    tcase_add_test(words, every_argument_has_a_name_of_its_own);
    tcase_add_test(words, arguments_are_called_by_the_words_of_the_trade);
    tcase_add_test(words, a_number_that_is_no_argument_is_called_unknown);
    tcase_add_test(words, every_warning_has_a_sentence_of_its_own);
    tcase_add_test(words, what_is_not_one_known_warning_has_no_sentence);
    tcase_add_test(words, warnings_are_counted_and_named_like_their_constants);
    tcase_add_test(words, constants_have_the_values_of_the_headers);
    tcase_add_test(words, constants_have_names_of_their_own_and_none_lies_beyond_the_list);
    return words;
}

static TCase *tcase_problems(void)
{
    TCase *problems = tcase_create("problems and structs");
    tcase_add_test(problems, a_problem_names_status_argument_value_and_limit);
    tcase_add_test(problems, a_sentence_shows_lengths_in_inches);
    tcase_add_test(problems, a_sentence_shows_counts_as_numbers);
    tcase_add_test(problems, a_sentence_tells_the_limit_of_every_kind_of_failure);
    tcase_add_test(problems, a_sentence_about_sizes_that_do_not_go_says_what_would);
    tcase_add_test(problems, a_sentence_shows_shares_in_parts_per_million);
    tcase_add_test(problems, a_sentence_names_the_pointer_that_is_missing);
    tcase_add_test(problems, a_problem_begins_as_its_macro_says);
    tcase_add_test(problems, a_problem_is_untouched_at_success);
    tcase_add_test(problems, a_problem_of_a_wrong_size_is_refused_and_untouched);
    tcase_add_test(problems, a_newer_problem_has_its_unknown_rest_zeroed);
    tcase_add_test(problems, a_call_may_go_without_a_problem);
    tcase_add_test(problems, the_longest_sentences_are_terminated);
    tcase_add_test(problems, a_spec_may_be_as_large_as_4096_bytes_if_its_tail_is_zero);
    tcase_add_test(problems, nothing_behind_a_wrong_size_is_read);
    tcase_add_test(problems, one_byte_behind_the_known_members_is_enough_to_be_refused);
    tcase_add_test(problems, an_output_as_large_as_4096_bytes_is_zeroed_behind_what_is_known);
    tcase_add_test(problems, a_struct_that_has_grown_is_read_and_written_as_before);
    return problems;
}

static TCase *tcase_allocators(void)
{
    TCase *allocators = tcase_create("allocators");
    tcase_add_test(allocators, the_libc_allocator_gives_memory_that_can_be_written_moved_and_freed);
    tcase_add_test(allocators, the_libc_allocator_needs_somewhere_to_go);
    tcase_add_test(allocators, every_allocation_of_a_pile_fails_in_its_turn);
    tcase_add_test(allocators, the_same_pile_stands_on_the_libc_allocator);
    tcase_add_test(allocators, the_failing_allocator_finds_a_leak);
    tcase_add_test(allocators, the_failing_allocator_finds_a_wrong_old_size);
    tcase_add_test(allocators, the_failing_allocator_finds_null_blocks_and_empty_sizes);
    tcase_add_test(allocators, a_block_that_cannot_grow_is_kept_as_it_was);
    return allocators;
}

Suite *base_suite(void);

Suite *base_suite(void)
{
    Suite *suite = suite_create("base");
    suite_add_tcase(suite, tcase_words());
    suite_add_tcase(suite, tcase_problems());
    suite_add_tcase(suite, tcase_allocators());
    return suite;
}
