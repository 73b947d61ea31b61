/* facts.c - one size of a pattern as JSON.
 *
 * SPDX-License-Identifier: MIT */
#include "document.h"

json_t *facts_of(const struct worked *worked)
{
    (void)worked;
    return json_object();
}
