/* build.h - words for the tree, for those who piece the six quilts.
 *
 * SPDX-License-Identifier: MIT */
#ifndef BUILD_H
#define BUILD_H

#include "tops.h"

muslin_id cloth(struct design *d, const char *name, int darkness, int red, int green, int blue);
muslin_id measure(struct design *d, const char *name, muslin_len value);
muslin_id times(struct design *d, int64_t factor, muslin_id of);

muslin_id patch(struct design *d, muslin_id fabric, muslin_id width, muslin_id height);
/* Of two fabrics: its regions 1 and 2. */
muslin_id unit(struct design *d, int32_t kind, int32_t method, muslin_id width, muslin_id height, muslin_id first,
               muslin_id second);

muslin_id join(struct design *d, int32_t axis, const muslin_id *children, size_t n);
muslin_id turn(struct design *d, muslin_id node, int32_t quarter_turns);
muslin_id grid(struct design *d, int64_t columns, int64_t rows, const muslin_id *children);
/* A setting whose turns repeat two by two. */
muslin_id repeat(struct design *d, muslin_id node, int64_t columns, int64_t rows, const int32_t turns[4]);

/* Strips round a centre, each pressed away from it: a border, both sides first, or the logs of a cabin. */
muslin_id border(struct design *d, muslin_id centre, muslin_id fabric, muslin_id width, const char *name);
muslin_id cabin(struct design *d, muslin_id centre, const struct muslin_log_spec *logs, int count, const char *name);

/* What the sheet calls a node; a block's letter is also on the drawing. */
struct named *call(struct design *d, muslin_id node, const char *name);
muslin_id block(struct design *d, muslin_id node, const char *name);

extern const int32_t chessboard[4];

#endif
