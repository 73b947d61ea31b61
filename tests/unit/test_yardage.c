/* test_yardage.c - solved tops brought to what to buy, worked by hand.
 *
 * SPDX-License-Identifier: MIT */
#include "test_yardage.h"

/* ---- a top of three fabrics ------------------------------------------------------------------------------------- */

/* Twenty half-squares of 3 in in a row, ten strip-pieced rails of 6 in under them, and a border of 4 in above and
 * below, all 60 in wide. */
struct small_top {
    struct sewn s;
    muslin_id red;
    struct muslin_solution *solution;
};

static void begin_top(struct small_top *top)
{
    begin_sewing(&top->s);
    struct muslin_quilt *quilt = top->s.quilt;
    top->red = fabric_of(quilt, "red");
    const muslin_id fabrics[] = { top->s.blue, top->s.white };
    const muslin_id unit =
        yardage_unit(quilt, MUSLIN_UNIT_HALF_SQUARE, MUSLIN_UNIT_METHOD_TWO_AT_A_TIME, WHOLE_IN(3), fabrics, 2);
    const muslin_id blue = yardage_patch(quilt, top->s.blue, WHOLE_IN(6), WHOLE_IN(2));
    const muslin_id rail[] = { blue, yardage_patch(quilt, top->s.white, WHOLE_IN(6), WHOLE_IN(2)), blue };
    const muslin_id rails = pieced_join(quilt, MUSLIN_AXIS_DOWN, MUSLIN_STRIP_PIECING_ALWAYS, 0, rail, 3);
    const muslin_id border = yardage_patch(quilt, top->red, WHOLE_IN(60), WHOLE_IN(4));
    const muslin_id rows[] = { border, repeat_of(quilt, unit, 20, 1), repeat_of(quilt, rails, 10, 1), border };
    top->solution = solved(quilt, join_of(quilt, MUSLIN_AXIS_DOWN, rows, 4));
}

static void end_top(struct small_top *top)
{
    muslin_solution_free(top->solution);
    end_sewing(&top->s);
}

/* Binding of 2 1/2 in for 60 x 17 in and 10 in for corners and the last join: 164 in, each diagonal join 2 1/2 in. */
static struct muslin_extra_cut_spec binding_of(muslin_id fabric)
{
    struct muslin_extra_cut_spec binding = MUSLIN_EXTRA_CUT_SPEC_INIT;
    binding.fabric = fabric;
    binding.kind = MUSLIN_BLANK_JOINED;
    binding.cut_width = WHOLE_IN(164);
    binding.cut_length = IN(2, 1, 2);
    binding.join_loss = IN(2, 1, 2);
    return binding;
}

static muslin_status try_yardage(const struct muslin_solution *solution, const struct muslin_yardage_spec *spec,
                                 const struct muslin_extra_cut_spec *cuts, size_t n, struct muslin_yardage **out,
                                 struct muslin_problem *problem)
{
    struct muslin_allocator memory;
    ck_ok(muslin_allocator_libc(&memory));
    return muslin_yardage_create(solution, spec, cuts, sizeof *cuts, n, &memory, NULL, NULL, out, problem);
}

static struct muslin_yardage *yardage_of(const struct muslin_solution *solution,
                                         const struct muslin_yardage_spec *spec,
                                         const struct muslin_extra_cut_spec *cuts, size_t n)
{
    struct muslin_yardage *yardage = NULL;
    struct muslin_problem problem = PROBLEM;
    muslin_status status = try_yardage(solution, spec, cuts, n, &yardage, &problem);
    ck_assert_msg(status == MUSLIN_OK, "%s", problem.text);
    return yardage;
}

struct bill {
    size_t count;
    struct muslin_fabric_yardage rows[6];
};

static struct bill bill_of(const struct muslin_yardage *yardage)
{
    struct bill bill = { .count = 0 };
    size_t asked = 77;
    ck_ok(muslin_yardage_fabrics(yardage, bill.rows, sizeof bill.rows[0], COUNT_OF(bill.rows), &bill.count, NULL));
    ck_ok(muslin_yardage_fabrics(yardage, NULL, 0, 0, &asked, NULL));
    ck_assert_uint_eq(asked, bill.count);
    return bill;
}

static void ck_bill(const struct muslin_fabric_yardage *row, muslin_id fabric, muslin_len needed, muslin_len bought)
{
    ck_assert_uint_eq(row->size, sizeof *row);
    ck_assert_int_eq(row->fabric, fabric);
    ck_assert_int_eq(row->cloth_length, needed);
    ck_assert_int_eq(row->with_extra, needed);
    ck_assert_int_eq(row->bought, bought);
    ck_assert_int_eq(row->spare, bought - needed);
    ck_assert_int_eq(row->least, needed);
    ck_assert_int_eq(row->proven, 1);
    ck_assert_int_eq(row->usable_width, WHOLE_IN(40));
}

/* Half-squares: ten squares of 3 7/8 in of blue and of white, 38 3/4 in, one strip of each. Rails: segments of 6 1/2
 * in, six from a set, so two sets: four strips of blue and two of white, 2 1/2 in. Borders: two of 60 1/2 x 4 1/2 in
 * side by side in a panel. Binding: 40 in, then 37 1/2 in a strip: four strips are 152 1/2 in, the fifth is 14 in, and
 * that fits beside the borders. */
START_TEST(a_top_of_three_fabrics)
{
    /* Example: a top of three fabrics, the third also bound with it: three lengths to buy. */
    struct small_top top;
    begin_top(&top);
    const struct muslin_yardage_spec spec = MUSLIN_YARDAGE_SPEC_INIT;
    const struct muslin_extra_cut_spec binding = binding_of(top.red);
    struct muslin_yardage *yardage = yardage_of(top.solution, &spec, &binding, 1);
    const struct bill bill = bill_of(yardage);
    ck_assert_uint_eq(bill.count, 3);
    ck_bill(&bill.rows[0], top.s.blue, IN(13, 7, 8), WHOLE_IN(18));
    ck_bill(&bill.rows[1], top.s.white, IN(8, 7, 8), WHOLE_IN(9));
    ck_bill(&bill.rows[2], top.red, IN(70, 1, 2), WHOLE_IN(72));
    ck_assert_int_eq(bill.rows[0].pieces, 10 + 4);
    ck_assert_int_eq(bill.rows[1].pieces, 10 + 2);
    ck_assert_int_eq(bill.rows[2].pieces, 2 + 5);
    ck_assert_int_eq(bill.rows[0].narrowest_width, WHOLE_IN(40));
    ck_assert_int_eq(bill.rows[0].own_strips_length, IN(13, 7, 8));
    /* Example: muslin_yardage_free(yardage). */
    muslin_yardage_free(yardage);
    end_top(&top);
}
END_TEST

/* Joined straight, each border is a strip of 40 in and one of 21 in, of which two are not in one strip: 18 in; the
 * fifth strip of binding, 14 in, lies beside one of them. */
START_TEST(borders_pieced_from_strips)
{
    struct small_top top;
    begin_top(&top);
    struct muslin_yardage_spec spec = MUSLIN_YARDAGE_SPEC_INIT;
    spec.long_pieces = MUSLIN_LONG_PIECES_JOINED;
    const struct muslin_extra_cut_spec binding = binding_of(top.red);
    struct muslin_yardage *yardage = yardage_of(top.solution, &spec, &binding, 1);
    ck_bill(&bill_of(yardage).rows[2], top.red, WHOLE_IN(28), IN(31, 1, 2));
    muslin_yardage_free(yardage);
    end_top(&top);
}
END_TEST

START_TEST(nothing_besides_is_cut)
{
    struct small_top top;
    begin_top(&top);
    const struct muslin_yardage_spec spec = MUSLIN_YARDAGE_SPEC_INIT;
    struct muslin_extra_cut_spec none = binding_of(top.red);
    none.count = 0;
    for (size_t n = 0; n < 2; n++) {
        struct muslin_yardage *yardage = yardage_of(top.solution, &spec, n == 0 ? NULL : &none, n);
        ck_bill(&bill_of(yardage).rows[2], top.red, IN(60, 1, 2), WHOLE_IN(63));
        muslin_yardage_free(yardage);
    }
    end_top(&top);
}
END_TEST

/* ---- what is bought --------------------------------------------------------------------------------------------- */

static struct muslin_solution *squares(struct sewn *s, int64_t columns, int64_t rows)
{
    return solved(s->quilt, repeat_of(s->quilt, yardage_patch(s->quilt, s->blue, IN(2, 1, 2), IN(2, 1, 2)), columns,
                                      rows));
}

START_TEST(bought_in_steps)
{
    /* Example: of 40 squares cut 3 in, 13 from each strip of 40 in, 12 in are needed, and 3/8 yd bought. */
    struct sewn s;
    begin_sewing(&s);
    struct muslin_yardage_spec spec = MUSLIN_YARDAGE_SPEC_INIT;
    struct muslin_solution *solution = squares(&s, 8, 5);
    struct muslin_yardage *yardage = yardage_of(solution, &spec, NULL, 0);
    struct bill bill = bill_of(yardage);
    ck_assert_uint_eq(bill.count, 1);
    ck_bill(&bill.rows[0], s.blue, WHOLE_IN(12), IN(13, 1, 2));
    ck_assert_int_eq(bill.rows[0].narrowest_width, WHOLE_IN(39));
    ck_assert_int_eq(bill.rows[0].turned, 0);
    muslin_yardage_free(yardage);
    /* 1/2 in straightened off: 12 1/2; a fifth lost in the wash: 15 5/8; a quarter more: 19.53 (158750 ticks); 1 in
     * more. In steps of 10 in: 30 in. */
    spec.straightening = IN(0, 1, 2);
    spec.shrinkage = 200000;
    spec.extra_share = 250000;
    spec.extra = WHOLE_IN(1);
    spec.step = WHOLE_IN(10);
    yardage = yardage_of(solution, &spec, NULL, 0);
    bill = bill_of(yardage);
    ck_assert_int_eq(bill.rows[0].cloth_length, IN(12, 1, 2));
    ck_assert_int_eq(bill.rows[0].least, IN(12, 1, 2));
    ck_assert_int_eq(bill.rows[0].with_extra, 158750 + WHOLE_IN(1));
    ck_assert_int_eq(bill.rows[0].bought, WHOLE_IN(30));
    muslin_yardage_free(yardage);
    muslin_solution_free(solution);
    end_sewing(&s);
}
END_TEST

/* Four pieces of 14 x 9 in: as they lie two from a strip of 9 in, turned all four from one of 14 in; of a print with a
 * direction none is turned. */
START_TEST(pieces_lie_turned_where_the_print_lets_them)
{
    struct sewn s;
    begin_sewing(&s);
    const struct muslin_yardage_spec spec = MUSLIN_YARDAGE_SPEC_INIT;
    struct muslin_extra_cut_spec pockets[] = { MUSLIN_EXTRA_CUT_SPEC_INIT, MUSLIN_EXTRA_CUT_SPEC_INIT };
    pockets[0].fabric = s.white;
    pockets[1].fabric = printed_fabric(s.quilt, "trees", MUSLIN_PRINT_TWO_WAY);
    for (size_t i = 0; i < 2; i++) {
        pockets[i].flags = MUSLIN_BLANK_MAY_TURN;
        pockets[i].cut_width = WHOLE_IN(14);
        pockets[i].cut_length = WHOLE_IN(9);
        pockets[i].count = 4;
    }
    struct muslin_solution *solution = squares(&s, 1, 1);
    struct muslin_yardage *yardage = yardage_of(solution, &spec, pockets, 2);
    const struct bill bill = bill_of(yardage);
    ck_assert_uint_eq(bill.count, 3);
    ck_bill(&bill.rows[1], s.white, WHOLE_IN(14), WHOLE_IN(18));
    ck_assert_int_eq(bill.rows[1].turned, 1);
    ck_bill(&bill.rows[2], pockets[1].fabric, WHOLE_IN(18), WHOLE_IN(18));
    ck_assert_int_eq(bill.rows[2].turned, 0);
    muslin_yardage_free(yardage);
    muslin_solution_free(solution);
    end_sewing(&s);
}
END_TEST

/* ---- printed figures -------------------------------------------------------------------------------------------- */

static struct muslin_solution *solved_at(struct sewn *s, muslin_id top, muslin_id fabric, muslin_len width)
{
    const struct muslin_solution_spec solve = MUSLIN_SOLUTION_SPEC_INIT;
    struct muslin_solution_value_spec wide = MUSLIN_SOLUTION_VALUE_SPEC_INIT;
    struct muslin_solution *solution = NULL;
    wide.id = fabric;
    wide.value = width;
    ck_ok(muslin_solution_create(s->quilt, top, &solve, &wide, sizeof wide, 1, NULL, &solution, NULL));
    return solution;
}

static void ck_needed(struct sewn *s, muslin_id top, muslin_id fabric, muslin_len width,
                      const struct muslin_yardage_spec *spec, muslin_len needed)
{
    struct muslin_solution *solution = solved_at(s, top, fabric, width);
    struct muslin_yardage *yardage = yardage_of(solution, spec, NULL, 0);
    const struct bill bill = bill_of(yardage);
    ck_assert_int_eq(bill.rows[0].cloth_length, needed);
    ck_assert_int_eq(bill.rows[0].proven, 1);
    muslin_yardage_free(yardage);
    muslin_solution_free(solution);
}

/* Math is my nemesis (public forum): four borders of 6 1/2 x 72 in from cloth 60 in wide: five strips, 32 1/2 in. Each
 * is a strip of 60 in and 12 1/2 in more with its seam; four of those come from one strip. */
START_TEST(four_borders_from_five_strips)
{
    struct sewn s;
    begin_sewing(&s);
    struct muslin_yardage_spec spec = MUSLIN_YARDAGE_SPEC_INIT;
    spec.long_pieces = MUSLIN_LONG_PIECES_JOINED;
    const muslin_id border = yardage_patch(s.quilt, s.blue, IN(71, 1, 2), WHOLE_IN(6));
    ck_needed(&s, repeat_of(s.quilt, border, 1, 4), s.blue, WHOLE_IN(60), &spec, IN(32, 1, 2));
    end_sewing(&s);
}
END_TEST

/* How much fabric do I need for quilt sashing (tutorial site): 24 sashes cut 12 1/2 x 4 1/2 in, three from a strip of
 * 44 in, eight strips: 36 in, as long as their print keeps them lying. Where they may turn, nine come from a strip of
 * 12 1/2 in: two of those and two of 4 1/2 in are 34 in. */
START_TEST(sashes_take_less_where_they_may_turn)
{
    struct sewn s;
    begin_sewing(&s);
    const struct muslin_yardage_spec spec = MUSLIN_YARDAGE_SPEC_INIT;
    const muslin_id fabrics[] = { printed_fabric(s.quilt, "rows", MUSLIN_PRINT_TWO_WAY), s.blue };
    static const muslin_len needed[] = { WHOLE_IN(36), WHOLE_IN(34) };
    for (size_t i = 0; i < 2; i++) {
        const muslin_id sash = yardage_patch(s.quilt, fabrics[i], WHOLE_IN(12), WHOLE_IN(4));
        const muslin_id pair[] = { sash, sash };
        const muslin_id two = pieced_join(s.quilt, MUSLIN_AXIS_DOWN, MUSLIN_STRIP_PIECING_NEVER, 0, pair, 2);
        ck_needed(&s, repeat_of(s.quilt, two, 4, 3), fabrics[i], WHOLE_IN(44), &spec, needed[i]);
    }
    end_sewing(&s);
}
END_TEST

/* Triangles of 6 in from strips of 6 1/2 in: the first reaches to 7.794 in, each more takes 4.0415: eight lie in 36.085
 * in, nine in 40.126. So 8 take one strip of 40 in, 9 take two. */
START_TEST(triangles_are_counted_with_their_run_in)
{
    struct sewn s;
    begin_sewing(&s);
    const struct muslin_yardage_spec spec = MUSLIN_YARDAGE_SPEC_INIT;
    for (int64_t cells = 8; cells <= 9; cells++) {
        struct muslin_quilt_sixty_spec sixty = MUSLIN_QUILT_SIXTY_SPEC_INIT;
        struct muslin_quilt_sixty_piece_spec pieces[9];
        muslin_id top = 0;
        sixty.cells = cells;
        sixty.height = fixed_of(s.quilt, WHOLE_IN(6));
        sixty.end_fabric = s.white;
        for (int64_t i = 0; i < cells; i++) {
            pieces[i] = (struct muslin_quilt_sixty_piece_spec)MUSLIN_QUILT_SIXTY_PIECE_SPEC_INIT;
            pieces[i].fabric = s.blue;
        }
        ck_ok(muslin_quilt_sixty(s.quilt, &sixty, pieces, sizeof pieces[0], (size_t)cells, &top, NULL));
        ck_needed(&s, top, s.blue, WHOLE_IN(40), &spec, cells == 8 ? IN(6, 1, 2) : WHOLE_IN(13));
    }
    end_sewing(&s);
}
END_TEST

/* ---- extra cuts ------------------------------------------------------------------------------------------------- */

/* The solution says how wide the fabrics are that it knows; of a newer one the quilt does. */
START_TEST(widths_are_those_of_the_solution)
{
    struct sewn s;
    begin_sewing(&s);
    const struct muslin_solution_spec solve = MUSLIN_SOLUTION_SPEC_INIT;
    const struct muslin_yardage_spec spec = MUSLIN_YARDAGE_SPEC_INIT;
    struct muslin_solution_value_spec wide = MUSLIN_SOLUTION_VALUE_SPEC_INIT;
    struct muslin_extra_cut_spec pieces[] = { MUSLIN_EXTRA_CUT_SPEC_INIT, MUSLIN_EXTRA_CUT_SPEC_INIT,
                                              MUSLIN_EXTRA_CUT_SPEC_INIT, MUSLIN_EXTRA_CUT_SPEC_INIT };
    struct muslin_quilt_fabric_spec narrow = MUSLIN_QUILT_FABRIC_SPEC_INIT;
    struct muslin_solution *solution = NULL;
    muslin_id newest = 0;
    const muslin_id patch = patch_of(s.quilt, s.blue, s.two, s.two);
    wide.id = s.white;
    wide.value = WHOLE_IN(58);
    ck_ok(muslin_solution_create(s.quilt, patch, &solve, &wide, sizeof wide, 1, NULL, &solution, NULL));
    const muslin_id newer = fabric_of(s.quilt, "green");
    narrow.usable_width = WHOLE_IN(21);
    ck_ok(muslin_quilt_fabric(s.quilt, &narrow, "yellow", 6, &newest, NULL));
    pieces[0].fabric = newer;
    pieces[1].fabric = s.white;
    pieces[2].fabric = newest;
    pieces[3].fabric = fabric_of(s.quilt, "of which nothing is asked");
    for (size_t i = 0; i < 4; i++) {
        pieces[i].cut_width = WHOLE_IN(6);
        pieces[i].cut_length = WHOLE_IN(5);
        pieces[i].count = 9;
    }
    pieces[3].count = 0;
    struct muslin_yardage *yardage = yardage_of(solution, &spec, pieces, 4);
    const struct bill bill = bill_of(yardage);
    ck_assert_uint_eq(bill.count, 4);
    ck_assert_int_eq(bill.rows[0].fabric, s.blue);
    ck_assert_int_eq(bill.rows[1].fabric, s.white);
    ck_assert_int_eq(bill.rows[1].usable_width, WHOLE_IN(58));
    ck_assert_int_eq(bill.rows[1].cloth_length, WHOLE_IN(5));
    ck_assert_int_eq(bill.rows[2].fabric, newer);
    ck_assert_int_eq(bill.rows[2].usable_width, WHOLE_IN(40));
    ck_assert_int_eq(bill.rows[3].fabric, newest);
    ck_assert_int_eq(bill.rows[3].usable_width, WHOLE_IN(21));
    ck_assert_int_eq(bill.rows[2].cloth_length, WHOLE_IN(10));
    muslin_yardage_free(yardage);
    muslin_solution_free(solution);
    end_sewing(&s);
}
END_TEST

/* The cut list of the top has blue, white and red rows: squares, strips, squares, strips, borders. */
START_TEST(plans_are_read_with_the_labels_of_the_list)
{
    /* Example: muslin_cutplan_strips() of the first row's plan. */
    struct small_top top;
    begin_top(&top);
    const struct muslin_yardage_spec spec = MUSLIN_YARDAGE_SPEC_INIT;
    const struct muslin_extra_cut_spec cuts[] = { binding_of(top.red), binding_of(top.s.blue) };
    struct muslin_yardage *yardage = yardage_of(top.solution, &spec, cuts, 2);
    static const int64_t labels[3][3] = { { 0, 1, 6 }, { 2, 3, -1 }, { 4, 5, -1 } };
    for (int64_t row = 0; row < 3; row++) {
        const struct muslin_cutplan *plan = NULL;
        struct muslin_cutplan_piece pieces[4];
        struct muslin_cutplan_strip strips[20];
        size_t count = 0;
        ck_ok(muslin_yardage_plan(yardage, row, &plan, NULL));
        ck_ok(muslin_cutplan_pieces(plan, pieces, sizeof pieces[0], COUNT_OF(pieces), &count, NULL));
        ck_assert_uint_eq(count, row == 0 ? 3 : 2);
        for (size_t i = 0; i < count; i++)
            ck_assert_int_eq(pieces[i].label, labels[row][i]);
        ck_ok(muslin_cutplan_strips(plan, strips, sizeof strips[0], COUNT_OF(strips), &count, NULL));
        ck_assert_int_eq(strips[0].height, row == 2 ? IN(60, 1, 2) : IN(3, 7, 8));
    }
    muslin_yardage_free(yardage);
    end_top(&top);
}
END_TEST

/* ---- progress --------------------------------------------------------------------------------------------------- */

struct told {
    int64_t times;
    int64_t ends_at;
};

static int32_t count_tellings(void *context, int64_t work, int64_t best, int64_t bound)
{
    struct told *told = context;
    ck_assert(work >= 0 && best > 0 && bound <= best);
    told->times++;
    return told->times >= told->ends_at;
}

/* Squares of three sizes from blue, and the same from white; the search of either is told at its first plan. Once it is
 * ended nobody is asked again. */
START_TEST(progress_ends_the_whole_way)
{
    static const struct {
        muslin_len side;
        int64_t count;
    } sizes[] = { { IN(5, 1, 2), 32 }, { WHOLE_IN(6), 16 }, { IN(9, 1, 2), 8 } };
    struct small_top top;
    struct muslin_allocator memory;
    struct muslin_yardage *yardage = NULL;
    struct muslin_extra_cut_spec cuts[6];
    begin_top(&top);
    ck_ok(muslin_allocator_libc(&memory));
    const struct muslin_yardage_spec spec = MUSLIN_YARDAGE_SPEC_INIT;
    for (size_t i = 0; i < COUNT_OF(cuts); i++) {
        cuts[i] = (struct muslin_extra_cut_spec)MUSLIN_EXTRA_CUT_SPEC_INIT;
        cuts[i].fabric = i < 3 ? top.s.blue : top.s.white;
        cuts[i].cut_width = cuts[i].cut_length = sizes[i % 3].side;
        cuts[i].count = sizes[i % 3].count;
    }
    for (int64_t ends_at = 1; ends_at < 1000000; ends_at += 999998) {
        struct told told = { 0, ends_at };
        ck_ok(muslin_yardage_create(top.solution, &spec, cuts, sizeof cuts[0], COUNT_OF(cuts), &memory, count_tellings,
                                    &told, &yardage, NULL));
        ck_assert_uint_eq(bill_of(yardage).count, 3);
        ck_assert(ends_at == 1 ? told.times == 1 : told.times >= 2);
        muslin_yardage_free(yardage);
    }
    end_top(&top);
}
END_TEST

/* ---- refused ---------------------------------------------------------------------------------------------------- */

static const struct muslin_solution *ruled_solution;

static muslin_status yardage_with_extra(const void *cut, void *out, struct muslin_problem *problem)
{
    const struct muslin_yardage_spec spec = MUSLIN_YARDAGE_SPEC_INIT;
    struct muslin_yardage *yardage = NULL;
    struct muslin_allocator memory;
    (void)out;
    ck_ok(muslin_allocator_libc(&memory));
    muslin_status status = muslin_yardage_create(ruled_solution, &spec, cut, 4096, 1, &memory, NULL, NULL, &yardage,
                                                 problem);
    ck_assert_int_eq(yardage == NULL, status != MUSLIN_OK);
    muslin_yardage_free(yardage);
    return status;
}

START_TEST(extra_cuts_are_checked)
{
    struct small_top top;
    begin_top(&top);
    const struct muslin_extra_cut_spec binding = binding_of(top.red);
    static const struct refusal refusals[] = {
        REFUSAL(muslin_extra_cut_spec, fabric, 0, MUSLIN_ERR_FOREIGN, MUSLIN_ARG_FABRIC),
        OUTSIDE(muslin_extra_cut_spec, cut_width, 1, MUSLIN_SIZE_MAX, MUSLIN_ARG_PIECE_WIDTH),
        OUTSIDE(muslin_extra_cut_spec, cut_length, 1, MUSLIN_SIZE_MAX, MUSLIN_ARG_PIECE_LENGTH),
        OUTSIDE(muslin_extra_cut_spec, count, 0, MUSLIN_CUTPLAN_COUNT_MAX, MUSLIN_ARG_PIECES),
        OUTSIDE(muslin_extra_cut_spec, run_in, 0, 0, MUSLIN_ARG_RUN_IN),
        OUTSIDE(muslin_extra_cut_spec, join_loss, 0, MUSLIN_SIZE_MAX, MUSLIN_ARG_JOIN_LOSS),
        OUTSIDE(muslin_extra_cut_spec, least_part, 0, MUSLIN_SIZE_MAX, MUSLIN_ARG_LEAST_PART),
        NOT_A_CHOICE(muslin_extra_cut_spec, kind, MUSLIN_BLANK_SLOPED, MUSLIN_ARG_BLANK_KIND),
        REFUSAL(muslin_extra_cut_spec, pad, 1, MUSLIN_ERR_STRUCT_TAIL, MUSLIN_ARG_SPEC),
    };
    const struct ruled ruled = { yardage_with_extra, &binding, (uint32_t)sizeof binding, 8, 8, 0 };
    ruled_solution = top.solution;
    ck_refusals(&ruled, refusals, COUNT_OF(refusals));
    const struct muslin_yardage_spec spec = MUSLIN_YARDAGE_SPEC_INIT;
    const struct muslin_extra_cut_spec two[] = { binding, binding };
    struct muslin_problem problem = PROBLEM;
    struct muslin_allocator memory;
    ck_ok(muslin_allocator_libc(&memory));
    ck_status(muslin_yardage_create(top.solution, &spec, two, sizeof two[0], 2, &memory, NULL, NULL, NULL, &problem),
              MUSLIN_ERR_NULL);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_OUTPUT);
    ck_assert_int_eq(problem.at, 0);
    end_top(&top);
}
END_TEST

START_TEST(the_second_extra_cut_is_named)
{
    struct small_top top;
    begin_top(&top);
    const struct muslin_yardage_spec spec = MUSLIN_YARDAGE_SPEC_INIT;
    struct muslin_extra_cut_spec cuts[] = { binding_of(top.red), binding_of(top.red) };
    struct muslin_problem problem = PROBLEM;
    struct muslin_yardage *yardage = NULL;
    cuts[1].flags = MUSLIN_BLANK_MAY_TURN;
    ck_status(try_yardage(top.solution, &spec, cuts, 2, &yardage, &problem), MUSLIN_ERR_FLAGS);
    ck_assert_int_eq(problem.at, 1);
    cuts[1].flags = 2;
    ck_status(try_yardage(top.solution, &spec, cuts, 2, &yardage, &problem), MUSLIN_ERR_FLAGS);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_ROWS);
    ck_assert_int_eq(problem.at, 1);
    cuts[1].flags = 0;
    cuts[1].fabric = 7;
    ck_status(try_yardage(top.solution, &spec, cuts, 2, &yardage, &problem), MUSLIN_ERR_FOREIGN);
    ck_assert_int_eq(problem.limit, 0);
    ck_assert_int_eq(problem.at, 1);
    end_top(&top);
}
END_TEST

START_TEST(inputs_that_are_missing)
{
    struct small_top top;
    begin_top(&top);
    struct muslin_yardage_spec spec = MUSLIN_YARDAGE_SPEC_INIT;
    const struct muslin_extra_cut_spec binding = binding_of(top.red);
    struct muslin_yardage *yardage = NULL;
    struct muslin_problem problem = PROBLEM;
    struct muslin_allocator memory;
    ck_ok(muslin_allocator_libc(&memory));
    ck_status(try_yardage(NULL, &spec, NULL, 0, &yardage, NULL), MUSLIN_ERR_NULL);
    ck_status(try_yardage(top.solution, NULL, NULL, 0, &yardage, NULL), MUSLIN_ERR_NULL);
    ck_status(try_yardage(top.solution, &spec, NULL, 1, &yardage, NULL), MUSLIN_ERR_NULL);
    ck_status(try_yardage(top.solution, &spec, NULL, 0, NULL, NULL), MUSLIN_ERR_NULL);
    ck_status(muslin_yardage_create(top.solution, &spec, NULL, 0, 0, NULL, NULL, NULL, &yardage, NULL),
              MUSLIN_ERR_NULL);
    ck_status(muslin_yardage_create(top.solution, &spec, &binding, sizeof binding - 1, 1, &memory, NULL, NULL,
                                    &yardage, &problem), MUSLIN_ERR_STRUCT_SIZE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_ROW_SIZE);
    const struct muslin_extra_cut_spec of_none = binding_of(0);
    ck_status(muslin_yardage_create(top.solution, &spec, &of_none, sizeof of_none, MUSLIN_CUTPLAN_ROWS_MAX, &memory,
                                    NULL, NULL, &yardage, &problem), MUSLIN_ERR_FOREIGN);
    ck_status(muslin_yardage_create(top.solution, &spec, &binding, sizeof binding, MUSLIN_CUTPLAN_ROWS_MAX + 1,
                                    &memory, NULL, NULL, &yardage, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_ROWS);
    ck_assert_int_eq(problem.value, MUSLIN_CUTPLAN_ROWS_MAX + 1);
    ck_assert_int_eq(problem.limit, MUSLIN_CUTPLAN_ROWS_MAX);
    ck_assert_ptr_null(yardage);
    muslin_yardage_free(NULL);
    end_top(&top);
}
END_TEST

/* White squares of 48 7/8 in do not fit 40 in: the problem says white, and both sizes. */
START_TEST(what_does_not_fit_names_the_fabric)
{
    struct sewn s;
    begin_sewing(&s);
    const struct muslin_yardage_spec spec = MUSLIN_YARDAGE_SPEC_INIT;
    const muslin_id small[] = { s.blue, s.blue };
    const muslin_id large[] = { s.white, s.white };
    const muslin_id units[] = {
        yardage_unit(s.quilt, MUSLIN_UNIT_HALF_SQUARE, MUSLIN_UNIT_METHOD_PIECES, WHOLE_IN(4), small, 2),
        yardage_unit(s.quilt, MUSLIN_UNIT_HALF_SQUARE, MUSLIN_UNIT_METHOD_PIECES, WHOLE_IN(48), large, 2)
    };
    struct muslin_solution *solution = solved(s.quilt, join_of(s.quilt, MUSLIN_AXIS_ACROSS, units, 2));
    struct muslin_yardage *yardage = NULL;
    struct muslin_problem problem = PROBLEM;
    ck_status(try_yardage(solution, &spec, NULL, 0, &yardage, &problem), MUSLIN_ERR_NO_YIELD);
    ck_assert_int_eq(problem.at, muslin_id_number(s.white));
    ck_assert_int_eq(problem.value, IN(48, 7, 8));
    ck_assert_int_eq(problem.limit, WHOLE_IN(40));
    ck_assert_ptr_null(yardage);
    muslin_solution_free(solution);
    end_sewing(&s);
}
END_TEST

/* A million strips of 40 in are more cloth than a purchase takes. */
START_TEST(more_cloth_than_can_be_bought)
{
    struct sewn s;
    begin_sewing(&s);
    struct muslin_yardage_spec spec = MUSLIN_YARDAGE_SPEC_INIT;
    struct muslin_extra_cut_spec panels = MUSLIN_EXTRA_CUT_SPEC_INIT;
    struct muslin_yardage *yardage = NULL;
    struct muslin_problem problem = PROBLEM;
    struct muslin_solution *solution = squares(&s, 1, 1);
    panels.fabric = s.white;
    panels.cut_width = panels.cut_length = WHOLE_IN(40);
    panels.count = 1000000;
    ck_status(try_yardage(solution, &spec, &panels, 1, &yardage, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_CLOTH_LENGTH);
    ck_assert_int_eq(problem.at, muslin_id_number(s.white));
    muslin_solution_free(solution);
    end_sewing(&s);
}
END_TEST

START_TEST(rows_are_read_by_the_rules)
{
    struct sewn s;
    begin_sewing(&s);
    const struct muslin_yardage_spec spec = MUSLIN_YARDAGE_SPEC_INIT;
    struct muslin_solution *solution = squares(&s, 1, 1);
    struct muslin_yardage *yardage = yardage_of(solution, &spec, NULL, 0);
    const struct muslin_cutplan *plan = NULL;
    struct muslin_fabric_yardage row;
    struct muslin_fabric_yardage two[2];
    struct muslin_problem problem = PROBLEM;
    size_t count = 77;
    memset(two, FILL, sizeof two);
    row = two[1];
    ck_ok(muslin_yardage_fabrics(yardage, two, sizeof two[0], 2, &count, NULL));
    ck_assert_uint_eq(count, 1);
    ck_assert_int_eq(memcmp(&two[1], &row, sizeof row), 0);
    ck_status(muslin_yardage_fabrics(NULL, &row, sizeof row, 1, &count, &problem), MUSLIN_ERR_NULL);
    ck_assert_int_eq(problem.limit, 0);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_YARDAGE);
    ck_status(muslin_yardage_fabrics(yardage, &row, sizeof row, 1, NULL, NULL), MUSLIN_ERR_NULL);
    ck_status(muslin_yardage_fabrics(yardage, &row, sizeof row - 1, 1, &count, NULL), MUSLIN_ERR_STRUCT_SIZE);
    ck_status(muslin_yardage_plan(NULL, 0, &plan, NULL), MUSLIN_ERR_NULL);
    ck_status(muslin_yardage_plan(yardage, 0, NULL, NULL), MUSLIN_ERR_NULL);
    ck_status(muslin_yardage_plan(yardage, -1, &plan, NULL), MUSLIN_ERR_INDEX);
    ck_status(muslin_yardage_plan(yardage, 1, &plan, &problem), MUSLIN_ERR_INDEX);
    ck_assert_int_eq(problem.value, 1);
    ck_assert_int_eq(problem.limit, 0);
    ck_assert_ptr_null(plan);
    muslin_yardage_free(yardage);
    muslin_solution_free(solution);
    end_sewing(&s);
}
END_TEST

START_TEST(every_allocation_may_fail)
{
    struct small_top top;
    begin_top(&top);
    struct failing_allocator failing;
    struct muslin_yardage_spec spec = MUSLIN_YARDAGE_SPEC_INIT;
    const struct muslin_extra_cut_spec binding = binding_of(top.red);
    spec.work_limit = 0;
    EVERY_ALLOCATION_FAILS_ONCE(failing)
    {
        struct muslin_yardage *yardage = NULL;
        muslin_status status = muslin_yardage_create(top.solution, &spec, &binding, sizeof binding, 1,
                                                     &failing.allocator, NULL, NULL, &yardage, NULL);
        /* a search that runs out of memory goes on with the plan that it has */
        ck_assert(status == MUSLIN_OK || (status == MUSLIN_ERR_NO_MEMORY && failing.has_failed));
        ck_assert_int_eq(yardage == NULL, status != MUSLIN_OK);
        muslin_yardage_free(yardage);
        ck_assert(failing_is_clean(&failing));
    }
    end_top(&top);
}
END_TEST

START_TEST(initial_values_are_the_documented_ones)
{
    const struct muslin_yardage_spec yardage = MUSLIN_YARDAGE_SPEC_INIT;
    const struct muslin_extra_cut_spec extra = MUSLIN_EXTRA_CUT_SPEC_INIT;
    struct muslin_yardage_spec first;
    struct muslin_extra_cut_spec second;
    ck_ok(muslin_yardage_spec_init(&first, sizeof first));
    ck_ok(muslin_extra_cut_spec_init(&second, sizeof second));
    ck_assert_mem_eq(&first, &yardage, sizeof first);
    ck_assert_mem_eq(&second, &extra, sizeof second);
    ck_status(muslin_yardage_spec_init(NULL, sizeof first), MUSLIN_ERR_NULL);
    ck_status(muslin_extra_cut_spec_init(&second, 8), MUSLIN_ERR_STRUCT_SIZE);
    ck_assert_int_eq(yardage.join_loss, IN(0, 1, 2));
    ck_assert_int_eq(yardage.step, IN(4, 1, 2));
    ck_assert_int_eq(yardage.long_pieces, MUSLIN_LONG_PIECES_LENGTHWISE);
    ck_assert_int_eq(extra.count, 1);
    ck_assert_int_eq(extra.kind, MUSLIN_BLANK_PIECE);
}
END_TEST

TCase *yardage_pieces_case(void);
Suite *yardage_suite(void);
Suite *yardage_suite(void)
{
    Suite *suite = suite_create("yardage");
    TCase *all = tcase_create("yardage");
    tcase_set_timeout(all, 120);
    tcase_add_test(all, a_top_of_three_fabrics);
    tcase_add_test(all, borders_pieced_from_strips);
    tcase_add_test(all, nothing_besides_is_cut);
    tcase_add_test(all, bought_in_steps);
    tcase_add_test(all, pieces_lie_turned_where_the_print_lets_them);
    tcase_add_test(all, four_borders_from_five_strips);
    tcase_add_test(all, sashes_take_less_where_they_may_turn);
    tcase_add_test(all, triangles_are_counted_with_their_run_in);
    tcase_add_test(all, widths_are_those_of_the_solution);
    tcase_add_test(all, plans_are_read_with_the_labels_of_the_list);
    tcase_add_test(all, progress_ends_the_whole_way);
    tcase_add_test(all, extra_cuts_are_checked);
    tcase_add_test(all, the_second_extra_cut_is_named);
    tcase_add_test(all, inputs_that_are_missing);
    tcase_add_test(all, what_does_not_fit_names_the_fabric);
    tcase_add_test(all, more_cloth_than_can_be_bought);
    tcase_add_test(all, rows_are_read_by_the_rules);
    tcase_add_test(all, every_allocation_may_fail);
    tcase_add_test(all, initial_values_are_the_documented_ones);
    suite_add_tcase(suite, all);
    suite_add_tcase(suite, yardage_pieces_case());
    return suite;
}
