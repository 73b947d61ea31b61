/* test_quilt.c - a quilt, its ids, fabrics and measures; patches, joins, turns, trims, grids.
 *
 * SPDX-License-Identifier: MIT */
#include <stdio.h>

#include "test_quilt.h"

/* ---- creation --------------------------------------------------------------------------------------------------- */

/* The name in room for just as much, and in room for a byte less. */
static void ck_named(const struct muslin_quilt *quilt, muslin_id id, const char *name)
{
    char buf[256] = "untouched";
    size_t need = 0;
    struct muslin_problem problem = PROBLEM;
    ck_status(muslin_quilt_name(quilt, id, buf, strlen(name), &need, &problem), MUSLIN_ERR_BUFFER);
    ck_assert_int_eq(problem.value, (int64_t)strlen(name));
    ck_assert_int_eq(problem.limit, (int64_t)strlen(name) + 1);
    ck_assert_str_eq(buf, "untouched");
    ck_ok(muslin_quilt_name(quilt, id, buf, strlen(name) + 1, &need, NULL));
    ck_assert_str_eq(buf, name);
    ck_assert_uint_eq(need, strlen(name) + 1);
    ck_status(muslin_quilt_name(quilt, id, NULL, 1, &need, NULL), MUSLIN_ERR_NULL);
}

START_TEST(a_fresh_quilt_has_its_seam_and_nothing_else)
{
    /* Example: muslin_quilt_create(&spec, &allocator, &quilt, NULL), with muslin_allocator_libc(&allocator) before. */
    struct muslin_quilt_spec spec = MUSLIN_QUILT_SPEC_INIT;
    struct muslin_allocator allocator;
    struct muslin_quilt *quilt = NULL;
    muslin_id allowance = 0;
    muslin_id take_up = 0;
    ck_ok(muslin_allocator_libc(&allocator));
    ck_ok(muslin_quilt_create(&spec, &allocator, &quilt, NULL));
    /* Example: a fresh one has no fabrics, two measures and no nodes. */
    struct muslin_part_counts counts = counts_of(quilt);
    ck_assert_int_eq(counts.fabrics, 0);
    ck_assert_int_eq(counts.measures, 2);
    ck_assert_int_eq(counts.nodes, 0);
    ck_assert_int_gt(counts.bytes, 0);
    /* Example: muslin_quilt_seam(quilt, &allowance, &take_up, NULL). */
    ck_ok(muslin_quilt_seam(quilt, &allowance, &take_up, NULL));
    ck_assert_int_eq(muslin_id_number(allowance), 1);
    ck_assert_int_eq(muslin_id_number(take_up), 2);
    ck_named(quilt, allowance, "seam allowance");
    ck_named(quilt, take_up, "take-up");
    ck_ok(muslin_quilt_seam(quilt, NULL, NULL, NULL));
    ck_status(muslin_quilt_seam(NULL, NULL, NULL, NULL), MUSLIN_ERR_NULL);
    /* Example: muslin_quilt_free(quilt). */
    muslin_quilt_free(quilt);
    muslin_quilt_free(NULL);
}
END_TEST

static void ck_creation_range(struct muslin_quilt_spec spec, int32_t argument)
{
    struct failing_allocator memory;
    struct muslin_quilt *quilt = NULL;
    struct muslin_problem problem = PROBLEM;
    failing_start(&memory, 0);
    ck_status(muslin_quilt_create(&spec, &memory.allocator, &quilt, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.argument, argument);
    ck_assert_ptr_null(quilt);
    ck_assert_uint_eq(memory.calls, 0);
}

START_TEST(creation_has_its_ranges)
{
    const struct muslin_quilt_spec usual = MUSLIN_QUILT_SPEC_INIT;
    struct muslin_quilt_spec spec = usual;
    spec.allowance = MUSLIN_SIZE_MAX / 8 + 1;
    ck_creation_range(spec, MUSLIN_ARG_SEAM_ALLOWANCE);
    spec = usual;
    spec.take_up = -1;
    ck_creation_range(spec, MUSLIN_ARG_TAKE_UP);
    spec = usual;
    spec.most = 0;
    ck_creation_range(spec, MUSLIN_ARG_MOST);
    spec.most = 134217729;
    ck_creation_range(spec, MUSLIN_ARG_MOST);
    spec = usual;
    spec.tag = 1048576;
    ck_creation_range(spec, MUSLIN_ARG_TAG);
}
END_TEST

START_TEST(creation_wants_a_whole_allocator)
{
    struct muslin_quilt_spec spec = MUSLIN_QUILT_SPEC_INIT;
    struct failing_allocator memory;
    struct muslin_quilt *quilt = NULL;
    failing_start(&memory, 0);
    ck_status(muslin_quilt_create(&spec, NULL, &quilt, NULL), MUSLIN_ERR_NULL);
    ck_status(muslin_quilt_create(&spec, &memory.allocator, NULL, NULL), MUSLIN_ERR_NULL);
    ck_status(muslin_quilt_create(NULL, &memory.allocator, &quilt, NULL), MUSLIN_ERR_NULL);
    struct muslin_allocator part = memory.allocator;
    struct muslin_problem problem = PROBLEM;
    part.alloc = NULL;
    ck_status(muslin_quilt_create(&spec, &part, &quilt, &problem), MUSLIN_ERR_NULL);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_ALLOCATOR);
    ck_assert_int_eq(problem.value, 0);
    ck_assert_int_eq(problem.limit, 0);
    part = memory.allocator;
    part.realloc = NULL;
    ck_status(muslin_quilt_create(&spec, &part, &quilt, NULL), MUSLIN_ERR_NULL);
    part = memory.allocator;
    part.free = NULL;
    ck_status(muslin_quilt_create(&spec, &part, &quilt, NULL), MUSLIN_ERR_NULL);
    ck_assert_ptr_null(quilt);
    /* two measures do not fit a quilt of one part */
    spec.most = 1;
    ck_status(muslin_quilt_create(&spec, &memory.allocator, &quilt, &problem), MUSLIN_ERR_WORK_LIMIT);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_MOST);
    ck_assert_int_eq(problem.value, 2);
    ck_assert_int_eq(problem.limit, 1);
    ck_assert(failing_is_clean(&memory));
}
END_TEST

INIT_CALL(quilt)
INIT_CALL(quilt_fabric)
INIT_CALL(quilt_sum)
INIT_CALL(quilt_patch)
INIT_CALL(quilt_join)
INIT_CALL(quilt_trim)

START_TEST(specs_begin_as_stated)
{
    const struct muslin_quilt_spec quilt = MUSLIN_QUILT_SPEC_INIT;
    const struct muslin_quilt_fabric_spec fabric = MUSLIN_QUILT_FABRIC_SPEC_INIT;
    const struct muslin_quilt_sum_spec sum = MUSLIN_QUILT_SUM_SPEC_INIT;
    const struct muslin_quilt_patch_spec patch = MUSLIN_QUILT_PATCH_SPEC_INIT;
    const struct muslin_quilt_join_spec join = MUSLIN_QUILT_JOIN_SPEC_INIT;
    const struct muslin_quilt_trim_spec trim = MUSLIN_QUILT_TRIM_SPEC_INIT;
    ck_init_rules(init_quilt, &quilt, sizeof quilt);
    ck_init_rules(init_quilt_fabric, &fabric, sizeof fabric);
    ck_init_rules(init_quilt_sum, &sum, sizeof sum);
    ck_init_rules(init_quilt_patch, &patch, sizeof patch);
    ck_init_rules(init_quilt_join, &join, sizeof join);
    ck_init_rules(init_quilt_trim, &trim, sizeof trim);
    /* Example: muslin_quilt_spec_init(&spec, sizeof spec). */
    struct muslin_quilt_spec spec;
    ck_ok(muslin_quilt_spec_init(&spec, sizeof spec));
    ck_assert_int_eq(spec.allowance, MUSLIN_QUARTER_INCH);
    ck_assert_int_eq(spec.tag, 1);
}
END_TEST

/* ---- ids -------------------------------------------------------------------------------------------------------- */

START_TEST(ids_know_their_sort_and_number)
{
    struct sewn s;
    begin_sewing(&s);
    ck_assert_int_eq(muslin_id_sort(s.white), MUSLIN_SORT_FABRIC);
    ck_assert_int_eq(muslin_id_number(s.white), 2);
    ck_assert_int_eq(muslin_id_sort(s.two), MUSLIN_SORT_MEASURE);
    ck_assert_int_eq(muslin_id_number(s.two), 3);
    patch_of(s.quilt, s.blue, s.two, s.two);
    patch_of(s.quilt, s.white, s.two, s.two);
    /* Example: the third node made has number 3. */
    muslin_id third = patch_of(s.quilt, s.blue, s.two, times_of(s.quilt, s.two, 2));
    ck_assert_int_eq(muslin_id_sort(third), MUSLIN_SORT_NODE);
    ck_assert_int_eq(muslin_id_number(third), 3);
    const muslin_id none[] = { 0, -1, 1, INT64_C(1) << 36, (INT64_C(1) << 40) | (INT64_C(4) << 36) | 1, INT64_MIN };
    for (size_t i = 0; i < sizeof none / sizeof none[0]; i++) {
        ck_assert_int_eq(muslin_id_sort(none[i]), 0);
        ck_assert_int_eq(muslin_id_number(none[i]), 0);
    }
    end_sewing(&s);
}
END_TEST

START_TEST(ids_of_another_quilt_are_foreign)
{
    struct sewn s;
    struct muslin_quilt_spec spec = MUSLIN_QUILT_SPEC_INIT;
    struct muslin_quilt *other = NULL;
    struct muslin_problem problem = PROBLEM;
    begin_sewing(&s);
    spec.tag = 2;
    ck_ok(muslin_quilt_create(&spec, &s.memory.allocator, &other, NULL));
    muslin_id green = fabric_of(other, "green");
    muslin_id four = measure_of(other, "strip", WHOLE_IN(4));
    muslin_id theirs = patch_of(other, green, four, four);
    muslin_id out = 77;
    struct muslin_quilt_patch_spec patch = MUSLIN_QUILT_PATCH_SPEC_INIT;
    patch.fabric = green;
    patch.width = patch.height = s.two;
    ck_status(muslin_quilt_patch(s.quilt, &patch, &out, &problem), MUSLIN_ERR_FOREIGN);
    ck_assert_int_eq(problem.limit, 0);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_FABRIC);
    ck_assert_int_eq(problem.value, green);
    ck_assert_str_eq(problem.text, "Fabric is number 1. The id is none of this quilt's, or names something of another "
                                   "sort; pass an id that the quilt itself gave.");
    patch.fabric = s.blue;
    muslin_id *measures[] = { &patch.width, &patch.height, &patch.left, &patch.right, &patch.top, &patch.bottom };
    for (int64_t i = 0; i < 6; i++) {
        muslin_id was = *measures[i];
        *measures[i] = i == 1 ? s.blue : four; /* of another sort, of another quilt */
        ck_status(muslin_quilt_patch(s.quilt, &patch, &out, &problem), MUSLIN_ERR_FOREIGN);
        ck_assert_int_eq(problem.limit, 0);
        ck_assert_int_eq(problem.argument, MUSLIN_ARG_MEASURE);
        ck_assert_int_eq(problem.at, i);
        *measures[i] = was;
    }
    patch.width = 0;
    ck_status(muslin_quilt_patch(s.quilt, &patch, &out, &problem), MUSLIN_ERR_FOREIGN);
    ck_assert_str_eq(problem.text, "Measure is missing, but one is needed here.");
    patch.width = s.two;
    ck_status(muslin_quilt_patch(s.quilt, NULL, &out, NULL), MUSLIN_ERR_NULL);
    ck_status(muslin_quilt_turn(s.quilt, theirs, 1, &out, &problem), MUSLIN_ERR_FOREIGN);
    ck_assert_int_eq(problem.limit, 0);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_NODE);
    ck_status(muslin_quilt_mirror(s.quilt, theirs, &out, NULL), MUSLIN_ERR_FOREIGN);
    ck_status(muslin_quilt_extent(s.quilt, theirs, MUSLIN_AXIS_DOWN, &out, NULL), MUSLIN_ERR_FOREIGN);
    /* a number that the quilt has not reached yet, and none at all */
    ck_status(muslin_quilt_turn(s.quilt, s.two + (INT64_C(1) << 36), 1, &out, NULL), MUSLIN_ERR_FOREIGN);
    /* An id says in its upper half of which quilt and sort it is. */
    ck_status(muslin_quilt_turn(s.quilt, UINT32_MAX, 1, &out, &problem), MUSLIN_ERR_FOREIGN);
    ck_assert_ptr_nonnull(strstr(problem.text, "is 4294967295."));
    ck_status(muslin_quilt_turn(s.quilt, 0, 1, &out, NULL), MUSLIN_ERR_FOREIGN);
    ck_assert_int_eq(out, 77);
    muslin_quilt_free(other);
    end_sewing(&s);
}
END_TEST

START_TEST(a_tag_of_its_own_tells_quilts_apart)
{
    struct failing_allocator memory;
    struct muslin_quilt_spec spec = MUSLIN_QUILT_SPEC_INIT;
    struct muslin_quilt *one = NULL;
    struct muslin_quilt *two = NULL;
    failing_start(&memory, 0);
    spec.tag = 0;
    ck_ok(muslin_quilt_create(&spec, &memory.allocator, &one, NULL));
    ck_ok(muslin_quilt_create(&spec, &memory.allocator, &two, NULL));
    muslin_id first = fabric_of(one, "blue");
    muslin_id second = fabric_of(two, "blue");
    ck_assert_int_ne(first, second);
    ck_assert_int_eq(muslin_id_number(first), muslin_id_number(second));
    muslin_quilt_free(one);
    muslin_quilt_free(two);
    ck_assert(failing_is_clean(&memory));
}
END_TEST

/* ---- fabrics, measures, names ----------------------------------------------------------------------------------- */

static void ck_name(const struct muslin_quilt *quilt, muslin_id id, const char *name)
{
    char buf[16];
    size_t need = 0;
    ck_ok(muslin_quilt_name(quilt, id, NULL, 0, &need, NULL));
    ck_assert_uint_eq(need, strlen(name) + 1);
    /* Example: muslin_quilt_name(quilt, blue, buf, sizeof buf, &need, NULL). */
    ck_ok(muslin_quilt_name(quilt, id, buf, sizeof buf, &need, NULL));
    ck_assert_str_eq(buf, name);
    memset(buf, 'x', sizeof buf);
    if (need > 1) {
        struct muslin_problem problem = PROBLEM;
        ck_status(muslin_quilt_name(quilt, id, buf, need - 1, &need, &problem), MUSLIN_ERR_BUFFER);
        ck_assert_int_eq(problem.limit, (int64_t)need);
        ck_assert_int_eq(buf[0], 'x');
    }
}

START_TEST(names_are_kept_as_they_are)
{
    struct sewn s;
    begin_sewing(&s);
    ck_name(s.quilt, s.blue, "blue");
    ck_name(s.quilt, s.white, "white");
    ck_name(s.quilt, s.two, "strip");
    ck_name(s.quilt, fixed_of(s.quilt, 5), "");
    muslin_id allowance = 0;
    ck_ok(muslin_quilt_seam(s.quilt, &allowance, NULL, NULL));
    ck_name(s.quilt, allowance, "seam allowance");
    /* Every call makes another. Example: muslin_quilt_fabric(quilt, &spec, "blue", 4, &blue, NULL). */
    ck_assert_int_ne(fabric_of(s.quilt, "blue"), s.blue);
    /* Example: muslin_quilt_measure(quilt, "strip", 5, 16256, &strip, NULL). */
    ck_assert_int_ne(measure_of(s.quilt, "strip", 16256), s.two);
    ck_name(s.quilt, fabric_of(s.quilt, ""), "");
    char buf[8];
    size_t need = 0;
    struct muslin_problem problem = PROBLEM;
    ck_status(muslin_quilt_name(s.quilt, patch_of(s.quilt, s.blue, s.two, s.two), buf, sizeof buf, &need, &problem),
              MUSLIN_ERR_FOREIGN);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_NAME);
    ck_assert_ptr_null(strstr(problem.text, "bytes")); /* it is not too long */
    ck_status(muslin_quilt_name(s.quilt, s.blue, NULL, 4, &need, NULL), MUSLIN_ERR_NULL);
    ck_status(muslin_quilt_name(s.quilt, s.blue, buf, sizeof buf, NULL, NULL), MUSLIN_ERR_NULL);
    ck_status(muslin_quilt_name(NULL, s.blue, buf, sizeof buf, &need, NULL), MUSLIN_ERR_NULL);
    end_sewing(&s);
}
END_TEST

START_TEST(fabrics_and_measures_have_their_ranges)
{
    struct sewn s;
    char name[256] = { 0 };
    muslin_id out = 0;
    struct muslin_problem problem = PROBLEM;
    struct muslin_quilt_fabric_spec spec = MUSLIN_QUILT_FABRIC_SPEC_INIT;
    begin_sewing(&s);
    const struct muslin_part_counts before = counts_of(s.quilt);
    spec.usable_width = 0;
    ck_status(muslin_quilt_fabric(s.quilt, &spec, "x", 1, &out, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_USABLE_WIDTH);
    spec.usable_width = 1;
    spec.print = 6;
    ck_status(muslin_quilt_fabric(s.quilt, &spec, "x", 1, &out, NULL), MUSLIN_ERR_CHOICE);
    spec.print = MUSLIN_PRINT_ONE_WAY;
    spec.darkness = 101;
    ck_status(muslin_quilt_fabric(s.quilt, &spec, "x", 1, &out, NULL), MUSLIN_ERR_RANGE);
    spec.darkness = 100;
    ck_status(muslin_quilt_fabric(s.quilt, &spec, name, 201, &out, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_NAME);
    ck_assert_str_eq(problem.text, "Name is 201 bytes, but must be at most 200.");
    ck_status(muslin_quilt_fabric(s.quilt, &spec, NULL, 1, &out, NULL), MUSLIN_ERR_NULL);
    ck_status(muslin_quilt_fabric(s.quilt, &spec, "x", 1, NULL, NULL), MUSLIN_ERR_NULL);
    ck_status(muslin_quilt_fabric(s.quilt, NULL, "x", 1, &out, NULL), MUSLIN_ERR_NULL);
    ck_status(muslin_quilt_measure(s.quilt, "x", 1, -1, &out, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_VALUE);
    ck_status(muslin_quilt_measure(s.quilt, "x", 1, MUSLIN_SIZE_MAX + 1, &out, NULL), MUSLIN_ERR_RANGE);
    ck_status(muslin_quilt_measure(s.quilt, name, SIZE_MAX, 1, &out, NULL), MUSLIN_ERR_RANGE);
    ck_status(muslin_quilt_measure(s.quilt, "x", 1, 1, NULL, NULL), MUSLIN_ERR_NULL);
    ck_status(muslin_quilt_fixed(s.quilt, -1, &out, NULL), MUSLIN_ERR_RANGE);
    ck_status(muslin_quilt_fixed(NULL, 1, &out, NULL), MUSLIN_ERR_NULL);
    ck_same_parts(s.quilt, &before);
    ck_ok(muslin_quilt_fabric(s.quilt, &spec, name, 200, &out, NULL));
    end_sewing(&s);
}
END_TEST

START_TEST(equal_measures_are_one)
{
    struct sewn s;
    begin_sewing(&s);
    /* Example: 1/2 in of trimming room. */
    muslin_id half = fixed_of(s.quilt, IN(0, 1, 2));
    ck_assert_int_eq(fixed_of(s.quilt, IN(0, 1, 2)), half);
    ck_assert_int_ne(fixed_of(s.quilt, IN(0, 1, 4)), half);
    /* Example: a block three strips across is 3 x strip. */
    muslin_id three = times_of(s.quilt, s.two, 3);
    ck_assert_int_eq(times_of(s.quilt, s.two, 3), three);
    ck_assert_int_ne(times_of(s.quilt, s.two, -3), three);
    muslin_id patch = patch_of(s.quilt, s.blue, three, s.two);
    muslin_id wide = extent_of(s.quilt, patch, MUSLIN_AXIS_ACROSS);
    ck_assert_int_eq(extent_of(s.quilt, patch, MUSLIN_AXIS_ACROSS), wide);
    /* Example: muslin_quilt_extent(quilt, block, MUSLIN_AXIS_DOWN, &length, NULL). */
    muslin_id length = 0;
    ck_ok(muslin_quilt_extent(s.quilt, patch, MUSLIN_AXIS_DOWN, &length, NULL));
    ck_assert_int_ne(length, wide);
    struct muslin_problem problem = PROBLEM;
    ck_status(muslin_quilt_extent(s.quilt, patch, 3, &length, &problem), MUSLIN_ERR_CHOICE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_AXIS);
    ck_status(muslin_quilt_extent(s.quilt, patch, 1, NULL, NULL), MUSLIN_ERR_NULL);
    end_sewing(&s);
}
END_TEST

START_TEST(sums_have_their_rules)
{
    struct sewn s;
    struct muslin_quilt_sum_spec terms[65];
    struct muslin_problem problem = PROBLEM;
    muslin_id out = 0;
    begin_sewing(&s);
    const struct muslin_part_counts before = counts_of(s.quilt);
    for (int i = 0; i < 65; i++) {
        ck_ok(muslin_quilt_sum_spec_init(&terms[i], sizeof terms[i]));
        terms[i].measure = s.two;
    }
    ck_status(muslin_quilt_sum(s.quilt, terms, sizeof terms[0], 0, &out, NULL), MUSLIN_ERR_RANGE);
    ck_status(muslin_quilt_sum(s.quilt, terms, sizeof terms[0], 65, &out, NULL), MUSLIN_ERR_RANGE);
    ck_status(muslin_quilt_sum(s.quilt, terms, sizeof terms[0] - 1, 2, &out, NULL), MUSLIN_ERR_STRUCT_SIZE);
    ck_status(muslin_quilt_sum(s.quilt, NULL, sizeof terms[0], 2, &out, NULL), MUSLIN_ERR_NULL);
    terms[2].factor = 1048577;
    ck_status(muslin_quilt_sum(s.quilt, terms, sizeof terms[0], 4, &out, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_FACTOR);
    ck_assert_int_eq(problem.at, 2);
    terms[2].factor = 1;
    terms[3].measure = s.blue;
    ck_status(muslin_quilt_sum(s.quilt, terms, sizeof terms[0], 4, &out, &problem), MUSLIN_ERR_FOREIGN);
    ck_assert_int_eq(problem.limit, 0);
    ck_assert_int_eq(problem.at, 3);
    terms[1].size = 5000;
    ck_status(muslin_quilt_sum(s.quilt, terms, sizeof terms[0], 4, &out, &problem), MUSLIN_ERR_STRUCT_SIZE);
    ck_same_parts(s.quilt, &before);
    terms[1].size = sizeof terms[1];
    terms[3].measure = s.two;
    ck_ok(muslin_quilt_sum(s.quilt, terms, sizeof terms[0], 64, &out, NULL));
    end_sewing(&s);
}
END_TEST

/* ---- nodes ------------------------------------------------------------------------------------------------------ */

START_TEST(equal_nodes_are_one)
{
    struct sewn s;
    begin_sewing(&s);
    muslin_id blue = patch_of(s.quilt, s.blue, s.two, s.two);
    muslin_id white = patch_of(s.quilt, s.white, s.two, s.two);
    ck_assert_int_ne(blue, white);
    ck_assert_int_eq(patch_of(s.quilt, s.blue, s.two, s.two), blue);
    /* the same size by another measure is another patch: it may change by itself */
    ck_assert_int_ne(patch_of(s.quilt, s.blue, measure_of(s.quilt, "strip", WHOLE_IN(2)), s.two), blue);
    const muslin_id three[] = { blue, white, blue };
    const muslin_id other[] = { white, blue, white };
    /* Example: three patches side by side. */
    muslin_id row = join_of(s.quilt, MUSLIN_AXIS_ACROSS, three, 3);
    ck_assert_int_eq(join_of(s.quilt, MUSLIN_AXIS_ACROSS, three, 3), row);
    ck_assert_int_ne(join_of(s.quilt, MUSLIN_AXIS_DOWN, three, 3), row);
    ck_assert_int_ne(join_of(s.quilt, MUSLIN_AXIS_ACROSS, other, 3), row);
    ck_assert_int_ne(join_of(s.quilt, MUSLIN_AXIS_ACROSS, three, 2), row);
    ck_assert_int_eq(join_of(s.quilt, MUSLIN_AXIS_ACROSS, three, 1), blue);
    /* many more, so that tables grow: each still found */
    muslin_id patches[600];
    for (int i = 0; i < 600; i++)
        patches[i] = patch_of(s.quilt, s.blue, fixed_of(s.quilt, 1 + i), s.two);
    for (int i = 0; i < 600; i++)
        ck_assert_int_eq(patch_of(s.quilt, s.blue, fixed_of(s.quilt, 1 + i), s.two), patches[i]);
    ck_assert_int_eq(join_of(s.quilt, MUSLIN_AXIS_ACROSS, three, 3), row);
    end_sewing(&s);
}
END_TEST

/* So many that some share their hash of 32 bits by chance (300000^2 / 2^33: about ten pairs): each is still itself. */
START_TEST(many_measures_are_told_apart)
{
    enum { MANY = 300000 };
    struct sewn s;
    begin_sewing(&s);
    int64_t before = counts_of(s.quilt).measures;
    int64_t wrong = 0;
    for (int round = 0; round < 2; round++) /* made, then found */
        for (int64_t i = 0; i < MANY; i++) {
            muslin_id id = 0;
            wrong += muslin_quilt_fixed(s.quilt, i, &id, NULL) != MUSLIN_OK;
            wrong += muslin_id_number(id) != before + 1 + i;
        }
    ck_assert_int_eq(wrong, 0);
    ck_assert_int_eq(counts_of(s.quilt).measures, before + MANY);
    end_sewing(&s);
}
END_TEST

START_TEST(nodes_can_be_read_back)
{
    struct sewn s;
    begin_sewing(&s);
    muslin_id blue = patch_of(s.quilt, s.blue, s.two, s.two);
    const muslin_id three[] = { blue, blue, blue };
    muslin_id row = join_of(s.quilt, MUSLIN_AXIS_DOWN, three, 3);
    struct muslin_node node = { .size = (uint32_t)sizeof node };
    ck_ok(muslin_quilt_node(s.quilt, blue, &node, NULL));
    ck_assert_int_eq(node.kind, MUSLIN_NODE_PATCH);
    ck_assert_int_eq(node.children, 0);
    ck_assert_int_eq(node.depth, 1);
    ck_assert_int_eq(node.axis, 0);
    /* Example: a join of three patches has 3 children and depth 2. */
    ck_ok(muslin_quilt_node(s.quilt, row, &node, NULL));
    ck_assert_int_eq(node.kind, MUSLIN_NODE_JOIN);
    ck_assert_int_eq(node.children, 3);
    ck_assert_int_eq(node.depth, 2);
    ck_assert_int_eq(node.axis, MUSLIN_AXIS_DOWN);
    /* Example: of a join of three equal patches, three times the same id. */
    muslin_id ids[4] = { 0, 0, 0, 77 };
    size_t count = 0;
    ck_ok(muslin_quilt_children(s.quilt, row, NULL, 0, &count, NULL));
    ck_assert_uint_eq(count, 3);
    ck_status(muslin_quilt_children(s.quilt, row, ids, 2, &count, NULL), MUSLIN_ERR_BUFFER);
    ck_assert_int_eq(ids[0], 0);
    ck_status(muslin_quilt_children(s.quilt, row, NULL, 3, &count, NULL), MUSLIN_ERR_NULL);
    ck_ok(muslin_quilt_children(s.quilt, row, ids, 3, &count, NULL));
    for (int i = 0; i < 3; i++)
        ck_assert_int_eq(ids[i], blue);
    ck_assert_int_eq(ids[3], 77);
    ck_ok(muslin_quilt_children(s.quilt, blue, ids, 3, &count, NULL));
    ck_assert_uint_eq(count, 0);
    ck_status(muslin_quilt_children(s.quilt, s.two, ids, 3, &count, NULL), MUSLIN_ERR_FOREIGN);
    ck_status(muslin_quilt_node(s.quilt, s.two, &node, NULL), MUSLIN_ERR_FOREIGN);
    node.size = 8;
    ck_status(muslin_quilt_node(s.quilt, row, &node, NULL), MUSLIN_ERR_STRUCT_SIZE);
    struct muslin_part_counts counts = { .size = 8 };
    ck_status(muslin_quilt_counts(s.quilt, &counts, NULL), MUSLIN_ERR_STRUCT_SIZE);
    end_sewing(&s);
}
END_TEST

/* Every way to lie, twice over: against turning the corners of a square about, done by hand in a table. */
START_TEST(turns_of_turns_are_one_turn)
{
    struct sewn s;
    begin_sewing(&s);
    muslin_id node = patch_of(s.quilt, s.blue, s.two, times_of(s.quilt, s.two, 2));
    /* corners numbered clockwise from the upper left; after a quarter turn clockwise the first stands second */
    for (int first = 0; first < 8; first++)
        for (int second = 0; second < 8; second++) {
            int corner[4] = { 0, 1, 2, 3 };
            muslin_id now = node;
            const int steps[2] = { first, second };
            for (int k = 0; k < 2; k++) {
                if (steps[k] >= 4) {
                    const int mirrored[4] = { corner[1], corner[0], corner[3], corner[2] };
                    memcpy(corner, mirrored, sizeof corner);
                    now = mirror_of(s.quilt, now);
                }
                for (int q = 0; q < steps[k] % 4; q++) {
                    const int turned[4] = { corner[3], corner[0], corner[1], corner[2] };
                    memcpy(corner, turned, sizeof corner);
                }
                now = turn_of(s.quilt, now, steps[k] % 4);
            }
            struct muslin_node out = { .size = (uint32_t)sizeof out };
            ck_ok(muslin_quilt_node(s.quilt, now, &out, NULL));
            int expected[4] = { 0, 1, 2, 3 };
            if (out.mirrored) {
                const int mirrored[4] = { 1, 0, 3, 2 };
                memcpy(expected, mirrored, sizeof expected);
            }
            for (int q = 0; q < out.quarter_turns; q++) {
                const int turned[4] = { expected[3], expected[0], expected[1], expected[2] };
                memcpy(expected, turned, sizeof expected);
            }
            ck_assert_int_eq(memcmp(expected, corner, sizeof corner), 0);
            ck_assert_int_eq(out.kind == MUSLIN_NODE_PATCH, now == node);
        }
    muslin_id out = 0;
    /* Example: a block turned by 1 has its top on the right. */
    ck_assert_int_ne(turn_of(s.quilt, node, 1), node);
    /* Example: the other half of a heart. */
    ck_assert_int_eq(mirror_of(s.quilt, mirror_of(s.quilt, node)), node);
    ck_status(muslin_quilt_turn(s.quilt, node, 4, &out, NULL), MUSLIN_ERR_RANGE);
    ck_status(muslin_quilt_turn(s.quilt, node, -1, &out, NULL), MUSLIN_ERR_RANGE);
    ck_status(muslin_quilt_mirror(s.quilt, node, NULL, NULL), MUSLIN_ERR_NULL);
    end_sewing(&s);
}
END_TEST

START_TEST(joins_have_their_rules)
{
    struct sewn s;
    struct muslin_quilt_join_spec spec = MUSLIN_QUILT_JOIN_SPEC_INIT;
    struct muslin_problem problem = PROBLEM;
    muslin_id out = 0;
    begin_sewing(&s);
    muslin_id blue = patch_of(s.quilt, s.blue, s.two, s.two);
    muslin_id children[] = { blue, blue, s.two };
    const struct muslin_part_counts before = counts_of(s.quilt);
    ck_status(muslin_quilt_join(s.quilt, &spec, children, 3, &out, &problem), MUSLIN_ERR_FOREIGN);
    ck_assert_int_eq(problem.limit, 0);
    ck_assert_int_eq(problem.at, 2);
    ck_status(muslin_quilt_join(s.quilt, &spec, children, 0, &out, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_CHILDREN);
    ck_status(muslin_quilt_join(s.quilt, &spec, children, SIZE_MAX, &out, NULL), MUSLIN_ERR_RANGE);
    ck_status(muslin_quilt_join(s.quilt, &spec, NULL, 2, &out, NULL), MUSLIN_ERR_NULL);
    spec.axis = 3;
    ck_status(muslin_quilt_join(s.quilt, &spec, children, 2, &out, NULL), MUSLIN_ERR_CHOICE);
    spec.axis = MUSLIN_AXIS_DOWN;
    spec.piecing = 0;
    ck_status(muslin_quilt_join(s.quilt, &spec, children, 2, &out, NULL), MUSLIN_ERR_CHOICE);
    spec.piecing = MUSLIN_STRIP_PIECING_NEVER;
    spec.press = 5;
    ck_status(muslin_quilt_join(s.quilt, &spec, children, 2, &out, NULL), MUSLIN_ERR_CHOICE);
    spec.press = MUSLIN_SEAM_PRESS_OPEN;
    spec.pad = 1;
    ck_status(muslin_quilt_join(s.quilt, &spec, children, 2, &out, NULL), MUSLIN_ERR_STRUCT_TAIL);
    spec.pad = 0;
    spec.flags = 2;
    ck_status(muslin_quilt_join(s.quilt, &spec, children, 2, &out, NULL), MUSLIN_ERR_FLAGS);
    ck_same_parts(s.quilt, &before);
    spec.flags = MUSLIN_QUILT_JOIN_KEEPS_ORDER;
    ck_ok(muslin_quilt_join(s.quilt, &spec, children, 2, &out, NULL));
    end_sewing(&s);
}
END_TEST

START_TEST(a_tree_may_be_so_deep_and_no_deeper)
{
    struct sewn s;
    struct muslin_problem problem = PROBLEM;
    struct muslin_quilt_join_spec spec = MUSLIN_QUILT_JOIN_SPEC_INIT;
    begin_sewing(&s);
    muslin_id patch = patch_of(s.quilt, s.blue, fixed_of(s.quilt, 1), s.two);
    muslin_id node = patch;
    for (int depth = 2; depth <= MUSLIN_QUILT_DEPTH_MAX; depth++) {
        const muslin_id two[] = { node, patch };
        node = join_of(s.quilt, MUSLIN_AXIS_ACROSS, two, 2);
    }
    struct muslin_solution *solution = solved(s.quilt, node);
    ck_assert_int_eq(size_of(solution, patch).count, MUSLIN_QUILT_DEPTH_MAX);
    ck_assert_int_eq(size_of(solution, node).finished_width, MUSLIN_QUILT_DEPTH_MAX);
    muslin_solution_free(solution);
    const muslin_id two[] = { node, patch };
    const struct muslin_part_counts before = counts_of(s.quilt);
    muslin_id out = 0;
    ck_status(muslin_quilt_join(s.quilt, &spec, two, 2, &out, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_DEPTH);
    ck_assert_int_eq(problem.limit, MUSLIN_QUILT_DEPTH_MAX);
    ck_same_parts(s.quilt, &before);
    end_sewing(&s);
}
END_TEST

START_TEST(a_quilt_holds_no_more_than_its_spec_allows)
{
    struct failing_allocator memory;
    struct muslin_quilt_spec spec = MUSLIN_QUILT_SPEC_INIT;
    struct muslin_quilt *quilt = NULL;
    struct muslin_problem problem = PROBLEM;
    failing_start(&memory, 0);
    spec.most = 6; /* two measures of its own, and four parts more */
    ck_ok(muslin_quilt_create(&spec, &memory.allocator, &quilt, NULL));
    muslin_id blue = fabric_of(quilt, "blue");
    muslin_id two = measure_of(quilt, "strip", WHOLE_IN(2));
    muslin_id patch = patch_of(quilt, blue, two, two);
    muslin_id turned = turn_of(quilt, patch, 1);
    muslin_id out = 0;
    ck_assert_int_eq(turn_of(quilt, patch, 1), turned); /* what is there can be had again */
    ck_status(muslin_quilt_turn(quilt, patch, 2, &out, &problem), MUSLIN_ERR_WORK_LIMIT);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_MOST);
    ck_assert_int_eq(problem.value, 7);
    ck_assert_int_eq(problem.limit, 6);
    ck_assert_str_eq(problem.text, "The quilt would hold 7 parts, but the most parts of a quilt is 6.");
    struct muslin_quilt_fabric_spec fabric = MUSLIN_QUILT_FABRIC_SPEC_INIT;
    ck_status(muslin_quilt_fabric(quilt, &fabric, "red", 3, &out, NULL), MUSLIN_ERR_WORK_LIMIT);
    ck_status(muslin_quilt_measure(quilt, "x", 1, 1, &out, NULL), MUSLIN_ERR_WORK_LIMIT);
    /* children count too: sixteen numbers a part, and 100 children are more than 96 */
    muslin_id many[100];
    struct muslin_quilt_join_spec join = MUSLIN_QUILT_JOIN_SPEC_INIT;
    for (int i = 0; i < 100; i++)
        many[i] = patch;
    ck_status(muslin_quilt_join(quilt, &join, many, 100, &out, &problem), MUSLIN_ERR_WORK_LIMIT);
    ck_assert_int_ge(problem.value, 100 / 16); /* as many parts would hold the 100, and the few numbers of the others */
    ck_assert_int_le(problem.value, 10);
    muslin_quilt_free(quilt);
    ck_assert(failing_is_clean(&memory));
}
END_TEST

START_TEST(trims_have_their_rules)
{
    struct sewn s;
    struct muslin_quilt_trim_spec spec = MUSLIN_QUILT_TRIM_SPEC_INIT;
    struct muslin_problem problem = PROBLEM;
    muslin_id out = 0;
    begin_sewing(&s);
    muslin_id patch = patch_of(s.quilt, s.blue, s.two, s.two);
    muslin_id *members[] = { &spec.left, &spec.right, &spec.top, &spec.bottom };
    for (int64_t i = 0; i < 4; i++) {
        *members[i] = s.blue;
        ck_status(muslin_quilt_trim(s.quilt, patch, &spec, &out, &problem), MUSLIN_ERR_FOREIGN);
        ck_assert_int_eq(problem.limit, 0);
        ck_assert_int_eq(problem.argument, MUSLIN_ARG_MEASURE);
        ck_assert_int_eq(problem.at, i);
        *members[i] = 0;
    }
    ck_status(muslin_quilt_trim(s.quilt, s.blue, &spec, &out, &problem), MUSLIN_ERR_FOREIGN);
    ck_assert_int_eq(problem.limit, 0);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_NODE);
    ck_status(muslin_quilt_trim(s.quilt, patch, NULL, &out, NULL), MUSLIN_ERR_NULL);
    /* Example: an edge strip cut an inch too long. */
    spec.bottom = fixed_of(s.quilt, WHOLE_IN(1));
    ck_ok(muslin_quilt_trim(s.quilt, patch, &spec, &out, NULL));
    struct muslin_solution *solution = solved(s.quilt, out);
    ck_assert_int_eq(size_of(solution, out).finished_height, WHOLE_IN(1));
    ck_assert_int_eq(size_of(solution, patch).unfinished_height, IN(2, 1, 2));
    muslin_solution_free(solution);
    end_sewing(&s);
}
END_TEST

/* ---- grids ------------------------------------------------------------------------------------------------------ */

START_TEST(a_grid_is_rows_joined_down)
{
    struct sewn s;
    struct muslin_problem problem = PROBLEM;
    muslin_id out = 0;
    begin_sewing(&s);
    muslin_id b = patch_of(s.quilt, s.blue, s.two, s.two);
    muslin_id w = patch_of(s.quilt, s.white, s.two, s.two);
    const muslin_id six[] = { b, w, b, w, b, w };
    /* Example: a straight setting of unlike blocks. */
    ck_ok(muslin_quilt_grid(s.quilt, 3, 2, six, 6, &out, NULL));
    const muslin_id rows[] = { join_of(s.quilt, MUSLIN_AXIS_ACROSS, six, 3),
                               join_of(s.quilt, MUSLIN_AXIS_ACROSS, six + 3, 3) };
    ck_assert_int_eq(out, join_of(s.quilt, MUSLIN_AXIS_DOWN, rows, 2));
    ck_ok(muslin_quilt_grid(s.quilt, 1, 1, six, 1, &out, NULL));
    ck_assert_int_eq(out, b);
    ck_ok(muslin_quilt_grid(s.quilt, 1, 3, six, 3, &out, NULL));
    ck_assert_int_eq(out, join_of(s.quilt, MUSLIN_AXIS_DOWN, six, 3));
    const struct muslin_part_counts before = counts_of(s.quilt);
    ck_status(muslin_quilt_grid(s.quilt, 3, 2, six, 5, &out, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_CHILDREN);
    ck_assert_int_eq(problem.limit, 6);
    ck_status(muslin_quilt_grid(s.quilt, 0, 2, six, 6, &out, NULL), MUSLIN_ERR_RANGE);
    ck_status(muslin_quilt_grid(s.quilt, 3, MUSLIN_COUNT_MAX + 1, six, 6, &out, NULL), MUSLIN_ERR_RANGE);
    ck_status(muslin_quilt_grid(s.quilt, 3, 2, NULL, 6, &out, NULL), MUSLIN_ERR_NULL);
    const muslin_id bad[] = { w, w, b, s.two };
    ck_status(muslin_quilt_grid(s.quilt, 2, 2, bad, 4, &out, &problem), MUSLIN_ERR_FOREIGN);
    ck_assert_int_eq(problem.limit, 0);
    ck_assert_int_eq(problem.at, 3);
    ck_same_parts(s.quilt, &before); /* the first row, made before the bad one was seen, is gone again */
    end_sewing(&s);
}
END_TEST

START_TEST(a_repeat_turns_by_its_pattern)
{
    struct sewn s;
    struct muslin_problem problem = PROBLEM;
    muslin_id out = 0;
    begin_sewing(&s);
    muslin_id p = patch_of(s.quilt, s.blue, s.two, s.two);
    /* Example: the pattern 0 1 / 1 0 turns every other block, like a chessboard. */
    const int32_t turns[] = { 0, 1, 1, 0 };
    ck_ok(muslin_quilt_repeat(s.quilt, p, 3, 3, turns, 4, 2, 2, &out, NULL));
    muslin_id t = turn_of(s.quilt, p, 1);
    const muslin_id nine[] = { p, t, p, t, p, t, p, t, p };
    muslin_id grid = 0;
    ck_ok(muslin_quilt_grid(s.quilt, 3, 3, nine, 9, &grid, NULL));
    ck_assert_int_eq(out, grid);
    /* a pattern larger than what is made of it */
    ck_ok(muslin_quilt_repeat(s.quilt, p, 1, 1, turns, 4, 2, 2, &out, NULL));
    ck_assert_int_eq(out, p);
    const struct muslin_part_counts before = counts_of(s.quilt);
    const int32_t wrong[] = { 3, 2, 2, 4 };
    ck_status(muslin_quilt_repeat(s.quilt, p, 3, 3, wrong, 4, 2, 2, &out, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_QUARTER_TURNS);
    ck_assert_int_eq(problem.at, 3);
    ck_same_parts(s.quilt, &before);
    ck_status(muslin_quilt_repeat(s.quilt, p, 3, 3, turns, 3, 2, 2, &out, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_TURNING);
    ck_assert_int_eq(problem.at, 0);
    ck_status(muslin_quilt_repeat(s.quilt, p, 3, 3, turns, SIZE_MAX, 2, 2, &out, NULL), MUSLIN_ERR_RANGE);
    ck_status(muslin_quilt_repeat(s.quilt, p, 0, 3, turns, 4, 2, 2, &out, NULL), MUSLIN_ERR_RANGE);
    ck_status(muslin_quilt_repeat(s.quilt, p, 3, 1048577, turns, 4, 2, 2, &out, NULL), MUSLIN_ERR_RANGE);
    ck_status(muslin_quilt_repeat(s.quilt, p, 3, 3, turns, 4, 0, 2, &out, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.at, 1);
    ck_status(muslin_quilt_repeat(s.quilt, p, 3, 3, turns, 4, 2, 0, &out, NULL), MUSLIN_ERR_RANGE);
    ck_status(muslin_quilt_repeat(s.quilt, p, 3, 3, NULL, 4, 2, 2, &out, NULL), MUSLIN_ERR_NULL);
    ck_status(muslin_quilt_repeat(s.quilt, s.two, 3, 3, turns, 4, 2, 2, &out, NULL), MUSLIN_ERR_FOREIGN);
    end_sewing(&s);
}
END_TEST

/* ---- memory ----------------------------------------------------------------------------------------------------- */

/* Makes enough of everything that every array grows at some time. */
static muslin_status make_much(struct muslin_quilt *quilt, muslin_id *top)
{
    struct muslin_quilt_fabric_spec fabric_spec = MUSLIN_QUILT_FABRIC_SPEC_INIT;
    struct muslin_quilt_patch_spec patch_spec = MUSLIN_QUILT_PATCH_SPEC_INIT;
    struct muslin_quilt_sum_spec term = MUSLIN_QUILT_SUM_SPEC_INIT;
    const int32_t turns[] = { 0, 1, 2, 3 };
    muslin_id patches[4];
    muslin_id id = 0;
    muslin_status status = MUSLIN_OK;
    for (int i = 0; status == MUSLIN_OK && i < 20; i++)
        status = muslin_quilt_fabric(quilt, &fabric_spec, "a fabric", 8, &patch_spec.fabric, NULL);
    for (int i = 0; status == MUSLIN_OK && i < 4; i++) {
        status = muslin_quilt_measure(quilt, "a measure", 9, 100 + i, &id, NULL);
        term.measure = id;
        if (status == MUSLIN_OK)
            status = muslin_quilt_sum(quilt, &term, sizeof term, 1, &patch_spec.width, NULL);
        if (status == MUSLIN_OK)
            status = muslin_quilt_fixed(quilt, 100, &patch_spec.height, NULL);
        if (status == MUSLIN_OK)
            status = muslin_quilt_patch(quilt, &patch_spec, &patches[i], NULL);
    }
    if (status == MUSLIN_OK)
        status = muslin_quilt_grid(quilt, 2, 2, patches, 4, &id, NULL);
    if (status == MUSLIN_OK)
        status = muslin_quilt_extent(quilt, id, MUSLIN_AXIS_ACROSS, &patches[0], NULL);
    return status == MUSLIN_OK ? muslin_quilt_repeat(quilt, id, 40, 40, turns, 4, 2, 2, top, NULL) : status;
}

START_TEST(every_allocation_may_fail)
{
    struct failing_allocator memory;
    struct muslin_quilt_spec spec = MUSLIN_QUILT_SPEC_INIT;
    EVERY_ALLOCATION_FAILS_ONCE(memory) {
        struct muslin_quilt *quilt = NULL;
        muslin_id top = 0;
        muslin_status status = muslin_quilt_create(&spec, &memory.allocator, &quilt, NULL);
        if (status == MUSLIN_OK)
            status = make_much(quilt, &top);
        ck_status(status, memory.has_failed ? MUSLIN_ERR_NO_MEMORY : MUSLIN_OK);
        if (memory.has_failed && quilt != NULL) { /* nothing is broken: the same work goes through now */
            ck_ok(make_much(quilt, &top));
            struct muslin_solution *solution = solved(quilt, top);
            ck_assert_int_eq(size_of(solution, top).patches, 6400);
            muslin_solution_free(solution);
        }
        muslin_quilt_free(quilt);
        ck_assert(failing_is_clean(&memory));
    }
}
END_TEST

/* Every way to make a part, by number. */
enum { WAYS = 9 };

static muslin_status make_one(const struct sewn *s, muslin_id patch, int way, muslin_id *out,
                              struct muslin_problem *problem)
{
    struct muslin_quilt_fabric_spec fabric = MUSLIN_QUILT_FABRIC_SPEC_INIT;
    struct muslin_quilt_patch_spec patch_spec = MUSLIN_QUILT_PATCH_SPEC_INIT;
    struct muslin_quilt_trim_spec trim = MUSLIN_QUILT_TRIM_SPEC_INIT;
    struct muslin_quilt_join_spec join = MUSLIN_QUILT_JOIN_SPEC_INIT;
    struct muslin_quilt_sum_spec terms[] = { MUSLIN_QUILT_SUM_SPEC_INIT, MUSLIN_QUILT_SUM_SPEC_INIT };
    const muslin_id two[] = { patch, patch };
    terms[0].measure = terms[1].measure = s->two;
    patch_spec.fabric = s->white;
    patch_spec.width = patch_spec.height = s->two;
    switch (way) {
    case 0:
        return muslin_quilt_fabric(s->quilt, &fabric, "scarlet", 7, out, problem);
    case 1:
        return muslin_quilt_measure(s->quilt, "scarlet", 7, 7, out, problem);
    case 2:
        return muslin_quilt_fixed(s->quilt, 7000000, out, problem);
    case 3:
        return muslin_quilt_sum(s->quilt, terms, sizeof terms[0], 2, out, problem);
    case 4:
        return muslin_quilt_extent(s->quilt, patch, MUSLIN_AXIS_DOWN, out, problem);
    case 5:
        return muslin_quilt_patch(s->quilt, &patch_spec, out, problem);
    case 6:
        return muslin_quilt_join(s->quilt, &join, two, 2, out, problem);
    case 7:
        return muslin_quilt_turn(s->quilt, patch, 1, out, problem);
    default:
        return muslin_quilt_trim(s->quilt, patch, &trim, out, problem);
    }
}

/* Quilts filled so far that one array or another is full: whichever must grow cannot, and nothing is changed. */
START_TEST(a_full_array_that_cannot_grow_changes_nothing)
{
    for (int fill = 0; fill < 64; fill++)
        for (int way = 0; way < WAYS; way++) {
            struct sewn s;
            begin_sewing(&s);
            muslin_id patch = patch_of(s.quilt, s.blue, s.two, s.two);
            for (int i = 0; i < fill; i++)
                fixed_of(s.quilt, 1 + i);
            const struct muslin_part_counts before = counts_of(s.quilt);
            muslin_id out = 0;
            muslin_status status = MUSLIN_ERR_NO_MEMORY;
            for (size_t round = 1; status != MUSLIN_OK; round++) {
                fail_at(&s, round);
                struct muslin_problem problem = PROBLEM;
                status = make_one(&s, patch, way, &out, &problem);
                ck_assert(status == MUSLIN_OK || status == MUSLIN_ERR_NO_MEMORY);
                ck_assert_int_eq(status != MUSLIN_OK, s.memory.has_failed);
                if (status != MUSLIN_OK) {
                    ck_says_no_memory(&problem, 0);
                    ck_assert_int_eq(out, 0);
                    ck_same_parts(s.quilt, &before);
                }
            }
            fail_at(&s, 0);
            ck_assert_int_ne(out, 0);
            end_sewing(&s);
        }
}
END_TEST

/* One call that makes many nodes leaves none behind when it fails, and works when it is asked again. */
START_TEST(a_failure_half_way_leaves_the_tree_as_it_was)
{
    struct sewn s;
    const int32_t turns[] = { 0, 1, 2, 3, 3, 2, 1, 0, 1 };
    begin_sewing(&s);
    muslin_id patch = patch_of(s.quilt, s.blue, s.two, s.two);
    const struct muslin_part_counts before = counts_of(s.quilt);
    muslin_id out = 0;
    size_t round = 1;
    for (;; round++) {
        fail_at(&s, round);
        struct muslin_problem problem = PROBLEM;
        muslin_status status = muslin_quilt_repeat(s.quilt, patch, 60, 60, turns, 9, 3, 3, &out, &problem);
        if (status == MUSLIN_OK)
            break;
        ck_says_no_memory(&problem, 0);
        ck_assert_str_eq(problem.text, "The allocator returned no memory.");
        ck_assert_int_eq(out, 0);
        ck_same_parts(s.quilt, &before);
    }
    fail_at(&s, 0);
    ck_assert_uint_gt(round, 1);
    ck_assert_int_eq(counts_of(s.quilt).nodes, before.nodes + 3 + 3 + 1); /* turns, rows, the top */
    end_sewing(&s);
}
END_TEST

Suite *quilt_suite(void)
{
    Suite *suite = suite_create("quilt");
    TCase *made = tcase_create("made");
    tcase_add_test(made, a_fresh_quilt_has_its_seam_and_nothing_else);
    tcase_add_test(made, creation_has_its_ranges);
    tcase_add_test(made, creation_wants_a_whole_allocator);
    tcase_add_test(made, specs_begin_as_stated);
    tcase_add_test(made, ids_know_their_sort_and_number);
    tcase_add_test(made, ids_of_another_quilt_are_foreign);
    tcase_add_test(made, a_tag_of_its_own_tells_quilts_apart);
    tcase_add_test(made, names_are_kept_as_they_are);
    tcase_add_test(made, fabrics_and_measures_have_their_ranges);
    tcase_add_test(made, equal_measures_are_one);
    tcase_add_test(made, sums_have_their_rules);
    suite_add_tcase(suite, made);
    TCase *nodes = tcase_create("nodes");
    tcase_add_test(nodes, equal_nodes_are_one);
    tcase_add_test(nodes, many_measures_are_told_apart);
    tcase_add_test(nodes, nodes_can_be_read_back);
    tcase_add_test(nodes, turns_of_turns_are_one_turn);
    tcase_add_test(nodes, joins_have_their_rules);
    tcase_add_test(nodes, a_tree_may_be_so_deep_and_no_deeper);
    tcase_add_test(nodes, a_quilt_holds_no_more_than_its_spec_allows);
    tcase_add_test(nodes, trims_have_their_rules);
    tcase_add_test(nodes, a_grid_is_rows_joined_down);
    tcase_add_test(nodes, a_repeat_turns_by_its_pattern);
    suite_add_tcase(suite, nodes);
    TCase *memory = tcase_create("memory");
    tcase_add_test(memory, every_allocation_may_fail);
    tcase_add_test(memory, a_full_array_that_cannot_grow_changes_nothing);
    tcase_add_test(memory, a_failure_half_way_leaves_the_tree_as_it_was);
    suite_add_tcase(suite, memory);
    return suite;
}
