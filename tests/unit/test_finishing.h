/* test_finishing.h - what the tests of the finishing module share.
 *
 * SPDX-License-Identifier: MIT */
#ifndef MUSLIN_TEST_FINISHING_H
#define MUSLIN_TEST_FINISHING_H

#include "refusals.h"

void add_finishing_binding(Suite *suite);
void add_finishing_bias(Suite *suite);
void add_finishing_batting(Suite *suite);
void add_finishing_backing(Suite *suite);
void add_finishing_hanging(Suite *suite);

#endif
