/* test_cutplan_most.c - what the check of a plan looks at: the most that a thing is worth, and packings, with stacks,
 * with what lies beside the arrays, and how much is looked at.
 *
 * SPDX-License-Identifier: MIT */
#include "test_cutplan.h"

#include "cutplan_check.h"
#include "cutplan_most.h"
#include "cutplan_repack.h"
#include "told.h"

Suite *cutplan_most_suite(void);

enum { SIZES = 4, FENCES = SIZES + 2, MUCH = 100000 };

/* A cutting whose arrays lie between others that are worth much, which none may look at. */
struct fenced {
    struct tiny t;
    struct msl_piece_size sizes[FENCES];
    int64_t worths[FENCES];
    int64_t heights[FENCES + 4];
};

static void fence(struct fenced *f)
{
    static const struct msl_piece_size tempting = { 1, 1, 1, 1, 0, MUCH, 0, 0 };
    static const struct msl_piece_size slit = { 1, 1, 0, 0, 0, MUCH, 1, 0 };
    tiny_start(&f->t);
    f->t.cutting.sizes = f->sizes + 1;
    f->t.cutting.heights = f->heights + 1;
    for (int32_t i = 0; i < FENCES; i++) {
        f->sizes[i] = i == 0 ? slit : tempting;
        f->worths[i] = MUCH;
    }
    for (int32_t i = 0; i < FENCES + 4; i++)
        f->heights[i] = 1;
}

static struct msl_piece_size *add_size(struct fenced *f, int64_t across, int64_t along, int64_t count, int64_t worth)
{
    const struct msl_piece_size size = { across, along, 0, 0, 0, count, 0, 0 };
    struct msl_piece_size *added = &f->t.cutting.sizes[f->t.cutting.size_count++];
    f->worths[f->t.cutting.size_count] = worth;
    *added = size;
    if (f->t.cutting.size_count < SIZES) { /* behind it lies one that is slit, of a panel the most tempting */
        added[1].slit = 1;
        added[1].turned_across = 0;
    }
    return added;
}

static void add_way(struct fenced *f, int64_t across, int64_t along, int32_t sheet, int32_t panel)
{
    const struct msl_way way = { along, across, along, sheet, panel, -1, 0 };
    f->t.ways[f->t.cutting.way_count++] = way;
}

static void start_most(struct msl_most *most, struct fenced *f, struct msl_told *told,
                       struct failing_allocator *failing, int64_t most_steps)
{
    *told = msl_told_by(NULL, NULL);
    failing_start(failing, 0);
    ck_ok(msl_most_start(most, &f->t.cutting, most_steps, told, &failing->allocator));
}

static void end_most(struct msl_most *most, const struct failing_allocator *failing)
{
    msl_most_end(most);
    ck_assert(failing_is_clean(failing));
}

/* ---- stacks, by trying all --------------------------------------------------------------------------------------- */

/* The most in a stack so wide and high, of sizes from `from` on, or of the one size `only`. */
static int64_t try_stack(const struct fenced *f, int64_t width, int64_t high, int32_t from, int32_t only, int within)
{
    if (from == 2 * f->t.cutting.size_count)
        return 0;
    const struct msl_piece_size *size = &f->t.cutting.sizes[from / 2];
    const int64_t across = from % 2 ? size->turned_across : size->across;
    const int64_t along = from % 2 ? size->turned_along : size->along;
    int64_t best = try_stack(f, width, high, from + 1, only, within);
    const int stacks = size->run_in == 0 && !size->level && !(within && size->slit) && across == width;
    if (stacks && along <= high && (only < 0 || only == from / 2))
        best = msl_greater(best, f->worths[1 + from / 2] + try_stack(f, width, high - along, from, only, within));
    return best;
}

/* The most in a strip, blank after blank. */
static int64_t try_blanks(const struct fenced *f, int64_t height, int64_t room, uint32_t begun, int32_t only,
                          int within)
{
    int64_t best = 0;
    for (int64_t width = 1; width <= room; width++) {
        const int64_t stack = try_stack(f, width, height, 0, only, within);
        if (stack > 0)
            best = msl_greater(best, stack + try_blanks(f, height, room - width, begun, only, within));
    }
    for (int32_t i = 0; i < f->t.cutting.size_count; i++) {
        const struct msl_piece_size *size = &f->t.cutting.sizes[i];
        const int64_t lies = size->level ? size->along == height : size->along <= height;
        const int64_t taken = size->across + (begun >> i & 1 ? 0 : size->run_in);
        if ((size->run_in == 0 && !size->level) || (within && size->slit) || !lies || taken > room ||
            (only >= 0 && only != i))
            continue;
        best = msl_greater(best, f->worths[1 + i] +
                                     try_blanks(f, height, room - taken, begun | 1u << i, only, within));
    }
    return best;
}

static int64_t try_strip(const struct fenced *f, int64_t height, int64_t room, int within)
{
    int64_t best = 0;
    if (!f->t.cutting.one_size)
        return try_blanks(f, height, room, 0, -1, within);
    for (int32_t i = 0; i < f->t.cutting.size_count; i++)
        best = msl_greater(best, try_blanks(f, height, room, 0, i, within));
    return best;
}

static int64_t try_behind(const struct fenced *f, int64_t across, int64_t along, int32_t from)
{
    int64_t best = 0;
    for (int32_t h = from; h < f->t.cutting.height_count; h++) {
        const int64_t height = f->t.cutting.heights[h];
        if (height <= along)
            best = msl_greater(best, try_strip(f, height, across, 1) + try_behind(f, across, along - height, h));
    }
    return best;
}

/* Slit pieces as wide as `across` in all. */
static int64_t try_slit(const struct fenced *f, int64_t across, int64_t along)
{
    int64_t best = 0;
    for (int32_t i = 0; i < f->t.cutting.size_count; i++) {
        const struct msl_piece_size *size = &f->t.cutting.sizes[i];
        if (size->slit && size->along <= along && size->across <= across)
            best = msl_greater(best, f->worths[1 + i] + try_slit(f, across - size->across, along));
    }
    return best;
}

static int64_t most_by_trying(const struct fenced *f)
{
    const struct msl_way *way = &f->t.ways[0];
    int64_t best = 0;
    if (!way->sheet)
        return try_strip(f, way->along, way->across, 0);
    for (int64_t slit = 0; slit <= (way->panel ? way->across : 0); slit++)
        best = msl_greater(best, try_slit(f, slit, way->along) + try_behind(f, way->across - slit, way->along, 0));
    return best;
}

static void make_stacks(struct fenced *f, uint64_t *seed)
{
    fence(f);
    for (int64_t i = 1 + tiny_chance(seed, 3); i > 0; i--) {
        const int64_t worth = tiny_chance(seed, 9); /* drawn in an order that no compiler changes */
        const int64_t along = 1 + tiny_chance(seed, 4);
        struct msl_piece_size *size = add_size(f, 1 + tiny_chance(seed, 4), along, MUCH, worth);
        const int64_t kind = tiny_chance(seed, 6);
        size->level = kind == 0;
        size->run_in = kind == 1 ? 1 + tiny_chance(seed, 2) : 0;
        size->slit = kind == 2;
        if (kind > 3) {
            size->turned_across = size->along;
            size->turned_along = size->across;
        }
    }
    const int32_t sheet = tiny_chance(seed, 2) == 0;
    const int32_t panel = sheet && tiny_chance(seed, 2) == 0;
    const int64_t high = 1 + tiny_chance(seed, 5);
    add_way(f, 2 + tiny_chance(seed, 6), high, sheet, panel);
    const int32_t many = sheet ? 2 : 1 + (int32_t)tiny_chance(seed, 2); /* of a strip perhaps none */
    for (int64_t height = 5; height > 0; height--)
        if (tiny_chance(seed, 2) == 0 && many > 1)
            f->t.cutting.heights[f->t.cutting.height_count++] = height;
    f->t.cutting.one_size = tiny_chance(seed, 3) == 0;
    f->t.cutting.stacked = 1;
}

/* Worth more from each to the next, and from the least taken. */
static void ck_sums(const struct msl_sums *sums)
{
    for (size_t i = 1; i < sums->count; i++) {
        ck_assert_int_ge(sums->at[i].taken, sums->at[i - 1].taken);
        ck_assert_int_gt(sums->at[i].worth, sums->at[i - 1].worth);
    }
}

/* There are more pieces than fit, so that no stack is too good: the most is what trying all says. */
START_TEST(stacks_as_by_trying_all)
{
    static struct fenced f;
    uint64_t seed = 5;
    for (int32_t round = 0; round < 1500; round++) {
        struct msl_most most;
        struct msl_told told;
        struct failing_allocator failing;
        make_stacks(&f, &seed);
        const int64_t truth = most_by_trying(&f);
        start_most(&most, &f, &told, &failing, 1000000);
        for (int64_t enough = truth > 2 ? truth - 2 : 0; enough < truth + 2; enough++) {
            const int64_t said = msl_most_of(&most, 0, f.worths + 1, enough);
            ck_assert_int_eq(said <= enough, truth <= enough);
            if (truth > enough)
                ck_assert_int_eq(said, truth);
        }
        if (f.t.ways[0].sheet)
            ck_sums(&most.slit);
        else
            ck_sums(&most.sums);
        ck_ok(most.status);
        end_most(&most, &failing);
    }
}
END_TEST

/* One square 2 x 2 worth 3, in a strip 4 high: it is in one stack, once, whichever way it lies. And of two sizes that
 * lie 3 wide where each has strips of its own: one piece of each, so 7 or 5. */
START_TEST(pieces_are_stacked_once)
{
    static struct fenced f;
    struct msl_most most;
    struct msl_told told;
    struct failing_allocator failing;
    fence(&f);
    add_size(&f, 2, 2, 1, 3)->turned_across = 2;
    f.t.cutting.sizes[0].turned_along = 2;
    add_way(&f, 9, 4, 0, 0);
    f.t.cutting.stacked = 1;
    start_most(&most, &f, &told, &failing, 1000);
    ck_assert_int_eq(msl_most_of(&most, 0, f.worths + 1, 0), 3);
    end_most(&most, &failing);
    fence(&f);
    add_size(&f, 9, 3, 1, 5)->turned_across = 3; /* 9 high it lies in no strip, and so only 3 wide */
    f.t.cutting.sizes[0].turned_along = 5;
    f.t.cutting.sizes[0].along = 9;
    add_size(&f, 3, 4, 1, 7);
    add_way(&f, 9, 6, 0, 0);
    f.t.cutting.stacked = f.t.cutting.one_size = 1;
    start_most(&most, &f, &told, &failing, 1000);
    ck_assert_int_eq(msl_most_of(&most, 0, f.worths + 1, 0), 7);
    end_most(&most, &failing);
}
END_TEST

/* Two sizes make stacks of four widths: 1 and 5, 3 and 2. In a strip of 9 x 5 there are three 3 wide, of two pieces
 * worth 10 each. */
START_TEST(sizes_are_stacked_both_ways)
{
    static struct fenced f;
    struct msl_most most;
    struct msl_told told;
    struct failing_allocator failing;
    fence(&f);
    for (int32_t i = 0; i < 2; i++) {
        struct msl_piece_size *size = add_size(&f, 1 + 2 * i, 5 - 3 * i, MUCH, 1 + 9 * i);
        size->turned_across = size->along;
        size->turned_along = size->across;
    }
    add_way(&f, 9, 5, 0, 0);
    f.t.cutting.stacked = 1;
    start_most(&most, &f, &told, &failing, 1000);
    ck_assert_int_eq(msl_most_of(&most, 0, f.worths + 1, 0), 60);
    end_most(&most, &failing);
}
END_TEST

/* ---- how much is looked at --------------------------------------------------------------------------------------- */

/* Nothing is looked at where area tells: a sheet of 4 x 4 holds no more than four squares of 2, worth 4. And pieces
 * that take 6 of the area one way and 4 the other count as 4, so that a sheet of 16 holds no more than four. */
START_TEST(what_area_tells_is_not_looked_for)
{
    static struct fenced f;
    struct msl_most most;
    struct msl_told told;
    struct failing_allocator failing;
    fence(&f);
    add_size(&f, 2, 2, MUCH, 4);
    add_way(&f, 4, 4, 1, 0);
    f.t.cutting.heights[f.t.cutting.height_count++] = 2;
    start_most(&most, &f, &told, &failing, 1000);
    ck_assert_int_eq(msl_most_of(&most, 0, f.worths + 1, 16), 16);
    ck_assert_int_eq(most.steps, 0);
    ck_assert_int_eq(msl_most_of(&most, 0, f.worths + 1, 15), 16);
    ck_assert_int_gt(most.steps, 0);
    end_most(&most, &failing);
    for (int32_t listed = 0; listed < 2; listed++) {
        fence(&f);
        struct msl_piece_size *size = add_size(&f, listed ? 2 : 3, 2, MUCH, 1);
        size->turned_across = listed ? 3 : 2;
        size->turned_along = 2;
        add_way(&f, 4, 4, 1, 0);
        f.t.cutting.heights[f.t.cutting.height_count++] = 2;
        start_most(&most, &f, &told, &failing, 1000);
        ck_assert_int_eq(msl_most_of(&most, 0, f.worths + 1, 4), 4);
        ck_assert_int_eq(most.steps, 0);
        ck_assert_int_eq(msl_most_of(&most, 0, f.worths + 1, 3), 4);
        ck_assert_int_gt(most.steps, 0);
        end_most(&most, &failing);
    }
}
END_TEST

/* Pieces as low as a quarter of their strip, so that area tells nothing. Two of 3 worth 6, any number of 2 worth 2, in
 * 10: nothing comes above 20, which is two for each of all 10. Nor above 16: two of the first, 12, and the 4 left at
 * one each, though one and the 13 it would leave at the wrong end come to more. */
START_TEST(sums_that_can_not_come_above_are_left_out)
{
    static struct fenced f;
    struct msl_most most;
    struct msl_told told;
    struct failing_allocator failing;
    fence(&f);
    add_size(&f, 2, 1, MUCH, 2);
    add_size(&f, 3, 1, 2, 6);
    add_way(&f, 10, 4, 0, 0);
    start_most(&most, &f, &told, &failing, 1000);
    ck_assert_int_eq(msl_most_of(&most, 0, f.worths + 1, 15), 16);
    const int64_t looked_at = most.steps;
    ck_assert_int_le(msl_most_of(&most, 0, f.worths + 1, 16), 16);
    ck_assert_uint_eq(most.sums.count, 0);
    ck_assert_int_lt(most.steps - looked_at, looked_at);
    const int64_t before = most.steps;
    ck_assert_int_le(msl_most_of(&most, 0, f.worths + 1, 20), 20);
    ck_assert_uint_eq(most.sums.count, 0);
    ck_assert_int_eq(most.steps, before);
    end_most(&most, &failing);
}
END_TEST

/* A billion pieces of which three fit are laid three times. */
START_TEST(no_more_is_laid_than_fits)
{
    static struct fenced f;
    struct msl_most most;
    struct msl_told told;
    struct failing_allocator failing;
    fence(&f);
    add_size(&f, 3, 1, 1000000000, 5)->run_in = 1;
    add_way(&f, 10, 4, 0, 0);
    start_most(&most, &f, &told, &failing, 100);
    ck_assert_int_eq(msl_most_of(&most, 0, f.worths + 1, 0), 15);
    ck_ok(most.status);
    end_most(&most, &failing);
}
END_TEST

/* So many steps as were counted are enough, and one less is not. And as many sums as may be kept: sizes 1, 2, 4 ..
 * wide, worth as much, have each width below 2^20 as a sum; below 2^21 they are too many, for which no memory is
 * taken. */
START_TEST(limits_are_what_may_just_be_used)
{
    static struct fenced f;
    static struct msl_piece_size doubles[21];
    int64_t worths[21];
    struct msl_most most;
    struct msl_told told;
    struct failing_allocator failing;
    int64_t enough_steps = MUCH;
    for (int32_t less = 0; less < 3; less++) {
        fence(&f);
        add_size(&f, 2, 1, MUCH, 2);
        add_size(&f, 3, 1, 2, 6);
        add_way(&f, 10, 4, 0, 0);
        start_most(&most, &f, &told, &failing, less == 0 ? MUCH : enough_steps - (less == 2));
        msl_most_of(&most, 0, f.worths + 1, 0);
        ck_status(most.status, less == 2 ? MUSLIN_ERR_WORK_LIMIT : MUSLIN_OK);
        enough_steps = most.steps;
        end_most(&most, &failing);
    }
    fence(&f);
    f.t.cutting.sizes = doubles;
    f.t.cutting.size_count = 20;
    for (int32_t i = 0; i < 21; i++) {
        const struct msl_piece_size size = { (int64_t)1 << i, 4, 0, 0, 0, 1, 0, 0 };
        doubles[i] = size;
        worths[i] = (int64_t)1 << i;
    }
    add_way(&f, (int64_t)1 << 30, 4, 0, 0);
    start_most(&most, &f, &told, &failing, MSL_CHECK_STEPS_MAX);
    ck_assert_int_eq(msl_most_of(&most, 0, worths, 0), ((int64_t)1 << 20) - 1);
    ck_ok(most.status);
    end_most(&most, &failing);
    f.t.cutting.size_count = 21;
    start_most(&most, &f, &told, &failing, MSL_CHECK_STEPS_MAX);
    msl_most_of(&most, 0, worths, 0);
    ck_status(most.status, MUSLIN_ERR_WORK_LIMIT);
    ck_assert_uint_le(failing.most_bytes, 3 * MSL_SUMS_MAX * sizeof(struct msl_sum) + 4096); /* three lists */
    end_most(&most, &failing);
}
END_TEST

/* Worths add up to their end and no further. */
START_TEST(worths_add_up_to_their_end)
{
    ck_assert_int_eq(msl_most_added(MSL_WORTH_MAX - 5, 4), MSL_WORTH_MAX - 1);
    ck_assert_int_eq(msl_most_added(MSL_WORTH_MAX - 5, 5), MSL_WORTH_MAX);
    ck_assert_int_eq(msl_most_added(MSL_WORTH_MAX - 5, 6), MSL_WORTH_MAX);
    ck_assert_int_eq(msl_most_added(MSL_WORTH_MAX, MSL_WORTH_MAX), MSL_WORTH_MAX);
}
END_TEST

/* ---- packings ---------------------------------------------------------------------------------------------------- */

enum { KINDS = 4, LAID = 13, STRIPS = 5 };

/* Strips as they are filled, each a row of kinds. */
struct strips {
    const struct msl_repacked *pieces;
    int32_t count;
    int one_size;
    int64_t room;
    int64_t left[KINDS];
    int32_t kinds[STRIPS][LAID];
    int32_t lengths[STRIPS];
    int32_t strips;
    int64_t most;     /* strips there may be */
    int64_t looked;   /* how many beginnings of packings there are */
};

/* What a strip still has room for. */
static int64_t room_in(const struct strips *s, int32_t strip)
{
    int64_t room = s->room;
    for (int32_t kind = 0; kind < s->count; kind++) {
        int64_t lie = 0;
        for (int32_t i = 0; i < s->lengths[strip]; i++)
            lie += s->kinds[strip][i] == kind;
        room -= lie * s->pieces[kind].taken + (lie > 0 ? s->pieces[kind].run_in : 0);
    }
    return room;
}

static int has_kind(const struct strips *s, int32_t strip, int32_t kind)
{
    for (int32_t i = 0; i < s->lengths[strip]; i++)
        if (s->kinds[strip][i] == kind)
            return 1;
    return 0;
}

static int would_fit(const struct strips *s, int32_t strip, int32_t kind)
{
    const int64_t needed = s->pieces[kind].taken + (has_kind(s, strip, kind) ? 0 : s->pieces[kind].run_in);
    return s->left[kind] > 0 && needed <= room_in(s, strip) && (!s->one_size || has_kind(s, strip, kind));
}

/* The last strip is not before the one it follows, as far as it goes. */
static int is_in_order(const struct strips *s)
{
    const int32_t last = s->strips - 1;
    for (int32_t i = 0; last > 0 && i < s->lengths[last]; i++) {
        const int32_t before = i < s->lengths[last - 1] ? s->kinds[last - 1][i] : KINDS;
        if (s->kinds[last][i] != before)
            return s->kinds[last][i] > before;
    }
    return 1;
}

/* What is left still fits into the cloth of all strips, those begun and the others: looked at where one begins. */
static int has_cloth(const struct strips *s)
{
    int64_t cloth = (s->most - s->strips) * s->room + (s->strips > 0 ? room_in(s, s->strips - 1) : 0);
    for (int32_t kind = 0; kind < s->count; kind++)
        cloth -= s->left[kind] * s->pieces[kind].taken;
    return cloth >= 0;
}

/* Lays the next piece in every way that the packing with the earliest strips may have. Returns 1 where all lie. */
static int try_packings(struct strips *s)
{
    int64_t left = 0;
    int goes_on = 0;
    for (int32_t kind = 0; kind < s->count; kind++) {
        left += s->left[kind];
        goes_on |= s->strips > 0 && would_fit(s, s->strips - 1, kind);
    }
    if (left == 0)
        return 1;
    for (int32_t kind = 0; kind < s->count; kind++) {
        const struct strips was = *s;
        if (s->left[kind] == 0)
            continue;
        if (goes_on && !would_fit(s, s->strips - 1, kind))
            continue;
        if (!goes_on && s->strips == s->most)
            return 0;
        if (!goes_on)
            s->lengths[s->strips++] = 0;
        const int32_t strip = s->strips - 1;
        const int32_t at = s->lengths[strip];
        const int in_strip = at == 0 || s->kinds[strip][at - 1] <= kind;
        s->kinds[strip][s->lengths[strip]++] = kind;
        s->left[kind]--;
        if (in_strip && is_in_order(s) && room_in(s, strip) >= 0 && (at > 0 || has_cloth(s))) {
            s->looked++;
            if (try_packings(s))
                return 1;
        }
        const int64_t looked = s->looked;
        *s = was;
        s->looked = looked;
        if (!goes_on)
            return 0; /* a strip begins with the widest that is left */
    }
    return 0;
}

static int64_t total_of(const struct msl_repacked *pieces, int32_t count)
{
    int64_t total = 0;
    for (int32_t i = 0; i < count; i++)
        total += pieces[i].wanted;
    return total;
}

/* Each beginning of a packing is looked at once, and no other: a step for each kind to come to it, and one to leave it
 * again where it leads to none. */
START_TEST(only_packings_with_the_earliest_strips_are_looked_at)
{
    static struct fenced f;
    uint64_t seed = 3;
    int32_t failed = 0;
    fence(&f);
    for (int32_t round = 0; round < 4000; round++) {
        struct msl_repacked pieces[KINDS];
        struct msl_most most;
        struct msl_told told;
        struct failing_allocator failing;
        struct strips s = { .pieces = pieces, .count = 1 + (int32_t)tiny_chance(&seed, KINDS) };
        for (int32_t i = 0; i < s.count; i++) {
            pieces[i].taken = 2 + tiny_chance(&seed, 7);
            pieces[i].run_in = tiny_chance(&seed, 3) == 0 ? tiny_chance(&seed, 3) : 0;
            pieces[i].wanted = 1 + tiny_chance(&seed, 3);
        }
        s.room = 6 + tiny_chance(&seed, 12);
        s.most = tiny_chance(&seed, STRIPS);
        s.one_size = f.t.cutting.one_size = tiny_chance(&seed, 4) == 0;
        start_most(&most, &f, &told, &failing, 1000000);
        const int fails = msl_repack_fails(&most, pieces, s.count, s.most, s.room);
        ck_ok(most.status);
        for (int32_t i = 0; i < s.count; i++)
            s.left[i] = pieces[i].wanted;
        s.most = msl_lesser(s.most, total_of(pieces, s.count));
        if (!fails || most.steps > 0) {
            for (int32_t i = 1; i < s.count; i++)
                ck_assert_int_ge(pieces[i - 1].taken, pieces[i].taken);
        }
        if (fails) {
            failed++;
            ck_assert(!has_cloth(&s) || try_packings(&s) == 0);
            if (has_cloth(&s))
                ck_assert_int_eq(most.steps, s.count * (2 * s.looked + 1));
            else
                ck_assert_int_eq(most.steps, 0);
        }
        end_most(&most, &failing);
    }
    ck_assert_int_gt(failed, 500);
}
END_TEST

static int fails_to_pack(int64_t taken, int64_t wanted, int64_t strips, int64_t room, muslin_status *status)
{
    static struct fenced f;
    struct msl_repacked pieces[] = { { taken, 0, wanted } };
    struct msl_most most;
    struct msl_told told;
    struct failing_allocator failing;
    fence(&f);
    start_most(&most, &f, &told, &failing, MSL_CHECK_STEPS_MAX);
    const int fails = msl_repack_fails(&most, pieces, 1, strips, room);
    *status = most.status;
    end_most(&most, &failing);
    return fails;
}

/* As many pieces as sums may be kept are packed one by one; of more it is known that they are too many where the cloth
 * is too little. More strips than pieces are no more than these. */
START_TEST(many_pieces_and_many_strips)
{
    const int64_t most_pieces = (int64_t)MSL_SUMS_MAX;
    muslin_status status = MUSLIN_OK;
    ck_assert_int_eq(fails_to_pack(1, most_pieces, 1, most_pieces, &status), 0);
    ck_ok(status);
    ck_assert_int_eq(fails_to_pack(1, most_pieces + 1, 1, most_pieces, &status), 1);
    ck_ok(status);
    ck_assert_int_eq(fails_to_pack(1, most_pieces + 1, 1, most_pieces + 1, &status), 0);
    ck_status(status, MUSLIN_ERR_WORK_LIMIT);
    ck_assert_int_eq(fails_to_pack(5, 1, INT64_C(1) << 40, INT64_C(1) << 30, &status), 0);
    ck_ok(status);
}
END_TEST

Suite *cutplan_most_suite(void)
{
    Suite *suite = suite_create("cutplan_most");
    TCase *tcase = tcase_create("most");
    tcase_add_test(tcase, stacks_as_by_trying_all);
    tcase_add_test(tcase, pieces_are_stacked_once);
    tcase_add_test(tcase, sizes_are_stacked_both_ways);
    tcase_add_test(tcase, what_area_tells_is_not_looked_for);
    tcase_add_test(tcase, sums_that_can_not_come_above_are_left_out);
    tcase_add_test(tcase, no_more_is_laid_than_fits);
    tcase_add_test(tcase, limits_are_what_may_just_be_used);
    tcase_add_test(tcase, worths_add_up_to_their_end);
    tcase_add_test(tcase, only_packings_with_the_earliest_strips_are_looked_at);
    tcase_add_test(tcase, many_pieces_and_many_strips);
    suite_add_tcase(suite, tcase);
    return suite;
}
