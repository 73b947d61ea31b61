/* test_quilt_field.c - fields on point and rows of 60 degree pieces: what makes them, and what they refuse.
 *
 * SPDX-License-Identifier: MIT */
#include "refusals.h"
#include "test_quilt.h"

Suite *quilt_field_suite(void);

INIT_CALL(quilt_diagonal)
INIT_CALL(quilt_sixty)
INIT_CALL(quilt_sixty_piece)

START_TEST(specs_begin_as_stated)
{
    const struct muslin_quilt_diagonal_spec diagonal = MUSLIN_QUILT_DIAGONAL_SPEC_INIT;
    const struct muslin_quilt_sixty_spec sixty = MUSLIN_QUILT_SIXTY_SPEC_INIT;
    const struct muslin_quilt_sixty_piece_spec piece = MUSLIN_QUILT_SIXTY_PIECE_SPEC_INIT;
    ck_init_rules(init_quilt_diagonal, &diagonal, sizeof diagonal);
    ck_init_rules(init_quilt_sixty, &sixty, sizeof sixty);
    ck_init_rules(init_quilt_sixty_piece, &piece, sizeof piece);
}
END_TEST

/* ---- two good requests ------------------------------------------------------------------------------------------ */

/* 3 x 2 blocks and 2 alternates on point; two rows of five cells: 1 2 2, 3 1 1. */
enum { BLOCKS = 8, PIECES = 6, CELLS = 5 };

struct work {
    struct sewn s;
    muslin_id square;
    muslin_id plain;
    muslin_id blocks[BLOCKS];
    struct muslin_quilt_diagonal_spec diagonal;
    struct muslin_quilt_diagonal_spec sashed;
    struct muslin_quilt_sixty_spec sixty;
    struct muslin_quilt_sixty_piece_spec pieces[PIECES + 1];
    size_t n;
};
static struct work at_work;

static void begin_work(void)
{
    const struct muslin_quilt_diagonal_spec diagonal = MUSLIN_QUILT_DIAGONAL_SPEC_INIT;
    const struct muslin_quilt_sixty_spec sixty = MUSLIN_QUILT_SIXTY_SPEC_INIT;
    const struct muslin_quilt_sixty_piece_spec piece = MUSLIN_QUILT_SIXTY_PIECE_SPEC_INIT;
    const int64_t cells[PIECES + 1] = { 1, 2, 2, 3, 1, 1, 1 };
    struct work *w = &at_work;
    begin_sewing(&w->s);
    w->square = patch_of(w->s.quilt, w->s.blue, w->s.two, w->s.two);
    w->plain = patch_of(w->s.quilt, w->s.white, w->s.two, w->s.two);
    for (int i = 0; i < BLOCKS; i++)
        w->blocks[i] = i < 6 ? w->square : w->plain;
    w->diagonal = diagonal;
    w->diagonal.columns = 3;
    w->diagonal.rows = 2;
    w->diagonal.side_fabric = w->s.blue;
    w->diagonal.corner_fabric = w->s.white;
    w->diagonal.set_off = w->s.two;
    w->sashed = w->diagonal;
    w->sashed.layout = MUSLIN_POINT_LAYOUT_SASH_OUTER;
    w->sashed.sash = w->s.two;
    w->sashed.sash_fabric = w->s.blue;
    w->sashed.cornerstone = w->s.white;
    w->sixty = sixty;
    w->sixty.cells = CELLS;
    w->sixty.rows = 2;
    w->sixty.height = w->s.two;
    w->sixty.end_fabric = w->s.white;
    for (int i = 0; i <= PIECES; i++) {
        w->pieces[i] = piece;
        w->pieces[i].fabric = w->s.blue;
        w->pieces[i].cells = cells[i];
    }
    w->n = PIECES;
}

static void end_work(void)
{
    end_sewing(&at_work.s);
}

typedef muslin_status made_call(const void *spec, muslin_id *out, struct muslin_problem *problem);

static muslin_status make_diagonal(const void *spec, muslin_id *out, struct muslin_problem *problem)
{
    return muslin_quilt_diagonal(at_work.s.quilt, spec, at_work.blocks, BLOCKS, out, problem);
}

static muslin_status make_sixty(const void *spec, muslin_id *out, struct muslin_problem *problem)
{
    return muslin_quilt_sixty(at_work.s.quilt, spec, at_work.pieces, sizeof at_work.pieces[0], at_work.n, out, problem);
}

/* The sixth piece is the given one. */
static muslin_status make_piece(const void *spec, muslin_id *out, struct muslin_problem *problem)
{
    struct muslin_quilt_sixty_piece_spec pieces[PIECES];
    memcpy(pieces, at_work.pieces, sizeof pieces);
    memcpy(&pieces[PIECES - 1], spec, sizeof pieces[0]);
    return muslin_quilt_sixty(at_work.s.quilt, &at_work.sixty, pieces, sizeof pieces[0], PIECES, out, problem);
}

static struct muslin_problem refused(made_call *call, const void *spec, muslin_status status)
{
    struct muslin_problem problem = PROBLEM;
    muslin_id out = -1;
    const struct muslin_part_counts before = counts_of(at_work.s.quilt);
    ck_status(call(spec, &out, &problem), status);
    ck_assert_int_eq(problem.status, status);
    ck_assert_int_eq(out, -1);
    ck_same_parts(at_work.s.quilt, &before);
    ck_status(call(spec, &out, NULL), status);
    return problem;
}

static void ck_each_refused(made_call *call, const void *spec, uint32_t size, const struct refusal *refusals,
                            size_t count)
{
    for (size_t i = 0; i < count; i++) {
        union roomy wrong;
        lay_out(&wrong, spec, size);
        set_member(&wrong, &refusals[i]);
        struct muslin_problem problem = refused(call, &wrong, refusals[i].status);
        ck_assert_msg(problem.argument == refusals[i].argument, "member at %zu: %s", refusals[i].offset, problem.text);
        ck_assert_int_eq(problem.value, refusals[i].value);
    }
}

static void ck_spec_is_read(made_call *call, const void *spec, uint32_t size)
{
    union roomy wrong;
    muslin_id out = 0;
    lay_out(&wrong, spec, size);
    wrong.head[0] = size - 1;
    refused(call, &wrong, MUSLIN_ERR_STRUCT_SIZE);
    wrong.head[0] = size + 8;
    if (call != make_piece)
        ck_ok(call(&wrong, &out, NULL));
    wrong.head[0] = size;
    wrong.head[1] = 1;
    refused(call, &wrong, MUSLIN_ERR_FLAGS);
    ck_ok(call(spec, &out, NULL));
    ck_status(call(spec, NULL, NULL), MUSLIN_ERR_NULL);
}

START_TEST(a_field_on_point_has_its_ranges)
{
    begin_work();
    const struct refusal refusals[] = {
        OUTSIDE(muslin_quilt_diagonal_spec, columns, 1, 32768, MUSLIN_ARG_COLUMNS),
        OUTSIDE(muslin_quilt_diagonal_spec, rows, 1, 32768, MUSLIN_ARG_QUILT_ROWS),
        REFUSAL(muslin_quilt_diagonal_spec, side_fabric, 0, MUSLIN_ERR_FOREIGN, MUSLIN_ARG_FABRIC),
        REFUSAL(muslin_quilt_diagonal_spec, corner_fabric, at_work.s.two, MUSLIN_ERR_FOREIGN, MUSLIN_ARG_FABRIC),
        REFUSAL(muslin_quilt_diagonal_spec, set_off, at_work.s.blue, MUSLIN_ERR_FOREIGN, MUSLIN_ARG_MEASURE),
    };
    ck_each_refused(make_diagonal, &at_work.diagonal, sizeof at_work.diagonal, refusals, COUNT_OF(refusals));
    ck_spec_is_read(make_diagonal, &at_work.diagonal, sizeof at_work.diagonal);
    refused(make_diagonal, NULL, MUSLIN_ERR_NULL);
    struct muslin_quilt_diagonal_spec spec = at_work.diagonal;
    spec.corner_fabric = 0;
    ck_assert_int_eq(refused(make_diagonal, &spec, MUSLIN_ERR_FOREIGN).at, 1);
    /* as many blocks as columns and rows take: 3 x 3 + 2 x 2 would be 13 */
    spec = at_work.diagonal;
    spec.rows = 3;
    struct muslin_problem problem = refused(make_diagonal, &spec, MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_CHILDREN);
    ck_assert_int_eq(problem.limit, 13);
    at_work.blocks[7] = at_work.s.blue;
    problem = refused(make_diagonal, &at_work.diagonal, MUSLIN_ERR_FOREIGN);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_NODE);
    ck_assert_int_eq(problem.at, 7);
    muslin_id out = 0;
    ck_status(muslin_quilt_diagonal(at_work.s.quilt, &at_work.diagonal, NULL, BLOCKS, &out, NULL), MUSLIN_ERR_NULL);
    ck_status(muslin_quilt_diagonal(NULL, &at_work.diagonal, at_work.blocks, BLOCKS, &out, NULL), MUSLIN_ERR_NULL);
    ck_status(muslin_quilt_diagonal(at_work.s.quilt, &at_work.diagonal, at_work.blocks, SIZE_MAX, &out, NULL),
              MUSLIN_ERR_RANGE);
    end_work();
}
END_TEST

START_TEST(sashes_on_point_have_their_layouts)
{
    begin_work();
    const muslin_id two = at_work.s.two;
    const struct refusal plain[] = {
        REFUSAL(muslin_quilt_diagonal_spec, layout, 0, MUSLIN_ERR_CHOICE, MUSLIN_ARG_SETTING_LAYOUT),
        REFUSAL(muslin_quilt_diagonal_spec, layout, 5, MUSLIN_ERR_CHOICE, MUSLIN_ARG_SETTING_LAYOUT),
        REFUSAL(muslin_quilt_diagonal_spec, pad, 1, MUSLIN_ERR_STRUCT_TAIL, MUSLIN_ARG_SPEC),
        REFUSAL(muslin_quilt_diagonal_spec, sash, two, MUSLIN_ERR_RANGE, MUSLIN_ARG_MEASURE),
        REFUSAL(muslin_quilt_diagonal_spec, sash_fabric, at_work.s.blue, MUSLIN_ERR_RANGE, MUSLIN_ARG_FABRIC),
        REFUSAL(muslin_quilt_diagonal_spec, cornerstone, at_work.s.blue, MUSLIN_ERR_RANGE, MUSLIN_ARG_FABRIC),
    };
    ck_each_refused(make_diagonal, &at_work.diagonal, sizeof at_work.diagonal, plain, COUNT_OF(plain));
    const struct refusal sashed[] = {
        REFUSAL(muslin_quilt_diagonal_spec, sash, 0, MUSLIN_ERR_RANGE, MUSLIN_ARG_MEASURE),
        REFUSAL(muslin_quilt_diagonal_spec, sash, at_work.s.blue, MUSLIN_ERR_FOREIGN, MUSLIN_ARG_MEASURE),
        REFUSAL(muslin_quilt_diagonal_spec, sash_fabric, 0, MUSLIN_ERR_RANGE, MUSLIN_ARG_FABRIC),
        REFUSAL(muslin_quilt_diagonal_spec, sash_fabric, two, MUSLIN_ERR_FOREIGN, MUSLIN_ARG_FABRIC),
        REFUSAL(muslin_quilt_diagonal_spec, cornerstone, two, MUSLIN_ERR_FOREIGN, MUSLIN_ARG_FABRIC),
    };
    ck_each_refused(make_diagonal, &at_work.sashed, sizeof at_work.sashed, sashed, COUNT_OF(sashed));
    ck_spec_is_read(make_diagonal, &at_work.sashed, sizeof at_work.sashed);
    struct muslin_quilt_diagonal_spec spec = at_work.sashed;
    spec.cornerstone = two;
    ck_assert_int_eq(refused(make_diagonal, &spec, MUSLIN_ERR_FOREIGN).at, 3);
    spec.sash_fabric = 0;
    ck_assert_int_eq(refused(make_diagonal, &spec, MUSLIN_ERR_RANGE).at, 2);
    ck_assert_str_eq(refused(make_diagonal, &spec, MUSLIN_ERR_RANGE).text, "Fabric is missing, but one is needed here.");
    spec.sash = 0;
    ck_assert_int_eq(refused(make_diagonal, &spec, MUSLIN_ERR_RANGE).at, 1);
    ck_assert_str_eq(refused(make_diagonal, &spec, MUSLIN_ERR_RANGE).text,
                     "Measure is missing, but one is needed here.");
    for (int32_t layout = MUSLIN_POINT_LAYOUT_SASH_CUT; layout <= MUSLIN_POINT_LAYOUT_SASH_INNER; layout++) {
        spec = at_work.sashed;
        spec.layout = layout;
        struct muslin_problem problem = refused(make_diagonal, &spec, MUSLIN_ERR_RANGE);
        ck_assert_int_eq(problem.argument, MUSLIN_ARG_MEASURE);
        ck_assert_int_eq(problem.at, 0);
        ck_assert_str_eq(problem.text, "Measure is number 3, but none is taken here.");
        ck_assert_int_eq(problem.limit, 0);
    }
    at_work.blocks[0] = at_work.s.blue;
    ck_assert_int_eq(refused(make_diagonal, &at_work.sashed, MUSLIN_ERR_FOREIGN).argument, MUSLIN_ARG_NODE);
    at_work.blocks[0] = at_work.square;
    at_work.blocks[7] = at_work.s.blue; /* when the sashes are made already */
    ck_assert_int_eq(refused(make_diagonal, &at_work.sashed, MUSLIN_ERR_FOREIGN).at, 7);
    end_work();
}
END_TEST

/* Three patches follow the blocks; without a fabric of their own cornerstones are of that of the sashes. */
START_TEST(sashes_on_point_are_patches)
{
    begin_work();
    muslin_id field = 0;
    muslin_id again = 0;
    muslin_id children[BLOCKS + 3];
    size_t count = 0;
    const muslin_id length = extent_of(at_work.s.quilt, at_work.square, MUSLIN_AXIS_ACROSS);
    const muslin_id two = at_work.s.two;
    ck_ok(make_diagonal(&at_work.sashed, &field, NULL));
    ck_ok(make_diagonal(&at_work.sashed, &again, NULL));
    ck_assert_int_eq(again, field);
    ck_ok(muslin_quilt_children(at_work.s.quilt, field, children, BLOCKS + 3, &count, NULL));
    ck_assert_uint_eq(count, BLOCKS + 3);
    ck_assert_int_eq(memcmp(children, at_work.blocks, sizeof at_work.blocks), 0);
    ck_assert_int_eq(children[BLOCKS], patch_of(at_work.s.quilt, at_work.s.blue, length, two));
    ck_assert_int_eq(children[BLOCKS + 1], patch_of(at_work.s.quilt, at_work.s.blue, two, length));
    ck_assert_int_eq(children[BLOCKS + 2], patch_of(at_work.s.quilt, at_work.s.white, two, two));
    struct muslin_quilt_diagonal_spec found = { .size = sizeof found };
    ck_ok(muslin_quilt_read_diagonal(at_work.s.quilt, field, &found, NULL));
    ck_assert_int_eq(memcmp(&found, &at_work.sashed, sizeof found), 0);
    at_work.sashed.cornerstone = 0;
    ck_ok(make_diagonal(&at_work.sashed, &again, NULL));
    ck_assert_int_ne(again, field);
    ck_ok(muslin_quilt_read_diagonal(at_work.s.quilt, again, &found, NULL));
    ck_assert_int_eq(found.cornerstone, at_work.s.blue);
    end_work();
}
END_TEST

START_TEST(rows_of_60_degree_pieces_have_their_ranges)
{
    begin_work();
    const struct refusal refusals[] = {
        OUTSIDE(muslin_quilt_sixty_spec, cells, 1, 1048576, MUSLIN_ARG_CELLS),
        OUTSIDE(muslin_quilt_sixty_spec, rows, 1, 1048576, MUSLIN_ARG_QUILT_ROWS),
        REFUSAL(muslin_quilt_sixty_spec, height, 0, MUSLIN_ERR_FOREIGN, MUSLIN_ARG_MEASURE),
        REFUSAL(muslin_quilt_sixty_spec, end_fabric, 0, MUSLIN_ERR_FOREIGN, MUSLIN_ARG_FABRIC),
        NOT_A_CHOICE(muslin_quilt_sixty_spec, first, 2, MUSLIN_ARG_START),
        REFUSAL(muslin_quilt_sixty_spec, pad, 1, MUSLIN_ERR_STRUCT_TAIL, MUSLIN_ARG_SPEC),
    };
    const struct refusal of_pieces[] = {
        OUTSIDE(muslin_quilt_sixty_piece_spec, cells, 1, 1, MUSLIN_ARG_CELLS),
        REFUSAL(muslin_quilt_sixty_piece_spec, fabric, at_work.square, MUSLIN_ERR_FOREIGN, MUSLIN_ARG_FABRIC),
    };
    ck_each_refused(make_sixty, &at_work.sixty, sizeof at_work.sixty, refusals, COUNT_OF(refusals));
    ck_each_refused(make_piece, &at_work.pieces[5], sizeof at_work.pieces[5], of_pieces, COUNT_OF(of_pieces));
    ck_spec_is_read(make_sixty, &at_work.sixty, sizeof at_work.sixty);
    ck_spec_is_read(make_piece, &at_work.pieces[5], sizeof at_work.pieces[5]);
    refused(make_sixty, NULL, MUSLIN_ERR_NULL);
    const struct work *w = &at_work;
    muslin_id out = 0;
    ck_status(muslin_quilt_sixty(w->s.quilt, &w->sixty, NULL, sizeof w->pieces[0], PIECES, &out, NULL),
              MUSLIN_ERR_NULL);
    ck_status(muslin_quilt_sixty(w->s.quilt, &w->sixty, w->pieces, 8, PIECES, &out, NULL), MUSLIN_ERR_STRUCT_SIZE);
    ck_status(muslin_quilt_sixty(w->s.quilt, &w->sixty, w->pieces, sizeof w->pieces[0], 0, &out, NULL),
              MUSLIN_ERR_RANGE);
    ck_status(muslin_quilt_sixty(w->s.quilt, &w->sixty, w->pieces, sizeof w->pieces[0], SIZE_MAX, &out, NULL),
              MUSLIN_ERR_RANGE);
    /* far more cells than pieces can be counted */
    struct muslin_quilt_sixty_spec vast = w->sixty;
    vast.cells = vast.rows = 1048576;
    ck_assert_int_eq(refused(make_sixty, &vast, MUSLIN_ERR_RANGE).at, PIECES);
    end_work();
}
END_TEST

/* Rows of five: 1 2 2 and 3 1 1. */
START_TEST(a_rows_pieces_end_with_it)
{
    begin_work();
    struct muslin_problem problem;
    at_work.pieces[2].cells = 3; /* 1 2 3: a cell too many in the first row */
    problem = refused(make_sixty, &at_work.sixty, MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_CELLS);
    ck_assert_int_eq(problem.at, 2);
    ck_assert_int_eq(problem.value, 3);
    ck_assert_int_eq(problem.limit, 2);
    at_work.pieces[2].cells = 2;
    at_work.pieces[3].cells = 4; /* there is room, but no such piece */
    problem = refused(make_sixty, &at_work.sixty, MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.at, 3);
    ck_assert_int_eq(problem.limit, 3);
    at_work.pieces[3].cells = 3;
    at_work.n = PIECES - 1; /* one row only is full */
    problem = refused(make_sixty, &at_work.sixty, MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_PIECES);
    ck_assert_int_eq(problem.at, PIECES - 1);
    ck_assert_int_eq(problem.value, PIECES - 1);
    ck_assert_int_eq(problem.limit, PIECES);
    at_work.n = PIECES + 1; /* and a third one begun */
    problem = refused(make_sixty, &at_work.sixty, MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_CELLS);
    ck_assert_int_eq(problem.at, PIECES);
    ck_assert_int_eq(problem.limit, 0);
    end_work();
}
END_TEST

/* ---- what is made ----------------------------------------------------------------------------------------------- */

static struct muslin_node node_of(muslin_id id)
{
    struct muslin_node node = { .size = (uint32_t)sizeof node };
    ck_ok(muslin_quilt_node(at_work.s.quilt, id, &node, NULL));
    return node;
}

START_TEST(fields_are_nodes_of_their_own)
{
    begin_work();
    muslin_id field = 0;
    muslin_id again = 0;
    muslin_id rows = 0;
    muslin_id children[BLOCKS];
    size_t count = 0;
    ck_ok(make_diagonal(&at_work.diagonal, &field, NULL));
    ck_ok(make_diagonal(&at_work.diagonal, &again, NULL));
    ck_assert_int_eq(again, field);
    struct muslin_node node = node_of(field);
    ck_assert_int_eq(node.kind, MUSLIN_NODE_DIAGONAL);
    ck_assert_int_eq(node.children, BLOCKS);
    ck_assert_int_eq(node.depth, 2);
    ck_ok(muslin_quilt_children(at_work.s.quilt, field, children, BLOCKS, &count, NULL));
    ck_assert_int_eq(memcmp(children, at_work.blocks, sizeof children), 0);
    at_work.diagonal.set_off = 0;
    ck_ok(make_diagonal(&at_work.diagonal, &again, NULL));
    ck_assert_int_ne(again, field);
    ck_ok(make_sixty(&at_work.sixty, &rows, NULL));
    ck_ok(make_sixty(&at_work.sixty, &again, NULL));
    ck_assert_int_eq(again, rows);
    node = node_of(rows);
    ck_assert_int_eq(node.kind, MUSLIN_NODE_SIXTY);
    ck_assert_int_eq(node.children, 0);
    ck_assert_int_eq(node.depth, 1);
    at_work.sixty.first = 2;
    ck_ok(make_sixty(&at_work.sixty, &again, NULL));
    ck_assert_int_ne(again, rows);
    end_work();
}
END_TEST

/* Joined in between, or turned: what counts are fields within each other. */
START_TEST(four_fields_may_lie_within_each_other)
{
    begin_work();
    struct muslin_quilt_diagonal_spec spec = at_work.diagonal;
    struct muslin_problem problem = PROBLEM;
    spec.columns = spec.rows = 1;
    muslin_id inner = at_work.square;
    for (int depth = 1; depth <= 4; depth++) {
        ck_ok(muslin_quilt_diagonal(at_work.s.quilt, &spec, &inner, 1, &inner, NULL));
        inner = repeat_of(at_work.s.quilt, inner, 2, 2);
    }
    const struct muslin_part_counts before = counts_of(at_work.s.quilt);
    muslin_id out = -1;
    ck_status(muslin_quilt_diagonal(at_work.s.quilt, &spec, &inner, 1, &out, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_DEPTH);
    ck_assert_int_eq(problem.at, 0);
    ck_assert_int_eq(problem.value, 5);
    ck_assert_int_eq(problem.limit, MUSLIN_QUILT_POINT_DEPTH_MAX);
    ck_assert_int_eq(out, -1);
    ck_same_parts(at_work.s.quilt, &before);
    /* beside what has no field, last in its row, they still count */
    const muslin_id beside[] = { inner, at_work.square };
    const muslin_id row = join_of(at_work.s.quilt, MUSLIN_AXIS_ACROSS, beside, 2);
    ck_status(muslin_quilt_diagonal(at_work.s.quilt, &spec, &row, 1, &out, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.value, 5);
    /* side by side they do not add up */
    const muslin_id both[] = { inner, inner };
    join_of(at_work.s.quilt, MUSLIN_AXIS_ACROSS, both, 2);
    end_work();
}
END_TEST

static void ck_every_allocation(made_call *call, const void *spec, int64_t nodes)
{
    const struct muslin_part_counts before = counts_of(at_work.s.quilt);
    muslin_id out = 0;
    size_t round = 1;
    for (;; round++) {
        fail_at(&at_work.s, round);
        struct muslin_problem said = PROBLEM;
        if (call(spec, &out, &said) == MUSLIN_OK)
            break;
        ck_says_no_memory(&said, 0);
        ck_assert_int_eq(out, 0);
        ck_same_parts(at_work.s.quilt, &before);
    }
    fail_at(&at_work.s, 0);
    ck_assert_int_eq(counts_of(at_work.s.quilt).nodes, before.nodes + nodes);
}

/* Fills the quilt until its stores of arguments and of nodes are all but full. */
static void fill_stores(void)
{
    int64_t bytes = counts_of(at_work.s.quilt).bytes;
    muslin_len width = 1;
    while (counts_of(at_work.s.quilt).bytes < bytes + 60000)
        patch_of(at_work.s.quilt, at_work.s.blue, at_work.s.two, fixed_of(at_work.s.quilt, width++));
}

START_TEST(every_allocation_may_fail)
{
    begin_work();
    ck_every_allocation(make_diagonal, &at_work.diagonal, 1);
    end_work();
    begin_work();
    ck_every_allocation(make_sixty, &at_work.sixty, 1);
    end_work();
    begin_work();
    ck_every_allocation(make_diagonal, &at_work.sashed, 3); /* the cornerstone is there already */
    end_work();
    begin_work();
    fill_stores();
    ck_every_allocation(make_diagonal, &at_work.sashed, 3); /* the cornerstone is there already */
    end_work();
    begin_work();
    fill_stores();
    ck_every_allocation(make_sixty, &at_work.sixty, 1);
    ck_every_allocation(make_diagonal, &at_work.diagonal, 1);
    end_work();
}
END_TEST

Suite *quilt_field_suite(void)
{
    Suite *suite = suite_create("quilt_field");
    TCase *refusing = tcase_create("refused");
    tcase_add_test(refusing, specs_begin_as_stated);
    tcase_add_test(refusing, a_field_on_point_has_its_ranges);
    tcase_add_test(refusing, sashes_on_point_have_their_layouts);
    tcase_add_test(refusing, sashes_on_point_are_patches);
    tcase_add_test(refusing, rows_of_60_degree_pieces_have_their_ranges);
    tcase_add_test(refusing, a_rows_pieces_end_with_it);
    suite_add_tcase(suite, refusing);
    TCase *made = tcase_create("made");
    tcase_add_test(made, fields_are_nodes_of_their_own);
    tcase_add_test(made, four_fields_may_lie_within_each_other);
    tcase_add_test(made, every_allocation_may_fail);
    suite_add_tcase(suite, made);
    return suite;
}
