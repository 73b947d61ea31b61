/* test_motif.c - pieces that need a window on a printed repeat, and stacks of identical layers.
 *
 * SPDX-License-Identifier: MIT */
#include "testing.h"

Suite *motif_suite(void);

Suite *motif_suite(void)
{
    Suite *suite = suite_create("motif");
    return suite;
}
