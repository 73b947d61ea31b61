/* finishing.c - small arithmetic that batting, backing and binding share.
 *
 * SPDX-License-Identifier: MIT */
#include "finishing_inside.h"

muslin_len msl_up_to_step(muslin_len length, muslin_len step)
{
    muslin_len over = length % step;
    return over == 0 ? length : length + (step - over);
}

muslin_len msl_with_margins(struct msl_check *check, int32_t argument, muslin_len quilt, muslin_len before,
                            muslin_len after)
{
    msl_want_some_size(check, argument, quilt);
    msl_want_size(check, MUSLIN_ARG_MARGIN, before);
    msl_want_size(check, MUSLIN_ARG_MARGIN, after);
    if (check->status != MUSLIN_OK)
        return 0;
    msl_want_between(check, MUSLIN_ARG_MARGIN, before + after, 0, MUSLIN_SIZE_MAX - quilt);
    return quilt + before + after;
}
