/* muslin/cutlist.h - a list of pieces, and the cloth it takes: yardage, fat quarters, bundles.
 *
 * SPDX-License-Identifier: MIT
 *
 * The method is the one that books use: each size is cut from its own strips across the cloth, as many pieces from a
 * strip as fit whole, and the strips lie one behind the other in the order of the list. What it says is enough, and
 * not always the least: a plan that puts two sizes on one strip may need less. Pieces are counted, never areas; the
 * area bound stands beside as what no plan can go below, and says nothing on what is enough.
 *
 * Every call
 *   Units       Lengths are ticks, 0 .. MUSLIN_SIZE_MAX unless a member says otherwise; counts 0 .. MUSLIN_COUNT_MAX.
 *               Across is from selvage to selvage, along is with the selvage. Sizes of pieces are cut sizes.
 *   The list    `n` rows of muslin_cutlist_piece_spec in `pieces` at stride piece_size, n 0 ..
 *               MUSLIN_CUTLIST_ROWS_MAX; with n = 0 pieces may be null. A row of count 0 asks for nothing and is never
 *               too large. Where strips come from pieces of stock, the order of the rows matters: it is the order of
 *               cutting.
 *   Turning     A piece lies turned a quarter only if its row has MUSLIN_CUTLIST_PIECE_MAY_TURN and the print is
 *               MUSLIN_PRINT_NONE, and all pieces of a row lie alike: the way that takes less, and the way they are
 *               listed where both take the same.
 *   Statuses    MUSLIN_ERR_NULL: pieces, a spec or an output is missing. MUSLIN_ERR_STRUCT_SIZE, _STRUCT_TAIL, _FLAGS:
 *               a struct breaks the rules of base.h. MUSLIN_ERR_RANGE: an input outside its range; the problem names
 *               it. MUSLIN_ERR_CHOICE: a member that is none of its enum. MUSLIN_ERR_NO_YIELD: not one piece of a row
 *               fits (problem: the row in `at`, the side that is too short and the least that would do). What else a
 *               call can return stands with it.
 *   Slack       narrower_by and shorter_by are the most that keeps the answer, whatever then changes inside it, even
 *               the way in which pieces lie: one tick more and it costs cloth or stock. Those as cut keep the cutting
 *               too: the same strips, lying the same way, from the same pieces of stock; a strip may then give a piece
 *               less. All are 0 when nothing is wanted.
 *   Cost        One pass over the rows where only yardage is asked for; else up to about a hundred passes, for searches
 *               by halving. Nothing allocates, nothing is kept.
 *   Problem     Optional everywhere (null). In a row, cut_width and cut_length are MUSLIN_ARG_CUT, and `at` is the row.
 */
#ifndef MUSLIN_CUTLIST_H
#define MUSLIN_CUTLIST_H

#include "stripset.h"

#ifdef __cplusplus
extern "C" {
#endif

/* ---- the list -------------------------------------------------------------------------------------------------- */

/* The most rows of a list. */
#define MUSLIN_CUTLIST_ROWS_MAX 4096

/* Pieces of one size and one fabric; a row of a list. */
struct muslin_cutlist_piece_spec {
    uint32_t size;
    uint32_t flags;         /* MUSLIN_CUTLIST_PIECE_MAY_TURN or 0 */
    muslin_len cut_width;   /* across the cloth, 1 or more */
    muslin_len cut_length;  /* along it, 1 or more */
    int64_t count;          /* wanted */
};
#define MUSLIN_CUTLIST_PIECE_MAY_TURN 1u /* these pieces may lie turned a quarter, where the print allows it */
/* One piece that stays as it is listed; its size is still to be given. */
#define MUSLIN_CUTLIST_PIECE_SPEC_INIT { sizeof(struct muslin_cutlist_piece_spec), 0, 0, 0, 1 }
/* Writes the values above to the first `size` bytes of *spec. MUSLIN_ERR_NULL; MUSLIN_ERR_STRUCT_SIZE. Since 1.0. */
MUSLIN_API muslin_status muslin_cutlist_piece_spec_init(struct muslin_cutlist_piece_spec *spec, uint32_t size);

/* How one row is cut. */
struct muslin_cutlist_row {
    uint32_t size;
    uint32_t flags;
    int64_t pieces;            /* wanted, of all lists that are cut together */
    int64_t strips;            /* pieces / per_strip, up */
    int64_t per_strip;         /* pieces from one strip, down */
    int64_t spare_pieces;      /* that the last strip could still give */
    muslin_len strip_cut;      /* cut width of each strip, along the cloth */
    muslin_len piece_cut;      /* what is cut off the strip for each piece, across the cloth */
    muslin_len strips_length;  /* of cloth: strips x strip_cut */
    int64_t first_stock;       /* the piece of stock, from 1, that gives the first strip; 0 from yardage or for none */
    int64_t last_stock;        /* ... and the last strip */
    int32_t turned;            /* 1 when the pieces lie turned a quarter */
    int32_t trimmed;           /* 1 when the strips must be cut from the stock; 0 when a piece of stock is as narrow as
                                  the strip already, from yardage, or without a strip */
};

/* ---- from yardage ---------------------------------------------------------------------------------------------- */

struct muslin_cutlist_spec {
    uint32_t size;
    uint32_t flags;            /* 0 */
    muslin_len usable_width;   /* length of a strip across the cloth, 1 or more */
    muslin_len end_loss;       /* taken off each strip for squaring its ends */
    muslin_len straightening;  /* taken off the cloth once */
    int32_t print;             /* enum muslin_print */
    int32_t pad;               /* 0 */
};
/* 40 in usable, nothing lost, no direction. */
#define MUSLIN_CUTLIST_SPEC_INIT { sizeof(struct muslin_cutlist_spec), 0, 325120, 0, 0, 1, 0 }
/* Writes the values above to the first `size` bytes of *spec. MUSLIN_ERR_NULL; MUSLIN_ERR_STRUCT_SIZE. Since 1.0. */
MUSLIN_API muslin_status muslin_cutlist_spec_init(struct muslin_cutlist_spec *spec, uint32_t size);

struct muslin_cutlist_yardage {
    uint32_t size;
    uint32_t flags;
    int64_t pieces;              /* of the whole list */
    int64_t strips;              /* of all rows */
    int64_t spare_pieces;        /* that the last strips of all rows could still give */
    muslin_len cloth_length;     /* the strips one behind the other, plus straightening */
    muslin_len area_bound;       /* a bound only: the pieces' area over the usable width, up to a tick; no plan needs
                                    less, and hardly any gets by with it */
    muslin_len narrowest_width;  /* the narrowest usable width at which cloth_length is the same */
    muslin_len narrower_by;      /* usable_width - narrowest_width */
    muslin_len narrowest_as_cut; /* ... at which also the rows lie alike and take as many strips */
    muslin_len wider_for_less;   /* this much wider, the least, and cloth_length is less; 0 when no width saves any */
    muslin_len wider_saves;      /* so much less it then is; how it is cut then, the call below says for that width */
    uint32_t warnings;           /* MUSLIN_WARN_NO_SLACK when a piece is wanted and narrower_by is 0 */
    int32_t turned;              /* 1 when the pieces of some row lie turned a quarter */
};
/* Length of cloth for the whole list: for each row count / ((usable_width - end_loss) / across) strips as high as the
 * piece is along the cloth, added up. With turning, the way that takes less length. Narrowest and wider width are those
 * of the answer, not of a yield: a strip may give a piece less where the number of strips stays. MUSLIN_ERR_NO_YIELD
 * names MUSLIN_ARG_USABLE_WIDTH; MUSLIN_ERR_OVERFLOW when the cloth would be longer than MUSLIN_LENGTH_MAX. Source: 52
 * 4-inch and 20 3-inch squares (public forum). Example: 52 squares of 4 in and 20 of 3 in at 44 in usable: 5 strips and
 * 2, 26 in; 8 in wider saves 4 in. Since 1.0. */
MUSLIN_API muslin_status muslin_cutlist_from_yardage(const struct muslin_cutlist_piece_spec *pieces, size_t piece_size,
                                                     size_t n, const struct muslin_cutlist_spec *spec,
                                                     struct muslin_cutlist_yardage *out,
                                                     struct muslin_problem *problem);

/* How each row is cut then (ask-then-fill): n rows in the order of the list. MUSLIN_ERR_BUFFER when they do not fit;
 * the others as above. Source: Start quilting, lesson two (M. Hohn). Example: 112 pieces of 7 3/4 x 3 7/8 in at 42 in
 * usable: 5 a strip, 23 strips. Since 1.0. */
MUSLIN_API muslin_status muslin_cutlist_yardage_rows(const struct muslin_cutlist_piece_spec *pieces, size_t piece_size,
                                                     size_t n, const struct muslin_cutlist_spec *spec,
                                                     struct muslin_cutlist_row *rows, size_t row_size, size_t capacity,
                                                     size_t *count, struct muslin_problem *problem);

/* ---- from pieces of stock -------------------------------------------------------------------------------------- */

struct muslin_cutlist_stock {
    uint32_t size;
    uint32_t flags;
    int64_t pieces;         /* of the whole list */
    int64_t strips;         /* cut across the stock */
    int64_t spare_pieces;   /* that the last strips of all rows could still give */
    int64_t stock_needed;   /* pieces of stock; enough, by this plain method */
    int64_t stock_missing;  /* of those, not in hand */
    int64_t stock_left;     /* in hand and not touched */
    int64_t area_bound;     /* a bound only: the pieces' area over that of a piece of stock, up; no plan needs fewer */
    muslin_len left_over;   /* length of the last piece of stock behind its last strip */
    muslin_len narrower_by; /* each piece of stock may be this much narrower before one more is needed */
    muslin_len shorter_by;  /* ... or this much shorter */
    muslin_len as_cut_narrower_by; /* this much narrower, and the strips stay as they are, row by row */
    muslin_len as_cut_shorter_by;  /* ... or this much shorter, the least rest of any piece of stock needed */
    uint32_t warnings;      /* MUSLIN_WARN_NO_SLACK when a piece is wanted and narrower_by or shorter_by is 0 */
    int32_t trimmed;        /* 1 when some row's strips must be cut from the stock (see muslin_cutlist_row) */
    int32_t turned;         /* 1 when the pieces of some row lie turned a quarter */
    int32_t pad;
    int64_t rest_pieces;    /* that left_over could still give, cut as those of the last row; 0 when that wants none */
};
/* The list from pieces of stock of one size: squares, strips of a bundle, fat quarters, or a cloth. Row by row, strips
 * as long as the stock is wide are cut one behind the other; a row goes on in the piece of stock that the row before
 * has left, as long as a strip fits behind; then it takes a new one, and no row goes back. A row lies turned when it
 * then ends earlier: in an earlier piece of stock, or further forward in the same. (That is the best of all ways of
 * turning rows: whoever begins earlier ends earlier.) A strip of a bundle gives the pieces that are as high as the
 * strip is, or lower ones, which the result calls trimmed. The stated width and length are used as they are: to line up
 * the other point of pinked edges, or to square the ends, state what is left. MUSLIN_ERR_NO_YIELD names
 * MUSLIN_ARG_USABLE_WIDTH or MUSLIN_ARG_CLOTH_LENGTH, for the piece as it is listed. Source: Cutting up a 10 inch
 * square (teacher's blog) for one size; common practice, no source, for several. Example: 80 strips of 22 x 2 1/2 in
 * from fat quarters 18 x 22 in: 12 fat quarters. Since 1.0. */
MUSLIN_API muslin_status muslin_cutlist_from_stock(const struct muslin_cutlist_piece_spec *pieces, size_t piece_size,
                                                   size_t n, const struct muslin_stock_spec *stock,
                                                   struct muslin_cutlist_stock *out, struct muslin_problem *problem);

/* How each row is cut then (ask-then-fill): n rows in the order of the list. MUSLIN_ERR_BUFFER when they do not fit;
 * the others as above. Source: as above. Example: 9 squares of 5 in, then 20 of 2 1/2 in, from squares of 10 in: the
 * small ones come from the third and fourth. Since 1.0. */
MUSLIN_API muslin_status muslin_cutlist_stock_rows(const struct muslin_cutlist_piece_spec *pieces, size_t piece_size,
                                                   size_t n, const struct muslin_stock_spec *stock,
                                                   struct muslin_cutlist_row *rows, size_t row_size, size_t capacity,
                                                   size_t *count, struct muslin_problem *problem);

/* Strips of one row that come from one piece of stock, or from several that are cut alike. */
struct muslin_cutlist_part {
    uint32_t size;
    uint32_t flags;
    int64_t row;          /* from 0 */
    int64_t strips;       /* from each of these pieces of stock */
    int64_t first_stock;  /* the first of them, from 1 */
    int64_t last_stock;   /* the last; the same when it is one */
    muslin_len begins_at; /* length of the piece of stock that earlier rows have used */
};
/* Which strips come from which piece of stock (ask-then-fill), row by row in the order of cutting: none for a row
 * without a strip, at most three for any other: from what the row before has left, from whole pieces of stock, and from
 * the last. MUSLIN_ERR_BUFFER when they do not fit; the others as above. Source: as above. Example: 14 squares of 5 in
 * from fat quarters 18 x 20 in: 3 strips from the first, 1 from the second. Since 1.0. */
MUSLIN_API muslin_status muslin_cutlist_stock_parts(const struct muslin_cutlist_piece_spec *pieces, size_t piece_size,
                                                    size_t n, const struct muslin_stock_spec *stock,
                                                    struct muslin_cutlist_part *rows, size_t row_size, size_t capacity,
                                                    size_t *count, struct muslin_problem *problem);

struct muslin_cutlist_lists {
    uint32_t size;
    uint32_t flags;
    int64_t lists;               /* whole lists that the stock in hand gives */
    int64_t stock_used;          /* pieces of stock for them */
    int64_t stock_left;          /* in hand and not touched */
    int64_t stock_for_one_more;  /* pieces of stock to add for one list more */
    muslin_len left_over;        /* length of the last piece of stock used behind its last strip */
    muslin_len narrower_by;      /* each piece of stock may be this much narrower before a list is lost; 0 for none */
    muslin_len shorter_by;       /* ... or this much shorter */
    muslin_len as_cut_narrower_by; /* this much narrower, and the strips for those lists stay as they are */
    muslin_len as_cut_shorter_by;  /* ... or this much shorter */
    uint32_t warnings;           /* MUSLIN_WARN_NO_SLACK when there is a list and narrower_by or shorter_by is 0 */
    int32_t pad;
};
/* How many times the whole list (how many quilts, blocks or kits) comes from stock->count pieces of stock, all rows
 * taken so many times and then cut as in muslin_cutlist_from_stock(): row by row, not list by list. No list is an
 * answer, not an error. MUSLIN_ERR_RANGE for the number of pieces also when the list asks for nothing;
 * MUSLIN_ERR_OVERFLOW when there are more than MUSLIN_COUNT_MAX lists. Source: geometry. Example: 4 squares of 5 in and
 * 4 of 2 1/2 in from 10 squares of 10 in: 8 times. Since 1.0. */
MUSLIN_API muslin_status muslin_cutlist_lists_from_stock(const struct muslin_cutlist_piece_spec *pieces,
                                                         size_t piece_size, size_t n,
                                                         const struct muslin_stock_spec *stock,
                                                         struct muslin_cutlist_lists *out,
                                                         struct muslin_problem *problem);

/* How each row is cut for all those lists together (ask-then-fill): n rows in the order of the list; a row may lie
 * another way than for one list. MUSLIN_ERR_BUFFER when they do not fit; the others as above. Source: geometry.
 * Example: 24 pieces of 8 1/2 x 4 1/2 in that may turn, from a cloth 40 x 72 in: twice, 6 strips of 8 1/2 in. Since
 * 1.0. */
MUSLIN_API muslin_status muslin_cutlist_lists_rows(const struct muslin_cutlist_piece_spec *pieces, size_t piece_size,
                                                   size_t n, const struct muslin_stock_spec *stock,
                                                   struct muslin_cutlist_row *rows, size_t row_size, size_t capacity,
                                                   size_t *count, struct muslin_problem *problem);

/* ---- one stock for another ------------------------------------------------------------------------------------- */

struct muslin_substitution {
    uint32_t size;
    uint32_t flags;
    int64_t unfit_row;            /* the first row of which not one piece fits, from 0; -1 when all do */
    int64_t stock_needed;         /* pieces of stock; from yardage 0 */
    int64_t stock_missing;        /* of those, not in hand */
    int64_t fabrics;              /* different fabrics that the list then shows, when each piece of stock needed is
                                     taken from another print as long as there is one; from yardage 1; 0 for an
                                     empty list */
    int64_t per_fabric_least;     /* pieces of stock of each of them, dealt evenly: at least so many; from yardage 0 */
    int64_t per_fabric_most;      /* ... and at most */
    muslin_len cloth_length;      /* from yardage: length needed; else 0 */
    muslin_len cloth_missing;     /* of that, not in hand */
    muslin_len narrower_by;       /* as in muslin_cutlist_yardage and muslin_cutlist_stock */
    muslin_len shorter_by;        /* from yardage: what is in hand beyond cloth_length */
    int64_t spare_pieces;         /* that the last strips of all rows could still give */
    int32_t possible;             /* 1 when every row can be cut from it; else all but unfit_row is 0 */
    int32_t enough;               /* 1 when what is in hand suffices */
    uint32_t warnings;            /* MUSLIN_WARN_NO_SLACK when a piece is wanted and narrower_by is 0 or, where it is
                                     enough or from pieces of stock, shorter_by */
    int32_t turned;               /* 1 when the pieces of some row lie turned a quarter */
    int64_t rest_pieces;          /* as in muslin_cutlist_stock: of a list of one row, so many more than spare_pieces
                                     come from the stock that is needed; from yardage 0 */
};
/* The same list from something else: call it for each kind of stock at hand or in question, and compare; which is
 * better is the caller's to say. `prints` is the number of different fabrics in the stock (1 .. MUSLIN_COUNT_MAX): of a
 * bundle or a set of fat quarters; for MUSLIN_STOCK_YARDAGE it must be 1, and the answer is a length, worked as in
 * muslin_cutlist_from_yardage() with nothing lost, against count x length in hand. Other kinds are worked as in
 * muslin_cutlist_from_stock(). Stock that is missing is taken to be of the same prints. A row that does not fit is an
 * answer, not an error; whether it would fit turned, or turning saves, is known by asking once more with
 * MUSLIN_CUTLIST_PIECE_MAY_TURN in its flags. MUSLIN_ERR_OVERFLOW as with yardage. Source: geometry. Example: 80 strips
 * of 22 x 2 1/2 in from 20 fat quarters 18 x 22 in of 8 prints: 12 fat quarters, 8 fabrics, 1 or 2 of each. Example: 60
 * pieces of 2 1/2 x 4 1/2 in from squares of 10 in: 8 squares, 15 strips of 4 pieces, and a strip more of 4 from the
 * last. Since 1.0. */
MUSLIN_API muslin_status muslin_cutlist_substitute(const struct muslin_cutlist_piece_spec *pieces, size_t piece_size,
                                                   size_t n, const struct muslin_stock_spec *stock, int64_t prints,
                                                   struct muslin_substitution *out, struct muslin_problem *problem);

#ifdef __cplusplus
}
#endif

#endif
