/* sheet.c - the working sheet of a top: sizes, what to cut, how to sew it, which way to press.
 *
 * SPDX-License-Identifier: MIT */
#include <inttypes.h>
#include <stdlib.h>
#include <string.h>

#include "tops.h"

/* ---- words ------------------------------------------------------------------------------------------------------ */

const char *inches(muslin_len length, char text[WORD])
{
    int32_t exact;
    must(muslin_length_format(length, NULL, text + 1, WORD - 1, NULL, &exact, NULL), NULL);
    text[0] = '~';
    return exact ? text + 1 : text;
}

static const char *name_of(const struct design *design, muslin_id fabric)
{
    for (int i = 0; i < design->cloths_used; i++)
        if (design->cloths[i].id == fabric)
            return design->cloths[i].name;
    return "?";
}

static void *rows_for(size_t count, size_t size)
{
    void *rows = calloc(count == 0 ? 1 : count, size);
    if (rows == NULL) {
        fputs("tops: out of memory\n", stderr);
        exit(1);
    }
    return rows;
}

static const char *stack(int64_t number, char text[16])
{
    size_t need;
    must(muslin_sewing_label(number, text, 16, &need, NULL), NULL);
    return text;
}

/* ---- parts of the sheet ----------------------------------------------------------------------------------------- */

static void print_sizes(const struct design *design, const struct muslin_solution *solution)
{
    struct muslin_node_size size = { .size = (uint32_t)sizeof size };
    struct muslin_totals totals = { .size = (uint32_t)sizeof totals };
    char a[WORD];
    char b[WORD];
    must(muslin_solution_size(solution, design->top, &size, NULL), NULL);
    must(muslin_solution_totals(solution, &totals, NULL), NULL);
    printf("Top, finished %s x %s, ", inches(size.finished_width, a), inches(size.finished_height, b));
    printf("unfinished %s x %s; ", inches(size.unfinished_width, a), inches(size.unfinished_height, b));
    printf("%" PRId64 " patches, %" PRId64 " different parts\n", totals.patches, totals.different_nodes);
    if (totals.misfits > 0)
        printf("CAUTION: %" PRId64 " pairs of edges do not meet; see the misfits\n", totals.misfits);
}

static const char *again_words(int32_t again)
{
    if (again == MUSLIN_AGAIN_ONCE)
        return ", cut once on the diagonal";
    return again == MUSLIN_AGAIN_TWICE ? ", cut twice on the diagonal" : "";
}

static void print_cuts(const struct design *design, const struct muslin_solution *solution)
{
    size_t count;
    char a[WORD];
    char b[WORD];
    must(muslin_solution_cuts(solution, NULL, 0, 0, &count, NULL), NULL);
    struct muslin_cut *rows = rows_for(count, sizeof *rows);
    must(muslin_solution_cuts(solution, rows, sizeof *rows, count, &count, NULL), NULL);
    printf("\nCut (sizes as cut, width x height)\n");
    for (size_t i = 0; i < count; i++) {
        if (i == 0 || rows[i].fabric != rows[i - 1].fabric)
            printf("  %s\n", name_of(design, rows[i].fabric));
        printf("    %5" PRId64 "  %s x %s%s", rows[i].count, inches(rows[i].cut_width, a),
               inches(rows[i].cut_height, b), again_words(rows[i].again));
        if (rows[i].source == MUSLIN_CUT_SET_STRIP)
            printf(", strips for strip sets");
        else if (rows[i].pieces != rows[i].count)
            printf(": %" PRId64 " pieces", rows[i].pieces);
        if (rows[i].spare > 0)
            printf(", %" PRId64 " spare", rows[i].spare);
        printf("\n");
    }
    free(rows);
}

static void print_steps(const struct muslin_solution *solution)
{
    static const char *const words[] = { "",
                                         "sew strips into sets",
                                         "cut the sets into segments",
                                         "make units by their recipe",
                                         "sew the shapes",
                                         "join",
                                         "trim",
                                         "sew round the centre, first seam in part",
                                         "set in, mitre the corners",
                                         "join on point in diagonal rows",
                                         "join rows of 60 degree pieces" };
    struct muslin_sewn_totals totals = { .size = (uint32_t)sizeof totals };
    size_t count;
    char label[16];
    char a[WORD];
    char b[WORD];
    must(muslin_sewing_steps(solution, NULL, 0, 0, &count, NULL), NULL);
    struct muslin_sewing_row *rows = rows_for(count, sizeof *rows);
    must(muslin_sewing_steps(solution, rows, sizeof *rows, count, &count, NULL), NULL);
    printf("\nSew (sizes unfinished)\n");
    for (size_t i = 0; i < count; i++) {
        printf("  %2zu  stack %-3s %4" PRId64 " x %s", i + 1, stack(rows[i].stack, label), rows[i].alike,
               words[rows[i].kind]);
        if (rows[i].pieces > 1)
            printf(", %" PRId64 " pieces", rows[i].pieces);
        printf(": %s x %s\n", inches(rows[i].unfinished_width, a), inches(rows[i].unfinished_height, b));
    }
    must(muslin_sewing_totals(solution, 127, 0, &totals, NULL), NULL);
    printf("  %" PRId64 " seams, in all %s long; ", totals.seams, inches(totals.sewn, a));
    printf("with every seam off by 1/64 in the top may be off by %s across, at worst\n", inches(totals.width_worst, b));
    free(rows);
}

static void print_pressing(const struct muslin_solution *solution)
{
    struct muslin_pressing_spec spec = MUSLIN_PRESSING_SPEC_INIT;
    struct muslin_pressed_totals totals = { .size = (uint32_t)sizeof totals };
    struct muslin_pressing_plan *plan;
    must(muslin_pressing_create(solution, &spec, &plan, NULL), NULL);
    must(muslin_pressing_totals(plan, &totals, NULL), NULL);
    printf("\nPress: seams meet at %" PRId64 " places, %" PRId64 " of them do not nest (no plan of this sort has fewer "
           "than %" PRId64 "; pressed in turn, %" PRId64 ")\n",
           totals.meetings, totals.exceptions, totals.least, totals.alternating);
    muslin_pressing_free(plan);
}

void print_sheet(const struct design *design, const struct muslin_solution *solution, const struct pattern *pattern)
{
    printf("%s (an invented quilt)\n%s\n\n", pattern->title, pattern->story);
    print_sizes(design, solution);
    print_cuts(design, solution);
    print_steps(solution);
    print_pressing(solution);
    printf("\nAll seams 1/4 in. Cutting cannot be undone: make one block and measure it before cutting the rest.\n"
           "Rotary cutters, irons, needles and pins hurt: close the blade, and keep them from children. No quilt\n"
           "belongs in the place where an infant sleeps.\n");
}
