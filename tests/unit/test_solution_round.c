/* test_solution_round.c - what grows round a centre, solved: by hand, and against the modules that plan it.
 *
 * SPDX-License-Identifier: MIT */
#include "test_quilt.h"

/* Patches of one fabric, by sizes in ticks. */
static muslin_id piece_of(struct sewn *s, muslin_len width, muslin_len height)
{
    return patch_of(s->quilt, s->blue, fixed_of(s->quilt, width), fixed_of(s->quilt, height));
}

/* The same with allowances of its own: left, right, top, bottom. */
static muslin_id edged_piece(struct sewn *s, muslin_len width, muslin_len height, const muslin_len *edges)
{
    struct muslin_quilt_patch_spec spec = MUSLIN_QUILT_PATCH_SPEC_INIT;
    muslin_id *members[] = { &spec.left, &spec.right, &spec.top, &spec.bottom };
    muslin_id id = 0;
    spec.fabric = s->blue;
    spec.width = fixed_of(s->quilt, width);
    spec.height = fixed_of(s->quilt, height);
    for (int i = 0; i < 4; i++)
        *members[i] = fixed_of(s->quilt, edges[i]);
    ck_ok(muslin_quilt_patch(s->quilt, &spec, &id, NULL));
    return id;
}

static void ck_edges(const struct muslin_node_size *size, muslin_len left, muslin_len right, muslin_len top,
                     muslin_len bottom)
{
    ck_assert_int_eq(size->left, left);
    ck_assert_int_eq(size->right, right);
    ck_assert_int_eq(size->top, top);
    ck_assert_int_eq(size->bottom, bottom);
}

static void ck_finished(const struct muslin_node_size *size, muslin_len width, muslin_len height)
{
    ck_assert_int_eq(size->finished_width, width);
    ck_assert_int_eq(size->finished_height, height);
}

/* Strips of these widths in the order left, right, top, bottom; 0: none. */
static muslin_id set_in_of(struct sewn *s, muslin_id centre, const muslin_len *widths)
{
    struct muslin_quilt_set_in_spec spec = MUSLIN_QUILT_SET_IN_SPEC_INIT;
    muslin_id *measures[] = { &spec.left_width, &spec.right_width, &spec.top_width, &spec.bottom_width };
    muslin_id *fabrics[] = { &spec.left_fabric, &spec.right_fabric, &spec.top_fabric, &spec.bottom_fabric };
    muslin_id id = 0;
    spec.centre = centre;
    for (int i = 0; i < 4; i++)
        if (widths[i] != 0) {
            *measures[i] = fixed_of(s->quilt, widths[i]);
            *fabrics[i] = s->white;
        }
    ck_ok(muslin_quilt_set_in(s->quilt, &spec, &id, NULL));
    return id;
}

/* ---- pinwheels -------------------------------------------------------------------------------------------------- */

static muslin_id pinwheel_of(struct sewn *s, muslin_id centre, muslin_id top, muslin_id right, muslin_id bottom,
                             muslin_id left)
{
    const struct muslin_quilt_pinwheel_spec spec = { sizeof spec, 0, centre, top, right, bottom, left };
    muslin_id id = 0;
    ck_ok(muslin_quilt_pinwheel(s->quilt, &spec, &id, NULL));
    return id;
}

/* Example: four 2 x 4 in rectangles round a 2 in square make 6 in. */
START_TEST(four_rectangles_round_a_square)
{
    struct sewn s;
    begin_sewing(&s);
    muslin_id square = patch_of(s.quilt, s.blue, s.two, s.two);
    muslin_id upright = patch_of(s.quilt, s.white, s.two, times_of(s.quilt, s.two, 2));
    muslin_id level = turn_of(s.quilt, upright, 1);
    muslin_id node = pinwheel_of(&s, square, level, upright, level, upright);
    struct muslin_solution *solution = solved(s.quilt, node);
    struct muslin_node_size size = size_of(solution, node);
    ck_finished(&size, WHOLE_IN(6), WHOLE_IN(6));
    ck_assert_int_eq(size.unfinished_width, IN(6, 1, 2));
    ck_assert_int_eq(size.patches, 5);
    ck_assert_int_eq(size.seams_across, 2); /* left, centre, right */
    ck_assert_int_eq(size.seams_down, 2);
    ck_assert_int_eq(size.exact, 1);
    ck_assert_int_eq(size.kind, MUSLIN_NODE_PINWHEEL);
    ck_edges(&size, IN(0, 1, 4), IN(0, 1, 4), IN(0, 1, 4), IN(0, 1, 4));
    ck_assert_int_eq(size_of(solution, upright).count, 4);
    ck_assert_int_eq(size_of(solution, upright).quarter, 2);
    muslin_solution_free(solution);
    end_sewing(&s);
}
END_TEST

/* Five unlike pieces that meet: 8 x 13 is 5 x 6 + 6 x 4 + 2 x 10 + 7 x 3 + 1 x 9. */
START_TEST(unequal_arms_meet_too)
{
    struct sewn s;
    begin_sewing(&s);
    const muslin_len each[] = { 10, 20, 30, 40 };
    muslin_id top = edged_piece(&s, 600, 400, each);
    /* joins inside: the centre of two side by side, the left arm of three one below the other */
    muslin_id half = piece_of(&s, 250, 600);
    const muslin_id two[] = { half, half };
    muslin_id third = piece_of(&s, 100, 300);
    const muslin_id three[] = { third, third, third };
    muslin_id centre = join_of(s.quilt, MUSLIN_AXIS_ACROSS, two, 2);
    muslin_id left = join_of(s.quilt, MUSLIN_AXIS_DOWN, three, 3);
    muslin_id node = pinwheel_of(&s, centre, top, piece_of(&s, 200, 1000), piece_of(&s, 700, 300), left);
    struct muslin_solution *solution = solved(s.quilt, node);
    struct muslin_node_size size = size_of(solution, node);
    ck_finished(&size, 800, 1300);
    ck_assert_int_eq(size.patches, 8);
    ck_assert_int_eq(size.seams_across, 3); /* left, two of the centre, right */
    ck_assert_int_eq(size.seams_down, 3);   /* top, three of the left */
    /* top's own allowances along left and top differ from those of the others, 1/4 in */
    ck_edges(&size, -1, IN(0, 1, 4), -1, IN(0, 1, 4));
    /* mirrored it is as large, turned it is on its side */
    muslin_id lying = turn_of(s.quilt, mirror_of(s.quilt, node), 1);
    muslin_solution_free(solution);
    solution = solved(s.quilt, lying);
    size = size_of(solution, lying);
    ck_finished(&size, 1300, 800);
    muslin_solution_free(solution);
    end_sewing(&s);
}
END_TEST

/* Of four arms that are each in turn too long or too short, the whole is as large as its largest row and column. */
START_TEST(a_wrong_pinwheel_is_as_large_as_its_largest_row)
{
    struct sewn s;
    begin_sewing(&s);
    muslin_id centre = piece_of(&s, 500, 600);
    muslin_id top = piece_of(&s, 600, 400);
    muslin_id right = piece_of(&s, 200, 1000);
    muslin_id bottom = piece_of(&s, 700, 300);
    muslin_id left = piece_of(&s, 100, 900);
    const muslin_len wanted[][2] = { { 850, 1300 }, { 800, 1300 }, { 800, 1350 }, { 800, 1300 },
                                     { 850, 1300 }, { 800, 1300 }, { 800, 1350 }, { 800, 1300 } };
    muslin_id wrong[8];
    for (int i = 0; i < 2; i++) {
        muslin_len off = i == 0 ? 50 : -50;
        wrong[i] = pinwheel_of(&s, centre, piece_of(&s, 600 + off, 400), right, bottom, left);
        wrong[2 + i] = pinwheel_of(&s, centre, top, piece_of(&s, 200, 1000 + off), bottom, left);
        wrong[4 + i] = pinwheel_of(&s, centre, top, right, piece_of(&s, 700 + off, 300), left);
        wrong[6 + i] = pinwheel_of(&s, centre, top, right, bottom, piece_of(&s, 100, 900 + off));
    }
    for (int i = 0; i < 8; i++) {
        struct muslin_solution *solution = solved(s.quilt, wrong[i]);
        struct muslin_node_size size = size_of(solution, wrong[i]);
        ck_finished(&size, wanted[i][0], wanted[i][1]);
        muslin_solution_free(solution);
    }
    end_sewing(&s);
}
END_TEST

/* A block on point is rounded, and so is all that holds it. */
/* A child with so many seams across and down: a grid of patches. */
static muslin_id grid_of(struct sewn *s, int64_t across, int64_t down)
{
    return repeat_of(s->quilt, piece_of(s, 10, 10), across + 1, down + 1);
}

/* A level line meets the seams of top and right and the one between them, of left, centre and right with two, or of
 * left and bottom with one; an upright line so. Each of them is the greatest in its turn. */
START_TEST(seams_of_the_arms_of_a_pinwheel_add_up)
{
    /* centre, top, right, bottom, left; then in all */
    const int64_t cases[][2][6] = { { { 1, 5, 4, 1, 1, 10 }, { 1, 5, 1, 1, 4, 10 } },
                                    { { 4, 1, 5, 1, 3, 14 }, { 4, 3, 1, 5, 1, 14 } },
                                    { { 1, 1, 1, 6, 5, 12 }, { 1, 1, 5, 6, 1, 12 } } };
    struct sewn s;
    begin_sewing(&s);
    for (size_t i = 0; i < 3; i++) {
        muslin_id nodes[5];
        muslin_id node = 0;
        for (int k = 0; k < 5; k++)
            nodes[k] = grid_of(&s, cases[i][0][k], cases[i][1][k]);
        const struct muslin_quilt_pinwheel_spec spec = { sizeof spec, 0, nodes[0], nodes[1], nodes[2], nodes[3],
                                                         nodes[4] };
        ck_ok(muslin_quilt_pinwheel(s.quilt, &spec, &node, NULL));
        struct muslin_solution *solution = solved(s.quilt, node);
        ck_assert_int_eq(size_of(solution, node).seams_across, cases[i][0][5]);
        ck_assert_int_eq(size_of(solution, node).seams_down, cases[i][1][5]);
        muslin_solution_free(solution);
    }
    end_sewing(&s);
}
END_TEST

START_TEST(what_holds_something_rounded_is_not_exact)
{
    struct sewn s;
    begin_sewing(&s);
    muslin_id square = patch_of(s.quilt, s.blue, s.two, s.two);
    struct muslin_quilt_diagonal_spec spec = MUSLIN_QUILT_DIAGONAL_SPEC_INIT;
    muslin_id field = 0;
    spec.side_fabric = spec.corner_fabric = s.white;
    ck_ok(muslin_quilt_diagonal(s.quilt, &spec, &square, 1, &field, NULL));
    const muslin_len widths[] = { 100, 100, 100, 100 };
    muslin_id framed = set_in_of(&s, field, widths);
    muslin_id node = pinwheel_of(&s, square, square, framed, square, square);
    struct muslin_solution *solution = solved(s.quilt, node);
    ck_assert_int_eq(size_of(solution, field).exact, 0);
    ck_assert_int_eq(size_of(solution, framed).exact, 0);
    ck_assert_int_eq(size_of(solution, node).exact, 0);
    muslin_solution_free(solution);
    end_sewing(&s);
}
END_TEST

/* ---- strips with mitred corners --------------------------------------------------------------------------------- */

/* Example: a 6 in square with 2 in strips at left and bottom makes 8 in. */
START_TEST(an_attic_window)
{
    struct sewn s;
    begin_sewing(&s);
    const muslin_len widths[] = { WHOLE_IN(2), 0, 0, WHOLE_IN(2) };
    muslin_id square = piece_of(&s, WHOLE_IN(6), WHOLE_IN(6));
    muslin_id window = set_in_of(&s, square, widths);
    struct muslin_solution *solution = solved(s.quilt, repeat_of(s.quilt, window, 3, 2));
    struct muslin_node_size size = size_of(solution, window);
    ck_finished(&size, WHOLE_IN(8), WHOLE_IN(8));
    ck_assert_int_eq(size.unfinished_height, IN(8, 1, 2));
    ck_assert_int_eq(size.patches, 3);
    ck_assert_int_eq(size.seams_across, 1);
    ck_assert_int_eq(size.seams_down, 1);
    ck_assert_int_eq(size.exact, 1);
    ck_assert_int_eq(size.kind, MUSLIN_NODE_SET_IN);
    ck_assert_int_eq(size_of(solution, square).count, 6);
    ck_edges(&size, IN(0, 1, 4), IN(0, 1, 4), IN(0, 1, 4), IN(0, 1, 4));
    muslin_solution_free(solution);
    end_sewing(&s);
}
END_TEST

/* Every choice of sides round a centre with four unlike allowances. */
START_TEST(strips_on_any_sides)
{
    struct sewn s;
    begin_sewing(&s);
    const muslin_len edges[] = { 10, 20, 30, 40 };
    muslin_id centre = edged_piece(&s, 1000, 2000, edges);
    for (int sides = 1; sides < 16; sides++) {
        const muslin_len all[] = { 1, 20, 300, 4000 };
        muslin_len widths[4];
        for (int i = 0; i < 4; i++)
            widths[i] = (sides >> i & 1) != 0 ? all[i] : 0;
        muslin_id node = set_in_of(&s, centre, widths);
        struct muslin_solution *solution = solved(s.quilt, node);
        struct muslin_node_size size = size_of(solution, node);
        int left = sides & 1;
        int right = sides >> 1 & 1;
        int top = sides >> 2 & 1;
        int bottom = sides >> 3;
        ck_finished(&size, 1000 + widths[0] + widths[1], 2000 + widths[2] + widths[3]);
        ck_assert_int_eq(size.patches, 1 + left + right + top + bottom);
        ck_assert_int_eq(size.seams_across, left + right);
        ck_assert_int_eq(size.seams_down, top + bottom);
        /* a strip's edge is the quilt's; beside the ends of strips the centre's is not the only one */
        muslin_len level[] = { top || bottom ? -1 : 10, top || bottom ? -1 : 20 };
        muslin_len upright[] = { left || right ? -1 : 30, left || right ? -1 : 40 };
        ck_edges(&size, left ? IN(0, 1, 4) : level[0], right ? IN(0, 1, 4) : level[1],
                 top ? IN(0, 1, 4) : upright[0], bottom ? IN(0, 1, 4) : upright[1]);
        muslin_solution_free(solution);
    }
    end_sewing(&s);
}
END_TEST

START_TEST(a_mitred_border_is_as_large_as_planned)
{
    struct sewn s;
    begin_sewing(&s);
    const muslin_len widths[] = { WHOLE_IN(4), WHOLE_IN(4), WHOLE_IN(4), WHOLE_IN(4) };
    muslin_id top = piece_of(&s, WHOLE_IN(38), IN(49, 1, 2));
    muslin_id node = set_in_of(&s, top, widths);
    struct muslin_border_spec spec = MUSLIN_BORDER_SPEC_INIT;
    struct muslin_border border = { .size = (uint32_t)sizeof border };
    spec.unfinished_width = IN(38, 1, 2);
    spec.unfinished_length = WHOLE_IN(50);
    spec.finished_border = WHOLE_IN(4);
    spec.style = MUSLIN_BORDER_STYLE_MITRED;
    ck_ok(muslin_border_plan(&spec, &border, NULL));
    struct muslin_solution *solution = solved(s.quilt, node);
    struct muslin_node_size size = size_of(solution, node);
    ck_finished(&size, border.finished_width, border.finished_length);
    ck_assert_int_eq(size.unfinished_width, border.unfinished_width);
    ck_assert_int_eq(size.unfinished_height, border.unfinished_length);
    muslin_solution_free(solution);
    end_sewing(&s);
}
END_TEST

START_TEST(sizes_out_of_range_are_told_by_their_node)
{
    struct sewn s;
    struct muslin_problem problem = PROBLEM;
    struct muslin_solution_spec spec = MUSLIN_SOLUTION_SPEC_INIT;
    struct muslin_solution *solution = NULL;
    begin_sewing(&s);
    muslin_id square = piece_of(&s, WHOLE_IN(6), WHOLE_IN(6));
    struct muslin_quilt_set_in_spec set_in = MUSLIN_QUILT_SET_IN_SPEC_INIT;
    muslin_id node = 0;
    set_in.centre = square;
    set_in.top_width = s.two;
    set_in.top_fabric = s.white;
    ck_ok(muslin_quilt_set_in(s.quilt, &set_in, &node, NULL));
    struct muslin_solution_value_spec value = { sizeof value, 0, s.two, 0 };
    ck_status(muslin_solution_create(s.quilt, node, &spec, &value, sizeof value, 1, NULL, &solution, &problem),
              MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_BORDER_WIDTH);
    ck_assert_int_eq(problem.at, muslin_id_number(node));
    value.value = MUSLIN_SIZE_MAX;
    ck_status(muslin_solution_create(s.quilt, node, &spec, &value, sizeof value, 1, NULL, &solution, &problem),
              MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_FINISHED);
    ck_assert_int_eq(problem.value, MUSLIN_SIZE_MAX + WHOLE_IN(6));
    value.value = MUSLIN_SIZE_MAX - WHOLE_IN(6); /* the widest that is no more than a size */
    ck_ok(muslin_solution_create(s.quilt, node, &spec, &value, sizeof value, 1, NULL, &solution, NULL));
    muslin_solution_free(solution);
    muslin_id large = piece_of(&s, MUSLIN_SIZE_MAX, 1);
    node = pinwheel_of(&s, square, large, square, square, square);
    ck_status(muslin_solution_create(s.quilt, node, &spec, NULL, 0, 0, NULL, &solution, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.at, muslin_id_number(node));
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_FINISHED);
    end_sewing(&s);
}
END_TEST

/* ---- log cabins and borders ------------------------------------------------------------------------------------- */

static muslin_id child_of(struct muslin_quilt *quilt, muslin_id node, size_t k)
{
    muslin_id two[2] = { 0, 0 };
    size_t count = 0;
    ck_ok(muslin_quilt_children(quilt, node, two, 2, &count, NULL));
    ck_assert_uint_eq(count, 2);
    return two[k];
}

/* Every log of a block, and the block after each, against muslin_logcabin_logs(). */
static void ck_logcabin(const struct muslin_logcabin_spec *spec)
{
    struct sewn s;
    struct muslin_logcabin_log rows[20];
    struct muslin_quilt_log_spec logs[20];
    size_t count = 0;
    begin_sewing(&s);
    ck_ok(muslin_logcabin_logs(spec, NULL, 0, rows, sizeof rows[0], 20, &count, NULL));
    muslin_id centre = piece_of(&s, spec->centre_width, spec->centre_height);
    muslin_id made[21] = { centre };
    for (size_t i = 0; i < count; i++) {
        const struct muslin_quilt_log_spec log = MUSLIN_QUILT_LOG_SPEC_INIT;
        logs[i] = log;
        logs[i].fabric = rows[i].half == MUSLIN_LOG_HALF_FIRST ? s.white : s.blue;
        logs[i].width = fixed_of(s.quilt, spec->log_width);
        logs[i].side = rows[i].side;
        ck_ok(muslin_quilt_logs(s.quilt, centre, logs, sizeof logs[0], i + 1, &made[i + 1], NULL));
    }
    struct muslin_solution *solution = solved(s.quilt, made[count]);
    for (size_t i = 0; i < count; i++) {
        struct muslin_node_size block = size_of(solution, made[i + 1]);
        ck_assert_int_eq(block.unfinished_width, rows[i].unfinished_width);
        ck_assert_int_eq(block.unfinished_height, rows[i].unfinished_height);
        ck_assert_int_eq(block.patches, (int64_t)i + 2);
        int level = logs[i].side == MUSLIN_SIDE_TOP || logs[i].side == MUSLIN_SIDE_BOTTOM;
        int first = logs[i].side == MUSLIN_SIDE_TOP || logs[i].side == MUSLIN_SIDE_LEFT;
        ck_assert_int_eq(child_of(s.quilt, made[i + 1], (size_t)first), made[i]);
        struct muslin_node_size log = size_of(solution, child_of(s.quilt, made[i + 1], (size_t)!first));
        ck_assert_int_eq(level ? log.unfinished_width : log.unfinished_height, rows[i].cut_length);
        ck_assert_int_eq(level ? log.unfinished_height : log.unfinished_width, rows[i].cut_width);
        ck_assert_int_eq(level ? log.finished_width : log.finished_height, rows[i].finished_length);
    }
    muslin_solution_free(solution);
    end_sewing(&s);
}

START_TEST(log_cabins_have_the_logs_that_rounds_names)
{
    struct muslin_logcabin_spec spec = MUSLIN_LOGCABIN_SPEC_INIT;
    spec.centre_width = WHOLE_IN(2);
    spec.centre_height = IN(2, 1, 2);
    spec.log_width = WHOLE_IN(1);
    spec.rounds = 3;
    for (spec.order = MUSLIN_LOG_ORDER_ROUND; spec.order <= MUSLIN_LOG_ORDER_QUARTER; spec.order++)
        for (spec.start = MUSLIN_SIDE_LEFT; spec.start <= MUSLIN_SIDE_BOTTOM; spec.start++)
            for (spec.turn = MUSLIN_LOG_TURN_CLOCKWISE; spec.turn <= MUSLIN_LOG_TURN_ANTICLOCKWISE; spec.turn++)
                ck_logcabin(&spec);
}
END_TEST

/* The borders of muslin_border_plan() that are made of plain strips, round 38 1/2 x 50 in unfinished. */
static void ck_butted(int32_t style, const int32_t *sides)
{
    struct sewn s;
    struct muslin_border_spec spec = MUSLIN_BORDER_SPEC_INIT;
    struct muslin_border border = { .size = (uint32_t)sizeof border };
    spec.unfinished_width = IN(38, 1, 2);
    spec.unfinished_length = WHOLE_IN(50);
    spec.finished_border = WHOLE_IN(4);
    spec.style = style;
    ck_ok(muslin_border_plan(&spec, &border, NULL));
    begin_sewing(&s);
    muslin_id top = piece_of(&s, WHOLE_IN(38), IN(49, 1, 2));
    muslin_id made[5] = { top };
    struct muslin_quilt_log_spec logs[4];
    for (size_t i = 0; i < 4; i++) {
        logs[i] =
            (struct muslin_quilt_log_spec){ sizeof logs[i], 0, s.white, fixed_of(s.quilt, WHOLE_IN(4)), sides[i], 0 };
        ck_ok(muslin_quilt_logs(s.quilt, top, logs, sizeof logs[0], i + 1, &made[i + 1], NULL));
    }
    struct muslin_solution *solution = solved(s.quilt, made[4]);
    struct muslin_node_size size = size_of(solution, made[4]);
    ck_finished(&size, border.finished_width, border.finished_length);
    ck_assert_int_eq(size.unfinished_width, border.unfinished_width);
    for (size_t i = 0; i < 4; i++) {
        int level = sides[i] == MUSLIN_SIDE_TOP || sides[i] == MUSLIN_SIDE_BOTTOM;
        int first = sides[i] == MUSLIN_SIDE_TOP || sides[i] == MUSLIN_SIDE_LEFT;
        struct muslin_node_size strip = size_of(solution, child_of(s.quilt, made[i + 1], (size_t)!first));
        ck_assert_int_eq(level ? strip.unfinished_width : strip.unfinished_height,
                         level ? border.top_cut_length : border.side_cut_length);
        ck_assert_int_eq(level ? strip.unfinished_height : strip.unfinished_width, border.cut_width);
    }
    muslin_solution_free(solution);
    end_sewing(&s);
}

START_TEST(butted_borders_are_as_planned)
{
    const int32_t sides_first[] = { MUSLIN_SIDE_LEFT, MUSLIN_SIDE_RIGHT, MUSLIN_SIDE_TOP, MUSLIN_SIDE_BOTTOM };
    const int32_t top_first[] = { MUSLIN_SIDE_TOP, MUSLIN_SIDE_BOTTOM, MUSLIN_SIDE_LEFT, MUSLIN_SIDE_RIGHT };
    ck_butted(MUSLIN_BORDER_STYLE_SIDES_FIRST, sides_first);
    ck_butted(MUSLIN_BORDER_STYLE_TOP_FIRST, top_first);
}
END_TEST

/* As in setting.h: 38 1/2 x 50 in unfinished, 4 in border with cornerstones: cut 4 1/2 in, two of 50, two of 38 1/2
 * in */
START_TEST(a_border_with_cornerstones_is_a_surround)
{
    struct sewn s;
    begin_sewing(&s);
    muslin_id four = fixed_of(s.quilt, WHOLE_IN(4));
    muslin_id top = piece_of(&s, WHOLE_IN(38), IN(49, 1, 2));
    muslin_id side = patch_of(s.quilt, s.white, four, extent_of(s.quilt, top, MUSLIN_AXIS_DOWN));
    muslin_id level = patch_of(s.quilt, s.white, extent_of(s.quilt, top, MUSLIN_AXIS_ACROSS), four);
    muslin_id corner = patch_of(s.quilt, s.blue, four, four);
    const struct muslin_quilt_surround_spec spec = { sizeof spec, 0,      top,    side,   side,  level,
                                                     level,       corner, corner, corner, corner };
    muslin_id node = 0;
    ck_ok(muslin_quilt_surround(s.quilt, &spec, &node, NULL));
    struct muslin_solution *solution = solved(s.quilt, node);
    struct muslin_node_size size = size_of(solution, node);
    ck_assert_int_eq(size.unfinished_width, IN(46, 1, 2));
    ck_assert_int_eq(size.unfinished_height, WHOLE_IN(58));
    ck_assert_int_eq(size_of(solution, corner).count, 4);
    ck_assert_int_eq(size_of(solution, corner).unfinished_width, IN(4, 1, 2));
    ck_assert_int_eq(size_of(solution, side).unfinished_height, WHOLE_IN(50));
    ck_assert_int_eq(size_of(solution, level).unfinished_width, IN(38, 1, 2));
    ck_assert_int_eq(size_of(solution, level).count, 2);
    muslin_solution_free(solution);
    end_sewing(&s);
}
END_TEST

/* Three of 2 in on each side of 6 in, four corners: 10 in. Example: a round of half-squares with corner squares. */
START_TEST(a_round_of_half_squares)
{
    struct sewn s;
    begin_sewing(&s);
    const muslin_id fabrics[] = { s.blue, s.white };
    struct muslin_quilt_unit_spec half_spec = MUSLIN_QUILT_UNIT_SPEC_INIT;
    muslin_id half = 0;
    half_spec.width = s.two;
    ck_ok(muslin_quilt_unit(s.quilt, &half_spec, fabrics, 2, &half, NULL));
    muslin_id corner = patch_of(s.quilt, s.white, s.two, s.two);
    muslin_id across = repeat_of(s.quilt, half, 3, 1);
    muslin_id down = turn_of(s.quilt, across, 1);
    muslin_id centre = piece_of(&s, WHOLE_IN(6), WHOLE_IN(6));
    const struct muslin_quilt_surround_spec spec = { sizeof spec, 0, centre, down, down, across, across, corner, corner,
                                               corner, corner };
    muslin_id node = 0;
    ck_ok(muslin_quilt_surround(s.quilt, &spec, &node, NULL));
    struct muslin_solution *solution = solved(s.quilt, node);
    struct muslin_node_size size = size_of(solution, node);
    ck_finished(&size, WHOLE_IN(10), WHOLE_IN(10));
    ck_assert_int_eq(size.patches, 1 + 12 * 2 + 4);
    ck_assert_int_eq(size_of(solution, half).count, 12);
    struct muslin_solution_total totals = { .size = (uint32_t)sizeof totals };
    ck_ok(muslin_solution_totals(solution, &totals, NULL));
    ck_assert_int_eq(totals.misfits, 0);
    ck_assert_int_eq(totals.patch_area, totals.finished_area);
    muslin_solution_free(solution);
    end_sewing(&s);
}
END_TEST

/* ---- sashed settings -------------------------------------------------------------------------------------------- */

/* How often a patch occurs, and that it is cut so; a patch that the top does not hold occurs never. */
static void ck_pieces(const struct muslin_solution *solution, muslin_id patch, int64_t pieces, muslin_len cut_width,
                      muslin_len cut_height)
{
    struct muslin_node_size size = { .size = (uint32_t)sizeof size };
    muslin_status status = muslin_solution_size(solution, patch, &size, NULL);
    ck_status(status, pieces == 0 ? MUSLIN_ERR_FOREIGN : MUSLIN_OK);
    if (pieces == 0)
        return;
    ck_assert_int_eq(size.count, pieces);
    ck_assert_int_eq(size.unfinished_width, cut_width);
    ck_assert_int_eq(size.unfinished_height, cut_height);
}

static muslin_id sashed_of(struct sewn *s, const struct muslin_quilt_sashed_spec *spec, muslin_id block)
{
    muslin_id blocks[64];
    muslin_id out = 0;
    for (int i = 0; i < 64; i++)
        blocks[i] = block;
    ck_ok(muslin_quilt_sashed(s->quilt, spec, blocks, (size_t)(spec->columns * spec->rows), &out, NULL));
    return out;
}

/* One setting of equal blocks against muslin_setting_sashed(). */
static void ck_sashed(const struct muslin_setting_sashed_spec *plan)
{
    struct sewn s;
    struct muslin_setting_sashed_plan sashed = { .size = (uint32_t)sizeof sashed };
    begin_sewing(&s);
    ck_ok(muslin_setting_sashed(plan, &sashed, NULL));
    muslin_id sash = fixed_of(s.quilt, plan->sash_width);
    muslin_id block = piece_of(&s, plan->block_width, plan->block_height);
    int cornerstones = (plan->flags & MUSLIN_SETTING_SASHED_CORNERSTONES) != 0;
    const uint32_t frame = (plan->flags & MUSLIN_SETTING_SASHED_FRAME) != 0 ? MUSLIN_QUILT_SASHED_FRAME : 0;
    struct muslin_quilt_sashed_spec spec = { sizeof spec,
                                             frame | (cornerstones ? MUSLIN_QUILT_SASHED_CORNERSTONES : 0),
                                             plan->columns,
                                             plan->rows,
                                             sash,
                                             s.white,
                                             cornerstones ? s.blue : 0 };
    muslin_id top = sashed_of(&s, &spec, block);
    struct muslin_solution *solution = solved(s.quilt, top);
    struct muslin_node_size size = size_of(solution, top);
    ck_finished(&size, sashed.finished_width, sashed.finished_length);
    ck_assert_int_eq(size.unfinished_width, sashed.unfinished_width);
    ck_assert_int_eq(size.patches,
                     sashed.blocks + sashed.vertical_sashes + sashed.horizontal_sashes + sashed.cornerstones);
    ck_pieces(solution, block, sashed.blocks, sashed.block_unfinished_width, sashed.block_unfinished_height);
    muslin_id upright = patch_of(s.quilt, s.white, sash, extent_of(s.quilt, block, MUSLIN_AXIS_DOWN));
    ck_pieces(solution, upright, sashed.vertical_sashes, sashed.vertical_cut_width, sashed.vertical_cut_length);
    ck_pieces(solution, patch_of(s.quilt, s.blue, sash, sash), sashed.cornerstones, sashed.cornerstone_cut_width,
              sashed.cornerstone_cut_height);
    if (cornerstones)
        ck_pieces(solution, patch_of(s.quilt, s.white, extent_of(s.quilt, block, MUSLIN_AXIS_ACROSS), sash),
                  sashed.horizontal_sashes, sashed.horizontal_cut_length, sashed.horizontal_cut_width);
    muslin_solution_free(solution);
    end_sewing(&s);
}

START_TEST(sashed_settings_have_the_pieces_that_setting_counts)
{
    struct muslin_setting_sashed_spec plan = MUSLIN_SETTING_SASHED_SPEC_INIT;
    plan.block_width = WHOLE_IN(12);
    plan.block_height = WHOLE_IN(10);
    plan.sash_width = plan.sash_height = WHOLE_IN(3);
    for (plan.flags = 0; plan.flags < 4; plan.flags++)
        for (plan.columns = 1; plan.columns <= 4; plan.columns++)
            for (plan.rows = 1; plan.rows <= 4; plan.rows++)
                ck_sashed(&plan);
}
END_TEST

/* Example: 3 x 3 blocks of 12 in with 2 in sashes and a frame finish 44 in. */
START_TEST(three_by_three_blocks_with_sashes)
{
    struct sewn s;
    begin_sewing(&s);
    muslin_id block = piece_of(&s, WHOLE_IN(12), WHOLE_IN(12));
    struct muslin_quilt_sashed_spec spec = { sizeof spec, MUSLIN_QUILT_SASHED_FRAME, 3, 3, s.two, s.white, 0 };
    muslin_id top = sashed_of(&s, &spec, block);
    struct muslin_solution *solution = solved(s.quilt, top);
    struct muslin_node_size size = size_of(solution, top);
    ck_finished(&size, WHOLE_IN(44), WHOLE_IN(44));
    ck_assert_int_eq(size.patches, 9 + 12 + 4); /* long sashes: four, as wide as a row with its frame */
    ck_assert_int_eq(size.seams_across, 6);
    ck_assert_int_eq(size.seams_down, 6);
    muslin_solution_free(solution);
    end_sewing(&s);
}
END_TEST

/* The kinds of sashes that muslin_setting_sashed_pieces() cuts from strips, long ones among them. */
START_TEST(sashes_are_cut_as_setting_cuts_them)
{
    struct muslin_setting_sashed_spec plan = MUSLIN_SETTING_SASHED_SPEC_INIT;
    struct muslin_sash_piece rows[3];
    size_t count = 0;
    struct sewn s;
    plan.block_width = plan.block_height = WHOLE_IN(8);
    plan.columns = 2;
    plan.rows = 3;
    plan.sash_width = plan.sash_height = WHOLE_IN(2);
    plan.flags = MUSLIN_SETTING_SASHED_FRAME;
    ck_ok(muslin_setting_sashed_pieces(&plan, rows, sizeof rows[0], 3, &count, NULL));
    ck_assert_uint_eq(count, 2);
    begin_sewing(&s);
    muslin_id block = piece_of(&s, WHOLE_IN(8), WHOLE_IN(8));
    struct muslin_quilt_sashed_spec spec = { sizeof spec, MUSLIN_QUILT_SASHED_FRAME, 2, 3, s.two, s.white, 0 };
    muslin_id top = sashed_of(&s, &spec, block);
    muslin_id five[7];
    ck_ok(muslin_quilt_children(s.quilt, top, five, 7, &count, NULL));
    struct muslin_solution *solution = solved(s.quilt, top);
    muslin_id upright = patch_of(s.quilt, s.white, s.two, extent_of(s.quilt, block, MUSLIN_AXIS_DOWN));
    ck_pieces(solution, upright, rows[0].pieces, rows[0].cut_width, rows[0].cut_length);
    ck_pieces(solution, five[0], rows[1].pieces, rows[1].cut_length, rows[1].cut_width);
    muslin_solution_free(solution);
    end_sewing(&s);
}
END_TEST

/* ---- misfits ---------------------------------------------------------------------------------------------------- */

enum { MISFITS_MOST = 8 };

static void ck_misfits(struct sewn *s, muslin_id root, muslin_len ease, const struct muslin_misfit *expected, size_t n)
{
    struct muslin_solution_spec spec = MUSLIN_SOLUTION_SPEC_INIT;
    struct muslin_solution *solution = NULL;
    struct muslin_misfit rows[MISFITS_MOST];
    size_t count = 0;
    spec.ease = ease;
    spec.tops = 3;
    ck_ok(muslin_solution_create(s->quilt, root, &spec, NULL, 0, 0, NULL, &solution, NULL));
    ck_ok(muslin_solution_misfits(solution, rows, sizeof rows[0], MISFITS_MOST, &count, NULL));
    ck_assert_uint_eq(count, n);
    for (size_t i = 0; i < n; i++) {
        struct muslin_misfit row = expected[i];
        row.size = (uint32_t)sizeof row;
        row.count = 3;
        ck_assert_mem_eq(&rows[i], &row, sizeof row);
    }
    muslin_solution_free(solution);
}

/* Round 500 x 600: an arm of each side too short by 50, the centre's edge with the end that prolongs it comes first. */
START_TEST(a_wrong_arm_is_a_misfit)
{
    struct sewn s;
    begin_sewing(&s);
    const muslin_len sizes[][2] = { { 500, 600 }, { 600, 400 }, { 200, 1000 }, { 700, 300 }, { 100, 900 } };
    const muslin_len due[] = { 0, 600, 1000, 700, 900 };
    for (int wrong = 0; wrong < 5; wrong++) {
        muslin_id id[5];
        for (int i = 0; i < 5; i++) {
            muslin_len off = i == wrong && i > 0 ? 50 : 0;
            int level = i == 1 || i == 3;
            id[i] = piece_of(&s, sizes[i][0] - (level ? off : 0), sizes[i][1] - (level ? 0 : off));
        }
        muslin_id node = pinwheel_of(&s, id[0], id[1], id[2], id[3], id[4]);
        struct muslin_misfit misfit = { .node = node, .first = 0, .second = wrong, .first_size = due[wrong],
                                        .second_size = due[wrong] - 50, .difference = 50, .pieces = 2,
                                        .kind = MUSLIN_MISFIT_LENGTH };
        ck_misfits(&s, node, 49, &misfit, wrong > 0);
        misfit.kind = MUSLIN_MISFIT_EASED;
        misfit.ease_each = 25;
        ck_misfits(&s, node, 50, &misfit, wrong > 0);
    }
    end_sewing(&s);
}
END_TEST

/* A centre too high by 10: what lies at its sides is too short; its top and bottom do not mind. */
START_TEST(a_wrong_centre_is_two_misfits)
{
    struct sewn s;
    begin_sewing(&s);
    muslin_id third = piece_of(&s, 100, 300);
    const muslin_id three[] = { third, third, third };
    muslin_id left = join_of(s.quilt, MUSLIN_AXIS_DOWN, three, 3);
    muslin_id node = pinwheel_of(&s, piece_of(&s, 500, 610), piece_of(&s, 600, 400), piece_of(&s, 200, 1000),
                                 piece_of(&s, 700, 300), left);
    const struct muslin_misfit misfits[] = {
        { .node = node, .first = 0, .second = 2, .first_size = 1010, .second_size = 1000, .difference = 10,
          .pieces = 2, .kind = MUSLIN_MISFIT_LENGTH },
        { .node = node, .first = 0, .second = 4, .first_size = 910, .second_size = 900, .difference = 10,
          .pieces = 3, .kind = MUSLIN_MISFIT_LENGTH },
    };
    ck_misfits(&s, node, 0, misfits, 2);
    end_sewing(&s);
}
END_TEST

/* Allowances that differ: the top's own, and the centre's from the left arm's end beside it. */
START_TEST(allowances_of_a_pinwheel_meet_too)
{
    struct sewn s;
    begin_sewing(&s);
    const muslin_len quarter = IN(0, 1, 4);
    const muslin_len top_edges[] = { quarter, quarter, quarter, 30 };
    const muslin_len left_edges[] = { quarter, quarter, 40, quarter };
    muslin_id centre = piece_of(&s, 500, 600);
    muslin_id right = piece_of(&s, 200, 1000);
    muslin_id bottom = piece_of(&s, 700, 300);
    muslin_id node = pinwheel_of(&s, centre, edged_piece(&s, 600, 400, top_edges), right, bottom,
                                 piece_of(&s, 100, 900));
    struct muslin_misfit misfit = { .node = node, .first = 0, .second = 1, .first_size = quarter, .second_size = 30,
                                    .difference = quarter - 30, .kind = MUSLIN_MISFIT_ALLOWANCE };
    ck_misfits(&s, node, 0, &misfit, 1);
    node = pinwheel_of(&s, centre, piece_of(&s, 600, 400), right, bottom, edged_piece(&s, 100, 900, left_edges));
    misfit.node = node;
    misfit.first_size = -1;
    misfit.second_size = quarter;
    misfit.difference = 0;
    ck_misfits(&s, node, 0, &misfit, 1);
    end_sewing(&s);
}
END_TEST

/* Strips have the quilt's allowance, whatever the centre's edges have; in misfits they go by enum muslin_side. */
START_TEST(allowances_of_mitred_strips)
{
    struct sewn s;
    begin_sewing(&s);
    const muslin_len quarter = IN(0, 1, 4);
    const muslin_len edges[] = { 10, quarter, 30, 40 };
    const muslin_len widths[] = { 100, 100, 100, 100 };
    muslin_id node = set_in_of(&s, edged_piece(&s, 500, 600, edges), widths);
    struct muslin_misfit misfits[3];
    const int32_t sides[] = { MUSLIN_SIDE_LEFT, MUSLIN_SIDE_TOP, MUSLIN_SIDE_BOTTOM };
    const muslin_len wrong[] = { 10, 30, 40 };
    memset(misfits, 0, sizeof misfits);
    for (int i = 0; i < 3; i++) {
        misfits[i].node = node;
        misfits[i].second = sides[i];
        misfits[i].first_size = wrong[i];
        misfits[i].second_size = quarter;
        misfits[i].difference = wrong[i] - quarter;
        misfits[i].kind = MUSLIN_MISFIT_ALLOWANCE;
    }
    ck_misfits(&s, node, 0, misfits, 3);
    end_sewing(&s);
}
END_TEST

/* How many pieces lie along each edge shows where what is joined to it does not fit: left, right, top, bottom. */
static void ck_along(struct sewn *s, muslin_id node, muslin_len width, muslin_len height, const int64_t *pieces)
{
    for (int edge = 0; edge < 4; edge++) {
        int across = edge < 2;
        int node_first = edge == 1 || edge == 3;
        muslin_len own = across ? height : width;
        muslin_id odd = across ? piece_of(s, 50, own + 7) : piece_of(s, own + 7, 50);
        const muslin_id two[] = { node_first ? node : odd, node_first ? odd : node };
        muslin_id both = join_of(s->quilt, across ? MUSLIN_AXIS_ACROSS : MUSLIN_AXIS_DOWN, two, 2);
        const struct muslin_misfit misfit = { .node = both, .first = 0, .second = 1,
                                              .first_size = node_first ? own : own + 7,
                                              .second_size = node_first ? own + 7 : own,
                                              .difference = node_first ? -7 : 7, .pieces = pieces[edge],
                                              .kind = MUSLIN_MISFIT_LENGTH };
        ck_misfits(s, both, 0, &misfit, 1);
    }
}

START_TEST(pieces_lie_along_the_edges)
{
    struct sewn s;
    begin_sewing(&s);
    muslin_id half = piece_of(&s, 300, 400);
    const muslin_id halves[] = { half, half };
    muslin_id top = join_of(s.quilt, MUSLIN_AXIS_ACROSS, halves, 2);
    muslin_id node = pinwheel_of(&s, piece_of(&s, 500, 600), top, piece_of(&s, 200, 1000), piece_of(&s, 700, 300),
                                 piece_of(&s, 100, 900));
    const int64_t round[] = { 2, 2, 3, 2 };
    ck_along(&s, node, 800, 1300, round);
    /* a centre of two columns and two rows; strips at left and top, at left alone, at left and right, all round */
    muslin_id four = repeat_of(s.quilt, piece_of(&s, 50, 60), 2, 2);
    const muslin_len widths[][4] = { { 5, 0, 6, 0 }, { 5, 0, 0, 0 }, { 5, 6, 0, 0 }, { 5, 6, 7, 8 } };
    const int64_t along[][4] = { { 1, 3, 1, 3 }, { 1, 2, 3, 3 }, { 1, 1, 4, 4 }, { 1, 1, 1, 1 } };
    for (int i = 0; i < 4; i++)
        ck_along(&s, set_in_of(&s, four, widths[i]), 100 + widths[i][0] + widths[i][1],
                 120 + widths[i][2] + widths[i][3], along[i]);
    end_sewing(&s);
}
END_TEST

/* ---- drawn ------------------------------------------------------------------------------------------------------ */

enum { OUTLINES_MOST = 8, CORNERS_MOST = 4 * OUTLINES_MOST, OUTSIDE = -1 };

/* One corner, and the seam of the node along the edge that starts there. */
struct corner {
    muslin_len x;
    muslin_len y;
    int64_t seam;
};

/* All outlines under a node, four corners each. */
static void ck_drawn(const struct muslin_solution *solution, muslin_id node, int32_t stage,
                     const struct corner (*expected)[4], size_t n)
{
    struct muslin_outline rows[OUTLINES_MOST];
    struct muslin_outline_corner corners[CORNERS_MOST];
    size_t count = 0;
    size_t given = 0;
    ck_ok(muslin_solution_outlines(solution, node, stage, 0, rows, sizeof rows[0], OUTLINES_MOST, corners,
                                   sizeof corners[0], CORNERS_MOST, &count, &given, NULL));
    ck_assert_uint_eq(count, n);
    for (size_t i = 0; i < 4 * n; i++) {
        const struct corner *e = &expected[i / 4][i % 4];
        ck_assert_msg(corners[i].x == e->x && corners[i].y == e->y, "corner %d of %d: %d, %d", (int)(i % 4),
                      (int)(i / 4), (int)corners[i].x, (int)corners[i].y);
        ck_assert_int_eq(corners[i].seam_node, e->seam == OUTSIDE ? 0 : node);
        if (e->seam != OUTSIDE)
            ck_assert_int_eq(corners[i].seam, e->seam);
    }
}

/* Centre, top, right, bottom, left; seams top, right, bottom, left. */
START_TEST(a_pinwheel_is_drawn_round_its_centre)
{
    struct sewn s;
    begin_sewing(&s);
    muslin_id node = pinwheel_of(&s, piece_of(&s, 500, 600), piece_of(&s, 600, 400), piece_of(&s, 200, 1000),
                                 piece_of(&s, 700, 300), piece_of(&s, 100, 900));
    struct muslin_solution *solution = solved(s.quilt, node);
    const struct corner expected[][4] = {
        { { 100, 300, 2 }, { 600, 300, 1 }, { 600, 900, 0 }, { 100, 900, 3 } },
        { { 0, 900, 0 }, { 600, 900, 1 }, { 600, 1300, OUTSIDE }, { 0, 1300, OUTSIDE } },
        { { 600, 300, 2 }, { 800, 300, OUTSIDE }, { 800, 1300, OUTSIDE }, { 600, 1300, 1 } },
        { { 100, 0, OUTSIDE }, { 800, 0, OUTSIDE }, { 800, 300, 2 }, { 100, 300, 3 } },
        { { 0, 0, OUTSIDE }, { 100, 0, 3 }, { 100, 900, 0 }, { 0, 900, OUTSIDE } },
    };
    ck_drawn(solution, node, MUSLIN_STAGE_FINISHED, expected, 5);
    muslin_solution_free(solution);
    end_sewing(&s);
}
END_TEST

/* The pieces of a pinwheel that does not meet: each arm in its corner, the centre against left and top. */
START_TEST(a_wrong_pinwheel_is_drawn_from_its_corners)
{
    struct sewn s;
    begin_sewing(&s);
    muslin_id node = pinwheel_of(&s, piece_of(&s, 500, 580), piece_of(&s, 590, 400), piece_of(&s, 200, 1000),
                                 piece_of(&s, 690, 300), piece_of(&s, 100, 890));
    struct muslin_solution *solution = solved(s.quilt, node);
    const struct corner expected[][4] = {
        { { 100, 320, 2 }, { 600, 320, 1 }, { 600, 900, 0 }, { 100, 900, 3 } },
        { { 0, 900, 0 }, { 590, 900, 1 }, { 590, 1300, OUTSIDE }, { 0, 1300, OUTSIDE } },
        { { 600, 300, 2 }, { 800, 300, OUTSIDE }, { 800, 1300, OUTSIDE }, { 600, 1300, 1 } },
        { { 110, 0, OUTSIDE }, { 800, 0, OUTSIDE }, { 800, 300, 2 }, { 110, 300, 3 } },
        { { 0, 0, OUTSIDE }, { 100, 0, 3 }, { 100, 890, 0 }, { 0, 890, OUTSIDE } },
    };
    ck_drawn(solution, node, MUSLIN_STAGE_FINISHED, expected, 5);
    muslin_solution_free(solution);
    end_sewing(&s);
}
END_TEST

static struct muslin_solution *solved_with_seam(struct sewn *s, muslin_id node, muslin_len allowance,
                                                muslin_len take_up)
{
    struct muslin_solution_spec spec = MUSLIN_SOLUTION_SPEC_INIT;
    struct muslin_solution_value_spec seam[2] = { MUSLIN_SOLUTION_VALUE_SPEC_INIT, MUSLIN_SOLUTION_VALUE_SPEC_INIT };
    struct muslin_solution *solution = NULL;
    ck_ok(muslin_quilt_seam(s->quilt, &seam[0].id, &seam[1].id, NULL));
    seam[0].value = allowance;
    seam[1].value = take_up;
    ck_ok(muslin_solution_create(s->quilt, node, &spec, seam, sizeof seam[0], 2, NULL, &solution, NULL));
    return solution;
}

/* Left 300 and top 400 wide: the mitre is 500 long. Cut with 100 on every edge, the left strip's end lies beyond the
 * finished one by 200 (500 + 400) / 600 = 300 outside and by 200 (500 - 400) / 600 = 33 1/3 inside, the top's by 200
 * (500 + 300) / 800 = 200 and 50. The other ends are square. Seams: left, top, mitre. */
START_TEST(mitred_strips_are_drawn_finished_and_as_cut)
{
    struct sewn s;
    begin_sewing(&s);
    const muslin_len widths[] = { 300, 0, 400, 0 };
    muslin_id node = set_in_of(&s, piece_of(&s, 1000, 2000), widths);
    struct muslin_solution *solution = solved_with_seam(&s, node, 100, 0);
    const struct corner finished[][4] = {
        { { 0, 0, OUTSIDE }, { 300, 0, 0 }, { 300, 2000, 2 }, { 0, 2400, OUTSIDE } },
        { { 1300, 2400, OUTSIDE }, { 0, 2400, 2 }, { 300, 2000, 1 }, { 1300, 2000, OUTSIDE } },
        { { 300, 0, OUTSIDE }, { 1300, 0, OUTSIDE }, { 1300, 2000, 1 }, { 300, 2000, 0 } },
    };
    const struct corner cut[][4] = {
        { { -100, -100, OUTSIDE }, { 400, -100, 0 }, { 400, 2033, 2 }, { -100, 2700, OUTSIDE } },
        { { 1400, 2500, OUTSIDE }, { -200, 2500, 2 }, { 250, 1900, 1 }, { 1400, 1900, OUTSIDE } },
        { { 200, -100, OUTSIDE }, { 1400, -100, OUTSIDE }, { 1400, 2100, 1 }, { 200, 2100, 0 } },
    };
    ck_drawn(solution, node, MUSLIN_STAGE_FINISHED, finished, 3);
    ck_drawn(solution, node, MUSLIN_STAGE_RAW, cut, 3);
    struct muslin_outline rows[3];
    struct muslin_outline_corner corners[12];
    size_t count = 0;
    size_t given = 0;
    ck_ok(muslin_solution_outlines(solution, node, MUSLIN_STAGE_RAW, 0, rows, sizeof rows[0], 3, corners,
                                   sizeof corners[0], 12, &count, &given, NULL));
    ck_assert_int_eq(rows[0].region, MUSLIN_SIDE_LEFT);
    ck_assert_int_eq(rows[1].region, MUSLIN_SIDE_TOP);
    ck_assert_int_eq(rows[0].fabric, s.white);
    ck_assert_int_eq(rows[0].node, node);
    ck_assert_int_eq(rows[2].fabric, s.blue);
    muslin_solution_free(solution);
    end_sewing(&s);
}
END_TEST

/* The other corner: right 400 and bottom 300. */
START_TEST(the_other_mitre)
{
    struct sewn s;
    begin_sewing(&s);
    const muslin_len widths[] = { 0, 400, 0, 300 };
    muslin_id node = set_in_of(&s, piece_of(&s, 1000, 2000), widths);
    struct muslin_solution *solution = solved_with_seam(&s, node, 100, 0);
    const struct corner finished[][4] = {
        { { 1400, 0, OUTSIDE }, { 1400, 2300, OUTSIDE }, { 1000, 2300, 0 }, { 1000, 300, 2 } },
        { { 0, 0, OUTSIDE }, { 1400, 0, 2 }, { 1000, 300, 1 }, { 0, 300, OUTSIDE } },
        { { 0, 300, 1 }, { 1000, 300, 0 }, { 1000, 2300, OUTSIDE }, { 0, 2300, OUTSIDE } },
    };
    const struct corner cut[][4] = {
        { { 1500, -200, OUTSIDE }, { 1500, 2400, OUTSIDE }, { 900, 2400, 0 }, { 900, 250, 2 } },
        { { -100, -100, OUTSIDE }, { 1700, -100, 2 }, { 1033, 400, 1 }, { -100, 400, OUTSIDE } },
        { { -100, 200, 1 }, { 1100, 200, 0 }, { 1100, 2400, OUTSIDE }, { -100, 2400, OUTSIDE } },
    };
    ck_drawn(solution, node, MUSLIN_STAGE_FINISHED, finished, 3);
    ck_drawn(solution, node, MUSLIN_STAGE_RAW, cut, 3);
    muslin_solution_free(solution);
    end_sewing(&s);
}
END_TEST

/* Half a tick of take-up goes to the left and below; an edge without allowance is cut where it is finished. */
START_TEST(square_ends_are_cut_like_any_edge)
{
    struct sewn s;
    begin_sewing(&s);
    const muslin_len widths[] = { 300, 0, 0, 0 };
    muslin_id node = set_in_of(&s, piece_of(&s, 1000, 2000), widths);
    struct muslin_solution *solution = solved_with_seam(&s, node, 100, 1);
    const struct corner cut[][4] = {
        { { -101, -101, OUTSIDE }, { 400, -101, 0 }, { 400, 2100, OUTSIDE }, { -101, 2100, OUTSIDE } },
        { { 199, -101, OUTSIDE }, { 1400, -101, OUTSIDE }, { 1400, 2100, OUTSIDE }, { 199, 2100, 0 } },
    };
    ck_drawn(solution, node, MUSLIN_STAGE_RAW, cut, 2);
    muslin_solution_free(solution);
    solution = solved_with_seam(&s, node, 0, 3);
    const struct corner bare[][4] = {
        { { 0, 0, OUTSIDE }, { 300, 0, 0 }, { 300, 2000, OUTSIDE }, { 0, 2000, OUTSIDE } },
        { { 300, 0, OUTSIDE }, { 1300, 0, OUTSIDE }, { 1300, 2000, OUTSIDE }, { 300, 2000, 0 } },
    };
    ck_drawn(solution, node, MUSLIN_STAGE_RAW, bare, 2);
    muslin_solution_free(solution);
    end_sewing(&s);
}
END_TEST

/* With equal strips all round, the cut outlines are those of muslin_frame_outline(), and their long edges what
 * muslin_border_plan() cuts, up to the ticks that each of them rounds. */
START_TEST(a_mitred_border_is_cut_like_a_frame)
{
    struct sewn s;
    begin_sewing(&s);
    const muslin_len widths[] = { WHOLE_IN(4), WHOLE_IN(4), WHOLE_IN(4), WHOLE_IN(4) };
    muslin_id node = set_in_of(&s, piece_of(&s, WHOLE_IN(38), IN(49, 1, 2)), widths);
    struct muslin_frame_spec spec = MUSLIN_FRAME_SPEC_INIT;
    struct muslin_rounding_spec rounding = MUSLIN_ROUNDING_SPEC_INIT;
    struct muslin_frame_corner frame[16];
    struct muslin_border_spec border_spec = MUSLIN_BORDER_SPEC_INIT;
    struct muslin_border border = { .size = (uint32_t)sizeof border };
    size_t count = 0;
    spec.opening_width = WHOLE_IN(38);
    spec.opening_height = IN(49, 1, 2);
    spec.frame_width = WHOLE_IN(4);
    rounding.grid = 1;
    rounding.direction = MUSLIN_DIRECTION_NEAREST;
    ck_ok(muslin_frame_outline(&spec, &rounding, frame, sizeof frame[0], 16, &count, NULL));
    border_spec.unfinished_width = IN(38, 1, 2);
    border_spec.unfinished_length = WHOLE_IN(50);
    border_spec.finished_border = WHOLE_IN(4);
    border_spec.style = MUSLIN_BORDER_STYLE_MITRED;
    ck_ok(muslin_border_plan(&border_spec, &border, NULL));
    struct muslin_solution *solution = solved(s.quilt, node);
    struct muslin_outline rows[5];
    struct muslin_outline_corner corners[20];
    size_t given = 0;
    ck_ok(muslin_solution_outlines(solution, node, MUSLIN_STAGE_RAW, 0, rows, sizeof rows[0], 5, corners,
                                   sizeof corners[0], 20, &count, &given, NULL));
    const struct muslin_outline_corner *bottom = &corners[rows[3].first_corner];
    const struct muslin_outline_corner *left = &corners[rows[0].first_corner];
    for (int i = 0; i < 4; i++) { /* of the frame's top, from its outer edge inwards; and of its side, seen from
                                     there */
        ck_assert_int_le(llabs(bottom[i].x - bottom[0].x - frame[i].x), 1);
        ck_assert_int_eq(bottom[i].y - bottom[0].y, frame[i].y);
        const struct muslin_outline_corner *side = &left[(4 - i) % 4];
        ck_assert_int_le(llabs(side->y - left[0].y - frame[8 + i].x), 1);
        ck_assert_int_eq(side->x - left[0].x, frame[8 + i].y);
    }
    ck_assert_int_le(llabs(bottom[1].x - bottom[0].x - border.top_cut_length), 1);
    ck_assert_int_le(llabs(left[3].y - left[0].y - border.side_cut_length), 1);
    muslin_solution_free(solution);
    end_sewing(&s);
}
END_TEST

Suite *solution_round_suite(void)
{
    Suite *suite = suite_create("solution_round");
    TCase *sizes = tcase_create("sizes");
    tcase_add_test(sizes, four_rectangles_round_a_square);
    tcase_add_test(sizes, unequal_arms_meet_too);
    tcase_add_test(sizes, a_wrong_pinwheel_is_as_large_as_its_largest_row);
    tcase_add_test(sizes, seams_of_the_arms_of_a_pinwheel_add_up);
    tcase_add_test(sizes, what_holds_something_rounded_is_not_exact);
    tcase_add_test(sizes, an_attic_window);
    tcase_add_test(sizes, strips_on_any_sides);
    tcase_add_test(sizes, a_mitred_border_is_as_large_as_planned);
    tcase_add_test(sizes, sizes_out_of_range_are_told_by_their_node);
    suite_add_tcase(suite, sizes);
    TCase *against = tcase_create("against");
    tcase_add_test(against, log_cabins_have_the_logs_that_rounds_names);
    tcase_add_test(against, butted_borders_are_as_planned);
    tcase_add_test(against, a_border_with_cornerstones_is_a_surround);
    tcase_add_test(against, a_round_of_half_squares);
    tcase_add_test(against, sashed_settings_have_the_pieces_that_setting_counts);
    tcase_add_test(against, three_by_three_blocks_with_sashes);
    tcase_add_test(against, sashes_are_cut_as_setting_cuts_them);
    suite_add_tcase(suite, against);
    TCase *misfits = tcase_create("misfits");
    tcase_add_test(misfits, a_wrong_arm_is_a_misfit);
    tcase_add_test(misfits, a_wrong_centre_is_two_misfits);
    tcase_add_test(misfits, allowances_of_a_pinwheel_meet_too);
    tcase_add_test(misfits, allowances_of_mitred_strips);
    tcase_add_test(misfits, pieces_lie_along_the_edges);
    suite_add_tcase(suite, misfits);
    TCase *drawn = tcase_create("drawn");
    tcase_add_test(drawn, a_pinwheel_is_drawn_round_its_centre);
    tcase_add_test(drawn, a_wrong_pinwheel_is_drawn_from_its_corners);
    tcase_add_test(drawn, mitred_strips_are_drawn_finished_and_as_cut);
    tcase_add_test(drawn, the_other_mitre);
    tcase_add_test(drawn, square_ends_are_cut_like_any_edge);
    tcase_add_test(drawn, a_mitred_border_is_cut_like_a_frame);
    suite_add_tcase(suite, drawn);
    return suite;
}
