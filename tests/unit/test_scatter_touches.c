/* test_scatter_touches.c - patches that touch in solved tops, counted by hand.
 *
 * SPDX-License-Identifier: MIT */
#include "test_quilt.h"
#include "test_scatter.h"

enum { TOUCH_ROOM = 400 };

struct touching {
    size_t count;
    int64_t places;
    struct muslin_touch_spec rows[TOUCH_ROOM];
};

static muslin_status find(const struct muslin_solution *solution, muslin_id fabric, size_t capacity,
                          struct touching *found)
{
    struct muslin_allocator memory = usual_memory();
    memset(found, 0, sizeof *found);
    found->places = 77;
    found->count = 77;
    return muslin_scatter_touches(solution, fabric, &memory, found->rows, sizeof found->rows[0], capacity,
                                  &found->count, &found->places, NULL);
}

/* Each pair once, in order, and as muslin_scatter_prints() reads it. */
static void ck_rows(const struct touching *found)
{
    for (size_t i = 0; i < found->count; i++) {
        const struct muslin_touch_spec *row = &found->rows[i];
        ck_assert(row->size == sizeof *row && row->flags == 0 && row->weight == 1);
        ck_assert(0 <= row->first && row->first < row->second && row->second < found->places);
        ck_assert(i == 0 || row[-1].first < row->first ||
                  (row[-1].first == row->first && row[-1].second < row->second));
    }
    ck_assert(found->count == TOUCH_ROOM || found->rows[found->count].size == 0);
}

static void ck_touches(struct sewn *s, muslin_id top, muslin_id fabric, int64_t places, size_t touches)
{
    static struct touching found;
    struct muslin_solution *solution = solved(s->quilt, top);
    ck_ok(find(solution, fabric, TOUCH_ROOM, &found));
    ck_assert_int_eq(found.places, places);
    ck_assert_uint_eq(found.count, touches);
    ck_rows(&found);
    muslin_solution_free(solution);
}

START_TEST(a_grid_touches_across_and_down)
{
    /* Example: one fabric for all patches of a 3 x 3 grid: 9 places, 12 touches. */
    struct sewn s;
    begin_sewing(&s);
    muslin_id top = repeat_of(s.quilt, patch_of(s.quilt, s.blue, s.two, s.two), 3, 3);
    ck_touches(&s, top, s.blue, 9, 12);
    ck_touches(&s, top, s.white, 0, 0);
    end_sewing(&s);
}
END_TEST

static muslin_id nine_patch(struct sewn *s, muslin_id one, muslin_id other)
{
    const muslin_id a = patch_of(s->quilt, one, s->two, s->two);
    const muslin_id b = patch_of(s->quilt, other, s->two, s->two);
    const muslin_id outer[] = { a, b, a };
    const muslin_id inner[] = { b, a, b };
    muslin_id row = join_of(s->quilt, MUSLIN_AXIS_ACROSS, outer, 3);
    const muslin_id rows[] = { row, join_of(s->quilt, MUSLIN_AXIS_ACROSS, inner, 3), row };
    return join_of(s->quilt, MUSLIN_AXIS_DOWN, rows, 3);
}

START_TEST(corners_that_meet_do_not_touch)
{
    struct sewn s;
    begin_sewing(&s);
    muslin_id block = nine_patch(&s, s.blue, s.white);
    ck_touches(&s, block, s.blue, 5, 0);
    ck_touches(&s, block, s.white, 4, 0);
    /* Side by side two blue corners lie beside blue ones, and white between them beside white. */
    ck_touches(&s, repeat_of(s.quilt, block, 2, 1), s.blue, 10, 2);
    ck_touches(&s, repeat_of(s.quilt, block, 2, 1), s.white, 8, 1);
    end_sewing(&s);
}
END_TEST

/* One tall patch beside two; a wide one under all three. */
START_TEST(a_part_of_an_edge_is_enough)
{
    struct sewn s;
    begin_sewing(&s);
    muslin_id four = times_of(s.quilt, s.two, 2);
    muslin_id small = patch_of(s.quilt, s.blue, s.two, s.two);
    const muslin_id both[] = { small, small };
    const muslin_id beside[] = { patch_of(s.quilt, s.blue, s.two, four), join_of(s.quilt, MUSLIN_AXIS_DOWN, both, 2) };
    const muslin_id all[] = { join_of(s.quilt, MUSLIN_AXIS_ACROSS, beside, 2), patch_of(s.quilt, s.blue, four, s.two) };
    ck_touches(&s, join_of(s.quilt, MUSLIN_AXIS_ACROSS, beside, 2), s.blue, 3, 3);
    ck_touches(&s, join_of(s.quilt, MUSLIN_AXIS_DOWN, all, 2), s.blue, 4, 5);
    end_sewing(&s);
}
END_TEST

/* Its two long edges are nearer to each other than the rounding of a field, and it does not touch itself. */
START_TEST(a_patch_does_not_touch_itself)
{
    struct sewn s;
    begin_sewing(&s);
    const muslin_id rows[] = { patch_of(s.quilt, s.blue, s.two, fixed_of(s.quilt, 1)),
                               patch_of(s.quilt, s.blue, s.two, s.two) };
    ck_touches(&s, join_of(s.quilt, MUSLIN_AXIS_DOWN, rows, 2), s.blue, 2, 1);
    end_sewing(&s);
}
END_TEST

/* Two rows of two, one seam shifted against the other: the patches beside it touch across where that is by more than
 * 1/1000 in, which is 8.128 ticks. */
START_TEST(a_stretch_must_be_longer_than_a_corner)
{
    struct sewn s;
    begin_sewing(&s);
    for (int64_t shift = 7; shift <= 10; shift++) {
        const muslin_id wide = fixed_of(s.quilt, 1000 + shift);
        const muslin_id narrow = fixed_of(s.quilt, 1000);
        const muslin_id upper[] = { patch_of(s.quilt, s.blue, wide, s.two), patch_of(s.quilt, s.blue, narrow, s.two) };
        const muslin_id lower[] = { upper[1], upper[0] };
        const muslin_id rows[] = { join_of(s.quilt, MUSLIN_AXIS_ACROSS, upper, 2),
                                   join_of(s.quilt, MUSLIN_AXIS_ACROSS, lower, 2) };
        ck_touches(&s, join_of(s.quilt, MUSLIN_AXIS_DOWN, rows, 2), s.blue, 4, shift > 8 ? 5 : 4);
    }
    end_sewing(&s);
}
END_TEST

/* ---- against every pair ------------------------------------------------------------------------------------------ */

enum { RECTANGLES = 40, UNIT = 9 };

struct rectangle {
    int64_t left, right, top, bottom; /* in units */
};

struct pieced {
    struct sewn s;
    struct rectangle blue[RECTANGLES];
    int64_t count;
};

/* A rectangle cut in two, and each part again; what is not cut further is a patch of either fabric. */
static muslin_id cut_up(struct pieced *p, uint64_t *state, struct rectangle all, int32_t cuts)
{
    struct muslin_quilt *quilt = p->s.quilt;
    const int64_t width = all.right - all.left;
    const int64_t height = all.bottom - all.top;
    const int is_across = height == 1 || (width > 1 && draw_from(state, 0, 1) == 0);
    if (cuts == 0 || (width == 1 && height == 1) || draw_from(state, 0, 5) == 0) {
        const int is_blue = draw_from(state, 0, 2) > 0;
        if (is_blue)
            p->blue[p->count++] = all;
        return patch_of(quilt, is_blue ? p->s.blue : p->s.white, fixed_of(quilt, UNIT * width),
                        fixed_of(quilt, UNIT * height));
    }
    struct rectangle first = all;
    struct rectangle second = all;
    if (is_across)
        first.right = second.left = all.left + draw_from(state, 1, width - 1);
    else
        first.bottom = second.top = all.top + draw_from(state, 1, height - 1);
    muslin_id parts[2];
    parts[0] = cut_up(p, state, first, cuts - 1);
    parts[1] = cut_up(p, state, second, cuts - 1);
    return join_of(quilt, is_across ? MUSLIN_AXIS_ACROSS : MUSLIN_AXIS_DOWN, parts, 2);
}

/* Whether two stretches have more than an end in common. */
static int overlap(int64_t start, int64_t end, int64_t other_start, int64_t other_end)
{
    return start < other_end && other_start < end;
}

static int touch_each_other(const struct rectangle *a, const struct rectangle *b)
{
    if (a->left == b->right || a->right == b->left)
        return overlap(a->top, a->bottom, b->top, b->bottom);
    if (a->top == b->bottom || a->bottom == b->top)
        return overlap(a->left, a->right, b->left, b->right);
    return 0;
}

static void ck_pairs(const struct pieced *p, const struct touching *found)
{
    size_t next = 0;
    ck_assert_int_eq(found->places, p->count);
    for (int64_t one = 0; one < p->count; one++)
        for (int64_t other = one + 1; other < p->count; other++)
            if (touch_each_other(&p->blue[one], &p->blue[other])) {
                ck_assert_uint_lt(next, found->count);
                ck_assert_int_eq(found->rows[next].first, one);
                ck_assert_int_eq(found->rows[next].second, other);
                next++;
            }
    ck_assert_uint_eq(next, found->count);
}

START_TEST(rectangles_touch_as_any_two_of_them_lie)
{
    static struct touching found;
    static struct pieced p;
    uint64_t state = 41;
    for (int32_t i = 0; i < 300; i++) {
        const struct rectangle all = { 0, draw_from(&state, 1, 12), 0, draw_from(&state, 1, 12) };
        begin_sewing(&p.s);
        p.count = 0;
        struct muslin_solution *solution = solved(p.s.quilt, cut_up(&p, &state, all, 5));
        ck_ok(find(solution, p.s.blue, TOUCH_ROOM, &found));
        ck_rows(&found);
        ck_pairs(&p, &found);
        muslin_solution_free(solution);
        end_sewing(&p.s);
    }
}
END_TEST

static muslin_id unit_of(struct sewn *s, int32_t kind, int32_t hand, muslin_id width, muslin_id height)
{
    struct muslin_quilt_unit_spec spec = MUSLIN_QUILT_UNIT_SPEC_INIT;
    const muslin_id fabrics[] = { s->blue, s->blue };
    muslin_id unit = 0;
    spec.kind = kind;
    spec.method = MUSLIN_UNIT_METHOD_PIECES;
    spec.hand = hand;
    spec.width = width;
    spec.height = height;
    ck_ok(muslin_quilt_unit(s->quilt, &spec, fabrics, 2, &unit, NULL));
    return unit;
}

/* Four units: the two triangles of each, two pairs side by side, two one above the other. */
START_TEST(triangles_touch_along_their_long_sides)
{
    struct sewn s;
    begin_sewing(&s);
    muslin_id half = unit_of(&s, MUSLIN_UNIT_HALF_SQUARE, 1, s.two, 0);
    ck_touches(&s, half, s.blue, 2, 1);
    ck_touches(&s, turn_of(s.quilt, half, 1), s.blue, 2, 1);
    ck_touches(&s, repeat_of(s.quilt, half, 2, 2), s.blue, 8, 8);
    for (int32_t hand = 1; hand <= 2; hand++) {
        muslin_id long_half = unit_of(&s, MUSLIN_UNIT_HALF_RECTANGLE, hand, s.two, times_of(s.quilt, s.two, 2));
        ck_touches(&s, long_half, s.blue, 2, 1);
        ck_touches(&s, repeat_of(s.quilt, long_half, 2, 2), s.blue, 8, 8);
    }
    end_sewing(&s);
}
END_TEST

#define AT(piece, x, y) \
    { (uint32_t)sizeof(struct muslin_corner_spec), 0, (piece), 1, (x), (y), 0, 0, 0, 0, 0, 1, 0 }

/* One piece beside two whose seam ends on its long edge: all three touch. That edge is drawn 4 ticks off level, or off
 * 45 degrees, over a thousand, and so is each half of it by 2. */
static void ck_three_touch(struct sewn *s, const struct muslin_corner_spec *rows, size_t n)
{
    const muslin_id fabrics[] = { s->blue, s->blue, s->blue };
    muslin_id top = 0;
    ck_ok(muslin_quilt_shape(s->quilt, rows, sizeof rows[0], n, fabrics, 3, 0, 0, &top, NULL));
    for (int32_t turns = 0; turns < 4; turns++)
        ck_touches(s, turn_of(s->quilt, top, turns), s->blue, 3, 3);
}

START_TEST(an_edge_nearly_across_or_slanting_is_on_one_line_with_its_halves)
{
    const struct muslin_corner_spec level[] = {
        AT(-1, 0, 0), AT(-1, 1000, 0), AT(-1, 1000, 1000), AT(-1, 0, 1000),
        AT(0, 0, 0), AT(0, 1000, 0), AT(0, 1000, 504), AT(0, 0, 500),
        AT(1, 0, 500), AT(1, 500, 502), AT(1, 500, 1000), AT(1, 0, 1000),
        AT(2, 500, 502), AT(2, 1000, 504), AT(2, 1000, 1000), AT(2, 500, 1000),
    };
    const struct muslin_corner_spec slanting[] = {
        AT(-1, 0, 0), AT(-1, 1000, 0), AT(-1, 1000, 1004), AT(-1, 0, 1004),
        AT(0, 0, 0), AT(0, 1000, 0), AT(0, 1000, 1004),
        AT(1, 0, 0), AT(1, 500, 502), AT(1, 0, 1004),
        AT(2, 500, 502), AT(2, 1000, 1004), AT(2, 0, 1004),
    };
    struct sewn s;
    begin_sewing(&s);
    ck_three_touch(&s, level, COUNT_OF(level));
    ck_three_touch(&s, slanting, COUNT_OF(slanting));
    end_sewing(&s);
}
END_TEST

/* Seven ticks wide and fourteen high: the slanting seam is 15.7 ticks long, more than 1/1000 in. */
START_TEST(the_smallest_triangles_touch_along_their_long_side)
{
    struct sewn s;
    begin_sewing(&s);
    for (int32_t hand = 1; hand <= 2; hand++)
        ck_touches(&s, unit_of(&s, MUSLIN_UNIT_HALF_RECTANGLE, hand, fixed_of(s.quilt, 7), fixed_of(s.quilt, 14)),
                   s.blue, 2, 1);
    end_sewing(&s);
}
END_TEST

/* 3 x 3 nine-patches on point and 4 plain squares between them, of one fabric with 8 side and 4 corner triangles. A
 * nine-patch has 12 touches within; along a plain square's or a triangle's edge lie three of its patches. */
START_TEST(patches_on_point_touch_although_their_corners_are_rounded)
{
    struct sewn s;
    begin_sewing(&s);
    struct muslin_quilt_diagonal_spec spec = MUSLIN_QUILT_DIAGONAL_SPEC_INIT;
    muslin_id six = times_of(s.quilt, s.two, 3);
    muslin_id blocks[13];
    muslin_id top = 0;
    for (int32_t i = 0; i < 13; i++)
        blocks[i] = i < 9 ? nine_patch(&s, s.blue, s.blue) : patch_of(s.quilt, s.blue, six, six);
    spec.columns = 3;
    spec.rows = 3;
    spec.side_fabric = s.blue;
    spec.corner_fabric = s.blue;
    ck_ok(muslin_quilt_diagonal(s.quilt, &spec, blocks, 13, &top, NULL));
    ck_touches(&s, top, s.blue, 81 + 4 + 8 + 4, 9 * 12 + 4 * 4 * 3 + 8 * 2 * 3 + 4 * 3);
    end_sewing(&s);
}
END_TEST

/* What is found scatters as it is. */
START_TEST(places_of_a_top_are_scattered)
{
    static struct touching found;
    struct sewn s;
    begin_sewing(&s);
    struct muslin_solution *solution =
        solved(s.quilt, repeat_of(s.quilt, patch_of(s.quilt, s.blue, s.two, s.two), 3, 3));
    struct muslin_scatter_spec spec = MUSLIN_SCATTER_SPEC_INIT;
    struct muslin_scattered result = { .size = (uint32_t)sizeof result };
    struct muslin_allocator memory = usual_memory();
    const int64_t prints[] = { 5, 4 };
    int64_t out[9];
    ck_ok(find(solution, s.blue, TOUCH_ROOM, &found));
    spec.places = found.places;
    ck_ok(muslin_scatter_prints(&spec, prints, 2, found.rows, sizeof found.rows[0], found.count, NULL, &memory, NULL,
                                NULL, out, &result, NULL));
    ck_assert_int_eq(result.touching, 0);
    muslin_solution_free(solution);
    end_sewing(&s);
}
END_TEST

/* ---- statuses ---------------------------------------------------------------------------------------------------- */

START_TEST(touches_are_asked_for_and_filled)
{
    static struct touching found;
    struct sewn s;
    begin_sewing(&s);
    struct muslin_solution *solution =
        solved(s.quilt, repeat_of(s.quilt, patch_of(s.quilt, s.blue, s.two, s.two), 3, 3));
    ck_ok(find(solution, s.blue, 0, &found));
    ck_assert(found.count == 12 && found.places == 9 && found.rows[0].size == 0);
    ck_status(find(solution, s.blue, 11, &found), MUSLIN_ERR_BUFFER);
    ck_assert(found.count == 12 && found.places == 77 && found.rows[0].size == 0);
    muslin_solution_free(solution);
    end_sewing(&s);
}
END_TEST

static void ck_wrong(const struct muslin_solution *solution, muslin_id fabric, const struct muslin_allocator *memory,
                     int64_t *places, muslin_status status, int32_t argument)
{
    struct muslin_problem problem = PROBLEM;
    size_t count = 77;
    ck_status(muslin_scatter_touches(solution, fabric, memory, NULL, 0, 0, &count, places, &problem), status);
    ck_assert_int_eq(problem.argument, argument);
    ck_assert_uint_eq(count, 77);
}

START_TEST(what_is_missing_or_foreign_is_named)
{
    struct sewn s;
    struct muslin_allocator memory = usual_memory();
    int64_t places = 0;
    begin_sewing(&s);
    muslin_id patch = patch_of(s.quilt, s.blue, s.two, s.two);
    struct muslin_solution *solution = solved(s.quilt, patch);
    struct muslin_solution *vast = solved(s.quilt, repeat_of(s.quilt, patch, 4097, 4096));
    ck_wrong(NULL, s.blue, &memory, &places, MUSLIN_ERR_NULL, MUSLIN_ARG_QUILT);
    ck_wrong(solution, s.blue, NULL, &places, MUSLIN_ERR_NULL, MUSLIN_ARG_ALLOCATOR);
    ck_wrong(solution, s.blue, &memory, NULL, MUSLIN_ERR_NULL, MUSLIN_ARG_OUTPUT);
    ck_wrong(solution, patch, &memory, &places, MUSLIN_ERR_FOREIGN, MUSLIN_ARG_FABRIC);
    ck_wrong(solution, 0, &memory, &places, MUSLIN_ERR_FOREIGN, MUSLIN_ARG_FABRIC);
    ck_wrong(vast, s.blue, &memory, &places, MUSLIN_ERR_RANGE, MUSLIN_ARG_PLACES);
    struct muslin_problem problem = PROBLEM;
    ck_status(muslin_scatter_touches(solution, s.blue, &memory, NULL, 0, 0, NULL, &places, &problem),
              MUSLIN_ERR_NULL);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_OUTPUT);
    problem.size = 8;
    ck_status(muslin_scatter_touches(solution, s.blue, &memory, NULL, 0, 0, NULL, &places, &problem),
              MUSLIN_ERR_STRUCT_SIZE);
    muslin_solution_free(vast);
    muslin_solution_free(solution);
    end_sewing(&s);
}
END_TEST

START_TEST(every_allocation_of_touches_may_fail)
{
    struct sewn s;
    struct failing_allocator failing;
    begin_sewing(&s);
    struct muslin_solution *solution =
        solved(s.quilt, repeat_of(s.quilt, patch_of(s.quilt, s.blue, s.two, s.two), 3, 3));
    EVERY_ALLOCATION_FAILS_ONCE(failing) {
        size_t count = 77;
        int64_t places = 77;
        ck_status(muslin_scatter_touches(solution, s.blue, &failing.allocator, NULL, 0, 0, &count, &places, NULL),
                  failing.has_failed ? MUSLIN_ERR_NO_MEMORY : MUSLIN_OK);
        ck_assert_int_eq(places == 77, failing.has_failed);
        ck_assert_int_eq(count == 77, failing.has_failed);
        ck_assert(failing_is_clean(&failing));
    }
    muslin_solution_free(solution);
    end_sewing(&s);
}
END_TEST

void add_scatter_touches(Suite *suite)
{
    TCase *touches = tcase_create("touches");
    tcase_add_test(touches, a_grid_touches_across_and_down);
    tcase_add_test(touches, corners_that_meet_do_not_touch);
    tcase_add_test(touches, a_part_of_an_edge_is_enough);
    tcase_add_test(touches, a_patch_does_not_touch_itself);
    tcase_add_test(touches, a_stretch_must_be_longer_than_a_corner);
    tcase_add_test(touches, rectangles_touch_as_any_two_of_them_lie);
    tcase_add_test(touches, triangles_touch_along_their_long_sides);
    tcase_add_test(touches, an_edge_nearly_across_or_slanting_is_on_one_line_with_its_halves);
    tcase_add_test(touches, the_smallest_triangles_touch_along_their_long_side);
    tcase_add_test(touches, patches_on_point_touch_although_their_corners_are_rounded);
    tcase_add_test(touches, places_of_a_top_are_scattered);
    tcase_add_test(touches, touches_are_asked_for_and_filled);
    tcase_add_test(touches, what_is_missing_or_foreign_is_named);
    tcase_add_test(touches, every_allocation_of_touches_may_fail);
    suite_add_tcase(suite, touches);
}
