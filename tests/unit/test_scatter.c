/* test_scatter.c - prints scattered over places, against every arrangement of few and against what is known of many.
 *
 * SPDX-License-Identifier: MIT */
#include "scatter_inside.h"
#include "test_scatter.h"

enum { SIDE = 40, MANY = SIDE * SIDE, MANY_TOUCHES = 2 * MANY };

/* ---- grids and rings --------------------------------------------------------------------------------------------- */

struct layout {
    int64_t places;
    size_t n;
    struct muslin_touch_spec touches[MANY_TOUCHES];
    int64_t out[MANY];
    struct muslin_scattered result;
};

static void touch(struct layout *l, int64_t first, int64_t second)
{
    struct muslin_touch_spec row = MUSLIN_TOUCH_SPEC_INIT;
    row.first = first;
    row.second = second;
    ck_assert_uint_lt(l->n, MANY_TOUCHES);
    l->touches[l->n++] = row;
}

static void lay_grid(struct layout *l, int64_t columns, int64_t rows)
{
    memset(l, 0, sizeof *l);
    l->places = columns * rows;
    for (int64_t place = 0; place < l->places; place++) {
        if ((place + 1) % columns != 0)
            touch(l, place, place + 1);
        if (place + columns < l->places)
            touch(l, place + columns, place);
    }
}

static void lay_ring(struct layout *l, int64_t places)
{
    memset(l, 0, sizeof *l);
    l->places = places;
    for (int64_t place = 0; place < places; place++)
        touch(l, place, (place + 1) % places);
}

static muslin_status scatter_with(struct layout *l, const int64_t *prints, size_t kinds, const int64_t *given,
                                  int64_t seed, int64_t work_limit)
{
    struct muslin_scatter_spec spec = MUSLIN_SCATTER_SPEC_INIT;
    struct muslin_allocator memory = usual_memory();
    spec.places = l->places;
    spec.seed = seed;
    spec.work_limit = work_limit;
    l->result.size = (uint32_t)sizeof l->result;
    return muslin_scatter_prints(&spec, prints, kinds, l->touches, sizeof l->touches[0], l->n, given, &memory, NULL,
                                 NULL, l->out, &l->result, NULL);
}

/* The answer keeps to the prints there are, and says rightly what touches. */
static void ck_answer(const struct layout *l, const int64_t *prints, size_t kinds, const int64_t *given)
{
    int64_t used[SIDE] = { 0 };
    int64_t touching = 0;
    int64_t pairs = 0;
    for (int64_t place = 0; place < l->places; place++) {
        ck_assert(l->out[place] >= 0 && l->out[place] < (int64_t)kinds);
        ck_assert(given == NULL || given[place] < 0 || given[place] == l->out[place]);
        used[l->out[place]]++;
    }
    for (size_t i = 0; i < kinds; i++)
        ck_assert_int_le(used[i], prints[i]);
    for (size_t i = 0; i < l->n; i++)
        if (l->out[l->touches[i].first] == l->out[l->touches[i].second]) {
            touching += l->touches[i].weight;
            pairs++;
        }
    ck_assert_int_eq(l->result.touching, touching);
    ck_assert_int_eq(l->result.pairs, pairs);
    ck_assert_int_le(l->result.least, touching);
    ck_assert_int_eq(l->result.proven, l->result.least == touching);
}

/* With each of some seeds. */
static void ck_touching(struct layout *l, const int64_t *prints, size_t kinds, const int64_t *given, int64_t touching)
{
    for (int64_t seed = 1; seed <= 5; seed++) {
        ck_ok(scatter_with(l, prints, kinds, given, seed, 200000));
        ck_answer(l, prints, kinds, given);
        ck_assert_int_eq(l->result.touching, touching);
    }
}

START_TEST(five_and_four_blocks_make_a_chessboard)
{
    /* Example: 9 blocks of two prints, 5 and 4 of them, in 3 x 3: none touch. */
    static struct layout l;
    const int64_t prints[] = { 5, 4 };
    lay_grid(&l, 3, 3);
    ck_touching(&l, prints, 2, NULL, 0);
    ck_assert_int_eq(l.result.proven, 1);
    for (int64_t place = 0; place < 9; place++)
        ck_assert_int_eq(l.out[place], place % 2);
}
END_TEST

START_TEST(chessboards_come_out_whichever_print_there_is_more_of)
{
    static struct layout l;
    for (int64_t side = 2; side <= 12; side++) {
        const int64_t more[] = { (side * side + 1) / 2, side * side / 2 };
        const int64_t fewer[] = { side * side / 2, (side * side + 1) / 2 };
        lay_grid(&l, side, side);
        ck_touching(&l, more, 2, NULL, 0);
        ck_touching(&l, fewer, 2, NULL, 0);
    }
}
END_TEST

START_TEST(a_ring_of_an_odd_number_cannot_take_turns)
{
    static struct layout l;
    for (int64_t places = 3; places <= 41; places += 2) {
        const int64_t prints[] = { (places + 1) / 2, (places + 1) / 2 };
        lay_ring(&l, places);
        ck_touching(&l, prints, 2, NULL, 1);
        ck_assert_int_eq(l.result.proven, 1);
    }
}
END_TEST

START_TEST(six_prints_in_equal_parts_never_touch)
{
    static struct layout l;
    const int64_t prints[] = { 17, 17, 17, 17, 16, 16 };
    lay_grid(&l, 10, 10);
    ck_touching(&l, prints, 6, NULL, 0);
}
END_TEST

/* Queens on a board of five by five, of five colours, so that no two of one colour see each other: in row r and column
 * c the colour r + 2 c, over five, is one of such ways. None is to spare; known as the DIMACS graph queen5_5. */
static void lay_queens(struct layout *l, int64_t side)
{
    memset(l, 0, sizeof *l);
    l->places = side * side;
    for (int64_t one = 0; one < l->places; one++)
        for (int64_t other = one + 1; other < l->places; other++) {
            const int64_t across = other % side - one % side;
            const int64_t down = other / side - one / side;
            if (across == 0 || down == 0 || across == down || across == -down)
                touch(l, one, other);
        }
}

START_TEST(queens_of_five_colours_do_not_see_their_own)
{
    static struct layout l;
    const int64_t prints[] = { 5, 5, 5, 5, 5 };
    const int64_t initial = ((struct muslin_scatter_spec)MUSLIN_SCATTER_SPEC_INIT).work_limit;
    lay_queens(&l, 5);
    for (int64_t seed = 1; seed <= 20; seed++) {
        ck_ok(scatter_with(&l, prints, 5, NULL, seed, initial));
        ck_answer(&l, prints, 5, NULL);
        ck_assert_int_eq(l.result.touching, 0);
    }
}
END_TEST

/* Latin squares: on ten by ten places of ten prints, ten of each, none twice in a row or column; there are many. */
START_TEST(ten_prints_make_a_latin_square)
{
    enum { TEN = 10 };
    static struct layout l;
    const int64_t prints[TEN] = { 10, 10, 10, 10, 10, 10, 10, 10, 10, 10 };
    const int64_t initial = ((struct muslin_scatter_spec)MUSLIN_SCATTER_SPEC_INIT).work_limit;
    memset(&l, 0, sizeof l);
    l.places = TEN * TEN;
    for (int64_t line = 0; line < TEN; line++)
        for (int64_t one = 0; one < TEN; one++)
            for (int64_t other = one + 1; other < TEN; other++) {
                touch(&l, line * TEN + one, line * TEN + other);
                touch(&l, one * TEN + line, other * TEN + line);
            }
    for (int64_t seed = 1; seed <= 10; seed++) {
        ck_ok(scatter_with(&l, prints, TEN, NULL, seed, initial));
        ck_answer(&l, prints, TEN, NULL);
        ck_assert_int_eq(l.result.touching, 0);
    }
}
END_TEST

/* Mycielski 1955: of a graph that needs k colours one without more triangles that needs k + 1. To every place a twin
 * is added that touches what the place touches, and one place more that touches all twins. */
static void lay_mycielski(struct layout *l, int steps)
{
    memset(l, 0, sizeof *l);
    l->places = 2;
    touch(l, 0, 1); /* needs two */
    for (int step = 0; step < steps; step++) {
        const size_t n = l->n;
        for (size_t i = 0; i < n; i++) {
            touch(l, l->touches[i].first, l->touches[i].second + l->places);
            touch(l, l->touches[i].first + l->places, l->touches[i].second);
        }
        for (int64_t place = 0; place < l->places; place++)
            touch(l, place + l->places, 2 * l->places);
        l->places = 2 * l->places + 1;
    }
}

START_TEST(one_colour_less_than_a_graph_needs_leaves_a_touch)
{
    static struct layout l;
    const int64_t initial = ((struct muslin_scatter_spec)MUSLIN_SCATTER_SPEC_INIT).work_limit;
    for (int steps = 1; steps <= 4; steps++)
        for (int64_t seed = 1; seed <= 5; seed++) {
            const int64_t prints[] = { 95, 95, 95, 95, 95, 95 };
            const size_t needed = (size_t)steps + 2;
            lay_mycielski(&l, steps);
            ck_ok(scatter_with(&l, prints, needed, NULL, seed, initial));
            ck_answer(&l, prints, needed, NULL);
            ck_assert_int_eq(l.result.touching, 0);
            ck_ok(scatter_with(&l, prints, needed - 1, NULL, seed, 20000));
            ck_answer(&l, prints, needed - 1, NULL);
            ck_assert_int_ge(l.result.touching, 1);
        }
}
END_TEST

START_TEST(a_background_on_every_second_place_leaves_the_others_to_the_prints)
{
    static struct layout l;
    const int64_t prints[] = { 800, 200, 200, 200, 200 };
    lay_grid(&l, SIDE, SIDE);
    ck_touching(&l, prints, 5, NULL, 0);
}
END_TEST

/* A print that has half of all places, and lies spread: about half of it in the upper half. */
START_TEST(prints_spread_over_the_whole_top)
{
    static struct layout l;
    const int64_t prints[] = { 400, 240, 240, 240, 240, 240 };
    lay_grid(&l, SIDE, SIDE);
    ck_touching(&l, prints, 6, NULL, 0);
    int64_t above[6] = { 0 };
    for (int64_t place = 0; place < l.places / 2; place++)
        above[l.out[place]]++;
    for (size_t i = 0; i < 6; i++)
        ck_assert(above[i] * 10 > prints[i] * 4 && above[i] * 10 < prints[i] * 6);
}
END_TEST

START_TEST(one_print_touches_itself_everywhere)
{
    static struct layout l;
    const int64_t prints[] = { 100, 0 };
    lay_grid(&l, 5, 4);
    ck_touching(&l, prints, 2, NULL, 31);
    ck_assert_int_eq(l.result.proven, 1);
    ck_assert_int_eq(l.result.work, 0);
}
END_TEST

START_TEST(places_without_touches_need_no_search)
{
    static struct layout l;
    const int64_t prints[] = { 3, 1 };
    lay_grid(&l, 1, 1);
    ck_touching(&l, prints, 2, NULL, 0);
    l.places = 4;
    ck_touching(&l, prints, 2, NULL, 0);
    ck_assert_int_eq(l.result.work, 0);
}
END_TEST

/* ---- lower bounds by hand ---------------------------------------------------------------------------------------- */

static void lay_clique(struct layout *l, int64_t places)
{
    memset(l, 0, sizeof *l);
    l->places = places;
    for (int64_t a = 0; a < places; a++)
        for (int64_t b = a + 1; b < places; b++)
            touch(l, a, b);
}

/* n places that all touch, in k prints: as even as can be. 7 in 3: 3 + 2 + 2 gives 3 + 1 + 1 pairs. */
START_TEST(places_that_all_touch_have_equal_pairs_when_prints_are_few)
{
    static struct layout l;
    const int64_t prints[] = { 7, 7, 7 };
    lay_clique(&l, 7);
    ck_touching(&l, prints, 3, NULL, 5);
    ck_assert_int_eq(l.result.proven, 1);
    for (size_t i = 0; i < l.n; i++)
        l.touches[i].weight = 4;
    ck_touching(&l, prints, 3, NULL, 20);
    ck_assert_int_eq(l.result.proven, 1);
}
END_TEST

/* Three of four places in a row have one print: two of them are neighbours. */
START_TEST(more_of_a_print_than_may_lie_apart_touch)
{
    static struct layout l;
    const int64_t prints[] = { 3, 1, 0 };
    const int64_t spare[] = { 4, 1, 0 };
    lay_grid(&l, 4, 1);
    ck_touching(&l, prints, 3, NULL, 1);
    ck_assert_int_eq(l.result.proven, 1);
    ck_touching(&l, spare, 3, NULL, 1);
    ck_assert_int_eq(l.result.proven, 1);
}
END_TEST

/* 7 of 12 blocks: one of them leaves the chessboard of six, and touches two at least, in a corner. */
START_TEST(a_print_with_too_many_blocks_touches_across_and_down)
{
    static struct layout l;
    const int64_t prints[] = { 7, 5 };
    lay_grid(&l, 3, 4);
    ck_touching(&l, prints, 2, NULL, 2);
    ck_assert_int_eq(l.result.proven, 1);
}
END_TEST

/* Three prints in four places that all touch are equal once at least, in each of two fours, whose touches weigh 1 and
 * 5, whichever comes first. */
START_TEST(each_group_of_places_counts_with_its_own_weight)
{
    static struct layout l;
    const int64_t prints[] = { 3, 3, 2 };
    for (int64_t heavy = 0; heavy < 2; heavy++) {
        memset(&l, 0, sizeof l);
        l.places = 8;
        for (int64_t one = 0; one < 8; one++)
            for (int64_t other = one + 1; other < one / 4 * 4 + 4; other++) {
                touch(&l, one, other);
                l.touches[l.n - 1].weight = one / 4 == heavy ? 5 : 1;
            }
        ck_touching(&l, prints, 3, NULL, 6);
        ck_assert_int_eq(l.result.proven, 1);
    }
}
END_TEST

/* Ten places that touch ten others each, twelve of one print: with i of them on one side i (12 - i) + (10 - i) (i - 2)
 * pairs are equal, at least 20. Pairs of places that touch can be parted ten times, two too many each. */
START_TEST(places_are_not_parted_without_end)
{
    static struct layout l;
    const int64_t prints[] = { 12, 8 };
    memset(&l, 0, sizeof l);
    l.places = 20;
    for (int64_t place = 0; place < 100; place++)
        touch(&l, place / 10, 10 + place % 10);
    ck_touching(&l, prints, 2, NULL, 20);
    ck_assert_int_ge(l.result.least, 8);
    ck_assert_int_le(l.result.least, 20);
}
END_TEST

/* In a ring of three the lightest touch is the one to give up; a pair named twice counts twice. */
START_TEST(the_lightest_touch_of_a_ring_is_given_up)
{
    static struct layout l;
    const int64_t prints[] = { 2, 2 };
    lay_ring(&l, 3);
    l.touches[0].weight = 7;
    l.touches[1].weight = 5;
    l.touches[2].weight = 1048576;
    ck_touching(&l, prints, 2, NULL, 5);
    ck_assert_int_eq(l.result.pairs, 1);
    ck_assert_int_eq(l.result.proven, 1);
    touch(&l, 2, 1);
    ck_touching(&l, prints, 2, NULL, 6);
    ck_assert_int_eq(l.result.pairs, 2);
}
END_TEST

/* Two long arms from place 0, joined near it, as a ring of five, and, many times over, at their ends. Both rings are
 * odd and share what lies at place 0, so one touch is enough for both. The bound finds the first ring and need not find
 * the others. */
START_TEST(rings_that_share_a_touch_count_once)
{
    static struct layout l;
    const int64_t arm = 600;
    const int64_t prints[] = { arm + 1, arm + 1 };
    memset(&l, 0, sizeof l);
    l.places = 2 * arm + 1;
    for (int64_t place = 1; place < l.places; place++)
        touch(&l, place < 3 ? 0 : place - 2, place);
    touch(&l, 3, 4);
    for (int32_t i = 0; i < 400; i++)
        touch(&l, l.places - 2, l.places - 1);
    ck_ok(scatter_with(&l, prints, 2, NULL, 1, 2000000));
    ck_answer(&l, prints, 2, NULL);
    ck_assert_int_eq(l.result.least, 1);
}
END_TEST

/* ---- what is given ----------------------------------------------------------------------------------------------- */

START_TEST(given_places_keep_their_print_and_count)
{
    static struct layout l;
    const int64_t prints[] = { 5, 4 };
    const int64_t other_phase[] = { 1, -1, -1, -1, -1, -1, -1, -1, -1 };
    const int64_t side_by_side[] = { 0, 0, -1, -1, -1, -1, -1, -1, -1 };
    const int64_t all[] = { 0, 0, 0, 0, 0, 1, 1, 1, 1 };
    lay_grid(&l, 3, 3);
    /* By trying all 126 layouts of 5 and 4: 100 010 101 and 001 010 101 are among the best. */
    ck_touching(&l, prints, 2, other_phase, 2);
    ck_touching(&l, prints, 2, side_by_side, 2);
    ck_touching(&l, prints, 2, all, 8);
    ck_assert_int_eq(l.result.least, 8);
    ck_assert_int_eq(l.result.work, 0);
}
END_TEST

/* The middle of five in a cross touches both prints twice, whichever it gets: the lighter side is known beforehand. */
START_TEST(a_place_among_given_ones_of_every_print_touches_the_lighter)
{
    static struct layout l;
    const int64_t prints[] = { 4, 4 };
    const int64_t given[] = { 0, 0, 1, 1, -1 };
    memset(&l, 0, sizeof l);
    l.places = 5;
    for (int64_t place = 0; place < 4; place++)
        touch(&l, place, 4);
    l.touches[3].weight = 3;
    ck_touching(&l, prints, 2, given, 2);
    ck_assert_int_eq(l.result.least, 2);
}
END_TEST

/* ---- against every arrangement ----------------------------------------------------------------------------------- */

static void draw_stock(uint64_t *state, struct arranging *a)
{
    int64_t there_are = 0;
    for (size_t i = 0; i < a->kinds; i++) {
        a->stock[i] = draw_from(state, 0, a->places);
        there_are += a->stock[i];
    }
    for (; there_are < a->places; there_are++)
        a->stock[draw_from(state, 0, (int64_t)a->kinds - 1)]++;
}

static void draw_given(uint64_t *state, struct arranging *a)
{
    int64_t left[FEW_KINDS];
    int64_t one_in = draw_from(state, 2, 9);
    memcpy(left, a->stock, sizeof left);
    for (int64_t place = 0; place < a->places; place++) {
        int64_t kind = draw_from(state, 0, (int64_t)a->kinds - 1);
        a->given[place] = -1;
        if (draw_from(state, 1, one_in) == 1 && left[kind] > 0) {
            a->given[place] = kind;
            left[kind]--;
        }
    }
}

static struct arranging draw_arranging(uint64_t *state)
{
    struct arranging a = { 0 };
    int64_t tenths = draw_from(state, 1, 10);
    int64_t heaviest = draw_from(state, 0, 2) == 0 ? 5 : 1;
    a.places = draw_from(state, 1, 8);
    a.kinds = (size_t)draw_from(state, 1, 3);
    draw_stock(state, &a);
    draw_given(state, &a);
    for (int64_t first = 0; first < a.places; first++)
        for (int64_t second = 0; second < first; second++)
            if (draw_from(state, 1, 10) <= tenths)
                add_touch(&a, first, second, draw_from(state, 1, heaviest));
    return a;
}

/* The bound is never above the least there is, and the search finds that least. */
START_TEST(few_places_come_out_as_well_as_any_arrangement)
{
    enum { CASES = 600 };
    uint64_t state = 8;
    int64_t missed = 0;
    int64_t bound_met = 0;
    struct muslin_allocator memory = usual_memory();
    for (int32_t i = 0; i < CASES; i++) {
        struct arranging a = draw_arranging(&state);
        struct muslin_scatter_spec spec = MUSLIN_SCATTER_SPEC_INIT;
        struct muslin_scattered result = { .size = (uint32_t)sizeof result };
        int64_t out[FEW_PLACES] = { 0 };
        int64_t least = least_of_all(&a);
        spec.places = a.places;
        spec.seed = i;
        spec.work_limit = 50000;
        ck_ok(muslin_scatter_prints(&spec, a.stock, a.kinds, a.touches, sizeof a.touches[0], a.n, a.given, &memory,
                                    NULL, NULL, out, &result, NULL));
        ck_assert(is_allowed(&a, out));
        ck_assert_int_eq(result.touching, weight_of(&a, out));
        ck_assert_int_le(result.least, least);
        missed += result.touching != least;
        bound_met += result.least == least;
    }
    ck_assert_int_le(missed, CASES / 200);
    ck_assert_int_ge(bound_met, CASES * 7 / 10);
}
END_TEST

/* ---- a heap ------------------------------------------------------------------------------------------------------ */

/* Items are added and pulled by chance, and given larger keys; the first is always one of those with the largest, by
 * looking at all. */
START_TEST(a_heap_gives_the_largest_first)
{
    enum { ITEMS = 40 };
    struct msl_scatter_heap heap = { 0 };
    uint32_t items[ITEMS];
    uint32_t where[ITEMS];
    int64_t keys[ITEMS];
    int64_t held[ITEMS]; /* 0: it is not */
    uint64_t random = 5;
    heap.items = items;
    heap.where = where;
    heap.keys = keys;
    memset(held, 0, sizeof held);
    msl_heap_clear(&heap, ITEMS);
    for (int step = 0; step < 30000; step++) {
        const uint32_t item = msl_chance(&random, ITEMS);
        const int64_t key = 1 + (int64_t)msl_chance(&random, 60);
        uint32_t count = 0;
        uint32_t misplaced = 0;
        int64_t largest = 0;
        for (uint32_t i = 0; i < ITEMS; i++) {
            count += held[i] > 0;
            largest = held[i] > largest ? held[i] : largest;
            misplaced += (where[i] == MSL_NOWHERE) != (held[i] == 0);
        }
        ck_assert(heap.held == count && misplaced == 0);
        if (held[item] == 0) {
            held[item] = key;
            msl_heap_add(&heap, item, key);
        } else if (key > held[item]) {
            held[item] = key;
            msl_heap_change(&heap, item, key);
        } else if (step / 1000 % 2 == 0 || msl_chance(&random, 4) == 0) {
            const uint32_t first = msl_heap_pull(&heap);
            ck_assert_uint_lt(first, ITEMS);
            ck_assert_int_eq(held[first], largest);
            held[first] = 0;
        }
    }
}
END_TEST

/* ---- seeds and work ---------------------------------------------------------------------------------------------- */

/* ---- chance ------------------------------------------------------------------------------------------------------ */

/* The numbers of splitmix64 from 1234567, as its authors' program gives them: the upper halves of 6457827717110365317,
 * 3203168211198807973, 9817491932198370423, 4593380528125082431 and 16408922859458223821. */
START_TEST(chance_is_that_of_splitmix64)
{
    static const uint32_t halves[] = { 0x599ed017, 0x2c73f084, 0x883ebce5, 0x3fbef740, 0xe3b83467 };
    uint64_t state = 1234567;
    for (size_t i = 0; i < COUNT_OF(halves); i++)
        ck_assert_uint_eq(msl_chance(&state, UINT32_MAX), halves[i] - 1); /* h (2^32 - 1) / 2^32, down */
}
END_TEST

START_TEST(a_seed_gives_one_answer_and_another_seed_another)
{
    static struct layout l;
    static struct layout again;
    const int64_t prints[] = { 30, 30, 30, 30 };
    lay_grid(&l, 10, 10);
    lay_grid(&again, 10, 10);
    ck_ok(scatter_with(&l, prints, 4, NULL, INT64_MIN, 100000));
    ck_ok(scatter_with(&again, prints, 4, NULL, INT64_MIN, 100000));
    ck_assert_int_eq(memcmp(l.out, again.out, sizeof l.out), 0);
    ck_assert_int_eq(memcmp(&l.result, &again.result, sizeof l.result), 0);
    ck_ok(scatter_with(&again, prints, 4, NULL, INT64_MAX, 100000));
    ck_assert_int_ne(memcmp(l.out, again.out, sizeof l.out), 0);
}
END_TEST

struct listener {
    int64_t calls;
    int64_t most; /* calls, then it ends */
    int64_t work; /* told last */
    int64_t best;
    int64_t bound;
};

static int32_t listen(void *context, int64_t work, int64_t best, int64_t bound)
{
    struct listener *listener = context;
    ck_assert(listener->calls == 0 ? work == 0 : work > listener->work && best <= listener->best);
    ck_assert_int_le(bound, best);
    listener->work = work;
    listener->best = best;
    listener->bound = bound;
    return ++listener->calls == listener->most;
}

/* Places that touch at random, and apart from them four that all touch, of three prints: it is known that these touch
 * once, and little more, so that only an end ends it. Ended at once it is
 * what no work gives; ended later, what so much work gives. */
START_TEST(ended_by_progress_it_is_as_if_the_work_were_up)
{
    static struct layout l;
    static struct layout again;
    const int64_t prints[] = { 32, 31, 31 };
    struct muslin_allocator memory = usual_memory();
    lay_grid(&l, 10, 9);
    for (int64_t place = 0; place < 90; place++)
        touch(&l, place, (place * 7 + 13) % 90 == place ? (place + 2) % 90 : (place * 7 + 13) % 90);
    for (int64_t one = 0; one < 4; one++)
        for (int64_t other = one + 1; other < 4; other++)
            touch(&l, l.places + one, l.places + other);
    l.places += 4;
    again = l;
    for (int64_t most = 1; most <= 3; most++) {
        struct listener listener = { .most = most };
        struct muslin_scatter_spec spec = MUSLIN_SCATTER_SPEC_INIT;
        spec.places = l.places;
        spec.work_limit = INT64_C(1) << 40;
        l.result.size = (uint32_t)sizeof l.result;
        ck_ok(muslin_scatter_prints(&spec, prints, 3, l.touches, sizeof l.touches[0], l.n, NULL, &memory, listen,
                                    &listener, l.out, &l.result, NULL));
        ck_assert_int_eq(listener.calls, most);
        ck_assert(listener.bound == l.result.least && l.result.least > 0);
        ck_assert_int_ge(l.result.work, listener.work);
        ck_assert_int_le(l.result.touching, listener.best);
        ck_ok(scatter_with(&again, prints, 3, NULL, 1, listener.work));
        ck_assert_mem_eq(l.out, again.out, sizeof l.out);
        ck_assert_int_eq(l.result.touching, again.result.touching);
    }
}
END_TEST

/* Two loose places, of which the one that is laid first, as it is among three given ones, may take either print, and
 * the other, beside two given ones, is equal to one of them unless it has the second. Where it is not lucky an exchange
 * is enough: one place is weighed (a step and 2 touches), a partner drawn (1), both taken away and laid again (2 x 3 and
 * 2 x 4), asked what is equal (2 and 3), and what lies kept (7 places). Drawn in vain it takes longer. */
START_TEST(an_exchange_takes_the_steps_that_its_touches_take)
{
    enum { FIRST, SECOND, PLACES = 7 };
    static struct layout l;
    const int64_t prints[] = { 2, 1, 4 };
    const int64_t given[PLACES] = { -1, -1, 2, 2, 2, 0, 2 };
    int64_t least = INT64_MAX;
    memset(&l, 0, sizeof l);
    l.places = PLACES;
    for (int64_t place = 2; place < PLACES; place++)
        touch(&l, place < 5 ? FIRST : SECOND, place);
    for (int64_t seed = 1; seed <= 100; seed++) {
        ck_ok(scatter_with(&l, prints, 3, given, seed, 1000));
        ck_answer(&l, prints, 3, given);
        ck_assert_int_eq(l.result.touching, 0);
        if (l.result.work > 0 && l.result.work < least)
            least = l.result.work;
    }
    ck_assert_int_eq(least, 1 + 2 + 1 + 2 * 3 + 2 * 4 + 2 + 3 + 7);
}
END_TEST

/* A larger limit leads further on the same way, so that it never gives more. On a chessboard two given places that do
 * not fit each other cost something, which the bound does not see: the search goes on to its end. */
START_TEST(the_search_ends_at_its_limit)
{
    static struct layout l;
    static int64_t given[MANY];
    const int64_t prints[] = { MANY / 2, MANY / 2 };
    int64_t before = INT64_MAX;
    lay_grid(&l, SIDE, SIDE);
    for (int64_t place = 0; place < MANY; place++)
        given[place] = -1;
    given[0] = 0;
    given[MANY - 1] = 1;
    for (int64_t limit = 0; limit < 120000; limit += 6001) {
        ck_ok(scatter_with(&l, prints, 2, given, 1, limit));
        ck_answer(&l, prints, 2, given);
        ck_assert_int_ge(l.result.work, limit);
        ck_assert_int_le(l.result.work, limit + 10000);
        ck_assert(limit != 0 || l.result.work == 0);
        ck_assert_int_le(l.result.touching, before);
        before = l.result.touching;
    }
    ck_assert_int_eq(before, 3);
}
END_TEST

/* A hub among forty given places, each with a print of its own, touches one of them, whichever print it gets. */
START_TEST(a_place_among_many_prints_looks_at_some_of_them)
{
    enum { RIM = 40 };
    static struct layout l;
    int64_t prints[RIM];
    int64_t given[RIM + 1];
    memset(&l, 0, sizeof l);
    l.places = RIM + 1;
    given[RIM] = -1;
    for (int64_t place = 0; place < RIM; place++) {
        prints[place] = 2;
        given[place] = place;
        touch(&l, RIM, place);
    }
    ck_ok(scatter_with(&l, prints, RIM, given, 1, 0));
    ck_assert_int_eq(l.result.touching, 1);
    ck_assert_int_eq(l.result.least, 1);
}
END_TEST

START_TEST(spare_prints_may_stay_over)
{
    static struct layout l;
    const int64_t prints[] = { MUSLIN_COUNT_MAX, 1, MUSLIN_COUNT_MAX, 0 };
    /* A hub among eight: it alone has the one print, or they share one and it has the other. */
    memset(&l, 0, sizeof l);
    l.places = 9;
    for (int64_t place = 1; place < 9; place++)
        touch(&l, 0, place);
    ck_touching(&l, prints, 4, NULL, 0);
}
END_TEST

/* ---- statuses ---------------------------------------------------------------------------------------------------- */

static muslin_status ruled_prints(const void *spec, void *out, struct muslin_problem *problem)
{
    static const int64_t prints[] = { MUSLIN_COUNT_MAX, 3 };
    struct muslin_touch_spec touches[] = { MUSLIN_TOUCH_SPEC_INIT };
    struct muslin_allocator memory = usual_memory();
    int64_t places[4];
    touches[0].second = 1;
    return muslin_scatter_prints(spec, prints, 2, touches, sizeof touches[0], 1, NULL, &memory, NULL, NULL, places, out,
                                 problem);
}

static struct muslin_scatter_spec four_places(void)
{
    struct muslin_scatter_spec spec = MUSLIN_SCATTER_SPEC_INIT;
    spec.places = 4;
    return spec;
}

START_TEST(prints_follow_the_rules_of_structs)
{
    const struct muslin_scatter_spec spec = four_places();
    const struct ruled ruled = RULED(ruled_prints, spec, muslin_scattered);
    const struct refusal refusals[] = {
        OUTSIDE(muslin_scatter_spec, places, 1, 1 << 24, MUSLIN_ARG_PLACES),
        OUTSIDE(muslin_scatter_spec, work_limit, 0, INT64_C(1) << 40, MUSLIN_ARG_WORK_LIMIT),
    };
    ck_struct_rules(&ruled);
    ck_no_flag_known(&ruled);
    ck_refusals(&ruled, refusals, COUNT_OF(refusals));
}
END_TEST

/* The second of two touches is the one that is refused. */
static muslin_status ruled_touch(const void *spec, void *out, struct muslin_problem *problem)
{
    const struct muslin_scatter_spec scatter = four_places();
    const int64_t prints[] = { MUSLIN_COUNT_MAX };
    struct muslin_touch_spec touches[] = { MUSLIN_TOUCH_SPEC_INIT, MUSLIN_TOUCH_SPEC_INIT };
    struct muslin_allocator memory = usual_memory();
    int64_t places[4];
    touches[0].second = 1;
    memcpy(&touches[1], spec, sizeof touches[1]);
    return muslin_scatter_prints(&scatter, prints, 1, touches, sizeof touches[0], 2, NULL, &memory, NULL, NULL, places,
                                 out, problem);
}

START_TEST(touches_are_refused_outside_their_ranges)
{
    struct muslin_touch_spec spec = MUSLIN_TOUCH_SPEC_INIT;
    spec.second = 3;
    const struct ruled ruled = RULED(ruled_touch, spec, muslin_scattered);
    const struct refusal refusals[] = {
        OUTSIDE(muslin_touch_spec, first, 0, 3, MUSLIN_ARG_TOUCH),
        OUTSIDE(muslin_touch_spec, second, 0, 3, MUSLIN_ARG_TOUCH),
        OUTSIDE(muslin_touch_spec, weight, 1, 1 << 20, MUSLIN_ARG_TOUCH),
        NONE_OF(muslin_touch_spec, second, 0, 3, MUSLIN_ARG_TOUCH),
    };
    ck_refusals_at(&ruled, 1, refusals, COUNT_OF(refusals));
}
END_TEST

/* One thing after the other made wrong in a call that is right. */
struct call {
    struct muslin_scatter_spec spec;
    struct muslin_allocator memory;
    const struct muslin_allocator *allocator;
    int64_t stock[3];
    const int64_t *prints;
    size_t kinds;
    struct muslin_touch_spec rows[3];
    const struct muslin_touch_spec *touches;
    size_t touch_size;
    size_t n;
    int64_t fixed[4];
    const int64_t *given;
    int64_t places[4];
    int64_t *out;
    struct muslin_problem problem;
};

static void start_call(struct call *c)
{
    const struct muslin_touch_spec row = MUSLIN_TOUCH_SPEC_INIT;
    const struct muslin_problem problem = PROBLEM;
    memset(c, 0, sizeof *c);
    c->spec = four_places();
    c->memory = usual_memory();
    c->allocator = &c->memory;
    for (int64_t i = 0; i < 3; i++) {
        c->stock[i] = 2;
        c->rows[i] = row;
        c->rows[i].first = i;
        c->rows[i].second = i + 1;
    }
    for (int32_t i = 0; i < 4; i++) {
        c->fixed[i] = -1;
        c->places[i] = 77;
    }
    c->prints = c->stock;
    c->kinds = 3;
    c->touches = c->rows;
    c->touch_size = sizeof c->rows[0];
    c->n = 3;
    c->given = c->fixed;
    c->out = c->places;
    c->problem = problem;
}

/* Nothing is written unless all went well. */
static muslin_status called(struct call *c)
{
    struct muslin_scattered result = { .size = (uint32_t)sizeof result, .touching = 77 };
    muslin_status status = muslin_scatter_prints(&c->spec, c->prints, c->kinds, c->touches, c->touch_size, c->n,
                                                 c->given, c->allocator, NULL, NULL, c->out, &result, &c->problem);
    ck_assert_int_eq(result.touching == 77, status != MUSLIN_OK);
    ck_assert_int_eq(c->places[0] == 77, status != MUSLIN_OK);
    return status;
}

static void ck_call(struct call *c, muslin_status status, int32_t argument, int64_t at)
{
    ck_status(called(c), status);
    ck_assert_int_eq(c->problem.argument, argument);
    ck_assert_int_eq(c->problem.at, at);
}

START_TEST(pointers_that_are_missing_are_named)
{
    static struct call c;
    start_call(&c);
    ck_call(&c, MUSLIN_OK, 0, 0);
    start_call(&c);
    c.allocator = NULL;
    ck_call(&c, MUSLIN_ERR_NULL, MUSLIN_ARG_ALLOCATOR, 0);
    start_call(&c);
    c.memory.free = NULL;
    ck_call(&c, MUSLIN_ERR_NULL, MUSLIN_ARG_ALLOCATOR, 0);
    start_call(&c);
    c.prints = NULL;
    ck_call(&c, MUSLIN_ERR_NULL, MUSLIN_ARG_PRINTS, 0);
    start_call(&c);
    c.touches = NULL;
    ck_call(&c, MUSLIN_ERR_NULL, MUSLIN_ARG_ROWS, 0);
    c.n = 1;
    ck_call(&c, MUSLIN_ERR_NULL, MUSLIN_ARG_ROWS, 0);
    c.n = 0;
    c.given = NULL;
    ck_status(muslin_scatter_prints(&c.spec, c.prints, c.kinds, NULL, 0, 0, NULL, c.allocator, NULL, NULL, NULL,
                                    &(struct muslin_scattered){ .size = sizeof(struct muslin_scattered) }, NULL),
              MUSLIN_ERR_NULL);
    c.problem.argument = 0;
    ck_call(&c, MUSLIN_OK, 0, 0);
    start_call(&c);
    c.out = NULL;
    ck_call(&c, MUSLIN_ERR_NULL, MUSLIN_ARG_OUTPUT, 0);
}
END_TEST

START_TEST(prints_out_of_their_range_are_named)
{
    static struct call c;
    start_call(&c);
    c.kinds = 0;
    ck_call(&c, MUSLIN_ERR_RANGE, MUSLIN_ARG_PRINTS, 0);
    c.kinds = SIZE_MAX;
    ck_call(&c, MUSLIN_ERR_RANGE, MUSLIN_ARG_PRINTS, 0);
    c.kinds = ((size_t)1 << 20) + 1;
    ck_call(&c, MUSLIN_ERR_RANGE, MUSLIN_ARG_PRINTS, 0);
    ck_assert(c.problem.value == (1 << 20) + 1 && c.problem.limit == 1 << 20);
    start_call(&c);
    c.stock[1] = -1;
    ck_call(&c, MUSLIN_ERR_RANGE, MUSLIN_ARG_PRINTS, 1);
    start_call(&c);
    c.stock[2] = MUSLIN_COUNT_MAX + 1;
    ck_call(&c, MUSLIN_ERR_RANGE, MUSLIN_ARG_PRINTS, 2);
    start_call(&c);
    c.fixed[3] = 3;
    ck_call(&c, MUSLIN_ERR_RANGE, MUSLIN_ARG_PRINTS, 3);
    start_call(&c);
    c.fixed[0] = -2;
    ck_call(&c, MUSLIN_ERR_RANGE, MUSLIN_ARG_PRINTS, 0);
}
END_TEST

START_TEST(touches_out_of_their_range_are_named)
{
    static struct call c;
    start_call(&c);
    c.n = ((size_t)1 << 27) + 1;
    ck_call(&c, MUSLIN_ERR_RANGE, MUSLIN_ARG_TOUCH, 0);
    ck_assert(c.problem.value == (1 << 27) + 1 && c.problem.limit == 1 << 27);
    start_call(&c);
    c.touch_size = 8;
    ck_call(&c, MUSLIN_ERR_STRUCT_SIZE, MUSLIN_ARG_ROW_SIZE, 0);
    start_call(&c);
    c.rows[1].size = 8;
    ck_call(&c, MUSLIN_ERR_STRUCT_SIZE, MUSLIN_ARG_ROWS, 1);
    start_call(&c);
    c.rows[2].flags = 1;
    ck_call(&c, MUSLIN_ERR_FLAGS, MUSLIN_ARG_ROWS, 2);
    start_call(&c);
    c.rows[2].first = 4;
    ck_call(&c, MUSLIN_ERR_RANGE, MUSLIN_ARG_TOUCH, 2);
    start_call(&c);
    c.rows[0].second = -1;
    ck_call(&c, MUSLIN_ERR_RANGE, MUSLIN_ARG_TOUCH, 0);
    start_call(&c);
    c.rows[1].second = 1;
    ck_call(&c, MUSLIN_ERR_CHOICE, MUSLIN_ARG_TOUCH, 1);
    start_call(&c);
    c.rows[1].weight = 0;
    ck_call(&c, MUSLIN_ERR_RANGE, MUSLIN_ARG_TOUCH, 1);
    start_call(&c);
    c.rows[1].weight = (1 << 20) + 1;
    ck_call(&c, MUSLIN_ERR_RANGE, MUSLIN_ARG_TOUCH, 1);
}
END_TEST

START_TEST(too_few_prints_are_not_enough)
{
    static struct call c;
    start_call(&c);
    c.stock[0] = 0;
    c.stock[1] = 1;
    ck_call(&c, MUSLIN_ERR_NOT_ENOUGH, MUSLIN_ARG_PLACES, 0);
    ck_assert(c.problem.value == 4 && c.problem.limit == 3);
    start_call(&c);
    for (int32_t i = 0; i < 3; i++)
        c.fixed[i] = 1;
    ck_call(&c, MUSLIN_ERR_NOT_ENOUGH, MUSLIN_ARG_PLACES, 1);
    ck_assert(c.problem.value == 3 && c.problem.limit == 2);
    start_call(&c);
    for (int32_t i = 0; i < 3; i++)
        c.fixed[i] = 0;
    ck_call(&c, MUSLIN_ERR_NOT_ENOUGH, MUSLIN_ARG_PLACES, 0);
}
END_TEST

/* Want of memory has no place, whether places touch and are given or not. */
START_TEST(every_allocation_of_prints_may_fail)
{
    static struct call c;
    struct failing_allocator failing;
    for (int is_given = 0; is_given <= 1; is_given++)
        EVERY_ALLOCATION_FAILS_ONCE(failing) {
            start_call(&c);
            c.allocator = &failing.allocator;
            c.given = is_given ? c.fixed : NULL;
            c.n = is_given ? c.n : 0;
            const muslin_status status = called(&c);
            ck_status(status, failing.has_failed ? MUSLIN_ERR_NO_MEMORY : MUSLIN_OK);
            ck_assert_int_eq(c.problem.at, 0);
            ck_assert(failing_is_clean(&failing));
        }
}
END_TEST

/* 2^20 prints are as many as may be. */
START_TEST(there_may_be_a_million_prints)
{
    enum { MOST = 1 << 20 };
    static int64_t prints[MOST];
    static struct layout l;
    prints[MOST - 1] = 4;
    lay_grid(&l, 2, 2);
    ck_ok(scatter_with(&l, prints, MOST, NULL, 1, 0));
    for (int64_t place = 0; place < 4; place++)
        ck_assert_int_eq(l.out[place], MOST - 1);
}
END_TEST

INIT_CALL(scatter)
INIT_CALL(touch)

START_TEST(initial_values_are_those_of_the_macros)
{
    const struct muslin_scatter_spec scatter = MUSLIN_SCATTER_SPEC_INIT;
    const struct muslin_touch_spec touch_spec = MUSLIN_TOUCH_SPEC_INIT;
    ck_init_rules(init_scatter, &scatter, (uint32_t)sizeof scatter);
    ck_init_rules(init_touch, &touch_spec, (uint32_t)sizeof touch_spec);
}
END_TEST

static void add_layouts(Suite *suite)
{
    TCase *layouts = tcase_create("layouts");
    tcase_set_timeout(layouts, 60);
    tcase_add_test(layouts, five_and_four_blocks_make_a_chessboard);
    tcase_add_test(layouts, chessboards_come_out_whichever_print_there_is_more_of);
    tcase_add_test(layouts, a_ring_of_an_odd_number_cannot_take_turns);
    tcase_add_test(layouts, six_prints_in_equal_parts_never_touch);
    tcase_add_test(layouts, queens_of_five_colours_do_not_see_their_own);
    tcase_add_test(layouts, ten_prints_make_a_latin_square);
    tcase_add_test(layouts, one_colour_less_than_a_graph_needs_leaves_a_touch);
    tcase_add_test(layouts, a_background_on_every_second_place_leaves_the_others_to_the_prints);
    tcase_add_test(layouts, prints_spread_over_the_whole_top);
    tcase_add_test(layouts, one_print_touches_itself_everywhere);
    tcase_add_test(layouts, places_without_touches_need_no_search);
    tcase_add_test(layouts, places_that_all_touch_have_equal_pairs_when_prints_are_few);
    tcase_add_test(layouts, more_of_a_print_than_may_lie_apart_touch);
    tcase_add_test(layouts, a_print_with_too_many_blocks_touches_across_and_down);
    tcase_add_test(layouts, each_group_of_places_counts_with_its_own_weight);
    tcase_add_test(layouts, places_are_not_parted_without_end);
    tcase_add_test(layouts, the_lightest_touch_of_a_ring_is_given_up);
    tcase_add_test(layouts, rings_that_share_a_touch_count_once);
    tcase_add_test(layouts, given_places_keep_their_print_and_count);
    tcase_add_test(layouts, a_place_among_given_ones_of_every_print_touches_the_lighter);
    tcase_add_test(layouts, few_places_come_out_as_well_as_any_arrangement);
    tcase_add_test(layouts, a_heap_gives_the_largest_first);
    tcase_add_test(layouts, chance_is_that_of_splitmix64);
    tcase_add_test(layouts, a_seed_gives_one_answer_and_another_seed_another);
    tcase_add_test(layouts, ended_by_progress_it_is_as_if_the_work_were_up);
    tcase_add_test(layouts, an_exchange_takes_the_steps_that_its_touches_take);
    tcase_add_test(layouts, the_search_ends_at_its_limit);
    tcase_add_test(layouts, a_place_among_many_prints_looks_at_some_of_them);
    tcase_add_test(layouts, spare_prints_may_stay_over);
    suite_add_tcase(suite, layouts);
}

static void add_refused(Suite *suite)
{
    TCase *refused = tcase_create("refused");
    tcase_add_test(refused, prints_follow_the_rules_of_structs);
    tcase_add_test(refused, pointers_that_are_missing_are_named);
    tcase_add_test(refused, prints_out_of_their_range_are_named);
    tcase_add_test(refused, touches_out_of_their_range_are_named);
    tcase_add_test(refused, too_few_prints_are_not_enough);
    tcase_add_test(refused, touches_are_refused_outside_their_ranges);
    tcase_add_test(refused, there_may_be_a_million_prints);
    tcase_add_test(refused, every_allocation_of_prints_may_fail);
    tcase_add_test(refused, initial_values_are_those_of_the_macros);
    suite_add_tcase(suite, refused);
}

Suite *scatter_suite(void);

Suite *scatter_suite(void)
{
    Suite *suite = suite_create("scatter");
    add_refused(suite);
    add_scatter_touches(suite);
    add_scatter_sets(suite);
    add_scatter_bound(suite);
    add_scatter_search(suite);
    return suite;
}

/* What takes longer. */
Suite *scatter_layouts_suite(void);

Suite *scatter_layouts_suite(void)
{
    Suite *suite = suite_create("scatter_layouts");
    add_scatter_blocks(suite);
    add_layouts(suite);
    return suite;
}
