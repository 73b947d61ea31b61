/* finishing_inside.h - what the finishing files share: margins, steps, and a backing before a layout is chosen.
 *
 * SPDX-License-Identifier: MIT */
#ifndef MUSLIN_FINISHING_INSIDE_H
#define MUSLIN_FINISHING_INSIDE_H

#include "inside.h"
#include "muslin/finishing.h"

/* The least multiple of `step` (1 or more) not below `length` (0 or more). */
muslin_len msl_up_to_step(muslin_len length, muslin_len step);


/* The quilt's side with its two margins, all checked; 0 after a failure. */
muslin_len msl_with_margins(struct msl_check *check, int32_t argument, muslin_len quilt, muslin_len before,
                            muslin_len after);

/* A backing's request, checked, with what holds for every layout. */
struct msl_backing {
    struct muslin_backing_spec spec;
    muslin_len needed_width;
    muslin_len needed_length;
    muslin_len usable;
    int32_t may_turn; /* 1 when the print may lie turned a quarter */
};

/* Reads and checks a request; the rest of *into holds only when the check is still good. */
void msl_backing_read(struct msl_check *check, struct msl_backing *into, const struct muslin_backing_spec *from);

/* One layout of it. `best` is left 0: that takes all of them. */
void msl_backing_lay(const struct msl_backing *backing, int32_t layout, struct muslin_backing *row);

#endif
