/* test_cutplan_rows.c - drawn requests of every kind; each plan is held against its request.
 *
 * SPDX-License-Identifier: MIT */
#include "test_cutplan_made.h"

#include "cutplan_plan.h"

static struct planned p;

/* A quarter of an inch, some times. */
static muslin_len draw_side(uint64_t *state, int64_t least, int64_t most)
{
    return draw_from(state, least, most) * IN(0, 1, 4);
}

static void draw_piece(uint64_t *state, int folded)
{
    const int32_t kind = (int32_t)draw_from(state, 1, 6);
    const muslin_len widest = folded ? 70 : 80;
    struct muslin_blank_spec *piece = want(&p, draw_from(state, 0, 30), draw_side(state, 4, 40), draw_side(state, 4, 40));
    piece->priority = (int32_t)draw_from(state, 0, 2);
    piece->label = draw_from(state, -5, 5);
    if (kind == MUSLIN_BLANK_LENGTHWISE) {
        piece->cut_length = draw_side(state, 40, 60);
        piece->count = draw_from(state, 0, 4);
    } else if (kind == MUSLIN_BLANK_JOINED) {
        piece->cut_width = draw_side(state, 1, 2000);
        piece->cut_length = draw_side(state, 4, 20);
        piece->count = draw_from(state, 1, 3);
        piece->join_loss = draw_side(state, 0, 10);
    } else if (kind == MUSLIN_BLANK_SLOPED) {
        piece->run_in = draw_side(state, 0, 20);
    }
    piece->kind = kind > MUSLIN_BLANK_SLOPED ? MUSLIN_BLANK_PIECE : kind;
    if (piece->kind == MUSLIN_BLANK_PIECE && draw_from(state, 0, 1))
        piece->flags = MUSLIN_BLANK_MAY_TURN;
    if (piece->kind == MUSLIN_BLANK_PIECE && piece->cut_width > widest * IN(0, 1, 4))
        piece->cut_width = widest * IN(0, 1, 4);
}

/* Flags that may stand beside each other. */
static uint32_t draw_flags(uint64_t *state, int from_stock)
{
    uint32_t flags = 0;
    for (uint32_t bit = MUSLIN_CUTPLAN_NO_PANELS; bit <= MUSLIN_CUTPLAN_BY_PRIORITY; bit *= 2)
        flags |= draw_from(state, 0, 3) == 0 ? bit : 0;
    return from_stock ? flags & ~MUSLIN_CUTPLAN_FOLDED : flags;
}

static uint32_t flags_always;

static void draw_request(uint64_t *state, int from_stock)
{
    start(&p, from_stock ? 0 : draw_side(state, 150, 180));
    p.spec.flags = draw_flags(state, from_stock) | flags_always;
    p.spec.end_loss = draw_side(state, 0, 4) + draw_from(state, 0, 1);
    p.spec.straightening = draw_side(state, 0, 4);
    p.spec.spare_pieces = draw_from(state, 0, 2);
    p.spec.print = (int32_t)(draw_from(state, 0, 3) == 0 ? MUSLIN_PRINT_ONE_WAY : MUSLIN_PRINT_NONE);
    if (draw_from(state, 0, 2) == 0) {
        p.spec.resquare_loss = draw_side(state, 1, 3);
        p.spec.resquare_every = draw_from(state, 1, 9);
    }
    for (int64_t i = draw_from(state, 1, 9); i > 0; i--)
        draw_piece(state, planned_has(&p, MUSLIN_CUTPLAN_FOLDED));
    for (int64_t i = draw_from(state, 0, 2); i > 0; i--) { /* some again */
        p.pieces[p.n] = p.pieces[draw_from(state, 0, (int64_t)p.n - 1)];
        p.n++;
    }
    for (int64_t i = from_stock ? draw_from(state, 1, 3) : 0; i > 0; i--)
        have(&p, draw_from(state, 0, 3) == 0 ? draw_from(state, 0, 9) : MUSLIN_COUNT_MAX, draw_side(state, 66, 180),
             draw_side(state, 66, 180))->cost = draw_from(state, 1, 9);
}

static int hold_the_same(const struct muslin_cutplan_strip *a, const struct muslin_cutplan_strip *b)
{
    int same = a->kind == b->kind && a->holder == b->holder && a->height == b->height && a->places == b->places &&
               (a->kind == MUSLIN_CUTPLAN_STRIP_STRIP || a->kind == MUSLIN_CUTPLAN_STRIP_WITHIN);
    for (int64_t k = 0; same && k < a->places; k++) {
        const struct muslin_cutplan_place *in_a = &p.places[a->first_place + k];
        const struct muslin_cutplan_place *in_b = &p.places[b->first_place + k];
        same = in_a->piece == in_b->piece && in_a->count == in_b->count && in_a->width == in_b->width &&
               in_a->x == in_b->x && in_a->y == in_b->y;
    }
    return same;
}

/* Pieces begin where half of the end loss is squared off, but at an edge that was slit, the highest first. A piece of stock lies nowhere
 * else. Strips that hold the same are one row, but for some apart in a piece of stock. */
static void ck_begins_and_merged(void)
{
    for (size_t i = 0; i < p.strip_count; i++) {
        const struct muslin_cutplan_strip *strip = &p.strips[i];
        const muslin_len begin = strip->x == 0 ? p.spec.end_loss / 2 : 0;
        ck_assert(strip->places == 0 || p.places[strip->first_place].x == begin);
        ck_assert(strip->kind != MUSLIN_CUTPLAN_STRIP_STOCK || strip->y == 0);
        for (int64_t k = strip->first_place + 1; k < strip->first_place + strip->places; k++)
            ck_assert(planned_has(&p, MUSLIN_CUTPLAN_STACKED) || p.places[k].height <= p.places[k - 1].height);
    }
    for (size_t i = 0; i < p.strip_count; i++)
        for (size_t k = 0; k < i; k++)
            ck_assert(!hold_the_same(&p.strips[k], &p.strips[i]) ||
                      (k + 1 < i && p.strips[i].kind == MUSLIN_CUTPLAN_STRIP_WITHIN));
}

/* Of strips as high those with the highest pieces come first. */
static void ck_highest_first(void)
{
    for (size_t i = 1; i < p.strip_count && !planned_has(&p, MUSLIN_CUTPLAN_STACKED); i++) {
        const struct muslin_cutplan_strip *a = &p.strips[i - 1];
        const struct muslin_cutplan_strip *b = &p.strips[i];
        if (a->kind == MUSLIN_CUTPLAN_STRIP_STRIP && b->kind == a->kind && a->height == b->height)
            ck_assert_int_ge(p.places[a->first_place].height, p.places[b->first_place].height);
    }
}

/* Pieces of the last size of a strip that still fit are laid beside the others, three at most; not in stacks. */
static void fill_up(const struct muslin_cutplan *plan, const struct msl_strip *strip, int64_t room)
{
    const struct msl_laid *laid = plan->found.plan.laid + strip->first;
    struct msl_laid *last = plan->found.plan.laid + strip->first + strip->count - 1;
    for (int32_t i = 0; i < strip->count; i++) {
        const struct msl_piece_size *size = &plan->cutting.sizes[laid[i].size];
        room -= size->run_in + laid[i].count * msl_taken_in(size, strip->height, NULL);
        if (laid[i].above || laid[i].other_way)
            return;
    }
    const int64_t taken = msl_taken_in(&plan->cutting.sizes[last->size], strip->height, NULL);
    for (int32_t more = 0; more < 3 && room >= taken; more++) {
        last->count++;
        room -= taken;
    }
}

/* Patterns that are cut more than once as two, of which the second, behind all others, is cut once. */
static void part_patterns(const struct msl_pool *pool, struct msl_pool *parted)
{
    *parted = *pool;
    parted->patterns = (struct msl_pattern *)calloc(2 * (size_t)pool->pattern_count + 1, sizeof *pool->patterns);
    ck_assert_ptr_nonnull(parted->patterns);
    memcpy(parted->patterns, pool->patterns, (size_t)pool->pattern_count * sizeof *pool->patterns);
    for (int32_t i = 0; i < pool->pattern_count; i++)
        if (pool->patterns[i].times > 1) {
            parted->patterns[i].times--;
            parted->patterns[parted->pattern_count] = pool->patterns[i];
            parted->patterns[parted->pattern_count++].times = 1;
        }
}

/* Pieces of a strip that holds no stacks lie from the highest on, equal ones in the order of their sizes. */
static void ck_order(const struct muslin_cutplan *plan, const struct msl_strip *strip)
{
    int64_t before = INT64_MAX;
    for (int32_t i = strip->first; i < strip->first + strip->count; i++) {
        const struct msl_laid *laid = &plan->found.plan.laid[i];
        const struct msl_piece_size *size = &plan->cutting.sizes[laid->size];
        int32_t turned;
        msl_taken_in(size, strip->height, &turned);
        const int64_t high = turned ? size->turned_along : size->along;
        ck_assert(high < before || (high == before && laid[-1].size <= laid->size));
        before = high;
    }
}

/* Turns the order of a strip's pieces round. Returns 0 where it holds a stack, which stays. */
static int turn_round(const struct muslin_cutplan *plan, const struct msl_strip *strip)
{
    struct msl_laid *laid = plan->found.plan.laid + strip->first;
    for (int32_t i = 0; i < strip->count; i++)
        if (laid[i].above || laid[i].other_way)
            return 0;
    for (int32_t i = 0, k = strip->count - 1; i < k; i++, k--) {
        const struct msl_laid moved = laid[i];
        laid[i] = laid[k];
        laid[k] = moved;
    }
    return 1;
}

/* Lays the plan out anew, with more pieces than are wanted, and from its patterns in parts. */
static void lay_with_surplus(struct muslin_cutplan *plan)
{
    struct msl_check check = msl_check_start(NULL);
    const struct msl_pool whole = plan->found.plan;
    const struct msl_pool *pool = &plan->found.plan;
    for (int32_t i = 0; i < pool->pattern_count; i++) {
        const struct msl_pattern *pattern = &pool->patterns[i];
        int64_t room = plan->cutting.ways[pattern->way].across;
        for (int32_t s = pattern->first; s < pattern->first + pattern->count; s++) {
            const struct msl_strip *strip = &pool->strips[s];
            for (int32_t k = strip->first; strip->height == 0 && k < strip->first + strip->count; k++)
                room -= pool->laid[k].count * msl_taken_in(&plan->cutting.sizes[pool->laid[k].size],
                                                           plan->cutting.ways[pattern->way].along, NULL);
            if (strip->height > 0)
                fill_up(plan, strip, room);
        }
    }
    plan->strips.used = plan->places.used = 0;
    plan->totals.pieces = plan->totals.strips = plan->totals.panels = plan->totals.stock_pieces = 0;
    plan->totals.heights = plan->totals.cuts = 0;
    for (int32_t s = 0; s < whole.strip_count; s++)
        turn_round(plan, &whole.strips[s]);
    part_patterns(&whole, &plan->found.plan);
    msl_lay_strips(&check, plan);
    free(plan->found.plan.patterns);
    plan->found.plan = whole;
    for (int32_t s = 0; s < whole.strip_count; s++)
        if (turn_round(plan, &whole.strips[s]) && turn_round(plan, &whole.strips[s]))
            ck_order(plan, &whole.strips[s]);
    msl_add_up(&check, plan);
    ck_ok(check.status);
}

static void ck_drawn(uint64_t seed, int rounds, int64_t work_limit, int from_stock, int with_surplus)
{
    int planned = 0;
    for (int round = 0; round < rounds; round++) {
        struct muslin_problem problem = PROBLEM;
        draw_request(&seed, from_stock);
        p.spec.work_limit = work_limit;
        const muslin_status status = try_plan(&p, &problem);
        if (status != MUSLIN_OK) {
            ck_assert_msg(status == MUSLIN_ERR_NO_YIELD || status == MUSLIN_ERR_NOT_ENOUGH ||
                          status == MUSLIN_ERR_WORK_LIMIT, "%s", problem.text);
            ck_assert(from_stock);
            continue;
        }
        ck_plan(&p);
        ck_begins_and_merged();
        ck_highest_first();
        if (with_surplus) {
            lay_with_surplus(p.plan);
            ck_plan(&p);
            ck_begins_and_merged();
        }
        muslin_cutplan_free(p.plan);
        planned++;
    }
    ck_assert_int_ge(planned, from_stock ? rounds / 2 : rounds);
}

START_TEST(plans_from_a_bolt_give_all_pieces)
{
    ck_drawn(1, 300, 20000, 0, 0);
}
END_TEST

START_TEST(plans_from_stock_give_all_pieces)
{
    ck_drawn(2, 300, 20000, 1, 0);
}
END_TEST

START_TEST(few_large_pieces_take_many_cases)
{
    /* Four sizes in eighths of an inch: how many strips there are of each height does not settle it. */
    static const int64_t sides[][4] = { { 18, 42, 29, 1 }, { 45, 33, 22, 0 }, { 60, 12, 22, 0 }, { 42, 60, 35, 0 } };
    start(&p, 127 * IN(0, 1, 8));
    p.spec.work_limit = 3000000;
    for (size_t i = 0; i < COUNT_OF(sides); i++)
        want(&p, sides[i][2], sides[i][0] * IN(0, 1, 8), sides[i][1] * IN(0, 1, 8))->flags = (uint32_t)sides[i][3];
    make_plan(&p);
    ck_assert_int_ge(p.totals.cases, 3);
    ck_assert_int_eq(p.totals.proven, 1);
    muslin_cutplan_free(p.plan);
}
END_TEST

START_TEST(many_rows_are_planned)
{
    uint64_t state = 3;
    start(&p, WHOLE_IN(40));
    p.spec.work_limit = 100000;
    while (p.n < PIECES)
        want(&p, draw_from(&state, 1, 40), draw_side(&state, 4, 60), draw_side(&state, 4, 60))->flags =
            (uint32_t)draw_from(&state, 0, 1);
    make_plan(&p);
    muslin_cutplan_free(p.plan);
}
END_TEST

/* 4096 million pieces an inch wide and a tick more high, 40 in each strip, in as many rows as there may be: more than
 * 2^31 pieces, and more ticks times ticks. */
START_TEST(the_most_pieces_are_planned)
{
    static struct muslin_blank_spec rows[MUSLIN_CUTPLAN_ROWS_MAX];
    struct muslin_allocator allocator;
    ck_ok(muslin_allocator_libc(&allocator));
    for (uint32_t flags = 0; flags <= MUSLIN_CUTPLAN_STACKED; flags += MUSLIN_CUTPLAN_STACKED) {
        struct muslin_cutplan_spec spec = MUSLIN_CUTPLAN_SPEC_INIT;
        struct muslin_cutplan_total totals = { .size = (uint32_t)sizeof totals };
        struct muslin_cutplan *plan = NULL;
        spec.work_limit = 100000;
        spec.flags = flags;
        for (int64_t i = 0; i < MUSLIN_CUTPLAN_ROWS_MAX; i++) {
            const struct muslin_blank_spec row = MUSLIN_BLANK_SPEC_INIT;
            rows[i] = row;
            rows[i].cut_width = WHOLE_IN(1);
            rows[i].cut_length = WHOLE_IN(1) + 1;
            rows[i].count = MUSLIN_CUTPLAN_COUNT_MAX;
        }
        ck_ok(muslin_cutplan_create(&spec, rows, sizeof rows[0], MUSLIN_CUTPLAN_ROWS_MAX, NULL, 0, 0, &allocator, NULL,
                                    NULL, &plan, NULL));
        ck_ok(muslin_cutplan_totals(plan, &totals, NULL));
        ck_assert_int_eq(totals.pieces, INT64_C(4096000000));
        ck_assert_int_eq(totals.cloth_length, (WHOLE_IN(1) + 1) * (4096000000 / 40));
        ck_assert_int_eq(totals.waste, 0);
        muslin_cutplan_free(plan);
    }
}
END_TEST

START_TEST(the_most_rows_are_planned)
{
    static struct muslin_blank_spec rows[MUSLIN_CUTPLAN_ROWS_MAX];
    struct muslin_allocator allocator;
    struct muslin_cutplan_spec spec = MUSLIN_CUTPLAN_SPEC_INIT;
    struct muslin_cutplan_total totals = { .size = (uint32_t)sizeof totals };
    struct muslin_cutplan *plan = NULL;
    ck_ok(muslin_allocator_libc(&allocator));
    spec.work_limit = 0;
    for (int64_t i = 0; i < MUSLIN_CUTPLAN_ROWS_MAX; i++) {
        const struct muslin_blank_spec row = { sizeof row, 0, 8128 + i % 7 * 1016, 8128 + i % 11 * 1016, 3, 0, 0, i, 1, 0, 0 };
        rows[i] = row;
    }
    ck_ok(muslin_cutplan_create(&spec, rows, sizeof rows[0], MUSLIN_CUTPLAN_ROWS_MAX, NULL, 0, 0, &allocator, NULL, NULL,
                                &plan, NULL));
    ck_ok(muslin_cutplan_totals(plan, &totals, NULL));
    ck_assert_int_eq(totals.pieces, 3 * MUSLIN_CUTPLAN_ROWS_MAX);
    muslin_cutplan_free(plan);
}
END_TEST

/* 40 squares of 4 in and 9 of 6 1/2 in: the last fat quarter is hardly used, and is not cut any further. */
START_TEST(strips_that_hold_nothing_are_not_cut)
{
    start(&p, 0);
    have(&p, 6, WHOLE_IN(21), WHOLE_IN(18));
    want(&p, 40, WHOLE_IN(4), WHOLE_IN(4));
    want(&p, 9, IN(6, 1, 2), IN(6, 1, 2));
    make_plan(&p);
    ck_assert_int_eq(p.totals.cost, 4);
    for (size_t i = 0; i < p.strip_count; i++)
        ck_assert(p.strips[i].places > 0 || p.strips[i].kind == MUSLIN_CUTPLAN_STRIP_STOCK);
    muslin_cutplan_free(p.plan);
}
END_TEST

/* First plans, and such as come soon after them. */
START_TEST(early_plans_give_all_pieces)
{
    ck_drawn(3, 40, 3000, 0, 1);
    ck_drawn(4, 40, 3000, 1, 1);
    flags_always = MUSLIN_CUTPLAN_STACKED;
    ck_drawn(5, 20, 3000, 0, 1);
    flags_always = 0;
}
END_TEST

/* 12 x 10, 6 x 10, 6 x 6 and 6 x 4 are 240 square inches, all of 20 in at 12: beside 6 x 10 a stack of the others, in
 * which the last lies the wider way. */
START_TEST(pieces_in_stacks_lie_the_wider_way)
{
    start(&p, WHOLE_IN(12));
    p.spec.flags = MUSLIN_CUTPLAN_STACKED;
    want(&p, 1, WHOLE_IN(12), WHOLE_IN(10));
    want(&p, 1, WHOLE_IN(6), WHOLE_IN(10));
    want(&p, 1, WHOLE_IN(6), WHOLE_IN(6));
    want(&p, 1, WHOLE_IN(6), WHOLE_IN(4))->flags = MUSLIN_BLANK_MAY_TURN;
    make_plan(&p);
    ck_assert_int_eq(p.totals.cost, WHOLE_IN(20));
    ck_assert_int_eq(p.totals.waste, 0);
    muslin_cutplan_free(p.plan);
}
END_TEST

Suite *cutplan_strips_suite(void)
{
    Suite *suite = suite_create("cutplan_strips");
    TCase *all = tcase_create("all");
    tcase_add_test(all, pieces_in_stacks_lie_the_wider_way);
    tcase_add_test(all, early_plans_give_all_pieces);
    tcase_add_test(all, strips_that_hold_nothing_are_not_cut);
    suite_add_tcase(suite, all);
    return suite;
}

void add_long_cutplan_rows(Suite *suite)
{
    TCase *rows = tcase_create("many rows");
    tcase_set_timeout(rows, 120);
    tcase_add_test(rows, plans_from_a_bolt_give_all_pieces);
    suite_add_tcase(suite, rows);
}

void add_cutplan_rows(Suite *suite)
{
    TCase *rows = tcase_create("rows");
    tcase_set_timeout(rows, 120);
    tcase_add_test(rows, plans_from_stock_give_all_pieces);
    tcase_add_test(rows, few_large_pieces_take_many_cases);
    tcase_add_test(rows, many_rows_are_planned);
    tcase_add_test(rows, the_most_pieces_are_planned);
    tcase_add_test(rows, the_most_rows_are_planned);
    suite_add_tcase(suite, rows);
}
