/* test_yardage_pieces.c - how rows of a cut list are asked of a cutting plan.
 *
 * SPDX-License-Identifier: MIT
 *
 * Cut sizes are finished sizes and two seams of 1/4 in; what lies along a strip at a slant is worked out from the
 * height of the strip as cut, K, with one seam's E = 1/2 in. */
#include "test_yardage.h"

static struct muslin_yardage_spec spec_of(muslin_len end_loss, int32_t long_pieces)
{
    struct muslin_yardage_spec spec = MUSLIN_YARDAGE_SPEC_INIT;
    spec.end_loss = end_loss;
    spec.long_pieces = long_pieces;
    return spec;
}

/* The pieces of a fabric of a top of this one node. */
struct asked {
    size_t count;
    struct muslin_blank_spec rows[20];
};

static struct asked pieces_of(struct sewn *s, muslin_id top, muslin_id fabric, const struct muslin_yardage_spec *spec)
{
    struct asked asked = { .count = 0 };
    struct muslin_solution *solution = solved(s->quilt, top);
    ck_ok(muslin_yardage_pieces(solution, fabric, spec, asked.rows, sizeof asked.rows[0], COUNT_OF(asked.rows),
                                &asked.count, NULL));
    muslin_solution_free(solution);
    return asked;
}

static void ck_row(const struct muslin_blank_spec *row, int32_t kind, muslin_len width, muslin_len length,
                   int64_t count)
{
    ck_assert_uint_eq(row->size, sizeof *row);
    ck_assert_int_eq(row->kind, kind);
    ck_assert_int_eq(row->cut_width, width);
    ck_assert_int_eq(row->cut_length, length);
    ck_assert_int_eq(row->count, count);
    ck_assert_int_eq(row->priority, 0);
}

START_TEST(rectangles_may_turn_and_long_ones_lie_lengthwise)
{
    /* Example: 36 squares of 2 1/2 in from the blue are one row, and a border of 60 in is lengthwise. */
    struct sewn s;
    begin_sewing(&s);
    const struct muslin_yardage_spec spec = MUSLIN_YARDAGE_SPEC_INIT;
    const muslin_id rows[] = { repeat_of(s.quilt, patch_of(s.quilt, s.blue, s.two, s.two), 9, 4),
                               yardage_patch(s.quilt, s.blue, IN(59, 1, 2), WHOLE_IN(4)) };
    const struct asked asked = pieces_of(&s, join_of(s.quilt, MUSLIN_AXIS_DOWN, rows, 2), s.blue, &spec);
    ck_assert_uint_eq(asked.count, 2);
    ck_row(&asked.rows[0], MUSLIN_BLANK_LENGTHWISE, IN(4, 1, 2), WHOLE_IN(60), 1);
    ck_row(&asked.rows[1], MUSLIN_BLANK_PIECE, IN(2, 1, 2), IN(2, 1, 2), 36);
    ck_assert_uint_eq(asked.rows[0].flags, 0);
    ck_assert_uint_eq(asked.rows[1].flags, MUSLIN_BLANK_MAY_TURN);
    ck_assert_int_eq(asked.rows[0].label, 0);
    ck_assert_int_eq(asked.rows[1].label, 1);
    ck_assert_uint_eq(pieces_of(&s, join_of(s.quilt, MUSLIN_AXIS_DOWN, rows, 2), s.white, &spec).count, 0);
    end_sewing(&s);
}
END_TEST

/* 39 1/2 in as cut across cloth of 40 in: as it is, with so much lost at the ends, at each cut, in two layers. */
START_TEST(long_is_what_a_strip_has_no_room_for)
{
    struct sewn s;
    begin_sewing(&s);
    const muslin_id patch = yardage_patch(s.quilt, s.blue, WHOLE_IN(39), IN(1, 1, 2));
    struct muslin_yardage_spec spec = spec_of(IN(0, 1, 2), MUSLIN_LONG_PIECES_LENGTHWISE);
    ck_row(&pieces_of(&s, patch, s.blue, &spec).rows[0], MUSLIN_BLANK_PIECE, IN(39, 1, 2), WHOLE_IN(2), 1);
    spec.end_loss++;
    ck_row(&pieces_of(&s, patch, s.blue, &spec).rows[0], MUSLIN_BLANK_LENGTHWISE, WHOLE_IN(2), IN(39, 1, 2), 1);
    spec = spec_of(0, MUSLIN_LONG_PIECES_LENGTHWISE);
    spec.resquare_loss = IN(1, 1, 2);
    spec.resquare_every = 3;
    ck_row(&pieces_of(&s, patch, s.blue, &spec).rows[0], MUSLIN_BLANK_PIECE, IN(39, 1, 2), WHOLE_IN(2), 1);
    spec.resquare_loss++;
    ck_row(&pieces_of(&s, patch, s.blue, &spec).rows[0], MUSLIN_BLANK_LENGTHWISE, WHOLE_IN(2), IN(39, 1, 2), 1);
    spec = spec_of(0, MUSLIN_LONG_PIECES_LENGTHWISE);
    spec.flags = MUSLIN_CUTPLAN_FOLDED;
    ck_row(&pieces_of(&s, patch, s.blue, &spec).rows[0], MUSLIN_BLANK_LENGTHWISE, WHOLE_IN(2), IN(39, 1, 2), 1);
    end_sewing(&s);
}
END_TEST

START_TEST(long_pieces_are_joined_where_that_is_asked)
{
    struct sewn s;
    begin_sewing(&s);
    struct muslin_yardage_spec spec = spec_of(0, MUSLIN_LONG_PIECES_JOINED);
    spec.join_loss = IN(0, 1, 2);
    spec.least_part = WHOLE_IN(12);
    const muslin_id border = yardage_patch(s.quilt, s.blue, IN(59, 1, 2), WHOLE_IN(4));
    struct asked asked = pieces_of(&s, border, s.blue, &spec);
    ck_row(&asked.rows[0], MUSLIN_BLANK_JOINED, WHOLE_IN(60), IN(4, 1, 2), 1);
    ck_assert_int_eq(asked.rows[0].join_loss, IN(0, 1, 2));
    ck_assert_int_eq(asked.rows[0].least_part, WHOLE_IN(12));
    /* squares that are cut again stay whole: half-squares of 48 in from 48 7/8 in */
    const muslin_id fabrics[] = { s.blue, s.white };
    const muslin_id unit =
        yardage_unit(s.quilt, MUSLIN_UNIT_HALF_SQUARE, MUSLIN_UNIT_METHOD_PIECES, WHOLE_IN(48), fabrics, 2);
    asked = pieces_of(&s, unit, s.blue, &spec);
    ck_row(&asked.rows[0], MUSLIN_BLANK_LENGTHWISE, IN(48, 7, 8), IN(48, 7, 8), 1);
    ck_assert_int_eq(asked.rows[0].join_loss, 0);
    ck_assert_int_eq(asked.rows[0].least_part, 0);
    end_sewing(&s);
}
END_TEST

/* Strips with mitred ends are patches in this: a frame of 3 in round a centre of 60 x 2 in; each is cut to its longest
 * edge, 66 in and what a mitre takes, or 8 in and that. */
START_TEST(mitred_strips_are_joined_too)
{
    struct sewn s;
    begin_sewing(&s);
    const struct muslin_yardage_spec spec = spec_of(0, MUSLIN_LONG_PIECES_JOINED);
    struct muslin_quilt_set_in_spec frame = MUSLIN_QUILT_SET_IN_SPEC_INIT;
    muslin_id top = 0;
    const muslin_id three = fixed_of(s.quilt, WHOLE_IN(3));
    frame.centre = yardage_patch(s.quilt, s.white, WHOLE_IN(60), WHOLE_IN(2));
    frame.left_width = frame.right_width = frame.top_width = frame.bottom_width = three;
    frame.left_fabric = frame.right_fabric = frame.top_fabric = frame.bottom_fabric = s.blue;
    ck_ok(muslin_quilt_set_in(s.quilt, &frame, &top, NULL));
    const struct asked asked = pieces_of(&s, top, s.blue, &spec);
    ck_assert_uint_eq(asked.count, 2);
    ck_assert_int_eq(asked.rows[0].kind, MUSLIN_BLANK_JOINED);
    ck_assert_int_gt(asked.rows[0].cut_width, WHOLE_IN(66));
    ck_assert_int_eq(asked.rows[0].cut_length, IN(3, 1, 2));
    ck_assert_int_eq(asked.rows[1].kind, MUSLIN_BLANK_PIECE);
    end_sewing(&s);
}
END_TEST

/* A frame of a one-way print: the strips above and below lie across, those at the sides along; each gets two inches on
 * its longer side, and no other cut does. */
START_TEST(mitred_strips_are_cut_longer_for_handling)
{
    struct sewn s;
    begin_sewing(&s);
    struct muslin_yardage_spec spec = spec_of(0, MUSLIN_LONG_PIECES_JOINED);
    struct muslin_quilt_set_in_spec frame = MUSLIN_QUILT_SET_IN_SPEC_INIT;
    muslin_id top = 0;
    const muslin_id print = printed_fabric(s.quilt, "trees", MUSLIN_PRINT_ONE_WAY);
    frame.centre = yardage_patch(s.quilt, s.white, WHOLE_IN(20), WHOLE_IN(20));
    frame.left_width = frame.right_width = frame.top_width = frame.bottom_width = fixed_of(s.quilt, WHOLE_IN(3));
    frame.left_fabric = frame.right_fabric = frame.top_fabric = frame.bottom_fabric = print;
    ck_ok(muslin_quilt_set_in(s.quilt, &frame, &top, NULL));
    const struct asked exact = pieces_of(&s, top, print, &spec);
    const struct asked plain = pieces_of(&s, top, s.white, &spec);
    spec.mitre_extra = WHOLE_IN(2);
    const struct asked longer = pieces_of(&s, top, print, &spec);
    ck_assert_uint_eq(exact.count, 2);
    ck_assert_uint_eq(longer.count, 2);
    for (size_t i = 0; i < 2; i++) {
        const int wide = exact.rows[i].cut_width > exact.rows[i].cut_length;
        ck_assert_int_eq(longer.rows[i].cut_width, exact.rows[i].cut_width + (wide ? WHOLE_IN(2) : 0));
        ck_assert_int_eq(longer.rows[i].cut_length, exact.rows[i].cut_length + (wide ? 0 : WHOLE_IN(2)));
    }
    ck_assert_int_ne(exact.rows[0].cut_width, exact.rows[1].cut_width);
    ck_row(&pieces_of(&s, top, s.white, &spec).rows[0], plain.rows[0].kind, IN(20, 1, 2), IN(20, 1, 2), 1);
    end_sewing(&s);
}
END_TEST

START_TEST(a_print_keeps_its_direction)
{
    struct sewn s;
    begin_sewing(&s);
    const muslin_id print = printed_fabric(s.quilt, "trees", MUSLIN_PRINT_ONE_WAY);
    const muslin_id fabrics[] = { print, s.white };
    const muslin_id across = yardage_patch(s.quilt, print, IN(59, 1, 2), WHOLE_IN(4));
    const muslin_id along = yardage_patch(s.quilt, print, WHOLE_IN(4), IN(59, 1, 2));
    const muslin_id small = yardage_patch(s.quilt, print, WHOLE_IN(4), WHOLE_IN(2));
    const muslin_id square =
        yardage_unit(s.quilt, MUSLIN_UNIT_HALF_SQUARE, MUSLIN_UNIT_METHOD_PIECES, WHOLE_IN(48), fabrics, 2);
    for (int32_t way = MUSLIN_LONG_PIECES_LENGTHWISE; way <= MUSLIN_LONG_PIECES_JOINED; way++) {
        const struct muslin_yardage_spec spec = spec_of(0, way);
        const struct asked joined = pieces_of(&s, across, print, &spec);
        ck_row(&joined.rows[0], MUSLIN_BLANK_JOINED, WHOLE_IN(60), IN(4, 1, 2), 1);
        ck_assert_int_eq(joined.rows[0].join_loss, IN(0, 1, 2));
        ck_row(&pieces_of(&s, along, print, &spec).rows[0], MUSLIN_BLANK_LENGTHWISE, IN(4, 1, 2), WHOLE_IN(60), 1);
        const struct asked plain = pieces_of(&s, small, print, &spec);
        ck_row(&plain.rows[0], MUSLIN_BLANK_PIECE, IN(4, 1, 2), IN(2, 1, 2), 1);
        ck_assert_uint_eq(plain.rows[0].flags, 0);
        ck_row(&pieces_of(&s, square, print, &spec).rows[0], MUSLIN_BLANK_LENGTHWISE, IN(48, 7, 8), IN(48, 7, 8), 1);
    }
    end_sewing(&s);
}
END_TEST

/* Sixteen rails of three strips, two fabrics, strip-pieced: segments of 6 1/2 in, 6 a set, 3 sets. */
START_TEST(strips_of_strip_sets_are_whole_strips)
{
    struct sewn s;
    begin_sewing(&s);
    const muslin_id blue = yardage_patch(s.quilt, s.blue, WHOLE_IN(6), WHOLE_IN(2));
    const muslin_id rail[] = { blue, yardage_patch(s.quilt, s.white, WHOLE_IN(6), WHOLE_IN(2)), blue };
    const muslin_id top =
        repeat_of(s.quilt, pieced_join(s.quilt, MUSLIN_AXIS_DOWN, MUSLIN_STRIP_PIECING_ALWAYS, 0, rail, 3), 4, 4);
    struct muslin_yardage_spec spec = spec_of(0, MUSLIN_LONG_PIECES_LENGTHWISE);
    ck_row(&pieces_of(&s, top, s.blue, &spec).rows[0], MUSLIN_BLANK_JOINED, WHOLE_IN(40), IN(2, 1, 2), 6);
    spec.end_loss = IN(0, 1, 2);
    spec.resquare_loss = IN(0, 1, 8);
    spec.resquare_every = 1;
    ck_row(&pieces_of(&s, top, s.blue, &spec).rows[0], MUSLIN_BLANK_JOINED, IN(39, 1, 2), IN(2, 1, 2), 6);
    ck_row(&pieces_of(&s, top, s.white, &spec).rows[0], MUSLIN_BLANK_JOINED, IN(39, 1, 2), IN(2, 1, 2), 3);
    spec.end_loss = IN(0, 1, 2) + 1;
    spec.flags = MUSLIN_CUTPLAN_FOLDED;
    ck_row(&pieces_of(&s, top, s.blue, &spec).rows[0], MUSLIN_BLANK_JOINED, IN(39, 1, 2) - 2, IN(2, 1, 2), 6);
    spec.end_loss = WHOLE_IN(41);
    ck_row(&pieces_of(&s, top, s.blue, &spec).rows[0], MUSLIN_BLANK_JOINED, 1, IN(2, 1, 2), 6);
    end_sewing(&s);
}
END_TEST

/* Pairs of triangles with blunt tips, K = 3 1/2 in: K + sqrt 2 E = 4.20711 in, 34195.37 ticks, and nothing more. */
START_TEST(half_squares_from_strips_are_pairs)
{
    struct sewn s;
    begin_sewing(&s);
    const struct muslin_yardage_spec spec = MUSLIN_YARDAGE_SPEC_INIT;
    const muslin_id fabrics[] = { s.blue, s.white };
    const muslin_id unit =
        yardage_unit(s.quilt, MUSLIN_UNIT_HALF_SQUARE, MUSLIN_UNIT_METHOD_STRIPS, WHOLE_IN(3), fabrics, 2);
    const struct asked asked = pieces_of(&s, repeat_of(s.quilt, unit, 4, 5), s.blue, &spec);
    ck_assert_uint_eq(asked.count, 1);
    ck_row(&asked.rows[0], MUSLIN_BLANK_SLOPED, 34196, IN(3, 1, 2), 10);
    ck_assert_int_eq(asked.rows[0].run_in, 0);
    ck_assert_uint_eq(asked.rows[0].flags, 0);
    end_sewing(&s);
}
END_TEST

/* Two rows of five triangles 6 in high: K = 6 1/2 in. Up and down in turn they take (K + E) / sqrt 3 = 4.04145 in each,
 * 32848.92 ticks, and the first reaches to (2 K + E) / sqrt 3, 63351.48 ticks: run-in K / sqrt 3. Half-triangles come
 * in pairs from rectangles; of ten triangles' rows 4 ends, of two hands. */
START_TEST(triangles_of_sixty_degrees_have_a_run_in)
{
    struct sewn s;
    begin_sewing(&s);
    const struct muslin_yardage_spec spec = MUSLIN_YARDAGE_SPEC_INIT;
    struct muslin_quilt_sixty_spec sixty = MUSLIN_QUILT_SIXTY_SPEC_INIT;
    struct muslin_quilt_sixty_piece_spec pieces[10];
    muslin_id top = 0;
    sixty.cells = 5;
    sixty.rows = 2;
    sixty.height = fixed_of(s.quilt, WHOLE_IN(6));
    sixty.end_fabric = s.white;
    for (size_t i = 0; i < COUNT_OF(pieces); i++) {
        pieces[i] = (struct muslin_quilt_sixty_piece_spec)MUSLIN_QUILT_SIXTY_PIECE_SPEC_INIT;
        pieces[i].fabric = s.blue;
    }
    ck_ok(muslin_quilt_sixty(s.quilt, &sixty, pieces, sizeof pieces[0], COUNT_OF(pieces), &top, NULL));
    struct asked asked = pieces_of(&s, top, s.blue, &spec);
    ck_assert_uint_eq(asked.count, 1);
    ck_row(&asked.rows[0], MUSLIN_BLANK_SLOPED, 32849, IN(6, 1, 2), 10);
    ck_assert_int_eq(asked.rows[0].run_in, 63352 - 32849);
    asked = pieces_of(&s, top, s.white, &spec);
    ck_assert_uint_eq(asked.count, 2);
    for (size_t i = 0; i < 2; i++) {
        ck_assert_int_eq(asked.rows[i].kind, MUSLIN_BLANK_PIECE);
        ck_assert_uint_eq(asked.rows[i].flags, MUSLIN_BLANK_MAY_TURN);
        ck_assert_int_eq(asked.rows[i].count, 1);
    }
    end_sewing(&s);
}
END_TEST

/* The diamonds of an eight-pointed star: their side, sqrt 2 K, is the pitch, and the run-in is K. */
START_TEST(diamonds_of_forty_five_degrees_run_in_by_their_height)
{
    struct sewn s;
    begin_sewing(&s);
    const struct muslin_yardage_spec spec = MUSLIN_YARDAGE_SPEC_INIT;
    const muslin_id fabrics[] = { s.blue, s.white };
    const muslin_id star =
        yardage_unit(s.quilt, MUSLIN_UNIT_EIGHT_POINTED_STAR, MUSLIN_UNIT_METHOD_PIECES, WHOLE_IN(12), fabrics, 2);
    const struct asked asked = pieces_of(&s, star, s.blue, &spec);
    ck_assert_uint_eq(asked.count, 1);
    const struct muslin_blank_spec *row = &asked.rows[0];
    ck_assert_int_eq(row->kind, MUSLIN_BLANK_SLOPED);
    ck_assert_int_eq(row->count, 8);
    ck_assert(row->run_in == row->cut_length || row->run_in == row->cut_length - 1); /* each rounded up by itself */
    ck_assert(row->cut_width * row->cut_width >= 2 * row->cut_length * row->cut_length);
    ck_assert((row->cut_width - 1) * (row->cut_width - 1) < 2 * row->cut_length * row->cut_length);
    end_sewing(&s);
}
END_TEST

/* ---- the call --------------------------------------------------------------------------------------------------- */

static struct muslin_solution *ruled_solution;
static muslin_id ruled_fabric;

static muslin_status pieces_with(const void *spec, void *out, struct muslin_problem *problem)
{
    struct muslin_blank_spec row;
    size_t count = 77;
    (void)out;
    muslin_status status = muslin_yardage_pieces(ruled_solution, ruled_fabric, spec, &row, sizeof row, 1, &count,
                                                 problem);
    ck_assert_uint_eq(count, status == MUSLIN_OK ? 1 : 77);
    return status;
}

START_TEST(members_of_the_spec_are_checked)
{
    struct sewn s;
    begin_sewing(&s);
    static const struct muslin_yardage_spec good = MUSLIN_YARDAGE_SPEC_INIT;
    static const struct refusal refusals[] = {
        OUTSIDE(muslin_yardage_spec, end_loss, 0, MUSLIN_SIZE_MAX, MUSLIN_ARG_END_LOSS),
        OUTSIDE(muslin_yardage_spec, resquare_loss, 0, MUSLIN_SIZE_MAX, MUSLIN_ARG_RESQUARE_LOSS),
        OUTSIDE(muslin_yardage_spec, resquare_every, 0, 0, MUSLIN_ARG_RESQUARE_EVERY),
        OUTSIDE(muslin_yardage_spec, straightening, 0, MUSLIN_SIZE_MAX, MUSLIN_ARG_STRAIGHTENING),
        OUTSIDE(muslin_yardage_spec, spare_pieces, 0, MUSLIN_COUNT_MAX, MUSLIN_ARG_SPARE_PIECES),
        OUTSIDE(muslin_yardage_spec, work_limit, 0, INT64_C(1) << 40, MUSLIN_ARG_WORK_LIMIT),
        OUTSIDE(muslin_yardage_spec, join_loss, 0, MUSLIN_SIZE_MAX, MUSLIN_ARG_JOIN_LOSS),
        OUTSIDE(muslin_yardage_spec, least_part, 0, MUSLIN_SIZE_MAX, MUSLIN_ARG_LEAST_PART),
        OUTSIDE(muslin_yardage_spec, mitre_extra, 0, MUSLIN_SIZE_MAX, MUSLIN_ARG_MITRE_EXTRA),
        OUTSIDE(muslin_yardage_spec, extra, 0, MUSLIN_SIZE_MAX, MUSLIN_ARG_EXTRA),
        OUTSIDE(muslin_yardage_spec, step, 1, MUSLIN_SIZE_MAX, MUSLIN_ARG_STEP),
        REFUSAL(muslin_yardage_spec, shrinkage, -1, MUSLIN_ERR_RANGE, MUSLIN_ARG_SHRINKAGE),
        REFUSAL(muslin_yardage_spec, shrinkage, 1000000, MUSLIN_ERR_RANGE, MUSLIN_ARG_SHRINKAGE),
        REFUSAL(muslin_yardage_spec, extra_share, -1, MUSLIN_ERR_RANGE, MUSLIN_ARG_EXTRA_SHARE),
        REFUSAL(muslin_yardage_spec, extra_share, 10000001, MUSLIN_ERR_RANGE, MUSLIN_ARG_EXTRA_SHARE),
        NOT_A_CHOICE(muslin_yardage_spec, long_pieces, MUSLIN_LONG_PIECES_JOINED, MUSLIN_ARG_LONG_PIECES),
        REFUSAL(muslin_yardage_spec, pad, 1, MUSLIN_ERR_STRUCT_TAIL, MUSLIN_ARG_SPEC),
    };
    const struct ruled ruled = { pieces_with, &good, (uint32_t)sizeof good, 8, 8, 0 };
    ruled_solution = solved(s.quilt, patch_of(s.quilt, s.blue, s.two, s.two));
    ruled_fabric = s.blue;
    ck_ok(pieces_with(&good, NULL, NULL));
    ck_spec_rules(&ruled);
    ck_refusals(&ruled, refusals, COUNT_OF(refusals));
    muslin_solution_free(ruled_solution);
    end_sewing(&s);
}
END_TEST

START_TEST(flags_are_those_of_a_bolt)
{
    struct sewn s;
    begin_sewing(&s);
    struct muslin_yardage_spec spec = MUSLIN_YARDAGE_SPEC_INIT;
    ruled_solution = solved(s.quilt, patch_of(s.quilt, s.blue, s.two, s.two));
    ruled_fabric = s.blue;
    for (uint32_t bit = 1; bit != 0; bit <<= 1) {
        const uint32_t known = MUSLIN_CUTPLAN_NO_PANELS | MUSLIN_CUTPLAN_ONE_HEIGHT | MUSLIN_CUTPLAN_OWN_STRIPS |
                               MUSLIN_CUTPLAN_STACKED | MUSLIN_CUTPLAN_FOLDED;
        spec.flags = bit;
        ck_status(pieces_with(&spec, NULL, NULL), (bit & known) != 0 ? MUSLIN_OK : MUSLIN_ERR_FLAGS);
    }
    muslin_solution_free(ruled_solution);
    end_sewing(&s);
}
END_TEST

START_TEST(pieces_are_asked_for_and_filled)
{
    struct sewn s;
    begin_sewing(&s);
    const struct muslin_yardage_spec spec = MUSLIN_YARDAGE_SPEC_INIT;
    struct muslin_problem problem = PROBLEM;
    struct muslin_blank_spec row;
    size_t count = 77;
    struct muslin_solution *solution = solved(s.quilt, patch_of(s.quilt, s.blue, s.two, s.two));
    ck_ok(muslin_yardage_pieces(solution, s.blue, &spec, NULL, 0, 0, &count, NULL));
    ck_assert_uint_eq(count, 1);
    ck_status(muslin_yardage_pieces(NULL, s.blue, &spec, &row, sizeof row, 1, &count, &problem), MUSLIN_ERR_NULL);
    ck_status(muslin_yardage_pieces(solution, s.blue, &spec, NULL, sizeof row, 1, &count, NULL), MUSLIN_ERR_NULL);
    ck_status(muslin_yardage_pieces(solution, s.blue, &spec, &row, sizeof row, 1, NULL, NULL), MUSLIN_ERR_NULL);
    ck_status(muslin_yardage_pieces(solution, s.blue, &spec, &row, sizeof row - 1, 1, &count, NULL),
              MUSLIN_ERR_STRUCT_SIZE);
    ck_status(muslin_yardage_pieces(solution, s.two, &spec, &row, sizeof row, 1, &count, &problem),
              MUSLIN_ERR_FOREIGN);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_FABRIC);
    ck_assert_int_eq(problem.value, s.two);
    muslin_solution_free(solution);
    end_sewing(&s);
}
END_TEST

TCase *yardage_pieces_case(void);
TCase *yardage_pieces_case(void)
{
    TCase *pieces = tcase_create("pieces");
    tcase_add_test(pieces, rectangles_may_turn_and_long_ones_lie_lengthwise);
    tcase_add_test(pieces, long_is_what_a_strip_has_no_room_for);
    tcase_add_test(pieces, long_pieces_are_joined_where_that_is_asked);
    tcase_add_test(pieces, mitred_strips_are_joined_too);
    tcase_add_test(pieces, mitred_strips_are_cut_longer_for_handling);
    tcase_add_test(pieces, a_print_keeps_its_direction);
    tcase_add_test(pieces, strips_of_strip_sets_are_whole_strips);
    tcase_add_test(pieces, half_squares_from_strips_are_pairs);
    tcase_add_test(pieces, triangles_of_sixty_degrees_have_a_run_in);
    tcase_add_test(pieces, diamonds_of_forty_five_degrees_run_in_by_their_height);
    tcase_add_test(pieces, members_of_the_spec_are_checked);
    tcase_add_test(pieces, flags_are_those_of_a_bolt);
    tcase_add_test(pieces, pieces_are_asked_for_and_filled);
    return pieces;
}
