/* test_cutlist_brute.c - small lists laid strip by strip, and every width, length and number of lists tried.
 *
 * SPDX-License-Identifier: MIT */
#include "test_cutlist.h"
#include "test_cutplan.h"

enum { ROWS_MOST = 4, STOCK_MOST = 40, NOWHERE = 1000000 };

/* What is cut from what, and how it then lies. */
struct laid_out {
    struct muslin_cutlist_piece_spec rows[ROWS_MOST];
    size_t n;
    struct muslin_stock_spec stock;
    int64_t times;
    int64_t at;                          /* pieces of stock begun */
    int64_t used;                        /* of the last one; before the first its whole length */
    struct muslin_cutlist_row found[ROWS_MOST];
    int64_t strips[ROWS_MOST][STOCK_MOST]; /* of each piece of stock, from 1 */
    int64_t begins[ROWS_MOST][STOCK_MOST]; /* where the first of them does */
    int64_t reaches[STOCK_MOST];         /* how far each piece of stock is used */
    int64_t widest;                      /* how far strips reach across, dealt evenly */
    int64_t spare;
    int64_t in_row;                      /* strips of all rows */
    int trimmed;
    int turned;
};

/* One strip behind the other. Returns 0 where the row fits nowhere. */
static int lay_one_way(struct laid_out *l, size_t row, int64_t across, int64_t along, int32_t turned)
{
    struct muslin_cutlist_row *found = &l->found[row];
    const int64_t wanted = l->rows[row].count * l->times;
    memset(found, 0, sizeof *found);
    memset(l->strips[row], 0, sizeof l->strips[row]);
    found->pieces = wanted;
    found->strip_cut = along;
    found->piece_cut = across;
    found->per_strip = l->stock.width / across;
    found->turned = turned;
    if (wanted > 0 && (along > l->stock.length || across > l->stock.width))
        return 0;
    for (int64_t given = 0; given < wanted; given += found->per_strip) {
        if (l->used + along > l->stock.length) {
            l->at++;
            l->used = 0;
        }
        if (l->at >= STOCK_MOST)
            return 0;
        if (l->strips[row][l->at]++ == 0)
            l->begins[row][l->at] = l->used;
        l->used += along;
        found->last_stock = l->at;
        if (found->strips++ == 0)
            found->first_stock = l->at;
    }
    found->strips_length = found->strips * along;
    found->spare_pieces = found->strips * found->per_strip - wanted;
    found->trimmed = found->strips > 0 && along != l->stock.length;
    return 1;
}

static int ends_earlier(const struct laid_out *a, const struct laid_out *b)
{
    return a->at < b->at || (a->at == b->at && a->used < b->used);
}

/* All rows, each the way that ends earlier. Returns 0 where one fits nowhere. */
static int lay_list(struct laid_out *l, int64_t times)
{
    l->times = times;
    l->at = 0;
    l->used = l->stock.length;
    l->widest = l->spare = l->in_row = l->trimmed = l->turned = 0;
    for (size_t i = 0; i < l->n; i++) {
        static struct laid_out other;
        const int may_turn = l->rows[i].flags != 0 && l->stock.print == MUSLIN_PRINT_NONE;
        other = *l;
        const int fits = lay_one_way(l, i, l->rows[i].cut_width, l->rows[i].cut_length, 0);
        const int fits_turned = may_turn && lay_one_way(&other, i, l->rows[i].cut_length, l->rows[i].cut_width, 1);
        if (!fits && !fits_turned)
            return 0;
        if (fits_turned && (!fits || ends_earlier(&other, l)))
            *l = other;
        const struct muslin_cutlist_row *found = &l->found[i];
        if (found->strips > 0)
            l->widest = msl_greater(l->widest,
                                    (found->pieces + found->strips - 1) / found->strips * found->piece_cut);
        l->spare += found->spare_pieces;
        l->in_row += found->strips;
        l->trimmed |= found->trimmed;
        l->turned |= found->turned;
    }
    for (int64_t at = 1; at <= l->at; at++) {
        l->reaches[at] = 0;
        for (size_t i = 0; i < l->n; i++)
            if (l->strips[i][at] > 0)
                l->reaches[at] = msl_greater(l->reaches[at],
                                             l->begins[i][at] + l->strips[i][at] * l->found[i].strip_cut);
    }
    return 1;
}

static int64_t stock_for(const struct laid_out *l, int64_t times, int64_t width, int64_t length)
{
    static struct laid_out tried;
    tried = *l;
    tried.stock.width = width;
    tried.stock.length = length;
    return lay_list(&tried, times) ? tried.at : NOWHERE;
}

static int64_t may_be_narrower(const struct laid_out *l, int64_t times, int64_t most)
{
    int64_t by = 0;
    while (by + 1 < l->stock.width && stock_for(l, times, l->stock.width - by - 1, l->stock.length) <= most)
        by++;
    return by;
}

static int64_t may_be_shorter(const struct laid_out *l, int64_t times, int64_t most)
{
    int64_t by = 0;
    while (by + 1 < l->stock.length && stock_for(l, times, l->stock.width, l->stock.length - by - 1) <= most)
        by++;
    return by;
}

static int64_t rest_beside_the_fullest(const struct laid_out *l)
{
    int64_t fullest = 0;
    for (int64_t at = 1; at <= l->at; at++)
        fullest = msl_greater(fullest, l->reaches[at]);
    return l->stock.length - fullest;
}

/* Lists that come out within the stock that is looked at. */
static void draw_list(struct laid_out *l, uint64_t *seed, int32_t kind)
{
    memset(l, 0, sizeof *l);
    l->n = 1 + (size_t)tiny_chance(seed, ROWS_MOST);
    const struct muslin_stock_spec stock = MUSLIN_STOCK_SPEC_INIT;
    l->stock = stock;
    l->stock.kind = kind;
    l->stock.width = 4 + tiny_chance(seed, 8);
    l->stock.length = 4 + tiny_chance(seed, 8);
    l->stock.count = tiny_chance(seed, 12);
    l->stock.print = tiny_chance(seed, 4) == 0 ? MUSLIN_PRINT_ONE_WAY : MUSLIN_PRINT_NONE;
    for (size_t i = 0; i < l->n; i++) {
        const struct muslin_cutlist_piece_spec row = CUTS(1 + tiny_chance(seed, 4), 1 + tiny_chance(seed, 4),
                                                          tiny_chance(seed, 8));
        l->rows[i] = row;
        l->rows[i].flags = tiny_chance(seed, 2) ? MUSLIN_CUTLIST_PIECE_MAY_TURN : 0;
    }
    if (l->rows[0].count == 0 && tiny_chance(seed, 2) == 0)
        l->rows[0].count = 1;
}

static int64_t wanted_in(const struct laid_out *l)
{
    int64_t pieces = 0;
    for (size_t i = 0; i < l->n; i++)
        pieces += l->rows[i].count;
    return pieces;
}

static int64_t area_in(const struct laid_out *l)
{
    int64_t area = 0;
    for (size_t i = 0; i < l->n; i++)
        area += l->rows[i].count * l->rows[i].cut_width * l->rows[i].cut_length;
    return area;
}

static void ck_row(const struct muslin_cutlist_row *said, const struct muslin_cutlist_row *truth)
{
    const int64_t of_said[] = { said->pieces, said->strips, said->per_strip, said->spare_pieces, said->strip_cut,
                                said->piece_cut, said->strips_length, said->first_stock, said->last_stock,
                                said->turned, said->trimmed };
    const int64_t of_truth[] = { truth->pieces, truth->strips, truth->per_strip, truth->spare_pieces,
                                 truth->strip_cut, truth->piece_cut, truth->strips_length, truth->first_stock,
                                 truth->last_stock, truth->turned, truth->trimmed };
    for (size_t i = 0; i < COUNT_OF(of_said); i++)
        ck_assert_int_eq(of_said[i], of_truth[i]);
}

/* The strips that parts give to each piece of stock. */
static void ck_parts(const struct laid_out *l)
{
    struct muslin_cutlist_part parts[3 * ROWS_MOST];
    int64_t strips[ROWS_MOST][STOCK_MOST] = { { 0 } };
    size_t count = 0;
    ck_ok(muslin_cutlist_stock_parts(l->rows, sizeof l->rows[0], l->n, &l->stock, parts, sizeof parts[0],
                                     COUNT_OF(parts), &count, NULL));
    for (size_t i = 0; i < count; i++)
        for (int64_t at = parts[i].first_stock; at <= parts[i].last_stock; at++) {
            strips[parts[i].row][at] += parts[i].strips;
            ck_assert_int_eq(parts[i].begins_at, l->begins[parts[i].row][at]);
        }
    for (size_t i = 0; i < l->n; i++)
        for (int64_t at = 0; at <= l->at; at++)
            ck_assert_int_eq(strips[i][at], l->strips[i][at]);
}

static void ck_all(const struct laid_out *l, const struct muslin_cutlist_stock *said)
{
    const int64_t needed = l->at;
    const struct muslin_cutlist_row *last = &l->found[l->n - 1];
    const int64_t left_over = l->stock.length - l->used;
    ck_assert_int_eq(said->pieces, wanted_in(l));
    ck_assert_int_eq(said->strips, l->in_row);
    ck_assert_int_eq(said->spare_pieces, l->spare);
    ck_assert_int_eq(said->stock_needed, needed);
    ck_assert_int_eq(said->stock_missing, needed > l->stock.count ? needed - l->stock.count : 0);
    ck_assert_int_eq(said->stock_left, l->stock.count > needed ? l->stock.count - needed : 0);
    const int64_t sheet = l->stock.width * l->stock.length;
    ck_assert_int_eq(said->area_bound, (area_in(l) + sheet - 1) / sheet);
    ck_assert_int_eq(said->left_over, left_over);
    ck_assert_int_eq(said->trimmed, l->trimmed);
    ck_assert_int_eq(said->turned, l->turned);
    ck_assert_int_eq(said->rest_pieces, last->strips == 0 ? 0 : left_over / last->strip_cut * last->per_strip);
    ck_assert_int_eq(said->narrower_by, needed == 0 ? 0 : may_be_narrower(l, 1, needed));
    ck_assert_int_eq(said->shorter_by, needed == 0 ? 0 : may_be_shorter(l, 1, needed));
    ck_assert_int_eq(said->as_cut_narrower_by, needed == 0 ? 0 : l->stock.width - l->widest);
    ck_assert_int_eq(said->as_cut_shorter_by, needed == 0 ? 0 : rest_beside_the_fullest(l));
    const int has_none = needed != 0 && (said->narrower_by == 0 || said->shorter_by == 0);
    ck_assert_uint_eq(said->warnings, has_none ? MUSLIN_WARN_NO_SLACK : 0);
}

START_TEST(lists_from_stock_as_strip_by_strip)
{
    static struct laid_out l;
    uint64_t seed = 21;
    for (int32_t round = 0; round < 1500; round++) {
        struct muslin_cutlist_stock said = { .size = (uint32_t)sizeof said };
        struct muslin_cutlist_row rows[ROWS_MOST];
        size_t count = 0;
        draw_list(&l, &seed, MUSLIN_STOCK_FAT_QUARTER);
        ck_assert_int_eq(lay_list(&l, 1), 1);
        ck_ok(muslin_cutlist_from_stock(l.rows, sizeof l.rows[0], l.n, &l.stock, &said, NULL));
        ck_all(&l, &said);
        ck_ok(muslin_cutlist_stock_rows(l.rows, sizeof l.rows[0], l.n, &l.stock, rows, sizeof rows[0], ROWS_MOST,
                                        &count, NULL));
        for (size_t i = 0; i < count; i++)
            ck_row(&rows[i], &l.found[i]);
        ck_parts(&l);
    }
}
END_TEST

START_TEST(how_often_as_list_by_list)
{
    static struct laid_out l;
    uint64_t seed = 22;
    for (int32_t round = 0; round < 1500; round++) {
        struct muslin_cutlist_lists said = { .size = (uint32_t)sizeof said };
        struct muslin_cutlist_row rows[ROWS_MOST];
        size_t count = 0;
        int64_t times = 0;
        draw_list(&l, &seed, MUSLIN_STOCK_FAT_QUARTER);
        if (wanted_in(&l) == 0)
            continue;
        while (stock_for(&l, times + 1, l.stock.width, l.stock.length) <= l.stock.count)
            times++;
        const int64_t one_more = stock_for(&l, times + 1, l.stock.width, l.stock.length);
        ck_assert_int_eq(lay_list(&l, times), 1);
        ck_ok(muslin_cutlist_lists_from_stock(l.rows, sizeof l.rows[0], l.n, &l.stock, &said, NULL));
        ck_assert_int_eq(said.lists, times);
        ck_assert_int_eq(said.stock_used, l.at);
        ck_assert_int_eq(said.stock_left, l.stock.count - l.at);
        ck_assert_int_eq(said.stock_for_one_more, one_more - l.stock.count);
        ck_assert_int_eq(said.left_over, l.stock.length - l.used);
        ck_assert_int_eq(said.narrower_by, times == 0 ? 0 : may_be_narrower(&l, times, l.stock.count));
        ck_assert_int_eq(said.shorter_by, times == 0 ? 0 : may_be_shorter(&l, times, l.stock.count));
        ck_assert_int_eq(said.as_cut_narrower_by, times == 0 ? 0 : l.stock.width - l.widest);
        ck_assert_int_eq(said.as_cut_shorter_by, times == 0 ? 0 : rest_beside_the_fullest(&l));
        ck_ok(muslin_cutlist_lists_rows(l.rows, sizeof l.rows[0], l.n, &l.stock, rows, sizeof rows[0], ROWS_MOST,
                                        &count, NULL));
        for (size_t i = 0; i < count; i++)
            ck_row(&rows[i], &l.found[i]);
    }
}
END_TEST

/* As muslin_cutlist_from_stock() says, or muslin_cutlist_from_yardage() for the same print and nothing lost. */
static void ck_as_from_yardage(const struct laid_out *l, const struct muslin_substitution *said)
{
    struct muslin_cutlist_spec spec = MUSLIN_CUTLIST_SPEC_INIT;
    struct muslin_cutlist_yardage yardage = { .size = (uint32_t)sizeof yardage };
    const int64_t in_hand = l->stock.count * l->stock.length;
    spec.usable_width = l->stock.width;
    spec.print = l->stock.print;
    ck_ok(muslin_cutlist_from_yardage(l->rows, sizeof l->rows[0], l->n, &spec, &yardage, NULL));
    const int64_t beyond = in_hand - yardage.cloth_length;
    ck_assert_int_eq(said->cloth_length, yardage.cloth_length);
    ck_assert_int_eq(said->cloth_missing, beyond < 0 ? -beyond : 0);
    ck_assert_int_eq(said->shorter_by, beyond > 0 ? beyond : 0);
    ck_assert_int_eq(said->enough, beyond >= 0);
    ck_assert_int_eq(said->narrower_by, yardage.narrower_by);
    ck_assert_int_eq(said->spare_pieces, yardage.spare_pieces);
    ck_assert_int_eq(said->turned, yardage.turned);
    ck_assert_int_eq(said->fabrics, wanted_in(l) > 0);
    const int has_none = wanted_in(l) > 0 && (yardage.narrower_by == 0 || beyond == 0);
    ck_assert_uint_eq(said->warnings, has_none ? MUSLIN_WARN_NO_SLACK : 0);
}

static void ck_as_from_stock(const struct laid_out *l, int64_t prints, const struct muslin_substitution *said)
{
    struct muslin_cutlist_stock stock = { .size = (uint32_t)sizeof stock };
    ck_ok(muslin_cutlist_from_stock(l->rows, sizeof l->rows[0], l->n, &l->stock, &stock, NULL));
    const int64_t fabrics = prints < stock.stock_needed ? prints : stock.stock_needed;
    ck_assert_int_eq(said->stock_needed, stock.stock_needed);
    ck_assert_int_eq(said->stock_missing, stock.stock_missing);
    ck_assert_int_eq(said->enough, stock.stock_missing == 0);
    ck_assert_int_eq(said->narrower_by, stock.narrower_by);
    ck_assert_int_eq(said->shorter_by, stock.shorter_by);
    ck_assert_int_eq(said->spare_pieces, stock.spare_pieces);
    ck_assert_int_eq(said->rest_pieces, stock.rest_pieces);
    ck_assert_int_eq(said->turned, stock.turned);
    ck_assert_uint_eq(said->warnings, stock.warnings);
    ck_assert_int_eq(said->fabrics, fabrics);
    ck_assert_int_eq(said->per_fabric_least, fabrics == 0 ? 0 : stock.stock_needed / fabrics);
    ck_assert_int_eq(said->per_fabric_most, fabrics == 0 ? 0 : (stock.stock_needed + fabrics - 1) / fabrics);
}

START_TEST(a_substitute_is_what_the_other_calls_say)
{
    static struct laid_out l;
    uint64_t seed = 23;
    for (int32_t round = 0; round < 3000; round++) {
        struct muslin_substitution said = { .size = (uint32_t)sizeof said };
        const int is_yardage = round % 2;
        const int64_t prints = is_yardage ? 1 : 1 + tiny_chance(&seed, 5);
        draw_list(&l, &seed, is_yardage ? MUSLIN_STOCK_YARDAGE : MUSLIN_STOCK_FAT_QUARTER);
        if (round % 10 == 1)
            l.n = 1;
        ck_ok(muslin_cutlist_substitute(l.rows, sizeof l.rows[0], l.n, &l.stock, prints, &said, NULL));
        ck_assert_int_eq(said.possible, 1);
        ck_assert_int_eq(said.unfit_row, -1);
        if (is_yardage)
            ck_as_from_yardage(&l, &said);
        else
            ck_as_from_stock(&l, prints, &said);
    }
}
END_TEST

/* A piece just as wide as the stock is too long for it; the list behind the one that is handed over asks for nothing
 * that counts; a first row of none leaves the others to count. */
START_TEST(what_is_too_much_is_told_by_its_side)
{
    const struct muslin_cutlist_piece_spec rows[] = { CUTS(5, 9, 1) };
    const struct muslin_cutlist_piece_spec none_first[] = { CUTS(2, 2, 0), CUTS(2, 2, 3) };
    struct muslin_cutlist_stock said = { .size = (uint32_t)sizeof said };
    struct muslin_cutlist_lists lists = { .size = (uint32_t)sizeof lists };
    struct muslin_problem problem = PROBLEM;
    struct muslin_stock_spec stock = MUSLIN_STOCK_SPEC_INIT;
    stock.kind = MUSLIN_STOCK_FAT_QUARTER;
    stock.width = 5;
    stock.length = 8;
    stock.count = 4;
    ck_status(muslin_cutlist_from_stock(ROWS(rows), &stock, &said, &problem), MUSLIN_ERR_NO_YIELD);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_CLOTH_LENGTH);
    ck_assert_int_eq(problem.value, 8);
    ck_assert_int_eq(problem.limit, 9);
    ck_status(muslin_cutlist_lists_from_stock(none_first, sizeof rows[0], 1, &stock, &lists, &problem),
              MUSLIN_ERR_RANGE);
    ck_ok(muslin_cutlist_lists_from_stock(none_first, sizeof rows[0], 2, &stock, &lists, &problem));
    ck_assert_int_eq(lists.lists, 10); /* 8 squares of 2 from each of four: 32, three a list */
    stock.width = stock.length = 2;
    stock.count = MUSLIN_COUNT_MAX;
    const struct muslin_cutlist_piece_spec ticks[] = { CUTS(1, 1, 1) };
    ck_status(muslin_cutlist_lists_from_stock(ROWS(ticks), &stock, &lists, &problem), MUSLIN_ERR_OVERFLOW);
    ck_assert_int_eq(problem.value, MUSLIN_COUNT_MAX + 1);
}
END_TEST

void add_cutlist_brute_tests(Suite *suite)
{
    TCase *tcase = tcase_create("strip by strip");
    tcase_add_test(tcase, lists_from_stock_as_strip_by_strip);
    tcase_add_test(tcase, how_often_as_list_by_list);
    tcase_add_test(tcase, a_substitute_is_what_the_other_calls_say);
    tcase_add_test(tcase, what_is_too_much_is_told_by_its_side);
    suite_add_tcase(suite, tcase);
}
