/* corpus_cutplan.c - the calls of cutplan.h.
 *
 * SPDX-License-Identifier: MIT */
#include "corpus_tree.h"

enum { REQUESTS = 120, PIECES = 7, STOCKS = 2, ROWS = 400 };

/* ---- memory ------------------------------------------------------------------------------------------------------ */

/* A search takes more than a shelf has. Runs of cells, each with a head that says how long it is and whether it is
 * given out; free ones are put together when one is looked for. */
enum { CELLS = 1 << 21 };

union cell {
    struct {
        uint32_t cells;
        uint32_t given;
    } head;
    uint64_t words[2];
};

static union cell cells[CELLS];

static void *give(void *context, size_t size)
{
    const uint32_t wanted = (uint32_t)((size + sizeof(union cell) - 1) / sizeof(union cell)) + 1;
    (void)context;
    for (uint32_t at = 0; at < CELLS; at += cells[at].head.cells) {
        uint32_t behind = at + cells[at].head.cells;
        while (!cells[at].head.given && behind < CELLS && !cells[behind].head.given) {
            cells[at].head.cells += cells[behind].head.cells;
            behind = at + cells[at].head.cells;
        }
        if (cells[at].head.given || cells[at].head.cells < wanted)
            continue;
        if (cells[at].head.cells > wanted) {
            cells[at + wanted].head.cells = cells[at].head.cells - wanted;
            cells[at + wanted].head.given = 0;
            cells[at].head.cells = wanted;
        }
        cells[at].head.given = 1;
        return &cells[at + 1];
    }
    return NULL;
}

static void take_back(void *context, void *block, size_t size)
{
    (void)context;
    (void)size;
    ((union cell *)block - 1)->head.given = 0;
}

static void *give_more(void *context, void *block, size_t old_size, size_t size)
{
    unsigned char *to = give(context, size);
    const unsigned char *from = block;
    if (to == NULL)
        return NULL;
    for (size_t i = 0; i < old_size && i < size; i++)
        to[i] = from[i];
    take_back(context, block, old_size);
    return to;
}

struct muslin_allocator open_cells(void)
{
    const struct muslin_allocator allocator = { give, give_more, take_back, NULL };
    cells[0].head.cells = CELLS;
    cells[0].head.given = 0;
    return allocator;
}

/* ---- requests ---------------------------------------------------------------------------------------------------- */

/* So many inches and a size more as a rule; what lies beyond all lengths goes round. */
static muslin_len draw_from_inches(struct golden *g, uint64_t inches, int64_t most)
{
    return (muslin_len)((uint64_t)draw_size(g, most) + inches * MUSLIN_TICKS_PER_INCH);
}

static muslin_len draw_side(struct golden *g)
{
    return draw_rarely(g, 90) ? draw_length(g) : draw_from_inches(g, 1, 8);
}

static void draw_pieces(struct golden *g, struct muslin_blank_spec *rows, size_t n)
{
    for (size_t i = 0; i < n; i++) {
        SPEC(muslin_blank_spec, piece);
        piece.size = draw_rarely(g, 300) ? piece.size : (uint32_t)sizeof piece;
        piece.kind = draw_rarely(g, 2) ? MUSLIN_BLANK_PIECE : (int32_t)draw_between(g, 1, draw_rarely(g, 60) ? 5 : 4);
        piece.flags = piece.kind == MUSLIN_BLANK_PIECE ? (uint32_t)draw_below(g, 2) : 0;
        piece.cut_width = draw_side(g);
        piece.cut_length = draw_side(g);
        piece.count = draw_rarely(g, 90) ? draw_count(g, 50) : draw_below(g, 30);
        piece.run_in = piece.kind == MUSLIN_BLANK_SLOPED ? draw_size(g, 3) : 0;
        piece.join_loss = piece.kind == MUSLIN_BLANK_JOINED ? draw_size(g, 2) : 0;
        piece.least_part = piece.kind == MUSLIN_BLANK_JOINED ? draw_size(g, 12) : 0;
        piece.label = draw_length(g);
        piece.priority = (int32_t)draw_between(g, draw_rarely(g, 200) ? -1 : 0, 2);
        if (piece.kind == MUSLIN_BLANK_JOINED && piece.cut_width > 0 && piece.cut_width < MUSLIN_SIZE_MAX / 20)
            piece.cut_width *= 20;
        rows[i] = piece;
    }
}

static void draw_stocks(struct golden *g, struct muslin_cutplan_stock_spec *rows, size_t n)
{
    for (size_t i = 0; i < n; i++) {
        SPEC(muslin_cutplan_stock_spec, stock);
        stock.size = draw_rarely(g, 300) ? stock.size : (uint32_t)sizeof stock;
        stock.flags = draw_rarely(g, 90) ? draw_flags(g, 0) : 0;
        stock.width = draw_rarely(g, 90) ? draw_length(g) : draw_from_inches(g, 12, 20);
        stock.length = draw_from_inches(g, 12, 20);
        stock.count = draw_rarely(g, 3) ? draw_below(g, 9) : MUSLIN_COUNT_MAX;
        stock.cost = draw_rarely(g, 90) ? draw_count(g, 9) : draw_between(g, 1, 9);
        stock.label = draw_length(g);
        rows[i] = stock;
    }
}

static struct muslin_cutplan_spec draw_plan(struct golden *g, int from_stock)
{
    SPEC(muslin_cutplan_spec, spec);
    spec.size = draw_rarely(g, 60) ? spec.size : (uint32_t)sizeof spec;
    spec.flags = draw_rarely(g, 2) ? 0 : (uint32_t)draw_below(g, draw_rarely(g, 60) ? 256 : 128);
    if (from_stock && !draw_rarely(g, 30))
        spec.flags &= ~MUSLIN_CUTPLAN_FOLDED;
    spec.usable_width = from_stock ? 0 : draw_from_inches(g, 24, 20);
    spec.end_loss = draw_rarely(g, 2) ? draw_size(g, 1) : 0;
    spec.resquare_loss = draw_rarely(g, 4) ? draw_size(g, 1) : 0;
    spec.resquare_every = spec.resquare_loss == 0 ? 0 : draw_between(g, draw_rarely(g, 30) ? 0 : 1, 9);
    spec.straightening = draw_rarely(g, 2) ? draw_size(g, 2) : 0;
    spec.spare_pieces = draw_rarely(g, 3) ? draw_below(g, 4) : 0;
    spec.work_limit = draw_rarely(g, 60) ? -1 : draw_below(g, 20000);
    spec.print = draw_rarely(g, 3) ? draw_choice(g, 1, 5) : MUSLIN_PRINT_NONE;
    return spec;
}

/* ---- what comes back --------------------------------------------------------------------------------------------- */

#define TAKE_ROWS(name, of, ...)                                                  \
    static void name(struct golden *g, const struct muslin_cutplan *plan)         \
    {                                                                             \
        static struct of rows[ROWS];                                              \
        size_t count = 0;                                                         \
        size_t room = draw_room(g, ROWS);                                         \
        size_t n = told_rows(g, __VA_ARGS__, &count, room);                       \
        for (size_t i = 0; i < n; i++)                                            \
            TAKE(g, of, rows[i]);                                                 \
    }

TAKE_ROWS(strips, muslin_cutplan_strip, muslin_cutplan_strips(plan, rows, sizeof rows[0], room, &count, ask(g)))
TAKE_ROWS(places, muslin_cutplan_place, muslin_cutplan_places(plan, rows, sizeof rows[0], room, &count, ask(g)))
TAKE_ROWS(pieces, muslin_cutplan_piece, muslin_cutplan_pieces(plan, rows, sizeof rows[0], room, &count, ask(g)))
TAKE_ROWS(stock, muslin_cutplan_stock_used, muslin_cutplan_stock(plan, rows, sizeof rows[0], room, &count, ask(g)))
TAKE_ROWS(sizes, muslin_cutplan_size, muslin_cutplan_sizes(plan, rows, sizeof rows[0], room, &count, ask(g)))
TAKE_ROWS(ways, muslin_cutplan_way, muslin_cutplan_ways(plan, rows, sizeof rows[0], room, &count, ask(g)))
TAKE_ROWS(cases, muslin_cutplan_case, muslin_cutplan_cases(plan, rows, sizeof rows[0], room, &count, ask(g)))

static void left_over(struct golden *g, const struct muslin_cutplan *plan)
{
    static struct muslin_cutplan_left_over rows[ROWS];
    size_t count = 0;
    size_t room = draw_room(g, ROWS);
    muslin_len least = draw_rarely(g, 30) ? -1 : draw_size(g, 9);
    size_t n =
        told_rows(g, muslin_cutplan_left_overs(plan, least, rows, sizeof rows[0], room, &count, ask(g)), &count, room);
    for (size_t i = 0; i < n; i++)
        TAKE(g, muslin_cutplan_left_over, rows[i]);
}

static void blanks(struct golden *g, const struct muslin_cutplan *plan)
{
    static struct muslin_cutplan_blank rows[ROWS];
    size_t count = 0;
    size_t room = draw_room(g, ROWS);
    int64_t first = draw_rarely(g, 3) ? draw_between(g, -1, 40) : 0;
    muslin_status status = muslin_cutplan_blanks(plan, first, rows, sizeof rows[0], room, &count, ask(g));
    told_rows(g, status, &count, room);
    for (size_t i = 0; status == MUSLIN_OK && i < count && i < room; i++)
        TAKE(g, muslin_cutplan_blank, rows[i]);
}

static void worths(struct golden *g, const struct muslin_cutplan *plan)
{
    static struct muslin_cutplan_worth rows[ROWS];
    size_t count = 0;
    int64_t scale = 0;
    size_t room = draw_room(g, ROWS);
    int64_t of_case = draw_rarely(g, 3) ? draw_between(g, -1, 9) : 0;
    size_t n = told_rows(g, muslin_cutplan_worths(plan, of_case, rows, sizeof rows[0], room, &count, &scale, ask(g)),
                         &count, room);
    take_number(g, scale);
    for (size_t i = 0; i < n; i++)
        TAKE(g, muslin_cutplan_worth, rows[i]);
}

static void widths(struct golden *g, const struct muslin_cutplan *plan)
{
    struct muslin_cutplan_width rows[3];
    size_t count = 0;
    muslin_len narrowest = 0;
    muslin_len least = draw_from_inches(g, 12, 20);
    muslin_len more = draw_size(g, 9);
    int64_t wanted = draw_between(g, draw_rarely(g, 20) ? 0 : 2, 3);
    size_t n = told_rows(g, muslin_cutplan_widths(plan, least, least + more, wanted, NULL, NULL, rows, sizeof rows[0],
                                                  3, &count, ask(g)), &count, 3);
    for (size_t i = 0; i < n; i++)
        TAKE(g, muslin_cutplan_width, rows[i]);
    told(g, muslin_cutplan_narrowest(plan, &narrowest, ask(g)));
    take_number(g, narrowest);
}

static void proof(struct golden *g, const struct muslin_cutplan *plan)
{
    OUT(muslin_cutplan_total, totals);
    OUT(muslin_cutplan_checked, checked);
    told(g, muslin_cutplan_totals(plan, &totals, ask(g)));
    TAKE(g, muslin_cutplan_total, totals);
    told(g, muslin_cutplan_check(plan, NULL, NULL, &checked, ask(g)));
    TAKE(g, muslin_cutplan_checked, checked);
}

static int32_t tell(void *context, int64_t work, int64_t best, int64_t bound)
{
    struct golden *g = context;
    take_number(g, work);
    take_number(g, best);
    take_number(g, bound);
    return draw_rarely(g, 40);
}

void golden_cutplan(struct golden *g)
{
    for (int32_t round = 0; round < REQUESTS; round++) {
        const int from_stock = draw_rarely(g, 3);
        const size_t n = (size_t)draw_between(g, 0, PIECES);
        const size_t stock_n = from_stock ? (size_t)draw_between(g, 1, STOCKS) : 0;
        const int tells = draw_rarely(g, 2);
        struct muslin_blank_spec rows[PIECES];
        struct muslin_cutplan_stock_spec stocks[STOCKS];
        struct muslin_allocator memory = open_cells();
        struct muslin_cutplan *plan = NULL;
        struct muslin_cutplan_spec spec = draw_plan(g, from_stock);
        draw_pieces(g, rows, n);
        draw_stocks(g, stocks, stock_n);
        told(g, muslin_cutplan_create(&spec, rows, sizeof rows[0], n, stocks, sizeof stocks[0], stock_n, &memory,
                                      tells ? tell : NULL, g, &plan, ask(g)));
        proof(g, plan);
        strips(g, plan);
        places(g, plan);
        pieces(g, plan);
        stock(g, plan);
        sizes(g, plan);
        ways(g, plan);
        cases(g, plan);
        left_over(g, plan);
        blanks(g, plan);
        worths(g, plan);
        widths(g, plan);
        muslin_cutplan_free(plan);
    }
}
