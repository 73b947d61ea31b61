/* test_unit.c - recipes for pieced shapes, forwards and backwards.
 *
 * SPDX-License-Identifier: MIT */
#include "testing.h"

Suite *unit_suite(void);

Suite *unit_suite(void)
{
    Suite *suite = suite_create("unit");
    return suite;
}
