/* muslin/motif.h - pieces that need a window on a printed repeat, and stacks of identical layers.
 *
 * SPDX-License-Identifier: MIT
 *
 * A repeat is the piece of a print that comes again and again: so long along the cloth, so wide across it. A window is
 * a piece cut so that a certain motif shows in it. Windows are counted by whole repeats, never by area: what lies
 * between two windows is lost.
 *
 * Every call
 *   Units       Lengths are ticks, 0 .. MUSLIN_SIZE_MAX unless a member says otherwise; counts 0 .. MUSLIN_COUNT_MAX
 *               likewise. Sizes of pieces are cut sizes. Across is from selvage to selvage, along is with the selvage.
 *   Statuses    MUSLIN_ERR_NULL: a spec or output is missing. MUSLIN_ERR_STRUCT_SIZE, _STRUCT_TAIL, _FLAGS: a struct
 *               breaks the rules of base.h. MUSLIN_ERR_RANGE: an input outside its range; the problem names it. What
 *               else a call can return stands with it. The ..._init calls return MUSLIN_ERR_NULL and
 *               MUSLIN_ERR_STRUCT_SIZE.
 *   Cost        Constant time. Nothing allocates.
 *   Problem     Optional (null). repeat_length and repeat_width are MUSLIN_ARG_REPEAT, cut_width and cut_length
 *               MUSLIN_ARG_CUT, in both cases with `at` 0 and 1.
 */
#ifndef MUSLIN_MOTIF_H
#define MUSLIN_MOTIF_H

#include "fabric.h"

#ifdef __cplusplus
extern "C" {
#endif

/* ---- windows --------------------------------------------------------------------------------------------------- */

struct muslin_motif_spec {
    uint32_t size;
    uint32_t flags;            /* MUSLIN_MOTIF_ANY_START, MUSLIN_MOTIF_ANY_ACROSS or 0 */
    muslin_len repeat_length;  /* of the print along the cloth, 1 or more */
    muslin_len repeat_width;   /* across it; 0: the whole usable width counts as one repeat */
    muslin_len usable_width;   /* of the cloth, 1 or more */
    muslin_len cut_width;      /* of the window, across, 1 or more */
    muslin_len cut_length;     /* along, 1 or more */
    int64_t motifs;            /* windows that one repeat gives, 1 or more: count only those that can all be cut, so of
                                  two that overlap one; for a window larger than the repeat, those that the repeats it
                                  takes give together */
    int64_t pieces;            /* windows wanted */
};
/* The cloth may begin anywhere in the print: one repeat more of length, so that the first row can be shifted, and
 * across only the windows that are whole wherever the print begins. */
#define MUSLIN_MOTIF_ANY_START 1u
/* The cloth is cut where a repeat begins along it, but across the print may begin anywhere: only the windows that are
 * whole wherever it does, and no repeat more of length. MUSLIN_MOTIF_ANY_START includes it. */
#define MUSLIN_MOTIF_ANY_ACROSS 2u
/* One window a repeat, 40 in usable, the width one repeat; repeat, window and pieces are still to be given. */
#define MUSLIN_MOTIF_SPEC_INIT { sizeof(struct muslin_motif_spec), 0, 0, 0, 325120, 0, 0, 1, 0 }
/* Writes the values above to the first `size` bytes of *spec. Since 1.0. */
MUSLIN_API muslin_status muslin_motif_spec_init(struct muslin_motif_spec *spec, uint32_t size);

struct muslin_motif {
    uint32_t size;
    uint32_t flags;
    int64_t repeats_across_each; /* repeats that a window takes across: cut_width / repeat_width, up; 1 when the width
                                    is one repeat */
    int64_t repeats_along_each;  /* along: cut_length / repeat_length, up */
    int64_t per_row;             /* windows that a row gives from selvage to selvage */
    int64_t rows;                /* rows of windows: pieces / per_row, up */
    int64_t repeats;             /* along, for all rows: rows x repeats_along_each */
    int64_t repeats_bought;      /* repeats, and the one for shifting the start where it is counted */
    int64_t spare_pieces;        /* windows that the rows give beyond those wanted */
    int64_t per_row_certain;     /* windows that a row gives wherever the print begins across; 0 when none is certain */
    int64_t per_row_lucky;       /* ... and gives when the print begins best: see lucky_within */
    int64_t rows_certain;        /* rows for the windows wanted when a row gives only those; 0 when none is certain */
    int64_t rows_lucky;          /* ... when it gives the most */
    muslin_len row_length;       /* repeats_along_each x repeat_length */
    muslin_len waste_per_row;    /* row_length - cut_length */
    muslin_len shift;            /* the repeat for shifting the start, or 0 */
    muslin_len cloth_length;     /* rows x row_length + shift */
    muslin_len cloth_certain;    /* the same with rows_certain; 0 when none is certain */
    muslin_len cloth_lucky;      /* ... with rows_lucky */
    muslin_len lucky_within;     /* per_row_lucky holds when the first whole window begins no farther than this from
                                    the edge of the usable width; 0 when the width is one repeat */
    muslin_len narrower_by;      /* the cloth may be this much narrower before a row more is needed; 0 when the width is
                                    one repeat, since how the print lies in it is not known */
    muslin_len wider_for_less;   /* this much wider, the least, and fewer rows are needed; 0 when no width saves one, or
                                    the width is one repeat */
    int64_t wider_rows;          /* so many they then are; 0 when no width saves one */
    uint32_t warnings;           /* MUSLIN_WARN_NO_SLACK when a piece is wanted and narrower_by is 0; where the width is
                                    one repeat, when the window is as wide as the cloth */
    int32_t pad;
    muslin_len cloth_least;      /* cloth_length without what lies behind the windows of the last row: less by
                                    waste_per_row where the start is shifted and motifs is 1, else the same */
};
/* Windows wanted -> repeats -> length of cloth. A window no larger than the repeat takes one repeat each way, a larger
 * one as many as it reaches over, up: the next window then begins where the print does again. Across, whole repeats
 * are counted: usable width / (repeats a window takes x repeat_width), down. With MUSLIN_MOTIF_ANY_ACROSS the first
 * window may begin up to a repeat from the selvage and must still end before the other one; with
 * MUSLIN_MOTIF_ANY_START it may too, and one repeat of length is added for the whole order when a piece is wanted.
 * MUSLIN_ERR_NO_YIELD: not one window fits across (the problem names the usable width and the least that would do;
 * where only part of a repeat lies across the cloth, count the motifs you see and give repeat_width 0). Whole repeats
 * lie between what is certain and what is lucky, and both are said: the print seldom begins at the edge of the usable
 * width. Where the width is one repeat, both are per_row. MUSLIN_ERR_RANGE for `motifs` also when so many windows are
 * larger than the repeats they are cut from, by area. Sources: Figuring pattern repeats (home magazine how-to) for
 * repeats along and the one more for the order; geometry for the rest. Example: pieces 96 in long, repeat 27 in: 4
 * repeats, 108 in, 12 in wasted. Example: three of them from a cloth that begins anywhere: 13 repeats, 351 in; 339 in
 * are enough. Example: 20 windows 6 in square, a print that repeats every 12 in each way, 40 in usable: 3 a row if the
 * first begins within 10 in of the edge, 7 rows, but 2 are certain, 10 rows. Since 1.0. */
MUSLIN_API muslin_status muslin_motif_plan(const struct muslin_motif_spec *spec, struct muslin_motif *out,
                                           struct muslin_problem *problem);

struct muslin_motif_yield {
    uint32_t size;
    uint32_t flags;
    int64_t rows;               /* of windows, whole: of the last only the windows must be there, as in cloth_least */
    int64_t repeats;            /* along, used by them */
    int64_t pieces;             /* rows x per_row: windows */
    int64_t pieces_certain;     /* rows x per_row_certain */
    int64_t pieces_lucky;       /* rows x per_row_lucky */
    muslin_len left_over;       /* of the length, behind the rows; what the shift takes is not in it */
    muslin_len shorter_by;      /* the cloth may be this much shorter before a row is lost; 0 when there is none */
    muslin_len longer_for_one;  /* this much longer and one more row fits */
    uint32_t warnings;          /* MUSLIN_WARN_NO_SLACK when there is a row and shorter_by is 0 */
    int32_t pad;
};
/* Windows that a cloth so long (0 .. MUSLIN_SIZE_MAX) gives, counted as in muslin_motif_plan(); spec->pieces is not
 * used, but must be in its range. No row is an answer, not an error. MUSLIN_ERR_NO_YIELD and MUSLIN_ERR_RANGE as
 * there. Source: geometry. Example: a print that repeats every 12 in each way, windows 6 in square, 40 in usable, 3
 * yd: 27 windows. Since 1.0. */
MUSLIN_API muslin_status muslin_motif_from_cloth(const struct muslin_motif_spec *spec, muslin_len cloth_length,
                                                 struct muslin_motif_yield *out, struct muslin_problem *problem);

/* ---- identical layers ------------------------------------------------------------------------------------------ */

struct muslin_stack_spec {
    uint32_t size;
    uint32_t flags;            /* MUSLIN_STACK_ANY_START or 0 */
    muslin_len repeat_length;  /* of the print along the cloth, 1 or more */
    muslin_len strip_cut;      /* cut width of the strips that are cut through all layers, 1 or more */
    muslin_len straightening;  /* taken off the aligned layers once, before the first strip */
    int64_t per_strip;         /* stacks that one strip gives, 1 or more: as many as pieces from a single strip */
    int64_t layers;            /* identical pieces in a stack, 1 or more: 4, 6 or 8 for the blocks that are usual */
    int64_t stacks;            /* wanted */
};
/* The cloth may begin anywhere in the print: one repeat more, so that the first layer can begin at the place chosen.
 * */
#define MUSLIN_STACK_ANY_START 1u
/* Six layers, one stack a strip; repeat, strip and stacks are still to be given. */
#define MUSLIN_STACK_SPEC_INIT { sizeof(struct muslin_stack_spec), 0, 0, 0, 0, 1, 6, 0 }
/* Writes the values above to the first `size` bytes of *spec. Since 1.0. */
MUSLIN_API muslin_status muslin_stack_spec_init(struct muslin_stack_spec *spec, uint32_t size);

struct muslin_stack {
    uint32_t size;
    uint32_t flags;
    int64_t strips;             /* to cut through the layers: stacks / per_strip, up */
    int64_t strips_in_layers;   /* that the layers give, whole */
    int64_t repeats_per_layer;  /* (strips x strip_cut + straightening) / repeat_length, up; 0 without a strip */
    int64_t repeats;            /* of the cloth: layers x repeats_per_layer; the one for the start is not counted */
    int64_t repeats_bought;     /* ... and that one, where it is */
    int64_t pieces;             /* stacks x layers */
    int64_t spare_stacks;       /* that strips_in_layers give beyond those wanted */
    muslin_len layer_length;    /* of each layer: repeats_per_layer x repeat_length */
    muslin_len used_length;     /* of each layer: strips x strip_cut + straightening; 0 without a strip */
    muslin_len shift;           /* the repeat for choosing the start, or 0 */
    muslin_len cloth_length;    /* layers x layer_length + shift */
    muslin_len left_over;       /* of each layer, behind strips_in_layers */
    muslin_len shorter_by;      /* the cloth may end this much early, in the last layer: layer_length - used_length. The
                                   other layers stay as long as they are, since each begins whole repeats behind the
                                   one before */
    uint32_t warnings;          /* MUSLIN_WARN_NO_SLACK when a strip is wanted and shorter_by is 0 */
    int32_t pad;
    muslin_len cloth_least;     /* cloth_length - shorter_by */
};
/* Cloth for stacks of identical pieces: it is cut into `layers` lengths of whole repeats that begin at the same place
 * of the print; they are laid on each other so that the print matches, and strips and pieces are cut through all of
 * them at once. MUSLIN_ERR_OVERFLOW when the cloth would be longer than MUSLIN_LENGTH_MAX. Sources: common practice,
 * no source, for the way; geometry for the sums. Example: 40 stacks of 6, 10 from each strip cut 3 in, repeat 24 in: 4
 * strips, the first 12 in of each layer, 1 repeat a layer, 6 repeats, 4 yd. Since 1.0. */
MUSLIN_API muslin_status muslin_stack_plan(const struct muslin_stack_spec *spec, struct muslin_stack *out,
                                           struct muslin_problem *problem);

#ifdef __cplusplus
}
#endif

#endif
