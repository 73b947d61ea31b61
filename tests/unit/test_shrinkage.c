/* test_shrinkage.c - what washing and quilting do to a size: dimensional change, and the size to make.
 *
 * SPDX-License-Identifier: MIT */
#include "testing.h"

Suite *shrinkage_suite(void);

Suite *shrinkage_suite(void)
{
    Suite *suite = suite_create("shrinkage");
    return suite;
}
