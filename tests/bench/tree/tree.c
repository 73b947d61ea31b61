/* tree.c - how fast trees are built and solved, and what memory they take: one run, one line of JSON for each size.
 *
 * SPDX-License-Identifier: MIT
 *
 * Two kinds of tops, 10^2 to 10^6 patches: `alike`, one block over and over, turned like a chessboard; and `different`,
 * every patch of a width of its own, in rows of 1000 at most. Times are the best of several rounds. Ratios stand beside
 * them: to a plain loop over as many patches that adds the seam to each size, and to the size before, which for a
 * linear cost is 10 (of the different ones). Nothing is passed or failed here. */
#include "../measure.h"

#include "../counted.h"

#include <inttypes.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

static void must(muslin_status status)
{
    if (status == MUSLIN_OK)
        return;
    fprintf(stderr, "tree: %s\n", muslin_status_sentence(status));
    exit(1);
}

/* ---- tops ------------------------------------------------------------------------------------------------------- */

static muslin_id a_fabric(struct muslin_quilt *quilt, const char *name)
{
    struct muslin_quilt_fabric_spec spec = MUSLIN_QUILT_FABRIC_SPEC_INIT;
    muslin_id id;
    must(muslin_quilt_fabric(quilt, &spec, name, strlen(name), &id, NULL));
    return id;
}

static muslin_id a_patch(struct muslin_quilt *quilt, muslin_id fabric, muslin_id width, muslin_id height)
{
    struct muslin_quilt_patch_spec spec = MUSLIN_QUILT_PATCH_SPEC_INIT;
    muslin_id id;
    spec.fabric = fabric;
    spec.width = width;
    spec.height = height;
    must(muslin_quilt_patch(quilt, &spec, &id, NULL));
    return id;
}

static muslin_id a_join(struct muslin_quilt *quilt, int32_t axis, const muslin_id *children, size_t n)
{
    struct muslin_quilt_join_spec spec = MUSLIN_QUILT_JOIN_SPEC_INIT;
    muslin_id id;
    spec.axis = axis;
    must(muslin_quilt_join(quilt, &spec, children, n, &id, NULL));
    return id;
}

/* Four-patch blocks, side x side patches in all. */
static muslin_id alike(struct muslin_quilt *quilt, int64_t side)
{
    static const int32_t turns[] = { 0, 1, 1, 0 };
    muslin_id two;
    muslin_id top;
    must(muslin_quilt_measure(quilt, "square", 6, 16256, &two, NULL));
    muslin_id dark = a_patch(quilt, a_fabric(quilt, "dark"), two, two);
    muslin_id light = a_patch(quilt, a_fabric(quilt, "light"), two, two);
    const muslin_id first[] = { dark, light };
    const muslin_id second[] = { light, dark };
    const muslin_id rows[] = { a_join(quilt, MUSLIN_AXIS_ACROSS, first, 2),
                               a_join(quilt, MUSLIN_AXIS_ACROSS, second, 2) };
    muslin_id block = a_join(quilt, MUSLIN_AXIS_DOWN, rows, 2);
    must(muslin_quilt_repeat(quilt, block, side / 2, side / 2, turns, 4, 2, 2, &top, NULL));
    return top;
}

/* Rows of patches, each of a width that no other has, all 2 in high. */
static muslin_id different(struct muslin_quilt *quilt, int64_t side)
{
    muslin_id fabric = a_fabric(quilt, "scraps");
    muslin_id *row = malloc((size_t)side * sizeof *row);
    muslin_id *rows = malloc((size_t)side * sizeof *rows);
    muslin_id height;
    if (row == NULL || rows == NULL)
        exit(1);
    must(muslin_quilt_fixed(quilt, 16256, &height, NULL));
    for (int64_t r = 0; r < side; r++) {
        for (int64_t c = 0; c < side; c++) {
            muslin_id width;
            must(muslin_quilt_fixed(quilt, 4064 + r * side + c, &width, NULL));
            row[c] = a_patch(quilt, fabric, width, height);
        }
        rows[r] = a_join(quilt, MUSLIN_AXIS_ACROSS, row, (size_t)side);
    }
    muslin_id top = a_join(quilt, MUSLIN_AXIS_DOWN, rows, (size_t)side);
    free(row);
    free(rows);
    return top;
}

/* ---- one size --------------------------------------------------------------------------------------------------- */

struct times {
    double build;
    double solve;
    double press;
    double outlines;
    double plain; /* a loop over as many patches */
};

static double lesser(double a, double b)
{
    return a == 0 || b < a ? b : a;
}

/* What a program would do at least: add the seam to every patch's size. */
static double plain_loop(int64_t patches)
{
    int64_t *sizes = malloc((size_t)patches * 2 * sizeof *sizes);
    if (sizes == NULL)
        exit(1);
    for (int64_t i = 0; i < 2 * patches; i++)
        sizes[i] = i;
    double start = now();
    for (int64_t i = 0; i < 2 * patches; i++)
        sizes[i] += 4064;
    double took = now() - start;
    volatile int64_t kept = sizes[patches];
    (void)kept;
    free(sizes);
    return took;
}

static double draw_all(const struct muslin_solution *solution, muslin_id top, int64_t patches)
{
    enum { PAGE = 256 };
    static struct muslin_outline rows[PAGE];
    static struct muslin_outline_corner corners[PAGE * 4];
    double start = now();
    for (int64_t first = 0; first < patches;) {
        size_t count;
        size_t given;
        must(muslin_solution_outlines(solution, top, MUSLIN_STAGE_FINISHED, first, rows, sizeof rows[0], PAGE, corners,
                                      sizeof corners[0], (size_t)PAGE * 4, &count, &given, NULL));
        first += (int64_t)given;
    }
    return now() - start;
}

static double press_all(const struct muslin_solution *solution)
{
    struct muslin_pressing_spec spec = MUSLIN_PRESSING_SPEC_INIT;
    struct muslin_pressing *plan;
    double start = now();
    must(muslin_pressing_create(solution, &spec, NULL, NULL, NULL, &plan, NULL));
    double took = now() - start;
    muslin_pressing_free(plan);
    return took;
}

static void measure(const char *kind, int64_t side, int rounds, struct times *before)
{
    struct times best = { 0, 0, 0, 0, 0 };
    struct counted counted = { .calls = 0 };
    must(muslin_allocator_libc(&counted.libc));
    const struct muslin_allocator allocator = { counted_alloc, counted_realloc, counted_free, &counted };
    size_t solve_calls = 0;
    int64_t nodes = 0;
    for (int round = 0; round < rounds; round++) {
        struct muslin_quilt_spec quilt_spec = MUSLIN_QUILT_SPEC_INIT;
        struct muslin_solution_spec solve_spec = MUSLIN_SOLUTION_SPEC_INIT;
        struct muslin_quilt *quilt;
        struct muslin_solution *solution;
        must(muslin_quilt_create(&quilt_spec, &allocator, &quilt, NULL));
        double start = now();
        muslin_id top = kind[0] == 'a' ? alike(quilt, side) : different(quilt, side);
        best.build = lesser(best.build, now() - start);
        size_t calls = counted.calls;
        start = now();
        must(muslin_solution_create(quilt, top, &solve_spec, NULL, 0, 0, NULL, &solution, NULL));
        best.solve = lesser(best.solve, now() - start);
        solve_calls = counted.calls - calls;
        best.press = lesser(best.press, press_all(solution));
        best.outlines = lesser(best.outlines, draw_all(solution, top, side * side));
        best.plain = lesser(best.plain, plain_loop(side * side));
        struct muslin_part_counts counts = { .size = (uint32_t)sizeof counts };
        must(muslin_quilt_counts(quilt, &counts, NULL));
        nodes = counts.nodes;
        muslin_solution_free(solution);
        muslin_quilt_free(quilt);
    }
    printf("{\"top\": \"%s\", \"patches\": %" PRId64 ", \"nodes\": %" PRId64 ", \"build_ms\": %.3f, \"solve_ms\": %.3f, "
           "\"press_ms\": %.3f, \"outlines_ms\": %.3f, \"memory_mb\": %.1f, \"allocations_of_solving\": %zu, "
           "\"solve_to_plain_loop\": %.2f, \"solve_to_size_before\": %.2f}\n",
           kind, side * side, nodes, best.build, best.solve, best.press, best.outlines, (double)counted.most / 1e6,
           solve_calls, best.solve / best.plain, before->solve > 0 ? best.solve / before->solve : 0.0);
    fflush(stdout);
    *before = best;
}

int main(int argc, char **argv)
{
    static const int64_t sides[] = { 10, 32, 100, 316, 1000 };
    int most = argc > 1 ? atoi(argv[1]) : 5;
    const char *const kinds[] = { "alike", "different" };
    for (int kind = 0; kind < 2; kind++) {
        struct times before = { 0, 0, 0, 0, 0 };
        for (int i = 0; i < most && i < 5; i++)
            measure(kinds[kind], sides[i], sides[i] < 300 ? 9 : 3, &before);
    }
    return 0;
}
