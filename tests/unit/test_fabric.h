/* test_fabric.h - what the two files of the fabric suite share.
 *
 * SPDX-License-Identifier: MIT */
#ifndef MUSLIN_TEST_FABRIC_H
#define MUSLIN_TEST_FABRIC_H

#include "struct_rules.h"

TCase *tcase_stock(void);
Suite *fabric_suite(void);

#endif
