/* consumer.h - what every consumer does with the library: three calls, and a word.
 *
 * SPDX-License-Identifier: MIT
 *
 * Valid as C99 and C++11. The set of six 2 1/2 in strips is common practice: 12 1/2 in unfinished. */
#ifndef CONSUMER_H
#define CONSUMER_H

#include <muslin/muslin.h>
#include <stdio.h>
#include <string.h>

static int consume(const char *who)
{
    struct muslin_seam_spec seam = MUSLIN_SEAM_SPEC_INIT;
    struct muslin_sewn_row set;
    char text[64];

    memset(&set, 0, sizeof set);
    set.size = (uint32_t)sizeof set;
    if (muslin_version() != MUSLIN_VERSION)
        return puts("headers and library do not belong together"), 1;
    if (muslin_seam_row_equal(20320, 6, &seam, &set, NULL) != MUSLIN_OK)
        return puts("no row"), 1;
    if (muslin_length_format(set.unfinished, NULL, text, sizeof text, NULL, NULL, NULL) != MUSLIN_OK)
        return puts("no text"), 1;
    if (strcmp(text, "12 1/2 in") != 0)
        return printf("not 12 1/2 in: %s\n", text), 1;
    printf("%s consumer: %s unfinished\n", who, text);
    return 0;
}

#endif
