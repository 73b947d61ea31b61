/* look.h - looking into an answer, to say only what applies.
 *
 * SPDX-License-Identifier: MIT */
#ifndef CLI_LOOK_H
#define CLI_LOOK_H

#include <jansson.h>
#include <stdbool.h>

/* A member of a section of the answer. */
json_t *part(json_t *answer, const char *section, const char *member);
/* Is there any of it? A length, a share or a count that is not zero, a list that is not empty, a true statement. */
bool any(json_t *answer, const char *section, const char *member);
/* Is the member this text? */
bool says(json_t *object, const char *member, const char *text);
/* Is this cloth said in yards, as shops in inch countries sell it? */
bool in_yards(json_t *object, const char *member);
/* A copy in which a figure is said without "about", for a sentence that says "at least" of it. The caller frees it. */
json_t *bare(json_t *object, const char *member);

#endif
