/* test_supplies.h - the parts of the suite of supplies.
 *
 * SPDX-License-Identifier: MIT */
#ifndef MUSLIN_TEST_SUPPLIES_H
#define MUSLIN_TEST_SUPPLIES_H

#include "refusals.h"

void add_quilting_tests(Suite *suite);
void add_weight_tests(Suite *suite);
void add_cost_tests(Suite *suite);

#endif
