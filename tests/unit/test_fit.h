/* test_fit.h - the parts of the suite of fit.h, one a file.
 *
 * SPDX-License-Identifier: MIT */
#ifndef MUSLIN_TEST_FIT_H
#define MUSLIN_TEST_FIT_H

#include "refusals.h"

void add_fit_bed(Suite *suite);
void add_fit_across(Suite *suite);
void add_fit_rescale(Suite *suite);

#endif
