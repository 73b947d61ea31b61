/* test_cutplan_joined.c - joined pieces in strips from what a plan leaves over.
 *
 * SPDX-License-Identifier: MIT */
#include "test_cutplan.h"
#include "test_cutplan_made.h"

static struct planned p;

enum { SOME = 24, EVERY = 260 };

/* Half an inch goes into each join. */
static struct muslin_blank_spec *want_joined(muslin_len length, muslin_len height, muslin_len least_part)
{
    struct muslin_blank_spec *piece = want_kind(&p, MUSLIN_BLANK_JOINED, 1, length, height);
    piece->join_loss = IN(0, 1, 2);
    piece->least_part = least_part;
    return piece;
}

/* How many strips of a row are so long; with INT64_MAX all of any length. */
static int64_t strips_of(int64_t row, muslin_len length)
{
    int64_t strips = 0;
    for (size_t i = 0; i < p.place_count; i++)
        if (p.places[i].piece == row && (length == INT64_MAX || p.places[i].width == length))
            strips += p.places[i].count * planned_times(&p, &p.strips[p.places[i].strip]);
    return strips;
}

/* The strips of a row give its length, joins taken off. */
static void ck_joined(int64_t row)
{
    const struct muslin_blank_spec *piece = &p.pieces[row];
    muslin_len length = piece->join_loss;
    for (size_t i = 0; i < p.place_count; i++)
        if (p.places[i].piece == row)
            length += (p.places[i].width - piece->join_loss) * p.places[i].count *
                      planned_times(&p, &p.strips[p.places[i].strip]);
    ck_assert_int_eq(length, piece->cut_width);
}

static void make_joined(int64_t row, muslin_len cloth_length)
{
    make_plan(&p);
    ck_assert_int_eq(p.totals.cloth_length, cloth_length);
    ck_joined(row);
}

START_TEST(binding_is_cut_beside_long_borders)
{
    /* Four borders of 60 x 6 in fill 24 of 40 in: 16 x 60 in are left beside them, room for 24 strips 2 1/2 in high.
     * Binding of 250 in takes 6 strips of 40 in and one of 13 in, which lies there; from strips of 16 in, each of which
     * gives 15 1/2 in, 17, and only 16 are taken of a piece. */
    start(&p, WHOLE_IN(40));
    want_kind(&p, MUSLIN_BLANK_LENGTHWISE, 4, WHOLE_IN(6), WHOLE_IN(60));
    want_joined(WHOLE_IN(250), IN(2, 1, 2), 0);
    make_joined(1, WHOLE_IN(75));
    ck_assert_int_eq(p.totals.other_lengths, 0);
    muslin_cutplan_free(p.plan);
    p.pieces[1].least_part = WHOLE_IN(10);
    make_joined(1, IN(62, 1, 2)); /* so one whole one stays */
    ck_assert_int_eq(strips_of(1, WHOLE_IN(40)), 1);
    ck_assert_int_eq(p.totals.other_lengths, 1);
    ck_assert_int_eq(p.totals.proven, 1);
    muslin_cutplan_free(p.plan);
    p.pieces[1].cut_width = WHOLE_IN(218); /* 14 strips of 16 in are 217 1/2, so 15, of which some are shorter */
    make_joined(1, WHOLE_IN(60));
    ck_assert_int_eq(strips_of(1, WHOLE_IN(16)), 12);
    ck_assert_int_eq(strips_of(1, WHOLE_IN(13)), 1);
    ck_assert_int_eq(strips_of(1, WHOLE_IN(10)), 2);
    ck_assert_int_eq(strips_of(1, INT64_MAX), 15);
    ck_assert_int_eq(p.totals.proven, 1);
    ck_assert_int_eq(p.totals.area_bound, IN(49, 25, 32)); /* borders and 220 1/2 x 2 1/2 in, five joins: 1991 1/4 */
    muslin_cutplan_free(p.plan);
}
END_TEST

/* Six pieces of 13 1/2 in: three strips, of each of which 13 in are left. Binding of 77 in takes a whole strip and one
 * of 37 1/2 in, or with two joins more 40, 13, 13 and 12 1/2 in. */
static void start_ends(muslin_len height, muslin_len least_part)
{
    start(&p, WHOLE_IN(40));
    want(&p, 6, IN(13, 1, 2), height);
    want_joined(WHOLE_IN(77), IN(2, 1, 2), least_part);
}

START_TEST(binding_is_cut_from_the_ends_of_strips)
{
    static const muslin_len least[] = { 0, WHOLE_IN(1), IN(12, 1, 2), IN(12, 3, 4), WHOLE_IN(13), WHOLE_IN(14) };
    static const int saves[] = { 0, 1, 1, 1, 1, 0 };
    static const int whole[] = { 1, 1, 1, 1, 0, 1 };
    for (int i = 0; i < 6; i++) {
        start_ends(IN(2, 1, 2), least[i]);
        make_joined(1, saves[i] ? WHOLE_IN(10) : IN(12, 1, 2));
        ck_assert_int_eq(strips_of(1, WHOLE_IN(40)), whole[i]);
        ck_assert_int_eq(p.totals.own_strips_length, IN(12, 1, 2));
        ck_assert_int_eq(p.totals.proven, 1);
        muslin_cutplan_free(p.plan);
    }
    start_ends(IN(2, 1, 2), WHOLE_IN(13));
    p.pieces[1].cut_width = WHOLE_IN(37); /* one strip, or 13, 13 and 12 in, which may not be */
    make_joined(1, WHOLE_IN(10));
    ck_assert_int_eq(strips_of(1, WHOLE_IN(37)), 1);
    muslin_cutplan_free(p.plan);
    start_ends(WHOLE_IN(3), WHOLE_IN(10)); /* trimmed from strips of 3 in */
    make_joined(1, IN(11, 1, 2));
    muslin_cutplan_free(p.plan);
    p.spec.flags = MUSLIN_CUTPLAN_ONE_HEIGHT;
    make_joined(1, 3 * WHOLE_IN(3) + 2 * IN(2, 1, 2));
    muslin_cutplan_free(p.plan);
    start_ends(IN(2, 1, 2), WHOLE_IN(10)); /* a join takes all of an end */
    p.pieces[1].join_loss = WHOLE_IN(13);
    make_joined(1, WHOLE_IN(15));
    muslin_cutplan_free(p.plan);
    start_ends(WHOLE_IN(2), WHOLE_IN(10)); /* strips of 2 in are too low */
    make_joined(1, 3 * WHOLE_IN(2) + 2 * IN(2, 1, 2));
    muslin_cutplan_free(p.plan);
}
END_TEST

START_TEST(some_joined_pieces_are_left_as_they_are)
{
    static const uint32_t flags[] = { MUSLIN_CUTPLAN_OWN_STRIPS, MUSLIN_CUTPLAN_STACKED, MUSLIN_CUTPLAN_FOLDED };
    for (int i = 0; i < 3; i++) {
        start_ends(IN(2, 1, 2), WHOLE_IN(10));
        p.spec.flags = flags[i];
        make_plan(&p);
        ck_assert_int_eq(p.totals.other_lengths, 0);
        ck_assert_int_le(strips_of(1, INT64_MAX), 3);
        muslin_cutplan_free(p.plan);
    }
    start_ends(IN(2, 1, 2), WHOLE_IN(10));
    p.pieces[1].count = 2;
    make_plan(&p);
    ck_assert_int_eq(p.totals.other_lengths, 0);
    muslin_cutplan_free(p.plan);
    p.pieces[1].count = 1;
    p.spec.usable_width = 0;
    have(&p, 9, WHOLE_IN(40), WHOLE_IN(5));
    make_plan(&p);
    ck_assert_int_eq(p.totals.other_lengths, 0);
    muslin_cutplan_free(p.plan);
}
END_TEST

START_TEST(two_bindings_share_what_is_left)
{
    /* Both alike, six ends of 13 in. */
    start(&p, WHOLE_IN(40));
    want(&p, 12, IN(13, 1, 2), IN(2, 1, 2));
    want_joined(WHOLE_IN(77), IN(2, 1, 2), WHOLE_IN(10));
    want_joined(WHOLE_IN(77), IN(2, 1, 2), WHOLE_IN(10));
    make_joined(1, 8 * IN(2, 1, 2));
    ck_joined(2);
    ck_assert_int_eq(p.totals.proven, 1);
    muslin_cutplan_free(p.plan);
    p.pieces[1].least_part = WHOLE_IN(12);
    make_joined(1, 8 * IN(2, 1, 2));
    muslin_cutplan_free(p.plan);
    p.pieces[1].join_loss = IN(0, 3, 8);
    make_joined(1, 8 * IN(2, 1, 2));
    muslin_cutplan_free(p.plan);
}
END_TEST

/* Thirty bindings of a whole strip and 37 1/2 in beside ends for all of them. */
START_TEST(many_bindings_come_to_an_end)
{
    start(&p, WHOLE_IN(40));
    want(&p, 180, IN(13, 1, 2), IN(2, 1, 2));
    for (int64_t i = 0; i < 30; i++)
        want_joined(WHOLE_IN(77), IN(2, 1, 2), WHOLE_IN(10));
    p.spec.work_limit = 400000000;
    make_plan(&p);
    for (int64_t i = 1; i <= 30; i++)
        ck_joined(i);
    ck_assert_int_le(p.totals.cloth_length, 125 * IN(2, 1, 2)); /* of 150 */
    muslin_cutplan_free(p.plan);
}
END_TEST

/* More kinds of ends than a piece is joined from: the longest are taken. */
/* Three pieces of 24 x 5 leave 16 in each of three strips of 5. Whole strips of 40 in, each of which gives its length
 * less a join, are needed only for what those three and one join more do not give. */
START_TEST(as_few_whole_strips_stay_as_there_can_be)
{
    for (int64_t length = 1; length <= 200; length += 7)
        for (int64_t loss = 0; loss <= 6; loss += 2) {
            int64_t wholes = 0;
            while (wholes * (40 - loss) + 3 * (16 - loss) + loss < length)
                wholes++;
            start(&p, 40);
            want(&p, 3, 24, 5);
            want_joined(length, 5, 1)->join_loss = loss;
            make_joined(1, 5 * (3 + wholes));
            muslin_cutplan_free(p.plan);
        }
}
END_TEST

/* What a piece is joined from: so many whole strips, and after these of the longest ends as many as it needs. */
struct parts {
    int64_t wholes;
    int64_t ends;
};

static struct parts fewest_parts(int64_t wanted, int64_t whole, int64_t loss, const int64_t *ends, int64_t count)
{
    struct parts parts = { 0, 0 };
    int64_t all = loss;
    for (int64_t i = 0; i < count && i < 16; i++)
        all += msl_greater(ends[i] - loss, 0);
    while (all + parts.wholes * (whole - loss) < wanted)
        parts.wholes++;
    for (all = loss + parts.wholes * (whole - loss); all < wanted; parts.ends++)
        all += ends[parts.ends] - loss;
    return parts;
}

/* The longest first. */
static void add_end(int64_t *ends, int64_t count, int64_t end)
{
    for (; count > 0 && ends[count - 1] < end; count--)
        ends[count] = ends[count - 1];
    ends[count] = end;
}

static void ck_parts(int64_t row, const struct parts *parts)
{
    ck_joined(row);
    if (p.totals.other_lengths)
        ck_assert_int_eq(strips_of(row, INT64_MAX), parts->wholes + parts->ends);
}

/* Pieces wider than half of the bolt, each in a strip of its own as high as the joined piece or higher, leave as many
 * ends, of other lengths: of these the longest 16 at most, and as few whole strips as suffice. */
START_TEST(ends_of_any_length_are_joined)
{
    uint64_t seed = 31;
    for (int32_t round = 0; round < 400; round++) {
        int64_t ends[24];
        int64_t length = 0;
        const int64_t count = 1 + tiny_chance(&seed, round % 4 == 0 ? 24 : 6);
        const int64_t loss = tiny_chance(&seed, 4);
        start(&p, 40);
        p.spec.work_limit = 100000;
        for (int64_t i = 0; i < count; i++) {
            const int64_t width = 21 + tiny_chance(&seed, 19);
            const int64_t height = 5 + tiny_chance(&seed, 2);
            want(&p, 1, width, height);
            length += height;
            add_end(ends, i, 40 - width);
        }
        const int64_t wanted = 5 + tiny_chance(&seed, round % 4 == 0 ? 200 : 300);
        const struct parts parts = fewest_parts(wanted, 40, loss, ends, count);
        want_joined(wanted, 5, 1)->join_loss = loss;
        make_plan(&p);
        ck_assert_int_eq(p.totals.cloth_length, length + 5 * parts.wholes);
        ck_parts(count, &parts);
        muslin_cutplan_free(p.plan);
    }
}
END_TEST

/* Borders fill panels from the left; the rest beside them, as wide in each, is cut into strips for the joined piece. */
START_TEST(rests_of_panels_are_joined)
{
    uint64_t seed = 32;
    int32_t joined = 0;
    for (int32_t round = 0; round < 300; round++) {
        int64_t ends[200];
        int64_t count = 0;
        const int64_t loss = tiny_chance(&seed, 4);
        const int64_t high = 3 + tiny_chance(&seed, 9);
        const int64_t beside = 2 + tiny_chance(&seed, 3); /* borders in a panel, 9 wide or a little more */
        const int64_t width = beside == 4 ? 9 : 40 / (beside + 1) + 1;
        const int64_t panels = 1 + tiny_chance(&seed, 3);
        const int64_t length = 50 + tiny_chance(&seed, 20);
        start(&p, 40);
        p.spec.work_limit = 100000;
        want_kind(&p, MUSLIN_BLANK_LENGTHWISE, beside * panels, width, length);
        for (int64_t i = 0; i < panels * (length / high) && i < 200; i++)
            add_end(ends, count++, 40 - beside * width);
        const int64_t wanted = 5 + tiny_chance(&seed, 400);
        const struct parts parts = fewest_parts(wanted, 40, loss, ends, count);
        want_joined(wanted, high, 1)->join_loss = loss;
        make_plan(&p);
        ck_assert_int_eq(p.totals.cloth_length, panels * length + high * parts.wholes);
        ck_parts(1, &parts);
        joined += p.totals.other_lengths;
        muslin_cutplan_free(p.plan);
    }
    ck_assert_int_gt(joined, 30);
}
END_TEST

/* Two borders of 10 x 54 leave 20 x 54 of a panel, in which four squares of 12 stand one above the other: beside them
 * are four ends of 8, behind them 6, too low. So 32 are joined from these; 33 are not. */
START_TEST(ends_within_panels_are_joined)
{
    for (int64_t more = 0; more < 2; more++) {
        start(&p, 40);
        want_kind(&p, MUSLIN_BLANK_LENGTHWISE, 2, 10, 54);
        want(&p, 4, 12, 12);
        want_joined(32 + more, 12, 1)->join_loss = 0;
        make_joined(2, 54 + 12 * more);
        ck_assert_int_eq(strips_of(2, INT64_MAX), more ? 1 : 4);
        muslin_cutplan_free(p.plan);
    }
}
END_TEST

/* Two ends of 16: of no loss they give 32, or 31 where either may be 15, or 30 where both are; not less. */
START_TEST(parts_are_cut_as_short_as_they_may_be)
{
    for (int64_t length = 28; length <= 33; length++)
        for (int64_t least = 14; least <= 17; least++) {
            start(&p, 40);
            want(&p, 2, 24, 5);
            want_joined(length, 5, least)->join_loss = 0;
            make_joined(1, length <= 32 && length >= 2 * least ? 10 : 15);
            muslin_cutplan_free(p.plan);
        }
}
END_TEST

/* Of three joined pieces of 40, each of another height, one may be in parts that are left beside three pieces of 24 in
 * strips as high as it: the others would have to be longer there. So it needs no strip, whichever it is. */
START_TEST(every_joined_piece_is_tried)
{
    static const int64_t height[] = { 9, 5, 2 };
    for (int one = 0; one < 3; one++)
        for (int first = 0; first < 3; first++) {
            start(&p, 40);
            want(&p, 3, 24, height[one]);
            for (int k = 0; k < 3; k++) {
                const int row = (first + k) % 3;
                want_joined(40, height[row], row == one ? 4 : 17)->join_loss = 0;
            }
            make_plan(&p);
            ck_assert_int_eq(p.totals.cloth_length, 9 + 5 + 2 + 2 * height[one]);
            muslin_cutplan_free(p.plan);
        }
}
END_TEST

START_TEST(the_longest_ends_are_taken)
{
    for (int rising = 0; rising < 2; rising++) {
        muslin_len length = 0;
        start(&p, WHOLE_IN(40));
        for (int64_t i = 0; i < 20; i++) {
            want(&p, 1, WHOLE_IN(21) + WHOLE_IN(rising ? 19 - i : i) / 4, WHOLE_IN(5) + i * 1016);
            length += WHOLE_IN(5) + i * 1016;
        }
        want_joined(WHOLE_IN(130), WHOLE_IN(5), WHOLE_IN(10));
        make_plan(&p);
        ck_joined(20);
        ck_assert_int_eq(p.totals.cloth_length, length);
        ck_assert_int_eq(strips_of(20, INT64_MAX), 8);
        muslin_cutplan_free(p.plan);
    }
}
END_TEST

struct told {
    int64_t calls;
    int64_t work;
    int64_t best;
    int32_t end;
};

static int32_t tell(void *context, int64_t work, int64_t best, int64_t bound)
{
    struct told *told = context;
    told->calls++;
    ck_assert_int_ge(work, told->work);
    ck_assert_int_le(best, told->best);
    ck_assert_int_le(bound, best);
    told->work = work;
    told->best = best;
    return told->end;
}

START_TEST(the_search_for_other_lengths_is_told_as_one)
{
    struct muslin_allocator allocator;
    ck_ok(muslin_allocator_libc(&allocator));
    for (int32_t end = 0; end < 2; end++) {
        struct told told = { 0, 0, INT64_MAX, end };
        start_ends(IN(2, 1, 2), WHOLE_IN(10));
        want(&p, 9, IN(5, 3, 8), IN(3, 1, 8));
        want(&p, 17, IN(7, 1, 8), IN(4, 5, 8));
        ck_ok(muslin_cutplan_create(&p.spec, p.pieces, sizeof p.pieces[0], p.n, NULL, 0, 0, &allocator, tell, &told,
                                    &p.plan, NULL));
        read_plan(&p);
        ck_assert_int_ge(told.calls, 1);
        ck_assert_int_ge(p.totals.work, told.work);
        ck_joined(1);
        if (end)
            ck_assert_int_eq(told.calls, 1);
        muslin_cutplan_free(p.plan);
    }
}
END_TEST

/* Several joined pieces among others: however many searches there are, their work is told as one sum that only grows,
 * and comes to no more than the limit, but for the step with which a search ends. */
START_TEST(work_is_counted_over_all_searches)
{
    enum { LIMIT = 2000000, LAST_STEP = 60000 };
    struct muslin_allocator allocator;
    int32_t told_often = 0;
    ck_ok(muslin_allocator_libc(&allocator));
    for (uint64_t seed = 1; seed <= 24; seed++) {
        struct told told = { 0, 0, INT64_MAX, 0 };
        uint64_t chance = seed;
        start(&p, WHOLE_IN(40));
        p.spec.work_limit = LIMIT;
        for (int32_t i = 0; i < 8; i++)
            want(&p, 1 + tiny_chance(&chance, 12), WHOLE_IN(2) + tiny_chance(&chance, 100) * 1016,
                 WHOLE_IN(2) + tiny_chance(&chance, 24) * 1016);
        for (int32_t i = 0; i < 3; i++)
            want_joined(WHOLE_IN(50) + tiny_chance(&chance, 2000) * 1016, WHOLE_IN(2) + tiny_chance(&chance, 8) * 1016,
                        WHOLE_IN(2));
        ck_ok(muslin_cutplan_create(&p.spec, p.pieces, sizeof p.pieces[0], p.n, NULL, 0, 0, &allocator, tell, &told,
                                    &p.plan, NULL));
        read_plan(&p);
        ck_assert_int_ge(p.totals.work, told.work);
        ck_assert_int_le(p.totals.work, LIMIT + 4 * LAST_STEP);
        ck_assert_int_le(p.totals.cost, told.best);
        told_often += told.calls > 3;
        muslin_cutplan_free(p.plan);
    }
    ck_assert_int_gt(told_often, 2);
}
END_TEST

/* A dozen sizes, of which no search comes to an end, and one joined piece: the first search has half of the limit, and
 * each one after it half of what is left; two of these requests get no shorter by it. */
START_TEST(each_search_has_its_part_of_the_limit)
{
    enum { LIMIT = 4000000, LAST_STEP = 40000 };
    static const uint64_t seeds[] = { 2, 3, 59, 119 };
    for (size_t k = 0; k < sizeof seeds / sizeof seeds[0]; k++) {
        uint64_t chance = seeds[k];
        start(&p, WHOLE_IN(40));
        want_joined(0, WHOLE_IN(2), 0);
        for (int32_t i = 0; i < 12; i++) {
            const muslin_len length = WHOLE_IN(2) + tiny_chance(&chance, 60) * 1016;
            const muslin_len width = WHOLE_IN(2) + tiny_chance(&chance, 100) * 1016;
            want(&p, 5 + tiny_chance(&chance, 40), width, length);
        }
        p.pieces[0].cut_width = WHOLE_IN(70) + tiny_chance(&chance, 1000) * 1016;
        p.spec.work_limit = LIMIT / 2;
        ck_ok(try_plan(&p, NULL));
        read_plan(&p);
        ck_assert_int_eq(p.totals.stopped, MUSLIN_CUTPLAN_STOPPED_WORK);
        int64_t left = LIMIT - p.totals.work;
        muslin_cutplan_free(p.plan);
        p.spec.work_limit = LIMIT;
        p.pieces[0].least_part = WHOLE_IN(4);
        ck_ok(try_plan(&p, NULL));
        read_plan(&p);
        muslin_cutplan_free(p.plan);
        ck_assert_int_gt(left - (LIMIT - p.totals.work), LAST_STEP);
        int32_t searches = 1;
        for (left -= left / 2; left - (LIMIT - p.totals.work) > LAST_STEP; left -= left / 2)
            searches++;
        ck_assert_int_lt(searches, 4);
        ck_assert_int_lt(llabs(LIMIT - p.totals.work - left), LAST_STEP);
    }
}
END_TEST

START_TEST(other_widths_and_failing_memory)
{
    struct failing_allocator failing;
    struct muslin_cutplan_width widths[2];
    size_t count = 0;
    start_ends(IN(2, 1, 2), WHOLE_IN(10));
    want_joined(WHOLE_IN(79), WHOLE_IN(2), WHOLE_IN(10));
    make_plan(&p);
    ck_ok(muslin_cutplan_widths(p.plan, WHOLE_IN(40), WHOLE_IN(41), 2, NULL, NULL, widths, sizeof widths[0], 2, &count,
                                NULL));
    ck_assert_int_eq(widths[0].cloth_length, p.totals.cloth_length);
    muslin_cutplan_free(p.plan);
    EVERY_ALLOCATION_FAILS_ONCE(failing) {
        p.plan = NULL;
        const muslin_status status = plan_with(&p, &failing.allocator, NULL);
        if (status == MUSLIN_ERR_NO_MEMORY) {
            ck_assert_ptr_null(p.plan);
        } else { /* none is longer for want of memory that does not say so */
            struct muslin_cutplan_total totals = { .size = (uint32_t)sizeof totals };
            ck_ok(status);
            ck_ok(muslin_cutplan_totals(p.plan, &totals, NULL));
            ck_assert(totals.cost == p.totals.cost || totals.stopped == MUSLIN_CUTPLAN_STOPPED_MEMORY);
        }
        muslin_cutplan_free(p.plan);
        ck_assert(failing_is_clean(&failing));
    }
}
END_TEST

START_TEST(more_sizes_than_are_searched)
{
    struct failing_allocator failing;
    start(&p, WHOLE_IN(40));
    for (int64_t i = 0; i < 59; i++)
        want_kind(&p, MUSLIN_BLANK_JOINED, 1, WHOLE_IN(61) + i * 1016, WHOLE_IN(5) + i * 1016);
    want_joined(WHOLE_IN(400), WHOLE_IN(5), WHOLE_IN(10));
    failing_start(&failing, 0);
    ck_ok(plan_with(&p, &failing.allocator, NULL));
    ck_plan(&p);
    ck_joined(59);
    ck_assert_int_eq(strips_of(59, WHOLE_IN(40)), 10); /* as if none were left over */
    muslin_cutplan_free(p.plan);
    ck_assert(failing_is_clean(&failing));
}
END_TEST

/* By chance: with a least part a plan is as short or shorter, where half of the work suffices without; and sound. */
START_TEST(other_lengths_only_shorten)
{
    uint64_t chance = (uint64_t)_i + 1;
    start(&p, WHOLE_IN(30) + tiny_chance(&chance, 100) * 1016);
    const size_t first = _i % 5 == 4 ? 3 : 0; /* so many joined ones come first */
    while (p.n < 6)
        if (p.n >= first && p.n < first + 3)
            want(&p, 1 + tiny_chance(&chance, 12), WHOLE_IN(2) + tiny_chance(&chance, 100) * 1016,
                 WHOLE_IN(2) + tiny_chance(&chance, 24) * 1016);
        else if (_i % 2 == 0 && p.n == first + 3)
            want_kind(&p, MUSLIN_BLANK_LENGTHWISE, 1 + tiny_chance(&chance, 4), WHOLE_IN(5), WHOLE_IN(50));
        else
            want_joined(WHOLE_IN(20) + tiny_chance(&chance, 2000) * 1016,
                        WHOLE_IN(2) + tiny_chance(&chance, 12) * 1016, 0);
    if (_i % 3 == 0)
        p.spec.flags = MUSLIN_CUTPLAN_ONE_HEIGHT;
    p.spec.work_limit = _i % 2 == 1 ? 0 : 3000000;
    make_plan(&p);
    const struct muslin_cutplan_total plain = p.totals;
    muslin_cutplan_free(p.plan);
    for (size_t row = 0; row < p.n; row++)
        if (p.pieces[row].kind == MUSLIN_BLANK_JOINED)
            p.pieces[row].least_part = WHOLE_IN(1) + tiny_chance(&chance, 100) * 1016;
    make_plan(&p);
    for (size_t row = 0; row < p.n; row++)
        if (p.pieces[row].kind == MUSLIN_BLANK_JOINED)
            ck_joined((int64_t)row);
    if (plain.proven && plain.work <= p.spec.work_limit / 2)
        ck_assert_int_le(p.totals.cost, plain.cost);
    ck_assert_int_eq(p.totals.area_bound, plain.area_bound);
    ck_assert_int_eq(p.totals.own_strips_length, plain.own_strips_length);
    muslin_cutplan_free(p.plan);
}
END_TEST

Suite *cutplan_joined_long_suite(void)
{
    Suite *suite = suite_create("cutplan_joined_long");
    TCase *tcase = tcase_create("joined");
    tcase_set_timeout(tcase, 120);
    tcase_add_loop_test(tcase, other_lengths_only_shorten, SOME, EVERY);
    suite_add_tcase(suite, tcase);
    return suite;
}

Suite *cutplan_joined_suite(void)
{
    Suite *suite = suite_create("cutplan_joined");
    TCase *tcase = tcase_create("joined");
    tcase_add_test(tcase, binding_is_cut_beside_long_borders);
    tcase_add_test(tcase, binding_is_cut_from_the_ends_of_strips);
    tcase_add_test(tcase, some_joined_pieces_are_left_as_they_are);
    tcase_add_test(tcase, two_bindings_share_what_is_left);
    tcase_add_test(tcase, as_few_whole_strips_stay_as_there_can_be);
    tcase_add_test(tcase, ends_of_any_length_are_joined);
    tcase_add_test(tcase, rests_of_panels_are_joined);
    tcase_add_test(tcase, ends_within_panels_are_joined);
    tcase_add_test(tcase, parts_are_cut_as_short_as_they_may_be);
    tcase_add_test(tcase, every_joined_piece_is_tried);
    tcase_add_test(tcase, the_longest_ends_are_taken);
    tcase_add_test(tcase, the_search_for_other_lengths_is_told_as_one);
    tcase_add_test(tcase, more_sizes_than_are_searched);
    suite_add_tcase(suite, tcase);
    return suite;
}

/* What takes longer. */
Suite *cutplan_joined_often_suite(void)
{
    Suite *suite = suite_create("cutplan_joined_often");
    TCase *tcase = tcase_create("joined often");
    tcase_set_timeout(tcase, 120);
    tcase_add_test(tcase, many_bindings_come_to_an_end);
    tcase_add_test(tcase, work_is_counted_over_all_searches);
    tcase_add_test(tcase, each_search_has_its_part_of_the_limit);
    tcase_add_test(tcase, other_widths_and_failing_memory);
    tcase_add_loop_test(tcase, other_lengths_only_shorten, 0, SOME);
    suite_add_tcase(suite, tcase);
    return suite;
}
