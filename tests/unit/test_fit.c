/* test_fit.c - settings that come out at a wanted size or for a bed, and a pattern resized.
 *
 * SPDX-License-Identifier: MIT */
#include "testing.h"

Suite *fit_suite(void);

Suite *fit_suite(void)
{
    Suite *suite = suite_create("fit");
    return suite;
}
