/* test_cutlist.h - what the tests of cutlist.h share.
 *
 * SPDX-License-Identifier: MIT */
#ifndef MUSLIN_TEST_CUTLIST_H
#define MUSLIN_TEST_CUTLIST_H

#include "refusals.h"

#define ROWS(list) (list), sizeof (list)[0], COUNT_OF(list)
/* A row: so many pieces, so far across and along. */
#define CUTS(across, along, count) { (uint32_t)sizeof(struct muslin_cutlist_piece_spec), 0, (across), (along), (count) }
#define CUTS_TURN(across, along, count) \
    { (uint32_t)sizeof(struct muslin_cutlist_piece_spec), MUSLIN_CUTLIST_PIECE_MAY_TURN, (across), (along), (count) }

/* A call on a list; what else it takes is fixed. */
typedef muslin_status list_call(const struct muslin_cutlist_piece_spec *rows, size_t row_size, size_t n,
                                struct muslin_problem *problem);

/* The rules of rows, tried on one call. */
void ck_list_rules(list_call *call);

void add_cutlist_stock_tests(Suite *suite);
void add_cutlist_brute_tests(Suite *suite);

#endif
