/* tree.c - quilts pieced, solved and read by calls in any order, with memory that runs out.
 *
 * SPDX-License-Identifier: MIT */
#include <stdlib.h>

#include "draw.h"

enum { MOST_CALLS = 40, MOST_STORED = 400 };

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

int LLVMFuzzerTestOneInput(const uint8_t *data, size_t size)
{
    struct input input = { data, size };
    struct tree tree = { 0 };
    struct failing_allocator failing;
    failing_start(&failing, 0);
    if (draw_byte(&input) < 240)
        begin(&tree, &failing.allocator);
    for (int calls = 0; calls < MOST_CALLS && input.left > 0; calls++)
        make_call(&input, &tree, &failing, 1);
    tree_free(&tree);
    MUST(failing_is_clean(&failing));
    return 0;
}
