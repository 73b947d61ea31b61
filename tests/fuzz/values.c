/* values.c - every call that needs no tree, with arguments of any sizes, flags and values.
 *
 * SPDX-License-Identifier: MIT */
#include <stdlib.h>

#include "draw.h"

int LLVMFuzzerTestOneInput(const uint8_t *data, size_t size);
int LLVMFuzzerInitialize(int *argc, char ***argv);

int LLVMFuzzerInitialize(int *argc, char ***argv)
{
    (void)argc, (void)argv;
    return atexit(tell_reached);
}

int LLVMFuzzerTestOneInput(const uint8_t *data, size_t size)
{
    struct input input = { data, size };
    struct tree tree = { 0 };
    struct failing_allocator failing;
    while (input.left > 0) {
        failing_start(&failing, 0);
        make_call(&input, &tree, &failing, 0);
        MUST(failing_is_clean(&failing));
    }
    return 0;
}
