/* test_quilt_read.c - fabrics, measures and nodes read back, one by one.
 *
 * SPDX-License-Identifier: MIT */
#include "test_quilt_pieced.h"

Suite *quilt_read_suite(void);

/* ---- one part of each kind -------------------------------------------------------------------------------------- */

enum { MEASURES = 12, FABRICS = 4, NODES = 5 };

/* Specs in which no two members are alike, as far as the kind allows, so that none is taken for another. */
struct parts {
    struct sewn s;
    muslin_id measures[MEASURES];
    muslin_id fabrics[FABRICS];
    muslin_id nodes[NODES];
    struct muslin_quilt_fabric_spec fabric;
    struct muslin_quilt_patch_spec patch;
    struct muslin_quilt_unit_spec unit;
    struct muslin_quilt_join_spec join;
    struct muslin_quilt_trim_spec trim;
    struct muslin_quilt_pinwheel_spec pinwheel;
    struct muslin_quilt_set_in_spec set_in;
    struct muslin_quilt_diagonal_spec diagonal;
    struct muslin_quilt_sixty_spec sixty;
    muslin_id fabric_id;
    muslin_id patch_id;
    muslin_id unit_id;
    muslin_id shape_id;
    muslin_id join_id;
    muslin_id turn_id;
    muslin_id trim_id;
    muslin_id pinwheel_id;
    muslin_id set_in_id;
    muslin_id diagonal_id;
    muslin_id sixty_id;
};
static struct parts p;

static const struct muslin_corner_spec slant[] = SLANT_CORNER;
enum { SLANT_ROWS = sizeof slant / sizeof slant[0] };

static const int64_t cells[] = { 2, 1, 1, 2 };
enum { CELLS = sizeof cells / sizeof cells[0] };

static void make_leaves(void)
{
    const struct muslin_quilt_patch_spec patch = { sizeof patch, 0, p.fabrics[1], p.measures[0], p.measures[1],
                                             p.measures[2], p.measures[3], p.measures[4], p.measures[5] };
    const struct muslin_quilt_unit_spec unit = { sizeof unit, 0, p.measures[6], p.measures[7], p.measures[8],
                                                 MUSLIN_UNIT_SNOWBALL, MUSLIN_UNIT_METHOD_FLIPPED_CORNERS, 1, 0 };
    const muslin_id two[] = { p.fabrics[2], p.fabrics[0] };
    p.patch = patch;
    p.unit = unit;
    ck_ok(muslin_quilt_patch(p.s.quilt, &p.patch, &p.patch_id, NULL));
    ck_ok(muslin_quilt_unit(p.s.quilt, &p.unit, two, 2, &p.unit_id, NULL));
    ck_ok(muslin_quilt_shape(p.s.quilt, slant, sizeof slant[0], SLANT_ROWS, two, 2, p.measures[9], p.measures[10],
                             &p.shape_id, NULL));
}

static void make_inner_nodes(void)
{
    const struct muslin_quilt_join_spec join = {
        sizeof join, 0, MUSLIN_AXIS_DOWN, MUSLIN_STRIP_PIECING_NEVER, MUSLIN_SEAM_PRESS_OPEN, 0
    };
    const struct muslin_quilt_trim_spec trim = { sizeof trim,  0, p.measures[1], p.measures[2], p.measures[3],
                                                 p.measures[4] };
    const struct muslin_quilt_pinwheel_spec pinwheel = { sizeof pinwheel, 0,          p.nodes[0], p.nodes[1],
                                                         p.nodes[2],      p.nodes[3], p.nodes[4] };
    const struct muslin_quilt_set_in_spec set_in = { sizeof set_in, 0, p.nodes[1], p.measures[1], p.measures[2],
                                               p.measures[3], p.measures[4], p.fabrics[0], p.fabrics[1], p.fabrics[2],
                                               p.fabrics[3] };
    p.join = join;
    p.trim = trim;
    p.pinwheel = pinwheel;
    p.set_in = set_in;
    ck_ok(muslin_quilt_join(p.s.quilt, &p.join, p.nodes, 3, &p.join_id, NULL));
    ck_ok(muslin_quilt_trim(p.s.quilt, p.nodes[2], &p.trim, &p.trim_id, NULL));
    ck_ok(muslin_quilt_pinwheel(p.s.quilt, &p.pinwheel, &p.pinwheel_id, NULL));
    ck_ok(muslin_quilt_set_in(p.s.quilt, &p.set_in, &p.set_in_id, NULL));
    p.turn_id = turn_of(p.s.quilt, p.nodes[3], 1);
}

static void make_fields(void)
{
    const struct muslin_quilt_diagonal_spec diagonal = { sizeof diagonal, 0, 3, 1, p.fabrics[1], p.fabrics[3],
                                                   p.measures[11], 0, 0, 0, MUSLIN_POINT_LAYOUT_PLAIN, 0 };
    const struct muslin_quilt_sixty_spec sixty = { sizeof sixty, 0, 3, 2, p.measures[5], p.fabrics[2], 2, 0 };
    struct muslin_quilt_sixty_piece_spec pieces[CELLS];
    for (size_t i = 0; i < CELLS; i++) {
        ck_ok(muslin_quilt_sixty_piece_spec_init(&pieces[i], sizeof pieces[i]));
        pieces[i].fabric = p.fabrics[i];
        pieces[i].cells = cells[i];
    }
    p.diagonal = diagonal;
    p.sixty = sixty;
    ck_ok(muslin_quilt_diagonal(p.s.quilt, &p.diagonal, p.nodes, 3, &p.diagonal_id, NULL));
    ck_ok(muslin_quilt_sixty(p.s.quilt, &p.sixty, pieces, sizeof pieces[0], CELLS, &p.sixty_id, NULL));
}

static void begin_parts(void)
{
    const struct muslin_quilt_fabric_spec fabric = { sizeof fabric, 0, WHOLE_IN(42), MUSLIN_PRINT_TWO_WAY, 7 };
    begin_sewing(&p.s);
    p.fabric = fabric;
    ck_ok(muslin_quilt_fabric(p.s.quilt, &p.fabric, "stripe", 6, &p.fabric_id, NULL));
    for (size_t i = 0; i < MEASURES; i++)
        p.measures[i] = measure_of(p.s.quilt, "side", WHOLE_IN(i + 1));
    for (size_t i = 0; i < FABRICS; i++)
        p.fabrics[i] = fabric_of(p.s.quilt, "print");
    for (size_t i = 0; i < NODES; i++)
        p.nodes[i] = patch_of(p.s.quilt, p.fabrics[0], p.measures[i], p.s.two);
    make_leaves();
    make_inner_nodes();
    make_fields();
}

static void end_parts(void)
{
    end_sewing(&p.s);
}

/* ---- specs ------------------------------------------------------------------------------------------------------ */

typedef muslin_status read_call(const struct muslin_quilt *quilt, muslin_id id, void *out,
                                struct muslin_problem *problem);

#define READ_CALL(of)                                                                          \
    static muslin_status read_##of(const struct muslin_quilt *quilt, muslin_id id, void *out, \
                                   struct muslin_problem *problem)                            \
    {                                                                                          \
        return muslin_quilt_read_##of(quilt, id, out, problem);                                \
    }
READ_CALL(fabric)
READ_CALL(measure)
READ_CALL(patch)
READ_CALL(unit)
READ_CALL(join)
READ_CALL(trim)
READ_CALL(pinwheel)
READ_CALL(set_in)
READ_CALL(diagonal)
READ_CALL(sixty)

/* A call, a part that it reads, and what that was made with. */
struct reading {
    read_call *call;
    const muslin_id *id;
    const void *given;
    uint32_t size;
    int32_t kind; /* of node; 0: none */
};
#define READING(of, kind) { read_##of, &p.of##_id, &p.of, (uint32_t)sizeof p.of, kind }
static const struct reading readings[] = {
    READING(fabric, 0),
    READING(patch, MUSLIN_NODE_PATCH),
    READING(unit, MUSLIN_NODE_UNIT),
    READING(join, MUSLIN_NODE_JOIN),
    READING(trim, MUSLIN_NODE_TRIM),
    READING(pinwheel, MUSLIN_NODE_PINWHEEL),
    READING(set_in, MUSLIN_NODE_SET_IN),
    READING(diagonal, MUSLIN_NODE_DIAGONAL),
    READING(sixty, MUSLIN_NODE_SIXTY),
};
enum { READINGS = sizeof readings / sizeof readings[0] };

/* The reading whose rules are tried; they need no spec. */
static const struct reading *tried;

static muslin_status try_reading(const void *spec, void *out, struct muslin_problem *problem)
{
    (void)spec;
    return tried->call(p.s.quilt, *tried->id, out, problem);
}

static void ck_reading_refused(const struct reading *reading, const struct muslin_quilt *quilt, muslin_id id,
                               muslin_status status, int32_t argument)
{
    union roomy out;
    struct muslin_problem problem = PROBLEM;
    lay_out_output(&out, reading->size);
    ck_status(reading->call(quilt, id, &out, &problem), status);
    ck_assert_int_eq(problem.argument, argument);
    ck_assert_uint_eq(out.head[0], reading->size);
    ck_assert(is_untouched_from(&out, sizeof out.head[0]));
}

START_TEST(a_spec_comes_back_as_it_was_given)
{
    const uint32_t none[2] = { 0, 0 };
    begin_parts();
    const struct reading *reading = &readings[_i];
    const struct ruled ruled = { try_reading, none, sizeof none, reading->size, reading->size, 0 };
    union roomy out;
    lay_out_output(&out, reading->size);
    ck_ok(reading->call(p.s.quilt, *reading->id, &out, NULL));
    ck_assert_int_eq(memcmp(&out, reading->given, reading->size), 0);
    ck_assert(is_untouched_from(&out, reading->size));
    tried = reading;
    ck_out_rules(&ruled);
    ck_newer_structs(&ruled);
    ck_problem_rules(&ruled);
    const int32_t named = reading->kind == 0 ? MUSLIN_ARG_FABRIC : MUSLIN_ARG_NODE;
    ck_reading_refused(reading, NULL, *reading->id, MUSLIN_ERR_NULL, MUSLIN_ARG_QUILT);
    ck_reading_refused(reading, p.s.quilt, 0, MUSLIN_ERR_FOREIGN, named);
    ck_reading_refused(reading, p.s.quilt, p.s.two, MUSLIN_ERR_FOREIGN, named);
    ck_reading_refused(reading, p.s.quilt, *reading->id + (INT64_C(1) << 40), MUSLIN_ERR_FOREIGN, named);
    ck_reading_refused(reading, p.s.quilt, *reading->id + 1000, MUSLIN_ERR_FOREIGN, named);
    end_parts();
}
END_TEST

START_TEST(a_node_of_another_kind_is_told)
{
    begin_parts();
    const muslin_id others[] = { p.patch_id, p.unit_id,     p.shape_id,  p.join_id,     p.turn_id,
                                 p.trim_id,  p.pinwheel_id, p.set_in_id, p.diagonal_id, p.sixty_id };
    for (size_t r = 1; r < READINGS; r++)
        for (int32_t kind = MUSLIN_NODE_PATCH; kind <= MUSLIN_NODE_SIXTY; kind++) {
            struct muslin_problem problem = PROBLEM;
            union roomy out;
            if (kind == readings[r].kind)
                continue;
            ck_reading_refused(&readings[r], p.s.quilt, others[kind - 1], MUSLIN_ERR_CHOICE, MUSLIN_ARG_KIND);
            lay_out_output(&out, readings[r].size);
            ck_status(readings[r].call(p.s.quilt, others[kind - 1], &out, &problem), MUSLIN_ERR_CHOICE);
            ck_assert_int_eq(problem.value, kind);
            ck_assert_int_eq(problem.limit, readings[r].kind);
        }
    end_parts();
}
END_TEST

/* Where nothing was given: the edges of a patch have the quilt's allowance, by its id; all else has nothing. */
START_TEST(what_was_not_given_comes_back_as_its_comment_says)
{
    struct muslin_quilt_patch_spec patch = { .size = sizeof patch };
    struct muslin_quilt_trim_spec trim = { .size = sizeof trim };
    struct muslin_quilt_set_in_spec set_in = MUSLIN_QUILT_SET_IN_SPEC_INIT;
    struct muslin_quilt_set_in_spec read = { .size = sizeof read };
    struct muslin_quilt_diagonal_spec diagonal = MUSLIN_QUILT_DIAGONAL_SPEC_INIT;
    struct muslin_quilt_unit_spec unit = { .size = sizeof unit };
    const struct muslin_quilt_trim_spec no_trim = MUSLIN_QUILT_TRIM_SPEC_INIT;
    muslin_id id = 0;
    muslin_id allowance = 0;
    begin_parts();
    ck_ok(muslin_quilt_seam(p.s.quilt, &allowance, NULL, NULL));
    /* Example: a patch of blue, 2 in by 2 in, names blue and the measure of 2 in twice. */
    ck_ok(muslin_quilt_read_patch(p.s.quilt, patch_of(p.s.quilt, p.s.blue, p.s.two, p.s.two), &patch, NULL));
    ck_assert_int_eq(patch.fabric, p.s.blue);
    ck_assert_int_eq(patch.width, p.s.two);
    ck_assert_int_eq(patch.height, p.s.two);
    const muslin_id edges[] = { patch.left, patch.right, patch.top, patch.bottom };
    for (int i = 0; i < 4; i++)
        ck_assert_int_eq(edges[i], allowance);
    ck_ok(muslin_quilt_trim(p.s.quilt, p.nodes[0], &no_trim, &id, NULL));
    ck_ok(muslin_quilt_read_trim(p.s.quilt, id, &trim, NULL));
    ck_assert_int_eq(memcmp(&trim, &no_trim, sizeof trim), 0);
    set_in.centre = p.nodes[0];
    set_in.top_width = p.s.two;
    set_in.top_fabric = p.s.white;
    ck_ok(muslin_quilt_set_in(p.s.quilt, &set_in, &id, NULL));
    ck_ok(muslin_quilt_read_set_in(p.s.quilt, id, &read, NULL));
    ck_assert_int_eq(memcmp(&read, &set_in, sizeof read), 0);
    diagonal.side_fabric = diagonal.corner_fabric = p.s.blue;
    ck_ok(muslin_quilt_diagonal(p.s.quilt, &diagonal, p.nodes, 1, &id, NULL));
    ck_ok(muslin_quilt_read_diagonal(p.s.quilt, id, &diagonal, NULL));
    ck_assert_int_eq(diagonal.set_off, 0);
    const struct unit_case half = { MUSLIN_UNIT_HALF_SQUARE, MUSLIN_UNIT_METHOD_TWO_AT_A_TIME, 1, 2, 2, 1, 1 };
    id = unit_case_of(&p.s, &half, WHOLE_IN(3), WHOLE_IN(3), 0);
    ck_ok(muslin_quilt_read_unit(p.s.quilt, id, &unit, NULL));
    ck_assert_int_eq(unit.width, fixed_of(p.s.quilt, WHOLE_IN(3)));
    ck_assert_int_eq(unit.height, 0);
    ck_assert_int_eq(unit.corner, 0);
    end_parts();
}
END_TEST

START_TEST(a_join_keeps_its_flag)
{
    struct muslin_quilt_join_spec read = { .size = sizeof read };
    begin_parts();
    p.join.flags = MUSLIN_QUILT_JOIN_KEEPS_ORDER;
    ck_ok(muslin_quilt_join(p.s.quilt, &p.join, p.nodes, 4, &p.join_id, NULL));
    ck_ok(muslin_quilt_read_join(p.s.quilt, p.join_id, &read, NULL));
    ck_assert_int_eq(memcmp(&read, &p.join, sizeof read), 0);
    end_parts();
}
END_TEST

START_TEST(a_fabric_has_its_initial_values)
{
    struct muslin_quilt_fabric_spec read = { .size = sizeof read };
    begin_parts();
    /* Example: one made with the initial values has 40 in of usable width. */
    ck_ok(muslin_quilt_read_fabric(p.s.quilt, p.s.blue, &read, NULL));
    ck_assert_int_eq(read.usable_width, WHOLE_IN(40));
    ck_assert_int_eq(read.print, MUSLIN_PRINT_NONE);
    ck_assert_int_eq(read.darkness, 0);
    end_parts();
}
END_TEST

/* ---- ids -------------------------------------------------------------------------------------------------------- */

static void ck_no_id(const struct muslin_quilt *quilt, int32_t sort, int64_t number, muslin_status status,
                     int32_t argument)
{
    struct muslin_problem problem = PROBLEM;
    muslin_id id = 77;
    ck_status(muslin_quilt_id(quilt, sort, number, &id, &problem), status);
    ck_assert_int_eq(problem.argument, argument);
    ck_assert_int_eq(id, 77);
}

START_TEST(a_number_gives_its_id)
{
    muslin_id id = 0;
    muslin_id allowance = 0;
    begin_parts();
    const struct muslin_part_counts counts = counts_of(p.s.quilt);
    const int64_t most[] = { counts.fabrics, counts.measures, counts.nodes };
    /* Example: measure 1 is the quilt's seam allowance. */
    ck_ok(muslin_quilt_seam(p.s.quilt, &allowance, NULL, NULL));
    ck_ok(muslin_quilt_id(p.s.quilt, MUSLIN_SORT_MEASURE, 1, &id, NULL));
    ck_assert_int_eq(id, allowance);
    for (int32_t sort = MUSLIN_SORT_FABRIC; sort <= MUSLIN_SORT_NODE; sort++) {
        for (int64_t number = 1; number <= most[sort - 1]; number++) {
            ck_ok(muslin_quilt_id(p.s.quilt, sort, number, &id, NULL));
            ck_assert_int_eq(muslin_id_sort(id), sort);
            ck_assert_int_eq(muslin_id_number(id), number);
        }
        const int64_t none[] = { 0, -1, most[sort - 1] + 1, INT64_MIN, INT64_MAX, (INT64_C(1) << 32) + 1 };
        for (size_t i = 0; i < sizeof none / sizeof none[0]; i++)
            ck_no_id(p.s.quilt, sort, none[i], MUSLIN_ERR_INDEX, MUSLIN_ARG_INDEX);
    }
    ck_no_id(p.s.quilt, 0, 1, MUSLIN_ERR_CHOICE, MUSLIN_ARG_SORT);
    ck_no_id(p.s.quilt, 4, 1, MUSLIN_ERR_CHOICE, MUSLIN_ARG_SORT);
    ck_no_id(NULL, MUSLIN_SORT_NODE, 1, MUSLIN_ERR_NULL, MUSLIN_ARG_QUILT);
    ck_status(muslin_quilt_id(p.s.quilt, MUSLIN_SORT_NODE, 1, NULL, NULL), MUSLIN_ERR_NULL);
    struct muslin_problem problem = PROBLEM;
    ck_status(muslin_quilt_id(p.s.quilt, MUSLIN_SORT_FABRIC, 8, &id, &problem), MUSLIN_ERR_INDEX);
    ck_assert_int_eq(problem.value, 8);
    ck_assert_int_eq(problem.limit, 7); /* blue, white, stripe, four prints */
    end_parts();
}
END_TEST

/* ---- measures --------------------------------------------------------------------------------------------------- */

static void ck_measure(muslin_id id, int32_t kind, muslin_len value, muslin_id node, int32_t axis, int64_t terms)
{
    const struct muslin_tree_measure expected = { sizeof expected, 0, value, node, kind, axis, terms };
    struct muslin_tree_measure read = { .size = sizeof read };
    ck_ok(muslin_quilt_read_measure(p.s.quilt, id, &read, NULL));
    ck_assert_int_eq(memcmp(&read, &expected, sizeof read), 0);
}

START_TEST(a_measure_says_what_it_is)
{
    const uint32_t none[2] = { 0, 0 };
    begin_parts();
    ck_measure(p.s.two, MUSLIN_MEASURE_NAMED, WHOLE_IN(2), 0, 0, 0);
    ck_measure(fixed_of(p.s.quilt, MUSLIN_SIZE_MAX), MUSLIN_MEASURE_FIXED, MUSLIN_SIZE_MAX, 0, 0, 0);
    /* Example: a block three strips across is a sum of one term. */
    muslin_id sum = times_of(p.s.quilt, p.s.two, 3);
    ck_measure(sum, MUSLIN_MEASURE_SUM, 0, 0, 0, 1);
    ck_measure(extent_of(p.s.quilt, p.join_id, MUSLIN_AXIS_DOWN), MUSLIN_MEASURE_EXTENT, 0, p.join_id, MUSLIN_AXIS_DOWN,
               0);
    ck_measure(extent_of(p.s.quilt, p.unit_id, MUSLIN_AXIS_ACROSS), MUSLIN_MEASURE_EXTENT, 0, p.unit_id,
               MUSLIN_AXIS_ACROSS, 0);
    const struct reading reading = { read_measure, &p.s.two, NULL, sizeof(struct muslin_tree_measure), 0 };
    const struct ruled ruled = { try_reading, none, sizeof none, reading.size, reading.size, 0 };
    tried = &reading;
    ck_out_rules(&ruled);
    ck_newer_structs(&ruled);
    ck_problem_rules(&ruled);
    ck_reading_refused(&reading, NULL, p.s.two, MUSLIN_ERR_NULL, MUSLIN_ARG_QUILT);
    ck_reading_refused(&reading, p.s.quilt, p.s.blue, MUSLIN_ERR_FOREIGN, MUSLIN_ARG_MEASURE);
    /* Example: 3 x strip has the factor 3. */
    struct muslin_quilt_sum_spec term = { .size = sizeof term };
    size_t count = 0;
    ck_ok(muslin_quilt_read_terms(p.s.quilt, sum, &term, sizeof term, 1, &count, NULL));
    ck_assert_uint_eq(count, 1);
    ck_assert_int_eq(term.measure, p.s.two);
    ck_assert_int_eq(term.factor, 3);
    end_parts();
}
END_TEST

START_TEST(terms_are_asked_for_then_filled)
{
    struct muslin_quilt_sum_spec given[3];
    struct muslin_quilt_sum_spec read[4];
    struct muslin_problem problem = PROBLEM;
    const struct muslin_quilt *q;
    muslin_id sum = 0;
    size_t count = 99;
    begin_parts();
    q = p.s.quilt;
    for (int i = 0; i < 3; i++) {
        const struct muslin_quilt_sum_spec term = { sizeof term, 0, p.measures[i], i == 1 ? -1048576 : 1048576 };
        given[i] = term;
    }
    ck_ok(muslin_quilt_sum(p.s.quilt, given, sizeof given[0], 3, &sum, NULL));
    memset(read, FILL, sizeof read);
    ck_ok(muslin_quilt_read_terms(q, sum, NULL, 0, 0, &count, NULL));
    ck_assert_uint_eq(count, 3);
    ck_status(muslin_quilt_read_terms(q, sum, read, sizeof read[0], 2, &count, &problem), MUSLIN_ERR_BUFFER);
    ck_assert_int_eq(problem.limit, 3);
    ck_assert_int_eq(read[0].size, UINT32_C(0x01010101) * FILL);
    ck_ok(muslin_quilt_read_terms(q, sum, read, sizeof read[0], 4, &count, NULL));
    ck_assert_int_eq(memcmp(read, given, sizeof given), 0);
    ck_assert_int_eq(read[3].size, UINT32_C(0x01010101) * FILL);
    ck_status(muslin_quilt_read_terms(q, sum, read, sizeof read[0] - 1, 4, &count, NULL), MUSLIN_ERR_STRUCT_SIZE);
    ck_status(muslin_quilt_read_terms(q, sum, NULL, sizeof read[0], 4, &count, NULL), MUSLIN_ERR_NULL);
    ck_status(muslin_quilt_read_terms(q, sum, read, sizeof read[0], 4, NULL, NULL), MUSLIN_ERR_NULL);
    ck_status(muslin_quilt_read_terms(NULL, sum, read, sizeof read[0], 4, &count, NULL), MUSLIN_ERR_NULL);
    ck_status(muslin_quilt_read_terms(q, p.patch_id, read, sizeof read[0], 4, &count, NULL), MUSLIN_ERR_FOREIGN);
    count = 99;
    ck_status(muslin_quilt_read_terms(q, p.s.two, read, sizeof read[0], 4, &count, &problem), MUSLIN_ERR_CHOICE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_KIND);
    ck_assert_int_eq(problem.value, MUSLIN_MEASURE_NAMED);
    ck_assert_int_eq(problem.limit, MUSLIN_MEASURE_SUM);
    ck_assert_uint_eq(count, 99);
    end_parts();
}
END_TEST

/* ---- pieces, drawings, fabrics ---------------------------------------------------------------------------------- */

START_TEST(sixty_degree_pieces_are_asked_for_then_filled)
{
    struct muslin_quilt_sixty_piece_spec read[CELLS];
    struct muslin_problem problem = PROBLEM;
    const struct muslin_quilt *q;
    size_t count = 99;
    begin_parts();
    q = p.s.quilt;
    memset(read, FILL, sizeof read);
    /* Example: a row of a diamond and a triangle has two pieces, of 2 cells and of 1. */
    ck_ok(muslin_quilt_read_sixty_pieces(q, p.sixty_id, NULL, 0, 0, &count, NULL));
    ck_assert_uint_eq(count, 2 * 2);
    ck_status(muslin_quilt_read_sixty_pieces(q, p.sixty_id, read, sizeof read[0], 3, &count, NULL), MUSLIN_ERR_BUFFER);
    ck_assert_int_eq(read[0].size, UINT32_C(0x01010101) * FILL);
    ck_ok(muslin_quilt_read_sixty_pieces(q, p.sixty_id, read, sizeof read[0], CELLS, &count, NULL));
    for (size_t i = 0; i < CELLS; i++) {
        ck_assert_uint_eq(read[i].size, sizeof read[i]);
        ck_assert_uint_eq(read[i].flags, 0);
        ck_assert_int_eq(read[i].fabric, p.fabrics[i]);
        ck_assert_int_eq(read[i].cells, cells[i]);
    }
    ck_status(muslin_quilt_read_sixty_pieces(q, p.sixty_id, read, 0, CELLS, &count, NULL), MUSLIN_ERR_STRUCT_SIZE);
    ck_status(muslin_quilt_read_sixty_pieces(q, p.sixty_id, read, sizeof read[0], CELLS, NULL, NULL), MUSLIN_ERR_NULL);
    ck_status(muslin_quilt_read_sixty_pieces(NULL, p.sixty_id, read, sizeof read[0], CELLS, &count, NULL),
              MUSLIN_ERR_NULL);
    ck_status(muslin_quilt_read_sixty_pieces(q, 0, read, sizeof read[0], CELLS, &count, NULL), MUSLIN_ERR_FOREIGN);
    ck_status(muslin_quilt_read_sixty_pieces(q, p.unit_id, read, sizeof read[0], CELLS, &count, &problem),
              MUSLIN_ERR_CHOICE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_KIND);
    end_parts();
}
END_TEST

START_TEST(a_drawing_is_asked_for_then_filled)
{
    struct muslin_corner_spec read[SLANT_ROWS];
    struct muslin_problem problem = PROBLEM;
    const struct muslin_quilt *q;
    muslin_id width = 77;
    muslin_id height = 78;
    size_t count = 99;
    begin_parts();
    q = p.s.quilt;
    memset(read, FILL, sizeof read);
    ck_status(muslin_quilt_read_shape(q, p.shape_id, read, sizeof read[0], 11, &count, &width, &height, NULL),
              MUSLIN_ERR_BUFFER);
    ck_assert_int_eq(width, 77);
    ck_assert_int_eq(height, 78);
    ck_assert_int_eq(read[0].size, UINT32_C(0x01010101) * FILL);
    /* Example: a square with one corner cut off on the slant has 4 corners of the outline and 5 + 3 of its pieces. */
    ck_ok(muslin_quilt_read_shape(q, p.shape_id, NULL, 0, 0, &count, &width, &height, NULL));
    ck_assert_uint_eq(count, 4 + 5 + 3);
    ck_assert_int_eq(width, p.measures[9]);
    ck_assert_int_eq(height, p.measures[10]);
    ck_ok(muslin_quilt_read_shape(q, p.shape_id, read, sizeof read[0], SLANT_ROWS, &count, &width, &height, NULL));
    ck_assert_int_eq(memcmp(read, slant, sizeof slant), 0);
    ck_ok(muslin_quilt_read_shape(q, shape_of(&p.s, slant, SLANT_ROWS, 2, 0, 0), read, sizeof read[0], SLANT_ROWS,
                                  &count, &width, &height, NULL));
    ck_assert_int_eq(width, 0);
    ck_assert_int_eq(height, 0);
    ck_status(muslin_quilt_read_shape(q, p.shape_id, read, 8, SLANT_ROWS, &count, &width, &height, NULL),
              MUSLIN_ERR_STRUCT_SIZE);
    ck_status(muslin_quilt_read_shape(q, p.shape_id, NULL, 0, 0, NULL, &width, &height, NULL), MUSLIN_ERR_NULL);
    ck_status(muslin_quilt_read_shape(q, p.shape_id, NULL, 0, 0, &count, NULL, &height, NULL), MUSLIN_ERR_NULL);
    ck_status(muslin_quilt_read_shape(q, p.shape_id, NULL, 0, 0, &count, &width, NULL, NULL), MUSLIN_ERR_NULL);
    ck_status(muslin_quilt_read_shape(NULL, p.shape_id, NULL, 0, 0, &count, &width, &height, NULL), MUSLIN_ERR_NULL);
    ck_status(muslin_quilt_read_shape(q, p.s.two, NULL, 0, 0, &count, &width, &height, NULL), MUSLIN_ERR_FOREIGN);
    ck_status(muslin_quilt_read_shape(q, p.unit_id, NULL, 0, 0, &count, &width, &height, &problem), MUSLIN_ERR_CHOICE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_KIND);
    end_parts();
}
END_TEST

/* The outline's own corners, allowances and tips are not kept. */
START_TEST(a_drawing_comes_back_plain)
{
    struct muslin_corner_spec rows[] = { CORNER(OUTLINE, 0, WHOLE_IN(2)), CORNER(OUTLINE, 0, 0),
                                         CORNER(OUTLINE, WHOLE_IN(1), 0), CORNER(OUTLINE, WHOLE_IN(3), 0),
                                         CORNER(OUTLINE, WHOLE_IN(3), WHOLE_IN(2)), CORNER(0, 0, 0),
                                         CORNER(0, WHOLE_IN(3), 0), CORNER(0, WHOLE_IN(3), WHOLE_IN(2)),
                                         CORNER(0, 0, WHOLE_IN(2)) };
    const struct muslin_corner_spec plain[] = { CORNER(OUTLINE, 0, 0), CORNER(OUTLINE, WHOLE_IN(3), 0),
                                                CORNER(OUTLINE, WHOLE_IN(3), WHOLE_IN(2)),
                                                CORNER(OUTLINE, 0, WHOLE_IN(2)), CORNER(0, 0, 0),
                                                CORNER(0, WHOLE_IN(3), 0), CORNER(0, WHOLE_IN(3), WHOLE_IN(2)),
                                                CORNER(0, 0, WHOLE_IN(2)) };
    struct muslin_corner_spec read[8];
    muslin_id width = 77;
    muslin_id height = 77;
    size_t count = 0;
    begin_parts();
    rows[6].allowance = 1000;
    rows[7].tip = MUSLIN_CORNER_TIP_BLUNT;
    muslin_id shape = shape_of(&p.s, rows, 9, 1, 0, 0);
    ck_ok(muslin_quilt_read_shape(p.s.quilt, shape, read, sizeof read[0], 8, &count, &width, &height, NULL));
    ck_assert_uint_eq(count, 8);
    ck_assert_int_eq(memcmp(read, plain, sizeof plain), 0);
    ck_assert_int_eq(shape_of(&p.s, read, 8, 1, 0, 0), shape);
    end_parts();
}
END_TEST

START_TEST(fabrics_are_asked_for_then_filled)
{
    muslin_id read[3] = { 77, 77, 77 };
    struct muslin_problem problem = PROBLEM;
    const struct muslin_quilt *q;
    size_t count = 99;
    begin_parts();
    q = p.s.quilt;
    const struct unit_case half = { MUSLIN_UNIT_HALF_SQUARE, MUSLIN_UNIT_METHOD_TWO_AT_A_TIME, 1, 2, 2, 1, 1 };
    const struct unit_case split = { MUSLIN_UNIT_SPLIT_QUARTER, MUSLIN_UNIT_METHOD_PIECES, 1, 3, 3, 2, 2 };
    /* Example: of a half-square, the fabric below its rising seam and the one above. */
    ck_ok(muslin_quilt_read_fabrics(q, unit_case_of(&p.s, &half, WHOLE_IN(3), 0, 0), read, 3, &count, NULL));
    ck_assert_uint_eq(count, 2);
    ck_assert_int_eq(read[0], p.s.blue);
    ck_assert_int_eq(read[1], p.s.white);
    ck_assert_int_eq(read[2], 77);
    ck_ok(muslin_quilt_read_fabrics(q, unit_case_of(&p.s, &split, WHOLE_IN(3), 0, 0), read, 3, &count, NULL));
    ck_assert_uint_eq(count, 3);
    ck_assert_int_eq(read[2], p.s.blue);
    ck_ok(muslin_quilt_read_fabrics(q, p.shape_id, NULL, 0, &count, NULL));
    ck_assert_uint_eq(count, 2);
    read[0] = 77;
    ck_status(muslin_quilt_read_fabrics(q, p.shape_id, read, 1, &count, NULL), MUSLIN_ERR_BUFFER);
    ck_assert_int_eq(read[0], 77);
    ck_ok(muslin_quilt_read_fabrics(q, p.shape_id, read, 2, &count, NULL));
    ck_assert_int_eq(read[0], p.fabrics[2]);
    ck_assert_int_eq(read[1], p.fabrics[0]);
    ck_status(muslin_quilt_read_fabrics(q, p.shape_id, NULL, 2, &count, NULL), MUSLIN_ERR_NULL);
    ck_status(muslin_quilt_read_fabrics(q, p.shape_id, read, 2, NULL, NULL), MUSLIN_ERR_NULL);
    ck_status(muslin_quilt_read_fabrics(NULL, p.shape_id, read, 2, &count, NULL), MUSLIN_ERR_NULL);
    ck_status(muslin_quilt_read_fabrics(q, p.s.two, read, 2, &count, NULL), MUSLIN_ERR_FOREIGN);
    ck_status(muslin_quilt_read_fabrics(q, p.patch_id, read, 2, &count, &problem), MUSLIN_ERR_CHOICE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_KIND);
    ck_assert_int_eq(problem.value, MUSLIN_NODE_PATCH);
    end_parts();
}
END_TEST

/* ---- lying another way ------------------------------------------------------------------------------------------ */

static muslin_id lay_of(muslin_id node, int32_t quarter_turns, int32_t mirrored)
{
    muslin_id id = 0;
    ck_ok(muslin_quilt_lay(p.s.quilt, node, quarter_turns, mirrored, &id, NULL));
    return id;
}

START_TEST(a_node_is_laid_in_one_step)
{
    struct muslin_problem problem = PROBLEM;
    muslin_id out = 77;
    begin_parts();
    const int64_t before = counts_of(p.s.quilt).nodes;
    muslin_id laid = lay_of(p.unit_id, 3, 1);
    ck_assert_int_eq(counts_of(p.s.quilt).nodes, before + 1);
    for (int32_t quarters = 0; quarters < 4; quarters++) {
        ck_assert_int_eq(lay_of(p.unit_id, quarters, 0), turn_of(p.s.quilt, p.unit_id, quarters));
        ck_assert_int_eq(lay_of(p.unit_id, quarters, 1),
                         turn_of(p.s.quilt, mirror_of(p.s.quilt, p.unit_id), quarters));
        ck_assert_int_eq(lay_of(laid, quarters, 1), turn_of(p.s.quilt, mirror_of(p.s.quilt, laid), quarters));
    }
    struct muslin_node node = { .size = sizeof node };
    ck_ok(muslin_quilt_node(p.s.quilt, laid, &node, NULL));
    ck_assert_int_eq(node.quarter_turns, 3);
    ck_assert_int_eq(node.mirrored, 1);
    /* Example: mirrored and turned by 2, a block is its own image, top for bottom. */
    /* So a corner that is cut off at the upper right is found at the lower right. */
    struct muslin_solution *solution = solved(p.s.quilt, lay_of(shape_of(&p.s, slant, SLANT_ROWS, 2, 0, 0), 2, 1));
    struct muslin_outline outlines[2];
    struct muslin_outline_corner corners[16];
    size_t count = 0;
    size_t given = 0;
    muslin_len right = 0;
    muslin_len low = WHOLE_IN(6);
    ck_ok(muslin_solution_outlines(solution, lay_of(shape_of(&p.s, slant, SLANT_ROWS, 2, 0, 0), 2, 1),
                                   MUSLIN_STAGE_FINISHED, 0, outlines, sizeof outlines[0], 2, corners,
                                   sizeof corners[0], 16, &count, &given, NULL));
    for (int64_t i = 0; i < outlines[1].corners; i++) {
        const struct muslin_outline_corner *corner = &corners[outlines[1].first_corner + i];
        right = corner->x > right ? corner->x : right;
        low = corner->y < low ? corner->y : low;
    }
    ck_assert_int_eq(right, WHOLE_IN(6));
    ck_assert_int_eq(low, 0);
    muslin_solution_free(solution);
    ck_status(muslin_quilt_lay(p.s.quilt, p.unit_id, 4, 0, &out, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_QUARTER_TURNS);
    ck_status(muslin_quilt_lay(p.s.quilt, p.unit_id, 0, 2, &out, &problem), MUSLIN_ERR_CHOICE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_MIRRORED);
    ck_status(muslin_quilt_lay(p.s.quilt, p.s.two, 0, 0, &out, NULL), MUSLIN_ERR_FOREIGN);
    ck_status(muslin_quilt_lay(NULL, p.unit_id, 0, 0, &out, NULL), MUSLIN_ERR_NULL);
    ck_status(muslin_quilt_lay(p.s.quilt, p.unit_id, 0, 0, NULL, NULL), MUSLIN_ERR_NULL);
    ck_assert_int_eq(out, 77);
    end_parts();
}
END_TEST

Suite *quilt_read_suite(void)
{
    Suite *suite = suite_create("quilt_read");
    TCase *specs = tcase_create("specs");
    tcase_add_loop_test(specs, a_spec_comes_back_as_it_was_given, 0, READINGS);
    tcase_add_test(specs, a_node_of_another_kind_is_told);
    tcase_add_test(specs, what_was_not_given_comes_back_as_its_comment_says);
    tcase_add_test(specs, a_join_keeps_its_flag);
    tcase_add_test(specs, a_fabric_has_its_initial_values);
    suite_add_tcase(suite, specs);
    TCase *others = tcase_create("others");
    tcase_add_test(others, a_number_gives_its_id);
    tcase_add_test(others, a_measure_says_what_it_is);
    tcase_add_test(others, terms_are_asked_for_then_filled);
    tcase_add_test(others, sixty_degree_pieces_are_asked_for_then_filled);
    tcase_add_test(others, a_drawing_is_asked_for_then_filled);
    tcase_add_test(others, a_drawing_comes_back_plain);
    tcase_add_test(others, fabrics_are_asked_for_then_filled);
    tcase_add_test(others, a_node_is_laid_in_one_step);
    suite_add_tcase(suite, others);
    return suite;
}
