/* test_pressing_pieces.c - the seams of units and of the caller's own shapes: where they run and how long they are.
 *
 * SPDX-License-Identifier: MIT */
#include "test_quilt_pieced.h"

#include "refusals.h"

Suite *pressing_pieces_suite(void);

struct seam_wanted {
    muslin_len from_x, from_y, to_x, to_y;
};

static void ck_seams(struct sewn *s, muslin_id node, const struct seam_wanted *wanted, size_t n)
{
    struct muslin_solution *solution = solved(s->quilt, node);
    struct muslin_pressing_spec spec = MUSLIN_PRESSING_SPEC_INIT;
    struct muslin_pressing *plan = NULL;
    struct muslin_pressing_seam rows[32];
    size_t count = 0;
    ck_ok(muslin_pressing_create(solution, &spec, NULL, NULL, NULL, &plan, NULL));
    ck_ok(muslin_pressing_seams(plan, rows, sizeof rows[0], COUNT_OF(rows), &count, NULL));
    ck_assert_uint_eq(count, n);
    for (size_t i = 0; i < n; i++) {
        ck_assert_int_eq(rows[i].node, node);
        ck_assert_int_eq(rows[i].seam, (int64_t)i);
        ck_assert_msg(rows[i].from_x == wanted[i].from_x && rows[i].from_y == wanted[i].from_y &&
                          rows[i].to_x == wanted[i].to_x && rows[i].to_y == wanted[i].to_y,
                      "seam %zu: %lld, %lld to %lld, %lld", i, (long long)rows[i].from_x, (long long)rows[i].from_y,
                      (long long)rows[i].to_x, (long long)rows[i].to_y);
    }
    muslin_pressing_free(plan);
    muslin_solution_free(solution);
}
#define CK_SEAMS(node, ...)                                          \
    do {                                                             \
        const struct seam_wanted wanted_[] = { __VA_ARGS__ };        \
        ck_seams(&s, node, wanted_, COUNT_OF(wanted_));              \
    } while (0)

START_TEST(seams_of_units_run_upwards_from_corner_to_corner)
{
    struct sewn s;
    begin_sewing(&s);
    CK_SEAMS(unit_case_of(&s, &unit_cases[0], 3000, 0, 0), { 0, 0, 3000, 3000 });
    /* two halves of a quarter-square, each with a short seam; a split quarter's two small pieces go to the large one */
    CK_SEAMS(unit_case_of(&s, &unit_cases[2], 3000, 0, 0), { 3000, 0, 0, 3000 }, { 1500, 1500, 3000, 3000 },
             { 0, 0, 1500, 1500 });
    CK_SEAMS(unit_case_of(&s, &unit_cases[3], 3000, 0, 0), { 0, 0, 3000, 3000 }, { 1500, 1500, 0, 3000 });
    CK_SEAMS(unit_case_of(&s, &unit_cases[4], 3000, 0, 0), { 3000, 0, 0, 3000 }, { 1500, 1500, 3000, 3000 });
    CK_SEAMS(unit_case_of(&s, &unit_cases[5], 3000, 0, 0), { 3000, 0, 1500, 1500 }, { 0, 0, 1500, 1500 });
    CK_SEAMS(unit_case_of(&s, &unit_cases[7], 3000, 2000, 700), { 2300, 0, 3000, 700 }, { 3000, 1300, 2300, 2000 },
             { 700, 0, 0, 700 }, { 0, 1300, 700, 2000 });
    CK_SEAMS(unit_case_of(&s, &unit_cases[9], 4000, 3000, 0), { 4000, 0, 0, 3000 });
    end_sewing(&s);
}
END_TEST

START_TEST(seams_of_shapes_keep_to_their_size)
{
    struct sewn s;
    begin_sewing(&s);
    const struct muslin_corner_spec slant[] = SLANT_CORNER;
    CK_SEAMS(shape_of(&s, slant, COUNT_OF(slant), 2, fixed_of(s.quilt, 30001), fixed_of(s.quilt, 40000)),
             { 30001, 20000, 15001, 40000 });
    const struct muslin_corner_spec bricks[] = {
        CORNER(OUTLINE, 0, 0), CORNER(OUTLINE, 900, 0), CORNER(OUTLINE, 900, 600), CORNER(OUTLINE, 0, 600),
        CORNER(0, 0, 0), CORNER(0, 900, 0), CORNER(0, 900, 300), CORNER(0, 700, 300), CORNER(0, 0, 300),
        CORNER(1, 0, 300), CORNER(1, 400, 300), CORNER(1, 400, 600), CORNER(1, 0, 600),
        CORNER(2, 600, 300), CORNER(2, 900, 300), CORNER(2, 900, 600), CORNER(2, 600, 600), CORNER(2, 400, 600),
        CORNER(2, 400, 300)
    };
    CK_SEAMS(shape_of(&s, bricks, COUNT_OF(bricks), 3, 0, 0), { 0, 300, 400, 300 }, { 400, 300, 400, 600 },
             { 400, 300, 900, 300 });
    /* how an own shape is sewn is not known: each seam by itself, also where they run on through the middle */
    const struct muslin_corner_spec four[] = {
        CORNER(OUTLINE, 0, 0), CORNER(OUTLINE, 600, 0), CORNER(OUTLINE, 600, 600), CORNER(OUTLINE, 0, 600),
        CORNER(0, 0, 0), CORNER(0, 600, 0), CORNER(0, 300, 300), CORNER(1, 600, 0), CORNER(1, 600, 600),
        CORNER(1, 300, 300), CORNER(2, 600, 600), CORNER(2, 0, 600), CORNER(2, 300, 300), CORNER(3, 0, 600),
        CORNER(3, 0, 0), CORNER(3, 300, 300)
    };
    CK_SEAMS(shape_of(&s, four, COUNT_OF(four), 4, 0, 0), { 600, 0, 300, 300 }, { 300, 300, 600, 600 },
             { 0, 0, 300, 300 }, { 300, 300, 0, 600 });
    end_sewing(&s);
}
END_TEST

/* By hand, finished, in units 60000 wide: sqrt 2 x 60000 = 84852.8 and half of it; A = (1 - 1 / sqrt 2) 60000 =
 * 17573.6; between corners on ticks as drawn, 12426 sqrt 2 = 17573.02, sqrt(30000^2 + 12426^2) = 32471.6,
 * sqrt(24852^2 + 60000^2) = 64943.2, 17574 sqrt 2 = 24853.4. Halves are joined by one seam, so a quarter-square has two
 * short seams and a long one, a split quarter one of each; of a star's eight points six seams run to the middle and one
 * through it, and eight pieces are set in by two seams each; so a kaleidoscope, with four corners. Quarter-squares are
 * made two at one go, and both are sewn. */
static const struct {
    int32_t kind;
    size_t fabrics;
    int64_t alike;
    int64_t seams;
    muslin_len longest;
    muslin_len finished; /* all seams of one */
} through[] = {
    { MUSLIN_UNIT_QUARTER_SQUARE, 2, 2, 3, 84853, 84853 + 2 * 42426 },
    { MUSLIN_UNIT_SPLIT_QUARTER, 3, 4, 2, 84853, 84853 + 42426 },
    { MUSLIN_UNIT_FLYING_GEESE, 2, 4, 2, 42426, 2 * 42426 },
    { MUSLIN_UNIT_SQUARE_IN_SQUARE, 2, 1, 4, 42426, 4 * 42426 },
    { MUSLIN_UNIT_OCTAGON, 2, 1, 4, 24853, 4 * 24853 },
    { MUSLIN_UNIT_EIGHT_POINTED_STAR, 2, 1, 23, 35148, 35148 + 2 * 17574 + 4 * 17573 + 8 * 17574 + 8 * 17573 },
    { MUSLIN_UNIT_KALEIDOSCOPE, 3, 1, 11, 64943, 64943 + 6 * 32472 + 4 * 24853 },
};

START_TEST(halves_of_a_unit_are_joined_by_one_seam_through_its_middle)
{
    struct sewn s;
    begin_sewing(&s);
    for (size_t i = 0; i < COUNT_OF(through); i++) {
        const struct unit_case unit = { through[i].kind, MUSLIN_UNIT_METHOD_PIECES, 1, through[i].fabrics, 0, 0, 0 };
        struct muslin_solution *solution = solved(s.quilt, unit_case_of(&s, &unit, 60000, 0, 0));
        struct muslin_sewing_step row;
        size_t count = 0;
        ck_ok(muslin_sewing_steps(solution, &row, sizeof row, 1, &count, NULL));
        ck_assert_msg(row.seams == through[i].seams, "kind %d: %lld seams", through[i].kind, (long long)row.seams);
        ck_assert_int_eq(row.alike, through[i].alike);
        ck_assert_int_eq(row.seam_longest, through[i].longest + 4064);
        ck_assert_msg(row.sewn == row.alike * (through[i].finished + row.seams * 4064), "kind %d: %lld",
                      through[i].kind, (long long)row.sewn);
        struct muslin_sewing_total totals = { .size = (uint32_t)sizeof totals };
        ck_ok(muslin_sewing_totals(solution, 0, 0, &totals, NULL));
        ck_assert_int_eq(totals.seams, row.alike * row.seams);
        ck_assert_int_eq(totals.sewn, row.sewn);
        muslin_solution_free(solution);
    }
    end_sewing(&s);
}
END_TEST

/* The seam of the header's words: upright in a star, from the right point below to the left one above in a
 * kaleidoscope; neither half is of one fabric, so none is preferred. */
START_TEST(the_seam_through_the_middle_is_the_one_that_is_told)
{
    struct sewn s;
    begin_sewing(&s);
    const struct seam_wanted lines[] = { { 60000, 0, 0, 60000 }, { 0, 0, 60000, 60000 }, { 30000, 12426, 30000, 47574 },
                                         { 42426, 0, 17574, 60000 } };
    const int32_t kinds[] = { MUSLIN_UNIT_QUARTER_SQUARE, MUSLIN_UNIT_SPLIT_QUARTER, MUSLIN_UNIT_EIGHT_POINTED_STAR,
                              MUSLIN_UNIT_KALEIDOSCOPE };
    for (size_t i = 0; i < COUNT_OF(kinds); i++) {
        const struct unit_case unit = { kinds[i], MUSLIN_UNIT_METHOD_PIECES, 1, i % 2 == 0 ? 2 : 3, 0, 0, 0 };
        struct muslin_solution *solution = solved(s.quilt, unit_case_of(&s, &unit, 60000, 0, 0));
        struct muslin_pressing_spec spec = MUSLIN_PRESSING_SPEC_INIT;
        struct muslin_pressing *plan = NULL;
        struct muslin_pressing_seam rows[32];
        size_t count = 0;
        int found = 0;
        ck_ok(muslin_pressing_create(solution, &spec, NULL, NULL, NULL, &plan, NULL));
        ck_ok(muslin_pressing_seams(plan, rows, sizeof rows[0], COUNT_OF(rows), &count, NULL));
        for (size_t k = 0; k < count; k++)
            if (rows[k].from_x == lines[i].from_x && rows[k].from_y == lines[i].from_y) {
                const int is_through = rows[k].to_x == lines[i].to_x && rows[k].to_y == lines[i].to_y;
                found += is_through;
                if (is_through) /* a split quarter's goes to its large piece, the first region */
                    ck_assert_int_eq(rows[k].preferred, kinds[i] == MUSLIN_UNIT_SPLIT_QUARTER);
            }
        ck_assert_int_eq(found, 1);
        muslin_pressing_free(plan);
        muslin_solution_free(solution);
    }
    end_sewing(&s);
}
END_TEST

/* Long side plus 1/4 in at each end: sqrt 2 x 3000 = 4242.64; 4000 and 3000 make 5000. Both recipes make two at one go,
 * and both are sewn. */
START_TEST(seams_are_as_long_as_finished_and_an_allowance_at_each_end)
{
    struct sewn s;
    begin_sewing(&s);
    const struct unit_case *cases[] = { &unit_cases[0], &unit_cases[8] };
    const muslin_len sewn[] = { 2 * (4243 + 4064), 2 * (5000 + 4064) };
    for (size_t i = 0; i < 2; i++) {
        muslin_id node = unit_case_of(&s, cases[i], i == 0 ? 3000 : 4000, 3000, 0);
        struct muslin_solution *solution = solved(s.quilt, node);
        struct muslin_sewing_total totals = { .size = (uint32_t)sizeof totals };
        ck_ok(muslin_sewing_totals(solution, 0, 0, &totals, NULL));
        ck_assert_int_eq(totals.sewn, sewn[i]);
        muslin_solution_free(solution);
    }
    end_sewing(&s);
}
END_TEST

/* A half-square and its mirror side by side, pressed as their recipe says: their long seams come from both sides to the
 * upper end of the edge between them, and are pressed the same way there. It is the first node of all that has them. */
START_TEST(a_lump_is_told_with_the_seams_that_meet_there)
{
    struct sewn s;
    struct muslin_pressing_spec spec = MUSLIN_PRESSING_SPEC_INIT;
    struct muslin_pressing *plan = NULL;
    struct muslin_pressing_exception row = { 0 };
    size_t count = 0;
    begin_sewing(&s);
    const muslin_id half = unit_case_of(&s, &unit_cases[0], 3000, 0, 0);
    const muslin_id both[] = { half, mirror_of(s.quilt, half) };
    const muslin_id top = join_of(s.quilt, MUSLIN_AXIS_ACROSS, both, 2);
    struct muslin_solution *solution = solved(s.quilt, top);
    ck_assert_int_eq(muslin_id_number(half), 1);
    spec.units = 1;
    ck_ok(muslin_pressing_create(solution, &spec, NULL, NULL, NULL, &plan, NULL));
    ck_ok(muslin_pressing_exceptions(plan, &row, sizeof row, 1, &count, NULL));
    ck_assert_uint_eq(count, 1);
    ck_assert(row.node == top && row.seam == 0 && row.x == 3000 && row.y == 3000 && row.count == 1);
    ck_assert(row.first_node == half && row.first_seam == 0);
    ck_assert(row.second_node == half && row.second_seam == 0);
    muslin_pressing_free(plan);
    muslin_solution_free(solution);
    end_sewing(&s);
}
END_TEST

enum { STRIP = 4000 };

/* Four strips beside or above each other, of which one of these numbers comes first, and so on. */
static muslin_id strips_in_order(struct sewn *s, const int *order, int lie)
{
    struct muslin_corner_spec rows[20] = { CORNER(OUTLINE, 0, 0), CORNER(OUTLINE, 4 * STRIP, 0),
                                           CORNER(OUTLINE, 4 * STRIP, 4 * STRIP), CORNER(OUTLINE, 0, 4 * STRIP) };
    for (int piece = 0; piece < 4; piece++)
        for (int i = 0; i < 4; i++) {
            const struct muslin_corner_spec corner = CORNER(0, 0, 0);
            const muslin_len along = (order[piece] + (lie ? i / 2 : (i + 1) / 2 % 2)) * STRIP;
            const muslin_len across = (lie ? (i + 1) / 2 % 2 : i / 2) * 4 * STRIP;
            rows[4 + 4 * piece + i] = corner;
            rows[4 + 4 * piece + i].piece = piece;
            rows[4 + 4 * piece + i].x = lie ? across : along;
            rows[4 + 4 * piece + i].y = lie ? along : across;
        }
    return shape_of(s, rows, 20, 4, 0, 0);
}

/* In whatever order the strips of a shape come, their seams meet those of a row on either side of it. */
START_TEST(seams_of_shapes_meet_in_any_order)
{
    struct sewn s;
    begin_sewing(&s);
    const muslin_id strip = fixed_of(s.quilt, STRIP);
    const muslin_id square = patch_of(s.quilt, s.blue, strip, strip);
    const muslin_id squares[] = { square, square, square, square };
    for (int number = 0; number < 256; number++) {
        const int order[] = { number & 3, number >> 2 & 3, number >> 4 & 3, number >> 6 };
        int seen_strips = 0;
        for (int i = 0; i < 4; i++)
            seen_strips |= 1 << order[i];
        if (seen_strips != 15)
            continue;
        for (int lie = 0; lie < 2; lie++) {
            const int32_t axis = lie ? MUSLIN_AXIS_DOWN : MUSLIN_AXIS_ACROSS;
            const muslin_id row = join_of(s.quilt, axis, squares, 4);
            const muslin_id three[] = { row, strips_in_order(&s, order, lie), row };
            struct muslin_solution *solution =
                solved(s.quilt, join_of(s.quilt, lie ? MUSLIN_AXIS_ACROSS : MUSLIN_AXIS_DOWN, three, 3));
            struct muslin_pressing_spec spec = MUSLIN_PRESSING_SPEC_INIT;
            struct muslin_pressing_total totals = { .size = (uint32_t)sizeof totals };
            struct muslin_pressing *plan = NULL;
            ck_ok(muslin_pressing_create(solution, &spec, NULL, NULL, NULL, &plan, NULL));
            ck_ok(muslin_pressing_totals(plan, &totals, NULL));
            ck_assert_int_eq(totals.meetings, 3 + 3);
            ck_assert_int_eq(totals.exceptions, 0);
            muslin_pressing_free(plan);
            muslin_solution_free(solution);
        }
    }
    end_sewing(&s);
}
END_TEST

Suite *pressing_pieces_suite(void)
{
    Suite *suite = suite_create("pressing_pieces");
    TCase *tests = tcase_create("seams of units and own shapes");
    tcase_add_test(tests, seams_of_units_run_upwards_from_corner_to_corner);
    tcase_add_test(tests, seams_of_shapes_keep_to_their_size);
    tcase_add_test(tests, halves_of_a_unit_are_joined_by_one_seam_through_its_middle);
    tcase_add_test(tests, the_seam_through_the_middle_is_the_one_that_is_told);
    tcase_add_test(tests, seams_of_shapes_meet_in_any_order);
    tcase_add_test(tests, a_lump_is_told_with_the_seams_that_meet_there);
    tcase_add_test(tests, seams_are_as_long_as_finished_and_an_allowance_at_each_end);
    suite_add_tcase(suite, tests);
    return suite;
}
