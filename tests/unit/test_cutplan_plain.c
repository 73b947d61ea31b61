/* test_cutplan_plain.c - what a plan says of requests in any order, and where refusals stand.
 *
 * SPDX-License-Identifier: MIT */
#include "test_cutplan_made.h"

static struct planned p;

/* ---- where refusals stand ---------------------------------------------------------------------------------------- */

static muslin_status refused(const struct muslin_allocator *allocator, struct muslin_cutplan **out,
                             struct muslin_problem *problem)
{
    return muslin_cutplan_create(&p.spec, p.pieces, sizeof p.pieces[0], p.n, p.stock, sizeof p.stock[0], p.stock_n,
                                 allocator, NULL, NULL, out, problem);
}

/* Of an allocator or output that is not there no row is named, however many rows were read; of a row that is. */
START_TEST(refusals_have_a_place_where_a_row_is_wrong)
{
    struct muslin_allocator allocator;
    struct muslin_cutplan *plan = NULL;
    ck_ok(muslin_allocator_libc(&allocator));
    start(&p, WHOLE_IN(40));
    for (int32_t i = 0; i < 3; i++)
        want(&p, 2, WHOLE_IN(5), WHOLE_IN(5));
    for (int32_t with_stock = 0; with_stock < 2; with_stock++) {
        struct muslin_problem problem = PROBLEM;
        ck_status(refused(NULL, &plan, &problem), MUSLIN_ERR_NULL);
        ck_assert_int_eq(problem.argument, MUSLIN_ARG_ALLOCATOR);
        ck_assert_int_eq(problem.at, 0);
        ck_status(refused(&allocator, NULL, &problem), MUSLIN_ERR_NULL);
        ck_assert_int_eq(problem.argument, MUSLIN_ARG_OUTPUT);
        ck_assert_int_eq(problem.at, 0);
        for (size_t row = 0; row < p.n; row++) {
            p.pieces[row].cut_width = 0;
            ck_status(refused(&allocator, &plan, &problem), MUSLIN_ERR_RANGE);
            ck_assert_int_eq(problem.at, (int64_t)row);
            p.pieces[row].cut_width = WHOLE_IN(5);
            p.pieces[row].kind = MUSLIN_BLANK_SLOPED;
            p.pieces[row].flags = MUSLIN_BLANK_MAY_TURN;
            ck_status(refused(&allocator, &plan, &problem), MUSLIN_ERR_FLAGS);
            ck_assert_int_eq(problem.at, (int64_t)row);
            ck_assert_int_eq(problem.value, MUSLIN_BLANK_MAY_TURN);
            ck_assert_int_eq(problem.limit, 0);
            p.pieces[row].kind = MUSLIN_BLANK_PIECE;
        }
        p.spec.usable_width = 0;
        for (size_t i = 0; i < 3; i++)
            have(&p, 2, WHOLE_IN(20), WHOLE_IN(20))->cost = 2;
        for (size_t row = 0; row < p.stock_n; row++) {
            p.stock[row].width = 0;
            ck_status(refused(&allocator, &plan, &problem), MUSLIN_ERR_RANGE);
            ck_assert_int_eq(problem.at, (int64_t)row);
            p.stock[row].width = WHOLE_IN(20);
        }
    }
    ck_assert_ptr_null(plan);
}
END_TEST

/* What is too much has no value that could be told, and no limit. */
START_TEST(what_is_too_much_has_no_limit)
{
    struct muslin_allocator allocator;
    struct muslin_cutplan *plan = NULL;
    struct muslin_problem problem = PROBLEM;
    ck_ok(muslin_allocator_libc(&allocator));
    start(&p, MUSLIN_SIZE_MAX); /* 2^21 square strips of 2^60 square ticks, of which one tick of width is waste */
    want(&p, 1000000, MUSLIN_SIZE_MAX / 2 + 1, MUSLIN_SIZE_MAX);
    want(&p, 1, 1, 1);
    ck_status(refused(&allocator, &plan, &problem), MUSLIN_ERR_OVERFLOW);
    ck_assert_int_eq(problem.at, 0);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_WASTE);
    ck_assert_int_eq(problem.value, 0);
    ck_assert_int_eq(problem.limit, 0);
    p.spec.spare_pieces = MUSLIN_COUNT_MAX;
    for (int64_t i = 0; i < 3; i++)
        want(&p, 7, MUSLIN_SIZE_MAX - 1 - i, MUSLIN_SIZE_MAX);
    ck_status(refused(&allocator, &plan, &problem), MUSLIN_ERR_OVERFLOW);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_PIECES);
    ck_assert_int_eq(problem.value, 7);
    ck_assert_int_eq(problem.limit, 0);
    ck_assert_ptr_null(plan);
}
END_TEST

/* 2^31 + 1 pieces, spare ones included, each from a piece of stock at 2^31 - 1: that is 2^62 - 1, the most that can be
 * counted. A joined piece of 30 from 10 wide is three strips, for which two sizes have their spare ones. */
START_TEST(as_much_as_can_be_counted)
{
    struct muslin_allocator allocator;
    struct muslin_cutplan *plan = NULL;
    struct muslin_problem problem = PROBLEM;
    ck_ok(muslin_allocator_libc(&allocator));
    for (int32_t joined = 0; joined < 2; joined++) {
        start(&p, 0);
        p.spec.work_limit = 0;
        have(&p, 1, 10, 10);
        have(&p, 1, 10, 10)->cost = MUSLIN_COUNT_MAX;
        if (joined)
            want_kind(&p, MUSLIN_BLANK_JOINED, 1, 30, 1);
        else
            want(&p, 2, 1, 1);
        p.spec.spare_pieces = joined ? MUSLIN_COUNT_MAX / 2 : MUSLIN_COUNT_MAX;
        ck_status(refused(&allocator, &plan, &problem), joined ? MUSLIN_OK : MUSLIN_ERR_NOT_ENOUGH);
        muslin_cutplan_free(plan);
        plan = NULL;
        p.pieces[0].count++;
        ck_status(refused(&allocator, &plan, &problem), MUSLIN_ERR_OVERFLOW);
        ck_assert_int_eq(problem.argument, MUSLIN_ARG_PIECES);
        ck_assert_int_eq(problem.value, p.pieces[0].count);
        ck_assert_int_eq(problem.at, 0);
        ck_assert_ptr_null(plan);
    }
}
END_TEST

/* ---- room for many rows ------------------------------------------------------------------------------------------ */

enum { MANY = 400 };

/* Of joined pieces each wants two sizes, of pieces that may turn each has two heights, and of stock that may be cut
 * along it each has two ways. */
START_TEST(many_rows_have_room)
{
    static struct muslin_blank_spec pieces[MANY];
    static struct muslin_cutplan_stock_spec stock[MANY];
    for (int32_t kind = 0; kind < 3; kind++) {
        struct failing_allocator failing;
        struct muslin_cutplan_spec spec = MUSLIN_CUTPLAN_SPEC_INIT;
        struct muslin_cutplan *plan = NULL;
        const size_t n = kind == 2 ? 1 : MANY / 2;
        const size_t stock_n = kind == 2 ? MANY : 0;
        spec.work_limit = 0;
        spec.usable_width = kind == 2 ? 0 : 4000;
        for (int64_t i = 0; i < MANY; i++) {
            const struct muslin_blank_spec piece = MUSLIN_BLANK_SPEC_INIT;
            const struct muslin_cutplan_stock_spec some = MUSLIN_CUTPLAN_STOCK_SPEC_INIT;
            pieces[i] = piece;
            pieces[i].kind = kind == 0 ? MUSLIN_BLANK_JOINED : MUSLIN_BLANK_PIECE;
            pieces[i].flags = kind == 0 ? 0 : MUSLIN_BLANK_MAY_TURN;
            pieces[i].cut_width = kind == 0 ? 5000 + i : 2000 + i;
            pieces[i].cut_length = 1000 - i;
            stock[i] = some;
            stock[i].width = 3000 + i;
            stock[i].length = 2500 - i;
        }
        const size_t first = kind == 2; /* else none fails */
        for (failing_start(&failing, first); failing.round >= first; failing_next(&failing)) {
            struct muslin_problem problem = PROBLEM;
            const muslin_status status =
                muslin_cutplan_create(&spec, pieces, sizeof pieces[0], n, stock, sizeof stock[0], stock_n,
                                      &failing.allocator, NULL, NULL, &plan, &problem);
            ck_status(status, failing.has_failed ? MUSLIN_ERR_NO_MEMORY : MUSLIN_OK);
            if (status == MUSLIN_OK)
                muslin_cutplan_free(plan);
            else
                ck_assert(problem.argument == MUSLIN_ARG_ALLOCATOR && problem.at == 0 && problem.value >= 0 &&
                          problem.limit == 0);
            ck_assert(failing_is_clean(&failing));
            if (first == 0)
                break;
        }
    }
}
END_TEST

/* As many sizes as are searched may be come to by other lengths of a joined piece, and no more. */
START_TEST(as_many_lengths_as_are_searched)
{
    static struct muslin_blank_spec pieces[MSL_SIZES_MAX];
    struct muslin_allocator allocator;
    struct muslin_cutplan_spec spec = MUSLIN_CUTPLAN_SPEC_INIT;
    const struct msl_length lengths[] = { { 9, 2 }, { 8, 1 }, { 7, 3 } };
    ck_ok(muslin_allocator_libc(&allocator));
    spec.work_limit = 0;
    spec.usable_width = 400;
    for (int32_t more = 1; more < 4; more++) {
        struct muslin_cutplan *plan = NULL;
        struct msl_check check = msl_check_start(NULL);
        for (int64_t i = 0; i < MSL_SIZES_MAX - 1; i++) {
            const struct muslin_blank_spec piece = MUSLIN_BLANK_SPEC_INIT;
            pieces[i] = piece;
            pieces[i].cut_width = 100 + i;
            pieces[i].cut_length = 3;
        }
        pieces[0].kind = MUSLIN_BLANK_JOINED; /* one strip, of 100 */
        ck_ok(muslin_cutplan_create(&spec, pieces, sizeof pieces[0], MSL_SIZES_MAX - 2, NULL, 0, 0, &allocator, NULL,
                                    NULL, &plan, NULL));
        ck_assert_uint_eq(plan->blank_count, MSL_SIZES_MAX - 2);
        ck_assert_int_eq(msl_put_lengths(&check, plan, 0, lengths, more), more <= 2);
        ck_ok(check.status);
        ck_assert_uint_eq(plan->blank_count, (uint32_t)(MSL_SIZES_MAX - 3 + (more <= 2 ? more : 1)));
        muslin_cutplan_free(plan);
    }
}
END_TEST

/* Worths of a case before the first and behind the last are refused, and the last is named. */
START_TEST(worths_of_no_case)
{
    struct failing_allocator failing;
    struct muslin_cutplan *plan = NULL;
    struct muslin_cutplan_total totals = { .size = (uint32_t)sizeof totals };
    failing_start(&failing, 0);
    start(&p, WHOLE_IN(40));
    p.spec.work_limit = 20000000;
    for (int64_t i = 0; i < 4; i++) /* that takes several cases */
        want(&p, 22 + i, (18 + 14 * i) * IN(0, 1, 8), (60 - 13 * i) * IN(0, 1, 8))->flags = MUSLIN_BLANK_MAY_TURN;
    ck_ok(refused(&failing.allocator, &plan, NULL));
    ck_ok(muslin_cutplan_totals(plan, &totals, NULL));
    const int64_t cases[] = { -1, totals.cases, totals.cases + 1, INT64_MIN, INT64_MAX };
    for (size_t i = 0; i < sizeof cases / sizeof cases[0]; i++) {
        struct muslin_problem problem = PROBLEM;
        size_t count = 7;
        int64_t scale = 7;
        ck_status(muslin_cutplan_worths(plan, cases[i], NULL, 0, 0, &count, &scale, &problem), MUSLIN_ERR_INDEX);
        ck_assert_int_eq(problem.argument, MUSLIN_ARG_PROOF_CASE);
        ck_assert_int_eq(problem.value, cases[i]);
        ck_assert_int_eq(problem.limit, totals.cases - 1);
        ck_assert(count == 7 && scale == 7);
    }
    muslin_cutplan_free(plan);
    ck_assert(failing_is_clean(&failing));
}
END_TEST

/* ---- rows in another order --------------------------------------------------------------------------------------- */

enum { OF_STOCK = 4, ORDERS = 24 };

/* The numbers 0 .. 3 in one of their orders. */
static void put_in_order(int32_t order, int32_t rows[OF_STOCK])
{
    for (int32_t i = 0; i < OF_STOCK; i++) {
        int32_t at = i == 0 ? 0 : order % (i + 1);
        order /= i + 1;
        for (int32_t k = i; k > at; k--)
            rows[k] = rows[k - 1];
        rows[at] = i;
    }
}

/* Four kinds of stock that cost the same, some as wide, some as long, some of which there are as many: whatever their
 * order, the same ways in the same order, and the same strips from them. */
START_TEST(stock_in_any_order_gives_the_same_plan)
{
    static const int64_t sides[][OF_STOCK][3] = {
        /* width, length, count */
        { { 20, 18, 1 }, { 20, 12, 3 }, { 22, 10, 2 }, { 18, 21, 1 } },
        { { 20, 18, 1 }, { 20, 18, 3 }, { 20, 18, 2 }, { 20, 12, 9 } },
        { { 20, 10, 9 }, { 19, 11, 8 }, { 18, 12, 7 }, { 17, 13, 6 } },
        { { 11, 19, 1 }, { 12, 19, 1 }, { 11, 20, 1 }, { 11, 19, 2 } },
    };
    for (size_t kind = 0; kind < sizeof sides / sizeof sides[0]; kind++) {
        static struct muslin_cutplan_way first_ways[STRIPS], ways[STRIPS];
        static struct muslin_cutplan_strip first_strips[STRIPS];
        size_t first_count = 0, count = 0, strips = 0;
        for (int32_t order = 0; order < ORDERS; order++) {
            int32_t rows[OF_STOCK];
            put_in_order(order, rows);
            start(&p, 0);
            p.spec.work_limit = 100000;
            want(&p, 5, WHOLE_IN(6), WHOLE_IN(5))->flags = MUSLIN_BLANK_MAY_TURN;
            want(&p, 4, WHOLE_IN(4), WHOLE_IN(4));
            for (int32_t i = 0; i < OF_STOCK; i++) {
                const int64_t *side = sides[kind][rows[i]];
                struct muslin_cutplan_stock_spec *stock = have(&p, side[2], WHOLE_IN(side[0]), WHOLE_IN(side[1]));
                stock->cost = 5;
                stock->label = rows[i];
            }
            make_plan(&p);
            ck_ok(muslin_cutplan_ways(p.plan, ways, sizeof ways[0], STRIPS, &count, NULL));
            for (size_t i = 0; i < count; i++)
                ways[i].stock = p.stock[ways[i].stock].label;
            for (size_t i = 0; i < p.strip_count; i++)
                if (p.strips[i].stock >= 0)
                    p.strips[i].stock = p.stock[p.strips[i].stock].label;
            if (order == 0) {
                memcpy(first_ways, ways, sizeof ways);
                memcpy(first_strips, p.strips, sizeof first_strips);
                first_count = count;
                strips = p.strip_count;
            }
            ck_assert_uint_eq(count, first_count);
            ck_assert_uint_eq(p.strip_count, strips);
            ck_assert_mem_eq(ways, first_ways, count * sizeof ways[0]);
            ck_assert_mem_eq(p.strips, first_strips, strips * sizeof first_strips[0]);
            muslin_cutplan_free(p.plan);
        }
    }
}
END_TEST

/* ---- requests of a few ticks ------------------------------------------------------------------------------------- */

/* Any piece, down to a single tick. */
static void draw_few_ticks(uint64_t *state)
{
    const int32_t kind = (int32_t)draw_from(state, 1, 6);
    struct muslin_blank_spec *piece =
        want(&p, draw_from(state, 0, 6), draw_from(state, 1, 12), draw_from(state, 1, 12));
    piece->priority = (int32_t)draw_from(state, 0, 2);
    piece->kind = kind > MUSLIN_BLANK_SLOPED ? MUSLIN_BLANK_PIECE : kind;
    if (kind == MUSLIN_BLANK_LENGTHWISE) {
        piece->cut_length = draw_from(state, 8, 20);
        piece->cut_width = draw_from(state, 1, 5);
    } else if (kind == MUSLIN_BLANK_JOINED) {
        piece->cut_width = draw_from(state, 1, 150);
        piece->join_loss = draw_from(state, 0, draw_from(state, 0, 4) == 0 ? 45 : 3);
        piece->count = draw_from(state, 1, 2);
        piece->least_part = draw_from(state, 0, 8);
    } else if (kind == MUSLIN_BLANK_SLOPED) {
        piece->run_in = draw_from(state, 0, 3);
    } else {
        piece->flags = draw_from(state, 0, 1) ? MUSLIN_BLANK_MAY_TURN : 0;
    }
}

static void draw_ticks(uint64_t *state, int from_stock)
{
    start(&p, from_stock ? 0 : draw_from(state, 18, 40));
    for (uint32_t bit = MUSLIN_CUTPLAN_NO_PANELS; bit <= MUSLIN_CUTPLAN_BY_PRIORITY; bit *= 2)
        p.spec.flags |= draw_from(state, 0, 5) == 0 ? bit : 0;
    if (from_stock)
        p.spec.flags &= ~MUSLIN_CUTPLAN_FOLDED;
    p.spec.end_loss = draw_from(state, 0, 4);
    p.spec.straightening = draw_from(state, 0, 2);
    p.spec.spare_pieces = draw_from(state, 0, 1);
    p.spec.work_limit = draw_from(state, 0, 30000);
    p.spec.print = (int32_t)(draw_from(state, 0, 3) == 0 ? MUSLIN_PRINT_ONE_WAY : MUSLIN_PRINT_NONE);
    if (draw_from(state, 0, 2) == 0) {
        p.spec.resquare_loss = draw_from(state, 1, 4);
        p.spec.resquare_every = draw_from(state, 1, 5);
    }
    for (int64_t i = draw_from(state, 1, 5); i > 0; i--)
        draw_few_ticks(state);
    for (int64_t i = draw_from(state, 0, 1); i > 0; i--) { /* some again */
        p.pieces[p.n] = p.pieces[draw_from(state, 0, (int64_t)p.n - 1)];
        p.n++;
    }
    for (int64_t i = from_stock ? draw_from(state, 1, 3) : 0; i > 0; i--)
        have(&p, draw_from(state, 0, 3) == 0 ? draw_from(state, 0, 9) : MUSLIN_COUNT_MAX, draw_from(state, 1, 30),
             draw_from(state, 1, 30))
            ->cost = draw_from(state, 1, 9);
}

/* Whether first cuts may run along the length of stock: all that is wanted may lie either way. */
static int may_be_cut_along(void)
{
    int may = p.spec.print == MUSLIN_PRINT_NONE && !planned_has(&p, MUSLIN_CUTPLAN_FIRST_CUT_ACROSS);
    for (size_t i = 0; i < p.n; i++)
        if (p.pieces[i].count > 0 && p.pieces[i].kind <= MUSLIN_BLANK_LENGTHWISE)
            may &= p.pieces[i].flags == MUSLIN_BLANK_MAY_TURN || p.pieces[i].cut_width == p.pieces[i].cut_length;
    return may;
}

static muslin_len length_left(const struct muslin_cutplan_stock_spec *stock)
{
    return stock->length > p.spec.straightening ? stock->length - p.spec.straightening : 0;
}

/* The longest strip so high from any cloth; 0 where there is none. */
static muslin_len longest_strip(muslin_len height)
{
    muslin_len longest = p.stock_n == 0 ? (p.spec.usable_width - p.spec.end_loss) / planned_layers(&p) : 0;
    for (size_t i = 0; i < p.stock_n; i++) {
        const muslin_len sides[] = { p.stock[i].width, length_left(&p.stock[i]) };
        for (int across = 0; across <= may_be_cut_along(); across++)
            if (sides[!across] >= height && sides[across] - p.spec.end_loss > longest)
                longest = sides[across] - p.spec.end_loss;
    }
    return longest > 0 ? longest : 0;
}

/* What a request is refused for: the first row that is too large, or whose joins take all of a strip. */
static muslin_status refusal_of(int64_t *row)
{
    const muslin_len share =
        p.spec.resquare_loss == 0 ? 0 : (p.spec.resquare_loss + p.spec.resquare_every - 1) / p.spec.resquare_every;
    for (size_t i = 0; i < p.n; i++) {
        const struct muslin_blank_spec *piece = &p.pieces[i];
        const int may_turn = piece->flags != 0 && p.spec.print == MUSLIN_PRINT_NONE;
        const muslin_len whole = longest_strip(piece->cut_length) * planned_layers(&p);
        *row = (int64_t)i;
        if (piece->count == 0)
            continue;
        if (piece->kind == MUSLIN_BLANK_JOINED && whole > 0 && piece->join_loss >= whole)
            return MUSLIN_ERR_RANGE;
        if (piece->kind == MUSLIN_BLANK_JOINED
                ? whole == 0
                : piece->cut_width + share + piece->run_in > longest_strip(piece->cut_length) &&
                      (!may_turn || piece->cut_length + share > longest_strip(piece->cut_width)))
            return MUSLIN_ERR_NO_YIELD;
    }
    *row = 0;
    return MUSLIN_OK;
}

/* The most room along the cloth where so much is taken across it. */
static muslin_len highest_strip(muslin_len taken)
{
    muslin_len highest = 0;
    for (size_t i = 0; i < p.stock_n; i++) {
        const muslin_len sides[] = { p.stock[i].width, length_left(&p.stock[i]) };
        for (int across = 0; across <= may_be_cut_along(); across++)
            if (sides[across] - p.spec.end_loss >= taken && sides[!across] > highest)
                highest = sides[!across];
    }
    return highest;
}

/* The side that is too large, and the room for it: of what may turn the shorter one across a bolt, and the longer one
 * across stock; where that fits, the other side is too large. */
static void ck_side(const struct muslin_blank_spec *piece, const struct muslin_problem *problem)
{
    const muslin_len share =
        p.spec.resquare_loss == 0 ? 0 : (p.spec.resquare_loss + p.spec.resquare_every - 1) / p.spec.resquare_every;
    const muslin_len sides[] = { piece->cut_width, piece->cut_length };
    const int32_t arguments[] = { MUSLIN_ARG_PIECE_WIDTH, MUSLIN_ARG_PIECE_LENGTH };
    const int may_turn = piece->flags != 0 && p.spec.print == MUSLIN_PRINT_NONE;
    const int across =
        may_turn && (p.stock_n == 0) == (piece->cut_length < piece->cut_width) && piece->cut_length != piece->cut_width;
    const muslin_len room = longest_strip(0) - share - piece->run_in;
    const int is_wide = sides[across] > room;
    ck_assert_int_eq(problem->argument, arguments[is_wide ? across : !across]);
    ck_assert_int_eq(problem->value, sides[is_wide ? across : !across]);
    ck_assert_int_eq(problem->limit,
                     is_wide ? (room > 0 ? room : 0) : highest_strip(sides[across] + share + piece->run_in));
}

/* What is joined is as long as it likes, where there is any strip; so it is too high. */
static void ck_joined_side(const struct muslin_blank_spec *piece, const struct muslin_problem *problem)
{
    const int is_high = longest_strip(0) > 0;
    ck_assert_int_eq(problem->argument, is_high ? MUSLIN_ARG_PIECE_LENGTH : MUSLIN_ARG_PIECE_WIDTH);
    ck_assert_int_eq(problem->value, is_high ? piece->cut_length : piece->cut_width);
    ck_assert_int_eq(problem->limit, is_high ? highest_strip(1) : 0);
}

/* A join must leave some of a whole strip. */
static void ck_join(const struct muslin_blank_spec *piece, const struct muslin_problem *problem)
{
    ck_assert_int_eq(problem->argument, MUSLIN_ARG_JOIN_LOSS);
    ck_assert_int_eq(problem->value, piece->join_loss);
    ck_assert_int_eq(problem->limit, longest_strip(piece->cut_length) * planned_layers(&p) - 1);
}

/* A request is refused for the row that it is wrong in, or not at all. */
static void ck_refused_as(muslin_status status, const struct muslin_problem *problem)
{
    int64_t row = 0;
    const muslin_status refusal = refusal_of(&row);
    if (refusal != MUSLIN_OK) {
        ck_status(status, refusal);
        ck_assert_int_eq(problem->at, row);
        if (refusal == MUSLIN_ERR_NO_YIELD && p.pieces[row].kind != MUSLIN_BLANK_JOINED)
            ck_side(&p.pieces[row], problem);
        else if (refusal == MUSLIN_ERR_NO_YIELD)
            ck_joined_side(&p.pieces[row], problem);
        else
            ck_join(&p.pieces[row], problem);
    } else {
        ck_assert(status == MUSLIN_OK ||
                  (p.stock_n > 0 && (status == MUSLIN_ERR_NOT_ENOUGH || status == MUSLIN_ERR_WORK_LIMIT)));
    }
}

/* A square of one tick from a bolt of two, three of which are lost at its beginning. */
START_TEST(a_single_tick)
{
    start(&p, 2);
    want(&p, 1, 1, 1);
    p.spec.straightening = 3;
    make_plan(&p);
    ck_assert_int_eq(p.totals.cost, 1);
    ck_assert_int_eq(p.totals.cloth_length, 4);
    ck_assert_int_eq(p.totals.waste, 2 * (4 * 2 - 1));
    ck_assert_int_eq(p.totals.area_bound, 1);
    muslin_cutplan_free(p.plan);
}
END_TEST

/* 12 x 10 and one tick more for squaring lie turned just in stock 11 wide and 12 long. A joined piece 9 high is too high
 * for stock 5 long, though that is only one tick wide. */
START_TEST(stock_of_just_that_size)
{
    struct muslin_allocator allocator;
    struct muslin_cutplan *plan = NULL;
    struct muslin_problem problem = PROBLEM;
    ck_ok(muslin_allocator_libc(&allocator));
    start(&p, 0);
    p.spec.flags = MUSLIN_CUTPLAN_FIRST_CUT_ACROSS;
    p.spec.resquare_loss = p.spec.resquare_every = 1;
    want(&p, 1, 12, 10)->flags = MUSLIN_BLANK_MAY_TURN;
    have(&p, 1, 11, 12);
    make_plan(&p);
    ck_assert_int_eq(p.places[0].turned, 1);
    muslin_cutplan_free(p.plan);
    start(&p, 0);
    p.spec.flags = MUSLIN_CUTPLAN_FIRST_CUT_ACROSS;
    want_kind(&p, MUSLIN_BLANK_JOINED, 1, 20, 9);
    have(&p, 1, 1, 5);
    ck_status(refused(&allocator, &plan, &problem), MUSLIN_ERR_NO_YIELD);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_PIECE_LENGTH);
    ck_assert_int_eq(problem.value, 9);
    ck_assert_int_eq(problem.limit, 5);
}
END_TEST

/* A border one tick wide is slit from a panel, beside which strips begin at once: of 17 ticks of room 16 are left, in
 * which five squares of 3 lie, four times one behind the other. */
START_TEST(beside_a_border_of_one_tick)
{
    int64_t beside = 0;
    start(&p, 21);
    p.spec.end_loss = 4;
    want_kind(&p, MUSLIN_BLANK_LENGTHWISE, 1, 1, 12);
    want(&p, 20, 3, 3);
    make_plan(&p);
    ck_assert_int_eq(p.totals.cost, 12);
    for (size_t i = 0; i < p.strip_count; i++)
        if (p.strips[i].kind == MUSLIN_CUTPLAN_STRIP_WITHIN) {
            ck_assert_int_eq(p.strips[i].x, 1 + p.spec.end_loss / 2);
            ck_assert_int_eq(p.places[p.strips[i].first_place].x, 0);
            beside += p.strips[i].times;
        }
    ck_assert_int_eq(beside, 4);
    muslin_cutplan_free(p.plan);
}
END_TEST

/* Stock has ways along it where all pieces may lie so. */
static void ck_cut_along(const struct planned *planned)
{
    static struct muslin_cutplan_way ways[STRIPS];
    size_t n = 0;
    int turned = 0;
    ck_ok(muslin_cutplan_ways(planned->plan, ways, sizeof ways[0], STRIPS, &n, NULL));
    for (size_t i = 0; i < n; i++)
        turned |= ways[i].turned;
    ck_assert(!turned || may_be_cut_along());
    for (size_t i = 0; i < planned->stock_n; i++) /* unless that comes to the same */
        if (n > 0 && n == planned->stock_n && may_be_cut_along())
            ck_assert_int_lt(llabs(planned->stock[i].width - planned->stock[i].length),
                             planned->plan->unit + planned->spec.straightening + planned->spec.end_loss);
}

/* A strip of 30 in, and three of 90 in from 40 in, of two rows: of whole strips the second row is the first that wants
 * some, two for each; 10 in are missing. Of folded cloth whole strips go round the fold, and are one size as well;
 * those of 30 in do, too; of those of 10 in there are two to a blank. */
START_TEST(sizes_name_the_first_row_that_wants_them)
{
    static const int64_t wanted[][3] = { { 40, 6, 1 }, { 30, 1, 0 }, { 10, 3, 1 } };
    struct muslin_cutplan_size rows[4];
    size_t n = 0;
    start(&p, WHOLE_IN(40));
    want_kind(&p, MUSLIN_BLANK_JOINED, 1, WHOLE_IN(30), WHOLE_IN(2));
    want_kind(&p, MUSLIN_BLANK_JOINED, 1, WHOLE_IN(90), WHOLE_IN(2));
    want_kind(&p, MUSLIN_BLANK_JOINED, 2, WHOLE_IN(90), WHOLE_IN(2));
    make_plan(&p);
    ck_ok(muslin_cutplan_sizes(p.plan, rows, sizeof rows[0], 4, &n, NULL));
    ck_assert_uint_eq(n, 3);
    for (size_t i = 0; i < n; i++) {
        ck_assert_int_eq(rows[i].taken, WHOLE_IN(wanted[i][0]));
        ck_assert_int_eq(rows[i].count, wanted[i][1]);
        ck_assert_int_eq(rows[i].piece, wanted[i][2]);
    }
    muslin_cutplan_free(p.plan);
    p.spec.flags = MUSLIN_CUTPLAN_FOLDED;
    make_plan(&p);
    ck_ok(muslin_cutplan_sizes(p.plan, rows, sizeof rows[0], 4, &n, NULL));
    ck_assert_uint_eq(n, 3);
    ck_assert_int_eq(rows[0].count + rows[1].count, 6 + 1); /* 20 in of the folded cloth each */
    ck_assert_int_eq(rows[2].count, 2);                     /* for three pieces */
    muslin_cutplan_free(p.plan);
}
END_TEST

/* Four pieces as wide and high, which may turn, are slit, level, or none of it: in any order they are the same sizes,
 * whatever their priorities. */
START_TEST(sizes_have_one_order)
{
    struct muslin_cutplan_size first[OF_STOCK], rows[OF_STOCK];
    size_t n = 0;
    for (int32_t order = 0; order < ORDERS; order++) {
        int32_t kinds[OF_STOCK];
        put_in_order(order, kinds);
        start(&p, WHOLE_IN(40));
        for (int32_t i = 0; i < OF_STOCK; i++) {
            const int32_t kind = kinds[i] == 0 ? MUSLIN_BLANK_PIECE : MUSLIN_BLANK_LENGTHWISE;
            struct muslin_blank_spec *piece = want_kind(&p, kind, 3, WHOLE_IN(6), WHOLE_IN(5));
            if (kinds[i] > 1)
                piece->kind = kinds[i] == 2 ? MUSLIN_BLANK_PIECE : MUSLIN_BLANK_SLOPED;
            piece->flags = kinds[i] == 2 ? MUSLIN_BLANK_MAY_TURN : 0;
            piece->label = kinds[i];
            piece->priority = kinds[i] * _i % 5;
        }
        p.spec.flags = _i > 0 ? MUSLIN_CUTPLAN_BY_PRIORITY : 0;
        make_plan(&p);
        ck_ok(muslin_cutplan_sizes(p.plan, rows, sizeof rows[0], OF_STOCK, &n, NULL));
        ck_assert_uint_eq(n, OF_STOCK);
        for (size_t i = 0; i < n; i++)
            rows[i].piece = p.pieces[rows[i].piece].label;
        if (order == 0)
            memcpy(first, rows, sizeof first);
        ck_assert_mem_eq(rows, first, sizeof first);
        muslin_cutplan_free(p.plan);
    }
}
END_TEST

/* What a plan of ticks says holds as well as of inches. */
START_TEST(few_ticks_are_cut_as_exactly)
{
    uint64_t state = 5 + (uint64_t)_i;
    int planned = 0;
    for (int round = 0; round < 250; round++) {
        struct muslin_problem problem = PROBLEM;
        draw_ticks(&state, _i);
        const muslin_status status = try_plan(&p, &problem);
        ck_refused_as(status, &problem);
        if (status != MUSLIN_OK)
            continue;
        ck_plan(&p);
        ck_cut_along(&p);
        muslin_cutplan_free(p.plan);
        planned++;
    }
    ck_assert_int_ge(planned, 100);
}
END_TEST

/* ---- what stock suffices for ------------------------------------------------------------------------------------- */

enum { FEW = 3 };

/* Whether there is a plan for so many of each row. */
static int suffices_for(const int64_t counts[FEW])
{
    int64_t wanted[FEW];
    for (size_t i = 0; i < p.n; i++) {
        wanted[i] = p.pieces[i].count;
        p.pieces[i].count = counts[i];
    }
    const muslin_status status = try_plan(&p, NULL);
    for (size_t i = 0; i < p.n; i++)
        p.pieces[i].count = wanted[i];
    if (status == MUSLIN_OK)
        muslin_cutplan_free(p.plan);
    else
        ck_status(status, MUSLIN_ERR_NOT_ENOUGH);
    return status == MUSLIN_OK;
}

/* Rows by priority, then the highest pieces first, then the widest. */
static int gets_pieces_before(size_t a, size_t b, int by_priority)
{
    const struct muslin_blank_spec *of_a = &p.pieces[a];
    const struct muslin_blank_spec *of_b = &p.pieces[b];
    if (by_priority && of_a->priority != of_b->priority)
        return of_a->priority < of_b->priority;
    if (of_a->cut_length != of_b->cut_length)
        return of_a->cut_length > of_b->cut_length;
    return of_a->cut_width != of_b->cut_width ? of_a->cut_width > of_b->cut_width : a < b;
}

/* As many of each row as there is a plan for beside those before it, found one piece after the other. Returns the first
 * row that is not whole; the number of rows where there is none. */
static size_t give_one_by_one(int64_t counts[FEW], int by_priority)
{
    size_t order[FEW];
    size_t first = p.n;
    for (size_t i = 0; i < p.n; i++) {
        size_t at = i;
        for (; at > 0 && gets_pieces_before(i, order[at - 1], by_priority); at--)
            order[at] = order[at - 1];
        order[at] = i;
        counts[i] = 0;
    }
    for (size_t i = 0; i < p.n; i++) {
        const size_t row = order[i];
        while (counts[row] < p.pieces[row].count) {
            counts[row]++;
            if (!suffices_for(counts)) {
                counts[row]--;
                first = first == p.n ? row : first;
                break;
            }
        }
    }
    return first;
}

/* Of what stock does not suffice for as much is made, in the order of rows, as there is a plan for; without priorities
 * the first row that is not whole is told. */
START_TEST(stock_is_given_to_rows_in_their_order)
{
    uint64_t state = 11;
    int32_t short_of = 0;
    for (int round = 0; round < 120; round++) {
        struct muslin_problem problem = PROBLEM;
        int64_t counts[FEW];
        start(&p, 0);
        p.spec.work_limit = 10000000;
        for (int64_t i = draw_from(&state, 1, FEW); i > 0; i--)
            want(&p, draw_from(&state, 1, 5), draw_from(&state, 1, 5), draw_from(&state, 1, 5))->priority =
                (int32_t)draw_from(&state, 0, 1);
        for (int64_t i = draw_from(&state, 1, 2); i > 0; i--)
            have(&p, draw_from(&state, 1, 2), draw_from(&state, 5, 8), draw_from(&state, 5, 8));
        const size_t first = give_one_by_one(counts, 0);
        const muslin_status status = try_plan(&p, &problem);
        ck_status(status, first == p.n ? MUSLIN_OK : MUSLIN_ERR_NOT_ENOUGH);
        if (status == MUSLIN_OK) {
            muslin_cutplan_free(p.plan);
            continue;
        }
        ck_assert_int_eq(problem.argument, MUSLIN_ARG_PIECES);
        ck_assert_int_eq(problem.at, (int64_t)first);
        ck_assert_int_eq(problem.value, p.pieces[first].count);
        ck_assert_int_eq(problem.limit, counts[first]);
        give_one_by_one(counts, 1);
        p.spec.flags = MUSLIN_CUTPLAN_BY_PRIORITY;
        make_plan(&p);
        for (size_t i = 0; i < p.n; i++)
            ck_assert_int_eq(p.made[i].made, counts[i]);
        muslin_cutplan_free(p.plan);
        short_of++;
    }
    ck_assert_int_gt(short_of, 20);
}
END_TEST

/* ---- plans that are told one after the other --------------------------------------------------------------------- */

struct heard {
    int64_t calls;
    int64_t sum;
    int32_t answer;
};

static int32_t hear(void *context, int64_t work, int64_t best, int64_t bound)
{
    struct heard *heard = context;
    heard->calls++;
    heard->sum += 100 * work + 10 * best + bound;
    return heard->answer;
}

/* Once it was ended, nobody is told any more, and all is ended. */
START_TEST(what_is_ended_stays_so)
{
    struct heard heard = { 0, 0, 0 };
    struct msl_tellings tellings = { hear, &heard, 0 };
    ck_assert_int_eq(msl_tell_in_turn(&tellings, 3, 2, 1), 0);
    ck_assert_int_eq(msl_tell_in_turn(&tellings, 6, 5, 4), 0);
    ck_assert_int_eq(heard.calls, 2);
    ck_assert_int_eq(heard.sum, 321 + 654);
    for (heard.answer = 1; heard.answer > -2; heard.answer -= 2) {
        tellings.ended = 0;
        heard.calls = 0;
        for (int32_t times = 0; times < 3; times++)
            ck_assert_int_eq(msl_tell_in_turn(&tellings, 1, 1, 1), heard.answer);
        ck_assert_int_eq(heard.calls, 1);
    }
}
END_TEST

Suite *cutplan_plain_suite(void)
{
    Suite *suite = suite_create("cutplan_plain");
    TCase *tcase = tcase_create("plain");
    tcase_set_timeout(tcase, 60);
    tcase_add_test(tcase, refusals_have_a_place_where_a_row_is_wrong);
    tcase_add_test(tcase, what_is_too_much_has_no_limit);
    tcase_add_test(tcase, as_much_as_can_be_counted);
    tcase_add_test(tcase, many_rows_have_room);
    tcase_add_test(tcase, as_many_lengths_as_are_searched);
    tcase_add_test(tcase, worths_of_no_case);
    tcase_add_test(tcase, a_single_tick);
    tcase_add_test(tcase, stock_of_just_that_size);
    tcase_add_test(tcase, beside_a_border_of_one_tick);
    tcase_add_test(tcase, sizes_name_the_first_row_that_wants_them);
    tcase_add_loop_test(tcase, sizes_have_one_order, 0, 5);
    tcase_add_test(tcase, stock_in_any_order_gives_the_same_plan);
    tcase_add_loop_test(tcase, few_ticks_are_cut_as_exactly, 0, 2);
    tcase_add_test(tcase, stock_is_given_to_rows_in_their_order);
    tcase_add_test(tcase, what_is_ended_stays_so);
    suite_add_tcase(suite, tcase);
    return suite;
}
