/* test_shape.c - a unit of the caller's own: polygons and arcs, their templates with allowances.
 *
 * SPDX-License-Identifier: MIT */
#include "testing.h"

Suite *shape_suite(void);

Suite *shape_suite(void)
{
    Suite *suite = suite_create("shape");
    return suite;
}
