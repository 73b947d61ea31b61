/* cutplan_sizes.c - a request taken apart: the sizes that it wants, and the ways to come by cloth for them.
 *
 * SPDX-License-Identifier: MIT
 *
 * Sizes are sorted by what they are, not by the rows that want them, and equal ones are one; so the search sees the
 * same numbers in the same order whatever the order of the rows is. */
#include "cutplan_plan.h"

#include "wide.h"

static int has_flag(const struct muslin_cutplan *plan, uint32_t flag)
{
    return (plan->spec.flags & flag) != 0;
}

/* ---- room ------------------------------------------------------------------------------------------------------- */

/* Where cloth has a direction, or a piece must lie as it is listed, strips go across the stock. */
static int is_bound_to_cloth(const struct muslin_blank_spec *piece)
{
    if (piece->count == 0 || piece->kind == MUSLIN_BLANK_JOINED || piece->kind == MUSLIN_BLANK_SLOPED)
        return 0;
    return piece->flags == 0 && piece->cut_width != piece->cut_length;
}

static void measure_room(struct muslin_cutplan *plan)
{
    const struct muslin_cutplan_spec *in = &plan->spec;
    plan->layers = has_flag(plan, MUSLIN_CUTPLAN_FOLDED) ? 2 : 1;
    plan->layer = in->usable_width / plan->layers;
    plan->room = msl_greater(in->usable_width - in->end_loss, 0) / plan->layers;
    plan->share = in->resquare_loss == 0 ? 0 : msl_divided_up(in->resquare_loss, in->resquare_every);
    plan->may_turn_stock = in->print == MUSLIN_PRINT_NONE && !has_flag(plan, MUSLIN_CUTPLAN_FIRST_CUT_ACROSS);
    for (uint32_t i = 0; i < plan->piece_count; i++)
        plan->may_turn_stock &= !is_bound_to_cloth(&plan->pieces[i]);
}

/* Room along strips and for strips in a piece of stock; none where losses take it all. */
struct room {
    int64_t across;
    int64_t along;
};

static struct room room_in_stock(const struct muslin_cutplan *plan, uint32_t row, int32_t turned)
{
    const int64_t width = plan->stock[row].width;
    const int64_t length = msl_greater(plan->stock[row].length - plan->spec.straightening, 0);
    const muslin_len across = turned ? length : width;
    const struct room room = { msl_greater(across - plan->spec.end_loss, 0), turned ? width : length };
    return room;
}

/* The longest strip for pieces of this height. */
static int64_t room_at(const struct muslin_cutplan *plan, int64_t height)
{
    int64_t most = plan->stock_count == 0 ? plan->room : 0;
    for (uint32_t i = 0; i < plan->stock_count; i++)
        for (int32_t turned = 0; turned <= plan->may_turn_stock; turned++) {
            const struct room room = room_in_stock(plan, i, turned);
            most = height <= room.along ? msl_greater(most, room.across) : most;
        }
    return most;
}

static int64_t room_of_any_height(const struct muslin_cutplan *plan)
{
    return room_at(plan, 0);
}

/* The most height of strip that some way has room for, where it is wide enough. */
static int64_t height_at(const struct muslin_cutplan *plan, int64_t taken)
{
    int64_t most = 0;
    for (uint32_t i = 0; i < plan->stock_count; i++)
        for (int32_t turned = 0; turned <= plan->may_turn_stock; turned++) {
            const struct room room = room_in_stock(plan, i, turned);
            most = taken <= room.across ? msl_greater(most, room.along) : most;
        }
    return most;
}

/* ---- blanks ----------------------------------------------------------------------------------------------------- */

static int fits_as_listed(const struct muslin_cutplan *plan, const struct msl_blank *blank)
{
    return blank->across + blank->run_in <= room_at(plan, blank->along);
}

/* What may turn has no run-in, and is no wider than high when turned. */
static int fits_turned(const struct muslin_cutplan *plan, const struct msl_blank *blank)
{
    return blank->may_turn && blank->along + plan->share <= room_at(plan, blank->across - plan->share);
}

/* The problem names the side that is too large, as the row says it: across the bolt the shorter one of what may turn.
 * Squaring share and run-in are taken off the room. */
static void want_fit(struct msl_check *check, const struct muslin_cutplan *plan, const struct msl_blank *blank)
{
    if (fits_as_listed(plan, blank) || fits_turned(plan, blank))
        return;
    const int other_way = blank->may_turn && plan->stock_count == 0;
    const int is_width = other_way == blank->swapped;
    const int64_t across = other_way ? blank->along : blank->across - plan->share;
    const int64_t room = msl_greater(room_of_any_height(plan) - plan->share - blank->run_in, 0);
    if (across > room)
        msl_fail(check, MUSLIN_ERR_NO_YIELD, is_width ? MUSLIN_ARG_PIECE_WIDTH : MUSLIN_ARG_PIECE_LENGTH, across, room);
    else
        msl_fail(check, MUSLIN_ERR_NO_YIELD, is_width ? MUSLIN_ARG_PIECE_LENGTH : MUSLIN_ARG_PIECE_WIDTH, blank->along,
                 height_at(plan, blank->across + blank->run_in));
}

static struct msl_blank blank_of(const struct muslin_cutplan *plan, uint32_t row)
{
    const struct muslin_blank_spec *piece = &plan->pieces[row];
    const int plain = plan->stock_count != 0 || has_flag(plan, MUSLIN_CUTPLAN_NO_PANELS);
    const int may_turn = piece->flags != 0 && plan->spec.print == MUSLIN_PRINT_NONE;
    struct msl_blank blank = { 0 };
    blank.along = piece->cut_length;
    blank.width = piece->cut_width;
    blank.run_in = piece->run_in;
    blank.each = 1;
    blank.row = row;
    blank.may_turn = may_turn && piece->cut_width != piece->cut_length;
    blank.swapped = blank.may_turn && piece->cut_width < piece->cut_length;
    blank.slit = piece->kind == MUSLIN_BLANK_LENGTHWISE && !plain;
    blank.level = piece->kind == MUSLIN_BLANK_SLOPED || has_flag(plan, MUSLIN_CUTPLAN_ONE_HEIGHT);
    if (blank.swapped) {
        blank.along = piece->cut_width;
        blank.width = piece->cut_length;
    }
    blank.across = blank.width + plan->share;
    blank.width += piece->run_in;
    return blank;
}

static void add_blank(struct msl_check *check, struct muslin_cutplan *plan, const struct msl_blank *blank)
{
    want_fit(check, plan, blank);
    if (check->status == MUSLIN_OK)
        plan->blanks[plan->blank_count++] = *blank;
}

/* A strip of a joined length. Of a folded bolt a strip longer than its half goes round the fold. */
static void add_strip(struct msl_check *check, struct muslin_cutplan *plan, uint32_t row, int64_t length, int64_t each)
{
    struct msl_blank blank = blank_of(plan, row);
    blank.joined = 1;
    blank.width = length;
    blank.each = each;
    blank.folded = plan->layers == 2 && length > plan->room;
    blank.across = blank.folded ? plan->room : length;
    if (each > 0)
        add_blank(check, plan, &blank);
}

/* n strips give n times their length less n - 1 joins: as many whole ones as are needed, and what is then missing. */
static void add_joined(struct msl_check *check, struct muslin_cutplan *plan, uint32_t row)
{
    const struct muslin_blank_spec *piece = &plan->pieces[row];
    const int64_t whole = room_at(plan, piece->cut_length) * plan->layers;
    const int64_t gain = whole - piece->join_loss;
    if (whole == 0) {
        struct msl_blank blank = blank_of(plan, row); /* refused: for its length, or for its height alone */
        blank.across = room_of_any_height(plan) > 0 ? 1 : blank.across;
        add_blank(check, plan, &blank);
    } else if (gain < 1) {
        msl_fail(check, MUSLIN_ERR_RANGE, MUSLIN_ARG_JOIN_LOSS, piece->join_loss, whole - 1);
    } else {
        const int64_t more = piece->cut_width > whole ? msl_divided_up(piece->cut_width - whole, gain) : 0;
        add_strip(check, plan, row, whole, more);
        add_strip(check, plan, row, piece->cut_width - more * gain, 1);
    }
}

static void add_row(struct msl_check *check, struct muslin_cutplan *plan, uint32_t row)
{
    const struct msl_blank blank = blank_of(plan, row);
    check->at = row;
    if (plan->pieces[row].kind == MUSLIN_BLANK_JOINED)
        add_joined(check, plan, row);
    else
        add_blank(check, plan, &blank);
}

/* ---- in order --------------------------------------------------------------------------------------------------- */

int64_t msl_priority_of(const struct muslin_cutplan *plan, uint32_t row)
{
    return has_flag(plan, MUSLIN_CUTPLAN_BY_PRIORITY) ? plan->pieces[row].priority : 0;
}

/* What tells sizes of one height and width apart: how far the first is behind the other there; 0: the same size. What
 * they run in differs where their cut width does. */
static int64_t distance(const struct msl_blank *a, const struct msl_blank *b)
{
    const int64_t between[] = { a->width - b->width, a->may_turn - b->may_turn, a->slit - b->slit, a->level - b->level,
                                a->joined - b->joined };
    int64_t found = a->folded - b->folded;
    for (size_t i = sizeof between / sizeof between[0]; i-- > 0;)
        found = between[i] != 0 ? between[i] : found;
    return found;
}

static int is_blank_before(const void *context, uint32_t a, uint32_t b)
{
    const struct muslin_cutplan *plan = context;
    const int64_t behind = distance(&plan->blanks[a], &plan->blanks[b]);
    if (behind != 0)
        return behind < 0;
    return msl_priority_of(plan, plan->blanks[a].row) < msl_priority_of(plan, plan->blanks[b].row);
}

static int is_same_size(const struct msl_blank *a, const struct msl_blank *b)
{
    return a->across == b->across && a->along == b->along && distance(a, b) == 0;
}

static void sort_blanks(struct msl_check *check, struct muslin_cutplan *plan)
{
    const struct muslin_allocator *a = &plan->allocator;
    const uint32_t n = plan->blank_count;
    struct msl_rank *ranks = msl_scratch(check, a, n, sizeof *ranks);
    struct msl_rank *spare = msl_scratch(check, a, n, sizeof *spare);
    struct msl_blank *unsorted = msl_scratch(check, a, n, sizeof *unsorted);
    for (uint32_t i = 0; check->status == MUSLIN_OK && i < n; i++) {
        const struct msl_rank rank = { .first = -plan->blanks[i].along, .second = -plan->blanks[i].across, .row = i };
        ranks[i] = rank;
        unsorted[i] = plan->blanks[i];
    }
    if (check->status == MUSLIN_OK)
        msl_sort(ranks, spare, n, is_blank_before, plan);
    for (uint32_t i = 0; check->status == MUSLIN_OK && i < n; i++)
        plan->blanks[i] = unsorted[ranks[i].row];
    msl_scratch_free(a, ranks, n, sizeof *ranks);
    msl_scratch_free(a, spare, n, sizeof *spare);
    msl_scratch_free(a, unsorted, n, sizeof *unsorted);
}

/* All pieces one above the other, or each from a piece of the dearest stock: no plan that is looked at costs more. */
static void want_in_range(struct msl_check *check, const struct muslin_cutplan *plan)
{
    struct msl_wide sum = msl_wide_from(0);
    for (uint32_t i = 0; check->status == MUSLIN_OK && i < plan->blank_count; i++) {
        const struct msl_blank *blank = &plan->blanks[i];
        const int64_t count = plan->pieces[blank->row].count;
        const int64_t each = plan->stock_count == 0 ? msl_greater(blank->across, blank->along)
                                                    : plan->stock[plan->stock_rows[0]].cost;
        sum = msl_wide_add(sum, msl_wide_multiply(count * blank->each + plan->spec.spare_pieces, each));
        check->at = blank->row;
        if (msl_wide_compare(sum, msl_wide_from(MUSLIN_LENGTH_MAX)) > 0)
            msl_fail(check, MUSLIN_ERR_OVERFLOW, MUSLIN_ARG_PIECES, count, 0);
    }
}

static uint64_t most_blanks(const struct muslin_cutplan *plan)
{
    return 2 * (uint64_t)plan->piece_count + MSL_SIZES_MAX;
}

/* A row comes to two sizes at first, and each of them to two heights. */
static void take_room(struct msl_check *check, struct muslin_cutplan *plan)
{
    const struct muslin_allocator *a = &plan->allocator;
    const uint64_t sizes = most_blanks(plan);
    struct msl_cutting *cutting = &plan->cutting;
    plan->blanks = msl_scratch(check, a, sizes, sizeof plan->blanks[0]);
    plan->sizes = msl_scratch(check, a, sizes, sizeof plan->sizes[0]);
    cutting->sizes = msl_scratch(check, a, sizes, sizeof cutting->sizes[0]);
    cutting->ways = msl_scratch(check, a, 2 * sizes + 2 * (uint64_t)plan->stock_count, sizeof cutting->ways[0]);
    cutting->heights = msl_scratch(check, a, 2 * sizes, sizeof cutting->heights[0]);
    cutting->available = msl_scratch(check, a, plan->stock_count, sizeof cutting->available[0]);
}

void msl_free_cutting(struct muslin_cutplan *plan)
{
    const struct muslin_allocator *a = &plan->allocator;
    const uint64_t sizes = most_blanks(plan);
    struct msl_cutting *cutting = &plan->cutting;
    msl_scratch_free(a, plan->blanks, sizes, sizeof plan->blanks[0]);
    msl_scratch_free(a, plan->sizes, sizes, sizeof plan->sizes[0]);
    msl_scratch_free(a, cutting->sizes, sizes, sizeof cutting->sizes[0]);
    msl_scratch_free(a, cutting->ways, 2 * sizes + 2 * (uint64_t)plan->stock_count, sizeof cutting->ways[0]);
    msl_scratch_free(a, cutting->heights, 2 * sizes, sizeof cutting->heights[0]);
    msl_scratch_free(a, cutting->available, plan->stock_count, sizeof cutting->available[0]);
}

void msl_lay_out(struct msl_check *check, struct muslin_cutplan *plan)
{
    measure_room(plan);
    plan->blank_count = 0;
    take_room(check, plan);
    for (uint32_t row = 0; check->status == MUSLIN_OK && row < plan->piece_count; row++)
        if (plan->pieces[row].count > 0)
            add_row(check, plan, row);
    want_in_range(check, plan);
    check->at = 0;
    sort_blanks(check, plan);
}

int msl_put_lengths(struct msl_check *check, struct muslin_cutplan *plan, uint32_t row,
                    const struct msl_length *lengths, int32_t count)
{
    uint32_t kept = 0;
    if (plan->blank_count + (uint32_t)count > MSL_SIZES_MAX)
        return 0;
    for (uint32_t i = 0; i < plan->blank_count; i++)
        if (plan->blanks[i].row != row)
            plan->blanks[kept++] = plan->blanks[i];
    plan->blank_count = kept;
    for (int32_t i = 0; i < count; i++)
        add_strip(check, plan, row, lengths[i].length, lengths[i].count);
    sort_blanks(check, plan);
    return 1;
}

/* ---- sizes ------------------------------------------------------------------------------------------------------ */

/* Pieces wanted of a size, and after which each row has all of its own. The last row that gets some has the spare ones
 * too. */
static int64_t count_pieces(const struct muslin_cutplan *plan, uint32_t first, uint32_t behind)
{
    int64_t pieces = 0;
    for (uint32_t i = first; i < behind; i++) {
        pieces += plan->made[plan->blanks[i].row] * plan->blanks[i].each;
        plan->blanks[i].end = pieces;
    }
    const int64_t spare = pieces == 0 || plan->blanks[first].joined ? 0 : plan->spec.spare_pieces;
    for (uint32_t i = first; i < behind; i++)
        if (plan->blanks[i].end == pieces)
            plan->blanks[i].end = pieces + spare;
    return pieces + spare;
}

static void add_size(struct muslin_cutplan *plan, uint32_t first, uint32_t behind)
{
    const struct msl_blank *blank = &plan->blanks[first];
    const int64_t pieces = count_pieces(plan, first, behind);
    if (pieces == 0)
        return;
    struct msl_piece_size size = { .across = blank->across,
                                   .along = blank->along,
                                   .run_in = blank->run_in,
                                   .count = pieces,
                                   .slit = blank->slit,
                                   .level = blank->level };
    if (blank->may_turn) {
        size.turned_across = blank->along + plan->share;
        size.turned_along = blank->across - plan->share;
    }
    if (!blank->folded)
        size.count = msl_divided_up(pieces, plan->layers);
    const struct msl_cut_size rows = { first, behind - first };
    plan->sizes[plan->cutting.size_count] = rows;
    plan->cutting.sizes[plan->cutting.size_count++] = size;
}

/* The greatest length that all sizes are whole numbers of. */
static void put_into_units(struct muslin_cutplan *plan)
{
    struct msl_cutting *cutting = &plan->cutting;
    int64_t unit = 0;
    for (int32_t i = 0; i < cutting->size_count; i++) {
        const struct msl_piece_size *size = &cutting->sizes[i];
        unit = msl_common_divisor(unit, msl_common_divisor(size->across, size->along));
        unit = msl_common_divisor(unit, msl_common_divisor(size->turned_across, size->turned_along));
        unit = msl_common_divisor(unit, size->run_in);
    }
    plan->unit = msl_greater(unit, 1);
    for (int32_t i = 0; i < cutting->size_count; i++) {
        struct msl_piece_size *size = &cutting->sizes[i];
        size->across /= plan->unit;
        size->along /= plan->unit;
        size->turned_across /= plan->unit;
        size->turned_along /= plan->unit;
        size->run_in /= plan->unit;
    }
}

/* ---- ways ------------------------------------------------------------------------------------------------------- */

static void add_height(struct msl_cutting *cutting, int64_t height)
{
    for (int32_t i = 0; i < cutting->height_count; i++)
        if (cutting->heights[i] == height)
            return;
    int32_t at = cutting->height_count++;
    for (; at > 0 && cutting->heights[at - 1] < height; at--)
        cutting->heights[at] = cutting->heights[at - 1];
    cutting->heights[at] = height;
}

/* Strips need only be as high as a piece is in a way in which it fits. */
static void find_heights(struct muslin_cutplan *plan)
{
    struct msl_cutting *cutting = &plan->cutting;
    cutting->height_count = 0;
    for (int32_t i = 0; i < cutting->size_count; i++) {
        const struct msl_piece_size *size = &cutting->sizes[i];
        const struct msl_blank *blank = &plan->blanks[plan->sizes[i].first];
        if (!size->slit && fits_as_listed(plan, blank))
            add_height(cutting, size->along);
        if (!size->slit && fits_turned(plan, blank))
            add_height(cutting, size->turned_along);
    }
}

static void add_way(struct msl_cutting *cutting, const struct msl_way *way)
{
    cutting->ways[cutting->way_count++] = *way;
}

/* The number of the next slit size that is less long than this one; at the end the number of sizes. Sizes go from the
 * highest down. */
static int32_t next_panel(const struct msl_cutting *cutting, int32_t at, int64_t below)
{
    while (at < cutting->size_count && (!cutting->sizes[at].slit || cutting->sizes[at].along >= below))
        at++;
    return at;
}

static void find_ways_of_bolt(struct muslin_cutplan *plan)
{
    struct msl_cutting *cutting = &plan->cutting;
    const int64_t across = plan->room / plan->unit;
    int32_t strip = 0;
    int32_t panel = next_panel(cutting, 0, INT64_MAX);
    while (strip < cutting->height_count || panel < cutting->size_count) {
        const int64_t height = strip < cutting->height_count ? cutting->heights[strip] : 0;
        const int64_t length = panel < cutting->size_count ? cutting->sizes[panel].along : 0;
        if (length >= height) {
            const struct msl_way way = { length, across, length, 1, 1, -1, 0 };
            add_way(cutting, &way);
            panel = next_panel(cutting, panel, length);
        } else {
            const struct msl_way way = { .cost = height, .across = across, .along = height, .stock = -1 };
            add_way(cutting, &way);
            strip++;
        }
    }
}

static void find_ways_of_stock(struct muslin_cutplan *plan)
{
    struct msl_cutting *cutting = &plan->cutting;
    cutting->stock_count = (int32_t)plan->stock_count;
    for (int32_t i = 0; i < cutting->stock_count; i++) {
        const struct muslin_cutplan_stock_spec *stock = &plan->stock[plan->stock_rows[i]];
        const struct room listed = room_in_stock(plan, plan->stock_rows[i], 0);
        const struct room turned = room_in_stock(plan, plan->stock_rows[i], 1);
        const struct msl_way way = { .cost = stock->cost,
                                     .across = listed.across / plan->unit,
                                     .along = listed.along / plan->unit,
                                     .sheet = 1,
                                     .stock = i };
        const struct msl_way other = { stock->cost, turned.across / plan->unit, turned.along / plan->unit, 1, 0, i, 1 };
        cutting->available[i] = stock->count == MUSLIN_COUNT_MAX ? INT64_MAX : stock->count;
        add_way(cutting, &way);
        if (plan->may_turn_stock && (other.across != way.across || other.along != way.along))
            add_way(cutting, &other);
    }
}

void msl_fill_cutting(struct muslin_cutplan *plan)
{
    struct msl_cutting *cutting = &plan->cutting;
    cutting->size_count = 0;
    cutting->way_count = 0;
    cutting->one_size = has_flag(plan, MUSLIN_CUTPLAN_OWN_STRIPS);
    cutting->stacked = has_flag(plan, MUSLIN_CUTPLAN_STACKED);
    uint32_t behind = 0;
    for (uint32_t first = 0; first < plan->blank_count; first = behind) {
        for (behind = first; behind < plan->blank_count; behind++)
            if (!is_same_size(&plan->blanks[first], &plan->blanks[behind]))
                break;
        add_size(plan, first, behind);
    }
    put_into_units(plan);
    find_heights(plan);
    if (plan->stock_count == 0)
        find_ways_of_bolt(plan);
    else
        find_ways_of_stock(plan);
    plan->cost_unit = plan->stock_count == 0 ? plan->unit : 1;
}
