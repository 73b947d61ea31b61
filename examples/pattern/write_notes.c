/* write_notes.c - what is read first: sizes, seam, cloth, what letters and numbers mean, the test block.
 *
 * SPDX-License-Identifier: MIT */
#include <inttypes.h>
#include <stdlib.h>

#include "wording.h"

/* ---- what does not meet ------------------------------------------------------------------------------------------ */

/* One of the two that meet, with its place in the file. */
static void add_side(struct line *line, const struct worked *worked, muslin_id node, int64_t child)
{
    static const char *const strips[] = { "", "the left strip", "the right strip", "the top strip",
                                          "the bottom strip" };
    const char *place = place_of_part(worked, node, child);
    if (child < 0)
        add(line, "a setting triangle or sash");
    else if (node_of(worked, node).kind == MUSLIN_NODE_SET_IN)
        add(line, "%s", child > 0 && child <= 4 ? strips[child] : "the middle part");
    else
        add(line, "part %" PRId64, child + 1);
    if (place != NULL)
        add(line, ", %s in the file,", place);
}

/* In words for people: where, both sizes, the difference, how often. */
static void write_misfit(struct document *document, const struct worked *worked, const struct muslin_misfit *misfit)
{
    struct line line = { NULL, 0, 0 };
    char letter[16];
    char text[WORD_ROOM];
    const bool is_eased = misfit->kind == MUSLIN_MISFIT_EASED;
    letter_of(worked, misfit->node, letter);
    add(&line, "In %s%s", letter, letter[0] == '\0' ? "" : " (");
    add_name(&line, worked, misfit->node);
    add(&line, "%s, %s in the file: ", letter[0] == '\0' ? "" : ")", place_in_file(worked, misfit->node));
    add_side(&line, worked, misfit->node, misfit->first);
    if (misfit->kind == MUSLIN_MISFIT_ALLOWANCE) {
        add(&line, " and ");
        add_side(&line, worked, misfit->node, misfit->second);
        add(&line, " have different seam allowances where they are sewn together");
    } else {
        add(&line, " measures %s finished, ", measured(worked, misfit->first_size, text));
        add_side(&line, worked, misfit->node, misfit->second);
        add(&line, " %s", measured(worked, misfit->second_size, text));
        add(&line, ", where they are sewn together: they differ by %s",
            measured(worked, misfit->difference < 0 ? -misfit->difference : misfit->difference, text));
    }
    if (is_eased)
        add(&line, ". Ease them to each other, %s over each of %" PRId64 " piece%s",
            measured(worked, misfit->ease_each < 0 ? -misfit->ease_each : misfit->ease_each, text), misfit->pieces,
            plural(misfit->pieces));
    add(&line, " (%" PRId64 " time%s).", misfit->count, plural(misfit->count));
    put(document, is_eased ? ITEM_POINT : ITEM_CAUTION, 0, NULL, &line);
}

static void write_misfits(struct document *document, const struct worked *worked)
{
    if (worked->totals.misfits > 0)
        say(document, ITEM_CAUTION, 0, NULL, "%" PRId64 " pair%s of edges do%s not meet: change the design before you "
            "cut.", worked->totals.misfits, plural(worked->totals.misfits), worked->totals.misfits == 1 ? "es" : "");
    for (size_t i = 0; i < worked->misfits_count; i++)
        write_misfit(document, worked, &worked->misfits[i]);
}

/* ---- notes ------------------------------------------------------------------------------------------------------- */

static void write_sizes(struct document *document, const struct worked *worked)
{
    char text[WORD_ROOM];
    const int64_t tops = worked->design->solve.tops;
    say(document, ITEM_SAY, 0, NULL, "Top, finished: %s.",
        measured_by(worked, worked->top.finished_width, worked->top.finished_height, text));
    say(document, ITEM_SAY, 0, NULL, "Top, unfinished: %s.",
        measured_by(worked, worked->top.unfinished_width, worked->top.unfinished_height, text));
    if (tops > 1)
        say(document, ITEM_SAY, 0, NULL, "%" PRId64 " patches in %" PRId64 " tops, which are made at once: all numbers "
            "of pieces and all cloth are for %" PRId64 ".", worked->totals.patches, tops, tops);
    else
        say(document, ITEM_SAY, 0, NULL, "%" PRId64 " patch%s.", worked->totals.patches,
            worked->totals.patches == 1 ? "" : "es");
}

static void write_seam(struct document *document, const struct worked *worked)
{
    struct line line = { NULL, 0, 0 };
    char text[WORD_ROOM];
    muslin_id allowance;
    muslin_id take_up;
    muslin_len value;
    must(muslin_quilt_seam(worked->design->quilt, &allowance, &take_up, NULL));
    must(muslin_solution_value(worked->solution, allowance, &value, NULL));
    add(&line, "Seam allowance %s", measured_fine(worked, value, text));
    must(muslin_solution_value(worked->solution, take_up, &value, NULL));
    if (value == 0)
        add(&line, ", a scant one, so that the fold is in it. It is");
    else
        add(&line, ", as stitched; fold and thread of a pressed seam are reckoned to take %s more. Both are",
            measured_fine(worked, value, text));
    add(&line, " included in all sizes to cut and in all unfinished sizes.");
    put(document, ITEM_POINT, 0, NULL, &line);
}

static bool is_of_one_sort(const struct cloth *a, const struct cloth *b)
{
    return a->usable_width == b->usable_width && a->strip_cut == b->strip_cut;
}

static size_t first_of_sort(const struct design *design, size_t cloth)
{
    size_t first = 0;
    while (!is_of_one_sort(&design->cloths[first], &design->cloths[cloth]))
        first++;
    return first;
}

/* The names of all cloths of the sort. */
static void add_sort(struct line *line, const struct design *design, size_t first)
{
    size_t count = 0;
    size_t told = 0;
    for (size_t i = first; i < design->cloths_used; i++)
        count += is_of_one_sort(&design->cloths[first], &design->cloths[i]);
    for (size_t i = first; i < design->cloths_used; i++)
        if (is_of_one_sort(&design->cloths[first], &design->cloths[i]))
            add(line, "%s%s", comma(told++, count), design->cloths[i].name);
}

/* Cloth of one width is told once. */
static void write_widths(struct document *document, const struct worked *worked)
{
    const struct design *design = worked->design;
    char text[WORD_ROOM];
    for (size_t i = 0; i < design->cloths_used; i++) {
        const struct cloth *cloth = &design->cloths[i];
        struct line line = { NULL, 0, 0 };
        if (first_of_sort(design, i) != i)
            continue;
        measured(worked, cloth->usable_width, text);
        add(&line, cloth->strip_cut > 0 ? "Strips, reckoned %s long, selvages off: " : "Cloth reckoned %s wide, "
            "selvages off, which is its \"width of %s\": ", text, word(worked, WORD_FABRIC));
        add_sort(&line, design, i);
        add(&line, cloth->strip_cut > 0 ? ". Do not wash strips before they are sewn: they fray and lose their size."
                                        : ". Wash or steam test it first if you will wash the quilt.");
        put(document, ITEM_POINT, 0, NULL, &line);
    }
}

bool is_test_step(const struct worked *worked, size_t step)
{
    const struct muslin_sewing_step *row = &worked->steps[step];
    const struct named *named = named_of(worked->design, row->node);
    return named != NULL && named->is_block && row->alike > 1 && row->kind != MUSLIN_SEWING_SET;
}

bool has_test_block(const struct worked *worked)
{
    for (size_t i = 0; i < worked->steps_count; i++)
        if (is_test_step(worked, i))
            return true;
    return false;
}

/* Where there is no such block. */
static bool is_test_unit(const struct worked *worked, size_t step)
{
    const struct muslin_sewing_step *row = &worked->steps[step];
    return row->alike > 1 && (row->kind == MUSLIN_SEWING_UNIT || row->kind == MUSLIN_SEWING_SHAPE);
}

bool has_test_unit(const struct worked *worked)
{
    for (size_t i = 0; !has_test_block(worked) && i < worked->steps_count; i++)
        if (is_test_unit(worked, i))
            return true;
    return false;
}

static bool has_sets(const struct worked *worked)
{
    for (size_t i = 0; i < worked->steps_count; i++)
        if (worked->steps[i].kind == MUSLIN_SEWING_SET)
            return true;
    return false;
}

/* "warm block A, 8 1/2 in x 8 1/2 in unfinished; cool block B, ...", of all such steps. */
static void add_tests(struct line *line, const struct worked *worked,
                      bool (*is_one)(const struct worked *worked, size_t step))
{
    char text[WORD_ROOM];
    char letter[16];
    size_t found = 0;
    for (size_t i = 0; i < worked->steps_count; i++) {
        const struct muslin_sewing_step *step = &worked->steps[i];
        if (!is_one(worked, i))
            continue;
        add(line, "%s", found++ > 0 ? "; " : "");
        add_name(line, worked, step->node);
        add(line, " %s, %s unfinished", letter_of(worked, step->node, letter),
            measured_by(worked, step->unfinished_width, step->unfinished_height, text));
    }
}

/* Blocks of which there are more, or else units: some of each are finished before the rest of their parts. */
static void write_tests(struct document *document, const struct worked *worked)
{
    struct line line = { NULL, 0, 0 };
    if (has_test_block(worked)) {
        add(&line, "Test block: first cut and sew what one block needs, step by step, and measure it: ");
        add_tests(&line, worked, is_test_step);
        add(&line, ". It counts as one of those needed. ");
        if (has_sets(worked))
            add(&line, "Of strip sets sew one of each for it, and keep what the block does not take. ");
        add(&line, "When it measures right, cut the rest, and sew all parts of a step in a chain.");
    } else if (has_test_unit(worked)) {
        add(&line, "Test unit: first cut and sew as few of each unit as its step makes at a time, and measure them: ");
        add_tests(&line, worked, is_test_unit);
        add(&line, ". They count as some of those needed. When they measure right, cut the rest, and sew all parts of "
            "a step in a chain.");
    }
    if (line.used > 0)
        put(document, ITEM_POINT, 0, NULL, &line);
}

static void write_letters(struct document *document, const struct worked *worked)
{
    char text[WORD_ROOM];
    say(document, ITEM_POINT, 0, NULL, "%ss have F and a number, F1; pieces have numbers, [1]; what is sewn of them "
        "has letters, A, and is called a step. Numbers of pieces and letters are those of this size. Within a step, "
        "what was told once is then called by its number or letter alone.", capital(worked, WORD_FABRIC, text));
    if (has_other_way(worked, false))
        say(document, ITEM_POINT, 0, NULL, "A* is the same as A with all its seams, also those of its parts, pressed "
            "the other way, so that seams lie opposite ways where they meet: in A* a part B is a B*, and a B* is a B.");
    if (has_other_way(worked, true))
        say(document, ITEM_POINT, 0, NULL, "Where a step says that A* is turned, sew and press it like any A, with the "
            "same parts, and only turn it when it is sewn in: it looks the same, and its seams lie opposite ways to "
            "those they meet.");
    say(document, ITEM_POINT, 0, NULL, "The drawing shows the top with its upper edge above. On it are the letters of "
        "blocks and of rows that run across%s.",
        worked->design->fields_used > 0 ? "; on point, the numbers of the diagonal rows" : "");
}

/* The cover of one size alone has its top already. */
static bool is_drawn_alone(const struct document *document)
{
    size_t tops = 0;
    size_t sizes = 0;
    for (size_t i = 0; i < document->used; i++) {
        sizes += document->items[i].kind == ITEM_SIZE;
        tops += document->items[i].kind == ITEM_PICTURE && document->items[i].picture.kind == PICTURE_TOP;
    }
    return sizes == 1 && tops == 1;
}

void write_notes(struct document *document, const struct worked *worked)
{
    say(document, ITEM_HEADING, 0, NULL, "Read this first");
    write_sizes(document, worked);
    say(document, ITEM_CAUTION, 0, NULL, "No quilt belongs in the place where an infant sleeps.");
    write_misfits(document, worked);
    if (!is_drawn_alone(document))
        put_picture(document, PICTURE_TOP, worked, 0, "The top, finished, in its fabrics");
    put_picture(document, PICTURE_KEY, worked, 0, "Fabrics: glue a snippet of your own beside each");
    say(document, ITEM_POINT, 0, NULL, "Where you take other %ss, keep dark and pale where they are on the drawing: "
        "look at yours together with half-closed eyes.", word(worked, WORD_FABRIC));
    say(document, ITEM_POINT, 0, NULL, "Tools: rotary cutter, mat and a long ruler; sewing machine, thread, pins, "
        "iron; labels, and a marker that washes out.");
    write_seam(document, worked);
    write_widths(document, worked);
    say(document, ITEM_POINT, 0, NULL, "The cutting list says what there is to cut. Cut it strip by strip, in the "
        "order in which the cloth is laid out behind it.");
    if (worked->design->borders_used > 0)
        say(document, ITEM_POINT, 0, NULL, "Lay cloth aside for border strips: they are cut after the top is "
            "measured.");
    write_tests(document, worked);
    write_letters(document, worked);
}
