/* cutlist_stock.c - the same list from pieces of stock: how many, which from which, and how often.
 *
 * SPDX-License-Identifier: MIT
 *
 * Strips are laid one behind the other, row by row, and a place in the stock is how far one has come. Of two places the
 * earlier one leaves every row ending earlier, or as early: it has as much room before the next piece of stock, or
 * more. So the way of a row that ends earlier is the better one for all that follows; and fewer pieces, or wider or
 * longer stock, never end later. On that rest the searches by halving here.
 *
 * After the checks a size is at most 2^30 and a count below 2^31. A list is taken at most 2^31 times, so a row asks for
 * less than 2^62 pieces, and so many strips at most. */
#include "cutlist_inside.h"

/* How far one has come: pieces of stock begun, and the length used of the last one. */
struct place {
    int64_t stock;
    muslin_len used;
};

/* Before the first piece of stock: as behind one that is used up. */
static struct place start_of(const struct msl_job *job)
{
    struct place start = { 0, job->stock.length };
    return start;
}

static int is_earlier(const struct place *a, const struct place *b)
{
    return a->stock < b->stock || (a->stock == b->stock && a->used < b->used);
}

/* ---- one row ----------------------------------------------------------------------------------------------------- */

/* A row laid one way from a place on; `fits` is 0 where not one piece does. */
struct laid {
    struct msl_cut_way way;
    struct place first; /* behind the first strip, where there is one */
    struct place end;
    int fits;
};

static struct place behind(struct place from, int64_t strips, muslin_len along, muslin_len length)
{
    int64_t behind_last = (length - from.used) / along;
    if (strips <= behind_last) {
        from.used += strips * along;
        return from;
    }
    int64_t in_each = length / along;
    int64_t more = msl_divided_up(strips - behind_last, in_each);
    from.stock += more;
    from.used = (strips - behind_last - (more - 1) * in_each) * along;
    return from;
}

static struct laid lay_way(const struct msl_job *job, const struct muslin_cutlist_piece_spec *cut, struct place from,
                           int32_t turned)
{
    struct laid laid = { .way = msl_way_of(cut, job->stock.width, turned), .first = from, .end = from };
    const int has_room = laid.way.per_strip != 0 && laid.way.along <= job->stock.length;
    laid.fits = has_room || cut->count == 0;
    if (!has_room)
        return laid;
    laid.first = behind(from, 1, laid.way.along, job->stock.length);
    laid.end = behind(from, laid.way.strips, laid.way.along, job->stock.length);
    return laid;
}

static struct laid lay_row(const struct msl_job *job, struct muslin_cutlist_piece_spec cut, struct place from)
{
    cut.count *= job->times;
    struct laid listed = lay_way(job, &cut, from, 0);
    struct laid turned = lay_way(job, &cut, from, 1);
    if (!msl_may_turn(&cut, job->stock.print) || !turned.fits)
        return listed;
    if (!listed.fits || is_earlier(&turned.end, &listed.end))
        return turned;
    return listed;
}

/* ---- the list ---------------------------------------------------------------------------------------------------- */

size_t msl_first_unfit(const struct msl_job *job)
{
    for (size_t i = 0; i < job->cuts.n; i++)
        if (!lay_row(job, msl_cut_at(&job->cuts, i), start_of(job)).fits)
            return i;
    return job->cuts.n;
}

/* Where the whole list ends. With more than `most` pieces of stock, or a row that does not fit, it ends nowhere: at
 * once, behind all stock that there could be. `most` is at most MUSLIN_LENGTH_MAX, so that the sum of one row more
 * fits. */
static struct place end_of(const struct msl_job *job, int64_t most)
{
    static const struct place nowhere = { .stock = INT64_MAX };
    struct place place = start_of(job);
    for (size_t i = 0; i < job->cuts.n; i++) {
        struct laid laid = lay_row(job, msl_cut_at(&job->cuts, i), place);
        if (!laid.fits || laid.end.stock > most)
            return nowhere;
        place = laid.end;
    }
    return place;
}

static int is_enough(const struct msl_job *job, int64_t most)
{
    return end_of(job, most).stock <= most;
}

/* The least side, given by its address in the job, with which the list still comes from so many pieces of stock. */
static muslin_len least_side(struct msl_job *job, muslin_len *side, int64_t most)
{
    const muslin_len whole = *side;
    muslin_len short_of = 0;
    muslin_len enough = whole;
    while (enough - short_of > 1) {
        *side = short_of + (enough - short_of) / 2;
        if (is_enough(job, most))
            enough = *side;
        else
            short_of = *side;
    }
    *side = whole;
    return enough;
}

struct slack {
    muslin_len narrower_by;
    muslin_len shorter_by;
    uint32_t warnings;
};

/* Nothing wanted has no slack and needs no warning. */
static struct slack slack_of(struct msl_job *job, int64_t most)
{
    struct slack slack = { 0 };
    if (most == 0)
        return slack;
    slack.narrower_by = job->stock.width - least_side(job, &job->stock.width, most);
    slack.shorter_by = job->stock.length - least_side(job, &job->stock.length, most);
    slack.warnings = slack.narrower_by == 0 || slack.shorter_by == 0 ? MUSLIN_WARN_NO_SLACK : 0;
    return slack;
}

/* The most that a row leaves used of any piece of stock that it is cut from; strips is 1 or more. Before the first
 * piece nothing is. */
static muslin_len fullest_of(const struct laid *laid, struct place from, muslin_len length)
{
    muslin_len along = laid->way.along;
    muslin_len behind_last = (length - from.used) / along * along;
    muslin_len fullest = laid->end.used;
    if (behind_last != 0 && laid->end.stock != from.stock)
        fullest = msl_greater(fullest, from.used + behind_last);
    return laid->end.stock - from.stock > 1 ? msl_greater(fullest, length / along * along) : fullest;
}

/* How far strips reach across, and along, of all pieces of stock that are cut. */
static struct slack slack_as_cut(const struct msl_job *job)
{
    struct place place = start_of(job);
    muslin_len widest = 0;
    muslin_len fullest = 0;
    for (size_t i = 0; i < job->cuts.n; i++) {
        struct muslin_cutlist_piece_spec cut = msl_cut_at(&job->cuts, i);
        struct laid laid = lay_row(job, cut, place);
        if (laid.way.strips != 0) {
            widest = msl_greater(widest, msl_room_as_cut(&laid.way, cut.count * job->times));
            fullest = msl_greater(fullest, fullest_of(&laid, place, job->stock.length));
        }
        place = laid.end;
    }
    struct slack slack = { 0 };
    if (place.stock == 0)
        return slack;
    slack.narrower_by = job->stock.width - widest;
    slack.shorter_by = job->stock.length - fullest;
    return slack;
}

/* Strips must be cut from stock that is not a strip of that width already. */
static int32_t is_trimmed(const struct msl_job *job, const struct laid *laid)
{
    return laid->way.strips != 0 && laid->way.along != job->stock.length;
}

/* Strips, pieces and what is to spare, row by row. */
static void add_rows(const struct msl_job *job, struct muslin_cutlist_stock *all)
{
    struct place place = start_of(job);
    struct msl_cut_way last = { 0 };
    for (size_t i = 0; i < job->cuts.n; i++) {
        struct muslin_cutlist_piece_spec cut = msl_cut_at(&job->cuts, i);
        struct laid laid = lay_row(job, cut, place);
        all->pieces += cut.count;
        all->strips += laid.way.strips;
        all->spare_pieces += laid.way.strips * laid.way.per_strip - cut.count;
        all->trimmed |= is_trimmed(job, &laid);
        all->turned |= laid.way.turned;
        last = laid.way;
        place = laid.end;
    }
    all->stock_needed = place.stock;
    all->left_over = job->stock.length - place.used;
    all->rest_pieces = last.strips == 0 ? 0 : all->left_over / last.along * last.per_strip;
}

struct muslin_cutlist_stock msl_stock_of(struct msl_job *job)
{
    struct muslin_cutlist_stock all = { 0 };
    add_rows(job, &all);
    all.stock_missing = msl_greater(all.stock_needed - job->stock.count, 0);
    all.stock_left = msl_greater(job->stock.count - all.stock_needed, 0);
    all.area_bound = msl_cuts_area_over(&job->cuts, job->stock.width, job->stock.length);
    struct slack slack = slack_of(job, all.stock_needed);
    struct slack as_cut = slack_as_cut(job);
    all.narrower_by = slack.narrower_by;
    all.shorter_by = slack.shorter_by;
    all.as_cut_narrower_by = as_cut.narrower_by;
    all.as_cut_shorter_by = as_cut.shorter_by;
    all.warnings = slack.warnings;
    return all;
}

/* ---- the calls --------------------------------------------------------------------------------------------------- */

struct msl_job msl_read_job(struct msl_check *check, const void *rows, size_t row_size, size_t n,
                            const struct muslin_stock_spec *stock)
{
    struct msl_job job = { { rows, row_size, n }, { 0 }, 1 };
    msl_read_stock(check, MUSLIN_ARG_SPEC, &job.stock, stock);
    msl_want_cuts(check, &job.cuts);
    return job;
}

/* The side that is too short for the piece as it is listed. */
static void want_fit(struct msl_check *check, const struct msl_job *job)
{
    size_t unfit = check->status == MUSLIN_OK ? msl_first_unfit(job) : job->cuts.n;
    if (unfit == job->cuts.n)
        return;
    struct muslin_cutlist_piece_spec cut = msl_cut_at(&job->cuts, unfit);
    check->at = (int64_t)unfit;
    if (cut.cut_width > job->stock.width)
        msl_fail(check, MUSLIN_ERR_NO_YIELD, MUSLIN_ARG_USABLE_WIDTH, job->stock.width, cut.cut_width);
    else
        msl_fail(check, MUSLIN_ERR_NO_YIELD, MUSLIN_ARG_CLOTH_LENGTH, job->stock.length, cut.cut_length);
}

muslin_status muslin_cutlist_from_stock(const struct muslin_cutlist_piece_spec *pieces, size_t piece_size, size_t n,
                                        const struct muslin_stock_spec *stock, struct muslin_cutlist_stock *out,
                                        struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct msl_job job = msl_read_job(&check, pieces, piece_size, n, stock);
    msl_want_output(&check, out, (uint32_t)sizeof *out);
    want_fit(&check, &job);
    if (check.status != MUSLIN_OK)
        return check.status;
    struct muslin_cutlist_stock all = msl_stock_of(&job);
    msl_write_struct(out, &all, (uint32_t)sizeof all);
    return MUSLIN_OK;
}

static void write_rows(const struct msl_job *job, void *rows, size_t row_size)
{
    struct place place = start_of(job);
    for (size_t i = 0; i < job->cuts.n; i++) {
        struct muslin_cutlist_piece_spec cut = msl_cut_at(&job->cuts, i);
        struct laid laid = lay_row(job, cut, place);
        struct muslin_cutlist_row row = { 0 };
        row.pieces = cut.count * job->times;
        row.strips = laid.way.strips;
        row.per_strip = laid.way.per_strip;
        row.spare_pieces = laid.way.strips * laid.way.per_strip - row.pieces;
        row.strip_cut = laid.way.along;
        row.piece_cut = laid.way.across;
        row.strips_length = laid.way.strips * laid.way.along;
        row.first_stock = laid.way.strips != 0 ? laid.first.stock : 0;
        row.last_stock = laid.way.strips != 0 ? laid.end.stock : 0;
        row.turned = laid.way.turned;
        row.trimmed = is_trimmed(job, &laid);
        msl_write_row(rows, row_size, i, &row, (uint32_t)sizeof row);
        place = laid.end;
    }
}

muslin_status muslin_cutlist_stock_rows(const struct muslin_cutlist_piece_spec *pieces, size_t piece_size, size_t n,
                                        const struct muslin_stock_spec *stock, struct muslin_cutlist_row *rows,
                                        size_t row_size, size_t capacity, size_t *count,
                                        struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct msl_job job = msl_read_job(&check, pieces, piece_size, n, stock);
    want_fit(&check, &job);
    if (msl_rows_wanted(&check, rows, row_size, (uint32_t)sizeof *rows, capacity, count, n))
        write_rows(&job, rows, row_size);
    return check.status;
}

/* ---- which strips from which ------------------------------------------------------------------------------------- */

/* The caller's rows; null while they are only counted. */
struct parts {
    void *rows;
    size_t row_size;
    size_t count;
};

static void take_part(struct parts *parts, const struct muslin_cutlist_part *part)
{
    if (part->strips == 0 || part->last_stock < part->first_stock)
        return;
    if (parts->rows != NULL)
        msl_write_row(parts->rows, parts->row_size, parts->count, part, (uint32_t)sizeof *part);
    parts->count++;
}

/* What the row before has left of a piece of stock, whole pieces, and the last. */
static void take_row(struct parts *parts, size_t row, const struct laid *laid, struct place from, muslin_len length)
{
    int64_t strips = laid->way.strips;
    if (strips == 0)
        return;
    int64_t behind_last = (length - from.used) / laid->way.along;
    int64_t in_each = length / laid->way.along;
    int64_t here = strips < behind_last ? strips : behind_last;
    int64_t whole = from.stock + (strips - here) / in_each;
    const struct muslin_cutlist_part left = {
        .row = (int64_t)row, .strips = here, .first_stock = from.stock, .last_stock = from.stock, .begins_at = from.used
    };
    const struct muslin_cutlist_part full = {
        .row = (int64_t)row, .strips = in_each, .first_stock = from.stock + 1, .last_stock = whole
    };
    const struct muslin_cutlist_part last = {
        .row = (int64_t)row, .strips = (strips - here) % in_each, .first_stock = whole + 1, .last_stock = whole + 1
    };
    take_part(parts, &left);
    take_part(parts, &full);
    take_part(parts, &last);
}

static void take_parts(struct parts *parts, const struct msl_job *job)
{
    struct place place = start_of(job);
    for (size_t i = 0; i < job->cuts.n; i++) {
        struct laid laid = lay_row(job, msl_cut_at(&job->cuts, i), place);
        take_row(parts, i, &laid, place, job->stock.length);
        place = laid.end;
    }
}

muslin_status muslin_cutlist_stock_parts(const struct muslin_cutlist_piece_spec *pieces, size_t piece_size, size_t n,
                                         const struct muslin_stock_spec *stock, struct muslin_cutlist_part *rows,
                                         size_t row_size, size_t capacity, size_t *count,
                                         struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct msl_job job = msl_read_job(&check, pieces, piece_size, n, stock);
    struct parts counted = { 0 };
    struct parts filled = { rows, row_size, 0 };
    want_fit(&check, &job);
    if (check.status != MUSLIN_OK)
        return check.status;
    take_parts(&counted, &job);
    if (msl_rows_wanted(&check, rows, row_size, (uint32_t)sizeof *rows, capacity, count, counted.count))
        take_parts(&filled, &job);
    return check.status;
}

/* ---- how often --------------------------------------------------------------------------------------------------- */

static int is_nothing_wanted(const struct msl_cuts *cuts)
{
    int is_wanted = 0;
    for (size_t i = 0; i < cuts->n; i++)
        is_wanted |= msl_cut_at(cuts, i).count != 0;
    return !is_wanted;
}

/* The most times that the stock in hand gives; up to one more than a count may be. */
static int64_t most_times(struct msl_job *job)
{
    int64_t enough = 0;
    int64_t too_many = MUSLIN_COUNT_MAX + 2;
    while (too_many - enough > 1) {
        job->times = enough + (too_many - enough) / 2;
        if (is_enough(job, job->stock.count))
            enough = job->times;
        else
            too_many = job->times;
    }
    return enough;
}

/* What once more needs is less than twice what is in hand and one piece more for each row, so it is no large number. */
static struct muslin_cutlist_lists lists_of(struct msl_job *job, int64_t times)
{
    struct muslin_cutlist_lists lists = { 0 };
    job->times = times + 1;
    lists.stock_for_one_more = end_of(job, MUSLIN_LENGTH_MAX).stock - job->stock.count;
    job->times = times;
    struct place end = end_of(job, job->stock.count);
    lists.lists = times;
    lists.stock_used = end.stock;
    lists.stock_left = job->stock.count - end.stock;
    lists.left_over = job->stock.length - end.used;
    if (times == 0)
        return lists;
    struct slack slack = slack_of(job, job->stock.count);
    struct slack as_cut = slack_as_cut(job);
    lists.narrower_by = slack.narrower_by;
    lists.shorter_by = slack.shorter_by;
    lists.as_cut_narrower_by = as_cut.narrower_by;
    lists.as_cut_shorter_by = as_cut.shorter_by;
    lists.warnings = slack.warnings;
    return lists;
}

/* How often the list comes from the stock in hand; 0 after a failure. */
static int64_t want_times(struct msl_check *check, struct msl_job *job)
{
    if (check->status == MUSLIN_OK && is_nothing_wanted(&job->cuts))
        msl_fail(check, MUSLIN_ERR_RANGE, MUSLIN_ARG_PIECES, 0, 1);
    want_fit(check, job);
    if (check->status != MUSLIN_OK)
        return 0;
    int64_t times = most_times(job);
    if (times > MUSLIN_COUNT_MAX)
        msl_fail(check, MUSLIN_ERR_OVERFLOW, MUSLIN_ARG_SETS, times, MUSLIN_COUNT_MAX);
    return times;
}

muslin_status muslin_cutlist_lists_from_stock(const struct muslin_cutlist_piece_spec *pieces, size_t piece_size,
                                              size_t n, const struct muslin_stock_spec *stock,
                                              struct muslin_cutlist_lists *out, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct msl_job job = msl_read_job(&check, pieces, piece_size, n, stock);
    msl_want_output(&check, out, (uint32_t)sizeof *out);
    int64_t times = want_times(&check, &job);
    if (check.status != MUSLIN_OK)
        return check.status;
    struct muslin_cutlist_lists lists = lists_of(&job, times);
    msl_write_struct(out, &lists, (uint32_t)sizeof lists);
    return MUSLIN_OK;
}

muslin_status muslin_cutlist_lists_rows(const struct muslin_cutlist_piece_spec *pieces, size_t piece_size, size_t n,
                                        const struct muslin_stock_spec *stock, struct muslin_cutlist_row *rows,
                                        size_t row_size, size_t capacity, size_t *count, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct msl_job job = msl_read_job(&check, pieces, piece_size, n, stock);
    job.times = want_times(&check, &job);
    if (msl_rows_wanted(&check, rows, row_size, (uint32_t)sizeof *rows, capacity, count, n))
        write_rows(&job, rows, row_size);
    return check.status;
}
