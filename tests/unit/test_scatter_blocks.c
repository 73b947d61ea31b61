/* test_scatter_blocks.c - blocks laid out and turned, against every layout of few.
 *
 * SPDX-License-Identifier: MIT */
#include "test_scatter.h"

enum { SMALL = 6, TURNED_KINDS = 3, LINE = 100 };

struct laying {
    struct muslin_scatter_blocks_spec spec;
    struct muslin_edge_prints_spec blocks[TURNED_KINDS];
    size_t n;
    struct muslin_placed_block rows[LINE];
    struct muslin_scattered result;
};

static struct laying laying_of(int64_t columns, int64_t rows)
{
    struct laying l = { .spec = MUSLIN_SCATTER_BLOCKS_SPEC_INIT, .result = { .size = (uint32_t)sizeof l.result } };
    l.spec.columns = columns;
    l.spec.rows = rows;
    l.spec.work_limit = 200000;
    return l;
}

static void add_block(struct laying *l, int64_t count, uint32_t turns, const int64_t edges[4])
{
    struct muslin_edge_prints_spec block = MUSLIN_EDGE_PRINTS_SPEC_INIT;
    block.flags = turns;
    block.count = count;
    block.top = edges[0];
    block.right = edges[1];
    block.bottom = edges[2];
    block.left = edges[3];
    l->blocks[l->n++] = block;
}

static muslin_status lay_with(struct laying *l, const struct muslin_allocator *memory, struct muslin_problem *problem)
{
    size_t count = 77;
    muslin_status status = muslin_scatter_blocks(&l->spec, l->blocks, sizeof l->blocks[0], l->n, memory, NULL, NULL,
                                                 l->rows, sizeof l->rows[0], LINE, &count, &l->result, problem);
    ck_assert_uint_eq(count, status == MUSLIN_OK ? (size_t)(l->spec.columns * l->spec.rows) : 77);
    return status;
}

static void lay(struct laying *l)
{
    struct muslin_allocator memory = usual_memory();
    ck_ok(lay_with(l, &memory, NULL));
}

/* The print at an edge of a block turned by quarters clockwise: what is on the left comes to the top. */
static int64_t print_of(const struct muslin_edge_prints_spec *block, int32_t turns, int32_t edge)
{
    const int64_t edges[4] = { block->top, block->right, block->bottom, block->left };
    return edges[(edge + 4 - turns) % 4];
}

static int64_t meetings(const struct laying *l, const struct muslin_placed_block *rows)
{
    int64_t meet = 0;
    int64_t columns = l->spec.columns;
    int64_t places = columns * l->spec.rows;
    for (int64_t p = 0; p < places; p++) {
        const struct muslin_placed_block *here = &rows[p];
        if ((p + 1) % columns != 0) {
            int64_t print = print_of(&l->blocks[here->kind], here->quarter_turns, 1);
            meet += print >= 0 && print == print_of(&l->blocks[here[1].kind], here[1].quarter_turns, 3);
        }
        if (p + columns < places) {
            int64_t print = print_of(&l->blocks[here->kind], here->quarter_turns, 2);
            meet += print >= 0 &&
                    print == print_of(&l->blocks[here[columns].kind], here[columns].quarter_turns, 0);
        }
    }
    return meet;
}

static int may_turn(const struct muslin_edge_prints_spec *block, int32_t turns)
{
    if ((block->flags & MUSLIN_EDGE_PRINTS_TURNS_QUARTER) != 0)
        return 1;
    return turns == 0 || (turns == 2 && (block->flags & MUSLIN_EDGE_PRINTS_TURNS_HALF) != 0);
}

static int is_laid_rightly(const struct laying *l, const struct muslin_placed_block *rows)
{
    int64_t left[TURNED_KINDS];
    for (size_t i = 0; i < l->n; i++)
        left[i] = l->blocks[i].count;
    for (int64_t p = 0; p < l->spec.columns * l->spec.rows; p++)
        if (rows[p].kind < 0 || rows[p].kind >= (int64_t)l->n || left[rows[p].kind]-- == 0 ||
            !may_turn(&l->blocks[rows[p].kind], rows[p].quarter_turns))
            return 0;
    return 1;
}

static void ck_laid(const struct laying *l)
{
    ck_assert(is_laid_rightly(l, l->rows));
    ck_assert_int_eq(l->result.touching, meetings(l, l->rows));
    ck_assert_int_eq(l->result.pairs, l->result.touching);
    ck_assert_int_le(l->result.least, l->result.touching);
    ck_assert_int_eq(l->result.proven, l->result.least == l->result.touching);
}

START_TEST(blocks_in_a_row_are_turned_in_turn)
{
    /* Example: four blocks with the same print left and right, in one row of four: turned by quarters in turn, none
     * meet. */
    const int64_t edges[] = { -1, 5, -1, 5 };
    struct laying l = laying_of(4, 1);
    add_block(&l, 4, MUSLIN_EDGE_PRINTS_TURNS_QUARTER, edges);
    lay(&l);
    ck_laid(&l);
    ck_assert_int_eq(l.result.touching, 0);
    for (int64_t p = 0; p + 1 < 4; p++)
        ck_assert(l.rows[p].quarter_turns % 2 == 1 || l.rows[p + 1].quarter_turns % 2 == 1);
}
END_TEST

/* Of n in a line all meet; of two kinds the one there is too much of meets as the header of least_in_lines counts. */
START_TEST(blocks_that_do_not_turn_meet_as_often_as_they_must)
{
    static const struct {
        int64_t columns, rows, same, other, meet;
    } cases[] = {
        { 4, 1, 4, 0, 3 }, { 5, 1, 5, 0, 4 }, { 5, 1, 3, 2, 0 }, { 5, 1, 4, 1, 2 }, { 4, 1, 2, 2, 0 },
        { 4, 1, 3, 1, 1 }, { 4, 1, 3, 9, 0 }, { 4, 1, 9, 1, 1 }, { 4, 2, 5, 3, 1 }, { 4, 2, 6, 2, 2 },
        { 4, 2, 7, 1, 4 }, { 1, 4, 4, 0, 0 }
    };
    const int64_t across[] = { -1, 5, -1, 5 };
    const int64_t none[] = { -1, -1, -1, -1 };
    for (size_t i = 0; i < COUNT_OF(cases); i++)
        for (uint32_t turns = 0; turns <= MUSLIN_EDGE_PRINTS_TURNS_HALF; turns++) {
            struct laying l = laying_of(cases[i].columns, cases[i].rows);
            add_block(&l, cases[i].same, turns, across);
            add_block(&l, cases[i].other, 0, none);
            lay(&l);
            ck_laid(&l);
            ck_assert_int_eq(l.result.touching, cases[i].meet);
            ck_assert_int_eq(l.result.proven, 1);
        }
}
END_TEST

/* Blocks that show a print at both ends of a line, laid one after the other where they meet the fewest: in a line of
 * `length` places, as so many lie there, (length + 1) / 2 of them apart, one more in an even line between the last two,
 * and others in a gap. */
static int64_t fewest_in_lines(int64_t must_lie, int64_t lines, int64_t length)
{
    int64_t here[LINE] = { 0 };
    int64_t meet = 0;
    for (int64_t lies = 0; lies < must_lie; lies++) {
        int64_t best = 0;
        for (int64_t line = 1; line < lines; line++)
            best = here[line] < here[best] ? line : best;
        const int64_t over = ++here[best] - (length + 1) / 2;
        if (over > 0)
            meet += over == 1 && length % 2 == 0 ? 1 : 2;
    }
    return meet;
}

/* Whether a block shows a print at an edge and at the one across, however it is turned. */
static int shows_across(const struct muslin_edge_prints_spec *block, int64_t print, int32_t edge)
{
    for (int32_t turns = 0; turns < 4; turns++)
        if (may_turn(block, turns) &&
            (print_of(block, turns, edge) != print || print_of(block, turns, edge + 2) != print))
            return 0;
    return 1;
}

/* Of all prints, the one of which the blocks that must lie meet the most. */
static int64_t known_to_meet(const struct laying *l, int32_t edge, int64_t lines, int64_t length)
{
    int64_t most = 0;
    for (int64_t print = 0; print < 3; print++) {
        int64_t must_lie = lines * length;
        for (size_t i = 0; i < l->n; i++)
            must_lie -= shows_across(&l->blocks[i], print, edge) ? 0 : l->blocks[i].count;
        const int64_t meet = fewest_in_lines(must_lie, lines, length);
        most = meet > most ? meet : most;
    }
    return most;
}

/* Some blocks of few prints, most of them with one print across, down or all round. */
START_TEST(blocks_are_known_to_meet_where_too_many_must_lie)
{
    uint64_t state = 31;
    int32_t met = 0;
    for (int32_t i = 0; i < 2000; i++) {
        struct laying l = laying_of(draw_from(&state, 1, 5), draw_from(&state, 1, 4));
        const int64_t places = l.spec.columns * l.spec.rows;
        int64_t missing = places;
        for (int32_t kind = 0; kind < TURNED_KINDS; kind++) {
            const int64_t print = draw_from(&state, 0, 5) == 0 ? 1 : i % 3;
            int64_t edges[4];
            for (int32_t edge = 0; edge < 4; edge++)
                edges[edge] = draw_from(&state, 0, 5) == 0 ? draw_from(&state, -1, 2) : print;
            const int64_t count = kind + 1 < TURNED_KINDS ? draw_from(&state, 0, places) : missing;
            missing -= count < missing ? count : missing;
            add_block(&l, count, (uint32_t)draw_from(&state, 0, 3), edges);
        }
        l.spec.work_limit = 0;
        l.spec.seed = i;
        lay(&l);
        ck_laid(&l);
        ck_assert_int_eq(l.result.least, known_to_meet(&l, 1, l.spec.rows, l.spec.columns) +
                                             known_to_meet(&l, 0, l.spec.columns, l.spec.rows));
        met += l.result.least > 0;
    }
    ck_assert_int_ge(met, 200);
}
END_TEST

/* One print all round: turning is of no use, and it meets itself at every edge. */
START_TEST(a_print_all_round_meets_itself_however_it_is_turned)
{
    const int64_t round[] = { 5, 5, 5, 5 };
    const int64_t three[] = { 5, 5, 5, 6 };
    const int64_t open[] = { 5, 5, 6, 5 };
    struct laying l = laying_of(5, 4);
    add_block(&l, 20, MUSLIN_EDGE_PRINTS_TURNS_QUARTER, round);
    lay(&l);
    ck_laid(&l);
    ck_assert_int_eq(l.result.touching, 31);
    ck_assert_int_eq(l.result.proven, 1);
    l.n = 0;
    add_block(&l, 20, MUSLIN_EDGE_PRINTS_TURNS_QUARTER, three);
    lay(&l);
    ck_laid(&l);
    ck_assert_int_eq(l.result.least, 0);
    l.n = 0;
    add_block(&l, 20, MUSLIN_EDGE_PRINTS_TURNS_QUARTER, open);
    lay(&l);
    ck_laid(&l);
    ck_assert_int_eq(l.result.least, 0);
}
END_TEST

/* Of one print left and right, every second is turned, as on a chessboard: then a print lies only beside none. As all
 * are of one kind, only turning helps. */
START_TEST(quarter_turns_alone_lead_to_a_chessboard)
{
    const int64_t edges[] = { -1, 5, -1, 5 };
    for (int64_t seed = 1; seed <= 5; seed++) {
        struct laying l = laying_of(10, 10);
        add_block(&l, 100, MUSLIN_EDGE_PRINTS_TURNS_QUARTER, edges);
        l.spec.seed = seed;
        l.spec.work_limit = 1000000;
        lay(&l);
        ck_laid(&l);
        ck_assert_int_eq(l.result.touching, 0);
    }
}
END_TEST

START_TEST(a_half_turn_helps_where_left_and_right_differ)
{
    const int64_t edges[] = { -1, 5, -1, 6 };
    struct laying l = laying_of(9, 1);
    add_block(&l, 9, MUSLIN_EDGE_PRINTS_TURNS_HALF, edges);
    lay(&l);
    ck_laid(&l);
    ck_assert_int_eq(l.result.touching, 0);
    for (int32_t p = 0; p < 9; p++)
        ck_assert_int_eq(l.rows[p].quarter_turns, l.rows[0].quarter_turns);
}
END_TEST

/* ---- against every layout ---------------------------------------------------------------------------------------- */

/* Counts kinds and turns up together, as one number in base 4 x kinds. */
static int64_t fewest_meetings(const struct laying *l)
{
    struct muslin_placed_block rows[SMALL] = { { 0 } };
    int64_t places = l->spec.columns * l->spec.rows;
    int64_t fewest = INT64_MAX;
    for (;;) {
        if (is_laid_rightly(l, rows)) {
            int64_t meet = meetings(l, rows);
            fewest = meet < fewest ? meet : fewest;
        }
        int64_t p = 0;
        for (; p < places; p++) {
            rows[p].quarter_turns = (rows[p].quarter_turns + 1) % 4;
            if (rows[p].quarter_turns != 0)
                break;
            rows[p].kind = (rows[p].kind + 1) % (int64_t)l->n;
            if (rows[p].kind != 0)
                break;
        }
        if (p == places)
            return fewest;
    }
}

static struct laying draw_laying(uint64_t *state)
{
    static const int64_t sizes[][2] = { { 1, 1 }, { 4, 1 }, { 1, 4 }, { 2, 2 }, { 5, 1 }, { 2, 1 } };
    const int64_t *size = sizes[draw_from(state, 0, 5)];
    struct laying l = laying_of(size[0], size[1]);
    int64_t kinds = draw_from(state, 1, TURNED_KINDS);
    int64_t prints = draw_from(state, 0, 2);
    for (int64_t i = 0; i < kinds; i++) {
        int64_t edges[4];
        for (int32_t edge = 0; edge < 4; edge++)
            edges[edge] = draw_from(state, -1, prints);
        if (draw_from(state, 0, 2) == 0)
            edges[0] = edges[1] = edges[2] = edges[3];
        add_block(&l, draw_from(state, 0, 5), (uint32_t)draw_from(state, 0, 3), edges);
    }
    l.blocks[0].count += 5;
    l.spec.work_limit = 20000;
    l.spec.seed = (int64_t)draw(state);
    return l;
}

START_TEST(few_blocks_come_out_as_well_as_any_layout)
{
    enum { CASES = 150 };
    uint64_t state = 9;
    int64_t missed = 0;
    for (int32_t i = 0; i < CASES; i++) {
        struct laying l = draw_laying(&state);
        int64_t fewest = fewest_meetings(&l);
        lay(&l);
        ck_laid(&l);
        ck_assert_int_le(l.result.least, fewest);
        missed += l.result.touching != fewest;
    }
    ck_assert_int_eq(missed, 0);
}
END_TEST

/* ---- statuses ---------------------------------------------------------------------------------------------------- */

static muslin_status ruled_blocks(const void *spec, void *out, struct muslin_problem *problem)
{
    struct muslin_edge_prints_spec blocks[] = { MUSLIN_EDGE_PRINTS_SPEC_INIT };
    struct muslin_allocator memory = usual_memory();
    struct muslin_placed_block rows[4];
    size_t count = 0;
    blocks[0].count = MUSLIN_COUNT_MAX;
    return muslin_scatter_blocks(spec, blocks, sizeof blocks[0], 1, &memory, NULL, NULL, rows, sizeof rows[0], 4,
                                 &count, out, problem);
}

START_TEST(blocks_follow_the_rules_of_structs)
{
    struct muslin_scatter_blocks_spec spec = MUSLIN_SCATTER_BLOCKS_SPEC_INIT;
    spec.columns = 2;
    const struct ruled ruled = RULED(ruled_blocks, spec, muslin_scattered);
    const struct refusal refusals[] = {
        OUTSIDE(muslin_scatter_blocks_spec, columns, 1, 1 << 12, MUSLIN_ARG_COLUMNS),
        OUTSIDE(muslin_scatter_blocks_spec, rows, 1, 1 << 12, MUSLIN_ARG_QUILT_ROWS),
        OUTSIDE(muslin_scatter_blocks_spec, work_limit, 0, INT64_C(1) << 40, MUSLIN_ARG_WORK_LIMIT),
    };
    ck_struct_rules(&ruled);
    ck_no_flag_known(&ruled);
    ck_refusals(&ruled, refusals, COUNT_OF(refusals));
}
END_TEST

static void ck_lay(struct laying *l, muslin_status status, int32_t argument, int64_t at)
{
    struct muslin_problem problem = PROBLEM;
    struct muslin_allocator memory = usual_memory();
    ck_status(lay_with(l, &memory, &problem), status);
    ck_assert_int_eq(problem.argument, argument);
    ck_assert_int_eq(problem.at, at);
}

static struct laying two_kinds(void)
{
    const int64_t edges[] = { 0, 1, MUSLIN_COUNT_MAX, -1 };
    struct laying l = laying_of(3, 3);
    add_block(&l, 4, 0, edges);
    add_block(&l, 5, MUSLIN_EDGE_PRINTS_TURNS_HALF | MUSLIN_EDGE_PRINTS_TURNS_QUARTER, edges);
    return l;
}

START_TEST(blocks_out_of_their_range_are_named)
{
    const struct refusal refusals[] = {
        OUTSIDE(muslin_edge_prints_spec, count, 0, MUSLIN_COUNT_MAX, MUSLIN_ARG_BLOCKS),
        OUTSIDE(muslin_edge_prints_spec, top, -1, MUSLIN_COUNT_MAX, MUSLIN_ARG_PRINTS),
        OUTSIDE(muslin_edge_prints_spec, right, -1, MUSLIN_COUNT_MAX, MUSLIN_ARG_PRINTS),
        OUTSIDE(muslin_edge_prints_spec, bottom, -1, MUSLIN_COUNT_MAX, MUSLIN_ARG_PRINTS),
        OUTSIDE(muslin_edge_prints_spec, left, -1, MUSLIN_COUNT_MAX, MUSLIN_ARG_PRINTS),
    };
    struct laying l = two_kinds();
    ck_lay(&l, MUSLIN_OK, 0, 0);
    for (size_t i = 0; i < COUNT_OF(refusals); i++) {
        l = two_kinds();
        memcpy((unsigned char *)&l.blocks[1] + refusals[i].offset, &refusals[i].value, sizeof(int64_t));
        ck_lay(&l, refusals[i].status, refusals[i].argument, 1);
    }
    l = two_kinds();
    l.blocks[1].flags = 4;
    ck_lay(&l, MUSLIN_ERR_FLAGS, MUSLIN_ARG_ROWS, 1);
    l.n = 0;
    ck_lay(&l, MUSLIN_ERR_RANGE, MUSLIN_ARG_BLOCKS, 0);
    l.n = SIZE_MAX;
    ck_lay(&l, MUSLIN_ERR_RANGE, MUSLIN_ARG_BLOCKS, 0);
}
END_TEST

START_TEST(too_few_blocks_are_not_enough)
{
    struct laying l = two_kinds();
    struct muslin_problem problem = PROBLEM;
    struct muslin_allocator memory = usual_memory();
    l.blocks[0].count = 3;
    ck_status(lay_with(&l, &memory, &problem), MUSLIN_ERR_NOT_ENOUGH);
    ck_assert(problem.argument == MUSLIN_ARG_PLACES && problem.at == 0 && problem.value == 9 && problem.limit == 8);
    ck_status(lay_with(&l, NULL, &problem), MUSLIN_ERR_NULL);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_ALLOCATOR);
    ck_status(muslin_scatter_blocks(&l.spec, NULL, sizeof l.blocks[0], 2, &memory, NULL, NULL, l.rows, sizeof l.rows[0],
                                    LINE, &(size_t){ 0 }, &l.result, &problem), MUSLIN_ERR_NULL);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_ROWS);
    ck_status(muslin_scatter_blocks(&l.spec, l.blocks, sizeof l.blocks[0] - 8, 2, &memory, NULL, NULL, l.rows,
                                    sizeof l.rows[0], LINE, &(size_t){ 0 }, &l.result, &problem),
              MUSLIN_ERR_STRUCT_SIZE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_ROW_SIZE);
}
END_TEST

START_TEST(placed_blocks_are_asked_for_and_filled)
{
    struct laying l = two_kinds();
    struct muslin_allocator memory = usual_memory();
    size_t count = 77;
    l.result.touching = 77;
    ck_ok(muslin_scatter_blocks(&l.spec, l.blocks, sizeof l.blocks[0], l.n, &memory, NULL, NULL, NULL, 0, 0, &count,
                                &l.result, NULL));
    ck_assert(count == 9 && l.result.touching == 77);
    ck_status(muslin_scatter_blocks(&l.spec, l.blocks, sizeof l.blocks[0], l.n, &memory, NULL, NULL, l.rows,
                                    sizeof l.rows[0], 8, &count, &l.result, NULL), MUSLIN_ERR_BUFFER);
    ck_assert(count == 9 && l.result.touching == 77 && l.rows[0].size == 0);
}
END_TEST

START_TEST(every_allocation_of_blocks_may_fail)
{
    struct failing_allocator failing;
    EVERY_ALLOCATION_FAILS_ONCE(failing) {
        struct laying l = two_kinds();
        struct muslin_problem problem = PROBLEM;
        l.result.touching = 77;
        ck_status(lay_with(&l, &failing.allocator, &problem), failing.has_failed ? MUSLIN_ERR_NO_MEMORY : MUSLIN_OK);
        ck_assert_int_eq(problem.at, 0);
        ck_assert_int_eq(l.result.touching == 77, failing.has_failed);
        ck_assert_int_eq(l.rows[0].size == 0, failing.has_failed);
        ck_assert(failing_is_clean(&failing));
    }
}
END_TEST

INIT_CALL(scatter_blocks)
INIT_CALL(edge_prints)

START_TEST(initial_values_of_blocks_are_those_of_the_macros)
{
    const struct muslin_scatter_blocks_spec blocks = MUSLIN_SCATTER_BLOCKS_SPEC_INIT;
    const struct muslin_edge_prints_spec edges = MUSLIN_EDGE_PRINTS_SPEC_INIT;
    ck_init_rules(init_scatter_blocks, &blocks, (uint32_t)sizeof blocks);
    ck_init_rules(init_edge_prints, &edges, (uint32_t)sizeof edges);
}
END_TEST

void add_scatter_blocks(Suite *suite)
{
    TCase *blocks = tcase_create("blocks");
    tcase_set_timeout(blocks, 60);
    tcase_add_test(blocks, blocks_in_a_row_are_turned_in_turn);
    tcase_add_test(blocks, blocks_that_do_not_turn_meet_as_often_as_they_must);
    tcase_add_test(blocks, blocks_are_known_to_meet_where_too_many_must_lie);
    tcase_add_test(blocks, a_print_all_round_meets_itself_however_it_is_turned);
    tcase_add_test(blocks, quarter_turns_alone_lead_to_a_chessboard);
    tcase_add_test(blocks, a_half_turn_helps_where_left_and_right_differ);
    tcase_add_test(blocks, few_blocks_come_out_as_well_as_any_layout);
    tcase_add_test(blocks, blocks_follow_the_rules_of_structs);
    tcase_add_test(blocks, blocks_out_of_their_range_are_named);
    tcase_add_test(blocks, too_few_blocks_are_not_enough);
    tcase_add_test(blocks, placed_blocks_are_asked_for_and_filled);
    tcase_add_test(blocks, every_allocation_of_blocks_may_fail);
    tcase_add_test(blocks, initial_values_of_blocks_are_those_of_the_macros);
    suite_add_tcase(suite, blocks);
}
