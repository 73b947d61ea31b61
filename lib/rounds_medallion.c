/* rounds_medallion.c - medallions, round by round, with coping strips that make the next round come out.
 *
 * SPDX-License-Identifier: MIT */
#include "rounds_inside.h"

muslin_status muslin_medallion_spec_init(struct muslin_medallion_spec *spec, uint32_t size)
{
    const struct muslin_medallion_spec initial = MUSLIN_MEDALLION_SPEC_INIT;
    return msl_init_struct(spec, size, &initial, (uint32_t)sizeof initial, (uint32_t)sizeof initial);
}

muslin_status muslin_medallion_row_init(struct muslin_medallion_row *row, uint32_t size)
{
    static const struct muslin_medallion_row initial = MUSLIN_MEDALLION_ROW_INIT;
    return msl_init_struct(row, size, &initial, (uint32_t)sizeof initial, (uint32_t)sizeof initial);
}

/* ---- the request ------------------------------------------------------------------------------------------------- */

/* A request, and the caller's rows, each of its own size, at a stride of row_size. */
struct medallion {
    struct muslin_medallion_spec spec;
    muslin_len taken; /* m */
    unsigned char *rows;
    size_t row_size;
    size_t n;
};

static void read_medallion(struct msl_check *check, struct medallion *medallion,
                           const struct muslin_medallion_spec *spec)
{
    struct muslin_medallion_spec *s = &medallion->spec;
    int64_t rounds = medallion->n > MUSLIN_ROUNDS_MAX ? MUSLIN_ROUNDS_MAX + 1 : (int64_t)medallion->n;
    msl_read_struct(check, MUSLIN_ARG_SPEC, s, (uint32_t)sizeof *s, (uint32_t)sizeof *s, MUSLIN_MEDALLION_EQUAL_COPING,
                    spec);
    msl_want_some_size(check, MUSLIN_ARG_CENTRE_WIDTH, s->centre_width);
    msl_want_some_size(check, MUSLIN_ARG_CENTRE_HEIGHT, s->centre_height);
    msl_want_seams(check, s->allowance, s->take_up);
    msl_want_between(check, MUSLIN_ARG_ROUNDS, rounds, 1, MUSLIN_ROUNDS_MAX);
    msl_want_pointer(check, MUSLIN_ARG_ROWS, medallion->rows);
    msl_want_row_size(check, medallion->row_size, (uint32_t)sizeof(struct muslin_medallion_row));
    if (check->status == MUSLIN_OK)
        medallion->taken = msl_taken(s->allowance, s->take_up);
}

/* What a round's kind makes of its sizes. */
static void want_round(struct msl_check *check, const struct muslin_medallion_row *row)
{
    msl_want_choice(check, MUSLIN_ARG_ROUND_KIND, row->kind, MUSLIN_ROUND_PLAIN, MUSLIN_ROUND_COPING);
    msl_want_choice(check, MUSLIN_ARG_ROUND_CORNER, row->corner, MUSLIN_ROUND_CORNER_SQUARES,
                    MUSLIN_ROUND_CORNER_THROUGH);
    msl_want_between(check, MUSLIN_ARG_BORDER_WIDTH, row->width, row->kind != MUSLIN_ROUND_COPING, MUSLIN_SIZE_MAX);
    msl_want_between(check, MUSLIN_ARG_UNIT_REPEAT, row->repeat, row->kind == MUSLIN_ROUND_PIECED, MUSLIN_SIZE_MAX);
    msl_want_between(check, MUSLIN_ARG_COPING_MOST, row->most, row->kind == MUSLIN_ROUND_COPING ? row->width : 0,
                     MUSLIN_SIZE_MAX);
}

/* Row `index` as given, nothing answered yet; check->at names it from now on. */
static struct muslin_medallion_row read_round(struct msl_check *check, const struct medallion *medallion,
                                              size_t index)
{
    struct muslin_medallion_row read = { 0 };
    struct muslin_medallion_row row = { 0 };
    msl_read_struct(check, MUSLIN_ARG_ROWS, &read, (uint32_t)sizeof read, (uint32_t)sizeof read, 0,
                    msl_row_to_read(check, medallion->rows, medallion->row_size, index));
    want_round(check, &read);
    row.kind = read.kind;
    row.corner = read.corner;
    row.width = read.width;
    row.repeat = read.repeat;
    row.most = read.most;
    return row;
}

/* ---- coping ------------------------------------------------------------------------------------------------------ */

/* Both strips together that bring a run to the least whole number of repeats, each strip as wide as the least. */
static muslin_len pair_for(const struct muslin_medallion_row *row, muslin_len run, muslin_len repeat)
{
    muslin_len least = run + 2 * row->width;
    return (least + repeat - 1) / repeat * repeat - run;
}

/* Pairs that differ have no width in common: each is the least, so they differ by less than a repeat. */
static void want_coping(struct msl_check *check, const struct muslin_medallion_row *row, int32_t equal)
{
    muslin_len pair = row->side_pair > row->top_pair ? row->side_pair : row->top_pair;
    muslin_len wider = pair / 2 + pair % 2;
    if (equal && row->unequal)
        msl_fail(check, MUSLIN_ERR_NO_FIT, MUSLIN_ARG_COPING_MOST, row->most, 0);
    if (wider > row->most)
        msl_fail(check, MUSLIN_ERR_NO_FIT, MUSLIN_ARG_COPING_MOST, row->most, wider);
}

/* What top and bottom cover beyond the width. */
static muslin_len through(const struct muslin_medallion_row *row, muslin_len pair)
{
    return row->corner == MUSLIN_ROUND_CORNER_THROUGH ? pair : 0;
}

static void find_coping(struct msl_check *check, const struct medallion *medallion, size_t index,
                        struct muslin_medallion_row *row)
{
    struct muslin_medallion_row next = { 0 };
    if (index + 1 < medallion->n)
        next = read_round(check, medallion, index + 1);
    if (check->status != MUSLIN_OK)
        return;
    check->at = (int64_t)index;
    if (next.kind != MUSLIN_ROUND_PIECED) {
        msl_fail(check, MUSLIN_ERR_CHOICE, MUSLIN_ARG_ROUND_KIND, row->kind, MUSLIN_ROUND_PIECED);
        return;
    }
    row->side_pair = pair_for(row, row->before_width + through(&next, 2 * next.width), next.repeat);
    row->top_pair = pair_for(row, row->before_height, next.repeat);
    row->unequal = row->side_pair != row->top_pair;
    want_coping(check, row, (medallion->spec.flags & MUSLIN_MEDALLION_EQUAL_COPING) != 0);
}

/* ---- a round ----------------------------------------------------------------------------------------------------- */

static void find_units(struct muslin_medallion_row *row, muslin_len taken)
{
    muslin_len top = row->before_width + through(row, row->side_pair);
    row->top_units = top / row->repeat;
    row->top_rest = top % row->repeat;
    row->side_units = row->before_height / row->repeat;
    row->side_rest = row->before_height % row->repeat;
    row->units = 2 * (row->top_units + row->side_units);
    row->unit_unfinished = row->repeat + taken;
    row->divides = row->top_rest == 0 && row->side_rest == 0;
}

/* A pair of no width is no strip. */
static void find_strips(struct muslin_medallion_row *row, muslin_len taken)
{
    row->side_finished = row->side_pair / 2;
    row->top_finished = row->top_pair / 2;
    if (row->side_pair > 0) {
        row->side_cut = row->side_finished + taken;
        row->side_length = row->before_height + taken;
    }
    if (row->top_pair > 0) {
        row->top_cut = row->top_finished + taken;
        row->top_length = row->before_width + through(row, row->side_pair) + taken;
    }
    if (row->corner == MUSLIN_ROUND_CORNER_SQUARES && row->side_pair > 0 && row->top_pair > 0)
        row->corner_squares = 4;
}

/* Grows the quilt by round `index`; `quilt` holds its finished size. */
static struct muslin_medallion_row grow(struct msl_check *check, const struct medallion *medallion, size_t index,
                                        struct muslin_medallion *quilt)
{
    struct muslin_medallion_row row = read_round(check, medallion, index);
    if (check->status != MUSLIN_OK)
        return row;
    row.before_width = quilt->finished_width;
    row.before_height = quilt->finished_height;
    row.divides = 1;
    if (row.kind == MUSLIN_ROUND_COPING)
        find_coping(check, medallion, index, &row);
    else
        row.side_pair = row.top_pair = 2 * row.width;
    if (row.kind == MUSLIN_ROUND_PIECED)
        find_units(&row, medallion->taken);
    find_strips(&row, medallion->taken);
    row.after_width = row.before_width + row.side_pair;
    row.after_height = row.before_height + row.top_pair;
    row.after_unfinished_width = row.after_width + medallion->taken;
    row.after_unfinished_height = row.after_height + medallion->taken;
    msl_want_size(check, MUSLIN_ARG_QUILT_WIDTH, row.after_width);
    msl_want_size(check, MUSLIN_ARG_QUILT_LENGTH, row.after_height);
    quilt->finished_width = row.after_width;
    quilt->finished_height = row.after_height;
    quilt->undivided += !row.divides;
    quilt->unequal += row.unequal;
    quilt->units += row.units;
    quilt->corner_squares += row.corner_squares;
    return row;
}

/* Grows all rounds; writes the rows too, when asked to. */
static struct muslin_medallion grow_all(struct msl_check *check, const struct medallion *medallion, int writing)
{
    struct muslin_medallion quilt = { 0 };
    quilt.finished_width = medallion->spec.centre_width;
    quilt.finished_height = medallion->spec.centre_height;
    for (size_t i = 0; i < medallion->n && check->status == MUSLIN_OK; i++) {
        struct muslin_medallion_row row = grow(check, medallion, i, &quilt);
        if (writing)
            msl_write_struct(medallion->rows + i * medallion->row_size, &row, (uint32_t)sizeof row);
    }
    quilt.unfinished_width = quilt.finished_width + medallion->taken;
    quilt.unfinished_height = quilt.finished_height + medallion->taken;
    return quilt;
}

muslin_status muslin_medallion_plan(const struct muslin_medallion_spec *spec, struct muslin_medallion_row *rows,
                                    size_t row_size, size_t n, struct muslin_medallion *out,
                                    struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct medallion medallion = { .rows = (unsigned char *)rows, .row_size = row_size, .n = n };
    read_medallion(&check, &medallion, spec);
    msl_want_output(&check, out, (uint32_t)sizeof *out);
    struct muslin_medallion quilt = grow_all(&check, &medallion, 0);
    if (check.status != MUSLIN_OK)
        return check.status;
    grow_all(&check, &medallion, 1);
    msl_write_struct(out, &quilt, (uint32_t)sizeof quilt);
    return MUSLIN_OK;
}
