/* muslin/cutplan.h - how to cut a list of pieces from the least cloth, and a bound that proves how little that is.
 *
 * SPDX-License-Identifier: MIT
 *
 * Rotary cutting in two stages: first cuts go right across the cloth and make strips, then each strip is cut across
 * into blanks, one for each piece; a piece that is less high than its strip is trimmed. Long pieces that must not be
 * joined are slit from a panel: a length of cloth cut right across, slit lengthwise on one side into those pieces,
 * while the narrower rest is cut across as usual. Cloth is a bolt, of which the length is to be least, or pieces of
 * stock, of which the cost is to be least.
 *
 * The bound    No plan of this kind needs less, with JOINED pieces in strips of the lengths that it has. It is proved
 *              by what each piece may at most be said to be worth: when no strip holds pieces worth more than the strip
 *              is high, then all pieces together are worth no more than any plan is long. Cases that split what is
 *              possible in two bring the bound up to the plan, where the work limit allows it. All of that is whole
 *              numbers, and muslin_cutplan_check() proves it anew.
 * Limits       The search is made for up to 128 different sizes (of JOINED pieces two each), and 192 sizes and kinds of
 *              stock together. With more there are only first plans and a plain bound, by area; plan rows with much in
 *              common together then, a few at a time. First plans are made to their end whatever the work limit, and
 *              nobody is told of progress: they choose within as many steps as the limit allows, but 2^24 at least and
 *              2^28 at most, then take what is left from stock in the order of sizes, which for many sizes takes more
 *              steps again. A search ends with the step of it that passes the limit, and so a little above.
 * Same plan    The same request gives the same plan on every machine; so do its rows in another order, or merged, but
 *              for JOINED ones with a least_part.
 * Every call
 *   Units       Lengths are ticks, 0 .. MUSLIN_SIZE_MAX unless a member says otherwise; counts 0 .. MUSLIN_COUNT_MAX.
 *               Across is from selvage to selvage, along is with the selvage. Sizes of pieces are cut sizes.
 *   Rows        Arrays have a stride, row_size; n = 0 allows null. Ask-then-fill where rows come out: capacity 0 asks.
 *   Statuses    MUSLIN_ERR_NULL, _STRUCT_SIZE, _STRUCT_TAIL, _FLAGS, _BUFFER: an input or output breaks the rules of
 *               base.h. What else a call can return stands with it.
 *   Threads     A plan may be read from many threads at a time by calls that do not allocate.
 */
#ifndef MUSLIN_CUTPLAN_H
#define MUSLIN_CUTPLAN_H

#include "scatter.h"

#ifdef __cplusplus
extern "C" {
#endif

struct muslin_cutplan; /* opaque */

/* ---- what is wanted -------------------------------------------------------------------------------------------- */

/* The most rows of a request, and pieces of one row. */
#define MUSLIN_CUTPLAN_ROWS_MAX 4096
/* The most pieces that one row can want. */
#define MUSLIN_CUTPLAN_COUNT_MAX 1000000

enum muslin_blank_kind {
    MUSLIN_BLANK_PIECE = 1,      /* a rectangle */
    MUSLIN_BLANK_LENGTHWISE = 2, /* a rectangle, its cut_length along the cloth: a border, slit from a panel */
    MUSLIN_BLANK_JOINED = 3,     /* a strip cut_length high and cut_width long in all, pieced from strips across the
                                    cloth: binding, pieced borders, long sashes */
    MUSLIN_BLANK_SLOPED = 4      /* cut one beside the other from a strip just cut_length high, every second one upside
                                    down or all alike: each takes cut_width of the strip, the first run_in more. 60
                                    degree triangles, diamonds, wedges, half-hexagons */
};
#define MUSLIN_BLANK_MAY_TURN 1u /* these pieces may lie turned a quarter where the cloth has no direction */

struct muslin_blank_spec {
    uint32_t size;
    uint32_t flags;         /* MUSLIN_BLANK_MAY_TURN, of a PIECE only, or 0 */
    muslin_len cut_width;   /* across the cloth, 1 or more; SLOPED: the pitch; JOINED: the length in all, of each */
    muslin_len cut_length;  /* along it, 1 or more: the height of strip that it needs */
    int64_t count;          /* 0 .. MUSLIN_CUTPLAN_COUNT_MAX; 0 asks for nothing and is never too large */
    muslin_len run_in;      /* SLOPED: taken once in a strip besides; else 0 */
    muslin_len join_loss;   /* JOINED: what each join takes of the length, 2 s when straight; below the length of a
                               whole strip; else 0 */
    int64_t label;          /* the caller's own, given back; it does not matter to the plan */
    int32_t kind;           /* enum muslin_blank_kind */
    int32_t priority;       /* with MUSLIN_CUTPLAN_BY_PRIORITY: lower ones first; 0 .. 1000 */
    muslin_len least_part;  /* JOINED: strips of it may come from what is left over beside others, each at least this
                               long; 0: only whole strips and one shorter one; else 0. Many sewers take 10 to 12 in */
};
/* One piece that stays as it is listed; its size is still to be given. */
#define MUSLIN_BLANK_SPEC_INIT { sizeof(struct muslin_blank_spec), 0, 0, 0, 1, 0, 0, 0, 1, 0, 0 }
/* Writes the values above to the first `size` bytes of *spec. Since 1.0. */
MUSLIN_API muslin_status muslin_blank_spec_init(struct muslin_blank_spec *spec, uint32_t size);

struct muslin_cutplan_stock_spec {
    uint32_t size;
    uint32_t flags;     /* 0 */
    muslin_len width;   /* usable, across the cloth, 1 or more */
    muslin_len length;  /* along it, 1 or more */
    int64_t count;      /* how many there are; MUSLIN_COUNT_MAX: any number */
    int64_t cost;       /* of each, in any unit, 1 .. MUSLIN_COUNT_MAX: money, area, or 1 to use the fewest */
    int64_t label;      /* the caller's own, given back */
};
/* A fat quarter, 21 x 18 in, any number, each at 1. */
#define MUSLIN_CUTPLAN_STOCK_SPEC_INIT { sizeof(struct muslin_cutplan_stock_spec), 0, 170688, 146304, 2147483647, 1, 0 }
/* Writes the values above to the first `size` bytes of *spec. Since 1.0. */
MUSLIN_API muslin_status muslin_cutplan_stock_spec_init(struct muslin_cutplan_stock_spec *spec, uint32_t size);

#define MUSLIN_CUTPLAN_NO_PANELS 1u       /* lengthwise pieces get strips as high as they are long, side by side */
#define MUSLIN_CUTPLAN_ONE_HEIGHT 2u      /* a strip holds only pieces of just its height: nothing is trimmed */
#define MUSLIN_CUTPLAN_OWN_STRIPS 4u      /* a strip holds only pieces of one size, as most books have it; what is slit
                                             from one panel may be of several */
#define MUSLIN_CUTPLAN_STACKED 8u         /* a blank may be cut again into a stack of pieces of one width */
#define MUSLIN_CUTPLAN_FIRST_CUT_ACROSS 16u /* stock is cut across its width first; else whichever way is best */
#define MUSLIN_CUTPLAN_FOLDED 32u         /* a bolt cut in two layers, folded lengthwise: each blank gives two pieces,
                                             so of a size one may be too many; rows that want one size share
                                             blanks; whole strips of JOINED pieces go round the fold */
#define MUSLIN_CUTPLAN_BY_PRIORITY 64u    /* from stock: what it does not suffice for is left out: rows in turn, by
                                             priority, then from the highest pieces down, each get as many pieces as a
                                             plan is found for beside the rows before; what a large piece leaves, later
                                             ones may still use */

struct muslin_cutplan_spec {
    uint32_t size;
    uint32_t flags;            /* MUSLIN_CUTPLAN_NO_PANELS, MUSLIN_CUTPLAN_ONE_HEIGHT, MUSLIN_CUTPLAN_OWN_STRIPS,
                                  MUSLIN_CUTPLAN_STACKED, MUSLIN_CUTPLAN_FIRST_CUT_ACROSS, MUSLIN_CUTPLAN_FOLDED (of a
                                  bolt only), MUSLIN_CUTPLAN_BY_PRIORITY, added */
    muslin_len usable_width;   /* of the bolt, without selvages, 1 or more; with stock 0 */
    muslin_len end_loss;       /* taken off each strip for squaring its ends: half at its left end, down, the rest at
                                  its right one */
    muslin_len resquare_loss;  /* a strip's cut end is squared again after resquare_every cuts, and loses this: spread
                                  over those cuts, each piece takes resquare_loss / resquare_every more, up; strips
                                  of JOINED pieces are not cross-cut and take no more */
    int64_t resquare_every;    /* 1 or more with a loss, else 0 */
    muslin_len straightening;  /* taken off the bolt, or the length of each piece of stock, once */
    int64_t spare_pieces;      /* more pieces of each size than all rows of it want; none of JOINED ones */
    int64_t work_limit;        /* steps of the search, 0 .. 2^40; a desk computer takes 200 to 300 million a
                                  second. 0: only first plans */
    int32_t print;             /* enum muslin_print: with a direction no piece is turned */
    int32_t pad;               /* 0 */
};
/* A bolt of 40 in without direction, nothing lost, no spare pieces, 400 million steps. */
#define MUSLIN_CUTPLAN_SPEC_INIT { sizeof(struct muslin_cutplan_spec), 0, 325120, 0, 0, 0, 0, 0, 400000000, 1, 0 }
/* Writes the values above to the first `size` bytes of *spec. Since 1.0. */
MUSLIN_API muslin_status muslin_cutplan_spec_init(struct muslin_cutplan_spec *spec, uint32_t size);

/* A plan for a list of pieces, n rows of muslin_blank_spec, from the bolt (stock_n 0), or from stock_n rows of
 * muslin_cutplan_stock_spec. Allocator null: the usual one is not linked in, so MUSLIN_ERR_NULL. `progress` is told
 * both as `cost` in the totals; when JOINED strips get other lengths the bound begins anew. The plan is valid from the
 * first moments on and gets better until it is proven, the work limit is reached or progress says so; what then is
 * known stands in the totals. Blanks lie in their narrowest way that is not higher than the strip. JOINED pieces become
 * whole strips and one shorter one, from stock as long as its longest room at their height; the one piece of a row with
 * a least_part, from a bolt, gets other lengths where what the plan leaves over, up to 16 strips of that, makes whole
 * ones needless: then a plan is sought for these, and so on while it gets shorter (not with OWN_STRIPS, STACKED or
 * FOLDED). The first search has half of the work limit then, and each one after it part of what is left, one in n + 1
 * with n such rows. First cuts run along the length of stock only where each piece of the request may lie either way:
 * MAY_TURN, a square, JOINED or SLOPED, and no direction of the print. LENGTHWISE pieces from stock lie in strips as
 * high as they are long. Nothing wanted is a plan of nothing. MUSLIN_ERR_RANGE, _CHOICE, _FLAGS: a member outside its
 * range, choices or kind. MUSLIN_ERR_NO_YIELD: a piece is larger than the cloth in each way that it may lie; the
 * problem names the side and the room for it, and in `at` its row, from 0. MUSLIN_ERR_NOT_ENOUGH: the stock in hand
 * does not suffice, and MUSLIN_CUTPLAN_BY_PRIORITY is not set; MUSLIN_ERR_WORK_LIMIT: no plan from stock was found, and
 * it was not shown that there is none; of both, rows being made from the highest pieces down, the problem says at which
 * row it ends, how many pieces that wants, and for how many of them there is a plan. MUSLIN_ERR_OVERFLOW: all pieces
 * one above the other, or each from a piece of the dearest stock, would pass MUSLIN_LENGTH_MAX, or the waste would.
 * MUSLIN_ERR_NO_MEMORY. Memory: up to 16 MiB, 8 more where a least_part is heeded, and 2 KiB for each row; time follows
 * the work limit, up to five times that where stock does not suffice: about a hundred looks at parts of the request,
 * each a 32nd of the limit; and half as much again each where up to 16 pieces are dealt out in every way. Source:
 * Gilmore and Gomory 1965 for the bound; Lodi, Martello and Vigo 2004, Bettinelli, Ceselli and Righini 2008 for strips
 * by height. Example: 32 squares of 5 1/2 in, 16 of 6 and 8 of 9 1/2 at 40 in usable: 60 in, proven. Since 1.0. */
MUSLIN_API muslin_status muslin_cutplan_create(const struct muslin_cutplan_spec *spec,
                                               const struct muslin_blank_spec *pieces, size_t row_size, size_t n,
                                               const struct muslin_cutplan_stock_spec *stock, size_t stock_size,
                                               size_t stock_n, const struct muslin_allocator *allocator,
                                               muslin_progress progress, void *context,
                                               struct muslin_cutplan **out, struct muslin_problem *problem);

/* Gives the plan's memory back; null is fine. Constant time. Example: muslin_cutplan_free(plan). Since 1.0. */
MUSLIN_API void muslin_cutplan_free(struct muslin_cutplan *plan);

/* ---- the plan -------------------------------------------------------------------------------------------------- */

/* Why the search ended. */
enum muslin_cutplan_stopped {
    MUSLIN_CUTPLAN_STOPPED_DONE = 0,     /* it came to its end: proven */
    MUSLIN_CUTPLAN_STOPPED_PROGRESS = 1, /* the progress call ended it */
    MUSLIN_CUTPLAN_STOPPED_WORK = 2,     /* the work limit: a higher one may give a better plan or a proof */
    MUSLIN_CUTPLAN_STOPPED_MEMORY = 3,   /* no memory for more, or the room that the search keeps to is full; fewer
                                            sizes at a time, or sizes in coarser steps, take less */
    MUSLIN_CUTPLAN_STOPPED_SIZES = 4,    /* more sizes, or kinds of stock, than are searched: only first plans were
                                            made */
    MUSLIN_CUTPLAN_STOPPED_NO_MORE = 5   /* it knows no more to do for plan or bound: a higher limit changes nothing */
};

struct muslin_cutplan_total {
    uint32_t size;
    uint32_t flags;
    int64_t pieces;           /* cut in all, those wanted and those spare; of JOINED each strip counts; of FOLDED cloth
                                 one that is too many, too */
    int64_t missing;          /* with MUSLIN_CUTPLAN_BY_PRIORITY: pieces left out */
    int64_t strips;           /* cut right across, panels among them, those within panels and stock too */
    int64_t panels;           /* of those, panels */
    int64_t heights;          /* different strip heights */
    int64_t cuts;             /* right across, slits, left ends squared, cross-cuts and trims; an edge that is there
                                 already is none, nor is straightening */
    muslin_len cloth_length;  /* of the bolt: strips and panels, and straightening; 0 from stock, or of nothing */
    int64_t cost;             /* of the stock; from a bolt the cloth length without straightening */
    int64_t least;            /* the bound: no plan of this kind costs less, JOINED pieces being cut in the lengths of
                                 muslin_cutplan_sizes() */
    int64_t stock_pieces;     /* pieces of stock that are cut into; 0 from a bolt */
    int64_t waste;            /* doubled square ticks of the cloth that is used up or cut into that become
                                 no piece: trims, losses and what is left over; spare pieces, one too many and what
                                 joins take of JOINED strips count as pieces */
    muslin_len own_strips_length; /* of a bolt: when each size has its own strips, all its pieces lying alike, the way
                                     that takes less; JOINED ones in whole strips and one shorter one; straightening
                                     included; else 0 */
    muslin_len area_bound;    /* of a bolt: the pieces' area over its width, up: a plain bound, whatever the lengths of
                                 JOINED strips; else 0 */
    int64_t work;             /* steps taken */
    int64_t cases;            /* of the proof */
    int32_t proven;           /* 1 when cost = least */
    int32_t stopped;          /* enum muslin_cutplan_stopped */
    int32_t other_lengths;    /* 1: strips of JOINED pieces might have other lengths, with which a plan might cost less
                                 than least: some have a least_part that is heeded */
    int32_t pad;
};
/* Length or cost, the bound and counts. Constant time. Example: proven = 1: no plan of two stages is shorter. Since
 * 1.0. */
MUSLIN_API muslin_status muslin_cutplan_totals(const struct muslin_cutplan *plan, struct muslin_cutplan_total *out,
                                               struct muslin_problem *problem);

enum muslin_cutplan_strip_kind {
    MUSLIN_CUTPLAN_STRIP_STRIP = 1,   /* right across the bolt */
    MUSLIN_CUTPLAN_STRIP_PANEL = 2,   /* a length of the bolt, as high as its longest slit piece */
    MUSLIN_CUTPLAN_STRIP_SLIT = 3,    /* the pieces slit from a panel, side by side at its left edge */
    MUSLIN_CUTPLAN_STRIP_STOCK = 4,   /* a piece of stock */
    MUSLIN_CUTPLAN_STRIP_WITHIN = 5   /* a strip across the rest of a panel, or of a piece of stock */
};

struct muslin_cutplan_strip {
    uint32_t size;
    uint32_t flags;
    int64_t times;            /* so many alike, one behind the other; of SLIT and WITHIN: in each of its holder */
    int64_t holder;           /* SLIT and WITHIN: the row of the panel or piece of stock; else -1 */
    int64_t stock;            /* STOCK: the row of the request; else -1 */
    int64_t first_place;      /* its pieces: rows of muslin_cutplan_places() */
    int64_t places;           /* how many */
    muslin_len x;             /* lower left corner of the first: from the left selvage (FOLDED: that of both layers) or
                                 the holder's left edge, */
    muslin_len y;             /* and from the straightened end of the bolt or the holder's lower edge; STOCK: 0 */
    muslin_len width;         /* along the strip, before end_loss: of a bolt, of its half when FOLDED, of the stock;
                                 SLIT: up to the last slit; beside it what is left */
    muslin_len height;        /* how far along the cloth it goes */
    muslin_len used;          /* of the width, by its pieces */
    int32_t kind;             /* enum muslin_cutplan_strip_kind */
    int32_t turned;           /* 1 when first cuts run along the length of this piece of stock: its width here is its
                                 length, less straightening, and its height is its width */
};
/* The strips in the order of cutting: of a bolt panels first, then the highest strips, equal heights together; what a
 * panel or piece of stock holds follows it. Time follows the strips. Example: two strips of 9 1/2 in, then five of 6
 * in, then two of 5 1/2. Since 1.0. */
MUSLIN_API muslin_status muslin_cutplan_strips(const struct muslin_cutplan *plan, struct muslin_cutplan_strip *rows,
                                               size_t row_size, size_t capacity, size_t *count,
                                               struct muslin_problem *problem);

struct muslin_cutplan_place {
    uint32_t size;
    uint32_t flags;
    int64_t piece;        /* row of the request; of FOLDED cloth that of the upper piece: where the row wants only one
                             more, the lower one is for the next row of this size */
    int64_t strip;        /* row of muslin_cutplan_strips() */
    int64_t count;        /* so many side by side; FOLDED: in each layer */
    muslin_len x;         /* left edge of the first, from the strip's left end: of the first place half of end_loss, 0
                             beside slit pieces */
    muslin_len y;         /* lower edge, from the strip's: 0, or what lies below in a stack */
    muslin_len width;     /* cut, as it lies; SLOPED: from its left corner to its right one, run-in and pitch; JOINED
                             and FOLDED: that of the strip, which may go round the fold */
    muslin_len height;
    muslin_len pitch;     /* from one to the next: the width, of SLOPED pieces the pitch, and the squaring share */
    int32_t turned;       /* 1: turned a quarter in its strip from what its row says */
    int32_t trimmed;      /* 1: the strip is higher, one more cut */
};
/* What each strip holds, from the left, place by place. Pieces that are wanted; what fits besides is left over. Rows
 * that want one size get its pieces one row after the other. Time follows the places. Example: a strip of 6 in: three
 * pieces of 6 in, then four of 5 1/2 in, trimmed. Since 1.0. */
MUSLIN_API muslin_status muslin_cutplan_places(const struct muslin_cutplan *plan, struct muslin_cutplan_place *rows,
                                               size_t row_size, size_t capacity, size_t *count,
                                               struct muslin_problem *problem);

struct muslin_cutplan_blank {
    uint32_t size;
    uint32_t flags;
    int64_t piece;        /* row of the request */
    int64_t place;        /* row of muslin_cutplan_places() */
    int64_t strip;        /* row of muslin_cutplan_strips() */
    int64_t stock;        /* row of the request, -1: from the bolt */
    int64_t sheet;        /* which piece of stock of all that are used, from 0; of the bolt 0 */
    muslin_len x;         /* lower left corner: from the left selvage, or the left edge of the piece of stock, */
    muslin_len y;         /* and from the straightened end of the bolt or piece of stock */
    muslin_len width;     /* across the bolt or piece of stock; SLOPED: from its left corner to its right one, so that
                             neighbours overlap; JOINED and FOLDED: unfolded, it may go round the fold */
    muslin_len height;
    int32_t turned;       /* 1: turned a quarter from what its row says */
    int32_t trimmed;      /* 1: its strip is higher */
    int32_t layers;       /* 2: FOLDED, one in each layer; else 1 */
    int32_t pad;
};
/* Each piece by itself, as a rectangle on its bolt or piece of stock, for drawing: from number `first` on, in the order
 * of cutting. As many as `capacity` are written, and *count gets how many there are from `first` to the end, so
 * millions can be had a page at a time; MUSLIN_ERR_BUFFER is never returned. A piece of stock lies as its row says,
 * also where first cuts run along it: then its strips stand upright. MUSLIN_ERR_RANGE: `first` not in 0 .. the number
 * of blanks. Time: strips and places, and for each blank what its panel or piece of stock holds. Example: the third
 * square of 5 in of a strip: x = 10 in. Since 1.0. */
MUSLIN_API muslin_status muslin_cutplan_blanks(const struct muslin_cutplan *plan, int64_t first,
                                               struct muslin_cutplan_blank *rows, size_t row_size, size_t capacity,
                                               size_t *count, struct muslin_problem *problem);

struct muslin_cutplan_left_over {
    uint32_t size;
    uint32_t flags;
    int64_t strip;       /* row of muslin_cutplan_strips(): the strip that it is the end of, the panel or piece of stock
                            that it is the rest of, the slit pieces that it lies above */
    int64_t count;       /* so many alike */
    muslin_len x;        /* its lower left corner, from that row's */
    muslin_len y;
    muslin_len width;    /* without end_loss; at the fold of FOLDED cloth unfolded, twice as wide */
    muslin_len height;
};
/* Rectangles of cloth that are left, at least `least_side` and 1 both ways, the largest first: ends of strips, the rest
 * of panels and of stock, what lies above slit pieces that are shorter than their panel, and of FOLDED cloth one layer
 * beside a JOINED strip that goes round the fold and is not whole. Other trims along pieces are waste and are not
 * listed. Time: strips and places. Example: five squares of 5 1/2 in at 40 in leave 12 1/2 x 5 1/2 in. Since 1.0. */
MUSLIN_API muslin_status muslin_cutplan_left_overs(const struct muslin_cutplan *plan, muslin_len least_side,
                                                   struct muslin_cutplan_left_over *rows, size_t row_size,
                                                   size_t capacity, size_t *count, struct muslin_problem *problem);

struct muslin_cutplan_piece {
    uint32_t size;
    uint32_t flags;
    int64_t label;       /* the row's own */
    int64_t made;        /* of its count */
    int64_t missing;     /* the rest of it: 0, but with MUSLIN_CUTPLAN_BY_PRIORITY */
    int64_t cut;         /* for it, made or more: with the spare pieces, and of FOLDED cloth the one too many, of its
                            size where it is the last row that gets some; of JOINED strips */
};
/* What becomes of each row of pieces. Time: rows squared. Example: 100 squares, of which the stock gives 64. Since
 * 1.0. */
MUSLIN_API muslin_status muslin_cutplan_pieces(const struct muslin_cutplan *plan, struct muslin_cutplan_piece *rows,
                                               size_t row_size, size_t capacity, size_t *count,
                                               struct muslin_problem *problem);

struct muslin_cutplan_stock_used {
    uint32_t size;
    uint32_t flags;
    int64_t label;       /* the row's own */
    int64_t used;        /* pieces of stock that are cut into */
    int64_t cost;        /* of those */
};
/* How many of each row of stock are used; no rows from a bolt. Time: rows x strips. Example: 7 fat quarters at 3 cost
 * 21. Since 1.0. */
MUSLIN_API muslin_status muslin_cutplan_stock(const struct muslin_cutplan *plan, struct muslin_cutplan_stock_used *rows,
                                              size_t row_size, size_t capacity, size_t *count,
                                              struct muslin_problem *problem);

/* ---- slack ----------------------------------------------------------------------------------------------------- */

struct muslin_cutplan_width {
    uint32_t size;
    uint32_t flags;
    muslin_len usable_width;  /* of the cloth */
    muslin_len cloth_length;  /* straightening included; 0 where a piece does not fit */
    int64_t least;            /* bound, without straightening */
    int32_t proven;           /* 1 when the length without straightening is the bound */
    int32_t pad;
};
/* The same request at other usable widths of a bolt, so many from least to most in equal steps: for readers whose cloth
 * differs. A plan at one width is also one at all wider, so lengths never rise from row to row. The work limit holds
 * for each; `progress` is told as for a plan, beginning anew with each width, and when it ends the search, the widths
 * that follow get their first plan only. MUSLIN_ERR_CHOICE: a plan from stock. MUSLIN_ERR_RANGE: widths below 1, most
 * below least; `widths` outside 2 .. 1000, or not 1 where least is most. MUSLIN_ERR_OVERFLOW, _NO_MEMORY: as
 * muslin_cutplan_create(). Capacity 0 asks and searches nothing. Time: that of a plan for each width.
 * Example: 40, 41, 42, 43 and 44 in: widths = 5. Since 1.0. */
MUSLIN_API muslin_status muslin_cutplan_widths(const struct muslin_cutplan *plan, muslin_len least_width,
                                               muslin_len most_width, int64_t widths, muslin_progress progress,
                                               void *context, struct muslin_cutplan_width *rows, size_t row_size,
                                               size_t capacity, size_t *count, struct muslin_problem *problem);

/* The narrowest usable width at which this plan can be cut as it is: its strips stay, none loses a piece. A bolt
 * narrower than that needs another plan, see above; of nothing 0. MUSLIN_ERR_CHOICE: a plan from stock. Time follows
 * the strips. Example: usable_width less the end of the fullest strip. Since 1.0. */
MUSLIN_API muslin_status muslin_cutplan_narrowest(const struct muslin_cutplan *plan, muslin_len *width,
                                                  struct muslin_problem *problem);

/* ---- the proof ------------------------------------------------------------------------------------------------- */

struct muslin_cutplan_size {
    uint32_t size;
    uint32_t flags;
    int64_t piece;       /* the first row of the request that wants it */
    int64_t count;       /* wanted, spare ones included, of all rows alike; FOLDED: blanks, of two pieces each, or of
                            one where it goes round the fold */
    muslin_len taken;    /* of a strip: cut width and the squaring share; SLOPED: the pitch. What may lie turned is
                            given with its longer side across */
    muslin_len height;   /* of strip that it needs */
    muslin_len run_in;   /* as in struct muslin_blank_spec */
    int32_t may_turn;    /* 1: may lie turned */
    int32_t slit;        /* 1: may be slit from a panel, and is cut from no strip within one */
    int32_t level;       /* 1: only in strips of just its height */
    int32_t pad;
    muslin_len turned_taken;  /* of a strip when turned: the other side and the squaring share; else 0 */
    muslin_len turned_height; /* then; else 0 */
};
/* What the plan was made for, the highest first: sizes that are alike merged, joined pieces taken apart, what is
 * missing left out. Time follows the sizes. Example: two rows of 5 x 5 in are one. Since 1.0. */
MUSLIN_API muslin_status muslin_cutplan_sizes(const struct muslin_cutplan *plan, struct muslin_cutplan_size *rows,
                                              size_t row_size, size_t capacity, size_t *count,
                                              struct muslin_problem *problem);

struct muslin_cutplan_way {
    uint32_t size;
    uint32_t flags;
    int64_t cost;        /* height of a strip, length of a panel, or cost of the stock */
    int64_t stock;       /* row of the request, -1: from the bolt */
    muslin_len width;    /* room along each strip, down to what sizes can add up to */
    muslin_len height;   /* of the strip; of a panel or piece of stock room for strips */
    int32_t kind;        /* enum muslin_cutplan_strip_kind: STRIP, PANEL or STOCK */
    int32_t turned;      /* 1 when first cuts run along the length of the stock */
};
/* The ways to come by cloth that a plan may use, the dearest first, a panel before a strip as high. Strips need only be
 * as high as a size is. Time follows the ways. Example: of three square sizes three. Since 1.0. */
MUSLIN_API muslin_status muslin_cutplan_ways(const struct muslin_cutplan *plan, struct muslin_cutplan_way *rows,
                                             size_t row_size, size_t capacity, size_t *count,
                                             struct muslin_problem *problem);

struct muslin_cutplan_case {
    uint32_t size;
    uint32_t flags;
    int64_t parent;      /* row of the case of which this is a part; -1: the whole */
    int64_t split;       /* rows split and split + 1 are its parts; 0: it is not split */
    int64_t worths;      /* row whose worths prove its bound: itself, or one that it is a part of */
    int64_t least;       /* bound of this case by those, before its parts are looked at */
    int64_t wanted;      /* what sets this case apart (not of the whole): `wanted` of the ways first_way .. last_way */
    int64_t first_way;   /* rows of muslin_cutplan_ways() */
    int64_t last_way;    /* ... up to and with this one */
    int64_t plan_size;   /* -1: so many strips, panels or pieces of stock; else so many of this size in them, and
                            first_way = last_way */
    int64_t packed_way;  /* -1, or a way that is one strip: nothing is of this case, because the conditions on the way
                            to it ask for more pieces than fit into as many strips of this way as they allow */
    int32_t at_least;    /* 1: at least `wanted`, 0: at most */
    int32_t pad;
};
/* Cases of the proof: each either is split into two that leave nothing out, or is empty, as trying all ways to pack its
 * strips shows, or has a bound not below the plan's. Time follows the cases. Example: the whole, then at most 8 strips
 * of any height, then at least 9. Since 1.0. */
MUSLIN_API muslin_status muslin_cutplan_cases(const struct muslin_cutplan *plan, struct muslin_cutplan_case *rows,
                                              size_t row_size, size_t capacity, size_t *count,
                                              struct muslin_problem *problem);

struct muslin_cutplan_worth {
    uint32_t size;
    uint32_t flags;
    int64_t plan_size;   /* the size of which each piece is worth it, -1: not a size */
    int64_t of_case;     /* ... else the case whose condition is, for each of what it counts; -1: not a case */
    int64_t stock;       /* ... else the row of stock: each piece used costs so much more, worth being 0 or less */
    int64_t worth;       /* over *scale, of the cost; 0 or more of sizes and at_least, 0 or less of at
                            most */
};
/* The worths that prove a case, one for each size, each condition on the way to the case, and each stock. A thing of
 * a way may not be worth more than its cost: what its pieces are worth, with what conditions of its way and stock
 * add. Where it is by rho of its cost, the bound is (sum of worth x count wanted) / scale - rho (cost of the plan -
 * 1), up; and up once more, to the next number that costs of ways can add up to (from a bolt in heights, looked at
 * where the plan is below 2^23 of the greatest length that all sizes are whole numbers of): `least` is that, and
 * never more than the cost of the plan. *scale: worths are over it. MUSLIN_ERR_INDEX: no such case, or one without
 * worths of its own. Time follows the result. Example: a square of 5 1/2 in is worth 11/14 in of cloth at most, when
 * seven fit. Since 1.0. */
MUSLIN_API muslin_status muslin_cutplan_worths(const struct muslin_cutplan *plan, int64_t of_case,
                                               struct muslin_cutplan_worth *rows, size_t row_size, size_t capacity,
                                               size_t *count, int64_t *scale, struct muslin_problem *problem);

enum muslin_cutplan_fault {
    MUSLIN_CUTPLAN_FAULT_NONE = 0,     /* all is well */
    MUSLIN_CUTPLAN_FAULT_MISSING = 1,  /* fewer pieces of a size than are wanted */
    MUSLIN_CUTPLAN_FAULT_OVERFULL = 2, /* a strip holds more than its room, or pieces overlap */
    MUSLIN_CUTPLAN_FAULT_TOO_HIGH = 3, /* a piece is higher than its strip, or lies as it may not */
    MUSLIN_CUTPLAN_FAULT_COST = 4,     /* the cost is not what the strips add up to */
    MUSLIN_CUTPLAN_FAULT_GAP = 5,      /* two cases do not make up the one that they split */
    MUSLIN_CUTPLAN_FAULT_BOUND = 6,    /* worths do not prove what they are said to prove */
    MUSLIN_CUTPLAN_FAULT_STOCK = 7     /* more pieces of stock than there are */
};

struct muslin_cutplan_checked {
    uint32_t size;
    uint32_t flags;
    int64_t cost;       /* of the plan, added up anew */
    int64_t least;      /* the bound, proved anew */
    int64_t cases;      /* cases looked at */
    int32_t fault;      /* enum muslin_cutplan_fault: what is wrong first */
    int32_t pad;
    int64_t at;         /* the row of sizes, of stock or of cases that is at fault; OVERFULL, TOO_HIGH, COST: which of
                           the strips, pieces laid or things as the search noted them */
};
/* Proves plan and bound anew, in whole numbers, by code of its own that shares only the rules of cutting with the
 * search. `progress` is told how many cases there are, as best, and how many of them are proved, as bound. Allocates
 * with the plan's allocator: MUSLIN_ERR_NO_MEMORY. MUSLIN_ERR_WORK_LIMIT: it would take more than 2^40 steps, or keep
 * more than 2^20 sums at once. MUSLIN_ERR_STOPPED: `progress` ended it. Time: cases x ways x what fits in a strip.
 * Example: fault = 0 of every plan that muslin_cutplan_create() makes. Since 1.0. */
MUSLIN_API muslin_status muslin_cutplan_check(const struct muslin_cutplan *plan, muslin_progress progress,
                                              void *context, struct muslin_cutplan_checked *out,
                                              struct muslin_problem *problem);

#ifdef __cplusplus
}
#endif

#endif
