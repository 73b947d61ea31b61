/* setting_run.h - strips joined into one run, for whoever has checked the request.
 *
 * SPDX-License-Identifier: MIT */
#ifndef MUSLIN_SETTING_RUN_H
#define MUSLIN_SETTING_RUN_H

#include "inside.h"
#include "muslin/setting.h"

/* 2 sqrt 2 s, up to a tick: what two edges cut at 45 degrees need beside a seam, along the strip. */
muslin_len msl_diagonal_allowances(muslin_len allowance);

/* Answers a request whose members are in range, but strip_cut may be up to 2^31. At most MUSLIN_COUNT_MAX strips, so
 * their cloth is within a length. `argument` is what the strip's length is called in a problem. */
void msl_run(struct msl_check *check, int32_t argument, const struct muslin_run_spec *spec, struct muslin_run *run);

#endif
