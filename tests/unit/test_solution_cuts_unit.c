/* test_solution_cuts_unit.c - what units, shapes, mitred strips, setting triangles and 60 degree pieces are cut from.
 *
 * SPDX-License-Identifier: MIT
 *
 * Sizes and counts of recipes are unit.h's, setting.h's and geometry's; how many patches a unit has of each region is
 * told by its drawing. */
#include "test_solution_cuts.h"

static muslin_id unit_of(struct sewn *sewn, int32_t kind, int32_t method, int32_t hand, const muslin_len *size,
                         const muslin_id *fabrics, size_t n)
{
    struct muslin_quilt_unit_spec spec = MUSLIN_QUILT_UNIT_SPEC_INIT;
    muslin_id id = 0;
    spec.kind = kind;
    spec.method = method;
    spec.hand = hand;
    spec.width = fixed_of(sewn->quilt, size[0]);
    spec.height = size[1] == 0 ? 0 : fixed_of(sewn->quilt, size[1]);
    spec.corner = size[2] == 0 ? 0 : fixed_of(sewn->quilt, size[2]);
    ck_ok(muslin_quilt_unit(sewn->quilt, &spec, fabrics, n, &id, NULL));
    return id;
}

/* ---- recipes ---------------------------------------------------------------------------------------------------- */

/* Sizes that suit each kind. */
static const muslin_len *sizes_for(int32_t kind)
{
    static const muslin_len plain[3] = { WHOLE_IN(6), 0, 0 };
    static const muslin_len rectangle[3] = { WHOLE_IN(6), WHOLE_IN(3), 0 };
    static const muslin_len cornered[3] = { WHOLE_IN(4), WHOLE_IN(6), WHOLE_IN(1) };
    if (kind == MUSLIN_UNIT_SNOWBALL)
        return cornered;
    return kind == MUSLIN_UNIT_HALF_RECTANGLE ? rectangle : plain;
}

static int fills_a_rectangle(int32_t kind)
{
    return (kind >= MUSLIN_UNIT_HALF_SQUARE && kind <= MUSLIN_UNIT_HALF_RECTANGLE) || kind == MUSLIN_UNIT_OCTAGON ||
           kind == MUSLIN_UNIT_EIGHT_POINTED_STAR || kind == MUSLIN_UNIT_KALEIDOSCOPE;
}

/* Finished patches of each region, 1 to 3, as drawn. */
static void patches_drawn(const struct muslin_unit_spec *spec, int64_t *patches)
{
    static struct muslin_unit_corner corners[200];
    size_t count = 0;
    int32_t last = 0;
    ck_ok(muslin_unit_outlines(spec, 1, corners, sizeof corners[0], COUNT_OF(corners), &count, NULL));
    for (size_t i = 0; i < count; i++) {
        if (corners[i].stage != MUSLIN_STAGE_FINISHED || corners[i].patch == last)
            continue;
        last = corners[i].patch;
        patches[corners[i].region - 1]++;
    }
}

/* One row of the list for a piece of the recipe. Rectangles of no direction that stay whole have the longer side as
 * their width. */
static const struct muslin_solution_cut *row_for(const struct listed *listed, const struct muslin_unit_piece *piece,
                                                 muslin_id fabric)
{
    int lies = piece->shape == MUSLIN_CUT_SHAPE_RECTANGLE && piece->again == MUSLIN_CUT_AGAIN_NO &&
               piece->cut_width < piece->cut_height;
    const struct muslin_solution_cut *found = NULL;
    for (size_t i = 0; i < listed->cut_count; i++) {
        const struct muslin_solution_cut *cut = &listed->cuts[i];
        if (cut->fabric != fabric || cut->region != piece->region || cut->shape != piece->shape ||
            cut->cut_width != (lies ? piece->cut_height : piece->cut_width) ||
            cut->cut_height != (lies ? piece->cut_width : piece->cut_height) || cut->again != piece->again)
            continue;
        ck_assert_ptr_null(found);
        found = cut;
    }
    ck_assert_ptr_nonnull(found);
    return found;
}

static void ck_recipe(struct sewn *sewn, const muslin_id *fabrics, int32_t kind, int32_t method,
                      const struct muslin_solution_spec *solve)
{
    static struct listed listed;
    struct muslin_unit_spec spec = MUSLIN_UNIT_SPEC_INIT;
    struct muslin_unit_piece pieces[6];
    const muslin_len *size = sizes_for(kind);
    int64_t patches[3] = { 0, 0, 0 };
    size_t count = 0;
    spec.finished_width = size[0];
    spec.finished_height = size[1];
    spec.corner = size[2];
    spec.kind = kind;
    spec.method = method;
    spec.units = solve->tops;
    spec.tip = solve->tip;
    spec.grid = solve->grid;
    spec.tolerance = solve->grid_tolerance;
    spec.policy = solve->policy;
    spec.trim_room = solve->trim_room;
    spec.allowance = IN(0, 1, 4) - solve->tops;
    spec.take_up = 64 * (solve->tops - 1);
    ck_ok(muslin_unit_pieces(&spec, pieces, sizeof pieces[0], 6, &count, NULL));
    patches_drawn(&spec, patches);
    size_t regions = patches[2] > 0 ? 3 : 2;
    struct muslin_solution_value_spec seam[2] = { MUSLIN_SOLUTION_VALUE_SPEC_INIT, MUSLIN_SOLUTION_VALUE_SPEC_INIT };
    ck_ok(muslin_quilt_seam(sewn->quilt, &seam[0].id, &seam[1].id, NULL));
    seam[0].value = spec.allowance;
    seam[1].value = spec.take_up;
    ck_ok(muslin_solution_create(sewn->quilt, unit_of(sewn, kind, method, 1, size, fabrics, regions), solve, seam,
                                 sizeof seam[0], 2, NULL, &listed.solution, NULL));
    list_all(&listed);
    ck_assert_uint_eq(listed.cut_count, count);
    for (size_t i = 0; i < count; i++) {
        const struct muslin_solution_cut *cut = row_for(&listed, &pieces[i], fabrics[pieces[i].region - 1]);
        ck_assert_int_eq(cut->source, MUSLIN_CUT_SOURCE_UNIT);
        ck_counts(cut, pieces[i].total, cut->pieces, cut->spare);
        ck_assert_int_eq(cut->grain, pieces[i].grain);
        ck_assert_int_eq(cut->pitch, pieces[i].pitch);
        ck_assert_int_eq(cut->wide_edge, pieces[i].wide_edge);
        ck_assert_int_eq(cut->narrow_edge, pieces[i].narrow_edge);
        ck_assert_int_eq(cut->angle, pieces[i].angle);
        ck_assert_int_eq(cut->surplus_width + cut->surplus_height,
                         pieces[i].surplus_width + pieces[i].surplus_height);
        ck_assert_int_ge(cut->spare, 0);
        patches[pieces[i].region - 1] -= (cut->pieces - cut->spare) / solve->tops;
        ck_assert_int_eq((cut->pieces - cut->spare) % solve->tops, 0);
    }
    for (size_t i = 0; i < regions; i++)
        ck_assert_int_eq(patches[i], 0);
    end_list(&listed);
}

START_TEST(every_recipe_comes_into_the_list)
{
    struct sewn sewn;
    int recipes = 0;
    begin_sewing(&sewn);
    const muslin_id fabrics[3] = { sewn.blue, sewn.white, fabric_of(sewn.quilt, "red") };
    for (int64_t i = 0; i < muslin_unit_recipe_count(); i++) {
        int32_t kind = 0;
        int32_t method = 0;
        ck_ok(muslin_unit_recipe_at(i, &kind, &method, NULL));
        if (!fills_a_rectangle(kind))
            continue;
        struct muslin_solution_spec solve = MUSLIN_SOLUTION_SPEC_INIT;
        recipes++;
        for (solve.tops = 1; solve.tops < 10; solve.tops++) {
            solve.tip = solve.tops % 2 ? MUSLIN_TIP_SHARP : MUSLIN_TIP_BLUNT;
            solve.grid = solve.tops % 4 == 3 ? IN(0, 1, 16) : 1;
            solve.grid_tolerance = solve.grid / 3;
            solve.policy = MUSLIN_ALLOWANCE_POLICY_EXACT;
            solve.trim_room = 0;
            ck_recipe(&sewn, fabrics, kind, method, &solve);
            solve.policy = MUSLIN_ALLOWANCE_POLICY_OVERSIZE;
            solve.trim_room = IN(0, 1, 8);
            ck_recipe(&sewn, fabrics, kind, method, &solve);
        }
    }
    ck_assert_int_gt(recipes, 15);
    end_sewing(&sewn);
}
END_TEST

/* Trade: flying geese four at a time, finished 4 x 2 in: one square 5 1/4 in, four of 2 7/8 in (Beverly's and A. Line's
 * tables agree). A star block takes four geese, one each way, a centre cut 4 1/2 in and four corners cut 2 1/2 in. */
START_TEST(star_blocks_share_the_recipes_of_their_geese)
{
    static struct listed listed;
    struct sewn sewn;
    begin_sewing(&sewn);
    const muslin_len size[3] = { WHOLE_IN(4), 0, 0 };
    const muslin_id colours[] = { sewn.white, sewn.blue };
    muslin_id geese = unit_of(&sewn, MUSLIN_UNIT_FLYING_GEESE, MUSLIN_UNIT_METHOD_FOUR_AT_A_TIME, 1, size, colours, 2);
    muslin_id corner = patch_of(sewn.quilt, sewn.white, sewn.two, sewn.two);
    muslin_id centre = patch_of(sewn.quilt, sewn.blue, fixed_of(sewn.quilt, WHOLE_IN(4)),
                                fixed_of(sewn.quilt, WHOLE_IN(4)));
    const muslin_id cells[] = { corner, geese, corner, turn_of(sewn.quilt, geese, 3), centre,
                                turn_of(sewn.quilt, geese, 1), corner, turn_of(sewn.quilt, geese, 2), corner };
    muslin_id block = 0;
    ck_ok(muslin_quilt_grid(sewn.quilt, 3, 3, cells, 9, &block, NULL));
    list_of(&listed, sewn.quilt, repeat_of(sewn.quilt, block, 3, 3));
    ck_assert_uint_eq(listed.cut_count, 4);
    ck_counts(cut_sized(&listed, MUSLIN_CUT_SOURCE_UNIT, sewn.white, IN(5, 1, 4), IN(5, 1, 4)), 9, 36, 0);
    ck_counts(cut_sized(&listed, MUSLIN_CUT_SOURCE_UNIT, sewn.blue, IN(2, 7, 8), IN(2, 7, 8)), 36, 72, 0);
    ck_counts(cut_sized(&listed, MUSLIN_CUT_SOURCE_PATCH, sewn.blue, IN(4, 1, 2), IN(4, 1, 2)), 9, 9, 0);
    ck_counts(cut_sized(&listed, MUSLIN_CUT_SOURCE_PATCH, sewn.white, IN(2, 1, 2), IN(2, 1, 2)), 36, 36, 0);
    ck_turns(cut_sized(&listed, MUSLIN_CUT_SOURCE_UNIT, sewn.white, IN(5, 1, 4), IN(5, 1, 4)), 0, 0, 0, 0, 36);
    end_list(&listed);
    end_sewing(&sewn);
}
END_TEST

/* Three half-squares of one node and four of another, equal in value: seven units, two at a time, take four squares of
 * each fabric. With the fabrics the other way round, or another size, they are other units. */
START_TEST(units_alike_share_their_recipes)
{
    static struct listed listed;
    struct sewn sewn;
    begin_sewing(&sewn);
    struct muslin_quilt_unit_spec spec = MUSLIN_QUILT_UNIT_SPEC_INIT;
    const muslin_id colours[] = { sewn.blue, sewn.white };
    const muslin_id swapped[] = { sewn.white, sewn.blue };
    const muslin_id blues[] = { sewn.blue, sewn.blue };
    muslin_id units[5];
    for (size_t i = 0; i < 5; i++) {
        const muslin_id *fabrics = i == 2 ? swapped : i == 3 ? blues : colours;
        spec.width = measure_of(sewn.quilt, "half", WHOLE_IN(i == 4 ? 4 : 3));
        ck_ok(muslin_quilt_unit(sewn.quilt, &spec, fabrics, 2, &units[i], NULL));
    }
    const muslin_id row[] = { units[0], units[1], units[0], units[1], units[1], mirror_of(sewn.quilt, units[0]),
                              turn_of(sewn.quilt, units[1], 2), units[2], units[3], units[4] };
    list_of(&listed, sewn.quilt, join_of(sewn.quilt, MUSLIN_AXIS_ACROSS, row, 10));
    /* squares cut alike for the same region are one row, whichever unit they are for */
    const struct { muslin_id fabric; muslin_len cut; int32_t region; int64_t count; int64_t spare; muslin_id nodes[3]; }
        rows[] = { { sewn.blue, IN(4, 7, 8), 1, 1, 1, { units[4] } },
                   { sewn.blue, IN(3, 7, 8), 1, 4 + 1, 1 + 1, { units[0], units[1], units[3] } },
                   { sewn.blue, IN(3, 7, 8), 2, 1 + 1, 1 + 1, { units[2], units[3] } },
                   { sewn.white, IN(4, 7, 8), 2, 1, 1, { units[4] } },
                   { sewn.white, IN(3, 7, 8), 1, 1, 1, { units[2] } },
                   { sewn.white, IN(3, 7, 8), 2, 4, 1, { units[0], units[1] } } };
    ck_assert_uint_eq(listed.cut_count, COUNT_OF(rows));
    for (size_t i = 0; i < COUNT_OF(rows); i++) {
        const struct muslin_solution_cut *cut = &listed.cuts[i];
        muslin_id ids[3] = { 0 };
        size_t count = 0;
        ck_assert_int_eq(cut->fabric, rows[i].fabric);
        ck_assert_int_eq(cut->cut_width, rows[i].cut);
        ck_assert_int_eq(cut->region, rows[i].region);
        ck_counts(cut, rows[i].count, 2 * rows[i].count, rows[i].spare);
        ck_ok(muslin_solution_cut_nodes(listed.solution, (int64_t)i, ids, 3, &count, NULL));
        ck_assert_mem_eq(ids, rows[i].nodes, sizeof ids);
    }
    end_list(&listed);
    end_sewing(&sewn);
}
END_TEST

START_TEST(units_of_another_size_are_other_units)
{
    static struct listed listed;
    static const muslin_len sizes[][3] = { { WHOLE_IN(4), WHOLE_IN(6), WHOLE_IN(1) },
                                           { WHOLE_IN(4), WHOLE_IN(7), WHOLE_IN(1) },
                                           { WHOLE_IN(5), WHOLE_IN(6), WHOLE_IN(1) },
                                           { WHOLE_IN(4), WHOLE_IN(6), WHOLE_IN(2) } };
    struct sewn sewn;
    begin_sewing(&sewn);
    const muslin_id colours[] = { sewn.blue, sewn.white };
    muslin_id row[5];
    row[4] = unit_of(&sewn, MUSLIN_UNIT_HALF_SQUARE, MUSLIN_UNIT_METHOD_PIECES, 1, sizes_for(MUSLIN_UNIT_HALF_SQUARE),
                     colours, 2);
    for (size_t i = 0; i < 4; i++)
        row[i] = unit_of(&sewn, MUSLIN_UNIT_SNOWBALL, MUSLIN_UNIT_METHOD_FLIPPED_CORNERS, 1, sizes[i], colours, 2);
    list_of(&listed, sewn.quilt, join_of(sewn.quilt, MUSLIN_AXIS_ACROSS, row, 5));
    ck_counts(cut_sized(&listed, MUSLIN_CUT_SOURCE_UNIT, sewn.blue, IN(6, 7, 8), IN(6, 7, 8)), 1, 2, 1);
    ck_counts(cut_sized(&listed, MUSLIN_CUT_SOURCE_UNIT, sewn.blue, IN(6, 1, 2), IN(4, 1, 2)), 2, 2, 0);
    ck_counts(cut_sized(&listed, MUSLIN_CUT_SOURCE_UNIT, sewn.blue, IN(7, 1, 2), IN(4, 1, 2)), 1, 1, 0);
    ck_counts(cut_sized(&listed, MUSLIN_CUT_SOURCE_UNIT, sewn.blue, IN(6, 1, 2), IN(5, 1, 2)), 1, 1, 0);
    ck_counts(cut_sized(&listed, MUSLIN_CUT_SOURCE_UNIT, sewn.white, IN(1, 1, 2), IN(1, 1, 2)), 12, 12, 0);
    ck_counts(cut_sized(&listed, MUSLIN_CUT_SOURCE_UNIT, sewn.white, IN(2, 1, 2), IN(2, 1, 2)), 4, 4, 0);
    ck_assert_uint_eq(listed.cut_count, 5 + 2);
    end_list(&listed);
    end_sewing(&sewn);
}
END_TEST

/* Half-rectangles: three of the first hand, two mirror images of it, one made of the second hand: three of each hand,
 * two rectangles of each fabric for each. */
START_TEST(mirror_images_count_for_the_other_hand)
{
    static struct listed listed;
    struct sewn sewn;
    begin_sewing(&sewn);
    const muslin_len size[3] = { WHOLE_IN(3), WHOLE_IN(6), 0 };
    const muslin_id colours[] = { sewn.blue, sewn.white };
    muslin_id first = unit_of(&sewn, MUSLIN_UNIT_HALF_RECTANGLE, MUSLIN_UNIT_METHOD_PIECES, 1, size, colours, 2);
    muslin_id second = unit_of(&sewn, MUSLIN_UNIT_HALF_RECTANGLE, MUSLIN_UNIT_METHOD_PIECES, 2, size, colours, 2);
    muslin_id mirrored = mirror_of(sewn.quilt, first);
    const muslin_id row[] = { first, first, turn_of(sewn.quilt, first, 2), mirrored,
                              turn_of(sewn.quilt, mirrored, 2), second };
    list_of(&listed, sewn.quilt, join_of(sewn.quilt, MUSLIN_AXIS_ACROSS, row, 6));
    ck_assert_uint_eq(listed.cut_count, 4);
    for (size_t i = 0; i < 4; i++) {
        const struct muslin_solution_cut *cut = &listed.cuts[i];
        ck_assert_int_eq(cut->hand, i % 2 == 0 ? 1 : 2);
        ck_assert_int_eq(cut->fabric, i < 2 ? sewn.blue : sewn.white);
        ck_counts(cut, 2, 4, 1);
        ck_assert_int_lt(cut->cut_width, cut->cut_height); /* as it lies: turned, its cut would lean the other way */
        ck_assert_int_eq(cut->nodes, i % 2 == 0 ? 1 : 2);
    }
    end_list(&listed);
    /* of the second hand alone */
    list_of(&listed, sewn.quilt, repeat_of(sewn.quilt, second, 2, 2));
    ck_assert_uint_eq(listed.cut_count, 2);
    ck_assert_int_eq(listed.cuts[0].hand, 2);
    ck_counts(&listed.cuts[0], 2, 4, 0);
    end_list(&listed);
    end_sewing(&sewn);
}
END_TEST

/* Rectangles that are cut again stand as the unit does: 45 in high they pass 40 in cloth, and 45 in wide so. Halves of
 * a hexagon 24 in high have a long edge of 4 x 24 / sqrt 3 = 55.4 in, triangles one of 27.7 in. */
START_TEST(long_pieces_of_units_and_rows_are_told)
{
    static struct listed listed;
    struct sewn sewn;
    begin_sewing(&sewn);
    const muslin_len sizes[2][3] = { { WHOLE_IN(3), WHOLE_IN(45), 0 }, { WHOLE_IN(45), WHOLE_IN(3), 0 } };
    const muslin_id colours[] = { sewn.blue, sewn.white };
    for (size_t i = 0; i < 2; i++) {
        list_of(&listed, sewn.quilt,
                unit_of(&sewn, MUSLIN_UNIT_HALF_RECTANGLE, MUSLIN_UNIT_METHOD_PIECES, 1, sizes[i], colours, 2));
        ck_assert_uint_eq(listed.cut_count, 2);
        ck_assert_uint_eq(listed.cuts[0].warnings, MUSLIN_WARN_LONGER_THAN_WIDTH);
        ck_assert_uint_eq(listed.cuts[1].warnings, MUSLIN_WARN_LONGER_THAN_WIDTH);
        end_list(&listed);
    }
    struct muslin_quilt_sixty_spec rows = MUSLIN_QUILT_SIXTY_SPEC_INIT;
    struct muslin_quilt_sixty_piece_spec pieces[] = { MUSLIN_QUILT_SIXTY_PIECE_SPEC_INIT,
                                                      MUSLIN_QUILT_SIXTY_PIECE_SPEC_INIT };
    muslin_id id = 0;
    rows.cells = 4;
    rows.height = fixed_of(sewn.quilt, WHOLE_IN(24));
    rows.end_fabric = sewn.white;
    pieces[0].fabric = pieces[1].fabric = sewn.blue;
    pieces[0].cells = 3;
    pieces[1].cells = 1;
    ck_ok(muslin_quilt_sixty(sewn.quilt, &rows, pieces, sizeof pieces[0], 2, &id, NULL));
    list_of(&listed, sewn.quilt, id);
    ck_assert_uint_eq(listed.cut_count, 3); /* both half-triangles lean alike */
    for (size_t i = 0; i < listed.cut_count; i++) {
        int is_long = listed.cuts[i].shape == MUSLIN_CUT_SHAPE_TRAPEZOIDS;
        ck_assert_uint_eq(listed.cuts[i].warnings, is_long ? MUSLIN_WARN_LONGER_THAN_WIDTH : 0);
    }
    end_list(&listed);
    end_sewing(&sewn);
}
END_TEST

/* unit.h: four split quarters of one hand, two at a time, take 2 recipes, and 4 of the other hand are spare. */
START_TEST(split_quarters_make_both_hands)
{
    static struct listed listed;
    struct sewn sewn;
    begin_sewing(&sewn);
    const muslin_id colours[] = { sewn.blue, sewn.white, fabric_of(sewn.quilt, "red") };
    const muslin_len *size = sizes_for(MUSLIN_UNIT_SPLIT_QUARTER);
    muslin_id unit = unit_of(&sewn, MUSLIN_UNIT_SPLIT_QUARTER, MUSLIN_UNIT_METHOD_TWO_AT_A_TIME, 1, size, colours, 3);
    list_of(&listed, sewn.quilt, repeat_of(sewn.quilt, unit, 2, 2));
    ck_counts(&listed.cuts[0], 4, 8, 4); /* halves: two squares a recipe */
    ck_counts(&listed.cuts[1], 2, 8, 4);
    end_list(&listed);
    const muslin_id both[] = { unit, mirror_of(sewn.quilt, unit) };
    muslin_id pair = join_of(sewn.quilt, MUSLIN_AXIS_ACROSS, both, 2);
    list_of(&listed, sewn.quilt, repeat_of(sewn.quilt, pair, 2, 2));
    ck_counts(&listed.cuts[0], 4, 8, 0);
    ck_counts(&listed.cuts[2], 2, 8, 0);
    end_list(&listed);
    end_sewing(&sewn);
}
END_TEST

/* What corners are sewn to stays whole and upright, so its print is counted; corners are scattered. */
START_TEST(prints_of_whole_rectangles_are_counted)
{
    static struct listed listed;
    struct sewn sewn;
    begin_sewing(&sewn);
    muslin_id flowers = printed_fabric(sewn.quilt, "flowers", MUSLIN_PRINT_ONE_WAY);
    const muslin_id printed[] = { flowers, flowers };
    const muslin_id plain[] = { sewn.blue, sewn.white };
    const muslin_len *size = sizes_for(MUSLIN_UNIT_SNOWBALL);
    muslin_id unit = unit_of(&sewn, MUSLIN_UNIT_SNOWBALL, MUSLIN_UNIT_METHOD_FLIPPED_CORNERS, 1, size, printed, 2);
    const muslin_id row[] = { unit, turn_of(sewn.quilt, unit, 1), mirror_of(sewn.quilt, unit),
                              turn_of(sewn.quilt, unit, 3) };
    list_of(&listed, sewn.quilt, join_of(sewn.quilt, MUSLIN_AXIS_ACROSS, row, 3));
    const struct muslin_solution_cut *cut =
        cut_sized(&listed, MUSLIN_CUT_SOURCE_UNIT, flowers, IN(4, 1, 2), IN(6, 1, 2));
    ck_turns(cut, 2, 1, 0, 0, 0);
    ck_assert_uint_eq(cut->warnings, MUSLIN_WARN_PRINT_TURNED);
    cut = cut_sized(&listed, MUSLIN_CUT_SOURCE_UNIT, flowers, IN(1, 1, 2), IN(1, 1, 2));
    ck_turns(cut, 0, 0, 0, 0, 12);
    ck_assert_uint_eq(cut->warnings, MUSLIN_WARN_PRINT_TURNED);
    end_list(&listed);
    list_of(&listed, sewn.quilt, unit);
    ck_assert_uint_eq(cut_sized(&listed, MUSLIN_CUT_SOURCE_UNIT, flowers, IN(4, 1, 2), IN(6, 1, 2))->warnings, 0);
    end_list(&listed);
    unit = unit_of(&sewn, MUSLIN_UNIT_SNOWBALL, MUSLIN_UNIT_METHOD_FLIPPED_CORNERS, 1, size, plain, 2);
    list_of(&listed, sewn.quilt, unit);
    cut = cut_sized(&listed, MUSLIN_CUT_SOURCE_UNIT, sewn.blue, IN(6, 1, 2), IN(4, 1, 2));
    ck_turns(cut, 0, 0, 0, 1, 0);
    ck_assert_uint_eq(cut->warnings, 0);
    end_list(&listed);
    unit =
        unit_of(&sewn, MUSLIN_UNIT_OCTAGON, MUSLIN_UNIT_METHOD_PIECES, 1, sizes_for(MUSLIN_UNIT_OCTAGON), printed, 2);
    list_of(&listed, sewn.quilt, turn_of(sewn.quilt, unit, 2));
    ck_turns(cut_sized(&listed, MUSLIN_CUT_SOURCE_UNIT, flowers, IN(6, 1, 2), IN(6, 1, 2)), 0, 0, 1, 0, 0);
    end_list(&listed);
    end_sewing(&sewn);
}
END_TEST

/* ---- shapes ----------------------------------------------------------------------------------------------------- */

/* A square of 4 in whose upper right corner, 2 in along both edges, is another piece. */
static muslin_id cornered_square(struct sewn *sewn, const muslin_id *fabrics)
{
    static const int32_t places[12][3] = { { MUSLIN_SHAPE_OUTLINE, 0, 0 }, { MUSLIN_SHAPE_OUTLINE, 4, 0 },
                                           { MUSLIN_SHAPE_OUTLINE, 4, 4 }, { MUSLIN_SHAPE_OUTLINE, 0, 4 },
                                           { 0, 0, 0 }, { 0, 4, 0 }, { 0, 4, 2 }, { 0, 2, 4 }, { 0, 0, 4 },
                                           { 1, 4, 2 }, { 1, 4, 4 }, { 1, 2, 4 } };
    struct muslin_corner_spec corners[12];
    muslin_id id = 0;
    for (size_t i = 0; i < 12; i++) {
        const struct muslin_corner_spec corner = MUSLIN_CORNER_SPEC_INIT;
        corners[i] = corner;
        corners[i].piece = places[i][0];
        corners[i].x = WHOLE_IN(places[i][1]);
        corners[i].y = WHOLE_IN(places[i][2]);
    }
    ck_ok(muslin_quilt_shape(sewn->quilt, corners, sizeof corners[0], 12, fabrics, 2, 0, 0, &id, NULL));
    return id;
}

/* The triangle's raw legs are 2 in + (2 + sqrt 2) / 4 in, 23193.7 ticks. */
START_TEST(templates_are_cut_from_the_rectangle_round_them)
{
    static struct listed listed;
    struct sewn sewn;
    begin_sewing(&sewn);
    muslin_id flowers = printed_fabric(sewn.quilt, "flowers", MUSLIN_PRINT_TWO_WAY);
    const muslin_id colours[] = { sewn.blue, flowers };
    muslin_id shape = cornered_square(&sewn, colours);
    const muslin_id row[] = { shape, turn_of(sewn.quilt, shape, 1), shape, mirror_of(sewn.quilt, shape) };
    list_of(&listed, sewn.quilt, join_of(sewn.quilt, MUSLIN_AXIS_ACROSS, row, 4));
    ck_assert_uint_eq(listed.cut_count, 4);
    for (size_t i = 0; i < 4; i++) {
        const struct muslin_solution_cut *cut = &listed.cuts[i];
        ck_assert_int_eq(cut->source, MUSLIN_CUT_SOURCE_TEMPLATE);
        ck_assert_int_eq(cut->fabric, i < 2 ? sewn.blue : flowers);
        ck_assert_int_eq(cut->region, i < 2 ? 1 : 2);
        ck_assert_int_eq(cut->hand, i % 2 == 0 ? 1 : 2);
        ck_assert_int_eq(cut->cut_width, i < 2 ? IN(4, 1, 2) : 23194);
        ck_assert_int_eq(cut->cut_height, i < 2 ? IN(4, 1, 2) : 23194);
        ck_counts(cut, i % 2 == 0 ? 3 : 1, i % 2 == 0 ? 3 : 1, 0);
        ck_assert_uint_eq(cut->warnings, i == 2 ? MUSLIN_WARN_PRINT_TURNED : 0);
    }
    ck_turns(&listed.cuts[2], 2, 1, 0, 0, 0);
    end_list(&listed);
    /* another shape of the same sizes has templates of its own */
    const muslin_id blues[] = { sewn.blue, sewn.white };
    const muslin_id two[] = { shape, cornered_square(&sewn, blues) };
    list_of(&listed, sewn.quilt, join_of(sewn.quilt, MUSLIN_AXIS_ACROSS, two, 2));
    ck_assert_uint_eq(listed.cut_count, 4);
    end_list(&listed);
    end_sewing(&sewn);
}
END_TEST

/* ---- mitred strips ---------------------------------------------------------------------------------------------- */

static muslin_id set_in_of(struct sewn *sewn, muslin_id centre, const muslin_len *widths, const muslin_id *fabrics)
{
    struct muslin_quilt_set_in_spec spec = MUSLIN_QUILT_SET_IN_SPEC_INIT;
    muslin_id id = 0;
    spec.centre = centre;
    spec.left_width = widths[0] == 0 ? 0 : fixed_of(sewn->quilt, widths[0]);
    spec.right_width = widths[1] == 0 ? 0 : fixed_of(sewn->quilt, widths[1]);
    spec.top_width = widths[2] == 0 ? 0 : fixed_of(sewn->quilt, widths[2]);
    spec.bottom_width = widths[3] == 0 ? 0 : fixed_of(sewn->quilt, widths[3]);
    spec.left_fabric = fabrics[0];
    spec.right_fabric = fabrics[1];
    spec.top_fabric = fabrics[2];
    spec.bottom_fabric = fabrics[3];
    ck_ok(muslin_quilt_set_in(sewn->quilt, &spec, &id, NULL));
    return id;
}

static void ck_within_a_tick(muslin_len a, muslin_len b)
{
    ck_assert_int_le(a - b, 1);
    ck_assert_int_ge(a - b, -1);
}

START_TEST(mitred_strips_are_as_long_as_a_mitred_border_says)
{
    static struct listed listed;
    struct sewn sewn;
    struct muslin_border_spec border = MUSLIN_BORDER_SPEC_INIT;
    struct muslin_border plan = { .size = sizeof plan };
    begin_sewing(&sewn);
    muslin_id flowers = printed_fabric(sewn.quilt, "flowers", MUSLIN_PRINT_ONE_WAY);
    muslin_id centre = patch_of(sewn.quilt, sewn.white, fixed_of(sewn.quilt, WHOLE_IN(6)),
                                fixed_of(sewn.quilt, WHOLE_IN(9)));
    const muslin_len widths[] = { WHOLE_IN(2), WHOLE_IN(2), WHOLE_IN(2), WHOLE_IN(2) };
    const muslin_id fabrics[] = { flowers, sewn.blue, sewn.blue, flowers };
    border.unfinished_width = IN(6, 1, 2);
    border.unfinished_length = IN(9, 1, 2);
    border.finished_border = WHOLE_IN(2);
    border.style = MUSLIN_BORDER_STYLE_MITRED;
    ck_ok(muslin_border_plan(&border, &plan, NULL));
    muslin_id framed = set_in_of(&sewn, centre, widths, fabrics);
    const muslin_id both[] = { framed, mirror_of(sewn.quilt, framed) };
    list_of(&listed, sewn.quilt, join_of(sewn.quilt, MUSLIN_AXIS_ACROSS, both, 2));
    int sides = 0;
    int tops = 0;
    for (size_t i = 0; i < listed.cut_count; i++) {
        const struct muslin_solution_cut *cut = &listed.cuts[i];
        if (cut->source != MUSLIN_CUT_SOURCE_MITRED)
            continue;
        /* flowers lie as they lie: the strip on the left is higher than wide; without direction the longer side is the
         * width. Blue on the right is 3 in longer than at the top, flowers at the bottom are wider than high */
        int upright = cut->cut_height > cut->cut_width;
        int side = upright || (cut->fabric == sewn.blue && cut->cut_width > plan.top_cut_length + 2);
        sides += side;
        tops += !side;
        ck_within_a_tick(upright ? cut->cut_height : cut->cut_width, side ? plan.side_cut_length : plan.top_cut_length);
        ck_assert_int_eq(upright ? cut->cut_width : cut->cut_height, plan.cut_width);
        ck_assert_int_eq(cut->region, 0);
        ck_counts(cut, 2, 2, 0);
        ck_assert_int_eq(cut->hand, 1);
        ck_assert_uint_eq(cut->warnings, 0);
    }
    ck_assert_int_eq(sides, 2);
    ck_assert_int_eq(tops, 2);
    end_list(&listed);
    end_sewing(&sewn);
}
END_TEST

/* A square frame of one fabric: four equal strips, twice. In another one only the left strip is mitred at one end. */
START_TEST(strips_mitred_alike_are_one_row)
{
    static struct listed listed;
    struct sewn sewn;
    begin_sewing(&sewn);
    muslin_id six = fixed_of(sewn.quilt, WHOLE_IN(6));
    muslin_id centre = patch_of(sewn.quilt, sewn.white, six, six);
    const muslin_len widths[] = { WHOLE_IN(2), WHOLE_IN(2), WHOLE_IN(2), WHOLE_IN(2) };
    const muslin_id fabrics[] = { sewn.blue, sewn.blue, sewn.blue, sewn.blue };
    muslin_id frame = set_in_of(&sewn, centre, widths, fabrics);
    const muslin_id two[] = { frame, mirror_of(sewn.quilt, frame) };
    list_of(&listed, sewn.quilt, join_of(sewn.quilt, MUSLIN_AXIS_ACROSS, two, 2));
    ck_assert_uint_eq(listed.cut_count, 2);
    ck_assert_int_eq(listed.cuts[0].source, MUSLIN_CUT_SOURCE_MITRED);
    /* 6 in inside, 2 in and (1 + sqrt 2) / 4 in, 4905.68 ticks, at each end */
    ck_assert_int_eq(listed.cuts[0].cut_width, WHOLE_IN(10) + 2 * 4906);
    ck_assert_int_eq(listed.cuts[0].cut_height, IN(2, 1, 2));
    ck_assert_int_eq(listed.cuts[0].region, 0);
    ck_assert_int_eq(listed.cuts[0].hand, 1);
    ck_assert_int_eq(listed.cuts[0].nodes, 1);
    ck_counts(&listed.cuts[0], 8, 8, 0);
    end_list(&listed);
    /* strips above and below, none at the right: the one on the left has two mitres, they have one each */
    const muslin_len three[] = { WHOLE_IN(2), 0, WHOLE_IN(2), WHOLE_IN(2) };
    const muslin_id on_three[] = { sewn.blue, 0, sewn.blue, sewn.blue };
    muslin_id window = set_in_of(&sewn, centre, three, on_three);
    const muslin_id more[] = { window, mirror_of(sewn.quilt, window), window };
    list_of(&listed, sewn.quilt, join_of(sewn.quilt, MUSLIN_AXIS_ACROSS, more, 3));
    ck_assert_uint_eq(listed.cut_count, 6);
    ck_assert_int_eq(listed.cuts[0].cut_width, WHOLE_IN(10) + 2 * 4906);
    ck_assert_int_eq(listed.cuts[0].region, 0);
    ck_counts(&listed.cuts[0], 3, 3, 0);
    const int32_t regions[] = { MUSLIN_SIDE_TOP, MUSLIN_SIDE_TOP, MUSLIN_SIDE_BOTTOM, MUSLIN_SIDE_BOTTOM };
    for (size_t i = 0; i < 4; i++) {
        const struct muslin_solution_cut *cut = &listed.cuts[1 + i];
        ck_within_a_tick(cut->cut_width, WHOLE_IN(8) + 4906 + 2032);
        ck_assert_int_eq(cut->region, regions[i]);
        ck_assert_int_eq(cut->hand, i % 2 == 0 ? 1 : 2);
        ck_counts(cut, i % 2 == 0 ? 2 : 1, i % 2 == 0 ? 2 : 1, 0);
    }
    end_list(&listed);
    /* one strip alone has no mitre at all */
    const muslin_len left[] = { WHOLE_IN(2), 0, 0, 0 };
    const muslin_len bottom[] = { 0, 0, 0, WHOLE_IN(2) };
    const muslin_id on_left[] = { sewn.blue, 0, 0, 0 };
    const muslin_id at_bottom[] = { 0, 0, 0, sewn.blue };
    const muslin_id apart[] = { set_in_of(&sewn, centre, left, on_left), set_in_of(&sewn, centre, bottom, at_bottom) };
    list_of(&listed, sewn.quilt, join_of(sewn.quilt, MUSLIN_AXIS_ACROSS, apart, 2));
    ck_assert_uint_eq(listed.cut_count, 2);
    ck_assert_int_eq(listed.cuts[0].cut_width, IN(6, 1, 2));
    ck_assert_int_eq(listed.cuts[0].nodes, 2);
    ck_counts(&listed.cuts[0], 2, 2, 0);
    end_list(&listed);
    end_sewing(&sewn);
}
END_TEST

/* Attic window: at one end a mitre, 2 + (1 + sqrt 2) / 4 in, at the other the allowance. */
START_TEST(an_attic_window_has_strips_with_one_mitre)
{
    static struct listed listed;
    struct sewn sewn;
    begin_sewing(&sewn);
    muslin_id six = fixed_of(sewn.quilt, WHOLE_IN(6));
    const muslin_len widths[] = { WHOLE_IN(2), 0, 0, WHOLE_IN(2) };
    const muslin_id fabrics[] = { sewn.blue, 0, 0, sewn.blue };
    list_of(&listed, sewn.quilt, set_in_of(&sewn, patch_of(sewn.quilt, sewn.white, six, six), widths, fabrics));
    ck_assert_uint_eq(listed.cut_count, 3);
    for (size_t i = 0; i < 2; i++) {
        ck_within_a_tick(listed.cuts[i].cut_width, IN(8, 1, 2) + 2874); /* sqrt 2 / 4 in: 2873.7 ticks */
        ck_assert_int_eq(listed.cuts[i].cut_height, IN(2, 1, 2));
        ck_assert_int_eq(listed.cuts[i].region, i == 0 ? MUSLIN_SIDE_LEFT : MUSLIN_SIDE_BOTTOM);
    }
    end_list(&listed);
    end_sewing(&sewn);
}
END_TEST

/* ---- setting triangles ------------------------------------------------------------------------------------------ */

static muslin_id point_of(struct sewn *sewn, int64_t columns, int64_t rows, muslin_len block, muslin_id set_off)
{
    struct muslin_quilt_diagonal_spec spec = MUSLIN_QUILT_DIAGONAL_SPEC_INIT;
    muslin_id blocks[100];
    muslin_id id = 0;
    muslin_id side = fixed_of(sewn->quilt, block);
    size_t n = (size_t)(columns * rows + (columns - 1) * (rows - 1));
    for (size_t i = 0; i < n; i++)
        blocks[i] = patch_of(sewn->quilt, sewn->white, side, side);
    spec.columns = columns;
    spec.rows = rows;
    spec.side_fabric = sewn->blue;
    spec.corner_fabric = sewn->white;
    spec.set_off = set_off;
    ck_ok(muslin_quilt_diagonal(sewn->quilt, &spec, blocks, n, &id, NULL));
    return id;
}

/* setting.h: 4 x 4 blocks of 6 in, customary up to 1/8 in: 9 alternates, 12 side triangles from 3 squares cut 9 3/4 in,
 * 4 corners from 2 squares cut 5 1/8 in. */
START_TEST(setting_triangles_come_from_squares)
{
    static struct listed listed;
    struct sewn sewn;
    struct muslin_solution_spec solve = MUSLIN_SOLUTION_SPEC_INIT;
    begin_sewing(&sewn);
    solve.policy = MUSLIN_ALLOWANCE_POLICY_CUSTOMARY;
    list_with(&listed, sewn.quilt, point_of(&sewn, 4, 4, WHOLE_IN(6), 0), &solve);
    ck_assert_uint_eq(listed.cut_count, 3);
    ck_counts(cut_sized(&listed, MUSLIN_CUT_SOURCE_PATCH, sewn.white, IN(6, 1, 2), IN(6, 1, 2)), 25, 25, 0);
    const struct muslin_solution_cut *side =
        cut_sized(&listed, MUSLIN_CUT_SOURCE_SETTING, sewn.blue, IN(9, 3, 4), IN(9, 3, 4));
    ck_counts(side, 3, 12, 0);
    ck_turns(side, 0, 0, 0, 0, 12);
    ck_assert_int_eq(side->again, MUSLIN_CUT_AGAIN_TWICE);
    ck_assert_int_eq(side->grain, MUSLIN_GRAIN_LONG_EDGE);
    const struct muslin_solution_cut *corner =
        cut_sized(&listed, MUSLIN_CUT_SOURCE_SETTING, sewn.white, IN(5, 1, 8), IN(5, 1, 8));
    ck_counts(corner, 2, 4, 0);
    ck_assert_int_eq(corner->again, MUSLIN_CUT_AGAIN_ONCE);
    ck_assert_int_eq(corner->grain, MUSLIN_GRAIN_SHORT_EDGES);
    end_list(&listed);
    end_sewing(&sewn);
}
END_TEST

/* Against setting.h for every policy, with set-off; copies share their squares. */
/* One block above another and two side by side have two side triangles each: one square, cut twice, gives all four.
 * Three of the first and one of the second, eight; with a third of another size, whose square is its own. */
START_TEST(fields_share_squares_for_their_triangles)
{
    static struct listed listed;
    struct sewn sewn;
    struct muslin_solution_spec solve = MUSLIN_SOLUTION_SPEC_INIT;
    begin_sewing(&sewn);
    solve.policy = MUSLIN_ALLOWANCE_POLICY_CUSTOMARY;
    const muslin_id upright = point_of(&sewn, 1, 2, WHOLE_IN(6), 0);
    const muslin_id lying = point_of(&sewn, 2, 1, WHOLE_IN(6), 0);
    const muslin_id small = point_of(&sewn, 2, 1, WHOLE_IN(3), 0);
    const muslin_id all[] = { upright, lying, small, upright, upright };
    list_with(&listed, sewn.quilt, join_of(sewn.quilt, MUSLIN_AXIS_ACROSS, all, 2), &solve);
    const struct muslin_solution_cut *side =
        cut_sized(&listed, MUSLIN_CUT_SOURCE_SETTING, sewn.blue, IN(9, 3, 4), IN(9, 3, 4));
    ck_counts(side, 1, 4, 0);
    ck_assert_int_eq(side->nodes, 2);
    ck_assert_int_eq(side->first_node, upright);
    ck_counts(cut_sized(&listed, MUSLIN_CUT_SOURCE_SETTING, sewn.white, IN(5, 1, 8), IN(5, 1, 8)), 4, 8, 0);
    end_list(&listed);
    solve.tops = 3;
    list_with(&listed, sewn.quilt, join_of(sewn.quilt, MUSLIN_AXIS_ACROSS, all, 5), &solve);
    /* 3 tops x (3 + 1) fields x 2 */
    ck_counts(cut_sized(&listed, MUSLIN_CUT_SOURCE_SETTING, sewn.blue, IN(9, 3, 4), IN(9, 3, 4)), 6, 24, 0);
    /* 3 x 2 from a square of 3 sqrt 2 + 1 1/4 = 5.49, 5 1/2 in */
    ck_counts(cut_sized(&listed, MUSLIN_CUT_SOURCE_SETTING, sewn.blue, IN(5, 1, 2), IN(5, 1, 2)), 2, 8, 2);
    end_list(&listed);
    end_sewing(&sewn);
}
END_TEST

START_TEST(setting_triangles_are_those_of_the_setting)
{
    static struct listed listed;
    struct sewn sewn;
    begin_sewing(&sewn);
    muslin_id quarter = fixed_of(sewn.quilt, IN(0, 1, 4));
    for (int32_t policy = MUSLIN_ALLOWANCE_POLICY_EXACT; policy <= MUSLIN_ALLOWANCE_POLICY_OVERSIZE; policy++) {
        for (int64_t columns = 1; columns <= 3; columns++) {
            struct muslin_solution_spec solve = MUSLIN_SOLUTION_SPEC_INIT;
            struct muslin_setting_point_spec spec = MUSLIN_SETTING_POINT_SPEC_INIT;
            struct muslin_rounding_spec rounding = MUSLIN_ROUNDING_SPEC_INIT;
            struct muslin_setting_point_plan point = { .size = sizeof point };
            solve.policy = spec.policy = policy;
            solve.trim_room = spec.trim_room = policy == MUSLIN_ALLOWANCE_POLICY_OVERSIZE ? IN(0, 1, 2) : 0;
            solve.grid = rounding.grid = IN(0, 1, 16);
            solve.tops = 3;
            rounding.direction = MUSLIN_DIRECTION_UP;
            spec.block = WHOLE_IN(5);
            spec.columns = columns;
            spec.rows = 2;
            spec.set_off = IN(0, 1, 4);
            ck_ok(muslin_setting_point(&spec, &rounding, &rounding, &point, NULL));
            list_with(&listed, sewn.quilt, point_of(&sewn, columns, 2, WHOLE_IN(5), quarter), &solve);
            const struct muslin_solution_cut *side =
                cut_sized(&listed, MUSLIN_CUT_SOURCE_SETTING, sewn.blue, point.side_square_cut, point.side_square_cut);
            int64_t needed = 3 * point.side_triangles;
            ck_counts(side, (needed + 3) / 4, (needed + 3) / 4 * 4, (needed + 3) / 4 * 4 - needed);
            ck_assert_int_eq(side->surplus_width, point.side_surplus);
            const struct muslin_solution_cut *corner = cut_sized(&listed, MUSLIN_CUT_SOURCE_SETTING, sewn.white,
                                                                 point.corner_square_cut, point.corner_square_cut);
            ck_counts(corner, 6, 12, 0);
            ck_assert_int_eq(corner->surplus_height, point.corner_surplus);
            end_list(&listed);
        }
    }
    list_of(&listed, sewn.quilt, point_of(&sewn, 1, 1, WHOLE_IN(5), 0)); /* one block has no side triangles */
    ck_assert_uint_eq(listed.cut_count, 2);
    end_list(&listed);
    end_sewing(&sewn);
}
END_TEST

/* A half-rectangle once upright, twice turned by a quarter, and so on, its mirror image so too: each copy has a blue
 * and a white triangle, of its own hand. */
START_TEST(copies_of_each_hand_are_cut_however_they_are_turned)
{
    static struct listed listed;
    static const muslin_len size[3] = { WHOLE_IN(6), WHOLE_IN(3), 0 };
    struct sewn sewn;
    muslin_id copies[40];
    size_t n = 0;
    begin_sewing(&sewn);
    const muslin_id colours[] = { sewn.blue, sewn.white };
    const muslin_id unit = unit_of(&sewn, MUSLIN_UNIT_HALF_RECTANGLE, MUSLIN_UNIT_METHOD_PIECES, 1, size, colours, 2);
    for (int mirrored = 0; mirrored <= 1; mirrored++)
        for (int turn = 0; turn < 4; turn++)
            for (int k = 0; k <= turn + 4 * mirrored; k++)
                ck_ok(muslin_quilt_lay(sewn.quilt, unit, turn, mirrored, &copies[n++], NULL));
    ck_assert_uint_eq(n, 36);
    list_of(&listed, sewn.quilt, join_of(sewn.quilt, MUSLIN_AXIS_DOWN, copies, n));
    int64_t needed[2] = { 0, 0 };
    for (size_t i = 0; i < listed.cut_count; i++) {
        const struct muslin_solution_cut *cut = &listed.cuts[i];
        ck_assert_int_eq(cut->source, MUSLIN_CUT_SOURCE_UNIT);
        ck_assert_int_ge(cut->spare, 0);
        needed[cut->fabric == sewn.blue ? 0 : 1] += cut->pieces - cut->spare;
    }
    ck_assert_int_eq(needed[0], 36);
    ck_assert_int_eq(needed[1], 36);
    end_list(&listed);
    end_sewing(&sewn);
}
END_TEST

/* A unit that only lends its width is not cut, though it is like one that is. */
START_TEST(a_unit_that_is_only_measured_is_not_cut)
{
    static struct listed listed;
    struct sewn sewn;
    struct muslin_quilt_unit_spec spec = MUSLIN_QUILT_UNIT_SPEC_INIT;
    muslin_id nodes[2];
    begin_sewing(&sewn);
    const muslin_id colours[] = { sewn.blue, sewn.white };
    const muslin_id widths[] = { fixed_of(sewn.quilt, WHOLE_IN(2)), sewn.two };
    for (int i = 0; i < 2; i++) {
        spec.width = widths[i];
        ck_ok(muslin_quilt_unit(sewn.quilt, &spec, colours, 2, &nodes[i], NULL));
    }
    ck_assert_int_ne(nodes[0], nodes[1]);
    const muslin_id wide = extent_of(sewn.quilt, nodes[0], MUSLIN_AXIS_ACROSS);
    const muslin_id pair[] = { nodes[1], patch_of(sewn.quilt, sewn.blue, wide, sewn.two) };
    list_of(&listed, sewn.quilt, join_of(sewn.quilt, MUSLIN_AXIS_ACROSS, pair, 2));
    ck_assert_uint_eq(listed.cut_count, 3);
    for (size_t i = 0; i < listed.cut_count; i++) {
        ck_assert_int_ne(listed.cuts[i].first_node, nodes[0]);
        ck_assert_int_eq(listed.cuts[i].nodes, 1);
    }
    end_list(&listed);
    end_sewing(&sewn);
}
END_TEST

/* The customary addition is the solution's own: 6 in and 1 1/2 in. */
START_TEST(quarter_squares_have_the_addition_that_is_asked_for)
{
    static struct listed listed;
    static const muslin_len size[3] = { WHOLE_IN(6), 0, 0 };
    struct sewn sewn;
    struct muslin_solution_spec solve = MUSLIN_SOLUTION_SPEC_INIT;
    begin_sewing(&sewn);
    const muslin_id colours[] = { sewn.blue, sewn.white };
    solve.policy = MUSLIN_ALLOWANCE_POLICY_CUSTOMARY;
    solve.quarter_addition = IN(1, 1, 2);
    list_with(&listed, sewn.quilt,
              unit_of(&sewn, MUSLIN_UNIT_QUARTER_SQUARE, MUSLIN_UNIT_METHOD_PIECES, 1, size, colours, 2), &solve);
    ck_assert_uint_eq(listed.cut_count, 2);
    for (size_t i = 0; i < 2; i++) {
        ck_assert_int_eq(listed.cuts[i].cut_width, IN(7, 1, 2));
        ck_assert_int_eq(listed.cuts[i].cut_height, IN(7, 1, 2));
    }
    end_list(&listed);
    end_sewing(&sewn);
}
END_TEST

START_TEST(an_addition_too_small_for_setting_triangles_is_refused)
{
    struct sewn sewn;
    struct muslin_solution_spec solve = MUSLIN_SOLUTION_SPEC_INIT;
    struct muslin_problem problem = PROBLEM;
    struct muslin_solution *solution = NULL;
    begin_sewing(&sewn);
    muslin_id field = point_of(&sewn, 2, 2, WHOLE_IN(6), 0);
    solve.policy = MUSLIN_ALLOWANCE_POLICY_CUSTOMARY;
    solve.quarter_addition = WHOLE_IN(1);
    ck_status(muslin_solution_create(sewn.quilt, field, &solve, NULL, 0, 0, NULL, &solution,
                                     &problem), MUSLIN_ERR_CUSTOMARY);
    ck_assert_int_eq(problem.at, muslin_id_number(field));
    ck_assert_ptr_null(solution);
    end_sewing(&sewn);
}
END_TEST

/* ---- 60 degrees ------------------------------------------------------------------------------------------------- */

static muslin_id sixty_of(struct sewn *sewn, int64_t cells, int64_t rows, int32_t first, muslin_len height,
                          const struct muslin_quilt_sixty_piece_spec *pieces, size_t n)
{
    struct muslin_quilt_sixty_spec spec = MUSLIN_QUILT_SIXTY_SPEC_INIT;
    muslin_id id = 0;
    spec.cells = cells;
    spec.rows = rows;
    spec.first = first;
    spec.height = fixed_of(sewn->quilt, height);
    spec.end_fabric = sewn->white;
    ck_ok(muslin_quilt_sixty(sewn->quilt, &spec, pieces, sizeof pieces[0], n, &id, NULL));
    return id;
}

static struct muslin_quilt_sixty_piece_spec piece_of(muslin_id fabric, int64_t cells)
{
    struct muslin_quilt_sixty_piece_spec piece = MUSLIN_QUILT_SIXTY_PIECE_SPEC_INIT;
    piece.fabric = fabric;
    piece.cells = cells;
    return piece;
}

/* Triangles only. */
static muslin_id triangles_of(struct sewn *sewn, int64_t cells, int64_t rows, int32_t first, muslin_len height)
{
    struct muslin_quilt_sixty_piece_spec pieces[64];
    for (int64_t i = 0; i < cells * rows; i++)
        pieces[i] = piece_of(sewn->blue, 1);
    return sixty_of(sewn, cells, rows, first, height, pieces, (size_t)(cells * rows));
}

/* Two rows of six cells: blue triangle, blue diamond, blue half-hexagon; half-hexagon, white diamond, blue triangle.
 * Cut from strips as unit.h says. */
START_TEST(sixty_degree_pieces_are_cut_from_strips)
{
    static struct listed listed;
    static const int32_t kinds[] = { 0, MUSLIN_UNIT_TRIANGLE_60, MUSLIN_UNIT_DIAMOND_60, MUSLIN_UNIT_HALF_HEXAGON };
    struct sewn sewn;
    struct muslin_solution_spec solve = MUSLIN_SOLUTION_SPEC_INIT;
    begin_sewing(&sewn);
    const struct muslin_quilt_sixty_piece_spec pieces[] = { piece_of(sewn.blue, 1), piece_of(sewn.blue, 2),
                                                      piece_of(sewn.blue, 3), piece_of(sewn.blue, 3),
                                                      piece_of(sewn.white, 2), piece_of(sewn.blue, 1) };
    const int64_t blue[] = { 0, 2, 1, 2 };
    const int64_t white[] = { 0, 0, 1, 0 };
    muslin_id rows = sixty_of(&sewn, 6, 2, 1, WHOLE_IN(3), pieces, 6);
    solve.tops = 5;
    for (solve.tip = MUSLIN_TIP_SHARP; solve.tip <= MUSLIN_TIP_BLUNT; solve.tip++) {
        list_with(&listed, sewn.quilt, rows, &solve);
        for (int cells = 1; cells <= 3; cells++) {
            struct muslin_unit_spec spec = MUSLIN_UNIT_SPEC_INIT;
            struct muslin_unit_piece piece = { .size = sizeof piece };
            size_t count = 0;
            spec.kind = kinds[cells];
            spec.method = MUSLIN_UNIT_METHOD_STRIPS;
            spec.finished_height = WHOLE_IN(3);
            spec.tip = solve.tip;
            ck_ok(muslin_unit_pieces(&spec, &piece, sizeof piece, 1, &count, NULL));
            const struct muslin_solution_cut *cut =
                cut_sized(&listed, MUSLIN_CUT_SOURCE_SIXTY, sewn.blue, piece.cut_width, piece.cut_height);
            ck_counts(cut, 5 * blue[cells], 5 * blue[cells], 0);
            ck_assert_int_eq(cut->shape, piece.shape);
            ck_assert_int_eq(cut->pitch, piece.pitch);
            ck_assert_int_eq(cut->angle, 60);
            ck_turns(cut, 0, 0, 0, 0, 5 * blue[cells]);
            if (white[cells] != 0)
                ck_counts(cut_sized(&listed, MUSLIN_CUT_SOURCE_SIXTY, sewn.white, piece.cut_width, piece.cut_height), 5,
                          5, 0);
        }
        ck_assert_uint_eq(listed.cut_count, 3 + 1 + 2);
        end_list(&listed);
    }
    end_sewing(&sewn);
}
END_TEST

/* Half of 3 in triangles: need 3 / sqrt 3 + (1 + sqrt 3) / 4 = 2.415063 in by 3 + (3 + sqrt 3) / 4 = 4.183013 in, that
 * is 19629.6 by 33999.5 ticks; up to 1/8 in: 2 1/2 x 4 1/4 in. */
START_TEST(ends_of_rows_are_cut_in_pairs_from_rectangles)
{
    static struct listed listed;
    struct sewn sewn;
    begin_sewing(&sewn);
    list_of(&listed, sewn.quilt, triangles_of(&sewn, 5, 3, 1, WHOLE_IN(3)));
    for (int32_t hand = 1; hand <= 2; hand++) {
        const struct muslin_solution_cut *cut = &listed.cuts[hand];
        ck_assert_int_eq(cut->fabric, sewn.white);
        ck_assert_int_eq(cut->hand, hand);
        ck_assert_int_eq(cut->cut_width, IN(2, 1, 2));
        ck_assert_int_eq(cut->cut_height, IN(4, 1, 4));
        ck_assert_int_eq(cut->surplus_width, IN(2, 1, 2) - 19630);
        ck_assert_int_eq(cut->surplus_height, IN(4, 1, 4) - 34000);
        ck_assert_int_eq(cut->again, MUSLIN_CUT_AGAIN_ONCE);
        ck_assert_int_eq(cut->shape, MUSLIN_CUT_SHAPE_RECTANGLE);
        ck_counts(cut, 2, 4, 1); /* three of each hand */
    }
    end_list(&listed);
    /* one of each hand more, in other rows, are the ones to spare */
    const muslin_id both[] = { triangles_of(&sewn, 5, 3, 1, WHOLE_IN(3)), triangles_of(&sewn, 5, 1, 1, WHOLE_IN(3)) };
    list_of(&listed, sewn.quilt, join_of(sewn.quilt, MUSLIN_AXIS_DOWN, both, 2));
    ck_counts(&listed.cuts[1], 2, 4, 0);
    ck_counts(&listed.cuts[2], 2, 4, 0);
    ck_assert_int_eq(listed.cuts[2].nodes, 2);
    end_list(&listed);
    struct muslin_solution_spec solve = MUSLIN_SOLUTION_SPEC_INIT;
    solve.policy = MUSLIN_ALLOWANCE_POLICY_OVERSIZE;
    solve.trim_room = IN(0, 1, 4);
    list_with(&listed, sewn.quilt, triangles_of(&sewn, 5, 3, 1, WHOLE_IN(3)), &solve);
    ck_assert_int_eq(listed.cuts[1].cut_width, IN(2, 3, 4));
    ck_assert_int_eq(listed.cuts[1].cut_height, IN(4, 1, 2));
    end_list(&listed);
    solve.grid = WHOLE_IN(8); /* down to nothing is one step */
    solve.direction = MUSLIN_DIRECTION_DOWN;
    list_with(&listed, sewn.quilt, triangles_of(&sewn, 5, 3, 1, WHOLE_IN(3)), &solve);
    ck_assert_int_eq(listed.cuts[1].cut_width, WHOLE_IN(8));
    ck_assert_int_eq(listed.cuts[1].cut_height, WHOLE_IN(8));
    end_list(&listed);
    end_sewing(&sewn);
}
END_TEST

/* One row of four triangles, of which the first stands on its side: both ends are of the first hand, and of its mirror
 * image of the second, however it is turned. Each way of lying is there another number of times: 1 + 2 + 4 + 8 rows as
 * they are, 16 + 32 + 64 + 128 mirrored. */
START_TEST(ends_of_rows_change_hands_in_the_mirror)
{
    static struct listed listed;
    static muslin_id all[255];
    struct sewn sewn;
    size_t count = 0;
    begin_sewing(&sewn);
    const muslin_id row = triangles_of(&sewn, 4, 1, 1, WHOLE_IN(3));
    for (int32_t way = 0; way < 8; way++) {
        muslin_id laid = 0;
        ck_ok(muslin_quilt_lay(sewn.quilt, row, way % 4, way / 4, &laid, NULL));
        for (int32_t k = 0; k < 1 << way; k++)
            all[count++] = laid;
    }
    list_of(&listed, sewn.quilt, join_of(sewn.quilt, MUSLIN_AXIS_ACROSS, all, count));
    int64_t halves[3] = { 0 };
    for (size_t i = 0; i < listed.cut_count; i++)
        if (listed.cuts[i].again == MUSLIN_CUT_AGAIN_ONCE)
            halves[listed.cuts[i].hand] += listed.cuts[i].pieces - listed.cuts[i].spare;
    ck_assert_int_eq(halves[MUSLIN_HAND_FIRST], 2 * 15);
    ck_assert_int_eq(halves[MUSLIN_HAND_MIRRORED], 2 * 240);
    end_list(&listed);
    end_sewing(&sewn);
}
END_TEST

/* Which hand a right-angled triangle is of, by its drawing: cut from a rectangle along the line that rises to the right
 * it has its right angle at the upper left or at the lower right. */
static int32_t hand_drawn(const struct muslin_outline_corner *corners)
{
    for (int k = 0; k < 3; k++) {
        const struct muslin_outline_corner *here = &corners[k];
        const struct muslin_outline_corner *a = &corners[(k + 1) % 3];
        const struct muslin_outline_corner *b = &corners[(k + 2) % 3];
        if ((here->x == a->x && here->y == b->y) || (here->x == b->x && here->y == a->y)) {
            muslin_len x = here->x == a->x ? b->x : a->x;
            muslin_len y = here->x == a->x ? a->y : b->y;
            return (x > here->x) == (y > here->y) ? 2 : 1; /* lower left and upper right are of the second */
        }
    }
    return 0;
}

START_TEST(ends_of_rows_are_of_the_hand_that_is_drawn)
{
    static struct listed listed;
    static struct muslin_outline outlines[80];
    static struct muslin_outline_corner corners[400];
    struct sewn sewn;
    begin_sewing(&sewn);
    for (int64_t cells = 1; cells <= 4; cells++) {
        for (int64_t rows = 1; rows <= 3; rows++) {
            for (int32_t turn = 0; turn < 4; turn++) {
                muslin_id node = triangles_of(&sewn, cells, rows, turn % 2 + 1, WHOLE_IN(3));
                muslin_id top = turn < 2 ? node : mirror_of(sewn.quilt, node);
                int64_t needed[3] = { 0, 0, 0 };
                size_t count = 0;
                size_t given = 0;
                list_of(&listed, sewn.quilt, top);
                ck_ok(muslin_solution_outlines(listed.solution, top, MUSLIN_STAGE_FINISHED, 0, outlines,
                                               sizeof outlines[0], 80, corners, sizeof corners[0], 400, &count,
                                               &given, NULL));
                for (size_t i = 0; i < given; i++)
                    if (outlines[i].fabric == sewn.white)
                        needed[hand_drawn(&corners[outlines[i].first_corner])]++;
                ck_assert_int_eq(needed[0], 0);
                for (size_t i = 0; i < listed.cut_count; i++)
                    if (listed.cuts[i].fabric == sewn.white)
                        needed[listed.cuts[i].hand] -= listed.cuts[i].pieces - listed.cuts[i].spare;
                ck_assert_int_eq(needed[1], 0);
                ck_assert_int_eq(needed[2], 0);
                end_list(&listed);
            }
        }
    }
    end_sewing(&sewn);
}
END_TEST

START_TEST(rows_too_high_for_a_strip_are_refused)
{
    struct sewn sewn;
    struct muslin_solution_spec solve = MUSLIN_SOLUTION_SPEC_INIT;
    struct muslin_problem problem = PROBLEM;
    struct muslin_solution *solution = NULL;
    begin_sewing(&sewn);
    muslin_id node = triangles_of(&sewn, 1, 1, 1, MUSLIN_UNIT_SIZE_MAX + 1);
    ck_status(muslin_solution_create(sewn.quilt, node, &solve, NULL, 0, 0, NULL, &solution,
                                     &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.at, muslin_id_number(node));
    end_sewing(&sewn);
}
END_TEST

/* ---- memory ----------------------------------------------------------------------------------------------------- */

/* A top with something of everything. */
static muslin_id everything(struct sewn *sewn)
{
    const muslin_id colours[] = { sewn->blue, sewn->white };
    const muslin_len *six = sizes_for(MUSLIN_UNIT_HALF_SQUARE);
    const muslin_len widths[] = { WHOLE_IN(2), 0, WHOLE_IN(2), 0 };
    const muslin_id fabrics[] = { sewn->blue, 0, sewn->white, 0 };
    muslin_id blue = patch_of(sewn->quilt, sewn->blue, sewn->two, sewn->two);
    muslin_id white = patch_of(sewn->quilt, sewn->white, sewn->two, sewn->two);
    const muslin_id row[] = { blue, white, blue };
    muslin_id all[40];
    size_t n = 0;
    all[n++] = pieced_join(sewn->quilt, MUSLIN_AXIS_ACROSS, MUSLIN_STRIP_PIECING_ALWAYS, 0, row, 3);
    all[n++] = unit_of(sewn, MUSLIN_UNIT_HALF_SQUARE, MUSLIN_UNIT_METHOD_TWO_AT_A_TIME, 1, six, colours, 2);
    all[n++] = cornered_square(sewn, colours);
    all[n++] = set_in_of(sewn, blue, widths, fabrics);
    all[n++] = point_of(sewn, 2, 2, WHOLE_IN(3), 0);
    all[n++] = triangles_of(sewn, 3, 2, 1, WHOLE_IN(3));
    while (n < 40) {
        all[n] = patch_of(sewn->quilt, sewn->blue, fixed_of(sewn->quilt, WHOLE_IN(n)), sewn->two);
        n++;
    }
    return join_of(sewn->quilt, MUSLIN_AXIS_ACROSS, all, n);
}

/* From a strip, pieces take their pitch each, as high as the strip. */
static int64_t area_cut(const struct muslin_solution_cut *cut)
{
    muslin_len width = cut->pitch != 0 ? cut->pitch : cut->cut_width;
    return width * cut->cut_height * cut->count;
}

START_TEST(more_is_cut_than_is_seen)
{
    static struct listed listed;
    struct sewn sewn;
    struct muslin_solution_spec solve = MUSLIN_SOLUTION_SPEC_INIT;
    struct muslin_solution_total totals = { .size = sizeof totals };
    begin_sewing(&sewn);
    muslin_id top = everything(&sewn);
    for (solve.tops = 1; solve.tops <= 4; solve.tops++) {
        int64_t area = 0;
        list_with(&listed, sewn.quilt, top, &solve);
        ck_ok(muslin_solution_totals(listed.solution, &totals, NULL));
        ck_assert_int_eq(totals.cuts, (int64_t)listed.cut_count);
        for (size_t i = 0; i < listed.cut_count; i++)
            area += area_cut(&listed.cuts[i]);
        ck_assert_int_gt(2 * area, solve.tops * totals.patch_area);
        end_list(&listed);
    }
    end_sewing(&sewn);
}
END_TEST

START_TEST(every_allocation_may_fail)
{
    struct sewn sewn;
    begin_sewing(&sewn);
    muslin_id top = everything(&sewn);
    struct muslin_part_counts before = counts_of(sewn.quilt);
    size_t held = sewn.memory.blocks;
    struct muslin_solution_spec solve = MUSLIN_SOLUTION_SPEC_INIT;
    int failed = 1;
    for (size_t round = 1; failed; round++) {
        struct muslin_solution *solution = NULL;
        fail_at(&sewn, round);
        muslin_status status = muslin_solution_create(sewn.quilt, top, &solve, NULL, 0, 0, NULL, &solution, NULL);
        failed = sewn.memory.has_failed;
        ck_status(status, failed ? MUSLIN_ERR_NO_MEMORY : MUSLIN_OK);
        muslin_solution_free(solution);
        ck_assert_uint_eq(sewn.memory.blocks, held);
        ck_same_parts(sewn.quilt, &before);
    }
    fail_at(&sewn, 0);
    end_sewing(&sewn);
}
END_TEST

/* A half-square of 3 in: exact squares are (3 + 1/2 + 1/(2 sqrt 2)) = 3.8536 in; down to 1/4 in they are cut 3 3/4. */
START_TEST(what_a_recipe_warns_of_is_told_of_its_cuts)
{
    struct sewn sewn;
    begin_sewing(&sewn);
    struct muslin_quilt_unit_spec spec = MUSLIN_QUILT_UNIT_SPEC_INIT;
    const muslin_id fabrics[] = { sewn.blue, sewn.white };
    const struct {
        int32_t method;
        int32_t direction;
        uint32_t warnings;
    } cases[] = {
        { MUSLIN_UNIT_METHOD_TWO_AT_A_TIME, MUSLIN_DIRECTION_UP, 0 },
        { MUSLIN_UNIT_METHOD_TWO_AT_A_TIME, MUSLIN_DIRECTION_DOWN, MUSLIN_WARN_BELOW_EXACT },
        { MUSLIN_UNIT_METHOD_FOUR_ALL_ROUND, MUSLIN_DIRECTION_UP, MUSLIN_WARN_BIAS_EDGE },
        { MUSLIN_UNIT_METHOD_FOUR_ALL_ROUND, MUSLIN_DIRECTION_DOWN, MUSLIN_WARN_BIAS_EDGE | MUSLIN_WARN_BELOW_EXACT },
    };
    spec.width = fixed_of(sewn.quilt, WHOLE_IN(3));
    for (size_t i = 0; i < COUNT_OF(cases); i++) {
        struct muslin_solution_spec solve = MUSLIN_SOLUTION_SPEC_INIT;
        struct muslin_solution *solution = NULL;
        struct muslin_solution_total totals = { .size = (uint32_t)sizeof totals };
        struct muslin_solution_cut rows[2];
        size_t count = 0;
        muslin_id unit = 0;
        spec.method = cases[i].method;
        solve.direction = cases[i].direction;
        solve.grid = IN(0, 1, 4);
        ck_ok(muslin_quilt_unit(sewn.quilt, &spec, fabrics, 2, &unit, NULL));
        ck_ok(muslin_solution_create(sewn.quilt, unit, &solve, NULL, 0, 0, NULL, &solution, NULL));
        ck_ok(muslin_solution_cuts(solution, rows, sizeof rows[0], 2, &count, NULL));
        ck_ok(muslin_solution_totals(solution, &totals, NULL));
        ck_assert_uint_eq(count, 2);
        ck_assert_uint_eq(rows[0].warnings, cases[i].warnings);
        ck_assert_uint_eq(rows[1].warnings, cases[i].warnings);
        ck_assert_uint_eq(totals.warnings, cases[i].warnings);
        muslin_solution_free(solution);
    }
    end_sewing(&sewn);
}
END_TEST

/* Half-triangles of rows 3 1/8 in high ask for 3 1/8 / sqrt 3 + (1 + sqrt 3) / 4 = 2.487 by 3 1/8 + (3 + sqrt 3) / 4 =
 * 4.308 in: to the nearest eighth 2 1/2 by 4 1/4, which is too low. Rows 3 in high: 2.415 and 4.183, both too small. */
START_TEST(a_blank_too_small_in_one_direction_is_told)
{
    static struct listed listed;
    struct sewn sewn;
    begin_sewing(&sewn);
    struct muslin_solution_spec solve = MUSLIN_SOLUTION_SPEC_INIT;
    solve.direction = MUSLIN_DIRECTION_NEAREST;
    const muslin_len heights[] = { IN(3, 1, 8), WHOLE_IN(3) };
    const muslin_len widths[] = { IN(2, 1, 2), IN(2, 3, 8) };
    for (size_t i = 0; i < 2; i++) {
        list_with(&listed, sewn.quilt, triangles_of(&sewn, 4, 1, 1, heights[i]), &solve);
        const struct muslin_solution_cut *cut =
            cut_sized(&listed, MUSLIN_CUT_SOURCE_SIXTY, sewn.white, widths[i], i == 0 ? IN(4, 1, 4) : IN(4, 1, 8));
        ck_assert_uint_eq(cut->warnings, MUSLIN_WARN_BELOW_EXACT);
        ck_assert_int_lt(cut->surplus_height, 0);
        ck_assert_int_eq(cut->surplus_width < 0, i == 1);
        end_list(&listed);
    }
    end_sewing(&sewn);
}
END_TEST

Suite *solution_cuts_unit_suite(void)
{
    Suite *suite = suite_create("what a solved tree's units and fields are cut from");
    TCase *units = tcase_create("units");
    tcase_add_test(units, every_recipe_comes_into_the_list);
    tcase_add_test(units, star_blocks_share_the_recipes_of_their_geese);
    tcase_add_test(units, units_alike_share_their_recipes);
    tcase_add_test(units, units_of_another_size_are_other_units);
    tcase_add_test(units, mirror_images_count_for_the_other_hand);
    tcase_add_test(units, long_pieces_of_units_and_rows_are_told);
    tcase_add_test(units, split_quarters_make_both_hands);
    tcase_add_test(units, prints_of_whole_rectangles_are_counted);
    tcase_add_test(units, what_a_recipe_warns_of_is_told_of_its_cuts);
    suite_add_tcase(suite, units);
    TCase *others = tcase_create("others");
    tcase_add_test(others, templates_are_cut_from_the_rectangle_round_them);
    tcase_add_test(others, mitred_strips_are_as_long_as_a_mitred_border_says);
    tcase_add_test(others, strips_mitred_alike_are_one_row);
    tcase_add_test(others, an_attic_window_has_strips_with_one_mitre);
    tcase_add_test(others, setting_triangles_come_from_squares);
    tcase_add_test(others, fields_share_squares_for_their_triangles);
    tcase_add_test(others, setting_triangles_are_those_of_the_setting);
    tcase_add_test(others, copies_of_each_hand_are_cut_however_they_are_turned);
    tcase_add_test(others, a_unit_that_is_only_measured_is_not_cut);
    tcase_add_test(others, quarter_squares_have_the_addition_that_is_asked_for);
    tcase_add_test(others, an_addition_too_small_for_setting_triangles_is_refused);
    tcase_add_test(others, sixty_degree_pieces_are_cut_from_strips);
    tcase_add_test(others, ends_of_rows_change_hands_in_the_mirror);
    tcase_add_test(others, ends_of_rows_are_cut_in_pairs_from_rectangles);
    tcase_add_test(others, ends_of_rows_are_of_the_hand_that_is_drawn);
    tcase_add_test(others, a_blank_too_small_in_one_direction_is_told);
    tcase_add_test(others, rows_too_high_for_a_strip_are_refused);
    tcase_add_test(others, more_is_cut_than_is_seen);
    tcase_add_test(others, every_allocation_may_fail);
    suite_add_tcase(suite, others);
    return suite;
}
