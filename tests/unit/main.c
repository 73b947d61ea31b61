/* main.c - runs the unit suites, one a module. With -DONLY=<suite> it runs that suite alone.
 *
 * SPDX-License-Identifier: MIT */
#include <check.h>
#include <locale.h>
#include <stdbool.h>
#include <stdlib.h>

#define SUITES(X) \
    X(base_suite) \
    X(wide_suite) \
    X(length_suite) \
    X(seam_suite) \
    X(accuracy_suite) \
    X(shrinkage_suite) \
    X(fabric_suite) \
    X(motif_suite) \
    X(reference_suite) \
    X(stripset_suite) \
    X(cutlist_suite) \
    X(shape_suite) \
    X(shape_cross_suite) \
    X(shape_long_suite) \
    X(shape_roots_suite) \
    X(shape_tips_suite) \
    X(shape_ways_suite) \
    X(unit_suite) \
    X(unit_outline_suite) \
    X(setting_suite) \
    X(setting_sashed_suite) \
    X(setting_point_suite) \
    X(rounds_suite) \
    X(fit_suite) \
    X(finishing_suite) \
    X(stripquilt_suite) \
    X(supplies_suite) \
    X(quilt_suite) \
    X(pressing_pieces_suite) \
    X(quilt_unit_suite) \
    X(quilt_shape_suite) \
    X(quilt_field_suite) \
    X(quilt_round_suite) \
    X(quilt_rules_suite) \
    X(quilt_piecing_suite) \
    X(quilt_read_suite) \
    X(quilt_again_suite) \
    X(solution_suite) \
    X(solution_unit_suite) \
    X(solution_pieces_suite) \
    X(solution_sets_suite) \
    X(solution_cuts_suite) \
    X(solution_cuts_unit_suite) \
    X(solution_outlines_suite) \
    X(solution_check_suite) \
    X(solution_drawn_suite) \
    X(solution_field_suite) \
    X(solution_point_suite) \
    X(solution_round_suite) \
    X(sewing_suite) \
    X(scatter_suite) \
    X(scatter_layouts_suite) \
    X(cutplan_suite) \
    X(cutplan_long_suite) \
    X(cutplan_plain_suite) \
    X(cutplan_check_suite) \
    X(yardage_suite) \
    X(pressing_suite) \
    X(pressing_brute_suite) \
    X(pressing_solve_suite) \
    X(cutplan_knapsack_suite) \
    X(cutplan_price_suite) \
    X(cutplan_sheet_suite) \
    X(cutplan_master_suite) \
    X(cutplan_bound_suite) \
    X(cutplan_clear_suite) \
    X(cutplan_first_suite) \
    X(cutplan_strips_suite) \
    X(cutplan_fill_suite) \
    X(cutplan_split_suite) \
    X(cutplan_pack_suite) \
    X(cutplan_search_suite) \
    X(cutplan_search_long_suite) \
    X(cutplan_bolts_suite) \
    X(cutplan_joined_suite) \
    X(cutplan_joined_long_suite) \
    X(cutplan_deal_suite) \
    X(cutplan_most_suite) \
    X(cutplan_left_suite) \
    X(cutplan_found_suite) \
    X(cutplan_repair_suite) \
    X(cutplan_joined_often_suite) \
    X(examples_suite)

#ifdef ONLY
#undef SUITES
#define SUITES(X) X(ONLY)
#endif

#define DECLARE(suite) Suite *suite(void);
SUITES(DECLARE)

#define ADD(suite) srunner_add_suite(runner, suite());

/* Check writes into a file where each assert stands that holds, so that a crash in the test's process can be placed.
 * Where tests have none of their own (CK_FORK=no) that would take longer than most suites. */
static bool have_processes;

#ifdef WRAPPED
void __real__mark_point(const char *file, int line);
void __wrap__mark_point(const char *file, int line);

void __wrap__mark_point(const char *file, int line)
{
    if (have_processes)
        __real__mark_point(file, line);
}
#endif

/* In the locale of the environment: nothing here may depend on one. */
int main(void)
{
    setlocale(LC_ALL, "");
    SRunner *runner = srunner_create(NULL);
    SUITES(ADD)
    have_processes = srunner_fork_status(runner) == CK_FORK;
    srunner_run_all(runner, CK_NORMAL);
    int failed = srunner_ntests_failed(runner);
    srunner_free(runner);
    return failed == 0 ? EXIT_SUCCESS : EXIT_FAILURE;
}
