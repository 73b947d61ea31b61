/* test_cutlist.c - a list of pieces, and the cloth it takes: yardage, fat quarters, bundles.
 *
 * SPDX-License-Identifier: MIT */
#include "testing.h"

Suite *cutlist_suite(void);

Suite *cutlist_suite(void)
{
    Suite *suite = suite_create("cutlist");
    return suite;
}
