/* test_cutplan_check.c - plans and proofs made by hand, which hold, and each of them broken in every number.
 *
 * SPDX-License-Identifier: MIT */
#include "failing_allocator.h"
#include "testing.h"

#include "../../lib/cutplan_check.h"
#include "../../lib/cutplan_most.h"
#include "../../lib/cutplan_repack.h"

enum { SIZES = 32, WAYS = 8, HEIGHTS = 64, ROWS = 16, WORTHS = 64 };

/* A cutting, a plan and a proof, with room for small ones. */
struct made {
    struct msl_piece_size sizes[SIZES];
    struct msl_way ways[WAYS];
    int64_t heights[HEIGHTS];
    int64_t available[2];
    struct msl_pattern patterns[ROWS];
    struct msl_strip strips[ROWS];
    struct msl_laid laid[ROWS];
    struct msl_case cases[ROWS];
    int64_t worths[WORTHS];
    struct msl_cutting cutting;
    struct msl_found found;
};

static void begin(struct made *made)
{
    memset(made, 0, sizeof *made);
    made->cutting.sizes = made->sizes;
    made->cutting.ways = made->ways;
    made->cutting.heights = made->heights;
    made->cutting.available = made->available;
    made->found.plan.patterns = made->patterns;
    made->found.plan.strips = made->strips;
    made->found.plan.laid = made->laid;
    made->found.cases = made->cases;
    made->found.worths = made->worths;
}

static struct msl_piece_size *add_size(struct made *made, int64_t across, int64_t along, int64_t count)
{
    struct msl_piece_size size = { across, along, 0, 0, 0, count, 0, 0 };
    ck_assert_int_lt(made->cutting.size_count, SIZES);
    made->sizes[made->cutting.size_count] = size;
    return &made->sizes[made->cutting.size_count++];
}

static struct msl_way *add_way(struct made *made, int64_t cost, int64_t across, int64_t along)
{
    struct msl_way way = { cost, across, along, 0, 0, -1, 0 };
    ck_assert_int_lt(made->cutting.way_count, WAYS);
    made->ways[made->cutting.way_count] = way;
    return &made->ways[made->cutting.way_count++];
}

static void add_pattern(struct made *made, int64_t times, int32_t way)
{
    struct msl_pool *plan = &made->found.plan;
    struct msl_pattern pattern = { times, way, plan->strip_count, 0, 0 };
    made->patterns[plan->pattern_count++] = pattern;
}

static void add_strip(struct made *made, int64_t height)
{
    struct msl_pool *plan = &made->found.plan;
    struct msl_strip strip = { height, plan->laid_count, 0 };
    made->strips[plan->strip_count++] = strip;
    made->patterns[plan->pattern_count - 1].count++;
}

static struct msl_laid *add_laid(struct made *made, int32_t size, int32_t count)
{
    struct msl_pool *plan = &made->found.plan;
    struct msl_laid laid = { size, count, 0, 0 };
    made->laid[plan->laid_count] = laid;
    made->strips[plan->strip_count - 1].count++;
    return &made->laid[plan->laid_count++];
}

/* A case proved by its own worths, which end with INT64_MIN; of none it is proved by those above. */
static struct msl_case *add_case(struct made *made, int32_t parent, int64_t least, const int64_t *worths)
{
    struct msl_case *added = &made->cases[made->found.case_count++];
    memset(added, 0, sizeof *added);
    added->parent = parent;
    added->least = least;
    added->first_worth = made->found.worth_count;
    for (; *worths != INT64_MIN; worths++)
        made->worths[made->found.worth_count++] = *worths;
    added->worth_count = made->found.worth_count - added->first_worth;
    return added;
}
#define PROVED(...) ((const int64_t[]){ __VA_ARGS__, INT64_MIN })
#define AS_ABOVE ((const int64_t[]){ INT64_MIN })

/* `wanted` of the limit, at most in the first of two parts, one more at least in the second. */
static void split(struct made *made, int32_t number, int32_t kind, int32_t way, int32_t size, int64_t wanted)
{
    const struct msl_limit at_most = { wanted, kind, way, way, size, 0, 0 };
    const struct msl_limit at_least = { wanted + 1, kind, way, way, size, 1, 0 };
    const int32_t first = made->cases[number].split;
    made->cases[first].limit = at_most;
    made->cases[first + 1].limit = at_least;
}

static struct muslin_cutplan_checked checked(const struct made *made)
{
    struct failing_allocator failing;
    struct msl_told told = msl_told_by(NULL, NULL);
    struct muslin_cutplan_checked out = { (uint32_t)sizeof out, 0, -1, -1, -1, -1, 0, -1 };
    failing_start(&failing, 0);
    ck_ok(msl_found_check(&made->cutting, &made->found, MSL_CHECK_STEPS_MAX, &told, &failing.allocator, &out));
    ck_assert(failing_is_clean(&failing));
    return out;
}

static void expect_well(const struct made *made, int64_t cost, int64_t least)
{
    struct muslin_cutplan_checked out = checked(made);
    ck_assert_int_eq(out.fault, 0);
    ck_assert_int_eq(out.cost, cost);
    ck_assert_int_eq(out.least, least);
    ck_assert_int_eq(out.cases, made->found.case_count);
}

static void expect_fault(const struct made *made, int32_t fault, int64_t at)
{
    struct muslin_cutplan_checked out = checked(made);
    ck_assert_int_eq(out.fault, fault);
    ck_assert_int_eq(out.at, at);
    if (fault != MUSLIN_CUTPLAN_FAULT_BOUND) { /* what is wrong first ends all */
        ck_assert_int_eq(out.cases, 0);
        ck_assert_int_eq(out.least, 0);
    }
}

/* ---- proofs by hand --------------------------------------------------------------------------------------------- */

/* Seven pieces 3 x 4 from cloth 10 wide: three to a strip, each worth 4/3, 28/3 in all; so 10, and strips of 4 make it
 * 12. */
static void make_one_size(struct made *made)
{
    begin(made);
    add_size(made, 3, 4, 7);
    add_way(made, 4, 10, 4);
    add_pattern(made, 2, 0);
    add_strip(made, 4);
    add_laid(made, 0, 3);
    add_pattern(made, 1, 0);
    add_strip(made, 4);
    add_laid(made, 0, 1);
    add_case(made, -1, 12, PROVED(4));
    made->found.cost = made->found.least = 12;
}

/* Two pieces 6 x 5 and three 4 x 3 from cloth 10 wide: one of each fill a strip of 5, two of the lower ones go into one
 * of 3. Two and one strips are 13 long. The worths prove 11 1/2, and the next sum of fives and threes is 12. Without a
 * strip of 3 all pieces are worth 2 1/2 each, 12 1/2, the next sum is 13; with one of them, the higher pieces are worth
 * 5 each and that strip 3. Worths are doubled. */
static void make_two_sizes(struct made *made)
{
    begin(made);
    add_size(made, 6, 5, 2);
    add_size(made, 4, 3, 3);
    add_way(made, 5, 10, 5);
    add_way(made, 3, 10, 3);
    add_pattern(made, 2, 0);
    add_strip(made, 5);
    add_laid(made, 0, 1);
    add_laid(made, 1, 1);
    add_pattern(made, 1, 1);
    add_strip(made, 3);
    add_laid(made, 1, 1);
    made->found.cost = made->found.least = 13;
}

static void make_split_by_ways(struct made *made)
{
    make_two_sizes(made);
    add_case(made, -1, 12, PROVED(7, 3))->split = 1;
    add_case(made, 0, 13, PROVED(5, 5, -4));
    add_case(made, 0, 13, PROVED(10, 0, 6));
    split(made, 0, MSL_LIMIT_WAYS, 1, 0, 0);
}

/* At most two of the lower pieces in strips of 5 prove no more than before; with all three there, each lower piece is
 * worth 2 1/2 in such a strip and nothing else. */
static void make_split_by_copies(struct made *made)
{
    make_two_sizes(made);
    add_case(made, -1, 12, PROVED(7, 3))->split = 1;
    add_case(made, 0, 12, PROVED(10, 3, -3));
    add_case(made, 0, 13, PROVED(5, 0, 5));
    split(made, 0, MSL_LIMIT_COPIES, 0, 1, 2);
    made->found.least = 12;
}

/* At most one strip of 5: with at most one higher piece in it, one is missing, whatever it is worth; two do not fit. */
static void make_packed(struct made *made)
{
    make_two_sizes(made);
    add_case(made, -1, 12, PROVED(7, 3))->split = 1;
    add_case(made, 0, 12, AS_ABOVE)->split = 3;
    add_case(made, 0, 12, AS_ABOVE);
    split(made, 0, MSL_LIMIT_WAYS, 0, 0, 1);
    add_case(made, 1, 13, PROVED(100, 0, 0, -100));
    add_case(made, 1, 12, AS_ABOVE)->packed = 1;
    split(made, 1, MSL_LIMIT_COPIES, 0, 0, 1);
    made->found.least = 12;
}

/* Two pieces 2 x 6 are slit from a panel 6 long; beside them two strips with two squares of 3 each. The long pieces are
 * worth 2 and the squares 1/2, doubled; a strip of 3 has three squares, and a dearer way makes 5 a sum of costs. */
static void make_panel(struct made *made)
{
    begin(made);
    add_size(made, 2, 6, 2)->slit = 1;
    add_size(made, 3, 3, 4);
    struct msl_way *panel = add_way(made, 6, 10, 6);
    panel->sheet = panel->panel = 1;
    add_way(made, 5, 10, 3);
    add_way(made, 3, 10, 3);
    made->heights[0] = 3;
    made->heights[1] = 1;
    made->cutting.height_count = 2;
    add_pattern(made, 1, 0);
    add_strip(made, 0);
    add_laid(made, 0, 2);
    add_strip(made, 3);
    add_laid(made, 1, 2);
    add_strip(made, 3);
    add_laid(made, 1, 2);
    add_case(made, -1, 6, PROVED(4, 1));
    made->found.cost = made->found.least = 6;
}

/* Five pieces 4 x 3: four come from stock 8 x 6 at 5, two from stock 4 x 6 at 2, of which there is one. Each is worth
 * 5/4 and the small stock 1/2 less: 23/4, so 6. */
static void make_stock(struct made *made)
{
    begin(made);
    add_size(made, 4, 3, 5);
    for (int32_t i = 0; i < 2; i++) {
        struct msl_way *way = add_way(made, i == 0 ? 5 : 2, i == 0 ? 8 : 4, 6);
        way->sheet = 1;
        way->stock = i;
    }
    made->available[0] = INT64_MAX;
    made->available[1] = 1;
    made->cutting.stock_count = 2;
    made->heights[0] = 3;
    made->cutting.height_count = 1;
    for (int32_t i = 0; i < 2; i++) {
        add_pattern(made, 1, i);
        for (int32_t k = 0; k < 2; k++) {
            add_strip(made, 3);
            add_laid(made, 0, i == 0 ? 2 : 1);
        }
    }
    add_case(made, -1, 6, PROVED(5, 0, -2));
    made->found.cost = 7;
    made->found.least = 6;
}

/* Four pieces 5 x 3, which may be turned, two on two in one strip of 6. */
static void make_stack(struct made *made)
{
    begin(made);
    struct msl_piece_size *size = add_size(made, 5, 3, 4);
    size->turned_across = 3;
    size->turned_along = 5;
    add_way(made, 6, 10, 6);
    add_way(made, 3, 10, 3);
    made->cutting.stacked = 1;
    add_pattern(made, 1, 0);
    add_strip(made, 6);
    add_laid(made, 0, 2)->other_way = 1;
    struct msl_laid *above = add_laid(made, 0, 2);
    above->other_way = above->above = 1;
    add_case(made, -1, 6, PROVED(3));
    made->found.cost = made->found.least = 6;
}

START_TEST(proofs_by_hand_hold)
{
    struct made made;
    make_one_size(&made);
    expect_well(&made, 12, 12);
    make_split_by_ways(&made);
    expect_well(&made, 13, 13);
    make_split_by_copies(&made);
    expect_well(&made, 13, 12);
    make_packed(&made);
    expect_well(&made, 13, 12);
    make_panel(&made);
    expect_well(&made, 6, 6);
    make_stock(&made);
    expect_well(&made, 7, 6);
    make_stack(&made);
    expect_well(&made, 6, 6);
}
END_TEST

/* Nothing wanted: nothing to prove. No case proves nothing. */
START_TEST(nothing_is_well)
{
    struct made made;
    begin(&made);
    expect_well(&made, 0, 0);
    make_one_size(&made);
    made.found.case_count = 0;
    made.found.least = 0;
    expect_well(&made, 12, 0);
    made.found.least = 1;
    expect_fault(&made, MUSLIN_CUTPLAN_FAULT_BOUND, 0);
}
END_TEST

/* ---- plans broken ----------------------------------------------------------------------------------------------- */

START_TEST(each_fault_of_a_plan)
{
    struct made made;
    make_one_size(&made);
    made.laid[1].count = 0;
    expect_fault(&made, MUSLIN_CUTPLAN_FAULT_MISSING, 0);
    make_one_size(&made);
    made.patterns[0].times = 1;
    expect_fault(&made, MUSLIN_CUTPLAN_FAULT_MISSING, 0);
    make_one_size(&made);
    made.laid[1].size = 1;
    expect_fault(&made, MUSLIN_CUTPLAN_FAULT_MISSING, 1);
    make_one_size(&made);
    made.laid[0].count = 4;
    expect_fault(&made, MUSLIN_CUTPLAN_FAULT_OVERFULL, 0);
    make_one_size(&made);
    made.sizes[0].run_in = 2;
    expect_fault(&made, MUSLIN_CUTPLAN_FAULT_OVERFULL, 0);
    make_one_size(&made);
    made.sizes[0].along = 5;
    expect_fault(&made, MUSLIN_CUTPLAN_FAULT_TOO_HIGH, 0);
    make_one_size(&made);
    made.sizes[0].along = 3;
    made.sizes[0].level = 1;
    expect_fault(&made, MUSLIN_CUTPLAN_FAULT_TOO_HIGH, 0);
    make_one_size(&made);
    made.laid[0].other_way = 1;
    expect_fault(&made, MUSLIN_CUTPLAN_FAULT_TOO_HIGH, 0);
    make_one_size(&made);
    made.laid[1].above = 1;
    expect_fault(&made, MUSLIN_CUTPLAN_FAULT_TOO_HIGH, 1);
    make_one_size(&made);
    made.found.cost = 11;
    expect_fault(&made, MUSLIN_CUTPLAN_FAULT_COST, 0);
    make_one_size(&made);
    made.found.cost = INT64_MIN;
    expect_fault(&made, MUSLIN_CUTPLAN_FAULT_COST, 0);
    make_one_size(&made);
    made.patterns[1].way = 1;
    expect_fault(&made, MUSLIN_CUTPLAN_FAULT_COST, 1);
    make_one_size(&made);
    made.patterns[0].times = MUSLIN_COUNT_MAX + 1;
    expect_fault(&made, MUSLIN_CUTPLAN_FAULT_COST, 0);
    make_one_size(&made);
    made.patterns[1].count = 0;
    expect_fault(&made, MUSLIN_CUTPLAN_FAULT_OVERFULL, 1);
    make_one_size(&made);
    made.strips[1].count = -1;
    expect_fault(&made, MUSLIN_CUTPLAN_FAULT_OVERFULL, 1);
    make_one_size(&made);
    made.strips[1].first = -1;
    expect_fault(&made, MUSLIN_CUTPLAN_FAULT_OVERFULL, 1);
    make_stock(&made);
    made.available[1] = 0;
    expect_fault(&made, MUSLIN_CUTPLAN_FAULT_STOCK, 1);
}
END_TEST

START_TEST(a_strip_of_one_size)
{
    struct made made;
    make_two_sizes(&made);
    made.cutting.one_size = 1;
    expect_fault(&made, MUSLIN_CUTPLAN_FAULT_TOO_HIGH, 0);
    make_one_size(&made);
    made.cutting.one_size = 1;
    expect_well(&made, 12, 12);
}
END_TEST

START_TEST(each_fault_of_a_panel)
{
    struct made made;
    make_panel(&made);
    made.patterns[0].count = -1;
    expect_fault(&made, MUSLIN_CUTPLAN_FAULT_OVERFULL, 0);
    make_panel(&made);
    made.ways[0].panel = 0;
    expect_fault(&made, MUSLIN_CUTPLAN_FAULT_OVERFULL, 0);
    make_panel(&made);
    made.strips[1].height = -3;
    expect_fault(&made, MUSLIN_CUTPLAN_FAULT_OVERFULL, 1);
    make_panel(&made);
    made.strips[2].height = 4;
    expect_fault(&made, MUSLIN_CUTPLAN_FAULT_OVERFULL, 2);
    make_panel(&made);
    made.sizes[0].slit = 0;
    expect_fault(&made, MUSLIN_CUTPLAN_FAULT_TOO_HIGH, 0);
    make_panel(&made);
    made.sizes[1].slit = 1;
    expect_fault(&made, MUSLIN_CUTPLAN_FAULT_TOO_HIGH, 1);
    make_panel(&made);
    made.sizes[0].along = 7;
    expect_fault(&made, MUSLIN_CUTPLAN_FAULT_TOO_HIGH, 0);
    make_panel(&made);
    made.sizes[0].across = 3;
    expect_fault(&made, MUSLIN_CUTPLAN_FAULT_OVERFULL, 1);
}
END_TEST

START_TEST(each_fault_of_a_stack)
{
    struct made made;
    make_stack(&made);
    made.cutting.stacked = 0;
    expect_fault(&made, MUSLIN_CUTPLAN_FAULT_TOO_HIGH, 1);
    make_stack(&made);
    made.laid[1].other_way = 0;
    expect_fault(&made, MUSLIN_CUTPLAN_FAULT_TOO_HIGH, 1);
    make_stack(&made);
    made.laid[1].count = 3;
    expect_fault(&made, MUSLIN_CUTPLAN_FAULT_OVERFULL, 0);
    make_stack(&made);
    made.sizes[0].run_in = 1;
    expect_fault(&made, MUSLIN_CUTPLAN_FAULT_TOO_HIGH, 1);
    make_stack(&made);
    add_size(&made, 4, 3, 2);
    made.laid[1].size = 1;
    made.laid[1].other_way = 0;
    expect_fault(&made, MUSLIN_CUTPLAN_FAULT_OVERFULL, 0);
    made.sizes[1].across = 5;
    made.sizes[1].run_in = 1;
    expect_fault(&made, MUSLIN_CUTPLAN_FAULT_OVERFULL, 0);
    make_stack(&made);
    made.sizes[0].level = 1;
    expect_fault(&made, MUSLIN_CUTPLAN_FAULT_TOO_HIGH, 0);
    make_stack(&made);
    add_size(&made, 5, 7, 2); /* higher than the strip */
    made.laid[1].size = 1;
    made.laid[1].other_way = 0;
    expect_fault(&made, MUSLIN_CUTPLAN_FAULT_TOO_HIGH, 1);
    make_panel(&made); /* slit pieces are not stacked */
    made.cutting.stacked = 1;
    made.sizes[0].along = 3;
    made.strips[0].count = 2;
    made.laid[1].size = 0;
    made.laid[1].above = 1;
    expect_fault(&made, MUSLIN_CUTPLAN_FAULT_TOO_HIGH, 1);
}
END_TEST

/* ---- proofs broken ---------------------------------------------------------------------------------------------- */

START_TEST(each_gap_between_cases)
{
    struct made made;
    make_split_by_ways(&made);
    made.cases[0].parent = 0;
    expect_fault(&made, MUSLIN_CUTPLAN_FAULT_GAP, 0);
    make_split_by_ways(&made);
    made.cases[1].limit.wanted = 1;
    expect_fault(&made, MUSLIN_CUTPLAN_FAULT_GAP, 0);
    make_split_by_ways(&made);
    made.cases[2].limit.first_way = 0;
    expect_fault(&made, MUSLIN_CUTPLAN_FAULT_GAP, 0);
    make_split_by_ways(&made);
    made.cases[2].limit.at_least = 0;
    expect_fault(&made, MUSLIN_CUTPLAN_FAULT_GAP, 0);
    make_split_by_ways(&made);
    made.cases[1].limit.kind = made.cases[2].limit.kind = MSL_LIMIT_SIZE;
    expect_fault(&made, MUSLIN_CUTPLAN_FAULT_GAP, 0);
    make_split_by_ways(&made);
    made.cases[0].split = 2;
    expect_fault(&made, MUSLIN_CUTPLAN_FAULT_GAP, 0);
    make_split_by_ways(&made);
    made.cases[2].split = 1;
    expect_fault(&made, MUSLIN_CUTPLAN_FAULT_GAP, 2);
    make_split_by_ways(&made);
    made.cases[2].parent = 1;
    expect_fault(&made, MUSLIN_CUTPLAN_FAULT_GAP, 0);
    make_split_by_ways(&made);
    made.cases[0].split = 0;
    expect_fault(&made, MUSLIN_CUTPLAN_FAULT_GAP, 1);
    make_split_by_ways(&made);
    made.found.case_count = 4;
    expect_fault(&made, MUSLIN_CUTPLAN_FAULT_GAP, 3);
    make_split_by_copies(&made);
    made.cases[1].limit.size = 0;
    expect_fault(&made, MUSLIN_CUTPLAN_FAULT_GAP, 0);
    make_split_by_copies(&made);
    made.cases[1].limit.last_way = made.cases[2].limit.last_way = 1;
    expect_fault(&made, MUSLIN_CUTPLAN_FAULT_GAP, 0);
    const int64_t most = (int64_t)1 << 40; /* that a limit may ask for */
    make_split_by_ways(&made);
    made.cases[1].limit.wanted = most;
    made.cases[2].limit.wanted = most + 1;
    expect_fault(&made, MUSLIN_CUTPLAN_FAULT_GAP, 0);
    made.cases[1].limit.wanted = most - 1;
    made.cases[2].limit.wanted = most;
    ck_assert_int_ne(checked(&made).fault, MUSLIN_CUTPLAN_FAULT_GAP);
}
END_TEST

/* A split may name the part with more first. */
START_TEST(a_split_in_the_other_order)
{
    struct made made;
    make_split_by_ways(&made);
    struct msl_case more = made.cases[2];
    made.cases[2] = made.cases[1];
    made.cases[1] = more;
    expect_well(&made, 13, 13);
}
END_TEST

START_TEST(worths_that_prove_less)
{
    struct made made;
    make_one_size(&made);
    made.cases[0].least = 13;
    expect_fault(&made, MUSLIN_CUTPLAN_FAULT_BOUND, 0);
    make_one_size(&made);
    made.cases[0].least = 11;
    expect_fault(&made, MUSLIN_CUTPLAN_FAULT_BOUND, 0); /* the whole is said to be 12 */
    make_one_size(&made);
    made.cases[0].least = made.found.least = 0;
    expect_well(&made, 12, 0);
    make_one_size(&made);
    made.worths[0] = -1;
    expect_fault(&made, MUSLIN_CUTPLAN_FAULT_BOUND, 0);
    make_one_size(&made);
    made.worths[0] = 0;
    expect_fault(&made, MUSLIN_CUTPLAN_FAULT_BOUND, 0);
    make_one_size(&made);
    made.worths[0] = INT64_MAX;
    expect_fault(&made, MUSLIN_CUTPLAN_FAULT_BOUND, 0);
    make_one_size(&made);
    made.worths[0] = MSL_WORTH_MAX;
    expect_fault(&made, MUSLIN_CUTPLAN_FAULT_BOUND, 0);
    make_one_size(&made);
    made.worths[0] = MSL_WORTH_MAX / 7; /* what worths are over does not matter: three are worth 3/7 of it */
    expect_well(&made, 12, 12);
    make_one_size(&made);
    made.cases[0].worth_count = 0;
    expect_fault(&made, MUSLIN_CUTPLAN_FAULT_BOUND, 0);
    make_one_size(&made);
    made.cases[0].first_worth = 1;
    expect_fault(&made, MUSLIN_CUTPLAN_FAULT_BOUND, 0);
    make_stock(&made);
    made.worths[1] = -1; /* of what there is any number of */
    expect_fault(&made, MUSLIN_CUTPLAN_FAULT_BOUND, 0);
    make_stock(&made);
    made.worths[2] = 1;
    expect_fault(&made, MUSLIN_CUTPLAN_FAULT_BOUND, 0);
    make_split_by_ways(&made);
    made.worths[4] = 4;
    expect_fault(&made, MUSLIN_CUTPLAN_FAULT_BOUND, 1);
    make_split_by_ways(&made);
    made.worths[4] = INT64_MIN;
    expect_fault(&made, MUSLIN_CUTPLAN_FAULT_BOUND, 1);
    make_split_by_ways(&made);
    made.worths[7] = 7;
    expect_fault(&made, MUSLIN_CUTPLAN_FAULT_BOUND, 2);
    make_split_by_ways(&made);
    made.worths[7] = 1000;
    expect_fault(&made, MUSLIN_CUTPLAN_FAULT_BOUND, 2);
}
END_TEST

/* Without the table of sums a bound is rounded up to whole numbers only. */
START_TEST(sums_of_costs)
{
    struct made made;
    make_one_size(&made);
    made.ways[0].cost = 4 << 21;
    made.found.cost = 12 << 21;
    made.found.least = made.cases[0].least = (28 << 21) / 3 + 1;
    expect_well(&made, 12 << 21, (28 << 21) / 3 + 1);
    made.cases[0].least++;
    expect_fault(&made, MUSLIN_CUTPLAN_FAULT_BOUND, 0);
    make_split_by_ways(&made); /* a way that costs what others add up to, and one that costs more than all */
    add_way(&made, 8, 10, 5);
    add_way(&made, 50, 10, 5);
    expect_well(&made, 13, 13);
}
END_TEST

/* Two worths that can be counted, and their sum not. */
START_TEST(worths_beyond_counting)
{
    struct made made;
    make_split_by_copies(&made);
    made.worths[6] = MSL_WORTH_MAX - 1;
    made.sizes[1].count = 0;
    made.cases[2].limit.wanted = 1;
    made.cases[1].limit.wanted = 0;
    made.worths[7] = MSL_WORTH_MAX - 1;
    made.cases[0].least = made.cases[1].least = made.found.least = 0;
    made.worths[5] = 0;
    expect_fault(&made, MUSLIN_CUTPLAN_FAULT_BOUND, 2);
}
END_TEST

/* Two limits of things to come by, each of them worth as little as can be counted. */
START_TEST(worths_below_counting)
{
    struct made made;
    make_two_sizes(&made);
    add_case(&made, -1, 0, AS_ABOVE)->split = 1;
    add_case(&made, 0, 0, AS_ABOVE)->split = 3;
    add_case(&made, 0, 0, AS_ABOVE);
    split(&made, 0, MSL_LIMIT_WAYS, 0, 0, 0);
    add_case(&made, 1, 1, PROVED(1, 1, -MSL_WORTH_MAX, -MSL_WORTH_MAX));
    add_case(&made, 1, 0, AS_ABOVE);
    split(&made, 1, MSL_LIMIT_WAYS, 0, 0, 0);
    made.found.least = 0;
    expect_fault(&made, MUSLIN_CUTPLAN_FAULT_BOUND, 3);
    made.worths[2] = 0;
    expect_well(&made, 13, 0);
}
END_TEST

/* Of many limits on the way to a case the strictest hold; one that counts strips of two heights does not count here. */
START_TEST(a_packing_with_many_limits)
{
    static const struct msl_limit limits[] = {
        { 9, MSL_LIMIT_WAYS, 0, 1, 0, 0, 0 },   { 2, MSL_LIMIT_WAYS, 0, 0, 0, 0, 0 },
        { 1, MSL_LIMIT_WAYS, 0, 0, 0, 0, 0 },   { 2, MSL_LIMIT_WAYS, 0, 0, 0, 0, 0 },
        { 1, MSL_LIMIT_COPIES, 0, 0, 0, 1, 0 }, { 2, MSL_LIMIT_COPIES, 0, 0, 0, 1, 0 },
        { 1, MSL_LIMIT_COPIES, 0, 0, 0, 1, 0 }, { 9, MSL_LIMIT_COPIES, 0, 0, 0, 0, 0 },
        { 0, MSL_LIMIT_WAYS, 0, 0, 0, 1, 0 },
    };
    const int32_t count = (int32_t)(sizeof limits / sizeof limits[0]);
    struct made made;
    struct msl_case cases[2 * ROWS] = { { { 0, 0, 0, 0, 0, 0, 0 }, 0, 0, 0, 0, 0, 0, 0 } };
    make_two_sizes(&made);
    made.found.cases = cases;
    made.found.least = 0;
    cases[0].parent = -1;
    for (int32_t i = 0; i < count; i++) {
        struct msl_case *part = &cases[2 * i + 1]; /* this one goes on, its other half stays */
        cases[i == 0 ? 0 : 2 * i - 1].split = 2 * i + 1;
        part[0].limit = part[1].limit = limits[i];
        part[0].parent = part[1].parent = i == 0 ? 0 : 2 * i - 1;
        part[1].limit.at_least = !limits[i].at_least;
        part[1].limit.wanted += limits[i].at_least ? -1 : 1;
    }
    cases[2 * ROWS - 1] = cases[0];
    cases[2 * count - 1].packed = 1;
    made.found.case_count = 2 * count + 1;
    cases[2 * count].limit.wanted = 0;
    cases[2 * count - 1].limit.wanted = 1;
    expect_well(&made, 13, 0);
    cases[5].limit.wanted = 2; /* at most one strip becomes at most two */
    cases[6].limit.wanted = 3;
    expect_fault(&made, MUSLIN_CUTPLAN_FAULT_BOUND, 2 * count - 1);
}
END_TEST

/* That plans cost at least nothing needs no proof. */
START_TEST(nothing_at_least_is_always_proved)
{
    struct made made;
    make_one_size(&made);
    made.worths[0] = 0;
    made.found.least = made.cases[0].least = 1;
    expect_fault(&made, MUSLIN_CUTPLAN_FAULT_BOUND, 0);
    made.found.least = made.cases[0].least = 0;
    expect_well(&made, 12, 0);
}
END_TEST

START_TEST(packings_that_are_possible)
{
    struct made made;
    make_packed(&made);
    made.cases[4].packed = 3;
    expect_fault(&made, MUSLIN_CUTPLAN_FAULT_BOUND, 4);
    make_packed(&made);
    made.cases[4].packed = -1;
    expect_fault(&made, MUSLIN_CUTPLAN_FAULT_BOUND, 4);
    make_packed(&made);
    made.cases[4].packed = 2; /* of strips of 3 nothing is asked */
    expect_fault(&made, MUSLIN_CUTPLAN_FAULT_BOUND, 4);
    make_packed(&made);
    made.cutting.stacked = 1;
    expect_fault(&made, MUSLIN_CUTPLAN_FAULT_BOUND, 4);
    make_packed(&made);
    made.cases[1].limit.wanted = 2;
    made.cases[2].limit.wanted = 3;
    expect_fault(&made, MUSLIN_CUTPLAN_FAULT_BOUND, 4); /* two strips suffice */
    make_packed(&made);
    made.cases[3].limit.wanted = 2;
    made.cases[4].limit.wanted = 3;
    made.cases[3].least = 12;
    made.cases[3].worth_count = 0;
    expect_well(&made, 13, 12); /* more of them than are wanted in all */
    make_packed(&made);
    made.ways[0].sheet = 1;
    expect_fault(&made, MUSLIN_CUTPLAN_FAULT_BOUND, 4);
    make_packed(&made); /* the lower strip holds none of the higher pieces */
    made.cases[1].limit.first_way = made.cases[1].limit.last_way = 1;
    made.cases[2].limit.first_way = made.cases[2].limit.last_way = 1;
    made.cases[3].limit.first_way = made.cases[3].limit.last_way = 1;
    made.cases[4].limit.first_way = made.cases[4].limit.last_way = 1;
    made.cases[3].least = 12;
    made.cases[3].worth_count = 0;
    made.cases[4].packed = 2;
    expect_well(&made, 13, 12);
}
END_TEST

/* ---- at the edge of what is right -------------------------------------------------------------------------------- */

/* A number one beyond what there is names the place itself. */
START_TEST(numbers_just_beyond_what_there_is)
{
    struct made made;
    make_one_size(&made);
    made.strips[1].count = 2; /* of one thing laid */
    expect_fault(&made, MUSLIN_CUTPLAN_FAULT_OVERFULL, 1);
    make_one_size(&made);
    made.laid[0].size = -1;
    expect_fault(&made, MUSLIN_CUTPLAN_FAULT_MISSING, -1);
    make_one_size(&made);
    made.patterns[1].way = -1;
    expect_fault(&made, MUSLIN_CUTPLAN_FAULT_COST, 1);
    make_one_size(&made);
    made.patterns[1].times = 0;
    expect_fault(&made, MUSLIN_CUTPLAN_FAULT_COST, 1);
    make_one_size(&made);
    made.patterns[1].first = 2;
    expect_fault(&made, MUSLIN_CUTPLAN_FAULT_OVERFULL, 2);
    make_one_size(&made);
    made.strips[1].height = 5; /* of the second pattern, whose piece is the second thing laid */
    expect_fault(&made, MUSLIN_CUTPLAN_FAULT_TOO_HIGH, 1);
    make_panel(&made);
    made.strips[1].height = -1;
    expect_fault(&made, MUSLIN_CUTPLAN_FAULT_OVERFULL, 1);
    make_two_sizes(&made); /* all pieces are there, and none of one of them more */
    add_laid(&made, 1, 0);
    expect_fault(&made, MUSLIN_CUTPLAN_FAULT_MISSING, 1);
    make_stock(&made);
    made.available[0] = 0;
    expect_fault(&made, MUSLIN_CUTPLAN_FAULT_STOCK, 0);
}
END_TEST

/* Seven pieces are wanted; there may be as many strips of three as a count allows. */
START_TEST(as_many_things_as_can_be_counted)
{
    struct made made;
    make_one_size(&made);
    made.patterns[0].times = MUSLIN_COUNT_MAX;
    made.found.cost = 4 * (INT64_C(1) + MUSLIN_COUNT_MAX);
    made.found.least = made.cases[0].least = 10; /* of so large a plan sums are not looked at */
    expect_well(&made, 4 * (INT64_C(1) + MUSLIN_COUNT_MAX), 10);
}
END_TEST

/* A piece of stock that nothing is cut from is needless, and no fault. */
START_TEST(a_thing_that_holds_nothing)
{
    struct made made;
    make_stock(&made);
    add_pattern(&made, 1, 0);
    made.found.cost += 5;
    expect_well(&made, 12, 6);
    make_one_size(&made);
    add_pattern(&made, 1, 0);
    add_strip(&made, 4);
    made.found.cost += 4;
    expect_well(&made, 16, 12);
}
END_TEST

/* Pieces 3 high, on each other in strips of 6 and 8: two and not three, and no more than there are below. */
START_TEST(stacks_of_three)
{
    struct made made;
    make_stack(&made);
    add_laid(&made, 0, 2)->above = 1;
    made.laid[2].other_way = 1;
    expect_fault(&made, MUSLIN_CUTPLAN_FAULT_TOO_HIGH, 2);
    made.ways[0].along = made.strips[0].height = 8;
    expect_fault(&made, MUSLIN_CUTPLAN_FAULT_TOO_HIGH, 2);
    made.ways[0].along = made.strips[0].height = 9;
    expect_well(&made, 6, 6);
    made.laid[1].count = 1;
    expect_fault(&made, MUSLIN_CUTPLAN_FAULT_OVERFULL, 0);
}
END_TEST

/* Where a strip holds one size only, the one before it may hold another; the last holds its size in two places. */
START_TEST(strips_of_one_size_each)
{
    struct made made;
    make_two_sizes(&made);
    made.cutting.one_size = 1;
    made.strips[0].count = 1;
    made.patterns[1].times = 2;
    made.strips[1].first = 1;
    made.strips[1].count = 2;
    made.found.cost = 16;
    add_case(&made, -1, 12, PROVED(7, 3));
    made.found.least = 12;
    expect_well(&made, 16, 12);
    made.laid[2].size = 0;
    expect_fault(&made, MUSLIN_CUTPLAN_FAULT_TOO_HIGH, 1);
}
END_TEST

/* Right across the bolt long pieces may lie in strips, beside others. */
START_TEST(long_pieces_in_strips_of_the_bolt)
{
    struct made made;
    make_two_sizes(&made);
    made.sizes[0].slit = 1;
    add_case(&made, -1, 12, PROVED(7, 3));
    made.found.least = 12;
    expect_well(&made, 13, 12);
}
END_TEST

/* The least strip within a sheet is 1 high: a panel 2 long with two of them, of one piece 8 wide each. */
START_TEST(strips_one_high)
{
    struct made made;
    make_panel(&made);
    made.sizes[0].along = made.ways[0].along = 2;
    made.sizes[1].across = 6;
    made.sizes[1].along = made.strips[1].height = made.strips[2].height = 1;
    made.sizes[1].count = 2;
    made.laid[1].count = made.laid[2].count = 1;
    made.cases[0].least = made.found.least = 0;
    expect_well(&made, 6, 0);
    made.laid[2].count = 2;
    expect_fault(&made, MUSLIN_CUTPLAN_FAULT_OVERFULL, 2);
    made.sizes[1].count = 3;
    made.laid[2].count = 1;
    expect_fault(&made, MUSLIN_CUTPLAN_FAULT_MISSING, 1);
}
END_TEST

/* Whatever a limit counts is one of the ways and sizes that there are, and of at most something, nothing or more. */
START_TEST(limits_just_beyond_what_there_is)
{
    static const struct {
        int32_t kind, first_way, last_way, size;
        int64_t wanted;
    } wrong[] = {
        { MSL_LIMIT_WAYS, -1, 1, 0, 0 },  { MSL_LIMIT_WAYS, 0, 2, 0, 0 },   { MSL_LIMIT_WAYS, 1, 0, 0, 0 },
        { MSL_LIMIT_WAYS, -1, -1, 0, 0 }, { MSL_LIMIT_WAYS, 2, 2, 0, 0 },   { MSL_LIMIT_WAYS, 1, 1, 0, -1 },
        { MSL_LIMIT_COPIES, 0, 0, -1, 2 }, { MSL_LIMIT_COPIES, 0, 0, 2, 2 }, { MSL_LIMIT_COPIES, 2, 2, 1, 2 },
        { MSL_LIMIT_COPIES, -1, -1, 1, 2 },
    };
    struct made made;
    for (size_t i = 0; i < sizeof wrong / sizeof wrong[0]; i++) {
        if (wrong[i].kind == MSL_LIMIT_WAYS)
            make_split_by_ways(&made);
        else
            make_split_by_copies(&made);
        for (int32_t part = 1; part <= 2; part++) {
            struct msl_limit *limit = &made.cases[part].limit;
            limit->first_way = wrong[i].first_way;
            limit->last_way = wrong[i].last_way;
            limit->size = wrong[i].size;
            limit->wanted = wrong[i].wanted + part - 1;
        }
        expect_fault(&made, MUSLIN_CUTPLAN_FAULT_GAP, 0);
    }
}
END_TEST

/* The second part of a split would be the first of what is no case any more; and a case may not be a part of none, nor
 * of itself. */
START_TEST(cases_just_beyond_what_there_is)
{
    struct made made;
    struct msl_case cases[6];
    make_split_by_ways(&made);
    made.found.case_count = 2;
    expect_fault(&made, MUSLIN_CUTPLAN_FAULT_GAP, 0);
    make_split_by_ways(&made);
    for (int32_t i = 0; i < 3; i++)
        cases[i + 1] = made.cases[i];
    made.found.cases = cases + 1;
    made.found.case_count = 5;
    cases[4] = cases[2];
    cases[5] = cases[3];
    cases[0].split = 3;
    cases[4].parent = cases[5].parent = -1;
    expect_fault(&made, MUSLIN_CUTPLAN_FAULT_GAP, 3);
    cases[4].parent = cases[5].parent = 3;
    cases[4].split = 3;
    expect_fault(&made, MUSLIN_CUTPLAN_FAULT_GAP, 3);
}
END_TEST

/* Half of each stock, whose row comes first or last: as make_stock(), and in the second of two cases. */
static void make_other_stock(struct made *made)
{
    const struct msl_limit at_most = { 1, MSL_LIMIT_WAYS, 1, 1, 0, 0, 0 };
    const struct msl_limit at_least = { 2, MSL_LIMIT_WAYS, 1, 1, 0, 1, 0 };
    make_stock(made);
    made->ways[0].stock = 1;
    made->ways[1].stock = 0;
    const struct msl_way dear = made->ways[0];
    made->ways[0] = made->ways[1];
    made->ways[1] = dear;
    made->patterns[0].way = 1;
    made->patterns[1].way = 0;
    made->available[0] = 1;
    made->available[1] = INT64_MAX;
    made->worths[1] = -2;
    made->worths[2] = 0;
    made->cases[0].split = 1;
    add_case(made, 0, 6, PROVED(5, -2, 0, 0))->limit = at_most;
    add_case(made, 0, 7, PROVED(0, 0, 0, 5))->limit = at_least; /* 10, as two pieces of the large stock cost 5 each */
}

/* Stock of which there is one costs more than it says; what that comes to is taken off all. */
START_TEST(worths_of_stock)
{
    struct made made;
    make_other_stock(&made);
    expect_well(&made, 7, 6);
    made.cases[2].limit.wanted = 3;
    made.cases[1].limit.wanted = 2;
    expect_well(&made, 7, 6);
    make_other_stock(&made);
    made.worths[made.cases[2].first_worth + 3] = 0;
    expect_fault(&made, MUSLIN_CUTPLAN_FAULT_BOUND, 2);
    make_other_stock(&made); /* 25 less 2 is 23: of plans that cost 6, a thing at 5 may be worth 19, not 20 */
    made.cases[0].least = 7;
    expect_fault(&made, MUSLIN_CUTPLAN_FAULT_BOUND, 0);
    made.cases[0].least = 6;
    made.worths[1] = -1; /* then it is worth 9, where 24 for 5 allow 9, and the large one 20, where they allow 23 */
    expect_well(&made, 7, 6);
    made.worths[1] = 0; /* 10 of 9 */
    expect_fault(&made, MUSLIN_CUTPLAN_FAULT_BOUND, 0);
}
END_TEST

/* A bound of 1 needs nothing but that all is worth something, and that the worths are of the right sign. */
START_TEST(worths_of_the_wrong_sign_prove_not_even_1)
{
    struct made made;
    for (int32_t stock = 0; stock < 2; stock++)
        for (int64_t worth = -1; worth < 2; worth++) {
            make_stock(&made);
            made.cases[0].least = made.found.least = 1;
            made.worths[1 + stock] = worth;
            if (worth == 0 || (worth < 0 && stock == 1))
                expect_well(&made, 7, 1);
            else
                expect_fault(&made, MUSLIN_CUTPLAN_FAULT_BOUND, 0);
        }
    for (int64_t worth = -1; worth < 2; worth++)
        for (int32_t at_least = 0; at_least < 2; at_least++) {
            make_split_by_ways(&made);
            made.cases[0].least = made.cases[1].least = made.cases[2].least = made.found.least = 1;
            made.worths[made.cases[1 + at_least].first_worth + 2] = worth;
            if (worth == 0 || (worth > 0) == at_least)
                expect_well(&made, 13, 1);
            else
                expect_fault(&made, MUSLIN_CUTPLAN_FAULT_BOUND, 1 + at_least);
        }
    make_two_sizes(&made);
    add_case(&made, -1, 1, PROVED(7, -1));
    made.found.least = 1;
    expect_fault(&made, MUSLIN_CUTPLAN_FAULT_BOUND, 0);
    made.worths[0] = made.worths[1] = 0;
    expect_fault(&made, MUSLIN_CUTPLAN_FAULT_BOUND, 0);
    made.worths[1] = 1;
    expect_well(&made, 13, 1);
}
END_TEST

/* Three pieces fill a strip that costs 1: worth 1 each, they prove that plans cost 1, and not 2. The first case that is
 * not proved is told, and how many were before it. */
START_TEST(bounds_of_1_and_2)
{
    struct made made;
    make_one_size(&made);
    made.sizes[0].count = 3;
    made.ways[0].cost = 1;
    made.patterns[0].times = 1;
    made.found.cost = 2;
    made.worths[0] = 1;
    made.cases[0].least = made.found.least = 1;
    expect_well(&made, 2, 1);
    made.cases[0].least = made.found.least = 2;
    expect_fault(&made, MUSLIN_CUTPLAN_FAULT_BOUND, 0);
    make_split_by_ways(&made);
    made.worths[2] = made.worths[5] = 0;
    expect_fault(&made, MUSLIN_CUTPLAN_FAULT_BOUND, 1);
    ck_assert_int_eq(checked(&made).cases, 1);
}
END_TEST

/* One piece in one strip, or two pieces in two: what they cost is proved by any worth that can be counted, and by none
 * that can't. */
START_TEST(worths_up_to_the_end_of_counting)
{
    struct made made;
    const struct {
        int64_t count, worth;
        int is_well;
    } worths[] = {
        { 1, 1, 1 }, { 1, MSL_WORTH_MAX - 1, 1 }, { 1, MSL_WORTH_MAX, 0 }, { 2, 1, 1 }, { 2, MSL_WORTH_MAX / 2, 1 },
        { 2, MSL_WORTH_MAX / 2 + 1, 0 },
    };
    ck_assert_int_eq(MSL_WORTH_MAX % 2, 0);
    for (size_t i = 0; i < sizeof worths / sizeof worths[0]; i++) {
        make_one_size(&made);
        made.sizes[0].across = 6;
        made.sizes[0].count = worths[i].count;
        made.found.plan.pattern_count = 1;
        made.laid[0].count = 1;
        made.patterns[0].times = worths[i].count;
        made.found.cost = made.found.least = made.cases[0].least = 4 * worths[i].count;
        made.worths[0] = worths[i].worth;
        if (worths[i].is_well)
            expect_well(&made, 4 * worths[i].count, 4 * worths[i].count);
        else
            expect_fault(&made, MUSLIN_CUTPLAN_FAULT_BOUND, 0);
    }
    make_one_size(&made);
    made.worths[0] = MSL_WORTH_MAX / 6; /* seven are worth more than can be counted */
    expect_fault(&made, MUSLIN_CUTPLAN_FAULT_BOUND, 0);
}
END_TEST

/* No strip of 3 holds a piece 5 high, however much it is said to be worth there. */
START_TEST(worths_of_what_can_not_be_there)
{
    struct made made;
    make_split_by_copies(&made);
    made.cases[1].least = 0;
    split(&made, 0, MSL_LIMIT_COPIES, 1, 0, 0);
    made.found.least = 0;
    made.worths[5] = made.worths[6] = 0;
    for (int64_t below = 1; below >= -1; below--) {
        made.worths[7] = MSL_WORTH_MAX - below;
        if (below >= 0)
            expect_well(&made, 13, 12);
        else
            expect_fault(&made, MUSLIN_CUTPLAN_FAULT_BOUND, 2);
    }
}
END_TEST

/* At most so many of a thing makes each of them dearer: its pieces may be worth that much more, as far as one counts. */
START_TEST(things_worth_less_by_their_limit)
{
    struct made made;
    for (int64_t more = 0; more < 3; more++) {
        make_one_size(&made);
        made.sizes[0].across = 6;
        made.sizes[0].count = 1;
        made.found.plan.pattern_count = 1;
        made.laid[0].count = 1;
        made.patterns[0].times = 1;
        made.found.cost = 4;
        made.found.case_count = made.found.worth_count = 0;
        add_case(&made, -1, 0, AS_ABOVE)->split = 1;
        add_case(&made, 0, 4, PROVED(MSL_WORTH_MAX - 2 + more, -2));
        add_case(&made, 0, 0, AS_ABOVE);
        split(&made, 0, MSL_LIMIT_WAYS, 0, 0, 1);
        made.found.least = 0;
        if (more < 2)
            expect_well(&made, 4, 0);
        else
            expect_fault(&made, MUSLIN_CUTPLAN_FAULT_BOUND, 1);
    }
}
END_TEST

/* Costs in other units prove as much, whatever lies beside the table of ways: of 5 and 3 times as much 11 1/2 goes up to
 * 12, and not to 13. The table of sums is 407 words long in the end. */
START_TEST(sums_of_costs_in_any_unit)
{
    struct made made;
    struct msl_way ways[4];
    for (int64_t unit = 1; unit <= 2000; unit += unit < 130 ? 1 : 187) {
        make_split_by_ways(&made);
        for (int32_t i = 0; i < 2; i++)
            made.ways[i].cost *= unit;
        for (int32_t i = 0; i < 3; i++)
            made.cases[i].least *= unit;
        made.found.cost = made.found.least = 13 * unit;
        ways[0] = ways[3] = made.ways[0];
        ways[1] = made.ways[0];
        ways[2] = made.ways[1];
        ways[0].cost = ways[3].cost = 1;
        made.cutting.ways = ways + 1;
        expect_well(&made, 13 * unit, 13 * unit);
        made.cases[0].least++;
        expect_fault(&made, MUSLIN_CUTPLAN_FAULT_BOUND, 0);
    }
}
END_TEST

/* Four pieces, three to a strip: worth 4/3 of a strip, so more than one, where sums of costs are looked at, and that is
 * below 2^23. */
START_TEST(sums_of_costs_up_to_their_end)
{
    struct made made;
    for (int64_t cost = (1 << 22) - 1; cost <= 1 << 22; cost++) {
        make_one_size(&made);
        made.sizes[0].count = 4;
        made.patterns[0].times = 1;
        made.ways[0].cost = cost;
        made.found.cost = made.cases[0].least = made.found.least = 2 * cost;
        if (2 * cost < 1 << 23)
            expect_well(&made, 2 * cost, 2 * cost);
        else
            expect_fault(&made, MUSLIN_CUTPLAN_FAULT_BOUND, 0);
    }
}
END_TEST

/* In units of a million no table of sums is kept; parts without worths of their own are proved by those above them. */
START_TEST(bounds_of_large_plans)
{
    const int64_t unit = 1000000;
    struct made made;
    make_packed(&made);
    for (int32_t i = 0; i < 2; i++)
        made.ways[i].cost *= unit;
    for (int32_t i = 0; i < made.found.case_count; i++)
        made.cases[i].least = 23 * unit / 2; /* 7 x 2 and 3 x 3, halved */
    made.found.cost = 13 * unit;
    made.found.least = 23 * unit / 2;
    expect_well(&made, 13 * unit, 23 * unit / 2);
    made.cases[2].least++;
    expect_fault(&made, MUSLIN_CUTPLAN_FAULT_BOUND, 2);
    make_split_by_ways(&made);
    for (int32_t i = 0; i < 2; i++)
        made.ways[i].cost *= unit;
    made.cases[0].least = made.cases[2].least = made.found.least = 23 * unit / 2;
    made.cases[1].least = 25 * unit / 2; /* all pieces 2 1/2 each */
    made.cases[2].worth_count = 0;
    made.found.cost = 13 * unit;
    expect_well(&made, 13 * unit, 23 * unit / 2);
}
END_TEST

/* Stock in other units of cost proves as much. */
START_TEST(costs_of_stock_in_any_unit)
{
    struct made made;
    for (int64_t unit = 1; unit < 200; unit++) {
        make_other_stock(&made);
        for (int32_t i = 0; i < 2; i++)
            made.ways[i].cost *= unit;
        for (int32_t i = 0; i < 3; i++)
            made.cases[i].least *= unit;
        made.found.cost *= unit;
        made.found.least *= unit;
        expect_well(&made, 7 * unit, 6 * unit);
    }
}
END_TEST

/* How many cases there are, how many of them are proved by then, and when it is to end. */
struct cases_told {
    int64_t cases;
    int64_t proved;
    int32_t answer;
};

static int32_t are_told(void *context, int64_t work, int64_t best, int64_t bound)
{
    struct cases_told *told = context;
    ck_assert_int_ge(work, 0);
    ck_assert_int_eq(best, told->cases);
    ck_assert(bound >= told->proved && bound <= told->cases);
    told->proved = bound;
    return told->answer;
}

START_TEST(cases_are_told)
{
    struct made made;
    for (int32_t answer = 0; answer < 2; answer++) {
        struct failing_allocator failing;
        struct cases_told seen = { 3, 0, answer };
        struct msl_told told = msl_told_by(are_told, &seen);
        struct muslin_cutplan_checked out = { .size = (uint32_t)sizeof out };
        make_split_by_ways(&made);
        failing_start(&failing, 0);
        ck_status(msl_found_check(&made.cutting, &made.found, MSL_CHECK_STEPS_MAX, &told, &failing.allocator, &out),
                  answer == 0 ? MUSLIN_OK : MUSLIN_ERR_STOPPED);
        ck_assert_int_eq(told.ended, answer);
        ck_assert(answer == 1 || told.bound == 3);
        ck_assert(failing_is_clean(&failing));
    }
}
END_TEST

/* The whole has no limit, whatever stands there; what counts strips of two heights allows none of one; the strictest
 * comes first or last; and into no strip at all nothing fits. */
START_TEST(limits_of_a_packing)
{
    const struct msl_limit none = { 0, MSL_LIMIT_WAYS, 0, 0, 0, 0, 0 };
    struct made made;
    make_packed(&made);
    made.cases[1].limit.wanted = 2;
    made.cases[2].limit.wanted = 3;
    made.cases[0].limit = none;
    expect_fault(&made, MUSLIN_CUTPLAN_FAULT_BOUND, 4);
    make_packed(&made);
    made.cases[1].limit.last_way = made.cases[2].limit.last_way = 1;
    expect_fault(&made, MUSLIN_CUTPLAN_FAULT_BOUND, 4);
    make_packed(&made);
    made.cases[1].limit.wanted = 0;
    made.cases[2].limit.wanted = 1;
    made.cases[4].limit.wanted = 1;
    made.cases[3].limit.wanted = 0;
    expect_well(&made, 13, 12);
    make_packed(&made); /* at most two strips, of those at most none */
    add_case(&made, 3, 12, AS_ABOVE)->packed = 1;
    add_case(&made, 3, 12, AS_ABOVE);
    made.cases[3].split = 5;
    made.cases[4].packed = 0;
    split(&made, 3, MSL_LIMIT_WAYS, 0, 0, 0);
    made.cases[1].limit.wanted = 2;
    made.cases[2].limit.wanted = 3;
    made.cases[3].least = 12;
    made.cases[3].worth_count = 0;
    made.cases[3].limit.at_least = 1;
    made.cases[4].limit.at_least = 0;
    made.cases[3].limit.wanted = 1;
    made.cases[4].limit.wanted = 0;
    expect_well(&made, 13, 12);
}
END_TEST

/* ---- every number changed --------------------------------------------------------------------------------------- */

/* What numbers are changed into. */
static int64_t changed_into(int64_t number, int32_t way)
{
    const int64_t into[] = { number - 1, number + 1, -number, number + 2, 0, 1, 2 * number, number - 5, number + 1000,
                             INT32_MAX, INT32_MIN };
    return into[way];
}
enum { CHANGES = 11 };

/* The plan of two sizes is well when what it has of each is enough, its strips hold it, and its cost is right. */
static int plan_is_well(const struct made *made)
{
    int64_t have[2] = { 0, 0 };
    int64_t cost = 0;
    for (int32_t i = 0; i < 2; i++) {
        const struct msl_pattern *pattern = &made->patterns[i];
        int64_t used = 0;
        if (pattern->way < 0 || pattern->way > 1 || pattern->times < 1 || pattern->count != 1 || pattern->first < 0 ||
            pattern->first > 1)
            return 0;
        const struct msl_strip *strip = &made->strips[pattern->first];
        if (strip->height != made->ways[pattern->way].along || strip->first < 0 || strip->count < 0 ||
            strip->count > 3 - strip->first)
            return 0;
        for (int32_t k = strip->first; k < strip->first + strip->count; k++) {
            const struct msl_laid *laid = &made->laid[k];
            if (laid->size < 0 || laid->size > 1 || laid->count < 1 || laid->above != 0 || laid->other_way != 0 ||
                made->sizes[laid->size].along > strip->height)
                return 0;
            used += (int64_t)laid->count * made->sizes[laid->size].across;
            have[laid->size] += laid->count * pattern->times;
        }
        if (used > 10)
            return 0;
        cost += pattern->times * made->ways[pattern->way].cost;
    }
    return have[0] >= 2 && have[1] >= 3 && cost == made->found.cost;
}

static void change_plan(int32_t *number, struct made *made)
{
    const int32_t was = *number;
    for (int32_t way = 0; way < CHANGES; way++) {
        *number = (int32_t)changed_into(was, way);
        const struct muslin_cutplan_checked out = checked(made);
        ck_assert_int_eq(out.fault == 0, plan_is_well(made));
    }
    *number = was;
}

START_TEST(every_number_of_a_plan_changed)
{
    struct made made;
    make_split_by_ways(&made);
    ck_assert(plan_is_well(&made));
    for (int32_t i = 0; i < 2; i++) {
        change_plan(&made.patterns[i].way, &made);
        change_plan(&made.patterns[i].first, &made);
        change_plan(&made.patterns[i].count, &made);
        change_plan(&made.strips[i].first, &made);
        change_plan(&made.strips[i].count, &made);
        for (int32_t way = 0; way < CHANGES; way++) {
            struct made other = made;
            begin(&other);
            make_split_by_ways(&other);
            other.patterns[i].times = changed_into(other.patterns[i].times, way);
            ck_assert_int_eq(checked(&other).fault == 0, plan_is_well(&other));
            make_split_by_ways(&other);
            other.strips[i].height = changed_into(other.strips[i].height, way);
            ck_assert_int_eq(checked(&other).fault == 0, plan_is_well(&other));
        }
    }
    for (int32_t i = 0; i < 3; i++) {
        change_plan(&made.laid[i].size, &made);
        change_plan(&made.laid[i].count, &made);
        change_plan(&made.laid[i].above, &made);
    }
}
END_TEST

/* A proof that still holds proves no more than what is true: 13, as brute force over few strips says. */
static void expect_true(const struct made *made)
{
    const struct muslin_cutplan_checked out = checked(made);
    ck_assert_int_le(out.least, 13);
}

static void change_proof(int32_t *number, const struct made *made)
{
    const int32_t was = *number;
    for (int32_t way = 0; way < CHANGES; way++) {
        *number = (int32_t)changed_into(was, way);
        expect_true(made);
    }
    *number = was;
}

static void change_long(int64_t *number, const struct made *made)
{
    const int64_t was = *number;
    for (int32_t way = 0; way < CHANGES; way++) {
        *number = changed_into(was, way);
        expect_true(made);
    }
    *number = INT64_MAX;
    expect_true(made);
    *number = INT64_MIN;
    expect_true(made);
    *number = was;
}

START_TEST(every_number_of_a_proof_changed)
{
    struct made made;
    for (int32_t which = 0; which < 3; which++) {
        if (which == 0)
            make_split_by_ways(&made);
        else if (which == 1)
            make_split_by_copies(&made);
        else
            make_packed(&made);
        for (int32_t i = 0; i < made.found.case_count; i++) {
            struct msl_case *of = &made.cases[i];
            int32_t *numbers[] = { &of->parent, &of->split, &of->first_worth, &of->worth_count, &of->packed,
                                   &of->limit.kind, &of->limit.first_way, &of->limit.last_way, &of->limit.size,
                                   &of->limit.at_least };
            for (size_t k = 0; k < sizeof numbers / sizeof numbers[0]; k++)
                change_proof(numbers[k], &made);
            change_long(&of->least, &made);
            change_long(&of->limit.wanted, &made);
        }
        for (int32_t i = 0; i < made.found.worth_count; i++)
            change_long(&made.worths[i], &made);
        change_long(&made.found.least, &made);
        for (int32_t way = 0; way < 2; way++) { /* both parts at once */
            made.cases[1].limit.wanted += 1 + way;
            made.cases[2].limit.wanted += 1 + way;
            expect_true(&made);
        }
    }
}
END_TEST

/* ---- the most that a thing is worth, by trying all --------------------------------------------------------------- */

static uint64_t drawn(uint64_t *state, uint64_t below)
{
    *state = *state * UINT64_C(6364136223846793005) + UINT64_C(1442695040888963407);
    return (*state >> 33) % below;
}

/* Any cutting of few sizes. */
static void make_any(struct made *made, uint64_t *random)
{
    begin(made);
    const int32_t sizes = 1 + (int32_t)drawn(random, 4);
    for (int32_t i = 0; i < sizes; i++) {
        struct msl_piece_size *size = add_size(made, 2 + (int64_t)drawn(random, 5), 1 + (int64_t)drawn(random, 5),
                                         1 + (int64_t)drawn(random, 4));
        size->level = drawn(random, 6) == 0;
        if (drawn(random, 3) == 0) {
            size->turned_across = 1 + (int64_t)drawn(random, 5);
            size->turned_along = 1 + (int64_t)drawn(random, 5);
        } else if (drawn(random, 4) == 0) {
            size->run_in = 1 + (int64_t)drawn(random, 3);
        } else if (drawn(random, 3) == 0) {
            size->slit = 1;
        }
    }
    struct msl_way *way = add_way(made, 1, 6 + (int64_t)drawn(random, 8), 2 + (int64_t)drawn(random, 5));
    way->sheet = drawn(random, 2) == 0;
    way->panel = way->sheet != 0 && drawn(random, 2) == 0;
    for (int64_t height = 5; height > 0; height--)
        if (drawn(random, 2) == 0)
            made->heights[made->cutting.height_count++] = height;
    made->cutting.one_size = drawn(random, 4) == 0;
}

static int64_t narrowest(const struct msl_piece_size *size, int64_t height)
{
    int64_t best = 0;
    if (size->level != 0 ? size->along == height : size->along <= height)
        best = size->across;
    if (size->turned_across > 0 && (best == 0 || size->turned_across < best) &&
        (size->level != 0 ? size->turned_along == height : size->turned_along <= height))
        best = size->turned_across;
    return best;
}

enum { WHOLE, WITHIN, SLIT };

/* The most in one strip, of the sizes from `from` on. */
static int64_t try_strip(const struct made *made, const int64_t *worth, int64_t height, int64_t room, int what,
                         int32_t from, int is_empty)
{
    int64_t best = 0;
    if (from == made->cutting.size_count)
        return 0;
    const struct msl_piece_size *size = &made->sizes[from];
    const int64_t taken = narrowest(size, height);
    best = try_strip(made, worth, height, room, what, from + 1, is_empty);
    if (taken == 0 || (what == WITHIN && size->slit != 0) || (what == SLIT && size->slit == 0))
        return best;
    if (!is_empty && made->cutting.one_size != 0 && what != SLIT)
        return best;
    for (int64_t n = 1; n <= size->count && size->run_in + n * taken <= room; n++) {
        int64_t rest = try_strip(made, worth, height, room - size->run_in - n * taken, what, from + 1, 0);
        if (n * worth[from] + rest > best)
            best = n * worth[from] + rest;
    }
    return best;
}

/* The most in strips one behind the other, of heights from `from` on. */
static int64_t try_behind(const struct made *made, const int64_t *worth, int64_t across, int64_t along, int32_t from)
{
    if (from == made->cutting.height_count)
        return 0;
    int64_t best = try_behind(made, worth, across, along, from + 1);
    const int64_t height = made->heights[from];
    if (height <= along) {
        int64_t sum = try_strip(made, worth, height, across, WITHIN, 0, 1) +
                      try_behind(made, worth, across, along - height, from);
        if (sum > best)
            best = sum;
    }
    return best;
}

/* The most in a sheet: slit pieces that take any width, and strips in the rest. */
static int64_t try_sheet(const struct made *made, const int64_t *worth)
{
    const struct msl_way *way = &made->ways[0];
    int64_t best = 0;
    for (int64_t slit = 0; slit <= (way->panel != 0 ? way->across : 0); slit++) {
        int64_t sum = try_strip(made, worth, way->along, slit, SLIT, 0, 1) +
                      try_behind(made, worth, way->across - slit, way->along, 0);
        if (sum > best)
            best = sum;
    }
    return best;
}

static int64_t most_by_trying(const struct made *made, const int64_t *worth)
{
    if (made->ways[0].sheet != 0)
        return try_sheet(made, worth);
    return try_strip(made, worth, made->ways[0].along, made->ways[0].across, WHOLE, 0, 1);
}

START_TEST(the_most_as_by_trying_all)
{
    uint64_t random = 20;
    struct made made;
    struct failing_allocator failing;
    struct msl_told told = msl_told_by(NULL, NULL);
    struct msl_most most;
    for (int32_t round = 0; round < 4000; round++) {
        int64_t worth[SIZES];
        make_any(&made, &random);
        for (int32_t i = 0; i < made.cutting.size_count; i++)
            worth[i] = (int64_t)drawn(&random, 12) - 1;
        failing_start(&failing, 0);
        ck_ok(msl_most_start(&most, &made.cutting, MSL_CHECK_STEPS_MAX, &told, &failing.allocator));
        for (int32_t i = 0; i < made.cutting.size_count; i++)
            if (worth[i] < 0)
                worth[i] = 0;
        const int64_t truth = most_by_trying(&made, worth);
        for (int64_t enough = truth > 2 ? truth - 2 : 0; enough < truth + 2; enough++) {
            const int64_t said = msl_most_of(&most, 0, worth, enough);
            ck_assert_int_eq(said <= enough, truth <= enough);
            if (truth > enough)
                ck_assert_int_eq(said, truth);
        }
        ck_ok(most.status);
        msl_most_end(&most);
        ck_assert(failing_is_clean(&failing));
    }
}
END_TEST

/* Stacks: of one size, of two sizes equally wide, and where only one size may lie in a strip. */
START_TEST(the_most_of_stacks)
{
    struct made made;
    struct failing_allocator failing;
    struct msl_told told = msl_told_by(NULL, NULL);
    struct msl_most most;
    const int64_t worth[] = { 3, 4, 1, 2, 0 };
    begin(&made);
    add_size(&made, 4, 3, 5)->turned_across = 3;
    made.sizes[0].turned_along = 4;
    add_size(&made, 4, 4, 1);
    add_size(&made, 2, 2, 9)->turned_across = 2; /* square: both ways are one */
    made.sizes[2].turned_along = 2;
    add_size(&made, 3, 7, 9)->run_in = 1;
    add_size(&made, 1, 1, 9);
    add_way(&made, 7, 9, 7);
    made.cutting.stacked = 1;
    failing_start(&failing, 0);
    ck_ok(msl_most_start(&most, &made.cutting, MSL_CHECK_STEPS_MAX, &told, &failing.allocator));
    /* 4 wide: 3 and 4 high, worth 7; 3 wide: one of the first size; 2 wide: three, worth 3; 9 = 4 + 3 + 2 or 4 + 4:
     * the second stack of 4 is counted like the first, 14, where 7 + 3 + 3 and 7 + 2 x 3 are less. */
    ck_assert_int_eq(msl_most_of(&most, 0, worth, 0), 14);
    made.sizes[1].level = 1; /* then it is in no stack: 4 wide 6, twice */
    ck_assert_int_eq(msl_most_of(&most, 0, worth, 0), 12);
    made.sizes[1].level = 0;
    made.cutting.one_size = 1;
    /* The first size: stacks of two, 4 wide, worth 6 each: 12; three turned ones 9; the third: four stacks of three. */
    ck_assert_int_eq(msl_most_of(&most, 0, worth, 0), 12);
    made.ways[0].along = 2;
    ck_assert_int_eq(msl_most_of(&most, 0, worth, 0), 4);
    msl_most_end(&most);
    ck_assert(failing_is_clean(&failing));
}
END_TEST

/* Worths that are counted up to their end only; and a panel after a narrower one. */
START_TEST(the_most_of_many_and_much)
{
    struct made made;
    struct failing_allocator failing;
    struct msl_told told = msl_told_by(NULL, NULL);
    struct msl_most most;
    const int64_t much[] = { MSL_WORTH_MAX / 2 };
    const int64_t one[] = { 1 };
    begin(&made);
    add_size(&made, 1, 4, 5)->slit = 1;
    add_way(&made, 4, 3, 4);
    for (int64_t across = 2; across < 7; across += 4) {
        struct msl_way *way = add_way(&made, 4, across, 4);
        way->sheet = way->panel = 1;
    }
    made.heights[0] = 1;
    made.cutting.height_count = 1;
    failing_start(&failing, 0);
    ck_ok(msl_most_start(&most, &made.cutting, MSL_CHECK_STEPS_MAX, &told, &failing.allocator));
    ck_assert_int_eq(msl_most_of(&most, 0, much, 0), MSL_WORTH_MAX);
    ck_assert_int_eq(msl_most_of(&most, 1, one, 0), 2);
    ck_assert_int_eq(msl_most_of(&most, 2, one, 0), 5);
    msl_most_end(&most);
    ck_assert(failing_is_clean(&failing));
}
END_TEST

/* ---- packings, by trying all ------------------------------------------------------------------------------------- */

/* Lays piece after piece into every strip that holds it; sizes one after the other. */
static int try_pack(const struct msl_repacked *pieces, int32_t count, int64_t *rooms, int *kinds, int64_t strips,
                    int32_t kind, int64_t laid, int64_t least, int one_size)
{
    while (kind < count && laid == pieces[kind].wanted) {
        kind++;
        laid = least = 0;
    }
    if (kind == count)
        return 1;
    for (int64_t i = least; i < strips; i++) {
        const int64_t needed = pieces[kind].taken + ((kinds[i] >> kind & 1) != 0 ? 0 : pieces[kind].run_in);
        if (needed > rooms[i] || (one_size && (kinds[i] & ~(1 << kind)) != 0))
            continue;
        const int had = kinds[i];
        rooms[i] -= needed;
        kinds[i] |= 1 << kind;
        int fits = try_pack(pieces, count, rooms, kinds, strips, kind, laid + 1, i, one_size);
        rooms[i] += needed;
        kinds[i] = had;
        if (fits)
            return 1;
    }
    return 0;
}

START_TEST(packings_as_by_trying_all)
{
    uint64_t random = 7;
    int32_t fits = 0;
    struct made made;
    struct failing_allocator failing;
    struct msl_told told = msl_told_by(NULL, NULL);
    struct msl_most most;
    begin(&made);
    for (int32_t round = 0; round < 6000; round++) {
        struct msl_repacked pieces[4];
        int64_t rooms[4];
        int kinds[4] = { 0, 0, 0, 0 };
        const int64_t strips = (int64_t)drawn(&random, 5);
        const int64_t room = 6 + (int64_t)drawn(&random, 10);
        const int32_t count = (int32_t)drawn(&random, 5);
        for (int32_t i = 0; i < count; i++) {
            pieces[i].taken = 2 + (int64_t)drawn(&random, 7);
            pieces[i].run_in = drawn(&random, 3) == 0 ? (int64_t)drawn(&random, 3) : 0;
            pieces[i].wanted = 1 + (int64_t)drawn(&random, 3);
        }
        for (int64_t i = 0; i < strips; i++)
            rooms[i] = room;
        made.cutting.one_size = drawn(&random, 4) == 0;
        failing_start(&failing, 0);
        ck_ok(msl_most_start(&most, &made.cutting, MSL_CHECK_STEPS_MAX, &told, &failing.allocator));
        const int truth = try_pack(pieces, count, rooms, kinds, strips, 0, 0, 0, made.cutting.one_size);
        ck_assert_int_eq(msl_repack_fails(&most, pieces, count, strips, room), !truth);
        fits += truth;
        msl_most_end(&most);
        ck_assert(failing_is_clean(&failing));
    }
    ck_assert_int_gt(fits, 1000);
    ck_assert_int_lt(fits, 5000);
}
END_TEST

/* ---- memory and work --------------------------------------------------------------------------------------------- */

START_TEST(every_allocation_fails)
{
    void (*const making[])(struct made *) = { make_one_size, make_split_by_ways, make_packed, make_panel, make_stock,
                                              make_stack };
    for (size_t i = 0; i < sizeof making / sizeof making[0]; i++)
        for (int32_t one_size = 0; one_size < 2; one_size++) {
            struct made made;
            struct failing_allocator failing;
            making[i](&made);
            made.cutting.one_size = one_size;
            EVERY_ALLOCATION_FAILS_ONCE(failing)
            {
                struct msl_told told = msl_told_by(NULL, NULL);
                struct muslin_cutplan_checked out = { (uint32_t)sizeof out, 0, -1, -1, -1, -1, 0, -1 };
                const muslin_status status = msl_found_check(&made.cutting, &made.found, MSL_CHECK_STEPS_MAX, &told,
                                                             &failing.allocator, &out);
                ck_status(status, failing.has_failed ? MUSLIN_ERR_NO_MEMORY : MUSLIN_OK);
                ck_assert_int_eq(out.fault == -1, failing.has_failed);
                ck_assert(failing_is_clean(&failing));
            }
        }
}
END_TEST

START_TEST(too_much_work)
{
    struct made made;
    struct failing_allocator failing;
    void (*const making[])(struct made *) = { make_one_size, make_packed, make_panel };
    for (size_t i = 0; i < sizeof making / sizeof making[0]; i++) {
        int64_t steps = 0;
        struct msl_told told = msl_told_by(NULL, NULL);
        struct muslin_cutplan_checked out = { (uint32_t)sizeof out, 0, -1, -1, -1, -1, 0, -1 };
        making[i](&made);
        for (muslin_status status = MUSLIN_ERR_WORK_LIMIT; status != MUSLIN_OK; steps++) {
            failing_start(&failing, 0);
            status = msl_found_check(&made.cutting, &made.found, steps, &told, &failing.allocator, &out);
            ck_assert(status == MUSLIN_OK || status == MUSLIN_ERR_WORK_LIMIT);
            ck_assert(failing_is_clean(&failing));
        }
        ck_assert_int_gt(steps, 2);
        ck_assert_int_eq(out.fault, 0);
    }
}
END_TEST

/* Sizes of 1, 2, 4 ... wide, worth as much, have each width as a sum. */
static void make_doubles(struct made *made, int32_t sizes, int32_t slit)
{
    begin(made);
    for (int32_t i = 0; i < sizes; i++)
        add_size(made, (int64_t)1 << i, 4, 1)->slit = slit;
    add_way(made, 4, (int64_t)1 << 30, 4);
}

static void expect_too_much(struct made *made, int64_t worth)
{
    struct failing_allocator failing;
    struct msl_told told = msl_told_by(NULL, NULL);
    struct msl_most most;
    int64_t worths[SIZES];
    for (int32_t i = 0; i < made->cutting.size_count; i++)
        worths[i] = worth << i;
    failing_start(&failing, 0);
    ck_ok(msl_most_start(&most, &made->cutting, MSL_CHECK_STEPS_MAX, &told, &failing.allocator));
    msl_most_of(&most, 0, worths, 0);
    ck_status(most.status, MUSLIN_ERR_WORK_LIMIT);
    msl_most_end(&most);
    ck_assert(failing_is_clean(&failing));
}

START_TEST(too_many_sums)
{
    struct made made;
    make_doubles(&made, 21, 0);
    expect_too_much(&made, 1);
    make_doubles(&made, 16, 1);
    made.ways[0].sheet = made.ways[0].panel = 1;
    made.cutting.height_count = 33;
    for (int32_t i = 0; i < 33; i++)
        made.heights[i] = 33 - i;
    expect_too_much(&made, 1);
}
END_TEST

START_TEST(too_many_pieces_to_pack)
{
    struct made made;
    struct failing_allocator failing;
    struct msl_told told = msl_told_by(NULL, NULL);
    struct msl_most most;
    struct msl_repacked pieces[] = { { 1, 0, (int64_t)MSL_SUMS_MAX + 1 } };
    begin(&made);
    failing_start(&failing, 0);
    ck_ok(msl_most_start(&most, &made.cutting, MSL_CHECK_STEPS_MAX, &told, &failing.allocator));
    ck_assert_int_eq(msl_repack_fails(&most, pieces, 1, (int64_t)1 << 40, 1), 0);
    ck_status(most.status, MUSLIN_ERR_WORK_LIMIT);
    msl_most_end(&most);
    ck_assert(failing_is_clean(&failing));
}
END_TEST

START_TEST(a_packing_without_memory_or_time)
{
    struct made made;
    struct failing_allocator failing;
    struct msl_told told = msl_told_by(NULL, NULL);
    struct msl_most most;
    begin(&made);
    for (int32_t round = 0; round < 2; round++) {
        struct msl_repacked pieces[] = { { 3, 0, 2 }, { 5, 0, 1 } };
        failing_start(&failing, round == 0 ? 2 : 0);
        ck_ok(msl_most_start(&most, &made.cutting, 3, &told, &failing.allocator));
        ck_assert_int_eq(msl_repack_fails(&most, pieces, 2, 2, 6), 0);
        ck_status(most.status, round == 0 ? MUSLIN_ERR_NO_MEMORY : MUSLIN_ERR_WORK_LIMIT);
        msl_most_end(&most);
        ck_assert(failing_is_clean(&failing));
    }
}
END_TEST

/* ---- the public call --------------------------------------------------------------------------------------------- */

/* 32 squares of 5 1/2 in, 16 of 6 and 8 of 9 1/2 from 40 in, which allocates so. */
static struct muslin_cutplan *three_squares(const struct muslin_allocator *allocator)
{
    struct muslin_cutplan_spec spec = MUSLIN_CUTPLAN_SPEC_INIT;
    struct muslin_blank_spec pieces[3] = { MUSLIN_BLANK_SPEC_INIT, MUSLIN_BLANK_SPEC_INIT, MUSLIN_BLANK_SPEC_INIT };
    const muslin_len sides[] = { IN(5, 1, 2), WHOLE_IN(6), IN(9, 1, 2) };
    const int64_t counts[] = { 32, 16, 8 };
    struct muslin_cutplan *plan = NULL;
    for (int32_t i = 0; i < 3; i++) {
        pieces[i].cut_width = pieces[i].cut_length = sides[i];
        pieces[i].count = counts[i];
    }
    ck_ok(muslin_cutplan_create(&spec, pieces, sizeof pieces[0], 3, NULL, 0, 0, allocator, NULL, NULL, &plan, NULL));
    return plan;
}

START_TEST(a_check_without_an_answer_says_why)
{
    static const struct {
        muslin_status status;
        int32_t argument;
        int64_t limit;
    } said[] = {
        { MUSLIN_ERR_WORK_LIMIT, MUSLIN_ARG_WORK_LIMIT, INT64_C(1) << 40 },
        { MUSLIN_ERR_STOPPED, MUSLIN_ARG_NONE, 0 },
        { MUSLIN_ERR_NO_MEMORY, MUSLIN_ARG_ALLOCATOR, 0 },
    };
    for (size_t i = 0; i < sizeof said / sizeof said[0]; i++) {
        struct muslin_problem problem = PROBLEM;
        struct msl_check check = msl_check_start(&problem);
        ck_status(msl_check_fails(&check, said[i].status), said[i].status);
        ck_assert_int_eq(problem.argument, said[i].argument);
        ck_assert_int_eq(problem.limit, said[i].limit);
        ck_assert_int_eq(problem.value, 0);
    }
}
END_TEST

START_TEST(a_plan_that_was_made)
{
    struct failing_allocator failing;
    struct muslin_cutplan_checked out = { .size = (uint32_t)sizeof out };
    struct muslin_problem problem = PROBLEM;
    failing_start(&failing, 0);
    struct muslin_cutplan *plan = three_squares(&failing.allocator);
    ck_ok(muslin_cutplan_check(plan, NULL, NULL, &out, &problem));
    ck_assert_int_eq(out.fault, 0);
    ck_assert_int_eq(out.cost, WHOLE_IN(60));
    ck_assert_int_eq(out.least, WHOLE_IN(60));
    ck_assert_int_ge(out.cases, 1);
    ck_status(muslin_cutplan_check(NULL, NULL, NULL, &out, &problem), MUSLIN_ERR_NULL);
    ck_status(muslin_cutplan_check(plan, NULL, NULL, NULL, &problem), MUSLIN_ERR_NULL);
    failing.round = failing.calls + 1;
    ck_status(muslin_cutplan_check(plan, NULL, NULL, &out, &problem), MUSLIN_ERR_NO_MEMORY);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_ALLOCATOR);
    muslin_cutplan_free(plan);
    ck_assert(failing_is_clean(&failing));
}
END_TEST

Suite *cutplan_check_suite(void)
{
    Suite *suite = suite_create("cutplan_check");
    TCase *by_hand = tcase_create("by hand");
    tcase_add_test(by_hand, proofs_by_hand_hold);
    tcase_add_test(by_hand, nothing_is_well);
    tcase_add_test(by_hand, a_split_in_the_other_order);
    tcase_add_test(by_hand, sums_of_costs);
    suite_add_tcase(suite, by_hand);
    TCase *broken = tcase_create("broken");
    tcase_add_test(broken, each_fault_of_a_plan);
    tcase_add_test(broken, a_strip_of_one_size);
    tcase_add_test(broken, each_fault_of_a_panel);
    tcase_add_test(broken, each_fault_of_a_stack);
    tcase_add_test(broken, each_gap_between_cases);
    tcase_add_test(broken, worths_that_prove_less);
    tcase_add_test(broken, worths_beyond_counting);
    tcase_add_test(broken, worths_below_counting);
    tcase_add_test(broken, a_packing_with_many_limits);
    tcase_add_test(broken, nothing_at_least_is_always_proved);
    tcase_add_test(broken, packings_that_are_possible);
    tcase_add_test(broken, every_number_of_a_plan_changed);
    tcase_add_test(broken, every_number_of_a_proof_changed);
    suite_add_tcase(suite, broken);
    TCase *edges = tcase_create("at the edge");
    tcase_add_test(edges, numbers_just_beyond_what_there_is);
    tcase_add_test(edges, as_many_things_as_can_be_counted);
    tcase_add_test(edges, a_thing_that_holds_nothing);
    tcase_add_test(edges, stacks_of_three);
    tcase_add_test(edges, strips_of_one_size_each);
    tcase_add_test(edges, long_pieces_in_strips_of_the_bolt);
    tcase_add_test(edges, strips_one_high);
    tcase_add_test(edges, limits_just_beyond_what_there_is);
    tcase_add_test(edges, cases_just_beyond_what_there_is);
    tcase_add_test(edges, worths_of_stock);
    tcase_add_test(edges, worths_of_the_wrong_sign_prove_not_even_1);
    tcase_add_test(edges, bounds_of_1_and_2);
    tcase_add_test(edges, worths_up_to_the_end_of_counting);
    tcase_add_test(edges, worths_of_what_can_not_be_there);
    tcase_add_test(edges, things_worth_less_by_their_limit);
    tcase_add_test(edges, sums_of_costs_in_any_unit);
    tcase_add_test(edges, sums_of_costs_up_to_their_end);
    tcase_add_test(edges, bounds_of_large_plans);
    tcase_add_test(edges, costs_of_stock_in_any_unit);
    tcase_add_test(edges, cases_are_told);
    tcase_add_test(edges, limits_of_a_packing);
    suite_add_tcase(suite, edges);
    TCase *tried = tcase_create("by trying all");
    tcase_add_test(tried, the_most_as_by_trying_all);
    tcase_add_test(tried, the_most_of_stacks);
    tcase_add_test(tried, the_most_of_many_and_much);
    tcase_add_test(tried, packings_as_by_trying_all);
    suite_add_tcase(suite, tried);
    TCase *limits = tcase_create("memory and work");
    tcase_add_test(limits, every_allocation_fails);
    tcase_add_test(limits, too_much_work);
    tcase_add_test(limits, too_many_sums);
    tcase_add_test(limits, too_many_pieces_to_pack);
    tcase_add_test(limits, a_packing_without_memory_or_time);
    suite_add_tcase(suite, limits);
    TCase *public = tcase_create("the public call");
    tcase_add_test(public, a_check_without_an_answer_says_why);
    tcase_add_test(public, a_plan_that_was_made);
    suite_add_tcase(suite, public);
    return suite;
}
