#include "test_quilt.h"
Suite *solution_round_suite(void)
{
    return suite_create("solution_round");
}
