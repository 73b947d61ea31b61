/* test_cutplan_request.c - what a cutting plan refuses, and how it says so; structs, rows, memory.
 *
 * SPDX-License-Identifier: MIT */
#include "test_cutplan_made.h"

static struct planned p;

static void ck_said(muslin_status status, int32_t argument, int64_t at, const char *text)
{
    struct muslin_problem problem = PROBLEM;
    p.plan = NULL;
    ck_status(try_plan(&p, &problem), status);
    ck_assert_int_eq(problem.argument, argument);
    ck_assert_int_eq(problem.at, at);
    if (text != NULL)
        ck_assert_str_eq(problem.text, text);
    ck_assert_ptr_null(p.plan);
}

/* A plan of the spec, and its totals. */
static muslin_status totals_of(const void *spec, void *out, struct muslin_problem *problem)
{
    struct muslin_allocator allocator;
    struct muslin_cutplan *plan = NULL;
    ck_ok(muslin_allocator_libc(&allocator));
    muslin_status status = muslin_cutplan_create(spec, p.pieces, sizeof p.pieces[0], p.n, p.stock, sizeof p.stock[0],
                                                 p.stock_n, &allocator, NULL, NULL, &plan, problem);
    if (status == MUSLIN_OK)
        status = muslin_cutplan_totals(plan, out, problem);
    muslin_cutplan_free(plan);
    return status;
}

static void start_squares(void)
{
    start(&p, WHOLE_IN(40));
    want(&p, 20, WHOLE_IN(5), WHOLE_IN(5));
}

START_TEST(specs_and_totals_follow_the_rules_of_structs)
{
    start_squares();
    const struct ruled ruled = RULED(totals_of, p.spec, muslin_cutplan_total);
    ck_struct_rules(&ruled);
}
END_TEST

#define SPEC_OUTSIDE(member, least, most, argument) \
    OUTSIDE(muslin_cutplan_spec, member, INT64_C(least), most, MUSLIN_ARG_##argument)
START_TEST(members_out_of_their_range_are_named)
{
    static const struct refusal refusals[] = {
        SPEC_OUTSIDE(usable_width, 1, MUSLIN_SIZE_MAX, USABLE_WIDTH),
        SPEC_OUTSIDE(end_loss, 0, MUSLIN_SIZE_MAX, END_LOSS),
        SPEC_OUTSIDE(straightening, 0, MUSLIN_SIZE_MAX, STRAIGHTENING),
        SPEC_OUTSIDE(spare_pieces, 0, MUSLIN_COUNT_MAX, SPARE_PIECES),
        SPEC_OUTSIDE(work_limit, 0, INT64_C(1) << 40, WORK_LIMIT),
        SPEC_OUTSIDE(resquare_every, 0, 0, RESQUARE_EVERY),
        NOT_A_CHOICE(muslin_cutplan_spec, print, MUSLIN_PRINT_STRIPE_ACROSS, MUSLIN_ARG_PRINT_DIRECTION),
        REFUSAL(muslin_cutplan_spec, pad, 1, MUSLIN_ERR_STRUCT_TAIL, MUSLIN_ARG_SPEC),
        REFUSAL(muslin_cutplan_spec, resquare_loss, -1, MUSLIN_ERR_RANGE, MUSLIN_ARG_RESQUARE_LOSS),
        REFUSAL(muslin_cutplan_spec, resquare_loss, MUSLIN_SIZE_MAX + 1, MUSLIN_ERR_RANGE, MUSLIN_ARG_RESQUARE_LOSS)
    };
    start_squares();
    const struct ruled ruled = RULED(totals_of, p.spec, muslin_cutplan_total);
    ck_refusals(&ruled, refusals, COUNT_OF(refusals));
    p.spec.resquare_every = 1;
    ck_said(MUSLIN_ERR_RANGE, MUSLIN_ARG_RESQUARE_EVERY, 0,
            "Cuts between re-squarings are 1, but must be 0 where re-squaring loses nothing.");
    p.spec.resquare_every = 0;
    p.spec.resquare_loss = 1;
    ck_said(MUSLIN_ERR_RANGE, MUSLIN_ARG_RESQUARE_EVERY, 0, "Cuts between re-squarings are 0, but must be at least 1.");
    have(&p, 1, 1, 1);
    p.spec.resquare_loss = 0;
    ck_said(MUSLIN_ERR_RANGE, MUSLIN_ARG_USABLE_WIDTH, 0,
            "Usable width is 40 in, but must be 0 with stock, which has widths of its own.");
    p.spec.usable_width = 0;
    p.spec.flags = MUSLIN_CUTPLAN_FOLDED;
    ck_said(MUSLIN_ERR_FLAGS, MUSLIN_ARG_SPEC, 0, "Flags of the spec are 32, but the flags known here add up to 95.");
}
END_TEST

/* A call of one row, that stands second. */
static muslin_status plan_of_row(const void *spec, void *out, struct muslin_problem *problem)
{
    struct muslin_allocator allocator;
    struct muslin_cutplan *plan = NULL;
    struct muslin_blank_spec rows[2];
    memcpy(&rows[0], p.pieces, sizeof rows[0]);
    memcpy(&rows[1], spec, sizeof rows[1]);
    ck_ok(muslin_allocator_libc(&allocator));
    muslin_status status = muslin_cutplan_create(&p.spec, rows, sizeof rows[0], 2, NULL, 0, 0, &allocator, NULL, NULL,
                                                 &plan, problem);
    if (status == MUSLIN_OK)
        status = muslin_cutplan_totals(plan, out, problem);
    muslin_cutplan_free(plan);
    return status;
}

#define PIECE_OUTSIDE(member, least, most, argument) \
    OUTSIDE(muslin_blank_spec, member, INT64_C(least), most, MUSLIN_ARG_##argument)
#define PIECE_NOT_32(member, value, argument) \
    REFUSAL(muslin_blank_spec, member, value, MUSLIN_ERR_RANGE, MUSLIN_ARG_##argument)
START_TEST(members_of_pieces_out_of_their_range_are_named)
{
    static const struct refusal refusals[] = {
        PIECE_OUTSIDE(cut_width, 1, MUSLIN_SIZE_MAX, PIECE_WIDTH),
        PIECE_OUTSIDE(cut_length, 1, MUSLIN_SIZE_MAX, PIECE_LENGTH),
        PIECE_OUTSIDE(count, 0, MUSLIN_CUTPLAN_COUNT_MAX, PIECES),
        PIECE_OUTSIDE(run_in, 0, 0, RUN_IN),
        PIECE_OUTSIDE(join_loss, 0, 0, JOIN_LOSS),
        PIECE_OUTSIDE(least_part, 0, 0, LEAST_PART),
        PIECE_NOT_32(priority, -1, PRIORITY),
        PIECE_NOT_32(priority, 1001, PRIORITY),
        NOT_A_CHOICE(muslin_blank_spec, kind, MUSLIN_BLANK_SLOPED, MUSLIN_ARG_BLANK_KIND)
    };
    static const struct refusal of_sloped[] = { PIECE_OUTSIDE(run_in, 0, MUSLIN_SIZE_MAX, RUN_IN) };
    static const struct refusal of_joined[] = { PIECE_OUTSIDE(join_loss, 0, MUSLIN_SIZE_MAX, JOIN_LOSS),
                                                PIECE_OUTSIDE(least_part, 0, MUSLIN_SIZE_MAX, LEAST_PART) };
    start_squares();
    struct muslin_blank_spec piece = p.pieces[0];
    const struct ruled ruled = RULED(plan_of_row, piece, muslin_cutplan_total);
    ck_refusals_at(&ruled, 1, refusals, COUNT_OF(refusals));
    piece.kind = MUSLIN_BLANK_SLOPED;
    ck_refusals_at(&ruled, 1, of_sloped, COUNT_OF(of_sloped));
    piece.kind = MUSLIN_BLANK_JOINED;
    ck_refusals_at(&ruled, 1, of_joined, COUNT_OF(of_joined));
    for (int32_t kind = MUSLIN_BLANK_LENGTHWISE; kind <= MUSLIN_BLANK_SLOPED; kind++) {
        struct muslin_problem problem = PROBLEM;
        struct muslin_cutplan_total totals = { .size = (uint32_t)sizeof totals };
        piece.kind = kind;
        piece.flags = MUSLIN_BLANK_MAY_TURN;
        ck_status(plan_of_row(&piece, &totals, &problem), MUSLIN_ERR_FLAGS);
        ck_assert_int_eq(problem.at, 1);
    }
    want(&p, 1000000000, WHOLE_IN(1), WHOLE_IN(1));
    ck_said(MUSLIN_ERR_RANGE, MUSLIN_ARG_PIECES, 1, "Number of pieces is 1000000000, but must be at most 1000000.");
    p.pieces[1].count = 1;
    p.pieces[1].run_in = WHOLE_IN(1);
    ck_said(MUSLIN_ERR_RANGE, MUSLIN_ARG_RUN_IN, 1,
            "Run-in of a sloped piece is 1 in, but must be 0 of a piece that is not sloped.");
    p.pieces[1].run_in = 0;
    p.pieces[1].join_loss = WHOLE_IN(1);
    ck_said(MUSLIN_ERR_RANGE, MUSLIN_ARG_JOIN_LOSS, 1,
            "Loss per join is 1 in, but must be 0 of a piece that is not joined.");
}
END_TEST

START_TEST(stock_out_of_its_range_is_named)
{
    start(&p, 0);
    want(&p, 1, 1, 1);
    struct muslin_cutplan_stock_spec *stock = have(&p, 1, 0, 1);
    ck_said(MUSLIN_ERR_RANGE, MUSLIN_ARG_STOCK_SIDE, 0, "Side of a piece of stock is 0 in, but must be more than 0 in.");
    stock->width = 1;
    stock->length = MUSLIN_SIZE_MAX + 1;
    ck_said(MUSLIN_ERR_RANGE, MUSLIN_ARG_STOCK_SIDE, 0, NULL);
    stock->length = 1;
    stock->cost = 0;
    ck_said(MUSLIN_ERR_RANGE, MUSLIN_ARG_STOCK_COST, 0, "Cost of a piece of stock is 0, but must be at least 1.");
    stock->cost = 1;
    stock->count = -1;
    ck_said(MUSLIN_ERR_RANGE, MUSLIN_ARG_STOCK_COUNT, 0, "Number of pieces of stock is -1, but must be at least 0.");
    stock->count = 1;
    stock->flags = 1;
    ck_said(MUSLIN_ERR_FLAGS, MUSLIN_ARG_ROWS, 0, NULL);
    stock->flags = 0;
    have(&p, 1, -1, 1);
    ck_said(MUSLIN_ERR_RANGE, MUSLIN_ARG_STOCK_SIDE, 1, NULL);
}
END_TEST

static void ck_rows_said(size_t row_size, size_t n, size_t stock_size, size_t stock_n, muslin_status status,
                         int32_t argument)
{
    struct muslin_problem problem = PROBLEM;
    struct muslin_allocator allocator;
    ck_ok(muslin_allocator_libc(&allocator));
    ck_status(muslin_cutplan_create(&p.spec, p.pieces, row_size, n, stock_n > 0 ? p.stock : NULL, stock_size, stock_n,
                                    &allocator, NULL, NULL, &p.plan, &problem), status);
    ck_assert_int_eq(problem.argument, argument);
}

START_TEST(arrays_follow_the_rules_of_rows)
{
    struct muslin_problem problem = PROBLEM;
    struct muslin_allocator allocator;
    const size_t piece = sizeof p.pieces[0];
    ck_ok(muslin_allocator_libc(&allocator));
    start_squares();
    ck_rows_said(piece, 10000, 0, 0, MUSLIN_ERR_RANGE, MUSLIN_ARG_ROWS);
    ck_rows_said(piece, SIZE_MAX, 0, 0, MUSLIN_ERR_RANGE, MUSLIN_ARG_ROWS);
    ck_status(muslin_cutplan_create(&p.spec, p.pieces, piece, 10000, NULL, 0, 0, &allocator, NULL, NULL, &p.plan,
                                    &problem), MUSLIN_ERR_RANGE);
    ck_assert_str_eq(problem.text, "Rows are 10000, but must be at most 4096.");
    ck_rows_said(piece - 1, 1, 0, 0, MUSLIN_ERR_STRUCT_SIZE, MUSLIN_ARG_ROW_SIZE);
    p.pieces[0].size++;
    ck_rows_said(piece, 1, 0, 0, MUSLIN_ERR_STRUCT_SIZE, MUSLIN_ARG_ROWS);
    p.pieces[0].size--;
    ck_status(muslin_cutplan_create(&p.spec, NULL, piece, 1, NULL, 0, 0, &allocator, NULL, NULL, &p.plan, &problem),
              MUSLIN_ERR_NULL);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_ROWS);
    p.spec.usable_width = 0;
    ck_rows_said(piece, 1, sizeof p.stock[0], 4097, MUSLIN_ERR_RANGE, MUSLIN_ARG_STOCK_ROWS);
    ck_rows_said(piece, 1, 8, 1, MUSLIN_ERR_STRUCT_SIZE, MUSLIN_ARG_ROW_SIZE);
    ck_status(muslin_cutplan_create(&p.spec, p.pieces, piece, 1, NULL, sizeof p.stock[0], 1, &allocator, NULL, NULL,
                                    &p.plan, &problem), MUSLIN_ERR_NULL);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_STOCK_ROWS);
    p.spec.usable_width = 1;
    ck_status(muslin_cutplan_create(&p.spec, p.pieces, piece, 1, NULL, 0, 0, NULL, NULL, NULL, &p.plan, &problem),
              MUSLIN_ERR_NULL);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_ALLOCATOR);
    ck_status(muslin_cutplan_create(&p.spec, p.pieces, piece, 1, NULL, 0, 0, &allocator, NULL, NULL, NULL, &problem),
              MUSLIN_ERR_NULL);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_OUTPUT);
}
END_TEST

START_TEST(pieces_too_large_are_named_with_their_row)
{
    start_squares();
    want(&p, 1, WHOLE_IN(41), WHOLE_IN(5));
    ck_said(MUSLIN_ERR_NO_YIELD, MUSLIN_ARG_PIECE_WIDTH, 1,
            "Cut width of a piece is 41 in, but there is room for at most 40 in.");
    p.pieces[1].flags = MUSLIN_BLANK_MAY_TURN;
    make_plan(&p);
    muslin_cutplan_free(p.plan);
    p.pieces[1].cut_length = WHOLE_IN(42);
    ck_said(MUSLIN_ERR_NO_YIELD, MUSLIN_ARG_PIECE_WIDTH, 1,
            "Cut width of a piece is 41 in, but there is room for at most 40 in.");
    p.spec.print = MUSLIN_PRINT_TWO_WAY;
    p.pieces[1].cut_length = WHOLE_IN(5);
    ck_said(MUSLIN_ERR_NO_YIELD, MUSLIN_ARG_PIECE_WIDTH, 1, NULL);
    p.pieces[1].cut_width = WHOLE_IN(38);
    p.spec.end_loss = WHOLE_IN(3);
    ck_said(MUSLIN_ERR_NO_YIELD, MUSLIN_ARG_PIECE_WIDTH, 1,
            "Cut width of a piece is 38 in, but there is room for at most 37 in.");
    p.spec.end_loss = WHOLE_IN(50);
    ck_said(MUSLIN_ERR_NO_YIELD, MUSLIN_ARG_PIECE_WIDTH, 0,
            "Cut width of a piece is 5 in, but there is room for at most 0 in.");
    p.n = 0;
    want_kind(&p, MUSLIN_BLANK_JOINED, 1, WHOLE_IN(90), WHOLE_IN(2));
    ck_said(MUSLIN_ERR_NO_YIELD, MUSLIN_ARG_PIECE_WIDTH, 0,
            "Cut width of a piece is 90 in, but there is room for at most 0 in.");
    p.spec.end_loss = 0;
    p.pieces[0].join_loss = WHOLE_IN(40);
    ck_said(MUSLIN_ERR_RANGE, MUSLIN_ARG_JOIN_LOSS, 0, NULL);
    p.n = 0;
    want_kind(&p, MUSLIN_BLANK_SLOPED, 1, WHOLE_IN(30), WHOLE_IN(2))->run_in = WHOLE_IN(11);
    ck_said(MUSLIN_ERR_NO_YIELD, MUSLIN_ARG_PIECE_WIDTH, 0,
            "Cut width of a piece is 30 in, but there is room for at most 29 in.");
    p.n = 0; /* eighths for re-squaring are no part of the piece: the room is less */
    p.spec.resquare_loss = IN(0, 1, 4);
    p.spec.resquare_every = 2;
    want(&p, 1, WHOLE_IN(40), WHOLE_IN(2));
    ck_said(MUSLIN_ERR_NO_YIELD, MUSLIN_ARG_PIECE_WIDTH, 0,
            "Cut width of a piece is 40 in, but there is room for at most 39 7/8 in.");
    p.n = 0; /* 41 in of length fit nowhere, turned either; the shorter side is told */
    p.spec.print = MUSLIN_PRINT_NONE;
    want(&p, 1, WHOLE_IN(42), WHOLE_IN(41))->flags = MUSLIN_BLANK_MAY_TURN;
    ck_said(MUSLIN_ERR_NO_YIELD, MUSLIN_ARG_PIECE_LENGTH, 0,
            "Cut length of a piece is 41 in, but there is room for at most 39 7/8 in.");
    p.pieces[0].cut_width = 10000 * MUSLIN_TICKS_PER_MM;
    p.pieces[0].flags = 0;
    p.spec.resquare_loss = p.spec.resquare_every = 0;
    ck_said(MUSLIN_ERR_NO_YIELD, MUSLIN_ARG_PIECE_WIDTH, 0,
            "Cut width of a piece is 10000 mm, but there is room for at most 1016 mm.");
}
END_TEST

START_TEST(pieces_too_large_for_stock_are_named_with_the_side)
{
    start(&p, 0);
    have(&p, 3, WHOLE_IN(21), WHOLE_IN(18));
    want(&p, 1, WHOLE_IN(22), WHOLE_IN(5))->flags = MUSLIN_BLANK_MAY_TURN;
    ck_said(MUSLIN_ERR_NO_YIELD, MUSLIN_ARG_PIECE_WIDTH, 0,
            "Cut width of a piece is 22 in, but there is room for at most 21 in.");
    p.pieces[0].cut_width = WHOLE_IN(20);
    p.pieces[0].cut_length = WHOLE_IN(19);
    ck_said(MUSLIN_ERR_NO_YIELD, MUSLIN_ARG_PIECE_LENGTH, 0,
            "Cut length of a piece is 19 in, but there is room for at most 18 in.");
    p.pieces[0].cut_width = WHOLE_IN(19);
    p.pieces[0].cut_length = WHOLE_IN(20);
    ck_said(MUSLIN_ERR_NO_YIELD, MUSLIN_ARG_PIECE_WIDTH, 0,
            "Cut width of a piece is 19 in, but there is room for at most 18 in.");
    p.pieces[0].cut_width = WHOLE_IN(20);
    p.pieces[0].kind = MUSLIN_BLANK_JOINED;
    p.pieces[0].flags = 0;
    p.pieces[0].cut_length = WHOLE_IN(22);
    ck_said(MUSLIN_ERR_NO_YIELD, MUSLIN_ARG_PIECE_LENGTH, 0,
            "Cut length of a piece is 22 in, but there is room for at most 21 in.");
    p.spec.end_loss = WHOLE_IN(30);
    ck_said(MUSLIN_ERR_NO_YIELD, MUSLIN_ARG_PIECE_WIDTH, 0,
            "Cut width of a piece is 20 in, but there is room for at most 0 in.");
    p.spec.end_loss = 0;
    p.spec.straightening = WHOLE_IN(30);
    ck_said(MUSLIN_ERR_NO_YIELD, MUSLIN_ARG_PIECE_LENGTH, 0, NULL);
}
END_TEST

START_TEST(requests_beyond_all_cloth_are_refused)
{
    start(&p, MUSLIN_SIZE_MAX);
    p.spec.spare_pieces = MUSLIN_COUNT_MAX;
    for (int64_t i = 0; i < 3; i++)
        want(&p, 1, MUSLIN_SIZE_MAX - i, MUSLIN_SIZE_MAX);
    ck_said(MUSLIN_ERR_OVERFLOW, MUSLIN_ARG_PIECES, 1, NULL);
    start(&p, 0);
    p.spec.spare_pieces = MUSLIN_COUNT_MAX;
    have(&p, 1, 10, 10)->cost = MUSLIN_COUNT_MAX;
    want(&p, 1, 1, 1);
    want(&p, 1, 2, 2);
    ck_said(MUSLIN_ERR_OVERFLOW, MUSLIN_ARG_PIECES, 1, NULL);
    start(&p, MUSLIN_SIZE_MAX); /* 2^21 square strips of 2^60 square ticks, of which one tick of width is waste */
    want(&p, 1000000, MUSLIN_SIZE_MAX / 2 + 1, MUSLIN_SIZE_MAX);
    ck_said(MUSLIN_ERR_OVERFLOW, MUSLIN_ARG_WASTE, 0, NULL);
}
END_TEST

START_TEST(every_allocation_may_fail)
{
    struct failing_allocator failing;
    start_squares();
    for (int32_t request = 0; request < 3; request++) {
        p.spec.work_limit = 2000;
        EVERY_ALLOCATION_FAILS_ONCE(failing) {
            struct muslin_problem problem = PROBLEM;
            p.plan = NULL;
            const muslin_status status = plan_with(&p, &failing.allocator, &problem);
            if (status == MUSLIN_ERR_NO_MEMORY) {
                ck_assert_ptr_null(p.plan);
                ck_assert_int_eq(problem.status, status);
                ck_assert_int_eq(problem.argument, MUSLIN_ARG_ALLOCATOR);
                ck_assert(problem.at == 0 && problem.value >= 0 && problem.limit == 0);
            } else {
                ck_ok(status); /* a search may do with less */
            }
            muslin_cutplan_free(p.plan);
            ck_assert(failing_is_clean(&failing));
        }
        if (request == 0) {
            want(&p, 20, WHOLE_IN(4), WHOLE_IN(6))->flags = MUSLIN_BLANK_MAY_TURN;
            want_kind(&p, MUSLIN_BLANK_LENGTHWISE, 2, WHOLE_IN(4), WHOLE_IN(50));
        } else {
            p.spec.flags = MUSLIN_CUTPLAN_BY_PRIORITY;
            p.spec.usable_width = 0;
            p.pieces[0].count = 1; /* that suffices: another row is short, and no place of what memory is wanting for */
            p.stock_n = 0;
            have(&p, 1, WHOLE_IN(22), WHOLE_IN(60));
        }
    }
}
END_TEST

/* Stock a tick wide joins as well as any, a tick for each strip: so high it is cut, and no higher. */
START_TEST(a_joined_piece_is_as_high_as_the_longest_stock)
{
    struct muslin_problem problem = PROBLEM;
    start(&p, 0);
    have(&p, 3, 1, 100);
    have(&p, 3, 50, 20);
    want_kind(&p, MUSLIN_BLANK_JOINED, 1, 3, 101);
    ck_status(try_plan(&p, &problem), MUSLIN_ERR_NO_YIELD);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_PIECE_LENGTH);
    ck_assert(problem.value == 101 && problem.limit == 100);
    p.pieces[0].cut_length = 100;
    ck_ok(try_plan(&p, &problem));
    read_plan(&p);
    ck_assert_int_eq(p.totals.cost, 3);
    muslin_cutplan_free(p.plan);
}
END_TEST

START_TEST(rows_are_read_without_memory_or_refused)
{
    struct failing_allocator failing;
    struct muslin_cutplan_width widths[3];
    struct muslin_cutplan_left_over left[60];
    start_squares();
    EVERY_ALLOCATION_FAILS_ONCE(failing) {
        const size_t round = failing.round;
        size_t count = 777;
        failing.round = 0;
        ck_ok(plan_with(&p, &failing.allocator, NULL));
        failing.calls = 0;
        failing.round = round;
        const muslin_status status = muslin_cutplan_widths(p.plan, WHOLE_IN(38), WHOLE_IN(42), 3, NULL, NULL, widths,
                                                           sizeof widths[0], 3, &count, NULL);
        ck_status(status, failing.has_failed ? MUSLIN_ERR_NO_MEMORY : MUSLIN_OK);
        ck_assert_uint_eq(count, failing.has_failed ? 777 : 3);
        muslin_cutplan_free(p.plan);
        ck_assert(failing_is_clean(&failing));
    }
    EVERY_ALLOCATION_FAILS_ONCE(failing) {
        const size_t round = failing.round;
        size_t count = 777;
        failing.round = 0;
        ck_ok(plan_with(&p, &failing.allocator, NULL));
        failing.calls = 0;
        failing.round = round;
        const muslin_status status = muslin_cutplan_left_overs(p.plan, 0, left, sizeof left[0], 60, &count, NULL);
        ck_status(status, failing.has_failed ? MUSLIN_ERR_NO_MEMORY : MUSLIN_OK);
        ck_assert((count == 777) == failing.has_failed);
        muslin_cutplan_free(p.plan);
        ck_assert(failing_is_clean(&failing));
    }
}
END_TEST

/* ---- rows that come out ----------------------------------------------------------------------------------------- */

typedef muslin_status rows_call(const struct muslin_cutplan *plan, void *rows, size_t row_size, size_t capacity,
                                size_t *count, struct muslin_problem *problem);

#define ROWS_CALL(of, ...)                                                                                           \
    static muslin_status of##_rows(const struct muslin_cutplan *plan, void *rows, size_t row_size, size_t capacity, \
                                   size_t *count, struct muslin_problem *problem)                                   \
    {                                                                                                                \
        int64_t scale = 0;                                                                                           \
        (void)scale;                                                                                                 \
        return muslin_cutplan_##of(__VA_ARGS__ problem);                                                             \
    }

ROWS_CALL(strips, plan, rows, row_size, capacity, count,)
ROWS_CALL(places, plan, rows, row_size, capacity, count,)
ROWS_CALL(left_overs, plan, 0, rows, row_size, capacity, count,)
ROWS_CALL(pieces, plan, rows, row_size, capacity, count,)
ROWS_CALL(widths, plan, WHOLE_IN(40), WHOLE_IN(41), 2, NULL, NULL, rows, row_size, capacity, count,)
ROWS_CALL(sizes, plan, rows, row_size, capacity, count,)
ROWS_CALL(ways, plan, rows, row_size, capacity, count,)
ROWS_CALL(cases, plan, rows, row_size, capacity, count,)
ROWS_CALL(worths, plan, 0, rows, row_size, capacity, count, &scale,)
ROWS_CALL(stock, plan, rows, row_size, capacity, count,)

enum { ROWS = 40 };

static void ck_rows(rows_call *call, const struct muslin_cutplan *plan, size_t known)
{
    static union roomy rows[ROWS];
    const unsigned char *bytes = rows[0].bytes;
    struct muslin_problem problem = PROBLEM;
    size_t count = 0;
    ck_status(call(NULL, rows, known, ROWS, &count, &problem), MUSLIN_ERR_NULL);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_CUTPLAN);
    ck_status(call(plan, rows, known, ROWS, NULL, NULL), MUSLIN_ERR_NULL);
    ck_ok(call(plan, NULL, 0, 0, &count, NULL));
    const size_t needed = count;
    ck_assert_uint_ge(needed, 1);
    ck_assert_uint_le(needed, ROWS);
    ck_status(call(plan, NULL, known, ROWS, &count, NULL), MUSLIN_ERR_NULL);
    ck_status(call(plan, rows, known - 8, ROWS, &count, NULL), MUSLIN_ERR_STRUCT_SIZE);
    if (needed > 1)
        ck_status(call(plan, rows, known, needed - 1, &count, &problem), MUSLIN_ERR_BUFFER);
    memset(rows, FILL, sizeof rows);
    ck_ok(call(plan, rows, known + 8, needed, &count, NULL));
    ck_assert_uint_eq(rows[0].head[0], known + 8);
    ck_assert_uint_eq(rows[0].head[1], 0);
    for (size_t i = needed * (known + 8); i < sizeof rows[0]; i++)
        ck_assert_uint_eq(bytes[i], FILL);
}

START_TEST(rows_follow_the_rules_of_arrays)
{
    start_squares();
    want(&p, 3, WHOLE_IN(3), WHOLE_IN(7));
    make_plan(&p);
    ck_rows(strips_rows, p.plan, sizeof(struct muslin_cutplan_strip));
    ck_rows(places_rows, p.plan, sizeof(struct muslin_cutplan_place));
    ck_rows(left_overs_rows, p.plan, sizeof(struct muslin_cutplan_left_over));
    ck_rows(pieces_rows, p.plan, sizeof(struct muslin_cutplan_piece));
    ck_rows(widths_rows, p.plan, sizeof(struct muslin_cutplan_width));
    ck_rows(sizes_rows, p.plan, sizeof(struct muslin_cutplan_size));
    ck_rows(ways_rows, p.plan, sizeof(struct muslin_cutplan_way));
    ck_rows(cases_rows, p.plan, sizeof(struct muslin_cutplan_case));
    ck_rows(worths_rows, p.plan, sizeof(struct muslin_cutplan_worth));
    muslin_cutplan_free(p.plan);
    start(&p, 0);
    have(&p, 3, WHOLE_IN(9), WHOLE_IN(7));
    have(&p, 3, WHOLE_IN(9), WHOLE_IN(7));
    want(&p, 3, WHOLE_IN(3), WHOLE_IN(7));
    make_plan(&p);
    ck_rows(stock_rows, p.plan, sizeof(struct muslin_cutplan_stock_used));
    muslin_cutplan_free(p.plan);
}
END_TEST

static void ck_widths_said(muslin_len least, muslin_len most, int64_t widths, muslin_status status, int32_t argument)
{
    struct muslin_problem problem = PROBLEM;
    size_t count = 9;
    ck_status(muslin_cutplan_widths(p.plan, least, most, widths, NULL, NULL, NULL, 0, 0, &count, &problem), status);
    ck_assert_int_eq(problem.argument, argument);
    ck_assert_uint_eq(count, 9);
}

START_TEST(values_of_calls_out_of_their_range_are_named)
{
    struct muslin_problem problem = PROBLEM;
    size_t count = 9;
    int64_t scale = 9;
    muslin_len width = 9;
    start_squares();
    make_plan(&p);
    ck_widths_said(0, 1, 2, MUSLIN_ERR_RANGE, MUSLIN_ARG_USABLE_WIDTH);
    ck_widths_said(5, 4, 2, MUSLIN_ERR_RANGE, MUSLIN_ARG_USABLE_WIDTH);
    ck_widths_said(5, MUSLIN_SIZE_MAX + 1, 2, MUSLIN_ERR_RANGE, MUSLIN_ARG_USABLE_WIDTH);
    ck_widths_said(5, 6, 1, MUSLIN_ERR_RANGE, MUSLIN_ARG_WIDTHS);
    ck_widths_said(5, 6, 1001, MUSLIN_ERR_RANGE, MUSLIN_ARG_WIDTHS);
    ck_widths_said(5, 5, 2, MUSLIN_ERR_RANGE, MUSLIN_ARG_WIDTHS);
    ck_status(muslin_cutplan_left_overs(p.plan, -1, NULL, 0, 0, &count, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_LEAST_SIDE);
    ck_status(muslin_cutplan_worths(p.plan, -1, NULL, 0, 0, &count, &scale, &problem), MUSLIN_ERR_INDEX);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_PROOF_CASE);
    ck_status(muslin_cutplan_worths(p.plan, INT64_MAX, NULL, 0, 0, &count, &scale, &problem), MUSLIN_ERR_INDEX);
    ck_status(muslin_cutplan_worths(p.plan, 0, NULL, 0, 0, NULL, &scale, &problem), MUSLIN_ERR_NULL);
    ck_status(muslin_cutplan_worths(p.plan, 0, NULL, 0, 0, &count, NULL, &problem), MUSLIN_ERR_NULL);
    ck_status(muslin_cutplan_narrowest(p.plan, NULL, &problem), MUSLIN_ERR_NULL);
    ck_status(muslin_cutplan_totals(NULL, &p.totals, &problem), MUSLIN_ERR_NULL);
    ck_assert_int_eq(scale, 9);
    muslin_cutplan_free(p.plan);
    p.spec.usable_width = 0;
    have(&p, 9, WHOLE_IN(20), WHOLE_IN(20));
    make_plan(&p);
    ck_widths_said(5, 6, 2, MUSLIN_ERR_CHOICE, MUSLIN_ARG_STOCK_ROWS);
    ck_status(muslin_cutplan_widths(p.plan, 5, 6, 2, NULL, NULL, NULL, 0, 0, &count, &problem), MUSLIN_ERR_CHOICE);
    ck_assert_str_eq(problem.text, "Number of kinds of stock is 1, but only plans from a bolt have an answer to this.");
    ck_status(muslin_cutplan_narrowest(p.plan, &width, &problem), MUSLIN_ERR_CHOICE);
    ck_assert_int_eq(width, 9);
    muslin_cutplan_free(p.plan);
}
END_TEST

INIT_CALL(blank)
INIT_CALL(cutplan_stock)
INIT_CALL(cutplan)

START_TEST(initial_values_are_those_of_the_macros)
{
    const struct muslin_blank_spec blank = MUSLIN_BLANK_SPEC_INIT;
    const struct muslin_cutplan_stock_spec stock = MUSLIN_CUTPLAN_STOCK_SPEC_INIT;
    const struct muslin_cutplan_spec spec = MUSLIN_CUTPLAN_SPEC_INIT;
    ck_init_rules(init_blank, &blank, (uint32_t)sizeof blank);
    ck_init_rules(init_cutplan_stock, &stock, (uint32_t)sizeof stock);
    ck_init_rules(init_cutplan, &spec, (uint32_t)sizeof spec);
    ck_assert_int_eq(stock.width, WHOLE_IN(21));
    ck_assert_int_eq(stock.length, WHOLE_IN(18));
    ck_assert_int_eq(stock.count, MUSLIN_COUNT_MAX);
    ck_assert_int_eq(spec.usable_width, WHOLE_IN(40));
    ck_assert_int_eq(spec.print, MUSLIN_PRINT_NONE);
}
END_TEST

void add_long_cutplan_request(Suite *suite)
{
    TCase *failing = tcase_create("failing memory");
    tcase_set_timeout(failing, 60);
    tcase_add_test(failing, every_allocation_may_fail);
    tcase_add_test(failing, rows_are_read_without_memory_or_refused);
    suite_add_tcase(suite, failing);
}

void add_cutplan_request(Suite *suite)
{
    TCase *refused = tcase_create("refused");
    tcase_set_timeout(refused, 60);
    tcase_add_test(refused, specs_and_totals_follow_the_rules_of_structs);
    tcase_add_test(refused, members_out_of_their_range_are_named);
    tcase_add_test(refused, members_of_pieces_out_of_their_range_are_named);
    tcase_add_test(refused, stock_out_of_its_range_is_named);
    tcase_add_test(refused, arrays_follow_the_rules_of_rows);
    tcase_add_test(refused, pieces_too_large_are_named_with_their_row);
    tcase_add_test(refused, pieces_too_large_for_stock_are_named_with_the_side);
    tcase_add_test(refused, requests_beyond_all_cloth_are_refused);
    tcase_add_test(refused, a_joined_piece_is_as_high_as_the_longest_stock);
    tcase_add_test(refused, rows_follow_the_rules_of_arrays);
    tcase_add_test(refused, values_of_calls_out_of_their_range_are_named);
    tcase_add_test(refused, initial_values_are_those_of_the_macros);
    suite_add_tcase(suite, refused);
}
