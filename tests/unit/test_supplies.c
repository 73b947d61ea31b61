/* test_supplies.c - what else a quilt needs: thread, weight, cost.
 *
 * SPDX-License-Identifier: MIT */
#include "testing.h"

Suite *supplies_suite(void);

Suite *supplies_suite(void)
{
    Suite *suite = suite_create("supplies");
    return suite;
}
