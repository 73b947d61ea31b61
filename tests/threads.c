/* threads.c - several threads at a time: each makes the calls of the corpus that need no handle, then all of them
 * solve, read and check what they share. What they find is what one thread finds; ThreadSanitizer watches.
 *
 * SPDX-License-Identifier: MIT */
#include "golden/golden.h"

#include <pthread.h>
#include <stdio.h>

enum { THREADS = 4, SQUARES = 3 };

static const struct muslin_quilt *quilt;     /* shared */
static const struct muslin_solution *solved; /* shared */
static const struct muslin_cutplan *cut;     /* shared */
static muslin_id top;

/* What one thread finds. */
struct findings {
    uint64_t figures;
    int64_t cuts;
    int64_t area;
    int64_t exceptions;
    int64_t bound;
    int64_t failures;
};

static void want(struct findings *found, muslin_status status)
{
    found->failures += status != MUSLIN_OK;
}

/* A solution and a pressing plan of its own, from the shared quilt. */
static void solve(struct findings *found)
{
    const struct muslin_solution_spec spec = MUSLIN_SOLUTION_SPEC_INIT;
    const struct muslin_pressing_spec pressing_spec = MUSLIN_PRESSING_SPEC_INIT;
    struct muslin_solution_total total = { .size = sizeof total };
    struct muslin_pressing_total pressing_total = { .size = sizeof pressing_total };
    struct muslin_solution *solution = NULL;
    struct muslin_pressing *pressing = NULL;
    want(found, muslin_solution_create(quilt, top, &spec, NULL, 0, 0, NULL, &solution, NULL));
    want(found, muslin_solution_totals(solution, &total, NULL));
    want(found, muslin_pressing_create(solution, &pressing_spec, NULL, NULL, NULL, &pressing, NULL));
    want(found, muslin_pressing_totals(pressing, &pressing_total, NULL));
    found->area = total.finished_area;
    found->exceptions = pressing_total.exceptions;
    muslin_pressing_free(pressing);
    muslin_solution_free(solution);
}

/* Reads what all share. */
static void read_shared(struct findings *found)
{
    struct muslin_solution_cut cuts[16] = { { 0 } };
    struct muslin_cutplan_checked checked = { .size = sizeof checked };
    size_t count = 0;
    for (size_t i = 0; i < 16; i++)
        cuts[i].size = sizeof cuts[i];
    want(found, muslin_solution_cuts(solved, cuts, sizeof cuts[0], 16, &count, NULL));
    want(found, muslin_cutplan_check(cut, NULL, NULL, &checked, NULL));
    for (size_t i = 0; i < count; i++)
        found->cuts += cuts[i].count * cuts[i].cut_width;
    found->bound = checked.least;
}

static void *work(void *context)
{
    struct findings *found = context;
    struct golden golden;
    golden_arithmetic(&golden);
    found->figures = golden.figures;
    for (int round = 0; round < 20; round++) {
        found->cuts = 0;
        solve(found);
        read_shared(found);
    }
    return NULL;
}

static int are_equal(const struct findings *a, const struct findings *b)
{
    return a->figures == b->figures && a->cuts == b->cuts && a->area == b->area && a->exceptions == b->exceptions &&
           a->bound == b->bound && a->failures == 0 && b->failures == 0;
}

/* A nine-patch of two fabrics, four across and four down. */
static struct muslin_quilt *made(struct findings *found)
{
    const struct muslin_quilt_spec spec = MUSLIN_QUILT_SPEC_INIT;
    const struct muslin_quilt_fabric_spec cloth = MUSLIN_QUILT_FABRIC_SPEC_INIT;
    struct muslin_allocator libc = { 0 };
    struct muslin_quilt *making = NULL;
    const int32_t straight = 0;
    muslin_id fabrics[2], patches[9], side, block;
    want(found, muslin_allocator_libc(&libc));
    want(found, muslin_quilt_create(&spec, &libc, &making, NULL));
    want(found, muslin_quilt_fixed(making, INT64_C(2) * 8128, &side, NULL));
    for (int i = 0; i < 2; i++)
        want(found, muslin_quilt_fabric(making, &cloth, "night", 5, &fabrics[i], NULL));
    for (int i = 0; i < 9; i++) {
        struct muslin_quilt_patch_spec patch = MUSLIN_QUILT_PATCH_SPEC_INIT;
        patch.width = patch.height = side;
        patch.fabric = fabrics[i % 2];
        want(found, muslin_quilt_patch(making, &patch, &patches[i], NULL));
    }
    want(found, muslin_quilt_grid(making, 3, 3, patches, 9, &block, NULL));
    want(found, muslin_quilt_repeat(making, block, 4, 4, &straight, 1, 1, 1, &top, NULL));
    return making;
}

int main(void)
{
    const struct muslin_solution_spec spec = MUSLIN_SOLUTION_SPEC_INIT;
    const struct muslin_cutplan_spec cut_spec = MUSLIN_CUTPLAN_SPEC_INIT;
    struct muslin_blank_spec squares[SQUARES];
    struct muslin_allocator libc = { 0 };
    struct findings alone = { 0 }, found[THREADS] = { { 0 } };
    struct muslin_solution *solution = NULL;
    struct muslin_cutplan *plan = NULL;
    struct muslin_quilt *making = made(&alone);
    pthread_t threads[THREADS];
    int wrong = 0;
    want(&alone, muslin_allocator_libc(&libc));
    want(&alone, muslin_solution_create(making, top, &spec, NULL, 0, 0, NULL, &solution, NULL));
    for (int i = 0; i < SQUARES; i++) {
        squares[i] = (struct muslin_blank_spec)MUSLIN_BLANK_SPEC_INIT;
        squares[i].cut_width = squares[i].cut_length = (44 + 16 * i) * INT64_C(1016);
        squares[i].count = 32 >> i;
    }
    want(&alone, muslin_cutplan_create(&cut_spec, squares, sizeof squares[0], SQUARES, NULL, 0, 0, &libc, NULL, NULL,
                                       &plan, NULL));
    quilt = making;
    solved = solution;
    cut = plan;
    work(&alone);
    for (int i = 0; i < THREADS; i++)
        wrong += pthread_create(&threads[i], NULL, work, &found[i]) != 0;
    for (int i = 0; i < THREADS; i++)
        wrong += pthread_join(threads[i], NULL) != 0 || !are_equal(&alone, &found[i]);
    printf("%d threads, %d of them found something else; %lld cut, bound %lld\n", THREADS, wrong, (long long)alone.cuts,
           (long long)alone.bound);
    muslin_cutplan_free(plan);
    muslin_solution_free(solution);
    muslin_quilt_free(making);
    return wrong != 0 || alone.cuts == 0 || alone.bound == 0;
}
