/* test_rounds.c - what grows from the middle outwards: log cabins, frames, pieced borders.
 *
 * SPDX-License-Identifier: MIT */
#include "testing.h"

Suite *rounds_suite(void);

Suite *rounds_suite(void)
{
    Suite *suite = suite_create("rounds");
    return suite;
}
