/* test_quilt_piecing.c - the seams between the pieces of a drawing, against what is seen in it.
 *
 * SPDX-License-Identifier: MIT */
#include "testing.h"

#include "quilt_piecing.h"

enum { PIECES_MOST = 6, CORNERS_MOST = 24, ROOM = PIECING_FIRST + PIECES_MOST + 1 + (1 + SEAM_ARGS) * CORNERS_MOST };

struct drawing {
    int32_t pieces;
    int32_t corners[PIECES_MOST]; /* of each piece */
    int32_t places[2 * CORNERS_MOST];
};

/* A seam as it is seen: its pieces, and where it begins and ends. */
struct seen {
    int32_t first;
    int32_t second;
    int32_t from[2];
    int32_t to[2];
};

/* Returns how many arguments it takes. */
static uint32_t find(const struct drawing *d, int32_t width, int32_t height, int32_t in_halves, int32_t *args)
{
    int32_t *first = args + PIECING_FIRST;
    first[0] = 0;
    for (int32_t i = 0; i < d->pieces; i++)
        first[i + 1] = first[i] + d->corners[i];
    const struct msl_piecing_pattern pattern = { d->pieces, width, height, in_halves, first, d->places };
    return msl_find_piecing(&pattern, args);
}

static int is_at(const struct drawing *d, int32_t corner, const int32_t *place)
{
    return d->places[2 * corner] == place[0] && d->places[2 * corner + 1] == place[1];
}

static int has_seam(const struct drawing *d, const int32_t *args, const struct seen *seen)
{
    int found = 0;
    for (int32_t i = 0; i < args[PIECING_SEAMS]; i++) {
        const int32_t *seam = msl_piecing_seam(args, i);
        found += seam[SEAM_FIRST] == seen->first && seam[SEAM_SECOND] == seen->second &&
                 is_at(d, seam[SEAM_FROM], seen->from) && is_at(d, seam[SEAM_TO], seen->to);
    }
    return found == 1;
}

/* Whether two lines have more than a point in common. */
static int overlap(const int32_t *a, const int32_t *b, const int32_t *c, const int32_t *d)
{
    const int32_t x = b[0] - a[0], y = b[1] - a[1];
    if (x * (c[1] - a[1]) != y * (c[0] - a[0]) || x * (d[1] - a[1]) != y * (d[0] - a[0]))
        return 0;
    const int32_t length = x * x + y * y;
    int32_t from = x * (c[0] - a[0]) + y * (c[1] - a[1]);
    int32_t to = x * (d[0] - a[0]) + y * (d[1] - a[1]);
    if (from > to) {
        int32_t other = from;
        from = to;
        to = other;
    }
    return from < length && to > 0;
}

/* Of each edge the first seam along it, which in a drawing without gaps is a seam of its piece. */
static void ck_edges(const struct drawing *d, const int32_t *args)
{
    for (int32_t piece = 0, corner = 0; piece < d->pieces; piece++)
        for (int32_t i = 0; i < d->corners[piece]; i++, corner++) {
            int32_t next = i + 1 == d->corners[piece] ? corner + 1 - d->corners[piece] : corner + 1;
            int32_t first = -1;
            for (int32_t k = args[PIECING_SEAMS] - 1; k >= 0; k--) {
                const int32_t *seam = msl_piecing_seam(args, k);
                if (overlap(&d->places[2 * corner], &d->places[2 * next], &d->places[2 * seam[SEAM_FROM]],
                            &d->places[2 * seam[SEAM_TO]]))
                    first = k;
            }
            ck_assert_int_eq(msl_piecing_along(args, corner), first);
        }
}

static void ck_counts(const int32_t *args, int32_t across, int32_t down, const int32_t *along)
{
    ck_assert_int_eq(args[PIECING_ACROSS], across);
    ck_assert_int_eq(args[PIECING_DOWN], down);
    for (int edge = 0; edge < 4; edge++)
        ck_assert_int_eq(args[PIECING_ALONG + edge], along[edge]);
}

/* A strip at the bottom; on it a column, then a flat piece under three upright ones:
 *
 *     1 3 4 5 5
 *     1 2 2 2 2
 *     0 0 0 0 0   */
START_TEST(seams_lie_where_sides_meet)
{
    const struct drawing d = { 6,
                               { 4, 4, 4, 4, 4, 4 },
                               { 0, 0, 6, 0, 6, 1, 0, 1, 0, 1, 2, 1, 2, 6, 0, 6, 2, 1, 6, 1, 6, 2, 2, 2,
                                 2, 2, 3, 2, 3, 6, 2, 6, 3, 2, 4, 2, 4, 6, 3, 6, 4, 2, 6, 2, 6, 6, 4, 6 } };
    /* a level one runs to the right, and so has the upper piece on its left hand */
    const struct seen seen[] = {
        { 1, 0, { 0, 1 }, { 2, 1 } }, { 2, 0, { 2, 1 }, { 6, 1 } }, { 3, 2, { 2, 2 }, { 3, 2 } },
        { 4, 2, { 3, 2 }, { 4, 2 } }, { 5, 2, { 4, 2 }, { 6, 2 } }, { 1, 2, { 2, 1 }, { 2, 2 } },
        { 1, 3, { 2, 2 }, { 2, 6 } }, { 3, 4, { 3, 2 }, { 3, 6 } }, { 4, 5, { 4, 2 }, { 4, 6 } },
    };
    const int32_t along[] = { 2, 3, 4, 1 };
    int32_t args[ROOM];
    uint32_t used = find(&d, 6, 6, 0, args);
    ck_assert_int_eq(args[PIECING_PIECES], 6);
    ck_assert_int_eq(args[PIECING_SEAMS], 9);
    ck_assert_uint_eq(used, PIECING_FIRST + 6 + 1 + 24 + 9 * SEAM_ARGS);
    for (size_t i = 0; i < sizeof seen / sizeof seen[0]; i++)
        ck_assert_msg(has_seam(&d, args, &seen[i]), "seam %zu", i);
    ck_edges(&d, args);
    ck_counts(args, 3, 2, along); /* at the top, and right of the column */
}
END_TEST

/* Two rows cross no level line, two columns no upright one. */
START_TEST(seams_of_one_direction_cross_no_line_along_them)
{
    const struct drawing rows = { 2, { 4, 4 }, { 0, 0, 5, 0, 5, 3, 0, 3, 0, 3, 5, 3, 5, 7, 0, 7 } };
    const struct drawing columns = { 2, { 4, 4 }, { 0, 0, 3, 0, 3, 5, 0, 5, 3, 0, 7, 0, 7, 5, 3, 5 } };
    const int32_t of_rows[] = { 2, 2, 1, 1 };
    const int32_t of_columns[] = { 1, 1, 2, 2 };
    int32_t args[ROOM];
    find(&rows, 5, 7, 0, args);
    ck_assert_int_eq(args[PIECING_SEAMS], 1);
    ck_edges(&rows, args);
    ck_counts(args, 0, 1, of_rows);
    find(&columns, 7, 5, 0, args);
    ck_assert_int_eq(args[PIECING_SEAMS], 1);
    ck_edges(&columns, args);
    ck_counts(args, 1, 0, of_columns);
}
END_TEST

/* Four triangles round the middle of 8 x 8, those of the given numbers in turn. */
static struct drawing quarters(const int32_t *order)
{
    const int32_t corners[4][4] = { { 0, 0, 8, 0 }, { 8, 0, 8, 8 }, { 8, 8, 0, 8 }, { 0, 8, 0, 0 } };
    struct drawing d = { 4, { 3, 3, 3, 3 }, { 0 } };
    for (int32_t i = 0; i < 4; i++) {
        memcpy(&d.places[6 * i], corners[order[i]], sizeof corners[0]);
        d.places[6 * i + 4] = d.places[6 * i + 5] = 4;
    }
    return d;
}

/* What sewing halves comes to: of the seams there were, the first two that follow each other in a line are one, with
 * the first piece of the one and the second piece of the other; the others keep their order. */
static void ck_halves(const struct drawing *d, const int32_t *apart, const int32_t *args)
{
    int32_t lower = -1, upper = -1;
    for (int32_t i = 0; lower < 0 && i < 4; i++)
        for (int32_t k = 0; lower < 0 && k < 4; k++) {
            const int32_t *below = &d->places[2 * msl_piecing_seam(apart, i)[SEAM_FROM]];
            const int32_t *above = &d->places[2 * msl_piecing_seam(apart, k)[SEAM_TO]];
            if (below[0] + above[0] == 8 && below[1] + above[1] == 8 && below[1] == 0) {
                lower = i;
                upper = k;
            }
        }
    ck_assert_int_eq(args[PIECING_SEAMS], 3);
    for (int32_t i = 0, k = 0; i < 4; i++)
        if (i != upper) {
            const int32_t *was = msl_piecing_seam(apart, i);
            const int32_t *is = msl_piecing_seam(args, k++);
            const int32_t *end = msl_piecing_seam(apart, i == lower ? upper : i);
            ck_assert_int_eq(is[SEAM_FIRST], was[SEAM_FIRST]);
            ck_assert_int_eq(is[SEAM_FROM], was[SEAM_FROM]);
            ck_assert_int_eq(is[SEAM_SECOND], end[SEAM_SECOND]);
            ck_assert_int_eq(is[SEAM_TO], end[SEAM_TO]);
        }
}

START_TEST(halves_are_joined_by_one_seam)
{
    const int32_t along[] = { 1, 1, 1, 1 };
    for (int32_t code = 0; code < 256; code++) {
        const int32_t order[] = { code % 4, code / 4 % 4, code / 16 % 4, code / 64 };
        int32_t apart[ROOM], args[ROOM];
        int32_t all = 0;
        for (int i = 0; i < 4; i++)
            all |= 1 << order[i];
        if (all != 15)
            continue;
        const struct drawing d = quarters(order);
        find(&d, 8, 8, 0, apart);
        ck_assert_int_eq(apart[PIECING_SEAMS], 4);
        ck_edges(&d, apart);
        ck_counts(apart, 2, 2, along);
        ck_assert_uint_eq(find(&d, 8, 8, 1, args), PIECING_FIRST + 4 + 1 + 12 + 3 * SEAM_ARGS);
        ck_halves(&d, apart, args);
        ck_edges(&d, args);
        ck_counts(args, 2, 2, along);
    }
}
END_TEST

Suite *quilt_piecing_suite(void)
{
    Suite *suite = suite_create("quilt_piecing");
    TCase *tests = tcase_create("seams of a drawing");
    tcase_add_test(tests, seams_lie_where_sides_meet);
    tcase_add_test(tests, seams_of_one_direction_cross_no_line_along_them);
    tcase_add_test(tests, halves_are_joined_by_one_seam);
    suite_add_tcase(suite, tests);
    return suite;
}
