/* test_pressing_solve.c - rules by chance, as no tree may make them, against all ways of pressing.
 *
 * SPDX-License-Identifier: MIT
 *
 * Few bits and many rules that cannot all hold: their bounds seldom meet at once, and most has to be searched. */
#include "pressing_solve.h"
#include "testing.h"

enum { BITS_MOST = 12, MET_MOST = 40, TURNED_MOST = 4, SYSTEMS = 400, MANY_BITS = 200, MANY_MET = 500 };

/* Meetings that nest when their bits add up to an odd or an even number. */
struct wanted {
    uint32_t mask;
    uint32_t odd;
    int64_t count;
};

struct rules {
    struct muslin_allocator memory;
    struct msl_check check;
    struct msl_told told;
    struct muslin_pressing plan;
    struct msl_nesting nesting;
    struct msl_seam_way seams[BITS_MOST];
    uint32_t place_bits[BITS_MOST];
    uint8_t place_ways[BITS_MOST];
    uint8_t alternating[BITS_MOST];
    struct wanted met[MET_MOST];
    uint32_t met_count;
    struct wanted turned[TURNED_MOST];
    uint32_t groups;
    uint64_t random;
};

static uint32_t below(struct rules *rules, uint32_t n)
{
    rules->random = rules->random * UINT64_C(6364136223846793005) + UINT64_C(1442695040888963407);
    return (uint32_t)(rules->random >> 33) % n;
}

/* Bits of one group: rules of different groups have none in common. */
static uint32_t any_mask(struct rules *rules, uint32_t most)
{
    const uint32_t group = below(rules, rules->groups);
    const uint32_t first = group * rules->plan.bits / rules->groups;
    const uint32_t end = (group + 1) * rules->plan.bits / rules->groups;
    uint32_t mask = 0;
    for (uint32_t i = below(rules, most) + 1; i > 0; i--)
        mask |= UINT32_C(1) << (first + below(rules, end - first));
    return mask;
}

static uint32_t sum_of(uint32_t mask, uint32_t ways)
{
    uint32_t odd = 0;
    for (uint32_t bits = mask & ways; bits != 0; bits &= bits - 1)
        odd ^= 1;
    return odd;
}

/* ---- made -------------------------------------------------------------------------------------------------------- */

static void *row_in(struct rules *rules, struct msl_rows *rows, uint32_t size)
{
    void *row = msl_add_row(&rules->check, &rules->memory, rows, size);
    ck_assert_ptr_nonnull(row);
    memset(row, 0, size);
    return row;
}

/* Bits stand in the sum in any order; one that stands there three times stands there once. */
static uint32_t rule_of(struct rules *rules, uint32_t mask)
{
    rules->nesting.sum.used = 0;
    for (uint32_t bit = rules->plan.bits; bit-- > 0;)
        for (int times = (mask >> bit & 1) == 0 ? 0 : below(rules, 4) == 0 ? 3 : 1; times > 0; times--)
            msl_add_to_sum(&rules->nesting, bit);
    return msl_rule_of_sum(&rules->nesting);
}

static void want(struct rules *rules, struct wanted wanted)
{
    struct msl_met *met = row_in(rules, &rules->plan.met, sizeof *met);
    rules->met[rules->met_count] = wanted;
    met->node = rules->met_count++;
    met->count = wanted.count;
    met->odd = wanted.odd;
    met->rule = rule_of(rules, wanted.mask);
    ((struct msl_rule *)rules->nesting.rules.rows)[met->rule].weight[wanted.odd] += wanted.count;
}

/* A turning with one or two sums. */
static void want_turned(struct rules *rules, uint32_t sums)
{
    struct msl_turning *turning = row_in(rules, &rules->nesting.turnings, sizeof *turning);
    turning->first = (uint32_t)rules->nesting.turned_ends.used;
    turning->count = sums;
    for (uint32_t i = 0; i < sums; i++) {
        struct msl_turned_end *sum = row_in(rules, &rules->nesting.turned_ends, sizeof *sum);
        struct wanted *turned = &rules->turned[turning->first + i];
        turned->mask = any_mask(rules, 3);
        turned->odd = sum->odd = below(rules, 2);
        sum->first = (uint32_t)rules->nesting.turned_bits.used;
        for (uint32_t bit = 0; bit < rules->plan.bits; bit++)
            if ((turned->mask >> bit & 1) != 0) {
                *(uint32_t *)row_in(rules, &rules->nesting.turned_bits, sizeof(uint32_t)) = bit;
                sum->count++;
            }
    }
}

/* Bits of seams, then of places, the first of which has none. */
static void give_bits(struct rules *rules)
{
    rules->plan.bits = 2 + below(rules, BITS_MOST - 1);
    rules->plan.seams = rules->plan.bits - rules->plan.bits / 3;
    rules->plan.seam = rules->seams;
    rules->plan.place_bit = rules->place_bits;
    rules->plan.place_way = rules->place_ways;
    rules->plan.places = 1 + rules->plan.bits / 3;
    for (uint32_t place = 1; place < rules->plan.places; place++)
        rules->place_bits[place] = rules->plan.seams + place - 1;
    memset(rules->place_ways, 7, sizeof rules->place_ways);
}

static void begin_empty(struct rules *rules, uint64_t seed, int64_t work_limit)
{
    memset(rules, 0, sizeof *rules);
    ck_ok(muslin_allocator_libc(&rules->memory));
    rules->check = msl_check_start(NULL);
    rules->told = msl_told_by(NULL, NULL);
    rules->told.best = INT64_MAX;
    rules->random = seed;
    rules->plan.allocator = rules->memory;
    rules->plan.spec.work_limit = work_limit;
    rules->nesting = (struct msl_nesting){ .plan = &rules->plan, .check = &rules->check, .told = &rules->told,
                                           .bounds_all = 1 };
    give_bits(rules);
    for (uint32_t bit = 0; bit < rules->plan.bits; bit++)
        rules->alternating[bit] = (uint8_t)below(rules, 2);
}

static void want_any(struct rules *rules)
{
    rules->groups = 1 + below(rules, 2) * below(rules, rules->plan.bits / 2);
    const uint32_t met = 1 + below(rules, MET_MOST);
    const uint32_t most = 1 + below(rules, 4);
    const uint32_t heaviest = below(rules, 2) == 0 ? 1 : 5;
    while (rules->met_count < met) {
        const uint32_t mask = below(rules, 20) == 0 ? 0 : any_mask(rules, most);
        want(rules, (struct wanted){ mask, below(rules, 2), 1 + below(rules, heaviest) });
    }
}

/* Bits that hang together heavily, two and two in a row, and lightly each by itself: what is better cannot be reached
 * by reversing a few. */
static void want_rows(struct rules *rules)
{
    const uint32_t length = 2 + below(rules, BITS_MOST - 1);
    rules->groups = 1;
    for (uint32_t bit = 0; bit < rules->plan.bits; bit++) {
        const uint32_t mask = UINT32_C(1) << bit;
        want(rules, (struct wanted){ mask, below(rules, 2), 1 + below(rules, 2) });
        if (bit % length != 0)
            want(rules, (struct wanted){ mask | mask >> 1, below(rules, 2), 4 + below(rules, 5) });
    }
}

static void begin(struct rules *rules, uint64_t seed, int64_t work_limit)
{
    begin_empty(rules, seed, work_limit);
    if (seed % 3 == 0)
        want_rows(rules);
    else
        want_any(rules);
    want_turned(rules, 1);
    want_turned(rules, 2);
}

static void end(struct rules *rules)
{
    msl_free_rows(&rules->memory, &rules->plan.met, sizeof(struct msl_met));
    msl_free_rows(&rules->memory, &rules->nesting.rules, sizeof(struct msl_rule));
    msl_free_rows(&rules->memory, &rules->nesting.terms, sizeof(uint32_t));
    msl_free_rows(&rules->memory, &rules->nesting.sum, sizeof(uint32_t));
    msl_free_rows(&rules->memory, &rules->nesting.turnings, sizeof(struct msl_turning));
    msl_free_rows(&rules->memory, &rules->nesting.turned_ends, sizeof(struct msl_turned_end));
    msl_free_rows(&rules->memory, &rules->nesting.turned_bits, sizeof(uint32_t));
    msl_scratch_free(&rules->memory, rules->nesting.table, rules->nesting.places, sizeof(uint32_t));
}

/* ---- held against all ways --------------------------------------------------------------------------------------- */

static int64_t exceptions_with(const struct rules *rules, uint32_t ways)
{
    int64_t exceptions = 0;
    for (uint32_t i = 0; i < rules->met_count; i++)
        if (sum_of(rules->met[i].mask, ways) != rules->met[i].odd)
            exceptions += rules->met[i].count;
    return exceptions;
}

/* What no ways can help: of meetings with the same bits those that want the rarer sum, of those without any those that
 * want an odd one. */
static int64_t unavoidable(const struct rules *rules)
{
    int64_t weight[1 << BITS_MOST][2] = { { 0 } };
    int64_t sum = 0;
    for (uint32_t i = 0; i < rules->met_count; i++)
        weight[rules->met[i].mask][rules->met[i].odd] += rules->met[i].count;
    for (uint32_t mask = 1; mask < UINT32_C(1) << rules->plan.bits; mask++)
        sum += weight[mask][0] < weight[mask][1] ? weight[mask][0] : weight[mask][1];
    return weight[0][1] + sum;
}

static int64_t fewest(const struct rules *rules)
{
    int64_t best = INT64_MAX;
    for (uint32_t ways = 0; ways < UINT32_C(1) << rules->plan.bits; ways++) {
        const int64_t exceptions = exceptions_with(rules, ways);
        best = exceptions < best ? exceptions : best;
    }
    return best;
}

static uint32_t mask_of(const uint8_t *ways, uint32_t bits)
{
    uint32_t mask = 0;
    for (uint32_t bit = 0; bit < bits; bit++)
        mask |= (uint32_t)ways[bit] << bit;
    return mask;
}

/* Just the meetings that do not nest are kept, in their order. */
static void ck_met(const struct rules *rules, uint32_t ways)
{
    const struct msl_met *met = rules->plan.met.rows;
    uint64_t kept = 0;
    for (uint32_t i = 0; i < rules->met_count; i++)
        if (sum_of(rules->met[i].mask, ways) != rules->met[i].odd) {
            ck_assert_uint_lt(kept, rules->plan.met.used);
            ck_assert_uint_eq(met[kept++].node, i);
        }
    ck_assert_uint_eq(kept, rules->plan.met.used);
}

static void ck_turnings(const struct rules *rules, uint32_t ways)
{
    for (uint64_t i = 0; i < rules->nesting.turnings.used; i++) {
        const struct msl_turning *turning = msl_turning_at(&rules->nesting, i);
        int holds = 1;
        for (uint32_t k = turning->first; k < turning->first + turning->count; k++)
            holds = holds && sum_of(rules->turned[k].mask, ways) == rules->turned[k].odd;
        ck_assert_int_eq(turning->holds, holds);
    }
}

static void ck_solved(struct rules *rules, int64_t best)
{
    uint8_t ways[BITS_MOST];
    const struct muslin_pressing_total *totals = &rules->plan.totals;
    const uint32_t in_turn = mask_of(rules->alternating, rules->plan.bits);
    msl_solve_rules(&rules->nesting, rules->alternating);
    ck_ok(rules->check.status);
    for (uint32_t bit = 0; bit < rules->plan.seams; bit++)
        ways[bit] = rules->seams[bit].way;
    ck_assert_int_eq(rules->place_ways[0], 0);
    for (uint32_t place = 1; place < rules->plan.places; place++)
        ways[rules->place_bits[place]] = rules->place_ways[place];
    const uint32_t mask = mask_of(ways, rules->plan.bits);
    ck_assert_int_eq(totals->exceptions, exceptions_with(rules, mask));
    ck_assert_int_eq(totals->alternating, exceptions_with(rules, in_turn));
    ck_assert_int_le(totals->exceptions, totals->alternating);
    ck_assert_int_le(totals->least, best);
    ck_assert_int_ge(totals->work, 0);
    ck_assert(unavoidable(rules) <= totals->least && unavoidable(rules) <= rules->told.bound);
    ck_assert(rules->told.bound <= best && best <= rules->told.best);
    ck_met(rules, mask);
    ck_turnings(rules, mask);
}

/* Sums of bits by chance, each some times: the rule of one is the same again and again, and of no other. */
START_TEST(meetings_of_equal_bits_are_one_rule)
{
    static struct rules rules;
    static uint32_t number[1 << BITS_MOST]; /* of a mask's rule, counted from 1 */
    uint32_t known = 0;
    uint64_t seed = 1;
    memset(number, 0, sizeof number);
    do
        begin_empty(&rules, seed++, 0);
    while (rules.plan.bits < BITS_MOST);
    for (int i = 0; i < 6000; i++) {
        const uint32_t mask = below(&rules, 1 << BITS_MOST);
        const uint32_t rule = rule_of(&rules, mask);
        if (number[mask] == 0)
            number[mask] = ++known;
        ck_assert_uint_eq(rule, number[mask] - 1);
        ck_assert_uint_eq(rules.nesting.rules.used, known);
    }
    end(&rules);
}
END_TEST

/* With work enough the plan is the best of all, and known to be. */
START_TEST(rules_by_chance_are_broken_as_seldom_as_can_be)
{
    static struct rules rules;
    int32_t at_odds = 0;
    for (uint64_t seed = 1; seed <= SYSTEMS; seed++) {
        begin(&rules, seed, 2000000);
        const int64_t best = fewest(&rules);
        ck_solved(&rules, best);
        ck_assert_int_eq(rules.plan.totals.exceptions, best);
        ck_assert_int_eq(rules.plan.totals.least, best);
        at_odds += best > 0;
        end(&rules);
    }
    ck_assert_int_gt(at_odds, SYSTEMS / 2);
}
END_TEST

/* Of three bits each two want to be different: one meeting is broken, one of those that count least. Where nothing
 * hangs together but that, they are broken without any work, and the bound tells their sum. */
START_TEST(sets_that_cannot_hold_together_add_up)
{
    static struct rules rules;
    for (uint64_t seed = 1; seed <= 100; seed++) {
        int64_t sum = 0;
        begin_empty(&rules, seed, seed % 2 * 2000000);
        for (uint32_t bit = 0; bit + 2 < rules.plan.bits; bit += 3) {
            int64_t least = INT64_MAX;
            for (uint32_t i = 0; i < 3; i++) {
                const int64_t count = 1 + below(&rules, 9);
                const uint32_t mask = UINT32_C(1) << (bit + i) | UINT32_C(1) << (bit + (i + 1) % 3);
                want(&rules, (struct wanted){ mask, 1, count });
                least = count < least ? count : least;
            }
            sum += least;
        }
        ck_solved(&rules, sum);
        ck_assert_int_eq(rules.plan.totals.exceptions, sum);
        if (seed % 2 != 0) {
            ck_assert_int_eq(rules.plan.totals.least, sum);
            ck_assert_int_eq(rules.told.bound, sum);
        }
        end(&rules);
    }
}
END_TEST

/* One bit wants to be set, by five meetings; so do others, by five each; and each of these, by four, to be what that
 * one is not. So that one gives way, or all that stand against it. */
START_TEST(one_gives_way_to_many)
{
    static struct rules rules;
    for (uint64_t seed = 1; seed <= 50; seed++) {
        begin_empty(&rules, seed, 2000000);
        want(&rules, (struct wanted){ 1, 1, 5 });
        for (uint32_t bit = 1; bit < rules.plan.bits; bit++) {
            want(&rules, (struct wanted){ UINT32_C(1) << bit, 1, 5 });
            want(&rules, (struct wanted){ 1 | UINT32_C(1) << bit, 1, 4 });
        }
        const int64_t best = rules.plan.bits == 2 ? 4 : 5;
        ck_solved(&rules, best);
        ck_assert_int_eq(rules.plan.totals.exceptions, best);
        ck_assert_int_eq(rules.plan.totals.least, best);
        end(&rules);
    }
}
END_TEST

/* With little the bound holds all the same, and what is found is no worse than all in turn. */
START_TEST(rules_are_solved_soundly_with_little_work)
{
    static struct rules rules;
    for (uint64_t seed = 1; seed <= SYSTEMS / 10; seed++) {
        int64_t work = 1;
        for (int64_t limit = 0; limit < work; limit += 1 + limit / 8) {
            begin(&rules, seed, limit);
            ck_solved(&rules, fewest(&rules));
            work = rules.plan.totals.least == rules.plan.totals.exceptions ? 0 : limit + 10000;
            end(&rules);
        }
    }
}
END_TEST

/* Ended before it began it is as good as all in turn at least. */
START_TEST(rules_are_solved_soundly_when_ended)
{
    static struct rules rules;
    for (uint64_t seed = 1; seed <= SYSTEMS / 4; seed++) {
        begin(&rules, seed, 2000000);
        rules.told.ended = 1;
        ck_solved(&rules, fewest(&rules));
        end(&rules);
    }
}
END_TEST

/* ---- more than can be settled ------------------------------------------------------------------------------------ */

/* Many bits, all of seams, and meetings of up to three of them: too many to settle with little work. */
struct many {
    struct rules rules;
    struct msl_seam_way seams[MANY_BITS];
    uint8_t alternating[MANY_BITS];
    uint32_t bits[MANY_MET + 2][3]; /* of each; one that stands there twice stands there not at all */
    struct wanted met[MANY_MET + 2];
};

static void want_of_many(struct many *many, uint32_t number, uint32_t first, uint32_t last, int64_t count)
{
    struct rules *rules = &many->rules;
    struct msl_met *met = row_in(rules, &rules->plan.met, sizeof *met);
    many->met[number] = (struct wanted){ 0, below(rules, 2), count };
    met->node = number;
    met->odd = many->met[number].odd;
    rules->nesting.sum.used = 0;
    for (int i = 0; i < 3; i++) {
        many->bits[number][i] = first + below(rules, last - first + 1);
        msl_add_to_sum(&rules->nesting, many->bits[number][i]);
    }
    met->rule = msl_rule_of_sum(&rules->nesting);
    ((struct msl_rule *)rules->nesting.rules.rows)[met->rule].weight[met->odd] += many->met[number].count;
}

static int64_t exceptions_of_many(const struct many *many)
{
    int64_t exceptions = 0;
    for (uint32_t i = 0; i < MANY_MET + 2; i++) {
        uint32_t odd = 0;
        for (int k = 0; k < 3; k++)
            odd ^= many->seams[many->bits[i][k]].way;
        exceptions += odd != many->met[i].odd ? many->met[i].count : 0;
    }
    return exceptions;
}

/* Where rules were left unsettled no seam pressed the other way would spare an exception, the first and the last, which
 * have one light rule each that comes after all others, no more than they. */
START_TEST(no_seam_alone_would_spare_an_exception)
{
    static struct many many;
    struct rules *rules = &many.rules;
    for (uint64_t seed = 1; seed <= 20; seed++) {
        begin_empty(rules, seed, 20000);
        rules->plan.bits = rules->plan.seams = MANY_BITS;
        rules->plan.places = 0;
        rules->plan.seam = many.seams;
        memset(many.seams, 0, sizeof many.seams);
        for (uint32_t bit = 0; bit < MANY_BITS; bit++)
            many.alternating[bit] = (uint8_t)below(rules, 2);
        for (uint32_t i = 0; i < MANY_MET; i++)
            want_of_many(&many, i, 1, MANY_BITS - 2, 2 + below(rules, 2));
        want_of_many(&many, MANY_MET, 0, 0, 1);
        want_of_many(&many, MANY_MET + 1, MANY_BITS - 1, MANY_BITS - 1, 1);
        msl_solve_rules(&rules->nesting, many.alternating);
        ck_ok(rules->check.status);
        const int64_t exceptions = exceptions_of_many(&many);
        ck_assert_int_eq(rules->plan.totals.exceptions, exceptions);
        for (uint32_t bit = 0; bit < MANY_BITS; bit++) {
            many.seams[bit].way ^= 1;
            ck_assert_int_ge(exceptions_of_many(&many), exceptions);
            many.seams[bit].way ^= 1;
        }
        end(rules);
    }
}
END_TEST

/* ---- the heap ---------------------------------------------------------------------------------------------------- */

/* Numbers come and go by chance, some of them equal; the least goes first, by looking at all. */
START_TEST(the_least_number_leaves_the_heap_first)
{
    uint32_t numbers[50];
    uint32_t counts[30] = { 0 };
    static struct rules rules;
    struct msl_heap heap = { numbers, 0 };
    rules.random = 9;
    for (int32_t step = 0; step < 20000; step++) {
        if (heap.used < 50 && (heap.used == 0 || below(&rules, 49) >= heap.used)) {
            const uint32_t number = below(&rules, 30);
            counts[number]++;
            msl_heap_push(&heap, number);
        } else {
            uint32_t least = 0;
            while (counts[least] == 0)
                least++;
            counts[least]--;
            ck_assert_uint_eq(msl_heap_pop(&heap), least);
        }
    }
}
END_TEST

Suite *pressing_solve_suite(void);
Suite *pressing_solve_suite(void)
{
    Suite *suite = suite_create("pressing_solve");
    TCase *rules = tcase_create("rules");
    tcase_set_timeout(rules, 60);
    tcase_add_test(rules, meetings_of_equal_bits_are_one_rule);
    tcase_add_test(rules, rules_by_chance_are_broken_as_seldom_as_can_be);
    tcase_add_test(rules, sets_that_cannot_hold_together_add_up);
    tcase_add_test(rules, one_gives_way_to_many);
    tcase_add_test(rules, rules_are_solved_soundly_with_little_work);
    tcase_add_test(rules, rules_are_solved_soundly_when_ended);
    tcase_add_test(rules, no_seam_alone_would_spare_an_exception);
    tcase_add_test(rules, the_least_number_leaves_the_heap_first);
    suite_add_tcase(suite, rules);
    return suite;
}
