/* test_scatter_search.c - what a search for scattered prints keeps, counted anew wherever it ends.
 *
 * SPDX-License-Identifier: MIT */
#include "scatter_inside.h"
#include "test_scatter.h"

enum { COLUMNS = 5, ROWS = 4, PLACES = COLUMNS * ROWS, KINDS = 4, PAIRS = 60, NOTHING = -1 };

/* Two places that touch, `second` beside an edge of `first`. */
struct pair {
    uint32_t first;
    uint32_t second;
    uint32_t weight;
    uint32_t edge;
};

struct scattering {
    struct msl_scatter s;
    struct msl_scatter_room room;
    struct msl_check check;
    struct muslin_allocator memory;
    struct pair pairs[PAIRS];
    uint32_t pair_count;
    int32_t edges[4 * KINDS];
    uint8_t turn_step[KINDS];
    int64_t stock[KINDS];
    int64_t given[PLACES];
};

static uint32_t below(uint64_t *random, uint32_t n)
{
    *random = *random * UINT64_C(6364136223846793005) + UINT64_C(1442695040888963407);
    return (uint32_t)(*random >> 33) % n;
}

static void pair_up(struct scattering *of, uint32_t first, uint32_t second, uint32_t weight, uint32_t edge)
{
    ck_assert_uint_lt(of->pair_count, PAIRS);
    of->pairs[of->pair_count++] = (struct pair){ first, second, weight, edge };
}

static void begin(struct scattering *of, int64_t work_limit)
{
    memset(of, 0, sizeof *of);
    of->memory = usual_memory();
    of->check = msl_check_start(NULL);
    of->room = (struct msl_scatter_room){ .check = &of->check, .allocator = &of->memory };
    of->s = (struct msl_scatter){ .places = PLACES, .kinds = KINDS, .stock = of->stock, .chance = 3,
                                  .work_limit = work_limit, .told = msl_told_by(NULL, NULL) };
}

/* Any places touch, and some are given. */
static void draw_prints(struct scattering *of, uint64_t *random)
{
    for (int32_t i = 0; i < PAIRS; i++) {
        const uint32_t first = below(random, PLACES);
        const uint32_t second = below(random, PLACES);
        if (first != second)
            pair_up(of, first, second, 1 + below(random, 3), 0);
    }
    for (uint32_t kind = 0; kind < KINDS; kind++)
        of->stock[kind] = PLACES / KINDS + below(random, 3);
    of->s.given = of->given;
    for (uint32_t place = 0; place < PLACES; place++)
        of->given[place] = below(random, 6) == 0 && place < KINDS ? (int64_t)place : NOTHING;
}

/* The same of two prints mostly, so that many places touch an equal, and it is not known how many must. */
static void draw_two_prints(struct scattering *of, uint64_t *random)
{
    draw_prints(of, random);
    of->stock[0] = PLACES / 2;
    of->stock[1] = PLACES / 2 - 1;
    of->stock[2] = 2;
    of->stock[3] = 1;
}

/* A grid of blocks, of which some may be turned; those of kind 3 show nothing on two sides. */
static void draw_blocks(struct scattering *of, uint64_t *random)
{
    static const uint8_t steps[] = { 1, 2, 4 };
    for (uint32_t place = 0; place < PLACES; place++) {
        if ((place + 1) % COLUMNS != 0)
            pair_up(of, place, place + 1, 1, 1);
        if (place + COLUMNS < PLACES)
            pair_up(of, place, place + COLUMNS, 1, 2);
    }
    of->s.edges = of->edges;
    of->s.turn_step = of->turn_step;
    for (uint32_t kind = 0; kind < KINDS; kind++) {
        of->stock[kind] = PLACES / KINDS + below(random, 3);
        of->turn_step[kind] = steps[below(random, 3)];
        for (uint32_t edge = 0; edge < 4; edge++)
            of->edges[4 * kind + edge] = kind == 3 && edge % 2 == 0 ? NOTHING : (int32_t)below(random, 2);
    }
}

static void put_places(struct scattering *of)
{
    msl_scatter_start(&of->s, &of->room);
    for (uint32_t i = 0; i < of->pair_count; i++)
        msl_scatter_count(&of->s, of->pairs[i].first, of->pairs[i].second);
    msl_scatter_counted(&of->s, &of->room);
    ck_ok(of->check.status);
    for (uint32_t i = 0; i < of->pair_count; i++)
        msl_scatter_put(&of->s, of->pairs[i].first, of->pairs[i].second, of->pairs[i].weight, of->pairs[i].edge);
}

static void search(struct scattering *of)
{
    put_places(of);
    of->s.least = of->s.edges == NULL ? msl_scatter_least(&of->s) : 0;
    msl_scatter_search(&of->s);
}

/* ---- counted anew ------------------------------------------------------------------------------------------------ */

/* What shows at an edge of a block turned clockwise: what was so many edges before it. */
static int32_t shown(const struct scattering *of, int32_t one, uint32_t edge)
{
    return of->edges[4 * (one / 4) + (int32_t)(edge + 4 - (uint32_t)one % 4) % 4];
}

static int are_equal(const struct scattering *of, const struct pair *pair, const int32_t *laid)
{
    const int32_t first = laid[pair->first];
    const int32_t second = laid[pair->second];
    if (of->s.edges == NULL)
        return first / 4 == second / 4;
    const int32_t print = shown(of, first, pair->edge);
    return print != NOTHING && print == shown(of, second, (pair->edge + 2) % 4);
}

static int64_t weight_with(const struct scattering *of, const int32_t *laid)
{
    int64_t weight = 0;
    for (uint32_t i = 0; i < of->pair_count; i++)
        if (are_equal(of, &of->pairs[i], laid))
            weight += of->pairs[i].weight;
    return weight;
}

/* Every place has what it is given, turned as it may be, and no more of a kind lie than there are. `left` gets what
 * does not. */
static void ck_laid(const struct scattering *of, const int32_t *laid, int64_t *left)
{
    for (uint32_t kind = 0; kind < KINDS; kind++)
        left[kind] = of->stock[kind];
    for (uint32_t place = 0; place < PLACES; place++) {
        const int32_t kind = laid[place] / 4;
        ck_assert(laid[place] >= 0 && kind < KINDS);
        ck_assert(of->s.given == NULL || of->given[place] == NOTHING || of->given[place] == kind);
        ck_assert_int_eq(laid[place] % 4 % (of->s.edges == NULL ? 4 : of->turn_step[kind]), 0);
        ck_assert_int_ge(--left[kind], 0);
    }
}

/* Each loose place that touches an equal is among the troubled ones, once. */
static void ck_troubled(const struct scattering *of)
{
    const struct msl_scatter *s = &of->s;
    for (uint32_t i = 0; i < s->n_troubled; i++)
        ck_assert(s->trouble_of[s->troubled[i]] == i && !msl_scatter_is_given(s, s->troubled[i]));
    for (uint32_t i = 0; i < of->pair_count; i++) {
        if (!are_equal(of, &of->pairs[i], s->laid))
            continue;
        for (int end = 0; end < 2; end++) {
            const uint32_t place = end == 0 ? of->pairs[i].first : of->pairs[i].second;
            ck_assert(msl_scatter_is_given(s, place) || s->trouble_of[place] < s->n_troubled);
        }
    }
}

/* What lies in the end; where the work was up while places were filled, not all has something. */
static void ck_lies(const struct scattering *of)
{
    int64_t left[KINDS];
    for (uint32_t place = 0; place < PLACES; place++)
        if (of->s.laid[place] < 0)
            return;
    ck_laid(of, of->s.laid, left);
    for (uint32_t kind = 0; kind < KINDS; kind++)
        ck_assert_int_eq(of->s.left[kind], left[kind]);
    ck_assert_int_eq(of->s.weight, weight_with(of, of->s.laid));
    ck_assert_int_le(of->s.best_weight, of->s.weight);
    ck_troubled(of);
}

static void ck_found(const struct scattering *of)
{
    struct muslin_scattered result = { 0 };
    int64_t left[KINDS];
    ck_laid(of, of->s.best, left);
    ck_assert_int_eq(of->s.best_weight, weight_with(of, of->s.best));
    ck_assert_int_le(of->s.least, of->s.best_weight);
    msl_scatter_result((struct msl_scatter *)&of->s, &result);
    ck_assert_int_eq(result.touching, of->s.best_weight);
    ck_lies(of);
}

/* ---- one place after the other ----------------------------------------------------------------------------------- */

/* The weight of what lies round a place: of all of it, or of what would be equal to `one`. */
static int64_t weight_round(const struct scattering *of, const int32_t *laid, uint32_t place, int32_t one)
{
    int32_t with[PLACES];
    int64_t weight = 0;
    memcpy(with, laid, sizeof with);
    with[place] = one;
    for (uint32_t i = 0; i < of->pair_count; i++) {
        const struct pair *pair = &of->pairs[i];
        const uint32_t other = pair->first == place ? pair->second : pair->first;
        if ((pair->first == place || pair->second == place) && laid[other] != NOTHING)
            weight += one == NOTHING || are_equal(of, pair, with) ? pair->weight : 0;
    }
    return weight;
}

/* The least that a kind weighs in a place, turned as it may be. */
static int64_t least_of_kind(const struct scattering *of, const int32_t *laid, uint32_t place, uint32_t kind)
{
    int64_t least = INT64_MAX;
    for (int32_t turn = 0; turn < 4; turn += of->s.edges == NULL ? 4 : of->turn_step[kind])
        least = msl_lesser(least, weight_round(of, laid, place, (int32_t)(4 * kind) + turn));
    return least;
}

/* Whether a kind comes before another: the more are left, or the larger a share of it. */
static int is_sooner(const struct scattering *of, const int64_t *left, uint32_t kind, uint32_t other,
                     enum msl_scatter_way way)
{
    const int64_t of_kind = way == MSL_SCATTER_EVENLY ? msl_lesser(of->stock[kind], PLACES) : 1;
    const int64_t of_other = way == MSL_SCATTER_EVENLY ? msl_lesser(of->stock[other], PLACES) : 1;
    return left[kind] * of_other > left[other] * of_kind;
}

/* What was laid last had the most round it of all places that were free; of all kinds that weigh the least there none
 * comes before it. */
static void ck_laid_last(const struct scattering *of, const int32_t *before, uint32_t place, const int64_t *left,
                         enum msl_scatter_way way)
{
    const int32_t one = of->s.laid[place];
    const uint32_t kind = (uint32_t)one / 4;
    const int64_t weight = weight_round(of, before, place, one);
    ck_assert_int_gt(left[kind], 0);
    for (uint32_t other = 0; other < PLACES; other++)
        ck_assert(before[other] != NOTHING ||
                  weight_round(of, before, other, NOTHING) <= weight_round(of, before, place, NOTHING));
    for (uint32_t other = 0; other < KINDS; other++) {
        const int64_t least = left[other] > 0 ? least_of_kind(of, before, place, other) : INT64_MAX;
        ck_assert_int_le(weight, least);
        ck_assert(least > weight || !is_sooner(of, left, other, kind, way));
    }
}

/* With a step more each time, so that a place more lies in the end, or none. */
static void ck_fills(struct scattering *of, enum msl_scatter_way way)
{
    const uint64_t chance = of->s.chance;
    int32_t before[PLACES];
    int is_full = 0;
    put_places(of);
    msl_scatter_clear(&of->s);
    memcpy(before, of->s.laid, sizeof before);
    for (of->s.work_limit = 0; !is_full; of->s.work_limit++) {
        int64_t left[KINDS];
        uint32_t more = 0;
        of->s.chance = chance;
        of->s.work = 0;
        is_full = msl_scatter_fill(&of->s, way);
        for (uint32_t kind = 0; kind < KINDS; kind++)
            left[kind] = msl_lesser(of->stock[kind], PLACES);
        for (uint32_t place = 0; place < PLACES; place++)
            if (before[place] != NOTHING)
                left[before[place] / 4]--;
        for (uint32_t place = 0; place < PLACES; place++) {
            if (before[place] == of->s.laid[place])
                continue;
            ck_assert(before[place] == NOTHING && ++more == 1);
            ck_laid_last(of, before, place, left, way);
            left[of->s.laid[place] / 4]--;
        }
        for (uint32_t kind = 0; kind < KINDS; kind++)
            ck_assert_int_eq(of->s.left[kind], left[kind]);
        memcpy(before, of->s.laid, sizeof before);
    }
    for (uint32_t place = 0; place < PLACES; place++)
        ck_assert_int_ne(before[place], NOTHING);
}

/* ---- tests ------------------------------------------------------------------------------------------------------- */

static void ck_searches(void (*drawn)(struct scattering *of, uint64_t *random), uint64_t seeds, int64_t most)
{
    static struct scattering of;
    for (uint64_t seed = 1; seed <= seeds; seed++) {
        int64_t before = INT64_MAX;
        for (int64_t limit = 0; limit < most; limit += 1 + limit / 6) {
            uint64_t random = seed;
            begin(&of, limit);
            drawn(&of, &random);
            search(&of);
            ck_found(&of);
            ck_assert_int_le(of.s.best_weight, before);
            before = of.s.best_weight;
            msl_scatter_give_back(&of.room);
        }
    }
}

START_TEST(prints_are_as_the_search_says_wherever_it_ends)
{
    ck_searches(draw_prints, 12, 60000);
}
END_TEST

START_TEST(blocks_are_as_the_search_says_wherever_it_ends)
{
    ck_searches(draw_blocks, 12, 60000);
}
END_TEST

/* It begins anew many times. */
START_TEST(a_long_search_is_as_it_says_wherever_it_ends)
{
    ck_searches(draw_two_prints, 2, 400000);
}
END_TEST

/* As long as nothing has been tried in vain for long, no more than an exchange of two is made at a time, and none that
 * makes it worse. */
static void ck_exchanges(void (*drawn)(struct scattering *of, uint64_t *random))
{
    static struct scattering of;
    for (uint64_t seed = 1; seed <= 4; seed++) {
        int32_t before[PLACES];
        int64_t weight = INT64_MAX;
        int64_t work = 0;
        for (int64_t limit = 0; limit < 600; limit++) {
            uint64_t random = seed;
            uint32_t others = 0;
            begin(&of, limit);
            drawn(&of, &random);
            search(&of);
            ck_found(&of);
            for (uint32_t place = 0; place < PLACES; place++)
                others += limit > 0 && of.s.laid[place] != before[place];
            ck_assert_int_ge(of.s.work, work);
            work = of.s.work;
            ck_assert_uint_le(others, 2);
            ck_assert_int_le(of.s.weight, weight);
            ck_assert(limit == 0 || others > 0 || of.s.weight == weight);
            weight = of.s.weight;
            memcpy(before, of.s.laid, sizeof before);
            msl_scatter_give_back(&of.room);
        }
    }
}

START_TEST(the_search_makes_one_exchange_after_the_other)
{
    ck_exchanges(draw_prints);
    ck_exchanges(draw_blocks);
}
END_TEST

START_TEST(places_with_most_around_them_are_laid_first)
{
    static struct scattering of;
    void (*const drawn[])(struct scattering *, uint64_t *) = { draw_prints, draw_blocks };
    for (uint64_t seed = 1; seed <= 4; seed++)
        for (size_t i = 0; i < 4; i++) {
            uint64_t random = seed;
            begin(&of, 0);
            drawn[i % 2](&of, &random);
            of.stock[seed % KINDS] *= seed % 2 == 0 ? MUSLIN_COUNT_MAX / PLACES : 1;
            ck_fills(&of, i < 2 ? MSL_SCATTER_EVENLY : MSL_SCATTER_MOST);
            msl_scatter_give_back(&of.room);
        }
}
END_TEST

/* Of prints that all differ the first in line touches no equal: at each place its touches are looked at when that is
 * tried, when it is laid, and when what lies round others is counted; the first two take a step for the place as well.
 */
START_TEST(a_step_looks_at_a_touch)
{
    static struct scattering of;
    static int64_t prints[PLACES];
    for (uint32_t place = 0; place < PLACES; place++)
        prints[place] = 1;
    for (uint64_t seed = 1; seed <= 10; seed++) {
        uint64_t random = seed;
        begin(&of, INT64_MAX);
        draw_prints(&of, &random);
        of.s.given = NULL;
        of.s.kinds = PLACES;
        of.s.stock = prints;
        put_places(&of);
        ck_assert(msl_scatter_fill(&of.s, MSL_SCATTER_MOST));
        ck_assert_int_eq(of.s.work, 3 * 2 * (int64_t)of.pair_count + 2 * PLACES);
        msl_scatter_give_back(&of.room);
    }
}
END_TEST

void add_scatter_search(Suite *suite)
{
    TCase *search = tcase_create("search");
    tcase_set_timeout(search, 60);
    tcase_add_test(search, prints_are_as_the_search_says_wherever_it_ends);
    tcase_add_test(search, places_with_most_around_them_are_laid_first);
    tcase_add_test(search, a_step_looks_at_a_touch);
    tcase_add_test(search, a_long_search_is_as_it_says_wherever_it_ends);
    tcase_add_test(search, the_search_makes_one_exchange_after_the_other);
    tcase_add_test(search, blocks_are_as_the_search_says_wherever_it_ends);
    suite_add_tcase(suite, search);
}
