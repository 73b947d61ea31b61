/* test_length.h - what the files of the length suite share.
 *
 * SPDX-License-Identifier: MIT */
#ifndef MUSLIN_TEST_LENGTH_H
#define MUSLIN_TEST_LENGTH_H

#include "struct_rules.h"

TCase *tcase_parse(void);
TCase *tcase_format(void);
Suite *length_suite(void);

#endif
