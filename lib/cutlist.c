/* cutlist.c - a list of pieces, and the yardage it takes: each size on its own strips.
 *
 * SPDX-License-Identifier: MIT
 *
 * After the checks a size is at most 2^30 and a count below 2^31, so a product of two of them fits 64 bits. */
#include "cutlist_inside.h"

muslin_status muslin_cutlist_piece_spec_init(struct muslin_cutlist_piece_spec *spec, uint32_t size)
{
    const struct muslin_cutlist_piece_spec initial = MUSLIN_CUTLIST_PIECE_SPEC_INIT;
    return msl_init_struct(spec, size, &initial, (uint32_t)sizeof initial, (uint32_t)sizeof initial);
}

muslin_status muslin_cutlist_spec_init(struct muslin_cutlist_spec *spec, uint32_t size)
{
    const struct muslin_cutlist_spec initial = MUSLIN_CUTLIST_SPEC_INIT;
    return msl_init_struct(spec, size, &initial, (uint32_t)sizeof initial, (uint32_t)sizeof initial);
}

/* ---- the list ---------------------------------------------------------------------------------------------------- */

static void read_cut(struct msl_check *check, struct muslin_cutlist_piece_spec *cut, const struct msl_cuts *cuts,
                     size_t index)
{
    const void *row = msl_row_to_read(check, cuts->rows, cuts->row_size, index);
    msl_read_struct(check, MUSLIN_ARG_ROWS, cut, (uint32_t)sizeof *cut, (uint32_t)sizeof *cut,
                    MUSLIN_CUTLIST_PIECE_MAY_TURN, row);
    msl_want_some_size(check, MUSLIN_ARG_CUT, cut->cut_width);
    msl_want_some_size(check, MUSLIN_ARG_CUT, cut->cut_length);
    msl_want_count(check, MUSLIN_ARG_PIECES, cut->count);
}

void msl_want_cuts(struct msl_check *check, const struct msl_cuts *cuts)
{
    struct muslin_cutlist_piece_spec cut = { 0 };
    if (cuts->n > MUSLIN_CUTLIST_ROWS_MAX)
        msl_fail(check, MUSLIN_ERR_RANGE, MUSLIN_ARG_ROWS, MUSLIN_CUTLIST_ROWS_MAX + 1, MUSLIN_CUTLIST_ROWS_MAX);
    if (cuts->n != 0) {
        msl_want_pointer(check, MUSLIN_ARG_ROWS, cuts->rows);
        msl_want_row_size(check, cuts->row_size, (uint32_t)sizeof cut);
    }
    for (size_t i = 0; i < cuts->n && check->status == MUSLIN_OK; i++)
        read_cut(check, &cut, cuts, i);
    check->at = 0;
}

struct muslin_cutlist_piece_spec msl_cut_at(const struct msl_cuts *cuts, size_t index)
{
    struct msl_check none = msl_check_start(NULL);
    struct muslin_cutlist_piece_spec cut = { 0 };
    read_cut(&none, &cut, cuts, index);
    return cut;
}

int msl_may_turn(const struct muslin_cutlist_piece_spec *cut, int32_t print)
{
    return (cut->flags & MUSLIN_CUTLIST_PIECE_MAY_TURN) != 0 && print == MUSLIN_PRINT_NONE;
}

struct msl_cut_way msl_way_of(const struct muslin_cutlist_piece_spec *cut, muslin_len room_across, int32_t turned)
{
    struct msl_cut_way way = { .across = cut->cut_width, .along = cut->cut_length, .turned = turned };
    if (turned) {
        way.across = cut->cut_length;
        way.along = cut->cut_width;
    }
    way.per_strip = room_across / way.across;
    if (way.per_strip != 0)
        way.strips = msl_divided_up(cut->count, way.per_strip);
    return way;
}

muslin_len msl_room_as_cut(const struct msl_cut_way *way, int64_t pieces)
{
    return msl_divided_up(pieces, way->strips) * way->across;
}

int64_t msl_cuts_area_over(const struct msl_cuts *cuts, muslin_len side, muslin_len other_side)
{
    struct msl_wide area = msl_wide_from(0);
    int64_t whole = 0;
    int64_t rest = 0;
    for (size_t i = 0; i < cuts->n; i++) {
        struct muslin_cutlist_piece_spec cut = msl_cut_at(cuts, i);
        area = msl_wide_add(area, msl_wide_multiply(cut.cut_width * cut.cut_length, cut.count));
    }
    msl_wide_floor(area, side * other_side, &whole, &rest);
    return whole + (rest != 0);
}

/* ---- one row from yardage ---------------------------------------------------------------------------------------- */

/* A strip's length for pieces; a loss may eat it whole. */
static muslin_len room_of(const struct muslin_cutlist_spec *spec)
{
    return msl_greater(spec->usable_width - spec->end_loss, 0);
}

static muslin_len length_of(const struct msl_cut_way *way)
{
    return way->strips * way->along;
}

/* The way that takes less length; per_strip is 0 where no way fits. */
static struct msl_cut_way best_way(const struct muslin_cutlist_piece_spec *cut, const struct muslin_cutlist_spec *spec)
{
    struct msl_cut_way best = msl_way_of(cut, room_of(spec), 0);
    struct msl_cut_way turned = msl_way_of(cut, room_of(spec), 1);
    if (!msl_may_turn(cut, spec->print) || turned.per_strip == 0)
        return best;
    if (best.per_strip == 0 || length_of(&turned) < length_of(&best))
        return turned;
    return best;
}

/* Nothing of a row of count 0 need fit. */
static void want_yield(struct msl_check *check, const struct muslin_cutlist_piece_spec *cut,
                       const struct muslin_cutlist_spec *spec, const struct msl_cut_way *way)
{
    int turned = msl_may_turn(cut, spec->print) && cut->cut_length < cut->cut_width;
    muslin_len least = turned ? cut->cut_length : cut->cut_width;
    if (way->per_strip == 0 && cut->count != 0)
        msl_fail(check, MUSLIN_ERR_NO_YIELD, MUSLIN_ARG_USABLE_WIDTH, spec->usable_width, spec->end_loss + least);
}

#define NO_ROOM INT64_MAX

/* The least length of a strip with which this way takes no more than `most` of cloth, however long its own strips. */
static muslin_len room_for(const struct muslin_cutlist_piece_spec *cut, int32_t turned, muslin_len most)
{
    const struct msl_cut_way way = msl_way_of(cut, most, turned);
    const int64_t strips = most / way.along;
    return strips == 0 ? NO_ROOM : msl_divided_up(cut->count, strips) * way.across;
}

/* The least of all ways; a row of count 0 takes no room. */
static muslin_len least_room(const struct muslin_cutlist_piece_spec *cut, const struct muslin_cutlist_spec *spec,
                             muslin_len most)
{
    muslin_len other = msl_may_turn(cut, spec->print) ? room_for(cut, 1, most) : NO_ROOM;
    return msl_lesser(room_for(cut, 0, most), other);
}

/* ---- the whole list from yardage --------------------------------------------------------------------------------- */

struct widths {
    muslin_len narrowest; /* room that the row in most need of it needs */
    muslin_len as_cut;    /* ... when nothing is cut another way */
    muslin_len improving; /* room with which the first row takes less cloth */
};

static void add_row(struct msl_check *check, struct muslin_cutlist_yardage *all, struct widths *widths,
                    const struct muslin_cutlist_piece_spec *cut, const struct muslin_cutlist_spec *spec)
{
    struct msl_cut_way way = best_way(cut, spec);
    muslin_len length = length_of(&way);
    want_yield(check, cut, spec, &way);
    if (length > MUSLIN_LENGTH_MAX - all->cloth_length)
        msl_fail(check, MUSLIN_ERR_OVERFLOW, MUSLIN_ARG_CLOTH_LENGTH, length, MUSLIN_LENGTH_MAX);
    if (check->status != MUSLIN_OK || cut->count == 0)
        return;
    all->pieces += cut->count;
    all->strips += way.strips;
    all->spare_pieces += way.strips * way.per_strip - cut->count;
    all->cloth_length += length;
    all->turned |= way.turned;
    widths->narrowest = msl_greater(widths->narrowest, least_room(cut, spec, length));
    widths->as_cut = msl_greater(widths->as_cut, msl_room_as_cut(&way, cut->count));
    widths->improving = msl_lesser(widths->improving, least_room(cut, spec, length - 1));
}

/* Length of cloth for a list that is known to fit. */
static muslin_len length_at(const struct msl_cuts *cuts, const struct muslin_cutlist_spec *spec)
{
    muslin_len length = spec->straightening;
    for (size_t i = 0; i < cuts->n; i++) {
        struct muslin_cutlist_piece_spec cut = msl_cut_at(cuts, i);
        struct msl_cut_way way = best_way(&cut, spec);
        length += length_of(&way);
    }
    return length;
}

/* The least width that takes less cloth, where there is one, and how much less. */
static void find_wider(struct muslin_cutlist_yardage *all, const struct msl_cuts *cuts,
                       const struct muslin_cutlist_spec *spec, muslin_len improving)
{
    struct muslin_cutlist_spec wider = *spec;
    if (improving == NO_ROOM)
        return;
    wider.usable_width = spec->end_loss + improving;
    all->wider_for_less = wider.usable_width - spec->usable_width;
    all->wider_saves = all->cloth_length - length_at(cuts, &wider);
}

/* Each row takes less cloth, or as much, on a wider one; so the sum stays what it is as long as each row does. */
struct muslin_cutlist_yardage msl_yardage_of(struct msl_check *check, const struct msl_cuts *cuts,
                                             const struct muslin_cutlist_spec *spec)
{
    struct muslin_cutlist_yardage all = { 0 };
    struct widths widths = { .improving = NO_ROOM };
    all.cloth_length = spec->straightening;
    for (size_t i = 0; i < cuts->n && check->status == MUSLIN_OK; i++) {
        struct muslin_cutlist_piece_spec cut = msl_cut_at(cuts, i);
        check->at = (int64_t)i;
        add_row(check, &all, &widths, &cut, spec);
    }
    if (check->status != MUSLIN_OK || all.pieces == 0)
        return all;
    all.area_bound = msl_cuts_area_over(cuts, spec->usable_width, 1);
    all.narrowest_width = spec->end_loss + widths.narrowest;
    all.narrower_by = spec->usable_width - all.narrowest_width;
    all.narrowest_as_cut = spec->end_loss + widths.as_cut;
    find_wider(&all, cuts, spec, widths.improving);
    all.warnings = all.narrower_by == 0 ? MUSLIN_WARN_NO_SLACK : 0;
    return all;
}

static void read_cutlist(struct msl_check *check, struct muslin_cutlist_spec *spec,
                         const struct muslin_cutlist_spec *from)
{
    msl_read_struct(check, MUSLIN_ARG_SPEC, spec, (uint32_t)sizeof *spec, (uint32_t)sizeof *spec, 0, from);
    msl_want_some_size(check, MUSLIN_ARG_USABLE_WIDTH, spec->usable_width);
    msl_want_size(check, MUSLIN_ARG_END_LOSS, spec->end_loss);
    check->at = 1;
    msl_want_size(check, MUSLIN_ARG_END_LOSS, spec->straightening);
    check->at = 0;
    msl_want_choice(check, MUSLIN_ARG_PRINT_DIRECTION, spec->print, MUSLIN_PRINT_NONE, MUSLIN_PRINT_STRIPE_ACROSS);
    msl_want_pad(check, spec->pad);
}

muslin_status muslin_cutlist_from_yardage(const struct muslin_cutlist_piece_spec *pieces, size_t piece_size, size_t n,
                                          const struct muslin_cutlist_spec *spec, struct muslin_cutlist_yardage *out,
                                          struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct msl_cuts cuts = { pieces, piece_size, n };
    struct muslin_cutlist_spec s = { 0 };
    read_cutlist(&check, &s, spec);
    msl_want_cuts(&check, &cuts);
    msl_want_output(&check, out, (uint32_t)sizeof *out);
    if (check.status != MUSLIN_OK)
        return check.status;
    struct muslin_cutlist_yardage all = msl_yardage_of(&check, &cuts, &s);
    if (check.status == MUSLIN_OK)
        msl_write_struct(out, &all, (uint32_t)sizeof all);
    return check.status;
}

static void write_rows(const struct msl_cuts *cuts, const struct muslin_cutlist_spec *spec, void *rows,
                       size_t row_size)
{
    for (size_t i = 0; i < cuts->n; i++) {
        struct muslin_cutlist_piece_spec cut = msl_cut_at(cuts, i);
        struct msl_cut_way way = best_way(&cut, spec);
        struct muslin_cutlist_row row = { 0 };
        row.pieces = cut.count;
        row.strips = way.strips;
        row.per_strip = way.per_strip;
        row.spare_pieces = way.strips * way.per_strip - cut.count;
        row.strip_cut = way.along;
        row.piece_cut = way.across;
        row.strips_length = length_of(&way);
        row.turned = way.turned;
        msl_write_row(rows, row_size, i, &row, (uint32_t)sizeof row);
    }
}

muslin_status muslin_cutlist_yardage_rows(const struct muslin_cutlist_piece_spec *pieces, size_t piece_size, size_t n,
                                          const struct muslin_cutlist_spec *spec, struct muslin_cutlist_row *rows,
                                          size_t row_size, size_t capacity, size_t *count,
                                          struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct msl_cuts cuts = { pieces, piece_size, n };
    struct muslin_cutlist_spec s = { 0 };
    read_cutlist(&check, &s, spec);
    msl_want_cuts(&check, &cuts);
    if (check.status == MUSLIN_OK)
        msl_yardage_of(&check, &cuts, &s);
    if (check.status != MUSLIN_OK)
        return check.status;
    check.at = 0;
    if (msl_rows_wanted(&check, rows, row_size, (uint32_t)sizeof *rows, capacity, count, n))
        write_rows(&cuts, &s, rows, row_size);
    return check.status;
}
