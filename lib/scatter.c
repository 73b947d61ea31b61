/* scatter.c - prints laid in places so that equal ones seldom touch: what is asked, and the initial values.
 *
 * SPDX-License-Identifier: MIT */
#include "scatter_inside.h"

muslin_status muslin_scatter_spec_init(struct muslin_scatter_spec *spec, uint32_t size)
{
    static const struct muslin_scatter_spec initial = MUSLIN_SCATTER_SPEC_INIT;
    return msl_init_struct(spec, size, &initial, (uint32_t)sizeof initial, (uint32_t)sizeof initial);
}

muslin_status muslin_touch_spec_init(struct muslin_touch_spec *spec, uint32_t size)
{
    static const struct muslin_touch_spec initial = MUSLIN_TOUCH_SPEC_INIT;
    return msl_init_struct(spec, size, &initial, (uint32_t)sizeof initial, (uint32_t)sizeof initial);
}

void msl_read_scatter(struct msl_check *check, struct muslin_scatter_spec *into, const struct muslin_scatter_spec *spec)
{
    msl_read_struct(check, MUSLIN_ARG_SPEC, into, (uint32_t)sizeof *into, (uint32_t)sizeof *into, 0, spec);
    msl_want_between(check, MUSLIN_ARG_PLACES, into->places, 1, MSL_PLACES_MAX);
    msl_want_between(check, MUSLIN_ARG_WORK_LIMIT, into->work_limit, 0, MSL_WORK_MAX);
}

void msl_want_rows(struct msl_check *check, int32_t argument, size_t n, int64_t least, int64_t most)
{
    msl_want_between(check, argument, n > (size_t)most ? most + 1 : (int64_t)n, least, most);
}

void msl_want_stock(struct msl_check *check, const int64_t *prints, size_t kinds, int64_t places)
{
    int64_t there_are = 0;
    msl_want_rows(check, MUSLIN_ARG_PRINTS, kinds, 1, MSL_KINDS_MAX);
    msl_want_pointer(check, MUSLIN_ARG_PRINTS, prints);
    for (size_t i = 0; check->status == MUSLIN_OK && i < kinds; i++) {
        check->at = (int64_t)i;
        msl_want_count(check, MUSLIN_ARG_PRINTS, prints[i]);
        there_are += check->status == MUSLIN_OK ? prints[i] : 0;
    }
    check->at = 0;
    if (there_are < places)
        msl_fail(check, MUSLIN_ERR_NOT_ENOUGH, MUSLIN_ARG_PLACES, places, there_are);
}

/* ---- places that touch ------------------------------------------------------------------------------------------- */

struct touches {
    const struct muslin_touch_spec *rows;
    size_t row_size;
    size_t n;
};

static struct muslin_touch_spec touch_at(struct msl_check *check, const struct touches *touches, size_t index)
{
    struct muslin_touch_spec touch = { 0 };
    const void *row = msl_row_to_read(check, touches->rows, touches->row_size, index);
    msl_read_struct(check, MUSLIN_ARG_ROWS, &touch, (uint32_t)sizeof touch, (uint32_t)sizeof touch, 0, row);
    return touch;
}

static void want_touches(struct msl_check *check, const struct touches *touches, int64_t places)
{
    msl_want_rows(check, MUSLIN_ARG_TOUCH, touches->n, 0, MSL_TOUCHES_MAX);
    if (touches->n > 0) {
        msl_want_row_size(check, touches->row_size, (uint32_t)sizeof *touches->rows);
        msl_want_pointer(check, MUSLIN_ARG_ROWS, touches->rows);
    }
    for (size_t i = 0; check->status == MUSLIN_OK && i < touches->n; i++) {
        struct muslin_touch_spec touch = touch_at(check, touches, i);
        msl_want_between(check, MUSLIN_ARG_TOUCH, touch.first, 0, places - 1);
        msl_want_between(check, MUSLIN_ARG_TOUCH, touch.second, 0, places - 1);
        msl_want_between(check, MUSLIN_ARG_TOUCH, touch.weight, 1, MSL_TOUCH_WEIGHT_MAX);
        if (touch.first == touch.second)
            msl_fail(check, MUSLIN_ERR_CHOICE, MUSLIN_ARG_TOUCH, touch.second, places - 1);
    }
}

static void put_touches(struct msl_check *check, struct msl_scatter *s, struct msl_scatter_room *room,
                        const struct touches *touches)
{
    for (size_t i = 0; i < touches->n; i++) {
        struct muslin_touch_spec touch = touch_at(check, touches, i);
        msl_scatter_count(s, (uint32_t)touch.first, (uint32_t)touch.second);
    }
    check->at = 0;
    msl_scatter_counted(s, room);
    if (check->status != MUSLIN_OK)
        return;
    for (size_t i = 0; i < touches->n; i++) {
        struct muslin_touch_spec touch = touch_at(check, touches, i);
        msl_scatter_put(s, (uint32_t)touch.first, (uint32_t)touch.second, (uint32_t)touch.weight, 0);
    }
}

/* ---- what is given ----------------------------------------------------------------------------------------------- */

static void want_given(struct msl_check *check, const int64_t *given, int64_t places, size_t kinds)
{
    for (int64_t place = 0; given != NULL && check->status == MUSLIN_OK && place < places; place++) {
        check->at = place;
        msl_want_between(check, MUSLIN_ARG_PRINTS, given[place], -1, (int64_t)kinds - 1);
    }
}

/* Of each print no more may be given than there is. `left` is counted down and put right again by the search. */
static void want_enough_given(struct msl_check *check, struct msl_scatter *s)
{
    msl_scatter_clear(s);
    for (uint32_t kind = 0; kind < s->kinds; kind++) {
        int64_t there_are = s->stock[kind];
        check->at = kind;
        if (s->left[kind] < 0)
            msl_fail(check, MUSLIN_ERR_NOT_ENOUGH, MUSLIN_ARG_PLACES, there_are - s->left[kind], there_are);
    }
}

/* ---- the answer -------------------------------------------------------------------------------------------------- */

static void scatter(struct msl_check *check, struct msl_scatter *s, struct msl_scatter_room *room,
                    const struct touches *touches)
{
    check->at = 0; /* want of memory is of no row */
    msl_scatter_start(s, room);
    if (check->status != MUSLIN_OK)
        return;
    put_touches(check, s, room, touches);
    want_enough_given(check, s);
    if (check->status != MUSLIN_OK)
        return;
    s->least = msl_scatter_least(s);
    msl_scatter_search(s);
}

muslin_status muslin_scatter_prints(const struct muslin_scatter_spec *spec, const int64_t *prints, size_t kinds,
                                    const struct muslin_touch_spec *touches, size_t touch_size, size_t touch_n,
                                    const int64_t *given, const struct muslin_allocator *allocator,
                                    muslin_progress progress, void *context, int64_t *out,
                                    struct muslin_scattered *result, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct muslin_scatter_spec in = { 0 };
    struct muslin_scattered found = { 0 };
    struct msl_scatter_room room = { .check = &check, .allocator = allocator };
    struct touches rows = { touches, touch_size, touch_n };
    msl_read_scatter(&check, &in, spec);
    msl_want_allocator(&check, allocator);
    msl_want_pointer(&check, MUSLIN_ARG_OUTPUT, out);
    msl_want_output(&check, result, (uint32_t)sizeof *result);
    msl_want_stock(&check, prints, kinds, in.places);
    want_touches(&check, &rows, in.places);
    want_given(&check, given, in.places, kinds);
    if (check.status != MUSLIN_OK)
        return check.status;
    struct msl_scatter s = { .places = (uint32_t)in.places, .kinds = (uint32_t)kinds, .given = given,
                             .stock = prints, .chance = (uint64_t)in.seed, .work_limit = in.work_limit,
                             .told = msl_told_by(progress, context) };
    scatter(&check, &s, &room, &rows);
    if (check.status == MUSLIN_OK) {
        msl_scatter_result(&s, &found);
        for (uint32_t place = 0; place < s.places; place++)
            out[place] = s.best[place] / 4;
        msl_write_struct(result, &found, (uint32_t)sizeof found);
    }
    msl_scatter_give_back(&room);
    return check.status;
}
