/* pattern.c - pattern files of any bytes: read, pieced in each size, and complained of.
 *
 * SPDX-License-Identifier: MIT */
#include <stdlib.h>
#include <string.h>

#include "draw.h"
#include "pattern.h"

int LLVMFuzzerTestOneInput(const uint8_t *data, size_t size);

enum { MOST_SIZES = 3 };

int LLVMFuzzerTestOneInput(const uint8_t *data, size_t size)
{
    struct complaints complaints = { 0 };
    char *text = malloc(size);
    if (size > 0)
        memcpy(text, data, size);
    struct pattern *pattern = pattern_parse(text, size, &complaints);
    free(text);
    MUST(pattern != NULL || complaints.used > 0);
    for (size_t i = 0; pattern != NULL && i < pattern->sizes_count && i < MOST_SIZES; i++) {
        struct design *design = design_create(pattern, i, &complaints);
        MUST(design != NULL || complaints.used > 0);
        if (design != NULL)
            design_free(design);
    }
    if (pattern != NULL)
        pattern_free(pattern);
    for (size_t i = 0; i < complaints.used; i++)
        MUST(complaints.rows[i].place != NULL && complaints.rows[i].sentence != NULL);
    complaints_free(&complaints);
    return 0;
}
