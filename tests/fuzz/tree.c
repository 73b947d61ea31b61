/* tree.c - quilts pieced, solved and read by calls in any order, with memory that runs out.
 *
 * SPDX-License-Identifier: MIT */
#include <stdlib.h>

#include "draw.h"

enum { MOST_CALLS = 40, MOST_STORED = 400, LITTLE_WORK = 500 };

int LLVMFuzzerTestOneInput(const uint8_t *data, size_t size);
int LLVMFuzzerInitialize(int *argc, char ***argv);

int LLVMFuzzerInitialize(int *argc, char ***argv)
{
    (void)argc, (void)argv;
    return atexit(tell_reached);
}

static void keep(struct tree *tree, muslin_status status, muslin_id id)
{
    if (status == MUSLIN_OK)
        tree->ids[tree->ids_used++] = id;
}

/* A quilt with two fabrics, two measures and a patch, so that few bytes make a tree. */
static void begin(struct tree *tree, const struct muslin_allocator *allocator)
{
    struct muslin_quilt_spec spec = MUSLIN_QUILT_SPEC_INIT;
    struct muslin_quilt_fabric_spec fabric = MUSLIN_QUILT_FABRIC_SPEC_INIT;
    struct muslin_quilt_patch_spec patch = MUSLIN_QUILT_PATCH_SPEC_INIT;
    muslin_id id = 0;
    spec.most = MOST_STORED;
    if (muslin_quilt_create(&spec, allocator, &tree->quilt, NULL) != MUSLIN_OK)
        return;
    keep(tree, muslin_quilt_fabric(tree->quilt, &fabric, "a", 1, &id, NULL), id);
    patch.fabric = id;
    keep(tree, muslin_quilt_fabric(tree->quilt, &fabric, "b", 1, &id, NULL), id);
    keep(tree, muslin_quilt_fixed(tree->quilt, 2 * MUSLIN_TICKS_PER_INCH, &id, NULL), id);
    patch.width = patch.height = id;
    keep(tree, muslin_quilt_fixed(tree->quilt, 3 * MUSLIN_TICKS_PER_INCH, &id, NULL), id);
    keep(tree, muslin_quilt_patch(tree->quilt, &patch, &id, NULL), id);
}

/* Two patches of it sewn together, solved and pressed, so that few bytes read what follows from a tree. */
static void work_out(struct tree *tree, const struct muslin_allocator *allocator)
{
    struct muslin_quilt_join_spec join = MUSLIN_QUILT_JOIN_SPEC_INIT;
    struct muslin_solution_spec solving = MUSLIN_SOLUTION_SPEC_INIT;
    struct muslin_pressing_spec pressing = MUSLIN_PRESSING_SPEC_INIT;
    muslin_id id = tree->ids[tree->ids_used - 1];
    const muslin_id pair[2] = { id, id };
    pressing.work_limit = LITTLE_WORK;
    keep(tree, muslin_quilt_join(tree->quilt, &join, pair, 2, &id, NULL), id);
    MUST(muslin_solution_create(tree->quilt, id, &solving, NULL, 0, 0, allocator, &tree->solution, NULL) == MUSLIN_OK);
    MUST(muslin_pressing_create(tree->solution, &pressing, allocator, NULL, NULL, &tree->pressing, NULL) == MUSLIN_OK);
}

/* And bought for, which takes a hundred times as long. */
static void buy(struct tree *tree, const struct muslin_allocator *allocator)
{
    struct muslin_yardage_spec buying = MUSLIN_YARDAGE_SPEC_INIT;
    buying.work_limit = LITTLE_WORK;
    MUST(muslin_yardage_create(tree->solution, &buying, NULL, 0, 0, allocator, NULL, NULL, &tree->yardage, NULL) ==
         MUSLIN_OK);
}

int LLVMFuzzerTestOneInput(const uint8_t *data, size_t size)
{
    struct input input = { data, size };
    struct tree tree = { 0 };
    struct failing_allocator failing;
    failing_start(&failing, 0);
    const uint8_t how = draw_byte(&input);
    if (how < 240)
        begin(&tree, &failing.allocator);
    if (how < 128)
        work_out(&tree, &failing.allocator);
    if (how < 4)
        buy(&tree, &failing.allocator);
    for (int calls = 0; calls < MOST_CALLS && input.left > 0; calls++)
        make_call(&input, &tree, &failing, 1);
    tree_free(&tree);
    MUST(failing_is_clean(&failing));
    return 0;
}
