/* test_finishing.c - the finishing suite.
 *
 * SPDX-License-Identifier: MIT */
#include "test_finishing.h"

Suite *finishing_suite(void);

Suite *finishing_suite(void)
{
    Suite *suite = suite_create("finishing");
    add_finishing_binding(suite);
    add_finishing_bias(suite);
    add_finishing_batting(suite);
    add_finishing_backing(suite);
    add_finishing_hanging(suite);
    return suite;
}
