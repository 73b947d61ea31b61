/* test_quilt_rules.c - what all calls on a quilt refuse in one way: a missing quilt or output, structs, rows, counts.
 *
 * SPDX-License-Identifier: MIT */
#include "refusals.h"
#include "test_quilt.h"

#include "quilt_store.h"

/* The most children of one node. */
enum { CHILDREN = 2147483000 };

/* What calls are tried with. */
static struct sewn s;
static muslin_id patch;
static muslin_id half;  /* a half-square */
static muslin_id field; /* two triangles and their ends */

static muslin_status make_unit(struct muslin_quilt *quilt, void *out, struct muslin_problem *problem)
{
    struct muslin_quilt_unit_spec spec = MUSLIN_QUILT_UNIT_SPEC_INIT;
    const muslin_id two[] = { s.blue, s.white };
    spec.width = s.two;
    return muslin_quilt_unit(quilt, &spec, two, 2, out, problem);
}

static muslin_status make_sixty(struct muslin_quilt *quilt, void *out, struct muslin_problem *problem)
{
    struct muslin_quilt_sixty_spec spec = MUSLIN_QUILT_SIXTY_SPEC_INIT;
    struct muslin_quilt_sixty_piece_spec piece = MUSLIN_QUILT_SIXTY_PIECE_SPEC_INIT;
    spec.cells = piece.cells = 2;
    spec.height = s.two;
    spec.end_fabric = piece.fabric = s.blue;
    return muslin_quilt_sixty(quilt, &spec, &piece, sizeof piece, 1, out, problem);
}

static void begin_work(void)
{
    begin_sewing(&s);
    patch = patch_of(s.quilt, s.blue, s.two, s.two);
    ck_ok(make_unit(s.quilt, &half, NULL));
    ck_ok(make_sixty(s.quilt, &field, NULL));
}

static void end_work(void)
{
    end_sewing(&s);
}

/* ---- a quilt and an output -------------------------------------------------------------------------------------- */

/* A call that is well, on a quilt that may be missing, with an output that may be. */
typedef muslin_status quilt_call(struct muslin_quilt *quilt, void *out, struct muslin_problem *problem);

static muslin_status make_fabric(struct muslin_quilt *quilt, void *out, struct muslin_problem *problem)
{
    const struct muslin_quilt_fabric_spec spec = MUSLIN_QUILT_FABRIC_SPEC_INIT;
    return muslin_quilt_fabric(quilt, &spec, NULL, 0, out, problem);
}

static muslin_status make_measure(struct muslin_quilt *quilt, void *out, struct muslin_problem *problem)
{
    return muslin_quilt_measure(quilt, "", 0, 1, out, problem);
}

static muslin_status make_fixed(struct muslin_quilt *quilt, void *out, struct muslin_problem *problem)
{
    return muslin_quilt_fixed(quilt, 1, out, problem);
}

static muslin_status make_sum(struct muslin_quilt *quilt, void *out, struct muslin_problem *problem)
{
    struct muslin_quilt_sum_spec term = MUSLIN_QUILT_SUM_SPEC_INIT;
    term.measure = s.two;
    return muslin_quilt_sum(quilt, &term, sizeof term, 1, out, problem);
}

static muslin_status make_extent(struct muslin_quilt *quilt, void *out, struct muslin_problem *problem)
{
    return muslin_quilt_extent(quilt, patch, MUSLIN_AXIS_DOWN, out, problem);
}

static muslin_status make_patch(struct muslin_quilt *quilt, void *out, struct muslin_problem *problem)
{
    struct muslin_quilt_patch_spec spec = MUSLIN_QUILT_PATCH_SPEC_INIT;
    spec.fabric = s.blue;
    spec.width = spec.height = s.two;
    return muslin_quilt_patch(quilt, &spec, out, problem);
}

static muslin_status make_join(struct muslin_quilt *quilt, void *out, struct muslin_problem *problem)
{
    const struct muslin_quilt_join_spec spec = MUSLIN_QUILT_JOIN_SPEC_INIT;
    const muslin_id two[] = { patch, patch };
    return muslin_quilt_join(quilt, &spec, two, 2, out, problem);
}

static muslin_status make_turn(struct muslin_quilt *quilt, void *out, struct muslin_problem *problem)
{
    return muslin_quilt_turn(quilt, patch, 1, out, problem);
}

static muslin_status make_mirror(struct muslin_quilt *quilt, void *out, struct muslin_problem *problem)
{
    return muslin_quilt_mirror(quilt, patch, out, problem);
}

static muslin_status make_trim(struct muslin_quilt *quilt, void *out, struct muslin_problem *problem)
{
    const struct muslin_quilt_trim_spec spec = MUSLIN_QUILT_TRIM_SPEC_INIT;
    return muslin_quilt_trim(quilt, patch, &spec, out, problem);
}

static muslin_status make_grid(struct muslin_quilt *quilt, void *out, struct muslin_problem *problem)
{
    const muslin_id two[] = { patch, patch };
    return muslin_quilt_grid(quilt, 2, 1, two, 2, out, problem);
}

static muslin_status make_repeat(struct muslin_quilt *quilt, void *out, struct muslin_problem *problem)
{
    const int32_t upright = 0;
    return muslin_quilt_repeat(quilt, patch, 2, 2, &upright, 1, 1, 1, out, problem);
}

static muslin_status make_diagonal(struct muslin_quilt *quilt, void *out, struct muslin_problem *problem)
{
    struct muslin_quilt_diagonal_spec spec = MUSLIN_QUILT_DIAGONAL_SPEC_INIT;
    const muslin_id two[] = { patch, patch };
    spec.side_fabric = spec.corner_fabric = s.blue;
    spec.columns = 2;
    return muslin_quilt_diagonal(quilt, &spec, two, 2, out, problem);
}

static muslin_status read_id(struct muslin_quilt *quilt, void *out, struct muslin_problem *problem)
{
    return muslin_quilt_id(quilt, MUSLIN_SORT_NODE, 1, out, problem);
}

static muslin_status read_name(struct muslin_quilt *quilt, void *out, struct muslin_problem *problem)
{
    return muslin_quilt_name(quilt, s.blue, NULL, 0, out, problem);
}

static muslin_status read_children(struct muslin_quilt *quilt, void *out, struct muslin_problem *problem)
{
    return muslin_quilt_children(quilt, patch, NULL, 0, out, problem);
}

static muslin_status read_fabrics(struct muslin_quilt *quilt, void *out, struct muslin_problem *problem)
{
    return muslin_quilt_read_fabrics(quilt, half, NULL, 0, out, problem);
}

static muslin_status read_pieces(struct muslin_quilt *quilt, void *out, struct muslin_problem *problem)
{
    return muslin_quilt_read_sixty_pieces(quilt, field, NULL, 0, 0, out, problem);
}

static muslin_status read_node(struct muslin_quilt *quilt, void *out, struct muslin_problem *problem)
{
    return muslin_quilt_node(quilt, patch, out, problem);
}

static muslin_status read_counts(struct muslin_quilt *quilt, void *out, struct muslin_problem *problem)
{
    return muslin_quilt_counts(quilt, out, problem);
}

static muslin_status read_fabric(struct muslin_quilt *quilt, void *out, struct muslin_problem *problem)
{
    return muslin_quilt_read_fabric(quilt, s.blue, out, problem);
}

static muslin_status read_measure(struct muslin_quilt *quilt, void *out, struct muslin_problem *problem)
{
    return muslin_quilt_read_measure(quilt, s.two, out, problem);
}

static muslin_status read_patch(struct muslin_quilt *quilt, void *out, struct muslin_problem *problem)
{
    return muslin_quilt_read_patch(quilt, patch, out, problem);
}

static muslin_status lay_node(struct muslin_quilt *quilt, void *out, struct muslin_problem *problem)
{
    return muslin_quilt_lay(quilt, patch, 1, 1, out, problem);
}

static quilt_call *const calls[] = {
    make_fabric, make_measure, make_fixed, make_sum, make_extent, make_patch, make_unit, make_join, make_turn,
    make_mirror, lay_node, make_trim, make_grid, make_repeat, make_diagonal, make_sixty, read_id, read_name,
    read_children, read_fabrics, read_pieces, read_node, read_counts, read_fabric, read_measure, read_patch,
};

/* Reading calls want the size of what they fill: 4096 is one that none refuses. */
START_TEST(a_quilt_and_an_output_are_wanted)
{
    union roomy out;
    begin_work();
    for (size_t i = 0; i < COUNT_OF(calls); i++) {
        struct muslin_problem problem = PROBLEM;
        lay_out_output(&out, 4096);
        ck_status(calls[i](NULL, &out, &problem), MUSLIN_ERR_NULL);
        ck_assert_int_eq(problem.argument, MUSLIN_ARG_QUILT);
        ck_assert(is_untouched_from(&out, sizeof out.head[0]));
        ck_status(calls[i](s.quilt, NULL, &problem), MUSLIN_ERR_NULL);
        ck_assert_int_eq(problem.argument, MUSLIN_ARG_OUTPUT);
        ck_assert_int_eq(problem.at, 0);
        ck_assert_int_eq(problem.value, 0);
        ck_assert_int_eq(problem.limit, 0);
        muslin_status status = calls[i](s.quilt, &out, &problem);
        ck_assert_msg(status == MUSLIN_OK, "call %zu: %s", i, problem.text);
    }
    end_work();
}
END_TEST

/* Two fabrics, a measure beside the quilt's own two, and a patch are all that it may hold. */
START_TEST(a_full_quilt_says_so_of_no_row)
{
    quilt_call *const making[] = { make_fabric, make_measure, make_fixed,    make_sum,  make_extent,
                                   make_unit,   make_join,    make_turn,     lay_node,  make_mirror,
                                   make_grid,   make_repeat,  make_diagonal, make_sixty };
    struct muslin_quilt_spec spec = MUSLIN_QUILT_SPEC_INIT;
    struct muslin_quilt *full = NULL;
    muslin_id out = -1;
    begin_work();
    spec.most = 6;
    ck_ok(muslin_quilt_create(&spec, &s.memory.allocator, &full, NULL));
    ck_assert_int_eq(fabric_of(full, "blue"), s.blue);
    ck_assert_int_eq(fabric_of(full, "white"), s.white);
    ck_assert_int_eq(measure_of(full, "strip", WHOLE_IN(2)), s.two);
    ck_assert_int_eq(patch_of(full, s.blue, s.two, s.two), patch);
    for (size_t i = 0; i < COUNT_OF(making); i++) {
        struct muslin_problem problem = PROBLEM;
        ck_status(making[i](full, &out, &problem), MUSLIN_ERR_WORK_LIMIT);
        ck_assert_int_eq(problem.argument, MUSLIN_ARG_MOST);
        ck_assert_int_eq(problem.at, 0);
        ck_assert_int_eq(problem.value, 7);
        ck_assert_int_eq(problem.limit, 6);
        ck_assert_int_eq(out, -1);
    }
    /* names that were not kept take no more memory, however often */
    const char name[200] = { 0 };
    const struct muslin_part_counts before = counts_of(full);
    for (int i = 0; i < 20; i++)
        ck_status(muslin_quilt_measure(full, name, sizeof name, 1, &out, NULL), MUSLIN_ERR_WORK_LIMIT);
    ck_assert_int_le(counts_of(full).bytes, before.bytes + 512);
    muslin_quilt_free(full);
    end_work();
}
END_TEST

/* Each part has sixteen numbers on the average, and a join one for each child. */
START_TEST(children_count_as_parts)
{
    enum { MOST = 1000, FEWER = 15500, MORE = 16500 };
    struct muslin_quilt_spec spec = MUSLIN_QUILT_SPEC_INIT;
    const struct muslin_quilt_join_spec join = MUSLIN_QUILT_JOIN_SPEC_INIT;
    struct muslin_quilt *quilt = NULL;
    struct muslin_problem problem = PROBLEM;
    muslin_id *children = calloc(MORE, sizeof *children);
    muslin_id out = 0;
    begin_work();
    spec.most = MOST;
    ck_assert_ptr_nonnull(children);
    ck_ok(muslin_quilt_create(&spec, &s.memory.allocator, &quilt, NULL));
    const muslin_id two = measure_of(quilt, "strip", WHOLE_IN(2));
    const muslin_id child = patch_of(quilt, fabric_of(quilt, "blue"), two, two);
    for (int i = 0; i < MORE; i++)
        children[i] = child;
    ck_status(muslin_quilt_join(quilt, &join, children, MORE, &out, &problem), MUSLIN_ERR_WORK_LIMIT);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_MOST);
    ck_assert_int_ge(problem.value, MORE / 16);
    ck_assert_int_le(problem.value, MORE / 16 + 5); /* the few numbers of the other parts */
    ck_assert_int_eq(problem.limit, MOST);
    ck_ok(muslin_quilt_join(quilt, &join, children, FEWER, &out, &problem));
    /* the most children that may be told are far more than such a quilt may hold */
    ck_status(muslin_quilt_join(quilt, &join, children, CHILDREN, &out, &problem), MUSLIN_ERR_WORK_LIMIT);
    ck_status(muslin_quilt_join(quilt, &join, children, (size_t)CHILDREN + 1, &out, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_CHILDREN);
    ck_assert_int_eq(problem.value, INT64_C(1) + CHILDREN);
    ck_assert_int_eq(problem.limit, CHILDREN);
    free(children);
    muslin_quilt_free(quilt);
    end_work();
}
END_TEST

/* ---- structs ---------------------------------------------------------------------------------------------------- */

/* A quilt made is told by an id's worth of output, and given back. */
static muslin_status create(const void *spec, void *out, struct muslin_problem *problem)
{
    struct muslin_quilt *quilt = NULL;
    muslin_status status = muslin_quilt_create(spec, &s.memory.allocator, &quilt, problem);
    if (status == MUSLIN_OK)
        memset(out, 0, 8);
    muslin_quilt_free(quilt);
    return status;
}

static muslin_status fabric_with(const void *spec, void *out, struct muslin_problem *problem)
{
    return muslin_quilt_fabric(s.quilt, spec, "", 0, out, problem);
}

static muslin_status patch_with(const void *spec, void *out, struct muslin_problem *problem)
{
    return muslin_quilt_patch(s.quilt, spec, out, problem);
}

static muslin_status join_with(const void *spec, void *out, struct muslin_problem *problem)
{
    return muslin_quilt_join(s.quilt, spec, &patch, 1, out, problem);
}

static muslin_status trim_with(const void *spec, void *out, struct muslin_problem *problem)
{
    return muslin_quilt_trim(s.quilt, patch, spec, out, problem);
}

static muslin_status diagonal_with(const void *spec, void *out, struct muslin_problem *problem)
{
    return muslin_quilt_diagonal(s.quilt, spec, &patch, 1, out, problem);
}

static muslin_status sixty_with(const void *spec, void *out, struct muslin_problem *problem)
{
    struct muslin_quilt_sixty_piece_spec piece = MUSLIN_QUILT_SIXTY_PIECE_SPEC_INIT;
    piece.fabric = s.blue;
    return muslin_quilt_sixty(s.quilt, spec, &piece, sizeof piece, 1, out, problem);
}

/* None of it is a struct: what is made is an id, of 8 bytes. */
static struct ruled made_of(ruled_call *call, const void *spec, size_t size)
{
    const struct ruled ruled = { call, spec, (uint32_t)size, 8, 8, 0 };
    return ruled;
}

START_TEST(requests_are_structs_with_their_rules)
{
    const struct muslin_quilt_spec quilt = MUSLIN_QUILT_SPEC_INIT;
    const struct muslin_quilt_fabric_spec fabric = MUSLIN_QUILT_FABRIC_SPEC_INIT;
    const struct muslin_quilt_trim_spec trim = MUSLIN_QUILT_TRIM_SPEC_INIT;
    const struct muslin_quilt_join_spec join = MUSLIN_QUILT_JOIN_SPEC_INIT;
    struct muslin_quilt_patch_spec of_two = MUSLIN_QUILT_PATCH_SPEC_INIT;
    struct muslin_quilt_diagonal_spec diagonal = MUSLIN_QUILT_DIAGONAL_SPEC_INIT;
    struct muslin_quilt_sixty_spec sixty = MUSLIN_QUILT_SIXTY_SPEC_INIT;
    begin_work();
    of_two.fabric = diagonal.side_fabric = diagonal.corner_fabric = sixty.end_fabric = s.blue;
    of_two.width = of_two.height = sixty.height = s.two;
    const struct ruled ruled[] = {
        made_of(create, &quilt, sizeof quilt),           made_of(fabric_with, &fabric, sizeof fabric),
        made_of(patch_with, &of_two, sizeof of_two),     made_of(trim_with, &trim, sizeof trim),
        made_of(diagonal_with, &diagonal, sizeof diagonal), made_of(sixty_with, &sixty, sizeof sixty),
    };
    for (size_t i = 0; i < COUNT_OF(ruled); i++) {
        ck_spec_rules(&ruled[i]);
        ck_no_flag_known(&ruled[i]);
    }
    const struct ruled joined = made_of(join_with, &join, sizeof join);
    ck_spec_rules(&joined);
    end_work();
}
END_TEST

START_TEST(members_have_their_ranges)
{
    const struct muslin_quilt_spec quilt = MUSLIN_QUILT_SPEC_INIT;
    const struct muslin_quilt_fabric_spec fabric = MUSLIN_QUILT_FABRIC_SPEC_INIT;
    const struct muslin_quilt_join_spec join = MUSLIN_QUILT_JOIN_SPEC_INIT;
    const struct refusal of_quilts[] = {
        OUTSIDE(muslin_quilt_spec, allowance, 0, MUSLIN_SIZE_MAX / 8, MUSLIN_ARG_SEAM_ALLOWANCE),
        OUTSIDE(muslin_quilt_spec, take_up, 0, MUSLIN_SIZE_MAX / 8, MUSLIN_ARG_TAKE_UP),
        OUTSIDE(muslin_quilt_spec, most, 1, 134217728, MUSLIN_ARG_MOST),
        OUTSIDE(muslin_quilt_spec, tag, 0, 1048575, MUSLIN_ARG_TAG),
    };
    const struct refusal of_fabrics[] = {
        OUTSIDE(muslin_quilt_fabric_spec, usable_width, 1, MUSLIN_SIZE_MAX, MUSLIN_ARG_USABLE_WIDTH),
        NOT_A_CHOICE(muslin_quilt_fabric_spec, print, MUSLIN_PRINT_STRIPE_ACROSS, MUSLIN_ARG_PRINT_DIRECTION),
        BEYOND(muslin_quilt_fabric_spec, darkness, -1, 0, MUSLIN_ARG_DARKNESS),
        BEYOND(muslin_quilt_fabric_spec, darkness, 101, 100, MUSLIN_ARG_DARKNESS),
    };
    const struct refusal of_joins[] = {
        NOT_A_CHOICE(muslin_quilt_join_spec, axis, MUSLIN_AXIS_DOWN, MUSLIN_ARG_AXIS),
        NOT_A_CHOICE(muslin_quilt_join_spec, piecing, MUSLIN_STRIP_PIECING_NEVER, MUSLIN_ARG_STRIP_PIECING),
        NOT_A_CHOICE(muslin_quilt_join_spec, press, MUSLIN_SEAM_PRESS_OPEN, MUSLIN_ARG_PRESS),
        REFUSAL(muslin_quilt_join_spec, pad, 1, MUSLIN_ERR_STRUCT_TAIL, MUSLIN_ARG_SPEC),
    };
    begin_work();
    const struct ruled created = made_of(create, &quilt, sizeof quilt);
    const struct ruled woven = made_of(fabric_with, &fabric, sizeof fabric);
    const struct ruled joined = made_of(join_with, &join, sizeof join);
    ck_refusals(&created, of_quilts, COUNT_OF(of_quilts));
    ck_refusals(&woven, of_fabrics, COUNT_OF(of_fabrics));
    ck_refusals(&joined, of_joins, COUNT_OF(of_joins));
    end_work();
}
END_TEST

/* The last values within the ranges of its spec. */
START_TEST(a_quilt_may_have_the_ends_of_its_ranges)
{
    struct muslin_quilt_spec spec = MUSLIN_QUILT_SPEC_INIT;
    int64_t made = 0;
    begin_work();
    spec.allowance = spec.take_up = MUSLIN_SIZE_MAX / 8;
    spec.most = 134217728;
    spec.tag = 1048575;
    ck_ok(create(&spec, &made, NULL));
    spec.allowance = spec.take_up = 0;
    spec.most = 2;
    spec.tag = 0;
    ck_ok(create(&spec, &made, NULL));
    end_work();
}
END_TEST

/* ---- what is stored --------------------------------------------------------------------------------------------- */

static muslin_id once(muslin_id measure, int64_t factor)
{
    struct muslin_quilt_sum_spec term = MUSLIN_QUILT_SUM_SPEC_INIT;
    muslin_id id = 0;
    term.measure = measure;
    term.factor = factor;
    ck_ok(muslin_quilt_sum(s.quilt, &term, sizeof term, 1, &id, NULL));
    return id;
}

/* Found by Python: FNV-1a over kind, measure and factor, folded to 32 bits, is the same for each two. */
START_TEST(sums_of_one_hash_are_told_apart)
{
    muslin_id allowance = 0;
    begin_work();
    ck_ok(muslin_quilt_seam(s.quilt, &allowance, NULL, NULL));
    muslin_id sixth = s.two;
    while (muslin_id_number(sixth) < 6)
        sixth = measure_of(s.quilt, "", 1);
    const muslin_id of_first = once(allowance, -508117);
    const muslin_id of_sixth = once(sixth, -470112);
    ck_assert_int_ne(once(s.two, -511567), of_first);
    ck_assert_int_ne(once(sixth, 245276), of_sixth);
    ck_assert_int_eq(once(allowance, -508117), of_first);
    ck_assert_int_eq(once(sixth, -470112), of_sixth);
    end_work();
}
END_TEST

/* An id's number is counted from 1: what has none of a good id's is no id, whatever its sort. */
START_TEST(a_number_of_none_is_foreign)
{
    struct muslin_problem problem = PROBLEM;
    muslin_id out = -1;
    begin_work();
    const muslin_id none = s.two - muslin_id_number(s.two);
    ck_assert_int_eq(muslin_id_sort(none), 0);
    ck_assert_int_eq(muslin_id_number(none), 0);
    ck_status(muslin_quilt_turn(s.quilt, patch - muslin_id_number(patch), 1, &out, &problem), MUSLIN_ERR_FOREIGN);
    struct muslin_quilt_patch_spec spec = MUSLIN_QUILT_PATCH_SPEC_INIT;
    spec.fabric = s.blue;
    spec.width = none;
    spec.height = s.two;
    ck_status(muslin_quilt_patch(s.quilt, &spec, &out, &problem), MUSLIN_ERR_FOREIGN);
    ck_assert_int_eq(problem.value, none);
    ck_assert_int_eq(out, -1);
    end_work();
}
END_TEST

/* Wherever its name ends, each reads back. */
START_TEST(names_may_be_of_any_length)
{
    char letters[201];
    char buf[201];
    size_t need = 0;
    for (int i = 0; i < 200; i++)
        letters[i] = (char)('a' + i % 26);
    letters[200] = '\0';
    for (size_t bytes = 0; bytes <= 200; bytes++) {
        begin_sewing(&s);
        const muslin_id first = measure_of(s.quilt, letters + 200 - bytes, 1);
        const muslin_id second = fabric_of(s.quilt, "other");
        ck_ok(muslin_quilt_name(s.quilt, first, buf, sizeof buf, &need, NULL));
        ck_assert_str_eq(buf, letters + 200 - bytes);
        ck_ok(muslin_quilt_name(s.quilt, second, buf, sizeof buf, &need, NULL));
        ck_assert_str_eq(buf, "other");
        end_sewing(&s);
    }
}
END_TEST

/* As many bytes as the rows have, where their number fits 32 bits and their size half of all memory that there can be;
 * else more than any machine has. */
START_TEST(rows_that_would_not_fit_memory_are_too_many)
{
    const size_t third = SIZE_MAX / 2 / 3;
    const uint64_t most = INT32_MAX;
    ck_assert_uint_eq(msl_bytes(0, 8), 0);
    ck_assert_uint_eq(msl_bytes(5, 12), 60);
    ck_assert_uint_eq(msl_bytes(most, 1), INT32_MAX);
    ck_assert_uint_eq(msl_bytes(3, third), 3 * third);
    const size_t too_many[] = { msl_bytes(most + 1, 1), msl_bytes(4, third), msl_bytes(UINT64_MAX, 1),
                                msl_bytes(UINT64_C(1) << 40, 1) };
    for (size_t i = 0; i < COUNT_OF(too_many); i++) {
        ck_assert(too_many[i] > SIZE_MAX / 4);
        ck_assert(too_many[i] <= SIZE_MAX / 2);
    }
}
END_TEST

/* Two blocks above each other, a sash as wide as the upper one between them: a patch, its length, and the join. */
START_TEST(sashing_makes_no_more_than_it_needs)
{
    struct muslin_quilt_sashed_spec spec = MUSLIN_QUILT_SASHED_SPEC_INIT;
    muslin_id out = 0;
    begin_work();
    const muslin_id blocks[] = { patch, half };
    const struct muslin_part_counts before = counts_of(s.quilt);
    spec.rows = 2;
    spec.sash = s.two;
    spec.sash_fabric = s.blue;
    ck_ok(muslin_quilt_sashed(s.quilt, &spec, blocks, 2, &out, NULL));
    const struct muslin_part_counts after = counts_of(s.quilt);
    ck_assert_int_eq(after.measures, before.measures + 1);
    ck_assert_int_eq(after.nodes, before.nodes + 2);
    end_work();
}
END_TEST

/* ---- rows and counts -------------------------------------------------------------------------------------------- */

/* The second of two terms. */
static muslin_status sum_with(const struct muslin_quilt_sum_spec *second, muslin_id *out,
                              struct muslin_problem *problem)
{
    struct muslin_quilt_sum_spec terms[] = { MUSLIN_QUILT_SUM_SPEC_INIT, *second };
    terms[0].measure = s.two;
    return muslin_quilt_sum(s.quilt, terms, sizeof terms[0], 2, out, problem);
}

START_TEST(terms_are_rows_with_their_rules)
{
    struct muslin_quilt_sum_spec term = MUSLIN_QUILT_SUM_SPEC_INIT;
    muslin_id out = 0;
    struct muslin_problem problem = PROBLEM;
    begin_work();
    term.measure = s.two;
    for (uint32_t bit = 0; bit < 32; bit++) {
        term.flags = UINT32_C(1) << bit;
        ck_status(sum_with(&term, &out, &problem), MUSLIN_ERR_FLAGS);
        ck_assert_int_eq(problem.argument, MUSLIN_ARG_ROWS);
        ck_assert_int_eq(problem.at, 1);
        ck_assert_int_eq(problem.limit, 0);
    }
    term.flags = 0;
    /* one row less than a struct, and one longer than any */
    ck_status(muslin_quilt_sum(s.quilt, &term, sizeof term - 1, 1, &out, &problem), MUSLIN_ERR_STRUCT_SIZE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_ROW_SIZE);
    ck_status(muslin_quilt_sum(s.quilt, &term, 4097, 1, &out, &problem), MUSLIN_ERR_STRUCT_SIZE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_ROW_SIZE);
    ck_status(muslin_quilt_sum(s.quilt, &term, sizeof term, 65, &out, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_PIECES);
    ck_assert_int_eq(problem.value, 65);
    ck_assert_int_eq(problem.limit, 64);
    end_work();
}
END_TEST

static void ck_names(const struct muslin_problem *problem, int32_t argument, int64_t value, int64_t limit)
{
    ck_assert_int_eq(problem->argument, argument);
    ck_assert_int_eq(problem->value, value);
    ck_assert_int_eq(problem->limit, limit);
}

START_TEST(grids_and_repeats_have_their_counts)
{
    const int32_t turns[] = { 0, 1, -1, 4 };
    struct muslin_problem p = PROBLEM;
    muslin_id out = 0;
    begin_work();
    const muslin_id two[] = { patch, patch };
    const struct muslin_part_counts before = counts_of(s.quilt);
    ck_status(muslin_quilt_grid(s.quilt, 0, 2, two, 2, &out, &p), MUSLIN_ERR_RANGE);
    ck_names(&p, MUSLIN_ARG_COLUMNS, 0, 1);
    ck_status(muslin_quilt_grid(s.quilt, 2, -1, two, 2, &out, &p), MUSLIN_ERR_RANGE);
    ck_names(&p, MUSLIN_ARG_QUILT_ROWS, -1, 1);
    ck_status(muslin_quilt_repeat(s.quilt, patch, 0, 1, turns, 1, 1, 1, &out, &p), MUSLIN_ERR_RANGE);
    ck_names(&p, MUSLIN_ARG_COLUMNS, 0, 1);
    ck_status(muslin_quilt_repeat(s.quilt, patch, 1, 0, turns, 1, 1, 1, &out, &p), MUSLIN_ERR_RANGE);
    ck_names(&p, MUSLIN_ARG_QUILT_ROWS, 0, 1);
    ck_status(muslin_quilt_repeat(s.quilt, patch, 1, 1, turns, 1, 0, 1, &out, &p), MUSLIN_ERR_RANGE);
    ck_names(&p, MUSLIN_ARG_COLUMNS, 0, 1);
    ck_status(muslin_quilt_repeat(s.quilt, patch, 1, 1, turns, 1, 1, 0, &out, &p), MUSLIN_ERR_RANGE);
    ck_names(&p, MUSLIN_ARG_QUILT_ROWS, 0, 1);
    ck_status(muslin_quilt_repeat(s.quilt, patch, 1, 1, turns, 2, 1, 1, &out, &p), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(p.limit, 1);
    ck_status(muslin_quilt_repeat(s.quilt, patch, 1, 1, turns, SIZE_MAX, 1, 1, &out, &p), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(p.argument, MUSLIN_ARG_TURNING);
    ck_status(muslin_quilt_repeat(s.quilt, patch, 1, 1, turns, CHILDREN, 1, 1, &out, &p), MUSLIN_ERR_RANGE);
    ck_names(&p, MUSLIN_ARG_TURNING, CHILDREN, 1);
    ck_status(muslin_quilt_repeat(s.quilt, patch, 3, 1, turns, 3, 3, 1, &out, &p), MUSLIN_ERR_RANGE);
    ck_names(&p, MUSLIN_ARG_QUARTER_TURNS, -1, 0);
    ck_assert_int_eq(p.at, 2);
    ck_status(muslin_quilt_repeat(s.quilt, patch, 1, 1, turns + 3, 1, 1, 1, &out, &p), MUSLIN_ERR_RANGE);
    ck_names(&p, MUSLIN_ARG_QUARTER_TURNS, 4, 3);
    ck_status(muslin_quilt_lay(s.quilt, patch, -1, 0, &out, &p), MUSLIN_ERR_RANGE);
    ck_names(&p, MUSLIN_ARG_QUARTER_TURNS, -1, 0);
    ck_status(muslin_quilt_lay(s.quilt, patch, 4, 0, &out, &p), MUSLIN_ERR_RANGE);
    ck_names(&p, MUSLIN_ARG_QUARTER_TURNS, 4, 3);
    ck_status(muslin_quilt_lay(s.quilt, patch, 0, -1, &out, &p), MUSLIN_ERR_CHOICE);
    ck_names(&p, MUSLIN_ARG_MIRRORED, -1, 1);
    ck_status(muslin_quilt_lay(s.quilt, patch, 0, 2, &out, &p), MUSLIN_ERR_CHOICE);
    ck_names(&p, MUSLIN_ARG_MIRRORED, 2, 1);
    ck_same_parts(s.quilt, &before);
    end_work();
}
END_TEST

/* Two triangles' room: pieces 0, or 3, or one of each of 2 and 1. */
START_TEST(sixty_degree_pieces_have_their_counts)
{
    struct muslin_quilt_sixty_spec spec = MUSLIN_QUILT_SIXTY_SPEC_INIT;
    struct muslin_quilt_sixty_piece_spec pieces[] = { MUSLIN_QUILT_SIXTY_PIECE_SPEC_INIT,
                                                      MUSLIN_QUILT_SIXTY_PIECE_SPEC_INIT,
                                                      MUSLIN_QUILT_SIXTY_PIECE_SPEC_INIT };
    struct muslin_problem p = PROBLEM;
    muslin_id out = 0;
    begin_work();
    pieces[0].fabric = pieces[1].fabric = pieces[2].fabric = spec.end_fabric = s.blue;
    spec.height = s.two;
    spec.cells = 1;
    spec.rows = 2;
    ck_status(muslin_quilt_sixty(s.quilt, &spec, pieces, sizeof pieces[0], 0, &out, &p), MUSLIN_ERR_RANGE);
    ck_names(&p, MUSLIN_ARG_PIECES, 0, 1);
    ck_assert_int_eq(p.at, 0);
    /* more pieces than triangles */
    ck_status(muslin_quilt_sixty(s.quilt, &spec, pieces, sizeof pieces[0], 3, &out, &p), MUSLIN_ERR_RANGE);
    ck_names(&p, MUSLIN_ARG_PIECES, 3, 2);
    ck_status(muslin_quilt_sixty(s.quilt, &spec, pieces, sizeof pieces[0], SIZE_MAX, &out, &p), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(p.argument, MUSLIN_ARG_PIECES);
    ck_assert_int_eq(p.limit, 2);
    ck_status(muslin_quilt_sixty(s.quilt, &spec, pieces, sizeof pieces[0] - 1, 2, &out, &p), MUSLIN_ERR_STRUCT_SIZE);
    ck_names(&p, MUSLIN_ARG_ROW_SIZE, sizeof pieces[0] - 1, sizeof pieces[0]);
    ck_ok(muslin_quilt_sixty(s.quilt, &spec, pieces, sizeof pieces[0], 2, &out, &p));
    /* two numbers are kept for each: of far more triangles half as many as can be counted */
    spec.cells = spec.rows = 1048576;
    ck_status(muslin_quilt_sixty(s.quilt, &spec, pieces, sizeof pieces[0], SIZE_MAX, &out, &p), MUSLIN_ERR_RANGE);
    ck_names(&p, MUSLIN_ARG_PIECES, MUSLIN_COUNT_MAX, MUSLIN_COUNT_MAX / 2);
    end_work();
}
END_TEST

/* What all is said of an id of another sort in each of the members of a field on point: its place among those of its
 * name, and the id. */
START_TEST(members_of_a_field_on_point_are_told_by_their_place)
{
    struct muslin_quilt_diagonal_spec spec = MUSLIN_QUILT_DIAGONAL_SPEC_INIT;
    begin_work();
    spec.layout = MUSLIN_POINT_LAYOUT_SASH_OUTER;
    spec.side_fabric = spec.corner_fabric = spec.sash_fabric = spec.cornerstone = s.blue;
    spec.set_off = spec.sash = s.two;
    const struct refusal fabrics[] = {
        REFUSAL(muslin_quilt_diagonal_spec, side_fabric, s.two, MUSLIN_ERR_FOREIGN, MUSLIN_ARG_FABRIC),
        REFUSAL(muslin_quilt_diagonal_spec, corner_fabric, s.two, MUSLIN_ERR_FOREIGN, MUSLIN_ARG_FABRIC),
        REFUSAL(muslin_quilt_diagonal_spec, sash_fabric, s.two, MUSLIN_ERR_FOREIGN, MUSLIN_ARG_FABRIC),
        REFUSAL(muslin_quilt_diagonal_spec, cornerstone, s.two, MUSLIN_ERR_FOREIGN, MUSLIN_ARG_FABRIC),
        REFUSAL(muslin_quilt_diagonal_spec, set_off, s.blue, MUSLIN_ERR_FOREIGN, MUSLIN_ARG_MEASURE),
        REFUSAL(muslin_quilt_diagonal_spec, sash, s.blue, MUSLIN_ERR_FOREIGN, MUSLIN_ARG_MEASURE),
    };
    const struct ruled sashed = made_of(diagonal_with, &spec, sizeof spec);
    ck_refusals(&sashed, fabrics, COUNT_OF(fabrics));
    /* plain ones have neither sashes nor cornerstones */
    struct muslin_quilt_diagonal_spec plain = spec;
    plain.layout = MUSLIN_POINT_LAYOUT_PLAIN;
    plain.sash = plain.sash_fabric = plain.cornerstone = 0;
    const struct ruled unsashed = made_of(diagonal_with, &plain, sizeof plain);
    const struct refusal sash = BEYOND(muslin_quilt_diagonal_spec, sash, s.two, 0, MUSLIN_ARG_MEASURE);
    const struct refusal fabric = BEYOND(muslin_quilt_diagonal_spec, sash_fabric, s.blue, 0, MUSLIN_ARG_FABRIC);
    const struct refusal cornerstone = BEYOND(muslin_quilt_diagonal_spec, cornerstone, s.blue, 0, MUSLIN_ARG_FABRIC);
    ck_refusals_at(&unsashed, 1, &sash, 1);
    ck_refusals_at(&unsashed, 2, &fabric, 1);
    ck_refusals_at(&unsashed, 3, &cornerstone, 1);
    end_work();
}
END_TEST

Suite *quilt_rules_suite(void)
{
    Suite *suite = suite_create("quilt_rules");
    TCase *tests = tcase_create("rules");
    tcase_add_test(tests, a_quilt_and_an_output_are_wanted);
    tcase_add_test(tests, a_full_quilt_says_so_of_no_row);
    tcase_add_test(tests, children_count_as_parts);
    tcase_add_test(tests, sums_of_one_hash_are_told_apart);
    tcase_add_test(tests, a_number_of_none_is_foreign);
    tcase_add_test(tests, names_may_be_of_any_length);
    tcase_add_test(tests, rows_that_would_not_fit_memory_are_too_many);
    tcase_add_test(tests, sashing_makes_no_more_than_it_needs);
    tcase_add_test(tests, requests_are_structs_with_their_rules);
    tcase_add_test(tests, members_have_their_ranges);
    tcase_add_test(tests, a_quilt_may_have_the_ends_of_its_ranges);
    tcase_add_test(tests, terms_are_rows_with_their_rules);
    tcase_add_test(tests, grids_and_repeats_have_their_counts);
    tcase_add_test(tests, sixty_degree_pieces_have_their_counts);
    tcase_add_test(tests, members_of_a_field_on_point_are_told_by_their_place);
    suite_add_tcase(suite, tests);
    return suite;
}
