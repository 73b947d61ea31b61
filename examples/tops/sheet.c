/* sheet.c - the working sheet of a top: its size, what to know before, cut list, steps, pressing, cautions.
 *
 * SPDX-License-Identifier: MIT */
#include <inttypes.h>
#include <stdlib.h>

#include "sheet.h"

/* ---- rows of the library ---------------------------------------------------------------------------------------- */

static void *rows_for(size_t count, size_t size)
{
    void *rows = calloc(count + 1, size);
    if (rows == NULL)
        must(MUSLIN_ERR_NO_MEMORY, NULL);
    return rows;
}

muslin_id *children_of(const struct sheet *sheet, muslin_id node, size_t *count)
{
    must(muslin_quilt_children(sheet->design->quilt, node, NULL, 0, count, NULL), NULL);
    muslin_id *ids = rows_for(*count, sizeof *ids);
    must(muslin_quilt_children(sheet->design->quilt, node, ids, *count, count, NULL), NULL);
    return ids;
}

/* The four strips of a mitred border are cut alike: one number. */
static int shares_number(const struct muslin_cut *a, const struct muslin_cut *b)
{
    return a->source == MUSLIN_CUT_MITRED && b->source == MUSLIN_CUT_MITRED && a->fabric == b->fabric &&
           a->cut_width == b->cut_width && a->cut_height == b->cut_height;
}

/* How long the cloth must be for it; strips are cut across all of it. */
static muslin_len length_of(const struct muslin_cut *cut)
{
    if (cut->source == MUSLIN_CUT_SET_STRIP || cut->pitch > 0)
        return USABLE;
    return cut->cut_width > cut->cut_height ? cut->cut_width : cut->cut_height;
}

/* Of one fabric first what is cut from strips joined end to end, the widest first, then the longest first. */
static int is_cut_before(const struct muslin_cut *a, const struct muslin_cut *b)
{
    if (a->fabric != b->fabric)
        return 0;
    if (is_too_long(a) != is_too_long(b))
        return is_too_long(a);
    if (is_too_long(a) && a->cut_height != b->cut_height)
        return a->cut_height > b->cut_height;
    return length_of(a) > length_of(b);
}

/* Cuts of one fabric stand together: each moves up among them as far as it goes. */
static void put_in_order(struct sheet *sheet)
{
    size_t *order = sheet->order = rows_for(sheet->cuts_count, sizeof *order);
    int number = 0;
    for (size_t i = 0; i < sheet->cuts_count; i++) {
        size_t place = i;
        for (; place > 0 && is_cut_before(&sheet->cuts[i], &sheet->cuts[order[place - 1]]); place--)
            order[place] = order[place - 1];
        order[place] = i;
    }
    sheet->piece = rows_for(sheet->cuts_count, sizeof *sheet->piece);
    for (size_t i = 0; i < sheet->cuts_count; i++) {
        number += i == 0 || !shares_number(&sheet->cuts[order[i - 1]], &sheet->cuts[order[i]]);
        sheet->piece[order[i]] = number;
    }
}

static void read_cuts(struct sheet *sheet)
{
    size_t *count = &sheet->cuts_count;
    must(muslin_solution_cuts(sheet->solution, NULL, 0, 0, count, NULL), NULL);
    sheet->cuts = rows_for(*count, sizeof *sheet->cuts);
    must(muslin_solution_cuts(sheet->solution, sheet->cuts, sizeof *sheet->cuts, *count, count, NULL), NULL);
    put_in_order(sheet);
    count = &sheet->sets_count;
    must(muslin_solution_strip_sets(sheet->solution, NULL, 0, 0, count, NULL), NULL);
    sheet->sets = rows_for(*count, sizeof *sheet->sets);
    must(muslin_solution_strip_sets(sheet->solution, sheet->sets, sizeof *sheet->sets, *count, count, NULL), NULL);
}

static void read_steps(struct sheet *sheet)
{
    size_t *count = &sheet->steps_count;
    must(muslin_sewing_steps(sheet->solution, NULL, 0, 0, count, NULL), NULL);
    sheet->steps = rows_for(*count, sizeof *sheet->steps);
    must(muslin_sewing_steps(sheet->solution, sheet->steps, sizeof *sheet->steps, *count, count, NULL), NULL);
    sheet->feeds = rows_for(*count, sizeof *sheet->feeds);
    for (size_t i = 0; i < *count; i++) {
        struct feeds *feeds = &sheet->feeds[i];
        int64_t step = (int64_t)i;
        must(muslin_sewing_feeds(sheet->solution, step, NULL, 0, 0, &feeds->count, NULL), NULL);
        feeds->rows = rows_for(feeds->count, sizeof *feeds->rows);
        must(muslin_sewing_feeds(sheet->solution, step, feeds->rows, sizeof *feeds->rows, feeds->count, &feeds->count,
                                 NULL),
             NULL);
    }
}

/* Units are pressed as their recipes say, so that all of one letter are alike. */
static void read_pressing(struct sheet *sheet)
{
    struct muslin_pressing_spec spec = MUSLIN_PRESSING_SPEC_INIT;
    size_t *count = &sheet->seams_count;
    spec.units = 1;
    must(muslin_pressing_create(sheet->solution, &spec, &sheet->plan, NULL), NULL);
    must(muslin_pressing_seams(sheet->plan, NULL, 0, 0, count, NULL), NULL);
    sheet->seams = rows_for(*count, sizeof *sheet->seams);
    must(muslin_pressing_seams(sheet->plan, sheet->seams, sizeof *sheet->seams, *count, count, NULL), NULL);
    count = &sheet->children_count;
    must(muslin_pressing_children(sheet->plan, NULL, 0, 0, count, NULL), NULL);
    sheet->children = rows_for(*count, sizeof *sheet->children);
    must(muslin_pressing_children(sheet->plan, sheet->children, sizeof *sheet->children, *count, count, NULL), NULL);
    count = &sheet->exceptions_count;
    must(muslin_pressing_exceptions(sheet->plan, NULL, 0, 0, count, NULL), NULL);
    sheet->exceptions = rows_for(*count, sizeof *sheet->exceptions);
    must(muslin_pressing_exceptions(sheet->plan, sheet->exceptions, sizeof *sheet->exceptions, *count, count, NULL),
         NULL);
}

struct sheet *sheet_create(const struct design *design, const struct muslin_solution *solution,
                           const struct muslin_solve_spec *spec)
{
    struct sheet *sheet = rows_for(1, sizeof *sheet);
    sheet->design = design;
    sheet->solution = solution;
    sheet->spec = spec;
    read_cuts(sheet);
    read_steps(sheet);
    read_pressing(sheet);
    read_yardage(sheet);
    return sheet;
}

void sheet_free(struct sheet *sheet)
{
    for (size_t i = 0; i < sheet->steps_count; i++)
        free(sheet->feeds[i].rows);
    free(sheet->feeds);
    free(sheet->steps);
    free(sheet->sets);
    free(sheet->piece);
    free(sheet->order);
    free(sheet->exceptions);
    free(sheet->cuts);
    free(sheet->children);
    free(sheet->seams);
    muslin_pressing_free(sheet->plan);
    free(sheet->bill);
    muslin_yardage_free(sheet->yardage);
    free(sheet);
}

/* ---- parts of the sheet ----------------------------------------------------------------------------------------- */

static void print_sizes(const struct sheet *sheet)
{
    struct muslin_node_size size = size_of(sheet, sheet->design->top);
    struct muslin_totals totals = { .size = (uint32_t)sizeof totals };
    char text[WORD];
    must(muslin_solution_totals(sheet->solution, &totals, NULL), NULL);
    printf("Top, finished: %s\n", inches_by(size.finished_width, size.finished_height, text));
    printf("Top, unfinished: %s\n", inches_by(size.unfinished_width, size.unfinished_height, text));
    printf("%" PRId64 " patches. This sheet is for the top and cloth for binding; batting and backing are not in it.\n",
           totals.patches);
    if (totals.misfits > 0)
        printf("CAUTION: %" PRId64 " pairs of edges do not meet; see the misfits\n", totals.misfits);
}

/* Whether something is taken the other way: turned, or else pressed so. */
static int has_other_way(const struct sheet *sheet, int is_turned)
{
    for (size_t i = 0; i < sheet->seams_count; i++)
        if (sheet->seams[i].other_way > 0 && (sheet->seams[i].other == MUSLIN_OTHER_TURNED) == is_turned)
            return 1;
    return 0;
}

static int has_border(const struct sheet *sheet)
{
    for (int i = 0; i < sheet->design->names_used; i++)
        if (sheet->design->names[i].side != 0)
            return 1;
    return 0;
}

static void print_note(const char *text)
{
    struct line line = { .used = 0 };
    add(&line, "- %s", text);
    print_line(&line, 2, 2);
}

/* Blocks of which there are more: one of each is finished before the rest of their parts. */
static void print_first_blocks(const struct sheet *sheet)
{
    struct line line = { .used = 0 };
    char text[WORD];
    char name[16];
    size_t found = 0;
    for (size_t i = 0; i < sheet->steps_count; i++) {
        const struct muslin_sewing_row *step = &sheet->steps[i];
        const struct named *named = named_of(sheet, step->node);
        if (named == NULL || !named->is_block || step->alike == 1 || step->kind == MUSLIN_SEWING_SET)
            continue;
        add(&line, "%s%s %s, ", found++ > 0 ? "; " : "- First cut and sew what one block needs, step by step, and "
            "measure it: ", named->name, letter(sheet, step->node, name));
        add(&line, "%s unfinished", inches_by(step->unfinished_width, step->unfinished_height, text));
    }
    if (found > 0) {
        add(&line, ". Only then sew all parts of a step in a chain.");
        print_line(&line, 2, 2);
    }
}

static void print_notes(const struct sheet *sheet)
{
    printf("\nBEFORE YOU BEGIN\n");
    print_note("Seam allowance 1/4 in, a scant one, so that the fold is in it. It is included in all sizes to cut and "
               "in all unfinished sizes.");
    print_note("Cloth is reckoned 40 in wide, selvages off: \"width of fabric\". Wash or steam test it first if you "
               "will wash the quilt.");
    print_note("The cut list says what there is to cut. Cut it strip by strip, in the order in which the cloth is laid "
               "out behind it.");
    if (has_border(sheet))
        print_note("Lay cloth aside for border strips: they are cut after the top is measured.");
    print_note("Pieces have numbers, [1]; what is sewn of them has letters, A. Units, blocks and rows of one letter "
               "are sewn one after the other in a chain.");
    print_first_blocks(sheet);
    if (has_other_way(sheet, 0))
        print_note("A* is the same as A with all its seams, also those of its parts, pressed the other way, so that "
                   "seams lie opposite ways where they meet: in A* a part B is a B*, and a B* is a B.");
    if (has_other_way(sheet, 1))
        print_note("Where a step says that A* is turned, sew and press it like any A, with the same parts, and only turn "
                   "it when it is sewn in: it looks the same, and its seams lie opposite ways to those they meet.");
    print_note("\"About\": the exact length is no whole eighth of an inch, as of squares on point; it is told to the "
               "nearest 1/8 in.");
    print_note("The drawing shows the top with its upper edge above. On it are the letters of blocks and of rows that "
               "run across; on point, the numbers of the diagonal rows.");
}

static void print_totals(const struct sheet *sheet)
{
    struct muslin_sewn_totals totals = { .size = (uint32_t)sizeof totals };
    struct muslin_format_spec yards = MUSLIN_FORMAT_SPEC_INIT;
    struct line line = { .used = 0 };
    char text[WORD];
    must(muslin_sewing_totals(sheet->solution, INCH / 32, 0, &totals, NULL), NULL);
    yards.style = MUSLIN_STYLE_YARD_FRACTION;
    yards.denominator = 1;
    yards.direction = MUSLIN_ROUND_UP;
    must(muslin_length_format(totals.sewn, &yards, text, WORD, NULL, NULL, NULL), NULL);
    add(&line, "About %s of seams in all. An allowance that is 1/64 in off makes each seam 1/32 in off: if all seams "
        "are off the same way, the top comes out off by no more than ", text);
    add(&line, "%s across ", inches(totals.width_worst, text));
    add(&line, "and %s down. That adds up the part with the most seams of each row, and slanting seams in full: it is "
        "less where rows are eased to each other and where units are trimmed to size.",
        inches(totals.height_worst, text));
    print_line(&line, 2, 0);
}

void print_sheet(const struct sheet *sheet, const struct pattern *pattern)
{
    printf("%s (an invented quilt; its colours are invented too)\n%s\n\n", pattern->title, pattern->story);
    print_sizes(sheet);
    print_notes(sheet);
    print_cuts(sheet);
    print_yardage(sheet);
    print_steps(sheet);
    print_summary(sheet);
    print_totals(sheet);
    printf("\nCAUTIONS\n");
    print_note("Cutting cannot be undone: cut for one block or unit first, sew it and measure it, as far as the method "
               "lets you. Of strip sets sew one, cut a segment and measure that.");
    print_note("Edges that were cut on the slant (triangles, diamonds) stretch: press them without pushing.");
    print_note("Rotary cutters, irons, needles and pins hurt: close the blade, and keep them from children. No quilt "
               "belongs in the place where an infant sleeps.");
}
