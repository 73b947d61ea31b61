/* cmd_supplies.c - thread, stitches, quilting-lines: what is sewn, and what it takes.
 *
 * SPDX-License-Identifier: MIT */
#include <stdio.h>
#include <string.h>

#include "answer.h"
#include "cmd.h"
#include "sheet.h"
#include "words.h"

/* What a figure takes for granted, a sentence each. */
static void assume(json_t *answer, const char *sentence)
{
    json_t *list = json_object_get(answer, "assumptions");
    if (list == NULL)
        list = put_list(answer, "assumptions");
    json_array_append_new(list, json_string(sentence));
}

/* ---- seams ------------------------------------------------------------------------------------------------------ */

struct seams_request {
    struct muslin_piecing_spec piecing;
};

static void start_seams(void *request)
{
    struct seams_request *wanted = request;
    wanted->piecing = (struct muslin_piecing_spec)MUSLIN_PIECING_SPEC_INIT;
}

/* What the seams were counted of. */
static void put_counted(json_t *answer, const struct desk *desk, const struct muslin_piecing_spec *spec)
{
    json_t *counted = put_object(answer, "counted");
    put_count(counted, "sets", spec->sets);
    put_count(counted, "strips_per_set", spec->strips_per_set);
    put_length(counted, desk, "strip_length", spec->strip_length);
    put_count(counted, "tops", spec->tops);
    put_count(counted, "columns", spec->columns);
    put_count(counted, "rows", spec->rows);
    put_count(counted, "segments_per_block", spec->segments_per_block);
    put_length(counted, desk, "finished_block_width", spec->block_width);
    put_length(counted, desk, "finished_block_height", spec->block_height);
    put_length(counted, desk, "seam_allowance", spec->allowance);
}

static json_t *answer_seams(const void *request, struct desk *desk)
{
    const struct seams_request *wanted = request;
    struct muslin_piecing_spec spec = wanted->piecing;
    struct muslin_piecing piecing = { .size = sizeof piecing };
    if (!given(desk, "tops"))
        spec.tops = given(desk, "block") ? 1 : 0;
    if (!given(desk, "height"))
        spec.block_height = spec.block_width;
    if (!worked(desk, muslin_piecing_plan(&spec, &piecing, &desk->problem)))
        return NULL;
    json_t *answer = json_object();
    put_count(answer, "seams", piecing.seams);
    put_length(answer, desk, "in_the_sets", piecing.in_sets);
    put_length(answer, desk, "within_blocks", piecing.in_blocks);
    put_length(answer, desk, "from_block_to_block", piecing.in_rows);
    put_length(answer, desk, "from_row_to_row", piecing.between_rows);
    put_length(answer, desk, "total", piecing.total);
    put_yards(answer, desk, "total_in_yards", piecing.total);
    put_counted(answer, desk, &spec);
    assume(answer, "A seam is as long as the unfinished piece, from raw edge to raw edge.");
    assume(answer, "Borders, backing and binding are not counted: add their lengths in muslin thread.");
    return answer;
}

static const struct option_row seams_options[] = {
    { "sets", KIND_COUNT, offsetof(struct seams_request, piecing.sets), MUSLIN_ARG_SETS, 0, NULL, "strip sets (none)" },
    { "set", KIND_COUNT, offsetof(struct seams_request, piecing.strips_per_set), MUSLIN_ARG_STRIPS_PER_SET, 0, NULL,
      "strips in a set (1)" },
    { "usable", KIND_LENGTH, offsetof(struct seams_request, piecing.strip_length), MUSLIN_ARG_STRIP_LENGTH, 0, NULL,
      "length of a strip (40 in)" },
    { "block", KIND_LENGTH, offsetof(struct seams_request, piecing.block_width), MUSLIN_ARG_BLOCK_WIDTH, 0, NULL,
      "finished width of a block" },
    { "height", KIND_LENGTH, offsetof(struct seams_request, piecing.block_height), MUSLIN_ARG_BLOCK_HEIGHT, 0, NULL,
      "finished height of a block (the same)" },
    { "segments", KIND_COUNT, offsetof(struct seams_request, piecing.segments_per_block),
      MUSLIN_ARG_SEGMENTS_PER_BLOCK, 0, NULL, "segments side by side in a block (1)" },
    { "columns", KIND_COUNT, offsetof(struct seams_request, piecing.columns), MUSLIN_ARG_COLUMNS, 0, NULL,
      "blocks across (1)" },
    { "rows", KIND_COUNT, offsetof(struct seams_request, piecing.rows), MUSLIN_ARG_QUILT_ROWS, 0, NULL,
      "blocks down (1)" },
    { "tops", KIND_COUNT, offsetof(struct seams_request, piecing.tops), MUSLIN_ARG_TOPS, 0, NULL,
      "equal tops (1 when there is a block)" },
    OPTION_SEAM(seams_request, piecing.allowance, piecing.take_up),
    OPTION_END
};

const struct command seams_command = {
    .name = "seams",
    .about = "length of all seams in strip sets and tops",
    .operands = "",
    .examples = "  muslin seams --sets 7 --set 6 --block 12 --segments 2 --columns 3 --rows 3 --tops 2",
    .options = seams_options,
    .request_size = sizeof(struct seams_request),
    .start = start_seams,
    .answer = answer_seams,
    .lead = "{seams:seam}, {total} together.",
    .show = show_seams
};

/* ---- thread ----------------------------------------------------------------------------------------------------- */

struct thread_request {
    struct lengths seams;
    const char *ratio;
    int32_t ready;
    struct muslin_thread_spec thread;
};

static void start_thread(void *request)
{
    struct thread_request *wanted = request;
    wanted->thread = (struct muslin_thread_spec)MUSLIN_THREAD_SPEC_INIT;
}

/* "5:2" */
static bool read_ratio(struct desk *desk, const char *text, struct muslin_thread_spec *spec)
{
    long long above = 0;
    long long below = 0;
    int used = 0;
    if (strspn(text, "0123456789:") == strlen(text) && strlen(text) < 24 &&
        sscanf(text, "%lld:%lld%n", &above, &below, &used) == 2 && text[used] == '\0') {
        spec->ratio_above = above;
        spec->ratio_below = below;
        return true;
    }
    failure_say(desk->failure, "ratio", "Write thread and seam with a colon, in whole numbers: \"5:2\".");
    return false;
}

static bool thread_options_fit(struct desk *desk)
{
    bool formula = given(desk, "thickness");
    if (formula && given(desk, "ratio"))
        failure_say(desk->failure, "ratio", "Give a ratio, or a thickness and a stitch, not both.");
    else if (!formula && given(desk, "stitch"))
        failure_say(desk->failure, "stitch", "A stitch goes with the thickness that is sewn: give that too.");
    else if (given(desk, "ready-bobbins") && !given(desk, "bobbin"))
        failure_say(desk->failure, "ready-bobbins", "Say how much thread is on one of them: --bobbin.");
    else
        return true;
    return false;
}

/* "2.5 yd of thread for each yd of seam" */
static void put_per_seam(json_t *answer, const struct desk *desk, int64_t thousandths)
{
    bool metric = desk->common.units == UNITS_CM || desk->common.units == UNITS_MM;
    char text[100];
    put_thousandths(answer, desk, "thread_per_seam", thousandths);
    json_t *put = json_object_get(answer, "thread_per_seam");
    snprintf(text, sizeof text, "%s %s of seam", json_string_value(json_object_get(put, "text")),
             metric ? "m of thread for each metre" : "yd of thread for each yard");
    put_text(put, "text", text);
}

/* A bobbin that is wound has room left; one that is bought wound has thread left. */
static void put_holders(json_t *answer, const struct desk *desk, const struct muslin_thread_spec *spec,
                        const struct muslin_thread *thread)
{
    bool ready = (spec->flags & MUSLIN_THREAD_READY_BOBBINS) != 0;
    if (spec->bobbin > 0) {
        put_count(answer, "bobbins", thread->bobbins);
        put_thread(answer, desk, ready ? "left_on_the_last_bobbin" : "room_on_the_last_bobbin", thread->left_on_bobbin,
                   MUSLIN_DIRECTION_DOWN);
        put_spare(answer, desk, "bobbins_reach_for_so_much_more_seam", thread->bobbin_longer_by);
    }
    if (spec->spool > 0) {
        put_count(answer, "spools", thread->spools);
        put_thread(answer, desk, "left_on_the_last_spool", thread->left_on_spool, MUSLIN_DIRECTION_DOWN);
        put_spare(answer, desk, "spools_reach_for_so_much_more_seam", thread->spool_longer_by);
    }
}

static json_t *answer_thread(const void *request, struct desk *desk)
{
    const struct thread_request *wanted = request;
    struct muslin_thread_spec spec = wanted->thread;
    struct muslin_thread thread = { .size = sizeof thread };
    if (!thread_options_fit(desk) || !sum_of(desk, &wanted->seams, &spec.seam) ||
        (wanted->ratio != NULL && !read_ratio(desk, wanted->ratio, &spec)))
        return NULL;
    bool formula = given(desk, "thickness");
    spec.method = formula ? MUSLIN_THREAD_METHOD_FORMULA : MUSLIN_THREAD_METHOD_RATIO;
    spec.flags = wanted->ready ? MUSLIN_THREAD_READY_BOBBINS : 0;
    if (!worked(desk, muslin_thread_plan(&spec, &thread, &desk->problem)))
        return NULL;
    json_t *answer = json_object();
    put_cloth(answer, desk, "seam", spec.seam);
    put_text(answer, "reckoned_by", formula ? "formula" : "ratio");
    put_per_seam(answer, desk, thread.ratio_thousandths);
    put_thread(answer, desk, "thread_without_waste", thread.thread, MUSLIN_DIRECTION_UP);
    put_share(answer, desk, "waste", spec.waste);
    put_thread(answer, desk, "thread", thread.with_waste, MUSLIN_DIRECTION_UP);
    put_thread(answer, desk, "needle_thread", thread.needle, MUSLIN_DIRECTION_UP);
    put_thread(answer, desk, "bobbin_thread", thread.bobbin_thread, MUSLIN_DIRECTION_UP);
    put_holders(answer, desk, &spec, &thread);
    assume(answer, "A lockstitch takes half its thread from the needle and half from the bobbin.");
    assume(answer, formula ? "The formula, for each millimetre of seam: 2 + 2 x thickness sewn in mm x stitches to the "
                             "mm. Press and measure all layers together."
                           : "Five of thread for two of seam is usual for a lockstitch; a denser or thicker seam takes "
                             "more.");
    assume(answer, "Sources give 10 to 20 % for waste: tails, tests, unpicking and refilled bobbins.");
    if (spec.spool > 0)
        assume(answer, wanted->ready ? "Spools hold the needle thread alone, for the bobbins are bought wound."
                                     : "Bobbins are wound from the spools, the last one only as far as it is needed.");
    return answer;
}

static const struct option_row thread_options[] = {
    { "seam", KIND_LENGTHS, offsetof(struct thread_request, seams), MUSLIN_ARG_LENGTH,
      OPTION_REQUIRED | OPTION_OPERAND, NULL, "length to be sewn; several are added up" },
    { "ratio", KIND_TEXT, offsetof(struct thread_request, ratio), MUSLIN_ARG_RATIO, 0, NULL,
      "thread for seam, such as 5:2 (the usual)" },
    { "thickness", KIND_LENGTH, offsetof(struct thread_request, thread.thickness), MUSLIN_ARG_THICKNESS, 0, NULL,
      "reckon by the thickness that is sewn, all layers together, instead of a ratio" },
    { "stitch", KIND_LENGTH, offsetof(struct thread_request, thread.stitch_length), MUSLIN_ARG_STITCH_LENGTH, 0, NULL,
      "... and the length of a stitch (2 mm)" },
    { "waste", KIND_SHARE, offsetof(struct thread_request, thread.waste), MUSLIN_ARG_WASTE, 0, NULL,
      "to add for tails, tests and unpicking (\"15 %\")" },
    { "bobbin", KIND_LENGTH, offsetof(struct thread_request, thread.bobbin), MUSLIN_ARG_BOBBIN, 0, NULL,
      "thread that a bobbin holds, to count bobbins" },
    { "spool", KIND_LENGTH, offsetof(struct thread_request, thread.spool), MUSLIN_ARG_SPOOL, 0, NULL,
      "thread on a spool, to count spools" },
    { "ready-bobbins", KIND_SWITCH, offsetof(struct thread_request, ready), 0, 0, NULL,
      "bobbins are bought wound, not wound from the spools" },
    OPTION_END
};

const struct command thread_command = {
    .name = "thread",
    .about = "thread, bobbins and spools for a length of seam",
    .operands = "SEAM...",
    .examples = "  muslin thread \"1921 in\" \"424 in\" --spool \"200 m\" --bobbin \"50 m\"\n"
                "  muslin thread \"220 cm\" --waste \"0 %\" --units cm\n"
                "  muslin thread \"40 yd\" --thickness \"0.5 mm\" --stitch \"2.5 mm\"",
    .options = thread_options,
    .request_size = sizeof(struct thread_request),
    .start = start_thread,
    .answer = answer_thread,
    .lead = "For {seam} of seam have {thread} of thread ready.",
    .show = show_thread
};

/* ---- stitches --------------------------------------------------------------------------------------------------- */

struct stitches_request {
    muslin_len stitch;
    int64_t per_inch;
    struct muslin_rounding_spec rounding;
};

static void start_stitches(void *request)
{
    struct stitches_request *wanted = request;
    wanted->rounding = (struct muslin_rounding_spec)MUSLIN_ROUNDING_SPEC_INIT;
}

/* A stitch is said in millimetres whatever the rest is in, for that is what the dial of a machine says. */
static void put_stitch(json_t *answer, const struct desk *desk, const char *name, muslin_len value)
{
    struct desk in_mm = *desk;
    in_mm.common.units = UNITS_MM;
    put_length(answer, &in_mm, name, value);
}

static bool put_stitches(json_t *answer, struct desk *desk, muslin_len stitch)
{
    static const struct {
        const char *name;
        muslin_len length;
        int32_t decimals;
    } ways[] = {
        { "stitches_per_inch", MUSLIN_TICKS_PER_INCH, 2 },
        { "in_whole_stitches_per_inch", MUSLIN_TICKS_PER_INCH, 0 },
        { "stitches_per_cm", 10 * MUSLIN_TICKS_PER_MM, 2 }
    };
    for (size_t i = 0; i < sizeof ways / sizeof ways[0]; i++) {
        int64_t thousandths = 0;
        if (!worked(desk, muslin_stitch_count(ways[i].length, stitch, ways[i].decimals, MUSLIN_DIRECTION_NEAREST,
                                              &thousandths, NULL, &desk->problem)))
            return false;
        put_thousandths(answer, desk, ways[i].name, thousandths);
    }
    return true;
}

/* More would be shorter than a thread is thick. */
#define PER_INCH_MAX 1000

/* "2.5" without a unit is two and a half inches, and no machine sews that. */
static bool stitch_is_one(struct desk *desk, const struct stitches_request *wanted)
{
    if (given(desk, "stitch") == given(desk, "per-inch"))
        failure_say(desk->failure, "stitch", "Give the length of a stitch or how many make an inch, one of the two.");
    else if (given(desk, "stitch") && wanted->stitch > MUSLIN_TICKS_PER_INCH)
        failure_say(desk->failure, "stitch", "A stitch longer than an inch? Write its unit, such as \"2.5 mm\".");
    else if (given(desk, "per-inch") && (wanted->per_inch < 1 || wanted->per_inch > PER_INCH_MAX))
        failure_say(desk->failure, "per-inch", "Give 1 to 1000 stitches to the inch.");
    else
        return true;
    return false;
}

static json_t *answer_stitches(const void *request, struct desk *desk)
{
    const struct stitches_request *wanted = request;
    muslin_len stitch = wanted->stitch;
    if (!stitch_is_one(desk, wanted))
        return NULL;
    json_t *answer = json_object();
    if (given(desk, "per-inch")) {
        struct muslin_rounded rounded = { .size = sizeof rounded };
        if (!worked(desk, muslin_stitch_length(MUSLIN_TICKS_PER_INCH, 1000 * wanted->per_inch, &wanted->rounding,
                                               &rounded, &desk->problem))) {
            json_decref(answer);
            return NULL;
        }
        put_count(answer, "wanted_per_inch", wanted->per_inch);
        stitch = rounded.value;
    }
    put_stitch(answer, desk, "stitch", stitch);
    if (put_stitches(answer, desk, stitch))
        return answer;
    json_decref(answer);
    return NULL;
}

static const struct option_row stitches_options[] = {
    { "stitch", KIND_LENGTH, offsetof(struct stitches_request, stitch), MUSLIN_ARG_STITCH_LENGTH, OPTION_OPERAND, NULL,
      "length of a stitch with its unit, such as \"2.5 mm\"" },
    { "per-inch", KIND_COUNT, offsetof(struct stitches_request, per_inch), MUSLIN_ARG_STITCHES, 0, NULL,
      "stitches to the inch instead, to find their length" },
    OPTION_ROUNDING(stitches_request, rounding),
    OPTION_END
};

const struct command stitches_command = {
    .name = "stitches",
    .about = "from the length of a stitch to stitches per inch, and back",
    .operands = "STITCH",
    .examples = "  muslin stitches \"2.5 mm\"\n"
                "  muslin stitches --per-inch 12 --to \"0.1 mm\"",
    .options = stitches_options,
    .request_size = sizeof(struct stitches_request),
    .start = start_stitches,
    .answer = answer_stitches,
    .lead = "Stitches of {stitch}: {stitches_per_inch} to the inch, {stitches_per_cm} to the centimetre.",
    .show = show_stitches
};

/* ---- lines of quilting ------------------------------------------------------------------------------------------ */

static const struct word pattern_words[] = { { "across", MUSLIN_QUILTING_PATTERN_ACROSS },
                                             { "along", MUSLIN_QUILTING_PATTERN_ALONG },
                                             { "grid", MUSLIN_QUILTING_PATTERN_GRID },
                                             { "diagonal", MUSLIN_QUILTING_PATTERN_DIAGONAL },
                                             { "crosshatch", MUSLIN_QUILTING_PATTERN_CROSSHATCH },
                                             { "outline", MUSLIN_QUILTING_PATTERN_OUTLINE },
                                             { NULL, 0 } };

struct lines_request {
    struct lengths outline;
    int32_t from_corner;
    struct muslin_quilting_spec quilting;
};

static void start_lines(void *request)
{
    struct lines_request *wanted = request;
    wanted->quilting = (struct muslin_quilting_spec)MUSLIN_QUILTING_SPEC_INIT;
}

static bool lines_options_fit(struct desk *desk, int32_t pattern)
{
    bool outline = pattern == MUSLIN_QUILTING_PATTERN_OUTLINE;
    bool diagonal = pattern == MUSLIN_QUILTING_PATTERN_DIAGONAL || pattern == MUSLIN_QUILTING_PATTERN_CROSSHATCH;
    if (outline != given(desk, "outline"))
        failure_say(desk->failure, "outline", "The pattern outline and the length of what is outlined go together.");
    else if (!outline && !(given(desk, "width") && given(desk, "length")))
        failure_say(desk->failure, given(desk, "width") ? "length" : "width",
                    "Give width and length of the area to be quilted.");
    else if (!diagonal && given(desk, "from-corner"))
        failure_say(desk->failure, "from-corner", "Only diagonal and crosshatch lines start in a corner.");
    else if (given(desk, "from-corner") && given(desk, "offset"))
        failure_say(desk->failure, "offset", "Lines start in a corner or at an offset, one of the two.");
    else
        return true;
    return false;
}

/* Straight lines one way: how many, how long, where the last one lies, what is left and how to use it up. */
struct way {
    const char *name;
    int64_t lines;
    muslin_len length;
    muslin_len last;
    muslin_len left;
    muslin_len even;
};

static void put_way(json_t *answer, const struct desk *desk, const struct way *straight)
{
    if (straight->lines == 0)
        return;
    json_t *way = put_object(answer, straight->name);
    put_count(way, "lines", straight->lines);
    put_length(way, desk, "length_of_one", straight->length);
    put_length(way, desk, "last_from_the_edge", straight->last);
    if (straight->even > 0) {
        put_slack(way, desk, "left_behind_the_last", straight->left);
        put_about(way, desk, "spaced_evenly_they_lie", straight->even);
    }
}

static void put_diagonals(json_t *answer, const char *name, int64_t lines)
{
    if (lines > 0)
        put_count(put_object(answer, name), "lines", lines);
}

static void put_ways(json_t *answer, const struct desk *desk, const struct muslin_quilting_spec *spec,
                     const struct muslin_quilting *quilting)
{
    const struct way across = { "from_side_to_side", quilting->lines_first, spec->width, quilting->last_first,
                                quilting->left_first, quilting->even_first };
    const struct way along = { "from_top_to_bottom", quilting->lines_second, spec->length, quilting->last_second,
                               quilting->left_second, quilting->even_second };
    put_length(answer, desk, "width", spec->width);
    put_length(answer, desk, "length", spec->length);
    put_length(answer, desk, "spacing", spec->spacing);
    put_length(answer, desk, "offset", spec->offset);
    if (spec->pattern <= MUSLIN_QUILTING_PATTERN_GRID) {
        put_way(answer, desk, &across);
        put_way(answer, desk, &along);
        return;
    }
    put_diagonals(answer, "down_to_the_right", quilting->lines_first);
    put_diagonals(answer, "down_to_the_left", quilting->lines_second);
}

static void assume_lines(json_t *answer, const struct muslin_quilting_spec *spec)
{
    if (spec->pattern == MUSLIN_QUILTING_PATTERN_OUTLINE) {
        assume(answer, "In the ditch a line is as long as the seam it follows. Beside the seam it is longer where it "
                       "goes round the outside of a shape and shorter inside it.");
        assume(answer, "Tails and turns belong into the waste of muslin thread.");
        return;
    }
    if (spec->pattern <= MUSLIN_QUILTING_PATTERN_GRID)
        assume(answer, "The first line lies at the offset from its edge, and the last no nearer to the other edge; "
                       "with no offset a line on the edge itself counts.");
    else if (spec->start == MUSLIN_QUILTING_START_FROM_CORNER)
        assume(answer, "The first diagonal starts in a corner, and the others lie on both sides of it.");
    else
        assume(answer, "The first diagonal cuts a corner off at the offset from it, or at the spacing where there is "
                       "no offset.");
    assume(answer, "Lines end at the edges of the area. Tails and turns belong into the waste of muslin thread.");
}

static json_t *answer_lines(const void *request, struct desk *desk)
{
    const struct lines_request *wanted = request;
    struct muslin_quilting_spec spec = wanted->quilting;
    struct muslin_quilting quilting = { .size = sizeof quilting };
    spec.start = wanted->from_corner ? MUSLIN_QUILTING_START_FROM_CORNER : MUSLIN_QUILTING_START_AT_OFFSET;
    if (!lines_options_fit(desk, spec.pattern) || !sum_of(desk, &wanted->outline, &spec.outline) ||
        !worked(desk, muslin_quilting_lines(&spec, &quilting, &desk->problem)))
        return NULL;
    json_t *answer = json_object();
    put_text(answer, "pattern", word_of(pattern_words, spec.pattern));
    put_count(answer, "lines", quilting.lines);
    put_ample(answer, desk, "length_of_all_lines", quilting.length);
    put_yards(answer, desk, "length_of_all_lines_in_yards", quilting.length);
    if (spec.pattern != MUSLIN_QUILTING_PATTERN_OUTLINE)
        put_ways(answer, desk, &spec, &quilting);
    else
        put_length(answer, desk, "outline", spec.outline);
    assume_lines(answer, &spec);
    return answer;
}

static const struct option_row lines_options[] = {
    { "width", KIND_LENGTH, offsetof(struct lines_request, quilting.width), MUSLIN_ARG_QUILT_WIDTH, 0, NULL,
      "width of the area to be quilted (finished)" },
    { "length", KIND_LENGTH, offsetof(struct lines_request, quilting.length), MUSLIN_ARG_QUILT_LENGTH, 0, NULL,
      "length of the area (finished)" },
    { "pattern", KIND_CHOICE, offsetof(struct lines_request, quilting.pattern), MUSLIN_ARG_PATTERN, 0, pattern_words,
      "across (side to side), along (top to bottom), grid (both, the usual), diagonal, crosshatch (both diagonals) or "
      "outline" },
    { "spacing", KIND_LENGTH, offsetof(struct lines_request, quilting.spacing), MUSLIN_ARG_SPACING, 0, NULL,
      "from line to line (2 in)" },
    { "offset", KIND_LENGTH, offsetof(struct lines_request, quilting.offset), MUSLIN_ARG_OFFSET, 0, NULL,
      "the first line's distance from its edge or corner (none)" },
    { "from-corner", KIND_SWITCH, offsetof(struct lines_request, from_corner), MUSLIN_ARG_START, 0, NULL,
      "the first diagonal starts in a corner" },
    { "outline", KIND_LENGTHS, offsetof(struct lines_request, outline), MUSLIN_ARG_LENGTH, 0, NULL,
      "length of seams or shapes to outline; several are added up" },
    { "passes", KIND_COUNT, offsetof(struct lines_request, quilting.passes), MUSLIN_ARG_PASSES, 0, NULL,
      "lines along an outline: 1 in the ditch, 2 for both sides (1)" },
    OPTION_END
};

const struct command quilting_lines_command = {
    .name = "quilting-lines",
    .about = "number and length of the lines of quilting",
    .operands = "",
    .examples = "  muslin quilting-lines --width 40 --length 48 --spacing 4 --offset 2\n"
                "  muslin quilting-lines --width 40 --length 48 --pattern crosshatch --from-corner\n"
                "  muslin quilting-lines --pattern outline --outline \"521 in\" --passes 2",
    .options = lines_options,
    .request_size = sizeof(struct lines_request),
    .start = start_lines,
    .answer = answer_lines,
    .lead = "{lines:line} of quilting, {length_of_all_lines} together.",
    .show = show_quilting_lines
};
