/* scatter_touches.c - which patches of a fabric touch in a solved top.
 *
 * SPDX-License-Identifier: MIT
 *
 * Sides of patches are put on the lines on which they lie, in the order along each line; two sides that share a stretch
 * of a line touch. In fields on point corners are rounded once, so that sides along one line may lie a tick or two off
 * it: across, down and at 45 degrees sides that lie so near to each other are on one line, and a stretch must be longer
 * than that to count. Other lines are told apart exactly; sides between the same two corners always are on one. */
#include "scatter_inside.h"
#include "solution_drawing.h"

enum { ACROSS, DOWN, RISING, FALLING, ELSE };
enum {
    NEARLY = 4,   /* ticks that the rounded ends of a side may lie off its direction, ... */
    SAME_LINE = 8 /* ... and sums of two ends off each other */
};

/* A side of a patch, or in the end two patches. */
struct side {
    int64_t way;   /* ACROSS .. FALLING, or above them what tells directions apart */
    int64_t line;  /* where the line lies, to be compared among lines of one way */
    int64_t start; /* along the line */
    int64_t end;
    int64_t place;
};

/* ---- in order ---------------------------------------------------------------------------------------------------- */

/* What is equal in all of these may stand in any order. */
static int is_before(const struct side *a, const struct side *b)
{
    if (a->way != b->way)
        return a->way < b->way;
    if (a->line != b->line)
        return a->line < b->line;
    return a->start != b->start ? a->start < b->start : a->place < b->place;
}

static void sink(struct side *sides, size_t n, size_t at, struct side side)
{
    size_t below = 2 * at + 1;
    while (below < n) {
        if (below + 1 < n && is_before(&sides[below], &sides[below + 1]))
            below++;
        if (!is_before(&side, &sides[below]))
            break;
        sides[at] = sides[below];
        at = below;
        below = 2 * at + 1;
    }
    sides[at] = side;
}

/* By a heap: in place, and never slow. */
static void put_in_order(struct side *sides, size_t n)
{
    for (size_t at = n / 2; at > 0; at--)
        sink(sides, n, at - 1, sides[at - 1]);
    for (size_t left = n; left > 1; left--) {
        struct side last = sides[left - 1];
        sides[left - 1] = sides[0];
        sink(sides, left - 1, 0, last);
    }
}

/* ---- sides on lines ---------------------------------------------------------------------------------------------- */

static int64_t magnitude(int64_t a)
{
    return a < 0 ? -a : a;
}

static struct side side_along(int64_t way, int64_t line, int64_t one_end, int64_t other_end)
{
    struct side side = { way, line, one_end, other_end, 0 };
    if (one_end > other_end) {
        side.start = other_end;
        side.end = one_end;
    }
    return side;
}

/* In no usual direction, which is said in its least whole numbers. All fits: sizes are up to 2^30. */
static struct side side_elsewhere(muslin_len x, muslin_len y, int64_t dx, int64_t dy)
{
    int64_t divisor = msl_common_divisor(magnitude(dx), magnitude(dy));
    int64_t right = (dx < 0 ? -dx : dx) / divisor;
    int64_t up = (dx < 0 ? -dy : dy) / divisor;
    return side_along(ELSE + right * (INT64_C(1) << 32) + up, right * y - up * x, x, x + dx);
}

static struct side side_between(muslin_len x, muslin_len y, muslin_len to_x, muslin_len to_y)
{
    int64_t dx = to_x - x;
    int64_t dy = to_y - y;
    if (magnitude(dy) <= NEARLY)
        return side_along(ACROSS, y + to_y, x, to_x);
    if (magnitude(dx) <= NEARLY)
        return side_along(DOWN, x + to_x, y, to_y);
    if (magnitude(dx - dy) <= NEARLY)
        return side_along(RISING, x - y + to_x - to_y, x + y, to_x + to_y);
    if (magnitude(dx + dy) <= NEARLY)
        return side_along(FALLING, x + y + to_x + to_y, x - y, to_x - to_y);
    return side_elsewhere(x, y, dx, dy);
}

/* How far sides on one line may be apart. */
static int64_t nearness(const struct side *side)
{
    return side->way < ELSE ? SAME_LINE : 0;
}

/* Lines that nearly are one become one: that of the first of them. Sides are in order, and then are again. */
static void join_lines(struct side *sides, size_t n)
{
    int64_t before = 0;
    for (size_t i = 0; i < n; i++) {
        int64_t line = sides[i].line;
        if (i > 0 && sides[i].way == sides[i - 1].way && line - before <= nearness(&sides[i]))
            sides[i].line = sides[i - 1].line;
        before = line;
    }
    put_in_order(sides, n);
}

/* ---- what is asked ----------------------------------------------------------------------------------------------- */

/* The patches of one fabric, drawn one after the other. */
struct patches {
    const struct muslin_solution *solution;
    uint32_t fabric;
    int64_t drawn; /* patches of any fabric */
    int64_t places;
    int64_t sides;
};

/* Draws all patches; counts those of the fabric and their sides, and puts these where `sides` is not null. */
static void draw_patches(struct patches *patches, struct side *sides)
{
    struct msl_drawing drawing;
    struct msl_drawn drawn;
    msl_draw_start(&drawing, patches->solution, patches->solution->root, MUSLIN_STAGE_FINISHED);
    patches->places = 0;
    patches->sides = 0;
    for (int64_t patch = 0; patch < patches->drawn; patch++) {
        msl_draw_patch(&drawing, patch, &drawn);
        if (drawn.ring.fabric != patches->fabric)
            continue;
        for (int32_t i = 0; sides != NULL && i < drawn.ring.corners; i++) {
            int32_t next = i + 1 < drawn.ring.corners ? i + 1 : 0;
            struct side *side = &sides[patches->sides + i];
            *side = side_between(drawn.ring.x[i], drawn.ring.y[i], drawn.ring.x[next], drawn.ring.y[next]);
            side->place = patches->places;
        }
        patches->sides += drawn.ring.corners;
        patches->places++;
    }
}

/* ---- what touches ------------------------------------------------------------------------------------------------ */

static int on_one_line(const struct side *a, const struct side *b)
{
    return a->way == b->way && a->line == b->line;
}

/* Sides on one line that share a stretch of it, as pairs of places; only counted where `pairs` is null. */
static size_t find_pairs(const struct side *sides, size_t n, struct side *pairs)
{
    size_t found = 0;
    for (size_t i = 0; i < n; i++)
        for (size_t j = i + 1; j < n && on_one_line(&sides[i], &sides[j]) && sides[j].start < sides[i].end; j++) {
            int64_t end = sides[i].end < sides[j].end ? sides[i].end : sides[j].end;
            int64_t one = sides[i].place;
            int64_t other = sides[j].place;
            if (end - sides[j].start <= nearness(&sides[i]) || one == other)
                continue;
            if (pairs != NULL)
                pairs[found] = (struct side){ 0, one < other ? one : other, one < other ? other : one, 0, 0 };
            found++;
        }
    return found;
}

/* Each pair once, in order. */
static size_t without_doubles(struct side *pairs, size_t n)
{
    size_t kept = 0;
    put_in_order(pairs, n);
    for (size_t i = 0; i < n; i++)
        if (i == 0 || pairs[i].line != pairs[i - 1].line || pairs[i].start != pairs[i - 1].start)
            pairs[kept++] = pairs[i];
    return kept;
}

static void write_touches(const struct side *pairs, size_t n, struct muslin_touch_spec *rows, size_t row_size)
{
    for (size_t i = 0; i < n; i++) {
        const struct muslin_touch_spec touch = { sizeof touch, 0, pairs[i].line, pairs[i].start, 1 };
        msl_write_row(rows, row_size, i, &touch, (uint32_t)sizeof touch);
    }
}

/* Pairs of places that touch; null after a failure. */
struct touches {
    struct side *pairs;
    size_t room;
    size_t count;
};

static struct touches find_touches(struct msl_check *check, const struct muslin_allocator *allocator,
                                   struct side *sides, size_t n)
{
    put_in_order(sides, n);
    join_lines(sides, n);
    struct touches touches = { NULL, find_pairs(sides, n, NULL), 0 };
    touches.pairs = msl_scratch(check, allocator, touches.room, sizeof *touches.pairs);
    if (touches.pairs != NULL)
        touches.count = without_doubles(touches.pairs, find_pairs(sides, n, touches.pairs));
    return touches;
}

muslin_status muslin_scatter_touches(const struct muslin_solution *solution, muslin_id fabric,
                                     const struct muslin_allocator *allocator, struct muslin_touch_spec *rows,
                                     size_t row_size, size_t capacity, size_t *count, int64_t *places,
                                     struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct patches patches = { .solution = solution };
    struct touches touches = { NULL, 0, 0 };
    msl_want_pointer(&check, MUSLIN_ARG_QUILT, solution);
    msl_want_allocator(&check, allocator);
    msl_want_pointer(&check, MUSLIN_ARG_OUTPUT, places);
    if (check.status != MUSLIN_OK)
        return check.status;
    patches.fabric = msl_want_id(&check, solution->quilt, MUSLIN_SORT_FABRIC, MUSLIN_ARG_FABRIC, fabric);
    patches.drawn = msl_size_of(solution, solution->root)->patches;
    msl_want_between(&check, MUSLIN_ARG_PLACES, patches.drawn, 0, MSL_PLACES_MAX);
    if (check.status != MUSLIN_OK)
        return check.status;
    draw_patches(&patches, NULL);
    const size_t n = (size_t)patches.sides;
    struct side *sides = msl_scratch(&check, allocator, n, sizeof *sides);
    if (sides != NULL) {
        draw_patches(&patches, sides);
        touches = find_touches(&check, allocator, sides, n);
    }
    if (touches.pairs != NULL &&
        msl_rows_wanted(&check, rows, row_size, (uint32_t)sizeof *rows, capacity, count, touches.count))
        write_touches(touches.pairs, touches.count, rows, row_size);
    if (check.status == MUSLIN_OK)
        *places = patches.places;
    msl_scratch_free(allocator, touches.pairs, touches.room, sizeof *touches.pairs);
    msl_scratch_free(allocator, sides, n, sizeof *sides);
    return check.status;
}
