/* test_accuracy.c - small errors added up: the worst case, and what chance makes of it.
 *
 * SPDX-License-Identifier: MIT */
#include "testing.h"

Suite *accuracy_suite(void);

Suite *accuracy_suite(void)
{
    Suite *suite = suite_create("accuracy");
    return suite;
}
