/* questions_supplies.c - what the handbook asks about supplies.h.
 *
 * SPDX-License-Identifier: MIT */
#include "handbook.h"

extern const struct question questions_supplies[];

/* Without a waste none is added. */
static void thread(struct figure *f)
{
    static const char *const methods[] = { "ratio", "formula", NULL };
    struct muslin_thread_spec spec = MUSLIN_THREAD_SPEC_INIT;
    struct muslin_thread out = { .size = sizeof out };
    spec.seam = length(f, "seam");
    spec.method = choice(f, "method", methods);
    spec.ratio_above = count_or(f, "above", spec.ratio_above);
    spec.ratio_below = count_or(f, "below", spec.ratio_below);
    spec.thickness = length_or(f, "thickness", spec.thickness);
    spec.stitch_length = length_or(f, "stitch", spec.stitch_length);
    spec.waste = (int32_t)count_or(f, "waste_ppm", 0);
    must(f, muslin_thread_plan(&spec, &out, NULL));
    answer_count(f, "ratio_thousandths", out.ratio_thousandths);
    answer_length(f, "thread", out.thread);
    answer_length(f, "with_waste", out.with_waste);
    answer_length(f, "needle", out.needle);
    answer_length(f, "bobbin", out.bobbin_thread);
}

static const char *const directions[] = { "up", "down", "nearest", NULL };

static void stitches(struct figure *f)
{
    int64_t thousandths = 0;
    int32_t exact = 0;
    must(f, muslin_stitch_count(length(f, "length"), length(f, "stitch"), (int32_t)count(f, "decimals"),
                                choice(f, "direction", directions), &thousandths, &exact, NULL));
    answer_count(f, "thousandths", thousandths);
    answer_count(f, "exact", exact);
}

static void stitch(struct figure *f)
{
    struct muslin_rounding_spec rounding = rounding_of(f);
    struct muslin_rounded rounded = { .size = sizeof rounded };
    must(f, muslin_stitch_length(length(f, "length"), count(f, "thousandths"), &rounding, &rounded, NULL));
    answer_length(f, "stitch", rounded.value);
    answer_count(f, "exact", rounded.exact);
}

const struct question questions_supplies[] = {
    { "thread", thread },
    { "stitches", stitches },
    { "stitch", stitch },
    { NULL, NULL },
};
