/* cutplan.c - cutting plans of few pieces against all ways of cutting them.
 *
 * SPDX-License-Identifier: MIT
 *
 *     cutplan [how many, by default 100000] [seed, by default 1]
 *
 * Requests are drawn by chance: up to six pieces that may be turned, slit from panels or sloped, from a bolt or from
 * stock, with any options. Of each the least is found by dealing the pieces out to strips, panels and pieces of stock
 * in every way. No bound may pass it, no plan may be below it, a plan that is said to be proven must be it, and the
 * check must find every plan and its proof well; stock that is said not to suffice must not. What stock suffices for is
 * given to the rows one by one, to each as many pieces as there is any way for beside those before it: as many must be
 * made, or told. Prints what went wrong, and how much was proven. */
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include <muslin/muslin.h>

enum { PIECES = 6, MASKS = 1 << PIECES, ROWS = 4, SHEETS = 2, NEVER = 1000000 };

static uint64_t drawn(uint64_t *state, uint64_t below)
{
    *state = *state * UINT64_C(6364136223846793005) + UINT64_C(1442695040888963407);
    return (*state >> 33) % below;
}

/* ---- a request --------------------------------------------------------------------------------------------------- */

struct request {
    struct muslin_cutplan_spec spec;
    struct muslin_blank_spec rows[ROWS];
    struct muslin_cutplan_stock_spec stock[SHEETS];
    size_t row_count;
    size_t stock_count;
};

static void draw_row(struct muslin_blank_spec *row, uint64_t *random, int64_t width)
{
    static const struct muslin_blank_spec initial = MUSLIN_BLANK_SPEC_INIT;
    *row = initial;
    row->cut_width = 1 + (int64_t)drawn(random, (uint64_t)width * 2 / 3);
    row->cut_length = 1 + (int64_t)drawn(random, 9);
    switch (drawn(random, 5)) {
    case 0:
        row->flags = MUSLIN_BLANK_MAY_TURN;
        break;
    case 1:
        row->kind = MUSLIN_BLANK_LENGTHWISE;
        row->cut_width = 1 + (int64_t)drawn(random, 3);
        row->cut_length += (int64_t)drawn(random, 8);
        break;
    case 2:
        row->kind = drawn(random, 2) == 0 ? MUSLIN_BLANK_SLOPED : MUSLIN_BLANK_PIECE;
        row->run_in = row->kind == MUSLIN_BLANK_SLOPED ? (int64_t)drawn(random, 3) : 0;
        break;
    default:
        break;
    }
}

static void draw_stock(struct request *request, uint64_t *random)
{
    static const struct muslin_cutplan_stock_spec initial = MUSLIN_CUTPLAN_STOCK_SPEC_INIT;
    request->stock_count = 1 + drawn(random, SHEETS);
    request->spec.usable_width = 0;
    for (size_t i = 0; i < request->stock_count; i++) {
        struct muslin_cutplan_stock_spec *stock = &request->stock[i];
        *stock = initial;
        stock->width = 5 + (int64_t)drawn(random, 12);
        stock->length = 5 + (int64_t)drawn(random, 12);
        stock->count = drawn(random, 2) == 0 ? MUSLIN_COUNT_MAX : 1 + (int64_t)drawn(random, 3);
        stock->cost = 1 + (int64_t)drawn(random, 9);
    }
    if (drawn(random, 2) == 0) {
        request->spec.flags |= MUSLIN_CUTPLAN_BY_PRIORITY;
        for (size_t i = 0; i < request->row_count; i++)
            request->rows[i].priority = (int32_t)drawn(random, 3);
    }
}

static void draw_request(struct request *request, uint64_t *random)
{
    static const struct muslin_cutplan_spec initial = MUSLIN_CUTPLAN_SPEC_INIT;
    static const uint32_t flags[] = { 0, 0, 0, 0, MUSLIN_CUTPLAN_NO_PANELS, MUSLIN_CUTPLAN_ONE_HEIGHT,
                                      MUSLIN_CUTPLAN_OWN_STRIPS, MUSLIN_CUTPLAN_STACKED,
                                      MUSLIN_CUTPLAN_FIRST_CUT_ACROSS };
    const size_t flag_count = sizeof flags / sizeof flags[0];
    int64_t left = 1 + (int64_t)drawn(random, PIECES);
    memset(request, 0, sizeof *request);
    request->spec = initial;
    request->spec.flags = flags[drawn(random, flag_count)] | flags[drawn(random, flag_count)];
    request->spec.usable_width = 6 + (int64_t)drawn(random, 14);
    request->spec.end_loss = drawn(random, 3) == 0 ? (int64_t)drawn(random, 3) : 0;
    request->spec.straightening = drawn(random, 4) == 0 ? 1 : 0;
    request->spec.work_limit = 3000000;
    request->spec.print = drawn(random, 6) == 0 ? MUSLIN_PRINT_ONE_WAY : MUSLIN_PRINT_NONE;
    if (drawn(random, 6) == 0) {
        request->spec.resquare_every = 2;
        request->spec.resquare_loss = 1;
    }
    while (left > 0 && request->row_count < ROWS) {
        struct muslin_blank_spec *row = &request->rows[request->row_count++];
        draw_row(row, random, request->spec.usable_width);
        row->count = request->row_count == ROWS ? 1 : 1 + (int64_t)drawn(random, (uint64_t)left);
        left -= row->count;
    }
    if (drawn(random, 3) == 0)
        draw_stock(request, random);
}

/* ---- all ways of cutting it -------------------------------------------------------------------------------------- */

struct piece {
    int64_t width[2];  /* along the strip, as listed and turned */
    int64_t height[2];
    int64_t run_in;
    int ways;          /* 1 or 2 */
    int is_height[2];  /* 1: it fits some cloth so; then strips may be as high */
    int slit;
    int level;
    int same;          /* the first piece of just this size */
};

struct trial {
    struct piece piece[PIECES];
    int count;
    int one_size;
    int stacked;
    int64_t behind[MASKS]; /* least height of strips, one behind the other, for what was asked last */
};

static int fits(const struct piece *piece, int way, int64_t height)
{
    return piece->level ? piece->height[way] == height : piece->height[way] <= height;
}

/* Bits of the pieces that lie in the blank which begins with the lowest of `mask`: the least width of all blanks. */
static int64_t stacked_width(const struct trial *trial, unsigned mask, int64_t height)
{
    int first = 0;
    int64_t best = NEVER;
    if (mask == 0)
        return 0;
    while ((mask >> first & 1) == 0)
        first++;
    for (unsigned blank = mask; blank > 0; blank = (blank - 1) & mask) {
        if ((blank >> first & 1) == 0)
            continue;
        for (int way = 0; way < trial->piece[first].ways; way++) {
            const int64_t width = trial->piece[first].width[way];
            int64_t high = 0;
            for (int i = first; i < trial->count; i++) {
                const struct piece *piece = &trial->piece[i];
                int64_t lowest = NEVER;
                if ((blank >> i & 1) == 0)
                    continue;
                for (int k = 0; k < piece->ways; k++)
                    if (piece->width[k] == width && piece->height[k] < lowest && fits(piece, k, height) &&
                        ((piece->run_in == 0 && !piece->level) || blank == 1u << first))
                        lowest = piece->height[k];
                high += lowest;
            }
            if (high <= height) {
                const int64_t rest = stacked_width(trial, mask & ~blank, height);
                best = width + rest < best ? width + rest : best;
            }
        }
    }
    return best;
}

/* What these pieces take of a strip at least. */
static int64_t taken(const struct trial *trial, unsigned mask, int64_t height)
{
    int64_t sum = 0;
    int64_t run_ins = 0;
    for (int i = 0; i < trial->count; i++) {
        const struct piece *piece = &trial->piece[i];
        int64_t least = NEVER;
        int earlier = 0;
        if ((mask >> i & 1) == 0)
            continue;
        for (int k = 0; k < i; k++) {
            earlier |= (mask >> k & 1) != 0 && trial->piece[k].same == piece->same;
            if (trial->one_size && (mask >> k & 1) != 0 && trial->piece[k].same != piece->same)
                return NEVER;
        }
        for (int way = 0; way < piece->ways; way++)
            if (fits(piece, way, height) && piece->width[way] < least)
                least = piece->width[way];
        sum += least;
        run_ins += earlier ? 0 : piece->run_in;
    }
    if (trial->stacked && sum < NEVER)
        sum = stacked_width(trial, mask, height);
    return sum + run_ins;
}

/* The least height of one strip with these pieces: it is that of some piece, as that can lie, though not of one that is
 * only slit. Where blanks are stacks a height in between could hold more. */
static int64_t strip_height(const struct trial *trial, unsigned mask, int64_t room)
{
    int64_t best = NEVER;
    for (int i = 0; i < trial->count; i++)
        for (int way = 0; way < trial->piece[i].ways; way++) {
            const int64_t height = trial->piece[i].height[way];
            if (height < best && trial->piece[i].is_height[way] && taken(trial, mask, height) <= room)
                best = height;
        }
    return best;
}

static unsigned slit_of(const struct trial *trial)
{
    unsigned slit = 0;
    for (int i = 0; i < trial->count; i++)
        slit |= (unsigned)trial->piece[i].slit << i;
    return slit;
}

/* trial->behind: of each set of pieces without slit ones, the least height of strips with so much room. */
static void stack_strips(struct trial *trial, int64_t room)
{
    const unsigned slit = slit_of(trial);
    trial->behind[0] = 0;
    for (unsigned mask = 1; mask < 1u << trial->count; mask++) {
        int64_t best = NEVER;
        const unsigned lowest = mask & (~mask + 1);
        for (unsigned strip = mask; strip > 0 && (mask & slit) == 0; strip = (strip - 1) & mask) {
            if ((strip & lowest) == 0 || trial->behind[mask & ~strip] >= best)
                continue;
            const int64_t sum = strip_height(trial, strip, room) + trial->behind[mask & ~strip];
            best = sum < best ? sum : best;
        }
        trial->behind[mask] = best;
    }
}

/* 1 where these pieces may be slit from a panel of this length. */
static int may_slit(const struct trial *trial, unsigned slits, int64_t length)
{
    for (int i = 0; i < trial->count; i++)
        if ((slits >> i & 1) != 0 && !fits(&trial->piece[i], 0, length))
            return 0;
    return 1;
}

/* cost[mask]: of one thing with just these pieces, a strip, or a panel as long as some slit piece. */
static void price_bolt(struct trial *trial, int64_t room, int64_t *cost)
{
    const unsigned slit = slit_of(trial);
    for (unsigned mask = 1; mask < 1u << trial->count; mask++)
        cost[mask] = strip_height(trial, mask, room);
    for (unsigned slits = slit; slits > 0; slits = (slits - 1) & slit) {
        int64_t width = 0;
        for (int i = 0; i < trial->count; i++)
            width += (slits >> i & 1) != 0 ? trial->piece[i].width[0] : 0;
        if (width > room)
            continue;
        stack_strips(trial, room - width);
        for (int i = 0; i < trial->count; i++) {
            const int64_t length = trial->piece[i].height[0];
            if ((slit >> i & 1) == 0 || !may_slit(trial, slits, length))
                continue;
            for (unsigned mask = 0; mask < 1u << trial->count; mask++)
                if ((mask & slit) == 0 && trial->behind[mask] <= length && length < cost[mask | slits])
                    cost[mask | slits] = length;
        }
    }
}

/* The least cost of things that hold all pieces, of each as many as there are. */
static int64_t deal(int64_t (*cost)[MASKS], const int64_t *there_are, size_t kinds, unsigned left)
{
    int64_t best = NEVER;
    const unsigned lowest = left & (~left + 1);
    if (left == 0)
        return 0;
    for (size_t kind = 0; kind < kinds; kind++)
        for (unsigned thing = left; thing > 0 && there_are[kind] > 0; thing = (thing - 1) & left) {
            int64_t fewer[SHEETS];
            if ((thing & lowest) == 0 || cost[kind][thing] >= best)
                continue;
            memcpy(fewer, there_are, sizeof fewer);
            fewer[kind]--;
            const int64_t sum = cost[kind][thing] + deal(cost, fewer, kinds, left & ~thing);
            best = sum < best ? sum : best;
        }
    return best;
}

static void price_sheet(struct trial *trial, const struct muslin_cutplan_stock_spec *stock, int64_t across,
                        int64_t along, int64_t *cost)
{
    if (across <= 0 || along <= 0)
        return;
    stack_strips(trial, across);
    for (unsigned mask = 1; mask < 1u << trial->count; mask++)
        if (trial->behind[mask] <= along)
            cost[mask] = stock->cost;
}

static void lay_out(struct trial *trial, const struct request *request)
{
    const struct muslin_cutplan_spec *spec = &request->spec;
    const int64_t share = spec->resquare_every > 0 ? (spec->resquare_loss + spec->resquare_every - 1) /
                                                     spec->resquare_every : 0;
    memset(trial, 0, sizeof *trial);
    trial->one_size = (spec->flags & MUSLIN_CUTPLAN_OWN_STRIPS) != 0;
    trial->stacked = (spec->flags & MUSLIN_CUTPLAN_STACKED) != 0;
    for (size_t r = 0; r < request->row_count; r++)
        for (int64_t n = 0; n < request->rows[r].count; n++) {
            const struct muslin_blank_spec *row = &request->rows[r];
            struct piece *piece = &trial->piece[trial->count];
            const int turns = (row->flags & MUSLIN_BLANK_MAY_TURN) != 0 && spec->print == MUSLIN_PRINT_NONE &&
                              row->cut_width != row->cut_length;
            piece->width[0] = row->cut_width + share;
            piece->height[0] = row->cut_length;
            piece->width[1] = row->cut_length + share;
            piece->height[1] = row->cut_width;
            piece->run_in = row->run_in;
            piece->ways = turns ? 2 : 1;
            piece->slit = row->kind == MUSLIN_BLANK_LENGTHWISE && request->stock_count == 0 &&
                          (spec->flags & MUSLIN_CUTPLAN_NO_PANELS) == 0;
            piece->level = row->kind == MUSLIN_BLANK_SLOPED || (spec->flags & MUSLIN_CUTPLAN_ONE_HEIGHT) != 0;
            if (turns && row->cut_width < row->cut_length) {
                piece->width[0] = row->cut_length + share;
                piece->height[0] = row->cut_width;
                piece->width[1] = row->cut_width + share;
                piece->height[1] = row->cut_length;
            }
            piece->same = trial->count;
            for (int k = trial->count - 1; k >= 0; k--) {
                const struct piece *other = &trial->piece[k];
                if (other->width[0] == piece->width[0] && other->height[0] == piece->height[0] &&
                    other->run_in == piece->run_in && other->ways == piece->ways && other->slit == piece->slit &&
                    other->level == piece->level)
                    piece->same = other->same;
            }
            trial->count++;
        }
}

/* First cuts may run along the length of stock when every piece may lie either way. */
static int may_turn_stock(const struct request *request)
{
    int may = request->spec.print == MUSLIN_PRINT_NONE &&
              (request->spec.flags & MUSLIN_CUTPLAN_FIRST_CUT_ACROSS) == 0;
    for (size_t r = 0; r < request->row_count; r++) {
        const struct muslin_blank_spec *row = &request->rows[r];
        may &= (row->flags & MUSLIN_BLANK_MAY_TURN) != 0 || row->kind == MUSLIN_BLANK_SLOPED ||
               row->cut_width == row->cut_length;
    }
    return may;
}

/* Strips may be as high as pieces that fit so. */
static void allow_heights(struct trial *trial, int64_t across, int64_t along)
{
    for (int i = 0; i < trial->count; i++)
        for (int way = 0; way < trial->piece[i].ways; way++) {
            struct piece *piece = &trial->piece[i];
            if (!piece->slit && piece->width[way] + piece->run_in <= across && piece->height[way] <= along)
                piece->is_height[way] = 1;
        }
}

static int64_t least_cost(const struct request *request)
{
    static int64_t cost[SHEETS][MASKS];
    static struct trial trial;
    int64_t there_are[SHEETS] = { PIECES, PIECES };
    const struct muslin_cutplan_spec *spec = &request->spec;
    const int may_turn = may_turn_stock(request);
    lay_out(&trial, request);
    for (int k = 0; k < SHEETS; k++)
        for (int mask = 0; mask < MASKS; mask++)
            cost[k][mask] = NEVER;
    const unsigned all = (1u << trial.count) - 1;
    if (request->stock_count == 0) {
        allow_heights(&trial, spec->usable_width - spec->end_loss, NEVER);
        price_bolt(&trial, spec->usable_width - spec->end_loss, cost[0]);
        return deal(cost, there_are, 1, all);
    }
    for (int pass = 0; pass < 2; pass++)
        for (size_t k = 0; k < request->stock_count; k++)
            for (int turned = 0; turned <= may_turn; turned++) {
                const struct muslin_cutplan_stock_spec *stock = &request->stock[k];
                const int64_t length = stock->length - spec->straightening;
                const int64_t across = (turned ? length : stock->width) - spec->end_loss;
                const int64_t along = turned ? stock->width : length;
                there_are[k] = stock->count;
                if (pass == 0)
                    allow_heights(&trial, across, along);
                else
                    price_sheet(&trial, stock, across, along, cost[k]);
            }
    return deal(cost, there_are, request->stock_count, all);
}

/* ---- what stock suffices for ------------------------------------------------------------------------------------- */

static int64_t height_of(const struct request *request, size_t row)
{
    struct request one = *request;
    static struct trial trial;
    one.rows[0] = request->rows[row];
    one.rows[0].count = 1;
    one.row_count = 1;
    lay_out(&trial, &one);
    return trial.piece[0].height[0];
}

static int is_by_priority(const struct request *request)
{
    return (request->spec.flags & MUSLIN_CUTPLAN_BY_PRIORITY) != 0;
}

/* Rows in the order in which they get pieces: by priority, then from the highest down. 0: two come at once. */
static int order_rows(const struct request *request, size_t *order)
{
    for (size_t i = 0; i < request->row_count; i++) {
        size_t before = 0;
        for (size_t k = 0; k < request->row_count; k++) {
            const int64_t later = is_by_priority(request) ? request->rows[i].priority - request->rows[k].priority : 0;
            const int64_t lower = height_of(request, k) - height_of(request, i);
            if (k != i && later == 0 && lower == 0)
                return 0;
            before += later > 0 || (later == 0 && lower > 0);
        }
        order[before] = i;
    }
    return 1;
}

/* The request with as many pieces of each row as there is a way for. Returns the row at which it ends where not all
 * are, behind which nothing is made but by priority; -1: they are all, or two rows come at once. */
static int64_t made_of(const struct request *request, struct request *made)
{
    size_t order[ROWS] = { 0 };
    int64_t ends_at = -1;
    *made = *request;
    if (request->stock_count == 0 || least_cost(request) < NEVER || !order_rows(request, order))
        return -1;
    for (size_t i = 0; i < request->row_count; i++)
        made->rows[i].count = 0;
    for (size_t i = 0; i < request->row_count && (ends_at < 0 || is_by_priority(request)); i++) {
        struct muslin_blank_spec *row = &made->rows[order[i]];
        while (row->count < request->rows[order[i]].count && least_cost(made) < NEVER)
            row->count++;
        row->count -= least_cost(made) == NEVER;
        if (ends_at < 0 && row->count < request->rows[order[i]].count)
            ends_at = (int64_t)order[i];
    }
    return ends_at;
}

/* ---- compared ---------------------------------------------------------------------------------------------------- */

struct tally {
    int64_t plans;
    int64_t proven;
    int64_t refused;
    int64_t given_up; /* stock of which a plan could be made */
    int64_t wrong;
};

static void print_request(const struct request *request)
{
    printf("  flags %u width %lld end %lld straightening %lld squaring %lld/%lld print %d\n",
           (unsigned)request->spec.flags, (long long)request->spec.usable_width, (long long)request->spec.end_loss,
           (long long)request->spec.straightening, (long long)request->spec.resquare_loss,
           (long long)request->spec.resquare_every, (int)request->spec.print);
    for (size_t i = 0; i < request->row_count; i++) {
        const struct muslin_blank_spec *row = &request->rows[i];
        printf("  %lld of %lld x %lld kind %d flags %u run-in %lld\n", (long long)row->count,
               (long long)row->cut_width, (long long)row->cut_length, (int)row->kind, (unsigned)row->flags,
               (long long)row->run_in);
    }
    for (size_t i = 0; i < request->stock_count; i++)
        printf("  stock %lld x %lld cost %lld, %lld\n", (long long)request->stock[i].width,
               (long long)request->stock[i].length, (long long)request->stock[i].cost,
               (long long)request->stock[i].count);
}

static void is_wrong(const struct request *request, struct tally *tally)
{
    print_request(request);
    tally->wrong++;
}

/* Stock suffices all the same, or for another number of pieces than is told. */
static void compare_refused(const struct request *request, int64_t ends_at, const struct request *made,
                            const struct muslin_problem *problem, struct tally *tally)
{
    const int suffices = least_cost(request) < NEVER;
    tally->refused++;
    tally->given_up += suffices;
    if (problem->status == MUSLIN_ERR_NO_YIELD ? suffices : is_by_priority(request)) {
        printf("refused: %s\n", problem->text);
        is_wrong(request, tally);
    } else if (suffices && problem->status == MUSLIN_ERR_NOT_ENOUGH) {
        printf("refused, but the stock suffices: %s\n", problem->text);
        is_wrong(request, tally);
    } else if (problem->status != MUSLIN_ERR_NO_YIELD && ends_at >= 0 &&
               (problem->at != ends_at || problem->value != request->rows[ends_at].count ||
                problem->limit != made->rows[ends_at].count)) {
        printf("told: row %lld wants %lld, of which there are %lld; but it is row %lld, and %lld of it\n",
               (long long)problem->at, (long long)problem->value, (long long)problem->limit, (long long)ends_at,
               (long long)made->rows[ends_at].count);
        is_wrong(request, tally);
    }
}

/* 1 where each row has as many pieces as there is a way for. */
static int makes(const struct muslin_cutplan *plan, const struct request *made)
{
    struct muslin_cutplan_piece rows[ROWS];
    size_t count = 0;
    if (muslin_cutplan_pieces(plan, rows, sizeof rows[0], ROWS, &count, NULL) != MUSLIN_OK ||
        count != made->row_count)
        return 0;
    for (size_t i = 0; i < count; i++)
        if (rows[i].made != made->rows[i].count)
            return 0;
    return 1;
}

static void compare_plan(const struct request *request, int64_t ends_at, const struct request *made,
                         const struct muslin_cutplan *plan, struct tally *tally)
{
    struct muslin_cutplan_total totals = { .size = (uint32_t)sizeof totals };
    struct muslin_cutplan_checked checked = { .size = (uint32_t)sizeof checked };
    const int64_t least = least_cost(made);
    muslin_status status = muslin_cutplan_totals(plan, &totals, NULL);
    if (status == MUSLIN_OK)
        status = muslin_cutplan_check(plan, NULL, NULL, &checked, NULL);
    tally->plans++;
    tally->proven += totals.proven;
    if (least == NEVER && ends_at < 0 && is_by_priority(request))
        return; /* two rows come at once */
    if (status != MUSLIN_OK || totals.least > least || totals.cost < least || (totals.proven && totals.cost != least) ||
        checked.fault != 0 || checked.cost != totals.cost || checked.least < totals.least || checked.least > least ||
        !makes(plan, made)) {
        printf("wrong: status %d, least %lld, said %lld .. %lld, proven %d, %lld missing; "
               "checked %lld .. %lld, fault %d at %lld\n",
               (int)status, (long long)least, (long long)totals.least, (long long)totals.cost, (int)totals.proven,
               (long long)totals.missing, (long long)checked.least, (long long)checked.cost, checked.fault,
               (long long)checked.at);
        is_wrong(request, tally);
    }
}

static void compare(const struct request *request, struct tally *tally)
{
    struct muslin_cutplan *plan = NULL;
    struct muslin_allocator memory = { 0 };
    struct muslin_problem problem = MUSLIN_PROBLEM_INIT;
    struct request made;
    muslin_allocator_libc(&memory);
    const int64_t ends_at = made_of(request, &made);
    const muslin_status status =
        muslin_cutplan_create(&request->spec, request->rows, sizeof request->rows[0], request->row_count,
                              request->stock, sizeof request->stock[0], request->stock_count, &memory, NULL, NULL,
                              &plan, &problem);
    if (status == MUSLIN_ERR_NO_YIELD || status == MUSLIN_ERR_NOT_ENOUGH || status == MUSLIN_ERR_WORK_LIMIT)
        compare_refused(request, ends_at, &made, &problem, tally);
    else
        compare_plan(request, ends_at, &made, plan, tally);
    muslin_cutplan_free(plan);
}

int main(int argc, char **argv)
{
    const long how_many = argc > 1 ? strtol(argv[1], NULL, 10) : 100000;
    uint64_t random = argc > 2 ? strtoull(argv[2], NULL, 10) : 1;
    struct tally tally = { 0, 0, 0, 0, 0 };
    for (long i = 0; i < how_many && tally.wrong < 10; i++) {
        struct request request;
        draw_request(&request, &random);
        compare(&request, &tally);
    }
    printf("%lld plans, %lld of them proven, %lld requests refused, %lld of those though stock suffices; %lld wrong\n",
           (long long)tally.plans, (long long)tally.proven, (long long)tally.refused, (long long)tally.given_up,
           (long long)tally.wrong);
    return tally.wrong == 0 ? EXIT_SUCCESS : EXIT_FAILURE;
}
