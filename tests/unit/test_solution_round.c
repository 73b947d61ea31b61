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
    struct muslin_patch_spec spec = MUSLIN_PATCH_SPEC_INIT;
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

/* ---- pinwheels -------------------------------------------------------------------------------------------------- */

static muslin_id pinwheel_of(struct sewn *s, muslin_id centre, muslin_id top, muslin_id right, muslin_id bottom,
                             muslin_id left)
{
    const struct muslin_pinwheel_spec spec = { sizeof spec, 0, centre, top, right, bottom, left };
    muslin_id id = 0;
    ck_ok(muslin_quilt_pinwheel(s->quilt, &spec, &id, NULL));
    return id;
}

/* Example: four 2 x 4 in rectangles round a 2 in square make 6 in */
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
    muslin_id centre = join_of(s.quilt, MUSLIN_ACROSS, two, 2);
    muslin_id left = join_of(s.quilt, MUSLIN_DOWN, three, 3);
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

/* ---- strips with mitred corners --------------------------------------------------------------------------------- */

/* Strips of these widths in the order left, right, top, bottom; 0: none. */
static muslin_id set_in_of(struct sewn *s, muslin_id centre, const muslin_len *widths)
{
    struct muslin_set_in_spec spec = MUSLIN_SET_IN_SPEC_INIT;
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

/* Example: a 6 in square with 2 in strips at left and bottom makes 8 in */
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
    spec.style = MUSLIN_BORDER_MITRED;
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
    struct muslin_solve_spec spec = MUSLIN_SOLVE_SPEC_INIT;
    struct muslin_solution *solution = NULL;
    begin_sewing(&s);
    muslin_id square = piece_of(&s, WHOLE_IN(6), WHOLE_IN(6));
    struct muslin_set_in_spec set_in = MUSLIN_SET_IN_SPEC_INIT;
    muslin_id node = 0;
    set_in.centre = square;
    set_in.top_width = s.two;
    set_in.top_fabric = s.white;
    ck_ok(muslin_quilt_set_in(s.quilt, &set_in, &node, NULL));
    struct muslin_value_spec value = { sizeof value, 0, s.two, 0 };
    ck_status(muslin_solution_create(s.quilt, node, &spec, &value, sizeof value, 1, &solution, &problem),
              MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_BORDER_WIDTH);
    ck_assert_int_eq(problem.at, muslin_id_number(node));
    value.value = MUSLIN_SIZE_MAX;
    ck_status(muslin_solution_create(s.quilt, node, &spec, &value, sizeof value, 1, &solution, &problem),
              MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_FINISHED);
    ck_assert_int_eq(problem.value, MUSLIN_SIZE_MAX + WHOLE_IN(6));
    value.value = MUSLIN_SIZE_MAX - WHOLE_IN(6); /* the widest that is no more than a size */
    ck_ok(muslin_solution_create(s.quilt, node, &spec, &value, sizeof value, 1, &solution, NULL));
    muslin_solution_free(solution);
    muslin_id large = piece_of(&s, MUSLIN_SIZE_MAX, 1);
    node = pinwheel_of(&s, square, large, square, square, square);
    ck_status(muslin_solution_create(s.quilt, node, &spec, NULL, 0, 0, &solution, &problem), MUSLIN_ERR_RANGE);
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

/* The quilt's name for a side of a log cabin. */
static int32_t side_named(int32_t side)
{
    const int32_t sides[] = { 0, MUSLIN_SIDE_TOP, MUSLIN_SIDE_RIGHT, MUSLIN_SIDE_BOTTOM, MUSLIN_SIDE_LEFT };
    return sides[side];
}

/* Every log of a block, and the block after each, against muslin_logcabin_logs(). */
static void ck_logcabin(const struct muslin_logcabin_spec *spec)
{
    struct sewn s;
    struct muslin_log rows[20];
    struct muslin_log_spec logs[20];
    size_t count = 0;
    begin_sewing(&s);
    ck_ok(muslin_logcabin_logs(spec, NULL, 0, rows, sizeof rows[0], 20, &count, NULL));
    muslin_id centre = piece_of(&s, spec->centre_width, spec->centre_height);
    muslin_id made[21] = { centre };
    for (size_t i = 0; i < count; i++) {
        const struct muslin_log_spec log = MUSLIN_LOG_SPEC_INIT;
        logs[i] = log;
        logs[i].fabric = rows[i].half == MUSLIN_LOG_FIRST ? s.white : s.blue;
        logs[i].width = fixed_of(s.quilt, spec->log_width);
        logs[i].side = side_named(rows[i].side);
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
    for (spec.order = MUSLIN_LOG_ROUND; spec.order <= MUSLIN_LOG_QUARTER; spec.order++)
        for (spec.start = MUSLIN_LOG_TOP; spec.start <= MUSLIN_LOG_LEFT; spec.start++)
            for (spec.turn = MUSLIN_LOG_CLOCKWISE; spec.turn <= MUSLIN_LOG_ANTICLOCKWISE; spec.turn++)
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
    struct muslin_log_spec logs[4];
    for (size_t i = 0; i < 4; i++) {
        logs[i] = (struct muslin_log_spec){ sizeof logs[i], 0, s.white, fixed_of(s.quilt, WHOLE_IN(4)), sides[i], 0 };
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
    ck_butted(MUSLIN_BORDER_SIDES_FIRST, sides_first);
    ck_butted(MUSLIN_BORDER_TOP_FIRST, top_first);
}
END_TEST

/* Example: 38 1/2 x 50 in unfinished, 4 in border with cornerstones: cut 4 1/2 in, two of 50, two of 38 1/2 in */
START_TEST(a_border_with_cornerstones_is_a_surround)
{
    struct sewn s;
    begin_sewing(&s);
    muslin_id four = fixed_of(s.quilt, WHOLE_IN(4));
    muslin_id top = piece_of(&s, WHOLE_IN(38), IN(49, 1, 2));
    muslin_id side = patch_of(s.quilt, s.white, four, extent_of(s.quilt, top, MUSLIN_DOWN));
    muslin_id level = patch_of(s.quilt, s.white, extent_of(s.quilt, top, MUSLIN_ACROSS), four);
    muslin_id corner = patch_of(s.quilt, s.blue, four, four);
    const struct muslin_surround_spec spec = { sizeof spec, 0, top, side, side, level, level, corner, corner, corner,
                                               corner };
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
    struct muslin_sashed sashed = { .size = (uint32_t)sizeof sashed };
    begin_sewing(&s);
    ck_ok(muslin_setting_sashed(plan, &sashed, NULL));
    muslin_id sash = fixed_of(s.quilt, plan->sash_width);
    muslin_id block = piece_of(&s, plan->block_width, plan->block_height);
    int cornerstones = (plan->flags & MUSLIN_SASHED_CORNERSTONES) != 0;
    struct muslin_quilt_sashed_spec spec = { sizeof spec, 0, plan->columns, plan->rows, sash, s.white,
                                             cornerstones ? s.blue : 0, (plan->flags & MUSLIN_SASHED_FRAME) != 0, 0 };
    muslin_id top = sashed_of(&s, &spec, block);
    struct muslin_solution *solution = solved(s.quilt, top);
    struct muslin_node_size size = size_of(solution, top);
    ck_finished(&size, sashed.finished_width, sashed.finished_length);
    ck_assert_int_eq(size.unfinished_width, sashed.unfinished_width);
    ck_assert_int_eq(size.patches,
                     sashed.blocks + sashed.vertical_sashes + sashed.horizontal_sashes + sashed.cornerstones);
    ck_pieces(solution, block, sashed.blocks, sashed.block_unfinished_width, sashed.block_unfinished_height);
    muslin_id upright = patch_of(s.quilt, s.white, sash, extent_of(s.quilt, block, MUSLIN_DOWN));
    ck_pieces(solution, upright, sashed.vertical_sashes, sashed.vertical_cut_width, sashed.vertical_cut_length);
    ck_pieces(solution, patch_of(s.quilt, s.blue, sash, sash), sashed.cornerstones, sashed.cornerstone_cut_width,
              sashed.cornerstone_cut_height);
    if (cornerstones)
        ck_pieces(solution, patch_of(s.quilt, s.white, extent_of(s.quilt, block, MUSLIN_ACROSS), sash),
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

/* Example: 3 x 3 blocks of 12 in with 2 in sashes and a frame finish 44 in */
START_TEST(three_by_three_blocks_with_sashes)
{
    struct sewn s;
    begin_sewing(&s);
    muslin_id block = piece_of(&s, WHOLE_IN(12), WHOLE_IN(12));
    struct muslin_quilt_sashed_spec spec = { sizeof spec, 0, 3, 3, s.two, s.white, 0, 1, 0 };
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
    plan.flags = MUSLIN_SASHED_FRAME;
    ck_ok(muslin_setting_sashed_pieces(&plan, rows, sizeof rows[0], 3, &count, NULL));
    ck_assert_uint_eq(count, 2);
    begin_sewing(&s);
    muslin_id block = piece_of(&s, WHOLE_IN(8), WHOLE_IN(8));
    struct muslin_quilt_sashed_spec spec = { sizeof spec, 0, 2, 3, s.two, s.white, 0, 1, 0 };
    muslin_id top = sashed_of(&s, &spec, block);
    muslin_id five[7];
    ck_ok(muslin_quilt_children(s.quilt, top, five, 7, &count, NULL));
    struct muslin_solution *solution = solved(s.quilt, top);
    muslin_id upright = patch_of(s.quilt, s.white, s.two, extent_of(s.quilt, block, MUSLIN_DOWN));
    ck_pieces(solution, upright, rows[0].pieces, rows[0].cut_width, rows[0].cut_length);
    ck_pieces(solution, five[0], rows[1].pieces, rows[1].cut_length, rows[1].cut_width);
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
    tcase_add_test(sizes, an_attic_window);
    tcase_add_test(sizes, strips_on_any_sides);
    tcase_add_test(sizes, a_mitred_border_is_as_large_as_planned);
    tcase_add_test(sizes, sizes_out_of_range_are_told_by_their_node);
    suite_add_tcase(suite, sizes);
    TCase *against = tcase_create("against");
    tcase_add_test(against, log_cabins_have_the_logs_that_rounds_names);
    tcase_add_test(against, butted_borders_are_as_planned);
    tcase_add_test(against, a_border_with_cornerstones_is_a_surround);
    tcase_add_test(against, sashed_settings_have_the_pieces_that_setting_counts);
    tcase_add_test(against, three_by_three_blocks_with_sashes);
    tcase_add_test(against, sashes_are_cut_as_setting_cuts_them);
    suite_add_tcase(suite, against);
    return suite;
}
