/* test_quilt_round.c - what grows round a centre: the trees that come of it, and what it refuses.
 *
 * SPDX-License-Identifier: MIT */
#include "refusals.h"
#include "test_quilt.h"

enum { BOTH = MUSLIN_QUILT_SASHED_FRAME | MUSLIN_QUILT_SASHED_CORNERSTONES };

INIT_CALL(quilt_pinwheel)
INIT_CALL(quilt_set_in)
INIT_CALL(quilt_log)
INIT_CALL(quilt_surround)
INIT_CALL(quilt_sashed)

START_TEST(specs_begin_as_stated)
{
    const struct muslin_quilt_pinwheel_spec pinwheel = MUSLIN_QUILT_PINWHEEL_SPEC_INIT;
    const struct muslin_quilt_set_in_spec set_in = MUSLIN_QUILT_SET_IN_SPEC_INIT;
    const struct muslin_quilt_log_spec log = MUSLIN_QUILT_LOG_SPEC_INIT;
    const struct muslin_quilt_surround_spec surround = MUSLIN_QUILT_SURROUND_SPEC_INIT;
    const struct muslin_quilt_sashed_spec sashed = MUSLIN_QUILT_SASHED_SPEC_INIT;
    ck_init_rules(init_quilt_pinwheel, &pinwheel, sizeof pinwheel);
    ck_init_rules(init_quilt_set_in, &set_in, sizeof set_in);
    ck_init_rules(init_quilt_log, &log, sizeof log);
    ck_init_rules(init_quilt_surround, &surround, sizeof surround);
    ck_init_rules(init_quilt_sashed, &sashed, sizeof sashed);
}
END_TEST

/* ---- each call with a good request ------------------------------------------------------------------------------ */

/* A quilt for the calls below, which know it as `at_work`: two patches, and all five requests. */
struct work {
    struct sewn s;
    muslin_id square;
    muslin_id strip;
    muslin_id blocks[6];
    struct muslin_quilt_pinwheel_spec pinwheel;
    struct muslin_quilt_set_in_spec set_in;
    struct muslin_quilt_log_spec logs[3];
    struct muslin_quilt_surround_spec surround;
    struct muslin_quilt_sashed_spec sashed;
};
static struct work at_work;

static void begin_work(void)
{
    struct work *w = &at_work;
    const struct muslin_quilt_log_spec log = MUSLIN_QUILT_LOG_SPEC_INIT;
    begin_sewing(&w->s);
    w->square = patch_of(w->s.quilt, w->s.blue, w->s.two, w->s.two);
    w->strip = patch_of(w->s.quilt, w->s.white, w->s.two, times_of(w->s.quilt, w->s.two, 2));
    for (int i = 0; i < 6; i++)
        w->blocks[i] = i % 2 == 0 ? w->square : w->strip;
    const muslin_id n = w->square;
    w->pinwheel = (struct muslin_quilt_pinwheel_spec){ sizeof w->pinwheel, 0, n, w->strip, n, n, n };
    w->set_in = (struct muslin_quilt_set_in_spec){ sizeof w->set_in, 0, n, w->s.two, w->s.two, w->s.two, w->s.two,
                                             w->s.blue, w->s.white, w->s.blue, w->s.white };
    for (int i = 0; i < 3; i++) {
        w->logs[i] = log;
        w->logs[i].fabric = w->s.white;
        w->logs[i].width = w->s.two;
    }
    w->surround = (struct muslin_quilt_surround_spec){ sizeof w->surround, 0, n, n, n, n, n, n, n, n, n };
    w->sashed = (struct muslin_quilt_sashed_spec){ sizeof w->sashed, BOTH, 3, 2, w->s.two, w->s.white, w->s.blue };
}

static void end_work(void)
{
    end_sewing(&at_work.s);
}

typedef muslin_status made_call(const void *spec, muslin_id *out, struct muslin_problem *problem);

static muslin_status make_pinwheel(const void *spec, muslin_id *out, struct muslin_problem *problem)
{
    return muslin_quilt_pinwheel(at_work.s.quilt, spec, out, problem);
}

static muslin_status make_set_in(const void *spec, muslin_id *out, struct muslin_problem *problem)
{
    return muslin_quilt_set_in(at_work.s.quilt, spec, out, problem);
}

static muslin_status make_surround(const void *spec, muslin_id *out, struct muslin_problem *problem)
{
    return muslin_quilt_surround(at_work.s.quilt, spec, out, problem);
}

static muslin_status make_sashed(const void *spec, muslin_id *out, struct muslin_problem *problem)
{
    return muslin_quilt_sashed(at_work.s.quilt, spec, at_work.blocks, 6, out, problem);
}

/* Three logs, the given one in the middle. */
static muslin_status make_logs(const void *spec, muslin_id *out, struct muslin_problem *problem)
{
    struct muslin_quilt_log_spec logs[3] = { at_work.logs[0], at_work.logs[1], at_work.logs[2] };
    if (spec != NULL)
        memcpy(&logs[1], spec, sizeof logs[1]);
    return muslin_quilt_logs(at_work.s.quilt, at_work.square, spec == NULL ? NULL : logs, sizeof logs[0], 3, out,
                             problem);
}

/* A call, a good request, and how large it is. */
struct made {
    made_call *call;
    const void *spec;
    uint32_t spec_size;
};
enum { MADE = 5 };

static void all_made(struct made *made)
{
    const struct made all[MADE] = { { make_pinwheel, &at_work.pinwheel, sizeof at_work.pinwheel },
                                    { make_set_in, &at_work.set_in, sizeof at_work.set_in },
                                    { make_logs, &at_work.logs[1], sizeof at_work.logs[1] },
                                    { make_surround, &at_work.surround, sizeof at_work.surround },
                                    { make_sashed, &at_work.sashed, sizeof at_work.sashed } };
    memcpy(made, all, sizeof all);
}

static void ck_made_refused(const struct made *made, const void *spec, muslin_status status, int32_t argument,
                            int64_t at)
{
    struct muslin_problem problem = PROBLEM;
    muslin_id out = -1;
    const struct muslin_part_counts before = counts_of(at_work.s.quilt);
    ck_status(made->call(spec, &out, &problem), status);
    ck_assert_int_eq(problem.status, status);
    ck_assert_msg(problem.argument == argument, "%s", problem.text);
    ck_assert_msg(problem.at == at, "at %d: %s", (int)problem.at, problem.text);
    ck_assert_int_eq(out, -1);
    ck_same_parts(at_work.s.quilt, &before);
}

START_TEST(requests_are_structs_with_their_rules)
{
    struct made made[MADE];
    struct muslin_problem small = PROBLEM;
    small.size = 8;
    begin_work();
    all_made(made);
    for (int i = 0; i < MADE; i++) {
        union roomy spec;
        muslin_id out = -1;
        int is_row = made[i].call == make_logs;
        int32_t argument = is_row ? MUSLIN_ARG_ROWS : MUSLIN_ARG_SPEC;
        ck_made_refused(&made[i], NULL, MUSLIN_ERR_NULL, argument, 0);
        ck_status(made[i].call(made[i].spec, NULL, NULL), MUSLIN_ERR_NULL);
        ck_status(made[i].call(made[i].spec, &out, &small), MUSLIN_ERR_STRUCT_SIZE);
        ck_assert_int_eq(out, -1);
        const uint32_t wrong[] = { 0, made[i].spec_size - 1, 4097 };
        lay_out(&spec, made[i].spec, made[i].spec_size);
        for (int k = 0; k < 3; k++) {
            spec.head[0] = wrong[k];
            ck_made_refused(&made[i], &spec, MUSLIN_ERR_STRUCT_SIZE, argument, is_row);
        }
        spec.head[0] = made[i].spec_size;
        const uint32_t flags = spec.head[1];
        for (uint32_t bit = made[i].call == make_sashed ? 2 : 0; bit < 32; bit++) { /* sashes have two */
            spec.head[1] = flags | UINT32_C(1) << bit;
            ck_made_refused(&made[i], &spec, MUSLIN_ERR_FLAGS, argument, is_row);
        }
        spec.head[1] = flags;
        if (!is_row) {
            spec.head[0] += SPARE;
            spec.bytes[made[i].spec_size] = 1;
            ck_made_refused(&made[i], &spec, MUSLIN_ERR_STRUCT_TAIL, argument, 0);
            spec.bytes[made[i].spec_size] = 0;
        }
        ck_ok(made[i].call(&spec, &out, NULL));
        ck_assert_int_eq(muslin_id_sort(out), MUSLIN_SORT_NODE);
        muslin_id again = 0;
        ck_ok(made[i].call(made[i].spec, &again, NULL));
        ck_assert_int_eq(again, out); /* what is equal is stored once */
    }
    end_work();
}
END_TEST

START_TEST(a_quilt_is_wanted)
{
    begin_work();
    const struct work *w = &at_work;
    muslin_id out = -1;
    ck_status(muslin_quilt_pinwheel(NULL, &w->pinwheel, &out, NULL), MUSLIN_ERR_NULL);
    ck_status(muslin_quilt_set_in(NULL, &w->set_in, &out, NULL), MUSLIN_ERR_NULL);
    ck_status(muslin_quilt_logs(NULL, w->square, w->logs, sizeof w->logs[0], 3, &out, NULL), MUSLIN_ERR_NULL);
    ck_status(muslin_quilt_surround(NULL, &w->surround, &out, NULL), MUSLIN_ERR_NULL);
    ck_status(muslin_quilt_sashed(NULL, &w->sashed, w->blocks, 6, &out, NULL), MUSLIN_ERR_NULL);
    ck_assert_int_eq(out, -1);
    end_work();
}
END_TEST

/* ---- ids -------------------------------------------------------------------------------------------------------- */

/* Each of n members of one sort, 64 bits each from `offset`, refuses an id of another sort, of a later number and of
 * another quilt, and 0 where that is no choice. */
static void ck_members_refuse(const struct made *made, size_t offset, size_t n, int32_t argument, int64_t first_at,
                              int or_none)
{
    const muslin_id other_sort = argument == MUSLIN_ARG_FABRIC ? at_work.s.two : at_work.s.blue;
    for (size_t i = 0; i < n; i++) {
        union roomy spec;
        muslin_id good = 0;
        lay_out(&spec, made->spec, made->spec_size);
        memcpy(&good, spec.bytes + offset + 8 * i, sizeof good);
        const muslin_id wrong[] = { other_sort, good + 100000, good + (INT64_C(1) << 40), -1, 0 };
        for (int k = 0; k < (or_none ? 4 : 5); k++) {
            memcpy(spec.bytes + offset + 8 * i, &wrong[k], sizeof wrong[k]);
            ck_made_refused(made, &spec, MUSLIN_ERR_FOREIGN, argument, first_at + (int64_t)i);
        }
    }
}

START_TEST(ids_that_are_foreign_are_told_by_their_place)
{
    struct made made[MADE];
    begin_work();
    all_made(made);
    ck_members_refuse(&made[0], offsetof(struct muslin_quilt_pinwheel_spec, centre), 5, MUSLIN_ARG_NODE, 0, 0);
    ck_members_refuse(&made[1], offsetof(struct muslin_quilt_set_in_spec, centre), 1, MUSLIN_ARG_NODE, 0, 0);
    ck_members_refuse(&made[1], offsetof(struct muslin_quilt_set_in_spec, left_width), 4, MUSLIN_ARG_MEASURE, 0, 1);
    ck_members_refuse(&made[1], offsetof(struct muslin_quilt_set_in_spec, left_fabric), 4, MUSLIN_ARG_FABRIC, 0, 0);
    /* of logs `at` is the row: the middle one of three */
    ck_members_refuse(&made[2], offsetof(struct muslin_quilt_log_spec, fabric), 1, MUSLIN_ARG_FABRIC, 1, 0);
    ck_members_refuse(&made[2], offsetof(struct muslin_quilt_log_spec, width), 1, MUSLIN_ARG_MEASURE, 1, 0);
    ck_members_refuse(&made[3], offsetof(struct muslin_quilt_surround_spec, centre), 9, MUSLIN_ARG_NODE, 0, 0);
    ck_members_refuse(&made[4], offsetof(struct muslin_quilt_sashed_spec, sash), 1, MUSLIN_ARG_MEASURE, 0, 0);
    ck_members_refuse(&made[4], offsetof(struct muslin_quilt_sashed_spec, sash_fabric), 1, MUSLIN_ARG_FABRIC, 0, 0);
    ck_members_refuse(&made[4], offsetof(struct muslin_quilt_sashed_spec, cornerstone), 1, MUSLIN_ARG_FABRIC, 1, 1);
    end_work();
}
END_TEST

START_TEST(a_set_in_has_a_strip_and_no_fabric_without_one)
{
    begin_work();
    const struct made made = { make_set_in, &at_work.set_in, sizeof at_work.set_in };
    struct muslin_quilt_set_in_spec spec = at_work.set_in;
    struct muslin_problem problem = PROBLEM;
    muslin_id out = 0;
    spec.top_width = 0;
    ck_made_refused(&made, &spec, MUSLIN_ERR_RANGE, MUSLIN_ARG_FABRIC, 2);
    ck_status(muslin_quilt_set_in(at_work.s.quilt, &spec, &out, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.value, spec.top_fabric);
    ck_assert_int_eq(problem.limit, 0);
    spec.top_fabric = 0;
    ck_ok(muslin_quilt_set_in(at_work.s.quilt, &spec, &out, NULL));
    spec.left_width = spec.right_width = spec.bottom_width = 0;
    spec.left_fabric = spec.right_fabric = spec.bottom_fabric = 0;
    ck_made_refused(&made, &spec, MUSLIN_ERR_RANGE, MUSLIN_ARG_STRIPS, 0);
    ck_status(muslin_quilt_set_in(at_work.s.quilt, &spec, &out, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.value, 0);
    ck_assert_int_eq(problem.limit, 1);
    end_work();
}
END_TEST

START_TEST(choices_and_counts_have_their_ranges)
{
    begin_work();
    const struct made logs = { make_logs, &at_work.logs[1], sizeof at_work.logs[1] };
    struct muslin_quilt_log_spec log = at_work.logs[1];
    log.side = 0;
    ck_made_refused(&logs, &log, MUSLIN_ERR_CHOICE, MUSLIN_ARG_LOG_SIDE, 1);
    log.side = 5;
    ck_made_refused(&logs, &log, MUSLIN_ERR_CHOICE, MUSLIN_ARG_LOG_SIDE, 1);
    log.side = MUSLIN_SIDE_TOP;
    log.pad = 1;
    ck_made_refused(&logs, &log, MUSLIN_ERR_STRUCT_TAIL, MUSLIN_ARG_SPEC, 1);
    const struct made sashed = { make_sashed, &at_work.sashed, sizeof at_work.sashed };
    struct muslin_quilt_sashed_spec spec = at_work.sashed;
    spec.columns = 0;
    ck_made_refused(&sashed, &spec, MUSLIN_ERR_RANGE, MUSLIN_ARG_COLUMNS, 0);
    spec.columns = MUSLIN_COUNT_MAX + 1;
    ck_made_refused(&sashed, &spec, MUSLIN_ERR_RANGE, MUSLIN_ARG_COLUMNS, 0);
    spec.columns = 3;
    spec.rows = -1;
    ck_made_refused(&sashed, &spec, MUSLIN_ERR_RANGE, MUSLIN_ARG_QUILT_ROWS, 0);
    spec.rows = 3;
    ck_made_refused(&sashed, &spec, MUSLIN_ERR_RANGE, MUSLIN_ARG_CHILDREN, 0);
    spec.rows = 2;
    spec.flags = BOTH + 1;
    ck_made_refused(&sashed, &spec, MUSLIN_ERR_FLAGS, MUSLIN_ARG_SPEC, 0);
    spec.flags = MUSLIN_QUILT_SASHED_FRAME; /* a fabric for cornerstones, and none of them */
    ck_made_refused(&sashed, &spec, MUSLIN_ERR_RANGE, MUSLIN_ARG_FABRIC, 1);
    struct muslin_problem problem = PROBLEM;
    muslin_id out = 0;
    ck_status(make_sashed(&spec, &out, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.value, spec.cornerstone);
    ck_assert_int_eq(problem.limit, 0);
    spec.cornerstone = -1;
    ck_status(make_sashed(&spec, &out, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.limit, 0);
    end_work();
}
END_TEST

START_TEST(arrays_have_their_rules)
{
    struct muslin_problem problem = PROBLEM;
    begin_work();
    const struct work *w = &at_work;
    struct muslin_quilt *quilt = w->s.quilt;
    muslin_id out = -1;
    ck_status(muslin_quilt_sashed(quilt, &w->sashed, NULL, 6, &out, NULL), MUSLIN_ERR_NULL);
    ck_status(muslin_quilt_sashed(quilt, &w->sashed, w->blocks, 5, &out, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_CHILDREN);
    ck_assert_int_eq(problem.limit, 6);
    const struct muslin_part_counts before = counts_of(quilt);
    for (int64_t i = 0; i < 6; i++) { /* rows before a bad block are gone again */
        muslin_id blocks[6];
        memcpy(blocks, w->blocks, sizeof blocks);
        blocks[i] = w->s.two;
        ck_status(muslin_quilt_sashed(quilt, &w->sashed, blocks, 6, &out, &problem), MUSLIN_ERR_FOREIGN);
        ck_assert_int_eq(problem.limit, 0);
        ck_assert_int_eq(problem.argument, MUSLIN_ARG_NODE);
        ck_assert_int_eq(problem.at, i);
        ck_same_parts(quilt, &before);
    }
    const size_t held = w->s.memory.bytes;
    for (int64_t i = 0; i < 1000; i++) { /* and so is the room that they took */
        const muslin_id blocks[6] = { w->square, w->square, w->square, w->square, w->square, w->s.two };
        ck_status(muslin_quilt_sashed(quilt, &w->sashed, blocks, 6, &out, NULL), MUSLIN_ERR_FOREIGN);
        ck_assert_uint_eq(w->s.memory.bytes, held);
    }
    ck_status(muslin_quilt_logs(quilt, w->square, w->logs, sizeof w->logs[0] - 1, 3, &out, NULL),
              MUSLIN_ERR_STRUCT_SIZE);
    ck_status(muslin_quilt_logs(quilt, w->square, w->logs, 4097, 3, &out, &problem), MUSLIN_ERR_STRUCT_SIZE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_ROW_SIZE);
    ck_assert_int_eq(problem.value, 4097);
    ck_assert_int_eq(problem.limit, 4096);
    ck_status(muslin_quilt_logs(quilt, w->s.two, w->logs, sizeof w->logs[0], 3, &out, &problem), MUSLIN_ERR_FOREIGN);
    ck_assert_int_eq(problem.limit, 0);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_NODE);
    ck_assert_int_eq(problem.at, 0);
    ck_assert_int_eq(out, -1);
    /* no logs: the centre itself */
    ck_ok(muslin_quilt_logs(quilt, w->square, NULL, 0, 0, &out, NULL));
    ck_assert_int_eq(out, w->square);
    end_work();
}
END_TEST

START_TEST(nothing_lies_deeper_than_it_may)
{
    struct muslin_problem problem = PROBLEM;
    begin_work();
    struct muslin_quilt *quilt = at_work.s.quilt;
    static struct muslin_quilt_log_spec logs[MUSLIN_QUILT_DEPTH_MAX];
    muslin_id deep = 0;
    for (int i = 0; i < MUSLIN_QUILT_DEPTH_MAX; i++) {
        logs[i] = at_work.logs[0];
        logs[i].side = 1 + i % 4;
    }
    /* a patch and 4095 logs are 4096 deep */
    const struct muslin_part_counts before = counts_of(quilt);
    ck_status(muslin_quilt_logs(quilt, at_work.square, logs, sizeof logs[0], MUSLIN_QUILT_DEPTH_MAX, &deep, &problem),
              MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_DEPTH);
    ck_assert_int_eq(problem.at, MUSLIN_QUILT_DEPTH_MAX - 1);
    ck_same_parts(quilt, &before);
    ck_ok(muslin_quilt_logs(quilt, at_work.square, logs, sizeof logs[0], MUSLIN_QUILT_DEPTH_MAX - 1, &deep, NULL));
    /* 4096 deep, its memory has grown again and again: what it says it holds is what the allocator gave it */
    ck_assert_int_eq(counts_of(at_work.s.quilt).bytes, (int64_t)at_work.s.memory.bytes);
    struct made made[MADE];
    all_made(made);
    at_work.pinwheel.left = at_work.set_in.centre = at_work.surround.bottom_right = at_work.blocks[5] = deep;
    at_work.square = deep;
    for (int i = 0; i < MADE; i++)
        ck_made_refused(&made[i], made[i].spec, MUSLIN_ERR_RANGE, MUSLIN_ARG_DEPTH, 0);
    end_work();
}
END_TEST

/* ---- the trees -------------------------------------------------------------------------------------------------- */

static void ck_children(const struct muslin_quilt *quilt, muslin_id node, const muslin_id *expected, size_t n)
{
    muslin_id ids[8];
    size_t count = 0;
    ck_ok(muslin_quilt_children(quilt, node, ids, 8, &count, NULL));
    ck_assert_uint_eq(count, n);
    ck_assert_int_eq(memcmp(ids, expected, n * sizeof ids[0]), 0);
}

static int32_t kind_of(const struct muslin_quilt *quilt, muslin_id node)
{
    struct muslin_node read = { .size = (uint32_t)sizeof read };
    ck_ok(muslin_quilt_node(quilt, node, &read, NULL));
    return read.kind;
}

START_TEST(pinwheels_and_set_ins_are_nodes_of_their_own)
{
    struct sewn s;
    begin_sewing(&s);
    muslin_id id[5];
    for (int i = 0; i < 5; i++)
        id[i] = patch_of(s.quilt, s.blue, s.two, times_of(s.quilt, s.two, i + 1));
    const struct muslin_quilt_pinwheel_spec pinwheel = { sizeof pinwheel, 0, id[0], id[1], id[2], id[3], id[4] };
    muslin_id node = 0;
    ck_ok(muslin_quilt_pinwheel(s.quilt, &pinwheel, &node, NULL));
    ck_assert_int_eq(kind_of(s.quilt, node), MUSLIN_NODE_PINWHEEL);
    ck_children(s.quilt, node, id, 5); /* (a pinwheel: centre, top, right, bottom, left) */
    struct muslin_quilt_set_in_spec set_in = MUSLIN_QUILT_SET_IN_SPEC_INIT;
    set_in.centre = node;
    set_in.left_width = s.two;
    set_in.left_fabric = s.blue;
    muslin_id framed = 0;
    ck_ok(muslin_quilt_set_in(s.quilt, &set_in, &framed, NULL));
    ck_assert_int_eq(kind_of(s.quilt, framed), MUSLIN_NODE_SET_IN);
    ck_children(s.quilt, framed, &node, 1);
    end_sewing(&s);
}
END_TEST

static muslin_id beside(struct muslin_quilt *quilt, muslin_id left, muslin_id right)
{
    const muslin_id two[] = { left, right };
    return join_of(quilt, MUSLIN_AXIS_ACROSS, two, 2);
}

static muslin_id above(struct muslin_quilt *quilt, muslin_id top, muslin_id bottom)
{
    const muslin_id two[] = { top, bottom };
    return join_of(quilt, MUSLIN_AXIS_DOWN, two, 2);
}

/* Example: four logs round a centre, right, top, left, bottom. */
START_TEST(logs_are_patches_joined_on_one_after_the_other)
{
    begin_work();
    struct muslin_quilt *q = at_work.s.quilt;
    const muslin_id two = at_work.s.two;
    const muslin_id white = at_work.s.white;
    const int32_t sides[] = { MUSLIN_SIDE_RIGHT, MUSLIN_SIDE_TOP, MUSLIN_SIDE_LEFT, MUSLIN_SIDE_BOTTOM };
    struct muslin_quilt_log_spec logs[4];
    muslin_id out = 0;
    for (int i = 0; i < 4; i++) {
        logs[i] = at_work.logs[0];
        logs[i].side = sides[i];
    }
    ck_ok(muslin_quilt_logs(q, at_work.square, logs, sizeof logs[0], 4, &out, NULL));
    muslin_id there = at_work.square;
    there = beside(q, there, patch_of(q, white, two, extent_of(q, there, MUSLIN_AXIS_DOWN)));
    there = above(q, patch_of(q, white, extent_of(q, there, MUSLIN_AXIS_ACROSS), two), there);
    there = beside(q, patch_of(q, white, two, extent_of(q, there, MUSLIN_AXIS_DOWN)), there);
    there = above(q, there, patch_of(q, white, extent_of(q, there, MUSLIN_AXIS_ACROSS), two));
    ck_assert_int_eq(out, there);
    /* rows as far apart as the caller has them */
    struct {
        struct muslin_quilt_log_spec log;
        int64_t own[3];
    } rows[2] = { { logs[0], { 1, 2, 3 } }, { logs[1], { 4, 5, 6 } } };
    muslin_id same = 0;
    ck_ok(muslin_quilt_logs(q, at_work.square, &rows[0].log, sizeof rows[0], 2, &out, NULL));
    ck_ok(muslin_quilt_logs(q, at_work.square, logs, sizeof logs[0], 2, &same, NULL));
    ck_assert_int_eq(out, same);
    end_work();
}
END_TEST

START_TEST(a_surround_is_three_rows)
{
    struct sewn s;
    begin_sewing(&s);
    muslin_id id[9]; /* centre, left, right, top, bottom, four corners */
    for (int i = 0; i < 9; i++)
        id[i] = patch_of(s.quilt, s.blue, s.two, times_of(s.quilt, s.two, i + 1));
    const struct muslin_quilt_surround_spec spec = { sizeof spec, 0,     id[0], id[1], id[2], id[3],
                                                     id[4],       id[5], id[6], id[7], id[8] };
    muslin_id out = 0;
    ck_ok(muslin_quilt_surround(s.quilt, &spec, &out, NULL));
    const muslin_id nine[] = { id[5], id[3], id[6], id[1], id[0], id[2], id[7], id[4], id[8] };
    muslin_id grid = 0;
    ck_ok(muslin_quilt_grid(s.quilt, 3, 3, nine, 9, &grid, NULL));
    ck_assert_int_eq(out, grid);
    end_sewing(&s);
}
END_TEST

/* ---- sashed settings -------------------------------------------------------------------------------------------- */

static muslin_id sashed_of(const struct muslin_quilt_sashed_spec *spec, const muslin_id *blocks)
{
    muslin_id out = 0;
    ck_ok(muslin_quilt_sashed(at_work.s.quilt, spec, blocks, (size_t)(spec->columns * spec->rows), &out, NULL));
    return out;
}

/* Two rows of unlike blocks, by hand: sashes as long as the first block of the row or column. */
START_TEST(sashes_and_cornerstones_lie_between_blocks)
{
    begin_work();
    struct muslin_quilt *q = at_work.s.quilt;
    const muslin_id two = at_work.s.two;
    const muslin_id a = at_work.square;
    const muslin_id b = at_work.strip;
    const muslin_id blocks[] = { a, b, b, a };
    struct muslin_quilt_sashed_spec spec = at_work.sashed;
    spec.columns = 2;
    const muslin_id white = at_work.s.white;
    muslin_id by_a = patch_of(q, white, two, extent_of(q, a, MUSLIN_AXIS_DOWN));
    muslin_id by_b = patch_of(q, white, two, extent_of(q, b, MUSLIN_AXIS_DOWN));
    muslin_id under_a = patch_of(q, white, extent_of(q, a, MUSLIN_AXIS_ACROSS), two);
    muslin_id under_b = patch_of(q, white, extent_of(q, b, MUSLIN_AXIS_ACROSS), two);
    muslin_id corner = patch_of(q, at_work.s.blue, two, two);
    muslin_id by_hand = 0;
    const muslin_id framed[] = { corner, under_a, corner, under_b, corner, by_a,    a,      by_a,    b,
                                 by_a,   corner,  under_a, corner, under_b, corner, by_b,    b,      by_b,
                                 a,      by_b,    corner, under_a, corner, under_b, corner };
    ck_ok(muslin_quilt_grid(q, 5, 5, framed, 25, &by_hand, NULL));
    ck_assert_int_eq(sashed_of(&spec, blocks), by_hand);
    spec.flags = MUSLIN_QUILT_SASHED_CORNERSTONES;
    const muslin_id plain[] = { a, by_a, b, under_a, corner, under_b, b, by_b, a };
    ck_ok(muslin_quilt_grid(q, 3, 3, plain, 9, &by_hand, NULL));
    ck_assert_int_eq(sashed_of(&spec, blocks), by_hand);
    end_work();
}
END_TEST

START_TEST(without_cornerstones_sashes_run_through)
{
    begin_work();
    struct muslin_quilt *q = at_work.s.quilt;
    const muslin_id two = at_work.s.two;
    const muslin_id white = at_work.s.white;
    const muslin_id a = at_work.square;
    const muslin_id b = at_work.strip;
    const muslin_id blocks[] = { a, b, b, a };
    struct muslin_quilt_sashed_spec spec = at_work.sashed;
    spec.columns = 2;
    spec.flags = MUSLIN_QUILT_SASHED_FRAME;
    spec.cornerstone = 0;
    muslin_id by_a = patch_of(q, white, two, extent_of(q, a, MUSLIN_AXIS_DOWN));
    muslin_id by_b = patch_of(q, white, two, extent_of(q, b, MUSLIN_AXIS_DOWN));
    const muslin_id first[] = { by_a, a, by_a, b, by_a };
    const muslin_id second[] = { by_b, b, by_b, a, by_b };
    muslin_id upper = join_of(q, MUSLIN_AXIS_ACROSS, first, 5);
    muslin_id lower = join_of(q, MUSLIN_AXIS_ACROSS, second, 5);
    muslin_id long_upper = patch_of(q, white, extent_of(q, upper, MUSLIN_AXIS_ACROSS), two);
    muslin_id long_lower = patch_of(q, white, extent_of(q, lower, MUSLIN_AXIS_ACROSS), two);
    const muslin_id all[] = { long_upper, upper, long_upper, lower, long_lower };
    ck_assert_int_eq(sashed_of(&spec, blocks), join_of(q, MUSLIN_AXIS_DOWN, all, 5));
    spec.flags = 0;
    upper = join_of(q, MUSLIN_AXIS_ACROSS, first + 1, 3);
    lower = join_of(q, MUSLIN_AXIS_ACROSS, second + 1, 3);
    const muslin_id inner[] = { upper, patch_of(q, white, extent_of(q, upper, MUSLIN_AXIS_ACROSS), two), lower };
    ck_assert_int_eq(sashed_of(&spec, blocks), join_of(q, MUSLIN_AXIS_DOWN, inner, 3));
    end_work();
}
END_TEST

START_TEST(one_block_or_one_line_of_them)
{
    begin_work();
    struct muslin_quilt *q = at_work.s.quilt;
    const muslin_id two = at_work.s.two;
    const muslin_id white = at_work.s.white;
    const muslin_id a = at_work.square;
    struct muslin_quilt_sashed_spec spec = at_work.sashed;
    spec.columns = spec.rows = 1;
    spec.flags = MUSLIN_QUILT_SASHED_CORNERSTONES;
    ck_assert_int_eq(sashed_of(&spec, &a), a);
    const muslin_id b = at_work.strip;
    const muslin_id pair[] = { a, b };
    muslin_id upright = patch_of(q, white, two, extent_of(q, a, MUSLIN_AXIS_DOWN));
    muslin_id level = patch_of(q, white, extent_of(q, a, MUSLIN_AXIS_ACROSS), two);
    spec.columns = 2;
    const muslin_id across[] = { a, upright, b };
    ck_assert_int_eq(sashed_of(&spec, pair), join_of(q, MUSLIN_AXIS_ACROSS, across, 3));
    spec.columns = 1;
    spec.rows = 2;
    const muslin_id down[] = { a, level, b };
    ck_assert_int_eq(sashed_of(&spec, pair), join_of(q, MUSLIN_AXIS_DOWN, down, 3));
    spec.cornerstone = 0;
    spec.flags = 0;
    ck_assert_int_eq(sashed_of(&spec, pair), join_of(q, MUSLIN_AXIS_DOWN, down, 3));
    /* a picture frame of sashes with corner squares round one block */
    spec.cornerstone = at_work.s.blue;
    spec.rows = 1;
    spec.flags = BOTH;
    muslin_id corner = patch_of(q, at_work.s.blue, two, two);
    const muslin_id nine[] = { corner, level, corner, upright, a, upright, corner, level, corner };
    muslin_id by_hand = 0;
    ck_ok(muslin_quilt_grid(q, 3, 3, nine, 9, &by_hand, NULL));
    ck_assert_int_eq(sashed_of(&spec, &a), by_hand);
    /* without a fabric of their own, corner squares are as the sashes */
    spec.cornerstone = 0;
    corner = patch_of(q, white, two, two);
    const muslin_id alike[] = { corner, level, corner, upright, a, upright, corner, level, corner };
    ck_ok(muslin_quilt_grid(q, 3, 3, alike, 9, &by_hand, NULL));
    ck_assert_int_eq(sashed_of(&spec, &a), by_hand);
    end_work();
}
END_TEST

/* ---- memory ----------------------------------------------------------------------------------------------------- */

/* Fills what there is room for, so that each call needs more: parts of all sorts up to the next doubling. */
static void fill_up(struct muslin_quilt *quilt, int64_t parts)
{
    for (int64_t i = 0; i < parts; i++)
        patch_of(quilt, at_work.s.blue, fixed_of(quilt, 100 + i), at_work.s.two);
}

START_TEST(every_allocation_may_fail)
{
    for (int i = 0; i < MADE; i++) {
        size_t failed = 0;
        for (int64_t parts = 0; parts < 40; parts++) {
            struct made made[MADE];
            begin_work();
            all_made(made);
            fill_up(at_work.s.quilt, parts);
            const struct muslin_part_counts before = counts_of(at_work.s.quilt);
            muslin_id out = -1;
            muslin_status status = MUSLIN_ERR_NO_MEMORY;
            for (size_t round = 1; status == MUSLIN_ERR_NO_MEMORY; round++) {
                fail_at(&at_work.s, round);
                struct muslin_problem said = PROBLEM;
                status = made[i].call(made[i].spec, &out, &said);
                if (status != MUSLIN_OK) {
                    ck_says_no_memory(&said, said.at);
                    failed++;
                    ck_assert_int_eq(out, -1);
                    ck_same_parts(at_work.s.quilt, &before);
                    ck_assert_uint_le(at_work.s.memory.blocks, 8); /* the quilt's own, and no scratch */
                }
            }
            ck_ok(status);
            fail_at(&at_work.s, 0);
            muslin_solution_free(solved(at_work.s.quilt, out));
            end_work();
        }
        ck_assert_uint_gt(failed, 3);
    }
}
END_TEST

Suite *quilt_round_suite(void)
{
    Suite *suite = suite_create("quilt_round");
    TCase *refused = tcase_create("refused");
    tcase_add_test(refused, specs_begin_as_stated);
    tcase_add_test(refused, requests_are_structs_with_their_rules);
    tcase_add_test(refused, a_quilt_is_wanted);
    tcase_add_test(refused, ids_that_are_foreign_are_told_by_their_place);
    tcase_add_test(refused, a_set_in_has_a_strip_and_no_fabric_without_one);
    tcase_add_test(refused, choices_and_counts_have_their_ranges);
    tcase_add_test(refused, arrays_have_their_rules);
    tcase_add_test(refused, nothing_lies_deeper_than_it_may);
    suite_add_tcase(suite, refused);
    TCase *trees = tcase_create("trees");
    tcase_add_test(trees, pinwheels_and_set_ins_are_nodes_of_their_own);
    tcase_add_test(trees, logs_are_patches_joined_on_one_after_the_other);
    tcase_add_test(trees, a_surround_is_three_rows);
    tcase_add_test(trees, sashes_and_cornerstones_lie_between_blocks);
    tcase_add_test(trees, without_cornerstones_sashes_run_through);
    tcase_add_test(trees, one_block_or_one_line_of_them);
    suite_add_tcase(suite, trees);
    TCase *memory = tcase_create("memory");
    tcase_add_test(memory, every_allocation_may_fail);
    suite_add_tcase(suite, memory);
    return suite;
}
