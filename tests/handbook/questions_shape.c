/* questions_shape.c - what the handbook asks about shape.h.
 *
 * SPDX-License-Identifier: MIT */
#include "handbook.h"

/* A regular polygon from one measure; its area in thousandths of a square inch, nearest, and that of several. */
static void polygon(struct figure *f)
{
    static const char *const measures[] = { "side", "flats", "corners", "centre", NULL };
    const int64_t square_inch = INT64_C(8128) * 8128;
    struct muslin_rounding_spec rounding = rounding_of(f);
    struct muslin_regular_polygon made = { .size = sizeof made };
    int64_t pieces = count_or(f, "pieces", 1);
    must(f, muslin_shape_regular_polygon((int32_t)count(f, "sides"), choice(f, "measure", measures), length(f, "size"),
                                         &rounding, &made, NULL));
    answer_length(f, "side", made.side);
    answer_length(f, "flats", made.flats);
    answer_length(f, "corners", made.corners);
    answer_length(f, "centre", made.centre);
    answer_count(f, "area_thousandths", (pieces * made.area * 500 + square_inch / 2) / square_inch);
}

/* A square with a quarter circle. */
static void quarter(struct figure *f)
{
    struct muslin_quarter_circle_spec spec = MUSLIN_QUARTER_CIRCLE_SPEC_INIT;
    struct muslin_rounding_spec rounding = rounding_of(f);
    struct muslin_quarter_circle made = { .size = sizeof made };
    spec.finished = length(f, "finished");
    spec.radius = length(f, "radius");
    spec.allowance = length(f, "allowance");
    must(f, muslin_shape_quarter_circle(&spec, &rounding, &made, NULL));
    answer_length(f, "convex_cut_radius", made.convex_cut_radius);
    answer_length(f, "concave_cut_radius", made.concave_cut_radius);
}

extern const struct question questions_shape[];

const struct question questions_shape[] = {
    { "regular_polygon", polygon },
    { "quarter_circle", quarter },
    { NULL, NULL },
};
