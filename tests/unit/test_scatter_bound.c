/* test_scatter_bound.c - what no arrangement of prints can do without, where that is known of a whole layout.
 *
 * SPDX-License-Identifier: MIT */
#include "test_scatter.h"

enum { PLACES_MOST = 48, TOUCHES_MOST = 400, PRINTS_MOST = PLACES_MOST + 2, NOTHING = -1 };

/* Places that touch, which go by other numbers in the end. */
struct layout {
    int64_t places;
    size_t n;
    size_t kinds;
    struct muslin_touch_spec touches[TOUCHES_MOST];
    int64_t prints[PRINTS_MOST];
    int64_t given[PLACES_MOST];
    struct muslin_scattered result;
};

static void start(struct layout *l, size_t kinds, int64_t each)
{
    memset(l, 0, sizeof *l);
    l->kinds = kinds;
    for (size_t kind = 0; kind < kinds; kind++)
        l->prints[kind] = each;
    for (int64_t place = 0; place < PLACES_MOST; place++)
        l->given[place] = NOTHING;
}

static void touch(struct layout *l, int64_t first, int64_t second, int64_t weight)
{
    struct muslin_touch_spec row = MUSLIN_TOUCH_SPEC_INIT;
    row.first = first;
    row.second = second;
    row.weight = weight;
    ck_assert_uint_lt(l->n, TOUCHES_MOST);
    ck_assert(first < PLACES_MOST && second < PLACES_MOST);
    l->touches[l->n++] = row;
}

/* One print of which a number must be laid, and one more of another for each place that is left. */
static void start_with_many(struct layout *l, int64_t places, int64_t must_lie)
{
    start(l, (size_t)(places - must_lie) + 1, 1);
    l->places = places;
    l->prints[0] = MUSLIN_COUNT_MAX;
}

static void swap_numbers(int64_t *one, int64_t *other)
{
    const int64_t number = *one;
    *one = *other;
    *other = number;
}

/* Numbers the places anew, and names the touches in another order and from either end. */
static void shuffle(struct layout *l, uint64_t *state)
{
    int64_t number[PLACES_MOST];
    int64_t given[PLACES_MOST];
    for (int64_t place = 0; place < l->places; place++)
        number[place] = place;
    for (int64_t place = l->places - 1; place > 0; place--)
        swap_numbers(&number[place], &number[draw_from(state, 0, place)]);
    memcpy(given, l->given, sizeof given);
    for (int64_t place = 0; place < l->places; place++)
        l->given[number[place]] = given[place];
    for (size_t i = l->n; i > 0; i--) {
        const size_t other = (size_t)draw_from(state, 0, (int64_t)i - 1);
        const struct muslin_touch_spec row = l->touches[other];
        l->touches[other] = l->touches[i - 1];
        l->touches[i - 1] = row;
        l->touches[i - 1].first = number[row.first];
        l->touches[i - 1].second = number[row.second];
        if (draw_from(state, 0, 1) == 0)
            swap_numbers(&l->touches[i - 1].first, &l->touches[i - 1].second);
    }
}

/* Memory that holds nothing but zeros, which are places and numbers too. */
static void *zeros(void *context, size_t size)
{
    (void)context;
    return calloc(1, size);
}

/* The bound, which no answer goes below. */
static int64_t bound_as_it_is(struct layout *l, int64_t seed, int64_t work_limit)
{
    struct muslin_scatter_spec spec = MUSLIN_SCATTER_SPEC_INIT;
    struct muslin_allocator memory = usual_memory();
    int64_t out[PLACES_MOST];
    memory.alloc = zeros;
    spec.places = l->places;
    spec.seed = seed;
    spec.work_limit = work_limit;
    l->result.size = (uint32_t)sizeof l->result;
    ck_ok(muslin_scatter_prints(&spec, l->prints, l->kinds, l->touches, sizeof l->touches[0], l->n, l->given, &memory,
                                NULL, NULL, out, &l->result, NULL));
    ck_assert_int_le(l->result.least, l->result.touching);
    return l->result.least;
}

static int64_t bound_of(struct layout *l, uint64_t *state, int64_t work_limit)
{
    shuffle(l, state);
    return bound_as_it_is(l, (int64_t)draw(state), work_limit);
}

/* Places that are given, each with a print of its own of which none is left: loose ones that touch them have other
 * prints, however many they touch. */
static void give_some(struct layout *l, uint64_t *state)
{
    const int64_t loose = l->places;
    while (l->places < PLACES_MOST && draw_from(state, 0, 5) > 0) {
        for (int64_t i = draw_from(state, 0, 6); i > 0; i--)
            touch(l, draw_from(state, 0, loose - 1), l->places, draw_from(state, 1, 9));
        ck_assert_uint_lt(l->kinds, PRINTS_MOST);
        l->given[l->places++] = (int64_t)l->kinds;
        l->prints[l->kinds++] = 1;
    }
}

/* ---- rings ------------------------------------------------------------------------------------------------------- */

static void hang_branch(struct layout *l, uint64_t *state)
{
    touch(l, draw_from(state, 0, l->places - 1), l->places, draw_from(state, 1, 9));
    l->places++;
}

/* A ring hung at a place that lies already. Gives its lightest touch where it is odd, else nothing. */
static int64_t hang_ring(struct layout *l, uint64_t *state, int64_t length)
{
    int64_t at = draw_from(state, 0, l->places - 1);
    int64_t before = at;
    int64_t lightest = INT64_MAX;
    for (int64_t i = 0; i < length; i++) {
        const int64_t next = i + 1 < length ? l->places++ : at;
        const int64_t weight = draw_from(state, 1, 9);
        lightest = weight < lightest ? weight : lightest;
        touch(l, before, next, weight);
        before = next;
    }
    return length % 2 != 0 ? lightest : 0;
}

/* Rings that share places but no touch, and branches. In two prints each odd ring has two equal that touch, so the
 * lightest touch of each is given up, and no more: ring by ring the rest take turns. */
START_TEST(rings_that_share_places_each_give_up_their_lightest_touch)
{
    static struct layout l;
    uint64_t state = 21;
    for (int32_t i = 0; i < 300; i++) {
        int64_t given_up = 0;
        start(&l, 2, PLACES_MOST);
        l.places = 1;
        while (l.places + 9 < PLACES_MOST && draw_from(&state, 0, 9) > 0) {
            if (draw_from(&state, 0, 6) == 0)
                l.places++; /* a tree of its own, perhaps */
            else if (draw_from(&state, 0, 2) == 0)
                hang_branch(&l, &state);
            else
                given_up += hang_ring(&l, &state, draw_from(&state, 3, 9));
        }
        give_some(&l, &state);
        ck_assert_int_eq(bound_of(&l, &state, 0), given_up);
    }
}
END_TEST

/* Each place of a row touches the hub: of its triangles every other shares no touch, so that two prints are equal once
 * in each of those at least; no more, where the row takes turns and the hub has the print that it has less of. */
START_TEST(in_a_fan_every_other_triangle_gives_up_a_touch)
{
    static struct layout l;
    for (int64_t places = 2; places < PLACES_MOST; places++) {
        start(&l, 2, PLACES_MOST);
        l.places = places + 1;
        for (int64_t place = 1; place <= places; place++) {
            touch(&l, 0, place, 1);
            if (place < places)
                touch(&l, place, place + 1, 1);
        }
        ck_assert_int_eq(bound_as_it_is(&l, 1, 0), places / 2);
    }
}
END_TEST

/* In rings of even numbers of places, each half of the touches leaves half of the places to a print; every further one
 * of it costs a touch of one half and one of the other. */
START_TEST(in_even_rings_each_print_too_many_touches_twice)
{
    static struct layout l;
    uint64_t state = 22;
    for (int32_t i = 0; i < 300; i++) {
        const int64_t rings = draw_from(&state, 1, 4);
        const int64_t weight = draw_from(&state, 1, 9);
        int64_t places = 0;
        int64_t lengths[4];
        for (int64_t ring = 0; ring < rings; ring++)
            places += lengths[ring] = 2 * draw_from(&state, 2, 6);
        const int64_t must_lie = draw_from(&state, 1, places);
        start_with_many(&l, places, must_lie);
        int64_t first = 0;
        for (int64_t ring = 0; ring < rings; first += lengths[ring++])
            for (int64_t place = 0; place < lengths[ring]; place++)
                touch(&l, first + place, first + (place + 1) % lengths[ring], weight);
        give_some(&l, &state);
        const int64_t over = must_lie - places / 2;
        ck_assert_int_eq(bound_of(&l, &state, 0), over > 0 ? 2 * over * weight : 0);
    }
}
END_TEST

/* ---- cliques ----------------------------------------------------------------------------------------------------- */

static void add_clique(struct layout *l, uint64_t *state, int64_t places, int64_t least, int64_t most,
                       int64_t *lightest)
{
    *lightest = INT64_MAX;
    for (int64_t one = 0; one < places; one++)
        for (int64_t other = one + 1; other < places; other++) {
            const int64_t weight = draw_from(state, least, most);
            *lightest = weight < *lightest ? weight : *lightest;
            touch(l, l->places + one, l->places + other, weight);
        }
    l->places += places;
}

/* A place more joins the print of which the fewest lie in its clique, and touches each of them. */
static int64_t fewest_equal(int64_t places, int64_t kinds)
{
    int64_t pairs = 0;
    for (int64_t place = 0; place < places; place++)
        pairs += place / kinds;
    return pairs;
}

START_TEST(cliques_apart_have_equal_pairs_when_prints_are_few)
{
    static struct layout l;
    uint64_t state = 23;
    for (int32_t i = 0; i < 300; i++) {
        const size_t kinds = (size_t)draw_from(&state, 2, 5);
        int64_t least = 0;
        start(&l, kinds, PLACES_MOST);
        for (int64_t clique = draw_from(&state, 1, 6); clique > 0; clique--) {
            const int64_t places = draw_from(&state, 1, 8);
            const int64_t weight = draw_from(&state, 1, 9);
            int64_t lightest;
            add_clique(&l, &state, places, weight, weight, &lightest);
            least += weight * fewest_equal(places, (int64_t)kinds);
        }
        ck_assert_int_eq(bound_of(&l, &state, 0), least);
    }
}
END_TEST

/* Of one place more than there are prints two are equal, and may be those of the lightest touch. */
START_TEST(a_clique_of_one_too_many_gives_up_its_lightest_touch)
{
    static struct layout l;
    uint64_t state = 24;
    for (int32_t i = 0; i < 300; i++) {
        const int64_t kinds = draw_from(&state, 2, 5);
        int64_t least = 0;
        start(&l, (size_t)kinds, PLACES_MOST);
        for (int64_t clique = draw_from(&state, 1, 6); clique > 0; clique--) {
            int64_t lightest;
            add_clique(&l, &state, kinds + 1, 1, 99, &lightest);
            least += lightest;
        }
        ck_assert_int_eq(bound_of(&l, &state, 0), least);
    }
}
END_TEST

/* Cliques of one too many in a row, each joined to the next by a touch lighter than all within them. Those are grown
 * first that touch no other, and keep together. */
START_TEST(cliques_in_a_row_give_up_touches_of_their_own)
{
    static struct layout l;
    uint64_t state = 29;
    for (int32_t i = 0; i < 300; i++) {
        const int64_t kinds = draw_from(&state, 2, 5);
        int64_t least = 0;
        start(&l, (size_t)kinds, PLACES_MOST);
        for (int64_t clique = draw_from(&state, 2, 6); clique > 0; clique--) {
            int64_t lightest;
            add_clique(&l, &state, kinds + 1, 2, 99, &lightest);
            least += lightest;
            if (clique > 1)
                touch(&l, l.places - 1, l.places, 1);
        }
        ck_assert_int_eq(bound_of(&l, &state, 0), least);
    }
}
END_TEST

/* The one print is laid where the fewest of it lie as long as it must be, the others lie but once. */
START_TEST(more_of_a_print_than_there_are_cliques_touch)
{
    static struct layout l;
    uint64_t state = 25;
    for (int32_t i = 0; i < 300; i++) {
        const int64_t cliques = draw_from(&state, 1, 8);
        const int64_t weight = draw_from(&state, 1, 9);
        int64_t sizes[8];
        int64_t places = 0;
        int64_t pairs = 0;
        for (int64_t clique = 0; clique < cliques; clique++)
            places += sizes[clique] = draw_from(&state, 1, 6);
        const int64_t must_lie = draw_from(&state, 1, places);
        start_with_many(&l, places, must_lie);
        l.places = 0;
        for (int64_t clique = 0; clique < cliques; clique++) {
            int64_t lightest;
            add_clique(&l, &state, sizes[clique], weight, weight, &lightest);
        }
        int64_t here[8] = { 0 };
        for (int64_t lies = 0; lies < must_lie; lies++) {
            int64_t best = NOTHING;
            for (int64_t clique = 0; clique < cliques; clique++)
                if (here[clique] < sizes[clique] && (best == NOTHING || here[clique] < here[best]))
                    best = clique;
            pairs += here[best]++;
        }
        /* Too few prints for a clique are counted too, where that is more; then it is the least of that. */
        int64_t few = 0;
        for (int64_t clique = 0; clique < cliques; clique++)
            few += fewest_equal(sizes[clique], (int64_t)l.kinds);
        ck_assert_int_le(few, pairs);
        ck_assert_int_eq(bound_of(&l, &state, 0), weight * pairs);
    }
}
END_TEST

/* ---- trees ------------------------------------------------------------------------------------------------------- */

/* The most places of a tree of which no two touch: the last one of it is a leaf and may be among them, its neighbour
 * not. `above` is the place that each hangs at. */
static int64_t most_apart(const int64_t *above, int64_t places)
{
    int64_t apart = 0;
    int is_out[PLACES_MOST] = { 0 };
    for (int64_t place = places - 1; place >= 0; place--) {
        if (is_out[place])
            continue;
        apart++;
        if (place > 0)
            is_out[above[place]] = 1;
    }
    return apart;
}

START_TEST(more_of_a_print_than_lie_apart_in_a_tree_touch)
{
    static struct layout l;
    uint64_t state = 26;
    for (int32_t i = 0; i < 200; i++) {
        const int64_t places = draw_from(&state, 2, PLACES_MOST - 1);
        const int64_t reach = draw_from(&state, 1, places);
        int64_t above[PLACES_MOST] = { 0 };
        for (int64_t place = 1; place < places; place++)
            above[place] = draw_from(&state, place > reach ? place - reach : 0, place - 1);
        const int64_t apart = most_apart(above, places);
        start_with_many(&l, places, draw_from(&state, apart, places));
        for (int64_t place = 1; place < places; place++)
            touch(&l, above[place], place, 1);
        const int64_t must_lie = places + 1 - (int64_t)l.kinds;
        give_some(&l, &state);
        const int64_t least = bound_of(&l, &state, 20000);
        ck_assert_int_ge(least, must_lie - apart);
        ck_assert(must_lie > apart || least == 0);
        ck_assert(must_lie < places || l.result.touching == places - 1);
    }
}
END_TEST

/* ---- what is given ----------------------------------------------------------------------------------------------- */

/* The lightest of the prints that are left, in a place whose neighbours are all given. */
static int64_t lightest_at(const struct layout *l, const int64_t *left, int64_t place)
{
    int64_t lightest = INT64_MAX;
    for (size_t kind = 0; kind < l->kinds; kind++) {
        int64_t weight = 0;
        for (size_t i = 0; i < l->n; i++)
            if (l->touches[i].second == place && l->given[l->touches[i].first] == (int64_t)kind)
                weight += l->touches[i].weight;
        lightest = left[kind] > 0 && weight < lightest ? weight : lightest;
    }
    return lightest;
}

/* Given places touch each other and loose ones, loose ones only given ones; so each goes its own way. Of some prints
 * no more are there than are given. */
START_TEST(loose_places_among_given_ones_have_their_lightest)
{
    static struct layout l;
    uint64_t state = 27;
    for (int32_t i = 0; i < 300; i++) {
        const int64_t given = draw_from(&state, 1, 20);
        const int64_t kinds = draw_from(&state, 1, 4);
        int64_t left[4];
        int64_t least = 0;
        start(&l, (size_t)kinds, 0);
        l.places = given + draw_from(&state, 1, 10);
        for (int64_t place = 0; place < given; place++) {
            l.given[place] = draw_from(&state, 0, kinds - 1);
            l.prints[l.given[place]]++;
        }
        for (int64_t kind = 0; kind < kinds; kind++) {
            left[kind] = kind == 0 || draw_from(&state, 0, 1) == 0 ? PLACES_MOST : 0;
            l.prints[kind] += left[kind];
        }
        for (int32_t k = 0; k < 60; k++) {
            const int64_t first = draw_from(&state, 0, given - 1);
            const int64_t second = draw_from(&state, 0, l.places - 1);
            const int64_t weight = draw_from(&state, 1, 9);
            if (first == second)
                continue;
            touch(&l, first, second, weight);
            least += l.given[first] == l.given[second] ? weight : 0;
        }
        for (int64_t place = given; place < l.places; place++)
            least += lightest_at(&l, left, place);
        ck_assert_int_eq(bound_of(&l, &state, 0), least);
        ck_assert_int_eq(l.result.touching, least);
    }
}
END_TEST

/* Of one print alone all touch. */
START_TEST(one_print_touches_itself_with_all_weights)
{
    static struct layout l;
    uint64_t state = 28;
    for (int32_t i = 0; i < 100; i++) {
        int64_t all = 0;
        start(&l, 3, 0);
        l.places = draw_from(&state, 2, 12);
        l.prints[draw_from(&state, 0, 2)] = l.places;
        for (int32_t k = 0; k < 30; k++) {
            const int64_t first = draw_from(&state, 0, l.places - 2);
            const int64_t weight = draw_from(&state, 1, 9);
            touch(&l, first, draw_from(&state, first + 1, l.places - 1), weight);
            all += weight;
        }
        ck_assert_int_eq(bound_of(&l, &state, 0), all);
    }
}
END_TEST

void add_scatter_bound(Suite *suite)
{
    TCase *bound = tcase_create("bound");
    tcase_set_timeout(bound, 60);
    tcase_add_test(bound, rings_that_share_places_each_give_up_their_lightest_touch);
    tcase_add_test(bound, in_a_fan_every_other_triangle_gives_up_a_touch);
    tcase_add_test(bound, in_even_rings_each_print_too_many_touches_twice);
    tcase_add_test(bound, cliques_apart_have_equal_pairs_when_prints_are_few);
    tcase_add_test(bound, a_clique_of_one_too_many_gives_up_its_lightest_touch);
    tcase_add_test(bound, cliques_in_a_row_give_up_touches_of_their_own);
    tcase_add_test(bound, more_of_a_print_than_there_are_cliques_touch);
    tcase_add_test(bound, more_of_a_print_than_lie_apart_in_a_tree_touch);
    tcase_add_test(bound, loose_places_among_given_ones_have_their_lightest);
    tcase_add_test(bound, one_print_touches_itself_with_all_weights);
    suite_add_tcase(suite, bound);
}
